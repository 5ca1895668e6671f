var On="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...It(n)),r}function R(t,e={},...n){let r=document.createElementNS(On,t);return Tt(r,e),r.append(...n),
r}function Tt(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function z(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function xt(t,e){return s("select",{class:"ts-box",...t},...vt(
e))}function Mt(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function At(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function It(t){return t.filter(e=>e!=null&&e!==!1)}var ze=0;function at(t){return ze+=1,`two\
shaft-${t}-${ze}-${Math.random().toString(36).slice(2,7)}`}function _t(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function tt(t,e){return[...t.querySelectorAll(e)]}function wt(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function $t(t){return t.ctrlKey||t.metaKey||t.altKey}function ne(t){let e=tt(t,"button, input,\
 select");for(let n of e)n.disabled=!0}function Ge(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function oe(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function nt(t,e,n=t){return z(t,e,{"aria-label":n})}
function vt(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function Dt(t){return t.map(e=>s("li",{},e))}var Lt=(t,e)=>s(
"div",{class:"ts-beside"},s("div",{},...It(t)),s("div",{},...It(e)));var Ae=new Map;function yt(t,e){if(Ae.has(t))throw new Error(`the answer kind ${t} is registered twice`);Ae.set(t,e)}function jt(t){
let e=Ae.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Ft(t){let e=at(
t.kind);return{prompt:`${e}-prompt`,control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function Kt(t,e,n){
let{prompt:r}=jt(t),o={class:"ts-prompt",id:e.prompt};if(r==="legend")return s("fieldset",{class:"ts-field","aria-descri\
bedby":n},s("legend",o,t.prompt));let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s(
"div",{class:"ts-field"},a)}function re(t,e,n,r){let a=t.options.map(([c,i])=>{let u={"aria-describedby":e.status},l=s("input",{type:n,name:e.control,
value:c,...u});return{key:c,input:l,row:s("label",{class:"ts-option"},l,s("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:u,input:l}of a)l.checked=i.includes(u)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}yt("choice",{prompt:"legend",make:(t,e,n)=>re(t,e,"radio",r=>n(r[0]))});yt("choices",{prompt:"legend",make:(t,e,n)=>re(t,e,"checkbox",n)});function ae(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function ie(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}yt("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([c,i],u)=>{let l=`${e.control}-${u}`,d=s("labe\
l",{class:"ts-each-line",for:l},i),p=xt({id:l,"aria-describedby":e.status},[["","choose"],...o]);return{key:c,box:p,row:s(
"li",{},d,p)}});for(let{box:c}of a)c.addEventListener("change",()=>{n(ae(a.map(({key:i,box:u})=>[i,u.value])))});return{
element:s("ol",{class:"ts-each"},...a.map(({row:c})=>c)),show(c){let i=ie(c.value);for(let{key:u,box:l}of a)l.value=i.get(
u)??""},setDisabled(c){for(let{box:i}of a)i.disabled=c},refused(){}}}});function Oe(t){let[e="",...n]=t.split(" "),r=e==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:e,size:r,
side:o,place:a[0],points:null};let c=a.map(i=>{let[u,l]=i.split(",").map(Number);return[u,l]});return{hand:e,size:r,side:o,
place:"",points:c}}function Te(t,{side:e,place:n,points:r}){return r||(e==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[e]??[])}function Ie(t,e){let{hand:n,size:r,side:o,place:a}=Oe(e),c=[...t.stretches,...t.
holes].find(u=>u.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[o]??""}`}
function Ne(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function Ye(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function Xe(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function Ve(t,[e,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-e,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var Tn=.4;function Je(t,e){let n=Tn,r=ce(t,n);for(;r.
length>e;)n*=1.5,r=ce(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function ce(t,e){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=In(n,r,t[c]);i>o&&([o,a]=[i,c])}return o<=
e?[n,r]:[...ce(t.slice(0,a+1),e).slice(0,-1),...ce(t.slice(a),e)]}function In(t,e,n){let[r,o]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var le=14,Nn=3,Bn=.5,Dn=["middle","inside","outside"],de="round ";function Pn(t,e){let n=t.outline.map(([H])=>H),r=t.outline.
map(([,H])=>H),[o,a]=[Math.min(...n)-le,Math.max(...n)+le],[c,i]=[Math.min(...r)-le,Math.max(...r)+le],u=a-o,l=i-c,d=([H,
G])=>`${(H-o).toFixed(1)} ${(i-G).toFixed(1)}`,p=(H,G)=>`M${H.map(d).join("L")}${G?"Z":""}`,f=at("face"),m=u/100,g=2*m,$=(H,G)=>R(
"pattern",{id:`${f}-${H}`,width:g,height:g,patternUnits:"userSpaceOnUse"},R("path",{d:G,class:"tsp-hatch","stroke-width":m/
4})),k=R("defs",{},$("oil",`M0 ${g}L${g} 0`),$("dirt",`M0 ${g}L${g} 0M0 0L${g} ${g}`)),T=t.cavities.map(([,H])=>p(H,!0)).
join(""),N=t.islands.map(H=>p(H,!0)).join(""),L=p(t.outline,!0)+T,C=R("g"),M=R("g"),S=R("g"),A=R("g"),w=R("path",{class:"\
tsp-live",d:""}),x=R("path",{class:"tsp-chosen",d:""}),v=R("path",{class:"tsp-land",d:L,"fill-rule":"evenodd"}),I=R("pat\
h",{class:"tsp-edge",d:L+N,"stroke-width":m/2.5}),B=([H,G],q,ot="middle")=>{let et={x:H-o,y:i-G,"font-size":2.5*m,"text-\
anchor":ot};return R("text",{class:"tsp-text",...et},q)},_=[(o+a)/2,(c+i)/2],J=(H,G)=>{let q=oe(H,_)||1;return[H[0]+G*(_[0]-
H[0])/q,H[1]+G*(_[1]-H[1])/q]};for(let{x:H,y:G,d:q,leads:ot,name:et}of t.holes){let ct={cx:H-o,cy:i-G,"stroke-width":m/4},
bt=ot==="blind"?"tsp-hole tsp-blind":"tsp-hole";S.append(R("circle",{...ct,r:q/2,class:bt})),ot==="to the outside"&&S.append(
R("circle",{...ct,r:q/3,class:"tsp-hole"}));let[lt,Et]=J([H,G],-(q/2+4.4*m));S.append(B([lt,Et-.8*m],et.replace("bolt ",
"")))}for(let H of t.guides){let[G,q]=[H.x-o,i-H.y],ot=`M${G-m} ${q}h${g}M${G} ${q-m}v${g}`;S.append(R("path",{class:"ts\
p-guide",d:ot,"stroke-width":m/2}));let et={"stroke-width":m/5,"stroke-dasharray":`${m} ${m}`};S.append(R("circle",{cx:G,
cy:q,r:H.reach,class:"tsp-reach",...et}));let ct=J([H.x,H.y],H.reach+g),bt=(ct[0]-H.x)/(H.reach+g);S.append(B(ct,H.name,
bt>.5?"start":bt<-.5?"end":"middle"))}for(let{word:H,points:G,width:q}of t.spots){let[ot]=H.split(" "),[et,ct]=[G[0],G[G.
length-1]],bt=oe(et,ct)||1,[lt,Et]=[-(ct[1]-et[1])/bt*q/2,(ct[0]-et[0])/bt*q/2],h=[[et[0]+lt,et[1]+Et],[ct[0]+lt,ct[1]+Et],
[ct[0]-lt,ct[1]-Et],[et[0]-lt,et[1]-Et]],P=`url(#${f}-${ot})`;C.append(R("path",{d:p(h,!0),fill:P,class:"tsp-spot","stro\
ke-width":m/4}));let F=B(J([(et[0]+ct[0])/2,(et[1]+ct[1])/2],9*m),ot);F.classList.add("tsp-spot-word"),S.append(F)}let y=[
100,50,20,10].find(H=>H<u/4)??10,O=`M${m} ${l-m}v${-m}v${m/2}h${y}v${-m/2}v${m}`,b={x:y+g,y:l-m,"font-size":2.5*m};A.append(
R("path",{class:"tsp-edge",d:O,"stroke-width":m/4}),R("text",{class:"tsp-text",...b},`${y} mm`));let j=`0 0 ${u.toFixed(
1)} ${l.toFixed(1)}`,W=R("svg",{viewBox:j,class:"tsp-face",role:"img","aria-label":e},k,v,C,M,I,S,x,w,A),K=`max-width: ${(25*
u/l).toFixed(1)}rem`;return{frame:s("div",{class:"ts-pad-face",style:K},W),svg:W,over:A,live:w,chosen:x,land:v,path:p,unit:m,
box:{left:o,right:a,low:c,high:i,width:u,height:l},place({clientX:H,clientY:G}){let q=W.getBoundingClientRect(),ot=Math.
min(q.width/u,q.height/l);return[o+(H-q.left-(q.width-ot*u)/2)/ot,i-(G-q.top-(q.height-ot*l)/2)/ot]},strokes(H){M.replaceChildren(
...H.map(ft))}};function ft(H){let G=Oe(H),q=Te(t,G),ot=Ne(t,G.hand,Math.max(G.size,m/2)),et=q.length>1?p(q,G.side==="ro\
und"):q.length?`${p(q)}h0.01`:"",ct=R("path",{d:et,class:`tsp-stroke tsp-${G.hand}`,"stroke-width":ot});if(G.hand!=="fil\
m")return ct;let bt=Math.min(8,Math.max(.6,40*G.size)),lt={"stroke-width":m/3,"stroke-dasharray":`${bt} ${bt}`};return R(
"g",{},ct,R("path",{d:et,class:"tsp-grain",...lt}))}}function ue({face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=Pn(
t,e),c=s("p",{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"ts-read ts-pad-trouble",role:"status"}),u=(O,b)=>s(
"span",{class:"ts-pair"},s("label",{for:b.id},O),b),l=xt({id:at("hand")},Object.entries(t.hands)),d=s("input",{class:"ts\
-box ts-size",id:at("size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),p=s("label",{for:d.id},"\
thickness"),f=xt({id:at("place")},t.stretches.map(({id:O,name:b})=>[O,b]));f.append(s("optgroup",{label:"Round a hole"},
...t.holes.map(({id:O,name:b})=>s("option",{value:`${de}${O}`},`round ${b}`))));let m=xt({id:at("side")},Dn.map(O=>[O,t.
sides[O]])),g=z("Lay it here",()=>A([S(f.value)])),$=z("Lay it on every stretch",()=>A(t.stretches.map(({id:O})=>S(O)))),
k=z("Take back the last pass",()=>{L&&r(L-1,!0)}),T=z("Clear the face",o),N={film:"",bead:""},L=0,C=!1;function M(){if(l.
value==="wipe")return"";let[O,b]=t.sizes[l.value],j=Ye(d.value);if(j>=O&&j<=b)return d.removeAttribute("aria-invalid"),`\
 ${Number(j.toFixed(3))}`;let W=l.value==="film"?"the thickness of the film":"the diameter of the bead";return i.textContent=
d.value.trim()?`Read “${d.value}”: give ${W} from ${O} to ${b} mm.`:`First give ${W} in mm.`,d.setAttribute("aria-in\
valid","true"),d.focus(),null}function S(O){let b=M();if(b===null)return null;let j=O.startsWith(de)?O:`${m.value} ${O}`;
return`${l.value}${b} ${j}`}function A(O){let b=O.filter(j=>j!==null);if(!(C||b.length<O.length)){if(L+b.length>t.most){
i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent="",c.textContent=b.length===
1?`Laid: ${Ie(t,b[0])}`:`Laid on ${b.length} stretches`,n(b)}}function w(){let O=l.value==="wipe";p.textContent=l.value===
"bead"?"diameter":"thickness",d.disabled=C||O,d.value=O?"":N[l.value],d.placeholder=O?"":"mm",g.textContent=O?"Wipe here":
"Lay it here",$.textContent=O?"Wipe every stretch":"Lay it on every stretch",i.textContent="",x()}function x(){let O=f.value.
startsWith(de);m.disabled=C||O;let b=Te(t,O?{side:"round",place:f.value.slice(de.length)}:{side:m.value,place:f.value});
a.chosen.setAttribute("d",b.length?a.path(b,O):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}l.addEventListener(
"change",w),d.addEventListener("input",()=>{N[l.value]=d.value}),f.addEventListener("change",x),m.addEventListener("chan\
ge",x),d.addEventListener("keydown",O=>{O.key==="Enter"&&(O.preventDefault(),g.click())});let v=null;a.svg.addEventListener(
"pointerdown",O=>{if(C||O.button>0)return;v=[a.place(O)],a.svg.setPointerCapture(O.pointerId);let b=Math.max(1,Number(N.
bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(Ne(t,l.value,b)))}),a.svg.addEventListener("pointer\
move",O=>{if(!v)return;let b=a.place(O);oe(b,v[v.length-1])<Bn||(v.push(b),a.live.setAttribute("d",a.path(v)))});let I=O=>{
if(!v)return;let b=v;if(v=null,a.live.setAttribute("d",""),O.type==="pointercancel")return;if(Xe(b)<Nn){f.value=Ve(t,b[0]),
x();return}let j=M();if(j===null)return;let W=Je(b,t.points).map(K=>K.join(","));A([`${l.value}${j} at ${W.join(" ")}`])};
a.svg.addEventListener("pointerup",I),a.svg.addEventListener("pointercancel",I);let B=s("ol",{class:"ts-passes","aria-la\
bel":"Passes, in the order they were done"}),_=s("p",{class:"ts-hint"},"Nothing is laid yet."),J=s("div",{class:"ts-pad-\
tools"},s("div",{class:"ts-tools"},u("tool",l),s("span",{class:"ts-pair"},p,d)),s("div",{class:"ts-tools"},u("where",f),
u("runs",m)),s("div",{class:"ts-tools"},g,$,k,T),i,c),y=()=>tt(B,"button");return w(),{drawing:a,tools:J,list:B,empty:_,
frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,J,s("div",{class:"ts-pad-list"},_,B)),show(O,b=[]){L=O.length,a.strokes(
O),_.hidden=L>0;let j=y().findIndex(W=>W.matches(":focus"));B.replaceChildren(...O.map((W,K)=>s("li",{},s("span",{},`${Ie(
t,W)}${b[K]?`, ${b[K]}`:""} `),z("take out",()=>r(K,!1),{class:"ts-button ts-remove",disabled:C,"aria-label":`Take out p\
ass ${K+1}`})))),j>=0&&(y()[Math.min(j,L-1)]??g).focus()},setDisabled(O){C=O;for(let b of[l,f,g,$,k,T,...y()])b.disabled=
O;d.disabled=O||l.value==="wipe",x()}}}yt("film",{prompt:"words",make(t,e,n){let r=[],o=c=>{r=c,a.show(r),n(r)},a=ue({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>o([...r,...c]),onRemove:c=>o(r.filter((i,u)=>u!==c)),onClear:()=>o([])});
return{element:a.element,show(c){r=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function Ze(t,{send:e,typing:n,said:r=a=>String(a??""),wrong:o=a=>!!a.error}){let a=s("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||a.value.trim()!==c.trim(),u=()=>{i()&&(c=a.value,e(a.value))};return a.
addEventListener("blur",u),a.addEventListener("keydown",l=>{let d=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!==
"Enter"&&!d||(l.preventDefault(),u())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:u,pending:i,refused(){
c=null},show(l){a.setAttribute("aria-invalid",String(o(l))),!(document.activeElement===a&&a.value!==c)&&(c=r(l.value),a.
value=c)}}}function Qe(t,e){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${e}`.trim()}function ts(t,e,n,r){let o=xt({"aria-label":"Choose the unit","aria-describedby":r},[["","unit"],...e.map(a=>[a,a])]);return o.
addEventListener("change",()=>{o.value&&(t.value=Qe(t.value,o.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener(
"input",()=>{o.value=""}),o}yt("number",{prompt:"label",make(t,e,n,r){let o=t.units,{box:a,flush:c,pending:i,refused:u,show:l}=Ze(e,{send:n,typing:r}),
d=s("span",{class:"ts-hint",id:e.hint},t.hint),p=o.length?ts(a,o,c,e.prompt):null;return{element:s("div",{class:"ts-line\
-of"},a,p,d),show:l,setDisabled(f){a.disabled=f,p&&(p.disabled=f)},refused:u,flush:c,pending:i}}});function ss(t,e){let r=[...new Set([t??[]].flat())].filter(o=>e.includes(String(o))).map(String);return[...r,...e.filter(
o=>!r.includes(o))]}var qt=(t,e)=>t.join(`
`)===e.join(`
`),es=t=>`#${t.keys[0]}`,pe=class{constructor(e,n){this.labels=new Map(e.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
r,,o]of e)o&&this.stages.set(r,o);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let n of this.order){let r=this.stages.get(n)??null,o=e.at(-1);o&&r!==null&&o.stage===r?o.keys.push(n):e.push({stage:r,
keys:[n]})}return e}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let e=[];for(let n of this.runs()){
let[r]=n.keys;if(n.keys.length<2){e.push({id:r,key:r,level:1});continue}if(e.push({id:es(n),run:n,level:1}),!this.closed.
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
{target:String(r.at(-1)),side:"after"}:{target:r[0],side:"before"}}take(e){if(qt(e,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,n){let[r]=n.keys,o=this.rows().find(a=>a.run?.
keys.includes(r));this.current=o?o.id:r}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,n){let r=e.pop();return r?(n.push(this.order),this.order=
r,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||qt(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,n){this.order=[...e],n&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let n=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((r,o)=>r-o);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(e,n){
let r=e.run?e.run.stage:this.stages.get(e.key),o=e.run?e.run.keys[0]:e.key,a=this.runs().find(c=>c.keys.includes(o));return!r||
!a||a.keys.length<2?null:(n?this.closed.add(r):this.closed.delete(r),n&&(this.current=es(a)),r)}sought(e){let n=this.rows(),
r=n.findIndex(c=>c.id===this.current),o=e.length>1?r:r+1,a=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...n.slice(o),...n.slice(0,o)].find(c=>a(c).startsWith(e))}};var Rn=12,jn=700,Hn=5,ns=32,Wn=8;function fe({label:t,steps:e,order:n,onChange:r}){let o=new pe(e,n),{staged:a}=o,c=!1,i={},
u=!1,l=new Map,d=s("div",{"aria-live":"assertive",class:"ts-hidden"}),p=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),f=z("Up",()=>W(-1),{"aria-label":"Move the chosen step up"}),m=z("Down",
()=>W(1),{"aria-label":"Move the chosen step down"}),g=z("Undo",()=>o.undo()&&ft("Undone")),$=z("Redo",()=>o.redo()&&ft(
"Done again")),k=z("Choose several",()=>et(!c),{"aria-pressed":"false"}),T=z("Gather stages",()=>j(o.gathered(),"Steps o\
f one stage now stand together")),N=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Mov\
e the chosen step to position",onkeydown:E=>{E.key==="Enter"&&K()}}),L=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),C=s("span",{class:"ts-chosen"}),M=z("Move",K,{"aria-label":"Move to this position"}),S=z(
"Move",Y,{"aria-label":"Move before this step"}),A=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen \
step"},f,m,g,$,k,a?T:null),w=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",N,M),s("span",{class:"\
ts-pair"},"or before ",L,S)),x="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),v=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},x),w),I=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),A,C,p,v,d);function B(E){d.
textContent=E}function _(E=""){B(`${o.unitName()}${E}, ${o.where()}`)}function J(E){let D=l.get(E.id);if(D)return D;let X=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return X.dataset.row=E.id,l.set(E.id,X),X}function y(E=!1){let D=o.settle(),
X=new Set(D.map(V=>V.id));for(let[V,ht]of l)X.has(V)||(ht.remove(),l.delete(V));let it=o.unit(),kt=new Set(it),ut=p.firstElementChild;
for(let V of D){let ht=J(V);ht===ut?ut=ut.nextElementSibling:p.insertBefore(ht,ut),O(ht,V,kt)}N.value=String(o.order.indexOf(
it[0])+1);let st=[...o.order.entries()].filter(([,V])=>!kt.has(V));L.replaceChildren(...st.map(([V,ht])=>s("option",{value:ht},
`${V+1}  ${o.label(ht)}`))),C.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,f.disabled=u||o.isFirst,m.disabled=u||
o.isLast,g.disabled=u||o.past.length===0,$.disabled=u||o.future.length===0;for(let V of[k,T,N,L,M,S])V.disabled=u;if(p.setAttribute(
"aria-disabled",String(u)),p.classList.toggle("ts-long",o.order.length>Rn),E){let V=l.get(o.current);V?.focus({preventScroll:!0}),
V?.scrollIntoView({block:"nearest"})}}function O(E,D,X){let it=D.id===o.current,kt=D.run?!1:o.block.has(D.key),ut=o.held!==
null&&(D.run?it:X.has(D.key)),st=o.order.indexOf(D.run?D.run.keys[0]:D.key),V=D.run?D.run.keys.map(Ot=>i[Ot]?.length??0):
i[D.key],ht=D.run?o.closed.has(String(D.run.stage)):!1,Nt=JSON.stringify([st,D.level,it,kt,ut,V,D.run&&[D.run.keys.length,
ht]]);if(E.dataset.looks===Nt)return;E.dataset.looks=Nt,E.tabIndex=it?0:-1,E.setAttribute("aria-selected",String(kt)),E.
classList.toggle("ts-current",it),E.classList.toggle("ts-inblock",kt),E.classList.toggle("ts-held",ut),E.classList.toggle(
"ts-level2",D.level===2),a&&E.setAttribute("aria-level",String(D.level));let Rt=ut?" picked up":kt?" in block":"",se=Rt?
s("span",{class:"ts-state"},Rt):"",Xt=Ot=>s("span",{class:"ts-number","aria-hidden":"true"},Ot);if(D.run){let{keys:Ot,stage:Mn}=D.
run;E.setAttribute("aria-expanded",String(!ht));let Ue=ht?Ot.filter(An=>i[An]?.length).length:0;E.replaceChildren(Xt(`${st+
1}–${st+Ot.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},ht?"▸":"▾"),s("span",{class:"ts-what"},s("b",
{},Mn),` ${Ot.length} steps`,Ue?` – ${Ue} with a remark`:"",se));return}let qe=(i[D.key]??[]).map(Ot=>s("span",{class:`\
ts-note ts-note-${Ot.kind}`},At(Ot.shape??""),s("b",{},Ot.word),` ${Ot.text}`)),En=a&&D.level===1;E.classList.toggle("ts\
-troubled",qe.length>0),E.replaceChildren(Xt(String(st+1)),s("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),s("spa\
n",{class:"ts-what"},o.label(D.key),En?s("span",{class:"ts-stage"},` ${o.stages.get(D.key)??""}`):"",se,...qe))}let b=()=>r(
[...o.order]);function j(E,D){if(!o.take(E)){B(`${o.unitName()} stays at ${o.where()}`);return}y(!0),D?B(D):_(),o.held===
null&&b()}function W(E){u||j(o.shifted(E))}function K(){if(u)return;let E=Number.parseInt(N.value,10),D=o.order.length;E>=
1&&E<=D?j(o.atPosition(E)):(B(`Type a position from 1 to ${D}`),C.textContent=`Type a position from 1 to ${D}.`)}function Y(){
!u&&L.value&&j(o.beside(L.value,"before"))}function ft(E){y(),B(`${E}. ${o.unitName()}, ${o.where()}`),b()}function H(){
o.pickUp(),y(!0),_(" picked up")}function G(){o.putDown()&&b(),y(!0),_(" put down")}function q(){o.putDown()&&b(),y()}function ot(){
o.putBack(),y(!0),_(" put back")}function et(E){c=E,k.setAttribute("aria-pressed",String(E)),E||(o.block=new Set),y(),B(
E?"Choose the steps of a block":"Block let go")}function ct(E){o.toggleBlock(E);let D=o.block.has(E)?"in the block":"out\
 of the block";B(`${o.label(E)} ${D}, ${o.block.size} in it`)}function bt(E,D){let X=o.fold(E,D);X&&(y(!0),B(`${X} ${D?"\
closed":"open"}`))}p.addEventListener("keydown",E=>{if($t(E))return;let D=o.rows(),X=D.findIndex(ht=>ht.id===o.current),
it=ht=>{o.current=D[Math.max(0,Math.min(D.length-1,ht))].id,y(!0)},kt=D[X],{key:ut}=E,st=ut==="ArrowUp"?-1:ut==="ArrowDo\
wn"?1:null,V=o.held!==null;if(st&&(E.shiftKey||V))W(st);else if(st)it(X+st);else if(V&&ut==="Escape")ot();else if(ut==="\
 ")u||(V?G:H)();else if(V&&ut==="Enter")G();else if(ut==="Enter"&&!kt.run)u||(ct(kt.key),y(!0));else if(ut==="Home"&&!V)
it(0);else if(ut==="End"&&!V)it(D.length-1);else if(a&&ut==="ArrowLeft")bt(kt,!0);else if(a&&ut==="ArrowRight")bt(kt,!1);else if(ut.
length===1&&!V)h(ut);else return;E.preventDefault()});let lt="",Et;function h(E){lt+=E.toLowerCase(),clearTimeout(Et),Et=
window.setTimeout(()=>{lt=""},jn);let D=o.sought(lt);D&&(o.current=D.id,y(!0))}p.addEventListener("focusout",({relatedTarget:E})=>{
o.held!==null&&E instanceof Node&&!p.contains(E)&&q()});let P=null;p.addEventListener("pointerdown",E=>{let D=o.row(wt(E,
".ts-step")?.dataset.row??"");if(!D||E.button!==0)return;if(D.run&&wt(E,".ts-fold")){bt(D,!o.closed.has(String(D.run.stage))),
E.preventDefault();return}let X=wt(E,".ts-grip, .ts-number"),it=E.ctrlKey||E.metaKey;o.held!==null&&q(),!D.run&&!u&&(E.shiftKey?
o.blockTo(D.key):(it||c)&&!X&&ct(D.key)),o.current=D.id,y(!0),E.preventDefault(),!(u||E.shiftKey||it)&&(E.pointerType!==
"mouse"&&!X||(P={x:E.clientX,y:E.clientY,id:E.pointerId,carried:null},p.setPointerCapture(E.pointerId)))}),p.addEventListener(
"pointermove",E=>{if(!P||E.pointerId!==P.id)return;let{clientX:D,clientY:X}=E;if(!P.carried){if(Math.hypot(D-P.x,X-P.y)<
Hn)return;P.carried=F()}Object.assign(P.carried,{x:D,y:X}),U(P.carried)});function F(){let E=s("div",{class:"twoshaft ts\
-ghost","aria-hidden":"true"},o.unit().length>1?o.unitName():o.label(o.unit()[0]));document.body.append(E);let D=s("div",
{class:"ts-line","aria-hidden":"true"});p.append(D),p.classList.add("ts-dragging");for(let X of o.unit())l.get(X)?.classList.
add("ts-lifted");return{ghost:E,line:D,timer:requestAnimationFrame(rt),x:0,y:0,drop:null}}function U(E){E.ghost.style.transform=
`translate(${E.x+12}px, ${E.y+8}px)`;let X=o.rows().map(st=>{let V=J(st).getBoundingClientRect();return{row:st,box:V,offset:E.
y-(V.top+V.height/2)}}).reduce((st,V)=>Math.abs(V.offset)<Math.abs(st.offset)?V:st),it=X.offset>0;E.drop=o.dropAt(X.row,
it);let ut=(it?X.box.bottom:X.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;E.line.style.top=`${ut}px`}function rt(){
let E=P?.carried;if(E){for(let D of[p,Ge(p)]){let it=D===document.scrollingElement?{top:0,bottom:innerHeight}:D.getBoundingClientRect(),
kt=E.y<it.top+ns?-1:E.y>it.bottom-ns?1:0;if(!kt)continue;let ut=D.scrollTop;if(D.scrollTop+=kt*Wn,D.scrollTop!==ut){U(E);
break}}E.timer=requestAnimationFrame(rt)}}function Z(E){let D=P?.carried;if(P=null,!D)return;cancelAnimationFrame(D.timer),
D.ghost.remove(),D.line.remove(),p.classList.remove("ts-dragging");for(let it of l.values())it.classList.remove("ts-lift\
ed");let{drop:X}=D;if(!E||!X||o.unit().includes(X.target)){y(!0),B(`${o.unitName()} stays at ${o.where()}`);return}j(o.beside(
X.target,X.side))}return p.addEventListener("pointerup",()=>Z(!0)),p.addEventListener("pointercancel",()=>Z(!1)),I.addEventListener(
"keydown",E=>{!P?.carried||E.key!=="Escape"||(Z(!1),E.stopPropagation())}),y(),{element:I,tools:A,order:()=>[...o.order],
change:(E,D)=>{u||j(E,D)},setOrder(E,D=!1){o.held!==null||P?.carried||qt(E,o.order)||(o.set(E,D),y())},setNotes(E){i=E??
{},y()},setDisabled(E){u=E,y()}}}yt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=fe({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
ss(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function rs(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[c,i]of t.entries()){let[u,l]=e[i]??[null,null];u!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[u??r[0],l??(u===null?r[1]:0)];let d=n(...r);o.push(d);let p=a.get(d.join(" "))??{at:d,numbers:[]};
p.numbers.push(c+1),a.set(d.join(" "),p)}return{points:o,stops:[...a.values()]}}function as(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function is(t,e){return t.filter((n,r)=>r!==e)}function cs(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var os=.6;function ls(t,[e,n],[r,
o]){let a=Object.entries(t).filter(([u])=>!u.startsWith("firm:")),c=(u,l)=>a.filter(([,d])=>d[0]===u&&d[1]===l).map(([d])=>d).
slice(0,1),i=Math.abs(e-r)>os;return[...i&&Math.abs(n)>os?c(null,0):[],...i?c(r,null):[],...o||!i?c(null,o):[]]}var Vt=9,he=.7*Vt,Be=44;function ge(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*Vt+2*Be,
c=(o-r)*he+2*Be,i=(f,m)=>[Be+(f-e)*Vt,c/2-(m-(r+o)/2)*he],u=t.gates.map(f=>`M${i(f,r).join(" ")}L${i(f,o).join(" ")}`),l=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,d=t.gears.map(([f,m,g])=>{let[$,k]=i(m,g),T={x:$,y:k+(g>0?-20:30),"data-gear":f};
return R("text",{...T,class:"tsp-gear","text-anchor":"middle"},f)});return{element:R("svg",{viewBox:`0 0 ${a} ${c}`,width:a,
height:c,class:"ts-gateplan","aria-hidden":"true"},R("path",{d:[...u,l].join(""),class:"tsp-slot"}),...d),at:i}}function _n(t){let{element:e,at:n}=ge(t),r=R("polyline",{class:"tsp-line",points:""}),o=R("g");return e.append(r,o),{element:e,
show(a){let{points:c,stops:i}=rs(a,t.aims,n),[[u,l]]=c;r.setAttribute("points",c.map(d=>d.join(",")).join(" ")),o.replaceChildren(
R("circle",{cx:u,cy:l,r:4,class:"tsp-start"}),...i.map(({at:[d,p],numbers:f})=>R("g",{},R("circle",{cx:d,cy:p,r:3.5,class:"\
tsp-stop"}),R("text",{x:d+7,y:p-5,class:"tsp-number"},f.join(", ")))))}}}function ds({label:t,moves:e,plan:n,most:r,onChange:o}){
let a=new Map(e),c=I=>a.get(I)??I,i=[],u=-1,l=!1,d=n?_n(n):null,p=s("ol",{class:"ts-pathlist","aria-label":t}),f=s("p",{
class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate plane."),m=s("p",{class:"ts-hidden",role:"\
status"}),g=e.map(([I,B])=>z(B,()=>C(I))),$=z("Take back the last move",()=>{i.length&&M(i.length-1)}),k=z("Take back al\
l",()=>{i.length&&L([],"No moves left")}),T=s("span",{class:"ts-hint"}),N=s("div",{class:"ts-path"},s("div",{class:"ts-t\
ools ts-moves",role:"group","aria-label":"Add a move"},...g),s("div",{class:"ts-path-both"},s("div",{class:"ts-path-word\
s"},f,p,s("div",{class:"ts-tools"},$,k,T)),d&&s("div",{class:"ts-path-picture"},d.element)),d&&s("p",{class:"ts-hint"},"\
The line shows where each move should go. The test shows whether the lever gets there."),m);function L(I,B){l||(i=I,v(),
m.textContent=B,o([...i]))}function C(I){if(i.length>=r){m.textContent=`${r} moves are the most here`;return}let{moves:B,
place:_}=as(i,u,I);u=_,L(B,`Move ${_+1}: ${c(I)}`)}function M(I){let B=c(i[I]);u=Math.min(u,i.length-2),L(is(i,I),`Taken\
 back: ${B}`)}function S(I,B){let _=cs(i,I,B);_&&(u=I+B,L(_,`${c(_[u])}, move ${u+1} of ${i.length}`),w(u))}function A(I){
return p.children[I]?.querySelector(".ts-path-move")}function w(I){let B=A(I);return B instanceof HTMLElement&&B.focus(),
!!B}function x(I,B){let _=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${B+1}: ${c(I)}`},c(I)),J=s("bu\
tton",{type:"button",class:"ts-path-off","aria-label":`Take back move ${B+1}`,onclick:()=>M(B)},"×"),y=s("li",{},_,J);return y.
classList.toggle("ts-current",B===u),_.addEventListener("focus",()=>{u=B;for(let O of p.children)O.classList.toggle("ts-\
current",O===y)}),_.addEventListener("keydown",O=>{if($t(O))return;let b=O.key==="ArrowUp"?-1:O.key==="ArrowDown"?1:null;
if(b&&O.shiftKey)S(B,b);else if(b)w(B+b);else if(O.key==="Delete"||O.key==="Backspace")M(B),w(Math.min(B,i.length-1))||g[0].
focus();else return;O.preventDefault()}),J.disabled=l,y}function v(){p.replaceChildren(...i.map(x)),f.hidden=i.length>0,
T.textContent=`${i.length} of at most ${r} moves`;for(let I of g)I.disabled=l||i.length>=r;$.disabled=k.disabled=l||i.length===
0,d?.show(i)}return v(),{element:N,setMoves(I){qt(I,i)||(i=[...I],u=-1,v())},setDisabled(I){l=I,v()}}}yt("path",{prompt:"words",make(t,e,n){let r=ds({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});function us(t,e,n){let r=t.indexOf(n);return[...t.slice(r+1),...t.slice(0,r)].find(a=>!e.get(a))??n}function ps(t,e,n){let r=t.
find(({key:u})=>u===e);if(!r)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let o={ArrowRight:1,
ArrowLeft:-1}[n];if(o!==void 0){let u=[...t].sort((d,p)=>d.x-p.x||d.y-p.y),l=u.findIndex(({key:d})=>d===e)+o;return u[(l+
u.length)%u.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=u=>Math.abs(u.y-r.y)+2*Math.abs(u.x-
r.x),[i]=t.filter(({key:u,y:l})=>u!==e&&(l-r.y)*a>2).sort((u,l)=>c(u)-c(l));return(i??r).key}function Ut(t,e,n,r){let o=t.lines,a=t.options,c=o.map(([p])=>p),i=c[0],u=o.map(([p,f],m)=>{let g=`${e.control}-${m}`,$=s(
"label",{class:"ts-each-line",for:g},f),k=xt({id:g,"aria-describedby":e.status},[["","choose"],...a]),T=s("input",{type:"\
radio",name:`${e.control}-active`,"aria-label":`Point in the picture for: ${f}`,checked:m===0}),N=s("li",{},c.length>1?T:
null,$,k);return T.addEventListener("change",()=>{i=p}),k.addEventListener("change",()=>{i=p,d()}),{key:p,box:k,mark:T,row:N}}),
l=()=>new Map(u.map(({key:p,box:f})=>[p,f.value]));function d(){let p=l();r(p),n(ae([...p]))}return{element:s("ol",{class:"\
ts-each ts-pointed"},...u.map(({row:p})=>p)),active:()=>i,answers:l,press(p){let f=u.find(({key:m})=>m===i);if(!(!f||f.box.
disabled)){f.box.value=p,d(),i=us(c,l(),i);for(let{key:m,mark:g}of u)g.checked=m===i}},put(p,f){let m=u.find(({key:g})=>g===
p);!m||m.box.disabled||(m.box.value=f,d())},show(p){let f=ie(p.value);for(let{key:m,box:g}of u)g.value=f.get(m)??"";r(l())},
setDisabled(p){for(let{box:f,mark:m}of u)f.disabled=p,m.disabled=p}}}function me(t,e,n){let r=s("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});r.innerHTML=t;let o=r.querySelector(
"svg");o.setAttribute("role","group");let a=new Map(tt(o,"[data-mark]").map(l=>[String(l.dataset.mark),l])),c=new Map(e);
for(let[l,d]of a)d.setAttribute("role","button"),d.setAttribute("tabindex",l===e[0][0]?"0":"-1"),d.setAttribute("aria-la\
bel",`${l}: ${c.get(l)??""}`);let i=l=>wt(l,"[data-mark]")?.dataset.mark??wt(l,"[data-spot]")?.dataset.spot;r.addEventListener(
"click",l=>{let d=i(l);d&&n(d)});for(let[l,d]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])r.addEventListener(
l,p=>{let f=i(p);f&&u(f,d)});function u(l,d){for(let p of tt(o,`[data-spot="${l}"]`))p.classList.toggle("tss-near",d)}return r.
addEventListener("keydown",l=>{let d=wt(l,"[data-mark]")?.dataset.mark;if(d){if(l.key==="Enter"||l.key===" ")n(d);else{let p=[
...a].map(([m,g])=>{let $=g.querySelector(".tss-dot");return{key:m,x:$.cx.baseVal.value,y:$.cy.baseVal.value}}),f=ps(p,d,
l.key);if(f===void 0)return;a.get(d)?.setAttribute("tabindex","-1"),a.get(f)?.setAttribute("tabindex","0"),a.get(f)?.focus()}
l.preventDefault()}}),{element:r,drawing:o,choose(l){let d=new Set(l);for(let[p,f]of a)f.classList.toggle("tss-chosen",d.
has(p)),f.setAttribute("aria-pressed",String(d.has(p)));for(let p of tt(o,"[data-spot]"))p.classList.toggle("tss-on",d.has(
String(p.dataset.spot)))}}}yt("picture",{prompt:"legend",make(t,e,n){let r=t.options,o=Ut(t,e,n,i=>{let u=new Set(i.values());for(let{letter:l,card:d}of a)
d.classList.toggle("ts-on",u.has(l))}),a=r.map(([i,u])=>{let l=s("div",{class:"ts-picture-card",onclick:()=>o.press(i)});
return l.innerHTML=t.svgs[i],l.querySelector("svg")?.setAttribute("aria-label",u),l.prepend(s("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:l}}),c=s("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:s("div",{class:"\
ts-pictured"},o.element,c),show:o.show,setDisabled:o.setDisabled,refused(){}}}});yt("point",{prompt:"legend",make(t,e,n){let r=Ut(t,e,n,i=>c.choose(i.values())),a=t.options.map(([i,u])=>[i,u.slice(i.length+
2)]),c=me(t.svg,a,r.press);return{element:s("div",{},r.element,c.element),show:r.show,setDisabled:r.setDisabled,refused(){}}}});yt("put",{prompt:"legend",make(t,e,n){let r=t.lines,o=new Map(r.map(([d])=>[d,"1"])),a=Ut(t,e,n,d=>{for(let[p,f]of d)f&&
o.set(p,f.split("-")[1]);c.choose([...d.values()].map(p=>p.split("-")[0])),u(d)}),c=me(t.svg,t.places,d=>{a.press(`${d}-${o.
get(a.active())}`)}),i=R("g",{class:"tss-placed"});c.drawing.append(i);function u(d){i.replaceChildren();for(let[p,f]of d){
let[m,g]=f.split("-"),$=t.at[m];if(!$)continue;let k=R("g",{transform:`translate(${$[0]} ${$[1]})`});k.innerHTML=t.pieces[p][Number(
g)-1][1],i.append(k)}for(let{part:p,show:f}of l)f(o.get(p)??"1")}let l=r.map(([d,p])=>{let f=s("div",{class:"ts-tray-par\
t"}),m=s("span",{class:"ts-hint",role:"status"}),g=nt("Turn it",()=>{let T=o.get(d)==="1"?"2":"1";o.set(d,T),$(T);let N=a.
answers().get(d);N&&a.put(d,`${N.split("-")[0]}-${T}`)},`Turn it: ${p}`);function $(T){let[N,L]=t.pieces[d][Number(T)-1],
C=Number(/data-half="([\d.]+)"/.exec(L)?.[1]??90);f.innerHTML=`<svg viewBox="${-C} ${-C} ${2*C} ${2*C}" width="120" heig\
ht="120" aria-hidden="true">${L}</svg>`,m.textContent=`Way ${T}: ${N}`}let k=s("div",{class:"ts-tray"},f,s("div",{},p,m,
g));return{part:d,row:k,show:$,turn:g}});return{element:s("div",{},s("div",{class:"ts-trays"},...l.map(({row:d})=>d)),a.
element,c.element),show:a.show,setDisabled(d){a.setDisabled(d);for(let{turn:p}of l)p.disabled=d},refused(){}}}});var Fn="The connection to the course is lost. Go on answering: your answers stay in this browser and are sent when the c\
onnection is back. Simulators wait until then.",Kn="The connection to the course is back.",qn=1500,Un=5e3,Pe=new Set,Pt=null,
De;function fs(t){Pt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),Pt.isConnected||document.body.append(Pt),Pt.textContent=
t}function zn(){Pt?.remove(),Pt=null}function hs(){clearTimeout(De),Pe.size?De=window.setTimeout(()=>fs(Fn),Pt?0:qn):Pt&&
(fs(Kn),De=window.setTimeout(zn,Un))}var gs=t=>({down(){Pe.add(t),hs()},up(){Pe.delete(t),hs()}});var Gn=1e3,Yn="input, button, select, textarea, summary, a, [tabindex]";function Xn(t){let e=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:u,metaKey:l}=o,d={key:a,code:c,keyCode:i,ctrlKey:u,metaKey:l,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",d))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let o of t.querySelectorAll(Yn))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function Vn(t,e,n){let r=t.widget_manager?.kernel,o=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(c,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),r?.statusChanged?.
connect(o),r?.connectionStatusChanged?.connect(a),r?.disposed?.connect(e),()=>{t.off("comm_live_update",e),r?.statusChanged?.
disconnect(o),r?.connectionStatusChanged?.disconnect(a),r?.disposed?.disconnect(e)}}var ms=`.twoshaft {
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
ex-basis:260px;min-width:min(100%,260px)}.twoshaft .tsi-micrometer{width:clamp(730px,100%,760px);height:240px;display:bl\
ock}.twoshaft .tsi-vernier{width:clamp(730px,100%,760px);height:190px;display:block}.twoshaft .tsi-runout{width:282px;he\
ight:244px;flex:none}.twoshaft .tsi-wrench{width:720px;max-width:100%;height:auto;display:block}.twoshaft .tsi-fine{stro\
ke:var(--ts-ink);stroke-width:1.1}.twoshaft .tsi-bold{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-body{fill:var(-\
-ts-faint);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-paper{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-wid\
th:1}.twoshaft .tsi-lever{stroke:var(--ts-ink);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-adapter{stroke:var(--\
ts-accent);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-arm{stroke:var(--ts-accent);stroke-width:2;stroke-dasharr\
ay:7 4}.twoshaft .tsi-plunger{stroke:var(--ts-accent);stroke-width:5;stroke-linecap:round}.twoshaft .ts-order{position:r\
elative;max-width:calc(var(--ts-width) + 8em)}.twoshaft .ts-steps{position:relative;list-style:none;border:1px solid var\
(--ts-line);margin-top:calc(var(--ts-grid) / 2);background:var(--ts-paper)}.twoshaft .ts-steps.ts-long{max-height:min(30\
rem,75vh);overflow-y:auto}.twoshaft .ts-step{display:flex;align-items:flex-start;gap:var(--ts-grid);padding:4px var(--ts\
-grid) 4px 0;margin:0;min-height:24px;border-bottom:1px solid var(--ts-faint);border-left:4px solid transparent;cursor:d\
efault;user-select:none}.twoshaft .ts-step:last-child{border-bottom:0}.twoshaft .ts-step.ts-level2{padding-left:calc(2 *\
 var(--ts-grid))}.twoshaft .ts-step:focus-visible{outline-offset:-3px}.twoshaft .ts-current{border-left-color:var(--ts-a\
ccent);background:var(--ts-faint)}.twoshaft .ts-inblock{border-left-style:double;border-left-color:var(--ts-ink)}.twosha\
ft .ts-held{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-held .ts-number,.twoshaft .ts-held .ts-g\
rip,.twoshaft .ts-held .ts-stage{color:inherit}.twoshaft .ts-lifted{opacity:.45}.twoshaft .ts-dragging,.twoshaft .ts-dra\
gging .ts-step{cursor:grabbing}.twoshaft .ts-number{flex:none;min-width:2.5em;text-align:right;color:var(--ts-quiet);fon\
t-variant-numeric:tabular-nums;touch-action:none}.twoshaft .ts-grip,.twoshaft .ts-fold{flex:none;width:24px;text-align:c\
enter;color:var(--ts-quiet);cursor:grab;touch-action:none}.twoshaft .ts-fold{cursor:pointer}.twoshaft .ts-what{flex:1;mi\
n-width:0}.twoshaft .ts-state{font-weight:600;font-size:var(--ts-small)}.twoshaft .ts-note{display:block;font-size:var(-\
-ts-small);max-width:var(--ts-width)}.twoshaft .ts-line{position:absolute;left:0;right:0;height:3px;background:var(--ts-\
accent);pointer-events:none}.twoshaft.ts-ghost{position:fixed;left:0;top:0;z-index:10000;width:max-content;max-width:24e\
m;padding:4px var(--ts-grid);pointer-events:none;background:var(--ts-paper);color:var(--ts-ink);border:2px solid var(--t\
s-accent)}.twoshaft .ts-order .ts-keys{margin-top:var(--ts-grid)}.twoshaft .ts-order .ts-keys summary{cursor:pointer;min\
-height:24px;color:var(--ts-accent);width:fit-content}.twoshaft .ts-beside:has(>div>.ts-order){flex-wrap:wrap-reverse;al\
ign-items:flex-end}.twoshaft-rig .ts-order .ts-steps{max-height:max(20rem,min(30rem,100vh - 340px));overflow-y:auto}.two\
shaft .ts-path-both{display:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--ts-\
grid)}.twoshaft .ts-path-words{flex:1 1 22em;min-width:0;max-width:34em}.twoshaft .ts-path-picture{flex:none;max-width:1\
00%}.twoshaft .ts-pathlist{margin:0;padding-left:calc(4 * var(--ts-grid))}.twoshaft .ts-pathlist li{min-height:28px;padd\
ing-left:4px;border-left:4px solid transparent}.twoshaft .ts-pathlist li.ts-current{border-left-color:var(--ts-accent);b\
ackground:var(--ts-faint)}.twoshaft .ts-path-off{min-width:28px;min-height:28px;margin-left:var(--ts-grid);border:1px so\
lid var(--ts-line);border-radius:2px;background:var(--ts-paper);color:var(--ts-ink);font:inherit;line-height:1;cursor:po\
inter}.twoshaft .ts-gateplan{display:block;max-width:100%;height:auto}.twoshaft .tsp-slot{fill:none;stroke:var(--ts-line\
);stroke-width:14;stroke-linecap:round;opacity:.35}.twoshaft .tsp-line{fill:none;stroke:var(--ts-accent);stroke-width:2.\
5;stroke-linejoin:round}.twoshaft .tsp-start{fill:var(--ts-paper);stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsp-\
stop{fill:var(--ts-accent)}.twoshaft .tsp-gear{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink)}.twoshaft .tsp\
-number{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink);paint-order:stroke;stroke:var(--ts-paper);stroke-widt\
h:4px}.twoshaft .ts-pad{max-width:62rem}.twoshaft .ts-pad-face{position:relative;width:100%;border:1px solid var(--ts-li\
ne);background:var(--ts-paper)}.twoshaft .tsp-face{display:block;position:relative;width:100%;height:auto;touch-action:n\
one;cursor:crosshair}.twoshaft .tsp-land{fill:var(--ts-faint);stroke:none}.twoshaft .tsp-edge{fill:none;stroke:var(--ts-\
ink);stroke-linejoin:round}.twoshaft .tsp-text{fill:var(--ts-ink);font-family:var(--ts-font);paint-order:stroke;stroke:v\
ar(--ts-paper);stroke-width:.5px;pointer-events:none;user-select:none}.twoshaft .tsp-hole{fill:var(--ts-paper);stroke:va\
r(--ts-ink)}.twoshaft .tsp-blind{fill:var(--ts-ink)}.twoshaft .tsp-guide,.twoshaft .tsp-reach,.twoshaft .tsp-hatch{fill:\
none;stroke:var(--ts-ink)}.twoshaft .tsp-spot{stroke:var(--ts-ink)}.twoshaft .tsp-stroke,.twoshaft .tsp-live,.twoshaft .\
tsp-grain{fill:none;stroke-linejoin:round;stroke-linecap:butt}.twoshaft .tsp-film{stroke:var(--ts-film);stroke-opacity:.\
6}.twoshaft .tsp-bead{stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-wipe{stroke:var(--ts-paper);stroke-opaci\
ty:.85}.twoshaft .tsp-grain{stroke:var(--ts-ink)}.twoshaft .tsp-live{stroke:var(--ts-accent);stroke-opacity:.5;stroke-li\
necap:round}.twoshaft .tsp-chosen{fill:none;stroke:var(--ts-accent);stroke-dasharray:3 2;pointer-events:none}.twoshaft .\
ts-size{width:6em}.twoshaft .ts-size[aria-invalid=true]{border:2px dashed var(--ts-ink)}.twoshaft .ts-pad-trouble{min-he\
ight:1.5em;color:var(--ts-ink)}.twoshaft .ts-passes{padding-left:2.5em;font-size:var(--ts-small);max-height:16rem;overfl\
ow-y:auto}.twoshaft .ts-passes li{padding:2px 0}.twoshaft .ts-remove{min-height:24px;padding:0 var(--ts-grid)}.twoshaft \
.ts-pad-tools .ts-box{max-width:100%;min-width:0}.twoshaft .ts-pad-tools .ts-pair{min-width:0}.twoshaft .ts-each{margin:\
0;padding-left:calc(3 * var(--ts-grid))}.twoshaft .ts-each li{padding:calc(var(--ts-grid) / 2) 0}.twoshaft .ts-each li+l\
i{border-top:1px solid var(--ts-line)}.twoshaft .ts-each-line{display:inline-block;width:min(100% - 2 * var(--ts-grid),3\
4em);margin-right:calc(2 * var(--ts-grid));vertical-align:middle}.twoshaft .ts-each select{max-width:100%;min-width:0;ve\
rtical-align:middle}.twoshaft .ts-pointed input[type=radio]{margin-right:var(--ts-grid)}.twoshaft .ts-scene{overflow-x:a\
uto;margin:var(--ts-grid) 0}.twoshaft .ts-scene svg{display:block;max-width:none;max-height:none}.twoshaft .ts-scene [da\
ta-mark],.twoshaft .ts-scene [data-spot]{cursor:pointer}.twoshaft .ts-scene [data-mark]:focus-visible{outline:none}.twos\
haft .ts-scene [data-mark]:focus-visible .tss-ring{stroke:var(--ts-accent);stroke-width:4px}.twoshaft .ts-scene .tss-nea\
r path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:2.4px}.twoshaft .ts-scene .tss-chosen \
.tss-ring{fill:var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .ts-scene .tss-chosen .tss-letter{fill:var(--ts-on-acc\
ent)}.twoshaft .ts-scene .tss-on path:not(.tsu-behind,.tsu-pitch,.tsu-line),.twoshaft .ts-scene .tss-placed path:not(.ts\
u-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:3px}.twoshaft .ts-scene .tss-placed{pointer-events:n\
one}.twoshaft .ts-pictured{display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .\
ts-pictured>:first-child{flex:1 1 280px;min-width:min(100%,240px)}.twoshaft-wide .ts-pictured>:first-child{position:stic\
ky;top:0}.twoshaft .ts-pictures{display:grid;flex:2 1 500px;min-width:0;grid-template-columns:repeat(auto-fit,minmax(min\
(100%,240px),1fr));gap:var(--ts-grid);margin:var(--ts-grid) 0}.twoshaft .ts-picture-card{position:relative;padding:var(-\
-ts-grid);border:1px solid var(--ts-line);cursor:pointer}.twoshaft .ts-picture-card.ts-on{outline:3px solid var(--ts-acc\
ent)}.twoshaft .ts-picture-card svg{width:100%;height:auto;max-height:300px}.twoshaft .ts-picture-letter{font-weight:600\
}.twoshaft .ts-trays{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-tray{display:flex;gap:var(--\
ts-grid);align-items:center}.twoshaft .ts-tray>div:last-child{display:grid;gap:calc(var(--ts-grid) / 2);max-width:22em}.\
twoshaft-form{padding-block:var(--ts-grid)}.twoshaft .ts-top{display:flex;flex-wrap:wrap;justify-content:space-between;g\
ap:0 calc(3 * var(--ts-grid));border-bottom:1px solid var(--ts-line);padding-bottom:calc(var(--ts-grid) / 2)}.twoshaft .\
ts-who{font-size:var(--ts-small);color:var(--ts-quiet)}.jp-Cell:has(.ts-top,.ts-build)~.jp-Cell .ts-top>.ts-who{display:\
none}.twoshaft .ts-field{border:0;min-width:0;margin:calc(2 * var(--ts-grid)) 0 0}.twoshaft .ts-prompt{display:block;pad\
ding:0;font-weight:600;margin-bottom:var(--ts-grid)}.twoshaft .ts-line-of{display:flex;flex-wrap:wrap;align-items:center\
;gap:var(--ts-grid)}.twoshaft .ts-line-of+.ts-read,.twoshaft .ts-line-of+.ts-read+.ts-status{display:inline}.twoshaft .t\
s-line-of+.ts-read:not(:empty){margin-right:calc(2 * var(--ts-grid))}.twoshaft .ts-read.ts-error,.twoshaft .ts-status-un\
read{color:var(--ts-ink);font-size:var(--ts-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-unread .ts-shape,.t\
woshaft .ts-status-bad .ts-shape{color:var(--ts-bad)}.twoshaft .ts-status-saved .ts-shape{color:var(--ts-good)}.twoshaft\
 .ts-status-bad{color:var(--ts-ink);font-weight:600}.twoshaft .ts-order+.ts-read{display:none}.twoshaft .ts-bench{margin\
-top:var(--ts-grid)}.twoshaft .ts-bench summary{cursor:pointer;min-height:24px;font-size:var(--ts-small);color:var(--ts-\
quiet)}.twoshaft .ts-bench[open]{border:1px solid var(--ts-line);padding:var(--ts-grid)}.twoshaft .ts-bench-rows{display\
:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,20em),1fr));gap:var(--ts-grid) calc(2 * var(--ts-grid));mar\
gin:var(--ts-grid) 0}.twoshaft .ts-bench-row{min-width:0}.twoshaft .ts-bench-row select{max-width:100%;min-width:0}.twos\
haft .ts-bench-row label{display:block;max-width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-height:0}.twoshaft\
.ts-question{border-left:4px solid var(--ts-accent);padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-acts{display:fle\
x;flex-wrap:wrap;gap:var(--ts-grid);margin-top:var(--ts-grid)}.twoshaft .ts-told:not(:empty){margin-top:var(--ts-grid)}.\
twoshaft .ts-told-unread{border:2px solid var(--ts-ink);padding:var(--ts-grid)}.twoshaft .ts-teacher{border-style:dashed\
;font-size:var(--ts-small)}.twoshaft.ts-question .ts-title{font-weight:600}.twoshaft.ts-question:has(.ts-asked>:nth-chil\
d(2)){max-width:none}.twoshaft .ts-asked{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,340px),1fr))\
;gap:0 calc(4 * var(--ts-grid));align-items:start}.twoshaft-start>div{max-width:1040px}.twoshaft-start h2{font-size:var(\
--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-in{margin:calc(2 * \
var(--ts-grid)) 0 calc(3 * var(--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;gap:calc(1.5 * var(--ts-grid));justi\
fy-items:start}.twoshaft-start .ts-pair{display:grid;gap:calc(var(--ts-grid) / 2)}.twoshaft-start .ts-pair label{font-we\
ight:600}.twoshaft-start .ts-pair .ts-box{width:22em;max-width:100%}.twoshaft-start .ts-first{background:var(--ts-accent\
);color:var(--ts-on-accent)}.twoshaft-start .ts-button{font-size:var(--ts-text)}.twoshaft-start .ts-said:not(:empty){bor\
der-left:3px solid var(--ts-accent);padding:var(--ts-grid);background:var(--ts-faint)}.twoshaft-start .ts-me{display:fle\
x;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:var(--ts-grid)}.twosh\
aft-start .ts-table{border-collapse:collapse;width:100%;margin:0 0 calc(2 * var(--ts-grid));font-size:var(--ts-text);tab\
le-layout:fixed}.twoshaft-start .ts-table :is(th,td){text-align:left;vertical-align:top;white-space:normal;padding:var(-\
-ts-grid);border:0;border-bottom:1px solid var(--ts-line);background:none;max-width:none}.twoshaft-start .ts-table thead\
 th{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-table th:nth-child(1){width:26%}.twoshaft-start \
.ts-table th:nth-child(2){width:16%}.twoshaft-start .ts-table th:nth-child(4){width:24%}.twoshaft-start .ts-small-line{d\
isplay:block;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-doing{display:flex;flex-wrap:wrap;align\
-items:center;gap:var(--ts-grid)}.twoshaft-start a.ts-link:is(:link,:visited,:hover,:focus,:active){color:var(--ts-accen\
t);text-decoration:underline;display:inline-flex;align-items:center;min-height:var(--ts-target);cursor:pointer}.twoshaft\
-start .ts-lessons{padding-left:calc(2 * var(--ts-grid))}.twoshaft-start .ts-lessons .ts-link{min-height:24px}.twoshaft-\
start .ts-module th{padding-top:calc(3 * var(--ts-grid));font-size:var(--ts-text)}.twoshaft-start .ts-table .ts-module t\
h{width:auto}.twoshaft-start .ts-assigned{margin-left:var(--ts-grid);font-weight:400;color:var(--ts-quiet)}.twoshaft-sta\
rt .ts-next{margin:0}.twoshaft-start summary{min-height:var(--ts-target);align-content:center;cursor:pointer}@media(max-\
width:560px){.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.twoshaft-start .ts-table :is(tr,th,\
td):nth-child(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:1px solid var(--ts-line);padding:va\
r(--ts-grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.twoshaft-start .ts-gaps{padding-left:\
calc(2 * var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{display:block}.twoshaft-start .ts-quest\
ion{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk{max-width:1240px}.twoshaft-desk .ts\
-desk-top{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid)}.twoshaft-desk\
 .ts-desk-pages{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin:var(--ts-grid) 0;padding-bottom:var(--ts-grid);bor\
der-bottom:1px solid var(--ts-line)}.twoshaft-desk .ts-button[aria-current=page]{border-width:3px;font-weight:700}.twosh\
aft-desk :is(h2,h3){font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-desk h3,.twoshaft-desk .\
ts-button{font-size:var(--ts-text)}.twoshaft-desk .ts-first{background:var(--ts-accent);color:var(--ts-on-accent)}.twosh\
aft-desk .ts-said:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border-left:3px solid var(--ts-accent);padding:var(--ts\
-grid);background:var(--ts-faint)}.twoshaft-desk :is(.ts-said,.ts-alert,.ts-told,.ts-trouble){white-space:pre-line;max-w\
idth:none}.twoshaft-desk .ts-desk-here{width:100%;scroll-margin-block:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-busy{d\
isplay:flex;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-desk-body[aria-busy=true]{cursor:progress}.twoshaft\
-desk .ts-desk-body>*{margin-top:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-caption{display:flex;flex-wrap:wrap;al\
ign-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:calc(var(--ts-grid) / 2)}.twoshaft-desk \
.ts-desk-scroll{max-height:360px;overflow:auto;border:1px solid var(--ts-line)}.twoshaft-desk .ts-table{border-collapse:\
collapse;margin:0;min-width:100%;font-size:var(--ts-text)}.twoshaft-desk .ts-table :is(th,td){text-align:left;vertical-a\
lign:top;white-space:normal;padding:calc(var(--ts-grid) / 2) var(--ts-grid);border:0;border-bottom:1px solid var(--ts-li\
ne);background:none;max-width:28em;font-weight:400;overflow-wrap:break-word}.twoshaft-desk .ts-table tbody th{position:s\
ticky;left:0;background:var(--ts-paper)}.twoshaft-desk .ts-table thead th{position:sticky;top:0;z-index:1;background:var\
(--ts-paper);box-shadow:inset 0 -1px var(--ts-line);white-space:nowrap}.twoshaft-desk .ts-table .ts-figure{text-align:ri\
ght;font-variant-numeric:tabular-nums}.twoshaft-desk .ts-table .ts-tick{width:24px}.twoshaft-desk input[type=checkbox]{w\
idth:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft-desk :is(.ts-sort,.ts-cell){min-height:24px;min-width:24px\
;padding:0;border:0;background:none;color:var(--ts-accent);font:inherit;text-align:inherit;cursor:pointer}.twoshaft-desk\
 .ts-sort{font-weight:600}.twoshaft-desk .ts-cell{text-decoration:underline}.twoshaft-desk .ts-desk-form{display:grid;ga\
p:var(--ts-grid);justify-items:start;padding-top:var(--ts-grid);border-top:1px solid var(--ts-line)}.twoshaft-desk .ts-d\
esk-form>*{min-width:0;max-width:100%}.twoshaft-desk .ts-desk-fields{display:flex;flex-wrap:wrap;align-items:flex-start;\
gap:var(--ts-grid) calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-field{display:grid;grid-template-columns:minmax(0,au\
to);gap:calc(var(--ts-grid) / 2);max-width:100%}.twoshaft-desk .ts-desk-field>label:not(.ts-option){font-weight:600}.two\
shaft-desk .ts-desk-field .ts-box{width:18em;max-width:100%}.twoshaft-desk textarea.ts-box{width:30em;padding:var(--ts-g\
rid)}.twoshaft-desk .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-quest\
ion{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk a.ts-link:is(:link,:visited,:hover,\
:focus,:active){color:var(--ts-accent);text-decoration:underline}.twoshaft-desk :is(textarea,a,h2,.ts-desk-scroll):focus\
-visible{outline:3px solid var(--ts-accent);outline-offset:2px}@media(forced-colors:active){.twoshaft-desk .ts-button[ar\
ia-current=page]{border-color:Highlight}.twoshaft-desk .ts-first{border-width:2px;font-weight:700}.twoshaft-desk .ts-sai\
d:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border:1px solid CanvasText}}.twoshaft .tsj-bench{display:flex;flex-wra\
p:wrap;gap:var(--ts-grid) calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .tsj-bench>*{flex:1 1 240px;min-widt\
h:0;max-width:max-content}.twoshaft .tsj-bench svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:p\
ointer}.twoshaft .tsj-bolt:focus{outline:none}.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-wi\
dth:4}.twoshaft .tsj-bolt.tsj-started circle{stroke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.two\
shaft .tsj-bolt.tsj-tight text{fill:var(--ts-paper)}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(\
--ts-grid)}.twoshaft .tsj-slide input{width:180px;max-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-targe\
t)}.twoshaft .tsj-figure{min-width:8ch;font-variant-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-hei\
ght:1.5em}.twoshaft .tsj-check{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.tw\
oshaft .tsj-check input{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-t\
emplate-columns:max-content minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-wi\
dth) + 12ch);margin:var(--ts-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block\
;max-width:100%;height:auto}.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:\
wrap}@media(max-width:700px){.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{bord\
er-collapse:collapse;font:var(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align\
:left;font-weight:600;padding:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-a\
lign:middle;padding:1px 12px 1px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twoshaft tabl\
e.tsk-board thead th{font-weight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:54ch;white-space:normal\
}.twoshaft table.tsk-board .tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft t\
able.tsk-board select{max-width:36ch}.twoshaft table.tsk-board :is(select,button){min-height:28px}.twoshaft table.tsk-bo\
ard{font-size:var(--ts-small)}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:\
600;border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{\
min-width:24ch}.twoshaft .tsk-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){.twoshaft table.\
tsk-board,.twoshaft table.tsk-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.\
twoshaft table.tsk-board thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft tab\
le.tsk-board tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twos\
haft table.tsk-board tbody td,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-widt\
h:0;padding:2px 0;text-align:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-bo\
ard tbody .tsk-best td{border:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twos\
haft table.tsk-board tbody th{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) "\
: ";color:var(--ts-quiet)}.twoshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-board select{max\
-width:100%}}.twoshaft .ts-gate{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 calc(2 * var(--ts-grid));ali\
gn-items:start;cursor:default;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none\
}.twoshaft .ts-pulling,.twoshaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accen\
t)}.twoshaft .ts-gate svg{user-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .t\
s-happened.ts-stopped,.twoshaft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;p\
adding-left:calc(4 * var(--ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate .ts-scroll{margin:0;paddi\
ng:0}.twoshaft .ts-gate .ts-prompt{margin-top:0}.twoshaft .ts-gate-work .ts-prompt{margin-block:0}.twoshaft .ts-gate-hin\
t{max-width:none}.twoshaft .ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 1\
2ch);font-weight:600}.twoshaft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3p\
x}.twoshaft .ts-lever .tsl-spot{fill:transparent;cursor:pointer}.twoshaft .ts-lever .tsl-spot:hover{fill:var(--ts-faint)\
;stroke:var(--ts-accent)}.twoshaft .ts-lever .tsl-knob{fill:var(--ts-accent);stroke:var(--ts-paper);stroke-width:2;curso\
r:grab;touch-action:none}.twoshaft .ts-lever .tsl-in{text-decoration:underline;font-weight:800}.twoshaft .ts-gate-work{d\
isplay:grid;grid-template-columns:minmax(0,3fr) minmax(0,2fr);gap:0 calc(3 * var(--ts-grid))}.twoshaft .ts-gate-work .ts\
-log{max-height:9rem}.twoshaft .ts-gate-work .ts-moves{display:grid;grid-template-columns:repeat(auto-fill,minmax(200px,\
1fr))}.twoshaft .ts-gate-work .ts-moves{gap:4px;margin-top:0}.twoshaft .ts-gate-work .ts-moves .ts-button{font-size:var(\
--ts-small);line-height:1.25}@media(max-width:900px){.twoshaft .ts-gate,.twoshaft .ts-gate-work{grid-template-columns:mi\
nmax(0,1fr)}}.twoshaft .tsw-train.ts-scroll.ts-fit svg{min-width:540px}.twoshaft .tsw-train svg{user-select:none}.twosha\
ft .tsw-counts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1fr));gap:4px var(--ts-grid);ma\
x-width:900px;margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-template-columns:68px\
 minmax(0,1fr);column-gap:var(--ts-grid);align-items:center;padding:2px 4px;border:1px solid var(--ts-line);border-radiu\
s:2px;text-align:left;font-size:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:\
1px 3px}.twoshaft .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-\
dial{grid-column:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:100%;height:auto\
;touch-action:none;cursor:grab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var\
(--ts-faint);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-wid\
th:2}.twoshaft .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .t\
sw-tick{stroke:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:calc(\
15px * var(--ts-grown, 1)) var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{font-family:monos\
pace;font-size:var(--ts-small);max-height:4.5em;overflow-y:auto}.twoshaft .tsw-figure{font-variant-numeric:tabular-nums}\
.twoshaft .tsw-figure:empty{min-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsw-say{max-width:none}.two\
shaft .tsh-picture{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{display:block;width:100%;min-width\
:680px;max-width:1100px;height:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaf\
t .tsh-place:hover .tsh-hit{stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:ho\
ver .tsh-hit{stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);\
stroke-width:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:3px solid var(--ts-accent);pa\
dding-left:calc(1.5 * var(--ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twosh\
aft .tsh-verdict{margin-top:var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-slider\
s{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:v\
ar(--ts-grid) 0;max-width:960px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em minmax(6em,1fr) 4em;align-ite\
ms:center;gap:var(--ts-grid);min-height:28px}.twoshaft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;\
min-height:24px}.twoshaft .tsl-row .ts-box{justify-self:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;te\
xt-align:right}.twoshaft .tsl-drawing{overflow-x:auto}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:min(\
520px,100%);max-width:820px;height:auto}.twoshaft .tsl-sum{font-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@me\
dia(max-width:480px){.twoshaft .tsl-sliders{grid-template-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wra\
p:wrap;min-width:0}.twoshaft .tsl-row input{max-width:100%}}.twoshaft .tsp-section{flex:1 1 320px;overflow-x:auto}.twosh\
aft .tsp-gauge{width:190px;height:173px;flex:none}.twoshaft .tsp-section svg{display:block;max-width:100%;height:auto;mi\
n-width:320px}.twoshaft .ts-pair[hidden]{display:none}.twoshaft .ts-cells{position:absolute;pointer-events:none}.twoshaf\
t .tsp-land.tsp-clear{fill:none}.twoshaft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-\
way{fill:none;stroke:var(--ts-bad);stroke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:var(--ts-ink);stro\
ke:var(--ts-paper);stroke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp\
-shut .tsp-chosen{display:none}.twoshaft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-grid));font-si\
ze:var(--ts-small);min-height:1.6em}.twoshaft .ts-key{display:inline-flex;align-items:center;gap:4px}.twoshaft .ts-swatc\
h{width:25px;height:15px;border:1px solid var(--ts-line)}.twoshaft-rig .ts-pad-tools .ts-box{max-width:15em}.twoshaft-ri\
g .ts-beside .ts-facts{max-width:none}.twoshaft .ts-range{accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-cl\
ock{min-width:6em;font-weight:600}.twoshaft .ts-unit{overflow:auto;max-height:max(20rem,min(620px,100vh - 370px));border\
:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:blo\
ck;min-width:720px;max-width:none;max-height:none;margin-inline:auto}.twoshaft .ts-apart .ts-unit svg{min-width:0;overfl\
ow:visible}.twoshaft .ts-unit [data-part]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,\
.tsu-line){stroke:var(--ts-accent);stroke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-unit [data-part]:hover path:no\
t(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible{outline:3px solid var(--ts-\
accent);outline-offset:-3px}.twoshaft .ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .\
ts-unit-words p{max-width:var(--ts-width)}.twoshaft.ts-together .tsu-number{display:none}.twoshaft .ts-unit :is(.tsu-axi\
s,.tsu-number){pointer-events:none}.twoshaft .ts-apart{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaf\
t .ts-apart-tools{flex:1 1 280px;max-width:380px}.twoshaft .ts-apart-tools .ts-slide>span{min-width:0}.twoshaft .ts-apar\
t-tools .ts-slid{min-width:6em}.twoshaft .ts-apart-picture{flex:3 1 600px;min-width:0}.twoshaft .ts-nextin{min-height:3e\
m}.twoshaft .ts-apart-list{list-style:none;margin:0;padding:0 var(--ts-grid) 0 0;max-height:300px;overflow:auto;font-siz\
e:var(--ts-small)}.twoshaft .ts-apart-list li{padding:2px var(--ts-grid);border-left:4px solid transparent}.twoshaft .ts\
-apart-list .ts-current{border-left-color:var(--ts-accent);font-weight:600}@media(forced-colors:active){.twoshaft .ts-ap\
art-list li:not(.ts-current){border-left-color:Canvas}}.twoshaft .ts-space{display:block;width:100%;height:clamp(260px,1\
00vh - 290px,460px);box-sizing:border-box;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:none}.two\
shaft .ts-space:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-photographs{display:f\
lex;flex-wrap:wrap;gap:var(--ts-grid)}.twoshaft .ts-photographs figure{flex:0 1 320px;margin:var(--ts-grid) 0}.twoshaft \
.ts-photographs svg{display:block;width:100%;height:auto;max-height:220px}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sen\
tences[hidden]{display:none}.twoshaft .ts-told{min-height:1.5em;max-height:6em;overflow-y:auto}.twoshaft .ts-build{displ\
ay:grid;grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));align-items:start}.twoshaft .\
ts-buildlist{display:grid;gap:4px;max-height:20rem;overflow-y:auto;padding:4px}.twoshaft .ts-buildstep{text-align:left;p\
adding-block:2px;min-height:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var(--ts-line)}.twoshaf\
t .ts-buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-cur\
rent]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand\
{border:1px solid var(--ts-line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twoshaft .ts-hand .ts-field{bo\
rder:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do{text-align:left;padd\
ing-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid);font-size:var(--ts-\
small)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.twoshaft .ts-record cap\
tion{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align:top;padding:3px 16px\
 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-record th[scope=row]{font\
-weight:400}.twoshaft .ts-record .ts-blank{min-width:12em;height:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-te\
mplate-columns:minmax(0,1fr)}.twoshaft .ts-buildlist,.twoshaft .ts-hand{max-height:none}}@media(forced-colors:active){.t\
woshaft-rig:not(.ts-begun,.ts-lost) .ts-first{outline:3px solid Highlight}.twoshaft .ts-button[aria-pressed=true],.twosh\
aft .ts-buildstep[aria-current],.twoshaft .ts-held{forced-color-adjust:none;background:Highlight;border-color:Highlight;\
color:HighlightText}.twoshaft :is(.ts-step,.ts-pathlist li):not(.ts-current,.ts-inblock){border-left-color:Canvas}.twosh\
aft :is(.ts-step,.ts-pathlist li).ts-current{border-left-color:Highlight}.twoshaft-bar .ts-tasks a:not([aria-current]){b\
order-bottom-color:Canvas}}`,ws="twoshaft-styles";function Jn(){let t=document.getElementById(ws);t?.textContent!==ms&&(t?.
remove(),document.head.append(s("style",{id:ws},ms)))}function Q({model:t,el:e},{kind:n,lost:r=()=>ne(e),line:o=()=>{}}){
Jn(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"ts-alert",role:"alert"}),c=gs(e),i=()=>e.
classList.contains("ts-lost"),u=[],d=Vn(t,()=>{i()||(e.classList.add("ts-lost"),c.down(),r())},g=>{i()||(g?c.down():c.up(),
o(g))}),p=Xn(e),f,m=(g,$)=>{t.on(g,$),u.push([g,$])};return m("msg:custom",g=>{g.type==="trouble"&&!i()&&(a.textContent=
g.reason)}),{alert:a,follow:m,isLost:i,send(g){i()||(e.classList.add("ts-begun"),t.send(g),clearTimeout(f),f=window.setTimeout(
()=>t.send({type:"rest"}),Gn))},asks(g,{first:$,begin:k,who:T="Practice. Nothing here is marked or saved."}={}){return $?.
classList.add("ts-first"),s("div",{class:"ts-who"},s("p",{class:"ts-asks"},g),k?s("p",{class:"ts-begin"},`Begin: ${k}.`):
"",T?s("p",{},T):"")},show:(...g)=>e.replaceChildren(...It(g)),close(){c.up(),clearTimeout(f),p(),d();for(let[g,$]of u)t.
off(g,$)}}}function bs({model:t,el:e}){let n=Q({model:t,el:e},{kind:"rig",lost:()=>u.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),o=s("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=at("order"),n.send({type:"order",order:p,turn:c})},
u=fe({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),l=s("button",{type:"\
button",class:"ts-button",onclick:()=>u.change([...a],"The first order stands again")},"Start again");u.tools.append(l),
n.show(n.asks("Which steps stand in a wrong place?",{first:u.tools,begin:"choose a step and move it up or down"}),n.alert,
Lt([u.element],[r,o]));function d(){let p=t.get("judged");c!==null&&p.turn!==c||(c=null,r.textContent=p.finding,o.textContent=
p.cost,u.setOrder(p.order),u.setNotes(p.notes))}return n.follow("change:judged",d),d(),n.close}function we(t){let e=t.get("pictured"),n=s("div",{class:"ts-photographs"}),r="",o=a=>{a.type!=="photographs"||`${a.of}:${a.
id}`!==r||n.replaceChildren(...a.shown.map(({svg:c,alt:i})=>{let u=s("figure",{});return u.innerHTML=c,u.append(s("figca\
ption",{},`From your college: ${i}`)),u}))};return t.on("msg:custom",o),{node:n,any:a=>e[a].length>0,show(a,c){let i=c.find(
l=>e[a].includes(l)),u=i===void 0?"":`${a}:${i}`;u!==r&&(r=u,n.replaceChildren(),i!==void 0&&t.send({type:"photographs",
of:a,id:i}))},close:()=>t.off("msg:custom",o)}}var Zn=["lit","bench","absent"],vs=[1,1.5,2,3,4.5];function zt({svg:t,parts:e,words:n},{name:r="The unit in section",tallest:o,
onChoose:a=()=>{}}={}){let c=s("div",{class:"ts-unit",tabindex:"0",role:"application","aria-label":`${r}. Left and right\
 arrows walk from part to part, up and down to the part above or below, plus and minus zoom.`});c.innerHTML=t;let i=c.querySelector(
"svg"),u=i.querySelector(".tsu-marks");i.setAttribute("aria-hidden","true"),i.removeAttribute("role");let l=new Map(e.map(
([y])=>[y,[]]));for(let y of tt(i,"[data-part]"))l.get(String(y.dataset.part))?.push(y);let d=new Map(e.map(([y],O)=>[y,
O])),p=s("p",{class:"ts-hint ts-unit-name",role:"status"}),f=xt({"aria-label":"Part",class:"ts-box ts-before"},[["","no \
part chosen"],...e.map(([y,O])=>[y,O])]),{width:m,height:g}=i.viewBox.baseVal,$=o?`min(100%, ${Math.round(o*m/g)}px)`:"1\
00%",k=new WeakMap,T=-1,N=0,L={},C=y=>{let O=L[y];return O==="absent"?" Not there yet.":O==="bench"?" On the bench.":O===
"lit"?" In hand.":""},M=y=>`${e[y][1]}. ${e[y][2]}${C(e[y][0])}`;function S(y){for(let b of tt(i,".tsu-chosen"))b.classList.
remove("tsu-chosen");T=y;let O=y<0?"":e[y][0];f.value=O,p.textContent=y<0?B:M(y);for(let b of l.get(O)??[])b.classList.add(
"tsu-chosen");y>=0&&w(O),a(O)}function A(y){let O=(l.get(y)??[]).map(Y=>{let{x:ft,y:H,width:G,height:q}=Y.getBBox(),[ot,
et]=k.get(Y)??[0,0];return{x:ft+ot,y:H+et,width:G,height:q}}),b=Math.min(...O.map(Y=>Y.x)),j=Math.max(...O.map(Y=>Y.x+Y.
width)),W=Math.min(...O.map(Y=>Y.y)),K=Math.max(...O.map(Y=>Y.y+Y.height));return{x:(b+j)/2,y:(W+K)/2}}function w(y){let O=A(
y),b=i.getBoundingClientRect().width/i.viewBox.baseVal.width,[j,W]=[O.x*b,O.y*b],{scrollLeft:K,scrollTop:Y,clientWidth:ft,
clientHeight:H}=c;(j<K+40||j>K+ft-40)&&(c.scrollLeft=j-ft/2),(W<Y+40||W>Y+H-40)&&(c.scrollTop=W-H/2)}function x(y){N=Math.
max(0,Math.min(vs.length-1,N+y)),i.style.width=`calc(${vs[N]} * ${$})`,i.style.height="auto",T>=0&&w(e[T][0])}function v(y){
let O=A(e[T][0]),[b]=e.map(([j],W)=>({k:W,at:A(j)})).filter(({k:j,at:W})=>j!==T&&(W.y-O.y)*y>4).sort((j,W)=>ks(j.at,O)-ks(
W.at,O));b&&S(b.k)}c.addEventListener("keydown",y=>{if($t(y))return;let O=e.length-1;if(y.key==="ArrowRight")S(T>=O?0:T+
1);else if(y.key==="ArrowLeft")S(T<=0?O:T-1);else if(y.key==="ArrowUp"||y.key==="ArrowDown")T<0?S(0):v(y.key==="ArrowUp"?
-1:1);else if(y.key==="Home")S(0);else if(y.key==="End")S(O);else if(y.key==="+"||y.key==="=")x(1);else if(y.key==="-")x(
-1);else if(y.key==="Escape")S(-1);else return;y.preventDefault()}),c.addEventListener("click",y=>{let O=wt(y,"[data-par\
t]")?.dataset.part;S(O===void 0?-1:d.get(O)??-1)}),c.addEventListener("pointerover",y=>{let O=wt(y,"[data-part]")?.dataset.
part;if(O===void 0||y.pointerType!=="mouse")return;let b=wt(y,"[data-solid]")?.querySelector("title")?.textContent,j=e[d.
get(O)??0][1];I.textContent=b&&!j.endsWith(b)?`${b} (${j})`:j}),c.addEventListener("pointerleave",()=>{I.textContent=""}),
f.addEventListener("change",()=>S(d.get(f.value)??-1));let I=s("span",{class:"ts-unit-over","aria-hidden":"true"}),B="Po\
int at a part, tap it, or choose it here to read its name.";p.textContent=B;let _=s("div",{class:"ts-tools"},s("span",{class:"\
ts-pair"},"Part ",f),nt("−",()=>x(-1),"Smaller"),nt("+",()=>x(1),"Larger"),I),J=s("details",{class:"ts-unit-words"},s(
"summary",{},"What is where, in words"),s("p",{},n));return x(0),{nodes:[_,p,c,J],choose:f,drawing:i,shift(y,[O,b]){k.set(
y,[O,b]),y.setAttribute("transform",`translate(${O.toFixed(1)} ${b.toFixed(1)})`)},show(y){L=y.looks;for(let[O,b]of l)for(let j of b)
for(let W of Zn)j.classList.toggle(`tsu-${W}`,L[O]===W);u.innerHTML=y.marks,T>=0&&(p.textContent=M(T))}}}function ks(t,e){
return Math.abs(t.y-e.y)+2*Math.abs(t.x-e.x)}function ys(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function xs({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=we(t),c=zt(t.get("pi\
cture")),i=s("p",{class:"ts-hint",role:"status"}),u=s("dl",{class:"ts-facts"}),l=s("div",{class:"ts-ready"}),d=s("select",
{class:"ts-box ts-before","aria-label":"A step that is not ready"}),p=s("input",{type:"text",inputmode:"numeric",size:"3",
class:"ts-box","aria-label":"Go to place",onkeydown:w=>{w.key==="Enter"&&C()}}),f=s("span"),m=w=>S.send({type:"move",by:w}),
g=w=>S.send({type:"go",position:w}),$=nt("Back",()=>m(-1),"One step back"),k=nt("Next",()=>m(1),"Next step"),T=nt("Start",
()=>g(0),"Start with an empty bench"),N=nt("End",()=>g(t.get("view").count),"End of the order"),L=nt("Try it",()=>S.send(
{type:"take",step:d.value}),"Try it: the step chosen here"),C=()=>{let w=Number.parseInt(p.value,10);w>=0&&g(w)},M=s("di\
v",{class:"ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},T,$,k,N,s("span",
{class:"ts-pair"},"place ",p,f,nt("Go",C,"Go to this place")));M.addEventListener("keydown",w=>{if(!(w.target===p||$t(w))){
if(w.key==="ArrowLeft")m(-1);else if(w.key==="ArrowRight")m(1);else if(w.key==="Home")g(0);else if(w.key==="End")g(t.get(
"view").count);else return;w.preventDefault()}});let S=Q({model:t,el:e},{kind:"rig"});S.show(S.asks("What comes next, an\
d what can no longer be reached?",{first:k,begin:"press Next"}),S.alert,n,M,Lt(c.nodes,[r,i,u,o,a.node,s("p",{class:"ts-\
prompt"},"Do another step next"),l,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",d,
L))]));function A(){let w=t.get("view");n.textContent=w.finding,r.textContent=w.happened,o.textContent=w.next?`Next in t\
his order: ${w.next}`:"This is the end of the order.",i.textContent=w.build.words,a.show("operation",w.in_hand),c.show(w.
build),u.replaceChildren(...Mt(w.facts));let x=l.contains(document.activeElement);l.replaceChildren(...w.ready.map(([B,_])=>nt(
_,()=>S.send({type:"take",step:B})))),w.ready.length||l.append(s("p",{class:"ts-hint"},"No step is ready.")),x&&(l.querySelector(
"button")??k).focus(),d.replaceChildren(...vt(w.waiting)),d.disabled=L.disabled=!w.waiting.length,p.value=String(w.position),
f.textContent=` of ${w.count} `;let v=w.position===0,I=w.position===w.count;for(let B of[$,T])ys(B,v);for(let B of[k,N])
ys(B,I)}return S.follow("change:view",A),A(),()=>{a.close(),S.close()}}function Gt(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=at("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var dt=(t,e,n,r,o)=>R("line",{x1:t,y1:e,x2:n,y2:r,class:o}),pt=(t,e,n,r="middle")=>R("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function Yt(){let t=R("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(R("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(dt(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(pt(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(R("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(dt(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*
Math.cos(o),"tsg-mark"))}let e=dt(100,134,100,119,"tsg-small"),n=R("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(e,n,R("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("tra\
nsform",`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${o}`)}}}function $s({top:t,mark:e,perFigure:n}){let r=R("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),o=c=>30+c/t*540;r.append(R("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*e<=t+1e-9;c+=1){let i=c%n===0;r.append(dt(o(c*e),22,o(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.
append(pt(o(c*e),84,String(Math.round(c*e))))}let a=R("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(
a,pt(586,14,"newtons","end")),{node:r,top:t,set(c,i){a.setAttribute("transform",`translate(${o(Math.min(c,t))} 0)`),r.setAttribute(
"aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function Ss({low:t,high:e,reach:n}){let r=R("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(R("rect",{x:o(t),y:34,width:o(
e)-o(t),height:24,class:"tsg-target"}),pt((o(t)+o(e))/2,84,"target"),dt(20,46,700,46,"tsg-mark"),dt(360,26,360,66,"tsg-m\
ark tsg-long"),pt(20,20,"end play","start"),pt(700,20,"preload","end"),pt(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let u of[
i,-i])r.append(dt(o(u),42,o(u),50,"tsg-mark"));r.append(pt(o(-n),70,`${n.toFixed(2)} mm`,"start"),pt(o(n),70,`${n.toFixed(
2)} mm`,"end"));let a=R("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=R("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return r.append(a,c),{node:r,set(i,u,l){a.setAttribute("transform",`translate(${o(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${o(u)} 0)`),r.setAttribute("aria-label",l)}}}function mt(t,{min:e,max:n,step:r,value:o,words:a,onInput:c}){let i=s(
"input",{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),u=s("output",{class:"ts-slid"},a(o));
return i.addEventListener("input",()=>{let l=a(Number(i.value));u.textContent=l,i.setAttribute("aria-valuetext",l),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,u),set(l){i.value=
String(l),u.textContent=a(l)}}}function gt(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},
...e.map(([a,c])=>s("option",{value:a,selected:a===n},c)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function Ls({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),u=s("u\
l",{class:"ts-sentences"}),l=Gt((w,x)=>M.send({type:"set",state:w,turn:x})),d=w=>{r={...r,...w},l.ask(r)},p=R("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),f=dt(0,0,0,0,"tsg-mark tsg-long"),m=pt(0,0,""),[g,
$]=n.readingsOnly?[72,48]:[96,120],k=g/(n.readingsOnly?r.radius:n.radii[1]),T=R("svg",{viewBox:`0 0 ${2*g+$} ${2*g+30}`,
width:2*g+$,height:2*g+30,class:"tsg-drum",role:"img"}),N=g+4;p.setAttribute("transform",`translate(${N} ${N})`),T.append(
p,f,dt(4,N,2*g+4,N,"tsg-centre"),dt(N,4,N,2*g+4,"tsg-centre"),R("circle",{cx:N,cy:N,r:10,class:"tsg-face"}),m);let L=z("\
Turn the shaft ten times",()=>d({turns:r.turns+10})),C=[s("div",{class:"ts-tools"},L)];if(!n.readingsOnly){let w=n.kinds,
x=w.map(([v,I])=>s("label",{class:"ts-option"},s("input",{type:"checkbox",checked:r.kinds.includes(v),onchange:B=>d({kinds:w.
map(([_])=>_).filter(_=>_===v?B.target.checked:r.kinds.includes(_))})}),`with ${I}`));C[0].append(z("Fit the rings anew",
()=>d({turns:0}))),x.length&&C.push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the b\
earings"),...x)),C.push(mt("Setting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:v=>d({setting:v}),words:v=>v<
0?`${(-v).toFixed(3)} mm of end play`:`${v.toFixed(3)} mm of preload`}).row,mt("Radius of the drum",{min:n.radii[0],max:n.
radii[1],step:1,value:r.radius,onInput:v=>d({radius:v}),words:v=>`${v} mm`}).row)}let M=Q({model:t,el:e},{kind:"rig"});M.
show(M.asks("How hard does the shaft turn?",{first:L,begin:"turn the shaft",who:n.readingsOnly?"Take your reading here; \
write it in the form.":void 0}),M.alert,s("div",{class:"tsg-beside"},T,s("div",{class:"tsg-side"},a,c)),...C,i,u);function S(){
let w=t.get("shown");l.waiting||(r=w.state);let x=k*w.state.radius;Tt(p,{r:x}),Tt(f,{x1:N,y1:N-x,x2:2*g+$,y2:N-x}),Tt(m,
{x:N,y:2*g+22}),m.textContent=`drum, radius ${w.state.radius} mm`,T.setAttribute("aria-label",`A drum of ${w.state.radius}\
 mm radius on the shaft; the cord leaves it at its edge towards the scale.`),o?.top!==w.scale.top&&(o=$s(w.scale),a.replaceChildren(
o.node),c.textContent=`Spring scale to ${w.scale.top} N, one mark ${w.scale.mark} N.`),o?.set(w.pull,w.pullWords),i.textContent=
w.finding,u.replaceChildren(...Dt(w.words)),l.answered(w.turn)}let A=()=>l.free();return M.follow("change:shown",S),M.follow(
"msg:custom",A),S(),M.close}function Ct({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=Gt((p,f)=>c.send({type:"set",state:p,turn:f})),
c=Q({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),u=n(r,p=>{o={...o,...p},a.ask(o)},o),l=r.readingsOnly?
"Take your readings here; write them in the form.":void 0;c.show(c.asks(u.asks,{first:u.first,begin:u.begin,who:l}),c.alert,
...u.side?[Lt([u.picture],[...u.controls,i])]:[s("div",{class:"tsg-wide"},u.picture),...u.controls,i]);function d(){let p=t.
get("shown");a.waiting||(o=p.state),u.set(p,o),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",
d),c.follow("msg:custom",a.free),d(),c.close}var St=(...t)=>s("div",{class:"ts-tools"},...t);var Qn={x:44,y:84,perMm:34};function to(t){let e=R("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=Qn,a=R("g",{}),c=R("g",{});e.append(R("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),R("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,c,pt(12,14,"main scale, mm","start"),pt(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let u=n+i*t.space*o;c.append(
dt(u,r,u,r+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(pt(u,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let u=Math.
max(0,Math.ceil(i.mm-1));u<=t.top+25;u+=1){let l=n+(u-i.mm)*o;l<4||l>756||(a.append(dt(l,r,l,r-(u%10===0?34:u%5===0?28:20),
"tsi-fine")),u%5===0&&a.append(pt(l,r-40,String(u))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function Cs(t){
return Ct(t,(e,n,r)=>{let o=to(e),a=mt("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:l=>n(
{rod:l})}),c=gt("Foot",e.places,r.place,l=>n({place:l,rod:0})),i=z("Push the rod down until it rests",()=>n({rod:e.top})),
u=gt("Look",e.eyes,r.eye,l=>n({eye:l}));return{asks:"How deep does it lie?",first:i,begin:"push the rod down",picture:o.
node,controls:[St(c.row,u.row),St(i,z("Lift the rod",()=>n({rod:0}))),a.row],set(l,d){o.set(l),c.box.value=d.place,u.box.
value=d.eye,a.box.value=d.rod}}})}function Jt(t,e){let n=e>1?.65/(e-1):0;return Array.from({length:e},(r,o)=>{let a=e>1?o*n:0,c=e>1?.35:1;return 1-Math.max(
0,Math.min(1,(t-a)/c))})}function Es(t,e,n,r){let[o,a]=[0,0];for(let c=n;c!==null;c=t[c].parent){let[i,u]=t[c].own[r]??[
0,0];o+=i*e[c],a+=u*e[c]}return[o,a]}function Re(t){let e=t.findIndex(n=>n>0);return{placed:t.filter(n=>n===0).length,next:e<
0?null:e}}function Ms(t,e){return t<=0?0:t>=e||e<2?1:.35+(t-1)*(1-.35)/(e-1)}function As(t,e,n){let r=[0,0,0];for(let o=n;o!==
null;o=t[o].parent){let a=e[o];for(let[c,i]of t[o].own.entries())r[c]+=i*a}return r}function je(t,e){globalThis.twoshaftChunks??=new Map;let n=globalThis.twoshaftChunks,r=n.get(e)??eo(t,e);return n.set(e,
r),r.catch(()=>n.delete(e)),r}function eo(t,e){return new Promise(n=>{let r=(o,a)=>{if(o.type!=="chunk"||o.name!==e)return;
t.off("msg:custom",r);let c=URL.createObjectURL(new Blob([a[0]],{type:"text/javascript"})),i=import(c);i.finally(()=>URL.
revokeObjectURL(c)).catch(()=>{}),n(i)};t.on("msg:custom",r),t.send({type:"chunk",name:e})})}var be=.12,Ht=1.15,Os="This browser draws nothing in three dimensions. The section shows the same parts.",ve;function Is(){
if(ve!==void 0)return ve;let t=document.createElement("canvas").getContext("webgl2");return t?.getExtension("WEBGL_lose_\
context")?.loseContext(),ve=!!t,ve}function Ns(t){Is()&&je(t,"solids").catch(()=>{})}function ke(t,e){let n=s("span",{style:`\
color: ${e}; forced-color-adjust: none`});t.append(n);let r=s("canvas",{width:1,height:1}).getContext("2d");r.fillStyle=
getComputedStyle(n).color,n.remove(),r.fillRect(0,0,1,1);let[o,a,c]=r.getImageData(0,0,1,1).data;return{text:`rgb(${o}, ${a}\
, ${c})`,light:(o+a+c)/765}}var He=window.matchMedia("(forced-colors: active)");function Ts(t){let[e,n,r]=He.matches?["C\
anvasText","Canvas","Highlight"]:["var(--ts-ink)","var(--ts-paper)","var(--ts-accent)"],o=ke(t,n),a=o.light>.5?18:40;return{
ink:ke(t,e).text,paper:o.text,accent:ke(t,r).text,metal:ke(t,`color-mix(in srgb, ${e} ${a}%, ${n})`).text}}function Bs(t,e,n){
let r=s("p",{class:"ts-hint ts-unit-name",role:"status"});if(!Is())return r.textContent=Os,{drawn:!1,nodes:[r],move(){},
ready(){},close(){}};let o=s("canvas",{class:"ts-space",tabindex:"0",role:"application","aria-label":"The parts in three\
 dimensions. Arrow keys turn, plus and minus zoom, Home looks as at first, H hides the chosen part, A shows all. The sec\
tion shows the same parts with their names."}),a=xt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],
...n.map(([M,S])=>[M,S])]),c=new Set,i,u=()=>[0,0,0],l=()=>{},d="Drag or use the arrow keys to turn. Tap a part, or choo\
se it here, to read its name.";r.textContent="Drawing …";function p(){let M=n.find(([A])=>A===a.value),S=c.has(a.value)?
" Hidden.":"";r.textContent=M?`${M[1]}. ${M[2]}${S}`:d,i?.look(a.value,c)}function f(){a.value&&(c.delete(a.value)||c.add(
a.value),p())}function m(){c.clear(),p()}a.addEventListener("change",p);let g={ArrowLeft:()=>i?.turnBy(-be,0),ArrowRight:()=>i?.
turnBy(be,0),ArrowUp:()=>i?.turnBy(0,be),ArrowDown:()=>i?.turnBy(0,-be),"+":()=>i?.zoomBy(Ht),"=":()=>i?.zoomBy(Ht),"-":()=>i?.
zoomBy(1/Ht),Home:()=>i?.home(),h:f,a:m};o.addEventListener("keydown",M=>{let S=g[M.key]??g[M.key.toLowerCase()];!S||$t(
M)||(S(),M.preventDefault())});let $=null;o.addEventListener("pointerdown",M=>{$={x:M.clientX,y:M.clientY,far:!1},o.setPointerCapture(
M.pointerId)}),o.addEventListener("pointermove",M=>{if(!$)return;let[S,A]=[M.clientX-$.x,M.clientY-$.y];!$.far&&Math.hypot(
S,A)<4||($={x:M.clientX,y:M.clientY,far:!0},i?.turnBy(-S/150,A/150))}),o.addEventListener("pointerup",M=>{if($&&!$.far){
let{left:S,top:A,width:w,height:x}=o.getBoundingClientRect(),[v,I]=[(M.clientX-S)/w,(M.clientY-A)/x];a.value=i?.partAt(2*
v-1,1-2*I)??"",p()}$=null}),o.addEventListener("wheel",M=>{document.activeElement===o&&(i?.zoomBy(M.deltaY<0?Ht:1/Ht),M.
preventDefault())},{passive:!1});let k=()=>{i?.recolour(Ts(o.parentElement??document.body)),p()},T=new MutationObserver(
k),N=new ResizeObserver(()=>i?.paint()),L=!1;return je(t,"solids").then(({solidsView:M})=>{L||(i=M(o,e,Ts(o.parentElement??
document.body)),i.move(u),i.fit(),l(),i.home(),i.paint(),N.observe(o),T.observe(document.body,{attributes:!0}),He.addEventListener(
"change",k),p(),o.dataset.painted="true")},()=>{r.textContent=Os}),{drawn:!0,nodes:[s("div",{class:"ts-tools"},s("span",
{class:"ts-pair"},"Part ",a),nt("Hide or show",f,"Hide or show the chosen part"),nt("Show all",m,"Show all parts"),nt("−",
()=>i?.zoomBy(1/Ht),"Smaller"),nt("+",()=>i?.zoomBy(Ht),"Larger")),r,o],move(M){u=M,i?.move(M)},ready(M){l=M},close(){L=
!0,N.disconnect(),T.disconnect(),He.removeEventListener("change",k),i?.close()}}}var ye=200,so=580,no="2.6";function Ds({model:t,el:e}){let n=s("p",{class:"ts-finding"}),r=s("p",{class:"ts-hint ts-next\
in",role:"status"}),o=s("div",{class:"ts-apart-picture"}),a=s("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"Wha\
t goes in"}),c=t.get("stages"),i=gt("Show",c,t.get("stage"),w=>A.send({type:"stage",stage:w})),u=mt("From apart to toget\
her",{min:0,max:ye,step:1,value:0,words:w=>w<=0?"apart":w>=ye?"together":"on the way",onInput:w=>L(w/ye)}),l=t.get("pict\
ure"),d,p=[],f=[],m=0,g=!1,$,k=nt("In three dimensions",()=>{g=!g,k.setAttribute("aria-pressed",String(g)),M()});k.setAttribute(
"aria-pressed","false");function T(w){u.set(Math.round(w*ye)),L(w)}function N(w){let{placed:x}=Re(Jt(m,l.movers.length));
T(Ms(x+w,l.movers.length))}function L(w){if(m=w,!d)return;let x=Jt(m,l.movers.length);for(let{group:_,mover:J,view:y}of p)
d.shift(_,Es(l.movers,x,J,y));C(x);for(let _ of f)_.style.opacity=String(1-m);e.classList.toggle("ts-together",m>.5);let{
placed:v,next:I}=Re(x),B=`${v} of ${x.length} in place.`;for(let[_,J]of[...a.children].entries())J.classList.toggle("ts-\
current",_===I);r.textContent=I===null?"All in place.":`${B} Next in: ${l.movers[I].words}.`}function C(w){let{movers:x}=t.
get("space");$?.move(v=>As(x,w,v))}function M(){if($?.close(),$=void 0,!!d&&(o.replaceChildren(...g?[]:d.nodes),!!g)){if(t.
get("space").stage!==t.get("stage")){Ns(t),A.send({type:"space"});return}$=Bs(t,t.get("space"),l.parts),C(Jt(0,l.movers.
length)),o.replaceChildren(...$.nodes,...$.drawn?[]:d.nodes),$.ready(()=>C(Jt(m,l.movers.length)))}}function S(){if(l=t.
get("picture"),n.textContent=t.get("finding"),i.box.value=t.get("stage"),d=void 0,o.replaceChildren(),!l.svg)return;d=zt(
l,{name:"Parts apart",tallest:so}),d.drawing.dataset.grow=no,p=tt(d.drawing,"[data-move]").map(x=>({group:x,mover:Number(
x.dataset.move),view:String(x.dataset.view)})),f=tt(d.drawing,".tsu-traces"),a.replaceChildren(...l.movers.map(({words:x})=>s(
"li",{},x))),M(),L(m)}let A=Q({model:t,el:e},{kind:"rig"});return A.show(A.asks("How do these parts go together?",{first:u.
box,begin:"move the slider",who:""}),A.alert,n,s("div",{class:"ts-apart"},s("div",{class:"ts-apart-tools"},i.row,u.row,s(
"div",{class:"ts-tools"},nt("One in",()=>N(1),"One part more in place"),nt("One out",()=>N(-1),"One part less in place")),
k,r,a),o)),A.follow("change:picture",S),A.follow("change:space",M),S(),()=>{$?.close(),A.close()}}function Ps({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=s("div",{class:"tsj-bars"}),i=tt(a,"[data-bolt]"),u=at("tor\
que"),l=s("input",{id:u,type:"range",min:10,max:100,step:5,oninput:()=>f()});l.value="100";let d=s("output",{class:"tsj-\
figure",for:u}),p=()=>l.value==="100"?n.torque:Number((Math.round(n.torque*Number(l.value)/100/n.step)*n.step).toFixed(3));
function f(){d.textContent=`${p()} N·m`,l.setAttribute("aria-valuetext",`${p()} newton metres, ${l.value} percent of th\
e torque`)}let m=w=>L.send({type:"pull",bolt:w,torque:p()}),g=z("Take back",()=>L.send({type:"undo"})),$=z("Wait until t\
he film has run out",()=>L.send({type:"wait"})),k=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>L.send({type:"set",film:Number(k.value)})},...n.films.map(w=>s("option",{value:w},w?`${w} µm thick`:"none"))),
T=s("input",{type:"checkbox",onchange:()=>L.send({type:"set",scattered:T.checked})});a.addEventListener("click",w=>{let x=wt(
w,"[data-bolt]");x&&(N(x),m(Number(x.dataset.bolt)))});let N=w=>{for(let x of i)x.setAttribute("tabindex",x===w?"0":"-1");
w.focus({preventScroll:!0})};a.addEventListener("keydown",w=>{let x=wt(w,"[data-bolt]");if(!x||w.ctrlKey||w.metaKey||w.altKey)
return;let v=Number(x.dataset.bolt),I={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[w.key];if(I)N(i[(v+I+i.length)%
i.length]);else if(w.key==="Home")N(i[0]);else if(w.key==="End")N(i[i.length-1]);else if(w.key==="Enter"||w.key===" ")w.
repeat||m(v);else return;w.preventDefault()});let L=Q({model:t,el:e},{kind:"rig"}),C=z("Start all by hand",()=>L.send({type:"\
start"})),M=s("div",{class:"ts-tools",role:"group","aria-label":"Bolts"},C,...n.rounds.map(([w,x])=>z(`One round ${x}`,()=>L.
send({type:"round",pattern:w,torque:p()}))),g,z("Start again",()=>L.send({type:"again"}))),S=s("div",{class:"ts-tools",role:"\
group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:u},"Wrench set to"),l,d));n.films.length&&S.append(
s("label",{class:"ts-pair"},"Wet sealant",k),$,s("label",{class:"tsj-check"},T,"friction scatters from bolt to bolt")),L.
show(L.asks("Does every bolt keep its clamp?",{first:C,begin:"start all bolts by hand",who:n.readingsOnly?"Nothing is sa\
ved here; your answers stand in the form.":void 0}),L.alert,r,S,M,o,s("div",{class:"tsj-bench"},a,c),s("details",{class:"\
ts-keys"},s("summary",{},"How, and keys"),"The first choice of a bolt starts it by hand, the next ones pull it. Arrows g\
o from bolt to bolt, Enter pulls."));function A(){let w=t.get("view");r.textContent=w.finding,o.textContent=w.happened,c.
innerHTML=w.bars;for(let[x,v]of i.entries()){let I=w.tight[x]?`${w.clamps[x]} kN`:w.started[x]?"started by hand":"not st\
arted";v.setAttribute("aria-label",`Bolt ${x+1} of ${n.count}, ${I}`),v.classList.toggle("tsj-tight",w.tight[x]),v.classList.
toggle("tsj-started",w.started[x])}g.disabled=!w.pulls,$.disabled=!w.standing,k.value=String(w.film),T.checked=w.scattered}
return L.follow("change:view",A),f(),A(),L.close}var Rs="tsk-number";function Bt(t,e,...n){return s("td",{class:e?Rs:null,"data-label":t||null,role:"cell"},...n)}function xe(t,e,n){
let r=e.map(([c,i])=>s("th",{scope:"col",role:"columnheader",class:i?Rs:null},c)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function js({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),c=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),u=new Map;for(let[f,
m,g,$]of n.checks){let k=s("select",{class:"ts-box","aria-label":`What it showed: ${m}`,onchange:()=>d.send({type:"obser\
ve",check:f,shown:k.value})},s("option",{value:""},"Not made"),...vt($)),T=Bt("worth, bit",!0),N=Bt("bit a minute",!0),L=s(
"tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},m),Bt("min",!0,`${g}`),Bt("it showed",!1,k),T,N);u.set(f,{box:k,
tells:T,rate:N,row:L}),i.append(L)}let l=s("button",{class:"ts-button",type:"button",onclick:()=>d.send({type:"clear"})},
"Take all observations back"),d=Q({model:t,el:e},{kind:"rig"});d.show(d.asks("Which fault is it, and which check comes n\
ext?",{first:u.values().next().value?.box,begin:"say what a check showed"}),d.alert,r,a,c,xe("Checks: what each showed, \
and what it is still worth",[["Check"],["min",!0],["It showed"],["worth, bit",!0],["bit a minute",!0]],i),s("div",{class:"\
ts-tools"},l,o));function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.spent,c.textContent=f.more,a.replaceChildren(
...Dt(f.left.map(([$,k])=>`${$} (${k})`)));let m=f.ranked,g=new Map(m.map(([$,k,T],N)=>[$,{bits:k,rate:T,rank:N}]));for(let[
$,{box:k,tells:T,rate:N,row:L}]of u){let C=f.observed[$],M=g.get($);k.value=C??"",T.textContent=M?M.bits:C!==void 0?"mad\
e":"nothing",N.textContent=M?M.rate+(M.rank===0?" ◀ best next":""):"–",L.classList.toggle("tsk-best",M?.rank===0)}}return d.
follow("change:view",p),p(),d.close}function Hs(t,{move:e,hand:n}){let{element:r,at:o}=ge(t),a=Object.entries(t.aims).filter(([u])=>u.startsWith("at:")),c=(u,l)=>{
let[d,p]=o(u,l);return R("circle",{cx:d,cy:p,r:16,class:"tsl-spot",...{"data-travel":u,"data-turn":l}})},i=R("g",{class:"\
tsl-knob"},R("circle",{r:12}));return r.append(...a.map(([,[u]])=>c(Number(u),0)),...t.gears.map(([,u,l])=>c(u,l)),i),r.
classList.add("ts-lever"),r.addEventListener("click",u=>{let l=wt(u,".tsl-spot");if(!l)return;let d=[Number(l.dataset.travel),
Number(l.dataset.turn)];for(let p of ls(t.aims,n(),d))e(p)}),{element:r,scale:[Vt,he],show([u,l],d){let[p,f]=o(u,l);i.setAttribute(
"transform",`translate(${p.toFixed(1)} ${f.toFixed(1)})`);for(let m of tt(r,"[data-gear]"))m.classList.toggle("tsl-in",d.
includes(String(m.dataset.gear)))}}}function Ws({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit"}),a=Hs(t.get("plan"),{move:x=>T({type:"move",code:x}),hand:()=>t.get("view").hand}),
c=s("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=s("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...vt(t.get("builds"))),u=nt("Start again",()=>T({type:"reset"})),l=s("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([x,v])=>nt(v,()=>T({type:"move",code:x})))),
d=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),p=s("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),f=s("p",{class:"ts-proof",role:"status"}),m=nt("What does a full hand test find?",()=>{
m.disabled=!0,f.textContent="testing",T({type:"prove"})}),g=Q({model:t,el:e},{kind:"rig"});c.append(s("div",{},s("p",{class:"\
ts-prompt"},"The lever"),a.element),o),g.show(g.asks("Which gears can the lever reach?",{first:a.element,begin:"press a \
place in the gate"}),g.alert,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Put together: ",i),u,m),n,c,r,f,s("p",
{class:"ts-hint ts-gate-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down tu\
rn. Or in words:"),s("div",{class:"ts-gate-work"},l,s("div",{},s("p",{class:"ts-prompt"},"Tried by hand"),p,d)));let $=0,
k="";function T(x){$+=1,g.send({...x,turn:$})}function N(){let x=t.get("view");if(k!==t.get("figure")){k=t.get("figure"),
o.innerHTML=k;let v=_t(o,"svg");v.removeAttribute("role"),v.setAttribute("aria-hidden","true")}for(let v of tt(o,"[data-\
body]")){let[I,B]=x.moved[String(v.dataset.rides??v.dataset.body)]??[0,0];v.setAttribute("transform",`translate(${I.toFixed(
2)} ${B.toFixed(2)})`)}for(let v of tt(o,"[data-gear]"))v.classList.toggle("tsg-in",x.gears.includes(v.dataset.gear));for(let v of tt(
o,"[data-lifts]"))v.classList.toggle("tsg-up",x.lifted);a.show(x.hand,x.gears),c.dataset.turn=String(x.turn),n.textContent=
`${x.gears.length>1?"■ ":x.gears.length?"● ":"○ "}${x.title}.`,r.textContent=x.happened,r.classList.toggle("ts-sto\
pped",/topped by/.test(x.happened)),(d.childElementCount!==x.log.length||d.lastElementChild?.textContent!==x.log.at(-1))&&
(d.replaceChildren(...x.log.map(v=>s("li",{class:/topped by/.test(v)?"ts-stopped":""},v))),d.scrollTop=d.scrollHeight),p.
hidden=x.log.length>0,i.value=x.build,f.textContent=x.proof,m.disabled=!1,M=!1,w()}c.addEventListener("keydown",x=>{if($t(
x))return;let v={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[x.key];v&&(x.preventDefault(),T({type:"\
nudge",travel:v[0],turned:v[1]}))}),i.addEventListener("change",()=>T({type:"build",build:i.value}));let L=null,C=null,M=!1;
function S(x,v){let I=v.getBoundingClientRect(),B=v.viewBox.baseVal.width/I.width;return[(x.clientX-I.left)*B,(x.clientY-
I.top)*B]}c.addEventListener("pointerdown",x=>{let v=wt(x,".tsg-panel, .tsl-knob");if(!v||x.button!==0)return;let I=v.ownerSVGElement,
B=t.get("view").hand,[_,J]=S(x,I),y=Number(v.dataset.scale),O=y?[y,y]:a.scale;L={svg:I,x:_-B[0]*O[0],y:J+B[1]*O[1],scale:O},
c.setPointerCapture(x.pointerId),c.focus({preventScroll:!0}),c.classList.add("ts-pulling"),x.preventDefault()}),c.addEventListener(
"pointermove",x=>{if(!L)return;let[v,I]=S(x,L.svg),{scale:B}=L;C={travel_mm:(v-L.x)/B[0],turn_mm:(L.y-I)/B[1]},w()});let A=()=>{
L=null,c.classList.remove("ts-pulling")};c.addEventListener("pointerup",A),c.addEventListener("pointercancel",A);function w(){
if(M||!C)return;M=!0;let x=C;C=null,T({type:"pull",...x})}return g.follow("msg:custom",x=>{x.type==="trouble"&&(M=!1)}),
g.follow("change:view",N),N(),g.close}function _s({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding tsw-say",role:"status"}),a=s(
"p",{class:"ts-happened tsw-happened",role:"status"}),c=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,
l=n.gears.map(([v,I])=>s("button",{type:"button",class:"ts-button","data-gear":v,"aria-pressed":"false",onclick:()=>A({type:"\
gear",gear:v})},I)),d=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:v=>A({type:"hold",shaft:v.target.
value})},...vt(n.holds)),p=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:v=>{i=v.target.value,x()}},
...vt(r.dials.map(v=>[v.shaft,v.name]))),f=v=>A({type:"turn",shaft:i,turns:v}),m=`1/${n.marks}`,g=s("div",{class:"ts-too\
ls",role:"group","aria-label":"Turn the shaft"},nt("↺ 1 turn",()=>f(-1),"One turn anticlockwise"),nt(`↺ ${m}`,()=>f(
-n.step),`${m} turn anticlockwise`),nt("↺ a touch",()=>f(-n.fine),"A touch anticlockwise"),nt("a touch ↻",()=>f(n.fine),
"A touch clockwise"),nt(`${m} ↻`,()=>f(n.step),`${m} turn clockwise`),nt("1 turn ↻",()=>f(1),"One turn clockwise"),nt(
"Marks to zero",()=>A({type:"reset"}))),$=new Map;for(let v of r.dials){let I=R("g",{},R("circle",{class:"tsw-end",r:34}),
R("line",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),R("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),B=[];for(let j=0;j<
n.marks;j+=1)B.push(R("line",{class:"tsw-tick",y1:-40,y2:j?-47:-52,transform:`rotate(${j*360/n.marks})`})),j&&B.push(R("\
text",{class:"tsw-number",x:57*Math.sin(j*2*Math.PI/n.marks),y:-57*Math.cos(j*2*Math.PI/n.marks)+4},String(j)));let _=R(
"svg",{viewBox:"-70 -70 140 140",class:"tsw-dial","data-shaft":v.shaft,"aria-hidden":"true"},R("circle",{class:"tsw-plat\
e",r:40}),...B,R("path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),I),J=s("div",{class:"tsw-count",tabindex:"0",role:"\
application","aria-roledescription":"shaft","data-shaft":v.shaft},s("div",{class:"tsw-name"}),_,s("div",{class:"tsw-stro\
kes","aria-hidden":"true"}),s("div",{class:"tsw-figure"}));$.set(v.shaft,{box:J,svg:_,shaftEnd:I}),J.addEventListener("f\
ocus",()=>{i!==v.shaft&&(i=v.shaft,x())}),J.addEventListener("keydown",j=>{if($t(j))return;let W={ArrowRight:1,ArrowDown:1,
ArrowLeft:-1,ArrowUp:-1,PageDown:1,PageUp:-1}[j.key];W&&(j.preventDefault(),i=v.shaft,f(W*(j.key.startsWith("Page")?1:j.
shiftKey?n.fine:n.step)))});let y=null,O=j=>{let W=_.getBoundingClientRect();return Math.atan2(j.clientX-W.left-W.width/
2,W.top+W.height/2-j.clientY)/(2*Math.PI)};_.addEventListener("pointerdown",j=>{j.button===0&&(y=O(j),_.setPointerCapture(
j.pointerId),J.focus({preventScroll:!0}),j.preventDefault())}),_.addEventListener("pointermove",j=>{if(y===null)return;let W=O(
j),K=W-y;K-=Math.round(K),y=W,k+=K,N()});let b=()=>{y=null};_.addEventListener("pointerup",b),_.addEventListener("pointe\
rcancel",b)}let k=0,T=!1;function N(){if(T||Math.abs(k)<.002)return;T=!0;let v=k;k=0,f(v)}let L=Q({model:t,el:e},{kind:"\
rig"}),C=[s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Hold still: ",d),s("span",{class:"ts-pair"},"Turn by ha\
nd: ",p)),s("div",{class:"tsw-counts"},...[...$.values()].map(v=>v.box)),g,a];L.show(L.asks("How many turns does it take\
?",{first:g,begin:n.closed?"turn a shaft":"engage a gear, then turn a shaft",who:n.closed?"Nothing is saved here; your a\
nswers stand in the form.":void 0}),L.alert,o,!n.closed&&s("div",{class:"ts-tools",role:"group","aria-label":"Gears enga\
ged"},s("span",{},"Engage: "),...l),...n.closed?C:[Lt([c],C)],s("p",{class:"ts-hint tsw-say"},`All three are seen from t\
he clutch side. Drag a dial round, or go to it and use the arrow keys (${m} turn), Shift with an arrow key (a touch) or \
Page Up and Page Down (one turn). Each stroke is a whole turn.`));let M=0,S=null;function A(v){M+=1,L.send({...v,turn:M})}
let w=v=>{let I=[];for(let B=v;B>0;B-=5)I.push(B>=5?"||||/":"|".repeat(B));return I.join(" ")};function x(){let v=t.get(
"view");S!==t.get("figure")&&(S=String(t.get("figure")),c.innerHTML=S);for(let I of tt(c,"[data-wheel]")){let[B,_]=v.wheels[String(
I.dataset.wheel)]??[0,!0];I.setAttribute("transform",`translate(0 ${(B*Number(I.dataset.reach)).toFixed(1)})`),I.classList.
toggle("tsw-behind",!_)}for(let I of l)I.setAttribute("aria-pressed",String(v.engaged.includes(I.dataset.gear)));d.value=
v.held,p.value=i;for(let I of v.dials){let{box:B,shaftEnd:_}=$.get(I.shaft),J=I.way>0?"↻":I.way<0?"↺":"";_.setAttribute(
"transform",`rotate(${I.angle})`);let[y,,O,b]=B.children;y.textContent=`${I.name}${I.held?", held":I.shaft===i?", your h\
and":""}`,O.textContent=I.strokes||J?`${J} ${w(I.strokes)}`:"no stroke",b.textContent=I.figure,B.classList.toggle("tsw-h\
and",I.shaft===i),B.classList.toggle("tsw-held",I.held),B.setAttribute("aria-label",`${I.name}${I.held?", held":""}. ${I.
words}`)}o.textContent=v.finding,a.textContent=v.happened,e.dataset.turn=String(v.turn),T=!1,N()}return L.follow("change\
:view",x),x(),L.close}function Fs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),c=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,c),u=[],
l=[],d=null,p=t.get("plan").lookingOnly,f=(S,A)=>s("button",{type:"button",class:"ts-button","data-verdict":S,"aria-pres\
sed":"false",onclick:()=>k.send({type:"judge",place:d,verdict:S})},A),m=p?[]:[f("stop","Stop here"),f("well","Fine as it\
 is")],g=s("button",{type:"button",class:"ts-button",onclick:()=>k.send({type:"next"})},"Another day"),$=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...m);t.get("plan").more&&$.append(g);let k=Q({model:t,
el:e},{kind:"rig"});k.show(k.asks(p?"What is to be seen at each place?":"Where can somebody get hurt?",{first:p?r:m[0],begin:p?
"choose a place":"choose a place and judge it",who:p?"Nothing is saved here; your answers stand in the form.":void 0}),k.
alert,n,s("p",{class:"ts-keys"},p?"Choose a place to read what can be seen there. Keys: arrows go from place to place.":
"Choose a place, read what can be seen there, and judge it. Keys: arrows go from place to place; Tab goes on to the butt\
ons."),Lt([r],[i,!p&&$]));function T(S,A){let w=S!==d;d=S;for(let[x,v]of l.entries()){let I=u[x][0]===S;v.setAttribute("\
tabindex",I?"0":"-1"),v.setAttribute("aria-pressed",String(I)),v.classList.toggle("tsh-chosen",I),I&&A&&(v.focus({preventScroll:!0}),
N(v))}w&&k.send({type:"choose",place:S})}function N(S){let A=_t(S,".tsh-hit").getBoundingClientRect(),w=r.getBoundingClientRect();
(A.left<w.left||A.right>w.right)&&(r.scrollLeft+=A.left-w.left-(w.width-A.width)/2),(A.bottom<0||A.bottom>innerHeight||A.
top<0)&&S.scrollIntoView({block:"nearest"})}function L(){let S=t.get("plan");u=S.places,r.innerHTML=S.drawing,_t(r,"svg").
setAttribute("role","group"),l=u.map(([A])=>_t(r,`[data-place="${A}"]`)),l.forEach((A,w)=>{A.setAttribute("role","button"),
A.setAttribute("aria-label",`${w+1} ${u[w][1]}`),A.addEventListener("click",()=>T(u[w][0],!0))}),d=String(t.get("view").
chosen),T(d,!1)}r.addEventListener("keydown",S=>{if($t(S))return;let A=u.findIndex(([v])=>v===d),w=Math.min(6,u.length),
x=A;if(S.key==="ArrowRight")x=A+1;else if(S.key==="ArrowLeft")x=A-1;else if(S.key==="ArrowDown")x=A+w;else if(S.key==="A\
rrowUp")x=A-w;else if(S.key==="Home")x=0;else if(S.key==="End")x=u.length-1;else if(S.key!=="Enter"&&S.key!==" ")return;
S.preventDefault(),x>=0&&x<u.length&&T(u[x][0],!0)});function C(){let S=t.get("view");n.textContent=S.finding;let A=u.findIndex(
([v])=>v===S.chosen);o.textContent=`${A+1}  ${u[A][1]}`,a.textContent=S.seen;let{verdict:w,...x}=S.told;if(c.replaceChildren(),
w){let v=S.judged[S.chosen],I=v==="stop"==(w==="Stop here."),B=v==="stop"?"Stop here":"Fine as it is";c.append(s("p",{class:"\
tsh-verdict"},I?`✓ Yes: ${w}`:`✗ You said “${B}”. The course says: ${w}`),s("dl",{class:"ts-facts"},...Object.entries(
x).flatMap(([_,J])=>[s("dt",{},_),s("dd",{},J)])))}for(let v of m)v.setAttribute("aria-pressed",String(S.judged[S.chosen]===
v.dataset.verdict));for(let[v,I]of l.entries()){let B=S.judged[u[v][0]];I.setAttribute("aria-label",`${v+1} ${u[v][1]}${B?
`, judged: ${B==="stop"?"stop here":"fine as it is"}`:""}`);let _=I.querySelector(".tsh-tag");if(!B){_?.remove();continue}
_||(_=R("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),I.append(_)),_.textContent=B==="stop"?"■ \
stop":"○ well"}e.dataset.turn=S.chosen}let M=()=>{L(),C()};return k.follow("change:plan",M),k.follow("change:view",C),
M(),k.close}function Ks({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),c=new Map,u=n.sliders.map(([f,m,g,$,k,T])=>{let N=at(f.replace("_","-")),L=s("output",{class:"\
tsl-figure",for:N}),C=s("input",{id:N,type:"range",min:$,max:k,step:T,oninput:()=>{M(),d.send({type:"set",name:f,value:Number(
C.value)})}}),M=()=>{L.textContent=`${C.value} ${g}`,C.setAttribute("aria-valuetext",`${C.value} ${g==="°"?"degrees":g}`)};
return c.set(f,{slider:C,say:M}),s("div",{class:"tsl-row"},s("label",{for:N},m),C,L)}),l=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>d.send({type:"set",name:"grip",value:l.value})},...vt(n.grips)),d=Q({model:t,el:e},{kind:"r\
ig"});d.show(d.asks("Is this lift safe by hand?",{first:c.values().next().value?.slider,begin:"set the load"}),d.alert,r,
s("div",{class:"tsl-sliders",role:"group","aria-label":"The lift"},...u,s("div",{class:"tsl-row"},s("span",{},"Grip"),l)),
a,o,s("p",{class:"ts-keys"},"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));
function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.sum,a.innerHTML=f.drawing;for(let[m,{slider:g,say:$}]of c)
document.activeElement!==g&&(g.value=f.sizes[m]),$();l.value=f.sizes.grip}return d.follow("change:view",p),p(),d.close}var $e={x:90,y:120,perMm:20,radius:82,bevel:30};function oo(t){let e=R("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=$e;e.append(R("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),dt(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let f=n+p*t.pitch*o;if(p%2){e.append(dt(
f,r,f,r+18,"tsi-fine"));continue}let m=p/2;e.append(dt(f,r,f,r-(m%5?18:27),m%5?"tsi-fine":"tsi-bold")),m%5===0&&e.append(
pt(f,r-33,String(m)))}let c=R("g",{});e.append(c,pt(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=R("path",{d:`M0 ${r-a+14}L${$e.bevel} ${r-a}L${$e.bevel} ${r+a}L0 ${r+a-14}\
Z`,class:"tsi-body"}),u=R("rect",{x:$e.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),l=R("rect",{x:0,y:r-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),d=R("g",{});return c.append(l,i,u,d),{node:e,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*o} 0)`),d.replaceChildren();for(let f=0;f<t.lines;f+=1){let m=f-p.line;m-=t.lines*Math.round(m/t.lines);let g=m/
t.lines*2*Math.PI;if(Math.abs(g)>1.15)continue;let $=r-(a-8)*Math.sin(g),k=f%5===0;d.append(dt(0,$,k?26:16,$,k?"tsi-bold":
"tsi-fine")),k&&d.append(pt(36,$+5,String(f),"start"))}e.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function qs(t){
return Ct(t,(e,n,r)=>{let o=oo(e),a=mt("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, \
out to the right",onInput:l=>n({open:l})}),c=gt("Between the faces",e.between,r.between,l=>n({between:l,open:e.top})),i=z(
"Close until it rests",()=>n({open:-1})),u=e.hands.length?gt("Close it",e.hands,r.hand,l=>n({hand:l})):null;return{asks:"\
How thick is it?",first:i,begin:"close it until it rests",picture:o.node,controls:[St(c.row,u?.row),St(i,z("Open",()=>n(
{open:e.top}))),a.row],set(l,d){o.set(l),a.box.value=String(Math.max(0,l.mm)),c.box.value=d.between}}})}function Us({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[u,l,d]of n.checks){let p=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${l}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:u})}},"Make"),f=Bt("it shows",!1);f.classList.add("t\
sk-shown"),a.set(u,{button:p,shown:f}),o.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},l),Bt("min",!0,
`${d}`),Bt("",!1,p),f))}let c=Q({model:t,el:e},{kind:"rig"});c.show(c.asks("What does each check show on your unit?",{first:a.
values().next().value?.button,begin:"make a check",who:"Checks are not saved; make them again after reopening."}),c.alert,
r,xe("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));function i(){let u=t.get("view");r.textContent=
u.finding;for(let[l,{button:d,shown:p}]of a){let f=u.shown[l];d.setAttribute("aria-disabled",f?"true":"false"),d.classList.
toggle("ts-off",!!f),d.textContent=f?"Made":"Make",p.textContent=f?`${f[0]?"✓":"✗"} ${f[1]}`:"",p.classList.toggle("\
tsk-failed",!!f&&!f[0])}}return c.follow("change:view",i),i(),c.close}function ro(){let t=R("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=R("g"),n=R("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(R("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,R("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=c=>(-135+270*c)*Math.PI/180,o="";function a([c,i,u]){e.replaceChildren();for(let l=0;l*i<=c+
1e-9;l+=1){let d=r(l*i/c),p=l%u===0,f=m=>[110+m*Math.sin(d),104-m*Math.cos(d)];if(e.append(dt(...f(p?72:79),...f(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&l%(2*u)===0){let[m,g]=f(58);e.append(pt(m,g+4.5,String(Number((l*i).toFixed(2)))))}}e.
append(pt(110,170,"kN"))}return{node:t,set(c,i,u){String(c)!==o&&(o=String(c),a(c));let l=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*l})`),t.setAttribute("aria-label",u)}}}function zs(t){return Ct(t,(e,n,r)=>{
let o=ro(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),u=mt("Push",{min:0,max:100,step:1,value:r.travel,onInput:f=>n(
{travel:f}),words:f=>f>=100?"at the shoulder":`${f} % of the way`}),l=[u.row],d=null;if(!e.readingsOnly){let f=gt("Part",
e.places,r.place,k=>n({place:k,travel:0}));d=gt("Driver presses on",e.drivers,r.driver,k=>n({driver:k,travel:0}));let m=gt(
"Seat",e.seats,r.seat,k=>n({seat:k})),g=mt("Pair",{min:0,max:100,step:1,value:r.grip,onInput:k=>n({grip:k}),words:k=>k===
0?"loosest of the fit":k===100?"tightest of the fit":`${k} % from loosest to tightest`}),$=mt("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:k=>n({warmth:k}),words:k=>`${k} °C`});l.unshift(St(f.row,d.row,m.row),
g.row,$.row)}let p=s("dl",{class:"ts-facts"});return e.readingsOnly||l.push(p),{asks:"What force does it take, and where\
 does it stop?",first:u.box,begin:"push the part",side:!e.readingsOnly,picture:i,controls:l,set(f,m){f.section!==c&&(c=f.
section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*m.travel/100} 0\
)`),o.set(f.gauge,f.force,f.words),Number(u.box.value)!==m.travel&&document.activeElement!==u.box&&u.set(m.travel),d&&(d.
row.hidden=!f.drives),f.facts&&p.replaceChildren(...Mt(f.facts))}}})}function Gs({model:t,el:e}){let n=t.get("steps"),r=new Map(n),o=s("div",{class:"ts-scroll tsf-near",tabindex:"0",role:"r\
egion","aria-label":"The rules around the chosen step"}),a=s("p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts\
-sentences"}),i=s("select",{class:"ts-box ts-before","aria-label":"Chosen step",onchange:()=>d(i.value)},...vt(n.map(([m,
g],$)=>[m,`${$+1}  ${g}`]))),u=Q({model:t,el:e},{kind:"rig",lost(){i.disabled=!0}});u.show(u.asks("What comes before thi\
s step, and what after it?",{first:i,begin:"choose a step, or press one in the picture",who:""}),u.alert,s("p",{class:"t\
s-hint"},t.get("finding")),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",i)),a,o,s("details",{class:"ts-\
keys"},s("summary",{},"In words, with reasons"),c));let l=!1,d=m=>u.send({type:"choose",step:m}),p=m=>{let g=wt(m,"[data\
-step]")?.dataset.step;g&&(l=!0,d(g))};o.addEventListener("click",p),o.addEventListener("keydown",m=>{m.key!=="Enter"&&m.
key!==" "||wt(m,"[data-step]")&&(m.preventDefault(),p(m))});function f(){let m=t.get("near");a.textContent=m.words,i.value=
m.step,o.innerHTML=m.figure,o.querySelector("svg")?.setAttribute("role","group");let g=tt(o,"[data-step]");for(let $ of g)
$.setAttribute("role","button"),$.setAttribute("tabindex","0"),$.setAttribute("aria-label",r.get(String($.dataset.step))??
"");c.replaceChildren(...Dt(m.sentences)),l&&(g[0]??i).focus({preventScroll:!0}),l=!1}return u.follow("change:near",f),f(),
u.close}function ao(){let t=R("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=R("g",{}),n=R("g",{});return e.append(
R("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),dt(150,164,150,98,"tsi-bold"),R("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(dt(150,86,150,40,"tsi-plunger"),R("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,dt(50,164,
250,164,"tsg-centre"),dt(150,250,150,80,"tsg-centre"),n,pt(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute(
"transform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function Ys(t){
return Ct(t,(e,n,r)=>{let o=Yt(),a=ao(),c=mt("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:l=>`turn\
ed by ${l}°`,onInput:l=>n({angle:l})}),i=gt("Plunger",e.pressed,r.pressed,l=>n({pressed:l})),u=gt("Stand",e.tilts,r.tilt,
l=>n({tilt:l}));return{asks:"How far does the shaft run out?",first:c.box,begin:"turn the shaft",picture:s("div",{class:"\
tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One mark 0.01 mm, one turn 1 mm"))),controls:[St(i.row,
u.row),c.row],set(l,d){o.set(l.mm,l.words),a.set(l.state.angle,Number(l.state.tilt),`Shaft end on, turned by ${l.state.angle}\
°; the plunger stands ${l.state.tilt}° off square. Not to scale.`),c.set(d.angle)}}})}var Vs=(t,e)=>(t+e)%7<2,Js=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,Le=()=>!1,Se=t=>(e,n)=>n%t===0,io={"":Le,dots:(t,e)=>t%6<2&&e%
6<2,rising:Vs,cross:Js,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":Le,"lines-2":Se(14),"lines-3":Se(8),"lines-4":Se(5),"lines-5":Se(
3)};function co(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var Xs=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function Zs(t,[e,n],r,o,a){let c=n*4,i=new Uint32Array(c*e*4),u=new Map(r.map(([p,,f,m])=>{let g=f?Xs(co(f),200):
0;return[p,{ground:g,hatch:io[m]??Le}]})),l={ground:0,hatch:Le},d=Xs(o,190);for(let p=0;p<e;p+=1){let f=(e-1-p)*4;for(let m=0;m<
n;m+=1){let g=t[p*n+m];if(!g)continue;let{ground:$,hatch:k}=u.get(g&15)??l,T=a&&(g&16)!==0,N=a&&(g&32)!==0;for(let L=f;L<
f+4;L+=1)for(let C=m*4;C<(m+1)*4;C+=1){let M=k(C,L)||T&&Vs(C,L)||N&&Js(C,L);i[L*c+C]=M?d:$}}}return i}var uo=600;function tn(t,e,n,r,o,a){let[c,i]=n;t.width=i*4,t.height=c*4;let u=new Uint8ClampedArray(Zs(e,n,r,o,a).buffer),
l=new ImageData(u,t.width,t.height);t.getContext("2d")?.putImageData(l,0,0)}function po(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return tn(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function en({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),c=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),u=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),l=Q({model:t,el:e},{kind:"rig",lost(){f.setDisabled(!0),ne(e)}}),d=null,p=y=>{d=at("turn"),l.send({...y,turn:d})},
f=ue({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(y){f.
drawing.strokes(y),p({type:"lay",entries:y})},onRemove:y=>p({type:"remove",at:y}),onClear:()=>p({type:"clear"})}),m=z("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),g=s("input",{type:"range",id:at("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),$=s("output",{for:g.id}),k=xt({id:at("slide"),onchange:()=>p({type:"slide",by:k.value})},
t.get("view").slides),T=null;g.addEventListener("input",()=>{$.textContent=`${g.value} µm`;let y={type:"flat",um:Number(
g.value)};d===null?p(y):T=y});let{box:N,unit:L}=f.drawing;f.drawing.land.classList.add("tsp-clear"),f.drawing.frame.prepend(
u);let C=(...y)=>s("span",{class:"ts-pair"},...y);l.show(l.asks("Does this film close the gap?",{first:m,begin:"press Cl\
ose the face"}),l.alert,o,Lt([f.drawing.frame,i],[s("div",{class:"ts-tools"},m,C(s("label",{for:k.id},"the other face is"),
k)),s("div",{class:"ts-tools"},a,z("1 minute passes",()=>p({type:"time",by:1})),z("5 minutes pass",()=>p({type:"time",by:5}))),
s("div",{class:"ts-tools"},C(s("label",{for:g.id},"faces out of flat by"),g,$)),f.tools,c,s("details",{class:"ts-keys"},
s("summary",{},"Passes laid"),f.empty,f.list)]));function M(){let y=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return y?
y.slice(0,3).map(Number):[0,0,0]}let S="",A="";function w(){let y=t.get("view"),O=r[y.closed?"closed":"film"],b=t.get("g\
rid"),j=b instanceof DataView?new Uint8Array(b.buffer,b.byteOffset,b.byteLength):new Uint8Array(b);tn(u,j,y.shape,O,M(),
!y.closed);let[W,K]=y.shape,[Y,ft]=[y.corner[0]-y.pitch/2,y.corner[1]-y.pitch/2],H=(et,ct)=>`${(100*et/ct).toFixed(3)}%`;
u.style.left=H(Y-N.left,N.width),u.style.width=H(K*y.pitch,N.width),u.style.top=H(N.high-ft-W*y.pitch,N.height),u.style.
height=H(W*y.pitch,N.height);let G=new Set(j.map(et=>y.closed?et:et&15)),q=O.filter(([et])=>G.has(et)),ot=`${q.map(([,et])=>et)}\
 ${M()}`;ot!==S&&(S=ot,i.replaceChildren(...q.map(et=>po(et,M()))))}let x=R("g");f.drawing.over.append(x);let v=([y,O])=>[
y-N.left,N.high-O];function I([y,O]){let b=O.map(j=>{let[W,K]=v(j);return`M${W.toFixed(1)} ${K.toFixed(1)}h0.01`});return R(
"path",{d:b.join(""),class:"tsp-lump","stroke-width":2*y})}function B(y){let[O,b]=v(y[y.length-1]),j=`M${O-1.3*L} ${b-L}\
h${2.6*L}l${-1.3*L} ${2.2*L}Z`;return[R("path",{d:f.drawing.path(y),class:"tsp-way","stroke-width":L}),R("path",{d:j,class:"\
tsp-out"})]}function _(){let y=t.get("view");if(d!==null&&y.turn!==d)return;d=null;let O=JSON.stringify([y.entries,y.notes]);
if(O!==A&&f.show(y.entries,y.notes),A=O,f.drawing.strokes([]),w(),x.replaceChildren(...y.lumps.map(I),...y.leaks.flatMap(
B)),f.drawing.svg.classList.toggle("tsp-shut",y.closed),f.drawing.svg.classList.toggle("tsp-clean",y.closed||y.clean),o.
textContent=y.finding,k.value=y.slide,a.textContent=`minute ${y.minute}`,m.textContent=y.closed?"Lift the face off again":
"Close the face",T===null&&(g.value=String(y.flat),$.textContent=`${y.flat} µm`),c.replaceChildren(...Mt(y.facts)),T===
null)return;let b=T;T=null,p(b)}l.follow("change:view",_),l.follow("msg:custom",y=>{y.type==="trouble"&&(d=null,f.drawing.
strokes([]))});let J=new MutationObserver(()=>setTimeout(w,uo));return J.observe(document.body,{attributes:!0,attributeFilter:[
"data-jp-theme-light"]}),_(),()=>{l.close(),J.disconnect()}}function sn(t){return Ct(t,(e,n,r)=>{let o=Yt(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),u=e.places.map(([d,p])=>[d,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:d})},p)]),l=[s("p",{class:"ts-hint"},e.rule),St(s("span",{},"Set the gauge down at"),...u.map(([,d])=>d))];
return e.readingsOnly||(l.push(St(gt("Lip looks towards",e.sides,r.lip,d=>n({lip:d})).row,gt("Lip is",e.greases,r.grease,
d=>n({grease:d})).row,e.sleeves.length?gt("It went",e.sleeves,r.sleeve,d=>n({sleeve:d})).row:"")),l.push(mt("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:d=>`${d.toFixed(2)} mm${d<0?", proud":""}`,onInput:d=>n({
depth:d})}).row,mt("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:d=>d?`${d.toFixed(2)} mm across`:"square",onInput:d=>n(
{lean:d})}).row)),{asks:"Does the seal sit square and deep enough?",first:u[0][1],begin:"set the gauge down",side:!e.readingsOnly,
picture:i,controls:l,set(d,p){d.section!==c&&(c=d.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.setAttribute("t\
ransform",d.placed),o.set(d.dial,d.words);for(let[f,m]of u)m.setAttribute("aria-pressed",String(f===p.place))}}})}function nn({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=Yt(),a=n.readingsOnly?null:Ss(n),c=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),u=Gt((S,A)=>T.send({type:"set",state:S,turn:A})),l=S=>{r={...r,...S},u.ask(r)},
d=(S,A)=>{let w=[...r.shims];w[S]=A,l({shims:w.filter(Boolean),turns:0})},p=(S,A,w)=>z(S,A,{"aria-pressed":w}),f=z("Turn\
 the shaft ten times",()=>l({turns:r.turns+10})),m=p("Pull the shaft away",()=>l({side:"away"}),"true"),g=p("Push it to \
the dial",()=>l({side:"towards"}),"false"),$=gt("Plunger",n.plungers,r.plunger,S=>l({plunger:S})),k=[s("div",{class:"ts-\
tools"},n.rolls?f:null,$.row,m,g)];if(!n.readingsOnly){let S=gt("Shim",n.shelf,r.shims[0],w=>d(0,w)),A=n.second?gt("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",w=>d(1,w)):null;k.unshift(s("div",{class:"ts-tools"},S.row,A?.row)),k.
push(mt("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:w=>l({warmth:w}),words:w=>w?`case ${Math.round(n.caseRise*
w/100)} K warmer`:"cold, as at the bench"}).row)}let T=Q({model:t,el:e},{kind:"rig"}),N=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});N.innerHTML=n.section;let L=[n.readingsOnly?T.asks("How far does the shaft\
 move?",{first:n.rolls?f:g,begin:n.rolls?"turn the shaft":"push the shaft",who:"Take your readings here; write them in t\
he form."}):T.asks("Which shim gives the setting that you want?",{first:k[0].querySelector("select"),begin:"choose a shi\
m"}),T.alert,n.readingsOnly&&N,s("div",{class:"tsg-beside"},!n.readingsOnly&&N,s("div",{class:"tsg-gauge"},o.node,s("div",
{},"Dial at the shaft's right end, one mark 0.01 mm")),n.readingsOnly&&s("div",{class:"tsg-side"},...k,c)),...n.readingsOnly?
[]:[...k,c],a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg\
-wide",tabindex:"0",role:"group","aria-label":"Axis of settings"},a.node)),i];T.show(...L.filter(Boolean));function C(){
let S=t.get("shown");u.waiting||(r=S.state),o.set(S.dial,S.dialWords),m.setAttribute("aria-pressed",String(S.state.side===
"away")),g.setAttribute("aria-pressed",String(S.state.side==="towards")),c.textContent=S.finding,a&&(a.set(S.cold,S.warm,
S.words.join(" ")),i.replaceChildren(...S.words.map(A=>s("p",{},A)))),u.answered(S.turn)}let M=()=>u.free();return T.follow(
"change:shown",C),T.follow("msg:custom",M),C(),T.close}function on(t){return Ct(t,(e,n,r)=>{let o=s("div",{tabindex:"0",role:"group","aria-label":e.name}),a="",c=e.pickers.map(
({key:d,label:p,options:f})=>gt(p,f,r[d],m=>n({[d]:m}))),i=e.sliders.map(({key:d,label:p,min:f,max:m,step:g,unit:$,places:k})=>mt(
p,{min:f,max:m,step:g,value:r[d],words:T=>`${T.toFixed(k)} ${$}`,onInput:T=>n({[d]:T})})),u=c.map(({row:d})=>d),l=u.length>
2?u:u.length?[St(...u)]:[];return{asks:e.asks,first:[...c,...i][0].box,begin:c.length?"choose from the first list":"move\
 the first slider",picture:o,controls:[...l,...i.map(({row:d})=>d)],set(d){d.drawing!==a&&(a=d.drawing,o.innerHTML=a)}}})}function rn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),c=s("dl",{class:"ts-facts"}),i=null,u=null,l=(A,w)=>{u={...u,[A]:w},i===null&&d()};function d(){
i=at("choice"),C.send({type:"choose",chosen:u,turn:i}),u=null}let p=s("div",{class:"tsj-settings"}),f=(A,w,x)=>{let v=at(
"set");return w.id=v,p.append(s("label",{for:v},A),s("span",{class:"tsj-slide"},w,x)),w},m=(A,w,x)=>f(w,s("select",{class:"\
ts-box",onchange:v=>l(A,v.target.value)},...vt(x.map(v=>typeof v=="string"?[v,v]:v)))),g=(A,w,x)=>f(w,s("input",{type:"r\
ange",oninput:v=>l(A,Number(v.target.value))}),x),$={group:m("group","Bolt of the unit",n.groups),thread:m("thread","Thr\
ead",n.threads),strength:m("strength","Strength class",n.classes),state:m("state","State of the thread",n.states),tool:m(
"tool","Tool",n.tools)},k=s("output",{class:"tsj-figure"}),T=g("torque_nm","Torque",k),N=s("output",{class:"tsj-figure"}),
L=g("engagement_mm","Thread that meets",N),C=Q({model:t,el:e},{kind:"rig"});C.show(C.asks("What gives way first?",{first:T,
begin:"set the torque"}),C.alert,r,o,s("div",{class:"tsj-bench"},p,a),c);let M=(A,w,x,v,I,B)=>{Tt(A,{min:w,max:x,step:v}),
i===null&&(A.value=String(I)),A.setAttribute("aria-valuetext",B)};function S(){let A=t.get("view");if(i!==null&&A.turn!==
i)return;i=null,u!==null&&d();let{chosen:w}=A;r.textContent=A.finding,o.innerHTML=A.band,a.innerHTML=A.section,c.replaceChildren(
...Mt(A.facts));for(let[x,v]of Object.entries($))v.value=w[x];M(T,1,A.topTorque,.5,w.torque_nm,A.torqueText),k.textContent=
A.torqueText,M(L,A.lowEngagement,A.topEngagement,.5,w.engagement_mm,A.engagementText),N.textContent=A.engagementText}return C.
follow("change:view",S),S(),C.close}function an({model:t,el:e}){let n=we(t),r=zt(t.get("picture"),{onChoose:a=>n.show("part",[a])}),o=Q({model:t,el:e},{kind:"\
rig"});return o.show(o.asks("Where does each part lie?",{first:r.choose,begin:"choose a part",who:""}),o.alert,s("p",{class:"\
ts-finding"},t.get("finding")),...n.any("part")?[Lt(r.nodes,[n.node])]:r.nodes),()=>{n.close(),o.close()}}function Zt(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function _e(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var We=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function cn(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let c=Zt(e,
n),i=c.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let l=e.map(([f])=>f),d=t==="ArrowLeft"?-1:1,p=Zt(e,l[(l.
indexOf(n)+d+l.length)%l.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let u=t.toLowerCase();return We(c,i).find(l=>o[l].toLowerCase().startsWith(u))}function ln({stages:t,stage:e,step:n,isOpen:r}){
let o=Zt(t,e),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(o.at(-1)));return We(o,o.indexOf(String(n))).find(r)??We(a,c).find(
r)}function dn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>Y()},
...vt(n.stages.map(([h,P])=>[h,P]))),c=nt(n.marked?"Next open step":"Next ready step",()=>y("next"));c.classList.add("ts\
-next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this sta\
ge",onkeydown:h=>b(h)}),u=s("details",{class:"ts-keys"},s("summary",{},"Keys"),"Up and down walk through the steps, left\
 and right change the stage, Enter takes a step in hand; Enter again does it."),l=s("div",{class:"ts-hand",role:"group",
"aria-label":"Step in hand",onkeydown:h=>{h.key!=="Enter"||!h.target.matches("input[type=radio], .ts-number-box")||(h.preventDefault(),
t.get("hand").stands?W():ct())}}),d=s("div",{class:"ts-scroll ts-fit"}),p=s("dl",{class:"ts-facts"}),f=s("ul",{class:"ts\
-sentences"}),m=s("p",{class:"ts-prompt"},"Wrong so far"),g=s("select",{class:"ts-box ts-before","aria-label":"A step th\
at stands"}),$=nt("Take out again",()=>{g.value&&A({type:"out",step:g.value},"hand")}),k=nt("Put the tools down",()=>A({
type:"over"},"told"));k.classList.add("ts-over");let T=s("div",{}),N=s("p",{class:"ts-status"}),L=s("details",{ontoggle:()=>{
L.open!==!!t.get("view").record&&A({type:"record",open:L.open})}},s("summary",{},"Build record"),T),C=Q({model:t,el:e},{
kind:"rig"});C.show(C.asks("Which step comes next, and what does it need?",{first:c,begin:"press the lit button",who:n.who}),
C.alert,r,N,o,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"ts-tools"},a,c),i),s("div",{},l,
s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},g,$),k))),p,m,f,L,s("details",{},s("summary",{},"How far each stag\
e is"),d),u);let M=0,S=null;function A(h,P=null){M+=1,S=P&&{turn:M,focus:P},e.setAttribute("aria-busy","true"),C.send({...h,
turn:M})}let w="",x=null,v="next",I=h=>!t.get("view").done.includes(h),B=()=>tt(i,"[data-step]"),_=h=>B().find(P=>P.dataset.
step===h)?.focus(),J=()=>({stages:n.stages,stage:a.value,step:x,isOpen:I});function y(h,P){v=h,A(h==="list"?{type:"take",
step:P}:{type:"next"},"hand")}function O(h){a.value=_e(n.stages,h)??a.value,x=h,Y(),_(h)}function b(h){if($t(h))return;let P=cn(
h.key,{...J(),labels:n.labels});P&&(h.preventDefault(),O(P))}function j(){let h=ln(J());h?v==="next"?c.focus():O(h):k.focus()}
function W(){let h=t.get("view").done.length>=Object.keys(n.labels).length;v==="next"&&!h?y("next"):j()}function K(h){let{
done:P,ready:F}=t.get("view");return P.includes(h)?{sign:"✓",word:"done"}:F.includes(h)?{sign:"▸",word:"ready"}:{sign:"\
○",word:n.marked?"open":"waits"}}function Y(){let h=Zt(n.stages,a.value);(x===null||!h.includes(x))&&(x=h.find(I)??h[0]);
let P=t.get("hand").step,F=JSON.stringify([a.value,h.map(K),P]);if(F===w){for(let rt of B())rt.tabIndex=rt.dataset.step===
x?0:-1;return}w=F;let U=B().find(rt=>rt===document.activeElement)?.dataset.step;i.replaceChildren(...h.map(rt=>ft(rt,P))),
U&&_(U)}function ft(h,P){let{sign:F,word:U}=K(h);return s("button",{type:"button",class:`ts-button ts-buildstep ts-build\
step-${U}`,"data-step":h,tabindex:h===x?"0":"-1","aria-current":h===P?"step":!1,"aria-label":`${n.labels[h]}: ${U}`,onclick:()=>{
x=h,y("list",h)}},At(F),n.labels[h])}let H="",G=new Map;function q(h){let P=Ft(h),F=s("p",{class:"ts-read",id:P.read,role:"\
status"}),U=0,rt=D=>{A({type:"set",name:h.name,value:D}),U=M},Z=jt(h).make(h,P,rt,()=>{}),E=Kt(h,P,null);return E.append(
Z.element,F),E.dataset.field=h.name,{element:E,flush:()=>Z.flush?.(),show(D={},X){if(X<U)return;Z.show(D);let it=D.read?
`read as ${D.read}`:"";F.textContent=D.error?`▲ Look again: ${D.error}`:it}}}let ot=h=>s("dl",{class:"ts-facts"},...Mt(
h));function et(){let h=t.get("hand"),P=JSON.stringify(h);if(P===H)return;if(H=P,l.dataset.stands=String(!!h.stands),G=new Map(
(h.fields??[]).map(Z=>[Z.name,q(Z)])),!h.step){l.replaceChildren(s("p",{class:"ts-hint"},"No step in hand. Choose one fr\
om the list, or press the button above it."));return}let F=nt(`Do it: ${h.label}`,ct);F.classList.add("ts-do");let U=h.stands?
[nt("Go on",W),nt("Take it out again",()=>A({type:"out",step:h.step},"hand"))]:[F];l.replaceChildren(s("p",{class:"ts-pr\
ompt ts-hand-name",tabindex:"-1"},h.label),...h.plain.map(Z=>s("p",{class:"ts-hint"},Z)),...h.cautions.map(Z=>s("p",{class:"\
ts-caution"},s("b",{},"Take care: "),Z)),...h.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),ot(h.read)]:[],
...h.card.length?[ot(h.card)]:[],...[...G.values()].map(Z=>Z.element),s("div",{class:"ts-tools"},...U));let rt=_e(n.stages,
h.step);rt&&([a.value,x]=[rt,h.step])}function ct(){for(let h of G.values())h.flush();A({type:"do"},"after")}function bt(){
let h=t.get("view").asked_back,P=tt(l,"[data-field]").find(rt=>rt.dataset.field===h),F=P&&tt(P,"input:not(:disabled), se\
lect, button"),U=tt(l,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return F?.[0]??
U[0]}function lt(){let h=t.get("view"),P=h.told;r.textContent=h.finding,N.textContent=h.status,N.hidden=!h.status,o.textContent!==
P.join("")&&o.replaceChildren(...P.map(U=>s("p",{},U))),et(),Y();for(let[U,rt]of G)rt.show(h.states[U],h.turn);if(d.dataset.
shown!==h.figure&&(d.innerHTML=h.figure,d.dataset.shown=h.figure),p.replaceChildren(...Mt(h.facts)),f.replaceChildren(...Dt(
h.faults.map(([,U])=>U))),m.hidden=f.hidden=!h.faults.length,Et(h.done),T.innerHTML=h.record,L.open=!!h.record,e.setAttribute(
"aria-busy",String(h.turn<M)),!S||h.turn<S.turn)return;let{focus:F}=S;S=null,F==="told"?o.focus():F==="after"&&!t.get("h\
and").step?j():(bt()??c).focus()}function Et(h){if(g.disabled=$.disabled=!h.length,g.dataset.done===h.join(" "))return;g.
dataset.done=h.join(" ");let P=[...h].reverse();g.replaceChildren(...vt(P.map(F=>[F,n.labels[F]])))}return C.follow("cha\
nge:view",lt),lt(),C.close}function fo(t){let e=R("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=dt(
r,o,r,o,"tsi-adapter"),c=R("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=dt(r,o+74,r,o+74,"tsi-arm"),u=pt(r,o+94,"");return e.
append(dt(r,o,r+440,o,"tsi-lever"),a,c,R("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),pt(r+440,o-20,"hand, middle of the gr\
ip","end"),pt(r+20,o-20,"square drive","start"),dt(r+440,o+10,r+440,o+84,"tsg-centre"),i,u,pt(8,242,"lengths to scale","\
start")),{node:e,set(l){let d=l.state.angle/180*Math.PI,p=r-l.state.reach*n*Math.cos(d),f=o-l.state.reach*n*Math.sin(d);
Tt(a,{x2:p,y2:f}),Tt(c,{cx:p,cy:f}),Tt(i,{x1:p,x2:r+440}),Tt(u,{x:(p+r+440)/2}),u.textContent="the lever from bolt to ha\
nd, along the wrench",e.setAttribute("aria-label",`${t.name}. ${l.words}`)}}}function un(t){return Ct(t,(e,n,r)=>{let o=fo(
e),a=(i,u,l,d,p,f)=>mt(i,{min:l,max:d,step:p,value:r[u],words:m=>`${m} ${f}`,onInput:m=>n({[u]:m})}),c={setting:a("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{asks:"What does the bolt get?",first:c.reach.box,begin:"\
lengthen the adapter",picture:o.node,controls:Object.values(c).map(i=>i.row),set(i,u){o.set(i);for(let[l,d]of Object.entries(
c))d.set(u[l])}}})}var Ce=t=>typeof t=="string"?t:t.text;function pn(t,e,n){let r=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
o=a=>Ce(a.cells[e]??"").trim();return[...t].sort((a,c)=>{let[i,u]=[o(a),o(c)];if(!i||!u)return+!i-+!u;let[l,d]=[Number.parseFloat(
i),Number.parseFloat(u)],p=Number.isNaN(l)||Number.isNaN(d)||l===d?r.compare(i,u):l-d;return n?-p:p})}function Qt(t,e){let n=document.getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${r}${t}/${e.split("/").map(encodeURIComponent).join("/")}`}function ho(t){let e="";for(let n=0;n<t.length;n+=32768)e+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(e)}
async function fn(t,e,n){let r=0;do{let o=new Uint8Array(await n.slice(r,r+524288).arrayBuffer()),a=r===0;r+=524288;let c=r>=
n.size;t.send({type:"file",field:e,name:n.name,data:ho(o),first:a,last:c})}while(r<n.size)}var go=400;function hn({model:t,el:e}){let n=Q({model:t,el:e},{kind:"desk"}),r=s("p",{class:"ts-said",role:"status"}),o=s(
"div",{class:"ts-desk-body"}),a=s("div",{class:"ts-desk-here","aria-hidden":"true"}),c=s("div",{class:"ts-busy"}),i=s("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),u=t.get("cohort"),l=s("input",{id:at("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:l.value})});l.value=t.get("by"),n.show(s("div",{class:"\
ts-desk-top"},s("b",{},It([u.name,u.college]).join(", ")),s("span",{class:"ts-pair"},s("label",{for:l.id},"At the desk (\
your name, for the trail)"),l)),u.invented?s("p",{class:"ts-hint"},u.invented):null,i,c,n.alert,r,o);let d=new Map,p=new Map,
f=new Map,m=new Map,g=!1,$="",k="",T="",N=!1,L=null,C=()=>o.setAttribute("aria-busy",String(M())),M=()=>g||!!T||Object.keys(
t.get("busy")).length>0,S=(h,P={})=>{M()||n.isLost()||(h!=="look"&&(T=h,r.textContent="",n.alert.textContent="",v(),C()),
t.send({type:h,...P}))},A=()=>tt(e,"[data-key]"),w=h=>A().some(P=>P.dataset.key===h);function x(){let h=A().find(P=>P.dataset.
key===$);return h&&o.contains(h)?h.closest("form, section"):null}function v(){let h=x();h?h.append(c,a):(i.after(c),a.remove());
let[P,F]=[r.textContent,n.alert.textContent];a.replaceChildren(...It([P&&s("p",{class:"ts-told"},P),F&&s("p",{class:"ts-\
trouble"},F)]));for(let U of[r,n.alert])U.classList.toggle("ts-hidden",!!h);return h}function I(){let h=v(),P=[n.alert,r].
find(U=>U.textContent);(h?a.childElementCount?a:null:P)?.scrollIntoView({block:"nearest"})}async function B(){for(let[h,
P]of m){let[F]=P.files??[];try{F&&await fn(t,h,F)}catch{return P.value="",F.name}}return""}function _(h){r.textContent="",
n.alert.textContent=h,I()}async function J(h,P,F=""){if(n.isLost())return;if(M()){N||(L=()=>w(P)&&J(h,P,F));return}$=P,k=
"",N=!0,g=!0;let U=await B();if(g=!1,U||M()||n.isLost()){N=!1,U?_(`${U} has changed or gone since it was chosen: choose \
it again.`):n.isLost()||(L=()=>w(P)&&J(h,P,F));return}let rt=[...p].map(([Z,E])=>[Z,[...E]]);S("do",{page:t.get("page"),
act:h,of:F,typed:Object.fromEntries(d),ticked:Object.fromEntries(rt)})}function y(h){let{name:P,of:F}=h,U=at("field"),rt=h.
hint?s("span",{class:"ts-hint",id:`${U}-hint`},h.hint):null,Z={id:U,"data-key":`field:${P}`,"aria-describedby":rt?.id},E=s(
"label",{for:U},h.label);if(!d.has(P)&&F!=="file"&&d.set(P,F==="tick"?h.value==="yes":h.value),F==="file"){let it=m.get(
P)??s("input",{type:"file",class:"ts-file"});for(let[kt,ut]of Object.entries(Z))ut&&it.setAttribute(kt,ut);return m.set(
P,it),s("div",{class:"ts-desk-field"},E,it,rt)}if(F==="tick"){let X=s("input",{type:"checkbox",...Z});X.checked=d.get(P)===
!0,X.addEventListener("change",()=>d.set(P,X.checked));let it=s("label",{class:"ts-option",for:U},X,h.label);return s("d\
iv",{class:"ts-desk-field"},it,rt)}let D=F==="choice"?xt(Z,h.options):F==="long"?s("textarea",{class:"ts-box",rows:"3",maxlength:"\
2000",...Z}):s("input",{class:"ts-box",autocomplete:"off",maxlength:"400",...Z});return D.value=String(d.get(P)??""),F===
"choice"&&!h.options.some(([X])=>X===d.get(P))&&(D.value=h.options[0]?.[0]??"",d.set(P,D.value)),D.addEventListener("inp\
ut",()=>d.set(P,D.value)),s("div",{class:"ts-desk-field"},E,D,rt)}function O(h){let P=at("form"),F=s("div",{class:"ts-do\
ing"}),U=()=>{F.replaceChildren(...h.acts.map(E=>z(E.label,()=>E.sure?rt(E):J(E.id,`act:${E.id}`),{class:E.first?"ts-but\
ton ts-first":"ts-button","data-key":`act:${E.id}`})))},rt=E=>{k=E.id;let D=at("sure"),X=s("div",{class:"ts-question",role:"\
group",tabindex:-1,"aria-labelledby":D,"data-key":`sure:${E.id}`},s("p",{id:D},E.sure),s("div",{class:"ts-doing"},z(`Yes\
: ${E.label}`,()=>J(E.id,`act:${E.id}`),{"data-key":`act:${E.id}`}),z("No, leave it",()=>{k="",U(),tt(F,`[data-key="act:${E.
id}"]`)[0]?.focus()},{"data-key":`no:${E.id}`})));F.replaceChildren(X),X.focus()},Z=h.acts.find(E=>E.sure&&E.id===k);return Z?
rt(Z):U(),s("form",{class:"ts-desk-form","aria-labelledby":h.title?P:null,onsubmit:E=>E.preventDefault()},h.title?s("h3",
{id:P},h.title):null,h.hint?s("p",{class:"ts-hint"},h.hint):null,h.fields.length?s("div",{class:"ts-desk-fields"},...h.fields.
map(y)):null,h.acts.length?F:null)}function b(h,P){if(typeof h=="string")return h;let F=h.act?z(h.text,()=>J(h.act,P,h.of),
{class:"ts-cell","aria-label":h.label||null,"data-key":P}):h.text;return s("span",{},h.shape?At(h.shape):null,F)}function j(h){
let P=at("table"),F=s("h3",{id:P},h.title);if(!h.rows.length)return s("section",{},F,s("p",{},h.empty));let U=p.get(h.id)??
new Set,rt=new Set(h.rows.map(({key:st})=>st));for(let st of U)rt.has(st)||U.delete(st);p.set(h.id,U);let Z=s("tr",{}),E=s(
"tbody",{}),D=h.pick?s("input",{type:"checkbox","aria-label":"all","data-key":`all:${h.id}`}):null,X=()=>{D&&(D.checked=
U.size===h.rows.length,D.indeterminate=U.size>0&&!D.checked)},it=()=>{let st=f.get(h.id),V=st?pn(h.rows,st.column,st.down):
h.rows;E.replaceChildren(...V.map(ut)),Z.replaceChildren(...D?[s("th",{class:"ts-tick"},D)]:[],...h.columns.map(kt)),X()},
kt=(st,V)=>{let ht=f.get(h.id),Nt=ht?.column===V,Rt=Nt?ht.down?"descending":"ascending":null,se=()=>{f.set(h.id,{column:V,
down:Nt&&!ht.down}),it(),tt(Z,`[data-key="${Xt}"]`)[0]?.focus()};if(!st)return s("td");let Xt=`sort:${h.id}:${V}`;return s(
"th",{scope:"col","aria-sort":Rt,class:h.numbers.includes(V)?"ts-figure":null},z(st,se,{class:"ts-sort","data-key":Xt}),
Nt?At(ht.down?"▼":"▲"):null)},ut=st=>{let V=h.pick?s("input",{type:"checkbox","aria-label":st.cells.slice(0,3).map(Ce).
join(" "),"data-key":`row:${h.id}:${st.key}`}):null;return V&&(V.checked=U.has(st.key),V.addEventListener("change",()=>{
V.checked?U.add(st.key):U.delete(st.key),X()})),s("tr",{},V?s("td",{class:"ts-tick"},V):null,...st.cells.map((ht,Nt)=>{let Rt=!Nt&&
!!Ce(ht);return s(Rt?"th":"td",{scope:Rt?"row":null,class:h.numbers.includes(Nt)?"ts-figure":null},b(ht,`cell:${h.id}:${st.
key}:${Nt}`))}))};return D?.addEventListener("change",()=>{if(U.clear(),D.checked)for(let{key:st}of h.rows)U.add(st);for(let st of tt(
E,"td.ts-tick input"))st.checked=D.checked}),it(),s("section",{},s("div",{class:"ts-desk-caption"},F,z("Save as CSV",()=>t.
send({type:"export",table:h.id}),{"aria-label":`Save as CSV: ${h.title}`,"data-key":`export:${h.id}`})),s("div",{class:"\
ts-desk-scroll",role:"region",tabindex:0,"aria-labelledby":P},s("table",{class:"ts-table","aria-labelledby":P},s("thead",
{},Z),E)))}function W(h){if(h.kind==="table")return j(h);if(h.kind==="form")return O(h);if(h.kind==="link"){let P=h.how===
"edit"?"lab/tree":h.how,U={class:"ts-link",href:P?Qt(P,h.path):h.path,target:"_blank"};return s("p",{},s("a",{...U,"data\
-key":`link:${h.path}`},h.text))}return h.how==="head"?s("h3",{},h.text):s("p",{class:h.how==="hint"?"ts-hint":null},h.text)}
function K(h){if(!n.isLost()){if(M()){L=()=>K(h);return}$="",S("page",{name:h})}}function Y(){let h=t.get("page");i.replaceChildren(
...t.get("pages").map(([P,F])=>z(F,()=>K(P),{class:"ts-button","aria-current":P===h?"page":null,"data-key":`page:${P}`})))}
let ft=t.get("cleared"),H=t.get("page");function G(){let h=A().find(Z=>Z===document.activeElement)?.dataset.key,P=o.contains(
document.activeElement),F=tt(o,".ts-desk-scroll").map(Z=>Z.scrollTop);T="",(t.get("page")!==H||t.get("cleared")!==ft)&&(k=
"",d=new Map,p=new Map,m=new Map,{page:H,cleared:ft}={page:t.get("page"),cleared:t.get("cleared")}),r.textContent=t.get(
"said"),n.alert.textContent=t.get("trouble"),Y();let U=new Map(t.get("pages")),rt=s("h2",{tabindex:-1},U.get(H));if(o.replaceChildren(
rt,...t.get("parts").map(W)),tt(o,".ts-desk-scroll").forEach((Z,E)=>{Z.scrollTop=F[E]??0}),v(),h||P){let Z=A().find(E=>E.
dataset.key===h);(Z??rt).focus({preventScroll:!!Z})}N&&!Object.keys(t.get("busy")).length&&(N=!1,I()),C(),q()}function q(){
if(M()||!L)return;let h=L;L=null,h()}let ot;function et(){let h=t.get("busy");if(C(),clearTimeout(ot),!Object.keys(h).length){
c.replaceChildren();return}let{doing:P,done:F,of:U}=h,rt=U?`${P}: ${F} of ${U}`:`${P} …`,Z=()=>{c.replaceChildren(s("p\
rogress",U?{max:U,value:F,"aria-label":P}:{"aria-label":P}),s("span",{role:"status"},rt))};c.childElementCount?Z():ot=window.
setTimeout(Z,go)}n.follow("change:turn",()=>setTimeout(G,0)),n.follow("change:busy",et),n.follow("change:by",()=>{l.value=
t.get("by")}),n.follow("msg:custom",h=>{if(h.type==="trouble"&&(T="",N=!1,C(),I()),h.type!=="save")return;let P=URL.createObjectURL(
new Blob([`\uFEFF${h.text}`],{type:"text/csv"}));s("a",{href:P,download:h.name}).click(),setTimeout(()=>URL.revokeObjectURL(
P),1e3)}),G(),et();let ct=!0,bt=new IntersectionObserver(([h])=>{ct=h.isIntersecting});bt.observe(e);let lt=0,Et=setInterval(
()=>{let h=t.get("every");lt+=1,h&&lt>=h&&ct&&!document.hidden&&(lt=0,S("look"))},1e3);return()=>{clearInterval(Et),clearTimeout(
ot),bt.disconnect(),n.close()}}function Fe(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=c=>String(c).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var mo="twoshaft-unsent:";function gn(t,e){let n=mo+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,c,i,u=new Date)=>o({...r(),[a]:{value:c,
base:i,at:u.toISOString()}}),drop(a){let{[a]:c,...i}=r();c&&o(i)}}}function mn(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var Wt=null,wo="input, button, select, textarea, summary, a, [tabindex]",wn=t=>[...t.querySelectorAll(wo)];function bn(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?Wt={form:e,at:wn(t).indexOf(a),from:null}:Wt?.form===e&&t.
isConnected&&(Wt=null))},r=({target:a})=>{Wt?.form===e&&a instanceof HTMLInputElement&&(Wt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(Wt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=Wt,i=wn(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var bo=["print","colour"];function te(t){for(let e of bo){let n=t?.[e];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${e}`,n):document.documentElement.removeAttribute(`data-ts-${e}`))}}function vn(){te({print:"",colour:""})}function kn(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),u=z("Use these figures",()=>f("yes")),l=z(
"Go back to the drawn figures",()=>f("no")),d=!1,p=a.map(g=>{let $=at("bench"),k=g.options.length?s("select",{class:"ts-\
box",id:$,"aria-describedby":`${$}-read`},s("option",{value:""},"choose"),...vt(g.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:$,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${$}-hint ${$}-read`}),
T=s("span",{class:"ts-hint",id:`${$}-hint`},g.hint),N=s("p",{class:"ts-read",id:`${$}-read`}),L=g.text,C=()=>{k.value.trim()!==
L.trim()&&(L=k.value,e({type:"bench",name:g.name,value:k.value}))};return k.addEventListener(g.options.length?"change":"\
blur",C),k.addEventListener("keydown",M=>{M.key==="Enter"&&(M.preventDefault(),C())}),{name:g.name,flush:C,input:k,element:s(
"div",{class:"ts-bench-row"},s("label",{for:$},g.prompt),s("div",{class:"ts-line-of"},k,T),N),show(M){if(!M)return;(document.
activeElement!==k||k.value===L)&&(k.value=M.text,L=M.text),k.setAttribute("aria-invalid",String(!!M.error)),N.classList.
toggle("ts-error",!!M.error);let S=M.error?[At("▲")," "]:[],A=M.read&&!M.options.length&&`read as ${M.read}`,w=M.error||
[A,M.origin].filter(Boolean).join(", ");N.replaceChildren(...S,w)}}}),f=g=>{for(let $ of p)$.flush();d=!0,e({type:"bench",
name:"in-use",value:g})};o.append(s("summary",{},c),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They are used in place of the drawn figures in this task, all of them or none. Your answers are marke\
d on them by the same rules."),s("div",{class:"ts-bench-rows"},...p.map(g=>g.element)),i,s("div",{class:"ts-tools"},u,l));
function m(){let g=r(),$=new Map(g.rows?.map(L=>[L.name,L]));for(let L of p)L.show($.get(L.name));c.textContent=g.used?"\
✓ This task uses figures from the bench":"Use readings from the bench",l.hidden=!g.wanted,u.hidden=g.used&&!g.stale;let k=g.
wanted&&!g.used?"▲ ":g.used?"● ":"○ ",T=g.used?"in use":g.wanted?`not used; the drawn figures stand. ${g.refused}`:
"not used; the drawn figures stand",N=g.stale?` The tables and choices of this task are still the ones from before. ${g.
used?"Press the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${k}${T}${N}`,
g.wanted&&!g.used&&(o.open=!0)}return{element:o,show:m,hear(g){g.type!=="bench-saved"||g.name!=="in-use"||!d||(d=!1,r().
stale&&n())},lost(){for(let g of[u,l,...p.map($=>$.input)])g.disabled=!0}}}var vo=5e3,ko=2e3,yo={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Ke="kept in this browser until it can be\
 saved";function xo(t,e,n,r){let o=jt(t),a=Ft(t),c=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),u=0,l=null,d={},p=()=>{clearTimeout(l??void 0),l=null},f=L=>{n.put(t.name,L,d.revision??0),m(L)},m=L=>{u+=
1,k("wait",r()?Ke:"saving"),p(),l=window.setTimeout(()=>k("wait",Ke),vo),e({type:"save",name:t.name,value:L,turn:u})},g=o.
make(t,a,f,(L,C)=>{L?(n.put(t.name,C,d.revision??0),k("wait","not saved yet: press Enter or leave the box")):l===null&&(n.
drop(t.name),T(d))}),$=Kt(t,a,a.status);o.status==="above"?$.append(i,g.element,c):$.append(g.element,c,i);function k(L,C){
i.className=`ts-status ts-status-${L}`,i.dataset.text!==C&&(i.dataset.text=C,i.replaceChildren(At(yo[L]),` ${C}`))}function T(L,C=!1){
if(d=L??{},g.show(d),c.replaceChildren(d.read?`read as ${d.read}`:""),!C)if(d.error){let{error:M,saved:S="",note:A}=d;k(
"unread",`Look again: ${M} Kept as typed, ${Fe(S)}${A?`; ${A}`:""}.`)}else d.saved&&!d.blank?k("saved",`saved ${Fe(d.saved)}${d.
note?`; ${d.note}`:""}`):k("none",o.blank??"not answered yet")}let N=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:$,show(L){l===null&&T(L,N())},saved(L){L.turn===u&&(g.pending?.()||n.drop(t.name),p(),T(L.state))},refused(L){
L.turn===u&&(p(),g.refused(),k("bad",`not saved: ${L.reason}`))},off(){clearTimeout(l??void 0),(l!==null||g.pending?.())&&
k("wait",Ke)},catchUp(){let L=n.get(t.name);L&&(mn(L,d)?(g.show({...d,value:L.value,error:""}),m(L.value)):n.drop(t.name))},
flush:()=>g.flush?.(),summary:()=>({answered:!!d.saved&&!d.blank&&!d.error&&!d.short,unread:!!d.error,trouble:N(),waiting:l!==
null})}}function yn({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=gn(window.localStorage,r),a=!1,c=()=>a||p.isLost(),
i=n.map(C=>xo(C,m,o,c)),u=new Map(i.map(C=>[C.name,C])),l=s("p",{class:"ts-who"}),d=s("p",{class:"ts-total"});te(t.get("\
look"));let p=Q({model:t,el:e},{kind:"form",lost(){for(let C of i)C.off();f.lost(),g()},line(C){a=C;for(let M of i)C?M.off():
M.catchUp();g()}}),f=kn(t,p.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(s("div",
{class:"ts-top"},l,d),p.alert,f.element,...i.map(C=>C.element)),e.dataset.task=t.get("task_id");function m(C){p.send(C),
g()}function g(){let C=i.map(B=>B.summary()),M=C.filter(B=>B.answered).length,S=C.filter(B=>B.trouble).length,A=C.some(B=>B.
waiting),w=C.filter(B=>B.unread).length,x=S?`${S} not saved`:A?c()?"the rest kept in this browser":"saving":M&&!w?"all s\
aved":"",v=[`${M} of ${i.length} answered`,w?`${w} cannot be read`:"",x];d.textContent=v.filter(Boolean).join(", ");let I={
task:t.get("task_id"),answered:M,asked:i.length,unread:w};e.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:I}))}function $(){l.textContent=t.get("header");let C=t.get("states");for(let M of i)M.show(C[M.name]);g()}let k=0,
T=()=>{if(document.visibilityState==="hidden")for(let C of i)C.flush();document.visibilityState!=="visible"||Date.now()-
k<ko||(k=Date.now(),p.send({type:"look"}))},N=r?new BroadcastChannel(`twoshaft-saved:${r}`):null;N?.addEventListener("me\
ssage",({data:C})=>{C===t.get("task_id")&&p.send({type:"look"})}),document.addEventListener("visibilitychange",T),window.
addEventListener("focus",T),e.addEventListener("focusin",C=>{C.relatedTarget instanceof Node&&e.contains(C.relatedTarget)||
T()}),p.follow("change:states change:header",$),p.follow("msg:custom",C=>{C.type==="saved"&&(u.get(C.name)?.saved(C),N?.
postMessage(t.get("task_id"))),C.type==="refused"&&u.get(C.name)?.refused(C),g()}),p.follow("msg:custom",f.hear),p.follow(
"change:bench",f.show),$();for(let C of i)C.catchUp();g(),f.show(),p.alert.textContent=t.get("notice");let L=bn(e,`${r}/${t.
get("task_id")}`);return()=>{L(),N?.close(),p.close(),document.removeEventListener("visibilitychange",T),window.removeEventListener(
"focus",T)}}function Ee(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var $o={right:"●",other:"◆",unread:"▲"};function So(t){let e=Ft(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),r=null,o=jt(t).make(t,e,i=>{r=i,o.show({value:r}),c(void 0)},(i,u)=>{i&&(r=u)}),a=Kt(t,e,e.status);a.append(o.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let u=i?[At($o[i.how]),s("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...u)}return{name:t.name,element:a,value(){return o.flush?.(),r},show(i,u){i!==void 0&&(r=i,o.show(
{value:r,saved:"given"})),c(u)},still(i){o.setDisabled(i),a.classList.toggle("ts-given",i)}}}function xn({model:t,el:e}){
let n=Q({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let r=s("p",{class:"ts-title",role:"heading","aria-\
level":"3"}),o=s("p",{class:"ts-lead"}),a=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-asked"}),i=z(t.get("give"),()=>{
let $=Object.fromEntries(d.map(k=>[k.name,k.value()]));n.send({type:"give",values:$})});i.classList.add("ts-first");let u=z(
"",()=>n.send({type:"fresh"})),l=t.get("all")?z(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,r,o,a,c,s("p",{class:"ts-acts"},i,u,l));let d=[],p=()=>{let $=t.get("values"),k=t.get("told");for(let C of d)
C.show($[C.name],k[C.name]),C.still(k[C.name]!==void 0&&k[C.name].how!=="unread");let T=d.some(({name:C})=>!k[C]||k[C].how===
"unread"),N=document.activeElement===i;if(i.hidden=!T,u.textContent=t.get("fresh"),u.hidden=T||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!N||T)return;let L=tt(e,".ts-told")[0];L.tabIndex=-1,L.focus({preventScroll:!0})},f=()=>{(tt(c,"input, s\
elect, [tabindex]")[0]??(u.hidden?i:u)).focus({preventScroll:!0})},m=()=>{d=t.get("fields").map(So),c.replaceChildren(...d.
map(({element:$})=>$)),r.textContent=t.get("title"),r.hidden=!r.textContent,o.textContent=t.get("lead"),o.hidden=!o.textContent,
a.replaceChildren(...Mt(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let $=e.contains(
document.activeElement);m(),$&&f()}),n.follow("change:told change:values change:notice change:fresh",p),m();let g=t.get(
"place");if(g){let $=Ee(sessionStorage,localStorage,g).get();t.send({type:"who",id:$?.id??"",ticket:$?.ticket??""})}return()=>n.
close()}var $n="twoshaft-mine";var Sn="This is done as soon as the connection is back.",Lo={"to get":"○",open:"◐","handed in":"●","changed since":"\
◑",feedback:"✓"},Co={"to get":"To get",open:"Open","handed in":"Handed in","changed since":"Changed after handing in",
feedback:"Marked"},Me=(t,e,n)=>s("a",{href:Qt("lab/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"t\
s-link"},e);function Ln(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:r,unread:o})=>s("li",{},`${e}\
: `,n===r?"nothing answered":n?`${n} of ${r} missing`:"",...o.map(([a,c])=>s("span",{},s("b",{},"cannot be read: "),`“${a}\
” ${c}`)))))}function Eo(t){let e=({name:r})=>Number(r.split("-").at(-1)),n=[...t].sort((r,o)=>e(r)-e(o)).flatMap(({notebooks:r})=>r.
map(o=>[o.split("/").pop()??"",o]));localStorage.setItem($n,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(
new Event("storage"))}var ee=null;function Cn({model:t,el:e}){let n="",r=Ee(sessionStorage,localStorage,t.get("place")),
o=!1,a=(b=!0)=>{o=b,o&&ee&&(u.textContent=Sn)},c=Q({model:t,el:e},{kind:"start",lost:a,line:a}),i=s("div",{}),u=s("p",{class:"\
ts-said",role:"status"});c.show(c.alert,u,i);let l=(b,j={})=>{i.getAttribute("aria-busy")==="true"||c.isLost()&&j.quietly||
(j.quietly||(ee={type:b,...j},i.setAttribute("aria-busy","true"),u.textContent=o?Sn:"One moment.",c.alert.textContent=""),
c.isLost()||t.send({type:b,...j}))},d=()=>{let b=ee;ee=null,b&&(b.type==="sign-in"||t.get("me").id)&&l(b.type,b)},p=(b,j,W,K)=>s(
"button",{type:"button",class:K?"ts-button ts-first":"ts-button","data-key":j,onclick:W},b);function f(){let b=at("who"),
j=at("word"),W=s("select",{id:b,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.
get("people").map(([Y,ft])=>s("option",{value:Y,selected:Y===n},ft)));W.addEventListener("change",()=>{n=W.value});let K=s(
"input",{id:j,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data\
-key":"word"});return s("form",{class:"ts-sign-in",onsubmit:Y=>{Y.preventDefault(),l("sign-in",{name:W.value,word:K.value})}},
s("h2",{},"Who is working?"),s("div",{class:"ts-pair"},s("label",{for:b},"Your name"),W),s("div",{class:"ts-pair"},s("la\
bel",{for:j},"Sign-in word from your slip"),K),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},
"Sign in"),s("p",{class:"ts-hint"},t.get("kept")))}function m(b,j){let W=q=>`${q}:${b.name}`,K=s("div",{class:"ts-doing"});
for(let q of b.feedback.slice(0,1))K.append(s("a",{href:Qt("files",q),target:"_blank",class:"ts-link","data-key":W("feed\
back")},"Read feedback"));for(let q of b.notebooks){let ot=b.notebooks.length===1?"Open":`Open ${q.split("/").pop()}`;K.
append(Me(q,ot,W(`open ${q}`)))}b.can_get&&K.append(p(b.notebooks.length?"Get again":"Get",W("get"),()=>l("get",{name:b.
name}),!b.notebooks.length)),b.can_hand_in&&K.append(p(b.receipt?"Hand in again":"Hand in",W("hand in"),()=>l("hand-in",
{name:b.name})));for(let q of K.children)q.setAttribute("aria-label",`${q.textContent}: ${b.title}`);let Y=t.get("asking")===
b.name,ft=b.receipt||b.unread>0,H=s("tr",{},s("th",{scope:"row"},b.title),s("td",{},b.due||"no date",b.overdue?s("span",
{class:"ts-small-line"},"date passed"):null),s("td",b.receipt?{tabindex:-1,"data-key":W("receipt")}:{},s("span",{class:"\
ts-shape","aria-hidden":"true"},Lo[b.state]||""),s("b",{},Co[b.state]||b.state),s("span",{class:"ts-small-line"},b.detail),
j?s("span",{class:"ts-small-line"},`Mark: ${j}`):null),s("td",{},K));if(Y)return[H,s("tr",{},s("td",{colspan:4},$(b)))];
if(!ft||!b.gaps.length)return[H];let G=s("td",{colspan:4},s("b",{},g(b)),Ln(b.gaps));return[H,s("tr",{},G)]}let g=({left:b,
unread:j})=>It([b?`${b} ${b===1?"answer is":"answers are"} missing`:null,j?`${j} cannot be read`:null]).join(", ");function $(b){
let j=at("question"),W=s("div",{class:"ts-doing"});for(let Y of b.notebooks)W.append(Me(Y,"Go on with it",`go on:${b.name}`));
let K=g(b);return W.append(p(K?"It is my own work: hand in as it is":"It is my own work: hand in",`hand in anyway:${b.name}`,
()=>l("hand-in",{name:b.name,own:!0}),!K)),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":j,"da\
ta-key":"question"},s("p",{id:j},s("b",{},`${b.title}: not handed in yet.${K?` ${K}.`:""}`),K?" An answer that is missin\
g or cannot be read earns nothing.":null),K?Ln(b.gaps):null,s("p",{},"By handing in you state: ",s("b",{},t.get("stateme\
nt"))),W)}let k=new Set,T={met:"✓",enough:"◐","not yet":"○"};function N(b,j){let W=b.entries.map(H=>j.find(G=>G.name===
H)).filter(H=>H!==void 0),K=b.lesson?Me(b.lesson,`Lesson ${b.title}`,`lesson:${b.lesson}`):s("span",{class:"ts-small-lin\
e"},"no lesson here"),Y=s("details",{open:k.has(b.module)},s("summary",{"data-key":`outcomes:${b.module}`},`Outcomes: ${b.
count||"none"}`),s("ul",{},...b.outcomes.map(([H,G,q,ot])=>s("li",{},s("span",{class:"ts-shape","aria-hidden":"true"},T[H]||
""),s("b",{},`${H}${q&&H==="enough"?`, ${q}`:""}: `),G,q&&H==="not yet"?`. Still missing: ${q}`:"",ot?` (${ot})`:""))));
Y.addEventListener("toggle",()=>{Y.open?k.add(b.module):k.delete(b.module)});let ft=W.flatMap(H=>m(H,b.marks[H.name]));return s(
"tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},b.title,s("span",{class:"ts-assigned"},W.length?
"assigned":"not assigned"))),...ft,s("tr",{},s("td",{colspan:4},K,s("p",{class:"ts-next"},s("b",{},"Next: "),b.next),Y)))}
function L(){let b=t.get("me"),j=t.get("entries"),W=s("table",{class:"ts-table"},s("thead",{},s("tr",{},...["Assignment",
"Due","State","What you can do"].map(K=>s("th",{scope:"col"},K)))),...t.get("modules").map(K=>N(K,j)));return s("section",
{},s("div",{class:"ts-me"},s("h2",{},`Working as ${b.name} (${b.id})`),b.ticket?p("Not you? Sign out","sign-out",()=>{r.
drop(),l("sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),j.length?null:s("p",{},"Noth\
ing is assigned yet."),W,p("Look again","look",()=>l("look")))}function C(){let b=!!t.get("me").id,j=t.get("modules").map(
Y=>Y.lesson),K=t.get("lessons").filter(([Y])=>!b||!j.includes(Y));return K.length?s("section",{},s("h2",{},b?"To look th\
ings up":"Lessons"),s("ul",{class:"ts-lessons"},...K.map(([Y,ft])=>s("li",{},Me(Y,ft,`lesson:${Y}`))))):null}let M=!1,S=t.
get("me").id?null:r.get(),A=S!==null;function w(){let b=t.get("me");b.id?te(t.get("look")):vn(),b.id?r.keep(b):(M||S&&!A)&&
r.drop(),M=!!b.id,Eo(b.id?t.get("entries"):[])}let x=0,v="",I=()=>tt(i,"[data-key]"),B=()=>i.querySelector("input[data-k\
ey=word]");function _(){let j=I().find(lt=>lt===document.activeElement)?.dataset.key;i.removeAttribute("aria-busy");let W=!!t.
get("me").id;u.textContent=t.get("said"),c.alert.textContent=t.get("trouble");let K=B()?.value,Y=A?s("p",{},"One moment."):
f();i.replaceChildren(...It([W?L():Y,C()]));let ft=B();ft&&K&&(ft.value=K);let H=v;if(v=t.get("asking"),v&&v!==H&&I().find(
lt=>lt.dataset.key==="question")?.focus(),!j||v&&v!==H)return;let G=I().find(lt=>lt.dataset.key===j),q=j.split(":")[1],ot=I().
filter(lt=>q&&lt.dataset.key?.endsWith(`:${q}`)),et=ot.find(lt=>lt.dataset.key?.startsWith("receipt")),ct=ot.find(lt=>lt!==
et),bt=j.startsWith("hand in anyway")?et??ct:ct;(G??bt??tt(i,"a, button, select")[0])?.focus()}let J=()=>{clearTimeout(x),
x=setTimeout(()=>{let b=A;A=!1,b||(ee=null),w(),_(),b&&d()},0)};t.on("change",J),w(),_(),S?t.send({type:"resume",name:S.
id,ticket:S.ticket}):d();let y=()=>{!document.hidden&&t.get("me").id&&l("look",{quietly:!0})},O=new IntersectionObserver(
([b])=>{b.isIntersecting&&y()});return O.observe(e),document.addEventListener("visibilitychange",y),()=>{clearTimeout(x),
t.off("change",J),O.disconnect(),document.removeEventListener("visibilitychange",y),c.close()}}var Mo={bench:bs,build:xs,cord:Ls,depth:Cs,desk:hn,exploded:Ds,face:Ps,fault_board:js,form:yn,gate:Ws,gears:_s,hazards:Fs,
lifting:Ks,micrometer:qs,own_checks:Us,press:zs,question:xn,rules:Gs,runout:Ys,sealant:en,seat:sn,shims:nn,sketch:on,start:Cn,
thread:rn,unit_section:an,whole_build:dn,wrench:un};export{Mo as screens};
