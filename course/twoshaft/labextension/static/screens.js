var yn="http://www.w3.org/2000/svg";function s(t,e={},...n){let o=document.createElement(t);for(let[r,a]of Object.entries(
e))typeof a=="function"?o.addEventListener(r.slice(2),a):a===!0?o.setAttribute(r,""):a!==!1&&a!=null&&o.setAttribute(r,String(
a));return o.append(...Tt(n)),o}function R(t,e={},...n){let o=document.createElementNS(yn,t);return Ot(o,e),o.append(...n),
o}function Ot(t,e){for(let[n,o]of Object.entries(e))o!=null&&t.setAttribute(n,String(o))}function G(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function xt(t,e){return s("select",{class:"ts-box",...t},...wt(
e))}function Et(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function At(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Tt(t){return t.filter(e=>e!=null&&e!==!1)}var _e=0;function nt(t){return _e+=1,`two\
shaft-${t}-${_e}-${Math.random().toString(36).slice(2,7)}`}function Nt(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function J(t,e){return[...t.querySelectorAll(e)]}function kt(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function bt(t){return t.ctrlKey||t.metaKey||t.altKey}function Jt(t){let e=J(t,"button, input, \
select");for(let n of e)n.disabled=!0}function We(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function Zt(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function et(t,e,n=t){return G(t,e,{"aria-label":n})}
function wt(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function Bt(t){return t.map(e=>s("li",{},e))}var ye=new Map;function vt(t,e){if(ye.has(t))throw new Error(`the answer kind ${t} is registered twice`);ye.set(t,e)}function Pt(t){
let e=ye.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Ht(t){let e=nt(
t.kind);return{control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function _t(t,e,n){let{prompt:o}=Pt(
t),r={class:"ts-prompt"};if(o==="legend")return s("fieldset",{class:"ts-field","aria-describedby":n},s("legend",r,t.prompt));
let a=o==="label"?s("label",{...r,for:e.control},t.prompt):s("p",r,t.prompt);return s("div",{class:"ts-field"},a)}function Qt(t,e,n,o){let a=t.options.map(([c,i])=>{let d={"aria-describedby":e.status},l=s("input",{type:n,name:e.control,
value:c,...d});return{key:c,input:l,row:s("label",{class:"ts-option"},l,s("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{o(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:d,input:l}of a)l.checked=i.includes(d)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}vt("choice",{prompt:"legend",make:(t,e,n)=>Qt(t,e,"radio",o=>n(o[0]))});vt("choices",{prompt:"legend",make:(t,e,n)=>Qt(t,e,"checkbox",n)});function te(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function ee(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}vt("each",{prompt:"legend",make(t,e,n){let o=t.lines,r=t.options,a=o.map(([c,i],d)=>{let l=`${e.control}-${d}`,u=s("labe\
l",{class:"ts-each-line",for:l},i),p=xt({id:l,"aria-describedby":e.status},[["","choose"],...r]);return{key:c,box:p,row:s(
"li",{},u,p)}});for(let{box:c}of a)c.addEventListener("change",()=>{n(te(a.map(({key:i,box:d})=>[i,d.value])))});return{
element:s("ol",{class:"ts-each"},...a.map(({row:c})=>c)),show(c){let i=ee(c.value);for(let{key:d,box:l}of a)l.value=i.get(
d)??""},setDisabled(c){for(let{box:i}of a)i.disabled=c},refused(){}}}});function xe(t){let[e="",...n]=t.split(" "),o=e==="wipe"?0:Number(n.shift()),[r="",...a]=n;if(r!=="at")return{hand:e,size:o,
side:r,place:a[0],points:null};let c=a.map(i=>{let[d,l]=i.split(",").map(Number);return[d,l]});return{hand:e,size:o,side:r,
place:"",points:c}}function $e(t,{side:e,place:n,points:o}){return o||(e==="round"?t.holes.find(r=>r.id===n)?.ring??[]:t.
stretches.find(r=>r.id===n)?.lines[e]??[])}function Se(t,e){let{hand:n,size:o,side:r,place:a}=xe(e),c=[...t.stretches,...t.
holes].find(d=>d.id===a),i=n==="wipe"?"":` ${o} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[r]??""}`}
function Le(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function Fe(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function Ke(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function Ue(t,[e,n]){return t.stretches.map(({id:r,lines:a})=>({id:r,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-e,i-n)))})).reduce((r,a)=>a.away<r.away?a:r).id}var xn=.4;function qe(t,e){let n=xn,o=se(t,n);for(;o.
length>e;)n*=1.5,o=se(t,n);return o.map(([r,a])=>[Math.round(r*10)/10,Math.round(a*10)/10])}function se(t,e){if(t.length<
3)return t;let[n,o]=[t[0],t[t.length-1]],r=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=$n(n,o,t[c]);i>r&&([r,a]=[i,c])}return r<=
e?[n,o]:[...se(t.slice(0,a+1),e).slice(0,-1),...se(t.slice(a),e)]}function $n(t,e,n){let[o,r]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(o,r)||1;return Math.abs(o*(n[1]-t[1])-r*(n[0]-t[0]))/a}var ne=14,Sn=3,Ln=.5,Cn=["middle","inside","outside"],oe="round ";function En(t,e){let n=t.outline.map(([W])=>W),o=t.outline.
map(([,W])=>W),[r,a]=[Math.min(...n)-ne,Math.max(...n)+ne],[c,i]=[Math.min(...o)-ne,Math.max(...o)+ne],d=a-r,l=i-c,u=([W,
V])=>`${(W-r).toFixed(1)} ${(i-V).toFixed(1)}`,p=(W,V)=>`M${W.map(u).join("L")}${V?"Z":""}`,f=nt("face"),m=d/100,g=2*m,L=(W,V)=>R(
"pattern",{id:`${f}-${W}`,width:g,height:g,patternUnits:"userSpaceOnUse"},R("path",{d:V,class:"tsp-hatch","stroke-width":m/
4})),v=R("defs",{},L("oil",`M0 ${g}L${g} 0`),L("dirt",`M0 ${g}L${g} 0M0 0L${g} ${g}`)),I=t.cavities.map(([,W])=>p(W,!0)).
join(""),P=t.islands.map(W=>p(W,!0)).join(""),w=p(t.outline,!0)+I,S=R("g"),C=R("g"),b=R("g"),h=R("g"),A=R("path",{class:"\
tsp-live",d:""}),y=R("path",{class:"tsp-chosen",d:""}),$=R("path",{class:"tsp-land",d:w,"fill-rule":"evenodd"}),T=R("pat\
h",{class:"tsp-edge",d:w+P,"stroke-width":m/2.5}),B=([W,V],E,_="middle")=>{let F={x:W-r,y:i-V,"font-size":2.5*m,"text-an\
chor":_};return R("text",{class:"tsp-text",...F},E)},K=[(r+a)/2,(c+i)/2],k=(W,V)=>{let E=Zt(W,K)||1;return[W[0]+V*(K[0]-
W[0])/E,W[1]+V*(K[1]-W[1])/E]};for(let{x:W,y:V,d:E,leads:_,name:F}of t.holes){let q={cx:W-r,cy:i-V,"stroke-width":m/4},ot=_===
"blind"?"tsp-hole tsp-blind":"tsp-hole";b.append(R("circle",{...q,r:E/2,class:ot})),_==="to the outside"&&b.append(R("ci\
rcle",{...q,r:E/3,class:"tsp-hole"}));let[z,dt]=k([W,V],-(E/2+4.4*m));b.append(B([z,dt-.8*m],F.replace("bolt ","")))}for(let W of t.
guides){let[V,E]=[W.x-r,i-W.y],_=`M${V-m} ${E}h${g}M${V} ${E-m}v${g}`;b.append(R("path",{class:"tsp-guide",d:_,"stroke-w\
idth":m/2}));let F={"stroke-width":m/5,"stroke-dasharray":`${m} ${m}`};b.append(R("circle",{cx:V,cy:E,r:W.reach,class:"t\
sp-reach",...F}));let q=k([W.x,W.y],W.reach+g),ot=(q[0]-W.x)/(W.reach+g);b.append(B(q,W.name,ot>.5?"start":ot<-.5?"end":
"middle"))}for(let{word:W,points:V,width:E}of t.spots){let[_]=W.split(" "),[F,q]=[V[0],V[V.length-1]],ot=Zt(F,q)||1,[z,dt]=[
-(q[1]-F[1])/ot*E/2,(q[0]-F[0])/ot*E/2],N=[[F[0]+z,F[1]+dt],[q[0]+z,q[1]+dt],[q[0]-z,q[1]-dt],[F[0]-z,F[1]-dt]],U=`url(#${f}\
-${_})`;S.append(R("path",{d:p(N,!0),fill:U,class:"tsp-spot","stroke-width":m/4}));let rt=B(k([(F[0]+q[0])/2,(F[1]+q[1])/
2],9*m),_);rt.classList.add("tsp-spot-word"),b.append(rt)}let x=[100,50,20,10].find(W=>W<d/4)??10,O=`M${m} ${l-m}v${-m}v${m/
2}h${x}v${-m/2}v${m}`,M={x:x+g,y:l-m,"font-size":2.5*m};h.append(R("path",{class:"tsp-edge",d:O,"stroke-width":m/4}),R("\
text",{class:"tsp-text",...M},`${x} mm`));let H=`0 0 ${d.toFixed(1)} ${l.toFixed(1)}`,X=R("svg",{viewBox:H,class:"tsp-fa\
ce",role:"img","aria-label":e},v,$,S,C,T,b,y,A,h),Y=`max-width: ${(25*d/l).toFixed(1)}rem`;return{frame:s("div",{class:"\
ts-pad-face",style:Y},X),svg:X,over:h,live:A,chosen:y,land:$,path:p,unit:m,box:{left:r,right:a,low:c,high:i,width:d,height:l},
place({clientX:W,clientY:V}){let E=X.getBoundingClientRect(),_=Math.min(E.width/d,E.height/l);return[r+(W-E.left-(E.width-
_*d)/2)/_,i-(V-E.top-(E.height-_*l)/2)/_]},strokes(W){C.replaceChildren(...W.map(st))}};function st(W){let V=xe(W),E=$e(
t,V),_=Le(t,V.hand,Math.max(V.size,m/2)),F=E.length>1?p(E,V.side==="round"):E.length?`${p(E)}h0.01`:"",q=R("path",{d:F,class:`\
tsp-stroke tsp-${V.hand}`,"stroke-width":_});if(V.hand!=="film")return q;let ot=Math.min(8,Math.max(.6,40*V.size)),z={"s\
troke-width":m/3,"stroke-dasharray":`${ot} ${ot}`};return R("g",{},q,R("path",{d:F,class:"tsp-grain",...z}))}}function re({
face:t,label:e,onLay:n,onRemove:o,onClear:r}){let a=En(t,e),c=s("p",{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"\
ts-read ts-pad-trouble",role:"status"}),d=(O,M)=>s("span",{class:"ts-pair"},s("label",{for:M.id},O),M),l=xt({id:nt("hand")},
Object.entries(t.hands)),u=s("input",{class:"ts-box ts-size",id:nt("size"),type:"text",inputmode:"decimal",autocomplete:"\
off",maxlength:"12"}),p=s("label",{for:u.id},"thickness"),f=xt({id:nt("place")},t.stretches.map(({id:O,name:M})=>[O,M]));
f.append(s("optgroup",{label:"Round a hole"},...t.holes.map(({id:O,name:M})=>s("option",{value:`${oe}${O}`},`round ${M}`))));
let m=xt({id:nt("side")},Cn.map(O=>[O,t.sides[O]])),g=G("Lay it here",()=>h([b(f.value)])),L=G("Lay it on every stretch",
()=>h(t.stretches.map(({id:O})=>b(O)))),v=G("Take back the last pass",()=>{w&&o(w-1,!0)}),I=G("Clear the face",r),P={film:"",
bead:""},w=0,S=!1;function C(){if(l.value==="wipe")return"";let[O,M]=t.sizes[l.value],H=Fe(u.value);if(H>=O&&H<=M)return u.
removeAttribute("aria-invalid"),` ${Number(H.toFixed(3))}`;let X=l.value==="film"?"the thickness of the film":"the diame\
ter of the bead";return i.textContent=u.value.trim()?`Read “${u.value}”: give ${X} from ${O} to ${M} mm.`:`First giv\
e ${X} in mm.`,u.setAttribute("aria-invalid","true"),u.focus(),null}function b(O){let M=C();if(M===null)return null;let H=O.
startsWith(oe)?O:`${m.value} ${O}`;return`${l.value}${M} ${H}`}function h(O){let M=O.filter(H=>H!==null);if(!(S||M.length<
O.length)){if(w+M.length>t.most){i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent=
"",c.textContent=M.length===1?`Laid: ${Se(t,M[0])}`:`Laid on ${M.length} stretches`,n(M)}}function A(){let O=l.value==="\
wipe";p.textContent=l.value==="bead"?"diameter":"thickness",u.disabled=S||O,u.value=O?"":P[l.value],u.placeholder=O?"":"\
mm",g.textContent=O?"Wipe here":"Lay it here",L.textContent=O?"Wipe every stretch":"Lay it on every stretch",i.textContent=
"",y()}function y(){let O=f.value.startsWith(oe);m.disabled=S||O;let M=$e(t,O?{side:"round",place:f.value.slice(oe.length)}:
{side:m.value,place:f.value});a.chosen.setAttribute("d",M.length?a.path(M,O):""),a.chosen.setAttribute("stroke-width",String(
a.unit/2))}l.addEventListener("change",A),u.addEventListener("input",()=>{P[l.value]=u.value}),f.addEventListener("chang\
e",y),m.addEventListener("change",y),u.addEventListener("keydown",O=>{O.key==="Enter"&&(O.preventDefault(),g.click())});
let $=null;a.svg.addEventListener("pointerdown",O=>{if(S||O.button>0)return;$=[a.place(O)],a.svg.setPointerCapture(O.pointerId);
let M=Math.max(1,Number(P.bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(Le(t,l.value,M)))}),a.svg.
addEventListener("pointermove",O=>{if(!$)return;let M=a.place(O);Zt(M,$[$.length-1])<Ln||($.push(M),a.live.setAttribute(
"d",a.path($)))});let T=O=>{if(!$)return;let M=$;if($=null,a.live.setAttribute("d",""),O.type==="pointercancel")return;if(Ke(
M)<Sn){f.value=Ue(t,M[0]),y();return}let H=C();if(H===null)return;let X=qe(M,t.points).map(Y=>Y.join(","));h([`${l.value}${H}\
 at ${X.join(" ")}`])};a.svg.addEventListener("pointerup",T),a.svg.addEventListener("pointercancel",T);let B=s("ol",{class:"\
ts-passes","aria-label":"Passes, in the order they were done"}),K=s("p",{class:"ts-hint"},"Nothing is laid yet."),k=s("d\
iv",{class:"ts-pad-tools"},s("div",{class:"ts-tools"},d("tool",l),s("span",{class:"ts-pair"},p,u)),s("div",{class:"ts-to\
ols"},d("where",f),d("runs",m)),s("div",{class:"ts-tools"},g,L,v,I),i,c),x=()=>J(B,"button");return A(),{drawing:a,tools:k,
list:B,empty:K,frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,k,s("div",{class:"ts-pad-list"},K,B)),show(O,M=[]){
w=O.length,a.strokes(O),K.hidden=w>0;let H=x().findIndex(X=>X.matches(":focus"));B.replaceChildren(...O.map((X,Y)=>s("li",
{},s("span",{},`${Se(t,X)}${M[Y]?`, ${M[Y]}`:""} `),G("take out",()=>o(Y,!1),{class:"ts-button ts-remove",disabled:S,"ar\
ia-label":`Take out pass ${Y+1}`})))),H>=0&&(x()[Math.min(H,w-1)]??g).focus()},setDisabled(O){S=O;for(let M of[l,f,g,L,v,
I,...x()])M.disabled=O;u.disabled=O||l.value==="wipe",y()}}}vt("film",{prompt:"words",make(t,e,n){let o=[],r=c=>{o=c,a.show(o),n(o)},a=re({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>r([...o,...c]),onRemove:c=>r(o.filter((i,d)=>d!==c)),onClear:()=>r([])});
return{element:a.element,show(c){o=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(o)},setDisabled:a.setDisabled,
refused(){}}}});function ze(t,{send:e,typing:n,said:o=a=>String(a??""),wrong:r=a=>!!a.error}){let a=s("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||a.value.trim()!==c.trim(),d=()=>{i()&&(c=a.value,e(a.value))};return a.
addEventListener("blur",d),a.addEventListener("keydown",l=>{let u=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!==
"Enter"&&!u||(l.preventDefault(),d())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:d,pending:i,refused(){
c=null},show(l){a.setAttribute("aria-invalid",String(r(l))),!(document.activeElement===a&&a.value!==c)&&(c=o(l.value),a.
value=c)}}}function Ge(t,e){let[n,o,r]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(r)?n:o).
trim()} ${e}`.trim()}function Ye(t,e,n){let o=xt({"aria-label":"Choose the unit"},[["","unit"],...e.map(r=>[r,r])]);return o.addEventListener(
"change",()=>{o.value&&(t.value=Ge(t.value,o.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener("input",()=>{
o.value=""}),o}vt("number",{prompt:"label",make(t,e,n,o){let r=t.units,{box:a,flush:c,pending:i,refused:d,show:l}=ze(e,{send:n,typing:o}),
u=s("span",{class:"ts-hint",id:e.hint},t.hint),p=r.length?Ye(a,r,c):null;return{element:s("div",{class:"ts-line-of"},a,p,
u),show:l,setDisabled(f){a.disabled=f,p&&(p.disabled=f)},refused:d,flush:c,pending:i}}});function Ve(t,e){let o=[...new Set([t??[]].flat())].filter(r=>e.includes(String(r))).map(String);return[...o,...e.filter(
r=>!o.includes(r))]}var Wt=(t,e)=>t.join(`
`)===e.join(`
`),Xe=t=>`#${t.keys[0]}`,ae=class{constructor(e,n){this.labels=new Map(e.map(([o,r])=>[o,r])),this.stages=new Map;for(let[
o,,r]of e)r&&this.stages.set(o,r);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let n of this.order){let o=this.stages.get(n)??null,r=e.at(-1);r&&o!==null&&r.stage===o?r.keys.push(n):e.push({stage:o,
keys:[n]})}return e}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let e=[];for(let n of this.runs()){
let[o]=n.keys;if(n.keys.length<2){e.push({id:o,key:o,level:1});continue}if(e.push({id:Xe(n),run:n,level:1}),!this.closed.
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
0?l:l-1],c=a(o);if(c===void 0)return this.insertedAt(o);let i=this.stages.get(c),d=i!==void 0&&(r||this.closed.has(i));do
o+=e;while(d&&a(o)!==void 0&&this.stages.get(a(o))===i);return this.insertedAt(o)}atPosition(e){return this.insertedAt(Math.
min(e-1,this.order.length-this.unit().length))}beside(e,n){return this.insertedAt(this.rest().indexOf(e)+(n==="after"?1:
0))}gathered(){let e=new Map;for(let n of this.order){let o=this.stages.get(n)??n;e.set(o,[...e.get(o)??[],n])}return[...e.
values()].flat()}dropAt(e,n){let o=e.run?e.run.keys:[e.key],r=e.run&&!this.closed.has(String(e.run.stage));return n&&!r?
{target:String(o.at(-1)),side:"after"}:{target:o[0],side:"before"}}take(e){if(Wt(e,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,n){let[o]=n.keys,r=this.rows().find(a=>a.run?.
keys.includes(o));this.current=r?r.id:o}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,n){let o=e.pop();return o?(n.push(this.order),this.order=
o,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||Wt(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,n){this.order=[...e],n&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let n=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((o,r)=>o-r);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(e,n){
let o=e.run?e.run.stage:this.stages.get(e.key),r=e.run?e.run.keys[0]:e.key,a=this.runs().find(c=>c.keys.includes(r));return!o||
!a||a.keys.length<2?null:(n?this.closed.add(o):this.closed.delete(o),n&&(this.current=Xe(a)),o)}sought(e){let n=this.rows(),
o=n.findIndex(c=>c.id===this.current),r=e.length>1?o:o+1,a=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...n.slice(r),...n.slice(0,r)].find(c=>a(c).startsWith(e))}};var An=12,Mn=700,On=5,Je=32,Tn=8;function ie({label:t,steps:e,order:n,onChange:o}){let r=new ae(e,n),{staged:a}=r,c=!1,i={},
d=!1,l=new Map,u=s("div",{"aria-live":"assertive",class:"ts-hidden"}),p=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),f=G("Up",()=>X(-1),{"aria-label":"Move the chosen step up"}),m=G("Down",
()=>X(1),{"aria-label":"Move the chosen step down"}),g=G("Undo",()=>r.undo()&&st("Undone")),L=G("Redo",()=>r.redo()&&st(
"Done again")),v=G("Choose several",()=>F(!c),{"aria-pressed":"false"}),I=G("Gather stages",()=>H(r.gathered(),"Steps of\
 one stage now stand together")),P=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:D=>{D.key==="Enter"&&Y()}}),w=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),S=s("span",{class:"ts-chosen"}),C=G("Move",Y,{"aria-label":"Move to this position"}),b=G(
"Move",ht,{"aria-label":"Move before this step"}),h=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},f,m,g,L,v,a?I:null),A=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",P,C),s("span",{class:"\
ts-pair"},"or before ",w,b)),y="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),$=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},y),A),T=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),h,S,p,$,u);function B(D){u.
textContent=D}function K(D=""){B(`${r.unitName()}${D}, ${r.where()}`)}function k(D){let j=l.get(D.id);if(j)return j;let Q=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Q.dataset.row=D.id,l.set(D.id,Q),Q}function x(D=!1){let j=r.settle(),
Q=new Set(j.map(at=>at.id));for(let[at,St]of l)Q.has(at)||(St.remove(),l.delete(at));let lt=r.unit(),yt=new Set(lt),ut=p.
firstElementChild;for(let at of j){let St=k(at);St===ut?ut=ut.nextElementSibling:p.insertBefore(St,ut),O(St,at,yt)}P.value=
String(r.order.indexOf(lt[0])+1);let $t=[...r.order.entries()].filter(([,at])=>!yt.has(at));w.replaceChildren(...$t.map(
([at,St])=>s("option",{value:St},`${at+1}  ${r.label(St)}`))),S.textContent=`Chosen: ${r.unitName()}, ${r.where()}`,f.disabled=
d||r.isFirst,m.disabled=d||r.isLast,g.disabled=d||r.past.length===0,L.disabled=d||r.future.length===0;for(let at of[v,I,
P,w,C,b])at.disabled=d;if(p.setAttribute("aria-disabled",String(d)),p.classList.toggle("ts-long",r.order.length>An),D){let at=l.
get(r.current);at?.focus({preventScroll:!0}),at?.scrollIntoView({block:"nearest"})}}function O(D,j,Q){let lt=j.id===r.current,
yt=j.run?!1:r.block.has(j.key),ut=r.held!==null&&(j.run?lt:Q.has(j.key)),$t=r.order.indexOf(j.run?j.run.keys[0]:j.key),at=j.
run?j.run.keys.map(Mt=>i[Mt]?.length??0):i[j.key],St=j.run?r.closed.has(String(j.run.stage)):!1,Be=JSON.stringify([$t,j.
level,lt,yt,ut,at,j.run&&[j.run.keys.length,St]]);if(D.dataset.looks===Be)return;D.dataset.looks=Be,D.tabIndex=lt?0:-1,D.
setAttribute("aria-selected",String(yt)),D.classList.toggle("ts-current",lt),D.classList.toggle("ts-inblock",yt),D.classList.
toggle("ts-held",ut),D.classList.toggle("ts-level2",j.level===2),a&&D.setAttribute("aria-level",String(j.level));let De=ut?
" picked up":yt?" in block":"",Pe=De?s("span",{class:"ts-state"},De):"",Re=Mt=>s("span",{class:"ts-number","aria-hidden":"\
true"},Mt);if(j.run){let{keys:Mt,stage:vn}=j.run;D.setAttribute("aria-expanded",String(!St));let He=St?Mt.filter(kn=>i[kn]?.
length).length:0;D.replaceChildren(Re(`${$t+1}–${$t+Mt.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},St?"▸":
"▾"),s("span",{class:"ts-what"},s("b",{},vn),` ${Mt.length} steps`,He?` – ${He} with a remark`:"",Pe));return}let je=(i[j.
key]??[]).map(Mt=>s("span",{class:`ts-note ts-note-${Mt.kind}`},At(Mt.shape??""),s("b",{},Mt.word),` ${Mt.text}`)),bn=a&&
j.level===1;D.classList.toggle("ts-troubled",je.length>0),D.replaceChildren(Re(String($t+1)),s("span",{class:"ts-grip","\
aria-hidden":"true"},"⠿"),s("span",{class:"ts-what"},r.label(j.key),bn?s("span",{class:"ts-stage"},` ${r.stages.get(j.
key)??""}`):"",Pe,...je))}let M=()=>o([...r.order]);function H(D,j){if(!r.take(D)){B(`${r.unitName()} stays at ${r.where()}`);
return}x(!0),j?B(j):K(),r.held===null&&M()}function X(D){d||H(r.shifted(D))}function Y(){if(d)return;let D=Number.parseInt(
P.value,10),j=r.order.length;D>=1&&D<=j?H(r.atPosition(D)):(B(`Type a position from 1 to ${j}`),S.textContent=`Type a po\
sition from 1 to ${j}.`)}function ht(){!d&&w.value&&H(r.beside(w.value,"before"))}function st(D){x(),B(`${D}. ${r.unitName()}\
, ${r.where()}`),M()}function W(){r.pickUp(),x(!0),K(" picked up")}function V(){r.putDown()&&M(),x(!0),K(" put down")}function E(){
r.putDown()&&M(),x()}function _(){r.putBack(),x(!0),K(" put back")}function F(D){c=D,v.setAttribute("aria-pressed",String(
D)),D||(r.block=new Set),x(),B(D?"Choose the steps of a block":"Block let go")}function q(D){r.toggleBlock(D);let j=r.block.
has(D)?"in the block":"out of the block";B(`${r.label(D)} ${j}, ${r.block.size} in it`)}function ot(D,j){let Q=r.fold(D,
j);Q&&(x(!0),B(`${Q} ${j?"closed":"open"}`))}p.addEventListener("keydown",D=>{if(bt(D))return;let j=r.rows(),Q=j.findIndex(
St=>St.id===r.current),lt=St=>{r.current=j[Math.max(0,Math.min(j.length-1,St))].id,x(!0)},yt=j[Q],{key:ut}=D,$t=ut==="Ar\
rowUp"?-1:ut==="ArrowDown"?1:null,at=r.held!==null;if($t&&(D.shiftKey||at))X($t);else if($t)lt(Q+$t);else if(at&&ut==="E\
scape")_();else if(ut===" ")d||(at?V:W)();else if(at&&ut==="Enter")V();else if(ut==="Enter"&&!yt.run)d||(q(yt.key),x(!0));else if(ut===
"Home"&&!at)lt(0);else if(ut==="End"&&!at)lt(j.length-1);else if(a&&ut==="ArrowLeft")ot(yt,!0);else if(a&&ut==="ArrowRig\
ht")ot(yt,!1);else if(ut.length===1&&!at)N(ut);else return;D.preventDefault()});let z="",dt;function N(D){z+=D.toLowerCase(),
clearTimeout(dt),dt=window.setTimeout(()=>{z=""},Mn);let j=r.sought(z);j&&(r.current=j.id,x(!0))}p.addEventListener("foc\
usout",({relatedTarget:D})=>{r.held!==null&&D instanceof Node&&!p.contains(D)&&E()});let U=null;p.addEventListener("poin\
terdown",D=>{let j=r.row(kt(D,".ts-step")?.dataset.row??"");if(!j||D.button!==0)return;if(j.run&&kt(D,".ts-fold")){ot(j,
!r.closed.has(String(j.run.stage))),D.preventDefault();return}let Q=kt(D,".ts-grip, .ts-number"),lt=D.ctrlKey||D.metaKey;
r.held!==null&&E(),!j.run&&!d&&(D.shiftKey?r.blockTo(j.key):(lt||c)&&!Q&&q(j.key)),r.current=j.id,x(!0),D.preventDefault(),
!(d||D.shiftKey||lt)&&(D.pointerType!=="mouse"&&!Q||(U={x:D.clientX,y:D.clientY,id:D.pointerId,carried:null},p.setPointerCapture(
D.pointerId)))}),p.addEventListener("pointermove",D=>{if(!U||D.pointerId!==U.id)return;let{clientX:j,clientY:Q}=D;if(!U.
carried){if(Math.hypot(j-U.x,Q-U.y)<On)return;U.carried=rt()}Object.assign(U.carried,{x:j,y:Q}),pt(U.carried)});function rt(){
let D=s("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},r.unit().length>1?r.unitName():r.label(r.unit()[0]));document.
body.append(D);let j=s("div",{class:"ts-line","aria-hidden":"true"});p.append(j),p.classList.add("ts-dragging");for(let Q of r.
unit())l.get(Q)?.classList.add("ts-lifted");return{ghost:D,line:j,timer:requestAnimationFrame(mt),x:0,y:0,drop:null}}function pt(D){
D.ghost.style.transform=`translate(${D.x+12}px, ${D.y+8}px)`;let Q=r.rows().map($t=>{let at=k($t).getBoundingClientRect();
return{row:$t,box:at,offset:D.y-(at.top+at.height/2)}}).reduce(($t,at)=>Math.abs(at.offset)<Math.abs($t.offset)?at:$t),lt=Q.
offset>0;D.drop=r.dropAt(Q.row,lt);let ut=(lt?Q.box.bottom:Q.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;D.line.
style.top=`${ut}px`}function mt(){let D=U?.carried;if(D){for(let j of[p,We(p)]){let lt=j===document.scrollingElement?{top:0,
bottom:innerHeight}:j.getBoundingClientRect(),yt=D.y<lt.top+Je?-1:D.y>lt.bottom-Je?1:0;if(!yt)continue;let ut=j.scrollTop;
if(j.scrollTop+=yt*Tn,j.scrollTop!==ut){pt(D);break}}D.timer=requestAnimationFrame(mt)}}function tt(D){let j=U?.carried;
if(U=null,!j)return;cancelAnimationFrame(j.timer),j.ghost.remove(),j.line.remove(),p.classList.remove("ts-dragging");for(let lt of l.
values())lt.classList.remove("ts-lifted");let{drop:Q}=j;if(!D||!Q||r.unit().includes(Q.target)){x(!0),B(`${r.unitName()}\
 stays at ${r.where()}`);return}H(r.beside(Q.target,Q.side))}return p.addEventListener("pointerup",()=>tt(!0)),p.addEventListener(
"pointercancel",()=>tt(!1)),T.addEventListener("keydown",D=>{!U?.carried||D.key!=="Escape"||(tt(!1),D.stopPropagation())}),
x(),{element:T,tools:h,order:()=>[...r.order],change:(D,j)=>{d||H(D,j)},setOrder(D,j=!1){r.held!==null||U?.carried||Wt(D,
r.order)||(r.set(D,j),x())},setNotes(D){i=D??{},x()},setDisabled(D){d=D,x()}}}vt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let o=t.
steps.map(([a])=>a),r=ie({label:t.prompt,steps:t.steps,order:o,onChange:n});return{element:r.element,show:a=>r.setOrder(
Ve(a.value,o)),setDisabled:r.setDisabled,refused(){}}}});function Qe(t,e,n){let o=[0,0],r=[n(...o)],a=new Map;for(let[c,i]of t.entries()){let[d,l]=e[i]??[null,null];d!==null&&o[1]!==
0&&r.push(n(o[0],0)),o=[d??o[0],l??(d===null?o[1]:0)];let u=n(...o);r.push(u);let p=a.get(u.join(" "))??{at:u,numbers:[]};
p.numbers.push(c+1),a.set(u.join(" "),p)}return{points:r,stops:[...a.values()]}}function ts(t,e,n){let o=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,o),n,...t.slice(o)],place:o}}function es(t,e){return t.filter((n,o)=>o!==e)}function ss(t,e,n){
let o=e+n;if(o<0||o>=t.length)return null;let r=[...t];return[r[e],r[o]]=[r[o],r[e]],r}var Ze=.6;function ns(t,[e,n],[o,
r]){let a=Object.entries(t).filter(([d])=>!d.startsWith("firm:")),c=(d,l)=>a.filter(([,u])=>u[0]===d&&u[1]===l).map(([u])=>u).
slice(0,1),i=Math.abs(e-o)>Ze;return[...i&&Math.abs(n)>Ze?c(null,0):[],...i?c(o,null):[],...r||!i?c(null,r):[]]}var zt=9,ce=.7*zt,Ce=44;function le(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[o,r]=t.turn_mm,a=(n-e)*zt+2*Ce,
c=(r-o)*ce+2*Ce,i=(f,m)=>[Ce+(f-e)*zt,c/2-(m-(o+r)/2)*ce],d=t.gates.map(f=>`M${i(f,o).join(" ")}L${i(f,r).join(" ")}`),l=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,u=t.gears.map(([f,m,g])=>{let[L,v]=i(m,g),I={x:L,y:v+(g>0?-20:30),"data-gear":f};
return R("text",{...I,class:"tsp-gear","text-anchor":"middle"},f)});return{element:R("svg",{viewBox:`0 0 ${a} ${c}`,width:a,
height:c,class:"ts-gateplan","aria-hidden":"true"},R("path",{d:[...d,l].join(""),class:"tsp-slot"}),...u),at:i}}function Nn(t){let{element:e,at:n}=le(t),o=R("polyline",{class:"tsp-line",points:""}),r=R("g");return e.append(o,r),{element:e,
show(a){let{points:c,stops:i}=Qe(a,t.aims,n),[[d,l]]=c;o.setAttribute("points",c.map(u=>u.join(",")).join(" ")),r.replaceChildren(
R("circle",{cx:d,cy:l,r:4,class:"tsp-start"}),...i.map(({at:[u,p],numbers:f})=>R("g",{},R("circle",{cx:u,cy:p,r:3.5,class:"\
tsp-stop"}),R("text",{x:u+7,y:p-5,class:"tsp-number"},f.join(", ")))))}}}function os({label:t,moves:e,plan:n,most:o,onChange:r}){
let a=new Map(e),c=T=>a.get(T)??T,i=[],d=-1,l=!1,u=n?Nn(n):null,p=s("ol",{class:"ts-pathlist","aria-label":t}),f=s("p",{
class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),m=s("p",{class:"ts-hidden",role:"stat\
us"}),g=e.map(([T,B])=>G(B,()=>S(T))),L=G("Take back the last move",()=>{i.length&&C(i.length-1)}),v=G("Take back all",()=>{
i.length&&w([],"No moves left")}),I=s("span",{class:"ts-hint"}),P=s("div",{class:"ts-path"},s("div",{class:"ts-tools ts-\
moves",role:"group","aria-label":"Add a move"},...g),s("div",{class:"ts-path-both"},s("div",{class:"ts-path-words"},f,p,
s("div",{class:"ts-tools"},L,v,I)),u&&s("div",{class:"ts-path-picture"},u.element)),u&&s("p",{class:"ts-hint"},"The line\
 shows where each move aims. Whether the lever gets there is what the test finds out."),m);function w(T,B){l||(i=T,$(),m.
textContent=B,r([...i]))}function S(T){if(i.length>=o){m.textContent=`${o} moves are the most here`;return}let{moves:B,place:K}=ts(
i,d,T);d=K,w(B,`Move ${K+1}: ${c(T)}`)}function C(T){let B=c(i[T]);d=Math.min(d,i.length-2),w(es(i,T),`Taken back: ${B}`)}
function b(T,B){let K=ss(i,T,B);K&&(d=T+B,w(K,`${c(K[d])}, move ${d+1} of ${i.length}`),A(d))}function h(T){return p.children[T]?.
querySelector(".ts-path-move")}function A(T){let B=h(T);return B instanceof HTMLElement&&B.focus(),!!B}function y(T,B){let K=s(
"span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${B+1}: ${c(T)}`},c(T)),k=s("button",{type:"button",class:"\
ts-path-off","aria-label":`Take back move ${B+1}`,onclick:()=>C(B)},"×"),x=s("li",{},K,k);return x.classList.toggle("ts\
-current",B===d),K.addEventListener("focus",()=>{d=B;for(let O of p.children)O.classList.toggle("ts-current",O===x)}),K.
addEventListener("keydown",O=>{if(bt(O))return;let M=O.key==="ArrowUp"?-1:O.key==="ArrowDown"?1:null;if(M&&O.shiftKey)b(
B,M);else if(M)A(B+M);else if(O.key==="Delete"||O.key==="Backspace")C(B),A(Math.min(B,i.length-1))||g[0].focus();else return;
O.preventDefault()}),k.disabled=l,x}function $(){p.replaceChildren(...i.map(y)),f.hidden=i.length>0,I.textContent=`${i.length}\
 of at most ${o} moves`;for(let T of g)T.disabled=l||i.length>=o;L.disabled=v.disabled=l||i.length===0,u?.show(i)}return $(),
{element:P,setMoves(T){Wt(T,i)||(i=[...T],d=-1,$())},setDisabled(T){l=T,$()}}}vt("path",{prompt:"words",make(t,e,n){let o=os({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:o.element,show:r=>o.setMoves([r.value??[]].flat()),setDisabled:o.setDisabled,refused(){}}}});function rs(t,e,n){let o=t.indexOf(n);return[...t.slice(o+1),...t.slice(0,o)].find(a=>!e.get(a))??n}function as(t,e,n){let o=t.
find(({key:d})=>d===e);if(!o)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let r={ArrowRight:1,
ArrowLeft:-1}[n];if(r!==void 0){let d=[...t].sort((u,p)=>u.x-p.x||u.y-p.y),l=d.findIndex(({key:u})=>u===e)+r;return d[(l+
d.length)%d.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=d=>Math.abs(d.y-o.y)+2*Math.abs(d.x-
o.x),[i]=t.filter(({key:d,y:l})=>d!==e&&(l-o.y)*a>2).sort((d,l)=>c(d)-c(l));return(i??o).key}function Ft(t,e,n,o){let r=t.lines,a=t.options,c=r.map(([p])=>p),i=c[0],d=r.map(([p,f],m)=>{let g=`${e.control}-${m}`,L=s(
"label",{class:"ts-each-line",for:g},f),v=xt({id:g,"aria-describedby":e.status},[["","choose"],...a]),I=s("input",{type:"\
radio",name:`${e.control}-active`,"aria-label":`Point in the picture for: ${f}`,checked:m===0}),P=s("li",{},c.length>1?I:
null,L,v);return I.addEventListener("change",()=>{i=p}),v.addEventListener("change",()=>{i=p,u()}),{key:p,box:v,mark:I,row:P}}),
l=()=>new Map(d.map(({key:p,box:f})=>[p,f.value]));function u(){let p=l();o(p),n(te([...p]))}return{element:s("ol",{class:"\
ts-each ts-pointed"},...d.map(({row:p})=>p)),active:()=>i,answers:l,press(p){let f=d.find(({key:m})=>m===i);if(!(!f||f.box.
disabled)){f.box.value=p,u(),i=rs(c,l(),i);for(let{key:m,mark:g}of d)g.checked=m===i}},put(p,f){let m=d.find(({key:g})=>g===
p);!m||m.box.disabled||(m.box.value=f,u())},show(p){let f=ee(p.value);for(let{key:m,box:g}of d)g.value=f.get(m)??"";o(l())},
setDisabled(p){for(let{box:f,mark:m}of d)f.disabled=p,m.disabled=p}}}function de(t,e,n){let o=s("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});o.innerHTML=t;let r=o.querySelector(
"svg");r.setAttribute("role","group");let a=new Map(J(r,"[data-mark]").map(l=>[String(l.dataset.mark),l])),c=new Map(e);
for(let[l,u]of a)u.setAttribute("role","button"),u.setAttribute("tabindex",l===e[0][0]?"0":"-1"),u.setAttribute("aria-la\
bel",`${l}: ${c.get(l)??""}`);let i=l=>kt(l,"[data-mark]")?.dataset.mark??kt(l,"[data-spot]")?.dataset.spot;o.addEventListener(
"click",l=>{let u=i(l);u&&n(u)});for(let[l,u]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])o.addEventListener(
l,p=>{let f=i(p);f&&d(f,u)});function d(l,u){for(let p of J(r,`[data-spot="${l}"]`))p.classList.toggle("tss-near",u)}return o.
addEventListener("keydown",l=>{let u=kt(l,"[data-mark]")?.dataset.mark;if(u){if(l.key==="Enter"||l.key===" ")n(u);else{let p=[
...a].map(([m,g])=>{let L=g.querySelector(".tss-dot");return{key:m,x:L.cx.baseVal.value,y:L.cy.baseVal.value}}),f=as(p,u,
l.key);if(f===void 0)return;a.get(u)?.setAttribute("tabindex","-1"),a.get(f)?.setAttribute("tabindex","0"),a.get(f)?.focus()}
l.preventDefault()}}),{element:o,drawing:r,choose(l){let u=new Set(l);for(let[p,f]of a)f.classList.toggle("tss-chosen",u.
has(p)),f.setAttribute("aria-pressed",String(u.has(p)));for(let p of J(r,"[data-spot]"))p.classList.toggle("tss-on",u.has(
String(p.dataset.spot)))}}}vt("picture",{prompt:"legend",make(t,e,n){let o=t.options,r=Ft(t,e,n,i=>{let d=new Set(i.values());for(let{letter:l,card:u}of a)
u.classList.toggle("ts-on",d.has(l))}),a=o.map(([i,d])=>{let l=s("div",{class:"ts-picture-card",onclick:()=>r.press(i)});
return l.innerHTML=t.svgs[i],l.querySelector("svg")?.setAttribute("aria-label",d),l.prepend(s("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:l}}),c=s("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:s("div",{},r.element,
c),show:r.show,setDisabled:r.setDisabled,refused(){}}}});vt("point",{prompt:"legend",make(t,e,n){let o=Ft(t,e,n,i=>c.choose(i.values())),a=t.options.map(([i,d])=>[i,d.slice(i.length+
2)]),c=de(t.svg,a,o.press);return{element:s("div",{},o.element,c.element),show:o.show,setDisabled:o.setDisabled,refused(){}}}});vt("put",{prompt:"legend",make(t,e,n){let o=t.lines,r=new Map(o.map(([u])=>[u,"1"])),a=Ft(t,e,n,u=>{for(let[p,f]of u)f&&
r.set(p,f.split("-")[1]);c.choose([...u.values()].map(p=>p.split("-")[0])),d(u)}),c=de(t.svg,t.places,u=>{a.press(`${u}-${r.
get(a.active())}`)}),i=R("g",{class:"tss-placed"});c.drawing.append(i);function d(u){i.replaceChildren();for(let[p,f]of u){
let[m,g]=f.split("-"),L=t.at[m];if(!L)continue;let v=R("g",{transform:`translate(${L[0]} ${L[1]})`});v.innerHTML=t.pieces[p][Number(
g)-1][1],i.append(v)}for(let{part:p,show:f}of l)f(r.get(p)??"1")}let l=o.map(([u,p])=>{let f=s("div",{class:"ts-tray-par\
t"}),m=s("span",{class:"ts-hint",role:"status"}),g=et("Turn it",()=>{let I=r.get(u)==="1"?"2":"1";r.set(u,I),L(I);let P=a.
answers().get(u);P&&a.put(u,`${P.split("-")[0]}-${I}`)},`Turn it: ${p}`);function L(I){let[P,w]=t.pieces[u][Number(I)-1],
S=Number(/data-half="([\d.]+)"/.exec(w)?.[1]??90);f.innerHTML=`<svg viewBox="${-S} ${-S} ${2*S} ${2*S}" width="120" heig\
ht="120" aria-hidden="true">${w}</svg>`,m.textContent=`Way ${I}: ${P}`}let v=s("div",{class:"ts-tray"},f,s("div",{},p,m,
g));return{part:u,row:v,show:L,turn:g}});return{element:s("div",{},s("div",{class:"ts-trays"},...l.map(({row:u})=>u)),a.
element,c.element),show:a.show,setDisabled(u){a.setDisabled(u);for(let{turn:p}of l)p.disabled=u},refused(){}}}});var In="No line to the course just now. Go on with the questions: what you enter is kept in this browser and sent when t\
he line is back. Simulators stand still until then.",Bn="The line to the course is back.",Dn=1500,Pn=5e3,Ae=new Set,Dt=null,
Ee;function is(t){Dt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),Dt.isConnected||document.body.append(Dt),Dt.textContent=
t}function Rn(){Dt?.remove(),Dt=null}function cs(){clearTimeout(Ee),Ae.size?Ee=window.setTimeout(()=>is(In),Dt?0:Dn):Dt&&
(is(Bn),Ee=window.setTimeout(Rn,Pn))}var ls=t=>({down(){Ae.add(t),cs()},up(){Ae.delete(t),cs()}});var jn=1e3,Hn="input, button, select, textarea, summary, a, [tabindex]";function _n(t){let e=r=>{if(r.stopPropagation(),
!(r.ctrlKey||r.metaKey)||r.key.toLowerCase()!=="s"||(r.preventDefault(),r.type!=="keydown"||r.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:d,metaKey:l}=r,u={key:a,code:c,keyCode:i,ctrlKey:d,metaKey:l,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",u))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let r of t.querySelectorAll(Hn))r.hasAttribute("data-lm-suppress-shortcuts")||r.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let o=new MutationObserver(n);return o.observe(t,{childList:!0,subtree:!0}),()=>o.
disconnect()}function Wn(t,e,n){let o=t.widget_manager?.kernel,r=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(c,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),o?.statusChanged?.
connect(r),o?.connectionStatusChanged?.connect(a),o?.disposed?.connect(e),()=>{t.off("comm_live_update",e),o?.statusChanged?.
disconnect(r),o?.connectionStatusChanged?.disconnect(a),o?.disposed?.disconnect(e)}}var ds=`.twoshaft {
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
block;max-width:none;max-height:none;margin-inline:auto}.twoshaft .ts-unit [data-part]{cursor:pointer}.twoshaft .ts-unit\
 .tsu-chosen path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:3.2px;stroke-dasharray:none\
}.twoshaft .ts-unit [data-part]:hover path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent)}.twoshaft .ts-u\
nit:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-unit-name{min-height:1.5em}.twosh\
aft .ts-unit-over{font-weight:600}.twoshaft .ts-unit-words p{max-width:var(--ts-width)}.twoshaft.ts-together .tsu-number\
{display:none}.twoshaft .ts-unit :is(.tsu-axis,.tsu-number){pointer-events:none}.twoshaft .ts-apart{display:flex;flex-wr\
ap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-apart-tools{flex:1 1 280px;max-width:380px}.twoshaft .ts-apart-tools \
.ts-slide>span{min-width:0}.twoshaft .ts-apart-tools .ts-slid{min-width:6em}.twoshaft .ts-apart-picture{flex:3 1 600px;m\
in-width:0}.twoshaft .ts-nextin{min-height:3em}.twoshaft .ts-apart-list{list-style:none;margin:0;padding:0 var(--ts-grid\
) 0 0;max-height:300px;overflow:auto;font-size:var(--ts-small)}.twoshaft .ts-apart-list li{padding:2px var(--ts-grid);bo\
rder-left:4px solid transparent}.twoshaft .ts-apart-list .ts-current{border-left-color:var(--ts-accent);font-weight:600}\
@media(forced-colors:active){.twoshaft .ts-apart-list li:not(.ts-current){border-left-color:Canvas}}.twoshaft .ts-space{\
display:block;width:100%;height:460px;box-sizing:border-box;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touc\
h-action:none}.twoshaft .ts-space:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-pro\
mpt[hidden],.twoshaft .ts-sentences[hidden]{display:none}.twoshaft .ts-told{min-height:2em;max-height:9em;overflow-y:aut\
o}.twoshaft .ts-build{display:grid;grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));al\
ign-items:start}.twoshaft .ts-buildlist{display:grid;gap:4px;max-height:22rem;overflow-y:auto;padding:4px}.twoshaft .ts-\
buildstep{text-align:left;padding-block:2px;min-height:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-co\
lor:var(--ts-line)}.twoshaft .ts-buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twos\
haft .ts-buildstep[aria-current]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-wi\
dth:100%}.twoshaft .ts-hand{border:1px solid var(--ts-line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.two\
shaft .ts-hand .ts-field{border:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft \
.ts-do{text-align:left;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--t\
s-grid);font-size:var(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inher\
it}.twoshaft .ts-record caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical\
-align:top;padding:3px 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .t\
s-record .ts-blank{min-width:12em;height:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,\
1fr)}.twoshaft .ts-buildlist,.twoshaft .ts-hand{max-height:none}}@media(forced-colors:active){.twoshaft .ts-button[aria-\
pressed=true],.twoshaft .ts-buildstep[aria-current],.twoshaft .ts-held{forced-color-adjust:none;background:Highlight;bor\
der-color:Highlight;color:HighlightText}.twoshaft :is(.ts-step,.ts-pathlist li):not(.ts-current,.ts-inblock){border-left\
-color:Canvas}.twoshaft :is(.ts-step,.ts-pathlist li).ts-current{border-left-color:Highlight}.twoshaft-bar .ts-tasks a:n\
ot([aria-current]){border-bottom-color:Canvas}}`,us="twoshaft-styles";function Fn(){let t=document.getElementById(us);t?.
textContent!==ds&&(t?.remove(),document.head.append(s("style",{id:us},ds)))}function Z({model:t,el:e},{kind:n,lost:o=()=>Jt(
e),line:r=()=>{}}){Fn(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"ts-alert",role:"\
alert"}),c=ls(e),i=()=>e.classList.contains("ts-lost"),d=[],u=Wn(t,()=>{i()||(e.classList.add("ts-lost"),c.down(),o())},
g=>{i()||(g?c.down():c.up(),r(g))}),p=_n(e),f,m=(g,L)=>{t.on(g,L),d.push([g,L])};return m("msg:custom",g=>{g.type==="tro\
uble"&&!i()&&(a.textContent=g.reason)}),{alert:a,follow:m,isLost:i,send(g){i()||(t.send(g),clearTimeout(f),f=window.setTimeout(
()=>t.send({type:"rest"}),jn))},show:(...g)=>e.replaceChildren(...Tt(g)),close(){c.up(),clearTimeout(f),p(),u();for(let[
g,L]of d)t.off(g,L)}}}function ps({model:t,el:e}){let n=Z({model:t,el:e},{kind:"rig",lost:()=>d.setDisabled(!0)}),o=s("p",{class:"ts-finding",
role:"status"}),r=s("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=nt("order"),n.send({type:"order",order:p,turn:c})},
d=ie({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),l=s("button",{type:"\
button",class:"ts-button",onclick:()=>d.change([...a],"The first order stands again")},"Start again");d.tools.append(l),
n.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),n.alert,o,r,d.element);function u(){let p=t.
get("judged");c!==null&&p.turn!==c||(c=null,o.textContent=p.finding,r.textContent=p.cost,d.setOrder(p.order),d.setNotes(
p.notes))}return n.follow("change:judged",u),u(),n.close}var Kn=["lit","bench","absent"],fs=[1,1.5,2,3,4.5];function Kt({svg:t,parts:e,words:n},{name:o="The unit in section",tallest:r}={}){
let a=s("div",{class:"ts-unit",tabindex:"0",role:"application","aria-label":`${o}. Left and right arrows walk from part \
to part, up and down to the part above or below, plus and minus zoom.`});a.innerHTML=t;let c=a.querySelector("svg"),i=c.
querySelector(".tsu-marks");c.setAttribute("aria-hidden","true"),c.removeAttribute("role");let d=new Map(e.map(([k])=>[k,
[]]));for(let k of J(c,"[data-part]"))d.get(String(k.dataset.part))?.push(k);let l=new Map(e.map(([k],x)=>[k,x])),u=s("p",
{class:"ts-hint ts-unit-name",role:"status"}),p=xt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],
...e.map(([k,x])=>[k,x])]),{width:f,height:m}=c.viewBox.baseVal,g=r?`min(100%, ${Math.round(r*f/m)}px)`:"100%",L=new WeakMap,
v=-1,I=0,P={},w=k=>{let x=P[k];return x==="absent"?" Not there yet.":x==="bench"?" On the bench.":x==="lit"?" In hand.":
""},S=k=>`${e[k][1]}. ${e[k][2]}${w(e[k][0])}`;function C(k){for(let O of J(c,".tsu-chosen"))O.classList.remove("tsu-cho\
sen");v=k;let x=k<0?"":e[k][0];p.value=x,u.textContent=k<0?T:S(k);for(let O of d.get(x)??[])O.classList.add("tsu-chosen");
k>=0&&h(x)}function b(k){let x=(d.get(k)??[]).map(Y=>{let{x:ht,y:st,width:W,height:V}=Y.getBBox(),[E,_]=L.get(Y)??[0,0];
return{x:ht+E,y:st+_,width:W,height:V}}),O=Math.min(...x.map(Y=>Y.x)),M=Math.max(...x.map(Y=>Y.x+Y.width)),H=Math.min(...x.
map(Y=>Y.y)),X=Math.max(...x.map(Y=>Y.y+Y.height));return{x:(O+M)/2,y:(H+X)/2}}function h(k){let x=b(k),O=c.getBoundingClientRect().
width/c.viewBox.baseVal.width,[M,H]=[x.x*O,x.y*O],{scrollLeft:X,scrollTop:Y,clientWidth:ht,clientHeight:st}=a;(M<X+40||M>
X+ht-40)&&(a.scrollLeft=M-ht/2),(H<Y+40||H>Y+st-40)&&(a.scrollTop=H-st/2)}function A(k){I=Math.max(0,Math.min(fs.length-
1,I+k)),c.style.width=`calc(${fs[I]} * ${g})`,c.style.height="auto",v>=0&&h(e[v][0])}function y(k){let x=b(e[v][0]),[O]=e.
map(([M],H)=>({k:H,at:b(M)})).filter(({k:M,at:H})=>M!==v&&(H.y-x.y)*k>4).sort((M,H)=>hs(M.at,x)-hs(H.at,x));O&&C(O.k)}a.
addEventListener("keydown",k=>{if(bt(k))return;let x=e.length-1;if(k.key==="ArrowRight")C(v>=x?0:v+1);else if(k.key==="A\
rrowLeft")C(v<=0?x:v-1);else if(k.key==="ArrowUp"||k.key==="ArrowDown")v<0?C(0):y(k.key==="ArrowUp"?-1:1);else if(k.key===
"Home")C(0);else if(k.key==="End")C(x);else if(k.key==="+"||k.key==="=")A(1);else if(k.key==="-")A(-1);else if(k.key==="\
Escape")C(-1);else return;k.preventDefault()}),a.addEventListener("click",k=>{let x=kt(k,"[data-part]")?.dataset.part;C(
x===void 0?-1:l.get(x)??-1)}),a.addEventListener("pointerover",k=>{let x=kt(k,"[data-part]")?.dataset.part;if(x===void 0||
k.pointerType!=="mouse")return;let O=kt(k,"[data-solid]")?.querySelector("title")?.textContent,M=e[l.get(x)??0][1];$.textContent=
O&&!M.endsWith(O)?`${O} (${M})`:M}),a.addEventListener("pointerleave",()=>{$.textContent=""}),p.addEventListener("change",
()=>C(l.get(p.value)??-1));let $=s("span",{class:"ts-unit-over","aria-hidden":"true"}),T="Point at a part, tap it, or ch\
oose it here to read its name.";u.textContent=T;let B=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",p),et(
"−",()=>A(-1),"Smaller"),et("+",()=>A(1),"Larger"),$),K=s("details",{class:"ts-unit-words"},s("summary",{},"What is wh\
ere, in words"),s("p",{},n));return A(0),{nodes:[B,u,a,K],drawing:c,shift(k,[x,O]){L.set(k,[x,O]),k.setAttribute("transf\
orm",`translate(${x.toFixed(1)} ${O.toFixed(1)})`)},show(k){P=k.looks;for(let[x,O]of d)for(let M of O)for(let H of Kn)M.
classList.toggle(`tsu-${H}`,P[x]===H);i.innerHTML=k.marks,v>=0&&(u.textContent=S(v))}}}function hs(t,e){return Math.abs(
t.y-e.y)+2*Math.abs(t.x-e.x)}function gs(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function ms({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),o=s("p",{class:"ts-happened",role:"status"}),r=s("p",{class:"ts-hint"}),a=Kt(t.get("picture")),
c=s("p",{class:"ts-hint",role:"status"}),i=s("dl",{class:"ts-facts"}),d=s("div",{class:"ts-ready"}),l=s("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),u=s("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:h=>{h.key==="Enter"&&w()}}),p=s("span"),f=h=>C.send({type:"move",by:h}),m=h=>C.
send({type:"go",position:h}),g=et("Back",()=>f(-1),"One step back"),L=et("Next",()=>f(1),"Next step"),v=et("Start",()=>m(
0),"Start with an empty bench"),I=et("End",()=>m(t.get("view").count),"End of the order"),P=et("Try it",()=>C.send({type:"\
take",step:l.value}),"Try it: the step chosen here"),w=()=>{let h=Number.parseInt(u.value,10);h>=0&&m(h)},S=s("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},v,g,L,I,s("span",{class:"t\
s-pair"},"place ",u,p,et("Go",w,"Go to this place")));S.addEventListener("keydown",h=>{if(!(h.target===u||bt(h))){if(h.key===
"ArrowLeft")f(-1);else if(h.key==="ArrowRight")f(1);else if(h.key==="Home")m(0);else if(h.key==="End")m(t.get("view").count);else
return;h.preventDefault()}});let C=Z({model:t,el:e},{kind:"rig"});C.show(s("p",{class:"ts-who"},"Practice. Nothing here \
is marked or saved."),C.alert,n,S,o,r,c,...a.nodes,i,s("p",{class:"ts-prompt"},"Do another step next"),d,s("div",{class:"\
ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",l,P)));function b(){let h=t.get("view");n.textContent=
h.finding,o.textContent=h.happened,r.textContent=h.next?`Next in this order: ${h.next}`:"This is the end of the order.",
c.textContent=h.build.words,a.show(h.build),i.replaceChildren(...Et(h.facts));let A=d.contains(document.activeElement);d.
replaceChildren(...h.ready.map(([T,B])=>et(B,()=>C.send({type:"take",step:T})))),h.ready.length||d.append(s("p",{class:"\
ts-hint"},"No step is ready.")),A&&(d.querySelector("button")??L).focus(),l.replaceChildren(...wt(h.waiting)),l.disabled=
P.disabled=!h.waiting.length,u.value=String(h.position),p.textContent=` of ${h.count} `;let y=h.position===0,$=h.position===
h.count;for(let T of[g,v])gs(T,y);for(let T of[L,I])gs(T,$)}return C.follow("change:view",b),b(),C.close}function Ut(t){let e=null,n=null,o=a=>{if(e!==null){n=a;return}e=nt("turn"),t(a,e)},r=()=>{e=null;let a=n;n=null,a!==null&&
o(a)};return{ask:o,free:r,answered(a){a===e&&r()},get waiting(){return e!==null}}}var it=(t,e,n,o,r)=>R("line",{x1:t,y1:e,x2:n,y2:o,class:r}),ct=(t,e,n,o="middle")=>R("text",{x:t,y:e,"text-anchor":o,class:"\
tsg-text"},n);function qt(){let t=R("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(R("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let o=0;o<100;o+=1){let r=o/100*2*Math.PI,a=o%10===0?78:o%5===0?82:86;t.append(it(100+
a*Math.sin(r),100-a*Math.cos(r),100+92*Math.sin(r),100-92*Math.cos(r),o%10===0?"tsg-mark tsg-long":"tsg-mark")),o%10===0&&
t.append(ct(100+66*Math.sin(r),104.5-66*Math.cos(r),String(o)))}t.append(R("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let o=0;o<10;o+=1){let r=o/10*2*Math.PI;t.append(it(100+15*Math.sin(r),134-15*Math.cos(r),100+19*Math.sin(r),134-19*
Math.cos(r),"tsg-mark"))}let e=it(100,134,100,119,"tsg-small"),n=R("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(e,n,R("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(o,r){n.setAttribute("tra\
nsform",`rotate(${o*360} 100 100)`),e.setAttribute("transform",`rotate(${o*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${r}`)}}}function ws({top:t,mark:e,perFigure:n}){let o=R("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),r=c=>30+c/t*540;o.append(R("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*e<=t+1e-9;c+=1){let i=c%n===0;o.append(it(r(c*e),22,r(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&o.
append(ct(r(c*e),84,String(Math.round(c*e))))}let a=R("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return o.append(
a,ct(586,14,"newtons","end")),{node:o,top:t,set(c,i){a.setAttribute("transform",`translate(${r(Math.min(c,t))} 0)`),o.setAttribute(
"aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function bs({low:t,high:e,reach:n}){let o=R("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),r=i=>360+Math.max(-n,Math.min(n,i))/n*340;o.append(R("rect",{x:r(t),y:34,width:r(
e)-r(t),height:24,class:"tsg-target"}),ct((r(t)+r(e))/2,84,"target"),it(20,46,700,46,"tsg-mark"),it(360,26,360,66,"tsg-m\
ark tsg-long"),ct(20,20,"end play","start"),ct(700,20,"preload","end"),ct(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let d of[
i,-i])o.append(it(r(d),42,r(d),50,"tsg-mark"));o.append(ct(r(-n),70,`${n.toFixed(2)} mm`,"start"),ct(r(n),70,`${n.toFixed(
2)} mm`,"end"));let a=R("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=R("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return o.append(a,c),{node:o,set(i,d,l){a.setAttribute("transform",`translate(${r(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${r(d)} 0)`),o.setAttribute("aria-label",l)}}}function gt(t,{min:e,max:n,step:o,value:r,words:a,onInput:c}){let i=s(
"input",{type:"range",class:"ts-slider",min:e,max:n,step:o,value:r,"aria-label":t}),d=s("output",{class:"ts-slid"},a(r));
return i.addEventListener("input",()=>{let l=a(Number(i.value));d.textContent=l,i.setAttribute("aria-valuetext",l),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(r)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,d),set(l){i.value=
String(l),d.textContent=a(l)}}}function ft(t,e,n,o){let r=s("select",{class:"ts-box","aria-label":t,onchange:()=>o(r.value)},
...e.map(([a,c])=>s("option",{value:a,selected:a===n},c)));return{box:r,row:s("span",{class:"ts-pair"},`${t} `,r)}}function vs({model:t,el:e}){let n=t.get("about"),o=t.get("shown").state,r=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),d=s("u\
l",{class:"ts-sentences"}),l=Ut((b,h)=>w.send({type:"set",state:b,turn:h})),u=b=>{o={...o,...b},l.ask(o)},p=R("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),f=it(0,0,0,0,"tsg-mark tsg-long"),m=ct(0,0,""),g=96,
L=g/(n.readingsOnly?o.radius:n.radii[1]),v=R("svg",{viewBox:`0 0 ${2*g+120} ${2*g+30}`,width:2*g+120,height:2*g+30,class:"\
tsg-drum",role:"img"}),I=g+4;p.setAttribute("transform",`translate(${I} ${I})`),v.append(p,f,it(4,I,2*g+4,I,"tsg-centre"),
it(I,4,I,2*g+4,"tsg-centre"),R("circle",{cx:I,cy:I,r:10,class:"tsg-face"}),m);let P=[s("div",{class:"ts-tools"},G("Turn \
the shaft ten times",()=>u({turns:o.turns+10})))];if(!n.readingsOnly){let b=n.kinds,h=b.map(([A,y])=>s("label",{class:"t\
s-option"},s("input",{type:"checkbox",checked:o.kinds.includes(A),onchange:$=>u({kinds:b.map(([T])=>T).filter(T=>T===A?$.
target.checked:o.kinds.includes(T))})}),`with ${y}`));P[0].append(G("Fit the rings anew",()=>u({turns:0}))),h.length&&P.
push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the bearings"),...h)),P.push(gt("Set\
ting",{min:-.05,max:n.highest,step:.005,value:o.setting,onInput:A=>u({setting:A}),words:A=>A<0?`${(-A).toFixed(3)} mm of\
 end play`:`${A.toFixed(3)} mm of preload`}).row,gt("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:o.radius,
onInput:A=>u({radius:A}),words:A=>`${A} mm`}).row)}let w=Z({model:t,el:e},{kind:"rig"});w.show(s("p",{class:"ts-who"},n.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),w.alert,
s("div",{class:"tsg-beside"},v,s("div",{class:"tsg-side"},a,c)),...P,i,d);function S(){let b=t.get("shown");l.waiting||(o=
b.state);let h=L*b.state.radius;Ot(p,{r:h}),Ot(f,{x1:I,y1:I-h,x2:2*g+120,y2:I-h}),Ot(m,{x:I,y:2*g+22}),m.textContent=`dr\
um, radius ${b.state.radius} mm`,v.setAttribute("aria-label",`A drum of ${b.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),r?.top!==b.scale.top&&(r=ws(b.scale),a.replaceChildren(r.node),c.textContent=
`Spring scale to ${b.scale.top} N, one mark ${b.scale.mark} N.`),r?.set(b.pull,b.pullWords),i.textContent=b.finding,d.replaceChildren(
...Bt(b.words)),l.answered(b.turn)}let C=()=>l.free();return w.follow("change:shown",S),w.follow("msg:custom",C),S(),w.close}function Ct({model:t,el:e},n){let o=t.get("about"),r=t.get("shown").state,a=Ut((p,f)=>c.send({type:"set",state:p,turn:f})),
c=Z({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),d=n(o,p=>{r={...r,...p},a.ask(r)},r),l=o.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";c.show(s("p",{class:"\
ts-who"},l),c.alert,s("div",{class:"tsg-wide"},d.picture),...d.controls,i);function u(){let p=t.get("shown");a.waiting||
(r=p.state),d.set(p,r),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",u),c.follow("msg:custom",
a.free),u(),c.close}var Lt=(...t)=>s("div",{class:"ts-tools"},...t);var Un={x:44,y:84,perMm:34};function qn(t){let e=R("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:o,
perMm:r}=Un,a=R("g",{}),c=R("g",{});e.append(R("rect",{x:1,y:22,width:758,height:o-22,class:"tsi-paper"}),R("rect",{x:n-
30,y:o,width:t.lines*t.space*r+60,height:64,class:"tsi-body"}),a,c,ct(12,14,"main scale, mm","start"),ct(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let d=n+i*t.space*r;c.append(
it(d,o,d,o+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(ct(d,o+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let d=Math.
max(0,Math.ceil(i.mm-1));d<=t.top+25;d+=1){let l=n+(d-i.mm)*r;l<4||l>756||(a.append(it(l,o,l,o-(d%10===0?34:d%5===0?28:20),
"tsi-fine")),d%5===0&&a.append(ct(l,o-40,String(d))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function ks(t){
return Ct(t,(e,n,o)=>{let r=qn(e),a=gt("Rod",{min:0,max:e.top,step:.05,value:o.rod,words:()=>"push down to the right",onInput:d=>n(
{rod:d})}),c=ft("Foot",e.places,o.place,d=>n({place:d,rod:0})),i=ft("Look",e.eyes,o.eye,d=>n({eye:d}));return{picture:r.
node,controls:[Lt(c.row,i.row),Lt(G("Push the rod down until it rests",()=>n({rod:e.top})),G("Lift the rod",()=>n({rod:0}))),
a.row],set(d,l){r.set(d),c.box.value=l.place,i.box.value=l.eye,a.box.value=l.rod}}})}function Gt(t,e){let n=e>1?.65/(e-1):0;return Array.from({length:e},(o,r)=>{let a=e>1?r*n:0,c=e>1?.35:1;return 1-Math.max(
0,Math.min(1,(t-a)/c))})}function ys(t,e,n,o){let[r,a]=[0,0];for(let c=n;c!==null;c=t[c].parent){let[i,d]=t[c].own[o]??[
0,0];r+=i*e[c],a+=d*e[c]}return[r,a]}function Me(t){let e=t.findIndex(n=>n>0);return{placed:t.filter(n=>n===0).length,next:e<
0?null:e}}function xs(t,e){return t<=0?0:t>=e||e<2?1:.35+(t-1)*(1-.35)/(e-1)}function $s(t,e,n){let o=[0,0,0];for(let r=n;r!==
null;r=t[r].parent){let a=e[r];for(let[c,i]of t[r].own.entries())o[c]+=i*a}return o}function Ss(t,e){globalThis.twoshaftChunks??=new Map;let n=globalThis.twoshaftChunks,o=n.get(e)??zn(t,e);return n.set(e,
o),o.catch(()=>n.delete(e)),o}function zn(t,e){return new Promise(n=>{let o=(r,a)=>{if(r.type!=="chunk"||r.name!==e)return;
t.off("msg:custom",o);let c=URL.createObjectURL(new Blob([a[0]],{type:"text/javascript"})),i=import(c);i.finally(()=>URL.
revokeObjectURL(c)).catch(()=>{}),n(i)};t.on("msg:custom",o),t.send({type:"chunk",name:e})})}var ue=.12,Rt=1.15,Ls="This browser draws nothing in three dimensions. The section shows the same parts.";function Gn(){
let t=document.createElement("canvas").getContext("webgl2");return t?.getExtension("WEBGL_lose_context")?.loseContext(),
!!t}function pe(t,e){let n=s("span",{style:`color: ${e}`});t.append(n);let o=s("canvas",{width:1,height:1}).getContext("\
2d");o.fillStyle=getComputedStyle(n).color,n.remove(),o.fillRect(0,0,1,1);let[r,a,c]=o.getImageData(0,0,1,1).data;return`\
rgb(${r}, ${a}, ${c})`}function Cs(t,e,n){let o=s("p",{class:"ts-hint ts-unit-name",role:"status"});if(!Gn())return o.textContent=
Ls,{drawn:!1,nodes:[o],move(){},ready(){},close(){}};let r=s("canvas",{class:"ts-space",tabindex:"0",role:"application",
"aria-label":"The parts in three dimensions. Arrow keys turn, plus and minus zoom, Home looks as at first, H hides the c\
hosen part, A shows all. The section shows the same parts with their names."}),a=xt({"aria-label":"Part",class:"ts-box t\
s-before"},[["","no part chosen"],...n.map(([w,S])=>[w,S])]),c=new Set,i,d=()=>[0,0,0],l=()=>{},u="Drag or use the arrow\
 keys to turn. Tap a part, or choose it here, to read its name.";o.textContent="Drawing …";function p(){let w=n.find(([
C])=>C===a.value),S=c.has(a.value)?" Hidden.":"";o.textContent=w?`${w[1]}. ${w[2]}${S}`:u,i?.look(a.value,c)}function f(){
a.value&&(c.delete(a.value)||c.add(a.value),p())}function m(){c.clear(),p()}a.addEventListener("change",p);let g={ArrowLeft:()=>i?.
turnBy(-ue,0),ArrowRight:()=>i?.turnBy(ue,0),ArrowUp:()=>i?.turnBy(0,ue),ArrowDown:()=>i?.turnBy(0,-ue),"+":()=>i?.zoomBy(
Rt),"=":()=>i?.zoomBy(Rt),"-":()=>i?.zoomBy(1/Rt),Home:()=>i?.home(),h:f,a:m};r.addEventListener("keydown",w=>{let S=g[w.
key]??g[w.key.toLowerCase()];!S||bt(w)||(S(),w.preventDefault())});let L=null;r.addEventListener("pointerdown",w=>{L={x:w.
clientX,y:w.clientY,far:!1},r.setPointerCapture(w.pointerId)}),r.addEventListener("pointermove",w=>{if(!L)return;let[S,C]=[
w.clientX-L.x,w.clientY-L.y];!L.far&&Math.hypot(S,C)<4||(L={x:w.clientX,y:w.clientY,far:!0},i?.turnBy(-S/150,C/150))}),r.
addEventListener("pointerup",w=>{if(L&&!L.far){let{left:S,top:C,width:b,height:h}=r.getBoundingClientRect(),[A,y]=[(w.clientX-
S)/b,(w.clientY-C)/h];a.value=i?.partAt(2*A-1,1-2*y)??"",p()}L=null}),r.addEventListener("wheel",w=>{document.activeElement===
r&&(i?.zoomBy(w.deltaY<0?Rt:1/Rt),w.preventDefault())},{passive:!1});let v=new ResizeObserver(()=>i?.paint()),I=!1;return Ss(
t,"solids").then(({solidsView:w})=>{if(I)return;i=w(r,e,{ink:pe(r.parentElement??document.body,"var(--ts-ink)"),paper:pe(
r.parentElement??document.body,"var(--ts-paper)"),accent:pe(r.parentElement??document.body,"var(--ts-accent)"),metal:pe(
r.parentElement??document.body,"color-mix(in srgb, var(--ts-ink) 18%, var(--ts-paper))")}),i.move(d),i.fit(),l(),i.home(),
i.paint(),v.observe(r),p(),r.dataset.painted="true"},()=>{o.textContent=Ls}),{drawn:!0,nodes:[s("div",{class:"ts-tools"},
s("span",{class:"ts-pair"},"Part ",a),et("Hide or show",f,"Hide or show the chosen part"),et("Show all",m,"Show all part\
s"),et("−",()=>i?.zoomBy(1/Rt),"Smaller"),et("+",()=>i?.zoomBy(Rt),"Larger")),o,r],move(w){d=w,i?.move(w)},ready(w){l=
w},close(){I=!0,v.disconnect(),i?.close()}}}var fe=200,Yn=460;function Es({model:t,el:e}){let n=s("p",{class:"ts-finding"}),o=s("p",{class:"ts-hint ts-nextin",role:"\
status"}),r=s("div",{class:"ts-apart-picture"}),a=s("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"What goes in"}),
c=t.get("stages"),i=ft("Show",c,t.get("stage"),A=>h.send({type:"stage",stage:A})),d=gt("From apart to together",{min:0,max:fe,
step:1,value:0,words:A=>A<=0?"apart":A>=fe?"together":"on the way",onInput:A=>w(A/fe)}),l=t.get("picture"),u,p=[],f=[],m=0,
g=!1,L,v=et("In three dimensions",()=>{g=!g,v.setAttribute("aria-pressed",String(g)),C()});v.setAttribute("aria-pressed",
"false");function I(A){d.set(Math.round(A*fe)),w(A)}function P(A){let{placed:y}=Me(Gt(m,l.movers.length));I(xs(y+A,l.movers.
length))}function w(A){if(m=A,!u)return;let y=Gt(m,l.movers.length);for(let{group:K,mover:k,view:x}of p)u.shift(K,ys(l.movers,
y,k,x));S(y);for(let K of f)K.style.opacity=String(1-m);e.classList.toggle("ts-together",m>.5);let{placed:$,next:T}=Me(y),
B=`${$} of ${y.length} in place.`;for(let[K,k]of[...a.children].entries())k.classList.toggle("ts-current",K===T);o.textContent=
T===null?"All in place.":`${B} Next in: ${l.movers[T].words}.`}function S(A){let{movers:y}=t.get("space");L?.move($=>$s(
y,A,$))}function C(){if(L?.close(),L=void 0,!!u&&(r.replaceChildren(...g?[]:u.nodes),!!g)){if(t.get("space").stage!==t.get(
"stage")){h.send({type:"space"});return}L=Cs(t,t.get("space"),l.parts),S(Gt(0,l.movers.length)),r.replaceChildren(...L.nodes,
...L.drawn?[]:u.nodes),L.ready(()=>S(Gt(m,l.movers.length)))}}function b(){if(l=t.get("picture"),n.textContent=t.get("fi\
nding"),i.box.value=t.get("stage"),u=void 0,r.replaceChildren(),!l.svg)return;u=Kt(l,{name:"Parts apart",tallest:Yn}),p=
J(u.drawing,"[data-move]").map(y=>({group:y,mover:Number(y.dataset.move),view:String(y.dataset.view)})),f=J(u.drawing,".\
tsu-traces"),a.replaceChildren(...l.movers.map(({words:y})=>s("li",{},y))),C(),w(m)}let h=Z({model:t,el:e},{kind:"rig"});
return h.show(h.alert,n,s("div",{class:"ts-apart"},s("div",{class:"ts-apart-tools"},i.row,d.row,s("div",{class:"ts-tools"},
et("One in",()=>P(1),"One part more in place"),et("One out",()=>P(-1),"One part less in place")),v,o,a),r)),h.follow("ch\
ange:picture",b),h.follow("change:space",C),b(),()=>{L?.close(),h.close()}}function As({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding"}),r=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=s("div",{class:"tsj-bars"}),i=J(a,"[data-bolt]"),d=nt("torq\
ue"),l=s("input",{id:d,type:"range",min:10,max:100,step:5,oninput:()=>f()});l.value="100";let u=s("output",{class:"tsj-f\
igure",for:d}),p=()=>l.value==="100"?n.torque:Number((Math.round(n.torque*Number(l.value)/100/n.step)*n.step).toFixed(3));
function f(){u.textContent=`${p()} N·m`,l.setAttribute("aria-valuetext",`${p()} newton metres, ${l.value} percent of th\
e torque`)}let m=h=>w.send({type:"pull",bolt:h,torque:p()}),g=G("Take back",()=>w.send({type:"undo"})),L=G("Wait until t\
he film has run out",()=>w.send({type:"wait"})),v=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>w.send({type:"set",film:Number(v.value)})},...n.films.map(h=>s("option",{value:h},h?`${h} µm thick`:"none"))),
I=s("input",{type:"checkbox",onchange:()=>w.send({type:"set",scattered:I.checked})});a.addEventListener("click",h=>{let A=kt(
h,"[data-bolt]");A&&(P(A),m(Number(A.dataset.bolt)))});let P=h=>{for(let A of i)A.setAttribute("tabindex",A===h?"0":"-1");
h.focus({preventScroll:!0})};a.addEventListener("keydown",h=>{let A=kt(h,"[data-bolt]");if(!A||h.ctrlKey||h.metaKey||h.altKey)
return;let y=Number(A.dataset.bolt),$={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[h.key];if($)P(i[(y+$+i.length)%
i.length]);else if(h.key==="Home")P(i[0]);else if(h.key==="End")P(i[i.length-1]);else if(h.key==="Enter"||h.key===" ")h.
repeat||m(y);else return;h.preventDefault()});let w=Z({model:t,el:e},{kind:"rig"}),S=s("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},G("Start all by hand",()=>w.send({type:"start"})),...n.rounds.map(([h,A])=>G(`One round ${A}`,
()=>w.send({type:"round",pattern:h,torque:p()}))),g,G("Start again",()=>w.send({type:"again"}))),C=s("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:d},"Wrench set to"),l,u));n.films.length&&
C.append(s("label",{class:"ts-pair"},"Wet sealant",v),L,s("label",{class:"tsj-check"},I,"friction scatters from bolt to \
bolt")),w.show(s("p",{class:"ts-who"},n.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),w.alert,o,C,S,r,s("div",{class:"tsj-bench"},a,c),s("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function b(){let h=t.get("view");o.textContent=h.finding,r.textContent=h.happened,c.innerHTML=
h.bars;for(let[A,y]of i.entries()){let $=h.tight[A]?`${h.clamps[A]} kN`:h.started[A]?"started by hand":"not started";y.setAttribute(
"aria-label",`Bolt ${A+1} of ${n.count}, ${$}`),y.classList.toggle("tsj-tight",h.tight[A]),y.classList.toggle("tsj-start\
ed",h.started[A])}g.disabled=!h.pulls,L.disabled=!h.standing,v.value=String(h.film),I.checked=h.scattered}return w.follow(
"change:view",b),f(),b(),w.close}var Ms="tsk-number";function It(t,e,...n){return s("td",{class:e?Ms:null,"data-label":t||null,role:"cell"},...n)}function he(t,e,n){
let o=e.map(([c,i])=>s("th",{scope:"col",role:"columnheader",class:i?Ms:null},c)),r=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...o)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),r,n);return s("div",{class:"ts-scroll"},
a)}function Os({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),c=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),d=new Map;for(let[f,
m,g,L]of n.checks){let v=s("select",{class:"ts-box","aria-label":`What it showed: ${m}`,onchange:()=>u.send({type:"obser\
ve",check:f,shown:v.value})},s("option",{value:""},"Not made"),...wt(L)),I=It("would tell, bit",!0),P=It("bit a minute",
!0),w=s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},m),It("min",!0,`${g}`),It("it showed",!1,v),I,P);d.set(f,
{box:v,tells:I,rate:P,row:w}),i.append(w)}let l=s("button",{class:"ts-button",type:"button",onclick:()=>u.send({type:"cl\
ear"})},"Take all observations back"),u=Z({model:t,el:e},{kind:"rig"});u.show(s("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),u.alert,o,a,c,he("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),r,l);function p(){let f=t.get("view");o.textContent=f.finding,
r.textContent=f.spent,c.textContent=f.more,a.replaceChildren(...Bt(f.left.map(([L,v])=>`${L} (${v})`)));let m=f.ranked,g=new Map(
m.map(([L,v,I],P)=>[L,{bits:v,rate:I,rank:P}]));for(let[L,{box:v,tells:I,rate:P,row:w}]of d){let S=f.observed[L],C=g.get(
L);v.value=S??"",I.textContent=C?C.bits:S!==void 0?"made":"nothing",P.textContent=C?C.rate+(C.rank===0?" ◀ best next":
""):"–",w.classList.toggle("tsk-best",C?.rank===0)}}return u.follow("change:view",p),p(),u.close}function Ts(t,{move:e,hand:n}){let{element:o,at:r}=le(t),a=Object.entries(t.aims).filter(([d])=>d.startsWith("at:")),c=(d,l)=>{
let[u,p]=r(d,l);return R("circle",{cx:u,cy:p,r:16,class:"tsl-spot",...{"data-travel":d,"data-turn":l}})},i=R("g",{class:"\
tsl-knob"},R("circle",{r:12}));return o.append(...a.map(([,[d]])=>c(Number(d),0)),...t.gears.map(([,d,l])=>c(d,l)),i),o.
classList.add("ts-lever"),o.addEventListener("click",d=>{let l=kt(d,".tsl-spot");if(!l)return;let u=[Number(l.dataset.travel),
Number(l.dataset.turn)];for(let p of ns(t.aims,n(),u))e(p)}),{element:o,scale:[zt,ce],show([d,l],u){let[p,f]=r(d,l);i.setAttribute(
"transform",`translate(${p.toFixed(1)} ${f.toFixed(1)})`);for(let m of J(o,"[data-gear]"))m.classList.toggle("tsl-in",u.
includes(String(m.dataset.gear)))}}}function Ns({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"ts-happened",role:"status"}),
r=s("div",{class:"ts-scroll ts-fit"}),a=Ts(t.get("plan"),{move:y=>I({type:"move",code:y}),hand:()=>t.get("view").hand}),
c=s("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=s("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...wt(t.get("builds"))),d=et("Start again",()=>I({type:"reset"})),l=s("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([y,$])=>et($,()=>I({type:"move",code:y})))),
u=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),p=s("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),f=s("p",{class:"ts-proof",role:"status"}),m=et("What does a full hand test find?",()=>{
m.disabled=!0,f.textContent="testing",I({type:"prove"})}),g=Z({model:t,el:e},{kind:"rig"});c.append(s("div",{},s("p",{class:"\
ts-prompt"},"The lever"),a.element),r),g.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),g.alert,
s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Put together: ",i),d,m),n,c,o,f,s("div",{class:"ts-gate-work"},s(
"div",{},s("p",{class:"ts-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down \
turn. Or in words:"),l),s("div",{},s("p",{class:"ts-prompt"},"Tried by hand"),p,u)));let L=0,v="";function I(y){L+=1,g.send(
{...y,turn:L})}function P(){let y=t.get("view");if(v!==t.get("figure")){v=t.get("figure"),r.innerHTML=v;let $=Nt(r,"svg");
$.removeAttribute("role"),$.setAttribute("aria-hidden","true")}for(let $ of J(r,"[data-body]")){let[T,B]=y.moved[String(
$.dataset.rides??$.dataset.body)]??[0,0];$.setAttribute("transform",`translate(${T.toFixed(2)} ${B.toFixed(2)})`)}for(let $ of J(
r,"[data-gear]"))$.classList.toggle("tsg-in",y.gears.includes($.dataset.gear));for(let $ of J(r,"[data-lifts]"))$.classList.
toggle("tsg-up",y.lifted);a.show(y.hand,y.gears),c.dataset.turn=String(y.turn),n.textContent=`${y.gears.length>1?"■ ":
y.gears.length?"● ":"○ "}${y.title}.`,o.textContent=y.happened,o.classList.toggle("ts-stopped",/topped by/.test(y.happened)),
(u.childElementCount!==y.log.length||u.lastElementChild?.textContent!==y.log.at(-1))&&(u.replaceChildren(...y.log.map($=>s(
"li",{class:/topped by/.test($)?"ts-stopped":""},$))),u.scrollTop=u.scrollHeight),p.hidden=y.log.length>0,i.value=y.build,
f.textContent=y.proof,m.disabled=!1,C=!1,A()}c.addEventListener("keydown",y=>{if(bt(y))return;let $={ArrowLeft:[-1,0],ArrowRight:[
1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[y.key];$&&(y.preventDefault(),I({type:"nudge",travel:$[0],turned:$[1]}))}),i.addEventListener(
"change",()=>I({type:"build",build:i.value}));let w=null,S=null,C=!1;function b(y,$){let T=$.getBoundingClientRect(),B=$.
viewBox.baseVal.width/T.width;return[(y.clientX-T.left)*B,(y.clientY-T.top)*B]}c.addEventListener("pointerdown",y=>{let $=kt(
y,".tsg-panel, .tsl-knob");if(!$||y.button!==0)return;let T=$.ownerSVGElement,B=t.get("view").hand,[K,k]=b(y,T),x=Number(
$.dataset.scale),O=x?[x,x]:a.scale;w={svg:T,x:K-B[0]*O[0],y:k+B[1]*O[1],scale:O},c.setPointerCapture(y.pointerId),c.focus(
{preventScroll:!0}),c.classList.add("ts-pulling"),y.preventDefault()}),c.addEventListener("pointermove",y=>{if(!w)return;
let[$,T]=b(y,w.svg),{scale:B}=w;S={travel_mm:($-w.x)/B[0],turn_mm:(w.y-T)/B[1]},A()});let h=()=>{w=null,c.classList.remove(
"ts-pulling")};c.addEventListener("pointerup",h),c.addEventListener("pointercancel",h);function A(){if(C||!S)return;C=!0;
let y=S;S=null,I({type:"pull",...y})}return g.follow("msg:custom",y=>{y.type==="trouble"&&(C=!1)}),g.follow("change:view",
P),P(),g.close}function Is({model:t,el:e}){let n=t.get("plan"),o=t.get("view"),r=s("p",{class:"ts-finding",role:"status"}),a=s("p",{class:"\
ts-happened tsw-happened",role:"status"}),c=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=o.dials[0].shaft,l=n.gears.map(
([y,$])=>s("button",{type:"button",class:"ts-button","data-gear":y,"aria-pressed":"false",onclick:()=>b({type:"gear",gear:y})},
$)),u=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:y=>b({type:"hold",shaft:y.target.value})},...wt(
n.holds)),p=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:y=>{i=y.target.value,A()}},...wt(o.dials.
map(y=>[y.shaft,y.name]))),f=y=>b({type:"turn",shaft:i,turns:y}),m=`1/${n.marks}`,g=s("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},et("↺ 1 turn",()=>f(-1),"One turn anticlockwise"),et(`↺ ${m}`,()=>f(-n.step),`${m}\
 turn anticlockwise`),et("↺ a touch",()=>f(-n.fine),"A touch anticlockwise"),et("a touch ↻",()=>f(n.fine),"A touch c\
lockwise"),et(`${m} ↻`,()=>f(n.step),`${m} turn clockwise`),et("1 turn ↻",()=>f(1),"One turn clockwise"),et("Marks t\
o zero",()=>b({type:"reset"}))),L=new Map;for(let y of o.dials){let $=R("g",{},R("circle",{class:"tsw-end",r:34}),R("lin\
e",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),R("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),T=[];for(let M=0;M<n.marks;M+=
1)T.push(R("line",{class:"tsw-tick",y1:-40,y2:M?-47:-52,transform:`rotate(${M*360/n.marks})`})),M&&T.push(R("text",{class:"\
tsw-number",x:57*Math.sin(M*2*Math.PI/n.marks),y:-57*Math.cos(M*2*Math.PI/n.marks)+4},String(M)));let B=R("svg",{viewBox:"\
-70 -70 140 140",class:"tsw-dial","data-shaft":y.shaft,"aria-hidden":"true"},R("circle",{class:"tsw-plate",r:40}),...T,R(
"path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),$),K=s("div",{class:"tsw-count",tabindex:"0",role:"application","\
aria-roledescription":"shaft","data-shaft":y.shaft},s("div",{class:"tsw-name"}),B,s("div",{class:"tsw-strokes","aria-hid\
den":"true"}),s("div",{class:"tsw-figure"}));L.set(y.shaft,{box:K,svg:B,shaftEnd:$}),K.addEventListener("focus",()=>{i!==
y.shaft&&(i=y.shaft,A())}),K.addEventListener("keydown",M=>{if(bt(M))return;let H={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,
ArrowUp:-1,PageDown:1,PageUp:-1}[M.key];H&&(M.preventDefault(),i=y.shaft,f(H*(M.key.startsWith("Page")?1:M.shiftKey?n.fine:
n.step)))});let k=null,x=M=>{let H=B.getBoundingClientRect();return Math.atan2(M.clientX-H.left-H.width/2,H.top+H.height/
2-M.clientY)/(2*Math.PI)};B.addEventListener("pointerdown",M=>{M.button===0&&(k=x(M),B.setPointerCapture(M.pointerId),K.
focus({preventScroll:!0}),M.preventDefault())}),B.addEventListener("pointermove",M=>{if(k===null)return;let H=x(M),X=H-k;
X-=Math.round(X),k=H,v+=X,P()});let O=()=>{k=null};B.addEventListener("pointerup",O),B.addEventListener("pointercancel",
O)}let v=0,I=!1;function P(){if(I||Math.abs(v)<.002)return;I=!0;let y=v;v=0,f(y)}let w=Z({model:t,el:e},{kind:"rig"});w.
show(...n.closed?[]:[s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved.")],w.alert,r,...n.closed?[]:[s("\
div",{class:"ts-tools",role:"group","aria-label":"Gears engaged"},s("span",{},"Engage: "),...l),c],s("div",{class:"ts-to\
ols"},s("span",{class:"ts-pair"},"Hold still: ",u),s("span",{class:"ts-pair"},"Turn by hand: ",p)),s("div",{class:"tsw-c\
ounts"},...[...L.values()].map(y=>y.box)),g,a,s("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a d\
ial round, or go to it and use the arrow keys (${m} turn), Shift with an arrow key (a touch) or Page Up and Page Down (o\
ne turn). Each stroke is a whole turn.`));let S=0,C=null;function b(y){S+=1,w.send({...y,turn:S})}let h=y=>{let $=[];for(let T=y;T>
0;T-=5)$.push(T>=5?"||||/":"|".repeat(T));return $.join(" ")};function A(){let y=t.get("view");C!==t.get("figure")&&(C=String(
t.get("figure")),c.innerHTML=C);for(let $ of J(c,"[data-wheel]")){let[T,B]=y.wheels[String($.dataset.wheel)]??[0,!0];$.setAttribute(
"transform",`translate(0 ${(T*Number($.dataset.reach)).toFixed(1)})`),$.classList.toggle("tsw-behind",!B)}for(let $ of l)
$.setAttribute("aria-pressed",String(y.engaged.includes($.dataset.gear)));u.value=y.held,p.value=i;for(let $ of y.dials){
let{box:T,shaftEnd:B}=L.get($.shaft),K=$.way>0?"↻":$.way<0?"↺":"";B.setAttribute("transform",`rotate(${$.angle})`);let[
k,,x,O]=T.children;k.textContent=`${$.name}${$.held?", held":$.shaft===i?", your hand":""}`,x.textContent=$.strokes||K?`${K}\
 ${h($.strokes)}`:"no stroke",O.textContent=$.figure,T.classList.toggle("tsw-hand",$.shaft===i),T.classList.toggle("tsw-\
held",$.held),T.setAttribute("aria-label",`${$.name}${$.held?", held":""}. ${$.words}`)}r.textContent=y.finding,a.textContent=
y.happened,e.dataset.turn=String(y.turn),I=!1,P()}return w.follow("change:view",A),A(),w.close}function Bs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsh-picture"}),r=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),c=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},r,a,c),d=[],
l=[],u=null,p=t.get("plan").lookingOnly,f=(b,h)=>s("button",{type:"button",class:"ts-button","data-verdict":b,"aria-pres\
sed":"false",onclick:()=>v.send({type:"judge",place:u,verdict:b})},h),m=p?[]:[f("stop","Stop here"),f("well","Fine as it\
 is")],g=s("button",{type:"button",class:"ts-button",onclick:()=>v.send({type:"next"})},"Another day"),L=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...m);t.get("plan").more&&L.append(g);let v=Z({model:t,
el:e},{kind:"rig"});v.show(s("p",{class:"ts-who"},p?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),v.alert,n,s("p",{class:"ts-keys"},p?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),o,i),p||i.after(L);function I(b,h){let A=b!==u;u=b;for(let[y,$]of l.
entries()){let T=d[y][0]===b;$.setAttribute("tabindex",T?"0":"-1"),$.setAttribute("aria-pressed",String(T)),$.classList.
toggle("tsh-chosen",T),T&&h&&($.focus({preventScroll:!0}),P($))}A&&v.send({type:"choose",place:b})}function P(b){let h=Nt(
b,".tsh-hit").getBoundingClientRect(),A=o.getBoundingClientRect();(h.left<A.left||h.right>A.right)&&(o.scrollLeft+=h.left-
A.left-(A.width-h.width)/2),(h.bottom<0||h.bottom>innerHeight||h.top<0)&&b.scrollIntoView({block:"nearest"})}function w(){
let b=t.get("plan");d=b.places,o.innerHTML=b.drawing,Nt(o,"svg").setAttribute("role","group"),l=d.map(([h])=>Nt(o,`[data\
-place="${h}"]`)),l.forEach((h,A)=>{h.setAttribute("role","button"),h.setAttribute("aria-label",`${A+1} ${d[A][1]}`),h.addEventListener(
"click",()=>I(d[A][0],!0))}),u=String(t.get("view").chosen),I(u,!1)}o.addEventListener("keydown",b=>{if(bt(b))return;let h=d.
findIndex(([$])=>$===u),A=Math.min(6,d.length),y=h;if(b.key==="ArrowRight")y=h+1;else if(b.key==="ArrowLeft")y=h-1;else if(b.
key==="ArrowDown")y=h+A;else if(b.key==="ArrowUp")y=h-A;else if(b.key==="Home")y=0;else if(b.key==="End")y=d.length-1;else if(b.
key!=="Enter"&&b.key!==" ")return;b.preventDefault(),y>=0&&y<d.length&&I(d[y][0],!0)});function S(){let b=t.get("view");
n.textContent=b.finding;let h=d.findIndex(([$])=>$===b.chosen);r.textContent=`${h+1}  ${d[h][1]}`,a.textContent=b.seen;let{
verdict:A,...y}=b.told;if(c.replaceChildren(),A){let $=b.judged[b.chosen],T=$==="stop"==(A==="Stop here."),B=$==="stop"?
"Stop here":"Fine as it is";c.append(s("p",{class:"tsh-verdict"},T?`✓ Yes: ${A}`:`✗ You said “${B}”. The course sa\
ys: ${A}`),s("dl",{class:"ts-facts"},...Object.entries(y).flatMap(([K,k])=>[s("dt",{},K),s("dd",{},k)])))}for(let $ of m)
$.setAttribute("aria-pressed",String(b.judged[b.chosen]===$.dataset.verdict));for(let[$,T]of l.entries()){let B=b.judged[d[$][0]];
T.setAttribute("aria-label",`${$+1} ${d[$][1]}${B?`, judged: ${B==="stop"?"stop here":"fine as it is"}`:""}`);let K=T.querySelector(
".tsh-tag");if(!B){K?.remove();continue}K||(K=R("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),T.
append(K)),K.textContent=B==="stop"?"■ stop":"○ well"}e.dataset.turn=b.chosen}let C=()=>{w(),S()};return v.follow("c\
hange:plan",C),v.follow("change:view",S),C(),v.close}function Ds({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),c=new Map,d=n.sliders.map(([f,m,g,L,v,I])=>{let P=nt(f.replace("_","-")),w=s("output",{class:"\
tsl-figure",for:P}),S=s("input",{id:P,type:"range",min:L,max:v,step:I,oninput:()=>{C(),u.send({type:"set",name:f,value:Number(
S.value)})}}),C=()=>{w.textContent=`${S.value} ${g}`,S.setAttribute("aria-valuetext",`${S.value} ${g==="°"?"degrees":g}`)};
return c.set(f,{slider:S,say:C}),s("div",{class:"tsl-row"},s("label",{for:P},m),S,w)}),l=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>u.send({type:"set",name:"grip",value:l.value})},...wt(n.grips)),u=Z({model:t,el:e},{kind:"r\
ig"});u.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),u.alert,o,s("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...d,s("div",{class:"tsl-row"},s("span",{},"Grip"),l)),a,r,s("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function p(){let f=t.get("vi\
ew");o.textContent=f.finding,r.textContent=f.sum,a.innerHTML=f.drawing;for(let[m,{slider:g,say:L}]of c)document.activeElement!==
g&&(g.value=f.sizes[m]),L();l.value=f.sizes.grip}return u.follow("change:view",p),p(),u.close}var ge={x:90,y:120,perMm:20,radius:82,bevel:30};function Xn(t){let e=R("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:o,perMm:r,radius:a}=ge;e.append(R("rect",{x:n-60,y:o-56,width:r*t.top+90,height:112,class:"tsi-pa\
per"}),it(n-20,o,n+r*t.top+20,o,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let f=n+p*t.pitch*r;if(p%2){e.append(it(
f,o,f,o+18,"tsi-fine"));continue}let m=p/2;e.append(it(f,o,f,o-(m%5?18:27),m%5?"tsi-fine":"tsi-bold")),m%5===0&&e.append(
ct(f,o-33,String(m)))}let c=R("g",{});e.append(c,ct(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=R("path",{d:`M0 ${o-a+14}L${ge.bevel} ${o-a}L${ge.bevel} ${o+a}L0 ${o+a-14}\
Z`,class:"tsi-body"}),d=R("rect",{x:ge.bevel,y:o-a,width:760,height:2*a,class:"tsi-body"}),l=R("rect",{x:0,y:o-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),u=R("g",{});return c.append(l,i,d,u),{node:e,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*r} 0)`),u.replaceChildren();for(let f=0;f<t.lines;f+=1){let m=f-p.line;m-=t.lines*Math.round(m/t.lines);let g=m/
t.lines*2*Math.PI;if(Math.abs(g)>1.15)continue;let L=o-(a-8)*Math.sin(g),v=f%5===0;u.append(it(0,L,v?26:16,L,v?"tsi-bold":
"tsi-fine")),v&&u.append(ct(36,L+5,String(f),"start"))}e.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function Ps(t){
return Ct(t,(e,n,o)=>{let r=Xn(e),a=gt("Thimble",{min:0,max:e.top,step:.01,value:o.open,words:()=>"turn in to the left, \
out to the right",onInput:d=>n({open:d})}),c=ft("Between the faces",e.between,o.between,d=>n({between:d,open:e.top})),i=e.
hands.length?ft("Close it",e.hands,o.hand,d=>n({hand:d})):null;return{picture:r.node,controls:[Lt(c.row,i?.row),Lt(G("Cl\
ose until it rests",()=>n({open:-1})),G("Open",()=>n({open:e.top}))),a.row],set(d,l){r.set(d),a.box.value=String(Math.max(
0,d.mm)),c.box.value=l.between}}})}function Rs({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding",role:"status"}),r=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[d,l,u]of n.checks){let p=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${l}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:d})}},"Make"),f=It("it shows",!1);f.classList.add("t\
sk-shown"),a.set(d,{button:p,shown:f}),r.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},l),It("min",!0,
`${u}`),It("",!1,p),f))}let c=Z({model:t,el:e},{kind:"rig"});c.show(s("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),c.alert,o,he("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],r));
function i(){let d=t.get("view");o.textContent=d.finding;for(let[l,{button:u,shown:p}]of a){let f=d.shown[l];u.setAttribute(
"aria-disabled",f?"true":"false"),u.classList.toggle("ts-off",!!f),u.textContent=f?"Made":"Make",p.textContent=f?`${f[0]?
"✓":"✗"} ${f[1]}`:"",p.classList.toggle("tsk-failed",!!f&&!f[0])}}return c.follow("change:view",i),i(),c.close}function Vn(){let t=R("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=R("g"),n=R("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(R("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,R("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let o=c=>(-135+270*c)*Math.PI/180,r="";function a([c,i,d]){e.replaceChildren();for(let l=0;l*i<=c+
1e-9;l+=1){let u=o(l*i/c),p=l%d===0,f=m=>[110+m*Math.sin(u),104-m*Math.cos(u)];if(e.append(it(...f(p?72:79),...f(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&l%(2*d)===0){let[m,g]=f(58);e.append(ct(m,g+4.5,String(Number((l*i).toFixed(2)))))}}e.
append(ct(110,170,"kN"))}return{node:t,set(c,i,d){String(c)!==r&&(r=String(c),a(c));let l=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*l})`),t.setAttribute("aria-label",d)}}}function js(t){return Ct(t,(e,n,o)=>{
let r=Vn(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},r.node)),d=gt("Push",{min:0,max:100,step:1,value:o.travel,onInput:f=>n(
{travel:f}),words:f=>f>=100?"at the shoulder":`${f} % of the way`}),l=[d.row],u=null;if(!e.readingsOnly){let f=ft("Part",
e.places,o.place,v=>n({place:v,travel:0}));u=ft("Driver bears on",e.drivers,o.driver,v=>n({driver:v,travel:0}));let m=ft(
"Seat",e.seats,o.seat,v=>n({seat:v})),g=gt("Pair",{min:0,max:100,step:1,value:o.grip,onInput:v=>n({grip:v}),words:v=>v===
0?"loosest of the fit":v===100?"tightest of the fit":`${v} % from loosest to tightest`}),L=gt("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:o.warmth,onInput:v=>n({warmth:v}),words:v=>`${v} °C`});l.unshift(Lt(f.row,u.row,m.row),
g.row,L.row)}let p=s("dl",{class:"ts-facts"});return e.readingsOnly||l.push(p),{picture:i,controls:l,set(f,m){f.section!==
c&&(c=f.section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*m.travel/
100} 0)`),r.set(f.gauge,f.force,f.words),Number(d.box.value)!==m.travel&&document.activeElement!==d.box&&d.set(m.travel),
u&&(u.row.hidden=!f.drives),f.facts&&p.replaceChildren(...Et(f.facts))}}})}function Hs({model:t,el:e}){let n=t.get("steps"),o=t.get("reach"),r=new Map(n.map(([C],b)=>[C,b])),a=s("div",{class:"ts-\
scroll"}),c=s("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=s(
"p",{class:"ts-finding",role:"status"}),d=s("ul",{class:"ts-sentences"}),l=s("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...wt(n.map(([C,b],h)=>[C,`${h+1}  ${b}`]))),u=s("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),p=Z({model:t,el:e},{kind:"rig",lost(){l.disabled=!0}});p.show(p.alert,s("p",{class:"ts-f\
inding"},t.get("finding")),s("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",l),
u),a,s("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,c,d),a.innerHTML=t.get("figure");let f=Nt(a,"svg");f.setAttribute("role","group");let m=J(f,".tsf-step").sort(
(C,b)=>Number(C.dataset.step)-Number(b.dataset.step)),g=J(f,".tsf-rule").map(C=>({node:C,ends:String(C.dataset.rule).split(
"-").map(Number)}));m.forEach((C,b)=>{C.setAttribute("role","button"),C.setAttribute("aria-label",`${b+1} ${n[b][1]}, ${o[b].
before.length} before it, ${o[b].after.length} after it`),C.addEventListener("click",()=>I(b,!0))});let L=Number(r.get(t.
get("near").step));function v(C){let b=new Set(o[L].before),h=new Set(o[L].after);m.forEach((T,B)=>{T.setAttribute("tabi\
ndex",B===L?"0":"-1"),T.setAttribute("aria-pressed",String(B===L)),T.classList.toggle("ts-chosen-step",B===L),T.classList.
toggle("ts-before-it",b.has(B)),T.classList.toggle("ts-after-it",h.has(B)),T.classList.toggle("ts-either",B!==L&&!b.has(
B)&&!h.has(B))});let A=T=>T===L||b.has(T)||h.has(T);for(let{node:T,ends:B}of g){let K=b.has(B[0])&&(B[1]===L||b.has(B[1]))||
h.has(B[1])&&(B[0]===L||h.has(B[0]));T.classList.toggle("ts-either",!(K&&B.every(A)))}l.value=n[L][0],C&&m[L].focus({preventScroll:!0});
let y=m[L].getBoundingClientRect(),$=a.getBoundingClientRect();(y.left<$.left+16||y.right>$.right-16)&&(a.scrollLeft+=y.
left-$.left-$.width/2)}function I(C,b){L=C,v(b),p.send({type:"choose",step:n[C][0]})}let P=C=>{let h=Nt(m[C],"rect").getBBox();
return{x:h.x,y:h.y}};function w(C){let b=P(L),h=$=>$.sort((T,B)=>Math.abs(P(T).y-b.y)-Math.abs(P(B).y-b.y))[0];if(C==="A\
rrowRight")return h(g.filter(({ends:$})=>$[0]===L).map(({ends:$})=>$[1]));if(C==="ArrowLeft")return h(g.filter(({ends:$})=>$[1]===
L).map(({ends:$})=>$[0]));let A=m.map(($,T)=>T).filter($=>Math.abs(P($).x-b.x)<2&&$!==L),y=C==="ArrowUp"?-1:1;return h(A.
filter($=>(P($).y-b.y)*y>0))}f.addEventListener("keydown",C=>{if(!bt(C))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes(C.key)){let b=w(C.key);b!==void 0&&I(b,!0),C.preventDefault()}else(C.key==="Enter"||C.key===" ")&&C.preventDefault()}),
l.addEventListener("change",()=>I(Number(r.get(l.value)),!1)),u.addEventListener("click",()=>{let C=a.classList.toggle("\
ts-fit");u.setAttribute("aria-pressed",String(C)),v(!1)});function S(){let C=t.get("near");i.textContent=C.words,c.innerHTML=
C.figure,d.replaceChildren(...Bt(C.sentences))}return p.follow("change:near",S),S(),requestAnimationFrame(()=>v(!1)),p.close}function Jn(){let t=R("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=R("g",{}),n=R("g",{});return e.append(
R("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),it(150,164,150,98,"tsi-bold"),R("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(it(150,86,150,40,"tsi-plunger"),R("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,it(50,164,
250,164,"tsg-centre"),it(150,250,150,80,"tsg-centre"),n,ct(8,252,"not to scale","start")),{node:t,set(o,r,a){e.setAttribute(
"transform",`rotate(${o} 150 164)`),n.setAttribute("transform",`rotate(${r} 150 88)`),t.setAttribute("aria-label",a)}}}function _s(t){
return Ct(t,(e,n,o)=>{let r=qt(),a=Jn(),c=gt("Turn the shaft by hand",{min:0,max:360,step:5,value:o.angle,words:l=>`turn\
ed by ${l}°`,onInput:l=>n({angle:l})}),i=ft("Plunger",e.pressed,o.pressed,l=>n({pressed:l})),d=ft("Stand",e.tilts,o.tilt,
l=>n({tilt:l}));return{picture:s("div",{class:"tsg-beside"},a.node,s("div",{class:"tsg-gauge"},r.node,s("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[Lt(i.row,d.row),c.row],set(l,u){r.set(l.mm,l.words),a.set(l.state.angle,Number(l.
state.tilt),`Shaft end on, turned by ${l.state.angle}°; the plunger stands ${l.state.tilt}° off square. Not to scale.`),
c.set(u.angle)}}})}var Fs=(t,e)=>(t+e)%7<2,Ks=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,we=()=>!1,me=t=>(e,n)=>n%t===0,Zn={"":we,dots:(t,e)=>t%6<2&&e%
6<2,rising:Fs,cross:Ks,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":we,"lines-2":me(14),"lines-3":me(8),"lines-4":me(5),"lines-5":me(
3)};function Qn(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var Ws=([t,e,n],o)=>(o<<24|n<<16|e<<
8|t)>>>0;function Us(t,[e,n],o,r,a){let c=n*4,i=new Uint32Array(c*e*4),d=new Map(o.map(([p,,f,m])=>{let g=f?Ws(Qn(f),200):
0;return[p,{ground:g,hatch:Zn[m]??we}]})),l={ground:0,hatch:we},u=Ws(r,190);for(let p=0;p<e;p+=1){let f=(e-1-p)*4;for(let m=0;m<
n;m+=1){let g=t[p*n+m];if(!g)continue;let{ground:L,hatch:v}=d.get(g&15)??l,I=a&&(g&16)!==0,P=a&&(g&32)!==0;for(let w=f;w<
f+4;w+=1)for(let S=m*4;S<(m+1)*4;S+=1){let C=v(S,w)||I&&Fs(S,w)||P&&Ks(S,w);i[w*c+S]=C?u:L}}}return i}var eo=600;function zs(t,e,n,o,r,a){let[c,i]=n;t.width=i*4,t.height=c*4;let d=new Uint8ClampedArray(Us(e,n,o,r,a).buffer),
l=new ImageData(d,t.width,t.height);t.getContext("2d")?.putImageData(l,0,0)}function so(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return zs(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function Gs({model:t,el:e}){let n=t.get("face"),o=t.get("looks"),r=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),c=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),d=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),l=Z({model:t,el:e},{kind:"rig",lost(){f.setDisabled(!0),Jt(e)}}),u=null,p=x=>{u=nt("turn"),l.send({...x,turn:u})},
f=re({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(x){f.
drawing.strokes(x),p({type:"lay",entries:x})},onRemove:x=>p({type:"remove",at:x}),onClear:()=>p({type:"clear"})}),m=G("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),g=s("input",{type:"range",id:nt("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),L=s("output",{for:g.id}),v=xt({id:nt("slide"),onchange:()=>p({type:"slide",by:v.value})},
t.get("view").slides),I=null;g.addEventListener("input",()=>{L.textContent=`${g.value} µm`;let x={type:"flat",um:Number(
g.value)};u===null?p(x):I=x});let{box:P,unit:w}=f.drawing;f.drawing.land.classList.add("tsp-clear"),f.drawing.frame.prepend(
d);let S=(...x)=>s("span",{class:"ts-pair"},...x);l.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),l.alert,r,f.drawing.frame,i,s("div",{class:"ts-tools"},m,S(s("label",{for:v.id},"the other face is"),v),S(a,G("1 m\
inute passes",()=>p({type:"time",by:1})),G("5 minutes pass",()=>p({type:"time",by:5}))),S(s("label",{for:g.id},"faces ou\
t of flat by"),g,L)),f.tools,c,s("details",{class:"ts-keys"},s("summary",{},"Passes laid"),f.empty,f.list));function C(){
let x=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return x?x.slice(0,3).map(Number):[0,0,0]}let b="",h="";function A(){
let x=t.get("view"),O=o[x.closed?"closed":"film"],M=t.get("grid"),H=M instanceof DataView?new Uint8Array(M.buffer,M.byteOffset,
M.byteLength):new Uint8Array(M);zs(d,H,x.shape,O,C(),!x.closed);let[X,Y]=x.shape,[ht,st]=[x.corner[0]-x.pitch/2,x.corner[1]-
x.pitch/2],W=(F,q)=>`${(100*F/q).toFixed(3)}%`;d.style.left=W(ht-P.left,P.width),d.style.width=W(Y*x.pitch,P.width),d.style.
top=W(P.high-st-X*x.pitch,P.height),d.style.height=W(X*x.pitch,P.height);let V=new Set(H.map(F=>x.closed?F:F&15)),E=O.filter(
([F])=>V.has(F)),_=`${E.map(([,F])=>F)} ${C()}`;_!==b&&(b=_,i.replaceChildren(...E.map(F=>so(F,C()))))}let y=R("g");f.drawing.
over.append(y);let $=([x,O])=>[x-P.left,P.high-O];function T([x,O]){let M=O.map(H=>{let[X,Y]=$(H);return`M${X.toFixed(1)}\
 ${Y.toFixed(1)}h0.01`});return R("path",{d:M.join(""),class:"tsp-lump","stroke-width":2*x})}function B(x){let[O,M]=$(x[x.
length-1]),H=`M${O-1.3*w} ${M-w}h${2.6*w}l${-1.3*w} ${2.2*w}Z`;return[R("path",{d:f.drawing.path(x),class:"tsp-way","str\
oke-width":w}),R("path",{d:H,class:"tsp-out"})]}function K(){let x=t.get("view");if(u!==null&&x.turn!==u)return;u=null;let O=JSON.
stringify([x.entries,x.notes]);if(O!==h&&f.show(x.entries,x.notes),h=O,f.drawing.strokes([]),A(),y.replaceChildren(...x.
lumps.map(T),...x.leaks.flatMap(B)),f.drawing.svg.classList.toggle("tsp-shut",x.closed),f.drawing.svg.classList.toggle("\
tsp-clean",x.closed||x.clean),r.textContent=x.finding,v.value=x.slide,a.textContent=`minute ${x.minute}`,m.textContent=x.
closed?"Lift the face off again":"Close the face",I===null&&(g.value=String(x.flat),L.textContent=`${x.flat} µm`),c.replaceChildren(
...Et(x.facts)),I===null)return;let M=I;I=null,p(M)}l.follow("change:view",K),l.follow("msg:custom",x=>{x.type==="troubl\
e"&&(u=null,f.drawing.strokes([]))});let k=new MutationObserver(()=>setTimeout(A,eo));return k.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),K(),()=>{l.close(),k.disconnect()}}function Ys(t){return Ct(t,(e,n,o)=>{let r=qt(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},r.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),d=e.places.map(([u,p])=>[u,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:u})},p)]),l=[s("p",{class:"ts-hint"},e.rule),Lt(s("span",{},"Set the gauge down at"),...d.map(([,u])=>u))];
return e.readingsOnly||(l.push(Lt(ft("Lip looks towards",e.sides,o.lip,u=>n({lip:u})).row,ft("Lip is",e.greases,o.grease,
u=>n({grease:u})).row,e.sleeves.length?ft("It went",e.sleeves,o.sleeve,u=>n({sleeve:u})).row:"")),l.push(gt("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:o.depth,words:u=>`${u.toFixed(2)} mm${u<0?", proud":""}`,onInput:u=>n({
depth:u})}).row,gt("Lean",{min:0,max:e.mostLean,step:.02,value:o.lean,words:u=>u?`${u.toFixed(2)} mm across`:"square",onInput:u=>n(
{lean:u})}).row)),{picture:i,controls:l,set(u,p){u.section!==c&&(c=u.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.
setAttribute("transform",u.placed),r.set(u.dial,u.words);for(let[f,m]of d)m.setAttribute("aria-pressed",String(f===p.place))}}})}function Xs({model:t,el:e}){let n=t.get("about"),o=t.get("shown").state,r=qt(),a=n.readingsOnly?null:bs(n),c=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),d=Ut((b,h)=>I.send({type:"set",state:b,turn:h})),l=b=>{o={...o,...b},d.ask(o)},
u=(b,h)=>{let A=[...o.shims];A[b]=h,l({shims:A.filter(Boolean),turns:0})},p=(b,h,A)=>G(b,h,{"aria-pressed":A}),f=G("Turn\
 the shaft ten times",()=>l({turns:o.turns+10})),m=p("Pull the shaft away",()=>l({side:"away"}),"true"),g=p("Push it to \
the dial",()=>l({side:"towards"}),"false"),L=ft("Plunger",n.plungers,o.plunger,b=>l({plunger:b})),v=[s("div",{class:"ts-\
tools"},n.rolls?f:null,L.row,m,g)];if(!n.readingsOnly){let b=ft("Shim",n.shelf,o.shims[0],A=>u(0,A)),h=n.second?ft("and",
[["","no second shim"],...n.shelf],o.shims[1]??"",A=>u(1,A)):null;v.unshift(s("div",{class:"ts-tools"},b.row,h?.row)),v.
push(gt("Warm the unit",{min:0,max:100,step:1,value:o.warmth,onInput:A=>l({warmth:A}),words:A=>A?`case ${Math.round(n.caseRise*
A/100)} K warmer`:"cold, as at the bench"}).row)}let I=Z({model:t,el:e},{kind:"rig"}),P=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});P.innerHTML=n.section;let w=[s("p",{class:"ts-who"},n.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),I.alert,s("div",{class:"\
tsg-beside"},P,s("div",{class:"tsg-gauge"},r.node,s("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...v,c,
a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];I.show(...w.filter(Boolean));function S(){let b=t.get("show\
n");d.waiting||(o=b.state),r.set(b.dial,b.dialWords),m.setAttribute("aria-pressed",String(b.state.side==="away")),g.setAttribute(
"aria-pressed",String(b.state.side==="towards")),c.textContent=b.finding,a&&(a.set(b.cold,b.warm,b.words.join(" ")),i.replaceChildren(
...b.words.map(h=>s("p",{},h)))),d.answered(b.turn)}let C=()=>d.free();return I.follow("change:shown",S),I.follow("msg:c\
ustom",C),S(),I.close}function Vs(t){return Ct(t,(e,n,o)=>{let r=s("div",{tabindex:"0",role:"group","aria-label":e.name}),a="",c=e.pickers.map(
({key:l,label:u,options:p})=>ft(u,p,o[l],f=>n({[l]:f})).row),i=e.sliders.map(({key:l,label:u,min:p,max:f,step:m,unit:g,places:L})=>gt(
u,{min:p,max:f,step:m,value:o[l],words:v=>`${v.toFixed(L)} ${g}`,onInput:v=>n({[l]:v})}).row),d=c.length>2?c:c.length?[Lt(
...c)]:[];return{picture:r,controls:[...d,...i],set(l){l.drawing!==a&&(a=l.drawing,r.innerHTML=a)}}})}function Js({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),c=s("dl",{class:"ts-facts"}),i=null,d=null,l=(h,A)=>{d={...d,[h]:A},i===null&&u()};function u(){
i=nt("choice"),S.send({type:"choose",chosen:d,turn:i}),d=null}let p=s("div",{class:"tsj-settings"}),f=(h,A,y)=>{let $=nt(
"set");return A.id=$,p.append(s("label",{for:$},h),s("span",{class:"tsj-slide"},A,y)),A},m=(h,A,y)=>f(A,s("select",{class:"\
ts-box",onchange:$=>l(h,$.target.value)},...wt(y.map($=>typeof $=="string"?[$,$]:$)))),g=(h,A,y)=>f(A,s("input",{type:"r\
ange",oninput:$=>l(h,Number($.target.value))}),y),L={group:m("group","Bolt of the unit",n.groups),thread:m("thread","Thr\
ead",n.threads),strength:m("strength","Strength class",n.classes),state:m("state","State of the thread",n.states),tool:m(
"tool","Tool",n.tools)},v=s("output",{class:"tsj-figure"}),I=g("torque_nm","Torque",v),P=s("output",{class:"tsj-figure"}),
w=g("engagement_mm","Thread that meets",P),S=Z({model:t,el:e},{kind:"rig"});S.show(s("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),S.alert,o,r,s("div",{class:"tsj-bench"},p,a),c);let C=(h,A,y,$,T,B)=>{Ot(h,{min:A,max:y,
step:$}),i===null&&(h.value=String(T)),h.setAttribute("aria-valuetext",B)};function b(){let h=t.get("view");if(i!==null&&
h.turn!==i)return;i=null,d!==null&&u();let{chosen:A}=h;o.textContent=h.finding,r.innerHTML=h.band,a.innerHTML=h.section,
c.replaceChildren(...Et(h.facts));for(let[y,$]of Object.entries(L))$.value=A[y];C(I,1,h.topTorque,.5,A.torque_nm,h.torqueText),
v.textContent=h.torqueText,C(w,h.lowEngagement,h.topEngagement,.5,A.engagement_mm,h.engagementText),P.textContent=h.engagementText}
return S.follow("change:view",b),b(),S.close}function Zs({model:t,el:e}){let n=Kt(t.get("picture")),o=Z({model:t,el:e},{kind:"rig"});return o.show(o.alert,s("p",{class:"\
ts-finding"},t.get("finding")),...n.nodes),o.close}function Yt(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function Te(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var Oe=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function Qs(t,{stages:e,stage:n,step:o,labels:r,isOpen:a}){let c=Yt(e,
n),i=c.indexOf(String(o));if(t==="ArrowLeft"||t==="ArrowRight"){let l=e.map(([f])=>f),u=t==="ArrowLeft"?-1:1,p=Yt(e,l[(l.
indexOf(n)+u+l.length)%l.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let d=t.toLowerCase();return Oe(c,i).find(l=>r[l].toLowerCase().startsWith(d))}function tn({stages:t,stage:e,step:n,isOpen:o}){
let r=Yt(t,e),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(r.at(-1)));return Oe(r,r.indexOf(String(n))).find(o)??Oe(a,c).find(
o)}function en({model:t,el:e}){let n=t.get("plan"),o=s("p",{class:"ts-finding"}),r=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>ht()},
...wt(n.stages.map(([N,U])=>[N,U]))),c=et(n.marked?"Next open step":"Next ready step",()=>x("next"));c.classList.add("ts\
-next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this sta\
ge",onkeydown:N=>M(N)}),d=s("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the s\
tage, Enter takes a step in hand; Enter again does it."),l=s("div",{class:"ts-hand",role:"group","aria-label":"Step in h\
and",onkeydown:N=>{N.key!=="Enter"||!N.target.matches("input[type=radio], .ts-number-box")||(N.preventDefault(),t.get("h\
and").stands?X():q())}}),u=s("div",{class:"ts-scroll ts-fit"}),p=s("dl",{class:"ts-facts"}),f=s("ul",{class:"ts-sentence\
s"}),m=s("p",{class:"ts-prompt"},"Wrong so far"),g=s("select",{class:"ts-box ts-before","aria-label":"A step that stands"}),
L=et("Take out again",()=>{g.value&&h({type:"out",step:g.value},"hand")}),v=et("Put the tools down",()=>h({type:"over"},
"told"));v.classList.add("ts-over");let I=s("div",{}),P=s("p",{class:"ts-status"}),w=s("details",{ontoggle:()=>{w.open!==
!!t.get("view").record&&h({type:"record",open:w.open})}},s("summary",{},"Build record"),I),S=Z({model:t,el:e},{kind:"rig"});
S.show(s("p",{class:"ts-who"},n.who),S.alert,o,P,r,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"\
ts-tools"},a,c),i,d),l),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},g,L),v),u,p,m,f,w);let C=0,b=null;function h(N,U=null){
C+=1,b=U&&{turn:C,focus:U},e.setAttribute("aria-busy","true"),S.send({...N,turn:C})}let A="",y=null,$="next",T=N=>!t.get(
"view").done.includes(N),B=()=>J(i,"[data-step]"),K=N=>B().find(U=>U.dataset.step===N)?.focus(),k=()=>({stages:n.stages,
stage:a.value,step:y,isOpen:T});function x(N,U){$=N,h(N==="list"?{type:"take",step:U}:{type:"next"},"hand")}function O(N){
a.value=Te(n.stages,N)??a.value,y=N,ht(),K(N)}function M(N){if(bt(N))return;let U=Qs(N.key,{...k(),labels:n.labels});U&&
(N.preventDefault(),O(U))}function H(){let N=tn(k());N?$==="next"?c.focus():O(N):v.focus()}function X(){let N=t.get("vie\
w").done.length>=Object.keys(n.labels).length;$==="next"&&!N?x("next"):H()}function Y(N){let{done:U,ready:rt}=t.get("vie\
w");return U.includes(N)?{sign:"✓",word:"done"}:rt.includes(N)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"op\
en":"waits"}}function ht(){let N=Yt(n.stages,a.value);(y===null||!N.includes(y))&&(y=N.find(T)??N[0]);let U=t.get("hand").
step,rt=JSON.stringify([a.value,N.map(Y),U]);if(rt===A){for(let mt of B())mt.tabIndex=mt.dataset.step===y?0:-1;return}A=
rt;let pt=B().find(mt=>mt===document.activeElement)?.dataset.step;i.replaceChildren(...N.map(mt=>st(mt,U))),pt&&K(pt)}function st(N,U){
let{sign:rt,word:pt}=Y(N);return s("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${pt}`,"data-step":N,
tabindex:N===y?"0":"-1","aria-current":N===U?"step":!1,"aria-label":`${n.labels[N]}: ${pt}`,onclick:()=>{y=N,x("list",N)}},
At(rt),n.labels[N])}let W="",V=new Map;function E(N){let U=Ht(N),rt=s("p",{class:"ts-read",id:U.read,role:"status"}),pt=0,
mt=j=>{h({type:"set",name:N.name,value:j}),pt=C},tt=Pt(N).make(N,U,mt,()=>{}),D=_t(N,U,null);return D.append(tt.element,
rt),D.dataset.field=N.name,{element:D,flush:()=>tt.flush?.(),show(j={},Q){if(Q<pt)return;tt.show(j);let lt=j.read?`read \
as ${j.read}`:"";rt.textContent=j.error?`▲ Look again: ${j.error}`:lt}}}let _=N=>s("dl",{class:"ts-facts"},...Et(N));function F(){
let N=t.get("hand"),U=JSON.stringify(N);if(U===W)return;if(W=U,l.dataset.stands=String(!!N.stands),V=new Map((N.fields??
[]).map(tt=>[tt.name,E(tt)])),!N.step){l.replaceChildren(s("p",{class:"ts-hint"},"No step in hand. Choose one from the l\
ist, or press the button above it."));return}let rt=et(`Do it: ${N.label}`,q);rt.classList.add("ts-do");let pt=N.stands?
[et("Go on",X),et("Take it out again",()=>h({type:"out",step:N.step},"hand"))]:[rt];l.replaceChildren(s("p",{class:"ts-p\
rompt ts-hand-name",tabindex:"-1"},N.label),...N.plain.map(tt=>s("p",{class:"ts-hint"},tt)),...N.cautions.map(tt=>s("p",
{class:"ts-caution"},s("b",{},"Take care: "),tt)),...N.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),_(N.read)]:
[],...N.card.length?[_(N.card)]:[],...[...V.values()].map(tt=>tt.element),s("div",{class:"ts-tools"},...pt));let mt=Te(n.
stages,N.step);mt&&([a.value,y]=[mt,N.step])}function q(){for(let N of V.values())N.flush();h({type:"do"},"after")}function ot(){
let N=t.get("view").asked_back,U=J(l,"[data-field]").find(mt=>mt.dataset.field===N),rt=U&&J(U,"input:not(:disabled), sel\
ect, button"),pt=J(l,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return rt?.[0]??
pt[0]}function z(){let N=t.get("view"),U=N.told;o.textContent=N.finding,P.textContent=N.status,P.hidden=!N.status,r.textContent!==
U.join("")&&r.replaceChildren(...U.map(pt=>s("p",{},pt))),F(),ht();for(let[pt,mt]of V)mt.show(N.states[pt],N.turn);if(u.
dataset.shown!==N.figure&&(u.innerHTML=N.figure,u.dataset.shown=N.figure),p.replaceChildren(...Et(N.facts)),f.replaceChildren(
...Bt(N.faults.map(([,pt])=>pt))),m.hidden=f.hidden=!N.faults.length,dt(N.done),I.innerHTML=N.record,w.open=!!N.record,e.
setAttribute("aria-busy",String(N.turn<C)),!b||N.turn<b.turn)return;let{focus:rt}=b;b=null,rt==="told"?r.focus():rt==="a\
fter"&&!t.get("hand").step?H():(ot()??c).focus()}function dt(N){if(g.disabled=L.disabled=!N.length,g.dataset.done===N.join(
" "))return;g.dataset.done=N.join(" ");let U=[...N].reverse();g.replaceChildren(...wt(U.map(rt=>[rt,n.labels[rt]])))}return S.
follow("change:view",z),z(),S.close}function no(t){let e=R("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[o,r]=[210,128],a=it(
o,r,o,r,"tsi-adapter"),c=R("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=it(o,r+74,o,r+74,"tsi-arm"),d=ct(o,r+94,"");return e.
append(it(o,r,o+440,r,"tsi-lever"),a,c,R("circle",{cx:o,cy:r,r:7,class:"tsg-hub"}),ct(o+440,r-20,"hand, middle of the gr\
ip","end"),ct(o+20,r-20,"square drive","start"),it(o+440,r+10,o+440,r+84,"tsg-centre"),i,d,ct(8,242,"lengths to scale","\
start")),{node:e,set(l){let u=l.state.angle/180*Math.PI,p=o-l.state.reach*n*Math.cos(u),f=r-l.state.reach*n*Math.sin(u);
Ot(a,{x2:p,y2:f}),Ot(c,{cx:p,cy:f}),Ot(i,{x1:p,x2:o+440}),Ot(d,{x:(p+o+440)/2}),d.textContent="the lever from bolt to ha\
nd, along the wrench",e.setAttribute("aria-label",`${t.name}. ${l.words}`)}}}function sn(t){return Ct(t,(e,n,o)=>{let r=no(
e),a=(i,d,l,u,p,f)=>gt(i,{min:l,max:u,step:p,value:o[d],words:m=>`${m} ${f}`,onInput:m=>n({[d]:m})}),c={setting:a("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{picture:r.node,controls:Object.values(c).map(i=>i.row),
set(i,d){r.set(i);for(let[l,u]of Object.entries(c))u.set(d[l])}}})}var be=t=>typeof t=="string"?t:t.text;function nn(t,e,n){let o=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
r=a=>be(a.cells[e]??"").trim();return[...t].sort((a,c)=>{let[i,d]=[r(a),r(c)];if(!i||!d)return+!i-+!d;let[l,u]=[Number.parseFloat(
i),Number.parseFloat(d)],p=Number.isNaN(l)||Number.isNaN(u)||l===u?o.compare(i,d):l-u;return n?-p:p})}function Xt(t,e){let n=document.getElementById("jupyter-config-data"),o="/";try{o=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${o}${t}/${e.split("/").map(encodeURIComponent).join("/")}`}function oo(t){let e="";for(let n=0;n<t.length;n+=32768)e+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(e)}
async function on(t,e,n){let o=0;do{let r=new Uint8Array(await n.slice(o,o+524288).arrayBuffer()),a=o===0;o+=524288;let c=o>=
n.size;t.send({type:"file",field:e,name:n.name,data:oo(r),first:a,last:c})}while(o<n.size)}var ro=400;function rn({model:t,el:e}){let n=Z({model:t,el:e},{kind:"desk"}),o=s("p",{class:"ts-said",role:"status"}),r=s(
"div",{class:"ts-desk-body"}),a=s("div",{class:"ts-desk-here","aria-hidden":"true"}),c=s("div",{class:"ts-busy"}),i=s("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),d=t.get("cohort"),l=s("input",{id:nt("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:l.value})});l.value=t.get("by"),n.show(s("div",{class:"\
ts-desk-top"},s("b",{},Tt([d.name,d.college]).join(", ")),s("span",{class:"ts-pair"},s("label",{for:l.id},"At the desk (\
your name, for the trail)"),l)),d.invented?s("p",{class:"ts-hint"},d.invented):null,i,c,n.alert,o,r);let u=new Map,p=new Map,
f=new Map,m=new Map,g=!1,L="",v="",I=!1,P=()=>g||Object.keys(t.get("busy")).length>0,w=(E,_={})=>{P()||n.isLost()||(E!==
"look"&&(o.textContent="",n.alert.textContent="",b()),t.send({type:E,..._}))},S=()=>J(e,"[data-key]");function C(){let E=S().
find(_=>_.dataset.key===L);return E&&r.contains(E)?E.closest("form, section"):null}function b(){let E=C();E?E.append(c,a):
(i.after(c),a.remove());let[_,F]=[o.textContent,n.alert.textContent];a.replaceChildren(...Tt([_&&s("p",{class:"ts-told"},
_),F&&s("p",{class:"ts-trouble"},F)]));for(let q of[o,n.alert])q.classList.toggle("ts-hidden",!!E);return E}function h(){
let E=b(),_=[n.alert,o].find(q=>q.textContent);(E?a.childElementCount?a:null:_)?.scrollIntoView({block:"nearest"})}async function A(E,_,F=""){
if(P()||n.isLost())return;L=_,I=!0,g=!0;try{for(let[ot,z]of m){let[dt]=z.files??[];dt&&await on(t,ot,dt)}}finally{g=!1}let q=[
...p].map(([ot,z])=>[ot,[...z]]);w("do",{act:E,of:F,typed:Object.fromEntries(u),ticked:Object.fromEntries(q)})}function y(E){
let{name:_,of:F}=E,q=nt("field"),ot=E.hint?s("span",{class:"ts-hint",id:`${q}-hint`},E.hint):null,z={id:q,"data-key":`fi\
eld:${_}`,"aria-describedby":ot?.id},dt=s("label",{for:q},E.label);if(!u.has(_)&&F!=="file"&&u.set(_,F==="tick"?E.value===
"yes":E.value),F==="file"){let rt=m.get(_)??s("input",{type:"file",class:"ts-file"});for(let[pt,mt]of Object.entries(z))
mt&&rt.setAttribute(pt,mt);return m.set(_,rt),s("div",{class:"ts-desk-field"},dt,rt,ot)}if(F==="tick"){let U=s("input",{
type:"checkbox",...z});U.checked=u.get(_)===!0,U.addEventListener("change",()=>u.set(_,U.checked));let rt=s("label",{class:"\
ts-option",for:q},U,E.label);return s("div",{class:"ts-desk-field"},rt,ot)}let N=F==="choice"?xt(z,E.options):F==="long"?
s("textarea",{class:"ts-box",rows:"3",maxlength:"2000",...z}):s("input",{class:"ts-box",autocomplete:"off",maxlength:"40\
0",...z});return N.value=String(u.get(_)??""),F==="choice"&&!E.options.some(([U])=>U===u.get(_))&&(N.value=E.options[0]?.[0]??
"",u.set(_,N.value)),N.addEventListener("input",()=>u.set(_,N.value)),s("div",{class:"ts-desk-field"},dt,N,ot)}function $(E){
let _=nt("form"),F=s("div",{class:"ts-doing"}),q=()=>{F.replaceChildren(...E.acts.map(z=>G(z.label,()=>z.sure?ot(z):A(z.
id,`act:${z.id}`),{class:z.first?"ts-button ts-first":"ts-button","data-key":`act:${z.id}`})))},ot=z=>{let dt=nt("sure"),
N=s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":dt},s("p",{id:dt},z.sure),s("div",{class:"ts-d\
oing"},G(`Yes: ${z.label}`,()=>A(z.id,`act:${z.id}`),{"data-key":`act:${z.id}`}),G("No, leave it",()=>{q(),J(F,`[data-ke\
y="act:${z.id}"]`)[0]?.focus()})));F.replaceChildren(N),N.focus()};return q(),s("form",{class:"ts-desk-form","aria-label\
ledby":E.title?_:null,onsubmit:z=>z.preventDefault()},E.title?s("h3",{id:_},E.title):null,E.hint?s("p",{class:"ts-hint"},
E.hint):null,E.fields.length?s("div",{class:"ts-desk-fields"},...E.fields.map(y)):null,E.acts.length?F:null)}function T(E,_){
if(typeof E=="string")return E;let F=E.act?G(E.text,()=>A(E.act,_,E.of),{class:"ts-cell","aria-label":E.label||null,"dat\
a-key":_}):E.text;return s("span",{},E.shape?At(E.shape):null,F)}function B(E){let _=nt("table"),F=s("h3",{id:_},E.title);
if(!E.rows.length)return s("section",{},F,s("p",{},E.empty));let q=p.get(E.id)??new Set,ot=new Set(E.rows.map(({key:tt})=>tt));
for(let tt of q)ot.has(tt)||q.delete(tt);p.set(E.id,q);let z=s("tr",{}),dt=s("tbody",{}),N=E.pick?s("input",{type:"check\
box","aria-label":"all","data-key":`all:${E.id}`}):null,U=()=>{N&&(N.checked=q.size===E.rows.length,N.indeterminate=q.size>
0&&!N.checked)},rt=()=>{let tt=f.get(E.id),D=tt?nn(E.rows,tt.column,tt.down):E.rows;dt.replaceChildren(...D.map(mt)),z.replaceChildren(
...N?[s("th",{class:"ts-tick"},N)]:[],...E.columns.map(pt)),U()},pt=(tt,D)=>{let j=f.get(E.id),Q=j?.column===D,lt=Q?j.down?
"descending":"ascending":null,yt=()=>{f.set(E.id,{column:D,down:Q&&!j.down}),rt(),J(z,`[data-key="${ut}"]`)[0]?.focus()};
if(!tt)return s("td");let ut=`sort:${E.id}:${D}`;return s("th",{scope:"col","aria-sort":lt,class:E.numbers.includes(D)?"\
ts-figure":null},G(tt,yt,{class:"ts-sort","data-key":ut}),Q?At(j.down?"▼":"▲"):null)},mt=tt=>{let D=E.pick?s("input",
{type:"checkbox","aria-label":tt.cells.slice(0,3).map(be).join(" "),"data-key":`row:${E.id}:${tt.key}`}):null;return D&&
(D.checked=q.has(tt.key),D.addEventListener("change",()=>{D.checked?q.add(tt.key):q.delete(tt.key),U()})),s("tr",{},D?s(
"td",{class:"ts-tick"},D):null,...tt.cells.map((j,Q)=>{let lt=!Q&&!!be(j);return s(lt?"th":"td",{scope:lt?"row":null,class:E.
numbers.includes(Q)?"ts-figure":null},T(j,`cell:${E.id}:${tt.key}:${Q}`))}))};return N?.addEventListener("change",()=>{if(q.
clear(),N.checked)for(let{key:tt}of E.rows)q.add(tt);for(let tt of J(dt,"td.ts-tick input"))tt.checked=N.checked}),rt(),
s("section",{},s("div",{class:"ts-desk-caption"},F,G("Save as CSV",()=>t.send({type:"export",table:E.id}),{"aria-label":`\
Save as CSV: ${E.title}`,"data-key":`export:${E.id}`})),s("div",{class:"ts-desk-scroll",role:"region",tabindex:0,"aria-l\
abelledby":_},s("table",{class:"ts-table","aria-labelledby":_},s("thead",{},z),dt)))}function K(E){if(E.kind==="table")return B(
E);if(E.kind==="form")return $(E);if(E.kind==="link"){let _=E.how==="edit"?"lab/tree":E.how,q={class:"ts-link",href:_?Xt(
_,E.path):E.path,target:"_blank"};return s("p",{},s("a",{...q,"data-key":`link:${E.path}`},E.text))}return E.how==="head"?
s("h3",{},E.text):s("p",{class:E.how==="hint"?"ts-hint":null},E.text)}function k(E){n.isLost()||(v=P()?E:"",!v&&(L="",w(
"page",{name:E})))}function x(){let E=t.get("page");i.replaceChildren(...t.get("pages").map(([_,F])=>G(F,()=>k(_),{class:"\
ts-button","aria-current":_===E?"page":null,"data-key":`page:${_}`})))}let O=t.get("cleared"),M=t.get("page");function H(){
let E=S().find(z=>z===document.activeElement)?.dataset.key,_=r.contains(document.activeElement),F=J(r,".ts-desk-scroll").
map(z=>z.scrollTop);(t.get("page")!==M||t.get("cleared")!==O)&&(u=new Map,p=new Map,m=new Map,{page:M,cleared:O}={page:t.
get("page"),cleared:t.get("cleared")}),o.textContent=t.get("said"),n.alert.textContent=t.get("trouble"),x();let q=new Map(
t.get("pages")),ot=s("h2",{tabindex:-1},q.get(M));if(r.replaceChildren(ot,...t.get("parts").map(K)),J(r,".ts-desk-scroll").
forEach((z,dt)=>{z.scrollTop=F[dt]??0}),b(),E||_){let z=S().find(dt=>dt.dataset.key===E);(z??ot).focus({preventScroll:!!z})}
I&&!Object.keys(t.get("busy")).length&&(I=!1,h())}let X;function Y(){let E=t.get("busy");if(r.setAttribute("aria-busy",String(
P())),clearTimeout(X),!Object.keys(E).length){c.replaceChildren(),v&&setTimeout(()=>v&&k(v),0);return}let{doing:_,done:F,
of:q}=E,ot=q?`${_}: ${F} of ${q}`:`${_} …`,z=()=>{c.replaceChildren(s("progress",q?{max:q,value:F,"aria-label":_}:{"ar\
ia-label":_}),s("span",{role:"status"},ot))};c.childElementCount?z():X=window.setTimeout(z,ro)}n.follow("change:turn",()=>setTimeout(
H,0)),n.follow("change:busy",Y),n.follow("change:by",()=>{l.value=t.get("by")}),n.follow("msg:custom",E=>{if(E.type==="t\
rouble"&&h(),E.type!=="save")return;let _=URL.createObjectURL(new Blob([`\uFEFF${E.text}`],{type:"text/csv"}));s("a",{href:_,
download:E.name}).click(),setTimeout(()=>URL.revokeObjectURL(_),1e3)}),H(),Y();let ht=!0,st=new IntersectionObserver(([E])=>{
ht=E.isIntersecting});st.observe(e);let W=0,V=setInterval(()=>{let E=t.get("every");W+=1,E&&W>=E&&ht&&!document.hidden&&
(W=0,w("look"))},1e3);return()=>{clearInterval(V),clearTimeout(X),st.disconnect(),n.close()}}function Ne(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let o=c=>String(c).padStart(2,"0"),r=`${o(
n.getHours())}:${o(n.getMinutes())}`,a=`${n.getFullYear()}-${o(n.getMonth()+1)}-${o(n.getDate())}`;return e.toDateString()===
n.toDateString()?r:`${a} ${r}`}var ao="twoshaft-unsent:";function an(t,e){let n=ao+e,o=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},r=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(o(),a)?o()[a]:void 0,put:(a,c,i,d=new Date)=>r({...o(),[a]:{value:c,
base:i,at:d.toISOString()}}),drop(a){let{[a]:c,...i}=o();c&&r(i)}}}function cn(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var jt=null,io="input, button, select, textarea, summary, a, [tabindex]",ln=t=>[...t.querySelectorAll(io)];function dn(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?jt={form:e,at:ln(t).indexOf(a),from:null}:jt?.form===e&&t.
isConnected&&(jt=null))},o=({target:a})=>{jt?.form===e&&a instanceof HTMLInputElement&&(jt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",o),requestAnimationFrame(
()=>{if(jt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=jt,i=ln(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var co=["print","colour"];function Vt(t){for(let e of co){let n=t?.[e];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${e}`,n):document.documentElement.removeAttribute(`data-ts-${e}`))}}function un(){Vt({print:"",colour:""})}function pn(t,e,n){let o=()=>t.get("bench")??{},r=s("details",{class:"ts-bench"}),a=o().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),d=G("Use these figures",()=>f("yes")),l=G(
"Go back to the drawn figures",()=>f("no")),u=!1,p=a.map(g=>{let L=nt("bench"),v=g.options.length?s("select",{class:"ts-\
box",id:L,"aria-describedby":`${L}-read`},s("option",{value:""},"choose"),...wt(g.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:L,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${L}-hint ${L}-read`}),
I=s("span",{class:"ts-hint",id:`${L}-hint`},g.hint),P=s("p",{class:"ts-read",id:`${L}-read`}),w=g.text,S=()=>{v.value.trim()!==
w.trim()&&(w=v.value,e({type:"bench",name:g.name,value:v.value}))};return v.addEventListener(g.options.length?"change":"\
blur",S),v.addEventListener("keydown",C=>{C.key==="Enter"&&(C.preventDefault(),S())}),{name:g.name,flush:S,input:v,element:s(
"div",{class:"ts-bench-row"},s("label",{for:L},g.prompt),s("div",{class:"ts-line-of"},v,I),P),show(C){if(!C)return;(document.
activeElement!==v||v.value===w)&&(v.value=C.text,w=C.text),v.setAttribute("aria-invalid",String(!!C.error)),P.classList.
toggle("ts-error",!!C.error);let b=C.error?[At("▲")," "]:[],h=C.read&&!C.options.length&&`read as ${C.read}`,A=C.error||
[h,C.origin].filter(Boolean).join(", ");P.replaceChildren(...b,A)}}}),f=g=>{for(let L of p)L.flush();u=!0,e({type:"bench",
name:"in-use",value:g})};r.append(s("summary",{},c),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),s("div",{class:"ts-bench-rows"},...p.map(g=>g.element)),i,s("div",{class:"ts-tools"},d,l));function m(){
let g=o(),L=new Map(g.rows?.map(w=>[w.name,w]));for(let w of p)w.show(L.get(w.name));c.textContent=g.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",l.hidden=!g.wanted,d.hidden=g.used&&!g.stale;let v=g.wanted&&
!g.used?"▲ ":g.used?"● ":"○ ",I=g.used?"in use":g.wanted?`not used; the drawn figures stand. ${g.refused}`:"not us\
ed; the drawn figures stand",P=g.stale?` The tables and choices of this task are still the ones from before. ${g.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${v}${I}${P}`,g.wanted&&
!g.used&&(r.open=!0)}return{element:r,show:m,hear(g){g.type!=="bench-saved"||g.name!=="in-use"||!u||(u=!1,o().stale&&n())},
lost(){for(let g of[d,l,...p.map(L=>L.input)])g.disabled=!0}}}var lo=5e3,uo=2e3,po={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Ie="kept in this browser until it can be\
 saved";function fo(t,e,n,o){let r=Pt(t),a=Ht(t),c=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),d=0,l=null,u={},p=()=>{clearTimeout(l??void 0),l=null},f=w=>{n.put(t.name,w,u.revision??0),m(w)},m=w=>{d+=
1,v("wait",o()?Ie:"saving"),p(),l=window.setTimeout(()=>v("wait",Ie),lo),e({type:"save",name:t.name,value:w,turn:d})},g=r.
make(t,a,f,(w,S)=>{w?(n.put(t.name,S,u.revision??0),v("wait","not saved yet: press Enter or leave the box")):l===null&&(n.
drop(t.name),I(u))}),L=_t(t,a,a.status);r.status==="above"?L.append(i,g.element,c):L.append(g.element,c,i);function v(w,S){
i.className=`ts-status ts-status-${w}`,i.dataset.text!==S&&(i.dataset.text=S,i.replaceChildren(At(po[w]),` ${S}`))}function I(w,S=!1){
if(u=w??{},g.show(u),c.replaceChildren(u.read?`read as ${u.read}`:""),!S)if(u.error){let{error:C,saved:b="",note:h}=u;v(
"unread",`Look again: ${C} Kept as typed, ${Ne(b)}${h?`; ${h}`:""}.`)}else u.saved&&!u.blank?v("saved",`saved ${Ne(u.saved)}${u.
note?`; ${u.note}`:""}`):v("none",r.blank??"not answered yet")}let P=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:L,show(w){l===null&&I(w,P())},saved(w){w.turn===d&&(g.pending?.()||n.drop(t.name),p(),I(w.state))},refused(w){
w.turn===d&&(p(),g.refused(),v("bad",`not saved: ${w.reason}`))},off(){clearTimeout(l??void 0),(l!==null||g.pending?.())&&
v("wait",Ie)},catchUp(){let w=n.get(t.name);w&&(cn(w,u)?(g.show({...u,value:w.value,error:""}),m(w.value)):n.drop(t.name))},
flush:()=>g.flush?.(),summary:()=>({answered:!!u.saved&&!u.blank&&!u.error&&!u.short,unread:!!u.error,trouble:P(),waiting:l!==
null})}}function fn({model:t,el:e}){let n=t.get("fields"),o=t.get("sheet"),r=an(window.localStorage,o),a=!1,c=()=>a||p.isLost(),
i=n.map(S=>fo(S,m,r,c)),d=new Map(i.map(S=>[S.name,S])),l=s("p",{class:"ts-who"}),u=s("p",{class:"ts-total"});Vt(t.get("\
look"));let p=Z({model:t,el:e},{kind:"form",lost(){for(let S of i)S.off();f.lost(),g()},line(S){a=S;for(let C of i)S?C.off():
C.catchUp();g()}}),f=pn(t,p.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(s("div",
{class:"ts-top"},l,u),p.alert,f.element,...i.map(S=>S.element)),e.dataset.task=t.get("task_id");function m(S){p.send(S),
g()}function g(){let S=i.map(B=>B.summary()),C=S.filter(B=>B.answered).length,b=S.filter(B=>B.trouble).length,h=S.some(B=>B.
waiting),A=S.filter(B=>B.unread).length,y=b?`${b} not saved`:h?c()?"the rest kept in this browser":"saving":C&&!A?"all s\
aved":"",$=[`${C} of ${i.length} answered`,A?`${A} cannot be read`:"",y];u.textContent=$.filter(Boolean).join(", ");let T={
task:t.get("task_id"),answered:C,asked:i.length,unread:A};e.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:T}))}function L(){l.textContent=t.get("header");let S=t.get("states");for(let C of i)C.show(S[C.name]);g()}let v=0,
I=()=>{if(document.visibilityState==="hidden")for(let S of i)S.flush();document.visibilityState!=="visible"||Date.now()-
v<uo||(v=Date.now(),p.send({type:"look"}))},P=o?new BroadcastChannel(`twoshaft-saved:${o}`):null;P?.addEventListener("me\
ssage",({data:S})=>{S===t.get("task_id")&&p.send({type:"look"})}),document.addEventListener("visibilitychange",I),e.addEventListener(
"focusin",S=>{S.relatedTarget instanceof Node&&e.contains(S.relatedTarget)||I()}),p.follow("change:states change:header",
L),p.follow("msg:custom",S=>{S.type==="saved"&&(d.get(S.name)?.saved(S),P?.postMessage(t.get("task_id"))),S.type==="refu\
sed"&&d.get(S.name)?.refused(S),g()}),p.follow("msg:custom",f.hear),p.follow("change:bench",f.show),L();for(let S of i)S.
catchUp();g(),f.show(),p.alert.textContent=t.get("notice");let w=dn(e,`${o}/${t.get("task_id")}`);return()=>{w(),P?.close(),
p.close(),document.removeEventListener("visibilitychange",I)}}function ve(t,e,n){let o=`twoshaft-signed-in:${n}`,r=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(o,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(o),e.setItem(r,String(a))},get(){try{
let a=JSON.parse(t.getItem(o)??"null");return!a||!(a.at>Number(e.getItem(r)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var ho={right:"●",other:"◆",unread:"▲"};function go(t){let e=Ht(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),o=null,r=Pt(t).make(t,e,i=>{o=i,r.show({value:o}),c(void 0)},(i,d)=>{i&&(o=d)}),a=_t(t,e,e.status);a.append(r.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let d=i?[At(ho[i.how]),s("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...d)}return{name:t.name,element:a,value(){return r.flush?.(),o},show(i,d){i!==void 0&&(o=i,r.show(
{value:o,saved:"given"})),c(d)},still(i){r.setDisabled(i),a.classList.toggle("ts-given",i)}}}function hn({model:t,el:e}){
let n=Z({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let o=s("p",{class:"ts-title",role:"heading","aria-\
level":"3"}),r=s("p",{class:"ts-lead"}),a=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-asked"}),i=G(t.get("give"),()=>{
let L=Object.fromEntries(u.map(v=>[v.name,v.value()]));n.send({type:"give",values:L})});i.classList.add("ts-first");let d=G(
"",()=>n.send({type:"fresh"})),l=t.get("all")?G(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,o,r,a,c,s("p",{class:"ts-acts"},i,d,l));let u=[],p=()=>{let L=t.get("values"),v=t.get("told");for(let S of u)
S.show(L[S.name],v[S.name]),S.still(v[S.name]!==void 0&&v[S.name].how!=="unread");let I=u.some(({name:S})=>!v[S]||v[S].how===
"unread"),P=document.activeElement===i;if(i.hidden=!I,d.textContent=t.get("fresh"),d.hidden=I||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!P||I)return;let w=J(e,".ts-told")[0];w.tabIndex=-1,w.focus({preventScroll:!0})},f=()=>{(J(c,"input, sel\
ect, [tabindex]")[0]??(d.hidden?i:d)).focus({preventScroll:!0})},m=()=>{u=t.get("fields").map(go),c.replaceChildren(...u.
map(({element:L})=>L)),o.textContent=t.get("title"),o.hidden=!o.textContent,r.textContent=t.get("lead"),r.hidden=!r.textContent,
a.replaceChildren(...Et(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let L=e.contains(
document.activeElement);m(),L&&f()}),n.follow("change:told change:values change:notice change:fresh",p),m();let g=t.get(
"place");if(g){let L=ve(sessionStorage,localStorage,g).get();t.send({type:"who",id:L?.id??"",ticket:L?.ticket??""})}return()=>n.
close()}var gn="twoshaft-mine";var mo={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},wo={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"},ke=(t,e,n)=>s("a",{href:Xt("la\
b/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"ts-link"},e);function mn(t){return s("ul",{class:"\
ts-gaps"},...t.map(({task:e,missing:n,asked:o,unread:r})=>s("li",{},`${e}: `,n===o?"nothing answered":n?`${n} of ${o} mi\
ssing`:"",...r.map(([a,c])=>s("span",{},s("b",{},"cannot be read: "),`“${a}” ${c}`)))))}function bo(t){let e=({name:o})=>Number(
o.split("-").at(-1)),n=[...t].sort((o,r)=>e(o)-e(r)).flatMap(({notebooks:o})=>o.map(r=>[r.split("/").pop()??"",r]));localStorage.
setItem(gn,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(new Event("storage"))}function wn({model:t,el:e}){
let n="",o=ve(sessionStorage,localStorage,t.get("place")),r=Z({model:t,el:e},{kind:"start",lost:()=>{}}),a=s("div",{}),c=s(
"p",{class:"ts-said",role:"status"});r.show(r.alert,c,a);let i=(k,x={})=>{a.getAttribute("aria-busy")==="true"||r.isLost()||
(x.quietly||(a.setAttribute("aria-busy","true"),c.textContent="One moment.",r.alert.textContent=""),t.send({type:k,...x}))},
d=(k,x,O,M)=>s("button",{type:"button",class:M?"ts-button ts-first":"ts-button","data-key":x,onclick:O},k);function l(){
let k=nt("who"),x=nt("word"),O=s("select",{id:k,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choo\
se your name"),...t.get("people").map(([H,X])=>s("option",{value:H,selected:H===n},X)));O.addEventListener("change",()=>{
n=O.value});let M=s("input",{id:x,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",
maxlength:"80","data-key":"word"});return s("form",{class:"ts-sign-in",onsubmit:H=>{H.preventDefault(),i("sign-in",{name:O.
value,word:M.value})}},s("h2",{},"Who is working?"),s("div",{class:"ts-pair"},s("label",{for:k},"Your name"),O),s("div",
{class:"ts-pair"},s("label",{for:x},"Sign-in word from your slip"),M),s("button",{type:"submit",class:"ts-button ts-firs\
t","data-key":"sign-in"},"Sign in"),s("p",{class:"ts-hint"},t.get("kept")))}function u(k,x){let O=st=>`${st}:${k.name}`,
M=s("div",{class:"ts-doing"});for(let st of k.feedback.slice(0,1))M.append(s("a",{href:Xt("files",st),target:"_blank",class:"\
ts-link","data-key":O("feedback")},"Read feedback"));for(let st of k.notebooks){let W=k.notebooks.length===1?"Open":`Ope\
n ${st.split("/").pop()}`;M.append(ke(st,W,O(`open ${st}`)))}k.can_get&&M.append(d(k.notebooks.length?"Get again":"Get",
O("get"),()=>i("get",{name:k.name}),!k.notebooks.length)),k.can_hand_in&&M.append(d(k.receipt?"Hand in again":"Hand in",
O("hand in"),()=>i("hand-in",{name:k.name})));for(let st of M.children)st.setAttribute("aria-label",`${st.textContent}: ${k.
title}`);let H=t.get("asking")===k.name,X=k.receipt||k.unread>0,Y=s("tr",{},s("th",{scope:"row"},k.title),s("td",{},k.due||
"no date",k.overdue?s("span",{class:"ts-small-line"},"date passed"):null),s("td",{},s("span",{class:"ts-shape","aria-hid\
den":"true"},mo[k.state]||""),s("b",{},wo[k.state]||k.state),s("span",{class:"ts-small-line"},k.detail),x?s("span",{class:"\
ts-small-line"},`Mark: ${x}`):null),s("td",{},M));if(H)return[Y,s("tr",{},s("td",{colspan:4},f(k)))];if(!X||!k.gaps.length)
return[Y];let ht=s("td",{colspan:4},s("b",{},p(k)),mn(k.gaps));return[Y,s("tr",{},ht)]}let p=({left:k,unread:x})=>Tt([k?
`${k} ${k===1?"answer is":"answers are"} missing`:null,x?`${x} cannot be read`:null]).join(", ");function f(k){let x=nt(
"question"),O=s("div",{class:"ts-doing"});for(let H of k.notebooks)O.append(ke(H,"Go on with it",`go on:${k.name}`));let M=p(
k);return O.append(d(M?"It is my own work: hand in as it is":"It is my own work: hand in",`hand in anyway:${k.name}`,()=>i(
"hand-in",{name:k.name,own:!0}),!M)),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":x,"data-key":"\
question"},s("p",{id:x},s("b",{},`${k.title}: not handed in yet.${M?` ${M}.`:""}`),M?" An answer that is missing or cann\
ot be read earns nothing.":null),M?mn(k.gaps):null,s("p",{},"By handing in you state: ",s("b",{},t.get("statement"))),O)}
let m=new Set,g={met:"✓",enough:"◐","not yet":"○"};function L(k,x){let O=k.entries.map(Y=>x.find(ht=>ht.name===Y)).
filter(Y=>Y!==void 0),M=k.lesson?ke(k.lesson,`Lesson ${k.title}`,`lesson:${k.lesson}`):s("span",{class:"ts-small-line"},
"no lesson here"),H=s("details",{open:m.has(k.module)},s("summary",{"data-key":`outcomes:${k.module}`},`Outcomes: ${k.count||
"none"}`),s("ul",{},...k.outcomes.map(([Y,ht,st,W])=>s("li",{},s("span",{class:"ts-shape","aria-hidden":"true"},g[Y]||""),
s("b",{},`${Y}${st&&Y==="enough"?`, ${st}`:""}: `),ht,st&&Y==="not yet"?`. Still missing: ${st}`:"",W?` (${W})`:""))));H.
addEventListener("toggle",()=>{H.open?m.add(k.module):m.delete(k.module)});let X=O.flatMap(Y=>u(Y,k.marks[Y.name]));return s(
"tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},k.title,s("span",{class:"ts-assigned"},O.length?
"assigned":"not assigned"))),...X,s("tr",{},s("td",{colspan:4},M,s("p",{class:"ts-next"},s("b",{},"Next: "),k.next),H)))}
function v(){let k=t.get("me"),x=t.get("entries"),O=s("table",{class:"ts-table"},s("thead",{},s("tr",{},...["Assignment",
"Due","State","What you can do"].map(M=>s("th",{scope:"col"},M)))),...t.get("modules").map(M=>L(M,x)));return s("section",
{},s("div",{class:"ts-me"},s("h2",{},`Working as ${k.name} (${k.id})`),k.ticket?d("Not you? Sign out","sign-out",()=>{i(
"sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),x.length?null:s("p",{},"Nothing is as\
signed yet."),O,d("Look again","look",()=>i("look")))}function I(){let k=!!t.get("me").id,x=t.get("modules").map(H=>H.lesson),
M=t.get("lessons").filter(([H])=>!k||!x.includes(H));return M.length?s("section",{},s("h2",{},k?"To look things up":"Les\
sons"),s("ul",{class:"ts-lessons"},...M.map(([H,X])=>s("li",{},ke(H,X,`lesson:${H}`))))):null}let P=!1,w=t.get("me").id?
null:o.get(),S=w!==null;function C(){let k=t.get("me");k.id?Vt(t.get("look")):un(),k.id?o.keep(k):(P||w&&!S)&&o.drop(),P=
!!k.id,bo(k.id?t.get("entries"):[])}let b=0,h="",A=()=>J(a,"[data-key]"),y=()=>a.querySelector("input[data-key=word]");function $(){
let x=A().find(E=>E===document.activeElement)?.dataset.key;a.removeAttribute("aria-busy");let O=!!t.get("me").id;c.textContent=
t.get("said"),r.alert.textContent=t.get("trouble");let M=y()?.value,H=S?s("p",{},"One moment."):l();a.replaceChildren(...Tt(
[O?v():H,I()]));let X=y();X&&M&&(X.value=M);let Y=h;if(h=t.get("asking"),h&&h!==Y&&A().find(E=>E.dataset.key==="question")?.
focus(),!x||h&&h!==Y)return;let ht=A().find(E=>E.dataset.key===x),st=x.split(":")[1],W=x.startsWith("hand in anyway")?`h\
and in:${st}`:`:${st}`,V=A().find(E=>st&&E.dataset.key?.endsWith(W));(ht??V??J(a,"a, button, select")[0])?.focus()}let T=()=>{
clearTimeout(b),b=setTimeout(()=>{S=!1,C(),$()},0)};t.on("change",T),C(),$(),w&&t.send({type:"resume",name:w.id,ticket:w.
ticket});let B=()=>{!document.hidden&&t.get("me").id&&i("look",{quietly:!0})},K=new IntersectionObserver(([k])=>{k.isIntersecting&&
B()});return K.observe(e),document.addEventListener("visibilitychange",B),()=>{clearTimeout(b),t.off("change",T),K.disconnect(),
document.removeEventListener("visibilitychange",B),r.close()}}var vo={bench:ps,build:ms,cord:vs,depth:ks,desk:rn,exploded:Es,face:As,fault_board:Os,form:fn,gate:Ns,gears:Is,hazards:Bs,
lifting:Ds,micrometer:Ps,own_checks:Rs,press:js,question:hn,rules:Hs,runout:_s,sealant:Gs,seat:Ys,shims:Xs,sketch:Vs,start:wn,
thread:Js,unit_section:Zs,whole_build:en,wrench:sn};export{vo as screens};
