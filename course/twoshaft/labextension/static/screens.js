var Ln="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...It(n)),r}function P(t,e={},...n){let r=document.createElementNS(Ln,t);return Ot(r,e),r.append(...n),
r}function Ot(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function Y(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function yt(t,e){return s("select",{class:"ts-box",...t},...bt(
e))}function Et(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function At(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function It(t){return t.filter(e=>e!=null&&e!==!1)}var Fe=0;function nt(t){return Fe+=1,`two\
shaft-${t}-${Fe}-${Math.random().toString(36).slice(2,7)}`}function Ht(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function Z(t,e){return[...t.querySelectorAll(e)]}function wt(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function xt(t){return t.ctrlKey||t.metaKey||t.altKey}function Zt(t){let e=Z(t,"button, input, \
select");for(let n of e)n.disabled=!0}function Ue(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function Qt(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function et(t,e,n=t){return Y(t,e,{"aria-label":n})}
function bt(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function Bt(t){return t.map(e=>s("li",{},e))}var Tt=(t,e)=>s(
"div",{class:"ts-beside"},s("div",{},...It(t)),s("div",{},...It(e)));var $e=new Map;function vt(t,e){if($e.has(t))throw new Error(`the answer kind ${t} is registered twice`);$e.set(t,e)}function Pt(t){
let e=$e.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Wt(t){let e=nt(
t.kind);return{control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function _t(t,e,n){let{prompt:r}=Pt(
t),o={class:"ts-prompt"};if(r==="legend")return s("fieldset",{class:"ts-field","aria-describedby":n},s("legend",o,t.prompt));
let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s("div",{class:"ts-field"},a)}function te(t,e,n,r){let a=t.options.map(([c,i])=>{let u={"aria-describedby":e.status},l=s("input",{type:n,name:e.control,
value:c,...u});return{key:c,input:l,row:s("label",{class:"ts-option"},l,s("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:u,input:l}of a)l.checked=i.includes(u)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}vt("choice",{prompt:"legend",make:(t,e,n)=>te(t,e,"radio",r=>n(r[0]))});vt("choices",{prompt:"legend",make:(t,e,n)=>te(t,e,"checkbox",n)});function ee(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function se(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}vt("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([c,i],u)=>{let l=`${e.control}-${u}`,d=s("labe\
l",{class:"ts-each-line",for:l},i),p=yt({id:l,"aria-describedby":e.status},[["","choose"],...o]);return{key:c,box:p,row:s(
"li",{},d,p)}});for(let{box:c}of a)c.addEventListener("change",()=>{n(ee(a.map(({key:i,box:u})=>[i,u.value])))});return{
element:s("ol",{class:"ts-each"},...a.map(({row:c})=>c)),show(c){let i=se(c.value);for(let{key:u,box:l}of a)l.value=i.get(
u)??""},setDisabled(c){for(let{box:i}of a)i.disabled=c},refused(){}}}});function Se(t){let[e="",...n]=t.split(" "),r=e==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:e,size:r,
side:o,place:a[0],points:null};let c=a.map(i=>{let[u,l]=i.split(",").map(Number);return[u,l]});return{hand:e,size:r,side:o,
place:"",points:c}}function Le(t,{side:e,place:n,points:r}){return r||(e==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[e]??[])}function Ce(t,e){let{hand:n,size:r,side:o,place:a}=Se(e),c=[...t.stretches,...t.
holes].find(u=>u.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[o]??""}`}
function Ee(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function qe(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function ze(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function Ge(t,[e,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-e,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var Cn=.4;function Ye(t,e){let n=Cn,r=ne(t,n);for(;r.
length>e;)n*=1.5,r=ne(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function ne(t,e){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=En(n,r,t[c]);i>o&&([o,a]=[i,c])}return o<=
e?[n,r]:[...ne(t.slice(0,a+1),e).slice(0,-1),...ne(t.slice(a),e)]}function En(t,e,n){let[r,o]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var oe=14,An=3,Mn=.5,On=["middle","inside","outside"],re="round ";function Tn(t,e){let n=t.outline.map(([K])=>K),r=t.outline.
map(([,K])=>K),[o,a]=[Math.min(...n)-oe,Math.max(...n)+oe],[c,i]=[Math.min(...r)-oe,Math.max(...r)+oe],u=a-o,l=i-c,d=([K,
V])=>`${(K-o).toFixed(1)} ${(i-V).toFixed(1)}`,p=(K,V)=>`M${K.map(d).join("L")}${V?"Z":""}`,f=nt("face"),g=u/100,h=2*g,S=(K,V)=>P(
"pattern",{id:`${f}-${K}`,width:h,height:h,patternUnits:"userSpaceOnUse"},P("path",{d:V,class:"tsp-hatch","stroke-width":g/
4})),v=P("defs",{},S("oil",`M0 ${h}L${h} 0`),S("dirt",`M0 ${h}L${h} 0M0 0L${h} ${h}`)),A=t.cavities.map(([,K])=>p(K,!0)).
join(""),R=t.islands.map(K=>p(K,!0)).join(""),m=p(t.outline,!0)+A,y=P("g"),B=P("g"),M=P("g"),w=P("g"),x=P("path",{class:"\
tsp-live",d:""}),$=P("path",{class:"tsp-chosen",d:""}),L=P("path",{class:"tsp-land",d:m,"fill-rule":"evenodd"}),O=P("pat\
h",{class:"tsp-edge",d:m+R,"stroke-width":g/2.5}),D=([K,V],C,W="middle")=>{let _={x:K-o,y:i-V,"font-size":2.5*g,"text-an\
chor":W};return P("text",{class:"tsp-text",..._},C)},F=[(o+a)/2,(c+i)/2],k=(K,V)=>{let C=Qt(K,F)||1;return[K[0]+V*(F[0]-
K[0])/C,K[1]+V*(F[1]-K[1])/C]};for(let{x:K,y:V,d:C,leads:W,name:_}of t.holes){let z={cx:K-o,cy:i-V,"stroke-width":g/4},ot=W===
"blind"?"tsp-hole tsp-blind":"tsp-hole";M.append(P("circle",{...z,r:C/2,class:ot})),W==="to the outside"&&M.append(P("ci\
rcle",{...z,r:C/3,class:"tsp-hole"}));let[G,dt]=k([K,V],-(C/2+4.4*g));M.append(D([G,dt-.8*g],_.replace("bolt ","")))}for(let K of t.
guides){let[V,C]=[K.x-o,i-K.y],W=`M${V-g} ${C}h${h}M${V} ${C-g}v${h}`;M.append(P("path",{class:"tsp-guide",d:W,"stroke-w\
idth":g/2}));let _={"stroke-width":g/5,"stroke-dasharray":`${g} ${g}`};M.append(P("circle",{cx:V,cy:C,r:K.reach,class:"t\
sp-reach",..._}));let z=k([K.x,K.y],K.reach+h),ot=(z[0]-K.x)/(K.reach+h);M.append(D(z,K.name,ot>.5?"start":ot<-.5?"end":
"middle"))}for(let{word:K,points:V,width:C}of t.spots){let[W]=K.split(" "),[_,z]=[V[0],V[V.length-1]],ot=Qt(_,z)||1,[G,dt]=[
-(z[1]-_[1])/ot*C/2,(z[0]-_[0])/ot*C/2],T=[[_[0]+G,_[1]+dt],[z[0]+G,z[1]+dt],[z[0]-G,z[1]-dt],[_[0]-G,_[1]-dt]],U=`url(#${f}\
-${W})`;y.append(P("path",{d:p(T,!0),fill:U,class:"tsp-spot","stroke-width":g/4}));let rt=D(k([(_[0]+z[0])/2,(_[1]+z[1])/
2],9*g),W);rt.classList.add("tsp-spot-word"),M.append(rt)}let b=[100,50,20,10].find(K=>K<u/4)??10,E=`M${g} ${l-g}v${-g}v${g/
2}h${b}v${-g/2}v${g}`,N={x:b+h,y:l-g,"font-size":2.5*g};w.append(P("path",{class:"tsp-edge",d:E,"stroke-width":g/4}),P("\
text",{class:"tsp-text",...N},`${b} mm`));let H=`0 0 ${u.toFixed(1)} ${l.toFixed(1)}`,X=P("svg",{viewBox:H,class:"tsp-fa\
ce",role:"img","aria-label":e},v,L,y,B,O,M,$,x,w),q=`max-width: ${(25*u/l).toFixed(1)}rem`;return{frame:s("div",{class:"\
ts-pad-face",style:q},X),svg:X,over:w,live:x,chosen:$,land:L,path:p,unit:g,box:{left:o,right:a,low:c,high:i,width:u,height:l},
place({clientX:K,clientY:V}){let C=X.getBoundingClientRect(),W=Math.min(C.width/u,C.height/l);return[o+(K-C.left-(C.width-
W*u)/2)/W,i-(V-C.top-(C.height-W*l)/2)/W]},strokes(K){B.replaceChildren(...K.map(st))}};function st(K){let V=Se(K),C=Le(
t,V),W=Ee(t,V.hand,Math.max(V.size,g/2)),_=C.length>1?p(C,V.side==="round"):C.length?`${p(C)}h0.01`:"",z=P("path",{d:_,class:`\
tsp-stroke tsp-${V.hand}`,"stroke-width":W});if(V.hand!=="film")return z;let ot=Math.min(8,Math.max(.6,40*V.size)),G={"s\
troke-width":g/3,"stroke-dasharray":`${ot} ${ot}`};return P("g",{},z,P("path",{d:_,class:"tsp-grain",...G}))}}function ae({
face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=Tn(t,e),c=s("p",{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"\
ts-read ts-pad-trouble",role:"status"}),u=(E,N)=>s("span",{class:"ts-pair"},s("label",{for:N.id},E),N),l=yt({id:nt("hand")},
Object.entries(t.hands)),d=s("input",{class:"ts-box ts-size",id:nt("size"),type:"text",inputmode:"decimal",autocomplete:"\
off",maxlength:"12"}),p=s("label",{for:d.id},"thickness"),f=yt({id:nt("place")},t.stretches.map(({id:E,name:N})=>[E,N]));
f.append(s("optgroup",{label:"Round a hole"},...t.holes.map(({id:E,name:N})=>s("option",{value:`${re}${E}`},`round ${N}`))));
let g=yt({id:nt("side")},On.map(E=>[E,t.sides[E]])),h=Y("Lay it here",()=>w([M(f.value)])),S=Y("Lay it on every stretch",
()=>w(t.stretches.map(({id:E})=>M(E)))),v=Y("Take back the last pass",()=>{m&&r(m-1,!0)}),A=Y("Clear the face",o),R={film:"",
bead:""},m=0,y=!1;function B(){if(l.value==="wipe")return"";let[E,N]=t.sizes[l.value],H=qe(d.value);if(H>=E&&H<=N)return d.
removeAttribute("aria-invalid"),` ${Number(H.toFixed(3))}`;let X=l.value==="film"?"the thickness of the film":"the diame\
ter of the bead";return i.textContent=d.value.trim()?`Read “${d.value}”: give ${X} from ${E} to ${N} mm.`:`First giv\
e ${X} in mm.`,d.setAttribute("aria-invalid","true"),d.focus(),null}function M(E){let N=B();if(N===null)return null;let H=E.
startsWith(re)?E:`${g.value} ${E}`;return`${l.value}${N} ${H}`}function w(E){let N=E.filter(H=>H!==null);if(!(y||N.length<
E.length)){if(m+N.length>t.most){i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent=
"",c.textContent=N.length===1?`Laid: ${Ce(t,N[0])}`:`Laid on ${N.length} stretches`,n(N)}}function x(){let E=l.value==="\
wipe";p.textContent=l.value==="bead"?"diameter":"thickness",d.disabled=y||E,d.value=E?"":R[l.value],d.placeholder=E?"":"\
mm",h.textContent=E?"Wipe here":"Lay it here",S.textContent=E?"Wipe every stretch":"Lay it on every stretch",i.textContent=
"",$()}function $(){let E=f.value.startsWith(re);g.disabled=y||E;let N=Le(t,E?{side:"round",place:f.value.slice(re.length)}:
{side:g.value,place:f.value});a.chosen.setAttribute("d",N.length?a.path(N,E):""),a.chosen.setAttribute("stroke-width",String(
a.unit/2))}l.addEventListener("change",x),d.addEventListener("input",()=>{R[l.value]=d.value}),f.addEventListener("chang\
e",$),g.addEventListener("change",$),d.addEventListener("keydown",E=>{E.key==="Enter"&&(E.preventDefault(),h.click())});
let L=null;a.svg.addEventListener("pointerdown",E=>{if(y||E.button>0)return;L=[a.place(E)],a.svg.setPointerCapture(E.pointerId);
let N=Math.max(1,Number(R.bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(Ee(t,l.value,N)))}),a.svg.
addEventListener("pointermove",E=>{if(!L)return;let N=a.place(E);Qt(N,L[L.length-1])<Mn||(L.push(N),a.live.setAttribute(
"d",a.path(L)))});let O=E=>{if(!L)return;let N=L;if(L=null,a.live.setAttribute("d",""),E.type==="pointercancel")return;if(ze(
N)<An){f.value=Ge(t,N[0]),$();return}let H=B();if(H===null)return;let X=Ye(N,t.points).map(q=>q.join(","));w([`${l.value}${H}\
 at ${X.join(" ")}`])};a.svg.addEventListener("pointerup",O),a.svg.addEventListener("pointercancel",O);let D=s("ol",{class:"\
ts-passes","aria-label":"Passes, in the order they were done"}),F=s("p",{class:"ts-hint"},"Nothing is laid yet."),k=s("d\
iv",{class:"ts-pad-tools"},s("div",{class:"ts-tools"},u("tool",l),s("span",{class:"ts-pair"},p,d)),s("div",{class:"ts-to\
ols"},u("where",f),u("runs",g)),s("div",{class:"ts-tools"},h,S,v,A),i,c),b=()=>Z(D,"button");return x(),{drawing:a,tools:k,
list:D,empty:F,frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,k,s("div",{class:"ts-pad-list"},F,D)),show(E,N=[]){
m=E.length,a.strokes(E),F.hidden=m>0;let H=b().findIndex(X=>X.matches(":focus"));D.replaceChildren(...E.map((X,q)=>s("li",
{},s("span",{},`${Ce(t,X)}${N[q]?`, ${N[q]}`:""} `),Y("take out",()=>r(q,!1),{class:"ts-button ts-remove",disabled:y,"ar\
ia-label":`Take out pass ${q+1}`})))),H>=0&&(b()[Math.min(H,m-1)]??h).focus()},setDisabled(E){y=E;for(let N of[l,f,h,S,v,
A,...b()])N.disabled=E;d.disabled=E||l.value==="wipe",$()}}}vt("film",{prompt:"words",make(t,e,n){let r=[],o=c=>{r=c,a.show(r),n(r)},a=ae({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>o([...r,...c]),onRemove:c=>o(r.filter((i,u)=>u!==c)),onClear:()=>o([])});
return{element:a.element,show(c){r=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function Xe(t,{send:e,typing:n,said:r=a=>String(a??""),wrong:o=a=>!!a.error}){let a=s("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||a.value.trim()!==c.trim(),u=()=>{i()&&(c=a.value,e(a.value))};return a.
addEventListener("blur",u),a.addEventListener("keydown",l=>{let d=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!==
"Enter"&&!d||(l.preventDefault(),u())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:u,pending:i,refused(){
c=null},show(l){a.setAttribute("aria-invalid",String(o(l))),!(document.activeElement===a&&a.value!==c)&&(c=r(l.value),a.
value=c)}}}function Ve(t,e){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${e}`.trim()}function Je(t,e,n){let r=yt({"aria-label":"Choose the unit"},[["","unit"],...e.map(o=>[o,o])]);return r.addEventListener(
"change",()=>{r.value&&(t.value=Ve(t.value,r.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener("input",()=>{
r.value=""}),r}vt("number",{prompt:"label",make(t,e,n,r){let o=t.units,{box:a,flush:c,pending:i,refused:u,show:l}=Xe(e,{send:n,typing:r}),
d=s("span",{class:"ts-hint",id:e.hint},t.hint),p=o.length?Je(a,o,c):null;return{element:s("div",{class:"ts-line-of"},a,p,
d),show:l,setDisabled(f){a.disabled=f,p&&(p.disabled=f)},refused:u,flush:c,pending:i}}});function Qe(t,e){let r=[...new Set([t??[]].flat())].filter(o=>e.includes(String(o))).map(String);return[...r,...e.filter(
o=>!r.includes(o))]}var Kt=(t,e)=>t.join(`
`)===e.join(`
`),Ze=t=>`#${t.keys[0]}`,ie=class{constructor(e,n){this.labels=new Map(e.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
r,,o]of e)o&&this.stages.set(r,o);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let n of this.order){let r=this.stages.get(n)??null,o=e.at(-1);o&&r!==null&&o.stage===r?o.keys.push(n):e.push({stage:r,
keys:[n]})}return e}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let e=[];for(let n of this.runs()){
let[r]=n.keys;if(n.keys.length<2){e.push({id:r,key:r,level:1});continue}if(e.push({id:Ze(n),run:n,level:1}),!this.closed.
has(String(n.stage)))for(let o of n.keys)e.push({id:o,key:o,level:2})}return e}row(e){return this.rows().find(n=>n.id===
e)}settle(){let e=this.rows();if(!e.some(n=>n.id===this.current)){let n=this.current.replace(/^#/,""),r=e.find(o=>o.run?.
keys.includes(n));this.current=(r??e.find(o=>o.id===n)??e[0]).id}return e}unit(){let e=this.row(this.current);return e?.
run?e.run.keys:this.block.has(this.current)&&this.block.size>1?this.order.filter(n=>this.block.has(n)):[this.current]}unitName(){
let e=this.row(this.current);if(e?.run)return`Stage ${e.run.stage}`;let n=this.unit();return n.length>1?`Block of ${n.length}\
 steps`:this.label(n[0])}where(){let e=this.unit(),n=this.order.indexOf(e[0])+1;return e.length>1?`positions ${n} to ${n+
e.length-1} of ${this.order.length}`:`position ${n} of ${this.order.length}`}rest(){let e=this.unit();return this.order.
filter(n=>!e.includes(n))}get isFirst(){return this.order.indexOf(this.unit()[0])===0}get isLast(){return this.order.indexOf(
String(this.unit().at(-1)))===this.order.length-1}insertedAt(e){let n=this.rest();return[...n.slice(0,e),...this.unit(),
...n.slice(e)]}shifted(e){let n=this.rest(),r=this.order.indexOf(this.unit()[0]),o=!!this.row(this.current)?.run,a=l=>n[e>
0?l:l-1],c=a(r);if(c===void 0)return this.insertedAt(r);let i=this.stages.get(c),u=i!==void 0&&(o||this.closed.has(i));do
r+=e;while(u&&a(r)!==void 0&&this.stages.get(a(r))===i);return this.insertedAt(r)}atPosition(e){return this.insertedAt(Math.
min(e-1,this.order.length-this.unit().length))}beside(e,n){return this.insertedAt(this.rest().indexOf(e)+(n==="after"?1:
0))}gathered(){let e=new Map;for(let n of this.order){let r=this.stages.get(n)??n;e.set(r,[...e.get(r)??[],n])}return[...e.
values()].flat()}dropAt(e,n){let r=e.run?e.run.keys:[e.key],o=e.run&&!this.closed.has(String(e.run.stage));return n&&!o?
{target:String(r.at(-1)),side:"after"}:{target:r[0],side:"before"}}take(e){if(Kt(e,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,n){let[r]=n.keys,o=this.rows().find(a=>a.run?.
keys.includes(r));this.current=o?o.id:r}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,n){let r=e.pop();return r?(n.push(this.order),this.order=
r,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||Kt(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,n){this.order=[...e],n&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let n=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((r,o)=>r-o);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(e,n){
let r=e.run?e.run.stage:this.stages.get(e.key),o=e.run?e.run.keys[0]:e.key,a=this.runs().find(c=>c.keys.includes(o));return!r||
!a||a.keys.length<2?null:(n?this.closed.add(r):this.closed.delete(r),n&&(this.current=Ze(a)),r)}sought(e){let n=this.rows(),
r=n.findIndex(c=>c.id===this.current),o=e.length>1?r:r+1,a=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...n.slice(o),...n.slice(0,o)].find(c=>a(c).startsWith(e))}};var In=12,Nn=700,Bn=5,ts=32,Dn=8;function ce({label:t,steps:e,order:n,onChange:r}){let o=new ie(e,n),{staged:a}=o,c=!1,i={},
u=!1,l=new Map,d=s("div",{"aria-live":"assertive",class:"ts-hidden"}),p=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),f=Y("Up",()=>X(-1),{"aria-label":"Move the chosen step up"}),g=Y("Down",
()=>X(1),{"aria-label":"Move the chosen step down"}),h=Y("Undo",()=>o.undo()&&st("Undone")),S=Y("Redo",()=>o.redo()&&st(
"Done again")),v=Y("Choose several",()=>_(!c),{"aria-pressed":"false"}),A=Y("Gather stages",()=>H(o.gathered(),"Steps of\
 one stage now stand together")),R=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:I=>{I.key==="Enter"&&q()}}),m=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),y=s("span",{class:"ts-chosen"}),B=Y("Move",q,{"aria-label":"Move to this position"}),M=Y(
"Move",ht,{"aria-label":"Move before this step"}),w=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},f,g,h,S,v,a?A:null),x=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",R,B),s("span",{class:"\
ts-pair"},"or before ",m,M)),$="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),L=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},$),x),O=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),w,y,p,L,d);function D(I){d.
textContent=I}function F(I=""){D(`${o.unitName()}${I}, ${o.where()}`)}function k(I){let j=l.get(I.id);if(j)return j;let Q=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Q.dataset.row=I.id,l.set(I.id,Q),Q}function b(I=!1){let j=o.settle(),
Q=new Set(j.map(at=>at.id));for(let[at,St]of l)Q.has(at)||(St.remove(),l.delete(at));let lt=o.unit(),kt=new Set(lt),ut=p.
firstElementChild;for(let at of j){let St=k(at);St===ut?ut=ut.nextElementSibling:p.insertBefore(St,ut),E(St,at,kt)}R.value=
String(o.order.indexOf(lt[0])+1);let $t=[...o.order.entries()].filter(([,at])=>!kt.has(at));m.replaceChildren(...$t.map(
([at,St])=>s("option",{value:St},`${at+1}  ${o.label(St)}`))),y.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,f.disabled=
u||o.isFirst,g.disabled=u||o.isLast,h.disabled=u||o.past.length===0,S.disabled=u||o.future.length===0;for(let at of[v,A,
R,m,B,M])at.disabled=u;if(p.setAttribute("aria-disabled",String(u)),p.classList.toggle("ts-long",o.order.length>In),I){let at=l.
get(o.current);at?.focus({preventScroll:!0}),at?.scrollIntoView({block:"nearest"})}}function E(I,j,Q){let lt=j.id===o.current,
kt=j.run?!1:o.block.has(j.key),ut=o.held!==null&&(j.run?lt:Q.has(j.key)),$t=o.order.indexOf(j.run?j.run.keys[0]:j.key),at=j.
run?j.run.keys.map(Mt=>i[Mt]?.length??0):i[j.key],St=j.run?o.closed.has(String(j.run.stage)):!1,Re=JSON.stringify([$t,j.
level,lt,kt,ut,at,j.run&&[j.run.keys.length,St]]);if(I.dataset.looks===Re)return;I.dataset.looks=Re,I.tabIndex=lt?0:-1,I.
setAttribute("aria-selected",String(kt)),I.classList.toggle("ts-current",lt),I.classList.toggle("ts-inblock",kt),I.classList.
toggle("ts-held",ut),I.classList.toggle("ts-level2",j.level===2),a&&I.setAttribute("aria-level",String(j.level));let je=ut?
" picked up":kt?" in block":"",He=je?s("span",{class:"ts-state"},je):"",We=Mt=>s("span",{class:"ts-number","aria-hidden":"\
true"},Mt);if(j.run){let{keys:Mt,stage:$n}=j.run;I.setAttribute("aria-expanded",String(!St));let Ke=St?Mt.filter(Sn=>i[Sn]?.
length).length:0;I.replaceChildren(We(`${$t+1}–${$t+Mt.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},St?"▸":
"▾"),s("span",{class:"ts-what"},s("b",{},$n),` ${Mt.length} steps`,Ke?` – ${Ke} with a remark`:"",He));return}let _e=(i[j.
key]??[]).map(Mt=>s("span",{class:`ts-note ts-note-${Mt.kind}`},At(Mt.shape??""),s("b",{},Mt.word),` ${Mt.text}`)),xn=a&&
j.level===1;I.classList.toggle("ts-troubled",_e.length>0),I.replaceChildren(We(String($t+1)),s("span",{class:"ts-grip","\
aria-hidden":"true"},"⠿"),s("span",{class:"ts-what"},o.label(j.key),xn?s("span",{class:"ts-stage"},` ${o.stages.get(j.
key)??""}`):"",He,..._e))}let N=()=>r([...o.order]);function H(I,j){if(!o.take(I)){D(`${o.unitName()} stays at ${o.where()}`);
return}b(!0),j?D(j):F(),o.held===null&&N()}function X(I){u||H(o.shifted(I))}function q(){if(u)return;let I=Number.parseInt(
R.value,10),j=o.order.length;I>=1&&I<=j?H(o.atPosition(I)):(D(`Type a position from 1 to ${j}`),y.textContent=`Type a po\
sition from 1 to ${j}.`)}function ht(){!u&&m.value&&H(o.beside(m.value,"before"))}function st(I){b(),D(`${I}. ${o.unitName()}\
, ${o.where()}`),N()}function K(){o.pickUp(),b(!0),F(" picked up")}function V(){o.putDown()&&N(),b(!0),F(" put down")}function C(){
o.putDown()&&N(),b()}function W(){o.putBack(),b(!0),F(" put back")}function _(I){c=I,v.setAttribute("aria-pressed",String(
I)),I||(o.block=new Set),b(),D(I?"Choose the steps of a block":"Block let go")}function z(I){o.toggleBlock(I);let j=o.block.
has(I)?"in the block":"out of the block";D(`${o.label(I)} ${j}, ${o.block.size} in it`)}function ot(I,j){let Q=o.fold(I,
j);Q&&(b(!0),D(`${Q} ${j?"closed":"open"}`))}p.addEventListener("keydown",I=>{if(xt(I))return;let j=o.rows(),Q=j.findIndex(
St=>St.id===o.current),lt=St=>{o.current=j[Math.max(0,Math.min(j.length-1,St))].id,b(!0)},kt=j[Q],{key:ut}=I,$t=ut==="Ar\
rowUp"?-1:ut==="ArrowDown"?1:null,at=o.held!==null;if($t&&(I.shiftKey||at))X($t);else if($t)lt(Q+$t);else if(at&&ut==="E\
scape")W();else if(ut===" ")u||(at?V:K)();else if(at&&ut==="Enter")V();else if(ut==="Enter"&&!kt.run)u||(z(kt.key),b(!0));else if(ut===
"Home"&&!at)lt(0);else if(ut==="End"&&!at)lt(j.length-1);else if(a&&ut==="ArrowLeft")ot(kt,!0);else if(a&&ut==="ArrowRig\
ht")ot(kt,!1);else if(ut.length===1&&!at)T(ut);else return;I.preventDefault()});let G="",dt;function T(I){G+=I.toLowerCase(),
clearTimeout(dt),dt=window.setTimeout(()=>{G=""},Nn);let j=o.sought(G);j&&(o.current=j.id,b(!0))}p.addEventListener("foc\
usout",({relatedTarget:I})=>{o.held!==null&&I instanceof Node&&!p.contains(I)&&C()});let U=null;p.addEventListener("poin\
terdown",I=>{let j=o.row(wt(I,".ts-step")?.dataset.row??"");if(!j||I.button!==0)return;if(j.run&&wt(I,".ts-fold")){ot(j,
!o.closed.has(String(j.run.stage))),I.preventDefault();return}let Q=wt(I,".ts-grip, .ts-number"),lt=I.ctrlKey||I.metaKey;
o.held!==null&&C(),!j.run&&!u&&(I.shiftKey?o.blockTo(j.key):(lt||c)&&!Q&&z(j.key)),o.current=j.id,b(!0),I.preventDefault(),
!(u||I.shiftKey||lt)&&(I.pointerType!=="mouse"&&!Q||(U={x:I.clientX,y:I.clientY,id:I.pointerId,carried:null},p.setPointerCapture(
I.pointerId)))}),p.addEventListener("pointermove",I=>{if(!U||I.pointerId!==U.id)return;let{clientX:j,clientY:Q}=I;if(!U.
carried){if(Math.hypot(j-U.x,Q-U.y)<Bn)return;U.carried=rt()}Object.assign(U.carried,{x:j,y:Q}),pt(U.carried)});function rt(){
let I=s("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},o.unit().length>1?o.unitName():o.label(o.unit()[0]));document.
body.append(I);let j=s("div",{class:"ts-line","aria-hidden":"true"});p.append(j),p.classList.add("ts-dragging");for(let Q of o.
unit())l.get(Q)?.classList.add("ts-lifted");return{ghost:I,line:j,timer:requestAnimationFrame(mt),x:0,y:0,drop:null}}function pt(I){
I.ghost.style.transform=`translate(${I.x+12}px, ${I.y+8}px)`;let Q=o.rows().map($t=>{let at=k($t).getBoundingClientRect();
return{row:$t,box:at,offset:I.y-(at.top+at.height/2)}}).reduce(($t,at)=>Math.abs(at.offset)<Math.abs($t.offset)?at:$t),lt=Q.
offset>0;I.drop=o.dropAt(Q.row,lt);let ut=(lt?Q.box.bottom:Q.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;I.line.
style.top=`${ut}px`}function mt(){let I=U?.carried;if(I){for(let j of[p,Ue(p)]){let lt=j===document.scrollingElement?{top:0,
bottom:innerHeight}:j.getBoundingClientRect(),kt=I.y<lt.top+ts?-1:I.y>lt.bottom-ts?1:0;if(!kt)continue;let ut=j.scrollTop;
if(j.scrollTop+=kt*Dn,j.scrollTop!==ut){pt(I);break}}I.timer=requestAnimationFrame(mt)}}function tt(I){let j=U?.carried;
if(U=null,!j)return;cancelAnimationFrame(j.timer),j.ghost.remove(),j.line.remove(),p.classList.remove("ts-dragging");for(let lt of l.
values())lt.classList.remove("ts-lifted");let{drop:Q}=j;if(!I||!Q||o.unit().includes(Q.target)){b(!0),D(`${o.unitName()}\
 stays at ${o.where()}`);return}H(o.beside(Q.target,Q.side))}return p.addEventListener("pointerup",()=>tt(!0)),p.addEventListener(
"pointercancel",()=>tt(!1)),O.addEventListener("keydown",I=>{!U?.carried||I.key!=="Escape"||(tt(!1),I.stopPropagation())}),
b(),{element:O,tools:w,order:()=>[...o.order],change:(I,j)=>{u||H(I,j)},setOrder(I,j=!1){o.held!==null||U?.carried||Kt(I,
o.order)||(o.set(I,j),b())},setNotes(I){i=I??{},b()},setDisabled(I){u=I,b()}}}vt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=ce({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
Qe(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function ss(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[c,i]of t.entries()){let[u,l]=e[i]??[null,null];u!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[u??r[0],l??(u===null?r[1]:0)];let d=n(...r);o.push(d);let p=a.get(d.join(" "))??{at:d,numbers:[]};
p.numbers.push(c+1),a.set(d.join(" "),p)}return{points:o,stops:[...a.values()]}}function ns(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function os(t,e){return t.filter((n,r)=>r!==e)}function rs(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var es=.6;function as(t,[e,n],[r,
o]){let a=Object.entries(t).filter(([u])=>!u.startsWith("firm:")),c=(u,l)=>a.filter(([,d])=>d[0]===u&&d[1]===l).map(([d])=>d).
slice(0,1),i=Math.abs(e-r)>es;return[...i&&Math.abs(n)>es?c(null,0):[],...i?c(r,null):[],...o||!i?c(null,o):[]]}var Gt=9,le=.7*Gt,Ae=44;function de(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*Gt+2*Ae,
c=(o-r)*le+2*Ae,i=(f,g)=>[Ae+(f-e)*Gt,c/2-(g-(r+o)/2)*le],u=t.gates.map(f=>`M${i(f,r).join(" ")}L${i(f,o).join(" ")}`),l=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,d=t.gears.map(([f,g,h])=>{let[S,v]=i(g,h),A={x:S,y:v+(h>0?-20:30),"data-gear":f};
return P("text",{...A,class:"tsp-gear","text-anchor":"middle"},f)});return{element:P("svg",{viewBox:`0 0 ${a} ${c}`,width:a,
height:c,class:"ts-gateplan","aria-hidden":"true"},P("path",{d:[...u,l].join(""),class:"tsp-slot"}),...d),at:i}}function Pn(t){let{element:e,at:n}=de(t),r=P("polyline",{class:"tsp-line",points:""}),o=P("g");return e.append(r,o),{element:e,
show(a){let{points:c,stops:i}=ss(a,t.aims,n),[[u,l]]=c;r.setAttribute("points",c.map(d=>d.join(",")).join(" ")),o.replaceChildren(
P("circle",{cx:u,cy:l,r:4,class:"tsp-start"}),...i.map(({at:[d,p],numbers:f})=>P("g",{},P("circle",{cx:d,cy:p,r:3.5,class:"\
tsp-stop"}),P("text",{x:d+7,y:p-5,class:"tsp-number"},f.join(", ")))))}}}function is({label:t,moves:e,plan:n,most:r,onChange:o}){
let a=new Map(e),c=O=>a.get(O)??O,i=[],u=-1,l=!1,d=n?Pn(n):null,p=s("ol",{class:"ts-pathlist","aria-label":t}),f=s("p",{
class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),g=s("p",{class:"ts-hidden",role:"stat\
us"}),h=e.map(([O,D])=>Y(D,()=>y(O))),S=Y("Take back the last move",()=>{i.length&&B(i.length-1)}),v=Y("Take back all",()=>{
i.length&&m([],"No moves left")}),A=s("span",{class:"ts-hint"}),R=s("div",{class:"ts-path"},s("div",{class:"ts-tools ts-\
moves",role:"group","aria-label":"Add a move"},...h),s("div",{class:"ts-path-both"},s("div",{class:"ts-path-words"},f,p,
s("div",{class:"ts-tools"},S,v,A)),d&&s("div",{class:"ts-path-picture"},d.element)),d&&s("p",{class:"ts-hint"},"The line\
 shows where each move should go. The test shows whether the lever gets there."),g);function m(O,D){l||(i=O,L(),g.textContent=
D,o([...i]))}function y(O){if(i.length>=r){g.textContent=`${r} moves are the most here`;return}let{moves:D,place:F}=ns(i,
u,O);u=F,m(D,`Move ${F+1}: ${c(O)}`)}function B(O){let D=c(i[O]);u=Math.min(u,i.length-2),m(os(i,O),`Taken back: ${D}`)}
function M(O,D){let F=rs(i,O,D);F&&(u=O+D,m(F,`${c(F[u])}, move ${u+1} of ${i.length}`),x(u))}function w(O){return p.children[O]?.
querySelector(".ts-path-move")}function x(O){let D=w(O);return D instanceof HTMLElement&&D.focus(),!!D}function $(O,D){let F=s(
"span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${D+1}: ${c(O)}`},c(O)),k=s("button",{type:"button",class:"\
ts-path-off","aria-label":`Take back move ${D+1}`,onclick:()=>B(D)},"×"),b=s("li",{},F,k);return b.classList.toggle("ts\
-current",D===u),F.addEventListener("focus",()=>{u=D;for(let E of p.children)E.classList.toggle("ts-current",E===b)}),F.
addEventListener("keydown",E=>{if(xt(E))return;let N=E.key==="ArrowUp"?-1:E.key==="ArrowDown"?1:null;if(N&&E.shiftKey)M(
D,N);else if(N)x(D+N);else if(E.key==="Delete"||E.key==="Backspace")B(D),x(Math.min(D,i.length-1))||h[0].focus();else return;
E.preventDefault()}),k.disabled=l,b}function L(){p.replaceChildren(...i.map($)),f.hidden=i.length>0,A.textContent=`${i.length}\
 of at most ${r} moves`;for(let O of h)O.disabled=l||i.length>=r;S.disabled=v.disabled=l||i.length===0,d?.show(i)}return L(),
{element:R,setMoves(O){Kt(O,i)||(i=[...O],u=-1,L())},setDisabled(O){l=O,L()}}}vt("path",{prompt:"words",make(t,e,n){let r=is({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});function cs(t,e,n){let r=t.indexOf(n);return[...t.slice(r+1),...t.slice(0,r)].find(a=>!e.get(a))??n}function ls(t,e,n){let r=t.
find(({key:u})=>u===e);if(!r)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let o={ArrowRight:1,
ArrowLeft:-1}[n];if(o!==void 0){let u=[...t].sort((d,p)=>d.x-p.x||d.y-p.y),l=u.findIndex(({key:d})=>d===e)+o;return u[(l+
u.length)%u.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=u=>Math.abs(u.y-r.y)+2*Math.abs(u.x-
r.x),[i]=t.filter(({key:u,y:l})=>u!==e&&(l-r.y)*a>2).sort((u,l)=>c(u)-c(l));return(i??r).key}function Ft(t,e,n,r){let o=t.lines,a=t.options,c=o.map(([p])=>p),i=c[0],u=o.map(([p,f],g)=>{let h=`${e.control}-${g}`,S=s(
"label",{class:"ts-each-line",for:h},f),v=yt({id:h,"aria-describedby":e.status},[["","choose"],...a]),A=s("input",{type:"\
radio",name:`${e.control}-active`,"aria-label":`Point in the picture for: ${f}`,checked:g===0}),R=s("li",{},c.length>1?A:
null,S,v);return A.addEventListener("change",()=>{i=p}),v.addEventListener("change",()=>{i=p,d()}),{key:p,box:v,mark:A,row:R}}),
l=()=>new Map(u.map(({key:p,box:f})=>[p,f.value]));function d(){let p=l();r(p),n(ee([...p]))}return{element:s("ol",{class:"\
ts-each ts-pointed"},...u.map(({row:p})=>p)),active:()=>i,answers:l,press(p){let f=u.find(({key:g})=>g===i);if(!(!f||f.box.
disabled)){f.box.value=p,d(),i=cs(c,l(),i);for(let{key:g,mark:h}of u)h.checked=g===i}},put(p,f){let g=u.find(({key:h})=>h===
p);!g||g.box.disabled||(g.box.value=f,d())},show(p){let f=se(p.value);for(let{key:g,box:h}of u)h.value=f.get(g)??"";r(l())},
setDisabled(p){for(let{box:f,mark:g}of u)f.disabled=p,g.disabled=p}}}function ue(t,e,n){let r=s("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});r.innerHTML=t;let o=r.querySelector(
"svg");o.setAttribute("role","group");let a=new Map(Z(o,"[data-mark]").map(l=>[String(l.dataset.mark),l])),c=new Map(e);
for(let[l,d]of a)d.setAttribute("role","button"),d.setAttribute("tabindex",l===e[0][0]?"0":"-1"),d.setAttribute("aria-la\
bel",`${l}: ${c.get(l)??""}`);let i=l=>wt(l,"[data-mark]")?.dataset.mark??wt(l,"[data-spot]")?.dataset.spot;r.addEventListener(
"click",l=>{let d=i(l);d&&n(d)});for(let[l,d]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])r.addEventListener(
l,p=>{let f=i(p);f&&u(f,d)});function u(l,d){for(let p of Z(o,`[data-spot="${l}"]`))p.classList.toggle("tss-near",d)}return r.
addEventListener("keydown",l=>{let d=wt(l,"[data-mark]")?.dataset.mark;if(d){if(l.key==="Enter"||l.key===" ")n(d);else{let p=[
...a].map(([g,h])=>{let S=h.querySelector(".tss-dot");return{key:g,x:S.cx.baseVal.value,y:S.cy.baseVal.value}}),f=ls(p,d,
l.key);if(f===void 0)return;a.get(d)?.setAttribute("tabindex","-1"),a.get(f)?.setAttribute("tabindex","0"),a.get(f)?.focus()}
l.preventDefault()}}),{element:r,drawing:o,choose(l){let d=new Set(l);for(let[p,f]of a)f.classList.toggle("tss-chosen",d.
has(p)),f.setAttribute("aria-pressed",String(d.has(p)));for(let p of Z(o,"[data-spot]"))p.classList.toggle("tss-on",d.has(
String(p.dataset.spot)))}}}vt("picture",{prompt:"legend",make(t,e,n){let r=t.options,o=Ft(t,e,n,i=>{let u=new Set(i.values());for(let{letter:l,card:d}of a)
d.classList.toggle("ts-on",u.has(l))}),a=r.map(([i,u])=>{let l=s("div",{class:"ts-picture-card",onclick:()=>o.press(i)});
return l.innerHTML=t.svgs[i],l.querySelector("svg")?.setAttribute("aria-label",u),l.prepend(s("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:l}}),c=s("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:s("div",{class:"\
ts-pictured"},o.element,c),show:o.show,setDisabled:o.setDisabled,refused(){}}}});vt("point",{prompt:"legend",make(t,e,n){let r=Ft(t,e,n,i=>c.choose(i.values())),a=t.options.map(([i,u])=>[i,u.slice(i.length+
2)]),c=ue(t.svg,a,r.press);return{element:s("div",{},r.element,c.element),show:r.show,setDisabled:r.setDisabled,refused(){}}}});vt("put",{prompt:"legend",make(t,e,n){let r=t.lines,o=new Map(r.map(([d])=>[d,"1"])),a=Ft(t,e,n,d=>{for(let[p,f]of d)f&&
o.set(p,f.split("-")[1]);c.choose([...d.values()].map(p=>p.split("-")[0])),u(d)}),c=ue(t.svg,t.places,d=>{a.press(`${d}-${o.
get(a.active())}`)}),i=P("g",{class:"tss-placed"});c.drawing.append(i);function u(d){i.replaceChildren();for(let[p,f]of d){
let[g,h]=f.split("-"),S=t.at[g];if(!S)continue;let v=P("g",{transform:`translate(${S[0]} ${S[1]})`});v.innerHTML=t.pieces[p][Number(
h)-1][1],i.append(v)}for(let{part:p,show:f}of l)f(o.get(p)??"1")}let l=r.map(([d,p])=>{let f=s("div",{class:"ts-tray-par\
t"}),g=s("span",{class:"ts-hint",role:"status"}),h=et("Turn it",()=>{let A=o.get(d)==="1"?"2":"1";o.set(d,A),S(A);let R=a.
answers().get(d);R&&a.put(d,`${R.split("-")[0]}-${A}`)},`Turn it: ${p}`);function S(A){let[R,m]=t.pieces[d][Number(A)-1],
y=Number(/data-half="([\d.]+)"/.exec(m)?.[1]??90);f.innerHTML=`<svg viewBox="${-y} ${-y} ${2*y} ${2*y}" width="120" heig\
ht="120" aria-hidden="true">${m}</svg>`,g.textContent=`Way ${A}: ${R}`}let v=s("div",{class:"ts-tray"},f,s("div",{},p,g,
h));return{part:d,row:v,show:S,turn:h}});return{element:s("div",{},s("div",{class:"ts-trays"},...l.map(({row:d})=>d)),a.
element,c.element),show:a.show,setDisabled(d){a.setDisabled(d);for(let{turn:p}of l)p.disabled=d},refused(){}}}});var Rn="The connection to the course is lost. Go on answering: your answers stay in this browser and are sent when the c\
onnection is back. Simulators wait until then.",jn="The connection to the course is back.",Hn=1500,Wn=5e3,Oe=new Set,Dt=null,
Me;function ds(t){Dt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),Dt.isConnected||document.body.append(Dt),Dt.textContent=
t}function _n(){Dt?.remove(),Dt=null}function us(){clearTimeout(Me),Oe.size?Me=window.setTimeout(()=>ds(Rn),Dt?0:Hn):Dt&&
(ds(jn),Me=window.setTimeout(_n,Wn))}var ps=t=>({down(){Oe.add(t),us()},up(){Oe.delete(t),us()}});var Kn=1e3,Fn="input, button, select, textarea, summary, a, [tabindex]";function Un(t){let e=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:u,metaKey:l}=o,d={key:a,code:c,keyCode:i,ctrlKey:u,metaKey:l,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",d))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let o of t.querySelectorAll(Fn))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function qn(t,e,n){let r=t.widget_manager?.kernel,o=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(c,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),r?.statusChanged?.
connect(o),r?.connectionStatusChanged?.connect(a),r?.disposed?.connect(e),()=>{t.off("comm_live_update",e),r?.statusChanged?.
disconnect(o),r?.connectionStatusChanged?.disconnect(a),r?.disposed?.disconnect(e)}}var fs=`.twoshaft {
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
twoshaft-bar .ts-tasks a:not([aria-current]){border-bottom-color:Canvas}}`,hs="twoshaft-styles";function zn(){let t=document.
getElementById(hs);t?.textContent!==fs&&(t?.remove(),document.head.append(s("style",{id:hs},fs)))}function J({model:t,el:e},{
kind:n,lost:r=()=>Zt(e),line:o=()=>{}}){zn(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"\
ts-alert",role:"alert"}),c=ps(e),i=()=>e.classList.contains("ts-lost"),u=[],d=qn(t,()=>{i()||(e.classList.add("ts-lost"),
c.down(),r())},h=>{i()||(h?c.down():c.up(),o(h))}),p=Un(e),f,g=(h,S)=>{t.on(h,S),u.push([h,S])};return g("msg:custom",h=>{
h.type==="trouble"&&!i()&&(a.textContent=h.reason)}),{alert:a,follow:g,isLost:i,send(h){i()||(e.classList.add("ts-begun"),
t.send(h),clearTimeout(f),f=window.setTimeout(()=>t.send({type:"rest"}),Kn))},asks(h,{first:S,begin:v,who:A="Practice. N\
othing here is marked or saved."}={}){return S?.classList.add("ts-first"),s("div",{class:"ts-who"},s("p",{class:"ts-asks"},
h),v?s("p",{class:"ts-begin"},`Begin: ${v}.`):"",A?s("p",{},A):"")},show:(...h)=>e.replaceChildren(...It(h)),close(){c.up(),
clearTimeout(f),p(),d();for(let[h,S]of u)t.off(h,S)}}}function gs({model:t,el:e}){let n=J({model:t,el:e},{kind:"rig",lost:()=>u.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),o=s("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=nt("order"),n.send({type:"order",order:p,turn:c})},
u=ce({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),l=s("button",{type:"\
button",class:"ts-button",onclick:()=>u.change([...a],"The first order stands again")},"Start again");u.tools.append(l),
n.show(n.asks("Which steps stand in a wrong place?",{first:u.tools,begin:"choose a step and move it up or down"}),n.alert,
Tt([u.element],[r,o]));function d(){let p=t.get("judged");c!==null&&p.turn!==c||(c=null,r.textContent=p.finding,o.textContent=
p.cost,u.setOrder(p.order),u.setNotes(p.notes))}return n.follow("change:judged",d),d(),n.close}var Gn=["lit","bench","absent"],ms=[1,1.5,2,3,4.5];function Ut({svg:t,parts:e,words:n},{name:r="The unit in section",tallest:o}={}){
let a=s("div",{class:"ts-unit",tabindex:"0",role:"application","aria-label":`${r}. Left and right arrows walk from part \
to part, up and down to the part above or below, plus and minus zoom.`});a.innerHTML=t;let c=a.querySelector("svg"),i=c.
querySelector(".tsu-marks");c.setAttribute("aria-hidden","true"),c.removeAttribute("role");let u=new Map(e.map(([k])=>[k,
[]]));for(let k of Z(c,"[data-part]"))u.get(String(k.dataset.part))?.push(k);let l=new Map(e.map(([k],b)=>[k,b])),d=s("p",
{class:"ts-hint ts-unit-name",role:"status"}),p=yt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],
...e.map(([k,b])=>[k,b])]),{width:f,height:g}=c.viewBox.baseVal,h=o?`min(100%, ${Math.round(o*f/g)}px)`:"100%",S=new WeakMap,
v=-1,A=0,R={},m=k=>{let b=R[k];return b==="absent"?" Not there yet.":b==="bench"?" On the bench.":b==="lit"?" In hand.":
""},y=k=>`${e[k][1]}. ${e[k][2]}${m(e[k][0])}`;function B(k){for(let E of Z(c,".tsu-chosen"))E.classList.remove("tsu-cho\
sen");v=k;let b=k<0?"":e[k][0];p.value=b,d.textContent=k<0?O:y(k);for(let E of u.get(b)??[])E.classList.add("tsu-chosen");
k>=0&&w(b)}function M(k){let b=(u.get(k)??[]).map(q=>{let{x:ht,y:st,width:K,height:V}=q.getBBox(),[C,W]=S.get(q)??[0,0];
return{x:ht+C,y:st+W,width:K,height:V}}),E=Math.min(...b.map(q=>q.x)),N=Math.max(...b.map(q=>q.x+q.width)),H=Math.min(...b.
map(q=>q.y)),X=Math.max(...b.map(q=>q.y+q.height));return{x:(E+N)/2,y:(H+X)/2}}function w(k){let b=M(k),E=c.getBoundingClientRect().
width/c.viewBox.baseVal.width,[N,H]=[b.x*E,b.y*E],{scrollLeft:X,scrollTop:q,clientWidth:ht,clientHeight:st}=a;(N<X+40||N>
X+ht-40)&&(a.scrollLeft=N-ht/2),(H<q+40||H>q+st-40)&&(a.scrollTop=H-st/2)}function x(k){A=Math.max(0,Math.min(ms.length-
1,A+k)),c.style.width=`calc(${ms[A]} * ${h})`,c.style.height="auto",v>=0&&w(e[v][0])}function $(k){let b=M(e[v][0]),[E]=e.
map(([N],H)=>({k:H,at:M(N)})).filter(({k:N,at:H})=>N!==v&&(H.y-b.y)*k>4).sort((N,H)=>ws(N.at,b)-ws(H.at,b));E&&B(E.k)}a.
addEventListener("keydown",k=>{if(xt(k))return;let b=e.length-1;if(k.key==="ArrowRight")B(v>=b?0:v+1);else if(k.key==="A\
rrowLeft")B(v<=0?b:v-1);else if(k.key==="ArrowUp"||k.key==="ArrowDown")v<0?B(0):$(k.key==="ArrowUp"?-1:1);else if(k.key===
"Home")B(0);else if(k.key==="End")B(b);else if(k.key==="+"||k.key==="=")x(1);else if(k.key==="-")x(-1);else if(k.key==="\
Escape")B(-1);else return;k.preventDefault()}),a.addEventListener("click",k=>{let b=wt(k,"[data-part]")?.dataset.part;B(
b===void 0?-1:l.get(b)??-1)}),a.addEventListener("pointerover",k=>{let b=wt(k,"[data-part]")?.dataset.part;if(b===void 0||
k.pointerType!=="mouse")return;let E=wt(k,"[data-solid]")?.querySelector("title")?.textContent,N=e[l.get(b)??0][1];L.textContent=
E&&!N.endsWith(E)?`${E} (${N})`:N}),a.addEventListener("pointerleave",()=>{L.textContent=""}),p.addEventListener("change",
()=>B(l.get(p.value)??-1));let L=s("span",{class:"ts-unit-over","aria-hidden":"true"}),O="Point at a part, tap it, or ch\
oose it here to read its name.";d.textContent=O;let D=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",p),et(
"−",()=>x(-1),"Smaller"),et("+",()=>x(1),"Larger"),L),F=s("details",{class:"ts-unit-words"},s("summary",{},"What is wh\
ere, in words"),s("p",{},n));return x(0),{nodes:[D,d,a,F],choose:p,drawing:c,shift(k,[b,E]){S.set(k,[b,E]),k.setAttribute(
"transform",`translate(${b.toFixed(1)} ${E.toFixed(1)})`)},show(k){R=k.looks;for(let[b,E]of u)for(let N of E)for(let H of Gn)
N.classList.toggle(`tsu-${H}`,R[b]===H);i.innerHTML=k.marks,v>=0&&(d.textContent=y(v))}}}function ws(t,e){return Math.abs(
t.y-e.y)+2*Math.abs(t.x-e.x)}function bs(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function vs({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=Ut(t.get("picture")),
c=s("p",{class:"ts-hint",role:"status"}),i=s("dl",{class:"ts-facts"}),u=s("div",{class:"ts-ready"}),l=s("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),d=s("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:w=>{w.key==="Enter"&&m()}}),p=s("span"),f=w=>B.send({type:"move",by:w}),g=w=>B.
send({type:"go",position:w}),h=et("Back",()=>f(-1),"One step back"),S=et("Next",()=>f(1),"Next step"),v=et("Start",()=>g(
0),"Start with an empty bench"),A=et("End",()=>g(t.get("view").count),"End of the order"),R=et("Try it",()=>B.send({type:"\
take",step:l.value}),"Try it: the step chosen here"),m=()=>{let w=Number.parseInt(d.value,10);w>=0&&g(w)},y=s("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},v,h,S,A,s("span",{class:"t\
s-pair"},"place ",d,p,et("Go",m,"Go to this place")));y.addEventListener("keydown",w=>{if(!(w.target===d||xt(w))){if(w.key===
"ArrowLeft")f(-1);else if(w.key==="ArrowRight")f(1);else if(w.key==="Home")g(0);else if(w.key==="End")g(t.get("view").count);else
return;w.preventDefault()}});let B=J({model:t,el:e},{kind:"rig"});B.show(B.asks("What comes next, and what can no longer\
 be reached?",{first:S,begin:"press Next"}),B.alert,n,y,Tt(a.nodes,[r,c,i,o,s("p",{class:"ts-prompt"},"Do another step n\
ext"),u,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",l,R))]));function M(){let w=t.
get("view");n.textContent=w.finding,r.textContent=w.happened,o.textContent=w.next?`Next in this order: ${w.next}`:"This \
is the end of the order.",c.textContent=w.build.words,a.show(w.build),i.replaceChildren(...Et(w.facts));let x=u.contains(
document.activeElement);u.replaceChildren(...w.ready.map(([O,D])=>et(D,()=>B.send({type:"take",step:O})))),w.ready.length||
u.append(s("p",{class:"ts-hint"},"No step is ready.")),x&&(u.querySelector("button")??S).focus(),l.replaceChildren(...bt(
w.waiting)),l.disabled=R.disabled=!w.waiting.length,d.value=String(w.position),p.textContent=` of ${w.count} `;let $=w.position===
0,L=w.position===w.count;for(let O of[h,v])bs(O,$);for(let O of[S,A])bs(O,L)}return B.follow("change:view",M),M(),B.close}function qt(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=nt("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var it=(t,e,n,r,o)=>P("line",{x1:t,y1:e,x2:n,y2:r,class:o}),ct=(t,e,n,r="middle")=>P("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function zt(){let t=P("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(P("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(it(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(ct(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(P("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(it(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*
Math.cos(o),"tsg-mark"))}let e=it(100,134,100,119,"tsg-small"),n=P("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(e,n,P("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("tra\
nsform",`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${o}`)}}}function ks({top:t,mark:e,perFigure:n}){let r=P("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),o=c=>30+c/t*540;r.append(P("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*e<=t+1e-9;c+=1){let i=c%n===0;r.append(it(o(c*e),22,o(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.
append(ct(o(c*e),84,String(Math.round(c*e))))}let a=P("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(
a,ct(586,14,"newtons","end")),{node:r,top:t,set(c,i){a.setAttribute("transform",`translate(${o(Math.min(c,t))} 0)`),r.setAttribute(
"aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function ys({low:t,high:e,reach:n}){let r=P("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(P("rect",{x:o(t),y:34,width:o(
e)-o(t),height:24,class:"tsg-target"}),ct((o(t)+o(e))/2,84,"target"),it(20,46,700,46,"tsg-mark"),it(360,26,360,66,"tsg-m\
ark tsg-long"),ct(20,20,"end play","start"),ct(700,20,"preload","end"),ct(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let u of[
i,-i])r.append(it(o(u),42,o(u),50,"tsg-mark"));r.append(ct(o(-n),70,`${n.toFixed(2)} mm`,"start"),ct(o(n),70,`${n.toFixed(
2)} mm`,"end"));let a=P("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=P("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return r.append(a,c),{node:r,set(i,u,l){a.setAttribute("transform",`translate(${o(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${o(u)} 0)`),r.setAttribute("aria-label",l)}}}function gt(t,{min:e,max:n,step:r,value:o,words:a,onInput:c}){let i=s(
"input",{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),u=s("output",{class:"ts-slid"},a(o));
return i.addEventListener("input",()=>{let l=a(Number(i.value));u.textContent=l,i.setAttribute("aria-valuetext",l),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,u),set(l){i.value=
String(l),u.textContent=a(l)}}}function ft(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},
...e.map(([a,c])=>s("option",{value:a,selected:a===n},c)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function xs({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),u=s("u\
l",{class:"ts-sentences"}),l=qt((w,x)=>y.send({type:"set",state:w,turn:x})),d=w=>{r={...r,...w},l.ask(r)},p=P("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),f=it(0,0,0,0,"tsg-mark tsg-long"),g=ct(0,0,""),h=96,
S=h/(n.readingsOnly?r.radius:n.radii[1]),v=P("svg",{viewBox:`0 0 ${2*h+120} ${2*h+30}`,width:2*h+120,height:2*h+30,class:"\
tsg-drum",role:"img"}),A=h+4;p.setAttribute("transform",`translate(${A} ${A})`),v.append(p,f,it(4,A,2*h+4,A,"tsg-centre"),
it(A,4,A,2*h+4,"tsg-centre"),P("circle",{cx:A,cy:A,r:10,class:"tsg-face"}),g);let R=Y("Turn the shaft ten times",()=>d({
turns:r.turns+10})),m=[s("div",{class:"ts-tools"},R)];if(!n.readingsOnly){let w=n.kinds,x=w.map(([$,L])=>s("label",{class:"\
ts-option"},s("input",{type:"checkbox",checked:r.kinds.includes($),onchange:O=>d({kinds:w.map(([D])=>D).filter(D=>D===$?
O.target.checked:r.kinds.includes(D))})}),`with ${L}`));m[0].append(Y("Fit the rings anew",()=>d({turns:0}))),x.length&&
m.push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the bearings"),...x)),m.push(gt("S\
etting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:$=>d({setting:$}),words:$=>$<0?`${(-$).toFixed(3)} mm \
of end play`:`${$.toFixed(3)} mm of preload`}).row,gt("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:r.
radius,onInput:$=>d({radius:$}),words:$=>`${$} mm`}).row)}let y=J({model:t,el:e},{kind:"rig"});y.show(y.asks("How hard d\
oes the shaft turn?",{first:R,begin:"turn the shaft",who:n.readingsOnly?"Take your reading here; write it in the form.":
void 0}),y.alert,s("div",{class:"tsg-beside"},v,s("div",{class:"tsg-side"},a,c)),...m,i,u);function B(){let w=t.get("sho\
wn");l.waiting||(r=w.state);let x=S*w.state.radius;Ot(p,{r:x}),Ot(f,{x1:A,y1:A-x,x2:2*h+120,y2:A-x}),Ot(g,{x:A,y:2*h+22}),
g.textContent=`drum, radius ${w.state.radius} mm`,v.setAttribute("aria-label",`A drum of ${w.state.radius} mm radius on \
the shaft; the cord leaves it at its edge towards the scale.`),o?.top!==w.scale.top&&(o=ks(w.scale),a.replaceChildren(o.
node),c.textContent=`Spring scale to ${w.scale.top} N, one mark ${w.scale.mark} N.`),o?.set(w.pull,w.pullWords),i.textContent=
w.finding,u.replaceChildren(...Bt(w.words)),l.answered(w.turn)}let M=()=>l.free();return y.follow("change:shown",B),y.follow(
"msg:custom",M),B(),y.close}function Ct({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=qt((p,f)=>c.send({type:"set",state:p,turn:f})),
c=J({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),u=n(r,p=>{o={...o,...p},a.ask(o)},o),l=r.readingsOnly?
"Take your readings here; write them in the form.":void 0;c.show(c.asks(u.asks,{first:u.first,begin:u.begin,who:l}),c.alert,
...u.side?[Tt([u.picture],[...u.controls,i])]:[s("div",{class:"tsg-wide"},u.picture),...u.controls,i]);function d(){let p=t.
get("shown");a.waiting||(o=p.state),u.set(p,o),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",
d),c.follow("msg:custom",a.free),d(),c.close}var Lt=(...t)=>s("div",{class:"ts-tools"},...t);var Yn={x:44,y:84,perMm:34};function Xn(t){let e=P("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=Yn,a=P("g",{}),c=P("g",{});e.append(P("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),P("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,c,ct(12,14,"main scale, mm","start"),ct(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let u=n+i*t.space*o;c.append(
it(u,r,u,r+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(ct(u,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let u=Math.
max(0,Math.ceil(i.mm-1));u<=t.top+25;u+=1){let l=n+(u-i.mm)*o;l<4||l>756||(a.append(it(l,r,l,r-(u%10===0?34:u%5===0?28:20),
"tsi-fine")),u%5===0&&a.append(ct(l,r-40,String(u))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function $s(t){
return Ct(t,(e,n,r)=>{let o=Xn(e),a=gt("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:l=>n(
{rod:l})}),c=ft("Foot",e.places,r.place,l=>n({place:l,rod:0})),i=Y("Push the rod down until it rests",()=>n({rod:e.top})),
u=ft("Look",e.eyes,r.eye,l=>n({eye:l}));return{asks:"How deep does it lie?",first:i,begin:"push the rod down",picture:o.
node,controls:[Lt(c.row,u.row),Lt(i,Y("Lift the rod",()=>n({rod:0}))),a.row],set(l,d){o.set(l),c.box.value=d.place,u.box.
value=d.eye,a.box.value=d.rod}}})}function Yt(t,e){let n=e>1?.65/(e-1):0;return Array.from({length:e},(r,o)=>{let a=e>1?o*n:0,c=e>1?.35:1;return 1-Math.max(
0,Math.min(1,(t-a)/c))})}function Ss(t,e,n,r){let[o,a]=[0,0];for(let c=n;c!==null;c=t[c].parent){let[i,u]=t[c].own[r]??[
0,0];o+=i*e[c],a+=u*e[c]}return[o,a]}function Te(t){let e=t.findIndex(n=>n>0);return{placed:t.filter(n=>n===0).length,next:e<
0?null:e}}function Ls(t,e){return t<=0?0:t>=e||e<2?1:.35+(t-1)*(1-.35)/(e-1)}function Cs(t,e,n){let r=[0,0,0];for(let o=n;o!==
null;o=t[o].parent){let a=e[o];for(let[c,i]of t[o].own.entries())r[c]+=i*a}return r}function Ie(t,e){globalThis.twoshaftChunks??=new Map;let n=globalThis.twoshaftChunks,r=n.get(e)??Vn(t,e);return n.set(e,
r),r.catch(()=>n.delete(e)),r}function Vn(t,e){return new Promise(n=>{let r=(o,a)=>{if(o.type!=="chunk"||o.name!==e)return;
t.off("msg:custom",r);let c=URL.createObjectURL(new Blob([a[0]],{type:"text/javascript"})),i=import(c);i.finally(()=>URL.
revokeObjectURL(c)).catch(()=>{}),n(i)};t.on("msg:custom",r),t.send({type:"chunk",name:e})})}var pe=.12,Rt=1.15,Es="This browser draws nothing in three dimensions. The section shows the same parts.",fe;function As(){
if(fe!==void 0)return fe;let t=document.createElement("canvas").getContext("webgl2");return t?.getExtension("WEBGL_lose_\
context")?.loseContext(),fe=!!t,fe}function Ms(t){As()&&Ie(t,"solids").catch(()=>{})}function he(t,e){let n=s("span",{style:`\
color: ${e}`});t.append(n);let r=s("canvas",{width:1,height:1}).getContext("2d");r.fillStyle=getComputedStyle(n).color,n.
remove(),r.fillRect(0,0,1,1);let[o,a,c]=r.getImageData(0,0,1,1).data;return`rgb(${o}, ${a}, ${c})`}function Os(t,e,n){let r=s(
"p",{class:"ts-hint ts-unit-name",role:"status"});if(!As())return r.textContent=Es,{drawn:!1,nodes:[r],move(){},ready(){},
close(){}};let o=s("canvas",{class:"ts-space",tabindex:"0",role:"application","aria-label":"The parts in three dimension\
s. Arrow keys turn, plus and minus zoom, Home looks as at first, H hides the chosen part, A shows all. The section shows\
 the same parts with their names."}),a=yt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],...n.map(
([m,y])=>[m,y])]),c=new Set,i,u=()=>[0,0,0],l=()=>{},d="Drag or use the arrow keys to turn. Tap a part, or choose it her\
e, to read its name.";r.textContent="Drawing …";function p(){let m=n.find(([B])=>B===a.value),y=c.has(a.value)?" Hidde\
n.":"";r.textContent=m?`${m[1]}. ${m[2]}${y}`:d,i?.look(a.value,c)}function f(){a.value&&(c.delete(a.value)||c.add(a.value),
p())}function g(){c.clear(),p()}a.addEventListener("change",p);let h={ArrowLeft:()=>i?.turnBy(-pe,0),ArrowRight:()=>i?.turnBy(
pe,0),ArrowUp:()=>i?.turnBy(0,pe),ArrowDown:()=>i?.turnBy(0,-pe),"+":()=>i?.zoomBy(Rt),"=":()=>i?.zoomBy(Rt),"-":()=>i?.
zoomBy(1/Rt),Home:()=>i?.home(),h:f,a:g};o.addEventListener("keydown",m=>{let y=h[m.key]??h[m.key.toLowerCase()];!y||xt(
m)||(y(),m.preventDefault())});let S=null;o.addEventListener("pointerdown",m=>{S={x:m.clientX,y:m.clientY,far:!1},o.setPointerCapture(
m.pointerId)}),o.addEventListener("pointermove",m=>{if(!S)return;let[y,B]=[m.clientX-S.x,m.clientY-S.y];!S.far&&Math.hypot(
y,B)<4||(S={x:m.clientX,y:m.clientY,far:!0},i?.turnBy(-y/150,B/150))}),o.addEventListener("pointerup",m=>{if(S&&!S.far){
let{left:y,top:B,width:M,height:w}=o.getBoundingClientRect(),[x,$]=[(m.clientX-y)/M,(m.clientY-B)/w];a.value=i?.partAt(2*
x-1,1-2*$)??"",p()}S=null}),o.addEventListener("wheel",m=>{document.activeElement===o&&(i?.zoomBy(m.deltaY<0?Rt:1/Rt),m.
preventDefault())},{passive:!1});let v=new ResizeObserver(()=>i?.paint()),A=!1;return Ie(t,"solids").then(({solidsView:m})=>{
if(A)return;i=m(o,e,{ink:he(o.parentElement??document.body,"var(--ts-ink)"),paper:he(o.parentElement??document.body,"var\
(--ts-paper)"),accent:he(o.parentElement??document.body,"var(--ts-accent)"),metal:he(o.parentElement??document.body,"col\
or-mix(in srgb, var(--ts-ink) 18%, var(--ts-paper))")}),i.move(u),i.fit(),l(),i.home(),i.paint(),v.observe(o),p(),o.dataset.
painted="true"},()=>{r.textContent=Es}),{drawn:!0,nodes:[s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",a),
et("Hide or show",f,"Hide or show the chosen part"),et("Show all",g,"Show all parts"),et("−",()=>i?.zoomBy(1/Rt),"Smal\
ler"),et("+",()=>i?.zoomBy(Rt),"Larger")),r,o],move(m){u=m,i?.move(m)},ready(m){l=m},close(){A=!0,v.disconnect(),i?.close()}}}var ge=200,Jn=580,Zn="2.6";function Ts({model:t,el:e}){let n=s("p",{class:"ts-finding"}),r=s("p",{class:"ts-hint ts-next\
in",role:"status"}),o=s("div",{class:"ts-apart-picture"}),a=s("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"Wha\
t goes in"}),c=t.get("stages"),i=ft("Show",c,t.get("stage"),x=>w.send({type:"stage",stage:x})),u=gt("From apart to toget\
her",{min:0,max:ge,step:1,value:0,words:x=>x<=0?"apart":x>=ge?"together":"on the way",onInput:x=>m(x/ge)}),l=t.get("pict\
ure"),d,p=[],f=[],g=0,h=!1,S,v=et("In three dimensions",()=>{h=!h,v.setAttribute("aria-pressed",String(h)),B()});v.setAttribute(
"aria-pressed","false");function A(x){u.set(Math.round(x*ge)),m(x)}function R(x){let{placed:$}=Te(Yt(g,l.movers.length));
A(Ls($+x,l.movers.length))}function m(x){if(g=x,!d)return;let $=Yt(g,l.movers.length);for(let{group:F,mover:k,view:b}of p)
d.shift(F,Ss(l.movers,$,k,b));y($);for(let F of f)F.style.opacity=String(1-g);e.classList.toggle("ts-together",g>.5);let{
placed:L,next:O}=Te($),D=`${L} of ${$.length} in place.`;for(let[F,k]of[...a.children].entries())k.classList.toggle("ts-\
current",F===O);r.textContent=O===null?"All in place.":`${D} Next in: ${l.movers[O].words}.`}function y(x){let{movers:$}=t.
get("space");S?.move(L=>Cs($,x,L))}function B(){if(S?.close(),S=void 0,!!d&&(o.replaceChildren(...h?[]:d.nodes),!!h)){if(t.
get("space").stage!==t.get("stage")){Ms(t),w.send({type:"space"});return}S=Os(t,t.get("space"),l.parts),y(Yt(0,l.movers.
length)),o.replaceChildren(...S.nodes,...S.drawn?[]:d.nodes),S.ready(()=>y(Yt(g,l.movers.length)))}}function M(){if(l=t.
get("picture"),n.textContent=t.get("finding"),i.box.value=t.get("stage"),d=void 0,o.replaceChildren(),!l.svg)return;d=Ut(
l,{name:"Parts apart",tallest:Jn}),d.drawing.dataset.grow=Zn,p=Z(d.drawing,"[data-move]").map($=>({group:$,mover:Number(
$.dataset.move),view:String($.dataset.view)})),f=Z(d.drawing,".tsu-traces"),a.replaceChildren(...l.movers.map(({words:$})=>s(
"li",{},$))),B(),m(g)}let w=J({model:t,el:e},{kind:"rig"});return w.show(w.asks("How do these parts go together?",{first:u.
box,begin:"move the slider",who:""}),w.alert,n,s("div",{class:"ts-apart"},s("div",{class:"ts-apart-tools"},i.row,u.row,s(
"div",{class:"ts-tools"},et("One in",()=>R(1),"One part more in place"),et("One out",()=>R(-1),"One part less in place")),
v,r,a),o)),w.follow("change:picture",M),w.follow("change:space",B),M(),()=>{S?.close(),w.close()}}function Is({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=s("div",{class:"tsj-bars"}),i=Z(a,"[data-bolt]"),u=nt("torq\
ue"),l=s("input",{id:u,type:"range",min:10,max:100,step:5,oninput:()=>f()});l.value="100";let d=s("output",{class:"tsj-f\
igure",for:u}),p=()=>l.value==="100"?n.torque:Number((Math.round(n.torque*Number(l.value)/100/n.step)*n.step).toFixed(3));
function f(){d.textContent=`${p()} N·m`,l.setAttribute("aria-valuetext",`${p()} newton metres, ${l.value} percent of th\
e torque`)}let g=x=>m.send({type:"pull",bolt:x,torque:p()}),h=Y("Take back",()=>m.send({type:"undo"})),S=Y("Wait until t\
he film has run out",()=>m.send({type:"wait"})),v=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>m.send({type:"set",film:Number(v.value)})},...n.films.map(x=>s("option",{value:x},x?`${x} µm thick`:"none"))),
A=s("input",{type:"checkbox",onchange:()=>m.send({type:"set",scattered:A.checked})});a.addEventListener("click",x=>{let $=wt(
x,"[data-bolt]");$&&(R($),g(Number($.dataset.bolt)))});let R=x=>{for(let $ of i)$.setAttribute("tabindex",$===x?"0":"-1");
x.focus({preventScroll:!0})};a.addEventListener("keydown",x=>{let $=wt(x,"[data-bolt]");if(!$||x.ctrlKey||x.metaKey||x.altKey)
return;let L=Number($.dataset.bolt),O={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[x.key];if(O)R(i[(L+O+i.length)%
i.length]);else if(x.key==="Home")R(i[0]);else if(x.key==="End")R(i[i.length-1]);else if(x.key==="Enter"||x.key===" ")x.
repeat||g(L);else return;x.preventDefault()});let m=J({model:t,el:e},{kind:"rig"}),y=Y("Start all by hand",()=>m.send({type:"\
start"})),B=s("div",{class:"ts-tools",role:"group","aria-label":"Bolts"},y,...n.rounds.map(([x,$])=>Y(`One round ${$}`,()=>m.
send({type:"round",pattern:x,torque:p()}))),h,Y("Start again",()=>m.send({type:"again"}))),M=s("div",{class:"ts-tools",role:"\
group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:u},"Wrench set to"),l,d));n.films.length&&M.append(
s("label",{class:"ts-pair"},"Wet sealant",v),S,s("label",{class:"tsj-check"},A,"friction scatters from bolt to bolt")),m.
show(m.asks("Does every bolt keep its clamp?",{first:y,begin:"start all bolts by hand",who:n.readingsOnly?"Nothing is sa\
ved here; your answers stand in the form.":void 0}),m.alert,r,M,B,o,s("div",{class:"tsj-bench"},a,c),s("details",{class:"\
ts-keys"},s("summary",{},"How, and keys"),"The first choice of a bolt starts it by hand, the next ones pull it. Arrows g\
o from bolt to bolt, Enter pulls."));function w(){let x=t.get("view");r.textContent=x.finding,o.textContent=x.happened,c.
innerHTML=x.bars;for(let[$,L]of i.entries()){let O=x.tight[$]?`${x.clamps[$]} kN`:x.started[$]?"started by hand":"not st\
arted";L.setAttribute("aria-label",`Bolt ${$+1} of ${n.count}, ${O}`),L.classList.toggle("tsj-tight",x.tight[$]),L.classList.
toggle("tsj-started",x.started[$])}h.disabled=!x.pulls,S.disabled=!x.standing,v.value=String(x.film),A.checked=x.scattered}
return m.follow("change:view",w),f(),w(),m.close}var Ns="tsk-number";function Nt(t,e,...n){return s("td",{class:e?Ns:null,"data-label":t||null,role:"cell"},...n)}function me(t,e,n){
let r=e.map(([c,i])=>s("th",{scope:"col",role:"columnheader",class:i?Ns:null},c)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function Bs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),c=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),u=new Map;for(let[f,
g,h,S]of n.checks){let v=s("select",{class:"ts-box","aria-label":`What it showed: ${g}`,onchange:()=>d.send({type:"obser\
ve",check:f,shown:v.value})},s("option",{value:""},"Not made"),...bt(S)),A=Nt("worth, bit",!0),R=Nt("bit a minute",!0),m=s(
"tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},g),Nt("min",!0,`${h}`),Nt("it showed",!1,v),A,R);u.set(f,{box:v,
tells:A,rate:R,row:m}),i.append(m)}let l=s("button",{class:"ts-button",type:"button",onclick:()=>d.send({type:"clear"})},
"Take all observations back"),d=J({model:t,el:e},{kind:"rig"});d.show(d.asks("Which fault is it, and which check comes n\
ext?",{first:u.values().next().value?.box,begin:"say what a check showed"}),d.alert,r,a,c,me("Checks: what each showed, \
and what it is still worth",[["Check"],["min",!0],["It showed"],["worth, bit",!0],["bit a minute",!0]],i),s("div",{class:"\
ts-tools"},l,o));function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.spent,c.textContent=f.more,a.replaceChildren(
...Bt(f.left.map(([S,v])=>`${S} (${v})`)));let g=f.ranked,h=new Map(g.map(([S,v,A],R)=>[S,{bits:v,rate:A,rank:R}]));for(let[
S,{box:v,tells:A,rate:R,row:m}]of u){let y=f.observed[S],B=h.get(S);v.value=y??"",A.textContent=B?B.bits:y!==void 0?"mad\
e":"nothing",R.textContent=B?B.rate+(B.rank===0?" ◀ best next":""):"–",m.classList.toggle("tsk-best",B?.rank===0)}}return d.
follow("change:view",p),p(),d.close}function Ds(t,{move:e,hand:n}){let{element:r,at:o}=de(t),a=Object.entries(t.aims).filter(([u])=>u.startsWith("at:")),c=(u,l)=>{
let[d,p]=o(u,l);return P("circle",{cx:d,cy:p,r:16,class:"tsl-spot",...{"data-travel":u,"data-turn":l}})},i=P("g",{class:"\
tsl-knob"},P("circle",{r:12}));return r.append(...a.map(([,[u]])=>c(Number(u),0)),...t.gears.map(([,u,l])=>c(u,l)),i),r.
classList.add("ts-lever"),r.addEventListener("click",u=>{let l=wt(u,".tsl-spot");if(!l)return;let d=[Number(l.dataset.travel),
Number(l.dataset.turn)];for(let p of as(t.aims,n(),d))e(p)}),{element:r,scale:[Gt,le],show([u,l],d){let[p,f]=o(u,l);i.setAttribute(
"transform",`translate(${p.toFixed(1)} ${f.toFixed(1)})`);for(let g of Z(r,"[data-gear]"))g.classList.toggle("tsl-in",d.
includes(String(g.dataset.gear)))}}}function Ps({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit"}),a=Ds(t.get("plan"),{move:$=>A({type:"move",code:$}),hand:()=>t.get("view").hand}),
c=s("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=s("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...bt(t.get("builds"))),u=et("Start again",()=>A({type:"reset"})),l=s("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([$,L])=>et(L,()=>A({type:"move",code:$})))),
d=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),p=s("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),f=s("p",{class:"ts-proof",role:"status"}),g=et("What does a full hand test find?",()=>{
g.disabled=!0,f.textContent="testing",A({type:"prove"})}),h=J({model:t,el:e},{kind:"rig"});c.append(s("div",{},s("p",{class:"\
ts-prompt"},"The lever"),a.element),o),h.show(h.asks("Which gears can the lever reach?",{first:a.element,begin:"press a \
place in the gate"}),h.alert,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Put together: ",i),u,g),n,c,r,f,s("p",
{class:"ts-hint ts-gate-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down tu\
rn. Or in words:"),s("div",{class:"ts-gate-work"},l,s("div",{},s("p",{class:"ts-prompt"},"Tried by hand"),p,d)));let S=0,
v="";function A($){S+=1,h.send({...$,turn:S})}function R(){let $=t.get("view");if(v!==t.get("figure")){v=t.get("figure"),
o.innerHTML=v;let L=Ht(o,"svg");L.removeAttribute("role"),L.setAttribute("aria-hidden","true")}for(let L of Z(o,"[data-b\
ody]")){let[O,D]=$.moved[String(L.dataset.rides??L.dataset.body)]??[0,0];L.setAttribute("transform",`translate(${O.toFixed(
2)} ${D.toFixed(2)})`)}for(let L of Z(o,"[data-gear]"))L.classList.toggle("tsg-in",$.gears.includes(L.dataset.gear));for(let L of Z(
o,"[data-lifts]"))L.classList.toggle("tsg-up",$.lifted);a.show($.hand,$.gears),c.dataset.turn=String($.turn),n.textContent=
`${$.gears.length>1?"■ ":$.gears.length?"● ":"○ "}${$.title}.`,r.textContent=$.happened,r.classList.toggle("ts-sto\
pped",/topped by/.test($.happened)),(d.childElementCount!==$.log.length||d.lastElementChild?.textContent!==$.log.at(-1))&&
(d.replaceChildren(...$.log.map(L=>s("li",{class:/topped by/.test(L)?"ts-stopped":""},L))),d.scrollTop=d.scrollHeight),p.
hidden=$.log.length>0,i.value=$.build,f.textContent=$.proof,g.disabled=!1,B=!1,x()}c.addEventListener("keydown",$=>{if(xt(
$))return;let L={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[$.key];L&&($.preventDefault(),A({type:"\
nudge",travel:L[0],turned:L[1]}))}),i.addEventListener("change",()=>A({type:"build",build:i.value}));let m=null,y=null,B=!1;
function M($,L){let O=L.getBoundingClientRect(),D=L.viewBox.baseVal.width/O.width;return[($.clientX-O.left)*D,($.clientY-
O.top)*D]}c.addEventListener("pointerdown",$=>{let L=wt($,".tsg-panel, .tsl-knob");if(!L||$.button!==0)return;let O=L.ownerSVGElement,
D=t.get("view").hand,[F,k]=M($,O),b=Number(L.dataset.scale),E=b?[b,b]:a.scale;m={svg:O,x:F-D[0]*E[0],y:k+D[1]*E[1],scale:E},
c.setPointerCapture($.pointerId),c.focus({preventScroll:!0}),c.classList.add("ts-pulling"),$.preventDefault()}),c.addEventListener(
"pointermove",$=>{if(!m)return;let[L,O]=M($,m.svg),{scale:D}=m;y={travel_mm:(L-m.x)/D[0],turn_mm:(m.y-O)/D[1]},x()});let w=()=>{
m=null,c.classList.remove("ts-pulling")};c.addEventListener("pointerup",w),c.addEventListener("pointercancel",w);function x(){
if(B||!y)return;B=!0;let $=y;y=null,A({type:"pull",...$})}return h.follow("msg:custom",$=>{$.type==="trouble"&&(B=!1)}),
h.follow("change:view",R),R(),h.close}function Rs({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding tsw-say",role:"status"}),a=s(
"p",{class:"ts-happened tsw-happened",role:"status"}),c=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,
l=n.gears.map(([L,O])=>s("button",{type:"button",class:"ts-button","data-gear":L,"aria-pressed":"false",onclick:()=>w({type:"\
gear",gear:L})},O)),d=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:L=>w({type:"hold",shaft:L.target.
value})},...bt(n.holds)),p=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:L=>{i=L.target.value,$()}},
...bt(r.dials.map(L=>[L.shaft,L.name]))),f=L=>w({type:"turn",shaft:i,turns:L}),g=`1/${n.marks}`,h=s("div",{class:"ts-too\
ls",role:"group","aria-label":"Turn the shaft"},et("↺ 1 turn",()=>f(-1),"One turn anticlockwise"),et(`↺ ${g}`,()=>f(
-n.step),`${g} turn anticlockwise`),et("↺ a touch",()=>f(-n.fine),"A touch anticlockwise"),et("a touch ↻",()=>f(n.fine),
"A touch clockwise"),et(`${g} ↻`,()=>f(n.step),`${g} turn clockwise`),et("1 turn ↻",()=>f(1),"One turn clockwise"),et(
"Marks to zero",()=>w({type:"reset"}))),S=new Map;for(let L of r.dials){let O=P("g",{},P("circle",{class:"tsw-end",r:34}),
P("line",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),P("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),D=[];for(let H=0;H<
n.marks;H+=1)D.push(P("line",{class:"tsw-tick",y1:-40,y2:H?-47:-52,transform:`rotate(${H*360/n.marks})`})),H&&D.push(P("\
text",{class:"tsw-number",x:57*Math.sin(H*2*Math.PI/n.marks),y:-57*Math.cos(H*2*Math.PI/n.marks)+4},String(H)));let F=P(
"svg",{viewBox:"-70 -70 140 140",class:"tsw-dial","data-shaft":L.shaft,"aria-hidden":"true"},P("circle",{class:"tsw-plat\
e",r:40}),...D,P("path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),O),k=s("div",{class:"tsw-count",tabindex:"0",role:"\
application","aria-roledescription":"shaft","data-shaft":L.shaft},s("div",{class:"tsw-name"}),F,s("div",{class:"tsw-stro\
kes","aria-hidden":"true"}),s("div",{class:"tsw-figure"}));S.set(L.shaft,{box:k,svg:F,shaftEnd:O}),k.addEventListener("f\
ocus",()=>{i!==L.shaft&&(i=L.shaft,$())}),k.addEventListener("keydown",H=>{if(xt(H))return;let X={ArrowRight:1,ArrowDown:1,
ArrowLeft:-1,ArrowUp:-1,PageDown:1,PageUp:-1}[H.key];X&&(H.preventDefault(),i=L.shaft,f(X*(H.key.startsWith("Page")?1:H.
shiftKey?n.fine:n.step)))});let b=null,E=H=>{let X=F.getBoundingClientRect();return Math.atan2(H.clientX-X.left-X.width/
2,X.top+X.height/2-H.clientY)/(2*Math.PI)};F.addEventListener("pointerdown",H=>{H.button===0&&(b=E(H),F.setPointerCapture(
H.pointerId),k.focus({preventScroll:!0}),H.preventDefault())}),F.addEventListener("pointermove",H=>{if(b===null)return;let X=E(
H),q=X-b;q-=Math.round(q),b=X,v+=q,R()});let N=()=>{b=null};F.addEventListener("pointerup",N),F.addEventListener("pointe\
rcancel",N)}let v=0,A=!1;function R(){if(A||Math.abs(v)<.002)return;A=!0;let L=v;v=0,f(L)}let m=J({model:t,el:e},{kind:"\
rig"}),y=[s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Hold still: ",d),s("span",{class:"ts-pair"},"Turn by ha\
nd: ",p)),s("div",{class:"tsw-counts"},...[...S.values()].map(L=>L.box)),h,a];m.show(m.asks("How many turns does it take\
?",{first:h,begin:n.closed?"turn a shaft":"engage a gear, then turn a shaft",who:n.closed?"Nothing is saved here; your a\
nswers stand in the form.":void 0}),m.alert,o,!n.closed&&s("div",{class:"ts-tools",role:"group","aria-label":"Gears enga\
ged"},s("span",{},"Engage: "),...l),...n.closed?y:[Tt([c],y)],s("p",{class:"ts-hint tsw-say"},`All three are seen from t\
he clutch side. Drag a dial round, or go to it and use the arrow keys (${g} turn), Shift with an arrow key (a touch) or \
Page Up and Page Down (one turn). Each stroke is a whole turn.`));let B=0,M=null;function w(L){B+=1,m.send({...L,turn:B})}
let x=L=>{let O=[];for(let D=L;D>0;D-=5)O.push(D>=5?"||||/":"|".repeat(D));return O.join(" ")};function $(){let L=t.get(
"view");M!==t.get("figure")&&(M=String(t.get("figure")),c.innerHTML=M);for(let O of Z(c,"[data-wheel]")){let[D,F]=L.wheels[String(
O.dataset.wheel)]??[0,!0];O.setAttribute("transform",`translate(0 ${(D*Number(O.dataset.reach)).toFixed(1)})`),O.classList.
toggle("tsw-behind",!F)}for(let O of l)O.setAttribute("aria-pressed",String(L.engaged.includes(O.dataset.gear)));d.value=
L.held,p.value=i;for(let O of L.dials){let{box:D,shaftEnd:F}=S.get(O.shaft),k=O.way>0?"↻":O.way<0?"↺":"";F.setAttribute(
"transform",`rotate(${O.angle})`);let[b,,E,N]=D.children;b.textContent=`${O.name}${O.held?", held":O.shaft===i?", your h\
and":""}`,E.textContent=O.strokes||k?`${k} ${x(O.strokes)}`:"no stroke",N.textContent=O.figure,D.classList.toggle("tsw-h\
and",O.shaft===i),D.classList.toggle("tsw-held",O.held),D.setAttribute("aria-label",`${O.name}${O.held?", held":""}. ${O.
words}`)}o.textContent=L.finding,a.textContent=L.happened,e.dataset.turn=String(L.turn),A=!1,R()}return m.follow("change\
:view",$),$(),m.close}function js({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),c=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,c),u=[],
l=[],d=null,p=t.get("plan").lookingOnly,f=(M,w)=>s("button",{type:"button",class:"ts-button","data-verdict":M,"aria-pres\
sed":"false",onclick:()=>v.send({type:"judge",place:d,verdict:M})},w),g=p?[]:[f("stop","Stop here"),f("well","Fine as it\
 is")],h=s("button",{type:"button",class:"ts-button",onclick:()=>v.send({type:"next"})},"Another day"),S=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...g);t.get("plan").more&&S.append(h);let v=J({model:t,
el:e},{kind:"rig"});v.show(v.asks(p?"What is to be seen at each place?":"Where can somebody get hurt?",{first:p?r:g[0],begin:p?
"choose a place":"choose a place and judge it",who:p?"Nothing is saved here; your answers stand in the form.":void 0}),v.
alert,n,s("p",{class:"ts-keys"},p?"Choose a place to read what can be seen there. Keys: arrows go from place to place.":
"Choose a place, read what can be seen there, and judge it. Keys: arrows go from place to place; Tab goes on to the butt\
ons."),Tt([r],[i,!p&&S]));function A(M,w){let x=M!==d;d=M;for(let[$,L]of l.entries()){let O=u[$][0]===M;L.setAttribute("\
tabindex",O?"0":"-1"),L.setAttribute("aria-pressed",String(O)),L.classList.toggle("tsh-chosen",O),O&&w&&(L.focus({preventScroll:!0}),
R(L))}x&&v.send({type:"choose",place:M})}function R(M){let w=Ht(M,".tsh-hit").getBoundingClientRect(),x=r.getBoundingClientRect();
(w.left<x.left||w.right>x.right)&&(r.scrollLeft+=w.left-x.left-(x.width-w.width)/2),(w.bottom<0||w.bottom>innerHeight||w.
top<0)&&M.scrollIntoView({block:"nearest"})}function m(){let M=t.get("plan");u=M.places,r.innerHTML=M.drawing,Ht(r,"svg").
setAttribute("role","group"),l=u.map(([w])=>Ht(r,`[data-place="${w}"]`)),l.forEach((w,x)=>{w.setAttribute("role","button"),
w.setAttribute("aria-label",`${x+1} ${u[x][1]}`),w.addEventListener("click",()=>A(u[x][0],!0))}),d=String(t.get("view").
chosen),A(d,!1)}r.addEventListener("keydown",M=>{if(xt(M))return;let w=u.findIndex(([L])=>L===d),x=Math.min(6,u.length),
$=w;if(M.key==="ArrowRight")$=w+1;else if(M.key==="ArrowLeft")$=w-1;else if(M.key==="ArrowDown")$=w+x;else if(M.key==="A\
rrowUp")$=w-x;else if(M.key==="Home")$=0;else if(M.key==="End")$=u.length-1;else if(M.key!=="Enter"&&M.key!==" ")return;
M.preventDefault(),$>=0&&$<u.length&&A(u[$][0],!0)});function y(){let M=t.get("view");n.textContent=M.finding;let w=u.findIndex(
([L])=>L===M.chosen);o.textContent=`${w+1}  ${u[w][1]}`,a.textContent=M.seen;let{verdict:x,...$}=M.told;if(c.replaceChildren(),
x){let L=M.judged[M.chosen],O=L==="stop"==(x==="Stop here."),D=L==="stop"?"Stop here":"Fine as it is";c.append(s("p",{class:"\
tsh-verdict"},O?`✓ Yes: ${x}`:`✗ You said “${D}”. The course says: ${x}`),s("dl",{class:"ts-facts"},...Object.entries(
$).flatMap(([F,k])=>[s("dt",{},F),s("dd",{},k)])))}for(let L of g)L.setAttribute("aria-pressed",String(M.judged[M.chosen]===
L.dataset.verdict));for(let[L,O]of l.entries()){let D=M.judged[u[L][0]];O.setAttribute("aria-label",`${L+1} ${u[L][1]}${D?
`, judged: ${D==="stop"?"stop here":"fine as it is"}`:""}`);let F=O.querySelector(".tsh-tag");if(!D){F?.remove();continue}
F||(F=P("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),O.append(F)),F.textContent=D==="stop"?"■ \
stop":"○ well"}e.dataset.turn=M.chosen}let B=()=>{m(),y()};return v.follow("change:plan",B),v.follow("change:view",y),
B(),v.close}function Hs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),c=new Map,u=n.sliders.map(([f,g,h,S,v,A])=>{let R=nt(f.replace("_","-")),m=s("output",{class:"\
tsl-figure",for:R}),y=s("input",{id:R,type:"range",min:S,max:v,step:A,oninput:()=>{B(),d.send({type:"set",name:f,value:Number(
y.value)})}}),B=()=>{m.textContent=`${y.value} ${h}`,y.setAttribute("aria-valuetext",`${y.value} ${h==="°"?"degrees":h}`)};
return c.set(f,{slider:y,say:B}),s("div",{class:"tsl-row"},s("label",{for:R},g),y,m)}),l=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>d.send({type:"set",name:"grip",value:l.value})},...bt(n.grips)),d=J({model:t,el:e},{kind:"r\
ig"});d.show(d.asks("Is this lift safe by hand?",{first:c.values().next().value?.slider,begin:"set the load"}),d.alert,r,
s("div",{class:"tsl-sliders",role:"group","aria-label":"The lift"},...u,s("div",{class:"tsl-row"},s("span",{},"Grip"),l)),
a,o,s("p",{class:"ts-keys"},"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));
function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.sum,a.innerHTML=f.drawing;for(let[g,{slider:h,say:S}]of c)
document.activeElement!==h&&(h.value=f.sizes[g]),S();l.value=f.sizes.grip}return d.follow("change:view",p),p(),d.close}var we={x:90,y:120,perMm:20,radius:82,bevel:30};function Qn(t){let e=P("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=we;e.append(P("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),it(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let f=n+p*t.pitch*o;if(p%2){e.append(it(
f,r,f,r+18,"tsi-fine"));continue}let g=p/2;e.append(it(f,r,f,r-(g%5?18:27),g%5?"tsi-fine":"tsi-bold")),g%5===0&&e.append(
ct(f,r-33,String(g)))}let c=P("g",{});e.append(c,ct(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=P("path",{d:`M0 ${r-a+14}L${we.bevel} ${r-a}L${we.bevel} ${r+a}L0 ${r+a-14}\
Z`,class:"tsi-body"}),u=P("rect",{x:we.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),l=P("rect",{x:0,y:r-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),d=P("g",{});return c.append(l,i,u,d),{node:e,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*o} 0)`),d.replaceChildren();for(let f=0;f<t.lines;f+=1){let g=f-p.line;g-=t.lines*Math.round(g/t.lines);let h=g/
t.lines*2*Math.PI;if(Math.abs(h)>1.15)continue;let S=r-(a-8)*Math.sin(h),v=f%5===0;d.append(it(0,S,v?26:16,S,v?"tsi-bold":
"tsi-fine")),v&&d.append(ct(36,S+5,String(f),"start"))}e.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function Ws(t){
return Ct(t,(e,n,r)=>{let o=Qn(e),a=gt("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, \
out to the right",onInput:l=>n({open:l})}),c=ft("Between the faces",e.between,r.between,l=>n({between:l,open:e.top})),i=Y(
"Close until it rests",()=>n({open:-1})),u=e.hands.length?ft("Close it",e.hands,r.hand,l=>n({hand:l})):null;return{asks:"\
How thick is it?",first:i,begin:"close it until it rests",picture:o.node,controls:[Lt(c.row,u?.row),Lt(i,Y("Open",()=>n(
{open:e.top}))),a.row],set(l,d){o.set(l),a.box.value=String(Math.max(0,l.mm)),c.box.value=d.between}}})}function _s({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[u,l,d]of n.checks){let p=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${l}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:u})}},"Make"),f=Nt("it shows",!1);f.classList.add("t\
sk-shown"),a.set(u,{button:p,shown:f}),o.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},l),Nt("min",!0,
`${d}`),Nt("",!1,p),f))}let c=J({model:t,el:e},{kind:"rig"});c.show(c.asks("What does each check show on your unit?",{first:a.
values().next().value?.button,begin:"make a check",who:"Checks are not saved; make them again after reopening."}),c.alert,
r,me("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));function i(){let u=t.get("view");r.textContent=
u.finding;for(let[l,{button:d,shown:p}]of a){let f=u.shown[l];d.setAttribute("aria-disabled",f?"true":"false"),d.classList.
toggle("ts-off",!!f),d.textContent=f?"Made":"Make",p.textContent=f?`${f[0]?"✓":"✗"} ${f[1]}`:"",p.classList.toggle("\
tsk-failed",!!f&&!f[0])}}return c.follow("change:view",i),i(),c.close}function to(){let t=P("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=P("g"),n=P("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(P("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,P("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=c=>(-135+270*c)*Math.PI/180,o="";function a([c,i,u]){e.replaceChildren();for(let l=0;l*i<=c+
1e-9;l+=1){let d=r(l*i/c),p=l%u===0,f=g=>[110+g*Math.sin(d),104-g*Math.cos(d)];if(e.append(it(...f(p?72:79),...f(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&l%(2*u)===0){let[g,h]=f(58);e.append(ct(g,h+4.5,String(Number((l*i).toFixed(2)))))}}e.
append(ct(110,170,"kN"))}return{node:t,set(c,i,u){String(c)!==o&&(o=String(c),a(c));let l=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*l})`),t.setAttribute("aria-label",u)}}}function Ks(t){return Ct(t,(e,n,r)=>{
let o=to(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),u=gt("Push",{min:0,max:100,step:1,value:r.travel,onInput:f=>n(
{travel:f}),words:f=>f>=100?"at the shoulder":`${f} % of the way`}),l=[u.row],d=null;if(!e.readingsOnly){let f=ft("Part",
e.places,r.place,v=>n({place:v,travel:0}));d=ft("Driver presses on",e.drivers,r.driver,v=>n({driver:v,travel:0}));let g=ft(
"Seat",e.seats,r.seat,v=>n({seat:v})),h=gt("Pair",{min:0,max:100,step:1,value:r.grip,onInput:v=>n({grip:v}),words:v=>v===
0?"loosest of the fit":v===100?"tightest of the fit":`${v} % from loosest to tightest`}),S=gt("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:v=>n({warmth:v}),words:v=>`${v} °C`});l.unshift(Lt(f.row,d.row,g.row),
h.row,S.row)}let p=s("dl",{class:"ts-facts"});return e.readingsOnly||l.push(p),{asks:"What force does it take, and where\
 does it stop?",first:u.box,begin:"push the part",side:!e.readingsOnly,picture:i,controls:l,set(f,g){f.section!==c&&(c=f.
section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*g.travel/100} 0\
)`),o.set(f.gauge,f.force,f.words),Number(u.box.value)!==g.travel&&document.activeElement!==u.box&&u.set(g.travel),d&&(d.
row.hidden=!f.drives),f.facts&&p.replaceChildren(...Et(f.facts))}}})}function Fs({model:t,el:e}){let n=t.get("steps"),r=new Map(n),o=s("div",{class:"ts-scroll tsf-near",tabindex:"0",role:"r\
egion","aria-label":"The rules around the chosen step"}),a=s("p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts\
-sentences"}),i=s("select",{class:"ts-box ts-before","aria-label":"Chosen step",onchange:()=>d(i.value)},...bt(n.map(([g,
h],S)=>[g,`${S+1}  ${h}`]))),u=J({model:t,el:e},{kind:"rig",lost(){i.disabled=!0}});u.show(u.asks("What comes before thi\
s step, and what after it?",{first:i,begin:"choose a step, or press one in the picture",who:""}),u.alert,s("p",{class:"t\
s-hint"},t.get("finding")),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",i)),a,o,s("details",{class:"ts-\
keys"},s("summary",{},"In words, with reasons"),c));let l=!1,d=g=>u.send({type:"choose",step:g}),p=g=>{let h=wt(g,"[data\
-step]")?.dataset.step;h&&(l=!0,d(h))};o.addEventListener("click",p),o.addEventListener("keydown",g=>{g.key!=="Enter"&&g.
key!==" "||wt(g,"[data-step]")&&(g.preventDefault(),p(g))});function f(){let g=t.get("near");a.textContent=g.words,i.value=
g.step,o.innerHTML=g.figure,o.querySelector("svg")?.setAttribute("role","group");let h=Z(o,"[data-step]");for(let S of h)
S.setAttribute("role","button"),S.setAttribute("tabindex","0"),S.setAttribute("aria-label",r.get(String(S.dataset.step))??
"");c.replaceChildren(...Bt(g.sentences)),l&&(h[0]??i).focus({preventScroll:!0}),l=!1}return u.follow("change:near",f),f(),
u.close}function eo(){let t=P("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=P("g",{}),n=P("g",{});return e.append(
P("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),it(150,164,150,98,"tsi-bold"),P("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(it(150,86,150,40,"tsi-plunger"),P("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,it(50,164,
250,164,"tsg-centre"),it(150,250,150,80,"tsg-centre"),n,ct(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute(
"transform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function Us(t){
return Ct(t,(e,n,r)=>{let o=zt(),a=eo(),c=gt("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:l=>`turn\
ed by ${l}°`,onInput:l=>n({angle:l})}),i=ft("Plunger",e.pressed,r.pressed,l=>n({pressed:l})),u=ft("Stand",e.tilts,r.tilt,
l=>n({tilt:l}));return{asks:"How far does the shaft run out?",first:c.box,begin:"turn the shaft",picture:s("div",{class:"\
tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One mark 0.01 mm, one turn 1 mm"))),controls:[Lt(i.row,
u.row),c.row],set(l,d){o.set(l.mm,l.words),a.set(l.state.angle,Number(l.state.tilt),`Shaft end on, turned by ${l.state.angle}\
°; the plunger stands ${l.state.tilt}° off square. Not to scale.`),c.set(d.angle)}}})}var zs=(t,e)=>(t+e)%7<2,Gs=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,ve=()=>!1,be=t=>(e,n)=>n%t===0,so={"":ve,dots:(t,e)=>t%6<2&&e%
6<2,rising:zs,cross:Gs,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":ve,"lines-2":be(14),"lines-3":be(8),"lines-4":be(5),"lines-5":be(
3)};function no(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var qs=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function Ys(t,[e,n],r,o,a){let c=n*4,i=new Uint32Array(c*e*4),u=new Map(r.map(([p,,f,g])=>{let h=f?qs(no(f),200):
0;return[p,{ground:h,hatch:so[g]??ve}]})),l={ground:0,hatch:ve},d=qs(o,190);for(let p=0;p<e;p+=1){let f=(e-1-p)*4;for(let g=0;g<
n;g+=1){let h=t[p*n+g];if(!h)continue;let{ground:S,hatch:v}=u.get(h&15)??l,A=a&&(h&16)!==0,R=a&&(h&32)!==0;for(let m=f;m<
f+4;m+=1)for(let y=g*4;y<(g+1)*4;y+=1){let B=v(y,m)||A&&zs(y,m)||R&&Gs(y,m);i[m*c+y]=B?d:S}}}return i}var ro=600;function Vs(t,e,n,r,o,a){let[c,i]=n;t.width=i*4,t.height=c*4;let u=new Uint8ClampedArray(Ys(e,n,r,o,a).buffer),
l=new ImageData(u,t.width,t.height);t.getContext("2d")?.putImageData(l,0,0)}function ao(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return Vs(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function Js({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),c=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),u=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),l=J({model:t,el:e},{kind:"rig",lost(){f.setDisabled(!0),Zt(e)}}),d=null,p=b=>{d=nt("turn"),l.send({...b,turn:d})},
f=ae({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(b){f.
drawing.strokes(b),p({type:"lay",entries:b})},onRemove:b=>p({type:"remove",at:b}),onClear:()=>p({type:"clear"})}),g=Y("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),h=s("input",{type:"range",id:nt("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),S=s("output",{for:h.id}),v=yt({id:nt("slide"),onchange:()=>p({type:"slide",by:v.value})},
t.get("view").slides),A=null;h.addEventListener("input",()=>{S.textContent=`${h.value} µm`;let b={type:"flat",um:Number(
h.value)};d===null?p(b):A=b});let{box:R,unit:m}=f.drawing;f.drawing.land.classList.add("tsp-clear"),f.drawing.frame.prepend(
u);let y=(...b)=>s("span",{class:"ts-pair"},...b);l.show(l.asks("Does this film close the gap?",{first:g,begin:"press Cl\
ose the face"}),l.alert,o,Tt([f.drawing.frame,i],[s("div",{class:"ts-tools"},g,y(s("label",{for:v.id},"the other face is"),
v)),s("div",{class:"ts-tools"},a,Y("1 minute passes",()=>p({type:"time",by:1})),Y("5 minutes pass",()=>p({type:"time",by:5}))),
s("div",{class:"ts-tools"},y(s("label",{for:h.id},"faces out of flat by"),h,S)),f.tools,c,s("details",{class:"ts-keys"},
s("summary",{},"Passes laid"),f.empty,f.list)]));function B(){let b=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return b?
b.slice(0,3).map(Number):[0,0,0]}let M="",w="";function x(){let b=t.get("view"),E=r[b.closed?"closed":"film"],N=t.get("g\
rid"),H=N instanceof DataView?new Uint8Array(N.buffer,N.byteOffset,N.byteLength):new Uint8Array(N);Vs(u,H,b.shape,E,B(),
!b.closed);let[X,q]=b.shape,[ht,st]=[b.corner[0]-b.pitch/2,b.corner[1]-b.pitch/2],K=(_,z)=>`${(100*_/z).toFixed(3)}%`;u.
style.left=K(ht-R.left,R.width),u.style.width=K(q*b.pitch,R.width),u.style.top=K(R.high-st-X*b.pitch,R.height),u.style.height=
K(X*b.pitch,R.height);let V=new Set(H.map(_=>b.closed?_:_&15)),C=E.filter(([_])=>V.has(_)),W=`${C.map(([,_])=>_)} ${B()}`;
W!==M&&(M=W,i.replaceChildren(...C.map(_=>ao(_,B()))))}let $=P("g");f.drawing.over.append($);let L=([b,E])=>[b-R.left,R.
high-E];function O([b,E]){let N=E.map(H=>{let[X,q]=L(H);return`M${X.toFixed(1)} ${q.toFixed(1)}h0.01`});return P("path",
{d:N.join(""),class:"tsp-lump","stroke-width":2*b})}function D(b){let[E,N]=L(b[b.length-1]),H=`M${E-1.3*m} ${N-m}h${2.6*
m}l${-1.3*m} ${2.2*m}Z`;return[P("path",{d:f.drawing.path(b),class:"tsp-way","stroke-width":m}),P("path",{d:H,class:"tsp\
-out"})]}function F(){let b=t.get("view");if(d!==null&&b.turn!==d)return;d=null;let E=JSON.stringify([b.entries,b.notes]);
if(E!==w&&f.show(b.entries,b.notes),w=E,f.drawing.strokes([]),x(),$.replaceChildren(...b.lumps.map(O),...b.leaks.flatMap(
D)),f.drawing.svg.classList.toggle("tsp-shut",b.closed),f.drawing.svg.classList.toggle("tsp-clean",b.closed||b.clean),o.
textContent=b.finding,v.value=b.slide,a.textContent=`minute ${b.minute}`,g.textContent=b.closed?"Lift the face off again":
"Close the face",A===null&&(h.value=String(b.flat),S.textContent=`${b.flat} µm`),c.replaceChildren(...Et(b.facts)),A===
null)return;let N=A;A=null,p(N)}l.follow("change:view",F),l.follow("msg:custom",b=>{b.type==="trouble"&&(d=null,f.drawing.
strokes([]))});let k=new MutationObserver(()=>setTimeout(x,ro));return k.observe(document.body,{attributes:!0,attributeFilter:[
"data-jp-theme-light"]}),F(),()=>{l.close(),k.disconnect()}}function Zs(t){return Ct(t,(e,n,r)=>{let o=zt(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),u=e.places.map(([d,p])=>[d,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:d})},p)]),l=[s("p",{class:"ts-hint"},e.rule),Lt(s("span",{},"Set the gauge down at"),...u.map(([,d])=>d))];
return e.readingsOnly||(l.push(Lt(ft("Lip looks towards",e.sides,r.lip,d=>n({lip:d})).row,ft("Lip is",e.greases,r.grease,
d=>n({grease:d})).row,e.sleeves.length?ft("It went",e.sleeves,r.sleeve,d=>n({sleeve:d})).row:"")),l.push(gt("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:d=>`${d.toFixed(2)} mm${d<0?", proud":""}`,onInput:d=>n({
depth:d})}).row,gt("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:d=>d?`${d.toFixed(2)} mm across`:"square",onInput:d=>n(
{lean:d})}).row)),{asks:"Does the seal sit square and deep enough?",first:u[0][1],begin:"set the gauge down",side:!e.readingsOnly,
picture:i,controls:l,set(d,p){d.section!==c&&(c=d.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.setAttribute("t\
ransform",d.placed),o.set(d.dial,d.words);for(let[f,g]of u)g.setAttribute("aria-pressed",String(f===p.place))}}})}function Qs({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=zt(),a=n.readingsOnly?null:ys(n),c=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),u=qt((M,w)=>A.send({type:"set",state:M,turn:w})),l=M=>{r={...r,...M},u.ask(r)},
d=(M,w)=>{let x=[...r.shims];x[M]=w,l({shims:x.filter(Boolean),turns:0})},p=(M,w,x)=>Y(M,w,{"aria-pressed":x}),f=Y("Turn\
 the shaft ten times",()=>l({turns:r.turns+10})),g=p("Pull the shaft away",()=>l({side:"away"}),"true"),h=p("Push it to \
the dial",()=>l({side:"towards"}),"false"),S=ft("Plunger",n.plungers,r.plunger,M=>l({plunger:M})),v=[s("div",{class:"ts-\
tools"},n.rolls?f:null,S.row,g,h)];if(!n.readingsOnly){let M=ft("Shim",n.shelf,r.shims[0],x=>d(0,x)),w=n.second?ft("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",x=>d(1,x)):null;v.unshift(s("div",{class:"ts-tools"},M.row,w?.row)),v.
push(gt("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:x=>l({warmth:x}),words:x=>x?`case ${Math.round(n.caseRise*
x/100)} K warmer`:"cold, as at the bench"}).row)}let A=J({model:t,el:e},{kind:"rig"}),R=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});R.innerHTML=n.section;let m=[n.readingsOnly?A.asks("How far does the shaft\
 move?",{first:n.rolls?f:h,begin:n.rolls?"turn the shaft":"push the shaft",who:"Take your readings here; write them in t\
he form."}):A.asks("Which shim gives the setting that you want?",{first:v[0].querySelector("select"),begin:"choose a shi\
m"}),A.alert,n.readingsOnly&&R,s("div",{class:"tsg-beside"},!n.readingsOnly&&R,s("div",{class:"tsg-gauge"},o.node,s("div",
{},"Dial at the shaft's right end, one mark 0.01 mm")),n.readingsOnly&&s("div",{class:"tsg-side"},...v,c)),...n.readingsOnly?
[]:[...v,c],a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg\
-wide",tabindex:"0",role:"group","aria-label":"Axis of settings"},a.node)),i];A.show(...m.filter(Boolean));function y(){
let M=t.get("shown");u.waiting||(r=M.state),o.set(M.dial,M.dialWords),g.setAttribute("aria-pressed",String(M.state.side===
"away")),h.setAttribute("aria-pressed",String(M.state.side==="towards")),c.textContent=M.finding,a&&(a.set(M.cold,M.warm,
M.words.join(" ")),i.replaceChildren(...M.words.map(w=>s("p",{},w)))),u.answered(M.turn)}let B=()=>u.free();return A.follow(
"change:shown",y),A.follow("msg:custom",B),y(),A.close}function tn(t){return Ct(t,(e,n,r)=>{let o=s("div",{tabindex:"0",role:"group","aria-label":e.name}),a="",c=e.pickers.map(
({key:d,label:p,options:f})=>ft(p,f,r[d],g=>n({[d]:g}))),i=e.sliders.map(({key:d,label:p,min:f,max:g,step:h,unit:S,places:v})=>gt(
p,{min:f,max:g,step:h,value:r[d],words:A=>`${A.toFixed(v)} ${S}`,onInput:A=>n({[d]:A})})),u=c.map(({row:d})=>d),l=u.length>
2?u:u.length?[Lt(...u)]:[];return{asks:e.asks,first:[...c,...i][0].box,begin:c.length?"choose from the first list":"move\
 the first slider",picture:o,controls:[...l,...i.map(({row:d})=>d)],set(d){d.drawing!==a&&(a=d.drawing,o.innerHTML=a)}}})}function en({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),c=s("dl",{class:"ts-facts"}),i=null,u=null,l=(w,x)=>{u={...u,[w]:x},i===null&&d()};function d(){
i=nt("choice"),y.send({type:"choose",chosen:u,turn:i}),u=null}let p=s("div",{class:"tsj-settings"}),f=(w,x,$)=>{let L=nt(
"set");return x.id=L,p.append(s("label",{for:L},w),s("span",{class:"tsj-slide"},x,$)),x},g=(w,x,$)=>f(x,s("select",{class:"\
ts-box",onchange:L=>l(w,L.target.value)},...bt($.map(L=>typeof L=="string"?[L,L]:L)))),h=(w,x,$)=>f(x,s("input",{type:"r\
ange",oninput:L=>l(w,Number(L.target.value))}),$),S={group:g("group","Bolt of the unit",n.groups),thread:g("thread","Thr\
ead",n.threads),strength:g("strength","Strength class",n.classes),state:g("state","State of the thread",n.states),tool:g(
"tool","Tool",n.tools)},v=s("output",{class:"tsj-figure"}),A=h("torque_nm","Torque",v),R=s("output",{class:"tsj-figure"}),
m=h("engagement_mm","Thread that meets",R),y=J({model:t,el:e},{kind:"rig"});y.show(y.asks("What gives way first?",{first:A,
begin:"set the torque"}),y.alert,r,o,s("div",{class:"tsj-bench"},p,a),c);let B=(w,x,$,L,O,D)=>{Ot(w,{min:x,max:$,step:L}),
i===null&&(w.value=String(O)),w.setAttribute("aria-valuetext",D)};function M(){let w=t.get("view");if(i!==null&&w.turn!==
i)return;i=null,u!==null&&d();let{chosen:x}=w;r.textContent=w.finding,o.innerHTML=w.band,a.innerHTML=w.section,c.replaceChildren(
...Et(w.facts));for(let[$,L]of Object.entries(S))L.value=x[$];B(A,1,w.topTorque,.5,x.torque_nm,w.torqueText),v.textContent=
w.torqueText,B(m,w.lowEngagement,w.topEngagement,.5,x.engagement_mm,w.engagementText),R.textContent=w.engagementText}return y.
follow("change:view",M),M(),y.close}function sn({model:t,el:e}){let n=Ut(t.get("picture")),r=J({model:t,el:e},{kind:"rig"});return r.show(r.asks("Where does\
 each part lie?",{first:n.choose,begin:"choose a part",who:""}),r.alert,s("p",{class:"ts-finding"},t.get("finding")),...n.
nodes),r.close}function Xt(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function Be(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var Ne=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function nn(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let c=Xt(e,
n),i=c.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let l=e.map(([f])=>f),d=t==="ArrowLeft"?-1:1,p=Xt(e,l[(l.
indexOf(n)+d+l.length)%l.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let u=t.toLowerCase();return Ne(c,i).find(l=>o[l].toLowerCase().startsWith(u))}function on({stages:t,stage:e,step:n,isOpen:r}){
let o=Xt(t,e),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(o.at(-1)));return Ne(o,o.indexOf(String(n))).find(r)??Ne(a,c).find(
r)}function rn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>ht()},
...bt(n.stages.map(([T,U])=>[T,U]))),c=et(n.marked?"Next open step":"Next ready step",()=>b("next"));c.classList.add("ts\
-next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this sta\
ge",onkeydown:T=>N(T)}),u=s("details",{class:"ts-keys"},s("summary",{},"Keys"),"Up and down walk through the steps, left\
 and right change the stage, Enter takes a step in hand; Enter again does it."),l=s("div",{class:"ts-hand",role:"group",
"aria-label":"Step in hand",onkeydown:T=>{T.key!=="Enter"||!T.target.matches("input[type=radio], .ts-number-box")||(T.preventDefault(),
t.get("hand").stands?X():z())}}),d=s("div",{class:"ts-scroll ts-fit"}),p=s("dl",{class:"ts-facts"}),f=s("ul",{class:"ts-\
sentences"}),g=s("p",{class:"ts-prompt"},"Wrong so far"),h=s("select",{class:"ts-box ts-before","aria-label":"A step tha\
t stands"}),S=et("Take out again",()=>{h.value&&w({type:"out",step:h.value},"hand")}),v=et("Put the tools down",()=>w({type:"\
over"},"told"));v.classList.add("ts-over");let A=s("div",{}),R=s("p",{class:"ts-status"}),m=s("details",{ontoggle:()=>{m.
open!==!!t.get("view").record&&w({type:"record",open:m.open})}},s("summary",{},"Build record"),A),y=J({model:t,el:e},{kind:"\
rig"});y.show(y.asks("Which step comes next, and what does it need?",{first:c,begin:"press the lit button",who:n.who}),y.
alert,r,R,o,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"ts-tools"},a,c),i),s("div",{},l,s(
"div",{class:"ts-tools"},s("span",{class:"ts-pair"},h,S),v))),p,g,f,m,s("details",{},s("summary",{},"How far each stage \
is"),d),u);let B=0,M=null;function w(T,U=null){B+=1,M=U&&{turn:B,focus:U},e.setAttribute("aria-busy","true"),y.send({...T,
turn:B})}let x="",$=null,L="next",O=T=>!t.get("view").done.includes(T),D=()=>Z(i,"[data-step]"),F=T=>D().find(U=>U.dataset.
step===T)?.focus(),k=()=>({stages:n.stages,stage:a.value,step:$,isOpen:O});function b(T,U){L=T,w(T==="list"?{type:"take",
step:U}:{type:"next"},"hand")}function E(T){a.value=Be(n.stages,T)??a.value,$=T,ht(),F(T)}function N(T){if(xt(T))return;
let U=nn(T.key,{...k(),labels:n.labels});U&&(T.preventDefault(),E(U))}function H(){let T=on(k());T?L==="next"?c.focus():
E(T):v.focus()}function X(){let T=t.get("view").done.length>=Object.keys(n.labels).length;L==="next"&&!T?b("next"):H()}function q(T){
let{done:U,ready:rt}=t.get("view");return U.includes(T)?{sign:"✓",word:"done"}:rt.includes(T)?{sign:"▸",word:"ready"}:
{sign:"○",word:n.marked?"open":"waits"}}function ht(){let T=Xt(n.stages,a.value);($===null||!T.includes($))&&($=T.find(
O)??T[0]);let U=t.get("hand").step,rt=JSON.stringify([a.value,T.map(q),U]);if(rt===x){for(let mt of D())mt.tabIndex=mt.dataset.
step===$?0:-1;return}x=rt;let pt=D().find(mt=>mt===document.activeElement)?.dataset.step;i.replaceChildren(...T.map(mt=>st(
mt,U))),pt&&F(pt)}function st(T,U){let{sign:rt,word:pt}=q(T);return s("button",{type:"button",class:`ts-button ts-builds\
tep ts-buildstep-${pt}`,"data-step":T,tabindex:T===$?"0":"-1","aria-current":T===U?"step":!1,"aria-label":`${n.labels[T]}\
: ${pt}`,onclick:()=>{$=T,b("list",T)}},At(rt),n.labels[T])}let K="",V=new Map;function C(T){let U=Wt(T),rt=s("p",{class:"\
ts-read",id:U.read,role:"status"}),pt=0,mt=j=>{w({type:"set",name:T.name,value:j}),pt=B},tt=Pt(T).make(T,U,mt,()=>{}),I=_t(
T,U,null);return I.append(tt.element,rt),I.dataset.field=T.name,{element:I,flush:()=>tt.flush?.(),show(j={},Q){if(Q<pt)return;
tt.show(j);let lt=j.read?`read as ${j.read}`:"";rt.textContent=j.error?`▲ Look again: ${j.error}`:lt}}}let W=T=>s("dl",
{class:"ts-facts"},...Et(T));function _(){let T=t.get("hand"),U=JSON.stringify(T);if(U===K)return;if(K=U,l.dataset.stands=
String(!!T.stands),V=new Map((T.fields??[]).map(tt=>[tt.name,C(tt)])),!T.step){l.replaceChildren(s("p",{class:"ts-hint"},
"No step in hand. Choose one from the list, or press the button above it."));return}let rt=et(`Do it: ${T.label}`,z);rt.
classList.add("ts-do");let pt=T.stands?[et("Go on",X),et("Take it out again",()=>w({type:"out",step:T.step},"hand"))]:[rt];
l.replaceChildren(s("p",{class:"ts-prompt ts-hand-name",tabindex:"-1"},T.label),...T.plain.map(tt=>s("p",{class:"ts-hint"},
tt)),...T.cautions.map(tt=>s("p",{class:"ts-caution"},s("b",{},"Take care: "),tt)),...T.read.length?[s("p",{class:"ts-pr\
ompt"},"Read at the bench"),W(T.read)]:[],...T.card.length?[W(T.card)]:[],...[...V.values()].map(tt=>tt.element),s("div",
{class:"ts-tools"},...pt));let mt=Be(n.stages,T.step);mt&&([a.value,$]=[mt,T.step])}function z(){for(let T of V.values())
T.flush();w({type:"do"},"after")}function ot(){let T=t.get("view").asked_back,U=Z(l,"[data-field]").find(mt=>mt.dataset.
field===T),rt=U&&Z(U,"input:not(:disabled), select, button"),pt=Z(l,".ts-field input:not(:disabled), .ts-field select, .\
ts-field button, .ts-do, .ts-tools button");return rt?.[0]??pt[0]}function G(){let T=t.get("view"),U=T.told;r.textContent=
T.finding,R.textContent=T.status,R.hidden=!T.status,o.textContent!==U.join("")&&o.replaceChildren(...U.map(pt=>s("p",{},
pt))),_(),ht();for(let[pt,mt]of V)mt.show(T.states[pt],T.turn);if(d.dataset.shown!==T.figure&&(d.innerHTML=T.figure,d.dataset.
shown=T.figure),p.replaceChildren(...Et(T.facts)),f.replaceChildren(...Bt(T.faults.map(([,pt])=>pt))),g.hidden=f.hidden=
!T.faults.length,dt(T.done),A.innerHTML=T.record,m.open=!!T.record,e.setAttribute("aria-busy",String(T.turn<B)),!M||T.turn<
M.turn)return;let{focus:rt}=M;M=null,rt==="told"?o.focus():rt==="after"&&!t.get("hand").step?H():(ot()??c).focus()}function dt(T){
if(h.disabled=S.disabled=!T.length,h.dataset.done===T.join(" "))return;h.dataset.done=T.join(" ");let U=[...T].reverse();
h.replaceChildren(...bt(U.map(rt=>[rt,n.labels[rt]])))}return y.follow("change:view",G),G(),y.close}function io(t){let e=P("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=it(
r,o,r,o,"tsi-adapter"),c=P("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=it(r,o+74,r,o+74,"tsi-arm"),u=ct(r,o+94,"");return e.
append(it(r,o,r+440,o,"tsi-lever"),a,c,P("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),ct(r+440,o-20,"hand, middle of the gr\
ip","end"),ct(r+20,o-20,"square drive","start"),it(r+440,o+10,r+440,o+84,"tsg-centre"),i,u,ct(8,242,"lengths to scale","\
start")),{node:e,set(l){let d=l.state.angle/180*Math.PI,p=r-l.state.reach*n*Math.cos(d),f=o-l.state.reach*n*Math.sin(d);
Ot(a,{x2:p,y2:f}),Ot(c,{cx:p,cy:f}),Ot(i,{x1:p,x2:r+440}),Ot(u,{x:(p+r+440)/2}),u.textContent="the lever from bolt to ha\
nd, along the wrench",e.setAttribute("aria-label",`${t.name}. ${l.words}`)}}}function an(t){return Ct(t,(e,n,r)=>{let o=io(
e),a=(i,u,l,d,p,f)=>gt(i,{min:l,max:d,step:p,value:r[u],words:g=>`${g} ${f}`,onInput:g=>n({[u]:g})}),c={setting:a("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{asks:"What does the bolt get?",first:c.reach.box,begin:"\
lengthen the adapter",picture:o.node,controls:Object.values(c).map(i=>i.row),set(i,u){o.set(i);for(let[l,d]of Object.entries(
c))d.set(u[l])}}})}var ke=t=>typeof t=="string"?t:t.text;function cn(t,e,n){let r=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
o=a=>ke(a.cells[e]??"").trim();return[...t].sort((a,c)=>{let[i,u]=[o(a),o(c)];if(!i||!u)return+!i-+!u;let[l,d]=[Number.parseFloat(
i),Number.parseFloat(u)],p=Number.isNaN(l)||Number.isNaN(d)||l===d?r.compare(i,u):l-d;return n?-p:p})}function Vt(t,e){let n=document.getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${r}${t}/${e.split("/").map(encodeURIComponent).join("/")}`}function co(t){let e="";for(let n=0;n<t.length;n+=32768)e+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(e)}
async function ln(t,e,n){let r=0;do{let o=new Uint8Array(await n.slice(r,r+524288).arrayBuffer()),a=r===0;r+=524288;let c=r>=
n.size;t.send({type:"file",field:e,name:n.name,data:co(o),first:a,last:c})}while(r<n.size)}var lo=400;function dn({model:t,el:e}){let n=J({model:t,el:e},{kind:"desk"}),r=s("p",{class:"ts-said",role:"status"}),o=s(
"div",{class:"ts-desk-body"}),a=s("div",{class:"ts-desk-here","aria-hidden":"true"}),c=s("div",{class:"ts-busy"}),i=s("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),u=t.get("cohort"),l=s("input",{id:nt("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:l.value})});l.value=t.get("by"),n.show(s("div",{class:"\
ts-desk-top"},s("b",{},It([u.name,u.college]).join(", ")),s("span",{class:"ts-pair"},s("label",{for:l.id},"At the desk (\
your name, for the trail)"),l)),u.invented?s("p",{class:"ts-hint"},u.invented):null,i,c,n.alert,r,o);let d=new Map,p=new Map,
f=new Map,g=new Map,h=!1,S="",v="",A=!1,R=()=>h||Object.keys(t.get("busy")).length>0,m=(C,W={})=>{R()||n.isLost()||(C!==
"look"&&(r.textContent="",n.alert.textContent="",M()),t.send({type:C,...W}))},y=()=>Z(e,"[data-key]");function B(){let C=y().
find(W=>W.dataset.key===S);return C&&o.contains(C)?C.closest("form, section"):null}function M(){let C=B();C?C.append(c,a):
(i.after(c),a.remove());let[W,_]=[r.textContent,n.alert.textContent];a.replaceChildren(...It([W&&s("p",{class:"ts-told"},
W),_&&s("p",{class:"ts-trouble"},_)]));for(let z of[r,n.alert])z.classList.toggle("ts-hidden",!!C);return C}function w(){
let C=M(),W=[n.alert,r].find(z=>z.textContent);(C?a.childElementCount?a:null:W)?.scrollIntoView({block:"nearest"})}async function x(C,W,_=""){
if(R()||n.isLost())return;S=W,A=!0,h=!0;try{for(let[ot,G]of g){let[dt]=G.files??[];dt&&await ln(t,ot,dt)}}finally{h=!1}let z=[
...p].map(([ot,G])=>[ot,[...G]]);m("do",{act:C,of:_,typed:Object.fromEntries(d),ticked:Object.fromEntries(z)})}function $(C){
let{name:W,of:_}=C,z=nt("field"),ot=C.hint?s("span",{class:"ts-hint",id:`${z}-hint`},C.hint):null,G={id:z,"data-key":`fi\
eld:${W}`,"aria-describedby":ot?.id},dt=s("label",{for:z},C.label);if(!d.has(W)&&_!=="file"&&d.set(W,_==="tick"?C.value===
"yes":C.value),_==="file"){let rt=g.get(W)??s("input",{type:"file",class:"ts-file"});for(let[pt,mt]of Object.entries(G))
mt&&rt.setAttribute(pt,mt);return g.set(W,rt),s("div",{class:"ts-desk-field"},dt,rt,ot)}if(_==="tick"){let U=s("input",{
type:"checkbox",...G});U.checked=d.get(W)===!0,U.addEventListener("change",()=>d.set(W,U.checked));let rt=s("label",{class:"\
ts-option",for:z},U,C.label);return s("div",{class:"ts-desk-field"},rt,ot)}let T=_==="choice"?yt(G,C.options):_==="long"?
s("textarea",{class:"ts-box",rows:"3",maxlength:"2000",...G}):s("input",{class:"ts-box",autocomplete:"off",maxlength:"40\
0",...G});return T.value=String(d.get(W)??""),_==="choice"&&!C.options.some(([U])=>U===d.get(W))&&(T.value=C.options[0]?.[0]??
"",d.set(W,T.value)),T.addEventListener("input",()=>d.set(W,T.value)),s("div",{class:"ts-desk-field"},dt,T,ot)}function L(C){
let W=nt("form"),_=s("div",{class:"ts-doing"}),z=()=>{_.replaceChildren(...C.acts.map(G=>Y(G.label,()=>G.sure?ot(G):x(G.
id,`act:${G.id}`),{class:G.first?"ts-button ts-first":"ts-button","data-key":`act:${G.id}`})))},ot=G=>{let dt=nt("sure"),
T=s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":dt},s("p",{id:dt},G.sure),s("div",{class:"ts-d\
oing"},Y(`Yes: ${G.label}`,()=>x(G.id,`act:${G.id}`),{"data-key":`act:${G.id}`}),Y("No, leave it",()=>{z(),Z(_,`[data-ke\
y="act:${G.id}"]`)[0]?.focus()})));_.replaceChildren(T),T.focus()};return z(),s("form",{class:"ts-desk-form","aria-label\
ledby":C.title?W:null,onsubmit:G=>G.preventDefault()},C.title?s("h3",{id:W},C.title):null,C.hint?s("p",{class:"ts-hint"},
C.hint):null,C.fields.length?s("div",{class:"ts-desk-fields"},...C.fields.map($)):null,C.acts.length?_:null)}function O(C,W){
if(typeof C=="string")return C;let _=C.act?Y(C.text,()=>x(C.act,W,C.of),{class:"ts-cell","aria-label":C.label||null,"dat\
a-key":W}):C.text;return s("span",{},C.shape?At(C.shape):null,_)}function D(C){let W=nt("table"),_=s("h3",{id:W},C.title);
if(!C.rows.length)return s("section",{},_,s("p",{},C.empty));let z=p.get(C.id)??new Set,ot=new Set(C.rows.map(({key:tt})=>tt));
for(let tt of z)ot.has(tt)||z.delete(tt);p.set(C.id,z);let G=s("tr",{}),dt=s("tbody",{}),T=C.pick?s("input",{type:"check\
box","aria-label":"all","data-key":`all:${C.id}`}):null,U=()=>{T&&(T.checked=z.size===C.rows.length,T.indeterminate=z.size>
0&&!T.checked)},rt=()=>{let tt=f.get(C.id),I=tt?cn(C.rows,tt.column,tt.down):C.rows;dt.replaceChildren(...I.map(mt)),G.replaceChildren(
...T?[s("th",{class:"ts-tick"},T)]:[],...C.columns.map(pt)),U()},pt=(tt,I)=>{let j=f.get(C.id),Q=j?.column===I,lt=Q?j.down?
"descending":"ascending":null,kt=()=>{f.set(C.id,{column:I,down:Q&&!j.down}),rt(),Z(G,`[data-key="${ut}"]`)[0]?.focus()};
if(!tt)return s("td");let ut=`sort:${C.id}:${I}`;return s("th",{scope:"col","aria-sort":lt,class:C.numbers.includes(I)?"\
ts-figure":null},Y(tt,kt,{class:"ts-sort","data-key":ut}),Q?At(j.down?"▼":"▲"):null)},mt=tt=>{let I=C.pick?s("input",
{type:"checkbox","aria-label":tt.cells.slice(0,3).map(ke).join(" "),"data-key":`row:${C.id}:${tt.key}`}):null;return I&&
(I.checked=z.has(tt.key),I.addEventListener("change",()=>{I.checked?z.add(tt.key):z.delete(tt.key),U()})),s("tr",{},I?s(
"td",{class:"ts-tick"},I):null,...tt.cells.map((j,Q)=>{let lt=!Q&&!!ke(j);return s(lt?"th":"td",{scope:lt?"row":null,class:C.
numbers.includes(Q)?"ts-figure":null},O(j,`cell:${C.id}:${tt.key}:${Q}`))}))};return T?.addEventListener("change",()=>{if(z.
clear(),T.checked)for(let{key:tt}of C.rows)z.add(tt);for(let tt of Z(dt,"td.ts-tick input"))tt.checked=T.checked}),rt(),
s("section",{},s("div",{class:"ts-desk-caption"},_,Y("Save as CSV",()=>t.send({type:"export",table:C.id}),{"aria-label":`\
Save as CSV: ${C.title}`,"data-key":`export:${C.id}`})),s("div",{class:"ts-desk-scroll",role:"region",tabindex:0,"aria-l\
abelledby":W},s("table",{class:"ts-table","aria-labelledby":W},s("thead",{},G),dt)))}function F(C){if(C.kind==="table")return D(
C);if(C.kind==="form")return L(C);if(C.kind==="link"){let W=C.how==="edit"?"lab/tree":C.how,z={class:"ts-link",href:W?Vt(
W,C.path):C.path,target:"_blank"};return s("p",{},s("a",{...z,"data-key":`link:${C.path}`},C.text))}return C.how==="head"?
s("h3",{},C.text):s("p",{class:C.how==="hint"?"ts-hint":null},C.text)}function k(C){n.isLost()||(v=R()?C:"",!v&&(S="",m(
"page",{name:C})))}function b(){let C=t.get("page");i.replaceChildren(...t.get("pages").map(([W,_])=>Y(_,()=>k(W),{class:"\
ts-button","aria-current":W===C?"page":null,"data-key":`page:${W}`})))}let E=t.get("cleared"),N=t.get("page");function H(){
let C=y().find(G=>G===document.activeElement)?.dataset.key,W=o.contains(document.activeElement),_=Z(o,".ts-desk-scroll").
map(G=>G.scrollTop);(t.get("page")!==N||t.get("cleared")!==E)&&(d=new Map,p=new Map,g=new Map,{page:N,cleared:E}={page:t.
get("page"),cleared:t.get("cleared")}),r.textContent=t.get("said"),n.alert.textContent=t.get("trouble"),b();let z=new Map(
t.get("pages")),ot=s("h2",{tabindex:-1},z.get(N));if(o.replaceChildren(ot,...t.get("parts").map(F)),Z(o,".ts-desk-scroll").
forEach((G,dt)=>{G.scrollTop=_[dt]??0}),M(),C||W){let G=y().find(dt=>dt.dataset.key===C);(G??ot).focus({preventScroll:!!G})}
A&&!Object.keys(t.get("busy")).length&&(A=!1,w())}let X;function q(){let C=t.get("busy");if(o.setAttribute("aria-busy",String(
R())),clearTimeout(X),!Object.keys(C).length){c.replaceChildren(),v&&setTimeout(()=>v&&k(v),0);return}let{doing:W,done:_,
of:z}=C,ot=z?`${W}: ${_} of ${z}`:`${W} …`,G=()=>{c.replaceChildren(s("progress",z?{max:z,value:_,"aria-label":W}:{"ar\
ia-label":W}),s("span",{role:"status"},ot))};c.childElementCount?G():X=window.setTimeout(G,lo)}n.follow("change:turn",()=>setTimeout(
H,0)),n.follow("change:busy",q),n.follow("change:by",()=>{l.value=t.get("by")}),n.follow("msg:custom",C=>{if(C.type==="t\
rouble"&&w(),C.type!=="save")return;let W=URL.createObjectURL(new Blob([`\uFEFF${C.text}`],{type:"text/csv"}));s("a",{href:W,
download:C.name}).click(),setTimeout(()=>URL.revokeObjectURL(W),1e3)}),H(),q();let ht=!0,st=new IntersectionObserver(([C])=>{
ht=C.isIntersecting});st.observe(e);let K=0,V=setInterval(()=>{let C=t.get("every");K+=1,C&&K>=C&&ht&&!document.hidden&&
(K=0,m("look"))},1e3);return()=>{clearInterval(V),clearTimeout(X),st.disconnect(),n.close()}}function De(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=c=>String(c).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var uo="twoshaft-unsent:";function un(t,e){let n=uo+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,c,i,u=new Date)=>o({...r(),[a]:{value:c,
base:i,at:u.toISOString()}}),drop(a){let{[a]:c,...i}=r();c&&o(i)}}}function pn(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var jt=null,po="input, button, select, textarea, summary, a, [tabindex]",fn=t=>[...t.querySelectorAll(po)];function hn(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?jt={form:e,at:fn(t).indexOf(a),from:null}:jt?.form===e&&t.
isConnected&&(jt=null))},r=({target:a})=>{jt?.form===e&&a instanceof HTMLInputElement&&(jt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(jt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=jt,i=fn(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var fo=["print","colour"];function Jt(t){for(let e of fo){let n=t?.[e];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${e}`,n):document.documentElement.removeAttribute(`data-ts-${e}`))}}function gn(){Jt({print:"",colour:""})}function mn(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),u=Y("Use these figures",()=>f("yes")),l=Y(
"Go back to the drawn figures",()=>f("no")),d=!1,p=a.map(h=>{let S=nt("bench"),v=h.options.length?s("select",{class:"ts-\
box",id:S,"aria-describedby":`${S}-read`},s("option",{value:""},"choose"),...bt(h.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:S,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${S}-hint ${S}-read`}),
A=s("span",{class:"ts-hint",id:`${S}-hint`},h.hint),R=s("p",{class:"ts-read",id:`${S}-read`}),m=h.text,y=()=>{v.value.trim()!==
m.trim()&&(m=v.value,e({type:"bench",name:h.name,value:v.value}))};return v.addEventListener(h.options.length?"change":"\
blur",y),v.addEventListener("keydown",B=>{B.key==="Enter"&&(B.preventDefault(),y())}),{name:h.name,flush:y,input:v,element:s(
"div",{class:"ts-bench-row"},s("label",{for:S},h.prompt),s("div",{class:"ts-line-of"},v,A),R),show(B){if(!B)return;(document.
activeElement!==v||v.value===m)&&(v.value=B.text,m=B.text),v.setAttribute("aria-invalid",String(!!B.error)),R.classList.
toggle("ts-error",!!B.error);let M=B.error?[At("▲")," "]:[],w=B.read&&!B.options.length&&`read as ${B.read}`,x=B.error||
[w,B.origin].filter(Boolean).join(", ");R.replaceChildren(...M,x)}}}),f=h=>{for(let S of p)S.flush();d=!0,e({type:"bench",
name:"in-use",value:h})};o.append(s("summary",{},c),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They are used in place of the drawn figures in this task, all of them or none. Your answers are marke\
d on them by the same rules."),s("div",{class:"ts-bench-rows"},...p.map(h=>h.element)),i,s("div",{class:"ts-tools"},u,l));
function g(){let h=r(),S=new Map(h.rows?.map(m=>[m.name,m]));for(let m of p)m.show(S.get(m.name));c.textContent=h.used?"\
✓ This task uses figures from the bench":"Use readings from the bench",l.hidden=!h.wanted,u.hidden=h.used&&!h.stale;let v=h.
wanted&&!h.used?"▲ ":h.used?"● ":"○ ",A=h.used?"in use":h.wanted?`not used; the drawn figures stand. ${h.refused}`:
"not used; the drawn figures stand",R=h.stale?` The tables and choices of this task are still the ones from before. ${h.
used?"Press the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${v}${A}${R}`,
h.wanted&&!h.used&&(o.open=!0)}return{element:o,show:g,hear(h){h.type!=="bench-saved"||h.name!=="in-use"||!d||(d=!1,r().
stale&&n())},lost(){for(let h of[u,l,...p.map(S=>S.input)])h.disabled=!0}}}var ho=5e3,go=2e3,mo={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Pe="kept in this browser until it can be\
 saved";function wo(t,e,n,r){let o=Pt(t),a=Wt(t),c=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),u=0,l=null,d={},p=()=>{clearTimeout(l??void 0),l=null},f=m=>{n.put(t.name,m,d.revision??0),g(m)},g=m=>{u+=
1,v("wait",r()?Pe:"saving"),p(),l=window.setTimeout(()=>v("wait",Pe),ho),e({type:"save",name:t.name,value:m,turn:u})},h=o.
make(t,a,f,(m,y)=>{m?(n.put(t.name,y,d.revision??0),v("wait","not saved yet: press Enter or leave the box")):l===null&&(n.
drop(t.name),A(d))}),S=_t(t,a,a.status);o.status==="above"?S.append(i,h.element,c):S.append(h.element,c,i);function v(m,y){
i.className=`ts-status ts-status-${m}`,i.dataset.text!==y&&(i.dataset.text=y,i.replaceChildren(At(mo[m]),` ${y}`))}function A(m,y=!1){
if(d=m??{},h.show(d),c.replaceChildren(d.read?`read as ${d.read}`:""),!y)if(d.error){let{error:B,saved:M="",note:w}=d;v(
"unread",`Look again: ${B} Kept as typed, ${De(M)}${w?`; ${w}`:""}.`)}else d.saved&&!d.blank?v("saved",`saved ${De(d.saved)}${d.
note?`; ${d.note}`:""}`):v("none",o.blank??"not answered yet")}let R=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:S,show(m){l===null&&A(m,R())},saved(m){m.turn===u&&(h.pending?.()||n.drop(t.name),p(),A(m.state))},refused(m){
m.turn===u&&(p(),h.refused(),v("bad",`not saved: ${m.reason}`))},off(){clearTimeout(l??void 0),(l!==null||h.pending?.())&&
v("wait",Pe)},catchUp(){let m=n.get(t.name);m&&(pn(m,d)?(h.show({...d,value:m.value,error:""}),g(m.value)):n.drop(t.name))},
flush:()=>h.flush?.(),summary:()=>({answered:!!d.saved&&!d.blank&&!d.error&&!d.short,unread:!!d.error,trouble:R(),waiting:l!==
null})}}function wn({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=un(window.localStorage,r),a=!1,c=()=>a||p.isLost(),
i=n.map(y=>wo(y,g,o,c)),u=new Map(i.map(y=>[y.name,y])),l=s("p",{class:"ts-who"}),d=s("p",{class:"ts-total"});Jt(t.get("\
look"));let p=J({model:t,el:e},{kind:"form",lost(){for(let y of i)y.off();f.lost(),h()},line(y){a=y;for(let B of i)y?B.off():
B.catchUp();h()}}),f=mn(t,p.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(s("div",
{class:"ts-top"},l,d),p.alert,f.element,...i.map(y=>y.element)),e.dataset.task=t.get("task_id");function g(y){p.send(y),
h()}function h(){let y=i.map(D=>D.summary()),B=y.filter(D=>D.answered).length,M=y.filter(D=>D.trouble).length,w=y.some(D=>D.
waiting),x=y.filter(D=>D.unread).length,$=M?`${M} not saved`:w?c()?"the rest kept in this browser":"saving":B&&!x?"all s\
aved":"",L=[`${B} of ${i.length} answered`,x?`${x} cannot be read`:"",$];d.textContent=L.filter(Boolean).join(", ");let O={
task:t.get("task_id"),answered:B,asked:i.length,unread:x};e.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:O}))}function S(){l.textContent=t.get("header");let y=t.get("states");for(let B of i)B.show(y[B.name]);h()}let v=0,
A=()=>{if(document.visibilityState==="hidden")for(let y of i)y.flush();document.visibilityState!=="visible"||Date.now()-
v<go||(v=Date.now(),p.send({type:"look"}))},R=r?new BroadcastChannel(`twoshaft-saved:${r}`):null;R?.addEventListener("me\
ssage",({data:y})=>{y===t.get("task_id")&&p.send({type:"look"})}),document.addEventListener("visibilitychange",A),e.addEventListener(
"focusin",y=>{y.relatedTarget instanceof Node&&e.contains(y.relatedTarget)||A()}),p.follow("change:states change:header",
S),p.follow("msg:custom",y=>{y.type==="saved"&&(u.get(y.name)?.saved(y),R?.postMessage(t.get("task_id"))),y.type==="refu\
sed"&&u.get(y.name)?.refused(y),h()}),p.follow("msg:custom",f.hear),p.follow("change:bench",f.show),S();for(let y of i)y.
catchUp();h(),f.show(),p.alert.textContent=t.get("notice");let m=hn(e,`${r}/${t.get("task_id")}`);return()=>{m(),R?.close(),
p.close(),document.removeEventListener("visibilitychange",A)}}function ye(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var bo={right:"●",other:"◆",unread:"▲"};function vo(t){let e=Wt(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),r=null,o=Pt(t).make(t,e,i=>{r=i,o.show({value:r}),c(void 0)},(i,u)=>{i&&(r=u)}),a=_t(t,e,e.status);a.append(o.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let u=i?[At(bo[i.how]),s("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...u)}return{name:t.name,element:a,value(){return o.flush?.(),r},show(i,u){i!==void 0&&(r=i,o.show(
{value:r,saved:"given"})),c(u)},still(i){o.setDisabled(i),a.classList.toggle("ts-given",i)}}}function bn({model:t,el:e}){
let n=J({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let r=s("p",{class:"ts-title",role:"heading","aria-\
level":"3"}),o=s("p",{class:"ts-lead"}),a=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-asked"}),i=Y(t.get("give"),()=>{
let S=Object.fromEntries(d.map(v=>[v.name,v.value()]));n.send({type:"give",values:S})});i.classList.add("ts-first");let u=Y(
"",()=>n.send({type:"fresh"})),l=t.get("all")?Y(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,r,o,a,c,s("p",{class:"ts-acts"},i,u,l));let d=[],p=()=>{let S=t.get("values"),v=t.get("told");for(let y of d)
y.show(S[y.name],v[y.name]),y.still(v[y.name]!==void 0&&v[y.name].how!=="unread");let A=d.some(({name:y})=>!v[y]||v[y].how===
"unread"),R=document.activeElement===i;if(i.hidden=!A,u.textContent=t.get("fresh"),u.hidden=A||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!R||A)return;let m=Z(e,".ts-told")[0];m.tabIndex=-1,m.focus({preventScroll:!0})},f=()=>{(Z(c,"input, sel\
ect, [tabindex]")[0]??(u.hidden?i:u)).focus({preventScroll:!0})},g=()=>{d=t.get("fields").map(vo),c.replaceChildren(...d.
map(({element:S})=>S)),r.textContent=t.get("title"),r.hidden=!r.textContent,o.textContent=t.get("lead"),o.hidden=!o.textContent,
a.replaceChildren(...Et(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let S=e.contains(
document.activeElement);g(),S&&f()}),n.follow("change:told change:values change:notice change:fresh",p),g();let h=t.get(
"place");if(h){let S=ye(sessionStorage,localStorage,h).get();t.send({type:"who",id:S?.id??"",ticket:S?.ticket??""})}return()=>n.
close()}var vn="twoshaft-mine";var ko={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},yo={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"},xe=(t,e,n)=>s("a",{href:Vt("la\
b/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"ts-link"},e);function kn(t){return s("ul",{class:"\
ts-gaps"},...t.map(({task:e,missing:n,asked:r,unread:o})=>s("li",{},`${e}: `,n===r?"nothing answered":n?`${n} of ${r} mi\
ssing`:"",...o.map(([a,c])=>s("span",{},s("b",{},"cannot be read: "),`“${a}” ${c}`)))))}function xo(t){let e=({name:r})=>Number(
r.split("-").at(-1)),n=[...t].sort((r,o)=>e(r)-e(o)).flatMap(({notebooks:r})=>r.map(o=>[o.split("/").pop()??"",o]));localStorage.
setItem(vn,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(new Event("storage"))}function yn({model:t,el:e}){
let n="",r=ye(sessionStorage,localStorage,t.get("place")),o=J({model:t,el:e},{kind:"start",lost:()=>{}}),a=s("div",{}),c=s(
"p",{class:"ts-said",role:"status"});o.show(o.alert,c,a);let i=(k,b={})=>{a.getAttribute("aria-busy")==="true"||o.isLost()||
(b.quietly||(a.setAttribute("aria-busy","true"),c.textContent="One moment.",o.alert.textContent=""),t.send({type:k,...b}))},
u=(k,b,E,N)=>s("button",{type:"button",class:N?"ts-button ts-first":"ts-button","data-key":b,onclick:E},k);function l(){
let k=nt("who"),b=nt("word"),E=s("select",{id:k,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choo\
se your name"),...t.get("people").map(([H,X])=>s("option",{value:H,selected:H===n},X)));E.addEventListener("change",()=>{
n=E.value});let N=s("input",{id:b,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",
maxlength:"80","data-key":"word"});return s("form",{class:"ts-sign-in",onsubmit:H=>{H.preventDefault(),i("sign-in",{name:E.
value,word:N.value})}},s("h2",{},"Who is working?"),s("div",{class:"ts-pair"},s("label",{for:k},"Your name"),E),s("div",
{class:"ts-pair"},s("label",{for:b},"Sign-in word from your slip"),N),s("button",{type:"submit",class:"ts-button ts-firs\
t","data-key":"sign-in"},"Sign in"),s("p",{class:"ts-hint"},t.get("kept")))}function d(k,b){let E=st=>`${st}:${k.name}`,
N=s("div",{class:"ts-doing"});for(let st of k.feedback.slice(0,1))N.append(s("a",{href:Vt("files",st),target:"_blank",class:"\
ts-link","data-key":E("feedback")},"Read feedback"));for(let st of k.notebooks){let K=k.notebooks.length===1?"Open":`Ope\
n ${st.split("/").pop()}`;N.append(xe(st,K,E(`open ${st}`)))}k.can_get&&N.append(u(k.notebooks.length?"Get again":"Get",
E("get"),()=>i("get",{name:k.name}),!k.notebooks.length)),k.can_hand_in&&N.append(u(k.receipt?"Hand in again":"Hand in",
E("hand in"),()=>i("hand-in",{name:k.name})));for(let st of N.children)st.setAttribute("aria-label",`${st.textContent}: ${k.
title}`);let H=t.get("asking")===k.name,X=k.receipt||k.unread>0,q=s("tr",{},s("th",{scope:"row"},k.title),s("td",{},k.due||
"no date",k.overdue?s("span",{class:"ts-small-line"},"date passed"):null),s("td",k.receipt?{tabindex:-1,"data-key":E("re\
ceipt")}:{},s("span",{class:"ts-shape","aria-hidden":"true"},ko[k.state]||""),s("b",{},yo[k.state]||k.state),s("span",{class:"\
ts-small-line"},k.detail),b?s("span",{class:"ts-small-line"},`Mark: ${b}`):null),s("td",{},N));if(H)return[q,s("tr",{},s(
"td",{colspan:4},f(k)))];if(!X||!k.gaps.length)return[q];let ht=s("td",{colspan:4},s("b",{},p(k)),kn(k.gaps));return[q,s(
"tr",{},ht)]}let p=({left:k,unread:b})=>It([k?`${k} ${k===1?"answer is":"answers are"} missing`:null,b?`${b} cannot be r\
ead`:null]).join(", ");function f(k){let b=nt("question"),E=s("div",{class:"ts-doing"});for(let H of k.notebooks)E.append(
xe(H,"Go on with it",`go on:${k.name}`));let N=p(k);return E.append(u(N?"It is my own work: hand in as it is":"It is my \
own work: hand in",`hand in anyway:${k.name}`,()=>i("hand-in",{name:k.name,own:!0}),!N)),s("div",{class:"ts-question",role:"\
group",tabindex:-1,"aria-labelledby":b,"data-key":"question"},s("p",{id:b},s("b",{},`${k.title}: not handed in yet.${N?`\
 ${N}.`:""}`),N?" An answer that is missing or cannot be read earns nothing.":null),N?kn(k.gaps):null,s("p",{},"By handi\
ng in you state: ",s("b",{},t.get("statement"))),E)}let g=new Set,h={met:"✓",enough:"◐","not yet":"○"};function S(k,b){
let E=k.entries.map(q=>b.find(ht=>ht.name===q)).filter(q=>q!==void 0),N=k.lesson?xe(k.lesson,`Lesson ${k.title}`,`lesson\
:${k.lesson}`):s("span",{class:"ts-small-line"},"no lesson here"),H=s("details",{open:g.has(k.module)},s("summary",{"dat\
a-key":`outcomes:${k.module}`},`Outcomes: ${k.count||"none"}`),s("ul",{},...k.outcomes.map(([q,ht,st,K])=>s("li",{},s("s\
pan",{class:"ts-shape","aria-hidden":"true"},h[q]||""),s("b",{},`${q}${st&&q==="enough"?`, ${st}`:""}: `),ht,st&&q==="no\
t yet"?`. Still missing: ${st}`:"",K?` (${K})`:""))));H.addEventListener("toggle",()=>{H.open?g.add(k.module):g.delete(k.
module)});let X=E.flatMap(q=>d(q,k.marks[q.name]));return s("tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"rowgrou\
p",colspan:4},k.title,s("span",{class:"ts-assigned"},E.length?"assigned":"not assigned"))),...X,s("tr",{},s("td",{colspan:4},
N,s("p",{class:"ts-next"},s("b",{},"Next: "),k.next),H)))}function v(){let k=t.get("me"),b=t.get("entries"),E=s("table",
{class:"ts-table"},s("thead",{},s("tr",{},...["Assignment","Due","State","What you can do"].map(N=>s("th",{scope:"col"},
N)))),...t.get("modules").map(N=>S(N,b)));return s("section",{},s("div",{class:"ts-me"},s("h2",{},`Working as ${k.name} \
(${k.id})`),k.ticket?u("Not you? Sign out","sign-out",()=>{i("sign-out"),document.dispatchEvent(new CustomEvent("twoshaf\
t-signed-out"))}):null),b.length?null:s("p",{},"Nothing is assigned yet."),E,u("Look again","look",()=>i("look")))}function A(){
let k=!!t.get("me").id,b=t.get("modules").map(H=>H.lesson),N=t.get("lessons").filter(([H])=>!k||!b.includes(H));return N.
length?s("section",{},s("h2",{},k?"To look things up":"Lessons"),s("ul",{class:"ts-lessons"},...N.map(([H,X])=>s("li",{},
xe(H,X,`lesson:${H}`))))):null}let R=!1,m=t.get("me").id?null:r.get(),y=m!==null;function B(){let k=t.get("me");k.id?Jt(
t.get("look")):gn(),k.id?r.keep(k):(R||m&&!y)&&r.drop(),R=!!k.id,xo(k.id?t.get("entries"):[])}let M=0,w="",x=()=>Z(a,"[d\
ata-key]"),$=()=>a.querySelector("input[data-key=word]");function L(){let b=x().find(_=>_===document.activeElement)?.dataset.
key;a.removeAttribute("aria-busy");let E=!!t.get("me").id;c.textContent=t.get("said"),o.alert.textContent=t.get("trouble");
let N=$()?.value,H=y?s("p",{},"One moment."):l();a.replaceChildren(...It([E?v():H,A()]));let X=$();X&&N&&(X.value=N);let q=w;
if(w=t.get("asking"),w&&w!==q&&x().find(_=>_.dataset.key==="question")?.focus(),!b||w&&w!==q)return;let ht=x().find(_=>_.
dataset.key===b),st=b.split(":")[1],K=x().filter(_=>st&&_.dataset.key?.endsWith(`:${st}`)),V=K.find(_=>_.dataset.key?.startsWith(
"receipt")),C=K.find(_=>_!==V),W=b.startsWith("hand in anyway")?V??C:C;(ht??W??Z(a,"a, button, select")[0])?.focus()}let O=()=>{
clearTimeout(M),M=setTimeout(()=>{y=!1,B(),L()},0)};t.on("change",O),B(),L(),m&&t.send({type:"resume",name:m.id,ticket:m.
ticket});let D=()=>{!document.hidden&&t.get("me").id&&i("look",{quietly:!0})},F=new IntersectionObserver(([k])=>{k.isIntersecting&&
D()});return F.observe(e),document.addEventListener("visibilitychange",D),()=>{clearTimeout(M),t.off("change",O),F.disconnect(),
document.removeEventListener("visibilitychange",D),o.close()}}var $o={bench:gs,build:vs,cord:xs,depth:$s,desk:dn,exploded:Ts,face:Is,fault_board:Bs,form:wn,gate:Ps,gears:Rs,hazards:js,
lifting:Hs,micrometer:Ws,own_checks:_s,press:Ks,question:bn,rules:Fs,runout:Us,sealant:Js,seat:Zs,shims:Qs,sketch:tn,start:yn,
thread:en,unit_section:sn,whole_build:rn,wrench:an};export{$o as screens};
