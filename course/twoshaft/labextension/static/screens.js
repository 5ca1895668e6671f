var cn="http://www.w3.org/2000/svg";function e(t,s={},...n){let o=document.createElement(t);for(let[r,a]of Object.entries(
s))typeof a=="function"?o.addEventListener(r.slice(2),a):a===!0?o.setAttribute(r,""):a!==!1&&a!=null&&o.setAttribute(r,String(
a));return o.append(...Tt(n)),o}function P(t,s={},...n){let o=document.createElementNS(cn,t);return Ot(o,s),o.append(...n),
o}function Ot(t,s){for(let[n,o]of Object.entries(s))o!=null&&t.setAttribute(n,String(o))}function G(t,s,n={}){return e("\
button",{type:"button",class:"ts-button",onclick:s,...n},t)}function St(t,s){return e("select",{class:"ts-box",...t},...mt(
s))}function Et(t){return t.flatMap(([s,n])=>[e("dt",{},s),e("dd",{},n)])}function Mt(t){return e("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Tt(t){return t.filter(s=>s!=null&&s!==!1)}var De=0;function et(t){return De+=1,`two\
shaft-${t}-${De}-${Math.random().toString(36).slice(2,7)}`}function Nt(t,s){let n=t.querySelector(s);if(!n)throw new Error(
`nothing matches ${s}`);return n}function Q(t,s){return[...t.querySelectorAll(s)]}function kt(t,s){let{target:n}=t;return n instanceof
Element?n.closest(s):null}function yt(t){return t.ctrlKey||t.metaKey||t.altKey}function Yt(t){let s=Q(t,"button, input, \
select");for(let n of s)n.disabled=!0}function Be(t){for(let s=t.parentElement;s;s=s.parentElement){let n=getComputedStyle(
s).overflowY;if((n==="auto"||n==="scroll")&&s.scrollHeight>s.clientHeight)return s}return document.scrollingElement??document.
documentElement}function Vt(t,s){return Math.hypot(t[0]-s[0],t[1]-s[1])}function rt(t,s,n=t){return G(t,s,{"aria-label":n})}
function mt(t){return[...t].map(([s,n])=>e("option",{value:s},n))}function Dt(t){return t.map(s=>e("li",{},s))}var me=new Map;function wt(t,s){if(me.has(t))throw new Error(`the answer kind ${t} is registered twice`);me.set(t,s)}function Pt(t){
let s=me.get(t.kind);if(!s)throw new Error(`the answer kind ${t.kind} has no browser side`);return s}function Rt(t){let s=et(
t.kind);return{control:`${s}-control`,hint:`${s}-hint`,read:`${s}-read`,status:`${s}-status`}}function Ht(t,s,n){let{prompt:o}=Pt(
t),r={class:"ts-prompt"};if(o==="legend")return e("fieldset",{class:"ts-field","aria-describedby":n},e("legend",r,t.prompt));
let a=o==="label"?e("label",{...r,for:s.control},t.prompt):e("p",r,t.prompt);return e("div",{class:"ts-field"},a)}function Xt(t,s,n,o){let a=t.options.map(([c,i])=>{let l={"aria-describedby":s.status},d=e("input",{type:n,name:s.control,
value:c,...l});return{key:c,input:d,row:e("label",{class:"ts-option"},d,e("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{o(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:e("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:l,input:d}of a)d.checked=i.includes(l)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}wt("choice",{prompt:"legend",make:(t,s,n)=>Xt(t,s,"radio",o=>n(o[0]))});wt("choices",{prompt:"legend",make:(t,s,n)=>Xt(t,s,"checkbox",n)});function Jt(t){return t.filter(([,s])=>s).map(([s,n])=>`${s}=${n}`)}function Zt(t){let s=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(s.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}wt("each",{prompt:"legend",make(t,s,n){let o=t.lines,r=t.options,a=o.map(([c,i],l)=>{let d=`${s.control}-${l}`,u=e("labe\
l",{class:"ts-each-line",for:d},i),p=St({id:d,"aria-describedby":s.status},[["","choose"],...r]);return{key:c,box:p,row:e(
"li",{},u,p)}});for(let{box:c}of a)c.addEventListener("change",()=>{n(Jt(a.map(({key:i,box:l})=>[i,l.value])))});return{
element:e("ol",{class:"ts-each"},...a.map(({row:c})=>c)),show(c){let i=Zt(c.value);for(let{key:l,box:d}of a)d.value=i.get(
l)??""},setDisabled(c){for(let{box:i}of a)i.disabled=c},refused(){}}}});function we(t){let[s="",...n]=t.split(" "),o=s==="wipe"?0:Number(n.shift()),[r="",...a]=n;if(r!=="at")return{hand:s,size:o,
side:r,place:a[0],points:null};let c=a.map(i=>{let[l,d]=i.split(",").map(Number);return[l,d]});return{hand:s,size:o,side:r,
place:"",points:c}}function be(t,{side:s,place:n,points:o}){return o||(s==="round"?t.holes.find(r=>r.id===n)?.ring??[]:t.
stretches.find(r=>r.id===n)?.lines[s]??[])}function ke(t,s){let{hand:n,size:o,side:r,place:a}=we(s),c=[...t.stretches,...t.
holes].find(l=>l.id===a),i=n==="wipe"?"":` ${o} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[r]??""}`}
function ve(t,s,n){return s==="film"?t.width:s==="bead"?n:s==="wipe"?2*t.width:1}function Pe(t){let s=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=s.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(s)?Number(s):Number.NaN}function je(t){let s=0;for(let n=1;n<t.length;n+=1)s+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return s}function Re(t,[s,n]){return t.stretches.map(({id:r,lines:a})=>({id:r,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-s,i-n)))})).reduce((r,a)=>a.away<r.away?a:r).id}var ln=.4;function He(t,s){let n=ln,o=Qt(t,n);for(;o.
length>s;)n*=1.5,o=Qt(t,n);return o.map(([r,a])=>[Math.round(r*10)/10,Math.round(a*10)/10])}function Qt(t,s){if(t.length<
3)return t;let[n,o]=[t[0],t[t.length-1]],r=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=dn(n,o,t[c]);i>r&&([r,a]=[i,c])}return r<=
s?[n,o]:[...Qt(t.slice(0,a+1),s).slice(0,-1),...Qt(t.slice(a),s)]}function dn(t,s,n){let[o,r]=[s[0]-t[0],s[1]-t[1]],a=Math.
hypot(o,r)||1;return Math.abs(o*(n[1]-t[1])-r*(n[0]-t[0]))/a}var te=14,un=3,pn=.5,fn=["middle","inside","outside"],ee="round ";function hn(t,s){let n=t.outline.map(([F])=>F),o=t.outline.
map(([,F])=>F),[r,a]=[Math.min(...n)-te,Math.max(...n)+te],[c,i]=[Math.min(...o)-te,Math.max(...o)+te],l=a-r,d=i-c,u=([F,
Y])=>`${(F-r).toFixed(1)} ${(i-Y).toFixed(1)}`,p=(F,Y)=>`M${F.map(u).join("L")}${Y?"Z":""}`,f=et("face"),w=l/100,g=2*w,$=(F,Y)=>P(
"pattern",{id:`${f}-${F}`,width:g,height:g,patternUnits:"userSpaceOnUse"},P("path",{d:Y,class:"tsp-hatch","stroke-width":w/
4})),y=P("defs",{},$("oil",`M0 ${g}L${g} 0`),$("dirt",`M0 ${g}L${g} 0M0 0L${g} ${g}`)),B=t.cavities.map(([,F])=>p(F,!0)).
join(""),j=t.islands.map(F=>p(F,!0)).join(""),L=p(t.outline,!0)+B,S=P("g"),C=P("g"),v=P("g"),h=P("g"),b=P("path",{class:"\
tsp-live",d:""}),m=P("path",{class:"tsp-chosen",d:""}),k=P("path",{class:"tsp-land",d:L,"fill-rule":"evenodd"}),E=P("pat\
h",{class:"tsp-edge",d:L+j,"stroke-width":w/2.5}),M=([F,Y],x,H="middle")=>{let K={x:F-r,y:i-Y,"font-size":2.5*w,"text-an\
chor":H};return P("text",{class:"tsp-text",...K},x)},W=[(r+a)/2,(c+i)/2],O=(F,Y)=>{let x=Vt(F,W)||1;return[F[0]+Y*(W[0]-
F[0])/x,F[1]+Y*(W[1]-F[1])/x]};for(let{x:F,y:Y,d:x,leads:H,name:K}of t.holes){let U={cx:F-r,cy:i-Y,"stroke-width":w/4},st=H===
"blind"?"tsp-hole tsp-blind":"tsp-hole";v.append(P("circle",{...U,r:x/2,class:st})),H==="to the outside"&&v.append(P("ci\
rcle",{...U,r:x/3,class:"tsp-hole"}));let[z,dt]=O([F,Y],-(x/2+4.4*w));v.append(M([z,dt-.8*w],K.replace("bolt ","")))}for(let F of t.
guides){let[Y,x]=[F.x-r,i-F.y],H=`M${Y-w} ${x}h${g}M${Y} ${x-w}v${g}`;v.append(P("path",{class:"tsp-guide",d:H,"stroke-w\
idth":w/2}));let K={"stroke-width":w/5,"stroke-dasharray":`${w} ${w}`};v.append(P("circle",{cx:Y,cy:x,r:F.reach,class:"t\
sp-reach",...K}));let U=O([F.x,F.y],F.reach+g),st=(U[0]-F.x)/(F.reach+g);v.append(M(U,F.name,st>.5?"start":st<-.5?"end":
"middle"))}for(let{word:F,points:Y,width:x}of t.spots){let[H]=F.split(" "),[K,U]=[Y[0],Y[Y.length-1]],st=Vt(K,U)||1,[z,dt]=[
-(U[1]-K[1])/st*x/2,(U[0]-K[0])/st*x/2],T=[[K[0]+z,K[1]+dt],[U[0]+z,U[1]+dt],[U[0]-z,U[1]-dt],[K[0]-z,K[1]-dt]],q=`url(#${f}\
-${H})`;S.append(P("path",{d:p(T,!0),fill:q,class:"tsp-spot","stroke-width":w/4}));let nt=M(O([(K[0]+U[0])/2,(K[1]+U[1])/
2],9*w),H);nt.classList.add("tsp-spot-word"),v.append(nt)}let A=[100,50,20,10].find(F=>F<l/4)??10,D=`M${w} ${d-w}v${-w}v${w/
2}h${A}v${-w/2}v${w}`,I={x:A+g,y:d-w,"font-size":2.5*w};h.append(P("path",{class:"tsp-edge",d:D,"stroke-width":w/4}),P("\
text",{class:"tsp-text",...I},`${A} mm`));let _=`0 0 ${l.toFixed(1)} ${d.toFixed(1)}`,V=P("svg",{viewBox:_,class:"tsp-fa\
ce",role:"img","aria-label":s},y,k,S,C,E,v,m,b,h),tt=`max-width: ${(25*l/d).toFixed(1)}rem`;return{frame:e("div",{class:"\
ts-pad-face",style:tt},V),svg:V,over:h,live:b,chosen:m,land:k,path:p,unit:w,box:{left:r,right:a,low:c,high:i,width:l,height:d},
place({clientX:F,clientY:Y}){let x=V.getBoundingClientRect(),H=Math.min(x.width/l,x.height/d);return[r+(F-x.left-(x.width-
H*l)/2)/H,i-(Y-x.top-(x.height-H*d)/2)/H]},strokes(F){C.replaceChildren(...F.map(at))}};function at(F){let Y=we(F),x=be(
t,Y),H=ve(t,Y.hand,Math.max(Y.size,w/2)),K=x.length>1?p(x,Y.side==="round"):x.length?`${p(x)}h0.01`:"",U=P("path",{d:K,class:`\
tsp-stroke tsp-${Y.hand}`,"stroke-width":H});if(Y.hand!=="film")return U;let st=Math.min(8,Math.max(.6,40*Y.size)),z={"s\
troke-width":w/3,"stroke-dasharray":`${st} ${st}`};return P("g",{},U,P("path",{d:K,class:"tsp-grain",...z}))}}function se({
face:t,label:s,onLay:n,onRemove:o,onClear:r}){let a=hn(t,s),c=e("p",{class:"ts-hidden","aria-live":"polite"}),i=e("p",{class:"\
ts-read ts-pad-trouble",role:"status"}),l=(D,I)=>e("span",{class:"ts-pair"},e("label",{for:I.id},D),I),d=St({id:et("hand")},
Object.entries(t.hands)),u=e("input",{class:"ts-box ts-size",id:et("size"),type:"text",inputmode:"decimal",autocomplete:"\
off",maxlength:"12"}),p=e("label",{for:u.id},"thickness"),f=St({id:et("place")},t.stretches.map(({id:D,name:I})=>[D,I]));
f.append(e("optgroup",{label:"Round a hole"},...t.holes.map(({id:D,name:I})=>e("option",{value:`${ee}${D}`},`round ${I}`))));
let w=St({id:et("side")},fn.map(D=>[D,t.sides[D]])),g=G("Lay it here",()=>h([v(f.value)])),$=G("Lay it on every stretch",
()=>h(t.stretches.map(({id:D})=>v(D)))),y=G("Take back the last pass",()=>{L&&o(L-1,!0)}),B=G("Clear the face",r),j={film:"",
bead:""},L=0,S=!1;function C(){if(d.value==="wipe")return"";let[D,I]=t.sizes[d.value],_=Pe(u.value);if(_>=D&&_<=I)return u.
removeAttribute("aria-invalid"),` ${Number(_.toFixed(3))}`;let V=d.value==="film"?"the thickness of the film":"the diame\
ter of the bead";return i.textContent=u.value.trim()?`Read “${u.value}”: give ${V} from ${D} to ${I} mm.`:`First giv\
e ${V} in mm.`,u.setAttribute("aria-invalid","true"),u.focus(),null}function v(D){let I=C();if(I===null)return null;let _=D.
startsWith(ee)?D:`${w.value} ${D}`;return`${d.value}${I} ${_}`}function h(D){let I=D.filter(_=>_!==null);if(!(S||I.length<
D.length)){if(L+I.length>t.most){i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent=
"",c.textContent=I.length===1?`Laid: ${ke(t,I[0])}`:`Laid on ${I.length} stretches`,n(I)}}function b(){let D=d.value==="\
wipe";p.textContent=d.value==="bead"?"diameter":"thickness",u.disabled=S||D,u.value=D?"":j[d.value],u.placeholder=D?"":"\
mm",g.textContent=D?"Wipe here":"Lay it here",$.textContent=D?"Wipe every stretch":"Lay it on every stretch",i.textContent=
"",m()}function m(){let D=f.value.startsWith(ee);w.disabled=S||D;let I=be(t,D?{side:"round",place:f.value.slice(ee.length)}:
{side:w.value,place:f.value});a.chosen.setAttribute("d",I.length?a.path(I,D):""),a.chosen.setAttribute("stroke-width",String(
a.unit/2))}d.addEventListener("change",b),u.addEventListener("input",()=>{j[d.value]=u.value}),f.addEventListener("chang\
e",m),w.addEventListener("change",m),u.addEventListener("keydown",D=>{D.key==="Enter"&&(D.preventDefault(),g.click())});
let k=null;a.svg.addEventListener("pointerdown",D=>{if(S||D.button>0)return;k=[a.place(D)],a.svg.setPointerCapture(D.pointerId);
let I=Math.max(1,Number(j.bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(ve(t,d.value,I)))}),a.svg.
addEventListener("pointermove",D=>{if(!k)return;let I=a.place(D);Vt(I,k[k.length-1])<pn||(k.push(I),a.live.setAttribute(
"d",a.path(k)))});let E=D=>{if(!k)return;let I=k;if(k=null,a.live.setAttribute("d",""),D.type==="pointercancel")return;if(je(
I)<un){f.value=Re(t,I[0]),m();return}let _=C();if(_===null)return;let V=He(I,t.points).map(tt=>tt.join(","));h([`${d.value}${_}\
 at ${V.join(" ")}`])};a.svg.addEventListener("pointerup",E),a.svg.addEventListener("pointercancel",E);let M=e("ol",{class:"\
ts-passes","aria-label":"Passes, in the order they were done"}),W=e("p",{class:"ts-hint"},"Nothing is laid yet."),O=e("d\
iv",{class:"ts-pad-tools"},e("div",{class:"ts-tools"},l("tool",d),e("span",{class:"ts-pair"},p,u)),e("div",{class:"ts-to\
ols"},l("where",f),l("runs",w)),e("div",{class:"ts-tools"},g,$,y,B),i,c),A=()=>Q(M,"button");return b(),{drawing:a,tools:O,
list:M,empty:W,frame:a.frame,element:e("div",{class:"ts-pad"},a.frame,O,e("div",{class:"ts-pad-list"},W,M)),show(D,I=[]){
L=D.length,a.strokes(D),W.hidden=L>0;let _=A().findIndex(V=>V.matches(":focus"));M.replaceChildren(...D.map((V,tt)=>e("l\
i",{},e("span",{},`${ke(t,V)}${I[tt]?`, ${I[tt]}`:""} `),G("take out",()=>o(tt,!1),{class:"ts-button ts-remove",disabled:S,
"aria-label":`Take out pass ${tt+1}`})))),_>=0&&(A()[Math.min(_,L-1)]??g).focus()},setDisabled(D){S=D;for(let I of[d,f,g,
$,y,B,...A()])I.disabled=D;u.disabled=D||d.value==="wipe",m()}}}wt("film",{prompt:"words",make(t,s,n){let o=[],r=c=>{o=c,a.show(o),n(o)},a=se({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>r([...o,...c]),onRemove:c=>r(o.filter((i,l)=>l!==c)),onClear:()=>r([])});
return{element:a.element,show(c){o=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(o)},setDisabled:a.setDisabled,
refused(){}}}});function _e(t,{send:s,typing:n,said:o=a=>String(a??""),wrong:r=a=>!!a.error}){let a=e("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||a.value.trim()!==c.trim(),l=()=>{i()&&(c=a.value,s(a.value))};return a.
addEventListener("blur",l),a.addEventListener("keydown",d=>{let u=(d.ctrlKey||d.metaKey)&&d.key.toLowerCase()==="s";d.key!==
"Enter"&&!u||(d.preventDefault(),l())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:l,pending:i,refused(){
c=null},show(d){a.setAttribute("aria-invalid",String(r(d))),!(document.activeElement===a&&a.value!==c)&&(c=o(d.value),a.
value=c)}}}function Ke(t,s){let[n,o,r]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(r)?n:o).
trim()} ${s}`.trim()}function Fe(t,s,n){let o=St({"aria-label":"Choose the unit"},[["","unit"],...s.map(r=>[r,r])]);return o.addEventListener(
"change",()=>{o.value&&(t.value=Ke(t.value,o.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener("input",()=>{
o.value=""}),o}wt("number",{prompt:"label",make(t,s,n,o){let r=t.units,{box:a,flush:c,pending:i,refused:l,show:d}=_e(s,{send:n,typing:o}),
u=e("span",{class:"ts-hint",id:s.hint},t.hint),p=r.length?Fe(a,r,c):null;return{element:e("div",{class:"ts-line-of"},a,p,
u),show:d,setDisabled(f){a.disabled=f,p&&(p.disabled=f)},refused:l,flush:c,pending:i}}});function Ue(t,s){let o=[...new Set([t??[]].flat())].filter(r=>s.includes(String(r))).map(String);return[...o,...s.filter(
r=>!o.includes(r))]}var _t=(t,s)=>t.join(`
`)===s.join(`
`),qe=t=>`#${t.keys[0]}`,ne=class{constructor(s,n){this.labels=new Map(s.map(([o,r])=>[o,r])),this.stages=new Map;for(let[
o,,r]of s)r&&this.stages.set(o,r);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(s){return this.labels.get(s)??s}runs(){let s=[];
for(let n of this.order){let o=this.stages.get(n)??null,r=s.at(-1);r&&o!==null&&r.stage===o?r.keys.push(n):s.push({stage:o,
keys:[n]})}return s}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let s=[];for(let n of this.runs()){
let[o]=n.keys;if(n.keys.length<2){s.push({id:o,key:o,level:1});continue}if(s.push({id:qe(n),run:n,level:1}),!this.closed.
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
!a||a.keys.length<2?null:(n?this.closed.add(o):this.closed.delete(o),n&&(this.current=qe(a)),o)}sought(s){let n=this.rows(),
o=n.findIndex(c=>c.id===this.current),r=s.length>1?o:o+1,a=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...n.slice(r),...n.slice(0,r)].find(c=>a(c).startsWith(s))}};var gn=12,mn=700,wn=5,We=32,bn=8;function oe({label:t,steps:s,order:n,onChange:o}){let r=new ne(s,n),{staged:a}=r,c=!1,i={},
l=!1,d=new Map,u=e("div",{"aria-live":"assertive",class:"ts-hidden"}),p=e("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),f=G("Up",()=>V(-1),{"aria-label":"Move the chosen step up"}),w=G("Down",
()=>V(1),{"aria-label":"Move the chosen step down"}),g=G("Undo",()=>r.undo()&&at("Undone")),$=G("Redo",()=>r.redo()&&at(
"Done again")),y=G("Choose several",()=>K(!c),{"aria-pressed":"false"}),B=G("Gather stages",()=>_(r.gathered(),"Steps of\
 one stage now stand together")),j=e("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:N=>{N.key==="Enter"&&tt()}}),L=e("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),S=e("span",{class:"ts-chosen"}),C=G("Move",tt,{"aria-label":"Move to this position"}),v=G(
"Move",bt,{"aria-label":"Move before this step"}),h=e("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},f,w,g,$,y,a?B:null),b=e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"To position ",j,C),e("span",{class:"\
ts-pair"},"or before ",L,v)),m="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),k=e(
"details",{class:"ts-keys"},e("summary",{},"Keys, and long moves"),e("p",{},m),b),E=e("div",{class:"ts-order"},e("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),h,S,p,k,u);function M(N){u.
textContent=N}function W(N=""){M(`${r.unitName()}${N}, ${r.where()}`)}function O(N){let R=d.get(N.id);if(R)return R;let X=e(
"li",{role:a?"treeitem":"option",class:"ts-step"});return X.dataset.row=N.id,d.set(N.id,X),X}function A(N=!1){let R=r.settle(),
X=new Set(R.map(ot=>ot.id));for(let[ot,$t]of d)X.has(ot)||($t.remove(),d.delete(ot));let lt=r.unit(),vt=new Set(lt),ut=p.
firstElementChild;for(let ot of R){let $t=O(ot);$t===ut?ut=ut.nextElementSibling:p.insertBefore($t,ut),D($t,ot,vt)}j.value=
String(r.order.indexOf(lt[0])+1);let xt=[...r.order.entries()].filter(([,ot])=>!vt.has(ot));L.replaceChildren(...xt.map(
([ot,$t])=>e("option",{value:$t},`${ot+1}  ${r.label($t)}`))),S.textContent=`Chosen: ${r.unitName()}, ${r.where()}`,f.disabled=
l||r.isFirst,w.disabled=l||r.isLast,g.disabled=l||r.past.length===0,$.disabled=l||r.future.length===0;for(let ot of[y,B,
j,L,C,v])ot.disabled=l;if(p.setAttribute("aria-disabled",String(l)),p.classList.toggle("ts-long",r.order.length>gn),N){let ot=d.
get(r.current);ot?.focus({preventScroll:!0}),ot?.scrollIntoView({block:"nearest"})}}function D(N,R,X){let lt=R.id===r.current,
vt=R.run?!1:r.block.has(R.key),ut=r.held!==null&&(R.run?lt:X.has(R.key)),xt=r.order.indexOf(R.run?R.run.keys[0]:R.key),ot=R.
run?R.run.keys.map(At=>i[At]?.length??0):i[R.key],$t=R.run?r.closed.has(String(R.run.stage)):!1,Me=JSON.stringify([xt,R.
level,lt,vt,ut,ot,R.run&&[R.run.keys.length,$t]]);if(N.dataset.looks===Me)return;N.dataset.looks=Me,N.tabIndex=lt?0:-1,N.
setAttribute("aria-selected",String(vt)),N.classList.toggle("ts-current",lt),N.classList.toggle("ts-inblock",vt),N.classList.
toggle("ts-held",ut),N.classList.toggle("ts-level2",R.level===2),a&&N.setAttribute("aria-level",String(R.level));let Ae=ut?
" picked up":vt?" in block":"",Oe=Ae?e("span",{class:"ts-state"},Ae):"",Te=At=>e("span",{class:"ts-number","aria-hidden":"\
true"},At);if(R.run){let{keys:At,stage:rn}=R.run;N.setAttribute("aria-expanded",String(!$t));let Ie=$t?At.filter(an=>i[an]?.
length).length:0;N.replaceChildren(Te(`${xt+1}–${xt+At.length}`),e("span",{class:"ts-fold","aria-hidden":"true"},$t?"▸":
"▾"),e("span",{class:"ts-what"},e("b",{},rn),` ${At.length} steps`,Ie?` – ${Ie} with a remark`:"",Oe));return}let Ne=(i[R.
key]??[]).map(At=>e("span",{class:`ts-note ts-note-${At.kind}`},Mt(At.shape??""),e("b",{},At.word),` ${At.text}`)),on=a&&
R.level===1;N.classList.toggle("ts-troubled",Ne.length>0),N.replaceChildren(Te(String(xt+1)),e("span",{class:"ts-grip","\
aria-hidden":"true"},"⠿"),e("span",{class:"ts-what"},r.label(R.key),on?e("span",{class:"ts-stage"},` ${r.stages.get(R.
key)??""}`):"",Oe,...Ne))}let I=()=>o([...r.order]);function _(N,R){if(!r.take(N)){M(`${r.unitName()} stays at ${r.where()}`);
return}A(!0),R?M(R):W(),r.held===null&&I()}function V(N){l||_(r.shifted(N))}function tt(){if(l)return;let N=Number.parseInt(
j.value,10),R=r.order.length;N>=1&&N<=R?_(r.atPosition(N)):(M(`Type a position from 1 to ${R}`),S.textContent=`Type a po\
sition from 1 to ${R}.`)}function bt(){!l&&L.value&&_(r.beside(L.value,"before"))}function at(N){A(),M(`${N}. ${r.unitName()}\
, ${r.where()}`),I()}function F(){r.pickUp(),A(!0),W(" picked up")}function Y(){r.putDown()&&I(),A(!0),W(" put down")}function x(){
r.putDown()&&I(),A()}function H(){r.putBack(),A(!0),W(" put back")}function K(N){c=N,y.setAttribute("aria-pressed",String(
N)),N||(r.block=new Set),A(),M(N?"Choose the steps of a block":"Block let go")}function U(N){r.toggleBlock(N);let R=r.block.
has(N)?"in the block":"out of the block";M(`${r.label(N)} ${R}, ${r.block.size} in it`)}function st(N,R){let X=r.fold(N,
R);X&&(A(!0),M(`${X} ${R?"closed":"open"}`))}p.addEventListener("keydown",N=>{if(yt(N))return;let R=r.rows(),X=R.findIndex(
$t=>$t.id===r.current),lt=$t=>{r.current=R[Math.max(0,Math.min(R.length-1,$t))].id,A(!0)},vt=R[X],{key:ut}=N,xt=ut==="Ar\
rowUp"?-1:ut==="ArrowDown"?1:null,ot=r.held!==null;if(xt&&(N.shiftKey||ot))V(xt);else if(xt)lt(X+xt);else if(ot&&ut==="E\
scape")H();else if(ut===" ")l||(ot?Y:F)();else if(ot&&ut==="Enter")Y();else if(ut==="Enter"&&!vt.run)l||(U(vt.key),A(!0));else if(ut===
"Home"&&!ot)lt(0);else if(ut==="End"&&!ot)lt(R.length-1);else if(a&&ut==="ArrowLeft")st(vt,!0);else if(a&&ut==="ArrowRig\
ht")st(vt,!1);else if(ut.length===1&&!ot)T(ut);else return;N.preventDefault()});let z="",dt;function T(N){z+=N.toLowerCase(),
clearTimeout(dt),dt=window.setTimeout(()=>{z=""},mn);let R=r.sought(z);R&&(r.current=R.id,A(!0))}p.addEventListener("foc\
usout",({relatedTarget:N})=>{r.held!==null&&N instanceof Node&&!p.contains(N)&&x()});let q=null;p.addEventListener("poin\
terdown",N=>{let R=r.row(kt(N,".ts-step")?.dataset.row??"");if(!R||N.button!==0)return;if(R.run&&kt(N,".ts-fold")){st(R,
!r.closed.has(String(R.run.stage))),N.preventDefault();return}let X=kt(N,".ts-grip, .ts-number"),lt=N.ctrlKey||N.metaKey;
r.held!==null&&x(),!R.run&&!l&&(N.shiftKey?r.blockTo(R.key):(lt||c)&&!X&&U(R.key)),r.current=R.id,A(!0),N.preventDefault(),
!(l||N.shiftKey||lt)&&(N.pointerType!=="mouse"&&!X||(q={x:N.clientX,y:N.clientY,id:N.pointerId,carried:null},p.setPointerCapture(
N.pointerId)))}),p.addEventListener("pointermove",N=>{if(!q||N.pointerId!==q.id)return;let{clientX:R,clientY:X}=N;if(!q.
carried){if(Math.hypot(R-q.x,X-q.y)<wn)return;q.carried=nt()}Object.assign(q.carried,{x:R,y:X}),pt(q.carried)});function nt(){
let N=e("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},r.unit().length>1?r.unitName():r.label(r.unit()[0]));document.
body.append(N);let R=e("div",{class:"ts-line","aria-hidden":"true"});p.append(R),p.classList.add("ts-dragging");for(let X of r.
unit())d.get(X)?.classList.add("ts-lifted");return{ghost:N,line:R,timer:requestAnimationFrame(ft),x:0,y:0,drop:null}}function pt(N){
N.ghost.style.transform=`translate(${N.x+12}px, ${N.y+8}px)`;let X=r.rows().map(xt=>{let ot=O(xt).getBoundingClientRect();
return{row:xt,box:ot,offset:N.y-(ot.top+ot.height/2)}}).reduce((xt,ot)=>Math.abs(ot.offset)<Math.abs(xt.offset)?ot:xt),lt=X.
offset>0;N.drop=r.dropAt(X.row,lt);let ut=(lt?X.box.bottom:X.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;N.line.
style.top=`${ut}px`}function ft(){let N=q?.carried;if(N){for(let R of[p,Be(p)]){let lt=R===document.scrollingElement?{top:0,
bottom:innerHeight}:R.getBoundingClientRect(),vt=N.y<lt.top+We?-1:N.y>lt.bottom-We?1:0;if(!vt)continue;let ut=R.scrollTop;
if(R.scrollTop+=vt*bn,R.scrollTop!==ut){pt(N);break}}N.timer=requestAnimationFrame(ft)}}function Z(N){let R=q?.carried;if(q=
null,!R)return;cancelAnimationFrame(R.timer),R.ghost.remove(),R.line.remove(),p.classList.remove("ts-dragging");for(let lt of d.
values())lt.classList.remove("ts-lifted");let{drop:X}=R;if(!N||!X||r.unit().includes(X.target)){A(!0),M(`${r.unitName()}\
 stays at ${r.where()}`);return}_(r.beside(X.target,X.side))}return p.addEventListener("pointerup",()=>Z(!0)),p.addEventListener(
"pointercancel",()=>Z(!1)),E.addEventListener("keydown",N=>{!q?.carried||N.key!=="Escape"||(Z(!1),N.stopPropagation())}),
A(),{element:E,tools:h,order:()=>[...r.order],change:(N,R)=>{l||_(N,R)},setOrder(N,R=!1){r.held!==null||q?.carried||_t(N,
r.order)||(r.set(N,R),A())},setNotes(N){i=N??{},A()},setDisabled(N){l=N,A()}}}wt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,s,n){let o=t.
steps.map(([a])=>a),r=oe({label:t.prompt,steps:t.steps,order:o,onChange:n});return{element:r.element,show:a=>r.setOrder(
Ue(a.value,o)),setDisabled:r.setDisabled,refused(){}}}});function Ge(t,s,n){let o=[0,0],r=[n(...o)],a=new Map;for(let[c,i]of t.entries()){let[l,d]=s[i]??[null,null];l!==null&&o[1]!==
0&&r.push(n(o[0],0)),o=[l??o[0],d??(l===null?o[1]:0)];let u=n(...o);r.push(u);let p=a.get(u.join(" "))??{at:u,numbers:[]};
p.numbers.push(c+1),a.set(u.join(" "),p)}return{points:r,stops:[...a.values()]}}function Ye(t,s,n){let o=s>=0&&s<t.length-
1?s+1:t.length;return{moves:[...t.slice(0,o),n,...t.slice(o)],place:o}}function Ve(t,s){return t.filter((n,o)=>o!==s)}function Xe(t,s,n){
let o=s+n;if(o<0||o>=t.length)return null;let r=[...t];return[r[s],r[o]]=[r[o],r[s]],r}var ze=.6;function Je(t,[s,n],[o,
r]){let a=Object.entries(t).filter(([l])=>!l.startsWith("firm:")),c=(l,d)=>a.filter(([,u])=>u[0]===l&&u[1]===d).map(([u])=>u).
slice(0,1),i=Math.abs(s-o)>ze;return[...i&&Math.abs(n)>ze?c(null,0):[],...i?c(o,null):[],...r||!i?c(null,r):[]]}var Ut=9,re=.7*Ut,ye=44;function ae(t){let s=Math.min(...t.gates),n=Math.max(...t.gates),[o,r]=t.turn_mm,a=(n-s)*Ut+2*ye,
c=(r-o)*re+2*ye,i=(f,w)=>[ye+(f-s)*Ut,c/2-(w-(o+r)/2)*re],l=t.gates.map(f=>`M${i(f,o).join(" ")}L${i(f,r).join(" ")}`),d=`\
M${i(s,0).join(" ")}L${i(n,0).join(" ")}`,u=t.gears.map(([f,w,g])=>{let[$,y]=i(w,g),B={x:$,y:y+(g>0?-20:30),"data-gear":f};
return P("text",{...B,class:"tsp-gear","text-anchor":"middle"},f)});return{element:P("svg",{viewBox:`0 0 ${a} ${c}`,width:a,
height:c,class:"ts-gateplan","aria-hidden":"true"},P("path",{d:[...l,d].join(""),class:"tsp-slot"}),...u),at:i}}function kn(t){let{element:s,at:n}=ae(t),o=P("polyline",{class:"tsp-line",points:""}),r=P("g");return s.append(o,r),{element:s,
show(a){let{points:c,stops:i}=Ge(a,t.aims,n),[[l,d]]=c;o.setAttribute("points",c.map(u=>u.join(",")).join(" ")),r.replaceChildren(
P("circle",{cx:l,cy:d,r:4,class:"tsp-start"}),...i.map(({at:[u,p],numbers:f})=>P("g",{},P("circle",{cx:u,cy:p,r:3.5,class:"\
tsp-stop"}),P("text",{x:u+7,y:p-5,class:"tsp-number"},f.join(", ")))))}}}function Ze({label:t,moves:s,plan:n,most:o,onChange:r}){
let a=new Map(s),c=E=>a.get(E)??E,i=[],l=-1,d=!1,u=n?kn(n):null,p=e("ol",{class:"ts-pathlist","aria-label":t}),f=e("p",{
class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),w=e("p",{class:"ts-hidden",role:"stat\
us"}),g=s.map(([E,M])=>G(M,()=>S(E))),$=G("Take back the last move",()=>{i.length&&C(i.length-1)}),y=G("Take back all",()=>{
i.length&&L([],"No moves left")}),B=e("span",{class:"ts-hint"}),j=e("div",{class:"ts-path"},e("div",{class:"ts-tools ts-\
moves",role:"group","aria-label":"Add a move"},...g),e("div",{class:"ts-path-both"},e("div",{class:"ts-path-words"},f,p,
e("div",{class:"ts-tools"},$,y,B)),u&&e("div",{class:"ts-path-picture"},u.element)),u&&e("p",{class:"ts-hint"},"The line\
 shows where each move aims. Whether the lever gets there is what the test finds out."),w);function L(E,M){d||(i=E,k(),w.
textContent=M,r([...i]))}function S(E){if(i.length>=o){w.textContent=`${o} moves are the most here`;return}let{moves:M,place:W}=Ye(
i,l,E);l=W,L(M,`Move ${W+1}: ${c(E)}`)}function C(E){let M=c(i[E]);l=Math.min(l,i.length-2),L(Ve(i,E),`Taken back: ${M}`)}
function v(E,M){let W=Xe(i,E,M);W&&(l=E+M,L(W,`${c(W[l])}, move ${l+1} of ${i.length}`),b(l))}function h(E){return p.children[E]?.
querySelector(".ts-path-move")}function b(E){let M=h(E);return M instanceof HTMLElement&&M.focus(),!!M}function m(E,M){let W=e(
"span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${M+1}: ${c(E)}`},c(E)),O=e("button",{type:"button",class:"\
ts-path-off","aria-label":`Take back move ${M+1}`,onclick:()=>C(M)},"×"),A=e("li",{},W,O);return A.classList.toggle("ts\
-current",M===l),W.addEventListener("focus",()=>{l=M;for(let D of p.children)D.classList.toggle("ts-current",D===A)}),W.
addEventListener("keydown",D=>{if(yt(D))return;let I=D.key==="ArrowUp"?-1:D.key==="ArrowDown"?1:null;if(I&&D.shiftKey)v(
M,I);else if(I)b(M+I);else if(D.key==="Delete"||D.key==="Backspace")C(M),b(Math.min(M,i.length-1))||g[0].focus();else return;
D.preventDefault()}),O.disabled=d,A}function k(){p.replaceChildren(...i.map(m)),f.hidden=i.length>0,B.textContent=`${i.length}\
 of at most ${o} moves`;for(let E of g)E.disabled=d||i.length>=o;$.disabled=y.disabled=d||i.length===0,u?.show(i)}return k(),
{element:j,setMoves(E){_t(E,i)||(i=[...E],l=-1,k())},setDisabled(E){d=E,k()}}}wt("path",{prompt:"words",make(t,s,n){let o=Ze({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:o.element,show:r=>o.setMoves([r.value??[]].flat()),setDisabled:o.setDisabled,refused(){}}}});function Qe(t,s,n){let o=t.indexOf(n);return[...t.slice(o+1),...t.slice(0,o)].find(a=>!s.get(a))??n}function ts(t,s,n){let o=t.
find(({key:l})=>l===s);if(!o)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let r={ArrowRight:1,
ArrowLeft:-1}[n];if(r!==void 0){let l=[...t].sort((u,p)=>u.x-p.x||u.y-p.y),d=l.findIndex(({key:u})=>u===s)+r;return l[(d+
l.length)%l.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=l=>Math.abs(l.y-o.y)+2*Math.abs(l.x-
o.x),[i]=t.filter(({key:l,y:d})=>l!==s&&(d-o.y)*a>2).sort((l,d)=>c(l)-c(d));return(i??o).key}function Kt(t,s,n,o){let r=t.lines,a=t.options,c=r.map(([p])=>p),i=c[0],l=r.map(([p,f],w)=>{let g=`${s.control}-${w}`,$=e(
"label",{class:"ts-each-line",for:g},f),y=St({id:g,"aria-describedby":s.status},[["","choose"],...a]),B=e("input",{type:"\
radio",name:`${s.control}-active`,"aria-label":`Point in the picture for: ${f}`,checked:w===0}),j=e("li",{},c.length>1?B:
null,$,y);return B.addEventListener("change",()=>{i=p}),y.addEventListener("change",()=>{i=p,u()}),{key:p,box:y,mark:B,row:j}}),
d=()=>new Map(l.map(({key:p,box:f})=>[p,f.value]));function u(){let p=d();o(p),n(Jt([...p]))}return{element:e("ol",{class:"\
ts-each ts-pointed"},...l.map(({row:p})=>p)),active:()=>i,answers:d,press(p){let f=l.find(({key:w})=>w===i);if(!(!f||f.box.
disabled)){f.box.value=p,u(),i=Qe(c,d(),i);for(let{key:w,mark:g}of l)g.checked=w===i}},put(p,f){let w=l.find(({key:g})=>g===
p);!w||w.box.disabled||(w.box.value=f,u())},show(p){let f=Zt(p.value);for(let{key:w,box:g}of l)g.value=f.get(w)??"";o(d())},
setDisabled(p){for(let{box:f,mark:w}of l)f.disabled=p,w.disabled=p}}}function ie(t,s,n){let o=e("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});o.innerHTML=t;let r=o.querySelector(
"svg");r.setAttribute("role","group");let a=new Map(Q(r,"[data-mark]").map(d=>[String(d.dataset.mark),d])),c=new Map(s);
for(let[d,u]of a)u.setAttribute("role","button"),u.setAttribute("tabindex",d===s[0][0]?"0":"-1"),u.setAttribute("aria-la\
bel",`${d}: ${c.get(d)??""}`);let i=d=>kt(d,"[data-mark]")?.dataset.mark??kt(d,"[data-spot]")?.dataset.spot;o.addEventListener(
"click",d=>{let u=i(d);u&&n(u)});for(let[d,u]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])o.addEventListener(
d,p=>{let f=i(p);f&&l(f,u)});function l(d,u){for(let p of Q(r,`[data-spot="${d}"]`))p.classList.toggle("tss-near",u)}return o.
addEventListener("keydown",d=>{let u=kt(d,"[data-mark]")?.dataset.mark;if(u){if(d.key==="Enter"||d.key===" ")n(u);else{let p=[
...a].map(([w,g])=>{let $=g.querySelector(".tss-dot");return{key:w,x:$.cx.baseVal.value,y:$.cy.baseVal.value}}),f=ts(p,u,
d.key);if(f===void 0)return;a.get(u)?.setAttribute("tabindex","-1"),a.get(f)?.setAttribute("tabindex","0"),a.get(f)?.focus()}
d.preventDefault()}}),{element:o,drawing:r,choose(d){let u=new Set(d);for(let[p,f]of a)f.classList.toggle("tss-chosen",u.
has(p)),f.setAttribute("aria-pressed",String(u.has(p)));for(let p of Q(r,"[data-spot]"))p.classList.toggle("tss-on",u.has(
String(p.dataset.spot)))}}}wt("picture",{prompt:"legend",make(t,s,n){let o=t.options,r=Kt(t,s,n,i=>{let l=new Set(i.values());for(let{letter:d,card:u}of a)
u.classList.toggle("ts-on",l.has(d))}),a=o.map(([i,l])=>{let d=e("div",{class:"ts-picture-card",onclick:()=>r.press(i)});
return d.innerHTML=t.svgs[i],d.querySelector("svg")?.setAttribute("aria-label",l),d.prepend(e("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:d}}),c=e("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:e("div",{},r.element,
c),show:r.show,setDisabled:r.setDisabled,refused(){}}}});wt("point",{prompt:"legend",make(t,s,n){let o=Kt(t,s,n,i=>c.choose(i.values())),a=t.options.map(([i,l])=>[i,l.slice(i.length+
2)]),c=ie(t.svg,a,o.press);return{element:e("div",{},o.element,c.element),show:o.show,setDisabled:o.setDisabled,refused(){}}}});wt("put",{prompt:"legend",make(t,s,n){let o=t.lines,r=new Map(o.map(([u])=>[u,"1"])),a=Kt(t,s,n,u=>{for(let[p,f]of u)f&&
r.set(p,f.split("-")[1]);c.choose([...u.values()].map(p=>p.split("-")[0])),l(u)}),c=ie(t.svg,t.places,u=>{a.press(`${u}-${r.
get(a.active())}`)}),i=P("g",{class:"tss-placed"});c.drawing.append(i);function l(u){i.replaceChildren();for(let[p,f]of u){
let[w,g]=f.split("-"),$=t.at[w];if(!$)continue;let y=P("g",{transform:`translate(${$[0]} ${$[1]})`});y.innerHTML=t.pieces[p][Number(
g)-1][1],i.append(y)}for(let{part:p,show:f}of d)f(r.get(p)??"1")}let d=o.map(([u,p])=>{let f=e("div",{class:"ts-tray-par\
t"}),w=e("span",{class:"ts-hint",role:"status"}),g=rt("Turn it",()=>{let B=r.get(u)==="1"?"2":"1";r.set(u,B),$(B);let j=a.
answers().get(u);j&&a.put(u,`${j.split("-")[0]}-${B}`)},`Turn it: ${p}`);function $(B){let[j,L]=t.pieces[u][Number(B)-1],
S=Number(/data-half="([\d.]+)"/.exec(L)?.[1]??90);f.innerHTML=`<svg viewBox="${-S} ${-S} ${2*S} ${2*S}" width="120" heig\
ht="120" aria-hidden="true">${L}</svg>`,w.textContent=`Way ${B}: ${j}`}let y=e("div",{class:"ts-tray"},f,e("div",{},p,w,
g));return{part:u,row:y,show:$,turn:g}});return{element:e("div",{},e("div",{class:"ts-trays"},...d.map(({row:u})=>u)),a.
element,c.element),show:a.show,setDisabled(u){a.setDisabled(u);for(let{turn:p}of d)p.disabled=u},refused(){}}}});var vn="No line to the course just now. Go on with the questions: what you enter is kept in this browser and sent when t\
he line is back. Simulators stand still until then.",yn="The line to the course is back.",xn=1500,$n=5e3,$e=new Set,Bt=null,
xe;function es(t){Bt??=e("p",{class:"twoshaft ts-line-bar",role:"status"}),Bt.isConnected||document.body.append(Bt),Bt.textContent=
t}function Sn(){Bt?.remove(),Bt=null}function ss(){clearTimeout(xe),$e.size?xe=window.setTimeout(()=>es(vn),Bt?0:xn):Bt&&
(es(yn),xe=window.setTimeout(Sn,$n))}var ns=t=>({down(){$e.add(t),ss()},up(){$e.delete(t),ss()}});var Ln=1e3,Cn="input, button, select, textarea, summary, a, [tabindex]";function En(t){let s=r=>{if(r.stopPropagation(),
!(r.ctrlKey||r.metaKey)||r.key.toLowerCase()!=="s"||(r.preventDefault(),r.type!=="keydown"||r.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:l,metaKey:d}=r,u={key:a,code:c,keyCode:i,ctrlKey:l,metaKey:d,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",u))};t.addEventListener("keydown",s),t.addEventListener("keyup",s),t.addEventListener(
"keypress",s);let n=()=>{for(let r of t.querySelectorAll(Cn))r.hasAttribute("data-lm-suppress-shortcuts")||r.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let o=new MutationObserver(n);return o.observe(t,{childList:!0,subtree:!0}),()=>o.
disconnect()}function Mn(t,s,n){let o=t.widget_manager?.kernel,r=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&s()},a=(c,i)=>{i==="disconnected"?s():n(i==="connecting")};return t.on("comm_live_update",s),o?.statusChanged?.
connect(r),o?.connectionStatusChanged?.connect(a),o?.disposed?.connect(s),()=>{t.off("comm_live_update",s),o?.statusChanged?.
disconnect(r),o?.connectionStatusChanged?.disconnect(a),o?.disposed?.disconnect(s)}}var os=`.twoshaft {
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
  --ts-grown: 1;
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
html[data-ts-print="large"] figure > img { zoom: 1.4; max-width: none; }
html[data-ts-print="large"] figure { overflow-x: auto; min-width: 0; max-width: 100%; }
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
woshaft .ts-gate{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 calc(2 * var(--ts-grid));align-items:start;\
cursor:default;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none}.twoshaft .ts-\
pulling,.twoshaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accent)}.twoshaft .t\
s-gate svg{user-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-happened.ts-s\
topped,.twoshaft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;padding-left:cal\
c(4 * var(--ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate+.ts-happened{min-height:1.5em}.twoshaft \
.ts-proof{max-width:calc(var(--ts-width) + 12ch);font-weight:600}.twoshaft-rig .ts-how{width:34em;max-width:100%}.twosha\
ft .ts-gate:focus-visible{outline-offset:-3px}.twoshaft .ts-lever .tsl-spot{fill:transparent;cursor:pointer}.twoshaft .t\
s-lever .tsl-spot:hover{fill:var(--ts-faint);stroke:var(--ts-accent)}.twoshaft .ts-lever .tsl-knob{fill:var(--ts-accent)\
;stroke:var(--ts-paper);stroke-width:2;cursor:grab;touch-action:none}.twoshaft .ts-lever .tsl-in{text-decoration:underli\
ne;font-weight:800}.twoshaft .ts-gate-work{display:grid;grid-template-columns:minmax(0,3fr) minmax(0,2fr);gap:0 calc(3 *\
 var(--ts-grid))}.twoshaft .ts-gate-work .ts-log{max-height:9rem}.twoshaft .ts-gate-work .ts-moves{display:grid;grid-tem\
plate-columns:repeat(auto-fill,minmax(200px,1fr))}.twoshaft .ts-gate-work .ts-moves .ts-button{font-size:var(--ts-small)\
;line-height:1.25}@media(max-width:900px){.twoshaft .ts-gate,.twoshaft .ts-gate-work{grid-template-columns:minmax(0,1fr)\
}}.twoshaft .tsw-train svg{user-select:none}.twoshaft .tsw-counts{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid\
));margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-template-columns:104px 1fr;colum\
n-gap:var(--ts-grid);align-items:center;width:268px;padding:4px;border:1px solid var(--ts-line);border-radius:2px;text-a\
lign:left;font-size:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:3px}.twoshaf\
t .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-dial{grid-column\
:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:104px;height:104px;touch-action:\
none;cursor:grab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var(--ts-faint);s\
troke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft\
 .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-tick{stroke\
:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:calc(15px * var(--t\
s-grown, 1)) var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{min-height:1.5em;font-family:mo\
nospace;font-size:var(--ts-text);letter-spacing:1px;overflow-wrap:anywhere;max-height:4.5em;overflow-y:auto}.twoshaft .t\
sw-figure{min-height:1.5em;font-variant-numeric:tabular-nums}.twoshaft .tsw-figure:empty{min-height:0}.twoshaft .tsw-hap\
pened{min-height:1.5em}.twoshaft .tsh-picture{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{display\
:block;width:100%;min-width:720px;max-width:1100px;height:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-place:\
focus{outline:none}.twoshaft .tsh-place:hover .tsh-hit{stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-h\
it,.twoshaft .tsh-chosen:hover .tsh-hit{stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh-h\
it{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:3p\
x solid var(--ts-accent);padding-left:calc(1.5 * var(--ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-ver\
dict{font-weight:600}.twoshaft .tsh-verdict{margin-top:var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-bot\
tom:0}.twoshaft .tsl-sliders{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3\
 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:960px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em mi\
nmax(6em,1fr) 4em;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsl-row input{width:100%;\
accent-color:var(--ts-accent);margin:0;min-height:24px}.twoshaft .tsl-row .ts-box{justify-self:start}.twoshaft .tsl-figu\
re{font-variant-numeric:tabular-nums;text-align:right}.twoshaft .tsl-drawing{overflow-x:auto}.twoshaft .tsl-drawing svg{\
display:block;width:100%;min-width:600px;max-width:820px;height:auto}.twoshaft .tsl-sum{font-variant-numeric:tabular-num\
s;margin:var(--ts-grid) 0}@media(max-width:480px){.twoshaft .tsl-sliders{grid-template-columns:minmax(0,1fr)}.twoshaft .\
tsl-row{display:flex;flex-wrap:wrap;min-width:0}.twoshaft .tsl-row input{max-width:100%}}.twoshaft .tsp-section{overflow\
-x:auto}.twoshaft .tsp-gauge{width:220px;height:200px;flex:none}.twoshaft .tsp-section svg{display:block;max-width:100%;\
height:auto;min-width:320px}.twoshaft .ts-pair[hidden]{display:none}.twoshaft .ts-cells{position:absolute;pointer-events\
:none}.twoshaft .tsp-land.tsp-clear{fill:none}.twoshaft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round}.\
twoshaft .tsp-way{fill:none;stroke:var(--ts-bad);stroke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:var(\
--ts-ink);stroke:var(--ts-paper);stroke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,\
.twoshaft .tsp-shut .tsp-chosen{display:none}.twoshaft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-\
grid));font-size:var(--ts-small);min-height:1.6em}.twoshaft .ts-key{display:inline-flex;align-items:center;gap:4px}.twos\
haft .ts-swatch{width:25px;height:15px;border:1px solid var(--ts-line)}.twoshaft .ts-range{accent-color:var(--ts-accent)\
;min-height:24px}.twoshaft .ts-clock{min-width:6em;font-weight:600}.twoshaft .ts-unit{overflow:auto;max-height:620px;bor\
der:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:\
block;max-width:none;max-height:none}.twoshaft .ts-unit [data-part]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path:n\
ot(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-unit\
 [data-part]:hover path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible{o\
utline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over{f\
ont-weight:600}.twoshaft .ts-unit-words p{max-width:var(--ts-width)}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sentences\
[hidden]{display:none}.twoshaft .ts-told{min-height:2em;max-height:9em;overflow-y:auto}.twoshaft .ts-build{display:grid;\
grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));align-items:start}.twoshaft .ts-build\
list{display:grid;gap:4px;max-height:22rem;overflow-y:auto;padding:4px}.twoshaft .ts-buildstep{text-align:left;padding-b\
lock:2px;min-height:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var(--ts-line)}.twoshaft .ts-bu\
ildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-current]{ba\
ckground:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand{border:\
1px solid var(--ts-line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twoshaft .ts-hand .ts-field{border:0;m\
argin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do{text-align:left;padding-bloc\
k:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid);font-size:var(--ts-small)}.\
twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.twoshaft .ts-record caption{tex\
t-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align:top;padding:3px 16px 3px 0;b\
order-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-record .ts-blank{min-width:12em;h\
eight:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,1fr)}.twoshaft .ts-buildlist,.twosh\
aft .ts-hand{max-height:none}}@media(forced-colors:active){.twoshaft .ts-button[aria-pressed=true],.twoshaft .ts-buildst\
ep[aria-current],.twoshaft .ts-held{forced-color-adjust:none;background:Highlight;border-color:Highlight;color:Highlight\
Text}.twoshaft :is(.ts-step,.ts-pathlist li):not(.ts-current,.ts-inblock){border-left-color:Canvas}.twoshaft :is(.ts-ste\
p,.ts-pathlist li).ts-current{border-left-color:Highlight}.twoshaft-bar .ts-tasks a:not([aria-current]){border-bottom-co\
lor:Canvas}}`,rs="twoshaft-styles";function An(){let t=document.getElementById(rs);t?.textContent!==os&&(t?.remove(),document.
head.append(e("style",{id:rs},os)))}function J({model:t,el:s},{kind:n,lost:o=()=>Yt(s),line:r=()=>{}}){An(),s.classList.
add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=e("p",{class:"ts-alert",role:"alert"}),c=ns(s),i=()=>s.classList.contains(
"ts-lost"),l=[],u=Mn(t,()=>{i()||(s.classList.add("ts-lost"),c.down(),o())},g=>{i()||(g?c.down():c.up(),r(g))}),p=En(s),
f,w=(g,$)=>{t.on(g,$),l.push([g,$])};return w("msg:custom",g=>{g.type==="trouble"&&!i()&&(a.textContent=g.reason)}),{alert:a,
follow:w,isLost:i,send(g){i()||(t.send(g),clearTimeout(f),f=window.setTimeout(()=>t.send({type:"rest"}),Ln))},show:(...g)=>s.
replaceChildren(...Tt(g)),close(){c.up(),clearTimeout(f),p(),u();for(let[g,$]of l)t.off(g,$)}}}function as({model:t,el:s}){let n=J({model:t,el:s},{kind:"rig",lost:()=>l.setDisabled(!0)}),o=e("p",{class:"ts-finding",
role:"status"}),r=e("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=et("order"),n.send({type:"order",order:p,turn:c})},
l=oe({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),d=e("button",{type:"\
button",class:"ts-button",onclick:()=>l.change([...a],"The first order stands again")},"Start again");l.tools.append(d),
n.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),n.alert,o,r,l.element);function u(){let p=t.
get("judged");c!==null&&p.turn!==c||(c=null,o.textContent=p.finding,r.textContent=p.cost,l.setOrder(p.order),l.setNotes(
p.notes))}return n.follow("change:judged",u),u(),n.close}var On=["lit","bench","absent"],is=[1,1.5,2,3,4.5];function ce({svg:t,parts:s,words:n}){let o=e("div",{class:"ts-unit",tabindex:"\
0",role:"application","aria-label":"The unit in section. Left and right arrows walk from part to part, up and down to th\
e part above or below, plus and minus zoom."});o.innerHTML=t;let r=o.querySelector("svg"),a=r.querySelector(".tsu-marks");
r.setAttribute("aria-hidden","true"),r.removeAttribute("role");let c=new Map(s.map(([b])=>[b,[]]));for(let b of Q(r,"[da\
ta-part]"))c.get(String(b.dataset.part))?.push(b);let i=new Map(s.map(([b],m)=>[b,m])),l=e("p",{class:"ts-hint ts-unit-n\
ame",role:"status"}),d=St({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],...s.map(([b,m])=>[b,m])]),
u=-1,p=0,f={},w=b=>{let m=f[b];return m==="absent"?" Not there yet.":m==="bench"?" On the bench.":m==="lit"?" In hand.":
""},g=b=>`${s[b][1]}. ${s[b][2]}${w(s[b][0])}`;function $(b){for(let k of Q(r,".tsu-chosen"))k.classList.remove("tsu-cho\
sen");u=b;let m=b<0?"":s[b][0];d.value=m,l.textContent=b<0?C:g(b);for(let k of c.get(m)??[])k.classList.add("tsu-chosen");
b>=0&&B(m)}function y(b){let m=(c.get(b)??[]).map(O=>O.getBBox()),k=Math.min(...m.map(O=>O.x)),E=Math.max(...m.map(O=>O.
x+O.width)),M=Math.min(...m.map(O=>O.y)),W=Math.max(...m.map(O=>O.y+O.height));return{x:(k+E)/2,y:(M+W)/2}}function B(b){
let m=y(b),k=r.getBoundingClientRect().width/r.viewBox.baseVal.width,[E,M]=[m.x*k,m.y*k],{scrollLeft:W,scrollTop:O,clientWidth:A,
clientHeight:D}=o;(E<W+40||E>W+A-40)&&(o.scrollLeft=E-A/2),(M<O+40||M>O+D-40)&&(o.scrollTop=M-D/2)}function j(b){p=Math.
max(0,Math.min(is.length-1,p+b)),r.style.width=`${100*is[p]}%`,r.style.height="auto",u>=0&&B(s[u][0])}function L(b){let m=y(
s[u][0]),[k]=s.map(([E],M)=>({k:M,at:y(E)})).filter(({k:E,at:M})=>E!==u&&(M.y-m.y)*b>4).sort((E,M)=>cs(E.at,m)-cs(M.at,m));
k&&$(k.k)}o.addEventListener("keydown",b=>{if(yt(b))return;let m=s.length-1;if(b.key==="ArrowRight")$(u>=m?0:u+1);else if(b.
key==="ArrowLeft")$(u<=0?m:u-1);else if(b.key==="ArrowUp"||b.key==="ArrowDown")u<0?$(0):L(b.key==="ArrowUp"?-1:1);else if(b.
key==="Home")$(0);else if(b.key==="End")$(m);else if(b.key==="+"||b.key==="=")j(1);else if(b.key==="-")j(-1);else if(b.key===
"Escape")$(-1);else return;b.preventDefault()}),o.addEventListener("click",b=>{let m=kt(b,"[data-part]")?.dataset.part;$(
m===void 0?-1:i.get(m)??-1)}),o.addEventListener("pointerover",b=>{let m=kt(b,"[data-part]")?.dataset.part;if(m===void 0||
b.pointerType!=="mouse")return;let k=kt(b,"[data-solid]")?.querySelector("title")?.textContent,E=s[i.get(m)??0][1];S.textContent=
k&&k!==E?`${k} (${E})`:E}),o.addEventListener("pointerleave",()=>{S.textContent=""}),d.addEventListener("change",()=>$(i.
get(d.value)??-1));let S=e("span",{class:"ts-unit-over","aria-hidden":"true"}),C="Point at a part, tap it, or choose it \
here to read its name.";l.textContent=C;let v=e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"Part ",d),rt("−",
()=>j(-1),"Smaller"),rt("+",()=>j(1),"Larger"),S),h=e("details",{class:"ts-unit-words"},e("summary",{},"What is where, i\
n words"),e("p",{},n));return j(0),{nodes:[v,l,o,h],show(b){f=b.looks;for(let[m,k]of c)for(let E of k)for(let M of On)E.
classList.toggle(`tsu-${M}`,f[m]===M);a.innerHTML=b.marks,u>=0&&(l.textContent=g(u))}}}function cs(t,s){return Math.abs(
t.y-s.y)+2*Math.abs(t.x-s.x)}function ls(t,s){t.setAttribute("aria-disabled",String(s)),t.classList.toggle("ts-off",s)}function ds({model:t,el:s}){let n=e(
"p",{class:"ts-finding"}),o=e("p",{class:"ts-happened",role:"status"}),r=e("p",{class:"ts-hint"}),a=ce(t.get("picture")),
c=e("p",{class:"ts-hint",role:"status"}),i=e("dl",{class:"ts-facts"}),l=e("div",{class:"ts-ready"}),d=e("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),u=e("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:h=>{h.key==="Enter"&&L()}}),p=e("span"),f=h=>C.send({type:"move",by:h}),w=h=>C.
send({type:"go",position:h}),g=rt("Back",()=>f(-1),"One step back"),$=rt("Next",()=>f(1),"Next step"),y=rt("Start",()=>w(
0),"Start with an empty bench"),B=rt("End",()=>w(t.get("view").count),"End of the order"),j=rt("Try it",()=>C.send({type:"\
take",step:d.value}),"Try it: the step chosen here"),L=()=>{let h=Number.parseInt(u.value,10);h>=0&&w(h)},S=e("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},y,g,$,B,e("span",{class:"t\
s-pair"},"place ",u,p,rt("Go",L,"Go to this place")));S.addEventListener("keydown",h=>{if(!(h.target===u||yt(h))){if(h.key===
"ArrowLeft")f(-1);else if(h.key==="ArrowRight")f(1);else if(h.key==="Home")w(0);else if(h.key==="End")w(t.get("view").count);else
return;h.preventDefault()}});let C=J({model:t,el:s},{kind:"rig"});C.show(e("p",{class:"ts-who"},"Practice. Nothing here \
is marked or saved."),C.alert,n,S,o,r,c,...a.nodes,i,e("p",{class:"ts-prompt"},"Do another step next"),l,e("div",{class:"\
ts-tools"},e("span",{class:"ts-pair"},"or one that is not ready: ",d,j)));function v(){let h=t.get("view");n.textContent=
h.finding,o.textContent=h.happened,r.textContent=h.next?`Next in this order: ${h.next}`:"This is the end of the order.",
c.textContent=h.build.words,a.show(h.build),i.replaceChildren(...Et(h.facts));let b=l.contains(document.activeElement);l.
replaceChildren(...h.ready.map(([E,M])=>rt(M,()=>C.send({type:"take",step:E})))),h.ready.length||l.append(e("p",{class:"\
ts-hint"},"No step is ready.")),b&&(l.querySelector("button")??$).focus(),d.replaceChildren(...mt(h.waiting)),d.disabled=
j.disabled=!h.waiting.length,u.value=String(h.position),p.textContent=` of ${h.count} `;let m=h.position===0,k=h.position===
h.count;for(let E of[g,y])ls(E,m);for(let E of[$,B])ls(E,k)}return C.follow("change:view",v),v(),C.close}function Ft(t){let s=null,n=null,o=a=>{if(s!==null){n=a;return}s=et("turn"),t(a,s)},r=()=>{s=null;let a=n;n=null,a!==null&&
o(a)};return{ask:o,free:r,answered(a){a===s&&r()},get waiting(){return s!==null}}}var it=(t,s,n,o,r)=>P("line",{x1:t,y1:s,x2:n,y2:o,class:r}),ct=(t,s,n,o="middle")=>P("text",{x:t,y:s,"text-anchor":o,class:"\
tsg-text"},n);function qt(){let t=P("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(P("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let o=0;o<100;o+=1){let r=o/100*2*Math.PI,a=o%10===0?78:o%5===0?82:86;t.append(it(100+
a*Math.sin(r),100-a*Math.cos(r),100+92*Math.sin(r),100-92*Math.cos(r),o%10===0?"tsg-mark tsg-long":"tsg-mark")),o%10===0&&
t.append(ct(100+66*Math.sin(r),104.5-66*Math.cos(r),String(o)))}t.append(P("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let o=0;o<10;o+=1){let r=o/10*2*Math.PI;t.append(it(100+15*Math.sin(r),134-15*Math.cos(r),100+19*Math.sin(r),134-19*
Math.cos(r),"tsg-mark"))}let s=it(100,134,100,119,"tsg-small"),n=P("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(s,n,P("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(o,r){n.setAttribute("tra\
nsform",`rotate(${o*360} 100 100)`),s.setAttribute("transform",`rotate(${o*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${r}`)}}}function us({top:t,mark:s,perFigure:n}){let o=P("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),r=c=>30+c/t*540;o.append(P("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*s<=t+1e-9;c+=1){let i=c%n===0;o.append(it(r(c*s),22,r(c*s),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&o.
append(ct(r(c*s),84,String(Math.round(c*s))))}let a=P("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return o.append(
a,ct(586,14,"newtons","end")),{node:o,top:t,set(c,i){a.setAttribute("transform",`translate(${r(Math.min(c,t))} 0)`),o.setAttribute(
"aria-label",`Spring scale, one mark is ${s} N. ${i}`)}}}function ps({low:t,high:s,reach:n}){let o=P("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),r=i=>360+Math.max(-n,Math.min(n,i))/n*340;o.append(P("rect",{x:r(t),y:34,width:r(
s)-r(t),height:24,class:"tsg-target"}),ct((r(t)+r(s))/2,84,"target"),it(20,46,700,46,"tsg-mark"),it(360,26,360,66,"tsg-m\
ark tsg-long"),ct(20,20,"end play","start"),ct(700,20,"preload","end"),ct(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let l of[
i,-i])o.append(it(r(l),42,r(l),50,"tsg-mark"));o.append(ct(r(-n),70,`${n.toFixed(2)} mm`,"start"),ct(r(n),70,`${n.toFixed(
2)} mm`,"end"));let a=P("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=P("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return o.append(a,c),{node:o,set(i,l,d){a.setAttribute("transform",`translate(${r(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${r(l)} 0)`),o.setAttribute("aria-label",d)}}}function gt(t,{min:s,max:n,step:o,value:r,words:a,onInput:c}){let i=e(
"input",{type:"range",class:"ts-slider",min:s,max:n,step:o,value:r,"aria-label":t}),l=e("output",{class:"ts-slid"},a(r));
return i.addEventListener("input",()=>{let d=a(Number(i.value));l.textContent=d,i.setAttribute("aria-valuetext",d),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(r)),{box:i,row:e("label",{class:"ts-slide"},e("span",{},t),i,l),set(d){i.value=
String(d),l.textContent=a(d)}}}function ht(t,s,n,o){let r=e("select",{class:"ts-box","aria-label":t,onchange:()=>o(r.value)},
...s.map(([a,c])=>e("option",{value:a,selected:a===n},c)));return{box:r,row:e("span",{class:"ts-pair"},`${t} `,r)}}function fs({model:t,el:s}){let n=t.get("about"),o=t.get("shown").state,r=null,a=e("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=e("p",{class:"ts-hint"}),i=e("p",{class:"ts-finding",role:"status"}),l=e("u\
l",{class:"ts-sentences"}),d=Ft((v,h)=>L.send({type:"set",state:v,turn:h})),u=v=>{o={...o,...v},d.ask(o)},p=P("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),f=it(0,0,0,0,"tsg-mark tsg-long"),w=ct(0,0,""),g=96,
$=g/(n.readingsOnly?o.radius:n.radii[1]),y=P("svg",{viewBox:`0 0 ${2*g+120} ${2*g+30}`,width:2*g+120,height:2*g+30,class:"\
tsg-drum",role:"img"}),B=g+4;p.setAttribute("transform",`translate(${B} ${B})`),y.append(p,f,it(4,B,2*g+4,B,"tsg-centre"),
it(B,4,B,2*g+4,"tsg-centre"),P("circle",{cx:B,cy:B,r:10,class:"tsg-face"}),w);let j=[e("div",{class:"ts-tools"},G("Turn \
the shaft ten times",()=>u({turns:o.turns+10})))];if(!n.readingsOnly){let v=n.kinds,h=v.map(([b,m])=>e("label",{class:"t\
s-option"},e("input",{type:"checkbox",checked:o.kinds.includes(b),onchange:k=>u({kinds:v.map(([E])=>E).filter(E=>E===b?k.
target.checked:o.kinds.includes(E))})}),`with ${m}`));j[0].append(G("Fit the rings anew",()=>u({turns:0}))),h.length&&j.
push(e("fieldset",{class:"tsg-ticks"},e("legend",{class:"ts-hint"},"What turns with the bearings"),...h)),j.push(gt("Set\
ting",{min:-.05,max:n.highest,step:.005,value:o.setting,onInput:b=>u({setting:b}),words:b=>b<0?`${(-b).toFixed(3)} mm of\
 end play`:`${b.toFixed(3)} mm of preload`}).row,gt("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:o.radius,
onInput:b=>u({radius:b}),words:b=>`${b} mm`}).row)}let L=J({model:t,el:s},{kind:"rig"});L.show(e("p",{class:"ts-who"},n.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),L.alert,
e("div",{class:"tsg-beside"},y,e("div",{class:"tsg-side"},a,c)),...j,i,l);function S(){let v=t.get("shown");d.waiting||(o=
v.state);let h=$*v.state.radius;Ot(p,{r:h}),Ot(f,{x1:B,y1:B-h,x2:2*g+120,y2:B-h}),Ot(w,{x:B,y:2*g+22}),w.textContent=`dr\
um, radius ${v.state.radius} mm`,y.setAttribute("aria-label",`A drum of ${v.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),r?.top!==v.scale.top&&(r=us(v.scale),a.replaceChildren(r.node),c.textContent=
`Spring scale to ${v.scale.top} N, one mark ${v.scale.mark} N.`),r?.set(v.pull,v.pullWords),i.textContent=v.finding,l.replaceChildren(
...Dt(v.words)),d.answered(v.turn)}let C=()=>d.free();return L.follow("change:shown",S),L.follow("msg:custom",C),S(),L.close}function Ct({model:t,el:s},n){let o=t.get("about"),r=t.get("shown").state,a=Ft((p,f)=>c.send({type:"set",state:p,turn:f})),
c=J({model:t,el:s},{kind:"rig"}),i=e("p",{class:"ts-finding",role:"status"}),l=n(o,p=>{r={...r,...p},a.ask(r)},r),d=o.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";c.show(e("p",{class:"\
ts-who"},d),c.alert,e("div",{class:"tsg-wide"},l.picture),...l.controls,i);function u(){let p=t.get("shown");a.waiting||
(r=p.state),l.set(p,r),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",u),c.follow("msg:custom",
a.free),u(),c.close}var Lt=(...t)=>e("div",{class:"ts-tools"},...t);var Tn={x:44,y:84,perMm:34};function Nn(t){let s=P("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:o,
perMm:r}=Tn,a=P("g",{}),c=P("g",{});s.append(P("rect",{x:1,y:22,width:758,height:o-22,class:"tsi-paper"}),P("rect",{x:n-
30,y:o,width:t.lines*t.space*r+60,height:64,class:"tsi-body"}),a,c,ct(12,14,"main scale, mm","start"),ct(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let l=n+i*t.space*r;c.append(
it(l,o,l,o+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(ct(l,o+48,String(i)))}return{node:s,set(i){a.replaceChildren();for(let l=Math.
max(0,Math.ceil(i.mm-1));l<=t.top+25;l+=1){let d=n+(l-i.mm)*r;d<4||d>756||(a.append(it(d,o,d,o-(l%10===0?34:l%5===0?28:20),
"tsi-fine")),l%5===0&&a.append(ct(d,o-40,String(l))))}s.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function hs(t){
return Ct(t,(s,n,o)=>{let r=Nn(s),a=gt("Rod",{min:0,max:s.top,step:.05,value:o.rod,words:()=>"push down to the right",onInput:l=>n(
{rod:l})}),c=ht("Foot",s.places,o.place,l=>n({place:l,rod:0})),i=ht("Look",s.eyes,o.eye,l=>n({eye:l}));return{picture:r.
node,controls:[Lt(c.row,i.row),Lt(G("Push the rod down until it rests",()=>n({rod:s.top})),G("Lift the rod",()=>n({rod:0}))),
a.row],set(l,d){r.set(l),c.box.value=d.place,i.box.value=d.eye,a.box.value=d.rod}}})}function gs({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding"}),r=e("p",{class:"tsj-happened",role:"status"}),
a=e("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=e("div",{class:"tsj-bars"}),i=Q(a,"[data-bolt]"),l=et("torq\
ue"),d=e("input",{id:l,type:"range",min:10,max:100,step:5,oninput:()=>f()});d.value="100";let u=e("output",{class:"tsj-f\
igure",for:l}),p=()=>d.value==="100"?n.torque:Number((Math.round(n.torque*Number(d.value)/100/n.step)*n.step).toFixed(3));
function f(){u.textContent=`${p()} N·m`,d.setAttribute("aria-valuetext",`${p()} newton metres, ${d.value} percent of th\
e torque`)}let w=h=>L.send({type:"pull",bolt:h,torque:p()}),g=G("Take back",()=>L.send({type:"undo"})),$=G("Wait until t\
he film has run out",()=>L.send({type:"wait"})),y=e("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>L.send({type:"set",film:Number(y.value)})},...n.films.map(h=>e("option",{value:h},h?`${h} µm thick`:"none"))),
B=e("input",{type:"checkbox",onchange:()=>L.send({type:"set",scattered:B.checked})});a.addEventListener("click",h=>{let b=kt(
h,"[data-bolt]");b&&(j(b),w(Number(b.dataset.bolt)))});let j=h=>{for(let b of i)b.setAttribute("tabindex",b===h?"0":"-1");
h.focus({preventScroll:!0})};a.addEventListener("keydown",h=>{let b=kt(h,"[data-bolt]");if(!b||h.ctrlKey||h.metaKey||h.altKey)
return;let m=Number(b.dataset.bolt),k={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[h.key];if(k)j(i[(m+k+i.length)%
i.length]);else if(h.key==="Home")j(i[0]);else if(h.key==="End")j(i[i.length-1]);else if(h.key==="Enter"||h.key===" ")h.
repeat||w(m);else return;h.preventDefault()});let L=J({model:t,el:s},{kind:"rig"}),S=e("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},G("Start all by hand",()=>L.send({type:"start"})),...n.rounds.map(([h,b])=>G(`One round ${b}`,
()=>L.send({type:"round",pattern:h,torque:p()}))),g,G("Start again",()=>L.send({type:"again"}))),C=e("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},e("span",{class:"tsj-slide"},e("label",{for:l},"Wrench set to"),d,u));n.films.length&&
C.append(e("label",{class:"ts-pair"},"Wet sealant",y),$,e("label",{class:"tsj-check"},B,"friction scatters from bolt to \
bolt")),L.show(e("p",{class:"ts-who"},n.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),L.alert,o,C,S,r,e("div",{class:"tsj-bench"},a,c),e("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function v(){let h=t.get("view");o.textContent=h.finding,r.textContent=h.happened,c.innerHTML=
h.bars;for(let[b,m]of i.entries()){let k=h.tight[b]?`${h.clamps[b]} kN`:h.started[b]?"started by hand":"not started";m.setAttribute(
"aria-label",`Bolt ${b+1} of ${n.count}, ${k}`),m.classList.toggle("tsj-tight",h.tight[b]),m.classList.toggle("tsj-start\
ed",h.started[b])}g.disabled=!h.pulls,$.disabled=!h.standing,y.value=String(h.film),B.checked=h.scattered}return L.follow(
"change:view",v),f(),v(),L.close}var ms="tsk-number";function It(t,s,...n){return e("td",{class:s?ms:null,"data-label":t||null,role:"cell"},...n)}function le(t,s,n){
let o=s.map(([c,i])=>e("th",{scope:"col",role:"columnheader",class:i?ms:null},c)),r=e("thead",{role:"rowgroup"},e("tr",{
role:"row"},...o)),a=e("table",{class:"tsk-board",role:"table"},e("caption",{},t),r,n);return e("div",{class:"ts-scroll"},
a)}function ws({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("p",{class:"tsk-spent"}),
a=e("ul",{class:"ts-sentences tsk-left"}),c=e("p",{class:"tsk-more"}),i=e("tbody",{role:"rowgroup"}),l=new Map;for(let[f,
w,g,$]of n.checks){let y=e("select",{class:"ts-box","aria-label":`What it showed: ${w}`,onchange:()=>u.send({type:"obser\
ve",check:f,shown:y.value})},e("option",{value:""},"Not made"),...mt($)),B=It("would tell, bit",!0),j=It("bit a minute",
!0),L=e("tr",{role:"row"},e("th",{scope:"row",role:"rowheader"},w),It("min",!0,`${g}`),It("it showed",!1,y),B,j);l.set(f,
{box:y,tells:B,rate:j,row:L}),i.append(L)}let d=e("button",{class:"ts-button",type:"button",onclick:()=>u.send({type:"cl\
ear"})},"Take all observations back"),u=J({model:t,el:s},{kind:"rig"});u.show(e("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),u.alert,o,a,c,le("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),r,d);function p(){let f=t.get("view");o.textContent=f.finding,
r.textContent=f.spent,c.textContent=f.more,a.replaceChildren(...Dt(f.left.map(([$,y])=>`${$} (${y})`)));let w=f.ranked,g=new Map(
w.map(([$,y,B],j)=>[$,{bits:y,rate:B,rank:j}]));for(let[$,{box:y,tells:B,rate:j,row:L}]of l){let S=f.observed[$],C=g.get(
$);y.value=S??"",B.textContent=C?C.bits:S!==void 0?"made":"nothing",j.textContent=C?C.rate+(C.rank===0?" ◀ best next":
""):"–",L.classList.toggle("tsk-best",C?.rank===0)}}return u.follow("change:view",p),p(),u.close}function bs(t,{move:s,hand:n}){let{element:o,at:r}=ae(t),a=Object.entries(t.aims).filter(([l])=>l.startsWith("at:")),c=(l,d)=>{
let[u,p]=r(l,d);return P("circle",{cx:u,cy:p,r:16,class:"tsl-spot",...{"data-travel":l,"data-turn":d}})},i=P("g",{class:"\
tsl-knob"},P("circle",{r:12}));return o.append(...a.map(([,[l]])=>c(Number(l),0)),...t.gears.map(([,l,d])=>c(l,d)),i),o.
classList.add("ts-lever"),o.addEventListener("click",l=>{let d=kt(l,".tsl-spot");if(!d)return;let u=[Number(d.dataset.travel),
Number(d.dataset.turn)];for(let p of Je(t.aims,n(),u))s(p)}),{element:o,scale:[Ut,re],show([l,d],u){let[p,f]=r(l,d);i.setAttribute(
"transform",`translate(${p.toFixed(1)} ${f.toFixed(1)})`);for(let w of Q(o,"[data-gear]"))w.classList.toggle("tsl-in",u.
includes(String(w.dataset.gear)))}}}function ks({model:t,el:s}){let n=e("p",{class:"ts-finding",role:"status"}),o=e("p",{class:"ts-happened",role:"status"}),
r=e("div",{class:"ts-scroll ts-fit"}),a=bs(t.get("plan"),{move:m=>B({type:"move",code:m}),hand:()=>t.get("view").hand}),
c=e("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=e("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...mt(t.get("builds"))),l=rt("Start again",()=>B({type:"reset"})),d=e("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([m,k])=>rt(k,()=>B({type:"move",code:m})))),
u=e("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),p=e("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),f=e("p",{class:"ts-proof",role:"status"}),w=rt("What does a full hand test find?",()=>{
w.disabled=!0,f.textContent="testing",B({type:"prove"})}),g=J({model:t,el:s},{kind:"rig"});c.append(e("div",{},e("p",{class:"\
ts-prompt"},"The lever"),a.element),r),g.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),g.alert,
e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"Put together: ",i),l,w),n,c,o,f,e("div",{class:"ts-gate-work"},e(
"div",{},e("p",{class:"ts-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down \
turn. Or in words:"),d),e("div",{},e("p",{class:"ts-prompt"},"Tried by hand"),p,u)));let $=0,y="";function B(m){$+=1,g.send(
{...m,turn:$})}function j(){let m=t.get("view");if(y!==t.get("figure")){y=t.get("figure"),r.innerHTML=y;let k=Nt(r,"svg");
k.removeAttribute("role"),k.setAttribute("aria-hidden","true")}for(let k of Q(r,"[data-body]")){let[E,M]=m.moved[String(
k.dataset.rides??k.dataset.body)]??[0,0];k.setAttribute("transform",`translate(${E.toFixed(2)} ${M.toFixed(2)})`)}for(let k of Q(
r,"[data-gear]"))k.classList.toggle("tsg-in",m.gears.includes(k.dataset.gear));for(let k of Q(r,"[data-lifts]"))k.classList.
toggle("tsg-up",m.lifted);a.show(m.hand,m.gears),c.dataset.turn=String(m.turn),n.textContent=`${m.gears.length>1?"■ ":
m.gears.length?"● ":"○ "}${m.title}.`,o.textContent=m.happened,o.classList.toggle("ts-stopped",/topped by/.test(m.happened)),
(u.childElementCount!==m.log.length||u.lastElementChild?.textContent!==m.log.at(-1))&&(u.replaceChildren(...m.log.map(k=>e(
"li",{class:/topped by/.test(k)?"ts-stopped":""},k))),u.scrollTop=u.scrollHeight),p.hidden=m.log.length>0,i.value=m.build,
f.textContent=m.proof,w.disabled=!1,C=!1,b()}c.addEventListener("keydown",m=>{if(yt(m))return;let k={ArrowLeft:[-1,0],ArrowRight:[
1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[m.key];k&&(m.preventDefault(),B({type:"nudge",travel:k[0],turned:k[1]}))}),i.addEventListener(
"change",()=>B({type:"build",build:i.value}));let L=null,S=null,C=!1;function v(m,k){let E=k.getBoundingClientRect(),M=k.
viewBox.baseVal.width/E.width;return[(m.clientX-E.left)*M,(m.clientY-E.top)*M]}c.addEventListener("pointerdown",m=>{let k=kt(
m,".tsg-panel, .tsl-knob");if(!k||m.button!==0)return;let E=k.ownerSVGElement,M=t.get("view").hand,[W,O]=v(m,E),A=Number(
k.dataset.scale),D=A?[A,A]:a.scale;L={svg:E,x:W-M[0]*D[0],y:O+M[1]*D[1],scale:D},c.setPointerCapture(m.pointerId),c.focus(
{preventScroll:!0}),c.classList.add("ts-pulling"),m.preventDefault()}),c.addEventListener("pointermove",m=>{if(!L)return;
let[k,E]=v(m,L.svg),{scale:M}=L;S={travel_mm:(k-L.x)/M[0],turn_mm:(L.y-E)/M[1]},b()});let h=()=>{L=null,c.classList.remove(
"ts-pulling")};c.addEventListener("pointerup",h),c.addEventListener("pointercancel",h);function b(){if(C||!S)return;C=!0;
let m=S;S=null,B({type:"pull",...m})}return g.follow("msg:custom",m=>{m.type==="trouble"&&(C=!1)}),g.follow("change:view",
j),j(),g.close}function vs({model:t,el:s}){let n=t.get("plan"),o=t.get("view"),r=e("p",{class:"ts-finding",role:"status"}),a=e("p",{class:"\
ts-happened tsw-happened",role:"status"}),c=e("div",{class:"ts-scroll ts-fit tsw-train"}),i=o.dials[0].shaft,d=n.gears.map(
([m,k])=>e("button",{type:"button",class:"ts-button","data-gear":m,"aria-pressed":"false",onclick:()=>v({type:"gear",gear:m})},
k)),u=e("select",{class:"ts-box","aria-label":"Wheel held still",onchange:m=>v({type:"hold",shaft:m.target.value})},...mt(
n.holds)),p=e("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:m=>{i=m.target.value,b()}},...mt(o.dials.
map(m=>[m.shaft,m.name]))),f=m=>v({type:"turn",shaft:i,turns:m}),w=`1/${n.marks}`,g=e("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},rt("↺ 1 turn",()=>f(-1),"One turn anticlockwise"),rt(`↺ ${w}`,()=>f(-n.step),`${w}\
 turn anticlockwise`),rt("↺ a touch",()=>f(-n.fine),"A touch anticlockwise"),rt("a touch ↻",()=>f(n.fine),"A touch c\
lockwise"),rt(`${w} ↻`,()=>f(n.step),`${w} turn clockwise`),rt("1 turn ↻",()=>f(1),"One turn clockwise"),rt("Marks t\
o zero",()=>v({type:"reset"}))),$=new Map;for(let m of o.dials){let k=P("g",{},P("circle",{class:"tsw-end",r:34}),P("lin\
e",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),P("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),E=[];for(let I=0;I<n.marks;I+=
1)E.push(P("line",{class:"tsw-tick",y1:-40,y2:I?-47:-52,transform:`rotate(${I*360/n.marks})`})),I&&E.push(P("text",{class:"\
tsw-number",x:57*Math.sin(I*2*Math.PI/n.marks),y:-57*Math.cos(I*2*Math.PI/n.marks)+4},String(I)));let M=P("svg",{viewBox:"\
-70 -70 140 140",class:"tsw-dial","data-shaft":m.shaft,"aria-hidden":"true"},P("circle",{class:"tsw-plate",r:40}),...E,P(
"path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),k),W=e("div",{class:"tsw-count",tabindex:"0",role:"application","\
aria-roledescription":"shaft","data-shaft":m.shaft},e("div",{class:"tsw-name"}),M,e("div",{class:"tsw-strokes","aria-hid\
den":"true"}),e("div",{class:"tsw-figure"}));$.set(m.shaft,{box:W,svg:M,shaftEnd:k}),W.addEventListener("focus",()=>{i!==
m.shaft&&(i=m.shaft,b())}),W.addEventListener("keydown",I=>{if(yt(I))return;let _={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,
ArrowUp:-1,PageDown:1,PageUp:-1}[I.key];_&&(I.preventDefault(),i=m.shaft,f(_*(I.key.startsWith("Page")?1:I.shiftKey?n.fine:
n.step)))});let O=null,A=I=>{let _=M.getBoundingClientRect();return Math.atan2(I.clientX-_.left-_.width/2,_.top+_.height/
2-I.clientY)/(2*Math.PI)};M.addEventListener("pointerdown",I=>{I.button===0&&(O=A(I),M.setPointerCapture(I.pointerId),W.
focus({preventScroll:!0}),I.preventDefault())}),M.addEventListener("pointermove",I=>{if(O===null)return;let _=A(I),V=_-O;
V-=Math.round(V),O=_,y+=V,j()});let D=()=>{O=null};M.addEventListener("pointerup",D),M.addEventListener("pointercancel",
D)}let y=0,B=!1;function j(){if(B||Math.abs(y)<.002)return;B=!0;let m=y;y=0,f(m)}let L=J({model:t,el:s},{kind:"rig"});L.
show(...n.closed?[]:[e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved.")],L.alert,r,...n.closed?[]:[e("\
div",{class:"ts-tools",role:"group","aria-label":"Gears engaged"},e("span",{},"Engage: "),...d),c],e("div",{class:"ts-to\
ols"},e("span",{class:"ts-pair"},"Hold still: ",u),e("span",{class:"ts-pair"},"Turn by hand: ",p)),e("div",{class:"tsw-c\
ounts"},...[...$.values()].map(m=>m.box)),g,a,e("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a d\
ial round, or go to it and use the arrow keys (${w} turn), Shift with an arrow key (a touch) or Page Up and Page Down (o\
ne turn). Each stroke is a whole turn.`));let S=0,C=null;function v(m){S+=1,L.send({...m,turn:S})}let h=m=>{let k=[];for(let E=m;E>
0;E-=5)k.push(E>=5?"||||/":"|".repeat(E));return k.join(" ")};function b(){let m=t.get("view");C!==t.get("figure")&&(C=String(
t.get("figure")),c.innerHTML=C);for(let k of Q(c,"[data-wheel]")){let[E,M]=m.wheels[String(k.dataset.wheel)]??[0,!0];k.setAttribute(
"transform",`translate(0 ${(E*Number(k.dataset.reach)).toFixed(1)})`),k.classList.toggle("tsw-behind",!M)}for(let k of d)
k.setAttribute("aria-pressed",String(m.engaged.includes(k.dataset.gear)));u.value=m.held,p.value=i;for(let k of m.dials){
let{box:E,shaftEnd:M}=$.get(k.shaft),W=k.way>0?"↻":k.way<0?"↺":"";M.setAttribute("transform",`rotate(${k.angle})`);let[
O,,A,D]=E.children;O.textContent=`${k.name}${k.held?", held":k.shaft===i?", your hand":""}`,A.textContent=k.strokes||W?`${W}\
 ${h(k.strokes)}`:"no stroke",D.textContent=k.figure,E.classList.toggle("tsw-hand",k.shaft===i),E.classList.toggle("tsw-\
held",k.held),E.setAttribute("aria-label",`${k.name}${k.held?", held":""}. ${k.words}`)}r.textContent=m.finding,a.textContent=
m.happened,s.dataset.turn=String(m.turn),B=!1,j()}return L.follow("change:view",b),b(),L.close}function ys({model:t,el:s}){let n=e("p",{class:"ts-finding",role:"status"}),o=e("div",{class:"tsh-picture"}),r=e("p",{class:"\
tsh-head"}),a=e("p",{class:"tsh-seen"}),c=e("div",{class:"tsh-told"}),i=e("div",{class:"tsh-box",role:"status"},r,a,c),l=[],
d=[],u=null,p=t.get("plan").lookingOnly,f=(v,h)=>e("button",{type:"button",class:"ts-button","data-verdict":v,"aria-pres\
sed":"false",onclick:()=>y.send({type:"judge",place:u,verdict:v})},h),w=p?[]:[f("stop","Stop here"),f("well","Fine as it\
 is")],g=e("button",{type:"button",class:"ts-button",onclick:()=>y.send({type:"next"})},"Another day"),$=e("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...w);t.get("plan").more&&$.append(g);let y=J({model:t,
el:s},{kind:"rig"});y.show(e("p",{class:"ts-who"},p?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),y.alert,n,e("p",{class:"ts-keys"},p?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),o,i),p||i.after($);function B(v,h){let b=v!==u;u=v;for(let[m,k]of d.
entries()){let E=l[m][0]===v;k.setAttribute("tabindex",E?"0":"-1"),k.setAttribute("aria-pressed",String(E)),k.classList.
toggle("tsh-chosen",E),E&&h&&(k.focus({preventScroll:!0}),j(k))}b&&y.send({type:"choose",place:v})}function j(v){let h=Nt(
v,".tsh-hit").getBoundingClientRect(),b=o.getBoundingClientRect();(h.left<b.left||h.right>b.right)&&(o.scrollLeft+=h.left-
b.left-(b.width-h.width)/2),(h.bottom<0||h.bottom>innerHeight||h.top<0)&&v.scrollIntoView({block:"nearest"})}function L(){
let v=t.get("plan");l=v.places,o.innerHTML=v.drawing,Nt(o,"svg").setAttribute("role","group"),d=l.map(([h])=>Nt(o,`[data\
-place="${h}"]`)),d.forEach((h,b)=>{h.setAttribute("role","button"),h.setAttribute("aria-label",`${b+1} ${l[b][1]}`),h.addEventListener(
"click",()=>B(l[b][0],!0))}),u=String(t.get("view").chosen),B(u,!1)}o.addEventListener("keydown",v=>{if(yt(v))return;let h=l.
findIndex(([k])=>k===u),b=Math.min(6,l.length),m=h;if(v.key==="ArrowRight")m=h+1;else if(v.key==="ArrowLeft")m=h-1;else if(v.
key==="ArrowDown")m=h+b;else if(v.key==="ArrowUp")m=h-b;else if(v.key==="Home")m=0;else if(v.key==="End")m=l.length-1;else if(v.
key!=="Enter"&&v.key!==" ")return;v.preventDefault(),m>=0&&m<l.length&&B(l[m][0],!0)});function S(){let v=t.get("view");
n.textContent=v.finding;let h=l.findIndex(([k])=>k===v.chosen);r.textContent=`${h+1}  ${l[h][1]}`,a.textContent=v.seen;let{
verdict:b,...m}=v.told;if(c.replaceChildren(),b){let k=v.judged[v.chosen],E=k==="stop"==(b==="Stop here."),M=k==="stop"?
"Stop here":"Fine as it is";c.append(e("p",{class:"tsh-verdict"},E?`✓ Yes: ${b}`:`✗ You said “${M}”. The course sa\
ys: ${b}`),e("dl",{class:"ts-facts"},...Object.entries(m).flatMap(([W,O])=>[e("dt",{},W),e("dd",{},O)])))}for(let k of w)
k.setAttribute("aria-pressed",String(v.judged[v.chosen]===k.dataset.verdict));for(let[k,E]of d.entries()){let M=v.judged[l[k][0]];
E.setAttribute("aria-label",`${k+1} ${l[k][1]}${M?`, judged: ${M==="stop"?"stop here":"fine as it is"}`:""}`);let W=E.querySelector(
".tsh-tag");if(!M){W?.remove();continue}W||(W=P("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),E.
append(W)),W.textContent=M==="stop"?"■ stop":"○ well"}s.dataset.turn=v.chosen}let C=()=>{L(),S()};return y.follow("c\
hange:plan",C),y.follow("change:view",S),C(),y.close}function xs({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("p",{class:"tsl-sum"}),a=e(
"div",{class:"tsl-drawing"}),c=new Map,l=n.sliders.map(([f,w,g,$,y,B])=>{let j=et(f.replace("_","-")),L=e("output",{class:"\
tsl-figure",for:j}),S=e("input",{id:j,type:"range",min:$,max:y,step:B,oninput:()=>{C(),u.send({type:"set",name:f,value:Number(
S.value)})}}),C=()=>{L.textContent=`${S.value} ${g}`,S.setAttribute("aria-valuetext",`${S.value} ${g==="°"?"degrees":g}`)};
return c.set(f,{slider:S,say:C}),e("div",{class:"tsl-row"},e("label",{for:j},w),S,L)}),d=e("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>u.send({type:"set",name:"grip",value:d.value})},...mt(n.grips)),u=J({model:t,el:s},{kind:"r\
ig"});u.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),u.alert,o,e("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...l,e("div",{class:"tsl-row"},e("span",{},"Grip"),d)),a,r,e("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function p(){let f=t.get("vi\
ew");o.textContent=f.finding,r.textContent=f.sum,a.innerHTML=f.drawing;for(let[w,{slider:g,say:$}]of c)document.activeElement!==
g&&(g.value=f.sizes[w]),$();d.value=f.sizes.grip}return u.follow("change:view",p),p(),u.close}var de={x:90,y:120,perMm:20,radius:82,bevel:30};function In(t){let s=P("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:o,perMm:r,radius:a}=de;s.append(P("rect",{x:n-60,y:o-56,width:r*t.top+90,height:112,class:"tsi-pa\
per"}),it(n-20,o,n+r*t.top+20,o,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let f=n+p*t.pitch*r;if(p%2){s.append(it(
f,o,f,o+18,"tsi-fine"));continue}let w=p/2;s.append(it(f,o,f,o-(w%5?18:27),w%5?"tsi-fine":"tsi-bold")),w%5===0&&s.append(
ct(f,o-33,String(w)))}let c=P("g",{});s.append(c,ct(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=P("path",{d:`M0 ${o-a+14}L${de.bevel} ${o-a}L${de.bevel} ${o+a}L0 ${o+a-14}\
Z`,class:"tsi-body"}),l=P("rect",{x:de.bevel,y:o-a,width:760,height:2*a,class:"tsi-body"}),d=P("rect",{x:0,y:o-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),u=P("g",{});return c.append(d,i,l,u),{node:s,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*r} 0)`),u.replaceChildren();for(let f=0;f<t.lines;f+=1){let w=f-p.line;w-=t.lines*Math.round(w/t.lines);let g=w/
t.lines*2*Math.PI;if(Math.abs(g)>1.15)continue;let $=o-(a-8)*Math.sin(g),y=f%5===0;u.append(it(0,$,y?26:16,$,y?"tsi-bold":
"tsi-fine")),y&&u.append(ct(36,$+5,String(f),"start"))}s.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function $s(t){
return Ct(t,(s,n,o)=>{let r=In(s),a=gt("Thimble",{min:0,max:s.top,step:.01,value:o.open,words:()=>"turn in to the left, \
out to the right",onInput:l=>n({open:l})}),c=ht("Between the faces",s.between,o.between,l=>n({between:l,open:s.top})),i=s.
hands.length?ht("Close it",s.hands,o.hand,l=>n({hand:l})):null;return{picture:r.node,controls:[Lt(c.row,i?.row),Lt(G("Cl\
ose until it rests",()=>n({open:-1})),G("Open",()=>n({open:s.top}))),a.row],set(l,d){r.set(l),a.box.value=String(Math.max(
0,l.mm)),c.box.value=d.between}}})}function Ss({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("tbody",{role:"rowgroup"}),
a=new Map;for(let[l,d,u]of n.checks){let p=e("button",{class:"ts-button",type:"button","aria-label":`Make: ${d}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:l})}},"Make"),f=It("it shows",!1);f.classList.add("t\
sk-shown"),a.set(l,{button:p,shown:f}),r.append(e("tr",{role:"row"},e("th",{scope:"row",role:"rowheader"},d),It("min",!0,
`${u}`),It("",!1,p),f))}let c=J({model:t,el:s},{kind:"rig"});c.show(e("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),c.alert,o,le("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],r));
function i(){let l=t.get("view");o.textContent=l.finding;for(let[d,{button:u,shown:p}]of a){let f=l.shown[d];u.setAttribute(
"aria-disabled",f?"true":"false"),u.classList.toggle("ts-off",!!f),u.textContent=f?"Made":"Make",p.textContent=f?`${f[0]?
"✓":"✗"} ${f[1]}`:"",p.classList.toggle("tsk-failed",!!f&&!f[0])}}return c.follow("change:view",i),i(),c.close}function Dn(){let t=P("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),s=P("g"),n=P("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(P("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),s,n,P("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let o=c=>(-135+270*c)*Math.PI/180,r="";function a([c,i,l]){s.replaceChildren();for(let d=0;d*i<=c+
1e-9;d+=1){let u=o(d*i/c),p=d%l===0,f=w=>[110+w*Math.sin(u),104-w*Math.cos(u)];if(s.append(it(...f(p?72:79),...f(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&d%(2*l)===0){let[w,g]=f(58);s.append(ct(w,g+4.5,String(Number((d*i).toFixed(2)))))}}s.
append(ct(110,170,"kN"))}return{node:t,set(c,i,l){String(c)!==r&&(r=String(c),a(c));let d=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*d})`),t.setAttribute("aria-label",l)}}}function Ls(t){return Ct(t,(s,n,o)=>{
let r=Dn(),a=e("div",{class:"tsp-section"}),c="",i=e("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,e("div",{class:"tsg-gauge"},r.node)),l=gt("Push",{min:0,max:100,step:1,value:o.travel,onInput:f=>n(
{travel:f}),words:f=>f>=100?"at the shoulder":`${f} % of the way`}),d=[l.row],u=null;if(!s.readingsOnly){let f=ht("Part",
s.places,o.place,y=>n({place:y,travel:0}));u=ht("Driver bears on",s.drivers,o.driver,y=>n({driver:y,travel:0}));let w=ht(
"Seat",s.seats,o.seat,y=>n({seat:y})),g=gt("Pair",{min:0,max:100,step:1,value:o.grip,onInput:y=>n({grip:y}),words:y=>y===
0?"loosest of the fit":y===100?"tightest of the fit":`${y} % from loosest to tightest`}),$=gt("Warm the outer part",{min:s.
room,max:s.hottest,step:1,value:o.warmth,onInput:y=>n({warmth:y}),words:y=>`${y} °C`});d.unshift(Lt(f.row,u.row,w.row),
g.row,$.row)}let p=e("dl",{class:"ts-facts"});return s.readingsOnly||d.push(p),{picture:i,controls:d,set(f,w){f.section!==
c&&(c=f.section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-s.travelPx*w.travel/
100} 0)`),r.set(f.gauge,f.force,f.words),Number(l.box.value)!==w.travel&&document.activeElement!==l.box&&l.set(w.travel),
u&&(u.row.hidden=!f.drives),f.facts&&p.replaceChildren(...Et(f.facts))}}})}function Cs({model:t,el:s}){let n=t.get("steps"),o=t.get("reach"),r=new Map(n.map(([C],v)=>[C,v])),a=e("div",{class:"ts-\
scroll"}),c=e("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=e(
"p",{class:"ts-finding",role:"status"}),l=e("ul",{class:"ts-sentences"}),d=e("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...mt(n.map(([C,v],h)=>[C,`${h+1}  ${v}`]))),u=e("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),p=J({model:t,el:s},{kind:"rig",lost(){d.disabled=!0}});p.show(p.alert,e("p",{class:"ts-f\
inding"},t.get("finding")),e("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"Step ",d),
u),a,e("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,c,l),a.innerHTML=t.get("figure");let f=Nt(a,"svg");f.setAttribute("role","group");let w=Q(f,".tsf-step").sort(
(C,v)=>Number(C.dataset.step)-Number(v.dataset.step)),g=Q(f,".tsf-rule").map(C=>({node:C,ends:String(C.dataset.rule).split(
"-").map(Number)}));w.forEach((C,v)=>{C.setAttribute("role","button"),C.setAttribute("aria-label",`${v+1} ${n[v][1]}, ${o[v].
before.length} before it, ${o[v].after.length} after it`),C.addEventListener("click",()=>B(v,!0))});let $=Number(r.get(t.
get("near").step));function y(C){let v=new Set(o[$].before),h=new Set(o[$].after);w.forEach((E,M)=>{E.setAttribute("tabi\
ndex",M===$?"0":"-1"),E.setAttribute("aria-pressed",String(M===$)),E.classList.toggle("ts-chosen-step",M===$),E.classList.
toggle("ts-before-it",v.has(M)),E.classList.toggle("ts-after-it",h.has(M)),E.classList.toggle("ts-either",M!==$&&!v.has(
M)&&!h.has(M))});let b=E=>E===$||v.has(E)||h.has(E);for(let{node:E,ends:M}of g){let W=v.has(M[0])&&(M[1]===$||v.has(M[1]))||
h.has(M[1])&&(M[0]===$||h.has(M[0]));E.classList.toggle("ts-either",!(W&&M.every(b)))}d.value=n[$][0],C&&w[$].focus({preventScroll:!0});
let m=w[$].getBoundingClientRect(),k=a.getBoundingClientRect();(m.left<k.left+16||m.right>k.right-16)&&(a.scrollLeft+=m.
left-k.left-k.width/2)}function B(C,v){$=C,y(v),p.send({type:"choose",step:n[C][0]})}let j=C=>{let h=Nt(w[C],"rect").getBBox();
return{x:h.x,y:h.y}};function L(C){let v=j($),h=k=>k.sort((E,M)=>Math.abs(j(E).y-v.y)-Math.abs(j(M).y-v.y))[0];if(C==="A\
rrowRight")return h(g.filter(({ends:k})=>k[0]===$).map(({ends:k})=>k[1]));if(C==="ArrowLeft")return h(g.filter(({ends:k})=>k[1]===
$).map(({ends:k})=>k[0]));let b=w.map((k,E)=>E).filter(k=>Math.abs(j(k).x-v.x)<2&&k!==$),m=C==="ArrowUp"?-1:1;return h(b.
filter(k=>(j(k).y-v.y)*m>0))}f.addEventListener("keydown",C=>{if(!yt(C))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes(C.key)){let v=L(C.key);v!==void 0&&B(v,!0),C.preventDefault()}else(C.key==="Enter"||C.key===" ")&&C.preventDefault()}),
d.addEventListener("change",()=>B(Number(r.get(d.value)),!1)),u.addEventListener("click",()=>{let C=a.classList.toggle("\
ts-fit");u.setAttribute("aria-pressed",String(C)),y(!1)});function S(){let C=t.get("near");i.textContent=C.words,c.innerHTML=
C.figure,l.replaceChildren(...Dt(C.sentences))}return p.follow("change:near",S),S(),requestAnimationFrame(()=>y(!1)),p.close}function Bn(){let t=P("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),s=P("g",{}),n=P("g",{});return s.append(
P("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),it(150,164,150,98,"tsi-bold"),P("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(it(150,86,150,40,"tsi-plunger"),P("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(s,it(50,164,
250,164,"tsg-centre"),it(150,250,150,80,"tsg-centre"),n,ct(8,252,"not to scale","start")),{node:t,set(o,r,a){s.setAttribute(
"transform",`rotate(${o} 150 164)`),n.setAttribute("transform",`rotate(${r} 150 88)`),t.setAttribute("aria-label",a)}}}function Es(t){
return Ct(t,(s,n,o)=>{let r=qt(),a=Bn(),c=gt("Turn the shaft by hand",{min:0,max:360,step:5,value:o.angle,words:d=>`turn\
ed by ${d}°`,onInput:d=>n({angle:d})}),i=ht("Plunger",s.pressed,o.pressed,d=>n({pressed:d})),l=ht("Stand",s.tilts,o.tilt,
d=>n({tilt:d}));return{picture:e("div",{class:"tsg-beside"},a.node,e("div",{class:"tsg-gauge"},r.node,e("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[Lt(i.row,l.row),c.row],set(d,u){r.set(d.mm,d.words),a.set(d.state.angle,Number(d.
state.tilt),`Shaft end on, turned by ${d.state.angle}°; the plunger stands ${d.state.tilt}° off square. Not to scale.`),
c.set(u.angle)}}})}var As=(t,s)=>(t+s)%7<2,Os=(t,s)=>(t+s)%8<2||(t-s+8e4)%8<2,pe=()=>!1,ue=t=>(s,n)=>n%t===0,Pn={"":pe,dots:(t,s)=>t%6<2&&s%
6<2,rising:As,cross:Os,flat:(t,s)=>s%6<2,rings:(t,s)=>{let n=Math.hypot(t%12-6,s%12-6);return n>2.5&&n<4.5},plus:(t,s)=>t%
10===5&&s%10>2&&s%10<8||s%10===5&&t%10>2&&t%10<8,"lines-1":pe,"lines-2":ue(14),"lines-3":ue(8),"lines-4":ue(5),"lines-5":ue(
3)};function jn(t){let s=n=>Number.parseInt(t.slice(n,n+2),16);return[s(1),s(3),s(5)]}var Ms=([t,s,n],o)=>(o<<24|n<<16|s<<
8|t)>>>0;function Ts(t,[s,n],o,r,a){let c=n*4,i=new Uint32Array(c*s*4),l=new Map(o.map(([p,,f,w])=>{let g=f?Ms(jn(f),200):
0;return[p,{ground:g,hatch:Pn[w]??pe}]})),d={ground:0,hatch:pe},u=Ms(r,190);for(let p=0;p<s;p+=1){let f=(s-1-p)*4;for(let w=0;w<
n;w+=1){let g=t[p*n+w];if(!g)continue;let{ground:$,hatch:y}=l.get(g&15)??d,B=a&&(g&16)!==0,j=a&&(g&32)!==0;for(let L=f;L<
f+4;L+=1)for(let S=w*4;S<(w+1)*4;S+=1){let C=y(S,L)||B&&As(S,L)||j&&Os(S,L);i[L*c+S]=C?u:$}}}return i}var Hn=600;function Is(t,s,n,o,r,a){let[c,i]=n;t.width=i*4,t.height=c*4;let l=new Uint8ClampedArray(Ts(s,n,o,r,a).buffer),
d=new ImageData(l,t.width,t.height);t.getContext("2d")?.putImageData(d,0,0)}function _n(t,s){let n=e("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return Is(n,new Uint8Array(15).fill(t[0]),[3,5],[t],s,!1),e("span",{class:"ts-key"},n,t[1])}
function Ds({model:t,el:s}){let n=t.get("face"),o=t.get("looks"),r=e("p",{class:"ts-finding",role:"status"}),a=e("span",
{class:"ts-clock"}),c=e("dl",{class:"ts-facts"}),i=e("p",{class:"ts-legend"}),l=e("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),d=J({model:t,el:s},{kind:"rig",lost(){f.setDisabled(!0),Yt(s)}}),u=null,p=A=>{u=et("turn"),d.send({...A,turn:u})},
f=se({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(A){f.
drawing.strokes(A),p({type:"lay",entries:A})},onRemove:A=>p({type:"remove",at:A}),onClear:()=>p({type:"clear"})}),w=G("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),g=e("input",{type:"range",id:et("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),$=e("output",{for:g.id}),y=St({id:et("slide"),onchange:()=>p({type:"slide",by:y.value})},
t.get("view").slides),B=null;g.addEventListener("input",()=>{$.textContent=`${g.value} µm`;let A={type:"flat",um:Number(
g.value)};u===null?p(A):B=A});let{box:j,unit:L}=f.drawing;f.drawing.land.classList.add("tsp-clear"),f.drawing.frame.prepend(
l);let S=(...A)=>e("span",{class:"ts-pair"},...A);d.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),d.alert,r,f.drawing.frame,i,e("div",{class:"ts-tools"},w,S(e("label",{for:y.id},"the other face is"),y),S(a,G("1 m\
inute passes",()=>p({type:"time",by:1})),G("5 minutes pass",()=>p({type:"time",by:5}))),S(e("label",{for:g.id},"faces ou\
t of flat by"),g,$)),f.tools,c,e("details",{class:"ts-keys"},e("summary",{},"Passes laid"),f.empty,f.list));function C(){
let A=getComputedStyle(s).color.match(/\d+(\.\d+)?/g);return A?A.slice(0,3).map(Number):[0,0,0]}let v="",h="";function b(){
let A=t.get("view"),D=o[A.closed?"closed":"film"],I=t.get("grid"),_=I instanceof DataView?new Uint8Array(I.buffer,I.byteOffset,
I.byteLength):new Uint8Array(I);Is(l,_,A.shape,D,C(),!A.closed);let[V,tt]=A.shape,[bt,at]=[A.corner[0]-A.pitch/2,A.corner[1]-
A.pitch/2],F=(K,U)=>`${(100*K/U).toFixed(3)}%`;l.style.left=F(bt-j.left,j.width),l.style.width=F(tt*A.pitch,j.width),l.style.
top=F(j.high-at-V*A.pitch,j.height),l.style.height=F(V*A.pitch,j.height);let Y=new Set(_.map(K=>A.closed?K:K&15)),x=D.filter(
([K])=>Y.has(K)),H=`${x.map(([,K])=>K)} ${C()}`;H!==v&&(v=H,i.replaceChildren(...x.map(K=>_n(K,C()))))}let m=P("g");f.drawing.
over.append(m);let k=([A,D])=>[A-j.left,j.high-D];function E([A,D]){let I=D.map(_=>{let[V,tt]=k(_);return`M${V.toFixed(1)}\
 ${tt.toFixed(1)}h0.01`});return P("path",{d:I.join(""),class:"tsp-lump","stroke-width":2*A})}function M(A){let[D,I]=k(A[A.
length-1]),_=`M${D-1.3*L} ${I-L}h${2.6*L}l${-1.3*L} ${2.2*L}Z`;return[P("path",{d:f.drawing.path(A),class:"tsp-way","str\
oke-width":L}),P("path",{d:_,class:"tsp-out"})]}function W(){let A=t.get("view");if(u!==null&&A.turn!==u)return;u=null;let D=JSON.
stringify([A.entries,A.notes]);if(D!==h&&f.show(A.entries,A.notes),h=D,f.drawing.strokes([]),b(),m.replaceChildren(...A.
lumps.map(E),...A.leaks.flatMap(M)),f.drawing.svg.classList.toggle("tsp-shut",A.closed),f.drawing.svg.classList.toggle("\
tsp-clean",A.closed||A.clean),r.textContent=A.finding,y.value=A.slide,a.textContent=`minute ${A.minute}`,w.textContent=A.
closed?"Lift the face off again":"Close the face",B===null&&(g.value=String(A.flat),$.textContent=`${A.flat} µm`),c.replaceChildren(
...Et(A.facts)),B===null)return;let I=B;B=null,p(I)}d.follow("change:view",W),d.follow("msg:custom",A=>{A.type==="troubl\
e"&&(u=null,f.drawing.strokes([]))});let O=new MutationObserver(()=>setTimeout(b,Hn));return O.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),W(),()=>{d.close(),O.disconnect()}}function Bs(t){return Ct(t,(s,n,o)=>{let r=qt(),a=e("div",{class:"tsp-section"}),c="",i=e("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,e("div",{class:"tsg-gauge"},r.node,e("div",{},`Depth gauge on \
a bridge of ${s.bridge} mm, one mark 0.01 mm`))),l=s.places.map(([u,p])=>[u,e("button",{type:"button",class:"ts-button",
onclick:()=>n({place:u})},p)]),d=[e("p",{class:"ts-hint"},s.rule),Lt(e("span",{},"Set the gauge down at"),...l.map(([,u])=>u))];
return s.readingsOnly||(d.push(Lt(ht("Lip looks towards",s.sides,o.lip,u=>n({lip:u})).row,ht("Lip is",s.greases,o.grease,
u=>n({grease:u})).row,s.sleeves.length?ht("It went",s.sleeves,o.sleeve,u=>n({sleeve:u})).row:"")),d.push(gt("Drive it to\
 a depth",{min:s.least,max:s.most,step:.05,value:o.depth,words:u=>`${u.toFixed(2)} mm${u<0?", proud":""}`,onInput:u=>n({
depth:u})}).row,gt("Lean",{min:0,max:s.mostLean,step:.02,value:o.lean,words:u=>u?`${u.toFixed(2)} mm across`:"square",onInput:u=>n(
{lean:u})}).row)),{picture:i,controls:d,set(u,p){u.section!==c&&(c=u.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.
setAttribute("transform",u.placed),r.set(u.dial,u.words);for(let[f,w]of l)w.setAttribute("aria-pressed",String(f===p.place))}}})}function Ps({model:t,el:s}){let n=t.get("about"),o=t.get("shown").state,r=qt(),a=n.readingsOnly?null:ps(n),c=e("p",{class:"\
ts-finding",role:"status"}),i=e("div",{}),l=Ft((v,h)=>B.send({type:"set",state:v,turn:h})),d=v=>{o={...o,...v},l.ask(o)},
u=(v,h)=>{let b=[...o.shims];b[v]=h,d({shims:b.filter(Boolean),turns:0})},p=(v,h,b)=>G(v,h,{"aria-pressed":b}),f=G("Turn\
 the shaft ten times",()=>d({turns:o.turns+10})),w=p("Pull the shaft away",()=>d({side:"away"}),"true"),g=p("Push it to \
the dial",()=>d({side:"towards"}),"false"),$=ht("Plunger",n.plungers,o.plunger,v=>d({plunger:v})),y=[e("div",{class:"ts-\
tools"},n.rolls?f:null,$.row,w,g)];if(!n.readingsOnly){let v=ht("Shim",n.shelf,o.shims[0],b=>u(0,b)),h=n.second?ht("and",
[["","no second shim"],...n.shelf],o.shims[1]??"",b=>u(1,b)):null;y.unshift(e("div",{class:"ts-tools"},v.row,h?.row)),y.
push(gt("Warm the unit",{min:0,max:100,step:1,value:o.warmth,onInput:b=>d({warmth:b}),words:b=>b?`case ${Math.round(n.caseRise*
b/100)} K warmer`:"cold, as at the bench"}).row)}let B=J({model:t,el:s},{kind:"rig"}),j=e("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});j.innerHTML=n.section;let L=[e("p",{class:"ts-who"},n.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),B.alert,e("div",{class:"\
tsg-beside"},j,e("div",{class:"tsg-gauge"},r.node,e("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...y,c,
a&&e("div",{},e("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),e("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];B.show(...L.filter(Boolean));function S(){let v=t.get("show\
n");l.waiting||(o=v.state),r.set(v.dial,v.dialWords),w.setAttribute("aria-pressed",String(v.state.side==="away")),g.setAttribute(
"aria-pressed",String(v.state.side==="towards")),c.textContent=v.finding,a&&(a.set(v.cold,v.warm,v.words.join(" ")),i.replaceChildren(
...v.words.map(h=>e("p",{},h)))),l.answered(v.turn)}let C=()=>l.free();return B.follow("change:shown",S),B.follow("msg:c\
ustom",C),S(),B.close}function js(t){return Ct(t,(s,n,o)=>{let r=e("div",{tabindex:"0",role:"group","aria-label":s.name}),a="",c=s.pickers.map(
({key:d,label:u,options:p})=>ht(u,p,o[d],f=>n({[d]:f})).row),i=s.sliders.map(({key:d,label:u,min:p,max:f,step:w,unit:g,places:$})=>gt(
u,{min:p,max:f,step:w,value:o[d],words:y=>`${y.toFixed($)} ${g}`,onInput:y=>n({[d]:y})}).row),l=c.length>2?c:c.length?[Lt(
...c)]:[];return{picture:r,controls:[...l,...i],set(d){d.drawing!==a&&(a=d.drawing,r.innerHTML=a)}}})}function Rs({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("div",{class:"tsj-band"}),
a=e("div",{class:"tsj-section"}),c=e("dl",{class:"ts-facts"}),i=null,l=null,d=(h,b)=>{l={...l,[h]:b},i===null&&u()};function u(){
i=et("choice"),S.send({type:"choose",chosen:l,turn:i}),l=null}let p=e("div",{class:"tsj-settings"}),f=(h,b,m)=>{let k=et(
"set");return b.id=k,p.append(e("label",{for:k},h),e("span",{class:"tsj-slide"},b,m)),b},w=(h,b,m)=>f(b,e("select",{class:"\
ts-box",onchange:k=>d(h,k.target.value)},...mt(m.map(k=>typeof k=="string"?[k,k]:k)))),g=(h,b,m)=>f(b,e("input",{type:"r\
ange",oninput:k=>d(h,Number(k.target.value))}),m),$={group:w("group","Bolt of the unit",n.groups),thread:w("thread","Thr\
ead",n.threads),strength:w("strength","Strength class",n.classes),state:w("state","State of the thread",n.states),tool:w(
"tool","Tool",n.tools)},y=e("output",{class:"tsj-figure"}),B=g("torque_nm","Torque",y),j=e("output",{class:"tsj-figure"}),
L=g("engagement_mm","Thread that meets",j),S=J({model:t,el:s},{kind:"rig"});S.show(e("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),S.alert,o,r,e("div",{class:"tsj-bench"},p,a),c);let C=(h,b,m,k,E,M)=>{Ot(h,{min:b,max:m,
step:k}),i===null&&(h.value=String(E)),h.setAttribute("aria-valuetext",M)};function v(){let h=t.get("view");if(i!==null&&
h.turn!==i)return;i=null,l!==null&&u();let{chosen:b}=h;o.textContent=h.finding,r.innerHTML=h.band,a.innerHTML=h.section,
c.replaceChildren(...Et(h.facts));for(let[m,k]of Object.entries($))k.value=b[m];C(B,1,h.topTorque,.5,b.torque_nm,h.torqueText),
y.textContent=h.torqueText,C(L,h.lowEngagement,h.topEngagement,.5,b.engagement_mm,h.engagementText),j.textContent=h.engagementText}
return S.follow("change:view",v),v(),S.close}function Hs({model:t,el:s}){let n=ce(t.get("picture")),o=J({model:t,el:s},{kind:"rig"});return o.show(o.alert,e("p",{class:"\
ts-finding"},t.get("finding")),...n.nodes),o.close}function Wt(t,s){return(t.find(([n])=>n===s)??t[0])[2]}function Le(t,s){return t.find(([,,n])=>s!==void 0&&n.includes(s))?.[0]}
var Se=(t,s)=>[...t.slice(s+1),...t.slice(0,s+1)];function _s(t,{stages:s,stage:n,step:o,labels:r,isOpen:a}){let c=Wt(s,
n),i=c.indexOf(String(o));if(t==="ArrowLeft"||t==="ArrowRight"){let d=s.map(([f])=>f),u=t==="ArrowLeft"?-1:1,p=Wt(s,d[(d.
indexOf(n)+u+d.length)%d.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let l=t.toLowerCase();return Se(c,i).find(d=>r[d].toLowerCase().startsWith(l))}function Ks({stages:t,stage:s,step:n,isOpen:o}){
let r=Wt(t,s),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(r.at(-1)));return Se(r,r.indexOf(String(n))).find(o)??Se(a,c).find(
o)}function Fs({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding"}),r=e("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=e("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>bt()},
...mt(n.stages.map(([T,q])=>[T,q]))),c=rt(n.marked?"Next open step":"Next ready step",()=>A("next"));c.classList.add("ts\
-next");let i=e("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this sta\
ge",onkeydown:T=>I(T)}),l=e("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the s\
tage, Enter takes a step in hand; Enter again does it."),d=e("div",{class:"ts-hand",role:"group","aria-label":"Step in h\
and",onkeydown:T=>{T.key!=="Enter"||!T.target.matches("input[type=radio], .ts-number-box")||(T.preventDefault(),t.get("h\
and").stands?V():U())}}),u=e("div",{class:"ts-scroll ts-fit"}),p=e("dl",{class:"ts-facts"}),f=e("ul",{class:"ts-sentence\
s"}),w=e("p",{class:"ts-prompt"},"Wrong so far"),g=e("select",{class:"ts-box ts-before","aria-label":"A step that stands"}),
$=rt("Take out again",()=>{g.value&&h({type:"out",step:g.value},"hand")}),y=rt("Put the tools down",()=>h({type:"over"},
"told"));y.classList.add("ts-over");let B=e("div",{}),j=e("p",{class:"ts-status"}),L=e("details",{ontoggle:()=>{L.open!==
!!t.get("view").record&&h({type:"record",open:L.open})}},e("summary",{},"Build record"),B),S=J({model:t,el:s},{kind:"rig"});
S.show(e("p",{class:"ts-who"},n.who),S.alert,o,j,r,e("div",{class:"ts-build"},e("div",{class:"ts-build-left"},e("div",{class:"\
ts-tools"},a,c),i,l),d),e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},g,$),y),u,p,w,f,L);let C=0,v=null;function h(T,q=null){
C+=1,v=q&&{turn:C,focus:q},s.setAttribute("aria-busy","true"),S.send({...T,turn:C})}let b="",m=null,k="next",E=T=>!t.get(
"view").done.includes(T),M=()=>Q(i,"[data-step]"),W=T=>M().find(q=>q.dataset.step===T)?.focus(),O=()=>({stages:n.stages,
stage:a.value,step:m,isOpen:E});function A(T,q){k=T,h(T==="list"?{type:"take",step:q}:{type:"next"},"hand")}function D(T){
a.value=Le(n.stages,T)??a.value,m=T,bt(),W(T)}function I(T){if(yt(T))return;let q=_s(T.key,{...O(),labels:n.labels});q&&
(T.preventDefault(),D(q))}function _(){let T=Ks(O());T?k==="next"?c.focus():D(T):y.focus()}function V(){let T=t.get("vie\
w").done.length>=Object.keys(n.labels).length;k==="next"&&!T?A("next"):_()}function tt(T){let{done:q,ready:nt}=t.get("vi\
ew");return q.includes(T)?{sign:"✓",word:"done"}:nt.includes(T)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"o\
pen":"waits"}}function bt(){let T=Wt(n.stages,a.value);(m===null||!T.includes(m))&&(m=T.find(E)??T[0]);let q=t.get("hand").
step,nt=JSON.stringify([a.value,T.map(tt),q]);if(nt===b){for(let ft of M())ft.tabIndex=ft.dataset.step===m?0:-1;return}b=
nt;let pt=M().find(ft=>ft===document.activeElement)?.dataset.step;i.replaceChildren(...T.map(ft=>at(ft,q))),pt&&W(pt)}function at(T,q){
let{sign:nt,word:pt}=tt(T);return e("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${pt}`,"data-step":T,
tabindex:T===m?"0":"-1","aria-current":T===q?"step":!1,"aria-label":`${n.labels[T]}: ${pt}`,onclick:()=>{m=T,A("list",T)}},
Mt(nt),n.labels[T])}let F="",Y=new Map;function x(T){let q=Rt(T),nt=e("p",{class:"ts-read",id:q.read,role:"status"}),pt=0,
ft=R=>{h({type:"set",name:T.name,value:R}),pt=C},Z=Pt(T).make(T,q,ft,()=>{}),N=Ht(T,q,null);return N.append(Z.element,nt),
N.dataset.field=T.name,{element:N,flush:()=>Z.flush?.(),show(R={},X){if(X<pt)return;Z.show(R);let lt=R.read?`read as ${R.
read}`:"";nt.textContent=R.error?`▲ Look again: ${R.error}`:lt}}}let H=T=>e("dl",{class:"ts-facts"},...Et(T));function K(){
let T=t.get("hand"),q=JSON.stringify(T);if(q===F)return;if(F=q,d.dataset.stands=String(!!T.stands),Y=new Map((T.fields??
[]).map(Z=>[Z.name,x(Z)])),!T.step){d.replaceChildren(e("p",{class:"ts-hint"},"No step in hand. Choose one from the list\
, or press the button above it."));return}let nt=rt(`Do it: ${T.label}`,U);nt.classList.add("ts-do");let pt=T.stands?[rt(
"Go on",V),rt("Take it out again",()=>h({type:"out",step:T.step},"hand"))]:[nt];d.replaceChildren(e("p",{class:"ts-promp\
t ts-hand-name",tabindex:"-1"},T.label),...T.plain.map(Z=>e("p",{class:"ts-hint"},Z)),...T.cautions.map(Z=>e("p",{class:"\
ts-caution"},e("b",{},"Take care: "),Z)),...T.read.length?[e("p",{class:"ts-prompt"},"Read at the bench"),H(T.read)]:[],
...T.card.length?[H(T.card)]:[],...[...Y.values()].map(Z=>Z.element),e("div",{class:"ts-tools"},...pt));let ft=Le(n.stages,
T.step);ft&&([a.value,m]=[ft,T.step])}function U(){for(let T of Y.values())T.flush();h({type:"do"},"after")}function st(){
let T=t.get("view").asked_back,q=Q(d,"[data-field]").find(ft=>ft.dataset.field===T),nt=q&&Q(q,"input:not(:disabled), sel\
ect, button"),pt=Q(d,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return nt?.[0]??
pt[0]}function z(){let T=t.get("view"),q=T.told;o.textContent=T.finding,j.textContent=T.status,j.hidden=!T.status,r.textContent!==
q.join("")&&r.replaceChildren(...q.map(pt=>e("p",{},pt))),K(),bt();for(let[pt,ft]of Y)ft.show(T.states[pt],T.turn);if(u.
dataset.shown!==T.figure&&(u.innerHTML=T.figure,u.dataset.shown=T.figure),p.replaceChildren(...Et(T.facts)),f.replaceChildren(
...Dt(T.faults.map(([,pt])=>pt))),w.hidden=f.hidden=!T.faults.length,dt(T.done),B.innerHTML=T.record,L.open=!!T.record,s.
setAttribute("aria-busy",String(T.turn<C)),!v||T.turn<v.turn)return;let{focus:nt}=v;v=null,nt==="told"?r.focus():nt==="a\
fter"&&!t.get("hand").step?_():(st()??c).focus()}function dt(T){if(g.disabled=$.disabled=!T.length,g.dataset.done===T.join(
" "))return;g.dataset.done=T.join(" ");let q=[...T].reverse();g.replaceChildren(...mt(q.map(nt=>[nt,n.labels[nt]])))}return S.
follow("change:view",z),z(),S.close}function Kn(t){let s=P("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[o,r]=[210,128],a=it(
o,r,o,r,"tsi-adapter"),c=P("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=it(o,r+74,o,r+74,"tsi-arm"),l=ct(o,r+94,"");return s.
append(it(o,r,o+440,r,"tsi-lever"),a,c,P("circle",{cx:o,cy:r,r:7,class:"tsg-hub"}),ct(o+440,r-20,"hand, middle of the gr\
ip","end"),ct(o+20,r-20,"square drive","start"),it(o+440,r+10,o+440,r+84,"tsg-centre"),i,l,ct(8,242,"lengths to scale","\
start")),{node:s,set(d){let u=d.state.angle/180*Math.PI,p=o-d.state.reach*n*Math.cos(u),f=r-d.state.reach*n*Math.sin(u);
Ot(a,{x2:p,y2:f}),Ot(c,{cx:p,cy:f}),Ot(i,{x1:p,x2:o+440}),Ot(l,{x:(p+o+440)/2}),l.textContent="the lever from bolt to ha\
nd, along the wrench",s.setAttribute("aria-label",`${t.name}. ${d.words}`)}}}function qs(t){return Ct(t,(s,n,o)=>{let r=Kn(
s),a=(i,l,d,u,p,f)=>gt(i,{min:d,max:u,step:p,value:o[l],words:w=>`${w} ${f}`,onInput:w=>n({[l]:w})}),c={setting:a("Setti\
ng","setting",s.low,s.high,s.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(s.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{picture:r.node,controls:Object.values(c).map(i=>i.row),
set(i,l){r.set(i);for(let[d,u]of Object.entries(c))u.set(l[d])}}})}var fe=t=>typeof t=="string"?t:t.text;function Us(t,s,n){let o=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
r=a=>fe(a.cells[s]??"").trim();return[...t].sort((a,c)=>{let[i,l]=[r(a),r(c)];if(!i||!l)return+!i-+!l;let[d,u]=[Number.parseFloat(
i),Number.parseFloat(l)],p=Number.isNaN(d)||Number.isNaN(u)||d===u?o.compare(i,l):d-u;return n?-p:p})}function zt(t,s){let n=document.getElementById("jupyter-config-data"),o="/";try{o=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${o}${t}/${s.split("/").map(encodeURIComponent).join("/")}`}function Fn(t){let s="";for(let n=0;n<t.length;n+=32768)s+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(s)}
async function Ws(t,s,n){let o=0;do{let r=new Uint8Array(await n.slice(o,o+524288).arrayBuffer()),a=o===0;o+=524288;let c=o>=
n.size;t.send({type:"file",field:s,name:n.name,data:Fn(r),first:a,last:c})}while(o<n.size)}var qn=400;function zs({model:t,el:s}){let n=J({model:t,el:s},{kind:"desk"}),o=e("p",{class:"ts-said",role:"status"}),r=e(
"div",{class:"ts-desk-body"}),a=e("div",{class:"ts-desk-here","aria-hidden":"true"}),c=e("div",{class:"ts-busy"}),i=e("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),l=t.get("cohort"),d=e("input",{id:et("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:d.value})});d.value=t.get("by"),n.show(e("div",{class:"\
ts-desk-top"},e("b",{},Tt([l.name,l.college]).join(", ")),e("span",{class:"ts-pair"},e("label",{for:d.id},"At the desk (\
your name, for the trail)"),d)),l.invented?e("p",{class:"ts-hint"},l.invented):null,i,c,n.alert,o,r);let u=new Map,p=new Map,
f=new Map,w=new Map,g=!1,$="",y="",B=!1,j=()=>g||Object.keys(t.get("busy")).length>0,L=(x,H={})=>{j()||n.isLost()||(x!==
"look"&&(o.textContent="",n.alert.textContent="",v()),t.send({type:x,...H}))},S=()=>Q(s,"[data-key]");function C(){let x=S().
find(H=>H.dataset.key===$);return x&&r.contains(x)?x.closest("form, section"):null}function v(){let x=C();x?x.append(c,a):
(i.after(c),a.remove());let[H,K]=[o.textContent,n.alert.textContent];a.replaceChildren(...Tt([H&&e("p",{class:"ts-told"},
H),K&&e("p",{class:"ts-trouble"},K)]));for(let U of[o,n.alert])U.classList.toggle("ts-hidden",!!x);return x}function h(){
let x=v(),H=[n.alert,o].find(U=>U.textContent);(x?a.childElementCount?a:null:H)?.scrollIntoView({block:"nearest"})}async function b(x,H,K=""){
if(j()||n.isLost())return;$=H,B=!0,g=!0;try{for(let[st,z]of w){let[dt]=z.files??[];dt&&await Ws(t,st,dt)}}finally{g=!1}let U=[
...p].map(([st,z])=>[st,[...z]]);L("do",{act:x,of:K,typed:Object.fromEntries(u),ticked:Object.fromEntries(U)})}function m(x){
let{name:H,of:K}=x,U=et("field"),st=x.hint?e("span",{class:"ts-hint",id:`${U}-hint`},x.hint):null,z={id:U,"data-key":`fi\
eld:${H}`,"aria-describedby":st?.id},dt=e("label",{for:U},x.label);if(!u.has(H)&&K!=="file"&&u.set(H,K==="tick"?x.value===
"yes":x.value),K==="file"){let nt=w.get(H)??e("input",{type:"file",class:"ts-file"});for(let[pt,ft]of Object.entries(z))
ft&&nt.setAttribute(pt,ft);return w.set(H,nt),e("div",{class:"ts-desk-field"},dt,nt,st)}if(K==="tick"){let q=e("input",{
type:"checkbox",...z});q.checked=u.get(H)===!0,q.addEventListener("change",()=>u.set(H,q.checked));let nt=e("label",{class:"\
ts-option",for:U},q,x.label);return e("div",{class:"ts-desk-field"},nt,st)}let T=K==="choice"?St(z,x.options):K==="long"?
e("textarea",{class:"ts-box",rows:"3",maxlength:"2000",...z}):e("input",{class:"ts-box",autocomplete:"off",maxlength:"40\
0",...z});return T.value=String(u.get(H)??""),K==="choice"&&!x.options.some(([q])=>q===u.get(H))&&(T.value=x.options[0]?.[0]??
"",u.set(H,T.value)),T.addEventListener("input",()=>u.set(H,T.value)),e("div",{class:"ts-desk-field"},dt,T,st)}function k(x){
let H=et("form"),K=e("div",{class:"ts-doing"}),U=()=>{K.replaceChildren(...x.acts.map(z=>G(z.label,()=>z.sure?st(z):b(z.
id,`act:${z.id}`),{class:z.first?"ts-button ts-first":"ts-button","data-key":`act:${z.id}`})))},st=z=>{let dt=et("sure"),
T=e("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":dt},e("p",{id:dt},z.sure),e("div",{class:"ts-d\
oing"},G(`Yes: ${z.label}`,()=>b(z.id,`act:${z.id}`),{"data-key":`act:${z.id}`}),G("No, leave it",()=>{U(),Q(K,`[data-ke\
y="act:${z.id}"]`)[0]?.focus()})));K.replaceChildren(T),T.focus()};return U(),e("form",{class:"ts-desk-form","aria-label\
ledby":x.title?H:null,onsubmit:z=>z.preventDefault()},x.title?e("h3",{id:H},x.title):null,x.hint?e("p",{class:"ts-hint"},
x.hint):null,x.fields.length?e("div",{class:"ts-desk-fields"},...x.fields.map(m)):null,x.acts.length?K:null)}function E(x,H){
if(typeof x=="string")return x;let K=x.act?G(x.text,()=>b(x.act,H,x.of),{class:"ts-cell","aria-label":x.label||null,"dat\
a-key":H}):x.text;return e("span",{},x.shape?Mt(x.shape):null,K)}function M(x){let H=et("table"),K=e("h3",{id:H},x.title);
if(!x.rows.length)return e("section",{},K,e("p",{},x.empty));let U=p.get(x.id)??new Set,st=new Set(x.rows.map(({key:Z})=>Z));
for(let Z of U)st.has(Z)||U.delete(Z);p.set(x.id,U);let z=e("tr",{}),dt=e("tbody",{}),T=x.pick?e("input",{type:"checkbox",
"aria-label":"all","data-key":`all:${x.id}`}):null,q=()=>{T&&(T.checked=U.size===x.rows.length,T.indeterminate=U.size>0&&
!T.checked)},nt=()=>{let Z=f.get(x.id),N=Z?Us(x.rows,Z.column,Z.down):x.rows;dt.replaceChildren(...N.map(ft)),z.replaceChildren(
...T?[e("th",{class:"ts-tick"},T)]:[],...x.columns.map(pt)),q()},pt=(Z,N)=>{let R=f.get(x.id),X=R?.column===N,lt=X?R.down?
"descending":"ascending":null,vt=()=>{f.set(x.id,{column:N,down:X&&!R.down}),nt(),Q(z,`[data-key="${ut}"]`)[0]?.focus()};
if(!Z)return e("td");let ut=`sort:${x.id}:${N}`;return e("th",{scope:"col","aria-sort":lt,class:x.numbers.includes(N)?"t\
s-figure":null},G(Z,vt,{class:"ts-sort","data-key":ut}),X?Mt(R.down?"▼":"▲"):null)},ft=Z=>{let N=x.pick?e("input",{type:"\
checkbox","aria-label":Z.cells.slice(0,3).map(fe).join(" "),"data-key":`row:${x.id}:${Z.key}`}):null;return N&&(N.checked=
U.has(Z.key),N.addEventListener("change",()=>{N.checked?U.add(Z.key):U.delete(Z.key),q()})),e("tr",{},N?e("td",{class:"t\
s-tick"},N):null,...Z.cells.map((R,X)=>{let lt=!X&&!!fe(R);return e(lt?"th":"td",{scope:lt?"row":null,class:x.numbers.includes(
X)?"ts-figure":null},E(R,`cell:${x.id}:${Z.key}:${X}`))}))};return T?.addEventListener("change",()=>{if(U.clear(),T.checked)
for(let{key:Z}of x.rows)U.add(Z);for(let Z of Q(dt,"td.ts-tick input"))Z.checked=T.checked}),nt(),e("section",{},e("div",
{class:"ts-desk-caption"},K,G("Save as CSV",()=>t.send({type:"export",table:x.id}),{"aria-label":`Save as CSV: ${x.title}`,
"data-key":`export:${x.id}`})),e("div",{class:"ts-desk-scroll",role:"region",tabindex:0,"aria-labelledby":H},e("table",{
class:"ts-table","aria-labelledby":H},e("thead",{},z),dt)))}function W(x){if(x.kind==="table")return M(x);if(x.kind==="f\
orm")return k(x);if(x.kind==="link"){let H=x.how==="edit"?"lab/tree":x.how,U={class:"ts-link",href:H?zt(H,x.path):x.path,
target:"_blank"};return e("p",{},e("a",{...U,"data-key":`link:${x.path}`},x.text))}return x.how==="head"?e("h3",{},x.text):
e("p",{class:x.how==="hint"?"ts-hint":null},x.text)}function O(x){n.isLost()||(y=j()?x:"",!y&&($="",L("page",{name:x})))}
function A(){let x=t.get("page");i.replaceChildren(...t.get("pages").map(([H,K])=>G(K,()=>O(H),{class:"ts-button","aria-\
current":H===x?"page":null,"data-key":`page:${H}`})))}let D=t.get("cleared"),I=t.get("page");function _(){let x=S().find(
z=>z===document.activeElement)?.dataset.key,H=r.contains(document.activeElement),K=Q(r,".ts-desk-scroll").map(z=>z.scrollTop);
(t.get("page")!==I||t.get("cleared")!==D)&&(u=new Map,p=new Map,w=new Map,{page:I,cleared:D}={page:t.get("page"),cleared:t.
get("cleared")}),o.textContent=t.get("said"),n.alert.textContent=t.get("trouble"),A();let U=new Map(t.get("pages")),st=e(
"h2",{tabindex:-1},U.get(I));if(r.replaceChildren(st,...t.get("parts").map(W)),Q(r,".ts-desk-scroll").forEach((z,dt)=>{z.
scrollTop=K[dt]??0}),v(),x||H){let z=S().find(dt=>dt.dataset.key===x);(z??st).focus({preventScroll:!!z})}B&&!Object.keys(
t.get("busy")).length&&(B=!1,h())}let V;function tt(){let x=t.get("busy");if(r.setAttribute("aria-busy",String(j())),clearTimeout(
V),!Object.keys(x).length){c.replaceChildren(),y&&setTimeout(()=>y&&O(y),0);return}let{doing:H,done:K,of:U}=x,st=U?`${H}\
: ${K} of ${U}`:`${H} …`,z=()=>{c.replaceChildren(e("progress",U?{max:U,value:K,"aria-label":H}:{"aria-label":H}),e("s\
pan",{role:"status"},st))};c.childElementCount?z():V=window.setTimeout(z,qn)}n.follow("change:turn",()=>setTimeout(_,0)),
n.follow("change:busy",tt),n.follow("change:by",()=>{d.value=t.get("by")}),n.follow("msg:custom",x=>{if(x.type==="troubl\
e"&&h(),x.type!=="save")return;let H=URL.createObjectURL(new Blob([`\uFEFF${x.text}`],{type:"text/csv"}));e("a",{href:H,
download:x.name}).click(),setTimeout(()=>URL.revokeObjectURL(H),1e3)}),_(),tt();let bt=!0,at=new IntersectionObserver(([
x])=>{bt=x.isIntersecting});at.observe(s);let F=0,Y=setInterval(()=>{let x=t.get("every");F+=1,x&&F>=x&&bt&&!document.hidden&&
(F=0,L("look"))},1e3);return()=>{clearInterval(Y),clearTimeout(V),at.disconnect(),n.close()}}function Ce(t,s=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let o=c=>String(c).padStart(2,"0"),r=`${o(
n.getHours())}:${o(n.getMinutes())}`,a=`${n.getFullYear()}-${o(n.getMonth()+1)}-${o(n.getDate())}`;return s.toDateString()===
n.toDateString()?r:`${a} ${r}`}var Un="twoshaft-unsent:";function Gs(t,s){let n=Un+s,o=()=>{if(!t||!s)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},r=a=>{if(!(!t||!s))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(o(),a)?o()[a]:void 0,put:(a,c,i,l=new Date)=>r({...o(),[a]:{value:c,
base:i,at:l.toISOString()}}),drop(a){let{[a]:c,...i}=o();c&&r(i)}}}function Ys(t,s){return JSON.stringify(t.value)===JSON.
stringify(s.value??null)?!1:(s.revision??0)===t.base?!0:!(Date.parse(s.saved??"")>Date.parse(t.at))}var jt=null,Wn="input, button, select, textarea, summary, a, [tabindex]",Vs=t=>[...t.querySelectorAll(Wn)];function Xs(t,s){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?jt={form:s,at:Vs(t).indexOf(a),from:null}:jt?.form===s&&t.
isConnected&&(jt=null))},o=({target:a})=>{jt?.form===s&&a instanceof HTMLInputElement&&(jt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",o),requestAnimationFrame(
()=>{if(jt?.form!==s||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=jt,i=Vs(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var zn=["print","colour"];function Gt(t){for(let s of zn){let n=t?.[s];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${s}`,n):document.documentElement.removeAttribute(`data-ts-${s}`))}}function Js(){Gt({print:"",colour:""})}function Zs(t,s,n){let o=()=>t.get("bench")??{},r=e("details",{class:"ts-bench"}),a=o().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=e("span",{}),i=e("p",{class:"ts-status",role:"status"}),l=G("Use these figures",()=>f("yes")),d=G(
"Go back to the drawn figures",()=>f("no")),u=!1,p=a.map(g=>{let $=et("bench"),y=g.options.length?e("select",{class:"ts-\
box",id:$,"aria-describedby":`${$}-read`},e("option",{value:""},"choose"),...mt(g.options)):e("input",{type:"text",class:"\
ts-box ts-number-box",id:$,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${$}-hint ${$}-read`}),
B=e("span",{class:"ts-hint",id:`${$}-hint`},g.hint),j=e("p",{class:"ts-read",id:`${$}-read`}),L=g.text,S=()=>{y.value.trim()!==
L.trim()&&(L=y.value,s({type:"bench",name:g.name,value:y.value}))};return y.addEventListener(g.options.length?"change":"\
blur",S),y.addEventListener("keydown",C=>{C.key==="Enter"&&(C.preventDefault(),S())}),{name:g.name,flush:S,input:y,element:e(
"div",{class:"ts-bench-row"},e("label",{for:$},g.prompt),e("div",{class:"ts-line-of"},y,B),j),show(C){if(!C)return;(document.
activeElement!==y||y.value===L)&&(y.value=C.text,L=C.text),y.setAttribute("aria-invalid",String(!!C.error)),j.classList.
toggle("ts-error",!!C.error);let v=C.error?[Mt("▲")," "]:[],h=C.read&&!C.options.length&&`read as ${C.read}`,b=C.error||
[h,C.origin].filter(Boolean).join(", ");j.replaceChildren(...v,b)}}}),f=g=>{for(let $ of p)$.flush();u=!0,s({type:"bench",
name:"in-use",value:g})};r.append(e("summary",{},c),e("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),e("div",{class:"ts-bench-rows"},...p.map(g=>g.element)),i,e("div",{class:"ts-tools"},l,d));function w(){
let g=o(),$=new Map(g.rows?.map(L=>[L.name,L]));for(let L of p)L.show($.get(L.name));c.textContent=g.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",d.hidden=!g.wanted,l.hidden=g.used&&!g.stale;let y=g.wanted&&
!g.used?"▲ ":g.used?"● ":"○ ",B=g.used?"in use":g.wanted?`not used; the drawn figures stand. ${g.refused}`:"not us\
ed; the drawn figures stand",j=g.stale?` The tables and choices of this task are still the ones from before. ${g.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${y}${B}${j}`,g.wanted&&
!g.used&&(r.open=!0)}return{element:r,show:w,hear(g){g.type!=="bench-saved"||g.name!=="in-use"||!u||(u=!1,o().stale&&n())},
lost(){for(let g of[l,d,...p.map($=>$.input)])g.disabled=!0}}}var Gn=5e3,Yn=2e3,Vn={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Ee="kept in this browser until it can be\
 saved";function Xn(t,s,n,o){let r=Pt(t),a=Rt(t),c=e("p",{class:"ts-read",id:a.read}),i=e("p",{class:"ts-status",id:a.status,
role:"status"}),l=0,d=null,u={},p=()=>{clearTimeout(d??void 0),d=null},f=L=>{n.put(t.name,L,u.revision??0),w(L)},w=L=>{l+=
1,y("wait",o()?Ee:"saving"),p(),d=window.setTimeout(()=>y("wait",Ee),Gn),s({type:"save",name:t.name,value:L,turn:l})},g=r.
make(t,a,f,(L,S)=>{L?(n.put(t.name,S,u.revision??0),y("wait","not saved yet: press Enter or leave the box")):d===null&&(n.
drop(t.name),B(u))}),$=Ht(t,a,a.status);r.status==="above"?$.append(i,g.element,c):$.append(g.element,c,i);function y(L,S){
i.className=`ts-status ts-status-${L}`,i.dataset.text!==S&&(i.dataset.text=S,i.replaceChildren(Mt(Vn[L]),` ${S}`))}function B(L,S=!1){
if(u=L??{},g.show(u),c.replaceChildren(u.read?`read as ${u.read}`:""),!S)if(u.error){let{error:C,saved:v="",note:h}=u;y(
"unread",`Look again: ${C} Kept as typed, ${Ce(v)}${h?`; ${h}`:""}.`)}else u.saved&&!u.blank?y("saved",`saved ${Ce(u.saved)}${u.
note?`; ${u.note}`:""}`):y("none",r.blank??"not answered yet")}let j=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:$,show(L){d===null&&B(L,j())},saved(L){L.turn===l&&(g.pending?.()||n.drop(t.name),p(),B(L.state))},refused(L){
L.turn===l&&(p(),g.refused(),y("bad",`not saved: ${L.reason}`))},off(){clearTimeout(d??void 0),(d!==null||g.pending?.())&&
y("wait",Ee)},catchUp(){let L=n.get(t.name);L&&(Ys(L,u)?(g.show({...u,value:L.value,error:""}),w(L.value)):n.drop(t.name))},
flush:()=>g.flush?.(),summary:()=>({answered:!!u.saved&&!u.blank&&!u.error&&!u.short,unread:!!u.error,trouble:j(),waiting:d!==
null})}}function Qs({model:t,el:s}){let n=t.get("fields"),o=t.get("sheet"),r=Gs(window.localStorage,o),a=!1,c=()=>a||p.isLost(),
i=n.map(S=>Xn(S,w,r,c)),l=new Map(i.map(S=>[S.name,S])),d=e("p",{class:"ts-who"}),u=e("p",{class:"ts-total"});Gt(t.get("\
look"));let p=J({model:t,el:s},{kind:"form",lost(){for(let S of i)S.off();f.lost(),g()},line(S){a=S;for(let C of i)S?C.off():
C.catchUp();g()}}),f=Zs(t,p.send,()=>{s.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(e("div",
{class:"ts-top"},d,u),p.alert,f.element,...i.map(S=>S.element)),s.dataset.task=t.get("task_id");function w(S){p.send(S),
g()}function g(){let S=i.map(M=>M.summary()),C=S.filter(M=>M.answered).length,v=S.filter(M=>M.trouble).length,h=S.some(M=>M.
waiting),b=S.filter(M=>M.unread).length,m=v?`${v} not saved`:h?c()?"the rest kept in this browser":"saving":C&&!b?"all s\
aved":"",k=[`${C} of ${i.length} answered`,b?`${b} cannot be read`:"",m];u.textContent=k.filter(Boolean).join(", ");let E={
task:t.get("task_id"),answered:C,asked:i.length,unread:b};s.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:E}))}function $(){d.textContent=t.get("header");let S=t.get("states");for(let C of i)C.show(S[C.name]);g()}let y=0,
B=()=>{if(document.visibilityState==="hidden")for(let S of i)S.flush();document.visibilityState!=="visible"||Date.now()-
y<Yn||(y=Date.now(),p.send({type:"look"}))},j=o?new BroadcastChannel(`twoshaft-saved:${o}`):null;j?.addEventListener("me\
ssage",({data:S})=>{S===t.get("task_id")&&p.send({type:"look"})}),document.addEventListener("visibilitychange",B),s.addEventListener(
"focusin",S=>{S.relatedTarget instanceof Node&&s.contains(S.relatedTarget)||B()}),p.follow("change:states change:header",
$),p.follow("msg:custom",S=>{S.type==="saved"&&(l.get(S.name)?.saved(S),j?.postMessage(t.get("task_id"))),S.type==="refu\
sed"&&l.get(S.name)?.refused(S),g()}),p.follow("msg:custom",f.hear),p.follow("change:bench",f.show),$();for(let S of i)S.
catchUp();g(),f.show(),p.alert.textContent=t.get("notice");let L=Xs(s,`${o}/${t.get("task_id")}`);return()=>{L(),j?.close(),
p.close(),document.removeEventListener("visibilitychange",B)}}function he(t,s,n){let o=`twoshaft-signed-in:${n}`,r=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(o,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(o),s.setItem(r,String(a))},get(){try{
let a=JSON.parse(t.getItem(o)??"null");return!a||!(a.at>Number(s.getItem(r)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var Jn={right:"●",other:"◆",unread:"▲"};function Zn(t){let s=Rt(t),n=e("p",{class:"ts-told",id:s.status,role:"stat\
us"}),o=null,r=Pt(t).make(t,s,i=>{o=i,r.show({value:o}),c(void 0)},(i,l)=>{i&&(o=l)}),a=Ht(t,s,s.status);a.append(r.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let l=i?[Mt(Jn[i.how]),e("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...l)}return{name:t.name,element:a,value(){return r.flush?.(),o},show(i,l){i!==void 0&&(o=i,r.show(
{value:o,saved:"given"})),c(l)},still(i){r.setDisabled(i),a.classList.toggle("ts-given",i)}}}function tn({model:t,el:s}){
let n=J({model:t,el:s},{kind:"form"});s.classList.add("ts-question");let o=e("p",{class:"ts-title",role:"heading","aria-\
level":"3"}),r=e("p",{class:"ts-lead"}),a=e("dl",{class:"ts-facts"}),c=e("div",{class:"ts-asked"}),i=G(t.get("give"),()=>{
let $=Object.fromEntries(u.map(y=>[y.name,y.value()]));n.send({type:"give",values:$})});i.classList.add("ts-first");let l=G(
"",()=>n.send({type:"fresh"})),d=t.get("all")?G(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,o,r,a,c,e("p",{class:"ts-acts"},i,l,d));let u=[],p=()=>{let $=t.get("values"),y=t.get("told");for(let S of u)
S.show($[S.name],y[S.name]),S.still(y[S.name]!==void 0&&y[S.name].how!=="unread");let B=u.some(({name:S})=>!y[S]||y[S].how===
"unread"),j=document.activeElement===i;if(i.hidden=!B,l.textContent=t.get("fresh"),l.hidden=B||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!j||B)return;let L=Q(s,".ts-told")[0];L.tabIndex=-1,L.focus({preventScroll:!0})},f=()=>{(Q(c,"input, sel\
ect, [tabindex]")[0]??(l.hidden?i:l)).focus({preventScroll:!0})},w=()=>{u=t.get("fields").map(Zn),c.replaceChildren(...u.
map(({element:$})=>$)),o.textContent=t.get("title"),o.hidden=!o.textContent,r.textContent=t.get("lead"),r.hidden=!r.textContent,
a.replaceChildren(...Et(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let $=s.contains(
document.activeElement);w(),$&&f()}),n.follow("change:told change:values change:notice change:fresh",p),w();let g=t.get(
"place");if(g){let $=he(sessionStorage,localStorage,g).get();t.send({type:"who",id:$?.id??"",ticket:$?.ticket??""})}return()=>n.
close()}var en="twoshaft-mine";var Qn={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},to={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"},ge=(t,s,n)=>e("a",{href:zt("la\
b/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"ts-link"},s);function sn(t){return e("ul",{class:"\
ts-gaps"},...t.map(({task:s,missing:n,asked:o,unread:r})=>e("li",{},`${s}: `,n===o?"nothing answered":n?`${n} of ${o} mi\
ssing`:"",...r.map(([a,c])=>e("span",{},e("b",{},"cannot be read: "),`“${a}” ${c}`)))))}function eo(t){let s=({name:o})=>Number(
o.split("-").at(-1)),n=[...t].sort((o,r)=>s(o)-s(r)).flatMap(({notebooks:o})=>o.map(r=>[r.split("/").pop()??"",r]));localStorage.
setItem(en,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(new Event("storage"))}function nn({model:t,el:s}){
let n="",o=he(sessionStorage,localStorage,t.get("place")),r=J({model:t,el:s},{kind:"start",lost:()=>{}}),a=e("div",{}),c=e(
"p",{class:"ts-said",role:"status"});r.show(r.alert,c,a);let i=(O,A={})=>{a.getAttribute("aria-busy")==="true"||r.isLost()||
(A.quietly||(a.setAttribute("aria-busy","true"),c.textContent="One moment.",r.alert.textContent=""),t.send({type:O,...A}))},
l=(O,A,D,I)=>e("button",{type:"button",class:I?"ts-button ts-first":"ts-button","data-key":A,onclick:D},O);function d(){
let O=et("who"),A=et("word"),D=e("select",{id:O,class:"ts-box","data-key":"who",required:!0},e("option",{value:""},"Choo\
se your name"),...t.get("people").map(([_,V])=>e("option",{value:_,selected:_===n},V)));D.addEventListener("change",()=>{
n=D.value});let I=e("input",{id:A,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",
maxlength:"80","data-key":"word"});return e("form",{class:"ts-sign-in",onsubmit:_=>{_.preventDefault(),i("sign-in",{name:D.
value,word:I.value})}},e("h2",{},"Who is working?"),e("div",{class:"ts-pair"},e("label",{for:O},"Your name"),D),e("div",
{class:"ts-pair"},e("label",{for:A},"Sign-in word from your slip"),I),e("button",{type:"submit",class:"ts-button ts-firs\
t","data-key":"sign-in"},"Sign in"),e("p",{class:"ts-hint"},t.get("kept")))}function u(O,A){let D=at=>`${at}:${O.name}`,
I=e("div",{class:"ts-doing"});for(let at of O.feedback.slice(0,1))I.append(e("a",{href:zt("files",at),target:"_blank",class:"\
ts-link","data-key":D("feedback")},"Read feedback"));for(let at of O.notebooks){let F=O.notebooks.length===1?"Open":`Ope\
n ${at.split("/").pop()}`;I.append(ge(at,F,D(`open ${at}`)))}O.can_get&&I.append(l(O.notebooks.length?"Get again":"Get",
D("get"),()=>i("get",{name:O.name}),!O.notebooks.length)),O.can_hand_in&&I.append(l(O.receipt?"Hand in again":"Hand in",
D("hand in"),()=>i("hand-in",{name:O.name})));for(let at of I.children)at.setAttribute("aria-label",`${at.textContent}: ${O.
title}`);let _=t.get("asking")===O.name,V=O.receipt||O.unread>0,tt=e("tr",{},e("th",{scope:"row"},O.title),e("td",{},O.due||
"no date",O.overdue?e("span",{class:"ts-small-line"},"date passed"):null),e("td",{},e("span",{class:"ts-shape","aria-hid\
den":"true"},Qn[O.state]||""),e("b",{},to[O.state]||O.state),e("span",{class:"ts-small-line"},O.detail),A?e("span",{class:"\
ts-small-line"},`Mark: ${A}`):null),e("td",{},I));if(_)return[tt,e("tr",{},e("td",{colspan:4},f(O)))];if(!V||!O.gaps.length)
return[tt];let bt=e("td",{colspan:4},e("b",{},p(O)),sn(O.gaps));return[tt,e("tr",{},bt)]}let p=({left:O,unread:A})=>Tt([
O?`${O} ${O===1?"answer is":"answers are"} missing`:null,A?`${A} cannot be read`:null]).join(", ");function f(O){let A=et(
"question"),D=e("div",{class:"ts-doing"});for(let _ of O.notebooks)D.append(ge(_,"Go on with it",`go on:${O.name}`));let I=p(
O);return D.append(l(I?"It is my own work: hand in as it is":"It is my own work: hand in",`hand in anyway:${O.name}`,()=>i(
"hand-in",{name:O.name,own:!0}),!I)),e("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":A,"data-key":"\
question"},e("p",{id:A},e("b",{},`${O.title}: not handed in yet.${I?` ${I}.`:""}`),I?" An answer that is missing or cann\
ot be read earns nothing.":null),I?sn(O.gaps):null,e("p",{},"By handing in you state: ",e("b",{},t.get("statement"))),D)}
let w=new Set,g={met:"✓",enough:"◐","not yet":"○"};function $(O,A){let D=O.entries.map(tt=>A.find(bt=>bt.name===tt)).
filter(tt=>tt!==void 0),I=O.lesson?ge(O.lesson,`Lesson ${O.title}`,`lesson:${O.lesson}`):e("span",{class:"ts-small-line"},
"no lesson here"),_=e("details",{open:w.has(O.module)},e("summary",{"data-key":`outcomes:${O.module}`},`Outcomes: ${O.count||
"none"}`),e("ul",{},...O.outcomes.map(([tt,bt,at,F])=>e("li",{},e("span",{class:"ts-shape","aria-hidden":"true"},g[tt]||
""),e("b",{},`${tt}${at&&tt==="enough"?`, ${at}`:""}: `),bt,at&&tt==="not yet"?`. Still missing: ${at}`:"",F?` (${F})`:""))));
_.addEventListener("toggle",()=>{_.open?w.add(O.module):w.delete(O.module)});let V=D.flatMap(tt=>u(tt,O.marks[tt.name]));
return e("tbody",{},e("tr",{class:"ts-module"},e("th",{scope:"rowgroup",colspan:4},O.title,e("span",{class:"ts-assigned"},
D.length?"assigned":"not assigned"))),...V,e("tr",{},e("td",{colspan:4},I,e("p",{class:"ts-next"},e("b",{},"Next: "),O.next),
_)))}function y(){let O=t.get("me"),A=t.get("entries"),D=e("table",{class:"ts-table"},e("thead",{},e("tr",{},...["Assign\
ment","Due","State","What you can do"].map(I=>e("th",{scope:"col"},I)))),...t.get("modules").map(I=>$(I,A)));return e("s\
ection",{},e("div",{class:"ts-me"},e("h2",{},`Working as ${O.name} (${O.id})`),O.ticket?l("Not you? Sign out","sign-out",
()=>{i("sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),A.length?null:e("p",{},"Nothin\
g is assigned yet."),D,l("Look again","look",()=>i("look")))}function B(){let O=!!t.get("me").id,A=t.get("modules").map(
_=>_.lesson),I=t.get("lessons").filter(([_])=>!O||!A.includes(_));return I.length?e("section",{},e("h2",{},O?"To look th\
ings up":"Lessons"),e("ul",{class:"ts-lessons"},...I.map(([_,V])=>e("li",{},ge(_,V,`lesson:${_}`))))):null}let j=!1,L=t.
get("me").id?null:o.get(),S=L!==null;function C(){let O=t.get("me");O.id?Gt(t.get("look")):Js(),O.id?o.keep(O):(j||L&&!S)&&
o.drop(),j=!!O.id,eo(O.id?t.get("entries"):[])}let v=0,h="",b=()=>Q(a,"[data-key]"),m=()=>a.querySelector("input[data-ke\
y=word]");function k(){let A=b().find(x=>x===document.activeElement)?.dataset.key;a.removeAttribute("aria-busy");let D=!!t.
get("me").id;c.textContent=t.get("said"),r.alert.textContent=t.get("trouble");let I=m()?.value,_=S?e("p",{},"One moment."):
d();a.replaceChildren(...Tt([D?y():_,B()]));let V=m();V&&I&&(V.value=I);let tt=h;if(h=t.get("asking"),h&&h!==tt&&b().find(
x=>x.dataset.key==="question")?.focus(),!A||h&&h!==tt)return;let bt=b().find(x=>x.dataset.key===A),at=A.split(":")[1],F=A.
startsWith("hand in anyway")?`hand in:${at}`:`:${at}`,Y=b().find(x=>at&&x.dataset.key?.endsWith(F));(bt??Y??Q(a,"a, butt\
on, select")[0])?.focus()}let E=()=>{clearTimeout(v),v=setTimeout(()=>{S=!1,C(),k()},0)};t.on("change",E),C(),k(),L&&t.send(
{type:"resume",name:L.id,ticket:L.ticket});let M=()=>{!document.hidden&&t.get("me").id&&i("look",{quietly:!0})},W=new IntersectionObserver(
([O])=>{O.isIntersecting&&M()});return W.observe(s),document.addEventListener("visibilitychange",M),()=>{clearTimeout(v),
t.off("change",E),W.disconnect(),document.removeEventListener("visibilitychange",M),r.close()}}var so={bench:as,build:ds,cord:fs,depth:hs,desk:zs,face:gs,fault_board:ws,form:Qs,gate:ks,gears:vs,hazards:ys,lifting:xs,
micrometer:$s,own_checks:Ss,press:Ls,question:tn,rules:Cs,runout:Es,sealant:Ds,seat:Bs,shims:Ps,sketch:js,start:nn,thread:Rs,
unit_section:Hs,whole_build:Fs,wrench:qs};export{so as screens};
