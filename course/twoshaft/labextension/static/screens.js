var An="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...It(n)),r}function R(t,e={},...n){let r=document.createElementNS(An,t);return Tt(r,e),r.append(...n),
r}function Tt(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function Y(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function yt(t,e){return s("select",{class:"ts-box",...t},...bt(
e))}function At(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function Mt(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function It(t){return t.filter(e=>e!=null&&e!==!1)}var qe=0;function ot(t){return qe+=1,`two\
shaft-${t}-${qe}-${Math.random().toString(36).slice(2,7)}`}function Ht(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function Q(t,e){return[...t.querySelectorAll(e)]}function wt(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function xt(t){return t.ctrlKey||t.metaKey||t.altKey}function Qt(t){let e=Q(t,"button, input, \
select");for(let n of e)n.disabled=!0}function ze(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function te(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function st(t,e,n=t){return Y(t,e,{"aria-label":n})}
function bt(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function Bt(t){return t.map(e=>s("li",{},e))}var Ct=(t,e)=>s(
"div",{class:"ts-beside"},s("div",{},...It(t)),s("div",{},...It(e)));var Le=new Map;function vt(t,e){if(Le.has(t))throw new Error(`the answer kind ${t} is registered twice`);Le.set(t,e)}function Pt(t){
let e=Le.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Wt(t){let e=ot(
t.kind);return{prompt:`${e}-prompt`,control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function _t(t,e,n){
let{prompt:r}=Pt(t),o={class:"ts-prompt",id:e.prompt};if(r==="legend")return s("fieldset",{class:"ts-field","aria-descri\
bedby":n},s("legend",o,t.prompt));let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s(
"div",{class:"ts-field"},a)}function ee(t,e,n,r){let a=t.options.map(([c,i])=>{let u={"aria-describedby":e.status},l=s("input",{type:n,name:e.control,
value:c,...u});return{key:c,input:l,row:s("label",{class:"ts-option"},l,s("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:u,input:l}of a)l.checked=i.includes(u)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}vt("choice",{prompt:"legend",make:(t,e,n)=>ee(t,e,"radio",r=>n(r[0]))});vt("choices",{prompt:"legend",make:(t,e,n)=>ee(t,e,"checkbox",n)});function se(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function ne(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}vt("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([c,i],u)=>{let l=`${e.control}-${u}`,d=s("labe\
l",{class:"ts-each-line",for:l},i),p=yt({id:l,"aria-describedby":e.status},[["","choose"],...o]);return{key:c,box:p,row:s(
"li",{},d,p)}});for(let{box:c}of a)c.addEventListener("change",()=>{n(se(a.map(({key:i,box:u})=>[i,u.value])))});return{
element:s("ol",{class:"ts-each"},...a.map(({row:c})=>c)),show(c){let i=ne(c.value);for(let{key:u,box:l}of a)l.value=i.get(
u)??""},setDisabled(c){for(let{box:i}of a)i.disabled=c},refused(){}}}});function Ce(t){let[e="",...n]=t.split(" "),r=e==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:e,size:r,
side:o,place:a[0],points:null};let c=a.map(i=>{let[u,l]=i.split(",").map(Number);return[u,l]});return{hand:e,size:r,side:o,
place:"",points:c}}function Ee(t,{side:e,place:n,points:r}){return r||(e==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[e]??[])}function Ae(t,e){let{hand:n,size:r,side:o,place:a}=Ce(e),c=[...t.stretches,...t.
holes].find(u=>u.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[o]??""}`}
function Me(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function Ge(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function Ye(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function Xe(t,[e,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-e,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var Mn=.4;function Ve(t,e){let n=Mn,r=oe(t,n);for(;r.
length>e;)n*=1.5,r=oe(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function oe(t,e){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=On(n,r,t[c]);i>o&&([o,a]=[i,c])}return o<=
e?[n,r]:[...oe(t.slice(0,a+1),e).slice(0,-1),...oe(t.slice(a),e)]}function On(t,e,n){let[r,o]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var re=14,Tn=3,In=.5,Nn=["middle","inside","outside"],ae="round ";function Bn(t,e){let n=t.outline.map(([W])=>W),r=t.outline.
map(([,W])=>W),[o,a]=[Math.min(...n)-re,Math.max(...n)+re],[c,i]=[Math.min(...r)-re,Math.max(...r)+re],u=a-o,l=i-c,d=([W,
X])=>`${(W-o).toFixed(1)} ${(i-X).toFixed(1)}`,p=(W,X)=>`M${W.map(d).join("L")}${X?"Z":""}`,f=ot("face"),g=u/100,h=2*g,L=(W,X)=>R(
"pattern",{id:`${f}-${W}`,width:h,height:h,patternUnits:"userSpaceOnUse"},R("path",{d:X,class:"tsp-hatch","stroke-width":g/
4})),x=R("defs",{},L("oil",`M0 ${h}L${h} 0`),L("dirt",`M0 ${h}L${h} 0M0 0L${h} ${h}`)),M=t.cavities.map(([,W])=>p(W,!0)).
join(""),B=t.islands.map(W=>p(W,!0)).join(""),b=p(t.outline,!0)+M,$=R("g"),D=R("g"),C=R("g"),A=R("g"),m=R("path",{class:"\
tsp-live",d:""}),S=R("path",{class:"tsp-chosen",d:""}),k=R("path",{class:"tsp-land",d:b,"fill-rule":"evenodd"}),O=R("pat\
h",{class:"tsp-edge",d:b+B,"stroke-width":g/2.5}),N=([W,X],v,H="middle")=>{let K={x:W-o,y:i-X,"font-size":2.5*g,"text-an\
chor":H};return R("text",{class:"tsp-text",...K},v)},F=[(o+a)/2,(c+i)/2],Z=(W,X)=>{let v=te(W,F)||1;return[W[0]+X*(F[0]-
W[0])/v,W[1]+X*(F[1]-W[1])/v]};for(let{x:W,y:X,d:v,leads:H,name:K}of t.holes){let q={cx:W-o,cy:i-X,"stroke-width":g/4},nt=H===
"blind"?"tsp-hole tsp-blind":"tsp-hole";C.append(R("circle",{...q,r:v/2,class:nt})),H==="to the outside"&&C.append(R("ci\
rcle",{...q,r:v/3,class:"tsp-hole"}));let[U,dt]=Z([W,X],-(v/2+4.4*g));C.append(N([U,dt-.8*g],K.replace("bolt ","")))}for(let W of t.
guides){let[X,v]=[W.x-o,i-W.y],H=`M${X-g} ${v}h${h}M${X} ${v-g}v${h}`;C.append(R("path",{class:"tsp-guide",d:H,"stroke-w\
idth":g/2}));let K={"stroke-width":g/5,"stroke-dasharray":`${g} ${g}`};C.append(R("circle",{cx:X,cy:v,r:W.reach,class:"t\
sp-reach",...K}));let q=Z([W.x,W.y],W.reach+h),nt=(q[0]-W.x)/(W.reach+h);C.append(N(q,W.name,nt>.5?"start":nt<-.5?"end":
"middle"))}for(let{word:W,points:X,width:v}of t.spots){let[H]=W.split(" "),[K,q]=[X[0],X[X.length-1]],nt=te(K,q)||1,[U,dt]=[
-(q[1]-K[1])/nt*v/2,(q[0]-K[0])/nt*v/2],T=[[K[0]+U,K[1]+dt],[q[0]+U,q[1]+dt],[q[0]-U,q[1]-dt],[K[0]-U,K[1]-dt]],G=`url(#${f}\
-${H})`;$.append(R("path",{d:p(T,!0),fill:G,class:"tsp-spot","stroke-width":g/4}));let rt=N(Z([(K[0]+q[0])/2,(K[1]+q[1])/
2],9*g),H);rt.classList.add("tsp-spot-word"),C.append(rt)}let y=[100,50,20,10].find(W=>W<u/4)??10,E=`M${g} ${l-g}v${-g}v${g/
2}h${y}v${-g/2}v${g}`,w={x:y+h,y:l-g,"font-size":2.5*g};A.append(R("path",{class:"tsp-edge",d:E,"stroke-width":g/4}),R("\
text",{class:"tsp-text",...w},`${y} mm`));let P=`0 0 ${u.toFixed(1)} ${l.toFixed(1)}`,_=R("svg",{viewBox:P,class:"tsp-fa\
ce",role:"img","aria-label":e},x,k,$,D,O,C,S,m,A),z=`max-width: ${(25*u/l).toFixed(1)}rem`;return{frame:s("div",{class:"\
ts-pad-face",style:z},_),svg:_,over:A,live:m,chosen:S,land:k,path:p,unit:g,box:{left:o,right:a,low:c,high:i,width:u,height:l},
place({clientX:W,clientY:X}){let v=_.getBoundingClientRect(),H=Math.min(v.width/u,v.height/l);return[o+(W-v.left-(v.width-
H*u)/2)/H,i-(X-v.top-(v.height-H*l)/2)/H]},strokes(W){D.replaceChildren(...W.map(pt))}};function pt(W){let X=Ce(W),v=Ee(
t,X),H=Me(t,X.hand,Math.max(X.size,g/2)),K=v.length>1?p(v,X.side==="round"):v.length?`${p(v)}h0.01`:"",q=R("path",{d:K,class:`\
tsp-stroke tsp-${X.hand}`,"stroke-width":H});if(X.hand!=="film")return q;let nt=Math.min(8,Math.max(.6,40*X.size)),U={"s\
troke-width":g/3,"stroke-dasharray":`${nt} ${nt}`};return R("g",{},q,R("path",{d:K,class:"tsp-grain",...U}))}}function ie({
face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=Bn(t,e),c=s("p",{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"\
ts-read ts-pad-trouble",role:"status"}),u=(E,w)=>s("span",{class:"ts-pair"},s("label",{for:w.id},E),w),l=yt({id:ot("hand")},
Object.entries(t.hands)),d=s("input",{class:"ts-box ts-size",id:ot("size"),type:"text",inputmode:"decimal",autocomplete:"\
off",maxlength:"12"}),p=s("label",{for:d.id},"thickness"),f=yt({id:ot("place")},t.stretches.map(({id:E,name:w})=>[E,w]));
f.append(s("optgroup",{label:"Round a hole"},...t.holes.map(({id:E,name:w})=>s("option",{value:`${ae}${E}`},`round ${w}`))));
let g=yt({id:ot("side")},Nn.map(E=>[E,t.sides[E]])),h=Y("Lay it here",()=>A([C(f.value)])),L=Y("Lay it on every stretch",
()=>A(t.stretches.map(({id:E})=>C(E)))),x=Y("Take back the last pass",()=>{b&&r(b-1,!0)}),M=Y("Clear the face",o),B={film:"",
bead:""},b=0,$=!1;function D(){if(l.value==="wipe")return"";let[E,w]=t.sizes[l.value],P=Ge(d.value);if(P>=E&&P<=w)return d.
removeAttribute("aria-invalid"),` ${Number(P.toFixed(3))}`;let _=l.value==="film"?"the thickness of the film":"the diame\
ter of the bead";return i.textContent=d.value.trim()?`Read “${d.value}”: give ${_} from ${E} to ${w} mm.`:`First giv\
e ${_} in mm.`,d.setAttribute("aria-invalid","true"),d.focus(),null}function C(E){let w=D();if(w===null)return null;let P=E.
startsWith(ae)?E:`${g.value} ${E}`;return`${l.value}${w} ${P}`}function A(E){let w=E.filter(P=>P!==null);if(!($||w.length<
E.length)){if(b+w.length>t.most){i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent=
"",c.textContent=w.length===1?`Laid: ${Ae(t,w[0])}`:`Laid on ${w.length} stretches`,n(w)}}function m(){let E=l.value==="\
wipe";p.textContent=l.value==="bead"?"diameter":"thickness",d.disabled=$||E,d.value=E?"":B[l.value],d.placeholder=E?"":"\
mm",h.textContent=E?"Wipe here":"Lay it here",L.textContent=E?"Wipe every stretch":"Lay it on every stretch",i.textContent=
"",S()}function S(){let E=f.value.startsWith(ae);g.disabled=$||E;let w=Ee(t,E?{side:"round",place:f.value.slice(ae.length)}:
{side:g.value,place:f.value});a.chosen.setAttribute("d",w.length?a.path(w,E):""),a.chosen.setAttribute("stroke-width",String(
a.unit/2))}l.addEventListener("change",m),d.addEventListener("input",()=>{B[l.value]=d.value}),f.addEventListener("chang\
e",S),g.addEventListener("change",S),d.addEventListener("keydown",E=>{E.key==="Enter"&&(E.preventDefault(),h.click())});
let k=null;a.svg.addEventListener("pointerdown",E=>{if($||E.button>0)return;k=[a.place(E)],a.svg.setPointerCapture(E.pointerId);
let w=Math.max(1,Number(B.bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(Me(t,l.value,w)))}),a.svg.
addEventListener("pointermove",E=>{if(!k)return;let w=a.place(E);te(w,k[k.length-1])<In||(k.push(w),a.live.setAttribute(
"d",a.path(k)))});let O=E=>{if(!k)return;let w=k;if(k=null,a.live.setAttribute("d",""),E.type==="pointercancel")return;if(Ye(
w)<Tn){f.value=Xe(t,w[0]),S();return}let P=D();if(P===null)return;let _=Ve(w,t.points).map(z=>z.join(","));A([`${l.value}${P}\
 at ${_.join(" ")}`])};a.svg.addEventListener("pointerup",O),a.svg.addEventListener("pointercancel",O);let N=s("ol",{class:"\
ts-passes","aria-label":"Passes, in the order they were done"}),F=s("p",{class:"ts-hint"},"Nothing is laid yet."),Z=s("d\
iv",{class:"ts-pad-tools"},s("div",{class:"ts-tools"},u("tool",l),s("span",{class:"ts-pair"},p,d)),s("div",{class:"ts-to\
ols"},u("where",f),u("runs",g)),s("div",{class:"ts-tools"},h,L,x,M),i,c),y=()=>Q(N,"button");return m(),{drawing:a,tools:Z,
list:N,empty:F,frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,Z,s("div",{class:"ts-pad-list"},F,N)),show(E,w=[]){
b=E.length,a.strokes(E),F.hidden=b>0;let P=y().findIndex(_=>_.matches(":focus"));N.replaceChildren(...E.map((_,z)=>s("li",
{},s("span",{},`${Ae(t,_)}${w[z]?`, ${w[z]}`:""} `),Y("take out",()=>r(z,!1),{class:"ts-button ts-remove",disabled:$,"ar\
ia-label":`Take out pass ${z+1}`})))),P>=0&&(y()[Math.min(P,b-1)]??h).focus()},setDisabled(E){$=E;for(let w of[l,f,h,L,x,
M,...y()])w.disabled=E;d.disabled=E||l.value==="wipe",S()}}}vt("film",{prompt:"words",make(t,e,n){let r=[],o=c=>{r=c,a.show(r),n(r)},a=ie({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>o([...r,...c]),onRemove:c=>o(r.filter((i,u)=>u!==c)),onClear:()=>o([])});
return{element:a.element,show(c){r=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function Je(t,{send:e,typing:n,said:r=a=>String(a??""),wrong:o=a=>!!a.error}){let a=s("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||a.value.trim()!==c.trim(),u=()=>{i()&&(c=a.value,e(a.value))};return a.
addEventListener("blur",u),a.addEventListener("keydown",l=>{let d=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!==
"Enter"&&!d||(l.preventDefault(),u())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:u,pending:i,refused(){
c=null},show(l){a.setAttribute("aria-invalid",String(o(l))),!(document.activeElement===a&&a.value!==c)&&(c=r(l.value),a.
value=c)}}}function Ze(t,e){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${e}`.trim()}function Qe(t,e,n,r){let o=yt({"aria-label":"Choose the unit","aria-describedby":r},[["","unit"],...e.map(a=>[a,a])]);return o.
addEventListener("change",()=>{o.value&&(t.value=Ze(t.value,o.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener(
"input",()=>{o.value=""}),o}vt("number",{prompt:"label",make(t,e,n,r){let o=t.units,{box:a,flush:c,pending:i,refused:u,show:l}=Je(e,{send:n,typing:r}),
d=s("span",{class:"ts-hint",id:e.hint},t.hint),p=o.length?Qe(a,o,c,e.prompt):null;return{element:s("div",{class:"ts-line\
-of"},a,p,d),show:l,setDisabled(f){a.disabled=f,p&&(p.disabled=f)},refused:u,flush:c,pending:i}}});function es(t,e){let r=[...new Set([t??[]].flat())].filter(o=>e.includes(String(o))).map(String);return[...r,...e.filter(
o=>!r.includes(o))]}var Ft=(t,e)=>t.join(`
`)===e.join(`
`),ts=t=>`#${t.keys[0]}`,ce=class{constructor(e,n){this.labels=new Map(e.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
r,,o]of e)o&&this.stages.set(r,o);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let n of this.order){let r=this.stages.get(n)??null,o=e.at(-1);o&&r!==null&&o.stage===r?o.keys.push(n):e.push({stage:r,
keys:[n]})}return e}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let e=[];for(let n of this.runs()){
let[r]=n.keys;if(n.keys.length<2){e.push({id:r,key:r,level:1});continue}if(e.push({id:ts(n),run:n,level:1}),!this.closed.
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
{target:String(r.at(-1)),side:"after"}:{target:r[0],side:"before"}}take(e){if(Ft(e,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,n){let[r]=n.keys,o=this.rows().find(a=>a.run?.
keys.includes(r));this.current=o?o.id:r}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,n){let r=e.pop();return r?(n.push(this.order),this.order=
r,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||Ft(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,n){this.order=[...e],n&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let n=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((r,o)=>r-o);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(e,n){
let r=e.run?e.run.stage:this.stages.get(e.key),o=e.run?e.run.keys[0]:e.key,a=this.runs().find(c=>c.keys.includes(o));return!r||
!a||a.keys.length<2?null:(n?this.closed.add(r):this.closed.delete(r),n&&(this.current=ts(a)),r)}sought(e){let n=this.rows(),
r=n.findIndex(c=>c.id===this.current),o=e.length>1?r:r+1,a=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...n.slice(o),...n.slice(0,o)].find(c=>a(c).startsWith(e))}};var Dn=12,Pn=700,Rn=5,ss=32,jn=8;function le({label:t,steps:e,order:n,onChange:r}){let o=new ce(e,n),{staged:a}=o,c=!1,i={},
u=!1,l=new Map,d=s("div",{"aria-live":"assertive",class:"ts-hidden"}),p=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),f=Y("Up",()=>_(-1),{"aria-label":"Move the chosen step up"}),g=Y("Down",
()=>_(1),{"aria-label":"Move the chosen step down"}),h=Y("Undo",()=>o.undo()&&pt("Undone")),L=Y("Redo",()=>o.redo()&&pt(
"Done again")),x=Y("Choose several",()=>K(!c),{"aria-pressed":"false"}),M=Y("Gather stages",()=>P(o.gathered(),"Steps of\
 one stage now stand together")),B=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:I=>{I.key==="Enter"&&z()}}),b=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),$=s("span",{class:"ts-chosen"}),D=Y("Move",z,{"aria-label":"Move to this position"}),C=Y(
"Move",V,{"aria-label":"Move before this step"}),A=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen \
step"},f,g,h,L,x,a?M:null),m=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",B,D),s("span",{class:"\
ts-pair"},"or before ",b,C)),S="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),k=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},S),m),O=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),A,$,p,k,d);function N(I){d.
textContent=I}function F(I=""){N(`${o.unitName()}${I}, ${o.where()}`)}function Z(I){let j=l.get(I.id);if(j)return j;let tt=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return tt.dataset.row=I.id,l.set(I.id,tt),tt}function y(I=!1){let j=o.
settle(),tt=new Set(j.map(at=>at.id));for(let[at,St]of l)tt.has(at)||(St.remove(),l.delete(at));let lt=o.unit(),kt=new Set(
lt),ut=p.firstElementChild;for(let at of j){let St=Z(at);St===ut?ut=ut.nextElementSibling:p.insertBefore(St,ut),E(St,at,
kt)}B.value=String(o.order.indexOf(lt[0])+1);let $t=[...o.order.entries()].filter(([,at])=>!kt.has(at));b.replaceChildren(
...$t.map(([at,St])=>s("option",{value:St},`${at+1}  ${o.label(St)}`))),$.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,
f.disabled=u||o.isFirst,g.disabled=u||o.isLast,h.disabled=u||o.past.length===0,L.disabled=u||o.future.length===0;for(let at of[
x,M,B,b,D,C])at.disabled=u;if(p.setAttribute("aria-disabled",String(u)),p.classList.toggle("ts-long",o.order.length>Dn),
I){let at=l.get(o.current);at?.focus({preventScroll:!0}),at?.scrollIntoView({block:"nearest"})}}function E(I,j,tt){let lt=j.
id===o.current,kt=j.run?!1:o.block.has(j.key),ut=o.held!==null&&(j.run?lt:tt.has(j.key)),$t=o.order.indexOf(j.run?j.run.
keys[0]:j.key),at=j.run?j.run.keys.map(Ot=>i[Ot]?.length??0):i[j.key],St=j.run?o.closed.has(String(j.run.stage)):!1,He=JSON.
stringify([$t,j.level,lt,kt,ut,at,j.run&&[j.run.keys.length,St]]);if(I.dataset.looks===He)return;I.dataset.looks=He,I.tabIndex=
lt?0:-1,I.setAttribute("aria-selected",String(kt)),I.classList.toggle("ts-current",lt),I.classList.toggle("ts-inblock",kt),
I.classList.toggle("ts-held",ut),I.classList.toggle("ts-level2",j.level===2),a&&I.setAttribute("aria-level",String(j.level));
let We=ut?" picked up":kt?" in block":"",_e=We?s("span",{class:"ts-state"},We):"",Fe=Ot=>s("span",{class:"ts-number","ar\
ia-hidden":"true"},Ot);if(j.run){let{keys:Ot,stage:Cn}=j.run;I.setAttribute("aria-expanded",String(!St));let Ue=St?Ot.filter(
En=>i[En]?.length).length:0;I.replaceChildren(Fe(`${$t+1}–${$t+Ot.length}`),s("span",{class:"ts-fold","aria-hidden":"t\
rue"},St?"▸":"▾"),s("span",{class:"ts-what"},s("b",{},Cn),` ${Ot.length} steps`,Ue?` – ${Ue} with a remark`:"",_e));
return}let Ke=(i[j.key]??[]).map(Ot=>s("span",{class:`ts-note ts-note-${Ot.kind}`},Mt(Ot.shape??""),s("b",{},Ot.word),` ${Ot.
text}`)),Ln=a&&j.level===1;I.classList.toggle("ts-troubled",Ke.length>0),I.replaceChildren(Fe(String($t+1)),s("span",{class:"\
ts-grip","aria-hidden":"true"},"⠿"),s("span",{class:"ts-what"},o.label(j.key),Ln?s("span",{class:"ts-stage"},` ${o.stages.
get(j.key)??""}`):"",_e,...Ke))}let w=()=>r([...o.order]);function P(I,j){if(!o.take(I)){N(`${o.unitName()} stays at ${o.
where()}`);return}y(!0),j?N(j):F(),o.held===null&&w()}function _(I){u||P(o.shifted(I))}function z(){if(u)return;let I=Number.
parseInt(B.value,10),j=o.order.length;I>=1&&I<=j?P(o.atPosition(I)):(N(`Type a position from 1 to ${j}`),$.textContent=`\
Type a position from 1 to ${j}.`)}function V(){!u&&b.value&&P(o.beside(b.value,"before"))}function pt(I){y(),N(`${I}. ${o.
unitName()}, ${o.where()}`),w()}function W(){o.pickUp(),y(!0),F(" picked up")}function X(){o.putDown()&&w(),y(!0),F(" pu\
t down")}function v(){o.putDown()&&w(),y()}function H(){o.putBack(),y(!0),F(" put back")}function K(I){c=I,x.setAttribute(
"aria-pressed",String(I)),I||(o.block=new Set),y(),N(I?"Choose the steps of a block":"Block let go")}function q(I){o.toggleBlock(
I);let j=o.block.has(I)?"in the block":"out of the block";N(`${o.label(I)} ${j}, ${o.block.size} in it`)}function nt(I,j){
let tt=o.fold(I,j);tt&&(y(!0),N(`${tt} ${j?"closed":"open"}`))}p.addEventListener("keydown",I=>{if(xt(I))return;let j=o.
rows(),tt=j.findIndex(St=>St.id===o.current),lt=St=>{o.current=j[Math.max(0,Math.min(j.length-1,St))].id,y(!0)},kt=j[tt],
{key:ut}=I,$t=ut==="ArrowUp"?-1:ut==="ArrowDown"?1:null,at=o.held!==null;if($t&&(I.shiftKey||at))_($t);else if($t)lt(tt+
$t);else if(at&&ut==="Escape")H();else if(ut===" ")u||(at?X:W)();else if(at&&ut==="Enter")X();else if(ut==="Enter"&&!kt.
run)u||(q(kt.key),y(!0));else if(ut==="Home"&&!at)lt(0);else if(ut==="End"&&!at)lt(j.length-1);else if(a&&ut==="ArrowLef\
t")nt(kt,!0);else if(a&&ut==="ArrowRight")nt(kt,!1);else if(ut.length===1&&!at)T(ut);else return;I.preventDefault()});let U="",
dt;function T(I){U+=I.toLowerCase(),clearTimeout(dt),dt=window.setTimeout(()=>{U=""},Pn);let j=o.sought(U);j&&(o.current=
j.id,y(!0))}p.addEventListener("focusout",({relatedTarget:I})=>{o.held!==null&&I instanceof Node&&!p.contains(I)&&v()});
let G=null;p.addEventListener("pointerdown",I=>{let j=o.row(wt(I,".ts-step")?.dataset.row??"");if(!j||I.button!==0)return;
if(j.run&&wt(I,".ts-fold")){nt(j,!o.closed.has(String(j.run.stage))),I.preventDefault();return}let tt=wt(I,".ts-grip, .t\
s-number"),lt=I.ctrlKey||I.metaKey;o.held!==null&&v(),!j.run&&!u&&(I.shiftKey?o.blockTo(j.key):(lt||c)&&!tt&&q(j.key)),o.
current=j.id,y(!0),I.preventDefault(),!(u||I.shiftKey||lt)&&(I.pointerType!=="mouse"&&!tt||(G={x:I.clientX,y:I.clientY,id:I.
pointerId,carried:null},p.setPointerCapture(I.pointerId)))}),p.addEventListener("pointermove",I=>{if(!G||I.pointerId!==G.
id)return;let{clientX:j,clientY:tt}=I;if(!G.carried){if(Math.hypot(j-G.x,tt-G.y)<Rn)return;G.carried=rt()}Object.assign(
G.carried,{x:j,y:tt}),ft(G.carried)});function rt(){let I=s("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},o.unit().
length>1?o.unitName():o.label(o.unit()[0]));document.body.append(I);let j=s("div",{class:"ts-line","aria-hidden":"true"});
p.append(j),p.classList.add("ts-dragging");for(let tt of o.unit())l.get(tt)?.classList.add("ts-lifted");return{ghost:I,line:j,
timer:requestAnimationFrame(mt),x:0,y:0,drop:null}}function ft(I){I.ghost.style.transform=`translate(${I.x+12}px, ${I.y+
8}px)`;let tt=o.rows().map($t=>{let at=Z($t).getBoundingClientRect();return{row:$t,box:at,offset:I.y-(at.top+at.height/2)}}).
reduce(($t,at)=>Math.abs(at.offset)<Math.abs($t.offset)?at:$t),lt=tt.offset>0;I.drop=o.dropAt(tt.row,lt);let ut=(lt?tt.box.
bottom:tt.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;I.line.style.top=`${ut}px`}function mt(){let I=G?.carried;
if(I){for(let j of[p,ze(p)]){let lt=j===document.scrollingElement?{top:0,bottom:innerHeight}:j.getBoundingClientRect(),kt=I.
y<lt.top+ss?-1:I.y>lt.bottom-ss?1:0;if(!kt)continue;let ut=j.scrollTop;if(j.scrollTop+=kt*jn,j.scrollTop!==ut){ft(I);break}}
I.timer=requestAnimationFrame(mt)}}function et(I){let j=G?.carried;if(G=null,!j)return;cancelAnimationFrame(j.timer),j.ghost.
remove(),j.line.remove(),p.classList.remove("ts-dragging");for(let lt of l.values())lt.classList.remove("ts-lifted");let{
drop:tt}=j;if(!I||!tt||o.unit().includes(tt.target)){y(!0),N(`${o.unitName()} stays at ${o.where()}`);return}P(o.beside(
tt.target,tt.side))}return p.addEventListener("pointerup",()=>et(!0)),p.addEventListener("pointercancel",()=>et(!1)),O.addEventListener(
"keydown",I=>{!G?.carried||I.key!=="Escape"||(et(!1),I.stopPropagation())}),y(),{element:O,tools:A,order:()=>[...o.order],
change:(I,j)=>{u||P(I,j)},setOrder(I,j=!1){o.held!==null||G?.carried||Ft(I,o.order)||(o.set(I,j),y())},setNotes(I){i=I??
{},y()},setDisabled(I){u=I,y()}}}vt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=le({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
es(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function os(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[c,i]of t.entries()){let[u,l]=e[i]??[null,null];u!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[u??r[0],l??(u===null?r[1]:0)];let d=n(...r);o.push(d);let p=a.get(d.join(" "))??{at:d,numbers:[]};
p.numbers.push(c+1),a.set(d.join(" "),p)}return{points:o,stops:[...a.values()]}}function rs(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function as(t,e){return t.filter((n,r)=>r!==e)}function is(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var ns=.6;function cs(t,[e,n],[r,
o]){let a=Object.entries(t).filter(([u])=>!u.startsWith("firm:")),c=(u,l)=>a.filter(([,d])=>d[0]===u&&d[1]===l).map(([d])=>d).
slice(0,1),i=Math.abs(e-r)>ns;return[...i&&Math.abs(n)>ns?c(null,0):[],...i?c(r,null):[],...o||!i?c(null,o):[]]}var Gt=9,de=.7*Gt,Oe=44;function ue(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*Gt+2*Oe,
c=(o-r)*de+2*Oe,i=(f,g)=>[Oe+(f-e)*Gt,c/2-(g-(r+o)/2)*de],u=t.gates.map(f=>`M${i(f,r).join(" ")}L${i(f,o).join(" ")}`),l=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,d=t.gears.map(([f,g,h])=>{let[L,x]=i(g,h),M={x:L,y:x+(h>0?-20:30),"data-gear":f};
return R("text",{...M,class:"tsp-gear","text-anchor":"middle"},f)});return{element:R("svg",{viewBox:`0 0 ${a} ${c}`,width:a,
height:c,class:"ts-gateplan","aria-hidden":"true"},R("path",{d:[...u,l].join(""),class:"tsp-slot"}),...d),at:i}}function Hn(t){let{element:e,at:n}=ue(t),r=R("polyline",{class:"tsp-line",points:""}),o=R("g");return e.append(r,o),{element:e,
show(a){let{points:c,stops:i}=os(a,t.aims,n),[[u,l]]=c;r.setAttribute("points",c.map(d=>d.join(",")).join(" ")),o.replaceChildren(
R("circle",{cx:u,cy:l,r:4,class:"tsp-start"}),...i.map(({at:[d,p],numbers:f})=>R("g",{},R("circle",{cx:d,cy:p,r:3.5,class:"\
tsp-stop"}),R("text",{x:d+7,y:p-5,class:"tsp-number"},f.join(", ")))))}}}function ls({label:t,moves:e,plan:n,most:r,onChange:o}){
let a=new Map(e),c=O=>a.get(O)??O,i=[],u=-1,l=!1,d=n?Hn(n):null,p=s("ol",{class:"ts-pathlist","aria-label":t}),f=s("p",{
class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate plane."),g=s("p",{class:"ts-hidden",role:"\
status"}),h=e.map(([O,N])=>Y(N,()=>$(O))),L=Y("Take back the last move",()=>{i.length&&D(i.length-1)}),x=Y("Take back al\
l",()=>{i.length&&b([],"No moves left")}),M=s("span",{class:"ts-hint"}),B=s("div",{class:"ts-path"},s("div",{class:"ts-t\
ools ts-moves",role:"group","aria-label":"Add a move"},...h),s("div",{class:"ts-path-both"},s("div",{class:"ts-path-word\
s"},f,p,s("div",{class:"ts-tools"},L,x,M)),d&&s("div",{class:"ts-path-picture"},d.element)),d&&s("p",{class:"ts-hint"},"\
The line shows where each move should go. The test shows whether the lever gets there."),g);function b(O,N){l||(i=O,k(),
g.textContent=N,o([...i]))}function $(O){if(i.length>=r){g.textContent=`${r} moves are the most here`;return}let{moves:N,
place:F}=rs(i,u,O);u=F,b(N,`Move ${F+1}: ${c(O)}`)}function D(O){let N=c(i[O]);u=Math.min(u,i.length-2),b(as(i,O),`Taken\
 back: ${N}`)}function C(O,N){let F=is(i,O,N);F&&(u=O+N,b(F,`${c(F[u])}, move ${u+1} of ${i.length}`),m(u))}function A(O){
return p.children[O]?.querySelector(".ts-path-move")}function m(O){let N=A(O);return N instanceof HTMLElement&&N.focus(),
!!N}function S(O,N){let F=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${N+1}: ${c(O)}`},c(O)),Z=s("bu\
tton",{type:"button",class:"ts-path-off","aria-label":`Take back move ${N+1}`,onclick:()=>D(N)},"×"),y=s("li",{},F,Z);return y.
classList.toggle("ts-current",N===u),F.addEventListener("focus",()=>{u=N;for(let E of p.children)E.classList.toggle("ts-\
current",E===y)}),F.addEventListener("keydown",E=>{if(xt(E))return;let w=E.key==="ArrowUp"?-1:E.key==="ArrowDown"?1:null;
if(w&&E.shiftKey)C(N,w);else if(w)m(N+w);else if(E.key==="Delete"||E.key==="Backspace")D(N),m(Math.min(N,i.length-1))||h[0].
focus();else return;E.preventDefault()}),Z.disabled=l,y}function k(){p.replaceChildren(...i.map(S)),f.hidden=i.length>0,
M.textContent=`${i.length} of at most ${r} moves`;for(let O of h)O.disabled=l||i.length>=r;L.disabled=x.disabled=l||i.length===
0,d?.show(i)}return k(),{element:B,setMoves(O){Ft(O,i)||(i=[...O],u=-1,k())},setDisabled(O){l=O,k()}}}vt("path",{prompt:"words",make(t,e,n){let r=ls({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});function ds(t,e,n){let r=t.indexOf(n);return[...t.slice(r+1),...t.slice(0,r)].find(a=>!e.get(a))??n}function us(t,e,n){let r=t.
find(({key:u})=>u===e);if(!r)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let o={ArrowRight:1,
ArrowLeft:-1}[n];if(o!==void 0){let u=[...t].sort((d,p)=>d.x-p.x||d.y-p.y),l=u.findIndex(({key:d})=>d===e)+o;return u[(l+
u.length)%u.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=u=>Math.abs(u.y-r.y)+2*Math.abs(u.x-
r.x),[i]=t.filter(({key:u,y:l})=>u!==e&&(l-r.y)*a>2).sort((u,l)=>c(u)-c(l));return(i??r).key}function Kt(t,e,n,r){let o=t.lines,a=t.options,c=o.map(([p])=>p),i=c[0],u=o.map(([p,f],g)=>{let h=`${e.control}-${g}`,L=s(
"label",{class:"ts-each-line",for:h},f),x=yt({id:h,"aria-describedby":e.status},[["","choose"],...a]),M=s("input",{type:"\
radio",name:`${e.control}-active`,"aria-label":`Point in the picture for: ${f}`,checked:g===0}),B=s("li",{},c.length>1?M:
null,L,x);return M.addEventListener("change",()=>{i=p}),x.addEventListener("change",()=>{i=p,d()}),{key:p,box:x,mark:M,row:B}}),
l=()=>new Map(u.map(({key:p,box:f})=>[p,f.value]));function d(){let p=l();r(p),n(se([...p]))}return{element:s("ol",{class:"\
ts-each ts-pointed"},...u.map(({row:p})=>p)),active:()=>i,answers:l,press(p){let f=u.find(({key:g})=>g===i);if(!(!f||f.box.
disabled)){f.box.value=p,d(),i=ds(c,l(),i);for(let{key:g,mark:h}of u)h.checked=g===i}},put(p,f){let g=u.find(({key:h})=>h===
p);!g||g.box.disabled||(g.box.value=f,d())},show(p){let f=ne(p.value);for(let{key:g,box:h}of u)h.value=f.get(g)??"";r(l())},
setDisabled(p){for(let{box:f,mark:g}of u)f.disabled=p,g.disabled=p}}}function pe(t,e,n){let r=s("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});r.innerHTML=t;let o=r.querySelector(
"svg");o.setAttribute("role","group");let a=new Map(Q(o,"[data-mark]").map(l=>[String(l.dataset.mark),l])),c=new Map(e);
for(let[l,d]of a)d.setAttribute("role","button"),d.setAttribute("tabindex",l===e[0][0]?"0":"-1"),d.setAttribute("aria-la\
bel",`${l}: ${c.get(l)??""}`);let i=l=>wt(l,"[data-mark]")?.dataset.mark??wt(l,"[data-spot]")?.dataset.spot;r.addEventListener(
"click",l=>{let d=i(l);d&&n(d)});for(let[l,d]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])r.addEventListener(
l,p=>{let f=i(p);f&&u(f,d)});function u(l,d){for(let p of Q(o,`[data-spot="${l}"]`))p.classList.toggle("tss-near",d)}return r.
addEventListener("keydown",l=>{let d=wt(l,"[data-mark]")?.dataset.mark;if(d){if(l.key==="Enter"||l.key===" ")n(d);else{let p=[
...a].map(([g,h])=>{let L=h.querySelector(".tss-dot");return{key:g,x:L.cx.baseVal.value,y:L.cy.baseVal.value}}),f=us(p,d,
l.key);if(f===void 0)return;a.get(d)?.setAttribute("tabindex","-1"),a.get(f)?.setAttribute("tabindex","0"),a.get(f)?.focus()}
l.preventDefault()}}),{element:r,drawing:o,choose(l){let d=new Set(l);for(let[p,f]of a)f.classList.toggle("tss-chosen",d.
has(p)),f.setAttribute("aria-pressed",String(d.has(p)));for(let p of Q(o,"[data-spot]"))p.classList.toggle("tss-on",d.has(
String(p.dataset.spot)))}}}vt("picture",{prompt:"legend",make(t,e,n){let r=t.options,o=Kt(t,e,n,i=>{let u=new Set(i.values());for(let{letter:l,card:d}of a)
d.classList.toggle("ts-on",u.has(l))}),a=r.map(([i,u])=>{let l=s("div",{class:"ts-picture-card",onclick:()=>o.press(i)});
return l.innerHTML=t.svgs[i],l.querySelector("svg")?.setAttribute("aria-label",u),l.prepend(s("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:l}}),c=s("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:s("div",{class:"\
ts-pictured"},o.element,c),show:o.show,setDisabled:o.setDisabled,refused(){}}}});vt("point",{prompt:"legend",make(t,e,n){let r=Kt(t,e,n,i=>c.choose(i.values())),a=t.options.map(([i,u])=>[i,u.slice(i.length+
2)]),c=pe(t.svg,a,r.press);return{element:s("div",{},r.element,c.element),show:r.show,setDisabled:r.setDisabled,refused(){}}}});vt("put",{prompt:"legend",make(t,e,n){let r=t.lines,o=new Map(r.map(([d])=>[d,"1"])),a=Kt(t,e,n,d=>{for(let[p,f]of d)f&&
o.set(p,f.split("-")[1]);c.choose([...d.values()].map(p=>p.split("-")[0])),u(d)}),c=pe(t.svg,t.places,d=>{a.press(`${d}-${o.
get(a.active())}`)}),i=R("g",{class:"tss-placed"});c.drawing.append(i);function u(d){i.replaceChildren();for(let[p,f]of d){
let[g,h]=f.split("-"),L=t.at[g];if(!L)continue;let x=R("g",{transform:`translate(${L[0]} ${L[1]})`});x.innerHTML=t.pieces[p][Number(
h)-1][1],i.append(x)}for(let{part:p,show:f}of l)f(o.get(p)??"1")}let l=r.map(([d,p])=>{let f=s("div",{class:"ts-tray-par\
t"}),g=s("span",{class:"ts-hint",role:"status"}),h=st("Turn it",()=>{let M=o.get(d)==="1"?"2":"1";o.set(d,M),L(M);let B=a.
answers().get(d);B&&a.put(d,`${B.split("-")[0]}-${M}`)},`Turn it: ${p}`);function L(M){let[B,b]=t.pieces[d][Number(M)-1],
$=Number(/data-half="([\d.]+)"/.exec(b)?.[1]??90);f.innerHTML=`<svg viewBox="${-$} ${-$} ${2*$} ${2*$}" width="120" heig\
ht="120" aria-hidden="true">${b}</svg>`,g.textContent=`Way ${M}: ${B}`}let x=s("div",{class:"ts-tray"},f,s("div",{},p,g,
h));return{part:d,row:x,show:L,turn:h}});return{element:s("div",{},s("div",{class:"ts-trays"},...l.map(({row:d})=>d)),a.
element,c.element),show:a.show,setDisabled(d){a.setDisabled(d);for(let{turn:p}of l)p.disabled=d},refused(){}}}});var Wn="The connection to the course is lost. Go on answering: your answers stay in this browser and are sent when the c\
onnection is back. Simulators wait until then.",_n="The connection to the course is back.",Fn=1500,Kn=5e3,Ie=new Set,Dt=null,
Te;function ps(t){Dt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),Dt.isConnected||document.body.append(Dt),Dt.textContent=
t}function Un(){Dt?.remove(),Dt=null}function fs(){clearTimeout(Te),Ie.size?Te=window.setTimeout(()=>ps(Wn),Dt?0:Fn):Dt&&
(ps(_n),Te=window.setTimeout(Un,Kn))}var hs=t=>({down(){Ie.add(t),fs()},up(){Ie.delete(t),fs()}});var qn=1e3,zn="input, button, select, textarea, summary, a, [tabindex]";function Gn(t){let e=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:u,metaKey:l}=o,d={key:a,code:c,keyCode:i,ctrlKey:u,metaKey:l,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",d))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let o of t.querySelectorAll(zn))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function Yn(t,e,n){let r=t.widget_manager?.kernel,o=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(c,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),r?.statusChanged?.
connect(o),r?.connectionStatusChanged?.connect(a),r?.disposed?.connect(e),()=>{t.off("comm_live_update",e),r?.statusChanged?.
disconnect(o),r?.connectionStatusChanged?.disconnect(a),r?.disposed?.disconnect(e)}}var gs=`.twoshaft {
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
art-list li:not(.ts-current){border-left-color:Canvas}}.twoshaft .ts-space{display:block;width:100%;height:460px;box-siz\
ing:border-box;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:none}.twoshaft .ts-space:focus-visib\
le{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-photographs{display:flex;flex-wrap:wrap;gap:var(\
--ts-grid)}.twoshaft .ts-photographs figure{flex:0 1 320px;margin:var(--ts-grid) 0}.twoshaft .ts-photographs svg{display\
:block;width:100%;height:auto;max-height:220px}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sentences[hidden]{display:none\
}.twoshaft .ts-told{min-height:1.5em;max-height:6em;overflow-y:auto}.twoshaft .ts-build{display:grid;grid-template-colum\
ns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));align-items:start}.twoshaft .ts-buildlist{display:grid;g\
ap:4px;max-height:20rem;overflow-y:auto;padding:4px}.twoshaft .ts-buildstep{text-align:left;padding-block:2px;min-height\
:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var(--ts-line)}.twoshaft .ts-buildstep-waits{borde\
r-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-current]{background:var(--ts-a\
ccent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand{border:1px solid var(--ts-\
line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twoshaft .ts-hand .ts-field{border:0;margin:var(--ts-grid\
) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do{text-align:left;padding-block:4px}.twoshaft .ts\
-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid);font-size:var(--ts-small)}.twoshaft .ts-record\
 table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.twoshaft .ts-record caption{text-align:left;font-w\
eight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align:top;padding:3px 16px 3px 0;border-bottom:1px so\
lid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-record th[scope=row]{font-weight:400}.twoshaft .ts-r\
ecord .ts-blank{min-width:12em;height:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,1fr\
)}.twoshaft .ts-buildlist,.twoshaft .ts-hand{max-height:none}}@media(forced-colors:active){.twoshaft-rig:not(.ts-begun,.\
ts-lost) .ts-first{outline:3px solid Highlight}.twoshaft .ts-button[aria-pressed=true],.twoshaft .ts-buildstep[aria-curr\
ent],.twoshaft .ts-held{forced-color-adjust:none;background:Highlight;border-color:Highlight;color:HighlightText}.twosha\
ft :is(.ts-step,.ts-pathlist li):not(.ts-current,.ts-inblock){border-left-color:Canvas}.twoshaft :is(.ts-step,.ts-pathli\
st li).ts-current{border-left-color:Highlight}.twoshaft-bar .ts-tasks a:not([aria-current]){border-bottom-color:Canvas}}`,
ms="twoshaft-styles";function Xn(){let t=document.getElementById(ms);t?.textContent!==gs&&(t?.remove(),document.head.append(
s("style",{id:ms},gs)))}function J({model:t,el:e},{kind:n,lost:r=()=>Qt(e),line:o=()=>{}}){Xn(),e.classList.add("twoshaf\
t","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"ts-alert",role:"alert"}),c=hs(e),i=()=>e.classList.contains("ts-\
lost"),u=[],d=Yn(t,()=>{i()||(e.classList.add("ts-lost"),c.down(),r())},h=>{i()||(h?c.down():c.up(),o(h))}),p=Gn(e),f,g=(h,L)=>{
t.on(h,L),u.push([h,L])};return g("msg:custom",h=>{h.type==="trouble"&&!i()&&(a.textContent=h.reason)}),{alert:a,follow:g,
isLost:i,send(h){i()||(e.classList.add("ts-begun"),t.send(h),clearTimeout(f),f=window.setTimeout(()=>t.send({type:"rest"}),
qn))},asks(h,{first:L,begin:x,who:M="Practice. Nothing here is marked or saved."}={}){return L?.classList.add("ts-first"),
s("div",{class:"ts-who"},s("p",{class:"ts-asks"},h),x?s("p",{class:"ts-begin"},`Begin: ${x}.`):"",M?s("p",{},M):"")},show:(...h)=>e.
replaceChildren(...It(h)),close(){c.up(),clearTimeout(f),p(),d();for(let[h,L]of u)t.off(h,L)}}}function ws({model:t,el:e}){let n=J({model:t,el:e},{kind:"rig",lost:()=>u.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),o=s("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=ot("order"),n.send({type:"order",order:p,turn:c})},
u=le({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),l=s("button",{type:"\
button",class:"ts-button",onclick:()=>u.change([...a],"The first order stands again")},"Start again");u.tools.append(l),
n.show(n.asks("Which steps stand in a wrong place?",{first:u.tools,begin:"choose a step and move it up or down"}),n.alert,
Ct([u.element],[r,o]));function d(){let p=t.get("judged");c!==null&&p.turn!==c||(c=null,r.textContent=p.finding,o.textContent=
p.cost,u.setOrder(p.order),u.setNotes(p.notes))}return n.follow("change:judged",d),d(),n.close}function fe(t){let e=t.get("pictured"),n=s("div",{class:"ts-photographs"}),r="",o=a=>{a.type!=="photographs"||`${a.of}:${a.
id}`!==r||n.replaceChildren(...a.shown.map(({svg:c,alt:i})=>{let u=s("figure",{});return u.innerHTML=c,u.append(s("figca\
ption",{},`From your college: ${i}`)),u}))};return t.on("msg:custom",o),{node:n,any:a=>e[a].length>0,show(a,c){let i=c.find(
l=>e[a].includes(l)),u=i===void 0?"":`${a}:${i}`;u!==r&&(r=u,n.replaceChildren(),i!==void 0&&t.send({type:"photographs",
of:a,id:i}))},close:()=>t.off("msg:custom",o)}}var Vn=["lit","bench","absent"],bs=[1,1.5,2,3,4.5];function Ut({svg:t,parts:e,words:n},{name:r="The unit in section",tallest:o,
onChoose:a=()=>{}}={}){let c=s("div",{class:"ts-unit",tabindex:"0",role:"application","aria-label":`${r}. Left and right\
 arrows walk from part to part, up and down to the part above or below, plus and minus zoom.`});c.innerHTML=t;let i=c.querySelector(
"svg"),u=i.querySelector(".tsu-marks");i.setAttribute("aria-hidden","true"),i.removeAttribute("role");let l=new Map(e.map(
([y])=>[y,[]]));for(let y of Q(i,"[data-part]"))l.get(String(y.dataset.part))?.push(y);let d=new Map(e.map(([y],E)=>[y,E])),
p=s("p",{class:"ts-hint ts-unit-name",role:"status"}),f=yt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part \
chosen"],...e.map(([y,E])=>[y,E])]),{width:g,height:h}=i.viewBox.baseVal,L=o?`min(100%, ${Math.round(o*g/h)}px)`:"100%",
x=new WeakMap,M=-1,B=0,b={},$=y=>{let E=b[y];return E==="absent"?" Not there yet.":E==="bench"?" On the bench.":E==="lit"?
" In hand.":""},D=y=>`${e[y][1]}. ${e[y][2]}${$(e[y][0])}`;function C(y){for(let w of Q(i,".tsu-chosen"))w.classList.remove(
"tsu-chosen");M=y;let E=y<0?"":e[y][0];f.value=E,p.textContent=y<0?N:D(y);for(let w of l.get(E)??[])w.classList.add("tsu\
-chosen");y>=0&&m(E),a(E)}function A(y){let E=(l.get(y)??[]).map(V=>{let{x:pt,y:W,width:X,height:v}=V.getBBox(),[H,K]=x.
get(V)??[0,0];return{x:pt+H,y:W+K,width:X,height:v}}),w=Math.min(...E.map(V=>V.x)),P=Math.max(...E.map(V=>V.x+V.width)),
_=Math.min(...E.map(V=>V.y)),z=Math.max(...E.map(V=>V.y+V.height));return{x:(w+P)/2,y:(_+z)/2}}function m(y){let E=A(y),
w=i.getBoundingClientRect().width/i.viewBox.baseVal.width,[P,_]=[E.x*w,E.y*w],{scrollLeft:z,scrollTop:V,clientWidth:pt,clientHeight:W}=c;
(P<z+40||P>z+pt-40)&&(c.scrollLeft=P-pt/2),(_<V+40||_>V+W-40)&&(c.scrollTop=_-W/2)}function S(y){B=Math.max(0,Math.min(bs.
length-1,B+y)),i.style.width=`calc(${bs[B]} * ${L})`,i.style.height="auto",M>=0&&m(e[M][0])}function k(y){let E=A(e[M][0]),
[w]=e.map(([P],_)=>({k:_,at:A(P)})).filter(({k:P,at:_})=>P!==M&&(_.y-E.y)*y>4).sort((P,_)=>vs(P.at,E)-vs(_.at,E));w&&C(w.
k)}c.addEventListener("keydown",y=>{if(xt(y))return;let E=e.length-1;if(y.key==="ArrowRight")C(M>=E?0:M+1);else if(y.key===
"ArrowLeft")C(M<=0?E:M-1);else if(y.key==="ArrowUp"||y.key==="ArrowDown")M<0?C(0):k(y.key==="ArrowUp"?-1:1);else if(y.key===
"Home")C(0);else if(y.key==="End")C(E);else if(y.key==="+"||y.key==="=")S(1);else if(y.key==="-")S(-1);else if(y.key==="\
Escape")C(-1);else return;y.preventDefault()}),c.addEventListener("click",y=>{let E=wt(y,"[data-part]")?.dataset.part;C(
E===void 0?-1:d.get(E)??-1)}),c.addEventListener("pointerover",y=>{let E=wt(y,"[data-part]")?.dataset.part;if(E===void 0||
y.pointerType!=="mouse")return;let w=wt(y,"[data-solid]")?.querySelector("title")?.textContent,P=e[d.get(E)??0][1];O.textContent=
w&&!P.endsWith(w)?`${w} (${P})`:P}),c.addEventListener("pointerleave",()=>{O.textContent=""}),f.addEventListener("change",
()=>C(d.get(f.value)??-1));let O=s("span",{class:"ts-unit-over","aria-hidden":"true"}),N="Point at a part, tap it, or ch\
oose it here to read its name.";p.textContent=N;let F=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",f),st(
"−",()=>S(-1),"Smaller"),st("+",()=>S(1),"Larger"),O),Z=s("details",{class:"ts-unit-words"},s("summary",{},"What is wh\
ere, in words"),s("p",{},n));return S(0),{nodes:[F,p,c,Z],choose:f,drawing:i,shift(y,[E,w]){x.set(y,[E,w]),y.setAttribute(
"transform",`translate(${E.toFixed(1)} ${w.toFixed(1)})`)},show(y){b=y.looks;for(let[E,w]of l)for(let P of w)for(let _ of Vn)
P.classList.toggle(`tsu-${_}`,b[E]===_);u.innerHTML=y.marks,M>=0&&(p.textContent=D(M))}}}function vs(t,e){return Math.abs(
t.y-e.y)+2*Math.abs(t.x-e.x)}function ks(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function ys({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=fe(t),c=Ut(t.get("pi\
cture")),i=s("p",{class:"ts-hint",role:"status"}),u=s("dl",{class:"ts-facts"}),l=s("div",{class:"ts-ready"}),d=s("select",
{class:"ts-box ts-before","aria-label":"A step that is not ready"}),p=s("input",{type:"text",inputmode:"numeric",size:"3",
class:"ts-box","aria-label":"Go to place",onkeydown:m=>{m.key==="Enter"&&$()}}),f=s("span"),g=m=>C.send({type:"move",by:m}),
h=m=>C.send({type:"go",position:m}),L=st("Back",()=>g(-1),"One step back"),x=st("Next",()=>g(1),"Next step"),M=st("Start",
()=>h(0),"Start with an empty bench"),B=st("End",()=>h(t.get("view").count),"End of the order"),b=st("Try it",()=>C.send(
{type:"take",step:d.value}),"Try it: the step chosen here"),$=()=>{let m=Number.parseInt(p.value,10);m>=0&&h(m)},D=s("di\
v",{class:"ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},M,L,x,B,s("span",
{class:"ts-pair"},"place ",p,f,st("Go",$,"Go to this place")));D.addEventListener("keydown",m=>{if(!(m.target===p||xt(m))){
if(m.key==="ArrowLeft")g(-1);else if(m.key==="ArrowRight")g(1);else if(m.key==="Home")h(0);else if(m.key==="End")h(t.get(
"view").count);else return;m.preventDefault()}});let C=J({model:t,el:e},{kind:"rig"});C.show(C.asks("What comes next, an\
d what can no longer be reached?",{first:x,begin:"press Next"}),C.alert,n,D,Ct(c.nodes,[r,i,u,o,a.node,s("p",{class:"ts-\
prompt"},"Do another step next"),l,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",d,
b))]));function A(){let m=t.get("view");n.textContent=m.finding,r.textContent=m.happened,o.textContent=m.next?`Next in t\
his order: ${m.next}`:"This is the end of the order.",i.textContent=m.build.words,a.show("operation",m.in_hand),c.show(m.
build),u.replaceChildren(...At(m.facts));let S=l.contains(document.activeElement);l.replaceChildren(...m.ready.map(([N,F])=>st(
F,()=>C.send({type:"take",step:N})))),m.ready.length||l.append(s("p",{class:"ts-hint"},"No step is ready.")),S&&(l.querySelector(
"button")??x).focus(),d.replaceChildren(...bt(m.waiting)),d.disabled=b.disabled=!m.waiting.length,p.value=String(m.position),
f.textContent=` of ${m.count} `;let k=m.position===0,O=m.position===m.count;for(let N of[L,M])ks(N,k);for(let N of[x,B])
ks(N,O)}return C.follow("change:view",A),A(),()=>{a.close(),C.close()}}function qt(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=ot("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var it=(t,e,n,r,o)=>R("line",{x1:t,y1:e,x2:n,y2:r,class:o}),ct=(t,e,n,r="middle")=>R("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function zt(){let t=R("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(R("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(it(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(ct(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(R("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(it(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*
Math.cos(o),"tsg-mark"))}let e=it(100,134,100,119,"tsg-small"),n=R("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(e,n,R("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("tra\
nsform",`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${o}`)}}}function xs({top:t,mark:e,perFigure:n}){let r=R("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),o=c=>30+c/t*540;r.append(R("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*e<=t+1e-9;c+=1){let i=c%n===0;r.append(it(o(c*e),22,o(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.
append(ct(o(c*e),84,String(Math.round(c*e))))}let a=R("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(
a,ct(586,14,"newtons","end")),{node:r,top:t,set(c,i){a.setAttribute("transform",`translate(${o(Math.min(c,t))} 0)`),r.setAttribute(
"aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function $s({low:t,high:e,reach:n}){let r=R("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(R("rect",{x:o(t),y:34,width:o(
e)-o(t),height:24,class:"tsg-target"}),ct((o(t)+o(e))/2,84,"target"),it(20,46,700,46,"tsg-mark"),it(360,26,360,66,"tsg-m\
ark tsg-long"),ct(20,20,"end play","start"),ct(700,20,"preload","end"),ct(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let u of[
i,-i])r.append(it(o(u),42,o(u),50,"tsg-mark"));r.append(ct(o(-n),70,`${n.toFixed(2)} mm`,"start"),ct(o(n),70,`${n.toFixed(
2)} mm`,"end"));let a=R("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=R("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return r.append(a,c),{node:r,set(i,u,l){a.setAttribute("transform",`translate(${o(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${o(u)} 0)`),r.setAttribute("aria-label",l)}}}function gt(t,{min:e,max:n,step:r,value:o,words:a,onInput:c}){let i=s(
"input",{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),u=s("output",{class:"ts-slid"},a(o));
return i.addEventListener("input",()=>{let l=a(Number(i.value));u.textContent=l,i.setAttribute("aria-valuetext",l),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,u),set(l){i.value=
String(l),u.textContent=a(l)}}}function ht(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},
...e.map(([a,c])=>s("option",{value:a,selected:a===n},c)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function Ss({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),u=s("u\
l",{class:"ts-sentences"}),l=qt((m,S)=>D.send({type:"set",state:m,turn:S})),d=m=>{r={...r,...m},l.ask(r)},p=R("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),f=it(0,0,0,0,"tsg-mark tsg-long"),g=ct(0,0,""),[h,
L]=n.readingsOnly?[72,48]:[96,120],x=h/(n.readingsOnly?r.radius:n.radii[1]),M=R("svg",{viewBox:`0 0 ${2*h+L} ${2*h+30}`,
width:2*h+L,height:2*h+30,class:"tsg-drum",role:"img"}),B=h+4;p.setAttribute("transform",`translate(${B} ${B})`),M.append(
p,f,it(4,B,2*h+4,B,"tsg-centre"),it(B,4,B,2*h+4,"tsg-centre"),R("circle",{cx:B,cy:B,r:10,class:"tsg-face"}),g);let b=Y("\
Turn the shaft ten times",()=>d({turns:r.turns+10})),$=[s("div",{class:"ts-tools"},b)];if(!n.readingsOnly){let m=n.kinds,
S=m.map(([k,O])=>s("label",{class:"ts-option"},s("input",{type:"checkbox",checked:r.kinds.includes(k),onchange:N=>d({kinds:m.
map(([F])=>F).filter(F=>F===k?N.target.checked:r.kinds.includes(F))})}),`with ${O}`));$[0].append(Y("Fit the rings anew",
()=>d({turns:0}))),S.length&&$.push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the b\
earings"),...S)),$.push(gt("Setting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:k=>d({setting:k}),words:k=>k<
0?`${(-k).toFixed(3)} mm of end play`:`${k.toFixed(3)} mm of preload`}).row,gt("Radius of the drum",{min:n.radii[0],max:n.
radii[1],step:1,value:r.radius,onInput:k=>d({radius:k}),words:k=>`${k} mm`}).row)}let D=J({model:t,el:e},{kind:"rig"});D.
show(D.asks("How hard does the shaft turn?",{first:b,begin:"turn the shaft",who:n.readingsOnly?"Take your reading here; \
write it in the form.":void 0}),D.alert,s("div",{class:"tsg-beside"},M,s("div",{class:"tsg-side"},a,c)),...$,i,u);function C(){
let m=t.get("shown");l.waiting||(r=m.state);let S=x*m.state.radius;Tt(p,{r:S}),Tt(f,{x1:B,y1:B-S,x2:2*h+L,y2:B-S}),Tt(g,
{x:B,y:2*h+22}),g.textContent=`drum, radius ${m.state.radius} mm`,M.setAttribute("aria-label",`A drum of ${m.state.radius}\
 mm radius on the shaft; the cord leaves it at its edge towards the scale.`),o?.top!==m.scale.top&&(o=xs(m.scale),a.replaceChildren(
o.node),c.textContent=`Spring scale to ${m.scale.top} N, one mark ${m.scale.mark} N.`),o?.set(m.pull,m.pullWords),i.textContent=
m.finding,u.replaceChildren(...Bt(m.words)),l.answered(m.turn)}let A=()=>l.free();return D.follow("change:shown",C),D.follow(
"msg:custom",A),C(),D.close}function Et({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=qt((p,f)=>c.send({type:"set",state:p,turn:f})),
c=J({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),u=n(r,p=>{o={...o,...p},a.ask(o)},o),l=r.readingsOnly?
"Take your readings here; write them in the form.":void 0;c.show(c.asks(u.asks,{first:u.first,begin:u.begin,who:l}),c.alert,
...u.side?[Ct([u.picture],[...u.controls,i])]:[s("div",{class:"tsg-wide"},u.picture),...u.controls,i]);function d(){let p=t.
get("shown");a.waiting||(o=p.state),u.set(p,o),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",
d),c.follow("msg:custom",a.free),d(),c.close}var Lt=(...t)=>s("div",{class:"ts-tools"},...t);var Jn={x:44,y:84,perMm:34};function Zn(t){let e=R("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=Jn,a=R("g",{}),c=R("g",{});e.append(R("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),R("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,c,ct(12,14,"main scale, mm","start"),ct(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let u=n+i*t.space*o;c.append(
it(u,r,u,r+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(ct(u,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let u=Math.
max(0,Math.ceil(i.mm-1));u<=t.top+25;u+=1){let l=n+(u-i.mm)*o;l<4||l>756||(a.append(it(l,r,l,r-(u%10===0?34:u%5===0?28:20),
"tsi-fine")),u%5===0&&a.append(ct(l,r-40,String(u))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function Ls(t){
return Et(t,(e,n,r)=>{let o=Zn(e),a=gt("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:l=>n(
{rod:l})}),c=ht("Foot",e.places,r.place,l=>n({place:l,rod:0})),i=Y("Push the rod down until it rests",()=>n({rod:e.top})),
u=ht("Look",e.eyes,r.eye,l=>n({eye:l}));return{asks:"How deep does it lie?",first:i,begin:"push the rod down",picture:o.
node,controls:[Lt(c.row,u.row),Lt(i,Y("Lift the rod",()=>n({rod:0}))),a.row],set(l,d){o.set(l),c.box.value=d.place,u.box.
value=d.eye,a.box.value=d.rod}}})}function Yt(t,e){let n=e>1?.65/(e-1):0;return Array.from({length:e},(r,o)=>{let a=e>1?o*n:0,c=e>1?.35:1;return 1-Math.max(
0,Math.min(1,(t-a)/c))})}function Cs(t,e,n,r){let[o,a]=[0,0];for(let c=n;c!==null;c=t[c].parent){let[i,u]=t[c].own[r]??[
0,0];o+=i*e[c],a+=u*e[c]}return[o,a]}function Ne(t){let e=t.findIndex(n=>n>0);return{placed:t.filter(n=>n===0).length,next:e<
0?null:e}}function Es(t,e){return t<=0?0:t>=e||e<2?1:.35+(t-1)*(1-.35)/(e-1)}function As(t,e,n){let r=[0,0,0];for(let o=n;o!==
null;o=t[o].parent){let a=e[o];for(let[c,i]of t[o].own.entries())r[c]+=i*a}return r}function Be(t,e){globalThis.twoshaftChunks??=new Map;let n=globalThis.twoshaftChunks,r=n.get(e)??Qn(t,e);return n.set(e,
r),r.catch(()=>n.delete(e)),r}function Qn(t,e){return new Promise(n=>{let r=(o,a)=>{if(o.type!=="chunk"||o.name!==e)return;
t.off("msg:custom",r);let c=URL.createObjectURL(new Blob([a[0]],{type:"text/javascript"})),i=import(c);i.finally(()=>URL.
revokeObjectURL(c)).catch(()=>{}),n(i)};t.on("msg:custom",r),t.send({type:"chunk",name:e})})}var he=.12,Rt=1.15,Ms="This browser draws nothing in three dimensions. The section shows the same parts.",ge;function Os(){
if(ge!==void 0)return ge;let t=document.createElement("canvas").getContext("webgl2");return t?.getExtension("WEBGL_lose_\
context")?.loseContext(),ge=!!t,ge}function Ts(t){Os()&&Be(t,"solids").catch(()=>{})}function me(t,e){let n=s("span",{style:`\
color: ${e}`});t.append(n);let r=s("canvas",{width:1,height:1}).getContext("2d");r.fillStyle=getComputedStyle(n).color,n.
remove(),r.fillRect(0,0,1,1);let[o,a,c]=r.getImageData(0,0,1,1).data;return`rgb(${o}, ${a}, ${c})`}function Is(t,e,n){let r=s(
"p",{class:"ts-hint ts-unit-name",role:"status"});if(!Os())return r.textContent=Ms,{drawn:!1,nodes:[r],move(){},ready(){},
close(){}};let o=s("canvas",{class:"ts-space",tabindex:"0",role:"application","aria-label":"The parts in three dimension\
s. Arrow keys turn, plus and minus zoom, Home looks as at first, H hides the chosen part, A shows all. The section shows\
 the same parts with their names."}),a=yt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],...n.map(
([b,$])=>[b,$])]),c=new Set,i,u=()=>[0,0,0],l=()=>{},d="Drag or use the arrow keys to turn. Tap a part, or choose it her\
e, to read its name.";r.textContent="Drawing …";function p(){let b=n.find(([D])=>D===a.value),$=c.has(a.value)?" Hidde\
n.":"";r.textContent=b?`${b[1]}. ${b[2]}${$}`:d,i?.look(a.value,c)}function f(){a.value&&(c.delete(a.value)||c.add(a.value),
p())}function g(){c.clear(),p()}a.addEventListener("change",p);let h={ArrowLeft:()=>i?.turnBy(-he,0),ArrowRight:()=>i?.turnBy(
he,0),ArrowUp:()=>i?.turnBy(0,he),ArrowDown:()=>i?.turnBy(0,-he),"+":()=>i?.zoomBy(Rt),"=":()=>i?.zoomBy(Rt),"-":()=>i?.
zoomBy(1/Rt),Home:()=>i?.home(),h:f,a:g};o.addEventListener("keydown",b=>{let $=h[b.key]??h[b.key.toLowerCase()];!$||xt(
b)||($(),b.preventDefault())});let L=null;o.addEventListener("pointerdown",b=>{L={x:b.clientX,y:b.clientY,far:!1},o.setPointerCapture(
b.pointerId)}),o.addEventListener("pointermove",b=>{if(!L)return;let[$,D]=[b.clientX-L.x,b.clientY-L.y];!L.far&&Math.hypot(
$,D)<4||(L={x:b.clientX,y:b.clientY,far:!0},i?.turnBy(-$/150,D/150))}),o.addEventListener("pointerup",b=>{if(L&&!L.far){
let{left:$,top:D,width:C,height:A}=o.getBoundingClientRect(),[m,S]=[(b.clientX-$)/C,(b.clientY-D)/A];a.value=i?.partAt(2*
m-1,1-2*S)??"",p()}L=null}),o.addEventListener("wheel",b=>{document.activeElement===o&&(i?.zoomBy(b.deltaY<0?Rt:1/Rt),b.
preventDefault())},{passive:!1});let x=new ResizeObserver(()=>i?.paint()),M=!1;return Be(t,"solids").then(({solidsView:b})=>{
if(M)return;i=b(o,e,{ink:me(o.parentElement??document.body,"var(--ts-ink)"),paper:me(o.parentElement??document.body,"var\
(--ts-paper)"),accent:me(o.parentElement??document.body,"var(--ts-accent)"),metal:me(o.parentElement??document.body,"col\
or-mix(in srgb, var(--ts-ink) 18%, var(--ts-paper))")}),i.move(u),i.fit(),l(),i.home(),i.paint(),x.observe(o),p(),o.dataset.
painted="true"},()=>{r.textContent=Ms}),{drawn:!0,nodes:[s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",a),
st("Hide or show",f,"Hide or show the chosen part"),st("Show all",g,"Show all parts"),st("−",()=>i?.zoomBy(1/Rt),"Smal\
ler"),st("+",()=>i?.zoomBy(Rt),"Larger")),r,o],move(b){u=b,i?.move(b)},ready(b){l=b},close(){M=!0,x.disconnect(),i?.close()}}}var we=200,to=580,eo="2.6";function Ns({model:t,el:e}){let n=s("p",{class:"ts-finding"}),r=s("p",{class:"ts-hint ts-next\
in",role:"status"}),o=s("div",{class:"ts-apart-picture"}),a=s("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"Wha\
t goes in"}),c=t.get("stages"),i=ht("Show",c,t.get("stage"),m=>A.send({type:"stage",stage:m})),u=gt("From apart to toget\
her",{min:0,max:we,step:1,value:0,words:m=>m<=0?"apart":m>=we?"together":"on the way",onInput:m=>b(m/we)}),l=t.get("pict\
ure"),d,p=[],f=[],g=0,h=!1,L,x=st("In three dimensions",()=>{h=!h,x.setAttribute("aria-pressed",String(h)),D()});x.setAttribute(
"aria-pressed","false");function M(m){u.set(Math.round(m*we)),b(m)}function B(m){let{placed:S}=Ne(Yt(g,l.movers.length));
M(Es(S+m,l.movers.length))}function b(m){if(g=m,!d)return;let S=Yt(g,l.movers.length);for(let{group:F,mover:Z,view:y}of p)
d.shift(F,Cs(l.movers,S,Z,y));$(S);for(let F of f)F.style.opacity=String(1-g);e.classList.toggle("ts-together",g>.5);let{
placed:k,next:O}=Ne(S),N=`${k} of ${S.length} in place.`;for(let[F,Z]of[...a.children].entries())Z.classList.toggle("ts-\
current",F===O);r.textContent=O===null?"All in place.":`${N} Next in: ${l.movers[O].words}.`}function $(m){let{movers:S}=t.
get("space");L?.move(k=>As(S,m,k))}function D(){if(L?.close(),L=void 0,!!d&&(o.replaceChildren(...h?[]:d.nodes),!!h)){if(t.
get("space").stage!==t.get("stage")){Ts(t),A.send({type:"space"});return}L=Is(t,t.get("space"),l.parts),$(Yt(0,l.movers.
length)),o.replaceChildren(...L.nodes,...L.drawn?[]:d.nodes),L.ready(()=>$(Yt(g,l.movers.length)))}}function C(){if(l=t.
get("picture"),n.textContent=t.get("finding"),i.box.value=t.get("stage"),d=void 0,o.replaceChildren(),!l.svg)return;d=Ut(
l,{name:"Parts apart",tallest:to}),d.drawing.dataset.grow=eo,p=Q(d.drawing,"[data-move]").map(S=>({group:S,mover:Number(
S.dataset.move),view:String(S.dataset.view)})),f=Q(d.drawing,".tsu-traces"),a.replaceChildren(...l.movers.map(({words:S})=>s(
"li",{},S))),D(),b(g)}let A=J({model:t,el:e},{kind:"rig"});return A.show(A.asks("How do these parts go together?",{first:u.
box,begin:"move the slider",who:""}),A.alert,n,s("div",{class:"ts-apart"},s("div",{class:"ts-apart-tools"},i.row,u.row,s(
"div",{class:"ts-tools"},st("One in",()=>B(1),"One part more in place"),st("One out",()=>B(-1),"One part less in place")),
x,r,a),o)),A.follow("change:picture",C),A.follow("change:space",D),C(),()=>{L?.close(),A.close()}}function Bs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=s("div",{class:"tsj-bars"}),i=Q(a,"[data-bolt]"),u=ot("torq\
ue"),l=s("input",{id:u,type:"range",min:10,max:100,step:5,oninput:()=>f()});l.value="100";let d=s("output",{class:"tsj-f\
igure",for:u}),p=()=>l.value==="100"?n.torque:Number((Math.round(n.torque*Number(l.value)/100/n.step)*n.step).toFixed(3));
function f(){d.textContent=`${p()} N·m`,l.setAttribute("aria-valuetext",`${p()} newton metres, ${l.value} percent of th\
e torque`)}let g=m=>b.send({type:"pull",bolt:m,torque:p()}),h=Y("Take back",()=>b.send({type:"undo"})),L=Y("Wait until t\
he film has run out",()=>b.send({type:"wait"})),x=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>b.send({type:"set",film:Number(x.value)})},...n.films.map(m=>s("option",{value:m},m?`${m} µm thick`:"none"))),
M=s("input",{type:"checkbox",onchange:()=>b.send({type:"set",scattered:M.checked})});a.addEventListener("click",m=>{let S=wt(
m,"[data-bolt]");S&&(B(S),g(Number(S.dataset.bolt)))});let B=m=>{for(let S of i)S.setAttribute("tabindex",S===m?"0":"-1");
m.focus({preventScroll:!0})};a.addEventListener("keydown",m=>{let S=wt(m,"[data-bolt]");if(!S||m.ctrlKey||m.metaKey||m.altKey)
return;let k=Number(S.dataset.bolt),O={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[m.key];if(O)B(i[(k+O+i.length)%
i.length]);else if(m.key==="Home")B(i[0]);else if(m.key==="End")B(i[i.length-1]);else if(m.key==="Enter"||m.key===" ")m.
repeat||g(k);else return;m.preventDefault()});let b=J({model:t,el:e},{kind:"rig"}),$=Y("Start all by hand",()=>b.send({type:"\
start"})),D=s("div",{class:"ts-tools",role:"group","aria-label":"Bolts"},$,...n.rounds.map(([m,S])=>Y(`One round ${S}`,()=>b.
send({type:"round",pattern:m,torque:p()}))),h,Y("Start again",()=>b.send({type:"again"}))),C=s("div",{class:"ts-tools",role:"\
group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:u},"Wrench set to"),l,d));n.films.length&&C.append(
s("label",{class:"ts-pair"},"Wet sealant",x),L,s("label",{class:"tsj-check"},M,"friction scatters from bolt to bolt")),b.
show(b.asks("Does every bolt keep its clamp?",{first:$,begin:"start all bolts by hand",who:n.readingsOnly?"Nothing is sa\
ved here; your answers stand in the form.":void 0}),b.alert,r,C,D,o,s("div",{class:"tsj-bench"},a,c),s("details",{class:"\
ts-keys"},s("summary",{},"How, and keys"),"The first choice of a bolt starts it by hand, the next ones pull it. Arrows g\
o from bolt to bolt, Enter pulls."));function A(){let m=t.get("view");r.textContent=m.finding,o.textContent=m.happened,c.
innerHTML=m.bars;for(let[S,k]of i.entries()){let O=m.tight[S]?`${m.clamps[S]} kN`:m.started[S]?"started by hand":"not st\
arted";k.setAttribute("aria-label",`Bolt ${S+1} of ${n.count}, ${O}`),k.classList.toggle("tsj-tight",m.tight[S]),k.classList.
toggle("tsj-started",m.started[S])}h.disabled=!m.pulls,L.disabled=!m.standing,x.value=String(m.film),M.checked=m.scattered}
return b.follow("change:view",A),f(),A(),b.close}var Ds="tsk-number";function Nt(t,e,...n){return s("td",{class:e?Ds:null,"data-label":t||null,role:"cell"},...n)}function be(t,e,n){
let r=e.map(([c,i])=>s("th",{scope:"col",role:"columnheader",class:i?Ds:null},c)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function Ps({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),c=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),u=new Map;for(let[f,
g,h,L]of n.checks){let x=s("select",{class:"ts-box","aria-label":`What it showed: ${g}`,onchange:()=>d.send({type:"obser\
ve",check:f,shown:x.value})},s("option",{value:""},"Not made"),...bt(L)),M=Nt("worth, bit",!0),B=Nt("bit a minute",!0),b=s(
"tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},g),Nt("min",!0,`${h}`),Nt("it showed",!1,x),M,B);u.set(f,{box:x,
tells:M,rate:B,row:b}),i.append(b)}let l=s("button",{class:"ts-button",type:"button",onclick:()=>d.send({type:"clear"})},
"Take all observations back"),d=J({model:t,el:e},{kind:"rig"});d.show(d.asks("Which fault is it, and which check comes n\
ext?",{first:u.values().next().value?.box,begin:"say what a check showed"}),d.alert,r,a,c,be("Checks: what each showed, \
and what it is still worth",[["Check"],["min",!0],["It showed"],["worth, bit",!0],["bit a minute",!0]],i),s("div",{class:"\
ts-tools"},l,o));function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.spent,c.textContent=f.more,a.replaceChildren(
...Bt(f.left.map(([L,x])=>`${L} (${x})`)));let g=f.ranked,h=new Map(g.map(([L,x,M],B)=>[L,{bits:x,rate:M,rank:B}]));for(let[
L,{box:x,tells:M,rate:B,row:b}]of u){let $=f.observed[L],D=h.get(L);x.value=$??"",M.textContent=D?D.bits:$!==void 0?"mad\
e":"nothing",B.textContent=D?D.rate+(D.rank===0?" ◀ best next":""):"–",b.classList.toggle("tsk-best",D?.rank===0)}}return d.
follow("change:view",p),p(),d.close}function Rs(t,{move:e,hand:n}){let{element:r,at:o}=ue(t),a=Object.entries(t.aims).filter(([u])=>u.startsWith("at:")),c=(u,l)=>{
let[d,p]=o(u,l);return R("circle",{cx:d,cy:p,r:16,class:"tsl-spot",...{"data-travel":u,"data-turn":l}})},i=R("g",{class:"\
tsl-knob"},R("circle",{r:12}));return r.append(...a.map(([,[u]])=>c(Number(u),0)),...t.gears.map(([,u,l])=>c(u,l)),i),r.
classList.add("ts-lever"),r.addEventListener("click",u=>{let l=wt(u,".tsl-spot");if(!l)return;let d=[Number(l.dataset.travel),
Number(l.dataset.turn)];for(let p of cs(t.aims,n(),d))e(p)}),{element:r,scale:[Gt,de],show([u,l],d){let[p,f]=o(u,l);i.setAttribute(
"transform",`translate(${p.toFixed(1)} ${f.toFixed(1)})`);for(let g of Q(r,"[data-gear]"))g.classList.toggle("tsl-in",d.
includes(String(g.dataset.gear)))}}}function js({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit"}),a=Rs(t.get("plan"),{move:S=>M({type:"move",code:S}),hand:()=>t.get("view").hand}),
c=s("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=s("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...bt(t.get("builds"))),u=st("Start again",()=>M({type:"reset"})),l=s("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([S,k])=>st(k,()=>M({type:"move",code:S})))),
d=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),p=s("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),f=s("p",{class:"ts-proof",role:"status"}),g=st("What does a full hand test find?",()=>{
g.disabled=!0,f.textContent="testing",M({type:"prove"})}),h=J({model:t,el:e},{kind:"rig"});c.append(s("div",{},s("p",{class:"\
ts-prompt"},"The lever"),a.element),o),h.show(h.asks("Which gears can the lever reach?",{first:a.element,begin:"press a \
place in the gate"}),h.alert,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Put together: ",i),u,g),n,c,r,f,s("p",
{class:"ts-hint ts-gate-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down tu\
rn. Or in words:"),s("div",{class:"ts-gate-work"},l,s("div",{},s("p",{class:"ts-prompt"},"Tried by hand"),p,d)));let L=0,
x="";function M(S){L+=1,h.send({...S,turn:L})}function B(){let S=t.get("view");if(x!==t.get("figure")){x=t.get("figure"),
o.innerHTML=x;let k=Ht(o,"svg");k.removeAttribute("role"),k.setAttribute("aria-hidden","true")}for(let k of Q(o,"[data-b\
ody]")){let[O,N]=S.moved[String(k.dataset.rides??k.dataset.body)]??[0,0];k.setAttribute("transform",`translate(${O.toFixed(
2)} ${N.toFixed(2)})`)}for(let k of Q(o,"[data-gear]"))k.classList.toggle("tsg-in",S.gears.includes(k.dataset.gear));for(let k of Q(
o,"[data-lifts]"))k.classList.toggle("tsg-up",S.lifted);a.show(S.hand,S.gears),c.dataset.turn=String(S.turn),n.textContent=
`${S.gears.length>1?"■ ":S.gears.length?"● ":"○ "}${S.title}.`,r.textContent=S.happened,r.classList.toggle("ts-sto\
pped",/topped by/.test(S.happened)),(d.childElementCount!==S.log.length||d.lastElementChild?.textContent!==S.log.at(-1))&&
(d.replaceChildren(...S.log.map(k=>s("li",{class:/topped by/.test(k)?"ts-stopped":""},k))),d.scrollTop=d.scrollHeight),p.
hidden=S.log.length>0,i.value=S.build,f.textContent=S.proof,g.disabled=!1,D=!1,m()}c.addEventListener("keydown",S=>{if(xt(
S))return;let k={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[S.key];k&&(S.preventDefault(),M({type:"\
nudge",travel:k[0],turned:k[1]}))}),i.addEventListener("change",()=>M({type:"build",build:i.value}));let b=null,$=null,D=!1;
function C(S,k){let O=k.getBoundingClientRect(),N=k.viewBox.baseVal.width/O.width;return[(S.clientX-O.left)*N,(S.clientY-
O.top)*N]}c.addEventListener("pointerdown",S=>{let k=wt(S,".tsg-panel, .tsl-knob");if(!k||S.button!==0)return;let O=k.ownerSVGElement,
N=t.get("view").hand,[F,Z]=C(S,O),y=Number(k.dataset.scale),E=y?[y,y]:a.scale;b={svg:O,x:F-N[0]*E[0],y:Z+N[1]*E[1],scale:E},
c.setPointerCapture(S.pointerId),c.focus({preventScroll:!0}),c.classList.add("ts-pulling"),S.preventDefault()}),c.addEventListener(
"pointermove",S=>{if(!b)return;let[k,O]=C(S,b.svg),{scale:N}=b;$={travel_mm:(k-b.x)/N[0],turn_mm:(b.y-O)/N[1]},m()});let A=()=>{
b=null,c.classList.remove("ts-pulling")};c.addEventListener("pointerup",A),c.addEventListener("pointercancel",A);function m(){
if(D||!$)return;D=!0;let S=$;$=null,M({type:"pull",...S})}return h.follow("msg:custom",S=>{S.type==="trouble"&&(D=!1)}),
h.follow("change:view",B),B(),h.close}function Hs({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding tsw-say",role:"status"}),a=s(
"p",{class:"ts-happened tsw-happened",role:"status"}),c=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,
l=n.gears.map(([k,O])=>s("button",{type:"button",class:"ts-button","data-gear":k,"aria-pressed":"false",onclick:()=>A({type:"\
gear",gear:k})},O)),d=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:k=>A({type:"hold",shaft:k.target.
value})},...bt(n.holds)),p=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:k=>{i=k.target.value,S()}},
...bt(r.dials.map(k=>[k.shaft,k.name]))),f=k=>A({type:"turn",shaft:i,turns:k}),g=`1/${n.marks}`,h=s("div",{class:"ts-too\
ls",role:"group","aria-label":"Turn the shaft"},st("↺ 1 turn",()=>f(-1),"One turn anticlockwise"),st(`↺ ${g}`,()=>f(
-n.step),`${g} turn anticlockwise`),st("↺ a touch",()=>f(-n.fine),"A touch anticlockwise"),st("a touch ↻",()=>f(n.fine),
"A touch clockwise"),st(`${g} ↻`,()=>f(n.step),`${g} turn clockwise`),st("1 turn ↻",()=>f(1),"One turn clockwise"),st(
"Marks to zero",()=>A({type:"reset"}))),L=new Map;for(let k of r.dials){let O=R("g",{},R("circle",{class:"tsw-end",r:34}),
R("line",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),R("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),N=[];for(let P=0;P<
n.marks;P+=1)N.push(R("line",{class:"tsw-tick",y1:-40,y2:P?-47:-52,transform:`rotate(${P*360/n.marks})`})),P&&N.push(R("\
text",{class:"tsw-number",x:57*Math.sin(P*2*Math.PI/n.marks),y:-57*Math.cos(P*2*Math.PI/n.marks)+4},String(P)));let F=R(
"svg",{viewBox:"-70 -70 140 140",class:"tsw-dial","data-shaft":k.shaft,"aria-hidden":"true"},R("circle",{class:"tsw-plat\
e",r:40}),...N,R("path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),O),Z=s("div",{class:"tsw-count",tabindex:"0",role:"\
application","aria-roledescription":"shaft","data-shaft":k.shaft},s("div",{class:"tsw-name"}),F,s("div",{class:"tsw-stro\
kes","aria-hidden":"true"}),s("div",{class:"tsw-figure"}));L.set(k.shaft,{box:Z,svg:F,shaftEnd:O}),Z.addEventListener("f\
ocus",()=>{i!==k.shaft&&(i=k.shaft,S())}),Z.addEventListener("keydown",P=>{if(xt(P))return;let _={ArrowRight:1,ArrowDown:1,
ArrowLeft:-1,ArrowUp:-1,PageDown:1,PageUp:-1}[P.key];_&&(P.preventDefault(),i=k.shaft,f(_*(P.key.startsWith("Page")?1:P.
shiftKey?n.fine:n.step)))});let y=null,E=P=>{let _=F.getBoundingClientRect();return Math.atan2(P.clientX-_.left-_.width/
2,_.top+_.height/2-P.clientY)/(2*Math.PI)};F.addEventListener("pointerdown",P=>{P.button===0&&(y=E(P),F.setPointerCapture(
P.pointerId),Z.focus({preventScroll:!0}),P.preventDefault())}),F.addEventListener("pointermove",P=>{if(y===null)return;let _=E(
P),z=_-y;z-=Math.round(z),y=_,x+=z,B()});let w=()=>{y=null};F.addEventListener("pointerup",w),F.addEventListener("pointe\
rcancel",w)}let x=0,M=!1;function B(){if(M||Math.abs(x)<.002)return;M=!0;let k=x;x=0,f(k)}let b=J({model:t,el:e},{kind:"\
rig"}),$=[s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Hold still: ",d),s("span",{class:"ts-pair"},"Turn by ha\
nd: ",p)),s("div",{class:"tsw-counts"},...[...L.values()].map(k=>k.box)),h,a];b.show(b.asks("How many turns does it take\
?",{first:h,begin:n.closed?"turn a shaft":"engage a gear, then turn a shaft",who:n.closed?"Nothing is saved here; your a\
nswers stand in the form.":void 0}),b.alert,o,!n.closed&&s("div",{class:"ts-tools",role:"group","aria-label":"Gears enga\
ged"},s("span",{},"Engage: "),...l),...n.closed?$:[Ct([c],$)],s("p",{class:"ts-hint tsw-say"},`All three are seen from t\
he clutch side. Drag a dial round, or go to it and use the arrow keys (${g} turn), Shift with an arrow key (a touch) or \
Page Up and Page Down (one turn). Each stroke is a whole turn.`));let D=0,C=null;function A(k){D+=1,b.send({...k,turn:D})}
let m=k=>{let O=[];for(let N=k;N>0;N-=5)O.push(N>=5?"||||/":"|".repeat(N));return O.join(" ")};function S(){let k=t.get(
"view");C!==t.get("figure")&&(C=String(t.get("figure")),c.innerHTML=C);for(let O of Q(c,"[data-wheel]")){let[N,F]=k.wheels[String(
O.dataset.wheel)]??[0,!0];O.setAttribute("transform",`translate(0 ${(N*Number(O.dataset.reach)).toFixed(1)})`),O.classList.
toggle("tsw-behind",!F)}for(let O of l)O.setAttribute("aria-pressed",String(k.engaged.includes(O.dataset.gear)));d.value=
k.held,p.value=i;for(let O of k.dials){let{box:N,shaftEnd:F}=L.get(O.shaft),Z=O.way>0?"↻":O.way<0?"↺":"";F.setAttribute(
"transform",`rotate(${O.angle})`);let[y,,E,w]=N.children;y.textContent=`${O.name}${O.held?", held":O.shaft===i?", your h\
and":""}`,E.textContent=O.strokes||Z?`${Z} ${m(O.strokes)}`:"no stroke",w.textContent=O.figure,N.classList.toggle("tsw-h\
and",O.shaft===i),N.classList.toggle("tsw-held",O.held),N.setAttribute("aria-label",`${O.name}${O.held?", held":""}. ${O.
words}`)}o.textContent=k.finding,a.textContent=k.happened,e.dataset.turn=String(k.turn),M=!1,B()}return b.follow("change\
:view",S),S(),b.close}function Ws({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),c=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,c),u=[],
l=[],d=null,p=t.get("plan").lookingOnly,f=(C,A)=>s("button",{type:"button",class:"ts-button","data-verdict":C,"aria-pres\
sed":"false",onclick:()=>x.send({type:"judge",place:d,verdict:C})},A),g=p?[]:[f("stop","Stop here"),f("well","Fine as it\
 is")],h=s("button",{type:"button",class:"ts-button",onclick:()=>x.send({type:"next"})},"Another day"),L=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...g);t.get("plan").more&&L.append(h);let x=J({model:t,
el:e},{kind:"rig"});x.show(x.asks(p?"What is to be seen at each place?":"Where can somebody get hurt?",{first:p?r:g[0],begin:p?
"choose a place":"choose a place and judge it",who:p?"Nothing is saved here; your answers stand in the form.":void 0}),x.
alert,n,s("p",{class:"ts-keys"},p?"Choose a place to read what can be seen there. Keys: arrows go from place to place.":
"Choose a place, read what can be seen there, and judge it. Keys: arrows go from place to place; Tab goes on to the butt\
ons."),Ct([r],[i,!p&&L]));function M(C,A){let m=C!==d;d=C;for(let[S,k]of l.entries()){let O=u[S][0]===C;k.setAttribute("\
tabindex",O?"0":"-1"),k.setAttribute("aria-pressed",String(O)),k.classList.toggle("tsh-chosen",O),O&&A&&(k.focus({preventScroll:!0}),
B(k))}m&&x.send({type:"choose",place:C})}function B(C){let A=Ht(C,".tsh-hit").getBoundingClientRect(),m=r.getBoundingClientRect();
(A.left<m.left||A.right>m.right)&&(r.scrollLeft+=A.left-m.left-(m.width-A.width)/2),(A.bottom<0||A.bottom>innerHeight||A.
top<0)&&C.scrollIntoView({block:"nearest"})}function b(){let C=t.get("plan");u=C.places,r.innerHTML=C.drawing,Ht(r,"svg").
setAttribute("role","group"),l=u.map(([A])=>Ht(r,`[data-place="${A}"]`)),l.forEach((A,m)=>{A.setAttribute("role","button"),
A.setAttribute("aria-label",`${m+1} ${u[m][1]}`),A.addEventListener("click",()=>M(u[m][0],!0))}),d=String(t.get("view").
chosen),M(d,!1)}r.addEventListener("keydown",C=>{if(xt(C))return;let A=u.findIndex(([k])=>k===d),m=Math.min(6,u.length),
S=A;if(C.key==="ArrowRight")S=A+1;else if(C.key==="ArrowLeft")S=A-1;else if(C.key==="ArrowDown")S=A+m;else if(C.key==="A\
rrowUp")S=A-m;else if(C.key==="Home")S=0;else if(C.key==="End")S=u.length-1;else if(C.key!=="Enter"&&C.key!==" ")return;
C.preventDefault(),S>=0&&S<u.length&&M(u[S][0],!0)});function $(){let C=t.get("view");n.textContent=C.finding;let A=u.findIndex(
([k])=>k===C.chosen);o.textContent=`${A+1}  ${u[A][1]}`,a.textContent=C.seen;let{verdict:m,...S}=C.told;if(c.replaceChildren(),
m){let k=C.judged[C.chosen],O=k==="stop"==(m==="Stop here."),N=k==="stop"?"Stop here":"Fine as it is";c.append(s("p",{class:"\
tsh-verdict"},O?`✓ Yes: ${m}`:`✗ You said “${N}”. The course says: ${m}`),s("dl",{class:"ts-facts"},...Object.entries(
S).flatMap(([F,Z])=>[s("dt",{},F),s("dd",{},Z)])))}for(let k of g)k.setAttribute("aria-pressed",String(C.judged[C.chosen]===
k.dataset.verdict));for(let[k,O]of l.entries()){let N=C.judged[u[k][0]];O.setAttribute("aria-label",`${k+1} ${u[k][1]}${N?
`, judged: ${N==="stop"?"stop here":"fine as it is"}`:""}`);let F=O.querySelector(".tsh-tag");if(!N){F?.remove();continue}
F||(F=R("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),O.append(F)),F.textContent=N==="stop"?"■ \
stop":"○ well"}e.dataset.turn=C.chosen}let D=()=>{b(),$()};return x.follow("change:plan",D),x.follow("change:view",$),
D(),x.close}function _s({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),c=new Map,u=n.sliders.map(([f,g,h,L,x,M])=>{let B=ot(f.replace("_","-")),b=s("output",{class:"\
tsl-figure",for:B}),$=s("input",{id:B,type:"range",min:L,max:x,step:M,oninput:()=>{D(),d.send({type:"set",name:f,value:Number(
$.value)})}}),D=()=>{b.textContent=`${$.value} ${h}`,$.setAttribute("aria-valuetext",`${$.value} ${h==="°"?"degrees":h}`)};
return c.set(f,{slider:$,say:D}),s("div",{class:"tsl-row"},s("label",{for:B},g),$,b)}),l=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>d.send({type:"set",name:"grip",value:l.value})},...bt(n.grips)),d=J({model:t,el:e},{kind:"r\
ig"});d.show(d.asks("Is this lift safe by hand?",{first:c.values().next().value?.slider,begin:"set the load"}),d.alert,r,
s("div",{class:"tsl-sliders",role:"group","aria-label":"The lift"},...u,s("div",{class:"tsl-row"},s("span",{},"Grip"),l)),
a,o,s("p",{class:"ts-keys"},"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));
function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.sum,a.innerHTML=f.drawing;for(let[g,{slider:h,say:L}]of c)
document.activeElement!==h&&(h.value=f.sizes[g]),L();l.value=f.sizes.grip}return d.follow("change:view",p),p(),d.close}var ve={x:90,y:120,perMm:20,radius:82,bevel:30};function so(t){let e=R("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=ve;e.append(R("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),it(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let f=n+p*t.pitch*o;if(p%2){e.append(it(
f,r,f,r+18,"tsi-fine"));continue}let g=p/2;e.append(it(f,r,f,r-(g%5?18:27),g%5?"tsi-fine":"tsi-bold")),g%5===0&&e.append(
ct(f,r-33,String(g)))}let c=R("g",{});e.append(c,ct(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=R("path",{d:`M0 ${r-a+14}L${ve.bevel} ${r-a}L${ve.bevel} ${r+a}L0 ${r+a-14}\
Z`,class:"tsi-body"}),u=R("rect",{x:ve.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),l=R("rect",{x:0,y:r-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),d=R("g",{});return c.append(l,i,u,d),{node:e,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*o} 0)`),d.replaceChildren();for(let f=0;f<t.lines;f+=1){let g=f-p.line;g-=t.lines*Math.round(g/t.lines);let h=g/
t.lines*2*Math.PI;if(Math.abs(h)>1.15)continue;let L=r-(a-8)*Math.sin(h),x=f%5===0;d.append(it(0,L,x?26:16,L,x?"tsi-bold":
"tsi-fine")),x&&d.append(ct(36,L+5,String(f),"start"))}e.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function Fs(t){
return Et(t,(e,n,r)=>{let o=so(e),a=gt("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, \
out to the right",onInput:l=>n({open:l})}),c=ht("Between the faces",e.between,r.between,l=>n({between:l,open:e.top})),i=Y(
"Close until it rests",()=>n({open:-1})),u=e.hands.length?ht("Close it",e.hands,r.hand,l=>n({hand:l})):null;return{asks:"\
How thick is it?",first:i,begin:"close it until it rests",picture:o.node,controls:[Lt(c.row,u?.row),Lt(i,Y("Open",()=>n(
{open:e.top}))),a.row],set(l,d){o.set(l),a.box.value=String(Math.max(0,l.mm)),c.box.value=d.between}}})}function Ks({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[u,l,d]of n.checks){let p=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${l}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:u})}},"Make"),f=Nt("it shows",!1);f.classList.add("t\
sk-shown"),a.set(u,{button:p,shown:f}),o.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},l),Nt("min",!0,
`${d}`),Nt("",!1,p),f))}let c=J({model:t,el:e},{kind:"rig"});c.show(c.asks("What does each check show on your unit?",{first:a.
values().next().value?.button,begin:"make a check",who:"Checks are not saved; make them again after reopening."}),c.alert,
r,be("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));function i(){let u=t.get("view");r.textContent=
u.finding;for(let[l,{button:d,shown:p}]of a){let f=u.shown[l];d.setAttribute("aria-disabled",f?"true":"false"),d.classList.
toggle("ts-off",!!f),d.textContent=f?"Made":"Make",p.textContent=f?`${f[0]?"✓":"✗"} ${f[1]}`:"",p.classList.toggle("\
tsk-failed",!!f&&!f[0])}}return c.follow("change:view",i),i(),c.close}function no(){let t=R("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=R("g"),n=R("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(R("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,R("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=c=>(-135+270*c)*Math.PI/180,o="";function a([c,i,u]){e.replaceChildren();for(let l=0;l*i<=c+
1e-9;l+=1){let d=r(l*i/c),p=l%u===0,f=g=>[110+g*Math.sin(d),104-g*Math.cos(d)];if(e.append(it(...f(p?72:79),...f(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&l%(2*u)===0){let[g,h]=f(58);e.append(ct(g,h+4.5,String(Number((l*i).toFixed(2)))))}}e.
append(ct(110,170,"kN"))}return{node:t,set(c,i,u){String(c)!==o&&(o=String(c),a(c));let l=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*l})`),t.setAttribute("aria-label",u)}}}function Us(t){return Et(t,(e,n,r)=>{
let o=no(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),u=gt("Push",{min:0,max:100,step:1,value:r.travel,onInput:f=>n(
{travel:f}),words:f=>f>=100?"at the shoulder":`${f} % of the way`}),l=[u.row],d=null;if(!e.readingsOnly){let f=ht("Part",
e.places,r.place,x=>n({place:x,travel:0}));d=ht("Driver presses on",e.drivers,r.driver,x=>n({driver:x,travel:0}));let g=ht(
"Seat",e.seats,r.seat,x=>n({seat:x})),h=gt("Pair",{min:0,max:100,step:1,value:r.grip,onInput:x=>n({grip:x}),words:x=>x===
0?"loosest of the fit":x===100?"tightest of the fit":`${x} % from loosest to tightest`}),L=gt("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:x=>n({warmth:x}),words:x=>`${x} °C`});l.unshift(Lt(f.row,d.row,g.row),
h.row,L.row)}let p=s("dl",{class:"ts-facts"});return e.readingsOnly||l.push(p),{asks:"What force does it take, and where\
 does it stop?",first:u.box,begin:"push the part",side:!e.readingsOnly,picture:i,controls:l,set(f,g){f.section!==c&&(c=f.
section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*g.travel/100} 0\
)`),o.set(f.gauge,f.force,f.words),Number(u.box.value)!==g.travel&&document.activeElement!==u.box&&u.set(g.travel),d&&(d.
row.hidden=!f.drives),f.facts&&p.replaceChildren(...At(f.facts))}}})}function qs({model:t,el:e}){let n=t.get("steps"),r=new Map(n),o=s("div",{class:"ts-scroll tsf-near",tabindex:"0",role:"r\
egion","aria-label":"The rules around the chosen step"}),a=s("p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts\
-sentences"}),i=s("select",{class:"ts-box ts-before","aria-label":"Chosen step",onchange:()=>d(i.value)},...bt(n.map(([g,
h],L)=>[g,`${L+1}  ${h}`]))),u=J({model:t,el:e},{kind:"rig",lost(){i.disabled=!0}});u.show(u.asks("What comes before thi\
s step, and what after it?",{first:i,begin:"choose a step, or press one in the picture",who:""}),u.alert,s("p",{class:"t\
s-hint"},t.get("finding")),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",i)),a,o,s("details",{class:"ts-\
keys"},s("summary",{},"In words, with reasons"),c));let l=!1,d=g=>u.send({type:"choose",step:g}),p=g=>{let h=wt(g,"[data\
-step]")?.dataset.step;h&&(l=!0,d(h))};o.addEventListener("click",p),o.addEventListener("keydown",g=>{g.key!=="Enter"&&g.
key!==" "||wt(g,"[data-step]")&&(g.preventDefault(),p(g))});function f(){let g=t.get("near");a.textContent=g.words,i.value=
g.step,o.innerHTML=g.figure,o.querySelector("svg")?.setAttribute("role","group");let h=Q(o,"[data-step]");for(let L of h)
L.setAttribute("role","button"),L.setAttribute("tabindex","0"),L.setAttribute("aria-label",r.get(String(L.dataset.step))??
"");c.replaceChildren(...Bt(g.sentences)),l&&(h[0]??i).focus({preventScroll:!0}),l=!1}return u.follow("change:near",f),f(),
u.close}function oo(){let t=R("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=R("g",{}),n=R("g",{});return e.append(
R("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),it(150,164,150,98,"tsi-bold"),R("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(it(150,86,150,40,"tsi-plunger"),R("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,it(50,164,
250,164,"tsg-centre"),it(150,250,150,80,"tsg-centre"),n,ct(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute(
"transform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function zs(t){
return Et(t,(e,n,r)=>{let o=zt(),a=oo(),c=gt("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:l=>`turn\
ed by ${l}°`,onInput:l=>n({angle:l})}),i=ht("Plunger",e.pressed,r.pressed,l=>n({pressed:l})),u=ht("Stand",e.tilts,r.tilt,
l=>n({tilt:l}));return{asks:"How far does the shaft run out?",first:c.box,begin:"turn the shaft",picture:s("div",{class:"\
tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One mark 0.01 mm, one turn 1 mm"))),controls:[Lt(i.row,
u.row),c.row],set(l,d){o.set(l.mm,l.words),a.set(l.state.angle,Number(l.state.tilt),`Shaft end on, turned by ${l.state.angle}\
°; the plunger stands ${l.state.tilt}° off square. Not to scale.`),c.set(d.angle)}}})}var Ys=(t,e)=>(t+e)%7<2,Xs=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,ye=()=>!1,ke=t=>(e,n)=>n%t===0,ro={"":ye,dots:(t,e)=>t%6<2&&e%
6<2,rising:Ys,cross:Xs,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":ye,"lines-2":ke(14),"lines-3":ke(8),"lines-4":ke(5),"lines-5":ke(
3)};function ao(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var Gs=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function Vs(t,[e,n],r,o,a){let c=n*4,i=new Uint32Array(c*e*4),u=new Map(r.map(([p,,f,g])=>{let h=f?Gs(ao(f),200):
0;return[p,{ground:h,hatch:ro[g]??ye}]})),l={ground:0,hatch:ye},d=Gs(o,190);for(let p=0;p<e;p+=1){let f=(e-1-p)*4;for(let g=0;g<
n;g+=1){let h=t[p*n+g];if(!h)continue;let{ground:L,hatch:x}=u.get(h&15)??l,M=a&&(h&16)!==0,B=a&&(h&32)!==0;for(let b=f;b<
f+4;b+=1)for(let $=g*4;$<(g+1)*4;$+=1){let D=x($,b)||M&&Ys($,b)||B&&Xs($,b);i[b*c+$]=D?d:L}}}return i}var co=600;function Zs(t,e,n,r,o,a){let[c,i]=n;t.width=i*4,t.height=c*4;let u=new Uint8ClampedArray(Vs(e,n,r,o,a).buffer),
l=new ImageData(u,t.width,t.height);t.getContext("2d")?.putImageData(l,0,0)}function lo(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return Zs(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function Qs({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),c=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),u=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),l=J({model:t,el:e},{kind:"rig",lost(){f.setDisabled(!0),Qt(e)}}),d=null,p=y=>{d=ot("turn"),l.send({...y,turn:d})},
f=ie({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(y){f.
drawing.strokes(y),p({type:"lay",entries:y})},onRemove:y=>p({type:"remove",at:y}),onClear:()=>p({type:"clear"})}),g=Y("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),h=s("input",{type:"range",id:ot("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),L=s("output",{for:h.id}),x=yt({id:ot("slide"),onchange:()=>p({type:"slide",by:x.value})},
t.get("view").slides),M=null;h.addEventListener("input",()=>{L.textContent=`${h.value} µm`;let y={type:"flat",um:Number(
h.value)};d===null?p(y):M=y});let{box:B,unit:b}=f.drawing;f.drawing.land.classList.add("tsp-clear"),f.drawing.frame.prepend(
u);let $=(...y)=>s("span",{class:"ts-pair"},...y);l.show(l.asks("Does this film close the gap?",{first:g,begin:"press Cl\
ose the face"}),l.alert,o,Ct([f.drawing.frame,i],[s("div",{class:"ts-tools"},g,$(s("label",{for:x.id},"the other face is"),
x)),s("div",{class:"ts-tools"},a,Y("1 minute passes",()=>p({type:"time",by:1})),Y("5 minutes pass",()=>p({type:"time",by:5}))),
s("div",{class:"ts-tools"},$(s("label",{for:h.id},"faces out of flat by"),h,L)),f.tools,c,s("details",{class:"ts-keys"},
s("summary",{},"Passes laid"),f.empty,f.list)]));function D(){let y=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return y?
y.slice(0,3).map(Number):[0,0,0]}let C="",A="";function m(){let y=t.get("view"),E=r[y.closed?"closed":"film"],w=t.get("g\
rid"),P=w instanceof DataView?new Uint8Array(w.buffer,w.byteOffset,w.byteLength):new Uint8Array(w);Zs(u,P,y.shape,E,D(),
!y.closed);let[_,z]=y.shape,[V,pt]=[y.corner[0]-y.pitch/2,y.corner[1]-y.pitch/2],W=(K,q)=>`${(100*K/q).toFixed(3)}%`;u.style.
left=W(V-B.left,B.width),u.style.width=W(z*y.pitch,B.width),u.style.top=W(B.high-pt-_*y.pitch,B.height),u.style.height=W(
_*y.pitch,B.height);let X=new Set(P.map(K=>y.closed?K:K&15)),v=E.filter(([K])=>X.has(K)),H=`${v.map(([,K])=>K)} ${D()}`;
H!==C&&(C=H,i.replaceChildren(...v.map(K=>lo(K,D()))))}let S=R("g");f.drawing.over.append(S);let k=([y,E])=>[y-B.left,B.
high-E];function O([y,E]){let w=E.map(P=>{let[_,z]=k(P);return`M${_.toFixed(1)} ${z.toFixed(1)}h0.01`});return R("path",
{d:w.join(""),class:"tsp-lump","stroke-width":2*y})}function N(y){let[E,w]=k(y[y.length-1]),P=`M${E-1.3*b} ${w-b}h${2.6*
b}l${-1.3*b} ${2.2*b}Z`;return[R("path",{d:f.drawing.path(y),class:"tsp-way","stroke-width":b}),R("path",{d:P,class:"tsp\
-out"})]}function F(){let y=t.get("view");if(d!==null&&y.turn!==d)return;d=null;let E=JSON.stringify([y.entries,y.notes]);
if(E!==A&&f.show(y.entries,y.notes),A=E,f.drawing.strokes([]),m(),S.replaceChildren(...y.lumps.map(O),...y.leaks.flatMap(
N)),f.drawing.svg.classList.toggle("tsp-shut",y.closed),f.drawing.svg.classList.toggle("tsp-clean",y.closed||y.clean),o.
textContent=y.finding,x.value=y.slide,a.textContent=`minute ${y.minute}`,g.textContent=y.closed?"Lift the face off again":
"Close the face",M===null&&(h.value=String(y.flat),L.textContent=`${y.flat} µm`),c.replaceChildren(...At(y.facts)),M===
null)return;let w=M;M=null,p(w)}l.follow("change:view",F),l.follow("msg:custom",y=>{y.type==="trouble"&&(d=null,f.drawing.
strokes([]))});let Z=new MutationObserver(()=>setTimeout(m,co));return Z.observe(document.body,{attributes:!0,attributeFilter:[
"data-jp-theme-light"]}),F(),()=>{l.close(),Z.disconnect()}}function tn(t){return Et(t,(e,n,r)=>{let o=zt(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),u=e.places.map(([d,p])=>[d,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:d})},p)]),l=[s("p",{class:"ts-hint"},e.rule),Lt(s("span",{},"Set the gauge down at"),...u.map(([,d])=>d))];
return e.readingsOnly||(l.push(Lt(ht("Lip looks towards",e.sides,r.lip,d=>n({lip:d})).row,ht("Lip is",e.greases,r.grease,
d=>n({grease:d})).row,e.sleeves.length?ht("It went",e.sleeves,r.sleeve,d=>n({sleeve:d})).row:"")),l.push(gt("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:d=>`${d.toFixed(2)} mm${d<0?", proud":""}`,onInput:d=>n({
depth:d})}).row,gt("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:d=>d?`${d.toFixed(2)} mm across`:"square",onInput:d=>n(
{lean:d})}).row)),{asks:"Does the seal sit square and deep enough?",first:u[0][1],begin:"set the gauge down",side:!e.readingsOnly,
picture:i,controls:l,set(d,p){d.section!==c&&(c=d.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.setAttribute("t\
ransform",d.placed),o.set(d.dial,d.words);for(let[f,g]of u)g.setAttribute("aria-pressed",String(f===p.place))}}})}function en({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=zt(),a=n.readingsOnly?null:$s(n),c=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),u=qt((C,A)=>M.send({type:"set",state:C,turn:A})),l=C=>{r={...r,...C},u.ask(r)},
d=(C,A)=>{let m=[...r.shims];m[C]=A,l({shims:m.filter(Boolean),turns:0})},p=(C,A,m)=>Y(C,A,{"aria-pressed":m}),f=Y("Turn\
 the shaft ten times",()=>l({turns:r.turns+10})),g=p("Pull the shaft away",()=>l({side:"away"}),"true"),h=p("Push it to \
the dial",()=>l({side:"towards"}),"false"),L=ht("Plunger",n.plungers,r.plunger,C=>l({plunger:C})),x=[s("div",{class:"ts-\
tools"},n.rolls?f:null,L.row,g,h)];if(!n.readingsOnly){let C=ht("Shim",n.shelf,r.shims[0],m=>d(0,m)),A=n.second?ht("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",m=>d(1,m)):null;x.unshift(s("div",{class:"ts-tools"},C.row,A?.row)),x.
push(gt("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:m=>l({warmth:m}),words:m=>m?`case ${Math.round(n.caseRise*
m/100)} K warmer`:"cold, as at the bench"}).row)}let M=J({model:t,el:e},{kind:"rig"}),B=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});B.innerHTML=n.section;let b=[n.readingsOnly?M.asks("How far does the shaft\
 move?",{first:n.rolls?f:h,begin:n.rolls?"turn the shaft":"push the shaft",who:"Take your readings here; write them in t\
he form."}):M.asks("Which shim gives the setting that you want?",{first:x[0].querySelector("select"),begin:"choose a shi\
m"}),M.alert,n.readingsOnly&&B,s("div",{class:"tsg-beside"},!n.readingsOnly&&B,s("div",{class:"tsg-gauge"},o.node,s("div",
{},"Dial at the shaft's right end, one mark 0.01 mm")),n.readingsOnly&&s("div",{class:"tsg-side"},...x,c)),...n.readingsOnly?
[]:[...x,c],a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg\
-wide",tabindex:"0",role:"group","aria-label":"Axis of settings"},a.node)),i];M.show(...b.filter(Boolean));function $(){
let C=t.get("shown");u.waiting||(r=C.state),o.set(C.dial,C.dialWords),g.setAttribute("aria-pressed",String(C.state.side===
"away")),h.setAttribute("aria-pressed",String(C.state.side==="towards")),c.textContent=C.finding,a&&(a.set(C.cold,C.warm,
C.words.join(" ")),i.replaceChildren(...C.words.map(A=>s("p",{},A)))),u.answered(C.turn)}let D=()=>u.free();return M.follow(
"change:shown",$),M.follow("msg:custom",D),$(),M.close}function sn(t){return Et(t,(e,n,r)=>{let o=s("div",{tabindex:"0",role:"group","aria-label":e.name}),a="",c=e.pickers.map(
({key:d,label:p,options:f})=>ht(p,f,r[d],g=>n({[d]:g}))),i=e.sliders.map(({key:d,label:p,min:f,max:g,step:h,unit:L,places:x})=>gt(
p,{min:f,max:g,step:h,value:r[d],words:M=>`${M.toFixed(x)} ${L}`,onInput:M=>n({[d]:M})})),u=c.map(({row:d})=>d),l=u.length>
2?u:u.length?[Lt(...u)]:[];return{asks:e.asks,first:[...c,...i][0].box,begin:c.length?"choose from the first list":"move\
 the first slider",picture:o,controls:[...l,...i.map(({row:d})=>d)],set(d){d.drawing!==a&&(a=d.drawing,o.innerHTML=a)}}})}function nn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),c=s("dl",{class:"ts-facts"}),i=null,u=null,l=(A,m)=>{u={...u,[A]:m},i===null&&d()};function d(){
i=ot("choice"),$.send({type:"choose",chosen:u,turn:i}),u=null}let p=s("div",{class:"tsj-settings"}),f=(A,m,S)=>{let k=ot(
"set");return m.id=k,p.append(s("label",{for:k},A),s("span",{class:"tsj-slide"},m,S)),m},g=(A,m,S)=>f(m,s("select",{class:"\
ts-box",onchange:k=>l(A,k.target.value)},...bt(S.map(k=>typeof k=="string"?[k,k]:k)))),h=(A,m,S)=>f(m,s("input",{type:"r\
ange",oninput:k=>l(A,Number(k.target.value))}),S),L={group:g("group","Bolt of the unit",n.groups),thread:g("thread","Thr\
ead",n.threads),strength:g("strength","Strength class",n.classes),state:g("state","State of the thread",n.states),tool:g(
"tool","Tool",n.tools)},x=s("output",{class:"tsj-figure"}),M=h("torque_nm","Torque",x),B=s("output",{class:"tsj-figure"}),
b=h("engagement_mm","Thread that meets",B),$=J({model:t,el:e},{kind:"rig"});$.show($.asks("What gives way first?",{first:M,
begin:"set the torque"}),$.alert,r,o,s("div",{class:"tsj-bench"},p,a),c);let D=(A,m,S,k,O,N)=>{Tt(A,{min:m,max:S,step:k}),
i===null&&(A.value=String(O)),A.setAttribute("aria-valuetext",N)};function C(){let A=t.get("view");if(i!==null&&A.turn!==
i)return;i=null,u!==null&&d();let{chosen:m}=A;r.textContent=A.finding,o.innerHTML=A.band,a.innerHTML=A.section,c.replaceChildren(
...At(A.facts));for(let[S,k]of Object.entries(L))k.value=m[S];D(M,1,A.topTorque,.5,m.torque_nm,A.torqueText),x.textContent=
A.torqueText,D(b,A.lowEngagement,A.topEngagement,.5,m.engagement_mm,A.engagementText),B.textContent=A.engagementText}return $.
follow("change:view",C),C(),$.close}function on({model:t,el:e}){let n=fe(t),r=Ut(t.get("picture"),{onChoose:a=>n.show("part",[a])}),o=J({model:t,el:e},{kind:"\
rig"});return o.show(o.asks("Where does each part lie?",{first:r.choose,begin:"choose a part",who:""}),o.alert,s("p",{class:"\
ts-finding"},t.get("finding")),...n.any("part")?[Ct(r.nodes,[n.node])]:r.nodes),()=>{n.close(),o.close()}}function Xt(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function Pe(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var De=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function rn(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let c=Xt(e,
n),i=c.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let l=e.map(([f])=>f),d=t==="ArrowLeft"?-1:1,p=Xt(e,l[(l.
indexOf(n)+d+l.length)%l.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let u=t.toLowerCase();return De(c,i).find(l=>o[l].toLowerCase().startsWith(u))}function an({stages:t,stage:e,step:n,isOpen:r}){
let o=Xt(t,e),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(o.at(-1)));return De(o,o.indexOf(String(n))).find(r)??De(a,c).find(
r)}function cn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>V()},
...bt(n.stages.map(([T,G])=>[T,G]))),c=st(n.marked?"Next open step":"Next ready step",()=>y("next"));c.classList.add("ts\
-next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this sta\
ge",onkeydown:T=>w(T)}),u=s("details",{class:"ts-keys"},s("summary",{},"Keys"),"Up and down walk through the steps, left\
 and right change the stage, Enter takes a step in hand; Enter again does it."),l=s("div",{class:"ts-hand",role:"group",
"aria-label":"Step in hand",onkeydown:T=>{T.key!=="Enter"||!T.target.matches("input[type=radio], .ts-number-box")||(T.preventDefault(),
t.get("hand").stands?_():q())}}),d=s("div",{class:"ts-scroll ts-fit"}),p=s("dl",{class:"ts-facts"}),f=s("ul",{class:"ts-\
sentences"}),g=s("p",{class:"ts-prompt"},"Wrong so far"),h=s("select",{class:"ts-box ts-before","aria-label":"A step tha\
t stands"}),L=st("Take out again",()=>{h.value&&A({type:"out",step:h.value},"hand")}),x=st("Put the tools down",()=>A({type:"\
over"},"told"));x.classList.add("ts-over");let M=s("div",{}),B=s("p",{class:"ts-status"}),b=s("details",{ontoggle:()=>{b.
open!==!!t.get("view").record&&A({type:"record",open:b.open})}},s("summary",{},"Build record"),M),$=J({model:t,el:e},{kind:"\
rig"});$.show($.asks("Which step comes next, and what does it need?",{first:c,begin:"press the lit button",who:n.who}),$.
alert,r,B,o,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"ts-tools"},a,c),i),s("div",{},l,s(
"div",{class:"ts-tools"},s("span",{class:"ts-pair"},h,L),x))),p,g,f,b,s("details",{},s("summary",{},"How far each stage \
is"),d),u);let D=0,C=null;function A(T,G=null){D+=1,C=G&&{turn:D,focus:G},e.setAttribute("aria-busy","true"),$.send({...T,
turn:D})}let m="",S=null,k="next",O=T=>!t.get("view").done.includes(T),N=()=>Q(i,"[data-step]"),F=T=>N().find(G=>G.dataset.
step===T)?.focus(),Z=()=>({stages:n.stages,stage:a.value,step:S,isOpen:O});function y(T,G){k=T,A(T==="list"?{type:"take",
step:G}:{type:"next"},"hand")}function E(T){a.value=Pe(n.stages,T)??a.value,S=T,V(),F(T)}function w(T){if(xt(T))return;let G=rn(
T.key,{...Z(),labels:n.labels});G&&(T.preventDefault(),E(G))}function P(){let T=an(Z());T?k==="next"?c.focus():E(T):x.focus()}
function _(){let T=t.get("view").done.length>=Object.keys(n.labels).length;k==="next"&&!T?y("next"):P()}function z(T){let{
done:G,ready:rt}=t.get("view");return G.includes(T)?{sign:"✓",word:"done"}:rt.includes(T)?{sign:"▸",word:"ready"}:{sign:"\
○",word:n.marked?"open":"waits"}}function V(){let T=Xt(n.stages,a.value);(S===null||!T.includes(S))&&(S=T.find(O)??T[0]);
let G=t.get("hand").step,rt=JSON.stringify([a.value,T.map(z),G]);if(rt===m){for(let mt of N())mt.tabIndex=mt.dataset.step===
S?0:-1;return}m=rt;let ft=N().find(mt=>mt===document.activeElement)?.dataset.step;i.replaceChildren(...T.map(mt=>pt(mt,G))),
ft&&F(ft)}function pt(T,G){let{sign:rt,word:ft}=z(T);return s("button",{type:"button",class:`ts-button ts-buildstep ts-b\
uildstep-${ft}`,"data-step":T,tabindex:T===S?"0":"-1","aria-current":T===G?"step":!1,"aria-label":`${n.labels[T]}: ${ft}`,
onclick:()=>{S=T,y("list",T)}},Mt(rt),n.labels[T])}let W="",X=new Map;function v(T){let G=Wt(T),rt=s("p",{class:"ts-read",
id:G.read,role:"status"}),ft=0,mt=j=>{A({type:"set",name:T.name,value:j}),ft=D},et=Pt(T).make(T,G,mt,()=>{}),I=_t(T,G,null);
return I.append(et.element,rt),I.dataset.field=T.name,{element:I,flush:()=>et.flush?.(),show(j={},tt){if(tt<ft)return;et.
show(j);let lt=j.read?`read as ${j.read}`:"";rt.textContent=j.error?`▲ Look again: ${j.error}`:lt}}}let H=T=>s("dl",{class:"\
ts-facts"},...At(T));function K(){let T=t.get("hand"),G=JSON.stringify(T);if(G===W)return;if(W=G,l.dataset.stands=String(
!!T.stands),X=new Map((T.fields??[]).map(et=>[et.name,v(et)])),!T.step){l.replaceChildren(s("p",{class:"ts-hint"},"No st\
ep in hand. Choose one from the list, or press the button above it."));return}let rt=st(`Do it: ${T.label}`,q);rt.classList.
add("ts-do");let ft=T.stands?[st("Go on",_),st("Take it out again",()=>A({type:"out",step:T.step},"hand"))]:[rt];l.replaceChildren(
s("p",{class:"ts-prompt ts-hand-name",tabindex:"-1"},T.label),...T.plain.map(et=>s("p",{class:"ts-hint"},et)),...T.cautions.
map(et=>s("p",{class:"ts-caution"},s("b",{},"Take care: "),et)),...T.read.length?[s("p",{class:"ts-prompt"},"Read at the\
 bench"),H(T.read)]:[],...T.card.length?[H(T.card)]:[],...[...X.values()].map(et=>et.element),s("div",{class:"ts-tools"},
...ft));let mt=Pe(n.stages,T.step);mt&&([a.value,S]=[mt,T.step])}function q(){for(let T of X.values())T.flush();A({type:"\
do"},"after")}function nt(){let T=t.get("view").asked_back,G=Q(l,"[data-field]").find(mt=>mt.dataset.field===T),rt=G&&Q(
G,"input:not(:disabled), select, button"),ft=Q(l,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .t\
s-do, .ts-tools button");return rt?.[0]??ft[0]}function U(){let T=t.get("view"),G=T.told;r.textContent=T.finding,B.textContent=
T.status,B.hidden=!T.status,o.textContent!==G.join("")&&o.replaceChildren(...G.map(ft=>s("p",{},ft))),K(),V();for(let[ft,
mt]of X)mt.show(T.states[ft],T.turn);if(d.dataset.shown!==T.figure&&(d.innerHTML=T.figure,d.dataset.shown=T.figure),p.replaceChildren(
...At(T.facts)),f.replaceChildren(...Bt(T.faults.map(([,ft])=>ft))),g.hidden=f.hidden=!T.faults.length,dt(T.done),M.innerHTML=
T.record,b.open=!!T.record,e.setAttribute("aria-busy",String(T.turn<D)),!C||T.turn<C.turn)return;let{focus:rt}=C;C=null,
rt==="told"?o.focus():rt==="after"&&!t.get("hand").step?P():(nt()??c).focus()}function dt(T){if(h.disabled=L.disabled=!T.
length,h.dataset.done===T.join(" "))return;h.dataset.done=T.join(" ");let G=[...T].reverse();h.replaceChildren(...bt(G.map(
rt=>[rt,n.labels[rt]])))}return $.follow("change:view",U),U(),$.close}function uo(t){let e=R("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=it(
r,o,r,o,"tsi-adapter"),c=R("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=it(r,o+74,r,o+74,"tsi-arm"),u=ct(r,o+94,"");return e.
append(it(r,o,r+440,o,"tsi-lever"),a,c,R("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),ct(r+440,o-20,"hand, middle of the gr\
ip","end"),ct(r+20,o-20,"square drive","start"),it(r+440,o+10,r+440,o+84,"tsg-centre"),i,u,ct(8,242,"lengths to scale","\
start")),{node:e,set(l){let d=l.state.angle/180*Math.PI,p=r-l.state.reach*n*Math.cos(d),f=o-l.state.reach*n*Math.sin(d);
Tt(a,{x2:p,y2:f}),Tt(c,{cx:p,cy:f}),Tt(i,{x1:p,x2:r+440}),Tt(u,{x:(p+r+440)/2}),u.textContent="the lever from bolt to ha\
nd, along the wrench",e.setAttribute("aria-label",`${t.name}. ${l.words}`)}}}function ln(t){return Et(t,(e,n,r)=>{let o=uo(
e),a=(i,u,l,d,p,f)=>gt(i,{min:l,max:d,step:p,value:r[u],words:g=>`${g} ${f}`,onInput:g=>n({[u]:g})}),c={setting:a("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{asks:"What does the bolt get?",first:c.reach.box,begin:"\
lengthen the adapter",picture:o.node,controls:Object.values(c).map(i=>i.row),set(i,u){o.set(i);for(let[l,d]of Object.entries(
c))d.set(u[l])}}})}var xe=t=>typeof t=="string"?t:t.text;function dn(t,e,n){let r=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
o=a=>xe(a.cells[e]??"").trim();return[...t].sort((a,c)=>{let[i,u]=[o(a),o(c)];if(!i||!u)return+!i-+!u;let[l,d]=[Number.parseFloat(
i),Number.parseFloat(u)],p=Number.isNaN(l)||Number.isNaN(d)||l===d?r.compare(i,u):l-d;return n?-p:p})}function Vt(t,e){let n=document.getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${r}${t}/${e.split("/").map(encodeURIComponent).join("/")}`}function po(t){let e="";for(let n=0;n<t.length;n+=32768)e+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(e)}
async function un(t,e,n){let r=0;do{let o=new Uint8Array(await n.slice(r,r+524288).arrayBuffer()),a=r===0;r+=524288;let c=r>=
n.size;t.send({type:"file",field:e,name:n.name,data:po(o),first:a,last:c})}while(r<n.size)}var fo=400;function pn({model:t,el:e}){let n=J({model:t,el:e},{kind:"desk"}),r=s("p",{class:"ts-said",role:"status"}),o=s(
"div",{class:"ts-desk-body"}),a=s("div",{class:"ts-desk-here","aria-hidden":"true"}),c=s("div",{class:"ts-busy"}),i=s("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),u=t.get("cohort"),l=s("input",{id:ot("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:l.value})});l.value=t.get("by"),n.show(s("div",{class:"\
ts-desk-top"},s("b",{},It([u.name,u.college]).join(", ")),s("span",{class:"ts-pair"},s("label",{for:l.id},"At the desk (\
your name, for the trail)"),l)),u.invented?s("p",{class:"ts-hint"},u.invented):null,i,c,n.alert,r,o);let d=new Map,p=new Map,
f=new Map,g=new Map,h=!1,L="",x="",M=!1,B=()=>h||Object.keys(t.get("busy")).length>0,b=(v,H={})=>{B()||n.isLost()||(v!==
"look"&&(r.textContent="",n.alert.textContent="",C()),t.send({type:v,...H}))},$=()=>Q(e,"[data-key]");function D(){let v=$().
find(H=>H.dataset.key===L);return v&&o.contains(v)?v.closest("form, section"):null}function C(){let v=D();v?v.append(c,a):
(i.after(c),a.remove());let[H,K]=[r.textContent,n.alert.textContent];a.replaceChildren(...It([H&&s("p",{class:"ts-told"},
H),K&&s("p",{class:"ts-trouble"},K)]));for(let q of[r,n.alert])q.classList.toggle("ts-hidden",!!v);return v}function A(){
let v=C(),H=[n.alert,r].find(q=>q.textContent);(v?a.childElementCount?a:null:H)?.scrollIntoView({block:"nearest"})}async function m(v,H,K=""){
if(B()||n.isLost())return;L=H,M=!0,h=!0;try{for(let[nt,U]of g){let[dt]=U.files??[];dt&&await un(t,nt,dt)}}finally{h=!1}let q=[
...p].map(([nt,U])=>[nt,[...U]]);b("do",{act:v,of:K,typed:Object.fromEntries(d),ticked:Object.fromEntries(q)})}function S(v){
let{name:H,of:K}=v,q=ot("field"),nt=v.hint?s("span",{class:"ts-hint",id:`${q}-hint`},v.hint):null,U={id:q,"data-key":`fi\
eld:${H}`,"aria-describedby":nt?.id},dt=s("label",{for:q},v.label);if(!d.has(H)&&K!=="file"&&d.set(H,K==="tick"?v.value===
"yes":v.value),K==="file"){let rt=g.get(H)??s("input",{type:"file",class:"ts-file"});for(let[ft,mt]of Object.entries(U))
mt&&rt.setAttribute(ft,mt);return g.set(H,rt),s("div",{class:"ts-desk-field"},dt,rt,nt)}if(K==="tick"){let G=s("input",{
type:"checkbox",...U});G.checked=d.get(H)===!0,G.addEventListener("change",()=>d.set(H,G.checked));let rt=s("label",{class:"\
ts-option",for:q},G,v.label);return s("div",{class:"ts-desk-field"},rt,nt)}let T=K==="choice"?yt(U,v.options):K==="long"?
s("textarea",{class:"ts-box",rows:"3",maxlength:"2000",...U}):s("input",{class:"ts-box",autocomplete:"off",maxlength:"40\
0",...U});return T.value=String(d.get(H)??""),K==="choice"&&!v.options.some(([G])=>G===d.get(H))&&(T.value=v.options[0]?.[0]??
"",d.set(H,T.value)),T.addEventListener("input",()=>d.set(H,T.value)),s("div",{class:"ts-desk-field"},dt,T,nt)}function k(v){
let H=ot("form"),K=s("div",{class:"ts-doing"}),q=()=>{K.replaceChildren(...v.acts.map(U=>Y(U.label,()=>U.sure?nt(U):m(U.
id,`act:${U.id}`),{class:U.first?"ts-button ts-first":"ts-button","data-key":`act:${U.id}`})))},nt=U=>{let dt=ot("sure"),
T=s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":dt},s("p",{id:dt},U.sure),s("div",{class:"ts-d\
oing"},Y(`Yes: ${U.label}`,()=>m(U.id,`act:${U.id}`),{"data-key":`act:${U.id}`}),Y("No, leave it",()=>{q(),Q(K,`[data-ke\
y="act:${U.id}"]`)[0]?.focus()})));K.replaceChildren(T),T.focus()};return q(),s("form",{class:"ts-desk-form","aria-label\
ledby":v.title?H:null,onsubmit:U=>U.preventDefault()},v.title?s("h3",{id:H},v.title):null,v.hint?s("p",{class:"ts-hint"},
v.hint):null,v.fields.length?s("div",{class:"ts-desk-fields"},...v.fields.map(S)):null,v.acts.length?K:null)}function O(v,H){
if(typeof v=="string")return v;let K=v.act?Y(v.text,()=>m(v.act,H,v.of),{class:"ts-cell","aria-label":v.label||null,"dat\
a-key":H}):v.text;return s("span",{},v.shape?Mt(v.shape):null,K)}function N(v){let H=ot("table"),K=s("h3",{id:H},v.title);
if(!v.rows.length)return s("section",{},K,s("p",{},v.empty));let q=p.get(v.id)??new Set,nt=new Set(v.rows.map(({key:et})=>et));
for(let et of q)nt.has(et)||q.delete(et);p.set(v.id,q);let U=s("tr",{}),dt=s("tbody",{}),T=v.pick?s("input",{type:"check\
box","aria-label":"all","data-key":`all:${v.id}`}):null,G=()=>{T&&(T.checked=q.size===v.rows.length,T.indeterminate=q.size>
0&&!T.checked)},rt=()=>{let et=f.get(v.id),I=et?dn(v.rows,et.column,et.down):v.rows;dt.replaceChildren(...I.map(mt)),U.replaceChildren(
...T?[s("th",{class:"ts-tick"},T)]:[],...v.columns.map(ft)),G()},ft=(et,I)=>{let j=f.get(v.id),tt=j?.column===I,lt=tt?j.
down?"descending":"ascending":null,kt=()=>{f.set(v.id,{column:I,down:tt&&!j.down}),rt(),Q(U,`[data-key="${ut}"]`)[0]?.focus()};
if(!et)return s("td");let ut=`sort:${v.id}:${I}`;return s("th",{scope:"col","aria-sort":lt,class:v.numbers.includes(I)?"\
ts-figure":null},Y(et,kt,{class:"ts-sort","data-key":ut}),tt?Mt(j.down?"▼":"▲"):null)},mt=et=>{let I=v.pick?s("input",
{type:"checkbox","aria-label":et.cells.slice(0,3).map(xe).join(" "),"data-key":`row:${v.id}:${et.key}`}):null;return I&&
(I.checked=q.has(et.key),I.addEventListener("change",()=>{I.checked?q.add(et.key):q.delete(et.key),G()})),s("tr",{},I?s(
"td",{class:"ts-tick"},I):null,...et.cells.map((j,tt)=>{let lt=!tt&&!!xe(j);return s(lt?"th":"td",{scope:lt?"row":null,class:v.
numbers.includes(tt)?"ts-figure":null},O(j,`cell:${v.id}:${et.key}:${tt}`))}))};return T?.addEventListener("change",()=>{
if(q.clear(),T.checked)for(let{key:et}of v.rows)q.add(et);for(let et of Q(dt,"td.ts-tick input"))et.checked=T.checked}),
rt(),s("section",{},s("div",{class:"ts-desk-caption"},K,Y("Save as CSV",()=>t.send({type:"export",table:v.id}),{"aria-la\
bel":`Save as CSV: ${v.title}`,"data-key":`export:${v.id}`})),s("div",{class:"ts-desk-scroll",role:"region",tabindex:0,"\
aria-labelledby":H},s("table",{class:"ts-table","aria-labelledby":H},s("thead",{},U),dt)))}function F(v){if(v.kind==="ta\
ble")return N(v);if(v.kind==="form")return k(v);if(v.kind==="link"){let H=v.how==="edit"?"lab/tree":v.how,q={class:"ts-l\
ink",href:H?Vt(H,v.path):v.path,target:"_blank"};return s("p",{},s("a",{...q,"data-key":`link:${v.path}`},v.text))}return v.
how==="head"?s("h3",{},v.text):s("p",{class:v.how==="hint"?"ts-hint":null},v.text)}function Z(v){n.isLost()||(x=B()?v:"",
!x&&(L="",b("page",{name:v})))}function y(){let v=t.get("page");i.replaceChildren(...t.get("pages").map(([H,K])=>Y(K,()=>Z(
H),{class:"ts-button","aria-current":H===v?"page":null,"data-key":`page:${H}`})))}let E=t.get("cleared"),w=t.get("page");
function P(){let v=$().find(U=>U===document.activeElement)?.dataset.key,H=o.contains(document.activeElement),K=Q(o,".ts-\
desk-scroll").map(U=>U.scrollTop);(t.get("page")!==w||t.get("cleared")!==E)&&(d=new Map,p=new Map,g=new Map,{page:w,cleared:E}=
{page:t.get("page"),cleared:t.get("cleared")}),r.textContent=t.get("said"),n.alert.textContent=t.get("trouble"),y();let q=new Map(
t.get("pages")),nt=s("h2",{tabindex:-1},q.get(w));if(o.replaceChildren(nt,...t.get("parts").map(F)),Q(o,".ts-desk-scroll").
forEach((U,dt)=>{U.scrollTop=K[dt]??0}),C(),v||H){let U=$().find(dt=>dt.dataset.key===v);(U??nt).focus({preventScroll:!!U})}
M&&!Object.keys(t.get("busy")).length&&(M=!1,A())}let _;function z(){let v=t.get("busy");if(o.setAttribute("aria-busy",String(
B())),clearTimeout(_),!Object.keys(v).length){c.replaceChildren(),x&&setTimeout(()=>x&&Z(x),0);return}let{doing:H,done:K,
of:q}=v,nt=q?`${H}: ${K} of ${q}`:`${H} …`,U=()=>{c.replaceChildren(s("progress",q?{max:q,value:K,"aria-label":H}:{"ar\
ia-label":H}),s("span",{role:"status"},nt))};c.childElementCount?U():_=window.setTimeout(U,fo)}n.follow("change:turn",()=>setTimeout(
P,0)),n.follow("change:busy",z),n.follow("change:by",()=>{l.value=t.get("by")}),n.follow("msg:custom",v=>{if(v.type==="t\
rouble"&&A(),v.type!=="save")return;let H=URL.createObjectURL(new Blob([`\uFEFF${v.text}`],{type:"text/csv"}));s("a",{href:H,
download:v.name}).click(),setTimeout(()=>URL.revokeObjectURL(H),1e3)}),P(),z();let V=!0,pt=new IntersectionObserver(([v])=>{
V=v.isIntersecting});pt.observe(e);let W=0,X=setInterval(()=>{let v=t.get("every");W+=1,v&&W>=v&&V&&!document.hidden&&(W=
0,b("look"))},1e3);return()=>{clearInterval(X),clearTimeout(_),pt.disconnect(),n.close()}}function Re(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=c=>String(c).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var ho="twoshaft-unsent:";function fn(t,e){let n=ho+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,c,i,u=new Date)=>o({...r(),[a]:{value:c,
base:i,at:u.toISOString()}}),drop(a){let{[a]:c,...i}=r();c&&o(i)}}}function hn(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var jt=null,go="input, button, select, textarea, summary, a, [tabindex]",gn=t=>[...t.querySelectorAll(go)];function mn(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?jt={form:e,at:gn(t).indexOf(a),from:null}:jt?.form===e&&t.
isConnected&&(jt=null))},r=({target:a})=>{jt?.form===e&&a instanceof HTMLInputElement&&(jt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(jt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=jt,i=gn(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var mo=["print","colour"];function Jt(t){for(let e of mo){let n=t?.[e];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${e}`,n):document.documentElement.removeAttribute(`data-ts-${e}`))}}function wn(){Jt({print:"",colour:""})}function bn(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),u=Y("Use these figures",()=>f("yes")),l=Y(
"Go back to the drawn figures",()=>f("no")),d=!1,p=a.map(h=>{let L=ot("bench"),x=h.options.length?s("select",{class:"ts-\
box",id:L,"aria-describedby":`${L}-read`},s("option",{value:""},"choose"),...bt(h.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:L,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${L}-hint ${L}-read`}),
M=s("span",{class:"ts-hint",id:`${L}-hint`},h.hint),B=s("p",{class:"ts-read",id:`${L}-read`}),b=h.text,$=()=>{x.value.trim()!==
b.trim()&&(b=x.value,e({type:"bench",name:h.name,value:x.value}))};return x.addEventListener(h.options.length?"change":"\
blur",$),x.addEventListener("keydown",D=>{D.key==="Enter"&&(D.preventDefault(),$())}),{name:h.name,flush:$,input:x,element:s(
"div",{class:"ts-bench-row"},s("label",{for:L},h.prompt),s("div",{class:"ts-line-of"},x,M),B),show(D){if(!D)return;(document.
activeElement!==x||x.value===b)&&(x.value=D.text,b=D.text),x.setAttribute("aria-invalid",String(!!D.error)),B.classList.
toggle("ts-error",!!D.error);let C=D.error?[Mt("▲")," "]:[],A=D.read&&!D.options.length&&`read as ${D.read}`,m=D.error||
[A,D.origin].filter(Boolean).join(", ");B.replaceChildren(...C,m)}}}),f=h=>{for(let L of p)L.flush();d=!0,e({type:"bench",
name:"in-use",value:h})};o.append(s("summary",{},c),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They are used in place of the drawn figures in this task, all of them or none. Your answers are marke\
d on them by the same rules."),s("div",{class:"ts-bench-rows"},...p.map(h=>h.element)),i,s("div",{class:"ts-tools"},u,l));
function g(){let h=r(),L=new Map(h.rows?.map(b=>[b.name,b]));for(let b of p)b.show(L.get(b.name));c.textContent=h.used?"\
✓ This task uses figures from the bench":"Use readings from the bench",l.hidden=!h.wanted,u.hidden=h.used&&!h.stale;let x=h.
wanted&&!h.used?"▲ ":h.used?"● ":"○ ",M=h.used?"in use":h.wanted?`not used; the drawn figures stand. ${h.refused}`:
"not used; the drawn figures stand",B=h.stale?` The tables and choices of this task are still the ones from before. ${h.
used?"Press the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${x}${M}${B}`,
h.wanted&&!h.used&&(o.open=!0)}return{element:o,show:g,hear(h){h.type!=="bench-saved"||h.name!=="in-use"||!d||(d=!1,r().
stale&&n())},lost(){for(let h of[u,l,...p.map(L=>L.input)])h.disabled=!0}}}var wo=5e3,bo=2e3,vo={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},je="kept in this browser until it can be\
 saved";function ko(t,e,n,r){let o=Pt(t),a=Wt(t),c=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),u=0,l=null,d={},p=()=>{clearTimeout(l??void 0),l=null},f=b=>{n.put(t.name,b,d.revision??0),g(b)},g=b=>{u+=
1,x("wait",r()?je:"saving"),p(),l=window.setTimeout(()=>x("wait",je),wo),e({type:"save",name:t.name,value:b,turn:u})},h=o.
make(t,a,f,(b,$)=>{b?(n.put(t.name,$,d.revision??0),x("wait","not saved yet: press Enter or leave the box")):l===null&&(n.
drop(t.name),M(d))}),L=_t(t,a,a.status);o.status==="above"?L.append(i,h.element,c):L.append(h.element,c,i);function x(b,$){
i.className=`ts-status ts-status-${b}`,i.dataset.text!==$&&(i.dataset.text=$,i.replaceChildren(Mt(vo[b]),` ${$}`))}function M(b,$=!1){
if(d=b??{},h.show(d),c.replaceChildren(d.read?`read as ${d.read}`:""),!$)if(d.error){let{error:D,saved:C="",note:A}=d;x(
"unread",`Look again: ${D} Kept as typed, ${Re(C)}${A?`; ${A}`:""}.`)}else d.saved&&!d.blank?x("saved",`saved ${Re(d.saved)}${d.
note?`; ${d.note}`:""}`):x("none",o.blank??"not answered yet")}let B=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:L,show(b){l===null&&M(b,B())},saved(b){b.turn===u&&(h.pending?.()||n.drop(t.name),p(),M(b.state))},refused(b){
b.turn===u&&(p(),h.refused(),x("bad",`not saved: ${b.reason}`))},off(){clearTimeout(l??void 0),(l!==null||h.pending?.())&&
x("wait",je)},catchUp(){let b=n.get(t.name);b&&(hn(b,d)?(h.show({...d,value:b.value,error:""}),g(b.value)):n.drop(t.name))},
flush:()=>h.flush?.(),summary:()=>({answered:!!d.saved&&!d.blank&&!d.error&&!d.short,unread:!!d.error,trouble:B(),waiting:l!==
null})}}function vn({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=fn(window.localStorage,r),a=!1,c=()=>a||p.isLost(),
i=n.map($=>ko($,g,o,c)),u=new Map(i.map($=>[$.name,$])),l=s("p",{class:"ts-who"}),d=s("p",{class:"ts-total"});Jt(t.get("\
look"));let p=J({model:t,el:e},{kind:"form",lost(){for(let $ of i)$.off();f.lost(),h()},line($){a=$;for(let D of i)$?D.off():
D.catchUp();h()}}),f=bn(t,p.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(s("div",
{class:"ts-top"},l,d),p.alert,f.element,...i.map($=>$.element)),e.dataset.task=t.get("task_id");function g($){p.send($),
h()}function h(){let $=i.map(N=>N.summary()),D=$.filter(N=>N.answered).length,C=$.filter(N=>N.trouble).length,A=$.some(N=>N.
waiting),m=$.filter(N=>N.unread).length,S=C?`${C} not saved`:A?c()?"the rest kept in this browser":"saving":D&&!m?"all s\
aved":"",k=[`${D} of ${i.length} answered`,m?`${m} cannot be read`:"",S];d.textContent=k.filter(Boolean).join(", ");let O={
task:t.get("task_id"),answered:D,asked:i.length,unread:m};e.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:O}))}function L(){l.textContent=t.get("header");let $=t.get("states");for(let D of i)D.show($[D.name]);h()}let x=0,
M=()=>{if(document.visibilityState==="hidden")for(let $ of i)$.flush();document.visibilityState!=="visible"||Date.now()-
x<bo||(x=Date.now(),p.send({type:"look"}))},B=r?new BroadcastChannel(`twoshaft-saved:${r}`):null;B?.addEventListener("me\
ssage",({data:$})=>{$===t.get("task_id")&&p.send({type:"look"})}),document.addEventListener("visibilitychange",M),window.
addEventListener("focus",M),e.addEventListener("focusin",$=>{$.relatedTarget instanceof Node&&e.contains($.relatedTarget)||
M()}),p.follow("change:states change:header",L),p.follow("msg:custom",$=>{$.type==="saved"&&(u.get($.name)?.saved($),B?.
postMessage(t.get("task_id"))),$.type==="refused"&&u.get($.name)?.refused($),h()}),p.follow("msg:custom",f.hear),p.follow(
"change:bench",f.show),L();for(let $ of i)$.catchUp();h(),f.show(),p.alert.textContent=t.get("notice");let b=mn(e,`${r}/${t.
get("task_id")}`);return()=>{b(),B?.close(),p.close(),document.removeEventListener("visibilitychange",M),window.removeEventListener(
"focus",M)}}function $e(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var yo={right:"●",other:"◆",unread:"▲"};function xo(t){let e=Wt(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),r=null,o=Pt(t).make(t,e,i=>{r=i,o.show({value:r}),c(void 0)},(i,u)=>{i&&(r=u)}),a=_t(t,e,e.status);a.append(o.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let u=i?[Mt(yo[i.how]),s("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...u)}return{name:t.name,element:a,value(){return o.flush?.(),r},show(i,u){i!==void 0&&(r=i,o.show(
{value:r,saved:"given"})),c(u)},still(i){o.setDisabled(i),a.classList.toggle("ts-given",i)}}}function kn({model:t,el:e}){
let n=J({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let r=s("p",{class:"ts-title",role:"heading","aria-\
level":"3"}),o=s("p",{class:"ts-lead"}),a=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-asked"}),i=Y(t.get("give"),()=>{
let L=Object.fromEntries(d.map(x=>[x.name,x.value()]));n.send({type:"give",values:L})});i.classList.add("ts-first");let u=Y(
"",()=>n.send({type:"fresh"})),l=t.get("all")?Y(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,r,o,a,c,s("p",{class:"ts-acts"},i,u,l));let d=[],p=()=>{let L=t.get("values"),x=t.get("told");for(let $ of d)
$.show(L[$.name],x[$.name]),$.still(x[$.name]!==void 0&&x[$.name].how!=="unread");let M=d.some(({name:$})=>!x[$]||x[$].how===
"unread"),B=document.activeElement===i;if(i.hidden=!M,u.textContent=t.get("fresh"),u.hidden=M||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!B||M)return;let b=Q(e,".ts-told")[0];b.tabIndex=-1,b.focus({preventScroll:!0})},f=()=>{(Q(c,"input, sel\
ect, [tabindex]")[0]??(u.hidden?i:u)).focus({preventScroll:!0})},g=()=>{d=t.get("fields").map(xo),c.replaceChildren(...d.
map(({element:L})=>L)),r.textContent=t.get("title"),r.hidden=!r.textContent,o.textContent=t.get("lead"),o.hidden=!o.textContent,
a.replaceChildren(...At(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let L=e.contains(
document.activeElement);g(),L&&f()}),n.follow("change:told change:values change:notice change:fresh",p),g();let h=t.get(
"place");if(h){let L=$e(sessionStorage,localStorage,h).get();t.send({type:"who",id:L?.id??"",ticket:L?.ticket??""})}return()=>n.
close()}var yn="twoshaft-mine";var xn="This is done as soon as the connection is back.",$o={"to get":"○",open:"◐","handed in":"●","changed since":"\
◑",feedback:"✓"},So={"to get":"To get",open:"Open","handed in":"Handed in","changed since":"Changed after handing in",
feedback:"Marked"},Se=(t,e,n)=>s("a",{href:Vt("lab/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"t\
s-link"},e);function $n(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:r,unread:o})=>s("li",{},`${e}\
: `,n===r?"nothing answered":n?`${n} of ${r} missing`:"",...o.map(([a,c])=>s("span",{},s("b",{},"cannot be read: "),`“${a}\
” ${c}`)))))}function Lo(t){let e=({name:r})=>Number(r.split("-").at(-1)),n=[...t].sort((r,o)=>e(r)-e(o)).flatMap(({notebooks:r})=>r.
map(o=>[o.split("/").pop()??"",o]));localStorage.setItem(yn,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(
new Event("storage"))}var Zt=null;function Sn({model:t,el:e}){let n="",r=$e(sessionStorage,localStorage,t.get("place")),
o=!1,a=(w=!0)=>{o=w,o&&Zt&&(u.textContent=xn)},c=J({model:t,el:e},{kind:"start",lost:a,line:a}),i=s("div",{}),u=s("p",{class:"\
ts-said",role:"status"});c.show(c.alert,u,i);let l=(w,P={})=>{i.getAttribute("aria-busy")==="true"||c.isLost()&&P.quietly||
(P.quietly||(Zt={type:w,...P},i.setAttribute("aria-busy","true"),u.textContent=o?xn:"One moment.",c.alert.textContent=""),
c.isLost()||t.send({type:w,...P}))},d=()=>{let w=Zt;Zt=null,w&&(w.type==="sign-in"||t.get("me").id)&&l(w.type,w)},p=(w,P,_,z)=>s(
"button",{type:"button",class:z?"ts-button ts-first":"ts-button","data-key":P,onclick:_},w);function f(){let w=ot("who"),
P=ot("word"),_=s("select",{id:w,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.
get("people").map(([V,pt])=>s("option",{value:V,selected:V===n},pt)));_.addEventListener("change",()=>{n=_.value});let z=s(
"input",{id:P,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data\
-key":"word"});return s("form",{class:"ts-sign-in",onsubmit:V=>{V.preventDefault(),l("sign-in",{name:_.value,word:z.value})}},
s("h2",{},"Who is working?"),s("div",{class:"ts-pair"},s("label",{for:w},"Your name"),_),s("div",{class:"ts-pair"},s("la\
bel",{for:P},"Sign-in word from your slip"),z),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},
"Sign in"),s("p",{class:"ts-hint"},t.get("kept")))}function g(w,P){let _=v=>`${v}:${w.name}`,z=s("div",{class:"ts-doing"});
for(let v of w.feedback.slice(0,1))z.append(s("a",{href:Vt("files",v),target:"_blank",class:"ts-link","data-key":_("feed\
back")},"Read feedback"));for(let v of w.notebooks){let H=w.notebooks.length===1?"Open":`Open ${v.split("/").pop()}`;z.append(
Se(v,H,_(`open ${v}`)))}w.can_get&&z.append(p(w.notebooks.length?"Get again":"Get",_("get"),()=>l("get",{name:w.name}),!w.
notebooks.length)),w.can_hand_in&&z.append(p(w.receipt?"Hand in again":"Hand in",_("hand in"),()=>l("hand-in",{name:w.name})));
for(let v of z.children)v.setAttribute("aria-label",`${v.textContent}: ${w.title}`);let V=t.get("asking")===w.name,pt=w.
receipt||w.unread>0,W=s("tr",{},s("th",{scope:"row"},w.title),s("td",{},w.due||"no date",w.overdue?s("span",{class:"ts-s\
mall-line"},"date passed"):null),s("td",w.receipt?{tabindex:-1,"data-key":_("receipt")}:{},s("span",{class:"ts-shape","a\
ria-hidden":"true"},$o[w.state]||""),s("b",{},So[w.state]||w.state),s("span",{class:"ts-small-line"},w.detail),P?s("span",
{class:"ts-small-line"},`Mark: ${P}`):null),s("td",{},z));if(V)return[W,s("tr",{},s("td",{colspan:4},L(w)))];if(!pt||!w.
gaps.length)return[W];let X=s("td",{colspan:4},s("b",{},h(w)),$n(w.gaps));return[W,s("tr",{},X)]}let h=({left:w,unread:P})=>It(
[w?`${w} ${w===1?"answer is":"answers are"} missing`:null,P?`${P} cannot be read`:null]).join(", ");function L(w){let P=ot(
"question"),_=s("div",{class:"ts-doing"});for(let V of w.notebooks)_.append(Se(V,"Go on with it",`go on:${w.name}`));let z=h(
w);return _.append(p(z?"It is my own work: hand in as it is":"It is my own work: hand in",`hand in anyway:${w.name}`,()=>l(
"hand-in",{name:w.name,own:!0}),!z)),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":P,"data-key":"\
question"},s("p",{id:P},s("b",{},`${w.title}: not handed in yet.${z?` ${z}.`:""}`),z?" An answer that is missing or cann\
ot be read earns nothing.":null),z?$n(w.gaps):null,s("p",{},"By handing in you state: ",s("b",{},t.get("statement"))),_)}
let x=new Set,M={met:"✓",enough:"◐","not yet":"○"};function B(w,P){let _=w.entries.map(W=>P.find(X=>X.name===W)).filter(
W=>W!==void 0),z=w.lesson?Se(w.lesson,`Lesson ${w.title}`,`lesson:${w.lesson}`):s("span",{class:"ts-small-line"},"no les\
son here"),V=s("details",{open:x.has(w.module)},s("summary",{"data-key":`outcomes:${w.module}`},`Outcomes: ${w.count||"n\
one"}`),s("ul",{},...w.outcomes.map(([W,X,v,H])=>s("li",{},s("span",{class:"ts-shape","aria-hidden":"true"},M[W]||""),s(
"b",{},`${W}${v&&W==="enough"?`, ${v}`:""}: `),X,v&&W==="not yet"?`. Still missing: ${v}`:"",H?` (${H})`:""))));V.addEventListener(
"toggle",()=>{V.open?x.add(w.module):x.delete(w.module)});let pt=_.flatMap(W=>g(W,w.marks[W.name]));return s("tbody",{},
s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},w.title,s("span",{class:"ts-assigned"},_.length?"assigned":
"not assigned"))),...pt,s("tr",{},s("td",{colspan:4},z,s("p",{class:"ts-next"},s("b",{},"Next: "),w.next),V)))}function b(){
let w=t.get("me"),P=t.get("entries"),_=s("table",{class:"ts-table"},s("thead",{},s("tr",{},...["Assignment","Due","State",
"What you can do"].map(z=>s("th",{scope:"col"},z)))),...t.get("modules").map(z=>B(z,P)));return s("section",{},s("div",{
class:"ts-me"},s("h2",{},`Working as ${w.name} (${w.id})`),w.ticket?p("Not you? Sign out","sign-out",()=>{r.drop(),l("si\
gn-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),P.length?null:s("p",{},"Nothing is assig\
ned yet."),_,p("Look again","look",()=>l("look")))}function $(){let w=!!t.get("me").id,P=t.get("modules").map(V=>V.lesson),
z=t.get("lessons").filter(([V])=>!w||!P.includes(V));return z.length?s("section",{},s("h2",{},w?"To look things up":"Les\
sons"),s("ul",{class:"ts-lessons"},...z.map(([V,pt])=>s("li",{},Se(V,pt,`lesson:${V}`))))):null}let D=!1,C=t.get("me").id?
null:r.get(),A=C!==null;function m(){let w=t.get("me");w.id?Jt(t.get("look")):wn(),w.id?r.keep(w):(D||C&&!A)&&r.drop(),D=
!!w.id,Lo(w.id?t.get("entries"):[])}let S=0,k="",O=()=>Q(i,"[data-key]"),N=()=>i.querySelector("input[data-key=word]");function F(){
let P=O().find(U=>U===document.activeElement)?.dataset.key;i.removeAttribute("aria-busy");let _=!!t.get("me").id;u.textContent=
t.get("said"),c.alert.textContent=t.get("trouble");let z=N()?.value,V=A?s("p",{},"One moment."):f();i.replaceChildren(...It(
[_?b():V,$()]));let pt=N();pt&&z&&(pt.value=z);let W=k;if(k=t.get("asking"),k&&k!==W&&O().find(U=>U.dataset.key==="quest\
ion")?.focus(),!P||k&&k!==W)return;let X=O().find(U=>U.dataset.key===P),v=P.split(":")[1],H=O().filter(U=>v&&U.dataset.key?.
endsWith(`:${v}`)),K=H.find(U=>U.dataset.key?.startsWith("receipt")),q=H.find(U=>U!==K),nt=P.startsWith("hand in anyway")?
K??q:q;(X??nt??Q(i,"a, button, select")[0])?.focus()}let Z=()=>{clearTimeout(S),S=setTimeout(()=>{let w=A;A=!1,w||(Zt=null),
m(),F(),w&&d()},0)};t.on("change",Z),m(),F(),C?t.send({type:"resume",name:C.id,ticket:C.ticket}):d();let y=()=>{!document.
hidden&&t.get("me").id&&l("look",{quietly:!0})},E=new IntersectionObserver(([w])=>{w.isIntersecting&&y()});return E.observe(
e),document.addEventListener("visibilitychange",y),()=>{clearTimeout(S),t.off("change",Z),E.disconnect(),document.removeEventListener(
"visibilitychange",y),c.close()}}var Co={bench:ws,build:ys,cord:Ss,depth:Ls,desk:pn,exploded:Ns,face:Bs,fault_board:Ps,form:vn,gate:js,gears:Hs,hazards:Ws,
lifting:_s,micrometer:Fs,own_checks:Ks,press:Us,question:kn,rules:qs,runout:zs,sealant:Qs,seat:tn,shims:en,sketch:sn,start:Sn,
thread:nn,unit_section:on,whole_build:cn,wrench:ln};export{Co as screens};
