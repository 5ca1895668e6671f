var nn="http://www.w3.org/2000/svg";function e(t,s={},...n){let o=document.createElement(t);for(let[r,a]of Object.entries(
s))typeof a=="function"?o.addEventListener(r.slice(2),a):a===!0?o.setAttribute(r,""):a!==!1&&a!=null&&o.setAttribute(r,String(
a));return o.append(...Nt(n)),o}function j(t,s={},...n){let o=document.createElementNS(nn,t);return Ot(o,s),o.append(...n),
o}function Ot(t,s){for(let[n,o]of Object.entries(s))o!=null&&t.setAttribute(n,String(o))}function G(t,s,n={}){return e("\
button",{type:"button",class:"ts-button",onclick:s,...n},t)}function St(t,s){return e("select",{class:"ts-box",...t},...mt(
s))}function Et(t){return t.flatMap(([s,n])=>[e("dt",{},s),e("dd",{},n)])}function Mt(t){return e("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Nt(t){return t.filter(s=>s!=null&&s!==!1)}var Ne=0;function et(t){return Ne+=1,`two\
shaft-${t}-${Ne}-${Math.random().toString(36).slice(2,7)}`}function Tt(t,s){let n=t.querySelector(s);if(!n)throw new Error(
`nothing matches ${s}`);return n}function Q(t,s){return[...t.querySelectorAll(s)]}function $t(t,s){let{target:n}=t;return n instanceof
Element?n.closest(s):null}function vt(t){return t.ctrlKey||t.metaKey||t.altKey}function Gt(t){let s=Q(t,"button, input, \
select");for(let n of s)n.disabled=!0}function Ie(t){for(let s=t.parentElement;s;s=s.parentElement){let n=getComputedStyle(
s).overflowY;if((n==="auto"||n==="scroll")&&s.scrollHeight>s.clientHeight)return s}return document.scrollingElement??document.
documentElement}function Yt(t,s){return Math.hypot(t[0]-s[0],t[1]-s[1])}function rt(t,s,n=t){return G(t,s,{"aria-label":n})}
function mt(t){return[...t].map(([s,n])=>e("option",{value:s},n))}function Dt(t){return t.map(s=>e("li",{},s))}var pe=new Map;function wt(t,s){if(pe.has(t))throw new Error(`the answer kind ${t} is registered twice`);pe.set(t,s)}function Pt(t){
let s=pe.get(t.kind);if(!s)throw new Error(`the answer kind ${t.kind} has no browser side`);return s}function Rt(t){let s=et(
t.kind);return{control:`${s}-control`,hint:`${s}-hint`,read:`${s}-read`,status:`${s}-status`}}function Ht(t,s,n){let{prompt:o}=Pt(
t),r={class:"ts-prompt"};if(o==="legend")return e("fieldset",{class:"ts-field","aria-describedby":n},e("legend",r,t.prompt));
let a=o==="label"?e("label",{...r,for:s.control},t.prompt):e("p",r,t.prompt);return e("div",{class:"ts-field"},a)}function Vt(t,s,n,o){let a=t.options.map(([c,i])=>{let l={"aria-describedby":s.status},d=e("input",{type:n,name:s.control,
value:c,...l});return{key:c,input:d,row:e("label",{class:"ts-option"},d,e("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{o(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:e("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:l,input:d}of a)d.checked=i.includes(l)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}wt("choice",{prompt:"legend",make:(t,s,n)=>Vt(t,s,"radio",o=>n(o[0]))});wt("choices",{prompt:"legend",make:(t,s,n)=>Vt(t,s,"checkbox",n)});function Xt(t){return t.filter(([,s])=>s).map(([s,n])=>`${s}=${n}`)}function Jt(t){let s=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(s.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}wt("each",{prompt:"legend",make(t,s,n){let o=t.lines,r=t.options,a=o.map(([c,i],l)=>{let d=`${s.control}-${l}`,u=e("labe\
l",{class:"ts-each-line",for:d},i),p=St({id:d,"aria-describedby":s.status},[["","choose"],...r]);return{key:c,box:p,row:e(
"li",{},u,p)}});for(let{box:c}of a)c.addEventListener("change",()=>{n(Xt(a.map(({key:i,box:l})=>[i,l.value])))});return{
element:e("ol",{class:"ts-each"},...a.map(({row:c})=>c)),show(c){let i=Jt(c.value);for(let{key:l,box:d}of a)d.value=i.get(
l)??""},setDisabled(c){for(let{box:i}of a)i.disabled=c},refused(){}}}});function fe(t){let[s="",...n]=t.split(" "),o=s==="wipe"?0:Number(n.shift()),[r="",...a]=n;if(r!=="at")return{hand:s,size:o,
side:r,place:a[0],points:null};let c=a.map(i=>{let[l,d]=i.split(",").map(Number);return[l,d]});return{hand:s,size:o,side:r,
place:"",points:c}}function he(t,{side:s,place:n,points:o}){return o||(s==="round"?t.holes.find(r=>r.id===n)?.ring??[]:t.
stretches.find(r=>r.id===n)?.lines[s]??[])}function ge(t,s){let{hand:n,size:o,side:r,place:a}=fe(s),c=[...t.stretches,...t.
holes].find(l=>l.id===a),i=n==="wipe"?"":` ${o} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[r]??""}`}
function me(t,s,n){return s==="film"?t.width:s==="bead"?n:s==="wipe"?2*t.width:1}function De(t){let s=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=s.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(s)?Number(s):Number.NaN}function Be(t){let s=0;for(let n=1;n<t.length;n+=1)s+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return s}function Pe(t,[s,n]){return t.stretches.map(({id:r,lines:a})=>({id:r,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-s,i-n)))})).reduce((r,a)=>a.away<r.away?a:r).id}var on=.4;function je(t,s){let n=on,o=Zt(t,n);for(;o.
length>s;)n*=1.5,o=Zt(t,n);return o.map(([r,a])=>[Math.round(r*10)/10,Math.round(a*10)/10])}function Zt(t,s){if(t.length<
3)return t;let[n,o]=[t[0],t[t.length-1]],r=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=rn(n,o,t[c]);i>r&&([r,a]=[i,c])}return r<=
s?[n,o]:[...Zt(t.slice(0,a+1),s).slice(0,-1),...Zt(t.slice(a),s)]}function rn(t,s,n){let[o,r]=[s[0]-t[0],s[1]-t[1]],a=Math.
hypot(o,r)||1;return Math.abs(o*(n[1]-t[1])-r*(n[0]-t[0]))/a}var Qt=14,an=3,cn=.5,ln=["middle","inside","outside"],te="round ";function dn(t,s){let n=t.outline.map(([F])=>F),o=t.outline.
map(([,F])=>F),[r,a]=[Math.min(...n)-Qt,Math.max(...n)+Qt],[c,i]=[Math.min(...o)-Qt,Math.max(...o)+Qt],l=a-r,d=i-c,u=([F,
$])=>`${(F-r).toFixed(1)} ${(i-$).toFixed(1)}`,p=(F,$)=>`M${F.map(u).join("L")}${$?"Z":""}`,h=et("face"),w=l/100,g=2*w,k=(F,$)=>j(
"pattern",{id:`${h}-${F}`,width:g,height:g,patternUnits:"userSpaceOnUse"},j("path",{d:$,class:"tsp-hatch","stroke-width":w/
4})),v=j("defs",{},k("oil",`M0 ${g}L${g} 0`),k("dirt",`M0 ${g}L${g} 0M0 0L${g} ${g}`)),N=t.cavities.map(([,F])=>p(F,!0)).
join(""),P=t.islands.map(F=>p(F,!0)).join(""),S=p(t.outline,!0)+N,L=j("g"),C=j("g"),b=j("g"),f=j("g"),m=j("path",{class:"\
tsp-live",d:""}),x=j("path",{class:"tsp-chosen",d:""}),y=j("path",{class:"tsp-land",d:S,"fill-rule":"evenodd"}),A=j("pat\
h",{class:"tsp-edge",d:S+P,"stroke-width":w/2.5}),M=([F,$],H,z="middle")=>{let K={x:F-r,y:i-$,"font-size":2.1*w,"text-an\
chor":z};return j("text",{class:"tsp-text",...K},H)},W=[(r+a)/2,(c+i)/2],O=(F,$)=>{let H=Yt(F,W)||1;return[F[0]+$*(W[0]-
F[0])/H,F[1]+$*(W[1]-F[1])/H]};for(let{x:F,y:$,d:H,leads:z,name:K}of t.holes){let Y={cx:F-r,cy:i-$,"stroke-width":w/4},q=z===
"blind"?"tsp-hole tsp-blind":"tsp-hole";b.append(j("circle",{...Y,r:H/2,class:q})),z==="to the outside"&&b.append(j("cir\
cle",{...Y,r:H/3,class:"tsp-hole"}));let[ot,at]=O([F,$],-(H/2+4.4*w));b.append(M([ot,at-.8*w],K.replace("bolt ","")))}for(let F of t.
guides){let[$,H]=[F.x-r,i-F.y],z=`M${$-w} ${H}h${g}M${$} ${H-w}v${g}`;b.append(j("path",{class:"tsp-guide",d:z,"stroke-w\
idth":w/2}));let K={"stroke-width":w/5,"stroke-dasharray":`${w} ${w}`};b.append(j("circle",{cx:$,cy:H,r:F.reach,class:"t\
sp-reach",...K}));let Y=O([F.x,F.y],F.reach+g),q=(Y[0]-F.x)/(F.reach+g);b.append(M(Y,F.name,q>.5?"start":q<-.5?"end":"mi\
ddle"))}for(let{word:F,points:$,width:H}of t.spots){let[z]=F.split(" "),[K,Y]=[$[0],$[$.length-1]],q=Yt(K,Y)||1,[ot,at]=[
-(Y[1]-K[1])/q*H/2,(Y[0]-K[0])/q*H/2],B=[[K[0]+ot,K[1]+at],[Y[0]+ot,Y[1]+at],[Y[0]-ot,Y[1]-at],[K[0]-ot,K[1]-at]],U=`url\
(#${h}-${z})`;L.append(j("path",{d:p(B,!0),fill:U,class:"tsp-spot","stroke-width":w/4}));let dt=M(O([(K[0]+Y[0])/2,(K[1]+
Y[1])/2],9*w),z);dt.classList.add("tsp-spot-word"),b.append(dt)}let E=[100,50,20,10].find(F=>F<l/4)??10,D=`M${w} ${d-w}v${-w}\
v${w/2}h${E}v${-w/2}v${w}`,T={x:E+g,y:d-w,"font-size":2.1*w};f.append(j("path",{class:"tsp-edge",d:D,"stroke-width":w/4}),
j("text",{class:"tsp-text",...T},`${E} mm`));let _=`0 0 ${l.toFixed(1)} ${d.toFixed(1)}`,V=j("svg",{viewBox:_,class:"tsp\
-face",role:"img","aria-label":s},v,y,L,C,A,b,x,m,f),Z=`max-width: ${(25*l/d).toFixed(1)}rem`;return{frame:e("div",{class:"\
ts-pad-face",style:Z},V),svg:V,over:f,live:m,chosen:x,land:y,path:p,unit:w,box:{left:r,right:a,low:c,high:i,width:l,height:d},
place({clientX:F,clientY:$}){let H=V.getBoundingClientRect(),z=Math.min(H.width/l,H.height/d);return[r+(F-H.left-(H.width-
z*l)/2)/z,i-($-H.top-(H.height-z*d)/2)/z]},strokes(F){C.replaceChildren(...F.map(nt))}};function nt(F){let $=fe(F),H=he(
t,$),z=me(t,$.hand,Math.max($.size,w/2)),K=H.length>1?p(H,$.side==="round"):H.length?`${p(H)}h0.01`:"",Y=j("path",{d:K,class:`\
tsp-stroke tsp-${$.hand}`,"stroke-width":z});if($.hand!=="film")return Y;let q=Math.min(8,Math.max(.6,40*$.size)),ot={"s\
troke-width":w/3,"stroke-dasharray":`${q} ${q}`};return j("g",{},Y,j("path",{d:K,class:"tsp-grain",...ot}))}}function ee({
face:t,label:s,onLay:n,onRemove:o,onClear:r}){let a=dn(t,s),c=e("p",{class:"ts-hidden","aria-live":"polite"}),i=e("p",{class:"\
ts-read ts-pad-trouble",role:"status"}),l=(D,T)=>e("span",{class:"ts-pair"},e("label",{for:T.id},D),T),d=St({id:et("hand")},
Object.entries(t.hands)),u=e("input",{class:"ts-box ts-size",id:et("size"),type:"text",inputmode:"decimal",autocomplete:"\
off",maxlength:"12"}),p=e("label",{for:u.id},"thickness"),h=St({id:et("place")},t.stretches.map(({id:D,name:T})=>[D,T]));
h.append(e("optgroup",{label:"Round a hole"},...t.holes.map(({id:D,name:T})=>e("option",{value:`${te}${D}`},`round ${T}`))));
let w=St({id:et("side")},ln.map(D=>[D,t.sides[D]])),g=G("Lay it here",()=>f([b(h.value)])),k=G("Lay it on every stretch",
()=>f(t.stretches.map(({id:D})=>b(D)))),v=G("Take back the last pass",()=>{S&&o(S-1,!0)}),N=G("Clear the face",r),P={film:"",
bead:""},S=0,L=!1;function C(){if(d.value==="wipe")return"";let[D,T]=t.sizes[d.value],_=De(u.value);if(_>=D&&_<=T)return u.
removeAttribute("aria-invalid"),` ${Number(_.toFixed(3))}`;let V=d.value==="film"?"the thickness of the film":"the diame\
ter of the bead";return i.textContent=u.value.trim()?`Read “${u.value}”: give ${V} from ${D} to ${T} mm.`:`First giv\
e ${V} in mm.`,u.setAttribute("aria-invalid","true"),u.focus(),null}function b(D){let T=C();if(T===null)return null;let _=D.
startsWith(te)?D:`${w.value} ${D}`;return`${d.value}${T} ${_}`}function f(D){let T=D.filter(_=>_!==null);if(!(L||T.length<
D.length)){if(S+T.length>t.most){i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent=
"",c.textContent=T.length===1?`Laid: ${ge(t,T[0])}`:`Laid on ${T.length} stretches`,n(T)}}function m(){let D=d.value==="\
wipe";p.textContent=d.value==="bead"?"diameter":"thickness",u.disabled=L||D,u.value=D?"":P[d.value],u.placeholder=D?"":"\
mm",g.textContent=D?"Wipe here":"Lay it here",k.textContent=D?"Wipe every stretch":"Lay it on every stretch",i.textContent=
"",x()}function x(){let D=h.value.startsWith(te);w.disabled=L||D;let T=he(t,D?{side:"round",place:h.value.slice(te.length)}:
{side:w.value,place:h.value});a.chosen.setAttribute("d",T.length?a.path(T,D):""),a.chosen.setAttribute("stroke-width",String(
a.unit/2))}d.addEventListener("change",m),u.addEventListener("input",()=>{P[d.value]=u.value}),h.addEventListener("chang\
e",x),w.addEventListener("change",x),u.addEventListener("keydown",D=>{D.key==="Enter"&&(D.preventDefault(),g.click())});
let y=null;a.svg.addEventListener("pointerdown",D=>{if(L||D.button>0)return;y=[a.place(D)],a.svg.setPointerCapture(D.pointerId);
let T=Math.max(1,Number(P.bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(me(t,d.value,T)))}),a.svg.
addEventListener("pointermove",D=>{if(!y)return;let T=a.place(D);Yt(T,y[y.length-1])<cn||(y.push(T),a.live.setAttribute(
"d",a.path(y)))});let A=D=>{if(!y)return;let T=y;if(y=null,a.live.setAttribute("d",""),D.type==="pointercancel")return;if(Be(
T)<an){h.value=Pe(t,T[0]),x();return}let _=C();if(_===null)return;let V=je(T,t.points).map(Z=>Z.join(","));f([`${d.value}${_}\
 at ${V.join(" ")}`])};a.svg.addEventListener("pointerup",A),a.svg.addEventListener("pointercancel",A);let M=e("ol",{class:"\
ts-passes","aria-label":"Passes, in the order they were done"}),W=e("p",{class:"ts-hint"},"Nothing is laid yet."),O=e("d\
iv",{class:"ts-pad-tools"},e("div",{class:"ts-tools"},l("tool",d),e("span",{class:"ts-pair"},p,u)),e("div",{class:"ts-to\
ols"},l("where",h),l("runs",w)),e("div",{class:"ts-tools"},g,k,v,N),i,c),E=()=>Q(M,"button");return m(),{drawing:a,tools:O,
list:M,empty:W,frame:a.frame,element:e("div",{class:"ts-pad"},a.frame,O,e("div",{class:"ts-pad-list"},W,M)),show(D,T=[]){
S=D.length,a.strokes(D),W.hidden=S>0;let _=E().findIndex(V=>V.matches(":focus"));M.replaceChildren(...D.map((V,Z)=>e("li",
{},e("span",{},`${ge(t,V)}${T[Z]?`, ${T[Z]}`:""} `),G("take out",()=>o(Z,!1),{class:"ts-button ts-remove",disabled:L,"ar\
ia-label":`Take out pass ${Z+1}`})))),_>=0&&(E()[Math.min(_,S-1)]??g).focus()},setDisabled(D){L=D;for(let T of[d,h,g,k,v,
N,...E()])T.disabled=D;u.disabled=D||d.value==="wipe",x()}}}wt("film",{prompt:"words",make(t,s,n){let o=[],r=c=>{o=c,a.show(o),n(o)},a=ee({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>r([...o,...c]),onRemove:c=>r(o.filter((i,l)=>l!==c)),onClear:()=>r([])});
return{element:a.element,show(c){o=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(o)},setDisabled:a.setDisabled,
refused(){}}}});function Re(t,{send:s,typing:n,said:o=a=>String(a??""),wrong:r=a=>!!a.error}){let a=e("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||a.value.trim()!==c.trim(),l=()=>{i()&&(c=a.value,s(a.value))};return a.
addEventListener("blur",l),a.addEventListener("keydown",d=>{let u=(d.ctrlKey||d.metaKey)&&d.key.toLowerCase()==="s";d.key!==
"Enter"&&!u||(d.preventDefault(),l())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:l,pending:i,refused(){
c=null},show(d){a.setAttribute("aria-invalid",String(r(d))),!(document.activeElement===a&&a.value!==c)&&(c=o(d.value),a.
value=c)}}}function He(t,s){let[n,o,r]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(r)?n:o).
trim()} ${s}`.trim()}function _e(t,s,n){let o=St({"aria-label":"Choose the unit"},[["","unit"],...s.map(r=>[r,r])]);return o.addEventListener(
"change",()=>{o.value&&(t.value=He(t.value,o.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener("input",()=>{
o.value=""}),o}wt("number",{prompt:"label",make(t,s,n,o){let r=t.units,{box:a,flush:c,pending:i,refused:l,show:d}=Re(s,{send:n,typing:o}),
u=e("span",{class:"ts-hint",id:s.hint},t.hint),p=r.length?_e(a,r,c):null;return{element:e("div",{class:"ts-line-of"},a,p,
u),show:d,setDisabled(h){a.disabled=h,p&&(p.disabled=h)},refused:l,flush:c,pending:i}}});function Fe(t,s){let o=[...new Set([t??[]].flat())].filter(r=>s.includes(String(r))).map(String);return[...o,...s.filter(
r=>!o.includes(r))]}var _t=(t,s)=>t.join(`
`)===s.join(`
`),Ke=t=>`#${t.keys[0]}`,se=class{constructor(s,n){this.labels=new Map(s.map(([o,r])=>[o,r])),this.stages=new Map;for(let[
o,,r]of s)r&&this.stages.set(o,r);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(s){return this.labels.get(s)??s}runs(){let s=[];
for(let n of this.order){let o=this.stages.get(n)??null,r=s.at(-1);r&&o!==null&&r.stage===o?r.keys.push(n):s.push({stage:o,
keys:[n]})}return s}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let s=[];for(let n of this.runs()){
let[o]=n.keys;if(n.keys.length<2){s.push({id:o,key:o,level:1});continue}if(s.push({id:Ke(n),run:n,level:1}),!this.closed.
has(String(n.stage)))for(let r of n.keys)s.push({id:r,key:r,level:2})}return s}row(s){return this.rows().find(n=>n.id===
s)}settle(){let s=this.rows();if(!s.some(n=>n.id===this.current)){let n=this.current.replace(/^#/,""),o=s.find(r=>r.run?.
keys.includes(n));this.current=(o??s.find(r=>r.id===n)??s[0]).id}return s}unit(){let s=this.row(this.current);return s?.
run?s.run.keys:this.block.has(this.current)&&this.block.size>1?this.order.filter(n=>this.block.has(n)):[this.current]}unitName(){
let s=this.row(this.current);if(s?.run)return`Stage ${s.run.stage}`;let n=this.unit();return n.length>1?`Block of ${n.length}\
 steps`:this.label(n[0])}where(){let s=this.unit(),n=this.order.indexOf(s[0])+1;return s.length>1?`positions ${n} to ${n+
s.length-1} of ${this.order.length}`:`position ${n} of ${this.order.length}`}rest(){let s=this.unit();return this.order.
filter(n=>!s.includes(n))}get isFirst(){return this.order.indexOf(this.unit()[0])===0}get isLast(){return this.order.indexOf(
String(this.unit().at(-1)))===this.order.length-1}insertedAt(s){let n=this.rest();return[...n.slice(0,s),...this.unit(),
...n.slice(s)]}shifted(s){let n=this.rest(),o=this.order.indexOf(this.unit()[0]),r=!!this.row(this.current)?.run,a=d=>n[s>
0?d:d-1],c=a(o);if(c===void 0)return this.insertedAt(o);let i=this.stages.get(c),l=i!==void 0&&(r||this.closed.has(i));do
o+=s;while(l&&a(o)!==void 0&&this.stages.get(a(o))===i);return this.insertedAt(o)}atPosition(s){return this.insertedAt(Math.
min(s-1,this.order.length-this.unit().length))}beside(s,n){return this.insertedAt(this.rest().indexOf(s)+(n==="after"?1:
0))}gathered(){let s=new Map;for(let n of this.order){let o=this.stages.get(n)??n;s.set(o,[...s.get(o)??[],n])}return[...s.
values()].flat()}dropAt(s,n){let o=s.run?s.run.keys:[s.key],r=s.run&&!this.closed.has(String(s.run.stage));return n&&!r?
{target:String(o.at(-1)),side:"after"}:{target:o[0],side:"before"}}take(s){if(_t(s,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=s,n){let[o]=n.keys,r=this.rows().find(a=>a.run?.
keys.includes(o));this.current=r?r.id:o}return!0}remember(s){this.past.push(s),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(s,n){let o=s.pop();return o?(n.push(this.order),this.order=
o,!0):!1}pickUp(){this.held=this.order}putDown(){let s=this.held;return this.held=null,s===null||_t(s,this.order)?!1:(this.
remember(s),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(s,n){this.order=[...s],n&&([this.past,this.
future]=[[],[]])}toggleBlock(s){this.block.has(s)?this.block.delete(s):this.block.add(s)}blockTo(s){let n=[this.order.indexOf(
this.current),this.order.indexOf(s)].sort((o,r)=>o-r);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(s,n){
let o=s.run?s.run.stage:this.stages.get(s.key),r=s.run?s.run.keys[0]:s.key,a=this.runs().find(c=>c.keys.includes(r));return!o||
!a||a.keys.length<2?null:(n?this.closed.add(o):this.closed.delete(o),n&&(this.current=Ke(a)),o)}sought(s){let n=this.rows(),
o=n.findIndex(c=>c.id===this.current),r=s.length>1?o:o+1,a=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...n.slice(r),...n.slice(0,r)].find(c=>a(c).startsWith(s))}};var un=12,pn=700,fn=5,qe=32,hn=8;function ne({label:t,steps:s,order:n,onChange:o}){let r=new se(s,n),{staged:a}=r,c=!1,i={},
l=!1,d=new Map,u=e("div",{"aria-live":"assertive",class:"ts-hidden"}),p=e("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),h=G("Up",()=>V(-1),{"aria-label":"Move the chosen step up"}),w=G("Down",
()=>V(1),{"aria-label":"Move the chosen step down"}),g=G("Undo",()=>r.undo()&&nt("Undone")),k=G("Redo",()=>r.redo()&&nt(
"Done again")),v=G("Choose several",()=>K(!c),{"aria-pressed":"false"}),N=G("Gather stages",()=>_(r.gathered(),"Steps of\
 one stage now stand together")),P=e("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:I=>{I.key==="Enter"&&Z()}}),S=e("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),L=e("span",{class:"ts-chosen"}),C=G("Move",Z,{"aria-label":"Move to this position"}),b=G(
"Move",bt,{"aria-label":"Move before this step"}),f=e("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},h,w,g,k,v,a?N:null),m=e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"To position ",P,C),e("span",{class:"\
ts-pair"},"or before ",S,b)),x="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),y=e(
"details",{class:"ts-keys"},e("summary",{},"Keys, and long moves"),e("p",{},x),m),A=e("div",{class:"ts-order"},e("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),f,L,p,y,u);function M(I){u.
textContent=I}function W(I=""){M(`${r.unitName()}${I}, ${r.where()}`)}function O(I){let R=d.get(I.id);if(R)return R;let tt=e(
"li",{role:a?"treeitem":"option",class:"ts-step"});return tt.dataset.row=I.id,d.set(I.id,tt),tt}function E(I=!1){let R=r.
settle(),tt=new Set(R.map(st=>st.id));for(let[st,xt]of d)tt.has(st)||(xt.remove(),d.delete(st));let pt=r.unit(),kt=new Set(
pt),ft=p.firstElementChild;for(let st of R){let xt=O(st);xt===ft?ft=ft.nextElementSibling:p.insertBefore(xt,ft),D(xt,st,
kt)}P.value=String(r.order.indexOf(pt[0])+1);let yt=[...r.order.entries()].filter(([,st])=>!kt.has(st));S.replaceChildren(
...yt.map(([st,xt])=>e("option",{value:xt},`${st+1}  ${r.label(xt)}`))),L.textContent=`Chosen: ${r.unitName()}, ${r.where()}`,
h.disabled=l||r.isFirst,w.disabled=l||r.isLast,g.disabled=l||r.past.length===0,k.disabled=l||r.future.length===0;for(let st of[
v,N,P,S,C,b])st.disabled=l;if(p.setAttribute("aria-disabled",String(l)),p.classList.toggle("ts-long",r.order.length>un),
I){let st=d.get(r.current);st?.focus({preventScroll:!0}),st?.scrollIntoView({block:"nearest"})}}function D(I,R,tt){let pt=R.
id===r.current,kt=R.run?!1:r.block.has(R.key),ft=r.held!==null&&(R.run?pt:tt.has(R.key)),yt=r.order.indexOf(R.run?R.run.
keys[0]:R.key),st=R.run?R.run.keys.map(At=>i[At]?.length??0):i[R.key],xt=R.run?r.closed.has(String(R.run.stage)):!1,Ce=JSON.
stringify([yt,R.level,pt,kt,ft,st,R.run&&[R.run.keys.length,xt]]);if(I.dataset.looks===Ce)return;I.dataset.looks=Ce,I.tabIndex=
pt?0:-1,I.setAttribute("aria-selected",String(kt)),I.classList.toggle("ts-current",pt),I.classList.toggle("ts-inblock",kt),
I.classList.toggle("ts-held",ft),I.classList.toggle("ts-level2",R.level===2),a&&I.setAttribute("aria-level",String(R.level));
let Ee=ft?" picked up":kt?" in block":"",Me=Ee?e("span",{class:"ts-state"},Ee):"",Ae=At=>e("span",{class:"ts-number","ar\
ia-hidden":"true"},At);if(R.run){let{keys:At,stage:en}=R.run;I.setAttribute("aria-expanded",String(!xt));let Te=xt?At.filter(
sn=>i[sn]?.length).length:0;I.replaceChildren(Ae(`${yt+1}–${yt+At.length}`),e("span",{class:"ts-fold","aria-hidden":"t\
rue"},xt?"▸":"▾"),e("span",{class:"ts-what"},e("b",{},en),` ${At.length} steps`,Te?` – ${Te} with a remark`:"",Me));
return}let Oe=(i[R.key]??[]).map(At=>e("span",{class:`ts-note ts-note-${At.kind}`},Mt(At.shape??""),e("b",{},At.word),` ${At.
text}`)),tn=a&&R.level===1;I.classList.toggle("ts-troubled",Oe.length>0),I.replaceChildren(Ae(String(yt+1)),e("span",{class:"\
ts-grip","aria-hidden":"true"},"⠿"),e("span",{class:"ts-what"},r.label(R.key),tn?e("span",{class:"ts-stage"},` ${r.stages.
get(R.key)??""}`):"",Me,...Oe))}let T=()=>o([...r.order]);function _(I,R){if(!r.take(I)){M(`${r.unitName()} stays at ${r.
where()}`);return}E(!0),R?M(R):W(),r.held===null&&T()}function V(I){l||_(r.shifted(I))}function Z(){if(l)return;let I=Number.
parseInt(P.value,10),R=r.order.length;I>=1&&I<=R?_(r.atPosition(I)):(M(`Type a position from 1 to ${R}`),L.textContent=`\
Type a position from 1 to ${R}.`)}function bt(){!l&&S.value&&_(r.beside(S.value,"before"))}function nt(I){E(),M(`${I}. ${r.
unitName()}, ${r.where()}`),T()}function F(){r.pickUp(),E(!0),W(" picked up")}function $(){r.putDown()&&T(),E(!0),W(" pu\
t down")}function H(){r.putDown()&&T(),E()}function z(){r.putBack(),E(!0),W(" put back")}function K(I){c=I,v.setAttribute(
"aria-pressed",String(I)),I||(r.block=new Set),E(),M(I?"Choose the steps of a block":"Block let go")}function Y(I){r.toggleBlock(
I);let R=r.block.has(I)?"in the block":"out of the block";M(`${r.label(I)} ${R}, ${r.block.size} in it`)}function q(I,R){
let tt=r.fold(I,R);tt&&(E(!0),M(`${tt} ${R?"closed":"open"}`))}p.addEventListener("keydown",I=>{if(vt(I))return;let R=r.
rows(),tt=R.findIndex(xt=>xt.id===r.current),pt=xt=>{r.current=R[Math.max(0,Math.min(R.length-1,xt))].id,E(!0)},kt=R[tt],
{key:ft}=I,yt=ft==="ArrowUp"?-1:ft==="ArrowDown"?1:null,st=r.held!==null;if(yt&&(I.shiftKey||st))V(yt);else if(yt)pt(tt+
yt);else if(st&&ft==="Escape")z();else if(ft===" ")l||(st?$:F)();else if(st&&ft==="Enter")$();else if(ft==="Enter"&&!kt.
run)l||(Y(kt.key),E(!0));else if(ft==="Home"&&!st)pt(0);else if(ft==="End"&&!st)pt(R.length-1);else if(a&&ft==="ArrowLef\
t")q(kt,!0);else if(a&&ft==="ArrowRight")q(kt,!1);else if(ft.length===1&&!st)B(ft);else return;I.preventDefault()});let ot="",
at;function B(I){ot+=I.toLowerCase(),clearTimeout(at),at=window.setTimeout(()=>{ot=""},pn);let R=r.sought(ot);R&&(r.current=
R.id,E(!0))}p.addEventListener("focusout",({relatedTarget:I})=>{r.held!==null&&I instanceof Node&&!p.contains(I)&&H()});
let U=null;p.addEventListener("pointerdown",I=>{let R=r.row($t(I,".ts-step")?.dataset.row??"");if(!R||I.button!==0)return;
if(R.run&&$t(I,".ts-fold")){q(R,!r.closed.has(String(R.run.stage))),I.preventDefault();return}let tt=$t(I,".ts-grip, .ts\
-number"),pt=I.ctrlKey||I.metaKey;r.held!==null&&H(),!R.run&&!l&&(I.shiftKey?r.blockTo(R.key):(pt||c)&&!tt&&Y(R.key)),r.
current=R.id,E(!0),I.preventDefault(),!(l||I.shiftKey||pt)&&(I.pointerType!=="mouse"&&!tt||(U={x:I.clientX,y:I.clientY,id:I.
pointerId,carried:null},p.setPointerCapture(I.pointerId)))}),p.addEventListener("pointermove",I=>{if(!U||I.pointerId!==U.
id)return;let{clientX:R,clientY:tt}=I;if(!U.carried){if(Math.hypot(R-U.x,tt-U.y)<fn)return;U.carried=dt()}Object.assign(
U.carried,{x:R,y:tt}),ut(U.carried)});function dt(){let I=e("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},r.unit().
length>1?r.unitName():r.label(r.unit()[0]));document.body.append(I);let R=e("div",{class:"ts-line","aria-hidden":"true"});
p.append(R),p.classList.add("ts-dragging");for(let tt of r.unit())d.get(tt)?.classList.add("ts-lifted");return{ghost:I,line:R,
timer:requestAnimationFrame(J),x:0,y:0,drop:null}}function ut(I){I.ghost.style.transform=`translate(${I.x+12}px, ${I.y+8}\
px)`;let tt=r.rows().map(yt=>{let st=O(yt).getBoundingClientRect();return{row:yt,box:st,offset:I.y-(st.top+st.height/2)}}).
reduce((yt,st)=>Math.abs(st.offset)<Math.abs(yt.offset)?st:yt),pt=tt.offset>0;I.drop=r.dropAt(tt.row,pt);let ft=(pt?tt.box.
bottom:tt.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;I.line.style.top=`${ft}px`}function J(){let I=U?.carried;
if(I){for(let R of[p,Ie(p)]){let pt=R===document.scrollingElement?{top:0,bottom:innerHeight}:R.getBoundingClientRect(),kt=I.
y<pt.top+qe?-1:I.y>pt.bottom-qe?1:0;if(!kt)continue;let ft=R.scrollTop;if(R.scrollTop+=kt*hn,R.scrollTop!==ft){ut(I);break}}
I.timer=requestAnimationFrame(J)}}function it(I){let R=U?.carried;if(U=null,!R)return;cancelAnimationFrame(R.timer),R.ghost.
remove(),R.line.remove(),p.classList.remove("ts-dragging");for(let pt of d.values())pt.classList.remove("ts-lifted");let{
drop:tt}=R;if(!I||!tt||r.unit().includes(tt.target)){E(!0),M(`${r.unitName()} stays at ${r.where()}`);return}_(r.beside(
tt.target,tt.side))}return p.addEventListener("pointerup",()=>it(!0)),p.addEventListener("pointercancel",()=>it(!1)),A.addEventListener(
"keydown",I=>{!U?.carried||I.key!=="Escape"||(it(!1),I.stopPropagation())}),E(),{element:A,tools:f,order:()=>[...r.order],
change:(I,R)=>{l||_(I,R)},setOrder(I,R=!1){r.held!==null||U?.carried||_t(I,r.order)||(r.set(I,R),E())},setNotes(I){i=I??
{},E()},setDisabled(I){l=I,E()}}}wt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,s,n){let o=t.
steps.map(([a])=>a),r=ne({label:t.prompt,steps:t.steps,order:o,onChange:n});return{element:r.element,show:a=>r.setOrder(
Fe(a.value,o)),setDisabled:r.setDisabled,refused(){}}}});function Ue(t,s,n){let o=[0,0],r=[n(...o)],a=new Map;for(let[c,i]of t.entries()){let[l,d]=s[i]??[null,null];l!==null&&o[1]!==
0&&r.push(n(o[0],0)),o=[l??o[0],d??(l===null?o[1]:0)];let u=n(...o);r.push(u);let p=a.get(u.join(" "))??{at:u,numbers:[]};
p.numbers.push(c+1),a.set(u.join(" "),p)}return{points:r,stops:[...a.values()]}}function We(t,s,n){let o=s>=0&&s<t.length-
1?s+1:t.length;return{moves:[...t.slice(0,o),n,...t.slice(o)],place:o}}function ze(t,s){return t.filter((n,o)=>o!==s)}function Ge(t,s,n){
let o=s+n;if(o<0||o>=t.length)return null;let r=[...t];return[r[s],r[o]]=[r[o],r[s]],r}var be=9,Ye=.7*be,we=44;function gn(t){let s=Math.min(...t.gates),n=Math.max(...t.gates),[o,r]=t.turn_mm,a=(n-s)*be+2*we,
c=(r-o)*Ye+2*we,i=(g,k)=>[we+(g-s)*be,c/2-(k-(o+r)/2)*Ye],l=t.gates.map(g=>`M${i(g,o).join(" ")}L${i(g,r).join(" ")}`),d=`\
M${i(s,0).join(" ")}L${i(n,0).join(" ")}`,u=t.gears.map(([g,k,v])=>{let[N,P]=i(k,v),S={x:N,y:P+(v>0?-20:30)};return j("t\
ext",{...S,class:"tsp-gear","text-anchor":"middle"},g)}),p=j("polyline",{class:"tsp-line",points:""}),h=j("g");return{element:j(
"svg",{viewBox:`0 0 ${a} ${c}`,width:a,height:c,class:"ts-gateplan","aria-hidden":"true"},j("path",{d:[...l,d].join(""),
class:"tsp-slot"}),...u,p,h),show(g){let{points:k,stops:v}=Ue(g,t.aims,i),[[N,P]]=k;p.setAttribute("points",k.map(S=>S.join(
",")).join(" ")),h.replaceChildren(j("circle",{cx:N,cy:P,r:4,class:"tsp-start"}),...v.map(({at:[S,L],numbers:C})=>j("g",
{},j("circle",{cx:S,cy:L,r:3.5,class:"tsp-stop"}),j("text",{x:S+7,y:L-5,class:"tsp-number"},C.join(", ")))))}}}function Ve({
label:t,moves:s,plan:n,most:o,onChange:r}){let a=new Map(s),c=A=>a.get(A)??A,i=[],l=-1,d=!1,u=n?gn(n):null,p=e("ol",{class:"\
ts-pathlist","aria-label":t}),h=e("p",{class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),
w=e("p",{class:"ts-hidden",role:"status"}),g=s.map(([A,M])=>G(M,()=>L(A))),k=G("Take back the last move",()=>{i.length&&
C(i.length-1)}),v=G("Take back all",()=>{i.length&&S([],"No moves left")}),N=e("span",{class:"ts-hint"}),P=e("div",{class:"\
ts-path"},e("div",{class:"ts-tools ts-moves",role:"group","aria-label":"Add a move"},...g),e("div",{class:"ts-path-both"},
e("div",{class:"ts-path-words"},h,p,e("div",{class:"ts-tools"},k,v,N)),u&&e("div",{class:"ts-path-picture"},u.element)),
u&&e("p",{class:"ts-hint"},"The line shows where each move aims. Whether the lever gets there is what the test finds out\
."),w);function S(A,M){d||(i=A,y(),w.textContent=M,r([...i]))}function L(A){if(i.length>=o){w.textContent=`${o} moves ar\
e the most here`;return}let{moves:M,place:W}=We(i,l,A);l=W,S(M,`Move ${W+1}: ${c(A)}`)}function C(A){let M=c(i[A]);l=Math.
min(l,i.length-2),S(ze(i,A),`Taken back: ${M}`)}function b(A,M){let W=Ge(i,A,M);W&&(l=A+M,S(W,`${c(W[l])}, move ${l+1} o\
f ${i.length}`),m(l))}function f(A){return p.children[A]?.querySelector(".ts-path-move")}function m(A){let M=f(A);return M instanceof
HTMLElement&&M.focus(),!!M}function x(A,M){let W=e("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${M+1}: ${c(
A)}`},c(A)),O=e("button",{type:"button",class:"ts-path-off","aria-label":`Take back move ${M+1}`,onclick:()=>C(M)},"×"),
E=e("li",{},W,O);return E.classList.toggle("ts-current",M===l),W.addEventListener("focus",()=>{l=M;for(let D of p.children)
D.classList.toggle("ts-current",D===E)}),W.addEventListener("keydown",D=>{if(vt(D))return;let T=D.key==="ArrowUp"?-1:D.key===
"ArrowDown"?1:null;if(T&&D.shiftKey)b(M,T);else if(T)m(M+T);else if(D.key==="Delete"||D.key==="Backspace")C(M),m(Math.min(
M,i.length-1))||g[0].focus();else return;D.preventDefault()}),O.disabled=d,E}function y(){p.replaceChildren(...i.map(x)),
h.hidden=i.length>0,N.textContent=`${i.length} of at most ${o} moves`;for(let A of g)A.disabled=d||i.length>=o;k.disabled=
v.disabled=d||i.length===0,u?.show(i)}return y(),{element:P,setMoves(A){_t(A,i)||(i=[...A],l=-1,y())},setDisabled(A){d=A,
y()}}}wt("path",{prompt:"words",make(t,s,n){let o=Ve({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:o.element,show:r=>o.setMoves([r.value??[]].flat()),setDisabled:o.setDisabled,refused(){}}}});function Xe(t,s,n){let o=t.indexOf(n);return[...t.slice(o+1),...t.slice(0,o)].find(a=>!s.get(a))??n}function Je(t,s,n){let o=t.
find(({key:l})=>l===s);if(!o)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let r={ArrowRight:1,
ArrowLeft:-1}[n];if(r!==void 0){let l=[...t].sort((u,p)=>u.x-p.x||u.y-p.y),d=l.findIndex(({key:u})=>u===s)+r;return l[(d+
l.length)%l.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=l=>Math.abs(l.y-o.y)+2*Math.abs(l.x-
o.x),[i]=t.filter(({key:l,y:d})=>l!==s&&(d-o.y)*a>2).sort((l,d)=>c(l)-c(d));return(i??o).key}function Kt(t,s,n,o){let r=t.lines,a=t.options,c=r.map(([p])=>p),i=c[0],l=r.map(([p,h],w)=>{let g=`${s.control}-${w}`,k=e(
"label",{class:"ts-each-line",for:g},h),v=St({id:g,"aria-describedby":s.status},[["","choose"],...a]),N=e("input",{type:"\
radio",name:`${s.control}-active`,"aria-label":`Point in the picture for: ${h}`,checked:w===0}),P=e("li",{},c.length>1?N:
null,k,v);return N.addEventListener("change",()=>{i=p}),v.addEventListener("change",()=>{i=p,u()}),{key:p,box:v,mark:N,row:P}}),
d=()=>new Map(l.map(({key:p,box:h})=>[p,h.value]));function u(){let p=d();o(p),n(Xt([...p]))}return{element:e("ol",{class:"\
ts-each ts-pointed"},...l.map(({row:p})=>p)),active:()=>i,answers:d,press(p){let h=l.find(({key:w})=>w===i);if(!(!h||h.box.
disabled)){h.box.value=p,u(),i=Xe(c,d(),i);for(let{key:w,mark:g}of l)g.checked=w===i}},put(p,h){let w=l.find(({key:g})=>g===
p);!w||w.box.disabled||(w.box.value=h,u())},show(p){let h=Jt(p.value);for(let{key:w,box:g}of l)g.value=h.get(w)??"";o(d())},
setDisabled(p){for(let{box:h,mark:w}of l)h.disabled=p,w.disabled=p}}}function oe(t,s,n){let o=e("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});o.innerHTML=t;let r=o.querySelector(
"svg");r.setAttribute("role","group");let a=new Map(Q(r,"[data-mark]").map(d=>[String(d.dataset.mark),d])),c=new Map(s);
for(let[d,u]of a)u.setAttribute("role","button"),u.setAttribute("tabindex",d===s[0][0]?"0":"-1"),u.setAttribute("aria-la\
bel",`${d}: ${c.get(d)??""}`);let i=d=>$t(d,"[data-mark]")?.dataset.mark??$t(d,"[data-spot]")?.dataset.spot;o.addEventListener(
"click",d=>{let u=i(d);u&&n(u)});for(let[d,u]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])o.addEventListener(
d,p=>{let h=i(p);h&&l(h,u)});function l(d,u){for(let p of Q(r,`[data-spot="${d}"]`))p.classList.toggle("tss-near",u)}return o.
addEventListener("keydown",d=>{let u=$t(d,"[data-mark]")?.dataset.mark;if(u){if(d.key==="Enter"||d.key===" ")n(u);else{let p=[
...a].map(([w,g])=>{let k=g.querySelector(".tss-dot");return{key:w,x:k.cx.baseVal.value,y:k.cy.baseVal.value}}),h=Je(p,u,
d.key);if(h===void 0)return;a.get(u)?.setAttribute("tabindex","-1"),a.get(h)?.setAttribute("tabindex","0"),a.get(h)?.focus()}
d.preventDefault()}}),{element:o,drawing:r,choose(d){let u=new Set(d);for(let[p,h]of a)h.classList.toggle("tss-chosen",u.
has(p)),h.setAttribute("aria-pressed",String(u.has(p)));for(let p of Q(r,"[data-spot]"))p.classList.toggle("tss-on",u.has(
String(p.dataset.spot)))}}}wt("picture",{prompt:"legend",make(t,s,n){let o=t.options,r=Kt(t,s,n,i=>{let l=new Set(i.values());for(let{letter:d,card:u}of a)
u.classList.toggle("ts-on",l.has(d))}),a=o.map(([i,l])=>{let d=e("div",{class:"ts-picture-card",onclick:()=>r.press(i)});
return d.innerHTML=t.svgs[i],d.querySelector("svg")?.setAttribute("aria-label",l),d.prepend(e("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:d}}),c=e("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:e("div",{},r.element,
c),show:r.show,setDisabled:r.setDisabled,refused(){}}}});wt("point",{prompt:"legend",make(t,s,n){let o=Kt(t,s,n,i=>c.choose(i.values())),a=t.options.map(([i,l])=>[i,l.slice(i.length+
2)]),c=oe(t.svg,a,o.press);return{element:e("div",{},o.element,c.element),show:o.show,setDisabled:o.setDisabled,refused(){}}}});wt("put",{prompt:"legend",make(t,s,n){let o=t.lines,r=new Map(o.map(([u])=>[u,"1"])),a=Kt(t,s,n,u=>{for(let[p,h]of u)h&&
r.set(p,h.split("-")[1]);c.choose([...u.values()].map(p=>p.split("-")[0])),l(u)}),c=oe(t.svg,t.places,u=>{a.press(`${u}-${r.
get(a.active())}`)}),i=j("g",{class:"tss-placed"});c.drawing.append(i);function l(u){i.replaceChildren();for(let[p,h]of u){
let[w,g]=h.split("-"),k=t.at[w];if(!k)continue;let v=j("g",{transform:`translate(${k[0]} ${k[1]})`});v.innerHTML=t.pieces[p][Number(
g)-1][1],i.append(v)}for(let{part:p,show:h}of d)h(r.get(p)??"1")}let d=o.map(([u,p])=>{let h=e("div",{class:"ts-tray-par\
t"}),w=e("span",{class:"ts-hint",role:"status"}),g=rt("Turn it",()=>{let N=r.get(u)==="1"?"2":"1";r.set(u,N),k(N);let P=a.
answers().get(u);P&&a.put(u,`${P.split("-")[0]}-${N}`)},`Turn it: ${p}`);function k(N){let[P,S]=t.pieces[u][Number(N)-1],
L=Number(/data-half="([\d.]+)"/.exec(S)?.[1]??90);h.innerHTML=`<svg viewBox="${-L} ${-L} ${2*L} ${2*L}" width="120" heig\
ht="120" aria-hidden="true">${S}</svg>`,w.textContent=`Way ${N}: ${P}`}let v=e("div",{class:"ts-tray"},h,e("div",{},p,w,
g));return{part:u,row:v,show:k,turn:g}});return{element:e("div",{},e("div",{class:"ts-trays"},...d.map(({row:u})=>u)),a.
element,c.element),show:a.show,setDisabled(u){a.setDisabled(u);for(let{turn:p}of d)p.disabled=u},refused(){}}}});var mn="No line to the course just now. Go on with the questions: what you enter is kept in this browser and sent when t\
he line is back. Simulators stand still until then.",wn="The line to the course is back.",bn=1500,kn=5e3,ve=new Set,Bt=null,
ke;function Ze(t){Bt??=e("p",{class:"twoshaft ts-line-bar",role:"status"}),Bt.isConnected||document.body.append(Bt),Bt.textContent=
t}function vn(){Bt?.remove(),Bt=null}function Qe(){clearTimeout(ke),ve.size?ke=window.setTimeout(()=>Ze(mn),Bt?0:bn):Bt&&
(Ze(wn),ke=window.setTimeout(vn,kn))}var ts=t=>({down(){ve.add(t),Qe()},up(){ve.delete(t),Qe()}});var yn=1e3,xn="input, button, select, textarea, summary, a, [tabindex]";function $n(t){let s=r=>{if(r.stopPropagation(),
!(r.ctrlKey||r.metaKey)||r.key.toLowerCase()!=="s"||(r.preventDefault(),r.type!=="keydown"||r.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:l,metaKey:d}=r,u={key:a,code:c,keyCode:i,ctrlKey:l,metaKey:d,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",u))};t.addEventListener("keydown",s),t.addEventListener("keyup",s),t.addEventListener(
"keypress",s);let n=()=>{for(let r of t.querySelectorAll(xn))r.hasAttribute("data-lm-suppress-shortcuts")||r.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let o=new MutationObserver(n);return o.observe(t,{childList:!0,subtree:!0}),()=>o.
disconnect()}function Sn(t,s,n){let o=t.widget_manager?.kernel,r=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&s()},a=(c,i)=>{i==="disconnected"?s():n(i==="connecting")};return t.on("comm_live_update",s),o?.statusChanged?.
connect(r),o?.connectionStatusChanged?.connect(a),o?.disposed?.connect(s),()=>{t.off("comm_live_update",s),o?.statusChanged?.
disconnect(r),o?.connectionStatusChanged?.disconnect(a),o?.disposed?.disconnect(s)}}var es=`.twoshaft {
  --ts-ink: var(--jp-content-font-color1, #1b1b1b);
  --ts-paper: var(--jp-layout-color1, #fcfcfa);
  --ts-quiet: color-mix(in srgb, var(--jp-content-font-color1, #1b1b1b) 75%, var(--jp-layout-color1, #fcfcfa));
  --ts-line: color-mix(in srgb, var(--jp-content-font-color1, #1b1b1b) 55%, var(--jp-layout-color1, #fcfcfa));
  --ts-faint: color-mix(in srgb, var(--jp-content-font-color1, #1b1b1b) 6%, var(--jp-layout-color1, #fcfcfa));
  --ts-accent: #0b5c8a;
  --ts-on-accent: #fcfcfa;
  --ts-good: #009e73;
  --ts-bad: #d55e00;
  --ts-warn: #e69f00;
  --ts-film: #56b4e9;
  --ts-bead: #0072b2;
  --ts-grid: 8px;
  --ts-small: 13px;
  --ts-text: 15px;
  --ts-head: 18px;
  --ts-target: 32px;
  --ts-width: 70ch;
  --ts-font: system-ui, -apple-system, "Segoe UI", "Noto Sans", "DejaVu Sans", sans-serif;
}
[data-jp-theme-light="false"] .twoshaft {
  --ts-accent: #8ecbf2;
  --ts-on-accent: #1b1b1b;
}
html[data-ts-print="large"] .twoshaft { --ts-small: 18px; --ts-text: 21px; --ts-head: 26px; }
html[data-ts-print="large"] { --jp-content-font-size1: 21px; --jp-content-font-size2: 26px; --jp-content-font-size3: 26p\
x; --jp-content-font-size4: 30px; --jp-content-font-size5: 34px; --jp-ui-font-size1: 18px; --jp-code-font-size: 21px; }
html[data-ts-print="large"] :is(.twoshaft, .jp-RenderedHTML, figure) svg:not(svg *) { zoom: 1.4; --ts-small: 13px; --ts-\
text: 15px; --ts-head: 18px; }
html[data-ts-print="large"] figure > svg.twoshaft-figure { max-width: none; max-height: none; }
html[data-ts-print="large"] .jp-RenderedImage img { zoom: 1.4; max-width: none; }
html[data-ts-print="large"] :is(.jp-RenderedImage, figure) { overflow-x: auto; min-width: 0; max-width: 100%; }
html[data-ts-colour="cream"] { --jp-layout-color0: #fff6dc; --jp-layout-color1: #fff6dc; --jp-layout-color2: #fff6dc; --\
jp-cell-editor-background: #fff6dc; --jp-content-font-color0: #1b1b1b; --jp-rendermime-table-row-background: rgb(0 0 0 /\
 4%); --jp-content-font-color1: #1b1b1b; --jp-ui-font-color0: #1b1b1b; --jp-ui-font-color1: #1b1b1b; --jp-ui-font-color2\
: #595959; }
html[data-ts-colour="cream"] .twoshaft { --ts-accent: #0b5c8a; --ts-on-accent: #fcfcfa; }
html[data-ts-colour="blue"] { --jp-layout-color0: #e3f1fb; --jp-layout-color1: #e3f1fb; --jp-layout-color2: #e3f1fb; --j\
p-cell-editor-background: #e3f1fb; --jp-content-font-color0: #1b1b1b; --jp-rendermime-table-row-background: rgb(0 0 0 / \
4%); --jp-content-font-color1: #1b1b1b; --jp-ui-font-color0: #1b1b1b; --jp-ui-font-color1: #1b1b1b; --jp-ui-font-color2:\
 #595959; }
html[data-ts-colour="blue"] .twoshaft { --ts-accent: #0b5c8a; --ts-on-accent: #fcfcfa; }
html[data-ts-colour="rose"] { --jp-layout-color0: #fdeaea; --jp-layout-color1: #fdeaea; --jp-layout-color2: #fdeaea; --j\
p-cell-editor-background: #fdeaea; --jp-content-font-color0: #1b1b1b; --jp-rendermime-table-row-background: rgb(0 0 0 / \
4%); --jp-content-font-color1: #1b1b1b; --jp-ui-font-color0: #1b1b1b; --jp-ui-font-color1: #1b1b1b; --jp-ui-font-color2:\
 #595959; }
html[data-ts-colour="rose"] .twoshaft { --ts-accent: #0b5c8a; --ts-on-accent: #fcfcfa; }
.twoshaft{color:var(--ts-ink);font-family:var(--ts-font);font-size:var(--ts-text);line-height:1.5;max-width:100%;box-siz\
ing:border-box;padding-inline:6px;overflow-wrap:anywhere}.twoshaft p,.twoshaft ul,.twoshaft ol,.twoshaft fieldset{margin\
:0;padding:0}.twoshaft p,.twoshaft .ts-prompt,.twoshaft .ts-option{max-width:var(--ts-width)}.twoshaft .ts-hidden{positi\
on:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}.twoshaft .ts-shape{display:inl\
ine-block;min-width:1.25em}.twoshaft .ts-hint,.twoshaft .ts-read,.twoshaft .ts-chosen,.twoshaft .ts-total,.twoshaft .ts-\
stage,.twoshaft .ts-keys,.twoshaft .ts-status{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft .ts-alert:not(:e\
mpty),.twoshaft .ts-trouble:not(:empty){border:2px solid var(--ts-ink);padding:var(--ts-grid);margin-top:var(--ts-grid)}\
.twoshaft .ts-box{box-sizing:border-box;min-height:var(--ts-target);padding:0 var(--ts-grid);border:1px solid var(--ts-l\
ine);border-radius:2px;background:var(--ts-paper);color:var(--ts-ink);font:inherit}.twoshaft .ts-number-box{width:12em;m\
ax-width:100%}.twoshaft .ts-number-box[aria-invalid=true]{border:2px dashed var(--ts-ink)}.twoshaft .ts-option{display:f\
lex;align-items:flex-start;gap:var(--ts-grid);padding:4px 0;min-height:24px;cursor:pointer}.twoshaft .ts-option input{wi\
dth:18px;height:18px;margin:2px 0 0;flex:none;accent-color:var(--ts-accent)}.twoshaft .ts-button{box-sizing:border-box;m\
in-height:var(--ts-target);min-width:var(--ts-target);padding:0 calc(1.5 * var(--ts-grid));border:1px solid var(--ts-acc\
ent);border-radius:2px;background:var(--ts-paper);color:var(--ts-accent);font:inherit;font-size:var(--ts-small);cursor:p\
ointer}.twoshaft .ts-button[aria-pressed=true]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-butto\
n:disabled,.twoshaft .ts-box:disabled{color:var(--ts-quiet);border-color:var(--ts-line);border-style:dotted;cursor:defau\
lt}.twoshaft :is(input,button,select,summary,[tabindex]):focus-visible{outline:3px solid var(--ts-accent);outline-offset\
:2px}.twoshaft .ts-tools{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid);margin:var(--ts-grid) 0 calc(\
var(--ts-grid) / 2)}.twoshaft .ts-tools>*,.twoshaft .ts-pair>*{min-width:0}.twoshaft .ts-tools .ts-box,.twoshaft .ts-pai\
r .ts-box{max-width:100%}.twoshaft .ts-pair{display:inline-flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid);max\
-width:100%}.twoshaft .ts-before{width:24em;max-width:100%}.jp-OutputArea:has(.twoshaft-live)>.jp-OutputArea-child:has(.\
twoshaft-copy){display:none}.twoshaft.ts-line-bar{position:fixed;z-index:10000;inset:auto 0 0;margin:0;padding:var(--ts-\
grid) calc(2 * var(--ts-grid));border-top:2px solid var(--ts-ink);background:var(--ts-paper)}.twoshaft-rig{padding-block\
:var(--ts-grid)}.twoshaft .ts-finding{font-weight:600;margin:var(--ts-grid) 0 0}.twoshaft .ts-happened{margin-top:var(--\
ts-grid);min-height:3em}.twoshaft-rig>.ts-prompt{font-weight:600;margin:calc(2 * var(--ts-grid)) 0 var(--ts-grid)}.twosh\
aft .ts-scroll{overflow-x:auto;margin:var(--ts-grid) 0;padding-bottom:var(--ts-grid)}.twoshaft .ts-scroll svg{display:bl\
ock}.twoshaft .ts-scroll.ts-fit svg{max-width:100%;min-width:600px;height:auto}.twoshaft .ts-facts{display:grid;grid-tem\
plate-columns:max-content 1fr;gap:4px calc(2 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:calc(var(--ts-width) + \
12ch)}.twoshaft .ts-facts dt{float:none;clear:none;width:auto;font-weight:600;overflow-wrap:normal}.twoshaft .ts-facts d\
d{margin:0;width:auto}@media(max-width:480px){.twoshaft .ts-facts{grid-template-columns:1fr}}.twoshaft .ts-ready{display\
:flex;flex-wrap:wrap;gap:var(--ts-grid)}.twoshaft .ts-ready .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-b\
utton.ts-off{color:var(--ts-quiet);border-color:var(--ts-line);border-style:dotted;cursor:default}.twoshaft .ts-sentence\
s{padding-left:calc(3 * var(--ts-grid));max-width:var(--ts-width)}.twoshaft .ts-note-blocked .ts-shape,.twoshaft .ts-not\
e-harmed .ts-shape{color:var(--ts-bad)}.twoshaft .tsf-step{cursor:pointer}.twoshaft .ts-either{opacity:.4}.twoshaft .ts-\
before-it .tsf-b{stroke-width:3}.twoshaft .ts-after-it .tsf-b{stroke-width:2;outline:1px solid var(--ts-ink);outline-off\
set:2px}.twoshaft .ts-chosen-step .tsf-b{fill:var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .ts-chosen-step .tsf-t{\
fill:var(--ts-on-accent);font-weight:600}.twoshaft .tsf-step:focus{outline:none}.twoshaft .tsf-step:focus-visible .tsf-b\
{outline:3px solid var(--ts-accent);outline-offset:3px}.twoshaft .tsg-text{font:var(--ts-small) var(--ts-font);fill:var(\
--ts-ink)}.twoshaft .tsg-face{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsg-mark{stroke:var(--\
ts-ink);stroke-width:1}.twoshaft .tsg-long{stroke-width:2}.twoshaft .tsg-pointer{fill:var(--ts-accent);stroke:var(--ts-a\
ccent)}.twoshaft .tsg-hub{fill:var(--ts-ink)}.twoshaft .tsg-small{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsg-tar\
get{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:1;stroke-dasharray:5 3}.twoshaft .tsg-cold{fill:var(--ts-acce\
nt);stroke:var(--ts-paper)}.twoshaft .tsg-warm{fill:var(--ts-paper);stroke:var(--ts-bad);stroke-width:3}.twoshaft .tsg-d\
ial{width:190px;height:190px;flex:none}.twoshaft .tsg-scale{width:100%;max-width:600px;min-width:540px;height:auto;displ\
ay:block}.twoshaft .tsg-axis{width:100%;max-width:720px;min-width:540px;height:auto;display:block}.twoshaft .tsg-beside{\
display:flex;flex-wrap:wrap;align-items:center;gap:calc(2 * var(--ts-grid))}.twoshaft .tsg-beside>*{min-width:0;max-widt\
h:100%}.twoshaft .tsg-gauge svg{max-width:100%;height:auto}.twoshaft .tsg-gauge{text-align:center;font-size:var(--ts-sma\
ll)}.twoshaft .tsg-wide{overflow-x:auto;max-width:100%}.twoshaft .ts-slide{display:flex;flex-wrap:wrap;align-items:cente\
r;gap:var(--ts-grid);margin:var(--ts-grid) 0}.twoshaft .ts-slide>span{min-width:11em}.twoshaft .ts-slider{width:260px;ma\
x-width:100%;height:24px;accent-color:var(--ts-accent)}.twoshaft .ts-slid{min-width:12em;font-variant-numeric:tabular-nu\
ms}.twoshaft .tsg-centre{stroke:var(--ts-ink);stroke-width:1;stroke-dasharray:14 3 3 3}.twoshaft .tsg-drum{max-width:100\
%;height:auto}.twoshaft .tsg-ticks{border:none;display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid))}.twoshaft .tsg\
-side{flex:1 1 420px;min-width:min(100%,320px)}.twoshaft .tsi-micrometer{width:760px;height:240px;display:block}.twoshaf\
t .tsi-vernier{width:760px;height:190px;display:block}.twoshaft .tsi-runout{width:300px;height:260px;flex:none}.twoshaft\
 .tsi-wrench{width:720px;max-width:100%;height:auto;display:block}.twoshaft .tsi-fine{stroke:var(--ts-ink);stroke-width:\
1.1}.twoshaft .tsi-bold{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-body{fill:var(--ts-faint);stroke:var(--ts-ink\
);stroke-width:2}.twoshaft .tsi-paper{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsi-lever{stro\
ke:var(--ts-ink);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-adapter{stroke:var(--ts-accent);stroke-width:10;str\
oke-linecap:round}.twoshaft .tsi-arm{stroke:var(--ts-accent);stroke-width:2;stroke-dasharray:7 4}.twoshaft .tsi-plunger{\
stroke:var(--ts-accent);stroke-width:5;stroke-linecap:round}.twoshaft .ts-order{position:relative;max-width:calc(var(--t\
s-width) + 8em)}.twoshaft .ts-steps{position:relative;list-style:none;border:1px solid var(--ts-line);margin-top:calc(va\
r(--ts-grid) / 2);background:var(--ts-paper)}.twoshaft .ts-steps.ts-long{max-height:min(30rem,75vh);overflow-y:auto}.two\
shaft .ts-step{display:flex;align-items:flex-start;gap:var(--ts-grid);padding:4px var(--ts-grid) 4px 0;margin:0;min-heig\
ht:24px;border-bottom:1px solid var(--ts-faint);border-left:4px solid transparent;cursor:default;user-select:none}.twosh\
aft .ts-step:last-child{border-bottom:0}.twoshaft .ts-step.ts-level2{padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts\
-step:focus-visible{outline-offset:-3px}.twoshaft .ts-current{border-left-color:var(--ts-accent);background:var(--ts-fai\
nt)}.twoshaft .ts-inblock{border-left-style:double;border-left-color:var(--ts-ink)}.twoshaft .ts-held{background:var(--t\
s-accent);color:var(--ts-on-accent)}.twoshaft .ts-held .ts-number,.twoshaft .ts-held .ts-grip,.twoshaft .ts-held .ts-sta\
ge{color:inherit}.twoshaft .ts-lifted{opacity:.45}.twoshaft .ts-dragging,.twoshaft .ts-dragging .ts-step{cursor:grabbing\
}.twoshaft .ts-number{flex:none;min-width:2.5em;text-align:right;color:var(--ts-quiet);font-variant-numeric:tabular-nums\
;touch-action:none}.twoshaft .ts-grip,.twoshaft .ts-fold{flex:none;width:24px;text-align:center;color:var(--ts-quiet);cu\
rsor:grab;touch-action:none}.twoshaft .ts-fold{cursor:pointer}.twoshaft .ts-what{flex:1;min-width:0}.twoshaft .ts-state{\
font-weight:600;font-size:var(--ts-small)}.twoshaft .ts-note{display:block;font-size:var(--ts-small);max-width:var(--ts-\
width)}.twoshaft .ts-line{position:absolute;left:0;right:0;height:3px;background:var(--ts-accent);pointer-events:none}.t\
woshaft.ts-ghost{position:fixed;left:0;top:0;z-index:10000;width:max-content;max-width:24em;padding:4px var(--ts-grid);p\
ointer-events:none;background:var(--ts-paper);color:var(--ts-ink);border:2px solid var(--ts-accent)}.twoshaft .ts-order \
.ts-keys{margin-top:var(--ts-grid)}.twoshaft .ts-order .ts-keys summary{cursor:pointer;min-height:24px;color:var(--ts-ac\
cent);width:fit-content}.twoshaft .ts-path-both{display:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:fle\
x-start;margin-top:var(--ts-grid)}.twoshaft .ts-path-words{flex:1 1 22em;min-width:0;max-width:34em}.twoshaft .ts-path-p\
icture{flex:none;max-width:100%}.twoshaft .ts-pathlist{margin:0;padding-left:calc(4 * var(--ts-grid))}.twoshaft .ts-path\
list li{min-height:28px;padding-left:4px;border-left:4px solid transparent}.twoshaft .ts-pathlist li.ts-current{border-l\
eft-color:var(--ts-accent);background:var(--ts-faint)}.twoshaft .ts-path-off{min-width:28px;min-height:28px;margin-left:\
var(--ts-grid);border:1px solid var(--ts-line);border-radius:2px;background:var(--ts-paper);color:var(--ts-ink);font:inh\
erit;line-height:1;cursor:pointer}.twoshaft .ts-gateplan{display:block;max-width:100%;height:auto}.twoshaft .tsp-slot{fi\
ll:none;stroke:var(--ts-line);stroke-width:14;stroke-linecap:round;opacity:.35}.twoshaft .tsp-line{fill:none;stroke:var(\
--ts-accent);stroke-width:2.5;stroke-linejoin:round}.twoshaft .tsp-start{fill:var(--ts-paper);stroke:var(--ts-accent);st\
roke-width:2}.twoshaft .tsp-stop{fill:var(--ts-accent)}.twoshaft .tsp-gear{font:600 var(--ts-small) var(--ts-font);fill:\
var(--ts-ink)}.twoshaft .tsp-number{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink);paint-order:stroke;stroke\
:var(--ts-paper);stroke-width:4px}.twoshaft .ts-pad{max-width:62rem}.twoshaft .ts-pad-face{position:relative;width:100%;\
border:1px solid var(--ts-line);background:var(--ts-paper)}.twoshaft .tsp-face{display:block;position:relative;width:100\
%;height:auto;touch-action:none;cursor:crosshair}.twoshaft .tsp-land{fill:var(--ts-faint);stroke:none}.twoshaft .tsp-edg\
e{fill:none;stroke:var(--ts-ink);stroke-linejoin:round}.twoshaft .tsp-text{fill:var(--ts-ink);font-family:var(--ts-font)\
;paint-order:stroke;stroke:var(--ts-paper);stroke-width:.5px;pointer-events:none;user-select:none}.twoshaft .tsp-hole{fi\
ll:var(--ts-paper);stroke:var(--ts-ink)}.twoshaft .tsp-blind{fill:var(--ts-ink)}.twoshaft .tsp-guide,.twoshaft .tsp-reac\
h,.twoshaft .tsp-hatch{fill:none;stroke:var(--ts-ink)}.twoshaft .tsp-spot{stroke:var(--ts-ink)}.twoshaft .tsp-stroke,.tw\
oshaft .tsp-live,.twoshaft .tsp-grain{fill:none;stroke-linejoin:round;stroke-linecap:butt}.twoshaft .tsp-film{stroke:var\
(--ts-film);stroke-opacity:.6}.twoshaft .tsp-bead{stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-wipe{stroke:\
var(--ts-paper);stroke-opacity:.85}.twoshaft .tsp-grain{stroke:var(--ts-ink)}.twoshaft .tsp-live{stroke:var(--ts-accent)\
;stroke-opacity:.5;stroke-linecap:round}.twoshaft .tsp-chosen{fill:none;stroke:var(--ts-accent);stroke-dasharray:3 2;poi\
nter-events:none}.twoshaft .ts-size{width:6em}.twoshaft .ts-size[aria-invalid=true]{border:2px dashed var(--ts-ink)}.two\
shaft .ts-pad-trouble{min-height:1.5em;color:var(--ts-ink)}.twoshaft .ts-passes{padding-left:2.5em;font-size:var(--ts-sm\
all);max-height:16rem;overflow-y:auto}.twoshaft .ts-passes li{padding:2px 0}.twoshaft .ts-remove{min-height:24px;padding\
:0 var(--ts-grid)}.twoshaft .ts-pad-tools .ts-box{max-width:100%;min-width:0}.twoshaft .ts-pad-tools .ts-pair{min-width:\
0}.twoshaft .ts-each{margin:0;padding-left:calc(3 * var(--ts-grid))}.twoshaft .ts-each li{padding:calc(var(--ts-grid) / \
2) 0}.twoshaft .ts-each li+li{border-top:1px solid var(--ts-line)}.twoshaft .ts-each-line{display:inline-block;width:min\
(100%,34em);margin-right:calc(2 * var(--ts-grid));vertical-align:middle}.twoshaft .ts-each select{max-width:100%;min-wid\
th:0;vertical-align:middle}.twoshaft .ts-pointed input[type=radio]{margin-right:var(--ts-grid)}.twoshaft .ts-scene{overf\
low-x:auto;margin:var(--ts-grid) 0}.twoshaft .ts-scene svg{display:block;max-width:none;max-height:none}.twoshaft .ts-sc\
ene [data-mark],.twoshaft .ts-scene [data-spot]{cursor:pointer}.twoshaft .ts-scene [data-mark]:focus-visible{outline:non\
e}.twoshaft .ts-scene [data-mark]:focus-visible .tss-ring{stroke:var(--ts-accent);stroke-width:4px}.twoshaft .ts-scene .\
tss-near path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:2.4px}.twoshaft .ts-scene .tss-\
chosen .tss-ring{fill:var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .ts-scene .tss-chosen .tss-letter{fill:var(--ts\
-on-accent)}.twoshaft .ts-scene .tss-on path:not(.tsu-behind,.tsu-pitch,.tsu-line),.twoshaft .ts-scene .tss-placed path:\
not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:3px}.twoshaft .ts-scene .tss-placed{pointer-e\
vents:none}.twoshaft .ts-pictures{display:grid;grid-template-columns:repeat(auto-fit,minmax(300px,1fr));gap:var(--ts-gri\
d);margin:var(--ts-grid) 0}.twoshaft .ts-picture-card{position:relative;padding:var(--ts-grid);border:1px solid var(--ts\
-line);cursor:pointer}.twoshaft .ts-picture-card.ts-on{outline:3px solid var(--ts-accent)}.twoshaft .ts-picture-card svg\
{width:100%;height:auto;max-height:300px}.twoshaft .ts-picture-letter{font-weight:600}.twoshaft .ts-trays{display:flex;f\
lex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-tray{display:flex;gap:var(--ts-grid);align-items:center}.twosha\
ft .ts-tray>div:last-child{display:grid;gap:calc(var(--ts-grid) / 2);max-width:22em}.twoshaft-form{padding-block:var(--t\
s-grid)}.twoshaft .ts-top{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 calc(3 * var(--ts-grid));borde\
r-bottom:1px solid var(--ts-line);padding-bottom:calc(var(--ts-grid) / 2)}.twoshaft .ts-who{font-size:var(--ts-small);co\
lor:var(--ts-quiet)}.twoshaft .ts-field{border:0;min-width:0;margin:calc(2 * var(--ts-grid)) 0 0}.twoshaft .ts-prompt{di\
splay:block;padding:0;font-weight:600;margin-bottom:var(--ts-grid)}.twoshaft .ts-line-of{display:flex;flex-wrap:wrap;ali\
gn-items:center;gap:var(--ts-grid)}.twoshaft .ts-line-of+.ts-read,.twoshaft .ts-line-of+.ts-read+.ts-status{display:inli\
ne}.twoshaft .ts-line-of+.ts-read:not(:empty){margin-right:calc(2 * var(--ts-grid))}.twoshaft .ts-read.ts-error,.twoshaf\
t .ts-status-unread{color:var(--ts-ink);font-size:var(--ts-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-unre\
ad .ts-shape,.twoshaft .ts-status-bad .ts-shape{color:var(--ts-bad)}.twoshaft .ts-status-saved .ts-shape{color:var(--ts-\
good)}.twoshaft .ts-status-bad{color:var(--ts-ink);font-weight:600}.twoshaft .ts-order+.ts-read{display:none}.twoshaft .\
ts-bench{margin-top:var(--ts-grid)}.twoshaft .ts-bench summary{cursor:pointer;min-height:24px;font-size:var(--ts-small);\
color:var(--ts-quiet)}.twoshaft .ts-bench[open]{border:1px solid var(--ts-line);padding:var(--ts-grid)}.twoshaft .ts-ben\
ch-rows{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,20em),1fr));gap:var(--ts-grid) calc(2 * var(\
--ts-grid));margin:var(--ts-grid) 0}.twoshaft .ts-bench-row{min-width:0}.twoshaft .ts-bench-row select{max-width:100%;mi\
n-width:0}.twoshaft .ts-bench-row label{display:block;max-width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-hei\
ght:0}.twoshaft.ts-question{border-left:4px solid var(--ts-accent);padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-a\
cts{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin-top:var(--ts-grid)}.twoshaft .ts-told:not(:empty){margin-top:v\
ar(--ts-grid)}.twoshaft .ts-told-unread{border:2px solid var(--ts-ink);padding:var(--ts-grid)}.twoshaft .ts-teacher{bord\
er-style:dashed;font-size:var(--ts-small)}.twoshaft.ts-question .ts-title{font-weight:600}.twoshaft.ts-question:has(.ts-\
asked>:nth-child(2)){max-width:none}.twoshaft .ts-asked{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(10\
0%,340px),1fr));gap:0 calc(4 * var(--ts-grid));align-items:start}.twoshaft-start>div{max-width:1040px}.twoshaft-start h2\
{font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-in{m\
argin:calc(2 * var(--ts-grid)) 0 calc(3 * var(--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;gap:calc(1.5 * var(--\
ts-grid));justify-items:start}.twoshaft-start .ts-pair{display:grid;gap:calc(var(--ts-grid) / 2)}.twoshaft-start .ts-pai\
r label{font-weight:600}.twoshaft-start .ts-pair .ts-box{width:22em;max-width:100%}.twoshaft-start .ts-first{background:\
var(--ts-accent);color:var(--ts-on-accent)}.twoshaft-start .ts-button{font-size:var(--ts-text)}.twoshaft-start .ts-said:\
not(:empty){border-left:3px solid var(--ts-accent);padding:var(--ts-grid);background:var(--ts-faint)}.twoshaft-start .ts\
-me{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:var(--\
ts-grid)}.twoshaft-start .ts-table{border-collapse:collapse;width:100%;margin:0 0 calc(2 * var(--ts-grid));font-size:var\
(--ts-text);table-layout:fixed}.twoshaft-start .ts-table :is(th,td){text-align:left;vertical-align:top;white-space:norma\
l;padding:var(--ts-grid);border:0;border-bottom:1px solid var(--ts-line);background:none;max-width:none}.twoshaft-start \
.ts-table thead th{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-table th:nth-child(1){width:26%}.\
twoshaft-start .ts-table th:nth-child(2){width:16%}.twoshaft-start .ts-table th:nth-child(4){width:24%}.twoshaft-start .\
ts-small-line{display:block;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-doing{display:flex;flex-\
wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-start a.ts-link:is(:link,:visited,:hover,:focus,:active){color\
:var(--ts-accent);text-decoration:underline;display:inline-flex;align-items:center;min-height:var(--ts-target);cursor:po\
inter}.twoshaft-start .ts-lessons{padding-left:calc(2 * var(--ts-grid))}.twoshaft-start .ts-lessons .ts-link{min-height:\
24px}.twoshaft-start .ts-module th{padding-top:calc(3 * var(--ts-grid));font-size:var(--ts-text)}.twoshaft-start .ts-tab\
le .ts-module th{width:auto}.twoshaft-start .ts-assigned{margin-left:var(--ts-grid);font-weight:400;color:var(--ts-quiet\
)}.twoshaft-start .ts-next{margin:0}.twoshaft-start summary{min-height:var(--ts-target);align-content:center;cursor:poin\
ter}@media(max-width:560px){.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.twoshaft-start .ts-t\
able :is(tr,th,td):nth-child(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:1px solid var(--ts-l\
ine);padding:var(--ts-grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.twoshaft-start .ts-gap\
s{padding-left:calc(2 * var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{display:block}.twoshaft-\
start .ts-question{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk{max-width:1240px}.tw\
oshaft-desk .ts-desk-top{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid)\
}.twoshaft-desk .ts-desk-pages{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin:var(--ts-grid) 0;padding-bottom:var\
(--ts-grid);border-bottom:1px solid var(--ts-line)}.twoshaft-desk .ts-button[aria-current=page]{border-width:3px;font-we\
ight:700}.twoshaft-desk :is(h2,h3){font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-desk h3,.\
twoshaft-desk .ts-button{font-size:var(--ts-text)}.twoshaft-desk .ts-first{background:var(--ts-accent);color:var(--ts-on\
-accent)}.twoshaft-desk .ts-said:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border-left:3px solid var(--ts-accent);p\
adding:var(--ts-grid);background:var(--ts-faint)}.twoshaft-desk :is(.ts-said,.ts-alert,.ts-told,.ts-trouble){white-space\
:pre-line;max-width:none}.twoshaft-desk .ts-desk-here{width:100%;scroll-margin-block:calc(2 * var(--ts-grid))}.twoshaft-\
desk .ts-busy{display:flex;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-desk-body[aria-busy=true]{cursor:pro\
gress}.twoshaft-desk .ts-desk-body>*{margin-top:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-caption{display:flex;fl\
ex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:calc(var(--ts-grid) / 2)}\
.twoshaft-desk .ts-desk-scroll{max-height:360px;overflow:auto;border:1px solid var(--ts-line)}.twoshaft-desk .ts-table{b\
order-collapse:collapse;margin:0;min-width:100%;font-size:var(--ts-text)}.twoshaft-desk .ts-table :is(th,td){text-align:\
left;vertical-align:top;white-space:normal;padding:calc(var(--ts-grid) / 2) var(--ts-grid);border:0;border-bottom:1px so\
lid var(--ts-line);background:none;max-width:28em;font-weight:400;overflow-wrap:break-word}.twoshaft-desk .ts-table tbod\
y th{position:sticky;left:0;background:var(--ts-paper)}.twoshaft-desk .ts-table thead th{position:sticky;top:0;z-index:1\
;background:var(--ts-paper);box-shadow:inset 0 -1px var(--ts-line);white-space:nowrap}.twoshaft-desk .ts-table .ts-figur\
e{text-align:right;font-variant-numeric:tabular-nums}.twoshaft-desk .ts-table .ts-tick{width:24px}.twoshaft-desk input[t\
ype=checkbox]{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft-desk :is(.ts-sort,.ts-cell){min-height:24px\
;min-width:24px;padding:0;border:0;background:none;color:var(--ts-accent);font:inherit;text-align:inherit;cursor:pointer\
}.twoshaft-desk .ts-sort{font-weight:600}.twoshaft-desk .ts-cell{text-decoration:underline}.twoshaft-desk .ts-desk-form{\
display:grid;gap:var(--ts-grid);justify-items:start;padding-top:var(--ts-grid);border-top:1px solid var(--ts-line)}.twos\
haft-desk .ts-desk-form>*{min-width:0;max-width:100%}.twoshaft-desk .ts-desk-fields{display:flex;flex-wrap:wrap;align-it\
ems:flex-start;gap:var(--ts-grid) calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-field{display:grid;grid-template-colu\
mns:minmax(0,auto);gap:calc(var(--ts-grid) / 2);max-width:100%}.twoshaft-desk .ts-desk-field>label:not(.ts-option){font-\
weight:600}.twoshaft-desk .ts-desk-field .ts-box{width:18em;max-width:100%}.twoshaft-desk textarea.ts-box{width:30em;pad\
ding:var(--ts-grid)}.twoshaft-desk .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft\
-desk .ts-question{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk a.ts-link:is(:link,:\
visited,:hover,:focus,:active){color:var(--ts-accent);text-decoration:underline}.twoshaft-desk :is(textarea,a,h2,.ts-des\
k-scroll):focus-visible{outline:3px solid var(--ts-accent);outline-offset:2px}@media(forced-colors:active){.twoshaft-des\
k .ts-button[aria-current=page]{border-color:Highlight}.twoshaft-desk .ts-first{border-width:2px;font-weight:700}.twosha\
ft-desk .ts-said:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border:1px solid CanvasText}}.twoshaft .tsj-bench{displa\
y:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--ts-grid)}.twoshaft .tsj-bench\
 svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:pointer}.twoshaft .tsj-bolt:focus{outline:none}\
.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsj-bolt.tsj-started circle{s\
troke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.twoshaft .tsj-bolt.tsj-tight text{fill:var(--ts-p\
aper)}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(--ts-grid)}.twoshaft .tsj-slide input{width:18\
0px;max-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-target)}.twoshaft .tsj-figure{min-width:8ch;font-va\
riant-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-height:3em;margin-top:var(--ts-grid)}.twoshaft .t\
sj-check{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsj-check inpu\
t{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-template-columns:max-co\
ntent minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-width) + 12ch);margin:va\
r(--ts-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block;max-width:100%;height\
:auto}.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:wrap}@media(max-width:\
700px){.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{border-collapse:collapse;f\
ont:var(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align:left;font-weight:600;\
padding:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-align:middle;padding:4p\
x 12px 4px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twoshaft table.tsk-board thead th{f\
ont-weight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:34ch;white-space:normal}.twoshaft table.tsk-b\
oard .tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft table.tsk-board select{\
max-width:44ch}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:600;border-bott\
om:2px solid var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{min-width:24ch}\
.twoshaft .tsk-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){.twoshaft table.tsk-board,.twos\
haft table.tsk-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.twoshaft table.\
tsk-board thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft table.tsk-board tr\
{border-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twoshaft table.tsk-\
board tbody td,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-width:0;padding:2px\
 0;text-align:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-board tbody .tsk-\
best td{border:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-\
board tbody th{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) ": ";color:var(-\
-ts-quiet)}.twoshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-board select{max-width:100%}}.t\
woshaft .ts-gate{cursor:default;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:no\
ne}.twoshaft .ts-pulling,.twoshaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-acc\
ent)}.twoshaft .ts-gate svg{user-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft \
.ts-happened.ts-stopped,.twoshaft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto\
;padding-left:calc(4 * var(--ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate+.ts-happened{min-height\
:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 12ch);font-weight:600}.twoshaft-rig .ts-how{width:34em;max-w\
idth:100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3px}.twoshaft .tsw-train svg{user-select:none}.twoshaft .tsw-\
counts{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid));margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:\
border-box;display:grid;grid-template-columns:104px 1fr;column-gap:var(--ts-grid);align-items:center;width:268px;padding\
:4px;border:1px solid var(--ts-line);border-radius:2px;text-align:left;font-size:var(--ts-small)}.twoshaft .tsw-count.ts\
w-hand{border:2px solid var(--ts-accent);padding:3px}.twoshaft .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-na\
me{font-weight:600}.twoshaft .tsw-count>.tsw-dial{grid-column:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column\
:2}.twoshaft .tsw-dial{width:104px;height:104px;touch-action:none;cursor:grab;user-select:none}.twoshaft .tsw-dial:activ\
e{cursor:grabbing}.twoshaft .tsw-plate{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:\
var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twosh\
aft .tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-tick{stroke:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill\
:var(--ts-ink)}.twoshaft .tsw-number{font:15px var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strok\
es{min-height:1.5em;font-family:monospace;font-size:var(--ts-text);letter-spacing:1px;overflow-wrap:anywhere;max-height:\
4.5em;overflow-y:auto}.twoshaft .tsw-figure{min-height:1.5em;font-variant-numeric:tabular-nums}.twoshaft .tsw-figure:emp\
ty{min-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsh-picture{overflow-x:auto;margin:var(--ts-grid) 0}\
.twoshaft .tsh-picture svg{display:block;width:100%;min-width:720px;max-width:1100px;height:auto}.twoshaft .tsh-place{cu\
rsor:pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaft .tsh-place:hover .tsh-hit{stroke:var(--ts-line);stroke-wi\
dth:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:hover .tsh-hit{stroke:var(--ts-accent);stroke-width:2}.twosha\
ft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600\
}.twoshaft .tsh-box{border-left:3px solid var(--ts-accent);padding-left:calc(1.5 * var(--ts-grid));min-height:5.5em}.two\
shaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twoshaft .tsh-verdict{margin-top:var(--ts-grid)!important}.twosh\
aft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-sliders{display:grid;grid-template-columns:repeat(auto-fit,minmax\
(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:960px}.twoshaft .tsl-row{display:\
grid;grid-template-columns:12em minmax(6em,1fr) 4em;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.t\
woshaft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;min-height:24px}.twoshaft .tsl-row .ts-box{just\
ify-self:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;text-align:right}.twoshaft .tsl-drawing{overflow-\
x:auto}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:600px;max-width:820px;height:auto}.twoshaft .tsl-su\
m{font-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@media(max-width:480px){.twoshaft .tsl-sliders{grid-template\
-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wrap:wrap;min-width:0}.twoshaft .tsl-row input{max-width:100\
%}}.twoshaft .tsp-section{overflow-x:auto}.twoshaft .tsp-gauge{width:220px;height:200px;flex:none}.twoshaft .tsp-section\
 svg{display:block;max-width:100%;height:auto;min-width:320px}.twoshaft .ts-pair[hidden]{display:none}.twoshaft .ts-cell\
s{position:absolute;pointer-events:none}.twoshaft .tsp-land.tsp-clear{fill:none}.twoshaft .tsp-lump{fill:none;stroke:var\
(--ts-bead);stroke-linecap:round}.twoshaft .tsp-way{fill:none;stroke:var(--ts-bad);stroke-linecap:round;stroke-linejoin:\
round}.twoshaft .tsp-out{fill:var(--ts-ink);stroke:var(--ts-paper);stroke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.t\
woshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp-shut .tsp-chosen{display:none}.twoshaft .ts-legend{display:flex;flex-wr\
ap:wrap;gap:4px calc(2 * var(--ts-grid));font-size:var(--ts-small);min-height:1.6em}.twoshaft .ts-key{display:inline-fle\
x;align-items:center;gap:4px}.twoshaft .ts-swatch{width:25px;height:15px;border:1px solid var(--ts-line)}.twoshaft .ts-r\
ange{accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-clock{min-width:6em;font-weight:600}.twoshaft .ts-unit{\
overflow:auto;max-height:620px;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:pan-x pan-y pinch-zo\
om}.twoshaft .ts-unit svg{display:block;max-width:none;max-height:none}.twoshaft .ts-unit [data-part]{cursor:pointer}.tw\
oshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:3.2px;stroke\
-dasharray:none}.twoshaft .ts-unit [data-part]:hover path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent)}\
.twoshaft .ts-unit:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-unit-name{min-heig\
ht:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .ts-unit-words p{max-width:var(--ts-width)}.twoshaft .ts-prom\
pt[hidden],.twoshaft .ts-sentences[hidden]{display:none}.twoshaft .ts-told{min-height:2em;max-height:9em;overflow-y:auto\
}.twoshaft .ts-build{display:grid;grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));ali\
gn-items:start}.twoshaft .ts-buildlist{display:grid;gap:4px;max-height:22rem;overflow-y:auto;padding:4px}.twoshaft .ts-b\
uildstep{text-align:left;padding-block:2px;min-height:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-col\
or:var(--ts-line)}.twoshaft .ts-buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twosh\
aft .ts-buildstep[aria-current]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-wid\
th:100%}.twoshaft .ts-hand{border:1px solid var(--ts-line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twos\
haft .ts-hand .ts-field{border:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .\
ts-do{text-align:left;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts\
-grid);font-size:var(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inheri\
t}.twoshaft .ts-record caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-\
align:top;padding:3px 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts\
-record .ts-blank{min-width:12em;height:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,1\
fr)}.twoshaft .ts-buildlist,.twoshaft .ts-hand{max-height:none}}@media(forced-colors:active){.twoshaft .ts-button[aria-p\
ressed=true],.twoshaft .ts-buildstep[aria-current],.twoshaft .ts-held{forced-color-adjust:none;background:Highlight;bord\
er-color:Highlight;color:HighlightText}.twoshaft :is(.ts-step,.ts-pathlist li):not(.ts-current,.ts-inblock){border-left-\
color:Canvas}.twoshaft :is(.ts-step,.ts-pathlist li).ts-current{border-left-color:Highlight}.twoshaft-bar .ts-tasks a:no\
t([aria-current]){border-bottom-color:Canvas}}`,ss="twoshaft-styles";function Ln(){let t=document.getElementById(ss);t?.
textContent!==es&&(t?.remove(),document.head.append(e("style",{id:ss},es)))}function X({model:t,el:s},{kind:n,lost:o=()=>Gt(
s),line:r=()=>{}}){Ln(),s.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=e("p",{class:"ts-alert",role:"\
alert"}),c=ts(s),i=()=>s.classList.contains("ts-lost"),l=[],u=Sn(t,()=>{i()||(s.classList.add("ts-lost"),c.down(),o())},
g=>{i()||(g?c.down():c.up(),r(g))}),p=$n(s),h,w=(g,k)=>{t.on(g,k),l.push([g,k])};return w("msg:custom",g=>{g.type==="tro\
uble"&&!i()&&(a.textContent=g.reason)}),{alert:a,follow:w,isLost:i,send(g){i()||(t.send(g),clearTimeout(h),h=window.setTimeout(
()=>t.send({type:"rest"}),yn))},show:(...g)=>s.replaceChildren(...Nt(g)),close(){c.up(),clearTimeout(h),p(),u();for(let[
g,k]of l)t.off(g,k)}}}function ns({model:t,el:s}){let n=X({model:t,el:s},{kind:"rig",lost:()=>l.setDisabled(!0)}),o=e("p",{class:"ts-finding",
role:"status"}),r=e("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=et("order"),n.send({type:"order",order:p,turn:c})},
l=ne({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),d=e("button",{type:"\
button",class:"ts-button",onclick:()=>l.change([...a],"The first order stands again")},"Start again");l.tools.append(d),
n.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),n.alert,o,r,l.element);function u(){let p=t.
get("judged");c!==null&&p.turn!==c||(c=null,o.textContent=p.finding,r.textContent=p.cost,l.setOrder(p.order),l.setNotes(
p.notes))}return n.follow("change:judged",u),u(),n.close}var Cn=["lit","bench","absent"],os=[1,1.5,2,3,4.5];function re({svg:t,parts:s,words:n}){let o=e("div",{class:"ts-unit",tabindex:"\
0",role:"application","aria-label":"The unit in section. Left and right arrows walk from part to part, up and down to th\
e part above or below, plus and minus zoom."});o.innerHTML=t;let r=o.querySelector("svg"),a=r.querySelector(".tsu-marks");
r.setAttribute("aria-hidden","true"),r.removeAttribute("role");let c=new Map(s.map(([m])=>[m,[]]));for(let m of Q(r,"[da\
ta-part]"))c.get(String(m.dataset.part))?.push(m);let i=new Map(s.map(([m],x)=>[m,x])),l=e("p",{class:"ts-hint ts-unit-n\
ame",role:"status"}),d=St({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],...s.map(([m,x])=>[m,x])]),
u=-1,p=0,h={},w=m=>{let x=h[m];return x==="absent"?" Not there yet.":x==="bench"?" On the bench.":x==="lit"?" In hand.":
""},g=m=>`${s[m][1]}. ${s[m][2]}${w(s[m][0])}`;function k(m){for(let y of Q(r,".tsu-chosen"))y.classList.remove("tsu-cho\
sen");u=m;let x=m<0?"":s[m][0];d.value=x,l.textContent=m<0?C:g(m);for(let y of c.get(x)??[])y.classList.add("tsu-chosen");
m>=0&&N(x)}function v(m){let x=(c.get(m)??[]).map(O=>O.getBBox()),y=Math.min(...x.map(O=>O.x)),A=Math.max(...x.map(O=>O.
x+O.width)),M=Math.min(...x.map(O=>O.y)),W=Math.max(...x.map(O=>O.y+O.height));return{x:(y+A)/2,y:(M+W)/2}}function N(m){
let x=v(m),y=r.getBoundingClientRect().width/r.viewBox.baseVal.width,[A,M]=[x.x*y,x.y*y],{scrollLeft:W,scrollTop:O,clientWidth:E,
clientHeight:D}=o;(A<W+40||A>W+E-40)&&(o.scrollLeft=A-E/2),(M<O+40||M>O+D-40)&&(o.scrollTop=M-D/2)}function P(m){p=Math.
max(0,Math.min(os.length-1,p+m)),r.style.width=`${100*os[p]}%`,r.style.height="auto",u>=0&&N(s[u][0])}function S(m){let x=v(
s[u][0]),[y]=s.map(([A],M)=>({k:M,at:v(A)})).filter(({k:A,at:M})=>A!==u&&(M.y-x.y)*m>4).sort((A,M)=>rs(A.at,x)-rs(M.at,x));
y&&k(y.k)}o.addEventListener("keydown",m=>{if(vt(m))return;let x=s.length-1;if(m.key==="ArrowRight")k(u>=x?0:u+1);else if(m.
key==="ArrowLeft")k(u<=0?x:u-1);else if(m.key==="ArrowUp"||m.key==="ArrowDown")u<0?k(0):S(m.key==="ArrowUp"?-1:1);else if(m.
key==="Home")k(0);else if(m.key==="End")k(x);else if(m.key==="+"||m.key==="=")P(1);else if(m.key==="-")P(-1);else if(m.key===
"Escape")k(-1);else return;m.preventDefault()}),o.addEventListener("click",m=>{let x=$t(m,"[data-part]")?.dataset.part;k(
x===void 0?-1:i.get(x)??-1)}),o.addEventListener("pointerover",m=>{let x=$t(m,"[data-part]")?.dataset.part;if(x===void 0||
m.pointerType!=="mouse")return;let y=$t(m,"[data-solid]")?.querySelector("title")?.textContent,A=s[i.get(x)??0][1];L.textContent=
y&&y!==A?`${y} (${A})`:A}),o.addEventListener("pointerleave",()=>{L.textContent=""}),d.addEventListener("change",()=>k(i.
get(d.value)??-1));let L=e("span",{class:"ts-unit-over","aria-hidden":"true"}),C="Point at a part, tap it, or choose it \
here to read its name.";l.textContent=C;let b=e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"Part ",d),rt("−",
()=>P(-1),"Smaller"),rt("+",()=>P(1),"Larger"),L),f=e("details",{class:"ts-unit-words"},e("summary",{},"What is where, i\
n words"),e("p",{},n));return P(0),{nodes:[b,l,o,f],show(m){h=m.looks;for(let[x,y]of c)for(let A of y)for(let M of Cn)A.
classList.toggle(`tsu-${M}`,h[x]===M);a.innerHTML=m.marks,u>=0&&(l.textContent=g(u))}}}function rs(t,s){return Math.abs(
t.y-s.y)+2*Math.abs(t.x-s.x)}function as(t,s){t.setAttribute("aria-disabled",String(s)),t.classList.toggle("ts-off",s)}function is({model:t,el:s}){let n=e(
"p",{class:"ts-finding"}),o=e("p",{class:"ts-happened",role:"status"}),r=e("p",{class:"ts-hint"}),a=re(t.get("picture")),
c=e("p",{class:"ts-hint",role:"status"}),i=e("dl",{class:"ts-facts"}),l=e("div",{class:"ts-ready"}),d=e("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),u=e("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:f=>{f.key==="Enter"&&S()}}),p=e("span"),h=f=>C.send({type:"move",by:f}),w=f=>C.
send({type:"go",position:f}),g=rt("Back",()=>h(-1),"One step back"),k=rt("Next",()=>h(1),"Next step"),v=rt("Start",()=>w(
0),"Start with an empty bench"),N=rt("End",()=>w(t.get("view").count),"End of the order"),P=rt("Try it",()=>C.send({type:"\
take",step:d.value}),"Try it: the step chosen here"),S=()=>{let f=Number.parseInt(u.value,10);f>=0&&w(f)},L=e("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},v,g,k,N,e("span",{class:"t\
s-pair"},"place ",u,p,rt("Go",S,"Go to this place")));L.addEventListener("keydown",f=>{if(!(f.target===u||vt(f))){if(f.key===
"ArrowLeft")h(-1);else if(f.key==="ArrowRight")h(1);else if(f.key==="Home")w(0);else if(f.key==="End")w(t.get("view").count);else
return;f.preventDefault()}});let C=X({model:t,el:s},{kind:"rig"});C.show(e("p",{class:"ts-who"},"Practice. Nothing here \
is marked or saved."),C.alert,n,L,o,r,c,...a.nodes,i,e("p",{class:"ts-prompt"},"Do another step next"),l,e("div",{class:"\
ts-tools"},e("span",{class:"ts-pair"},"or one that is not ready: ",d,P)));function b(){let f=t.get("view");n.textContent=
f.finding,o.textContent=f.happened,r.textContent=f.next?`Next in this order: ${f.next}`:"This is the end of the order.",
c.textContent=f.build.words,a.show(f.build),i.replaceChildren(...Et(f.facts));let m=l.contains(document.activeElement);l.
replaceChildren(...f.ready.map(([A,M])=>rt(M,()=>C.send({type:"take",step:A})))),f.ready.length||l.append(e("p",{class:"\
ts-hint"},"No step is ready.")),m&&(l.querySelector("button")??k).focus(),d.replaceChildren(...mt(f.waiting)),d.disabled=
P.disabled=!f.waiting.length,u.value=String(f.position),p.textContent=` of ${f.count} `;let x=f.position===0,y=f.position===
f.count;for(let A of[g,v])as(A,x);for(let A of[k,N])as(A,y)}return C.follow("change:view",b),b(),C.close}function Ft(t){let s=null,n=null,o=a=>{if(s!==null){n=a;return}s=et("turn"),t(a,s)},r=()=>{s=null;let a=n;n=null,a!==null&&
o(a)};return{ask:o,free:r,answered(a){a===s&&r()},get waiting(){return s!==null}}}var ct=(t,s,n,o,r)=>j("line",{x1:t,y1:s,x2:n,y2:o,class:r}),lt=(t,s,n,o="middle")=>j("text",{x:t,y:s,"text-anchor":o,class:"\
tsg-text"},n);function qt(){let t=j("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(j("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let o=0;o<100;o+=1){let r=o/100*2*Math.PI,a=o%10===0?78:o%5===0?82:86;t.append(ct(100+
a*Math.sin(r),100-a*Math.cos(r),100+92*Math.sin(r),100-92*Math.cos(r),o%10===0?"tsg-mark tsg-long":"tsg-mark")),o%10===0&&
t.append(lt(100+66*Math.sin(r),104.5-66*Math.cos(r),String(o)))}t.append(j("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let o=0;o<10;o+=1){let r=o/10*2*Math.PI;t.append(ct(100+15*Math.sin(r),134-15*Math.cos(r),100+19*Math.sin(r),134-19*
Math.cos(r),"tsg-mark"))}let s=ct(100,134,100,119,"tsg-small"),n=j("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(s,n,j("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(o,r){n.setAttribute("tra\
nsform",`rotate(${o*360} 100 100)`),s.setAttribute("transform",`rotate(${o*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${r}`)}}}function cs({top:t,mark:s,perFigure:n}){let o=j("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),r=c=>30+c/t*540;o.append(j("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*s<=t+1e-9;c+=1){let i=c%n===0;o.append(ct(r(c*s),22,r(c*s),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&o.
append(lt(r(c*s),84,String(Math.round(c*s))))}let a=j("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return o.append(
a,lt(586,14,"newtons","end")),{node:o,top:t,set(c,i){a.setAttribute("transform",`translate(${r(Math.min(c,t))} 0)`),o.setAttribute(
"aria-label",`Spring scale, one mark is ${s} N. ${i}`)}}}function ls({low:t,high:s,reach:n}){let o=j("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),r=i=>360+Math.max(-n,Math.min(n,i))/n*340;o.append(j("rect",{x:r(t),y:34,width:r(
s)-r(t),height:24,class:"tsg-target"}),lt((r(t)+r(s))/2,84,"target"),ct(20,46,700,46,"tsg-mark"),ct(360,26,360,66,"tsg-m\
ark tsg-long"),lt(20,20,"end play","start"),lt(700,20,"preload","end"),lt(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let l of[
i,-i])o.append(ct(r(l),42,r(l),50,"tsg-mark"));o.append(lt(r(-n),70,`${n.toFixed(2)} mm`,"start"),lt(r(n),70,`${n.toFixed(
2)} mm`,"end"));let a=j("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=j("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return o.append(a,c),{node:o,set(i,l,d){a.setAttribute("transform",`translate(${r(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${r(l)} 0)`),o.setAttribute("aria-label",d)}}}function gt(t,{min:s,max:n,step:o,value:r,words:a,onInput:c}){let i=e(
"input",{type:"range",class:"ts-slider",min:s,max:n,step:o,value:r,"aria-label":t}),l=e("output",{class:"ts-slid"},a(r));
return i.addEventListener("input",()=>{let d=a(Number(i.value));l.textContent=d,i.setAttribute("aria-valuetext",d),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(r)),{box:i,row:e("label",{class:"ts-slide"},e("span",{},t),i,l),set(d){i.value=
String(d),l.textContent=a(d)}}}function ht(t,s,n,o){let r=e("select",{class:"ts-box","aria-label":t,onchange:()=>o(r.value)},
...s.map(([a,c])=>e("option",{value:a,selected:a===n},c)));return{box:r,row:e("span",{class:"ts-pair"},`${t} `,r)}}function ds({model:t,el:s}){let n=t.get("about"),o=t.get("shown").state,r=null,a=e("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=e("p",{class:"ts-hint"}),i=e("p",{class:"ts-finding",role:"status"}),l=e("u\
l",{class:"ts-sentences"}),d=Ft((b,f)=>S.send({type:"set",state:b,turn:f})),u=b=>{o={...o,...b},d.ask(o)},p=j("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),h=ct(0,0,0,0,"tsg-mark tsg-long"),w=lt(0,0,""),g=96,
k=g/(n.readingsOnly?o.radius:n.radii[1]),v=j("svg",{viewBox:`0 0 ${2*g+120} ${2*g+30}`,width:2*g+120,height:2*g+30,class:"\
tsg-drum",role:"img"}),N=g+4;p.setAttribute("transform",`translate(${N} ${N})`),v.append(p,h,ct(4,N,2*g+4,N,"tsg-centre"),
ct(N,4,N,2*g+4,"tsg-centre"),j("circle",{cx:N,cy:N,r:10,class:"tsg-face"}),w);let P=[e("div",{class:"ts-tools"},G("Turn \
the shaft ten times",()=>u({turns:o.turns+10})))];if(!n.readingsOnly){let b=n.kinds,f=b.map(([m,x])=>e("label",{class:"t\
s-option"},e("input",{type:"checkbox",checked:o.kinds.includes(m),onchange:y=>u({kinds:b.map(([A])=>A).filter(A=>A===m?y.
target.checked:o.kinds.includes(A))})}),`with ${x}`));P[0].append(G("Fit the rings anew",()=>u({turns:0}))),f.length&&P.
push(e("fieldset",{class:"tsg-ticks"},e("legend",{class:"ts-hint"},"What turns with the bearings"),...f)),P.push(gt("Set\
ting",{min:-.05,max:n.highest,step:.005,value:o.setting,onInput:m=>u({setting:m}),words:m=>m<0?`${(-m).toFixed(3)} mm of\
 end play`:`${m.toFixed(3)} mm of preload`}).row,gt("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:o.radius,
onInput:m=>u({radius:m}),words:m=>`${m} mm`}).row)}let S=X({model:t,el:s},{kind:"rig"});S.show(e("p",{class:"ts-who"},n.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),S.alert,
e("div",{class:"tsg-beside"},v,e("div",{class:"tsg-side"},a,c)),...P,i,l);function L(){let b=t.get("shown");d.waiting||(o=
b.state);let f=k*b.state.radius;Ot(p,{r:f}),Ot(h,{x1:N,y1:N-f,x2:2*g+120,y2:N-f}),Ot(w,{x:N,y:2*g+22}),w.textContent=`dr\
um, radius ${b.state.radius} mm`,v.setAttribute("aria-label",`A drum of ${b.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),r?.top!==b.scale.top&&(r=cs(b.scale),a.replaceChildren(r.node),c.textContent=
`Spring scale to ${b.scale.top} N, one mark ${b.scale.mark} N.`),r?.set(b.pull,b.pullWords),i.textContent=b.finding,l.replaceChildren(
...Dt(b.words)),d.answered(b.turn)}let C=()=>d.free();return S.follow("change:shown",L),S.follow("msg:custom",C),L(),S.close}function Ct({model:t,el:s},n){let o=t.get("about"),r=t.get("shown").state,a=Ft((p,h)=>c.send({type:"set",state:p,turn:h})),
c=X({model:t,el:s},{kind:"rig"}),i=e("p",{class:"ts-finding",role:"status"}),l=n(o,p=>{r={...r,...p},a.ask(r)},r),d=o.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";c.show(e("p",{class:"\
ts-who"},d),c.alert,e("div",{class:"tsg-wide"},l.picture),...l.controls,i);function u(){let p=t.get("shown");a.waiting||
(r=p.state),l.set(p,r),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",u),c.follow("msg:custom",
a.free),u(),c.close}var Lt=(...t)=>e("div",{class:"ts-tools"},...t);var En={x:44,y:84,perMm:34};function Mn(t){let s=j("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:o,
perMm:r}=En,a=j("g",{}),c=j("g",{});s.append(j("rect",{x:1,y:22,width:758,height:o-22,class:"tsi-paper"}),j("rect",{x:n-
30,y:o,width:t.lines*t.space*r+60,height:64,class:"tsi-body"}),a,c,lt(12,14,"main scale, mm","start"),lt(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let l=n+i*t.space*r;c.append(
ct(l,o,l,o+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(lt(l,o+48,String(i)))}return{node:s,set(i){a.replaceChildren();for(let l=Math.
max(0,Math.ceil(i.mm-1));l<=t.top+25;l+=1){let d=n+(l-i.mm)*r;d<4||d>756||(a.append(ct(d,o,d,o-(l%10===0?34:l%5===0?28:20),
"tsi-fine")),l%5===0&&a.append(lt(d,o-40,String(l))))}s.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function us(t){
return Ct(t,(s,n,o)=>{let r=Mn(s),a=gt("Rod",{min:0,max:s.top,step:.05,value:o.rod,words:()=>"push down to the right",onInput:l=>n(
{rod:l})}),c=ht("Foot",s.places,o.place,l=>n({place:l,rod:0})),i=ht("Look",s.eyes,o.eye,l=>n({eye:l}));return{picture:r.
node,controls:[Lt(c.row,i.row),Lt(G("Push the rod down until it rests",()=>n({rod:s.top})),G("Lift the rod",()=>n({rod:0}))),
a.row],set(l,d){r.set(l),c.box.value=d.place,i.box.value=d.eye,a.box.value=d.rod}}})}function ps({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding"}),r=e("p",{class:"tsj-happened",role:"status"}),
a=e("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=e("div",{class:"tsj-bars"}),i=Q(a,"[data-bolt]"),l=et("torq\
ue"),d=e("input",{id:l,type:"range",min:10,max:100,step:5,oninput:()=>h()});d.value="100";let u=e("output",{class:"tsj-f\
igure",for:l}),p=()=>d.value==="100"?n.torque:Number((Math.round(n.torque*Number(d.value)/100/n.step)*n.step).toFixed(3));
function h(){u.textContent=`${p()} N·m`,d.setAttribute("aria-valuetext",`${p()} newton metres, ${d.value} percent of th\
e torque`)}let w=f=>S.send({type:"pull",bolt:f,torque:p()}),g=G("Take back",()=>S.send({type:"undo"})),k=G("Wait until t\
he film has run out",()=>S.send({type:"wait"})),v=e("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>S.send({type:"set",film:Number(v.value)})},...n.films.map(f=>e("option",{value:f},f?`${f} µm thick`:"none"))),
N=e("input",{type:"checkbox",onchange:()=>S.send({type:"set",scattered:N.checked})});a.addEventListener("click",f=>{let m=$t(
f,"[data-bolt]");m&&(P(m),w(Number(m.dataset.bolt)))});let P=f=>{for(let m of i)m.setAttribute("tabindex",m===f?"0":"-1");
f.focus({preventScroll:!0})};a.addEventListener("keydown",f=>{let m=$t(f,"[data-bolt]");if(!m||f.ctrlKey||f.metaKey||f.altKey)
return;let x=Number(m.dataset.bolt),y={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[f.key];if(y)P(i[(x+y+i.length)%
i.length]);else if(f.key==="Home")P(i[0]);else if(f.key==="End")P(i[i.length-1]);else if(f.key==="Enter"||f.key===" ")f.
repeat||w(x);else return;f.preventDefault()});let S=X({model:t,el:s},{kind:"rig"}),L=e("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},G("Start all by hand",()=>S.send({type:"start"})),...n.rounds.map(([f,m])=>G(`One round ${m}`,
()=>S.send({type:"round",pattern:f,torque:p()}))),g,G("Start again",()=>S.send({type:"again"}))),C=e("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},e("span",{class:"tsj-slide"},e("label",{for:l},"Wrench set to"),d,u));n.films.length&&
C.append(e("label",{class:"ts-pair"},"Wet sealant",v),k,e("label",{class:"tsj-check"},N,"friction scatters from bolt to \
bolt")),S.show(e("p",{class:"ts-who"},n.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),S.alert,o,C,L,r,e("div",{class:"tsj-bench"},a,c),e("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function b(){let f=t.get("view");o.textContent=f.finding,r.textContent=f.happened,c.innerHTML=
f.bars;for(let[m,x]of i.entries()){let y=f.tight[m]?`${f.clamps[m]} kN`:f.started[m]?"started by hand":"not started";x.setAttribute(
"aria-label",`Bolt ${m+1} of ${n.count}, ${y}`),x.classList.toggle("tsj-tight",f.tight[m]),x.classList.toggle("tsj-start\
ed",f.started[m])}g.disabled=!f.pulls,k.disabled=!f.standing,v.value=String(f.film),N.checked=f.scattered}return S.follow(
"change:view",b),h(),b(),S.close}var fs="tsk-number";function It(t,s,...n){return e("td",{class:s?fs:null,"data-label":t||null,role:"cell"},...n)}function ae(t,s,n){
let o=s.map(([c,i])=>e("th",{scope:"col",role:"columnheader",class:i?fs:null},c)),r=e("thead",{role:"rowgroup"},e("tr",{
role:"row"},...o)),a=e("table",{class:"tsk-board",role:"table"},e("caption",{},t),r,n);return e("div",{class:"ts-scroll"},
a)}function hs({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("p",{class:"tsk-spent"}),
a=e("ul",{class:"ts-sentences tsk-left"}),c=e("p",{class:"tsk-more"}),i=e("tbody",{role:"rowgroup"}),l=new Map;for(let[h,
w,g,k]of n.checks){let v=e("select",{class:"ts-box","aria-label":`What it showed: ${w}`,onchange:()=>u.send({type:"obser\
ve",check:h,shown:v.value})},e("option",{value:""},"Not made"),...mt(k)),N=It("would tell, bit",!0),P=It("bit a minute",
!0),S=e("tr",{role:"row"},e("th",{scope:"row",role:"rowheader"},w),It("min",!0,`${g}`),It("it showed",!1,v),N,P);l.set(h,
{box:v,tells:N,rate:P,row:S}),i.append(S)}let d=e("button",{class:"ts-button",type:"button",onclick:()=>u.send({type:"cl\
ear"})},"Take all observations back"),u=X({model:t,el:s},{kind:"rig"});u.show(e("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),u.alert,o,a,c,ae("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),r,d);function p(){let h=t.get("view");o.textContent=h.finding,
r.textContent=h.spent,c.textContent=h.more,a.replaceChildren(...Dt(h.left.map(([k,v])=>`${k} (${v})`)));let w=h.ranked,g=new Map(
w.map(([k,v,N],P)=>[k,{bits:v,rate:N,rank:P}]));for(let[k,{box:v,tells:N,rate:P,row:S}]of l){let L=h.observed[k],C=g.get(
k);v.value=L??"",N.textContent=C?C.bits:L!==void 0?"made":"nothing",P.textContent=C?C.rate+(C.rank===0?" ◀ best next":
""):"–",S.classList.toggle("tsk-best",C?.rank===0)}}return u.follow("change:view",p),p(),u.close}function gs({model:t,el:s}){let n=e("p",{class:"ts-finding",role:"status"}),o=e("p",{class:"ts-happened",role:"status"}),
r=e("div",{class:"ts-scroll ts-fit ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"\
The lever. Arrow keys left and right slide the selector shaft, up and down turn it."}),a=e("select",{class:"ts-box ts-ho\
w","aria-label":"How it is put together"},...mt(t.get("builds"))),c=rt("Start again",()=>k({type:"reset"})),i=e("div",{class:"\
ts-tools ts-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([f,m])=>rt(m,()=>k({type:"move",
code:f})))),l=e("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),d=e("p",{class:"ts-hint"},"Nothin\
g tried yet. Use the moves above; each is written down here."),u=e("p",{class:"ts-proof",role:"status"}),p=rt("What does\
 a full hand test find?",()=>{p.disabled=!0,u.textContent="testing",k({type:"prove"})}),h=X({model:t,el:s},{kind:"rig"});
h.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),h.alert,e("div",{class:"ts-tools"},e("span",
{class:"ts-pair"},"Put together: ",a),c),n,r,o,e("p",{class:"ts-hint"},"Drag the blue finger, or click the picture and u\
se the arrow keys: left and right slide, up and down turn. Or use the moves in words:"),i,e("p",{class:"ts-prompt"},"Tri\
ed by hand"),d,l,e("div",{class:"ts-tools"},p),u);let w=0,g="";function k(f){w+=1,h.send({...f,turn:w})}function v(){let f=t.
get("view");if(g!==t.get("figure")){g=t.get("figure"),r.innerHTML=g;let m=Tt(r,"svg");m.removeAttribute("role"),m.setAttribute(
"aria-hidden","true")}for(let m of Q(r,"[data-body]")){let[x,y]=f.moved[String(m.dataset.rides??m.dataset.body)]??[0,0];
m.setAttribute("transform",`translate(${x.toFixed(2)} ${y.toFixed(2)})`)}for(let m of Q(r,"[data-gear]"))m.classList.toggle(
"tsg-in",f.gears.includes(m.dataset.gear));for(let m of Q(r,"[data-lifts]"))m.classList.toggle("tsg-up",f.lifted);r.dataset.
turn=String(f.turn),n.textContent=`${f.gears.length>1?"■ ":f.gears.length?"● ":"○ "}${f.title}.`,o.textContent=f.happened,
o.classList.toggle("ts-stopped",/topped by/.test(f.happened)),(l.childElementCount!==f.log.length||l.lastElementChild?.textContent!==
f.log.at(-1))&&(l.replaceChildren(...f.log.map(m=>e("li",{class:/topped by/.test(m)?"ts-stopped":""},m))),l.scrollTop=l.
scrollHeight),d.hidden=f.log.length>0,a.value=f.build,u.textContent=f.proof,p.disabled=!1,S=!1,b()}r.addEventListener("k\
eydown",f=>{if(vt(f))return;let m={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[f.key];m&&(f.preventDefault(),
k({type:"nudge",travel:m[0],turned:m[1]}))}),a.addEventListener("change",()=>k({type:"build",build:a.value}));let N=null,
P=null,S=!1;function L(f){let m=Tt(r,"svg"),x=m.getBoundingClientRect(),y=m.viewBox.baseVal.width/x.width;return[(f.clientX-
x.left)*y,(f.clientY-x.top)*y]}r.addEventListener("pointerdown",f=>{let m=$t(f,".tsg-panel");if(!m||f.button!==0)return;
let x=t.get("view").hand,[y,A]=L(f),M=Number(m.dataset.scale);N={x:y-x[0]*M,y:A+x[1]*M,scale:M},r.setPointerCapture(f.pointerId),
r.focus({preventScroll:!0}),r.classList.add("ts-pulling"),f.preventDefault()}),r.addEventListener("pointermove",f=>{if(!N)
return;let[m,x]=L(f);P={travel_mm:(m-N.x)/N.scale,turn_mm:(N.y-x)/N.scale},b()});let C=()=>{N=null,r.classList.remove("t\
s-pulling")};r.addEventListener("pointerup",C),r.addEventListener("pointercancel",C);function b(){if(S||!P)return;S=!0;let f=P;
P=null,k({type:"pull",...f})}return h.follow("msg:custom",f=>{f.type==="trouble"&&(S=!1)}),h.follow("change:view",v),v(),
h.close}function ms({model:t,el:s}){let n=t.get("plan"),o=t.get("view"),r=e("p",{class:"ts-finding",role:"status"}),a=e("p",{class:"\
ts-happened tsw-happened",role:"status"}),c=e("div",{class:"ts-scroll ts-fit tsw-train"}),i=o.dials[0].shaft,d=n.gears.map(
([x,y])=>e("button",{type:"button",class:"ts-button","data-gear":x,"aria-pressed":"false",onclick:()=>b({type:"gear",gear:x})},
y)),u=e("select",{class:"ts-box","aria-label":"Wheel held still",onchange:x=>b({type:"hold",shaft:x.target.value})},...mt(
n.holds)),p=e("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:x=>{i=x.target.value,m()}},...mt(o.dials.
map(x=>[x.shaft,x.name]))),h=x=>b({type:"turn",shaft:i,turns:x}),w=`1/${n.marks}`,g=e("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},rt("↺ 1 turn",()=>h(-1),"One turn anticlockwise"),rt(`↺ ${w}`,()=>h(-n.step),`${w}\
 turn anticlockwise`),rt("↺ a touch",()=>h(-n.fine),"A touch anticlockwise"),rt("a touch ↻",()=>h(n.fine),"A touch c\
lockwise"),rt(`${w} ↻`,()=>h(n.step),`${w} turn clockwise`),rt("1 turn ↻",()=>h(1),"One turn clockwise"),rt("Marks t\
o zero",()=>b({type:"reset"}))),k=new Map;for(let x of o.dials){let y=j("g",{},j("circle",{class:"tsw-end",r:34}),j("lin\
e",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),j("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),A=[];for(let T=0;T<n.marks;T+=
1)A.push(j("line",{class:"tsw-tick",y1:-40,y2:T?-47:-52,transform:`rotate(${T*360/n.marks})`})),T&&A.push(j("text",{class:"\
tsw-number",x:57*Math.sin(T*2*Math.PI/n.marks),y:-57*Math.cos(T*2*Math.PI/n.marks)+4},String(T)));let M=j("svg",{viewBox:"\
-70 -70 140 140",class:"tsw-dial","data-shaft":x.shaft,"aria-hidden":"true"},j("circle",{class:"tsw-plate",r:40}),...A,j(
"path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),y),W=e("div",{class:"tsw-count",tabindex:"0",role:"application","\
aria-roledescription":"shaft","data-shaft":x.shaft},e("div",{class:"tsw-name"}),M,e("div",{class:"tsw-strokes","aria-hid\
den":"true"}),e("div",{class:"tsw-figure"}));k.set(x.shaft,{box:W,svg:M,shaftEnd:y}),W.addEventListener("focus",()=>{i!==
x.shaft&&(i=x.shaft,m())}),W.addEventListener("keydown",T=>{if(vt(T))return;let _={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,
ArrowUp:-1,PageDown:1,PageUp:-1}[T.key];_&&(T.preventDefault(),i=x.shaft,h(_*(T.key.startsWith("Page")?1:T.shiftKey?n.fine:
n.step)))});let O=null,E=T=>{let _=M.getBoundingClientRect();return Math.atan2(T.clientX-_.left-_.width/2,_.top+_.height/
2-T.clientY)/(2*Math.PI)};M.addEventListener("pointerdown",T=>{T.button===0&&(O=E(T),M.setPointerCapture(T.pointerId),W.
focus({preventScroll:!0}),T.preventDefault())}),M.addEventListener("pointermove",T=>{if(O===null)return;let _=E(T),V=_-O;
V-=Math.round(V),O=_,v+=V,P()});let D=()=>{O=null};M.addEventListener("pointerup",D),M.addEventListener("pointercancel",
D)}let v=0,N=!1;function P(){if(N||Math.abs(v)<.002)return;N=!0;let x=v;v=0,h(x)}let S=X({model:t,el:s},{kind:"rig"});S.
show(...n.closed?[]:[e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved.")],S.alert,r,...n.closed?[]:[e("\
div",{class:"ts-tools",role:"group","aria-label":"Gears engaged"},e("span",{},"Engage: "),...d),c],e("div",{class:"ts-to\
ols"},e("span",{class:"ts-pair"},"Hold still: ",u),e("span",{class:"ts-pair"},"Turn by hand: ",p)),e("div",{class:"tsw-c\
ounts"},...[...k.values()].map(x=>x.box)),g,a,e("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a d\
ial round, or go to it and use the arrow keys (${w} turn), Shift with an arrow key (a touch) or Page Up and Page Down (o\
ne turn). Each stroke is a whole turn.`));let L=0,C=null;function b(x){L+=1,S.send({...x,turn:L})}let f=x=>{let y=[];for(let A=x;A>
0;A-=5)y.push(A>=5?"||||/":"|".repeat(A));return y.join(" ")};function m(){let x=t.get("view");C!==t.get("figure")&&(C=String(
t.get("figure")),c.innerHTML=C);for(let y of Q(c,"[data-wheel]")){let[A,M]=x.wheels[String(y.dataset.wheel)]??[0,!0];y.setAttribute(
"transform",`translate(0 ${(A*Number(y.dataset.reach)).toFixed(1)})`),y.classList.toggle("tsw-behind",!M)}for(let y of d)
y.setAttribute("aria-pressed",String(x.engaged.includes(y.dataset.gear)));u.value=x.held,p.value=i;for(let y of x.dials){
let{box:A,shaftEnd:M}=k.get(y.shaft),W=y.way>0?"↻":y.way<0?"↺":"";M.setAttribute("transform",`rotate(${y.angle})`);let[
O,,E,D]=A.children;O.textContent=`${y.name}${y.held?", held":y.shaft===i?", your hand":""}`,E.textContent=y.strokes||W?`${W}\
 ${f(y.strokes)}`:"no stroke",D.textContent=y.figure,A.classList.toggle("tsw-hand",y.shaft===i),A.classList.toggle("tsw-\
held",y.held),A.setAttribute("aria-label",`${y.name}${y.held?", held":""}. ${y.words}`)}r.textContent=x.finding,a.textContent=
x.happened,s.dataset.turn=String(x.turn),N=!1,P()}return S.follow("change:view",m),m(),S.close}function ws({model:t,el:s}){let n=e("p",{class:"ts-finding",role:"status"}),o=e("div",{class:"tsh-picture"}),r=e("p",{class:"\
tsh-head"}),a=e("p",{class:"tsh-seen"}),c=e("div",{class:"tsh-told"}),i=e("div",{class:"tsh-box",role:"status"},r,a,c),l=[],
d=[],u=null,p=t.get("plan").lookingOnly,h=(b,f)=>e("button",{type:"button",class:"ts-button","data-verdict":b,"aria-pres\
sed":"false",onclick:()=>v.send({type:"judge",place:u,verdict:b})},f),w=p?[]:[h("stop","Stop here"),h("well","Fine as it\
 is")],g=e("button",{type:"button",class:"ts-button",onclick:()=>v.send({type:"next"})},"Another day"),k=e("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...w);t.get("plan").more&&k.append(g);let v=X({model:t,
el:s},{kind:"rig"});v.show(e("p",{class:"ts-who"},p?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),v.alert,n,e("p",{class:"ts-keys"},p?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),o,i),p||i.after(k);function N(b,f){let m=b!==u;u=b;for(let[x,y]of d.
entries()){let A=l[x][0]===b;y.setAttribute("tabindex",A?"0":"-1"),y.setAttribute("aria-pressed",String(A)),y.classList.
toggle("tsh-chosen",A),A&&f&&(y.focus({preventScroll:!0}),P(y))}m&&v.send({type:"choose",place:b})}function P(b){let f=Tt(
b,".tsh-hit").getBoundingClientRect(),m=o.getBoundingClientRect();(f.left<m.left||f.right>m.right)&&(o.scrollLeft+=f.left-
m.left-(m.width-f.width)/2),(f.bottom<0||f.bottom>innerHeight||f.top<0)&&b.scrollIntoView({block:"nearest"})}function S(){
let b=t.get("plan");l=b.places,o.innerHTML=b.drawing,Tt(o,"svg").setAttribute("role","group"),d=l.map(([f])=>Tt(o,`[data\
-place="${f}"]`)),d.forEach((f,m)=>{f.setAttribute("role","button"),f.setAttribute("aria-label",`${m+1} ${l[m][1]}`),f.addEventListener(
"click",()=>N(l[m][0],!0))}),u=String(t.get("view").chosen),N(u,!1)}o.addEventListener("keydown",b=>{if(vt(b))return;let f=l.
findIndex(([y])=>y===u),m=Math.min(6,l.length),x=f;if(b.key==="ArrowRight")x=f+1;else if(b.key==="ArrowLeft")x=f-1;else if(b.
key==="ArrowDown")x=f+m;else if(b.key==="ArrowUp")x=f-m;else if(b.key==="Home")x=0;else if(b.key==="End")x=l.length-1;else if(b.
key!=="Enter"&&b.key!==" ")return;b.preventDefault(),x>=0&&x<l.length&&N(l[x][0],!0)});function L(){let b=t.get("view");
n.textContent=b.finding;let f=l.findIndex(([y])=>y===b.chosen);r.textContent=`${f+1}  ${l[f][1]}`,a.textContent=b.seen;let{
verdict:m,...x}=b.told;if(c.replaceChildren(),m){let y=b.judged[b.chosen],A=y==="stop"==(m==="Stop here."),M=y==="stop"?
"Stop here":"Fine as it is";c.append(e("p",{class:"tsh-verdict"},A?`✓ Yes: ${m}`:`✗ You said “${M}”. The course sa\
ys: ${m}`),e("dl",{class:"ts-facts"},...Object.entries(x).flatMap(([W,O])=>[e("dt",{},W),e("dd",{},O)])))}for(let y of w)
y.setAttribute("aria-pressed",String(b.judged[b.chosen]===y.dataset.verdict));for(let[y,A]of d.entries()){let M=b.judged[l[y][0]];
A.setAttribute("aria-label",`${y+1} ${l[y][1]}${M?`, judged: ${M==="stop"?"stop here":"fine as it is"}`:""}`);let W=A.querySelector(
".tsh-tag");if(!M){W?.remove();continue}W||(W=j("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),A.
append(W)),W.textContent=M==="stop"?"■ stop":"○ well"}s.dataset.turn=b.chosen}let C=()=>{S(),L()};return v.follow("c\
hange:plan",C),v.follow("change:view",L),C(),v.close}function bs({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("p",{class:"tsl-sum"}),a=e(
"div",{class:"tsl-drawing"}),c=new Map,l=n.sliders.map(([h,w,g,k,v,N])=>{let P=et(h.replace("_","-")),S=e("output",{class:"\
tsl-figure",for:P}),L=e("input",{id:P,type:"range",min:k,max:v,step:N,oninput:()=>{C(),u.send({type:"set",name:h,value:Number(
L.value)})}}),C=()=>{S.textContent=`${L.value} ${g}`,L.setAttribute("aria-valuetext",`${L.value} ${g==="°"?"degrees":g}`)};
return c.set(h,{slider:L,say:C}),e("div",{class:"tsl-row"},e("label",{for:P},w),L,S)}),d=e("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>u.send({type:"set",name:"grip",value:d.value})},...mt(n.grips)),u=X({model:t,el:s},{kind:"r\
ig"});u.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),u.alert,o,e("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...l,e("div",{class:"tsl-row"},e("span",{},"Grip"),d)),a,r,e("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function p(){let h=t.get("vi\
ew");o.textContent=h.finding,r.textContent=h.sum,a.innerHTML=h.drawing;for(let[w,{slider:g,say:k}]of c)document.activeElement!==
g&&(g.value=h.sizes[w]),k();d.value=h.sizes.grip}return u.follow("change:view",p),p(),u.close}var ie={x:90,y:120,perMm:20,radius:82,bevel:30};function An(t){let s=j("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:o,perMm:r,radius:a}=ie;s.append(j("rect",{x:n-60,y:o-56,width:r*t.top+90,height:112,class:"tsi-pa\
per"}),ct(n-20,o,n+r*t.top+20,o,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let h=n+p*t.pitch*r;if(p%2){s.append(ct(
h,o,h,o+18,"tsi-fine"));continue}let w=p/2;s.append(ct(h,o,h,o-(w%5?18:27),w%5?"tsi-fine":"tsi-bold")),w%5===0&&s.append(
lt(h,o-33,String(w)))}let c=j("g",{});s.append(c,lt(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=j("path",{d:`M0 ${o-a+14}L${ie.bevel} ${o-a}L${ie.bevel} ${o+a}L0 ${o+a-14}\
Z`,class:"tsi-body"}),l=j("rect",{x:ie.bevel,y:o-a,width:760,height:2*a,class:"tsi-body"}),d=j("rect",{x:0,y:o-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),u=j("g",{});return c.append(d,i,l,u),{node:s,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*r} 0)`),u.replaceChildren();for(let h=0;h<t.lines;h+=1){let w=h-p.line;w-=t.lines*Math.round(w/t.lines);let g=w/
t.lines*2*Math.PI;if(Math.abs(g)>1.15)continue;let k=o-(a-8)*Math.sin(g),v=h%5===0;u.append(ct(0,k,v?26:16,k,v?"tsi-bold":
"tsi-fine")),v&&u.append(lt(36,k+5,String(h),"start"))}s.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function ks(t){
return Ct(t,(s,n,o)=>{let r=An(s),a=gt("Thimble",{min:0,max:s.top,step:.01,value:o.open,words:()=>"turn in to the left, \
out to the right",onInput:l=>n({open:l})}),c=ht("Between the faces",s.between,o.between,l=>n({between:l,open:s.top})),i=s.
hands.length?ht("Close it",s.hands,o.hand,l=>n({hand:l})):null;return{picture:r.node,controls:[Lt(c.row,i?.row),Lt(G("Cl\
ose until it rests",()=>n({open:-1})),G("Open",()=>n({open:s.top}))),a.row],set(l,d){r.set(l),a.box.value=String(Math.max(
0,l.mm)),c.box.value=d.between}}})}function vs({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("tbody",{role:"rowgroup"}),
a=new Map;for(let[l,d,u]of n.checks){let p=e("button",{class:"ts-button",type:"button","aria-label":`Make: ${d}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:l})}},"Make"),h=It("it shows",!1);h.classList.add("t\
sk-shown"),a.set(l,{button:p,shown:h}),r.append(e("tr",{role:"row"},e("th",{scope:"row",role:"rowheader"},d),It("min",!0,
`${u}`),It("",!1,p),h))}let c=X({model:t,el:s},{kind:"rig"});c.show(e("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),c.alert,o,ae("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],r));
function i(){let l=t.get("view");o.textContent=l.finding;for(let[d,{button:u,shown:p}]of a){let h=l.shown[d];u.setAttribute(
"aria-disabled",h?"true":"false"),u.classList.toggle("ts-off",!!h),u.textContent=h?"Made":"Make",p.textContent=h?`${h[0]?
"✓":"✗"} ${h[1]}`:"",p.classList.toggle("tsk-failed",!!h&&!h[0])}}return c.follow("change:view",i),i(),c.close}function On(){let t=j("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),s=j("g"),n=j("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(j("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),s,n,j("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let o=c=>(-135+270*c)*Math.PI/180,r="";function a([c,i,l]){s.replaceChildren();for(let d=0;d*i<=c+
1e-9;d+=1){let u=o(d*i/c),p=d%l===0,h=w=>[110+w*Math.sin(u),104-w*Math.cos(u)];if(s.append(ct(...h(p?72:79),...h(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&d%(2*l)===0){let[w,g]=h(58);s.append(lt(w,g+4.5,String(Number((d*i).toFixed(2)))))}}s.
append(lt(110,170,"kN"))}return{node:t,set(c,i,l){String(c)!==r&&(r=String(c),a(c));let d=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*d})`),t.setAttribute("aria-label",l)}}}function ys(t){return Ct(t,(s,n,o)=>{
let r=On(),a=e("div",{class:"tsp-section"}),c="",i=e("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,e("div",{class:"tsg-gauge"},r.node)),l=gt("Push",{min:0,max:100,step:1,value:o.travel,onInput:h=>n(
{travel:h}),words:h=>h>=100?"at the shoulder":`${h} % of the way`}),d=[l.row],u=null;if(!s.readingsOnly){let h=ht("Part",
s.places,o.place,v=>n({place:v,travel:0}));u=ht("Driver bears on",s.drivers,o.driver,v=>n({driver:v,travel:0}));let w=ht(
"Seat",s.seats,o.seat,v=>n({seat:v})),g=gt("Pair",{min:0,max:100,step:1,value:o.grip,onInput:v=>n({grip:v}),words:v=>v===
0?"loosest of the fit":v===100?"tightest of the fit":`${v} % from loosest to tightest`}),k=gt("Warm the outer part",{min:s.
room,max:s.hottest,step:1,value:o.warmth,onInput:v=>n({warmth:v}),words:v=>`${v} °C`});d.unshift(Lt(h.row,u.row,w.row),
g.row,k.row)}let p=e("dl",{class:"ts-facts"});return s.readingsOnly||d.push(p),{picture:i,controls:d,set(h,w){h.section!==
c&&(c=h.section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-s.travelPx*w.travel/
100} 0)`),r.set(h.gauge,h.force,h.words),Number(l.box.value)!==w.travel&&document.activeElement!==l.box&&l.set(w.travel),
u&&(u.row.hidden=!h.drives),h.facts&&p.replaceChildren(...Et(h.facts))}}})}function xs({model:t,el:s}){let n=t.get("steps"),o=t.get("reach"),r=new Map(n.map(([C],b)=>[C,b])),a=e("div",{class:"ts-\
scroll"}),c=e("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=e(
"p",{class:"ts-finding",role:"status"}),l=e("ul",{class:"ts-sentences"}),d=e("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...mt(n.map(([C,b],f)=>[C,`${f+1}  ${b}`]))),u=e("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),p=X({model:t,el:s},{kind:"rig",lost(){d.disabled=!0}});p.show(p.alert,e("p",{class:"ts-f\
inding"},t.get("finding")),e("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"Step ",d),
u),a,e("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,c,l),a.innerHTML=t.get("figure");let h=Tt(a,"svg");h.setAttribute("role","group");let w=Q(h,".tsf-step").sort(
(C,b)=>Number(C.dataset.step)-Number(b.dataset.step)),g=Q(h,".tsf-rule").map(C=>({node:C,ends:String(C.dataset.rule).split(
"-").map(Number)}));w.forEach((C,b)=>{C.setAttribute("role","button"),C.setAttribute("aria-label",`${b+1} ${n[b][1]}, ${o[b].
before.length} before it, ${o[b].after.length} after it`),C.addEventListener("click",()=>N(b,!0))});let k=Number(r.get(t.
get("near").step));function v(C){let b=new Set(o[k].before),f=new Set(o[k].after);w.forEach((A,M)=>{A.setAttribute("tabi\
ndex",M===k?"0":"-1"),A.setAttribute("aria-pressed",String(M===k)),A.classList.toggle("ts-chosen-step",M===k),A.classList.
toggle("ts-before-it",b.has(M)),A.classList.toggle("ts-after-it",f.has(M)),A.classList.toggle("ts-either",M!==k&&!b.has(
M)&&!f.has(M))});let m=A=>A===k||b.has(A)||f.has(A);for(let{node:A,ends:M}of g){let W=b.has(M[0])&&(M[1]===k||b.has(M[1]))||
f.has(M[1])&&(M[0]===k||f.has(M[0]));A.classList.toggle("ts-either",!(W&&M.every(m)))}d.value=n[k][0],C&&w[k].focus({preventScroll:!0});
let x=w[k].getBoundingClientRect(),y=a.getBoundingClientRect();(x.left<y.left+16||x.right>y.right-16)&&(a.scrollLeft+=x.
left-y.left-y.width/2)}function N(C,b){k=C,v(b),p.send({type:"choose",step:n[C][0]})}let P=C=>{let f=Tt(w[C],"rect").getBBox();
return{x:f.x,y:f.y}};function S(C){let b=P(k),f=y=>y.sort((A,M)=>Math.abs(P(A).y-b.y)-Math.abs(P(M).y-b.y))[0];if(C==="A\
rrowRight")return f(g.filter(({ends:y})=>y[0]===k).map(({ends:y})=>y[1]));if(C==="ArrowLeft")return f(g.filter(({ends:y})=>y[1]===
k).map(({ends:y})=>y[0]));let m=w.map((y,A)=>A).filter(y=>Math.abs(P(y).x-b.x)<2&&y!==k),x=C==="ArrowUp"?-1:1;return f(m.
filter(y=>(P(y).y-b.y)*x>0))}h.addEventListener("keydown",C=>{if(!vt(C))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes(C.key)){let b=S(C.key);b!==void 0&&N(b,!0),C.preventDefault()}else(C.key==="Enter"||C.key===" ")&&C.preventDefault()}),
d.addEventListener("change",()=>N(Number(r.get(d.value)),!1)),u.addEventListener("click",()=>{let C=a.classList.toggle("\
ts-fit");u.setAttribute("aria-pressed",String(C)),v(!1)});function L(){let C=t.get("near");i.textContent=C.words,c.innerHTML=
C.figure,l.replaceChildren(...Dt(C.sentences))}return p.follow("change:near",L),L(),requestAnimationFrame(()=>v(!1)),p.close}function Tn(){let t=j("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),s=j("g",{}),n=j("g",{});return s.append(
j("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),ct(150,164,150,98,"tsi-bold"),j("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(ct(150,86,150,40,"tsi-plunger"),j("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(s,ct(50,164,
250,164,"tsg-centre"),ct(150,250,150,80,"tsg-centre"),n,lt(8,252,"not to scale","start")),{node:t,set(o,r,a){s.setAttribute(
"transform",`rotate(${o} 150 164)`),n.setAttribute("transform",`rotate(${r} 150 88)`),t.setAttribute("aria-label",a)}}}function $s(t){
return Ct(t,(s,n,o)=>{let r=qt(),a=Tn(),c=gt("Turn the shaft by hand",{min:0,max:360,step:5,value:o.angle,words:d=>`turn\
ed by ${d}°`,onInput:d=>n({angle:d})}),i=ht("Plunger",s.pressed,o.pressed,d=>n({pressed:d})),l=ht("Stand",s.tilts,o.tilt,
d=>n({tilt:d}));return{picture:e("div",{class:"tsg-beside"},a.node,e("div",{class:"tsg-gauge"},r.node,e("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[Lt(i.row,l.row),c.row],set(d,u){r.set(d.mm,d.words),a.set(d.state.angle,Number(d.
state.tilt),`Shaft end on, turned by ${d.state.angle}°; the plunger stands ${d.state.tilt}° off square. Not to scale.`),
c.set(u.angle)}}})}var Ls=(t,s)=>(t+s)%7<2,Cs=(t,s)=>(t+s)%8<2||(t-s+8e4)%8<2,le=()=>!1,ce=t=>(s,n)=>n%t===0,Nn={"":le,dots:(t,s)=>t%6<2&&s%
6<2,rising:Ls,cross:Cs,flat:(t,s)=>s%6<2,rings:(t,s)=>{let n=Math.hypot(t%12-6,s%12-6);return n>2.5&&n<4.5},plus:(t,s)=>t%
10===5&&s%10>2&&s%10<8||s%10===5&&t%10>2&&t%10<8,"lines-1":le,"lines-2":ce(14),"lines-3":ce(8),"lines-4":ce(5),"lines-5":ce(
3)};function In(t){let s=n=>Number.parseInt(t.slice(n,n+2),16);return[s(1),s(3),s(5)]}var Ss=([t,s,n],o)=>(o<<24|n<<16|s<<
8|t)>>>0;function Es(t,[s,n],o,r,a){let c=n*4,i=new Uint32Array(c*s*4),l=new Map(o.map(([p,,h,w])=>{let g=h?Ss(In(h),200):
0;return[p,{ground:g,hatch:Nn[w]??le}]})),d={ground:0,hatch:le},u=Ss(r,190);for(let p=0;p<s;p+=1){let h=(s-1-p)*4;for(let w=0;w<
n;w+=1){let g=t[p*n+w];if(!g)continue;let{ground:k,hatch:v}=l.get(g&15)??d,N=a&&(g&16)!==0,P=a&&(g&32)!==0;for(let S=h;S<
h+4;S+=1)for(let L=w*4;L<(w+1)*4;L+=1){let C=v(L,S)||N&&Ls(L,S)||P&&Cs(L,S);i[S*c+L]=C?u:k}}}return i}var Bn=600;function As(t,s,n,o,r,a){let[c,i]=n;t.width=i*4,t.height=c*4;let l=new Uint8ClampedArray(Es(s,n,o,r,a).buffer),
d=new ImageData(l,t.width,t.height);t.getContext("2d")?.putImageData(d,0,0)}function Pn(t,s){let n=e("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return As(n,new Uint8Array(15).fill(t[0]),[3,5],[t],s,!1),e("span",{class:"ts-key"},n,t[1])}
function Os({model:t,el:s}){let n=t.get("face"),o=t.get("looks"),r=e("p",{class:"ts-finding",role:"status"}),a=e("span",
{class:"ts-clock"}),c=e("dl",{class:"ts-facts"}),i=e("p",{class:"ts-legend"}),l=e("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),d=X({model:t,el:s},{kind:"rig",lost(){h.setDisabled(!0),Gt(s)}}),u=null,p=E=>{u=et("turn"),d.send({...E,turn:u})},
h=ee({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(E){h.
drawing.strokes(E),p({type:"lay",entries:E})},onRemove:E=>p({type:"remove",at:E}),onClear:()=>p({type:"clear"})}),w=G("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),g=e("input",{type:"range",id:et("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),k=e("output",{for:g.id}),v=St({id:et("slide"),onchange:()=>p({type:"slide",by:v.value})},
t.get("view").slides),N=null;g.addEventListener("input",()=>{k.textContent=`${g.value} µm`;let E={type:"flat",um:Number(
g.value)};u===null?p(E):N=E});let{box:P,unit:S}=h.drawing;h.drawing.land.classList.add("tsp-clear"),h.drawing.frame.prepend(
l);let L=(...E)=>e("span",{class:"ts-pair"},...E);d.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),d.alert,r,h.drawing.frame,i,e("div",{class:"ts-tools"},w,L(e("label",{for:v.id},"the other face is"),v),L(a,G("1 m\
inute passes",()=>p({type:"time",by:1})),G("5 minutes pass",()=>p({type:"time",by:5}))),L(e("label",{for:g.id},"faces ou\
t of flat by"),g,k)),h.tools,c,e("details",{class:"ts-keys"},e("summary",{},"Passes laid"),h.empty,h.list));function C(){
let E=getComputedStyle(s).color.match(/\d+(\.\d+)?/g);return E?E.slice(0,3).map(Number):[0,0,0]}let b="",f="";function m(){
let E=t.get("view"),D=o[E.closed?"closed":"film"],T=t.get("grid"),_=T instanceof DataView?new Uint8Array(T.buffer,T.byteOffset,
T.byteLength):new Uint8Array(T);As(l,_,E.shape,D,C(),!E.closed);let[V,Z]=E.shape,[bt,nt]=[E.corner[0]-E.pitch/2,E.corner[1]-
E.pitch/2],F=(K,Y)=>`${(100*K/Y).toFixed(3)}%`;l.style.left=F(bt-P.left,P.width),l.style.width=F(Z*E.pitch,P.width),l.style.
top=F(P.high-nt-V*E.pitch,P.height),l.style.height=F(V*E.pitch,P.height);let $=new Set(_.map(K=>E.closed?K:K&15)),H=D.filter(
([K])=>$.has(K)),z=`${H.map(([,K])=>K)} ${C()}`;z!==b&&(b=z,i.replaceChildren(...H.map(K=>Pn(K,C()))))}let x=j("g");h.drawing.
over.append(x);let y=([E,D])=>[E-P.left,P.high-D];function A([E,D]){let T=D.map(_=>{let[V,Z]=y(_);return`M${V.toFixed(1)}\
 ${Z.toFixed(1)}h0.01`});return j("path",{d:T.join(""),class:"tsp-lump","stroke-width":2*E})}function M(E){let[D,T]=y(E[E.
length-1]),_=`M${D-1.3*S} ${T-S}h${2.6*S}l${-1.3*S} ${2.2*S}Z`;return[j("path",{d:h.drawing.path(E),class:"tsp-way","str\
oke-width":S}),j("path",{d:_,class:"tsp-out"})]}function W(){let E=t.get("view");if(u!==null&&E.turn!==u)return;u=null;let D=JSON.
stringify([E.entries,E.notes]);if(D!==f&&h.show(E.entries,E.notes),f=D,h.drawing.strokes([]),m(),x.replaceChildren(...E.
lumps.map(A),...E.leaks.flatMap(M)),h.drawing.svg.classList.toggle("tsp-shut",E.closed),h.drawing.svg.classList.toggle("\
tsp-clean",E.closed||E.clean),r.textContent=E.finding,v.value=E.slide,a.textContent=`minute ${E.minute}`,w.textContent=E.
closed?"Lift the face off again":"Close the face",N===null&&(g.value=String(E.flat),k.textContent=`${E.flat} µm`),c.replaceChildren(
...Et(E.facts)),N===null)return;let T=N;N=null,p(T)}d.follow("change:view",W),d.follow("msg:custom",E=>{E.type==="troubl\
e"&&(u=null,h.drawing.strokes([]))});let O=new MutationObserver(()=>setTimeout(m,Bn));return O.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),W(),()=>{d.close(),O.disconnect()}}function Ts(t){return Ct(t,(s,n,o)=>{let r=qt(),a=e("div",{class:"tsp-section"}),c="",i=e("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,e("div",{class:"tsg-gauge"},r.node,e("div",{},`Depth gauge on \
a bridge of ${s.bridge} mm, one mark 0.01 mm`))),l=s.places.map(([u,p])=>[u,e("button",{type:"button",class:"ts-button",
onclick:()=>n({place:u})},p)]),d=[e("p",{class:"ts-hint"},s.rule),Lt(e("span",{},"Set the gauge down at"),...l.map(([,u])=>u))];
return s.readingsOnly||(d.push(Lt(ht("Lip looks towards",s.sides,o.lip,u=>n({lip:u})).row,ht("Lip is",s.greases,o.grease,
u=>n({grease:u})).row,s.sleeves.length?ht("It went",s.sleeves,o.sleeve,u=>n({sleeve:u})).row:"")),d.push(gt("Drive it to\
 a depth",{min:s.least,max:s.most,step:.05,value:o.depth,words:u=>`${u.toFixed(2)} mm${u<0?", proud":""}`,onInput:u=>n({
depth:u})}).row,gt("Lean",{min:0,max:s.mostLean,step:.02,value:o.lean,words:u=>u?`${u.toFixed(2)} mm across`:"square",onInput:u=>n(
{lean:u})}).row)),{picture:i,controls:d,set(u,p){u.section!==c&&(c=u.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.
setAttribute("transform",u.placed),r.set(u.dial,u.words);for(let[h,w]of l)w.setAttribute("aria-pressed",String(h===p.place))}}})}function Ns({model:t,el:s}){let n=t.get("about"),o=t.get("shown").state,r=qt(),a=n.readingsOnly?null:ls(n),c=e("p",{class:"\
ts-finding",role:"status"}),i=e("div",{}),l=Ft((b,f)=>N.send({type:"set",state:b,turn:f})),d=b=>{o={...o,...b},l.ask(o)},
u=(b,f)=>{let m=[...o.shims];m[b]=f,d({shims:m.filter(Boolean),turns:0})},p=(b,f,m)=>G(b,f,{"aria-pressed":m}),h=G("Turn\
 the shaft ten times",()=>d({turns:o.turns+10})),w=p("Pull the shaft away",()=>d({side:"away"}),"true"),g=p("Push it to \
the dial",()=>d({side:"towards"}),"false"),k=ht("Plunger",n.plungers,o.plunger,b=>d({plunger:b})),v=[e("div",{class:"ts-\
tools"},n.rolls?h:null,k.row,w,g)];if(!n.readingsOnly){let b=ht("Shim",n.shelf,o.shims[0],m=>u(0,m)),f=n.second?ht("and",
[["","no second shim"],...n.shelf],o.shims[1]??"",m=>u(1,m)):null;v.unshift(e("div",{class:"ts-tools"},b.row,f?.row)),v.
push(gt("Warm the unit",{min:0,max:100,step:1,value:o.warmth,onInput:m=>d({warmth:m}),words:m=>m?`case ${Math.round(n.caseRise*
m/100)} K warmer`:"cold, as at the bench"}).row)}let N=X({model:t,el:s},{kind:"rig"}),P=e("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});P.innerHTML=n.section;let S=[e("p",{class:"ts-who"},n.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),N.alert,e("div",{class:"\
tsg-beside"},P,e("div",{class:"tsg-gauge"},r.node,e("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...v,c,
a&&e("div",{},e("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),e("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];N.show(...S.filter(Boolean));function L(){let b=t.get("show\
n");l.waiting||(o=b.state),r.set(b.dial,b.dialWords),w.setAttribute("aria-pressed",String(b.state.side==="away")),g.setAttribute(
"aria-pressed",String(b.state.side==="towards")),c.textContent=b.finding,a&&(a.set(b.cold,b.warm,b.words.join(" ")),i.replaceChildren(
...b.words.map(f=>e("p",{},f)))),l.answered(b.turn)}let C=()=>l.free();return N.follow("change:shown",L),N.follow("msg:c\
ustom",C),L(),N.close}function Is(t){return Ct(t,(s,n,o)=>{let r=e("div",{tabindex:"0",role:"group","aria-label":s.name}),a="",c=s.pickers.map(
({key:d,label:u,options:p})=>ht(u,p,o[d],h=>n({[d]:h})).row),i=s.sliders.map(({key:d,label:u,min:p,max:h,step:w,unit:g,places:k})=>gt(
u,{min:p,max:h,step:w,value:o[d],words:v=>`${v.toFixed(k)} ${g}`,onInput:v=>n({[d]:v})}).row),l=c.length>2?c:c.length?[Lt(
...c)]:[];return{picture:r,controls:[...l,...i],set(d){d.drawing!==a&&(a=d.drawing,r.innerHTML=a)}}})}function Ds({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("div",{class:"tsj-band"}),
a=e("div",{class:"tsj-section"}),c=e("dl",{class:"ts-facts"}),i=null,l=null,d=(f,m)=>{l={...l,[f]:m},i===null&&u()};function u(){
i=et("choice"),L.send({type:"choose",chosen:l,turn:i}),l=null}let p=e("div",{class:"tsj-settings"}),h=(f,m,x)=>{let y=et(
"set");return m.id=y,p.append(e("label",{for:y},f),e("span",{class:"tsj-slide"},m,x)),m},w=(f,m,x)=>h(m,e("select",{class:"\
ts-box",onchange:y=>d(f,y.target.value)},...mt(x.map(y=>typeof y=="string"?[y,y]:y)))),g=(f,m,x)=>h(m,e("input",{type:"r\
ange",oninput:y=>d(f,Number(y.target.value))}),x),k={group:w("group","Bolt of the unit",n.groups),thread:w("thread","Thr\
ead",n.threads),strength:w("strength","Strength class",n.classes),state:w("state","State of the thread",n.states),tool:w(
"tool","Tool",n.tools)},v=e("output",{class:"tsj-figure"}),N=g("torque_nm","Torque",v),P=e("output",{class:"tsj-figure"}),
S=g("engagement_mm","Thread that meets",P),L=X({model:t,el:s},{kind:"rig"});L.show(e("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),L.alert,o,r,e("div",{class:"tsj-bench"},p,a),c);let C=(f,m,x,y,A,M)=>{Ot(f,{min:m,max:x,
step:y}),i===null&&(f.value=String(A)),f.setAttribute("aria-valuetext",M)};function b(){let f=t.get("view");if(i!==null&&
f.turn!==i)return;i=null,l!==null&&u();let{chosen:m}=f;o.textContent=f.finding,r.innerHTML=f.band,a.innerHTML=f.section,
c.replaceChildren(...Et(f.facts));for(let[x,y]of Object.entries(k))y.value=m[x];C(N,1,f.topTorque,.5,m.torque_nm,f.torqueText),
v.textContent=f.torqueText,C(S,f.lowEngagement,f.topEngagement,.5,m.engagement_mm,f.engagementText),P.textContent=f.engagementText}
return L.follow("change:view",b),b(),L.close}function Bs({model:t,el:s}){let n=re(t.get("picture")),o=X({model:t,el:s},{kind:"rig"});return o.show(o.alert,e("p",{class:"\
ts-finding"},t.get("finding")),...n.nodes),o.close}function Ut(t,s){return(t.find(([n])=>n===s)??t[0])[2]}function xe(t,s){return t.find(([,,n])=>s!==void 0&&n.includes(s))?.[0]}
var ye=(t,s)=>[...t.slice(s+1),...t.slice(0,s+1)];function Ps(t,{stages:s,stage:n,step:o,labels:r,isOpen:a}){let c=Ut(s,
n),i=c.indexOf(String(o));if(t==="ArrowLeft"||t==="ArrowRight"){let d=s.map(([h])=>h),u=t==="ArrowLeft"?-1:1,p=Ut(s,d[(d.
indexOf(n)+u+d.length)%d.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let l=t.toLowerCase();return ye(c,i).find(d=>r[d].toLowerCase().startsWith(l))}function js({stages:t,stage:s,step:n,isOpen:o}){
let r=Ut(t,s),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(r.at(-1)));return ye(r,r.indexOf(String(n))).find(o)??ye(a,c).find(
o)}function Rs({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding"}),r=e("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=e("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>bt()},
...mt(n.stages.map(([B,U])=>[B,U]))),c=rt(n.marked?"Next open step":"Next ready step",()=>E("next"));c.classList.add("ts\
-next");let i=e("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this sta\
ge",onkeydown:B=>T(B)}),l=e("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the s\
tage, Enter takes a step in hand; Enter again does it."),d=e("div",{class:"ts-hand",role:"group","aria-label":"Step in h\
and",onkeydown:B=>{B.key!=="Enter"||!B.target.matches("input[type=radio], .ts-number-box")||(B.preventDefault(),t.get("h\
and").stands?V():Y())}}),u=e("div",{class:"ts-scroll ts-fit"}),p=e("dl",{class:"ts-facts"}),h=e("ul",{class:"ts-sentence\
s"}),w=e("p",{class:"ts-prompt"},"Wrong so far"),g=e("select",{class:"ts-box ts-before","aria-label":"A step that stands"}),
k=rt("Take out again",()=>{g.value&&f({type:"out",step:g.value},"hand")}),v=rt("Put the tools down",()=>f({type:"over"},
"told"));v.classList.add("ts-over");let N=e("div",{}),P=e("p",{class:"ts-status"}),S=e("details",{ontoggle:()=>{S.open!==
!!t.get("view").record&&f({type:"record",open:S.open})}},e("summary",{},"Build record"),N),L=X({model:t,el:s},{kind:"rig"});
L.show(e("p",{class:"ts-who"},n.who),L.alert,o,P,r,e("div",{class:"ts-build"},e("div",{class:"ts-build-left"},e("div",{class:"\
ts-tools"},a,c),i,l),d),e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},g,k),v),u,p,w,h,S);let C=0,b=null;function f(B,U=null){
C+=1,b=U&&{turn:C,focus:U},s.setAttribute("aria-busy","true"),L.send({...B,turn:C})}let m="",x=null,y="next",A=B=>!t.get(
"view").done.includes(B),M=()=>Q(i,"[data-step]"),W=B=>M().find(U=>U.dataset.step===B)?.focus(),O=()=>({stages:n.stages,
stage:a.value,step:x,isOpen:A});function E(B,U){y=B,f(B==="list"?{type:"take",step:U}:{type:"next"},"hand")}function D(B){
a.value=xe(n.stages,B)??a.value,x=B,bt(),W(B)}function T(B){if(vt(B))return;let U=Ps(B.key,{...O(),labels:n.labels});U&&
(B.preventDefault(),D(U))}function _(){let B=js(O());B?y==="next"?c.focus():D(B):v.focus()}function V(){let B=t.get("vie\
w").done.length>=Object.keys(n.labels).length;y==="next"&&!B?E("next"):_()}function Z(B){let{done:U,ready:dt}=t.get("vie\
w");return U.includes(B)?{sign:"✓",word:"done"}:dt.includes(B)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"op\
en":"waits"}}function bt(){let B=Ut(n.stages,a.value);(x===null||!B.includes(x))&&(x=B.find(A)??B[0]);let U=t.get("hand").
step,dt=JSON.stringify([a.value,B.map(Z),U]);if(dt===m){for(let J of M())J.tabIndex=J.dataset.step===x?0:-1;return}m=dt;
let ut=M().find(J=>J===document.activeElement)?.dataset.step;i.replaceChildren(...B.map(J=>nt(J,U))),ut&&W(ut)}function nt(B,U){
let{sign:dt,word:ut}=Z(B);return e("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${ut}`,"data-step":B,
tabindex:B===x?"0":"-1","aria-current":B===U?"step":!1,"aria-label":`${n.labels[B]}: ${ut}`,onclick:()=>{x=B,E("list",B)}},
Mt(dt),n.labels[B])}let F="",$=new Map;function H(B){let U=Rt(B),dt=e("p",{class:"ts-read",id:U.read,role:"status"}),ut=0,
J=R=>{f({type:"set",name:B.name,value:R}),ut=C},it=Pt(B).make(B,U,J,()=>{}),I=Ht(B,U,null);return I.append(it.element,dt),
I.dataset.field=B.name,{element:I,flush:()=>it.flush?.(),show(R={},tt){if(tt<ut)return;it.show(R);let pt=R.read?`read as\
 ${R.read}`:"";dt.textContent=R.error?`▲ Look again: ${R.error}`:pt}}}let z=B=>e("dl",{class:"ts-facts"},...Et(B));function K(){
let B=t.get("hand"),U=JSON.stringify(B);if(U===F)return;if(F=U,d.dataset.stands=String(!!B.stands),$=new Map((B.fields??
[]).map(it=>[it.name,H(it)])),!B.step){d.replaceChildren(e("p",{class:"ts-hint"},"No step in hand. Choose one from the l\
ist, or press the button above it."));return}let dt=rt(`Do it: ${B.label}`,Y);dt.classList.add("ts-do");let ut=B.stands?
[rt("Go on",V),rt("Take it out again",()=>f({type:"out",step:B.step},"hand"))]:[dt];d.replaceChildren(e("p",{class:"ts-p\
rompt ts-hand-name",tabindex:"-1"},B.label),...B.plain.map(it=>e("p",{class:"ts-hint"},it)),...B.cautions.map(it=>e("p",
{class:"ts-caution"},e("b",{},"Take care: "),it)),...B.read.length?[e("p",{class:"ts-prompt"},"Read at the bench"),z(B.read)]:
[],...B.card.length?[z(B.card)]:[],...[...$.values()].map(it=>it.element),e("div",{class:"ts-tools"},...ut));let J=xe(n.
stages,B.step);J&&([a.value,x]=[J,B.step])}function Y(){for(let B of $.values())B.flush();f({type:"do"},"after")}function q(){
let B=t.get("view").asked_back,U=Q(d,"[data-field]").find(J=>J.dataset.field===B),dt=U&&Q(U,"input:not(:disabled), selec\
t, button"),ut=Q(d,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return dt?.[0]??
ut[0]}function ot(){let B=t.get("view"),U=B.told;o.textContent=B.finding,P.textContent=B.status,P.hidden=!B.status,r.textContent!==
U.join("")&&r.replaceChildren(...U.map(ut=>e("p",{},ut))),K(),bt();for(let[ut,J]of $)J.show(B.states[ut],B.turn);if(u.dataset.
shown!==B.figure&&(u.innerHTML=B.figure,u.dataset.shown=B.figure),p.replaceChildren(...Et(B.facts)),h.replaceChildren(...Dt(
B.faults.map(([,ut])=>ut))),w.hidden=h.hidden=!B.faults.length,at(B.done),N.innerHTML=B.record,S.open=!!B.record,s.setAttribute(
"aria-busy",String(B.turn<C)),!b||B.turn<b.turn)return;let{focus:dt}=b;b=null,dt==="told"?r.focus():dt==="after"&&!t.get(
"hand").step?_():(q()??c).focus()}function at(B){if(g.disabled=k.disabled=!B.length,g.dataset.done===B.join(" "))return;
g.dataset.done=B.join(" ");let U=[...B].reverse();g.replaceChildren(...mt(U.map(dt=>[dt,n.labels[dt]])))}return L.follow(
"change:view",ot),ot(),L.close}function jn(t){let s=j("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[o,r]=[210,128],a=ct(
o,r,o,r,"tsi-adapter"),c=j("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=ct(o,r+74,o,r+74,"tsi-arm"),l=lt(o,r+94,"");return s.
append(ct(o,r,o+440,r,"tsi-lever"),a,c,j("circle",{cx:o,cy:r,r:7,class:"tsg-hub"}),lt(o+440,r-20,"hand, middle of the gr\
ip","end"),lt(o+20,r-20,"square drive","start"),ct(o+440,r+10,o+440,r+84,"tsg-centre"),i,l,lt(8,242,"lengths to scale","\
start")),{node:s,set(d){let u=d.state.angle/180*Math.PI,p=o-d.state.reach*n*Math.cos(u),h=r-d.state.reach*n*Math.sin(u);
Ot(a,{x2:p,y2:h}),Ot(c,{cx:p,cy:h}),Ot(i,{x1:p,x2:o+440}),Ot(l,{x:(p+o+440)/2}),l.textContent="the lever from bolt to ha\
nd, along the wrench",s.setAttribute("aria-label",`${t.name}. ${d.words}`)}}}function Hs(t){return Ct(t,(s,n,o)=>{let r=jn(
s),a=(i,l,d,u,p,h)=>gt(i,{min:d,max:u,step:p,value:o[l],words:w=>`${w} ${h}`,onInput:w=>n({[l]:w})}),c={setting:a("Setti\
ng","setting",s.low,s.high,s.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(s.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{picture:r.node,controls:Object.values(c).map(i=>i.row),
set(i,l){r.set(i);for(let[d,u]of Object.entries(c))u.set(l[d])}}})}var $e=t=>typeof t=="string"?t:t.text;function _s(t,s,n){let o=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
r=a=>$e(a.cells[s]??"").trim();return[...t].sort((a,c)=>{let[i,l]=[r(a),r(c)];if(!i||!l)return+!i-+!l;let[d,u]=[Number.parseFloat(
i),Number.parseFloat(l)],p=Number.isNaN(d)||Number.isNaN(u)||d===u?o.compare(i,l):d-u;return n?-p:p})}function Wt(t,s){let n=document.getElementById("jupyter-config-data"),o="/";try{o=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${o}${t}/${s.split("/").map(encodeURIComponent).join("/")}`}function Rn(t){let s="";for(let n=0;n<t.length;n+=32768)s+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(s)}
async function Ks(t,s,n){let o=0;do{let r=new Uint8Array(await n.slice(o,o+524288).arrayBuffer()),a=o===0;o+=524288;let c=o>=
n.size;t.send({type:"file",field:s,name:n.name,data:Rn(r),first:a,last:c})}while(o<n.size)}var Hn=400;function Fs({model:t,el:s}){let n=X({model:t,el:s},{kind:"desk"}),o=e("p",{class:"ts-said",role:"status"}),r=e(
"div",{class:"ts-desk-body"}),a=e("div",{class:"ts-desk-here","aria-hidden":"true"}),c=e("div",{class:"ts-busy"}),i=e("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),l=t.get("cohort"),d=e("input",{id:et("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:d.value})});d.value=t.get("by"),n.show(e("header",
{class:"ts-desk-top"},e("b",{},Nt([l.name,l.college]).join(", ")),e("span",{class:"ts-pair"},e("label",{for:d.id},"At th\
e desk (your name, for the trail)"),d)),l.invented?e("p",{class:"ts-hint"},l.invented):null,i,c,n.alert,o,r);let u=new Map,
p=new Map,h=new Map,w=new Map,g=!1,k="",v=!1,N=()=>g||Object.keys(t.get("busy")).length>0,P=($,H={})=>{N()||n.isLost()||
($!=="look"&&(o.textContent="",n.alert.textContent="",C()),t.send({type:$,...H}))},S=()=>Q(s,"[data-key]");function L(){
let $=S().find(H=>H.dataset.key===k);return $&&r.contains($)?$.closest("form, section"):null}function C(){let $=L();$?$.
append(c,a):(i.after(c),a.remove());let[H,z]=[o.textContent,n.alert.textContent];a.replaceChildren(...Nt([H&&e("p",{class:"\
ts-told"},H),z&&e("p",{class:"ts-trouble"},z)]));for(let K of[o,n.alert])K.classList.toggle("ts-hidden",!!$);return $}function b(){
let $=C(),H=[n.alert,o].find(K=>K.textContent);($?a.childElementCount?a:null:H)?.scrollIntoView({block:"nearest"})}async function f($,H,z=""){
if(N()||n.isLost())return;k=H,v=!0,g=!0;try{for(let[Y,q]of w){let[ot]=q.files??[];ot&&await Ks(t,Y,ot)}}finally{g=!1}let K=[
...p].map(([Y,q])=>[Y,[...q]]);P("do",{act:$,of:z,typed:Object.fromEntries(u),ticked:Object.fromEntries(K)})}function m($){
let{name:H,of:z}=$,K=et("field"),Y=$.hint?e("span",{class:"ts-hint",id:`${K}-hint`},$.hint):null,q={id:K,"data-key":`fie\
ld:${H}`,"aria-describedby":Y?.id},ot=e("label",{for:K},$.label);if(!u.has(H)&&z!=="file"&&u.set(H,z==="tick"?$.value===
"yes":$.value),z==="file"){let U=w.get(H)??e("input",{type:"file",class:"ts-file"});for(let[dt,ut]of Object.entries(q))ut&&
U.setAttribute(dt,ut);return w.set(H,U),e("div",{class:"ts-desk-field"},ot,U,Y)}if(z==="tick"){let B=e("input",{type:"ch\
eckbox",...q});B.checked=u.get(H)===!0,B.addEventListener("change",()=>u.set(H,B.checked));let U=e("label",{class:"ts-op\
tion",for:K},B,$.label);return e("div",{class:"ts-desk-field"},U,Y)}let at=z==="choice"?St(q,$.options):z==="long"?e("te\
xtarea",{class:"ts-box",rows:"3",maxlength:"2000",...q}):e("input",{class:"ts-box",autocomplete:"off",maxlength:"400",...q});
return at.value=String(u.get(H)??""),z==="choice"&&!$.options.some(([B])=>B===u.get(H))&&(at.value=$.options[0]?.[0]??"",
u.set(H,at.value)),at.addEventListener("input",()=>u.set(H,at.value)),e("div",{class:"ts-desk-field"},ot,at,Y)}function x($){
let H=et("form"),z=e("div",{class:"ts-doing"}),K=()=>{z.replaceChildren(...$.acts.map(q=>G(q.label,()=>q.sure?Y(q):f(q.id,
`act:${q.id}`),{class:q.first?"ts-button ts-first":"ts-button","data-key":`act:${q.id}`})))},Y=q=>{let ot=et("sure"),at=e(
"div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":ot},e("p",{id:ot},q.sure),e("div",{class:"ts-doing"},
G(`Yes: ${q.label}`,()=>f(q.id,`act:${q.id}`),{"data-key":`act:${q.id}`}),G("No, leave it",()=>{K(),Q(z,`[data-key="act:${q.
id}"]`)[0]?.focus()})));z.replaceChildren(at),at.focus()};return K(),e("form",{class:"ts-desk-form","aria-labelledby":$.
title?H:null,onsubmit:q=>q.preventDefault()},$.title?e("h3",{id:H},$.title):null,$.hint?e("p",{class:"ts-hint"},$.hint):
null,$.fields.length?e("div",{class:"ts-desk-fields"},...$.fields.map(m)):null,$.acts.length?z:null)}function y($,H){if(typeof $==
"string")return $;let z=$.act?G($.text,()=>f($.act,H,$.of),{class:"ts-cell","aria-label":$.label||null,"data-key":H}):$.
text;return e("span",{},$.shape?Mt($.shape):null,z)}function A($){let H=et("table"),z=e("h3",{id:H},$.title);if(!$.rows.
length)return e("section",{},z,e("p",{},$.empty));let K=p.get($.id)??new Set,Y=new Set($.rows.map(({key:J})=>J));for(let J of K)
Y.has(J)||K.delete(J);p.set($.id,K);let q=e("tr",{}),ot=e("tbody",{}),at=$.pick?e("input",{type:"checkbox","aria-label":"\
all","data-key":`all:${$.id}`}):null,B=()=>{at&&(at.checked=K.size===$.rows.length,at.indeterminate=K.size>0&&!at.checked)},
U=()=>{let J=h.get($.id),it=J?_s($.rows,J.column,J.down):$.rows;ot.replaceChildren(...it.map(ut)),q.replaceChildren(...at?
[e("th",{class:"ts-tick"},at)]:[],...$.columns.map(dt)),B()},dt=(J,it)=>{let I=h.get($.id),R=I?.column===it,tt=R?I.down?
"descending":"ascending":null,pt=()=>{h.set($.id,{column:it,down:R&&!I.down}),U(),Q(q,`[data-key="${kt}"]`)[0]?.focus()},
kt=`sort:${$.id}:${it}`;return e("th",{scope:"col","aria-sort":tt,class:$.numbers.includes(it)?"ts-figure":null},G(J,pt,
{class:"ts-sort","data-key":kt}),R?Mt(I.down?"▼":"▲"):null)},ut=J=>{let it=$.pick?e("input",{type:"checkbox","aria-l\
abel":J.cells.slice(0,3).map($e).join(" "),"data-key":`row:${$.id}:${J.key}`}):null;return it&&(it.checked=K.has(J.key),
it.addEventListener("change",()=>{it.checked?K.add(J.key):K.delete(J.key),B()})),e("tr",{},it?e("td",{class:"ts-tick"},it):
null,...J.cells.map((I,R)=>e(R?"td":"th",{scope:R?null:"row",class:$.numbers.includes(R)?"ts-figure":null},y(I,`cell:${$.
id}:${J.key}:${R}`))))};return at?.addEventListener("change",()=>{if(K.clear(),at.checked)for(let{key:J}of $.rows)K.add(
J);for(let J of Q(ot,"td.ts-tick input"))J.checked=at.checked}),U(),e("section",{},e("div",{class:"ts-desk-caption"},z,G(
"Save as CSV",()=>t.send({type:"export",table:$.id}),{"aria-label":`Save as CSV: ${$.title}`,"data-key":`export:${$.id}`})),
e("div",{class:"ts-desk-scroll",role:"region",tabindex:0,"aria-labelledby":H},e("table",{class:"ts-table","aria-labelled\
by":H},e("thead",{},q),ot)))}function M($){if($.kind==="table")return A($);if($.kind==="form")return x($);if($.kind==="l\
ink"){let H=$.how==="edit"?"lab/tree":$.how,K={class:"ts-link",href:H?Wt(H,$.path):$.path,target:"_blank"};return e("p",
{},e("a",{...K,"data-key":`link:${$.path}`},$.text))}return $.how==="head"?e("h3",{},$.text):e("p",{class:$.how==="hint"?
"ts-hint":null},$.text)}function W($){N()||n.isLost()||(k="",P("page",{name:$}))}function O(){let $=t.get("page");i.replaceChildren(
...t.get("pages").map(([H,z])=>G(z,()=>W(H),{class:"ts-button","aria-current":H===$?"page":null,"data-key":`page:${H}`})))}
let E=t.get("cleared"),D=t.get("page");function T(){let $=S().find(q=>q===document.activeElement)?.dataset.key,H=r.contains(
document.activeElement),z=Q(r,".ts-desk-scroll").map(q=>q.scrollTop);(t.get("page")!==D||t.get("cleared")!==E)&&(u=new Map,
p=new Map,w=new Map,{page:D,cleared:E}={page:t.get("page"),cleared:t.get("cleared")}),o.textContent=t.get("said"),n.alert.
textContent=t.get("trouble"),O();let K=new Map(t.get("pages")),Y=e("h2",{tabindex:-1},K.get(D));if(r.replaceChildren(Y,...t.
get("parts").map(M)),Q(r,".ts-desk-scroll").forEach((q,ot)=>{q.scrollTop=z[ot]??0}),C(),$||H){let q=S().find(ot=>ot.dataset.
key===$);(q??Y).focus({preventScroll:!!q})}v&&!Object.keys(t.get("busy")).length&&(v=!1,b())}let _;function V(){let $=t.
get("busy");if(r.setAttribute("aria-busy",String(N())),clearTimeout(_),!Object.keys($).length){c.replaceChildren();return}
let{doing:H,done:z,of:K}=$,Y=K?`${H}: ${z} of ${K}`:`${H} …`,q=()=>{c.replaceChildren(e("progress",K?{max:K,value:z,"a\
ria-label":H}:{"aria-label":H}),e("span",{role:"status"},Y))};c.childElementCount?q():_=window.setTimeout(q,Hn)}n.follow(
"change:turn",()=>setTimeout(T,0)),n.follow("change:busy",V),n.follow("change:by",()=>{d.value=t.get("by")}),n.follow("m\
sg:custom",$=>{if($.type==="trouble"&&b(),$.type!=="save")return;let H=URL.createObjectURL(new Blob([`\uFEFF${$.text}`],
{type:"text/csv"}));e("a",{href:H,download:$.name}).click(),setTimeout(()=>URL.revokeObjectURL(H),1e3)}),T(),V();let Z=!0,
bt=new IntersectionObserver(([$])=>{Z=$.isIntersecting});bt.observe(s);let nt=0,F=setInterval(()=>{let $=t.get("every");
nt+=1,$&&nt>=$&&Z&&!document.hidden&&(nt=0,P("look"))},1e3);return()=>{clearInterval(F),clearTimeout(_),bt.disconnect(),
n.close()}}function Se(t,s=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let o=c=>String(c).padStart(2,"0"),r=`${o(
n.getHours())}:${o(n.getMinutes())}`,a=`${n.getFullYear()}-${o(n.getMonth()+1)}-${o(n.getDate())}`;return s.toDateString()===
n.toDateString()?r:`${a} ${r}`}var _n="twoshaft-unsent:";function qs(t,s){let n=_n+s,o=()=>{if(!t||!s)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},r=a=>{if(!(!t||!s))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(o(),a)?o()[a]:void 0,put:(a,c,i,l=new Date)=>r({...o(),[a]:{value:c,
base:i,at:l.toISOString()}}),drop(a){let{[a]:c,...i}=o();c&&r(i)}}}function Us(t,s){return JSON.stringify(t.value)===JSON.
stringify(s.value??null)?!1:(s.revision??0)===t.base?!0:!(Date.parse(s.saved??"")>Date.parse(t.at))}var jt=null,Kn="input, button, select, textarea, summary, a, [tabindex]",Ws=t=>[...t.querySelectorAll(Kn)];function zs(t,s){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?jt={form:s,at:Ws(t).indexOf(a),from:null}:jt?.form===s&&t.
isConnected&&(jt=null))},o=({target:a})=>{jt?.form===s&&a instanceof HTMLInputElement&&(jt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",o),requestAnimationFrame(
()=>{if(jt?.form!==s||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=jt,i=Ws(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var Fn=["print","colour"];function zt(t){for(let s of Fn){let n=t?.[s];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${s}`,n):document.documentElement.removeAttribute(`data-ts-${s}`))}}function Gs(){zt({print:"",colour:""})}function Ys(t,s,n){let o=()=>t.get("bench")??{},r=e("details",{class:"ts-bench"}),a=o().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=e("span",{}),i=e("p",{class:"ts-status",role:"status"}),l=G("Use these figures",()=>h("yes")),d=G(
"Go back to the drawn figures",()=>h("no")),u=!1,p=a.map(g=>{let k=et("bench"),v=g.options.length?e("select",{class:"ts-\
box",id:k,"aria-describedby":`${k}-read`},e("option",{value:""},"choose"),...mt(g.options)):e("input",{type:"text",class:"\
ts-box ts-number-box",id:k,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${k}-hint ${k}-read`}),
N=e("span",{class:"ts-hint",id:`${k}-hint`},g.hint),P=e("p",{class:"ts-read",id:`${k}-read`}),S=g.text,L=()=>{v.value.trim()!==
S.trim()&&(S=v.value,s({type:"bench",name:g.name,value:v.value}))};return v.addEventListener(g.options.length?"change":"\
blur",L),v.addEventListener("keydown",C=>{C.key==="Enter"&&(C.preventDefault(),L())}),{name:g.name,flush:L,input:v,element:e(
"div",{class:"ts-bench-row"},e("label",{for:k},g.prompt),e("div",{class:"ts-line-of"},v,N),P),show(C){if(!C)return;(document.
activeElement!==v||v.value===S)&&(v.value=C.text,S=C.text),v.setAttribute("aria-invalid",String(!!C.error)),P.classList.
toggle("ts-error",!!C.error);let b=C.error?[Mt("▲")," "]:[],f=C.read&&!C.options.length&&`read as ${C.read}`,m=C.error||
[f,C.origin].filter(Boolean).join(", ");P.replaceChildren(...b,m)}}}),h=g=>{for(let k of p)k.flush();u=!0,s({type:"bench",
name:"in-use",value:g})};r.append(e("summary",{},c),e("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),e("div",{class:"ts-bench-rows"},...p.map(g=>g.element)),i,e("div",{class:"ts-tools"},l,d));function w(){
let g=o(),k=new Map(g.rows?.map(S=>[S.name,S]));for(let S of p)S.show(k.get(S.name));c.textContent=g.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",d.hidden=!g.wanted,l.hidden=g.used&&!g.stale;let v=g.wanted&&
!g.used?"▲ ":g.used?"● ":"○ ",N=g.used?"in use":g.wanted?`not used; the drawn figures stand. ${g.refused}`:"not us\
ed; the drawn figures stand",P=g.stale?` The tables and choices of this task are still the ones from before. ${g.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${v}${N}${P}`,g.wanted&&
!g.used&&(r.open=!0)}return{element:r,show:w,hear(g){g.type!=="bench-saved"||g.name!=="in-use"||!u||(u=!1,o().stale&&n())},
lost(){for(let g of[l,d,...p.map(k=>k.input)])g.disabled=!0}}}var qn=5e3,Un=2e3,Wn={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Le="kept in this browser until it can be\
 saved";function zn(t,s,n,o){let r=Pt(t),a=Rt(t),c=e("p",{class:"ts-read",id:a.read}),i=e("p",{class:"ts-status",id:a.status,
role:"status"}),l=0,d=null,u={},p=()=>{clearTimeout(d??void 0),d=null},h=S=>{n.put(t.name,S,u.revision??0),w(S)},w=S=>{l+=
1,v("wait",o()?Le:"saving"),p(),d=window.setTimeout(()=>v("wait",Le),qn),s({type:"save",name:t.name,value:S,turn:l})},g=r.
make(t,a,h,(S,L)=>{S?(n.put(t.name,L,u.revision??0),v("wait","not saved yet: press Enter or leave the box")):d===null&&(n.
drop(t.name),N(u))}),k=Ht(t,a,a.status);r.status==="above"?k.append(i,g.element,c):k.append(g.element,c,i);function v(S,L){
i.className=`ts-status ts-status-${S}`,i.dataset.text!==L&&(i.dataset.text=L,i.replaceChildren(Mt(Wn[S]),` ${L}`))}function N(S,L=!1){
if(u=S??{},g.show(u),c.replaceChildren(u.read?`read as ${u.read}`:""),!L)if(u.error){let{error:C,saved:b="",note:f}=u;v(
"unread",`Look again: ${C} Kept as typed, ${Se(b)}${f?`; ${f}`:""}.`)}else u.saved&&!u.blank?v("saved",`saved ${Se(u.saved)}${u.
note?`; ${u.note}`:""}`):v("none",r.blank??"not answered yet")}let P=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:k,show(S){d===null&&N(S,P())},saved(S){S.turn===l&&(g.pending?.()||n.drop(t.name),p(),N(S.state))},refused(S){
S.turn===l&&(p(),g.refused(),v("bad",`not saved: ${S.reason}`))},off(){clearTimeout(d??void 0),(d!==null||g.pending?.())&&
v("wait",Le)},catchUp(){let S=n.get(t.name);S&&(Us(S,u)?(g.show({...u,value:S.value,error:""}),w(S.value)):n.drop(t.name))},
flush:()=>g.flush?.(),summary:()=>({answered:!!u.saved&&!u.blank&&!u.error&&!u.short,unread:!!u.error,trouble:P(),waiting:d!==
null})}}function Vs({model:t,el:s}){let n=t.get("fields"),o=t.get("sheet"),r=qs(window.localStorage,o),a=!1,c=()=>a||p.isLost(),
i=n.map(L=>zn(L,w,r,c)),l=new Map(i.map(L=>[L.name,L])),d=e("p",{class:"ts-who"}),u=e("p",{class:"ts-total"});zt(t.get("\
look"));let p=X({model:t,el:s},{kind:"form",lost(){for(let L of i)L.off();h.lost(),g()},line(L){a=L;for(let C of i)L?C.off():
C.catchUp();g()}}),h=Ys(t,p.send,()=>{s.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(e("div",
{class:"ts-top"},d,u),p.alert,h.element,...i.map(L=>L.element)),s.dataset.task=t.get("task_id");function w(L){p.send(L),
g()}function g(){let L=i.map(M=>M.summary()),C=L.filter(M=>M.answered).length,b=L.filter(M=>M.trouble).length,f=L.some(M=>M.
waiting),m=L.filter(M=>M.unread).length,x=b?`${b} not saved`:f?c()?"the rest kept in this browser":"saving":C&&!m?"all s\
aved":"",y=[`${C} of ${i.length} answered`,m?`${m} cannot be read`:"",x];u.textContent=y.filter(Boolean).join(", ");let A={
task:t.get("task_id"),answered:C,asked:i.length,unread:m};s.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:A}))}function k(){d.textContent=t.get("header");let L=t.get("states");for(let C of i)C.show(L[C.name]);g()}let v=0,
N=()=>{if(document.visibilityState==="hidden")for(let L of i)L.flush();document.visibilityState!=="visible"||Date.now()-
v<Un||(v=Date.now(),p.send({type:"look"}))},P=o?new BroadcastChannel(`twoshaft-saved:${o}`):null;P?.addEventListener("me\
ssage",({data:L})=>{L===t.get("task_id")&&p.send({type:"look"})}),document.addEventListener("visibilitychange",N),s.addEventListener(
"focusin",L=>{L.relatedTarget instanceof Node&&s.contains(L.relatedTarget)||N()}),p.follow("change:states change:header",
k),p.follow("msg:custom",L=>{L.type==="saved"&&(l.get(L.name)?.saved(L),P?.postMessage(t.get("task_id"))),L.type==="refu\
sed"&&l.get(L.name)?.refused(L),g()}),p.follow("msg:custom",h.hear),p.follow("change:bench",h.show),k();for(let L of i)L.
catchUp();g(),h.show(),p.alert.textContent=t.get("notice");let S=zs(s,`${o}/${t.get("task_id")}`);return()=>{S(),P?.close(),
p.close(),document.removeEventListener("visibilitychange",N)}}function de(t,s,n){let o=`twoshaft-signed-in:${n}`,r=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(o,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(o),s.setItem(r,String(a))},get(){try{
let a=JSON.parse(t.getItem(o)??"null");return!a||!(a.at>Number(s.getItem(r)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var Gn={right:"●",other:"◆",unread:"▲"};function Yn(t){let s=Rt(t),n=e("p",{class:"ts-told",id:s.status,role:"stat\
us"}),o=null,r=Pt(t).make(t,s,i=>{o=i,r.show({value:o}),c(void 0)},(i,l)=>{i&&(o=l)}),a=Ht(t,s,s.status);a.append(r.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let l=i?[Mt(Gn[i.how]),e("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...l)}return{name:t.name,element:a,value(){return r.flush?.(),o},show(i,l){i!==void 0&&(o=i,r.show(
{value:o,saved:"given"})),c(l)},still(i){r.setDisabled(i),a.classList.toggle("ts-given",i)}}}function Xs({model:t,el:s}){
let n=X({model:t,el:s},{kind:"form"});s.classList.add("ts-question");let o=e("p",{class:"ts-title",role:"heading","aria-\
level":"3"}),r=e("p",{class:"ts-lead"}),a=e("dl",{class:"ts-facts"}),c=e("div",{class:"ts-asked"}),i=G(t.get("give"),()=>{
let k=Object.fromEntries(u.map(v=>[v.name,v.value()]));n.send({type:"give",values:k})});i.classList.add("ts-first");let l=G(
"",()=>n.send({type:"fresh"})),d=t.get("all")?G(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,o,r,a,c,e("p",{class:"ts-acts"},i,l,d));let u=[],p=()=>{let k=t.get("values"),v=t.get("told");for(let L of u)
L.show(k[L.name],v[L.name]),L.still(v[L.name]!==void 0&&v[L.name].how!=="unread");let N=u.some(({name:L})=>!v[L]||v[L].how===
"unread"),P=document.activeElement===i;if(i.hidden=!N,l.textContent=t.get("fresh"),l.hidden=N||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!P||N)return;let S=Q(s,".ts-told")[0];S.tabIndex=-1,S.focus({preventScroll:!0})},h=()=>{(Q(c,"input, sel\
ect, [tabindex]")[0]??(l.hidden?i:l)).focus({preventScroll:!0})},w=()=>{u=t.get("fields").map(Yn),c.replaceChildren(...u.
map(({element:k})=>k)),o.textContent=t.get("title"),o.hidden=!o.textContent,r.textContent=t.get("lead"),r.hidden=!r.textContent,
a.replaceChildren(...Et(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let k=s.contains(
document.activeElement);w(),k&&h()}),n.follow("change:told change:values change:notice change:fresh",p),w();let g=t.get(
"place");if(g){let k=de(sessionStorage,localStorage,g).get();t.send({type:"who",id:k?.id??"",ticket:k?.ticket??""})}return()=>n.
close()}var Js="twoshaft-mine";var Vn={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},Xn={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"},ue=(t,s,n)=>e("a",{href:Wt("la\
b/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"ts-link"},s);function Zs(t){return e("ul",{class:"\
ts-gaps"},...t.map(({task:s,missing:n,asked:o,unread:r})=>e("li",{},`${s}: `,n===o?"nothing answered":n?`${n} of ${o} mi\
ssing`:"",...r.map(([a,c])=>e("span",{},e("b",{},"cannot be read: "),`“${a}” ${c}`)))))}function Jn(t){let s=({name:o})=>Number(
o.split("-").at(-1)),n=[...t].sort((o,r)=>s(o)-s(r)).flatMap(({notebooks:o})=>o.map(r=>[r.split("/").pop()??"",r]));localStorage.
setItem(Js,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(new Event("storage"))}function Qs({model:t,el:s}){
let n="",o=de(sessionStorage,localStorage,t.get("place")),r=X({model:t,el:s},{kind:"start",lost:()=>{}}),a=e("div",{}),c=e(
"p",{class:"ts-said",role:"status"});r.show(r.alert,c,a);let i=(O,E={})=>{a.getAttribute("aria-busy")==="true"||r.isLost()||
(E.quietly||(a.setAttribute("aria-busy","true"),c.textContent="One moment.",r.alert.textContent=""),t.send({type:O,...E}))},
l=(O,E,D,T)=>e("button",{type:"button",class:T?"ts-button ts-first":"ts-button","data-key":E,onclick:D},O);function d(){
let O=et("who"),E=et("word"),D=e("select",{id:O,class:"ts-box","data-key":"who",required:!0},e("option",{value:""},"Choo\
se your name"),...t.get("people").map(([_,V])=>e("option",{value:_,selected:_===n},V)));D.addEventListener("change",()=>{
n=D.value});let T=e("input",{id:E,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",
maxlength:"80","data-key":"word"});return e("form",{class:"ts-sign-in",onsubmit:_=>{_.preventDefault(),i("sign-in",{name:D.
value,word:T.value})}},e("h2",{},"Who is working?"),e("div",{class:"ts-pair"},e("label",{for:O},"Your name"),D),e("div",
{class:"ts-pair"},e("label",{for:E},"Sign-in word from your slip"),T),e("button",{type:"submit",class:"ts-button ts-firs\
t","data-key":"sign-in"},"Sign in"),e("p",{class:"ts-hint"},t.get("kept")))}function u(O,E){let D=nt=>`${nt}:${O.name}`,
T=e("div",{class:"ts-doing"});for(let nt of O.feedback.slice(0,1))T.append(e("a",{href:Wt("files",nt),target:"_blank",class:"\
ts-link","data-key":D("feedback")},"Read feedback"));for(let nt of O.notebooks){let F=O.notebooks.length===1?"Open":`Ope\
n ${nt.split("/").pop()}`;T.append(ue(nt,F,D(`open ${nt}`)))}O.can_get&&T.append(l(O.notebooks.length?"Get again":"Get",
D("get"),()=>i("get",{name:O.name}),!O.notebooks.length)),O.can_hand_in&&T.append(l(O.receipt?"Hand in again":"Hand in",
D("hand in"),()=>i("hand-in",{name:O.name})));for(let nt of T.children)nt.setAttribute("aria-label",`${nt.textContent}: ${O.
title}`);let _=t.get("asking")===O.name,V=O.receipt||O.unread>0,Z=e("tr",{},e("th",{scope:"row"},O.title),e("td",{},O.due||
"no date",O.overdue?e("span",{class:"ts-small-line"},"date passed"):null),e("td",{},e("span",{class:"ts-shape","aria-hid\
den":"true"},Vn[O.state]||""),e("b",{},Xn[O.state]||O.state),e("span",{class:"ts-small-line"},O.detail),E?e("span",{class:"\
ts-small-line"},`Mark: ${E}`):null),e("td",{},T));if(_)return[Z,e("tr",{},e("td",{colspan:4},h(O)))];if(!V||!O.gaps.length)
return[Z];let bt=e("td",{colspan:4},e("b",{},p(O)),Zs(O.gaps));return[Z,e("tr",{},bt)]}let p=({left:O,unread:E})=>Nt([O?
`${O} ${O===1?"answer is":"answers are"} missing`:null,E?`${E} cannot be read`:null]).join(", ");function h(O){let E=et(
"question"),D=e("div",{class:"ts-doing"});for(let _ of O.notebooks)D.append(ue(_,"Go on with it",`go on:${O.name}`));let T=p(
O);return D.append(l(T?"It is my own work: hand in as it is":"It is my own work: hand in",`hand in anyway:${O.name}`,()=>i(
"hand-in",{name:O.name,own:!0}),!T)),e("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":E,"data-key":"\
question"},e("p",{id:E},e("b",{},`${O.title}: not handed in yet.${T?` ${T}.`:""}`),T?" An answer that is missing or cann\
ot be read earns nothing.":null),T?Zs(O.gaps):null,e("p",{},"By handing in you state: ",e("b",{},t.get("statement"))),D)}
let w=new Set,g={met:"✓",enough:"◐","not yet":"○"};function k(O,E){let D=O.entries.map(Z=>E.find(bt=>bt.name===Z)).
filter(Z=>Z!==void 0),T=O.lesson?ue(O.lesson,`Lesson ${O.title}`,`lesson:${O.lesson}`):e("span",{class:"ts-small-line"},
"no lesson here"),_=e("details",{open:w.has(O.module)},e("summary",{"data-key":`outcomes:${O.module}`},`Outcomes: ${O.count||
"none"}`),e("ul",{},...O.outcomes.map(([Z,bt,nt,F])=>e("li",{},e("span",{class:"ts-shape","aria-hidden":"true"},g[Z]||""),
e("b",{},`${Z}${nt&&Z==="enough"?`, ${nt}`:""}: `),bt,nt&&Z==="not yet"?`. Still missing: ${nt}`:"",F?` (${F})`:""))));_.
addEventListener("toggle",()=>{_.open?w.add(O.module):w.delete(O.module)});let V=D.flatMap(Z=>u(Z,O.marks[Z.name]));return e(
"tbody",{},e("tr",{class:"ts-module"},e("th",{scope:"rowgroup",colspan:4},O.title,e("span",{class:"ts-assigned"},D.length?
"assigned":"not assigned"))),...V,e("tr",{},e("td",{colspan:4},T,e("p",{class:"ts-next"},e("b",{},"Next: "),O.next),_)))}
function v(){let O=t.get("me"),E=t.get("entries"),D=e("table",{class:"ts-table"},e("thead",{},e("tr",{},...["Assignment",
"Due","State","What you can do"].map(T=>e("th",{scope:"col"},T)))),...t.get("modules").map(T=>k(T,E)));return e("section",
{},e("div",{class:"ts-me"},e("h2",{},`Working as ${O.name} (${O.id})`),O.ticket?l("Not you? Sign out","sign-out",()=>{i(
"sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),E.length?null:e("p",{},"Nothing is as\
signed yet."),D,l("Look again","look",()=>i("look")))}function N(){let O=!!t.get("me").id,E=t.get("modules").map(_=>_.lesson),
T=t.get("lessons").filter(([_])=>!O||!E.includes(_));return T.length?e("section",{},e("h2",{},O?"To look things up":"Les\
sons"),e("ul",{class:"ts-lessons"},...T.map(([_,V])=>e("li",{},ue(_,V,`lesson:${_}`))))):null}let P=!1,S=t.get("me").id?
null:o.get(),L=S!==null;function C(){let O=t.get("me");O.id?zt(t.get("look")):Gs(),O.id?o.keep(O):(P||S&&!L)&&o.drop(),P=
!!O.id,Jn(O.id?t.get("entries"):[])}let b=0,f="",m=()=>Q(a,"[data-key]"),x=()=>a.querySelector("input[data-key=word]");function y(){
let E=m().find(H=>H===document.activeElement)?.dataset.key;a.removeAttribute("aria-busy");let D=!!t.get("me").id;c.textContent=
t.get("said"),r.alert.textContent=t.get("trouble");let T=x()?.value,_=L?e("p",{},"One moment."):d();a.replaceChildren(...Nt(
[D?v():_,N()]));let V=x();V&&T&&(V.value=T);let Z=f;if(f=t.get("asking"),f&&f!==Z&&m().find(H=>H.dataset.key==="question")?.
focus(),!E||f&&f!==Z)return;let bt=m().find(H=>H.dataset.key===E),nt=E.split(":")[1],F=E.startsWith("hand in anyway")?`h\
and in:${nt}`:`:${nt}`,$=m().find(H=>nt&&H.dataset.key?.endsWith(F));(bt??$??Q(a,"a, button, select")[0])?.focus()}let A=()=>{
clearTimeout(b),b=setTimeout(()=>{L=!1,C(),y()},0)};t.on("change",A),C(),y(),S&&t.send({type:"resume",name:S.id,ticket:S.
ticket});let M=()=>{!document.hidden&&t.get("me").id&&i("look",{quietly:!0})},W=new IntersectionObserver(([O])=>{O.isIntersecting&&
M()});return W.observe(s),document.addEventListener("visibilitychange",M),()=>{clearTimeout(b),t.off("change",A),W.disconnect(),
document.removeEventListener("visibilitychange",M),r.close()}}var Zn={bench:ns,build:is,cord:ds,depth:us,desk:Fs,face:ps,fault_board:hs,form:Vs,gate:gs,gears:ms,hazards:ws,lifting:bs,
micrometer:ks,own_checks:vs,press:ys,question:Xs,rules:xs,runout:$s,sealant:Os,seat:Ts,shims:Ns,sketch:Is,start:Qs,thread:Ds,
unit_section:Bs,whole_build:Rs,wrench:Hs};export{Zn as screens};
