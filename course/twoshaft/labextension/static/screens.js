var Vn="http://www.w3.org/2000/svg";function n(t,e={},...s){let o=document.createElement(t);for(let[a,r]of Object.entries(
e))typeof r=="function"?o.addEventListener(a.slice(2),r):r===!0?o.setAttribute(a,""):r!==!1&&r!=null&&o.setAttribute(a,String(
r));return o.append(..._t(s)),o}function P(t,e={},...s){let o=document.createElementNS(Vn,t);return Wt(o,e),o.append(...s),
o}function Wt(t,e){for(let[s,o]of Object.entries(e))o!=null&&t.setAttribute(s,String(o))}function G(t,e,s={}){return n("\
button",{type:"button",class:"ts-button",onclick:e,...s},t)}function Tt(t,e){return n("select",{class:"ts-box",...t},...At(
e))}function jt(t){return t.flatMap(([e,s])=>[n("dt",{},e),n("dd",{},s)])}function Ht(t){return n("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function _t(t){return t.filter(e=>e!=null&&e!==!1)}var cs=0;function dt(t){return cs+=1,`two\
shaft-${t}-${cs}-${Math.random().toString(36).slice(2,7)}`}function Qt(t,e){let s=t.querySelector(e);if(!s)throw new Error(
`nothing matches ${e}`);return s}function Z(t,e){return[...t.querySelectorAll(e)]}function Et(t,e){let{target:s}=t;return s instanceof
Element?s.closest(e):null}function Ot(t){return t.ctrlKey||t.metaKey||t.altKey}function ve(t){let e=Z(t,"button, input, \
select");for(let s of e)s.disabled=!0}function ls(t){for(let e=t.parentElement;e;e=e.parentElement){let s=getComputedStyle(
e).overflowY;if((s==="auto"||s==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function ye(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function at(t,e,s=t){return G(t,e,{"aria-label":s})}
function At(t){return[...t].map(([e,s])=>n("option",{value:e},s))}function Kt(t){return t.map(e=>n("li",{},e))}var Pt=(t,e,s="")=>n(
"div",{class:`ts-beside ${s&&`ts-beside-${s}`}`},n("div",{},..._t(t)),n("div",{},..._t(e)));var ze=new Map;function Mt(t,e){if(ze.has(t))throw new Error(`the answer kind ${t} is registered twice`);ze.set(t,e)}function Vt(t){
let e=ze.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function te(t){let e=dt(
t.kind);return{prompt:`${e}-prompt`,control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function ee(t,e,s){
let{prompt:o}=Vt(t),a={class:"ts-prompt",id:e.prompt};if(o==="legend")return n("fieldset",{class:"ts-field","aria-descri\
bedby":s},n("legend",a,t.prompt));let r=o==="label"?n("label",{...a,for:e.control},t.prompt):n("p",a,t.prompt);return n(
"div",{class:"ts-field"},r)}function ke(t,e,s,o){let r=t.options.map(([c,i])=>{let u=n("input",{type:s,name:e.control,value:c});return{key:c,input:u,
row:n("label",{class:"ts-option"},u,n("span",{},i))}});for(let{input:c}of r)c.addEventListener("change",()=>{o(r.filter(
i=>i.input.checked).map(({key:i})=>i))});return{element:n("div",{class:"ts-options"},...r.map(({row:c})=>c)),show(c){let i=c.
value==null?[]:[c.value].flat();for(let{key:u,input:d}of r)d.checked=i.includes(u)},setDisabled(c){for(let{input:i}of r)
i.disabled=c},refused(){}}}Mt("choice",{prompt:"legend",make:(t,e,s)=>ke(t,e,"radio",o=>s(o[0]))});Mt("choices",{prompt:"legend",make:(t,e,s)=>ke(t,e,"checkbox",s)});function xe(t){return t.filter(([,e])=>e).map(([e,s])=>`${e}=${s}`)}function $e(t){let e=Array.isArray(t)?t.filter(s=>typeof s==
"string"):[];return new Map(e.filter(s=>s.includes("=")).map(s=>[s.slice(0,s.indexOf("=")),s.slice(s.indexOf("=")+1)]))}Mt("each",{prompt:"legend",make(t,e,s){let o=t.lines,a=t.options,r=o.map(([c,i],u)=>{let d=`${e.control}-${u}`,l=n("labe\
l",{class:"ts-each-line",for:d},i),f=Tt({id:d},[["","choose"],...a]);return{key:c,box:f,row:n("li",{},l,f)}});for(let{box:c}of r)
c.addEventListener("change",()=>{s(xe(r.map(({key:i,box:u})=>[i,u.value])))});return{element:n("ol",{class:"ts-each"},...r.
map(({row:c})=>c)),show(c){let i=$e(c.value);for(let{key:u,box:d}of r)d.value=i.get(u)??""},setDisabled(c){for(let{box:i}of r)
i.disabled=c},refused(){}}}});function Ge(t){let[e="",...s]=t.split(" "),o=e==="wipe"?0:Number(s.shift()),[a="",...r]=s;if(a!=="at")return{hand:e,size:o,
side:a,place:r[0],points:null};let c=r.map(i=>{let[u,d]=i.split(",").map(Number);return[u,d]});return{hand:e,size:o,side:a,
place:"",points:c}}function Ye(t,{side:e,place:s,points:o}){return o||(e==="round"?t.holes.find(a=>a.id===s)?.ring??[]:t.
stretches.find(a=>a.id===s)?.lines[e]??[])}function Xe(t,e){let{hand:s,size:o,side:a,place:r}=Ge(e),c=[...t.stretches,...t.
holes].find(u=>u.id===r),i=s==="wipe"?"":` ${o} mm`;return`${t.hands[s]??s}${i}${c?`, ${c.name}`:""}, ${t.sides[a]??""}`}
function Ve(t,e,s){return e==="film"?t.width:e==="bead"?s:e==="wipe"?2*t.width:1}function ds(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),s=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return s?Number(s[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function us(t){let e=0;for(let s=1;s<t.length;s+=1)e+=Math.hypot(t[s][0]-t[s-1][0],t[s][1]-
t[s-1][1]);return e}function ps(t,[e,s]){return t.stretches.map(({id:a,lines:r})=>({id:a,away:Math.min(...r.middle.map(([
c,i])=>Math.hypot(c-e,i-s)))})).reduce((a,r)=>r.away<a.away?r:a).id}var Jn=.4;function fs(t,e){let s=Jn,o=Se(t,s);for(;o.
length>e;)s*=1.5,o=Se(t,s);return o.map(([a,r])=>[Math.round(a*10)/10,Math.round(r*10)/10])}function Se(t,e){if(t.length<
3)return t;let[s,o]=[t[0],t[t.length-1]],a=0,r=0;for(let c=1;c<t.length-1;c+=1){let i=Zn(s,o,t[c]);i>a&&([a,r]=[i,c])}return a<=
e?[s,o]:[...Se(t.slice(0,r+1),e).slice(0,-1),...Se(t.slice(r),e)]}function Zn(t,e,s){let[o,a]=[e[0]-t[0],e[1]-t[1]],r=Math.
hypot(o,a)||1;return Math.abs(o*(s[1]-t[1])-a*(s[0]-t[0]))/r}var Le=14,Qn=3,to=.5,eo=12,so=["middle","inside","outside"],Ce="round ";function no(t){let e=[];for(let s of t.split(" ")){
let o=e[e.length-1];o!==void 0&&o.length+s.length<eo?e[e.length-1]=`${o} ${s}`:e.push(s)}return e}function oo(t,e){let s=t.
outline.map(([W])=>W),o=t.outline.map(([,W])=>W),[a,r]=[Math.min(...s)-Le,Math.max(...s)+Le],[c,i]=[Math.min(...o)-Le,Math.
max(...o)+Le],u=r-a,d=i-c,l=([W,Y])=>`${(W-a).toFixed(1)} ${(i-Y).toFixed(1)}`,f=(W,Y)=>`M${W.map(l).join("L")}${Y?"Z":""}`,
p=dt("face"),h=u/100,m=2.5*h,L=`font-size: calc(${m.toFixed(2)}px * var(--ts-grown, 1))`,b=2*h,M=(W,Y)=>P("pattern",{id:`${p}\
-${W}`,width:b,height:b,patternUnits:"userSpaceOnUse"},P("path",{d:Y,class:"tsp-hatch","stroke-width":h/4})),A=P("defs",
{},M("oil",`M0 ${b}L${b} 0`),M("dirt",`M0 ${b}L${b} 0M0 0L${b} ${b}`)),$=t.cavities.map(([,W])=>f(W,!0)).join(""),T=t.islands.
map(W=>f(W,!0)).join(""),y=f(t.outline,!0)+$,N=P("g"),C=P("g"),v=P("g"),S=P("g"),g=P("path",{class:"tsp-live",d:""}),x=P(
"path",{class:"tsp-chosen",d:""}),j=P("path",{class:"tsp-land",d:y,"fill-rule":"evenodd"}),_=P("path",{class:"tsp-edge",
d:y+T,"stroke-width":h/2.5}),z=([W,Y],J,ht="middle")=>{let gt={x:W-a,y:i-Y,style:L,"text-anchor":ht};return P("text",{class:"\
tsp-text",...gt},J)},D=[(a+r)/2,(c+i)/2],k=(W,Y)=>{let J=ye(W,D)||1;return[W[0]+Y*(D[0]-W[0])/J,W[1]+Y*(D[1]-W[1])/J]};for(let{
x:W,y:Y,d:J,leads:ht,name:gt}of t.holes){let ut={cx:W-a,cy:i-Y,"stroke-width":h/4},pt=ht==="blind"?"tsp-hole tsp-blind":
"tsp-hole";v.append(P("circle",{...ut,r:J/2,class:pt})),ht==="to the outside"&&v.append(P("circle",{...ut,r:J/3,class:"t\
sp-hole"}));let[O,F]=k([W,Y],-(J/2+4.4*h));v.append(z([O,F],gt.replace("bolt ","")))}for(let W of t.guides){let[Y,J]=[W.
x-a,i-W.y],ht=`M${Y-h} ${J}h${b}M${Y} ${J-h}v${b}`;v.append(P("path",{class:"tsp-guide",d:ht,"stroke-width":h/2}));let gt={
"stroke-width":h/5,"stroke-dasharray":`${h} ${h}`};v.append(P("circle",{cx:Y,cy:J,r:W.reach,class:"tsp-reach",...gt}));let ut=k(
[W.x,W.y],W.reach+b),pt=(ut[0]-W.x)/(W.reach+b),O=pt>.5?"start":pt<-.5?"end":"middle",F=no(W.name),K=z(ut,"",O),et=(1-F.
length)/2;K.append(...F.map((xt,lt)=>P("tspan",{x:ut[0]-a,dy:`${lt?1:et}em`},`${xt} `))),v.append(K)}for(let{word:W,points:Y,
width:J}of t.spots){let[ht]=W.split(" "),[gt,ut]=[Y[0],Y[Y.length-1]],pt=ye(gt,ut)||1,[O,F]=[-(ut[1]-gt[1])/pt*J/2,(ut[0]-
gt[0])/pt*J/2],K=[[gt[0]+O,gt[1]+F],[ut[0]+O,ut[1]+F],[ut[0]-O,ut[1]-F],[gt[0]-O,gt[1]-F]],et=`url(#${p}-${ht})`;N.append(
P("path",{d:f(K,!0),fill:et,class:"tsp-spot","stroke-width":h/4}));let xt=z(k([(gt[0]+ut[0])/2,(gt[1]+ut[1])/2],9*h),ht);
xt.classList.add("tsp-spot-word"),v.append(xt)}let w=[100,50,20,10].find(W=>W<u/4)??10,B=`M${h} ${d-h}v${-h}v${h/2}h${w}\
v${-h/2}v${h}`,H={x:w+b,y:d-1.8*h,style:L};S.append(P("path",{class:"tsp-edge",d:B,"stroke-width":h/4}),P("text",{class:"\
tsp-text",...H},`${w} mm`));let q=`0 0 ${u.toFixed(1)} ${d.toFixed(1)}`,rt=P("svg",{viewBox:q,class:"tsp-face",role:"img",
"aria-label":e},A,j,N,C,_,v,x,g,S);rt.dataset.letters=m.toFixed(2),rt.dataset.grow="2.5";let kt=`max-width: ${(25*u/d).toFixed(
1)}rem`;return{frame:n("div",{class:"ts-pad-face",style:kt},rt),svg:rt,over:S,live:g,chosen:x,land:j,path:f,unit:h,box:{
left:a,right:r,low:c,high:i,width:u,height:d},place({clientX:W,clientY:Y}){let J=rt.getBoundingClientRect(),ht=Math.min(
J.width/u,J.height/d);return[a+(W-J.left-(J.width-ht*u)/2)/ht,i-(Y-J.top-(J.height-ht*d)/2)/ht]},strokes(W){C.replaceChildren(
...W.map(St))}};function St(W){let Y=Ge(W),J=Ye(t,Y),ht=Ve(t,Y.hand,Math.max(Y.size,h/2)),gt=J.length>1?f(J,Y.side==="ro\
und"):J.length?`${f(J)}h0.01`:"",ut=P("path",{d:gt,class:`tsp-stroke tsp-${Y.hand}`,"stroke-width":ht});if(Y.hand!=="fil\
m")return ut;let pt=Math.min(8,Math.max(.6,40*Y.size)),O={"stroke-width":h/3,"stroke-dasharray":`${pt} ${pt}`};return P(
"g",{},ut,P("path",{d:gt,class:"tsp-grain",...O}))}}function Ee({face:t,label:e,onLay:s,onRemove:o,onClear:a}){let r=oo(
t,e),c=n("p",{class:"ts-hidden","aria-live":"polite"}),i=n("p",{class:"ts-read ts-pad-trouble",role:"status"}),u=(k,w)=>n(
"span",{class:"ts-pair"},n("label",{for:w.id},k),w),d=Tt({id:dt("hand")},Object.entries(t.hands)),l=n("input",{class:"ts\
-box ts-size",id:dt("size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),f=n("label",{for:l.id},"\
thickness"),p=Tt({id:dt("place")},t.stretches.map(({id:k,name:w})=>[k,w]));p.append(n("optgroup",{label:"Round a hole"},
...t.holes.map(({id:k,name:w})=>n("option",{value:`${Ce}${k}`},`round ${w}`))));let h=Tt({id:dt("side")},so.map(k=>[k,t.
sides[k]])),m=G("Lay it here",()=>C([N(p.value)])),L=G("Lay it on every stretch",()=>C(t.stretches.map(({id:k})=>N(k)))),
b=G("Take back the last pass",()=>{$&&o($-1,!0)}),M=G("Clear the face",a),A={film:"",bead:""},$=0,T=!1;function y(){if(d.
value==="wipe")return"";let[k,w]=t.sizes[d.value],B=ds(l.value);if(B>=k&&B<=w)return l.removeAttribute("aria-invalid"),`\
 ${Number(B.toFixed(3))}`;let H=d.value==="film"?"the thickness of the film":"the diameter of the bead";return i.textContent=
l.value.trim()?`Read “${l.value}”: give ${H} from ${k} to ${w} mm.`:`First give ${H} in mm.`,l.setAttribute("aria-in\
valid","true"),l.focus(),null}function N(k){let w=y();if(w===null)return null;let B=k.startsWith(Ce)?k:`${h.value} ${k}`;
return`${d.value}${w} ${B}`}function C(k){let w=k.filter(B=>B!==null);if(!(T||w.length<k.length)){if($+w.length>t.most){
i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent="",c.textContent=w.length===
1?`Laid: ${Xe(t,w[0])}`:`Laid on ${w.length} stretches`,s(w)}}function v(){let k=d.value==="wipe";f.textContent=d.value===
"bead"?"diameter":"thickness",l.disabled=T||k,l.value=k?"":A[d.value],l.placeholder=k?"":"mm",m.textContent=k?"Wipe here":
"Lay it here",L.textContent=k?"Wipe every stretch":"Lay it on every stretch",i.textContent="",S()}function S(){let k=p.value.
startsWith(Ce);h.disabled=T||k;let w=Ye(t,k?{side:"round",place:p.value.slice(Ce.length)}:{side:h.value,place:p.value});
r.chosen.setAttribute("d",w.length?r.path(w,k):""),r.chosen.setAttribute("stroke-width",String(r.unit/2))}d.addEventListener(
"change",v),l.addEventListener("input",()=>{A[d.value]=l.value}),p.addEventListener("change",S),h.addEventListener("chan\
ge",S),l.addEventListener("keydown",k=>{k.key==="Enter"&&(k.preventDefault(),m.click())});let g=null;r.svg.addEventListener(
"pointerdown",k=>{if(T||k.button>0)return;g=[r.place(k)],r.svg.setPointerCapture(k.pointerId);let w=Math.max(1,Number(A.
bead.replace(",","."))||1);r.live.setAttribute("stroke-width",String(Ve(t,d.value,w)))}),r.svg.addEventListener("pointer\
move",k=>{if(!g)return;let w=r.place(k);ye(w,g[g.length-1])<to||(g.push(w),r.live.setAttribute("d",r.path(g)))});let x=k=>{
if(!g)return;let w=g;if(g=null,r.live.setAttribute("d",""),k.type==="pointercancel")return;if(us(w)<Qn){p.value=ps(t,w[0]),
S();return}let B=y();if(B===null)return;let H=fs(w,t.points).map(q=>q.join(","));C([`${d.value}${B} at ${H.join(" ")}`])};
r.svg.addEventListener("pointerup",x),r.svg.addEventListener("pointercancel",x);let j=n("ol",{class:"ts-passes","aria-la\
bel":"Passes, in the order they were done"}),_=n("p",{class:"ts-hint"},"Nothing is laid yet."),z=n("div",{class:"ts-pad-\
tools"},n("div",{class:"ts-tools"},u("tool",d),n("span",{class:"ts-pair"},f,l)),n("div",{class:"ts-tools"},u("where",p),
u("runs",h)),n("div",{class:"ts-tools"},m,L,b,M),i,c),D=()=>Z(j,"button");return v(),{drawing:r,tools:z,list:j,empty:_,frame:r.
frame,element:n("div",{class:"ts-pad"},r.frame,z,n("div",{class:"ts-pad-list"},_,j)),show(k,w=[]){$=k.length,r.strokes(k),
_.hidden=$>0;let B=D().findIndex(H=>H.matches(":focus"));j.replaceChildren(...k.map((H,q)=>n("li",{},n("span",{},`${Xe(t,
H)}${w[q]?`, ${w[q]}`:""} `),G("take out",()=>o(q,!1),{class:"ts-button ts-remove",disabled:T,"aria-label":`Take out pas\
s ${q+1}`})))),B>=0&&(D()[Math.min(B,$-1)]??m).focus()},setDisabled(k){T=k;for(let w of[d,p,m,L,b,M,...D()])w.disabled=k;
l.disabled=k||d.value==="wipe",S()}}}Mt("film",{prompt:"words",make(t,e,s){let o=[],a=c=>{o=c,r.show(o),s(o)},r=Ee({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>a([...o,...c]),onRemove:c=>a(o.filter((i,u)=>u!==c)),onClear:()=>a([])});
return{element:r.element,show(c){o=[c.value??[]].flat().filter(i=>typeof i=="string"),r.show(o)},setDisabled:r.setDisabled,
refused(){}}}});function hs(t,{send:e,typing:s,said:o=r=>String(r??""),wrong:a=r=>!!r.error}){let r=n("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||r.value.trim()!==c.trim(),u=()=>{i()&&(c=r.value,e(r.value))};return r.
addEventListener("blur",u),r.addEventListener("keydown",d=>{let l=(d.ctrlKey||d.metaKey)&&d.key.toLowerCase()==="s";d.key!==
"Enter"&&!l||(d.preventDefault(),u())}),r.addEventListener("input",()=>s(i(),r.value)),{box:r,flush:u,pending:i,refused(){
c=null},show(d){r.setAttribute("aria-invalid",String(a(d))),!(document.activeElement===r&&r.value!==c)&&(c=o(d.value),r.
value=c)}}}function gs(t,e){let[s,o,a]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(a)?s:o).
trim()} ${e}`.trim()}function ms(t,e,s,o){let a=Tt({"aria-label":"Choose the unit","aria-describedby":o},[["","unit"],...e.map(r=>[r,r])]);return a.
addEventListener("change",()=>{a.value&&(t.value=gs(t.value,a.value),/\d/.test(t.value)?s():t.focus())}),t.addEventListener(
"input",()=>{a.value=""}),a}Mt("number",{prompt:"label",make(t,e,s,o){let a=t.units,{box:r,flush:c,pending:i,refused:u,show:d}=hs(e,{send:s,typing:o}),
l=n("span",{class:"ts-hint",id:e.hint},t.hint),f=a.length?ms(r,a,c,e.prompt):null;return{element:n("div",{class:"ts-line\
-of"},r,f,l),show:d,setDisabled(p){r.disabled=p,f&&(f.disabled=p)},refused:u,flush:c,pending:i}}});function bs(t,e){let o=[...new Set([t??[]].flat())].filter(a=>e.includes(String(a))).map(String);return[...o,...e.filter(
a=>!o.includes(a))]}var se=(t,e)=>t.join(`
`)===e.join(`
`),ws=t=>`#${t.keys[0]}`,Ae=class{constructor(e,s){this.labels=new Map(e.map(([o,a])=>[o,a])),this.stages=new Map;for(let[
o,,a]of e)a&&this.stages.set(o,a);this.staged=this.stages.size>0,this.order=[...s],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let s of this.order){let o=this.stages.get(s)??null,a=e.at(-1);a&&o!==null&&a.stage===o?a.keys.push(s):e.push({stage:o,
keys:[s]})}return e}rows(){if(!this.staged)return this.order.map(s=>({id:s,key:s,level:1}));let e=[];for(let s of this.runs()){
let[o]=s.keys;if(s.keys.length<2){e.push({id:o,key:o,level:1});continue}if(e.push({id:ws(s),run:s,level:1}),!this.closed.
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
{target:String(o.at(-1)),side:"after"}:{target:o[0],side:"before"}}take(e){if(se(e,this.order))return!1;let s=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,s){let[o]=s.keys,a=this.rows().find(r=>r.run?.
keys.includes(o));this.current=a?a.id:o}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,s){let o=e.pop();return o?(s.push(this.order),this.order=
o,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||se(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,s){this.order=[...e],s&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let s=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((o,a)=>o-a);s[0]>=0&&(this.block=new Set(this.order.slice(s[0],s[1]+1)))}fold(e,s){
let o=e.run?e.run.stage:this.stages.get(e.key),a=e.run?e.run.keys[0]:e.key,r=this.runs().find(c=>c.keys.includes(a));return!o||
!r||r.keys.length<2?null:(s?this.closed.add(o):this.closed.delete(o),s&&(this.current=ws(r)),o)}sought(e){let s=this.rows(),
o=s.findIndex(c=>c.id===this.current),a=e.length>1?o:o+1,r=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...s.slice(a),...s.slice(0,a)].find(c=>r(c).startsWith(e))}};var ro=12,ao=700,io=5,vs=32,co=8;function Me({label:t,steps:e,order:s,onChange:o,onChoose:a}){let r=new Ae(e,s),{staged:c}=r,
i=!1,u={},d=!1,l=new Map,f=n("div",{"aria-live":"assertive",class:"ts-hidden"}),p=n("ul",{role:c?"tree":"listbox","aria-\
label":t,"aria-multiselectable":"true",class:"ts-steps"}),h=G("Up",()=>q(-1),{"aria-label":"Move the chosen step up"}),m=G(
"Down",()=>q(1),{"aria-label":"Move the chosen step down"}),L=G("Undo",()=>r.undo()&&V("Undone")),b=G("Redo",()=>r.redo()&&
V("Done again")),M=G("Choose several",()=>ht(!i),{"aria-pressed":"false"}),A=G("Gather stages",()=>H(r.gathered(),"Steps\
 of one stage now stand together")),$=n("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"M\
ove the chosen step to position",onkeydown:I=>{I.key==="Enter"&&rt()}}),T=n("select",{class:"ts-box ts-before","aria-lab\
el":"Move the chosen step before"}),y=n("span",{class:"ts-chosen"}),N=G("Move",rt,{"aria-label":"Move to this position"}),
C=G("Move",kt,{"aria-label":"Move before this step"}),v=n("div",{class:"ts-tools",role:"group","aria-label":"Move the ch\
osen step"},h,m,L,b,M,c?A:null),S=n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"To position ",$,N),n("span",{class:"\
ts-pair"},"or before ",T,C)),g="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(c?" Left closes a stage, Right opens it.":""),x=n(
"details",{class:"ts-keys"},n("summary",{},"Keys, and long moves"),n("p",{},g),S),j=n("div",{class:"ts-order"},n("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),v,y,p,x,f);function _(I){f.
textContent=I}function z(I=""){_(`${r.unitName()}${I}, ${r.where()}`)}function D(I){let R=l.get(I.id);if(R)return R;let tt=n(
"li",{role:c?"treeitem":"option",class:"ts-step"});return tt.dataset.row=I.id,l.set(I.id,tt),tt}function k(I=!1){let R=r.
settle(),tt=new Set(R.map(nt=>nt.id));for(let[nt,bt]of l)tt.has(nt)||(bt.remove(),l.delete(nt));let mt=r.unit(),Lt=new Set(
mt),X=p.firstElementChild;for(let nt of R){let bt=D(nt);bt===X?X=X.nextElementSibling:p.insertBefore(bt,X),w(bt,nt,Lt)}$.
value=String(r.order.indexOf(mt[0])+1);let it=[...r.order.entries()].filter(([,nt])=>!Lt.has(nt));T.replaceChildren(...it.
map(([nt,bt])=>n("option",{value:bt},`${nt+1}  ${r.label(bt)}`))),y.textContent=`Chosen: ${r.unitName()}, ${r.where()}`,
a?.(mt),h.disabled=d||r.isFirst,m.disabled=d||r.isLast,L.disabled=d||r.past.length===0,b.disabled=d||r.future.length===0;
for(let nt of[M,A,$,T,N,C])nt.disabled=d;if(p.setAttribute("aria-disabled",String(d)),p.classList.toggle("ts-long",r.order.
length>ro),I){let nt=l.get(r.current);nt?.focus({preventScroll:!0}),nt?.scrollIntoView({block:"nearest"})}}function w(I,R,tt){
let mt=R.id===r.current,Lt=R.run?!1:r.block.has(R.key),X=r.held!==null&&(R.run?mt:tt.has(R.key)),it=r.order.indexOf(R.run?
R.run.keys[0]:R.key),nt=R.run?R.run.keys.map(Dt=>u[Dt]?.length??0):u[R.key],bt=R.run?r.closed.has(String(R.run.stage)):!1,
qt=JSON.stringify([it,R.level,mt,Lt,X,nt,R.run&&[R.run.keys.length,bt]]);if(I.dataset.looks===qt)return;I.dataset.looks=
qt,I.tabIndex=mt?0:-1,I.setAttribute("aria-selected",String(Lt)),I.classList.toggle("ts-current",mt),I.classList.toggle(
"ts-inblock",Lt),I.classList.toggle("ts-held",X),I.classList.toggle("ts-level2",R.level===2),c&&I.setAttribute("aria-lev\
el",String(R.level));let Yt=X?" picked up":Lt?" in block":"",Xt=Yt?n("span",{class:"ts-state"},Yt):"",ae=Dt=>n("span",{class:"\
ts-number","aria-hidden":"true"},Dt);if(R.run){let{keys:Dt,stage:Ue}=R.run;I.setAttribute("aria-expanded",String(!bt));let me=bt?
Dt.filter(E=>u[E]?.length).length:0;I.replaceChildren(ae(`${it+1}–${it+Dt.length}`),n("span",{class:"ts-fold","aria-hi\
dden":"true"},bt?"▸":"▾"),n("span",{class:"ts-what"},n("b",{},Ue),` ${Dt.length} steps`,me?` – ${me} with a remark`:
"",Xt));return}let ie=(u[R.key]??[]).map(Dt=>n("span",{class:`ts-note ts-note-${Dt.kind}`},Ht(Dt.shape??""),n("b",{},Dt.
word),` ${Dt.text}`)),ge=c&&R.level===1;I.classList.toggle("ts-troubled",ie.length>0),I.replaceChildren(ae(String(it+1)),
n("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),n("span",{class:"ts-what"},r.label(R.key),ge?n("span",{class:"ts-\
stage"},` ${r.stages.get(R.key)??""}`):"",Xt,...ie))}let B=()=>o([...r.order]);function H(I,R){if(!r.take(I)){_(`${r.unitName()}\
 stays at ${r.where()}`);return}k(!0),R?_(R):z(),r.held===null&&B()}function q(I){d||H(r.shifted(I))}function rt(){if(d)
return;let I=Number.parseInt($.value,10),R=r.order.length;I>=1&&I<=R?H(r.atPosition(I)):(_(`Type a position from 1 to ${R}`),
y.textContent=`Type a position from 1 to ${R}.`)}function kt(){!d&&T.value&&H(r.beside(T.value,"before"))}function V(I){
k(),_(`${I}. ${r.unitName()}, ${r.where()}`),B()}function St(){r.pickUp(),k(!0),z(" picked up")}function W(){r.putDown()&&
B(),k(!0),z(" put down")}function Y(){r.putDown()&&B(),k()}function J(){r.putBack(),k(!0),z(" put back")}function ht(I){
i=I,M.setAttribute("aria-pressed",String(I)),I||(r.block=new Set),k(),_(I?"Choose the steps of a block":"Block let go")}
function gt(I){r.toggleBlock(I);let R=r.block.has(I)?"in the block":"out of the block";_(`${r.label(I)} ${R}, ${r.block.
size} in it`)}function ut(I,R){let tt=r.fold(I,R);tt&&(k(!0),_(`${tt} ${R?"closed":"open"}`))}p.addEventListener("keydow\
n",I=>{if(Ot(I))return;let R=r.rows(),tt=R.findIndex(bt=>bt.id===r.current),mt=bt=>{r.current=R[Math.max(0,Math.min(R.length-
1,bt))].id,k(!0)},Lt=R[tt],{key:X}=I,it=X==="ArrowUp"?-1:X==="ArrowDown"?1:null,nt=r.held!==null;if(it&&(I.shiftKey||nt))
q(it);else if(it)mt(tt+it);else if(nt&&X==="Escape")J();else if(X===" ")d||(nt?W:St)();else if(nt&&X==="Enter")W();else if(X===
"Enter"&&!Lt.run)d||(gt(Lt.key),k(!0));else if(X==="Home"&&!nt)mt(0);else if(X==="End"&&!nt)mt(R.length-1);else if(c&&X===
"ArrowLeft")ut(Lt,!0);else if(c&&X==="ArrowRight")ut(Lt,!1);else if(X.length===1&&!nt)F(X);else return;I.preventDefault()});
let pt="",O;function F(I){pt+=I.toLowerCase(),clearTimeout(O),O=window.setTimeout(()=>{pt=""},ao);let R=r.sought(pt);R&&
(r.current=R.id,k(!0))}p.addEventListener("focusout",({relatedTarget:I})=>{r.held!==null&&I instanceof Node&&!p.contains(
I)&&Y()});let K=null;p.addEventListener("pointerdown",I=>{let R=r.row(Et(I,".ts-step")?.dataset.row??"");if(!R||I.button!==
0)return;if(R.run&&Et(I,".ts-fold")){ut(R,!r.closed.has(String(R.run.stage))),I.preventDefault();return}let tt=Et(I,".ts\
-grip, .ts-number"),mt=I.ctrlKey||I.metaKey;r.held!==null&&Y(),!R.run&&!d&&(I.shiftKey?r.blockTo(R.key):(mt||i)&&!tt&&gt(
R.key)),r.current=R.id,k(!0),I.preventDefault(),!(d||I.shiftKey||mt)&&(I.pointerType!=="mouse"&&!tt||(K={x:I.clientX,y:I.
clientY,id:I.pointerId,carried:null},p.setPointerCapture(I.pointerId)))}),p.addEventListener("pointermove",I=>{if(!K||I.
pointerId!==K.id)return;let{clientX:R,clientY:tt}=I;if(!K.carried){if(Math.hypot(R-K.x,tt-K.y)<io)return;K.carried=et()}
Object.assign(K.carried,{x:R,y:tt}),xt(K.carried)});function et(){let I=n("div",{class:"twoshaft ts-ghost","aria-hidden":"\
true"},r.unit().length>1?r.unitName():r.label(r.unit()[0]));document.body.append(I);let R=n("div",{class:"ts-line","aria\
-hidden":"true"});p.append(R),p.classList.add("ts-dragging");for(let tt of r.unit())l.get(tt)?.classList.add("ts-lifted");
return{ghost:I,line:R,timer:requestAnimationFrame(lt),x:0,y:0,drop:null}}function xt(I){I.ghost.style.transform=`transla\
te(${I.x+12}px, ${I.y+8}px)`;let tt=r.rows().map(it=>{let nt=D(it).getBoundingClientRect();return{row:it,box:nt,offset:I.
y-(nt.top+nt.height/2)}}).reduce((it,nt)=>Math.abs(nt.offset)<Math.abs(it.offset)?nt:it),mt=tt.offset>0;I.drop=r.dropAt(
tt.row,mt);let X=(mt?tt.box.bottom:tt.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;I.line.style.top=`${X}px`}function lt(){
let I=K?.carried;if(I){for(let R of[p,ls(p)]){let mt=R===document.scrollingElement?{top:0,bottom:innerHeight}:R.getBoundingClientRect(),
Lt=I.y<mt.top+vs?-1:I.y>mt.bottom-vs?1:0;if(!Lt)continue;let X=R.scrollTop;if(R.scrollTop+=Lt*co,R.scrollTop!==X){xt(I);
break}}I.timer=requestAnimationFrame(lt)}}function Q(I){let R=K?.carried;if(K=null,!R)return;cancelAnimationFrame(R.timer),
R.ghost.remove(),R.line.remove(),p.classList.remove("ts-dragging");for(let mt of l.values())mt.classList.remove("ts-lift\
ed");let{drop:tt}=R;if(!I||!tt||r.unit().includes(tt.target)){k(!0),_(`${r.unitName()} stays at ${r.where()}`);return}H(
r.beside(tt.target,tt.side))}return p.addEventListener("pointerup",()=>Q(!0)),p.addEventListener("pointercancel",()=>Q(!1)),
j.addEventListener("keydown",I=>{!K?.carried||I.key!=="Escape"||(Q(!1),I.stopPropagation())}),k(),{element:j,tools:v,order:()=>[
...r.order],change:(I,R)=>{d||H(I,R)},setOrder(I,R=!1){r.held!==null||K?.carried||se(I,r.order)||(r.set(I,R),k())},setNotes(I){
u=I??{},k()},setDisabled(I){d=I,k()}}}Mt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,s){let o=t.
steps.map(([r])=>r),a=Me({label:t.prompt,steps:t.steps,order:o,onChange:s});return{element:a.element,show:r=>a.setOrder(
bs(r.value,o)),setDisabled:a.setDisabled,refused(){}}}});function ks(t,e,s){let o=[0,0],a=[s(...o)],r=new Map;for(let[c,i]of t.entries()){let[u,d]=e[i]??[null,null];u!==null&&o[1]!==
0&&a.push(s(o[0],0)),o=[u??o[0],d??(u===null?o[1]:0)];let l=s(...o);a.push(l);let f=r.get(l.join(" "))??{at:l,numbers:[]};
f.numbers.push(c+1),r.set(l.join(" "),f)}return{points:a,stops:[...r.values()]}}function xs(t,e,s){let o=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,o),s,...t.slice(o)],place:o}}function $s(t,e){return t.filter((s,o)=>o!==e)}function Ss(t,e,s){
let o=e+s;if(o<0||o>=t.length)return null;let a=[...t];return[a[e],a[o]]=[a[o],a[e]],a}var ys=.6;function Ls(t,[e,s],[o,
a]){let r=Object.entries(t).filter(([u])=>!u.startsWith("firm:")),c=(u,d)=>r.filter(([,l])=>l[0]===u&&l[1]===d).map(([l])=>l).
slice(0,1),i=Math.abs(e-o)>ys;return[...i&&Math.abs(s)>ys?c(null,0):[],...i?c(o,null):[],...a||!i?c(null,a):[]]}var ce=9,Oe=.7*ce,Je=44;function Te(t){let e=Math.min(...t.gates),s=Math.max(...t.gates),[o,a]=t.turn_mm,r=(s-e)*ce+2*Je,
c=(a-o)*Oe+2*Je,i=(p,h)=>[Je+(p-e)*ce,c/2-(h-(o+a)/2)*Oe],u=t.gates.map(p=>`M${i(p,o).join(" ")}L${i(p,a).join(" ")}`),d=`\
M${i(e,0).join(" ")}L${i(s,0).join(" ")}`,l=t.gears.map(([p,h,m])=>{let[L,b]=i(h,m),M={x:L,y:b+(m>0?-20:30),"data-gear":p};
return P("text",{...M,class:"tsp-gear","text-anchor":"middle"},p)});return{element:P("svg",{viewBox:`0 0 ${r} ${c}`,width:r,
height:c,class:"ts-gateplan","aria-hidden":"true"},P("path",{d:[...u,d].join(""),class:"tsp-slot"}),...l),at:i}}function lo(t){let{element:e,at:s}=Te(t),o=P("polyline",{class:"tsp-line",points:""}),a=P("g");return e.append(o,a),{element:e,
show(r){let{points:c,stops:i}=ks(r,t.aims,s),[[u,d]]=c;o.setAttribute("points",c.map(l=>l.join(",")).join(" ")),a.replaceChildren(
P("circle",{cx:u,cy:d,r:4,class:"tsp-start"}),...i.map(({at:[l,f],numbers:p})=>P("g",{},P("circle",{cx:l,cy:f,r:3.5,class:"\
tsp-stop"}),P("text",{x:l+7,y:f-5,class:"tsp-number"},p.join(", ")))))}}}function Cs({moves:t,plan:e,most:s,onChange:o}){
let a=new Map(t),r=g=>a.get(g)??g,c=[],i=-1,u=!1,d=e?lo(e):null,l=n("ol",{class:"ts-pathlist","aria-label":"Your moves"}),
f=n("p",{class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate plane."),p=n("p",{class:"ts-hid\
den",role:"status"}),h=t.map(([g,x])=>G(x,()=>$(g))),m=G("Take back the last move",()=>{c.length&&T(c.length-1)}),L=G("T\
ake back all",()=>{c.length&&A([],"No moves left")}),b=n("span",{class:"ts-hint"}),M=n("div",{class:"ts-path"},n("div",{
class:"ts-tools ts-moves",role:"group","aria-label":"Add a move"},...h),n("div",{class:"ts-path-both"},n("div",{class:"t\
s-path-words"},f,l,n("div",{class:"ts-tools"},m,L,b)),d&&n("div",{class:"ts-path-picture"},d.element)),d&&n("p",{class:"\
ts-hint"},"The line shows where each move should go. The test shows whether the lever gets there."),p);function A(g,x){u||
(c=g,S(),p.textContent=x,o([...c]))}function $(g){if(c.length>=s){p.textContent=`${s} moves are the most here`;return}let{
moves:x,place:j}=xs(c,i,g);i=j,A(x,`Move ${j+1}: ${r(g)}`)}function T(g){let x=r(c[g]);i=Math.min(i,c.length-2),A($s(c,g),
`Taken back: ${x}`)}function y(g,x){let j=Ss(c,g,x);j&&(i=g+x,A(j,`${r(j[i])}, move ${i+1} of ${c.length}`),C(i))}function N(g){
return l.children[g]?.querySelector(".ts-path-move")}function C(g){let x=N(g);return x instanceof HTMLElement&&x.focus(),
!!x}function v(g,x){let j=n("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${x+1}: ${r(g)}`},r(g)),_=n("bu\
tton",{type:"button",class:"ts-path-off","aria-label":`Take back move ${x+1}`,onclick:()=>T(x)},"×"),z=n("li",{},j,_);return z.
classList.toggle("ts-current",x===i),j.addEventListener("focus",()=>{i=x;for(let D of l.children)D.classList.toggle("ts-\
current",D===z)}),j.addEventListener("keydown",D=>{if(Ot(D))return;let k=D.key==="ArrowUp"?-1:D.key==="ArrowDown"?1:null;
if(k&&D.shiftKey)y(x,k);else if(k)C(x+k);else if(D.key==="Delete"||D.key==="Backspace")T(x),C(Math.min(x,c.length-1))||h[0].
focus();else return;D.preventDefault()}),_.disabled=u,z}function S(){l.replaceChildren(...c.map(v)),f.hidden=c.length>0,
b.textContent=`${c.length} of at most ${s} moves`;for(let g of h)g.disabled=u||c.length>=s;m.disabled=L.disabled=u||c.length===
0,d?.show(c)}return S(),{element:M,setMoves(g){se(g,c)||(c=[...g],i=-1,S())},setDisabled(g){u=g,S()}}}Mt("path",{prompt:"words",make(t,e,s){let o=Cs({moves:t.moves,plan:t.plan,most:t.most,onChange:s});return{element:o.element,
show:a=>o.setMoves([a.value??[]].flat()),setDisabled:o.setDisabled,refused(){}}}});function Es(t,e,s){let o=t.indexOf(s);return[...t.slice(o+1),...t.slice(0,o)].find(r=>!e.get(r))??s}function As(t,e,s){let o=t.
find(({key:u})=>u===e);if(!o)return;if(s==="Home")return t[0].key;if(s==="End")return t[t.length-1].key;let a={ArrowRight:1,
ArrowLeft:-1}[s];if(a!==void 0){let u=[...t].sort((l,f)=>l.x-f.x||l.y-f.y),d=u.findIndex(({key:l})=>l===e)+a;return u[(d+
u.length)%u.length].key}let r={ArrowDown:1,ArrowUp:-1}[s];if(r===void 0)return;let c=u=>Math.abs(u.y-o.y)+2*Math.abs(u.x-
o.x),[i]=t.filter(({key:u,y:d})=>u!==e&&(d-o.y)*r>2).sort((u,d)=>c(u)-c(d));return(i??o).key}function ne(t,e,s,o){let a=t.lines,r=t.options,c=a.map(([f])=>f),i=c[0],u=a.map(([f,p],h)=>{let m=`${e.control}-${h}`,L=n(
"label",{class:"ts-each-line",for:m},p),b=Tt({id:m},[["","choose"],...r]),M=n("input",{type:"radio",name:`${e.control}-a\
ctive`,"aria-label":`Point in the picture for: ${p}`,checked:h===0}),A=n("li",{},c.length>1?M:null,L,b);return M.addEventListener(
"change",()=>{i=f}),b.addEventListener("change",()=>{i=f,l()}),{key:f,box:b,mark:M,row:A}}),d=()=>new Map(u.map(({key:f,
box:p})=>[f,p.value]));function l(){let f=d();o(f),s(xe([...f]))}return{element:n("ol",{class:"ts-each ts-pointed"},...u.
map(({row:f})=>f)),active:()=>i,answers:d,press(f){let p=u.find(({key:h})=>h===i);if(!(!p||p.box.disabled)){p.box.value=
f,l(),i=Es(c,d(),i);for(let{key:h,mark:m}of u)m.checked=h===i}},put(f,p){let h=u.find(({key:m})=>m===f);!h||h.box.disabled||
(h.box.value=p,l())},show(f){let p=$e(f.value);for(let{key:h,box:m}of u)m.value=p.get(h)??"";o(d())},setDisabled(f){for(let{
box:p,mark:h}of u)p.disabled=f,h.disabled=f}}}function Ie(t,e,s){let o=n("div",{class:"ts-scene",role:"group","aria-labe\
l":"Picture. Arrow keys walk from place to place, Enter points at one."});o.innerHTML=t;let a=o.querySelector("svg");a.setAttribute(
"role","group");let r=new Map(Z(a,"[data-mark]").map(d=>[String(d.dataset.mark),d])),c=new Map(e);for(let[d,l]of r)l.setAttribute(
"role","button"),l.setAttribute("tabindex",d===e[0][0]?"0":"-1"),l.setAttribute("aria-label",`${d}: ${c.get(d)??""}`);let i=d=>Et(
d,"[data-mark]")?.dataset.mark??Et(d,"[data-spot]")?.dataset.spot;o.addEventListener("click",d=>{let l=i(d);l&&s(l)});for(let[
d,l]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])o.addEventListener(d,f=>{let p=i(f);p&&u(p,l)});
function u(d,l){for(let f of Z(a,`[data-spot="${d}"]`))f.classList.toggle("tss-near",l)}return o.addEventListener("keydo\
wn",d=>{let l=Et(d,"[data-mark]")?.dataset.mark;if(l){if(d.key==="Enter"||d.key===" ")s(l);else{let f=[...r].map(([h,m])=>{
let L=m.querySelector(".tss-dot");return{key:h,x:L.cx.baseVal.value,y:L.cy.baseVal.value}}),p=As(f,l,d.key);if(p===void 0)
return;r.get(l)?.setAttribute("tabindex","-1"),r.get(p)?.setAttribute("tabindex","0"),r.get(p)?.focus()}d.preventDefault()}}),
{element:o,drawing:a,choose(d){let l=new Set(d);for(let[f,p]of r)p.classList.toggle("tss-chosen",l.has(f)),p.setAttribute(
"aria-pressed",String(l.has(f)));for(let f of Z(a,"[data-spot]"))f.classList.toggle("tss-on",l.has(String(f.dataset.spot)))}}}Mt("picture",{prompt:"legend",make(t,e,s){let o=t.options,a=ne(t,e,s,i=>{let u=new Set(i.values());for(let{letter:d,card:l}of r)
l.classList.toggle("ts-on",u.has(d))}),r=o.map(([i,u])=>{let d=n("div",{class:"ts-picture-card",onclick:()=>a.press(i)});
return d.innerHTML=t.svgs[i],d.querySelector("svg")?.setAttribute("aria-label",u),d.prepend(n("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:d}}),c=n("div",{class:"ts-pictures"},...r.map(({card:i})=>i));return{element:n("div",{class:"\
ts-pictured"},a.element,c),show:a.show,setDisabled:a.setDisabled,refused(){}}}});Mt("point",{prompt:"legend",make(t,e,s){let o=ne(t,e,s,i=>c.choose(i.values())),r=t.options.map(([i,u])=>[i,u.slice(i.length+
2)]),c=Ie(t.svg,r,o.press);return{element:n("div",{},o.element,c.element),show:o.show,setDisabled:o.setDisabled,refused(){}}}});Mt("put",{prompt:"legend",make(t,e,s){let o=t.lines,a=new Map(o.map(([l])=>[l,"1"])),r=ne(t,e,s,l=>{for(let[f,p]of l)p&&
a.set(f,p.split("-")[1]);c.choose([...l.values()].map(f=>f.split("-")[0])),u(l)}),c=Ie(t.svg,t.places,l=>{r.press(`${l}-${a.
get(r.active())}`)}),i=P("g",{class:"tss-placed"});c.drawing.append(i);function u(l){i.replaceChildren();for(let[f,p]of l){
let[h,m]=p.split("-"),L=t.at[h];if(!L)continue;let b=P("g",{transform:`translate(${L[0]} ${L[1]})`});b.innerHTML=t.pieces[f][Number(
m)-1][1],i.append(b)}for(let{part:f,show:p}of d)p(a.get(f)??"1")}let d=o.map(([l,f])=>{let p=n("div",{class:"ts-tray-par\
t"}),h=n("span",{class:"ts-hint",role:"status"}),m=at("Turn it",()=>{let M=a.get(l)==="1"?"2":"1";a.set(l,M),L(M);let A=r.
answers().get(l);A&&r.put(l,`${A.split("-")[0]}-${M}`)},`Turn it: ${f}`);function L(M){let[A,$]=t.pieces[l][Number(M)-1],
T=Number(/data-half="([\d.]+)"/.exec($)?.[1]??90);p.innerHTML=`<svg viewBox="${-T} ${-T} ${2*T} ${2*T}" width="120" heig\
ht="120" aria-hidden="true">${$}</svg>`,h.textContent=`Way ${M}: ${A}`}let b=n("div",{class:"ts-tray"},p,n("div",{},f,h,
m));return{part:l,row:b,show:L,turn:m}});return{element:n("div",{},n("div",{class:"ts-trays"},...d.map(({row:l})=>l)),r.
element,c.element),show:r.show,setDisabled(l){r.setDisabled(l);for(let{turn:f}of d)f.disabled=l},refused(){}}}});var uo="The connection to the course is lost. Go on answering: your answers stay in this browser and are sent when the c\
onnection is back. Simulators wait until then.",po="The connection to the course is back.",fo=1500,ho=5e3,Qe=new Set,zt=null,
Ze;function Ms(t){zt??=n("p",{class:"twoshaft ts-line-bar",role:"status"}),zt.isConnected||document.body.append(zt),zt.textContent=
t}function go(){zt?.remove(),zt=null}function Os(){clearTimeout(Ze),Qe.size?Ze=window.setTimeout(()=>Ms(uo),zt?0:fo):zt&&
(Ms(po),Ze=window.setTimeout(go,ho))}var Ts=t=>({down(){Qe.add(t),Os()},up(){Qe.delete(t),Os()}});var mo=1e3,wo="input, button, select, textarea, summary, a, [tabindex]";function bo(t){let e=a=>{if(a.stopPropagation(),
!(a.ctrlKey||a.metaKey)||a.key.toLowerCase()!=="s"||(a.preventDefault(),a.type!=="keydown"||a.repeat))return;let{key:r,code:c,
keyCode:i,ctrlKey:u,metaKey:d}=a,l={key:r,code:c,keyCode:i,ctrlKey:u,metaKey:d,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",l))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let s=()=>{for(let a of t.querySelectorAll(wo))a.hasAttribute("data-lm-suppress-shortcuts")||a.setAttribute(
"data-lm-suppress-shortcuts","true")};s();let o=new MutationObserver(s);return o.observe(t,{childList:!0,subtree:!0}),()=>o.
disconnect()}function vo(t,e,s){let o=t.widget_manager?.kernel,a=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},r=(c,i)=>{i==="disconnected"?e():s(i==="connecting")};return t.on("comm_live_update",e),o?.statusChanged?.
connect(a),o?.connectionStatusChanged?.connect(r),o?.disposed?.connect(e),()=>{t.off("comm_live_update",e),o?.statusChanged?.
disconnect(a),o?.connectionStatusChanged?.disconnect(r),o?.disposed?.disconnect(e)}}var Is=`.twoshaft {
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
:2 1 360px}.twoshaft .ts-beside-widest>:first-child{flex:4 1 720px}.twoshaft .ts-beside-widest>:last-child{flex:1 1 280p\
x}.twoshaft .ts-beside-even>*:nth-child(n){flex:1 1 480px}.twoshaft .ts-beside-wide>:first-child{flex:4 1 640px}.twoshaf\
t .ts-beside>div>.ts-scroll:first-child{margin-top:0}.twoshaft .ts-finding{font-weight:600;margin:var(--ts-grid) 0 0}.tw\
oshaft .ts-happened{margin-top:var(--ts-grid);min-height:1.5em}.twoshaft-rig>.ts-prompt{font-weight:600;margin:calc(2 * \
var(--ts-grid)) 0 var(--ts-grid)}.twoshaft .ts-scroll{overflow-x:auto;margin:var(--ts-grid) 0;padding-bottom:var(--ts-gr\
id)}.twoshaft .ts-scroll svg{display:block}.twoshaft .ts-scroll.ts-fit svg{max-width:100%;min-width:600px;height:auto}.t\
woshaft .ts-facts{display:grid;grid-template-columns:max-content 1fr;gap:4px calc(2 * var(--ts-grid));margin:var(--ts-gr\
id) 0;max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-facts dt{float:none;clear:none;width:auto;font-weight:600;ove\
rflow-wrap:normal}.twoshaft .ts-facts dd{margin:0;width:auto}@media(max-width:480px){.twoshaft .ts-facts{grid-template-c\
olumns:1fr}}.twoshaft .ts-ready{display:flex;flex-wrap:wrap;gap:var(--ts-grid)}.twoshaft-rig .ts-ready{max-height:14rem;\
overflow-y:auto;padding:4px}.twoshaft .ts-ready .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-button.ts-off\
{color:var(--ts-quiet);border-color:var(--ts-line);border-style:dotted;cursor:default}.twoshaft .ts-sentences{padding-le\
ft:calc(3 * var(--ts-grid));max-width:var(--ts-width)}.twoshaft .ts-note-blocked .ts-shape,.twoshaft .ts-note-harmed .ts\
-shape{color:var(--ts-bad)}.twoshaft .tsf-near{margin:0}.twoshaft :has(~.tsf-near).ts-finding{max-width:none}.twoshaft .\
tsf-step{cursor:pointer}.twoshaft .tsf-step:focus{outline:none}.twoshaft .tsf-step:is(:focus-visible,:hover) .tsf-b{stro\
ke:var(--ts-accent);stroke-width:3}.twoshaft .tsg-text{font:calc(var(--ts-small) * var(--ts-grown, 1)) var(--ts-font);fi\
ll:var(--ts-ink)}.twoshaft .tsg-face{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsg-mark{stroke\
:var(--ts-ink);stroke-width:1}.twoshaft .tsg-long{stroke-width:2}.twoshaft .tsg-pointer{fill:var(--ts-accent);stroke:var\
(--ts-accent)}.twoshaft .tsg-hub{fill:var(--ts-ink)}.twoshaft .tsg-small{stroke:var(--ts-ink);stroke-width:2}.twoshaft .\
tsg-target{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:1;stroke-dasharray:5 3}.twoshaft .tsg-cold{fill:var(--\
ts-accent);stroke:var(--ts-paper)}.twoshaft .tsg-warm{fill:var(--ts-paper);stroke:var(--ts-bad);stroke-width:3}.twoshaft\
 .tsg-dial{width:190px;height:190px;flex:none}.twoshaft .tsg-scale{width:100%;max-width:600px;min-width:540px;height:aut\
o;display:block}.twoshaft .tsg-axis{width:100%;max-width:720px;min-width:540px;height:auto;display:block}.twoshaft .tsg-\
beside{display:flex;flex-wrap:wrap;align-items:center;gap:calc(2 * var(--ts-grid))}.twoshaft .tsg-beside>*{min-width:0;m\
ax-width:100%}.twoshaft .tsg-gauge svg{max-width:100%;height:auto}.twoshaft .tsg-gauge{text-align:center;font-size:var(-\
-ts-small)}.twoshaft .tsg-wide{overflow-x:auto;max-width:100%}.twoshaft .tsg-wide>svg.twoshaft-figure{max-width:max(100%\
,480px);height:auto}.twoshaft .ts-slide{display:flex;flex-wrap:wrap;align-items:center;gap:0 var(--ts-grid);margin:calc(\
var(--ts-grid) / 2) 0}.twoshaft .ts-slide>span{min-width:9em}.twoshaft .ts-slider{flex:0 1 260px;width:120px;min-width:9\
6px;height:24px;accent-color:var(--ts-accent)}.twoshaft .ts-slid{flex:1 1 7em;font-variant-numeric:tabular-nums}.twoshaf\
t .tsg-centre{stroke:var(--ts-ink);stroke-width:1;stroke-dasharray:14 3 3 3}.twoshaft .tsg-drum{max-width:100%;height:au\
to}.twoshaft .tsg-ticks{border:none;display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid))}.twoshaft .tsg-side{flex:\
1 1 420px;min-width:min(100%,320px)}.twoshaft :is(.tsp-section+.tsg-gauge,.tsg-gauge:has(+.tsg-side)){flex:0 1 200px}.tw\
oshaft .tsg-gauge+.tsg-side{flex-basis:260px;min-width:min(100%,260px)}.twoshaft .tsi-micrometer{width:clamp(730px,100%,\
760px);height:240px;display:block}.twoshaft .tsi-vernier{width:clamp(730px,100%,760px);height:190px;display:block}.twosh\
aft .tsi-runout{width:282px;height:244px;flex:none}.twoshaft .tsi-wrench{width:clamp(540px,100%,720px);height:auto;displ\
ay:block}.twoshaft .tsi-fine{stroke:var(--ts-ink);stroke-width:1.1}.twoshaft .tsi-bold{stroke:var(--ts-ink);stroke-width\
:2}.twoshaft .tsi-body{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-paper{fill:var(--ts-paper\
);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsi-lever{stroke:var(--ts-ink);stroke-width:10;stroke-linecap:round}.tw\
oshaft .tsi-adapter{stroke:var(--ts-accent);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-arm{stroke:var(--ts-acce\
nt);stroke-width:2;stroke-dasharray:7 4}.twoshaft .tsi-plunger{stroke:var(--ts-accent);stroke-width:5;stroke-linecap:rou\
nd}.twoshaft .ts-order{position:relative;max-width:calc(var(--ts-width) + 8em)}.twoshaft .ts-steps{position:relative;lis\
t-style:none;border:1px solid var(--ts-line);margin-top:calc(var(--ts-grid) / 2);background:var(--ts-paper)}.twoshaft .t\
s-steps.ts-long{max-height:min(30rem,75vh);overflow-y:auto}.twoshaft .ts-step{display:flex;align-items:flex-start;gap:va\
r(--ts-grid);padding:4px var(--ts-grid) 4px 0;margin:0;min-height:24px;border-bottom:1px solid var(--ts-faint);border-le\
ft:4px solid transparent;cursor:default;user-select:none}.twoshaft .ts-step:last-child{border-bottom:0}.twoshaft .ts-ste\
p.ts-level2{padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-step:focus-visible{outline-offset:-3px}.twoshaft .ts-cur\
rent{border-left-color:var(--ts-accent);background:var(--ts-faint)}.twoshaft .ts-inblock{border-left-style:double;border\
-left-color:var(--ts-ink)}.twoshaft .ts-held{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-held .t\
s-number,.twoshaft .ts-held .ts-grip,.twoshaft .ts-held .ts-stage{color:inherit}.twoshaft .ts-lifted{opacity:.45}.twosha\
ft .ts-dragging,.twoshaft .ts-dragging .ts-step{cursor:grabbing}.twoshaft .ts-number{flex:none;min-width:2.5em;text-alig\
n:right;color:var(--ts-quiet);font-variant-numeric:tabular-nums;touch-action:none}.twoshaft .ts-grip,.twoshaft .ts-fold{\
flex:none;width:24px;text-align:center;color:var(--ts-quiet);cursor:grab;touch-action:none}.twoshaft .ts-fold{cursor:poi\
nter}.twoshaft .ts-what{flex:1;min-width:0}.twoshaft .ts-state{font-weight:600;font-size:var(--ts-small)}.twoshaft .ts-n\
ote{display:block;font-size:var(--ts-small);max-width:var(--ts-width)}.twoshaft .ts-line{position:absolute;left:0;right:\
0;height:3px;background:var(--ts-accent);pointer-events:none}.twoshaft.ts-ghost{position:fixed;left:0;top:0;z-index:1000\
0;width:max-content;max-width:24em;padding:4px var(--ts-grid);pointer-events:none;background:var(--ts-paper);color:var(-\
-ts-ink);border:2px solid var(--ts-accent)}.twoshaft .ts-order .ts-keys{margin-top:var(--ts-grid)}.twoshaft .ts-order .t\
s-keys summary{cursor:pointer;min-height:24px;color:var(--ts-accent);width:fit-content}.twoshaft .ts-beside-list{flex-wr\
ap:wrap-reverse;align-items:flex-end}.twoshaft-rig .ts-order .ts-steps{max-height:max(20rem,min(30rem,100vh - 340px));ov\
erflow-y:auto}.twoshaft .ts-path-both{display:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;ma\
rgin-top:var(--ts-grid)}.twoshaft .ts-path-words{flex:1 1 22em;min-width:0;max-width:34em}.twoshaft .ts-path-picture{fle\
x:none;max-width:100%}.twoshaft .ts-pathlist{margin:0;padding-left:calc(4 * var(--ts-grid))}.twoshaft .ts-pathlist li{mi\
n-height:28px;padding-left:4px;border-left:4px solid transparent}.twoshaft .ts-pathlist li.ts-current{border-left-color:\
var(--ts-accent);background:var(--ts-faint)}.twoshaft .ts-path-off{min-width:28px;min-height:28px;margin-left:var(--ts-g\
rid);border:1px solid var(--ts-line);border-radius:2px;background:var(--ts-paper);color:var(--ts-ink);font:inherit;line-\
height:1;cursor:pointer}.twoshaft .ts-gateplan{display:block;max-width:100%;height:auto}.twoshaft .tsp-slot{fill:none;st\
roke:var(--ts-line);stroke-width:14;stroke-linecap:round;opacity:.35}.twoshaft .tsp-line{fill:none;stroke:var(--ts-accen\
t);stroke-width:2.5;stroke-linejoin:round}.twoshaft .tsp-start{fill:var(--ts-paper);stroke:var(--ts-accent);stroke-width\
:2}.twoshaft .tsp-stop{fill:var(--ts-accent)}.twoshaft .tsp-gear{font:600 calc(var(--ts-small) * var(--ts-grown, 1)) var\
(--ts-font);fill:var(--ts-ink)}.twoshaft .tsp-number{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink);paint-or\
der:stroke;stroke:var(--ts-paper);stroke-width:4px}.twoshaft .ts-pad{max-width:62rem}.twoshaft .ts-pad-face{position:rel\
ative;width:100%;border:1px solid var(--ts-line);background:var(--ts-paper)}.twoshaft .tsp-face{display:block;position:r\
elative;width:100%;height:auto;touch-action:none;cursor:crosshair}.twoshaft .tsp-land{fill:var(--ts-faint);stroke:none}.\
twoshaft .tsp-edge{fill:none;stroke:var(--ts-ink);stroke-linejoin:round}.twoshaft .tsp-text{fill:var(--ts-ink);font-fami\
ly:var(--ts-font);dominant-baseline:central;paint-order:stroke;stroke:var(--ts-paper);stroke-width:.3em;stroke-linejoin:\
round;pointer-events:none;user-select:none}.twoshaft .tsp-hole{fill:var(--ts-paper);stroke:var(--ts-ink)}.twoshaft .tsp-\
blind{fill:var(--ts-ink)}.twoshaft .tsp-guide,.twoshaft .tsp-reach,.twoshaft .tsp-hatch{fill:none;stroke:var(--ts-ink)}.\
twoshaft .tsp-spot{stroke:var(--ts-ink)}.twoshaft .tsp-stroke,.twoshaft .tsp-live,.twoshaft .tsp-grain{fill:none;stroke-\
linejoin:round;stroke-linecap:butt}.twoshaft .tsp-film{stroke:var(--ts-film);stroke-opacity:.6}.twoshaft .tsp-bead{strok\
e:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-wipe{stroke:var(--ts-paper);stroke-opacity:.85}.twoshaft .tsp-grain\
{stroke:var(--ts-ink)}.twoshaft .tsp-live{stroke:var(--ts-accent);stroke-opacity:.5;stroke-linecap:round}.twoshaft .tsp-\
chosen{fill:none;stroke:var(--ts-accent);stroke-dasharray:3 2;pointer-events:none}.twoshaft .ts-size{width:6em}.twoshaft\
 .ts-size[aria-invalid=true]{border:2px dashed var(--ts-ink)}.twoshaft .ts-pad-trouble{min-height:1.5em;color:var(--ts-i\
nk)}.twoshaft .ts-passes{padding-left:2.5em;font-size:var(--ts-small);max-height:16rem;overflow-y:auto}.twoshaft .ts-pas\
ses li{padding:2px 0}.twoshaft .ts-remove{min-height:24px;padding:0 var(--ts-grid)}.twoshaft .ts-pad-tools .ts-box{max-w\
idth:100%;min-width:0}.twoshaft .ts-pad-tools .ts-pair{min-width:0}.twoshaft .ts-each{margin:0;padding-left:calc(3 * var\
(--ts-grid))}.twoshaft .ts-each li{padding:calc(var(--ts-grid) / 2) 0}.twoshaft .ts-each li+li{border-top:1px solid var(\
--ts-line)}.twoshaft .ts-each-line{display:inline-block;width:min(100% - 2 * var(--ts-grid),34em);margin-right:calc(2 * \
var(--ts-grid));vertical-align:top}.twoshaft .ts-each select{max-width:100%;min-width:0;vertical-align:top}.twoshaft .ts\
-pointed input[type=radio]{margin-right:var(--ts-grid);vertical-align:top}.twoshaft .ts-pointed input[type=radio]+.ts-ea\
ch-line{width:min(100% - 7 * var(--ts-grid),34em)}.twoshaft .ts-scene{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft \
.ts-scene svg{display:block;max-width:max(100%,480px);max-height:none;height:auto}.twoshaft .ts-scene [data-mark],.twosh\
aft .ts-scene [data-spot]{cursor:pointer}.twoshaft .ts-scene [data-mark]:focus-visible{outline:none}.twoshaft .ts-scene \
[data-mark]:focus-visible .tss-ring{stroke:var(--ts-accent);stroke-width:4px}.twoshaft .ts-scene .tss-near path:not(.tsu\
-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:2.4px}.twoshaft .ts-scene .tss-chosen .tss-ring{fill:\
var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .ts-scene .tss-chosen .tss-letter{fill:var(--ts-on-accent)}.twoshaft \
.ts-scene .tss-on path:not(.tsu-behind,.tsu-pitch,.tsu-line),.twoshaft .ts-scene .tss-placed path:not(.tsu-behind,.tsu-p\
itch,.tsu-line){stroke:var(--ts-accent);stroke-width:3px}.twoshaft .ts-scene .tss-placed{pointer-events:none}.twoshaft .\
ts-pictured{display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .ts-pictured>:fi\
rst-child{flex:1 1 280px;min-width:min(100%,240px)}.twoshaft-wide .ts-pictured>:first-child{position:sticky;top:0}.twosh\
aft .ts-pictures{display:grid;flex:2 1 500px;min-width:0;grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1f\
r));gap:var(--ts-grid);margin:var(--ts-grid) 0}.twoshaft .ts-picture-card{position:relative;padding:var(--ts-grid);borde\
r:1px solid var(--ts-line);cursor:pointer}.twoshaft .ts-picture-card.ts-on{outline:3px solid var(--ts-accent)}.twoshaft \
.ts-picture-card svg{width:100%;height:auto;max-height:300px}.twoshaft .ts-picture-letter{font-weight:600}.twoshaft .ts-\
trays{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-tray{display:flex;gap:var(--ts-grid);align-\
items:center}.twoshaft .ts-tray>div:last-child{display:grid;gap:calc(var(--ts-grid) / 2);max-width:22em}.twoshaft-form{p\
adding-block:var(--ts-grid)}.twoshaft .ts-top{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 calc(3 * v\
ar(--ts-grid));border-bottom:1px solid var(--ts-line);padding-bottom:calc(var(--ts-grid) / 2)}.twoshaft .ts-who{font-siz\
e:var(--ts-small);color:var(--ts-quiet)}.jp-Cell:has(.ts-top,.ts-build)~.jp-Cell .ts-top>.ts-who{display:none}.twoshaft \
.ts-field{border:0;min-width:0;margin:calc(2 * var(--ts-grid)) 0 0}.twoshaft .ts-prompt{display:block;padding:0;font-wei\
ght:600;margin-bottom:var(--ts-grid)}.twoshaft .ts-line-of{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-g\
rid)}.twoshaft .ts-line-of+.ts-read,.twoshaft .ts-line-of+.ts-read+.ts-status{display:inline}.twoshaft .ts-line-of+.ts-r\
ead:not(:empty){margin-right:calc(2 * var(--ts-grid))}.twoshaft .ts-read.ts-error,.twoshaft .ts-status-unread{color:var(\
--ts-ink);font-size:var(--ts-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-unread .ts-shape,.twoshaft .ts-sta\
tus-bad .ts-shape{color:var(--ts-bad)}.twoshaft .ts-status-saved .ts-shape{color:var(--ts-good)}.twoshaft .ts-status-bad\
{color:var(--ts-ink);font-weight:600}.twoshaft .ts-order+.ts-read{display:none}.twoshaft .ts-bench{margin-top:var(--ts-g\
rid)}.twoshaft .ts-bench summary{cursor:pointer;min-height:24px;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaf\
t .ts-bench[open]{border:1px solid var(--ts-line);padding:var(--ts-grid)}.twoshaft .ts-bench-rows{display:grid;grid-temp\
late-columns:repeat(auto-fill,minmax(min(100%,20em),1fr));gap:var(--ts-grid) calc(2 * var(--ts-grid));margin:var(--ts-gr\
id) 0}.twoshaft .ts-bench-row{min-width:0}.twoshaft .ts-bench-row select{max-width:100%;min-width:0}.twoshaft .ts-bench-\
row label{display:block;max-width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-height:0}.twoshaft.ts-question{bo\
rder-left:4px solid var(--ts-accent);padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-acts{display:flex;flex-wrap:wra\
p;gap:var(--ts-grid);margin-top:var(--ts-grid)}.twoshaft .ts-told:not(:empty){margin-top:var(--ts-grid)}.twoshaft .ts-to\
ld-unread{border:2px solid var(--ts-ink);padding:var(--ts-grid)}.twoshaft .ts-teacher{border-style:dashed;font-size:var(\
--ts-small)}.twoshaft.ts-question .ts-title{font-weight:600}.twoshaft.ts-question:has(.ts-asked>:nth-child(2)){max-width\
:none}.twoshaft .ts-asked{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,340px),1fr));gap:0 calc(4 *\
 var(--ts-grid));align-items:start}.twoshaft-start>div{max-width:1040px}.twoshaft-start h2{font-size:var(--ts-head);font\
-weight:600;margin:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-in{margin:calc(2 * var(--ts-grid))\
 0 calc(3 * var(--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;grid-template-columns:minmax(0,1fr);gap:calc(1.5 * \
var(--ts-grid));justify-items:start}.twoshaft-start .ts-pair{display:grid;grid-template-columns:minmax(0,1fr);gap:calc(v\
ar(--ts-grid) / 2);max-width:100%}.twoshaft-start .ts-pair label{font-weight:600}.twoshaft-start .ts-pair .ts-box{width:\
22em;max-width:100%}.twoshaft-start .ts-first{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft-start .ts-\
button{font-size:var(--ts-text)}.twoshaft-start .ts-said:not(:empty){border-left:3px solid var(--ts-accent);padding:var(\
--ts-grid);background:var(--ts-faint)}.twoshaft-start .ts-me{display:flex;flex-wrap:wrap;align-items:center;justify-cont\
ent:space-between;gap:var(--ts-grid);margin-bottom:var(--ts-grid)}.twoshaft-start .ts-table{border-collapse:collapse;wid\
th:100%;margin:0 0 calc(2 * var(--ts-grid));font-size:var(--ts-text);table-layout:fixed}.twoshaft-start .ts-table :is(th\
,td){text-align:left;vertical-align:top;white-space:normal;padding:var(--ts-grid);border:0;border-bottom:1px solid var(-\
-ts-line);background:none;max-width:none}.twoshaft-start .ts-table thead th{font-size:var(--ts-small);color:var(--ts-qui\
et)}.twoshaft-start .ts-table th:nth-child(1){width:26%}.twoshaft-start .ts-table th:nth-child(2){width:16%}.twoshaft-st\
art .ts-table th:nth-child(4){width:24%}.twoshaft-start .ts-small-line{display:block;font-size:var(--ts-small);color:var\
(--ts-quiet)}.twoshaft-start .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-start\
 a.ts-link:is(:link,:visited,:hover,:focus,:active){color:var(--ts-accent);text-decoration:underline;display:inline-flex\
;align-items:center;min-height:var(--ts-target);cursor:pointer}.twoshaft-start .ts-lessons{padding-left:calc(2 * var(--t\
s-grid))}.twoshaft-start .ts-lessons .ts-link{min-height:24px}.twoshaft-start .ts-module th{padding-top:calc(3 * var(--t\
s-grid));font-size:var(--ts-text)}.twoshaft-start .ts-table .ts-module th{width:auto}.twoshaft-start .ts-assigned{margin\
-left:var(--ts-grid);font-weight:400;color:var(--ts-quiet)}.twoshaft-start .ts-next{margin:0}.twoshaft-start summary{min\
-height:var(--ts-target);align-content:center;cursor:pointer}.twoshaft-start .ts-due{display:none}@media(max-width:560px\
){.twoshaft-start .ts-due{display:inline}.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.twoshaf\
t-start .ts-table :is(tr,th,td):nth-child(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:1px sol\
id var(--ts-line);padding:var(--ts-grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.twoshaft-\
start .ts-gaps{padding-left:calc(2 * var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{display:blo\
ck}.twoshaft-start .ts-question{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk{max-wid\
th:1240px}.twoshaft-desk .ts-desk-top{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:v\
ar(--ts-grid)}.twoshaft-desk .ts-desk-pages{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin:var(--ts-grid) 0;paddi\
ng-bottom:var(--ts-grid);border-bottom:1px solid var(--ts-line)}.twoshaft-desk .ts-button[aria-current=page]{border-widt\
h:3px;font-weight:700}.twoshaft-desk :is(h2,h3){font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twosh\
aft-desk h3,.twoshaft-desk .ts-button{font-size:var(--ts-text)}.twoshaft-desk .ts-first{background:var(--ts-accent);colo\
r:var(--ts-on-accent)}.twoshaft-desk .ts-said:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border-left:3px solid var(-\
-ts-accent);padding:var(--ts-grid);background:var(--ts-faint)}.twoshaft-desk :is(.ts-said,.ts-alert,.ts-told,.ts-trouble\
){white-space:pre-line;max-width:none}.twoshaft-desk .ts-desk-here{width:100%;scroll-margin-block:calc(2 * var(--ts-grid\
))}.twoshaft-desk .ts-busy{display:flex;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-desk-body[aria-busy=tru\
e]{cursor:progress}.twoshaft-desk .ts-desk-body>*{margin-top:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-caption{di\
splay:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:calc(var(--t\
s-grid) / 2)}.twoshaft-desk .ts-desk-scroll{max-height:360px;overflow:auto;border:1px solid var(--ts-line)}.twoshaft-des\
k .ts-table{border-collapse:collapse;margin:0;min-width:100%;font-size:var(--ts-text)}.twoshaft-desk .ts-table :is(th,td\
){text-align:left;vertical-align:top;white-space:normal;padding:calc(var(--ts-grid) / 2) var(--ts-grid);border:0;border-\
bottom:1px solid var(--ts-line);background:none;max-width:28em;font-weight:400;overflow-wrap:break-word}.twoshaft-desk .\
ts-table tbody th{position:sticky;left:0;background:var(--ts-paper)}.twoshaft-desk .ts-table thead th{position:sticky;to\
p:0;z-index:1;background:var(--ts-paper);box-shadow:inset 0 -1px var(--ts-line);white-space:nowrap}.twoshaft-desk .ts-ta\
ble .ts-figure{text-align:right;font-variant-numeric:tabular-nums}.twoshaft-desk .ts-table .ts-tick{width:24px}.twoshaft\
-desk input[type=checkbox]{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft-desk :is(.ts-sort,.ts-cell){mi\
n-height:24px;min-width:24px;padding:0;border:0;background:none;color:var(--ts-accent);font:inherit;text-align:inherit;c\
ursor:pointer}.twoshaft-desk .ts-sort{font-weight:600}.twoshaft-desk .ts-cell{text-decoration:underline}.twoshaft-desk .\
ts-desk-form{display:grid;gap:var(--ts-grid);justify-items:start;padding-top:var(--ts-grid);border-top:1px solid var(--t\
s-line)}.twoshaft-desk .ts-desk-form>*{min-width:0;max-width:100%}.twoshaft-desk .ts-desk-fields{display:flex;flex-wrap:\
wrap;align-items:flex-start;gap:var(--ts-grid) calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-field{display:grid;grid-\
template-columns:minmax(0,auto);gap:calc(var(--ts-grid) / 2);max-width:100%}.twoshaft-desk .ts-desk-field>label:not(.ts-\
option){font-weight:600}.twoshaft-desk .ts-desk-field .ts-box{width:18em;max-width:100%}.twoshaft-desk .ts-desk-field se\
lect.ts-box{width:auto;min-width:min(18em,80vw)}.twoshaft-desk textarea.ts-box{width:30em;padding:var(--ts-grid)}.twosha\
ft-desk .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-question{border:2\
px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk a.ts-link:is(:link,:visited,:hover,:focus,:acti\
ve){color:var(--ts-accent);text-decoration:underline}.twoshaft-desk :is(textarea,a,h2,.ts-desk-scroll):focus-visible{out\
line:3px solid var(--ts-accent);outline-offset:2px}@media(forced-colors:active){.twoshaft-desk .ts-button[aria-current=p\
age]{border-color:Highlight}.twoshaft-desk .ts-first{border-width:2px;font-weight:700}.twoshaft-desk .ts-said:not(:empty\
,.ts-hidden),.twoshaft-desk .ts-told{border:1px solid CanvasText}}.twoshaft .tsj-bench{display:flex;flex-wrap:wrap;gap:v\
ar(--ts-grid) calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .tsj-bench>*{flex:1 1 240px;min-width:0;max-widt\
h:max-content}.twoshaft .tsj-bench svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:pointer}.twos\
haft .tsj-bolt:focus{outline:none}.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-width:4}.twosh\
aft .tsj-bolt.tsj-started circle{stroke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.twoshaft .tsj-b\
olt.tsj-tight text{fill:var(--ts-paper)}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(--ts-grid)}.\
twoshaft .tsj-slide input{width:180px;max-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-target)}.twoshaft\
 .tsj-figure{min-width:8ch;font-variant-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-height:1.5em}.t\
woshaft .tsj-check{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsj-\
check input{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-template-colu\
mns:max-content minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-width) + 12ch)\
;margin:var(--ts-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block;max-width:1\
00%;height:auto}.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:wrap}@media(\
max-width:700px){.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{border-collapse:\
collapse;font:var(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align:left;font-w\
eight:600;padding:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-align:middle;\
padding:1px 12px 1px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twoshaft table.tsk-board \
thead th{font-weight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:54ch;white-space:normal}.twoshaft t\
able.tsk-board .tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft table.tsk-boa\
rd select{max-width:36ch}.twoshaft table.tsk-board :is(select,button){min-height:28px}.twoshaft table.tsk-board{font-siz\
e:var(--ts-small)}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:600;border-b\
ottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{min-width:24\
ch}.twoshaft .tsk-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:860px){.twoshaft table.tsk-board,.t\
woshaft table.tsk-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.twoshaft tab\
le.tsk-board thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft table.tsk-board\
 tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twoshaft table.t\
sk-board tbody td,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-width:0;padding:\
2px 0;text-align:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-board tbody .t\
sk-best td{border:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twoshaft table.t\
sk-board tbody th{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) ": ";color:va\
r(--ts-quiet)}.twoshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-board select{max-width:100%}\
}.twoshaft .ts-gate{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 calc(2 * var(--ts-grid));align-items:sta\
rt;cursor:default;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none}.twoshaft .\
ts-pulling,.twoshaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accent)}.twoshaft\
 .ts-gate svg{user-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-happened.t\
s-stopped,.twoshaft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;padding-left:\
calc(4 * var(--ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate .ts-scroll{margin:0;padding:0}.twosha\
ft .ts-gate .ts-prompt{margin-top:0}.twoshaft .ts-gate-work .ts-prompt{margin-block:0}.twoshaft .ts-gate-hint{max-width:\
none}.twoshaft .ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 12ch);font-we\
ight:600}.twoshaft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3px}.twoshaft \
.ts-lever .tsl-spot{fill:transparent;cursor:pointer}.twoshaft .ts-lever .tsl-spot:hover{fill:var(--ts-faint);stroke:var(\
--ts-accent)}.twoshaft .ts-lever .tsl-knob{fill:var(--ts-accent);stroke:var(--ts-paper);stroke-width:2;cursor:grab;touch\
-action:none}.twoshaft .ts-lever .tsl-in{text-decoration:underline;font-weight:800}.twoshaft .ts-gate-work{display:grid;\
grid-template-columns:minmax(0,3fr) minmax(0,2fr);gap:0 calc(3 * var(--ts-grid))}.twoshaft .ts-gate-work .ts-log{max-hei\
ght:9rem}.twoshaft .ts-gate-work .ts-moves{display:grid;grid-template-columns:repeat(auto-fill,minmax(200px,1fr))}.twosh\
aft .ts-gate-work .ts-moves{gap:4px;margin-top:0}.twoshaft .ts-gate-work .ts-moves .ts-button{font-size:var(--ts-small);\
line-height:1.25}@media(max-width:900px){.twoshaft .ts-gate,.twoshaft .ts-gate-work{grid-template-columns:minmax(0,1fr)}\
}.twoshaft .tsw-train.ts-scroll.ts-fit svg{min-width:540px}.twoshaft .tsw-train svg{user-select:none}.twoshaft .tsw-coun\
ts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1fr));gap:4px var(--ts-grid);max-width:900p\
x;margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-template-columns:68px minmax(0,1f\
r);column-gap:var(--ts-grid);align-items:center;padding:2px 4px;border:1px solid var(--ts-line);border-radius:2px;text-a\
lign:left;font-size:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:1px 3px}.two\
shaft .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-dial{grid-co\
lumn:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:100%;height:auto;touch-actio\
n:none;cursor:grab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var(--ts-faint)\
;stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twosha\
ft .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-tick{stro\
ke:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:calc(15px * var(-\
-ts-grown, 1)) var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{font-family:monospace;font-si\
ze:var(--ts-small);max-height:4.5em;overflow-y:auto}.twoshaft .tsw-figure{font-variant-numeric:tabular-nums}.twoshaft .t\
sw-figure:empty{min-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsw-say{max-width:none}.twoshaft .tsh-p\
icture{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{display:block;width:100%;min-width:680px;max-w\
idth:1100px;height:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaft .tsh-place\
:hover .tsh-hit{stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:hover .tsh-hit\
{stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);stroke-width\
:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:3px solid var(--ts-accent);padding-left:c\
alc(1.5 * var(--ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twoshaft .tsh-ver\
dict{margin-top:var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-sliders{display:gr\
id;grid-template-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:var(--ts-grid\
) 0;max-width:960px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em minmax(6em,1fr) 4em;align-items:center;ga\
p:var(--ts-grid);min-height:28px}.twoshaft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;min-height:2\
4px}.twoshaft .tsl-row .ts-box{justify-self:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;text-align:rig\
ht}.twoshaft .tsl-drawing{overflow-x:auto}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:520px;max-width:\
820px;height:auto}.twoshaft .tsl-sum{font-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@media(max-width:480px){.\
twoshaft .tsl-sliders{grid-template-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wrap:wrap;min-width:0}.tw\
oshaft .tsl-row input{max-width:100%}}.twoshaft .tsp-section{flex:1 1 320px;overflow-x:auto}.twoshaft .tsp-gauge{width:1\
90px;height:173px;flex:none}.twoshaft .tsp-section svg{display:block;max-width:100%;height:auto;min-width:320px}.twoshaf\
t .ts-pair[hidden]{display:none}.twoshaft .ts-cells{position:absolute;pointer-events:none}.twoshaft .tsp-land.tsp-clear{\
fill:none}.twoshaft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-way{fill:none;stroke:v\
ar(--ts-bad);stroke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:var(--ts-ink);stroke:var(--ts-paper);str\
oke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp-shut .tsp-chosen{disp\
lay:none}.twoshaft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-grid));font-size:var(--ts-small);min\
-height:1.6em}.twoshaft .ts-key{display:inline-flex;align-items:center;gap:4px}.twoshaft .ts-swatch{width:25px;height:15\
px;border:1px solid var(--ts-line)}.twoshaft-rig .ts-pad-tools .ts-box{max-width:15em}.twoshaft-rig .ts-beside .ts-facts\
{max-width:none}.twoshaft .ts-range{accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-clock{min-width:6em;font\
-weight:600}.twoshaft .ts-unit{overflow:auto;max-height:max(20rem,min(620px,100vh - 370px));border:1px solid var(--ts-li\
ne);margin:var(--ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:block;min-width:640px;max\
-width:none;max-height:none;margin-inline:auto}.twoshaft .ts-apart .ts-unit svg{min-width:0;overflow:visible}.twoshaft .\
ts-unit [data-part]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(\
--ts-accent);stroke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-unit [data-part]:hover path:not(.tsu-behind,.tsu-pit\
ch,.tsu-line){stroke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible{outline:3px solid var(--ts-accent);outline-offset\
:-3px}.twoshaft .ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .ts-unit-words p{max-wi\
dth:var(--ts-width)}.twoshaft.ts-together .tsu-number{display:none}.twoshaft .ts-unit :is(.tsu-axis,.tsu-number){pointer\
-events:none}.twoshaft .ts-apart{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-apart-tools{flex\
:1 1 280px;max-width:380px}.twoshaft .ts-apart-tools .ts-slide>span{min-width:0}.twoshaft .ts-apart-tools .ts-slid{min-w\
idth:6em}.twoshaft .ts-apart-picture{flex:3 1 600px;min-width:0}.twoshaft .ts-nextin{min-height:3em}.twoshaft .ts-apart-\
list{list-style:none;margin:0;padding:0 var(--ts-grid) 0 0;max-height:300px;overflow:auto;font-size:var(--ts-small)}.two\
shaft .ts-apart-list li{padding:2px var(--ts-grid);border-left:4px solid transparent}.twoshaft .ts-apart-list .ts-curren\
t{border-left-color:var(--ts-accent);font-weight:600}@media(forced-colors:active){.twoshaft .ts-apart-list li:not(.ts-cu\
rrent){border-left-color:Canvas}}.twoshaft .ts-space{display:block;width:100%;height:clamp(260px,100vh - 290px,460px);bo\
x-sizing:border-box;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:none}.twoshaft .ts-space:focus-\
visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-photographs{display:flex;flex-wrap:wrap;gap\
:var(--ts-grid)}.twoshaft .ts-photographs figure{flex:0 1 320px;margin:var(--ts-grid) 0}.twoshaft .ts-photographs svg{di\
splay:block;width:100%;height:auto;max-height:220px}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sentences[hidden]{display\
:none}.twoshaft .ts-told{min-height:1.5em;max-height:6em;overflow-y:auto}.twoshaft .ts-build{display:grid;grid-template:\
"tray unit" auto "hand unit" 1fr "hand end" auto / minmax(20rem,1fr) minmax(0,738px);gap:var(--ts-grid) calc(2 * var(--t\
s-grid));align-items:start}.twoshaft .ts-build-left{grid-area:tray}.twoshaft .ts-build-hand{grid-area:hand;min-width:0}.\
twoshaft .ts-build-unit{grid-area:unit;min-width:0}.twoshaft .ts-build-face{grid-template:"tray hand" auto "end hand" 1f\
r / minmax(20rem,1fr) minmax(0,738px)}.twoshaft .ts-build-end{grid-area:end;margin:0}.twoshaft .ts-build-unit .ts-unit{m\
ax-height:max(15rem,min(560px,100vh - 475px));margin-block:4px}.twoshaft .ts-build-unit :is(.ts-unit-name,.ts-in-picture\
){margin:0}.twoshaft .ts-buildlist{display:grid;gap:4px;max-height:9.5rem;overflow-y:auto;padding:4px}.twoshaft .ts-buil\
dstep{display:flex;align-items:center;gap:var(--ts-grid);text-align:left;padding:1px var(--ts-grid);min-height:34px}.two\
shaft .ts-thumb{flex:0 0 44px;height:30px;display:grid;place-items:center;color:var(--ts-ink)}.twoshaft .ts-buildstep[ar\
ia-current] .ts-thumb{background:var(--ts-paper)}.twoshaft .ts-carry{cursor:grab;touch-action:none}.twoshaft .ts-inhand{\
display:block;max-width:none;overflow:hidden;pointer-events:none}.twoshaft.ts-ghost{position:fixed;z-index:10000;transfo\
rm:translate(-50%,-50%);opacity:.85;pointer-events:none}.twoshaft .ts-thumb path{vector-effect:non-scaling-stroke;stroke\
-width:1px}.twoshaft .ts-hand-row{display:flex;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-hand-row>:last-child{flex:1;mi\
n-width:0}.twoshaft .ts-hand .ts-facts{grid-template-columns:fit-content(60%) minmax(0,1fr)}.twoshaft .ts-hand-row .ts-f\
acts{display:block}.twoshaft .ts-hand-row .ts-facts dt{margin-top:4px}.twoshaft .ts-hand-row .ts-hint{margin:0}.twoshaft\
 .ts-held-box{display:grid;gap:var(--ts-grid);align-content:start}.twoshaft .ts-held-box[hidden],.twoshaft .ts-held-box \
[hidden]{display:none}.twoshaft .ts-held-box>.ts-hint:empty{display:none}.twoshaft .ts-held-box>.ts-hint{max-width:126px\
}.twoshaft .ts-held-frame,.twoshaft .ts-tool-frame{display:grid;place-items:center;min-width:124px;min-height:88px;borde\
r:1px dashed var(--ts-line)}.twoshaft .ts-tool-frame{min-height:68px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);\
border-color:var(--ts-line)}.twoshaft .ts-buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:\
600}.twoshaft .ts-buildstep[aria-current]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choi\
ce{max-width:100%}.twoshaft .ts-hand{border:1px solid var(--ts-line);padding:var(--ts-grid);max-height:max(13rem,min(24r\
em,100vh - 470px));overflow-y:auto;scroll-padding-top:3em}.twoshaft .ts-hand .ts-field{border:0;margin:var(--ts-grid) 0;\
min-width:0}.twoshaft .ts-hand-name{font-weight:600;position:sticky;top:calc(-1 * var(--ts-grid));z-index:1;background:v\
ar(--ts-paper)}.twoshaft .ts-do{text-align:left;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-w\
arn);padding-left:var(--ts-grid);font-size:var(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;margin:va\
r(--ts-grid) 0;font:inherit}.twoshaft .ts-record caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td)\
{text-align:left;vertical-align:top;padding:3px 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-\
space:normal}.twoshaft .ts-record th[scope=row]{font-weight:400}.twoshaft .ts-record .ts-blank{min-width:12em;height:2em\
}@media(min-width:52rem){.twoshaft .ts-build-face .ts-build-unit{display:none}.twoshaft .ts-build-face .ts-hand{max-heig\
ht:27rem}}@media(max-width:52rem){.twoshaft .ts-build,.twoshaft .ts-build-face{grid-template:"tray" "hand" "unit" "end" \
/ minmax(0,1fr)}.twoshaft .ts-hand{max-height:none}.twoshaft .ts-hand .ts-facts{grid-template-columns:minmax(0,1fr)}}@me\
dia(forced-colors:active){.twoshaft-rig:not(.ts-begun,.ts-lost) .ts-first{outline:3px solid Highlight}.twoshaft .ts-butt\
on[aria-pressed=true],.twoshaft .ts-buildstep[aria-current],.twoshaft .ts-held{forced-color-adjust:none;background:Highl\
ight;border-color:Highlight;color:HighlightText}.twoshaft :is(.ts-step,.ts-pathlist li):not(.ts-current,.ts-inblock){bor\
der-left-color:Canvas}.twoshaft :is(.ts-step,.ts-pathlist li).ts-current{border-left-color:Highlight}.twoshaft-notebook \
.jp-MarkdownCell .jp-RenderedMarkdown{border-color:Canvas}.twoshaft-bar .ts-tasks a:not([aria-current]){border-bottom-co\
lor:Canvas}}`,Ns="twoshaft-styles";function yo(){let t=document.getElementById(Ns);t?.textContent!==Is&&(t?.remove(),document.
head.append(n("style",{id:Ns},Is)))}function st({model:t,el:e},{kind:s,lost:o=()=>ve(e),line:a=()=>{}}){yo(),e.classList.
add("twoshaft","twoshaft-live",`twoshaft-${s}`);let r=n("p",{class:"ts-alert",role:"alert"}),c=Ts(e),i=()=>e.classList.contains(
"ts-lost"),u=[],l=vo(t,()=>{i()||(e.classList.add("ts-lost"),c.down(),o())},m=>{i()||(m?c.down():c.up(),a(m))}),f=bo(e),
p,h=(m,L)=>{t.on(m,L),u.push([m,L])};return h("msg:custom",m=>{m.type==="trouble"&&!i()&&(r.textContent=m.reason)}),{alert:r,
follow:h,isLost:i,send(m){i()||(e.classList.add("ts-begun"),t.send(m),clearTimeout(p),p=window.setTimeout(()=>t.send({type:"\
rest"}),mo))},asks(m,{first:L,begin:b,who:M="Practice. Nothing here is marked or saved."}={}){return L?.classList.add("t\
s-first"),n("div",{class:"ts-who"},n("p",{class:"ts-asks"},m),b?n("p",{class:"ts-begin"},`Begin: ${b}.`):"",M?n("p",{},M):
"")},show:(...m)=>e.replaceChildren(..._t(m)),close(){c.up(),clearTimeout(p),f(),l();for(let[m,L]of u)t.off(m,L)}}}function Ft(t){let e=t.get("pictured"),s=n("div",{class:"ts-photographs"}),o="",a=r=>{r.type!=="photographs"||`${r.of}:${r.
id}`!==o||s.replaceChildren(...r.shown.map(({svg:c,alt:i})=>{let u=n("figure",{});return u.innerHTML=c,u.append(n("figca\
ption",{},`From your college: ${i}`)),u}))};return t.on("msg:custom",a),{node:s,any:r=>e[r].length>0,show(r,c){let i=c.find(
d=>e[r].includes(d)),u=i===void 0?"":`${r}:${i}`;u!==o&&(o=u,s.replaceChildren(),i!==void 0&&t.send({type:"photographs",
of:r,id:i}))},close:()=>t.off("msg:custom",a)}}function Bs({model:t,el:e}){let s=st({model:t,el:e},{kind:"rig",lost:()=>l.setDisabled(!0)}),o=n("p",{class:"ts-finding",
role:"status"}),a=n("p",{class:"ts-cost"}),r=Ft(t),c=t.get("start"),i=t.get("work"),u=null,d=h=>{u=dt("order"),s.send({type:"\
order",order:h,turn:u})},l=Me({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:d,
onChoose:h=>r.show("operation",h.flatMap(m=>i[m]??[]))}),f=n("button",{type:"button",class:"ts-button",onclick:()=>l.change(
[...c],"The first order stands again")},"Start again");l.tools.append(f),s.show(s.asks("Which steps stand in a wrong pla\
ce?",{first:l.tools,begin:"choose a step and move it up or down"}),s.alert,Pt([l.element],[o,a,r.node],"list"));function p(){
let h=t.get("judged");u!==null&&h.turn!==u||(u=null,o.textContent=h.finding,a.textContent=h.cost,l.setOrder(h.order),l.setNotes(
h.notes))}return s.follow("change:judged",p),p(),()=>{r.close(),s.close()}}var ko=["lit","bench","absent","put"],Ds=[1,1.5,2,3,4.5];function Gt({svg:t,parts:e,words:s},{name:o="The unit in sectio\
n",tallest:a,onChoose:r=()=>{}}={}){let c=n("div",{class:"ts-unit",tabindex:"0",role:"application","aria-label":`${o}. L\
eft and right arrows walk from part to part, up and down to the part above or below, plus and minus zoom.`});c.innerHTML=
t;let i=c.querySelector("svg"),u=i.querySelector(".tsu-marks");i.setAttribute("aria-hidden","true"),i.dataset.grow??="2",
i.removeAttribute("role");let d=new Map(e.map(([k])=>[k,[]]));for(let k of Z(i,"[data-part]"))d.get(String(k.dataset.part))?.
push(k);let l=new Map(e.map(([k],w)=>[k,w])),f=n("p",{class:"ts-hint ts-unit-name",role:"status"}),p=Tt({"aria-label":"P\
art",class:"ts-box ts-before"},[["","no part chosen"],...e.map(([k,w])=>[k,w])]),{width:h,height:m}=i.viewBox.baseVal,L=a?
`min(100%, ${Math.round(a*h/m)}px)`:"100%",b=new WeakMap,M=-1,A=0,$={},T=k=>{let w=$[k];return w==="absent"?" Not there \
yet.":w==="bench"?" On the bench.":w==="lit"?" In hand.":""},y=k=>`${e[k][1]}. ${e[k][2]}${T(e[k][0])}`;function N(k){for(let B of Z(
i,".tsu-chosen"))B.classList.remove("tsu-chosen");M=k;let w=k<0?"":e[k][0];p.value=w,f.textContent=k<0?_:y(k);for(let B of d.
get(w)??[])B.classList.add("tsu-chosen");k>=0&&v(w),r(w)}function C(k){let w=u?Z(u,`[data-part="${k}"]`):[],B=[...d.get(
k)??[],...w].map(V=>{let{x:St,y:W,width:Y,height:J}=V.getBBox(),[ht,gt]=b.get(V)??[0,0];return{x:St+ht,y:W+gt,width:Y,height:J}}),
H=Math.min(...B.map(V=>V.x)),q=Math.max(...B.map(V=>V.x+V.width)),rt=Math.min(...B.map(V=>V.y)),kt=Math.max(...B.map(V=>V.
y+V.height));return{x:(H+q)/2,y:(rt+kt)/2}}let v=k=>S(C(k));function S(k){let w=i.getBoundingClientRect().width/i.viewBox.
baseVal.width,[B,H]=[k.x*w,k.y*w],{scrollLeft:q,scrollTop:rt,clientWidth:kt,clientHeight:V}=c;(B<q+40||B>q+kt-40)&&(c.scrollLeft=
B-kt/2),(H<rt+40||H>rt+V-40)&&(c.scrollTop=H-V/2)}function g(k){A=Math.max(0,Math.min(Ds.length-1,A+k)),i.style.width=`c\
alc(${Ds[A]} * ${L})`,i.style.height="auto",M>=0&&v(e[M][0])}function x(k){let w=C(e[M][0]),[B]=e.map(([H],q)=>({k:q,at:C(
H)})).filter(({k:H,at:q})=>H!==M&&(q.y-w.y)*k>4).sort((H,q)=>Ps(H.at,w)-Ps(q.at,w));B&&N(B.k)}c.addEventListener("keydow\
n",k=>{if(Ot(k))return;let w=e.length-1;if(k.key==="ArrowRight")N(M>=w?0:M+1);else if(k.key==="ArrowLeft")N(M<=0?w:M-1);else if(k.
key==="ArrowUp"||k.key==="ArrowDown")M<0?N(0):x(k.key==="ArrowUp"?-1:1);else if(k.key==="Home")N(0);else if(k.key==="End")
N(w);else if(k.key==="+"||k.key==="=")g(1);else if(k.key==="-")g(-1);else if(k.key==="Escape")N(-1);else return;k.preventDefault()}),
c.addEventListener("click",k=>{let w=Et(k,"[data-part]")?.dataset.part;N(w===void 0?-1:l.get(w)??-1)}),c.addEventListener(
"pointerover",k=>{let w=Et(k,"[data-part]")?.dataset.part;if(w===void 0||k.pointerType!=="mouse")return;let B=Et(k,"[dat\
a-solid]")?.querySelector("title")?.textContent,H=e[l.get(w)??0][1];j.textContent=B&&!H.endsWith(B)?`${B} (${H})`:H}),c.
addEventListener("pointerleave",()=>{j.textContent=""}),p.addEventListener("change",()=>N(l.get(p.value)??-1));let j=n("\
span",{class:"ts-unit-over","aria-hidden":"true"}),_="Point at a part, tap it, or choose it here to read its name.";f.textContent=
_;let z=n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"Part ",p),at("−",()=>g(-1),"Smaller"),at("+",()=>g(1),"\
Larger"),j),D=n("details",{class:"ts-unit-words"},n("summary",{},"What is where, in words"),n("p",{},s));return g(0),{nodes:[
z,f,c,D],choose:p,drawing:i,frame:c,look(k){d.get(k)?.length&&v(k)},moveTo:S,shift(k,[w,B]){b.set(k,[w,B]),k.setAttribute(
"transform",`translate(${w.toFixed(1)} ${B.toFixed(1)})`)},show(k){$=k.looks;for(let[w,B]of d)for(let H of B)for(let q of ko)
H.classList.toggle(`tsu-${q}`,$[w]===q);u&&(u.innerHTML=k.marks),M>=0&&(f.textContent=y(M))}}}function Ps(t,e){return Math.
abs(t.y-e.y)+2*Math.abs(t.x-e.x)}function Rs(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function js({model:t,el:e}){let s=n(
"p",{class:"ts-finding"}),o=n("p",{class:"ts-happened",role:"status"}),a=n("p",{class:"ts-hint"}),r=Ft(t),c=Gt(t.get("pi\
cture")),i=n("p",{class:"ts-hint",role:"status"}),u=n("dl",{class:"ts-facts"}),d=n("div",{class:"ts-ready"}),l=n("select",
{class:"ts-box ts-before","aria-label":"A step that is not ready"}),f=n("input",{type:"text",inputmode:"numeric",size:"3",
class:"ts-box","aria-label":"Go to place",onkeydown:x=>{x.key==="Enter"&&y()}}),p=n("span"),h=0;function m(x){h+=x;let j=t.
get("near")[h];j&&S(j),C.send({type:"move",by:x})}let L=x=>C.send({type:"go",position:x}),b=at("Back",()=>m(-1),"One ste\
p back"),M=at("Next",()=>m(1),"Next step"),A=at("Start",()=>L(0),"Start with an empty bench"),$=at("End",()=>L(t.get("vi\
ew").count),"End of the order"),T=at("Try it",()=>C.send({type:"take",step:l.value}),"Try it: the step chosen here"),y=()=>{
let x=Number.parseInt(f.value,10);x>=0&&L(x)},N=n("div",{class:"ts-tools",role:"group","aria-label":"Step through the or\
der; left and right arrows step too"},A,b,M,$,n("span",{class:"ts-pair"},"place ",f,p,at("Go",y,"Go to this place")));N.
addEventListener("keydown",x=>{if(!(x.target===f||Ot(x))){if(x.key==="ArrowLeft")m(-1);else if(x.key==="ArrowRight")m(1);else if(x.
key==="Home")L(0);else if(x.key==="End")L(t.get("view").count);else return;x.preventDefault()}});let C=st({model:t,el:e},
{kind:"rig"});C.show(C.asks("What comes next, and what can no longer be reached?",{first:M,begin:"press Next"}),C.alert,
s,N,Pt(c.nodes,[o,i,u,a,r.node,n("p",{class:"ts-prompt"},"Do another step next"),d,n("div",{class:"ts-tools"},n("span",{
class:"ts-pair"},"or one that is not ready: ",l,T))]));let v="";function S(x){let j=JSON.stringify(x);j!==v&&(v=j,c.show(
x),i.textContent=x.words)}function g(){let x=t.get("view");h=x.position,s.textContent=x.finding,o.textContent=x.happened,
a.textContent=x.next?`Next in this order: ${x.next}`:"This is the end of the order.",r.show("operation",x.in_hand),S(x.build),
u.replaceChildren(...jt(x.facts));let j=d.contains(document.activeElement);d.replaceChildren(...x.ready.map(([D,k])=>at(
k,()=>C.send({type:"take",step:D})))),x.ready.length||d.append(n("p",{class:"ts-hint"},"No step is ready.")),j&&(d.querySelector(
"button")??M).focus(),l.replaceChildren(...At(x.waiting)),l.disabled=T.disabled=!x.waiting.length,f.value=String(x.position),
p.textContent=` of ${x.count} `;let _=x.position===0,z=x.position===x.count;for(let D of[b,A])Rs(D,_);for(let D of[M,$])
Rs(D,z)}return C.follow("change:view",g),g(),()=>{r.close(),C.close()}}function oe(t){let e=null,s=null,o=r=>{if(e!==null){s=r;return}e=dt("turn"),t(r,e)},a=()=>{e=null;let r=s;s=null,r!==null&&
o(r)};return{ask:o,free:a,answered(r){r===e&&a()},get waiting(){return e!==null}}}var ft=(t,e,s,o,a)=>P("line",{x1:t,y1:e,x2:s,y2:o,class:a}),wt=(t,e,s,o="middle")=>P("text",{x:t,y:e,"text-anchor":o,class:"\
tsg-text"},s);function re(){let t=P("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(P("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let o=0;o<100;o+=1){let a=o/100*2*Math.PI,r=o%10===0?78:o%5===0?82:86;t.append(ft(100+
r*Math.sin(a),100-r*Math.cos(a),100+92*Math.sin(a),100-92*Math.cos(a),o%10===0?"tsg-mark tsg-long":"tsg-mark")),o%10===0&&
t.append(wt(100+66*Math.sin(a),104.5-66*Math.cos(a),String(o)))}t.append(P("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let o=0;o<10;o+=1){let a=o/10*2*Math.PI;t.append(ft(100+15*Math.sin(a),134-15*Math.cos(a),100+19*Math.sin(a),134-19*
Math.cos(a),"tsg-mark"))}let e=ft(100,134,100,119,"tsg-small"),s=P("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(e,s,P("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(o,a){s.setAttribute("tra\
nsform",`rotate(${o*360} 100 100)`),e.setAttribute("transform",`rotate(${o*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${a}`)}}}function Hs({top:t,mark:e,perFigure:s}){let o=P("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),a=c=>30+c/t*540;o.append(P("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*e<=t+1e-9;c+=1){let i=c%s===0;o.append(ft(a(c*e),22,a(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&o.
append(wt(a(c*e),84,String(Math.round(c*e))))}let r=P("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return o.append(
r,wt(586,14,"newtons","end")),{node:o,top:t,set(c,i){r.setAttribute("transform",`translate(${a(Math.min(c,t))} 0)`),o.setAttribute(
"aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function Ws({low:t,high:e,reach:s}){let o=P("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),a=i=>360+Math.max(-s,Math.min(s,i))/s*340;o.append(P("rect",{x:a(t),y:34,width:a(
e)-a(t),height:24,class:"tsg-target"}),wt((a(t)+a(e))/2,84,"target"),ft(20,46,700,46,"tsg-mark"),ft(360,26,360,66,"tsg-m\
ark tsg-long"),wt(20,20,"end play","start"),wt(700,20,"preload","end"),wt(360,20,"0"));for(let i=.05;i<=s+1e-9;i+=.05)for(let u of[
i,-i])o.append(ft(a(u),42,a(u),50,"tsg-mark"));o.append(wt(a(-s),70,`${s.toFixed(2)} mm`,"start"),wt(a(s),70,`${s.toFixed(
2)} mm`,"end"));let r=P("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=P("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return o.append(r,c),{node:o,set(i,u,d){r.setAttribute("transform",`translate(${a(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${a(u)} 0)`),o.setAttribute("aria-label",d)}}}function Ct(t,{min:e,max:s,step:o,value:a,words:r,onInput:c}){let i=n(
"input",{type:"range",class:"ts-slider",min:e,max:s,step:o,value:a,"aria-label":t}),u=n("output",{class:"ts-slid"},r(a));
return i.addEventListener("input",()=>{let d=r(Number(i.value));u.textContent=d,i.setAttribute("aria-valuetext",d),c(Number(
i.value))}),i.setAttribute("aria-valuetext",r(a)),{box:i,row:n("label",{class:"ts-slide"},n("span",{},t),i,u),set(d){i.value=
String(d),u.textContent=r(d)}}}function $t(t,e,s,o){let a=n("select",{class:"ts-box","aria-label":t,onchange:()=>o(a.value)},
...e.map(([r,c])=>n("option",{value:r,selected:r===s},c)));return{box:a,row:n("span",{class:"ts-pair"},`${t} `,a)}}function _s({model:t,el:e}){let s=t.get("about"),o=t.get("shown").state,a=null,r=n("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=n("p",{class:"ts-hint"}),i=n("p",{class:"ts-finding",role:"status"}),u=n("u\
l",{class:"ts-sentences"}),d=oe((v,S)=>y.send({type:"set",state:v,turn:S})),l=v=>{o={...o,...v},d.ask(o)},f=P("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),p=ft(0,0,0,0,"tsg-mark tsg-long"),h=wt(0,0,""),[m,
L]=s.readingsOnly?[72,48]:[96,120],b=m/(s.readingsOnly?o.radius:s.radii[1]),M=P("svg",{viewBox:`0 0 ${2*m+L} ${2*m+30}`,
width:2*m+L,height:2*m+30,class:"tsg-drum",role:"img"}),A=m+4;f.setAttribute("transform",`translate(${A} ${A})`),M.append(
f,p,ft(4,A,2*m+4,A,"tsg-centre"),ft(A,4,A,2*m+4,"tsg-centre"),P("circle",{cx:A,cy:A,r:10,class:"tsg-face"}),h);let $=G("\
Turn the shaft ten times",()=>l({turns:o.turns+10})),T=[n("div",{class:"ts-tools"},$)];if(!s.readingsOnly){let v=s.kinds,
S=v.map(([g,x])=>n("label",{class:"ts-option"},n("input",{type:"checkbox",checked:o.kinds.includes(g),onchange:j=>l({kinds:v.
map(([_])=>_).filter(_=>_===g?j.target.checked:o.kinds.includes(_))})}),`with ${x}`));T[0].append(G("Fit the rings anew",
()=>l({turns:0}))),S.length&&T.push(n("fieldset",{class:"tsg-ticks"},n("legend",{class:"ts-hint"},"What turns with the b\
earings"),...S)),T.push(Ct("Setting",{min:-.05,max:s.highest,step:.005,value:o.setting,onInput:g=>l({setting:g}),words:g=>g<
0?`${(-g).toFixed(3)} mm of end play`:`${g.toFixed(3)} mm of preload`}).row,Ct("Radius of the drum",{min:s.radii[0],max:s.
radii[1],step:1,value:o.radius,onInput:g=>l({radius:g}),words:g=>`${g} mm`}).row)}let y=st({model:t,el:e},{kind:"rig"});
y.show(y.asks("How hard does the shaft turn?",{first:$,begin:"turn the shaft",who:s.readingsOnly?"Take your reading here\
; write it in the form.":void 0}),y.alert,n("div",{class:"tsg-beside"},M,n("div",{class:"tsg-side"},r,c)),...T,i,u);function N(){
let v=t.get("shown");d.waiting||(o=v.state);let S=b*v.state.radius;Wt(f,{r:S}),Wt(p,{x1:A,y1:A-S,x2:2*m+L,y2:A-S}),Wt(h,
{x:A,y:2*m+22}),h.textContent=`drum, radius ${v.state.radius} mm`,M.setAttribute("aria-label",`A drum of ${v.state.radius}\
 mm radius on the shaft; the cord leaves it at its edge towards the scale.`),a?.top!==v.scale.top&&(a=Hs(v.scale),r.replaceChildren(
a.node),c.textContent=`Spring scale to ${v.scale.top} N, one mark ${v.scale.mark} N.`),a?.set(v.pull,v.pullWords),i.textContent=
v.finding,u.replaceChildren(...Kt(v.words)),d.answered(v.turn)}let C=()=>d.free();return y.follow("change:shown",N),y.follow(
"msg:custom",C),N(),y.close}function Rt({model:t,el:e},s){let o=t.get("about"),a=t.get("shown").state,r=oe((f,p)=>c.send({type:"set",state:f,turn:p})),
c=st({model:t,el:e},{kind:"rig"}),i=n("p",{class:"ts-finding",role:"status"}),u=s(o,f=>{a={...a,...f},r.ask(a)},a),d=o.readingsOnly?
"Take your readings here; write them in the form.":void 0;c.show(c.asks(u.asks,{first:u.first,begin:u.begin,who:d}),c.alert,
...u.side?[Pt([u.picture],[...u.controls,i])]:[n("div",{class:"tsg-wide"},u.picture),...u.controls,i]);function l(){let f=t.
get("shown");r.waiting||(a=f.state),u.set(f,a),i.textContent=f.finding,r.answered(f.turn)}return c.follow("change:shown",
l),c.follow("msg:custom",r.free),l(),c.close}var Bt=(...t)=>n("div",{class:"ts-tools"},...t);var xo={x:44,y:84,perMm:34};function $o(t){let e=P("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:s,y:o,
perMm:a}=xo,r=P("g",{}),c=P("g",{});e.append(P("rect",{x:1,y:22,width:758,height:o-22,class:"tsi-paper"}),P("rect",{x:s-
30,y:o,width:t.lines*t.space*a+60,height:64,class:"tsi-body"}),r,c,wt(12,14,"main scale, mm","start"),wt(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let u=s+i*t.space*a;c.append(
ft(u,o,u,o+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(wt(u,o+48,String(i)))}return{node:e,set(i){r.replaceChildren();for(let u=Math.
max(0,Math.ceil(i.mm-1));u<=t.top+25;u+=1){let d=s+(u-i.mm)*a;d<4||d>756||(r.append(ft(d,o,d,o-(u%10===0?34:u%5===0?28:20),
"tsi-fine")),u%5===0&&r.append(wt(d,o-40,String(u))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function Fs(t){
return Rt(t,(e,s,o)=>{let a=$o(e),r=Ct("Rod",{min:0,max:e.top,step:.05,value:o.rod,words:()=>"push down to the right",onInput:d=>s(
{rod:d})}),c=$t("Foot",e.places,o.place,d=>s({place:d,rod:0})),i=G("Push the rod down until it rests",()=>s({rod:e.top})),
u=$t("Look",e.eyes,o.eye,d=>s({eye:d}));return{asks:"How deep does it lie?",first:i,begin:"push the rod down",picture:a.
node,controls:[Bt(c.row,u.row),Bt(i,G("Lift the rod",()=>s({rod:0}))),r.row],set(d,l){a.set(d),c.box.value=l.place,u.box.
value=l.eye,r.box.value=l.rod}}})}function le(t,e){let s=e>1?.65/(e-1):0;return Array.from({length:e},(o,a)=>{let r=e>1?a*s:0,c=e>1?.35:1;return 1-Math.max(
0,Math.min(1,(t-r)/c))})}function qs(t,e,s,o){let[a,r]=[0,0];for(let c=s;c!==null;c=t[c].parent){let[i,u]=t[c].own[o]??[
0,0];a+=i*e[c],r+=u*e[c]}return[a,r]}function ts(t){let e=t.findIndex(s=>s>0);return{placed:t.filter(s=>s===0).length,next:e<
0?null:e}}function Us(t,e){return t<=0?0:t>=e||e<2?1:.35+(t-1)*(1-.35)/(e-1)}function Ks(t,e,s){let o=[0,0,0];for(let a=s;a!==
null;a=t[a].parent){let r=e[a];for(let[c,i]of t[a].own.entries())o[c]+=i*r}return o}function es(t,e){globalThis.twoshaftChunks??=new Map;let s=globalThis.twoshaftChunks,o=s.get(e)??So(t,e);return s.set(e,
o),o.catch(()=>s.delete(e)),o}function So(t,e){return new Promise(s=>{let o=(a,r)=>{if(a.type!=="chunk"||a.name!==e)return;
t.off("msg:custom",o);let c=URL.createObjectURL(new Blob([r[0]],{type:"text/javascript"})),i=import(c);i.finally(()=>URL.
revokeObjectURL(c)).catch(()=>{}),s(i)};t.on("msg:custom",o),t.send({type:"chunk",name:e})})}var Ne=.12,Jt=1.15,zs="This browser draws nothing in three dimensions. The section shows the same parts.",Be;function Ys(){
if(Be!==void 0)return Be;let t=document.createElement("canvas").getContext("webgl2");return t?.getExtension("WEBGL_lose_\
context")?.loseContext(),Be=!!t,Be}function Xs(t){Ys()&&es(t,"solids").catch(()=>{})}function De(t,e){let s=n("span",{style:`\
color: ${e}; forced-color-adjust: none`});t.append(s);let o=n("canvas",{width:1,height:1}).getContext("2d");o.fillStyle=
getComputedStyle(s).color,s.remove(),o.fillRect(0,0,1,1);let[a,r,c]=o.getImageData(0,0,1,1).data;return{text:`rgb(${a}, ${r}\
, ${c})`,light:(a+r+c)/765}}var ss=window.matchMedia("(forced-colors: active)");function Gs(t){let[e,s,o]=ss.matches?["C\
anvasText","Canvas","Highlight"]:["var(--ts-ink)","var(--ts-paper)","var(--ts-accent)"],a=De(t,s),r=a.light>.5?18:40;return{
ink:De(t,e).text,paper:a.text,accent:De(t,o).text,metal:De(t,`color-mix(in srgb, ${e} ${r}%, ${s})`).text}}function Vs(t,e,s){
let o=n("p",{class:"ts-hint ts-unit-name",role:"status"});if(!Ys())return o.textContent=zs,{drawn:!1,nodes:[o],move(){},
ready(){},close(){}};let a=n("canvas",{class:"ts-space",tabindex:"0",role:"application","aria-label":"The parts in three\
 dimensions. Arrow keys turn, plus and minus zoom, Home shows all of it as at first, H hides the chosen part, A shows al\
l. The section shows the same parts with their names."}),r=Tt({"aria-label":"Part",class:"ts-box ts-before"},[["","no pa\
rt chosen"],...s.map(([y,N])=>[y,N])]),c=new Set,i,u=()=>[0,0,0],d=()=>{},l="Drag or use the arrow keys to turn. Tap a p\
art, or choose it here, to read its name.";o.textContent="Drawing …";function f(){let y=s.find(([C])=>C===r.value),N=c.
has(r.value)?" Hidden.":"";o.textContent=y?`${y[1]}. ${y[2]}${N}`:l,i?.look(r.value,c)}function p(){r.value&&(c.delete(r.
value)||c.add(r.value),f())}function h(){c.clear(),f()}r.addEventListener("change",f);let m={ArrowLeft:()=>i?.turnBy(-Ne,
0),ArrowRight:()=>i?.turnBy(Ne,0),ArrowUp:()=>i?.turnBy(0,Ne),ArrowDown:()=>i?.turnBy(0,-Ne),"+":()=>i?.zoomBy(Jt),"=":()=>i?.
zoomBy(Jt),"-":()=>i?.zoomBy(1/Jt),Home:()=>i?.home(),h:p,a:h};a.addEventListener("keydown",y=>{let N=m[y.key]??m[y.key.
toLowerCase()];!N||Ot(y)||(N(),y.preventDefault())});let L=null;a.addEventListener("pointerdown",y=>{L={x:y.clientX,y:y.
clientY,far:!1},a.setPointerCapture(y.pointerId)}),a.addEventListener("pointermove",y=>{if(!L)return;let[N,C]=[y.clientX-
L.x,y.clientY-L.y];!L.far&&Math.hypot(N,C)<4||(L={x:y.clientX,y:y.clientY,far:!0},i?.turnBy(-N/150,C/150))}),a.addEventListener(
"pointerup",y=>{if(L&&!L.far){let{left:N,top:C,width:v,height:S}=a.getBoundingClientRect(),[g,x]=[(y.clientX-N)/v,(y.clientY-
C)/S];r.value=i?.partAt(2*g-1,1-2*x)??"",f()}L=null}),a.addEventListener("wheel",y=>{document.activeElement===a&&(i?.zoomBy(
y.deltaY<0?Jt:1/Jt),y.preventDefault())},{passive:!1});let b=()=>{i?.recolour(Gs(a.parentElement??document.body)),f()},M=new MutationObserver(
b),A=new ResizeObserver(()=>i?.resized()),$=!1;return es(t,"solids").then(({solidsView:y})=>{$||(i=y(a,e,Gs(a.parentElement??
document.body)),i.move(u),i.home(),d(),f(),i.paint(),A.observe(a),M.observe(document.body,{attributes:!0}),ss.addEventListener(
"change",b),a.dataset.painted="true")},()=>{o.textContent=zs}),{drawn:!0,nodes:[n("div",{class:"ts-tools"},n("span",{class:"\
ts-pair"},"Part ",r),at("Hide or show",p,"Hide or show the chosen part"),at("Show all",h,"Show all parts"),at("−",()=>i?.
zoomBy(1/Jt),"Smaller"),at("+",()=>i?.zoomBy(Jt),"Larger")),o,a],move(y){u=y,i?.move(y)},ready(y){d=y},close(){$=!0,A.disconnect(),
M.disconnect(),ss.removeEventListener("change",b),i?.close()}}}var Pe=200,Lo=580,Co="2.6";function Js({model:t,el:e}){let s=n("p",{class:"ts-finding"}),o=n("p",{class:"ts-hint ts-next\
in",role:"status"}),a=n("div",{class:"ts-apart-picture"}),r=n("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"Wha\
t goes in"}),c=Ft(t),i=t.get("stages"),u=$t("Show",i,t.get("stage"),S=>v.send({type:"stage",stage:S})),d=Ct("From apart \
to together",{min:0,max:Pe,step:1,value:0,words:S=>S<=0?"apart":S>=Pe?"together":"on the way",onInput:S=>T(S/Pe)}),l=t.get(
"picture"),f,p=[],h=[],m=0,L=!1,b,M=at("In three dimensions",()=>{L=!L,M.setAttribute("aria-pressed",String(L)),N()});M.
setAttribute("aria-pressed","false");function A(S){d.set(Math.round(S*Pe)),T(S)}function $(S){let{placed:g}=ts(le(m,l.movers.
length));A(Us(g+S,l.movers.length))}function T(S){if(m=S,!f)return;let g=le(m,l.movers.length);for(let{group:z,mover:D,view:k}of p)
f.shift(z,qs(l.movers,g,D,k));y(g);for(let z of h)z.style.opacity=String(1-m);e.classList.toggle("ts-together",m>.5);let{
placed:x,next:j}=ts(g),_=`${x} of ${g.length} in place.`;for(let[z,D]of[...r.children].entries())D.classList.toggle("ts-\
current",z===j);o.textContent=j===null?"All in place.":`${_} Next in: ${l.movers[j].words}.`}function y(S){let{movers:g}=t.
get("space");b?.move(x=>Ks(g,S,x))}function N(){if(b?.close(),b=void 0,!!f&&(a.replaceChildren(...L?[]:f.nodes),!!L)){if(t.
get("space").stage!==t.get("stage")){Xs(t),v.send({type:"space"});return}b=Vs(t,t.get("space"),l.parts),y(le(0,l.movers.
length)),a.replaceChildren(...b.nodes,...b.drawn?[]:f.nodes),b.ready(()=>y(le(m,l.movers.length)))}}function C(){if(l=t.
get("picture"),s.textContent=t.get("finding"),u.box.value=t.get("stage"),f=void 0,a.replaceChildren(),!l.svg)return;f=Gt(
l,{name:"Parts apart",tallest:Lo,onChoose:g=>c.show("part",[g])}),f.drawing.dataset.grow=Co,p=Z(f.drawing,"[data-move]").
map(g=>({group:g,mover:Number(g.dataset.move),view:String(g.dataset.view)})),h=Z(f.drawing,".tsu-traces"),r.replaceChildren(
...l.movers.map(({words:g})=>n("li",{},g))),N(),T(m)}let v=st({model:t,el:e},{kind:"rig"});return v.show(v.asks("How do \
these parts go together?",{first:d.box,begin:"move the slider",who:""}),v.alert,s,n("div",{class:"ts-apart"},n("div",{class:"\
ts-apart-tools"},u.row,d.row,n("div",{class:"ts-tools"},at("One in",()=>$(1),"One part more in place"),at("One out",()=>$(
-1),"One part less in place")),M,o,c.node,r),a)),v.follow("change:picture",C),v.follow("change:space",N),C(),()=>{b?.close(),
c.close(),v.close()}}function Zs({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding"}),a=n("p",{class:"tsj-happened",role:"status"}),
r=n("div",{class:"tsj-drawing"});r.innerHTML=s.drawing;let c=n("div",{class:"tsj-bars"}),i=Z(r,"[data-bolt]"),u=dt("torq\
ue"),d=n("input",{id:u,type:"range",min:10,max:100,step:5,oninput:()=>p()});d.value="100";let l=n("output",{class:"tsj-f\
igure",for:u}),f=()=>d.value==="100"?s.torque:Number((Math.round(s.torque*Number(d.value)/100/s.step)*s.step).toFixed(3));
function p(){l.textContent=`${f()} N·m`,d.setAttribute("aria-valuetext",`${f()} newton metres, ${d.value} percent of th\
e torque`)}let h=v=>$.send({type:"pull",bolt:v,torque:f()}),m=G("Take back",()=>$.send({type:"undo"})),L=G("Wait until t\
he film has run out",()=>$.send({type:"wait"})),b=n("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>$.send({type:"set",film:Number(b.value)})},...s.films.map(v=>n("option",{value:v},v?`${v} µm thick`:"none"))),
M=n("input",{type:"checkbox",onchange:()=>$.send({type:"set",scattered:M.checked})});r.addEventListener("click",v=>{let S=Et(
v,"[data-bolt]");S&&(A(S),h(Number(S.dataset.bolt)))});let A=v=>{for(let S of i)S.setAttribute("tabindex",S===v?"0":"-1");
v.focus({preventScroll:!0})};r.addEventListener("keydown",v=>{let S=Et(v,"[data-bolt]");if(!S||v.ctrlKey||v.metaKey||v.altKey)
return;let g=Number(S.dataset.bolt),x={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[v.key];if(x)A(i[(g+x+i.length)%
i.length]);else if(v.key==="Home")A(i[0]);else if(v.key==="End")A(i[i.length-1]);else if(v.key==="Enter"||v.key===" ")v.
repeat||h(g);else return;v.preventDefault()});let $=st({model:t,el:e},{kind:"rig"}),T=G("Start all by hand",()=>$.send({
type:"start"})),y=n("div",{class:"ts-tools",role:"group","aria-label":"Bolts"},T,...s.rounds.map(([v,S])=>G(`One round ${S}`,
()=>$.send({type:"round",pattern:v,torque:f()}))),m,G("Start again",()=>$.send({type:"again"}))),N=n("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},n("span",{class:"tsj-slide"},n("label",{for:u},"Wrench set to"),d,l));s.films.length&&
N.append(n("label",{class:"ts-pair"},"Wet sealant",b),L,n("label",{class:"tsj-check"},M,"friction scatters from bolt to \
bolt")),$.show($.asks("Does every bolt keep its clamp?",{first:T,begin:"start all bolts by hand",who:s.readingsOnly?"Not\
hing is saved here; your answers stand in the form.":void 0}),$.alert,o,N,y,a,n("div",{class:"tsj-bench"},r,c),n("detail\
s",{class:"ts-keys"},n("summary",{},"How, and keys"),"The first choice of a bolt starts it by hand, the next ones pull i\
t. Arrows go from bolt to bolt, Enter pulls."));function C(){let v=t.get("view");o.textContent=v.finding,a.textContent=v.
happened,c.innerHTML=v.bars;for(let[S,g]of i.entries()){let x=v.tight[S]?`${v.clamps[S]} kN`:v.started[S]?"started by ha\
nd":"not started";g.setAttribute("aria-label",`Bolt ${S+1} of ${s.count}, ${x}`),g.classList.toggle("tsj-tight",v.tight[S]),
g.classList.toggle("tsj-started",v.started[S])}m.disabled=!v.pulls,L.disabled=!v.standing,b.value=String(v.film),M.checked=
v.scattered}return $.follow("change:view",C),p(),C(),$.close}var Qs="tsk-number";function Ut(t,e,...s){return n("td",{class:e?Qs:null,"data-label":t||null,role:"cell"},...s)}function Re(t,e,s){
let o=e.map(([c,i])=>n("th",{scope:"col",role:"columnheader",class:i?Qs:null},c)),a=n("thead",{role:"rowgroup"},n("tr",{
role:"row"},...o)),r=n("table",{class:"tsk-board",role:"table"},n("caption",{},t),a,s);return n("div",{class:"ts-scroll"},
r)}function tn({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding",role:"status"}),a=n("p",{class:"tsk-spent"}),
r=n("ul",{class:"ts-sentences tsk-left"}),c=n("p",{class:"tsk-more"}),i=n("tbody",{role:"rowgroup"}),u=new Map;for(let[p,
h,m,L]of s.checks){let b=n("select",{class:"ts-box","aria-label":`What it showed: ${h}`,onchange:()=>l.send({type:"obser\
ve",check:p,shown:b.value})},n("option",{value:""},"Not made"),...At(L)),M=Ut("worth, bit",!0),A=Ut("bit a minute",!0),$=n(
"tr",{role:"row"},n("th",{scope:"row",role:"rowheader"},h),Ut("min",!0,`${m}`),Ut("it showed",!1,b),M,A);u.set(p,{box:b,
tells:M,rate:A,row:$}),i.append($)}let d=n("button",{class:"ts-button",type:"button",onclick:()=>l.send({type:"clear"})},
"Take all observations back"),l=st({model:t,el:e},{kind:"rig"});l.show(l.asks("Which fault is it, and which check comes \
next?",{first:u.values().next().value?.box,begin:"say what a check showed"}),l.alert,o,r,c,Re("Checks: what each showed,\
 and what it is still worth",[["Check"],["min",!0],["It showed"],["worth, bit",!0],["bit a minute",!0]],i),n("div",{class:"\
ts-tools"},d,a));function f(){let p=t.get("view");o.textContent=p.finding,a.textContent=p.spent,c.textContent=p.more,r.replaceChildren(
...Kt(p.left.map(([L,b])=>`${L} (${b})`)));let h=p.ranked,m=new Map(h.map(([L,b,M],A)=>[L,{bits:b,rate:M,rank:A}]));for(let[
L,{box:b,tells:M,rate:A,row:$}]of u){let T=p.observed[L],y=m.get(L);b.value=T??"",M.textContent=y?y.bits:T!==void 0?"mad\
e":"nothing",A.textContent=y?y.rate+(y.rank===0?" ◀ best next":""):"–",$.classList.toggle("tsk-best",y?.rank===0)}}return l.
follow("change:view",f),f(),l.close}function en(t,{move:e,hand:s}){let{element:o,at:a}=Te(t),r=Object.entries(t.aims).filter(([u])=>u.startsWith("at:")),c=(u,d)=>{
let[l,f]=a(u,d);return P("circle",{cx:l,cy:f,r:16,class:"tsl-spot",...{"data-travel":u,"data-turn":d}})},i=P("g",{class:"\
tsl-knob"},P("circle",{r:12}));return o.append(...r.map(([,[u]])=>c(Number(u),0)),...t.gears.map(([,u,d])=>c(u,d)),i),o.
classList.add("ts-lever"),o.addEventListener("click",u=>{let d=Et(u,".tsl-spot");if(!d)return;let l=[Number(d.dataset.travel),
Number(d.dataset.turn)];for(let f of Ls(t.aims,s(),l))e(f)}),{element:o,scale:[ce,Oe],show([u,d],l){let[f,p]=a(u,d);i.setAttribute(
"transform",`translate(${f.toFixed(1)} ${p.toFixed(1)})`);for(let h of Z(o,"[data-gear]"))h.classList.toggle("tsl-in",l.
includes(String(h.dataset.gear)))}}}function sn({model:t,el:e}){let s=n("p",{class:"ts-finding",role:"status"}),o=n("p",{class:"ts-happened",role:"status"}),
a=n("div",{class:"ts-scroll ts-fit"}),r=en(t.get("plan"),{move:S=>M({type:"move",code:S}),hand:()=>t.get("view").hand}),
c=n("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=n("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...At(t.get("builds"))),u=at("Start again",()=>M({type:"reset"})),d=n("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([S,g])=>at(g,()=>M({type:"move",code:S})))),
l=n("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),f=n("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),p=n("p",{class:"ts-proof",role:"status"}),h=at("What does a full hand test find?",()=>{
h.disabled=!0,p.textContent="testing",M({type:"prove"})}),m=st({model:t,el:e},{kind:"rig"});c.append(n("div",{},n("p",{class:"\
ts-prompt"},"The lever"),r.element),a),m.show(m.asks("Which gears can the lever reach?",{first:r.element,begin:"press a \
place in the gate"}),m.alert,n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"Put together: ",i),u,h),s,c,o,p,n("p",
{class:"ts-hint ts-gate-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down tu\
rn. Or in words:"),n("div",{class:"ts-gate-work"},d,n("div",{},n("p",{class:"ts-prompt"},"Tried by hand"),f,l)));let L=0,
b="";function M(S){L+=1,m.send({...S,turn:L})}function A(){let S=t.get("view");if(b!==t.get("figure")){b=t.get("figure"),
a.innerHTML=b;let g=Qt(a,"svg");g.removeAttribute("role"),g.setAttribute("aria-hidden","true")}for(let g of Z(a,"[data-b\
ody]")){let[x,j]=S.moved[String(g.dataset.rides??g.dataset.body)]??[0,0];g.setAttribute("transform",`translate(${x.toFixed(
2)} ${j.toFixed(2)})`)}for(let g of Z(a,"[data-gear]"))g.classList.toggle("tsg-in",S.gears.includes(g.dataset.gear));for(let g of Z(
a,"[data-lifts]"))g.classList.toggle("tsg-up",S.lifted);r.show(S.hand,S.gears),c.dataset.turn=String(S.turn),s.textContent=
`${S.gears.length>1?"■ ":S.gears.length?"● ":"○ "}${S.title}.`,o.textContent=S.happened,o.classList.toggle("ts-sto\
pped",/topped by/.test(S.happened)),(l.childElementCount!==S.log.length||l.lastElementChild?.textContent!==S.log.at(-1))&&
(l.replaceChildren(...S.log.map(g=>n("li",{class:/topped by/.test(g)?"ts-stopped":""},g))),l.scrollTop=l.scrollHeight),f.
hidden=S.log.length>0,i.value=S.build,p.textContent=S.proof,h.disabled=!1,y=!1,v()}c.addEventListener("keydown",S=>{if(Ot(
S))return;let g={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[S.key];g&&(S.preventDefault(),M({type:"\
nudge",travel:g[0],turned:g[1]}))}),i.addEventListener("change",()=>M({type:"build",build:i.value}));let $=null,T=null,y=!1;
function N(S,g){let x=g.getBoundingClientRect(),j=g.viewBox.baseVal.width/x.width;return[(S.clientX-x.left)*j,(S.clientY-
x.top)*j]}c.addEventListener("pointerdown",S=>{let g=Et(S,".tsg-panel, .tsl-knob");if(!g||S.button!==0)return;let x=g.ownerSVGElement,
j=t.get("view").hand,[_,z]=N(S,x),D=Number(g.dataset.scale),k=D?[D,D]:r.scale;$={svg:x,x:_-j[0]*k[0],y:z+j[1]*k[1],scale:k},
c.setPointerCapture(S.pointerId),c.focus({preventScroll:!0}),c.classList.add("ts-pulling"),S.preventDefault()}),c.addEventListener(
"pointermove",S=>{if(!$)return;let[g,x]=N(S,$.svg),{scale:j}=$;T={travel_mm:(g-$.x)/j[0],turn_mm:($.y-x)/j[1]},v()});let C=()=>{
$=null,c.classList.remove("ts-pulling")};c.addEventListener("pointerup",C),c.addEventListener("pointercancel",C);function v(){
if(y||!T)return;y=!0;let S=T;T=null,M({type:"pull",...S})}return m.follow("msg:custom",S=>{S.type==="trouble"&&(y=!1)}),
m.follow("change:view",A),A(),m.close}function nn({model:t,el:e}){let s=t.get("plan"),o=t.get("view"),a=n("p",{class:"ts-finding tsw-say",role:"status"}),r=n(
"p",{class:"ts-happened tsw-happened",role:"status"}),c=n("div",{class:"ts-scroll ts-fit tsw-train"}),i=o.dials[0].shaft,
d=s.gears.map(([g,x])=>n("button",{type:"button",class:"ts-button","data-gear":g,"aria-pressed":"false",onclick:()=>C({type:"\
gear",gear:g})},x)),l=n("select",{class:"ts-box","aria-label":"Wheel held still",onchange:g=>C({type:"hold",shaft:g.target.
value})},...At(s.holds)),f=n("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:g=>{i=g.target.value,S()}},
...At(o.dials.map(g=>[g.shaft,g.name]))),p=g=>C({type:"turn",shaft:i,turns:g}),h=`1/${s.marks}`,m=n("div",{class:"ts-too\
ls",role:"group","aria-label":"Turn the shaft"},at("↺ 1 turn",()=>p(-1),"One turn anticlockwise"),at(`↺ ${h}`,()=>p(
-s.step),`${h} turn anticlockwise`),at("↺ a touch",()=>p(-s.fine),"A touch anticlockwise"),at("a touch ↻",()=>p(s.fine),
"A touch clockwise"),at(`${h} ↻`,()=>p(s.step),`${h} turn clockwise`),at("1 turn ↻",()=>p(1),"One turn clockwise"),at(
"Marks to zero",()=>C({type:"reset"}))),L=new Map;for(let g of o.dials){let x=P("g",{},P("circle",{class:"tsw-end",r:34}),
P("line",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),P("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),j=[];for(let B=0;B<
s.marks;B+=1)j.push(P("line",{class:"tsw-tick",y1:-40,y2:B?-47:-52,transform:`rotate(${B*360/s.marks})`})),B&&j.push(P("\
text",{class:"tsw-number",x:57*Math.sin(B*2*Math.PI/s.marks),y:-57*Math.cos(B*2*Math.PI/s.marks)+4},String(B)));let _=P(
"svg",{viewBox:"-70 -70 140 140",class:"tsw-dial","data-shaft":g.shaft,"aria-hidden":"true"},P("circle",{class:"tsw-plat\
e",r:40}),...j,P("path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),x),z=n("div",{class:"tsw-count",tabindex:"0",role:"\
application","aria-roledescription":"shaft","data-shaft":g.shaft},n("div",{class:"tsw-name"}),_,n("div",{class:"tsw-stro\
kes","aria-hidden":"true"}),n("div",{class:"tsw-figure"}));L.set(g.shaft,{box:z,svg:_,shaftEnd:x}),z.addEventListener("f\
ocus",()=>{i!==g.shaft&&(i=g.shaft,S())}),z.addEventListener("keydown",B=>{if(Ot(B))return;let H={ArrowRight:1,ArrowDown:1,
ArrowLeft:-1,ArrowUp:-1,PageDown:1,PageUp:-1}[B.key];H&&(B.preventDefault(),i=g.shaft,p(H*(B.key.startsWith("Page")?1:B.
shiftKey?s.fine:s.step)))});let D=null,k=B=>{let H=_.getBoundingClientRect();return Math.atan2(B.clientX-H.left-H.width/
2,H.top+H.height/2-B.clientY)/(2*Math.PI)};_.addEventListener("pointerdown",B=>{B.button===0&&(D=k(B),_.setPointerCapture(
B.pointerId),z.focus({preventScroll:!0}),B.preventDefault())}),_.addEventListener("pointermove",B=>{if(D===null)return;let H=k(
B),q=H-D;q-=Math.round(q),D=H,b+=q,A()});let w=()=>{D=null};_.addEventListener("pointerup",w),_.addEventListener("pointe\
rcancel",w)}let b=0,M=!1;function A(){if(M||Math.abs(b)<.002)return;M=!0;let g=b;b=0,p(g)}let $=st({model:t,el:e},{kind:"\
rig"}),T=[n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"Hold still: ",l),n("span",{class:"ts-pair"},"Turn by ha\
nd: ",f)),n("div",{class:"tsw-counts"},...[...L.values()].map(g=>g.box)),m,r];$.show($.asks("How many turns does it take\
?",{first:m,begin:s.closed?"turn a shaft":"engage a gear, then turn a shaft",who:s.closed?"Nothing is saved here; your a\
nswers stand in the form.":void 0}),$.alert,a,!s.closed&&n("div",{class:"ts-tools",role:"group","aria-label":"Gears enga\
ged"},n("span",{},"Engage: "),...d),...s.closed?T:[Pt([c],T,"wide")],n("p",{class:"ts-hint tsw-say"},`All three are seen\
 from the clutch side. Drag a dial round, or go to it and use the arrow keys (${h} turn), Shift with an arrow key (a tou\
ch) or Page Up and Page Down (one turn). Each stroke is a whole turn.`));let y=0,N=null;function C(g){y+=1,$.send({...g,
turn:y})}let v=g=>{let x=[];for(let j=g;j>0;j-=5)x.push(j>=5?"||||/":"|".repeat(j));return x.join(" ")};function S(){let g=t.
get("view");N!==t.get("figure")&&(N=String(t.get("figure")),c.innerHTML=N);for(let x of Z(c,"[data-wheel]")){let[j,_]=g.
wheels[String(x.dataset.wheel)]??[0,!0];x.setAttribute("transform",`translate(0 ${(j*Number(x.dataset.reach)).toFixed(1)}\
)`),x.classList.toggle("tsw-behind",!_)}for(let x of d)x.setAttribute("aria-pressed",String(g.engaged.includes(x.dataset.
gear)));l.value=g.held,f.value=i;for(let x of g.dials){let{box:j,shaftEnd:_}=L.get(x.shaft),z=x.way>0?"↻":x.way<0?"↺":
"";_.setAttribute("transform",`rotate(${x.angle})`);let[D,,k,w]=j.children;D.textContent=`${x.name}${x.held?", held":x.shaft===
i?", your hand":""}`,k.textContent=x.strokes||z?`${z} ${v(x.strokes)}`:"no stroke",w.textContent=x.figure,j.classList.toggle(
"tsw-hand",x.shaft===i),j.classList.toggle("tsw-held",x.held),j.setAttribute("aria-label",`${x.name}${x.held?", held":""}\
. ${x.words}`)}a.textContent=g.finding,r.textContent=g.happened,e.dataset.turn=String(g.turn),M=!1,A()}return $.follow("\
change:view",S),S(),$.close}function on({model:t,el:e}){let s=n("p",{class:"ts-finding",role:"status"}),o=n("div",{class:"tsh-picture"}),a=n("p",{class:"\
tsh-head"}),r=n("p",{class:"tsh-seen"}),c=n("div",{class:"tsh-told"}),i=n("div",{class:"tsh-box",role:"status"},a,r,c),u=[],
d=[],l=null,f=t.get("plan").lookingOnly,p=(C,v)=>n("button",{type:"button",class:"ts-button","data-verdict":C,"aria-pres\
sed":"false",onclick:()=>M.send({type:"judge",place:l,verdict:C})},v),h=f?[]:[p("stop","Stop here"),p("well","Fine as it\
 is")],m=n("button",{type:"button",class:"ts-button",onclick:()=>M.send({type:"next"})},"Another day"),L=n("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...h);t.get("plan").more&&L.append(m);let b=n("p",{class:"\
ts-keys"},f?"Choose a place to read what can be seen there. Keys: arrows go from place to place.":"Choose a place, read \
what can be seen there, and judge it. Keys: arrows go from place to place; Tab goes on to the buttons."),M=st({model:t,el:e},
{kind:"rig"});M.show(M.asks(f?"What is to be seen at each place?":"Where can somebody get hurt?",{first:f?o:h[0],begin:f?
"choose a place":"choose a place and judge it",who:f?"Nothing is saved here; your answers stand in the form.":void 0}),M.
alert,f?null:s,f?null:b,Pt([o],[i,!f&&L],"widest"),f?b:null);function A(C,v){let S=C!==l;l=C;for(let[g,x]of d.entries()){
let j=u[g][0]===C;x.setAttribute("tabindex",j?"0":"-1"),x.setAttribute("aria-pressed",String(j)),x.classList.toggle("tsh\
-chosen",j),j&&v&&(x.focus({preventScroll:!0}),$(x))}S&&M.send({type:"choose",place:C})}function $(C){let v=Qt(C,".tsh-h\
it").getBoundingClientRect(),S=o.getBoundingClientRect();(v.left<S.left||v.right>S.right)&&(o.scrollLeft+=v.left-S.left-
(S.width-v.width)/2),(v.bottom<0||v.bottom>innerHeight||v.top<0)&&C.scrollIntoView({block:"nearest"})}function T(){let C=t.
get("plan");u=C.places,o.innerHTML=C.drawing,Qt(o,"svg").setAttribute("role","group"),d=u.map(([v])=>Qt(o,`[data-place="${v}\
"]`)),d.forEach((v,S)=>{v.setAttribute("role","button"),v.setAttribute("aria-label",`${S+1} ${u[S][1]}`),v.addEventListener(
"click",()=>A(u[S][0],!0))}),l=String(t.get("view").chosen),A(l,!1)}o.addEventListener("keydown",C=>{if(Ot(C))return;let v=u.
findIndex(([x])=>x===l),S=Math.min(6,u.length),g=v;if(C.key==="ArrowRight")g=v+1;else if(C.key==="ArrowLeft")g=v-1;else if(C.
key==="ArrowDown")g=v+S;else if(C.key==="ArrowUp")g=v-S;else if(C.key==="Home")g=0;else if(C.key==="End")g=u.length-1;else if(C.
key!=="Enter"&&C.key!==" ")return;C.preventDefault(),g>=0&&g<u.length&&A(u[g][0],!0)});function y(){let C=t.get("view");
s.textContent=C.finding;let v=u.findIndex(([x])=>x===C.chosen);a.textContent=`${v+1}  ${u[v][1]}`,r.textContent=C.seen;let{
verdict:S,...g}=C.told;if(c.replaceChildren(),S){let x=C.judged[C.chosen],j=x==="stop"==(S==="Stop here."),_=x==="stop"?
"Stop here":"Fine as it is";c.append(n("p",{class:"tsh-verdict"},j?`✓ Yes: ${S}`:`✗ You said “${_}”. The course sa\
ys: ${S}`),n("dl",{class:"ts-facts"},...Object.entries(g).flatMap(([z,D])=>[n("dt",{},z),n("dd",{},D)])))}for(let x of h)
x.setAttribute("aria-pressed",String(C.judged[C.chosen]===x.dataset.verdict));for(let[x,j]of d.entries()){let _=C.judged[u[x][0]];
j.setAttribute("aria-label",`${x+1} ${u[x][1]}${_?`, judged: ${_==="stop"?"stop here":"fine as it is"}`:""}`);let z=j.querySelector(
".tsh-tag");if(!_){z?.remove();continue}z||(z=P("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),j.
append(z)),z.textContent=_==="stop"?"■ stop":"○ well"}e.dataset.turn=C.chosen}let N=()=>{T(),y()};return M.follow("c\
hange:plan",N),M.follow("change:view",y),N(),M.close}function rn({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding",role:"status"}),a=n("p",{class:"tsl-sum"}),r=n(
"div",{class:"tsl-drawing"}),c=new Map,u=s.sliders.map(([p,h,m,L,b,M])=>{let A=dt(p.replace("_","-")),$=n("output",{class:"\
tsl-figure",for:A}),T=n("input",{id:A,type:"range",min:L,max:b,step:M,oninput:()=>{y(),l.send({type:"set",name:p,value:Number(
T.value)})}}),y=()=>{$.textContent=`${T.value} ${m}`,T.setAttribute("aria-valuetext",`${T.value} ${m==="°"?"degrees":m}`)};
return c.set(p,{slider:T,say:y}),n("div",{class:"tsl-row"},n("label",{for:A},h),T,$)}),d=n("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>l.send({type:"set",name:"grip",value:d.value})},...At(s.grips)),l=st({model:t,el:e},{kind:"\
rig"});l.show(l.asks("Is this lift safe by hand?",{first:c.values().next().value?.slider,begin:"set the load"}),l.alert,
o,n("div",{class:"tsl-sliders",role:"group","aria-label":"The lift"},...u,n("div",{class:"tsl-row"},n("span",{},"Grip"),
d)),r,a,n("p",{class:"ts-keys"},"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));
function f(){let p=t.get("view");o.textContent=p.finding,a.textContent=p.sum,r.innerHTML=p.drawing;for(let[h,{slider:m,say:L}]of c)
document.activeElement!==m&&(m.value=p.sizes[h]),L();d.value=p.sizes.grip}return l.follow("change:view",f),f(),l.close}var je={x:90,y:120,perMm:20,radius:82,bevel:30};function Eo(t){let e=P("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:s,y:o,perMm:a,radius:r}=je;e.append(P("rect",{x:s-60,y:o-56,width:a*t.top+90,height:112,class:"tsi-pa\
per"}),ft(s-20,o,s+a*t.top+20,o,"tsi-bold"));for(let f=0;f*t.pitch<=t.top;f+=1){let p=s+f*t.pitch*a;if(f%2){e.append(ft(
p,o,p,o+18,"tsi-fine"));continue}let h=f/2;e.append(ft(p,o,p,o-(h%5?18:27),h%5?"tsi-fine":"tsi-bold")),h%5===0&&e.append(
wt(p,o-33,String(h)))}let c=P("g",{});e.append(c,wt(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=P("path",{d:`M0 ${o-r+14}L${je.bevel} ${o-r}L${je.bevel} ${o+r}L0 ${o+r-14}\
Z`,class:"tsi-body"}),u=P("rect",{x:je.bevel,y:o-r,width:760,height:2*r,class:"tsi-body"}),d=P("rect",{x:0,y:o-r,width:760,
height:2*r,fill:"var(--ts-paper)"}),l=P("g",{});return c.append(d,i,u,l),{node:e,set(f){c.setAttribute("transform",`tran\
slate(${s+f.mm*a} 0)`),l.replaceChildren();for(let p=0;p<t.lines;p+=1){let h=p-f.line;h-=t.lines*Math.round(h/t.lines);let m=h/
t.lines*2*Math.PI;if(Math.abs(m)>1.15)continue;let L=o-(r-8)*Math.sin(m),b=p%5===0;l.append(ft(0,L,b?26:16,L,b?"tsi-bold":
"tsi-fine")),b&&l.append(wt(36,L+5,String(p),"start"))}e.setAttribute("aria-label",`${t.name}. ${f.words}`)}}}function an(t){
return Rt(t,(e,s,o)=>{let a=Eo(e),r=Ct("Thimble",{min:0,max:e.top,step:.01,value:o.open,words:()=>"turn in to the left, \
out to the right",onInput:d=>s({open:d})}),c=$t("Between the faces",e.between,o.between,d=>s({between:d,open:e.top})),i=G(
"Close until it rests",()=>s({open:-1})),u=e.hands.length?$t("Close it",e.hands,o.hand,d=>s({hand:d})):null;return{asks:"\
How thick is it?",first:i,begin:"close it until it rests",picture:a.node,controls:[Bt(c.row,u?.row),Bt(i,G("Open",()=>s(
{open:e.top}))),r.row],set(d,l){a.set(d),r.box.value=String(Math.max(0,d.mm)),c.box.value=l.between}}})}function cn({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding",role:"status"}),a=n("tbody",{role:"rowgroup"}),
r=new Map;for(let[u,d,l]of s.checks){let f=n("button",{class:"ts-button",type:"button","aria-label":`Make: ${d}`,onclick:()=>{
f.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:u})}},"Make"),p=Ut("it shows",!1);p.classList.add("t\
sk-shown"),r.set(u,{button:f,shown:p}),a.append(n("tr",{role:"row"},n("th",{scope:"row",role:"rowheader"},d),Ut("min",!0,
`${l}`),Ut("",!1,f),p))}let c=st({model:t,el:e},{kind:"rig"});c.show(c.asks("What does each check show on your unit?",{first:r.
values().next().value?.button,begin:"make a check",who:"Checks are not saved; make them again after reopening."}),c.alert,
o,Re("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],a));function i(){let u=t.get("view");o.textContent=
u.finding;for(let[d,{button:l,shown:f}]of r){let p=u.shown[d];l.setAttribute("aria-disabled",p?"true":"false"),l.classList.
toggle("ts-off",!!p),l.textContent=p?"Made":"Make",f.textContent=p?`${p[0]?"✓":"✗"} ${p[1]}`:"",f.classList.toggle("\
tsk-failed",!!p&&!p[0])}}return c.follow("change:view",i),i(),c.close}function Ao(){let t=P("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=P("g"),s=P("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(P("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,s,P("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let o=c=>(-135+270*c)*Math.PI/180,a="";function r([c,i,u]){e.replaceChildren();for(let d=0;d*i<=c+
1e-9;d+=1){let l=o(d*i/c),f=d%u===0,p=h=>[110+h*Math.sin(l),104-h*Math.cos(l)];if(e.append(ft(...p(f?72:79),...p(88),f?"\
tsg-mark tsg-long":"tsg-mark")),f&&d%(2*u)===0){let[h,m]=p(58);e.append(wt(h,m+4.5,String(Number((d*i).toFixed(2)))))}}e.
append(wt(110,170,"kN"))}return{node:t,set(c,i,u){String(c)!==a&&(a=String(c),r(c));let d=Math.min(i/c[0],1.03);s.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*d})`),t.setAttribute("aria-label",u)}}}function ln(t){return Rt(t,(e,s,o)=>{
let a=Ao(),r=n("div",{class:"tsp-section"}),c="",i=n("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},r,n("div",{class:"tsg-gauge"},a.node)),u=Ct("Push",{min:0,max:100,step:1,value:o.travel,onInput:p=>s(
{travel:p}),words:p=>p>=100?"at the shoulder":`${p} % of the way`}),d=[u.row],l=null;if(!e.readingsOnly){let p=$t("Part",
e.places,o.place,b=>s({place:b,travel:0}));l=$t("Driver presses on",e.drivers,o.driver,b=>s({driver:b,travel:0}));let h=$t(
"Seat",e.seats,o.seat,b=>s({seat:b})),m=Ct("Pair",{min:0,max:100,step:1,value:o.grip,onInput:b=>s({grip:b}),words:b=>b===
0?"loosest of the fit":b===100?"tightest of the fit":`${b} % from loosest to tightest`}),L=Ct("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:o.warmth,onInput:b=>s({warmth:b}),words:b=>`${b} °C`});d.unshift(Bt(p.row,l.row,h.row),
m.row,L.row)}let f=n("dl",{class:"ts-facts"});return e.readingsOnly||d.push(f),{asks:"What force does it take, and where\
 does it stop?",first:u.box,begin:"push the part",side:!e.readingsOnly,picture:i,controls:d,set(p,h){p.section!==c&&(c=p.
section,r.innerHTML=c),r.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*h.travel/100} 0\
)`),a.set(p.gauge,p.force,p.words),Number(u.box.value)!==h.travel&&document.activeElement!==u.box&&u.set(h.travel),l&&(l.
row.hidden=!p.drives),p.facts&&f.replaceChildren(...jt(p.facts))}}})}function dn({model:t,el:e}){let s=t.get("steps"),o=new Map(s),a=n("div",{class:"ts-scroll tsf-near",tabindex:"0",role:"r\
egion","aria-label":"The rules around the chosen step"}),r=n("p",{class:"ts-finding",role:"status"}),c=n("ul",{class:"ts\
-sentences"}),i=n("select",{class:"ts-box ts-before","aria-label":"Chosen step",onchange:()=>l(i.value)},...At(s.map(([h,
m],L)=>[h,`${L+1}  ${m}`]))),u=st({model:t,el:e},{kind:"rig",lost(){i.disabled=!0}});u.show(u.asks("What comes before th\
is step, and what after it?",{first:i,begin:"choose a step, or press one in the picture",who:""}),u.alert,n("p",{class:"\
ts-hint"},t.get("finding")),n("div",{class:"ts-tools"},n("span",{class:"ts-pair"},"Step ",i)),r,a,n("details",{class:"ts\
-keys"},n("summary",{},"In words, with reasons"),c));let d=!1,l=h=>u.send({type:"choose",step:h}),f=h=>{let m=Et(h,"[dat\
a-step]")?.dataset.step;m&&(d=!0,l(m))};a.addEventListener("click",f),a.addEventListener("keydown",h=>{h.key!=="Enter"&&
h.key!==" "||Et(h,"[data-step]")&&(h.preventDefault(),f(h))});function p(){let h=t.get("near");r.textContent=h.words,i.value=
h.step,a.innerHTML=h.figure,a.querySelector("svg")?.setAttribute("role","group");let m=Z(a,"[data-step]");for(let L of m)
L.setAttribute("role","button"),L.setAttribute("tabindex","0"),L.setAttribute("aria-label",o.get(String(L.dataset.step))??
"");c.replaceChildren(...Kt(h.sentences)),d&&(m[0]??i).focus({preventScroll:!0}),d=!1}return u.follow("change:near",p),p(),
u.close}function Mo(){let t=P("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=P("g",{}),s=P("g",{});return e.append(
P("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),ft(150,164,150,98,"tsi-bold"),P("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),s.append(ft(150,86,150,40,"tsi-plunger"),P("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,ft(50,164,
250,164,"tsg-centre"),ft(150,250,150,80,"tsg-centre"),s,wt(8,252,"not to scale","start")),{node:t,set(o,a,r){e.setAttribute(
"transform",`rotate(${o} 150 164)`),s.setAttribute("transform",`rotate(${a} 150 88)`),t.setAttribute("aria-label",r)}}}function un(t){
return Rt(t,(e,s,o)=>{let a=re(),r=Mo(),c=Ct("Turn the shaft by hand",{min:0,max:360,step:5,value:o.angle,words:d=>`turn\
ed by ${d}°`,onInput:d=>s({angle:d})}),i=$t("Plunger",e.pressed,o.pressed,d=>s({pressed:d})),u=$t("Stand",e.tilts,o.tilt,
d=>s({tilt:d}));return{asks:"How far does the shaft run out?",first:c.box,begin:"turn the shaft",picture:n("div",{class:"\
tsg-beside"},r.node,n("div",{class:"tsg-gauge"},a.node,n("div",{},"One mark 0.01 mm, one turn 1 mm"))),controls:[Bt(i.row,
u.row),c.row],set(d,l){a.set(d.mm,d.words),r.set(d.state.angle,Number(d.state.tilt),`Shaft end on, turned by ${d.state.angle}\
°; the plunger stands ${d.state.tilt}° off square. Not to scale.`),c.set(l.angle)}}})}var fn=(t,e)=>(t+e)%7<2,hn=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,de=()=>!1,He=t=>(e,s)=>s%t===0,Oo={"":de,dots:(t,e)=>t%6<2&&e%
6<2,rising:fn,cross:hn,flat:(t,e)=>e%6<2,rings:(t,e)=>{let s=Math.hypot(t%12-6,e%12-6);return s>2.5&&s<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":de,"lines-2":He(14),"lines-3":He(8),"lines-4":He(5),"lines-5":He(
3)};function To(t){let e=s=>Number.parseInt(t.slice(s,s+2),16);return[e(1),e(3),e(5)]}var pn=([t,e,s],o)=>(o<<24|s<<16|e<<
8|t)>>>0;function gn(t,[e,s],o,a,r){let c=s*4,i=new Uint32Array(c*e*4),u=new Map(o.map(([f,,p,h])=>{let m=p?pn(To(p),200):
0;return[f,{ground:m,hatch:Oo[h]??de}]})),d={ground:0,hatch:de},l=pn(a,190);for(let f=0;f<e;f+=1){let p=(e-1-f)*4;for(let h=0;h<
s;h+=1){let m=t[f*s+h];if(!m)continue;let{ground:L,hatch:b}=u.get(m&15)??d,M=r&&(m&16)!==0,A=r&&(m&32)!==0;if(b===de&&!M&&
!A){if(!L)continue;let $=h*4;for(let T=p;T<p+4;T+=1)i.fill(L,T*c+$,T*c+$+4);continue}for(let $=p;$<p+4;$+=1)for(let T=h*
4;T<(h+1)*4;T+=1){let y=b(T,$)||M&&fn(T,$)||A&&hn(T,$);i[$*c+T]=y?l:L}}}return i}var No=600;function wn(t,e,s,o,a,r){let[c,i]=s;t.width=i*4,t.height=c*4;let u=new Uint8ClampedArray(gn(e,s,o,a,r).buffer),
d=new ImageData(u,t.width,t.height);t.getContext("2d")?.putImageData(d,0,0)}function Bo(t,e){let s=n("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return wn(s,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),n("span",{class:"ts-key"},s,t[1])}
function bn({model:t,el:e}){let s=t.get("face"),o=t.get("looks"),a=n("p",{class:"ts-finding",role:"status"}),r=n("span",
{class:"ts-clock"}),c=n("dl",{class:"ts-facts"}),i=n("p",{class:"ts-legend"}),u=n("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),d=st({model:t,el:e},{kind:"rig",lost(){p.setDisabled(!0),ve(e)}}),l=null,f=D=>{l=dt("turn"),d.send({...D,turn:l})},
p=Ee({face:s,label:`${s.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(D){p.
drawing.strokes(D),f({type:"lay",entries:D})},onRemove:D=>f({type:"remove",at:D}),onClear:()=>f({type:"clear"})}),h=G("C\
lose the face",()=>f({type:"shut",closed:!t.get("view").closed})),m=n("input",{type:"range",id:dt("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),L=n("output",{for:m.id}),b=Tt({id:dt("slide"),onchange:()=>f({type:"slide",by:b.value})},
t.get("view").slides),M=null;m.addEventListener("input",()=>{L.textContent=`${m.value} µm`;let D={type:"flat",um:Number(
m.value)};l===null?f(D):M=D});let{box:A,unit:$}=p.drawing;p.drawing.land.classList.add("tsp-clear"),p.drawing.frame.prepend(
u);let T=(...D)=>n("span",{class:"ts-pair"},...D);d.show(d.asks("Does this film close the gap?",{first:h,begin:"press Cl\
ose the face"}),d.alert,a,Pt([p.drawing.frame,i],[n("div",{class:"ts-tools"},h,T(n("label",{for:b.id},"the other face is"),
b)),n("div",{class:"ts-tools"},r,G("1 minute passes",()=>f({type:"time",by:1})),G("5 minutes pass",()=>f({type:"time",by:5}))),
n("div",{class:"ts-tools"},T(n("label",{for:m.id},"faces out of flat by"),m,L)),p.tools,c,n("details",{class:"ts-keys"},
n("summary",{},"Passes laid"),p.empty,p.list)],"even"));function y(){let D=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);
return D?D.slice(0,3).map(Number):[0,0,0]}let N="",C="";function v(){let D=t.get("view"),k=o[D.closed?"closed":"film"],w=t.
get("grid"),B=w instanceof DataView?new Uint8Array(w.buffer,w.byteOffset,w.byteLength):new Uint8Array(w);wn(u,B,D.shape,
k,y(),!D.closed);let[H,q]=D.shape,[rt,kt]=[D.corner[0]-D.pitch/2,D.corner[1]-D.pitch/2],V=(J,ht)=>`${(100*J/ht).toFixed(
3)}%`;u.style.left=V(rt-A.left,A.width),u.style.width=V(q*D.pitch,A.width),u.style.top=V(A.high-kt-H*D.pitch,A.height),u.
style.height=V(H*D.pitch,A.height);let St=new Set(B);if(!D.closed)for(let J of[...St])St.add(J&15);let W=k.filter(([J])=>St.
has(J)),Y=`${W.map(([,J])=>J)} ${y()}`;Y!==N&&(N=Y,i.replaceChildren(...W.map(J=>Bo(J,y()))))}let S=P("g");p.drawing.over.
append(S);let g=([D,k])=>[D-A.left,A.high-k];function x([D,k]){let w=k.map(B=>{let[H,q]=g(B);return`M${H.toFixed(1)} ${q.
toFixed(1)}h0.01`});return P("path",{d:w.join(""),class:"tsp-lump","stroke-width":2*D})}function j(D){let[k,w]=g(D[D.length-
1]),B=`M${k-1.3*$} ${w-$}h${2.6*$}l${-1.3*$} ${2.2*$}Z`;return[P("path",{d:p.drawing.path(D),class:"tsp-way","stroke-wid\
th":$}),P("path",{d:B,class:"tsp-out"})]}function _(){let D=t.get("view");if(l!==null&&D.turn!==l)return;l=null;let k=JSON.
stringify([D.entries,D.notes]);if(k!==C&&p.show(D.entries,D.notes),C=k,p.drawing.strokes([]),v(),S.replaceChildren(...D.
lumps.map(x),...D.leaks.flatMap(j)),p.drawing.svg.classList.toggle("tsp-shut",D.closed),p.drawing.svg.classList.toggle("\
tsp-clean",D.closed||D.clean),a.textContent=D.finding,b.value=D.slide,r.textContent=`minute ${D.minute}`,h.textContent=D.
closed?"Lift the face off again":"Close the face",M===null&&(m.value=String(D.flat),L.textContent=`${D.flat} µm`),c.replaceChildren(
...jt(D.facts)),M===null)return;let w=M;M=null,f(w)}d.follow("change:view",_),d.follow("msg:custom",D=>{D.type==="troubl\
e"&&(l=null,p.drawing.strokes([]))});let z=new MutationObserver(()=>setTimeout(v,No));return z.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),_(),()=>{d.close(),z.disconnect()}}function vn(t){return Rt(t,(e,s,o)=>{let a=re(),r=n("div",{class:"tsp-section"}),c="",i=n("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},r,n("div",{class:"tsg-gauge"},a.node,n("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),u=e.places.map(([l,f])=>[l,n("button",{type:"button",class:"ts-button",
onclick:()=>s({place:l})},f)]),d=[n("p",{class:"ts-hint"},e.rule),Bt(n("span",{},"Set the gauge down at"),...u.map(([,l])=>l))];
return e.readingsOnly||(d.push(Bt($t("Lip looks towards",e.sides,o.lip,l=>s({lip:l})).row,$t("Lip is",e.greases,o.grease,
l=>s({grease:l})).row,e.sleeves.length?$t("It went",e.sleeves,o.sleeve,l=>s({sleeve:l})).row:"")),d.push(Ct("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:o.depth,words:l=>`${l.toFixed(2)} mm${l<0?", proud":""}`,onInput:l=>s({
depth:l})}).row,Ct("Lean",{min:0,max:e.mostLean,step:.02,value:o.lean,words:l=>l?`${l.toFixed(2)} mm across`:"square",onInput:l=>s(
{lean:l})}).row)),{asks:"Does the seal sit square and deep enough?",first:u[0][1],begin:"set the gauge down",side:!e.readingsOnly,
picture:i,controls:d,set(l,f){l.section!==c&&(c=l.section,r.innerHTML=c),r.querySelector(".tsl-moving")?.setAttribute("t\
ransform",l.placed),a.set(l.dial,l.words);for(let[p,h]of u)h.setAttribute("aria-pressed",String(p===f.place))}}})}function yn({model:t,el:e}){let s=t.get("about"),o=t.get("shown").state,a=re(),r=s.readingsOnly?null:Ws(s),c=n("p",{class:"\
ts-finding",role:"status"}),i=n("div",{}),u=oe((N,C)=>M.send({type:"set",state:N,turn:C})),d=N=>{o={...o,...N},u.ask(o)},
l=(N,C)=>{let v=[...o.shims];v[N]=C,d({shims:v.filter(Boolean),turns:0})},f=(N,C,v)=>G(N,C,{"aria-pressed":v}),p=G("Turn\
 the shaft ten times",()=>d({turns:o.turns+10})),h=f("Pull the shaft away",()=>d({side:"away"}),"true"),m=f("Push it to \
the dial",()=>d({side:"towards"}),"false"),L=$t("Plunger",s.plungers,o.plunger,N=>d({plunger:N})),b=[n("div",{class:"ts-\
tools"},s.rolls?p:null,L.row,h,m)];if(!s.readingsOnly){let N=$t("Shim",s.shelf,o.shims[0],v=>l(0,v)),C=s.second?$t("and",
[["","no second shim"],...s.shelf],o.shims[1]??"",v=>l(1,v)):null;b.unshift(n("div",{class:"ts-tools"},N.row,C?.row)),b.
push(Ct("Warm the unit",{min:0,max:100,step:1,value:o.warmth,onInput:v=>d({warmth:v}),words:v=>v?`case ${Math.round(s.caseRise*
v/100)} K warmer`:"cold, as at the bench"}).row)}let M=st({model:t,el:e},{kind:"rig"}),A=n("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});A.innerHTML=s.section;let $=[s.readingsOnly?M.asks("How far does the shaft\
 move?",{first:s.rolls?p:m,begin:s.rolls?"turn the shaft":"push the shaft",who:"Take your readings here; write them in t\
he form."}):M.asks("Which shim gives the setting that you want?",{first:b[0].querySelector("select"),begin:"choose a shi\
m"}),M.alert,s.readingsOnly&&A,n("div",{class:"tsg-beside"},!s.readingsOnly&&A,n("div",{class:"tsg-gauge"},a.node,n("div",
{},"Dial at the shaft's right end, one mark 0.01 mm")),s.readingsOnly&&n("div",{class:"tsg-side"},...b,c)),...s.readingsOnly?
[]:[...b,c],r&&n("div",{},n("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),n("div",{class:"tsg\
-wide",tabindex:"0",role:"group","aria-label":"Axis of settings"},r.node)),i];M.show(...$.filter(Boolean));function T(){
let N=t.get("shown");u.waiting||(o=N.state),a.set(N.dial,N.dialWords),h.setAttribute("aria-pressed",String(N.state.side===
"away")),m.setAttribute("aria-pressed",String(N.state.side==="towards")),c.textContent=N.finding,r&&(r.set(N.cold,N.warm,
N.words.join(" ")),i.replaceChildren(...N.words.map(C=>n("p",{},C)))),u.answered(N.turn)}let y=()=>u.free();return M.follow(
"change:shown",T),M.follow("msg:custom",y),T(),M.close}function kn(t){return Rt(t,(e,s,o)=>{let a=n("div",{tabindex:"0",role:"group","aria-label":e.name}),r="",c=e.pickers.map(
({key:l,label:f,options:p})=>$t(f,p,o[l],h=>s({[l]:h}))),i=e.sliders.map(({key:l,label:f,min:p,max:h,step:m,unit:L,places:b})=>Ct(
f,{min:p,max:h,step:m,value:o[l],words:M=>`${M.toFixed(b)} ${L}`,onInput:M=>s({[l]:M})})),u=c.map(({row:l})=>l),d=u.length>
2?u.map(l=>Bt(l)):u.length?[Bt(...u)]:[];return{asks:e.asks,first:[...c,...i][0].box,begin:c.length?"choose from the fir\
st list":"move the first slider",picture:a,controls:[...d,...i.map(({row:l})=>l)],set(l){l.drawing!==r&&(r=l.drawing,a.innerHTML=
r)}}})}function xn({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding",role:"status"}),a=n("div",{class:"tsj-band"}),
r=n("div",{class:"tsj-section"}),c=n("dl",{class:"ts-facts"}),i=null,u=null,d=(C,v)=>{u={...u,[C]:v},i===null&&l()};function l(){
i=dt("choice"),T.send({type:"choose",chosen:u,turn:i}),u=null}let f=n("div",{class:"tsj-settings"}),p=(C,v,S)=>{let g=dt(
"set");return v.id=g,f.append(n("label",{for:g},C),n("span",{class:"tsj-slide"},v,S)),v},h=(C,v,S)=>p(v,n("select",{class:"\
ts-box",onchange:g=>d(C,g.target.value)},...At(S.map(g=>typeof g=="string"?[g,g]:g)))),m=(C,v,S)=>p(v,n("input",{type:"r\
ange",oninput:g=>d(C,Number(g.target.value))}),S),L={group:h("group","Bolt of the unit",s.groups),thread:h("thread","Thr\
ead",s.threads),strength:h("strength","Strength class",s.classes),state:h("state","State of the thread",s.states),tool:h(
"tool","Tool",s.tools)},b=n("output",{class:"tsj-figure"}),M=m("torque_nm","Torque",b),A=n("output",{class:"tsj-figure"}),
$=m("engagement_mm","Thread that meets",A),T=st({model:t,el:e},{kind:"rig"});T.show(T.asks("What gives way first?",{first:M,
begin:"set the torque"}),T.alert,o,a,n("div",{class:"tsj-bench"},f,r),c);let y=(C,v,S,g,x,j)=>{Wt(C,{min:v,max:S,step:g}),
i===null&&(C.value=String(x)),C.setAttribute("aria-valuetext",j)};function N(){let C=t.get("view");if(i!==null&&C.turn!==
i)return;i=null,u!==null&&l();let{chosen:v}=C;o.textContent=C.finding,a.innerHTML=C.band,r.innerHTML=C.section,c.replaceChildren(
...jt(C.facts));for(let[S,g]of Object.entries(L))g.value=v[S];y(M,1,C.topTorque,.5,v.torque_nm,C.torqueText),b.textContent=
C.torqueText,y($,C.lowEngagement,C.topEngagement,.5,v.engagement_mm,C.engagementText),A.textContent=C.engagementText}return T.
follow("change:view",N),N(),T.close}function $n({model:t,el:e}){let s=Ft(t),o=Gt(t.get("picture"),{onChoose:r=>s.show("part",[r])}),a=st({model:t,el:e},{kind:"\
rig"});return a.show(a.asks("Where does each part lie?",{first:o.choose,begin:"choose a part",who:""}),a.alert,n("p",{class:"\
ts-finding"},t.get("finding")),...s.any("part")?[Pt(o.nodes,[s.node])]:o.nodes),()=>{s.close(),a.close()}}var Sn=([t,e],[s,o,a,r],c)=>t>=s-c&&t<=s+a+c&&e>=o-c&&e<=o+r+c;function Ln(t,e,s){let o=s.find(c=>(e[c]??[]).some(i=>Sn(
t,i,10)));if(o!==void 0)return o;let[a,r]=["",Number.POSITIVE_INFINITY];for(let[c,i]of Object.entries(e))for(let u of i){
let d=u[2]*u[3];d<r&&Sn(t,u,0)&&([a,r]=[c,d])}return a}var Cn=(t,e)=>t[(e===void 0?0:t.indexOf(e)+1)%t.length],Do=36;function En([
t,e],{left:s,top:o,right:a,bottom:r}){let c=(i,u,d)=>{let l=Math.min(Do,(d-u)/4);return i<u+l?-1:i>d-l?1:0};return[c(t,s,
a),c(e,o,r)]}function ue(t,e){return(t.find(([s])=>s===e)??t[0])[2]}function os(t,e){return t.find(([,,s])=>e!==void 0&&s.includes(e))?.[0]}
var ns=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function An(t,{stages:e,stage:s,step:o,labels:a,isOpen:r}){let c=ue(e,
s),i=c.indexOf(String(o));if(t==="ArrowLeft"||t==="ArrowRight"){let d=e.map(([p])=>p),l=t==="ArrowLeft"?-1:1,f=ue(e,d[(d.
indexOf(s)+l+d.length)%d.length]);return f.find(r)??f[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let u=t.toLowerCase();return ns(c,i).find(d=>a[d].toLowerCase().startsWith(u))}function Mn({stages:t,stage:e,step:s,isOpen:o}){
let a=ue(t,e),r=t.flatMap(([,,i])=>i),c=r.indexOf(String(a.at(-1)));return ns(a,a.indexOf(String(s))).find(o)??ns(r,c).find(
o)}var Po=6,On=12;function Ro(t){let e=[];for(let s=t;s;s=s.parentElement){let{overflowX:o,overflowY:a}=getComputedStyle(s),
r=c=>c==="auto"||c==="scroll";(r(o)||r(a))&&e.push(s)}return e}function We(t,e,s,o){let a=Math.min(s/e[2],o/e[3],1.2),r=P(
"svg",{viewBox:e.join(" "),width:String(Math.round(e[2]*a)),height:String(Math.round(e[3]*a)),class:"ts-inhand","aria-hi\
dden":"true"});return typeof t=="string"?r.innerHTML=t:r.replaceChildren(...t),r}function Tn(t,e){return Z(t,"[data-part\
]").filter(o=>e.includes(String(o.dataset.part))).filter(o=>!o.closest(".tsu-marks")).map(o=>{let a=P("g",{});a.append(...o.
cloneNode(!0).childNodes);for(let r of Z(a,"text, title, desc"))r.remove();for(let r of Z(a,"[data-solid]"))r.removeAttribute(
"data-solid");return a})}function rs(t,{drawing:e,held:s,begin:o=()=>{},drop:a}){let r=null,c=null,i=!1,u=[0,0],d=[];function l(){
if(!c)return;let[A]=d;for(let $ of d){let T=$.getBoundingClientRect(),[y,N]=En(u,T),C=u[0]>=T.left&&u[0]<=T.right&&u[1]>=
T.top&&u[1]<=T.bottom;$===A&&!C||$.scrollBy($===A?y*On:0,N*On)}requestAnimationFrame(l)}t.classList.add("ts-carry");function f(A){
let $=A?"addEventListener":"removeEventListener";document[$]("pointermove",b),document[$]("pointerup",M),document[$]("po\
intercancel",h),document[$]("keydown",m,!0),document[$]("selectstart",p)}function p(A){A.preventDefault()}function h(){c?.
remove(),r=c=null,f(!1)}function m(A){A.key!=="Escape"||!c||(A.preventDefault(),h())}let L=()=>e.viewBox.baseVal.width/e.
getBoundingClientRect().width;function b(A){if(!(!r||A.pointerId!==r.id)){if(!c){if(Math.hypot(A.clientX-r.x,A.clientY-r.
y)<Po)return;let $=s();if(!$)return;let T=$.cloneNode(!0),{width:y,height:N}=$.viewBox.baseVal;T.setAttribute("width",String(
y/L())),T.setAttribute("height",String(N/L())),c=n("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},T),document.body.
append(c),o(),d=Ro(e.parentElement),requestAnimationFrame(l)}u=[A.clientX,A.clientY],c.style.left=`${A.clientX}px`,c.style.
top=`${A.clientY}px`}}function M(A){if(!r||A.pointerId!==r.id)return;let $=!!c;if(h(),!$)return;i=!0;let T=e.parentElement.
getBoundingClientRect(),{clientX:y,clientY:N}=A;if(y<T.left||y>T.right||N<T.top||N>T.bottom)return;let{left:C,top:v}=e.getBoundingClientRect();
a([(y-C)*L(),(N-v)*L()])}return t.addEventListener("pointerdown",A=>{i=!1,A.button===0&&(r={x:A.clientX,y:A.clientY,id:A.
pointerId},f(!0))}),t.addEventListener("click",A=>{i&&(i=!1,A.preventDefault(),A.stopPropagation())},!0),h}var In=[-4,-4,104,104];function Nn({model:t,el:e}){let s=t.get("plan"),o=n("p",{class:"ts-finding"}),a=n("div",{class:"t\
s-happened ts-told",role:"status",tabindex:"-1","aria-label":"What happened"}),r=n("select",{class:"ts-box ts-stage-choi\
ce","aria-label":"Stage",onchange:()=>{St(),Y()}},...At(s.stages.map(([E,U])=>[E,U]))),c=Ft(t),i=Gt(t.get("picture"),{name:"\
The bench, in section",onChoose:E=>{E&&c.show("part",[E])}}),u=n("p",{class:"ts-hint ts-in-picture",role:"status"}),d=at(
s.marked?"Next open step":"Next ready step",()=>B("next"));d.classList.add("ts-next");let l=n("div",{class:"ts-buildlist",
role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this stage",onkeydown:E=>q(E)}),f=n("details",{class:"\
ts-keys"},n("summary",{},"Keys"),"Up and down walk through the steps, left and right change the stage, Enter takes a ste\
p in hand; arrow keys or the figures 1 to 9 choose its way round and where a driver presses, Enter again puts it in its \
place. With a hand: carry the drawn part, gauge or driver to its place in the section."),p=n("div",{class:"ts-hand",role:"\
group","aria-label":"Step in hand",onkeydown:E=>{K(E)||E.key!=="Enter"||!E.target.matches("input[type=radio], .ts-number\
-box")||(E.preventDefault(),t.get("hand").stands?kt():Yt())}}),h=n("dl",{class:"ts-facts"}),m=n("ul",{class:"ts-sentence\
s"}),L=n("p",{class:"ts-prompt"},"Wrong so far"),b=n("select",{class:"ts-box ts-before","aria-label":"A step that stands"}),
M=at("Take out again",()=>{b.value&&g({type:"out",step:b.value},"hand")}),A=at("Put the tools down",()=>g({type:"over"},
"told"));A.classList.add("ts-over");let $=n("div",{}),T=n("p",{class:"ts-status"}),y=n("details",{ontoggle:()=>{y.open!==
!!t.get("view").record&&g({type:"record",open:y.open})}},n("summary",{},"Build record"),$),N=n("div",{class:"ts-build"},
n("div",{class:"ts-build-left"},n("div",{class:"ts-tools"},r,d),l),n("div",{class:"ts-build-hand"},p),n("div",{class:"ts\
-build-unit"},...i.nodes,u,c.node),n("div",{class:"ts-tools ts-build-end"},n("span",{class:"ts-pair"},b,M),A)),C=st({model:t,
el:e},{kind:"rig"});C.show(C.asks("Which step comes next, and what does it need?",{first:d,begin:"press the lit button",
who:s.who}),C.alert,o,T,a,N,h,L,m,y,f);let v=0,S=null;function g(E,U=null){v+=1,S=U&&{turn:v,focus:U},e.setAttribute("ar\
ia-busy","true"),C.send({...E,turn:v})}let x="",j=null,_="next",z=E=>!t.get("view").done.includes(E),D=()=>Z(l,"[data-st\
ep]"),k=E=>D().find(U=>U.dataset.step===E)?.focus(),w=()=>({stages:s.stages,stage:r.value,step:j,isOpen:z});function B(E,U){
_=E,g(E==="list"?{type:"take",step:U}:{type:"next"},"hand")}function H(E){r.value=os(s.stages,E)??r.value,j=E,St(),Y(),k(
E)}function q(E){if(Ot(E))return;let U=An(E.key,{...w(),labels:s.labels});U&&(E.preventDefault(),H(U))}function rt(){let E=Mn(
w());E?_==="next"?d.focus():H(E):A.focus()}function kt(){let E=t.get("view").done.length>=Object.keys(s.labels).length;_===
"next"&&!E?B("next"):rt()}function V(E){let{done:U,ready:ot}=t.get("view");return U.includes(E)?{sign:"✓",word:"done"}:
ot.includes(E)?{sign:"▸",word:"ready"}:{sign:"○",word:s.marked?"open":"waits"}}function St(){let E=ue(s.stages,r.value);
(j===null||!E.includes(j))&&(j=E.find(z)??E[0]);let U=t.get("hand").step,ot=E.map(ht);ot[0]!==l.firstElementChild&&l.replaceChildren(
...ot);let ct=JSON.stringify([r.value,E.map(V),U]);for(let vt of ot)vt.tabIndex=vt.dataset.step===j?0:-1;if(ct!==x){x=ct;
for(let vt of ot)gt(vt,U);W=U??j??""}}let W="";function Y(){let E=W&&D().find(U=>U.dataset.step===W);W="",E&&(l.scrollTop=
E.offsetTop-l.offsetTop-E.offsetHeight)}let J=new Map;function ht(E){let U=J.get(E);if(U)return U;let ot=n("button",{type:"\
button","data-step":E,onclick:()=>{j=E,B("list",E)}},O(E),n("span",{}));return J.set(E,ot),ot}function gt(E,U){let ot=String(
E.dataset.step),{sign:ct,word:vt}=V(ot);E.className=`ts-button ts-buildstep ts-buildstep-${vt}`,E.setAttribute("aria-lab\
el",`${s.labels[ot]}: ${vt}`),ot===U?E.setAttribute("aria-current","step"):E.removeAttribute("aria-current"),E.lastElementChild?.
replaceChildren(Ht(ct),s.labels[ot])}function ut(E,U,ot){let ct=s.tray[E];return ct?We(Tn(i.drawing,ct.parts),ct.box,U,ot):
null}let pt=[];function O(E){let U=ut(E,44,30),ot=n("span",{class:"ts-thumb"},U??"");return U&&s.tray[E].moves&&F(ot,()=>E,
()=>U),ot}function F(E,U,ot){let ct=rs(E,{drawing:i.drawing,held:ot,begin:()=>{let vt=U();t.get("hand").step!==vt&&(j=vt,
g({type:"take",step:vt}))},drop:vt=>{let It=U();for(let yt of it.values())yt.flush();let Nt=Ln(vt,t.get("picture").boxes,
s.tray[It].parts);g({type:"put",step:It,part:Nt},"after")}});pt.push(ct)}function K(E){let U=E.target;if(Ot(E)||!/^[1-9]$/.
test(E.key)||!U.matches("input[type=radio]"))return!1;let ot=U.closest("[data-field]"),ct=Z(ot,"input[type=radio]:not(:d\
isabled)")[Number(E.key)-1];return E.preventDefault(),ct?.focus(),ct?.click(),!0}function et(){let E=Z(p,'[data-field^="\
way-"] input[type=radio]');return{inputs:E,now:E.find(U=>U.checked)?.value}}function xt(){let{inputs:E,now:U}=et(),ot=Cn(
E.map(ct=>ct.value),U);E.find(ct=>ct.value===ot)?.click(),Lt()}let lt=n("div",{class:"ts-held-frame"}),Q=n("div",{class:"\
ts-tool-frame"}),I=at("Turn it",xt,"Turn it: the other way round"),R=n("p",{class:"ts-hint"}),tt=n("div",{class:"ts-held\
-box"},lt,I,Q,R),mt="";F(lt,()=>t.get("hand").step,()=>lt.querySelector("svg")),pt.push(rs(Q,{drawing:i.drawing,held:()=>Q.
querySelector("svg"),drop:E=>g({type:"bear",step:t.get("hand").step,at:E},"hand")}));function Lt(){let{step:E,held:U,stands:ot}=t.
get("hand"),{inputs:ct,now:vt}=et();I.hidden=!ct.length;let[It,Nt]=s.tray[E??""]?.tool??[],yt=s.tray[E??""]?.moves;if(tt.
hidden=!E||ot||!(yt||Nt),R.textContent=Nt&&It||"",Q.hidden=!(yt&&Nt),!E||tt.hidden)return;let we=U.field&&vt||"",be=`${E}\
 ${we}`;if(be===mt)return;mt=be,Nt&&Q.replaceChildren(We(Nt,In,60,60));let Ke=U.looks?.[we]??(Nt&&!yt?[Nt,In]:null);lt.replaceChildren(
(Ke?We(Ke[0],Ke[1],120,84):ut(E,120,84))??"")}let X="",it=new Map;function nt(E){let U=te(E),ot=n("p",{class:"ts-read",id:U.
read,role:"status"}),ct=0,vt=yt=>{g({type:"set",name:E.name,value:yt}),ct=v},It=Vt(E).make(E,U,vt,()=>{}),Nt=ee(E,U,null);
return Nt.append(It.element,ot),Nt.dataset.field=E.name,{element:Nt,flush:()=>It.flush?.(),show(yt={},we){if(we<ct)return;
It.show(yt);let be=yt.read?`read as ${yt.read}`:"";ot.textContent=yt.error?`▲ Look again: ${yt.error}`:be}}}let bt=E=>n(
"dl",{class:"ts-facts"},...jt(E));function qt(){let E=t.get("hand"),U=JSON.stringify(E);if(U===X)return;if(X=U,N.classList.
toggle("ts-build-face",(E.fields??[]).some(yt=>yt.kind==="film")),p.dataset.stands=String(!!E.stands),it=new Map((E.fields??
[]).map(yt=>[yt.name,nt(yt)])),!E.step){p.replaceChildren(n("p",{class:"ts-hint"},"No step in hand. Choose one from the \
list, or press the button above it."));return}let ot=at(`Do it: ${E.label}`,Yt);ot.classList.add("ts-do");let ct=E.stands?
[at("Go on",kt),at("Take it out again",()=>g({type:"out",step:E.step},"hand"))]:[ot],vt=[...it.values()].map(yt=>yt.element),
It=yt=>String(yt.dataset.field).startsWith("way-");p.replaceChildren(n("p",{class:"ts-prompt ts-hand-name",tabindex:"-1"},
E.label),n("div",{class:"ts-hand-row"},tt,n("div",{},...E.plain.map(yt=>n("p",{class:"ts-hint"},yt)),...E.cautions.map(yt=>n(
"p",{class:"ts-caution"},n("b",{},"Take care: "),yt)),...vt.filter(It),...E.card.length&&!vt.some(It)?[bt(E.card)]:[])),
...E.read.length?[n("p",{class:"ts-prompt"},"Read at the bench"),bt(E.read)]:[],...E.card.length&&vt.some(It)?[bt(E.card)]:
[],...vt.filter(yt=>!It(yt)),n("div",{class:"ts-tools"},...ct));let Nt=os(s.stages,E.step);Nt&&([r.value,j]=[Nt,E.step])}
function Yt(){for(let E of it.values())E.flush();g({type:"do"},"after")}function Xt(){let E=t.get("view").asked_back,U=Z(
p,"[data-field]").find(vt=>vt.dataset.field===E),ot=U&&Z(U,"input:not(:disabled), select, button"),ct=Z(p,".ts-field inp\
ut:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return ot?.[0]??ct[0]}function ae(){let E=t.
get("view"),U=E.told;qt(),o.textContent=E.finding,T.textContent=E.status,T.hidden=!E.status,a.textContent!==U.join("")&&
a.replaceChildren(...U.map(ct=>n("p",{},ct))),St();for(let[ct,vt]of it)vt.show(E.states[ct],E.turn);if(Lt(),Dt(E),h.replaceChildren(
...jt(E.facts)),m.replaceChildren(...Kt(E.faults.map(([,ct])=>ct))),L.hidden=m.hidden=!E.faults.length,me(E.done),$.innerHTML=
E.record,y.open=!!E.record,e.setAttribute("aria-busy",String(E.turn<v)),Y(),Ue(E),!S||E.turn<S.turn)return;let{focus:ot}=S;
S=null,ot==="told"?a.focus():ot==="after"&&!t.get("hand").step?rt():(Xt()??d).focus()}let ie="",ge="";function Dt(E){let U=JSON.
stringify(E.build);U!==ie&&(ie=U,i.show(E.build),u.textContent=E.build.words)}function Ue(E){let{step:U,operations:ot}=t.
get("hand"),ct=E.build.tool,vt=`${U} ${ct??""}`;if(U===void 0||vt===ge)return;ge=vt;let[It]=s.tray[U]?.parts??[];ct?i.moveTo(
{x:ct[0],y:ct[1]}):It&&i.look(It),c.show("operation",ot)}function me(E){if(b.disabled=M.disabled=!E.length,b.dataset.done===
E.join(" "))return;b.dataset.done=E.join(" ");let U=[...E].reverse();b.replaceChildren(...At(U.map(ot=>[ot,s.labels[ot]])))}
return C.follow("change:view",ae),ae(),()=>{for(let E of pt)E();c.close(),C.close()}}function jo(t){let e=P("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),s=440/t.length,[o,a]=[210,128],r=ft(
o,a,o,a,"tsi-adapter"),c=P("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=ft(o,a+74,o,a+74,"tsi-arm"),u=wt(o,a+94,"");return e.
append(ft(o,a,o+440,a,"tsi-lever"),r,c,P("circle",{cx:o,cy:a,r:7,class:"tsg-hub"}),wt(o+440,a-20,"hand, middle of the gr\
ip","end"),wt(o+20,a-20,"square drive","start"),ft(o+440,a+10,o+440,a+84,"tsg-centre"),i,u,wt(8,242,"lengths to scale","\
start")),{node:e,set(d){let l=d.state.angle/180*Math.PI,f=o-d.state.reach*s*Math.cos(l),p=a-d.state.reach*s*Math.sin(l);
Wt(r,{x2:f,y2:p}),Wt(c,{cx:f,cy:p}),Wt(i,{x1:f,x2:o+440}),Wt(u,{x:(f+o+440)/2}),u.textContent="the lever from bolt to ha\
nd, along the wrench",e.setAttribute("aria-label",`${t.name}. ${d.words}`)}}}function Bn(t){return Rt(t,(e,s,o)=>{let a=jo(
e),r=(i,u,d,l,f,p)=>Ct(i,{min:d,max:l,step:f,value:o[u],words:h=>`${h} ${p}`,onInput:h=>s({[u]:h})}),c={setting:r("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:r("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:r("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{asks:"What does the bolt get?",first:c.reach.box,begin:"\
lengthen the adapter",picture:a.node,controls:Object.values(c).map(i=>i.row),set(i,u){a.set(i);for(let[d,l]of Object.entries(
c))l.set(u[d])}}})}var _e=t=>typeof t=="string"?t:t.text;function Dn(t,e,s){let o=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
a=r=>_e(r.cells[e]??"").trim();return[...t].sort((r,c)=>{let[i,u]=[a(r),a(c)];if(!i||!u)return+!i-+!u;let[d,l]=[Number.parseFloat(
i),Number.parseFloat(u)],f=Number.isNaN(d)||Number.isNaN(l)||d===l?o.compare(i,u):d-l;return s?-f:f})}function pe(t,e){let s=document.getElementById("jupyter-config-data"),o="/";try{o=JSON.parse(s?.textContent??"").baseUrl||
"/"}catch{}return`${o}${t}/${e.split("/").map(encodeURIComponent).join("/")}`}function Ho(t){let e="";for(let s=0;s<t.length;s+=32768)e+=String.fromCharCode(...t.subarray(s,s+32768));return btoa(e)}
async function Pn(t,e,s){let o=0;do{let a=new Uint8Array(await s.slice(o,o+524288).arrayBuffer()),r=o===0;o+=524288;let c=o>=
s.size;t.send({type:"file",field:e,name:s.name,data:Ho(a),first:r,last:c})}while(o<s.size)}var Wo=400;function Rn({model:t,el:e}){let s=st({model:t,el:e},{kind:"desk"}),o=n("p",{class:"ts-said",role:"status"}),a=n(
"div",{class:"ts-desk-body"}),r=n("div",{class:"ts-desk-here","aria-hidden":"true"}),c=n("div",{class:"ts-busy"}),i=n("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),u=t.get("cohort"),d=n("input",{id:dt("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:d.value})});d.value=t.get("by"),s.show(n("div",{class:"\
ts-desk-top"},n("b",{},_t([u.name,u.college]).join(", ")),n("span",{class:"ts-pair"},n("label",{for:d.id},"At the desk (\
your name, for the trail)"),d)),u.invented?n("p",{class:"ts-hint"},u.invented):null,i,c,s.alert,o,a);let l=new Map,f=new Map,
p=new Map,h=new Map,m=!1,L="",b="",M="",A=!1,$=null,T=()=>a.setAttribute("aria-busy",String(y())),y=()=>m||!!M||Object.keys(
t.get("busy")).length>0,N=(O,F={})=>{y()||s.isLost()||(O!=="look"&&(M=O,o.textContent="",s.alert.textContent="",g(),T()),
t.send({type:O,...F}))},C=()=>Z(e,"[data-key]"),v=O=>C().some(F=>F.dataset.key===O);function S(){let O=C().find(F=>F.dataset.
key===L);return O&&a.contains(O)?O.closest("form, section"):null}function g(){let O=S();O?O.append(c,r):(i.after(c),r.remove());
let[F,K]=[o.textContent,s.alert.textContent];r.replaceChildren(..._t([F&&n("p",{class:"ts-told"},F),K&&n("p",{class:"ts-\
trouble"},K)]));for(let et of[o,s.alert])et.classList.toggle("ts-hidden",!!O);return O}function x(){let O=g(),F=[s.alert,
o].find(et=>et.textContent);(O?r.childElementCount?r:null:F)?.scrollIntoView({block:"nearest"})}async function j(){for(let[
O,F]of h){let[K]=F.files??[];try{K&&await Pn(t,O,K)}catch{return F.value="",K.name}}return""}function _(O){o.textContent=
"",s.alert.textContent=O,x()}async function z(O,F,K=""){if(s.isLost())return;if(y()){A||($=()=>v(F)&&z(O,F,K));return}L=
F,b="",A=!0,m=!0;let et=await j();if(m=!1,et||y()||s.isLost()){A=!1,et?_(`${et} has changed or gone since it was chosen:\
 choose it again.`):s.isLost()||($=()=>v(F)&&z(O,F,K));return}let xt=[...f].map(([lt,Q])=>[lt,[...Q]]);N("do",{page:t.get(
"page"),act:O,of:K,typed:Object.fromEntries(l),ticked:Object.fromEntries(xt)})}function D(O){let{name:F,of:K}=O,et=dt("f\
ield"),xt=O.hint?n("span",{class:"ts-hint",id:`${et}-hint`},O.hint):null,lt={id:et,"data-key":`field:${F}`,"aria-describ\
edby":xt?.id},Q=n("label",{for:et},O.label);if(!l.has(F)&&K!=="file"&&l.set(F,K==="tick"?O.value==="yes":O.value),K==="f\
ile"){let tt=h.get(F)??n("input",{type:"file",class:"ts-file"});for(let[mt,Lt]of Object.entries(lt))Lt&&tt.setAttribute(
mt,Lt);return h.set(F,tt),n("div",{class:"ts-desk-field"},Q,tt,xt)}if(K==="tick"){let R=n("input",{type:"checkbox",...lt});
R.checked=l.get(F)===!0,R.addEventListener("change",()=>l.set(F,R.checked));let tt=n("label",{class:"ts-option",for:et},
R,O.label);return n("div",{class:"ts-desk-field"},tt,xt)}let I=K==="choice"?Tt(lt,O.options):K==="long"?n("textarea",{class:"\
ts-box",rows:"3",maxlength:"2000",...lt}):n("input",{class:"ts-box",autocomplete:"off",maxlength:"400",...lt});return I.
value=String(l.get(F)??""),K==="choice"&&!O.options.some(([R])=>R===l.get(F))&&(I.value=O.options[0]?.[0]??"",l.set(F,I.
value)),I.addEventListener("input",()=>l.set(F,I.value)),n("div",{class:"ts-desk-field"},Q,I,xt)}function k(O){let F=dt(
"form"),K=n("div",{class:"ts-doing"}),et=()=>{K.replaceChildren(...O.acts.map(Q=>G(Q.label,()=>Q.sure?xt(Q):z(Q.id,`act:${Q.
id}`),{class:Q.first?"ts-button ts-first":"ts-button","data-key":`act:${Q.id}`})))},xt=Q=>{b=Q.id;let I=dt("sure"),R=n("\
div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":I,"data-key":`sure:${Q.id}`},n("p",{id:I},Q.sure),n(
"div",{class:"ts-doing"},G(`Yes: ${Q.label}`,()=>z(Q.id,`act:${Q.id}`),{"data-key":`act:${Q.id}`}),G("No, leave it",()=>{
b="",et(),Z(K,`[data-key="act:${Q.id}"]`)[0]?.focus()},{"data-key":`no:${Q.id}`})));K.replaceChildren(R),R.focus()},lt=O.
acts.find(Q=>Q.sure&&Q.id===b);return lt?xt(lt):et(),n("form",{class:"ts-desk-form","aria-labelledby":O.title?F:null,onsubmit:Q=>Q.
preventDefault()},O.title?n("h3",{id:F},O.title):null,O.hint?n("p",{class:"ts-hint"},O.hint):null,O.fields.length?n("div",
{class:"ts-desk-fields"},...O.fields.map(D)):null,O.acts.length?K:null)}function w(O,F){if(typeof O=="string")return O;let K=O.
act?G(O.text,()=>z(O.act,F,O.of),{class:"ts-cell","aria-label":O.label||null,"data-key":F}):O.text;return n("span",{},O.
shape?Ht(O.shape):null,K)}function B(O){let F=dt("table"),K=n("h3",{id:F},O.title);if(!O.rows.length)return n("section",
{},K,n("p",{},O.empty));let et=f.get(O.id)??new Set,xt=new Set(O.rows.map(({key:X})=>X));for(let X of et)xt.has(X)||et.delete(
X);f.set(O.id,et);let lt=n("tr",{}),Q=n("tbody",{}),I=O.pick?n("input",{type:"checkbox","aria-label":"all","data-key":`a\
ll:${O.id}`}):null,R=()=>{I&&(I.checked=et.size===O.rows.length,I.indeterminate=et.size>0&&!I.checked)},tt=()=>{let X=p.
get(O.id),it=X?Dn(O.rows,X.column,X.down):O.rows;Q.replaceChildren(...it.map(Lt)),lt.replaceChildren(...I?[n("th",{class:"\
ts-tick"},I)]:[],...O.columns.map(mt)),R()},mt=(X,it)=>{let nt=p.get(O.id),bt=nt?.column===it,qt=bt?nt.down?"descending":
"ascending":null,Yt=()=>{p.set(O.id,{column:it,down:bt&&!nt.down}),tt(),Z(lt,`[data-key="${Xt}"]`)[0]?.focus()};if(!X)return n(
"td");let Xt=`sort:${O.id}:${it}`;return n("th",{scope:"col","aria-sort":qt,class:O.numbers.includes(it)?"ts-figure":null},
G(X,Yt,{class:"ts-sort","data-key":Xt}),bt?Ht(nt.down?"▼":"▲"):null)},Lt=X=>{let it=O.pick?n("input",{type:"checkbox",
"aria-label":X.cells.slice(0,3).map(_e).join(" "),"data-key":`row:${O.id}:${X.key}`}):null;return it&&(it.checked=et.has(
X.key),it.addEventListener("change",()=>{it.checked?et.add(X.key):et.delete(X.key),R()})),n("tr",{},it?n("td",{class:"ts\
-tick"},it):null,...X.cells.map((nt,bt)=>{let qt=!bt&&!!_e(nt);return n(qt?"th":"td",{scope:qt?"row":null,class:O.numbers.
includes(bt)?"ts-figure":null},w(nt,`cell:${O.id}:${X.key}:${bt}`))}))};return I?.addEventListener("change",()=>{if(et.clear(),
I.checked)for(let{key:X}of O.rows)et.add(X);for(let X of Z(Q,"td.ts-tick input"))X.checked=I.checked}),tt(),n("section",
{},n("div",{class:"ts-desk-caption"},K,G("Save as CSV",()=>t.send({type:"export",table:O.id}),{"aria-label":`Save as CSV\
: ${O.title}`,"data-key":`export:${O.id}`})),n("div",{class:"ts-desk-scroll",role:"region",tabindex:0,"aria-labelledby":F},
n("table",{class:"ts-table","aria-labelledby":F},n("thead",{},lt),Q)))}function H(O){if(O.kind==="table")return B(O);if(O.
kind==="form")return k(O);if(O.kind==="link"){let F=O.how==="edit"?"lab/tree":O.how,et={class:"ts-link",href:F?pe(F,O.path):
O.path,target:"_blank"};return n("p",{},n("a",{...et,"data-key":`link:${O.path}`},O.text))}return O.how==="head"?n("h3",
{},O.text):n("p",{class:O.how==="hint"?"ts-hint":null},O.text)}function q(O){if(!s.isLost()){if(y()){$=()=>q(O);return}L=
"",N("page",{name:O})}}function rt(){let O=t.get("page");i.replaceChildren(...t.get("pages").map(([F,K])=>G(K,()=>q(F),{
class:"ts-button","aria-current":F===O?"page":null,"data-key":`page:${F}`})))}let kt=t.get("cleared"),V=t.get("page");function St(){
let O=C().find(lt=>lt===document.activeElement)?.dataset.key,F=a.contains(document.activeElement),K=Z(a,".ts-desk-scroll").
map(lt=>lt.scrollTop);M="",(t.get("page")!==V||t.get("cleared")!==kt)&&(b="",l=new Map,f=new Map,h=new Map,{page:V,cleared:kt}=
{page:t.get("page"),cleared:t.get("cleared")}),o.textContent=t.get("said"),s.alert.textContent=t.get("trouble"),rt();let et=new Map(
t.get("pages")),xt=n("h2",{tabindex:-1},et.get(V));if(a.replaceChildren(xt,...t.get("parts").map(H)),Z(a,".ts-desk-scrol\
l").forEach((lt,Q)=>{lt.scrollTop=K[Q]??0}),g(),O||F){let lt=C().find(Q=>Q.dataset.key===O);(lt??xt).focus({preventScroll:!!lt})}
A&&!Object.keys(t.get("busy")).length&&(A=!1,x()),T(),W()}function W(){if(y()||!$)return;let O=$;$=null,O()}let Y;function J(){
let O=t.get("busy");if(T(),clearTimeout(Y),!Object.keys(O).length){c.replaceChildren();return}let{doing:F,done:K,of:et}=O,
xt=et?`${F}: ${K} of ${et}`:`${F} …`,lt=()=>{c.replaceChildren(n("progress",et?{max:et,value:K,"aria-label":F}:{"aria-\
label":F}),n("span",{role:"status"},xt))};c.childElementCount?lt():Y=window.setTimeout(lt,Wo)}s.follow("change:turn",()=>setTimeout(
St,0)),s.follow("change:busy",J),s.follow("change:by",()=>{d.value=t.get("by")}),s.follow("msg:custom",O=>{if(O.type==="\
trouble"&&(M="",A=!1,T(),x()),O.type!=="save")return;let F=URL.createObjectURL(new Blob([`\uFEFF${O.text}`],{type:"text/\
csv"}));n("a",{href:F,download:O.name}).click(),setTimeout(()=>URL.revokeObjectURL(F),1e3)}),St(),J();let ht=!0,gt=new IntersectionObserver(
([O])=>{ht=O.isIntersecting});gt.observe(e);let ut=0,pt=setInterval(()=>{let O=t.get("every");ut+=1,O&&ut>=O&&ht&&!document.
hidden&&(ut=0,N("look"))},1e3);return()=>{clearInterval(pt),clearTimeout(Y),gt.disconnect(),s.close()}}function as(t,e=new Date){let s=new Date(t);if(Number.isNaN(s.getTime()))return"";let o=c=>String(c).padStart(2,"0"),a=`${o(
s.getHours())}:${o(s.getMinutes())}`,r=`${s.getFullYear()}-${o(s.getMonth()+1)}-${o(s.getDate())}`;return e.toDateString()===
s.toDateString()?a:`${r} ${a}`}var _o="twoshaft-unsent:";function jn(t,e){let s=_o+e,o=()=>{if(!t||!e)return{};try{let r=JSON.parse(t.getItem(s)??"{}");
return r&&typeof r=="object"?r:{}}catch{return{}}},a=r=>{if(!(!t||!e))try{Object.keys(r).length?t.setItem(s,JSON.stringify(
r)):t.removeItem(s)}catch{}};return{get:r=>Object.hasOwn(o(),r)?o()[r]:void 0,put:(r,c,i,u=new Date)=>a({...o(),[r]:{value:c,
base:i,at:u.toISOString()}}),drop(r){let{[r]:c,...i}=o();c&&a(i)}}}function Hn(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var Zt=null,Fo="input, button, select, textarea, summary, a, [tabindex]",Wn=t=>[...t.querySelectorAll(Fo)];function _n(t,e){
let s=({target:r})=>{r instanceof HTMLElement&&(t.contains(r)?Zt={form:e,at:Wn(t).indexOf(r),from:null}:Zt?.form===e&&t.
isConnected&&(Zt=null))},o=({target:r})=>{Zt?.form===e&&r instanceof HTMLInputElement&&(Zt.from=r.selectionStart)};return document.
addEventListener("focusin",s),document.addEventListener("pointerdown",s),t.addEventListener("input",o),requestAnimationFrame(
()=>{if(Zt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:r,from:c}=Zt,i=Wn(t)[r];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",s),document.
removeEventListener("pointerdown",s)}}var qo=["print","colour"];function fe(t){for(let e of qo){let s=t?.[e];s!==void 0&&(s?document.documentElement.setAttribute(
`data-ts-${e}`,s):document.documentElement.removeAttribute(`data-ts-${e}`))}}function Fn(){fe({print:"",colour:""})}function qn(t,e,s){let o=()=>t.get("bench")??{},a=n("details",{class:"ts-bench"}),r=o().rows;if(!r)return{element:null,show(){},
hear(){},lost(){}};let c=n("span",{}),i=n("p",{class:"ts-status",role:"status"}),u=G("Use these figures",()=>p("yes")),d=G(
"Go back to the drawn figures",()=>p("no")),l=!1,f=r.map(m=>{let L=dt("bench"),b=m.options.length?n("select",{class:"ts-\
box",id:L,"aria-describedby":`${L}-read`},n("option",{value:""},"choose"),...At(m.options)):n("input",{type:"text",class:"\
ts-box ts-number-box",id:L,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${L}-hint ${L}-read`}),
M=n("span",{class:"ts-hint",id:`${L}-hint`},m.hint),A=n("p",{class:"ts-read",id:`${L}-read`}),$=m.text,T=()=>{b.value.trim()!==
$.trim()&&($=b.value,e({type:"bench",name:m.name,value:b.value}))};return b.addEventListener(m.options.length?"change":"\
blur",T),b.addEventListener("keydown",y=>{y.key==="Enter"&&(y.preventDefault(),T())}),{name:m.name,flush:T,input:b,element:n(
"div",{class:"ts-bench-row"},n("label",{for:L},m.prompt),n("div",{class:"ts-line-of"},b,M),A),show(y){if(!y)return;(document.
activeElement!==b||b.value===$)&&(b.value=y.text,$=y.text),b.setAttribute("aria-invalid",String(!!y.error)),A.classList.
toggle("ts-error",!!y.error);let N=y.error?[Ht("▲")," "]:[],C=y.read&&!y.options.length&&`read as ${y.read}`,v=y.error||
[C,y.origin].filter(Boolean).join(", ");A.replaceChildren(...N,v)}}}),p=m=>{for(let L of f)L.flush();l=!0,e({type:"bench",
name:"in-use",value:m})};a.append(n("summary",{},c),n("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They are used in place of the drawn figures in this task, all of them or none. Your answers are marke\
d on them by the same rules."),n("div",{class:"ts-bench-rows"},...f.map(m=>m.element)),i,n("div",{class:"ts-tools"},u,d));
function h(){let m=o(),L=new Map(m.rows?.map($=>[$.name,$]));for(let $ of f)$.show(L.get($.name));c.textContent=m.used?"\
✓ This task uses figures from the bench":"Use readings from the bench",d.hidden=!m.wanted,u.hidden=m.used&&!m.stale;let b=m.
wanted&&!m.used?"▲ ":m.used?"● ":"○ ",M=m.used?"in use":m.wanted?`not used; the drawn figures stand. ${m.refused}`:
"not used; the drawn figures stand",A=m.stale?` The tables and choices of this task are still the ones from before. ${m.
used?"Press the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${b}${M}${A}`,
m.wanted&&!m.used&&(a.open=!0)}return{element:a,show:h,hear(m){m.type!=="bench-saved"||m.name!=="in-use"||!l||(l=!1,o().
stale&&s())},lost(){for(let m of[u,d,...f.map(L=>L.input)])m.disabled=!0}}}var Uo=5e3,Ko=2e3,zo={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},is="kept in this browser until it can be\
 saved";function Go(t,e,s,o){let a=Vt(t),r=te(t),c=n("p",{class:"ts-read",id:r.read}),i=n("p",{class:"ts-status",id:r.status,
role:"status"}),u=0,d=null,l={},f=()=>{clearTimeout(d??void 0),d=null},p=$=>{s.put(t.name,$,l.revision??0),h($)},h=$=>{u+=
1,b("wait",o()?is:"saving"),f(),d=window.setTimeout(()=>b("wait",is),Uo),e({type:"save",name:t.name,value:$,turn:u})},m=a.
make(t,r,p,($,T)=>{$?(s.put(t.name,T,l.revision??0),b("wait","not saved yet: press Enter or leave the box")):d===null&&(s.
drop(t.name),M(l))}),L=ee(t,r,r.status);a.status==="above"?L.append(i,m.element,c):L.append(m.element,c,i);function b($,T){
i.className=`ts-status ts-status-${$}`,i.dataset.text!==T&&(i.dataset.text=T,i.replaceChildren(Ht(zo[$]),` ${T}`))}function M($,T=!1){
if(l=$??{},m.show(l),c.replaceChildren(l.read?`read as ${l.read}`:""),!T)if(l.error){let{error:y,saved:N="",note:C}=l;b(
"unread",`Look again: ${y} Kept as typed, ${as(N)}${C?`; ${C}`:""}.`)}else l.saved&&!l.blank?b("saved",`saved ${as(l.saved)}${l.
note?`; ${l.note}`:""}`):b("none",a.blank??"not answered yet")}let A=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:L,show($){d===null&&M($,A())},saved($){$.turn===u&&(m.pending?.()||s.drop(t.name),f(),M($.state))},refused($){
$.turn===u&&(f(),m.refused(),b("bad",`not saved: ${$.reason}`))},off(){clearTimeout(d??void 0),(d!==null||m.pending?.())&&
b("wait",is)},catchUp(){let $=s.get(t.name);$&&(Hn($,l)?(m.show({...l,value:$.value,error:""}),h($.value)):s.drop(t.name))},
flush:()=>m.flush?.(),summary:()=>({answered:!!l.saved&&!l.blank&&!l.error&&!l.short,unread:!!l.error,trouble:A(),waiting:d!==
null})}}function Un({model:t,el:e}){let s=t.get("fields"),o=t.get("sheet"),a=jn(window.localStorage,o),r=!1,c=()=>r||f.isLost(),
i=s.map(y=>Go(y,h,a,c)),u=new Map(i.map(y=>[y.name,y])),d=n("p",{class:"ts-who"}),l=n("p",{class:"ts-total"});fe(t.get("\
look"));let f=st({model:t,el:e},{kind:"form",lost(){for(let y of i)y.off();p.lost(),m()},line(y){r=y;for(let N of i)y?N.
off():N.catchUp();m()}}),p=qn(t,f.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});f.show(n(
"div",{class:"ts-top"},d,l),f.alert,p.element,...i.map(y=>y.element)),e.dataset.task=t.get("task_id");function h(y){f.send(
y),m()}function m(){let y=i.map(_=>_.summary()),N=y.filter(_=>_.answered).length,C=y.filter(_=>_.trouble).length,v=y.some(
_=>_.waiting),S=y.filter(_=>_.unread).length,g=C?`${C} not saved`:v?c()?"the rest kept in this browser":"saving":N&&!S?"\
all saved":"",x=[`${N} of ${i.length} answered`,S?`${S} cannot be read`:"",g];l.textContent=x.filter(Boolean).join(", ");
let j={task:t.get("task_id"),answered:N,asked:i.length,unread:S};e.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:j}))}function L(){d.textContent=t.get("header");let y=t.get("states");for(let N of i)N.show(y[N.name]);m()}let b=0,
M=0,A=()=>{if(clearTimeout(M),document.visibilityState==="hidden")for(let N of i)N.flush();if(document.visibilityState!==
"visible")return;let y=b+Ko-Date.now();if(y>0){M=window.setTimeout(A,y);return}b=Date.now(),f.send({type:"look"})},$=o?new BroadcastChannel(
`twoshaft-saved:${o}`):null;$?.addEventListener("message",({data:y})=>{y===t.get("task_id")&&f.send({type:"look"})}),document.
addEventListener("visibilitychange",A),window.addEventListener("focus",A),e.addEventListener("focusin",y=>{y.relatedTarget instanceof
Node&&e.contains(y.relatedTarget)||A()}),f.follow("change:states change:header",L),f.follow("msg:custom",y=>{y.type==="s\
aved"&&(u.get(y.name)?.saved(y),$?.postMessage(t.get("task_id"))),y.type==="refused"&&u.get(y.name)?.refused(y),m()}),f.
follow("msg:custom",p.hear),f.follow("change:bench",p.show),L();for(let y of i)y.catchUp();m(),p.show(),f.alert.textContent=
t.get("notice");let T=_n(e,`${o}/${t.get("task_id")}`);return()=>{clearTimeout(M),T(),$?.close(),f.close(),document.removeEventListener(
"visibilitychange",A),window.removeEventListener("focus",A)}}function Fe(t,e,s){let o=`twoshaft-signed-in:${s}`,a=`twoshaft-signed-out:${s}`;return{keep({id:r,ticket:c},i=Date.now()){
t.setItem(o,JSON.stringify({id:r,ticket:c,at:i}))},drop(r=Date.now()){t.removeItem(o),e.setItem(a,String(r))},get(){try{
let r=JSON.parse(t.getItem(o)??"null");return!r||!(r.at>Number(e.getItem(a)??0))?null:{id:String(r.id),ticket:String(r.ticket)}}catch{
return null}}}}var Yo={right:"●",other:"◆",unread:"▲"};function Xo(t){let e=te(t),s=n("p",{class:"ts-told",id:e.status,role:"stat\
us"}),o=null,a=Vt(t).make(t,e,i=>{o=i,a.show({value:o}),c(void 0)},(i,u)=>{i&&(o=u)}),r=ee(t,e,e.status);r.append(a.element,
s);function c(i){s.className=i?`ts-told ts-told-${i.how}`:"ts-told";let u=i?[Ht(Yo[i.how]),n("b",{},i.said),` ${i.why}`]:
[];s.replaceChildren(...u)}return{name:t.name,element:r,value(){return a.flush?.(),o},show(i,u){i!==void 0&&(o=i,a.show(
{value:o,saved:"given"})),c(u)},still(i){a.setDisabled(i),r.classList.toggle("ts-given",i)}}}function Kn({model:t,el:e}){
let s=st({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let o=n("p",{class:"ts-title",role:"heading","aria\
-level":"3"}),a=n("p",{class:"ts-lead"}),r=n("dl",{class:"ts-facts"}),c=n("div",{class:"ts-asked"}),i=G(t.get("give"),()=>{
let L=Object.fromEntries(l.map(b=>[b.name,b.value()]));s.send({type:"give",values:L})});i.classList.add("ts-first");let u=G(
"",()=>s.send({type:"fresh"})),d=t.get("all")?G(t.get("all"),()=>s.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
s.show(s.alert,o,a,r,c,n("p",{class:"ts-acts"},i,u,d));let l=[],f=()=>{let L=t.get("values"),b=t.get("told");for(let T of l)
T.show(L[T.name],b[T.name]),T.still(b[T.name]!==void 0&&b[T.name].how!=="unread");let M=l.some(({name:T})=>!b[T]||b[T].how===
"unread"),A=document.activeElement===i;if(i.hidden=!M,u.textContent=t.get("fresh"),u.hidden=M||!t.get("fresh"),s.alert.textContent=
t.get("notice"),!A||M)return;let $=Z(e,".ts-told")[0];$.tabIndex=-1,$.focus({preventScroll:!0})},p=()=>{(Z(c,"input, sel\
ect, [tabindex]")[0]??(u.hidden?i:u)).focus({preventScroll:!0})},h=()=>{l=t.get("fields").map(Xo),c.replaceChildren(...l.
map(({element:L})=>L)),o.textContent=t.get("title"),o.hidden=!o.textContent,a.textContent=t.get("lead"),a.hidden=!a.textContent,
r.replaceChildren(...jt(t.get("facts"))),r.hidden=!r.childElementCount,f()};s.follow("change:turn",()=>{let L=e.contains(
document.activeElement);h(),L&&p()}),s.follow("change:told change:values change:notice change:fresh",f),h();let m=t.get(
"place");if(m){let L=Fe(sessionStorage,localStorage,m).get();t.send({type:"who",id:L?.id??"",ticket:L?.ticket??""})}return()=>s.
close()}var zn="twoshaft-mine";var Gn="This is done as soon as the connection is back.",Vo={"to get":"○",open:"◐","handed in":"●","changed since":"\
◑",feedback:"✓"},Jo={"to get":"To get",open:"Open","handed in":"Handed in","changed since":"Changed after handing in",
feedback:"Marked"},qe=(t,e,s)=>n("a",{href:pe("lab/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":s,class:"t\
s-link"},e);function Yn(t){return n("ul",{class:"ts-gaps"},...t.map(({task:e,missing:s,asked:o,unread:a})=>n("li",{},`${e}\
: `,s===o?"nothing answered":s?`${s} of ${o} missing`:"",...a.map(([r,c])=>n("span",{},n("b",{},"cannot be read: "),`“${r}\
” ${c}`)))))}function Zo(t){let e=({name:o})=>Number(o.split("-").at(-1)),s=[...t].sort((o,a)=>e(o)-e(a)).flatMap(({notebooks:o})=>o.
map(a=>[a.split("/").pop()??"",a]));localStorage.setItem(zn,JSON.stringify(Object.fromEntries(s))),window.dispatchEvent(
new Event("storage"))}var he=null;function Xn({model:t,el:e}){let s="",o=Fe(sessionStorage,localStorage,t.get("place")),
a=!1,r=(w=!0)=>{a=w,a&&he&&(u.textContent=Gn)},c=st({model:t,el:e},{kind:"start",lost:r,line:r}),i=n("div",{}),u=n("p",{
class:"ts-said",role:"status"});c.show(c.alert,u,i);let d=(w,B={})=>{i.getAttribute("aria-busy")==="true"||c.isLost()&&B.
quietly||(B.quietly||(he={type:w,...B},i.setAttribute("aria-busy","true"),u.textContent=a?Gn:"One moment.",c.alert.textContent=
""),c.isLost()||t.send({type:w,...B}))},l=()=>{let w=he;he=null,w&&(w.type==="sign-in"||t.get("me").id)&&d(w.type,w)},f=(w,B,H,q)=>n(
"button",{type:"button",class:q?"ts-button ts-first":"ts-button","data-key":B,onclick:H},w);function p(){let w=dt("who"),
B=dt("word"),H=n("select",{id:w,class:"ts-box","data-key":"who",required:!0},n("option",{value:""},"Choose your name"),...t.
get("people").map(([rt,kt])=>n("option",{value:rt,selected:rt===s},kt)));H.addEventListener("change",()=>{s=H.value});let q=n(
"input",{id:B,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data\
-key":"word"});return n("form",{class:"ts-sign-in",onsubmit:rt=>{rt.preventDefault(),d("sign-in",{name:H.value,word:q.value})}},
n("h2",{},"Who is working?"),n("div",{class:"ts-pair"},n("label",{for:w},"Your name"),H),n("div",{class:"ts-pair"},n("la\
bel",{for:B},"Sign-in word from your slip"),q),n("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},
"Sign in"),n("p",{class:"ts-hint"},t.get("kept")))}function h(w,B){let H=W=>`${W}:${w.name}`,q=n("div",{class:"ts-doing"});
for(let W of w.feedback.slice(0,1))q.append(n("a",{href:pe("files",W),target:"_blank",class:"ts-link","data-key":H("feed\
back")},"Read feedback"));for(let W of w.notebooks){let Y=w.notebooks.length===1?"Open":`Open ${W.split("/").pop()}`;q.append(
qe(W,Y,H(`open ${W}`)))}w.can_get&&q.append(f(w.notebooks.length?"Get again":"Get",H("get"),()=>d("get",{name:w.name}),!w.
notebooks.length)),w.can_hand_in&&q.append(f(w.receipt?"Hand in again":"Hand in",H("hand in"),()=>d("hand-in",{name:w.name})));
for(let W of q.children)W.setAttribute("aria-label",`${W.textContent}: ${w.title}`);let rt=t.get("asking")===w.name,kt=w.
receipt||w.unread>0,V=n("tr",{},n("th",{scope:"row"},w.title),n("td",{},w.due?n("span",{class:"ts-due","aria-hidden":"tr\
ue"},"Due "):null,w.due||"no date",w.overdue?n("span",{class:"ts-small-line"},"date passed"):null),n("td",w.receipt?{tabindex:-1,
"data-key":H("receipt")}:{},n("span",{class:"ts-shape","aria-hidden":"true"},Vo[w.state]||""),n("b",{},Jo[w.state]||w.state),
n("span",{class:"ts-small-line"},w.detail),B?n("span",{class:"ts-small-line"},`Mark: ${B}`):null),n("td",{},q));if(rt)return[
V,n("tr",{},n("td",{colspan:4},L(w)))];if(!kt||!w.gaps.length)return[V];let St=n("td",{colspan:4},n("b",{},m(w)),Yn(w.gaps));
return[V,n("tr",{},St)]}let m=({left:w,unread:B})=>_t([w?`${w} ${w===1?"answer is":"answers are"} missing`:null,B?`${B} \
cannot be read`:null]).join(", ");function L(w){let B=dt("question"),H=n("div",{class:"ts-doing"});for(let rt of w.notebooks)
H.append(qe(rt,"Go on with it",`go on:${w.name}`));let q=m(w);return H.append(f(q?"It is my own work: hand in as it is":
"It is my own work: hand in",`hand in anyway:${w.name}`,()=>d("hand-in",{name:w.name,own:!0}),!q)),n("div",{class:"ts-qu\
estion",role:"group",tabindex:-1,"aria-labelledby":B,"data-key":"question"},n("p",{id:B},n("b",{},`${w.title}: not hande\
d in yet.${q?` ${q}.`:""}`),q?" An answer that is missing or cannot be read earns nothing.":null),q?Yn(w.gaps):null,n("p",
{},"By handing in you state: ",n("b",{},t.get("statement"))),H)}let b=new Set,M={met:"✓",enough:"◐","not yet":"○"};
function A(w,B){let H=w.entries.map(V=>B.find(St=>St.name===V)).filter(V=>V!==void 0),q=w.lesson?qe(w.lesson,`Lesson ${w.
title}`,`lesson:${w.lesson}`):n("span",{class:"ts-small-line"},"no lesson here"),rt=n("details",{open:b.has(w.module)},n(
"summary",{"data-key":`outcomes:${w.module}`},`Outcomes: ${w.count||"none"}`),n("ul",{},...w.outcomes.map(([V,St,W,Y])=>n(
"li",{},n("span",{class:"ts-shape","aria-hidden":"true"},M[V]||""),n("b",{},`${V}${W&&V==="enough"?`, ${W}`:""}: `),St,W&&
V==="not yet"?`. Still missing: ${W}`:"",Y?` (${Y})`:""))));rt.addEventListener("toggle",()=>{rt.open?b.add(w.module):b.
delete(w.module)});let kt=H.flatMap(V=>h(V,w.marks[V.name]));return n("tbody",{},n("tr",{class:"ts-module"},n("th",{scope:"\
rowgroup",colspan:4},w.title,n("span",{class:"ts-assigned"},H.length?"assigned":"not assigned"))),...kt,n("tr",{},n("td",
{colspan:4},q,n("p",{class:"ts-next"},n("b",{},"Next: "),w.next),rt)))}function $(){let w=t.get("me"),B=t.get("entries"),
H=n("table",{class:"ts-table"},n("thead",{},n("tr",{},...["Assignment","Due","State","What you can do"].map(q=>n("th",{scope:"\
col"},q)))),...t.get("modules").map(q=>A(q,B)));return n("section",{},n("div",{class:"ts-me"},n("h2",{},`Working as ${w.
name} (${w.id})`),w.ticket?f("Not you? Sign out","sign-out",()=>{o.drop(),d("sign-out"),document.dispatchEvent(new CustomEvent(
"twoshaft-signed-out"))}):null),B.length?null:n("p",{},"Nothing is assigned yet."),H,f("Look again","look",()=>d("look")))}
function T(){let w=!!t.get("me").id,B=t.get("modules").map(rt=>rt.lesson),q=t.get("lessons").filter(([rt])=>!w||!B.includes(
rt));return q.length?n("section",{},n("h2",{},w?"To look things up":"Lessons"),n("ul",{class:"ts-lessons"},...q.map(([rt,
kt])=>n("li",{},qe(rt,kt,`lesson:${rt}`))))):null}let y=!1,N=t.get("me").id?null:o.get(),C=N!==null;function v(){let w=t.
get("me");w.id?fe(t.get("look")):Fn(),w.id?o.keep(w):(y||N&&!C)&&o.drop(),y=!!w.id,Zo(w.id?t.get("entries"):[])}let S=0,
g="",x=()=>Z(i,"[data-key]"),j=()=>i.querySelector("input[data-key=word]");function _(){let B=x().find(pt=>pt===document.
activeElement)?.dataset.key;i.removeAttribute("aria-busy");let H=!!t.get("me").id;u.textContent=t.get("said"),c.alert.textContent=
t.get("trouble");let q=j()?.value,rt=C?n("p",{},"One moment."):p();i.replaceChildren(..._t([H?$():rt,T()]));let kt=j();kt&&
q&&(kt.value=q);let V=g;if(g=t.get("asking"),g&&g!==V&&x().find(pt=>pt.dataset.key==="question")?.focus(),!B||g&&g!==V)return;
let St=x().find(pt=>pt.dataset.key===B),W=B.split(":")[1],Y=x().filter(pt=>W&&pt.dataset.key?.endsWith(`:${W}`)),J=Y.find(
pt=>pt.dataset.key?.startsWith("receipt")),ht=Y.find(pt=>pt!==J),gt=B.startsWith("hand in anyway")?J??ht:ht,ut=St??gt??Z(
i,"a, button, select")[0];ut?.focus({preventScroll:!0}),u.scrollIntoView({block:"nearest"}),ut?.scrollIntoView({block:"n\
earest"})}let z=()=>{clearTimeout(S),S=setTimeout(()=>{let w=C;C=!1,w||(he=null),v(),_(),w&&l()},0)};t.on("change",z),v(),
_(),N?t.send({type:"resume",name:N.id,ticket:N.ticket}):l();let D=()=>{!document.hidden&&t.get("me").id&&d("look",{quietly:!0})},
k=new IntersectionObserver(([w])=>{w.isIntersecting&&D()});return k.observe(e),document.addEventListener("visibilitychan\
ge",D),()=>{clearTimeout(S),t.off("change",z),k.disconnect(),document.removeEventListener("visibilitychange",D),c.close()}}var Qo={bench:Bs,build:js,cord:_s,depth:Fs,desk:Rn,exploded:Js,face:Zs,fault_board:tn,form:Un,gate:sn,gears:nn,hazards:on,
lifting:rn,micrometer:an,own_checks:cn,press:ln,question:Kn,rules:dn,runout:un,sealant:bn,seat:vn,shims:yn,sketch:kn,start:Xn,
thread:xn,unit_section:$n,whole_build:Nn,wrench:Bn};export{Qo as screens};
