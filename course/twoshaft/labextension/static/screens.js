var Un="http://www.w3.org/2000/svg";function n(t,e={},...s){let o=document.createElement(t);for(let[a,r]of Object.entries(
e))typeof r=="function"?o.addEventListener(a.slice(2),r):r===!0?o.setAttribute(a,""):r!==!1&&r!=null&&o.setAttribute(a,String(
r));return o.append(...Wt(s)),o}function D(t,e={},...s){let o=document.createElementNS(Un,t);return Ht(o,e),o.append(...s),
o}function Ht(t,e){for(let[s,o]of Object.entries(e))o!=null&&t.setAttribute(s,String(o))}function z(t,e,s={}){return n("\
button",{type:"button",class:"ts-button",onclick:e,...s},t)}function Nt(t,e){return n("select",{class:"ts-box",...t},...Mt(
e))}function Rt(t){return t.flatMap(([e,s])=>[n("dt",{},e),n("dd",{},s)])}function jt(t){return n("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Wt(t){return t.filter(e=>e!=null&&e!==!1)}var os=0;function ct(t){return os+=1,`two\
shaft-${t}-${os}-${Math.random().toString(36).slice(2,7)}`}function Zt(t,e){let s=t.querySelector(e);if(!s)throw new Error(
`nothing matches ${e}`);return s}function Z(t,e){return[...t.querySelectorAll(e)]}function At(t,e){let{target:s}=t;return s instanceof
Element?s.closest(e):null}function It(t){return t.ctrlKey||t.metaKey||t.altKey}function me(t){let e=Z(t,"button, input, \
select");for(let s of e)s.disabled=!0}function rs(t){for(let e=t.parentElement;e;e=e.parentElement){let s=getComputedStyle(
e).overflowY;if((s==="auto"||s==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function we(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function at(t,e,s=t){return z(t,e,{"aria-label":s})}
function Mt(t){return[...t].map(([e,s])=>n("option",{value:e},s))}function Kt(t){return t.map(e=>n("li",{},e))}var Dt=(t,e)=>n(
"div",{class:"ts-beside"},n("div",{},...Wt(t)),n("div",{},...Wt(e)));var Fe=new Map;function Ot(t,e){if(Fe.has(t))throw new Error(`the answer kind ${t} is registered twice`);Fe.set(t,e)}function Xt(t){
let e=Fe.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Qt(t){let e=ct(
t.kind);return{prompt:`${e}-prompt`,control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function te(t,e,s){
let{prompt:o}=Xt(t),a={class:"ts-prompt",id:e.prompt};if(o==="legend")return n("fieldset",{class:"ts-field","aria-descri\
bedby":s},n("legend",a,t.prompt));let r=o==="label"?n("label",{...a,for:e.control},t.prompt):n("p",a,t.prompt);return n(
"div",{class:"ts-field"},r)}function be(t,e,s,o){let r=t.options.map(([c,i])=>{let u=n("input",{type:s,name:e.control,value:c});return{key:c,input:u,
row:n("label",{class:"ts-option"},u,n("span",{},i))}});for(let{input:c}of r)c.addEventListener("change",()=>{o(r.filter(
i=>i.input.checked).map(({key:i})=>i))});return{element:n("div",{class:"ts-options"},...r.map(({row:c})=>c)),show(c){let i=c.
value==null?[]:[c.value].flat();for(let{key:u,input:d}of r)d.checked=i.includes(u)},setDisabled(c){for(let{input:i}of r)
i.disabled=c},refused(){}}}Ot("choice",{prompt:"legend",make:(t,e,s)=>be(t,e,"radio",o=>s(o[0]))});Ot("choices",{prompt:"legend",make:(t,e,s)=>be(t,e,"checkbox",s)});function ve(t){return t.filter(([,e])=>e).map(([e,s])=>`${e}=${s}`)}function ye(t){let e=Array.isArray(t)?t.filter(s=>typeof s==
"string"):[];return new Map(e.filter(s=>s.includes("=")).map(s=>[s.slice(0,s.indexOf("=")),s.slice(s.indexOf("=")+1)]))}Ot("each",{prompt:"legend",make(t,e,s){let o=t.lines,a=t.options,r=o.map(([c,i],u)=>{let d=`${e.control}-${u}`,l=n("labe\
l",{class:"ts-each-line",for:d},i),f=Nt({id:d},[["","choose"],...a]);return{key:c,box:f,row:n("li",{},l,f)}});for(let{box:c}of r)
c.addEventListener("change",()=>{s(ve(r.map(({key:i,box:u})=>[i,u.value])))});return{element:n("ol",{class:"ts-each"},...r.
map(({row:c})=>c)),show(c){let i=ye(c.value);for(let{key:u,box:d}of r)d.value=i.get(u)??""},setDisabled(c){for(let{box:i}of r)
i.disabled=c},refused(){}}}});function qe(t){let[e="",...s]=t.split(" "),o=e==="wipe"?0:Number(s.shift()),[a="",...r]=s;if(a!=="at")return{hand:e,size:o,
side:a,place:r[0],points:null};let c=r.map(i=>{let[u,d]=i.split(",").map(Number);return[u,d]});return{hand:e,size:o,side:a,
place:"",points:c}}function Ue(t,{side:e,place:s,points:o}){return o||(e==="round"?t.holes.find(a=>a.id===s)?.ring??[]:t.
stretches.find(a=>a.id===s)?.lines[e]??[])}function Ke(t,e){let{hand:s,size:o,side:a,place:r}=qe(e),c=[...t.stretches,...t.
holes].find(u=>u.id===r),i=s==="wipe"?"":` ${o} mm`;return`${t.hands[s]??s}${i}${c?`, ${c.name}`:""}, ${t.sides[a]??""}`}
function ze(t,e,s){return e==="film"?t.width:e==="bead"?s:e==="wipe"?2*t.width:1}function as(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),s=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return s?Number(s[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function is(t){let e=0;for(let s=1;s<t.length;s+=1)e+=Math.hypot(t[s][0]-t[s-1][0],t[s][1]-
t[s-1][1]);return e}function cs(t,[e,s]){return t.stretches.map(({id:a,lines:r})=>({id:a,away:Math.min(...r.middle.map(([
c,i])=>Math.hypot(c-e,i-s)))})).reduce((a,r)=>r.away<a.away?r:a).id}var Kn=.4;function ls(t,e){let s=Kn,o=ke(t,s);for(;o.
length>e;)s*=1.5,o=ke(t,s);return o.map(([a,r])=>[Math.round(a*10)/10,Math.round(r*10)/10])}function ke(t,e){if(t.length<
3)return t;let[s,o]=[t[0],t[t.length-1]],a=0,r=0;for(let c=1;c<t.length-1;c+=1){let i=zn(s,o,t[c]);i>a&&([a,r]=[i,c])}return a<=
e?[s,o]:[...ke(t.slice(0,r+1),e).slice(0,-1),...ke(t.slice(r),e)]}function zn(t,e,s){let[o,a]=[e[0]-t[0],e[1]-t[1]],r=Math.
hypot(o,a)||1;return Math.abs(o*(s[1]-t[1])-a*(s[0]-t[0]))/r}var xe=14,Gn=3,Yn=.5,Xn=12,Vn=["middle","inside","outside"],$e="round ";function Jn(t){let e=[];for(let s of t.split(" ")){
let o=e[e.length-1];o!==void 0&&o.length+s.length<Xn?e[e.length-1]=`${o} ${s}`:e.push(s)}return e}function Zn(t,e){let s=t.
outline.map(([W])=>W),o=t.outline.map(([,W])=>W),[a,r]=[Math.min(...s)-xe,Math.max(...s)+xe],[c,i]=[Math.min(...o)-xe,Math.
max(...o)+xe],u=r-a,d=i-c,l=([W,Y])=>`${(W-a).toFixed(1)} ${(i-Y).toFixed(1)}`,f=(W,Y)=>`M${W.map(l).join("L")}${Y?"Z":""}`,
p=ct("face"),h=u/100,g=2.5*h,y=`font-size: calc(${g.toFixed(2)}px * var(--ts-grown, 1))`,b=2*h,L=(W,Y)=>D("pattern",{id:`${p}\
-${W}`,width:b,height:b,patternUnits:"userSpaceOnUse"},D("path",{d:Y,class:"tsp-hatch","stroke-width":h/4})),T=D("defs",
{},L("oil",`M0 ${b}L${b} 0`),L("dirt",`M0 ${b}L${b} 0M0 0L${b} ${b}`)),S=t.cavities.map(([,W])=>f(W,!0)).join(""),I=t.islands.
map(W=>f(W,!0)).join(""),x=f(t.outline,!0)+S,N=D("g"),E=D("g"),w=D("g"),$=D("g"),m=D("path",{class:"tsp-live",d:""}),M=D(
"path",{class:"tsp-chosen",d:""}),j=D("path",{class:"tsp-land",d:x,"fill-rule":"evenodd"}),_=D("path",{class:"tsp-edge",
d:x+I,"stroke-width":h/2.5}),G=([W,Y],V,ft="middle")=>{let gt={x:W-a,y:i-Y,style:y,"text-anchor":ft};return D("text",{class:"\
tsp-text",...gt},V)},P=[(a+r)/2,(c+i)/2],k=(W,Y)=>{let V=we(W,P)||1;return[W[0]+Y*(P[0]-W[0])/V,W[1]+Y*(P[1]-W[1])/V]};for(let{
x:W,y:Y,d:V,leads:ft,name:gt}of t.holes){let dt={cx:W-a,cy:i-Y,"stroke-width":h/4},mt=ft==="blind"?"tsp-hole tsp-blind":
"tsp-hole";w.append(D("circle",{...dt,r:V/2,class:mt})),ft==="to the outside"&&w.append(D("circle",{...dt,r:V/3,class:"t\
sp-hole"}));let[A,F]=k([W,Y],-(V/2+4.4*h));w.append(G([A,F],gt.replace("bolt ","")))}for(let W of t.guides){let[Y,V]=[W.
x-a,i-W.y],ft=`M${Y-h} ${V}h${b}M${Y} ${V-h}v${b}`;w.append(D("path",{class:"tsp-guide",d:ft,"stroke-width":h/2}));let gt={
"stroke-width":h/5,"stroke-dasharray":`${h} ${h}`};w.append(D("circle",{cx:Y,cy:V,r:W.reach,class:"tsp-reach",...gt}));let dt=k(
[W.x,W.y],W.reach+b),mt=(dt[0]-W.x)/(W.reach+b),A=mt>.5?"start":mt<-.5?"end":"middle",F=Jn(W.name),K=G(dt,"",A),Q=(1-F.length)/
2;K.append(...F.map((kt,lt)=>D("tspan",{x:dt[0]-a,dy:`${lt?1:Q}em`},`${kt} `))),w.append(K)}for(let{word:W,points:Y,width:V}of t.
spots){let[ft]=W.split(" "),[gt,dt]=[Y[0],Y[Y.length-1]],mt=we(gt,dt)||1,[A,F]=[-(dt[1]-gt[1])/mt*V/2,(dt[0]-gt[0])/mt*V/
2],K=[[gt[0]+A,gt[1]+F],[dt[0]+A,dt[1]+F],[dt[0]-A,dt[1]-F],[gt[0]-A,gt[1]-F]],Q=`url(#${p}-${ft})`;N.append(D("path",{d:f(
K,!0),fill:Q,class:"tsp-spot","stroke-width":h/4}));let kt=G(k([(gt[0]+dt[0])/2,(gt[1]+dt[1])/2],9*h),ft);kt.classList.add(
"tsp-spot-word"),w.append(kt)}let v=[100,50,20,10].find(W=>W<u/4)??10,B=`M${h} ${d-h}v${-h}v${h/2}h${v}v${-h/2}v${h}`,H={
x:v+b,y:d-1.8*h,style:y};$.append(D("path",{class:"tsp-edge",d:B,"stroke-width":h/4}),D("text",{class:"tsp-text",...H},`${v}\
 mm`));let q=`0 0 ${u.toFixed(1)} ${d.toFixed(1)}`,ot=D("svg",{viewBox:q,class:"tsp-face",role:"img","aria-label":e},T,j,
N,E,_,w,M,m,$);ot.dataset.letters=g.toFixed(2),ot.dataset.grow="2.5";let yt=`max-width: ${(25*u/d).toFixed(1)}rem`;return{
frame:n("div",{class:"ts-pad-face",style:yt},ot),svg:ot,over:$,live:m,chosen:M,land:j,path:f,unit:h,box:{left:a,right:r,
low:c,high:i,width:u,height:d},place({clientX:W,clientY:Y}){let V=ot.getBoundingClientRect(),ft=Math.min(V.width/u,V.height/
d);return[a+(W-V.left-(V.width-ft*u)/2)/ft,i-(Y-V.top-(V.height-ft*d)/2)/ft]},strokes(W){E.replaceChildren(...W.map(Lt))}};
function Lt(W){let Y=qe(W),V=Ue(t,Y),ft=ze(t,Y.hand,Math.max(Y.size,h/2)),gt=V.length>1?f(V,Y.side==="round"):V.length?`${f(
V)}h0.01`:"",dt=D("path",{d:gt,class:`tsp-stroke tsp-${Y.hand}`,"stroke-width":ft});if(Y.hand!=="film")return dt;let mt=Math.
min(8,Math.max(.6,40*Y.size)),A={"stroke-width":h/3,"stroke-dasharray":`${mt} ${mt}`};return D("g",{},dt,D("path",{d:gt,
class:"tsp-grain",...A}))}}function Se({face:t,label:e,onLay:s,onRemove:o,onClear:a}){let r=Zn(t,e),c=n("p",{class:"ts-h\
idden","aria-live":"polite"}),i=n("p",{class:"ts-read ts-pad-trouble",role:"status"}),u=(k,v)=>n("span",{class:"ts-pair"},
n("label",{for:v.id},k),v),d=Nt({id:ct("hand")},Object.entries(t.hands)),l=n("input",{class:"ts-box ts-size",id:ct("size"),
type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),f=n("label",{for:l.id},"thickness"),p=Nt({id:ct("pla\
ce")},t.stretches.map(({id:k,name:v})=>[k,v]));p.append(n("optgroup",{label:"Round a hole"},...t.holes.map(({id:k,name:v})=>n(
"option",{value:`${$e}${k}`},`round ${v}`))));let h=Nt({id:ct("side")},Vn.map(k=>[k,t.sides[k]])),g=z("Lay it here",()=>E(
[N(p.value)])),y=z("Lay it on every stretch",()=>E(t.stretches.map(({id:k})=>N(k)))),b=z("Take back the last pass",()=>{
S&&o(S-1,!0)}),L=z("Clear the face",a),T={film:"",bead:""},S=0,I=!1;function x(){if(d.value==="wipe")return"";let[k,v]=t.
sizes[d.value],B=as(l.value);if(B>=k&&B<=v)return l.removeAttribute("aria-invalid"),` ${Number(B.toFixed(3))}`;let H=d.value===
"film"?"the thickness of the film":"the diameter of the bead";return i.textContent=l.value.trim()?`Read “${l.value}”: \
give ${H} from ${k} to ${v} mm.`:`First give ${H} in mm.`,l.setAttribute("aria-invalid","true"),l.focus(),null}function N(k){
let v=x();if(v===null)return null;let B=k.startsWith($e)?k:`${h.value} ${k}`;return`${d.value}${v} ${B}`}function E(k){let v=k.
filter(B=>B!==null);if(!(I||v.length<k.length)){if(S+v.length>t.most){i.textContent=`There is room for ${t.most} passes;\
 take some back first.`;return}i.textContent="",c.textContent=v.length===1?`Laid: ${Ke(t,v[0])}`:`Laid on ${v.length} st\
retches`,s(v)}}function w(){let k=d.value==="wipe";f.textContent=d.value==="bead"?"diameter":"thickness",l.disabled=I||k,
l.value=k?"":T[d.value],l.placeholder=k?"":"mm",g.textContent=k?"Wipe here":"Lay it here",y.textContent=k?"Wipe every st\
retch":"Lay it on every stretch",i.textContent="",$()}function $(){let k=p.value.startsWith($e);h.disabled=I||k;let v=Ue(
t,k?{side:"round",place:p.value.slice($e.length)}:{side:h.value,place:p.value});r.chosen.setAttribute("d",v.length?r.path(
v,k):""),r.chosen.setAttribute("stroke-width",String(r.unit/2))}d.addEventListener("change",w),l.addEventListener("input",
()=>{T[d.value]=l.value}),p.addEventListener("change",$),h.addEventListener("change",$),l.addEventListener("keydown",k=>{
k.key==="Enter"&&(k.preventDefault(),g.click())});let m=null;r.svg.addEventListener("pointerdown",k=>{if(I||k.button>0)return;
m=[r.place(k)],r.svg.setPointerCapture(k.pointerId);let v=Math.max(1,Number(T.bead.replace(",","."))||1);r.live.setAttribute(
"stroke-width",String(ze(t,d.value,v)))}),r.svg.addEventListener("pointermove",k=>{if(!m)return;let v=r.place(k);we(v,m[m.
length-1])<Yn||(m.push(v),r.live.setAttribute("d",r.path(m)))});let M=k=>{if(!m)return;let v=m;if(m=null,r.live.setAttribute(
"d",""),k.type==="pointercancel")return;if(is(v)<Gn){p.value=cs(t,v[0]),$();return}let B=x();if(B===null)return;let H=ls(
v,t.points).map(q=>q.join(","));E([`${d.value}${B} at ${H.join(" ")}`])};r.svg.addEventListener("pointerup",M),r.svg.addEventListener(
"pointercancel",M);let j=n("ol",{class:"ts-passes","aria-label":"Passes, in the order they were done"}),_=n("p",{class:"\
ts-hint"},"Nothing is laid yet."),G=n("div",{class:"ts-pad-tools"},n("div",{class:"ts-tools"},u("tool",d),n("span",{class:"\
ts-pair"},f,l)),n("div",{class:"ts-tools"},u("where",p),u("runs",h)),n("div",{class:"ts-tools"},g,y,b,L),i,c),P=()=>Z(j,
"button");return w(),{drawing:r,tools:G,list:j,empty:_,frame:r.frame,element:n("div",{class:"ts-pad"},r.frame,G,n("div",
{class:"ts-pad-list"},_,j)),show(k,v=[]){S=k.length,r.strokes(k),_.hidden=S>0;let B=P().findIndex(H=>H.matches(":focus"));
j.replaceChildren(...k.map((H,q)=>n("li",{},n("span",{},`${Ke(t,H)}${v[q]?`, ${v[q]}`:""} `),z("take out",()=>o(q,!1),{class:"\
ts-button ts-remove",disabled:I,"aria-label":`Take out pass ${q+1}`})))),B>=0&&(P()[Math.min(B,S-1)]??g).focus()},setDisabled(k){
I=k;for(let v of[d,p,g,y,b,L,...P()])v.disabled=k;l.disabled=k||d.value==="wipe",$()}}}Ot("film",{prompt:"words",make(t,e,s){let o=[],a=c=>{o=c,r.show(o),s(o)},r=Se({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>a([...o,...c]),onRemove:c=>a(o.filter((i,u)=>u!==c)),onClear:()=>a([])});
return{element:r.element,show(c){o=[c.value??[]].flat().filter(i=>typeof i=="string"),r.show(o)},setDisabled:r.setDisabled,
refused(){}}}});function ds(t,{send:e,typing:s,said:o=r=>String(r??""),wrong:a=r=>!!r.error}){let r=n("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||r.value.trim()!==c.trim(),u=()=>{i()&&(c=r.value,e(r.value))};return r.
addEventListener("blur",u),r.addEventListener("keydown",d=>{let l=(d.ctrlKey||d.metaKey)&&d.key.toLowerCase()==="s";d.key!==
"Enter"&&!l||(d.preventDefault(),u())}),r.addEventListener("input",()=>s(i(),r.value)),{box:r,flush:u,pending:i,refused(){
c=null},show(d){r.setAttribute("aria-invalid",String(a(d))),!(document.activeElement===r&&r.value!==c)&&(c=o(d.value),r.
value=c)}}}function us(t,e){let[s,o,a]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(a)?s:o).
trim()} ${e}`.trim()}function ps(t,e,s,o){let a=Nt({"aria-label":"Choose the unit","aria-describedby":o},[["","unit"],...e.map(r=>[r,r])]);return a.
addEventListener("change",()=>{a.value&&(t.value=us(t.value,a.value),/\d/.test(t.value)?s():t.focus())}),t.addEventListener(
"input",()=>{a.value=""}),a}Ot("number",{prompt:"label",make(t,e,s,o){let a=t.units,{box:r,flush:c,pending:i,refused:u,show:d}=ds(e,{send:s,typing:o}),
l=n("span",{class:"ts-hint",id:e.hint},t.hint),f=a.length?ps(r,a,c,e.prompt):null;return{element:n("div",{class:"ts-line\
-of"},r,f,l),show:d,setDisabled(p){r.disabled=p,f&&(f.disabled=p)},refused:u,flush:c,pending:i}}});function hs(t,e){let o=[...new Set([t??[]].flat())].filter(a=>e.includes(String(a))).map(String);return[...o,...e.filter(
a=>!o.includes(a))]}var ee=(t,e)=>t.join(`
`)===e.join(`
`),fs=t=>`#${t.keys[0]}`,Le=class{constructor(e,s){this.labels=new Map(e.map(([o,a])=>[o,a])),this.stages=new Map;for(let[
o,,a]of e)a&&this.stages.set(o,a);this.staged=this.stages.size>0,this.order=[...s],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let s of this.order){let o=this.stages.get(s)??null,a=e.at(-1);a&&o!==null&&a.stage===o?a.keys.push(s):e.push({stage:o,
keys:[s]})}return e}rows(){if(!this.staged)return this.order.map(s=>({id:s,key:s,level:1}));let e=[];for(let s of this.runs()){
let[o]=s.keys;if(s.keys.length<2){e.push({id:o,key:o,level:1});continue}if(e.push({id:fs(s),run:s,level:1}),!this.closed.
has(String(s.stage)))for(let a of s.keys)e.push({id:a,key:a,level:2})}return e}row(e){return this.rows().find(s=>s.id===
e)}settle(){let e=this.rows();if(!e.some(s=>s.id===this.current)){let s=this.current.replace(/^#/,""),o=e.find(a=>a.run?.
keys.includes(s));this.current=(o??e.find(a=>a.id===s)??e[0]).id}return e}unit(){let e=this.row(this.current);return e?.
run?e.run.keys:this.block.has(this.current)&&this.block.size>1?this.order.filter(s=>this.block.has(s)):[this.current]}unitName(){
let e=this.row(this.current);if(e?.run)return`Stage ${e.run.stage}`;let s=this.unit();return s.length>1?`Block of ${s.length}\
 steps`:this.label(s[0])}where(){let e=this.unit(),s=this.order.indexOf(e[0])+1;return e.length>1?`positions ${s} to ${s+
e.length-1} of ${this.order.length}`:`position ${s} of ${this.order.length}`}rest(){let e=this.unit();return this.order.
filter(s=>!e.includes(s))}get isFirst(){return this.order.indexOf(this.unit()[0])===0}get isLast(){return this.order.indexOf(
String(this.unit().at(-1)))===this.order.length-1}insertedAt(e){let s=this.rest();return[...s.slice(0,e),...this.unit(),
...s.slice(e)]}shifted(e){let s=this.rest(),o=this.order.indexOf(this.unit()[0]),a=!!this.row(this.current)?.run,r=d=>s[e>
0?d:d-1],c=r(o);if(c===void 0)return this.insertedAt(o);let i=this.stages.get(c),u=i!==void 0&&(a||this.closed.has(i));do
o+=e;while(u&&r(o)!==void 0&&this.stages.get(r(o))===i);return this.insertedAt(o)}atPosition(e){return this.insertedAt(Math.
min(e-1,this.order.length-this.unit().length))}beside(e,s){return this.insertedAt(this.rest().indexOf(e)+(s==="after"?1:
0))}gathered(){let e=new Map;for(let s of this.order){let o=this.stages.get(s)??s;e.set(o,[...e.get(o)??[],s])}return[...e.
values()].flat()}dropAt(e,s){let o=e.run?e.run.keys:[e.key],a=e.run&&!this.closed.has(String(e.run.stage));return s&&!a?
{target:String(o.at(-1)),side:"after"}:{target:o[0],side:"before"}}take(e){if(ee(e,this.order))return!1;let s=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,s){let[o]=s.keys,a=this.rows().find(r=>r.run?.
keys.includes(o));this.current=a?a.id:o}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,s){let o=e.pop();return o?(s.push(this.order),this.order=
o,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||ee(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,s){this.order=[...e],s&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let s=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((o,a)=>o-a);s[0]>=0&&(this.block=new Set(this.order.slice(s[0],s[1]+1)))}fold(e,s){
let o=e.run?e.run.stage:this.stages.get(e.key),a=e.run?e.run.keys[0]:e.key,r=this.runs().find(c=>c.keys.includes(a));return!o||
!r||r.keys.length<2?null:(s?this.closed.add(o):this.closed.delete(o),s&&(this.current=fs(r)),o)}sought(e){let s=this.rows(),
o=s.findIndex(c=>c.id===this.current),a=e.length>1?o:o+1,r=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...s.slice(a),...s.slice(0,a)].find(c=>r(c).startsWith(e))}};var Qn=12,to=700,eo=5,gs=32,so=8;function Ce({label:t,steps:e,order:s,onChange:o,onChoose:a}){let r=new Le(e,s),{staged:c}=r,
i=!1,u={},d=!1,l=new Map,f=n("div",{"aria-live":"assertive",class:"ts-hidden"}),p=n("ul",{role:c?"tree":"listbox","aria-\
label":t,"aria-multiselectable":"true",class:"ts-steps"}),h=z("Up",()=>q(-1),{"aria-label":"Move the chosen step up"}),g=z(
"Down",()=>q(1),{"aria-label":"Move the chosen step down"}),y=z("Undo",()=>r.undo()&&J("Undone")),b=z("Redo",()=>r.redo()&&
J("Done again")),L=z("Choose several",()=>ft(!i),{"aria-pressed":"false"}),T=z("Gather stages",()=>H(r.gathered(),"Steps\
 of one stage now stand together")),S=n("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"M\
ove the chosen step to position",onkeydown:O=>{O.key==="Enter"&&ot()}}),I=n("select",{class:"ts-box ts-before","aria-lab\
el":"Move the chosen step before"}),x=n("span",{class:"ts-chosen"}),N=z("Move",ot,{"aria-label":"Move to this position"}),
E=z("Move",yt,{"aria-label":"Move before this step"}),w=n("div",{class:"ts-tools",role:"group","aria-label":"Move the ch\
osen step"},h,g,y,b,L,c?T:null),$=n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"To position ",S,N),n("span",{class:"\
ts-pair"},"or before ",I,E)),m="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(c?" Left closes a stage, Right opens it.":""),M=n(
"details",{class:"ts-keys"},n("summary",{},"Keys, and long moves"),n("p",{},m),$),j=n("div",{class:"ts-order"},n("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),w,x,p,M,f);function _(O){f.
textContent=O}function G(O=""){_(`${r.unitName()}${O}, ${r.where()}`)}function P(O){let R=l.get(O.id);if(R)return R;let tt=n(
"li",{role:c?"treeitem":"option",class:"ts-step"});return tt.dataset.row=O.id,l.set(O.id,tt),tt}function k(O=!1){let R=r.
settle(),tt=new Set(R.map(et=>et.id));for(let[et,xt]of l)tt.has(et)||(xt.remove(),l.delete(et));let ut=r.unit(),Et=new Set(
ut),X=p.firstElementChild;for(let et of R){let xt=P(et);xt===X?X=X.nextElementSibling:p.insertBefore(xt,X),v(xt,et,Et)}S.
value=String(r.order.indexOf(ut[0])+1);let pt=[...r.order.entries()].filter(([,et])=>!Et.has(et));I.replaceChildren(...pt.
map(([et,xt])=>n("option",{value:xt},`${et+1}  ${r.label(xt)}`))),x.textContent=`Chosen: ${r.unitName()}, ${r.where()}`,
a?.(ut),h.disabled=d||r.isFirst,g.disabled=d||r.isLast,y.disabled=d||r.past.length===0,b.disabled=d||r.future.length===0;
for(let et of[L,T,S,I,N,E])et.disabled=d;if(p.setAttribute("aria-disabled",String(d)),p.classList.toggle("ts-long",r.order.
length>Qn),O){let et=l.get(r.current);et?.focus({preventScroll:!0}),et?.scrollIntoView({block:"nearest"})}}function v(O,R,tt){
let ut=R.id===r.current,Et=R.run?!1:r.block.has(R.key),X=r.held!==null&&(R.run?ut:tt.has(R.key)),pt=r.order.indexOf(R.run?
R.run.keys[0]:R.key),et=R.run?R.run.keys.map(U=>u[U]?.length??0):u[R.key],xt=R.run?r.closed.has(String(R.run.stage)):!1,
_t=JSON.stringify([pt,R.level,ut,Et,X,et,R.run&&[R.run.keys.length,xt]]);if(O.dataset.looks===_t)return;O.dataset.looks=
_t,O.tabIndex=ut?0:-1,O.setAttribute("aria-selected",String(Et)),O.classList.toggle("ts-current",ut),O.classList.toggle(
"ts-inblock",Et),O.classList.toggle("ts-held",X),O.classList.toggle("ts-level2",R.level===2),c&&O.setAttribute("aria-lev\
el",String(R.level));let Yt=X?" picked up":Et?" in block":"",Ut=Yt?n("span",{class:"ts-state"},Yt):"",pe=U=>n("span",{class:"\
ts-number","aria-hidden":"true"},U);if(R.run){let{keys:U,stage:it}=R.run;O.setAttribute("aria-expanded",String(!xt));let rt=xt?
U.filter(bt=>u[bt]?.length).length:0;O.replaceChildren(pe(`${pt+1}–${pt+U.length}`),n("span",{class:"ts-fold","aria-hi\
dden":"true"},xt?"▸":"▾"),n("span",{class:"ts-what"},n("b",{},it),` ${U.length} steps`,rt?` – ${rt} with a remark`:
"",Ut));return}let fe=(u[R.key]??[]).map(U=>n("span",{class:`ts-note ts-note-${U.kind}`},jt(U.shape??""),n("b",{},U.word),
` ${U.text}`)),C=c&&R.level===1;O.classList.toggle("ts-troubled",fe.length>0),O.replaceChildren(pe(String(pt+1)),n("span",
{class:"ts-grip","aria-hidden":"true"},"⠿"),n("span",{class:"ts-what"},r.label(R.key),C?n("span",{class:"ts-stage"},` ${r.
stages.get(R.key)??""}`):"",Ut,...fe))}let B=()=>o([...r.order]);function H(O,R){if(!r.take(O)){_(`${r.unitName()} stays\
 at ${r.where()}`);return}k(!0),R?_(R):G(),r.held===null&&B()}function q(O){d||H(r.shifted(O))}function ot(){if(d)return;
let O=Number.parseInt(S.value,10),R=r.order.length;O>=1&&O<=R?H(r.atPosition(O)):(_(`Type a position from 1 to ${R}`),x.
textContent=`Type a position from 1 to ${R}.`)}function yt(){!d&&I.value&&H(r.beside(I.value,"before"))}function J(O){k(),
_(`${O}. ${r.unitName()}, ${r.where()}`),B()}function Lt(){r.pickUp(),k(!0),G(" picked up")}function W(){r.putDown()&&B(),
k(!0),G(" put down")}function Y(){r.putDown()&&B(),k()}function V(){r.putBack(),k(!0),G(" put back")}function ft(O){i=O,
L.setAttribute("aria-pressed",String(O)),O||(r.block=new Set),k(),_(O?"Choose the steps of a block":"Block let go")}function gt(O){
r.toggleBlock(O);let R=r.block.has(O)?"in the block":"out of the block";_(`${r.label(O)} ${R}, ${r.block.size} in it`)}function dt(O,R){
let tt=r.fold(O,R);tt&&(k(!0),_(`${tt} ${R?"closed":"open"}`))}p.addEventListener("keydown",O=>{if(It(O))return;let R=r.
rows(),tt=R.findIndex(xt=>xt.id===r.current),ut=xt=>{r.current=R[Math.max(0,Math.min(R.length-1,xt))].id,k(!0)},Et=R[tt],
{key:X}=O,pt=X==="ArrowUp"?-1:X==="ArrowDown"?1:null,et=r.held!==null;if(pt&&(O.shiftKey||et))q(pt);else if(pt)ut(tt+pt);else if(et&&
X==="Escape")V();else if(X===" ")d||(et?W:Lt)();else if(et&&X==="Enter")W();else if(X==="Enter"&&!Et.run)d||(gt(Et.key),
k(!0));else if(X==="Home"&&!et)ut(0);else if(X==="End"&&!et)ut(R.length-1);else if(c&&X==="ArrowLeft")dt(Et,!0);else if(c&&
X==="ArrowRight")dt(Et,!1);else if(X.length===1&&!et)F(X);else return;O.preventDefault()});let mt="",A;function F(O){mt+=
O.toLowerCase(),clearTimeout(A),A=window.setTimeout(()=>{mt=""},to);let R=r.sought(mt);R&&(r.current=R.id,k(!0))}p.addEventListener(
"focusout",({relatedTarget:O})=>{r.held!==null&&O instanceof Node&&!p.contains(O)&&Y()});let K=null;p.addEventListener("\
pointerdown",O=>{let R=r.row(At(O,".ts-step")?.dataset.row??"");if(!R||O.button!==0)return;if(R.run&&At(O,".ts-fold")){dt(
R,!r.closed.has(String(R.run.stage))),O.preventDefault();return}let tt=At(O,".ts-grip, .ts-number"),ut=O.ctrlKey||O.metaKey;
r.held!==null&&Y(),!R.run&&!d&&(O.shiftKey?r.blockTo(R.key):(ut||i)&&!tt&&gt(R.key)),r.current=R.id,k(!0),O.preventDefault(),
!(d||O.shiftKey||ut)&&(O.pointerType!=="mouse"&&!tt||(K={x:O.clientX,y:O.clientY,id:O.pointerId,carried:null},p.setPointerCapture(
O.pointerId)))}),p.addEventListener("pointermove",O=>{if(!K||O.pointerId!==K.id)return;let{clientX:R,clientY:tt}=O;if(!K.
carried){if(Math.hypot(R-K.x,tt-K.y)<eo)return;K.carried=Q()}Object.assign(K.carried,{x:R,y:tt}),kt(K.carried)});function Q(){
let O=n("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},r.unit().length>1?r.unitName():r.label(r.unit()[0]));document.
body.append(O);let R=n("div",{class:"ts-line","aria-hidden":"true"});p.append(R),p.classList.add("ts-dragging");for(let tt of r.
unit())l.get(tt)?.classList.add("ts-lifted");return{ghost:O,line:R,timer:requestAnimationFrame(lt),x:0,y:0,drop:null}}function kt(O){
O.ghost.style.transform=`translate(${O.x+12}px, ${O.y+8}px)`;let tt=r.rows().map(pt=>{let et=P(pt).getBoundingClientRect();
return{row:pt,box:et,offset:O.y-(et.top+et.height/2)}}).reduce((pt,et)=>Math.abs(et.offset)<Math.abs(pt.offset)?et:pt),ut=tt.
offset>0;O.drop=r.dropAt(tt.row,ut);let X=(ut?tt.box.bottom:tt.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;O.line.
style.top=`${X}px`}function lt(){let O=K?.carried;if(O){for(let R of[p,rs(p)]){let ut=R===document.scrollingElement?{top:0,
bottom:innerHeight}:R.getBoundingClientRect(),Et=O.y<ut.top+gs?-1:O.y>ut.bottom-gs?1:0;if(!Et)continue;let X=R.scrollTop;
if(R.scrollTop+=Et*so,R.scrollTop!==X){kt(O);break}}O.timer=requestAnimationFrame(lt)}}function nt(O){let R=K?.carried;if(K=
null,!R)return;cancelAnimationFrame(R.timer),R.ghost.remove(),R.line.remove(),p.classList.remove("ts-dragging");for(let ut of l.
values())ut.classList.remove("ts-lifted");let{drop:tt}=R;if(!O||!tt||r.unit().includes(tt.target)){k(!0),_(`${r.unitName()}\
 stays at ${r.where()}`);return}H(r.beside(tt.target,tt.side))}return p.addEventListener("pointerup",()=>nt(!0)),p.addEventListener(
"pointercancel",()=>nt(!1)),j.addEventListener("keydown",O=>{!K?.carried||O.key!=="Escape"||(nt(!1),O.stopPropagation())}),
k(),{element:j,tools:w,order:()=>[...r.order],change:(O,R)=>{d||H(O,R)},setOrder(O,R=!1){r.held!==null||K?.carried||ee(O,
r.order)||(r.set(O,R),k())},setNotes(O){u=O??{},k()},setDisabled(O){d=O,k()}}}Ot("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,s){let o=t.
steps.map(([r])=>r),a=Ce({label:t.prompt,steps:t.steps,order:o,onChange:s});return{element:a.element,show:r=>a.setOrder(
hs(r.value,o)),setDisabled:a.setDisabled,refused(){}}}});function ws(t,e,s){let o=[0,0],a=[s(...o)],r=new Map;for(let[c,i]of t.entries()){let[u,d]=e[i]??[null,null];u!==null&&o[1]!==
0&&a.push(s(o[0],0)),o=[u??o[0],d??(u===null?o[1]:0)];let l=s(...o);a.push(l);let f=r.get(l.join(" "))??{at:l,numbers:[]};
f.numbers.push(c+1),r.set(l.join(" "),f)}return{points:a,stops:[...r.values()]}}function bs(t,e,s){let o=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,o),s,...t.slice(o)],place:o}}function vs(t,e){return t.filter((s,o)=>o!==e)}function ys(t,e,s){
let o=e+s;if(o<0||o>=t.length)return null;let a=[...t];return[a[e],a[o]]=[a[o],a[e]],a}var ms=.6;function ks(t,[e,s],[o,
a]){let r=Object.entries(t).filter(([u])=>!u.startsWith("firm:")),c=(u,d)=>r.filter(([,l])=>l[0]===u&&l[1]===d).map(([l])=>l).
slice(0,1),i=Math.abs(e-o)>ms;return[...i&&Math.abs(s)>ms?c(null,0):[],...i?c(o,null):[],...a||!i?c(null,a):[]]}var re=9,Ee=.7*re,Ge=44;function Ae(t){let e=Math.min(...t.gates),s=Math.max(...t.gates),[o,a]=t.turn_mm,r=(s-e)*re+2*Ge,
c=(a-o)*Ee+2*Ge,i=(p,h)=>[Ge+(p-e)*re,c/2-(h-(o+a)/2)*Ee],u=t.gates.map(p=>`M${i(p,o).join(" ")}L${i(p,a).join(" ")}`),d=`\
M${i(e,0).join(" ")}L${i(s,0).join(" ")}`,l=t.gears.map(([p,h,g])=>{let[y,b]=i(h,g),L={x:y,y:b+(g>0?-20:30),"data-gear":p};
return D("text",{...L,class:"tsp-gear","text-anchor":"middle"},p)});return{element:D("svg",{viewBox:`0 0 ${r} ${c}`,width:r,
height:c,class:"ts-gateplan","aria-hidden":"true"},D("path",{d:[...u,d].join(""),class:"tsp-slot"}),...l),at:i}}function no(t){let{element:e,at:s}=Ae(t),o=D("polyline",{class:"tsp-line",points:""}),a=D("g");return e.append(o,a),{element:e,
show(r){let{points:c,stops:i}=ws(r,t.aims,s),[[u,d]]=c;o.setAttribute("points",c.map(l=>l.join(",")).join(" ")),a.replaceChildren(
D("circle",{cx:u,cy:d,r:4,class:"tsp-start"}),...i.map(({at:[l,f],numbers:p})=>D("g",{},D("circle",{cx:l,cy:f,r:3.5,class:"\
tsp-stop"}),D("text",{x:l+7,y:f-5,class:"tsp-number"},p.join(", ")))))}}}function xs({moves:t,plan:e,most:s,onChange:o}){
let a=new Map(t),r=m=>a.get(m)??m,c=[],i=-1,u=!1,d=e?no(e):null,l=n("ol",{class:"ts-pathlist","aria-label":"Your moves"}),
f=n("p",{class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate plane."),p=n("p",{class:"ts-hid\
den",role:"status"}),h=t.map(([m,M])=>z(M,()=>S(m))),g=z("Take back the last move",()=>{c.length&&I(c.length-1)}),y=z("T\
ake back all",()=>{c.length&&T([],"No moves left")}),b=n("span",{class:"ts-hint"}),L=n("div",{class:"ts-path"},n("div",{
class:"ts-tools ts-moves",role:"group","aria-label":"Add a move"},...h),n("div",{class:"ts-path-both"},n("div",{class:"t\
s-path-words"},f,l,n("div",{class:"ts-tools"},g,y,b)),d&&n("div",{class:"ts-path-picture"},d.element)),d&&n("p",{class:"\
ts-hint"},"The line shows where each move should go. The test shows whether the lever gets there."),p);function T(m,M){u||
(c=m,$(),p.textContent=M,o([...c]))}function S(m){if(c.length>=s){p.textContent=`${s} moves are the most here`;return}let{
moves:M,place:j}=bs(c,i,m);i=j,T(M,`Move ${j+1}: ${r(m)}`)}function I(m){let M=r(c[m]);i=Math.min(i,c.length-2),T(vs(c,m),
`Taken back: ${M}`)}function x(m,M){let j=ys(c,m,M);j&&(i=m+M,T(j,`${r(j[i])}, move ${i+1} of ${c.length}`),E(i))}function N(m){
return l.children[m]?.querySelector(".ts-path-move")}function E(m){let M=N(m);return M instanceof HTMLElement&&M.focus(),
!!M}function w(m,M){let j=n("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${M+1}: ${r(m)}`},r(m)),_=n("bu\
tton",{type:"button",class:"ts-path-off","aria-label":`Take back move ${M+1}`,onclick:()=>I(M)},"×"),G=n("li",{},j,_);return G.
classList.toggle("ts-current",M===i),j.addEventListener("focus",()=>{i=M;for(let P of l.children)P.classList.toggle("ts-\
current",P===G)}),j.addEventListener("keydown",P=>{if(It(P))return;let k=P.key==="ArrowUp"?-1:P.key==="ArrowDown"?1:null;
if(k&&P.shiftKey)x(M,k);else if(k)E(M+k);else if(P.key==="Delete"||P.key==="Backspace")I(M),E(Math.min(M,c.length-1))||h[0].
focus();else return;P.preventDefault()}),_.disabled=u,G}function $(){l.replaceChildren(...c.map(w)),f.hidden=c.length>0,
b.textContent=`${c.length} of at most ${s} moves`;for(let m of h)m.disabled=u||c.length>=s;g.disabled=y.disabled=u||c.length===
0,d?.show(c)}return $(),{element:L,setMoves(m){ee(m,c)||(c=[...m],i=-1,$())},setDisabled(m){u=m,$()}}}Ot("path",{prompt:"words",make(t,e,s){let o=xs({moves:t.moves,plan:t.plan,most:t.most,onChange:s});return{element:o.element,
show:a=>o.setMoves([a.value??[]].flat()),setDisabled:o.setDisabled,refused(){}}}});function $s(t,e,s){let o=t.indexOf(s);return[...t.slice(o+1),...t.slice(0,o)].find(r=>!e.get(r))??s}function Ss(t,e,s){let o=t.
find(({key:u})=>u===e);if(!o)return;if(s==="Home")return t[0].key;if(s==="End")return t[t.length-1].key;let a={ArrowRight:1,
ArrowLeft:-1}[s];if(a!==void 0){let u=[...t].sort((l,f)=>l.x-f.x||l.y-f.y),d=u.findIndex(({key:l})=>l===e)+a;return u[(d+
u.length)%u.length].key}let r={ArrowDown:1,ArrowUp:-1}[s];if(r===void 0)return;let c=u=>Math.abs(u.y-o.y)+2*Math.abs(u.x-
o.x),[i]=t.filter(({key:u,y:d})=>u!==e&&(d-o.y)*r>2).sort((u,d)=>c(u)-c(d));return(i??o).key}function se(t,e,s,o){let a=t.lines,r=t.options,c=a.map(([f])=>f),i=c[0],u=a.map(([f,p],h)=>{let g=`${e.control}-${h}`,y=n(
"label",{class:"ts-each-line",for:g},p),b=Nt({id:g},[["","choose"],...r]),L=n("input",{type:"radio",name:`${e.control}-a\
ctive`,"aria-label":`Point in the picture for: ${p}`,checked:h===0}),T=n("li",{},c.length>1?L:null,y,b);return L.addEventListener(
"change",()=>{i=f}),b.addEventListener("change",()=>{i=f,l()}),{key:f,box:b,mark:L,row:T}}),d=()=>new Map(u.map(({key:f,
box:p})=>[f,p.value]));function l(){let f=d();o(f),s(ve([...f]))}return{element:n("ol",{class:"ts-each ts-pointed"},...u.
map(({row:f})=>f)),active:()=>i,answers:d,press(f){let p=u.find(({key:h})=>h===i);if(!(!p||p.box.disabled)){p.box.value=
f,l(),i=$s(c,d(),i);for(let{key:h,mark:g}of u)g.checked=h===i}},put(f,p){let h=u.find(({key:g})=>g===f);!h||h.box.disabled||
(h.box.value=p,l())},show(f){let p=ye(f.value);for(let{key:h,box:g}of u)g.value=p.get(h)??"";o(d())},setDisabled(f){for(let{
box:p,mark:h}of u)p.disabled=f,h.disabled=f}}}function Me(t,e,s){let o=n("div",{class:"ts-scene",role:"group","aria-labe\
l":"Picture. Arrow keys walk from place to place, Enter points at one."});o.innerHTML=t;let a=o.querySelector("svg");a.setAttribute(
"role","group");let r=new Map(Z(a,"[data-mark]").map(d=>[String(d.dataset.mark),d])),c=new Map(e);for(let[d,l]of r)l.setAttribute(
"role","button"),l.setAttribute("tabindex",d===e[0][0]?"0":"-1"),l.setAttribute("aria-label",`${d}: ${c.get(d)??""}`);let i=d=>At(
d,"[data-mark]")?.dataset.mark??At(d,"[data-spot]")?.dataset.spot;o.addEventListener("click",d=>{let l=i(d);l&&s(l)});for(let[
d,l]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])o.addEventListener(d,f=>{let p=i(f);p&&u(p,l)});
function u(d,l){for(let f of Z(a,`[data-spot="${d}"]`))f.classList.toggle("tss-near",l)}return o.addEventListener("keydo\
wn",d=>{let l=At(d,"[data-mark]")?.dataset.mark;if(l){if(d.key==="Enter"||d.key===" ")s(l);else{let f=[...r].map(([h,g])=>{
let y=g.querySelector(".tss-dot");return{key:h,x:y.cx.baseVal.value,y:y.cy.baseVal.value}}),p=Ss(f,l,d.key);if(p===void 0)
return;r.get(l)?.setAttribute("tabindex","-1"),r.get(p)?.setAttribute("tabindex","0"),r.get(p)?.focus()}d.preventDefault()}}),
{element:o,drawing:a,choose(d){let l=new Set(d);for(let[f,p]of r)p.classList.toggle("tss-chosen",l.has(f)),p.setAttribute(
"aria-pressed",String(l.has(f)));for(let f of Z(a,"[data-spot]"))f.classList.toggle("tss-on",l.has(String(f.dataset.spot)))}}}Ot("picture",{prompt:"legend",make(t,e,s){let o=t.options,a=se(t,e,s,i=>{let u=new Set(i.values());for(let{letter:d,card:l}of r)
l.classList.toggle("ts-on",u.has(d))}),r=o.map(([i,u])=>{let d=n("div",{class:"ts-picture-card",onclick:()=>a.press(i)});
return d.innerHTML=t.svgs[i],d.querySelector("svg")?.setAttribute("aria-label",u),d.prepend(n("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:d}}),c=n("div",{class:"ts-pictures"},...r.map(({card:i})=>i));return{element:n("div",{class:"\
ts-pictured"},a.element,c),show:a.show,setDisabled:a.setDisabled,refused(){}}}});Ot("point",{prompt:"legend",make(t,e,s){let o=se(t,e,s,i=>c.choose(i.values())),r=t.options.map(([i,u])=>[i,u.slice(i.length+
2)]),c=Me(t.svg,r,o.press);return{element:n("div",{},o.element,c.element),show:o.show,setDisabled:o.setDisabled,refused(){}}}});Ot("put",{prompt:"legend",make(t,e,s){let o=t.lines,a=new Map(o.map(([l])=>[l,"1"])),r=se(t,e,s,l=>{for(let[f,p]of l)p&&
a.set(f,p.split("-")[1]);c.choose([...l.values()].map(f=>f.split("-")[0])),u(l)}),c=Me(t.svg,t.places,l=>{r.press(`${l}-${a.
get(r.active())}`)}),i=D("g",{class:"tss-placed"});c.drawing.append(i);function u(l){i.replaceChildren();for(let[f,p]of l){
let[h,g]=p.split("-"),y=t.at[h];if(!y)continue;let b=D("g",{transform:`translate(${y[0]} ${y[1]})`});b.innerHTML=t.pieces[f][Number(
g)-1][1],i.append(b)}for(let{part:f,show:p}of d)p(a.get(f)??"1")}let d=o.map(([l,f])=>{let p=n("div",{class:"ts-tray-par\
t"}),h=n("span",{class:"ts-hint",role:"status"}),g=at("Turn it",()=>{let L=a.get(l)==="1"?"2":"1";a.set(l,L),y(L);let T=r.
answers().get(l);T&&r.put(l,`${T.split("-")[0]}-${L}`)},`Turn it: ${f}`);function y(L){let[T,S]=t.pieces[l][Number(L)-1],
I=Number(/data-half="([\d.]+)"/.exec(S)?.[1]??90);p.innerHTML=`<svg viewBox="${-I} ${-I} ${2*I} ${2*I}" width="120" heig\
ht="120" aria-hidden="true">${S}</svg>`,h.textContent=`Way ${L}: ${T}`}let b=n("div",{class:"ts-tray"},p,n("div",{},f,h,
g));return{part:l,row:b,show:y,turn:g}});return{element:n("div",{},n("div",{class:"ts-trays"},...d.map(({row:l})=>l)),r.
element,c.element),show:r.show,setDisabled(l){r.setDisabled(l);for(let{turn:f}of d)f.disabled=l},refused(){}}}});var oo="The connection to the course is lost. Go on answering: your answers stay in this browser and are sent when the c\
onnection is back. Simulators wait until then.",ro="The connection to the course is back.",ao=1500,io=5e3,Xe=new Set,zt=null,
Ye;function Ls(t){zt??=n("p",{class:"twoshaft ts-line-bar",role:"status"}),zt.isConnected||document.body.append(zt),zt.textContent=
t}function co(){zt?.remove(),zt=null}function Cs(){clearTimeout(Ye),Xe.size?Ye=window.setTimeout(()=>Ls(oo),zt?0:ao):zt&&
(Ls(ro),Ye=window.setTimeout(co,io))}var Es=t=>({down(){Xe.add(t),Cs()},up(){Xe.delete(t),Cs()}});var lo=1e3,uo="input, button, select, textarea, summary, a, [tabindex]";function po(t){let e=a=>{if(a.stopPropagation(),
!(a.ctrlKey||a.metaKey)||a.key.toLowerCase()!=="s"||(a.preventDefault(),a.type!=="keydown"||a.repeat))return;let{key:r,code:c,
keyCode:i,ctrlKey:u,metaKey:d}=a,l={key:r,code:c,keyCode:i,ctrlKey:u,metaKey:d,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",l))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let s=()=>{for(let a of t.querySelectorAll(uo))a.hasAttribute("data-lm-suppress-shortcuts")||a.setAttribute(
"data-lm-suppress-shortcuts","true")};s();let o=new MutationObserver(s);return o.observe(t,{childList:!0,subtree:!0}),()=>o.
disconnect()}function fo(t,e,s){let o=t.widget_manager?.kernel,a=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},r=(c,i)=>{i==="disconnected"?e():s(i==="connecting")};return t.on("comm_live_update",e),o?.statusChanged?.
connect(a),o?.connectionStatusChanged?.connect(r),o?.disposed?.connect(e),()=>{t.off("comm_live_update",e),o?.statusChanged?.
disconnect(a),o?.connectionStatusChanged?.disconnect(r),o?.disposed?.disconnect(e)}}var As=`.twoshaft {
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
stage,.twoshaft .ts-keys,.twoshaft .ts-status{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft .ts-alert:empty{\
display:none}.twoshaft .ts-alert:not(:empty),.twoshaft .ts-trouble:not(:empty){border:2px solid var(--ts-ink);padding:va\
r(--ts-grid);margin-top:var(--ts-grid)}.twoshaft .ts-box{box-sizing:border-box;min-height:var(--ts-target);padding:0 var\
(--ts-grid);border:1px solid var(--ts-line);border-radius:2px;background:var(--ts-paper);color:var(--ts-ink);font:inheri\
t}.twoshaft .ts-number-box{width:12em;max-width:100%}.twoshaft .ts-number-box[aria-invalid=true]{border:2px dashed var(-\
-ts-ink)}.twoshaft .ts-option{display:flex;align-items:flex-start;gap:var(--ts-grid);padding:4px 0;min-height:24px;curso\
r:pointer}.twoshaft .ts-option input{width:18px;height:18px;margin:2px 0 0;flex:none;accent-color:var(--ts-accent)}.twos\
haft .ts-button{box-sizing:border-box;min-height:var(--ts-target);min-width:var(--ts-target);padding:0 calc(1.5 * var(--\
ts-grid));border:1px solid var(--ts-accent);border-radius:2px;background:var(--ts-paper);color:var(--ts-accent);font:inh\
erit;font-size:var(--ts-small);cursor:pointer}.twoshaft .ts-button[aria-pressed=true]{background:var(--ts-accent);color:\
var(--ts-on-accent)}.twoshaft .ts-button:disabled,.twoshaft .ts-box:disabled{color:var(--ts-quiet);border-color:var(--ts\
-line);border-style:dotted;cursor:default}.twoshaft :is(a,input,button,select,summary,[tabindex]):focus-visible{outline:\
3px solid var(--ts-accent);outline-offset:2px}.twoshaft .ts-tools{display:flex;flex-wrap:wrap;align-items:center;gap:var\
(--ts-grid);margin:var(--ts-grid) 0 calc(var(--ts-grid) / 2)}.twoshaft .ts-tools>*,.twoshaft .ts-pair>*{min-width:0}.two\
shaft .ts-tools .ts-box,.twoshaft .ts-pair .ts-box{max-width:100%}.twoshaft .ts-pair{display:inline-flex;flex-wrap:wrap;\
align-items:center;gap:var(--ts-grid);max-width:100%}.twoshaft .ts-before{width:24em;max-width:100%}.jp-OutputArea:has(.\
twoshaft-live)>.jp-OutputArea-child:has(.twoshaft-copy){display:none}.twoshaft.ts-line-bar{position:fixed;z-index:10000;\
inset:auto 0 0;margin:0;padding:var(--ts-grid) calc(2 * var(--ts-grid));border-top:2px solid var(--ts-ink);background:va\
r(--ts-paper)}.twoshaft-rig{padding-block:var(--ts-grid)}.twoshaft-rig>.ts-who{display:flex;flex-wrap:wrap;gap:0 calc(2 \
* var(--ts-grid));align-items:baseline;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-rig .ts-asks{color:var(\
--ts-ink);font-size:var(--ts-text);font-weight:600}.twoshaft-rig .ts-begin{color:var(--ts-accent);font-weight:600}.twosh\
aft-rig:not(.ts-begun,.ts-lost) .ts-first{box-shadow:0 0 0 3px var(--ts-accent)}.twoshaft-rig:not(.ts-begun,.ts-lost) .t\
s-tools.ts-first{width:fit-content}.twoshaft-rig:not(.ts-begun,.ts-lost) button.ts-first{white-space:nowrap}.twoshaft-ri\
g:not(.ts-begun,.ts-lost) button.ts-first:before{content:"\\25b6  " / ""}.twoshaft .ts-beside{display:flex;flex-wrap:wrap\
;gap:var(--ts-grid) calc(3 * var(--ts-grid));align-items:flex-start}.twoshaft .ts-beside>*{box-sizing:border-box;max-wid\
th:100%;min-width:min(100%,280px)}.twoshaft .ts-beside>:first-child{flex:3 1 480px}.twoshaft .ts-beside>:last-child{flex\
:2 1 360px}.twoshaft .ts-beside:has(>:first-child>.tsh-picture)>:first-child{flex:4 1 720px}.twoshaft .ts-beside:has(>:f\
irst-child>.tsh-picture)>:last-child{flex:1 1 280px}.twoshaft .ts-beside:has(>:first-child>.ts-pad-face)>*{flex:1 1 480p\
x}.twoshaft .ts-beside:has(>:first-child>.tsw-train)>:first-child{flex:4 1 640px}.twoshaft .ts-beside>div>.ts-scroll:fir\
st-child{margin-top:0}.twoshaft .ts-finding{font-weight:600;margin:var(--ts-grid) 0 0}.twoshaft .ts-happened{margin-top:\
var(--ts-grid);min-height:1.5em}.twoshaft-rig>.ts-prompt{font-weight:600;margin:calc(2 * var(--ts-grid)) 0 var(--ts-grid\
)}.twoshaft .ts-scroll{overflow-x:auto;margin:var(--ts-grid) 0;padding-bottom:var(--ts-grid)}.twoshaft .ts-scroll svg{di\
splay:block}.twoshaft .ts-scroll.ts-fit svg{max-width:100%;min-width:600px;height:auto}.twoshaft .ts-facts{display:grid;\
grid-template-columns:max-content 1fr;gap:4px calc(2 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:calc(var(--ts-w\
idth) + 12ch)}.twoshaft .ts-facts dt{float:none;clear:none;width:auto;font-weight:600;overflow-wrap:normal}.twoshaft .ts\
-facts dd{margin:0;width:auto}@media(max-width:480px){.twoshaft .ts-facts{grid-template-columns:1fr}}.twoshaft .ts-ready\
{display:flex;flex-wrap:wrap;gap:var(--ts-grid)}.twoshaft-rig .ts-ready{max-height:14rem;overflow-y:auto;padding:4px}.tw\
oshaft .ts-ready .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-button.ts-off{color:var(--ts-quiet);border-c\
olor:var(--ts-line);border-style:dotted;cursor:default}.twoshaft .ts-sentences{padding-left:calc(3 * var(--ts-grid));max\
-width:var(--ts-width)}.twoshaft .ts-note-blocked .ts-shape,.twoshaft .ts-note-harmed .ts-shape{color:var(--ts-bad)}.two\
shaft .tsf-near{margin:0}.twoshaft :has(~.tsf-near).ts-finding{max-width:none}.twoshaft .tsf-step{cursor:pointer}.twosha\
ft .tsf-step:focus{outline:none}.twoshaft .tsf-step:is(:focus-visible,:hover) .tsf-b{stroke:var(--ts-accent);stroke-widt\
h:3}.twoshaft .tsg-text{font:calc(var(--ts-small) * var(--ts-grown, 1)) var(--ts-font);fill:var(--ts-ink)}.twoshaft .tsg\
-face{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsg-mark{stroke:var(--ts-ink);stroke-width:1}.\
twoshaft .tsg-long{stroke-width:2}.twoshaft .tsg-pointer{fill:var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .tsg-hu\
b{fill:var(--ts-ink)}.twoshaft .tsg-small{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsg-target{fill:var(--ts-faint)\
;stroke:var(--ts-ink);stroke-width:1;stroke-dasharray:5 3}.twoshaft .tsg-cold{fill:var(--ts-accent);stroke:var(--ts-pape\
r)}.twoshaft .tsg-warm{fill:var(--ts-paper);stroke:var(--ts-bad);stroke-width:3}.twoshaft .tsg-dial{width:190px;height:1\
90px;flex:none}.twoshaft .tsg-scale{width:100%;max-width:600px;min-width:540px;height:auto;display:block}.twoshaft .tsg-\
axis{width:100%;max-width:720px;min-width:540px;height:auto;display:block}.twoshaft .tsg-beside{display:flex;flex-wrap:w\
rap;align-items:center;gap:calc(2 * var(--ts-grid))}.twoshaft .tsg-beside>*{min-width:0;max-width:100%}.twoshaft .tsg-ga\
uge svg{max-width:100%;height:auto}.twoshaft .tsg-gauge{text-align:center;font-size:var(--ts-small)}.twoshaft .tsg-wide{\
overflow-x:auto;max-width:100%}.twoshaft .tsg-wide>svg.twoshaft-figure{max-width:max(100%,480px);height:auto}.twoshaft .\
ts-slide{display:flex;flex-wrap:wrap;align-items:center;gap:0 var(--ts-grid);margin:calc(var(--ts-grid) / 2) 0}.twoshaft\
 .ts-slide>span{min-width:9em}.twoshaft .ts-slider{flex:0 1 260px;width:120px;min-width:96px;height:24px;accent-color:va\
r(--ts-accent)}.twoshaft .ts-slid{flex:1 1 7em;font-variant-numeric:tabular-nums}.twoshaft .tsg-centre{stroke:var(--ts-i\
nk);stroke-width:1;stroke-dasharray:14 3 3 3}.twoshaft .tsg-drum{max-width:100%;height:auto}.twoshaft .tsg-ticks{border:\
none;display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid))}.twoshaft .tsg-side{flex:1 1 420px;min-width:min(100%,32\
0px)}.twoshaft :is(.tsp-section+.tsg-gauge,.tsg-gauge:has(+.tsg-side)){flex:0 1 200px}.twoshaft .tsg-gauge+.tsg-side{fle\
x-basis:260px;min-width:min(100%,260px)}.twoshaft .tsi-micrometer{width:clamp(730px,100%,760px);height:240px;display:blo\
ck}.twoshaft .tsi-vernier{width:clamp(730px,100%,760px);height:190px;display:block}.twoshaft .tsi-runout{width:282px;hei\
ght:244px;flex:none}.twoshaft .tsi-wrench{width:clamp(540px,100%,720px);height:auto;display:block}.twoshaft .tsi-fine{st\
roke:var(--ts-ink);stroke-width:1.1}.twoshaft .tsi-bold{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-body{fill:var\
(--ts-faint);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-paper{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-w\
idth:1}.twoshaft .tsi-lever{stroke:var(--ts-ink);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-adapter{stroke:var(\
--ts-accent);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-arm{stroke:var(--ts-accent);stroke-width:2;stroke-dasha\
rray:7 4}.twoshaft .tsi-plunger{stroke:var(--ts-accent);stroke-width:5;stroke-linecap:round}.twoshaft .ts-order{position\
:relative;max-width:calc(var(--ts-width) + 8em)}.twoshaft .ts-steps{position:relative;list-style:none;border:1px solid v\
ar(--ts-line);margin-top:calc(var(--ts-grid) / 2);background:var(--ts-paper)}.twoshaft .ts-steps.ts-long{max-height:min(\
30rem,75vh);overflow-y:auto}.twoshaft .ts-step{display:flex;align-items:flex-start;gap:var(--ts-grid);padding:4px var(--\
ts-grid) 4px 0;margin:0;min-height:24px;border-bottom:1px solid var(--ts-faint);border-left:4px solid transparent;cursor\
:default;user-select:none}.twoshaft .ts-step:last-child{border-bottom:0}.twoshaft .ts-step.ts-level2{padding-left:calc(2\
 * var(--ts-grid))}.twoshaft .ts-step:focus-visible{outline-offset:-3px}.twoshaft .ts-current{border-left-color:var(--ts\
-accent);background:var(--ts-faint)}.twoshaft .ts-inblock{border-left-style:double;border-left-color:var(--ts-ink)}.twos\
haft .ts-held{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-held .ts-number,.twoshaft .ts-held .ts\
-grip,.twoshaft .ts-held .ts-stage{color:inherit}.twoshaft .ts-lifted{opacity:.45}.twoshaft .ts-dragging,.twoshaft .ts-d\
ragging .ts-step{cursor:grabbing}.twoshaft .ts-number{flex:none;min-width:2.5em;text-align:right;color:var(--ts-quiet);f\
ont-variant-numeric:tabular-nums;touch-action:none}.twoshaft .ts-grip,.twoshaft .ts-fold{flex:none;width:24px;text-align\
:center;color:var(--ts-quiet);cursor:grab;touch-action:none}.twoshaft .ts-fold{cursor:pointer}.twoshaft .ts-what{flex:1;\
min-width:0}.twoshaft .ts-state{font-weight:600;font-size:var(--ts-small)}.twoshaft .ts-note{display:block;font-size:var\
(--ts-small);max-width:var(--ts-width)}.twoshaft .ts-line{position:absolute;left:0;right:0;height:3px;background:var(--t\
s-accent);pointer-events:none}.twoshaft.ts-ghost{position:fixed;left:0;top:0;z-index:10000;width:max-content;max-width:2\
4em;padding:4px var(--ts-grid);pointer-events:none;background:var(--ts-paper);color:var(--ts-ink);border:2px solid var(-\
-ts-accent)}.twoshaft .ts-order .ts-keys{margin-top:var(--ts-grid)}.twoshaft .ts-order .ts-keys summary{cursor:pointer;m\
in-height:24px;color:var(--ts-accent);width:fit-content}.twoshaft .ts-beside:has(>div>.ts-order){flex-wrap:wrap-reverse;\
align-items:flex-end}.twoshaft-rig .ts-order .ts-steps{max-height:max(20rem,min(30rem,100vh - 340px));overflow-y:auto}.t\
woshaft .ts-path-both{display:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--t\
s-grid)}.twoshaft .ts-path-words{flex:1 1 22em;min-width:0;max-width:34em}.twoshaft .ts-path-picture{flex:none;max-width\
:100%}.twoshaft .ts-pathlist{margin:0;padding-left:calc(4 * var(--ts-grid))}.twoshaft .ts-pathlist li{min-height:28px;pa\
dding-left:4px;border-left:4px solid transparent}.twoshaft .ts-pathlist li.ts-current{border-left-color:var(--ts-accent)\
;background:var(--ts-faint)}.twoshaft .ts-path-off{min-width:28px;min-height:28px;margin-left:var(--ts-grid);border:1px \
solid var(--ts-line);border-radius:2px;background:var(--ts-paper);color:var(--ts-ink);font:inherit;line-height:1;cursor:\
pointer}.twoshaft .ts-gateplan{display:block;max-width:100%;height:auto}.twoshaft .tsp-slot{fill:none;stroke:var(--ts-li\
ne);stroke-width:14;stroke-linecap:round;opacity:.35}.twoshaft .tsp-line{fill:none;stroke:var(--ts-accent);stroke-width:\
2.5;stroke-linejoin:round}.twoshaft .tsp-start{fill:var(--ts-paper);stroke:var(--ts-accent);stroke-width:2}.twoshaft .ts\
p-stop{fill:var(--ts-accent)}.twoshaft .tsp-gear{font:600 calc(var(--ts-small) * var(--ts-grown, 1)) var(--ts-font);fill\
:var(--ts-ink)}.twoshaft .tsp-number{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink);paint-order:stroke;strok\
e:var(--ts-paper);stroke-width:4px}.twoshaft .ts-pad{max-width:62rem}.twoshaft .ts-pad-face{position:relative;width:100%\
;border:1px solid var(--ts-line);background:var(--ts-paper)}.twoshaft .tsp-face{display:block;position:relative;width:10\
0%;height:auto;touch-action:none;cursor:crosshair}.twoshaft .tsp-land{fill:var(--ts-faint);stroke:none}.twoshaft .tsp-ed\
ge{fill:none;stroke:var(--ts-ink);stroke-linejoin:round}.twoshaft .tsp-text{fill:var(--ts-ink);font-family:var(--ts-font\
);dominant-baseline:central;paint-order:stroke;stroke:var(--ts-paper);stroke-width:.3em;stroke-linejoin:round;pointer-ev\
ents:none;user-select:none}.twoshaft .tsp-hole{fill:var(--ts-paper);stroke:var(--ts-ink)}.twoshaft .tsp-blind{fill:var(-\
-ts-ink)}.twoshaft .tsp-guide,.twoshaft .tsp-reach,.twoshaft .tsp-hatch{fill:none;stroke:var(--ts-ink)}.twoshaft .tsp-sp\
ot{stroke:var(--ts-ink)}.twoshaft .tsp-stroke,.twoshaft .tsp-live,.twoshaft .tsp-grain{fill:none;stroke-linejoin:round;s\
troke-linecap:butt}.twoshaft .tsp-film{stroke:var(--ts-film);stroke-opacity:.6}.twoshaft .tsp-bead{stroke:var(--ts-bead)\
;stroke-linecap:round}.twoshaft .tsp-wipe{stroke:var(--ts-paper);stroke-opacity:.85}.twoshaft .tsp-grain{stroke:var(--ts\
-ink)}.twoshaft .tsp-live{stroke:var(--ts-accent);stroke-opacity:.5;stroke-linecap:round}.twoshaft .tsp-chosen{fill:none\
;stroke:var(--ts-accent);stroke-dasharray:3 2;pointer-events:none}.twoshaft .ts-size{width:6em}.twoshaft .ts-size[aria-i\
nvalid=true]{border:2px dashed var(--ts-ink)}.twoshaft .ts-pad-trouble{min-height:1.5em;color:var(--ts-ink)}.twoshaft .t\
s-passes{padding-left:2.5em;font-size:var(--ts-small);max-height:16rem;overflow-y:auto}.twoshaft .ts-passes li{padding:2\
px 0}.twoshaft .ts-remove{min-height:24px;padding:0 var(--ts-grid)}.twoshaft .ts-pad-tools .ts-box{max-width:100%;min-wi\
dth:0}.twoshaft .ts-pad-tools .ts-pair{min-width:0}.twoshaft .ts-each{margin:0;padding-left:calc(3 * var(--ts-grid))}.tw\
oshaft .ts-each li{padding:calc(var(--ts-grid) / 2) 0}.twoshaft .ts-each li+li{border-top:1px solid var(--ts-line)}.twos\
haft .ts-each-line{display:inline-block;width:min(100% - 2 * var(--ts-grid),34em);margin-right:calc(2 * var(--ts-grid));\
vertical-align:top}.twoshaft .ts-each select{max-width:100%;min-width:0;vertical-align:top}.twoshaft .ts-pointed input[t\
ype=radio]{margin-right:var(--ts-grid);vertical-align:top}.twoshaft .ts-pointed input[type=radio]+.ts-each-line{width:mi\
n(100% - 7 * var(--ts-grid),34em)}.twoshaft .ts-scene{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .ts-scene svg{di\
splay:block;max-width:max(100%,480px);max-height:none;height:auto}.twoshaft .ts-scene [data-mark],.twoshaft .ts-scene [d\
ata-spot]{cursor:pointer}.twoshaft .ts-scene [data-mark]:focus-visible{outline:none}.twoshaft .ts-scene [data-mark]:focu\
s-visible .tss-ring{stroke:var(--ts-accent);stroke-width:4px}.twoshaft .ts-scene .tss-near path:not(.tsu-behind,.tsu-pit\
ch,.tsu-line){stroke:var(--ts-accent);stroke-width:2.4px}.twoshaft .ts-scene .tss-chosen .tss-ring{fill:var(--ts-accent)\
;stroke:var(--ts-accent)}.twoshaft .ts-scene .tss-chosen .tss-letter{fill:var(--ts-on-accent)}.twoshaft .ts-scene .tss-o\
n path:not(.tsu-behind,.tsu-pitch,.tsu-line),.twoshaft .ts-scene .tss-placed path:not(.tsu-behind,.tsu-pitch,.tsu-line){\
stroke:var(--ts-accent);stroke-width:3px}.twoshaft .ts-scene .tss-placed{pointer-events:none}.twoshaft .ts-pictured{disp\
lay:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .ts-pictured>:first-child{flex:1\
 1 280px;min-width:min(100%,240px)}.twoshaft-wide .ts-pictured>:first-child{position:sticky;top:0}.twoshaft .ts-pictures\
{display:grid;flex:2 1 500px;min-width:0;grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1fr));gap:var(--ts\
-grid);margin:var(--ts-grid) 0}.twoshaft .ts-picture-card{position:relative;padding:var(--ts-grid);border:1px solid var(\
--ts-line);cursor:pointer}.twoshaft .ts-picture-card.ts-on{outline:3px solid var(--ts-accent)}.twoshaft .ts-picture-card\
 svg{width:100%;height:auto;max-height:300px}.twoshaft .ts-picture-letter{font-weight:600}.twoshaft .ts-trays{display:fl\
ex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-tray{display:flex;gap:var(--ts-grid);align-items:center}.tw\
oshaft .ts-tray>div:last-child{display:grid;gap:calc(var(--ts-grid) / 2);max-width:22em}.twoshaft-form{padding-block:var\
(--ts-grid)}.twoshaft .ts-top{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 calc(3 * var(--ts-grid));b\
order-bottom:1px solid var(--ts-line);padding-bottom:calc(var(--ts-grid) / 2)}.twoshaft .ts-who{font-size:var(--ts-small\
);color:var(--ts-quiet)}.jp-Cell:has(.ts-top,.ts-build)~.jp-Cell .ts-top>.ts-who{display:none}.twoshaft .ts-field{border\
:0;min-width:0;margin:calc(2 * var(--ts-grid)) 0 0}.twoshaft .ts-prompt{display:block;padding:0;font-weight:600;margin-b\
ottom:var(--ts-grid)}.twoshaft .ts-line-of{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft .\
ts-line-of+.ts-read,.twoshaft .ts-line-of+.ts-read+.ts-status{display:inline}.twoshaft .ts-line-of+.ts-read:not(:empty){\
margin-right:calc(2 * var(--ts-grid))}.twoshaft .ts-read.ts-error,.twoshaft .ts-status-unread{color:var(--ts-ink);font-s\
ize:var(--ts-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-unread .ts-shape,.twoshaft .ts-status-bad .ts-shap\
e{color:var(--ts-bad)}.twoshaft .ts-status-saved .ts-shape{color:var(--ts-good)}.twoshaft .ts-status-bad{color:var(--ts-\
ink);font-weight:600}.twoshaft .ts-order+.ts-read{display:none}.twoshaft .ts-bench{margin-top:var(--ts-grid)}.twoshaft .\
ts-bench summary{cursor:pointer;min-height:24px;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft .ts-bench[open\
]{border:1px solid var(--ts-line);padding:var(--ts-grid)}.twoshaft .ts-bench-rows{display:grid;grid-template-columns:rep\
eat(auto-fill,minmax(min(100%,20em),1fr));gap:var(--ts-grid) calc(2 * var(--ts-grid));margin:var(--ts-grid) 0}.twoshaft \
.ts-bench-row{min-width:0}.twoshaft .ts-bench-row select{max-width:100%;min-width:0}.twoshaft .ts-bench-row label{displa\
y:block;max-width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-height:0}.twoshaft.ts-question{border-left:4px so\
lid var(--ts-accent);padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-acts{display:flex;flex-wrap:wrap;gap:var(--ts-g\
rid);margin-top:var(--ts-grid)}.twoshaft .ts-told:not(:empty){margin-top:var(--ts-grid)}.twoshaft .ts-told-unread{border\
:2px solid var(--ts-ink);padding:var(--ts-grid)}.twoshaft .ts-teacher{border-style:dashed;font-size:var(--ts-small)}.two\
shaft.ts-question .ts-title{font-weight:600}.twoshaft.ts-question:has(.ts-asked>:nth-child(2)){max-width:none}.twoshaft \
.ts-asked{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,340px),1fr));gap:0 calc(4 * var(--ts-grid))\
;align-items:start}.twoshaft-start>div{max-width:1040px}.twoshaft-start h2{font-size:var(--ts-head);font-weight:600;marg\
in:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-in{margin:calc(2 * var(--ts-grid)) 0 calc(3 * var(\
--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;grid-template-columns:minmax(0,1fr);gap:calc(1.5 * var(--ts-grid));\
justify-items:start}.twoshaft-start .ts-pair{display:grid;grid-template-columns:minmax(0,1fr);gap:calc(var(--ts-grid) / \
2);max-width:100%}.twoshaft-start .ts-pair label{font-weight:600}.twoshaft-start .ts-pair .ts-box{width:22em;max-width:1\
00%}.twoshaft-start .ts-first{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft-start .ts-button{font-size\
:var(--ts-text)}.twoshaft-start .ts-said:not(:empty){border-left:3px solid var(--ts-accent);padding:var(--ts-grid);backg\
round:var(--ts-faint)}.twoshaft-start .ts-me{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-betwee\
n;gap:var(--ts-grid);margin-bottom:var(--ts-grid)}.twoshaft-start .ts-table{border-collapse:collapse;width:100%;margin:0\
 0 calc(2 * var(--ts-grid));font-size:var(--ts-text);table-layout:fixed}.twoshaft-start .ts-table :is(th,td){text-align:\
left;vertical-align:top;white-space:normal;padding:var(--ts-grid);border:0;border-bottom:1px solid var(--ts-line);backgr\
ound:none;max-width:none}.twoshaft-start .ts-table thead th{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-st\
art .ts-table th:nth-child(1){width:26%}.twoshaft-start .ts-table th:nth-child(2){width:16%}.twoshaft-start .ts-table th\
:nth-child(4){width:24%}.twoshaft-start .ts-small-line{display:block;font-size:var(--ts-small);color:var(--ts-quiet)}.tw\
oshaft-start .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-start a.ts-link:is(:l\
ink,:visited,:hover,:focus,:active){color:var(--ts-accent);text-decoration:underline;display:inline-flex;align-items:cen\
ter;min-height:var(--ts-target);cursor:pointer}.twoshaft-start .ts-lessons{padding-left:calc(2 * var(--ts-grid))}.twosha\
ft-start .ts-lessons .ts-link{min-height:24px}.twoshaft-start .ts-module th{padding-top:calc(3 * var(--ts-grid));font-si\
ze:var(--ts-text)}.twoshaft-start .ts-table .ts-module th{width:auto}.twoshaft-start .ts-assigned{margin-left:var(--ts-g\
rid);font-weight:400;color:var(--ts-quiet)}.twoshaft-start .ts-next{margin:0}.twoshaft-start summary{min-height:var(--ts\
-target);align-content:center;cursor:pointer}.twoshaft-start .ts-due{display:none}@media(max-width:560px){.twoshaft-star\
t .ts-due{display:inline}.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.twoshaft-start .ts-tabl\
e :is(tr,th,td):nth-child(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:1px solid var(--ts-line\
);padding:var(--ts-grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.twoshaft-start .ts-gaps{p\
adding-left:calc(2 * var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{display:block}.twoshaft-sta\
rt .ts-question{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk{max-width:1240px}.twosh\
aft-desk .ts-desk-top{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid)}.t\
woshaft-desk .ts-desk-pages{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin:var(--ts-grid) 0;padding-bottom:var(--\
ts-grid);border-bottom:1px solid var(--ts-line)}.twoshaft-desk .ts-button[aria-current=page]{border-width:3px;font-weigh\
t:700}.twoshaft-desk :is(h2,h3){font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-desk h3,.two\
shaft-desk .ts-button{font-size:var(--ts-text)}.twoshaft-desk .ts-first{background:var(--ts-accent);color:var(--ts-on-ac\
cent)}.twoshaft-desk .ts-said:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border-left:3px solid var(--ts-accent);padd\
ing:var(--ts-grid);background:var(--ts-faint)}.twoshaft-desk :is(.ts-said,.ts-alert,.ts-told,.ts-trouble){white-space:pr\
e-line;max-width:none}.twoshaft-desk .ts-desk-here{width:100%;scroll-margin-block:calc(2 * var(--ts-grid))}.twoshaft-des\
k .ts-busy{display:flex;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-desk-body[aria-busy=true]{cursor:progre\
ss}.twoshaft-desk .ts-desk-body>*{margin-top:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-caption{display:flex;flex-\
wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:calc(var(--ts-grid) / 2)}.tw\
oshaft-desk .ts-desk-scroll{max-height:360px;overflow:auto;border:1px solid var(--ts-line)}.twoshaft-desk .ts-table{bord\
er-collapse:collapse;margin:0;min-width:100%;font-size:var(--ts-text)}.twoshaft-desk .ts-table :is(th,td){text-align:lef\
t;vertical-align:top;white-space:normal;padding:calc(var(--ts-grid) / 2) var(--ts-grid);border:0;border-bottom:1px solid\
 var(--ts-line);background:none;max-width:28em;font-weight:400;overflow-wrap:break-word}.twoshaft-desk .ts-table tbody t\
h{position:sticky;left:0;background:var(--ts-paper)}.twoshaft-desk .ts-table thead th{position:sticky;top:0;z-index:1;ba\
ckground:var(--ts-paper);box-shadow:inset 0 -1px var(--ts-line);white-space:nowrap}.twoshaft-desk .ts-table .ts-figure{t\
ext-align:right;font-variant-numeric:tabular-nums}.twoshaft-desk .ts-table .ts-tick{width:24px}.twoshaft-desk input[type\
=checkbox]{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft-desk :is(.ts-sort,.ts-cell){min-height:24px;mi\
n-width:24px;padding:0;border:0;background:none;color:var(--ts-accent);font:inherit;text-align:inherit;cursor:pointer}.t\
woshaft-desk .ts-sort{font-weight:600}.twoshaft-desk .ts-cell{text-decoration:underline}.twoshaft-desk .ts-desk-form{dis\
play:grid;gap:var(--ts-grid);justify-items:start;padding-top:var(--ts-grid);border-top:1px solid var(--ts-line)}.twoshaf\
t-desk .ts-desk-form>*{min-width:0;max-width:100%}.twoshaft-desk .ts-desk-fields{display:flex;flex-wrap:wrap;align-items\
:flex-start;gap:var(--ts-grid) calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-field{display:grid;grid-template-columns\
:minmax(0,auto);gap:calc(var(--ts-grid) / 2);max-width:100%}.twoshaft-desk .ts-desk-field>label:not(.ts-option){font-wei\
ght:600}.twoshaft-desk .ts-desk-field .ts-box{width:18em;max-width:100%}.twoshaft-desk .ts-desk-field select.ts-box{widt\
h:auto;min-width:min(18em,80vw)}.twoshaft-desk textarea.ts-box{width:30em;padding:var(--ts-grid)}.twoshaft-desk .ts-doin\
g{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-question{border:2px solid var(--t\
s-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk a.ts-link:is(:link,:visited,:hover,:focus,:active){color:var(--\
ts-accent);text-decoration:underline}.twoshaft-desk :is(textarea,a,h2,.ts-desk-scroll):focus-visible{outline:3px solid v\
ar(--ts-accent);outline-offset:2px}@media(forced-colors:active){.twoshaft-desk .ts-button[aria-current=page]{border-colo\
r:Highlight}.twoshaft-desk .ts-first{border-width:2px;font-weight:700}.twoshaft-desk .ts-said:not(:empty,.ts-hidden),.tw\
oshaft-desk .ts-told{border:1px solid CanvasText}}.twoshaft .tsj-bench{display:flex;flex-wrap:wrap;gap:var(--ts-grid) ca\
lc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .tsj-bench>*{flex:1 1 240px;min-width:0;max-width:max-content}.t\
woshaft .tsj-bench svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:pointer}.twoshaft .tsj-bolt:f\
ocus{outline:none}.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsj-bolt.ts\
j-started circle{stroke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.twoshaft .tsj-bolt.tsj-tight te\
xt{fill:var(--ts-paper)}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(--ts-grid)}.twoshaft .tsj-sl\
ide input{width:180px;max-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-target)}.twoshaft .tsj-figure{min\
-width:8ch;font-variant-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-height:1.5em}.twoshaft .tsj-che\
ck{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsj-check input{widt\
h:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-template-columns:max-content \
minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-width) + 12ch);margin:var(--ts\
-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block;max-width:100%;height:auto}\
.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:wrap}@media(max-width:700px)\
{.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{border-collapse:collapse;font:va\
r(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align:left;font-weight:600;paddin\
g:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-align:middle;padding:1px 12px\
 1px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twoshaft table.tsk-board thead th{font-we\
ight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:54ch;white-space:normal}.twoshaft table.tsk-board .\
tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft table.tsk-board select{max-wi\
dth:36ch}.twoshaft table.tsk-board :is(select,button){min-height:28px}.twoshaft table.tsk-board{font-size:var(--ts-small\
)}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:600;border-bottom:2px solid \
var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{min-width:24ch}.twoshaft .ts\
k-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:860px){.twoshaft table.tsk-board,.twoshaft table.ts\
k-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.twoshaft table.tsk-board the\
ad{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft table.tsk-board tr{border-botto\
m:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twoshaft table.tsk-board tbody t\
d,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-width:0;padding:2px 0;text-align\
:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-board tbody .tsk-best td{borde\
r:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board tbody t\
h{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) ": ";color:var(--ts-quiet)}.t\
woshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-board select{max-width:100%}}.twoshaft .ts-g\
ate{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 calc(2 * var(--ts-grid));align-items:start;cursor:defaul\
t;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none}.twoshaft .ts-pulling,.twos\
haft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accent)}.twoshaft .ts-gate svg{us\
er-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-happened.ts-stopped,.twosh\
aft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;padding-left:calc(4 * var(--t\
s-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate .ts-scroll{margin:0;padding:0}.twoshaft .ts-gate .ts-\
prompt{margin-top:0}.twoshaft .ts-gate-work .ts-prompt{margin-block:0}.twoshaft .ts-gate-hint{max-width:none}.twoshaft .\
ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 12ch);font-weight:600}.twosha\
ft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3px}.twoshaft .ts-lever .tsl-s\
pot{fill:transparent;cursor:pointer}.twoshaft .ts-lever .tsl-spot:hover{fill:var(--ts-faint);stroke:var(--ts-accent)}.tw\
oshaft .ts-lever .tsl-knob{fill:var(--ts-accent);stroke:var(--ts-paper);stroke-width:2;cursor:grab;touch-action:none}.tw\
oshaft .ts-lever .tsl-in{text-decoration:underline;font-weight:800}.twoshaft .ts-gate-work{display:grid;grid-template-co\
lumns:minmax(0,3fr) minmax(0,2fr);gap:0 calc(3 * var(--ts-grid))}.twoshaft .ts-gate-work .ts-log{max-height:9rem}.twosha\
ft .ts-gate-work .ts-moves{display:grid;grid-template-columns:repeat(auto-fill,minmax(200px,1fr))}.twoshaft .ts-gate-wor\
k .ts-moves{gap:4px;margin-top:0}.twoshaft .ts-gate-work .ts-moves .ts-button{font-size:var(--ts-small);line-height:1.25\
}@media(max-width:900px){.twoshaft .ts-gate,.twoshaft .ts-gate-work{grid-template-columns:minmax(0,1fr)}}.twoshaft .tsw-\
train.ts-scroll.ts-fit svg{min-width:540px}.twoshaft .tsw-train svg{user-select:none}.twoshaft .tsw-counts{display:grid;\
grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1fr));gap:4px var(--ts-grid);max-width:900px;margin:var(--t\
s-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-template-columns:68px minmax(0,1fr);column-gap:va\
r(--ts-grid);align-items:center;padding:2px 4px;border:1px solid var(--ts-line);border-radius:2px;text-align:left;font-s\
ize:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:1px 3px}.twoshaft .tsw-count\
.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-dial{grid-column:1;grid-row:\
1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:100%;height:auto;touch-action:none;cursor:gr\
ab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var(--ts-faint);stroke:var(--ts\
-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsw-painted{\
stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-tick{stroke:var(--ts-ink)\
;stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:calc(15px * var(--ts-grown, 1)) v\
ar(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{font-family:monospace;font-size:var(--ts-smal\
l);max-height:4.5em;overflow-y:auto}.twoshaft .tsw-figure{font-variant-numeric:tabular-nums}.twoshaft .tsw-figure:empty{\
min-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsw-say{max-width:none}.twoshaft .tsh-picture{overflow-\
x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{display:block;width:100%;min-width:680px;max-width:1100px;heig\
ht:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaft .tsh-place:hover .tsh-hit{\
stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:hover .tsh-hit{stroke:var(--ts\
-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);stroke-width:4}.twoshaft .ts\
h-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:3px solid var(--ts-accent);padding-left:calc(1.5 * var(--\
ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twoshaft .tsh-verdict{margin-top:\
var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-sliders{display:grid;grid-template\
-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:96\
0px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em minmax(6em,1fr) 4em;align-items:center;gap:var(--ts-grid)\
;min-height:28px}.twoshaft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;min-height:24px}.twoshaft .t\
sl-row .ts-box{justify-self:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;text-align:right}.twoshaft .ts\
l-drawing{overflow-x:auto}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:520px;max-width:820px;height:aut\
o}.twoshaft .tsl-sum{font-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@media(max-width:480px){.twoshaft .tsl-sl\
iders{grid-template-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wrap:wrap;min-width:0}.twoshaft .tsl-row \
input{max-width:100%}}.twoshaft .tsp-section{flex:1 1 320px;overflow-x:auto}.twoshaft .tsp-gauge{width:190px;height:173p\
x;flex:none}.twoshaft .tsp-section svg{display:block;max-width:100%;height:auto;min-width:320px}.twoshaft .ts-pair[hidde\
n]{display:none}.twoshaft .ts-cells{position:absolute;pointer-events:none}.twoshaft .tsp-land.tsp-clear{fill:none}.twosh\
aft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-way{fill:none;stroke:var(--ts-bad);str\
oke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:var(--ts-ink);stroke:var(--ts-paper);stroke-width:.5px}.\
twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp-shut .tsp-chosen{display:none}.twosha\
ft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-grid));font-size:var(--ts-small);min-height:1.6em}.t\
woshaft .ts-key{display:inline-flex;align-items:center;gap:4px}.twoshaft .ts-swatch{width:25px;height:15px;border:1px so\
lid var(--ts-line)}.twoshaft-rig .ts-pad-tools .ts-box{max-width:15em}.twoshaft-rig .ts-beside .ts-facts{max-width:none}\
.twoshaft .ts-range{accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-clock{min-width:6em;font-weight:600}.two\
shaft .ts-unit{overflow:auto;max-height:max(20rem,min(620px,100vh - 370px));border:1px solid var(--ts-line);margin:var(-\
-ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:block;min-width:640px;max-width:none;max-\
height:none;margin-inline:auto}.twoshaft .ts-apart .ts-unit svg{min-width:0;overflow:visible}.twoshaft .ts-unit [data-pa\
rt]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);str\
oke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-unit [data-part]:hover path:not(.tsu-behind,.tsu-pitch,.tsu-line){st\
roke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft \
.ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .ts-unit-words p{max-width:var(--ts-wid\
th)}.twoshaft.ts-together .tsu-number{display:none}.twoshaft .ts-unit :is(.tsu-axis,.tsu-number){pointer-events:none}.tw\
oshaft .ts-apart{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-apart-tools{flex:1 1 280px;max-w\
idth:380px}.twoshaft .ts-apart-tools .ts-slide>span{min-width:0}.twoshaft .ts-apart-tools .ts-slid{min-width:6em}.twosha\
ft .ts-apart-picture{flex:3 1 600px;min-width:0}.twoshaft .ts-nextin{min-height:3em}.twoshaft .ts-apart-list{list-style:\
none;margin:0;padding:0 var(--ts-grid) 0 0;max-height:300px;overflow:auto;font-size:var(--ts-small)}.twoshaft .ts-apart-\
list li{padding:2px var(--ts-grid);border-left:4px solid transparent}.twoshaft .ts-apart-list .ts-current{border-left-co\
lor:var(--ts-accent);font-weight:600}@media(forced-colors:active){.twoshaft .ts-apart-list li:not(.ts-current){border-le\
ft-color:Canvas}}.twoshaft .ts-space{display:block;width:100%;height:clamp(260px,100vh - 290px,460px);box-sizing:border-\
box;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:none}.twoshaft .ts-space:focus-visible{outline:\
3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-photographs{display:flex;flex-wrap:wrap;gap:var(--ts-grid)}\
.twoshaft .ts-photographs figure{flex:0 1 320px;margin:var(--ts-grid) 0}.twoshaft .ts-photographs svg{display:block;widt\
h:100%;height:auto;max-height:220px}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sentences[hidden]{display:none}.twoshaft \
.ts-told{min-height:1.5em;max-height:6em;overflow-y:auto}.twoshaft .ts-build{display:grid;grid-template:"tray unit" auto\
 "hand unit" 1fr "hand end" auto / minmax(20rem,1fr) minmax(0,738px);gap:var(--ts-grid) calc(2 * var(--ts-grid));align-i\
tems:start}.twoshaft .ts-build-left{grid-area:tray}.twoshaft .ts-build-hand{grid-area:hand;min-width:0}.twoshaft .ts-bui\
ld-unit{grid-area:unit;min-width:0}.twoshaft .ts-build-face{grid-template:"tray hand" auto "end hand" 1fr / minmax(20rem\
,1fr) minmax(0,738px)}.twoshaft .ts-build-end{grid-area:end;margin:0}.twoshaft .ts-build-unit .ts-unit{max-height:max(15\
rem,min(560px,100vh - 475px));margin-block:4px}.twoshaft .ts-build-unit :is(.ts-unit-name,.ts-in-picture){margin:0}.twos\
haft .ts-buildlist{display:grid;gap:4px;max-height:9.5rem;overflow-y:auto;padding:4px}.twoshaft .ts-buildstep{display:fl\
ex;align-items:center;gap:var(--ts-grid);text-align:left;padding:1px var(--ts-grid);min-height:34px}.twoshaft .ts-thumb{\
flex:0 0 44px;height:30px;display:grid;place-items:center;color:var(--ts-ink)}.twoshaft .ts-buildstep[aria-current] .ts-\
thumb{background:var(--ts-paper)}.twoshaft .ts-carry{cursor:grab;touch-action:none}.twoshaft .ts-inhand{display:block;ma\
x-width:none;overflow:hidden;pointer-events:none}.twoshaft.ts-ghost{position:fixed;z-index:10000;transform:translate(-50\
%,-50%);opacity:.85;pointer-events:none}.twoshaft .ts-thumb path{vector-effect:non-scaling-stroke;stroke-width:1px}.twos\
haft .ts-hand-row{display:flex;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-hand-row>:last-child{flex:1;min-width:0}.twosh\
aft .ts-hand .ts-facts{grid-template-columns:fit-content(60%) minmax(0,1fr)}.twoshaft .ts-hand-row .ts-facts{display:blo\
ck}.twoshaft .ts-hand-row .ts-facts dt{margin-top:4px}.twoshaft .ts-hand-row .ts-hint{margin:0}.twoshaft .ts-held-box{di\
splay:grid;gap:var(--ts-grid);align-content:start}.twoshaft .ts-held-box[hidden],.twoshaft .ts-held-box [hidden]{display\
:none}.twoshaft .ts-held-box>.ts-hint:empty{display:none}.twoshaft .ts-held-box>.ts-hint{max-width:126px}.twoshaft .ts-h\
eld-frame,.twoshaft .ts-tool-frame{display:grid;place-items:center;min-width:124px;min-height:88px;border:1px dashed var\
(--ts-line)}.twoshaft .ts-tool-frame{min-height:68px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var\
(--ts-line)}.twoshaft .ts-buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .t\
s-buildstep[aria-current]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100\
%}.twoshaft .ts-hand{border:1px solid var(--ts-line);padding:var(--ts-grid);max-height:max(13rem,min(24rem,100vh - 470px\
));overflow-y:auto;scroll-padding-top:3em}.twoshaft .ts-hand .ts-field{border:0;margin:var(--ts-grid) 0;min-width:0}.two\
shaft .ts-hand-name{font-weight:600;position:sticky;top:calc(-1 * var(--ts-grid));z-index:1;background:var(--ts-paper)}.\
twoshaft .ts-do{text-align:left;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-lef\
t:var(--ts-grid);font-size:var(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;f\
ont:inherit}.twoshaft .ts-record caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left\
;vertical-align:top;padding:3px 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.tw\
oshaft .ts-record th[scope=row]{font-weight:400}.twoshaft .ts-record .ts-blank{min-width:12em;height:2em}@media(min-widt\
h:52rem){.twoshaft .ts-build-face .ts-build-unit{display:none}.twoshaft .ts-build-face .ts-hand{max-height:27rem}}@media\
(max-width:52rem){.twoshaft .ts-build,.twoshaft .ts-build-face{grid-template:"tray" "hand" "unit" "end" / minmax(0,1fr)}\
.twoshaft .ts-hand{max-height:none}.twoshaft .ts-hand .ts-facts{grid-template-columns:minmax(0,1fr)}}@media(forced-color\
s:active){.twoshaft-rig:not(.ts-begun,.ts-lost) .ts-first{outline:3px solid Highlight}.twoshaft .ts-button[aria-pressed=\
true],.twoshaft .ts-buildstep[aria-current],.twoshaft .ts-held{forced-color-adjust:none;background:Highlight;border-colo\
r:Highlight;color:HighlightText}.twoshaft :is(.ts-step,.ts-pathlist li):not(.ts-current,.ts-inblock){border-left-color:C\
anvas}.twoshaft :is(.ts-step,.ts-pathlist li).ts-current{border-left-color:Highlight}.twoshaft-notebook .jp-MarkdownCell\
 .jp-RenderedMarkdown{border-color:Canvas}.twoshaft-bar .ts-tasks a:not([aria-current]){border-bottom-color:Canvas}}`,Ms="\
twoshaft-styles";function ho(){let t=document.getElementById(Ms);t?.textContent!==As&&(t?.remove(),document.head.append(
n("style",{id:Ms},As)))}function st({model:t,el:e},{kind:s,lost:o=()=>me(e),line:a=()=>{}}){ho(),e.classList.add("twosha\
ft","twoshaft-live",`twoshaft-${s}`);let r=n("p",{class:"ts-alert",role:"alert"}),c=Es(e),i=()=>e.classList.contains("ts\
-lost"),u=[],l=fo(t,()=>{i()||(e.classList.add("ts-lost"),c.down(),o())},g=>{i()||(g?c.down():c.up(),a(g))}),f=po(e),p,h=(g,y)=>{
t.on(g,y),u.push([g,y])};return h("msg:custom",g=>{g.type==="trouble"&&!i()&&(r.textContent=g.reason)}),{alert:r,follow:h,
isLost:i,send(g){i()||(e.classList.add("ts-begun"),t.send(g),clearTimeout(p),p=window.setTimeout(()=>t.send({type:"rest"}),
lo))},asks(g,{first:y,begin:b,who:L="Practice. Nothing here is marked or saved."}={}){return y?.classList.add("ts-first"),
n("div",{class:"ts-who"},n("p",{class:"ts-asks"},g),b?n("p",{class:"ts-begin"},`Begin: ${b}.`):"",L?n("p",{},L):"")},show:(...g)=>e.
replaceChildren(...Wt(g)),close(){c.up(),clearTimeout(p),f(),l();for(let[g,y]of u)t.off(g,y)}}}function Ft(t){let e=t.get("pictured"),s=n("div",{class:"ts-photographs"}),o="",a=r=>{r.type!=="photographs"||`${r.of}:${r.
id}`!==o||s.replaceChildren(...r.shown.map(({svg:c,alt:i})=>{let u=n("figure",{});return u.innerHTML=c,u.append(n("figca\
ption",{},`From your college: ${i}`)),u}))};return t.on("msg:custom",a),{node:s,any:r=>e[r].length>0,show(r,c){let i=c.find(
d=>e[r].includes(d)),u=i===void 0?"":`${r}:${i}`;u!==o&&(o=u,s.replaceChildren(),i!==void 0&&t.send({type:"photographs",
of:r,id:i}))},close:()=>t.off("msg:custom",a)}}function Os({model:t,el:e}){let s=st({model:t,el:e},{kind:"rig",lost:()=>l.setDisabled(!0)}),o=n("p",{class:"ts-finding",
role:"status"}),a=n("p",{class:"ts-cost"}),r=Ft(t),c=t.get("start"),i=t.get("work"),u=null,d=h=>{u=ct("order"),s.send({type:"\
order",order:h,turn:u})},l=Ce({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:d,
onChoose:h=>r.show("operation",h.flatMap(g=>i[g]??[]))}),f=n("button",{type:"button",class:"ts-button",onclick:()=>l.change(
[...c],"The first order stands again")},"Start again");l.tools.append(f),s.show(s.asks("Which steps stand in a wrong pla\
ce?",{first:l.tools,begin:"choose a step and move it up or down"}),s.alert,Dt([l.element],[o,a,r.node]));function p(){let h=t.
get("judged");u!==null&&h.turn!==u||(u=null,o.textContent=h.finding,a.textContent=h.cost,l.setOrder(h.order),l.setNotes(
h.notes))}return s.follow("change:judged",p),p(),()=>{r.close(),s.close()}}var go=["lit","bench","absent","put"],Ts=[1,1.5,2,3,4.5];function Gt({svg:t,parts:e,words:s},{name:o="The unit in sectio\
n",tallest:a,onChoose:r=()=>{}}={}){let c=n("div",{class:"ts-unit",tabindex:"0",role:"application","aria-label":`${o}. L\
eft and right arrows walk from part to part, up and down to the part above or below, plus and minus zoom.`});c.innerHTML=
t;let i=c.querySelector("svg"),u=i.querySelector(".tsu-marks");i.setAttribute("aria-hidden","true"),i.dataset.grow??="2",
i.removeAttribute("role");let d=new Map(e.map(([k])=>[k,[]]));for(let k of Z(i,"[data-part]"))d.get(String(k.dataset.part))?.
push(k);let l=new Map(e.map(([k],v)=>[k,v])),f=n("p",{class:"ts-hint ts-unit-name",role:"status"}),p=Nt({"aria-label":"P\
art",class:"ts-box ts-before"},[["","no part chosen"],...e.map(([k,v])=>[k,v])]),{width:h,height:g}=i.viewBox.baseVal,y=a?
`min(100%, ${Math.round(a*h/g)}px)`:"100%",b=new WeakMap,L=-1,T=0,S={},I=k=>{let v=S[k];return v==="absent"?" Not there \
yet.":v==="bench"?" On the bench.":v==="lit"?" In hand.":""},x=k=>`${e[k][1]}. ${e[k][2]}${I(e[k][0])}`;function N(k){for(let B of Z(
i,".tsu-chosen"))B.classList.remove("tsu-chosen");L=k;let v=k<0?"":e[k][0];p.value=v,f.textContent=k<0?_:x(k);for(let B of d.
get(v)??[])B.classList.add("tsu-chosen");k>=0&&w(v),r(v)}function E(k){let v=u?Z(u,`[data-part="${k}"]`):[],B=[...d.get(
k)??[],...v].map(J=>{let{x:Lt,y:W,width:Y,height:V}=J.getBBox(),[ft,gt]=b.get(J)??[0,0];return{x:Lt+ft,y:W+gt,width:Y,height:V}}),
H=Math.min(...B.map(J=>J.x)),q=Math.max(...B.map(J=>J.x+J.width)),ot=Math.min(...B.map(J=>J.y)),yt=Math.max(...B.map(J=>J.
y+J.height));return{x:(H+q)/2,y:(ot+yt)/2}}let w=k=>$(E(k));function $(k){let v=i.getBoundingClientRect().width/i.viewBox.
baseVal.width,[B,H]=[k.x*v,k.y*v],{scrollLeft:q,scrollTop:ot,clientWidth:yt,clientHeight:J}=c;(B<q+40||B>q+yt-40)&&(c.scrollLeft=
B-yt/2),(H<ot+40||H>ot+J-40)&&(c.scrollTop=H-J/2)}function m(k){T=Math.max(0,Math.min(Ts.length-1,T+k)),i.style.width=`c\
alc(${Ts[T]} * ${y})`,i.style.height="auto",L>=0&&w(e[L][0])}function M(k){let v=E(e[L][0]),[B]=e.map(([H],q)=>({k:q,at:E(
H)})).filter(({k:H,at:q})=>H!==L&&(q.y-v.y)*k>4).sort((H,q)=>Is(H.at,v)-Is(q.at,v));B&&N(B.k)}c.addEventListener("keydow\
n",k=>{if(It(k))return;let v=e.length-1;if(k.key==="ArrowRight")N(L>=v?0:L+1);else if(k.key==="ArrowLeft")N(L<=0?v:L-1);else if(k.
key==="ArrowUp"||k.key==="ArrowDown")L<0?N(0):M(k.key==="ArrowUp"?-1:1);else if(k.key==="Home")N(0);else if(k.key==="End")
N(v);else if(k.key==="+"||k.key==="=")m(1);else if(k.key==="-")m(-1);else if(k.key==="Escape")N(-1);else return;k.preventDefault()}),
c.addEventListener("click",k=>{let v=At(k,"[data-part]")?.dataset.part;N(v===void 0?-1:l.get(v)??-1)}),c.addEventListener(
"pointerover",k=>{let v=At(k,"[data-part]")?.dataset.part;if(v===void 0||k.pointerType!=="mouse")return;let B=At(k,"[dat\
a-solid]")?.querySelector("title")?.textContent,H=e[l.get(v)??0][1];j.textContent=B&&!H.endsWith(B)?`${B} (${H})`:H}),c.
addEventListener("pointerleave",()=>{j.textContent=""}),p.addEventListener("change",()=>N(l.get(p.value)??-1));let j=n("\
span",{class:"ts-unit-over","aria-hidden":"true"}),_="Point at a part, tap it, or choose it here to read its name.";f.textContent=
_;let G=n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"Part ",p),at("−",()=>m(-1),"Smaller"),at("+",()=>m(1),"\
Larger"),j),P=n("details",{class:"ts-unit-words"},n("summary",{},"What is where, in words"),n("p",{},s));return m(0),{nodes:[
G,f,c,P],choose:p,drawing:i,frame:c,look(k){d.get(k)?.length&&w(k)},moveTo:$,shift(k,[v,B]){b.set(k,[v,B]),k.setAttribute(
"transform",`translate(${v.toFixed(1)} ${B.toFixed(1)})`)},show(k){S=k.looks;for(let[v,B]of d)for(let H of B)for(let q of go)
H.classList.toggle(`tsu-${q}`,S[v]===q);u&&(u.innerHTML=k.marks),L>=0&&(f.textContent=x(L))}}}function Is(t,e){return Math.
abs(t.y-e.y)+2*Math.abs(t.x-e.x)}function Ns(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function Bs({model:t,el:e}){let s=n(
"p",{class:"ts-finding"}),o=n("p",{class:"ts-happened",role:"status"}),a=n("p",{class:"ts-hint"}),r=Ft(t),c=Gt(t.get("pi\
cture")),i=n("p",{class:"ts-hint",role:"status"}),u=n("dl",{class:"ts-facts"}),d=n("div",{class:"ts-ready"}),l=n("select",
{class:"ts-box ts-before","aria-label":"A step that is not ready"}),f=n("input",{type:"text",inputmode:"numeric",size:"3",
class:"ts-box","aria-label":"Go to place",onkeydown:w=>{w.key==="Enter"&&I()}}),p=n("span"),h=w=>N.send({type:"move",by:w}),
g=w=>N.send({type:"go",position:w}),y=at("Back",()=>h(-1),"One step back"),b=at("Next",()=>h(1),"Next step"),L=at("Start",
()=>g(0),"Start with an empty bench"),T=at("End",()=>g(t.get("view").count),"End of the order"),S=at("Try it",()=>N.send(
{type:"take",step:l.value}),"Try it: the step chosen here"),I=()=>{let w=Number.parseInt(f.value,10);w>=0&&g(w)},x=n("di\
v",{class:"ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},L,y,b,T,n("span",
{class:"ts-pair"},"place ",f,p,at("Go",I,"Go to this place")));x.addEventListener("keydown",w=>{if(!(w.target===f||It(w))){
if(w.key==="ArrowLeft")h(-1);else if(w.key==="ArrowRight")h(1);else if(w.key==="Home")g(0);else if(w.key==="End")g(t.get(
"view").count);else return;w.preventDefault()}});let N=st({model:t,el:e},{kind:"rig"});N.show(N.asks("What comes next, a\
nd what can no longer be reached?",{first:b,begin:"press Next"}),N.alert,s,x,Dt(c.nodes,[o,i,u,a,r.node,n("p",{class:"ts\
-prompt"},"Do another step next"),d,n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"or one that is not ready: ",l,
S))]));function E(){let w=t.get("view");s.textContent=w.finding,o.textContent=w.happened,a.textContent=w.next?`Next in t\
his order: ${w.next}`:"This is the end of the order.",i.textContent=w.build.words,r.show("operation",w.in_hand),c.show(w.
build),u.replaceChildren(...Rt(w.facts));let $=d.contains(document.activeElement);d.replaceChildren(...w.ready.map(([j,_])=>at(
_,()=>N.send({type:"take",step:j})))),w.ready.length||d.append(n("p",{class:"ts-hint"},"No step is ready.")),$&&(d.querySelector(
"button")??b).focus(),l.replaceChildren(...Mt(w.waiting)),l.disabled=S.disabled=!w.waiting.length,f.value=String(w.position),
p.textContent=` of ${w.count} `;let m=w.position===0,M=w.position===w.count;for(let j of[y,L])Ns(j,m);for(let j of[b,T])
Ns(j,M)}return N.follow("change:view",E),E(),()=>{r.close(),N.close()}}function ne(t){let e=null,s=null,o=r=>{if(e!==null){s=r;return}e=ct("turn"),t(r,e)},a=()=>{e=null;let r=s;s=null,r!==null&&
o(r)};return{ask:o,free:a,answered(r){r===e&&a()},get waiting(){return e!==null}}}var ht=(t,e,s,o,a)=>D("line",{x1:t,y1:e,x2:s,y2:o,class:a}),wt=(t,e,s,o="middle")=>D("text",{x:t,y:e,"text-anchor":o,class:"\
tsg-text"},s);function oe(){let t=D("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(D("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let o=0;o<100;o+=1){let a=o/100*2*Math.PI,r=o%10===0?78:o%5===0?82:86;t.append(ht(100+
r*Math.sin(a),100-r*Math.cos(a),100+92*Math.sin(a),100-92*Math.cos(a),o%10===0?"tsg-mark tsg-long":"tsg-mark")),o%10===0&&
t.append(wt(100+66*Math.sin(a),104.5-66*Math.cos(a),String(o)))}t.append(D("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let o=0;o<10;o+=1){let a=o/10*2*Math.PI;t.append(ht(100+15*Math.sin(a),134-15*Math.cos(a),100+19*Math.sin(a),134-19*
Math.cos(a),"tsg-mark"))}let e=ht(100,134,100,119,"tsg-small"),s=D("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(e,s,D("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(o,a){s.setAttribute("tra\
nsform",`rotate(${o*360} 100 100)`),e.setAttribute("transform",`rotate(${o*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${a}`)}}}function Ds({top:t,mark:e,perFigure:s}){let o=D("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),a=c=>30+c/t*540;o.append(D("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*e<=t+1e-9;c+=1){let i=c%s===0;o.append(ht(a(c*e),22,a(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&o.
append(wt(a(c*e),84,String(Math.round(c*e))))}let r=D("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return o.append(
r,wt(586,14,"newtons","end")),{node:o,top:t,set(c,i){r.setAttribute("transform",`translate(${a(Math.min(c,t))} 0)`),o.setAttribute(
"aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function Ps({low:t,high:e,reach:s}){let o=D("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),a=i=>360+Math.max(-s,Math.min(s,i))/s*340;o.append(D("rect",{x:a(t),y:34,width:a(
e)-a(t),height:24,class:"tsg-target"}),wt((a(t)+a(e))/2,84,"target"),ht(20,46,700,46,"tsg-mark"),ht(360,26,360,66,"tsg-m\
ark tsg-long"),wt(20,20,"end play","start"),wt(700,20,"preload","end"),wt(360,20,"0"));for(let i=.05;i<=s+1e-9;i+=.05)for(let u of[
i,-i])o.append(ht(a(u),42,a(u),50,"tsg-mark"));o.append(wt(a(-s),70,`${s.toFixed(2)} mm`,"start"),wt(a(s),70,`${s.toFixed(
2)} mm`,"end"));let r=D("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=D("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return o.append(r,c),{node:o,set(i,u,d){r.setAttribute("transform",`translate(${a(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${a(u)} 0)`),o.setAttribute("aria-label",d)}}}function Ct(t,{min:e,max:s,step:o,value:a,words:r,onInput:c}){let i=n(
"input",{type:"range",class:"ts-slider",min:e,max:s,step:o,value:a,"aria-label":t}),u=n("output",{class:"ts-slid"},r(a));
return i.addEventListener("input",()=>{let d=r(Number(i.value));u.textContent=d,i.setAttribute("aria-valuetext",d),c(Number(
i.value))}),i.setAttribute("aria-valuetext",r(a)),{box:i,row:n("label",{class:"ts-slide"},n("span",{},t),i,u),set(d){i.value=
String(d),u.textContent=r(d)}}}function St(t,e,s,o){let a=n("select",{class:"ts-box","aria-label":t,onchange:()=>o(a.value)},
...e.map(([r,c])=>n("option",{value:r,selected:r===s},c)));return{box:a,row:n("span",{class:"ts-pair"},`${t} `,a)}}function Rs({model:t,el:e}){let s=t.get("about"),o=t.get("shown").state,a=null,r=n("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=n("p",{class:"ts-hint"}),i=n("p",{class:"ts-finding",role:"status"}),u=n("u\
l",{class:"ts-sentences"}),d=ne((w,$)=>x.send({type:"set",state:w,turn:$})),l=w=>{o={...o,...w},d.ask(o)},f=D("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),p=ht(0,0,0,0,"tsg-mark tsg-long"),h=wt(0,0,""),[g,
y]=s.readingsOnly?[72,48]:[96,120],b=g/(s.readingsOnly?o.radius:s.radii[1]),L=D("svg",{viewBox:`0 0 ${2*g+y} ${2*g+30}`,
width:2*g+y,height:2*g+30,class:"tsg-drum",role:"img"}),T=g+4;f.setAttribute("transform",`translate(${T} ${T})`),L.append(
f,p,ht(4,T,2*g+4,T,"tsg-centre"),ht(T,4,T,2*g+4,"tsg-centre"),D("circle",{cx:T,cy:T,r:10,class:"tsg-face"}),h);let S=z("\
Turn the shaft ten times",()=>l({turns:o.turns+10})),I=[n("div",{class:"ts-tools"},S)];if(!s.readingsOnly){let w=s.kinds,
$=w.map(([m,M])=>n("label",{class:"ts-option"},n("input",{type:"checkbox",checked:o.kinds.includes(m),onchange:j=>l({kinds:w.
map(([_])=>_).filter(_=>_===m?j.target.checked:o.kinds.includes(_))})}),`with ${M}`));I[0].append(z("Fit the rings anew",
()=>l({turns:0}))),$.length&&I.push(n("fieldset",{class:"tsg-ticks"},n("legend",{class:"ts-hint"},"What turns with the b\
earings"),...$)),I.push(Ct("Setting",{min:-.05,max:s.highest,step:.005,value:o.setting,onInput:m=>l({setting:m}),words:m=>m<
0?`${(-m).toFixed(3)} mm of end play`:`${m.toFixed(3)} mm of preload`}).row,Ct("Radius of the drum",{min:s.radii[0],max:s.
radii[1],step:1,value:o.radius,onInput:m=>l({radius:m}),words:m=>`${m} mm`}).row)}let x=st({model:t,el:e},{kind:"rig"});
x.show(x.asks("How hard does the shaft turn?",{first:S,begin:"turn the shaft",who:s.readingsOnly?"Take your reading here\
; write it in the form.":void 0}),x.alert,n("div",{class:"tsg-beside"},L,n("div",{class:"tsg-side"},r,c)),...I,i,u);function N(){
let w=t.get("shown");d.waiting||(o=w.state);let $=b*w.state.radius;Ht(f,{r:$}),Ht(p,{x1:T,y1:T-$,x2:2*g+y,y2:T-$}),Ht(h,
{x:T,y:2*g+22}),h.textContent=`drum, radius ${w.state.radius} mm`,L.setAttribute("aria-label",`A drum of ${w.state.radius}\
 mm radius on the shaft; the cord leaves it at its edge towards the scale.`),a?.top!==w.scale.top&&(a=Ds(w.scale),r.replaceChildren(
a.node),c.textContent=`Spring scale to ${w.scale.top} N, one mark ${w.scale.mark} N.`),a?.set(w.pull,w.pullWords),i.textContent=
w.finding,u.replaceChildren(...Kt(w.words)),d.answered(w.turn)}let E=()=>d.free();return x.follow("change:shown",N),x.follow(
"msg:custom",E),N(),x.close}function Pt({model:t,el:e},s){let o=t.get("about"),a=t.get("shown").state,r=ne((f,p)=>c.send({type:"set",state:f,turn:p})),
c=st({model:t,el:e},{kind:"rig"}),i=n("p",{class:"ts-finding",role:"status"}),u=s(o,f=>{a={...a,...f},r.ask(a)},a),d=o.readingsOnly?
"Take your readings here; write them in the form.":void 0;c.show(c.asks(u.asks,{first:u.first,begin:u.begin,who:d}),c.alert,
...u.side?[Dt([u.picture],[...u.controls,i])]:[n("div",{class:"tsg-wide"},u.picture),...u.controls,i]);function l(){let f=t.
get("shown");r.waiting||(a=f.state),u.set(f,a),i.textContent=f.finding,r.answered(f.turn)}return c.follow("change:shown",
l),c.follow("msg:custom",r.free),l(),c.close}var Bt=(...t)=>n("div",{class:"ts-tools"},...t);var mo={x:44,y:84,perMm:34};function wo(t){let e=D("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:s,y:o,
perMm:a}=mo,r=D("g",{}),c=D("g",{});e.append(D("rect",{x:1,y:22,width:758,height:o-22,class:"tsi-paper"}),D("rect",{x:s-
30,y:o,width:t.lines*t.space*a+60,height:64,class:"tsi-body"}),r,c,wt(12,14,"main scale, mm","start"),wt(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let u=s+i*t.space*a;c.append(
ht(u,o,u,o+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(wt(u,o+48,String(i)))}return{node:e,set(i){r.replaceChildren();for(let u=Math.
max(0,Math.ceil(i.mm-1));u<=t.top+25;u+=1){let d=s+(u-i.mm)*a;d<4||d>756||(r.append(ht(d,o,d,o-(u%10===0?34:u%5===0?28:20),
"tsi-fine")),u%5===0&&r.append(wt(d,o-40,String(u))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function js(t){
return Pt(t,(e,s,o)=>{let a=wo(e),r=Ct("Rod",{min:0,max:e.top,step:.05,value:o.rod,words:()=>"push down to the right",onInput:d=>s(
{rod:d})}),c=St("Foot",e.places,o.place,d=>s({place:d,rod:0})),i=z("Push the rod down until it rests",()=>s({rod:e.top})),
u=St("Look",e.eyes,o.eye,d=>s({eye:d}));return{asks:"How deep does it lie?",first:i,begin:"push the rod down",picture:a.
node,controls:[Bt(c.row,u.row),Bt(i,z("Lift the rod",()=>s({rod:0}))),r.row],set(d,l){a.set(d),c.box.value=l.place,u.box.
value=l.eye,r.box.value=l.rod}}})}function ae(t,e){let s=e>1?.65/(e-1):0;return Array.from({length:e},(o,a)=>{let r=e>1?a*s:0,c=e>1?.35:1;return 1-Math.max(
0,Math.min(1,(t-r)/c))})}function Hs(t,e,s,o){let[a,r]=[0,0];for(let c=s;c!==null;c=t[c].parent){let[i,u]=t[c].own[o]??[
0,0];a+=i*e[c],r+=u*e[c]}return[a,r]}function Ve(t){let e=t.findIndex(s=>s>0);return{placed:t.filter(s=>s===0).length,next:e<
0?null:e}}function Ws(t,e){return t<=0?0:t>=e||e<2?1:.35+(t-1)*(1-.35)/(e-1)}function _s(t,e,s){let o=[0,0,0];for(let a=s;a!==
null;a=t[a].parent){let r=e[a];for(let[c,i]of t[a].own.entries())o[c]+=i*r}return o}function Je(t,e){globalThis.twoshaftChunks??=new Map;let s=globalThis.twoshaftChunks,o=s.get(e)??bo(t,e);return s.set(e,
o),o.catch(()=>s.delete(e)),o}function bo(t,e){return new Promise(s=>{let o=(a,r)=>{if(a.type!=="chunk"||a.name!==e)return;
t.off("msg:custom",o);let c=URL.createObjectURL(new Blob([r[0]],{type:"text/javascript"})),i=import(c);i.finally(()=>URL.
revokeObjectURL(c)).catch(()=>{}),s(i)};t.on("msg:custom",o),t.send({type:"chunk",name:e})})}var Oe=.12,Vt=1.15,Fs="This browser draws nothing in three dimensions. The section shows the same parts.",Te;function Us(){
if(Te!==void 0)return Te;let t=document.createElement("canvas").getContext("webgl2");return t?.getExtension("WEBGL_lose_\
context")?.loseContext(),Te=!!t,Te}function Ks(t){Us()&&Je(t,"solids").catch(()=>{})}function Ie(t,e){let s=n("span",{style:`\
color: ${e}; forced-color-adjust: none`});t.append(s);let o=n("canvas",{width:1,height:1}).getContext("2d");o.fillStyle=
getComputedStyle(s).color,s.remove(),o.fillRect(0,0,1,1);let[a,r,c]=o.getImageData(0,0,1,1).data;return{text:`rgb(${a}, ${r}\
, ${c})`,light:(a+r+c)/765}}var Ze=window.matchMedia("(forced-colors: active)");function qs(t){let[e,s,o]=Ze.matches?["C\
anvasText","Canvas","Highlight"]:["var(--ts-ink)","var(--ts-paper)","var(--ts-accent)"],a=Ie(t,s),r=a.light>.5?18:40;return{
ink:Ie(t,e).text,paper:a.text,accent:Ie(t,o).text,metal:Ie(t,`color-mix(in srgb, ${e} ${r}%, ${s})`).text}}function zs(t,e,s){
let o=n("p",{class:"ts-hint ts-unit-name",role:"status"});if(!Us())return o.textContent=Fs,{drawn:!1,nodes:[o],move(){},
ready(){},close(){}};let a=n("canvas",{class:"ts-space",tabindex:"0",role:"application","aria-label":"The parts in three\
 dimensions. Arrow keys turn, plus and minus zoom, Home looks as at first, H hides the chosen part, A shows all. The sec\
tion shows the same parts with their names."}),r=Nt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],
...s.map(([x,N])=>[x,N])]),c=new Set,i,u=()=>[0,0,0],d=()=>{},l="Drag or use the arrow keys to turn. Tap a part, or choo\
se it here, to read its name.";o.textContent="Drawing …";function f(){let x=s.find(([E])=>E===r.value),N=c.has(r.value)?
" Hidden.":"";o.textContent=x?`${x[1]}. ${x[2]}${N}`:l,i?.look(r.value,c)}function p(){r.value&&(c.delete(r.value)||c.add(
r.value),f())}function h(){c.clear(),f()}r.addEventListener("change",f);let g={ArrowLeft:()=>i?.turnBy(-Oe,0),ArrowRight:()=>i?.
turnBy(Oe,0),ArrowUp:()=>i?.turnBy(0,Oe),ArrowDown:()=>i?.turnBy(0,-Oe),"+":()=>i?.zoomBy(Vt),"=":()=>i?.zoomBy(Vt),"-":()=>i?.
zoomBy(1/Vt),Home:()=>i?.home(),h:p,a:h};a.addEventListener("keydown",x=>{let N=g[x.key]??g[x.key.toLowerCase()];!N||It(
x)||(N(),x.preventDefault())});let y=null;a.addEventListener("pointerdown",x=>{y={x:x.clientX,y:x.clientY,far:!1},a.setPointerCapture(
x.pointerId)}),a.addEventListener("pointermove",x=>{if(!y)return;let[N,E]=[x.clientX-y.x,x.clientY-y.y];!y.far&&Math.hypot(
N,E)<4||(y={x:x.clientX,y:x.clientY,far:!0},i?.turnBy(-N/150,E/150))}),a.addEventListener("pointerup",x=>{if(y&&!y.far){
let{left:N,top:E,width:w,height:$}=a.getBoundingClientRect(),[m,M]=[(x.clientX-N)/w,(x.clientY-E)/$];r.value=i?.partAt(2*
m-1,1-2*M)??"",f()}y=null}),a.addEventListener("wheel",x=>{document.activeElement===a&&(i?.zoomBy(x.deltaY<0?Vt:1/Vt),x.
preventDefault())},{passive:!1});let b=()=>{i?.recolour(qs(a.parentElement??document.body)),f()},L=new MutationObserver(
b),T=new ResizeObserver(()=>i?.paint()),S=!1;return Je(t,"solids").then(({solidsView:x})=>{S||(i=x(a,e,qs(a.parentElement??
document.body)),i.move(u),i.fit(),d(),i.home(),i.paint(),T.observe(a),L.observe(document.body,{attributes:!0}),Ze.addEventListener(
"change",b),f(),a.dataset.painted="true")},()=>{o.textContent=Fs}),{drawn:!0,nodes:[n("div",{class:"ts-tools"},n("span",
{class:"ts-pair"},"Part ",r),at("Hide or show",p,"Hide or show the chosen part"),at("Show all",h,"Show all parts"),at("−",
()=>i?.zoomBy(1/Vt),"Smaller"),at("+",()=>i?.zoomBy(Vt),"Larger")),o,a],move(x){u=x,i?.move(x)},ready(x){d=x},close(){S=
!0,T.disconnect(),L.disconnect(),Ze.removeEventListener("change",b),i?.close()}}}var Ne=200,vo=580,yo="2.6";function Gs({model:t,el:e}){let s=n("p",{class:"ts-finding"}),o=n("p",{class:"ts-hint ts-next\
in",role:"status"}),a=n("div",{class:"ts-apart-picture"}),r=n("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"Wha\
t goes in"}),c=Ft(t),i=t.get("stages"),u=St("Show",i,t.get("stage"),$=>w.send({type:"stage",stage:$})),d=Ct("From apart \
to together",{min:0,max:Ne,step:1,value:0,words:$=>$<=0?"apart":$>=Ne?"together":"on the way",onInput:$=>I($/Ne)}),l=t.get(
"picture"),f,p=[],h=[],g=0,y=!1,b,L=at("In three dimensions",()=>{y=!y,L.setAttribute("aria-pressed",String(y)),N()});L.
setAttribute("aria-pressed","false");function T($){d.set(Math.round($*Ne)),I($)}function S($){let{placed:m}=Ve(ae(g,l.movers.
length));T(Ws(m+$,l.movers.length))}function I($){if(g=$,!f)return;let m=ae(g,l.movers.length);for(let{group:G,mover:P,view:k}of p)
f.shift(G,Hs(l.movers,m,P,k));x(m);for(let G of h)G.style.opacity=String(1-g);e.classList.toggle("ts-together",g>.5);let{
placed:M,next:j}=Ve(m),_=`${M} of ${m.length} in place.`;for(let[G,P]of[...r.children].entries())P.classList.toggle("ts-\
current",G===j);o.textContent=j===null?"All in place.":`${_} Next in: ${l.movers[j].words}.`}function x($){let{movers:m}=t.
get("space");b?.move(M=>_s(m,$,M))}function N(){if(b?.close(),b=void 0,!!f&&(a.replaceChildren(...y?[]:f.nodes),!!y)){if(t.
get("space").stage!==t.get("stage")){Ks(t),w.send({type:"space"});return}b=zs(t,t.get("space"),l.parts),x(ae(0,l.movers.
length)),a.replaceChildren(...b.nodes,...b.drawn?[]:f.nodes),b.ready(()=>x(ae(g,l.movers.length)))}}function E(){if(l=t.
get("picture"),s.textContent=t.get("finding"),u.box.value=t.get("stage"),f=void 0,a.replaceChildren(),!l.svg)return;f=Gt(
l,{name:"Parts apart",tallest:vo,onChoose:m=>c.show("part",[m])}),f.drawing.dataset.grow=yo,p=Z(f.drawing,"[data-move]").
map(m=>({group:m,mover:Number(m.dataset.move),view:String(m.dataset.view)})),h=Z(f.drawing,".tsu-traces"),r.replaceChildren(
...l.movers.map(({words:m})=>n("li",{},m))),N(),I(g)}let w=st({model:t,el:e},{kind:"rig"});return w.show(w.asks("How do \
these parts go together?",{first:d.box,begin:"move the slider",who:""}),w.alert,s,n("div",{class:"ts-apart"},n("div",{class:"\
ts-apart-tools"},u.row,d.row,n("div",{class:"ts-tools"},at("One in",()=>S(1),"One part more in place"),at("One out",()=>S(
-1),"One part less in place")),L,o,c.node,r),a)),w.follow("change:picture",E),w.follow("change:space",N),E(),()=>{b?.close(),
c.close(),w.close()}}function Ys({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding"}),a=n("p",{class:"tsj-happened",role:"status"}),
r=n("div",{class:"tsj-drawing"});r.innerHTML=s.drawing;let c=n("div",{class:"tsj-bars"}),i=Z(r,"[data-bolt]"),u=ct("torq\
ue"),d=n("input",{id:u,type:"range",min:10,max:100,step:5,oninput:()=>p()});d.value="100";let l=n("output",{class:"tsj-f\
igure",for:u}),f=()=>d.value==="100"?s.torque:Number((Math.round(s.torque*Number(d.value)/100/s.step)*s.step).toFixed(3));
function p(){l.textContent=`${f()} N·m`,d.setAttribute("aria-valuetext",`${f()} newton metres, ${d.value} percent of th\
e torque`)}let h=w=>S.send({type:"pull",bolt:w,torque:f()}),g=z("Take back",()=>S.send({type:"undo"})),y=z("Wait until t\
he film has run out",()=>S.send({type:"wait"})),b=n("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>S.send({type:"set",film:Number(b.value)})},...s.films.map(w=>n("option",{value:w},w?`${w} µm thick`:"none"))),
L=n("input",{type:"checkbox",onchange:()=>S.send({type:"set",scattered:L.checked})});r.addEventListener("click",w=>{let $=At(
w,"[data-bolt]");$&&(T($),h(Number($.dataset.bolt)))});let T=w=>{for(let $ of i)$.setAttribute("tabindex",$===w?"0":"-1");
w.focus({preventScroll:!0})};r.addEventListener("keydown",w=>{let $=At(w,"[data-bolt]");if(!$||w.ctrlKey||w.metaKey||w.altKey)
return;let m=Number($.dataset.bolt),M={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[w.key];if(M)T(i[(m+M+i.length)%
i.length]);else if(w.key==="Home")T(i[0]);else if(w.key==="End")T(i[i.length-1]);else if(w.key==="Enter"||w.key===" ")w.
repeat||h(m);else return;w.preventDefault()});let S=st({model:t,el:e},{kind:"rig"}),I=z("Start all by hand",()=>S.send({
type:"start"})),x=n("div",{class:"ts-tools",role:"group","aria-label":"Bolts"},I,...s.rounds.map(([w,$])=>z(`One round ${$}`,
()=>S.send({type:"round",pattern:w,torque:f()}))),g,z("Start again",()=>S.send({type:"again"}))),N=n("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},n("span",{class:"tsj-slide"},n("label",{for:u},"Wrench set to"),d,l));s.films.length&&
N.append(n("label",{class:"ts-pair"},"Wet sealant",b),y,n("label",{class:"tsj-check"},L,"friction scatters from bolt to \
bolt")),S.show(S.asks("Does every bolt keep its clamp?",{first:I,begin:"start all bolts by hand",who:s.readingsOnly?"Not\
hing is saved here; your answers stand in the form.":void 0}),S.alert,o,N,x,a,n("div",{class:"tsj-bench"},r,c),n("detail\
s",{class:"ts-keys"},n("summary",{},"How, and keys"),"The first choice of a bolt starts it by hand, the next ones pull i\
t. Arrows go from bolt to bolt, Enter pulls."));function E(){let w=t.get("view");o.textContent=w.finding,a.textContent=w.
happened,c.innerHTML=w.bars;for(let[$,m]of i.entries()){let M=w.tight[$]?`${w.clamps[$]} kN`:w.started[$]?"started by ha\
nd":"not started";m.setAttribute("aria-label",`Bolt ${$+1} of ${s.count}, ${M}`),m.classList.toggle("tsj-tight",w.tight[$]),
m.classList.toggle("tsj-started",w.started[$])}g.disabled=!w.pulls,y.disabled=!w.standing,b.value=String(w.film),L.checked=
w.scattered}return S.follow("change:view",E),p(),E(),S.close}var Xs="tsk-number";function qt(t,e,...s){return n("td",{class:e?Xs:null,"data-label":t||null,role:"cell"},...s)}function Be(t,e,s){
let o=e.map(([c,i])=>n("th",{scope:"col",role:"columnheader",class:i?Xs:null},c)),a=n("thead",{role:"rowgroup"},n("tr",{
role:"row"},...o)),r=n("table",{class:"tsk-board",role:"table"},n("caption",{},t),a,s);return n("div",{class:"ts-scroll"},
r)}function Vs({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding",role:"status"}),a=n("p",{class:"tsk-spent"}),
r=n("ul",{class:"ts-sentences tsk-left"}),c=n("p",{class:"tsk-more"}),i=n("tbody",{role:"rowgroup"}),u=new Map;for(let[p,
h,g,y]of s.checks){let b=n("select",{class:"ts-box","aria-label":`What it showed: ${h}`,onchange:()=>l.send({type:"obser\
ve",check:p,shown:b.value})},n("option",{value:""},"Not made"),...Mt(y)),L=qt("worth, bit",!0),T=qt("bit a minute",!0),S=n(
"tr",{role:"row"},n("th",{scope:"row",role:"rowheader"},h),qt("min",!0,`${g}`),qt("it showed",!1,b),L,T);u.set(p,{box:b,
tells:L,rate:T,row:S}),i.append(S)}let d=n("button",{class:"ts-button",type:"button",onclick:()=>l.send({type:"clear"})},
"Take all observations back"),l=st({model:t,el:e},{kind:"rig"});l.show(l.asks("Which fault is it, and which check comes \
next?",{first:u.values().next().value?.box,begin:"say what a check showed"}),l.alert,o,r,c,Be("Checks: what each showed,\
 and what it is still worth",[["Check"],["min",!0],["It showed"],["worth, bit",!0],["bit a minute",!0]],i),n("div",{class:"\
ts-tools"},d,a));function f(){let p=t.get("view");o.textContent=p.finding,a.textContent=p.spent,c.textContent=p.more,r.replaceChildren(
...Kt(p.left.map(([y,b])=>`${y} (${b})`)));let h=p.ranked,g=new Map(h.map(([y,b,L],T)=>[y,{bits:b,rate:L,rank:T}]));for(let[
y,{box:b,tells:L,rate:T,row:S}]of u){let I=p.observed[y],x=g.get(y);b.value=I??"",L.textContent=x?x.bits:I!==void 0?"mad\
e":"nothing",T.textContent=x?x.rate+(x.rank===0?" ◀ best next":""):"–",S.classList.toggle("tsk-best",x?.rank===0)}}return l.
follow("change:view",f),f(),l.close}function Js(t,{move:e,hand:s}){let{element:o,at:a}=Ae(t),r=Object.entries(t.aims).filter(([u])=>u.startsWith("at:")),c=(u,d)=>{
let[l,f]=a(u,d);return D("circle",{cx:l,cy:f,r:16,class:"tsl-spot",...{"data-travel":u,"data-turn":d}})},i=D("g",{class:"\
tsl-knob"},D("circle",{r:12}));return o.append(...r.map(([,[u]])=>c(Number(u),0)),...t.gears.map(([,u,d])=>c(u,d)),i),o.
classList.add("ts-lever"),o.addEventListener("click",u=>{let d=At(u,".tsl-spot");if(!d)return;let l=[Number(d.dataset.travel),
Number(d.dataset.turn)];for(let f of ks(t.aims,s(),l))e(f)}),{element:o,scale:[re,Ee],show([u,d],l){let[f,p]=a(u,d);i.setAttribute(
"transform",`translate(${f.toFixed(1)} ${p.toFixed(1)})`);for(let h of Z(o,"[data-gear]"))h.classList.toggle("tsl-in",l.
includes(String(h.dataset.gear)))}}}function Zs({model:t,el:e}){let s=n("p",{class:"ts-finding",role:"status"}),o=n("p",{class:"ts-happened",role:"status"}),
a=n("div",{class:"ts-scroll ts-fit"}),r=Js(t.get("plan"),{move:$=>L({type:"move",code:$}),hand:()=>t.get("view").hand}),
c=n("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=n("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...Mt(t.get("builds"))),u=at("Start again",()=>L({type:"reset"})),d=n("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([$,m])=>at(m,()=>L({type:"move",code:$})))),
l=n("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),f=n("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),p=n("p",{class:"ts-proof",role:"status"}),h=at("What does a full hand test find?",()=>{
h.disabled=!0,p.textContent="testing",L({type:"prove"})}),g=st({model:t,el:e},{kind:"rig"});c.append(n("div",{},n("p",{class:"\
ts-prompt"},"The lever"),r.element),a),g.show(g.asks("Which gears can the lever reach?",{first:r.element,begin:"press a \
place in the gate"}),g.alert,n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"Put together: ",i),u,h),s,c,o,p,n("p",
{class:"ts-hint ts-gate-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down tu\
rn. Or in words:"),n("div",{class:"ts-gate-work"},d,n("div",{},n("p",{class:"ts-prompt"},"Tried by hand"),f,l)));let y=0,
b="";function L($){y+=1,g.send({...$,turn:y})}function T(){let $=t.get("view");if(b!==t.get("figure")){b=t.get("figure"),
a.innerHTML=b;let m=Zt(a,"svg");m.removeAttribute("role"),m.setAttribute("aria-hidden","true")}for(let m of Z(a,"[data-b\
ody]")){let[M,j]=$.moved[String(m.dataset.rides??m.dataset.body)]??[0,0];m.setAttribute("transform",`translate(${M.toFixed(
2)} ${j.toFixed(2)})`)}for(let m of Z(a,"[data-gear]"))m.classList.toggle("tsg-in",$.gears.includes(m.dataset.gear));for(let m of Z(
a,"[data-lifts]"))m.classList.toggle("tsg-up",$.lifted);r.show($.hand,$.gears),c.dataset.turn=String($.turn),s.textContent=
`${$.gears.length>1?"■ ":$.gears.length?"● ":"○ "}${$.title}.`,o.textContent=$.happened,o.classList.toggle("ts-sto\
pped",/topped by/.test($.happened)),(l.childElementCount!==$.log.length||l.lastElementChild?.textContent!==$.log.at(-1))&&
(l.replaceChildren(...$.log.map(m=>n("li",{class:/topped by/.test(m)?"ts-stopped":""},m))),l.scrollTop=l.scrollHeight),f.
hidden=$.log.length>0,i.value=$.build,p.textContent=$.proof,h.disabled=!1,x=!1,w()}c.addEventListener("keydown",$=>{if(It(
$))return;let m={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[$.key];m&&($.preventDefault(),L({type:"\
nudge",travel:m[0],turned:m[1]}))}),i.addEventListener("change",()=>L({type:"build",build:i.value}));let S=null,I=null,x=!1;
function N($,m){let M=m.getBoundingClientRect(),j=m.viewBox.baseVal.width/M.width;return[($.clientX-M.left)*j,($.clientY-
M.top)*j]}c.addEventListener("pointerdown",$=>{let m=At($,".tsg-panel, .tsl-knob");if(!m||$.button!==0)return;let M=m.ownerSVGElement,
j=t.get("view").hand,[_,G]=N($,M),P=Number(m.dataset.scale),k=P?[P,P]:r.scale;S={svg:M,x:_-j[0]*k[0],y:G+j[1]*k[1],scale:k},
c.setPointerCapture($.pointerId),c.focus({preventScroll:!0}),c.classList.add("ts-pulling"),$.preventDefault()}),c.addEventListener(
"pointermove",$=>{if(!S)return;let[m,M]=N($,S.svg),{scale:j}=S;I={travel_mm:(m-S.x)/j[0],turn_mm:(S.y-M)/j[1]},w()});let E=()=>{
S=null,c.classList.remove("ts-pulling")};c.addEventListener("pointerup",E),c.addEventListener("pointercancel",E);function w(){
if(x||!I)return;x=!0;let $=I;I=null,L({type:"pull",...$})}return g.follow("msg:custom",$=>{$.type==="trouble"&&(x=!1)}),
g.follow("change:view",T),T(),g.close}function Qs({model:t,el:e}){let s=t.get("plan"),o=t.get("view"),a=n("p",{class:"ts-finding tsw-say",role:"status"}),r=n(
"p",{class:"ts-happened tsw-happened",role:"status"}),c=n("div",{class:"ts-scroll ts-fit tsw-train"}),i=o.dials[0].shaft,
d=s.gears.map(([m,M])=>n("button",{type:"button",class:"ts-button","data-gear":m,"aria-pressed":"false",onclick:()=>E({type:"\
gear",gear:m})},M)),l=n("select",{class:"ts-box","aria-label":"Wheel held still",onchange:m=>E({type:"hold",shaft:m.target.
value})},...Mt(s.holds)),f=n("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:m=>{i=m.target.value,$()}},
...Mt(o.dials.map(m=>[m.shaft,m.name]))),p=m=>E({type:"turn",shaft:i,turns:m}),h=`1/${s.marks}`,g=n("div",{class:"ts-too\
ls",role:"group","aria-label":"Turn the shaft"},at("↺ 1 turn",()=>p(-1),"One turn anticlockwise"),at(`↺ ${h}`,()=>p(
-s.step),`${h} turn anticlockwise`),at("↺ a touch",()=>p(-s.fine),"A touch anticlockwise"),at("a touch ↻",()=>p(s.fine),
"A touch clockwise"),at(`${h} ↻`,()=>p(s.step),`${h} turn clockwise`),at("1 turn ↻",()=>p(1),"One turn clockwise"),at(
"Marks to zero",()=>E({type:"reset"}))),y=new Map;for(let m of o.dials){let M=D("g",{},D("circle",{class:"tsw-end",r:34}),
D("line",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),D("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),j=[];for(let B=0;B<
s.marks;B+=1)j.push(D("line",{class:"tsw-tick",y1:-40,y2:B?-47:-52,transform:`rotate(${B*360/s.marks})`})),B&&j.push(D("\
text",{class:"tsw-number",x:57*Math.sin(B*2*Math.PI/s.marks),y:-57*Math.cos(B*2*Math.PI/s.marks)+4},String(B)));let _=D(
"svg",{viewBox:"-70 -70 140 140",class:"tsw-dial","data-shaft":m.shaft,"aria-hidden":"true"},D("circle",{class:"tsw-plat\
e",r:40}),...j,D("path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),M),G=n("div",{class:"tsw-count",tabindex:"0",role:"\
application","aria-roledescription":"shaft","data-shaft":m.shaft},n("div",{class:"tsw-name"}),_,n("div",{class:"tsw-stro\
kes","aria-hidden":"true"}),n("div",{class:"tsw-figure"}));y.set(m.shaft,{box:G,svg:_,shaftEnd:M}),G.addEventListener("f\
ocus",()=>{i!==m.shaft&&(i=m.shaft,$())}),G.addEventListener("keydown",B=>{if(It(B))return;let H={ArrowRight:1,ArrowDown:1,
ArrowLeft:-1,ArrowUp:-1,PageDown:1,PageUp:-1}[B.key];H&&(B.preventDefault(),i=m.shaft,p(H*(B.key.startsWith("Page")?1:B.
shiftKey?s.fine:s.step)))});let P=null,k=B=>{let H=_.getBoundingClientRect();return Math.atan2(B.clientX-H.left-H.width/
2,H.top+H.height/2-B.clientY)/(2*Math.PI)};_.addEventListener("pointerdown",B=>{B.button===0&&(P=k(B),_.setPointerCapture(
B.pointerId),G.focus({preventScroll:!0}),B.preventDefault())}),_.addEventListener("pointermove",B=>{if(P===null)return;let H=k(
B),q=H-P;q-=Math.round(q),P=H,b+=q,T()});let v=()=>{P=null};_.addEventListener("pointerup",v),_.addEventListener("pointe\
rcancel",v)}let b=0,L=!1;function T(){if(L||Math.abs(b)<.002)return;L=!0;let m=b;b=0,p(m)}let S=st({model:t,el:e},{kind:"\
rig"}),I=[n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"Hold still: ",l),n("span",{class:"ts-pair"},"Turn by ha\
nd: ",f)),n("div",{class:"tsw-counts"},...[...y.values()].map(m=>m.box)),g,r];S.show(S.asks("How many turns does it take\
?",{first:g,begin:s.closed?"turn a shaft":"engage a gear, then turn a shaft",who:s.closed?"Nothing is saved here; your a\
nswers stand in the form.":void 0}),S.alert,a,!s.closed&&n("div",{class:"ts-tools",role:"group","aria-label":"Gears enga\
ged"},n("span",{},"Engage: "),...d),...s.closed?I:[Dt([c],I)],n("p",{class:"ts-hint tsw-say"},`All three are seen from t\
he clutch side. Drag a dial round, or go to it and use the arrow keys (${h} turn), Shift with an arrow key (a touch) or \
Page Up and Page Down (one turn). Each stroke is a whole turn.`));let x=0,N=null;function E(m){x+=1,S.send({...m,turn:x})}
let w=m=>{let M=[];for(let j=m;j>0;j-=5)M.push(j>=5?"||||/":"|".repeat(j));return M.join(" ")};function $(){let m=t.get(
"view");N!==t.get("figure")&&(N=String(t.get("figure")),c.innerHTML=N);for(let M of Z(c,"[data-wheel]")){let[j,_]=m.wheels[String(
M.dataset.wheel)]??[0,!0];M.setAttribute("transform",`translate(0 ${(j*Number(M.dataset.reach)).toFixed(1)})`),M.classList.
toggle("tsw-behind",!_)}for(let M of d)M.setAttribute("aria-pressed",String(m.engaged.includes(M.dataset.gear)));l.value=
m.held,f.value=i;for(let M of m.dials){let{box:j,shaftEnd:_}=y.get(M.shaft),G=M.way>0?"↻":M.way<0?"↺":"";_.setAttribute(
"transform",`rotate(${M.angle})`);let[P,,k,v]=j.children;P.textContent=`${M.name}${M.held?", held":M.shaft===i?", your h\
and":""}`,k.textContent=M.strokes||G?`${G} ${w(M.strokes)}`:"no stroke",v.textContent=M.figure,j.classList.toggle("tsw-h\
and",M.shaft===i),j.classList.toggle("tsw-held",M.held),j.setAttribute("aria-label",`${M.name}${M.held?", held":""}. ${M.
words}`)}a.textContent=m.finding,r.textContent=m.happened,e.dataset.turn=String(m.turn),L=!1,T()}return S.follow("change\
:view",$),$(),S.close}function tn({model:t,el:e}){let s=n("p",{class:"ts-finding",role:"status"}),o=n("div",{class:"tsh-picture"}),a=n("p",{class:"\
tsh-head"}),r=n("p",{class:"tsh-seen"}),c=n("div",{class:"tsh-told"}),i=n("div",{class:"tsh-box",role:"status"},a,r,c),u=[],
d=[],l=null,f=t.get("plan").lookingOnly,p=(E,w)=>n("button",{type:"button",class:"ts-button","data-verdict":E,"aria-pres\
sed":"false",onclick:()=>L.send({type:"judge",place:l,verdict:E})},w),h=f?[]:[p("stop","Stop here"),p("well","Fine as it\
 is")],g=n("button",{type:"button",class:"ts-button",onclick:()=>L.send({type:"next"})},"Another day"),y=n("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...h);t.get("plan").more&&y.append(g);let b=n("p",{class:"\
ts-keys"},f?"Choose a place to read what can be seen there. Keys: arrows go from place to place.":"Choose a place, read \
what can be seen there, and judge it. Keys: arrows go from place to place; Tab goes on to the buttons."),L=st({model:t,el:e},
{kind:"rig"});L.show(L.asks(f?"What is to be seen at each place?":"Where can somebody get hurt?",{first:f?o:h[0],begin:f?
"choose a place":"choose a place and judge it",who:f?"Nothing is saved here; your answers stand in the form.":void 0}),L.
alert,f?null:s,f?null:b,Dt([o],[i,!f&&y]),f?b:null);function T(E,w){let $=E!==l;l=E;for(let[m,M]of d.entries()){let j=u[m][0]===
E;M.setAttribute("tabindex",j?"0":"-1"),M.setAttribute("aria-pressed",String(j)),M.classList.toggle("tsh-chosen",j),j&&w&&
(M.focus({preventScroll:!0}),S(M))}$&&L.send({type:"choose",place:E})}function S(E){let w=Zt(E,".tsh-hit").getBoundingClientRect(),
$=o.getBoundingClientRect();(w.left<$.left||w.right>$.right)&&(o.scrollLeft+=w.left-$.left-($.width-w.width)/2),(w.bottom<
0||w.bottom>innerHeight||w.top<0)&&E.scrollIntoView({block:"nearest"})}function I(){let E=t.get("plan");u=E.places,o.innerHTML=
E.drawing,Zt(o,"svg").setAttribute("role","group"),d=u.map(([w])=>Zt(o,`[data-place="${w}"]`)),d.forEach((w,$)=>{w.setAttribute(
"role","button"),w.setAttribute("aria-label",`${$+1} ${u[$][1]}`),w.addEventListener("click",()=>T(u[$][0],!0))}),l=String(
t.get("view").chosen),T(l,!1)}o.addEventListener("keydown",E=>{if(It(E))return;let w=u.findIndex(([M])=>M===l),$=Math.min(
6,u.length),m=w;if(E.key==="ArrowRight")m=w+1;else if(E.key==="ArrowLeft")m=w-1;else if(E.key==="ArrowDown")m=w+$;else if(E.
key==="ArrowUp")m=w-$;else if(E.key==="Home")m=0;else if(E.key==="End")m=u.length-1;else if(E.key!=="Enter"&&E.key!==" ")
return;E.preventDefault(),m>=0&&m<u.length&&T(u[m][0],!0)});function x(){let E=t.get("view");s.textContent=E.finding;let w=u.
findIndex(([M])=>M===E.chosen);a.textContent=`${w+1}  ${u[w][1]}`,r.textContent=E.seen;let{verdict:$,...m}=E.told;if(c.replaceChildren(),
$){let M=E.judged[E.chosen],j=M==="stop"==($==="Stop here."),_=M==="stop"?"Stop here":"Fine as it is";c.append(n("p",{class:"\
tsh-verdict"},j?`✓ Yes: ${$}`:`✗ You said “${_}”. The course says: ${$}`),n("dl",{class:"ts-facts"},...Object.entries(
m).flatMap(([G,P])=>[n("dt",{},G),n("dd",{},P)])))}for(let M of h)M.setAttribute("aria-pressed",String(E.judged[E.chosen]===
M.dataset.verdict));for(let[M,j]of d.entries()){let _=E.judged[u[M][0]];j.setAttribute("aria-label",`${M+1} ${u[M][1]}${_?
`, judged: ${_==="stop"?"stop here":"fine as it is"}`:""}`);let G=j.querySelector(".tsh-tag");if(!_){G?.remove();continue}
G||(G=D("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),j.append(G)),G.textContent=_==="stop"?"■ \
stop":"○ well"}e.dataset.turn=E.chosen}let N=()=>{I(),x()};return L.follow("change:plan",N),L.follow("change:view",x),
N(),L.close}function en({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding",role:"status"}),a=n("p",{class:"tsl-sum"}),r=n(
"div",{class:"tsl-drawing"}),c=new Map,u=s.sliders.map(([p,h,g,y,b,L])=>{let T=ct(p.replace("_","-")),S=n("output",{class:"\
tsl-figure",for:T}),I=n("input",{id:T,type:"range",min:y,max:b,step:L,oninput:()=>{x(),l.send({type:"set",name:p,value:Number(
I.value)})}}),x=()=>{S.textContent=`${I.value} ${g}`,I.setAttribute("aria-valuetext",`${I.value} ${g==="°"?"degrees":g}`)};
return c.set(p,{slider:I,say:x}),n("div",{class:"tsl-row"},n("label",{for:T},h),I,S)}),d=n("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>l.send({type:"set",name:"grip",value:d.value})},...Mt(s.grips)),l=st({model:t,el:e},{kind:"\
rig"});l.show(l.asks("Is this lift safe by hand?",{first:c.values().next().value?.slider,begin:"set the load"}),l.alert,
o,n("div",{class:"tsl-sliders",role:"group","aria-label":"The lift"},...u,n("div",{class:"tsl-row"},n("span",{},"Grip"),
d)),r,a,n("p",{class:"ts-keys"},"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));
function f(){let p=t.get("view");o.textContent=p.finding,a.textContent=p.sum,r.innerHTML=p.drawing;for(let[h,{slider:g,say:y}]of c)
document.activeElement!==g&&(g.value=p.sizes[h]),y();d.value=p.sizes.grip}return l.follow("change:view",f),f(),l.close}var De={x:90,y:120,perMm:20,radius:82,bevel:30};function ko(t){let e=D("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:s,y:o,perMm:a,radius:r}=De;e.append(D("rect",{x:s-60,y:o-56,width:a*t.top+90,height:112,class:"tsi-pa\
per"}),ht(s-20,o,s+a*t.top+20,o,"tsi-bold"));for(let f=0;f*t.pitch<=t.top;f+=1){let p=s+f*t.pitch*a;if(f%2){e.append(ht(
p,o,p,o+18,"tsi-fine"));continue}let h=f/2;e.append(ht(p,o,p,o-(h%5?18:27),h%5?"tsi-fine":"tsi-bold")),h%5===0&&e.append(
wt(p,o-33,String(h)))}let c=D("g",{});e.append(c,wt(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=D("path",{d:`M0 ${o-r+14}L${De.bevel} ${o-r}L${De.bevel} ${o+r}L0 ${o+r-14}\
Z`,class:"tsi-body"}),u=D("rect",{x:De.bevel,y:o-r,width:760,height:2*r,class:"tsi-body"}),d=D("rect",{x:0,y:o-r,width:760,
height:2*r,fill:"var(--ts-paper)"}),l=D("g",{});return c.append(d,i,u,l),{node:e,set(f){c.setAttribute("transform",`tran\
slate(${s+f.mm*a} 0)`),l.replaceChildren();for(let p=0;p<t.lines;p+=1){let h=p-f.line;h-=t.lines*Math.round(h/t.lines);let g=h/
t.lines*2*Math.PI;if(Math.abs(g)>1.15)continue;let y=o-(r-8)*Math.sin(g),b=p%5===0;l.append(ht(0,y,b?26:16,y,b?"tsi-bold":
"tsi-fine")),b&&l.append(wt(36,y+5,String(p),"start"))}e.setAttribute("aria-label",`${t.name}. ${f.words}`)}}}function sn(t){
return Pt(t,(e,s,o)=>{let a=ko(e),r=Ct("Thimble",{min:0,max:e.top,step:.01,value:o.open,words:()=>"turn in to the left, \
out to the right",onInput:d=>s({open:d})}),c=St("Between the faces",e.between,o.between,d=>s({between:d,open:e.top})),i=z(
"Close until it rests",()=>s({open:-1})),u=e.hands.length?St("Close it",e.hands,o.hand,d=>s({hand:d})):null;return{asks:"\
How thick is it?",first:i,begin:"close it until it rests",picture:a.node,controls:[Bt(c.row,u?.row),Bt(i,z("Open",()=>s(
{open:e.top}))),r.row],set(d,l){a.set(d),r.box.value=String(Math.max(0,d.mm)),c.box.value=l.between}}})}function nn({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding",role:"status"}),a=n("tbody",{role:"rowgroup"}),
r=new Map;for(let[u,d,l]of s.checks){let f=n("button",{class:"ts-button",type:"button","aria-label":`Make: ${d}`,onclick:()=>{
f.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:u})}},"Make"),p=qt("it shows",!1);p.classList.add("t\
sk-shown"),r.set(u,{button:f,shown:p}),a.append(n("tr",{role:"row"},n("th",{scope:"row",role:"rowheader"},d),qt("min",!0,
`${l}`),qt("",!1,f),p))}let c=st({model:t,el:e},{kind:"rig"});c.show(c.asks("What does each check show on your unit?",{first:r.
values().next().value?.button,begin:"make a check",who:"Checks are not saved; make them again after reopening."}),c.alert,
o,Be("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],a));function i(){let u=t.get("view");o.textContent=
u.finding;for(let[d,{button:l,shown:f}]of r){let p=u.shown[d];l.setAttribute("aria-disabled",p?"true":"false"),l.classList.
toggle("ts-off",!!p),l.textContent=p?"Made":"Make",f.textContent=p?`${p[0]?"✓":"✗"} ${p[1]}`:"",f.classList.toggle("\
tsk-failed",!!p&&!p[0])}}return c.follow("change:view",i),i(),c.close}function xo(){let t=D("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=D("g"),s=D("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(D("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,s,D("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let o=c=>(-135+270*c)*Math.PI/180,a="";function r([c,i,u]){e.replaceChildren();for(let d=0;d*i<=c+
1e-9;d+=1){let l=o(d*i/c),f=d%u===0,p=h=>[110+h*Math.sin(l),104-h*Math.cos(l)];if(e.append(ht(...p(f?72:79),...p(88),f?"\
tsg-mark tsg-long":"tsg-mark")),f&&d%(2*u)===0){let[h,g]=p(58);e.append(wt(h,g+4.5,String(Number((d*i).toFixed(2)))))}}e.
append(wt(110,170,"kN"))}return{node:t,set(c,i,u){String(c)!==a&&(a=String(c),r(c));let d=Math.min(i/c[0],1.03);s.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*d})`),t.setAttribute("aria-label",u)}}}function on(t){return Pt(t,(e,s,o)=>{
let a=xo(),r=n("div",{class:"tsp-section"}),c="",i=n("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},r,n("div",{class:"tsg-gauge"},a.node)),u=Ct("Push",{min:0,max:100,step:1,value:o.travel,onInput:p=>s(
{travel:p}),words:p=>p>=100?"at the shoulder":`${p} % of the way`}),d=[u.row],l=null;if(!e.readingsOnly){let p=St("Part",
e.places,o.place,b=>s({place:b,travel:0}));l=St("Driver presses on",e.drivers,o.driver,b=>s({driver:b,travel:0}));let h=St(
"Seat",e.seats,o.seat,b=>s({seat:b})),g=Ct("Pair",{min:0,max:100,step:1,value:o.grip,onInput:b=>s({grip:b}),words:b=>b===
0?"loosest of the fit":b===100?"tightest of the fit":`${b} % from loosest to tightest`}),y=Ct("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:o.warmth,onInput:b=>s({warmth:b}),words:b=>`${b} °C`});d.unshift(Bt(p.row,l.row,h.row),
g.row,y.row)}let f=n("dl",{class:"ts-facts"});return e.readingsOnly||d.push(f),{asks:"What force does it take, and where\
 does it stop?",first:u.box,begin:"push the part",side:!e.readingsOnly,picture:i,controls:d,set(p,h){p.section!==c&&(c=p.
section,r.innerHTML=c),r.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*h.travel/100} 0\
)`),a.set(p.gauge,p.force,p.words),Number(u.box.value)!==h.travel&&document.activeElement!==u.box&&u.set(h.travel),l&&(l.
row.hidden=!p.drives),p.facts&&f.replaceChildren(...Rt(p.facts))}}})}function rn({model:t,el:e}){let s=t.get("steps"),o=new Map(s),a=n("div",{class:"ts-scroll tsf-near",tabindex:"0",role:"r\
egion","aria-label":"The rules around the chosen step"}),r=n("p",{class:"ts-finding",role:"status"}),c=n("ul",{class:"ts\
-sentences"}),i=n("select",{class:"ts-box ts-before","aria-label":"Chosen step",onchange:()=>l(i.value)},...Mt(s.map(([h,
g],y)=>[h,`${y+1}  ${g}`]))),u=st({model:t,el:e},{kind:"rig",lost(){i.disabled=!0}});u.show(u.asks("What comes before th\
is step, and what after it?",{first:i,begin:"choose a step, or press one in the picture",who:""}),u.alert,n("p",{class:"\
ts-hint"},t.get("finding")),n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"Step ",i)),r,a,n("details",{class:"ts\
-keys"},n("summary",{},"In words, with reasons"),c));let d=!1,l=h=>u.send({type:"choose",step:h}),f=h=>{let g=At(h,"[dat\
a-step]")?.dataset.step;g&&(d=!0,l(g))};a.addEventListener("click",f),a.addEventListener("keydown",h=>{h.key!=="Enter"&&
h.key!==" "||At(h,"[data-step]")&&(h.preventDefault(),f(h))});function p(){let h=t.get("near");r.textContent=h.words,i.value=
h.step,a.innerHTML=h.figure,a.querySelector("svg")?.setAttribute("role","group");let g=Z(a,"[data-step]");for(let y of g)
y.setAttribute("role","button"),y.setAttribute("tabindex","0"),y.setAttribute("aria-label",o.get(String(y.dataset.step))??
"");c.replaceChildren(...Kt(h.sentences)),d&&(g[0]??i).focus({preventScroll:!0}),d=!1}return u.follow("change:near",p),p(),
u.close}function $o(){let t=D("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=D("g",{}),s=D("g",{});return e.append(
D("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),ht(150,164,150,98,"tsi-bold"),D("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),s.append(ht(150,86,150,40,"tsi-plunger"),D("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,ht(50,164,
250,164,"tsg-centre"),ht(150,250,150,80,"tsg-centre"),s,wt(8,252,"not to scale","start")),{node:t,set(o,a,r){e.setAttribute(
"transform",`rotate(${o} 150 164)`),s.setAttribute("transform",`rotate(${a} 150 88)`),t.setAttribute("aria-label",r)}}}function an(t){
return Pt(t,(e,s,o)=>{let a=oe(),r=$o(),c=Ct("Turn the shaft by hand",{min:0,max:360,step:5,value:o.angle,words:d=>`turn\
ed by ${d}°`,onInput:d=>s({angle:d})}),i=St("Plunger",e.pressed,o.pressed,d=>s({pressed:d})),u=St("Stand",e.tilts,o.tilt,
d=>s({tilt:d}));return{asks:"How far does the shaft run out?",first:c.box,begin:"turn the shaft",picture:n("div",{class:"\
tsg-beside"},r.node,n("div",{class:"tsg-gauge"},a.node,n("div",{},"One mark 0.01 mm, one turn 1 mm"))),controls:[Bt(i.row,
u.row),c.row],set(d,l){a.set(d.mm,d.words),r.set(d.state.angle,Number(d.state.tilt),`Shaft end on, turned by ${d.state.angle}\
°; the plunger stands ${d.state.tilt}° off square. Not to scale.`),c.set(l.angle)}}})}var ln=(t,e)=>(t+e)%7<2,dn=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,ie=()=>!1,Pe=t=>(e,s)=>s%t===0,So={"":ie,dots:(t,e)=>t%6<2&&e%
6<2,rising:ln,cross:dn,flat:(t,e)=>e%6<2,rings:(t,e)=>{let s=Math.hypot(t%12-6,e%12-6);return s>2.5&&s<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":ie,"lines-2":Pe(14),"lines-3":Pe(8),"lines-4":Pe(5),"lines-5":Pe(
3)};function Lo(t){let e=s=>Number.parseInt(t.slice(s,s+2),16);return[e(1),e(3),e(5)]}var cn=([t,e,s],o)=>(o<<24|s<<16|e<<
8|t)>>>0;function un(t,[e,s],o,a,r){let c=s*4,i=new Uint32Array(c*e*4),u=new Map(o.map(([f,,p,h])=>{let g=p?cn(Lo(p),200):
0;return[f,{ground:g,hatch:So[h]??ie}]})),d={ground:0,hatch:ie},l=cn(a,190);for(let f=0;f<e;f+=1){let p=(e-1-f)*4;for(let h=0;h<
s;h+=1){let g=t[f*s+h];if(!g)continue;let{ground:y,hatch:b}=u.get(g&15)??d,L=r&&(g&16)!==0,T=r&&(g&32)!==0;if(b===ie&&!L&&
!T){if(!y)continue;let S=h*4;for(let I=p;I<p+4;I+=1)i.fill(y,I*c+S,I*c+S+4);continue}for(let S=p;S<p+4;S+=1)for(let I=h*
4;I<(h+1)*4;I+=1){let x=b(I,S)||L&&ln(I,S)||T&&dn(I,S);i[S*c+I]=x?l:y}}}return i}var Eo=600;function fn(t,e,s,o,a,r){let[c,i]=s;t.width=i*4,t.height=c*4;let u=new Uint8ClampedArray(un(e,s,o,a,r).buffer),
d=new ImageData(u,t.width,t.height);t.getContext("2d")?.putImageData(d,0,0)}function Ao(t,e){let s=n("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return fn(s,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),n("span",{class:"ts-key"},s,t[1])}
function hn({model:t,el:e}){let s=t.get("face"),o=t.get("looks"),a=n("p",{class:"ts-finding",role:"status"}),r=n("span",
{class:"ts-clock"}),c=n("dl",{class:"ts-facts"}),i=n("p",{class:"ts-legend"}),u=n("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),d=st({model:t,el:e},{kind:"rig",lost(){p.setDisabled(!0),me(e)}}),l=null,f=P=>{l=ct("turn"),d.send({...P,turn:l})},
p=Se({face:s,label:`${s.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(P){p.
drawing.strokes(P),f({type:"lay",entries:P})},onRemove:P=>f({type:"remove",at:P}),onClear:()=>f({type:"clear"})}),h=z("C\
lose the face",()=>f({type:"shut",closed:!t.get("view").closed})),g=n("input",{type:"range",id:ct("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),y=n("output",{for:g.id}),b=Nt({id:ct("slide"),onchange:()=>f({type:"slide",by:b.value})},
t.get("view").slides),L=null;g.addEventListener("input",()=>{y.textContent=`${g.value} µm`;let P={type:"flat",um:Number(
g.value)};l===null?f(P):L=P});let{box:T,unit:S}=p.drawing;p.drawing.land.classList.add("tsp-clear"),p.drawing.frame.prepend(
u);let I=(...P)=>n("span",{class:"ts-pair"},...P);d.show(d.asks("Does this film close the gap?",{first:h,begin:"press Cl\
ose the face"}),d.alert,a,Dt([p.drawing.frame,i],[n("div",{class:"ts-tools"},h,I(n("label",{for:b.id},"the other face is"),
b)),n("div",{class:"ts-tools"},r,z("1 minute passes",()=>f({type:"time",by:1})),z("5 minutes pass",()=>f({type:"time",by:5}))),
n("div",{class:"ts-tools"},I(n("label",{for:g.id},"faces out of flat by"),g,y)),p.tools,c,n("details",{class:"ts-keys"},
n("summary",{},"Passes laid"),p.empty,p.list)]));function x(){let P=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return P?
P.slice(0,3).map(Number):[0,0,0]}let N="",E="";function w(){let P=t.get("view"),k=o[P.closed?"closed":"film"],v=t.get("g\
rid"),B=v instanceof DataView?new Uint8Array(v.buffer,v.byteOffset,v.byteLength):new Uint8Array(v);fn(u,B,P.shape,k,x(),
!P.closed);let[H,q]=P.shape,[ot,yt]=[P.corner[0]-P.pitch/2,P.corner[1]-P.pitch/2],J=(V,ft)=>`${(100*V/ft).toFixed(3)}%`;
u.style.left=J(ot-T.left,T.width),u.style.width=J(q*P.pitch,T.width),u.style.top=J(T.high-yt-H*P.pitch,T.height),u.style.
height=J(H*P.pitch,T.height);let Lt=new Set(B);if(!P.closed)for(let V of[...Lt])Lt.add(V&15);let W=k.filter(([V])=>Lt.has(
V)),Y=`${W.map(([,V])=>V)} ${x()}`;Y!==N&&(N=Y,i.replaceChildren(...W.map(V=>Ao(V,x()))))}let $=D("g");p.drawing.over.append(
$);let m=([P,k])=>[P-T.left,T.high-k];function M([P,k]){let v=k.map(B=>{let[H,q]=m(B);return`M${H.toFixed(1)} ${q.toFixed(
1)}h0.01`});return D("path",{d:v.join(""),class:"tsp-lump","stroke-width":2*P})}function j(P){let[k,v]=m(P[P.length-1]),
B=`M${k-1.3*S} ${v-S}h${2.6*S}l${-1.3*S} ${2.2*S}Z`;return[D("path",{d:p.drawing.path(P),class:"tsp-way","stroke-width":S}),
D("path",{d:B,class:"tsp-out"})]}function _(){let P=t.get("view");if(l!==null&&P.turn!==l)return;l=null;let k=JSON.stringify(
[P.entries,P.notes]);if(k!==E&&p.show(P.entries,P.notes),E=k,p.drawing.strokes([]),w(),$.replaceChildren(...P.lumps.map(
M),...P.leaks.flatMap(j)),p.drawing.svg.classList.toggle("tsp-shut",P.closed),p.drawing.svg.classList.toggle("tsp-clean",
P.closed||P.clean),a.textContent=P.finding,b.value=P.slide,r.textContent=`minute ${P.minute}`,h.textContent=P.closed?"Li\
ft the face off again":"Close the face",L===null&&(g.value=String(P.flat),y.textContent=`${P.flat} µm`),c.replaceChildren(
...Rt(P.facts)),L===null)return;let v=L;L=null,f(v)}d.follow("change:view",_),d.follow("msg:custom",P=>{P.type==="troubl\
e"&&(l=null,p.drawing.strokes([]))});let G=new MutationObserver(()=>setTimeout(w,Eo));return G.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),_(),()=>{d.close(),G.disconnect()}}function gn(t){return Pt(t,(e,s,o)=>{let a=oe(),r=n("div",{class:"tsp-section"}),c="",i=n("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},r,n("div",{class:"tsg-gauge"},a.node,n("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),u=e.places.map(([l,f])=>[l,n("button",{type:"button",class:"ts-button",
onclick:()=>s({place:l})},f)]),d=[n("p",{class:"ts-hint"},e.rule),Bt(n("span",{},"Set the gauge down at"),...u.map(([,l])=>l))];
return e.readingsOnly||(d.push(Bt(St("Lip looks towards",e.sides,o.lip,l=>s({lip:l})).row,St("Lip is",e.greases,o.grease,
l=>s({grease:l})).row,e.sleeves.length?St("It went",e.sleeves,o.sleeve,l=>s({sleeve:l})).row:"")),d.push(Ct("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:o.depth,words:l=>`${l.toFixed(2)} mm${l<0?", proud":""}`,onInput:l=>s({
depth:l})}).row,Ct("Lean",{min:0,max:e.mostLean,step:.02,value:o.lean,words:l=>l?`${l.toFixed(2)} mm across`:"square",onInput:l=>s(
{lean:l})}).row)),{asks:"Does the seal sit square and deep enough?",first:u[0][1],begin:"set the gauge down",side:!e.readingsOnly,
picture:i,controls:d,set(l,f){l.section!==c&&(c=l.section,r.innerHTML=c),r.querySelector(".tsl-moving")?.setAttribute("t\
ransform",l.placed),a.set(l.dial,l.words);for(let[p,h]of u)h.setAttribute("aria-pressed",String(p===f.place))}}})}function mn({model:t,el:e}){let s=t.get("about"),o=t.get("shown").state,a=oe(),r=s.readingsOnly?null:Ps(s),c=n("p",{class:"\
ts-finding",role:"status"}),i=n("div",{}),u=ne((N,E)=>L.send({type:"set",state:N,turn:E})),d=N=>{o={...o,...N},u.ask(o)},
l=(N,E)=>{let w=[...o.shims];w[N]=E,d({shims:w.filter(Boolean),turns:0})},f=(N,E,w)=>z(N,E,{"aria-pressed":w}),p=z("Turn\
 the shaft ten times",()=>d({turns:o.turns+10})),h=f("Pull the shaft away",()=>d({side:"away"}),"true"),g=f("Push it to \
the dial",()=>d({side:"towards"}),"false"),y=St("Plunger",s.plungers,o.plunger,N=>d({plunger:N})),b=[n("div",{class:"ts-\
tools"},s.rolls?p:null,y.row,h,g)];if(!s.readingsOnly){let N=St("Shim",s.shelf,o.shims[0],w=>l(0,w)),E=s.second?St("and",
[["","no second shim"],...s.shelf],o.shims[1]??"",w=>l(1,w)):null;b.unshift(n("div",{class:"ts-tools"},N.row,E?.row)),b.
push(Ct("Warm the unit",{min:0,max:100,step:1,value:o.warmth,onInput:w=>d({warmth:w}),words:w=>w?`case ${Math.round(s.caseRise*
w/100)} K warmer`:"cold, as at the bench"}).row)}let L=st({model:t,el:e},{kind:"rig"}),T=n("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});T.innerHTML=s.section;let S=[s.readingsOnly?L.asks("How far does the shaft\
 move?",{first:s.rolls?p:g,begin:s.rolls?"turn the shaft":"push the shaft",who:"Take your readings here; write them in t\
he form."}):L.asks("Which shim gives the setting that you want?",{first:b[0].querySelector("select"),begin:"choose a shi\
m"}),L.alert,s.readingsOnly&&T,n("div",{class:"tsg-beside"},!s.readingsOnly&&T,n("div",{class:"tsg-gauge"},a.node,n("div",
{},"Dial at the shaft's right end, one mark 0.01 mm")),s.readingsOnly&&n("div",{class:"tsg-side"},...b,c)),...s.readingsOnly?
[]:[...b,c],r&&n("div",{},n("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),n("div",{class:"tsg\
-wide",tabindex:"0",role:"group","aria-label":"Axis of settings"},r.node)),i];L.show(...S.filter(Boolean));function I(){
let N=t.get("shown");u.waiting||(o=N.state),a.set(N.dial,N.dialWords),h.setAttribute("aria-pressed",String(N.state.side===
"away")),g.setAttribute("aria-pressed",String(N.state.side==="towards")),c.textContent=N.finding,r&&(r.set(N.cold,N.warm,
N.words.join(" ")),i.replaceChildren(...N.words.map(E=>n("p",{},E)))),u.answered(N.turn)}let x=()=>u.free();return L.follow(
"change:shown",I),L.follow("msg:custom",x),I(),L.close}function wn(t){return Pt(t,(e,s,o)=>{let a=n("div",{tabindex:"0",role:"group","aria-label":e.name}),r="",c=e.pickers.map(
({key:l,label:f,options:p})=>St(f,p,o[l],h=>s({[l]:h}))),i=e.sliders.map(({key:l,label:f,min:p,max:h,step:g,unit:y,places:b})=>Ct(
f,{min:p,max:h,step:g,value:o[l],words:L=>`${L.toFixed(b)} ${y}`,onInput:L=>s({[l]:L})})),u=c.map(({row:l})=>l),d=u.length>
2?u.map(l=>Bt(l)):u.length?[Bt(...u)]:[];return{asks:e.asks,first:[...c,...i][0].box,begin:c.length?"choose from the fir\
st list":"move the first slider",picture:a,controls:[...d,...i.map(({row:l})=>l)],set(l){l.drawing!==r&&(r=l.drawing,a.innerHTML=
r)}}})}function bn({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding",role:"status"}),a=n("div",{class:"tsj-band"}),
r=n("div",{class:"tsj-section"}),c=n("dl",{class:"ts-facts"}),i=null,u=null,d=(E,w)=>{u={...u,[E]:w},i===null&&l()};function l(){
i=ct("choice"),I.send({type:"choose",chosen:u,turn:i}),u=null}let f=n("div",{class:"tsj-settings"}),p=(E,w,$)=>{let m=ct(
"set");return w.id=m,f.append(n("label",{for:m},E),n("span",{class:"tsj-slide"},w,$)),w},h=(E,w,$)=>p(w,n("select",{class:"\
ts-box",onchange:m=>d(E,m.target.value)},...Mt($.map(m=>typeof m=="string"?[m,m]:m)))),g=(E,w,$)=>p(w,n("input",{type:"r\
ange",oninput:m=>d(E,Number(m.target.value))}),$),y={group:h("group","Bolt of the unit",s.groups),thread:h("thread","Thr\
ead",s.threads),strength:h("strength","Strength class",s.classes),state:h("state","State of the thread",s.states),tool:h(
"tool","Tool",s.tools)},b=n("output",{class:"tsj-figure"}),L=g("torque_nm","Torque",b),T=n("output",{class:"tsj-figure"}),
S=g("engagement_mm","Thread that meets",T),I=st({model:t,el:e},{kind:"rig"});I.show(I.asks("What gives way first?",{first:L,
begin:"set the torque"}),I.alert,o,a,n("div",{class:"tsj-bench"},f,r),c);let x=(E,w,$,m,M,j)=>{Ht(E,{min:w,max:$,step:m}),
i===null&&(E.value=String(M)),E.setAttribute("aria-valuetext",j)};function N(){let E=t.get("view");if(i!==null&&E.turn!==
i)return;i=null,u!==null&&l();let{chosen:w}=E;o.textContent=E.finding,a.innerHTML=E.band,r.innerHTML=E.section,c.replaceChildren(
...Rt(E.facts));for(let[$,m]of Object.entries(y))m.value=w[$];x(L,1,E.topTorque,.5,w.torque_nm,E.torqueText),b.textContent=
E.torqueText,x(S,E.lowEngagement,E.topEngagement,.5,w.engagement_mm,E.engagementText),T.textContent=E.engagementText}return I.
follow("change:view",N),N(),I.close}function vn({model:t,el:e}){let s=Ft(t),o=Gt(t.get("picture"),{onChoose:r=>s.show("part",[r])}),a=st({model:t,el:e},{kind:"\
rig"});return a.show(a.asks("Where does each part lie?",{first:o.choose,begin:"choose a part",who:""}),a.alert,n("p",{class:"\
ts-finding"},t.get("finding")),...s.any("part")?[Dt(o.nodes,[s.node])]:o.nodes),()=>{s.close(),a.close()}}var yn=([t,e],[s,o,a,r],c)=>t>=s-c&&t<=s+a+c&&e>=o-c&&e<=o+r+c;function kn(t,e,s){let o=s.find(c=>(e[c]??[]).some(i=>yn(
t,i,10)));if(o!==void 0)return o;let[a,r]=["",Number.POSITIVE_INFINITY];for(let[c,i]of Object.entries(e))for(let u of i){
let d=u[2]*u[3];d<r&&yn(t,u,0)&&([a,r]=[c,d])}return a}var xn=(t,e)=>t[(e===void 0?0:t.indexOf(e)+1)%t.length];function ce(t,e){return(t.find(([s])=>s===e)??t[0])[2]}function ts(t,e){return t.find(([,,s])=>e!==void 0&&s.includes(e))?.[0]}
var Qe=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function $n(t,{stages:e,stage:s,step:o,labels:a,isOpen:r}){let c=ce(e,
s),i=c.indexOf(String(o));if(t==="ArrowLeft"||t==="ArrowRight"){let d=e.map(([p])=>p),l=t==="ArrowLeft"?-1:1,f=ce(e,d[(d.
indexOf(s)+l+d.length)%d.length]);return f.find(r)??f[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let u=t.toLowerCase();return Qe(c,i).find(d=>a[d].toLowerCase().startsWith(u))}function Sn({stages:t,stage:e,step:s,isOpen:o}){
let a=ce(t,e),r=t.flatMap(([,,i])=>i),c=r.indexOf(String(a.at(-1)));return Qe(a,a.indexOf(String(s))).find(o)??Qe(r,c).find(
o)}var Mo=6;function Re(t,e,s,o){let a=Math.min(s/e[2],o/e[3],1.2),r=D("svg",{viewBox:e.join(" "),width:String(Math.round(e[2]*
a)),height:String(Math.round(e[3]*a)),class:"ts-inhand","aria-hidden":"true"});return typeof t=="string"?r.innerHTML=t:r.
replaceChildren(...t),r}function Ln(t,e){return Z(t,"[data-part]").filter(o=>e.includes(String(o.dataset.part))).filter(
o=>!o.closest(".tsu-marks")).map(o=>{let a=D("g",{});a.append(...o.cloneNode(!0).childNodes);for(let r of Z(a,"text, tit\
le, desc"))r.remove();for(let r of Z(a,"[data-solid]"))r.removeAttribute("data-solid");return a})}function es(t,{drawing:e,
held:s,begin:o=()=>{},drop:a}){let r=null,c=null,i=!1;t.classList.add("ts-carry");function u(y){let b=y?"addEventListene\
r":"removeEventListener";document[b]("pointermove",h),document[b]("pointerup",g),document[b]("pointercancel",l),document[b](
"keydown",f,!0),document[b]("selectstart",d)}function d(y){y.preventDefault()}function l(){c?.remove(),r=c=null,u(!1)}function f(y){
y.key!=="Escape"||!c||(y.preventDefault(),l())}let p=()=>e.viewBox.baseVal.width/e.getBoundingClientRect().width;function h(y){
if(!(!r||y.pointerId!==r.id)){if(!c){if(Math.hypot(y.clientX-r.x,y.clientY-r.y)<Mo)return;let b=s();if(!b)return;let L=b.
cloneNode(!0),{width:T,height:S}=b.viewBox.baseVal;L.setAttribute("width",String(T/p())),L.setAttribute("height",String(
S/p())),c=n("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},L),document.body.append(c),o()}c.style.left=`${y.clientX}\
px`,c.style.top=`${y.clientY}px`}}function g(y){if(!r||y.pointerId!==r.id)return;let b=!!c;if(l(),!b)return;i=!0;let L=e.
parentElement.getBoundingClientRect(),{clientX:T,clientY:S}=y;if(T<L.left||T>L.right||S<L.top||S>L.bottom)return;let{left:I,
top:x}=e.getBoundingClientRect();a([(T-I)*p(),(S-x)*p()])}return t.addEventListener("pointerdown",y=>{i=!1,y.button===0&&
(r={x:y.clientX,y:y.clientY,id:y.pointerId},u(!0))}),t.addEventListener("click",y=>{i&&(i=!1,y.preventDefault(),y.stopPropagation())},
!0),l}var Cn=[-4,-4,104,104];function En({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding"}),a=n("div",{class:"t\
s-happened ts-told",role:"status",tabindex:"-1","aria-label":"What happened"}),r=n("select",{class:"ts-box ts-stage-choi\
ce","aria-label":"Stage",onchange:()=>Lt()},...Mt(s.stages.map(([C,U])=>[C,U]))),c=Ft(t),i=Gt(t.get("picture"),{name:"Th\
e bench, in section",onChoose:C=>{C&&c.show("part",[C])}}),u=n("p",{class:"ts-hint ts-in-picture",role:"status"}),d=at(s.
marked?"Next open step":"Next ready step",()=>B("next"));d.classList.add("ts-next");let l=n("div",{class:"ts-buildlist",
role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this stage",onkeydown:C=>q(C)}),f=n("details",{class:"\
ts-keys"},n("summary",{},"Keys"),"Up and down walk through the steps, left and right change the stage, Enter takes a ste\
p in hand; arrow keys or the figures 1 to 9 choose its way round and where a driver presses, Enter again puts it in its \
place. With a hand: carry the drawn part, gauge or driver to its place in the section."),p=n("div",{class:"ts-hand",role:"\
group","aria-label":"Step in hand",onkeydown:C=>{mt(C)||C.key!=="Enter"||!C.target.matches("input[type=radio], .ts-numbe\
r-box")||(C.preventDefault(),t.get("hand").stands?yt():et())}}),h=n("dl",{class:"ts-facts"}),g=n("ul",{class:"ts-sentenc\
es"}),y=n("p",{class:"ts-prompt"},"Wrong so far"),b=n("select",{class:"ts-box ts-before","aria-label":"A step that stand\
s"}),L=at("Take out again",()=>{b.value&&m({type:"out",step:b.value},"hand")}),T=at("Put the tools down",()=>m({type:"ov\
er"},"told"));T.classList.add("ts-over");let S=n("div",{}),I=n("p",{class:"ts-status"}),x=n("details",{ontoggle:()=>{x.open!==
!!t.get("view").record&&m({type:"record",open:x.open})}},n("summary",{},"Build record"),S),N=n("div",{class:"ts-build"},
n("div",{class:"ts-build-left"},n("div",{class:"ts-tools"},r,d),l),n("div",{class:"ts-build-hand"},p),n("div",{class:"ts\
-build-unit"},...i.nodes,u,c.node),n("div",{class:"ts-tools ts-build-end"},n("span",{class:"ts-pair"},b,L),T)),E=st({model:t,
el:e},{kind:"rig"});E.show(E.asks("Which step comes next, and what does it need?",{first:d,begin:"press the lit button",
who:s.who}),E.alert,o,I,a,N,h,y,g,x,f);let w=0,$=null;function m(C,U=null){w+=1,$=U&&{turn:w,focus:U},e.setAttribute("ar\
ia-busy","true"),E.send({...C,turn:w})}let M="",j=null,_="next",G=C=>!t.get("view").done.includes(C),P=()=>Z(l,"[data-st\
ep]"),k=C=>P().find(U=>U.dataset.step===C)?.focus(),v=()=>({stages:s.stages,stage:r.value,step:j,isOpen:G});function B(C,U){
_=C,m(C==="list"?{type:"take",step:U}:{type:"next"},"hand")}function H(C){r.value=ts(s.stages,C)??r.value,j=C,Lt(),k(C)}
function q(C){if(It(C))return;let U=$n(C.key,{...v(),labels:s.labels});U&&(C.preventDefault(),H(U))}function ot(){let C=Sn(
v());C?_==="next"?d.focus():H(C):T.focus()}function yt(){let C=t.get("view").done.length>=Object.keys(s.labels).length;_===
"next"&&!C?B("next"):ot()}function J(C){let{done:U,ready:it}=t.get("view");return U.includes(C)?{sign:"✓",word:"done"}:
it.includes(C)?{sign:"▸",word:"ready"}:{sign:"○",word:s.marked?"open":"waits"}}function Lt(){let C=ce(s.stages,r.value);
(j===null||!C.includes(j))&&(j=C.find(G)??C[0]);let U=t.get("hand").step,it=JSON.stringify([r.value,C.map(J),U]);if(it===
M){for(let $t of P())$t.tabIndex=$t.dataset.step===j?0:-1;return}M=it;let rt=P().find($t=>$t===document.activeElement)?.
dataset.step;l.replaceChildren(...C.map($t=>W($t,U))),rt&&k(rt);let bt=P().find($t=>$t.dataset.step===(U??j));bt&&(l.scrollTop=
bt.offsetTop-l.offsetTop-bt.offsetHeight)}function W(C,U){let{sign:it,word:rt}=J(C);return n("button",{type:"button",class:`\
ts-button ts-buildstep ts-buildstep-${rt}`,"data-step":C,tabindex:C===j?"0":"-1","aria-current":C===U?"step":!1,"aria-la\
bel":`${s.labels[C]}: ${rt}`,onclick:()=>{j=C,B("list",C)}},gt(C),n("span",{},jt(it),s.labels[C]))}function Y(C,U,it){let rt=s.
tray[C];return rt?Re(Ln(i.drawing,rt.parts),rt.box,U,it):null}let V=[],ft=new Map;function gt(C){let U=ft.get(C);if(U)return U;
let it=Y(C,44,30),rt=n("span",{class:"ts-thumb"},it??"");return it&&s.tray[C].moves&&dt(rt,()=>C,()=>it),ft.set(C,rt),rt}
function dt(C,U,it){let rt=es(C,{drawing:i.drawing,held:it,begin:()=>{let bt=U();t.get("hand").step!==bt&&(j=bt,m({type:"\
take",step:bt}))},drop:bt=>{let $t=U();for(let vt of ut.values())vt.flush();let Tt=kn(bt,t.get("picture").boxes,s.tray[$t].
parts);m({type:"put",step:$t,part:Tt},"after")}});V.push(rt)}function mt(C){let U=C.target;if(It(C)||!/^[1-9]$/.test(C.key)||
!U.matches("input[type=radio]"))return!1;let it=U.closest("[data-field]"),rt=Z(it,"input[type=radio]:not(:disabled)")[Number(
C.key)-1];return C.preventDefault(),rt?.focus(),rt?.click(),!0}function A(){let C=Z(p,'[data-field^="way-"] input[type=r\
adio]');return{inputs:C,now:C.find(U=>U.checked)?.value}}function F(){let{inputs:C,now:U}=A(),it=xn(C.map(rt=>rt.value),
U);C.find(rt=>rt.value===it)?.click(),R()}let K=n("div",{class:"ts-held-frame"}),Q=n("div",{class:"ts-tool-frame"}),kt=at(
"Turn it",F,"Turn it: the other way round"),lt=n("p",{class:"ts-hint"}),nt=n("div",{class:"ts-held-box"},K,kt,Q,lt),O="";
dt(K,()=>t.get("hand").step,()=>K.querySelector("svg")),V.push(es(Q,{drawing:i.drawing,held:()=>Q.querySelector("svg"),drop:C=>m(
{type:"bear",step:t.get("hand").step,at:C},"hand")}));function R(){let{step:C,held:U,stands:it}=t.get("hand"),{inputs:rt,
now:bt}=A();kt.hidden=!rt.length;let[$t,Tt]=s.tray[C??""]?.tool??[],vt=s.tray[C??""]?.moves;if(nt.hidden=!C||it||!(vt||Tt),
lt.textContent=Tt&&$t||"",Q.hidden=!(vt&&Tt),!C||nt.hidden)return;let he=U.field&&bt||"",ge=`${C} ${he}`;if(ge===O)return;
O=ge,Tt&&Q.replaceChildren(Re(Tt,Cn,60,60));let _e=U.looks?.[he]??(Tt&&!vt?[Tt,Cn]:null);K.replaceChildren((_e?Re(_e[0],
_e[1],120,84):Y(C,120,84))??"")}let tt="",ut=new Map;function Et(C){let U=Qt(C),it=n("p",{class:"ts-read",id:U.read,role:"\
status"}),rt=0,bt=vt=>{m({type:"set",name:C.name,value:vt}),rt=w},$t=Xt(C).make(C,U,bt,()=>{}),Tt=te(C,U,null);return Tt.
append($t.element,it),Tt.dataset.field=C.name,{element:Tt,flush:()=>$t.flush?.(),show(vt={},he){if(he<rt)return;$t.show(
vt);let ge=vt.read?`read as ${vt.read}`:"";it.textContent=vt.error?`▲ Look again: ${vt.error}`:ge}}}let X=C=>n("dl",{class:"\
ts-facts"},...Rt(C));function pt(){let C=t.get("hand"),U=JSON.stringify(C);if(U===tt)return;if(tt=U,N.classList.toggle("\
ts-build-face",(C.fields??[]).some(vt=>vt.kind==="film")),p.dataset.stands=String(!!C.stands),ut=new Map((C.fields??[]).
map(vt=>[vt.name,Et(vt)])),!C.step){p.replaceChildren(n("p",{class:"ts-hint"},"No step in hand. Choose one from the list\
, or press the button above it."));return}let it=at(`Do it: ${C.label}`,et);it.classList.add("ts-do");let rt=C.stands?[at(
"Go on",yt),at("Take it out again",()=>m({type:"out",step:C.step},"hand"))]:[it],bt=[...ut.values()].map(vt=>vt.element),
$t=vt=>String(vt.dataset.field).startsWith("way-");p.replaceChildren(n("p",{class:"ts-prompt ts-hand-name",tabindex:"-1"},
C.label),n("div",{class:"ts-hand-row"},nt,n("div",{},...C.plain.map(vt=>n("p",{class:"ts-hint"},vt)),...C.cautions.map(vt=>n(
"p",{class:"ts-caution"},n("b",{},"Take care: "),vt)),...bt.filter($t),...C.card.length&&!bt.some($t)?[X(C.card)]:[])),...C.
read.length?[n("p",{class:"ts-prompt"},"Read at the bench"),X(C.read)]:[],...C.card.length&&bt.some($t)?[X(C.card)]:[],...bt.
filter(vt=>!$t(vt)),n("div",{class:"ts-tools"},...rt));let Tt=ts(s.stages,C.step);Tt&&([r.value,j]=[Tt,C.step])}function et(){
for(let C of ut.values())C.flush();m({type:"do"},"after")}function xt(){let C=t.get("view").asked_back,U=Z(p,"[data-fiel\
d]").find(bt=>bt.dataset.field===C),it=U&&Z(U,"input:not(:disabled), select, button"),rt=Z(p,".ts-field input:not(:disab\
led), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return it?.[0]??rt[0]}function _t(){let C=t.get("vi\
ew"),U=C.told;o.textContent=C.finding,I.textContent=C.status,I.hidden=!C.status,a.textContent!==U.join("")&&a.replaceChildren(
...U.map(rt=>n("p",{},rt))),pt(),Lt();for(let[rt,bt]of ut)bt.show(C.states[rt],C.turn);if(R(),pe(C),h.replaceChildren(...Rt(
C.facts)),g.replaceChildren(...Kt(C.faults.map(([,rt])=>rt))),y.hidden=g.hidden=!C.faults.length,fe(C.done),S.innerHTML=
C.record,x.open=!!C.record,e.setAttribute("aria-busy",String(C.turn<w)),!$||C.turn<$.turn)return;let{focus:it}=$;$=null,
it==="told"?a.focus():it==="after"&&!t.get("hand").step?ot():(xt()??d).focus()}let Yt="",Ut="";function pe(C){let U=JSON.
stringify(C.build);U!==Yt&&(Yt=U,i.show(C.build),u.textContent=C.build.words);let{step:it,operations:rt}=t.get("hand"),bt=C.
build.tool,$t=`${it} ${bt??""}`;if(it===void 0||$t===Ut)return;Ut=$t,c.show("operation",rt);let[Tt]=s.tray[it]?.parts??[];
bt?i.moveTo({x:bt[0],y:bt[1]}):Tt&&i.look(Tt)}function fe(C){if(b.disabled=L.disabled=!C.length,b.dataset.done===C.join(
" "))return;b.dataset.done=C.join(" ");let U=[...C].reverse();b.replaceChildren(...Mt(U.map(it=>[it,s.labels[it]])))}return E.
follow("change:view",_t),_t(),()=>{for(let C of V)C();c.close(),E.close()}}function Oo(t){let e=D("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),s=440/t.length,[o,a]=[210,128],r=ht(
o,a,o,a,"tsi-adapter"),c=D("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=ht(o,a+74,o,a+74,"tsi-arm"),u=wt(o,a+94,"");return e.
append(ht(o,a,o+440,a,"tsi-lever"),r,c,D("circle",{cx:o,cy:a,r:7,class:"tsg-hub"}),wt(o+440,a-20,"hand, middle of the gr\
ip","end"),wt(o+20,a-20,"square drive","start"),ht(o+440,a+10,o+440,a+84,"tsg-centre"),i,u,wt(8,242,"lengths to scale","\
start")),{node:e,set(d){let l=d.state.angle/180*Math.PI,f=o-d.state.reach*s*Math.cos(l),p=a-d.state.reach*s*Math.sin(l);
Ht(r,{x2:f,y2:p}),Ht(c,{cx:f,cy:p}),Ht(i,{x1:f,x2:o+440}),Ht(u,{x:(f+o+440)/2}),u.textContent="the lever from bolt to ha\
nd, along the wrench",e.setAttribute("aria-label",`${t.name}. ${d.words}`)}}}function An(t){return Pt(t,(e,s,o)=>{let a=Oo(
e),r=(i,u,d,l,f,p)=>Ct(i,{min:d,max:l,step:f,value:o[u],words:h=>`${h} ${p}`,onInput:h=>s({[u]:h})}),c={setting:r("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:r("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:r("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{asks:"What does the bolt get?",first:c.reach.box,begin:"\
lengthen the adapter",picture:a.node,controls:Object.values(c).map(i=>i.row),set(i,u){a.set(i);for(let[d,l]of Object.entries(
c))l.set(u[d])}}})}var je=t=>typeof t=="string"?t:t.text;function Mn(t,e,s){let o=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
a=r=>je(r.cells[e]??"").trim();return[...t].sort((r,c)=>{let[i,u]=[a(r),a(c)];if(!i||!u)return+!i-+!u;let[d,l]=[Number.parseFloat(
i),Number.parseFloat(u)],f=Number.isNaN(d)||Number.isNaN(l)||d===l?o.compare(i,u):d-l;return s?-f:f})}function le(t,e){let s=document.getElementById("jupyter-config-data"),o="/";try{o=JSON.parse(s?.textContent??"").baseUrl||
"/"}catch{}return`${o}${t}/${e.split("/").map(encodeURIComponent).join("/")}`}function To(t){let e="";for(let s=0;s<t.length;s+=32768)e+=String.fromCharCode(...t.subarray(s,s+32768));return btoa(e)}
async function On(t,e,s){let o=0;do{let a=new Uint8Array(await s.slice(o,o+524288).arrayBuffer()),r=o===0;o+=524288;let c=o>=
s.size;t.send({type:"file",field:e,name:s.name,data:To(a),first:r,last:c})}while(o<s.size)}var Io=400;function Tn({model:t,el:e}){let s=st({model:t,el:e},{kind:"desk"}),o=n("p",{class:"ts-said",role:"status"}),a=n(
"div",{class:"ts-desk-body"}),r=n("div",{class:"ts-desk-here","aria-hidden":"true"}),c=n("div",{class:"ts-busy"}),i=n("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),u=t.get("cohort"),d=n("input",{id:ct("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:d.value})});d.value=t.get("by"),s.show(n("div",{class:"\
ts-desk-top"},n("b",{},Wt([u.name,u.college]).join(", ")),n("span",{class:"ts-pair"},n("label",{for:d.id},"At the desk (\
your name, for the trail)"),d)),u.invented?n("p",{class:"ts-hint"},u.invented):null,i,c,s.alert,o,a);let l=new Map,f=new Map,
p=new Map,h=new Map,g=!1,y="",b="",L="",T=!1,S=null,I=()=>a.setAttribute("aria-busy",String(x())),x=()=>g||!!L||Object.keys(
t.get("busy")).length>0,N=(A,F={})=>{x()||s.isLost()||(A!=="look"&&(L=A,o.textContent="",s.alert.textContent="",m(),I()),
t.send({type:A,...F}))},E=()=>Z(e,"[data-key]"),w=A=>E().some(F=>F.dataset.key===A);function $(){let A=E().find(F=>F.dataset.
key===y);return A&&a.contains(A)?A.closest("form, section"):null}function m(){let A=$();A?A.append(c,r):(i.after(c),r.remove());
let[F,K]=[o.textContent,s.alert.textContent];r.replaceChildren(...Wt([F&&n("p",{class:"ts-told"},F),K&&n("p",{class:"ts-\
trouble"},K)]));for(let Q of[o,s.alert])Q.classList.toggle("ts-hidden",!!A);return A}function M(){let A=m(),F=[s.alert,o].
find(Q=>Q.textContent);(A?r.childElementCount?r:null:F)?.scrollIntoView({block:"nearest"})}async function j(){for(let[A,
F]of h){let[K]=F.files??[];try{K&&await On(t,A,K)}catch{return F.value="",K.name}}return""}function _(A){o.textContent="",
s.alert.textContent=A,M()}async function G(A,F,K=""){if(s.isLost())return;if(x()){T||(S=()=>w(F)&&G(A,F,K));return}y=F,b=
"",T=!0,g=!0;let Q=await j();if(g=!1,Q||x()||s.isLost()){T=!1,Q?_(`${Q} has changed or gone since it was chosen: choose \
it again.`):s.isLost()||(S=()=>w(F)&&G(A,F,K));return}let kt=[...f].map(([lt,nt])=>[lt,[...nt]]);N("do",{page:t.get("pag\
e"),act:A,of:K,typed:Object.fromEntries(l),ticked:Object.fromEntries(kt)})}function P(A){let{name:F,of:K}=A,Q=ct("field"),
kt=A.hint?n("span",{class:"ts-hint",id:`${Q}-hint`},A.hint):null,lt={id:Q,"data-key":`field:${F}`,"aria-describedby":kt?.
id},nt=n("label",{for:Q},A.label);if(!l.has(F)&&K!=="file"&&l.set(F,K==="tick"?A.value==="yes":A.value),K==="file"){let tt=h.
get(F)??n("input",{type:"file",class:"ts-file"});for(let[ut,Et]of Object.entries(lt))Et&&tt.setAttribute(ut,Et);return h.
set(F,tt),n("div",{class:"ts-desk-field"},nt,tt,kt)}if(K==="tick"){let R=n("input",{type:"checkbox",...lt});R.checked=l.
get(F)===!0,R.addEventListener("change",()=>l.set(F,R.checked));let tt=n("label",{class:"ts-option",for:Q},R,A.label);return n(
"div",{class:"ts-desk-field"},tt,kt)}let O=K==="choice"?Nt(lt,A.options):K==="long"?n("textarea",{class:"ts-box",rows:"3",
maxlength:"2000",...lt}):n("input",{class:"ts-box",autocomplete:"off",maxlength:"400",...lt});return O.value=String(l.get(
F)??""),K==="choice"&&!A.options.some(([R])=>R===l.get(F))&&(O.value=A.options[0]?.[0]??"",l.set(F,O.value)),O.addEventListener(
"input",()=>l.set(F,O.value)),n("div",{class:"ts-desk-field"},nt,O,kt)}function k(A){let F=ct("form"),K=n("div",{class:"\
ts-doing"}),Q=()=>{K.replaceChildren(...A.acts.map(nt=>z(nt.label,()=>nt.sure?kt(nt):G(nt.id,`act:${nt.id}`),{class:nt.first?
"ts-button ts-first":"ts-button","data-key":`act:${nt.id}`})))},kt=nt=>{b=nt.id;let O=ct("sure"),R=n("div",{class:"ts-qu\
estion",role:"group",tabindex:-1,"aria-labelledby":O,"data-key":`sure:${nt.id}`},n("p",{id:O},nt.sure),n("div",{class:"t\
s-doing"},z(`Yes: ${nt.label}`,()=>G(nt.id,`act:${nt.id}`),{"data-key":`act:${nt.id}`}),z("No, leave it",()=>{b="",Q(),Z(
K,`[data-key="act:${nt.id}"]`)[0]?.focus()},{"data-key":`no:${nt.id}`})));K.replaceChildren(R),R.focus()},lt=A.acts.find(
nt=>nt.sure&&nt.id===b);return lt?kt(lt):Q(),n("form",{class:"ts-desk-form","aria-labelledby":A.title?F:null,onsubmit:nt=>nt.
preventDefault()},A.title?n("h3",{id:F},A.title):null,A.hint?n("p",{class:"ts-hint"},A.hint):null,A.fields.length?n("div",
{class:"ts-desk-fields"},...A.fields.map(P)):null,A.acts.length?K:null)}function v(A,F){if(typeof A=="string")return A;let K=A.
act?z(A.text,()=>G(A.act,F,A.of),{class:"ts-cell","aria-label":A.label||null,"data-key":F}):A.text;return n("span",{},A.
shape?jt(A.shape):null,K)}function B(A){let F=ct("table"),K=n("h3",{id:F},A.title);if(!A.rows.length)return n("section",
{},K,n("p",{},A.empty));let Q=f.get(A.id)??new Set,kt=new Set(A.rows.map(({key:X})=>X));for(let X of Q)kt.has(X)||Q.delete(
X);f.set(A.id,Q);let lt=n("tr",{}),nt=n("tbody",{}),O=A.pick?n("input",{type:"checkbox","aria-label":"all","data-key":`a\
ll:${A.id}`}):null,R=()=>{O&&(O.checked=Q.size===A.rows.length,O.indeterminate=Q.size>0&&!O.checked)},tt=()=>{let X=p.get(
A.id),pt=X?Mn(A.rows,X.column,X.down):A.rows;nt.replaceChildren(...pt.map(Et)),lt.replaceChildren(...O?[n("th",{class:"t\
s-tick"},O)]:[],...A.columns.map(ut)),R()},ut=(X,pt)=>{let et=p.get(A.id),xt=et?.column===pt,_t=xt?et.down?"descending":
"ascending":null,Yt=()=>{p.set(A.id,{column:pt,down:xt&&!et.down}),tt(),Z(lt,`[data-key="${Ut}"]`)[0]?.focus()};if(!X)return n(
"td");let Ut=`sort:${A.id}:${pt}`;return n("th",{scope:"col","aria-sort":_t,class:A.numbers.includes(pt)?"ts-figure":null},
z(X,Yt,{class:"ts-sort","data-key":Ut}),xt?jt(et.down?"▼":"▲"):null)},Et=X=>{let pt=A.pick?n("input",{type:"checkbox",
"aria-label":X.cells.slice(0,3).map(je).join(" "),"data-key":`row:${A.id}:${X.key}`}):null;return pt&&(pt.checked=Q.has(
X.key),pt.addEventListener("change",()=>{pt.checked?Q.add(X.key):Q.delete(X.key),R()})),n("tr",{},pt?n("td",{class:"ts-t\
ick"},pt):null,...X.cells.map((et,xt)=>{let _t=!xt&&!!je(et);return n(_t?"th":"td",{scope:_t?"row":null,class:A.numbers.
includes(xt)?"ts-figure":null},v(et,`cell:${A.id}:${X.key}:${xt}`))}))};return O?.addEventListener("change",()=>{if(Q.clear(),
O.checked)for(let{key:X}of A.rows)Q.add(X);for(let X of Z(nt,"td.ts-tick input"))X.checked=O.checked}),tt(),n("section",
{},n("div",{class:"ts-desk-caption"},K,z("Save as CSV",()=>t.send({type:"export",table:A.id}),{"aria-label":`Save as CSV\
: ${A.title}`,"data-key":`export:${A.id}`})),n("div",{class:"ts-desk-scroll",role:"region",tabindex:0,"aria-labelledby":F},
n("table",{class:"ts-table","aria-labelledby":F},n("thead",{},lt),nt)))}function H(A){if(A.kind==="table")return B(A);if(A.
kind==="form")return k(A);if(A.kind==="link"){let F=A.how==="edit"?"lab/tree":A.how,Q={class:"ts-link",href:F?le(F,A.path):
A.path,target:"_blank"};return n("p",{},n("a",{...Q,"data-key":`link:${A.path}`},A.text))}return A.how==="head"?n("h3",{},
A.text):n("p",{class:A.how==="hint"?"ts-hint":null},A.text)}function q(A){if(!s.isLost()){if(x()){S=()=>q(A);return}y="",
N("page",{name:A})}}function ot(){let A=t.get("page");i.replaceChildren(...t.get("pages").map(([F,K])=>z(K,()=>q(F),{class:"\
ts-button","aria-current":F===A?"page":null,"data-key":`page:${F}`})))}let yt=t.get("cleared"),J=t.get("page");function Lt(){
let A=E().find(lt=>lt===document.activeElement)?.dataset.key,F=a.contains(document.activeElement),K=Z(a,".ts-desk-scroll").
map(lt=>lt.scrollTop);L="",(t.get("page")!==J||t.get("cleared")!==yt)&&(b="",l=new Map,f=new Map,h=new Map,{page:J,cleared:yt}=
{page:t.get("page"),cleared:t.get("cleared")}),o.textContent=t.get("said"),s.alert.textContent=t.get("trouble"),ot();let Q=new Map(
t.get("pages")),kt=n("h2",{tabindex:-1},Q.get(J));if(a.replaceChildren(kt,...t.get("parts").map(H)),Z(a,".ts-desk-scroll").
forEach((lt,nt)=>{lt.scrollTop=K[nt]??0}),m(),A||F){let lt=E().find(nt=>nt.dataset.key===A);(lt??kt).focus({preventScroll:!!lt})}
T&&!Object.keys(t.get("busy")).length&&(T=!1,M()),I(),W()}function W(){if(x()||!S)return;let A=S;S=null,A()}let Y;function V(){
let A=t.get("busy");if(I(),clearTimeout(Y),!Object.keys(A).length){c.replaceChildren();return}let{doing:F,done:K,of:Q}=A,
kt=Q?`${F}: ${K} of ${Q}`:`${F} …`,lt=()=>{c.replaceChildren(n("progress",Q?{max:Q,value:K,"aria-label":F}:{"aria-labe\
l":F}),n("span",{role:"status"},kt))};c.childElementCount?lt():Y=window.setTimeout(lt,Io)}s.follow("change:turn",()=>setTimeout(
Lt,0)),s.follow("change:busy",V),s.follow("change:by",()=>{d.value=t.get("by")}),s.follow("msg:custom",A=>{if(A.type==="\
trouble"&&(L="",T=!1,I(),M()),A.type!=="save")return;let F=URL.createObjectURL(new Blob([`\uFEFF${A.text}`],{type:"text/\
csv"}));n("a",{href:F,download:A.name}).click(),setTimeout(()=>URL.revokeObjectURL(F),1e3)}),Lt(),V();let ft=!0,gt=new IntersectionObserver(
([A])=>{ft=A.isIntersecting});gt.observe(e);let dt=0,mt=setInterval(()=>{let A=t.get("every");dt+=1,A&&dt>=A&&ft&&!document.
hidden&&(dt=0,N("look"))},1e3);return()=>{clearInterval(mt),clearTimeout(Y),gt.disconnect(),s.close()}}function ss(t,e=new Date){let s=new Date(t);if(Number.isNaN(s.getTime()))return"";let o=c=>String(c).padStart(2,"0"),a=`${o(
s.getHours())}:${o(s.getMinutes())}`,r=`${s.getFullYear()}-${o(s.getMonth()+1)}-${o(s.getDate())}`;return e.toDateString()===
s.toDateString()?a:`${r} ${a}`}var No="twoshaft-unsent:";function In(t,e){let s=No+e,o=()=>{if(!t||!e)return{};try{let r=JSON.parse(t.getItem(s)??"{}");
return r&&typeof r=="object"?r:{}}catch{return{}}},a=r=>{if(!(!t||!e))try{Object.keys(r).length?t.setItem(s,JSON.stringify(
r)):t.removeItem(s)}catch{}};return{get:r=>Object.hasOwn(o(),r)?o()[r]:void 0,put:(r,c,i,u=new Date)=>a({...o(),[r]:{value:c,
base:i,at:u.toISOString()}}),drop(r){let{[r]:c,...i}=o();c&&a(i)}}}function Nn(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var Jt=null,Bo="input, button, select, textarea, summary, a, [tabindex]",Bn=t=>[...t.querySelectorAll(Bo)];function Dn(t,e){
let s=({target:r})=>{r instanceof HTMLElement&&(t.contains(r)?Jt={form:e,at:Bn(t).indexOf(r),from:null}:Jt?.form===e&&t.
isConnected&&(Jt=null))},o=({target:r})=>{Jt?.form===e&&r instanceof HTMLInputElement&&(Jt.from=r.selectionStart)};return document.
addEventListener("focusin",s),document.addEventListener("pointerdown",s),t.addEventListener("input",o),requestAnimationFrame(
()=>{if(Jt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:r,from:c}=Jt,i=Bn(t)[r];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",s),document.
removeEventListener("pointerdown",s)}}var Do=["print","colour"];function de(t){for(let e of Do){let s=t?.[e];s!==void 0&&(s?document.documentElement.setAttribute(
`data-ts-${e}`,s):document.documentElement.removeAttribute(`data-ts-${e}`))}}function Pn(){de({print:"",colour:""})}function Rn(t,e,s){let o=()=>t.get("bench")??{},a=n("details",{class:"ts-bench"}),r=o().rows;if(!r)return{element:null,show(){},
hear(){},lost(){}};let c=n("span",{}),i=n("p",{class:"ts-status",role:"status"}),u=z("Use these figures",()=>p("yes")),d=z(
"Go back to the drawn figures",()=>p("no")),l=!1,f=r.map(g=>{let y=ct("bench"),b=g.options.length?n("select",{class:"ts-\
box",id:y,"aria-describedby":`${y}-read`},n("option",{value:""},"choose"),...Mt(g.options)):n("input",{type:"text",class:"\
ts-box ts-number-box",id:y,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${y}-hint ${y}-read`}),
L=n("span",{class:"ts-hint",id:`${y}-hint`},g.hint),T=n("p",{class:"ts-read",id:`${y}-read`}),S=g.text,I=()=>{b.value.trim()!==
S.trim()&&(S=b.value,e({type:"bench",name:g.name,value:b.value}))};return b.addEventListener(g.options.length?"change":"\
blur",I),b.addEventListener("keydown",x=>{x.key==="Enter"&&(x.preventDefault(),I())}),{name:g.name,flush:I,input:b,element:n(
"div",{class:"ts-bench-row"},n("label",{for:y},g.prompt),n("div",{class:"ts-line-of"},b,L),T),show(x){if(!x)return;(document.
activeElement!==b||b.value===S)&&(b.value=x.text,S=x.text),b.setAttribute("aria-invalid",String(!!x.error)),T.classList.
toggle("ts-error",!!x.error);let N=x.error?[jt("▲")," "]:[],E=x.read&&!x.options.length&&`read as ${x.read}`,w=x.error||
[E,x.origin].filter(Boolean).join(", ");T.replaceChildren(...N,w)}}}),p=g=>{for(let y of f)y.flush();l=!0,e({type:"bench",
name:"in-use",value:g})};a.append(n("summary",{},c),n("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They are used in place of the drawn figures in this task, all of them or none. Your answers are marke\
d on them by the same rules."),n("div",{class:"ts-bench-rows"},...f.map(g=>g.element)),i,n("div",{class:"ts-tools"},u,d));
function h(){let g=o(),y=new Map(g.rows?.map(S=>[S.name,S]));for(let S of f)S.show(y.get(S.name));c.textContent=g.used?"\
✓ This task uses figures from the bench":"Use readings from the bench",d.hidden=!g.wanted,u.hidden=g.used&&!g.stale;let b=g.
wanted&&!g.used?"▲ ":g.used?"● ":"○ ",L=g.used?"in use":g.wanted?`not used; the drawn figures stand. ${g.refused}`:
"not used; the drawn figures stand",T=g.stale?` The tables and choices of this task are still the ones from before. ${g.
used?"Press the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${b}${L}${T}`,
g.wanted&&!g.used&&(a.open=!0)}return{element:a,show:h,hear(g){g.type!=="bench-saved"||g.name!=="in-use"||!l||(l=!1,o().
stale&&s())},lost(){for(let g of[u,d,...f.map(y=>y.input)])g.disabled=!0}}}var Po=5e3,Ro=2e3,jo={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},ns="kept in this browser until it can be\
 saved";function Ho(t,e,s,o){let a=Xt(t),r=Qt(t),c=n("p",{class:"ts-read",id:r.read}),i=n("p",{class:"ts-status",id:r.status,
role:"status"}),u=0,d=null,l={},f=()=>{clearTimeout(d??void 0),d=null},p=S=>{s.put(t.name,S,l.revision??0),h(S)},h=S=>{u+=
1,b("wait",o()?ns:"saving"),f(),d=window.setTimeout(()=>b("wait",ns),Po),e({type:"save",name:t.name,value:S,turn:u})},g=a.
make(t,r,p,(S,I)=>{S?(s.put(t.name,I,l.revision??0),b("wait","not saved yet: press Enter or leave the box")):d===null&&(s.
drop(t.name),L(l))}),y=te(t,r,r.status);a.status==="above"?y.append(i,g.element,c):y.append(g.element,c,i);function b(S,I){
i.className=`ts-status ts-status-${S}`,i.dataset.text!==I&&(i.dataset.text=I,i.replaceChildren(jt(jo[S]),` ${I}`))}function L(S,I=!1){
if(l=S??{},g.show(l),c.replaceChildren(l.read?`read as ${l.read}`:""),!I)if(l.error){let{error:x,saved:N="",note:E}=l;b(
"unread",`Look again: ${x} Kept as typed, ${ss(N)}${E?`; ${E}`:""}.`)}else l.saved&&!l.blank?b("saved",`saved ${ss(l.saved)}${l.
note?`; ${l.note}`:""}`):b("none",a.blank??"not answered yet")}let T=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:y,show(S){d===null&&L(S,T())},saved(S){S.turn===u&&(g.pending?.()||s.drop(t.name),f(),L(S.state))},refused(S){
S.turn===u&&(f(),g.refused(),b("bad",`not saved: ${S.reason}`))},off(){clearTimeout(d??void 0),(d!==null||g.pending?.())&&
b("wait",ns)},catchUp(){let S=s.get(t.name);S&&(Nn(S,l)?(g.show({...l,value:S.value,error:""}),h(S.value)):s.drop(t.name))},
flush:()=>g.flush?.(),summary:()=>({answered:!!l.saved&&!l.blank&&!l.error&&!l.short,unread:!!l.error,trouble:T(),waiting:d!==
null})}}function jn({model:t,el:e}){let s=t.get("fields"),o=t.get("sheet"),a=In(window.localStorage,o),r=!1,c=()=>r||f.isLost(),
i=s.map(x=>Ho(x,h,a,c)),u=new Map(i.map(x=>[x.name,x])),d=n("p",{class:"ts-who"}),l=n("p",{class:"ts-total"});de(t.get("\
look"));let f=st({model:t,el:e},{kind:"form",lost(){for(let x of i)x.off();p.lost(),g()},line(x){r=x;for(let N of i)x?N.
off():N.catchUp();g()}}),p=Rn(t,f.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});f.show(n(
"div",{class:"ts-top"},d,l),f.alert,p.element,...i.map(x=>x.element)),e.dataset.task=t.get("task_id");function h(x){f.send(
x),g()}function g(){let x=i.map(_=>_.summary()),N=x.filter(_=>_.answered).length,E=x.filter(_=>_.trouble).length,w=x.some(
_=>_.waiting),$=x.filter(_=>_.unread).length,m=E?`${E} not saved`:w?c()?"the rest kept in this browser":"saving":N&&!$?"\
all saved":"",M=[`${N} of ${i.length} answered`,$?`${$} cannot be read`:"",m];l.textContent=M.filter(Boolean).join(", ");
let j={task:t.get("task_id"),answered:N,asked:i.length,unread:$};e.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:j}))}function y(){d.textContent=t.get("header");let x=t.get("states");for(let N of i)N.show(x[N.name]);g()}let b=0,
L=0,T=()=>{if(clearTimeout(L),document.visibilityState==="hidden")for(let N of i)N.flush();if(document.visibilityState!==
"visible")return;let x=b+Ro-Date.now();if(x>0){L=window.setTimeout(T,x);return}b=Date.now(),f.send({type:"look"})},S=o?new BroadcastChannel(
`twoshaft-saved:${o}`):null;S?.addEventListener("message",({data:x})=>{x===t.get("task_id")&&f.send({type:"look"})}),document.
addEventListener("visibilitychange",T),window.addEventListener("focus",T),e.addEventListener("focusin",x=>{x.relatedTarget instanceof
Node&&e.contains(x.relatedTarget)||T()}),f.follow("change:states change:header",y),f.follow("msg:custom",x=>{x.type==="s\
aved"&&(u.get(x.name)?.saved(x),S?.postMessage(t.get("task_id"))),x.type==="refused"&&u.get(x.name)?.refused(x),g()}),f.
follow("msg:custom",p.hear),f.follow("change:bench",p.show),y();for(let x of i)x.catchUp();g(),p.show(),f.alert.textContent=
t.get("notice");let I=Dn(e,`${o}/${t.get("task_id")}`);return()=>{clearTimeout(L),I(),S?.close(),f.close(),document.removeEventListener(
"visibilitychange",T),window.removeEventListener("focus",T)}}function He(t,e,s){let o=`twoshaft-signed-in:${s}`,a=`twoshaft-signed-out:${s}`;return{keep({id:r,ticket:c},i=Date.now()){
t.setItem(o,JSON.stringify({id:r,ticket:c,at:i}))},drop(r=Date.now()){t.removeItem(o),e.setItem(a,String(r))},get(){try{
let r=JSON.parse(t.getItem(o)??"null");return!r||!(r.at>Number(e.getItem(a)??0))?null:{id:String(r.id),ticket:String(r.ticket)}}catch{
return null}}}}var Wo={right:"●",other:"◆",unread:"▲"};function _o(t){let e=Qt(t),s=n("p",{class:"ts-told",id:e.status,role:"stat\
us"}),o=null,a=Xt(t).make(t,e,i=>{o=i,a.show({value:o}),c(void 0)},(i,u)=>{i&&(o=u)}),r=te(t,e,e.status);r.append(a.element,
s);function c(i){s.className=i?`ts-told ts-told-${i.how}`:"ts-told";let u=i?[jt(Wo[i.how]),n("b",{},i.said),` ${i.why}`]:
[];s.replaceChildren(...u)}return{name:t.name,element:r,value(){return a.flush?.(),o},show(i,u){i!==void 0&&(o=i,a.show(
{value:o,saved:"given"})),c(u)},still(i){a.setDisabled(i),r.classList.toggle("ts-given",i)}}}function Hn({model:t,el:e}){
let s=st({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let o=n("p",{class:"ts-title",role:"heading","aria\
-level":"3"}),a=n("p",{class:"ts-lead"}),r=n("dl",{class:"ts-facts"}),c=n("div",{class:"ts-asked"}),i=z(t.get("give"),()=>{
let y=Object.fromEntries(l.map(b=>[b.name,b.value()]));s.send({type:"give",values:y})});i.classList.add("ts-first");let u=z(
"",()=>s.send({type:"fresh"})),d=t.get("all")?z(t.get("all"),()=>s.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
s.show(s.alert,o,a,r,c,n("p",{class:"ts-acts"},i,u,d));let l=[],f=()=>{let y=t.get("values"),b=t.get("told");for(let I of l)
I.show(y[I.name],b[I.name]),I.still(b[I.name]!==void 0&&b[I.name].how!=="unread");let L=l.some(({name:I})=>!b[I]||b[I].how===
"unread"),T=document.activeElement===i;if(i.hidden=!L,u.textContent=t.get("fresh"),u.hidden=L||!t.get("fresh"),s.alert.textContent=
t.get("notice"),!T||L)return;let S=Z(e,".ts-told")[0];S.tabIndex=-1,S.focus({preventScroll:!0})},p=()=>{(Z(c,"input, sel\
ect, [tabindex]")[0]??(u.hidden?i:u)).focus({preventScroll:!0})},h=()=>{l=t.get("fields").map(_o),c.replaceChildren(...l.
map(({element:y})=>y)),o.textContent=t.get("title"),o.hidden=!o.textContent,a.textContent=t.get("lead"),a.hidden=!a.textContent,
r.replaceChildren(...Rt(t.get("facts"))),r.hidden=!r.childElementCount,f()};s.follow("change:turn",()=>{let y=e.contains(
document.activeElement);h(),y&&p()}),s.follow("change:told change:values change:notice change:fresh",f),h();let g=t.get(
"place");if(g){let y=He(sessionStorage,localStorage,g).get();t.send({type:"who",id:y?.id??"",ticket:y?.ticket??""})}return()=>s.
close()}var Wn="twoshaft-mine";var _n="This is done as soon as the connection is back.",Fo={"to get":"○",open:"◐","handed in":"●","changed since":"\
◑",feedback:"✓"},qo={"to get":"To get",open:"Open","handed in":"Handed in","changed since":"Changed after handing in",
feedback:"Marked"},We=(t,e,s)=>n("a",{href:le("lab/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":s,class:"t\
s-link"},e);function Fn(t){return n("ul",{class:"ts-gaps"},...t.map(({task:e,missing:s,asked:o,unread:a})=>n("li",{},`${e}\
: `,s===o?"nothing answered":s?`${s} of ${o} missing`:"",...a.map(([r,c])=>n("span",{},n("b",{},"cannot be read: "),`“${r}\
” ${c}`)))))}function Uo(t){let e=({name:o})=>Number(o.split("-").at(-1)),s=[...t].sort((o,a)=>e(o)-e(a)).flatMap(({notebooks:o})=>o.
map(a=>[a.split("/").pop()??"",a]));localStorage.setItem(Wn,JSON.stringify(Object.fromEntries(s))),window.dispatchEvent(
new Event("storage"))}var ue=null;function qn({model:t,el:e}){let s="",o=He(sessionStorage,localStorage,t.get("place")),
a=!1,r=(v=!0)=>{a=v,a&&ue&&(u.textContent=_n)},c=st({model:t,el:e},{kind:"start",lost:r,line:r}),i=n("div",{}),u=n("p",{
class:"ts-said",role:"status"});c.show(c.alert,u,i);let d=(v,B={})=>{i.getAttribute("aria-busy")==="true"||c.isLost()&&B.
quietly||(B.quietly||(ue={type:v,...B},i.setAttribute("aria-busy","true"),u.textContent=a?_n:"One moment.",c.alert.textContent=
""),c.isLost()||t.send({type:v,...B}))},l=()=>{let v=ue;ue=null,v&&(v.type==="sign-in"||t.get("me").id)&&d(v.type,v)},f=(v,B,H,q)=>n(
"button",{type:"button",class:q?"ts-button ts-first":"ts-button","data-key":B,onclick:H},v);function p(){let v=ct("who"),
B=ct("word"),H=n("select",{id:v,class:"ts-box","data-key":"who",required:!0},n("option",{value:""},"Choose your name"),...t.
get("people").map(([ot,yt])=>n("option",{value:ot,selected:ot===s},yt)));H.addEventListener("change",()=>{s=H.value});let q=n(
"input",{id:B,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data\
-key":"word"});return n("form",{class:"ts-sign-in",onsubmit:ot=>{ot.preventDefault(),d("sign-in",{name:H.value,word:q.value})}},
n("h2",{},"Who is working?"),n("div",{class:"ts-pair"},n("label",{for:v},"Your name"),H),n("div",{class:"ts-pair"},n("la\
bel",{for:B},"Sign-in word from your slip"),q),n("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},
"Sign in"),n("p",{class:"ts-hint"},t.get("kept")))}function h(v,B){let H=W=>`${W}:${v.name}`,q=n("div",{class:"ts-doing"});
for(let W of v.feedback.slice(0,1))q.append(n("a",{href:le("files",W),target:"_blank",class:"ts-link","data-key":H("feed\
back")},"Read feedback"));for(let W of v.notebooks){let Y=v.notebooks.length===1?"Open":`Open ${W.split("/").pop()}`;q.append(
We(W,Y,H(`open ${W}`)))}v.can_get&&q.append(f(v.notebooks.length?"Get again":"Get",H("get"),()=>d("get",{name:v.name}),!v.
notebooks.length)),v.can_hand_in&&q.append(f(v.receipt?"Hand in again":"Hand in",H("hand in"),()=>d("hand-in",{name:v.name})));
for(let W of q.children)W.setAttribute("aria-label",`${W.textContent}: ${v.title}`);let ot=t.get("asking")===v.name,yt=v.
receipt||v.unread>0,J=n("tr",{},n("th",{scope:"row"},v.title),n("td",{},v.due?n("span",{class:"ts-due","aria-hidden":"tr\
ue"},"Due "):null,v.due||"no date",v.overdue?n("span",{class:"ts-small-line"},"date passed"):null),n("td",v.receipt?{tabindex:-1,
"data-key":H("receipt")}:{},n("span",{class:"ts-shape","aria-hidden":"true"},Fo[v.state]||""),n("b",{},qo[v.state]||v.state),
n("span",{class:"ts-small-line"},v.detail),B?n("span",{class:"ts-small-line"},`Mark: ${B}`):null),n("td",{},q));if(ot)return[
J,n("tr",{},n("td",{colspan:4},y(v)))];if(!yt||!v.gaps.length)return[J];let Lt=n("td",{colspan:4},n("b",{},g(v)),Fn(v.gaps));
return[J,n("tr",{},Lt)]}let g=({left:v,unread:B})=>Wt([v?`${v} ${v===1?"answer is":"answers are"} missing`:null,B?`${B} \
cannot be read`:null]).join(", ");function y(v){let B=ct("question"),H=n("div",{class:"ts-doing"});for(let ot of v.notebooks)
H.append(We(ot,"Go on with it",`go on:${v.name}`));let q=g(v);return H.append(f(q?"It is my own work: hand in as it is":
"It is my own work: hand in",`hand in anyway:${v.name}`,()=>d("hand-in",{name:v.name,own:!0}),!q)),n("div",{class:"ts-qu\
estion",role:"group",tabindex:-1,"aria-labelledby":B,"data-key":"question"},n("p",{id:B},n("b",{},`${v.title}: not hande\
d in yet.${q?` ${q}.`:""}`),q?" An answer that is missing or cannot be read earns nothing.":null),q?Fn(v.gaps):null,n("p",
{},"By handing in you state: ",n("b",{},t.get("statement"))),H)}let b=new Set,L={met:"✓",enough:"◐","not yet":"○"};
function T(v,B){let H=v.entries.map(J=>B.find(Lt=>Lt.name===J)).filter(J=>J!==void 0),q=v.lesson?We(v.lesson,`Lesson ${v.
title}`,`lesson:${v.lesson}`):n("span",{class:"ts-small-line"},"no lesson here"),ot=n("details",{open:b.has(v.module)},n(
"summary",{"data-key":`outcomes:${v.module}`},`Outcomes: ${v.count||"none"}`),n("ul",{},...v.outcomes.map(([J,Lt,W,Y])=>n(
"li",{},n("span",{class:"ts-shape","aria-hidden":"true"},L[J]||""),n("b",{},`${J}${W&&J==="enough"?`, ${W}`:""}: `),Lt,W&&
J==="not yet"?`. Still missing: ${W}`:"",Y?` (${Y})`:""))));ot.addEventListener("toggle",()=>{ot.open?b.add(v.module):b.
delete(v.module)});let yt=H.flatMap(J=>h(J,v.marks[J.name]));return n("tbody",{},n("tr",{class:"ts-module"},n("th",{scope:"\
rowgroup",colspan:4},v.title,n("span",{class:"ts-assigned"},H.length?"assigned":"not assigned"))),...yt,n("tr",{},n("td",
{colspan:4},q,n("p",{class:"ts-next"},n("b",{},"Next: "),v.next),ot)))}function S(){let v=t.get("me"),B=t.get("entries"),
H=n("table",{class:"ts-table"},n("thead",{},n("tr",{},...["Assignment","Due","State","What you can do"].map(q=>n("th",{scope:"\
col"},q)))),...t.get("modules").map(q=>T(q,B)));return n("section",{},n("div",{class:"ts-me"},n("h2",{},`Working as ${v.
name} (${v.id})`),v.ticket?f("Not you? Sign out","sign-out",()=>{o.drop(),d("sign-out"),document.dispatchEvent(new CustomEvent(
"twoshaft-signed-out"))}):null),B.length?null:n("p",{},"Nothing is assigned yet."),H,f("Look again","look",()=>d("look")))}
function I(){let v=!!t.get("me").id,B=t.get("modules").map(ot=>ot.lesson),q=t.get("lessons").filter(([ot])=>!v||!B.includes(
ot));return q.length?n("section",{},n("h2",{},v?"To look things up":"Lessons"),n("ul",{class:"ts-lessons"},...q.map(([ot,
yt])=>n("li",{},We(ot,yt,`lesson:${ot}`))))):null}let x=!1,N=t.get("me").id?null:o.get(),E=N!==null;function w(){let v=t.
get("me");v.id?de(t.get("look")):Pn(),v.id?o.keep(v):(x||N&&!E)&&o.drop(),x=!!v.id,Uo(v.id?t.get("entries"):[])}let $=0,
m="",M=()=>Z(i,"[data-key]"),j=()=>i.querySelector("input[data-key=word]");function _(){let B=M().find(mt=>mt===document.
activeElement)?.dataset.key;i.removeAttribute("aria-busy");let H=!!t.get("me").id;u.textContent=t.get("said"),c.alert.textContent=
t.get("trouble");let q=j()?.value,ot=E?n("p",{},"One moment."):p();i.replaceChildren(...Wt([H?S():ot,I()]));let yt=j();yt&&
q&&(yt.value=q);let J=m;if(m=t.get("asking"),m&&m!==J&&M().find(mt=>mt.dataset.key==="question")?.focus(),!B||m&&m!==J)return;
let Lt=M().find(mt=>mt.dataset.key===B),W=B.split(":")[1],Y=M().filter(mt=>W&&mt.dataset.key?.endsWith(`:${W}`)),V=Y.find(
mt=>mt.dataset.key?.startsWith("receipt")),ft=Y.find(mt=>mt!==V),gt=B.startsWith("hand in anyway")?V??ft:ft,dt=Lt??gt??Z(
i,"a, button, select")[0];dt?.focus({preventScroll:!0}),u.scrollIntoView({block:"nearest"}),dt?.scrollIntoView({block:"n\
earest"})}let G=()=>{clearTimeout($),$=setTimeout(()=>{let v=E;E=!1,v||(ue=null),w(),_(),v&&l()},0)};t.on("change",G),w(),
_(),N?t.send({type:"resume",name:N.id,ticket:N.ticket}):l();let P=()=>{!document.hidden&&t.get("me").id&&d("look",{quietly:!0})},
k=new IntersectionObserver(([v])=>{v.isIntersecting&&P()});return k.observe(e),document.addEventListener("visibilitychan\
ge",P),()=>{clearTimeout($),t.off("change",G),k.disconnect(),document.removeEventListener("visibilitychange",P),c.close()}}var Ko={bench:Os,build:Bs,cord:Rs,depth:js,desk:Tn,exploded:Gs,face:Ys,fault_board:Vs,form:jn,gate:Zs,gears:Qs,hazards:tn,
lifting:en,micrometer:sn,own_checks:nn,press:on,question:Hn,rules:rn,runout:an,sealant:hn,seat:gn,shims:mn,sketch:wn,start:qn,
thread:bn,unit_section:vn,whole_build:En,wrench:An};export{Ko as screens};
