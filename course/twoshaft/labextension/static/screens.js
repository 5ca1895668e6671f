var En="http://www.w3.org/2000/svg";function s(t,e={},...n){let o=document.createElement(t);for(let[r,a]of Object.entries(
e))typeof a=="function"?o.addEventListener(r.slice(2),a):a===!0?o.setAttribute(r,""):a!==!1&&a!=null&&o.setAttribute(r,String(
a));return o.append(...It(n)),o}function D(t,e={},...n){let o=document.createElementNS(En,t);return Ot(o,e),o.append(...n),
o}function Ot(t,e){for(let[n,o]of Object.entries(e))o!=null&&t.setAttribute(n,String(o))}function X(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function yt(t,e){return s("select",{class:"ts-box",...t},...bt(
e))}function Et(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function At(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function It(t){return t.filter(e=>e!=null&&e!==!1)}var Ue=0;function ot(t){return Ue+=1,`two\
shaft-${t}-${Ue}-${Math.random().toString(36).slice(2,7)}`}function Ht(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function Z(t,e){return[...t.querySelectorAll(e)]}function wt(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function xt(t){return t.ctrlKey||t.metaKey||t.altKey}function Qt(t){let e=Z(t,"button, input, \
select");for(let n of e)n.disabled=!0}function qe(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function te(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function et(t,e,n=t){return X(t,e,{"aria-label":n})}
function bt(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function Bt(t){return t.map(e=>s("li",{},e))}var Tt=(t,e)=>s(
"div",{class:"ts-beside"},s("div",{},...It(t)),s("div",{},...It(e)));var Se=new Map;function vt(t,e){if(Se.has(t))throw new Error(`the answer kind ${t} is registered twice`);Se.set(t,e)}function Pt(t){
let e=Se.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Wt(t){let e=ot(
t.kind);return{control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function _t(t,e,n){let{prompt:o}=Pt(
t),r={class:"ts-prompt"};if(o==="legend")return s("fieldset",{class:"ts-field","aria-describedby":n},s("legend",r,t.prompt));
let a=o==="label"?s("label",{...r,for:e.control},t.prompt):s("p",r,t.prompt);return s("div",{class:"ts-field"},a)}function ee(t,e,n,o){let a=t.options.map(([c,i])=>{let u={"aria-describedby":e.status},l=s("input",{type:n,name:e.control,
value:c,...u});return{key:c,input:l,row:s("label",{class:"ts-option"},l,s("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{o(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:u,input:l}of a)l.checked=i.includes(u)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}vt("choice",{prompt:"legend",make:(t,e,n)=>ee(t,e,"radio",o=>n(o[0]))});vt("choices",{prompt:"legend",make:(t,e,n)=>ee(t,e,"checkbox",n)});function se(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function ne(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}vt("each",{prompt:"legend",make(t,e,n){let o=t.lines,r=t.options,a=o.map(([c,i],u)=>{let l=`${e.control}-${u}`,d=s("labe\
l",{class:"ts-each-line",for:l},i),p=yt({id:l,"aria-describedby":e.status},[["","choose"],...r]);return{key:c,box:p,row:s(
"li",{},d,p)}});for(let{box:c}of a)c.addEventListener("change",()=>{n(se(a.map(({key:i,box:u})=>[i,u.value])))});return{
element:s("ol",{class:"ts-each"},...a.map(({row:c})=>c)),show(c){let i=ne(c.value);for(let{key:u,box:l}of a)l.value=i.get(
u)??""},setDisabled(c){for(let{box:i}of a)i.disabled=c},refused(){}}}});function Le(t){let[e="",...n]=t.split(" "),o=e==="wipe"?0:Number(n.shift()),[r="",...a]=n;if(r!=="at")return{hand:e,size:o,
side:r,place:a[0],points:null};let c=a.map(i=>{let[u,l]=i.split(",").map(Number);return[u,l]});return{hand:e,size:o,side:r,
place:"",points:c}}function Ce(t,{side:e,place:n,points:o}){return o||(e==="round"?t.holes.find(r=>r.id===n)?.ring??[]:t.
stretches.find(r=>r.id===n)?.lines[e]??[])}function Ee(t,e){let{hand:n,size:o,side:r,place:a}=Le(e),c=[...t.stretches,...t.
holes].find(u=>u.id===a),i=n==="wipe"?"":` ${o} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[r]??""}`}
function Ae(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function ze(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function Ge(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function Ye(t,[e,n]){return t.stretches.map(({id:r,lines:a})=>({id:r,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-e,i-n)))})).reduce((r,a)=>a.away<r.away?a:r).id}var An=.4;function Xe(t,e){let n=An,o=oe(t,n);for(;o.
length>e;)n*=1.5,o=oe(t,n);return o.map(([r,a])=>[Math.round(r*10)/10,Math.round(a*10)/10])}function oe(t,e){if(t.length<
3)return t;let[n,o]=[t[0],t[t.length-1]],r=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=Mn(n,o,t[c]);i>r&&([r,a]=[i,c])}return r<=
e?[n,o]:[...oe(t.slice(0,a+1),e).slice(0,-1),...oe(t.slice(a),e)]}function Mn(t,e,n){let[o,r]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(o,r)||1;return Math.abs(o*(n[1]-t[1])-r*(n[0]-t[0]))/a}var re=14,On=3,Tn=.5,In=["middle","inside","outside"],ae="round ";function Nn(t,e){let n=t.outline.map(([_])=>_),o=t.outline.
map(([,_])=>_),[r,a]=[Math.min(...n)-re,Math.max(...n)+re],[c,i]=[Math.min(...o)-re,Math.max(...o)+re],u=a-r,l=i-c,d=([_,
V])=>`${(_-r).toFixed(1)} ${(i-V).toFixed(1)}`,p=(_,V)=>`M${_.map(d).join("L")}${V?"Z":""}`,f=ot("face"),g=u/100,h=2*g,L=(_,V)=>D(
"pattern",{id:`${f}-${_}`,width:h,height:h,patternUnits:"userSpaceOnUse"},D("path",{d:V,class:"tsp-hatch","stroke-width":g/
4})),v=D("defs",{},L("oil",`M0 ${h}L${h} 0`),L("dirt",`M0 ${h}L${h} 0M0 0L${h} ${h}`)),E=t.cavities.map(([,_])=>p(_,!0)).
join(""),R=t.islands.map(_=>p(_,!0)).join(""),w=p(t.outline,!0)+E,k=D("g"),I=D("g"),A=D("g"),m=D("g"),x=D("path",{class:"\
tsp-live",d:""}),$=D("path",{class:"tsp-chosen",d:""}),S=D("path",{class:"tsp-land",d:w,"fill-rule":"evenodd"}),M=D("pat\
h",{class:"tsp-edge",d:w+R,"stroke-width":g/2.5}),B=([_,V],y,W="middle")=>{let q={x:_-r,y:i-V,"font-size":2.5*g,"text-an\
chor":W};return D("text",{class:"tsp-text",...q},y)},z=[(r+a)/2,(c+i)/2],H=(_,V)=>{let y=te(_,z)||1;return[_[0]+V*(z[0]-
_[0])/y,_[1]+V*(z[1]-_[1])/y]};for(let{x:_,y:V,d:y,leads:W,name:q}of t.holes){let G={cx:_-r,cy:i-V,"stroke-width":g/4},nt=W===
"blind"?"tsp-hole tsp-blind":"tsp-hole";A.append(D("circle",{...G,r:y/2,class:nt})),W==="to the outside"&&A.append(D("ci\
rcle",{...G,r:y/3,class:"tsp-hole"}));let[F,dt]=H([_,V],-(y/2+4.4*g));A.append(B([F,dt-.8*g],q.replace("bolt ","")))}for(let _ of t.
guides){let[V,y]=[_.x-r,i-_.y],W=`M${V-g} ${y}h${h}M${V} ${y-g}v${h}`;A.append(D("path",{class:"tsp-guide",d:W,"stroke-w\
idth":g/2}));let q={"stroke-width":g/5,"stroke-dasharray":`${g} ${g}`};A.append(D("circle",{cx:V,cy:y,r:_.reach,class:"t\
sp-reach",...q}));let G=H([_.x,_.y],_.reach+h),nt=(G[0]-_.x)/(_.reach+h);A.append(B(G,_.name,nt>.5?"start":nt<-.5?"end":
"middle"))}for(let{word:_,points:V,width:y}of t.spots){let[W]=_.split(" "),[q,G]=[V[0],V[V.length-1]],nt=te(q,G)||1,[F,dt]=[
-(G[1]-q[1])/nt*y/2,(G[0]-q[0])/nt*y/2],O=[[q[0]+F,q[1]+dt],[G[0]+F,G[1]+dt],[G[0]-F,G[1]-dt],[q[0]-F,q[1]-dt]],Y=`url(#${f}\
-${W})`;k.append(D("path",{d:p(O,!0),fill:Y,class:"tsp-spot","stroke-width":g/4}));let rt=B(H([(q[0]+G[0])/2,(q[1]+G[1])/
2],9*g),W);rt.classList.add("tsp-spot-word"),A.append(rt)}let C=[100,50,20,10].find(_=>_<u/4)??10,N=`M${g} ${l-g}v${-g}v${g/
2}h${C}v${-g/2}v${g}`,b={x:C+h,y:l-g,"font-size":2.5*g};m.append(D("path",{class:"tsp-edge",d:N,"stroke-width":g/4}),D("\
text",{class:"tsp-text",...b},`${C} mm`));let P=`0 0 ${u.toFixed(1)} ${l.toFixed(1)}`,U=D("svg",{viewBox:P,class:"tsp-fa\
ce",role:"img","aria-label":e},v,S,k,I,M,A,$,x,m),K=`max-width: ${(25*u/l).toFixed(1)}rem`;return{frame:s("div",{class:"\
ts-pad-face",style:K},U),svg:U,over:m,live:x,chosen:$,land:S,path:p,unit:g,box:{left:r,right:a,low:c,high:i,width:u,height:l},
place({clientX:_,clientY:V}){let y=U.getBoundingClientRect(),W=Math.min(y.width/u,y.height/l);return[r+(_-y.left-(y.width-
W*u)/2)/W,i-(V-y.top-(y.height-W*l)/2)/W]},strokes(_){I.replaceChildren(..._.map(pt))}};function pt(_){let V=Le(_),y=Ce(
t,V),W=Ae(t,V.hand,Math.max(V.size,g/2)),q=y.length>1?p(y,V.side==="round"):y.length?`${p(y)}h0.01`:"",G=D("path",{d:q,class:`\
tsp-stroke tsp-${V.hand}`,"stroke-width":W});if(V.hand!=="film")return G;let nt=Math.min(8,Math.max(.6,40*V.size)),F={"s\
troke-width":g/3,"stroke-dasharray":`${nt} ${nt}`};return D("g",{},G,D("path",{d:q,class:"tsp-grain",...F}))}}function ie({
face:t,label:e,onLay:n,onRemove:o,onClear:r}){let a=Nn(t,e),c=s("p",{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"\
ts-read ts-pad-trouble",role:"status"}),u=(N,b)=>s("span",{class:"ts-pair"},s("label",{for:b.id},N),b),l=yt({id:ot("hand")},
Object.entries(t.hands)),d=s("input",{class:"ts-box ts-size",id:ot("size"),type:"text",inputmode:"decimal",autocomplete:"\
off",maxlength:"12"}),p=s("label",{for:d.id},"thickness"),f=yt({id:ot("place")},t.stretches.map(({id:N,name:b})=>[N,b]));
f.append(s("optgroup",{label:"Round a hole"},...t.holes.map(({id:N,name:b})=>s("option",{value:`${ae}${N}`},`round ${b}`))));
let g=yt({id:ot("side")},In.map(N=>[N,t.sides[N]])),h=X("Lay it here",()=>m([A(f.value)])),L=X("Lay it on every stretch",
()=>m(t.stretches.map(({id:N})=>A(N)))),v=X("Take back the last pass",()=>{w&&o(w-1,!0)}),E=X("Clear the face",r),R={film:"",
bead:""},w=0,k=!1;function I(){if(l.value==="wipe")return"";let[N,b]=t.sizes[l.value],P=ze(d.value);if(P>=N&&P<=b)return d.
removeAttribute("aria-invalid"),` ${Number(P.toFixed(3))}`;let U=l.value==="film"?"the thickness of the film":"the diame\
ter of the bead";return i.textContent=d.value.trim()?`Read “${d.value}”: give ${U} from ${N} to ${b} mm.`:`First giv\
e ${U} in mm.`,d.setAttribute("aria-invalid","true"),d.focus(),null}function A(N){let b=I();if(b===null)return null;let P=N.
startsWith(ae)?N:`${g.value} ${N}`;return`${l.value}${b} ${P}`}function m(N){let b=N.filter(P=>P!==null);if(!(k||b.length<
N.length)){if(w+b.length>t.most){i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent=
"",c.textContent=b.length===1?`Laid: ${Ee(t,b[0])}`:`Laid on ${b.length} stretches`,n(b)}}function x(){let N=l.value==="\
wipe";p.textContent=l.value==="bead"?"diameter":"thickness",d.disabled=k||N,d.value=N?"":R[l.value],d.placeholder=N?"":"\
mm",h.textContent=N?"Wipe here":"Lay it here",L.textContent=N?"Wipe every stretch":"Lay it on every stretch",i.textContent=
"",$()}function $(){let N=f.value.startsWith(ae);g.disabled=k||N;let b=Ce(t,N?{side:"round",place:f.value.slice(ae.length)}:
{side:g.value,place:f.value});a.chosen.setAttribute("d",b.length?a.path(b,N):""),a.chosen.setAttribute("stroke-width",String(
a.unit/2))}l.addEventListener("change",x),d.addEventListener("input",()=>{R[l.value]=d.value}),f.addEventListener("chang\
e",$),g.addEventListener("change",$),d.addEventListener("keydown",N=>{N.key==="Enter"&&(N.preventDefault(),h.click())});
let S=null;a.svg.addEventListener("pointerdown",N=>{if(k||N.button>0)return;S=[a.place(N)],a.svg.setPointerCapture(N.pointerId);
let b=Math.max(1,Number(R.bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(Ae(t,l.value,b)))}),a.svg.
addEventListener("pointermove",N=>{if(!S)return;let b=a.place(N);te(b,S[S.length-1])<Tn||(S.push(b),a.live.setAttribute(
"d",a.path(S)))});let M=N=>{if(!S)return;let b=S;if(S=null,a.live.setAttribute("d",""),N.type==="pointercancel")return;if(Ge(
b)<On){f.value=Ye(t,b[0]),$();return}let P=I();if(P===null)return;let U=Xe(b,t.points).map(K=>K.join(","));m([`${l.value}${P}\
 at ${U.join(" ")}`])};a.svg.addEventListener("pointerup",M),a.svg.addEventListener("pointercancel",M);let B=s("ol",{class:"\
ts-passes","aria-label":"Passes, in the order they were done"}),z=s("p",{class:"ts-hint"},"Nothing is laid yet."),H=s("d\
iv",{class:"ts-pad-tools"},s("div",{class:"ts-tools"},u("tool",l),s("span",{class:"ts-pair"},p,d)),s("div",{class:"ts-to\
ols"},u("where",f),u("runs",g)),s("div",{class:"ts-tools"},h,L,v,E),i,c),C=()=>Z(B,"button");return x(),{drawing:a,tools:H,
list:B,empty:z,frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,H,s("div",{class:"ts-pad-list"},z,B)),show(N,b=[]){
w=N.length,a.strokes(N),z.hidden=w>0;let P=C().findIndex(U=>U.matches(":focus"));B.replaceChildren(...N.map((U,K)=>s("li",
{},s("span",{},`${Ee(t,U)}${b[K]?`, ${b[K]}`:""} `),X("take out",()=>o(K,!1),{class:"ts-button ts-remove",disabled:k,"ar\
ia-label":`Take out pass ${K+1}`})))),P>=0&&(C()[Math.min(P,w-1)]??h).focus()},setDisabled(N){k=N;for(let b of[l,f,h,L,v,
E,...C()])b.disabled=N;d.disabled=N||l.value==="wipe",$()}}}vt("film",{prompt:"words",make(t,e,n){let o=[],r=c=>{o=c,a.show(o),n(o)},a=ie({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>r([...o,...c]),onRemove:c=>r(o.filter((i,u)=>u!==c)),onClear:()=>r([])});
return{element:a.element,show(c){o=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(o)},setDisabled:a.setDisabled,
refused(){}}}});function Ve(t,{send:e,typing:n,said:o=a=>String(a??""),wrong:r=a=>!!a.error}){let a=s("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||a.value.trim()!==c.trim(),u=()=>{i()&&(c=a.value,e(a.value))};return a.
addEventListener("blur",u),a.addEventListener("keydown",l=>{let d=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!==
"Enter"&&!d||(l.preventDefault(),u())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:u,pending:i,refused(){
c=null},show(l){a.setAttribute("aria-invalid",String(r(l))),!(document.activeElement===a&&a.value!==c)&&(c=o(l.value),a.
value=c)}}}function Je(t,e){let[n,o,r]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(r)?n:o).
trim()} ${e}`.trim()}function Ze(t,e,n){let o=yt({"aria-label":"Choose the unit"},[["","unit"],...e.map(r=>[r,r])]);return o.addEventListener(
"change",()=>{o.value&&(t.value=Je(t.value,o.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener("input",()=>{
o.value=""}),o}vt("number",{prompt:"label",make(t,e,n,o){let r=t.units,{box:a,flush:c,pending:i,refused:u,show:l}=Ve(e,{send:n,typing:o}),
d=s("span",{class:"ts-hint",id:e.hint},t.hint),p=r.length?Ze(a,r,c):null;return{element:s("div",{class:"ts-line-of"},a,p,
d),show:l,setDisabled(f){a.disabled=f,p&&(p.disabled=f)},refused:u,flush:c,pending:i}}});function ts(t,e){let o=[...new Set([t??[]].flat())].filter(r=>e.includes(String(r))).map(String);return[...o,...e.filter(
r=>!o.includes(r))]}var Kt=(t,e)=>t.join(`
`)===e.join(`
`),Qe=t=>`#${t.keys[0]}`,ce=class{constructor(e,n){this.labels=new Map(e.map(([o,r])=>[o,r])),this.stages=new Map;for(let[
o,,r]of e)r&&this.stages.set(o,r);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let n of this.order){let o=this.stages.get(n)??null,r=e.at(-1);r&&o!==null&&r.stage===o?r.keys.push(n):e.push({stage:o,
keys:[n]})}return e}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let e=[];for(let n of this.runs()){
let[o]=n.keys;if(n.keys.length<2){e.push({id:o,key:o,level:1});continue}if(e.push({id:Qe(n),run:n,level:1}),!this.closed.
has(String(n.stage)))for(let r of n.keys)e.push({id:r,key:r,level:2})}return e}row(e){return this.rows().find(n=>n.id===
e)}settle(){let e=this.rows();if(!e.some(n=>n.id===this.current)){let n=this.current.replace(/^#/,""),o=e.find(r=>r.run?.
keys.includes(n));this.current=(o??e.find(r=>r.id===n)??e[0]).id}return e}unit(){let e=this.row(this.current);return e?.
run?e.run.keys:this.block.has(this.current)&&this.block.size>1?this.order.filter(n=>this.block.has(n)):[this.current]}unitName(){
let e=this.row(this.current);if(e?.run)return`Stage ${e.run.stage}`;let n=this.unit();return n.length>1?`Block of ${n.length}\
 steps`:this.label(n[0])}where(){let e=this.unit(),n=this.order.indexOf(e[0])+1;return e.length>1?`positions ${n} to ${n+
e.length-1} of ${this.order.length}`:`position ${n} of ${this.order.length}`}rest(){let e=this.unit();return this.order.
filter(n=>!e.includes(n))}get isFirst(){return this.order.indexOf(this.unit()[0])===0}get isLast(){return this.order.indexOf(
String(this.unit().at(-1)))===this.order.length-1}insertedAt(e){let n=this.rest();return[...n.slice(0,e),...this.unit(),
...n.slice(e)]}shifted(e){let n=this.rest(),o=this.order.indexOf(this.unit()[0]),r=!!this.row(this.current)?.run,a=l=>n[e>
0?l:l-1],c=a(o);if(c===void 0)return this.insertedAt(o);let i=this.stages.get(c),u=i!==void 0&&(r||this.closed.has(i));do
o+=e;while(u&&a(o)!==void 0&&this.stages.get(a(o))===i);return this.insertedAt(o)}atPosition(e){return this.insertedAt(Math.
min(e-1,this.order.length-this.unit().length))}beside(e,n){return this.insertedAt(this.rest().indexOf(e)+(n==="after"?1:
0))}gathered(){let e=new Map;for(let n of this.order){let o=this.stages.get(n)??n;e.set(o,[...e.get(o)??[],n])}return[...e.
values()].flat()}dropAt(e,n){let o=e.run?e.run.keys:[e.key],r=e.run&&!this.closed.has(String(e.run.stage));return n&&!r?
{target:String(o.at(-1)),side:"after"}:{target:o[0],side:"before"}}take(e){if(Kt(e,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,n){let[o]=n.keys,r=this.rows().find(a=>a.run?.
keys.includes(o));this.current=r?r.id:o}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,n){let o=e.pop();return o?(n.push(this.order),this.order=
o,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||Kt(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,n){this.order=[...e],n&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let n=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((o,r)=>o-r);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(e,n){
let o=e.run?e.run.stage:this.stages.get(e.key),r=e.run?e.run.keys[0]:e.key,a=this.runs().find(c=>c.keys.includes(r));return!o||
!a||a.keys.length<2?null:(n?this.closed.add(o):this.closed.delete(o),n&&(this.current=Qe(a)),o)}sought(e){let n=this.rows(),
o=n.findIndex(c=>c.id===this.current),r=e.length>1?o:o+1,a=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...n.slice(r),...n.slice(0,r)].find(c=>a(c).startsWith(e))}};var Bn=12,Dn=700,Pn=5,es=32,Rn=8;function le({label:t,steps:e,order:n,onChange:o}){let r=new ce(e,n),{staged:a}=r,c=!1,i={},
u=!1,l=new Map,d=s("div",{"aria-live":"assertive",class:"ts-hidden"}),p=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),f=X("Up",()=>U(-1),{"aria-label":"Move the chosen step up"}),g=X("Down",
()=>U(1),{"aria-label":"Move the chosen step down"}),h=X("Undo",()=>r.undo()&&pt("Undone")),L=X("Redo",()=>r.redo()&&pt(
"Done again")),v=X("Choose several",()=>q(!c),{"aria-pressed":"false"}),E=X("Gather stages",()=>P(r.gathered(),"Steps of\
 one stage now stand together")),R=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:T=>{T.key==="Enter"&&K()}}),w=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),k=s("span",{class:"ts-chosen"}),I=X("Move",K,{"aria-label":"Move to this position"}),A=X(
"Move",st,{"aria-label":"Move before this step"}),m=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},f,g,h,L,v,a?E:null),x=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",R,I),s("span",{class:"\
ts-pair"},"or before ",w,A)),$="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),S=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},$),x),M=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),m,k,p,S,d);function B(T){d.
textContent=T}function z(T=""){B(`${r.unitName()}${T}, ${r.where()}`)}function H(T){let j=l.get(T.id);if(j)return j;let Q=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Q.dataset.row=T.id,l.set(T.id,Q),Q}function C(T=!1){let j=r.settle(),
Q=new Set(j.map(at=>at.id));for(let[at,St]of l)Q.has(at)||(St.remove(),l.delete(at));let lt=r.unit(),kt=new Set(lt),ut=p.
firstElementChild;for(let at of j){let St=H(at);St===ut?ut=ut.nextElementSibling:p.insertBefore(St,ut),N(St,at,kt)}R.value=
String(r.order.indexOf(lt[0])+1);let $t=[...r.order.entries()].filter(([,at])=>!kt.has(at));w.replaceChildren(...$t.map(
([at,St])=>s("option",{value:St},`${at+1}  ${r.label(St)}`))),k.textContent=`Chosen: ${r.unitName()}, ${r.where()}`,f.disabled=
u||r.isFirst,g.disabled=u||r.isLast,h.disabled=u||r.past.length===0,L.disabled=u||r.future.length===0;for(let at of[v,E,
R,w,I,A])at.disabled=u;if(p.setAttribute("aria-disabled",String(u)),p.classList.toggle("ts-long",r.order.length>Bn),T){let at=l.
get(r.current);at?.focus({preventScroll:!0}),at?.scrollIntoView({block:"nearest"})}}function N(T,j,Q){let lt=j.id===r.current,
kt=j.run?!1:r.block.has(j.key),ut=r.held!==null&&(j.run?lt:Q.has(j.key)),$t=r.order.indexOf(j.run?j.run.keys[0]:j.key),at=j.
run?j.run.keys.map(Mt=>i[Mt]?.length??0):i[j.key],St=j.run?r.closed.has(String(j.run.stage)):!1,je=JSON.stringify([$t,j.
level,lt,kt,ut,at,j.run&&[j.run.keys.length,St]]);if(T.dataset.looks===je)return;T.dataset.looks=je,T.tabIndex=lt?0:-1,T.
setAttribute("aria-selected",String(kt)),T.classList.toggle("ts-current",lt),T.classList.toggle("ts-inblock",kt),T.classList.
toggle("ts-held",ut),T.classList.toggle("ts-level2",j.level===2),a&&T.setAttribute("aria-level",String(j.level));let He=ut?
" picked up":kt?" in block":"",We=He?s("span",{class:"ts-state"},He):"",_e=Mt=>s("span",{class:"ts-number","aria-hidden":"\
true"},Mt);if(j.run){let{keys:Mt,stage:Ln}=j.run;T.setAttribute("aria-expanded",String(!St));let Fe=St?Mt.filter(Cn=>i[Cn]?.
length).length:0;T.replaceChildren(_e(`${$t+1}–${$t+Mt.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},St?"▸":
"▾"),s("span",{class:"ts-what"},s("b",{},Ln),` ${Mt.length} steps`,Fe?` – ${Fe} with a remark`:"",We));return}let Ke=(i[j.
key]??[]).map(Mt=>s("span",{class:`ts-note ts-note-${Mt.kind}`},At(Mt.shape??""),s("b",{},Mt.word),` ${Mt.text}`)),Sn=a&&
j.level===1;T.classList.toggle("ts-troubled",Ke.length>0),T.replaceChildren(_e(String($t+1)),s("span",{class:"ts-grip","\
aria-hidden":"true"},"⠿"),s("span",{class:"ts-what"},r.label(j.key),Sn?s("span",{class:"ts-stage"},` ${r.stages.get(j.
key)??""}`):"",We,...Ke))}let b=()=>o([...r.order]);function P(T,j){if(!r.take(T)){B(`${r.unitName()} stays at ${r.where()}`);
return}C(!0),j?B(j):z(),r.held===null&&b()}function U(T){u||P(r.shifted(T))}function K(){if(u)return;let T=Number.parseInt(
R.value,10),j=r.order.length;T>=1&&T<=j?P(r.atPosition(T)):(B(`Type a position from 1 to ${j}`),k.textContent=`Type a po\
sition from 1 to ${j}.`)}function st(){!u&&w.value&&P(r.beside(w.value,"before"))}function pt(T){C(),B(`${T}. ${r.unitName()}\
, ${r.where()}`),b()}function _(){r.pickUp(),C(!0),z(" picked up")}function V(){r.putDown()&&b(),C(!0),z(" put down")}function y(){
r.putDown()&&b(),C()}function W(){r.putBack(),C(!0),z(" put back")}function q(T){c=T,v.setAttribute("aria-pressed",String(
T)),T||(r.block=new Set),C(),B(T?"Choose the steps of a block":"Block let go")}function G(T){r.toggleBlock(T);let j=r.block.
has(T)?"in the block":"out of the block";B(`${r.label(T)} ${j}, ${r.block.size} in it`)}function nt(T,j){let Q=r.fold(T,
j);Q&&(C(!0),B(`${Q} ${j?"closed":"open"}`))}p.addEventListener("keydown",T=>{if(xt(T))return;let j=r.rows(),Q=j.findIndex(
St=>St.id===r.current),lt=St=>{r.current=j[Math.max(0,Math.min(j.length-1,St))].id,C(!0)},kt=j[Q],{key:ut}=T,$t=ut==="Ar\
rowUp"?-1:ut==="ArrowDown"?1:null,at=r.held!==null;if($t&&(T.shiftKey||at))U($t);else if($t)lt(Q+$t);else if(at&&ut==="E\
scape")W();else if(ut===" ")u||(at?V:_)();else if(at&&ut==="Enter")V();else if(ut==="Enter"&&!kt.run)u||(G(kt.key),C(!0));else if(ut===
"Home"&&!at)lt(0);else if(ut==="End"&&!at)lt(j.length-1);else if(a&&ut==="ArrowLeft")nt(kt,!0);else if(a&&ut==="ArrowRig\
ht")nt(kt,!1);else if(ut.length===1&&!at)O(ut);else return;T.preventDefault()});let F="",dt;function O(T){F+=T.toLowerCase(),
clearTimeout(dt),dt=window.setTimeout(()=>{F=""},Dn);let j=r.sought(F);j&&(r.current=j.id,C(!0))}p.addEventListener("foc\
usout",({relatedTarget:T})=>{r.held!==null&&T instanceof Node&&!p.contains(T)&&y()});let Y=null;p.addEventListener("poin\
terdown",T=>{let j=r.row(wt(T,".ts-step")?.dataset.row??"");if(!j||T.button!==0)return;if(j.run&&wt(T,".ts-fold")){nt(j,
!r.closed.has(String(j.run.stage))),T.preventDefault();return}let Q=wt(T,".ts-grip, .ts-number"),lt=T.ctrlKey||T.metaKey;
r.held!==null&&y(),!j.run&&!u&&(T.shiftKey?r.blockTo(j.key):(lt||c)&&!Q&&G(j.key)),r.current=j.id,C(!0),T.preventDefault(),
!(u||T.shiftKey||lt)&&(T.pointerType!=="mouse"&&!Q||(Y={x:T.clientX,y:T.clientY,id:T.pointerId,carried:null},p.setPointerCapture(
T.pointerId)))}),p.addEventListener("pointermove",T=>{if(!Y||T.pointerId!==Y.id)return;let{clientX:j,clientY:Q}=T;if(!Y.
carried){if(Math.hypot(j-Y.x,Q-Y.y)<Pn)return;Y.carried=rt()}Object.assign(Y.carried,{x:j,y:Q}),ft(Y.carried)});function rt(){
let T=s("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},r.unit().length>1?r.unitName():r.label(r.unit()[0]));document.
body.append(T);let j=s("div",{class:"ts-line","aria-hidden":"true"});p.append(j),p.classList.add("ts-dragging");for(let Q of r.
unit())l.get(Q)?.classList.add("ts-lifted");return{ghost:T,line:j,timer:requestAnimationFrame(mt),x:0,y:0,drop:null}}function ft(T){
T.ghost.style.transform=`translate(${T.x+12}px, ${T.y+8}px)`;let Q=r.rows().map($t=>{let at=H($t).getBoundingClientRect();
return{row:$t,box:at,offset:T.y-(at.top+at.height/2)}}).reduce(($t,at)=>Math.abs(at.offset)<Math.abs($t.offset)?at:$t),lt=Q.
offset>0;T.drop=r.dropAt(Q.row,lt);let ut=(lt?Q.box.bottom:Q.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;T.line.
style.top=`${ut}px`}function mt(){let T=Y?.carried;if(T){for(let j of[p,qe(p)]){let lt=j===document.scrollingElement?{top:0,
bottom:innerHeight}:j.getBoundingClientRect(),kt=T.y<lt.top+es?-1:T.y>lt.bottom-es?1:0;if(!kt)continue;let ut=j.scrollTop;
if(j.scrollTop+=kt*Rn,j.scrollTop!==ut){ft(T);break}}T.timer=requestAnimationFrame(mt)}}function tt(T){let j=Y?.carried;
if(Y=null,!j)return;cancelAnimationFrame(j.timer),j.ghost.remove(),j.line.remove(),p.classList.remove("ts-dragging");for(let lt of l.
values())lt.classList.remove("ts-lifted");let{drop:Q}=j;if(!T||!Q||r.unit().includes(Q.target)){C(!0),B(`${r.unitName()}\
 stays at ${r.where()}`);return}P(r.beside(Q.target,Q.side))}return p.addEventListener("pointerup",()=>tt(!0)),p.addEventListener(
"pointercancel",()=>tt(!1)),M.addEventListener("keydown",T=>{!Y?.carried||T.key!=="Escape"||(tt(!1),T.stopPropagation())}),
C(),{element:M,tools:m,order:()=>[...r.order],change:(T,j)=>{u||P(T,j)},setOrder(T,j=!1){r.held!==null||Y?.carried||Kt(T,
r.order)||(r.set(T,j),C())},setNotes(T){i=T??{},C()},setDisabled(T){u=T,C()}}}vt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let o=t.
steps.map(([a])=>a),r=le({label:t.prompt,steps:t.steps,order:o,onChange:n});return{element:r.element,show:a=>r.setOrder(
ts(a.value,o)),setDisabled:r.setDisabled,refused(){}}}});function ns(t,e,n){let o=[0,0],r=[n(...o)],a=new Map;for(let[c,i]of t.entries()){let[u,l]=e[i]??[null,null];u!==null&&o[1]!==
0&&r.push(n(o[0],0)),o=[u??o[0],l??(u===null?o[1]:0)];let d=n(...o);r.push(d);let p=a.get(d.join(" "))??{at:d,numbers:[]};
p.numbers.push(c+1),a.set(d.join(" "),p)}return{points:r,stops:[...a.values()]}}function os(t,e,n){let o=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,o),n,...t.slice(o)],place:o}}function rs(t,e){return t.filter((n,o)=>o!==e)}function as(t,e,n){
let o=e+n;if(o<0||o>=t.length)return null;let r=[...t];return[r[e],r[o]]=[r[o],r[e]],r}var ss=.6;function is(t,[e,n],[o,
r]){let a=Object.entries(t).filter(([u])=>!u.startsWith("firm:")),c=(u,l)=>a.filter(([,d])=>d[0]===u&&d[1]===l).map(([d])=>d).
slice(0,1),i=Math.abs(e-o)>ss;return[...i&&Math.abs(n)>ss?c(null,0):[],...i?c(o,null):[],...r||!i?c(null,r):[]]}var Gt=9,de=.7*Gt,Me=44;function ue(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[o,r]=t.turn_mm,a=(n-e)*Gt+2*Me,
c=(r-o)*de+2*Me,i=(f,g)=>[Me+(f-e)*Gt,c/2-(g-(o+r)/2)*de],u=t.gates.map(f=>`M${i(f,o).join(" ")}L${i(f,r).join(" ")}`),l=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,d=t.gears.map(([f,g,h])=>{let[L,v]=i(g,h),E={x:L,y:v+(h>0?-20:30),"data-gear":f};
return D("text",{...E,class:"tsp-gear","text-anchor":"middle"},f)});return{element:D("svg",{viewBox:`0 0 ${a} ${c}`,width:a,
height:c,class:"ts-gateplan","aria-hidden":"true"},D("path",{d:[...u,l].join(""),class:"tsp-slot"}),...d),at:i}}function jn(t){let{element:e,at:n}=ue(t),o=D("polyline",{class:"tsp-line",points:""}),r=D("g");return e.append(o,r),{element:e,
show(a){let{points:c,stops:i}=ns(a,t.aims,n),[[u,l]]=c;o.setAttribute("points",c.map(d=>d.join(",")).join(" ")),r.replaceChildren(
D("circle",{cx:u,cy:l,r:4,class:"tsp-start"}),...i.map(({at:[d,p],numbers:f})=>D("g",{},D("circle",{cx:d,cy:p,r:3.5,class:"\
tsp-stop"}),D("text",{x:d+7,y:p-5,class:"tsp-number"},f.join(", ")))))}}}function cs({label:t,moves:e,plan:n,most:o,onChange:r}){
let a=new Map(e),c=M=>a.get(M)??M,i=[],u=-1,l=!1,d=n?jn(n):null,p=s("ol",{class:"ts-pathlist","aria-label":t}),f=s("p",{
class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),g=s("p",{class:"ts-hidden",role:"stat\
us"}),h=e.map(([M,B])=>X(B,()=>k(M))),L=X("Take back the last move",()=>{i.length&&I(i.length-1)}),v=X("Take back all",()=>{
i.length&&w([],"No moves left")}),E=s("span",{class:"ts-hint"}),R=s("div",{class:"ts-path"},s("div",{class:"ts-tools ts-\
moves",role:"group","aria-label":"Add a move"},...h),s("div",{class:"ts-path-both"},s("div",{class:"ts-path-words"},f,p,
s("div",{class:"ts-tools"},L,v,E)),d&&s("div",{class:"ts-path-picture"},d.element)),d&&s("p",{class:"ts-hint"},"The line\
 shows where each move should go. The test shows whether the lever gets there."),g);function w(M,B){l||(i=M,S(),g.textContent=
B,r([...i]))}function k(M){if(i.length>=o){g.textContent=`${o} moves are the most here`;return}let{moves:B,place:z}=os(i,
u,M);u=z,w(B,`Move ${z+1}: ${c(M)}`)}function I(M){let B=c(i[M]);u=Math.min(u,i.length-2),w(rs(i,M),`Taken back: ${B}`)}
function A(M,B){let z=as(i,M,B);z&&(u=M+B,w(z,`${c(z[u])}, move ${u+1} of ${i.length}`),x(u))}function m(M){return p.children[M]?.
querySelector(".ts-path-move")}function x(M){let B=m(M);return B instanceof HTMLElement&&B.focus(),!!B}function $(M,B){let z=s(
"span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${B+1}: ${c(M)}`},c(M)),H=s("button",{type:"button",class:"\
ts-path-off","aria-label":`Take back move ${B+1}`,onclick:()=>I(B)},"×"),C=s("li",{},z,H);return C.classList.toggle("ts\
-current",B===u),z.addEventListener("focus",()=>{u=B;for(let N of p.children)N.classList.toggle("ts-current",N===C)}),z.
addEventListener("keydown",N=>{if(xt(N))return;let b=N.key==="ArrowUp"?-1:N.key==="ArrowDown"?1:null;if(b&&N.shiftKey)A(
B,b);else if(b)x(B+b);else if(N.key==="Delete"||N.key==="Backspace")I(B),x(Math.min(B,i.length-1))||h[0].focus();else return;
N.preventDefault()}),H.disabled=l,C}function S(){p.replaceChildren(...i.map($)),f.hidden=i.length>0,E.textContent=`${i.length}\
 of at most ${o} moves`;for(let M of h)M.disabled=l||i.length>=o;L.disabled=v.disabled=l||i.length===0,d?.show(i)}return S(),
{element:R,setMoves(M){Kt(M,i)||(i=[...M],u=-1,S())},setDisabled(M){l=M,S()}}}vt("path",{prompt:"words",make(t,e,n){let o=cs({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:o.element,show:r=>o.setMoves([r.value??[]].flat()),setDisabled:o.setDisabled,refused(){}}}});function ls(t,e,n){let o=t.indexOf(n);return[...t.slice(o+1),...t.slice(0,o)].find(a=>!e.get(a))??n}function ds(t,e,n){let o=t.
find(({key:u})=>u===e);if(!o)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let r={ArrowRight:1,
ArrowLeft:-1}[n];if(r!==void 0){let u=[...t].sort((d,p)=>d.x-p.x||d.y-p.y),l=u.findIndex(({key:d})=>d===e)+r;return u[(l+
u.length)%u.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=u=>Math.abs(u.y-o.y)+2*Math.abs(u.x-
o.x),[i]=t.filter(({key:u,y:l})=>u!==e&&(l-o.y)*a>2).sort((u,l)=>c(u)-c(l));return(i??o).key}function Ft(t,e,n,o){let r=t.lines,a=t.options,c=r.map(([p])=>p),i=c[0],u=r.map(([p,f],g)=>{let h=`${e.control}-${g}`,L=s(
"label",{class:"ts-each-line",for:h},f),v=yt({id:h,"aria-describedby":e.status},[["","choose"],...a]),E=s("input",{type:"\
radio",name:`${e.control}-active`,"aria-label":`Point in the picture for: ${f}`,checked:g===0}),R=s("li",{},c.length>1?E:
null,L,v);return E.addEventListener("change",()=>{i=p}),v.addEventListener("change",()=>{i=p,d()}),{key:p,box:v,mark:E,row:R}}),
l=()=>new Map(u.map(({key:p,box:f})=>[p,f.value]));function d(){let p=l();o(p),n(se([...p]))}return{element:s("ol",{class:"\
ts-each ts-pointed"},...u.map(({row:p})=>p)),active:()=>i,answers:l,press(p){let f=u.find(({key:g})=>g===i);if(!(!f||f.box.
disabled)){f.box.value=p,d(),i=ls(c,l(),i);for(let{key:g,mark:h}of u)h.checked=g===i}},put(p,f){let g=u.find(({key:h})=>h===
p);!g||g.box.disabled||(g.box.value=f,d())},show(p){let f=ne(p.value);for(let{key:g,box:h}of u)h.value=f.get(g)??"";o(l())},
setDisabled(p){for(let{box:f,mark:g}of u)f.disabled=p,g.disabled=p}}}function pe(t,e,n){let o=s("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});o.innerHTML=t;let r=o.querySelector(
"svg");r.setAttribute("role","group");let a=new Map(Z(r,"[data-mark]").map(l=>[String(l.dataset.mark),l])),c=new Map(e);
for(let[l,d]of a)d.setAttribute("role","button"),d.setAttribute("tabindex",l===e[0][0]?"0":"-1"),d.setAttribute("aria-la\
bel",`${l}: ${c.get(l)??""}`);let i=l=>wt(l,"[data-mark]")?.dataset.mark??wt(l,"[data-spot]")?.dataset.spot;o.addEventListener(
"click",l=>{let d=i(l);d&&n(d)});for(let[l,d]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])o.addEventListener(
l,p=>{let f=i(p);f&&u(f,d)});function u(l,d){for(let p of Z(r,`[data-spot="${l}"]`))p.classList.toggle("tss-near",d)}return o.
addEventListener("keydown",l=>{let d=wt(l,"[data-mark]")?.dataset.mark;if(d){if(l.key==="Enter"||l.key===" ")n(d);else{let p=[
...a].map(([g,h])=>{let L=h.querySelector(".tss-dot");return{key:g,x:L.cx.baseVal.value,y:L.cy.baseVal.value}}),f=ds(p,d,
l.key);if(f===void 0)return;a.get(d)?.setAttribute("tabindex","-1"),a.get(f)?.setAttribute("tabindex","0"),a.get(f)?.focus()}
l.preventDefault()}}),{element:o,drawing:r,choose(l){let d=new Set(l);for(let[p,f]of a)f.classList.toggle("tss-chosen",d.
has(p)),f.setAttribute("aria-pressed",String(d.has(p)));for(let p of Z(r,"[data-spot]"))p.classList.toggle("tss-on",d.has(
String(p.dataset.spot)))}}}vt("picture",{prompt:"legend",make(t,e,n){let o=t.options,r=Ft(t,e,n,i=>{let u=new Set(i.values());for(let{letter:l,card:d}of a)
d.classList.toggle("ts-on",u.has(l))}),a=o.map(([i,u])=>{let l=s("div",{class:"ts-picture-card",onclick:()=>r.press(i)});
return l.innerHTML=t.svgs[i],l.querySelector("svg")?.setAttribute("aria-label",u),l.prepend(s("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:l}}),c=s("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:s("div",{class:"\
ts-pictured"},r.element,c),show:r.show,setDisabled:r.setDisabled,refused(){}}}});vt("point",{prompt:"legend",make(t,e,n){let o=Ft(t,e,n,i=>c.choose(i.values())),a=t.options.map(([i,u])=>[i,u.slice(i.length+
2)]),c=pe(t.svg,a,o.press);return{element:s("div",{},o.element,c.element),show:o.show,setDisabled:o.setDisabled,refused(){}}}});vt("put",{prompt:"legend",make(t,e,n){let o=t.lines,r=new Map(o.map(([d])=>[d,"1"])),a=Ft(t,e,n,d=>{for(let[p,f]of d)f&&
r.set(p,f.split("-")[1]);c.choose([...d.values()].map(p=>p.split("-")[0])),u(d)}),c=pe(t.svg,t.places,d=>{a.press(`${d}-${r.
get(a.active())}`)}),i=D("g",{class:"tss-placed"});c.drawing.append(i);function u(d){i.replaceChildren();for(let[p,f]of d){
let[g,h]=f.split("-"),L=t.at[g];if(!L)continue;let v=D("g",{transform:`translate(${L[0]} ${L[1]})`});v.innerHTML=t.pieces[p][Number(
h)-1][1],i.append(v)}for(let{part:p,show:f}of l)f(r.get(p)??"1")}let l=o.map(([d,p])=>{let f=s("div",{class:"ts-tray-par\
t"}),g=s("span",{class:"ts-hint",role:"status"}),h=et("Turn it",()=>{let E=r.get(d)==="1"?"2":"1";r.set(d,E),L(E);let R=a.
answers().get(d);R&&a.put(d,`${R.split("-")[0]}-${E}`)},`Turn it: ${p}`);function L(E){let[R,w]=t.pieces[d][Number(E)-1],
k=Number(/data-half="([\d.]+)"/.exec(w)?.[1]??90);f.innerHTML=`<svg viewBox="${-k} ${-k} ${2*k} ${2*k}" width="120" heig\
ht="120" aria-hidden="true">${w}</svg>`,g.textContent=`Way ${E}: ${R}`}let v=s("div",{class:"ts-tray"},f,s("div",{},p,g,
h));return{part:d,row:v,show:L,turn:h}});return{element:s("div",{},s("div",{class:"ts-trays"},...l.map(({row:d})=>d)),a.
element,c.element),show:a.show,setDisabled(d){a.setDisabled(d);for(let{turn:p}of l)p.disabled=d},refused(){}}}});var Hn="The connection to the course is lost. Go on answering: your answers stay in this browser and are sent when the c\
onnection is back. Simulators wait until then.",Wn="The connection to the course is back.",_n=1500,Kn=5e3,Te=new Set,Dt=null,
Oe;function us(t){Dt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),Dt.isConnected||document.body.append(Dt),Dt.textContent=
t}function Fn(){Dt?.remove(),Dt=null}function ps(){clearTimeout(Oe),Te.size?Oe=window.setTimeout(()=>us(Hn),Dt?0:_n):Dt&&
(us(Wn),Oe=window.setTimeout(Fn,Kn))}var fs=t=>({down(){Te.add(t),ps()},up(){Te.delete(t),ps()}});var Un=1e3,qn="input, button, select, textarea, summary, a, [tabindex]";function zn(t){let e=r=>{if(r.stopPropagation(),
!(r.ctrlKey||r.metaKey)||r.key.toLowerCase()!=="s"||(r.preventDefault(),r.type!=="keydown"||r.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:u,metaKey:l}=r,d={key:a,code:c,keyCode:i,ctrlKey:u,metaKey:l,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",d))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let r of t.querySelectorAll(qn))r.hasAttribute("data-lm-suppress-shortcuts")||r.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let o=new MutationObserver(n);return o.observe(t,{childList:!0,subtree:!0}),()=>o.
disconnect()}function Gn(t,e,n){let o=t.widget_manager?.kernel,r=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(c,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),o?.statusChanged?.
connect(r),o?.connectionStatusChanged?.connect(a),o?.disposed?.connect(e),()=>{t.off("comm_live_update",e),o?.statusChanged?.
disconnect(r),o?.connectionStatusChanged?.disconnect(a),o?.disposed?.disconnect(e)}}var hs=`.twoshaft {
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
:var(--ts-grid)}.twoshaft-rig>.ts-who{display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid));align-items:baseline;fo\
nt-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-rig .ts-asks{color:var(--ts-ink);font-size:var(--ts-text);font-w\
eight:600}.twoshaft-rig .ts-begin{color:var(--ts-accent);font-weight:600}.twoshaft-rig:not(.ts-begun,.ts-lost) .ts-first\
{box-shadow:0 0 0 3px var(--ts-accent)}.twoshaft-rig:not(.ts-begun,.ts-lost) .ts-tools.ts-first{width:fit-content}.twosh\
aft-rig:not(.ts-begun,.ts-lost) button.ts-first{white-space:nowrap}.twoshaft-rig:not(.ts-begun,.ts-lost) button.ts-first\
:before{content:"\\25b6  " / ""}.twoshaft .ts-beside{display:flex;flex-wrap:wrap;gap:var(--ts-grid) calc(3 * var(--ts-gri\
d));align-items:flex-start}.twoshaft .ts-beside>*{box-sizing:border-box;max-width:100%;min-width:min(100%,280px)}.twosha\
ft .ts-beside>:first-child{flex:3 1 480px}.twoshaft .ts-beside>:last-child{flex:2 1 360px}.twoshaft .ts-beside:has(>:fir\
st-child>.tsh-picture)>:first-child{flex:4 1 720px}.twoshaft .ts-beside:has(>:first-child>.tsh-picture)>:last-child{flex\
:1 1 280px}.twoshaft .ts-beside:has(>:first-child>.ts-pad-face)>*{flex:1 1 480px}.twoshaft .ts-beside:has(>:first-child>\
.tsw-train)>:first-child{flex:4 1 640px}.twoshaft .ts-beside>div>.ts-scroll:first-child{margin-top:0}.twoshaft .ts-findi\
ng{font-weight:600;margin:var(--ts-grid) 0 0}.twoshaft .ts-happened{margin-top:var(--ts-grid);min-height:1.5em}.twoshaft\
-rig>.ts-prompt{font-weight:600;margin:calc(2 * var(--ts-grid)) 0 var(--ts-grid)}.twoshaft .ts-scroll{overflow-x:auto;ma\
rgin:var(--ts-grid) 0;padding-bottom:var(--ts-grid)}.twoshaft .ts-scroll svg{display:block}.twoshaft .ts-scroll.ts-fit s\
vg{max-width:100%;min-width:600px;height:auto}.twoshaft .ts-facts{display:grid;grid-template-columns:max-content 1fr;gap\
:4px calc(2 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-facts dt{floa\
t:none;clear:none;width:auto;font-weight:600;overflow-wrap:normal}.twoshaft .ts-facts dd{margin:0;width:auto}@media(max-\
width:480px){.twoshaft .ts-facts{grid-template-columns:1fr}}.twoshaft .ts-ready{display:flex;flex-wrap:wrap;gap:var(--ts\
-grid)}.twoshaft-rig .ts-ready{max-height:14rem;overflow-y:auto;padding:4px}.twoshaft .ts-ready .ts-button{text-align:le\
ft;padding-block:4px}.twoshaft .ts-button.ts-off{color:var(--ts-quiet);border-color:var(--ts-line);border-style:dotted;c\
ursor:default}.twoshaft .ts-sentences{padding-left:calc(3 * var(--ts-grid));max-width:var(--ts-width)}.twoshaft .ts-note\
-blocked .ts-shape,.twoshaft .ts-note-harmed .ts-shape{color:var(--ts-bad)}.twoshaft .tsf-near{margin:0}.twoshaft :has(~\
.tsf-near).ts-finding{max-width:none}.twoshaft .tsf-step{cursor:pointer}.twoshaft .tsf-step:focus{outline:none}.twoshaft\
 .tsf-step:is(:focus-visible,:hover) .tsf-b{stroke:var(--ts-accent);stroke-width:3}.twoshaft .tsg-text{font:calc(var(--t\
s-small) * var(--ts-grown, 1)) var(--ts-font);fill:var(--ts-ink)}.twoshaft .tsg-face{fill:var(--ts-paper);stroke:var(--t\
s-ink);stroke-width:2}.twoshaft .tsg-mark{stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsg-long{stroke-width:2}.twosha\
ft .tsg-pointer{fill:var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .tsg-hub{fill:var(--ts-ink)}.twoshaft .tsg-small\
{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsg-target{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:1;stro\
ke-dasharray:5 3}.twoshaft .tsg-cold{fill:var(--ts-accent);stroke:var(--ts-paper)}.twoshaft .tsg-warm{fill:var(--ts-pape\
r);stroke:var(--ts-bad);stroke-width:3}.twoshaft .tsg-dial{width:190px;height:190px;flex:none}.twoshaft .tsg-scale{width\
:100%;max-width:600px;min-width:540px;height:auto;display:block}.twoshaft .tsg-axis{width:100%;max-width:720px;min-width\
:540px;height:auto;display:block}.twoshaft .tsg-beside{display:flex;flex-wrap:wrap;align-items:center;gap:calc(2 * var(-\
-ts-grid))}.twoshaft .tsg-beside>*{min-width:0;max-width:100%}.twoshaft .tsg-gauge svg{max-width:100%;height:auto}.twosh\
aft .tsg-gauge{text-align:center;font-size:var(--ts-small)}.twoshaft .tsg-wide{overflow-x:auto;max-width:100%}.twoshaft \
.ts-slide{display:flex;flex-wrap:wrap;align-items:center;gap:0 var(--ts-grid);margin:calc(var(--ts-grid) / 2) 0}.twoshaf\
t .ts-slide>span{min-width:9em}.twoshaft .ts-slider{flex:0 1 260px;width:120px;min-width:96px;height:24px;accent-color:v\
ar(--ts-accent)}.twoshaft .ts-slid{flex:1 1 7em;font-variant-numeric:tabular-nums}.twoshaft .tsg-centre{stroke:var(--ts-\
ink);stroke-width:1;stroke-dasharray:14 3 3 3}.twoshaft .tsg-drum{max-width:100%;height:auto}.twoshaft .tsg-ticks{border\
:none;display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid))}.twoshaft .tsg-side{flex:1 1 420px;min-width:min(100%,3\
20px)}.twoshaft :is(.tsp-section+.tsg-gauge,.tsg-gauge:has(+.tsg-side)){flex:0 1 200px}.twoshaft .tsg-gauge+.tsg-side{fl\
ex-basis:260px;min-width:min(100%,260px)}.twoshaft .tsi-micrometer{width:760px;height:240px;display:block}.twoshaft .tsi\
-vernier{width:760px;height:190px;display:block}.twoshaft .tsi-runout{width:282px;height:244px;flex:none}.twoshaft .tsi-\
wrench{width:720px;max-width:100%;height:auto;display:block}.twoshaft .tsi-fine{stroke:var(--ts-ink);stroke-width:1.1}.t\
woshaft .tsi-bold{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-body{fill:var(--ts-faint);stroke:var(--ts-ink);stro\
ke-width:2}.twoshaft .tsi-paper{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsi-lever{stroke:var\
(--ts-ink);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-adapter{stroke:var(--ts-accent);stroke-width:10;stroke-li\
necap:round}.twoshaft .tsi-arm{stroke:var(--ts-accent);stroke-width:2;stroke-dasharray:7 4}.twoshaft .tsi-plunger{stroke\
:var(--ts-accent);stroke-width:5;stroke-linecap:round}.twoshaft .ts-order{position:relative;max-width:calc(var(--ts-widt\
h) + 8em)}.twoshaft .ts-steps{position:relative;list-style:none;border:1px solid var(--ts-line);margin-top:calc(var(--ts\
-grid) / 2);background:var(--ts-paper)}.twoshaft .ts-steps.ts-long{max-height:min(30rem,75vh);overflow-y:auto}.twoshaft \
.ts-step{display:flex;align-items:flex-start;gap:var(--ts-grid);padding:4px var(--ts-grid) 4px 0;margin:0;min-height:24p\
x;border-bottom:1px solid var(--ts-faint);border-left:4px solid transparent;cursor:default;user-select:none}.twoshaft .t\
s-step:last-child{border-bottom:0}.twoshaft .ts-step.ts-level2{padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-step:\
focus-visible{outline-offset:-3px}.twoshaft .ts-current{border-left-color:var(--ts-accent);background:var(--ts-faint)}.t\
woshaft .ts-inblock{border-left-style:double;border-left-color:var(--ts-ink)}.twoshaft .ts-held{background:var(--ts-acce\
nt);color:var(--ts-on-accent)}.twoshaft .ts-held .ts-number,.twoshaft .ts-held .ts-grip,.twoshaft .ts-held .ts-stage{col\
or:inherit}.twoshaft .ts-lifted{opacity:.45}.twoshaft .ts-dragging,.twoshaft .ts-dragging .ts-step{cursor:grabbing}.twos\
haft .ts-number{flex:none;min-width:2.5em;text-align:right;color:var(--ts-quiet);font-variant-numeric:tabular-nums;touch\
-action:none}.twoshaft .ts-grip,.twoshaft .ts-fold{flex:none;width:24px;text-align:center;color:var(--ts-quiet);cursor:g\
rab;touch-action:none}.twoshaft .ts-fold{cursor:pointer}.twoshaft .ts-what{flex:1;min-width:0}.twoshaft .ts-state{font-w\
eight:600;font-size:var(--ts-small)}.twoshaft .ts-note{display:block;font-size:var(--ts-small);max-width:var(--ts-width)\
}.twoshaft .ts-line{position:absolute;left:0;right:0;height:3px;background:var(--ts-accent);pointer-events:none}.twoshaf\
t.ts-ghost{position:fixed;left:0;top:0;z-index:10000;width:max-content;max-width:24em;padding:4px var(--ts-grid);pointer\
-events:none;background:var(--ts-paper);color:var(--ts-ink);border:2px solid var(--ts-accent)}.twoshaft .ts-order .ts-ke\
ys{margin-top:var(--ts-grid)}.twoshaft .ts-order .ts-keys summary{cursor:pointer;min-height:24px;color:var(--ts-accent);\
width:fit-content}.twoshaft .ts-beside:has(>div>.ts-order){flex-wrap:wrap-reverse;align-items:flex-end}.twoshaft-rig .ts\
-order .ts-steps{max-height:max(20rem,min(30rem,100vh - 340px));overflow-y:auto}.twoshaft .ts-path-both{display:flex;fle\
x-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--ts-grid)}.twoshaft .ts-path-words{flex:\
1 1 22em;min-width:0;max-width:34em}.twoshaft .ts-path-picture{flex:none;max-width:100%}.twoshaft .ts-pathlist{margin:0;\
padding-left:calc(4 * var(--ts-grid))}.twoshaft .ts-pathlist li{min-height:28px;padding-left:4px;border-left:4px solid t\
ransparent}.twoshaft .ts-pathlist li.ts-current{border-left-color:var(--ts-accent);background:var(--ts-faint)}.twoshaft \
.ts-path-off{min-width:28px;min-height:28px;margin-left:var(--ts-grid);border:1px solid var(--ts-line);border-radius:2px\
;background:var(--ts-paper);color:var(--ts-ink);font:inherit;line-height:1;cursor:pointer}.twoshaft .ts-gateplan{display\
:block;max-width:100%;height:auto}.twoshaft .tsp-slot{fill:none;stroke:var(--ts-line);stroke-width:14;stroke-linecap:rou\
nd;opacity:.35}.twoshaft .tsp-line{fill:none;stroke:var(--ts-accent);stroke-width:2.5;stroke-linejoin:round}.twoshaft .t\
sp-start{fill:var(--ts-paper);stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsp-stop{fill:var(--ts-accent)}.twoshaft\
 .tsp-gear{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink)}.twoshaft .tsp-number{font:600 var(--ts-small) var\
(--ts-font);fill:var(--ts-ink);paint-order:stroke;stroke:var(--ts-paper);stroke-width:4px}.twoshaft .ts-pad{max-width:62\
rem}.twoshaft .ts-pad-face{position:relative;width:100%;border:1px solid var(--ts-line);background:var(--ts-paper)}.twos\
haft .tsp-face{display:block;position:relative;width:100%;height:auto;touch-action:none;cursor:crosshair}.twoshaft .tsp-\
land{fill:var(--ts-faint);stroke:none}.twoshaft .tsp-edge{fill:none;stroke:var(--ts-ink);stroke-linejoin:round}.twoshaft\
 .tsp-text{fill:var(--ts-ink);font-family:var(--ts-font);paint-order:stroke;stroke:var(--ts-paper);stroke-width:.5px;poi\
nter-events:none;user-select:none}.twoshaft .tsp-hole{fill:var(--ts-paper);stroke:var(--ts-ink)}.twoshaft .tsp-blind{fil\
l:var(--ts-ink)}.twoshaft .tsp-guide,.twoshaft .tsp-reach,.twoshaft .tsp-hatch{fill:none;stroke:var(--ts-ink)}.twoshaft \
.tsp-spot{stroke:var(--ts-ink)}.twoshaft .tsp-stroke,.twoshaft .tsp-live,.twoshaft .tsp-grain{fill:none;stroke-linejoin:\
round;stroke-linecap:butt}.twoshaft .tsp-film{stroke:var(--ts-film);stroke-opacity:.6}.twoshaft .tsp-bead{stroke:var(--t\
s-bead);stroke-linecap:round}.twoshaft .tsp-wipe{stroke:var(--ts-paper);stroke-opacity:.85}.twoshaft .tsp-grain{stroke:v\
ar(--ts-ink)}.twoshaft .tsp-live{stroke:var(--ts-accent);stroke-opacity:.5;stroke-linecap:round}.twoshaft .tsp-chosen{fi\
ll:none;stroke:var(--ts-accent);stroke-dasharray:3 2;pointer-events:none}.twoshaft .ts-size{width:6em}.twoshaft .ts-size\
[aria-invalid=true]{border:2px dashed var(--ts-ink)}.twoshaft .ts-pad-trouble{min-height:1.5em;color:var(--ts-ink)}.twos\
haft .ts-passes{padding-left:2.5em;font-size:var(--ts-small);max-height:16rem;overflow-y:auto}.twoshaft .ts-passes li{pa\
dding:2px 0}.twoshaft .ts-remove{min-height:24px;padding:0 var(--ts-grid)}.twoshaft .ts-pad-tools .ts-box{max-width:100%\
;min-width:0}.twoshaft .ts-pad-tools .ts-pair{min-width:0}.twoshaft .ts-each{margin:0;padding-left:calc(3 * var(--ts-gri\
d))}.twoshaft .ts-each li{padding:calc(var(--ts-grid) / 2) 0}.twoshaft .ts-each li+li{border-top:1px solid var(--ts-line\
)}.twoshaft .ts-each-line{display:inline-block;width:min(100%,34em);margin-right:calc(2 * var(--ts-grid));vertical-align\
:middle}.twoshaft .ts-each select{max-width:100%;min-width:0;vertical-align:middle}.twoshaft .ts-pointed input[type=radi\
o]{margin-right:var(--ts-grid)}.twoshaft .ts-scene{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .ts-scene svg{displ\
ay:block;max-width:none;max-height:none}.twoshaft .ts-scene [data-mark],.twoshaft .ts-scene [data-spot]{cursor:pointer}.\
twoshaft .ts-scene [data-mark]:focus-visible{outline:none}.twoshaft .ts-scene [data-mark]:focus-visible .tss-ring{stroke\
:var(--ts-accent);stroke-width:4px}.twoshaft .ts-scene .tss-near path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(-\
-ts-accent);stroke-width:2.4px}.twoshaft .ts-scene .tss-chosen .tss-ring{fill:var(--ts-accent);stroke:var(--ts-accent)}.\
twoshaft .ts-scene .tss-chosen .tss-letter{fill:var(--ts-on-accent)}.twoshaft .ts-scene .tss-on path:not(.tsu-behind,.ts\
u-pitch,.tsu-line),.twoshaft .ts-scene .tss-placed path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);st\
roke-width:3px}.twoshaft .ts-scene .tss-placed{pointer-events:none}.twoshaft .ts-pictured{display:flex;flex-wrap:wrap;ga\
p:0 calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .ts-pictured>:first-child{flex:1 1 280px;min-width:min(100\
%,240px)}.twoshaft-wide .ts-pictured>:first-child{position:sticky;top:0}.twoshaft .ts-pictures{display:grid;flex:2 1 500\
px;min-width:0;grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1fr));gap:var(--ts-grid);margin:var(--ts-gri\
d) 0}.twoshaft .ts-picture-card{position:relative;padding:var(--ts-grid);border:1px solid var(--ts-line);cursor:pointer}\
.twoshaft .ts-picture-card.ts-on{outline:3px solid var(--ts-accent)}.twoshaft .ts-picture-card svg{width:100%;height:aut\
o;max-height:300px}.twoshaft .ts-picture-letter{font-weight:600}.twoshaft .ts-trays{display:flex;flex-wrap:wrap;gap:calc\
(2 * var(--ts-grid))}.twoshaft .ts-tray{display:flex;gap:var(--ts-grid);align-items:center}.twoshaft .ts-tray>div:last-c\
hild{display:grid;gap:calc(var(--ts-grid) / 2);max-width:22em}.twoshaft-form{padding-block:var(--ts-grid)}.twoshaft .ts-\
top{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 calc(3 * var(--ts-grid));border-bottom:1px solid var\
(--ts-line);padding-bottom:calc(var(--ts-grid) / 2)}.twoshaft .ts-who{font-size:var(--ts-small);color:var(--ts-quiet)}.t\
woshaft .ts-field{border:0;min-width:0;margin:calc(2 * var(--ts-grid)) 0 0}.twoshaft .ts-prompt{display:block;padding:0;\
font-weight:600;margin-bottom:var(--ts-grid)}.twoshaft .ts-line-of{display:flex;flex-wrap:wrap;align-items:center;gap:va\
r(--ts-grid)}.twoshaft .ts-line-of+.ts-read,.twoshaft .ts-line-of+.ts-read+.ts-status{display:inline}.twoshaft .ts-line-\
of+.ts-read:not(:empty){margin-right:calc(2 * var(--ts-grid))}.twoshaft .ts-read.ts-error,.twoshaft .ts-status-unread{co\
lor:var(--ts-ink);font-size:var(--ts-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-unread .ts-shape,.twoshaft\
 .ts-status-bad .ts-shape{color:var(--ts-bad)}.twoshaft .ts-status-saved .ts-shape{color:var(--ts-good)}.twoshaft .ts-st\
atus-bad{color:var(--ts-ink);font-weight:600}.twoshaft .ts-order+.ts-read{display:none}.twoshaft .ts-bench{margin-top:va\
r(--ts-grid)}.twoshaft .ts-bench summary{cursor:pointer;min-height:24px;font-size:var(--ts-small);color:var(--ts-quiet)}\
.twoshaft .ts-bench[open]{border:1px solid var(--ts-line);padding:var(--ts-grid)}.twoshaft .ts-bench-rows{display:grid;g\
rid-template-columns:repeat(auto-fill,minmax(min(100%,20em),1fr));gap:var(--ts-grid) calc(2 * var(--ts-grid));margin:var\
(--ts-grid) 0}.twoshaft .ts-bench-row{min-width:0}.twoshaft .ts-bench-row select{max-width:100%;min-width:0}.twoshaft .t\
s-bench-row label{display:block;max-width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-height:0}.twoshaft.ts-que\
stion{border-left:4px solid var(--ts-accent);padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-acts{display:flex;flex-\
wrap:wrap;gap:var(--ts-grid);margin-top:var(--ts-grid)}.twoshaft .ts-told:not(:empty){margin-top:var(--ts-grid)}.twoshaf\
t .ts-told-unread{border:2px solid var(--ts-ink);padding:var(--ts-grid)}.twoshaft .ts-teacher{border-style:dashed;font-s\
ize:var(--ts-small)}.twoshaft.ts-question .ts-title{font-weight:600}.twoshaft.ts-question:has(.ts-asked>:nth-child(2)){m\
ax-width:none}.twoshaft .ts-asked{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,340px),1fr));gap:0 \
calc(4 * var(--ts-grid));align-items:start}.twoshaft-start>div{max-width:1040px}.twoshaft-start h2{font-size:var(--ts-he\
ad);font-weight:600;margin:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-in{margin:calc(2 * var(--t\
s-grid)) 0 calc(3 * var(--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;gap:calc(1.5 * var(--ts-grid));justify-item\
s:start}.twoshaft-start .ts-pair{display:grid;gap:calc(var(--ts-grid) / 2)}.twoshaft-start .ts-pair label{font-weight:60\
0}.twoshaft-start .ts-pair .ts-box{width:22em;max-width:100%}.twoshaft-start .ts-first{background:var(--ts-accent);color\
:var(--ts-on-accent)}.twoshaft-start .ts-button{font-size:var(--ts-text)}.twoshaft-start .ts-said:not(:empty){border-lef\
t:3px solid var(--ts-accent);padding:var(--ts-grid);background:var(--ts-faint)}.twoshaft-start .ts-me{display:flex;flex-\
wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:var(--ts-grid)}.twoshaft-sta\
rt .ts-table{border-collapse:collapse;width:100%;margin:0 0 calc(2 * var(--ts-grid));font-size:var(--ts-text);table-layo\
ut:fixed}.twoshaft-start .ts-table :is(th,td){text-align:left;vertical-align:top;white-space:normal;padding:var(--ts-gri\
d);border:0;border-bottom:1px solid var(--ts-line);background:none;max-width:none}.twoshaft-start .ts-table thead th{fon\
t-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-table th:nth-child(1){width:26%}.twoshaft-start .ts-tab\
le th:nth-child(2){width:16%}.twoshaft-start .ts-table th:nth-child(4){width:24%}.twoshaft-start .ts-small-line{display:\
block;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-doing{display:flex;flex-wrap:wrap;align-items:\
center;gap:var(--ts-grid)}.twoshaft-start a.ts-link:is(:link,:visited,:hover,:focus,:active){color:var(--ts-accent);text\
-decoration:underline;display:inline-flex;align-items:center;min-height:var(--ts-target);cursor:pointer}.twoshaft-start \
.ts-lessons{padding-left:calc(2 * var(--ts-grid))}.twoshaft-start .ts-lessons .ts-link{min-height:24px}.twoshaft-start .\
ts-module th{padding-top:calc(3 * var(--ts-grid));font-size:var(--ts-text)}.twoshaft-start .ts-table .ts-module th{width\
:auto}.twoshaft-start .ts-assigned{margin-left:var(--ts-grid);font-weight:400;color:var(--ts-quiet)}.twoshaft-start .ts-\
next{margin:0}.twoshaft-start summary{min-height:var(--ts-target);align-content:center;cursor:pointer}@media(max-width:5\
60px){.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.twoshaft-start .ts-table :is(tr,th,td):nth\
-child(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-\
grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.twoshaft-start .ts-gaps{padding-left:calc(2 \
* var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{display:block}.twoshaft-start .ts-question{bor\
der:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk{max-width:1240px}.twoshaft-desk .ts-desk-t\
op{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid)}.twoshaft-desk .ts-de\
sk-pages{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin:var(--ts-grid) 0;padding-bottom:var(--ts-grid);border-bot\
tom:1px solid var(--ts-line)}.twoshaft-desk .ts-button[aria-current=page]{border-width:3px;font-weight:700}.twoshaft-des\
k :is(h2,h3){font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-desk h3,.twoshaft-desk .ts-butt\
on{font-size:var(--ts-text)}.twoshaft-desk .ts-first{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft-des\
k .ts-said:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border-left:3px solid var(--ts-accent);padding:var(--ts-grid);\
background:var(--ts-faint)}.twoshaft-desk :is(.ts-said,.ts-alert,.ts-told,.ts-trouble){white-space:pre-line;max-width:no\
ne}.twoshaft-desk .ts-desk-here{width:100%;scroll-margin-block:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-busy{display:\
flex;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-desk-body[aria-busy=true]{cursor:progress}.twoshaft-desk .\
ts-desk-body>*{margin-top:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-caption{display:flex;flex-wrap:wrap;align-ite\
ms:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:calc(var(--ts-grid) / 2)}.twoshaft-desk .ts-des\
k-scroll{max-height:360px;overflow:auto;border:1px solid var(--ts-line)}.twoshaft-desk .ts-table{border-collapse:collaps\
e;margin:0;min-width:100%;font-size:var(--ts-text)}.twoshaft-desk .ts-table :is(th,td){text-align:left;vertical-align:to\
p;white-space:normal;padding:calc(var(--ts-grid) / 2) var(--ts-grid);border:0;border-bottom:1px solid var(--ts-line);bac\
kground:none;max-width:28em;font-weight:400;overflow-wrap:break-word}.twoshaft-desk .ts-table tbody th{position:sticky;l\
eft:0;background:var(--ts-paper)}.twoshaft-desk .ts-table thead th{position:sticky;top:0;z-index:1;background:var(--ts-p\
aper);box-shadow:inset 0 -1px var(--ts-line);white-space:nowrap}.twoshaft-desk .ts-table .ts-figure{text-align:right;fon\
t-variant-numeric:tabular-nums}.twoshaft-desk .ts-table .ts-tick{width:24px}.twoshaft-desk input[type=checkbox]{width:18\
px;height:18px;accent-color:var(--ts-accent)}.twoshaft-desk :is(.ts-sort,.ts-cell){min-height:24px;min-width:24px;paddin\
g:0;border:0;background:none;color:var(--ts-accent);font:inherit;text-align:inherit;cursor:pointer}.twoshaft-desk .ts-so\
rt{font-weight:600}.twoshaft-desk .ts-cell{text-decoration:underline}.twoshaft-desk .ts-desk-form{display:grid;gap:var(-\
-ts-grid);justify-items:start;padding-top:var(--ts-grid);border-top:1px solid var(--ts-line)}.twoshaft-desk .ts-desk-for\
m>*{min-width:0;max-width:100%}.twoshaft-desk .ts-desk-fields{display:flex;flex-wrap:wrap;align-items:flex-start;gap:var\
(--ts-grid) calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-field{display:grid;grid-template-columns:minmax(0,auto);gap\
:calc(var(--ts-grid) / 2);max-width:100%}.twoshaft-desk .ts-desk-field>label:not(.ts-option){font-weight:600}.twoshaft-d\
esk .ts-desk-field .ts-box{width:18em;max-width:100%}.twoshaft-desk textarea.ts-box{width:30em;padding:var(--ts-grid)}.t\
woshaft-desk .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-question{bor\
der:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk a.ts-link:is(:link,:visited,:hover,:focus,\
:active){color:var(--ts-accent);text-decoration:underline}.twoshaft-desk :is(textarea,a,h2,.ts-desk-scroll):focus-visibl\
e{outline:3px solid var(--ts-accent);outline-offset:2px}@media(forced-colors:active){.twoshaft-desk .ts-button[aria-curr\
ent=page]{border-color:Highlight}.twoshaft-desk .ts-first{border-width:2px;font-weight:700}.twoshaft-desk .ts-said:not(:\
empty,.ts-hidden),.twoshaft-desk .ts-told{border:1px solid CanvasText}}.twoshaft .tsj-bench{display:flex;flex-wrap:wrap;\
gap:var(--ts-grid) calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .tsj-bench>*{flex:1 1 240px;min-width:0;max\
-width:max-content}.twoshaft .tsj-bench svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:pointer}\
.twoshaft .tsj-bolt:focus{outline:none}.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-width:4}.\
twoshaft .tsj-bolt.tsj-started circle{stroke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.twoshaft .\
tsj-bolt.tsj-tight text{fill:var(--ts-paper)}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(--ts-gr\
id)}.twoshaft .tsj-slide input{width:180px;max-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-target)}.two\
shaft .tsj-figure{min-width:8ch;font-variant-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-height:1.5\
em}.twoshaft .tsj-check{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft \
.tsj-check input{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-template\
-columns:max-content minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-width) + \
12ch);margin:var(--ts-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block;max-wi\
dth:100%;height:auto}.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:wrap}@m\
edia(max-width:700px){.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{border-coll\
apse:collapse;font:var(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align:left;f\
ont-weight:600;padding:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-align:mi\
ddle;padding:1px 12px 1px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twoshaft table.tsk-b\
oard thead th{font-weight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:54ch;white-space:normal}.twosh\
aft table.tsk-board .tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft table.ts\
k-board select{max-width:36ch}.twoshaft table.tsk-board :is(select,button){min-height:28px}.twoshaft table.tsk-board{fon\
t-size:var(--ts-small)}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:600;bor\
der-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{min-wid\
th:24ch}.twoshaft .tsk-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){.twoshaft table.tsk-boa\
rd,.twoshaft table.tsk-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.twoshaf\
t table.tsk-board thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft table.tsk-\
board tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twoshaft ta\
ble.tsk-board tbody td,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-width:0;pad\
ding:2px 0;text-align:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-board tbo\
dy .tsk-best td{border:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twoshaft ta\
ble.tsk-board tbody th{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) ": ";col\
or:var(--ts-quiet)}.twoshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-board select{max-width:\
100%}}.twoshaft .ts-gate{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 calc(2 * var(--ts-grid));align-item\
s:start;cursor:default;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none}.twosh\
aft .ts-pulling,.twoshaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accent)}.two\
shaft .ts-gate svg{user-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-happe\
ned.ts-stopped,.twoshaft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;padding-\
left:calc(4 * var(--ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate .ts-scroll{margin:0;padding:0}.t\
woshaft .ts-gate .ts-prompt{margin-top:0}.twoshaft .ts-gate-work .ts-prompt{margin-block:0}.twoshaft .ts-gate-hint{max-w\
idth:none}.twoshaft .ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 12ch);fo\
nt-weight:600}.twoshaft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3px}.twos\
haft .ts-lever .tsl-spot{fill:transparent;cursor:pointer}.twoshaft .ts-lever .tsl-spot:hover{fill:var(--ts-faint);stroke\
:var(--ts-accent)}.twoshaft .ts-lever .tsl-knob{fill:var(--ts-accent);stroke:var(--ts-paper);stroke-width:2;cursor:grab;\
touch-action:none}.twoshaft .ts-lever .tsl-in{text-decoration:underline;font-weight:800}.twoshaft .ts-gate-work{display:\
grid;grid-template-columns:minmax(0,3fr) minmax(0,2fr);gap:0 calc(3 * var(--ts-grid))}.twoshaft .ts-gate-work .ts-log{ma\
x-height:9rem}.twoshaft .ts-gate-work .ts-moves{display:grid;grid-template-columns:repeat(auto-fill,minmax(200px,1fr))}.\
twoshaft .ts-gate-work .ts-moves{gap:4px;margin-top:0}.twoshaft .ts-gate-work .ts-moves .ts-button{font-size:var(--ts-sm\
all);line-height:1.25}@media(max-width:900px){.twoshaft .ts-gate,.twoshaft .ts-gate-work{grid-template-columns:minmax(0,\
1fr)}}.twoshaft .tsw-train.ts-scroll.ts-fit svg{min-width:540px}.twoshaft .tsw-train svg{user-select:none}.twoshaft .tsw\
-counts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1fr));gap:4px var(--ts-grid);max-width\
:900px;margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-template-columns:68px minmax\
(0,1fr);column-gap:var(--ts-grid);align-items:center;padding:2px 4px;border:1px solid var(--ts-line);border-radius:2px;t\
ext-align:left;font-size:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:1px 3px\
}.twoshaft .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-dial{gr\
id-column:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:100%;height:auto;touch-\
action:none;cursor:grab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var(--ts-f\
aint);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.t\
woshaft .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-tick\
{stroke:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:calc(15px * \
var(--ts-grown, 1)) var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{font-family:monospace;fo\
nt-size:var(--ts-small);max-height:4.5em;overflow-y:auto}.twoshaft .tsw-figure{font-variant-numeric:tabular-nums}.twosha\
ft .tsw-figure:empty{min-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsw-say{max-width:none}.twoshaft .\
tsh-picture{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{display:block;width:100%;min-width:680px;\
max-width:1100px;height:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaft .tsh-\
place:hover .tsh-hit{stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:hover .ts\
h-hit{stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);stroke-\
width:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:3px solid var(--ts-accent);padding-l\
eft:calc(1.5 * var(--ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twoshaft .ts\
h-verdict{margin-top:var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-sliders{displ\
ay:grid;grid-template-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:var(--ts\
-grid) 0;max-width:960px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em minmax(6em,1fr) 4em;align-items:cent\
er;gap:var(--ts-grid);min-height:28px}.twoshaft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;min-hei\
ght:24px}.twoshaft .tsl-row .ts-box{justify-self:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;text-alig\
n:right}.twoshaft .tsl-drawing{overflow-x:auto}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:min(520px,1\
00%);max-width:820px;height:auto}.twoshaft .tsl-sum{font-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@media(max\
-width:480px){.twoshaft .tsl-sliders{grid-template-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wrap:wrap;\
min-width:0}.twoshaft .tsl-row input{max-width:100%}}.twoshaft .tsp-section{flex:1 1 320px;overflow-x:auto}.twoshaft .ts\
p-gauge{width:190px;height:173px;flex:none}.twoshaft .tsp-section svg{display:block;max-width:100%;height:auto;min-width\
:320px}.twoshaft .ts-pair[hidden]{display:none}.twoshaft .ts-cells{position:absolute;pointer-events:none}.twoshaft .tsp-\
land.tsp-clear{fill:none}.twoshaft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-way{fil\
l:none;stroke:var(--ts-bad);stroke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:var(--ts-ink);stroke:var(\
--ts-paper);stroke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp-shut .\
tsp-chosen{display:none}.twoshaft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-grid));font-size:var(\
--ts-small);min-height:1.6em}.twoshaft .ts-key{display:inline-flex;align-items:center;gap:4px}.twoshaft .ts-swatch{width\
:25px;height:15px;border:1px solid var(--ts-line)}.twoshaft-rig .ts-pad-tools .ts-box{max-width:15em}.twoshaft-rig .ts-b\
eside .ts-facts{max-width:none}.twoshaft .ts-range{accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-clock{min\
-width:6em;font-weight:600}.twoshaft .ts-unit{overflow:auto;max-height:max(20rem,min(620px,100vh - 370px));border:1px so\
lid var(--ts-line);margin:var(--ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:block;min-\
width:720px;max-width:none;max-height:none;margin-inline:auto}.twoshaft .ts-apart .ts-unit svg{min-width:0;overflow:visi\
ble}.twoshaft .ts-unit [data-part]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,.tsu-li\
ne){stroke:var(--ts-accent);stroke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-unit [data-part]:hover path:not(.tsu-\
behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible{outline:3px solid var(--ts-accent)\
;outline-offset:-3px}.twoshaft .ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .ts-unit\
-words p{max-width:var(--ts-width)}.twoshaft.ts-together .tsu-number{display:none}.twoshaft .ts-unit :is(.tsu-axis,.tsu-\
number){pointer-events:none}.twoshaft .ts-apart{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-a\
part-tools{flex:1 1 280px;max-width:380px}.twoshaft .ts-apart-tools .ts-slide>span{min-width:0}.twoshaft .ts-apart-tools\
 .ts-slid{min-width:6em}.twoshaft .ts-apart-picture{flex:3 1 600px;min-width:0}.twoshaft .ts-nextin{min-height:3em}.twos\
haft .ts-apart-list{list-style:none;margin:0;padding:0 var(--ts-grid) 0 0;max-height:300px;overflow:auto;font-size:var(-\
-ts-small)}.twoshaft .ts-apart-list li{padding:2px var(--ts-grid);border-left:4px solid transparent}.twoshaft .ts-apart-\
list .ts-current{border-left-color:var(--ts-accent);font-weight:600}@media(forced-colors:active){.twoshaft .ts-apart-lis\
t li:not(.ts-current){border-left-color:Canvas}}.twoshaft .ts-space{display:block;width:100%;height:460px;box-sizing:bor\
der-box;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:none}.twoshaft .ts-space:focus-visible{outl\
ine:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sentences[hidden]{display:\
none}.twoshaft .ts-told{min-height:1.5em;max-height:6em;overflow-y:auto}.twoshaft .ts-build{display:grid;grid-template-c\
olumns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));align-items:start}.twoshaft .ts-buildlist{display:gr\
id;gap:4px;max-height:20rem;overflow-y:auto;padding:4px}.twoshaft .ts-buildstep{text-align:left;padding-block:2px;min-he\
ight:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var(--ts-line)}.twoshaft .ts-buildstep-waits{b\
order-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-current]{background:var(--\
ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand{border:1px solid var(-\
-ts-line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twoshaft .ts-hand .ts-field{border:0;margin:var(--ts-\
grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do{text-align:left;padding-block:4px}.twoshaft\
 .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid);font-size:var(--ts-small)}.twoshaft .ts-re\
cord table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.twoshaft .ts-record caption{text-align:left;fo\
nt-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align:top;padding:3px 16px 3px 0;border-bottom:1p\
x solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-record .ts-blank{min-width:12em;height:2em}@medi\
a(max-width:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,1fr)}.twoshaft .ts-buildlist,.twoshaft .ts-hand{ma\
x-height:none}}@media(forced-colors:active){.twoshaft-rig:not(.ts-begun,.ts-lost) .ts-first{outline:3px solid Highlight}\
.twoshaft .ts-button[aria-pressed=true],.twoshaft .ts-buildstep[aria-current],.twoshaft .ts-held{forced-color-adjust:non\
e;background:Highlight;border-color:Highlight;color:HighlightText}.twoshaft :is(.ts-step,.ts-pathlist li):not(.ts-curren\
t,.ts-inblock){border-left-color:Canvas}.twoshaft :is(.ts-step,.ts-pathlist li).ts-current{border-left-color:Highlight}.\
twoshaft-bar .ts-tasks a:not([aria-current]){border-bottom-color:Canvas}}`,gs="twoshaft-styles";function Yn(){let t=document.
getElementById(gs);t?.textContent!==hs&&(t?.remove(),document.head.append(s("style",{id:gs},hs)))}function J({model:t,el:e},{
kind:n,lost:o=()=>Qt(e),line:r=()=>{}}){Yn(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"\
ts-alert",role:"alert"}),c=fs(e),i=()=>e.classList.contains("ts-lost"),u=[],d=Gn(t,()=>{i()||(e.classList.add("ts-lost"),
c.down(),o())},h=>{i()||(h?c.down():c.up(),r(h))}),p=zn(e),f,g=(h,L)=>{t.on(h,L),u.push([h,L])};return g("msg:custom",h=>{
h.type==="trouble"&&!i()&&(a.textContent=h.reason)}),{alert:a,follow:g,isLost:i,send(h){i()||(e.classList.add("ts-begun"),
t.send(h),clearTimeout(f),f=window.setTimeout(()=>t.send({type:"rest"}),Un))},asks(h,{first:L,begin:v,who:E="Practice. N\
othing here is marked or saved."}={}){return L?.classList.add("ts-first"),s("div",{class:"ts-who"},s("p",{class:"ts-asks"},
h),v?s("p",{class:"ts-begin"},`Begin: ${v}.`):"",E?s("p",{},E):"")},show:(...h)=>e.replaceChildren(...It(h)),close(){c.up(),
clearTimeout(f),p(),d();for(let[h,L]of u)t.off(h,L)}}}function ms({model:t,el:e}){let n=J({model:t,el:e},{kind:"rig",lost:()=>u.setDisabled(!0)}),o=s("p",{class:"ts-finding",
role:"status"}),r=s("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=ot("order"),n.send({type:"order",order:p,turn:c})},
u=le({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),l=s("button",{type:"\
button",class:"ts-button",onclick:()=>u.change([...a],"The first order stands again")},"Start again");u.tools.append(l),
n.show(n.asks("Which steps stand in a wrong place?",{first:u.tools,begin:"choose a step and move it up or down"}),n.alert,
Tt([u.element],[o,r]));function d(){let p=t.get("judged");c!==null&&p.turn!==c||(c=null,o.textContent=p.finding,r.textContent=
p.cost,u.setOrder(p.order),u.setNotes(p.notes))}return n.follow("change:judged",d),d(),n.close}var Xn=["lit","bench","absent"],ws=[1,1.5,2,3,4.5];function Ut({svg:t,parts:e,words:n},{name:o="The unit in section",tallest:r}={}){
let a=s("div",{class:"ts-unit",tabindex:"0",role:"application","aria-label":`${o}. Left and right arrows walk from part \
to part, up and down to the part above or below, plus and minus zoom.`});a.innerHTML=t;let c=a.querySelector("svg"),i=c.
querySelector(".tsu-marks");c.setAttribute("aria-hidden","true"),c.removeAttribute("role");let u=new Map(e.map(([H])=>[H,
[]]));for(let H of Z(c,"[data-part]"))u.get(String(H.dataset.part))?.push(H);let l=new Map(e.map(([H],C)=>[H,C])),d=s("p",
{class:"ts-hint ts-unit-name",role:"status"}),p=yt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],
...e.map(([H,C])=>[H,C])]),{width:f,height:g}=c.viewBox.baseVal,h=r?`min(100%, ${Math.round(r*f/g)}px)`:"100%",L=new WeakMap,
v=-1,E=0,R={},w=H=>{let C=R[H];return C==="absent"?" Not there yet.":C==="bench"?" On the bench.":C==="lit"?" In hand.":
""},k=H=>`${e[H][1]}. ${e[H][2]}${w(e[H][0])}`;function I(H){for(let N of Z(c,".tsu-chosen"))N.classList.remove("tsu-cho\
sen");v=H;let C=H<0?"":e[H][0];p.value=C,d.textContent=H<0?M:k(H);for(let N of u.get(C)??[])N.classList.add("tsu-chosen");
H>=0&&m(C)}function A(H){let C=(u.get(H)??[]).map(K=>{let{x:st,y:pt,width:_,height:V}=K.getBBox(),[y,W]=L.get(K)??[0,0];
return{x:st+y,y:pt+W,width:_,height:V}}),N=Math.min(...C.map(K=>K.x)),b=Math.max(...C.map(K=>K.x+K.width)),P=Math.min(...C.
map(K=>K.y)),U=Math.max(...C.map(K=>K.y+K.height));return{x:(N+b)/2,y:(P+U)/2}}function m(H){let C=A(H),N=c.getBoundingClientRect().
width/c.viewBox.baseVal.width,[b,P]=[C.x*N,C.y*N],{scrollLeft:U,scrollTop:K,clientWidth:st,clientHeight:pt}=a;(b<U+40||b>
U+st-40)&&(a.scrollLeft=b-st/2),(P<K+40||P>K+pt-40)&&(a.scrollTop=P-pt/2)}function x(H){E=Math.max(0,Math.min(ws.length-
1,E+H)),c.style.width=`calc(${ws[E]} * ${h})`,c.style.height="auto",v>=0&&m(e[v][0])}function $(H){let C=A(e[v][0]),[N]=e.
map(([b],P)=>({k:P,at:A(b)})).filter(({k:b,at:P})=>b!==v&&(P.y-C.y)*H>4).sort((b,P)=>bs(b.at,C)-bs(P.at,C));N&&I(N.k)}a.
addEventListener("keydown",H=>{if(xt(H))return;let C=e.length-1;if(H.key==="ArrowRight")I(v>=C?0:v+1);else if(H.key==="A\
rrowLeft")I(v<=0?C:v-1);else if(H.key==="ArrowUp"||H.key==="ArrowDown")v<0?I(0):$(H.key==="ArrowUp"?-1:1);else if(H.key===
"Home")I(0);else if(H.key==="End")I(C);else if(H.key==="+"||H.key==="=")x(1);else if(H.key==="-")x(-1);else if(H.key==="\
Escape")I(-1);else return;H.preventDefault()}),a.addEventListener("click",H=>{let C=wt(H,"[data-part]")?.dataset.part;I(
C===void 0?-1:l.get(C)??-1)}),a.addEventListener("pointerover",H=>{let C=wt(H,"[data-part]")?.dataset.part;if(C===void 0||
H.pointerType!=="mouse")return;let N=wt(H,"[data-solid]")?.querySelector("title")?.textContent,b=e[l.get(C)??0][1];S.textContent=
N&&!b.endsWith(N)?`${N} (${b})`:b}),a.addEventListener("pointerleave",()=>{S.textContent=""}),p.addEventListener("change",
()=>I(l.get(p.value)??-1));let S=s("span",{class:"ts-unit-over","aria-hidden":"true"}),M="Point at a part, tap it, or ch\
oose it here to read its name.";d.textContent=M;let B=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",p),et(
"−",()=>x(-1),"Smaller"),et("+",()=>x(1),"Larger"),S),z=s("details",{class:"ts-unit-words"},s("summary",{},"What is wh\
ere, in words"),s("p",{},n));return x(0),{nodes:[B,d,a,z],choose:p,drawing:c,shift(H,[C,N]){L.set(H,[C,N]),H.setAttribute(
"transform",`translate(${C.toFixed(1)} ${N.toFixed(1)})`)},show(H){R=H.looks;for(let[C,N]of u)for(let b of N)for(let P of Xn)
b.classList.toggle(`tsu-${P}`,R[C]===P);i.innerHTML=H.marks,v>=0&&(d.textContent=k(v))}}}function bs(t,e){return Math.abs(
t.y-e.y)+2*Math.abs(t.x-e.x)}function vs(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function ks({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),o=s("p",{class:"ts-happened",role:"status"}),r=s("p",{class:"ts-hint"}),a=Ut(t.get("picture")),
c=s("p",{class:"ts-hint",role:"status"}),i=s("dl",{class:"ts-facts"}),u=s("div",{class:"ts-ready"}),l=s("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),d=s("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:m=>{m.key==="Enter"&&w()}}),p=s("span"),f=m=>I.send({type:"move",by:m}),g=m=>I.
send({type:"go",position:m}),h=et("Back",()=>f(-1),"One step back"),L=et("Next",()=>f(1),"Next step"),v=et("Start",()=>g(
0),"Start with an empty bench"),E=et("End",()=>g(t.get("view").count),"End of the order"),R=et("Try it",()=>I.send({type:"\
take",step:l.value}),"Try it: the step chosen here"),w=()=>{let m=Number.parseInt(d.value,10);m>=0&&g(m)},k=s("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},v,h,L,E,s("span",{class:"t\
s-pair"},"place ",d,p,et("Go",w,"Go to this place")));k.addEventListener("keydown",m=>{if(!(m.target===d||xt(m))){if(m.key===
"ArrowLeft")f(-1);else if(m.key==="ArrowRight")f(1);else if(m.key==="Home")g(0);else if(m.key==="End")g(t.get("view").count);else
return;m.preventDefault()}});let I=J({model:t,el:e},{kind:"rig"});I.show(I.asks("What comes next, and what can no longer\
 be reached?",{first:L,begin:"press Next"}),I.alert,n,k,Tt(a.nodes,[o,c,i,r,s("p",{class:"ts-prompt"},"Do another step n\
ext"),u,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",l,R))]));function A(){let m=t.
get("view");n.textContent=m.finding,o.textContent=m.happened,r.textContent=m.next?`Next in this order: ${m.next}`:"This \
is the end of the order.",c.textContent=m.build.words,a.show(m.build),i.replaceChildren(...Et(m.facts));let x=u.contains(
document.activeElement);u.replaceChildren(...m.ready.map(([M,B])=>et(B,()=>I.send({type:"take",step:M})))),m.ready.length||
u.append(s("p",{class:"ts-hint"},"No step is ready.")),x&&(u.querySelector("button")??L).focus(),l.replaceChildren(...bt(
m.waiting)),l.disabled=R.disabled=!m.waiting.length,d.value=String(m.position),p.textContent=` of ${m.count} `;let $=m.position===
0,S=m.position===m.count;for(let M of[h,v])vs(M,$);for(let M of[L,E])vs(M,S)}return I.follow("change:view",A),A(),I.close}function qt(t){let e=null,n=null,o=a=>{if(e!==null){n=a;return}e=ot("turn"),t(a,e)},r=()=>{e=null;let a=n;n=null,a!==null&&
o(a)};return{ask:o,free:r,answered(a){a===e&&r()},get waiting(){return e!==null}}}var it=(t,e,n,o,r)=>D("line",{x1:t,y1:e,x2:n,y2:o,class:r}),ct=(t,e,n,o="middle")=>D("text",{x:t,y:e,"text-anchor":o,class:"\
tsg-text"},n);function zt(){let t=D("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(D("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let o=0;o<100;o+=1){let r=o/100*2*Math.PI,a=o%10===0?78:o%5===0?82:86;t.append(it(100+
a*Math.sin(r),100-a*Math.cos(r),100+92*Math.sin(r),100-92*Math.cos(r),o%10===0?"tsg-mark tsg-long":"tsg-mark")),o%10===0&&
t.append(ct(100+66*Math.sin(r),104.5-66*Math.cos(r),String(o)))}t.append(D("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let o=0;o<10;o+=1){let r=o/10*2*Math.PI;t.append(it(100+15*Math.sin(r),134-15*Math.cos(r),100+19*Math.sin(r),134-19*
Math.cos(r),"tsg-mark"))}let e=it(100,134,100,119,"tsg-small"),n=D("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(e,n,D("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(o,r){n.setAttribute("tra\
nsform",`rotate(${o*360} 100 100)`),e.setAttribute("transform",`rotate(${o*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${r}`)}}}function ys({top:t,mark:e,perFigure:n}){let o=D("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),r=c=>30+c/t*540;o.append(D("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*e<=t+1e-9;c+=1){let i=c%n===0;o.append(it(r(c*e),22,r(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&o.
append(ct(r(c*e),84,String(Math.round(c*e))))}let a=D("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return o.append(
a,ct(586,14,"newtons","end")),{node:o,top:t,set(c,i){a.setAttribute("transform",`translate(${r(Math.min(c,t))} 0)`),o.setAttribute(
"aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function xs({low:t,high:e,reach:n}){let o=D("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),r=i=>360+Math.max(-n,Math.min(n,i))/n*340;o.append(D("rect",{x:r(t),y:34,width:r(
e)-r(t),height:24,class:"tsg-target"}),ct((r(t)+r(e))/2,84,"target"),it(20,46,700,46,"tsg-mark"),it(360,26,360,66,"tsg-m\
ark tsg-long"),ct(20,20,"end play","start"),ct(700,20,"preload","end"),ct(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let u of[
i,-i])o.append(it(r(u),42,r(u),50,"tsg-mark"));o.append(ct(r(-n),70,`${n.toFixed(2)} mm`,"start"),ct(r(n),70,`${n.toFixed(
2)} mm`,"end"));let a=D("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=D("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return o.append(a,c),{node:o,set(i,u,l){a.setAttribute("transform",`translate(${r(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${r(u)} 0)`),o.setAttribute("aria-label",l)}}}function gt(t,{min:e,max:n,step:o,value:r,words:a,onInput:c}){let i=s(
"input",{type:"range",class:"ts-slider",min:e,max:n,step:o,value:r,"aria-label":t}),u=s("output",{class:"ts-slid"},a(r));
return i.addEventListener("input",()=>{let l=a(Number(i.value));u.textContent=l,i.setAttribute("aria-valuetext",l),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(r)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,u),set(l){i.value=
String(l),u.textContent=a(l)}}}function ht(t,e,n,o){let r=s("select",{class:"ts-box","aria-label":t,onchange:()=>o(r.value)},
...e.map(([a,c])=>s("option",{value:a,selected:a===n},c)));return{box:r,row:s("span",{class:"ts-pair"},`${t} `,r)}}function $s({model:t,el:e}){let n=t.get("about"),o=t.get("shown").state,r=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),u=s("u\
l",{class:"ts-sentences"}),l=qt((m,x)=>k.send({type:"set",state:m,turn:x})),d=m=>{o={...o,...m},l.ask(o)},p=D("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),f=it(0,0,0,0,"tsg-mark tsg-long"),g=ct(0,0,""),h=96,
L=h/(n.readingsOnly?o.radius:n.radii[1]),v=D("svg",{viewBox:`0 0 ${2*h+120} ${2*h+30}`,width:2*h+120,height:2*h+30,class:"\
tsg-drum",role:"img"}),E=h+4;p.setAttribute("transform",`translate(${E} ${E})`),v.append(p,f,it(4,E,2*h+4,E,"tsg-centre"),
it(E,4,E,2*h+4,"tsg-centre"),D("circle",{cx:E,cy:E,r:10,class:"tsg-face"}),g);let R=X("Turn the shaft ten times",()=>d({
turns:o.turns+10})),w=[s("div",{class:"ts-tools"},R)];if(!n.readingsOnly){let m=n.kinds,x=m.map(([$,S])=>s("label",{class:"\
ts-option"},s("input",{type:"checkbox",checked:o.kinds.includes($),onchange:M=>d({kinds:m.map(([B])=>B).filter(B=>B===$?
M.target.checked:o.kinds.includes(B))})}),`with ${S}`));w[0].append(X("Fit the rings anew",()=>d({turns:0}))),x.length&&
w.push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the bearings"),...x)),w.push(gt("S\
etting",{min:-.05,max:n.highest,step:.005,value:o.setting,onInput:$=>d({setting:$}),words:$=>$<0?`${(-$).toFixed(3)} mm \
of end play`:`${$.toFixed(3)} mm of preload`}).row,gt("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:o.
radius,onInput:$=>d({radius:$}),words:$=>`${$} mm`}).row)}let k=J({model:t,el:e},{kind:"rig"});k.show(k.asks("How hard d\
oes the shaft turn?",{first:R,begin:"turn the shaft",who:n.readingsOnly?"Take your reading here; write it in the form.":
void 0}),k.alert,s("div",{class:"tsg-beside"},v,s("div",{class:"tsg-side"},a,c)),...w,i,u);function I(){let m=t.get("sho\
wn");l.waiting||(o=m.state);let x=L*m.state.radius;Ot(p,{r:x}),Ot(f,{x1:E,y1:E-x,x2:2*h+120,y2:E-x}),Ot(g,{x:E,y:2*h+22}),
g.textContent=`drum, radius ${m.state.radius} mm`,v.setAttribute("aria-label",`A drum of ${m.state.radius} mm radius on \
the shaft; the cord leaves it at its edge towards the scale.`),r?.top!==m.scale.top&&(r=ys(m.scale),a.replaceChildren(r.
node),c.textContent=`Spring scale to ${m.scale.top} N, one mark ${m.scale.mark} N.`),r?.set(m.pull,m.pullWords),i.textContent=
m.finding,u.replaceChildren(...Bt(m.words)),l.answered(m.turn)}let A=()=>l.free();return k.follow("change:shown",I),k.follow(
"msg:custom",A),I(),k.close}function Ct({model:t,el:e},n){let o=t.get("about"),r=t.get("shown").state,a=qt((p,f)=>c.send({type:"set",state:p,turn:f})),
c=J({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),u=n(o,p=>{r={...r,...p},a.ask(r)},r),l=o.readingsOnly?
"Take your readings here; write them in the form.":void 0;c.show(c.asks(u.asks,{first:u.first,begin:u.begin,who:l}),c.alert,
...u.side?[Tt([u.picture],[...u.controls,i])]:[s("div",{class:"tsg-wide"},u.picture),...u.controls,i]);function d(){let p=t.
get("shown");a.waiting||(r=p.state),u.set(p,r),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",
d),c.follow("msg:custom",a.free),d(),c.close}var Lt=(...t)=>s("div",{class:"ts-tools"},...t);var Vn={x:44,y:84,perMm:34};function Jn(t){let e=D("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:o,
perMm:r}=Vn,a=D("g",{}),c=D("g",{});e.append(D("rect",{x:1,y:22,width:758,height:o-22,class:"tsi-paper"}),D("rect",{x:n-
30,y:o,width:t.lines*t.space*r+60,height:64,class:"tsi-body"}),a,c,ct(12,14,"main scale, mm","start"),ct(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let u=n+i*t.space*r;c.append(
it(u,o,u,o+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(ct(u,o+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let u=Math.
max(0,Math.ceil(i.mm-1));u<=t.top+25;u+=1){let l=n+(u-i.mm)*r;l<4||l>756||(a.append(it(l,o,l,o-(u%10===0?34:u%5===0?28:20),
"tsi-fine")),u%5===0&&a.append(ct(l,o-40,String(u))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function Ss(t){
return Ct(t,(e,n,o)=>{let r=Jn(e),a=gt("Rod",{min:0,max:e.top,step:.05,value:o.rod,words:()=>"push down to the right",onInput:l=>n(
{rod:l})}),c=ht("Foot",e.places,o.place,l=>n({place:l,rod:0})),i=X("Push the rod down until it rests",()=>n({rod:e.top})),
u=ht("Look",e.eyes,o.eye,l=>n({eye:l}));return{asks:"How deep does it lie?",first:i,begin:"push the rod down",picture:r.
node,controls:[Lt(c.row,u.row),Lt(i,X("Lift the rod",()=>n({rod:0}))),a.row],set(l,d){r.set(l),c.box.value=d.place,u.box.
value=d.eye,a.box.value=d.rod}}})}function Yt(t,e){let n=e>1?.65/(e-1):0;return Array.from({length:e},(o,r)=>{let a=e>1?r*n:0,c=e>1?.35:1;return 1-Math.max(
0,Math.min(1,(t-a)/c))})}function Ls(t,e,n,o){let[r,a]=[0,0];for(let c=n;c!==null;c=t[c].parent){let[i,u]=t[c].own[o]??[
0,0];r+=i*e[c],a+=u*e[c]}return[r,a]}function Ie(t){let e=t.findIndex(n=>n>0);return{placed:t.filter(n=>n===0).length,next:e<
0?null:e}}function Cs(t,e){return t<=0?0:t>=e||e<2?1:.35+(t-1)*(1-.35)/(e-1)}function Es(t,e,n){let o=[0,0,0];for(let r=n;r!==
null;r=t[r].parent){let a=e[r];for(let[c,i]of t[r].own.entries())o[c]+=i*a}return o}function Ne(t,e){globalThis.twoshaftChunks??=new Map;let n=globalThis.twoshaftChunks,o=n.get(e)??Zn(t,e);return n.set(e,
o),o.catch(()=>n.delete(e)),o}function Zn(t,e){return new Promise(n=>{let o=(r,a)=>{if(r.type!=="chunk"||r.name!==e)return;
t.off("msg:custom",o);let c=URL.createObjectURL(new Blob([a[0]],{type:"text/javascript"})),i=import(c);i.finally(()=>URL.
revokeObjectURL(c)).catch(()=>{}),n(i)};t.on("msg:custom",o),t.send({type:"chunk",name:e})})}var fe=.12,Rt=1.15,As="This browser draws nothing in three dimensions. The section shows the same parts.",he;function Ms(){
if(he!==void 0)return he;let t=document.createElement("canvas").getContext("webgl2");return t?.getExtension("WEBGL_lose_\
context")?.loseContext(),he=!!t,he}function Os(t){Ms()&&Ne(t,"solids").catch(()=>{})}function ge(t,e){let n=s("span",{style:`\
color: ${e}`});t.append(n);let o=s("canvas",{width:1,height:1}).getContext("2d");o.fillStyle=getComputedStyle(n).color,n.
remove(),o.fillRect(0,0,1,1);let[r,a,c]=o.getImageData(0,0,1,1).data;return`rgb(${r}, ${a}, ${c})`}function Ts(t,e,n){let o=s(
"p",{class:"ts-hint ts-unit-name",role:"status"});if(!Ms())return o.textContent=As,{drawn:!1,nodes:[o],move(){},ready(){},
close(){}};let r=s("canvas",{class:"ts-space",tabindex:"0",role:"application","aria-label":"The parts in three dimension\
s. Arrow keys turn, plus and minus zoom, Home looks as at first, H hides the chosen part, A shows all. The section shows\
 the same parts with their names."}),a=yt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],...n.map(
([w,k])=>[w,k])]),c=new Set,i,u=()=>[0,0,0],l=()=>{},d="Drag or use the arrow keys to turn. Tap a part, or choose it her\
e, to read its name.";o.textContent="Drawing …";function p(){let w=n.find(([I])=>I===a.value),k=c.has(a.value)?" Hidde\
n.":"";o.textContent=w?`${w[1]}. ${w[2]}${k}`:d,i?.look(a.value,c)}function f(){a.value&&(c.delete(a.value)||c.add(a.value),
p())}function g(){c.clear(),p()}a.addEventListener("change",p);let h={ArrowLeft:()=>i?.turnBy(-fe,0),ArrowRight:()=>i?.turnBy(
fe,0),ArrowUp:()=>i?.turnBy(0,fe),ArrowDown:()=>i?.turnBy(0,-fe),"+":()=>i?.zoomBy(Rt),"=":()=>i?.zoomBy(Rt),"-":()=>i?.
zoomBy(1/Rt),Home:()=>i?.home(),h:f,a:g};r.addEventListener("keydown",w=>{let k=h[w.key]??h[w.key.toLowerCase()];!k||xt(
w)||(k(),w.preventDefault())});let L=null;r.addEventListener("pointerdown",w=>{L={x:w.clientX,y:w.clientY,far:!1},r.setPointerCapture(
w.pointerId)}),r.addEventListener("pointermove",w=>{if(!L)return;let[k,I]=[w.clientX-L.x,w.clientY-L.y];!L.far&&Math.hypot(
k,I)<4||(L={x:w.clientX,y:w.clientY,far:!0},i?.turnBy(-k/150,I/150))}),r.addEventListener("pointerup",w=>{if(L&&!L.far){
let{left:k,top:I,width:A,height:m}=r.getBoundingClientRect(),[x,$]=[(w.clientX-k)/A,(w.clientY-I)/m];a.value=i?.partAt(2*
x-1,1-2*$)??"",p()}L=null}),r.addEventListener("wheel",w=>{document.activeElement===r&&(i?.zoomBy(w.deltaY<0?Rt:1/Rt),w.
preventDefault())},{passive:!1});let v=new ResizeObserver(()=>i?.paint()),E=!1;return Ne(t,"solids").then(({solidsView:w})=>{
if(E)return;i=w(r,e,{ink:ge(r.parentElement??document.body,"var(--ts-ink)"),paper:ge(r.parentElement??document.body,"var\
(--ts-paper)"),accent:ge(r.parentElement??document.body,"var(--ts-accent)"),metal:ge(r.parentElement??document.body,"col\
or-mix(in srgb, var(--ts-ink) 18%, var(--ts-paper))")}),i.move(u),i.fit(),l(),i.home(),i.paint(),v.observe(r),p(),r.dataset.
painted="true"},()=>{o.textContent=As}),{drawn:!0,nodes:[s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",a),
et("Hide or show",f,"Hide or show the chosen part"),et("Show all",g,"Show all parts"),et("−",()=>i?.zoomBy(1/Rt),"Smal\
ler"),et("+",()=>i?.zoomBy(Rt),"Larger")),o,r],move(w){u=w,i?.move(w)},ready(w){l=w},close(){E=!0,v.disconnect(),i?.close()}}}var me=200,Qn=580,to="2.6";function Is({model:t,el:e}){let n=s("p",{class:"ts-finding"}),o=s("p",{class:"ts-hint ts-next\
in",role:"status"}),r=s("div",{class:"ts-apart-picture"}),a=s("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"Wha\
t goes in"}),c=t.get("stages"),i=ht("Show",c,t.get("stage"),x=>m.send({type:"stage",stage:x})),u=gt("From apart to toget\
her",{min:0,max:me,step:1,value:0,words:x=>x<=0?"apart":x>=me?"together":"on the way",onInput:x=>w(x/me)}),l=t.get("pict\
ure"),d,p=[],f=[],g=0,h=!1,L,v=et("In three dimensions",()=>{h=!h,v.setAttribute("aria-pressed",String(h)),I()});v.setAttribute(
"aria-pressed","false");function E(x){u.set(Math.round(x*me)),w(x)}function R(x){let{placed:$}=Ie(Yt(g,l.movers.length));
E(Cs($+x,l.movers.length))}function w(x){if(g=x,!d)return;let $=Yt(g,l.movers.length);for(let{group:z,mover:H,view:C}of p)
d.shift(z,Ls(l.movers,$,H,C));k($);for(let z of f)z.style.opacity=String(1-g);e.classList.toggle("ts-together",g>.5);let{
placed:S,next:M}=Ie($),B=`${S} of ${$.length} in place.`;for(let[z,H]of[...a.children].entries())H.classList.toggle("ts-\
current",z===M);o.textContent=M===null?"All in place.":`${B} Next in: ${l.movers[M].words}.`}function k(x){let{movers:$}=t.
get("space");L?.move(S=>Es($,x,S))}function I(){if(L?.close(),L=void 0,!!d&&(r.replaceChildren(...h?[]:d.nodes),!!h)){if(t.
get("space").stage!==t.get("stage")){Os(t),m.send({type:"space"});return}L=Ts(t,t.get("space"),l.parts),k(Yt(0,l.movers.
length)),r.replaceChildren(...L.nodes,...L.drawn?[]:d.nodes),L.ready(()=>k(Yt(g,l.movers.length)))}}function A(){if(l=t.
get("picture"),n.textContent=t.get("finding"),i.box.value=t.get("stage"),d=void 0,r.replaceChildren(),!l.svg)return;d=Ut(
l,{name:"Parts apart",tallest:Qn}),d.drawing.dataset.grow=to,p=Z(d.drawing,"[data-move]").map($=>({group:$,mover:Number(
$.dataset.move),view:String($.dataset.view)})),f=Z(d.drawing,".tsu-traces"),a.replaceChildren(...l.movers.map(({words:$})=>s(
"li",{},$))),I(),w(g)}let m=J({model:t,el:e},{kind:"rig"});return m.show(m.asks("How do these parts go together?",{first:u.
box,begin:"move the slider",who:""}),m.alert,n,s("div",{class:"ts-apart"},s("div",{class:"ts-apart-tools"},i.row,u.row,s(
"div",{class:"ts-tools"},et("One in",()=>R(1),"One part more in place"),et("One out",()=>R(-1),"One part less in place")),
v,o,a),r)),m.follow("change:picture",A),m.follow("change:space",I),A(),()=>{L?.close(),m.close()}}function Ns({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding"}),r=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=s("div",{class:"tsj-bars"}),i=Z(a,"[data-bolt]"),u=ot("torq\
ue"),l=s("input",{id:u,type:"range",min:10,max:100,step:5,oninput:()=>f()});l.value="100";let d=s("output",{class:"tsj-f\
igure",for:u}),p=()=>l.value==="100"?n.torque:Number((Math.round(n.torque*Number(l.value)/100/n.step)*n.step).toFixed(3));
function f(){d.textContent=`${p()} N·m`,l.setAttribute("aria-valuetext",`${p()} newton metres, ${l.value} percent of th\
e torque`)}let g=x=>w.send({type:"pull",bolt:x,torque:p()}),h=X("Take back",()=>w.send({type:"undo"})),L=X("Wait until t\
he film has run out",()=>w.send({type:"wait"})),v=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>w.send({type:"set",film:Number(v.value)})},...n.films.map(x=>s("option",{value:x},x?`${x} µm thick`:"none"))),
E=s("input",{type:"checkbox",onchange:()=>w.send({type:"set",scattered:E.checked})});a.addEventListener("click",x=>{let $=wt(
x,"[data-bolt]");$&&(R($),g(Number($.dataset.bolt)))});let R=x=>{for(let $ of i)$.setAttribute("tabindex",$===x?"0":"-1");
x.focus({preventScroll:!0})};a.addEventListener("keydown",x=>{let $=wt(x,"[data-bolt]");if(!$||x.ctrlKey||x.metaKey||x.altKey)
return;let S=Number($.dataset.bolt),M={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[x.key];if(M)R(i[(S+M+i.length)%
i.length]);else if(x.key==="Home")R(i[0]);else if(x.key==="End")R(i[i.length-1]);else if(x.key==="Enter"||x.key===" ")x.
repeat||g(S);else return;x.preventDefault()});let w=J({model:t,el:e},{kind:"rig"}),k=X("Start all by hand",()=>w.send({type:"\
start"})),I=s("div",{class:"ts-tools",role:"group","aria-label":"Bolts"},k,...n.rounds.map(([x,$])=>X(`One round ${$}`,()=>w.
send({type:"round",pattern:x,torque:p()}))),h,X("Start again",()=>w.send({type:"again"}))),A=s("div",{class:"ts-tools",role:"\
group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:u},"Wrench set to"),l,d));n.films.length&&A.append(
s("label",{class:"ts-pair"},"Wet sealant",v),L,s("label",{class:"tsj-check"},E,"friction scatters from bolt to bolt")),w.
show(w.asks("Does every bolt keep its clamp?",{first:k,begin:"start all bolts by hand",who:n.readingsOnly?"Nothing is sa\
ved here; your answers stand in the form.":void 0}),w.alert,o,A,I,r,s("div",{class:"tsj-bench"},a,c),s("details",{class:"\
ts-keys"},s("summary",{},"How, and keys"),"The first choice of a bolt starts it by hand, the next ones pull it. Arrows g\
o from bolt to bolt, Enter pulls."));function m(){let x=t.get("view");o.textContent=x.finding,r.textContent=x.happened,c.
innerHTML=x.bars;for(let[$,S]of i.entries()){let M=x.tight[$]?`${x.clamps[$]} kN`:x.started[$]?"started by hand":"not st\
arted";S.setAttribute("aria-label",`Bolt ${$+1} of ${n.count}, ${M}`),S.classList.toggle("tsj-tight",x.tight[$]),S.classList.
toggle("tsj-started",x.started[$])}h.disabled=!x.pulls,L.disabled=!x.standing,v.value=String(x.film),E.checked=x.scattered}
return w.follow("change:view",m),f(),m(),w.close}var Bs="tsk-number";function Nt(t,e,...n){return s("td",{class:e?Bs:null,"data-label":t||null,role:"cell"},...n)}function we(t,e,n){
let o=e.map(([c,i])=>s("th",{scope:"col",role:"columnheader",class:i?Bs:null},c)),r=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...o)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),r,n);return s("div",{class:"ts-scroll"},
a)}function Ds({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),c=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),u=new Map;for(let[f,
g,h,L]of n.checks){let v=s("select",{class:"ts-box","aria-label":`What it showed: ${g}`,onchange:()=>d.send({type:"obser\
ve",check:f,shown:v.value})},s("option",{value:""},"Not made"),...bt(L)),E=Nt("worth, bit",!0),R=Nt("bit a minute",!0),w=s(
"tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},g),Nt("min",!0,`${h}`),Nt("it showed",!1,v),E,R);u.set(f,{box:v,
tells:E,rate:R,row:w}),i.append(w)}let l=s("button",{class:"ts-button",type:"button",onclick:()=>d.send({type:"clear"})},
"Take all observations back"),d=J({model:t,el:e},{kind:"rig"});d.show(d.asks("Which fault is it, and which check comes n\
ext?",{first:u.values().next().value?.box,begin:"say what a check showed"}),d.alert,o,a,c,we("Checks: what each showed, \
and what it is still worth",[["Check"],["min",!0],["It showed"],["worth, bit",!0],["bit a minute",!0]],i),s("div",{class:"\
ts-tools"},l,r));function p(){let f=t.get("view");o.textContent=f.finding,r.textContent=f.spent,c.textContent=f.more,a.replaceChildren(
...Bt(f.left.map(([L,v])=>`${L} (${v})`)));let g=f.ranked,h=new Map(g.map(([L,v,E],R)=>[L,{bits:v,rate:E,rank:R}]));for(let[
L,{box:v,tells:E,rate:R,row:w}]of u){let k=f.observed[L],I=h.get(L);v.value=k??"",E.textContent=I?I.bits:k!==void 0?"mad\
e":"nothing",R.textContent=I?I.rate+(I.rank===0?" ◀ best next":""):"–",w.classList.toggle("tsk-best",I?.rank===0)}}return d.
follow("change:view",p),p(),d.close}function Ps(t,{move:e,hand:n}){let{element:o,at:r}=ue(t),a=Object.entries(t.aims).filter(([u])=>u.startsWith("at:")),c=(u,l)=>{
let[d,p]=r(u,l);return D("circle",{cx:d,cy:p,r:16,class:"tsl-spot",...{"data-travel":u,"data-turn":l}})},i=D("g",{class:"\
tsl-knob"},D("circle",{r:12}));return o.append(...a.map(([,[u]])=>c(Number(u),0)),...t.gears.map(([,u,l])=>c(u,l)),i),o.
classList.add("ts-lever"),o.addEventListener("click",u=>{let l=wt(u,".tsl-spot");if(!l)return;let d=[Number(l.dataset.travel),
Number(l.dataset.turn)];for(let p of is(t.aims,n(),d))e(p)}),{element:o,scale:[Gt,de],show([u,l],d){let[p,f]=r(u,l);i.setAttribute(
"transform",`translate(${p.toFixed(1)} ${f.toFixed(1)})`);for(let g of Z(o,"[data-gear]"))g.classList.toggle("tsl-in",d.
includes(String(g.dataset.gear)))}}}function Rs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"ts-happened",role:"status"}),
r=s("div",{class:"ts-scroll ts-fit"}),a=Ps(t.get("plan"),{move:$=>E({type:"move",code:$}),hand:()=>t.get("view").hand}),
c=s("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=s("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...bt(t.get("builds"))),u=et("Start again",()=>E({type:"reset"})),l=s("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([$,S])=>et(S,()=>E({type:"move",code:$})))),
d=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),p=s("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),f=s("p",{class:"ts-proof",role:"status"}),g=et("What does a full hand test find?",()=>{
g.disabled=!0,f.textContent="testing",E({type:"prove"})}),h=J({model:t,el:e},{kind:"rig"});c.append(s("div",{},s("p",{class:"\
ts-prompt"},"The lever"),a.element),r),h.show(h.asks("Which gears can the lever reach?",{first:a.element,begin:"press a \
place in the gate"}),h.alert,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Put together: ",i),u,g),n,c,o,f,s("p",
{class:"ts-hint ts-gate-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down tu\
rn. Or in words:"),s("div",{class:"ts-gate-work"},l,s("div",{},s("p",{class:"ts-prompt"},"Tried by hand"),p,d)));let L=0,
v="";function E($){L+=1,h.send({...$,turn:L})}function R(){let $=t.get("view");if(v!==t.get("figure")){v=t.get("figure"),
r.innerHTML=v;let S=Ht(r,"svg");S.removeAttribute("role"),S.setAttribute("aria-hidden","true")}for(let S of Z(r,"[data-b\
ody]")){let[M,B]=$.moved[String(S.dataset.rides??S.dataset.body)]??[0,0];S.setAttribute("transform",`translate(${M.toFixed(
2)} ${B.toFixed(2)})`)}for(let S of Z(r,"[data-gear]"))S.classList.toggle("tsg-in",$.gears.includes(S.dataset.gear));for(let S of Z(
r,"[data-lifts]"))S.classList.toggle("tsg-up",$.lifted);a.show($.hand,$.gears),c.dataset.turn=String($.turn),n.textContent=
`${$.gears.length>1?"■ ":$.gears.length?"● ":"○ "}${$.title}.`,o.textContent=$.happened,o.classList.toggle("ts-sto\
pped",/topped by/.test($.happened)),(d.childElementCount!==$.log.length||d.lastElementChild?.textContent!==$.log.at(-1))&&
(d.replaceChildren(...$.log.map(S=>s("li",{class:/topped by/.test(S)?"ts-stopped":""},S))),d.scrollTop=d.scrollHeight),p.
hidden=$.log.length>0,i.value=$.build,f.textContent=$.proof,g.disabled=!1,I=!1,x()}c.addEventListener("keydown",$=>{if(xt(
$))return;let S={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[$.key];S&&($.preventDefault(),E({type:"\
nudge",travel:S[0],turned:S[1]}))}),i.addEventListener("change",()=>E({type:"build",build:i.value}));let w=null,k=null,I=!1;
function A($,S){let M=S.getBoundingClientRect(),B=S.viewBox.baseVal.width/M.width;return[($.clientX-M.left)*B,($.clientY-
M.top)*B]}c.addEventListener("pointerdown",$=>{let S=wt($,".tsg-panel, .tsl-knob");if(!S||$.button!==0)return;let M=S.ownerSVGElement,
B=t.get("view").hand,[z,H]=A($,M),C=Number(S.dataset.scale),N=C?[C,C]:a.scale;w={svg:M,x:z-B[0]*N[0],y:H+B[1]*N[1],scale:N},
c.setPointerCapture($.pointerId),c.focus({preventScroll:!0}),c.classList.add("ts-pulling"),$.preventDefault()}),c.addEventListener(
"pointermove",$=>{if(!w)return;let[S,M]=A($,w.svg),{scale:B}=w;k={travel_mm:(S-w.x)/B[0],turn_mm:(w.y-M)/B[1]},x()});let m=()=>{
w=null,c.classList.remove("ts-pulling")};c.addEventListener("pointerup",m),c.addEventListener("pointercancel",m);function x(){
if(I||!k)return;I=!0;let $=k;k=null,E({type:"pull",...$})}return h.follow("msg:custom",$=>{$.type==="trouble"&&(I=!1)}),
h.follow("change:view",R),R(),h.close}function js({model:t,el:e}){let n=t.get("plan"),o=t.get("view"),r=s("p",{class:"ts-finding tsw-say",role:"status"}),a=s(
"p",{class:"ts-happened tsw-happened",role:"status"}),c=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=o.dials[0].shaft,
l=n.gears.map(([S,M])=>s("button",{type:"button",class:"ts-button","data-gear":S,"aria-pressed":"false",onclick:()=>m({type:"\
gear",gear:S})},M)),d=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:S=>m({type:"hold",shaft:S.target.
value})},...bt(n.holds)),p=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:S=>{i=S.target.value,$()}},
...bt(o.dials.map(S=>[S.shaft,S.name]))),f=S=>m({type:"turn",shaft:i,turns:S}),g=`1/${n.marks}`,h=s("div",{class:"ts-too\
ls",role:"group","aria-label":"Turn the shaft"},et("↺ 1 turn",()=>f(-1),"One turn anticlockwise"),et(`↺ ${g}`,()=>f(
-n.step),`${g} turn anticlockwise`),et("↺ a touch",()=>f(-n.fine),"A touch anticlockwise"),et("a touch ↻",()=>f(n.fine),
"A touch clockwise"),et(`${g} ↻`,()=>f(n.step),`${g} turn clockwise`),et("1 turn ↻",()=>f(1),"One turn clockwise"),et(
"Marks to zero",()=>m({type:"reset"}))),L=new Map;for(let S of o.dials){let M=D("g",{},D("circle",{class:"tsw-end",r:34}),
D("line",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),D("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),B=[];for(let P=0;P<
n.marks;P+=1)B.push(D("line",{class:"tsw-tick",y1:-40,y2:P?-47:-52,transform:`rotate(${P*360/n.marks})`})),P&&B.push(D("\
text",{class:"tsw-number",x:57*Math.sin(P*2*Math.PI/n.marks),y:-57*Math.cos(P*2*Math.PI/n.marks)+4},String(P)));let z=D(
"svg",{viewBox:"-70 -70 140 140",class:"tsw-dial","data-shaft":S.shaft,"aria-hidden":"true"},D("circle",{class:"tsw-plat\
e",r:40}),...B,D("path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),M),H=s("div",{class:"tsw-count",tabindex:"0",role:"\
application","aria-roledescription":"shaft","data-shaft":S.shaft},s("div",{class:"tsw-name"}),z,s("div",{class:"tsw-stro\
kes","aria-hidden":"true"}),s("div",{class:"tsw-figure"}));L.set(S.shaft,{box:H,svg:z,shaftEnd:M}),H.addEventListener("f\
ocus",()=>{i!==S.shaft&&(i=S.shaft,$())}),H.addEventListener("keydown",P=>{if(xt(P))return;let U={ArrowRight:1,ArrowDown:1,
ArrowLeft:-1,ArrowUp:-1,PageDown:1,PageUp:-1}[P.key];U&&(P.preventDefault(),i=S.shaft,f(U*(P.key.startsWith("Page")?1:P.
shiftKey?n.fine:n.step)))});let C=null,N=P=>{let U=z.getBoundingClientRect();return Math.atan2(P.clientX-U.left-U.width/
2,U.top+U.height/2-P.clientY)/(2*Math.PI)};z.addEventListener("pointerdown",P=>{P.button===0&&(C=N(P),z.setPointerCapture(
P.pointerId),H.focus({preventScroll:!0}),P.preventDefault())}),z.addEventListener("pointermove",P=>{if(C===null)return;let U=N(
P),K=U-C;K-=Math.round(K),C=U,v+=K,R()});let b=()=>{C=null};z.addEventListener("pointerup",b),z.addEventListener("pointe\
rcancel",b)}let v=0,E=!1;function R(){if(E||Math.abs(v)<.002)return;E=!0;let S=v;v=0,f(S)}let w=J({model:t,el:e},{kind:"\
rig"}),k=[s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Hold still: ",d),s("span",{class:"ts-pair"},"Turn by ha\
nd: ",p)),s("div",{class:"tsw-counts"},...[...L.values()].map(S=>S.box)),h,a];w.show(w.asks("How many turns does it take\
?",{first:h,begin:n.closed?"turn a shaft":"engage a gear, then turn a shaft",who:n.closed?"Nothing is saved here; your a\
nswers stand in the form.":void 0}),w.alert,r,!n.closed&&s("div",{class:"ts-tools",role:"group","aria-label":"Gears enga\
ged"},s("span",{},"Engage: "),...l),...n.closed?k:[Tt([c],k)],s("p",{class:"ts-hint tsw-say"},`All three are seen from t\
he clutch side. Drag a dial round, or go to it and use the arrow keys (${g} turn), Shift with an arrow key (a touch) or \
Page Up and Page Down (one turn). Each stroke is a whole turn.`));let I=0,A=null;function m(S){I+=1,w.send({...S,turn:I})}
let x=S=>{let M=[];for(let B=S;B>0;B-=5)M.push(B>=5?"||||/":"|".repeat(B));return M.join(" ")};function $(){let S=t.get(
"view");A!==t.get("figure")&&(A=String(t.get("figure")),c.innerHTML=A);for(let M of Z(c,"[data-wheel]")){let[B,z]=S.wheels[String(
M.dataset.wheel)]??[0,!0];M.setAttribute("transform",`translate(0 ${(B*Number(M.dataset.reach)).toFixed(1)})`),M.classList.
toggle("tsw-behind",!z)}for(let M of l)M.setAttribute("aria-pressed",String(S.engaged.includes(M.dataset.gear)));d.value=
S.held,p.value=i;for(let M of S.dials){let{box:B,shaftEnd:z}=L.get(M.shaft),H=M.way>0?"↻":M.way<0?"↺":"";z.setAttribute(
"transform",`rotate(${M.angle})`);let[C,,N,b]=B.children;C.textContent=`${M.name}${M.held?", held":M.shaft===i?", your h\
and":""}`,N.textContent=M.strokes||H?`${H} ${x(M.strokes)}`:"no stroke",b.textContent=M.figure,B.classList.toggle("tsw-h\
and",M.shaft===i),B.classList.toggle("tsw-held",M.held),B.setAttribute("aria-label",`${M.name}${M.held?", held":""}. ${M.
words}`)}r.textContent=S.finding,a.textContent=S.happened,e.dataset.turn=String(S.turn),E=!1,R()}return w.follow("change\
:view",$),$(),w.close}function Hs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsh-picture"}),r=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),c=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},r,a,c),u=[],
l=[],d=null,p=t.get("plan").lookingOnly,f=(A,m)=>s("button",{type:"button",class:"ts-button","data-verdict":A,"aria-pres\
sed":"false",onclick:()=>v.send({type:"judge",place:d,verdict:A})},m),g=p?[]:[f("stop","Stop here"),f("well","Fine as it\
 is")],h=s("button",{type:"button",class:"ts-button",onclick:()=>v.send({type:"next"})},"Another day"),L=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...g);t.get("plan").more&&L.append(h);let v=J({model:t,
el:e},{kind:"rig"});v.show(v.asks(p?"What is to be seen at each place?":"Where can somebody get hurt?",{first:p?o:g[0],begin:p?
"choose a place":"choose a place and judge it",who:p?"Nothing is saved here; your answers stand in the form.":void 0}),v.
alert,n,s("p",{class:"ts-keys"},p?"Choose a place to read what can be seen there. Keys: arrows go from place to place.":
"Choose a place, read what can be seen there, and judge it. Keys: arrows go from place to place; Tab goes on to the butt\
ons."),Tt([o],[i,!p&&L]));function E(A,m){let x=A!==d;d=A;for(let[$,S]of l.entries()){let M=u[$][0]===A;S.setAttribute("\
tabindex",M?"0":"-1"),S.setAttribute("aria-pressed",String(M)),S.classList.toggle("tsh-chosen",M),M&&m&&(S.focus({preventScroll:!0}),
R(S))}x&&v.send({type:"choose",place:A})}function R(A){let m=Ht(A,".tsh-hit").getBoundingClientRect(),x=o.getBoundingClientRect();
(m.left<x.left||m.right>x.right)&&(o.scrollLeft+=m.left-x.left-(x.width-m.width)/2),(m.bottom<0||m.bottom>innerHeight||m.
top<0)&&A.scrollIntoView({block:"nearest"})}function w(){let A=t.get("plan");u=A.places,o.innerHTML=A.drawing,Ht(o,"svg").
setAttribute("role","group"),l=u.map(([m])=>Ht(o,`[data-place="${m}"]`)),l.forEach((m,x)=>{m.setAttribute("role","button"),
m.setAttribute("aria-label",`${x+1} ${u[x][1]}`),m.addEventListener("click",()=>E(u[x][0],!0))}),d=String(t.get("view").
chosen),E(d,!1)}o.addEventListener("keydown",A=>{if(xt(A))return;let m=u.findIndex(([S])=>S===d),x=Math.min(6,u.length),
$=m;if(A.key==="ArrowRight")$=m+1;else if(A.key==="ArrowLeft")$=m-1;else if(A.key==="ArrowDown")$=m+x;else if(A.key==="A\
rrowUp")$=m-x;else if(A.key==="Home")$=0;else if(A.key==="End")$=u.length-1;else if(A.key!=="Enter"&&A.key!==" ")return;
A.preventDefault(),$>=0&&$<u.length&&E(u[$][0],!0)});function k(){let A=t.get("view");n.textContent=A.finding;let m=u.findIndex(
([S])=>S===A.chosen);r.textContent=`${m+1}  ${u[m][1]}`,a.textContent=A.seen;let{verdict:x,...$}=A.told;if(c.replaceChildren(),
x){let S=A.judged[A.chosen],M=S==="stop"==(x==="Stop here."),B=S==="stop"?"Stop here":"Fine as it is";c.append(s("p",{class:"\
tsh-verdict"},M?`✓ Yes: ${x}`:`✗ You said “${B}”. The course says: ${x}`),s("dl",{class:"ts-facts"},...Object.entries(
$).flatMap(([z,H])=>[s("dt",{},z),s("dd",{},H)])))}for(let S of g)S.setAttribute("aria-pressed",String(A.judged[A.chosen]===
S.dataset.verdict));for(let[S,M]of l.entries()){let B=A.judged[u[S][0]];M.setAttribute("aria-label",`${S+1} ${u[S][1]}${B?
`, judged: ${B==="stop"?"stop here":"fine as it is"}`:""}`);let z=M.querySelector(".tsh-tag");if(!B){z?.remove();continue}
z||(z=D("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),M.append(z)),z.textContent=B==="stop"?"■ \
stop":"○ well"}e.dataset.turn=A.chosen}let I=()=>{w(),k()};return v.follow("change:plan",I),v.follow("change:view",k),
I(),v.close}function Ws({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),c=new Map,u=n.sliders.map(([f,g,h,L,v,E])=>{let R=ot(f.replace("_","-")),w=s("output",{class:"\
tsl-figure",for:R}),k=s("input",{id:R,type:"range",min:L,max:v,step:E,oninput:()=>{I(),d.send({type:"set",name:f,value:Number(
k.value)})}}),I=()=>{w.textContent=`${k.value} ${h}`,k.setAttribute("aria-valuetext",`${k.value} ${h==="°"?"degrees":h}`)};
return c.set(f,{slider:k,say:I}),s("div",{class:"tsl-row"},s("label",{for:R},g),k,w)}),l=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>d.send({type:"set",name:"grip",value:l.value})},...bt(n.grips)),d=J({model:t,el:e},{kind:"r\
ig"});d.show(d.asks("Is this lift safe by hand?",{first:c.values().next().value?.slider,begin:"set the load"}),d.alert,o,
s("div",{class:"tsl-sliders",role:"group","aria-label":"The lift"},...u,s("div",{class:"tsl-row"},s("span",{},"Grip"),l)),
a,r,s("p",{class:"ts-keys"},"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));
function p(){let f=t.get("view");o.textContent=f.finding,r.textContent=f.sum,a.innerHTML=f.drawing;for(let[g,{slider:h,say:L}]of c)
document.activeElement!==h&&(h.value=f.sizes[g]),L();l.value=f.sizes.grip}return d.follow("change:view",p),p(),d.close}var be={x:90,y:120,perMm:20,radius:82,bevel:30};function eo(t){let e=D("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:o,perMm:r,radius:a}=be;e.append(D("rect",{x:n-60,y:o-56,width:r*t.top+90,height:112,class:"tsi-pa\
per"}),it(n-20,o,n+r*t.top+20,o,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let f=n+p*t.pitch*r;if(p%2){e.append(it(
f,o,f,o+18,"tsi-fine"));continue}let g=p/2;e.append(it(f,o,f,o-(g%5?18:27),g%5?"tsi-fine":"tsi-bold")),g%5===0&&e.append(
ct(f,o-33,String(g)))}let c=D("g",{});e.append(c,ct(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=D("path",{d:`M0 ${o-a+14}L${be.bevel} ${o-a}L${be.bevel} ${o+a}L0 ${o+a-14}\
Z`,class:"tsi-body"}),u=D("rect",{x:be.bevel,y:o-a,width:760,height:2*a,class:"tsi-body"}),l=D("rect",{x:0,y:o-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),d=D("g",{});return c.append(l,i,u,d),{node:e,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*r} 0)`),d.replaceChildren();for(let f=0;f<t.lines;f+=1){let g=f-p.line;g-=t.lines*Math.round(g/t.lines);let h=g/
t.lines*2*Math.PI;if(Math.abs(h)>1.15)continue;let L=o-(a-8)*Math.sin(h),v=f%5===0;d.append(it(0,L,v?26:16,L,v?"tsi-bold":
"tsi-fine")),v&&d.append(ct(36,L+5,String(f),"start"))}e.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function _s(t){
return Ct(t,(e,n,o)=>{let r=eo(e),a=gt("Thimble",{min:0,max:e.top,step:.01,value:o.open,words:()=>"turn in to the left, \
out to the right",onInput:l=>n({open:l})}),c=ht("Between the faces",e.between,o.between,l=>n({between:l,open:e.top})),i=X(
"Close until it rests",()=>n({open:-1})),u=e.hands.length?ht("Close it",e.hands,o.hand,l=>n({hand:l})):null;return{asks:"\
How thick is it?",first:i,begin:"close it until it rests",picture:r.node,controls:[Lt(c.row,u?.row),Lt(i,X("Open",()=>n(
{open:e.top}))),a.row],set(l,d){r.set(l),a.box.value=String(Math.max(0,l.mm)),c.box.value=d.between}}})}function Ks({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding",role:"status"}),r=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[u,l,d]of n.checks){let p=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${l}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:u})}},"Make"),f=Nt("it shows",!1);f.classList.add("t\
sk-shown"),a.set(u,{button:p,shown:f}),r.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},l),Nt("min",!0,
`${d}`),Nt("",!1,p),f))}let c=J({model:t,el:e},{kind:"rig"});c.show(c.asks("What does each check show on your unit?",{first:a.
values().next().value?.button,begin:"make a check",who:"Checks are not saved; make them again after reopening."}),c.alert,
o,we("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],r));function i(){let u=t.get("view");o.textContent=
u.finding;for(let[l,{button:d,shown:p}]of a){let f=u.shown[l];d.setAttribute("aria-disabled",f?"true":"false"),d.classList.
toggle("ts-off",!!f),d.textContent=f?"Made":"Make",p.textContent=f?`${f[0]?"✓":"✗"} ${f[1]}`:"",p.classList.toggle("\
tsk-failed",!!f&&!f[0])}}return c.follow("change:view",i),i(),c.close}function so(){let t=D("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=D("g"),n=D("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(D("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,D("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let o=c=>(-135+270*c)*Math.PI/180,r="";function a([c,i,u]){e.replaceChildren();for(let l=0;l*i<=c+
1e-9;l+=1){let d=o(l*i/c),p=l%u===0,f=g=>[110+g*Math.sin(d),104-g*Math.cos(d)];if(e.append(it(...f(p?72:79),...f(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&l%(2*u)===0){let[g,h]=f(58);e.append(ct(g,h+4.5,String(Number((l*i).toFixed(2)))))}}e.
append(ct(110,170,"kN"))}return{node:t,set(c,i,u){String(c)!==r&&(r=String(c),a(c));let l=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*l})`),t.setAttribute("aria-label",u)}}}function Fs(t){return Ct(t,(e,n,o)=>{
let r=so(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},r.node)),u=gt("Push",{min:0,max:100,step:1,value:o.travel,onInput:f=>n(
{travel:f}),words:f=>f>=100?"at the shoulder":`${f} % of the way`}),l=[u.row],d=null;if(!e.readingsOnly){let f=ht("Part",
e.places,o.place,v=>n({place:v,travel:0}));d=ht("Driver presses on",e.drivers,o.driver,v=>n({driver:v,travel:0}));let g=ht(
"Seat",e.seats,o.seat,v=>n({seat:v})),h=gt("Pair",{min:0,max:100,step:1,value:o.grip,onInput:v=>n({grip:v}),words:v=>v===
0?"loosest of the fit":v===100?"tightest of the fit":`${v} % from loosest to tightest`}),L=gt("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:o.warmth,onInput:v=>n({warmth:v}),words:v=>`${v} °C`});l.unshift(Lt(f.row,d.row,g.row),
h.row,L.row)}let p=s("dl",{class:"ts-facts"});return e.readingsOnly||l.push(p),{asks:"What force does it take, and where\
 does it stop?",first:u.box,begin:"push the part",side:!e.readingsOnly,picture:i,controls:l,set(f,g){f.section!==c&&(c=f.
section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*g.travel/100} 0\
)`),r.set(f.gauge,f.force,f.words),Number(u.box.value)!==g.travel&&document.activeElement!==u.box&&u.set(g.travel),d&&(d.
row.hidden=!f.drives),f.facts&&p.replaceChildren(...Et(f.facts))}}})}function Us({model:t,el:e}){let n=t.get("steps"),o=new Map(n),r=s("div",{class:"ts-scroll tsf-near",tabindex:"0",role:"r\
egion","aria-label":"The rules around the chosen step"}),a=s("p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts\
-sentences"}),i=s("select",{class:"ts-box ts-before","aria-label":"Chosen step",onchange:()=>d(i.value)},...bt(n.map(([g,
h],L)=>[g,`${L+1}  ${h}`]))),u=J({model:t,el:e},{kind:"rig",lost(){i.disabled=!0}});u.show(u.asks("What comes before thi\
s step, and what after it?",{first:i,begin:"choose a step, or press one in the picture",who:""}),u.alert,s("p",{class:"t\
s-hint"},t.get("finding")),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",i)),a,r,s("details",{class:"ts-\
keys"},s("summary",{},"In words, with reasons"),c));let l=!1,d=g=>u.send({type:"choose",step:g}),p=g=>{let h=wt(g,"[data\
-step]")?.dataset.step;h&&(l=!0,d(h))};r.addEventListener("click",p),r.addEventListener("keydown",g=>{g.key!=="Enter"&&g.
key!==" "||wt(g,"[data-step]")&&(g.preventDefault(),p(g))});function f(){let g=t.get("near");a.textContent=g.words,i.value=
g.step,r.innerHTML=g.figure,r.querySelector("svg")?.setAttribute("role","group");let h=Z(r,"[data-step]");for(let L of h)
L.setAttribute("role","button"),L.setAttribute("tabindex","0"),L.setAttribute("aria-label",o.get(String(L.dataset.step))??
"");c.replaceChildren(...Bt(g.sentences)),l&&(h[0]??i).focus({preventScroll:!0}),l=!1}return u.follow("change:near",f),f(),
u.close}function no(){let t=D("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=D("g",{}),n=D("g",{});return e.append(
D("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),it(150,164,150,98,"tsi-bold"),D("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(it(150,86,150,40,"tsi-plunger"),D("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,it(50,164,
250,164,"tsg-centre"),it(150,250,150,80,"tsg-centre"),n,ct(8,252,"not to scale","start")),{node:t,set(o,r,a){e.setAttribute(
"transform",`rotate(${o} 150 164)`),n.setAttribute("transform",`rotate(${r} 150 88)`),t.setAttribute("aria-label",a)}}}function qs(t){
return Ct(t,(e,n,o)=>{let r=zt(),a=no(),c=gt("Turn the shaft by hand",{min:0,max:360,step:5,value:o.angle,words:l=>`turn\
ed by ${l}°`,onInput:l=>n({angle:l})}),i=ht("Plunger",e.pressed,o.pressed,l=>n({pressed:l})),u=ht("Stand",e.tilts,o.tilt,
l=>n({tilt:l}));return{asks:"How far does the shaft run out?",first:c.box,begin:"turn the shaft",picture:s("div",{class:"\
tsg-beside"},a.node,s("div",{class:"tsg-gauge"},r.node,s("div",{},"One mark 0.01 mm, one turn 1 mm"))),controls:[Lt(i.row,
u.row),c.row],set(l,d){r.set(l.mm,l.words),a.set(l.state.angle,Number(l.state.tilt),`Shaft end on, turned by ${l.state.angle}\
°; the plunger stands ${l.state.tilt}° off square. Not to scale.`),c.set(d.angle)}}})}var Gs=(t,e)=>(t+e)%7<2,Ys=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,ke=()=>!1,ve=t=>(e,n)=>n%t===0,oo={"":ke,dots:(t,e)=>t%6<2&&e%
6<2,rising:Gs,cross:Ys,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":ke,"lines-2":ve(14),"lines-3":ve(8),"lines-4":ve(5),"lines-5":ve(
3)};function ro(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var zs=([t,e,n],o)=>(o<<24|n<<16|e<<
8|t)>>>0;function Xs(t,[e,n],o,r,a){let c=n*4,i=new Uint32Array(c*e*4),u=new Map(o.map(([p,,f,g])=>{let h=f?zs(ro(f),200):
0;return[p,{ground:h,hatch:oo[g]??ke}]})),l={ground:0,hatch:ke},d=zs(r,190);for(let p=0;p<e;p+=1){let f=(e-1-p)*4;for(let g=0;g<
n;g+=1){let h=t[p*n+g];if(!h)continue;let{ground:L,hatch:v}=u.get(h&15)??l,E=a&&(h&16)!==0,R=a&&(h&32)!==0;for(let w=f;w<
f+4;w+=1)for(let k=g*4;k<(g+1)*4;k+=1){let I=v(k,w)||E&&Gs(k,w)||R&&Ys(k,w);i[w*c+k]=I?d:L}}}return i}var io=600;function Js(t,e,n,o,r,a){let[c,i]=n;t.width=i*4,t.height=c*4;let u=new Uint8ClampedArray(Xs(e,n,o,r,a).buffer),
l=new ImageData(u,t.width,t.height);t.getContext("2d")?.putImageData(l,0,0)}function co(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return Js(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function Zs({model:t,el:e}){let n=t.get("face"),o=t.get("looks"),r=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),c=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),u=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),l=J({model:t,el:e},{kind:"rig",lost(){f.setDisabled(!0),Qt(e)}}),d=null,p=C=>{d=ot("turn"),l.send({...C,turn:d})},
f=ie({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(C){f.
drawing.strokes(C),p({type:"lay",entries:C})},onRemove:C=>p({type:"remove",at:C}),onClear:()=>p({type:"clear"})}),g=X("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),h=s("input",{type:"range",id:ot("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),L=s("output",{for:h.id}),v=yt({id:ot("slide"),onchange:()=>p({type:"slide",by:v.value})},
t.get("view").slides),E=null;h.addEventListener("input",()=>{L.textContent=`${h.value} µm`;let C={type:"flat",um:Number(
h.value)};d===null?p(C):E=C});let{box:R,unit:w}=f.drawing;f.drawing.land.classList.add("tsp-clear"),f.drawing.frame.prepend(
u);let k=(...C)=>s("span",{class:"ts-pair"},...C);l.show(l.asks("Does this film close the gap?",{first:g,begin:"press Cl\
ose the face"}),l.alert,r,Tt([f.drawing.frame,i],[s("div",{class:"ts-tools"},g,k(s("label",{for:v.id},"the other face is"),
v)),s("div",{class:"ts-tools"},a,X("1 minute passes",()=>p({type:"time",by:1})),X("5 minutes pass",()=>p({type:"time",by:5}))),
s("div",{class:"ts-tools"},k(s("label",{for:h.id},"faces out of flat by"),h,L)),f.tools,c,s("details",{class:"ts-keys"},
s("summary",{},"Passes laid"),f.empty,f.list)]));function I(){let C=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return C?
C.slice(0,3).map(Number):[0,0,0]}let A="",m="";function x(){let C=t.get("view"),N=o[C.closed?"closed":"film"],b=t.get("g\
rid"),P=b instanceof DataView?new Uint8Array(b.buffer,b.byteOffset,b.byteLength):new Uint8Array(b);Js(u,P,C.shape,N,I(),
!C.closed);let[U,K]=C.shape,[st,pt]=[C.corner[0]-C.pitch/2,C.corner[1]-C.pitch/2],_=(q,G)=>`${(100*q/G).toFixed(3)}%`;u.
style.left=_(st-R.left,R.width),u.style.width=_(K*C.pitch,R.width),u.style.top=_(R.high-pt-U*C.pitch,R.height),u.style.height=
_(U*C.pitch,R.height);let V=new Set(P.map(q=>C.closed?q:q&15)),y=N.filter(([q])=>V.has(q)),W=`${y.map(([,q])=>q)} ${I()}`;
W!==A&&(A=W,i.replaceChildren(...y.map(q=>co(q,I()))))}let $=D("g");f.drawing.over.append($);let S=([C,N])=>[C-R.left,R.
high-N];function M([C,N]){let b=N.map(P=>{let[U,K]=S(P);return`M${U.toFixed(1)} ${K.toFixed(1)}h0.01`});return D("path",
{d:b.join(""),class:"tsp-lump","stroke-width":2*C})}function B(C){let[N,b]=S(C[C.length-1]),P=`M${N-1.3*w} ${b-w}h${2.6*
w}l${-1.3*w} ${2.2*w}Z`;return[D("path",{d:f.drawing.path(C),class:"tsp-way","stroke-width":w}),D("path",{d:P,class:"tsp\
-out"})]}function z(){let C=t.get("view");if(d!==null&&C.turn!==d)return;d=null;let N=JSON.stringify([C.entries,C.notes]);
if(N!==m&&f.show(C.entries,C.notes),m=N,f.drawing.strokes([]),x(),$.replaceChildren(...C.lumps.map(M),...C.leaks.flatMap(
B)),f.drawing.svg.classList.toggle("tsp-shut",C.closed),f.drawing.svg.classList.toggle("tsp-clean",C.closed||C.clean),r.
textContent=C.finding,v.value=C.slide,a.textContent=`minute ${C.minute}`,g.textContent=C.closed?"Lift the face off again":
"Close the face",E===null&&(h.value=String(C.flat),L.textContent=`${C.flat} µm`),c.replaceChildren(...Et(C.facts)),E===
null)return;let b=E;E=null,p(b)}l.follow("change:view",z),l.follow("msg:custom",C=>{C.type==="trouble"&&(d=null,f.drawing.
strokes([]))});let H=new MutationObserver(()=>setTimeout(x,io));return H.observe(document.body,{attributes:!0,attributeFilter:[
"data-jp-theme-light"]}),z(),()=>{l.close(),H.disconnect()}}function Qs(t){return Ct(t,(e,n,o)=>{let r=zt(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},r.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),u=e.places.map(([d,p])=>[d,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:d})},p)]),l=[s("p",{class:"ts-hint"},e.rule),Lt(s("span",{},"Set the gauge down at"),...u.map(([,d])=>d))];
return e.readingsOnly||(l.push(Lt(ht("Lip looks towards",e.sides,o.lip,d=>n({lip:d})).row,ht("Lip is",e.greases,o.grease,
d=>n({grease:d})).row,e.sleeves.length?ht("It went",e.sleeves,o.sleeve,d=>n({sleeve:d})).row:"")),l.push(gt("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:o.depth,words:d=>`${d.toFixed(2)} mm${d<0?", proud":""}`,onInput:d=>n({
depth:d})}).row,gt("Lean",{min:0,max:e.mostLean,step:.02,value:o.lean,words:d=>d?`${d.toFixed(2)} mm across`:"square",onInput:d=>n(
{lean:d})}).row)),{asks:"Does the seal sit square and deep enough?",first:u[0][1],begin:"set the gauge down",side:!e.readingsOnly,
picture:i,controls:l,set(d,p){d.section!==c&&(c=d.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.setAttribute("t\
ransform",d.placed),r.set(d.dial,d.words);for(let[f,g]of u)g.setAttribute("aria-pressed",String(f===p.place))}}})}function tn({model:t,el:e}){let n=t.get("about"),o=t.get("shown").state,r=zt(),a=n.readingsOnly?null:xs(n),c=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),u=qt((A,m)=>E.send({type:"set",state:A,turn:m})),l=A=>{o={...o,...A},u.ask(o)},
d=(A,m)=>{let x=[...o.shims];x[A]=m,l({shims:x.filter(Boolean),turns:0})},p=(A,m,x)=>X(A,m,{"aria-pressed":x}),f=X("Turn\
 the shaft ten times",()=>l({turns:o.turns+10})),g=p("Pull the shaft away",()=>l({side:"away"}),"true"),h=p("Push it to \
the dial",()=>l({side:"towards"}),"false"),L=ht("Plunger",n.plungers,o.plunger,A=>l({plunger:A})),v=[s("div",{class:"ts-\
tools"},n.rolls?f:null,L.row,g,h)];if(!n.readingsOnly){let A=ht("Shim",n.shelf,o.shims[0],x=>d(0,x)),m=n.second?ht("and",
[["","no second shim"],...n.shelf],o.shims[1]??"",x=>d(1,x)):null;v.unshift(s("div",{class:"ts-tools"},A.row,m?.row)),v.
push(gt("Warm the unit",{min:0,max:100,step:1,value:o.warmth,onInput:x=>l({warmth:x}),words:x=>x?`case ${Math.round(n.caseRise*
x/100)} K warmer`:"cold, as at the bench"}).row)}let E=J({model:t,el:e},{kind:"rig"}),R=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});R.innerHTML=n.section;let w=[n.readingsOnly?E.asks("How far does the shaft\
 move?",{first:n.rolls?f:h,begin:n.rolls?"turn the shaft":"push the shaft",who:"Take your readings here; write them in t\
he form."}):E.asks("Which shim gives the setting that you want?",{first:v[0].querySelector("select"),begin:"choose a shi\
m"}),E.alert,n.readingsOnly&&R,s("div",{class:"tsg-beside"},!n.readingsOnly&&R,s("div",{class:"tsg-gauge"},r.node,s("div",
{},"Dial at the shaft's right end, one mark 0.01 mm")),n.readingsOnly&&s("div",{class:"tsg-side"},...v,c)),...n.readingsOnly?
[]:[...v,c],a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg\
-wide",tabindex:"0",role:"group","aria-label":"Axis of settings"},a.node)),i];E.show(...w.filter(Boolean));function k(){
let A=t.get("shown");u.waiting||(o=A.state),r.set(A.dial,A.dialWords),g.setAttribute("aria-pressed",String(A.state.side===
"away")),h.setAttribute("aria-pressed",String(A.state.side==="towards")),c.textContent=A.finding,a&&(a.set(A.cold,A.warm,
A.words.join(" ")),i.replaceChildren(...A.words.map(m=>s("p",{},m)))),u.answered(A.turn)}let I=()=>u.free();return E.follow(
"change:shown",k),E.follow("msg:custom",I),k(),E.close}function en(t){return Ct(t,(e,n,o)=>{let r=s("div",{tabindex:"0",role:"group","aria-label":e.name}),a="",c=e.pickers.map(
({key:d,label:p,options:f})=>ht(p,f,o[d],g=>n({[d]:g}))),i=e.sliders.map(({key:d,label:p,min:f,max:g,step:h,unit:L,places:v})=>gt(
p,{min:f,max:g,step:h,value:o[d],words:E=>`${E.toFixed(v)} ${L}`,onInput:E=>n({[d]:E})})),u=c.map(({row:d})=>d),l=u.length>
2?u:u.length?[Lt(...u)]:[];return{asks:e.asks,first:[...c,...i][0].box,begin:c.length?"choose from the first list":"move\
 the first slider",picture:r,controls:[...l,...i.map(({row:d})=>d)],set(d){d.drawing!==a&&(a=d.drawing,r.innerHTML=a)}}})}function sn({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),c=s("dl",{class:"ts-facts"}),i=null,u=null,l=(m,x)=>{u={...u,[m]:x},i===null&&d()};function d(){
i=ot("choice"),k.send({type:"choose",chosen:u,turn:i}),u=null}let p=s("div",{class:"tsj-settings"}),f=(m,x,$)=>{let S=ot(
"set");return x.id=S,p.append(s("label",{for:S},m),s("span",{class:"tsj-slide"},x,$)),x},g=(m,x,$)=>f(x,s("select",{class:"\
ts-box",onchange:S=>l(m,S.target.value)},...bt($.map(S=>typeof S=="string"?[S,S]:S)))),h=(m,x,$)=>f(x,s("input",{type:"r\
ange",oninput:S=>l(m,Number(S.target.value))}),$),L={group:g("group","Bolt of the unit",n.groups),thread:g("thread","Thr\
ead",n.threads),strength:g("strength","Strength class",n.classes),state:g("state","State of the thread",n.states),tool:g(
"tool","Tool",n.tools)},v=s("output",{class:"tsj-figure"}),E=h("torque_nm","Torque",v),R=s("output",{class:"tsj-figure"}),
w=h("engagement_mm","Thread that meets",R),k=J({model:t,el:e},{kind:"rig"});k.show(k.asks("What gives way first?",{first:E,
begin:"set the torque"}),k.alert,o,r,s("div",{class:"tsj-bench"},p,a),c);let I=(m,x,$,S,M,B)=>{Ot(m,{min:x,max:$,step:S}),
i===null&&(m.value=String(M)),m.setAttribute("aria-valuetext",B)};function A(){let m=t.get("view");if(i!==null&&m.turn!==
i)return;i=null,u!==null&&d();let{chosen:x}=m;o.textContent=m.finding,r.innerHTML=m.band,a.innerHTML=m.section,c.replaceChildren(
...Et(m.facts));for(let[$,S]of Object.entries(L))S.value=x[$];I(E,1,m.topTorque,.5,x.torque_nm,m.torqueText),v.textContent=
m.torqueText,I(w,m.lowEngagement,m.topEngagement,.5,x.engagement_mm,m.engagementText),R.textContent=m.engagementText}return k.
follow("change:view",A),A(),k.close}function nn({model:t,el:e}){let n=Ut(t.get("picture")),o=J({model:t,el:e},{kind:"rig"});return o.show(o.asks("Where does\
 each part lie?",{first:n.choose,begin:"choose a part",who:""}),o.alert,s("p",{class:"ts-finding"},t.get("finding")),...n.
nodes),o.close}function Xt(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function De(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var Be=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function on(t,{stages:e,stage:n,step:o,labels:r,isOpen:a}){let c=Xt(e,
n),i=c.indexOf(String(o));if(t==="ArrowLeft"||t==="ArrowRight"){let l=e.map(([f])=>f),d=t==="ArrowLeft"?-1:1,p=Xt(e,l[(l.
indexOf(n)+d+l.length)%l.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let u=t.toLowerCase();return Be(c,i).find(l=>r[l].toLowerCase().startsWith(u))}function rn({stages:t,stage:e,step:n,isOpen:o}){
let r=Xt(t,e),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(r.at(-1)));return Be(r,r.indexOf(String(n))).find(o)??Be(a,c).find(
o)}function an({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding"}),r=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>st()},
...bt(n.stages.map(([O,Y])=>[O,Y]))),c=et(n.marked?"Next open step":"Next ready step",()=>C("next"));c.classList.add("ts\
-next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this sta\
ge",onkeydown:O=>b(O)}),u=s("details",{class:"ts-keys"},s("summary",{},"Keys"),"Up and down walk through the steps, left\
 and right change the stage, Enter takes a step in hand; Enter again does it."),l=s("div",{class:"ts-hand",role:"group",
"aria-label":"Step in hand",onkeydown:O=>{O.key!=="Enter"||!O.target.matches("input[type=radio], .ts-number-box")||(O.preventDefault(),
t.get("hand").stands?U():G())}}),d=s("div",{class:"ts-scroll ts-fit"}),p=s("dl",{class:"ts-facts"}),f=s("ul",{class:"ts-\
sentences"}),g=s("p",{class:"ts-prompt"},"Wrong so far"),h=s("select",{class:"ts-box ts-before","aria-label":"A step tha\
t stands"}),L=et("Take out again",()=>{h.value&&m({type:"out",step:h.value},"hand")}),v=et("Put the tools down",()=>m({type:"\
over"},"told"));v.classList.add("ts-over");let E=s("div",{}),R=s("p",{class:"ts-status"}),w=s("details",{ontoggle:()=>{w.
open!==!!t.get("view").record&&m({type:"record",open:w.open})}},s("summary",{},"Build record"),E),k=J({model:t,el:e},{kind:"\
rig"});k.show(k.asks("Which step comes next, and what does it need?",{first:c,begin:"press the lit button",who:n.who}),k.
alert,o,R,r,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"ts-tools"},a,c),i),s("div",{},l,s(
"div",{class:"ts-tools"},s("span",{class:"ts-pair"},h,L),v))),p,g,f,w,s("details",{},s("summary",{},"How far each stage \
is"),d),u);let I=0,A=null;function m(O,Y=null){I+=1,A=Y&&{turn:I,focus:Y},e.setAttribute("aria-busy","true"),k.send({...O,
turn:I})}let x="",$=null,S="next",M=O=>!t.get("view").done.includes(O),B=()=>Z(i,"[data-step]"),z=O=>B().find(Y=>Y.dataset.
step===O)?.focus(),H=()=>({stages:n.stages,stage:a.value,step:$,isOpen:M});function C(O,Y){S=O,m(O==="list"?{type:"take",
step:Y}:{type:"next"},"hand")}function N(O){a.value=De(n.stages,O)??a.value,$=O,st(),z(O)}function b(O){if(xt(O))return;
let Y=on(O.key,{...H(),labels:n.labels});Y&&(O.preventDefault(),N(Y))}function P(){let O=rn(H());O?S==="next"?c.focus():
N(O):v.focus()}function U(){let O=t.get("view").done.length>=Object.keys(n.labels).length;S==="next"&&!O?C("next"):P()}function K(O){
let{done:Y,ready:rt}=t.get("view");return Y.includes(O)?{sign:"✓",word:"done"}:rt.includes(O)?{sign:"▸",word:"ready"}:
{sign:"○",word:n.marked?"open":"waits"}}function st(){let O=Xt(n.stages,a.value);($===null||!O.includes($))&&($=O.find(
M)??O[0]);let Y=t.get("hand").step,rt=JSON.stringify([a.value,O.map(K),Y]);if(rt===x){for(let mt of B())mt.tabIndex=mt.dataset.
step===$?0:-1;return}x=rt;let ft=B().find(mt=>mt===document.activeElement)?.dataset.step;i.replaceChildren(...O.map(mt=>pt(
mt,Y))),ft&&z(ft)}function pt(O,Y){let{sign:rt,word:ft}=K(O);return s("button",{type:"button",class:`ts-button ts-builds\
tep ts-buildstep-${ft}`,"data-step":O,tabindex:O===$?"0":"-1","aria-current":O===Y?"step":!1,"aria-label":`${n.labels[O]}\
: ${ft}`,onclick:()=>{$=O,C("list",O)}},At(rt),n.labels[O])}let _="",V=new Map;function y(O){let Y=Wt(O),rt=s("p",{class:"\
ts-read",id:Y.read,role:"status"}),ft=0,mt=j=>{m({type:"set",name:O.name,value:j}),ft=I},tt=Pt(O).make(O,Y,mt,()=>{}),T=_t(
O,Y,null);return T.append(tt.element,rt),T.dataset.field=O.name,{element:T,flush:()=>tt.flush?.(),show(j={},Q){if(Q<ft)return;
tt.show(j);let lt=j.read?`read as ${j.read}`:"";rt.textContent=j.error?`▲ Look again: ${j.error}`:lt}}}let W=O=>s("dl",
{class:"ts-facts"},...Et(O));function q(){let O=t.get("hand"),Y=JSON.stringify(O);if(Y===_)return;if(_=Y,l.dataset.stands=
String(!!O.stands),V=new Map((O.fields??[]).map(tt=>[tt.name,y(tt)])),!O.step){l.replaceChildren(s("p",{class:"ts-hint"},
"No step in hand. Choose one from the list, or press the button above it."));return}let rt=et(`Do it: ${O.label}`,G);rt.
classList.add("ts-do");let ft=O.stands?[et("Go on",U),et("Take it out again",()=>m({type:"out",step:O.step},"hand"))]:[rt];
l.replaceChildren(s("p",{class:"ts-prompt ts-hand-name",tabindex:"-1"},O.label),...O.plain.map(tt=>s("p",{class:"ts-hint"},
tt)),...O.cautions.map(tt=>s("p",{class:"ts-caution"},s("b",{},"Take care: "),tt)),...O.read.length?[s("p",{class:"ts-pr\
ompt"},"Read at the bench"),W(O.read)]:[],...O.card.length?[W(O.card)]:[],...[...V.values()].map(tt=>tt.element),s("div",
{class:"ts-tools"},...ft));let mt=De(n.stages,O.step);mt&&([a.value,$]=[mt,O.step])}function G(){for(let O of V.values())
O.flush();m({type:"do"},"after")}function nt(){let O=t.get("view").asked_back,Y=Z(l,"[data-field]").find(mt=>mt.dataset.
field===O),rt=Y&&Z(Y,"input:not(:disabled), select, button"),ft=Z(l,".ts-field input:not(:disabled), .ts-field select, .\
ts-field button, .ts-do, .ts-tools button");return rt?.[0]??ft[0]}function F(){let O=t.get("view"),Y=O.told;o.textContent=
O.finding,R.textContent=O.status,R.hidden=!O.status,r.textContent!==Y.join("")&&r.replaceChildren(...Y.map(ft=>s("p",{},
ft))),q(),st();for(let[ft,mt]of V)mt.show(O.states[ft],O.turn);if(d.dataset.shown!==O.figure&&(d.innerHTML=O.figure,d.dataset.
shown=O.figure),p.replaceChildren(...Et(O.facts)),f.replaceChildren(...Bt(O.faults.map(([,ft])=>ft))),g.hidden=f.hidden=
!O.faults.length,dt(O.done),E.innerHTML=O.record,w.open=!!O.record,e.setAttribute("aria-busy",String(O.turn<I)),!A||O.turn<
A.turn)return;let{focus:rt}=A;A=null,rt==="told"?r.focus():rt==="after"&&!t.get("hand").step?P():(nt()??c).focus()}function dt(O){
if(h.disabled=L.disabled=!O.length,h.dataset.done===O.join(" "))return;h.dataset.done=O.join(" ");let Y=[...O].reverse();
h.replaceChildren(...bt(Y.map(rt=>[rt,n.labels[rt]])))}return k.follow("change:view",F),F(),k.close}function lo(t){let e=D("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[o,r]=[210,128],a=it(
o,r,o,r,"tsi-adapter"),c=D("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=it(o,r+74,o,r+74,"tsi-arm"),u=ct(o,r+94,"");return e.
append(it(o,r,o+440,r,"tsi-lever"),a,c,D("circle",{cx:o,cy:r,r:7,class:"tsg-hub"}),ct(o+440,r-20,"hand, middle of the gr\
ip","end"),ct(o+20,r-20,"square drive","start"),it(o+440,r+10,o+440,r+84,"tsg-centre"),i,u,ct(8,242,"lengths to scale","\
start")),{node:e,set(l){let d=l.state.angle/180*Math.PI,p=o-l.state.reach*n*Math.cos(d),f=r-l.state.reach*n*Math.sin(d);
Ot(a,{x2:p,y2:f}),Ot(c,{cx:p,cy:f}),Ot(i,{x1:p,x2:o+440}),Ot(u,{x:(p+o+440)/2}),u.textContent="the lever from bolt to ha\
nd, along the wrench",e.setAttribute("aria-label",`${t.name}. ${l.words}`)}}}function cn(t){return Ct(t,(e,n,o)=>{let r=lo(
e),a=(i,u,l,d,p,f)=>gt(i,{min:l,max:d,step:p,value:o[u],words:g=>`${g} ${f}`,onInput:g=>n({[u]:g})}),c={setting:a("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{asks:"What does the bolt get?",first:c.reach.box,begin:"\
lengthen the adapter",picture:r.node,controls:Object.values(c).map(i=>i.row),set(i,u){r.set(i);for(let[l,d]of Object.entries(
c))d.set(u[l])}}})}var ye=t=>typeof t=="string"?t:t.text;function ln(t,e,n){let o=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
r=a=>ye(a.cells[e]??"").trim();return[...t].sort((a,c)=>{let[i,u]=[r(a),r(c)];if(!i||!u)return+!i-+!u;let[l,d]=[Number.parseFloat(
i),Number.parseFloat(u)],p=Number.isNaN(l)||Number.isNaN(d)||l===d?o.compare(i,u):l-d;return n?-p:p})}function Vt(t,e){let n=document.getElementById("jupyter-config-data"),o="/";try{o=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${o}${t}/${e.split("/").map(encodeURIComponent).join("/")}`}function uo(t){let e="";for(let n=0;n<t.length;n+=32768)e+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(e)}
async function dn(t,e,n){let o=0;do{let r=new Uint8Array(await n.slice(o,o+524288).arrayBuffer()),a=o===0;o+=524288;let c=o>=
n.size;t.send({type:"file",field:e,name:n.name,data:uo(r),first:a,last:c})}while(o<n.size)}var po=400;function un({model:t,el:e}){let n=J({model:t,el:e},{kind:"desk"}),o=s("p",{class:"ts-said",role:"status"}),r=s(
"div",{class:"ts-desk-body"}),a=s("div",{class:"ts-desk-here","aria-hidden":"true"}),c=s("div",{class:"ts-busy"}),i=s("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),u=t.get("cohort"),l=s("input",{id:ot("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:l.value})});l.value=t.get("by"),n.show(s("div",{class:"\
ts-desk-top"},s("b",{},It([u.name,u.college]).join(", ")),s("span",{class:"ts-pair"},s("label",{for:l.id},"At the desk (\
your name, for the trail)"),l)),u.invented?s("p",{class:"ts-hint"},u.invented):null,i,c,n.alert,o,r);let d=new Map,p=new Map,
f=new Map,g=new Map,h=!1,L="",v="",E=!1,R=()=>h||Object.keys(t.get("busy")).length>0,w=(y,W={})=>{R()||n.isLost()||(y!==
"look"&&(o.textContent="",n.alert.textContent="",A()),t.send({type:y,...W}))},k=()=>Z(e,"[data-key]");function I(){let y=k().
find(W=>W.dataset.key===L);return y&&r.contains(y)?y.closest("form, section"):null}function A(){let y=I();y?y.append(c,a):
(i.after(c),a.remove());let[W,q]=[o.textContent,n.alert.textContent];a.replaceChildren(...It([W&&s("p",{class:"ts-told"},
W),q&&s("p",{class:"ts-trouble"},q)]));for(let G of[o,n.alert])G.classList.toggle("ts-hidden",!!y);return y}function m(){
let y=A(),W=[n.alert,o].find(G=>G.textContent);(y?a.childElementCount?a:null:W)?.scrollIntoView({block:"nearest"})}async function x(y,W,q=""){
if(R()||n.isLost())return;L=W,E=!0,h=!0;try{for(let[nt,F]of g){let[dt]=F.files??[];dt&&await dn(t,nt,dt)}}finally{h=!1}let G=[
...p].map(([nt,F])=>[nt,[...F]]);w("do",{act:y,of:q,typed:Object.fromEntries(d),ticked:Object.fromEntries(G)})}function $(y){
let{name:W,of:q}=y,G=ot("field"),nt=y.hint?s("span",{class:"ts-hint",id:`${G}-hint`},y.hint):null,F={id:G,"data-key":`fi\
eld:${W}`,"aria-describedby":nt?.id},dt=s("label",{for:G},y.label);if(!d.has(W)&&q!=="file"&&d.set(W,q==="tick"?y.value===
"yes":y.value),q==="file"){let rt=g.get(W)??s("input",{type:"file",class:"ts-file"});for(let[ft,mt]of Object.entries(F))
mt&&rt.setAttribute(ft,mt);return g.set(W,rt),s("div",{class:"ts-desk-field"},dt,rt,nt)}if(q==="tick"){let Y=s("input",{
type:"checkbox",...F});Y.checked=d.get(W)===!0,Y.addEventListener("change",()=>d.set(W,Y.checked));let rt=s("label",{class:"\
ts-option",for:G},Y,y.label);return s("div",{class:"ts-desk-field"},rt,nt)}let O=q==="choice"?yt(F,y.options):q==="long"?
s("textarea",{class:"ts-box",rows:"3",maxlength:"2000",...F}):s("input",{class:"ts-box",autocomplete:"off",maxlength:"40\
0",...F});return O.value=String(d.get(W)??""),q==="choice"&&!y.options.some(([Y])=>Y===d.get(W))&&(O.value=y.options[0]?.[0]??
"",d.set(W,O.value)),O.addEventListener("input",()=>d.set(W,O.value)),s("div",{class:"ts-desk-field"},dt,O,nt)}function S(y){
let W=ot("form"),q=s("div",{class:"ts-doing"}),G=()=>{q.replaceChildren(...y.acts.map(F=>X(F.label,()=>F.sure?nt(F):x(F.
id,`act:${F.id}`),{class:F.first?"ts-button ts-first":"ts-button","data-key":`act:${F.id}`})))},nt=F=>{let dt=ot("sure"),
O=s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":dt},s("p",{id:dt},F.sure),s("div",{class:"ts-d\
oing"},X(`Yes: ${F.label}`,()=>x(F.id,`act:${F.id}`),{"data-key":`act:${F.id}`}),X("No, leave it",()=>{G(),Z(q,`[data-ke\
y="act:${F.id}"]`)[0]?.focus()})));q.replaceChildren(O),O.focus()};return G(),s("form",{class:"ts-desk-form","aria-label\
ledby":y.title?W:null,onsubmit:F=>F.preventDefault()},y.title?s("h3",{id:W},y.title):null,y.hint?s("p",{class:"ts-hint"},
y.hint):null,y.fields.length?s("div",{class:"ts-desk-fields"},...y.fields.map($)):null,y.acts.length?q:null)}function M(y,W){
if(typeof y=="string")return y;let q=y.act?X(y.text,()=>x(y.act,W,y.of),{class:"ts-cell","aria-label":y.label||null,"dat\
a-key":W}):y.text;return s("span",{},y.shape?At(y.shape):null,q)}function B(y){let W=ot("table"),q=s("h3",{id:W},y.title);
if(!y.rows.length)return s("section",{},q,s("p",{},y.empty));let G=p.get(y.id)??new Set,nt=new Set(y.rows.map(({key:tt})=>tt));
for(let tt of G)nt.has(tt)||G.delete(tt);p.set(y.id,G);let F=s("tr",{}),dt=s("tbody",{}),O=y.pick?s("input",{type:"check\
box","aria-label":"all","data-key":`all:${y.id}`}):null,Y=()=>{O&&(O.checked=G.size===y.rows.length,O.indeterminate=G.size>
0&&!O.checked)},rt=()=>{let tt=f.get(y.id),T=tt?ln(y.rows,tt.column,tt.down):y.rows;dt.replaceChildren(...T.map(mt)),F.replaceChildren(
...O?[s("th",{class:"ts-tick"},O)]:[],...y.columns.map(ft)),Y()},ft=(tt,T)=>{let j=f.get(y.id),Q=j?.column===T,lt=Q?j.down?
"descending":"ascending":null,kt=()=>{f.set(y.id,{column:T,down:Q&&!j.down}),rt(),Z(F,`[data-key="${ut}"]`)[0]?.focus()};
if(!tt)return s("td");let ut=`sort:${y.id}:${T}`;return s("th",{scope:"col","aria-sort":lt,class:y.numbers.includes(T)?"\
ts-figure":null},X(tt,kt,{class:"ts-sort","data-key":ut}),Q?At(j.down?"▼":"▲"):null)},mt=tt=>{let T=y.pick?s("input",
{type:"checkbox","aria-label":tt.cells.slice(0,3).map(ye).join(" "),"data-key":`row:${y.id}:${tt.key}`}):null;return T&&
(T.checked=G.has(tt.key),T.addEventListener("change",()=>{T.checked?G.add(tt.key):G.delete(tt.key),Y()})),s("tr",{},T?s(
"td",{class:"ts-tick"},T):null,...tt.cells.map((j,Q)=>{let lt=!Q&&!!ye(j);return s(lt?"th":"td",{scope:lt?"row":null,class:y.
numbers.includes(Q)?"ts-figure":null},M(j,`cell:${y.id}:${tt.key}:${Q}`))}))};return O?.addEventListener("change",()=>{if(G.
clear(),O.checked)for(let{key:tt}of y.rows)G.add(tt);for(let tt of Z(dt,"td.ts-tick input"))tt.checked=O.checked}),rt(),
s("section",{},s("div",{class:"ts-desk-caption"},q,X("Save as CSV",()=>t.send({type:"export",table:y.id}),{"aria-label":`\
Save as CSV: ${y.title}`,"data-key":`export:${y.id}`})),s("div",{class:"ts-desk-scroll",role:"region",tabindex:0,"aria-l\
abelledby":W},s("table",{class:"ts-table","aria-labelledby":W},s("thead",{},F),dt)))}function z(y){if(y.kind==="table")return B(
y);if(y.kind==="form")return S(y);if(y.kind==="link"){let W=y.how==="edit"?"lab/tree":y.how,G={class:"ts-link",href:W?Vt(
W,y.path):y.path,target:"_blank"};return s("p",{},s("a",{...G,"data-key":`link:${y.path}`},y.text))}return y.how==="head"?
s("h3",{},y.text):s("p",{class:y.how==="hint"?"ts-hint":null},y.text)}function H(y){n.isLost()||(v=R()?y:"",!v&&(L="",w(
"page",{name:y})))}function C(){let y=t.get("page");i.replaceChildren(...t.get("pages").map(([W,q])=>X(q,()=>H(W),{class:"\
ts-button","aria-current":W===y?"page":null,"data-key":`page:${W}`})))}let N=t.get("cleared"),b=t.get("page");function P(){
let y=k().find(F=>F===document.activeElement)?.dataset.key,W=r.contains(document.activeElement),q=Z(r,".ts-desk-scroll").
map(F=>F.scrollTop);(t.get("page")!==b||t.get("cleared")!==N)&&(d=new Map,p=new Map,g=new Map,{page:b,cleared:N}={page:t.
get("page"),cleared:t.get("cleared")}),o.textContent=t.get("said"),n.alert.textContent=t.get("trouble"),C();let G=new Map(
t.get("pages")),nt=s("h2",{tabindex:-1},G.get(b));if(r.replaceChildren(nt,...t.get("parts").map(z)),Z(r,".ts-desk-scroll").
forEach((F,dt)=>{F.scrollTop=q[dt]??0}),A(),y||W){let F=k().find(dt=>dt.dataset.key===y);(F??nt).focus({preventScroll:!!F})}
E&&!Object.keys(t.get("busy")).length&&(E=!1,m())}let U;function K(){let y=t.get("busy");if(r.setAttribute("aria-busy",String(
R())),clearTimeout(U),!Object.keys(y).length){c.replaceChildren(),v&&setTimeout(()=>v&&H(v),0);return}let{doing:W,done:q,
of:G}=y,nt=G?`${W}: ${q} of ${G}`:`${W} …`,F=()=>{c.replaceChildren(s("progress",G?{max:G,value:q,"aria-label":W}:{"ar\
ia-label":W}),s("span",{role:"status"},nt))};c.childElementCount?F():U=window.setTimeout(F,po)}n.follow("change:turn",()=>setTimeout(
P,0)),n.follow("change:busy",K),n.follow("change:by",()=>{l.value=t.get("by")}),n.follow("msg:custom",y=>{if(y.type==="t\
rouble"&&m(),y.type!=="save")return;let W=URL.createObjectURL(new Blob([`\uFEFF${y.text}`],{type:"text/csv"}));s("a",{href:W,
download:y.name}).click(),setTimeout(()=>URL.revokeObjectURL(W),1e3)}),P(),K();let st=!0,pt=new IntersectionObserver(([y])=>{
st=y.isIntersecting});pt.observe(e);let _=0,V=setInterval(()=>{let y=t.get("every");_+=1,y&&_>=y&&st&&!document.hidden&&
(_=0,w("look"))},1e3);return()=>{clearInterval(V),clearTimeout(U),pt.disconnect(),n.close()}}function Pe(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let o=c=>String(c).padStart(2,"0"),r=`${o(
n.getHours())}:${o(n.getMinutes())}`,a=`${n.getFullYear()}-${o(n.getMonth()+1)}-${o(n.getDate())}`;return e.toDateString()===
n.toDateString()?r:`${a} ${r}`}var fo="twoshaft-unsent:";function pn(t,e){let n=fo+e,o=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},r=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(o(),a)?o()[a]:void 0,put:(a,c,i,u=new Date)=>r({...o(),[a]:{value:c,
base:i,at:u.toISOString()}}),drop(a){let{[a]:c,...i}=o();c&&r(i)}}}function fn(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var jt=null,ho="input, button, select, textarea, summary, a, [tabindex]",hn=t=>[...t.querySelectorAll(ho)];function gn(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?jt={form:e,at:hn(t).indexOf(a),from:null}:jt?.form===e&&t.
isConnected&&(jt=null))},o=({target:a})=>{jt?.form===e&&a instanceof HTMLInputElement&&(jt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",o),requestAnimationFrame(
()=>{if(jt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=jt,i=hn(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var go=["print","colour"];function Jt(t){for(let e of go){let n=t?.[e];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${e}`,n):document.documentElement.removeAttribute(`data-ts-${e}`))}}function mn(){Jt({print:"",colour:""})}function wn(t,e,n){let o=()=>t.get("bench")??{},r=s("details",{class:"ts-bench"}),a=o().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),u=X("Use these figures",()=>f("yes")),l=X(
"Go back to the drawn figures",()=>f("no")),d=!1,p=a.map(h=>{let L=ot("bench"),v=h.options.length?s("select",{class:"ts-\
box",id:L,"aria-describedby":`${L}-read`},s("option",{value:""},"choose"),...bt(h.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:L,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${L}-hint ${L}-read`}),
E=s("span",{class:"ts-hint",id:`${L}-hint`},h.hint),R=s("p",{class:"ts-read",id:`${L}-read`}),w=h.text,k=()=>{v.value.trim()!==
w.trim()&&(w=v.value,e({type:"bench",name:h.name,value:v.value}))};return v.addEventListener(h.options.length?"change":"\
blur",k),v.addEventListener("keydown",I=>{I.key==="Enter"&&(I.preventDefault(),k())}),{name:h.name,flush:k,input:v,element:s(
"div",{class:"ts-bench-row"},s("label",{for:L},h.prompt),s("div",{class:"ts-line-of"},v,E),R),show(I){if(!I)return;(document.
activeElement!==v||v.value===w)&&(v.value=I.text,w=I.text),v.setAttribute("aria-invalid",String(!!I.error)),R.classList.
toggle("ts-error",!!I.error);let A=I.error?[At("▲")," "]:[],m=I.read&&!I.options.length&&`read as ${I.read}`,x=I.error||
[m,I.origin].filter(Boolean).join(", ");R.replaceChildren(...A,x)}}}),f=h=>{for(let L of p)L.flush();d=!0,e({type:"bench",
name:"in-use",value:h})};r.append(s("summary",{},c),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They are used in place of the drawn figures in this task, all of them or none. Your answers are marke\
d on them by the same rules."),s("div",{class:"ts-bench-rows"},...p.map(h=>h.element)),i,s("div",{class:"ts-tools"},u,l));
function g(){let h=o(),L=new Map(h.rows?.map(w=>[w.name,w]));for(let w of p)w.show(L.get(w.name));c.textContent=h.used?"\
✓ This task uses figures from the bench":"Use readings from the bench",l.hidden=!h.wanted,u.hidden=h.used&&!h.stale;let v=h.
wanted&&!h.used?"▲ ":h.used?"● ":"○ ",E=h.used?"in use":h.wanted?`not used; the drawn figures stand. ${h.refused}`:
"not used; the drawn figures stand",R=h.stale?` The tables and choices of this task are still the ones from before. ${h.
used?"Press the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${v}${E}${R}`,
h.wanted&&!h.used&&(r.open=!0)}return{element:r,show:g,hear(h){h.type!=="bench-saved"||h.name!=="in-use"||!d||(d=!1,o().
stale&&n())},lost(){for(let h of[u,l,...p.map(L=>L.input)])h.disabled=!0}}}var mo=5e3,wo=2e3,bo={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Re="kept in this browser until it can be\
 saved";function vo(t,e,n,o){let r=Pt(t),a=Wt(t),c=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),u=0,l=null,d={},p=()=>{clearTimeout(l??void 0),l=null},f=w=>{n.put(t.name,w,d.revision??0),g(w)},g=w=>{u+=
1,v("wait",o()?Re:"saving"),p(),l=window.setTimeout(()=>v("wait",Re),mo),e({type:"save",name:t.name,value:w,turn:u})},h=r.
make(t,a,f,(w,k)=>{w?(n.put(t.name,k,d.revision??0),v("wait","not saved yet: press Enter or leave the box")):l===null&&(n.
drop(t.name),E(d))}),L=_t(t,a,a.status);r.status==="above"?L.append(i,h.element,c):L.append(h.element,c,i);function v(w,k){
i.className=`ts-status ts-status-${w}`,i.dataset.text!==k&&(i.dataset.text=k,i.replaceChildren(At(bo[w]),` ${k}`))}function E(w,k=!1){
if(d=w??{},h.show(d),c.replaceChildren(d.read?`read as ${d.read}`:""),!k)if(d.error){let{error:I,saved:A="",note:m}=d;v(
"unread",`Look again: ${I} Kept as typed, ${Pe(A)}${m?`; ${m}`:""}.`)}else d.saved&&!d.blank?v("saved",`saved ${Pe(d.saved)}${d.
note?`; ${d.note}`:""}`):v("none",r.blank??"not answered yet")}let R=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:L,show(w){l===null&&E(w,R())},saved(w){w.turn===u&&(h.pending?.()||n.drop(t.name),p(),E(w.state))},refused(w){
w.turn===u&&(p(),h.refused(),v("bad",`not saved: ${w.reason}`))},off(){clearTimeout(l??void 0),(l!==null||h.pending?.())&&
v("wait",Re)},catchUp(){let w=n.get(t.name);w&&(fn(w,d)?(h.show({...d,value:w.value,error:""}),g(w.value)):n.drop(t.name))},
flush:()=>h.flush?.(),summary:()=>({answered:!!d.saved&&!d.blank&&!d.error&&!d.short,unread:!!d.error,trouble:R(),waiting:l!==
null})}}function bn({model:t,el:e}){let n=t.get("fields"),o=t.get("sheet"),r=pn(window.localStorage,o),a=!1,c=()=>a||p.isLost(),
i=n.map(k=>vo(k,g,r,c)),u=new Map(i.map(k=>[k.name,k])),l=s("p",{class:"ts-who"}),d=s("p",{class:"ts-total"});Jt(t.get("\
look"));let p=J({model:t,el:e},{kind:"form",lost(){for(let k of i)k.off();f.lost(),h()},line(k){a=k;for(let I of i)k?I.off():
I.catchUp();h()}}),f=wn(t,p.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(s("div",
{class:"ts-top"},l,d),p.alert,f.element,...i.map(k=>k.element)),e.dataset.task=t.get("task_id");function g(k){p.send(k),
h()}function h(){let k=i.map(B=>B.summary()),I=k.filter(B=>B.answered).length,A=k.filter(B=>B.trouble).length,m=k.some(B=>B.
waiting),x=k.filter(B=>B.unread).length,$=A?`${A} not saved`:m?c()?"the rest kept in this browser":"saving":I&&!x?"all s\
aved":"",S=[`${I} of ${i.length} answered`,x?`${x} cannot be read`:"",$];d.textContent=S.filter(Boolean).join(", ");let M={
task:t.get("task_id"),answered:I,asked:i.length,unread:x};e.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:M}))}function L(){l.textContent=t.get("header");let k=t.get("states");for(let I of i)I.show(k[I.name]);h()}let v=0,
E=()=>{if(document.visibilityState==="hidden")for(let k of i)k.flush();document.visibilityState!=="visible"||Date.now()-
v<wo||(v=Date.now(),p.send({type:"look"}))},R=o?new BroadcastChannel(`twoshaft-saved:${o}`):null;R?.addEventListener("me\
ssage",({data:k})=>{k===t.get("task_id")&&p.send({type:"look"})}),document.addEventListener("visibilitychange",E),e.addEventListener(
"focusin",k=>{k.relatedTarget instanceof Node&&e.contains(k.relatedTarget)||E()}),p.follow("change:states change:header",
L),p.follow("msg:custom",k=>{k.type==="saved"&&(u.get(k.name)?.saved(k),R?.postMessage(t.get("task_id"))),k.type==="refu\
sed"&&u.get(k.name)?.refused(k),h()}),p.follow("msg:custom",f.hear),p.follow("change:bench",f.show),L();for(let k of i)k.
catchUp();h(),f.show(),p.alert.textContent=t.get("notice");let w=gn(e,`${o}/${t.get("task_id")}`);return()=>{w(),R?.close(),
p.close(),document.removeEventListener("visibilitychange",E)}}function xe(t,e,n){let o=`twoshaft-signed-in:${n}`,r=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(o,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(o),e.setItem(r,String(a))},get(){try{
let a=JSON.parse(t.getItem(o)??"null");return!a||!(a.at>Number(e.getItem(r)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var ko={right:"●",other:"◆",unread:"▲"};function yo(t){let e=Wt(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),o=null,r=Pt(t).make(t,e,i=>{o=i,r.show({value:o}),c(void 0)},(i,u)=>{i&&(o=u)}),a=_t(t,e,e.status);a.append(r.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let u=i?[At(ko[i.how]),s("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...u)}return{name:t.name,element:a,value(){return r.flush?.(),o},show(i,u){i!==void 0&&(o=i,r.show(
{value:o,saved:"given"})),c(u)},still(i){r.setDisabled(i),a.classList.toggle("ts-given",i)}}}function vn({model:t,el:e}){
let n=J({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let o=s("p",{class:"ts-title",role:"heading","aria-\
level":"3"}),r=s("p",{class:"ts-lead"}),a=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-asked"}),i=X(t.get("give"),()=>{
let L=Object.fromEntries(d.map(v=>[v.name,v.value()]));n.send({type:"give",values:L})});i.classList.add("ts-first");let u=X(
"",()=>n.send({type:"fresh"})),l=t.get("all")?X(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,o,r,a,c,s("p",{class:"ts-acts"},i,u,l));let d=[],p=()=>{let L=t.get("values"),v=t.get("told");for(let k of d)
k.show(L[k.name],v[k.name]),k.still(v[k.name]!==void 0&&v[k.name].how!=="unread");let E=d.some(({name:k})=>!v[k]||v[k].how===
"unread"),R=document.activeElement===i;if(i.hidden=!E,u.textContent=t.get("fresh"),u.hidden=E||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!R||E)return;let w=Z(e,".ts-told")[0];w.tabIndex=-1,w.focus({preventScroll:!0})},f=()=>{(Z(c,"input, sel\
ect, [tabindex]")[0]??(u.hidden?i:u)).focus({preventScroll:!0})},g=()=>{d=t.get("fields").map(yo),c.replaceChildren(...d.
map(({element:L})=>L)),o.textContent=t.get("title"),o.hidden=!o.textContent,r.textContent=t.get("lead"),r.hidden=!r.textContent,
a.replaceChildren(...Et(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let L=e.contains(
document.activeElement);g(),L&&f()}),n.follow("change:told change:values change:notice change:fresh",p),g();let h=t.get(
"place");if(h){let L=xe(sessionStorage,localStorage,h).get();t.send({type:"who",id:L?.id??"",ticket:L?.ticket??""})}return()=>n.
close()}var kn="twoshaft-mine";var yn="This is done as soon as the connection is back.",xo={"to get":"○",open:"◐","handed in":"●","changed since":"\
◑",feedback:"✓"},$o={"to get":"To get",open:"Open","handed in":"Handed in","changed since":"Changed after handing in",
feedback:"Marked"},$e=(t,e,n)=>s("a",{href:Vt("lab/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"t\
s-link"},e);function xn(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:o,unread:r})=>s("li",{},`${e}\
: `,n===o?"nothing answered":n?`${n} of ${o} missing`:"",...r.map(([a,c])=>s("span",{},s("b",{},"cannot be read: "),`“${a}\
” ${c}`)))))}function So(t){let e=({name:o})=>Number(o.split("-").at(-1)),n=[...t].sort((o,r)=>e(o)-e(r)).flatMap(({notebooks:o})=>o.
map(r=>[r.split("/").pop()??"",r]));localStorage.setItem(kn,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(
new Event("storage"))}var Zt=null;function $n({model:t,el:e}){let n="",o=xe(sessionStorage,localStorage,t.get("place")),
r=!1,a=(b=!0)=>{r=b,r&&Zt&&(u.textContent=yn)},c=J({model:t,el:e},{kind:"start",lost:a,line:a}),i=s("div",{}),u=s("p",{class:"\
ts-said",role:"status"});c.show(c.alert,u,i);let l=(b,P={})=>{i.getAttribute("aria-busy")==="true"||c.isLost()&&P.quietly||
(P.quietly||(Zt={type:b,...P},i.setAttribute("aria-busy","true"),u.textContent=r?yn:"One moment.",c.alert.textContent=""),
c.isLost()||t.send({type:b,...P}))},d=()=>{let b=Zt;Zt=null,b&&(b.type==="sign-in"||t.get("me").id)&&l(b.type,b)},p=(b,P,U,K)=>s(
"button",{type:"button",class:K?"ts-button ts-first":"ts-button","data-key":P,onclick:U},b);function f(){let b=ot("who"),
P=ot("word"),U=s("select",{id:b,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.
get("people").map(([st,pt])=>s("option",{value:st,selected:st===n},pt)));U.addEventListener("change",()=>{n=U.value});let K=s(
"input",{id:P,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data\
-key":"word"});return s("form",{class:"ts-sign-in",onsubmit:st=>{st.preventDefault(),l("sign-in",{name:U.value,word:K.value})}},
s("h2",{},"Who is working?"),s("div",{class:"ts-pair"},s("label",{for:b},"Your name"),U),s("div",{class:"ts-pair"},s("la\
bel",{for:P},"Sign-in word from your slip"),K),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},
"Sign in"),s("p",{class:"ts-hint"},t.get("kept")))}function g(b,P){let U=y=>`${y}:${b.name}`,K=s("div",{class:"ts-doing"});
for(let y of b.feedback.slice(0,1))K.append(s("a",{href:Vt("files",y),target:"_blank",class:"ts-link","data-key":U("feed\
back")},"Read feedback"));for(let y of b.notebooks){let W=b.notebooks.length===1?"Open":`Open ${y.split("/").pop()}`;K.append(
$e(y,W,U(`open ${y}`)))}b.can_get&&K.append(p(b.notebooks.length?"Get again":"Get",U("get"),()=>l("get",{name:b.name}),!b.
notebooks.length)),b.can_hand_in&&K.append(p(b.receipt?"Hand in again":"Hand in",U("hand in"),()=>l("hand-in",{name:b.name})));
for(let y of K.children)y.setAttribute("aria-label",`${y.textContent}: ${b.title}`);let st=t.get("asking")===b.name,pt=b.
receipt||b.unread>0,_=s("tr",{},s("th",{scope:"row"},b.title),s("td",{},b.due||"no date",b.overdue?s("span",{class:"ts-s\
mall-line"},"date passed"):null),s("td",b.receipt?{tabindex:-1,"data-key":U("receipt")}:{},s("span",{class:"ts-shape","a\
ria-hidden":"true"},xo[b.state]||""),s("b",{},$o[b.state]||b.state),s("span",{class:"ts-small-line"},b.detail),P?s("span",
{class:"ts-small-line"},`Mark: ${P}`):null),s("td",{},K));if(st)return[_,s("tr",{},s("td",{colspan:4},L(b)))];if(!pt||!b.
gaps.length)return[_];let V=s("td",{colspan:4},s("b",{},h(b)),xn(b.gaps));return[_,s("tr",{},V)]}let h=({left:b,unread:P})=>It(
[b?`${b} ${b===1?"answer is":"answers are"} missing`:null,P?`${P} cannot be read`:null]).join(", ");function L(b){let P=ot(
"question"),U=s("div",{class:"ts-doing"});for(let st of b.notebooks)U.append($e(st,"Go on with it",`go on:${b.name}`));let K=h(
b);return U.append(p(K?"It is my own work: hand in as it is":"It is my own work: hand in",`hand in anyway:${b.name}`,()=>l(
"hand-in",{name:b.name,own:!0}),!K)),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":P,"data-key":"\
question"},s("p",{id:P},s("b",{},`${b.title}: not handed in yet.${K?` ${K}.`:""}`),K?" An answer that is missing or cann\
ot be read earns nothing.":null),K?xn(b.gaps):null,s("p",{},"By handing in you state: ",s("b",{},t.get("statement"))),U)}
let v=new Set,E={met:"✓",enough:"◐","not yet":"○"};function R(b,P){let U=b.entries.map(_=>P.find(V=>V.name===_)).filter(
_=>_!==void 0),K=b.lesson?$e(b.lesson,`Lesson ${b.title}`,`lesson:${b.lesson}`):s("span",{class:"ts-small-line"},"no les\
son here"),st=s("details",{open:v.has(b.module)},s("summary",{"data-key":`outcomes:${b.module}`},`Outcomes: ${b.count||"\
none"}`),s("ul",{},...b.outcomes.map(([_,V,y,W])=>s("li",{},s("span",{class:"ts-shape","aria-hidden":"true"},E[_]||""),s(
"b",{},`${_}${y&&_==="enough"?`, ${y}`:""}: `),V,y&&_==="not yet"?`. Still missing: ${y}`:"",W?` (${W})`:""))));st.addEventListener(
"toggle",()=>{st.open?v.add(b.module):v.delete(b.module)});let pt=U.flatMap(_=>g(_,b.marks[_.name]));return s("tbody",{},
s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},b.title,s("span",{class:"ts-assigned"},U.length?"assigned":
"not assigned"))),...pt,s("tr",{},s("td",{colspan:4},K,s("p",{class:"ts-next"},s("b",{},"Next: "),b.next),st)))}function w(){
let b=t.get("me"),P=t.get("entries"),U=s("table",{class:"ts-table"},s("thead",{},s("tr",{},...["Assignment","Due","State",
"What you can do"].map(K=>s("th",{scope:"col"},K)))),...t.get("modules").map(K=>R(K,P)));return s("section",{},s("div",{
class:"ts-me"},s("h2",{},`Working as ${b.name} (${b.id})`),b.ticket?p("Not you? Sign out","sign-out",()=>{o.drop(),l("si\
gn-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),P.length?null:s("p",{},"Nothing is assig\
ned yet."),U,p("Look again","look",()=>l("look")))}function k(){let b=!!t.get("me").id,P=t.get("modules").map(st=>st.lesson),
K=t.get("lessons").filter(([st])=>!b||!P.includes(st));return K.length?s("section",{},s("h2",{},b?"To look things up":"L\
essons"),s("ul",{class:"ts-lessons"},...K.map(([st,pt])=>s("li",{},$e(st,pt,`lesson:${st}`))))):null}let I=!1,A=t.get("m\
e").id?null:o.get(),m=A!==null;function x(){let b=t.get("me");b.id?Jt(t.get("look")):mn(),b.id?o.keep(b):(I||A&&!m)&&o.drop(),
I=!!b.id,So(b.id?t.get("entries"):[])}let $=0,S="",M=()=>Z(i,"[data-key]"),B=()=>i.querySelector("input[data-key=word]");
function z(){let P=M().find(F=>F===document.activeElement)?.dataset.key;i.removeAttribute("aria-busy");let U=!!t.get("me").
id;u.textContent=t.get("said"),c.alert.textContent=t.get("trouble");let K=B()?.value,st=m?s("p",{},"One moment."):f();i.
replaceChildren(...It([U?w():st,k()]));let pt=B();pt&&K&&(pt.value=K);let _=S;if(S=t.get("asking"),S&&S!==_&&M().find(F=>F.
dataset.key==="question")?.focus(),!P||S&&S!==_)return;let V=M().find(F=>F.dataset.key===P),y=P.split(":")[1],W=M().filter(
F=>y&&F.dataset.key?.endsWith(`:${y}`)),q=W.find(F=>F.dataset.key?.startsWith("receipt")),G=W.find(F=>F!==q),nt=P.startsWith(
"hand in anyway")?q??G:G;(V??nt??Z(i,"a, button, select")[0])?.focus()}let H=()=>{clearTimeout($),$=setTimeout(()=>{let b=m;
m=!1,b||(Zt=null),x(),z(),b&&d()},0)};t.on("change",H),x(),z(),A?t.send({type:"resume",name:A.id,ticket:A.ticket}):d();let C=()=>{
!document.hidden&&t.get("me").id&&l("look",{quietly:!0})},N=new IntersectionObserver(([b])=>{b.isIntersecting&&C()});return N.
observe(e),document.addEventListener("visibilitychange",C),()=>{clearTimeout($),t.off("change",H),N.disconnect(),document.
removeEventListener("visibilitychange",C),c.close()}}var Lo={bench:ms,build:ks,cord:$s,depth:Ss,desk:un,exploded:Is,face:Ns,fault_board:Ds,form:bn,gate:Rs,gears:js,hazards:Hs,
lifting:Ws,micrometer:_s,own_checks:Ks,press:Fs,question:vn,rules:Us,runout:qs,sealant:Zs,seat:Qs,shims:tn,sketch:en,start:$n,
thread:sn,unit_section:nn,whole_build:an,wrench:cn};export{Lo as screens};
