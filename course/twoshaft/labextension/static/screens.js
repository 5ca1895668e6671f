var qs="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...Pt(n)),r}function D(t,e={},...n){let r=document.createElementNS(qs,t);return Lt(r,e),r.append(...n),
r}function Lt(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function F(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function Ct(t,e){return s("select",{class:"ts-box",...t},...ct(
e))}function Et(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function Nt(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Pt(t){return t.filter(e=>e!=null&&e!==!1)}var Se=0;function tt(t){return Se+=1,`two\
shaft-${t}-${Se}-${Math.random().toString(36).slice(2,7)}`}function Ot(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function it(t,e){return[...t.querySelectorAll(e)]}function xt(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function ft(t){return t.ctrlKey||t.metaKey||t.altKey}function Ft(t){let e=it(t,"button, input,\
 select");for(let n of e)n.disabled=!0}function Le(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function qt(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function Z(t,e,n=t){return F(t,e,{"aria-label":n})}
function ct(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function It(t){return t.map(e=>s("li",{},e))}var re=new Map;function kt(t,e){if(re.has(t))throw new Error(`the answer kind ${t} is registered twice`);re.set(t,e)}function _t(t){
let e=re.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Ut(t){let e=tt(
t.kind);return{control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function Wt(t,e,n){let{prompt:r}=_t(
t),o={class:"ts-prompt"};if(r==="legend")return s("fieldset",{class:"ts-field","aria-describedby":n},s("legend",o,t.prompt));
let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s("div",{class:"ts-field"},a)}function zt(t,e,n,r){let a=t.options.map(([l,i])=>{let c={"aria-describedby":e.status},u=s("input",{type:n,name:e.control,
value:l,...c});return{key:l,input:u,row:s("label",{class:"ts-option"},u,s("span",{},i))}});for(let{input:l}of a)l.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:l})=>l)),show(l){let i=l.value==null?[]:[l.value].flat();for(let{key:c,input:u}of a)u.checked=i.includes(c)},setDisabled(l){
for(let{input:i}of a)i.disabled=l},refused(){}}}kt("choice",{prompt:"legend",make:(t,e,n)=>zt(t,e,"radio",r=>n(r[0]))});kt("choices",{prompt:"legend",make:(t,e,n)=>zt(t,e,"checkbox",n)});function Ce(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function Me(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}kt("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([l,i],c)=>{let u=s("span",{class:"ts-each-line",
id:`${e.control}-${c}`},i),p=Ct({"aria-labelledby":u.id,"aria-describedby":e.status},[["","choose"],...o]);return{key:l,
box:p,row:s("li",{},u,p)}});for(let{box:l}of a)l.addEventListener("change",()=>{n(Ce(a.map(({key:i,box:c})=>[i,c.value])))});
return{element:s("ol",{class:"ts-each"},...a.map(({row:l})=>l)),show(l){let i=Me(l.value);for(let{key:c,box:u}of a)u.value=
i.get(c)??""},setDisabled(l){for(let{box:i}of a)i.disabled=l},refused(){}}}});function ae(t){let[e="",...n]=t.split(" "),r=e==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:e,size:r,
side:o,place:a[0],points:null};let l=a.map(i=>{let[c,u]=i.split(",").map(Number);return[c,u]});return{hand:e,size:r,side:o,
place:"",points:l}}function ie(t,{side:e,place:n,points:r}){return r||(e==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[e]??[])}function le(t,e){let{hand:n,size:r,side:o,place:a}=ae(e),l=[...t.stretches,...t.
holes].find(c=>c.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${l?`, ${l.name}`:""}, ${t.sides[o]??""}`}
function ce(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function Ae(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function Ee(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function Oe(t,[e,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
l,i])=>Math.hypot(l-e,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var Us=.4;function Te(t,e){let n=Us,r=Gt(t,n);for(;r.
length>e;)n*=1.5,r=Gt(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function Gt(t,e){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let l=1;l<t.length-1;l+=1){let i=Ws(n,r,t[l]);i>o&&([o,a]=[i,l])}return o<=
e?[n,r]:[...Gt(t.slice(0,a+1),e).slice(0,-1),...Gt(t.slice(a),e)]}function Ws(t,e,n){let[r,o]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var Yt=14,zs=3,Gs=.5,Ys=["middle","inside","outside"],Xt="round ";function Xs(t,e){let n=t.outline.map(([H])=>H),r=t.outline.
map(([,H])=>H),[o,a]=[Math.min(...n)-Yt,Math.max(...n)+Yt],[l,i]=[Math.min(...r)-Yt,Math.max(...r)+Yt],c=a-o,u=i-l,p=([H,
q])=>`${(H-o).toFixed(1)} ${(i-q).toFixed(1)}`,h=(H,q)=>`M${H.map(p).join("L")}${q?"Z":""}`,g=tt("face"),y=c/100,m=2*y,S=(H,q)=>D(
"pattern",{id:`${g}-${H}`,width:m,height:m,patternUnits:"userSpaceOnUse"},D("path",{d:q,class:"tsp-hatch","stroke-width":y/
4})),C=D("defs",{},S("oil",`M0 ${m}L${m} 0`),S("dirt",`M0 ${m}L${m} 0M0 0L${m} ${m}`)),B=t.cavities.map(([,H])=>h(H,!0)).
join(""),P=t.islands.map(H=>h(H,!0)).join(""),k=h(t.outline,!0)+B,L=D("g"),x=D("g"),w=D("g"),d=D("g"),f=D("path",{class:"\
tsp-live",d:""}),v=D("path",{class:"tsp-chosen",d:""}),b=D("path",{class:"tsp-land",d:k,"fill-rule":"evenodd"}),$=D("pat\
h",{class:"tsp-edge",d:k+P,"stroke-width":y/2.5}),E=([H,q],U,rt="middle")=>{let X={x:H-o,y:i-q,"font-size":2.1*y,"text-a\
nchor":rt};return D("text",{class:"tsp-text",...X},U)},_=[(o+a)/2,(l+i)/2],A=(H,q)=>{let U=qt(H,_)||1;return[H[0]+q*(_[0]-
H[0])/U,H[1]+q*(_[1]-H[1])/U]};for(let{x:H,y:q,d:U,leads:rt,name:X}of t.holes){let st={cx:H-o,cy:i-q,"stroke-width":y/4},
bt=rt==="blind"?"tsp-hole tsp-blind":"tsp-hole";w.append(D("circle",{...st,r:U/2,class:bt})),rt==="to the outside"&&w.append(
D("circle",{...st,r:U/3,class:"tsp-hole"}));let[yt,At]=A([H,q],-(U/2+4.4*y));w.append(E([yt,At-.8*y],X.replace("bolt ","")))}
for(let H of t.guides){let[q,U]=[H.x-o,i-H.y],rt=`M${q-y} ${U}h${m}M${q} ${U-y}v${m}`;w.append(D("path",{class:"tsp-guid\
e",d:rt,"stroke-width":y/2}));let X={"stroke-width":y/5,"stroke-dasharray":`${y} ${y}`};w.append(D("circle",{cx:q,cy:U,r:H.
reach,class:"tsp-reach",...X}));let st=A([H.x,H.y],H.reach+m),bt=(st[0]-H.x)/(H.reach+m);w.append(E(st,H.name,bt>.5?"sta\
rt":bt<-.5?"end":"middle"))}for(let{word:H,points:q,width:U}of t.spots){let[rt]=H.split(" "),[X,st]=[q[0],q[q.length-1]],
bt=qt(X,st)||1,[yt,At]=[-(st[1]-X[1])/bt*U/2,(st[0]-X[0])/bt*U/2],I=[[X[0]+yt,X[1]+At],[st[0]+yt,st[1]+At],[st[0]-yt,st[1]-
At],[X[0]-yt,X[1]-At]],K=`url(#${g}-${rt})`;L.append(D("path",{d:h(I,!0),fill:K,class:"tsp-spot","stroke-width":y/4}));let nt=E(
A([(X[0]+st[0])/2,(X[1]+st[1])/2],9*y),rt);nt.classList.add("tsp-spot-word"),w.append(nt)}let M=[100,50,20,10].find(H=>H<
c/4)??10,T=`M${y} ${u-y}v${-y}v${y/2}h${M}v${-y/2}v${y}`,O={x:M+m,y:u-y,"font-size":2.1*y};d.append(D("path",{class:"tsp\
-edge",d:T,"stroke-width":y/4}),D("text",{class:"tsp-text",...O},`${M} mm`));let R=`0 0 ${c.toFixed(1)} ${u.toFixed(1)}`,
W=D("svg",{viewBox:R,class:"tsp-face",role:"img","aria-label":e},C,b,L,x,$,w,v,f,d),G=`max-width: ${(25*c/u).toFixed(1)}\
rem`;return{frame:s("div",{class:"ts-pad-face",style:G},W),svg:W,over:d,live:f,chosen:v,land:b,path:h,unit:y,box:{left:o,
right:a,low:l,high:i,width:c,height:u},place({clientX:H,clientY:q}){let U=W.getBoundingClientRect(),rt=Math.min(U.width/
c,U.height/u);return[o+(H-U.left-(U.width-rt*c)/2)/rt,i-(q-U.top-(U.height-rt*u)/2)/rt]},strokes(H){x.replaceChildren(...H.
map(et))}};function et(H){let q=ae(H),U=ie(t,q),rt=ce(t,q.hand,Math.max(q.size,y/2)),X=U.length>1?h(U,q.side==="round"):
U.length?`${h(U)}h0.01`:"",st=D("path",{d:X,class:`tsp-stroke tsp-${q.hand}`,"stroke-width":rt});if(q.hand!=="film")return st;
let bt=Math.min(8,Math.max(.6,40*q.size)),yt={"stroke-width":y/3,"stroke-dasharray":`${bt} ${bt}`};return D("g",{},st,D(
"path",{d:X,class:"tsp-grain",...yt}))}}function Jt({face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=Xs(t,e),l=s("p",
{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"ts-read ts-pad-trouble",role:"status"}),c=(T,O)=>s("span",{class:"\
ts-pair"},s("label",{for:O.id},T),O),u=Ct({id:tt("hand")},Object.entries(t.hands)),p=s("input",{class:"ts-box ts-size",id:tt(
"size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),h=s("label",{for:p.id},"thickness"),g=Ct({id:tt(
"place")},t.stretches.map(({id:T,name:O})=>[T,O]));g.append(s("optgroup",{label:"Round a hole"},...t.holes.map(({id:T,name:O})=>s(
"option",{value:`${Xt}${T}`},`round ${O}`))));let y=Ct({id:tt("side")},Ys.map(T=>[T,t.sides[T]])),m=F("Lay it here",()=>d(
[w(g.value)])),S=F("Lay it on every stretch",()=>d(t.stretches.map(({id:T})=>w(T)))),C=F("Take back the last pass",()=>{
k&&r(k-1,!0)}),B=F("Clear the face",o),P={film:"",bead:""},k=0,L=!1;function x(){if(u.value==="wipe")return"";let[T,O]=t.
sizes[u.value],R=Ae(p.value);if(R>=T&&R<=O)return p.removeAttribute("aria-invalid"),` ${Number(R.toFixed(3))}`;let W=u.value===
"film"?"the thickness of the film":"the diameter of the bead";return i.textContent=p.value.trim()?`Read “${p.value}”: \
give ${W} from ${T} to ${O} mm.`:`First give ${W} in mm.`,p.setAttribute("aria-invalid","true"),p.focus(),null}function w(T){
let O=x();if(O===null)return null;let R=T.startsWith(Xt)?T:`${y.value} ${T}`;return`${u.value}${O} ${R}`}function d(T){let O=T.
filter(R=>R!==null);if(!(L||O.length<T.length)){if(k+O.length>t.most){i.textContent=`There is room for ${t.most} passes;\
 take some back first.`;return}i.textContent="",l.textContent=O.length===1?`Laid: ${le(t,O[0])}`:`Laid on ${O.length} st\
retches`,n(O)}}function f(){let T=u.value==="wipe";h.textContent=u.value==="bead"?"diameter":"thickness",p.disabled=L||T,
p.value=T?"":P[u.value],p.placeholder=T?"":"mm",m.textContent=T?"Wipe here":"Lay it here",S.textContent=T?"Wipe every st\
retch":"Lay it on every stretch",i.textContent="",v()}function v(){let T=g.value.startsWith(Xt);y.disabled=L||T;let O=ie(
t,T?{side:"round",place:g.value.slice(Xt.length)}:{side:y.value,place:g.value});a.chosen.setAttribute("d",O.length?a.path(
O,T):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}u.addEventListener("change",f),p.addEventListener("input",
()=>{P[u.value]=p.value}),g.addEventListener("change",v),y.addEventListener("change",v),p.addEventListener("keydown",T=>{
T.key==="Enter"&&(T.preventDefault(),m.click())});let b=null;a.svg.addEventListener("pointerdown",T=>{if(L||T.button>0)return;
b=[a.place(T)],a.svg.setPointerCapture(T.pointerId);let O=Math.max(1,Number(P.bead.replace(",","."))||1);a.live.setAttribute(
"stroke-width",String(ce(t,u.value,O)))}),a.svg.addEventListener("pointermove",T=>{if(!b)return;let O=a.place(T);qt(O,b[b.
length-1])<Gs||(b.push(O),a.live.setAttribute("d",a.path(b)))});let $=T=>{if(!b)return;let O=b;if(b=null,a.live.setAttribute(
"d",""),T.type==="pointercancel")return;if(Ee(O)<zs){g.value=Oe(t,O[0]),v();return}let R=x();if(R===null)return;let W=Te(
O,t.points).map(G=>G.join(","));d([`${u.value}${R} at ${W.join(" ")}`])};a.svg.addEventListener("pointerup",$),a.svg.addEventListener(
"pointercancel",$);let E=s("ol",{class:"ts-passes","aria-label":"Passes, in the order they were done"}),_=s("p",{class:"\
ts-hint"},"Nothing is laid yet."),A=s("div",{class:"ts-pad-tools"},s("div",{class:"ts-tools"},c("tool",u),s("span",{class:"\
ts-pair"},h,p)),s("div",{class:"ts-tools"},c("where",g),c("runs",y)),s("div",{class:"ts-tools"},m,S,C,B),i,l),M=()=>it(E,
"button");return f(),{drawing:a,tools:A,list:E,empty:_,frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,A,s("div",
{class:"ts-pad-list"},_,E)),show(T,O=[]){k=T.length,a.strokes(T),_.hidden=k>0;let R=M().findIndex(W=>W.matches(":focus"));
E.replaceChildren(...T.map((W,G)=>s("li",{},s("span",{},`${le(t,W)}${O[G]?`, ${O[G]}`:""} `),F("take out",()=>r(G,!1),{class:"\
ts-button ts-remove",disabled:L,"aria-label":`Take out pass ${G+1}`})))),R>=0&&(M()[Math.min(R,k-1)]??m).focus()},setDisabled(T){
L=T;for(let O of[u,g,m,S,C,B,...M()])O.disabled=T;p.disabled=T||u.value==="wipe",v()}}}kt("film",{prompt:"words",make(t,e,n){let r=[],o=l=>{r=l,a.show(r),n(r)},a=Jt({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:l=>o([...r,...l]),onRemove:l=>o(r.filter((i,c)=>c!==l)),onClear:()=>o([])});
return{element:a.element,show(l){r=[l.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function Ne(t,e){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${e}`.trim()}function Ie(t,{send:e,typing:n,said:r=o=>String(o??"")}){let o=s("input",{type:"text",class:"ts-box ts-number-box",id:t.
control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.hint} ${t.read} ${t.
status}`}),a="",l=()=>a===null||o.value.trim()!==a.trim(),i=()=>{l()&&(a=o.value,e(o.value))};return o.addEventListener(
"blur",i),o.addEventListener("keydown",c=>{let u=(c.ctrlKey||c.metaKey)&&c.key.toLowerCase()==="s";c.key!=="Enter"&&!u||
(c.preventDefault(),i())}),o.addEventListener("input",()=>n(l(),o.value)),{box:o,flush:i,pending:l,refused(){a=null},show(c){
o.setAttribute("aria-invalid",String(!!c.error)),!(document.activeElement===o&&o.value!==a)&&(a=r(c.value),o.value=a)}}}kt("number",{prompt:"label",make(t,e,n,r){let o=t.units,{box:a,flush:l,pending:i,refused:c,show:u}=Ie(e,{send:n,typing:r}),
p=s("span",{class:"ts-hint",id:e.hint},t.hint),h=Ct({"aria-label":"Choose the unit"},[["","unit"],...o.map(g=>[g,g])]);return h.
addEventListener("change",()=>{h.value&&(a.value=Ne(a.value,h.value),/\d/.test(a.value)?l():a.focus())}),a.addEventListener(
"input",()=>{h.value=""}),{element:s("div",{class:"ts-line-of"},a,o.length?h:null,p),show:u,setDisabled(g){a.disabled=h.
disabled=g},refused:c,flush:l,pending:i}}});function Be(t,e){let r=[...new Set([t??[]].flat())].filter(o=>e.includes(String(o))).map(String);return[...r,...e.filter(
o=>!r.includes(o))]}var jt=(t,e)=>t.join(`
`)===e.join(`
`),De=t=>`#${t.keys[0]}`,Vt=class{constructor(e,n){this.labels=new Map(e.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
r,,o]of e)o&&this.stages.set(r,o);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let n of this.order){let r=this.stages.get(n)??null,o=e.at(-1);o&&r!==null&&o.stage===r?o.keys.push(n):e.push({stage:r,
keys:[n]})}return e}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let e=[];for(let n of this.runs()){
let[r]=n.keys;if(n.keys.length<2){e.push({id:r,key:r,level:1});continue}if(e.push({id:De(n),run:n,level:1}),!this.closed.
has(String(n.stage)))for(let o of n.keys)e.push({id:o,key:o,level:2})}return e}row(e){return this.rows().find(n=>n.id===
e)}settle(){let e=this.rows();if(!e.some(n=>n.id===this.current)){let n=this.current.replace(/^#/,""),r=e.find(o=>o.run?.
keys.includes(n));this.current=(r??e.find(o=>o.id===n)??e[0]).id}return e}unit(){let e=this.row(this.current);return e?.
run?e.run.keys:this.block.has(this.current)&&this.block.size>1?this.order.filter(n=>this.block.has(n)):[this.current]}unitName(){
let e=this.row(this.current);if(e?.run)return`Stage ${e.run.stage}`;let n=this.unit();return n.length>1?`Block of ${n.length}\
 steps`:this.label(n[0])}where(){let e=this.unit(),n=this.order.indexOf(e[0])+1;return e.length>1?`positions ${n} to ${n+
e.length-1} of ${this.order.length}`:`position ${n} of ${this.order.length}`}rest(){let e=this.unit();return this.order.
filter(n=>!e.includes(n))}get isFirst(){return this.order.indexOf(this.unit()[0])===0}get isLast(){return this.order.indexOf(
String(this.unit().at(-1)))===this.order.length-1}insertedAt(e){let n=this.rest();return[...n.slice(0,e),...this.unit(),
...n.slice(e)]}shifted(e){let n=this.rest(),r=this.order.indexOf(this.unit()[0]),o=!!this.row(this.current)?.run,a=u=>n[e>
0?u:u-1],l=a(r);if(l===void 0)return this.insertedAt(r);let i=this.stages.get(l),c=i!==void 0&&(o||this.closed.has(i));do
r+=e;while(c&&a(r)!==void 0&&this.stages.get(a(r))===i);return this.insertedAt(r)}atPosition(e){return this.insertedAt(Math.
min(e-1,this.order.length-this.unit().length))}beside(e,n){return this.insertedAt(this.rest().indexOf(e)+(n==="after"?1:
0))}gathered(){let e=new Map;for(let n of this.order){let r=this.stages.get(n)??n;e.set(r,[...e.get(r)??[],n])}return[...e.
values()].flat()}dropAt(e,n){let r=e.run?e.run.keys:[e.key],o=e.run&&!this.closed.has(String(e.run.stage));return n&&!o?
{target:String(r.at(-1)),side:"after"}:{target:r[0],side:"before"}}take(e){if(jt(e,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,n){let[r]=n.keys,o=this.rows().find(a=>a.run?.
keys.includes(r));this.current=o?o.id:r}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,n){let r=e.pop();return r?(n.push(this.order),this.order=
r,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||jt(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,n){this.order=[...e],n&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let n=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((r,o)=>r-o);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(e,n){
let r=e.run?e.run.stage:this.stages.get(e.key),o=e.run?e.run.keys[0]:e.key,a=this.runs().find(l=>l.keys.includes(o));return!r||
!a||a.keys.length<2?null:(n?this.closed.add(r):this.closed.delete(r),n&&(this.current=De(a)),r)}sought(e){let n=this.rows(),
r=n.findIndex(l=>l.id===this.current),o=e.length>1?r:r+1,a=l=>(l.run?String(l.run.stage):this.label(l.key)).toLowerCase();
return[...n.slice(o),...n.slice(0,o)].find(l=>a(l).startsWith(e))}};var Js=12,Vs=700,Zs=5,Pe=32,Qs=8;function Zt({label:t,steps:e,order:n,onChange:r}){let o=new Vt(e,n),{staged:a}=o,l=!1,i={},
c=!1,u=new Map,p=s("div",{"aria-live":"assertive",class:"ts-hidden"}),h=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),g=F("Up",()=>W(-1),{"aria-label":"Move the chosen step up"}),y=F("Down",
()=>W(1),{"aria-label":"Move the chosen step down"}),m=F("Undo",()=>o.undo()&&et("Undone")),S=F("Redo",()=>o.redo()&&et(
"Done again")),C=F("Choose several",()=>X(!l),{"aria-pressed":"false"}),B=F("Gather stages",()=>R(o.gathered(),"Steps of\
 one stage now stand together")),P=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:N=>{N.key==="Enter"&&G()}}),k=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),L=s("span",{class:"ts-chosen"}),x=F("Move",G,{"aria-label":"Move to this position"}),w=F(
"Move",wt,{"aria-label":"Move before this step"}),d=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},g,y,m,S,C,a?B:null),f=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",P,x),s("span",{class:"\
ts-pair"},"or before ",k,w)),v="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),b=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},v),f),$=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),d,L,h,b,p);function E(N){p.
textContent=N}function _(N=""){E(`${o.unitName()}${N}, ${o.where()}`)}function A(N){let j=u.get(N.id);if(j)return j;let Y=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Y.dataset.row=N.id,u.set(N.id,Y),Y}function M(N=!1){let j=o.settle(),
Y=new Set(j.map(J=>J.id));for(let[J,mt]of u)Y.has(J)||(mt.remove(),u.delete(J));let at=o.unit(),vt=new Set(at),ot=h.firstElementChild;
for(let J of j){let mt=A(J);mt===ot?ot=ot.nextElementSibling:h.insertBefore(mt,ot),T(mt,J,vt)}P.value=String(o.order.indexOf(
at[0])+1);let gt=[...o.order.entries()].filter(([,J])=>!vt.has(J));k.replaceChildren(...gt.map(([J,mt])=>s("option",{value:mt},
`${J+1}  ${o.label(mt)}`))),L.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,g.disabled=c||o.isFirst,y.disabled=c||
o.isLast,m.disabled=c||o.past.length===0,S.disabled=c||o.future.length===0;for(let J of[C,B,P,k,x,w])J.disabled=c;if(h.setAttribute(
"aria-disabled",String(c)),h.classList.toggle("ts-long",o.order.length>Js),N){let J=u.get(o.current);J?.focus({preventScroll:!0}),
J?.scrollIntoView({block:"nearest"})}}function T(N,j,Y){let at=j.id===o.current,vt=j.run?!1:o.block.has(j.key),ot=o.held!==
null&&(j.run?at:Y.has(j.key)),gt=o.order.indexOf(j.run?j.run.keys[0]:j.key),J=j.run?j.run.keys.map(St=>i[St]?.length??0):
i[j.key],mt=j.run?o.closed.has(String(j.run.stage)):!1,be=JSON.stringify([gt,j.level,at,vt,ot,J,j.run&&[j.run.keys.length,
mt]]);if(N.dataset.looks===be)return;N.dataset.looks=be,N.tabIndex=at?0:-1,N.setAttribute("aria-selected",String(vt)),N.
classList.toggle("ts-current",at),N.classList.toggle("ts-inblock",vt),N.classList.toggle("ts-held",ot),N.classList.toggle(
"ts-level2",j.level===2),a&&N.setAttribute("aria-level",String(j.level));let ve=ot?" picked up":vt?" in block":"",ye=ve?
s("span",{class:"ts-state"},ve):"",ke=St=>s("span",{class:"ts-number","aria-hidden":"true"},St);if(j.run){let{keys:St,stage:Ks}=j.
run;N.setAttribute("aria-expanded",String(!mt));let $e=mt?St.filter(Fs=>i[Fs]?.length).length:0;N.replaceChildren(ke(`${gt+
1}–${gt+St.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},mt?"▸":"▾"),s("span",{class:"ts-what"},s("b",
{},Ks),` ${St.length} steps`,$e?` – ${$e} with a remark`:"",ye));return}let xe=(i[j.key]??[]).map(St=>s("span",{class:`\
ts-note ts-note-${St.kind}`},Nt(St.shape??""),s("b",{},St.word),` ${St.text}`)),_s=a&&j.level===1;N.classList.toggle("ts\
-troubled",xe.length>0),N.replaceChildren(ke(String(gt+1)),s("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),s("spa\
n",{class:"ts-what"},o.label(j.key),_s?s("span",{class:"ts-stage"},` ${o.stages.get(j.key)??""}`):"",ye,...xe))}let O=()=>r(
[...o.order]);function R(N,j){if(!o.take(N)){E(`${o.unitName()} stays at ${o.where()}`);return}M(!0),j?E(j):_(),o.held===
null&&O()}function W(N){c||R(o.shifted(N))}function G(){if(c)return;let N=Number.parseInt(P.value,10),j=o.order.length;N>=
1&&N<=j?R(o.atPosition(N)):(E(`Type a position from 1 to ${j}`),L.textContent=`Type a position from 1 to ${j}.`)}function wt(){
!c&&k.value&&R(o.beside(k.value,"before"))}function et(N){M(),E(`${N}. ${o.unitName()}, ${o.where()}`),O()}function H(){
o.pickUp(),M(!0),_(" picked up")}function q(){o.putDown()&&O(),M(!0),_(" put down")}function U(){o.putDown()&&O(),M()}function rt(){
o.putBack(),M(!0),_(" put back")}function X(N){l=N,C.setAttribute("aria-pressed",String(N)),N||(o.block=new Set),M(),E(N?
"Choose the steps of a block":"Block let go")}function st(N){o.toggleBlock(N);let j=o.block.has(N)?"in the block":"out o\
f the block";E(`${o.label(N)} ${j}, ${o.block.size} in it`)}function bt(N,j){let Y=o.fold(N,j);Y&&(M(!0),E(`${Y} ${j?"cl\
osed":"open"}`))}h.addEventListener("keydown",N=>{if(ft(N))return;let j=o.rows(),Y=j.findIndex(mt=>mt.id===o.current),at=mt=>{
o.current=j[Math.max(0,Math.min(j.length-1,mt))].id,M(!0)},vt=j[Y],{key:ot}=N,gt=ot==="ArrowUp"?-1:ot==="ArrowDown"?1:null,
J=o.held!==null;if(gt&&(N.shiftKey||J))W(gt);else if(gt)at(Y+gt);else if(J&&ot==="Escape")rt();else if(ot===" ")c||(J?q:
H)();else if(J&&ot==="Enter")q();else if(ot==="Enter"&&!vt.run)c||(st(vt.key),M(!0));else if(ot==="Home"&&!J)at(0);else if(ot===
"End"&&!J)at(j.length-1);else if(a&&ot==="ArrowLeft")bt(vt,!0);else if(a&&ot==="ArrowRight")bt(vt,!1);else if(ot.length===
1&&!J)I(ot);else return;N.preventDefault()});let yt="",At;function I(N){yt+=N.toLowerCase(),clearTimeout(At),At=window.setTimeout(
()=>{yt=""},Vs);let j=o.sought(yt);j&&(o.current=j.id,M(!0))}h.addEventListener("focusout",({relatedTarget:N})=>{o.held!==
null&&N instanceof Node&&!h.contains(N)&&U()});let K=null;h.addEventListener("pointerdown",N=>{let j=o.row(xt(N,".ts-ste\
p")?.dataset.row??"");if(!j||N.button!==0)return;if(j.run&&xt(N,".ts-fold")){bt(j,!o.closed.has(String(j.run.stage))),N.
preventDefault();return}let Y=xt(N,".ts-grip, .ts-number"),at=N.ctrlKey||N.metaKey;o.held!==null&&U(),!j.run&&!c&&(N.shiftKey?
o.blockTo(j.key):(at||l)&&!Y&&st(j.key)),o.current=j.id,M(!0),N.preventDefault(),!(c||N.shiftKey||at)&&(N.pointerType!==
"mouse"&&!Y||(K={x:N.clientX,y:N.clientY,id:N.pointerId,carried:null},h.setPointerCapture(N.pointerId)))}),h.addEventListener(
"pointermove",N=>{if(!K||N.pointerId!==K.id)return;let{clientX:j,clientY:Y}=N;if(!K.carried){if(Math.hypot(j-K.x,Y-K.y)<
Zs)return;K.carried=nt()}Object.assign(K.carried,{x:j,y:Y}),lt(K.carried)});function nt(){let N=s("div",{class:"twoshaft\
 ts-ghost","aria-hidden":"true"},o.unit().length>1?o.unitName():o.label(o.unit()[0]));document.body.append(N);let j=s("d\
iv",{class:"ts-line","aria-hidden":"true"});h.append(j),h.classList.add("ts-dragging");for(let Y of o.unit())u.get(Y)?.classList.
add("ts-lifted");return{ghost:N,line:j,timer:requestAnimationFrame(pt),x:0,y:0,drop:null}}function lt(N){N.ghost.style.transform=
`translate(${N.x+12}px, ${N.y+8}px)`;let Y=o.rows().map(gt=>{let J=A(gt).getBoundingClientRect();return{row:gt,box:J,offset:N.
y-(J.top+J.height/2)}}).reduce((gt,J)=>Math.abs(J.offset)<Math.abs(gt.offset)?J:gt),at=Y.offset>0;N.drop=o.dropAt(Y.row,
at);let ot=(at?Y.box.bottom:Y.box.top)-h.getBoundingClientRect().top+h.scrollTop-1;N.line.style.top=`${ot}px`}function pt(){
let N=K?.carried;if(N){for(let j of[h,Le(h)]){let at=j===document.scrollingElement?{top:0,bottom:innerHeight}:j.getBoundingClientRect(),
vt=N.y<at.top+Pe?-1:N.y>at.bottom-Pe?1:0;if(!vt)continue;let ot=j.scrollTop;if(j.scrollTop+=vt*Qs,j.scrollTop!==ot){lt(N);
break}}N.timer=requestAnimationFrame(pt)}}function ht(N){let j=K?.carried;if(K=null,!j)return;cancelAnimationFrame(j.timer),
j.ghost.remove(),j.line.remove(),h.classList.remove("ts-dragging");for(let at of u.values())at.classList.remove("ts-lift\
ed");let{drop:Y}=j;if(!N||!Y||o.unit().includes(Y.target)){M(!0),E(`${o.unitName()} stays at ${o.where()}`);return}R(o.beside(
Y.target,Y.side))}return h.addEventListener("pointerup",()=>ht(!0)),h.addEventListener("pointercancel",()=>ht(!1)),$.addEventListener(
"keydown",N=>{!K?.carried||N.key!=="Escape"||(ht(!1),N.stopPropagation())}),M(),{element:$,tools:d,order:()=>[...o.order],
change:(N,j)=>{c||R(N,j)},setOrder(N,j=!1){o.held!==null||K?.carried||jt(N,o.order)||(o.set(N,j),M())},setNotes(N){i=N??
{},M()},setDisabled(N){c=N,M()}}}kt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=Zt({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
Be(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function je(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[l,i]of t.entries()){let[c,u]=e[i]??[null,null];c!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[c??r[0],u??(c===null?r[1]:0)];let p=n(...r);o.push(p);let h=a.get(p.join(" "))??{at:p,numbers:[]};
h.numbers.push(l+1),a.set(p.join(" "),h)}return{points:o,stops:[...a.values()]}}function Re(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function He(t,e){return t.filter((n,r)=>r!==e)}function _e(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var ue=9,Ke=.7*ue,de=44;function tn(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*ue+2*de,
l=(o-r)*Ke+2*de,i=(m,S)=>[de+(m-e)*ue,l/2-(S-(r+o)/2)*Ke],c=t.gates.map(m=>`M${i(m,r).join(" ")}L${i(m,o).join(" ")}`),u=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,p=t.gears.map(([m,S,C])=>{let[B,P]=i(S,C),k={x:B,y:P+(C>0?-20:30)};return D("t\
ext",{...k,class:"tsp-gear","text-anchor":"middle"},m)}),h=D("polyline",{class:"tsp-line",points:""}),g=D("g");return{element:D(
"svg",{viewBox:`0 0 ${a} ${l}`,width:a,height:l,class:"ts-gateplan","aria-hidden":"true"},D("path",{d:[...c,u].join(""),
class:"tsp-slot"}),...p,h,g),show(m){let{points:S,stops:C}=je(m,t.aims,i),[[B,P]]=S;h.setAttribute("points",S.map(k=>k.join(
",")).join(" ")),g.replaceChildren(D("circle",{cx:B,cy:P,r:4,class:"tsp-start"}),...C.map(({at:[k,L],numbers:x})=>D("g",
{},D("circle",{cx:k,cy:L,r:3.5,class:"tsp-stop"}),D("text",{x:k+7,y:L-5,class:"tsp-number"},x.join(", ")))))}}}function Fe({
label:t,moves:e,plan:n,most:r,onChange:o}){let a=new Map(e),l=$=>a.get($)??$,i=[],c=-1,u=!1,p=n?tn(n):null,h=s("ol",{class:"\
ts-pathlist","aria-label":t}),g=s("p",{class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),
y=s("p",{class:"ts-hidden",role:"status"}),m=e.map(([$,E])=>F(E,()=>L($))),S=F("Take back the last move",()=>{i.length&&
x(i.length-1)}),C=F("Take back all",()=>{i.length&&k([],"No moves left")}),B=s("span",{class:"ts-hint"}),P=s("div",{class:"\
ts-path"},s("div",{class:"ts-tools ts-moves",role:"group","aria-label":"Add a move"},...m),s("div",{class:"ts-path-both"},
s("div",{class:"ts-path-words"},g,h,s("div",{class:"ts-tools"},S,C,B)),p&&s("div",{class:"ts-path-picture"},p.element)),
p&&s("p",{class:"ts-hint"},"The line shows where each move aims. Whether the lever gets there is what the test finds out\
."),y);function k($,E){u||(i=$,b(),y.textContent=E,o([...i]))}function L($){if(i.length>=r){y.textContent=`${r} moves ar\
e the most here`;return}let{moves:E,place:_}=Re(i,c,$);c=_,k(E,`Move ${_+1}: ${l($)}`)}function x($){let E=l(i[$]);c=Math.
min(c,i.length-2),k(He(i,$),`Taken back: ${E}`)}function w($,E){let _=_e(i,$,E);_&&(c=$+E,k(_,`${l(_[c])}, move ${c+1} o\
f ${i.length}`),f(c))}function d($){return h.children[$]?.querySelector(".ts-path-move")}function f($){let E=d($);return E instanceof
HTMLElement&&E.focus(),!!E}function v($,E){let _=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${E+1}: ${l(
$)}`},l($)),A=s("button",{type:"button",class:"ts-path-off","aria-label":`Take back move ${E+1}`,onclick:()=>x(E)},"×"),
M=s("li",{},_,A);return M.classList.toggle("ts-current",E===c),_.addEventListener("focus",()=>{c=E;for(let T of h.children)
T.classList.toggle("ts-current",T===M)}),_.addEventListener("keydown",T=>{if(ft(T))return;let O=T.key==="ArrowUp"?-1:T.key===
"ArrowDown"?1:null;if(O&&T.shiftKey)w(E,O);else if(O)f(E+O);else if(T.key==="Delete"||T.key==="Backspace")x(E),f(Math.min(
E,i.length-1))||m[0].focus();else return;T.preventDefault()}),A.disabled=u,M}function b(){h.replaceChildren(...i.map(v)),
g.hidden=i.length>0,B.textContent=`${i.length} of at most ${r} moves`;for(let $ of m)$.disabled=u||i.length>=r;S.disabled=
C.disabled=u||i.length===0,p?.show(i)}return b(),{element:P,setMoves($){jt($,i)||(i=[...$],c=-1,b())},setDisabled($){u=$,
b()}}}kt("path",{prompt:"words",make(t,e,n){let r=Fe({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});var en="No line to the course just now. Go on with the questions: what you enter is kept in this browser and sent when t\
he line is back. Simulators stand still until then.",sn="The line to the course is back.",nn=1500,on=5e3,fe=new Set,Dt=null,
pe;function qe(t){Dt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),Dt.isConnected||document.body.append(Dt),Dt.textContent=
t}function rn(){Dt?.remove(),Dt=null}function Ue(){clearTimeout(pe),fe.size?pe=window.setTimeout(()=>qe(en),Dt?0:nn):Dt&&
(qe(sn),pe=window.setTimeout(rn,on))}var We=t=>({down(){fe.add(t),Ue()},up(){fe.delete(t),Ue()}});var an=1e3,ln="input, button, select, textarea, summary, a, [tabindex]";function cn(t){let e=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:l,
keyCode:i,ctrlKey:c,metaKey:u}=o,p={key:a,code:l,keyCode:i,ctrlKey:c,metaKey:u,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",p))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let o of t.querySelectorAll(ln))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function dn(t,e,n){let r=t.widget_manager?.kernel,o=(l,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(l,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),r?.statusChanged?.
connect(o),r?.connectionStatusChanged?.connect(a),r?.disposed?.connect(e),()=>{t.off("comm_live_update",e),r?.statusChanged?.
disconnect(o),r?.connectionStatusChanged?.disconnect(a),r?.disposed?.disconnect(e)}}var ze=`.twoshaft {
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
th:0;vertical-align:middle}.twoshaft-form{padding-block:var(--ts-grid)}.twoshaft .ts-top{display:flex;flex-wrap:wrap;jus\
tify-content:space-between;gap:0 calc(3 * var(--ts-grid));border-bottom:1px solid var(--ts-line);padding-bottom:calc(var\
(--ts-grid) / 2)}.twoshaft .ts-who{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft .ts-field{border:0;min-widt\
h:0;margin:calc(2 * var(--ts-grid)) 0 0}.twoshaft .ts-prompt{display:block;padding:0;font-weight:600;margin-bottom:var(-\
-ts-grid)}.twoshaft .ts-line-of{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft .ts-line-of+\
.ts-read{min-height:1.5em}.twoshaft .ts-read.ts-error,.twoshaft .ts-status-unread{color:var(--ts-ink);font-size:var(--ts\
-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-unread .ts-shape,.twoshaft .ts-status-bad .ts-shape{color:var(\
--ts-bad)}.twoshaft .ts-status-saved .ts-shape{color:var(--ts-good)}.twoshaft .ts-status-bad{color:var(--ts-ink);font-we\
ight:600}.twoshaft .ts-order+.ts-read{display:none}.twoshaft .ts-bench{margin-top:var(--ts-grid)}.twoshaft .ts-bench sum\
mary{cursor:pointer;min-height:24px;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft .ts-bench[open]{border:1px\
 solid var(--ts-line);padding:var(--ts-grid)}.twoshaft .ts-bench-rows{display:grid;grid-template-columns:repeat(auto-fil\
l,minmax(min(100%,20em),1fr));gap:var(--ts-grid) calc(2 * var(--ts-grid));margin:var(--ts-grid) 0}.twoshaft .ts-bench-ro\
w{min-width:0}.twoshaft .ts-bench-row select{max-width:100%;min-width:0}.twoshaft .ts-bench-row label{display:block;max-\
width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-height:0}.twoshaft-start>div{max-width:1040px}.twoshaft-start\
 h2{font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-i\
n{margin:calc(2 * var(--ts-grid)) 0 calc(3 * var(--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;gap:calc(1.5 * var\
(--ts-grid));justify-items:start}.twoshaft-start .ts-pair{display:grid;gap:calc(var(--ts-grid) / 2)}.twoshaft-start .ts-\
pair label{font-weight:600}.twoshaft-start .ts-pair .ts-box{width:22em;max-width:100%}.twoshaft-start .ts-first{backgrou\
nd:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft-start .ts-button{font-size:var(--ts-text)}.twoshaft-start .ts-sa\
id:not(:empty){border-left:3px solid var(--ts-accent);padding:var(--ts-grid);background:var(--ts-faint)}.twoshaft-start \
.ts-me{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:var\
(--ts-grid)}.twoshaft-start .ts-table{border-collapse:collapse;width:100%;margin:0 0 calc(2 * var(--ts-grid));font-size:\
var(--ts-text);table-layout:fixed}.twoshaft-start .ts-table :is(th,td){text-align:left;vertical-align:top;white-space:no\
rmal;padding:var(--ts-grid);border:0;border-bottom:1px solid var(--ts-line);background:none;max-width:none}.twoshaft-sta\
rt .ts-table thead th{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-table th:nth-child(1){width:26\
%}.twoshaft-start .ts-table th:nth-child(2){width:16%}.twoshaft-start .ts-table th:nth-child(4){width:24%}.twoshaft-star\
t .ts-small-line{display:block;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-doing{display:flex;fl\
ex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-start a.ts-link:is(:link,:visited,:hover,:focus,:active){co\
lor:var(--ts-accent);text-decoration:underline;display:inline-flex;align-items:center;min-height:var(--ts-target);cursor\
:pointer}.twoshaft-start .ts-lessons{padding-left:calc(2 * var(--ts-grid))}.twoshaft-start .ts-lessons .ts-link{min-heig\
ht:24px}.twoshaft-start .ts-module th{padding-top:calc(3 * var(--ts-grid));font-size:var(--ts-text)}.twoshaft-start .ts-\
table .ts-module th{width:auto}.twoshaft-start .ts-assigned{margin-left:var(--ts-grid);font-weight:400;color:var(--ts-qu\
iet)}.twoshaft-start .ts-next{margin:0}.twoshaft-start summary{min-height:var(--ts-target);align-content:center;cursor:p\
ointer}@media(max-width:560px){.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.twoshaft-start .t\
s-table :is(tr,th,td):nth-child(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:1px solid var(--t\
s-line);padding:var(--ts-grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.twoshaft-start .ts-\
gaps{padding-left:calc(2 * var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{display:block}.twosha\
ft-start .ts-question{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft .tsj-bench{display:fle\
x;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--ts-grid)}.twoshaft .tsj-bench svg{\
display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:pointer}.twoshaft .tsj-bolt:focus{outline:none}.twos\
haft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsj-bolt.tsj-started circle{stroke\
-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.twoshaft .tsj-bolt.tsj-tight text{fill:var(--ts-paper)\
}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(--ts-grid)}.twoshaft .tsj-slide input{width:180px;m\
ax-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-target)}.twoshaft .tsj-figure{min-width:8ch;font-variant\
-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-height:3em;margin-top:var(--ts-grid)}.twoshaft .tsj-ch\
eck{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsj-check input{wid\
th:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-template-columns:max-content\
 minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-width) + 12ch);margin:var(--t\
s-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block;max-width:100%;height:auto\
}.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:wrap}@media(max-width:700px\
){.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{border-collapse:collapse;font:v\
ar(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align:left;font-weight:600;paddi\
ng:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-align:middle;padding:4px 12p\
x 4px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twoshaft table.tsk-board thead th{font-w\
eight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:34ch;white-space:normal}.twoshaft table.tsk-board \
.tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft table.tsk-board select{max-w\
idth:44ch}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:600;border-bottom:2p\
x solid var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{min-width:24ch}.twos\
haft .tsk-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){.twoshaft table.tsk-board,.twoshaft \
table.tsk-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.twoshaft table.tsk-b\
oard thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft table.tsk-board tr{bord\
er-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twoshaft table.tsk-board\
 tbody td,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-width:0;padding:2px 0;te\
xt-align:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-board tbody .tsk-best \
td{border:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board\
 tbody th{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) ": ";color:var(--ts-q\
uiet)}.twoshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-board select{max-width:100%}}.twosha\
ft .ts-gate{cursor:default;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none}.t\
woshaft .ts-pulling,.twoshaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accent)}\
.twoshaft .ts-gate svg{user-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-h\
appened.ts-stopped,.twoshaft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;padd\
ing-left:calc(4 * var(--ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate+.ts-happened{min-height:1.5e\
m}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 12ch);font-weight:600}.twoshaft-rig .ts-how{width:34em;max-width:\
100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3px}.twoshaft .tsw-train svg{user-select:none}.twoshaft .tsw-count\
s{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid));margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:borde\
r-box;display:grid;grid-template-columns:104px 1fr;column-gap:var(--ts-grid);align-items:center;width:268px;padding:4px;\
border:1px solid var(--ts-line);border-radius:2px;text-align:left;font-size:var(--ts-small)}.twoshaft .tsw-count.tsw-han\
d{border:2px solid var(--ts-accent);padding:3px}.twoshaft .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-name{fo\
nt-weight:600}.twoshaft .tsw-count>.tsw-dial{grid-column:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.t\
woshaft .tsw-dial{width:104px;height:104px;touch-action:none;cursor:grab;user-select:none}.twoshaft .tsw-dial:active{cur\
sor:grabbing}.twoshaft .tsw-plate{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(-\
-ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twoshaft .\
tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-tick{stroke:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(\
--ts-ink)}.twoshaft .tsw-number{font:15px var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{mi\
n-height:1.5em;font-family:monospace;font-size:var(--ts-text);letter-spacing:1px;overflow-wrap:anywhere;max-height:4.5em\
;overflow-y:auto}.twoshaft .tsw-figure{min-height:1.5em;font-variant-numeric:tabular-nums}.twoshaft .tsw-figure:empty{mi\
n-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsh-picture{overflow-x:auto;margin:var(--ts-grid) 0}.twos\
haft .tsh-picture svg{display:block;width:100%;min-width:720px;max-width:1100px;height:auto}.twoshaft .tsh-place{cursor:\
pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaft .tsh-place:hover .tsh-hit{stroke:var(--ts-line);stroke-width:1\
}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:hover .tsh-hit{stroke:var(--ts-accent);stroke-width:2}.twoshaft .t\
sh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600}.two\
shaft .tsh-box{border-left:3px solid var(--ts-accent);padding-left:calc(1.5 * var(--ts-grid));min-height:5.5em}.twoshaft\
 .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twoshaft .tsh-verdict{margin-top:var(--ts-grid)!important}.twoshaft .\
tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-sliders{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(\
26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:960px}.twoshaft .tsl-row{display:grid;\
grid-template-columns:12em minmax(6em,1fr) 4em;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twosha\
ft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;min-height:24px}.twoshaft .tsl-row .ts-box{justify-s\
elf:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;text-align:right}.twoshaft .tsl-drawing{overflow-x:aut\
o}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:600px;max-width:820px;height:auto}.twoshaft .tsl-sum{fon\
t-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@media(max-width:480px){.twoshaft .tsl-sliders{grid-template-colu\
mns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wrap:wrap;min-width:0}.twoshaft .tsl-row input{max-width:100%}}.t\
woshaft .tsp-section{overflow-x:auto}.twoshaft .tsp-gauge{width:220px;height:200px;flex:none}.twoshaft .tsp-section svg{\
display:block;max-width:100%;height:auto;min-width:320px}.twoshaft .ts-pair[hidden]{display:none}.twoshaft .ts-cells{pos\
ition:absolute;pointer-events:none}.twoshaft .tsp-land.tsp-clear{fill:none}.twoshaft .tsp-lump{fill:none;stroke:var(--ts\
-bead);stroke-linecap:round}.twoshaft .tsp-way{fill:none;stroke:var(--ts-bad);stroke-linecap:round;stroke-linejoin:round\
}.twoshaft .tsp-out{fill:var(--ts-ink);stroke:var(--ts-paper);stroke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.twosha\
ft .tsp-clean .tsp-spot-word,.twoshaft .tsp-shut .tsp-chosen{display:none}.twoshaft .ts-legend{display:flex;flex-wrap:wr\
ap;gap:4px calc(2 * var(--ts-grid));font-size:var(--ts-small);min-height:1.6em}.twoshaft .ts-key{display:inline-flex;ali\
gn-items:center;gap:4px}.twoshaft .ts-swatch{width:25px;height:15px;border:1px solid var(--ts-line)}.twoshaft .ts-range{\
accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-clock{min-width:6em;font-weight:600}.twoshaft .ts-unit{overf\
low:auto;max-height:620px;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.t\
woshaft .ts-unit svg{display:block;max-width:none;max-height:none}.twoshaft .ts-unit [data-part]{cursor:pointer}.twoshaf\
t .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:3.2px;stroke-dash\
array:none}.twoshaft .ts-unit [data-part]:hover path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent)}.twos\
haft .ts-unit:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-unit-name{min-height:1.\
5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .ts-unit-words p{max-width:var(--ts-width)}.twoshaft .ts-prompt[hi\
dden],.twoshaft .ts-sentences[hidden]{display:none}.twoshaft .ts-told{min-height:2em;max-height:9em;overflow-y:auto}.two\
shaft .ts-build{display:grid;grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));align-it\
ems:start}.twoshaft .ts-buildlist{display:grid;gap:4px;max-height:22rem;overflow-y:auto;padding:4px}.twoshaft .ts-builds\
tep{text-align:left;padding-block:2px;min-height:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:va\
r(--ts-line)}.twoshaft .ts-buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .\
ts-buildstep[aria-current]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:10\
0%}.twoshaft .ts-hand{border:1px solid var(--ts-line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twoshaft \
.ts-hand .ts-field{border:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do\
{text-align:left;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid\
);font-size:var(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.tw\
oshaft .ts-record caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align\
:top;padding:3px 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-reco\
rd .ts-blank{min-width:12em;height:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,1fr)}.\
twoshaft .ts-buildlist,.twoshaft .ts-hand{max-height:none}}`,Ge="twoshaft-styles";function un(){let t=document.getElementById(
Ge);t?.textContent!==ze&&(t?.remove(),document.head.append(s("style",{id:Ge},ze)))}function z({model:t,el:e},{kind:n,lost:r=()=>Ft(
e),line:o=()=>{}}){un(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"ts-alert",role:"\
alert"}),l=We(e),i=()=>e.classList.contains("ts-lost"),c=[],p=dn(t,()=>{i()||(e.classList.add("ts-lost"),l.down(),r())},
m=>{i()||(m?l.down():l.up(),o(m))}),h=cn(e),g,y=(m,S)=>{t.on(m,S),c.push([m,S])};return y("msg:custom",m=>{m.type==="tro\
uble"&&!i()&&(a.textContent=m.reason)}),{alert:a,follow:y,isLost:i,send(m){i()||(t.send(m),clearTimeout(g),g=window.setTimeout(
()=>t.send({type:"rest"}),an))},show:(...m)=>e.replaceChildren(...Pt(m)),close(){l.up(),clearTimeout(g),h(),p();for(let[
m,S]of c)t.off(m,S)}}}function Ye({model:t,el:e}){let n=z({model:t,el:e},{kind:"rig",lost:()=>c.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),o=s("p",{class:"ts-cost"}),a=t.get("start"),l=null,i=h=>{l=tt("order"),n.send({type:"order",order:h,turn:l})},
c=Zt({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),u=s("button",{type:"\
button",class:"ts-button",onclick:()=>c.change([...a],"The first order stands again")},"Start again");c.tools.append(u),
n.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),n.alert,r,o,c.element);function p(){let h=t.
get("judged");l!==null&&h.turn!==l||(l=null,r.textContent=h.finding,o.textContent=h.cost,c.setOrder(h.order),c.setNotes(
h.notes))}return n.follow("change:judged",p),p(),n.close}var pn=["lit","bench","absent"],Xe=[1,1.5,2,3,4.5];function Qt({svg:t,parts:e,words:n}){let r=s("div",{class:"ts-unit",tabindex:"\
0",role:"application","aria-label":"The unit in section. Left and right arrows walk from part to part, up and down to th\
e part above or below, plus and minus zoom."});r.innerHTML=t;let o=r.querySelector("svg"),a=o.querySelector(".tsu-marks");
o.setAttribute("aria-hidden","true"),o.removeAttribute("role");let l=new Map(e.map(([f])=>[f,[]]));for(let f of it(o,"[d\
ata-part]"))l.get(String(f.dataset.part))?.push(f);let i=new Map(e.map(([f],v)=>[f,v])),c=s("p",{class:"ts-hint ts-unit-\
name",role:"status"}),u=Ct({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],...e.map(([f,v])=>[f,v])]),
p=-1,h=0,g={},y=f=>{let v=g[f];return v==="absent"?" Not there yet.":v==="bench"?" On the bench.":v==="lit"?" In hand.":
""},m=f=>`${e[f][1]}. ${e[f][2]}${y(e[f][0])}`;function S(f){for(let b of it(o,".tsu-chosen"))b.classList.remove("tsu-ch\
osen");p=f;let v=f<0?"":e[f][0];u.value=v,c.textContent=f<0?x:m(f);for(let b of l.get(v)??[])b.classList.add("tsu-chosen");
f>=0&&B(v)}function C(f){let v=(l.get(f)??[]).map(A=>A.getBBox()),b=Math.min(...v.map(A=>A.x)),$=Math.max(...v.map(A=>A.
x+A.width)),E=Math.min(...v.map(A=>A.y)),_=Math.max(...v.map(A=>A.y+A.height));return{x:(b+$)/2,y:(E+_)/2}}function B(f){
let v=C(f),b=o.getBoundingClientRect().width/o.viewBox.baseVal.width,[$,E]=[v.x*b,v.y*b],{scrollLeft:_,scrollTop:A,clientWidth:M,
clientHeight:T}=r;($<_+40||$>_+M-40)&&(r.scrollLeft=$-M/2),(E<A+40||E>A+T-40)&&(r.scrollTop=E-T/2)}function P(f){h=Math.
max(0,Math.min(Xe.length-1,h+f)),o.style.width=`${100*Xe[h]}%`,o.style.height="auto",p>=0&&B(e[p][0])}function k(f){let v=C(
e[p][0]),[b]=e.map(([$],E)=>({k:E,at:C($)})).filter(({k:$,at:E})=>$!==p&&(E.y-v.y)*f>4).sort(($,E)=>Je($.at,v)-Je(E.at,v));
b&&S(b.k)}r.addEventListener("keydown",f=>{if(ft(f))return;let v=e.length-1;if(f.key==="ArrowRight")S(p>=v?0:p+1);else if(f.
key==="ArrowLeft")S(p<=0?v:p-1);else if(f.key==="ArrowUp"||f.key==="ArrowDown")p<0?S(0):k(f.key==="ArrowUp"?-1:1);else if(f.
key==="Home")S(0);else if(f.key==="End")S(v);else if(f.key==="+"||f.key==="=")P(1);else if(f.key==="-")P(-1);else if(f.key===
"Escape")S(-1);else return;f.preventDefault()}),r.addEventListener("click",f=>{let v=xt(f,"[data-part]")?.dataset.part;S(
v===void 0?-1:i.get(v)??-1)}),r.addEventListener("pointerover",f=>{let v=xt(f,"[data-part]")?.dataset.part;if(v===void 0||
f.pointerType!=="mouse")return;let b=xt(f,"[data-solid]")?.querySelector("title")?.textContent,$=e[i.get(v)??0][1];L.textContent=
b&&b!==$?`${b} (${$})`:$}),r.addEventListener("pointerleave",()=>{L.textContent=""}),u.addEventListener("change",()=>S(i.
get(u.value)??-1));let L=s("span",{class:"ts-unit-over","aria-hidden":"true"}),x="Point at a part, tap it, or choose it \
here to read its name.";c.textContent=x;let w=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",u),Z("−",()=>P(
-1),"Smaller"),Z("+",()=>P(1),"Larger"),L),d=s("details",{class:"ts-unit-words"},s("summary",{},"What is where, in words"),
s("p",{},n));return P(0),{nodes:[w,c,r,d],show(f){g=f.looks;for(let[v,b]of l)for(let $ of b)for(let E of pn)$.classList.
toggle(`tsu-${E}`,g[v]===E);a.innerHTML=f.marks,p>=0&&(c.textContent=m(p))}}}function Je(t,e){return Math.abs(t.y-e.y)+2*
Math.abs(t.x-e.x)}function Ve(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function Ze({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=Qt(t.get("picture")),
l=s("p",{class:"ts-hint",role:"status"}),i=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-ready"}),u=s("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),p=s("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:d=>{d.key==="Enter"&&k()}}),h=s("span"),g=d=>x.send({type:"move",by:d}),y=d=>x.
send({type:"go",position:d}),m=Z("Back",()=>g(-1),"One step back"),S=Z("Next",()=>g(1),"Next step"),C=Z("Start",()=>y(0),
"Start with an empty bench"),B=Z("End",()=>y(t.get("view").count),"End of the order"),P=Z("Try it",()=>x.send({type:"tak\
e",step:u.value}),"Try it: the step chosen here"),k=()=>{let d=Number.parseInt(p.value,10);d>=0&&y(d)},L=s("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},C,m,S,B,s("span",{class:"t\
s-pair"},"place ",p,h,Z("Go",k,"Go to this place")));L.addEventListener("keydown",d=>{if(!(d.target===p||ft(d))){if(d.key===
"ArrowLeft")g(-1);else if(d.key==="ArrowRight")g(1);else if(d.key==="Home")y(0);else if(d.key==="End")y(t.get("view").count);else
return;d.preventDefault()}});let x=z({model:t,el:e},{kind:"rig"});x.show(s("p",{class:"ts-who"},"Practice. Nothing here \
is marked or saved."),x.alert,n,L,r,o,l,...a.nodes,i,s("p",{class:"ts-prompt"},"Do another step next"),c,s("div",{class:"\
ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",u,P)));function w(){let d=t.get("view");n.textContent=
d.finding,r.textContent=d.happened,o.textContent=d.next?`Next in this order: ${d.next}`:"This is the end of the order.",
l.textContent=d.build.words,a.show(d.build),i.replaceChildren(...Et(d.facts));let f=c.contains(document.activeElement);c.
replaceChildren(...d.ready.map(([$,E])=>Z(E,()=>x.send({type:"take",step:$})))),d.ready.length||c.append(s("p",{class:"t\
s-hint"},"No step is ready.")),f&&(c.querySelector("button")??S).focus(),u.replaceChildren(...ct(d.waiting)),u.disabled=
P.disabled=!d.waiting.length,p.value=String(d.position),h.textContent=` of ${d.count} `;let v=d.position===0,b=d.position===
d.count;for(let $ of[m,C])Ve($,v);for(let $ of[S,B])Ve($,b)}return x.follow("change:view",w),w(),x.close}function Rt(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=tt("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var V=(t,e,n,r,o)=>D("line",{x1:t,y1:e,x2:n,y2:r,class:o}),Q=(t,e,n,r="middle")=>D("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function Ht(){let t=D("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(D("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(V(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(Q(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(D("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(V(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*Math.
cos(o),"tsg-mark"))}let e=V(100,134,100,119,"tsg-small"),n=D("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"tsg-po\
inter"});return t.append(e,n,D("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("transform",
`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`Dial indi\
cator, one mark is 0.01 mm. ${o}`)}}}function Qe({top:t,mark:e,perFigure:n}){let r=D("svg",{viewBox:"0 0 600 92",class:"\
tsg-scale",role:"img"}),o=l=>30+l/t*540;r.append(D("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));for(let l=0;l*
e<=t+1e-9;l+=1){let i=l%n===0;r.append(V(o(l*e),22,o(l*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.append(Q(o(l*e),
84,String(Math.round(l*e))))}let a=D("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(a,Q(586,14,"new\
tons","end")),{node:r,top:t,set(l,i){a.setAttribute("transform",`translate(${o(Math.min(l,t))} 0)`),r.setAttribute("aria\
-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function ts({low:t,high:e,reach:n}){let r=D("svg",{viewBox:"0 0 720 \
92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(D("rect",{x:o(t),y:34,width:o(e)-o(
t),height:24,class:"tsg-target"}),Q((o(t)+o(e))/2,84,"target"),V(20,46,700,46,"tsg-mark"),V(360,26,360,66,"tsg-mark tsg-\
long"),Q(20,20,"end play","start"),Q(700,20,"preload","end"),Q(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let c of[
i,-i])r.append(V(o(c),42,o(c),50,"tsg-mark"));r.append(Q(o(-n),70,`${n.toFixed(2)} mm`,"start"),Q(o(n),70,`${n.toFixed(2)}\
 mm`,"end"));let a=D("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),l=D("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});return r.
append(a,l),{node:r,set(i,c,u){a.setAttribute("transform",`translate(${o(i)} 0)`),l.setAttribute("transform",`translate(${o(
c)} 0)`),r.setAttribute("aria-label",u)}}}function ut(t,{min:e,max:n,step:r,value:o,words:a,onInput:l}){let i=s("input",
{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),c=s("output",{class:"ts-slid"},a(o));return i.
addEventListener("input",()=>{let u=a(Number(i.value));c.textContent=u,i.setAttribute("aria-valuetext",u),l(Number(i.value))}),
i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,c),set(u){i.value=String(
u),c.textContent=a(u)}}}function dt(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},...e.
map(([a,l])=>s("option",{value:a,selected:a===n},l)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function es({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),l=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),c=s("u\
l",{class:"ts-sentences"}),u=Rt((w,d)=>k.send({type:"set",state:w,turn:d})),p=w=>{r={...r,...w},u.ask(r)},h=D("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),g=V(0,0,0,0,"tsg-mark tsg-long"),y=Q(0,0,""),m=96,
S=m/(n.readingsOnly?r.radius:n.radii[1]),C=D("svg",{viewBox:`0 0 ${2*m+120} ${2*m+30}`,width:2*m+120,height:2*m+30,class:"\
tsg-drum",role:"img"}),B=m+4;h.setAttribute("transform",`translate(${B} ${B})`),C.append(h,g,V(4,B,2*m+4,B,"tsg-centre"),
V(B,4,B,2*m+4,"tsg-centre"),D("circle",{cx:B,cy:B,r:10,class:"tsg-face"}),y);let P=[s("div",{class:"ts-tools"},F("Turn t\
he shaft ten times",()=>p({turns:r.turns+10})))];if(!n.readingsOnly){let w=n.kinds,d=w.map(([f,v])=>s("label",{class:"ts\
-option"},s("input",{type:"checkbox",checked:r.kinds.includes(f),onchange:b=>p({kinds:w.map(([$])=>$).filter($=>$===f?b.
target.checked:r.kinds.includes($))})}),`with ${v}`));P[0].append(F("Fit the rings anew",()=>p({turns:0}))),d.length&&P.
push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the bearings"),...d)),P.push(ut("Set\
ting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:f=>p({setting:f}),words:f=>f<0?`${(-f).toFixed(3)} mm of\
 end play`:`${f.toFixed(3)} mm of preload`}).row,ut("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:r.radius,
onInput:f=>p({radius:f}),words:f=>`${f} mm`}).row)}let k=z({model:t,el:e},{kind:"rig"});k.show(s("p",{class:"ts-who"},n.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),k.alert,
s("div",{class:"tsg-beside"},C,s("div",{class:"tsg-side"},a,l)),...P,i,c);function L(){let w=t.get("shown");u.waiting||(r=
w.state);let d=S*w.state.radius;Lt(h,{r:d}),Lt(g,{x1:B,y1:B-d,x2:2*m+120,y2:B-d}),Lt(y,{x:B,y:2*m+22}),y.textContent=`dr\
um, radius ${w.state.radius} mm`,C.setAttribute("aria-label",`A drum of ${w.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),o?.top!==w.scale.top&&(o=Qe(w.scale),a.replaceChildren(o.node),l.textContent=
`Spring scale to ${w.scale.top} N, one mark ${w.scale.mark} N.`),o?.set(w.pull,w.pullWords),i.textContent=w.finding,c.replaceChildren(
...It(w.words)),u.answered(w.turn)}let x=()=>u.free();return k.follow("change:shown",L),k.follow("msg:custom",x),L(),k.close}function Mt({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=Rt((h,g)=>l.send({type:"set",state:h,turn:g})),
l=z({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),c=n(r,h=>{o={...o,...h},a.ask(o)},o),u=r.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";l.show(s("p",{class:"\
ts-who"},u),l.alert,s("div",{class:"tsg-wide"},c.picture),...c.controls,i);function p(){let h=t.get("shown");a.waiting||
(o=h.state),c.set(h,o),i.textContent=h.finding,a.answered(h.turn)}return l.follow("change:shown",p),l.follow("msg:custom",
a.free),p(),l.close}var $t=(...t)=>s("div",{class:"ts-tools"},...t);var fn={x:44,y:84,perMm:34};function hn(t){let e=D("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=fn,a=D("g",{}),l=D("g",{});e.append(D("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),D("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,l,Q(12,14,"main scale, mm","start"),Q(12,176,`vernier, ${t.
lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let c=n+i*t.space*o;l.append(
V(c,r,c,r+(i%2?20:30),"tsi-fine")),i%2===0&&l.append(Q(c,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let c=Math.
max(0,Math.ceil(i.mm-1));c<=t.top+25;c+=1){let u=n+(c-i.mm)*o;u<4||u>756||(a.append(V(u,r,u,r-(c%10===0?34:c%5===0?28:20),
"tsi-fine")),c%5===0&&a.append(Q(u,r-40,String(c))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function ss(t){
return Mt(t,(e,n,r)=>{let o=hn(e),a=ut("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:c=>n(
{rod:c})}),l=dt("Foot",e.places,r.place,c=>n({place:c,rod:0})),i=dt("Look",e.eyes,r.eye,c=>n({eye:c}));return{picture:o.
node,controls:[$t(l.row,i.row),$t(F("Push the rod down until it rests",()=>n({rod:e.top})),F("Lift the rod",()=>n({rod:0}))),
a.row],set(c,u){o.set(c),l.box.value=u.place,i.box.value=u.eye,a.box.value=u.rod}}})}function ns({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let l=s("div",{class:"tsj-bars"}),i=it(a,"[data-bolt]"),c=tt("tor\
que"),u=s("input",{id:c,type:"range",min:10,max:100,step:5,oninput:()=>g()});u.value="100";let p=s("output",{class:"tsj-\
figure",for:c}),h=()=>u.value==="100"?n.torque:Number((Math.round(n.torque*Number(u.value)/100/n.step)*n.step).toFixed(3));
function g(){p.textContent=`${h()} N·m`,u.setAttribute("aria-valuetext",`${h()} newton metres, ${u.value} percent of th\
e torque`)}let y=d=>k.send({type:"pull",bolt:d,torque:h()}),m=F("Take back",()=>k.send({type:"undo"})),S=F("Wait until t\
he film has run out",()=>k.send({type:"wait"})),C=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>k.send({type:"set",film:Number(C.value)})},...n.films.map(d=>s("option",{value:d},d?`${d} µm thick`:"none"))),
B=s("input",{type:"checkbox",onchange:()=>k.send({type:"set",scattered:B.checked})});a.addEventListener("click",d=>{let f=xt(
d,"[data-bolt]");f&&(P(f),y(Number(f.dataset.bolt)))});let P=d=>{for(let f of i)f.setAttribute("tabindex",f===d?"0":"-1");
d.focus({preventScroll:!0})};a.addEventListener("keydown",d=>{let f=xt(d,"[data-bolt]");if(!f||d.ctrlKey||d.metaKey||d.altKey)
return;let v=Number(f.dataset.bolt),b={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[d.key];if(b)P(i[(v+b+i.length)%
i.length]);else if(d.key==="Home")P(i[0]);else if(d.key==="End")P(i[i.length-1]);else if(d.key==="Enter"||d.key===" ")d.
repeat||y(v);else return;d.preventDefault()});let k=z({model:t,el:e},{kind:"rig"}),L=s("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},F("Start all by hand",()=>k.send({type:"start"})),...n.rounds.map(([d,f])=>F(`One round ${f}`,
()=>k.send({type:"round",pattern:d,torque:h()}))),m,F("Start again",()=>k.send({type:"again"}))),x=s("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:c},"Wrench set to"),u,p));n.films.length&&
x.append(s("label",{class:"ts-pair"},"Wet sealant",C),S,s("label",{class:"tsj-check"},B,"friction scatters from bolt to \
bolt")),k.show(s("p",{class:"ts-who"},n.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),k.alert,r,x,L,o,s("div",{class:"tsj-bench"},a,l),s("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function w(){let d=t.get("view");r.textContent=d.finding,o.textContent=d.happened,l.innerHTML=
d.bars;for(let[f,v]of i.entries()){let b=d.tight[f]?`${d.clamps[f]} kN`:d.started[f]?"started by hand":"not started";v.setAttribute(
"aria-label",`Bolt ${f+1} of ${n.count}, ${b}`),v.classList.toggle("tsj-tight",d.tight[f]),v.classList.toggle("tsj-start\
ed",d.started[f])}m.disabled=!d.pulls,S.disabled=!d.standing,C.value=String(d.film),B.checked=d.scattered}return k.follow(
"change:view",w),g(),w(),k.close}var os="tsk-number";function Tt(t,e,...n){return s("td",{class:e?os:null,"data-label":t||null,role:"cell"},...n)}function te(t,e,n){
let r=e.map(([l,i])=>s("th",{scope:"col",role:"columnheader",class:i?os:null},l)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function rs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),l=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),c=new Map;for(let[g,
y,m,S]of n.checks){let C=s("select",{class:"ts-box","aria-label":`What it showed: ${y}`,onchange:()=>p.send({type:"obser\
ve",check:g,shown:C.value})},s("option",{value:""},"Not made"),...ct(S)),B=Tt("would tell, bit",!0),P=Tt("bit a minute",
!0),k=s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},y),Tt("min",!0,`${m}`),Tt("it showed",!1,C),B,P);c.set(g,
{box:C,tells:B,rate:P,row:k}),i.append(k)}let u=s("button",{class:"ts-button",type:"button",onclick:()=>p.send({type:"cl\
ear"})},"Take all observations back"),p=z({model:t,el:e},{kind:"rig"});p.show(s("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),p.alert,r,a,l,te("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),o,u);function h(){let g=t.get("view");r.textContent=g.finding,
o.textContent=g.spent,l.textContent=g.more,a.replaceChildren(...It(g.left.map(([S,C])=>`${S} (${C})`)));let y=g.ranked,m=new Map(
y.map(([S,C,B],P)=>[S,{bits:C,rate:B,rank:P}]));for(let[S,{box:C,tells:B,rate:P,row:k}]of c){let L=g.observed[S],x=m.get(
S);C.value=L??"",B.textContent=x?x.bits:L!==void 0?"made":"nothing",P.textContent=x?x.rate+(x.rank===0?" ◀ best next":
""):"–",k.classList.toggle("tsk-best",x?.rank===0)}}return p.follow("change:view",h),h(),p.close}function as({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"\
The lever. Arrow keys left and right slide the selector shaft, up and down turn it."}),a=s("select",{class:"ts-box ts-ho\
w","aria-label":"How it is put together"},...ct(t.get("builds"))),l=Z("Start again",()=>S({type:"reset"})),i=s("div",{class:"\
ts-tools ts-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([d,f])=>Z(f,()=>S({type:"move",
code:d})))),c=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),u=s("p",{class:"ts-hint"},"Nothin\
g tried yet. Use the moves above; each is written down here."),p=s("p",{class:"ts-proof",role:"status"}),h=Z("What does \
a full hand test find?",()=>{h.disabled=!0,p.textContent="testing",S({type:"prove"})}),g=z({model:t,el:e},{kind:"rig"});
g.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),g.alert,s("div",{class:"ts-tools"},s("span",
{class:"ts-pair"},"Put together: ",a),l),n,o,r,s("p",{class:"ts-hint"},"Drag the blue finger, or click the picture and u\
se the arrow keys: left and right slide, up and down turn. Or use the moves in words:"),i,s("p",{class:"ts-prompt"},"Tri\
ed by hand"),u,c,s("div",{class:"ts-tools"},h),p);let y=0,m="";function S(d){y+=1,g.send({...d,turn:y})}function C(){let d=t.
get("view");if(m!==t.get("figure")){m=t.get("figure"),o.innerHTML=m;let f=Ot(o,"svg");f.removeAttribute("role"),f.setAttribute(
"aria-hidden","true")}for(let f of it(o,"[data-body]")){let[v,b]=d.moved[String(f.dataset.rides??f.dataset.body)]??[0,0];
f.setAttribute("transform",`translate(${v.toFixed(2)} ${b.toFixed(2)})`)}for(let f of it(o,"[data-gear]"))f.classList.toggle(
"tsg-in",d.gears.includes(f.dataset.gear));o.dataset.turn=String(d.turn),n.textContent=`${d.gears.length>1?"■ ":d.gears.
length?"● ":"○ "}${d.title}.`,r.textContent=d.happened,r.classList.toggle("ts-stopped",/topped by/.test(d.happened)),
(c.childElementCount!==d.log.length||c.lastElementChild?.textContent!==d.log.at(-1))&&(c.replaceChildren(...d.log.map(f=>s(
"li",{class:/topped by/.test(f)?"ts-stopped":""},f))),c.scrollTop=c.scrollHeight),u.hidden=d.log.length>0,a.value=d.build,
p.textContent=d.proof,h.disabled=!1,k=!1,w()}o.addEventListener("keydown",d=>{if(ft(d))return;let f={ArrowLeft:[-1,0],ArrowRight:[
1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[d.key];f&&(d.preventDefault(),S({type:"nudge",travel:f[0],turned:f[1]}))}),a.addEventListener(
"change",()=>S({type:"build",build:a.value}));let B=null,P=null,k=!1;function L(d){let f=Ot(o,"svg"),v=f.getBoundingClientRect(),
b=f.viewBox.baseVal.width/v.width;return[(d.clientX-v.left)*b,(d.clientY-v.top)*b]}o.addEventListener("pointerdown",d=>{
let f=xt(d,".tsg-panel");if(!f||d.button!==0)return;let v=t.get("view").hand,[b,$]=L(d),E=Number(f.dataset.scale);B={x:b-
v[0]*E,y:$+v[1]*E,scale:E},o.setPointerCapture(d.pointerId),o.focus({preventScroll:!0}),o.classList.add("ts-pulling"),d.
preventDefault()}),o.addEventListener("pointermove",d=>{if(!B)return;let[f,v]=L(d);P={travel_mm:(f-B.x)/B.scale,turn_mm:(B.
y-v)/B.scale},w()});let x=()=>{B=null,o.classList.remove("ts-pulling")};o.addEventListener("pointerup",x),o.addEventListener(
"pointercancel",x);function w(){if(k||!P)return;k=!0;let d=P;P=null,S({type:"pull",...d})}return g.follow("msg:custom",d=>{
d.type==="trouble"&&(k=!1)}),g.follow("change:view",C),C(),g.close}function is({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding",role:"status"}),a=s("p",{class:"\
ts-happened tsw-happened",role:"status"}),l=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,u=n.gears.map(
([v,b])=>s("button",{type:"button",class:"ts-button","data-gear":v,"aria-pressed":"false",onclick:()=>w({type:"gear",gear:v})},
b)),p=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:v=>w({type:"hold",shaft:v.target.value})},...ct(
n.holds)),h=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:v=>{i=v.target.value,f()}},...ct(r.dials.
map(v=>[v.shaft,v.name]))),g=v=>w({type:"turn",shaft:i,turns:v}),y=`1/${n.marks}`,m=s("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},Z("↺ 1 turn",()=>g(-1),"One turn anticlockwise"),Z(`↺ ${y}`,()=>g(-n.step),`${y} t\
urn anticlockwise`),Z("↺ a touch",()=>g(-n.fine),"A touch anticlockwise"),Z("a touch ↻",()=>g(n.fine),"A touch clock\
wise"),Z(`${y} ↻`,()=>g(n.step),`${y} turn clockwise`),Z("1 turn ↻",()=>g(1),"One turn clockwise"),Z("Marks to zero",
()=>w({type:"reset"}))),S=new Map;for(let v of r.dials){let b=D("g",{},D("circle",{class:"tsw-end",r:34}),D("line",{class:"\
tsw-painted",x1:0,x2:0,y1:0,y2:-34}),D("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),$=[];for(let O=0;O<n.marks;O+=1)$.push(
D("line",{class:"tsw-tick",y1:-40,y2:O?-47:-52,transform:`rotate(${O*360/n.marks})`})),O&&$.push(D("text",{class:"tsw-nu\
mber",x:57*Math.sin(O*2*Math.PI/n.marks),y:-57*Math.cos(O*2*Math.PI/n.marks)+4},String(O)));let E=D("svg",{viewBox:"-70 \
-70 140 140",class:"tsw-dial","data-shaft":v.shaft,"aria-hidden":"true"},D("circle",{class:"tsw-plate",r:40}),...$,D("pa\
th",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),b),_=s("div",{class:"tsw-count",tabindex:"0",role:"application","ari\
a-roledescription":"shaft","data-shaft":v.shaft},s("div",{class:"tsw-name"}),E,s("div",{class:"tsw-strokes","aria-hidden":"\
true"}),s("div",{class:"tsw-figure"}));S.set(v.shaft,{box:_,svg:E,shaftEnd:b}),_.addEventListener("focus",()=>{i!==v.shaft&&
(i=v.shaft,f())}),_.addEventListener("keydown",O=>{if(ft(O))return;let R={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1,
PageDown:1,PageUp:-1}[O.key];R&&(O.preventDefault(),i=v.shaft,g(R*(O.key.startsWith("Page")?1:O.shiftKey?n.fine:n.step)))});
let A=null,M=O=>{let R=E.getBoundingClientRect();return Math.atan2(O.clientX-R.left-R.width/2,R.top+R.height/2-O.clientY)/
(2*Math.PI)};E.addEventListener("pointerdown",O=>{O.button===0&&(A=M(O),E.setPointerCapture(O.pointerId),_.focus({preventScroll:!0}),
O.preventDefault())}),E.addEventListener("pointermove",O=>{if(A===null)return;let R=M(O),W=R-A;W-=Math.round(W),A=R,C+=W,
P()});let T=()=>{A=null};E.addEventListener("pointerup",T),E.addEventListener("pointercancel",T)}let C=0,B=!1;function P(){
if(B||Math.abs(C)<.002)return;B=!0;let v=C;C=0,g(v)}let k=z({model:t,el:e},{kind:"rig"});k.show(...n.closed?[]:[s("p",{class:"\
ts-who"},"Practice. Nothing here is marked or saved.")],k.alert,o,...n.closed?[]:[s("div",{class:"ts-tools",role:"group",
"aria-label":"Gears engaged"},s("span",{},"Engage: "),...u),l],s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Ho\
ld still: ",p),s("span",{class:"ts-pair"},"Turn by hand: ",h)),s("div",{class:"tsw-counts"},...[...S.values()].map(v=>v.
box)),m,a,s("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a dial round, or go to it and use the a\
rrow keys (${y} turn), Shift with an arrow key (a touch) or Page Up and Page Down (one turn). Each stroke is a whole tur\
n.`));let L=0,x=null;function w(v){L+=1,k.send({...v,turn:L})}let d=v=>{let b=[];for(let $=v;$>0;$-=5)b.push($>=5?"||||/":
"|".repeat($));return b.join(" ")};function f(){let v=t.get("view");x!==t.get("figure")&&(x=String(t.get("figure")),l.innerHTML=
x);for(let b of it(l,"[data-wheel]")){let[$,E]=v.wheels[String(b.dataset.wheel)]??[0,!0];b.setAttribute("transform",`tra\
nslate(0 ${($*Number(b.dataset.reach)).toFixed(1)})`),b.classList.toggle("tsw-behind",!E)}for(let b of u)b.setAttribute(
"aria-pressed",String(v.engaged.includes(b.dataset.gear)));p.value=v.held,h.value=i;for(let b of v.dials){let{box:$,shaftEnd:E}=S.
get(b.shaft),_=b.way>0?"↻":b.way<0?"↺":"";E.setAttribute("transform",`rotate(${b.angle})`);let[A,,M,T]=$.children;A.
textContent=`${b.name}${b.held?", held":b.shaft===i?", your hand":""}`,M.textContent=b.strokes||_?`${_} ${d(b.strokes)}`:
"no stroke",T.textContent=b.figure,$.classList.toggle("tsw-hand",b.shaft===i),$.classList.toggle("tsw-held",b.held),$.setAttribute(
"aria-label",`${b.name}${b.held?", held":""}. ${b.words}`)}o.textContent=v.finding,a.textContent=v.happened,e.dataset.turn=
String(v.turn),B=!1,P()}return k.follow("change:view",f),f(),k.close}function ls({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),l=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,l),c=[],
u=[],p=null,h=t.get("plan").lookingOnly,g=(w,d)=>s("button",{type:"button",class:"ts-button","data-verdict":w,"aria-pres\
sed":"false",onclick:()=>C.send({type:"judge",place:p,verdict:w})},d),y=h?[]:[g("stop","Stop here"),g("well","Fine as it\
 is")],m=s("button",{type:"button",class:"ts-button",onclick:()=>C.send({type:"next"})},"Another day"),S=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...y);t.get("plan").more&&S.append(m);let C=z({model:t,
el:e},{kind:"rig"});C.show(s("p",{class:"ts-who"},h?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),C.alert,n,s("p",{class:"ts-keys"},h?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),r,i),h||i.after(S);function B(w,d){let f=w!==p;p=w;for(let[v,b]of u.
entries()){let $=c[v][0]===w;b.setAttribute("tabindex",$?"0":"-1"),b.setAttribute("aria-pressed",String($)),b.classList.
toggle("tsh-chosen",$),$&&d&&(b.focus({preventScroll:!0}),P(b))}f&&C.send({type:"choose",place:w})}function P(w){let d=Ot(
w,".tsh-hit").getBoundingClientRect(),f=r.getBoundingClientRect();(d.left<f.left||d.right>f.right)&&(r.scrollLeft+=d.left-
f.left-(f.width-d.width)/2),(d.bottom<0||d.bottom>innerHeight||d.top<0)&&w.scrollIntoView({block:"nearest"})}function k(){
let w=t.get("plan");c=w.places,r.innerHTML=w.drawing,Ot(r,"svg").setAttribute("role","group"),u=c.map(([d])=>Ot(r,`[data\
-place="${d}"]`)),u.forEach((d,f)=>{d.setAttribute("role","button"),d.setAttribute("aria-label",`${f+1} ${c[f][1]}`),d.addEventListener(
"click",()=>B(c[f][0],!0))}),p=String(t.get("view").chosen),B(p,!1)}r.addEventListener("keydown",w=>{if(ft(w))return;let d=c.
findIndex(([b])=>b===p),f=Math.min(6,c.length),v=d;if(w.key==="ArrowRight")v=d+1;else if(w.key==="ArrowLeft")v=d-1;else if(w.
key==="ArrowDown")v=d+f;else if(w.key==="ArrowUp")v=d-f;else if(w.key==="Home")v=0;else if(w.key==="End")v=c.length-1;else if(w.
key!=="Enter"&&w.key!==" ")return;w.preventDefault(),v>=0&&v<c.length&&B(c[v][0],!0)});function L(){let w=t.get("view");
n.textContent=w.finding;let d=c.findIndex(([b])=>b===w.chosen);o.textContent=`${d+1}  ${c[d][1]}`,a.textContent=w.seen;let{
verdict:f,...v}=w.told;if(l.replaceChildren(),f){let b=w.judged[w.chosen],$=b==="stop"==(f==="Stop here."),E=b==="stop"?
"Stop here":"Fine as it is";l.append(s("p",{class:"tsh-verdict"},$?`✓ Yes: ${f}`:`✗ You said “${E}”. The course sa\
ys: ${f}`),s("dl",{class:"ts-facts"},...Object.entries(v).flatMap(([_,A])=>[s("dt",{},_),s("dd",{},A)])))}for(let b of y)
b.setAttribute("aria-pressed",String(w.judged[w.chosen]===b.dataset.verdict));for(let[b,$]of u.entries()){let E=w.judged[c[b][0]];
$.setAttribute("aria-label",`${b+1} ${c[b][1]}${E?`, judged: ${E==="stop"?"stop here":"fine as it is"}`:""}`);let _=$.querySelector(
".tsh-tag");if(!E){_?.remove();continue}_||(_=D("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),$.
append(_)),_.textContent=E==="stop"?"■ stop":"○ well"}e.dataset.turn=w.chosen}let x=()=>{k(),L()};return C.follow("c\
hange:plan",x),C.follow("change:view",L),x(),C.close}function cs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),l=new Map,c=n.sliders.map(([g,y,m,S,C,B])=>{let P=tt(g.replace("_","-")),k=s("output",{class:"\
tsl-figure",for:P}),L=s("input",{id:P,type:"range",min:S,max:C,step:B,oninput:()=>{x(),p.send({type:"set",name:g,value:Number(
L.value)})}}),x=()=>{k.textContent=`${L.value} ${m}`,L.setAttribute("aria-valuetext",`${L.value} ${m==="°"?"degrees":m}`)};
return l.set(g,{slider:L,say:x}),s("div",{class:"tsl-row"},s("label",{for:P},y),L,k)}),u=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>p.send({type:"set",name:"grip",value:u.value})},...ct(n.grips)),p=z({model:t,el:e},{kind:"r\
ig"});p.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),p.alert,r,s("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...c,s("div",{class:"tsl-row"},s("span",{},"Grip"),u)),a,o,s("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function h(){let g=t.get("vi\
ew");r.textContent=g.finding,o.textContent=g.sum,a.innerHTML=g.drawing;for(let[y,{slider:m,say:S}]of l)document.activeElement!==
m&&(m.value=g.sizes[y]),S();u.value=g.sizes.grip}return p.follow("change:view",h),h(),p.close}var ee={x:90,y:120,perMm:20,radius:82,bevel:30};function gn(t){let e=D("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=ee;e.append(D("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),V(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let h=0;h*t.pitch<=t.top;h+=1){let g=n+h*t.pitch*o;if(h%2){e.append(V(g,
r,g,r+18,"tsi-fine"));continue}let y=h/2;e.append(V(g,r,g,r-(y%5?18:27),y%5?"tsi-fine":"tsi-bold")),y%5===0&&e.append(Q(
g,r-33,String(y)))}let l=D("g",{});e.append(l,Q(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway. Th\
imble: 50 lines a turn.","start"));let i=D("path",{d:`M0 ${r-a+14}L${ee.bevel} ${r-a}L${ee.bevel} ${r+a}L0 ${r+a-14}Z`,class:"\
tsi-body"}),c=D("rect",{x:ee.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),u=D("rect",{x:0,y:r-a,width:760,height:2*
a,fill:"var(--ts-paper)"}),p=D("g",{});return l.append(u,i,c,p),{node:e,set(h){l.setAttribute("transform",`translate(${n+
h.mm*o} 0)`),p.replaceChildren();for(let g=0;g<t.lines;g+=1){let y=g-h.line;y-=t.lines*Math.round(y/t.lines);let m=y/t.lines*
2*Math.PI;if(Math.abs(m)>1.15)continue;let S=r-(a-8)*Math.sin(m),C=g%5===0;p.append(V(0,S,C?26:16,S,C?"tsi-bold":"tsi-fi\
ne")),C&&p.append(Q(36,S+5,String(g),"start"))}e.setAttribute("aria-label",`${t.name}. ${h.words}`)}}}function ds(t){return Mt(
t,(e,n,r)=>{let o=gn(e),a=ut("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, out to the\
 right",onInput:c=>n({open:c})}),l=dt("Between the faces",e.between,r.between,c=>n({between:c,open:e.top})),i=e.hands.length?
dt("Close it",e.hands,r.hand,c=>n({hand:c})):null;return{picture:o.node,controls:[$t(l.row,i?.row),$t(F("Close until it \
rests",()=>n({open:-1})),F("Open",()=>n({open:e.top}))),a.row],set(c,u){o.set(c),a.box.value=String(Math.max(0,c.mm)),l.
box.value=u.between}}})}function us({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[c,u,p]of n.checks){let h=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${u}`,onclick:()=>{
h.getAttribute("aria-disabled")!=="true"&&l.send({type:"make",check:c})}},"Make"),g=Tt("it shows",!1);g.classList.add("t\
sk-shown"),a.set(c,{button:h,shown:g}),o.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},u),Tt("min",!0,
`${p}`),Tt("",!1,h),g))}let l=z({model:t,el:e},{kind:"rig"});l.show(s("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),l.alert,r,te("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));
function i(){let c=t.get("view");r.textContent=c.finding;for(let[u,{button:p,shown:h}]of a){let g=c.shown[u];p.setAttribute(
"aria-disabled",g?"true":"false"),p.classList.toggle("ts-off",!!g),p.textContent=g?"Made":"Make",h.textContent=g?`${g[0]?
"✓":"✗"} ${g[1]}`:"",h.classList.toggle("tsk-failed",!!g&&!g[0])}}return l.follow("change:view",i),i(),l.close}function mn(){let t=D("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=D("g"),n=D("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(D("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,D("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=l=>(-135+270*l)*Math.PI/180,o="";function a([l,i,c]){e.replaceChildren();for(let u=0;u*i<=l+
1e-9;u+=1){let p=r(u*i/l),h=u%c===0,g=y=>[110+y*Math.sin(p),104-y*Math.cos(p)];if(e.append(V(...g(h?72:79),...g(88),h?"t\
sg-mark tsg-long":"tsg-mark")),h&&u%(2*c)===0){let[y,m]=g(58);e.append(Q(y,m+4.5,String(Number((u*i).toFixed(2)))))}}e.append(
Q(110,170,"kN"))}return{node:t,set(l,i,c){String(l)!==o&&(o=String(l),a(l));let u=Math.min(i/l[0],1.03);n.setAttribute("\
transform",`translate(110 104) rotate(${-135+270*u})`),t.setAttribute("aria-label",c)}}}function ps(t){return Mt(t,(e,n,r)=>{
let o=mn(),a=s("div",{class:"tsp-section"}),l="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),c=ut("Push",{min:0,max:100,step:1,value:r.travel,onInput:g=>n(
{travel:g}),words:g=>g>=100?"at the shoulder":`${g} % of the way`}),u=[c.row],p=null;if(!e.readingsOnly){let g=dt("Part",
e.places,r.place,C=>n({place:C,travel:0}));p=dt("Driver bears on",e.drivers,r.driver,C=>n({driver:C,travel:0}));let y=dt(
"Seat",e.seats,r.seat,C=>n({seat:C})),m=ut("Pair",{min:0,max:100,step:1,value:r.grip,onInput:C=>n({grip:C}),words:C=>C===
0?"loosest of the fit":C===100?"tightest of the fit":`${C} % from loosest to tightest`}),S=ut("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:C=>n({warmth:C}),words:C=>`${C} °C`});u.unshift($t(g.row,p.row,y.row),
m.row,S.row)}let h=s("dl",{class:"ts-facts"});return e.readingsOnly||u.push(h),{picture:i,controls:u,set(g,y){g.section!==
l&&(l=g.section,a.innerHTML=l),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*y.travel/
100} 0)`),o.set(g.gauge,g.force,g.words),Number(c.box.value)!==y.travel&&document.activeElement!==c.box&&c.set(y.travel),
p&&(p.row.hidden=!g.drives),g.facts&&h.replaceChildren(...Et(g.facts))}}})}function fs({model:t,el:e}){let n=t.get("steps"),r=t.get("reach"),o=new Map(n.map(([x],w)=>[x,w])),a=s("div",{class:"ts-\
scroll"}),l=s("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=s(
"p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts-sentences"}),u=s("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...ct(n.map(([x,w],d)=>[x,`${d+1}  ${w}`]))),p=s("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),h=z({model:t,el:e},{kind:"rig",lost(){u.disabled=!0}});h.show(h.alert,s("p",{class:"ts-f\
inding"},t.get("finding")),s("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",u),
p),a,s("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,l,c),a.innerHTML=t.get("figure");let g=Ot(a,"svg");g.setAttribute("role","group");let y=it(g,".tsf-step").sort(
(x,w)=>Number(x.dataset.step)-Number(w.dataset.step)),m=it(g,".tsf-rule").map(x=>({node:x,ends:String(x.dataset.rule).split(
"-").map(Number)}));y.forEach((x,w)=>{x.setAttribute("role","button"),x.setAttribute("aria-label",`${w+1} ${n[w][1]}, ${r[w].
before.length} before it, ${r[w].after.length} after it`),x.addEventListener("click",()=>B(w,!0))});let S=Number(o.get(t.
get("near").step));function C(x){let w=new Set(r[S].before),d=new Set(r[S].after);y.forEach(($,E)=>{$.setAttribute("tabi\
ndex",E===S?"0":"-1"),$.setAttribute("aria-pressed",String(E===S)),$.classList.toggle("ts-chosen-step",E===S),$.classList.
toggle("ts-before-it",w.has(E)),$.classList.toggle("ts-after-it",d.has(E)),$.classList.toggle("ts-either",E!==S&&!w.has(
E)&&!d.has(E))});let f=$=>$===S||w.has($)||d.has($);for(let{node:$,ends:E}of m){let _=w.has(E[0])&&(E[1]===S||w.has(E[1]))||
d.has(E[1])&&(E[0]===S||d.has(E[0]));$.classList.toggle("ts-either",!(_&&E.every(f)))}u.value=n[S][0],x&&y[S].focus({preventScroll:!0});
let v=y[S].getBoundingClientRect(),b=a.getBoundingClientRect();(v.left<b.left+16||v.right>b.right-16)&&(a.scrollLeft+=v.
left-b.left-b.width/2)}function B(x,w){S=x,C(w),h.send({type:"choose",step:n[x][0]})}let P=x=>{let d=Ot(y[x],"rect").getBBox();
return{x:d.x,y:d.y}};function k(x){let w=P(S),d=b=>b.sort(($,E)=>Math.abs(P($).y-w.y)-Math.abs(P(E).y-w.y))[0];if(x==="A\
rrowRight")return d(m.filter(({ends:b})=>b[0]===S).map(({ends:b})=>b[1]));if(x==="ArrowLeft")return d(m.filter(({ends:b})=>b[1]===
S).map(({ends:b})=>b[0]));let f=y.map((b,$)=>$).filter(b=>Math.abs(P(b).x-w.x)<2&&b!==S),v=x==="ArrowUp"?-1:1;return d(f.
filter(b=>(P(b).y-w.y)*v>0))}g.addEventListener("keydown",x=>{if(!ft(x))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes(x.key)){let w=k(x.key);w!==void 0&&B(w,!0),x.preventDefault()}else(x.key==="Enter"||x.key===" ")&&x.preventDefault()}),
u.addEventListener("change",()=>B(Number(o.get(u.value)),!1)),p.addEventListener("click",()=>{let x=a.classList.toggle("\
ts-fit");p.setAttribute("aria-pressed",String(x)),C(!1)});function L(){let x=t.get("near");i.textContent=x.words,l.innerHTML=
x.figure,c.replaceChildren(...It(x.sentences))}return h.follow("change:near",L),L(),requestAnimationFrame(()=>C(!1)),h.close}function wn(){let t=D("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=D("g",{}),n=D("g",{});return e.append(
D("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),V(150,164,150,98,"tsi-bold"),D("circle",{cx:150,cy:98,r:5,class:"tsg-h\
ub"})),n.append(V(150,86,150,40,"tsi-plunger"),D("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,V(50,164,250,
164,"tsg-centre"),V(150,250,150,80,"tsg-centre"),n,Q(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute("t\
ransform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function hs(t){
return Mt(t,(e,n,r)=>{let o=Ht(),a=wn(),l=ut("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:u=>`turn\
ed by ${u}°`,onInput:u=>n({angle:u})}),i=dt("Plunger",e.pressed,r.pressed,u=>n({pressed:u})),c=dt("Stand",e.tilts,r.tilt,
u=>n({tilt:u}));return{picture:s("div",{class:"tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[$t(i.row,c.row),l.row],set(u,p){o.set(u.mm,u.words),a.set(u.state.angle,Number(u.
state.tilt),`Shaft end on, turned by ${u.state.angle}°; the plunger stands ${u.state.tilt}° off square. Not to scale.`),
l.set(p.angle)}}})}var ms=(t,e)=>(t+e)%7<2,ws=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,ne=()=>!1,se=t=>(e,n)=>n%t===0,bn={"":ne,dots:(t,e)=>t%6<2&&e%
6<2,rising:ms,cross:ws,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":ne,"lines-2":se(14),"lines-3":se(8),"lines-4":se(5),"lines-5":se(
3)};function vn(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var gs=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function bs(t,[e,n],r,o,a){let l=n*4,i=new Uint32Array(l*e*4),c=new Map(r.map(([h,,g,y])=>{let m=g?gs(vn(g),200):
0;return[h,{ground:m,hatch:bn[y]??ne}]})),u={ground:0,hatch:ne},p=gs(o,190);for(let h=0;h<e;h+=1){let g=(e-1-h)*4;for(let y=0;y<
n;y+=1){let m=t[h*n+y];if(!m)continue;let{ground:S,hatch:C}=c.get(m&15)??u,B=a&&(m&16)!==0,P=a&&(m&32)!==0;for(let k=g;k<
g+4;k+=1)for(let L=y*4;L<(y+1)*4;L+=1){let x=C(L,k)||B&&ms(L,k)||P&&ws(L,k);i[k*l+L]=x?p:S}}}return i}var kn=600;function ys(t,e,n,r,o,a){let[l,i]=n;t.width=i*4,t.height=l*4;let c=new Uint8ClampedArray(bs(e,n,r,o,a).buffer),
u=new ImageData(c,t.width,t.height);t.getContext("2d")?.putImageData(u,0,0)}function xn(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return ys(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function ks({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),l=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),c=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),u=z({model:t,el:e},{kind:"rig",lost(){g.setDisabled(!0),Ft(e)}}),p=null,h=M=>{p=tt("turn"),u.send({...M,turn:p})},
g=Jt({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(M){g.
drawing.strokes(M),h({type:"lay",entries:M})},onRemove:M=>h({type:"remove",at:M}),onClear:()=>h({type:"clear"})}),y=F("C\
lose the face",()=>h({type:"shut",closed:!t.get("view").closed})),m=s("input",{type:"range",id:tt("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),S=s("output",{for:m.id}),C=Ct({id:tt("slide"),onchange:()=>h({type:"slide",by:C.value})},
t.get("view").slides),B=null;m.addEventListener("input",()=>{S.textContent=`${m.value} µm`;let M={type:"flat",um:Number(
m.value)};p===null?h(M):B=M});let{box:P,unit:k}=g.drawing;g.drawing.land.classList.add("tsp-clear"),g.drawing.frame.prepend(
c);let L=(...M)=>s("span",{class:"ts-pair"},...M);u.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),u.alert,o,g.drawing.frame,i,s("div",{class:"ts-tools"},y,L(s("label",{for:C.id},"the other face is"),C),L(a,F("1 m\
inute passes",()=>h({type:"time",by:1})),F("5 minutes pass",()=>h({type:"time",by:5}))),L(s("label",{for:m.id},"faces ou\
t of flat by"),m,S)),g.tools,l,s("details",{class:"ts-keys"},s("summary",{},"Passes laid"),g.empty,g.list));function x(){
let M=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return M?M.slice(0,3).map(Number):[0,0,0]}let w="",d="";function f(){
let M=t.get("view"),T=r[M.closed?"closed":"film"],O=t.get("grid"),R=O instanceof DataView?new Uint8Array(O.buffer,O.byteOffset,
O.byteLength):new Uint8Array(O);ys(c,R,M.shape,T,x(),!M.closed);let[W,G]=M.shape,[wt,et]=[M.corner[0]-M.pitch/2,M.corner[1]-
M.pitch/2],H=(X,st)=>`${(100*X/st).toFixed(3)}%`;c.style.left=H(wt-P.left,P.width),c.style.width=H(G*M.pitch,P.width),c.
style.top=H(P.high-et-W*M.pitch,P.height),c.style.height=H(W*M.pitch,P.height);let q=new Set(R.map(X=>M.closed?X:X&15)),
U=T.filter(([X])=>q.has(X)),rt=`${U.map(([,X])=>X)} ${x()}`;rt!==w&&(w=rt,i.replaceChildren(...U.map(X=>xn(X,x()))))}let v=D(
"g");g.drawing.over.append(v);let b=([M,T])=>[M-P.left,P.high-T];function $([M,T]){let O=T.map(R=>{let[W,G]=b(R);return`\
M${W.toFixed(1)} ${G.toFixed(1)}h0.01`});return D("path",{d:O.join(""),class:"tsp-lump","stroke-width":2*M})}function E(M){
let[T,O]=b(M[M.length-1]),R=`M${T-1.3*k} ${O-k}h${2.6*k}l${-1.3*k} ${2.2*k}Z`;return[D("path",{d:g.drawing.path(M),class:"\
tsp-way","stroke-width":k}),D("path",{d:R,class:"tsp-out"})]}function _(){let M=t.get("view");if(p!==null&&M.turn!==p)return;
p=null;let T=JSON.stringify([M.entries,M.notes]);if(T!==d&&g.show(M.entries,M.notes),d=T,g.drawing.strokes([]),f(),v.replaceChildren(
...M.lumps.map($),...M.leaks.flatMap(E)),g.drawing.svg.classList.toggle("tsp-shut",M.closed),g.drawing.svg.classList.toggle(
"tsp-clean",M.closed||M.clean),o.textContent=M.finding,C.value=M.slide,a.textContent=`minute ${M.minute}`,y.textContent=
M.closed?"Lift the face off again":"Close the face",B===null&&(m.value=String(M.flat),S.textContent=`${M.flat} µm`),l.replaceChildren(
...Et(M.facts)),B===null)return;let O=B;B=null,h(O)}u.follow("change:view",_),u.follow("msg:custom",M=>{M.type==="troubl\
e"&&(p=null,g.drawing.strokes([]))});let A=new MutationObserver(()=>setTimeout(f,kn));return A.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),_(),()=>{u.close(),A.disconnect()}}function xs(t){return Mt(t,(e,n,r)=>{let o=Ht(),a=s("div",{class:"tsp-section"}),l="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),c=e.places.map(([p,h])=>[p,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:p})},h)]),u=[s("p",{class:"ts-hint"},e.rule),$t(s("span",{},"Set the gauge down at"),...c.map(([,p])=>p))];
return e.readingsOnly||(u.push($t(dt("Lip looks towards",e.sides,r.lip,p=>n({lip:p})).row,dt("Lip is",e.greases,r.grease,
p=>n({grease:p})).row,e.sleeves.length?dt("It went",e.sleeves,r.sleeve,p=>n({sleeve:p})).row:"")),u.push(ut("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:p=>`${p.toFixed(2)} mm${p<0?", proud":""}`,onInput:p=>n({
depth:p})}).row,ut("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:p=>p?`${p.toFixed(2)} mm across`:"square",onInput:p=>n(
{lean:p})}).row)),{picture:i,controls:u,set(p,h){p.section!==l&&(l=p.section,a.innerHTML=l),a.querySelector(".tsl-moving")?.
setAttribute("transform",p.placed),o.set(p.dial,p.words);for(let[g,y]of c)y.setAttribute("aria-pressed",String(g===h.place))}}})}function $s({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=Ht(),a=n.readingsOnly?null:ts(n),l=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),c=Rt((w,d)=>B.send({type:"set",state:w,turn:d})),u=w=>{r={...r,...w},c.ask(r)},
p=(w,d)=>{let f=[...r.shims];f[w]=d,u({shims:f.filter(Boolean),turns:0})},h=(w,d,f)=>F(w,d,{"aria-pressed":f}),g=F("Turn\
 the shaft ten times",()=>u({turns:r.turns+10})),y=h("Pull the shaft away",()=>u({side:"away"}),"true"),m=h("Push it to \
the dial",()=>u({side:"towards"}),"false"),S=dt("Plunger",n.plungers,r.plunger,w=>u({plunger:w})),C=[s("div",{class:"ts-\
tools"},n.rolls?g:null,S.row,y,m)];if(!n.readingsOnly){let w=dt("Shim",n.shelf,r.shims[0],f=>p(0,f)),d=n.second?dt("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",f=>p(1,f)):null;C.unshift(s("div",{class:"ts-tools"},w.row,d?.row)),C.
push(ut("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:f=>u({warmth:f}),words:f=>f?`case ${Math.round(n.caseRise*
f/100)} K warmer`:"cold, as at the bench"}).row)}let B=z({model:t,el:e},{kind:"rig"}),P=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});P.innerHTML=n.section;let k=[s("p",{class:"ts-who"},n.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),B.alert,s("div",{class:"\
tsg-beside"},P,s("div",{class:"tsg-gauge"},o.node,s("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...C,l,
a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];B.show(...k.filter(Boolean));function L(){let w=t.get("show\
n");c.waiting||(r=w.state),o.set(w.dial,w.dialWords),y.setAttribute("aria-pressed",String(w.state.side==="away")),m.setAttribute(
"aria-pressed",String(w.state.side==="towards")),l.textContent=w.finding,a&&(a.set(w.cold,w.warm,w.words.join(" ")),i.replaceChildren(
...w.words.map(d=>s("p",{},d)))),c.answered(w.turn)}let x=()=>c.free();return B.follow("change:shown",L),B.follow("msg:c\
ustom",x),L(),B.close}function Ss({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),l=s("dl",{class:"ts-facts"}),i=null,c=null,u=(d,f)=>{c={...c,[d]:f},i===null&&p()};function p(){
i=tt("choice"),L.send({type:"choose",chosen:c,turn:i}),c=null}let h=s("div",{class:"tsj-settings"}),g=(d,f,v)=>{let b=tt(
"set");return f.id=b,h.append(s("label",{for:b},d),s("span",{class:"tsj-slide"},f,v)),f},y=(d,f,v)=>g(f,s("select",{class:"\
ts-box",onchange:b=>u(d,b.target.value)},...ct(v.map(b=>typeof b=="string"?[b,b]:b)))),m=(d,f,v)=>g(f,s("input",{type:"r\
ange",oninput:b=>u(d,Number(b.target.value))}),v),S={group:y("group","Bolt of the unit",n.groups),thread:y("thread","Thr\
ead",n.threads),strength:y("strength","Strength class",n.classes),state:y("state","State of the thread",n.states),tool:y(
"tool","Tool",n.tools)},C=s("output",{class:"tsj-figure"}),B=m("torque_nm","Torque",C),P=s("output",{class:"tsj-figure"}),
k=m("engagement_mm","Thread that meets",P),L=z({model:t,el:e},{kind:"rig"});L.show(s("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),L.alert,r,o,s("div",{class:"tsj-bench"},h,a),l);let x=(d,f,v,b,$,E)=>{Lt(d,{min:f,max:v,
step:b}),i===null&&(d.value=String($)),d.setAttribute("aria-valuetext",E)};function w(){let d=t.get("view");if(i!==null&&
d.turn!==i)return;i=null,c!==null&&p();let{chosen:f}=d;r.textContent=d.finding,o.innerHTML=d.band,a.innerHTML=d.section,
l.replaceChildren(...Et(d.facts));for(let[v,b]of Object.entries(S))b.value=f[v];x(B,1,d.topTorque,.5,f.torque_nm,d.torqueText),
C.textContent=d.torqueText,x(k,d.lowEngagement,d.topEngagement,.5,f.engagement_mm,d.engagementText),P.textContent=d.engagementText}
return L.follow("change:view",w),w(),L.close}function Ls({model:t,el:e}){let n=Qt(t.get("picture")),r=z({model:t,el:e},{kind:"rig"});return r.show(r.alert,s("p",{class:"\
ts-finding"},t.get("finding")),...n.nodes),r.close}function Kt(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function ge(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var he=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function Cs(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let l=Kt(e,
n),i=l.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let u=e.map(([g])=>g),p=t==="ArrowLeft"?-1:1,h=Kt(e,u[(u.
indexOf(n)+p+u.length)%u.length]);return h.find(a)??h[0]}if(t==="ArrowDown")return l[Math.min(i+1,l.length-1)];if(t==="A\
rrowUp")return l[Math.max(i-1,0)];if(t==="Home")return l[0];if(t==="End")return l.at(-1);if(t.length!==1||t===" ")return;
let c=t.toLowerCase();return he(l,i).find(u=>o[u].toLowerCase().startsWith(c))}function Ms({stages:t,stage:e,step:n,isOpen:r}){
let o=Kt(t,e),a=t.flatMap(([,,i])=>i),l=a.indexOf(String(o.at(-1)));return he(o,o.indexOf(String(n))).find(r)??he(a,l).find(
r)}function As({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>wt()},
...ct(n.stages.map(([I,K])=>[I,K]))),l=Z(n.marked?"Next open step":"Next ready step",()=>M("next"));l.classList.add("ts-\
next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this stag\
e",onkeydown:I=>O(I)}),c=s("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the st\
age, Enter takes a step in hand; Enter again does it."),u=s("div",{class:"ts-hand",role:"group","aria-label":"Step in ha\
nd",onkeydown:I=>{I.key!=="Enter"||!I.target.matches("input[type=radio], .ts-number-box")||(I.preventDefault(),t.get("ha\
nd").stands?W():st())}}),p=s("div",{class:"ts-scroll ts-fit"}),h=s("dl",{class:"ts-facts"}),g=s("ul",{class:"ts-sentence\
s"}),y=s("p",{class:"ts-prompt"},"Wrong so far"),m=s("select",{class:"ts-box ts-before","aria-label":"A step that stands"}),
S=Z("Take out again",()=>{m.value&&d({type:"out",step:m.value},"hand")}),C=Z("Put the tools down",()=>d({type:"over"},"t\
old"));C.classList.add("ts-over");let B=s("div",{}),P=s("p",{class:"ts-status"}),k=s("details",{ontoggle:()=>{k.open!==!!t.
get("view").record&&d({type:"record",open:k.open})}},s("summary",{},"Build record"),B),L=z({model:t,el:e},{kind:"rig"});
L.show(s("p",{class:"ts-who"},n.who),L.alert,r,P,o,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"\
ts-tools"},a,l),i,c),u),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},m,S),C),p,h,y,g,k);let x=0,w=null;function d(I,K=null){
x+=1,w=K&&{turn:x,focus:K},e.setAttribute("aria-busy","true"),L.send({...I,turn:x})}let f="",v=null,b="next",$=I=>!t.get(
"view").done.includes(I),E=()=>it(i,"[data-step]"),_=I=>E().find(K=>K.dataset.step===I)?.focus(),A=()=>({stages:n.stages,
stage:a.value,step:v,isOpen:$});function M(I,K){b=I,d(I==="list"?{type:"take",step:K}:{type:"next"},"hand")}function T(I){
a.value=ge(n.stages,I)??a.value,v=I,wt(),_(I)}function O(I){if(ft(I))return;let K=Cs(I.key,{...A(),labels:n.labels});K&&
(I.preventDefault(),T(K))}function R(){let I=Ms(A());I?b==="next"?l.focus():T(I):C.focus()}function W(){let I=t.get("vie\
w").done.length>=Object.keys(n.labels).length;b==="next"&&!I?M("next"):R()}function G(I){let{done:K,ready:nt}=t.get("vie\
w");return K.includes(I)?{sign:"✓",word:"done"}:nt.includes(I)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"op\
en":"waits"}}function wt(){let I=Kt(n.stages,a.value);(v===null||!I.includes(v))&&(v=I.find($)??I[0]);let K=t.get("hand").
step,nt=JSON.stringify([a.value,I.map(G),K]);if(nt===f){for(let pt of E())pt.tabIndex=pt.dataset.step===v?0:-1;return}f=
nt;let lt=E().find(pt=>pt===document.activeElement)?.dataset.step;i.replaceChildren(...I.map(pt=>et(pt,K))),lt&&_(lt)}function et(I,K){
let{sign:nt,word:lt}=G(I);return s("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${lt}`,"data-step":I,
tabindex:I===v?"0":"-1","aria-current":I===K?"step":!1,"aria-label":`${n.labels[I]}: ${lt}`,onclick:()=>{v=I,M("list",I)}},
Nt(nt),n.labels[I])}let H="",q=new Map;function U(I){let K=Ut(I),nt=s("p",{class:"ts-read",id:K.read,role:"status"}),lt=0,
pt=j=>{d({type:"set",name:I.name,value:j}),lt=x},ht=_t(I).make(I,K,pt,()=>{}),N=Wt(I,K,null);return N.append(ht.element,
nt),N.dataset.field=I.name,{element:N,flush:()=>ht.flush?.(),show(j={},Y){if(Y<lt)return;ht.show(j);let at=j.read?`read \
as ${j.read}`:"";nt.textContent=j.error?`▲ Look again: ${j.error}`:at}}}let rt=I=>s("dl",{class:"ts-facts"},...Et(I));
function X(){let I=t.get("hand"),K=JSON.stringify(I);if(K===H)return;if(H=K,u.dataset.stands=String(!!I.stands),q=new Map(
(I.fields??[]).map(ht=>[ht.name,U(ht)])),!I.step){u.replaceChildren(s("p",{class:"ts-hint"},"No step in hand. Choose one\
 from the list, or press the button above it."));return}let nt=Z(`Do it: ${I.label}`,st);nt.classList.add("ts-do");let lt=I.
stands?[Z("Go on",W),Z("Take it out again",()=>d({type:"out",step:I.step},"hand"))]:[nt];u.replaceChildren(s("p",{class:"\
ts-prompt ts-hand-name",tabindex:"-1"},I.label),...I.plain.map(ht=>s("p",{class:"ts-hint"},ht)),...I.cautions.map(ht=>s(
"p",{class:"ts-caution"},s("b",{},"Take care: "),ht)),...I.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),rt(
I.read)]:[],...I.card.length?[rt(I.card)]:[],...[...q.values()].map(ht=>ht.element),s("div",{class:"ts-tools"},...lt));let pt=ge(
n.stages,I.step);pt&&([a.value,v]=[pt,I.step])}function st(){for(let I of q.values())I.flush();d({type:"do"},"after")}function bt(){
let I=t.get("view").asked_back,K=it(u,"[data-field]").find(pt=>pt.dataset.field===I),nt=K&&it(K,"input:not(:disabled), s\
elect, button"),lt=it(u,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");
return nt?.[0]??lt[0]}function yt(){let I=t.get("view"),K=I.told;r.textContent=I.finding,P.textContent=I.status,P.hidden=
!I.status,o.textContent!==K.join("")&&o.replaceChildren(...K.map(lt=>s("p",{},lt))),X(),wt();for(let[lt,pt]of q)pt.show(
I.states[lt],I.turn);if(p.dataset.shown!==I.figure&&(p.innerHTML=I.figure,p.dataset.shown=I.figure),h.replaceChildren(...Et(
I.facts)),g.replaceChildren(...It(I.faults.map(([,lt])=>lt))),y.hidden=g.hidden=!I.faults.length,At(I.done),B.innerHTML=
I.record,k.open=!!I.record,e.setAttribute("aria-busy",String(I.turn<x)),!w||I.turn<w.turn)return;let{focus:nt}=w;w=null,
nt==="told"?o.focus():nt==="after"&&!t.get("hand").step?R():(bt()??l).focus()}function At(I){if(m.disabled=S.disabled=!I.
length,m.dataset.done===I.join(" "))return;m.dataset.done=I.join(" ");let K=[...I].reverse();m.replaceChildren(...ct(K.map(
nt=>[nt,n.labels[nt]])))}return L.follow("change:view",yt),yt(),L.close}function $n(t){let e=D("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=V(r,
o,r,o,"tsi-adapter"),l=D("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=V(r,o+74,r,o+74,"tsi-arm"),c=Q(r,o+94,"");return e.
append(V(r,o,r+440,o,"tsi-lever"),a,l,D("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),Q(r+440,o-20,"hand, middle of the grip",
"end"),Q(r+20,o-20,"square drive","start"),V(r+440,o+10,r+440,o+84,"tsg-centre"),i,c,Q(8,242,"lengths to scale","start")),
{node:e,set(u){let p=u.state.angle/180*Math.PI,h=r-u.state.reach*n*Math.cos(p),g=o-u.state.reach*n*Math.sin(p);Lt(a,{x2:h,
y2:g}),Lt(l,{cx:h,cy:g}),Lt(i,{x1:h,x2:r+440}),Lt(c,{x:(h+r+440)/2}),c.textContent="the lever from bolt to hand, along t\
he wrench",e.setAttribute("aria-label",`${t.name}. ${u.words}`)}}}function Es(t){return Mt(t,(e,n,r)=>{let o=$n(e),a=(i,c,u,p,h,g)=>ut(
i,{min:u,max:p,step:h,value:r[c],words:y=>`${y} ${g}`,onInput:y=>n({[c]:y})}),l={setting:a("Setting","setting",e.low,e.high,
e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("Angle of the adapter","angl\
e",0,180,5,"° off straight")};return{picture:o.node,controls:Object.values(l).map(i=>i.row),set(i,c){o.set(i);for(let[u,
p]of Object.entries(l))p.set(c[u])}}})}function me(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=l=>String(l).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var Sn="twoshaft-unsent:";function Os(t,e){let n=Sn+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,l,i,c=new Date)=>o({...r(),[a]:{value:l,
base:i,at:c.toISOString()}}),drop(a){let{[a]:l,...i}=r();l&&o(i)}}}function Ts(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var Bt=null,Ln="input, button, select, textarea, summary, a, [tabindex]",Ns=t=>[...t.querySelectorAll(Ln)];function Is(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?Bt={form:e,at:Ns(t).indexOf(a),from:null}:Bt?.form===e&&t.
isConnected&&(Bt=null))},r=({target:a})=>{Bt?.form===e&&a instanceof HTMLInputElement&&(Bt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(Bt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:l}=Bt,i=Ns(t)[a];i?.focus({preventScroll:!0}),
l!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(l,l)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}function Ds(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let l=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),c=F("Use these figures",()=>g("yes")),u=F(
"Go back to the drawn figures",()=>g("no")),p=!1,h=a.map(m=>{let S=tt("bench"),C=m.options.length?s("select",{class:"ts-\
box",id:S,"aria-describedby":`${S}-read`},s("option",{value:""},"choose"),...ct(m.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:S,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${S}-hint ${S}-read`}),
B=s("span",{class:"ts-hint",id:`${S}-hint`},m.hint),P=s("p",{class:"ts-read",id:`${S}-read`}),k=m.text,L=()=>{C.value.trim()!==
k.trim()&&(k=C.value,e({type:"bench",name:m.name,value:C.value}))};return C.addEventListener(m.options.length?"change":"\
blur",L),C.addEventListener("keydown",x=>{x.key==="Enter"&&(x.preventDefault(),L())}),{name:m.name,flush:L,input:C,element:s(
"div",{class:"ts-bench-row"},s("label",{for:S},m.prompt),s("div",{class:"ts-line-of"},C,B),P),show(x){if(!x)return;(document.
activeElement!==C||C.value===k)&&(C.value=x.text,k=x.text),C.setAttribute("aria-invalid",String(!!x.error)),P.classList.
toggle("ts-error",!!x.error);let w=x.error?[Nt("▲")," "]:[],d=x.read&&!x.options.length&&`read as ${x.read}`,f=x.error||
[d,x.origin].filter(Boolean).join(", ");P.replaceChildren(...w,f)}}}),g=m=>{for(let S of h)S.flush();p=!0,e({type:"bench",
name:"in-use",value:m})};o.append(s("summary",{},l),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),s("div",{class:"ts-bench-rows"},...h.map(m=>m.element)),i,s("div",{class:"ts-tools"},c,u));function y(){
let m=r(),S=new Map(m.rows?.map(k=>[k.name,k]));for(let k of h)k.show(S.get(k.name));l.textContent=m.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",u.hidden=!m.wanted,c.hidden=m.used&&!m.stale;let C=m.wanted&&
!m.used?"▲ ":m.used?"● ":"○ ",B=m.used?"in use":m.wanted?`not used; the drawn figures stand. ${m.refused}`:"not us\
ed; the drawn figures stand",P=m.stale?` The tables and choices of this task are still the ones from before. ${m.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${C}${B}${P}`,m.wanted&&
!m.used&&(o.open=!0)}return{element:o,show:y,hear(m){m.type!=="bench-saved"||m.name!=="in-use"||!p||(p=!1,r().stale&&n())},
lost(){for(let m of[c,u,...h.map(S=>S.input)])m.disabled=!0}}}var Cn=5e3,Mn=2e3,An={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},we="kept in this browser until it can be\
 saved";function En(t,e,n,r){let o=_t(t),a=Ut(t),l=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),c=0,u=null,p={},h=()=>{clearTimeout(u??void 0),u=null},g=k=>{n.put(t.name,k,p.revision??0),y(k)},y=k=>{c+=
1,C("wait",r()?we:"saving"),h(),u=window.setTimeout(()=>C("wait",we),Cn),e({type:"save",name:t.name,value:k,turn:c})},m=o.
make(t,a,g,(k,L)=>{k?(n.put(t.name,L,p.revision??0),C("wait","not saved yet: press Enter or leave the box")):u===null&&(n.
drop(t.name),B(p))}),S=Wt(t,a,a.status);o.status==="above"?S.append(i,m.element,l):S.append(m.element,l,i);function C(k,L){
i.className=`ts-status ts-status-${k}`,i.dataset.text!==L&&(i.dataset.text=L,i.replaceChildren(Nt(An[k]),` ${L}`))}function B(k,L=!1){
if(p=k??{},m.show(p),l.replaceChildren(p.read?`read as ${p.read}`:""),!L)if(p.error){let{error:x,saved:w="",note:d}=p;C(
"unread",`Look again: ${x} Kept as typed, ${me(w)}${d?`; ${d}`:""}.`)}else p.saved&&!p.blank?C("saved",`saved ${me(p.saved)}${p.
note?`; ${p.note}`:""}`):C("none",o.blank??"not answered yet")}let P=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:S,show(k){u===null&&B(k,P())},saved(k){k.turn===c&&(m.pending?.()||n.drop(t.name),h(),B(k.state))},refused(k){
k.turn===c&&(h(),m.refused(),C("bad",`not saved: ${k.reason}`))},off(){clearTimeout(u??void 0),(u!==null||m.pending?.())&&
C("wait",we)},catchUp(){let k=n.get(t.name);k&&(Ts(k,p)?(m.show({...p,value:k.value,error:""}),y(k.value)):n.drop(t.name))},
flush:()=>m.flush?.(),summary:()=>({answered:!!p.saved&&!p.blank&&!p.error&&!p.short,unread:!!p.error,trouble:P(),waiting:u!==
null})}}function Bs({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=Os(window.localStorage,r),a=!1,l=()=>a||h.isLost(),
i=n.map(L=>En(L,y,o,l)),c=new Map(i.map(L=>[L.name,L])),u=s("p",{class:"ts-who"}),p=s("p",{class:"ts-total"}),h=z({model:t,
el:e},{kind:"form",lost(){for(let L of i)L.off();g.lost(),m()},line(L){a=L;for(let x of i)L?x.off():x.catchUp();m()}}),g=Ds(
t,h.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});h.show(s("div",{class:"ts-top"},u,p),h.
alert,g.element,...i.map(L=>L.element));function y(L){h.send(L),m()}function m(){let L=i.map($=>$.summary()),x=L.filter(
$=>$.answered).length,w=L.filter($=>$.trouble).length,d=L.some($=>$.waiting),f=L.filter($=>$.unread).length,v=w?`${w} no\
t saved`:d?l()?"the rest kept in this browser":"saving":x&&!f?"all saved":"",b=[`${x} of ${i.length} answered`,f?`${f} c\
annot be read`:"",v];p.textContent=b.filter(Boolean).join(", ")}function S(){u.textContent=t.get("header");let L=t.get("\
states");for(let x of i)x.show(L[x.name]);m()}let C=0,B=()=>{if(document.visibilityState==="hidden")for(let L of i)L.flush();
document.visibilityState!=="visible"||Date.now()-C<Mn||(C=Date.now(),h.send({type:"look"}))},P=r?new BroadcastChannel(`t\
woshaft-saved:${r}`):null;P?.addEventListener("message",({data:L})=>{L===t.get("task_id")&&h.send({type:"look"})}),document.
addEventListener("visibilitychange",B),e.addEventListener("focusin",L=>{L.relatedTarget instanceof Node&&e.contains(L.relatedTarget)||
B()}),h.follow("change:states change:header",S),h.follow("msg:custom",L=>{L.type==="saved"&&(c.get(L.name)?.saved(L),P?.
postMessage(t.get("task_id"))),L.type==="refused"&&c.get(L.name)?.refused(L),m()}),h.follow("msg:custom",g.hear),h.follow(
"change:bench",g.show),S();for(let L of i)L.catchUp();m(),g.show(),h.alert.textContent=t.get("notice");let k=Is(e,`${r}/${t.
get("task_id")}`);return()=>{k(),P?.close(),h.close(),document.removeEventListener("visibilitychange",B)}}function Ps(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:l},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:l,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var On={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},Tn={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"};function Rs(t,e){let n=document.
getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||"/"}catch{}return`${r}${t}/${e.
split("/").map(encodeURIComponent).join("/")}`}var oe=(t,e,n)=>s("a",{href:Rs("lab/tree",t),target:"_blank","data-twosha\
ft-open":t,"data-key":n,class:"ts-link"},e);function js(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:r,
unread:o})=>s("li",{},`${e}: `,n===r?"nothing answered":n?`${n} of ${r} missing`:"",...o.map(([a,l])=>s("span",{},s("b",
{},"cannot be read: "),`“${a}” ${l}`)))))}function Hs({model:t,el:e}){let n="",r=Ps(sessionStorage,localStorage,t.get(
"place")),o=z({model:t,el:e},{kind:"start",lost:()=>{}}),a=s("div",{}),l=s("p",{class:"ts-said",role:"status"});o.show(o.
alert,l,a);let i=(A,M={})=>{a.getAttribute("aria-busy")==="true"||o.isLost()||(M.quietly||(a.setAttribute("aria-busy","t\
rue"),l.textContent="One moment.",o.alert.textContent=""),t.send({type:A,...M}))},c=(A,M,T,O)=>s("button",{type:"button",
class:O?"ts-button ts-first":"ts-button","data-key":M,onclick:T},A);function u(){let A=tt("who"),M=tt("word"),T=s("selec\
t",{id:A,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.get("people").map(([
R,W])=>s("option",{value:R,selected:R===n},W)));T.addEventListener("change",()=>{n=T.value});let O=s("input",{id:M,type:"\
text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data-key":"word"});return s(
"form",{class:"ts-sign-in",onsubmit:R=>{R.preventDefault(),i("sign-in",{name:T.value,word:O.value})}},s("h2",{},"Who is \
working?"),s("div",{class:"ts-pair"},s("label",{for:A},"Your name"),T),s("div",{class:"ts-pair"},s("label",{for:M},"Sign\
-in word from your slip"),O),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},"Sign in"),s("p",
{class:"ts-hint"},t.get("kept")))}function p(A,M){let T=et=>`${et}:${A.name}`,O=s("div",{class:"ts-doing"});for(let et of A.
feedback.slice(0,1))O.append(s("a",{href:Rs("files",et),target:"_blank",class:"ts-link","data-key":T("feedback")},"Read \
feedback"));for(let et of A.notebooks){let H=A.notebooks.length===1?"Open":`Open ${et.split("/").pop()}`;O.append(oe(et,
H,T(`open ${et}`)))}A.can_get&&O.append(c(A.notebooks.length?"Get again":"Get",T("get"),()=>i("get",{name:A.name}),!A.notebooks.
length)),A.can_hand_in&&O.append(c(A.receipt?"Hand in again":"Hand in",T("hand in"),()=>i("hand-in",{name:A.name})));for(let et of O.
children)et.setAttribute("aria-label",`${et.textContent}: ${A.title}`);let R=t.get("asking")===A.name,W=A.receipt||A.unread>
0,G=s("tr",{},s("th",{scope:"row"},A.title),s("td",{},A.due||"no date",A.overdue?s("span",{class:"ts-small-line"},"date \
passed"):null),s("td",{},s("span",{class:"ts-shape","aria-hidden":"true"},On[A.state]||""),s("b",{},Tn[A.state]||A.state),
s("span",{class:"ts-small-line"},A.detail),M?s("span",{class:"ts-small-line"},`Mark: ${M}`):null),s("td",{},O));if(R)return[
G,s("tr",{},s("td",{colspan:4},g(A)))];if(!W||!A.gaps.length)return[G];let wt=s("td",{colspan:4},s("b",{},h(A)),js(A.gaps));
return[G,s("tr",{},wt)]}let h=({left:A,unread:M})=>Pt([A?`${A} ${A===1?"answer is":"answers are"} missing`:null,M?`${M} \
cannot be read`:null]).join(", ");function g(A){let M=tt("question"),T=s("div",{class:"ts-doing"});for(let O of A.notebooks)
T.append(oe(O,"Go on with it",`go on:${A.name}`));return T.append(c("Hand in as it is",`hand in anyway:${A.name}`,()=>i(
"hand-in",{name:A.name,anyway:!0}))),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":M,"data-key":"\
question"},s("p",{id:M},s("b",{},`${A.title}: not handed in yet. ${h(A)}.`)," An answer that is missing or cannot be rea\
d earns nothing."),js(A.gaps),T)}let y=new Set,m={met:"✓",enough:"◐","not yet":"○"};function S(A,M){let T=A.entries.
map(G=>M.find(wt=>wt.name===G)).filter(G=>G!==void 0),O=A.lesson?oe(A.lesson,`Lesson ${A.title}`,`lesson:${A.lesson}`):s(
"span",{class:"ts-small-line"},"no lesson here"),R=s("details",{open:y.has(A.module)},s("summary",{"data-key":`outcomes:${A.
module}`},`Outcomes: ${A.count||"none"}`),s("ul",{},...A.outcomes.map(([G,wt,et,H])=>s("li",{},s("span",{class:"ts-shape",
"aria-hidden":"true"},m[G]||""),s("b",{},`${G}${et&&G==="enough"?`, ${et}`:""}: `),wt,et&&G==="not yet"?`. Still missing\
: ${et}`:"",H?` (${H})`:""))));R.addEventListener("toggle",()=>{R.open?y.add(A.module):y.delete(A.module)});let W=T.flatMap(
G=>p(G,A.marks[G.name]));return s("tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},A.title,s("s\
pan",{class:"ts-assigned"},T.length?"assigned":"not assigned"))),...W,s("tr",{},s("td",{colspan:4},O,s("p",{class:"ts-ne\
xt"},s("b",{},"Next: "),A.next),R)))}function C(){let A=t.get("me"),M=t.get("entries"),T=s("table",{class:"ts-table"},s(
"thead",{},s("tr",{},...["Assignment","Due","State","What you can do"].map(O=>s("th",{scope:"col"},O)))),...t.get("modul\
es").map(O=>S(O,M)));return s("section",{},s("div",{class:"ts-me"},s("h2",{},`Working as ${A.name} (${A.id})`),A.ticket?
c("Not you? Sign out","sign-out",()=>{i("sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),
M.length?null:s("p",{},"Nothing is assigned yet."),T,c("Look again","look",()=>i("look")))}function B(){let A=!!t.get("m\
e").id,M=t.get("modules").map(R=>R.lesson),O=t.get("lessons").filter(([R])=>!A||!M.includes(R));return O.length?s("secti\
on",{},s("h2",{},A?"To look things up":"Lessons"),s("ul",{class:"ts-lessons"},...O.map(([R,W])=>s("li",{},oe(R,W,`lesson\
:${R}`))))):null}let P=!1,k=t.get("me").id?null:r.get(),L=k!==null;function x(){let A=t.get("me");A.id?r.keep(A):(P||k&&
!L)&&r.drop(),P=!!A.id}let w=0,d="",f=()=>it(a,"[data-key]"),v=()=>a.querySelector("input[data-key=word]");function b(){
let M=f().find(U=>U===document.activeElement)?.dataset.key;a.removeAttribute("aria-busy");let T=!!t.get("me").id;l.textContent=
t.get("said"),o.alert.textContent=t.get("trouble");let O=v()?.value,R=L?s("p",{},"One moment."):u();a.replaceChildren(...Pt(
[T?C():R,B()]));let W=v();W&&O&&(W.value=O);let G=d;if(d=t.get("asking"),d&&d!==G&&f().find(U=>U.dataset.key==="question")?.
focus(),!M||d&&d!==G)return;let wt=f().find(U=>U.dataset.key===M),et=M.split(":")[1],H=M.startsWith("hand in anyway")?`h\
and in:${et}`:`:${et}`,q=f().find(U=>et&&U.dataset.key?.endsWith(H));(wt??q??it(a,"a, button, select")[0])?.focus()}let $=()=>{
clearTimeout(w),w=setTimeout(()=>{L=!1,x(),b()},0)};t.on("change",$),x(),b(),k&&t.send({type:"resume",name:k.id,ticket:k.
ticket});let E=()=>{!document.hidden&&t.get("me").id&&i("look",{quietly:!0})},_=new IntersectionObserver(([A])=>{A.isIntersecting&&
E()});return _.observe(e),document.addEventListener("visibilitychange",E),()=>{clearTimeout(w),t.off("change",$),_.disconnect(),
document.removeEventListener("visibilitychange",E),o.close()}}var Nn={bench:Ye,build:Ze,cord:es,depth:ss,face:ns,fault_board:rs,form:Bs,gate:as,gears:is,hazards:ls,lifting:cs,micrometer:ds,
own_checks:us,press:ps,rules:fs,runout:hs,sealant:ks,seat:xs,shims:$s,start:Hs,thread:Ss,unit_section:Ls,whole_build:As,
wrench:Es};export{Nn as screens};
