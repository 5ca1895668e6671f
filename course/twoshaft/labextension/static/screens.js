var nn="http://www.w3.org/2000/svg";function e(t,s={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
s))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...It(n)),r}function j(t,s={},...n){let r=document.createElementNS(nn,t);return Ot(r,s),r.append(...n),
r}function Ot(t,s){for(let[n,r]of Object.entries(s))r!=null&&t.setAttribute(n,String(r))}function W(t,s,n={}){return e("\
button",{type:"button",class:"ts-button",onclick:s,...n},t)}function St(t,s){return e("select",{class:"ts-box",...t},...ht(
s))}function Mt(t){return t.flatMap(([s,n])=>[e("dt",{},s),e("dd",{},n)])}function Et(t){return e("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function It(t){return t.filter(s=>s!=null&&s!==!1)}var Ne=0;function Z(t){return Ne+=1,`twos\
haft-${t}-${Ne}-${Math.random().toString(36).slice(2,7)}`}function Tt(t,s){let n=t.querySelector(s);if(!n)throw new Error(
`nothing matches ${s}`);return n}function X(t,s){return[...t.querySelectorAll(s)]}function xt(t,s){let{target:n}=t;return n instanceof
Element?n.closest(s):null}function bt(t){return t.ctrlKey||t.metaKey||t.altKey}function Gt(t){let s=X(t,"button, input, \
select");for(let n of s)n.disabled=!0}function Ie(t){for(let s=t.parentElement;s;s=s.parentElement){let n=getComputedStyle(
s).overflowY;if((n==="auto"||n==="scroll")&&s.scrollHeight>s.clientHeight)return s}return document.scrollingElement??document.
documentElement}function Yt(t,s){return Math.hypot(t[0]-s[0],t[1]-s[1])}function nt(t,s,n=t){return W(t,s,{"aria-label":n})}
function ht(t){return[...t].map(([s,n])=>e("option",{value:s},n))}function Dt(t){return t.map(s=>e("li",{},s))}var pe=new Map;function gt(t,s){if(pe.has(t))throw new Error(`the answer kind ${t} is registered twice`);pe.set(t,s)}function Pt(t){
let s=pe.get(t.kind);if(!s)throw new Error(`the answer kind ${t.kind} has no browser side`);return s}function Rt(t){let s=Z(
t.kind);return{control:`${s}-control`,hint:`${s}-hint`,read:`${s}-read`,status:`${s}-status`}}function Ht(t,s,n){let{prompt:r}=Pt(
t),o={class:"ts-prompt"};if(r==="legend")return e("fieldset",{class:"ts-field","aria-describedby":n},e("legend",o,t.prompt));
let a=r==="label"?e("label",{...o,for:s.control},t.prompt):e("p",o,t.prompt);return e("div",{class:"ts-field"},a)}function Vt(t,s,n,r){let a=t.options.map(([d,i])=>{let c={"aria-describedby":s.status},l=e("input",{type:n,name:s.control,
value:d,...c});return{key:d,input:l,row:e("label",{class:"ts-option"},l,e("span",{},i))}});for(let{input:d}of a)d.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:e("div",{class:"ts-options"},...a.map(({
row:d})=>d)),show(d){let i=d.value==null?[]:[d.value].flat();for(let{key:c,input:l}of a)l.checked=i.includes(c)},setDisabled(d){
for(let{input:i}of a)i.disabled=d},refused(){}}}gt("choice",{prompt:"legend",make:(t,s,n)=>Vt(t,s,"radio",r=>n(r[0]))});gt("choices",{prompt:"legend",make:(t,s,n)=>Vt(t,s,"checkbox",n)});function Xt(t){return t.filter(([,s])=>s).map(([s,n])=>`${s}=${n}`)}function Jt(t){let s=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(s.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}gt("each",{prompt:"legend",make(t,s,n){let r=t.lines,o=t.options,a=r.map(([d,i],c)=>{let l=`${s.control}-${c}`,u=e("labe\
l",{class:"ts-each-line",for:l},i),p=St({id:l,"aria-describedby":s.status},[["","choose"],...o]);return{key:d,box:p,row:e(
"li",{},u,p)}});for(let{box:d}of a)d.addEventListener("change",()=>{n(Xt(a.map(({key:i,box:c})=>[i,c.value])))});return{
element:e("ol",{class:"ts-each"},...a.map(({row:d})=>d)),show(d){let i=Jt(d.value);for(let{key:c,box:l}of a)l.value=i.get(
c)??""},setDisabled(d){for(let{box:i}of a)i.disabled=d},refused(){}}}});function fe(t){let[s="",...n]=t.split(" "),r=s==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:s,size:r,
side:o,place:a[0],points:null};let d=a.map(i=>{let[c,l]=i.split(",").map(Number);return[c,l]});return{hand:s,size:r,side:o,
place:"",points:d}}function he(t,{side:s,place:n,points:r}){return r||(s==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[s]??[])}function ge(t,s){let{hand:n,size:r,side:o,place:a}=fe(s),d=[...t.stretches,...t.
holes].find(c=>c.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${d?`, ${d.name}`:""}, ${t.sides[o]??""}`}
function me(t,s,n){return s==="film"?t.width:s==="bead"?n:s==="wipe"?2*t.width:1}function De(t){let s=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=s.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(s)?Number(s):Number.NaN}function Be(t){let s=0;for(let n=1;n<t.length;n+=1)s+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return s}function Pe(t,[s,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
d,i])=>Math.hypot(d-s,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var on=.4;function je(t,s){let n=on,r=Zt(t,n);for(;r.
length>s;)n*=1.5,r=Zt(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function Zt(t,s){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let d=1;d<t.length-1;d+=1){let i=rn(n,r,t[d]);i>o&&([o,a]=[i,d])}return o<=
s?[n,r]:[...Zt(t.slice(0,a+1),s).slice(0,-1),...Zt(t.slice(a),s)]}function rn(t,s,n){let[r,o]=[s[0]-t[0],s[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var Qt=14,an=3,cn=.5,ln=["middle","inside","outside"],te="round ";function dn(t,s){let n=t.outline.map(([H])=>H),r=t.outline.
map(([,H])=>H),[o,a]=[Math.min(...n)-Qt,Math.max(...n)+Qt],[d,i]=[Math.min(...r)-Qt,Math.max(...r)+Qt],c=a-o,l=i-d,u=([H,
F])=>`${(H-o).toFixed(1)} ${(i-F).toFixed(1)}`,p=(H,F)=>`M${H.map(u).join("L")}${F?"Z":""}`,h=Z("face"),b=c/100,w=2*b,v=(H,F)=>j(
"pattern",{id:`${h}-${H}`,width:w,height:w,patternUnits:"userSpaceOnUse"},j("path",{d:F,class:"tsp-hatch","stroke-width":b/
4})),$=j("defs",{},v("oil",`M0 ${w}L${w} 0`),v("dirt",`M0 ${w}L${w} 0M0 0L${w} ${w}`)),T=t.cavities.map(([,H])=>p(H,!0)).
join(""),D=t.islands.map(H=>p(H,!0)).join(""),S=p(t.outline,!0)+T,L=j("g"),C=j("g"),k=j("g"),f=j("g"),m=j("path",{class:"\
tsp-live",d:""}),x=j("path",{class:"tsp-chosen",d:""}),y=j("path",{class:"tsp-land",d:S,"fill-rule":"evenodd"}),E=j("pat\
h",{class:"tsp-edge",d:S+D,"stroke-width":b/2.5}),A=([H,F],z,et="middle")=>{let J={x:H-o,y:i-F,"font-size":2.1*b,"text-a\
nchor":et};return j("text",{class:"tsp-text",...J},z)},U=[(o+a)/2,(d+i)/2],O=(H,F)=>{let z=Yt(H,U)||1;return[H[0]+F*(U[0]-
H[0])/z,H[1]+F*(U[1]-H[1])/z]};for(let{x:H,y:F,d:z,leads:et,name:J}of t.holes){let ot={cx:H-o,cy:i-F,"stroke-width":b/4},
V=et==="blind"?"tsp-hole tsp-blind":"tsp-hole";k.append(j("circle",{...ot,r:z/2,class:V})),et==="to the outside"&&k.append(
j("circle",{...ot,r:z/3,class:"tsp-hole"}));let[it,mt]=O([H,F],-(z/2+4.4*b));k.append(A([it,mt-.8*b],J.replace("bolt ","")))}
for(let H of t.guides){let[F,z]=[H.x-o,i-H.y],et=`M${F-b} ${z}h${w}M${F} ${z-b}v${w}`;k.append(j("path",{class:"tsp-guid\
e",d:et,"stroke-width":b/2}));let J={"stroke-width":b/5,"stroke-dasharray":`${b} ${b}`};k.append(j("circle",{cx:F,cy:z,r:H.
reach,class:"tsp-reach",...J}));let ot=O([H.x,H.y],H.reach+w),V=(ot[0]-H.x)/(H.reach+w);k.append(A(ot,H.name,V>.5?"start":
V<-.5?"end":"middle"))}for(let{word:H,points:F,width:z}of t.spots){let[et]=H.split(" "),[J,ot]=[F[0],F[F.length-1]],V=Yt(
J,ot)||1,[it,mt]=[-(ot[1]-J[1])/V*z/2,(ot[0]-J[0])/V*z/2],I=[[J[0]+it,J[1]+mt],[ot[0]+it,ot[1]+mt],[ot[0]-it,ot[1]-mt],[
J[0]-it,J[1]-mt]],G=`url(#${h}-${et})`;L.append(j("path",{d:p(I,!0),fill:G,class:"tsp-spot","stroke-width":b/4}));let ct=A(
O([(J[0]+ot[0])/2,(J[1]+ot[1])/2],9*b),et);ct.classList.add("tsp-spot-word"),k.append(ct)}let M=[100,50,20,10].find(H=>H<
c/4)??10,N=`M${b} ${l-b}v${-b}v${b/2}h${M}v${-b/2}v${b}`,g={x:M+w,y:l-b,"font-size":2.1*b};f.append(j("path",{class:"tsp\
-edge",d:N,"stroke-width":b/4}),j("text",{class:"tsp-text",...g},`${M} mm`));let P=`0 0 ${c.toFixed(1)} ${l.toFixed(1)}`,
_=j("svg",{viewBox:P,class:"tsp-face",role:"img","aria-label":s},$,y,L,C,E,k,x,m,f),K=`max-width: ${(25*c/l).toFixed(1)}\
rem`;return{frame:e("div",{class:"ts-pad-face",style:K},_),svg:_,over:f,live:m,chosen:x,land:y,path:p,unit:b,box:{left:o,
right:a,low:d,high:i,width:c,height:l},place({clientX:H,clientY:F}){let z=_.getBoundingClientRect(),et=Math.min(z.width/
c,z.height/l);return[o+(H-z.left-(z.width-et*c)/2)/et,i-(F-z.top-(z.height-et*l)/2)/et]},strokes(H){C.replaceChildren(...H.
map(q))}};function q(H){let F=fe(H),z=he(t,F),et=me(t,F.hand,Math.max(F.size,b/2)),J=z.length>1?p(z,F.side==="round"):z.
length?`${p(z)}h0.01`:"",ot=j("path",{d:J,class:`tsp-stroke tsp-${F.hand}`,"stroke-width":et});if(F.hand!=="film")return ot;
let V=Math.min(8,Math.max(.6,40*F.size)),it={"stroke-width":b/3,"stroke-dasharray":`${V} ${V}`};return j("g",{},ot,j("pa\
th",{d:J,class:"tsp-grain",...it}))}}function ee({face:t,label:s,onLay:n,onRemove:r,onClear:o}){let a=dn(t,s),d=e("p",{class:"\
ts-hidden","aria-live":"polite"}),i=e("p",{class:"ts-read ts-pad-trouble",role:"status"}),c=(N,g)=>e("span",{class:"ts-p\
air"},e("label",{for:g.id},N),g),l=St({id:Z("hand")},Object.entries(t.hands)),u=e("input",{class:"ts-box ts-size",id:Z("\
size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),p=e("label",{for:u.id},"thickness"),h=St({id:Z(
"place")},t.stretches.map(({id:N,name:g})=>[N,g]));h.append(e("optgroup",{label:"Round a hole"},...t.holes.map(({id:N,name:g})=>e(
"option",{value:`${te}${N}`},`round ${g}`))));let b=St({id:Z("side")},ln.map(N=>[N,t.sides[N]])),w=W("Lay it here",()=>f(
[k(h.value)])),v=W("Lay it on every stretch",()=>f(t.stretches.map(({id:N})=>k(N)))),$=W("Take back the last pass",()=>{
S&&r(S-1,!0)}),T=W("Clear the face",o),D={film:"",bead:""},S=0,L=!1;function C(){if(l.value==="wipe")return"";let[N,g]=t.
sizes[l.value],P=De(u.value);if(P>=N&&P<=g)return u.removeAttribute("aria-invalid"),` ${Number(P.toFixed(3))}`;let _=l.value===
"film"?"the thickness of the film":"the diameter of the bead";return i.textContent=u.value.trim()?`Read “${u.value}”: \
give ${_} from ${N} to ${g} mm.`:`First give ${_} in mm.`,u.setAttribute("aria-invalid","true"),u.focus(),null}function k(N){
let g=C();if(g===null)return null;let P=N.startsWith(te)?N:`${b.value} ${N}`;return`${l.value}${g} ${P}`}function f(N){let g=N.
filter(P=>P!==null);if(!(L||g.length<N.length)){if(S+g.length>t.most){i.textContent=`There is room for ${t.most} passes;\
 take some back first.`;return}i.textContent="",d.textContent=g.length===1?`Laid: ${ge(t,g[0])}`:`Laid on ${g.length} st\
retches`,n(g)}}function m(){let N=l.value==="wipe";p.textContent=l.value==="bead"?"diameter":"thickness",u.disabled=L||N,
u.value=N?"":D[l.value],u.placeholder=N?"":"mm",w.textContent=N?"Wipe here":"Lay it here",v.textContent=N?"Wipe every st\
retch":"Lay it on every stretch",i.textContent="",x()}function x(){let N=h.value.startsWith(te);b.disabled=L||N;let g=he(
t,N?{side:"round",place:h.value.slice(te.length)}:{side:b.value,place:h.value});a.chosen.setAttribute("d",g.length?a.path(
g,N):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}l.addEventListener("change",m),u.addEventListener("input",
()=>{D[l.value]=u.value}),h.addEventListener("change",x),b.addEventListener("change",x),u.addEventListener("keydown",N=>{
N.key==="Enter"&&(N.preventDefault(),w.click())});let y=null;a.svg.addEventListener("pointerdown",N=>{if(L||N.button>0)return;
y=[a.place(N)],a.svg.setPointerCapture(N.pointerId);let g=Math.max(1,Number(D.bead.replace(",","."))||1);a.live.setAttribute(
"stroke-width",String(me(t,l.value,g)))}),a.svg.addEventListener("pointermove",N=>{if(!y)return;let g=a.place(N);Yt(g,y[y.
length-1])<cn||(y.push(g),a.live.setAttribute("d",a.path(y)))});let E=N=>{if(!y)return;let g=y;if(y=null,a.live.setAttribute(
"d",""),N.type==="pointercancel")return;if(Be(g)<an){h.value=Pe(t,g[0]),x();return}let P=C();if(P===null)return;let _=je(
g,t.points).map(K=>K.join(","));f([`${l.value}${P} at ${_.join(" ")}`])};a.svg.addEventListener("pointerup",E),a.svg.addEventListener(
"pointercancel",E);let A=e("ol",{class:"ts-passes","aria-label":"Passes, in the order they were done"}),U=e("p",{class:"\
ts-hint"},"Nothing is laid yet."),O=e("div",{class:"ts-pad-tools"},e("div",{class:"ts-tools"},c("tool",l),e("span",{class:"\
ts-pair"},p,u)),e("div",{class:"ts-tools"},c("where",h),c("runs",b)),e("div",{class:"ts-tools"},w,v,$,T),i,d),M=()=>X(A,
"button");return m(),{drawing:a,tools:O,list:A,empty:U,frame:a.frame,element:e("div",{class:"ts-pad"},a.frame,O,e("div",
{class:"ts-pad-list"},U,A)),show(N,g=[]){S=N.length,a.strokes(N),U.hidden=S>0;let P=M().findIndex(_=>_.matches(":focus"));
A.replaceChildren(...N.map((_,K)=>e("li",{},e("span",{},`${ge(t,_)}${g[K]?`, ${g[K]}`:""} `),W("take out",()=>r(K,!1),{class:"\
ts-button ts-remove",disabled:L,"aria-label":`Take out pass ${K+1}`})))),P>=0&&(M()[Math.min(P,S-1)]??w).focus()},setDisabled(N){
L=N;for(let g of[l,h,w,v,$,T,...M()])g.disabled=N;u.disabled=N||l.value==="wipe",x()}}}gt("film",{prompt:"words",make(t,s,n){let r=[],o=d=>{r=d,a.show(r),n(r)},a=ee({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:d=>o([...r,...d]),onRemove:d=>o(r.filter((i,c)=>c!==d)),onClear:()=>o([])});
return{element:a.element,show(d){r=[d.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function Re(t,{send:s,typing:n,said:r=a=>String(a??""),wrong:o=a=>!!a.error}){let a=e("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),d="",i=()=>d===null||a.value.trim()!==d.trim(),c=()=>{i()&&(d=a.value,s(a.value))};return a.
addEventListener("blur",c),a.addEventListener("keydown",l=>{let u=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!==
"Enter"&&!u||(l.preventDefault(),c())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:c,pending:i,refused(){
d=null},show(l){a.setAttribute("aria-invalid",String(o(l))),!(document.activeElement===a&&a.value!==d)&&(d=r(l.value),a.
value=d)}}}function He(t,s){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${s}`.trim()}function _e(t,s,n){let r=St({"aria-label":"Choose the unit"},[["","unit"],...s.map(o=>[o,o])]);return r.addEventListener(
"change",()=>{r.value&&(t.value=He(t.value,r.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener("input",()=>{
r.value=""}),r}gt("number",{prompt:"label",make(t,s,n,r){let o=t.units,{box:a,flush:d,pending:i,refused:c,show:l}=Re(s,{send:n,typing:r}),
u=e("span",{class:"ts-hint",id:s.hint},t.hint),p=o.length?_e(a,o,d):null;return{element:e("div",{class:"ts-line-of"},a,p,
u),show:l,setDisabled(h){a.disabled=h,p&&(p.disabled=h)},refused:c,flush:d,pending:i}}});function Fe(t,s){let r=[...new Set([t??[]].flat())].filter(o=>s.includes(String(o))).map(String);return[...r,...s.filter(
o=>!r.includes(o))]}var _t=(t,s)=>t.join(`
`)===s.join(`
`),Ke=t=>`#${t.keys[0]}`,se=class{constructor(s,n){this.labels=new Map(s.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
r,,o]of s)o&&this.stages.set(r,o);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(s){return this.labels.get(s)??s}runs(){let s=[];
for(let n of this.order){let r=this.stages.get(n)??null,o=s.at(-1);o&&r!==null&&o.stage===r?o.keys.push(n):s.push({stage:r,
keys:[n]})}return s}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let s=[];for(let n of this.runs()){
let[r]=n.keys;if(n.keys.length<2){s.push({id:r,key:r,level:1});continue}if(s.push({id:Ke(n),run:n,level:1}),!this.closed.
has(String(n.stage)))for(let o of n.keys)s.push({id:o,key:o,level:2})}return s}row(s){return this.rows().find(n=>n.id===
s)}settle(){let s=this.rows();if(!s.some(n=>n.id===this.current)){let n=this.current.replace(/^#/,""),r=s.find(o=>o.run?.
keys.includes(n));this.current=(r??s.find(o=>o.id===n)??s[0]).id}return s}unit(){let s=this.row(this.current);return s?.
run?s.run.keys:this.block.has(this.current)&&this.block.size>1?this.order.filter(n=>this.block.has(n)):[this.current]}unitName(){
let s=this.row(this.current);if(s?.run)return`Stage ${s.run.stage}`;let n=this.unit();return n.length>1?`Block of ${n.length}\
 steps`:this.label(n[0])}where(){let s=this.unit(),n=this.order.indexOf(s[0])+1;return s.length>1?`positions ${n} to ${n+
s.length-1} of ${this.order.length}`:`position ${n} of ${this.order.length}`}rest(){let s=this.unit();return this.order.
filter(n=>!s.includes(n))}get isFirst(){return this.order.indexOf(this.unit()[0])===0}get isLast(){return this.order.indexOf(
String(this.unit().at(-1)))===this.order.length-1}insertedAt(s){let n=this.rest();return[...n.slice(0,s),...this.unit(),
...n.slice(s)]}shifted(s){let n=this.rest(),r=this.order.indexOf(this.unit()[0]),o=!!this.row(this.current)?.run,a=l=>n[s>
0?l:l-1],d=a(r);if(d===void 0)return this.insertedAt(r);let i=this.stages.get(d),c=i!==void 0&&(o||this.closed.has(i));do
r+=s;while(c&&a(r)!==void 0&&this.stages.get(a(r))===i);return this.insertedAt(r)}atPosition(s){return this.insertedAt(Math.
min(s-1,this.order.length-this.unit().length))}beside(s,n){return this.insertedAt(this.rest().indexOf(s)+(n==="after"?1:
0))}gathered(){let s=new Map;for(let n of this.order){let r=this.stages.get(n)??n;s.set(r,[...s.get(r)??[],n])}return[...s.
values()].flat()}dropAt(s,n){let r=s.run?s.run.keys:[s.key],o=s.run&&!this.closed.has(String(s.run.stage));return n&&!o?
{target:String(r.at(-1)),side:"after"}:{target:r[0],side:"before"}}take(s){if(_t(s,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=s,n){let[r]=n.keys,o=this.rows().find(a=>a.run?.
keys.includes(r));this.current=o?o.id:r}return!0}remember(s){this.past.push(s),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(s,n){let r=s.pop();return r?(n.push(this.order),this.order=
r,!0):!1}pickUp(){this.held=this.order}putDown(){let s=this.held;return this.held=null,s===null||_t(s,this.order)?!1:(this.
remember(s),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(s,n){this.order=[...s],n&&([this.past,this.
future]=[[],[]])}toggleBlock(s){this.block.has(s)?this.block.delete(s):this.block.add(s)}blockTo(s){let n=[this.order.indexOf(
this.current),this.order.indexOf(s)].sort((r,o)=>r-o);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(s,n){
let r=s.run?s.run.stage:this.stages.get(s.key),o=s.run?s.run.keys[0]:s.key,a=this.runs().find(d=>d.keys.includes(o));return!r||
!a||a.keys.length<2?null:(n?this.closed.add(r):this.closed.delete(r),n&&(this.current=Ke(a)),r)}sought(s){let n=this.rows(),
r=n.findIndex(d=>d.id===this.current),o=s.length>1?r:r+1,a=d=>(d.run?String(d.run.stage):this.label(d.key)).toLowerCase();
return[...n.slice(o),...n.slice(0,o)].find(d=>a(d).startsWith(s))}};var un=12,pn=700,fn=5,qe=32,hn=8;function ne({label:t,steps:s,order:n,onChange:r}){let o=new se(s,n),{staged:a}=o,d=!1,i={},
c=!1,l=new Map,u=e("div",{"aria-live":"assertive",class:"ts-hidden"}),p=e("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),h=W("Up",()=>_(-1),{"aria-label":"Move the chosen step up"}),b=W("Down",
()=>_(1),{"aria-label":"Move the chosen step down"}),w=W("Undo",()=>o.undo()&&q("Undone")),v=W("Redo",()=>o.redo()&&q("D\
one again")),$=W("Choose several",()=>J(!d),{"aria-pressed":"false"}),T=W("Gather stages",()=>P(o.gathered(),"Steps of o\
ne stage now stand together")),D=e("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move t\
he chosen step to position",onkeydown:B=>{B.key==="Enter"&&K()}}),S=e("select",{class:"ts-box ts-before","aria-label":"M\
ove the chosen step before"}),L=e("span",{class:"ts-chosen"}),C=W("Move",K,{"aria-label":"Move to this position"}),k=W("\
Move",Q,{"aria-label":"Move before this step"}),f=e("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen s\
tep"},h,b,w,v,$,a?T:null),m=e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"To position ",D,C),e("span",{class:"t\
s-pair"},"or before ",S,k)),x="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space pi\
cks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a blo\
ck moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),y=e(
"details",{class:"ts-keys"},e("summary",{},"Keys, and long moves"),e("p",{},x),m),E=e("div",{class:"ts-order"},e("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),f,L,p,y,u);function A(B){u.
textContent=B}function U(B=""){A(`${o.unitName()}${B}, ${o.where()}`)}function O(B){let R=l.get(B.id);if(R)return R;let tt=e(
"li",{role:a?"treeitem":"option",class:"ts-step"});return tt.dataset.row=B.id,l.set(B.id,tt),tt}function M(B=!1){let R=o.
settle(),tt=new Set(R.map(st=>st.id));for(let[st,yt]of l)tt.has(st)||(yt.remove(),l.delete(st));let ut=o.unit(),$t=new Set(
ut),lt=p.firstElementChild;for(let st of R){let yt=O(st);yt===lt?lt=lt.nextElementSibling:p.insertBefore(yt,lt),N(yt,st,
$t)}D.value=String(o.order.indexOf(ut[0])+1);let vt=[...o.order.entries()].filter(([,st])=>!$t.has(st));S.replaceChildren(
...vt.map(([st,yt])=>e("option",{value:yt},`${st+1}  ${o.label(yt)}`))),L.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,
h.disabled=c||o.isFirst,b.disabled=c||o.isLast,w.disabled=c||o.past.length===0,v.disabled=c||o.future.length===0;for(let st of[
$,T,D,S,C,k])st.disabled=c;if(p.setAttribute("aria-disabled",String(c)),p.classList.toggle("ts-long",o.order.length>un),
B){let st=l.get(o.current);st?.focus({preventScroll:!0}),st?.scrollIntoView({block:"nearest"})}}function N(B,R,tt){let ut=R.
id===o.current,$t=R.run?!1:o.block.has(R.key),lt=o.held!==null&&(R.run?ut:tt.has(R.key)),vt=o.order.indexOf(R.run?R.run.
keys[0]:R.key),st=R.run?R.run.keys.map(At=>i[At]?.length??0):i[R.key],yt=R.run?o.closed.has(String(R.run.stage)):!1,Ce=JSON.
stringify([vt,R.level,ut,$t,lt,st,R.run&&[R.run.keys.length,yt]]);if(B.dataset.looks===Ce)return;B.dataset.looks=Ce,B.tabIndex=
ut?0:-1,B.setAttribute("aria-selected",String($t)),B.classList.toggle("ts-current",ut),B.classList.toggle("ts-inblock",$t),
B.classList.toggle("ts-held",lt),B.classList.toggle("ts-level2",R.level===2),a&&B.setAttribute("aria-level",String(R.level));
let Me=lt?" picked up":$t?" in block":"",Ee=Me?e("span",{class:"ts-state"},Me):"",Ae=At=>e("span",{class:"ts-number","ar\
ia-hidden":"true"},At);if(R.run){let{keys:At,stage:en}=R.run;B.setAttribute("aria-expanded",String(!yt));let Te=yt?At.filter(
sn=>i[sn]?.length).length:0;B.replaceChildren(Ae(`${vt+1}–${vt+At.length}`),e("span",{class:"ts-fold","aria-hidden":"t\
rue"},yt?"▸":"▾"),e("span",{class:"ts-what"},e("b",{},en),` ${At.length} steps`,Te?` – ${Te} with a remark`:"",Ee));
return}let Oe=(i[R.key]??[]).map(At=>e("span",{class:`ts-note ts-note-${At.kind}`},Et(At.shape??""),e("b",{},At.word),` ${At.
text}`)),tn=a&&R.level===1;B.classList.toggle("ts-troubled",Oe.length>0),B.replaceChildren(Ae(String(vt+1)),e("span",{class:"\
ts-grip","aria-hidden":"true"},"⠿"),e("span",{class:"ts-what"},o.label(R.key),tn?e("span",{class:"ts-stage"},` ${o.stages.
get(R.key)??""}`):"",Ee,...Oe))}let g=()=>r([...o.order]);function P(B,R){if(!o.take(B)){A(`${o.unitName()} stays at ${o.
where()}`);return}M(!0),R?A(R):U(),o.held===null&&g()}function _(B){c||P(o.shifted(B))}function K(){if(c)return;let B=Number.
parseInt(D.value,10),R=o.order.length;B>=1&&B<=R?P(o.atPosition(B)):(A(`Type a position from 1 to ${R}`),L.textContent=`\
Type a position from 1 to ${R}.`)}function Q(){!c&&S.value&&P(o.beside(S.value,"before"))}function q(B){M(),A(`${B}. ${o.
unitName()}, ${o.where()}`),g()}function H(){o.pickUp(),M(!0),U(" picked up")}function F(){o.putDown()&&g(),M(!0),U(" pu\
t down")}function z(){o.putDown()&&g(),M()}function et(){o.putBack(),M(!0),U(" put back")}function J(B){d=B,$.setAttribute(
"aria-pressed",String(B)),B||(o.block=new Set),M(),A(B?"Choose the steps of a block":"Block let go")}function ot(B){o.toggleBlock(
B);let R=o.block.has(B)?"in the block":"out of the block";A(`${o.label(B)} ${R}, ${o.block.size} in it`)}function V(B,R){
let tt=o.fold(B,R);tt&&(M(!0),A(`${tt} ${R?"closed":"open"}`))}p.addEventListener("keydown",B=>{if(bt(B))return;let R=o.
rows(),tt=R.findIndex(yt=>yt.id===o.current),ut=yt=>{o.current=R[Math.max(0,Math.min(R.length-1,yt))].id,M(!0)},$t=R[tt],
{key:lt}=B,vt=lt==="ArrowUp"?-1:lt==="ArrowDown"?1:null,st=o.held!==null;if(vt&&(B.shiftKey||st))_(vt);else if(vt)ut(tt+
vt);else if(st&&lt==="Escape")et();else if(lt===" ")c||(st?F:H)();else if(st&&lt==="Enter")F();else if(lt==="Enter"&&!$t.
run)c||(ot($t.key),M(!0));else if(lt==="Home"&&!st)ut(0);else if(lt==="End"&&!st)ut(R.length-1);else if(a&&lt==="ArrowLe\
ft")V($t,!0);else if(a&&lt==="ArrowRight")V($t,!1);else if(lt.length===1&&!st)I(lt);else return;B.preventDefault()});let it="",
mt;function I(B){it+=B.toLowerCase(),clearTimeout(mt),mt=window.setTimeout(()=>{it=""},pn);let R=o.sought(it);R&&(o.current=
R.id,M(!0))}p.addEventListener("focusout",({relatedTarget:B})=>{o.held!==null&&B instanceof Node&&!p.contains(B)&&z()});
let G=null;p.addEventListener("pointerdown",B=>{let R=o.row(xt(B,".ts-step")?.dataset.row??"");if(!R||B.button!==0)return;
if(R.run&&xt(B,".ts-fold")){V(R,!o.closed.has(String(R.run.stage))),B.preventDefault();return}let tt=xt(B,".ts-grip, .ts\
-number"),ut=B.ctrlKey||B.metaKey;o.held!==null&&z(),!R.run&&!c&&(B.shiftKey?o.blockTo(R.key):(ut||d)&&!tt&&ot(R.key)),o.
current=R.id,M(!0),B.preventDefault(),!(c||B.shiftKey||ut)&&(B.pointerType!=="mouse"&&!tt||(G={x:B.clientX,y:B.clientY,id:B.
pointerId,carried:null},p.setPointerCapture(B.pointerId)))}),p.addEventListener("pointermove",B=>{if(!G||B.pointerId!==G.
id)return;let{clientX:R,clientY:tt}=B;if(!G.carried){if(Math.hypot(R-G.x,tt-G.y)<fn)return;G.carried=ct()}Object.assign(
G.carried,{x:R,y:tt}),dt(G.carried)});function ct(){let B=e("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},o.unit().
length>1?o.unitName():o.label(o.unit()[0]));document.body.append(B);let R=e("div",{class:"ts-line","aria-hidden":"true"});
p.append(R),p.classList.add("ts-dragging");for(let tt of o.unit())l.get(tt)?.classList.add("ts-lifted");return{ghost:B,line:R,
timer:requestAnimationFrame(wt),x:0,y:0,drop:null}}function dt(B){B.ghost.style.transform=`translate(${B.x+12}px, ${B.y+
8}px)`;let tt=o.rows().map(vt=>{let st=O(vt).getBoundingClientRect();return{row:vt,box:st,offset:B.y-(st.top+st.height/2)}}).
reduce((vt,st)=>Math.abs(st.offset)<Math.abs(vt.offset)?st:vt),ut=tt.offset>0;B.drop=o.dropAt(tt.row,ut);let lt=(ut?tt.box.
bottom:tt.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;B.line.style.top=`${lt}px`}function wt(){let B=G?.carried;
if(B){for(let R of[p,Ie(p)]){let ut=R===document.scrollingElement?{top:0,bottom:innerHeight}:R.getBoundingClientRect(),$t=B.
y<ut.top+qe?-1:B.y>ut.bottom-qe?1:0;if(!$t)continue;let lt=R.scrollTop;if(R.scrollTop+=$t*hn,R.scrollTop!==lt){dt(B);break}}
B.timer=requestAnimationFrame(wt)}}function kt(B){let R=G?.carried;if(G=null,!R)return;cancelAnimationFrame(R.timer),R.ghost.
remove(),R.line.remove(),p.classList.remove("ts-dragging");for(let ut of l.values())ut.classList.remove("ts-lifted");let{
drop:tt}=R;if(!B||!tt||o.unit().includes(tt.target)){M(!0),A(`${o.unitName()} stays at ${o.where()}`);return}P(o.beside(
tt.target,tt.side))}return p.addEventListener("pointerup",()=>kt(!0)),p.addEventListener("pointercancel",()=>kt(!1)),E.addEventListener(
"keydown",B=>{!G?.carried||B.key!=="Escape"||(kt(!1),B.stopPropagation())}),M(),{element:E,tools:f,order:()=>[...o.order],
change:(B,R)=>{c||P(B,R)},setOrder(B,R=!1){o.held!==null||G?.carried||_t(B,o.order)||(o.set(B,R),M())},setNotes(B){i=B??
{},M()},setDisabled(B){c=B,M()}}}gt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,s,n){let r=t.
steps.map(([a])=>a),o=ne({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
Fe(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function Ue(t,s,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[d,i]of t.entries()){let[c,l]=s[i]??[null,null];c!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[c??r[0],l??(c===null?r[1]:0)];let u=n(...r);o.push(u);let p=a.get(u.join(" "))??{at:u,numbers:[]};
p.numbers.push(d+1),a.set(u.join(" "),p)}return{points:o,stops:[...a.values()]}}function We(t,s,n){let r=s>=0&&s<t.length-
1?s+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function ze(t,s){return t.filter((n,r)=>r!==s)}function Ge(t,s,n){
let r=s+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[s],o[r]]=[o[r],o[s]],o}var be=9,Ye=.7*be,we=44;function gn(t){let s=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-s)*be+2*we,
d=(o-r)*Ye+2*we,i=(w,v)=>[we+(w-s)*be,d/2-(v-(r+o)/2)*Ye],c=t.gates.map(w=>`M${i(w,r).join(" ")}L${i(w,o).join(" ")}`),l=`\
M${i(s,0).join(" ")}L${i(n,0).join(" ")}`,u=t.gears.map(([w,v,$])=>{let[T,D]=i(v,$),S={x:T,y:D+($>0?-20:30)};return j("t\
ext",{...S,class:"tsp-gear","text-anchor":"middle"},w)}),p=j("polyline",{class:"tsp-line",points:""}),h=j("g");return{element:j(
"svg",{viewBox:`0 0 ${a} ${d}`,width:a,height:d,class:"ts-gateplan","aria-hidden":"true"},j("path",{d:[...c,l].join(""),
class:"tsp-slot"}),...u,p,h),show(w){let{points:v,stops:$}=Ue(w,t.aims,i),[[T,D]]=v;p.setAttribute("points",v.map(S=>S.join(
",")).join(" ")),h.replaceChildren(j("circle",{cx:T,cy:D,r:4,class:"tsp-start"}),...$.map(({at:[S,L],numbers:C})=>j("g",
{},j("circle",{cx:S,cy:L,r:3.5,class:"tsp-stop"}),j("text",{x:S+7,y:L-5,class:"tsp-number"},C.join(", ")))))}}}function Ve({
label:t,moves:s,plan:n,most:r,onChange:o}){let a=new Map(s),d=E=>a.get(E)??E,i=[],c=-1,l=!1,u=n?gn(n):null,p=e("ol",{class:"\
ts-pathlist","aria-label":t}),h=e("p",{class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),
b=e("p",{class:"ts-hidden",role:"status"}),w=s.map(([E,A])=>W(A,()=>L(E))),v=W("Take back the last move",()=>{i.length&&
C(i.length-1)}),$=W("Take back all",()=>{i.length&&S([],"No moves left")}),T=e("span",{class:"ts-hint"}),D=e("div",{class:"\
ts-path"},e("div",{class:"ts-tools ts-moves",role:"group","aria-label":"Add a move"},...w),e("div",{class:"ts-path-both"},
e("div",{class:"ts-path-words"},h,p,e("div",{class:"ts-tools"},v,$,T)),u&&e("div",{class:"ts-path-picture"},u.element)),
u&&e("p",{class:"ts-hint"},"The line shows where each move aims. Whether the lever gets there is what the test finds out\
."),b);function S(E,A){l||(i=E,y(),b.textContent=A,o([...i]))}function L(E){if(i.length>=r){b.textContent=`${r} moves ar\
e the most here`;return}let{moves:A,place:U}=We(i,c,E);c=U,S(A,`Move ${U+1}: ${d(E)}`)}function C(E){let A=d(i[E]);c=Math.
min(c,i.length-2),S(ze(i,E),`Taken back: ${A}`)}function k(E,A){let U=Ge(i,E,A);U&&(c=E+A,S(U,`${d(U[c])}, move ${c+1} o\
f ${i.length}`),m(c))}function f(E){return p.children[E]?.querySelector(".ts-path-move")}function m(E){let A=f(E);return A instanceof
HTMLElement&&A.focus(),!!A}function x(E,A){let U=e("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${A+1}: ${d(
E)}`},d(E)),O=e("button",{type:"button",class:"ts-path-off","aria-label":`Take back move ${A+1}`,onclick:()=>C(A)},"×"),
M=e("li",{},U,O);return M.classList.toggle("ts-current",A===c),U.addEventListener("focus",()=>{c=A;for(let N of p.children)
N.classList.toggle("ts-current",N===M)}),U.addEventListener("keydown",N=>{if(bt(N))return;let g=N.key==="ArrowUp"?-1:N.key===
"ArrowDown"?1:null;if(g&&N.shiftKey)k(A,g);else if(g)m(A+g);else if(N.key==="Delete"||N.key==="Backspace")C(A),m(Math.min(
A,i.length-1))||w[0].focus();else return;N.preventDefault()}),O.disabled=l,M}function y(){p.replaceChildren(...i.map(x)),
h.hidden=i.length>0,T.textContent=`${i.length} of at most ${r} moves`;for(let E of w)E.disabled=l||i.length>=r;v.disabled=
$.disabled=l||i.length===0,u?.show(i)}return y(),{element:D,setMoves(E){_t(E,i)||(i=[...E],c=-1,y())},setDisabled(E){l=E,
y()}}}gt("path",{prompt:"words",make(t,s,n){let r=Ve({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});function Xe(t,s,n){let r=t.indexOf(n);return[...t.slice(r+1),...t.slice(0,r)].find(a=>!s.get(a))??n}function Je(t,s,n){let r=t.
find(({key:c})=>c===s);if(!r)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let o={ArrowRight:1,
ArrowLeft:-1}[n];if(o!==void 0){let c=[...t].sort((u,p)=>u.x-p.x||u.y-p.y),l=c.findIndex(({key:u})=>u===s)+o;return c[(l+
c.length)%c.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let d=c=>Math.abs(c.y-r.y)+2*Math.abs(c.x-
r.x),[i]=t.filter(({key:c,y:l})=>c!==s&&(l-r.y)*a>2).sort((c,l)=>d(c)-d(l));return(i??r).key}function Kt(t,s,n,r){let o=t.lines,a=t.options,d=o.map(([p])=>p),i=d[0],c=o.map(([p,h],b)=>{let w=`${s.control}-${b}`,v=e(
"label",{class:"ts-each-line",for:w},h),$=St({id:w,"aria-describedby":s.status},[["","choose"],...a]),T=e("input",{type:"\
radio",name:`${s.control}-active`,"aria-label":`Point in the picture for: ${h}`,checked:b===0}),D=e("li",{},d.length>1?T:
null,v,$);return T.addEventListener("change",()=>{i=p}),$.addEventListener("change",()=>{i=p,u()}),{key:p,box:$,mark:T,row:D}}),
l=()=>new Map(c.map(({key:p,box:h})=>[p,h.value]));function u(){let p=l();r(p),n(Xt([...p]))}return{element:e("ol",{class:"\
ts-each ts-pointed"},...c.map(({row:p})=>p)),active:()=>i,answers:l,press(p){let h=c.find(({key:b})=>b===i);if(!(!h||h.box.
disabled)){h.box.value=p,u(),i=Xe(d,l(),i);for(let{key:b,mark:w}of c)w.checked=b===i}},put(p,h){let b=c.find(({key:w})=>w===
p);!b||b.box.disabled||(b.box.value=h,u())},show(p){let h=Jt(p.value);for(let{key:b,box:w}of c)w.value=h.get(b)??"";r(l())},
setDisabled(p){for(let{box:h,mark:b}of c)h.disabled=p,b.disabled=p}}}function oe(t,s,n){let r=e("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});r.innerHTML=t;let o=r.querySelector(
"svg");o.setAttribute("role","group");let a=new Map(X(o,"[data-mark]").map(l=>[String(l.dataset.mark),l])),d=new Map(s);
for(let[l,u]of a)u.setAttribute("role","button"),u.setAttribute("tabindex",l===s[0][0]?"0":"-1"),u.setAttribute("aria-la\
bel",`${l}: ${d.get(l)??""}`);let i=l=>xt(l,"[data-mark]")?.dataset.mark??xt(l,"[data-spot]")?.dataset.spot;r.addEventListener(
"click",l=>{let u=i(l);u&&n(u)});for(let[l,u]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])r.addEventListener(
l,p=>{let h=i(p);h&&c(h,u)});function c(l,u){for(let p of X(o,`[data-spot="${l}"]`))p.classList.toggle("tss-near",u)}return r.
addEventListener("keydown",l=>{let u=xt(l,"[data-mark]")?.dataset.mark;if(u){if(l.key==="Enter"||l.key===" ")n(u);else{let p=[
...a].map(([b,w])=>{let v=w.querySelector(".tss-dot");return{key:b,x:v.cx.baseVal.value,y:v.cy.baseVal.value}}),h=Je(p,u,
l.key);if(h===void 0)return;a.get(u)?.setAttribute("tabindex","-1"),a.get(h)?.setAttribute("tabindex","0"),a.get(h)?.focus()}
l.preventDefault()}}),{element:r,drawing:o,choose(l){let u=new Set(l);for(let[p,h]of a)h.classList.toggle("tss-chosen",u.
has(p)),h.setAttribute("aria-pressed",String(u.has(p)));for(let p of X(o,"[data-spot]"))p.classList.toggle("tss-on",u.has(
String(p.dataset.spot)))}}}gt("picture",{prompt:"legend",make(t,s,n){let r=t.options,o=Kt(t,s,n,i=>{let c=new Set(i.values());for(let{letter:l,card:u}of a)
u.classList.toggle("ts-on",c.has(l))}),a=r.map(([i,c])=>{let l=e("div",{class:"ts-picture-card",onclick:()=>o.press(i)});
return l.innerHTML=t.svgs[i],l.querySelector("svg")?.setAttribute("aria-label",c),l.prepend(e("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:l}}),d=e("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:e("div",{},o.element,
d),show:o.show,setDisabled:o.setDisabled,refused(){}}}});gt("point",{prompt:"legend",make(t,s,n){let r=Kt(t,s,n,i=>d.choose(i.values())),a=t.options.map(([i,c])=>[i,c.slice(i.length+
2)]),d=oe(t.svg,a,r.press);return{element:e("div",{},r.element,d.element),show:r.show,setDisabled:r.setDisabled,refused(){}}}});gt("put",{prompt:"legend",make(t,s,n){let r=t.lines,o=new Map(r.map(([u])=>[u,"1"])),a=Kt(t,s,n,u=>{for(let[p,h]of u)h&&
o.set(p,h.split("-")[1]);d.choose([...u.values()].map(p=>p.split("-")[0])),c(u)}),d=oe(t.svg,t.places,u=>{a.press(`${u}-${o.
get(a.active())}`)}),i=j("g",{class:"tss-placed"});d.drawing.append(i);function c(u){i.replaceChildren();for(let[p,h]of u){
let[b,w]=h.split("-"),v=t.at[b];if(!v)continue;let $=j("g",{transform:`translate(${v[0]} ${v[1]})`});$.innerHTML=t.pieces[p][Number(
w)-1][1],i.append($)}for(let{part:p,show:h}of l)h(o.get(p)??"1")}let l=r.map(([u,p])=>{let h=e("div",{class:"ts-tray-par\
t"}),b=e("span",{class:"ts-hint",role:"status"}),w=nt("Turn it",()=>{let T=o.get(u)==="1"?"2":"1";o.set(u,T),v(T);let D=a.
answers().get(u);D&&a.put(u,`${D.split("-")[0]}-${T}`)},`Turn it: ${p}`);function v(T){let[D,S]=t.pieces[u][Number(T)-1],
L=Number(/data-half="([\d.]+)"/.exec(S)?.[1]??90);h.innerHTML=`<svg viewBox="${-L} ${-L} ${2*L} ${2*L}" width="120" heig\
ht="120" aria-hidden="true">${S}</svg>`,b.textContent=`Way ${T}: ${D}`}let $=e("div",{class:"ts-tray"},h,e("div",{},p,b,
w));return{part:u,row:$,show:v,turn:w}});return{element:e("div",{},e("div",{class:"ts-trays"},...l.map(({row:u})=>u)),a.
element,d.element),show:a.show,setDisabled(u){a.setDisabled(u);for(let{turn:p}of l)p.disabled=u},refused(){}}}});var mn="No line to the course just now. Go on with the questions: what you enter is kept in this browser and sent when t\
he line is back. Simulators stand still until then.",wn="The line to the course is back.",bn=1500,kn=5e3,ve=new Set,Bt=null,
ke;function Ze(t){Bt??=e("p",{class:"twoshaft ts-line-bar",role:"status"}),Bt.isConnected||document.body.append(Bt),Bt.textContent=
t}function vn(){Bt?.remove(),Bt=null}function Qe(){clearTimeout(ke),ve.size?ke=window.setTimeout(()=>Ze(mn),Bt?0:bn):Bt&&
(Ze(wn),ke=window.setTimeout(vn,kn))}var ts=t=>({down(){ve.add(t),Qe()},up(){ve.delete(t),Qe()}});var yn=1e3,xn="input, button, select, textarea, summary, a, [tabindex]";function $n(t){let s=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:d,
keyCode:i,ctrlKey:c,metaKey:l}=o,u={key:a,code:d,keyCode:i,ctrlKey:c,metaKey:l,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",u))};t.addEventListener("keydown",s),t.addEventListener("keyup",s),t.addEventListener(
"keypress",s);let n=()=>{for(let o of t.querySelectorAll(xn))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function Sn(t,s,n){let r=t.widget_manager?.kernel,o=(d,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&s()},a=(d,i)=>{i==="disconnected"?s():n(i==="connecting")};return t.on("comm_live_update",s),r?.statusChanged?.
connect(o),r?.connectionStatusChanged?.connect(a),r?.disposed?.connect(s),()=>{t.off("comm_live_update",s),r?.statusChanged?.
disconnect(o),r?.connectionStatusChanged?.disconnect(a),r?.disposed?.disconnect(s)}}var es=`.twoshaft {
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
-accent)}.twoshaft-desk .ts-said:not(:empty){border-left:3px solid var(--ts-accent);padding:var(--ts-grid);background:va\
r(--ts-faint)}.twoshaft-desk :is(.ts-said,.ts-alert){white-space:pre-line;max-width:none}.twoshaft-desk .ts-busy{display\
:flex;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-desk-body[aria-busy=true]{cursor:progress}.twoshaft-desk \
.ts-desk-body>*{margin-top:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-caption{display:flex;flex-wrap:wrap;align-it\
ems:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:calc(var(--ts-grid) / 2)}.twoshaft-desk .ts-de\
sk-scroll{max-height:360px;overflow:auto;border:1px solid var(--ts-line)}.twoshaft-desk .ts-table{border-collapse:collap\
se;margin:0;min-width:100%;font-size:var(--ts-text)}.twoshaft-desk .ts-table :is(th,td){text-align:left;vertical-align:t\
op;white-space:normal;padding:calc(var(--ts-grid) / 2) var(--ts-grid);border:0;border-bottom:1px solid var(--ts-line);ba\
ckground:none;max-width:28em;font-weight:400;overflow-wrap:break-word}.twoshaft-desk .ts-table tbody th{position:sticky;\
left:0;background:var(--ts-paper)}.twoshaft-desk .ts-table thead th{position:sticky;top:0;z-index:1;background:var(--ts-\
paper);box-shadow:inset 0 -1px var(--ts-line);white-space:nowrap}.twoshaft-desk .ts-table .ts-figure{text-align:right;fo\
nt-variant-numeric:tabular-nums}.twoshaft-desk .ts-table .ts-tick{width:24px}.twoshaft-desk input[type=checkbox]{width:1\
8px;height:18px;accent-color:var(--ts-accent)}.twoshaft-desk :is(.ts-sort,.ts-cell){min-height:24px;min-width:24px;paddi\
ng:0;border:0;background:none;color:var(--ts-accent);font:inherit;text-align:inherit;cursor:pointer}.twoshaft-desk .ts-s\
ort{font-weight:600}.twoshaft-desk .ts-cell{text-decoration:underline}.twoshaft-desk .ts-desk-form{display:grid;gap:var(\
--ts-grid);justify-items:start;padding-top:var(--ts-grid);border-top:1px solid var(--ts-line)}.twoshaft-desk .ts-desk-fo\
rm>*{min-width:0;max-width:100%}.twoshaft-desk .ts-desk-fields{display:flex;flex-wrap:wrap;align-items:flex-start;gap:va\
r(--ts-grid) calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-field{display:grid;grid-template-columns:minmax(0,auto);ga\
p:calc(var(--ts-grid) / 2);max-width:100%}.twoshaft-desk .ts-desk-field>label:not(.ts-option){font-weight:600}.twoshaft-\
desk .ts-desk-field .ts-box{width:18em;max-width:100%}.twoshaft-desk textarea.ts-box{width:30em;padding:var(--ts-grid)}.\
twoshaft-desk .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-question{bo\
rder:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk a.ts-link:is(:link,:visited,:hover,:focus\
,:active){color:var(--ts-accent);text-decoration:underline}.twoshaft-desk :is(textarea,a,h2,.ts-desk-scroll):focus-visib\
le{outline:3px solid var(--ts-accent);outline-offset:2px}@media(forced-colors:active){.twoshaft-desk .ts-button[aria-cur\
rent=page]{border-color:Highlight}.twoshaft-desk .ts-first{border-width:2px;font-weight:700}.twoshaft-desk .ts-said:not(\
:empty){border:1px solid CanvasText}}.twoshaft .tsj-bench{display:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align\
-items:flex-start;margin-top:var(--ts-grid)}.twoshaft .tsj-bench svg{display:block;max-width:100%;height:auto}.twoshaft \
.tsj-bolt{cursor:pointer}.twoshaft .tsj-bolt:focus{outline:none}.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts\
-accent);stroke-width:4}.twoshaft .tsj-bolt.tsj-started circle{stroke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:\
var(--ts-ink)}.twoshaft .tsj-bolt.tsj-tight text{fill:var(--ts-paper)}.twoshaft .tsj-slide{display:inline-flex;align-ite\
ms:center;gap:var(--ts-grid)}.twoshaft .tsj-slide input{width:180px;max-width:40vw;accent-color:var(--ts-accent);min-hei\
ght:var(--ts-target)}.twoshaft .tsj-figure{min-width:8ch;font-variant-numeric:tabular-nums;font-weight:600}.twoshaft .ts\
j-happened{min-height:3em;margin-top:var(--ts-grid)}.twoshaft .tsj-check{display:inline-flex;align-items:center;gap:var(\
--ts-grid);min-height:var(--ts-target)}.twoshaft .tsj-check input{width:18px;height:18px;accent-color:var(--ts-accent)}.\
twoshaft .tsj-settings{display:grid;grid-template-columns:max-content minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));ali\
gn-items:center;max-width:calc(var(--ts-width) + 12ch);margin:var(--ts-grid) 0}.twoshaft .tsj-settings>label{font-weight\
:600}.twoshaft .tsj-band svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-settings select{max-width:100%}.two\
shaft .tsj-slide{max-width:100%;flex-wrap:wrap}@media(max-width:700px){.twoshaft .tsj-settings{grid-template-columns:min\
max(0,1fr)}}.twoshaft table.tsk-board{border-collapse:collapse;font:var(--ts-text) var(--ts-font);color:var(--ts-ink)}.t\
woshaft table.tsk-board caption{text-align:left;font-weight:600;padding:4px 0}.twoshaft table.tsk-board th,.twoshaft tab\
le.tsk-board td{text-align:left;vertical-align:middle;padding:4px 12px 4px 0;border-bottom:1px solid var(--ts-line);back\
ground:none;font-weight:400}.twoshaft table.tsk-board thead th{font-weight:600}.twoshaft table.tsk-board tbody th{min-wi\
dth:18ch;max-width:34ch;white-space:normal}.twoshaft table.tsk-board .tsk-number{text-align:right;font-variant-numeric:t\
abular-nums;white-space:nowrap}.twoshaft table.tsk-board select{max-width:44ch}.twoshaft table.tsk-board .tsk-best td,.t\
woshaft table.tsk-board .tsk-best th{font-weight:600;border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board \
.tsk-failed{font-weight:600}.twoshaft .tsk-shown{min-width:24ch}.twoshaft .tsk-spent,.twoshaft .tsk-more{margin:var(--ts\
-grid) 0}@media(max-width:700px){.twoshaft table.tsk-board,.twoshaft table.tsk-board tbody,.twoshaft table.tsk-board tr,\
.twoshaft table.tsk-board caption{display:block}.twoshaft table.tsk-board thead{position:absolute;width:1px;height:1px;o\
verflow:hidden;clip-path:inset(50%)}.twoshaft table.tsk-board tr{border-bottom:1px solid var(--ts-line);padding:var(--ts\
-grid) 0}.twoshaft table.tsk-board tbody th,.twoshaft table.tsk-board tbody td,.twoshaft table.tsk-board tbody .tsk-numb\
er{display:block;border:0;max-width:none;min-width:0;padding:2px 0;text-align:left;white-space:normal}.twoshaft table.ts\
k-board tbody .tsk-best th,.twoshaft table.tsk-board tbody .tsk-best td{border:0}.twoshaft table.tsk-board tbody .tsk-be\
st{border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board tbody th{font-weight:600}.twoshaft table.tsk-board\
 td[data-label]:before{content:attr(data-label) ": ";color:var(--ts-quiet)}.twoshaft table.tsk-board td:empty{display:no\
ne!important}.twoshaft table.tsk-board select{max-width:100%}}.twoshaft .ts-gate{cursor:default;touch-action:pan-y;paddi\
ng:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none}.twoshaft .ts-pulling,.twoshaft .ts-pulling .tsg-pane\
l{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accent)}.twoshaft .ts-gate svg{user-select:none}.twoshaft .\
ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-happened.ts-stopped,.twoshaft .ts-log .ts-stopped{fo\
nt-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;padding-left:calc(4 * var(--ts-grid));max-width:calc(va\
r(--ts-width) + 12ch)}.twoshaft .ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width\
) + 12ch);font-weight:600}.twoshaft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:focus-visible{outline-offse\
t:-3px}.twoshaft .tsw-train svg{user-select:none}.twoshaft .tsw-counts{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts\
-grid));margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-template-columns:104px 1fr;\
column-gap:var(--ts-grid);align-items:center;width:268px;padding:4px;border:1px solid var(--ts-line);border-radius:2px;t\
ext-align:left;font-size:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:3px}.tw\
oshaft .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-dial{grid-c\
olumn:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:104px;height:104px;touch-ac\
tion:none;cursor:grab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var(--ts-fai\
nt);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.two\
shaft .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-tick{s\
troke:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:15px var(--ts-\
font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{min-height:1.5em;font-family:monospace;font-size:var(\
--ts-text);letter-spacing:1px;overflow-wrap:anywhere;max-height:4.5em;overflow-y:auto}.twoshaft .tsw-figure{min-height:1\
.5em;font-variant-numeric:tabular-nums}.twoshaft .tsw-figure:empty{min-height:0}.twoshaft .tsw-happened{min-height:1.5em\
}.twoshaft .tsh-picture{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{display:block;width:100%;min-\
width:720px;max-width:1100px;height:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-place:focus{outline:none}.tw\
oshaft .tsh-place:hover .tsh-hit{stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chos\
en:hover .tsh-hit{stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-acc\
ent);stroke-width:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:3px solid var(--ts-accen\
t);padding-left:calc(1.5 * var(--ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.\
twoshaft .tsh-verdict{margin-top:var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-s\
liders{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));mar\
gin:var(--ts-grid) 0;max-width:960px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em minmax(6em,1fr) 4em;alig\
n-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsl-row input{width:100%;accent-color:var(--ts-\
accent);margin:0;min-height:24px}.twoshaft .tsl-row .ts-box{justify-self:start}.twoshaft .tsl-figure{font-variant-numeri\
c:tabular-nums;text-align:right}.twoshaft .tsl-drawing{overflow-x:auto}.twoshaft .tsl-drawing svg{display:block;width:10\
0%;min-width:600px;max-width:820px;height:auto}.twoshaft .tsl-sum{font-variant-numeric:tabular-nums;margin:var(--ts-grid\
) 0}@media(max-width:480px){.twoshaft .tsl-sliders{grid-template-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;f\
lex-wrap:wrap;min-width:0}.twoshaft .tsl-row input{max-width:100%}}.twoshaft .tsp-section{overflow-x:auto}.twoshaft .tsp\
-gauge{width:220px;height:200px;flex:none}.twoshaft .tsp-section svg{display:block;max-width:100%;height:auto;min-width:\
320px}.twoshaft .ts-pair[hidden]{display:none}.twoshaft .ts-cells{position:absolute;pointer-events:none}.twoshaft .tsp-l\
and.tsp-clear{fill:none}.twoshaft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-way{fill\
:none;stroke:var(--ts-bad);stroke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:var(--ts-ink);stroke:var(-\
-ts-paper);stroke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp-shut .t\
sp-chosen{display:none}.twoshaft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-grid));font-size:var(-\
-ts-small);min-height:1.6em}.twoshaft .ts-key{display:inline-flex;align-items:center;gap:4px}.twoshaft .ts-swatch{width:\
25px;height:15px;border:1px solid var(--ts-line)}.twoshaft .ts-range{accent-color:var(--ts-accent);min-height:24px}.twos\
haft .ts-clock{min-width:6em;font-weight:600}.twoshaft .ts-unit{overflow:auto;max-height:620px;border:1px solid var(--ts\
-line);margin:var(--ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:block;max-width:none;m\
ax-height:none}.twoshaft .ts-unit [data-part]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pi\
tch,.tsu-line){stroke:var(--ts-accent);stroke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-unit [data-part]:hover pat\
h:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible{outline:3px solid var(-\
-ts-accent);outline-offset:-3px}.twoshaft .ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twosha\
ft .ts-unit-words p{max-width:var(--ts-width)}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sentences[hidden]{display:none}\
.twoshaft .ts-told{min-height:2em;max-height:9em;overflow-y:auto}.twoshaft .ts-build{display:grid;grid-template-columns:\
minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));align-items:start}.twoshaft .ts-buildlist{display:grid;gap:\
4px;max-height:22rem;overflow-y:auto;padding:4px}.twoshaft .ts-buildstep{text-align:left;padding-block:2px;min-height:28\
px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var(--ts-line)}.twoshaft .ts-buildstep-waits{border-s\
tyle:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-current]{background:var(--ts-acce\
nt);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand{border:1px solid var(--ts-lin\
e);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twoshaft .ts-hand .ts-field{border:0;margin:var(--ts-grid) 0\
;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do{text-align:left;padding-block:4px}.twoshaft .ts-ca\
ution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid);font-size:var(--ts-small)}.twoshaft .ts-record ta\
ble{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.twoshaft .ts-record caption{text-align:left;font-weig\
ht:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align:top;padding:3px 16px 3px 0;border-bottom:1px solid\
 var(--ts-line);background:none;white-space:normal}.twoshaft .ts-record .ts-blank{min-width:12em;height:2em}@media(max-w\
idth:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,1fr)}.twoshaft .ts-buildlist,.twoshaft .ts-hand{max-heigh\
t:none}}@media(forced-colors:active){.twoshaft .ts-button[aria-pressed=true],.twoshaft .ts-buildstep[aria-current],.twos\
haft .ts-held{forced-color-adjust:none;background:Highlight;border-color:Highlight;color:HighlightText}.twoshaft :is(.ts\
-step,.ts-pathlist li):not(.ts-current,.ts-inblock){border-left-color:Canvas}.twoshaft :is(.ts-step,.ts-pathlist li).ts-\
current{border-left-color:Highlight}.twoshaft-bar .ts-tasks a:not([aria-current]){border-bottom-color:Canvas}}`,ss="twos\
haft-styles";function Ln(){let t=document.getElementById(ss);t?.textContent!==es&&(t?.remove(),document.head.append(e("s\
tyle",{id:ss},es)))}function Y({model:t,el:s},{kind:n,lost:r=()=>Gt(s),line:o=()=>{}}){Ln(),s.classList.add("twoshaft","\
twoshaft-live",`twoshaft-${n}`);let a=e("p",{class:"ts-alert",role:"alert"}),d=ts(s),i=()=>s.classList.contains("ts-lost"),
c=[],u=Sn(t,()=>{i()||(s.classList.add("ts-lost"),d.down(),r())},w=>{i()||(w?d.down():d.up(),o(w))}),p=$n(s),h,b=(w,v)=>{
t.on(w,v),c.push([w,v])};return b("msg:custom",w=>{w.type==="trouble"&&!i()&&(a.textContent=w.reason)}),{alert:a,follow:b,
isLost:i,send(w){i()||(t.send(w),clearTimeout(h),h=window.setTimeout(()=>t.send({type:"rest"}),yn))},show:(...w)=>s.replaceChildren(
...It(w)),close(){d.up(),clearTimeout(h),p(),u();for(let[w,v]of c)t.off(w,v)}}}function ns({model:t,el:s}){let n=Y({model:t,el:s},{kind:"rig",lost:()=>c.setDisabled(!0)}),r=e("p",{class:"ts-finding",
role:"status"}),o=e("p",{class:"ts-cost"}),a=t.get("start"),d=null,i=p=>{d=Z("order"),n.send({type:"order",order:p,turn:d})},
c=ne({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),l=e("button",{type:"\
button",class:"ts-button",onclick:()=>c.change([...a],"The first order stands again")},"Start again");c.tools.append(l),
n.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),n.alert,r,o,c.element);function u(){let p=t.
get("judged");d!==null&&p.turn!==d||(d=null,r.textContent=p.finding,o.textContent=p.cost,c.setOrder(p.order),c.setNotes(
p.notes))}return n.follow("change:judged",u),u(),n.close}var Cn=["lit","bench","absent"],os=[1,1.5,2,3,4.5];function re({svg:t,parts:s,words:n}){let r=e("div",{class:"ts-unit",tabindex:"\
0",role:"application","aria-label":"The unit in section. Left and right arrows walk from part to part, up and down to th\
e part above or below, plus and minus zoom."});r.innerHTML=t;let o=r.querySelector("svg"),a=o.querySelector(".tsu-marks");
o.setAttribute("aria-hidden","true"),o.removeAttribute("role");let d=new Map(s.map(([m])=>[m,[]]));for(let m of X(o,"[da\
ta-part]"))d.get(String(m.dataset.part))?.push(m);let i=new Map(s.map(([m],x)=>[m,x])),c=e("p",{class:"ts-hint ts-unit-n\
ame",role:"status"}),l=St({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],...s.map(([m,x])=>[m,x])]),
u=-1,p=0,h={},b=m=>{let x=h[m];return x==="absent"?" Not there yet.":x==="bench"?" On the bench.":x==="lit"?" In hand.":
""},w=m=>`${s[m][1]}. ${s[m][2]}${b(s[m][0])}`;function v(m){for(let y of X(o,".tsu-chosen"))y.classList.remove("tsu-cho\
sen");u=m;let x=m<0?"":s[m][0];l.value=x,c.textContent=m<0?C:w(m);for(let y of d.get(x)??[])y.classList.add("tsu-chosen");
m>=0&&T(x)}function $(m){let x=(d.get(m)??[]).map(O=>O.getBBox()),y=Math.min(...x.map(O=>O.x)),E=Math.max(...x.map(O=>O.
x+O.width)),A=Math.min(...x.map(O=>O.y)),U=Math.max(...x.map(O=>O.y+O.height));return{x:(y+E)/2,y:(A+U)/2}}function T(m){
let x=$(m),y=o.getBoundingClientRect().width/o.viewBox.baseVal.width,[E,A]=[x.x*y,x.y*y],{scrollLeft:U,scrollTop:O,clientWidth:M,
clientHeight:N}=r;(E<U+40||E>U+M-40)&&(r.scrollLeft=E-M/2),(A<O+40||A>O+N-40)&&(r.scrollTop=A-N/2)}function D(m){p=Math.
max(0,Math.min(os.length-1,p+m)),o.style.width=`${100*os[p]}%`,o.style.height="auto",u>=0&&T(s[u][0])}function S(m){let x=$(
s[u][0]),[y]=s.map(([E],A)=>({k:A,at:$(E)})).filter(({k:E,at:A})=>E!==u&&(A.y-x.y)*m>4).sort((E,A)=>rs(E.at,x)-rs(A.at,x));
y&&v(y.k)}r.addEventListener("keydown",m=>{if(bt(m))return;let x=s.length-1;if(m.key==="ArrowRight")v(u>=x?0:u+1);else if(m.
key==="ArrowLeft")v(u<=0?x:u-1);else if(m.key==="ArrowUp"||m.key==="ArrowDown")u<0?v(0):S(m.key==="ArrowUp"?-1:1);else if(m.
key==="Home")v(0);else if(m.key==="End")v(x);else if(m.key==="+"||m.key==="=")D(1);else if(m.key==="-")D(-1);else if(m.key===
"Escape")v(-1);else return;m.preventDefault()}),r.addEventListener("click",m=>{let x=xt(m,"[data-part]")?.dataset.part;v(
x===void 0?-1:i.get(x)??-1)}),r.addEventListener("pointerover",m=>{let x=xt(m,"[data-part]")?.dataset.part;if(x===void 0||
m.pointerType!=="mouse")return;let y=xt(m,"[data-solid]")?.querySelector("title")?.textContent,E=s[i.get(x)??0][1];L.textContent=
y&&y!==E?`${y} (${E})`:E}),r.addEventListener("pointerleave",()=>{L.textContent=""}),l.addEventListener("change",()=>v(i.
get(l.value)??-1));let L=e("span",{class:"ts-unit-over","aria-hidden":"true"}),C="Point at a part, tap it, or choose it \
here to read its name.";c.textContent=C;let k=e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"Part ",l),nt("−",
()=>D(-1),"Smaller"),nt("+",()=>D(1),"Larger"),L),f=e("details",{class:"ts-unit-words"},e("summary",{},"What is where, i\
n words"),e("p",{},n));return D(0),{nodes:[k,c,r,f],show(m){h=m.looks;for(let[x,y]of d)for(let E of y)for(let A of Cn)E.
classList.toggle(`tsu-${A}`,h[x]===A);a.innerHTML=m.marks,u>=0&&(c.textContent=w(u))}}}function rs(t,s){return Math.abs(
t.y-s.y)+2*Math.abs(t.x-s.x)}function as(t,s){t.setAttribute("aria-disabled",String(s)),t.classList.toggle("ts-off",s)}function is({model:t,el:s}){let n=e(
"p",{class:"ts-finding"}),r=e("p",{class:"ts-happened",role:"status"}),o=e("p",{class:"ts-hint"}),a=re(t.get("picture")),
d=e("p",{class:"ts-hint",role:"status"}),i=e("dl",{class:"ts-facts"}),c=e("div",{class:"ts-ready"}),l=e("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),u=e("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:f=>{f.key==="Enter"&&S()}}),p=e("span"),h=f=>C.send({type:"move",by:f}),b=f=>C.
send({type:"go",position:f}),w=nt("Back",()=>h(-1),"One step back"),v=nt("Next",()=>h(1),"Next step"),$=nt("Start",()=>b(
0),"Start with an empty bench"),T=nt("End",()=>b(t.get("view").count),"End of the order"),D=nt("Try it",()=>C.send({type:"\
take",step:l.value}),"Try it: the step chosen here"),S=()=>{let f=Number.parseInt(u.value,10);f>=0&&b(f)},L=e("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},$,w,v,T,e("span",{class:"t\
s-pair"},"place ",u,p,nt("Go",S,"Go to this place")));L.addEventListener("keydown",f=>{if(!(f.target===u||bt(f))){if(f.key===
"ArrowLeft")h(-1);else if(f.key==="ArrowRight")h(1);else if(f.key==="Home")b(0);else if(f.key==="End")b(t.get("view").count);else
return;f.preventDefault()}});let C=Y({model:t,el:s},{kind:"rig"});C.show(e("p",{class:"ts-who"},"Practice. Nothing here \
is marked or saved."),C.alert,n,L,r,o,d,...a.nodes,i,e("p",{class:"ts-prompt"},"Do another step next"),c,e("div",{class:"\
ts-tools"},e("span",{class:"ts-pair"},"or one that is not ready: ",l,D)));function k(){let f=t.get("view");n.textContent=
f.finding,r.textContent=f.happened,o.textContent=f.next?`Next in this order: ${f.next}`:"This is the end of the order.",
d.textContent=f.build.words,a.show(f.build),i.replaceChildren(...Mt(f.facts));let m=c.contains(document.activeElement);c.
replaceChildren(...f.ready.map(([E,A])=>nt(A,()=>C.send({type:"take",step:E})))),f.ready.length||c.append(e("p",{class:"\
ts-hint"},"No step is ready.")),m&&(c.querySelector("button")??v).focus(),l.replaceChildren(...ht(f.waiting)),l.disabled=
D.disabled=!f.waiting.length,u.value=String(f.position),p.textContent=` of ${f.count} `;let x=f.position===0,y=f.position===
f.count;for(let E of[w,$])as(E,x);for(let E of[v,T])as(E,y)}return C.follow("change:view",k),k(),C.close}function Ft(t){let s=null,n=null,r=a=>{if(s!==null){n=a;return}s=Z("turn"),t(a,s)},o=()=>{s=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===s&&o()},get waiting(){return s!==null}}}var rt=(t,s,n,r,o)=>j("line",{x1:t,y1:s,x2:n,y2:r,class:o}),at=(t,s,n,r="middle")=>j("text",{x:t,y:s,"text-anchor":r,class:"\
tsg-text"},n);function qt(){let t=j("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(j("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(rt(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(at(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(j("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(rt(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*
Math.cos(o),"tsg-mark"))}let s=rt(100,134,100,119,"tsg-small"),n=j("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(s,n,j("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("tra\
nsform",`rotate(${r*360} 100 100)`),s.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${o}`)}}}function cs({top:t,mark:s,perFigure:n}){let r=j("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),o=d=>30+d/t*540;r.append(j("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let d=0;d*s<=t+1e-9;d+=1){let i=d%n===0;r.append(rt(o(d*s),22,o(d*s),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.
append(at(o(d*s),84,String(Math.round(d*s))))}let a=j("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(
a,at(586,14,"newtons","end")),{node:r,top:t,set(d,i){a.setAttribute("transform",`translate(${o(Math.min(d,t))} 0)`),r.setAttribute(
"aria-label",`Spring scale, one mark is ${s} N. ${i}`)}}}function ls({low:t,high:s,reach:n}){let r=j("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(j("rect",{x:o(t),y:34,width:o(
s)-o(t),height:24,class:"tsg-target"}),at((o(t)+o(s))/2,84,"target"),rt(20,46,700,46,"tsg-mark"),rt(360,26,360,66,"tsg-m\
ark tsg-long"),at(20,20,"end play","start"),at(700,20,"preload","end"),at(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let c of[
i,-i])r.append(rt(o(c),42,o(c),50,"tsg-mark"));r.append(at(o(-n),70,`${n.toFixed(2)} mm`,"start"),at(o(n),70,`${n.toFixed(
2)} mm`,"end"));let a=j("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),d=j("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return r.append(a,d),{node:r,set(i,c,l){a.setAttribute("transform",`translate(${o(i)} 0)`),d.setAttribute("transform",`t\
ranslate(${o(c)} 0)`),r.setAttribute("aria-label",l)}}}function ft(t,{min:s,max:n,step:r,value:o,words:a,onInput:d}){let i=e(
"input",{type:"range",class:"ts-slider",min:s,max:n,step:r,value:o,"aria-label":t}),c=e("output",{class:"ts-slid"},a(o));
return i.addEventListener("input",()=>{let l=a(Number(i.value));c.textContent=l,i.setAttribute("aria-valuetext",l),d(Number(
i.value))}),i.setAttribute("aria-valuetext",a(o)),{box:i,row:e("label",{class:"ts-slide"},e("span",{},t),i,c),set(l){i.value=
String(l),c.textContent=a(l)}}}function pt(t,s,n,r){let o=e("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},
...s.map(([a,d])=>e("option",{value:a,selected:a===n},d)));return{box:o,row:e("span",{class:"ts-pair"},`${t} `,o)}}function ds({model:t,el:s}){let n=t.get("about"),r=t.get("shown").state,o=null,a=e("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),d=e("p",{class:"ts-hint"}),i=e("p",{class:"ts-finding",role:"status"}),c=e("u\
l",{class:"ts-sentences"}),l=Ft((k,f)=>S.send({type:"set",state:k,turn:f})),u=k=>{r={...r,...k},l.ask(r)},p=j("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),h=rt(0,0,0,0,"tsg-mark tsg-long"),b=at(0,0,""),w=96,
v=w/(n.readingsOnly?r.radius:n.radii[1]),$=j("svg",{viewBox:`0 0 ${2*w+120} ${2*w+30}`,width:2*w+120,height:2*w+30,class:"\
tsg-drum",role:"img"}),T=w+4;p.setAttribute("transform",`translate(${T} ${T})`),$.append(p,h,rt(4,T,2*w+4,T,"tsg-centre"),
rt(T,4,T,2*w+4,"tsg-centre"),j("circle",{cx:T,cy:T,r:10,class:"tsg-face"}),b);let D=[e("div",{class:"ts-tools"},W("Turn \
the shaft ten times",()=>u({turns:r.turns+10})))];if(!n.readingsOnly){let k=n.kinds,f=k.map(([m,x])=>e("label",{class:"t\
s-option"},e("input",{type:"checkbox",checked:r.kinds.includes(m),onchange:y=>u({kinds:k.map(([E])=>E).filter(E=>E===m?y.
target.checked:r.kinds.includes(E))})}),`with ${x}`));D[0].append(W("Fit the rings anew",()=>u({turns:0}))),f.length&&D.
push(e("fieldset",{class:"tsg-ticks"},e("legend",{class:"ts-hint"},"What turns with the bearings"),...f)),D.push(ft("Set\
ting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:m=>u({setting:m}),words:m=>m<0?`${(-m).toFixed(3)} mm of\
 end play`:`${m.toFixed(3)} mm of preload`}).row,ft("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:r.radius,
onInput:m=>u({radius:m}),words:m=>`${m} mm`}).row)}let S=Y({model:t,el:s},{kind:"rig"});S.show(e("p",{class:"ts-who"},n.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),S.alert,
e("div",{class:"tsg-beside"},$,e("div",{class:"tsg-side"},a,d)),...D,i,c);function L(){let k=t.get("shown");l.waiting||(r=
k.state);let f=v*k.state.radius;Ot(p,{r:f}),Ot(h,{x1:T,y1:T-f,x2:2*w+120,y2:T-f}),Ot(b,{x:T,y:2*w+22}),b.textContent=`dr\
um, radius ${k.state.radius} mm`,$.setAttribute("aria-label",`A drum of ${k.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),o?.top!==k.scale.top&&(o=cs(k.scale),a.replaceChildren(o.node),d.textContent=
`Spring scale to ${k.scale.top} N, one mark ${k.scale.mark} N.`),o?.set(k.pull,k.pullWords),i.textContent=k.finding,c.replaceChildren(
...Dt(k.words)),l.answered(k.turn)}let C=()=>l.free();return S.follow("change:shown",L),S.follow("msg:custom",C),L(),S.close}function Ct({model:t,el:s},n){let r=t.get("about"),o=t.get("shown").state,a=Ft((p,h)=>d.send({type:"set",state:p,turn:h})),
d=Y({model:t,el:s},{kind:"rig"}),i=e("p",{class:"ts-finding",role:"status"}),c=n(r,p=>{o={...o,...p},a.ask(o)},o),l=r.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";d.show(e("p",{class:"\
ts-who"},l),d.alert,e("div",{class:"tsg-wide"},c.picture),...c.controls,i);function u(){let p=t.get("shown");a.waiting||
(o=p.state),c.set(p,o),i.textContent=p.finding,a.answered(p.turn)}return d.follow("change:shown",u),d.follow("msg:custom",
a.free),u(),d.close}var Lt=(...t)=>e("div",{class:"ts-tools"},...t);var Mn={x:44,y:84,perMm:34};function En(t){let s=j("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=Mn,a=j("g",{}),d=j("g",{});s.append(j("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),j("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,d,at(12,14,"main scale, mm","start"),at(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let c=n+i*t.space*o;d.append(
rt(c,r,c,r+(i%2?20:30),"tsi-fine")),i%2===0&&d.append(at(c,r+48,String(i)))}return{node:s,set(i){a.replaceChildren();for(let c=Math.
max(0,Math.ceil(i.mm-1));c<=t.top+25;c+=1){let l=n+(c-i.mm)*o;l<4||l>756||(a.append(rt(l,r,l,r-(c%10===0?34:c%5===0?28:20),
"tsi-fine")),c%5===0&&a.append(at(l,r-40,String(c))))}s.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function us(t){
return Ct(t,(s,n,r)=>{let o=En(s),a=ft("Rod",{min:0,max:s.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:c=>n(
{rod:c})}),d=pt("Foot",s.places,r.place,c=>n({place:c,rod:0})),i=pt("Look",s.eyes,r.eye,c=>n({eye:c}));return{picture:o.
node,controls:[Lt(d.row,i.row),Lt(W("Push the rod down until it rests",()=>n({rod:s.top})),W("Lift the rod",()=>n({rod:0}))),
a.row],set(c,l){o.set(c),d.box.value=l.place,i.box.value=l.eye,a.box.value=l.rod}}})}function ps({model:t,el:s}){let n=t.get("plan"),r=e("p",{class:"ts-finding"}),o=e("p",{class:"tsj-happened",role:"status"}),
a=e("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let d=e("div",{class:"tsj-bars"}),i=X(a,"[data-bolt]"),c=Z("torqu\
e"),l=e("input",{id:c,type:"range",min:10,max:100,step:5,oninput:()=>h()});l.value="100";let u=e("output",{class:"tsj-fi\
gure",for:c}),p=()=>l.value==="100"?n.torque:Number((Math.round(n.torque*Number(l.value)/100/n.step)*n.step).toFixed(3));
function h(){u.textContent=`${p()} N·m`,l.setAttribute("aria-valuetext",`${p()} newton metres, ${l.value} percent of th\
e torque`)}let b=f=>S.send({type:"pull",bolt:f,torque:p()}),w=W("Take back",()=>S.send({type:"undo"})),v=W("Wait until t\
he film has run out",()=>S.send({type:"wait"})),$=e("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>S.send({type:"set",film:Number($.value)})},...n.films.map(f=>e("option",{value:f},f?`${f} µm thick`:"none"))),
T=e("input",{type:"checkbox",onchange:()=>S.send({type:"set",scattered:T.checked})});a.addEventListener("click",f=>{let m=xt(
f,"[data-bolt]");m&&(D(m),b(Number(m.dataset.bolt)))});let D=f=>{for(let m of i)m.setAttribute("tabindex",m===f?"0":"-1");
f.focus({preventScroll:!0})};a.addEventListener("keydown",f=>{let m=xt(f,"[data-bolt]");if(!m||f.ctrlKey||f.metaKey||f.altKey)
return;let x=Number(m.dataset.bolt),y={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[f.key];if(y)D(i[(x+y+i.length)%
i.length]);else if(f.key==="Home")D(i[0]);else if(f.key==="End")D(i[i.length-1]);else if(f.key==="Enter"||f.key===" ")f.
repeat||b(x);else return;f.preventDefault()});let S=Y({model:t,el:s},{kind:"rig"}),L=e("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},W("Start all by hand",()=>S.send({type:"start"})),...n.rounds.map(([f,m])=>W(`One round ${m}`,
()=>S.send({type:"round",pattern:f,torque:p()}))),w,W("Start again",()=>S.send({type:"again"}))),C=e("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},e("span",{class:"tsj-slide"},e("label",{for:c},"Wrench set to"),l,u));n.films.length&&
C.append(e("label",{class:"ts-pair"},"Wet sealant",$),v,e("label",{class:"tsj-check"},T,"friction scatters from bolt to \
bolt")),S.show(e("p",{class:"ts-who"},n.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),S.alert,r,C,L,o,e("div",{class:"tsj-bench"},a,d),e("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function k(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.happened,d.innerHTML=
f.bars;for(let[m,x]of i.entries()){let y=f.tight[m]?`${f.clamps[m]} kN`:f.started[m]?"started by hand":"not started";x.setAttribute(
"aria-label",`Bolt ${m+1} of ${n.count}, ${y}`),x.classList.toggle("tsj-tight",f.tight[m]),x.classList.toggle("tsj-start\
ed",f.started[m])}w.disabled=!f.pulls,v.disabled=!f.standing,$.value=String(f.film),T.checked=f.scattered}return S.follow(
"change:view",k),h(),k(),S.close}var fs="tsk-number";function Nt(t,s,...n){return e("td",{class:s?fs:null,"data-label":t||null,role:"cell"},...n)}function ae(t,s,n){
let r=s.map(([d,i])=>e("th",{scope:"col",role:"columnheader",class:i?fs:null},d)),o=e("thead",{role:"rowgroup"},e("tr",{
role:"row"},...r)),a=e("table",{class:"tsk-board",role:"table"},e("caption",{},t),o,n);return e("div",{class:"ts-scroll"},
a)}function hs({model:t,el:s}){let n=t.get("plan"),r=e("p",{class:"ts-finding",role:"status"}),o=e("p",{class:"tsk-spent"}),
a=e("ul",{class:"ts-sentences tsk-left"}),d=e("p",{class:"tsk-more"}),i=e("tbody",{role:"rowgroup"}),c=new Map;for(let[h,
b,w,v]of n.checks){let $=e("select",{class:"ts-box","aria-label":`What it showed: ${b}`,onchange:()=>u.send({type:"obser\
ve",check:h,shown:$.value})},e("option",{value:""},"Not made"),...ht(v)),T=Nt("would tell, bit",!0),D=Nt("bit a minute",
!0),S=e("tr",{role:"row"},e("th",{scope:"row",role:"rowheader"},b),Nt("min",!0,`${w}`),Nt("it showed",!1,$),T,D);c.set(h,
{box:$,tells:T,rate:D,row:S}),i.append(S)}let l=e("button",{class:"ts-button",type:"button",onclick:()=>u.send({type:"cl\
ear"})},"Take all observations back"),u=Y({model:t,el:s},{kind:"rig"});u.show(e("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),u.alert,r,a,d,ae("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),o,l);function p(){let h=t.get("view");r.textContent=h.finding,
o.textContent=h.spent,d.textContent=h.more,a.replaceChildren(...Dt(h.left.map(([v,$])=>`${v} (${$})`)));let b=h.ranked,w=new Map(
b.map(([v,$,T],D)=>[v,{bits:$,rate:T,rank:D}]));for(let[v,{box:$,tells:T,rate:D,row:S}]of c){let L=h.observed[v],C=w.get(
v);$.value=L??"",T.textContent=C?C.bits:L!==void 0?"made":"nothing",D.textContent=C?C.rate+(C.rank===0?" ◀ best next":
""):"–",S.classList.toggle("tsk-best",C?.rank===0)}}return u.follow("change:view",p),p(),u.close}function gs({model:t,el:s}){let n=e("p",{class:"ts-finding",role:"status"}),r=e("p",{class:"ts-happened",role:"status"}),
o=e("div",{class:"ts-scroll ts-fit ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"\
The lever. Arrow keys left and right slide the selector shaft, up and down turn it."}),a=e("select",{class:"ts-box ts-ho\
w","aria-label":"How it is put together"},...ht(t.get("builds"))),d=nt("Start again",()=>v({type:"reset"})),i=e("div",{class:"\
ts-tools ts-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([f,m])=>nt(m,()=>v({type:"move",
code:f})))),c=e("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),l=e("p",{class:"ts-hint"},"Nothin\
g tried yet. Use the moves above; each is written down here."),u=e("p",{class:"ts-proof",role:"status"}),p=nt("What does\
 a full hand test find?",()=>{p.disabled=!0,u.textContent="testing",v({type:"prove"})}),h=Y({model:t,el:s},{kind:"rig"});
h.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),h.alert,e("div",{class:"ts-tools"},e("span",
{class:"ts-pair"},"Put together: ",a),d),n,o,r,e("p",{class:"ts-hint"},"Drag the blue finger, or click the picture and u\
se the arrow keys: left and right slide, up and down turn. Or use the moves in words:"),i,e("p",{class:"ts-prompt"},"Tri\
ed by hand"),l,c,e("div",{class:"ts-tools"},p),u);let b=0,w="";function v(f){b+=1,h.send({...f,turn:b})}function $(){let f=t.
get("view");if(w!==t.get("figure")){w=t.get("figure"),o.innerHTML=w;let m=Tt(o,"svg");m.removeAttribute("role"),m.setAttribute(
"aria-hidden","true")}for(let m of X(o,"[data-body]")){let[x,y]=f.moved[String(m.dataset.rides??m.dataset.body)]??[0,0];
m.setAttribute("transform",`translate(${x.toFixed(2)} ${y.toFixed(2)})`)}for(let m of X(o,"[data-gear]"))m.classList.toggle(
"tsg-in",f.gears.includes(m.dataset.gear));for(let m of X(o,"[data-lifts]"))m.classList.toggle("tsg-up",f.lifted);o.dataset.
turn=String(f.turn),n.textContent=`${f.gears.length>1?"■ ":f.gears.length?"● ":"○ "}${f.title}.`,r.textContent=f.happened,
r.classList.toggle("ts-stopped",/topped by/.test(f.happened)),(c.childElementCount!==f.log.length||c.lastElementChild?.textContent!==
f.log.at(-1))&&(c.replaceChildren(...f.log.map(m=>e("li",{class:/topped by/.test(m)?"ts-stopped":""},m))),c.scrollTop=c.
scrollHeight),l.hidden=f.log.length>0,a.value=f.build,u.textContent=f.proof,p.disabled=!1,S=!1,k()}o.addEventListener("k\
eydown",f=>{if(bt(f))return;let m={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[f.key];m&&(f.preventDefault(),
v({type:"nudge",travel:m[0],turned:m[1]}))}),a.addEventListener("change",()=>v({type:"build",build:a.value}));let T=null,
D=null,S=!1;function L(f){let m=Tt(o,"svg"),x=m.getBoundingClientRect(),y=m.viewBox.baseVal.width/x.width;return[(f.clientX-
x.left)*y,(f.clientY-x.top)*y]}o.addEventListener("pointerdown",f=>{let m=xt(f,".tsg-panel");if(!m||f.button!==0)return;
let x=t.get("view").hand,[y,E]=L(f),A=Number(m.dataset.scale);T={x:y-x[0]*A,y:E+x[1]*A,scale:A},o.setPointerCapture(f.pointerId),
o.focus({preventScroll:!0}),o.classList.add("ts-pulling"),f.preventDefault()}),o.addEventListener("pointermove",f=>{if(!T)
return;let[m,x]=L(f);D={travel_mm:(m-T.x)/T.scale,turn_mm:(T.y-x)/T.scale},k()});let C=()=>{T=null,o.classList.remove("t\
s-pulling")};o.addEventListener("pointerup",C),o.addEventListener("pointercancel",C);function k(){if(S||!D)return;S=!0;let f=D;
D=null,v({type:"pull",...f})}return h.follow("msg:custom",f=>{f.type==="trouble"&&(S=!1)}),h.follow("change:view",$),$(),
h.close}function ms({model:t,el:s}){let n=t.get("plan"),r=t.get("view"),o=e("p",{class:"ts-finding",role:"status"}),a=e("p",{class:"\
ts-happened tsw-happened",role:"status"}),d=e("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,l=n.gears.map(
([x,y])=>e("button",{type:"button",class:"ts-button","data-gear":x,"aria-pressed":"false",onclick:()=>k({type:"gear",gear:x})},
y)),u=e("select",{class:"ts-box","aria-label":"Wheel held still",onchange:x=>k({type:"hold",shaft:x.target.value})},...ht(
n.holds)),p=e("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:x=>{i=x.target.value,m()}},...ht(r.dials.
map(x=>[x.shaft,x.name]))),h=x=>k({type:"turn",shaft:i,turns:x}),b=`1/${n.marks}`,w=e("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},nt("↺ 1 turn",()=>h(-1),"One turn anticlockwise"),nt(`↺ ${b}`,()=>h(-n.step),`${b}\
 turn anticlockwise`),nt("↺ a touch",()=>h(-n.fine),"A touch anticlockwise"),nt("a touch ↻",()=>h(n.fine),"A touch c\
lockwise"),nt(`${b} ↻`,()=>h(n.step),`${b} turn clockwise`),nt("1 turn ↻",()=>h(1),"One turn clockwise"),nt("Marks t\
o zero",()=>k({type:"reset"}))),v=new Map;for(let x of r.dials){let y=j("g",{},j("circle",{class:"tsw-end",r:34}),j("lin\
e",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),j("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),E=[];for(let g=0;g<n.marks;g+=
1)E.push(j("line",{class:"tsw-tick",y1:-40,y2:g?-47:-52,transform:`rotate(${g*360/n.marks})`})),g&&E.push(j("text",{class:"\
tsw-number",x:57*Math.sin(g*2*Math.PI/n.marks),y:-57*Math.cos(g*2*Math.PI/n.marks)+4},String(g)));let A=j("svg",{viewBox:"\
-70 -70 140 140",class:"tsw-dial","data-shaft":x.shaft,"aria-hidden":"true"},j("circle",{class:"tsw-plate",r:40}),...E,j(
"path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),y),U=e("div",{class:"tsw-count",tabindex:"0",role:"application","\
aria-roledescription":"shaft","data-shaft":x.shaft},e("div",{class:"tsw-name"}),A,e("div",{class:"tsw-strokes","aria-hid\
den":"true"}),e("div",{class:"tsw-figure"}));v.set(x.shaft,{box:U,svg:A,shaftEnd:y}),U.addEventListener("focus",()=>{i!==
x.shaft&&(i=x.shaft,m())}),U.addEventListener("keydown",g=>{if(bt(g))return;let P={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,
ArrowUp:-1,PageDown:1,PageUp:-1}[g.key];P&&(g.preventDefault(),i=x.shaft,h(P*(g.key.startsWith("Page")?1:g.shiftKey?n.fine:
n.step)))});let O=null,M=g=>{let P=A.getBoundingClientRect();return Math.atan2(g.clientX-P.left-P.width/2,P.top+P.height/
2-g.clientY)/(2*Math.PI)};A.addEventListener("pointerdown",g=>{g.button===0&&(O=M(g),A.setPointerCapture(g.pointerId),U.
focus({preventScroll:!0}),g.preventDefault())}),A.addEventListener("pointermove",g=>{if(O===null)return;let P=M(g),_=P-O;
_-=Math.round(_),O=P,$+=_,D()});let N=()=>{O=null};A.addEventListener("pointerup",N),A.addEventListener("pointercancel",
N)}let $=0,T=!1;function D(){if(T||Math.abs($)<.002)return;T=!0;let x=$;$=0,h(x)}let S=Y({model:t,el:s},{kind:"rig"});S.
show(...n.closed?[]:[e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved.")],S.alert,o,...n.closed?[]:[e("\
div",{class:"ts-tools",role:"group","aria-label":"Gears engaged"},e("span",{},"Engage: "),...l),d],e("div",{class:"ts-to\
ols"},e("span",{class:"ts-pair"},"Hold still: ",u),e("span",{class:"ts-pair"},"Turn by hand: ",p)),e("div",{class:"tsw-c\
ounts"},...[...v.values()].map(x=>x.box)),w,a,e("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a d\
ial round, or go to it and use the arrow keys (${b} turn), Shift with an arrow key (a touch) or Page Up and Page Down (o\
ne turn). Each stroke is a whole turn.`));let L=0,C=null;function k(x){L+=1,S.send({...x,turn:L})}let f=x=>{let y=[];for(let E=x;E>
0;E-=5)y.push(E>=5?"||||/":"|".repeat(E));return y.join(" ")};function m(){let x=t.get("view");C!==t.get("figure")&&(C=String(
t.get("figure")),d.innerHTML=C);for(let y of X(d,"[data-wheel]")){let[E,A]=x.wheels[String(y.dataset.wheel)]??[0,!0];y.setAttribute(
"transform",`translate(0 ${(E*Number(y.dataset.reach)).toFixed(1)})`),y.classList.toggle("tsw-behind",!A)}for(let y of l)
y.setAttribute("aria-pressed",String(x.engaged.includes(y.dataset.gear)));u.value=x.held,p.value=i;for(let y of x.dials){
let{box:E,shaftEnd:A}=v.get(y.shaft),U=y.way>0?"↻":y.way<0?"↺":"";A.setAttribute("transform",`rotate(${y.angle})`);let[
O,,M,N]=E.children;O.textContent=`${y.name}${y.held?", held":y.shaft===i?", your hand":""}`,M.textContent=y.strokes||U?`${U}\
 ${f(y.strokes)}`:"no stroke",N.textContent=y.figure,E.classList.toggle("tsw-hand",y.shaft===i),E.classList.toggle("tsw-\
held",y.held),E.setAttribute("aria-label",`${y.name}${y.held?", held":""}. ${y.words}`)}o.textContent=x.finding,a.textContent=
x.happened,s.dataset.turn=String(x.turn),T=!1,D()}return S.follow("change:view",m),m(),S.close}function ws({model:t,el:s}){let n=e("p",{class:"ts-finding",role:"status"}),r=e("div",{class:"tsh-picture"}),o=e("p",{class:"\
tsh-head"}),a=e("p",{class:"tsh-seen"}),d=e("div",{class:"tsh-told"}),i=e("div",{class:"tsh-box",role:"status"},o,a,d),c=[],
l=[],u=null,p=t.get("plan").lookingOnly,h=(k,f)=>e("button",{type:"button",class:"ts-button","data-verdict":k,"aria-pres\
sed":"false",onclick:()=>$.send({type:"judge",place:u,verdict:k})},f),b=p?[]:[h("stop","Stop here"),h("well","Fine as it\
 is")],w=e("button",{type:"button",class:"ts-button",onclick:()=>$.send({type:"next"})},"Another day"),v=e("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...b);t.get("plan").more&&v.append(w);let $=Y({model:t,
el:s},{kind:"rig"});$.show(e("p",{class:"ts-who"},p?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),$.alert,n,e("p",{class:"ts-keys"},p?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),r,i),p||i.after(v);function T(k,f){let m=k!==u;u=k;for(let[x,y]of l.
entries()){let E=c[x][0]===k;y.setAttribute("tabindex",E?"0":"-1"),y.setAttribute("aria-pressed",String(E)),y.classList.
toggle("tsh-chosen",E),E&&f&&(y.focus({preventScroll:!0}),D(y))}m&&$.send({type:"choose",place:k})}function D(k){let f=Tt(
k,".tsh-hit").getBoundingClientRect(),m=r.getBoundingClientRect();(f.left<m.left||f.right>m.right)&&(r.scrollLeft+=f.left-
m.left-(m.width-f.width)/2),(f.bottom<0||f.bottom>innerHeight||f.top<0)&&k.scrollIntoView({block:"nearest"})}function S(){
let k=t.get("plan");c=k.places,r.innerHTML=k.drawing,Tt(r,"svg").setAttribute("role","group"),l=c.map(([f])=>Tt(r,`[data\
-place="${f}"]`)),l.forEach((f,m)=>{f.setAttribute("role","button"),f.setAttribute("aria-label",`${m+1} ${c[m][1]}`),f.addEventListener(
"click",()=>T(c[m][0],!0))}),u=String(t.get("view").chosen),T(u,!1)}r.addEventListener("keydown",k=>{if(bt(k))return;let f=c.
findIndex(([y])=>y===u),m=Math.min(6,c.length),x=f;if(k.key==="ArrowRight")x=f+1;else if(k.key==="ArrowLeft")x=f-1;else if(k.
key==="ArrowDown")x=f+m;else if(k.key==="ArrowUp")x=f-m;else if(k.key==="Home")x=0;else if(k.key==="End")x=c.length-1;else if(k.
key!=="Enter"&&k.key!==" ")return;k.preventDefault(),x>=0&&x<c.length&&T(c[x][0],!0)});function L(){let k=t.get("view");
n.textContent=k.finding;let f=c.findIndex(([y])=>y===k.chosen);o.textContent=`${f+1}  ${c[f][1]}`,a.textContent=k.seen;let{
verdict:m,...x}=k.told;if(d.replaceChildren(),m){let y=k.judged[k.chosen],E=y==="stop"==(m==="Stop here."),A=y==="stop"?
"Stop here":"Fine as it is";d.append(e("p",{class:"tsh-verdict"},E?`✓ Yes: ${m}`:`✗ You said “${A}”. The course sa\
ys: ${m}`),e("dl",{class:"ts-facts"},...Object.entries(x).flatMap(([U,O])=>[e("dt",{},U),e("dd",{},O)])))}for(let y of b)
y.setAttribute("aria-pressed",String(k.judged[k.chosen]===y.dataset.verdict));for(let[y,E]of l.entries()){let A=k.judged[c[y][0]];
E.setAttribute("aria-label",`${y+1} ${c[y][1]}${A?`, judged: ${A==="stop"?"stop here":"fine as it is"}`:""}`);let U=E.querySelector(
".tsh-tag");if(!A){U?.remove();continue}U||(U=j("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),E.
append(U)),U.textContent=A==="stop"?"■ stop":"○ well"}s.dataset.turn=k.chosen}let C=()=>{S(),L()};return $.follow("c\
hange:plan",C),$.follow("change:view",L),C(),$.close}function bs({model:t,el:s}){let n=t.get("plan"),r=e("p",{class:"ts-finding",role:"status"}),o=e("p",{class:"tsl-sum"}),a=e(
"div",{class:"tsl-drawing"}),d=new Map,c=n.sliders.map(([h,b,w,v,$,T])=>{let D=Z(h.replace("_","-")),S=e("output",{class:"\
tsl-figure",for:D}),L=e("input",{id:D,type:"range",min:v,max:$,step:T,oninput:()=>{C(),u.send({type:"set",name:h,value:Number(
L.value)})}}),C=()=>{S.textContent=`${L.value} ${w}`,L.setAttribute("aria-valuetext",`${L.value} ${w==="°"?"degrees":w}`)};
return d.set(h,{slider:L,say:C}),e("div",{class:"tsl-row"},e("label",{for:D},b),L,S)}),l=e("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>u.send({type:"set",name:"grip",value:l.value})},...ht(n.grips)),u=Y({model:t,el:s},{kind:"r\
ig"});u.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),u.alert,r,e("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...c,e("div",{class:"tsl-row"},e("span",{},"Grip"),l)),a,o,e("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function p(){let h=t.get("vi\
ew");r.textContent=h.finding,o.textContent=h.sum,a.innerHTML=h.drawing;for(let[b,{slider:w,say:v}]of d)document.activeElement!==
w&&(w.value=h.sizes[b]),v();l.value=h.sizes.grip}return u.follow("change:view",p),p(),u.close}var ie={x:90,y:120,perMm:20,radius:82,bevel:30};function An(t){let s=j("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=ie;s.append(j("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),rt(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let h=n+p*t.pitch*o;if(p%2){s.append(rt(
h,r,h,r+18,"tsi-fine"));continue}let b=p/2;s.append(rt(h,r,h,r-(b%5?18:27),b%5?"tsi-fine":"tsi-bold")),b%5===0&&s.append(
at(h,r-33,String(b)))}let d=j("g",{});s.append(d,at(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=j("path",{d:`M0 ${r-a+14}L${ie.bevel} ${r-a}L${ie.bevel} ${r+a}L0 ${r+a-14}\
Z`,class:"tsi-body"}),c=j("rect",{x:ie.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),l=j("rect",{x:0,y:r-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),u=j("g",{});return d.append(l,i,c,u),{node:s,set(p){d.setAttribute("transform",`tran\
slate(${n+p.mm*o} 0)`),u.replaceChildren();for(let h=0;h<t.lines;h+=1){let b=h-p.line;b-=t.lines*Math.round(b/t.lines);let w=b/
t.lines*2*Math.PI;if(Math.abs(w)>1.15)continue;let v=r-(a-8)*Math.sin(w),$=h%5===0;u.append(rt(0,v,$?26:16,v,$?"tsi-bold":
"tsi-fine")),$&&u.append(at(36,v+5,String(h),"start"))}s.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function ks(t){
return Ct(t,(s,n,r)=>{let o=An(s),a=ft("Thimble",{min:0,max:s.top,step:.01,value:r.open,words:()=>"turn in to the left, \
out to the right",onInput:c=>n({open:c})}),d=pt("Between the faces",s.between,r.between,c=>n({between:c,open:s.top})),i=s.
hands.length?pt("Close it",s.hands,r.hand,c=>n({hand:c})):null;return{picture:o.node,controls:[Lt(d.row,i?.row),Lt(W("Cl\
ose until it rests",()=>n({open:-1})),W("Open",()=>n({open:s.top}))),a.row],set(c,l){o.set(c),a.box.value=String(Math.max(
0,c.mm)),d.box.value=l.between}}})}function vs({model:t,el:s}){let n=t.get("plan"),r=e("p",{class:"ts-finding",role:"status"}),o=e("tbody",{role:"rowgroup"}),
a=new Map;for(let[c,l,u]of n.checks){let p=e("button",{class:"ts-button",type:"button","aria-label":`Make: ${l}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&d.send({type:"make",check:c})}},"Make"),h=Nt("it shows",!1);h.classList.add("t\
sk-shown"),a.set(c,{button:p,shown:h}),o.append(e("tr",{role:"row"},e("th",{scope:"row",role:"rowheader"},l),Nt("min",!0,
`${u}`),Nt("",!1,p),h))}let d=Y({model:t,el:s},{kind:"rig"});d.show(e("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),d.alert,r,ae("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));
function i(){let c=t.get("view");r.textContent=c.finding;for(let[l,{button:u,shown:p}]of a){let h=c.shown[l];u.setAttribute(
"aria-disabled",h?"true":"false"),u.classList.toggle("ts-off",!!h),u.textContent=h?"Made":"Make",p.textContent=h?`${h[0]?
"✓":"✗"} ${h[1]}`:"",p.classList.toggle("tsk-failed",!!h&&!h[0])}}return d.follow("change:view",i),i(),d.close}function On(){let t=j("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),s=j("g"),n=j("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(j("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),s,n,j("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=d=>(-135+270*d)*Math.PI/180,o="";function a([d,i,c]){s.replaceChildren();for(let l=0;l*i<=d+
1e-9;l+=1){let u=r(l*i/d),p=l%c===0,h=b=>[110+b*Math.sin(u),104-b*Math.cos(u)];if(s.append(rt(...h(p?72:79),...h(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&l%(2*c)===0){let[b,w]=h(58);s.append(at(b,w+4.5,String(Number((l*i).toFixed(2)))))}}s.
append(at(110,170,"kN"))}return{node:t,set(d,i,c){String(d)!==o&&(o=String(d),a(d));let l=Math.min(i/d[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*l})`),t.setAttribute("aria-label",c)}}}function ys(t){return Ct(t,(s,n,r)=>{
let o=On(),a=e("div",{class:"tsp-section"}),d="",i=e("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,e("div",{class:"tsg-gauge"},o.node)),c=ft("Push",{min:0,max:100,step:1,value:r.travel,onInput:h=>n(
{travel:h}),words:h=>h>=100?"at the shoulder":`${h} % of the way`}),l=[c.row],u=null;if(!s.readingsOnly){let h=pt("Part",
s.places,r.place,$=>n({place:$,travel:0}));u=pt("Driver bears on",s.drivers,r.driver,$=>n({driver:$,travel:0}));let b=pt(
"Seat",s.seats,r.seat,$=>n({seat:$})),w=ft("Pair",{min:0,max:100,step:1,value:r.grip,onInput:$=>n({grip:$}),words:$=>$===
0?"loosest of the fit":$===100?"tightest of the fit":`${$} % from loosest to tightest`}),v=ft("Warm the outer part",{min:s.
room,max:s.hottest,step:1,value:r.warmth,onInput:$=>n({warmth:$}),words:$=>`${$} °C`});l.unshift(Lt(h.row,u.row,b.row),
w.row,v.row)}let p=e("dl",{class:"ts-facts"});return s.readingsOnly||l.push(p),{picture:i,controls:l,set(h,b){h.section!==
d&&(d=h.section,a.innerHTML=d),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-s.travelPx*b.travel/
100} 0)`),o.set(h.gauge,h.force,h.words),Number(c.box.value)!==b.travel&&document.activeElement!==c.box&&c.set(b.travel),
u&&(u.row.hidden=!h.drives),h.facts&&p.replaceChildren(...Mt(h.facts))}}})}function xs({model:t,el:s}){let n=t.get("steps"),r=t.get("reach"),o=new Map(n.map(([C],k)=>[C,k])),a=e("div",{class:"ts-\
scroll"}),d=e("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=e(
"p",{class:"ts-finding",role:"status"}),c=e("ul",{class:"ts-sentences"}),l=e("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...ht(n.map(([C,k],f)=>[C,`${f+1}  ${k}`]))),u=e("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),p=Y({model:t,el:s},{kind:"rig",lost(){l.disabled=!0}});p.show(p.alert,e("p",{class:"ts-f\
inding"},t.get("finding")),e("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"Step ",l),
u),a,e("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,d,c),a.innerHTML=t.get("figure");let h=Tt(a,"svg");h.setAttribute("role","group");let b=X(h,".tsf-step").sort(
(C,k)=>Number(C.dataset.step)-Number(k.dataset.step)),w=X(h,".tsf-rule").map(C=>({node:C,ends:String(C.dataset.rule).split(
"-").map(Number)}));b.forEach((C,k)=>{C.setAttribute("role","button"),C.setAttribute("aria-label",`${k+1} ${n[k][1]}, ${r[k].
before.length} before it, ${r[k].after.length} after it`),C.addEventListener("click",()=>T(k,!0))});let v=Number(o.get(t.
get("near").step));function $(C){let k=new Set(r[v].before),f=new Set(r[v].after);b.forEach((E,A)=>{E.setAttribute("tabi\
ndex",A===v?"0":"-1"),E.setAttribute("aria-pressed",String(A===v)),E.classList.toggle("ts-chosen-step",A===v),E.classList.
toggle("ts-before-it",k.has(A)),E.classList.toggle("ts-after-it",f.has(A)),E.classList.toggle("ts-either",A!==v&&!k.has(
A)&&!f.has(A))});let m=E=>E===v||k.has(E)||f.has(E);for(let{node:E,ends:A}of w){let U=k.has(A[0])&&(A[1]===v||k.has(A[1]))||
f.has(A[1])&&(A[0]===v||f.has(A[0]));E.classList.toggle("ts-either",!(U&&A.every(m)))}l.value=n[v][0],C&&b[v].focus({preventScroll:!0});
let x=b[v].getBoundingClientRect(),y=a.getBoundingClientRect();(x.left<y.left+16||x.right>y.right-16)&&(a.scrollLeft+=x.
left-y.left-y.width/2)}function T(C,k){v=C,$(k),p.send({type:"choose",step:n[C][0]})}let D=C=>{let f=Tt(b[C],"rect").getBBox();
return{x:f.x,y:f.y}};function S(C){let k=D(v),f=y=>y.sort((E,A)=>Math.abs(D(E).y-k.y)-Math.abs(D(A).y-k.y))[0];if(C==="A\
rrowRight")return f(w.filter(({ends:y})=>y[0]===v).map(({ends:y})=>y[1]));if(C==="ArrowLeft")return f(w.filter(({ends:y})=>y[1]===
v).map(({ends:y})=>y[0]));let m=b.map((y,E)=>E).filter(y=>Math.abs(D(y).x-k.x)<2&&y!==v),x=C==="ArrowUp"?-1:1;return f(m.
filter(y=>(D(y).y-k.y)*x>0))}h.addEventListener("keydown",C=>{if(!bt(C))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes(C.key)){let k=S(C.key);k!==void 0&&T(k,!0),C.preventDefault()}else(C.key==="Enter"||C.key===" ")&&C.preventDefault()}),
l.addEventListener("change",()=>T(Number(o.get(l.value)),!1)),u.addEventListener("click",()=>{let C=a.classList.toggle("\
ts-fit");u.setAttribute("aria-pressed",String(C)),$(!1)});function L(){let C=t.get("near");i.textContent=C.words,d.innerHTML=
C.figure,c.replaceChildren(...Dt(C.sentences))}return p.follow("change:near",L),L(),requestAnimationFrame(()=>$(!1)),p.close}function Tn(){let t=j("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),s=j("g",{}),n=j("g",{});return s.append(
j("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),rt(150,164,150,98,"tsi-bold"),j("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(rt(150,86,150,40,"tsi-plunger"),j("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(s,rt(50,164,
250,164,"tsg-centre"),rt(150,250,150,80,"tsg-centre"),n,at(8,252,"not to scale","start")),{node:t,set(r,o,a){s.setAttribute(
"transform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function $s(t){
return Ct(t,(s,n,r)=>{let o=qt(),a=Tn(),d=ft("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:l=>`turn\
ed by ${l}°`,onInput:l=>n({angle:l})}),i=pt("Plunger",s.pressed,r.pressed,l=>n({pressed:l})),c=pt("Stand",s.tilts,r.tilt,
l=>n({tilt:l}));return{picture:e("div",{class:"tsg-beside"},a.node,e("div",{class:"tsg-gauge"},o.node,e("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[Lt(i.row,c.row),d.row],set(l,u){o.set(l.mm,l.words),a.set(l.state.angle,Number(l.
state.tilt),`Shaft end on, turned by ${l.state.angle}°; the plunger stands ${l.state.tilt}° off square. Not to scale.`),
d.set(u.angle)}}})}var Ls=(t,s)=>(t+s)%7<2,Cs=(t,s)=>(t+s)%8<2||(t-s+8e4)%8<2,le=()=>!1,ce=t=>(s,n)=>n%t===0,Nn={"":le,dots:(t,s)=>t%6<2&&s%
6<2,rising:Ls,cross:Cs,flat:(t,s)=>s%6<2,rings:(t,s)=>{let n=Math.hypot(t%12-6,s%12-6);return n>2.5&&n<4.5},plus:(t,s)=>t%
10===5&&s%10>2&&s%10<8||s%10===5&&t%10>2&&t%10<8,"lines-1":le,"lines-2":ce(14),"lines-3":ce(8),"lines-4":ce(5),"lines-5":ce(
3)};function In(t){let s=n=>Number.parseInt(t.slice(n,n+2),16);return[s(1),s(3),s(5)]}var Ss=([t,s,n],r)=>(r<<24|n<<16|s<<
8|t)>>>0;function Ms(t,[s,n],r,o,a){let d=n*4,i=new Uint32Array(d*s*4),c=new Map(r.map(([p,,h,b])=>{let w=h?Ss(In(h),200):
0;return[p,{ground:w,hatch:Nn[b]??le}]})),l={ground:0,hatch:le},u=Ss(o,190);for(let p=0;p<s;p+=1){let h=(s-1-p)*4;for(let b=0;b<
n;b+=1){let w=t[p*n+b];if(!w)continue;let{ground:v,hatch:$}=c.get(w&15)??l,T=a&&(w&16)!==0,D=a&&(w&32)!==0;for(let S=h;S<
h+4;S+=1)for(let L=b*4;L<(b+1)*4;L+=1){let C=$(L,S)||T&&Ls(L,S)||D&&Cs(L,S);i[S*d+L]=C?u:v}}}return i}var Bn=600;function As(t,s,n,r,o,a){let[d,i]=n;t.width=i*4,t.height=d*4;let c=new Uint8ClampedArray(Ms(s,n,r,o,a).buffer),
l=new ImageData(c,t.width,t.height);t.getContext("2d")?.putImageData(l,0,0)}function Pn(t,s){let n=e("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return As(n,new Uint8Array(15).fill(t[0]),[3,5],[t],s,!1),e("span",{class:"ts-key"},n,t[1])}
function Os({model:t,el:s}){let n=t.get("face"),r=t.get("looks"),o=e("p",{class:"ts-finding",role:"status"}),a=e("span",
{class:"ts-clock"}),d=e("dl",{class:"ts-facts"}),i=e("p",{class:"ts-legend"}),c=e("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),l=Y({model:t,el:s},{kind:"rig",lost(){h.setDisabled(!0),Gt(s)}}),u=null,p=M=>{u=Z("turn"),l.send({...M,turn:u})},
h=ee({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(M){h.
drawing.strokes(M),p({type:"lay",entries:M})},onRemove:M=>p({type:"remove",at:M}),onClear:()=>p({type:"clear"})}),b=W("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),w=e("input",{type:"range",id:Z("flat"),min:"20",max:"1\
60",step:"10",class:"ts-range"}),v=e("output",{for:w.id}),$=St({id:Z("slide"),onchange:()=>p({type:"slide",by:$.value})},
t.get("view").slides),T=null;w.addEventListener("input",()=>{v.textContent=`${w.value} µm`;let M={type:"flat",um:Number(
w.value)};u===null?p(M):T=M});let{box:D,unit:S}=h.drawing;h.drawing.land.classList.add("tsp-clear"),h.drawing.frame.prepend(
c);let L=(...M)=>e("span",{class:"ts-pair"},...M);l.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),l.alert,o,h.drawing.frame,i,e("div",{class:"ts-tools"},b,L(e("label",{for:$.id},"the other face is"),$),L(a,W("1 m\
inute passes",()=>p({type:"time",by:1})),W("5 minutes pass",()=>p({type:"time",by:5}))),L(e("label",{for:w.id},"faces ou\
t of flat by"),w,v)),h.tools,d,e("details",{class:"ts-keys"},e("summary",{},"Passes laid"),h.empty,h.list));function C(){
let M=getComputedStyle(s).color.match(/\d+(\.\d+)?/g);return M?M.slice(0,3).map(Number):[0,0,0]}let k="",f="";function m(){
let M=t.get("view"),N=r[M.closed?"closed":"film"],g=t.get("grid"),P=g instanceof DataView?new Uint8Array(g.buffer,g.byteOffset,
g.byteLength):new Uint8Array(g);As(c,P,M.shape,N,C(),!M.closed);let[_,K]=M.shape,[Q,q]=[M.corner[0]-M.pitch/2,M.corner[1]-
M.pitch/2],H=(J,ot)=>`${(100*J/ot).toFixed(3)}%`;c.style.left=H(Q-D.left,D.width),c.style.width=H(K*M.pitch,D.width),c.style.
top=H(D.high-q-_*M.pitch,D.height),c.style.height=H(_*M.pitch,D.height);let F=new Set(P.map(J=>M.closed?J:J&15)),z=N.filter(
([J])=>F.has(J)),et=`${z.map(([,J])=>J)} ${C()}`;et!==k&&(k=et,i.replaceChildren(...z.map(J=>Pn(J,C()))))}let x=j("g");h.
drawing.over.append(x);let y=([M,N])=>[M-D.left,D.high-N];function E([M,N]){let g=N.map(P=>{let[_,K]=y(P);return`M${_.toFixed(
1)} ${K.toFixed(1)}h0.01`});return j("path",{d:g.join(""),class:"tsp-lump","stroke-width":2*M})}function A(M){let[N,g]=y(
M[M.length-1]),P=`M${N-1.3*S} ${g-S}h${2.6*S}l${-1.3*S} ${2.2*S}Z`;return[j("path",{d:h.drawing.path(M),class:"tsp-way",
"stroke-width":S}),j("path",{d:P,class:"tsp-out"})]}function U(){let M=t.get("view");if(u!==null&&M.turn!==u)return;u=null;
let N=JSON.stringify([M.entries,M.notes]);if(N!==f&&h.show(M.entries,M.notes),f=N,h.drawing.strokes([]),m(),x.replaceChildren(
...M.lumps.map(E),...M.leaks.flatMap(A)),h.drawing.svg.classList.toggle("tsp-shut",M.closed),h.drawing.svg.classList.toggle(
"tsp-clean",M.closed||M.clean),o.textContent=M.finding,$.value=M.slide,a.textContent=`minute ${M.minute}`,b.textContent=
M.closed?"Lift the face off again":"Close the face",T===null&&(w.value=String(M.flat),v.textContent=`${M.flat} µm`),d.replaceChildren(
...Mt(M.facts)),T===null)return;let g=T;T=null,p(g)}l.follow("change:view",U),l.follow("msg:custom",M=>{M.type==="troubl\
e"&&(u=null,h.drawing.strokes([]))});let O=new MutationObserver(()=>setTimeout(m,Bn));return O.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),U(),()=>{l.close(),O.disconnect()}}function Ts(t){return Ct(t,(s,n,r)=>{let o=qt(),a=e("div",{class:"tsp-section"}),d="",i=e("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,e("div",{class:"tsg-gauge"},o.node,e("div",{},`Depth gauge on \
a bridge of ${s.bridge} mm, one mark 0.01 mm`))),c=s.places.map(([u,p])=>[u,e("button",{type:"button",class:"ts-button",
onclick:()=>n({place:u})},p)]),l=[e("p",{class:"ts-hint"},s.rule),Lt(e("span",{},"Set the gauge down at"),...c.map(([,u])=>u))];
return s.readingsOnly||(l.push(Lt(pt("Lip looks towards",s.sides,r.lip,u=>n({lip:u})).row,pt("Lip is",s.greases,r.grease,
u=>n({grease:u})).row,s.sleeves.length?pt("It went",s.sleeves,r.sleeve,u=>n({sleeve:u})).row:"")),l.push(ft("Drive it to\
 a depth",{min:s.least,max:s.most,step:.05,value:r.depth,words:u=>`${u.toFixed(2)} mm${u<0?", proud":""}`,onInput:u=>n({
depth:u})}).row,ft("Lean",{min:0,max:s.mostLean,step:.02,value:r.lean,words:u=>u?`${u.toFixed(2)} mm across`:"square",onInput:u=>n(
{lean:u})}).row)),{picture:i,controls:l,set(u,p){u.section!==d&&(d=u.section,a.innerHTML=d),a.querySelector(".tsl-moving")?.
setAttribute("transform",u.placed),o.set(u.dial,u.words);for(let[h,b]of c)b.setAttribute("aria-pressed",String(h===p.place))}}})}function Ns({model:t,el:s}){let n=t.get("about"),r=t.get("shown").state,o=qt(),a=n.readingsOnly?null:ls(n),d=e("p",{class:"\
ts-finding",role:"status"}),i=e("div",{}),c=Ft((k,f)=>T.send({type:"set",state:k,turn:f})),l=k=>{r={...r,...k},c.ask(r)},
u=(k,f)=>{let m=[...r.shims];m[k]=f,l({shims:m.filter(Boolean),turns:0})},p=(k,f,m)=>W(k,f,{"aria-pressed":m}),h=W("Turn\
 the shaft ten times",()=>l({turns:r.turns+10})),b=p("Pull the shaft away",()=>l({side:"away"}),"true"),w=p("Push it to \
the dial",()=>l({side:"towards"}),"false"),v=pt("Plunger",n.plungers,r.plunger,k=>l({plunger:k})),$=[e("div",{class:"ts-\
tools"},n.rolls?h:null,v.row,b,w)];if(!n.readingsOnly){let k=pt("Shim",n.shelf,r.shims[0],m=>u(0,m)),f=n.second?pt("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",m=>u(1,m)):null;$.unshift(e("div",{class:"ts-tools"},k.row,f?.row)),$.
push(ft("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:m=>l({warmth:m}),words:m=>m?`case ${Math.round(n.caseRise*
m/100)} K warmer`:"cold, as at the bench"}).row)}let T=Y({model:t,el:s},{kind:"rig"}),D=e("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});D.innerHTML=n.section;let S=[e("p",{class:"ts-who"},n.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),T.alert,e("div",{class:"\
tsg-beside"},D,e("div",{class:"tsg-gauge"},o.node,e("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...$,d,
a&&e("div",{},e("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),e("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];T.show(...S.filter(Boolean));function L(){let k=t.get("show\
n");c.waiting||(r=k.state),o.set(k.dial,k.dialWords),b.setAttribute("aria-pressed",String(k.state.side==="away")),w.setAttribute(
"aria-pressed",String(k.state.side==="towards")),d.textContent=k.finding,a&&(a.set(k.cold,k.warm,k.words.join(" ")),i.replaceChildren(
...k.words.map(f=>e("p",{},f)))),c.answered(k.turn)}let C=()=>c.free();return T.follow("change:shown",L),T.follow("msg:c\
ustom",C),L(),T.close}function Is(t){return Ct(t,(s,n,r)=>{let o=e("div",{tabindex:"0",role:"group","aria-label":s.name}),a="",d=s.pickers.map(
({key:c,label:l,options:u})=>pt(l,u,r[c],p=>n({[c]:p})).row),i=s.sliders.map(({key:c,label:l,min:u,max:p,step:h,unit:b,places:w})=>ft(
l,{min:u,max:p,step:h,value:r[c],words:v=>`${v.toFixed(w)} ${b}`,onInput:v=>n({[c]:v})}).row);return{picture:o,controls:d.
length?[Lt(...d),...i]:i,set(c){c.drawing!==a&&(a=c.drawing,o.innerHTML=a)}}})}function Ds({model:t,el:s}){let n=t.get("plan"),r=e("p",{class:"ts-finding",role:"status"}),o=e("div",{class:"tsj-band"}),
a=e("div",{class:"tsj-section"}),d=e("dl",{class:"ts-facts"}),i=null,c=null,l=(f,m)=>{c={...c,[f]:m},i===null&&u()};function u(){
i=Z("choice"),L.send({type:"choose",chosen:c,turn:i}),c=null}let p=e("div",{class:"tsj-settings"}),h=(f,m,x)=>{let y=Z("\
set");return m.id=y,p.append(e("label",{for:y},f),e("span",{class:"tsj-slide"},m,x)),m},b=(f,m,x)=>h(m,e("select",{class:"\
ts-box",onchange:y=>l(f,y.target.value)},...ht(x.map(y=>typeof y=="string"?[y,y]:y)))),w=(f,m,x)=>h(m,e("input",{type:"r\
ange",oninput:y=>l(f,Number(y.target.value))}),x),v={group:b("group","Bolt of the unit",n.groups),thread:b("thread","Thr\
ead",n.threads),strength:b("strength","Strength class",n.classes),state:b("state","State of the thread",n.states),tool:b(
"tool","Tool",n.tools)},$=e("output",{class:"tsj-figure"}),T=w("torque_nm","Torque",$),D=e("output",{class:"tsj-figure"}),
S=w("engagement_mm","Thread that meets",D),L=Y({model:t,el:s},{kind:"rig"});L.show(e("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),L.alert,r,o,e("div",{class:"tsj-bench"},p,a),d);let C=(f,m,x,y,E,A)=>{Ot(f,{min:m,max:x,
step:y}),i===null&&(f.value=String(E)),f.setAttribute("aria-valuetext",A)};function k(){let f=t.get("view");if(i!==null&&
f.turn!==i)return;i=null,c!==null&&u();let{chosen:m}=f;r.textContent=f.finding,o.innerHTML=f.band,a.innerHTML=f.section,
d.replaceChildren(...Mt(f.facts));for(let[x,y]of Object.entries(v))y.value=m[x];C(T,1,f.topTorque,.5,m.torque_nm,f.torqueText),
$.textContent=f.torqueText,C(S,f.lowEngagement,f.topEngagement,.5,m.engagement_mm,f.engagementText),D.textContent=f.engagementText}
return L.follow("change:view",k),k(),L.close}function Bs({model:t,el:s}){let n=re(t.get("picture")),r=Y({model:t,el:s},{kind:"rig"});return r.show(r.alert,e("p",{class:"\
ts-finding"},t.get("finding")),...n.nodes),r.close}function Ut(t,s){return(t.find(([n])=>n===s)??t[0])[2]}function xe(t,s){return t.find(([,,n])=>s!==void 0&&n.includes(s))?.[0]}
var ye=(t,s)=>[...t.slice(s+1),...t.slice(0,s+1)];function Ps(t,{stages:s,stage:n,step:r,labels:o,isOpen:a}){let d=Ut(s,
n),i=d.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let l=s.map(([h])=>h),u=t==="ArrowLeft"?-1:1,p=Ut(s,l[(l.
indexOf(n)+u+l.length)%l.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return d[Math.min(i+1,d.length-1)];if(t==="A\
rrowUp")return d[Math.max(i-1,0)];if(t==="Home")return d[0];if(t==="End")return d.at(-1);if(t.length!==1||t===" ")return;
let c=t.toLowerCase();return ye(d,i).find(l=>o[l].toLowerCase().startsWith(c))}function js({stages:t,stage:s,step:n,isOpen:r}){
let o=Ut(t,s),a=t.flatMap(([,,i])=>i),d=a.indexOf(String(o.at(-1)));return ye(o,o.indexOf(String(n))).find(r)??ye(a,d).find(
r)}function Rs({model:t,el:s}){let n=t.get("plan"),r=e("p",{class:"ts-finding"}),o=e("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=e("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>Q()},
...ht(n.stages.map(([I,G])=>[I,G]))),d=nt(n.marked?"Next open step":"Next ready step",()=>M("next"));d.classList.add("ts\
-next");let i=e("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this sta\
ge",onkeydown:I=>g(I)}),c=e("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the s\
tage, Enter takes a step in hand; Enter again does it."),l=e("div",{class:"ts-hand",role:"group","aria-label":"Step in h\
and",onkeydown:I=>{I.key!=="Enter"||!I.target.matches("input[type=radio], .ts-number-box")||(I.preventDefault(),t.get("h\
and").stands?_():ot())}}),u=e("div",{class:"ts-scroll ts-fit"}),p=e("dl",{class:"ts-facts"}),h=e("ul",{class:"ts-sentenc\
es"}),b=e("p",{class:"ts-prompt"},"Wrong so far"),w=e("select",{class:"ts-box ts-before","aria-label":"A step that stand\
s"}),v=nt("Take out again",()=>{w.value&&f({type:"out",step:w.value},"hand")}),$=nt("Put the tools down",()=>f({type:"ov\
er"},"told"));$.classList.add("ts-over");let T=e("div",{}),D=e("p",{class:"ts-status"}),S=e("details",{ontoggle:()=>{S.open!==
!!t.get("view").record&&f({type:"record",open:S.open})}},e("summary",{},"Build record"),T),L=Y({model:t,el:s},{kind:"rig"});
L.show(e("p",{class:"ts-who"},n.who),L.alert,r,D,o,e("div",{class:"ts-build"},e("div",{class:"ts-build-left"},e("div",{class:"\
ts-tools"},a,d),i,c),l),e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},w,v),$),u,p,b,h,S);let C=0,k=null;function f(I,G=null){
C+=1,k=G&&{turn:C,focus:G},s.setAttribute("aria-busy","true"),L.send({...I,turn:C})}let m="",x=null,y="next",E=I=>!t.get(
"view").done.includes(I),A=()=>X(i,"[data-step]"),U=I=>A().find(G=>G.dataset.step===I)?.focus(),O=()=>({stages:n.stages,
stage:a.value,step:x,isOpen:E});function M(I,G){y=I,f(I==="list"?{type:"take",step:G}:{type:"next"},"hand")}function N(I){
a.value=xe(n.stages,I)??a.value,x=I,Q(),U(I)}function g(I){if(bt(I))return;let G=Ps(I.key,{...O(),labels:n.labels});G&&(I.
preventDefault(),N(G))}function P(){let I=js(O());I?y==="next"?d.focus():N(I):$.focus()}function _(){let I=t.get("view").
done.length>=Object.keys(n.labels).length;y==="next"&&!I?M("next"):P()}function K(I){let{done:G,ready:ct}=t.get("view");
return G.includes(I)?{sign:"✓",word:"done"}:ct.includes(I)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"open":
"waits"}}function Q(){let I=Ut(n.stages,a.value);(x===null||!I.includes(x))&&(x=I.find(E)??I[0]);let G=t.get("hand").step,
ct=JSON.stringify([a.value,I.map(K),G]);if(ct===m){for(let wt of A())wt.tabIndex=wt.dataset.step===x?0:-1;return}m=ct;let dt=A().
find(wt=>wt===document.activeElement)?.dataset.step;i.replaceChildren(...I.map(wt=>q(wt,G))),dt&&U(dt)}function q(I,G){let{
sign:ct,word:dt}=K(I);return e("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${dt}`,"data-step":I,tabindex:I===
x?"0":"-1","aria-current":I===G?"step":!1,"aria-label":`${n.labels[I]}: ${dt}`,onclick:()=>{x=I,M("list",I)}},Et(ct),n.labels[I])}
let H="",F=new Map;function z(I){let G=Rt(I),ct=e("p",{class:"ts-read",id:G.read,role:"status"}),dt=0,wt=R=>{f({type:"se\
t",name:I.name,value:R}),dt=C},kt=Pt(I).make(I,G,wt,()=>{}),B=Ht(I,G,null);return B.append(kt.element,ct),B.dataset.field=
I.name,{element:B,flush:()=>kt.flush?.(),show(R={},tt){if(tt<dt)return;kt.show(R);let ut=R.read?`read as ${R.read}`:"";ct.
textContent=R.error?`▲ Look again: ${R.error}`:ut}}}let et=I=>e("dl",{class:"ts-facts"},...Mt(I));function J(){let I=t.
get("hand"),G=JSON.stringify(I);if(G===H)return;if(H=G,l.dataset.stands=String(!!I.stands),F=new Map((I.fields??[]).map(
kt=>[kt.name,z(kt)])),!I.step){l.replaceChildren(e("p",{class:"ts-hint"},"No step in hand. Choose one from the list, or \
press the button above it."));return}let ct=nt(`Do it: ${I.label}`,ot);ct.classList.add("ts-do");let dt=I.stands?[nt("Go\
 on",_),nt("Take it out again",()=>f({type:"out",step:I.step},"hand"))]:[ct];l.replaceChildren(e("p",{class:"ts-prompt t\
s-hand-name",tabindex:"-1"},I.label),...I.plain.map(kt=>e("p",{class:"ts-hint"},kt)),...I.cautions.map(kt=>e("p",{class:"\
ts-caution"},e("b",{},"Take care: "),kt)),...I.read.length?[e("p",{class:"ts-prompt"},"Read at the bench"),et(I.read)]:[],
...I.card.length?[et(I.card)]:[],...[...F.values()].map(kt=>kt.element),e("div",{class:"ts-tools"},...dt));let wt=xe(n.stages,
I.step);wt&&([a.value,x]=[wt,I.step])}function ot(){for(let I of F.values())I.flush();f({type:"do"},"after")}function V(){
let I=t.get("view").asked_back,G=X(l,"[data-field]").find(wt=>wt.dataset.field===I),ct=G&&X(G,"input:not(:disabled), sel\
ect, button"),dt=X(l,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return ct?.[0]??
dt[0]}function it(){let I=t.get("view"),G=I.told;r.textContent=I.finding,D.textContent=I.status,D.hidden=!I.status,o.textContent!==
G.join("")&&o.replaceChildren(...G.map(dt=>e("p",{},dt))),J(),Q();for(let[dt,wt]of F)wt.show(I.states[dt],I.turn);if(u.dataset.
shown!==I.figure&&(u.innerHTML=I.figure,u.dataset.shown=I.figure),p.replaceChildren(...Mt(I.facts)),h.replaceChildren(...Dt(
I.faults.map(([,dt])=>dt))),b.hidden=h.hidden=!I.faults.length,mt(I.done),T.innerHTML=I.record,S.open=!!I.record,s.setAttribute(
"aria-busy",String(I.turn<C)),!k||I.turn<k.turn)return;let{focus:ct}=k;k=null,ct==="told"?o.focus():ct==="after"&&!t.get(
"hand").step?P():(V()??d).focus()}function mt(I){if(w.disabled=v.disabled=!I.length,w.dataset.done===I.join(" "))return;
w.dataset.done=I.join(" ");let G=[...I].reverse();w.replaceChildren(...ht(G.map(ct=>[ct,n.labels[ct]])))}return L.follow(
"change:view",it),it(),L.close}function jn(t){let s=j("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=rt(
r,o,r,o,"tsi-adapter"),d=j("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=rt(r,o+74,r,o+74,"tsi-arm"),c=at(r,o+94,"");return s.
append(rt(r,o,r+440,o,"tsi-lever"),a,d,j("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),at(r+440,o-20,"hand, middle of the gr\
ip","end"),at(r+20,o-20,"square drive","start"),rt(r+440,o+10,r+440,o+84,"tsg-centre"),i,c,at(8,242,"lengths to scale","\
start")),{node:s,set(l){let u=l.state.angle/180*Math.PI,p=r-l.state.reach*n*Math.cos(u),h=o-l.state.reach*n*Math.sin(u);
Ot(a,{x2:p,y2:h}),Ot(d,{cx:p,cy:h}),Ot(i,{x1:p,x2:r+440}),Ot(c,{x:(p+r+440)/2}),c.textContent="the lever from bolt to ha\
nd, along the wrench",s.setAttribute("aria-label",`${t.name}. ${l.words}`)}}}function Hs(t){return Ct(t,(s,n,r)=>{let o=jn(
s),a=(i,c,l,u,p,h)=>ft(i,{min:l,max:u,step:p,value:r[c],words:b=>`${b} ${h}`,onInput:b=>n({[c]:b})}),d={setting:a("Setti\
ng","setting",s.low,s.high,s.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(s.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{picture:o.node,controls:Object.values(d).map(i=>i.row),
set(i,c){o.set(i);for(let[l,u]of Object.entries(d))u.set(c[l])}}})}var $e=t=>typeof t=="string"?t:t.text;function _s(t,s,n){let r=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
o=a=>$e(a.cells[s]??"").trim();return[...t].sort((a,d)=>{let[i,c]=[o(a),o(d)];if(!i||!c)return+!i-+!c;let[l,u]=[Number.parseFloat(
i),Number.parseFloat(c)],p=Number.isNaN(l)||Number.isNaN(u)||l===u?r.compare(i,c):l-u;return n?-p:p})}function Wt(t,s){let n=document.getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${r}${t}/${s.split("/").map(encodeURIComponent).join("/")}`}function Rn(t){let s="";for(let n=0;n<t.length;n+=32768)s+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(s)}
async function Ks(t,s,n){let r=0;do{let o=new Uint8Array(await n.slice(r,r+524288).arrayBuffer()),a=r===0;r+=524288;let d=r>=
n.size;t.send({type:"file",field:s,name:n.name,data:Rn(o),first:a,last:d})}while(r<n.size)}var Hn=400;function Fs({model:t,el:s}){let n=Y({model:t,el:s},{kind:"desk"}),r=e("p",{class:"ts-said",role:"status"}),o=e(
"div",{class:"ts-desk-body"}),a=e("div",{class:"ts-busy"}),d=e("nav",{"aria-label":"Pages of the desk",class:"ts-desk-pa\
ges"}),i=t.get("cohort"),c=e("input",{id:Z("by"),class:"ts-box",autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"\
by",name:c.value})});c.value=t.get("by"),n.show(e("header",{class:"ts-desk-top"},e("b",{},It([i.name,i.college]).join(",\
 ")),e("span",{class:"ts-pair"},e("label",{for:c.id},"At the desk (your name, for the trail)"),c)),i.invented?e("p",{class:"\
ts-hint"},i.invented):null,d,a,n.alert,r,o);let l=new Map,u=new Map,p=new Map,h=new Map,b=!1,w=()=>b||Object.keys(t.get(
"busy")).length>0,v=(g,P={})=>{w()||n.isLost()||(g!=="look"&&(r.textContent="",n.alert.textContent=""),t.send({type:g,...P}))};
async function $(g,P=""){if(w()||n.isLost())return;b=!0;try{for(let[K,Q]of h){let[q]=Q.files??[];q&&await Ks(t,K,q)}}finally{
b=!1}let _=[...u].map(([K,Q])=>[K,[...Q]]);v("do",{act:g,of:P,typed:Object.fromEntries(l),ticked:Object.fromEntries(_)})}
function T(g){let{name:P,of:_}=g,K=Z("field"),Q=g.hint?e("span",{class:"ts-hint",id:`${K}-hint`},g.hint):null,q={id:K,"d\
ata-key":`field:${P}`,"aria-describedby":Q?.id},H=e("label",{for:K},g.label);if(!l.has(P)&&_!=="file"&&l.set(P,_==="tick"?
g.value==="yes":g.value),_==="file"){let et=h.get(P)??e("input",{type:"file",class:"ts-file"});for(let[J,ot]of Object.entries(
q))ot&&et.setAttribute(J,ot);return h.set(P,et),e("div",{class:"ts-desk-field"},H,et,Q)}if(_==="tick"){let z=e("input",{
type:"checkbox",...q});z.checked=l.get(P)===!0,z.addEventListener("change",()=>l.set(P,z.checked));let et=e("label",{class:"\
ts-option",for:K},z,g.label);return e("div",{class:"ts-desk-field"},et,Q)}let F=_==="choice"?St(q,g.options):_==="long"?
e("textarea",{class:"ts-box",rows:"3",maxlength:"2000",...q}):e("input",{class:"ts-box",autocomplete:"off",maxlength:"40\
0",...q});return F.value=String(l.get(P)??""),_==="choice"&&!g.options.some(([z])=>z===l.get(P))&&(F.value=g.options[0]?.[0]??
"",l.set(P,F.value)),F.addEventListener("input",()=>l.set(P,F.value)),e("div",{class:"ts-desk-field"},H,F,Q)}function D(g){
let P=Z("form"),_=e("div",{class:"ts-doing"}),K=()=>{_.replaceChildren(...g.acts.map(q=>W(q.label,()=>q.sure?Q(q):$(q.id),
{class:q.first?"ts-button ts-first":"ts-button","data-key":`act:${q.id}`})))},Q=q=>{let H=Z("sure"),F=e("div",{class:"ts\
-question",role:"group",tabindex:-1,"aria-labelledby":H},e("p",{id:H},q.sure),e("div",{class:"ts-doing"},W(`Yes: ${q.label}`,
()=>$(q.id),{"data-key":`act:${q.id}`}),W("No, leave it",()=>{K(),X(_,`[data-key="act:${q.id}"]`)[0]?.focus()})));_.replaceChildren(
F),F.focus()};return K(),e("form",{class:"ts-desk-form","aria-labelledby":g.title?P:null,onsubmit:q=>q.preventDefault()},
g.title?e("h3",{id:P},g.title):null,g.hint?e("p",{class:"ts-hint"},g.hint):null,g.fields.length?e("div",{class:"ts-desk-\
fields"},...g.fields.map(T)):null,g.acts.length?_:null)}function S(g,P){if(typeof g=="string")return g;let _=g.act?W(g.text,
()=>$(g.act,g.of),{class:"ts-cell","aria-label":g.label||null,"data-key":P}):g.text;return e("span",{},g.shape?Et(g.shape):
null,_)}function L(g){let P=Z("table"),_=e("h3",{id:P},g.title);if(!g.rows.length)return e("section",{},_,e("p",{},g.empty));
let K=u.get(g.id)??new Set,Q=new Set(g.rows.map(({key:V})=>V));for(let V of K)Q.has(V)||K.delete(V);u.set(g.id,K);let q=e(
"tr",{}),H=e("tbody",{}),F=g.pick?e("input",{type:"checkbox","aria-label":"all","data-key":`all:${g.id}`}):null,z=()=>{F&&
(F.checked=K.size===g.rows.length,F.indeterminate=K.size>0&&!F.checked)},et=()=>{let V=p.get(g.id),it=V?_s(g.rows,V.column,
V.down):g.rows;H.replaceChildren(...it.map(ot)),q.replaceChildren(...F?[e("th",{class:"ts-tick"},F)]:[],...g.columns.map(
J)),z()},J=(V,it)=>{let mt=p.get(g.id),I=mt?.column===it,G=I?mt.down?"descending":"ascending":null,ct=()=>{p.set(g.id,{column:it,
down:I&&!mt.down}),et(),X(q,`[data-key="${dt}"]`)[0]?.focus()},dt=`sort:${g.id}:${it}`;return e("th",{scope:"col","aria-\
sort":G,class:g.numbers.includes(it)?"ts-figure":null},W(V,ct,{class:"ts-sort","data-key":dt}),I?Et(mt.down?"▼":"▲"):
null)},ot=V=>{let it=g.pick?e("input",{type:"checkbox","aria-label":V.cells.slice(0,3).map($e).join(" "),"data-key":`row\
:${g.id}:${V.key}`}):null;return it&&(it.checked=K.has(V.key),it.addEventListener("change",()=>{it.checked?K.add(V.key):
K.delete(V.key),z()})),e("tr",{},it?e("td",{class:"ts-tick"},it):null,...V.cells.map((mt,I)=>e(I?"td":"th",{scope:I?null:
"row",class:g.numbers.includes(I)?"ts-figure":null},S(mt,`cell:${g.id}:${V.key}:${I}`))))};return F?.addEventListener("c\
hange",()=>{if(K.clear(),F.checked)for(let{key:V}of g.rows)K.add(V);for(let V of X(H,"td.ts-tick input"))V.checked=F.checked}),
et(),e("section",{},e("div",{class:"ts-desk-caption"},_,W("Save as CSV",()=>t.send({type:"export",table:g.id}),{"aria-la\
bel":`Save as CSV: ${g.title}`,"data-key":`export:${g.id}`})),e("div",{class:"ts-desk-scroll",role:"region",tabindex:0,"\
aria-labelledby":P},e("table",{class:"ts-table","aria-labelledby":P},e("thead",{},q),H)))}function C(g){if(g.kind==="tab\
le")return L(g);if(g.kind==="form")return D(g);if(g.kind==="link"){let P={class:"ts-link",href:Wt("files",g.path),target:"\
_blank"};return e("p",{},e("a",{...P,"data-key":`link:${g.path}`},g.text))}return g.how==="head"?e("h3",{},g.text):e("p",
{class:g.how==="hint"?"ts-hint":null},g.text)}function k(){let g=t.get("page");d.replaceChildren(...t.get("pages").map(([
P,_])=>W(_,()=>v("page",{name:P}),{class:"ts-button","aria-current":P===g?"page":null,"data-key":`page:${P}`})))}let f=t.
get("cleared"),m=t.get("page"),x=()=>X(s,"[data-key]");function y(){let g=x().find(H=>H===document.activeElement)?.dataset.
key,P=o.contains(document.activeElement),_=X(o,".ts-desk-scroll").map(H=>H.scrollTop);(t.get("page")!==m||t.get("cleared")!==
f)&&(l=new Map,u=new Map,h=new Map,{page:m,cleared:f}={page:t.get("page"),cleared:t.get("cleared")}),r.textContent=t.get(
"said"),n.alert.textContent=t.get("trouble"),k();let K=new Map(t.get("pages")),Q=e("h2",{tabindex:-1},K.get(m));if(o.replaceChildren(
Q,...t.get("parts").map(C)),X(o,".ts-desk-scroll").forEach((H,F)=>{H.scrollTop=_[F]??0}),!g&&!P)return;let q=x().find(H=>H.
dataset.key===g);(q??Q).focus({preventScroll:!!q})}let E;function A(){let g=t.get("busy");if(o.setAttribute("aria-busy",
String(w())),clearTimeout(E),!Object.keys(g).length){a.replaceChildren();return}let{doing:P,done:_,of:K}=g,Q=K?`${P}: ${_}\
 of ${K}`:`${P} …`,q=()=>{a.replaceChildren(e("progress",K?{max:K,value:_,"aria-label":P}:{"aria-label":P}),e("span",{
role:"status"},Q))};a.childElementCount?q():E=window.setTimeout(q,Hn)}n.follow("change:turn",()=>setTimeout(y,0)),n.follow(
"change:busy",A),n.follow("change:by",()=>{c.value=t.get("by")}),n.follow("msg:custom",g=>{if(g.type!=="save")return;let P=URL.
createObjectURL(new Blob([`\uFEFF${g.text}`],{type:"text/csv"}));e("a",{href:P,download:g.name}).click(),setTimeout(()=>URL.
revokeObjectURL(P),1e3)}),y(),A();let U=!0,O=new IntersectionObserver(([g])=>{U=g.isIntersecting});O.observe(s);let M=0,
N=setInterval(()=>{let g=t.get("every");M+=1,g&&M>=g&&U&&!document.hidden&&(M=0,v("look"))},1e3);return()=>{clearInterval(
N),clearTimeout(E),O.disconnect(),n.close()}}function Se(t,s=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=d=>String(d).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return s.toDateString()===
n.toDateString()?o:`${a} ${o}`}var _n="twoshaft-unsent:";function qs(t,s){let n=_n+s,r=()=>{if(!t||!s)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!s))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,d,i,c=new Date)=>o({...r(),[a]:{value:d,
base:i,at:c.toISOString()}}),drop(a){let{[a]:d,...i}=r();d&&o(i)}}}function Us(t,s){return JSON.stringify(t.value)===JSON.
stringify(s.value??null)?!1:(s.revision??0)===t.base?!0:!(Date.parse(s.saved??"")>Date.parse(t.at))}var jt=null,Kn="input, button, select, textarea, summary, a, [tabindex]",Ws=t=>[...t.querySelectorAll(Kn)];function zs(t,s){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?jt={form:s,at:Ws(t).indexOf(a),from:null}:jt?.form===s&&t.
isConnected&&(jt=null))},r=({target:a})=>{jt?.form===s&&a instanceof HTMLInputElement&&(jt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(jt?.form!==s||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:d}=jt,i=Ws(t)[a];i?.focus({preventScroll:!0}),
d!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(d,d)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var Fn=["print","colour"];function zt(t){for(let s of Fn){let n=t?.[s];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${s}`,n):document.documentElement.removeAttribute(`data-ts-${s}`))}}function Gs(){zt({print:"",colour:""})}function Ys(t,s,n){let r=()=>t.get("bench")??{},o=e("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let d=e("span",{}),i=e("p",{class:"ts-status",role:"status"}),c=W("Use these figures",()=>h("yes")),l=W(
"Go back to the drawn figures",()=>h("no")),u=!1,p=a.map(w=>{let v=Z("bench"),$=w.options.length?e("select",{class:"ts-b\
ox",id:v,"aria-describedby":`${v}-read`},e("option",{value:""},"choose"),...ht(w.options)):e("input",{type:"text",class:"\
ts-box ts-number-box",id:v,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${v}-hint ${v}-read`}),
T=e("span",{class:"ts-hint",id:`${v}-hint`},w.hint),D=e("p",{class:"ts-read",id:`${v}-read`}),S=w.text,L=()=>{$.value.trim()!==
S.trim()&&(S=$.value,s({type:"bench",name:w.name,value:$.value}))};return $.addEventListener(w.options.length?"change":"\
blur",L),$.addEventListener("keydown",C=>{C.key==="Enter"&&(C.preventDefault(),L())}),{name:w.name,flush:L,input:$,element:e(
"div",{class:"ts-bench-row"},e("label",{for:v},w.prompt),e("div",{class:"ts-line-of"},$,T),D),show(C){if(!C)return;(document.
activeElement!==$||$.value===S)&&($.value=C.text,S=C.text),$.setAttribute("aria-invalid",String(!!C.error)),D.classList.
toggle("ts-error",!!C.error);let k=C.error?[Et("▲")," "]:[],f=C.read&&!C.options.length&&`read as ${C.read}`,m=C.error||
[f,C.origin].filter(Boolean).join(", ");D.replaceChildren(...k,m)}}}),h=w=>{for(let v of p)v.flush();u=!0,s({type:"bench",
name:"in-use",value:w})};o.append(e("summary",{},d),e("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),e("div",{class:"ts-bench-rows"},...p.map(w=>w.element)),i,e("div",{class:"ts-tools"},c,l));function b(){
let w=r(),v=new Map(w.rows?.map(S=>[S.name,S]));for(let S of p)S.show(v.get(S.name));d.textContent=w.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",l.hidden=!w.wanted,c.hidden=w.used&&!w.stale;let $=w.wanted&&
!w.used?"▲ ":w.used?"● ":"○ ",T=w.used?"in use":w.wanted?`not used; the drawn figures stand. ${w.refused}`:"not us\
ed; the drawn figures stand",D=w.stale?` The tables and choices of this task are still the ones from before. ${w.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${$}${T}${D}`,w.wanted&&
!w.used&&(o.open=!0)}return{element:o,show:b,hear(w){w.type!=="bench-saved"||w.name!=="in-use"||!u||(u=!1,r().stale&&n())},
lost(){for(let w of[c,l,...p.map(v=>v.input)])w.disabled=!0}}}var qn=5e3,Un=2e3,Wn={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Le="kept in this browser until it can be\
 saved";function zn(t,s,n,r){let o=Pt(t),a=Rt(t),d=e("p",{class:"ts-read",id:a.read}),i=e("p",{class:"ts-status",id:a.status,
role:"status"}),c=0,l=null,u={},p=()=>{clearTimeout(l??void 0),l=null},h=S=>{n.put(t.name,S,u.revision??0),b(S)},b=S=>{c+=
1,$("wait",r()?Le:"saving"),p(),l=window.setTimeout(()=>$("wait",Le),qn),s({type:"save",name:t.name,value:S,turn:c})},w=o.
make(t,a,h,(S,L)=>{S?(n.put(t.name,L,u.revision??0),$("wait","not saved yet: press Enter or leave the box")):l===null&&(n.
drop(t.name),T(u))}),v=Ht(t,a,a.status);o.status==="above"?v.append(i,w.element,d):v.append(w.element,d,i);function $(S,L){
i.className=`ts-status ts-status-${S}`,i.dataset.text!==L&&(i.dataset.text=L,i.replaceChildren(Et(Wn[S]),` ${L}`))}function T(S,L=!1){
if(u=S??{},w.show(u),d.replaceChildren(u.read?`read as ${u.read}`:""),!L)if(u.error){let{error:C,saved:k="",note:f}=u;$(
"unread",`Look again: ${C} Kept as typed, ${Se(k)}${f?`; ${f}`:""}.`)}else u.saved&&!u.blank?$("saved",`saved ${Se(u.saved)}${u.
note?`; ${u.note}`:""}`):$("none",o.blank??"not answered yet")}let D=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:v,show(S){l===null&&T(S,D())},saved(S){S.turn===c&&(w.pending?.()||n.drop(t.name),p(),T(S.state))},refused(S){
S.turn===c&&(p(),w.refused(),$("bad",`not saved: ${S.reason}`))},off(){clearTimeout(l??void 0),(l!==null||w.pending?.())&&
$("wait",Le)},catchUp(){let S=n.get(t.name);S&&(Us(S,u)?(w.show({...u,value:S.value,error:""}),b(S.value)):n.drop(t.name))},
flush:()=>w.flush?.(),summary:()=>({answered:!!u.saved&&!u.blank&&!u.error&&!u.short,unread:!!u.error,trouble:D(),waiting:l!==
null})}}function Vs({model:t,el:s}){let n=t.get("fields"),r=t.get("sheet"),o=qs(window.localStorage,r),a=!1,d=()=>a||p.isLost(),
i=n.map(L=>zn(L,b,o,d)),c=new Map(i.map(L=>[L.name,L])),l=e("p",{class:"ts-who"}),u=e("p",{class:"ts-total"});zt(t.get("\
look"));let p=Y({model:t,el:s},{kind:"form",lost(){for(let L of i)L.off();h.lost(),w()},line(L){a=L;for(let C of i)L?C.off():
C.catchUp();w()}}),h=Ys(t,p.send,()=>{s.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(e("div",
{class:"ts-top"},l,u),p.alert,h.element,...i.map(L=>L.element)),s.dataset.task=t.get("task_id");function b(L){p.send(L),
w()}function w(){let L=i.map(A=>A.summary()),C=L.filter(A=>A.answered).length,k=L.filter(A=>A.trouble).length,f=L.some(A=>A.
waiting),m=L.filter(A=>A.unread).length,x=k?`${k} not saved`:f?d()?"the rest kept in this browser":"saving":C&&!m?"all s\
aved":"",y=[`${C} of ${i.length} answered`,m?`${m} cannot be read`:"",x];u.textContent=y.filter(Boolean).join(", ");let E={
task:t.get("task_id"),answered:C,asked:i.length,unread:m};s.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:E}))}function v(){l.textContent=t.get("header");let L=t.get("states");for(let C of i)C.show(L[C.name]);w()}let $=0,
T=()=>{if(document.visibilityState==="hidden")for(let L of i)L.flush();document.visibilityState!=="visible"||Date.now()-
$<Un||($=Date.now(),p.send({type:"look"}))},D=r?new BroadcastChannel(`twoshaft-saved:${r}`):null;D?.addEventListener("me\
ssage",({data:L})=>{L===t.get("task_id")&&p.send({type:"look"})}),document.addEventListener("visibilitychange",T),s.addEventListener(
"focusin",L=>{L.relatedTarget instanceof Node&&s.contains(L.relatedTarget)||T()}),p.follow("change:states change:header",
v),p.follow("msg:custom",L=>{L.type==="saved"&&(c.get(L.name)?.saved(L),D?.postMessage(t.get("task_id"))),L.type==="refu\
sed"&&c.get(L.name)?.refused(L),w()}),p.follow("msg:custom",h.hear),p.follow("change:bench",h.show),v();for(let L of i)L.
catchUp();w(),h.show(),p.alert.textContent=t.get("notice");let S=zs(s,`${r}/${t.get("task_id")}`);return()=>{S(),D?.close(),
p.close(),document.removeEventListener("visibilitychange",T)}}function de(t,s,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:d},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:d,at:i}))},drop(a=Date.now()){t.removeItem(r),s.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(s.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var Gn={right:"●",other:"◆",unread:"▲"};function Yn(t){let s=Rt(t),n=e("p",{class:"ts-told",id:s.status,role:"stat\
us"}),r=null,o=Pt(t).make(t,s,i=>{r=i,o.show({value:r}),d(void 0)},(i,c)=>{i&&(r=c)}),a=Ht(t,s,s.status);a.append(o.element,
n);function d(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let c=i?[Et(Gn[i.how]),e("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...c)}return{name:t.name,element:a,value(){return o.flush?.(),r},show(i,c){i!==void 0&&(r=i,o.show(
{value:r,saved:"given"})),d(c)},still(i){o.setDisabled(i),a.classList.toggle("ts-given",i)}}}function Xs({model:t,el:s}){
let n=Y({model:t,el:s},{kind:"form"});s.classList.add("ts-question");let r=e("p",{class:"ts-title",role:"heading","aria-\
level":"3"}),o=e("p",{class:"ts-lead"}),a=e("dl",{class:"ts-facts"}),d=e("div",{class:"ts-asked"}),i=W(t.get("give"),()=>{
let v=Object.fromEntries(u.map($=>[$.name,$.value()]));n.send({type:"give",values:v})});i.classList.add("ts-first");let c=W(
"",()=>n.send({type:"fresh"})),l=t.get("all")?W(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,r,o,a,d,e("p",{class:"ts-acts"},i,c,l));let u=[],p=()=>{let v=t.get("values"),$=t.get("told");for(let L of u)
L.show(v[L.name],$[L.name]),L.still($[L.name]!==void 0&&$[L.name].how!=="unread");let T=u.some(({name:L})=>!$[L]||$[L].how===
"unread"),D=document.activeElement===i;if(i.hidden=!T,c.textContent=t.get("fresh"),c.hidden=T||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!D||T)return;let S=X(s,".ts-told")[0];S.tabIndex=-1,S.focus({preventScroll:!0})},h=()=>{(X(d,"input, sel\
ect, [tabindex]")[0]??(c.hidden?i:c)).focus({preventScroll:!0})},b=()=>{u=t.get("fields").map(Yn),d.replaceChildren(...u.
map(({element:v})=>v)),r.textContent=t.get("title"),r.hidden=!r.textContent,o.textContent=t.get("lead"),o.hidden=!o.textContent,
a.replaceChildren(...Mt(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let v=s.contains(
document.activeElement);b(),v&&h()}),n.follow("change:told change:values change:notice change:fresh",p),b();let w=t.get(
"place");if(w){let v=de(sessionStorage,localStorage,w).get();t.send({type:"who",id:v?.id??"",ticket:v?.ticket??""})}return()=>n.
close()}var Js="twoshaft-mine";var Vn={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},Xn={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"},ue=(t,s,n)=>e("a",{href:Wt("la\
b/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"ts-link"},s);function Zs(t){return e("ul",{class:"\
ts-gaps"},...t.map(({task:s,missing:n,asked:r,unread:o})=>e("li",{},`${s}: `,n===r?"nothing answered":n?`${n} of ${r} mi\
ssing`:"",...o.map(([a,d])=>e("span",{},e("b",{},"cannot be read: "),`“${a}” ${d}`)))))}function Jn(t){let s=({name:r})=>Number(
r.split("-").at(-1)),n=[...t].sort((r,o)=>s(r)-s(o)).flatMap(({notebooks:r})=>r.map(o=>[o.split("/").pop()??"",o]));localStorage.
setItem(Js,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(new Event("storage"))}function Qs({model:t,el:s}){
let n="",r=de(sessionStorage,localStorage,t.get("place")),o=Y({model:t,el:s},{kind:"start",lost:()=>{}}),a=e("div",{}),d=e(
"p",{class:"ts-said",role:"status"});o.show(o.alert,d,a);let i=(O,M={})=>{a.getAttribute("aria-busy")==="true"||o.isLost()||
(M.quietly||(a.setAttribute("aria-busy","true"),d.textContent="One moment.",o.alert.textContent=""),t.send({type:O,...M}))},
c=(O,M,N,g)=>e("button",{type:"button",class:g?"ts-button ts-first":"ts-button","data-key":M,onclick:N},O);function l(){
let O=Z("who"),M=Z("word"),N=e("select",{id:O,class:"ts-box","data-key":"who",required:!0},e("option",{value:""},"Choose\
 your name"),...t.get("people").map(([P,_])=>e("option",{value:P,selected:P===n},_)));N.addEventListener("change",()=>{n=
N.value});let g=e("input",{id:M,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"\
80","data-key":"word"});return e("form",{class:"ts-sign-in",onsubmit:P=>{P.preventDefault(),i("sign-in",{name:N.value,word:g.
value})}},e("h2",{},"Who is working?"),e("div",{class:"ts-pair"},e("label",{for:O},"Your name"),N),e("div",{class:"ts-pa\
ir"},e("label",{for:M},"Sign-in word from your slip"),g),e("button",{type:"submit",class:"ts-button ts-first","data-key":"\
sign-in"},"Sign in"),e("p",{class:"ts-hint"},t.get("kept")))}function u(O,M){let N=q=>`${q}:${O.name}`,g=e("div",{class:"\
ts-doing"});for(let q of O.feedback.slice(0,1))g.append(e("a",{href:Wt("files",q),target:"_blank",class:"ts-link","data-\
key":N("feedback")},"Read feedback"));for(let q of O.notebooks){let H=O.notebooks.length===1?"Open":`Open ${q.split("/").
pop()}`;g.append(ue(q,H,N(`open ${q}`)))}O.can_get&&g.append(c(O.notebooks.length?"Get again":"Get",N("get"),()=>i("get",
{name:O.name}),!O.notebooks.length)),O.can_hand_in&&g.append(c(O.receipt?"Hand in again":"Hand in",N("hand in"),()=>i("h\
and-in",{name:O.name})));for(let q of g.children)q.setAttribute("aria-label",`${q.textContent}: ${O.title}`);let P=t.get(
"asking")===O.name,_=O.receipt||O.unread>0,K=e("tr",{},e("th",{scope:"row"},O.title),e("td",{},O.due||"no date",O.overdue?
e("span",{class:"ts-small-line"},"date passed"):null),e("td",{},e("span",{class:"ts-shape","aria-hidden":"true"},Vn[O.state]||
""),e("b",{},Xn[O.state]||O.state),e("span",{class:"ts-small-line"},O.detail),M?e("span",{class:"ts-small-line"},`Mark: ${M}`):
null),e("td",{},g));if(P)return[K,e("tr",{},e("td",{colspan:4},h(O)))];if(!_||!O.gaps.length)return[K];let Q=e("td",{colspan:4},
e("b",{},p(O)),Zs(O.gaps));return[K,e("tr",{},Q)]}let p=({left:O,unread:M})=>It([O?`${O} ${O===1?"answer is":"answers ar\
e"} missing`:null,M?`${M} cannot be read`:null]).join(", ");function h(O){let M=Z("question"),N=e("div",{class:"ts-doing"});
for(let P of O.notebooks)N.append(ue(P,"Go on with it",`go on:${O.name}`));let g=p(O);return N.append(c(g?"It is my own \
work: hand in as it is":"It is my own work: hand in",`hand in anyway:${O.name}`,()=>i("hand-in",{name:O.name,own:!0}),!g)),
e("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":M,"data-key":"question"},e("p",{id:M},e("b",{},`${O.
title}: not handed in yet.${g?` ${g}.`:""}`),g?" An answer that is missing or cannot be read earns nothing.":null),g?Zs(
O.gaps):null,e("p",{},"By handing in you state: ",e("b",{},t.get("statement"))),N)}let b=new Set,w={met:"✓",enough:"◐",
"not yet":"○"};function v(O,M){let N=O.entries.map(K=>M.find(Q=>Q.name===K)).filter(K=>K!==void 0),g=O.lesson?ue(O.lesson,
`Lesson ${O.title}`,`lesson:${O.lesson}`):e("span",{class:"ts-small-line"},"no lesson here"),P=e("details",{open:b.has(O.
module)},e("summary",{"data-key":`outcomes:${O.module}`},`Outcomes: ${O.count||"none"}`),e("ul",{},...O.outcomes.map(([K,
Q,q,H])=>e("li",{},e("span",{class:"ts-shape","aria-hidden":"true"},w[K]||""),e("b",{},`${K}${q&&K==="enough"?`, ${q}`:""}\
: `),Q,q&&K==="not yet"?`. Still missing: ${q}`:"",H?` (${H})`:""))));P.addEventListener("toggle",()=>{P.open?b.add(O.module):
b.delete(O.module)});let _=N.flatMap(K=>u(K,O.marks[K.name]));return e("tbody",{},e("tr",{class:"ts-module"},e("th",{scope:"\
rowgroup",colspan:4},O.title,e("span",{class:"ts-assigned"},N.length?"assigned":"not assigned"))),..._,e("tr",{},e("td",
{colspan:4},g,e("p",{class:"ts-next"},e("b",{},"Next: "),O.next),P)))}function $(){let O=t.get("me"),M=t.get("entries"),
N=e("table",{class:"ts-table"},e("thead",{},e("tr",{},...["Assignment","Due","State","What you can do"].map(g=>e("th",{scope:"\
col"},g)))),...t.get("modules").map(g=>v(g,M)));return e("section",{},e("div",{class:"ts-me"},e("h2",{},`Working as ${O.
name} (${O.id})`),O.ticket?c("Not you? Sign out","sign-out",()=>{i("sign-out"),document.dispatchEvent(new CustomEvent("t\
woshaft-signed-out"))}):null),M.length?null:e("p",{},"Nothing is assigned yet."),N,c("Look again","look",()=>i("look")))}
function T(){let O=!!t.get("me").id,M=t.get("modules").map(P=>P.lesson),g=t.get("lessons").filter(([P])=>!O||!M.includes(
P));return g.length?e("section",{},e("h2",{},O?"To look things up":"Lessons"),e("ul",{class:"ts-lessons"},...g.map(([P,_])=>e(
"li",{},ue(P,_,`lesson:${P}`))))):null}let D=!1,S=t.get("me").id?null:r.get(),L=S!==null;function C(){let O=t.get("me");
O.id?zt(t.get("look")):Gs(),O.id?r.keep(O):(D||S&&!L)&&r.drop(),D=!!O.id,Jn(O.id?t.get("entries"):[])}let k=0,f="",m=()=>X(
a,"[data-key]"),x=()=>a.querySelector("input[data-key=word]");function y(){let M=m().find(z=>z===document.activeElement)?.
dataset.key;a.removeAttribute("aria-busy");let N=!!t.get("me").id;d.textContent=t.get("said"),o.alert.textContent=t.get(
"trouble");let g=x()?.value,P=L?e("p",{},"One moment."):l();a.replaceChildren(...It([N?$():P,T()]));let _=x();_&&g&&(_.value=
g);let K=f;if(f=t.get("asking"),f&&f!==K&&m().find(z=>z.dataset.key==="question")?.focus(),!M||f&&f!==K)return;let Q=m().
find(z=>z.dataset.key===M),q=M.split(":")[1],H=M.startsWith("hand in anyway")?`hand in:${q}`:`:${q}`,F=m().find(z=>q&&z.
dataset.key?.endsWith(H));(Q??F??X(a,"a, button, select")[0])?.focus()}let E=()=>{clearTimeout(k),k=setTimeout(()=>{L=!1,
C(),y()},0)};t.on("change",E),C(),y(),S&&t.send({type:"resume",name:S.id,ticket:S.ticket});let A=()=>{!document.hidden&&
t.get("me").id&&i("look",{quietly:!0})},U=new IntersectionObserver(([O])=>{O.isIntersecting&&A()});return U.observe(s),document.
addEventListener("visibilitychange",A),()=>{clearTimeout(k),t.off("change",E),U.disconnect(),document.removeEventListener(
"visibilitychange",A),o.close()}}var Zn={bench:ns,build:is,cord:ds,depth:us,desk:Fs,face:ps,fault_board:hs,form:Vs,gate:gs,gears:ms,hazards:ws,lifting:bs,
micrometer:ks,own_checks:vs,press:ys,question:Xs,rules:xs,runout:$s,sealant:Os,seat:Ts,shims:Ns,sketch:Is,start:Qs,thread:Ds,
unit_section:Bs,whole_build:Rs,wrench:Hs};export{Zn as screens};
