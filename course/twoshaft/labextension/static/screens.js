var $s="http://www.w3.org/2000/svg";function s(t,e={},...o){let r=document.createElement(t);for(let[n,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(n.slice(2),a):a===!0?r.setAttribute(n,""):a!==!1&&a!=null&&r.setAttribute(n,String(
a));return r.append(...jt(o)),r}function E(t,e={},...o){let r=document.createElementNS($s,t);return kt(r,e),r.append(...o),
r}function kt(t,e){for(let[o,r]of Object.entries(e))r!=null&&t.setAttribute(o,String(r))}function _(t,e,o={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...o},t)}function Nt(t,e){return s("select",{class:"ts-box",...t},...it(
e))}function St(t){return t.flatMap(([e,o])=>[s("dt",{},e),s("dd",{},o)])}function At(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function jt(t){return t.filter(e=>e!=null&&e!==!1)}var we=0;function J(t){return we+=1,`twos\
haft-${t}-${we}-${Math.random().toString(36).slice(2,7)}`}function Ct(t,e){let o=t.querySelector(e);if(!o)throw new Error(
`nothing matches ${e}`);return o}function at(t,e){return[...t.querySelectorAll(e)]}function Mt(t,e){let{target:o}=t;return o instanceof
Element?o.closest(e):null}function wt(t){return t.ctrlKey||t.metaKey||t.altKey}function _t(t){let e=at(t,"button, input,\
 select");for(let o of e)o.disabled=!0}function be(t){for(let e=t.parentElement;e;e=e.parentElement){let o=getComputedStyle(
e).overflowY;if((o==="auto"||o==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function Kt(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function Q(t,e,o=t){return _(t,e,{"aria-label":o})}
function it(t){return[...t].map(([e,o])=>s("option",{value:e},o))}function It(t){return t.map(e=>s("li",{},e))}var ee=new Map;function xt(t,e){if(ee.has(t))throw new Error(`the answer kind ${t} is registered twice`);ee.set(t,e)}function Rt(t){
let e=ee.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Ft(t){let e=J(
t.kind);return{control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function Wt(t,e,o){let{prompt:r}=Rt(
t),n={class:"ts-prompt"};if(r==="legend")return s("fieldset",{class:"ts-field","aria-describedby":o},s("legend",n,t.prompt));
let a=r==="label"?s("label",{...n,for:e.control},t.prompt):s("p",n,t.prompt);return s("div",{class:"ts-field"},a)}function Ut(t,e,o,r){let a=t.options.map(([d,i])=>{let l={"aria-describedby":e.status},u=s("input",{type:o,name:e.control,
value:d,...l});return{key:d,input:u,row:s("label",{class:"ts-option"},u,s("span",{},i))}});for(let{input:d}of a)d.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:d})=>d)),show(d){let i=d.value==null?[]:[d.value].flat();for(let{key:l,input:u}of a)u.checked=i.includes(l)},setDisabled(d){
for(let{input:i}of a)i.disabled=d},refused(){}}}xt("choice",{prompt:"legend",make:(t,e,o)=>Ut(t,e,"radio",r=>o(r[0]))});xt("choices",{prompt:"legend",make:(t,e,o)=>Ut(t,e,"checkbox",o)});function se(t){let[e="",...o]=t.split(" "),r=e==="wipe"?0:Number(o.shift()),[n="",...a]=o;if(n!=="at")return{hand:e,size:r,
side:n,place:a[0],points:null};let d=a.map(i=>{let[l,u]=i.split(",").map(Number);return[l,u]});return{hand:e,size:r,side:n,
place:"",points:d}}function ne(t,{side:e,place:o,points:r}){return r||(e==="round"?t.holes.find(n=>n.id===o)?.ring??[]:t.
stretches.find(n=>n.id===o)?.lines[e]??[])}function oe(t,e){let{hand:o,size:r,side:n,place:a}=se(e),d=[...t.stretches,...t.
holes].find(l=>l.id===a),i=o==="wipe"?"":` ${r} mm`;return`${t.hands[o]??o}${i}${d?`, ${d.name}`:""}, ${t.sides[n]??""}`}
function re(t,e,o){return e==="film"?t.width:e==="bead"?o:e==="wipe"?2*t.width:1}function ve(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),o=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return o?Number(o[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function ye(t){let e=0;for(let o=1;o<t.length;o+=1)e+=Math.hypot(t[o][0]-t[o-1][0],t[o][1]-
t[o-1][1]);return e}function ke(t,[e,o]){return t.stretches.map(({id:n,lines:a})=>({id:n,away:Math.min(...a.middle.map(([
d,i])=>Math.hypot(d-e,i-o)))})).reduce((n,a)=>a.away<n.away?a:n).id}var Ls=.4;function xe(t,e){let o=Ls,r=qt(t,o);for(;r.
length>e;)o*=1.5,r=qt(t,o);return r.map(([n,a])=>[Math.round(n*10)/10,Math.round(a*10)/10])}function qt(t,e){if(t.length<
3)return t;let[o,r]=[t[0],t[t.length-1]],n=0,a=0;for(let d=1;d<t.length-1;d+=1){let i=Ss(o,r,t[d]);i>n&&([n,a]=[i,d])}return n<=
e?[o,r]:[...qt(t.slice(0,a+1),e).slice(0,-1),...qt(t.slice(a),e)]}function Ss(t,e,o){let[r,n]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,n)||1;return Math.abs(r*(o[1]-t[1])-n*(o[0]-t[0]))/a}var Gt=14,Cs=3,As=.5,Ms=["middle","inside","outside"],zt="round ";function Es(t,e){let o=t.outline.map(([j])=>j),r=t.outline.
map(([,j])=>j),[n,a]=[Math.min(...o)-Gt,Math.max(...o)+Gt],[d,i]=[Math.min(...r)-Gt,Math.max(...r)+Gt],l=a-n,u=i-d,g=([j,
F])=>`${(j-n).toFixed(1)} ${(i-F).toFixed(1)}`,f=(j,F)=>`M${j.map(g).join("L")}${F?"Z":""}`,h=J("face"),v=l/100,m=2*v,x=(j,F)=>E(
"pattern",{id:`${h}-${j}`,width:m,height:m,patternUnits:"userSpaceOnUse"},E("path",{d:F,class:"tsp-hatch","stroke-width":v/
4})),y=E("defs",{},x("oil",`M0 ${m}L${m} 0`),x("dirt",`M0 ${m}L${m} 0M0 0L${m} ${m}`)),O=t.cavities.map(([,j])=>f(j,!0)).
join(""),D=t.islands.map(j=>f(j,!0)).join(""),L=f(t.outline,!0)+O,N=E("g"),$=E("g"),p=E("g"),c=E("g"),b=E("path",{class:"\
tsp-live",d:""}),k=E("path",{class:"tsp-chosen",d:""}),w=E("path",{class:"tsp-land",d:L,"fill-rule":"evenodd"}),S=E("pat\
h",{class:"tsp-edge",d:L+D,"stroke-width":v/2.5}),C=([j,F],q,nt="middle")=>{let z={x:j-n,y:i-F,"font-size":2.1*v,"text-a\
nchor":nt};return E("text",{class:"tsp-text",...z},q)},R=[(n+a)/2,(d+i)/2],W=(j,F)=>{let q=Kt(j,R)||1;return[j[0]+F*(R[0]-
j[0])/q,j[1]+F*(R[1]-j[1])/q]};for(let{x:j,y:F,d:q,leads:nt,name:z}of t.holes){let tt={cx:j-n,cy:i-F,"stroke-width":v/4},
gt=nt==="blind"?"tsp-hole tsp-blind":"tsp-hole";p.append(E("circle",{...tt,r:q/2,class:gt})),nt==="to the outside"&&p.append(
E("circle",{...tt,r:q/3,class:"tsp-hole"}));let[bt,Lt]=W([j,F],-(q/2+4.4*v));p.append(C([bt,Lt-.8*v],z.replace("bolt ","")))}
for(let j of t.guides){let[F,q]=[j.x-n,i-j.y],nt=`M${F-v} ${q}h${m}M${F} ${q-v}v${m}`;p.append(E("path",{class:"tsp-guid\
e",d:nt,"stroke-width":v/2}));let z={"stroke-width":v/5,"stroke-dasharray":`${v} ${v}`};p.append(E("circle",{cx:F,cy:q,r:j.
reach,class:"tsp-reach",...z}));let tt=W([j.x,j.y],j.reach+m),gt=(tt[0]-j.x)/(j.reach+m);p.append(C(tt,j.name,gt>.5?"sta\
rt":gt<-.5?"end":"middle"))}for(let{word:j,points:F,width:q}of t.spots){let[nt]=j.split(" "),[z,tt]=[F[0],F[F.length-1]],
gt=Kt(z,tt)||1,[bt,Lt]=[-(tt[1]-z[1])/gt*q/2,(tt[0]-z[0])/gt*q/2],M=[[z[0]+bt,z[1]+Lt],[tt[0]+bt,tt[1]+Lt],[tt[0]-bt,tt[1]-
Lt],[z[0]-bt,z[1]-Lt]],H=`url(#${h}-${nt})`;N.append(E("path",{d:f(M,!0),fill:H,class:"tsp-spot","stroke-width":v/4}));let et=C(
W([(z[0]+tt[0])/2,(z[1]+tt[1])/2],9*v),nt);et.classList.add("tsp-spot-word"),p.append(et)}let T=[100,50,20,10].find(j=>j<
l/4)??10,B=`M${v} ${u-v}v${-v}v${v/2}h${T}v${-v/2}v${v}`,P={x:T+m,y:u-v,"font-size":2.1*v};c.append(E("path",{class:"tsp\
-edge",d:B,"stroke-width":v/4}),E("text",{class:"tsp-text",...P},`${T} mm`));let K=`0 0 ${l.toFixed(1)} ${u.toFixed(1)}`,
Z=E("svg",{viewBox:K,class:"tsp-face",role:"img","aria-label":e},y,w,N,$,S,p,k,b,c),dt=`max-width: ${(25*l/u).toFixed(1)}\
rem`;return{frame:s("div",{class:"ts-pad-face",style:dt},Z),svg:Z,over:c,live:b,chosen:k,land:w,path:f,unit:v,box:{left:n,
right:a,low:d,high:i,width:l,height:u},place({clientX:j,clientY:F}){let q=Z.getBoundingClientRect(),nt=Math.min(q.width/
l,q.height/u);return[n+(j-q.left-(q.width-nt*l)/2)/nt,i-(F-q.top-(q.height-nt*u)/2)/nt]},strokes(j){$.replaceChildren(...j.
map(Tt))}};function Tt(j){let F=se(j),q=ne(t,F),nt=re(t,F.hand,Math.max(F.size,v/2)),z=q.length>1?f(q,F.side==="round"):
q.length?`${f(q)}h0.01`:"",tt=E("path",{d:z,class:`tsp-stroke tsp-${F.hand}`,"stroke-width":nt});if(F.hand!=="film")return tt;
let gt=Math.min(8,Math.max(.6,40*F.size)),bt={"stroke-width":v/3,"stroke-dasharray":`${gt} ${gt}`};return E("g",{},tt,E(
"path",{d:z,class:"tsp-grain",...bt}))}}function Yt({face:t,label:e,onLay:o,onRemove:r,onClear:n}){let a=Es(t,e),d=s("p",
{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"ts-read ts-pad-trouble",role:"status"}),l=(B,P)=>s("span",{class:"\
ts-pair"},s("label",{for:P.id},B),P),u=Nt({id:J("hand")},Object.entries(t.hands)),g=s("input",{class:"ts-box ts-size",id:J(
"size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),f=s("label",{for:g.id},"thickness"),h=Nt({id:J(
"place")},t.stretches.map(({id:B,name:P})=>[B,P]));h.append(s("optgroup",{label:"Round a hole"},...t.holes.map(({id:B,name:P})=>s(
"option",{value:`${zt}${B}`},`round ${P}`))));let v=Nt({id:J("side")},Ms.map(B=>[B,t.sides[B]])),m=_("Lay it here",()=>c(
[p(h.value)])),x=_("Lay it on every stretch",()=>c(t.stretches.map(({id:B})=>p(B)))),y=_("Take back the last pass",()=>{
L&&r(L-1,!0)}),O=_("Clear the face",n),D={film:"",bead:""},L=0,N=!1;function $(){if(u.value==="wipe")return"";let[B,P]=t.
sizes[u.value],K=ve(g.value);if(K>=B&&K<=P)return g.removeAttribute("aria-invalid"),` ${Number(K.toFixed(3))}`;let Z=u.value===
"film"?"the thickness of the film":"the diameter of the bead";return i.textContent=g.value.trim()?`Read “${g.value}”: \
give ${Z} from ${B} to ${P} mm.`:`First give ${Z} in mm.`,g.setAttribute("aria-invalid","true"),g.focus(),null}function p(B){
let P=$();if(P===null)return null;let K=B.startsWith(zt)?B:`${v.value} ${B}`;return`${u.value}${P} ${K}`}function c(B){let P=B.
filter(K=>K!==null);if(!(N||P.length<B.length)){if(L+P.length>t.most){i.textContent=`There is room for ${t.most} passes;\
 take some back first.`;return}i.textContent="",d.textContent=P.length===1?`Laid: ${oe(t,P[0])}`:`Laid on ${P.length} st\
retches`,o(P)}}function b(){let B=u.value==="wipe";f.textContent=u.value==="bead"?"diameter":"thickness",g.disabled=N||B,
g.value=B?"":D[u.value],g.placeholder=B?"":"mm",m.textContent=B?"Wipe here":"Lay it here",x.textContent=B?"Wipe every st\
retch":"Lay it on every stretch",i.textContent="",k()}function k(){let B=h.value.startsWith(zt);v.disabled=N||B;let P=ne(
t,B?{side:"round",place:h.value.slice(zt.length)}:{side:v.value,place:h.value});a.chosen.setAttribute("d",P.length?a.path(
P,B):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}u.addEventListener("change",b),g.addEventListener("input",
()=>{D[u.value]=g.value}),h.addEventListener("change",k),v.addEventListener("change",k),g.addEventListener("keydown",B=>{
B.key==="Enter"&&(B.preventDefault(),m.click())});let w=null;a.svg.addEventListener("pointerdown",B=>{if(N||B.button>0)return;
w=[a.place(B)],a.svg.setPointerCapture(B.pointerId);let P=Math.max(1,Number(D.bead.replace(",","."))||1);a.live.setAttribute(
"stroke-width",String(re(t,u.value,P)))}),a.svg.addEventListener("pointermove",B=>{if(!w)return;let P=a.place(B);Kt(P,w[w.
length-1])<As||(w.push(P),a.live.setAttribute("d",a.path(w)))});let S=B=>{if(!w)return;let P=w;if(w=null,a.live.setAttribute(
"d",""),B.type==="pointercancel")return;if(ye(P)<Cs){h.value=ke(t,P[0]),k();return}let K=$();if(K===null)return;let Z=xe(
P,t.points).map(dt=>dt.join(","));c([`${u.value}${K} at ${Z.join(" ")}`])};a.svg.addEventListener("pointerup",S),a.svg.addEventListener(
"pointercancel",S);let C=s("ol",{class:"ts-passes","aria-label":"Passes, in the order they were done"}),R=s("p",{class:"\
ts-hint"},"Nothing is laid yet."),W=s("div",{class:"ts-pad-tools"},s("div",{class:"ts-tools"},l("tool",u),s("span",{class:"\
ts-pair"},f,g)),s("div",{class:"ts-tools"},l("where",h),l("runs",v)),s("div",{class:"ts-tools"},m,x,y,O),i,d),T=()=>at(C,
"button");return b(),{drawing:a,tools:W,list:C,empty:R,frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,W,s("div",
{class:"ts-pad-list"},R,C)),show(B,P=[]){L=B.length,a.strokes(B),R.hidden=L>0;let K=T().findIndex(Z=>Z.matches(":focus"));
C.replaceChildren(...B.map((Z,dt)=>s("li",{},s("span",{},`${oe(t,Z)}${P[dt]?`, ${P[dt]}`:""} `),_("take out",()=>r(dt,!1),
{class:"ts-button ts-remove",disabled:N,"aria-label":`Take out pass ${dt+1}`})))),K>=0&&(T()[Math.min(K,L-1)]??m).focus()},
setDisabled(B){N=B;for(let P of[u,h,m,x,y,O,...T()])P.disabled=B;g.disabled=B||u.value==="wipe",k()}}}xt("film",{prompt:"words",make(t,e,o){let r=[],n=d=>{r=d,a.show(r),o(r)},a=Yt({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:d=>n([...r,...d]),onRemove:d=>n(r.filter((i,l)=>l!==d)),onClear:()=>n([])});
return{element:a.element,show(d){r=[d.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function $e(t,e){let[o,r,n]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(n)?o:r).
trim()} ${e}`.trim()}function Le(t,{send:e,typing:o,said:r=n=>String(n??"")}){let n=s("input",{type:"text",class:"ts-box ts-number-box",id:t.
control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.hint} ${t.read} ${t.
status}`}),a="",d=()=>a===null||n.value.trim()!==a.trim(),i=()=>{d()&&(a=n.value,e(n.value))};return n.addEventListener(
"blur",i),n.addEventListener("keydown",l=>{let u=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!=="Enter"&&!u||
(l.preventDefault(),i())}),n.addEventListener("input",()=>o(d())),{box:n,flush:i,pending:d,refused(){a=null},show(l){n.setAttribute(
"aria-invalid",String(!!l.error)),!(document.activeElement===n&&n.value!==a)&&(a=r(l.value),n.value=a)}}}xt("number",{prompt:"label",make(t,e,o,r){let n=t.units,{box:a,flush:d,pending:i,refused:l,show:u}=Le(e,{send:o,typing:r}),
g=s("span",{class:"ts-hint",id:e.hint},t.hint),f=Nt({"aria-label":"Choose the unit"},[["","unit"],...n.map(h=>[h,h])]);return f.
addEventListener("change",()=>{f.value&&(a.value=$e(a.value,f.value),/\d/.test(a.value)?d():a.focus())}),a.addEventListener(
"input",()=>{f.value=""}),{element:s("div",{class:"ts-line-of"},a,n.length?f:null,g),show:u,setDisabled(h){a.disabled=f.
disabled=h},refused:l,flush:d,pending:i}}});function Ce(t,e){let r=[...new Set([t??[]].flat())].filter(n=>e.includes(String(n))).map(String);return[...r,...e.filter(
n=>!r.includes(n))]}var Dt=(t,e)=>t.join(`
`)===e.join(`
`),Se=t=>`#${t.keys[0]}`,Xt=class{constructor(e,o){this.labels=new Map(e.map(([r,n])=>[r,n])),this.stages=new Map;for(let[
r,,n]of e)n&&this.stages.set(r,n);this.staged=this.stages.size>0,this.order=[...o],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let o of this.order){let r=this.stages.get(o)??null,n=e.at(-1);n&&r!==null&&n.stage===r?n.keys.push(o):e.push({stage:r,
keys:[o]})}return e}rows(){if(!this.staged)return this.order.map(o=>({id:o,key:o,level:1}));let e=[];for(let o of this.runs()){
let[r]=o.keys;if(o.keys.length<2){e.push({id:r,key:r,level:1});continue}if(e.push({id:Se(o),run:o,level:1}),!this.closed.
has(String(o.stage)))for(let n of o.keys)e.push({id:n,key:n,level:2})}return e}row(e){return this.rows().find(o=>o.id===
e)}settle(){let e=this.rows();if(!e.some(o=>o.id===this.current)){let o=this.current.replace(/^#/,""),r=e.find(n=>n.run?.
keys.includes(o));this.current=(r??e.find(n=>n.id===o)??e[0]).id}return e}unit(){let e=this.row(this.current);return e?.
run?e.run.keys:this.block.has(this.current)&&this.block.size>1?this.order.filter(o=>this.block.has(o)):[this.current]}unitName(){
let e=this.row(this.current);if(e?.run)return`Stage ${e.run.stage}`;let o=this.unit();return o.length>1?`Block of ${o.length}\
 steps`:this.label(o[0])}where(){let e=this.unit(),o=this.order.indexOf(e[0])+1;return e.length>1?`positions ${o} to ${o+
e.length-1} of ${this.order.length}`:`position ${o} of ${this.order.length}`}rest(){let e=this.unit();return this.order.
filter(o=>!e.includes(o))}get isFirst(){return this.order.indexOf(this.unit()[0])===0}get isLast(){return this.order.indexOf(
String(this.unit().at(-1)))===this.order.length-1}insertedAt(e){let o=this.rest();return[...o.slice(0,e),...this.unit(),
...o.slice(e)]}shifted(e){let o=this.rest(),r=this.order.indexOf(this.unit()[0]),n=!!this.row(this.current)?.run,a=u=>o[e>
0?u:u-1],d=a(r);if(d===void 0)return this.insertedAt(r);let i=this.stages.get(d),l=i!==void 0&&(n||this.closed.has(i));do
r+=e;while(l&&a(r)!==void 0&&this.stages.get(a(r))===i);return this.insertedAt(r)}atPosition(e){return this.insertedAt(Math.
min(e-1,this.order.length-this.unit().length))}beside(e,o){return this.insertedAt(this.rest().indexOf(e)+(o==="after"?1:
0))}gathered(){let e=new Map;for(let o of this.order){let r=this.stages.get(o)??o;e.set(r,[...e.get(r)??[],o])}return[...e.
values()].flat()}dropAt(e,o){let r=e.run?e.run.keys:[e.key],n=e.run&&!this.closed.has(String(e.run.stage));return o&&!n?
{target:String(r.at(-1)),side:"after"}:{target:r[0],side:"before"}}take(e){if(Dt(e,this.order))return!1;let o=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,o){let[r]=o.keys,n=this.rows().find(a=>a.run?.
keys.includes(r));this.current=n?n.id:r}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,o){let r=e.pop();return r?(o.push(this.order),this.order=
r,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||Dt(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,o){this.order=[...e],o&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let o=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((r,n)=>r-n);o[0]>=0&&(this.block=new Set(this.order.slice(o[0],o[1]+1)))}fold(e,o){
let r=e.run?e.run.stage:this.stages.get(e.key),n=e.run?e.run.keys[0]:e.key,a=this.runs().find(d=>d.keys.includes(n));return!r||
!a||a.keys.length<2?null:(o?this.closed.add(r):this.closed.delete(r),o&&(this.current=Se(a)),r)}sought(e){let o=this.rows(),
r=o.findIndex(d=>d.id===this.current),n=e.length>1?r:r+1,a=d=>(d.run?String(d.run.stage):this.label(d.key)).toLowerCase();
return[...o.slice(n),...o.slice(0,n)].find(d=>a(d).startsWith(e))}};var Os=12,Ts=700,Ns=5,Ae=32,Is=8;function Vt({label:t,steps:e,order:o,onChange:r}){let n=new Xt(e,o),{staged:a}=n,d=!1,i={},
l=!1,u=new Map,g=s("div",{"aria-live":"assertive",class:"ts-hidden"}),f=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),h=_("Up",()=>Z(-1),{"aria-label":"Move the chosen step up"}),v=_("Down",
()=>Z(1),{"aria-label":"Move the chosen step down"}),m=_("Undo",()=>n.undo()&&Tt("Undone")),x=_("Redo",()=>n.redo()&&Tt(
"Done again")),y=_("Choose several",()=>z(!d),{"aria-pressed":"false"}),O=_("Gather stages",()=>K(n.gathered(),"Steps of\
 one stage now stand together")),D=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:A=>{A.key==="Enter"&&dt()}}),L=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),N=s("span",{class:"ts-chosen"}),$=_("Move",dt,{"aria-label":"Move to this position"}),p=_(
"Move",Ot,{"aria-label":"Move before this step"}),c=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},h,v,m,x,y,a?O:null),b=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",D,$),s("span",{class:"\
ts-pair"},"or before ",L,p)),k="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),w=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},k),b),S=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),c,N,f,w,g);function C(A){g.
textContent=A}function R(A=""){C(`${n.unitName()}${A}, ${n.where()}`)}function W(A){let I=u.get(A.id);if(I)return I;let G=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return G.dataset.row=A.id,u.set(A.id,G),G}function T(A=!1){let I=n.settle(),
G=new Set(I.map(Y=>Y.id));for(let[Y,ft]of u)G.has(Y)||(ft.remove(),u.delete(Y));let ot=n.unit(),mt=new Set(ot),st=f.firstElementChild;
for(let Y of I){let ft=W(Y);ft===st?st=st.nextElementSibling:f.insertBefore(ft,st),B(ft,Y,mt)}D.value=String(n.order.indexOf(
ot[0])+1);let ht=[...n.order.entries()].filter(([,Y])=>!mt.has(Y));L.replaceChildren(...ht.map(([Y,ft])=>s("option",{value:ft},
`${Y+1}  ${n.label(ft)}`))),N.textContent=`Chosen: ${n.unitName()}, ${n.where()}`,h.disabled=l||n.isFirst,v.disabled=l||
n.isLast,m.disabled=l||n.past.length===0,x.disabled=l||n.future.length===0;for(let Y of[y,O,D,L,$,p])Y.disabled=l;if(f.setAttribute(
"aria-disabled",String(l)),f.classList.toggle("ts-long",n.order.length>Os),A){let Y=u.get(n.current);Y?.focus({preventScroll:!0}),
Y?.scrollIntoView({block:"nearest"})}}function B(A,I,G){let ot=I.id===n.current,mt=I.run?!1:n.block.has(I.key),st=n.held!==
null&&(I.run?ot:G.has(I.key)),ht=n.order.indexOf(I.run?I.run.keys[0]:I.key),Y=I.run?I.run.keys.map(yt=>i[yt]?.length??0):
i[I.key],ft=I.run?n.closed.has(String(I.run.stage)):!1,ue=JSON.stringify([ht,I.level,ot,mt,st,Y,I.run&&[I.run.keys.length,
ft]]);if(A.dataset.looks===ue)return;A.dataset.looks=ue,A.tabIndex=ot?0:-1,A.setAttribute("aria-selected",String(mt)),A.
classList.toggle("ts-current",ot),A.classList.toggle("ts-inblock",mt),A.classList.toggle("ts-held",st),A.classList.toggle(
"ts-level2",I.level===2),a&&A.setAttribute("aria-level",String(I.level));let pe=st?" picked up":mt?" in block":"",he=pe?
s("span",{class:"ts-state"},pe):"",fe=yt=>s("span",{class:"ts-number","aria-hidden":"true"},yt);if(I.run){let{keys:yt,stage:ks}=I.
run;A.setAttribute("aria-expanded",String(!ft));let me=ft?yt.filter(xs=>i[xs]?.length).length:0;A.replaceChildren(fe(`${ht+
1}–${ht+yt.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},ft?"▸":"▾"),s("span",{class:"ts-what"},s("b",
{},ks),` ${yt.length} steps`,me?` – ${me} with a remark`:"",he));return}let ge=(i[I.key]??[]).map(yt=>s("span",{class:`\
ts-note ts-note-${yt.kind}`},At(yt.shape??""),s("b",{},yt.word),` ${yt.text}`)),ys=a&&I.level===1;A.classList.toggle("ts\
-troubled",ge.length>0),A.replaceChildren(fe(String(ht+1)),s("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),s("spa\
n",{class:"ts-what"},n.label(I.key),ys?s("span",{class:"ts-stage"},` ${n.stages.get(I.key)??""}`):"",he,...ge))}let P=()=>r(
[...n.order]);function K(A,I){if(!n.take(A)){C(`${n.unitName()} stays at ${n.where()}`);return}T(!0),I?C(I):R(),n.held===
null&&P()}function Z(A){l||K(n.shifted(A))}function dt(){if(l)return;let A=Number.parseInt(D.value,10),I=n.order.length;
A>=1&&A<=I?K(n.atPosition(A)):(C(`Type a position from 1 to ${I}`),N.textContent=`Type a position from 1 to ${I}.`)}function Ot(){
!l&&L.value&&K(n.beside(L.value,"before"))}function Tt(A){T(),C(`${A}. ${n.unitName()}, ${n.where()}`),P()}function j(){
n.pickUp(),T(!0),R(" picked up")}function F(){n.putDown()&&P(),T(!0),R(" put down")}function q(){n.putDown()&&P(),T()}function nt(){
n.putBack(),T(!0),R(" put back")}function z(A){d=A,y.setAttribute("aria-pressed",String(A)),A||(n.block=new Set),T(),C(A?
"Choose the steps of a block":"Block let go")}function tt(A){n.toggleBlock(A);let I=n.block.has(A)?"in the block":"out o\
f the block";C(`${n.label(A)} ${I}, ${n.block.size} in it`)}function gt(A,I){let G=n.fold(A,I);G&&(T(!0),C(`${G} ${I?"cl\
osed":"open"}`))}f.addEventListener("keydown",A=>{if(wt(A))return;let I=n.rows(),G=I.findIndex(ft=>ft.id===n.current),ot=ft=>{
n.current=I[Math.max(0,Math.min(I.length-1,ft))].id,T(!0)},mt=I[G],{key:st}=A,ht=st==="ArrowUp"?-1:st==="ArrowDown"?1:null,
Y=n.held!==null;if(ht&&(A.shiftKey||Y))Z(ht);else if(ht)ot(G+ht);else if(Y&&st==="Escape")nt();else if(st===" ")l||(Y?F:
j)();else if(Y&&st==="Enter")F();else if(st==="Enter"&&!mt.run)l||(tt(mt.key),T(!0));else if(st==="Home"&&!Y)ot(0);else if(st===
"End"&&!Y)ot(I.length-1);else if(a&&st==="ArrowLeft")gt(mt,!0);else if(a&&st==="ArrowRight")gt(mt,!1);else if(st.length===
1&&!Y)M(st);else return;A.preventDefault()});let bt="",Lt;function M(A){bt+=A.toLowerCase(),clearTimeout(Lt),Lt=window.setTimeout(
()=>{bt=""},Ts);let I=n.sought(bt);I&&(n.current=I.id,T(!0))}f.addEventListener("focusout",({relatedTarget:A})=>{n.held!==
null&&A instanceof Node&&!f.contains(A)&&q()});let H=null;f.addEventListener("pointerdown",A=>{let I=n.row(Mt(A,".ts-ste\
p")?.dataset.row??"");if(!I||A.button!==0)return;if(I.run&&Mt(A,".ts-fold")){gt(I,!n.closed.has(String(I.run.stage))),A.
preventDefault();return}let G=Mt(A,".ts-grip, .ts-number"),ot=A.ctrlKey||A.metaKey;n.held!==null&&q(),!I.run&&!l&&(A.shiftKey?
n.blockTo(I.key):(ot||d)&&!G&&tt(I.key)),n.current=I.id,T(!0),A.preventDefault(),!(l||A.shiftKey||ot)&&(A.pointerType!==
"mouse"&&!G||(H={x:A.clientX,y:A.clientY,id:A.pointerId,carried:null},f.setPointerCapture(A.pointerId)))}),f.addEventListener(
"pointermove",A=>{if(!H||A.pointerId!==H.id)return;let{clientX:I,clientY:G}=A;if(!H.carried){if(Math.hypot(I-H.x,G-H.y)<
Ns)return;H.carried=et()}Object.assign(H.carried,{x:I,y:G}),rt(H.carried)});function et(){let A=s("div",{class:"twoshaft\
 ts-ghost","aria-hidden":"true"},n.unit().length>1?n.unitName():n.label(n.unit()[0]));document.body.append(A);let I=s("d\
iv",{class:"ts-line","aria-hidden":"true"});f.append(I),f.classList.add("ts-dragging");for(let G of n.unit())u.get(G)?.classList.
add("ts-lifted");return{ghost:A,line:I,timer:requestAnimationFrame(ut),x:0,y:0,drop:null}}function rt(A){A.ghost.style.transform=
`translate(${A.x+12}px, ${A.y+8}px)`;let G=n.rows().map(ht=>{let Y=W(ht).getBoundingClientRect();return{row:ht,box:Y,offset:A.
y-(Y.top+Y.height/2)}}).reduce((ht,Y)=>Math.abs(Y.offset)<Math.abs(ht.offset)?Y:ht),ot=G.offset>0;A.drop=n.dropAt(G.row,
ot);let st=(ot?G.box.bottom:G.box.top)-f.getBoundingClientRect().top+f.scrollTop-1;A.line.style.top=`${st}px`}function ut(){
let A=H?.carried;if(A){for(let I of[f,be(f)]){let ot=I===document.scrollingElement?{top:0,bottom:innerHeight}:I.getBoundingClientRect(),
mt=A.y<ot.top+Ae?-1:A.y>ot.bottom-Ae?1:0;if(!mt)continue;let st=I.scrollTop;if(I.scrollTop+=mt*Is,I.scrollTop!==st){rt(A);
break}}A.timer=requestAnimationFrame(ut)}}function pt(A){let I=H?.carried;if(H=null,!I)return;cancelAnimationFrame(I.timer),
I.ghost.remove(),I.line.remove(),f.classList.remove("ts-dragging");for(let ot of u.values())ot.classList.remove("ts-lift\
ed");let{drop:G}=I;if(!A||!G||n.unit().includes(G.target)){T(!0),C(`${n.unitName()} stays at ${n.where()}`);return}K(n.beside(
G.target,G.side))}return f.addEventListener("pointerup",()=>pt(!0)),f.addEventListener("pointercancel",()=>pt(!1)),S.addEventListener(
"keydown",A=>{!H?.carried||A.key!=="Escape"||(pt(!1),A.stopPropagation())}),T(),{element:S,tools:c,order:()=>[...n.order],
change:(A,I)=>{l||K(A,I)},setOrder(A,I=!1){n.held!==null||H?.carried||Dt(A,n.order)||(n.set(A,I),T())},setNotes(A){i=A??
{},T()},setDisabled(A){l=A,T()}}}xt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,o){let r=t.
steps.map(([a])=>a),n=Vt({label:t.prompt,steps:t.steps,order:r,onChange:o});return{element:n.element,show:a=>n.setOrder(
Ce(a.value,r)),setDisabled:n.setDisabled,refused(){}}}});function Me(t,e,o){let r=[0,0],n=[o(...r)],a=new Map;for(let[d,i]of t.entries()){let[l,u]=e[i]??[null,null];l!==null&&r[1]!==
0&&n.push(o(r[0],0)),r=[l??r[0],u??(l===null?r[1]:0)];let g=o(...r);n.push(g);let f=a.get(g.join(" "))??{at:g,numbers:[]};
f.numbers.push(d+1),a.set(g.join(" "),f)}return{points:n,stops:[...a.values()]}}function Ee(t,e,o){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),o,...t.slice(r)],place:r}}function Oe(t,e){return t.filter((o,r)=>r!==e)}function Te(t,e,o){
let r=e+o;if(r<0||r>=t.length)return null;let n=[...t];return[n[e],n[r]]=[n[r],n[e]],n}var ie=9,Ne=.7*ie,ae=44;function Ds(t){let e=Math.min(...t.gates),o=Math.max(...t.gates),[r,n]=t.turn_mm,a=(o-e)*ie+2*ae,
d=(n-r)*Ne+2*ae,i=(m,x)=>[ae+(m-e)*ie,d/2-(x-(r+n)/2)*Ne],l=t.gates.map(m=>`M${i(m,r).join(" ")}L${i(m,n).join(" ")}`),u=`\
M${i(e,0).join(" ")}L${i(o,0).join(" ")}`,g=t.gears.map(([m,x,y])=>{let[O,D]=i(x,y),L={x:O,y:D+(y>0?-20:30)};return E("t\
ext",{...L,class:"tsp-gear","text-anchor":"middle"},m)}),f=E("polyline",{class:"tsp-line",points:""}),h=E("g");return{element:E(
"svg",{viewBox:`0 0 ${a} ${d}`,width:a,height:d,class:"ts-gateplan","aria-hidden":"true"},E("path",{d:[...l,u].join(""),
class:"tsp-slot"}),...g,f,h),show(m){let{points:x,stops:y}=Me(m,t.aims,i),[[O,D]]=x;f.setAttribute("points",x.map(L=>L.join(
",")).join(" ")),h.replaceChildren(E("circle",{cx:O,cy:D,r:4,class:"tsp-start"}),...y.map(({at:[L,N],numbers:$})=>E("g",
{},E("circle",{cx:L,cy:N,r:3.5,class:"tsp-stop"}),E("text",{x:L+7,y:N-5,class:"tsp-number"},$.join(", ")))))}}}function Ie({
label:t,moves:e,plan:o,most:r,onChange:n}){let a=new Map(e),d=S=>a.get(S)??S,i=[],l=-1,u=!1,g=o?Ds(o):null,f=s("ol",{class:"\
ts-pathlist","aria-label":t}),h=s("p",{class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),
v=s("p",{class:"ts-hidden",role:"status"}),m=e.map(([S,C])=>_(C,()=>N(S))),x=_("Take back the last move",()=>{i.length&&
$(i.length-1)}),y=_("Take back all",()=>{i.length&&L([],"No moves left")}),O=s("span",{class:"ts-hint"}),D=s("div",{class:"\
ts-path"},s("div",{class:"ts-tools ts-moves",role:"group","aria-label":"Add a move"},...m),s("div",{class:"ts-path-both"},
s("div",{class:"ts-path-words"},h,f,s("div",{class:"ts-tools"},x,y,O)),g&&s("div",{class:"ts-path-picture"},g.element)),
g&&s("p",{class:"ts-hint"},"The line shows where each move aims. Whether the lever gets there is what the test finds out\
."),v);function L(S,C){u||(i=S,w(),v.textContent=C,n([...i]))}function N(S){if(i.length>=r){v.textContent=`${r} moves ar\
e the most here`;return}let{moves:C,place:R}=Ee(i,l,S);l=R,L(C,`Move ${R+1}: ${d(S)}`)}function $(S){let C=d(i[S]);l=Math.
min(l,i.length-2),L(Oe(i,S),`Taken back: ${C}`)}function p(S,C){let R=Te(i,S,C);R&&(l=S+C,L(R,`${d(R[l])}, move ${l+1} o\
f ${i.length}`),b(l))}function c(S){return f.children[S]?.querySelector(".ts-path-move")}function b(S){let C=c(S);return C instanceof
HTMLElement&&C.focus(),!!C}function k(S,C){let R=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${C+1}: ${d(
S)}`},d(S)),W=s("button",{type:"button",class:"ts-path-off","aria-label":`Take back move ${C+1}`,onclick:()=>$(C)},"×"),
T=s("li",{},R,W);return T.classList.toggle("ts-current",C===l),R.addEventListener("focus",()=>{l=C;for(let B of f.children)
B.classList.toggle("ts-current",B===T)}),R.addEventListener("keydown",B=>{if(wt(B))return;let P=B.key==="ArrowUp"?-1:B.key===
"ArrowDown"?1:null;if(P&&B.shiftKey)p(C,P);else if(P)b(C+P);else if(B.key==="Delete"||B.key==="Backspace")$(C),b(Math.min(
C,i.length-1))||m[0].focus();else return;B.preventDefault()}),W.disabled=u,T}function w(){f.replaceChildren(...i.map(k)),
h.hidden=i.length>0,O.textContent=`${i.length} of at most ${r} moves`;for(let S of m)S.disabled=u||i.length>=r;x.disabled=
y.disabled=u||i.length===0,g?.show(i)}return w(),{element:D,setMoves(S){Dt(S,i)||(i=[...S],l=-1,w())},setDisabled(S){u=S,
w()}}}xt("path",{prompt:"words",make(t,e,o){let r=Ie({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:o});return{
element:r.element,show:n=>r.setMoves([n.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});var Ps="The notebook's engine has stopped, so nothing more is saved here. If this does not come back in a moment, reload\
 the page; what was saved comes back.",Bs="The connection to the notebook's engine is interrupted. Wait a moment before \
you type on.",js=1e3,Rs="input, button, select, textarea, summary, a, [tabindex]";function Hs(t){let e=n=>{if(n.stopPropagation(),
!(n.ctrlKey||n.metaKey)||n.key.toLowerCase()!=="s"||(n.preventDefault(),n.type!=="keydown"||n.repeat))return;let{key:a,code:d,
keyCode:i,ctrlKey:l,metaKey:u}=n,g={key:a,code:d,keyCode:i,ctrlKey:l,metaKey:u,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",g))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let o=()=>{for(let n of t.querySelectorAll(Rs))n.hasAttribute("data-lm-suppress-shortcuts")||n.setAttribute(
"data-lm-suppress-shortcuts","true")};o();let r=new MutationObserver(o);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function _s(t,e,o){let r=t.widget_manager?.kernel,n=(d,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(d,i)=>{i==="disconnected"?e():o(i==="connecting")};return t.on("comm_live_update",e),r?.statusChanged?.
connect(n),r?.connectionStatusChanged?.connect(a),r?.disposed?.connect(e),()=>{t.off("comm_live_update",e),r?.statusChanged?.
disconnect(n),r?.connectionStatusChanged?.disconnect(a),r?.disposed?.disconnect(e)}}var De=`.twoshaft {
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
twoshaft-copy){display:none}.twoshaft-rig{padding-block:var(--ts-grid)}.twoshaft .ts-finding{font-weight:600;margin:var(\
--ts-grid) 0 0}.twoshaft .ts-happened{margin-top:var(--ts-grid);min-height:3em}.twoshaft-rig>.ts-prompt{font-weight:600;\
margin:calc(2 * var(--ts-grid)) 0 var(--ts-grid)}.twoshaft .ts-scroll{overflow-x:auto;margin:var(--ts-grid) 0;padding-bo\
ttom:var(--ts-grid)}.twoshaft .ts-scroll svg{display:block}.twoshaft .ts-scroll.ts-fit svg{max-width:100%;min-width:600p\
x;height:auto}.twoshaft .ts-facts{display:grid;grid-template-columns:max-content 1fr;gap:4px calc(2 * var(--ts-grid));ma\
rgin:var(--ts-grid) 0;max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-facts dt{float:none;clear:none;width:auto;fon\
t-weight:600;overflow-wrap:normal}.twoshaft .ts-facts dd{margin:0;width:auto}@media(max-width:480px){.twoshaft .ts-facts\
{grid-template-columns:1fr}}.twoshaft .ts-ready{display:flex;flex-wrap:wrap;gap:var(--ts-grid)}.twoshaft .ts-ready .ts-b\
utton{text-align:left;padding-block:4px}.twoshaft .ts-button.ts-off{color:var(--ts-quiet);border-color:var(--ts-line);bo\
rder-style:dotted;cursor:default}.twoshaft .ts-sentences{padding-left:calc(3 * var(--ts-grid));max-width:var(--ts-width)\
}.twoshaft .ts-note-blocked .ts-shape,.twoshaft .ts-note-harmed .ts-shape{color:var(--ts-bad)}.twoshaft .tsf-step{cursor\
:pointer}.twoshaft .ts-either{opacity:.4}.twoshaft .ts-before-it .tsf-b{stroke-width:3}.twoshaft .ts-after-it .tsf-b{str\
oke-width:2;outline:1px solid var(--ts-ink);outline-offset:2px}.twoshaft .ts-chosen-step .tsf-b{fill:var(--ts-accent);st\
roke:var(--ts-accent)}.twoshaft .ts-chosen-step .tsf-t{fill:var(--ts-on-accent);font-weight:600}.twoshaft .tsf-step:focu\
s{outline:none}.twoshaft .tsf-step:focus-visible .tsf-b{outline:3px solid var(--ts-accent);outline-offset:3px}.twoshaft \
.tsg-text{font:var(--ts-small) var(--ts-font);fill:var(--ts-ink)}.twoshaft .tsg-face{fill:var(--ts-paper);stroke:var(--t\
s-ink);stroke-width:2}.twoshaft .tsg-mark{stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsg-long{stroke-width:2}.twosha\
ft .tsg-pointer{fill:var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .tsg-hub{fill:var(--ts-ink)}.twoshaft .tsg-small\
{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsg-target{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:1;stro\
ke-dasharray:5 3}.twoshaft .tsg-cold{fill:var(--ts-accent);stroke:var(--ts-paper)}.twoshaft .tsg-warm{fill:var(--ts-pape\
r);stroke:var(--ts-bad);stroke-width:3}.twoshaft .tsg-dial{width:190px;height:190px;flex:none}.twoshaft .tsg-scale{width\
:100%;max-width:600px;min-width:540px;height:auto;display:block}.twoshaft .tsg-axis{width:100%;max-width:720px;min-width\
:540px;height:auto;display:block}.twoshaft .tsg-beside{display:flex;flex-wrap:wrap;align-items:center;gap:calc(2 * var(-\
-ts-grid))}.twoshaft .tsg-beside>*{min-width:0;max-width:100%}.twoshaft .tsg-gauge svg{max-width:100%;height:auto}.twosh\
aft .tsg-gauge{text-align:center;font-size:var(--ts-small)}.twoshaft .tsg-wide{overflow-x:auto;max-width:100%}.twoshaft \
.ts-slide{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid);margin:var(--ts-grid) 0}.twoshaft .ts-slide>\
span{min-width:11em}.twoshaft .ts-slider{width:260px;max-width:100%;height:24px;accent-color:var(--ts-accent)}.twoshaft \
.ts-slid{min-width:12em;font-variant-numeric:tabular-nums}.twoshaft .tsg-centre{stroke:var(--ts-ink);stroke-width:1;stro\
ke-dasharray:14 3 3 3}.twoshaft .tsg-drum{max-width:100%;height:auto}.twoshaft .tsg-ticks{border:none;display:flex;flex-\
wrap:wrap;gap:0 calc(2 * var(--ts-grid))}.twoshaft .tsg-side{flex:1 1 420px;min-width:min(100%,320px)}.twoshaft .tsi-mic\
rometer{width:760px;height:240px;display:block}.twoshaft .tsi-vernier{width:760px;height:190px;display:block}.twoshaft .\
tsi-runout{width:300px;height:260px;flex:none}.twoshaft .tsi-wrench{width:720px;max-width:100%;height:auto;display:block\
}.twoshaft .tsi-fine{stroke:var(--ts-ink);stroke-width:1.1}.twoshaft .tsi-bold{stroke:var(--ts-ink);stroke-width:2}.twos\
haft .tsi-body{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-paper{fill:var(--ts-paper);stroke\
:var(--ts-ink);stroke-width:1}.twoshaft .tsi-lever{stroke:var(--ts-ink);stroke-width:10;stroke-linecap:round}.twoshaft .\
tsi-adapter{stroke:var(--ts-accent);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-arm{stroke:var(--ts-accent);stro\
ke-width:2;stroke-dasharray:7 4}.twoshaft .tsi-plunger{stroke:var(--ts-accent);stroke-width:5;stroke-linecap:round}.twos\
haft .ts-order{position:relative;max-width:calc(var(--ts-width) + 8em)}.twoshaft .ts-steps{position:relative;list-style:\
none;border:1px solid var(--ts-line);margin-top:calc(var(--ts-grid) / 2);background:var(--ts-paper)}.twoshaft .ts-steps.\
ts-long{max-height:min(30rem,75vh);overflow-y:auto}.twoshaft .ts-step{display:flex;align-items:flex-start;gap:var(--ts-g\
rid);padding:4px var(--ts-grid) 4px 0;margin:0;min-height:24px;border-bottom:1px solid var(--ts-faint);border-left:4px s\
olid transparent;cursor:default;user-select:none}.twoshaft .ts-step:last-child{border-bottom:0}.twoshaft .ts-step.ts-lev\
el2{padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-step:focus-visible{outline-offset:-3px}.twoshaft .ts-current{bor\
der-left-color:var(--ts-accent);background:var(--ts-faint)}.twoshaft .ts-inblock{border-left-style:double;border-left-co\
lor:var(--ts-ink)}.twoshaft .ts-held{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-held .ts-number\
,.twoshaft .ts-held .ts-grip,.twoshaft .ts-held .ts-stage{color:inherit}.twoshaft .ts-lifted{opacity:.45}.twoshaft .ts-d\
ragging,.twoshaft .ts-dragging .ts-step{cursor:grabbing}.twoshaft .ts-number{flex:none;min-width:2.5em;text-align:right;\
color:var(--ts-quiet);font-variant-numeric:tabular-nums;touch-action:none}.twoshaft .ts-grip,.twoshaft .ts-fold{flex:non\
e;width:24px;text-align:center;color:var(--ts-quiet);cursor:grab;touch-action:none}.twoshaft .ts-fold{cursor:pointer}.tw\
oshaft .ts-what{flex:1;min-width:0}.twoshaft .ts-state{font-weight:600;font-size:var(--ts-small)}.twoshaft .ts-note{disp\
lay:block;font-size:var(--ts-small);max-width:var(--ts-width)}.twoshaft .ts-line{position:absolute;left:0;right:0;height\
:3px;background:var(--ts-accent);pointer-events:none}.twoshaft.ts-ghost{position:fixed;left:0;top:0;z-index:10000;width:\
max-content;max-width:24em;padding:4px var(--ts-grid);pointer-events:none;background:var(--ts-paper);color:var(--ts-ink)\
;border:2px solid var(--ts-accent)}.twoshaft .ts-order .ts-keys{margin-top:var(--ts-grid)}.twoshaft .ts-order .ts-keys s\
ummary{cursor:pointer;min-height:24px;color:var(--ts-accent);width:fit-content}.twoshaft .ts-path-both{display:flex;flex\
-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--ts-grid)}.twoshaft .ts-path-words{flex:1\
 1 22em;min-width:0;max-width:34em}.twoshaft .ts-path-picture{flex:none;max-width:100%}.twoshaft .ts-pathlist{margin:0;p\
adding-left:calc(4 * var(--ts-grid))}.twoshaft .ts-pathlist li{min-height:28px;padding-left:4px;border-left:4px solid tr\
ansparent}.twoshaft .ts-pathlist li.ts-current{border-left-color:var(--ts-accent);background:var(--ts-faint)}.twoshaft .\
ts-path-off{min-width:28px;min-height:28px;margin-left:var(--ts-grid);border:1px solid var(--ts-line);border-radius:2px;\
background:var(--ts-paper);color:var(--ts-ink);font:inherit;line-height:1;cursor:pointer}.twoshaft .ts-gateplan{display:\
block;max-width:100%;height:auto}.twoshaft .tsp-slot{fill:none;stroke:var(--ts-line);stroke-width:14;stroke-linecap:roun\
d;opacity:.35}.twoshaft .tsp-line{fill:none;stroke:var(--ts-accent);stroke-width:2.5;stroke-linejoin:round}.twoshaft .ts\
p-start{fill:var(--ts-paper);stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsp-stop{fill:var(--ts-accent)}.twoshaft \
.tsp-gear{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink)}.twoshaft .tsp-number{font:600 var(--ts-small) var(\
--ts-font);fill:var(--ts-ink);paint-order:stroke;stroke:var(--ts-paper);stroke-width:4px}.twoshaft .ts-pad{max-width:62r\
em}.twoshaft .ts-pad-face{position:relative;width:100%;border:1px solid var(--ts-line);background:var(--ts-paper)}.twosh\
aft .tsp-face{display:block;position:relative;width:100%;height:auto;touch-action:none;cursor:crosshair}.twoshaft .tsp-l\
and{fill:var(--ts-faint);stroke:none}.twoshaft .tsp-edge{fill:none;stroke:var(--ts-ink);stroke-linejoin:round}.twoshaft \
.tsp-text{fill:var(--ts-ink);font-family:var(--ts-font);paint-order:stroke;stroke:var(--ts-paper);stroke-width:.5px;poin\
ter-events:none;user-select:none}.twoshaft .tsp-hole{fill:var(--ts-paper);stroke:var(--ts-ink)}.twoshaft .tsp-blind{fill\
:var(--ts-ink)}.twoshaft .tsp-guide,.twoshaft .tsp-reach,.twoshaft .tsp-hatch{fill:none;stroke:var(--ts-ink)}.twoshaft .\
tsp-spot{stroke:var(--ts-ink)}.twoshaft .tsp-stroke,.twoshaft .tsp-live,.twoshaft .tsp-grain{fill:none;stroke-linejoin:r\
ound;stroke-linecap:butt}.twoshaft .tsp-film{stroke:var(--ts-film);stroke-opacity:.6}.twoshaft .tsp-bead{stroke:var(--ts\
-bead);stroke-linecap:round}.twoshaft .tsp-wipe{stroke:var(--ts-paper);stroke-opacity:.85}.twoshaft .tsp-grain{stroke:va\
r(--ts-ink)}.twoshaft .tsp-live{stroke:var(--ts-accent);stroke-opacity:.5;stroke-linecap:round}.twoshaft .tsp-chosen{fil\
l:none;stroke:var(--ts-accent);stroke-dasharray:3 2;pointer-events:none}.twoshaft .ts-size{width:6em}.twoshaft .ts-size[\
aria-invalid=true]{border:2px dashed var(--ts-ink)}.twoshaft .ts-pad-trouble{min-height:1.5em;color:var(--ts-ink)}.twosh\
aft .ts-passes{padding-left:2.5em;font-size:var(--ts-small);max-height:16rem;overflow-y:auto}.twoshaft .ts-passes li{pad\
ding:2px 0}.twoshaft .ts-remove{min-height:24px;padding:0 var(--ts-grid)}.twoshaft .ts-pad-tools .ts-box{max-width:100%;\
min-width:0}.twoshaft .ts-pad-tools .ts-pair{min-width:0}.twoshaft-form{padding-block:var(--ts-grid)}.twoshaft .ts-top{d\
isplay:flex;flex-wrap:wrap;justify-content:space-between;gap:0 calc(3 * var(--ts-grid));border-bottom:1px solid var(--ts\
-line);padding-bottom:calc(var(--ts-grid) / 2)}.twoshaft .ts-who{font-size:var(--ts-small);color:var(--ts-quiet)}.twosha\
ft .ts-field{border:0;min-width:0;margin:calc(2 * var(--ts-grid)) 0 0}.twoshaft .ts-prompt{display:block;padding:0;font-\
weight:600;margin-bottom:var(--ts-grid)}.twoshaft .ts-line-of{display:flex;flex-wrap:wrap;align-items:center;gap:var(--t\
s-grid)}.twoshaft .ts-line-of+.ts-read{min-height:1.5em}.twoshaft .ts-read.ts-error{color:var(--ts-ink);font-size:var(--\
ts-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-bad .ts-shape{color:var(--ts-bad)}.twoshaft .ts-status-saved\
 .ts-shape{color:var(--ts-good)}.twoshaft .ts-status-bad{color:var(--ts-ink);font-weight:600}.twoshaft .ts-order+.ts-rea\
d{display:none}.twoshaft .ts-bench{margin-top:var(--ts-grid)}.twoshaft .ts-bench summary{cursor:pointer;min-height:24px;\
font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft .ts-bench[open]{border:1px solid var(--ts-line);padding:var(--\
ts-grid)}.twoshaft .ts-bench-rows{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,20em),1fr));gap:va\
r(--ts-grid) calc(2 * var(--ts-grid));margin:var(--ts-grid) 0}.twoshaft .ts-bench-row{min-width:0}.twoshaft .ts-bench-ro\
w select{max-width:100%;min-width:0}.twoshaft .ts-bench-row label{display:block;max-width:var(--ts-width)}.twoshaft .ts-\
bench-row .ts-read{min-height:0}.twoshaft-start>div{max-width:1040px}.twoshaft-start h2{font-size:var(--ts-head);font-we\
ight:600;margin:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-in{margin:calc(2 * var(--ts-grid)) 0 \
calc(3 * var(--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;gap:calc(1.5 * var(--ts-grid));justify-items:start}.tw\
oshaft-start .ts-pair{display:grid;gap:calc(var(--ts-grid) / 2)}.twoshaft-start .ts-pair label{font-weight:600}.twoshaft\
-start .ts-pair .ts-box{width:22em;max-width:100%}.twoshaft-start .ts-first{background:var(--ts-accent);color:var(--ts-o\
n-accent)}.twoshaft-start .ts-button{font-size:var(--ts-text)}.twoshaft-start .ts-said:not(:empty){border-left:3px solid\
 var(--ts-accent);padding:var(--ts-grid);background:var(--ts-faint)}.twoshaft-start .ts-me{display:flex;flex-wrap:wrap;a\
lign-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:var(--ts-grid)}.twoshaft-start .ts-tabl\
e{border-collapse:collapse;width:100%;margin:0 0 calc(2 * var(--ts-grid));font-size:var(--ts-text);table-layout:fixed}.t\
woshaft-start .ts-table :is(th,td){text-align:left;vertical-align:top;white-space:normal;padding:var(--ts-grid);border:0\
;border-bottom:1px solid var(--ts-line);background:none;max-width:none}.twoshaft-start .ts-table thead th{font-size:var(\
--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-table th:nth-child(1){width:26%}.twoshaft-start .ts-table th:nth-c\
hild(2){width:16%}.twoshaft-start .ts-table th:nth-child(4){width:24%}.twoshaft-start .ts-small-line{display:block;font-\
size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:\
var(--ts-grid)}.twoshaft-start a.ts-link:is(:link,:visited,:hover,:focus,:active){color:var(--ts-accent);text-decoration\
:underline;display:inline-flex;align-items:center;min-height:var(--ts-target);cursor:pointer}.twoshaft-start .ts-lessons\
{padding-left:calc(2 * var(--ts-grid))}.twoshaft-start .ts-lessons .ts-link{min-height:24px}.twoshaft-start .ts-module t\
h{padding-top:calc(3 * var(--ts-grid));font-size:var(--ts-text)}.twoshaft-start .ts-table .ts-module th{width:auto}.twos\
haft-start .ts-assigned{margin-left:var(--ts-grid);font-weight:400;color:var(--ts-quiet)}.twoshaft-start .ts-next{margin\
:0}.twoshaft-start summary{min-height:var(--ts-target);align-content:center;cursor:pointer}@media(max-width:560px){.twos\
haft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.twoshaft-start .ts-table :is(tr,th,td):nth-child(n){d\
isplay:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.tw\
oshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.twoshaft .tsj-bench{display:flex;flex-wrap:wrap;gap:cal\
c(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--ts-grid)}.twoshaft .tsj-bench svg{display:block;max-width:\
100%;height:auto}.twoshaft .tsj-bolt{cursor:pointer}.twoshaft .tsj-bolt:focus{outline:none}.twoshaft .tsj-bolt:focus-vis\
ible circle{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsj-bolt.tsj-started circle{stroke-width:3}.twoshaft .tsj-\
bolt.tsj-tight circle{fill:var(--ts-ink)}.twoshaft .tsj-bolt.tsj-tight text{fill:var(--ts-paper)}.twoshaft .tsj-slide{di\
splay:inline-flex;align-items:center;gap:var(--ts-grid)}.twoshaft .tsj-slide input{width:180px;max-width:40vw;accent-col\
or:var(--ts-accent);min-height:var(--ts-target)}.twoshaft .tsj-figure{min-width:8ch;font-variant-numeric:tabular-nums;fo\
nt-weight:600}.twoshaft .tsj-happened{min-height:3em;margin-top:var(--ts-grid)}.twoshaft .tsj-check{display:inline-flex;\
align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsj-check input{width:18px;height:18px;acce\
nt-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-template-columns:max-content minmax(0,1fr);gap:4px c\
alc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-width) + 12ch);margin:var(--ts-grid) 0}.twoshaft .tsj\
-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-settings\
 select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:wrap}@media(max-width:700px){.twoshaft .tsj-setting\
s{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{border-collapse:collapse;font:var(--ts-text) var(--ts-f\
ont);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align:left;font-weight:600;padding:4px 0}.twoshaft table\
.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-align:middle;padding:4px 12px 4px 0;border-bottom:1p\
x solid var(--ts-line);background:none;font-weight:400}.twoshaft table.tsk-board thead th{font-weight:600}.twoshaft tabl\
e.tsk-board tbody th{min-width:18ch;max-width:34ch;white-space:normal}.twoshaft table.tsk-board .tsk-number{text-align:r\
ight;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft table.tsk-board select{max-width:44ch}.twoshaft tabl\
e.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:600;border-bottom:2px solid var(--ts-accent)\
}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{min-width:24ch}.twoshaft .tsk-spent,.twoshaf\
t .tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){.twoshaft table.tsk-board,.twoshaft table.tsk-board tbody,.t\
woshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.twoshaft table.tsk-board thead{position:abso\
lute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft table.tsk-board tr{border-bottom:1px solid var(\
--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twoshaft table.tsk-board tbody td,.twoshaft tabl\
e.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-width:0;padding:2px 0;text-align:left;white-spac\
e:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-board tbody .tsk-best td{border:0}.twoshaft ta\
ble.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board tbody th{font-weight:60\
0}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) ": ";color:var(--ts-quiet)}.twoshaft table.ts\
k-board td:empty{display:none!important}.twoshaft table.tsk-board select{max-width:100%}}.twoshaft .ts-gate{cursor:defau\
lt;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none}.twoshaft .ts-pulling,.two\
shaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accent)}.twoshaft .ts-gate svg{u\
ser-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-happened.ts-stopped,.twos\
haft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;padding-left:calc(4 * var(--\
ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{ma\
x-width:calc(var(--ts-width) + 12ch);font-weight:600}.twoshaft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:\
focus-visible{outline-offset:-3px}.twoshaft .tsw-train svg{user-select:none}.twoshaft .tsw-counts{display:flex;flex-wrap\
:wrap;gap:calc(2 * var(--ts-grid));margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-\
template-columns:104px 1fr;column-gap:var(--ts-grid);align-items:center;width:268px;padding:4px;border:1px solid var(--t\
s-line);border-radius:2px;text-align:left;font-size:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(-\
-ts-accent);padding:3px}.twoshaft .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft \
.tsw-count>.tsw-dial{grid-column:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:\
104px;height:104px;touch-action:none;cursor:grab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .\
tsw-plate{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--\
ts-ink);stroke-width:2}.twoshaft .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-ac\
cent)}.twoshaft .tsw-tick{stroke:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw\
-number{font:15px var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{min-height:1.5em;font-fami\
ly:monospace;font-size:var(--ts-text);letter-spacing:1px;overflow-wrap:anywhere;max-height:4.5em;overflow-y:auto}.twosha\
ft .tsw-figure{min-height:1.5em;font-variant-numeric:tabular-nums}.twoshaft .tsw-figure:empty{min-height:0}.twoshaft .ts\
w-happened{min-height:1.5em}.twoshaft .tsh-picture{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{di\
splay:block;width:100%;min-width:720px;max-width:1100px;height:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-p\
lace:focus{outline:none}.twoshaft .tsh-place:hover .tsh-hit{stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .\
tsh-hit,.twoshaft .tsh-chosen:hover .tsh-hit{stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .\
tsh-hit{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-le\
ft:3px solid var(--ts-accent);padding-left:calc(1.5 * var(--ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .ts\
h-verdict{font-weight:600}.twoshaft .tsh-verdict{margin-top:var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margi\
n-bottom:0}.twoshaft .tsl-sliders{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 c\
alc(3 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:960px}.twoshaft .tsl-row{display:grid;grid-template-columns:12\
em minmax(6em,1fr) 4em;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsl-row input{width:\
100%;accent-color:var(--ts-accent);margin:0;min-height:24px}.twoshaft .tsl-row .ts-box{justify-self:start}.twoshaft .tsl\
-figure{font-variant-numeric:tabular-nums;text-align:right}.twoshaft .tsl-drawing{overflow-x:auto}.twoshaft .tsl-drawing\
 svg{display:block;width:100%;min-width:600px;max-width:820px;height:auto}.twoshaft .tsl-sum{font-variant-numeric:tabula\
r-nums;margin:var(--ts-grid) 0}@media(max-width:480px){.twoshaft .tsl-sliders{grid-template-columns:minmax(0,1fr)}.twosh\
aft .tsl-row{display:flex;flex-wrap:wrap;min-width:0}.twoshaft .tsl-row input{max-width:100%}}.twoshaft .tsp-section{ove\
rflow-x:auto}.twoshaft .tsp-gauge{width:220px;height:200px;flex:none}.twoshaft .tsp-section svg{display:block;max-width:\
100%;height:auto;min-width:320px}.twoshaft .ts-pair[hidden]{display:none}.twoshaft .ts-cells{position:absolute;pointer-e\
vents:none}.twoshaft .tsp-land.tsp-clear{fill:none}.twoshaft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:ro\
und}.twoshaft .tsp-way{fill:none;stroke:var(--ts-bad);stroke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill\
:var(--ts-ink);stroke:var(--ts-paper);stroke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-\
word,.twoshaft .tsp-shut .tsp-chosen{display:none}.twoshaft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(\
--ts-grid));font-size:var(--ts-small);min-height:1.6em}.twoshaft .ts-key{display:inline-flex;align-items:center;gap:4px}\
.twoshaft .ts-swatch{width:25px;height:15px;border:1px solid var(--ts-line)}.twoshaft .ts-range{accent-color:var(--ts-ac\
cent);min-height:24px}.twoshaft .ts-clock{min-width:6em;font-weight:600}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sente\
nces[hidden]{display:none}.twoshaft .ts-told{min-height:2em;max-height:9em;overflow-y:auto}.twoshaft .ts-build{display:g\
rid;grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));align-items:start}.twoshaft .ts-b\
uildlist{display:grid;gap:4px;max-height:22rem;overflow-y:auto;padding:4px}.twoshaft .ts-buildstep{text-align:left;paddi\
ng-block:2px;min-height:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var(--ts-line)}.twoshaft .t\
s-buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-current\
]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand{bor\
der:1px solid var(--ts-line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twoshaft .ts-hand .ts-field{border\
:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do{text-align:left;padding-\
block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid);font-size:var(--ts-smal\
l)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.twoshaft .ts-record caption\
{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align:top;padding:3px 16px 3px\
 0;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-record .ts-blank{min-width:12\
em;height:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,1fr)}.twoshaft .ts-buildlist,.t\
woshaft .ts-hand{max-height:none}}`,Pe="twoshaft-styles";function Ks(){let t=document.getElementById(Pe);t?.textContent!==
De&&(t?.remove(),document.head.append(s("style",{id:Pe},De)))}function U({model:t,el:e},{kind:o,lost:r=()=>_t(e)}){Ks(),
e.classList.add("twoshaft","twoshaft-live",`twoshaft-${o}`);let n=s("p",{class:"ts-alert",role:"alert"}),a=()=>e.classList.
contains("ts-lost"),d=[],l=_s(t,()=>{a()||(e.classList.add("ts-lost"),n.textContent=Ps,r())},h=>{a()||(n.textContent=h?Bs:
"")}),u=Hs(e),g,f=(h,v)=>{t.on(h,v),d.push([h,v])};return f("msg:custom",h=>{h.type==="trouble"&&!a()&&(n.textContent=h.
reason)}),{alert:n,follow:f,send(h){t.send(h),clearTimeout(g),g=window.setTimeout(()=>t.send({type:"rest"}),js)},show:(...h)=>e.
replaceChildren(...jt(h)),close(){u(),l();for(let[h,v]of d)t.off(h,v)}}}function Be({model:t,el:e}){let o=U({model:t,el:e},{kind:"rig",lost:()=>l.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),n=s("p",{class:"ts-cost"}),a=t.get("start"),d=null,i=f=>{d=J("order"),o.send({type:"order",order:f,turn:d})},
l=Vt({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),u=s("button",{type:"\
button",class:"ts-button",onclick:()=>l.change([...a],"The first order stands again")},"Start again");l.tools.append(u),
o.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),o.alert,r,n,l.element);function g(){let f=t.
get("judged");d!==null&&f.turn!==d||(d=null,r.textContent=f.finding,n.textContent=f.cost,l.setOrder(f.order),l.setNotes(
f.notes))}return o.follow("change:judged",g),g(),o.close}function je(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function Re({model:t,el:e}){let o=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),n=s("p",{class:"ts-hint"}),a=s("div",{class:"ts-s\
croll ts-fit",tabindex:"0",role:"region","aria-label":"The unit by stages"}),d=s("dl",{class:"ts-facts"}),i=s("div",{class:"\
ts-ready"}),l=s("select",{class:"ts-box ts-before","aria-label":"A step that is not ready"}),u=s("input",{type:"text",inputmode:"\
numeric",size:"3",class:"ts-box","aria-label":"Go to place",onkeydown:c=>{c.key==="Enter"&&D()}}),g=s("span"),f=c=>N.send(
{type:"move",by:c}),h=c=>N.send({type:"go",position:c}),v=Q("Back",()=>f(-1),"One step back"),m=Q("Next",()=>f(1),"Next \
step"),x=Q("Start",()=>h(0),"Start with an empty bench"),y=Q("End",()=>h(t.get("view").count),"End of the order"),O=Q("T\
ry it",()=>N.send({type:"take",step:l.value}),"Try it: the step chosen here"),D=()=>{let c=Number.parseInt(u.value,10);c>=
0&&h(c)},L=s("div",{class:"ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},
x,v,m,y,s("span",{class:"ts-pair"},"place ",u,g,Q("Go",D,"Go to this place")));L.addEventListener("keydown",c=>{if(!(c.target===
u||wt(c))){if(c.key==="ArrowLeft")f(-1);else if(c.key==="ArrowRight")f(1);else if(c.key==="Home")h(0);else if(c.key==="E\
nd")h(t.get("view").count);else return;c.preventDefault()}});let N=U({model:t,el:e},{kind:"rig"});N.show(s("p",{class:"t\
s-who"},"Practice. Nothing here is marked or saved."),N.alert,o,L,r,n,a,d,s("p",{class:"ts-prompt"},"Do another step nex\
t"),i,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",l,O)));let $="";function p(){let c=t.
get("view");o.textContent=c.finding,r.textContent=c.happened,n.textContent=c.next?`Next in this order: ${c.next}`:"This \
is the end of the order.",$!==c.figure&&(a.innerHTML=$=c.figure),d.replaceChildren(...St(c.facts));let b=i.contains(document.
activeElement);i.replaceChildren(...c.ready.map(([S,C])=>Q(C,()=>N.send({type:"take",step:S})))),c.ready.length||i.append(
s("p",{class:"ts-hint"},"No step is ready.")),b&&(i.querySelector("button")??m).focus(),l.replaceChildren(...it(c.waiting)),
l.disabled=O.disabled=!c.waiting.length,u.value=String(c.position),g.textContent=` of ${c.count} `;let k=c.position===0,
w=c.position===c.count;for(let S of[v,x])je(S,k);for(let S of[m,y])je(S,w)}return N.follow("change:view",p),p(),N.close}function Pt(t){let e=null,o=null,r=a=>{if(e!==null){o=a;return}e=J("turn"),t(a,e)},n=()=>{e=null;let a=o;o=null,a!==null&&
r(a)};return{ask:r,free:n,answered(a){a===e&&n()},get waiting(){return e!==null}}}var X=(t,e,o,r,n)=>E("line",{x1:t,y1:e,x2:o,y2:r,class:n}),V=(t,e,o,r="middle")=>E("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},o);function Bt(){let t=E("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(E("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let n=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(X(100+
a*Math.sin(n),100-a*Math.cos(n),100+92*Math.sin(n),100-92*Math.cos(n),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(V(100+66*Math.sin(n),104.5-66*Math.cos(n),String(r)))}t.append(E("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let n=r/10*2*Math.PI;t.append(X(100+15*Math.sin(n),134-15*Math.cos(n),100+19*Math.sin(n),134-19*Math.
cos(n),"tsg-mark"))}let e=X(100,134,100,119,"tsg-small"),o=E("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"tsg-po\
inter"});return t.append(e,o,E("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,n){o.setAttribute("transform",
`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`Dial indi\
cator, one mark is 0.01 mm. ${n}`)}}}function He({top:t,mark:e,perFigure:o}){let r=E("svg",{viewBox:"0 0 600 92",class:"\
tsg-scale",role:"img"}),n=d=>30+d/t*540;r.append(E("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));for(let d=0;d*
e<=t+1e-9;d+=1){let i=d%o===0;r.append(X(n(d*e),22,n(d*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.append(V(n(d*e),
84,String(Math.round(d*e))))}let a=E("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(a,V(586,14,"new\
tons","end")),{node:r,top:t,set(d,i){a.setAttribute("transform",`translate(${n(Math.min(d,t))} 0)`),r.setAttribute("aria\
-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function _e({low:t,high:e,reach:o}){let r=E("svg",{viewBox:"0 0 720 \
92",class:"tsg-axis",role:"img"}),n=i=>360+Math.max(-o,Math.min(o,i))/o*340;r.append(E("rect",{x:n(t),y:34,width:n(e)-n(
t),height:24,class:"tsg-target"}),V((n(t)+n(e))/2,84,"target"),X(20,46,700,46,"tsg-mark"),X(360,26,360,66,"tsg-mark tsg-\
long"),V(20,20,"end play","start"),V(700,20,"preload","end"),V(360,20,"0"));for(let i=.05;i<=o+1e-9;i+=.05)for(let l of[
i,-i])r.append(X(n(l),42,n(l),50,"tsg-mark"));r.append(V(n(-o),70,`${o.toFixed(2)} mm`,"start"),V(n(o),70,`${o.toFixed(2)}\
 mm`,"end"));let a=E("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),d=E("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});return r.
append(a,d),{node:r,set(i,l,u){a.setAttribute("transform",`translate(${n(i)} 0)`),d.setAttribute("transform",`translate(${n(
l)} 0)`),r.setAttribute("aria-label",u)}}}function ct(t,{min:e,max:o,step:r,value:n,words:a,onInput:d}){let i=s("input",
{type:"range",class:"ts-slider",min:e,max:o,step:r,value:n,"aria-label":t}),l=s("output",{class:"ts-slid"},a(n));return i.
addEventListener("input",()=>{let u=a(Number(i.value));l.textContent=u,i.setAttribute("aria-valuetext",u),d(Number(i.value))}),
i.setAttribute("aria-valuetext",a(n)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,l),set(u){i.value=String(
u),l.textContent=a(u)}}}function lt(t,e,o,r){let n=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(n.value)},...e.
map(([a,d])=>s("option",{value:a,selected:a===o},d)));return{box:n,row:s("span",{class:"ts-pair"},`${t} `,n)}}function Ke({model:t,el:e}){let o=t.get("about"),r=t.get("shown").state,n=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),d=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),l=s("u\
l",{class:"ts-sentences"}),u=Pt((p,c)=>L.send({type:"set",state:p,turn:c})),g=p=>{r={...r,...p},u.ask(r)},f=E("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),h=X(0,0,0,0,"tsg-mark tsg-long"),v=V(0,0,""),m=96,
x=m/(o.readingsOnly?r.radius:o.radii[1]),y=E("svg",{viewBox:`0 0 ${2*m+120} ${2*m+30}`,width:2*m+120,height:2*m+30,class:"\
tsg-drum",role:"img"}),O=m+4;f.setAttribute("transform",`translate(${O} ${O})`),y.append(f,h,X(4,O,2*m+4,O,"tsg-centre"),
X(O,4,O,2*m+4,"tsg-centre"),E("circle",{cx:O,cy:O,r:10,class:"tsg-face"}),v);let D=[s("div",{class:"ts-tools"},_("Turn t\
he shaft ten times",()=>g({turns:r.turns+10})))];if(!o.readingsOnly){let p=o.kinds,c=p.map(([b,k])=>s("label",{class:"ts\
-option"},s("input",{type:"checkbox",checked:r.kinds.includes(b),onchange:w=>g({kinds:p.map(([S])=>S).filter(S=>S===b?w.
target.checked:r.kinds.includes(S))})}),`with ${k}`));D[0].append(_("Fit the rings anew",()=>g({turns:0}))),c.length&&D.
push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the bearings"),...c)),D.push(ct("Set\
ting",{min:-.05,max:o.highest,step:.005,value:r.setting,onInput:b=>g({setting:b}),words:b=>b<0?`${(-b).toFixed(3)} mm of\
 end play`:`${b.toFixed(3)} mm of preload`}).row,ct("Radius of the drum",{min:o.radii[0],max:o.radii[1],step:1,value:r.radius,
onInput:b=>g({radius:b}),words:b=>`${b} mm`}).row)}let L=U({model:t,el:e},{kind:"rig"});L.show(s("p",{class:"ts-who"},o.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),L.alert,
s("div",{class:"tsg-beside"},y,s("div",{class:"tsg-side"},a,d)),...D,i,l);function N(){let p=t.get("shown");u.waiting||(r=
p.state);let c=x*p.state.radius;kt(f,{r:c}),kt(h,{x1:O,y1:O-c,x2:2*m+120,y2:O-c}),kt(v,{x:O,y:2*m+22}),v.textContent=`dr\
um, radius ${p.state.radius} mm`,y.setAttribute("aria-label",`A drum of ${p.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),n?.top!==p.scale.top&&(n=He(p.scale),a.replaceChildren(n.node),d.textContent=
`Spring scale to ${p.scale.top} N, one mark ${p.scale.mark} N.`),n?.set(p.pull,p.pullWords),i.textContent=p.finding,l.replaceChildren(
...It(p.words)),u.answered(p.turn)}let $=()=>u.free();return L.follow("change:shown",N),L.follow("msg:custom",$),N(),L.close}function $t({model:t,el:e},o){let r=t.get("about"),n=t.get("shown").state,a=Pt((f,h)=>d.send({type:"set",state:f,turn:h})),
d=U({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),l=o(r,f=>{n={...n,...f},a.ask(n)},n),u=r.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";d.show(s("p",{class:"\
ts-who"},u),d.alert,s("div",{class:"tsg-wide"},l.picture),...l.controls,i);function g(){let f=t.get("shown");a.waiting||
(n=f.state),l.set(f,n),i.textContent=f.finding,a.answered(f.turn)}return d.follow("change:shown",g),d.follow("msg:custom",
a.free),g(),d.close}var vt=(...t)=>s("div",{class:"ts-tools"},...t);var Fs={x:44,y:84,perMm:34};function Ws(t){let e=E("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:o,y:r,
perMm:n}=Fs,a=E("g",{}),d=E("g",{});e.append(E("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),E("rect",{x:o-
30,y:r,width:t.lines*t.space*n+60,height:64,class:"tsi-body"}),a,d,V(12,14,"main scale, mm","start"),V(12,176,`vernier, ${t.
lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let l=o+i*t.space*n;d.append(
X(l,r,l,r+(i%2?20:30),"tsi-fine")),i%2===0&&d.append(V(l,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let l=Math.
max(0,Math.ceil(i.mm-1));l<=t.top+25;l+=1){let u=o+(l-i.mm)*n;u<4||u>756||(a.append(X(u,r,u,r-(l%10===0?34:l%5===0?28:20),
"tsi-fine")),l%5===0&&a.append(V(u,r-40,String(l))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function Fe(t){
return $t(t,(e,o,r)=>{let n=Ws(e),a=ct("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:l=>o(
{rod:l})}),d=lt("Foot",e.places,r.place,l=>o({place:l,rod:0})),i=lt("Look",e.eyes,r.eye,l=>o({eye:l}));return{picture:n.
node,controls:[vt(d.row,i.row),vt(_("Push the rod down until it rests",()=>o({rod:e.top})),_("Lift the rod",()=>o({rod:0}))),
a.row],set(l,u){n.set(l),d.box.value=u.place,i.box.value=u.eye,a.box.value=u.rod}}})}function We({model:t,el:e}){let o=t.get("plan"),r=s("p",{class:"ts-finding"}),n=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=o.drawing;let d=s("div",{class:"tsj-bars"}),i=at(a,"[data-bolt]"),l=J("torq\
ue"),u=s("input",{id:l,type:"range",min:10,max:100,step:5,oninput:()=>h()});u.value="100";let g=s("output",{class:"tsj-f\
igure",for:l}),f=()=>u.value==="100"?o.torque:Number((Math.round(o.torque*Number(u.value)/100/o.step)*o.step).toFixed(3));
function h(){g.textContent=`${f()} N·m`,u.setAttribute("aria-valuetext",`${f()} newton metres, ${u.value} percent of th\
e torque`)}let v=c=>L.send({type:"pull",bolt:c,torque:f()}),m=_("Take back",()=>L.send({type:"undo"})),x=_("Wait until t\
he film has run out",()=>L.send({type:"wait"})),y=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>L.send({type:"set",film:Number(y.value)})},...o.films.map(c=>s("option",{value:c},c?`${c} µm thick`:"none"))),
O=s("input",{type:"checkbox",onchange:()=>L.send({type:"set",scattered:O.checked})});a.addEventListener("click",c=>{let b=Mt(
c,"[data-bolt]");b&&(D(b),v(Number(b.dataset.bolt)))});let D=c=>{for(let b of i)b.setAttribute("tabindex",b===c?"0":"-1");
c.focus({preventScroll:!0})};a.addEventListener("keydown",c=>{let b=Mt(c,"[data-bolt]");if(!b||c.ctrlKey||c.metaKey||c.altKey)
return;let k=Number(b.dataset.bolt),w={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[c.key];if(w)D(i[(k+w+i.length)%
i.length]);else if(c.key==="Home")D(i[0]);else if(c.key==="End")D(i[i.length-1]);else if(c.key==="Enter"||c.key===" ")c.
repeat||v(k);else return;c.preventDefault()});let L=U({model:t,el:e},{kind:"rig"}),N=s("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},_("Start all by hand",()=>L.send({type:"start"})),...o.rounds.map(([c,b])=>_(`One round ${b}`,
()=>L.send({type:"round",pattern:c,torque:f()}))),m,_("Start again",()=>L.send({type:"again"}))),$=s("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:l},"Wrench set to"),u,g));o.films.length&&
$.append(s("label",{class:"ts-pair"},"Wet sealant",y),x,s("label",{class:"tsj-check"},O,"friction scatters from bolt to \
bolt")),L.show(s("p",{class:"ts-who"},o.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),L.alert,r,$,N,n,s("div",{class:"tsj-bench"},a,d),s("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function p(){let c=t.get("view");r.textContent=c.finding,n.textContent=c.happened,d.innerHTML=
c.bars;for(let[b,k]of i.entries()){let w=c.tight[b]?`${c.clamps[b]} kN`:c.started[b]?"started by hand":"not started";k.setAttribute(
"aria-label",`Bolt ${b+1} of ${o.count}, ${w}`),k.classList.toggle("tsj-tight",c.tight[b]),k.classList.toggle("tsj-start\
ed",c.started[b])}m.disabled=!c.pulls,x.disabled=!c.standing,y.value=String(c.film),O.checked=c.scattered}return L.follow(
"change:view",p),h(),p(),L.close}var Ue="tsk-number";function Et(t,e,...o){return s("td",{class:e?Ue:null,"data-label":t||null,role:"cell"},...o)}function Zt(t,e,o){
let r=e.map(([d,i])=>s("th",{scope:"col",role:"columnheader",class:i?Ue:null},d)),n=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),n,o);return s("div",{class:"ts-scroll"},
a)}function qe({model:t,el:e}){let o=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),n=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),d=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),l=new Map;for(let[h,
v,m,x]of o.checks){let y=s("select",{class:"ts-box","aria-label":`What it showed: ${v}`,onchange:()=>g.send({type:"obser\
ve",check:h,shown:y.value})},s("option",{value:""},"Not made"),...it(x)),O=Et("would tell, bit",!0),D=Et("bit a minute",
!0),L=s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},v),Et("min",!0,`${m}`),Et("it showed",!1,y),O,D);l.set(h,
{box:y,tells:O,rate:D,row:L}),i.append(L)}let u=s("button",{class:"ts-button",type:"button",onclick:()=>g.send({type:"cl\
ear"})},"Take all observations back"),g=U({model:t,el:e},{kind:"rig"});g.show(s("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),g.alert,r,a,d,Zt("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),n,u);function f(){let h=t.get("view");r.textContent=h.finding,
n.textContent=h.spent,d.textContent=h.more,a.replaceChildren(...It(h.left.map(([x,y])=>`${x} (${y})`)));let v=h.ranked,m=new Map(
v.map(([x,y,O],D)=>[x,{bits:y,rate:O,rank:D}]));for(let[x,{box:y,tells:O,rate:D,row:L}]of l){let N=h.observed[x],$=m.get(
x);y.value=N??"",O.textContent=$?$.bits:N!==void 0?"made":"nothing",D.textContent=$?$.rate+($.rank===0?" ◀ best next":
""):"–",L.classList.toggle("tsk-best",$?.rank===0)}}return g.follow("change:view",f),f(),g.close}function Ge({model:t,el:e}){let o=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
n=s("div",{class:"ts-scroll ts-fit ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"\
The lever. Arrow keys left and right slide the selector shaft, up and down turn it."}),a=s("select",{class:"ts-box ts-ho\
w","aria-label":"How it is put together"},...it(t.get("builds"))),d=Q("Start again",()=>x({type:"reset"})),i=s("div",{class:"\
ts-tools ts-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([c,b])=>Q(b,()=>x({type:"move",
code:c})))),l=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),u=s("p",{class:"ts-hint"},"Nothin\
g tried yet. Use the moves above; each is written down here."),g=s("p",{class:"ts-proof",role:"status"}),f=Q("What does \
a full hand test find?",()=>{f.disabled=!0,g.textContent="testing",x({type:"prove"})}),h=U({model:t,el:e},{kind:"rig"});
h.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),h.alert,s("div",{class:"ts-tools"},s("span",
{class:"ts-pair"},"Put together: ",a),d),o,n,r,s("p",{class:"ts-hint"},"Drag the blue finger, or click the picture and u\
se the arrow keys: left and right slide, up and down turn. Or use the moves in words:"),i,s("p",{class:"ts-prompt"},"Tri\
ed by hand"),u,l,s("div",{class:"ts-tools"},f),g);let v=0,m="";function x(c){v+=1,h.send({...c,turn:v})}function y(){let c=t.
get("view");if(m!==t.get("figure")){m=t.get("figure"),n.innerHTML=m;let b=Ct(n,"svg");b.removeAttribute("role"),b.setAttribute(
"aria-hidden","true")}for(let b of at(n,"[data-body]")){let[k,w]=c.moved[String(b.dataset.rides??b.dataset.body)]??[0,0];
b.setAttribute("transform",`translate(${k.toFixed(2)} ${w.toFixed(2)})`)}for(let b of at(n,"[data-gear]"))b.classList.toggle(
"tsg-in",c.gears.includes(b.dataset.gear));n.dataset.turn=String(c.turn),o.textContent=`${c.gears.length>1?"■ ":c.gears.
length?"● ":"○ "}${c.title}.`,r.textContent=c.happened,r.classList.toggle("ts-stopped",/topped by/.test(c.happened)),
(l.childElementCount!==c.log.length||l.lastElementChild?.textContent!==c.log.at(-1))&&(l.replaceChildren(...c.log.map(b=>s(
"li",{class:/topped by/.test(b)?"ts-stopped":""},b))),l.scrollTop=l.scrollHeight),u.hidden=c.log.length>0,a.value=c.build,
g.textContent=c.proof,f.disabled=!1,L=!1,p()}n.addEventListener("keydown",c=>{if(wt(c))return;let b={ArrowLeft:[-1,0],ArrowRight:[
1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[c.key];b&&(c.preventDefault(),x({type:"nudge",travel:b[0],turned:b[1]}))}),a.addEventListener(
"change",()=>x({type:"build",build:a.value}));let O=null,D=null,L=!1;function N(c){let b=Ct(n,"svg"),k=b.getBoundingClientRect(),
w=b.viewBox.baseVal.width/k.width;return[(c.clientX-k.left)*w,(c.clientY-k.top)*w]}n.addEventListener("pointerdown",c=>{
let b=Mt(c,".tsg-panel");if(!b||c.button!==0)return;let k=t.get("view").hand,[w,S]=N(c),C=Number(b.dataset.scale);O={x:w-
k[0]*C,y:S+k[1]*C,scale:C},n.setPointerCapture(c.pointerId),n.focus({preventScroll:!0}),n.classList.add("ts-pulling"),c.
preventDefault()}),n.addEventListener("pointermove",c=>{if(!O)return;let[b,k]=N(c);D={travel_mm:(b-O.x)/O.scale,turn_mm:(O.
y-k)/O.scale},p()});let $=()=>{O=null,n.classList.remove("ts-pulling")};n.addEventListener("pointerup",$),n.addEventListener(
"pointercancel",$);function p(){if(L||!D)return;L=!0;let c=D;D=null,x({type:"pull",...c})}return h.follow("msg:custom",c=>{
c.type==="trouble"&&(L=!1)}),h.follow("change:view",y),y(),h.close}function ze({model:t,el:e}){let o=t.get("plan"),r=t.get("view"),n=s("p",{class:"ts-finding",role:"status"}),a=s("p",{class:"\
ts-happened tsw-happened",role:"status"}),d=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,u=o.gears.map(
([k,w])=>s("button",{type:"button",class:"ts-button","data-gear":k,"aria-pressed":"false",onclick:()=>p({type:"gear",gear:k})},
w)),g=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:k=>p({type:"hold",shaft:k.target.value})},...it(
o.holds)),f=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:k=>{i=k.target.value,b()}},...it(r.dials.
map(k=>[k.shaft,k.name]))),h=k=>p({type:"turn",shaft:i,turns:k}),v=`1/${o.marks}`,m=s("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},Q("↺ 1 turn",()=>h(-1),"One turn anticlockwise"),Q(`↺ ${v}`,()=>h(-o.step),`${v} t\
urn anticlockwise`),Q("↺ a touch",()=>h(-o.fine),"A touch anticlockwise"),Q("a touch ↻",()=>h(o.fine),"A touch clock\
wise"),Q(`${v} ↻`,()=>h(o.step),`${v} turn clockwise`),Q("1 turn ↻",()=>h(1),"One turn clockwise"),Q("Marks to zero",
()=>p({type:"reset"}))),x=new Map;for(let k of r.dials){let w=E("g",{},E("circle",{class:"tsw-end",r:34}),E("line",{class:"\
tsw-painted",x1:0,x2:0,y1:0,y2:-34}),E("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),S=[];for(let P=0;P<o.marks;P+=1)S.push(
E("line",{class:"tsw-tick",y1:-40,y2:P?-47:-52,transform:`rotate(${P*360/o.marks})`})),P&&S.push(E("text",{class:"tsw-nu\
mber",x:57*Math.sin(P*2*Math.PI/o.marks),y:-57*Math.cos(P*2*Math.PI/o.marks)+4},String(P)));let C=E("svg",{viewBox:"-70 \
-70 140 140",class:"tsw-dial","data-shaft":k.shaft,"aria-hidden":"true"},E("circle",{class:"tsw-plate",r:40}),...S,E("pa\
th",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),w),R=s("div",{class:"tsw-count",tabindex:"0",role:"application","ari\
a-roledescription":"shaft","data-shaft":k.shaft},s("div",{class:"tsw-name"}),C,s("div",{class:"tsw-strokes","aria-hidden":"\
true"}),s("div",{class:"tsw-figure"}));x.set(k.shaft,{box:R,svg:C,shaftEnd:w}),R.addEventListener("focus",()=>{i!==k.shaft&&
(i=k.shaft,b())}),R.addEventListener("keydown",P=>{if(wt(P))return;let K={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1,
PageDown:1,PageUp:-1}[P.key];K&&(P.preventDefault(),i=k.shaft,h(K*(P.key.startsWith("Page")?1:P.shiftKey?o.fine:o.step)))});
let W=null,T=P=>{let K=C.getBoundingClientRect();return Math.atan2(P.clientX-K.left-K.width/2,K.top+K.height/2-P.clientY)/
(2*Math.PI)};C.addEventListener("pointerdown",P=>{P.button===0&&(W=T(P),C.setPointerCapture(P.pointerId),R.focus({preventScroll:!0}),
P.preventDefault())}),C.addEventListener("pointermove",P=>{if(W===null)return;let K=T(P),Z=K-W;Z-=Math.round(Z),W=K,y+=Z,
D()});let B=()=>{W=null};C.addEventListener("pointerup",B),C.addEventListener("pointercancel",B)}let y=0,O=!1;function D(){
if(O||Math.abs(y)<.002)return;O=!0;let k=y;y=0,h(k)}let L=U({model:t,el:e},{kind:"rig"});L.show(...o.closed?[]:[s("p",{class:"\
ts-who"},"Practice. Nothing here is marked or saved.")],L.alert,n,...o.closed?[]:[s("div",{class:"ts-tools",role:"group",
"aria-label":"Gears engaged"},s("span",{},"Engage: "),...u),d],s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Ho\
ld still: ",g),s("span",{class:"ts-pair"},"Turn by hand: ",f)),s("div",{class:"tsw-counts"},...[...x.values()].map(k=>k.
box)),m,a,s("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a dial round, or go to it and use the a\
rrow keys (${v} turn), Shift with an arrow key (a touch) or Page Up and Page Down (one turn). Each stroke is a whole tur\
n.`));let N=0,$=null;function p(k){N+=1,L.send({...k,turn:N})}let c=k=>{let w=[];for(let S=k;S>0;S-=5)w.push(S>=5?"||||/":
"|".repeat(S));return w.join(" ")};function b(){let k=t.get("view");$!==t.get("figure")&&($=String(t.get("figure")),d.innerHTML=
$);for(let w of at(d,"[data-wheel]")){let[S,C]=k.wheels[String(w.dataset.wheel)]??[0,!0];w.setAttribute("transform",`tra\
nslate(0 ${(S*Number(w.dataset.reach)).toFixed(1)})`),w.classList.toggle("tsw-behind",!C)}for(let w of u)w.setAttribute(
"aria-pressed",String(k.engaged.includes(w.dataset.gear)));g.value=k.held,f.value=i;for(let w of k.dials){let{box:S,shaftEnd:C}=x.
get(w.shaft),R=w.way>0?"↻":w.way<0?"↺":"";C.setAttribute("transform",`rotate(${w.angle})`);let[W,,T,B]=S.children;W.
textContent=`${w.name}${w.held?", held":w.shaft===i?", your hand":""}`,T.textContent=w.strokes||R?`${R} ${c(w.strokes)}`:
"no stroke",B.textContent=w.figure,S.classList.toggle("tsw-hand",w.shaft===i),S.classList.toggle("tsw-held",w.held),S.setAttribute(
"aria-label",`${w.name}${w.held?", held":""}. ${w.words}`)}n.textContent=k.finding,a.textContent=k.happened,e.dataset.turn=
String(k.turn),O=!1,D()}return L.follow("change:view",b),b(),L.close}function Ye({model:t,el:e}){let o=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),n=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),d=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},n,a,d),l=[],
u=[],g=null,f=t.get("plan").lookingOnly,h=(p,c)=>s("button",{type:"button",class:"ts-button","data-verdict":p,"aria-pres\
sed":"false",onclick:()=>y.send({type:"judge",place:g,verdict:p})},c),v=f?[]:[h("stop","Stop here"),h("well","Fine as it\
 is")],m=s("button",{type:"button",class:"ts-button",onclick:()=>y.send({type:"next"})},"Another day"),x=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...v);t.get("plan").more&&x.append(m);let y=U({model:t,
el:e},{kind:"rig"});y.show(s("p",{class:"ts-who"},f?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),y.alert,o,s("p",{class:"ts-keys"},f?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),r,i),f||i.after(x);function O(p,c){let b=p!==g;g=p;for(let[k,w]of u.
entries()){let S=l[k][0]===p;w.setAttribute("tabindex",S?"0":"-1"),w.setAttribute("aria-pressed",String(S)),w.classList.
toggle("tsh-chosen",S),S&&c&&(w.focus({preventScroll:!0}),D(w))}b&&y.send({type:"choose",place:p})}function D(p){let c=Ct(
p,".tsh-hit").getBoundingClientRect(),b=r.getBoundingClientRect();(c.left<b.left||c.right>b.right)&&(r.scrollLeft+=c.left-
b.left-(b.width-c.width)/2),(c.bottom<0||c.bottom>innerHeight||c.top<0)&&p.scrollIntoView({block:"nearest"})}function L(){
let p=t.get("plan");l=p.places,r.innerHTML=p.drawing,Ct(r,"svg").setAttribute("role","group"),u=l.map(([c])=>Ct(r,`[data\
-place="${c}"]`)),u.forEach((c,b)=>{c.setAttribute("role","button"),c.setAttribute("aria-label",`${b+1} ${l[b][1]}`),c.addEventListener(
"click",()=>O(l[b][0],!0))}),g=String(t.get("view").chosen),O(g,!1)}r.addEventListener("keydown",p=>{if(wt(p))return;let c=l.
findIndex(([w])=>w===g),b=Math.min(6,l.length),k=c;if(p.key==="ArrowRight")k=c+1;else if(p.key==="ArrowLeft")k=c-1;else if(p.
key==="ArrowDown")k=c+b;else if(p.key==="ArrowUp")k=c-b;else if(p.key==="Home")k=0;else if(p.key==="End")k=l.length-1;else if(p.
key!=="Enter"&&p.key!==" ")return;p.preventDefault(),k>=0&&k<l.length&&O(l[k][0],!0)});function N(){let p=t.get("view");
o.textContent=p.finding;let c=l.findIndex(([w])=>w===p.chosen);n.textContent=`${c+1}  ${l[c][1]}`,a.textContent=p.seen;let{
verdict:b,...k}=p.told;if(d.replaceChildren(),b){let w=p.judged[p.chosen],S=w==="stop"==(b==="Stop here."),C=w==="stop"?
"Stop here":"Fine as it is";d.append(s("p",{class:"tsh-verdict"},S?`✓ Yes: ${b}`:`✗ You said “${C}”. The course sa\
ys: ${b}`),s("dl",{class:"ts-facts"},...Object.entries(k).flatMap(([R,W])=>[s("dt",{},R),s("dd",{},W)])))}for(let w of v)
w.setAttribute("aria-pressed",String(p.judged[p.chosen]===w.dataset.verdict));for(let[w,S]of u.entries()){let C=p.judged[l[w][0]];
S.setAttribute("aria-label",`${w+1} ${l[w][1]}${C?`, judged: ${C==="stop"?"stop here":"fine as it is"}`:""}`);let R=S.querySelector(
".tsh-tag");if(!C){R?.remove();continue}R||(R=E("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),S.
append(R)),R.textContent=C==="stop"?"■ stop":"○ well"}e.dataset.turn=p.chosen}let $=()=>{L(),N()};return y.follow("c\
hange:plan",$),y.follow("change:view",N),$(),y.close}function Xe({model:t,el:e}){let o=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),n=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),d=new Map,l=o.sliders.map(([h,v,m,x,y,O])=>{let D=J(h.replace("_","-")),L=s("output",{class:"\
tsl-figure",for:D}),N=s("input",{id:D,type:"range",min:x,max:y,step:O,oninput:()=>{$(),g.send({type:"set",name:h,value:Number(
N.value)})}}),$=()=>{L.textContent=`${N.value} ${m}`,N.setAttribute("aria-valuetext",`${N.value} ${m==="°"?"degrees":m}`)};
return d.set(h,{slider:N,say:$}),s("div",{class:"tsl-row"},s("label",{for:D},v),N,L)}),u=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>g.send({type:"set",name:"grip",value:u.value})},...it(o.grips)),g=U({model:t,el:e},{kind:"r\
ig"});g.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),g.alert,r,s("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...l,s("div",{class:"tsl-row"},s("span",{},"Grip"),u)),a,n,s("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function f(){let h=t.get("vi\
ew");r.textContent=h.finding,n.textContent=h.sum,a.innerHTML=h.drawing;for(let[v,{slider:m,say:x}]of d)document.activeElement!==
m&&(m.value=h.sizes[v]),x();u.value=h.sizes.grip}return g.follow("change:view",f),f(),g.close}var Jt={x:90,y:120,perMm:20,radius:82,bevel:30};function Us(t){let e=E("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:o,y:r,perMm:n,radius:a}=Jt;e.append(E("rect",{x:o-60,y:r-56,width:n*t.top+90,height:112,class:"tsi-pa\
per"}),X(o-20,r,o+n*t.top+20,r,"tsi-bold"));for(let f=0;f*t.pitch<=t.top;f+=1){let h=o+f*t.pitch*n;if(f%2){e.append(X(h,
r,h,r+18,"tsi-fine"));continue}let v=f/2;e.append(X(h,r,h,r-(v%5?18:27),v%5?"tsi-fine":"tsi-bold")),v%5===0&&e.append(V(
h,r-33,String(v)))}let d=E("g",{});e.append(d,V(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway. Th\
imble: 50 lines a turn.","start"));let i=E("path",{d:`M0 ${r-a+14}L${Jt.bevel} ${r-a}L${Jt.bevel} ${r+a}L0 ${r+a-14}Z`,class:"\
tsi-body"}),l=E("rect",{x:Jt.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),u=E("rect",{x:0,y:r-a,width:760,height:2*
a,fill:"var(--ts-paper)"}),g=E("g",{});return d.append(u,i,l,g),{node:e,set(f){d.setAttribute("transform",`translate(${o+
f.mm*n} 0)`),g.replaceChildren();for(let h=0;h<t.lines;h+=1){let v=h-f.line;v-=t.lines*Math.round(v/t.lines);let m=v/t.lines*
2*Math.PI;if(Math.abs(m)>1.15)continue;let x=r-(a-8)*Math.sin(m),y=h%5===0;g.append(X(0,x,y?26:16,x,y?"tsi-bold":"tsi-fi\
ne")),y&&g.append(V(36,x+5,String(h),"start"))}e.setAttribute("aria-label",`${t.name}. ${f.words}`)}}}function Ve(t){return $t(
t,(e,o,r)=>{let n=Us(e),a=ct("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, out to the\
 right",onInput:l=>o({open:l})}),d=lt("Between the faces",e.between,r.between,l=>o({between:l,open:e.top})),i=e.hands.length?
lt("Close it",e.hands,r.hand,l=>o({hand:l})):null;return{picture:n.node,controls:[vt(d.row,i?.row),vt(_("Close until it \
rests",()=>o({open:-1})),_("Open",()=>o({open:e.top}))),a.row],set(l,u){n.set(l),a.box.value=String(Math.max(0,l.mm)),d.
box.value=u.between}}})}function Ze({model:t,el:e}){let o=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),n=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[l,u,g]of o.checks){let f=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${u}`,onclick:()=>{
f.getAttribute("aria-disabled")!=="true"&&d.send({type:"make",check:l})}},"Make"),h=Et("it shows",!1);h.classList.add("t\
sk-shown"),a.set(l,{button:f,shown:h}),n.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},u),Et("min",!0,
`${g}`),Et("",!1,f),h))}let d=U({model:t,el:e},{kind:"rig"});d.show(s("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),d.alert,r,Zt("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],n));
function i(){let l=t.get("view");r.textContent=l.finding;for(let[u,{button:g,shown:f}]of a){let h=l.shown[u];g.setAttribute(
"aria-disabled",h?"true":"false"),g.classList.toggle("ts-off",!!h),g.textContent=h?"Made":"Make",f.textContent=h?`${h[0]?
"✓":"✗"} ${h[1]}`:"",f.classList.toggle("tsk-failed",!!h&&!h[0])}}return d.follow("change:view",i),i(),d.close}function qs(){let t=E("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=E("g"),o=E("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(E("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,o,E("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=d=>(-135+270*d)*Math.PI/180,n="";function a([d,i,l]){e.replaceChildren();for(let u=0;u*i<=d+
1e-9;u+=1){let g=r(u*i/d),f=u%l===0,h=v=>[110+v*Math.sin(g),104-v*Math.cos(g)];if(e.append(X(...h(f?72:79),...h(88),f?"t\
sg-mark tsg-long":"tsg-mark")),f&&u%(2*l)===0){let[v,m]=h(58);e.append(V(v,m+4.5,String(Number((u*i).toFixed(2)))))}}e.append(
V(110,170,"kN"))}return{node:t,set(d,i,l){String(d)!==n&&(n=String(d),a(d));let u=Math.min(i/d[0],1.03);o.setAttribute("\
transform",`translate(110 104) rotate(${-135+270*u})`),t.setAttribute("aria-label",l)}}}function Je(t){return $t(t,(e,o,r)=>{
let n=qs(),a=s("div",{class:"tsp-section"}),d="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},n.node)),l=ct("Push",{min:0,max:100,step:1,value:r.travel,onInput:h=>o(
{travel:h}),words:h=>h>=100?"at the shoulder":`${h} % of the way`}),u=[l.row],g=null;if(!e.readingsOnly){let h=lt("Part",
e.places,r.place,y=>o({place:y,travel:0}));g=lt("Driver bears on",e.drivers,r.driver,y=>o({driver:y,travel:0}));let v=lt(
"Seat",e.seats,r.seat,y=>o({seat:y})),m=ct("Pair",{min:0,max:100,step:1,value:r.grip,onInput:y=>o({grip:y}),words:y=>y===
0?"loosest of the fit":y===100?"tightest of the fit":`${y} % from loosest to tightest`}),x=ct("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:y=>o({warmth:y}),words:y=>`${y} °C`});u.unshift(vt(h.row,g.row,v.row),
m.row,x.row)}let f=s("dl",{class:"ts-facts"});return e.readingsOnly||u.push(f),{picture:i,controls:u,set(h,v){h.section!==
d&&(d=h.section,a.innerHTML=d),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*v.travel/
100} 0)`),n.set(h.gauge,h.force,h.words),Number(l.box.value)!==v.travel&&document.activeElement!==l.box&&l.set(v.travel),
g&&(g.row.hidden=!h.drives),h.facts&&f.replaceChildren(...St(h.facts))}}})}function Qe({model:t,el:e}){let o=t.get("steps"),r=t.get("reach"),n=new Map(o.map(([$],p)=>[$,p])),a=s("div",{class:"ts-\
scroll"}),d=s("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=s(
"p",{class:"ts-finding",role:"status"}),l=s("ul",{class:"ts-sentences"}),u=s("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...it(o.map(([$,p],c)=>[$,`${c+1}  ${p}`]))),g=s("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),f=U({model:t,el:e},{kind:"rig",lost(){u.disabled=!0}});f.show(f.alert,s("p",{class:"ts-f\
inding"},t.get("finding")),s("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",u),
g),a,s("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,d,l),a.innerHTML=t.get("figure");let h=Ct(a,"svg");h.setAttribute("role","group");let v=at(h,".tsf-step").sort(
($,p)=>Number($.dataset.step)-Number(p.dataset.step)),m=at(h,".tsf-rule").map($=>({node:$,ends:String($.dataset.rule).split(
"-").map(Number)}));v.forEach(($,p)=>{$.setAttribute("role","button"),$.setAttribute("aria-label",`${p+1} ${o[p][1]}, ${r[p].
before.length} before it, ${r[p].after.length} after it`),$.addEventListener("click",()=>O(p,!0))});let x=Number(n.get(t.
get("near").step));function y($){let p=new Set(r[x].before),c=new Set(r[x].after);v.forEach((S,C)=>{S.setAttribute("tabi\
ndex",C===x?"0":"-1"),S.setAttribute("aria-pressed",String(C===x)),S.classList.toggle("ts-chosen-step",C===x),S.classList.
toggle("ts-before-it",p.has(C)),S.classList.toggle("ts-after-it",c.has(C)),S.classList.toggle("ts-either",C!==x&&!p.has(
C)&&!c.has(C))});let b=S=>S===x||p.has(S)||c.has(S);for(let{node:S,ends:C}of m){let R=p.has(C[0])&&(C[1]===x||p.has(C[1]))||
c.has(C[1])&&(C[0]===x||c.has(C[0]));S.classList.toggle("ts-either",!(R&&C.every(b)))}u.value=o[x][0],$&&v[x].focus({preventScroll:!0});
let k=v[x].getBoundingClientRect(),w=a.getBoundingClientRect();(k.left<w.left+16||k.right>w.right-16)&&(a.scrollLeft+=k.
left-w.left-w.width/2)}function O($,p){x=$,y(p),f.send({type:"choose",step:o[$][0]})}let D=$=>{let c=Ct(v[$],"rect").getBBox();
return{x:c.x,y:c.y}};function L($){let p=D(x),c=w=>w.sort((S,C)=>Math.abs(D(S).y-p.y)-Math.abs(D(C).y-p.y))[0];if($==="A\
rrowRight")return c(m.filter(({ends:w})=>w[0]===x).map(({ends:w})=>w[1]));if($==="ArrowLeft")return c(m.filter(({ends:w})=>w[1]===
x).map(({ends:w})=>w[0]));let b=v.map((w,S)=>S).filter(w=>Math.abs(D(w).x-p.x)<2&&w!==x),k=$==="ArrowUp"?-1:1;return c(b.
filter(w=>(D(w).y-p.y)*k>0))}h.addEventListener("keydown",$=>{if(!wt($))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes($.key)){let p=L($.key);p!==void 0&&O(p,!0),$.preventDefault()}else($.key==="Enter"||$.key===" ")&&$.preventDefault()}),
u.addEventListener("change",()=>O(Number(n.get(u.value)),!1)),g.addEventListener("click",()=>{let $=a.classList.toggle("\
ts-fit");g.setAttribute("aria-pressed",String($)),y(!1)});function N(){let $=t.get("near");i.textContent=$.words,d.innerHTML=
$.figure,l.replaceChildren(...It($.sentences))}return f.follow("change:near",N),N(),requestAnimationFrame(()=>y(!1)),f.close}function Gs(){let t=E("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=E("g",{}),o=E("g",{});return e.append(
E("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),X(150,164,150,98,"tsi-bold"),E("circle",{cx:150,cy:98,r:5,class:"tsg-h\
ub"})),o.append(X(150,86,150,40,"tsi-plunger"),E("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,X(50,164,250,
164,"tsg-centre"),X(150,250,150,80,"tsg-centre"),o,V(8,252,"not to scale","start")),{node:t,set(r,n,a){e.setAttribute("t\
ransform",`rotate(${r} 150 164)`),o.setAttribute("transform",`rotate(${n} 150 88)`),t.setAttribute("aria-label",a)}}}function ts(t){
return $t(t,(e,o,r)=>{let n=Bt(),a=Gs(),d=ct("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:u=>`turn\
ed by ${u}°`,onInput:u=>o({angle:u})}),i=lt("Plunger",e.pressed,r.pressed,u=>o({pressed:u})),l=lt("Stand",e.tilts,r.tilt,
u=>o({tilt:u}));return{picture:s("div",{class:"tsg-beside"},a.node,s("div",{class:"tsg-gauge"},n.node,s("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[vt(i.row,l.row),d.row],set(u,g){n.set(u.mm,u.words),a.set(u.state.angle,Number(u.
state.tilt),`Shaft end on, turned by ${u.state.angle}°; the plunger stands ${u.state.tilt}° off square. Not to scale.`),
d.set(g.angle)}}})}var ss=(t,e)=>(t+e)%7<2,ns=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,te=()=>!1,Qt=t=>(e,o)=>o%t===0,zs={"":te,dots:(t,e)=>t%6<2&&e%
6<2,rising:ss,cross:ns,flat:(t,e)=>e%6<2,rings:(t,e)=>{let o=Math.hypot(t%12-6,e%12-6);return o>2.5&&o<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":te,"lines-2":Qt(14),"lines-3":Qt(8),"lines-4":Qt(5),"lines-5":Qt(
3)};function Ys(t){let e=o=>Number.parseInt(t.slice(o,o+2),16);return[e(1),e(3),e(5)]}var es=([t,e,o],r)=>(r<<24|o<<16|e<<
8|t)>>>0;function os(t,[e,o],r,n,a){let d=o*4,i=new Uint32Array(d*e*4),l=new Map(r.map(([f,,h,v])=>{let m=h?es(Ys(h),200):
0;return[f,{ground:m,hatch:zs[v]??te}]})),u={ground:0,hatch:te},g=es(n,190);for(let f=0;f<e;f+=1){let h=(e-1-f)*4;for(let v=0;v<
o;v+=1){let m=t[f*o+v];if(!m)continue;let{ground:x,hatch:y}=l.get(m&15)??u,O=a&&(m&16)!==0,D=a&&(m&32)!==0;for(let L=h;L<
h+4;L+=1)for(let N=v*4;N<(v+1)*4;N+=1){let $=y(N,L)||O&&ss(N,L)||D&&ns(N,L);i[L*d+N]=$?g:x}}}return i}var Vs=600;function as(t,e,o,r,n,a){let[d,i]=o;t.width=i*4,t.height=d*4;let l=new Uint8ClampedArray(os(e,o,r,n,a).buffer),
u=new ImageData(l,t.width,t.height);t.getContext("2d")?.putImageData(u,0,0)}function Zs(t,e){let o=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return as(o,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},o,t[1])}
function is({model:t,el:e}){let o=t.get("face"),r=t.get("looks"),n=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),d=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),l=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),u=U({model:t,el:e},{kind:"rig",lost(){h.setDisabled(!0),_t(e)}}),g=null,f=T=>{g=J("turn"),u.send({...T,turn:g})},
h=Yt({face:o,label:`${o.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(T){h.
drawing.strokes(T),f({type:"lay",entries:T})},onRemove:T=>f({type:"remove",at:T}),onClear:()=>f({type:"clear"})}),v=_("C\
lose the face",()=>f({type:"shut",closed:!t.get("view").closed})),m=s("input",{type:"range",id:J("flat"),min:"20",max:"1\
60",step:"10",class:"ts-range"}),x=s("output",{for:m.id}),y=Nt({id:J("slide"),onchange:()=>f({type:"slide",by:y.value})},
t.get("view").slides),O=null;m.addEventListener("input",()=>{x.textContent=`${m.value} µm`;let T={type:"flat",um:Number(
m.value)};g===null?f(T):O=T});let{box:D,unit:L}=h.drawing;h.drawing.land.classList.add("tsp-clear"),h.drawing.frame.prepend(
l);let N=(...T)=>s("span",{class:"ts-pair"},...T);u.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),u.alert,n,h.drawing.frame,i,s("div",{class:"ts-tools"},v,N(s("label",{for:y.id},"the other face is"),y),N(a,_("1 m\
inute passes",()=>f({type:"time",by:1})),_("5 minutes pass",()=>f({type:"time",by:5}))),N(s("label",{for:m.id},"faces ou\
t of flat by"),m,x)),h.tools,d,s("details",{class:"ts-keys"},s("summary",{},"Passes laid"),h.empty,h.list));function $(){
let T=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return T?T.slice(0,3).map(Number):[0,0,0]}let p="",c="";function b(){
let T=t.get("view"),B=r[T.closed?"closed":"film"],P=t.get("grid"),K=P instanceof DataView?new Uint8Array(P.buffer,P.byteOffset,
P.byteLength):new Uint8Array(P);as(l,K,T.shape,B,$(),!T.closed);let[Z,dt]=T.shape,[Ot,Tt]=[T.corner[0]-T.pitch/2,T.corner[1]-
T.pitch/2],j=(z,tt)=>`${(100*z/tt).toFixed(3)}%`;l.style.left=j(Ot-D.left,D.width),l.style.width=j(dt*T.pitch,D.width),l.
style.top=j(D.high-Tt-Z*T.pitch,D.height),l.style.height=j(Z*T.pitch,D.height);let F=new Set(K.map(z=>T.closed?z:z&15)),
q=B.filter(([z])=>F.has(z)),nt=`${q.map(([,z])=>z)} ${$()}`;nt!==p&&(p=nt,i.replaceChildren(...q.map(z=>Zs(z,$()))))}let k=E(
"g");h.drawing.over.append(k);let w=([T,B])=>[T-D.left,D.high-B];function S([T,B]){let P=B.map(K=>{let[Z,dt]=w(K);return`\
M${Z.toFixed(1)} ${dt.toFixed(1)}h0.01`});return E("path",{d:P.join(""),class:"tsp-lump","stroke-width":2*T})}function C(T){
let[B,P]=w(T[T.length-1]),K=`M${B-1.3*L} ${P-L}h${2.6*L}l${-1.3*L} ${2.2*L}Z`;return[E("path",{d:h.drawing.path(T),class:"\
tsp-way","stroke-width":L}),E("path",{d:K,class:"tsp-out"})]}function R(){let T=t.get("view");if(g!==null&&T.turn!==g)return;
g=null;let B=JSON.stringify([T.entries,T.notes]);if(B!==c&&h.show(T.entries,T.notes),c=B,h.drawing.strokes([]),b(),k.replaceChildren(
...T.lumps.map(S),...T.leaks.flatMap(C)),h.drawing.svg.classList.toggle("tsp-shut",T.closed),h.drawing.svg.classList.toggle(
"tsp-clean",T.closed||T.clean),n.textContent=T.finding,y.value=T.slide,a.textContent=`minute ${T.minute}`,v.textContent=
T.closed?"Lift the face off again":"Close the face",O===null&&(m.value=String(T.flat),x.textContent=`${T.flat} µm`),d.replaceChildren(
...St(T.facts)),O===null)return;let P=O;O=null,f(P)}u.follow("change:view",R),u.follow("msg:custom",T=>{T.type==="troubl\
e"&&(g=null,h.drawing.strokes([]))});let W=new MutationObserver(()=>setTimeout(b,Vs));return W.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),R(),()=>{u.close(),W.disconnect()}}function ls(t){return $t(t,(e,o,r)=>{let n=Bt(),a=s("div",{class:"tsp-section"}),d="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},n.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),l=e.places.map(([g,f])=>[g,s("button",{type:"button",class:"ts-button",
onclick:()=>o({place:g})},f)]),u=[s("p",{class:"ts-hint"},e.rule),vt(s("span",{},"Set the gauge down at"),...l.map(([,g])=>g))];
return e.readingsOnly||(u.push(vt(lt("Lip looks towards",e.sides,r.lip,g=>o({lip:g})).row,lt("Lip is",e.greases,r.grease,
g=>o({grease:g})).row,e.sleeves.length?lt("It went",e.sleeves,r.sleeve,g=>o({sleeve:g})).row:"")),u.push(ct("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:g=>`${g.toFixed(2)} mm${g<0?", proud":""}`,onInput:g=>o({
depth:g})}).row,ct("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:g=>g?`${g.toFixed(2)} mm across`:"square",onInput:g=>o(
{lean:g})}).row)),{picture:i,controls:u,set(g,f){g.section!==d&&(d=g.section,a.innerHTML=d),a.querySelector(".tsl-moving")?.
setAttribute("transform",g.placed),n.set(g.dial,g.words);for(let[h,v]of l)v.setAttribute("aria-pressed",String(h===f.place))}}})}function cs({model:t,el:e}){let o=t.get("about"),r=t.get("shown").state,n=Bt(),a=o.readingsOnly?null:_e(o),d=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),l=Pt((p,c)=>O.send({type:"set",state:p,turn:c})),u=p=>{r={...r,...p},l.ask(r)},
g=(p,c)=>{let b=[...r.shims];b[p]=c,u({shims:b.filter(Boolean),turns:0})},f=(p,c,b)=>_(p,c,{"aria-pressed":b}),h=_("Turn\
 the shaft ten times",()=>u({turns:r.turns+10})),v=f("Pull the shaft away",()=>u({side:"away"}),"true"),m=f("Push it to \
the dial",()=>u({side:"towards"}),"false"),x=lt("Plunger",o.plungers,r.plunger,p=>u({plunger:p})),y=[s("div",{class:"ts-\
tools"},o.rolls?h:null,x.row,v,m)];if(!o.readingsOnly){let p=lt("Shim",o.shelf,r.shims[0],b=>g(0,b)),c=o.second?lt("and",
[["","no second shim"],...o.shelf],r.shims[1]??"",b=>g(1,b)):null;y.unshift(s("div",{class:"ts-tools"},p.row,c?.row)),y.
push(ct("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:b=>u({warmth:b}),words:b=>b?`case ${Math.round(o.caseRise*
b/100)} K warmer`:"cold, as at the bench"}).row)}let O=U({model:t,el:e},{kind:"rig"}),D=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});D.innerHTML=o.section;let L=[s("p",{class:"ts-who"},o.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),O.alert,s("div",{class:"\
tsg-beside"},D,s("div",{class:"tsg-gauge"},n.node,s("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...y,d,
a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];O.show(...L.filter(Boolean));function N(){let p=t.get("show\
n");l.waiting||(r=p.state),n.set(p.dial,p.dialWords),v.setAttribute("aria-pressed",String(p.state.side==="away")),m.setAttribute(
"aria-pressed",String(p.state.side==="towards")),d.textContent=p.finding,a&&(a.set(p.cold,p.warm,p.words.join(" ")),i.replaceChildren(
...p.words.map(c=>s("p",{},c)))),l.answered(p.turn)}let $=()=>l.free();return O.follow("change:shown",N),O.follow("msg:c\
ustom",$),N(),O.close}function ds({model:t,el:e}){let o=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),n=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),d=s("dl",{class:"ts-facts"}),i=null,l=null,u=(c,b)=>{l={...l,[c]:b},i===null&&g()};function g(){
i=J("choice"),N.send({type:"choose",chosen:l,turn:i}),l=null}let f=s("div",{class:"tsj-settings"}),h=(c,b,k)=>{let w=J("\
set");return b.id=w,f.append(s("label",{for:w},c),s("span",{class:"tsj-slide"},b,k)),b},v=(c,b,k)=>h(b,s("select",{class:"\
ts-box",onchange:w=>u(c,w.target.value)},...it(k.map(w=>typeof w=="string"?[w,w]:w)))),m=(c,b,k)=>h(b,s("input",{type:"r\
ange",oninput:w=>u(c,Number(w.target.value))}),k),x={group:v("group","Bolt of the unit",o.groups),thread:v("thread","Thr\
ead",o.threads),strength:v("strength","Strength class",o.classes),state:v("state","State of the thread",o.states),tool:v(
"tool","Tool",o.tools)},y=s("output",{class:"tsj-figure"}),O=m("torque_nm","Torque",y),D=s("output",{class:"tsj-figure"}),
L=m("engagement_mm","Thread that meets",D),N=U({model:t,el:e},{kind:"rig"});N.show(s("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),N.alert,r,n,s("div",{class:"tsj-bench"},f,a),d);let $=(c,b,k,w,S,C)=>{kt(c,{min:b,max:k,
step:w}),i===null&&(c.value=String(S)),c.setAttribute("aria-valuetext",C)};function p(){let c=t.get("view");if(i!==null&&
c.turn!==i)return;i=null,l!==null&&g();let{chosen:b}=c;r.textContent=c.finding,n.innerHTML=c.band,a.innerHTML=c.section,
d.replaceChildren(...St(c.facts));for(let[k,w]of Object.entries(x))w.value=b[k];$(O,1,c.topTorque,.5,b.torque_nm,c.torqueText),
y.textContent=c.torqueText,$(L,c.lowEngagement,c.topEngagement,.5,b.engagement_mm,c.engagementText),D.textContent=c.engagementText}
return N.follow("change:view",p),p(),N.close}function Ht(t,e){return(t.find(([o])=>o===e)??t[0])[2]}function ce(t,e){return t.find(([,,o])=>e!==void 0&&o.includes(e))?.[0]}
var le=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function us(t,{stages:e,stage:o,step:r,labels:n,isOpen:a}){let d=Ht(e,
o),i=d.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let u=e.map(([h])=>h),g=t==="ArrowLeft"?-1:1,f=Ht(e,u[(u.
indexOf(o)+g+u.length)%u.length]);return f.find(a)??f[0]}if(t==="ArrowDown")return d[Math.min(i+1,d.length-1)];if(t==="A\
rrowUp")return d[Math.max(i-1,0)];if(t==="Home")return d[0];if(t==="End")return d.at(-1);if(t.length!==1||t===" ")return;
let l=t.toLowerCase();return le(d,i).find(u=>n[u].toLowerCase().startsWith(l))}function ps({stages:t,stage:e,step:o,isOpen:r}){
let n=Ht(t,e),a=t.flatMap(([,,i])=>i),d=a.indexOf(String(n.at(-1)));return le(n,n.indexOf(String(o))).find(r)??le(a,d).find(
r)}function hs({model:t,el:e}){let o=t.get("plan"),r=s("p",{class:"ts-finding"}),n=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>Ot()},
...it(o.stages.map(([M,H])=>[M,H]))),d=Q(o.marked?"Next open step":"Next ready step",()=>T("next"));d.classList.add("ts-\
next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this stag\
e",onkeydown:M=>P(M)}),l=s("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the st\
age, Enter takes a step in hand; Enter again does it."),u=s("div",{class:"ts-hand",role:"group","aria-label":"Step in ha\
nd",onkeydown:M=>{M.key!=="Enter"||!M.target.matches("input[type=radio], .ts-number-box")||(M.preventDefault(),t.get("ha\
nd").stands?Z():tt())}}),g=s("div",{class:"ts-scroll ts-fit"}),f=s("dl",{class:"ts-facts"}),h=s("ul",{class:"ts-sentence\
s"}),v=s("p",{class:"ts-prompt"},"Wrong so far"),m=s("select",{class:"ts-box ts-before","aria-label":"A step that stands"}),
x=Q("Take out again",()=>{m.value&&c({type:"out",step:m.value},"hand")}),y=Q("Put the tools down",()=>c({type:"over"},"t\
old"));y.classList.add("ts-over");let O=s("div",{}),D=s("p",{class:"ts-status"}),L=s("details",{ontoggle:()=>{L.open!==!!t.
get("view").record&&c({type:"record",open:L.open})}},s("summary",{},"Build record"),O),N=U({model:t,el:e},{kind:"rig"});
N.show(s("p",{class:"ts-who"},o.who),N.alert,r,D,n,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"\
ts-tools"},a,d),i,l),u),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},m,x),y),g,f,v,h,L);let $=0,p=null;function c(M,H=null){
$+=1,p=H&&{turn:$,focus:H},e.setAttribute("aria-busy","true"),N.send({...M,turn:$})}let b="",k=null,w="next",S=M=>!t.get(
"view").done.includes(M),C=()=>at(i,"[data-step]"),R=M=>C().find(H=>H.dataset.step===M)?.focus(),W=()=>({stages:o.stages,
stage:a.value,step:k,isOpen:S});function T(M,H){w=M,c(M==="list"?{type:"take",step:H}:{type:"next"},"hand")}function B(M){
a.value=ce(o.stages,M)??a.value,k=M,Ot(),R(M)}function P(M){if(wt(M))return;let H=us(M.key,{...W(),labels:o.labels});H&&
(M.preventDefault(),B(H))}function K(){let M=ps(W());M?w==="next"?d.focus():B(M):y.focus()}function Z(){let M=t.get("vie\
w").done.length>=Object.keys(o.labels).length;w==="next"&&!M?T("next"):K()}function dt(M){let{done:H,ready:et}=t.get("vi\
ew");return H.includes(M)?{sign:"✓",word:"done"}:et.includes(M)?{sign:"▸",word:"ready"}:{sign:"○",word:o.marked?"o\
pen":"waits"}}function Ot(){let M=Ht(o.stages,a.value);(k===null||!M.includes(k))&&(k=M.find(S)??M[0]);let H=t.get("hand").
step,et=JSON.stringify([a.value,M.map(dt),H]);if(et===b){for(let ut of C())ut.tabIndex=ut.dataset.step===k?0:-1;return}b=
et;let rt=C().find(ut=>ut===document.activeElement)?.dataset.step;i.replaceChildren(...M.map(ut=>Tt(ut,H))),rt&&R(rt)}function Tt(M,H){
let{sign:et,word:rt}=dt(M);return s("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${rt}`,"data-step":M,
tabindex:M===k?"0":"-1","aria-current":M===H?"step":!1,"aria-label":`${o.labels[M]}: ${rt}`,onclick:()=>{k=M,T("list",M)}},
At(et),o.labels[M])}let j="",F=new Map;function q(M){let H=Ft(M),et=s("p",{class:"ts-read",id:H.read,role:"status"}),rt=0,
ut=I=>{c({type:"set",name:M.name,value:I}),rt=$},pt=Rt(M).make(M,H,ut,()=>{}),A=Wt(M,H,null);return A.append(pt.element,
et),A.dataset.field=M.name,{element:A,flush:()=>pt.flush?.(),show(I={},G){if(G<rt)return;pt.show(I);let ot=I.read?`read \
as ${I.read}`:"";et.textContent=I.error?`▲ Look again: ${I.error}`:ot}}}let nt=M=>s("dl",{class:"ts-facts"},...St(M));
function z(){let M=t.get("hand"),H=JSON.stringify(M);if(H===j)return;if(j=H,u.dataset.stands=String(!!M.stands),F=new Map(
(M.fields??[]).map(pt=>[pt.name,q(pt)])),!M.step){u.replaceChildren(s("p",{class:"ts-hint"},"No step in hand. Choose one\
 from the list, or press the button above it."));return}let et=Q(`Do it: ${M.label}`,tt);et.classList.add("ts-do");let rt=M.
stands?[Q("Go on",Z),Q("Take it out again",()=>c({type:"out",step:M.step},"hand"))]:[et];u.replaceChildren(s("p",{class:"\
ts-prompt ts-hand-name",tabindex:"-1"},M.label),...M.plain.map(pt=>s("p",{class:"ts-hint"},pt)),...M.cautions.map(pt=>s(
"p",{class:"ts-caution"},s("b",{},"Take care: "),pt)),...M.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),nt(
M.read)]:[],...M.card.length?[nt(M.card)]:[],...[...F.values()].map(pt=>pt.element),s("div",{class:"ts-tools"},...rt));let ut=ce(
o.stages,M.step);ut&&([a.value,k]=[ut,M.step])}function tt(){for(let M of F.values())M.flush();c({type:"do"},"after")}function gt(){
let M=t.get("view").asked_back,H=at(u,"[data-field]").find(ut=>ut.dataset.field===M),et=H&&at(H,"input:not(:disabled), s\
elect, button"),rt=at(u,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");
return et?.[0]??rt[0]}function bt(){let M=t.get("view"),H=M.told;r.textContent=M.finding,D.textContent=M.status,D.hidden=
!M.status,n.textContent!==H.join("")&&n.replaceChildren(...H.map(rt=>s("p",{},rt))),z(),Ot();for(let[rt,ut]of F)ut.show(
M.states[rt],M.turn);if(g.dataset.shown!==M.figure&&(g.innerHTML=M.figure,g.dataset.shown=M.figure),f.replaceChildren(...St(
M.facts)),h.replaceChildren(...It(M.faults.map(([,rt])=>rt))),v.hidden=h.hidden=!M.faults.length,Lt(M.done),O.innerHTML=
M.record,L.open=!!M.record,e.setAttribute("aria-busy",String(M.turn<$)),!p||M.turn<p.turn)return;let{focus:et}=p;p=null,
et==="told"?n.focus():et==="after"&&!t.get("hand").step?K():(gt()??d).focus()}function Lt(M){if(m.disabled=x.disabled=!M.
length,m.dataset.done===M.join(" "))return;m.dataset.done=M.join(" ");let H=[...M].reverse();m.replaceChildren(...it(H.map(
et=>[et,o.labels[et]])))}return N.follow("change:view",bt),bt(),N.close}function Js(t){let e=E("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),o=440/t.length,[r,n]=[210,128],a=X(r,
n,r,n,"tsi-adapter"),d=E("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=X(r,n+74,r,n+74,"tsi-arm"),l=V(r,n+94,"");return e.
append(X(r,n,r+440,n,"tsi-lever"),a,d,E("circle",{cx:r,cy:n,r:7,class:"tsg-hub"}),V(r+440,n-20,"hand, middle of the grip",
"end"),V(r+20,n-20,"square drive","start"),X(r+440,n+10,r+440,n+84,"tsg-centre"),i,l,V(8,242,"lengths to scale","start")),
{node:e,set(u){let g=u.state.angle/180*Math.PI,f=r-u.state.reach*o*Math.cos(g),h=n-u.state.reach*o*Math.sin(g);kt(a,{x2:f,
y2:h}),kt(d,{cx:f,cy:h}),kt(i,{x1:f,x2:r+440}),kt(l,{x:(f+r+440)/2}),l.textContent="the lever from bolt to hand, along t\
he wrench",e.setAttribute("aria-label",`${t.name}. ${u.words}`)}}}function fs(t){return $t(t,(e,o,r)=>{let n=Js(e),a=(i,l,u,g,f,h)=>ct(
i,{min:u,max:g,step:f,value:r[l],words:v=>`${v} ${h}`,onInput:v=>o({[l]:v})}),d={setting:a("Setting","setting",e.low,e.high,
e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("Angle of the adapter","angl\
e",0,180,5,"° off straight")};return{picture:n.node,controls:Object.values(d).map(i=>i.row),set(i,l){n.set(i);for(let[u,
g]of Object.entries(d))g.set(l[u])}}})}function gs(t,e=new Date){let o=new Date(t);if(Number.isNaN(o.getTime()))return"";let r=d=>String(d).padStart(2,"0"),n=`${r(
o.getHours())}:${r(o.getMinutes())}`,a=`${o.getFullYear()}-${r(o.getMonth()+1)}-${r(o.getDate())}`;return e.toDateString()===
o.toDateString()?n:`${a} ${n}`}function ms(t,e,o){let r=()=>t.get("bench")??{},n=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let d=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),l=_("Use these figures",()=>h("yes")),u=_(
"Go back to the drawn figures",()=>h("no")),g=!1,f=a.map(m=>{let x=J("bench"),y=m.options.length?s("select",{class:"ts-b\
ox",id:x,"aria-describedby":`${x}-read`},s("option",{value:""},"choose"),...it(m.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:x,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${x}-hint ${x}-read`}),
O=s("span",{class:"ts-hint",id:`${x}-hint`},m.hint),D=s("p",{class:"ts-read",id:`${x}-read`}),L=m.text,N=()=>{y.value.trim()!==
L.trim()&&(L=y.value,e({type:"bench",name:m.name,value:y.value}))};return y.addEventListener(m.options.length?"change":"\
blur",N),y.addEventListener("keydown",$=>{$.key==="Enter"&&($.preventDefault(),N())}),{name:m.name,flush:N,input:y,element:s(
"div",{class:"ts-bench-row"},s("label",{for:x},m.prompt),s("div",{class:"ts-line-of"},y,O),D),show($){if(!$)return;(document.
activeElement!==y||y.value===L)&&(y.value=$.text,L=$.text),y.setAttribute("aria-invalid",String(!!$.error)),D.classList.
toggle("ts-error",!!$.error);let p=$.error?[At("▲")," "]:[],c=$.read&&!$.options.length&&`read as ${$.read}`,b=$.error||
[c,$.origin].filter(Boolean).join(", ");D.replaceChildren(...p,b)}}}),h=m=>{for(let x of f)x.flush();g=!0,e({type:"bench",
name:"in-use",value:m})};n.append(s("summary",{},d),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),s("div",{class:"ts-bench-rows"},...f.map(m=>m.element)),i,s("div",{class:"ts-tools"},l,u));function v(){
let m=r(),x=new Map(m.rows?.map(L=>[L.name,L]));for(let L of f)L.show(x.get(L.name));d.textContent=m.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",u.hidden=!m.wanted,l.hidden=m.used&&!m.stale;let y=m.wanted&&
!m.used?"▲ ":m.used?"● ":"○ ",O=m.used?"in use":m.wanted?`not used; the drawn figures stand. ${m.refused}`:"not us\
ed; the drawn figures stand",D=m.stale?` The tables and choices of this task are still the ones from before. ${m.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${y}${O}${D}`,m.wanted&&
!m.used&&(n.open=!0)}return{element:n,show:v,hear(m){m.type!=="bench-saved"||m.name!=="in-use"||!g||(g=!1,r().stale&&o())},
lost(){for(let m of[l,u,...f.map(x=>x.input)])m.disabled=!0}}}var Qs=5e3,tn=2e3,en={saved:"●",bad:"▲",wait:"◌",none:"○"};function sn(t,e){let o=Rt(t),r=Ft(t),n=s("p",{class:"\
ts-read",id:r.read}),a=s("p",{class:"ts-status",id:r.status,role:"status"}),d=0,i=null,l={},u=()=>{clearTimeout(i??void 0),
i=null},g=y=>{d+=1,v("wait","saving"),u(),i=window.setTimeout(()=>v("wait","not saved yet: the notebook is busy; your an\
swer is sent and waits its turn"),Qs),e({type:"save",name:t.name,value:y,turn:d})},f=o.make(t,r,g,y=>{y?v("wait","not sa\
ved yet: press Enter or leave the box"):i===null&&m(l)}),h=Wt(t,r,r.status);o.status==="above"?h.append(a,f.element,n):h.
append(f.element,n,a);function v(y,O){a.className=`ts-status ts-status-${y}`,a.dataset.text!==O&&(a.dataset.text=O,a.replaceChildren(
At(en[y]),` ${O}`))}function m(y,O=!1){l=y??{},f.show(l),n.replaceChildren(),n.className="ts-read",l.error?(n.classList.
add("ts-error"),n.append(At("▲"),s("b",{},"Look again: "),l.error)):l.read&&n.append(`read as ${l.read}`),!O&&(l.saved&&
!l.blank?v("saved",`saved ${gs(l.saved)}${l.note?`; ${l.note}`:""}`):v("none",o.blank??"not answered yet"))}let x=()=>a.
classList.contains("ts-status-bad");return{name:t.name,element:h,show(y){i===null&&m(y,x())},saved(y){y.turn===d&&(u(),m(
y.state))},refused(y){y.turn===d&&(u(),f.refused(),v("bad",`not saved: ${y.reason}`))},lost(){clearTimeout(i??void 0),(i!==
null||f.pending?.())&&v("bad","not saved: the notebook's engine has stopped"),f.setDisabled(!0)},flush:()=>f.flush?.(),summary:()=>({
answered:!!l.saved&&!l.blank,trouble:x(),waiting:i!==null})}}function ws({model:t,el:e}){let r=t.get("fields").map(m=>sn(
m,u)),n=new Map(r.map(m=>[m.name,m])),a=s("p",{class:"ts-who"}),d=s("p",{class:"ts-total"}),i=U({model:t,el:e},{kind:"fo\
rm",lost(){for(let m of r)m.lost();l.lost(),g()}}),l=ms(t,i.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",
{bubbles:!0}))});i.show(s("div",{class:"ts-top"},a,d),i.alert,l.element,...r.map(m=>m.element));function u(m){i.send(m),
g()}function g(){let m=r.map(N=>N.summary()),x=m.filter(N=>N.answered).length,y=m.filter(N=>N.trouble).length,O=m.some(N=>N.
waiting),D=y?`, ${y} not saved`:O?", saving":", all saved",L=!y&&!O&&!x;d.textContent=`${x} of ${r.length} answered${L?"":
D}`}function f(){a.textContent=t.get("header");let m=t.get("states");for(let x of r)x.show(m[x.name]);g()}let h=0,v=()=>{
if(document.visibilityState==="hidden")for(let m of r)m.flush();document.visibilityState!=="visible"||Date.now()-h<tn||(h=
Date.now(),t.send({type:"look"}))};return document.addEventListener("visibilitychange",v),e.addEventListener("focusin",m=>{
m.relatedTarget instanceof Node&&e.contains(m.relatedTarget)||v()}),i.follow("change:states change:header",f),i.follow("\
msg:custom",m=>{m.type==="saved"&&n.get(m.name)?.saved(m),m.type==="refused"&&n.get(m.name)?.refused(m),g()}),i.follow("\
msg:custom",l.hear),i.follow("change:bench",l.show),f(),l.show(),i.alert.textContent=t.get("notice"),()=>{i.close(),document.
removeEventListener("visibilitychange",v)}}var nn={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},on={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"};function bs(t,e){let o=document.
getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(o?.textContent??"").baseUrl||"/"}catch{}return`${r}${t}/${e.
split("/").map(encodeURIComponent).join("/")}`}var de=(t,e,o)=>s("a",{href:bs("lab/tree",t),target:"_blank","data-twosha\
ft-open":t,"data-key":o,class:"ts-link"},e);function vs({model:t,el:e}){let o="",r=U({model:t,el:e},{kind:"start",lost:()=>{}}),
n=s("div",{}),a=s("p",{class:"ts-said",role:"status"});r.show(r.alert,a,n);let d=(p,c={})=>{n.getAttribute("aria-busy")!==
"true"&&(c.quietly||(n.setAttribute("aria-busy","true"),a.textContent="One moment.",r.alert.textContent=""),t.send({type:p,
...c}))},i=(p,c,b,k)=>s("button",{type:"button",class:k?"ts-button ts-first":"ts-button","data-key":c,onclick:b},p);function l(){
let p=J("who"),c=J("word"),b=s("select",{id:p,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose\
 your name"),...t.get("people").map(([w,S])=>s("option",{value:w,selected:w===o},S)));b.addEventListener("change",()=>{o=
b.value});let k=s("input",{id:c,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"\
80","data-key":"word"});return s("form",{class:"ts-sign-in",onsubmit:w=>{w.preventDefault(),d("sign-in",{name:b.value,word:k.
value})}},s("h2",{},"Who is working?"),s("div",{class:"ts-pair"},s("label",{for:p},"Your name"),b),s("div",{class:"ts-pa\
ir"},s("label",{for:c},"Sign-in word from your slip"),k),s("button",{type:"submit",class:"ts-button ts-first","data-key":"\
sign-in"},"Sign in"),s("p",{class:"ts-hint"},"The word keeps your answers in your own folder on a shared laptop. It is n\
ot a password."))}function u(p,c){let b=w=>`${w}:${p.name}`,k=s("div",{class:"ts-doing"});for(let w of p.feedback.slice(
0,1))k.append(s("a",{href:bs("files",w),target:"_blank",class:"ts-link","data-key":b("feedback")},"Read feedback"));for(let w of p.
notebooks){let S=p.notebooks.length===1?"Open":`Open ${w.split("/").pop()}`;k.append(de(w,S,b(`open ${w}`)))}p.can_get&&
k.append(i(p.notebooks.length?"Get again":"Get",b("get"),()=>d("get",{name:p.name}),!p.notebooks.length)),p.can_hand_in&&
k.append(i(p.receipt?"Hand in again":"Hand in",b("hand in"),()=>d("hand-in",{name:p.name})));for(let w of k.children)w.setAttribute(
"aria-label",`${w.textContent}: ${p.title}`);return s("tr",{},s("th",{scope:"row"},p.title),s("td",{},p.due||"no date",p.
overdue?s("span",{class:"ts-small-line"},"date passed"):null),s("td",{},s("span",{class:"ts-shape","aria-hidden":"true"},
nn[p.state]||""),s("b",{},on[p.state]||p.state),s("span",{class:"ts-small-line"},p.detail),c?s("span",{class:"ts-small-l\
ine"},`Mark: ${c}`):null),s("td",{},k))}let g=new Set,f={met:"✓","enough here":"◐","not yet":"○"};function h(p,c){
let b=p.entries.map(C=>c.find(R=>R.name===C)).filter(C=>C!==void 0),k=p.lesson?de(p.lesson,`Lesson ${p.title}`,`lesson:${p.
lesson}`):s("span",{class:"ts-small-line"},"no lesson here"),w=s("details",{open:g.has(p.module)},s("summary",{"data-key":`\
outcomes:${p.module}`},`Outcomes: ${p.count||"none"}`),s("ul",{},...p.outcomes.map(([C,R,W,T])=>s("li",{},s("span",{class:"\
ts-shape","aria-hidden":"true"},f[C]||""),s("b",{},`${C}${W&&C==="enough here"?`, ${W}`:""}: `),R,W&&C==="not yet"?`. St\
ill missing: ${W}`:"",T?` (${T})`:""))));w.addEventListener("toggle",()=>{w.open?g.add(p.module):g.delete(p.module)});let S=b.
map(C=>u(C,p.marks[C.name]));return s("tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},p.title,
s("span",{class:"ts-assigned"},b.length?"assigned":"not assigned"))),...S,s("tr",{},s("td",{colspan:4},k,s("p",{class:"t\
s-next"},s("b",{},"Next: "),p.next),w)))}function v(){let p=t.get("me"),c=t.get("entries"),b=s("table",{class:"ts-table"},
s("thead",{},s("tr",{},...["Assignment","Due","State","What you can do"].map(k=>s("th",{scope:"col"},k)))),...t.get("mod\
ules").map(k=>h(k,c)));return s("section",{},s("div",{class:"ts-me"},s("h2",{},`Working as ${p.name} (${p.id})`),i("Not \
you? Sign out","sign-out",()=>{d("sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))})),c.length?
null:s("p",{},"Nothing is assigned yet."),b,i("Look again","look",()=>d("look")))}function m(){let p=!!t.get("me").id,c=t.
get("modules").map(w=>w.lesson),k=t.get("lessons").filter(([w])=>!p||!c.includes(w));return k.length?s("section",{},s("h\
2",{},p?"To look things up":"Lessons"),s("ul",{class:"ts-lessons"},...k.map(([w,S])=>s("li",{},de(w,S,`lesson:${w}`))))):
null}let x=0,y=()=>at(n,"[data-key]"),O=()=>n.querySelector("input[data-key=word]");function D(){let c=y().find(W=>W===document.
activeElement)?.dataset.key;n.removeAttribute("aria-busy");let b=!!t.get("me").id;a.textContent=t.get("said"),r.alert.textContent=
t.get("trouble");let k=O()?.value;n.replaceChildren(...jt([b?v():l(),m()]));let w=O();if(w&&k&&(w.value=k),!c)return;let S=y().
find(W=>W.dataset.key===c),C=c.split(":")[1],R=y().find(W=>C&&W.dataset.key?.endsWith(`:${C}`));(S??R??at(n,"a, button, \
select")[0])?.focus()}let L=()=>{clearTimeout(x),x=setTimeout(D,0)};t.on("change",L),D();let N=()=>{!document.hidden&&t.
get("me").id&&d("look",{quietly:!0})},$=new IntersectionObserver(([p])=>{p.isIntersecting&&N()});return $.observe(e),document.
addEventListener("visibilitychange",N),()=>{clearTimeout(x),t.off("change",L),$.disconnect(),document.removeEventListener(
"visibilitychange",N),r.close()}}var rn={bench:Be,build:Re,cord:Ke,depth:Fe,face:We,fault_board:qe,form:ws,gate:Ge,gears:ze,hazards:Ye,lifting:Xe,micrometer:Ve,
own_checks:Ze,press:Je,rules:Qe,runout:ts,sealant:is,seat:ls,shims:cs,start:vs,thread:ds,whole_build:hs,wrench:fs};export{rn as screens};
