var Us="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...It(n)),r}function P(t,e={},...n){let r=document.createElementNS(Us,t);return Ct(r,e),r.append(...n),
r}function Ct(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function q(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function Mt(t,e){return s("select",{class:"ts-box",...t},...ct(
e))}function xt(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function Ot(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function It(t){return t.filter(e=>e!=null&&e!==!1)}var Le=0;function tt(t){return Le+=1,`two\
shaft-${t}-${Le}-${Math.random().toString(36).slice(2,7)}`}function Tt(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function nt(t,e){return[...t.querySelectorAll(e)]}function $t(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function ft(t){return t.ctrlKey||t.metaKey||t.altKey}function Ut(t){let e=nt(t,"button, input,\
 select");for(let n of e)n.disabled=!0}function Ce(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function Wt(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function Z(t,e,n=t){return q(t,e,{"aria-label":n})}
function ct(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function Dt(t){return t.map(e=>s("li",{},e))}var ae=new Map;function kt(t,e){if(ae.has(t))throw new Error(`the answer kind ${t} is registered twice`);ae.set(t,e)}function Pt(t){
let e=ae.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Rt(t){let e=tt(
t.kind);return{control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function Ht(t,e,n){let{prompt:r}=Pt(
t),o={class:"ts-prompt"};if(r==="legend")return s("fieldset",{class:"ts-field","aria-describedby":n},s("legend",o,t.prompt));
let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s("div",{class:"ts-field"},a)}function zt(t,e,n,r){let a=t.options.map(([l,i])=>{let c={"aria-describedby":e.status},d=s("input",{type:n,name:e.control,
value:l,...c});return{key:l,input:d,row:s("label",{class:"ts-option"},d,s("span",{},i))}});for(let{input:l}of a)l.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:l})=>l)),show(l){let i=l.value==null?[]:[l.value].flat();for(let{key:c,input:d}of a)d.checked=i.includes(c)},setDisabled(l){
for(let{input:i}of a)i.disabled=l},refused(){}}}kt("choice",{prompt:"legend",make:(t,e,n)=>zt(t,e,"radio",r=>n(r[0]))});kt("choices",{prompt:"legend",make:(t,e,n)=>zt(t,e,"checkbox",n)});function Me(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function Ae(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}kt("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([l,i],c)=>{let d=s("span",{class:"ts-each-line",
id:`${e.control}-${c}`},i),p=Mt({"aria-labelledby":d.id,"aria-describedby":e.status},[["","choose"],...o]);return{key:l,
box:p,row:s("li",{},d,p)}});for(let{box:l}of a)l.addEventListener("change",()=>{n(Me(a.map(({key:i,box:c})=>[i,c.value])))});
return{element:s("ol",{class:"ts-each"},...a.map(({row:l})=>l)),show(l){let i=Ae(l.value);for(let{key:c,box:d}of a)d.value=
i.get(c)??""},setDisabled(l){for(let{box:i}of a)i.disabled=l},refused(){}}}});function ie(t){let[e="",...n]=t.split(" "),r=e==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:e,size:r,
side:o,place:a[0],points:null};let l=a.map(i=>{let[c,d]=i.split(",").map(Number);return[c,d]});return{hand:e,size:r,side:o,
place:"",points:l}}function le(t,{side:e,place:n,points:r}){return r||(e==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[e]??[])}function ce(t,e){let{hand:n,size:r,side:o,place:a}=ie(e),l=[...t.stretches,...t.
holes].find(c=>c.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${l?`, ${l.name}`:""}, ${t.sides[o]??""}`}
function de(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function Ee(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function Oe(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function Te(t,[e,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
l,i])=>Math.hypot(l-e,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var Ws=.4;function Ne(t,e){let n=Ws,r=Gt(t,n);for(;r.
length>e;)n*=1.5,r=Gt(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function Gt(t,e){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let l=1;l<t.length-1;l+=1){let i=zs(n,r,t[l]);i>o&&([o,a]=[i,l])}return o<=
e?[n,r]:[...Gt(t.slice(0,a+1),e).slice(0,-1),...Gt(t.slice(a),e)]}function zs(t,e,n){let[r,o]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var Yt=14,Gs=3,Ys=.5,Xs=["middle","inside","outside"],Xt="round ";function Js(t,e){let n=t.outline.map(([H])=>H),r=t.outline.
map(([,H])=>H),[o,a]=[Math.min(...n)-Yt,Math.max(...n)+Yt],[l,i]=[Math.min(...r)-Yt,Math.max(...r)+Yt],c=a-o,d=i-l,p=([H,
F])=>`${(H-o).toFixed(1)} ${(i-F).toFixed(1)}`,f=(H,F)=>`M${H.map(p).join("L")}${F?"Z":""}`,g=tt("face"),b=c/100,m=2*b,x=(H,F)=>P(
"pattern",{id:`${g}-${H}`,width:m,height:m,patternUnits:"userSpaceOnUse"},P("path",{d:F,class:"tsp-hatch","stroke-width":b/
4})),S=P("defs",{},x("oil",`M0 ${m}L${m} 0`),x("dirt",`M0 ${m}L${m} 0M0 0L${m} ${m}`)),B=t.cavities.map(([,H])=>f(H,!0)).
join(""),N=t.islands.map(H=>f(H,!0)).join(""),k=f(t.outline,!0)+B,C=P("g"),$=P("g"),w=P("g"),u=P("g"),h=P("path",{class:"\
tsp-live",d:""}),y=P("path",{class:"tsp-chosen",d:""}),v=P("path",{class:"tsp-land",d:k,"fill-rule":"evenodd"}),L=P("pat\
h",{class:"tsp-edge",d:k+N,"stroke-width":b/2.5}),E=([H,F],U,at="middle")=>{let X={x:H-o,y:i-F,"font-size":2.1*b,"text-a\
nchor":at};return P("text",{class:"tsp-text",...X},U)},_=[(o+a)/2,(l+i)/2],A=(H,F)=>{let U=Wt(H,_)||1;return[H[0]+F*(_[0]-
H[0])/U,H[1]+F*(_[1]-H[1])/U]};for(let{x:H,y:F,d:U,leads:at,name:X}of t.holes){let st={cx:H-o,cy:i-F,"stroke-width":b/4},
bt=at==="blind"?"tsp-hole tsp-blind":"tsp-hole";w.append(P("circle",{...st,r:U/2,class:bt})),at==="to the outside"&&w.append(
P("circle",{...st,r:U/3,class:"tsp-hole"}));let[yt,Et]=A([H,F],-(U/2+4.4*b));w.append(E([yt,Et-.8*b],X.replace("bolt ","")))}
for(let H of t.guides){let[F,U]=[H.x-o,i-H.y],at=`M${F-b} ${U}h${m}M${F} ${U-b}v${m}`;w.append(P("path",{class:"tsp-guid\
e",d:at,"stroke-width":b/2}));let X={"stroke-width":b/5,"stroke-dasharray":`${b} ${b}`};w.append(P("circle",{cx:F,cy:U,r:H.
reach,class:"tsp-reach",...X}));let st=A([H.x,H.y],H.reach+m),bt=(st[0]-H.x)/(H.reach+m);w.append(E(st,H.name,bt>.5?"sta\
rt":bt<-.5?"end":"middle"))}for(let{word:H,points:F,width:U}of t.spots){let[at]=H.split(" "),[X,st]=[F[0],F[F.length-1]],
bt=Wt(X,st)||1,[yt,Et]=[-(st[1]-X[1])/bt*U/2,(st[0]-X[0])/bt*U/2],D=[[X[0]+yt,X[1]+Et],[st[0]+yt,st[1]+Et],[st[0]-yt,st[1]-
Et],[X[0]-yt,X[1]-Et]],K=`url(#${g}-${at})`;C.append(P("path",{d:f(D,!0),fill:K,class:"tsp-spot","stroke-width":b/4}));let ot=E(
A([(X[0]+st[0])/2,(X[1]+st[1])/2],9*b),at);ot.classList.add("tsp-spot-word"),w.append(ot)}let M=[100,50,20,10].find(H=>H<
c/4)??10,T=`M${b} ${d-b}v${-b}v${b/2}h${M}v${-b/2}v${b}`,O={x:M+m,y:d-b,"font-size":2.1*b};u.append(P("path",{class:"tsp\
-edge",d:T,"stroke-width":b/4}),P("text",{class:"tsp-text",...O},`${M} mm`));let R=`0 0 ${c.toFixed(1)} ${d.toFixed(1)}`,
z=P("svg",{viewBox:R,class:"tsp-face",role:"img","aria-label":e},S,v,C,$,L,w,y,h,u),G=`max-width: ${(25*c/d).toFixed(1)}\
rem`;return{frame:s("div",{class:"ts-pad-face",style:G},z),svg:z,over:u,live:h,chosen:y,land:v,path:f,unit:b,box:{left:o,
right:a,low:l,high:i,width:c,height:d},place({clientX:H,clientY:F}){let U=z.getBoundingClientRect(),at=Math.min(U.width/
c,U.height/d);return[o+(H-U.left-(U.width-at*c)/2)/at,i-(F-U.top-(U.height-at*d)/2)/at]},strokes(H){$.replaceChildren(...H.
map(et))}};function et(H){let F=ie(H),U=le(t,F),at=de(t,F.hand,Math.max(F.size,b/2)),X=U.length>1?f(U,F.side==="round"):
U.length?`${f(U)}h0.01`:"",st=P("path",{d:X,class:`tsp-stroke tsp-${F.hand}`,"stroke-width":at});if(F.hand!=="film")return st;
let bt=Math.min(8,Math.max(.6,40*F.size)),yt={"stroke-width":b/3,"stroke-dasharray":`${bt} ${bt}`};return P("g",{},st,P(
"path",{d:X,class:"tsp-grain",...yt}))}}function Jt({face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=Js(t,e),l=s("p",
{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"ts-read ts-pad-trouble",role:"status"}),c=(T,O)=>s("span",{class:"\
ts-pair"},s("label",{for:O.id},T),O),d=Mt({id:tt("hand")},Object.entries(t.hands)),p=s("input",{class:"ts-box ts-size",id:tt(
"size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),f=s("label",{for:p.id},"thickness"),g=Mt({id:tt(
"place")},t.stretches.map(({id:T,name:O})=>[T,O]));g.append(s("optgroup",{label:"Round a hole"},...t.holes.map(({id:T,name:O})=>s(
"option",{value:`${Xt}${T}`},`round ${O}`))));let b=Mt({id:tt("side")},Xs.map(T=>[T,t.sides[T]])),m=q("Lay it here",()=>u(
[w(g.value)])),x=q("Lay it on every stretch",()=>u(t.stretches.map(({id:T})=>w(T)))),S=q("Take back the last pass",()=>{
k&&r(k-1,!0)}),B=q("Clear the face",o),N={film:"",bead:""},k=0,C=!1;function $(){if(d.value==="wipe")return"";let[T,O]=t.
sizes[d.value],R=Ee(p.value);if(R>=T&&R<=O)return p.removeAttribute("aria-invalid"),` ${Number(R.toFixed(3))}`;let z=d.value===
"film"?"the thickness of the film":"the diameter of the bead";return i.textContent=p.value.trim()?`Read “${p.value}”: \
give ${z} from ${T} to ${O} mm.`:`First give ${z} in mm.`,p.setAttribute("aria-invalid","true"),p.focus(),null}function w(T){
let O=$();if(O===null)return null;let R=T.startsWith(Xt)?T:`${b.value} ${T}`;return`${d.value}${O} ${R}`}function u(T){let O=T.
filter(R=>R!==null);if(!(C||O.length<T.length)){if(k+O.length>t.most){i.textContent=`There is room for ${t.most} passes;\
 take some back first.`;return}i.textContent="",l.textContent=O.length===1?`Laid: ${ce(t,O[0])}`:`Laid on ${O.length} st\
retches`,n(O)}}function h(){let T=d.value==="wipe";f.textContent=d.value==="bead"?"diameter":"thickness",p.disabled=C||T,
p.value=T?"":N[d.value],p.placeholder=T?"":"mm",m.textContent=T?"Wipe here":"Lay it here",x.textContent=T?"Wipe every st\
retch":"Lay it on every stretch",i.textContent="",y()}function y(){let T=g.value.startsWith(Xt);b.disabled=C||T;let O=le(
t,T?{side:"round",place:g.value.slice(Xt.length)}:{side:b.value,place:g.value});a.chosen.setAttribute("d",O.length?a.path(
O,T):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}d.addEventListener("change",h),p.addEventListener("input",
()=>{N[d.value]=p.value}),g.addEventListener("change",y),b.addEventListener("change",y),p.addEventListener("keydown",T=>{
T.key==="Enter"&&(T.preventDefault(),m.click())});let v=null;a.svg.addEventListener("pointerdown",T=>{if(C||T.button>0)return;
v=[a.place(T)],a.svg.setPointerCapture(T.pointerId);let O=Math.max(1,Number(N.bead.replace(",","."))||1);a.live.setAttribute(
"stroke-width",String(de(t,d.value,O)))}),a.svg.addEventListener("pointermove",T=>{if(!v)return;let O=a.place(T);Wt(O,v[v.
length-1])<Ys||(v.push(O),a.live.setAttribute("d",a.path(v)))});let L=T=>{if(!v)return;let O=v;if(v=null,a.live.setAttribute(
"d",""),T.type==="pointercancel")return;if(Oe(O)<Gs){g.value=Te(t,O[0]),y();return}let R=$();if(R===null)return;let z=Ne(
O,t.points).map(G=>G.join(","));u([`${d.value}${R} at ${z.join(" ")}`])};a.svg.addEventListener("pointerup",L),a.svg.addEventListener(
"pointercancel",L);let E=s("ol",{class:"ts-passes","aria-label":"Passes, in the order they were done"}),_=s("p",{class:"\
ts-hint"},"Nothing is laid yet."),A=s("div",{class:"ts-pad-tools"},s("div",{class:"ts-tools"},c("tool",d),s("span",{class:"\
ts-pair"},f,p)),s("div",{class:"ts-tools"},c("where",g),c("runs",b)),s("div",{class:"ts-tools"},m,x,S,B),i,l),M=()=>nt(E,
"button");return h(),{drawing:a,tools:A,list:E,empty:_,frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,A,s("div",
{class:"ts-pad-list"},_,E)),show(T,O=[]){k=T.length,a.strokes(T),_.hidden=k>0;let R=M().findIndex(z=>z.matches(":focus"));
E.replaceChildren(...T.map((z,G)=>s("li",{},s("span",{},`${ce(t,z)}${O[G]?`, ${O[G]}`:""} `),q("take out",()=>r(G,!1),{class:"\
ts-button ts-remove",disabled:C,"aria-label":`Take out pass ${G+1}`})))),R>=0&&(M()[Math.min(R,k-1)]??m).focus()},setDisabled(T){
C=T;for(let O of[d,g,m,x,S,B,...M()])O.disabled=T;p.disabled=T||d.value==="wipe",y()}}}kt("film",{prompt:"words",make(t,e,n){let r=[],o=l=>{r=l,a.show(r),n(r)},a=Jt({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:l=>o([...r,...l]),onRemove:l=>o(r.filter((i,c)=>c!==l)),onClear:()=>o([])});
return{element:a.element,show(l){r=[l.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function Ie(t,e){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${e}`.trim()}function De(t,{send:e,typing:n,said:r=o=>String(o??"")}){let o=s("input",{type:"text",class:"ts-box ts-number-box",id:t.
control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.hint} ${t.read} ${t.
status}`}),a="",l=()=>a===null||o.value.trim()!==a.trim(),i=()=>{l()&&(a=o.value,e(o.value))};return o.addEventListener(
"blur",i),o.addEventListener("keydown",c=>{let d=(c.ctrlKey||c.metaKey)&&c.key.toLowerCase()==="s";c.key!=="Enter"&&!d||
(c.preventDefault(),i())}),o.addEventListener("input",()=>n(l(),o.value)),{box:o,flush:i,pending:l,refused(){a=null},show(c){
o.setAttribute("aria-invalid",String(!!c.error)),!(document.activeElement===o&&o.value!==a)&&(a=r(c.value),o.value=a)}}}kt("number",{prompt:"label",make(t,e,n,r){let o=t.units,{box:a,flush:l,pending:i,refused:c,show:d}=De(e,{send:n,typing:r}),
p=s("span",{class:"ts-hint",id:e.hint},t.hint),f=Mt({"aria-label":"Choose the unit"},[["","unit"],...o.map(g=>[g,g])]);return f.
addEventListener("change",()=>{f.value&&(a.value=Ie(a.value,f.value),/\d/.test(a.value)?l():a.focus())}),a.addEventListener(
"input",()=>{f.value=""}),{element:s("div",{class:"ts-line-of"},a,o.length?f:null,p),show:d,setDisabled(g){a.disabled=f.
disabled=g},refused:c,flush:l,pending:i}}});function Pe(t,e){let r=[...new Set([t??[]].flat())].filter(o=>e.includes(String(o))).map(String);return[...r,...e.filter(
o=>!r.includes(o))]}var _t=(t,e)=>t.join(`
`)===e.join(`
`),Be=t=>`#${t.keys[0]}`,Vt=class{constructor(e,n){this.labels=new Map(e.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
r,,o]of e)o&&this.stages.set(r,o);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let n of this.order){let r=this.stages.get(n)??null,o=e.at(-1);o&&r!==null&&o.stage===r?o.keys.push(n):e.push({stage:r,
keys:[n]})}return e}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let e=[];for(let n of this.runs()){
let[r]=n.keys;if(n.keys.length<2){e.push({id:r,key:r,level:1});continue}if(e.push({id:Be(n),run:n,level:1}),!this.closed.
has(String(n.stage)))for(let o of n.keys)e.push({id:o,key:o,level:2})}return e}row(e){return this.rows().find(n=>n.id===
e)}settle(){let e=this.rows();if(!e.some(n=>n.id===this.current)){let n=this.current.replace(/^#/,""),r=e.find(o=>o.run?.
keys.includes(n));this.current=(r??e.find(o=>o.id===n)??e[0]).id}return e}unit(){let e=this.row(this.current);return e?.
run?e.run.keys:this.block.has(this.current)&&this.block.size>1?this.order.filter(n=>this.block.has(n)):[this.current]}unitName(){
let e=this.row(this.current);if(e?.run)return`Stage ${e.run.stage}`;let n=this.unit();return n.length>1?`Block of ${n.length}\
 steps`:this.label(n[0])}where(){let e=this.unit(),n=this.order.indexOf(e[0])+1;return e.length>1?`positions ${n} to ${n+
e.length-1} of ${this.order.length}`:`position ${n} of ${this.order.length}`}rest(){let e=this.unit();return this.order.
filter(n=>!e.includes(n))}get isFirst(){return this.order.indexOf(this.unit()[0])===0}get isLast(){return this.order.indexOf(
String(this.unit().at(-1)))===this.order.length-1}insertedAt(e){let n=this.rest();return[...n.slice(0,e),...this.unit(),
...n.slice(e)]}shifted(e){let n=this.rest(),r=this.order.indexOf(this.unit()[0]),o=!!this.row(this.current)?.run,a=d=>n[e>
0?d:d-1],l=a(r);if(l===void 0)return this.insertedAt(r);let i=this.stages.get(l),c=i!==void 0&&(o||this.closed.has(i));do
r+=e;while(c&&a(r)!==void 0&&this.stages.get(a(r))===i);return this.insertedAt(r)}atPosition(e){return this.insertedAt(Math.
min(e-1,this.order.length-this.unit().length))}beside(e,n){return this.insertedAt(this.rest().indexOf(e)+(n==="after"?1:
0))}gathered(){let e=new Map;for(let n of this.order){let r=this.stages.get(n)??n;e.set(r,[...e.get(r)??[],n])}return[...e.
values()].flat()}dropAt(e,n){let r=e.run?e.run.keys:[e.key],o=e.run&&!this.closed.has(String(e.run.stage));return n&&!o?
{target:String(r.at(-1)),side:"after"}:{target:r[0],side:"before"}}take(e){if(_t(e,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,n){let[r]=n.keys,o=this.rows().find(a=>a.run?.
keys.includes(r));this.current=o?o.id:r}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,n){let r=e.pop();return r?(n.push(this.order),this.order=
r,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||_t(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,n){this.order=[...e],n&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let n=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((r,o)=>r-o);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(e,n){
let r=e.run?e.run.stage:this.stages.get(e.key),o=e.run?e.run.keys[0]:e.key,a=this.runs().find(l=>l.keys.includes(o));return!r||
!a||a.keys.length<2?null:(n?this.closed.add(r):this.closed.delete(r),n&&(this.current=Be(a)),r)}sought(e){let n=this.rows(),
r=n.findIndex(l=>l.id===this.current),o=e.length>1?r:r+1,a=l=>(l.run?String(l.run.stage):this.label(l.key)).toLowerCase();
return[...n.slice(o),...n.slice(0,o)].find(l=>a(l).startsWith(e))}};var Vs=12,Zs=700,Qs=5,je=32,tn=8;function Zt({label:t,steps:e,order:n,onChange:r}){let o=new Vt(e,n),{staged:a}=o,l=!1,i={},
c=!1,d=new Map,p=s("div",{"aria-live":"assertive",class:"ts-hidden"}),f=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),g=q("Up",()=>z(-1),{"aria-label":"Move the chosen step up"}),b=q("Down",
()=>z(1),{"aria-label":"Move the chosen step down"}),m=q("Undo",()=>o.undo()&&et("Undone")),x=q("Redo",()=>o.redo()&&et(
"Done again")),S=q("Choose several",()=>X(!l),{"aria-pressed":"false"}),B=q("Gather stages",()=>R(o.gathered(),"Steps of\
 one stage now stand together")),N=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:I=>{I.key==="Enter"&&G()}}),k=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),C=s("span",{class:"ts-chosen"}),$=q("Move",G,{"aria-label":"Move to this position"}),w=q(
"Move",wt,{"aria-label":"Move before this step"}),u=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},g,b,m,x,S,a?B:null),h=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",N,$),s("span",{class:"\
ts-pair"},"or before ",k,w)),y="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),v=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},y),h),L=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),u,C,f,v,p);function E(I){p.
textContent=I}function _(I=""){E(`${o.unitName()}${I}, ${o.where()}`)}function A(I){let j=d.get(I.id);if(j)return j;let Y=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Y.dataset.row=I.id,d.set(I.id,Y),Y}function M(I=!1){let j=o.settle(),
Y=new Set(j.map(J=>J.id));for(let[J,mt]of d)Y.has(J)||(mt.remove(),d.delete(J));let it=o.unit(),vt=new Set(it),rt=f.firstElementChild;
for(let J of j){let mt=A(J);mt===rt?rt=rt.nextElementSibling:f.insertBefore(mt,rt),T(mt,J,vt)}N.value=String(o.order.indexOf(
it[0])+1);let gt=[...o.order.entries()].filter(([,J])=>!vt.has(J));k.replaceChildren(...gt.map(([J,mt])=>s("option",{value:mt},
`${J+1}  ${o.label(mt)}`))),C.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,g.disabled=c||o.isFirst,b.disabled=c||
o.isLast,m.disabled=c||o.past.length===0,x.disabled=c||o.future.length===0;for(let J of[S,B,N,k,$,w])J.disabled=c;if(f.setAttribute(
"aria-disabled",String(c)),f.classList.toggle("ts-long",o.order.length>Vs),I){let J=d.get(o.current);J?.focus({preventScroll:!0}),
J?.scrollIntoView({block:"nearest"})}}function T(I,j,Y){let it=j.id===o.current,vt=j.run?!1:o.block.has(j.key),rt=o.held!==
null&&(j.run?it:Y.has(j.key)),gt=o.order.indexOf(j.run?j.run.keys[0]:j.key),J=j.run?j.run.keys.map(Lt=>i[Lt]?.length??0):
i[j.key],mt=j.run?o.closed.has(String(j.run.stage)):!1,ve=JSON.stringify([gt,j.level,it,vt,rt,J,j.run&&[j.run.keys.length,
mt]]);if(I.dataset.looks===ve)return;I.dataset.looks=ve,I.tabIndex=it?0:-1,I.setAttribute("aria-selected",String(vt)),I.
classList.toggle("ts-current",it),I.classList.toggle("ts-inblock",vt),I.classList.toggle("ts-held",rt),I.classList.toggle(
"ts-level2",j.level===2),a&&I.setAttribute("aria-level",String(j.level));let ye=rt?" picked up":vt?" in block":"",ke=ye?
s("span",{class:"ts-state"},ye):"",xe=Lt=>s("span",{class:"ts-number","aria-hidden":"true"},Lt);if(j.run){let{keys:Lt,stage:qs}=j.
run;I.setAttribute("aria-expanded",String(!mt));let Se=mt?Lt.filter(Fs=>i[Fs]?.length).length:0;I.replaceChildren(xe(`${gt+
1}–${gt+Lt.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},mt?"▸":"▾"),s("span",{class:"ts-what"},s("b",
{},qs),` ${Lt.length} steps`,Se?` – ${Se} with a remark`:"",ke));return}let $e=(i[j.key]??[]).map(Lt=>s("span",{class:`\
ts-note ts-note-${Lt.kind}`},Ot(Lt.shape??""),s("b",{},Lt.word),` ${Lt.text}`)),Ks=a&&j.level===1;I.classList.toggle("ts\
-troubled",$e.length>0),I.replaceChildren(xe(String(gt+1)),s("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),s("spa\
n",{class:"ts-what"},o.label(j.key),Ks?s("span",{class:"ts-stage"},` ${o.stages.get(j.key)??""}`):"",ke,...$e))}let O=()=>r(
[...o.order]);function R(I,j){if(!o.take(I)){E(`${o.unitName()} stays at ${o.where()}`);return}M(!0),j?E(j):_(),o.held===
null&&O()}function z(I){c||R(o.shifted(I))}function G(){if(c)return;let I=Number.parseInt(N.value,10),j=o.order.length;I>=
1&&I<=j?R(o.atPosition(I)):(E(`Type a position from 1 to ${j}`),C.textContent=`Type a position from 1 to ${j}.`)}function wt(){
!c&&k.value&&R(o.beside(k.value,"before"))}function et(I){M(),E(`${I}. ${o.unitName()}, ${o.where()}`),O()}function H(){
o.pickUp(),M(!0),_(" picked up")}function F(){o.putDown()&&O(),M(!0),_(" put down")}function U(){o.putDown()&&O(),M()}function at(){
o.putBack(),M(!0),_(" put back")}function X(I){l=I,S.setAttribute("aria-pressed",String(I)),I||(o.block=new Set),M(),E(I?
"Choose the steps of a block":"Block let go")}function st(I){o.toggleBlock(I);let j=o.block.has(I)?"in the block":"out o\
f the block";E(`${o.label(I)} ${j}, ${o.block.size} in it`)}function bt(I,j){let Y=o.fold(I,j);Y&&(M(!0),E(`${Y} ${j?"cl\
osed":"open"}`))}f.addEventListener("keydown",I=>{if(ft(I))return;let j=o.rows(),Y=j.findIndex(mt=>mt.id===o.current),it=mt=>{
o.current=j[Math.max(0,Math.min(j.length-1,mt))].id,M(!0)},vt=j[Y],{key:rt}=I,gt=rt==="ArrowUp"?-1:rt==="ArrowDown"?1:null,
J=o.held!==null;if(gt&&(I.shiftKey||J))z(gt);else if(gt)it(Y+gt);else if(J&&rt==="Escape")at();else if(rt===" ")c||(J?F:
H)();else if(J&&rt==="Enter")F();else if(rt==="Enter"&&!vt.run)c||(st(vt.key),M(!0));else if(rt==="Home"&&!J)it(0);else if(rt===
"End"&&!J)it(j.length-1);else if(a&&rt==="ArrowLeft")bt(vt,!0);else if(a&&rt==="ArrowRight")bt(vt,!1);else if(rt.length===
1&&!J)D(rt);else return;I.preventDefault()});let yt="",Et;function D(I){yt+=I.toLowerCase(),clearTimeout(Et),Et=window.setTimeout(
()=>{yt=""},Zs);let j=o.sought(yt);j&&(o.current=j.id,M(!0))}f.addEventListener("focusout",({relatedTarget:I})=>{o.held!==
null&&I instanceof Node&&!f.contains(I)&&U()});let K=null;f.addEventListener("pointerdown",I=>{let j=o.row($t(I,".ts-ste\
p")?.dataset.row??"");if(!j||I.button!==0)return;if(j.run&&$t(I,".ts-fold")){bt(j,!o.closed.has(String(j.run.stage))),I.
preventDefault();return}let Y=$t(I,".ts-grip, .ts-number"),it=I.ctrlKey||I.metaKey;o.held!==null&&U(),!j.run&&!c&&(I.shiftKey?
o.blockTo(j.key):(it||l)&&!Y&&st(j.key)),o.current=j.id,M(!0),I.preventDefault(),!(c||I.shiftKey||it)&&(I.pointerType!==
"mouse"&&!Y||(K={x:I.clientX,y:I.clientY,id:I.pointerId,carried:null},f.setPointerCapture(I.pointerId)))}),f.addEventListener(
"pointermove",I=>{if(!K||I.pointerId!==K.id)return;let{clientX:j,clientY:Y}=I;if(!K.carried){if(Math.hypot(j-K.x,Y-K.y)<
Qs)return;K.carried=ot()}Object.assign(K.carried,{x:j,y:Y}),lt(K.carried)});function ot(){let I=s("div",{class:"twoshaft\
 ts-ghost","aria-hidden":"true"},o.unit().length>1?o.unitName():o.label(o.unit()[0]));document.body.append(I);let j=s("d\
iv",{class:"ts-line","aria-hidden":"true"});f.append(j),f.classList.add("ts-dragging");for(let Y of o.unit())d.get(Y)?.classList.
add("ts-lifted");return{ghost:I,line:j,timer:requestAnimationFrame(pt),x:0,y:0,drop:null}}function lt(I){I.ghost.style.transform=
`translate(${I.x+12}px, ${I.y+8}px)`;let Y=o.rows().map(gt=>{let J=A(gt).getBoundingClientRect();return{row:gt,box:J,offset:I.
y-(J.top+J.height/2)}}).reduce((gt,J)=>Math.abs(J.offset)<Math.abs(gt.offset)?J:gt),it=Y.offset>0;I.drop=o.dropAt(Y.row,
it);let rt=(it?Y.box.bottom:Y.box.top)-f.getBoundingClientRect().top+f.scrollTop-1;I.line.style.top=`${rt}px`}function pt(){
let I=K?.carried;if(I){for(let j of[f,Ce(f)]){let it=j===document.scrollingElement?{top:0,bottom:innerHeight}:j.getBoundingClientRect(),
vt=I.y<it.top+je?-1:I.y>it.bottom-je?1:0;if(!vt)continue;let rt=j.scrollTop;if(j.scrollTop+=vt*tn,j.scrollTop!==rt){lt(I);
break}}I.timer=requestAnimationFrame(pt)}}function ht(I){let j=K?.carried;if(K=null,!j)return;cancelAnimationFrame(j.timer),
j.ghost.remove(),j.line.remove(),f.classList.remove("ts-dragging");for(let it of d.values())it.classList.remove("ts-lift\
ed");let{drop:Y}=j;if(!I||!Y||o.unit().includes(Y.target)){M(!0),E(`${o.unitName()} stays at ${o.where()}`);return}R(o.beside(
Y.target,Y.side))}return f.addEventListener("pointerup",()=>ht(!0)),f.addEventListener("pointercancel",()=>ht(!1)),L.addEventListener(
"keydown",I=>{!K?.carried||I.key!=="Escape"||(ht(!1),I.stopPropagation())}),M(),{element:L,tools:u,order:()=>[...o.order],
change:(I,j)=>{c||R(I,j)},setOrder(I,j=!1){o.held!==null||K?.carried||_t(I,o.order)||(o.set(I,j),M())},setNotes(I){i=I??
{},M()},setDisabled(I){c=I,M()}}}kt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=Zt({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
Pe(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function Re(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[l,i]of t.entries()){let[c,d]=e[i]??[null,null];c!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[c??r[0],d??(c===null?r[1]:0)];let p=n(...r);o.push(p);let f=a.get(p.join(" "))??{at:p,numbers:[]};
f.numbers.push(l+1),a.set(p.join(" "),f)}return{points:o,stops:[...a.values()]}}function He(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function _e(t,e){return t.filter((n,r)=>r!==e)}function Ke(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var pe=9,qe=.7*pe,ue=44;function en(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*pe+2*ue,
l=(o-r)*qe+2*ue,i=(m,x)=>[ue+(m-e)*pe,l/2-(x-(r+o)/2)*qe],c=t.gates.map(m=>`M${i(m,r).join(" ")}L${i(m,o).join(" ")}`),d=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,p=t.gears.map(([m,x,S])=>{let[B,N]=i(x,S),k={x:B,y:N+(S>0?-20:30)};return P("t\
ext",{...k,class:"tsp-gear","text-anchor":"middle"},m)}),f=P("polyline",{class:"tsp-line",points:""}),g=P("g");return{element:P(
"svg",{viewBox:`0 0 ${a} ${l}`,width:a,height:l,class:"ts-gateplan","aria-hidden":"true"},P("path",{d:[...c,d].join(""),
class:"tsp-slot"}),...p,f,g),show(m){let{points:x,stops:S}=Re(m,t.aims,i),[[B,N]]=x;f.setAttribute("points",x.map(k=>k.join(
",")).join(" ")),g.replaceChildren(P("circle",{cx:B,cy:N,r:4,class:"tsp-start"}),...S.map(({at:[k,C],numbers:$})=>P("g",
{},P("circle",{cx:k,cy:C,r:3.5,class:"tsp-stop"}),P("text",{x:k+7,y:C-5,class:"tsp-number"},$.join(", ")))))}}}function Fe({
label:t,moves:e,plan:n,most:r,onChange:o}){let a=new Map(e),l=L=>a.get(L)??L,i=[],c=-1,d=!1,p=n?en(n):null,f=s("ol",{class:"\
ts-pathlist","aria-label":t}),g=s("p",{class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),
b=s("p",{class:"ts-hidden",role:"status"}),m=e.map(([L,E])=>q(E,()=>C(L))),x=q("Take back the last move",()=>{i.length&&
$(i.length-1)}),S=q("Take back all",()=>{i.length&&k([],"No moves left")}),B=s("span",{class:"ts-hint"}),N=s("div",{class:"\
ts-path"},s("div",{class:"ts-tools ts-moves",role:"group","aria-label":"Add a move"},...m),s("div",{class:"ts-path-both"},
s("div",{class:"ts-path-words"},g,f,s("div",{class:"ts-tools"},x,S,B)),p&&s("div",{class:"ts-path-picture"},p.element)),
p&&s("p",{class:"ts-hint"},"The line shows where each move aims. Whether the lever gets there is what the test finds out\
."),b);function k(L,E){d||(i=L,v(),b.textContent=E,o([...i]))}function C(L){if(i.length>=r){b.textContent=`${r} moves ar\
e the most here`;return}let{moves:E,place:_}=He(i,c,L);c=_,k(E,`Move ${_+1}: ${l(L)}`)}function $(L){let E=l(i[L]);c=Math.
min(c,i.length-2),k(_e(i,L),`Taken back: ${E}`)}function w(L,E){let _=Ke(i,L,E);_&&(c=L+E,k(_,`${l(_[c])}, move ${c+1} o\
f ${i.length}`),h(c))}function u(L){return f.children[L]?.querySelector(".ts-path-move")}function h(L){let E=u(L);return E instanceof
HTMLElement&&E.focus(),!!E}function y(L,E){let _=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${E+1}: ${l(
L)}`},l(L)),A=s("button",{type:"button",class:"ts-path-off","aria-label":`Take back move ${E+1}`,onclick:()=>$(E)},"×"),
M=s("li",{},_,A);return M.classList.toggle("ts-current",E===c),_.addEventListener("focus",()=>{c=E;for(let T of f.children)
T.classList.toggle("ts-current",T===M)}),_.addEventListener("keydown",T=>{if(ft(T))return;let O=T.key==="ArrowUp"?-1:T.key===
"ArrowDown"?1:null;if(O&&T.shiftKey)w(E,O);else if(O)h(E+O);else if(T.key==="Delete"||T.key==="Backspace")$(E),h(Math.min(
E,i.length-1))||m[0].focus();else return;T.preventDefault()}),A.disabled=d,M}function v(){f.replaceChildren(...i.map(y)),
g.hidden=i.length>0,B.textContent=`${i.length} of at most ${r} moves`;for(let L of m)L.disabled=d||i.length>=r;x.disabled=
S.disabled=d||i.length===0,p?.show(i)}return v(),{element:N,setMoves(L){_t(L,i)||(i=[...L],c=-1,v())},setDisabled(L){d=L,
v()}}}kt("path",{prompt:"words",make(t,e,n){let r=Fe({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});var sn="No line to the course just now. Go on with the questions: what you enter is kept in this browser and sent when t\
he line is back. Simulators stand still until then.",nn="The line to the course is back.",on=1500,rn=5e3,he=new Set,Bt=null,
fe;function Ue(t){Bt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),Bt.isConnected||document.body.append(Bt),Bt.textContent=
t}function an(){Bt?.remove(),Bt=null}function We(){clearTimeout(fe),he.size?fe=window.setTimeout(()=>Ue(sn),Bt?0:on):Bt&&
(Ue(nn),fe=window.setTimeout(an,rn))}var ze=t=>({down(){he.add(t),We()},up(){he.delete(t),We()}});var ln=1e3,cn="input, button, select, textarea, summary, a, [tabindex]";function dn(t){let e=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:l,
keyCode:i,ctrlKey:c,metaKey:d}=o,p={key:a,code:l,keyCode:i,ctrlKey:c,metaKey:d,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",p))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let o of t.querySelectorAll(cn))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function un(t,e,n){let r=t.widget_manager?.kernel,o=(l,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(l,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),r?.statusChanged?.
connect(o),r?.connectionStatusChanged?.connect(a),r?.disposed?.connect(e),()=>{t.off("comm_live_update",e),r?.statusChanged?.
disconnect(o),r?.connectionStatusChanged?.disconnect(a),r?.disposed?.disconnect(e)}}var Ge=`.twoshaft {
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
width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-height:0}.twoshaft.ts-question{border-left:4px solid var(--ts\
-accent);padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-acts{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin-\
top:var(--ts-grid)}.twoshaft .ts-told:not(:empty){margin-top:var(--ts-grid)}.twoshaft .ts-told-unread{border:2px solid v\
ar(--ts-ink);padding:var(--ts-grid)}.twoshaft .ts-teacher{border-style:dashed;font-size:var(--ts-small)}.twoshaft-start>\
div{max-width:1040px}.twoshaft-start h2{font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-star\
t section,.twoshaft-start .ts-sign-in{margin:calc(2 * var(--ts-grid)) 0 calc(3 * var(--ts-grid))}.twoshaft-start .ts-sig\
n-in{display:grid;gap:calc(1.5 * var(--ts-grid));justify-items:start}.twoshaft-start .ts-pair{display:grid;gap:calc(var(\
--ts-grid) / 2)}.twoshaft-start .ts-pair label{font-weight:600}.twoshaft-start .ts-pair .ts-box{width:22em;max-width:100\
%}.twoshaft-start .ts-first{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft-start .ts-button{font-size:v\
ar(--ts-text)}.twoshaft-start .ts-said:not(:empty){border-left:3px solid var(--ts-accent);padding:var(--ts-grid);backgro\
und:var(--ts-faint)}.twoshaft-start .ts-me{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;\
gap:var(--ts-grid);margin-bottom:var(--ts-grid)}.twoshaft-start .ts-table{border-collapse:collapse;width:100%;margin:0 0\
 calc(2 * var(--ts-grid));font-size:var(--ts-text);table-layout:fixed}.twoshaft-start .ts-table :is(th,td){text-align:le\
ft;vertical-align:top;white-space:normal;padding:var(--ts-grid);border:0;border-bottom:1px solid var(--ts-line);backgrou\
nd:none;max-width:none}.twoshaft-start .ts-table thead th{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-star\
t .ts-table th:nth-child(1){width:26%}.twoshaft-start .ts-table th:nth-child(2){width:16%}.twoshaft-start .ts-table th:n\
th-child(4){width:24%}.twoshaft-start .ts-small-line{display:block;font-size:var(--ts-small);color:var(--ts-quiet)}.twos\
haft-start .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-start a.ts-link:is(:lin\
k,:visited,:hover,:focus,:active){color:var(--ts-accent);text-decoration:underline;display:inline-flex;align-items:cente\
r;min-height:var(--ts-target);cursor:pointer}.twoshaft-start .ts-lessons{padding-left:calc(2 * var(--ts-grid))}.twoshaft\
-start .ts-lessons .ts-link{min-height:24px}.twoshaft-start .ts-module th{padding-top:calc(3 * var(--ts-grid));font-size\
:var(--ts-text)}.twoshaft-start .ts-table .ts-module th{width:auto}.twoshaft-start .ts-assigned{margin-left:var(--ts-gri\
d);font-weight:400;color:var(--ts-quiet)}.twoshaft-start .ts-next{margin:0}.twoshaft-start summary{min-height:var(--ts-t\
arget);align-content:center;cursor:pointer}@media(max-width:560px){.twoshaft-start .ts-table thead{position:absolute;cli\
p-path:inset(50%)}.twoshaft-start .ts-table :is(tr,th,td):nth-child(n){display:block;width:auto}.twoshaft-start .ts-tabl\
e tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0\
;padding:4px 0}}.twoshaft-start .ts-gaps{padding-left:calc(2 * var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start\
 .ts-gaps span{display:block}.twoshaft-start .ts-question{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-gri\
d))}.twoshaft .tsj-bench{display:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(\
--ts-grid)}.twoshaft .tsj-bench svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:pointer}.twoshaf\
t .tsj-bolt:focus{outline:none}.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-width:4}.twoshaft\
 .tsj-bolt.tsj-started circle{stroke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.twoshaft .tsj-bolt\
.tsj-tight text{fill:var(--ts-paper)}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(--ts-grid)}.two\
shaft .tsj-slide input{width:180px;max-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-target)}.twoshaft .t\
sj-figure{min-width:8ch;font-variant-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-height:3em;margin-\
top:var(--ts-grid)}.twoshaft .tsj-check{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-ta\
rget)}.twoshaft .tsj-check input{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:gr\
id;grid-template-columns:max-content minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(va\
r(--ts-width) + 12ch);margin:var(--ts-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{disp\
lay:block;max-width:100%;height:auto}.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;f\
lex-wrap:wrap}@media(max-width:700px){.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-b\
oard{border-collapse:collapse;font:var(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{t\
ext-align:left;font-weight:600;padding:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;v\
ertical-align:middle;padding:4px 12px 4px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twos\
haft table.tsk-board thead th{font-weight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:34ch;white-spa\
ce:normal}.twoshaft table.tsk-board .tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.t\
woshaft table.tsk-board select{max-width:44ch}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best\
 th{font-weight:600;border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twos\
haft .tsk-shown{min-width:24ch}.twoshaft .tsk-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){\
.twoshaft table.tsk-board,.twoshaft table.tsk-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption\
{display:block}.twoshaft table.tsk-board thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50\
%)}.twoshaft table.tsk-board tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-boar\
d tbody th,.twoshaft table.tsk-board tbody td,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-wid\
th:none;min-width:0;padding:2px 0;text-align:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twosh\
aft table.tsk-board tbody .tsk-best td{border:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--\
ts-accent)}.twoshaft table.tsk-board tbody th{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:at\
tr(data-label) ": ";color:var(--ts-quiet)}.twoshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-\
board select{max-width:100%}}.twoshaft .ts-gate{cursor:default;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-pa\
nel{cursor:grab;touch-action:none}.twoshaft .ts-pulling,.twoshaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-g\
ate .tsg-hand{fill:var(--ts-accent)}.twoshaft .ts-gate svg{user-select:none}.twoshaft .ts-moves .ts-button{text-align:le\
ft;padding-block:4px}.twoshaft .ts-happened.ts-stopped,.twoshaft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{m\
ax-height:14rem;overflow-y:auto;padding-left:calc(4 * var(--ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .\
ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 12ch);font-weight:600}.twosha\
ft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3px}.twoshaft .tsw-train svg{u\
ser-select:none}.twoshaft .tsw-counts{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid));margin:var(--ts-grid) 0}.\
twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-template-columns:104px 1fr;column-gap:var(--ts-grid);align-i\
tems:center;width:268px;padding:4px;border:1px solid var(--ts-line);border-radius:2px;text-align:left;font-size:var(--ts\
-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:3px}.twoshaft .tsw-count.tsw-held{border\
-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-dial{grid-column:1;grid-row:1 / span 3}.twos\
haft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:104px;height:104px;touch-action:none;cursor:grab;user-select\
:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-w\
idth:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsw-painted{stroke:var(--t\
s-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-tick{stroke:var(--ts-ink);stroke-width:\
1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:15px var(--ts-font);fill:var(--ts-ink);text-anc\
hor:middle}.twoshaft .tsw-strokes{min-height:1.5em;font-family:monospace;font-size:var(--ts-text);letter-spacing:1px;ove\
rflow-wrap:anywhere;max-height:4.5em;overflow-y:auto}.twoshaft .tsw-figure{min-height:1.5em;font-variant-numeric:tabular\
-nums}.twoshaft .tsw-figure:empty{min-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsh-picture{overflow-\
x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{display:block;width:100%;min-width:720px;max-width:1100px;heig\
ht:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaft .tsh-place:hover .tsh-hit{\
stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:hover .tsh-hit{stroke:var(--ts\
-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);stroke-width:4}.twoshaft .ts\
h-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:3px solid var(--ts-accent);padding-left:calc(1.5 * var(--\
ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twoshaft .tsh-verdict{margin-top:\
var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-sliders{display:grid;grid-template\
-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:96\
0px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em minmax(6em,1fr) 4em;align-items:center;gap:var(--ts-grid)\
;min-height:var(--ts-target)}.twoshaft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;min-height:24px}\
.twoshaft .tsl-row .ts-box{justify-self:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;text-align:right}.\
twoshaft .tsl-drawing{overflow-x:auto}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:600px;max-width:820p\
x;height:auto}.twoshaft .tsl-sum{font-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@media(max-width:480px){.twos\
haft .tsl-sliders{grid-template-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wrap:wrap;min-width:0}.twosha\
ft .tsl-row input{max-width:100%}}.twoshaft .tsp-section{overflow-x:auto}.twoshaft .tsp-gauge{width:220px;height:200px;f\
lex:none}.twoshaft .tsp-section svg{display:block;max-width:100%;height:auto;min-width:320px}.twoshaft .ts-pair[hidden]{\
display:none}.twoshaft .ts-cells{position:absolute;pointer-events:none}.twoshaft .tsp-land.tsp-clear{fill:none}.twoshaft\
 .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-way{fill:none;stroke:var(--ts-bad);stroke\
-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:var(--ts-ink);stroke:var(--ts-paper);stroke-width:.5px}.two\
shaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp-shut .tsp-chosen{display:none}.twoshaft \
.ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-grid));font-size:var(--ts-small);min-height:1.6em}.twos\
haft .ts-key{display:inline-flex;align-items:center;gap:4px}.twoshaft .ts-swatch{width:25px;height:15px;border:1px solid\
 var(--ts-line)}.twoshaft .ts-range{accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-clock{min-width:6em;font\
-weight:600}.twoshaft .ts-unit{overflow:auto;max-height:620px;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;to\
uch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:block;max-width:none;max-height:none}.twoshaft .ts-unit\
 [data-part]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-ac\
cent);stroke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-unit [data-part]:hover path:not(.tsu-behind,.tsu-pitch,.tsu\
-line){stroke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.\
twoshaft .ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .ts-unit-words p{max-width:var\
(--ts-width)}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sentences[hidden]{display:none}.twoshaft .ts-told{min-height:2em\
;max-height:9em;overflow-y:auto}.twoshaft .ts-build{display:grid;grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);g\
ap:calc(2 * var(--ts-grid));align-items:start}.twoshaft .ts-buildlist{display:grid;gap:4px;max-height:22rem;overflow-y:a\
uto;padding:4px}.twoshaft .ts-buildstep{text-align:left;padding-block:2px;min-height:28px}.twoshaft .ts-buildstep-done{c\
olor:var(--ts-quiet);border-color:var(--ts-line)}.twoshaft .ts-buildstep-waits{border-style:dotted}.twoshaft .ts-buildst\
ep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-current]{background:var(--ts-accent);color:var(--ts-on-accent)}.tw\
oshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand{border:1px solid var(--ts-line);padding:var(--ts-grid);max-hei\
ght:24rem;overflow-y:auto}.twoshaft .ts-hand .ts-field{border:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-n\
ame{font-weight:600}.twoshaft .ts-do{text-align:left;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(-\
-ts-warn);padding-left:var(--ts-grid);font-size:var(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;marg\
in:var(--ts-grid) 0;font:inherit}.twoshaft .ts-record caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(t\
h,td){text-align:left;vertical-align:top;padding:3px 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;w\
hite-space:normal}.twoshaft .ts-record .ts-blank{min-width:12em;height:2em}@media(max-width:52rem){.twoshaft .ts-build{g\
rid-template-columns:minmax(0,1fr)}.twoshaft .ts-buildlist,.twoshaft .ts-hand{max-height:none}}`,Ye="twoshaft-styles";function pn(){
let t=document.getElementById(Ye);t?.textContent!==Ge&&(t?.remove(),document.head.append(s("style",{id:Ye},Ge)))}function W({
model:t,el:e},{kind:n,lost:r=()=>Ut(e),line:o=()=>{}}){pn(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);
let a=s("p",{class:"ts-alert",role:"alert"}),l=ze(e),i=()=>e.classList.contains("ts-lost"),c=[],p=un(t,()=>{i()||(e.classList.
add("ts-lost"),l.down(),r())},m=>{i()||(m?l.down():l.up(),o(m))}),f=dn(e),g,b=(m,x)=>{t.on(m,x),c.push([m,x])};return b(
"msg:custom",m=>{m.type==="trouble"&&!i()&&(a.textContent=m.reason)}),{alert:a,follow:b,isLost:i,send(m){i()||(t.send(m),
clearTimeout(g),g=window.setTimeout(()=>t.send({type:"rest"}),ln))},show:(...m)=>e.replaceChildren(...It(m)),close(){l.up(),
clearTimeout(g),f(),p();for(let[m,x]of c)t.off(m,x)}}}function Xe({model:t,el:e}){let n=W({model:t,el:e},{kind:"rig",lost:()=>c.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),o=s("p",{class:"ts-cost"}),a=t.get("start"),l=null,i=f=>{l=tt("order"),n.send({type:"order",order:f,turn:l})},
c=Zt({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),d=s("button",{type:"\
button",class:"ts-button",onclick:()=>c.change([...a],"The first order stands again")},"Start again");c.tools.append(d),
n.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),n.alert,r,o,c.element);function p(){let f=t.
get("judged");l!==null&&f.turn!==l||(l=null,r.textContent=f.finding,o.textContent=f.cost,c.setOrder(f.order),c.setNotes(
f.notes))}return n.follow("change:judged",p),p(),n.close}var fn=["lit","bench","absent"],Je=[1,1.5,2,3,4.5];function Qt({svg:t,parts:e,words:n}){let r=s("div",{class:"ts-unit",tabindex:"\
0",role:"application","aria-label":"The unit in section. Left and right arrows walk from part to part, up and down to th\
e part above or below, plus and minus zoom."});r.innerHTML=t;let o=r.querySelector("svg"),a=o.querySelector(".tsu-marks");
o.setAttribute("aria-hidden","true"),o.removeAttribute("role");let l=new Map(e.map(([h])=>[h,[]]));for(let h of nt(o,"[d\
ata-part]"))l.get(String(h.dataset.part))?.push(h);let i=new Map(e.map(([h],y)=>[h,y])),c=s("p",{class:"ts-hint ts-unit-\
name",role:"status"}),d=Mt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],...e.map(([h,y])=>[h,y])]),
p=-1,f=0,g={},b=h=>{let y=g[h];return y==="absent"?" Not there yet.":y==="bench"?" On the bench.":y==="lit"?" In hand.":
""},m=h=>`${e[h][1]}. ${e[h][2]}${b(e[h][0])}`;function x(h){for(let v of nt(o,".tsu-chosen"))v.classList.remove("tsu-ch\
osen");p=h;let y=h<0?"":e[h][0];d.value=y,c.textContent=h<0?$:m(h);for(let v of l.get(y)??[])v.classList.add("tsu-chosen");
h>=0&&B(y)}function S(h){let y=(l.get(h)??[]).map(A=>A.getBBox()),v=Math.min(...y.map(A=>A.x)),L=Math.max(...y.map(A=>A.
x+A.width)),E=Math.min(...y.map(A=>A.y)),_=Math.max(...y.map(A=>A.y+A.height));return{x:(v+L)/2,y:(E+_)/2}}function B(h){
let y=S(h),v=o.getBoundingClientRect().width/o.viewBox.baseVal.width,[L,E]=[y.x*v,y.y*v],{scrollLeft:_,scrollTop:A,clientWidth:M,
clientHeight:T}=r;(L<_+40||L>_+M-40)&&(r.scrollLeft=L-M/2),(E<A+40||E>A+T-40)&&(r.scrollTop=E-T/2)}function N(h){f=Math.
max(0,Math.min(Je.length-1,f+h)),o.style.width=`${100*Je[f]}%`,o.style.height="auto",p>=0&&B(e[p][0])}function k(h){let y=S(
e[p][0]),[v]=e.map(([L],E)=>({k:E,at:S(L)})).filter(({k:L,at:E})=>L!==p&&(E.y-y.y)*h>4).sort((L,E)=>Ve(L.at,y)-Ve(E.at,y));
v&&x(v.k)}r.addEventListener("keydown",h=>{if(ft(h))return;let y=e.length-1;if(h.key==="ArrowRight")x(p>=y?0:p+1);else if(h.
key==="ArrowLeft")x(p<=0?y:p-1);else if(h.key==="ArrowUp"||h.key==="ArrowDown")p<0?x(0):k(h.key==="ArrowUp"?-1:1);else if(h.
key==="Home")x(0);else if(h.key==="End")x(y);else if(h.key==="+"||h.key==="=")N(1);else if(h.key==="-")N(-1);else if(h.key===
"Escape")x(-1);else return;h.preventDefault()}),r.addEventListener("click",h=>{let y=$t(h,"[data-part]")?.dataset.part;x(
y===void 0?-1:i.get(y)??-1)}),r.addEventListener("pointerover",h=>{let y=$t(h,"[data-part]")?.dataset.part;if(y===void 0||
h.pointerType!=="mouse")return;let v=$t(h,"[data-solid]")?.querySelector("title")?.textContent,L=e[i.get(y)??0][1];C.textContent=
v&&v!==L?`${v} (${L})`:L}),r.addEventListener("pointerleave",()=>{C.textContent=""}),d.addEventListener("change",()=>x(i.
get(d.value)??-1));let C=s("span",{class:"ts-unit-over","aria-hidden":"true"}),$="Point at a part, tap it, or choose it \
here to read its name.";c.textContent=$;let w=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",d),Z("−",()=>N(
-1),"Smaller"),Z("+",()=>N(1),"Larger"),C),u=s("details",{class:"ts-unit-words"},s("summary",{},"What is where, in words"),
s("p",{},n));return N(0),{nodes:[w,c,r,u],show(h){g=h.looks;for(let[y,v]of l)for(let L of v)for(let E of fn)L.classList.
toggle(`tsu-${E}`,g[y]===E);a.innerHTML=h.marks,p>=0&&(c.textContent=m(p))}}}function Ve(t,e){return Math.abs(t.y-e.y)+2*
Math.abs(t.x-e.x)}function Ze(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function Qe({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=Qt(t.get("picture")),
l=s("p",{class:"ts-hint",role:"status"}),i=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-ready"}),d=s("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),p=s("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:u=>{u.key==="Enter"&&k()}}),f=s("span"),g=u=>$.send({type:"move",by:u}),b=u=>$.
send({type:"go",position:u}),m=Z("Back",()=>g(-1),"One step back"),x=Z("Next",()=>g(1),"Next step"),S=Z("Start",()=>b(0),
"Start with an empty bench"),B=Z("End",()=>b(t.get("view").count),"End of the order"),N=Z("Try it",()=>$.send({type:"tak\
e",step:d.value}),"Try it: the step chosen here"),k=()=>{let u=Number.parseInt(p.value,10);u>=0&&b(u)},C=s("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},S,m,x,B,s("span",{class:"t\
s-pair"},"place ",p,f,Z("Go",k,"Go to this place")));C.addEventListener("keydown",u=>{if(!(u.target===p||ft(u))){if(u.key===
"ArrowLeft")g(-1);else if(u.key==="ArrowRight")g(1);else if(u.key==="Home")b(0);else if(u.key==="End")b(t.get("view").count);else
return;u.preventDefault()}});let $=W({model:t,el:e},{kind:"rig"});$.show(s("p",{class:"ts-who"},"Practice. Nothing here \
is marked or saved."),$.alert,n,C,r,o,l,...a.nodes,i,s("p",{class:"ts-prompt"},"Do another step next"),c,s("div",{class:"\
ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",d,N)));function w(){let u=t.get("view");n.textContent=
u.finding,r.textContent=u.happened,o.textContent=u.next?`Next in this order: ${u.next}`:"This is the end of the order.",
l.textContent=u.build.words,a.show(u.build),i.replaceChildren(...xt(u.facts));let h=c.contains(document.activeElement);c.
replaceChildren(...u.ready.map(([L,E])=>Z(E,()=>$.send({type:"take",step:L})))),u.ready.length||c.append(s("p",{class:"t\
s-hint"},"No step is ready.")),h&&(c.querySelector("button")??x).focus(),d.replaceChildren(...ct(u.waiting)),d.disabled=
N.disabled=!u.waiting.length,p.value=String(u.position),f.textContent=` of ${u.count} `;let y=u.position===0,v=u.position===
u.count;for(let L of[m,S])Ze(L,y);for(let L of[x,B])Ze(L,v)}return $.follow("change:view",w),w(),$.close}function Kt(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=tt("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var V=(t,e,n,r,o)=>P("line",{x1:t,y1:e,x2:n,y2:r,class:o}),Q=(t,e,n,r="middle")=>P("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function qt(){let t=P("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(P("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(V(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(Q(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(P("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(V(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*Math.
cos(o),"tsg-mark"))}let e=V(100,134,100,119,"tsg-small"),n=P("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"tsg-po\
inter"});return t.append(e,n,P("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("transform",
`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`Dial indi\
cator, one mark is 0.01 mm. ${o}`)}}}function ts({top:t,mark:e,perFigure:n}){let r=P("svg",{viewBox:"0 0 600 92",class:"\
tsg-scale",role:"img"}),o=l=>30+l/t*540;r.append(P("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));for(let l=0;l*
e<=t+1e-9;l+=1){let i=l%n===0;r.append(V(o(l*e),22,o(l*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.append(Q(o(l*e),
84,String(Math.round(l*e))))}let a=P("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(a,Q(586,14,"new\
tons","end")),{node:r,top:t,set(l,i){a.setAttribute("transform",`translate(${o(Math.min(l,t))} 0)`),r.setAttribute("aria\
-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function es({low:t,high:e,reach:n}){let r=P("svg",{viewBox:"0 0 720 \
92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(P("rect",{x:o(t),y:34,width:o(e)-o(
t),height:24,class:"tsg-target"}),Q((o(t)+o(e))/2,84,"target"),V(20,46,700,46,"tsg-mark"),V(360,26,360,66,"tsg-mark tsg-\
long"),Q(20,20,"end play","start"),Q(700,20,"preload","end"),Q(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let c of[
i,-i])r.append(V(o(c),42,o(c),50,"tsg-mark"));r.append(Q(o(-n),70,`${n.toFixed(2)} mm`,"start"),Q(o(n),70,`${n.toFixed(2)}\
 mm`,"end"));let a=P("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),l=P("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});return r.
append(a,l),{node:r,set(i,c,d){a.setAttribute("transform",`translate(${o(i)} 0)`),l.setAttribute("transform",`translate(${o(
c)} 0)`),r.setAttribute("aria-label",d)}}}function ut(t,{min:e,max:n,step:r,value:o,words:a,onInput:l}){let i=s("input",
{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),c=s("output",{class:"ts-slid"},a(o));return i.
addEventListener("input",()=>{let d=a(Number(i.value));c.textContent=d,i.setAttribute("aria-valuetext",d),l(Number(i.value))}),
i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,c),set(d){i.value=String(
d),c.textContent=a(d)}}}function dt(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},...e.
map(([a,l])=>s("option",{value:a,selected:a===n},l)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function ss({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),l=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),c=s("u\
l",{class:"ts-sentences"}),d=Kt((w,u)=>k.send({type:"set",state:w,turn:u})),p=w=>{r={...r,...w},d.ask(r)},f=P("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),g=V(0,0,0,0,"tsg-mark tsg-long"),b=Q(0,0,""),m=96,
x=m/(n.readingsOnly?r.radius:n.radii[1]),S=P("svg",{viewBox:`0 0 ${2*m+120} ${2*m+30}`,width:2*m+120,height:2*m+30,class:"\
tsg-drum",role:"img"}),B=m+4;f.setAttribute("transform",`translate(${B} ${B})`),S.append(f,g,V(4,B,2*m+4,B,"tsg-centre"),
V(B,4,B,2*m+4,"tsg-centre"),P("circle",{cx:B,cy:B,r:10,class:"tsg-face"}),b);let N=[s("div",{class:"ts-tools"},q("Turn t\
he shaft ten times",()=>p({turns:r.turns+10})))];if(!n.readingsOnly){let w=n.kinds,u=w.map(([h,y])=>s("label",{class:"ts\
-option"},s("input",{type:"checkbox",checked:r.kinds.includes(h),onchange:v=>p({kinds:w.map(([L])=>L).filter(L=>L===h?v.
target.checked:r.kinds.includes(L))})}),`with ${y}`));N[0].append(q("Fit the rings anew",()=>p({turns:0}))),u.length&&N.
push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the bearings"),...u)),N.push(ut("Set\
ting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:h=>p({setting:h}),words:h=>h<0?`${(-h).toFixed(3)} mm of\
 end play`:`${h.toFixed(3)} mm of preload`}).row,ut("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:r.radius,
onInput:h=>p({radius:h}),words:h=>`${h} mm`}).row)}let k=W({model:t,el:e},{kind:"rig"});k.show(s("p",{class:"ts-who"},n.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),k.alert,
s("div",{class:"tsg-beside"},S,s("div",{class:"tsg-side"},a,l)),...N,i,c);function C(){let w=t.get("shown");d.waiting||(r=
w.state);let u=x*w.state.radius;Ct(f,{r:u}),Ct(g,{x1:B,y1:B-u,x2:2*m+120,y2:B-u}),Ct(b,{x:B,y:2*m+22}),b.textContent=`dr\
um, radius ${w.state.radius} mm`,S.setAttribute("aria-label",`A drum of ${w.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),o?.top!==w.scale.top&&(o=ts(w.scale),a.replaceChildren(o.node),l.textContent=
`Spring scale to ${w.scale.top} N, one mark ${w.scale.mark} N.`),o?.set(w.pull,w.pullWords),i.textContent=w.finding,c.replaceChildren(
...Dt(w.words)),d.answered(w.turn)}let $=()=>d.free();return k.follow("change:shown",C),k.follow("msg:custom",$),C(),k.close}function At({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=Kt((f,g)=>l.send({type:"set",state:f,turn:g})),
l=W({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),c=n(r,f=>{o={...o,...f},a.ask(o)},o),d=r.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";l.show(s("p",{class:"\
ts-who"},d),l.alert,s("div",{class:"tsg-wide"},c.picture),...c.controls,i);function p(){let f=t.get("shown");a.waiting||
(o=f.state),c.set(f,o),i.textContent=f.finding,a.answered(f.turn)}return l.follow("change:shown",p),l.follow("msg:custom",
a.free),p(),l.close}var St=(...t)=>s("div",{class:"ts-tools"},...t);var hn={x:44,y:84,perMm:34};function gn(t){let e=P("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=hn,a=P("g",{}),l=P("g",{});e.append(P("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),P("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,l,Q(12,14,"main scale, mm","start"),Q(12,176,`vernier, ${t.
lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let c=n+i*t.space*o;l.append(
V(c,r,c,r+(i%2?20:30),"tsi-fine")),i%2===0&&l.append(Q(c,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let c=Math.
max(0,Math.ceil(i.mm-1));c<=t.top+25;c+=1){let d=n+(c-i.mm)*o;d<4||d>756||(a.append(V(d,r,d,r-(c%10===0?34:c%5===0?28:20),
"tsi-fine")),c%5===0&&a.append(Q(d,r-40,String(c))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function ns(t){
return At(t,(e,n,r)=>{let o=gn(e),a=ut("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:c=>n(
{rod:c})}),l=dt("Foot",e.places,r.place,c=>n({place:c,rod:0})),i=dt("Look",e.eyes,r.eye,c=>n({eye:c}));return{picture:o.
node,controls:[St(l.row,i.row),St(q("Push the rod down until it rests",()=>n({rod:e.top})),q("Lift the rod",()=>n({rod:0}))),
a.row],set(c,d){o.set(c),l.box.value=d.place,i.box.value=d.eye,a.box.value=d.rod}}})}function os({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let l=s("div",{class:"tsj-bars"}),i=nt(a,"[data-bolt]"),c=tt("tor\
que"),d=s("input",{id:c,type:"range",min:10,max:100,step:5,oninput:()=>g()});d.value="100";let p=s("output",{class:"tsj-\
figure",for:c}),f=()=>d.value==="100"?n.torque:Number((Math.round(n.torque*Number(d.value)/100/n.step)*n.step).toFixed(3));
function g(){p.textContent=`${f()} N·m`,d.setAttribute("aria-valuetext",`${f()} newton metres, ${d.value} percent of th\
e torque`)}let b=u=>k.send({type:"pull",bolt:u,torque:f()}),m=q("Take back",()=>k.send({type:"undo"})),x=q("Wait until t\
he film has run out",()=>k.send({type:"wait"})),S=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>k.send({type:"set",film:Number(S.value)})},...n.films.map(u=>s("option",{value:u},u?`${u} µm thick`:"none"))),
B=s("input",{type:"checkbox",onchange:()=>k.send({type:"set",scattered:B.checked})});a.addEventListener("click",u=>{let h=$t(
u,"[data-bolt]");h&&(N(h),b(Number(h.dataset.bolt)))});let N=u=>{for(let h of i)h.setAttribute("tabindex",h===u?"0":"-1");
u.focus({preventScroll:!0})};a.addEventListener("keydown",u=>{let h=$t(u,"[data-bolt]");if(!h||u.ctrlKey||u.metaKey||u.altKey)
return;let y=Number(h.dataset.bolt),v={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[u.key];if(v)N(i[(y+v+i.length)%
i.length]);else if(u.key==="Home")N(i[0]);else if(u.key==="End")N(i[i.length-1]);else if(u.key==="Enter"||u.key===" ")u.
repeat||b(y);else return;u.preventDefault()});let k=W({model:t,el:e},{kind:"rig"}),C=s("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},q("Start all by hand",()=>k.send({type:"start"})),...n.rounds.map(([u,h])=>q(`One round ${h}`,
()=>k.send({type:"round",pattern:u,torque:f()}))),m,q("Start again",()=>k.send({type:"again"}))),$=s("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:c},"Wrench set to"),d,p));n.films.length&&
$.append(s("label",{class:"ts-pair"},"Wet sealant",S),x,s("label",{class:"tsj-check"},B,"friction scatters from bolt to \
bolt")),k.show(s("p",{class:"ts-who"},n.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),k.alert,r,$,C,o,s("div",{class:"tsj-bench"},a,l),s("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function w(){let u=t.get("view");r.textContent=u.finding,o.textContent=u.happened,l.innerHTML=
u.bars;for(let[h,y]of i.entries()){let v=u.tight[h]?`${u.clamps[h]} kN`:u.started[h]?"started by hand":"not started";y.setAttribute(
"aria-label",`Bolt ${h+1} of ${n.count}, ${v}`),y.classList.toggle("tsj-tight",u.tight[h]),y.classList.toggle("tsj-start\
ed",u.started[h])}m.disabled=!u.pulls,x.disabled=!u.standing,S.value=String(u.film),B.checked=u.scattered}return k.follow(
"change:view",w),g(),w(),k.close}var rs="tsk-number";function Nt(t,e,...n){return s("td",{class:e?rs:null,"data-label":t||null,role:"cell"},...n)}function te(t,e,n){
let r=e.map(([l,i])=>s("th",{scope:"col",role:"columnheader",class:i?rs:null},l)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function as({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),l=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),c=new Map;for(let[g,
b,m,x]of n.checks){let S=s("select",{class:"ts-box","aria-label":`What it showed: ${b}`,onchange:()=>p.send({type:"obser\
ve",check:g,shown:S.value})},s("option",{value:""},"Not made"),...ct(x)),B=Nt("would tell, bit",!0),N=Nt("bit a minute",
!0),k=s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},b),Nt("min",!0,`${m}`),Nt("it showed",!1,S),B,N);c.set(g,
{box:S,tells:B,rate:N,row:k}),i.append(k)}let d=s("button",{class:"ts-button",type:"button",onclick:()=>p.send({type:"cl\
ear"})},"Take all observations back"),p=W({model:t,el:e},{kind:"rig"});p.show(s("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),p.alert,r,a,l,te("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),o,d);function f(){let g=t.get("view");r.textContent=g.finding,
o.textContent=g.spent,l.textContent=g.more,a.replaceChildren(...Dt(g.left.map(([x,S])=>`${x} (${S})`)));let b=g.ranked,m=new Map(
b.map(([x,S,B],N)=>[x,{bits:S,rate:B,rank:N}]));for(let[x,{box:S,tells:B,rate:N,row:k}]of c){let C=g.observed[x],$=m.get(
x);S.value=C??"",B.textContent=$?$.bits:C!==void 0?"made":"nothing",N.textContent=$?$.rate+($.rank===0?" ◀ best next":
""):"–",k.classList.toggle("tsk-best",$?.rank===0)}}return p.follow("change:view",f),f(),p.close}function is({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"\
The lever. Arrow keys left and right slide the selector shaft, up and down turn it."}),a=s("select",{class:"ts-box ts-ho\
w","aria-label":"How it is put together"},...ct(t.get("builds"))),l=Z("Start again",()=>x({type:"reset"})),i=s("div",{class:"\
ts-tools ts-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([u,h])=>Z(h,()=>x({type:"move",
code:u})))),c=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),d=s("p",{class:"ts-hint"},"Nothin\
g tried yet. Use the moves above; each is written down here."),p=s("p",{class:"ts-proof",role:"status"}),f=Z("What does \
a full hand test find?",()=>{f.disabled=!0,p.textContent="testing",x({type:"prove"})}),g=W({model:t,el:e},{kind:"rig"});
g.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),g.alert,s("div",{class:"ts-tools"},s("span",
{class:"ts-pair"},"Put together: ",a),l),n,o,r,s("p",{class:"ts-hint"},"Drag the blue finger, or click the picture and u\
se the arrow keys: left and right slide, up and down turn. Or use the moves in words:"),i,s("p",{class:"ts-prompt"},"Tri\
ed by hand"),d,c,s("div",{class:"ts-tools"},f),p);let b=0,m="";function x(u){b+=1,g.send({...u,turn:b})}function S(){let u=t.
get("view");if(m!==t.get("figure")){m=t.get("figure"),o.innerHTML=m;let h=Tt(o,"svg");h.removeAttribute("role"),h.setAttribute(
"aria-hidden","true")}for(let h of nt(o,"[data-body]")){let[y,v]=u.moved[String(h.dataset.rides??h.dataset.body)]??[0,0];
h.setAttribute("transform",`translate(${y.toFixed(2)} ${v.toFixed(2)})`)}for(let h of nt(o,"[data-gear]"))h.classList.toggle(
"tsg-in",u.gears.includes(h.dataset.gear));o.dataset.turn=String(u.turn),n.textContent=`${u.gears.length>1?"■ ":u.gears.
length?"● ":"○ "}${u.title}.`,r.textContent=u.happened,r.classList.toggle("ts-stopped",/topped by/.test(u.happened)),
(c.childElementCount!==u.log.length||c.lastElementChild?.textContent!==u.log.at(-1))&&(c.replaceChildren(...u.log.map(h=>s(
"li",{class:/topped by/.test(h)?"ts-stopped":""},h))),c.scrollTop=c.scrollHeight),d.hidden=u.log.length>0,a.value=u.build,
p.textContent=u.proof,f.disabled=!1,k=!1,w()}o.addEventListener("keydown",u=>{if(ft(u))return;let h={ArrowLeft:[-1,0],ArrowRight:[
1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[u.key];h&&(u.preventDefault(),x({type:"nudge",travel:h[0],turned:h[1]}))}),a.addEventListener(
"change",()=>x({type:"build",build:a.value}));let B=null,N=null,k=!1;function C(u){let h=Tt(o,"svg"),y=h.getBoundingClientRect(),
v=h.viewBox.baseVal.width/y.width;return[(u.clientX-y.left)*v,(u.clientY-y.top)*v]}o.addEventListener("pointerdown",u=>{
let h=$t(u,".tsg-panel");if(!h||u.button!==0)return;let y=t.get("view").hand,[v,L]=C(u),E=Number(h.dataset.scale);B={x:v-
y[0]*E,y:L+y[1]*E,scale:E},o.setPointerCapture(u.pointerId),o.focus({preventScroll:!0}),o.classList.add("ts-pulling"),u.
preventDefault()}),o.addEventListener("pointermove",u=>{if(!B)return;let[h,y]=C(u);N={travel_mm:(h-B.x)/B.scale,turn_mm:(B.
y-y)/B.scale},w()});let $=()=>{B=null,o.classList.remove("ts-pulling")};o.addEventListener("pointerup",$),o.addEventListener(
"pointercancel",$);function w(){if(k||!N)return;k=!0;let u=N;N=null,x({type:"pull",...u})}return g.follow("msg:custom",u=>{
u.type==="trouble"&&(k=!1)}),g.follow("change:view",S),S(),g.close}function ls({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding",role:"status"}),a=s("p",{class:"\
ts-happened tsw-happened",role:"status"}),l=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,d=n.gears.map(
([y,v])=>s("button",{type:"button",class:"ts-button","data-gear":y,"aria-pressed":"false",onclick:()=>w({type:"gear",gear:y})},
v)),p=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:y=>w({type:"hold",shaft:y.target.value})},...ct(
n.holds)),f=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:y=>{i=y.target.value,h()}},...ct(r.dials.
map(y=>[y.shaft,y.name]))),g=y=>w({type:"turn",shaft:i,turns:y}),b=`1/${n.marks}`,m=s("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},Z("↺ 1 turn",()=>g(-1),"One turn anticlockwise"),Z(`↺ ${b}`,()=>g(-n.step),`${b} t\
urn anticlockwise`),Z("↺ a touch",()=>g(-n.fine),"A touch anticlockwise"),Z("a touch ↻",()=>g(n.fine),"A touch clock\
wise"),Z(`${b} ↻`,()=>g(n.step),`${b} turn clockwise`),Z("1 turn ↻",()=>g(1),"One turn clockwise"),Z("Marks to zero",
()=>w({type:"reset"}))),x=new Map;for(let y of r.dials){let v=P("g",{},P("circle",{class:"tsw-end",r:34}),P("line",{class:"\
tsw-painted",x1:0,x2:0,y1:0,y2:-34}),P("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),L=[];for(let O=0;O<n.marks;O+=1)L.push(
P("line",{class:"tsw-tick",y1:-40,y2:O?-47:-52,transform:`rotate(${O*360/n.marks})`})),O&&L.push(P("text",{class:"tsw-nu\
mber",x:57*Math.sin(O*2*Math.PI/n.marks),y:-57*Math.cos(O*2*Math.PI/n.marks)+4},String(O)));let E=P("svg",{viewBox:"-70 \
-70 140 140",class:"tsw-dial","data-shaft":y.shaft,"aria-hidden":"true"},P("circle",{class:"tsw-plate",r:40}),...L,P("pa\
th",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),v),_=s("div",{class:"tsw-count",tabindex:"0",role:"application","ari\
a-roledescription":"shaft","data-shaft":y.shaft},s("div",{class:"tsw-name"}),E,s("div",{class:"tsw-strokes","aria-hidden":"\
true"}),s("div",{class:"tsw-figure"}));x.set(y.shaft,{box:_,svg:E,shaftEnd:v}),_.addEventListener("focus",()=>{i!==y.shaft&&
(i=y.shaft,h())}),_.addEventListener("keydown",O=>{if(ft(O))return;let R={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1,
PageDown:1,PageUp:-1}[O.key];R&&(O.preventDefault(),i=y.shaft,g(R*(O.key.startsWith("Page")?1:O.shiftKey?n.fine:n.step)))});
let A=null,M=O=>{let R=E.getBoundingClientRect();return Math.atan2(O.clientX-R.left-R.width/2,R.top+R.height/2-O.clientY)/
(2*Math.PI)};E.addEventListener("pointerdown",O=>{O.button===0&&(A=M(O),E.setPointerCapture(O.pointerId),_.focus({preventScroll:!0}),
O.preventDefault())}),E.addEventListener("pointermove",O=>{if(A===null)return;let R=M(O),z=R-A;z-=Math.round(z),A=R,S+=z,
N()});let T=()=>{A=null};E.addEventListener("pointerup",T),E.addEventListener("pointercancel",T)}let S=0,B=!1;function N(){
if(B||Math.abs(S)<.002)return;B=!0;let y=S;S=0,g(y)}let k=W({model:t,el:e},{kind:"rig"});k.show(...n.closed?[]:[s("p",{class:"\
ts-who"},"Practice. Nothing here is marked or saved.")],k.alert,o,...n.closed?[]:[s("div",{class:"ts-tools",role:"group",
"aria-label":"Gears engaged"},s("span",{},"Engage: "),...d),l],s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Ho\
ld still: ",p),s("span",{class:"ts-pair"},"Turn by hand: ",f)),s("div",{class:"tsw-counts"},...[...x.values()].map(y=>y.
box)),m,a,s("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a dial round, or go to it and use the a\
rrow keys (${b} turn), Shift with an arrow key (a touch) or Page Up and Page Down (one turn). Each stroke is a whole tur\
n.`));let C=0,$=null;function w(y){C+=1,k.send({...y,turn:C})}let u=y=>{let v=[];for(let L=y;L>0;L-=5)v.push(L>=5?"||||/":
"|".repeat(L));return v.join(" ")};function h(){let y=t.get("view");$!==t.get("figure")&&($=String(t.get("figure")),l.innerHTML=
$);for(let v of nt(l,"[data-wheel]")){let[L,E]=y.wheels[String(v.dataset.wheel)]??[0,!0];v.setAttribute("transform",`tra\
nslate(0 ${(L*Number(v.dataset.reach)).toFixed(1)})`),v.classList.toggle("tsw-behind",!E)}for(let v of d)v.setAttribute(
"aria-pressed",String(y.engaged.includes(v.dataset.gear)));p.value=y.held,f.value=i;for(let v of y.dials){let{box:L,shaftEnd:E}=x.
get(v.shaft),_=v.way>0?"↻":v.way<0?"↺":"";E.setAttribute("transform",`rotate(${v.angle})`);let[A,,M,T]=L.children;A.
textContent=`${v.name}${v.held?", held":v.shaft===i?", your hand":""}`,M.textContent=v.strokes||_?`${_} ${u(v.strokes)}`:
"no stroke",T.textContent=v.figure,L.classList.toggle("tsw-hand",v.shaft===i),L.classList.toggle("tsw-held",v.held),L.setAttribute(
"aria-label",`${v.name}${v.held?", held":""}. ${v.words}`)}o.textContent=y.finding,a.textContent=y.happened,e.dataset.turn=
String(y.turn),B=!1,N()}return k.follow("change:view",h),h(),k.close}function cs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),l=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,l),c=[],
d=[],p=null,f=t.get("plan").lookingOnly,g=(w,u)=>s("button",{type:"button",class:"ts-button","data-verdict":w,"aria-pres\
sed":"false",onclick:()=>S.send({type:"judge",place:p,verdict:w})},u),b=f?[]:[g("stop","Stop here"),g("well","Fine as it\
 is")],m=s("button",{type:"button",class:"ts-button",onclick:()=>S.send({type:"next"})},"Another day"),x=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...b);t.get("plan").more&&x.append(m);let S=W({model:t,
el:e},{kind:"rig"});S.show(s("p",{class:"ts-who"},f?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),S.alert,n,s("p",{class:"ts-keys"},f?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),r,i),f||i.after(x);function B(w,u){let h=w!==p;p=w;for(let[y,v]of d.
entries()){let L=c[y][0]===w;v.setAttribute("tabindex",L?"0":"-1"),v.setAttribute("aria-pressed",String(L)),v.classList.
toggle("tsh-chosen",L),L&&u&&(v.focus({preventScroll:!0}),N(v))}h&&S.send({type:"choose",place:w})}function N(w){let u=Tt(
w,".tsh-hit").getBoundingClientRect(),h=r.getBoundingClientRect();(u.left<h.left||u.right>h.right)&&(r.scrollLeft+=u.left-
h.left-(h.width-u.width)/2),(u.bottom<0||u.bottom>innerHeight||u.top<0)&&w.scrollIntoView({block:"nearest"})}function k(){
let w=t.get("plan");c=w.places,r.innerHTML=w.drawing,Tt(r,"svg").setAttribute("role","group"),d=c.map(([u])=>Tt(r,`[data\
-place="${u}"]`)),d.forEach((u,h)=>{u.setAttribute("role","button"),u.setAttribute("aria-label",`${h+1} ${c[h][1]}`),u.addEventListener(
"click",()=>B(c[h][0],!0))}),p=String(t.get("view").chosen),B(p,!1)}r.addEventListener("keydown",w=>{if(ft(w))return;let u=c.
findIndex(([v])=>v===p),h=Math.min(6,c.length),y=u;if(w.key==="ArrowRight")y=u+1;else if(w.key==="ArrowLeft")y=u-1;else if(w.
key==="ArrowDown")y=u+h;else if(w.key==="ArrowUp")y=u-h;else if(w.key==="Home")y=0;else if(w.key==="End")y=c.length-1;else if(w.
key!=="Enter"&&w.key!==" ")return;w.preventDefault(),y>=0&&y<c.length&&B(c[y][0],!0)});function C(){let w=t.get("view");
n.textContent=w.finding;let u=c.findIndex(([v])=>v===w.chosen);o.textContent=`${u+1}  ${c[u][1]}`,a.textContent=w.seen;let{
verdict:h,...y}=w.told;if(l.replaceChildren(),h){let v=w.judged[w.chosen],L=v==="stop"==(h==="Stop here."),E=v==="stop"?
"Stop here":"Fine as it is";l.append(s("p",{class:"tsh-verdict"},L?`✓ Yes: ${h}`:`✗ You said “${E}”. The course sa\
ys: ${h}`),s("dl",{class:"ts-facts"},...Object.entries(y).flatMap(([_,A])=>[s("dt",{},_),s("dd",{},A)])))}for(let v of b)
v.setAttribute("aria-pressed",String(w.judged[w.chosen]===v.dataset.verdict));for(let[v,L]of d.entries()){let E=w.judged[c[v][0]];
L.setAttribute("aria-label",`${v+1} ${c[v][1]}${E?`, judged: ${E==="stop"?"stop here":"fine as it is"}`:""}`);let _=L.querySelector(
".tsh-tag");if(!E){_?.remove();continue}_||(_=P("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),L.
append(_)),_.textContent=E==="stop"?"■ stop":"○ well"}e.dataset.turn=w.chosen}let $=()=>{k(),C()};return S.follow("c\
hange:plan",$),S.follow("change:view",C),$(),S.close}function ds({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),l=new Map,c=n.sliders.map(([g,b,m,x,S,B])=>{let N=tt(g.replace("_","-")),k=s("output",{class:"\
tsl-figure",for:N}),C=s("input",{id:N,type:"range",min:x,max:S,step:B,oninput:()=>{$(),p.send({type:"set",name:g,value:Number(
C.value)})}}),$=()=>{k.textContent=`${C.value} ${m}`,C.setAttribute("aria-valuetext",`${C.value} ${m==="°"?"degrees":m}`)};
return l.set(g,{slider:C,say:$}),s("div",{class:"tsl-row"},s("label",{for:N},b),C,k)}),d=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>p.send({type:"set",name:"grip",value:d.value})},...ct(n.grips)),p=W({model:t,el:e},{kind:"r\
ig"});p.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),p.alert,r,s("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...c,s("div",{class:"tsl-row"},s("span",{},"Grip"),d)),a,o,s("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function f(){let g=t.get("vi\
ew");r.textContent=g.finding,o.textContent=g.sum,a.innerHTML=g.drawing;for(let[b,{slider:m,say:x}]of l)document.activeElement!==
m&&(m.value=g.sizes[b]),x();d.value=g.sizes.grip}return p.follow("change:view",f),f(),p.close}var ee={x:90,y:120,perMm:20,radius:82,bevel:30};function mn(t){let e=P("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=ee;e.append(P("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),V(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let f=0;f*t.pitch<=t.top;f+=1){let g=n+f*t.pitch*o;if(f%2){e.append(V(g,
r,g,r+18,"tsi-fine"));continue}let b=f/2;e.append(V(g,r,g,r-(b%5?18:27),b%5?"tsi-fine":"tsi-bold")),b%5===0&&e.append(Q(
g,r-33,String(b)))}let l=P("g",{});e.append(l,Q(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway. Th\
imble: 50 lines a turn.","start"));let i=P("path",{d:`M0 ${r-a+14}L${ee.bevel} ${r-a}L${ee.bevel} ${r+a}L0 ${r+a-14}Z`,class:"\
tsi-body"}),c=P("rect",{x:ee.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),d=P("rect",{x:0,y:r-a,width:760,height:2*
a,fill:"var(--ts-paper)"}),p=P("g",{});return l.append(d,i,c,p),{node:e,set(f){l.setAttribute("transform",`translate(${n+
f.mm*o} 0)`),p.replaceChildren();for(let g=0;g<t.lines;g+=1){let b=g-f.line;b-=t.lines*Math.round(b/t.lines);let m=b/t.lines*
2*Math.PI;if(Math.abs(m)>1.15)continue;let x=r-(a-8)*Math.sin(m),S=g%5===0;p.append(V(0,x,S?26:16,x,S?"tsi-bold":"tsi-fi\
ne")),S&&p.append(Q(36,x+5,String(g),"start"))}e.setAttribute("aria-label",`${t.name}. ${f.words}`)}}}function us(t){return At(
t,(e,n,r)=>{let o=mn(e),a=ut("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, out to the\
 right",onInput:c=>n({open:c})}),l=dt("Between the faces",e.between,r.between,c=>n({between:c,open:e.top})),i=e.hands.length?
dt("Close it",e.hands,r.hand,c=>n({hand:c})):null;return{picture:o.node,controls:[St(l.row,i?.row),St(q("Close until it \
rests",()=>n({open:-1})),q("Open",()=>n({open:e.top}))),a.row],set(c,d){o.set(c),a.box.value=String(Math.max(0,c.mm)),l.
box.value=d.between}}})}function ps({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[c,d,p]of n.checks){let f=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${d}`,onclick:()=>{
f.getAttribute("aria-disabled")!=="true"&&l.send({type:"make",check:c})}},"Make"),g=Nt("it shows",!1);g.classList.add("t\
sk-shown"),a.set(c,{button:f,shown:g}),o.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},d),Nt("min",!0,
`${p}`),Nt("",!1,f),g))}let l=W({model:t,el:e},{kind:"rig"});l.show(s("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),l.alert,r,te("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));
function i(){let c=t.get("view");r.textContent=c.finding;for(let[d,{button:p,shown:f}]of a){let g=c.shown[d];p.setAttribute(
"aria-disabled",g?"true":"false"),p.classList.toggle("ts-off",!!g),p.textContent=g?"Made":"Make",f.textContent=g?`${g[0]?
"✓":"✗"} ${g[1]}`:"",f.classList.toggle("tsk-failed",!!g&&!g[0])}}return l.follow("change:view",i),i(),l.close}function wn(){let t=P("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=P("g"),n=P("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(P("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,P("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=l=>(-135+270*l)*Math.PI/180,o="";function a([l,i,c]){e.replaceChildren();for(let d=0;d*i<=l+
1e-9;d+=1){let p=r(d*i/l),f=d%c===0,g=b=>[110+b*Math.sin(p),104-b*Math.cos(p)];if(e.append(V(...g(f?72:79),...g(88),f?"t\
sg-mark tsg-long":"tsg-mark")),f&&d%(2*c)===0){let[b,m]=g(58);e.append(Q(b,m+4.5,String(Number((d*i).toFixed(2)))))}}e.append(
Q(110,170,"kN"))}return{node:t,set(l,i,c){String(l)!==o&&(o=String(l),a(l));let d=Math.min(i/l[0],1.03);n.setAttribute("\
transform",`translate(110 104) rotate(${-135+270*d})`),t.setAttribute("aria-label",c)}}}function fs(t){return At(t,(e,n,r)=>{
let o=wn(),a=s("div",{class:"tsp-section"}),l="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),c=ut("Push",{min:0,max:100,step:1,value:r.travel,onInput:g=>n(
{travel:g}),words:g=>g>=100?"at the shoulder":`${g} % of the way`}),d=[c.row],p=null;if(!e.readingsOnly){let g=dt("Part",
e.places,r.place,S=>n({place:S,travel:0}));p=dt("Driver bears on",e.drivers,r.driver,S=>n({driver:S,travel:0}));let b=dt(
"Seat",e.seats,r.seat,S=>n({seat:S})),m=ut("Pair",{min:0,max:100,step:1,value:r.grip,onInput:S=>n({grip:S}),words:S=>S===
0?"loosest of the fit":S===100?"tightest of the fit":`${S} % from loosest to tightest`}),x=ut("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:S=>n({warmth:S}),words:S=>`${S} °C`});d.unshift(St(g.row,p.row,b.row),
m.row,x.row)}let f=s("dl",{class:"ts-facts"});return e.readingsOnly||d.push(f),{picture:i,controls:d,set(g,b){g.section!==
l&&(l=g.section,a.innerHTML=l),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*b.travel/
100} 0)`),o.set(g.gauge,g.force,g.words),Number(c.box.value)!==b.travel&&document.activeElement!==c.box&&c.set(b.travel),
p&&(p.row.hidden=!g.drives),g.facts&&f.replaceChildren(...xt(g.facts))}}})}function hs({model:t,el:e}){let n=t.get("steps"),r=t.get("reach"),o=new Map(n.map(([$],w)=>[$,w])),a=s("div",{class:"ts-\
scroll"}),l=s("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=s(
"p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts-sentences"}),d=s("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...ct(n.map(([$,w],u)=>[$,`${u+1}  ${w}`]))),p=s("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),f=W({model:t,el:e},{kind:"rig",lost(){d.disabled=!0}});f.show(f.alert,s("p",{class:"ts-f\
inding"},t.get("finding")),s("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",d),
p),a,s("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,l,c),a.innerHTML=t.get("figure");let g=Tt(a,"svg");g.setAttribute("role","group");let b=nt(g,".tsf-step").sort(
($,w)=>Number($.dataset.step)-Number(w.dataset.step)),m=nt(g,".tsf-rule").map($=>({node:$,ends:String($.dataset.rule).split(
"-").map(Number)}));b.forEach(($,w)=>{$.setAttribute("role","button"),$.setAttribute("aria-label",`${w+1} ${n[w][1]}, ${r[w].
before.length} before it, ${r[w].after.length} after it`),$.addEventListener("click",()=>B(w,!0))});let x=Number(o.get(t.
get("near").step));function S($){let w=new Set(r[x].before),u=new Set(r[x].after);b.forEach((L,E)=>{L.setAttribute("tabi\
ndex",E===x?"0":"-1"),L.setAttribute("aria-pressed",String(E===x)),L.classList.toggle("ts-chosen-step",E===x),L.classList.
toggle("ts-before-it",w.has(E)),L.classList.toggle("ts-after-it",u.has(E)),L.classList.toggle("ts-either",E!==x&&!w.has(
E)&&!u.has(E))});let h=L=>L===x||w.has(L)||u.has(L);for(let{node:L,ends:E}of m){let _=w.has(E[0])&&(E[1]===x||w.has(E[1]))||
u.has(E[1])&&(E[0]===x||u.has(E[0]));L.classList.toggle("ts-either",!(_&&E.every(h)))}d.value=n[x][0],$&&b[x].focus({preventScroll:!0});
let y=b[x].getBoundingClientRect(),v=a.getBoundingClientRect();(y.left<v.left+16||y.right>v.right-16)&&(a.scrollLeft+=y.
left-v.left-v.width/2)}function B($,w){x=$,S(w),f.send({type:"choose",step:n[$][0]})}let N=$=>{let u=Tt(b[$],"rect").getBBox();
return{x:u.x,y:u.y}};function k($){let w=N(x),u=v=>v.sort((L,E)=>Math.abs(N(L).y-w.y)-Math.abs(N(E).y-w.y))[0];if($==="A\
rrowRight")return u(m.filter(({ends:v})=>v[0]===x).map(({ends:v})=>v[1]));if($==="ArrowLeft")return u(m.filter(({ends:v})=>v[1]===
x).map(({ends:v})=>v[0]));let h=b.map((v,L)=>L).filter(v=>Math.abs(N(v).x-w.x)<2&&v!==x),y=$==="ArrowUp"?-1:1;return u(h.
filter(v=>(N(v).y-w.y)*y>0))}g.addEventListener("keydown",$=>{if(!ft($))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes($.key)){let w=k($.key);w!==void 0&&B(w,!0),$.preventDefault()}else($.key==="Enter"||$.key===" ")&&$.preventDefault()}),
d.addEventListener("change",()=>B(Number(o.get(d.value)),!1)),p.addEventListener("click",()=>{let $=a.classList.toggle("\
ts-fit");p.setAttribute("aria-pressed",String($)),S(!1)});function C(){let $=t.get("near");i.textContent=$.words,l.innerHTML=
$.figure,c.replaceChildren(...Dt($.sentences))}return f.follow("change:near",C),C(),requestAnimationFrame(()=>S(!1)),f.close}function bn(){let t=P("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=P("g",{}),n=P("g",{});return e.append(
P("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),V(150,164,150,98,"tsi-bold"),P("circle",{cx:150,cy:98,r:5,class:"tsg-h\
ub"})),n.append(V(150,86,150,40,"tsi-plunger"),P("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,V(50,164,250,
164,"tsg-centre"),V(150,250,150,80,"tsg-centre"),n,Q(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute("t\
ransform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function gs(t){
return At(t,(e,n,r)=>{let o=qt(),a=bn(),l=ut("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:d=>`turn\
ed by ${d}°`,onInput:d=>n({angle:d})}),i=dt("Plunger",e.pressed,r.pressed,d=>n({pressed:d})),c=dt("Stand",e.tilts,r.tilt,
d=>n({tilt:d}));return{picture:s("div",{class:"tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[St(i.row,c.row),l.row],set(d,p){o.set(d.mm,d.words),a.set(d.state.angle,Number(d.
state.tilt),`Shaft end on, turned by ${d.state.angle}°; the plunger stands ${d.state.tilt}° off square. Not to scale.`),
l.set(p.angle)}}})}var ws=(t,e)=>(t+e)%7<2,bs=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,ne=()=>!1,se=t=>(e,n)=>n%t===0,vn={"":ne,dots:(t,e)=>t%6<2&&e%
6<2,rising:ws,cross:bs,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":ne,"lines-2":se(14),"lines-3":se(8),"lines-4":se(5),"lines-5":se(
3)};function yn(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var ms=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function vs(t,[e,n],r,o,a){let l=n*4,i=new Uint32Array(l*e*4),c=new Map(r.map(([f,,g,b])=>{let m=g?ms(yn(g),200):
0;return[f,{ground:m,hatch:vn[b]??ne}]})),d={ground:0,hatch:ne},p=ms(o,190);for(let f=0;f<e;f+=1){let g=(e-1-f)*4;for(let b=0;b<
n;b+=1){let m=t[f*n+b];if(!m)continue;let{ground:x,hatch:S}=c.get(m&15)??d,B=a&&(m&16)!==0,N=a&&(m&32)!==0;for(let k=g;k<
g+4;k+=1)for(let C=b*4;C<(b+1)*4;C+=1){let $=S(C,k)||B&&ws(C,k)||N&&bs(C,k);i[k*l+C]=$?p:x}}}return i}var xn=600;function ks(t,e,n,r,o,a){let[l,i]=n;t.width=i*4,t.height=l*4;let c=new Uint8ClampedArray(vs(e,n,r,o,a).buffer),
d=new ImageData(c,t.width,t.height);t.getContext("2d")?.putImageData(d,0,0)}function $n(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return ks(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function xs({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),l=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),c=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),d=W({model:t,el:e},{kind:"rig",lost(){g.setDisabled(!0),Ut(e)}}),p=null,f=M=>{p=tt("turn"),d.send({...M,turn:p})},
g=Jt({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(M){g.
drawing.strokes(M),f({type:"lay",entries:M})},onRemove:M=>f({type:"remove",at:M}),onClear:()=>f({type:"clear"})}),b=q("C\
lose the face",()=>f({type:"shut",closed:!t.get("view").closed})),m=s("input",{type:"range",id:tt("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),x=s("output",{for:m.id}),S=Mt({id:tt("slide"),onchange:()=>f({type:"slide",by:S.value})},
t.get("view").slides),B=null;m.addEventListener("input",()=>{x.textContent=`${m.value} µm`;let M={type:"flat",um:Number(
m.value)};p===null?f(M):B=M});let{box:N,unit:k}=g.drawing;g.drawing.land.classList.add("tsp-clear"),g.drawing.frame.prepend(
c);let C=(...M)=>s("span",{class:"ts-pair"},...M);d.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),d.alert,o,g.drawing.frame,i,s("div",{class:"ts-tools"},b,C(s("label",{for:S.id},"the other face is"),S),C(a,q("1 m\
inute passes",()=>f({type:"time",by:1})),q("5 minutes pass",()=>f({type:"time",by:5}))),C(s("label",{for:m.id},"faces ou\
t of flat by"),m,x)),g.tools,l,s("details",{class:"ts-keys"},s("summary",{},"Passes laid"),g.empty,g.list));function $(){
let M=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return M?M.slice(0,3).map(Number):[0,0,0]}let w="",u="";function h(){
let M=t.get("view"),T=r[M.closed?"closed":"film"],O=t.get("grid"),R=O instanceof DataView?new Uint8Array(O.buffer,O.byteOffset,
O.byteLength):new Uint8Array(O);ks(c,R,M.shape,T,$(),!M.closed);let[z,G]=M.shape,[wt,et]=[M.corner[0]-M.pitch/2,M.corner[1]-
M.pitch/2],H=(X,st)=>`${(100*X/st).toFixed(3)}%`;c.style.left=H(wt-N.left,N.width),c.style.width=H(G*M.pitch,N.width),c.
style.top=H(N.high-et-z*M.pitch,N.height),c.style.height=H(z*M.pitch,N.height);let F=new Set(R.map(X=>M.closed?X:X&15)),
U=T.filter(([X])=>F.has(X)),at=`${U.map(([,X])=>X)} ${$()}`;at!==w&&(w=at,i.replaceChildren(...U.map(X=>$n(X,$()))))}let y=P(
"g");g.drawing.over.append(y);let v=([M,T])=>[M-N.left,N.high-T];function L([M,T]){let O=T.map(R=>{let[z,G]=v(R);return`\
M${z.toFixed(1)} ${G.toFixed(1)}h0.01`});return P("path",{d:O.join(""),class:"tsp-lump","stroke-width":2*M})}function E(M){
let[T,O]=v(M[M.length-1]),R=`M${T-1.3*k} ${O-k}h${2.6*k}l${-1.3*k} ${2.2*k}Z`;return[P("path",{d:g.drawing.path(M),class:"\
tsp-way","stroke-width":k}),P("path",{d:R,class:"tsp-out"})]}function _(){let M=t.get("view");if(p!==null&&M.turn!==p)return;
p=null;let T=JSON.stringify([M.entries,M.notes]);if(T!==u&&g.show(M.entries,M.notes),u=T,g.drawing.strokes([]),h(),y.replaceChildren(
...M.lumps.map(L),...M.leaks.flatMap(E)),g.drawing.svg.classList.toggle("tsp-shut",M.closed),g.drawing.svg.classList.toggle(
"tsp-clean",M.closed||M.clean),o.textContent=M.finding,S.value=M.slide,a.textContent=`minute ${M.minute}`,b.textContent=
M.closed?"Lift the face off again":"Close the face",B===null&&(m.value=String(M.flat),x.textContent=`${M.flat} µm`),l.replaceChildren(
...xt(M.facts)),B===null)return;let O=B;B=null,f(O)}d.follow("change:view",_),d.follow("msg:custom",M=>{M.type==="troubl\
e"&&(p=null,g.drawing.strokes([]))});let A=new MutationObserver(()=>setTimeout(h,xn));return A.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),_(),()=>{d.close(),A.disconnect()}}function $s(t){return At(t,(e,n,r)=>{let o=qt(),a=s("div",{class:"tsp-section"}),l="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),c=e.places.map(([p,f])=>[p,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:p})},f)]),d=[s("p",{class:"ts-hint"},e.rule),St(s("span",{},"Set the gauge down at"),...c.map(([,p])=>p))];
return e.readingsOnly||(d.push(St(dt("Lip looks towards",e.sides,r.lip,p=>n({lip:p})).row,dt("Lip is",e.greases,r.grease,
p=>n({grease:p})).row,e.sleeves.length?dt("It went",e.sleeves,r.sleeve,p=>n({sleeve:p})).row:"")),d.push(ut("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:p=>`${p.toFixed(2)} mm${p<0?", proud":""}`,onInput:p=>n({
depth:p})}).row,ut("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:p=>p?`${p.toFixed(2)} mm across`:"square",onInput:p=>n(
{lean:p})}).row)),{picture:i,controls:d,set(p,f){p.section!==l&&(l=p.section,a.innerHTML=l),a.querySelector(".tsl-moving")?.
setAttribute("transform",p.placed),o.set(p.dial,p.words);for(let[g,b]of c)b.setAttribute("aria-pressed",String(g===f.place))}}})}function Ss({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=qt(),a=n.readingsOnly?null:es(n),l=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),c=Kt((w,u)=>B.send({type:"set",state:w,turn:u})),d=w=>{r={...r,...w},c.ask(r)},
p=(w,u)=>{let h=[...r.shims];h[w]=u,d({shims:h.filter(Boolean),turns:0})},f=(w,u,h)=>q(w,u,{"aria-pressed":h}),g=q("Turn\
 the shaft ten times",()=>d({turns:r.turns+10})),b=f("Pull the shaft away",()=>d({side:"away"}),"true"),m=f("Push it to \
the dial",()=>d({side:"towards"}),"false"),x=dt("Plunger",n.plungers,r.plunger,w=>d({plunger:w})),S=[s("div",{class:"ts-\
tools"},n.rolls?g:null,x.row,b,m)];if(!n.readingsOnly){let w=dt("Shim",n.shelf,r.shims[0],h=>p(0,h)),u=n.second?dt("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",h=>p(1,h)):null;S.unshift(s("div",{class:"ts-tools"},w.row,u?.row)),S.
push(ut("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:h=>d({warmth:h}),words:h=>h?`case ${Math.round(n.caseRise*
h/100)} K warmer`:"cold, as at the bench"}).row)}let B=W({model:t,el:e},{kind:"rig"}),N=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});N.innerHTML=n.section;let k=[s("p",{class:"ts-who"},n.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),B.alert,s("div",{class:"\
tsg-beside"},N,s("div",{class:"tsg-gauge"},o.node,s("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...S,l,
a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];B.show(...k.filter(Boolean));function C(){let w=t.get("show\
n");c.waiting||(r=w.state),o.set(w.dial,w.dialWords),b.setAttribute("aria-pressed",String(w.state.side==="away")),m.setAttribute(
"aria-pressed",String(w.state.side==="towards")),l.textContent=w.finding,a&&(a.set(w.cold,w.warm,w.words.join(" ")),i.replaceChildren(
...w.words.map(u=>s("p",{},u)))),c.answered(w.turn)}let $=()=>c.free();return B.follow("change:shown",C),B.follow("msg:c\
ustom",$),C(),B.close}function Ls({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),l=s("dl",{class:"ts-facts"}),i=null,c=null,d=(u,h)=>{c={...c,[u]:h},i===null&&p()};function p(){
i=tt("choice"),C.send({type:"choose",chosen:c,turn:i}),c=null}let f=s("div",{class:"tsj-settings"}),g=(u,h,y)=>{let v=tt(
"set");return h.id=v,f.append(s("label",{for:v},u),s("span",{class:"tsj-slide"},h,y)),h},b=(u,h,y)=>g(h,s("select",{class:"\
ts-box",onchange:v=>d(u,v.target.value)},...ct(y.map(v=>typeof v=="string"?[v,v]:v)))),m=(u,h,y)=>g(h,s("input",{type:"r\
ange",oninput:v=>d(u,Number(v.target.value))}),y),x={group:b("group","Bolt of the unit",n.groups),thread:b("thread","Thr\
ead",n.threads),strength:b("strength","Strength class",n.classes),state:b("state","State of the thread",n.states),tool:b(
"tool","Tool",n.tools)},S=s("output",{class:"tsj-figure"}),B=m("torque_nm","Torque",S),N=s("output",{class:"tsj-figure"}),
k=m("engagement_mm","Thread that meets",N),C=W({model:t,el:e},{kind:"rig"});C.show(s("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),C.alert,r,o,s("div",{class:"tsj-bench"},f,a),l);let $=(u,h,y,v,L,E)=>{Ct(u,{min:h,max:y,
step:v}),i===null&&(u.value=String(L)),u.setAttribute("aria-valuetext",E)};function w(){let u=t.get("view");if(i!==null&&
u.turn!==i)return;i=null,c!==null&&p();let{chosen:h}=u;r.textContent=u.finding,o.innerHTML=u.band,a.innerHTML=u.section,
l.replaceChildren(...xt(u.facts));for(let[y,v]of Object.entries(x))v.value=h[y];$(B,1,u.topTorque,.5,h.torque_nm,u.torqueText),
S.textContent=u.torqueText,$(k,u.lowEngagement,u.topEngagement,.5,h.engagement_mm,u.engagementText),N.textContent=u.engagementText}
return C.follow("change:view",w),w(),C.close}function Cs({model:t,el:e}){let n=Qt(t.get("picture")),r=W({model:t,el:e},{kind:"rig"});return r.show(r.alert,s("p",{class:"\
ts-finding"},t.get("finding")),...n.nodes),r.close}function Ft(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function me(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var ge=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function Ms(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let l=Ft(e,
n),i=l.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let d=e.map(([g])=>g),p=t==="ArrowLeft"?-1:1,f=Ft(e,d[(d.
indexOf(n)+p+d.length)%d.length]);return f.find(a)??f[0]}if(t==="ArrowDown")return l[Math.min(i+1,l.length-1)];if(t==="A\
rrowUp")return l[Math.max(i-1,0)];if(t==="Home")return l[0];if(t==="End")return l.at(-1);if(t.length!==1||t===" ")return;
let c=t.toLowerCase();return ge(l,i).find(d=>o[d].toLowerCase().startsWith(c))}function As({stages:t,stage:e,step:n,isOpen:r}){
let o=Ft(t,e),a=t.flatMap(([,,i])=>i),l=a.indexOf(String(o.at(-1)));return ge(o,o.indexOf(String(n))).find(r)??ge(a,l).find(
r)}function Es({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>wt()},
...ct(n.stages.map(([D,K])=>[D,K]))),l=Z(n.marked?"Next open step":"Next ready step",()=>M("next"));l.classList.add("ts-\
next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this stag\
e",onkeydown:D=>O(D)}),c=s("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the st\
age, Enter takes a step in hand; Enter again does it."),d=s("div",{class:"ts-hand",role:"group","aria-label":"Step in ha\
nd",onkeydown:D=>{D.key!=="Enter"||!D.target.matches("input[type=radio], .ts-number-box")||(D.preventDefault(),t.get("ha\
nd").stands?z():st())}}),p=s("div",{class:"ts-scroll ts-fit"}),f=s("dl",{class:"ts-facts"}),g=s("ul",{class:"ts-sentence\
s"}),b=s("p",{class:"ts-prompt"},"Wrong so far"),m=s("select",{class:"ts-box ts-before","aria-label":"A step that stands"}),
x=Z("Take out again",()=>{m.value&&u({type:"out",step:m.value},"hand")}),S=Z("Put the tools down",()=>u({type:"over"},"t\
old"));S.classList.add("ts-over");let B=s("div",{}),N=s("p",{class:"ts-status"}),k=s("details",{ontoggle:()=>{k.open!==!!t.
get("view").record&&u({type:"record",open:k.open})}},s("summary",{},"Build record"),B),C=W({model:t,el:e},{kind:"rig"});
C.show(s("p",{class:"ts-who"},n.who),C.alert,r,N,o,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"\
ts-tools"},a,l),i,c),d),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},m,x),S),p,f,b,g,k);let $=0,w=null;function u(D,K=null){
$+=1,w=K&&{turn:$,focus:K},e.setAttribute("aria-busy","true"),C.send({...D,turn:$})}let h="",y=null,v="next",L=D=>!t.get(
"view").done.includes(D),E=()=>nt(i,"[data-step]"),_=D=>E().find(K=>K.dataset.step===D)?.focus(),A=()=>({stages:n.stages,
stage:a.value,step:y,isOpen:L});function M(D,K){v=D,u(D==="list"?{type:"take",step:K}:{type:"next"},"hand")}function T(D){
a.value=me(n.stages,D)??a.value,y=D,wt(),_(D)}function O(D){if(ft(D))return;let K=Ms(D.key,{...A(),labels:n.labels});K&&
(D.preventDefault(),T(K))}function R(){let D=As(A());D?v==="next"?l.focus():T(D):S.focus()}function z(){let D=t.get("vie\
w").done.length>=Object.keys(n.labels).length;v==="next"&&!D?M("next"):R()}function G(D){let{done:K,ready:ot}=t.get("vie\
w");return K.includes(D)?{sign:"✓",word:"done"}:ot.includes(D)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"op\
en":"waits"}}function wt(){let D=Ft(n.stages,a.value);(y===null||!D.includes(y))&&(y=D.find(L)??D[0]);let K=t.get("hand").
step,ot=JSON.stringify([a.value,D.map(G),K]);if(ot===h){for(let pt of E())pt.tabIndex=pt.dataset.step===y?0:-1;return}h=
ot;let lt=E().find(pt=>pt===document.activeElement)?.dataset.step;i.replaceChildren(...D.map(pt=>et(pt,K))),lt&&_(lt)}function et(D,K){
let{sign:ot,word:lt}=G(D);return s("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${lt}`,"data-step":D,
tabindex:D===y?"0":"-1","aria-current":D===K?"step":!1,"aria-label":`${n.labels[D]}: ${lt}`,onclick:()=>{y=D,M("list",D)}},
Ot(ot),n.labels[D])}let H="",F=new Map;function U(D){let K=Rt(D),ot=s("p",{class:"ts-read",id:K.read,role:"status"}),lt=0,
pt=j=>{u({type:"set",name:D.name,value:j}),lt=$},ht=Pt(D).make(D,K,pt,()=>{}),I=Ht(D,K,null);return I.append(ht.element,
ot),I.dataset.field=D.name,{element:I,flush:()=>ht.flush?.(),show(j={},Y){if(Y<lt)return;ht.show(j);let it=j.read?`read \
as ${j.read}`:"";ot.textContent=j.error?`▲ Look again: ${j.error}`:it}}}let at=D=>s("dl",{class:"ts-facts"},...xt(D));
function X(){let D=t.get("hand"),K=JSON.stringify(D);if(K===H)return;if(H=K,d.dataset.stands=String(!!D.stands),F=new Map(
(D.fields??[]).map(ht=>[ht.name,U(ht)])),!D.step){d.replaceChildren(s("p",{class:"ts-hint"},"No step in hand. Choose one\
 from the list, or press the button above it."));return}let ot=Z(`Do it: ${D.label}`,st);ot.classList.add("ts-do");let lt=D.
stands?[Z("Go on",z),Z("Take it out again",()=>u({type:"out",step:D.step},"hand"))]:[ot];d.replaceChildren(s("p",{class:"\
ts-prompt ts-hand-name",tabindex:"-1"},D.label),...D.plain.map(ht=>s("p",{class:"ts-hint"},ht)),...D.cautions.map(ht=>s(
"p",{class:"ts-caution"},s("b",{},"Take care: "),ht)),...D.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),at(
D.read)]:[],...D.card.length?[at(D.card)]:[],...[...F.values()].map(ht=>ht.element),s("div",{class:"ts-tools"},...lt));let pt=me(
n.stages,D.step);pt&&([a.value,y]=[pt,D.step])}function st(){for(let D of F.values())D.flush();u({type:"do"},"after")}function bt(){
let D=t.get("view").asked_back,K=nt(d,"[data-field]").find(pt=>pt.dataset.field===D),ot=K&&nt(K,"input:not(:disabled), s\
elect, button"),lt=nt(d,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");
return ot?.[0]??lt[0]}function yt(){let D=t.get("view"),K=D.told;r.textContent=D.finding,N.textContent=D.status,N.hidden=
!D.status,o.textContent!==K.join("")&&o.replaceChildren(...K.map(lt=>s("p",{},lt))),X(),wt();for(let[lt,pt]of F)pt.show(
D.states[lt],D.turn);if(p.dataset.shown!==D.figure&&(p.innerHTML=D.figure,p.dataset.shown=D.figure),f.replaceChildren(...xt(
D.facts)),g.replaceChildren(...Dt(D.faults.map(([,lt])=>lt))),b.hidden=g.hidden=!D.faults.length,Et(D.done),B.innerHTML=
D.record,k.open=!!D.record,e.setAttribute("aria-busy",String(D.turn<$)),!w||D.turn<w.turn)return;let{focus:ot}=w;w=null,
ot==="told"?o.focus():ot==="after"&&!t.get("hand").step?R():(bt()??l).focus()}function Et(D){if(m.disabled=x.disabled=!D.
length,m.dataset.done===D.join(" "))return;m.dataset.done=D.join(" ");let K=[...D].reverse();m.replaceChildren(...ct(K.map(
ot=>[ot,n.labels[ot]])))}return C.follow("change:view",yt),yt(),C.close}function Sn(t){let e=P("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=V(r,
o,r,o,"tsi-adapter"),l=P("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=V(r,o+74,r,o+74,"tsi-arm"),c=Q(r,o+94,"");return e.
append(V(r,o,r+440,o,"tsi-lever"),a,l,P("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),Q(r+440,o-20,"hand, middle of the grip",
"end"),Q(r+20,o-20,"square drive","start"),V(r+440,o+10,r+440,o+84,"tsg-centre"),i,c,Q(8,242,"lengths to scale","start")),
{node:e,set(d){let p=d.state.angle/180*Math.PI,f=r-d.state.reach*n*Math.cos(p),g=o-d.state.reach*n*Math.sin(p);Ct(a,{x2:f,
y2:g}),Ct(l,{cx:f,cy:g}),Ct(i,{x1:f,x2:r+440}),Ct(c,{x:(f+r+440)/2}),c.textContent="the lever from bolt to hand, along t\
he wrench",e.setAttribute("aria-label",`${t.name}. ${d.words}`)}}}function Os(t){return At(t,(e,n,r)=>{let o=Sn(e),a=(i,c,d,p,f,g)=>ut(
i,{min:d,max:p,step:f,value:r[c],words:b=>`${b} ${g}`,onInput:b=>n({[c]:b})}),l={setting:a("Setting","setting",e.low,e.high,
e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("Angle of the adapter","angl\
e",0,180,5,"° off straight")};return{picture:o.node,controls:Object.values(l).map(i=>i.row),set(i,c){o.set(i);for(let[d,
p]of Object.entries(l))p.set(c[d])}}})}function we(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=l=>String(l).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var Ln="twoshaft-unsent:";function Ts(t,e){let n=Ln+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,l,i,c=new Date)=>o({...r(),[a]:{value:l,
base:i,at:c.toISOString()}}),drop(a){let{[a]:l,...i}=r();l&&o(i)}}}function Ns(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var jt=null,Cn="input, button, select, textarea, summary, a, [tabindex]",Is=t=>[...t.querySelectorAll(Cn)];function Ds(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?jt={form:e,at:Is(t).indexOf(a),from:null}:jt?.form===e&&t.
isConnected&&(jt=null))},r=({target:a})=>{jt?.form===e&&a instanceof HTMLInputElement&&(jt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(jt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:l}=jt,i=Is(t)[a];i?.focus({preventScroll:!0}),
l!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(l,l)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}function Bs(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let l=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),c=q("Use these figures",()=>g("yes")),d=q(
"Go back to the drawn figures",()=>g("no")),p=!1,f=a.map(m=>{let x=tt("bench"),S=m.options.length?s("select",{class:"ts-\
box",id:x,"aria-describedby":`${x}-read`},s("option",{value:""},"choose"),...ct(m.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:x,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${x}-hint ${x}-read`}),
B=s("span",{class:"ts-hint",id:`${x}-hint`},m.hint),N=s("p",{class:"ts-read",id:`${x}-read`}),k=m.text,C=()=>{S.value.trim()!==
k.trim()&&(k=S.value,e({type:"bench",name:m.name,value:S.value}))};return S.addEventListener(m.options.length?"change":"\
blur",C),S.addEventListener("keydown",$=>{$.key==="Enter"&&($.preventDefault(),C())}),{name:m.name,flush:C,input:S,element:s(
"div",{class:"ts-bench-row"},s("label",{for:x},m.prompt),s("div",{class:"ts-line-of"},S,B),N),show($){if(!$)return;(document.
activeElement!==S||S.value===k)&&(S.value=$.text,k=$.text),S.setAttribute("aria-invalid",String(!!$.error)),N.classList.
toggle("ts-error",!!$.error);let w=$.error?[Ot("▲")," "]:[],u=$.read&&!$.options.length&&`read as ${$.read}`,h=$.error||
[u,$.origin].filter(Boolean).join(", ");N.replaceChildren(...w,h)}}}),g=m=>{for(let x of f)x.flush();p=!0,e({type:"bench",
name:"in-use",value:m})};o.append(s("summary",{},l),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),s("div",{class:"ts-bench-rows"},...f.map(m=>m.element)),i,s("div",{class:"ts-tools"},c,d));function b(){
let m=r(),x=new Map(m.rows?.map(k=>[k.name,k]));for(let k of f)k.show(x.get(k.name));l.textContent=m.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",d.hidden=!m.wanted,c.hidden=m.used&&!m.stale;let S=m.wanted&&
!m.used?"▲ ":m.used?"● ":"○ ",B=m.used?"in use":m.wanted?`not used; the drawn figures stand. ${m.refused}`:"not us\
ed; the drawn figures stand",N=m.stale?` The tables and choices of this task are still the ones from before. ${m.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${S}${B}${N}`,m.wanted&&
!m.used&&(o.open=!0)}return{element:o,show:b,hear(m){m.type!=="bench-saved"||m.name!=="in-use"||!p||(p=!1,r().stale&&n())},
lost(){for(let m of[c,d,...f.map(x=>x.input)])m.disabled=!0}}}var Mn=5e3,An=2e3,En={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},be="kept in this browser until it can be\
 saved";function On(t,e,n,r){let o=Pt(t),a=Rt(t),l=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),c=0,d=null,p={},f=()=>{clearTimeout(d??void 0),d=null},g=k=>{n.put(t.name,k,p.revision??0),b(k)},b=k=>{c+=
1,S("wait",r()?be:"saving"),f(),d=window.setTimeout(()=>S("wait",be),Mn),e({type:"save",name:t.name,value:k,turn:c})},m=o.
make(t,a,g,(k,C)=>{k?(n.put(t.name,C,p.revision??0),S("wait","not saved yet: press Enter or leave the box")):d===null&&(n.
drop(t.name),B(p))}),x=Ht(t,a,a.status);o.status==="above"?x.append(i,m.element,l):x.append(m.element,l,i);function S(k,C){
i.className=`ts-status ts-status-${k}`,i.dataset.text!==C&&(i.dataset.text=C,i.replaceChildren(Ot(En[k]),` ${C}`))}function B(k,C=!1){
if(p=k??{},m.show(p),l.replaceChildren(p.read?`read as ${p.read}`:""),!C)if(p.error){let{error:$,saved:w="",note:u}=p;S(
"unread",`Look again: ${$} Kept as typed, ${we(w)}${u?`; ${u}`:""}.`)}else p.saved&&!p.blank?S("saved",`saved ${we(p.saved)}${p.
note?`; ${p.note}`:""}`):S("none",o.blank??"not answered yet")}let N=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:x,show(k){d===null&&B(k,N())},saved(k){k.turn===c&&(m.pending?.()||n.drop(t.name),f(),B(k.state))},refused(k){
k.turn===c&&(f(),m.refused(),S("bad",`not saved: ${k.reason}`))},off(){clearTimeout(d??void 0),(d!==null||m.pending?.())&&
S("wait",be)},catchUp(){let k=n.get(t.name);k&&(Ns(k,p)?(m.show({...p,value:k.value,error:""}),b(k.value)):n.drop(t.name))},
flush:()=>m.flush?.(),summary:()=>({answered:!!p.saved&&!p.blank&&!p.error&&!p.short,unread:!!p.error,trouble:N(),waiting:d!==
null})}}function Ps({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=Ts(window.localStorage,r),a=!1,l=()=>a||f.isLost(),
i=n.map(C=>On(C,b,o,l)),c=new Map(i.map(C=>[C.name,C])),d=s("p",{class:"ts-who"}),p=s("p",{class:"ts-total"}),f=W({model:t,
el:e},{kind:"form",lost(){for(let C of i)C.off();g.lost(),m()},line(C){a=C;for(let $ of i)C?$.off():$.catchUp();m()}}),g=Bs(
t,f.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});f.show(s("div",{class:"ts-top"},d,p),f.
alert,g.element,...i.map(C=>C.element));function b(C){f.send(C),m()}function m(){let C=i.map(L=>L.summary()),$=C.filter(
L=>L.answered).length,w=C.filter(L=>L.trouble).length,u=C.some(L=>L.waiting),h=C.filter(L=>L.unread).length,y=w?`${w} no\
t saved`:u?l()?"the rest kept in this browser":"saving":$&&!h?"all saved":"",v=[`${$} of ${i.length} answered`,h?`${h} c\
annot be read`:"",y];p.textContent=v.filter(Boolean).join(", ")}function x(){d.textContent=t.get("header");let C=t.get("\
states");for(let $ of i)$.show(C[$.name]);m()}let S=0,B=()=>{if(document.visibilityState==="hidden")for(let C of i)C.flush();
document.visibilityState!=="visible"||Date.now()-S<An||(S=Date.now(),f.send({type:"look"}))},N=r?new BroadcastChannel(`t\
woshaft-saved:${r}`):null;N?.addEventListener("message",({data:C})=>{C===t.get("task_id")&&f.send({type:"look"})}),document.
addEventListener("visibilitychange",B),e.addEventListener("focusin",C=>{C.relatedTarget instanceof Node&&e.contains(C.relatedTarget)||
B()}),f.follow("change:states change:header",x),f.follow("msg:custom",C=>{C.type==="saved"&&(c.get(C.name)?.saved(C),N?.
postMessage(t.get("task_id"))),C.type==="refused"&&c.get(C.name)?.refused(C),m()}),f.follow("msg:custom",g.hear),f.follow(
"change:bench",g.show),x();for(let C of i)C.catchUp();m(),g.show(),f.alert.textContent=t.get("notice");let k=Ds(e,`${r}/${t.
get("task_id")}`);return()=>{k(),N?.close(),f.close(),document.removeEventListener("visibilitychange",B)}}function oe(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:l},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:l,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var Tn={right:"●",other:"◆",unread:"▲"};function Nn(t){let e=Rt(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),r=null,o=Pt(t).make(t,e,l=>{r=l,o.show({value:r})},(l,i)=>{l&&(r=i)}),a=Ht(t,e,e.status);return a.append(o.element,
n),{name:t.name,element:a,value(){return o.flush?.(),r},show(l,i){l!==void 0&&(r=l,o.show({value:r,saved:"given"})),n.className=
i?`ts-told ts-told-${i.how}`:"ts-told",n.replaceChildren(...i?It([Ot(Tn[i.how]),s("b",{},i.said),` ${i.why}`]):[])},still(l){
o.setDisabled(l),a.classList.toggle("ts-given",l)}}}function js({model:t,el:e}){let n=W({model:t,el:e},{kind:"form"});e.
classList.add("ts-question");let r=s("p",{class:"ts-lead"}),o=s("dl",{class:"ts-facts"}),a=s("div",{}),l=q(t.get("give"),
()=>{let b=Object.fromEntries(d.map(m=>[m.name,m.value()]));n.send({type:"give",values:b})});l.classList.add("ts-first");
let i=q("",()=>n.send({type:"fresh"})),c=t.get("all")?q(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teach\
er"}):null;n.show(n.alert,r,o,a,s("p",{class:"ts-acts"},l,i,c));let d=[],p=()=>{let b=t.get("values"),m=t.get("told");for(let N of d)
N.show(b[N.name],m[N.name]),N.still(m[N.name]!==void 0&&m[N.name].how!=="unread");let x=d.some(({name:N})=>!m[N]||m[N].how===
"unread"),S=document.activeElement===l;if(l.hidden=!x,i.textContent=t.get("fresh"),i.hidden=x||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!S||x)return;let B=nt(e,".ts-told")[0];B.tabIndex=-1,B.focus({preventScroll:!0})},f=()=>{d=t.get("fields").
map(Nn),a.replaceChildren(...d.map(({element:b})=>b)),r.textContent=t.get("lead"),r.hidden=!r.textContent,o.replaceChildren(
...xt(t.get("facts"))),o.hidden=!o.childElementCount,p()};n.follow("change:fields",f),n.follow("change:told change:value\
s change:notice change:fresh",p),f();let g=t.get("place");if(g){let b=oe(sessionStorage,localStorage,g).get();t.send({type:"\
who",id:b?.id??"",ticket:b?.ticket??""})}return()=>n.close()}var In={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},Dn={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"};function Hs(t,e){let n=document.
getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||"/"}catch{}return`${r}${t}/${e.
split("/").map(encodeURIComponent).join("/")}`}var re=(t,e,n)=>s("a",{href:Hs("lab/tree",t),target:"_blank","data-twosha\
ft-open":t,"data-key":n,class:"ts-link"},e);function Rs(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:r,
unread:o})=>s("li",{},`${e}: `,n===r?"nothing answered":n?`${n} of ${r} missing`:"",...o.map(([a,l])=>s("span",{},s("b",
{},"cannot be read: "),`“${a}” ${l}`)))))}function _s({model:t,el:e}){let n="",r=oe(sessionStorage,localStorage,t.get(
"place")),o=W({model:t,el:e},{kind:"start",lost:()=>{}}),a=s("div",{}),l=s("p",{class:"ts-said",role:"status"});o.show(o.
alert,l,a);let i=(A,M={})=>{a.getAttribute("aria-busy")==="true"||o.isLost()||(M.quietly||(a.setAttribute("aria-busy","t\
rue"),l.textContent="One moment.",o.alert.textContent=""),t.send({type:A,...M}))},c=(A,M,T,O)=>s("button",{type:"button",
class:O?"ts-button ts-first":"ts-button","data-key":M,onclick:T},A);function d(){let A=tt("who"),M=tt("word"),T=s("selec\
t",{id:A,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.get("people").map(([
R,z])=>s("option",{value:R,selected:R===n},z)));T.addEventListener("change",()=>{n=T.value});let O=s("input",{id:M,type:"\
text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data-key":"word"});return s(
"form",{class:"ts-sign-in",onsubmit:R=>{R.preventDefault(),i("sign-in",{name:T.value,word:O.value})}},s("h2",{},"Who is \
working?"),s("div",{class:"ts-pair"},s("label",{for:A},"Your name"),T),s("div",{class:"ts-pair"},s("label",{for:M},"Sign\
-in word from your slip"),O),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},"Sign in"),s("p",
{class:"ts-hint"},t.get("kept")))}function p(A,M){let T=et=>`${et}:${A.name}`,O=s("div",{class:"ts-doing"});for(let et of A.
feedback.slice(0,1))O.append(s("a",{href:Hs("files",et),target:"_blank",class:"ts-link","data-key":T("feedback")},"Read \
feedback"));for(let et of A.notebooks){let H=A.notebooks.length===1?"Open":`Open ${et.split("/").pop()}`;O.append(re(et,
H,T(`open ${et}`)))}A.can_get&&O.append(c(A.notebooks.length?"Get again":"Get",T("get"),()=>i("get",{name:A.name}),!A.notebooks.
length)),A.can_hand_in&&O.append(c(A.receipt?"Hand in again":"Hand in",T("hand in"),()=>i("hand-in",{name:A.name})));for(let et of O.
children)et.setAttribute("aria-label",`${et.textContent}: ${A.title}`);let R=t.get("asking")===A.name,z=A.receipt||A.unread>
0,G=s("tr",{},s("th",{scope:"row"},A.title),s("td",{},A.due||"no date",A.overdue?s("span",{class:"ts-small-line"},"date \
passed"):null),s("td",{},s("span",{class:"ts-shape","aria-hidden":"true"},In[A.state]||""),s("b",{},Dn[A.state]||A.state),
s("span",{class:"ts-small-line"},A.detail),M?s("span",{class:"ts-small-line"},`Mark: ${M}`):null),s("td",{},O));if(R)return[
G,s("tr",{},s("td",{colspan:4},g(A)))];if(!z||!A.gaps.length)return[G];let wt=s("td",{colspan:4},s("b",{},f(A)),Rs(A.gaps));
return[G,s("tr",{},wt)]}let f=({left:A,unread:M})=>It([A?`${A} ${A===1?"answer is":"answers are"} missing`:null,M?`${M} \
cannot be read`:null]).join(", ");function g(A){let M=tt("question"),T=s("div",{class:"ts-doing"});for(let O of A.notebooks)
T.append(re(O,"Go on with it",`go on:${A.name}`));return T.append(c("Hand in as it is",`hand in anyway:${A.name}`,()=>i(
"hand-in",{name:A.name,anyway:!0}))),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":M,"data-key":"\
question"},s("p",{id:M},s("b",{},`${A.title}: not handed in yet. ${f(A)}.`)," An answer that is missing or cannot be rea\
d earns nothing."),Rs(A.gaps),T)}let b=new Set,m={met:"✓",enough:"◐","not yet":"○"};function x(A,M){let T=A.entries.
map(G=>M.find(wt=>wt.name===G)).filter(G=>G!==void 0),O=A.lesson?re(A.lesson,`Lesson ${A.title}`,`lesson:${A.lesson}`):s(
"span",{class:"ts-small-line"},"no lesson here"),R=s("details",{open:b.has(A.module)},s("summary",{"data-key":`outcomes:${A.
module}`},`Outcomes: ${A.count||"none"}`),s("ul",{},...A.outcomes.map(([G,wt,et,H])=>s("li",{},s("span",{class:"ts-shape",
"aria-hidden":"true"},m[G]||""),s("b",{},`${G}${et&&G==="enough"?`, ${et}`:""}: `),wt,et&&G==="not yet"?`. Still missing\
: ${et}`:"",H?` (${H})`:""))));R.addEventListener("toggle",()=>{R.open?b.add(A.module):b.delete(A.module)});let z=T.flatMap(
G=>p(G,A.marks[G.name]));return s("tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},A.title,s("s\
pan",{class:"ts-assigned"},T.length?"assigned":"not assigned"))),...z,s("tr",{},s("td",{colspan:4},O,s("p",{class:"ts-ne\
xt"},s("b",{},"Next: "),A.next),R)))}function S(){let A=t.get("me"),M=t.get("entries"),T=s("table",{class:"ts-table"},s(
"thead",{},s("tr",{},...["Assignment","Due","State","What you can do"].map(O=>s("th",{scope:"col"},O)))),...t.get("modul\
es").map(O=>x(O,M)));return s("section",{},s("div",{class:"ts-me"},s("h2",{},`Working as ${A.name} (${A.id})`),A.ticket?
c("Not you? Sign out","sign-out",()=>{i("sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),
M.length?null:s("p",{},"Nothing is assigned yet."),T,c("Look again","look",()=>i("look")))}function B(){let A=!!t.get("m\
e").id,M=t.get("modules").map(R=>R.lesson),O=t.get("lessons").filter(([R])=>!A||!M.includes(R));return O.length?s("secti\
on",{},s("h2",{},A?"To look things up":"Lessons"),s("ul",{class:"ts-lessons"},...O.map(([R,z])=>s("li",{},re(R,z,`lesson\
:${R}`))))):null}let N=!1,k=t.get("me").id?null:r.get(),C=k!==null;function $(){let A=t.get("me");A.id?r.keep(A):(N||k&&
!C)&&r.drop(),N=!!A.id}let w=0,u="",h=()=>nt(a,"[data-key]"),y=()=>a.querySelector("input[data-key=word]");function v(){
let M=h().find(U=>U===document.activeElement)?.dataset.key;a.removeAttribute("aria-busy");let T=!!t.get("me").id;l.textContent=
t.get("said"),o.alert.textContent=t.get("trouble");let O=y()?.value,R=C?s("p",{},"One moment."):d();a.replaceChildren(...It(
[T?S():R,B()]));let z=y();z&&O&&(z.value=O);let G=u;if(u=t.get("asking"),u&&u!==G&&h().find(U=>U.dataset.key==="question")?.
focus(),!M||u&&u!==G)return;let wt=h().find(U=>U.dataset.key===M),et=M.split(":")[1],H=M.startsWith("hand in anyway")?`h\
and in:${et}`:`:${et}`,F=h().find(U=>et&&U.dataset.key?.endsWith(H));(wt??F??nt(a,"a, button, select")[0])?.focus()}let L=()=>{
clearTimeout(w),w=setTimeout(()=>{C=!1,$(),v()},0)};t.on("change",L),$(),v(),k&&t.send({type:"resume",name:k.id,ticket:k.
ticket});let E=()=>{!document.hidden&&t.get("me").id&&i("look",{quietly:!0})},_=new IntersectionObserver(([A])=>{A.isIntersecting&&
E()});return _.observe(e),document.addEventListener("visibilitychange",E),()=>{clearTimeout(w),t.off("change",L),_.disconnect(),
document.removeEventListener("visibilitychange",E),o.close()}}var Bn={bench:Xe,build:Qe,cord:ss,depth:ns,face:os,fault_board:as,form:Ps,gate:is,gears:ls,hazards:cs,lifting:ds,micrometer:us,
own_checks:ps,press:fs,question:js,rules:hs,runout:gs,sealant:xs,seat:$s,shims:Ss,start:_s,thread:Ls,unit_section:Cs,whole_build:Es,
wrench:Os};export{Bn as screens};
