var hn="http://www.w3.org/2000/svg";function e(t,s={},...n){let o=document.createElement(t);for(let[r,a]of Object.entries(
s))typeof a=="function"?o.addEventListener(r.slice(2),a):a===!0?o.setAttribute(r,""):a!==!1&&a!=null&&o.setAttribute(r,String(
a));return o.append(...Tt(n)),o}function j(t,s={},...n){let o=document.createElementNS(hn,t);return Ot(o,s),o.append(...n),
o}function Ot(t,s){for(let[n,o]of Object.entries(s))o!=null&&t.setAttribute(n,String(o))}function z(t,s,n={}){return e("\
button",{type:"button",class:"ts-button",onclick:s,...n},t)}function St(t,s){return e("select",{class:"ts-box",...t},...wt(
s))}function At(t){return t.flatMap(([s,n])=>[e("dt",{},s),e("dd",{},n)])}function Et(t){return e("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Tt(t){return t.filter(s=>s!=null&&s!==!1)}var je=0;function st(t){return je+=1,`two\
shaft-${t}-${je}-${Math.random().toString(36).slice(2,7)}`}function Nt(t,s){let n=t.querySelector(s);if(!n)throw new Error(
`nothing matches ${s}`);return n}function J(t,s){return[...t.querySelectorAll(s)]}function vt(t,s){let{target:n}=t;return n instanceof
Element?n.closest(s):null}function yt(t){return t.ctrlKey||t.metaKey||t.altKey}function Yt(t){let s=J(t,"button, input, \
select");for(let n of s)n.disabled=!0}function Re(t){for(let s=t.parentElement;s;s=s.parentElement){let n=getComputedStyle(
s).overflowY;if((n==="auto"||n==="scroll")&&s.scrollHeight>s.clientHeight)return s}return document.scrollingElement??document.
documentElement}function Xt(t,s){return Math.hypot(t[0]-s[0],t[1]-s[1])}function nt(t,s,n=t){return z(t,s,{"aria-label":n})}
function wt(t){return[...t].map(([s,n])=>e("option",{value:s},n))}function Dt(t){return t.map(s=>e("li",{},s))}var we=new Map;function bt(t,s){if(we.has(t))throw new Error(`the answer kind ${t} is registered twice`);we.set(t,s)}function Pt(t){
let s=we.get(t.kind);if(!s)throw new Error(`the answer kind ${t.kind} has no browser side`);return s}function Rt(t){let s=st(
t.kind);return{control:`${s}-control`,hint:`${s}-hint`,read:`${s}-read`,status:`${s}-status`}}function Ht(t,s,n){let{prompt:o}=Pt(
t),r={class:"ts-prompt"};if(o==="legend")return e("fieldset",{class:"ts-field","aria-describedby":n},e("legend",r,t.prompt));
let a=o==="label"?e("label",{...r,for:s.control},t.prompt):e("p",r,t.prompt);return e("div",{class:"ts-field"},a)}function Jt(t,s,n,o){let a=t.options.map(([c,i])=>{let d={"aria-describedby":s.status},l=e("input",{type:n,name:s.control,
value:c,...d});return{key:c,input:l,row:e("label",{class:"ts-option"},l,e("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{o(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:e("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:d,input:l}of a)l.checked=i.includes(d)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}bt("choice",{prompt:"legend",make:(t,s,n)=>Jt(t,s,"radio",o=>n(o[0]))});bt("choices",{prompt:"legend",make:(t,s,n)=>Jt(t,s,"checkbox",n)});function Zt(t){return t.filter(([,s])=>s).map(([s,n])=>`${s}=${n}`)}function Qt(t){let s=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(s.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}bt("each",{prompt:"legend",make(t,s,n){let o=t.lines,r=t.options,a=o.map(([c,i],d)=>{let l=`${s.control}-${d}`,u=e("labe\
l",{class:"ts-each-line",for:l},i),p=St({id:l,"aria-describedby":s.status},[["","choose"],...r]);return{key:c,box:p,row:e(
"li",{},u,p)}});for(let{box:c}of a)c.addEventListener("change",()=>{n(Zt(a.map(({key:i,box:d})=>[i,d.value])))});return{
element:e("ol",{class:"ts-each"},...a.map(({row:c})=>c)),show(c){let i=Qt(c.value);for(let{key:d,box:l}of a)l.value=i.get(
d)??""},setDisabled(c){for(let{box:i}of a)i.disabled=c},refused(){}}}});function be(t){let[s="",...n]=t.split(" "),o=s==="wipe"?0:Number(n.shift()),[r="",...a]=n;if(r!=="at")return{hand:s,size:o,
side:r,place:a[0],points:null};let c=a.map(i=>{let[d,l]=i.split(",").map(Number);return[d,l]});return{hand:s,size:o,side:r,
place:"",points:c}}function ve(t,{side:s,place:n,points:o}){return o||(s==="round"?t.holes.find(r=>r.id===n)?.ring??[]:t.
stretches.find(r=>r.id===n)?.lines[s]??[])}function ke(t,s){let{hand:n,size:o,side:r,place:a}=be(s),c=[...t.stretches,...t.
holes].find(d=>d.id===a),i=n==="wipe"?"":` ${o} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[r]??""}`}
function ye(t,s,n){return s==="film"?t.width:s==="bead"?n:s==="wipe"?2*t.width:1}function He(t){let s=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=s.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(s)?Number(s):Number.NaN}function _e(t){let s=0;for(let n=1;n<t.length;n+=1)s+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return s}function We(t,[s,n]){return t.stretches.map(({id:r,lines:a})=>({id:r,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-s,i-n)))})).reduce((r,a)=>a.away<r.away?a:r).id}var gn=.4;function Fe(t,s){let n=gn,o=te(t,n);for(;o.
length>s;)n*=1.5,o=te(t,n);return o.map(([r,a])=>[Math.round(r*10)/10,Math.round(a*10)/10])}function te(t,s){if(t.length<
3)return t;let[n,o]=[t[0],t[t.length-1]],r=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=mn(n,o,t[c]);i>r&&([r,a]=[i,c])}return r<=
s?[n,o]:[...te(t.slice(0,a+1),s).slice(0,-1),...te(t.slice(a),s)]}function mn(t,s,n){let[o,r]=[s[0]-t[0],s[1]-t[1]],a=Math.
hypot(o,r)||1;return Math.abs(o*(n[1]-t[1])-r*(n[0]-t[0]))/a}var ee=14,wn=3,bn=.5,vn=["middle","inside","outside"],se="round ";function kn(t,s){let n=t.outline.map(([W])=>W),o=t.outline.
map(([,W])=>W),[r,a]=[Math.min(...n)-ee,Math.max(...n)+ee],[c,i]=[Math.min(...o)-ee,Math.max(...o)+ee],d=a-r,l=i-c,u=([W,
X])=>`${(W-r).toFixed(1)} ${(i-X).toFixed(1)}`,p=(W,X)=>`M${W.map(u).join("L")}${X?"Z":""}`,f=st("face"),m=d/100,g=2*m,C=(W,X)=>j(
"pattern",{id:`${f}-${W}`,width:g,height:g,patternUnits:"userSpaceOnUse"},j("path",{d:X,class:"tsp-hatch","stroke-width":m/
4})),b=j("defs",{},C("oil",`M0 ${g}L${g} 0`),C("dirt",`M0 ${g}L${g} 0M0 0L${g} ${g}`)),I=t.cavities.map(([,W])=>p(W,!0)).
join(""),P=t.islands.map(W=>p(W,!0)).join(""),x=p(t.outline,!0)+I,$=j("g"),A=j("g"),w=j("g"),h=j("g"),E=j("path",{class:"\
tsp-live",d:""}),S=j("path",{class:"tsp-chosen",d:""}),k=j("path",{class:"tsp-land",d:x,"fill-rule":"evenodd"}),B=j("pat\
h",{class:"tsp-edge",d:x+P,"stroke-width":m/2.5}),D=([W,X],L,_="middle")=>{let F={x:W-r,y:i-X,"font-size":2.5*m,"text-an\
chor":_};return j("text",{class:"tsp-text",...F},L)},G=[(r+a)/2,(c+i)/2],y=(W,X)=>{let L=Xt(W,G)||1;return[W[0]+X*(G[0]-
W[0])/L,W[1]+X*(G[1]-W[1])/L]};for(let{x:W,y:X,d:L,leads:_,name:F}of t.holes){let q={cx:W-r,cy:i-X,"stroke-width":m/4},ot=_===
"blind"?"tsp-hole tsp-blind":"tsp-hole";w.append(j("circle",{...q,r:L/2,class:ot})),_==="to the outside"&&w.append(j("ci\
rcle",{...q,r:L/3,class:"tsp-hole"}));let[U,dt]=y([W,X],-(L/2+4.4*m));w.append(D([U,dt-.8*m],F.replace("bolt ","")))}for(let W of t.
guides){let[X,L]=[W.x-r,i-W.y],_=`M${X-m} ${L}h${g}M${X} ${L-m}v${g}`;w.append(j("path",{class:"tsp-guide",d:_,"stroke-w\
idth":m/2}));let F={"stroke-width":m/5,"stroke-dasharray":`${m} ${m}`};w.append(j("circle",{cx:X,cy:L,r:W.reach,class:"t\
sp-reach",...F}));let q=y([W.x,W.y],W.reach+g),ot=(q[0]-W.x)/(W.reach+g);w.append(D(q,W.name,ot>.5?"start":ot<-.5?"end":
"middle"))}for(let{word:W,points:X,width:L}of t.spots){let[_]=W.split(" "),[F,q]=[X[0],X[X.length-1]],ot=Xt(F,q)||1,[U,dt]=[
-(q[1]-F[1])/ot*L/2,(q[0]-F[0])/ot*L/2],T=[[F[0]+U,F[1]+dt],[q[0]+U,q[1]+dt],[q[0]-U,q[1]-dt],[F[0]-U,F[1]-dt]],K=`url(#${f}\
-${_})`;$.append(j("path",{d:p(T,!0),fill:K,class:"tsp-spot","stroke-width":m/4}));let rt=D(y([(F[0]+q[0])/2,(F[1]+q[1])/
2],9*m),_);rt.classList.add("tsp-spot-word"),w.append(rt)}let v=[100,50,20,10].find(W=>W<d/4)??10,O=`M${m} ${l-m}v${-m}v${m/
2}h${v}v${-m/2}v${m}`,M={x:v+g,y:l-m,"font-size":2.5*m};h.append(j("path",{class:"tsp-edge",d:O,"stroke-width":m/4}),j("\
text",{class:"tsp-text",...M},`${v} mm`));let H=`0 0 ${d.toFixed(1)} ${l.toFixed(1)}`,Y=j("svg",{viewBox:H,class:"tsp-fa\
ce",role:"img","aria-label":s},b,k,$,A,B,w,S,E,h),V=`max-width: ${(25*d/l).toFixed(1)}rem`;return{frame:e("div",{class:"\
ts-pad-face",style:V},Y),svg:Y,over:h,live:E,chosen:S,land:k,path:p,unit:m,box:{left:r,right:a,low:c,high:i,width:d,height:l},
place({clientX:W,clientY:X}){let L=Y.getBoundingClientRect(),_=Math.min(L.width/d,L.height/l);return[r+(W-L.left-(L.width-
_*d)/2)/_,i-(X-L.top-(L.height-_*l)/2)/_]},strokes(W){A.replaceChildren(...W.map(et))}};function et(W){let X=be(W),L=ve(
t,X),_=ye(t,X.hand,Math.max(X.size,m/2)),F=L.length>1?p(L,X.side==="round"):L.length?`${p(L)}h0.01`:"",q=j("path",{d:F,class:`\
tsp-stroke tsp-${X.hand}`,"stroke-width":_});if(X.hand!=="film")return q;let ot=Math.min(8,Math.max(.6,40*X.size)),U={"s\
troke-width":m/3,"stroke-dasharray":`${ot} ${ot}`};return j("g",{},q,j("path",{d:F,class:"tsp-grain",...U}))}}function ne({
face:t,label:s,onLay:n,onRemove:o,onClear:r}){let a=kn(t,s),c=e("p",{class:"ts-hidden","aria-live":"polite"}),i=e("p",{class:"\
ts-read ts-pad-trouble",role:"status"}),d=(O,M)=>e("span",{class:"ts-pair"},e("label",{for:M.id},O),M),l=St({id:st("hand")},
Object.entries(t.hands)),u=e("input",{class:"ts-box ts-size",id:st("size"),type:"text",inputmode:"decimal",autocomplete:"\
off",maxlength:"12"}),p=e("label",{for:u.id},"thickness"),f=St({id:st("place")},t.stretches.map(({id:O,name:M})=>[O,M]));
f.append(e("optgroup",{label:"Round a hole"},...t.holes.map(({id:O,name:M})=>e("option",{value:`${se}${O}`},`round ${M}`))));
let m=St({id:st("side")},vn.map(O=>[O,t.sides[O]])),g=z("Lay it here",()=>h([w(f.value)])),C=z("Lay it on every stretch",
()=>h(t.stretches.map(({id:O})=>w(O)))),b=z("Take back the last pass",()=>{x&&o(x-1,!0)}),I=z("Clear the face",r),P={film:"",
bead:""},x=0,$=!1;function A(){if(l.value==="wipe")return"";let[O,M]=t.sizes[l.value],H=He(u.value);if(H>=O&&H<=M)return u.
removeAttribute("aria-invalid"),` ${Number(H.toFixed(3))}`;let Y=l.value==="film"?"the thickness of the film":"the diame\
ter of the bead";return i.textContent=u.value.trim()?`Read “${u.value}”: give ${Y} from ${O} to ${M} mm.`:`First giv\
e ${Y} in mm.`,u.setAttribute("aria-invalid","true"),u.focus(),null}function w(O){let M=A();if(M===null)return null;let H=O.
startsWith(se)?O:`${m.value} ${O}`;return`${l.value}${M} ${H}`}function h(O){let M=O.filter(H=>H!==null);if(!($||M.length<
O.length)){if(x+M.length>t.most){i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent=
"",c.textContent=M.length===1?`Laid: ${ke(t,M[0])}`:`Laid on ${M.length} stretches`,n(M)}}function E(){let O=l.value==="\
wipe";p.textContent=l.value==="bead"?"diameter":"thickness",u.disabled=$||O,u.value=O?"":P[l.value],u.placeholder=O?"":"\
mm",g.textContent=O?"Wipe here":"Lay it here",C.textContent=O?"Wipe every stretch":"Lay it on every stretch",i.textContent=
"",S()}function S(){let O=f.value.startsWith(se);m.disabled=$||O;let M=ve(t,O?{side:"round",place:f.value.slice(se.length)}:
{side:m.value,place:f.value});a.chosen.setAttribute("d",M.length?a.path(M,O):""),a.chosen.setAttribute("stroke-width",String(
a.unit/2))}l.addEventListener("change",E),u.addEventListener("input",()=>{P[l.value]=u.value}),f.addEventListener("chang\
e",S),m.addEventListener("change",S),u.addEventListener("keydown",O=>{O.key==="Enter"&&(O.preventDefault(),g.click())});
let k=null;a.svg.addEventListener("pointerdown",O=>{if($||O.button>0)return;k=[a.place(O)],a.svg.setPointerCapture(O.pointerId);
let M=Math.max(1,Number(P.bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(ye(t,l.value,M)))}),a.svg.
addEventListener("pointermove",O=>{if(!k)return;let M=a.place(O);Xt(M,k[k.length-1])<bn||(k.push(M),a.live.setAttribute(
"d",a.path(k)))});let B=O=>{if(!k)return;let M=k;if(k=null,a.live.setAttribute("d",""),O.type==="pointercancel")return;if(_e(
M)<wn){f.value=We(t,M[0]),S();return}let H=A();if(H===null)return;let Y=Fe(M,t.points).map(V=>V.join(","));h([`${l.value}${H}\
 at ${Y.join(" ")}`])};a.svg.addEventListener("pointerup",B),a.svg.addEventListener("pointercancel",B);let D=e("ol",{class:"\
ts-passes","aria-label":"Passes, in the order they were done"}),G=e("p",{class:"ts-hint"},"Nothing is laid yet."),y=e("d\
iv",{class:"ts-pad-tools"},e("div",{class:"ts-tools"},d("tool",l),e("span",{class:"ts-pair"},p,u)),e("div",{class:"ts-to\
ols"},d("where",f),d("runs",m)),e("div",{class:"ts-tools"},g,C,b,I),i,c),v=()=>J(D,"button");return E(),{drawing:a,tools:y,
list:D,empty:G,frame:a.frame,element:e("div",{class:"ts-pad"},a.frame,y,e("div",{class:"ts-pad-list"},G,D)),show(O,M=[]){
x=O.length,a.strokes(O),G.hidden=x>0;let H=v().findIndex(Y=>Y.matches(":focus"));D.replaceChildren(...O.map((Y,V)=>e("li",
{},e("span",{},`${ke(t,Y)}${M[V]?`, ${M[V]}`:""} `),z("take out",()=>o(V,!1),{class:"ts-button ts-remove",disabled:$,"ar\
ia-label":`Take out pass ${V+1}`})))),H>=0&&(v()[Math.min(H,x-1)]??g).focus()},setDisabled(O){$=O;for(let M of[l,f,g,C,b,
I,...v()])M.disabled=O;u.disabled=O||l.value==="wipe",S()}}}bt("film",{prompt:"words",make(t,s,n){let o=[],r=c=>{o=c,a.show(o),n(o)},a=ne({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>r([...o,...c]),onRemove:c=>r(o.filter((i,d)=>d!==c)),onClear:()=>r([])});
return{element:a.element,show(c){o=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(o)},setDisabled:a.setDisabled,
refused(){}}}});function Ke(t,{send:s,typing:n,said:o=a=>String(a??""),wrong:r=a=>!!a.error}){let a=e("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||a.value.trim()!==c.trim(),d=()=>{i()&&(c=a.value,s(a.value))};return a.
addEventListener("blur",d),a.addEventListener("keydown",l=>{let u=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!==
"Enter"&&!u||(l.preventDefault(),d())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:d,pending:i,refused(){
c=null},show(l){a.setAttribute("aria-invalid",String(r(l))),!(document.activeElement===a&&a.value!==c)&&(c=o(l.value),a.
value=c)}}}function qe(t,s){let[n,o,r]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(r)?n:o).
trim()} ${s}`.trim()}function Ue(t,s,n){let o=St({"aria-label":"Choose the unit"},[["","unit"],...s.map(r=>[r,r])]);return o.addEventListener(
"change",()=>{o.value&&(t.value=qe(t.value,o.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener("input",()=>{
o.value=""}),o}bt("number",{prompt:"label",make(t,s,n,o){let r=t.units,{box:a,flush:c,pending:i,refused:d,show:l}=Ke(s,{send:n,typing:o}),
u=e("span",{class:"ts-hint",id:s.hint},t.hint),p=r.length?Ue(a,r,c):null;return{element:e("div",{class:"ts-line-of"},a,p,
u),show:l,setDisabled(f){a.disabled=f,p&&(p.disabled=f)},refused:d,flush:c,pending:i}}});function Ge(t,s){let o=[...new Set([t??[]].flat())].filter(r=>s.includes(String(r))).map(String);return[...o,...s.filter(
r=>!o.includes(r))]}var _t=(t,s)=>t.join(`
`)===s.join(`
`),ze=t=>`#${t.keys[0]}`,oe=class{constructor(s,n){this.labels=new Map(s.map(([o,r])=>[o,r])),this.stages=new Map;for(let[
o,,r]of s)r&&this.stages.set(o,r);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(s){return this.labels.get(s)??s}runs(){let s=[];
for(let n of this.order){let o=this.stages.get(n)??null,r=s.at(-1);r&&o!==null&&r.stage===o?r.keys.push(n):s.push({stage:o,
keys:[n]})}return s}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let s=[];for(let n of this.runs()){
let[o]=n.keys;if(n.keys.length<2){s.push({id:o,key:o,level:1});continue}if(s.push({id:ze(n),run:n,level:1}),!this.closed.
has(String(n.stage)))for(let r of n.keys)s.push({id:r,key:r,level:2})}return s}row(s){return this.rows().find(n=>n.id===
s)}settle(){let s=this.rows();if(!s.some(n=>n.id===this.current)){let n=this.current.replace(/^#/,""),o=s.find(r=>r.run?.
keys.includes(n));this.current=(o??s.find(r=>r.id===n)??s[0]).id}return s}unit(){let s=this.row(this.current);return s?.
run?s.run.keys:this.block.has(this.current)&&this.block.size>1?this.order.filter(n=>this.block.has(n)):[this.current]}unitName(){
let s=this.row(this.current);if(s?.run)return`Stage ${s.run.stage}`;let n=this.unit();return n.length>1?`Block of ${n.length}\
 steps`:this.label(n[0])}where(){let s=this.unit(),n=this.order.indexOf(s[0])+1;return s.length>1?`positions ${n} to ${n+
s.length-1} of ${this.order.length}`:`position ${n} of ${this.order.length}`}rest(){let s=this.unit();return this.order.
filter(n=>!s.includes(n))}get isFirst(){return this.order.indexOf(this.unit()[0])===0}get isLast(){return this.order.indexOf(
String(this.unit().at(-1)))===this.order.length-1}insertedAt(s){let n=this.rest();return[...n.slice(0,s),...this.unit(),
...n.slice(s)]}shifted(s){let n=this.rest(),o=this.order.indexOf(this.unit()[0]),r=!!this.row(this.current)?.run,a=l=>n[s>
0?l:l-1],c=a(o);if(c===void 0)return this.insertedAt(o);let i=this.stages.get(c),d=i!==void 0&&(r||this.closed.has(i));do
o+=s;while(d&&a(o)!==void 0&&this.stages.get(a(o))===i);return this.insertedAt(o)}atPosition(s){return this.insertedAt(Math.
min(s-1,this.order.length-this.unit().length))}beside(s,n){return this.insertedAt(this.rest().indexOf(s)+(n==="after"?1:
0))}gathered(){let s=new Map;for(let n of this.order){let o=this.stages.get(n)??n;s.set(o,[...s.get(o)??[],n])}return[...s.
values()].flat()}dropAt(s,n){let o=s.run?s.run.keys:[s.key],r=s.run&&!this.closed.has(String(s.run.stage));return n&&!r?
{target:String(o.at(-1)),side:"after"}:{target:o[0],side:"before"}}take(s){if(_t(s,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=s,n){let[o]=n.keys,r=this.rows().find(a=>a.run?.
keys.includes(o));this.current=r?r.id:o}return!0}remember(s){this.past.push(s),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(s,n){let o=s.pop();return o?(n.push(this.order),this.order=
o,!0):!1}pickUp(){this.held=this.order}putDown(){let s=this.held;return this.held=null,s===null||_t(s,this.order)?!1:(this.
remember(s),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(s,n){this.order=[...s],n&&([this.past,this.
future]=[[],[]])}toggleBlock(s){this.block.has(s)?this.block.delete(s):this.block.add(s)}blockTo(s){let n=[this.order.indexOf(
this.current),this.order.indexOf(s)].sort((o,r)=>o-r);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(s,n){
let o=s.run?s.run.stage:this.stages.get(s.key),r=s.run?s.run.keys[0]:s.key,a=this.runs().find(c=>c.keys.includes(r));return!o||
!a||a.keys.length<2?null:(n?this.closed.add(o):this.closed.delete(o),n&&(this.current=ze(a)),o)}sought(s){let n=this.rows(),
o=n.findIndex(c=>c.id===this.current),r=s.length>1?o:o+1,a=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...n.slice(r),...n.slice(0,r)].find(c=>a(c).startsWith(s))}};var yn=12,xn=700,$n=5,Ve=32,Sn=8;function re({label:t,steps:s,order:n,onChange:o}){let r=new oe(s,n),{staged:a}=r,c=!1,i={},
d=!1,l=new Map,u=e("div",{"aria-live":"assertive",class:"ts-hidden"}),p=e("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),f=z("Up",()=>Y(-1),{"aria-label":"Move the chosen step up"}),m=z("Down",
()=>Y(1),{"aria-label":"Move the chosen step down"}),g=z("Undo",()=>r.undo()&&et("Undone")),C=z("Redo",()=>r.redo()&&et(
"Done again")),b=z("Choose several",()=>F(!c),{"aria-pressed":"false"}),I=z("Gather stages",()=>H(r.gathered(),"Steps of\
 one stage now stand together")),P=e("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:N=>{N.key==="Enter"&&V()}}),x=e("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),$=e("span",{class:"ts-chosen"}),A=z("Move",V,{"aria-label":"Move to this position"}),w=z(
"Move",ht,{"aria-label":"Move before this step"}),h=e("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},f,m,g,C,b,a?I:null),E=e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"To position ",P,A),e("span",{class:"\
ts-pair"},"or before ",x,w)),S="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),k=e(
"details",{class:"ts-keys"},e("summary",{},"Keys, and long moves"),e("p",{},S),E),B=e("div",{class:"ts-order"},e("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),h,$,p,k,u);function D(N){u.
textContent=N}function G(N=""){D(`${r.unitName()}${N}, ${r.where()}`)}function y(N){let R=l.get(N.id);if(R)return R;let Q=e(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Q.dataset.row=N.id,l.set(N.id,Q),Q}function v(N=!1){let R=r.settle(),
Q=new Set(R.map(at=>at.id));for(let[at,$t]of l)Q.has(at)||($t.remove(),l.delete(at));let lt=r.unit(),kt=new Set(lt),ut=p.
firstElementChild;for(let at of R){let $t=y(at);$t===ut?ut=ut.nextElementSibling:p.insertBefore($t,ut),O($t,at,kt)}P.value=
String(r.order.indexOf(lt[0])+1);let xt=[...r.order.entries()].filter(([,at])=>!kt.has(at));x.replaceChildren(...xt.map(
([at,$t])=>e("option",{value:$t},`${at+1}  ${r.label($t)}`))),$.textContent=`Chosen: ${r.unitName()}, ${r.where()}`,f.disabled=
d||r.isFirst,m.disabled=d||r.isLast,g.disabled=d||r.past.length===0,C.disabled=d||r.future.length===0;for(let at of[b,I,
P,x,A,w])at.disabled=d;if(p.setAttribute("aria-disabled",String(d)),p.classList.toggle("ts-long",r.order.length>yn),N){let at=l.
get(r.current);at?.focus({preventScroll:!0}),at?.scrollIntoView({block:"nearest"})}}function O(N,R,Q){let lt=R.id===r.current,
kt=R.run?!1:r.block.has(R.key),ut=r.held!==null&&(R.run?lt:Q.has(R.key)),xt=r.order.indexOf(R.run?R.run.keys[0]:R.key),at=R.
run?R.run.keys.map(Mt=>i[Mt]?.length??0):i[R.key],$t=R.run?r.closed.has(String(R.run.stage)):!1,Te=JSON.stringify([xt,R.
level,lt,kt,ut,at,R.run&&[R.run.keys.length,$t]]);if(N.dataset.looks===Te)return;N.dataset.looks=Te,N.tabIndex=lt?0:-1,N.
setAttribute("aria-selected",String(kt)),N.classList.toggle("ts-current",lt),N.classList.toggle("ts-inblock",kt),N.classList.
toggle("ts-held",ut),N.classList.toggle("ts-level2",R.level===2),a&&N.setAttribute("aria-level",String(R.level));let Ne=ut?
" picked up":kt?" in block":"",Ie=Ne?e("span",{class:"ts-state"},Ne):"",De=Mt=>e("span",{class:"ts-number","aria-hidden":"\
true"},Mt);if(R.run){let{keys:Mt,stage:pn}=R.run;N.setAttribute("aria-expanded",String(!$t));let Pe=$t?Mt.filter(fn=>i[fn]?.
length).length:0;N.replaceChildren(De(`${xt+1}–${xt+Mt.length}`),e("span",{class:"ts-fold","aria-hidden":"true"},$t?"▸":
"▾"),e("span",{class:"ts-what"},e("b",{},pn),` ${Mt.length} steps`,Pe?` – ${Pe} with a remark`:"",Ie));return}let Be=(i[R.
key]??[]).map(Mt=>e("span",{class:`ts-note ts-note-${Mt.kind}`},Et(Mt.shape??""),e("b",{},Mt.word),` ${Mt.text}`)),un=a&&
R.level===1;N.classList.toggle("ts-troubled",Be.length>0),N.replaceChildren(De(String(xt+1)),e("span",{class:"ts-grip","\
aria-hidden":"true"},"⠿"),e("span",{class:"ts-what"},r.label(R.key),un?e("span",{class:"ts-stage"},` ${r.stages.get(R.
key)??""}`):"",Ie,...Be))}let M=()=>o([...r.order]);function H(N,R){if(!r.take(N)){D(`${r.unitName()} stays at ${r.where()}`);
return}v(!0),R?D(R):G(),r.held===null&&M()}function Y(N){d||H(r.shifted(N))}function V(){if(d)return;let N=Number.parseInt(
P.value,10),R=r.order.length;N>=1&&N<=R?H(r.atPosition(N)):(D(`Type a position from 1 to ${R}`),$.textContent=`Type a po\
sition from 1 to ${R}.`)}function ht(){!d&&x.value&&H(r.beside(x.value,"before"))}function et(N){v(),D(`${N}. ${r.unitName()}\
, ${r.where()}`),M()}function W(){r.pickUp(),v(!0),G(" picked up")}function X(){r.putDown()&&M(),v(!0),G(" put down")}function L(){
r.putDown()&&M(),v()}function _(){r.putBack(),v(!0),G(" put back")}function F(N){c=N,b.setAttribute("aria-pressed",String(
N)),N||(r.block=new Set),v(),D(N?"Choose the steps of a block":"Block let go")}function q(N){r.toggleBlock(N);let R=r.block.
has(N)?"in the block":"out of the block";D(`${r.label(N)} ${R}, ${r.block.size} in it`)}function ot(N,R){let Q=r.fold(N,
R);Q&&(v(!0),D(`${Q} ${R?"closed":"open"}`))}p.addEventListener("keydown",N=>{if(yt(N))return;let R=r.rows(),Q=R.findIndex(
$t=>$t.id===r.current),lt=$t=>{r.current=R[Math.max(0,Math.min(R.length-1,$t))].id,v(!0)},kt=R[Q],{key:ut}=N,xt=ut==="Ar\
rowUp"?-1:ut==="ArrowDown"?1:null,at=r.held!==null;if(xt&&(N.shiftKey||at))Y(xt);else if(xt)lt(Q+xt);else if(at&&ut==="E\
scape")_();else if(ut===" ")d||(at?X:W)();else if(at&&ut==="Enter")X();else if(ut==="Enter"&&!kt.run)d||(q(kt.key),v(!0));else if(ut===
"Home"&&!at)lt(0);else if(ut==="End"&&!at)lt(R.length-1);else if(a&&ut==="ArrowLeft")ot(kt,!0);else if(a&&ut==="ArrowRig\
ht")ot(kt,!1);else if(ut.length===1&&!at)T(ut);else return;N.preventDefault()});let U="",dt;function T(N){U+=N.toLowerCase(),
clearTimeout(dt),dt=window.setTimeout(()=>{U=""},xn);let R=r.sought(U);R&&(r.current=R.id,v(!0))}p.addEventListener("foc\
usout",({relatedTarget:N})=>{r.held!==null&&N instanceof Node&&!p.contains(N)&&L()});let K=null;p.addEventListener("poin\
terdown",N=>{let R=r.row(vt(N,".ts-step")?.dataset.row??"");if(!R||N.button!==0)return;if(R.run&&vt(N,".ts-fold")){ot(R,
!r.closed.has(String(R.run.stage))),N.preventDefault();return}let Q=vt(N,".ts-grip, .ts-number"),lt=N.ctrlKey||N.metaKey;
r.held!==null&&L(),!R.run&&!d&&(N.shiftKey?r.blockTo(R.key):(lt||c)&&!Q&&q(R.key)),r.current=R.id,v(!0),N.preventDefault(),
!(d||N.shiftKey||lt)&&(N.pointerType!=="mouse"&&!Q||(K={x:N.clientX,y:N.clientY,id:N.pointerId,carried:null},p.setPointerCapture(
N.pointerId)))}),p.addEventListener("pointermove",N=>{if(!K||N.pointerId!==K.id)return;let{clientX:R,clientY:Q}=N;if(!K.
carried){if(Math.hypot(R-K.x,Q-K.y)<$n)return;K.carried=rt()}Object.assign(K.carried,{x:R,y:Q}),pt(K.carried)});function rt(){
let N=e("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},r.unit().length>1?r.unitName():r.label(r.unit()[0]));document.
body.append(N);let R=e("div",{class:"ts-line","aria-hidden":"true"});p.append(R),p.classList.add("ts-dragging");for(let Q of r.
unit())l.get(Q)?.classList.add("ts-lifted");return{ghost:N,line:R,timer:requestAnimationFrame(mt),x:0,y:0,drop:null}}function pt(N){
N.ghost.style.transform=`translate(${N.x+12}px, ${N.y+8}px)`;let Q=r.rows().map(xt=>{let at=y(xt).getBoundingClientRect();
return{row:xt,box:at,offset:N.y-(at.top+at.height/2)}}).reduce((xt,at)=>Math.abs(at.offset)<Math.abs(xt.offset)?at:xt),lt=Q.
offset>0;N.drop=r.dropAt(Q.row,lt);let ut=(lt?Q.box.bottom:Q.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;N.line.
style.top=`${ut}px`}function mt(){let N=K?.carried;if(N){for(let R of[p,Re(p)]){let lt=R===document.scrollingElement?{top:0,
bottom:innerHeight}:R.getBoundingClientRect(),kt=N.y<lt.top+Ve?-1:N.y>lt.bottom-Ve?1:0;if(!kt)continue;let ut=R.scrollTop;
if(R.scrollTop+=kt*Sn,R.scrollTop!==ut){pt(N);break}}N.timer=requestAnimationFrame(mt)}}function tt(N){let R=K?.carried;
if(K=null,!R)return;cancelAnimationFrame(R.timer),R.ghost.remove(),R.line.remove(),p.classList.remove("ts-dragging");for(let lt of l.
values())lt.classList.remove("ts-lifted");let{drop:Q}=R;if(!N||!Q||r.unit().includes(Q.target)){v(!0),D(`${r.unitName()}\
 stays at ${r.where()}`);return}H(r.beside(Q.target,Q.side))}return p.addEventListener("pointerup",()=>tt(!0)),p.addEventListener(
"pointercancel",()=>tt(!1)),B.addEventListener("keydown",N=>{!K?.carried||N.key!=="Escape"||(tt(!1),N.stopPropagation())}),
v(),{element:B,tools:h,order:()=>[...r.order],change:(N,R)=>{d||H(N,R)},setOrder(N,R=!1){r.held!==null||K?.carried||_t(N,
r.order)||(r.set(N,R),v())},setNotes(N){i=N??{},v()},setDisabled(N){d=N,v()}}}bt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,s,n){let o=t.
steps.map(([a])=>a),r=re({label:t.prompt,steps:t.steps,order:o,onChange:n});return{element:r.element,show:a=>r.setOrder(
Ge(a.value,o)),setDisabled:r.setDisabled,refused(){}}}});function Xe(t,s,n){let o=[0,0],r=[n(...o)],a=new Map;for(let[c,i]of t.entries()){let[d,l]=s[i]??[null,null];d!==null&&o[1]!==
0&&r.push(n(o[0],0)),o=[d??o[0],l??(d===null?o[1]:0)];let u=n(...o);r.push(u);let p=a.get(u.join(" "))??{at:u,numbers:[]};
p.numbers.push(c+1),a.set(u.join(" "),p)}return{points:r,stops:[...a.values()]}}function Je(t,s,n){let o=s>=0&&s<t.length-
1?s+1:t.length;return{moves:[...t.slice(0,o),n,...t.slice(o)],place:o}}function Ze(t,s){return t.filter((n,o)=>o!==s)}function Qe(t,s,n){
let o=s+n;if(o<0||o>=t.length)return null;let r=[...t];return[r[s],r[o]]=[r[o],r[s]],r}var Ye=.6;function ts(t,[s,n],[o,
r]){let a=Object.entries(t).filter(([d])=>!d.startsWith("firm:")),c=(d,l)=>a.filter(([,u])=>u[0]===d&&u[1]===l).map(([u])=>u).
slice(0,1),i=Math.abs(s-o)>Ye;return[...i&&Math.abs(n)>Ye?c(null,0):[],...i?c(o,null):[],...r||!i?c(null,r):[]]}var Ut=9,ae=.7*Ut,xe=44;function ie(t){let s=Math.min(...t.gates),n=Math.max(...t.gates),[o,r]=t.turn_mm,a=(n-s)*Ut+2*xe,
c=(r-o)*ae+2*xe,i=(f,m)=>[xe+(f-s)*Ut,c/2-(m-(o+r)/2)*ae],d=t.gates.map(f=>`M${i(f,o).join(" ")}L${i(f,r).join(" ")}`),l=`\
M${i(s,0).join(" ")}L${i(n,0).join(" ")}`,u=t.gears.map(([f,m,g])=>{let[C,b]=i(m,g),I={x:C,y:b+(g>0?-20:30),"data-gear":f};
return j("text",{...I,class:"tsp-gear","text-anchor":"middle"},f)});return{element:j("svg",{viewBox:`0 0 ${a} ${c}`,width:a,
height:c,class:"ts-gateplan","aria-hidden":"true"},j("path",{d:[...d,l].join(""),class:"tsp-slot"}),...u),at:i}}function Ln(t){let{element:s,at:n}=ie(t),o=j("polyline",{class:"tsp-line",points:""}),r=j("g");return s.append(o,r),{element:s,
show(a){let{points:c,stops:i}=Xe(a,t.aims,n),[[d,l]]=c;o.setAttribute("points",c.map(u=>u.join(",")).join(" ")),r.replaceChildren(
j("circle",{cx:d,cy:l,r:4,class:"tsp-start"}),...i.map(({at:[u,p],numbers:f})=>j("g",{},j("circle",{cx:u,cy:p,r:3.5,class:"\
tsp-stop"}),j("text",{x:u+7,y:p-5,class:"tsp-number"},f.join(", ")))))}}}function es({label:t,moves:s,plan:n,most:o,onChange:r}){
let a=new Map(s),c=B=>a.get(B)??B,i=[],d=-1,l=!1,u=n?Ln(n):null,p=e("ol",{class:"ts-pathlist","aria-label":t}),f=e("p",{
class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),m=e("p",{class:"ts-hidden",role:"stat\
us"}),g=s.map(([B,D])=>z(D,()=>$(B))),C=z("Take back the last move",()=>{i.length&&A(i.length-1)}),b=z("Take back all",()=>{
i.length&&x([],"No moves left")}),I=e("span",{class:"ts-hint"}),P=e("div",{class:"ts-path"},e("div",{class:"ts-tools ts-\
moves",role:"group","aria-label":"Add a move"},...g),e("div",{class:"ts-path-both"},e("div",{class:"ts-path-words"},f,p,
e("div",{class:"ts-tools"},C,b,I)),u&&e("div",{class:"ts-path-picture"},u.element)),u&&e("p",{class:"ts-hint"},"The line\
 shows where each move aims. Whether the lever gets there is what the test finds out."),m);function x(B,D){l||(i=B,k(),m.
textContent=D,r([...i]))}function $(B){if(i.length>=o){m.textContent=`${o} moves are the most here`;return}let{moves:D,place:G}=Je(
i,d,B);d=G,x(D,`Move ${G+1}: ${c(B)}`)}function A(B){let D=c(i[B]);d=Math.min(d,i.length-2),x(Ze(i,B),`Taken back: ${D}`)}
function w(B,D){let G=Qe(i,B,D);G&&(d=B+D,x(G,`${c(G[d])}, move ${d+1} of ${i.length}`),E(d))}function h(B){return p.children[B]?.
querySelector(".ts-path-move")}function E(B){let D=h(B);return D instanceof HTMLElement&&D.focus(),!!D}function S(B,D){let G=e(
"span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${D+1}: ${c(B)}`},c(B)),y=e("button",{type:"button",class:"\
ts-path-off","aria-label":`Take back move ${D+1}`,onclick:()=>A(D)},"×"),v=e("li",{},G,y);return v.classList.toggle("ts\
-current",D===d),G.addEventListener("focus",()=>{d=D;for(let O of p.children)O.classList.toggle("ts-current",O===v)}),G.
addEventListener("keydown",O=>{if(yt(O))return;let M=O.key==="ArrowUp"?-1:O.key==="ArrowDown"?1:null;if(M&&O.shiftKey)w(
D,M);else if(M)E(D+M);else if(O.key==="Delete"||O.key==="Backspace")A(D),E(Math.min(D,i.length-1))||g[0].focus();else return;
O.preventDefault()}),y.disabled=l,v}function k(){p.replaceChildren(...i.map(S)),f.hidden=i.length>0,I.textContent=`${i.length}\
 of at most ${o} moves`;for(let B of g)B.disabled=l||i.length>=o;C.disabled=b.disabled=l||i.length===0,u?.show(i)}return k(),
{element:P,setMoves(B){_t(B,i)||(i=[...B],d=-1,k())},setDisabled(B){l=B,k()}}}bt("path",{prompt:"words",make(t,s,n){let o=es({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:o.element,show:r=>o.setMoves([r.value??[]].flat()),setDisabled:o.setDisabled,refused(){}}}});function ss(t,s,n){let o=t.indexOf(n);return[...t.slice(o+1),...t.slice(0,o)].find(a=>!s.get(a))??n}function ns(t,s,n){let o=t.
find(({key:d})=>d===s);if(!o)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let r={ArrowRight:1,
ArrowLeft:-1}[n];if(r!==void 0){let d=[...t].sort((u,p)=>u.x-p.x||u.y-p.y),l=d.findIndex(({key:u})=>u===s)+r;return d[(l+
d.length)%d.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=d=>Math.abs(d.y-o.y)+2*Math.abs(d.x-
o.x),[i]=t.filter(({key:d,y:l})=>d!==s&&(l-o.y)*a>2).sort((d,l)=>c(d)-c(l));return(i??o).key}function Wt(t,s,n,o){let r=t.lines,a=t.options,c=r.map(([p])=>p),i=c[0],d=r.map(([p,f],m)=>{let g=`${s.control}-${m}`,C=e(
"label",{class:"ts-each-line",for:g},f),b=St({id:g,"aria-describedby":s.status},[["","choose"],...a]),I=e("input",{type:"\
radio",name:`${s.control}-active`,"aria-label":`Point in the picture for: ${f}`,checked:m===0}),P=e("li",{},c.length>1?I:
null,C,b);return I.addEventListener("change",()=>{i=p}),b.addEventListener("change",()=>{i=p,u()}),{key:p,box:b,mark:I,row:P}}),
l=()=>new Map(d.map(({key:p,box:f})=>[p,f.value]));function u(){let p=l();o(p),n(Zt([...p]))}return{element:e("ol",{class:"\
ts-each ts-pointed"},...d.map(({row:p})=>p)),active:()=>i,answers:l,press(p){let f=d.find(({key:m})=>m===i);if(!(!f||f.box.
disabled)){f.box.value=p,u(),i=ss(c,l(),i);for(let{key:m,mark:g}of d)g.checked=m===i}},put(p,f){let m=d.find(({key:g})=>g===
p);!m||m.box.disabled||(m.box.value=f,u())},show(p){let f=Qt(p.value);for(let{key:m,box:g}of d)g.value=f.get(m)??"";o(l())},
setDisabled(p){for(let{box:f,mark:m}of d)f.disabled=p,m.disabled=p}}}function ce(t,s,n){let o=e("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});o.innerHTML=t;let r=o.querySelector(
"svg");r.setAttribute("role","group");let a=new Map(J(r,"[data-mark]").map(l=>[String(l.dataset.mark),l])),c=new Map(s);
for(let[l,u]of a)u.setAttribute("role","button"),u.setAttribute("tabindex",l===s[0][0]?"0":"-1"),u.setAttribute("aria-la\
bel",`${l}: ${c.get(l)??""}`);let i=l=>vt(l,"[data-mark]")?.dataset.mark??vt(l,"[data-spot]")?.dataset.spot;o.addEventListener(
"click",l=>{let u=i(l);u&&n(u)});for(let[l,u]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])o.addEventListener(
l,p=>{let f=i(p);f&&d(f,u)});function d(l,u){for(let p of J(r,`[data-spot="${l}"]`))p.classList.toggle("tss-near",u)}return o.
addEventListener("keydown",l=>{let u=vt(l,"[data-mark]")?.dataset.mark;if(u){if(l.key==="Enter"||l.key===" ")n(u);else{let p=[
...a].map(([m,g])=>{let C=g.querySelector(".tss-dot");return{key:m,x:C.cx.baseVal.value,y:C.cy.baseVal.value}}),f=ns(p,u,
l.key);if(f===void 0)return;a.get(u)?.setAttribute("tabindex","-1"),a.get(f)?.setAttribute("tabindex","0"),a.get(f)?.focus()}
l.preventDefault()}}),{element:o,drawing:r,choose(l){let u=new Set(l);for(let[p,f]of a)f.classList.toggle("tss-chosen",u.
has(p)),f.setAttribute("aria-pressed",String(u.has(p)));for(let p of J(r,"[data-spot]"))p.classList.toggle("tss-on",u.has(
String(p.dataset.spot)))}}}bt("picture",{prompt:"legend",make(t,s,n){let o=t.options,r=Wt(t,s,n,i=>{let d=new Set(i.values());for(let{letter:l,card:u}of a)
u.classList.toggle("ts-on",d.has(l))}),a=o.map(([i,d])=>{let l=e("div",{class:"ts-picture-card",onclick:()=>r.press(i)});
return l.innerHTML=t.svgs[i],l.querySelector("svg")?.setAttribute("aria-label",d),l.prepend(e("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:l}}),c=e("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:e("div",{},r.element,
c),show:r.show,setDisabled:r.setDisabled,refused(){}}}});bt("point",{prompt:"legend",make(t,s,n){let o=Wt(t,s,n,i=>c.choose(i.values())),a=t.options.map(([i,d])=>[i,d.slice(i.length+
2)]),c=ce(t.svg,a,o.press);return{element:e("div",{},o.element,c.element),show:o.show,setDisabled:o.setDisabled,refused(){}}}});bt("put",{prompt:"legend",make(t,s,n){let o=t.lines,r=new Map(o.map(([u])=>[u,"1"])),a=Wt(t,s,n,u=>{for(let[p,f]of u)f&&
r.set(p,f.split("-")[1]);c.choose([...u.values()].map(p=>p.split("-")[0])),d(u)}),c=ce(t.svg,t.places,u=>{a.press(`${u}-${r.
get(a.active())}`)}),i=j("g",{class:"tss-placed"});c.drawing.append(i);function d(u){i.replaceChildren();for(let[p,f]of u){
let[m,g]=f.split("-"),C=t.at[m];if(!C)continue;let b=j("g",{transform:`translate(${C[0]} ${C[1]})`});b.innerHTML=t.pieces[p][Number(
g)-1][1],i.append(b)}for(let{part:p,show:f}of l)f(r.get(p)??"1")}let l=o.map(([u,p])=>{let f=e("div",{class:"ts-tray-par\
t"}),m=e("span",{class:"ts-hint",role:"status"}),g=nt("Turn it",()=>{let I=r.get(u)==="1"?"2":"1";r.set(u,I),C(I);let P=a.
answers().get(u);P&&a.put(u,`${P.split("-")[0]}-${I}`)},`Turn it: ${p}`);function C(I){let[P,x]=t.pieces[u][Number(I)-1],
$=Number(/data-half="([\d.]+)"/.exec(x)?.[1]??90);f.innerHTML=`<svg viewBox="${-$} ${-$} ${2*$} ${2*$}" width="120" heig\
ht="120" aria-hidden="true">${x}</svg>`,m.textContent=`Way ${I}: ${P}`}let b=e("div",{class:"ts-tray"},f,e("div",{},p,m,
g));return{part:u,row:b,show:C,turn:g}});return{element:e("div",{},e("div",{class:"ts-trays"},...l.map(({row:u})=>u)),a.
element,c.element),show:a.show,setDisabled(u){a.setDisabled(u);for(let{turn:p}of l)p.disabled=u},refused(){}}}});var Cn="No line to the course just now. Go on with the questions: what you enter is kept in this browser and sent when t\
he line is back. Simulators stand still until then.",An="The line to the course is back.",En=1500,Mn=5e3,Se=new Set,Bt=null,
$e;function os(t){Bt??=e("p",{class:"twoshaft ts-line-bar",role:"status"}),Bt.isConnected||document.body.append(Bt),Bt.textContent=
t}function On(){Bt?.remove(),Bt=null}function rs(){clearTimeout($e),Se.size?$e=window.setTimeout(()=>os(Cn),Bt?0:En):Bt&&
(os(An),$e=window.setTimeout(On,Mn))}var as=t=>({down(){Se.add(t),rs()},up(){Se.delete(t),rs()}});var Tn=1e3,Nn="input, button, select, textarea, summary, a, [tabindex]";function In(t){let s=r=>{if(r.stopPropagation(),
!(r.ctrlKey||r.metaKey)||r.key.toLowerCase()!=="s"||(r.preventDefault(),r.type!=="keydown"||r.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:d,metaKey:l}=r,u={key:a,code:c,keyCode:i,ctrlKey:d,metaKey:l,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",u))};t.addEventListener("keydown",s),t.addEventListener("keyup",s),t.addEventListener(
"keypress",s);let n=()=>{for(let r of t.querySelectorAll(Nn))r.hasAttribute("data-lm-suppress-shortcuts")||r.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let o=new MutationObserver(n);return o.observe(t,{childList:!0,subtree:!0}),()=>o.
disconnect()}function Dn(t,s,n){let o=t.widget_manager?.kernel,r=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&s()},a=(c,i)=>{i==="disconnected"?s():n(i==="connecting")};return t.on("comm_live_update",s),o?.statusChanged?.
connect(r),o?.connectionStatusChanged?.connect(a),o?.disposed?.connect(s),()=>{t.off("comm_live_update",s),o?.statusChanged?.
disconnect(r),o?.connectionStatusChanged?.disconnect(a),o?.disposed?.disconnect(s)}}var is=`.twoshaft {
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
@media(forced-colors:active){.twoshaft .ts-apart-list li:not(.ts-current){border-left-color:Canvas}}.twoshaft .ts-prompt\
[hidden],.twoshaft .ts-sentences[hidden]{display:none}.twoshaft .ts-told{min-height:2em;max-height:9em;overflow-y:auto}.\
twoshaft .ts-build{display:grid;grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));align\
-items:start}.twoshaft .ts-buildlist{display:grid;gap:4px;max-height:22rem;overflow-y:auto;padding:4px}.twoshaft .ts-bui\
ldstep{text-align:left;padding-block:2px;min-height:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color\
:var(--ts-line)}.twoshaft .ts-buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaf\
t .ts-buildstep[aria-current]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width\
:100%}.twoshaft .ts-hand{border:1px solid var(--ts-line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twosha\
ft .ts-hand .ts-field{border:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts\
-do{text-align:left;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-g\
rid);font-size:var(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}\
.twoshaft .ts-record caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-al\
ign:top;padding:3px 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-r\
ecord .ts-blank{min-width:12em;height:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,1fr\
)}.twoshaft .ts-buildlist,.twoshaft .ts-hand{max-height:none}}@media(forced-colors:active){.twoshaft .ts-button[aria-pre\
ssed=true],.twoshaft .ts-buildstep[aria-current],.twoshaft .ts-held{forced-color-adjust:none;background:Highlight;border\
-color:Highlight;color:HighlightText}.twoshaft :is(.ts-step,.ts-pathlist li):not(.ts-current,.ts-inblock){border-left-co\
lor:Canvas}.twoshaft :is(.ts-step,.ts-pathlist li).ts-current{border-left-color:Highlight}.twoshaft-bar .ts-tasks a:not(\
[aria-current]){border-bottom-color:Canvas}}`,cs="twoshaft-styles";function Bn(){let t=document.getElementById(cs);t?.textContent!==
is&&(t?.remove(),document.head.append(e("style",{id:cs},is)))}function Z({model:t,el:s},{kind:n,lost:o=()=>Yt(s),line:r=()=>{}}){
Bn(),s.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=e("p",{class:"ts-alert",role:"alert"}),c=as(s),i=()=>s.
classList.contains("ts-lost"),d=[],u=Dn(t,()=>{i()||(s.classList.add("ts-lost"),c.down(),o())},g=>{i()||(g?c.down():c.up(),
r(g))}),p=In(s),f,m=(g,C)=>{t.on(g,C),d.push([g,C])};return m("msg:custom",g=>{g.type==="trouble"&&!i()&&(a.textContent=
g.reason)}),{alert:a,follow:m,isLost:i,send(g){i()||(t.send(g),clearTimeout(f),f=window.setTimeout(()=>t.send({type:"res\
t"}),Tn))},show:(...g)=>s.replaceChildren(...Tt(g)),close(){c.up(),clearTimeout(f),p(),u();for(let[g,C]of d)t.off(g,C)}}}function ls({model:t,el:s}){let n=Z({model:t,el:s},{kind:"rig",lost:()=>d.setDisabled(!0)}),o=e("p",{class:"ts-finding",
role:"status"}),r=e("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=st("order"),n.send({type:"order",order:p,turn:c})},
d=re({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),l=e("button",{type:"\
button",class:"ts-button",onclick:()=>d.change([...a],"The first order stands again")},"Start again");d.tools.append(l),
n.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),n.alert,o,r,d.element);function u(){let p=t.
get("judged");c!==null&&p.turn!==c||(c=null,o.textContent=p.finding,r.textContent=p.cost,d.setOrder(p.order),d.setNotes(
p.notes))}return n.follow("change:judged",u),u(),n.close}var Pn=["lit","bench","absent"],ds=[1,1.5,2,3,4.5];function Ft({svg:t,parts:s,words:n},{name:o="The unit in section",tallest:r}={}){
let a=e("div",{class:"ts-unit",tabindex:"0",role:"application","aria-label":`${o}. Left and right arrows walk from part \
to part, up and down to the part above or below, plus and minus zoom.`});a.innerHTML=t;let c=a.querySelector("svg"),i=c.
querySelector(".tsu-marks");c.setAttribute("aria-hidden","true"),c.removeAttribute("role");let d=new Map(s.map(([y])=>[y,
[]]));for(let y of J(c,"[data-part]"))d.get(String(y.dataset.part))?.push(y);let l=new Map(s.map(([y],v)=>[y,v])),u=e("p",
{class:"ts-hint ts-unit-name",role:"status"}),p=St({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],
...s.map(([y,v])=>[y,v])]),{width:f,height:m}=c.viewBox.baseVal,g=r?`min(100%, ${Math.round(r*f/m)}px)`:"100%",C=new WeakMap,
b=-1,I=0,P={},x=y=>{let v=P[y];return v==="absent"?" Not there yet.":v==="bench"?" On the bench.":v==="lit"?" In hand.":
""},$=y=>`${s[y][1]}. ${s[y][2]}${x(s[y][0])}`;function A(y){for(let O of J(c,".tsu-chosen"))O.classList.remove("tsu-cho\
sen");b=y;let v=y<0?"":s[y][0];p.value=v,u.textContent=y<0?B:$(y);for(let O of d.get(v)??[])O.classList.add("tsu-chosen");
y>=0&&h(v)}function w(y){let v=(d.get(y)??[]).map(V=>{let{x:ht,y:et,width:W,height:X}=V.getBBox(),[L,_]=C.get(V)??[0,0];
return{x:ht+L,y:et+_,width:W,height:X}}),O=Math.min(...v.map(V=>V.x)),M=Math.max(...v.map(V=>V.x+V.width)),H=Math.min(...v.
map(V=>V.y)),Y=Math.max(...v.map(V=>V.y+V.height));return{x:(O+M)/2,y:(H+Y)/2}}function h(y){let v=w(y),O=c.getBoundingClientRect().
width/c.viewBox.baseVal.width,[M,H]=[v.x*O,v.y*O],{scrollLeft:Y,scrollTop:V,clientWidth:ht,clientHeight:et}=a;(M<Y+40||M>
Y+ht-40)&&(a.scrollLeft=M-ht/2),(H<V+40||H>V+et-40)&&(a.scrollTop=H-et/2)}function E(y){I=Math.max(0,Math.min(ds.length-
1,I+y)),c.style.width=`calc(${ds[I]} * ${g})`,c.style.height="auto",b>=0&&h(s[b][0])}function S(y){let v=w(s[b][0]),[O]=s.
map(([M],H)=>({k:H,at:w(M)})).filter(({k:M,at:H})=>M!==b&&(H.y-v.y)*y>4).sort((M,H)=>us(M.at,v)-us(H.at,v));O&&A(O.k)}a.
addEventListener("keydown",y=>{if(yt(y))return;let v=s.length-1;if(y.key==="ArrowRight")A(b>=v?0:b+1);else if(y.key==="A\
rrowLeft")A(b<=0?v:b-1);else if(y.key==="ArrowUp"||y.key==="ArrowDown")b<0?A(0):S(y.key==="ArrowUp"?-1:1);else if(y.key===
"Home")A(0);else if(y.key==="End")A(v);else if(y.key==="+"||y.key==="=")E(1);else if(y.key==="-")E(-1);else if(y.key==="\
Escape")A(-1);else return;y.preventDefault()}),a.addEventListener("click",y=>{let v=vt(y,"[data-part]")?.dataset.part;A(
v===void 0?-1:l.get(v)??-1)}),a.addEventListener("pointerover",y=>{let v=vt(y,"[data-part]")?.dataset.part;if(v===void 0||
y.pointerType!=="mouse")return;let O=vt(y,"[data-solid]")?.querySelector("title")?.textContent,M=s[l.get(v)??0][1];k.textContent=
O&&!M.endsWith(O)?`${O} (${M})`:M}),a.addEventListener("pointerleave",()=>{k.textContent=""}),p.addEventListener("change",
()=>A(l.get(p.value)??-1));let k=e("span",{class:"ts-unit-over","aria-hidden":"true"}),B="Point at a part, tap it, or ch\
oose it here to read its name.";u.textContent=B;let D=e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"Part ",p),nt(
"−",()=>E(-1),"Smaller"),nt("+",()=>E(1),"Larger"),k),G=e("details",{class:"ts-unit-words"},e("summary",{},"What is wh\
ere, in words"),e("p",{},n));return E(0),{nodes:[D,u,a,G],drawing:c,shift(y,[v,O]){C.set(y,[v,O]),y.setAttribute("transf\
orm",`translate(${v.toFixed(1)} ${O.toFixed(1)})`)},show(y){P=y.looks;for(let[v,O]of d)for(let M of O)for(let H of Pn)M.
classList.toggle(`tsu-${H}`,P[v]===H);i.innerHTML=y.marks,b>=0&&(u.textContent=$(b))}}}function us(t,s){return Math.abs(
t.y-s.y)+2*Math.abs(t.x-s.x)}function ps(t,s){t.setAttribute("aria-disabled",String(s)),t.classList.toggle("ts-off",s)}function fs({model:t,el:s}){let n=e(
"p",{class:"ts-finding"}),o=e("p",{class:"ts-happened",role:"status"}),r=e("p",{class:"ts-hint"}),a=Ft(t.get("picture")),
c=e("p",{class:"ts-hint",role:"status"}),i=e("dl",{class:"ts-facts"}),d=e("div",{class:"ts-ready"}),l=e("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),u=e("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:h=>{h.key==="Enter"&&x()}}),p=e("span"),f=h=>A.send({type:"move",by:h}),m=h=>A.
send({type:"go",position:h}),g=nt("Back",()=>f(-1),"One step back"),C=nt("Next",()=>f(1),"Next step"),b=nt("Start",()=>m(
0),"Start with an empty bench"),I=nt("End",()=>m(t.get("view").count),"End of the order"),P=nt("Try it",()=>A.send({type:"\
take",step:l.value}),"Try it: the step chosen here"),x=()=>{let h=Number.parseInt(u.value,10);h>=0&&m(h)},$=e("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},b,g,C,I,e("span",{class:"t\
s-pair"},"place ",u,p,nt("Go",x,"Go to this place")));$.addEventListener("keydown",h=>{if(!(h.target===u||yt(h))){if(h.key===
"ArrowLeft")f(-1);else if(h.key==="ArrowRight")f(1);else if(h.key==="Home")m(0);else if(h.key==="End")m(t.get("view").count);else
return;h.preventDefault()}});let A=Z({model:t,el:s},{kind:"rig"});A.show(e("p",{class:"ts-who"},"Practice. Nothing here \
is marked or saved."),A.alert,n,$,o,r,c,...a.nodes,i,e("p",{class:"ts-prompt"},"Do another step next"),d,e("div",{class:"\
ts-tools"},e("span",{class:"ts-pair"},"or one that is not ready: ",l,P)));function w(){let h=t.get("view");n.textContent=
h.finding,o.textContent=h.happened,r.textContent=h.next?`Next in this order: ${h.next}`:"This is the end of the order.",
c.textContent=h.build.words,a.show(h.build),i.replaceChildren(...At(h.facts));let E=d.contains(document.activeElement);d.
replaceChildren(...h.ready.map(([B,D])=>nt(D,()=>A.send({type:"take",step:B})))),h.ready.length||d.append(e("p",{class:"\
ts-hint"},"No step is ready.")),E&&(d.querySelector("button")??C).focus(),l.replaceChildren(...wt(h.waiting)),l.disabled=
P.disabled=!h.waiting.length,u.value=String(h.position),p.textContent=` of ${h.count} `;let S=h.position===0,k=h.position===
h.count;for(let B of[g,b])ps(B,S);for(let B of[C,I])ps(B,k)}return A.follow("change:view",w),w(),A.close}function Kt(t){let s=null,n=null,o=a=>{if(s!==null){n=a;return}s=st("turn"),t(a,s)},r=()=>{s=null;let a=n;n=null,a!==null&&
o(a)};return{ask:o,free:r,answered(a){a===s&&r()},get waiting(){return s!==null}}}var it=(t,s,n,o,r)=>j("line",{x1:t,y1:s,x2:n,y2:o,class:r}),ct=(t,s,n,o="middle")=>j("text",{x:t,y:s,"text-anchor":o,class:"\
tsg-text"},n);function qt(){let t=j("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(j("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let o=0;o<100;o+=1){let r=o/100*2*Math.PI,a=o%10===0?78:o%5===0?82:86;t.append(it(100+
a*Math.sin(r),100-a*Math.cos(r),100+92*Math.sin(r),100-92*Math.cos(r),o%10===0?"tsg-mark tsg-long":"tsg-mark")),o%10===0&&
t.append(ct(100+66*Math.sin(r),104.5-66*Math.cos(r),String(o)))}t.append(j("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let o=0;o<10;o+=1){let r=o/10*2*Math.PI;t.append(it(100+15*Math.sin(r),134-15*Math.cos(r),100+19*Math.sin(r),134-19*
Math.cos(r),"tsg-mark"))}let s=it(100,134,100,119,"tsg-small"),n=j("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(s,n,j("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(o,r){n.setAttribute("tra\
nsform",`rotate(${o*360} 100 100)`),s.setAttribute("transform",`rotate(${o*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${r}`)}}}function hs({top:t,mark:s,perFigure:n}){let o=j("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),r=c=>30+c/t*540;o.append(j("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*s<=t+1e-9;c+=1){let i=c%n===0;o.append(it(r(c*s),22,r(c*s),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&o.
append(ct(r(c*s),84,String(Math.round(c*s))))}let a=j("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return o.append(
a,ct(586,14,"newtons","end")),{node:o,top:t,set(c,i){a.setAttribute("transform",`translate(${r(Math.min(c,t))} 0)`),o.setAttribute(
"aria-label",`Spring scale, one mark is ${s} N. ${i}`)}}}function gs({low:t,high:s,reach:n}){let o=j("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),r=i=>360+Math.max(-n,Math.min(n,i))/n*340;o.append(j("rect",{x:r(t),y:34,width:r(
s)-r(t),height:24,class:"tsg-target"}),ct((r(t)+r(s))/2,84,"target"),it(20,46,700,46,"tsg-mark"),it(360,26,360,66,"tsg-m\
ark tsg-long"),ct(20,20,"end play","start"),ct(700,20,"preload","end"),ct(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let d of[
i,-i])o.append(it(r(d),42,r(d),50,"tsg-mark"));o.append(ct(r(-n),70,`${n.toFixed(2)} mm`,"start"),ct(r(n),70,`${n.toFixed(
2)} mm`,"end"));let a=j("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=j("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return o.append(a,c),{node:o,set(i,d,l){a.setAttribute("transform",`translate(${r(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${r(d)} 0)`),o.setAttribute("aria-label",l)}}}function gt(t,{min:s,max:n,step:o,value:r,words:a,onInput:c}){let i=e(
"input",{type:"range",class:"ts-slider",min:s,max:n,step:o,value:r,"aria-label":t}),d=e("output",{class:"ts-slid"},a(r));
return i.addEventListener("input",()=>{let l=a(Number(i.value));d.textContent=l,i.setAttribute("aria-valuetext",l),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(r)),{box:i,row:e("label",{class:"ts-slide"},e("span",{},t),i,d),set(l){i.value=
String(l),d.textContent=a(l)}}}function ft(t,s,n,o){let r=e("select",{class:"ts-box","aria-label":t,onchange:()=>o(r.value)},
...s.map(([a,c])=>e("option",{value:a,selected:a===n},c)));return{box:r,row:e("span",{class:"ts-pair"},`${t} `,r)}}function ms({model:t,el:s}){let n=t.get("about"),o=t.get("shown").state,r=null,a=e("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=e("p",{class:"ts-hint"}),i=e("p",{class:"ts-finding",role:"status"}),d=e("u\
l",{class:"ts-sentences"}),l=Kt((w,h)=>x.send({type:"set",state:w,turn:h})),u=w=>{o={...o,...w},l.ask(o)},p=j("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),f=it(0,0,0,0,"tsg-mark tsg-long"),m=ct(0,0,""),g=96,
C=g/(n.readingsOnly?o.radius:n.radii[1]),b=j("svg",{viewBox:`0 0 ${2*g+120} ${2*g+30}`,width:2*g+120,height:2*g+30,class:"\
tsg-drum",role:"img"}),I=g+4;p.setAttribute("transform",`translate(${I} ${I})`),b.append(p,f,it(4,I,2*g+4,I,"tsg-centre"),
it(I,4,I,2*g+4,"tsg-centre"),j("circle",{cx:I,cy:I,r:10,class:"tsg-face"}),m);let P=[e("div",{class:"ts-tools"},z("Turn \
the shaft ten times",()=>u({turns:o.turns+10})))];if(!n.readingsOnly){let w=n.kinds,h=w.map(([E,S])=>e("label",{class:"t\
s-option"},e("input",{type:"checkbox",checked:o.kinds.includes(E),onchange:k=>u({kinds:w.map(([B])=>B).filter(B=>B===E?k.
target.checked:o.kinds.includes(B))})}),`with ${S}`));P[0].append(z("Fit the rings anew",()=>u({turns:0}))),h.length&&P.
push(e("fieldset",{class:"tsg-ticks"},e("legend",{class:"ts-hint"},"What turns with the bearings"),...h)),P.push(gt("Set\
ting",{min:-.05,max:n.highest,step:.005,value:o.setting,onInput:E=>u({setting:E}),words:E=>E<0?`${(-E).toFixed(3)} mm of\
 end play`:`${E.toFixed(3)} mm of preload`}).row,gt("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:o.radius,
onInput:E=>u({radius:E}),words:E=>`${E} mm`}).row)}let x=Z({model:t,el:s},{kind:"rig"});x.show(e("p",{class:"ts-who"},n.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),x.alert,
e("div",{class:"tsg-beside"},b,e("div",{class:"tsg-side"},a,c)),...P,i,d);function $(){let w=t.get("shown");l.waiting||(o=
w.state);let h=C*w.state.radius;Ot(p,{r:h}),Ot(f,{x1:I,y1:I-h,x2:2*g+120,y2:I-h}),Ot(m,{x:I,y:2*g+22}),m.textContent=`dr\
um, radius ${w.state.radius} mm`,b.setAttribute("aria-label",`A drum of ${w.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),r?.top!==w.scale.top&&(r=hs(w.scale),a.replaceChildren(r.node),c.textContent=
`Spring scale to ${w.scale.top} N, one mark ${w.scale.mark} N.`),r?.set(w.pull,w.pullWords),i.textContent=w.finding,d.replaceChildren(
...Dt(w.words)),l.answered(w.turn)}let A=()=>l.free();return x.follow("change:shown",$),x.follow("msg:custom",A),$(),x.close}function Ct({model:t,el:s},n){let o=t.get("about"),r=t.get("shown").state,a=Kt((p,f)=>c.send({type:"set",state:p,turn:f})),
c=Z({model:t,el:s},{kind:"rig"}),i=e("p",{class:"ts-finding",role:"status"}),d=n(o,p=>{r={...r,...p},a.ask(r)},r),l=o.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";c.show(e("p",{class:"\
ts-who"},l),c.alert,e("div",{class:"tsg-wide"},d.picture),...d.controls,i);function u(){let p=t.get("shown");a.waiting||
(r=p.state),d.set(p,r),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",u),c.follow("msg:custom",
a.free),u(),c.close}var Lt=(...t)=>e("div",{class:"ts-tools"},...t);var jn={x:44,y:84,perMm:34};function Rn(t){let s=j("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:o,
perMm:r}=jn,a=j("g",{}),c=j("g",{});s.append(j("rect",{x:1,y:22,width:758,height:o-22,class:"tsi-paper"}),j("rect",{x:n-
30,y:o,width:t.lines*t.space*r+60,height:64,class:"tsi-body"}),a,c,ct(12,14,"main scale, mm","start"),ct(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let d=n+i*t.space*r;c.append(
it(d,o,d,o+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(ct(d,o+48,String(i)))}return{node:s,set(i){a.replaceChildren();for(let d=Math.
max(0,Math.ceil(i.mm-1));d<=t.top+25;d+=1){let l=n+(d-i.mm)*r;l<4||l>756||(a.append(it(l,o,l,o-(d%10===0?34:d%5===0?28:20),
"tsi-fine")),d%5===0&&a.append(ct(l,o-40,String(d))))}s.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function ws(t){
return Ct(t,(s,n,o)=>{let r=Rn(s),a=gt("Rod",{min:0,max:s.top,step:.05,value:o.rod,words:()=>"push down to the right",onInput:d=>n(
{rod:d})}),c=ft("Foot",s.places,o.place,d=>n({place:d,rod:0})),i=ft("Look",s.eyes,o.eye,d=>n({eye:d}));return{picture:r.
node,controls:[Lt(c.row,i.row),Lt(z("Push the rod down until it rests",()=>n({rod:s.top})),z("Lift the rod",()=>n({rod:0}))),
a.row],set(d,l){r.set(d),c.box.value=l.place,i.box.value=l.eye,a.box.value=l.rod}}})}function Le(t,s){let n=s>1?.65/(s-1):0;return Array.from({length:s},(o,r)=>{let a=s>1?r*n:0,c=s>1?.35:1;return 1-Math.max(
0,Math.min(1,(t-a)/c))})}function bs(t,s,n,o){let[r,a]=[0,0];for(let c=n;c!==null;c=t[c].parent){let[i,d]=t[c].own[o]??[
0,0];r+=i*s[c],a+=d*s[c]}return[r,a]}function Ce(t){let s=t.findIndex(n=>n>0);return{placed:t.filter(n=>n===0).length,next:s<
0?null:s}}function vs(t,s){return t<=0?0:t>=s||s<2?1:.35+(t-1)*(1-.35)/(s-1)}var le=200,Hn=460;function ks({model:t,el:s}){let n=e("p",{class:"ts-finding"}),o=e("p",{class:"ts-hint ts-nextin",role:"\
status"}),r=e("div",{class:"ts-apart-picture"}),a=e("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"What goes in"}),
c=t.get("stages"),i=ft("Show",c,t.get("stage"),x=>P.send({type:"stage",stage:x})),d=gt("From apart to together",{min:0,max:le,
step:1,value:0,words:x=>x<=0?"apart":x>=le?"together":"on the way",onInput:x=>b(x/le)}),l=t.get("picture"),u,p=[],f=[],m=0;
function g(x){d.set(Math.round(x*le)),b(x)}function C(x){let{placed:$}=Ce(Le(m,l.movers.length));g(vs($+x,l.movers.length))}
function b(x){if(m=x,!u)return;let $=Le(m,l.movers.length);for(let{group:E,mover:S,view:k}of p)u.shift(E,bs(l.movers,$,S,
k));for(let E of f)E.style.opacity=String(1-m);s.classList.toggle("ts-together",m>.5);let{placed:A,next:w}=Ce($),h=`${A}\
 of ${$.length} in place.`;for(let[E,S]of[...a.children].entries())S.classList.toggle("ts-current",E===w);o.textContent=
w===null?"All in place.":`${h} Next in: ${l.movers[w].words}.`}function I(){if(l=t.get("picture"),n.textContent=t.get("f\
inding"),i.box.value=t.get("stage"),u=void 0,r.replaceChildren(),!l.svg)return;u=Ft(l,{name:"Parts apart",tallest:Hn}),r.
replaceChildren(...u.nodes),p=J(u.drawing,"[data-move]").map($=>({group:$,mover:Number($.dataset.move),view:String($.dataset.
view)})),f=J(u.drawing,".tsu-traces"),a.replaceChildren(...l.movers.map(({words:$})=>e("li",{},$))),b(m)}let P=Z({model:t,
el:s},{kind:"rig"});return P.show(P.alert,n,e("div",{class:"ts-apart"},e("div",{class:"ts-apart-tools"},i.row,d.row,e("d\
iv",{class:"ts-tools"},nt("One in",()=>C(1),"One part more in place"),nt("One out",()=>C(-1),"One part less in place")),
o,a),r)),P.follow("change:picture",I),I(),P.close}function ys({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding"}),r=e("p",{class:"tsj-happened",role:"status"}),
a=e("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=e("div",{class:"tsj-bars"}),i=J(a,"[data-bolt]"),d=st("torq\
ue"),l=e("input",{id:d,type:"range",min:10,max:100,step:5,oninput:()=>f()});l.value="100";let u=e("output",{class:"tsj-f\
igure",for:d}),p=()=>l.value==="100"?n.torque:Number((Math.round(n.torque*Number(l.value)/100/n.step)*n.step).toFixed(3));
function f(){u.textContent=`${p()} N·m`,l.setAttribute("aria-valuetext",`${p()} newton metres, ${l.value} percent of th\
e torque`)}let m=h=>x.send({type:"pull",bolt:h,torque:p()}),g=z("Take back",()=>x.send({type:"undo"})),C=z("Wait until t\
he film has run out",()=>x.send({type:"wait"})),b=e("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>x.send({type:"set",film:Number(b.value)})},...n.films.map(h=>e("option",{value:h},h?`${h} µm thick`:"none"))),
I=e("input",{type:"checkbox",onchange:()=>x.send({type:"set",scattered:I.checked})});a.addEventListener("click",h=>{let E=vt(
h,"[data-bolt]");E&&(P(E),m(Number(E.dataset.bolt)))});let P=h=>{for(let E of i)E.setAttribute("tabindex",E===h?"0":"-1");
h.focus({preventScroll:!0})};a.addEventListener("keydown",h=>{let E=vt(h,"[data-bolt]");if(!E||h.ctrlKey||h.metaKey||h.altKey)
return;let S=Number(E.dataset.bolt),k={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[h.key];if(k)P(i[(S+k+i.length)%
i.length]);else if(h.key==="Home")P(i[0]);else if(h.key==="End")P(i[i.length-1]);else if(h.key==="Enter"||h.key===" ")h.
repeat||m(S);else return;h.preventDefault()});let x=Z({model:t,el:s},{kind:"rig"}),$=e("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},z("Start all by hand",()=>x.send({type:"start"})),...n.rounds.map(([h,E])=>z(`One round ${E}`,
()=>x.send({type:"round",pattern:h,torque:p()}))),g,z("Start again",()=>x.send({type:"again"}))),A=e("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},e("span",{class:"tsj-slide"},e("label",{for:d},"Wrench set to"),l,u));n.films.length&&
A.append(e("label",{class:"ts-pair"},"Wet sealant",b),C,e("label",{class:"tsj-check"},I,"friction scatters from bolt to \
bolt")),x.show(e("p",{class:"ts-who"},n.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),x.alert,o,A,$,r,e("div",{class:"tsj-bench"},a,c),e("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function w(){let h=t.get("view");o.textContent=h.finding,r.textContent=h.happened,c.innerHTML=
h.bars;for(let[E,S]of i.entries()){let k=h.tight[E]?`${h.clamps[E]} kN`:h.started[E]?"started by hand":"not started";S.setAttribute(
"aria-label",`Bolt ${E+1} of ${n.count}, ${k}`),S.classList.toggle("tsj-tight",h.tight[E]),S.classList.toggle("tsj-start\
ed",h.started[E])}g.disabled=!h.pulls,C.disabled=!h.standing,b.value=String(h.film),I.checked=h.scattered}return x.follow(
"change:view",w),f(),w(),x.close}var xs="tsk-number";function It(t,s,...n){return e("td",{class:s?xs:null,"data-label":t||null,role:"cell"},...n)}function de(t,s,n){
let o=s.map(([c,i])=>e("th",{scope:"col",role:"columnheader",class:i?xs:null},c)),r=e("thead",{role:"rowgroup"},e("tr",{
role:"row"},...o)),a=e("table",{class:"tsk-board",role:"table"},e("caption",{},t),r,n);return e("div",{class:"ts-scroll"},
a)}function $s({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("p",{class:"tsk-spent"}),
a=e("ul",{class:"ts-sentences tsk-left"}),c=e("p",{class:"tsk-more"}),i=e("tbody",{role:"rowgroup"}),d=new Map;for(let[f,
m,g,C]of n.checks){let b=e("select",{class:"ts-box","aria-label":`What it showed: ${m}`,onchange:()=>u.send({type:"obser\
ve",check:f,shown:b.value})},e("option",{value:""},"Not made"),...wt(C)),I=It("would tell, bit",!0),P=It("bit a minute",
!0),x=e("tr",{role:"row"},e("th",{scope:"row",role:"rowheader"},m),It("min",!0,`${g}`),It("it showed",!1,b),I,P);d.set(f,
{box:b,tells:I,rate:P,row:x}),i.append(x)}let l=e("button",{class:"ts-button",type:"button",onclick:()=>u.send({type:"cl\
ear"})},"Take all observations back"),u=Z({model:t,el:s},{kind:"rig"});u.show(e("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),u.alert,o,a,c,de("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),r,l);function p(){let f=t.get("view");o.textContent=f.finding,
r.textContent=f.spent,c.textContent=f.more,a.replaceChildren(...Dt(f.left.map(([C,b])=>`${C} (${b})`)));let m=f.ranked,g=new Map(
m.map(([C,b,I],P)=>[C,{bits:b,rate:I,rank:P}]));for(let[C,{box:b,tells:I,rate:P,row:x}]of d){let $=f.observed[C],A=g.get(
C);b.value=$??"",I.textContent=A?A.bits:$!==void 0?"made":"nothing",P.textContent=A?A.rate+(A.rank===0?" ◀ best next":
""):"–",x.classList.toggle("tsk-best",A?.rank===0)}}return u.follow("change:view",p),p(),u.close}function Ss(t,{move:s,hand:n}){let{element:o,at:r}=ie(t),a=Object.entries(t.aims).filter(([d])=>d.startsWith("at:")),c=(d,l)=>{
let[u,p]=r(d,l);return j("circle",{cx:u,cy:p,r:16,class:"tsl-spot",...{"data-travel":d,"data-turn":l}})},i=j("g",{class:"\
tsl-knob"},j("circle",{r:12}));return o.append(...a.map(([,[d]])=>c(Number(d),0)),...t.gears.map(([,d,l])=>c(d,l)),i),o.
classList.add("ts-lever"),o.addEventListener("click",d=>{let l=vt(d,".tsl-spot");if(!l)return;let u=[Number(l.dataset.travel),
Number(l.dataset.turn)];for(let p of ts(t.aims,n(),u))s(p)}),{element:o,scale:[Ut,ae],show([d,l],u){let[p,f]=r(d,l);i.setAttribute(
"transform",`translate(${p.toFixed(1)} ${f.toFixed(1)})`);for(let m of J(o,"[data-gear]"))m.classList.toggle("tsl-in",u.
includes(String(m.dataset.gear)))}}}function Ls({model:t,el:s}){let n=e("p",{class:"ts-finding",role:"status"}),o=e("p",{class:"ts-happened",role:"status"}),
r=e("div",{class:"ts-scroll ts-fit"}),a=Ss(t.get("plan"),{move:S=>I({type:"move",code:S}),hand:()=>t.get("view").hand}),
c=e("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=e("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...wt(t.get("builds"))),d=nt("Start again",()=>I({type:"reset"})),l=e("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([S,k])=>nt(k,()=>I({type:"move",code:S})))),
u=e("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),p=e("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),f=e("p",{class:"ts-proof",role:"status"}),m=nt("What does a full hand test find?",()=>{
m.disabled=!0,f.textContent="testing",I({type:"prove"})}),g=Z({model:t,el:s},{kind:"rig"});c.append(e("div",{},e("p",{class:"\
ts-prompt"},"The lever"),a.element),r),g.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),g.alert,
e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"Put together: ",i),d,m),n,c,o,f,e("div",{class:"ts-gate-work"},e(
"div",{},e("p",{class:"ts-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down \
turn. Or in words:"),l),e("div",{},e("p",{class:"ts-prompt"},"Tried by hand"),p,u)));let C=0,b="";function I(S){C+=1,g.send(
{...S,turn:C})}function P(){let S=t.get("view");if(b!==t.get("figure")){b=t.get("figure"),r.innerHTML=b;let k=Nt(r,"svg");
k.removeAttribute("role"),k.setAttribute("aria-hidden","true")}for(let k of J(r,"[data-body]")){let[B,D]=S.moved[String(
k.dataset.rides??k.dataset.body)]??[0,0];k.setAttribute("transform",`translate(${B.toFixed(2)} ${D.toFixed(2)})`)}for(let k of J(
r,"[data-gear]"))k.classList.toggle("tsg-in",S.gears.includes(k.dataset.gear));for(let k of J(r,"[data-lifts]"))k.classList.
toggle("tsg-up",S.lifted);a.show(S.hand,S.gears),c.dataset.turn=String(S.turn),n.textContent=`${S.gears.length>1?"■ ":
S.gears.length?"● ":"○ "}${S.title}.`,o.textContent=S.happened,o.classList.toggle("ts-stopped",/topped by/.test(S.happened)),
(u.childElementCount!==S.log.length||u.lastElementChild?.textContent!==S.log.at(-1))&&(u.replaceChildren(...S.log.map(k=>e(
"li",{class:/topped by/.test(k)?"ts-stopped":""},k))),u.scrollTop=u.scrollHeight),p.hidden=S.log.length>0,i.value=S.build,
f.textContent=S.proof,m.disabled=!1,A=!1,E()}c.addEventListener("keydown",S=>{if(yt(S))return;let k={ArrowLeft:[-1,0],ArrowRight:[
1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[S.key];k&&(S.preventDefault(),I({type:"nudge",travel:k[0],turned:k[1]}))}),i.addEventListener(
"change",()=>I({type:"build",build:i.value}));let x=null,$=null,A=!1;function w(S,k){let B=k.getBoundingClientRect(),D=k.
viewBox.baseVal.width/B.width;return[(S.clientX-B.left)*D,(S.clientY-B.top)*D]}c.addEventListener("pointerdown",S=>{let k=vt(
S,".tsg-panel, .tsl-knob");if(!k||S.button!==0)return;let B=k.ownerSVGElement,D=t.get("view").hand,[G,y]=w(S,B),v=Number(
k.dataset.scale),O=v?[v,v]:a.scale;x={svg:B,x:G-D[0]*O[0],y:y+D[1]*O[1],scale:O},c.setPointerCapture(S.pointerId),c.focus(
{preventScroll:!0}),c.classList.add("ts-pulling"),S.preventDefault()}),c.addEventListener("pointermove",S=>{if(!x)return;
let[k,B]=w(S,x.svg),{scale:D}=x;$={travel_mm:(k-x.x)/D[0],turn_mm:(x.y-B)/D[1]},E()});let h=()=>{x=null,c.classList.remove(
"ts-pulling")};c.addEventListener("pointerup",h),c.addEventListener("pointercancel",h);function E(){if(A||!$)return;A=!0;
let S=$;$=null,I({type:"pull",...S})}return g.follow("msg:custom",S=>{S.type==="trouble"&&(A=!1)}),g.follow("change:view",
P),P(),g.close}function Cs({model:t,el:s}){let n=t.get("plan"),o=t.get("view"),r=e("p",{class:"ts-finding",role:"status"}),a=e("p",{class:"\
ts-happened tsw-happened",role:"status"}),c=e("div",{class:"ts-scroll ts-fit tsw-train"}),i=o.dials[0].shaft,l=n.gears.map(
([S,k])=>e("button",{type:"button",class:"ts-button","data-gear":S,"aria-pressed":"false",onclick:()=>w({type:"gear",gear:S})},
k)),u=e("select",{class:"ts-box","aria-label":"Wheel held still",onchange:S=>w({type:"hold",shaft:S.target.value})},...wt(
n.holds)),p=e("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:S=>{i=S.target.value,E()}},...wt(o.dials.
map(S=>[S.shaft,S.name]))),f=S=>w({type:"turn",shaft:i,turns:S}),m=`1/${n.marks}`,g=e("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},nt("↺ 1 turn",()=>f(-1),"One turn anticlockwise"),nt(`↺ ${m}`,()=>f(-n.step),`${m}\
 turn anticlockwise`),nt("↺ a touch",()=>f(-n.fine),"A touch anticlockwise"),nt("a touch ↻",()=>f(n.fine),"A touch c\
lockwise"),nt(`${m} ↻`,()=>f(n.step),`${m} turn clockwise`),nt("1 turn ↻",()=>f(1),"One turn clockwise"),nt("Marks t\
o zero",()=>w({type:"reset"}))),C=new Map;for(let S of o.dials){let k=j("g",{},j("circle",{class:"tsw-end",r:34}),j("lin\
e",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),j("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),B=[];for(let M=0;M<n.marks;M+=
1)B.push(j("line",{class:"tsw-tick",y1:-40,y2:M?-47:-52,transform:`rotate(${M*360/n.marks})`})),M&&B.push(j("text",{class:"\
tsw-number",x:57*Math.sin(M*2*Math.PI/n.marks),y:-57*Math.cos(M*2*Math.PI/n.marks)+4},String(M)));let D=j("svg",{viewBox:"\
-70 -70 140 140",class:"tsw-dial","data-shaft":S.shaft,"aria-hidden":"true"},j("circle",{class:"tsw-plate",r:40}),...B,j(
"path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),k),G=e("div",{class:"tsw-count",tabindex:"0",role:"application","\
aria-roledescription":"shaft","data-shaft":S.shaft},e("div",{class:"tsw-name"}),D,e("div",{class:"tsw-strokes","aria-hid\
den":"true"}),e("div",{class:"tsw-figure"}));C.set(S.shaft,{box:G,svg:D,shaftEnd:k}),G.addEventListener("focus",()=>{i!==
S.shaft&&(i=S.shaft,E())}),G.addEventListener("keydown",M=>{if(yt(M))return;let H={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,
ArrowUp:-1,PageDown:1,PageUp:-1}[M.key];H&&(M.preventDefault(),i=S.shaft,f(H*(M.key.startsWith("Page")?1:M.shiftKey?n.fine:
n.step)))});let y=null,v=M=>{let H=D.getBoundingClientRect();return Math.atan2(M.clientX-H.left-H.width/2,H.top+H.height/
2-M.clientY)/(2*Math.PI)};D.addEventListener("pointerdown",M=>{M.button===0&&(y=v(M),D.setPointerCapture(M.pointerId),G.
focus({preventScroll:!0}),M.preventDefault())}),D.addEventListener("pointermove",M=>{if(y===null)return;let H=v(M),Y=H-y;
Y-=Math.round(Y),y=H,b+=Y,P()});let O=()=>{y=null};D.addEventListener("pointerup",O),D.addEventListener("pointercancel",
O)}let b=0,I=!1;function P(){if(I||Math.abs(b)<.002)return;I=!0;let S=b;b=0,f(S)}let x=Z({model:t,el:s},{kind:"rig"});x.
show(...n.closed?[]:[e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved.")],x.alert,r,...n.closed?[]:[e("\
div",{class:"ts-tools",role:"group","aria-label":"Gears engaged"},e("span",{},"Engage: "),...l),c],e("div",{class:"ts-to\
ols"},e("span",{class:"ts-pair"},"Hold still: ",u),e("span",{class:"ts-pair"},"Turn by hand: ",p)),e("div",{class:"tsw-c\
ounts"},...[...C.values()].map(S=>S.box)),g,a,e("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a d\
ial round, or go to it and use the arrow keys (${m} turn), Shift with an arrow key (a touch) or Page Up and Page Down (o\
ne turn). Each stroke is a whole turn.`));let $=0,A=null;function w(S){$+=1,x.send({...S,turn:$})}let h=S=>{let k=[];for(let B=S;B>
0;B-=5)k.push(B>=5?"||||/":"|".repeat(B));return k.join(" ")};function E(){let S=t.get("view");A!==t.get("figure")&&(A=String(
t.get("figure")),c.innerHTML=A);for(let k of J(c,"[data-wheel]")){let[B,D]=S.wheels[String(k.dataset.wheel)]??[0,!0];k.setAttribute(
"transform",`translate(0 ${(B*Number(k.dataset.reach)).toFixed(1)})`),k.classList.toggle("tsw-behind",!D)}for(let k of l)
k.setAttribute("aria-pressed",String(S.engaged.includes(k.dataset.gear)));u.value=S.held,p.value=i;for(let k of S.dials){
let{box:B,shaftEnd:D}=C.get(k.shaft),G=k.way>0?"↻":k.way<0?"↺":"";D.setAttribute("transform",`rotate(${k.angle})`);let[
y,,v,O]=B.children;y.textContent=`${k.name}${k.held?", held":k.shaft===i?", your hand":""}`,v.textContent=k.strokes||G?`${G}\
 ${h(k.strokes)}`:"no stroke",O.textContent=k.figure,B.classList.toggle("tsw-hand",k.shaft===i),B.classList.toggle("tsw-\
held",k.held),B.setAttribute("aria-label",`${k.name}${k.held?", held":""}. ${k.words}`)}r.textContent=S.finding,a.textContent=
S.happened,s.dataset.turn=String(S.turn),I=!1,P()}return x.follow("change:view",E),E(),x.close}function As({model:t,el:s}){let n=e("p",{class:"ts-finding",role:"status"}),o=e("div",{class:"tsh-picture"}),r=e("p",{class:"\
tsh-head"}),a=e("p",{class:"tsh-seen"}),c=e("div",{class:"tsh-told"}),i=e("div",{class:"tsh-box",role:"status"},r,a,c),d=[],
l=[],u=null,p=t.get("plan").lookingOnly,f=(w,h)=>e("button",{type:"button",class:"ts-button","data-verdict":w,"aria-pres\
sed":"false",onclick:()=>b.send({type:"judge",place:u,verdict:w})},h),m=p?[]:[f("stop","Stop here"),f("well","Fine as it\
 is")],g=e("button",{type:"button",class:"ts-button",onclick:()=>b.send({type:"next"})},"Another day"),C=e("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...m);t.get("plan").more&&C.append(g);let b=Z({model:t,
el:s},{kind:"rig"});b.show(e("p",{class:"ts-who"},p?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),b.alert,n,e("p",{class:"ts-keys"},p?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),o,i),p||i.after(C);function I(w,h){let E=w!==u;u=w;for(let[S,k]of l.
entries()){let B=d[S][0]===w;k.setAttribute("tabindex",B?"0":"-1"),k.setAttribute("aria-pressed",String(B)),k.classList.
toggle("tsh-chosen",B),B&&h&&(k.focus({preventScroll:!0}),P(k))}E&&b.send({type:"choose",place:w})}function P(w){let h=Nt(
w,".tsh-hit").getBoundingClientRect(),E=o.getBoundingClientRect();(h.left<E.left||h.right>E.right)&&(o.scrollLeft+=h.left-
E.left-(E.width-h.width)/2),(h.bottom<0||h.bottom>innerHeight||h.top<0)&&w.scrollIntoView({block:"nearest"})}function x(){
let w=t.get("plan");d=w.places,o.innerHTML=w.drawing,Nt(o,"svg").setAttribute("role","group"),l=d.map(([h])=>Nt(o,`[data\
-place="${h}"]`)),l.forEach((h,E)=>{h.setAttribute("role","button"),h.setAttribute("aria-label",`${E+1} ${d[E][1]}`),h.addEventListener(
"click",()=>I(d[E][0],!0))}),u=String(t.get("view").chosen),I(u,!1)}o.addEventListener("keydown",w=>{if(yt(w))return;let h=d.
findIndex(([k])=>k===u),E=Math.min(6,d.length),S=h;if(w.key==="ArrowRight")S=h+1;else if(w.key==="ArrowLeft")S=h-1;else if(w.
key==="ArrowDown")S=h+E;else if(w.key==="ArrowUp")S=h-E;else if(w.key==="Home")S=0;else if(w.key==="End")S=d.length-1;else if(w.
key!=="Enter"&&w.key!==" ")return;w.preventDefault(),S>=0&&S<d.length&&I(d[S][0],!0)});function $(){let w=t.get("view");
n.textContent=w.finding;let h=d.findIndex(([k])=>k===w.chosen);r.textContent=`${h+1}  ${d[h][1]}`,a.textContent=w.seen;let{
verdict:E,...S}=w.told;if(c.replaceChildren(),E){let k=w.judged[w.chosen],B=k==="stop"==(E==="Stop here."),D=k==="stop"?
"Stop here":"Fine as it is";c.append(e("p",{class:"tsh-verdict"},B?`✓ Yes: ${E}`:`✗ You said “${D}”. The course sa\
ys: ${E}`),e("dl",{class:"ts-facts"},...Object.entries(S).flatMap(([G,y])=>[e("dt",{},G),e("dd",{},y)])))}for(let k of m)
k.setAttribute("aria-pressed",String(w.judged[w.chosen]===k.dataset.verdict));for(let[k,B]of l.entries()){let D=w.judged[d[k][0]];
B.setAttribute("aria-label",`${k+1} ${d[k][1]}${D?`, judged: ${D==="stop"?"stop here":"fine as it is"}`:""}`);let G=B.querySelector(
".tsh-tag");if(!D){G?.remove();continue}G||(G=j("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),B.
append(G)),G.textContent=D==="stop"?"■ stop":"○ well"}s.dataset.turn=w.chosen}let A=()=>{x(),$()};return b.follow("c\
hange:plan",A),b.follow("change:view",$),A(),b.close}function Es({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("p",{class:"tsl-sum"}),a=e(
"div",{class:"tsl-drawing"}),c=new Map,d=n.sliders.map(([f,m,g,C,b,I])=>{let P=st(f.replace("_","-")),x=e("output",{class:"\
tsl-figure",for:P}),$=e("input",{id:P,type:"range",min:C,max:b,step:I,oninput:()=>{A(),u.send({type:"set",name:f,value:Number(
$.value)})}}),A=()=>{x.textContent=`${$.value} ${g}`,$.setAttribute("aria-valuetext",`${$.value} ${g==="°"?"degrees":g}`)};
return c.set(f,{slider:$,say:A}),e("div",{class:"tsl-row"},e("label",{for:P},m),$,x)}),l=e("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>u.send({type:"set",name:"grip",value:l.value})},...wt(n.grips)),u=Z({model:t,el:s},{kind:"r\
ig"});u.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),u.alert,o,e("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...d,e("div",{class:"tsl-row"},e("span",{},"Grip"),l)),a,r,e("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function p(){let f=t.get("vi\
ew");o.textContent=f.finding,r.textContent=f.sum,a.innerHTML=f.drawing;for(let[m,{slider:g,say:C}]of c)document.activeElement!==
g&&(g.value=f.sizes[m]),C();l.value=f.sizes.grip}return u.follow("change:view",p),p(),u.close}var ue={x:90,y:120,perMm:20,radius:82,bevel:30};function _n(t){let s=j("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:o,perMm:r,radius:a}=ue;s.append(j("rect",{x:n-60,y:o-56,width:r*t.top+90,height:112,class:"tsi-pa\
per"}),it(n-20,o,n+r*t.top+20,o,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let f=n+p*t.pitch*r;if(p%2){s.append(it(
f,o,f,o+18,"tsi-fine"));continue}let m=p/2;s.append(it(f,o,f,o-(m%5?18:27),m%5?"tsi-fine":"tsi-bold")),m%5===0&&s.append(
ct(f,o-33,String(m)))}let c=j("g",{});s.append(c,ct(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=j("path",{d:`M0 ${o-a+14}L${ue.bevel} ${o-a}L${ue.bevel} ${o+a}L0 ${o+a-14}\
Z`,class:"tsi-body"}),d=j("rect",{x:ue.bevel,y:o-a,width:760,height:2*a,class:"tsi-body"}),l=j("rect",{x:0,y:o-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),u=j("g",{});return c.append(l,i,d,u),{node:s,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*r} 0)`),u.replaceChildren();for(let f=0;f<t.lines;f+=1){let m=f-p.line;m-=t.lines*Math.round(m/t.lines);let g=m/
t.lines*2*Math.PI;if(Math.abs(g)>1.15)continue;let C=o-(a-8)*Math.sin(g),b=f%5===0;u.append(it(0,C,b?26:16,C,b?"tsi-bold":
"tsi-fine")),b&&u.append(ct(36,C+5,String(f),"start"))}s.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function Ms(t){
return Ct(t,(s,n,o)=>{let r=_n(s),a=gt("Thimble",{min:0,max:s.top,step:.01,value:o.open,words:()=>"turn in to the left, \
out to the right",onInput:d=>n({open:d})}),c=ft("Between the faces",s.between,o.between,d=>n({between:d,open:s.top})),i=s.
hands.length?ft("Close it",s.hands,o.hand,d=>n({hand:d})):null;return{picture:r.node,controls:[Lt(c.row,i?.row),Lt(z("Cl\
ose until it rests",()=>n({open:-1})),z("Open",()=>n({open:s.top}))),a.row],set(d,l){r.set(d),a.box.value=String(Math.max(
0,d.mm)),c.box.value=l.between}}})}function Os({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("tbody",{role:"rowgroup"}),
a=new Map;for(let[d,l,u]of n.checks){let p=e("button",{class:"ts-button",type:"button","aria-label":`Make: ${l}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:d})}},"Make"),f=It("it shows",!1);f.classList.add("t\
sk-shown"),a.set(d,{button:p,shown:f}),r.append(e("tr",{role:"row"},e("th",{scope:"row",role:"rowheader"},l),It("min",!0,
`${u}`),It("",!1,p),f))}let c=Z({model:t,el:s},{kind:"rig"});c.show(e("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),c.alert,o,de("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],r));
function i(){let d=t.get("view");o.textContent=d.finding;for(let[l,{button:u,shown:p}]of a){let f=d.shown[l];u.setAttribute(
"aria-disabled",f?"true":"false"),u.classList.toggle("ts-off",!!f),u.textContent=f?"Made":"Make",p.textContent=f?`${f[0]?
"✓":"✗"} ${f[1]}`:"",p.classList.toggle("tsk-failed",!!f&&!f[0])}}return c.follow("change:view",i),i(),c.close}function Wn(){let t=j("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),s=j("g"),n=j("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(j("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),s,n,j("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let o=c=>(-135+270*c)*Math.PI/180,r="";function a([c,i,d]){s.replaceChildren();for(let l=0;l*i<=c+
1e-9;l+=1){let u=o(l*i/c),p=l%d===0,f=m=>[110+m*Math.sin(u),104-m*Math.cos(u)];if(s.append(it(...f(p?72:79),...f(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&l%(2*d)===0){let[m,g]=f(58);s.append(ct(m,g+4.5,String(Number((l*i).toFixed(2)))))}}s.
append(ct(110,170,"kN"))}return{node:t,set(c,i,d){String(c)!==r&&(r=String(c),a(c));let l=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*l})`),t.setAttribute("aria-label",d)}}}function Ts(t){return Ct(t,(s,n,o)=>{
let r=Wn(),a=e("div",{class:"tsp-section"}),c="",i=e("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,e("div",{class:"tsg-gauge"},r.node)),d=gt("Push",{min:0,max:100,step:1,value:o.travel,onInput:f=>n(
{travel:f}),words:f=>f>=100?"at the shoulder":`${f} % of the way`}),l=[d.row],u=null;if(!s.readingsOnly){let f=ft("Part",
s.places,o.place,b=>n({place:b,travel:0}));u=ft("Driver bears on",s.drivers,o.driver,b=>n({driver:b,travel:0}));let m=ft(
"Seat",s.seats,o.seat,b=>n({seat:b})),g=gt("Pair",{min:0,max:100,step:1,value:o.grip,onInput:b=>n({grip:b}),words:b=>b===
0?"loosest of the fit":b===100?"tightest of the fit":`${b} % from loosest to tightest`}),C=gt("Warm the outer part",{min:s.
room,max:s.hottest,step:1,value:o.warmth,onInput:b=>n({warmth:b}),words:b=>`${b} °C`});l.unshift(Lt(f.row,u.row,m.row),
g.row,C.row)}let p=e("dl",{class:"ts-facts"});return s.readingsOnly||l.push(p),{picture:i,controls:l,set(f,m){f.section!==
c&&(c=f.section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-s.travelPx*m.travel/
100} 0)`),r.set(f.gauge,f.force,f.words),Number(d.box.value)!==m.travel&&document.activeElement!==d.box&&d.set(m.travel),
u&&(u.row.hidden=!f.drives),f.facts&&p.replaceChildren(...At(f.facts))}}})}function Ns({model:t,el:s}){let n=t.get("steps"),o=t.get("reach"),r=new Map(n.map(([A],w)=>[A,w])),a=e("div",{class:"ts-\
scroll"}),c=e("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=e(
"p",{class:"ts-finding",role:"status"}),d=e("ul",{class:"ts-sentences"}),l=e("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...wt(n.map(([A,w],h)=>[A,`${h+1}  ${w}`]))),u=e("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),p=Z({model:t,el:s},{kind:"rig",lost(){l.disabled=!0}});p.show(p.alert,e("p",{class:"ts-f\
inding"},t.get("finding")),e("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},"Step ",l),
u),a,e("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,c,d),a.innerHTML=t.get("figure");let f=Nt(a,"svg");f.setAttribute("role","group");let m=J(f,".tsf-step").sort(
(A,w)=>Number(A.dataset.step)-Number(w.dataset.step)),g=J(f,".tsf-rule").map(A=>({node:A,ends:String(A.dataset.rule).split(
"-").map(Number)}));m.forEach((A,w)=>{A.setAttribute("role","button"),A.setAttribute("aria-label",`${w+1} ${n[w][1]}, ${o[w].
before.length} before it, ${o[w].after.length} after it`),A.addEventListener("click",()=>I(w,!0))});let C=Number(r.get(t.
get("near").step));function b(A){let w=new Set(o[C].before),h=new Set(o[C].after);m.forEach((B,D)=>{B.setAttribute("tabi\
ndex",D===C?"0":"-1"),B.setAttribute("aria-pressed",String(D===C)),B.classList.toggle("ts-chosen-step",D===C),B.classList.
toggle("ts-before-it",w.has(D)),B.classList.toggle("ts-after-it",h.has(D)),B.classList.toggle("ts-either",D!==C&&!w.has(
D)&&!h.has(D))});let E=B=>B===C||w.has(B)||h.has(B);for(let{node:B,ends:D}of g){let G=w.has(D[0])&&(D[1]===C||w.has(D[1]))||
h.has(D[1])&&(D[0]===C||h.has(D[0]));B.classList.toggle("ts-either",!(G&&D.every(E)))}l.value=n[C][0],A&&m[C].focus({preventScroll:!0});
let S=m[C].getBoundingClientRect(),k=a.getBoundingClientRect();(S.left<k.left+16||S.right>k.right-16)&&(a.scrollLeft+=S.
left-k.left-k.width/2)}function I(A,w){C=A,b(w),p.send({type:"choose",step:n[A][0]})}let P=A=>{let h=Nt(m[A],"rect").getBBox();
return{x:h.x,y:h.y}};function x(A){let w=P(C),h=k=>k.sort((B,D)=>Math.abs(P(B).y-w.y)-Math.abs(P(D).y-w.y))[0];if(A==="A\
rrowRight")return h(g.filter(({ends:k})=>k[0]===C).map(({ends:k})=>k[1]));if(A==="ArrowLeft")return h(g.filter(({ends:k})=>k[1]===
C).map(({ends:k})=>k[0]));let E=m.map((k,B)=>B).filter(k=>Math.abs(P(k).x-w.x)<2&&k!==C),S=A==="ArrowUp"?-1:1;return h(E.
filter(k=>(P(k).y-w.y)*S>0))}f.addEventListener("keydown",A=>{if(!yt(A))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes(A.key)){let w=x(A.key);w!==void 0&&I(w,!0),A.preventDefault()}else(A.key==="Enter"||A.key===" ")&&A.preventDefault()}),
l.addEventListener("change",()=>I(Number(r.get(l.value)),!1)),u.addEventListener("click",()=>{let A=a.classList.toggle("\
ts-fit");u.setAttribute("aria-pressed",String(A)),b(!1)});function $(){let A=t.get("near");i.textContent=A.words,c.innerHTML=
A.figure,d.replaceChildren(...Dt(A.sentences))}return p.follow("change:near",$),$(),requestAnimationFrame(()=>b(!1)),p.close}function Fn(){let t=j("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),s=j("g",{}),n=j("g",{});return s.append(
j("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),it(150,164,150,98,"tsi-bold"),j("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(it(150,86,150,40,"tsi-plunger"),j("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(s,it(50,164,
250,164,"tsg-centre"),it(150,250,150,80,"tsg-centre"),n,ct(8,252,"not to scale","start")),{node:t,set(o,r,a){s.setAttribute(
"transform",`rotate(${o} 150 164)`),n.setAttribute("transform",`rotate(${r} 150 88)`),t.setAttribute("aria-label",a)}}}function Is(t){
return Ct(t,(s,n,o)=>{let r=qt(),a=Fn(),c=gt("Turn the shaft by hand",{min:0,max:360,step:5,value:o.angle,words:l=>`turn\
ed by ${l}°`,onInput:l=>n({angle:l})}),i=ft("Plunger",s.pressed,o.pressed,l=>n({pressed:l})),d=ft("Stand",s.tilts,o.tilt,
l=>n({tilt:l}));return{picture:e("div",{class:"tsg-beside"},a.node,e("div",{class:"tsg-gauge"},r.node,e("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[Lt(i.row,d.row),c.row],set(l,u){r.set(l.mm,l.words),a.set(l.state.angle,Number(l.
state.tilt),`Shaft end on, turned by ${l.state.angle}°; the plunger stands ${l.state.tilt}° off square. Not to scale.`),
c.set(u.angle)}}})}var Bs=(t,s)=>(t+s)%7<2,Ps=(t,s)=>(t+s)%8<2||(t-s+8e4)%8<2,fe=()=>!1,pe=t=>(s,n)=>n%t===0,Kn={"":fe,dots:(t,s)=>t%6<2&&s%
6<2,rising:Bs,cross:Ps,flat:(t,s)=>s%6<2,rings:(t,s)=>{let n=Math.hypot(t%12-6,s%12-6);return n>2.5&&n<4.5},plus:(t,s)=>t%
10===5&&s%10>2&&s%10<8||s%10===5&&t%10>2&&t%10<8,"lines-1":fe,"lines-2":pe(14),"lines-3":pe(8),"lines-4":pe(5),"lines-5":pe(
3)};function qn(t){let s=n=>Number.parseInt(t.slice(n,n+2),16);return[s(1),s(3),s(5)]}var Ds=([t,s,n],o)=>(o<<24|n<<16|s<<
8|t)>>>0;function js(t,[s,n],o,r,a){let c=n*4,i=new Uint32Array(c*s*4),d=new Map(o.map(([p,,f,m])=>{let g=f?Ds(qn(f),200):
0;return[p,{ground:g,hatch:Kn[m]??fe}]})),l={ground:0,hatch:fe},u=Ds(r,190);for(let p=0;p<s;p+=1){let f=(s-1-p)*4;for(let m=0;m<
n;m+=1){let g=t[p*n+m];if(!g)continue;let{ground:C,hatch:b}=d.get(g&15)??l,I=a&&(g&16)!==0,P=a&&(g&32)!==0;for(let x=f;x<
f+4;x+=1)for(let $=m*4;$<(m+1)*4;$+=1){let A=b($,x)||I&&Bs($,x)||P&&Ps($,x);i[x*c+$]=A?u:C}}}return i}var zn=600;function Hs(t,s,n,o,r,a){let[c,i]=n;t.width=i*4,t.height=c*4;let d=new Uint8ClampedArray(js(s,n,o,r,a).buffer),
l=new ImageData(d,t.width,t.height);t.getContext("2d")?.putImageData(l,0,0)}function Gn(t,s){let n=e("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return Hs(n,new Uint8Array(15).fill(t[0]),[3,5],[t],s,!1),e("span",{class:"ts-key"},n,t[1])}
function _s({model:t,el:s}){let n=t.get("face"),o=t.get("looks"),r=e("p",{class:"ts-finding",role:"status"}),a=e("span",
{class:"ts-clock"}),c=e("dl",{class:"ts-facts"}),i=e("p",{class:"ts-legend"}),d=e("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),l=Z({model:t,el:s},{kind:"rig",lost(){f.setDisabled(!0),Yt(s)}}),u=null,p=v=>{u=st("turn"),l.send({...v,turn:u})},
f=ne({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(v){f.
drawing.strokes(v),p({type:"lay",entries:v})},onRemove:v=>p({type:"remove",at:v}),onClear:()=>p({type:"clear"})}),m=z("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),g=e("input",{type:"range",id:st("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),C=e("output",{for:g.id}),b=St({id:st("slide"),onchange:()=>p({type:"slide",by:b.value})},
t.get("view").slides),I=null;g.addEventListener("input",()=>{C.textContent=`${g.value} µm`;let v={type:"flat",um:Number(
g.value)};u===null?p(v):I=v});let{box:P,unit:x}=f.drawing;f.drawing.land.classList.add("tsp-clear"),f.drawing.frame.prepend(
d);let $=(...v)=>e("span",{class:"ts-pair"},...v);l.show(e("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),l.alert,r,f.drawing.frame,i,e("div",{class:"ts-tools"},m,$(e("label",{for:b.id},"the other face is"),b),$(a,z("1 m\
inute passes",()=>p({type:"time",by:1})),z("5 minutes pass",()=>p({type:"time",by:5}))),$(e("label",{for:g.id},"faces ou\
t of flat by"),g,C)),f.tools,c,e("details",{class:"ts-keys"},e("summary",{},"Passes laid"),f.empty,f.list));function A(){
let v=getComputedStyle(s).color.match(/\d+(\.\d+)?/g);return v?v.slice(0,3).map(Number):[0,0,0]}let w="",h="";function E(){
let v=t.get("view"),O=o[v.closed?"closed":"film"],M=t.get("grid"),H=M instanceof DataView?new Uint8Array(M.buffer,M.byteOffset,
M.byteLength):new Uint8Array(M);Hs(d,H,v.shape,O,A(),!v.closed);let[Y,V]=v.shape,[ht,et]=[v.corner[0]-v.pitch/2,v.corner[1]-
v.pitch/2],W=(F,q)=>`${(100*F/q).toFixed(3)}%`;d.style.left=W(ht-P.left,P.width),d.style.width=W(V*v.pitch,P.width),d.style.
top=W(P.high-et-Y*v.pitch,P.height),d.style.height=W(Y*v.pitch,P.height);let X=new Set(H.map(F=>v.closed?F:F&15)),L=O.filter(
([F])=>X.has(F)),_=`${L.map(([,F])=>F)} ${A()}`;_!==w&&(w=_,i.replaceChildren(...L.map(F=>Gn(F,A()))))}let S=j("g");f.drawing.
over.append(S);let k=([v,O])=>[v-P.left,P.high-O];function B([v,O]){let M=O.map(H=>{let[Y,V]=k(H);return`M${Y.toFixed(1)}\
 ${V.toFixed(1)}h0.01`});return j("path",{d:M.join(""),class:"tsp-lump","stroke-width":2*v})}function D(v){let[O,M]=k(v[v.
length-1]),H=`M${O-1.3*x} ${M-x}h${2.6*x}l${-1.3*x} ${2.2*x}Z`;return[j("path",{d:f.drawing.path(v),class:"tsp-way","str\
oke-width":x}),j("path",{d:H,class:"tsp-out"})]}function G(){let v=t.get("view");if(u!==null&&v.turn!==u)return;u=null;let O=JSON.
stringify([v.entries,v.notes]);if(O!==h&&f.show(v.entries,v.notes),h=O,f.drawing.strokes([]),E(),S.replaceChildren(...v.
lumps.map(B),...v.leaks.flatMap(D)),f.drawing.svg.classList.toggle("tsp-shut",v.closed),f.drawing.svg.classList.toggle("\
tsp-clean",v.closed||v.clean),r.textContent=v.finding,b.value=v.slide,a.textContent=`minute ${v.minute}`,m.textContent=v.
closed?"Lift the face off again":"Close the face",I===null&&(g.value=String(v.flat),C.textContent=`${v.flat} µm`),c.replaceChildren(
...At(v.facts)),I===null)return;let M=I;I=null,p(M)}l.follow("change:view",G),l.follow("msg:custom",v=>{v.type==="troubl\
e"&&(u=null,f.drawing.strokes([]))});let y=new MutationObserver(()=>setTimeout(E,zn));return y.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),G(),()=>{l.close(),y.disconnect()}}function Ws(t){return Ct(t,(s,n,o)=>{let r=qt(),a=e("div",{class:"tsp-section"}),c="",i=e("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,e("div",{class:"tsg-gauge"},r.node,e("div",{},`Depth gauge on \
a bridge of ${s.bridge} mm, one mark 0.01 mm`))),d=s.places.map(([u,p])=>[u,e("button",{type:"button",class:"ts-button",
onclick:()=>n({place:u})},p)]),l=[e("p",{class:"ts-hint"},s.rule),Lt(e("span",{},"Set the gauge down at"),...d.map(([,u])=>u))];
return s.readingsOnly||(l.push(Lt(ft("Lip looks towards",s.sides,o.lip,u=>n({lip:u})).row,ft("Lip is",s.greases,o.grease,
u=>n({grease:u})).row,s.sleeves.length?ft("It went",s.sleeves,o.sleeve,u=>n({sleeve:u})).row:"")),l.push(gt("Drive it to\
 a depth",{min:s.least,max:s.most,step:.05,value:o.depth,words:u=>`${u.toFixed(2)} mm${u<0?", proud":""}`,onInput:u=>n({
depth:u})}).row,gt("Lean",{min:0,max:s.mostLean,step:.02,value:o.lean,words:u=>u?`${u.toFixed(2)} mm across`:"square",onInput:u=>n(
{lean:u})}).row)),{picture:i,controls:l,set(u,p){u.section!==c&&(c=u.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.
setAttribute("transform",u.placed),r.set(u.dial,u.words);for(let[f,m]of d)m.setAttribute("aria-pressed",String(f===p.place))}}})}function Fs({model:t,el:s}){let n=t.get("about"),o=t.get("shown").state,r=qt(),a=n.readingsOnly?null:gs(n),c=e("p",{class:"\
ts-finding",role:"status"}),i=e("div",{}),d=Kt((w,h)=>I.send({type:"set",state:w,turn:h})),l=w=>{o={...o,...w},d.ask(o)},
u=(w,h)=>{let E=[...o.shims];E[w]=h,l({shims:E.filter(Boolean),turns:0})},p=(w,h,E)=>z(w,h,{"aria-pressed":E}),f=z("Turn\
 the shaft ten times",()=>l({turns:o.turns+10})),m=p("Pull the shaft away",()=>l({side:"away"}),"true"),g=p("Push it to \
the dial",()=>l({side:"towards"}),"false"),C=ft("Plunger",n.plungers,o.plunger,w=>l({plunger:w})),b=[e("div",{class:"ts-\
tools"},n.rolls?f:null,C.row,m,g)];if(!n.readingsOnly){let w=ft("Shim",n.shelf,o.shims[0],E=>u(0,E)),h=n.second?ft("and",
[["","no second shim"],...n.shelf],o.shims[1]??"",E=>u(1,E)):null;b.unshift(e("div",{class:"ts-tools"},w.row,h?.row)),b.
push(gt("Warm the unit",{min:0,max:100,step:1,value:o.warmth,onInput:E=>l({warmth:E}),words:E=>E?`case ${Math.round(n.caseRise*
E/100)} K warmer`:"cold, as at the bench"}).row)}let I=Z({model:t,el:s},{kind:"rig"}),P=e("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});P.innerHTML=n.section;let x=[e("p",{class:"ts-who"},n.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),I.alert,e("div",{class:"\
tsg-beside"},P,e("div",{class:"tsg-gauge"},r.node,e("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...b,c,
a&&e("div",{},e("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),e("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];I.show(...x.filter(Boolean));function $(){let w=t.get("show\
n");d.waiting||(o=w.state),r.set(w.dial,w.dialWords),m.setAttribute("aria-pressed",String(w.state.side==="away")),g.setAttribute(
"aria-pressed",String(w.state.side==="towards")),c.textContent=w.finding,a&&(a.set(w.cold,w.warm,w.words.join(" ")),i.replaceChildren(
...w.words.map(h=>e("p",{},h)))),d.answered(w.turn)}let A=()=>d.free();return I.follow("change:shown",$),I.follow("msg:c\
ustom",A),$(),I.close}function Ks(t){return Ct(t,(s,n,o)=>{let r=e("div",{tabindex:"0",role:"group","aria-label":s.name}),a="",c=s.pickers.map(
({key:l,label:u,options:p})=>ft(u,p,o[l],f=>n({[l]:f})).row),i=s.sliders.map(({key:l,label:u,min:p,max:f,step:m,unit:g,places:C})=>gt(
u,{min:p,max:f,step:m,value:o[l],words:b=>`${b.toFixed(C)} ${g}`,onInput:b=>n({[l]:b})}).row),d=c.length>2?c:c.length?[Lt(
...c)]:[];return{picture:r,controls:[...d,...i],set(l){l.drawing!==a&&(a=l.drawing,r.innerHTML=a)}}})}function qs({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding",role:"status"}),r=e("div",{class:"tsj-band"}),
a=e("div",{class:"tsj-section"}),c=e("dl",{class:"ts-facts"}),i=null,d=null,l=(h,E)=>{d={...d,[h]:E},i===null&&u()};function u(){
i=st("choice"),$.send({type:"choose",chosen:d,turn:i}),d=null}let p=e("div",{class:"tsj-settings"}),f=(h,E,S)=>{let k=st(
"set");return E.id=k,p.append(e("label",{for:k},h),e("span",{class:"tsj-slide"},E,S)),E},m=(h,E,S)=>f(E,e("select",{class:"\
ts-box",onchange:k=>l(h,k.target.value)},...wt(S.map(k=>typeof k=="string"?[k,k]:k)))),g=(h,E,S)=>f(E,e("input",{type:"r\
ange",oninput:k=>l(h,Number(k.target.value))}),S),C={group:m("group","Bolt of the unit",n.groups),thread:m("thread","Thr\
ead",n.threads),strength:m("strength","Strength class",n.classes),state:m("state","State of the thread",n.states),tool:m(
"tool","Tool",n.tools)},b=e("output",{class:"tsj-figure"}),I=g("torque_nm","Torque",b),P=e("output",{class:"tsj-figure"}),
x=g("engagement_mm","Thread that meets",P),$=Z({model:t,el:s},{kind:"rig"});$.show(e("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),$.alert,o,r,e("div",{class:"tsj-bench"},p,a),c);let A=(h,E,S,k,B,D)=>{Ot(h,{min:E,max:S,
step:k}),i===null&&(h.value=String(B)),h.setAttribute("aria-valuetext",D)};function w(){let h=t.get("view");if(i!==null&&
h.turn!==i)return;i=null,d!==null&&u();let{chosen:E}=h;o.textContent=h.finding,r.innerHTML=h.band,a.innerHTML=h.section,
c.replaceChildren(...At(h.facts));for(let[S,k]of Object.entries(C))k.value=E[S];A(I,1,h.topTorque,.5,E.torque_nm,h.torqueText),
b.textContent=h.torqueText,A(x,h.lowEngagement,h.topEngagement,.5,E.engagement_mm,h.engagementText),P.textContent=h.engagementText}
return $.follow("change:view",w),w(),$.close}function Us({model:t,el:s}){let n=Ft(t.get("picture")),o=Z({model:t,el:s},{kind:"rig"});return o.show(o.alert,e("p",{class:"\
ts-finding"},t.get("finding")),...n.nodes),o.close}function zt(t,s){return(t.find(([n])=>n===s)??t[0])[2]}function Ee(t,s){return t.find(([,,n])=>s!==void 0&&n.includes(s))?.[0]}
var Ae=(t,s)=>[...t.slice(s+1),...t.slice(0,s+1)];function zs(t,{stages:s,stage:n,step:o,labels:r,isOpen:a}){let c=zt(s,
n),i=c.indexOf(String(o));if(t==="ArrowLeft"||t==="ArrowRight"){let l=s.map(([f])=>f),u=t==="ArrowLeft"?-1:1,p=zt(s,l[(l.
indexOf(n)+u+l.length)%l.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let d=t.toLowerCase();return Ae(c,i).find(l=>r[l].toLowerCase().startsWith(d))}function Gs({stages:t,stage:s,step:n,isOpen:o}){
let r=zt(t,s),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(r.at(-1)));return Ae(r,r.indexOf(String(n))).find(o)??Ae(a,c).find(
o)}function Vs({model:t,el:s}){let n=t.get("plan"),o=e("p",{class:"ts-finding"}),r=e("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=e("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>ht()},
...wt(n.stages.map(([T,K])=>[T,K]))),c=nt(n.marked?"Next open step":"Next ready step",()=>v("next"));c.classList.add("ts\
-next");let i=e("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this sta\
ge",onkeydown:T=>M(T)}),d=e("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the s\
tage, Enter takes a step in hand; Enter again does it."),l=e("div",{class:"ts-hand",role:"group","aria-label":"Step in h\
and",onkeydown:T=>{T.key!=="Enter"||!T.target.matches("input[type=radio], .ts-number-box")||(T.preventDefault(),t.get("h\
and").stands?Y():q())}}),u=e("div",{class:"ts-scroll ts-fit"}),p=e("dl",{class:"ts-facts"}),f=e("ul",{class:"ts-sentence\
s"}),m=e("p",{class:"ts-prompt"},"Wrong so far"),g=e("select",{class:"ts-box ts-before","aria-label":"A step that stands"}),
C=nt("Take out again",()=>{g.value&&h({type:"out",step:g.value},"hand")}),b=nt("Put the tools down",()=>h({type:"over"},
"told"));b.classList.add("ts-over");let I=e("div",{}),P=e("p",{class:"ts-status"}),x=e("details",{ontoggle:()=>{x.open!==
!!t.get("view").record&&h({type:"record",open:x.open})}},e("summary",{},"Build record"),I),$=Z({model:t,el:s},{kind:"rig"});
$.show(e("p",{class:"ts-who"},n.who),$.alert,o,P,r,e("div",{class:"ts-build"},e("div",{class:"ts-build-left"},e("div",{class:"\
ts-tools"},a,c),i,d),l),e("div",{class:"ts-tools"},e("span",{class:"ts-pair"},g,C),b),u,p,m,f,x);let A=0,w=null;function h(T,K=null){
A+=1,w=K&&{turn:A,focus:K},s.setAttribute("aria-busy","true"),$.send({...T,turn:A})}let E="",S=null,k="next",B=T=>!t.get(
"view").done.includes(T),D=()=>J(i,"[data-step]"),G=T=>D().find(K=>K.dataset.step===T)?.focus(),y=()=>({stages:n.stages,
stage:a.value,step:S,isOpen:B});function v(T,K){k=T,h(T==="list"?{type:"take",step:K}:{type:"next"},"hand")}function O(T){
a.value=Ee(n.stages,T)??a.value,S=T,ht(),G(T)}function M(T){if(yt(T))return;let K=zs(T.key,{...y(),labels:n.labels});K&&
(T.preventDefault(),O(K))}function H(){let T=Gs(y());T?k==="next"?c.focus():O(T):b.focus()}function Y(){let T=t.get("vie\
w").done.length>=Object.keys(n.labels).length;k==="next"&&!T?v("next"):H()}function V(T){let{done:K,ready:rt}=t.get("vie\
w");return K.includes(T)?{sign:"✓",word:"done"}:rt.includes(T)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"op\
en":"waits"}}function ht(){let T=zt(n.stages,a.value);(S===null||!T.includes(S))&&(S=T.find(B)??T[0]);let K=t.get("hand").
step,rt=JSON.stringify([a.value,T.map(V),K]);if(rt===E){for(let mt of D())mt.tabIndex=mt.dataset.step===S?0:-1;return}E=
rt;let pt=D().find(mt=>mt===document.activeElement)?.dataset.step;i.replaceChildren(...T.map(mt=>et(mt,K))),pt&&G(pt)}function et(T,K){
let{sign:rt,word:pt}=V(T);return e("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${pt}`,"data-step":T,
tabindex:T===S?"0":"-1","aria-current":T===K?"step":!1,"aria-label":`${n.labels[T]}: ${pt}`,onclick:()=>{S=T,v("list",T)}},
Et(rt),n.labels[T])}let W="",X=new Map;function L(T){let K=Rt(T),rt=e("p",{class:"ts-read",id:K.read,role:"status"}),pt=0,
mt=R=>{h({type:"set",name:T.name,value:R}),pt=A},tt=Pt(T).make(T,K,mt,()=>{}),N=Ht(T,K,null);return N.append(tt.element,
rt),N.dataset.field=T.name,{element:N,flush:()=>tt.flush?.(),show(R={},Q){if(Q<pt)return;tt.show(R);let lt=R.read?`read \
as ${R.read}`:"";rt.textContent=R.error?`▲ Look again: ${R.error}`:lt}}}let _=T=>e("dl",{class:"ts-facts"},...At(T));function F(){
let T=t.get("hand"),K=JSON.stringify(T);if(K===W)return;if(W=K,l.dataset.stands=String(!!T.stands),X=new Map((T.fields??
[]).map(tt=>[tt.name,L(tt)])),!T.step){l.replaceChildren(e("p",{class:"ts-hint"},"No step in hand. Choose one from the l\
ist, or press the button above it."));return}let rt=nt(`Do it: ${T.label}`,q);rt.classList.add("ts-do");let pt=T.stands?
[nt("Go on",Y),nt("Take it out again",()=>h({type:"out",step:T.step},"hand"))]:[rt];l.replaceChildren(e("p",{class:"ts-p\
rompt ts-hand-name",tabindex:"-1"},T.label),...T.plain.map(tt=>e("p",{class:"ts-hint"},tt)),...T.cautions.map(tt=>e("p",
{class:"ts-caution"},e("b",{},"Take care: "),tt)),...T.read.length?[e("p",{class:"ts-prompt"},"Read at the bench"),_(T.read)]:
[],...T.card.length?[_(T.card)]:[],...[...X.values()].map(tt=>tt.element),e("div",{class:"ts-tools"},...pt));let mt=Ee(n.
stages,T.step);mt&&([a.value,S]=[mt,T.step])}function q(){for(let T of X.values())T.flush();h({type:"do"},"after")}function ot(){
let T=t.get("view").asked_back,K=J(l,"[data-field]").find(mt=>mt.dataset.field===T),rt=K&&J(K,"input:not(:disabled), sel\
ect, button"),pt=J(l,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return rt?.[0]??
pt[0]}function U(){let T=t.get("view"),K=T.told;o.textContent=T.finding,P.textContent=T.status,P.hidden=!T.status,r.textContent!==
K.join("")&&r.replaceChildren(...K.map(pt=>e("p",{},pt))),F(),ht();for(let[pt,mt]of X)mt.show(T.states[pt],T.turn);if(u.
dataset.shown!==T.figure&&(u.innerHTML=T.figure,u.dataset.shown=T.figure),p.replaceChildren(...At(T.facts)),f.replaceChildren(
...Dt(T.faults.map(([,pt])=>pt))),m.hidden=f.hidden=!T.faults.length,dt(T.done),I.innerHTML=T.record,x.open=!!T.record,s.
setAttribute("aria-busy",String(T.turn<A)),!w||T.turn<w.turn)return;let{focus:rt}=w;w=null,rt==="told"?r.focus():rt==="a\
fter"&&!t.get("hand").step?H():(ot()??c).focus()}function dt(T){if(g.disabled=C.disabled=!T.length,g.dataset.done===T.join(
" "))return;g.dataset.done=T.join(" ");let K=[...T].reverse();g.replaceChildren(...wt(K.map(rt=>[rt,n.labels[rt]])))}return $.
follow("change:view",U),U(),$.close}function Vn(t){let s=j("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[o,r]=[210,128],a=it(
o,r,o,r,"tsi-adapter"),c=j("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=it(o,r+74,o,r+74,"tsi-arm"),d=ct(o,r+94,"");return s.
append(it(o,r,o+440,r,"tsi-lever"),a,c,j("circle",{cx:o,cy:r,r:7,class:"tsg-hub"}),ct(o+440,r-20,"hand, middle of the gr\
ip","end"),ct(o+20,r-20,"square drive","start"),it(o+440,r+10,o+440,r+84,"tsg-centre"),i,d,ct(8,242,"lengths to scale","\
start")),{node:s,set(l){let u=l.state.angle/180*Math.PI,p=o-l.state.reach*n*Math.cos(u),f=r-l.state.reach*n*Math.sin(u);
Ot(a,{x2:p,y2:f}),Ot(c,{cx:p,cy:f}),Ot(i,{x1:p,x2:o+440}),Ot(d,{x:(p+o+440)/2}),d.textContent="the lever from bolt to ha\
nd, along the wrench",s.setAttribute("aria-label",`${t.name}. ${l.words}`)}}}function Ys(t){return Ct(t,(s,n,o)=>{let r=Vn(
s),a=(i,d,l,u,p,f)=>gt(i,{min:l,max:u,step:p,value:o[d],words:m=>`${m} ${f}`,onInput:m=>n({[d]:m})}),c={setting:a("Setti\
ng","setting",s.low,s.high,s.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(s.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{picture:r.node,controls:Object.values(c).map(i=>i.row),
set(i,d){r.set(i);for(let[l,u]of Object.entries(c))u.set(d[l])}}})}var he=t=>typeof t=="string"?t:t.text;function Xs(t,s,n){let o=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
r=a=>he(a.cells[s]??"").trim();return[...t].sort((a,c)=>{let[i,d]=[r(a),r(c)];if(!i||!d)return+!i-+!d;let[l,u]=[Number.parseFloat(
i),Number.parseFloat(d)],p=Number.isNaN(l)||Number.isNaN(u)||l===u?o.compare(i,d):l-u;return n?-p:p})}function Gt(t,s){let n=document.getElementById("jupyter-config-data"),o="/";try{o=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${o}${t}/${s.split("/").map(encodeURIComponent).join("/")}`}function Yn(t){let s="";for(let n=0;n<t.length;n+=32768)s+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(s)}
async function Js(t,s,n){let o=0;do{let r=new Uint8Array(await n.slice(o,o+524288).arrayBuffer()),a=o===0;o+=524288;let c=o>=
n.size;t.send({type:"file",field:s,name:n.name,data:Yn(r),first:a,last:c})}while(o<n.size)}var Xn=400;function Zs({model:t,el:s}){let n=Z({model:t,el:s},{kind:"desk"}),o=e("p",{class:"ts-said",role:"status"}),r=e(
"div",{class:"ts-desk-body"}),a=e("div",{class:"ts-desk-here","aria-hidden":"true"}),c=e("div",{class:"ts-busy"}),i=e("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),d=t.get("cohort"),l=e("input",{id:st("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:l.value})});l.value=t.get("by"),n.show(e("div",{class:"\
ts-desk-top"},e("b",{},Tt([d.name,d.college]).join(", ")),e("span",{class:"ts-pair"},e("label",{for:l.id},"At the desk (\
your name, for the trail)"),l)),d.invented?e("p",{class:"ts-hint"},d.invented):null,i,c,n.alert,o,r);let u=new Map,p=new Map,
f=new Map,m=new Map,g=!1,C="",b="",I=!1,P=()=>g||Object.keys(t.get("busy")).length>0,x=(L,_={})=>{P()||n.isLost()||(L!==
"look"&&(o.textContent="",n.alert.textContent="",w()),t.send({type:L,..._}))},$=()=>J(s,"[data-key]");function A(){let L=$().
find(_=>_.dataset.key===C);return L&&r.contains(L)?L.closest("form, section"):null}function w(){let L=A();L?L.append(c,a):
(i.after(c),a.remove());let[_,F]=[o.textContent,n.alert.textContent];a.replaceChildren(...Tt([_&&e("p",{class:"ts-told"},
_),F&&e("p",{class:"ts-trouble"},F)]));for(let q of[o,n.alert])q.classList.toggle("ts-hidden",!!L);return L}function h(){
let L=w(),_=[n.alert,o].find(q=>q.textContent);(L?a.childElementCount?a:null:_)?.scrollIntoView({block:"nearest"})}async function E(L,_,F=""){
if(P()||n.isLost())return;C=_,I=!0,g=!0;try{for(let[ot,U]of m){let[dt]=U.files??[];dt&&await Js(t,ot,dt)}}finally{g=!1}let q=[
...p].map(([ot,U])=>[ot,[...U]]);x("do",{act:L,of:F,typed:Object.fromEntries(u),ticked:Object.fromEntries(q)})}function S(L){
let{name:_,of:F}=L,q=st("field"),ot=L.hint?e("span",{class:"ts-hint",id:`${q}-hint`},L.hint):null,U={id:q,"data-key":`fi\
eld:${_}`,"aria-describedby":ot?.id},dt=e("label",{for:q},L.label);if(!u.has(_)&&F!=="file"&&u.set(_,F==="tick"?L.value===
"yes":L.value),F==="file"){let rt=m.get(_)??e("input",{type:"file",class:"ts-file"});for(let[pt,mt]of Object.entries(U))
mt&&rt.setAttribute(pt,mt);return m.set(_,rt),e("div",{class:"ts-desk-field"},dt,rt,ot)}if(F==="tick"){let K=e("input",{
type:"checkbox",...U});K.checked=u.get(_)===!0,K.addEventListener("change",()=>u.set(_,K.checked));let rt=e("label",{class:"\
ts-option",for:q},K,L.label);return e("div",{class:"ts-desk-field"},rt,ot)}let T=F==="choice"?St(U,L.options):F==="long"?
e("textarea",{class:"ts-box",rows:"3",maxlength:"2000",...U}):e("input",{class:"ts-box",autocomplete:"off",maxlength:"40\
0",...U});return T.value=String(u.get(_)??""),F==="choice"&&!L.options.some(([K])=>K===u.get(_))&&(T.value=L.options[0]?.[0]??
"",u.set(_,T.value)),T.addEventListener("input",()=>u.set(_,T.value)),e("div",{class:"ts-desk-field"},dt,T,ot)}function k(L){
let _=st("form"),F=e("div",{class:"ts-doing"}),q=()=>{F.replaceChildren(...L.acts.map(U=>z(U.label,()=>U.sure?ot(U):E(U.
id,`act:${U.id}`),{class:U.first?"ts-button ts-first":"ts-button","data-key":`act:${U.id}`})))},ot=U=>{let dt=st("sure"),
T=e("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":dt},e("p",{id:dt},U.sure),e("div",{class:"ts-d\
oing"},z(`Yes: ${U.label}`,()=>E(U.id,`act:${U.id}`),{"data-key":`act:${U.id}`}),z("No, leave it",()=>{q(),J(F,`[data-ke\
y="act:${U.id}"]`)[0]?.focus()})));F.replaceChildren(T),T.focus()};return q(),e("form",{class:"ts-desk-form","aria-label\
ledby":L.title?_:null,onsubmit:U=>U.preventDefault()},L.title?e("h3",{id:_},L.title):null,L.hint?e("p",{class:"ts-hint"},
L.hint):null,L.fields.length?e("div",{class:"ts-desk-fields"},...L.fields.map(S)):null,L.acts.length?F:null)}function B(L,_){
if(typeof L=="string")return L;let F=L.act?z(L.text,()=>E(L.act,_,L.of),{class:"ts-cell","aria-label":L.label||null,"dat\
a-key":_}):L.text;return e("span",{},L.shape?Et(L.shape):null,F)}function D(L){let _=st("table"),F=e("h3",{id:_},L.title);
if(!L.rows.length)return e("section",{},F,e("p",{},L.empty));let q=p.get(L.id)??new Set,ot=new Set(L.rows.map(({key:tt})=>tt));
for(let tt of q)ot.has(tt)||q.delete(tt);p.set(L.id,q);let U=e("tr",{}),dt=e("tbody",{}),T=L.pick?e("input",{type:"check\
box","aria-label":"all","data-key":`all:${L.id}`}):null,K=()=>{T&&(T.checked=q.size===L.rows.length,T.indeterminate=q.size>
0&&!T.checked)},rt=()=>{let tt=f.get(L.id),N=tt?Xs(L.rows,tt.column,tt.down):L.rows;dt.replaceChildren(...N.map(mt)),U.replaceChildren(
...T?[e("th",{class:"ts-tick"},T)]:[],...L.columns.map(pt)),K()},pt=(tt,N)=>{let R=f.get(L.id),Q=R?.column===N,lt=Q?R.down?
"descending":"ascending":null,kt=()=>{f.set(L.id,{column:N,down:Q&&!R.down}),rt(),J(U,`[data-key="${ut}"]`)[0]?.focus()};
if(!tt)return e("td");let ut=`sort:${L.id}:${N}`;return e("th",{scope:"col","aria-sort":lt,class:L.numbers.includes(N)?"\
ts-figure":null},z(tt,kt,{class:"ts-sort","data-key":ut}),Q?Et(R.down?"▼":"▲"):null)},mt=tt=>{let N=L.pick?e("input",
{type:"checkbox","aria-label":tt.cells.slice(0,3).map(he).join(" "),"data-key":`row:${L.id}:${tt.key}`}):null;return N&&
(N.checked=q.has(tt.key),N.addEventListener("change",()=>{N.checked?q.add(tt.key):q.delete(tt.key),K()})),e("tr",{},N?e(
"td",{class:"ts-tick"},N):null,...tt.cells.map((R,Q)=>{let lt=!Q&&!!he(R);return e(lt?"th":"td",{scope:lt?"row":null,class:L.
numbers.includes(Q)?"ts-figure":null},B(R,`cell:${L.id}:${tt.key}:${Q}`))}))};return T?.addEventListener("change",()=>{if(q.
clear(),T.checked)for(let{key:tt}of L.rows)q.add(tt);for(let tt of J(dt,"td.ts-tick input"))tt.checked=T.checked}),rt(),
e("section",{},e("div",{class:"ts-desk-caption"},F,z("Save as CSV",()=>t.send({type:"export",table:L.id}),{"aria-label":`\
Save as CSV: ${L.title}`,"data-key":`export:${L.id}`})),e("div",{class:"ts-desk-scroll",role:"region",tabindex:0,"aria-l\
abelledby":_},e("table",{class:"ts-table","aria-labelledby":_},e("thead",{},U),dt)))}function G(L){if(L.kind==="table")return D(
L);if(L.kind==="form")return k(L);if(L.kind==="link"){let _=L.how==="edit"?"lab/tree":L.how,q={class:"ts-link",href:_?Gt(
_,L.path):L.path,target:"_blank"};return e("p",{},e("a",{...q,"data-key":`link:${L.path}`},L.text))}return L.how==="head"?
e("h3",{},L.text):e("p",{class:L.how==="hint"?"ts-hint":null},L.text)}function y(L){n.isLost()||(b=P()?L:"",!b&&(C="",x(
"page",{name:L})))}function v(){let L=t.get("page");i.replaceChildren(...t.get("pages").map(([_,F])=>z(F,()=>y(_),{class:"\
ts-button","aria-current":_===L?"page":null,"data-key":`page:${_}`})))}let O=t.get("cleared"),M=t.get("page");function H(){
let L=$().find(U=>U===document.activeElement)?.dataset.key,_=r.contains(document.activeElement),F=J(r,".ts-desk-scroll").
map(U=>U.scrollTop);(t.get("page")!==M||t.get("cleared")!==O)&&(u=new Map,p=new Map,m=new Map,{page:M,cleared:O}={page:t.
get("page"),cleared:t.get("cleared")}),o.textContent=t.get("said"),n.alert.textContent=t.get("trouble"),v();let q=new Map(
t.get("pages")),ot=e("h2",{tabindex:-1},q.get(M));if(r.replaceChildren(ot,...t.get("parts").map(G)),J(r,".ts-desk-scroll").
forEach((U,dt)=>{U.scrollTop=F[dt]??0}),w(),L||_){let U=$().find(dt=>dt.dataset.key===L);(U??ot).focus({preventScroll:!!U})}
I&&!Object.keys(t.get("busy")).length&&(I=!1,h())}let Y;function V(){let L=t.get("busy");if(r.setAttribute("aria-busy",String(
P())),clearTimeout(Y),!Object.keys(L).length){c.replaceChildren(),b&&setTimeout(()=>b&&y(b),0);return}let{doing:_,done:F,
of:q}=L,ot=q?`${_}: ${F} of ${q}`:`${_} …`,U=()=>{c.replaceChildren(e("progress",q?{max:q,value:F,"aria-label":_}:{"ar\
ia-label":_}),e("span",{role:"status"},ot))};c.childElementCount?U():Y=window.setTimeout(U,Xn)}n.follow("change:turn",()=>setTimeout(
H,0)),n.follow("change:busy",V),n.follow("change:by",()=>{l.value=t.get("by")}),n.follow("msg:custom",L=>{if(L.type==="t\
rouble"&&h(),L.type!=="save")return;let _=URL.createObjectURL(new Blob([`\uFEFF${L.text}`],{type:"text/csv"}));e("a",{href:_,
download:L.name}).click(),setTimeout(()=>URL.revokeObjectURL(_),1e3)}),H(),V();let ht=!0,et=new IntersectionObserver(([L])=>{
ht=L.isIntersecting});et.observe(s);let W=0,X=setInterval(()=>{let L=t.get("every");W+=1,L&&W>=L&&ht&&!document.hidden&&
(W=0,x("look"))},1e3);return()=>{clearInterval(X),clearTimeout(Y),et.disconnect(),n.close()}}function Me(t,s=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let o=c=>String(c).padStart(2,"0"),r=`${o(
n.getHours())}:${o(n.getMinutes())}`,a=`${n.getFullYear()}-${o(n.getMonth()+1)}-${o(n.getDate())}`;return s.toDateString()===
n.toDateString()?r:`${a} ${r}`}var Jn="twoshaft-unsent:";function Qs(t,s){let n=Jn+s,o=()=>{if(!t||!s)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},r=a=>{if(!(!t||!s))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(o(),a)?o()[a]:void 0,put:(a,c,i,d=new Date)=>r({...o(),[a]:{value:c,
base:i,at:d.toISOString()}}),drop(a){let{[a]:c,...i}=o();c&&r(i)}}}function tn(t,s){return JSON.stringify(t.value)===JSON.
stringify(s.value??null)?!1:(s.revision??0)===t.base?!0:!(Date.parse(s.saved??"")>Date.parse(t.at))}var jt=null,Zn="input, button, select, textarea, summary, a, [tabindex]",en=t=>[...t.querySelectorAll(Zn)];function sn(t,s){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?jt={form:s,at:en(t).indexOf(a),from:null}:jt?.form===s&&t.
isConnected&&(jt=null))},o=({target:a})=>{jt?.form===s&&a instanceof HTMLInputElement&&(jt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",o),requestAnimationFrame(
()=>{if(jt?.form!==s||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=jt,i=en(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var Qn=["print","colour"];function Vt(t){for(let s of Qn){let n=t?.[s];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${s}`,n):document.documentElement.removeAttribute(`data-ts-${s}`))}}function nn(){Vt({print:"",colour:""})}function on(t,s,n){let o=()=>t.get("bench")??{},r=e("details",{class:"ts-bench"}),a=o().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=e("span",{}),i=e("p",{class:"ts-status",role:"status"}),d=z("Use these figures",()=>f("yes")),l=z(
"Go back to the drawn figures",()=>f("no")),u=!1,p=a.map(g=>{let C=st("bench"),b=g.options.length?e("select",{class:"ts-\
box",id:C,"aria-describedby":`${C}-read`},e("option",{value:""},"choose"),...wt(g.options)):e("input",{type:"text",class:"\
ts-box ts-number-box",id:C,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${C}-hint ${C}-read`}),
I=e("span",{class:"ts-hint",id:`${C}-hint`},g.hint),P=e("p",{class:"ts-read",id:`${C}-read`}),x=g.text,$=()=>{b.value.trim()!==
x.trim()&&(x=b.value,s({type:"bench",name:g.name,value:b.value}))};return b.addEventListener(g.options.length?"change":"\
blur",$),b.addEventListener("keydown",A=>{A.key==="Enter"&&(A.preventDefault(),$())}),{name:g.name,flush:$,input:b,element:e(
"div",{class:"ts-bench-row"},e("label",{for:C},g.prompt),e("div",{class:"ts-line-of"},b,I),P),show(A){if(!A)return;(document.
activeElement!==b||b.value===x)&&(b.value=A.text,x=A.text),b.setAttribute("aria-invalid",String(!!A.error)),P.classList.
toggle("ts-error",!!A.error);let w=A.error?[Et("▲")," "]:[],h=A.read&&!A.options.length&&`read as ${A.read}`,E=A.error||
[h,A.origin].filter(Boolean).join(", ");P.replaceChildren(...w,E)}}}),f=g=>{for(let C of p)C.flush();u=!0,s({type:"bench",
name:"in-use",value:g})};r.append(e("summary",{},c),e("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),e("div",{class:"ts-bench-rows"},...p.map(g=>g.element)),i,e("div",{class:"ts-tools"},d,l));function m(){
let g=o(),C=new Map(g.rows?.map(x=>[x.name,x]));for(let x of p)x.show(C.get(x.name));c.textContent=g.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",l.hidden=!g.wanted,d.hidden=g.used&&!g.stale;let b=g.wanted&&
!g.used?"▲ ":g.used?"● ":"○ ",I=g.used?"in use":g.wanted?`not used; the drawn figures stand. ${g.refused}`:"not us\
ed; the drawn figures stand",P=g.stale?` The tables and choices of this task are still the ones from before. ${g.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${b}${I}${P}`,g.wanted&&
!g.used&&(r.open=!0)}return{element:r,show:m,hear(g){g.type!=="bench-saved"||g.name!=="in-use"||!u||(u=!1,o().stale&&n())},
lost(){for(let g of[d,l,...p.map(C=>C.input)])g.disabled=!0}}}var to=5e3,eo=2e3,so={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Oe="kept in this browser until it can be\
 saved";function no(t,s,n,o){let r=Pt(t),a=Rt(t),c=e("p",{class:"ts-read",id:a.read}),i=e("p",{class:"ts-status",id:a.status,
role:"status"}),d=0,l=null,u={},p=()=>{clearTimeout(l??void 0),l=null},f=x=>{n.put(t.name,x,u.revision??0),m(x)},m=x=>{d+=
1,b("wait",o()?Oe:"saving"),p(),l=window.setTimeout(()=>b("wait",Oe),to),s({type:"save",name:t.name,value:x,turn:d})},g=r.
make(t,a,f,(x,$)=>{x?(n.put(t.name,$,u.revision??0),b("wait","not saved yet: press Enter or leave the box")):l===null&&(n.
drop(t.name),I(u))}),C=Ht(t,a,a.status);r.status==="above"?C.append(i,g.element,c):C.append(g.element,c,i);function b(x,$){
i.className=`ts-status ts-status-${x}`,i.dataset.text!==$&&(i.dataset.text=$,i.replaceChildren(Et(so[x]),` ${$}`))}function I(x,$=!1){
if(u=x??{},g.show(u),c.replaceChildren(u.read?`read as ${u.read}`:""),!$)if(u.error){let{error:A,saved:w="",note:h}=u;b(
"unread",`Look again: ${A} Kept as typed, ${Me(w)}${h?`; ${h}`:""}.`)}else u.saved&&!u.blank?b("saved",`saved ${Me(u.saved)}${u.
note?`; ${u.note}`:""}`):b("none",r.blank??"not answered yet")}let P=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:C,show(x){l===null&&I(x,P())},saved(x){x.turn===d&&(g.pending?.()||n.drop(t.name),p(),I(x.state))},refused(x){
x.turn===d&&(p(),g.refused(),b("bad",`not saved: ${x.reason}`))},off(){clearTimeout(l??void 0),(l!==null||g.pending?.())&&
b("wait",Oe)},catchUp(){let x=n.get(t.name);x&&(tn(x,u)?(g.show({...u,value:x.value,error:""}),m(x.value)):n.drop(t.name))},
flush:()=>g.flush?.(),summary:()=>({answered:!!u.saved&&!u.blank&&!u.error&&!u.short,unread:!!u.error,trouble:P(),waiting:l!==
null})}}function rn({model:t,el:s}){let n=t.get("fields"),o=t.get("sheet"),r=Qs(window.localStorage,o),a=!1,c=()=>a||p.isLost(),
i=n.map($=>no($,m,r,c)),d=new Map(i.map($=>[$.name,$])),l=e("p",{class:"ts-who"}),u=e("p",{class:"ts-total"});Vt(t.get("\
look"));let p=Z({model:t,el:s},{kind:"form",lost(){for(let $ of i)$.off();f.lost(),g()},line($){a=$;for(let A of i)$?A.off():
A.catchUp();g()}}),f=on(t,p.send,()=>{s.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(e("div",
{class:"ts-top"},l,u),p.alert,f.element,...i.map($=>$.element)),s.dataset.task=t.get("task_id");function m($){p.send($),
g()}function g(){let $=i.map(D=>D.summary()),A=$.filter(D=>D.answered).length,w=$.filter(D=>D.trouble).length,h=$.some(D=>D.
waiting),E=$.filter(D=>D.unread).length,S=w?`${w} not saved`:h?c()?"the rest kept in this browser":"saving":A&&!E?"all s\
aved":"",k=[`${A} of ${i.length} answered`,E?`${E} cannot be read`:"",S];u.textContent=k.filter(Boolean).join(", ");let B={
task:t.get("task_id"),answered:A,asked:i.length,unread:E};s.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:B}))}function C(){l.textContent=t.get("header");let $=t.get("states");for(let A of i)A.show($[A.name]);g()}let b=0,
I=()=>{if(document.visibilityState==="hidden")for(let $ of i)$.flush();document.visibilityState!=="visible"||Date.now()-
b<eo||(b=Date.now(),p.send({type:"look"}))},P=o?new BroadcastChannel(`twoshaft-saved:${o}`):null;P?.addEventListener("me\
ssage",({data:$})=>{$===t.get("task_id")&&p.send({type:"look"})}),document.addEventListener("visibilitychange",I),s.addEventListener(
"focusin",$=>{$.relatedTarget instanceof Node&&s.contains($.relatedTarget)||I()}),p.follow("change:states change:header",
C),p.follow("msg:custom",$=>{$.type==="saved"&&(d.get($.name)?.saved($),P?.postMessage(t.get("task_id"))),$.type==="refu\
sed"&&d.get($.name)?.refused($),g()}),p.follow("msg:custom",f.hear),p.follow("change:bench",f.show),C();for(let $ of i)$.
catchUp();g(),f.show(),p.alert.textContent=t.get("notice");let x=sn(s,`${o}/${t.get("task_id")}`);return()=>{x(),P?.close(),
p.close(),document.removeEventListener("visibilitychange",I)}}function ge(t,s,n){let o=`twoshaft-signed-in:${n}`,r=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(o,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(o),s.setItem(r,String(a))},get(){try{
let a=JSON.parse(t.getItem(o)??"null");return!a||!(a.at>Number(s.getItem(r)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var oo={right:"●",other:"◆",unread:"▲"};function ro(t){let s=Rt(t),n=e("p",{class:"ts-told",id:s.status,role:"stat\
us"}),o=null,r=Pt(t).make(t,s,i=>{o=i,r.show({value:o}),c(void 0)},(i,d)=>{i&&(o=d)}),a=Ht(t,s,s.status);a.append(r.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let d=i?[Et(oo[i.how]),e("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...d)}return{name:t.name,element:a,value(){return r.flush?.(),o},show(i,d){i!==void 0&&(o=i,r.show(
{value:o,saved:"given"})),c(d)},still(i){r.setDisabled(i),a.classList.toggle("ts-given",i)}}}function an({model:t,el:s}){
let n=Z({model:t,el:s},{kind:"form"});s.classList.add("ts-question");let o=e("p",{class:"ts-title",role:"heading","aria-\
level":"3"}),r=e("p",{class:"ts-lead"}),a=e("dl",{class:"ts-facts"}),c=e("div",{class:"ts-asked"}),i=z(t.get("give"),()=>{
let C=Object.fromEntries(u.map(b=>[b.name,b.value()]));n.send({type:"give",values:C})});i.classList.add("ts-first");let d=z(
"",()=>n.send({type:"fresh"})),l=t.get("all")?z(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,o,r,a,c,e("p",{class:"ts-acts"},i,d,l));let u=[],p=()=>{let C=t.get("values"),b=t.get("told");for(let $ of u)
$.show(C[$.name],b[$.name]),$.still(b[$.name]!==void 0&&b[$.name].how!=="unread");let I=u.some(({name:$})=>!b[$]||b[$].how===
"unread"),P=document.activeElement===i;if(i.hidden=!I,d.textContent=t.get("fresh"),d.hidden=I||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!P||I)return;let x=J(s,".ts-told")[0];x.tabIndex=-1,x.focus({preventScroll:!0})},f=()=>{(J(c,"input, sel\
ect, [tabindex]")[0]??(d.hidden?i:d)).focus({preventScroll:!0})},m=()=>{u=t.get("fields").map(ro),c.replaceChildren(...u.
map(({element:C})=>C)),o.textContent=t.get("title"),o.hidden=!o.textContent,r.textContent=t.get("lead"),r.hidden=!r.textContent,
a.replaceChildren(...At(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let C=s.contains(
document.activeElement);m(),C&&f()}),n.follow("change:told change:values change:notice change:fresh",p),m();let g=t.get(
"place");if(g){let C=ge(sessionStorage,localStorage,g).get();t.send({type:"who",id:C?.id??"",ticket:C?.ticket??""})}return()=>n.
close()}var cn="twoshaft-mine";var ao={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},io={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"},me=(t,s,n)=>e("a",{href:Gt("la\
b/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"ts-link"},s);function ln(t){return e("ul",{class:"\
ts-gaps"},...t.map(({task:s,missing:n,asked:o,unread:r})=>e("li",{},`${s}: `,n===o?"nothing answered":n?`${n} of ${o} mi\
ssing`:"",...r.map(([a,c])=>e("span",{},e("b",{},"cannot be read: "),`“${a}” ${c}`)))))}function co(t){let s=({name:o})=>Number(
o.split("-").at(-1)),n=[...t].sort((o,r)=>s(o)-s(r)).flatMap(({notebooks:o})=>o.map(r=>[r.split("/").pop()??"",r]));localStorage.
setItem(cn,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(new Event("storage"))}function dn({model:t,el:s}){
let n="",o=ge(sessionStorage,localStorage,t.get("place")),r=Z({model:t,el:s},{kind:"start",lost:()=>{}}),a=e("div",{}),c=e(
"p",{class:"ts-said",role:"status"});r.show(r.alert,c,a);let i=(y,v={})=>{a.getAttribute("aria-busy")==="true"||r.isLost()||
(v.quietly||(a.setAttribute("aria-busy","true"),c.textContent="One moment.",r.alert.textContent=""),t.send({type:y,...v}))},
d=(y,v,O,M)=>e("button",{type:"button",class:M?"ts-button ts-first":"ts-button","data-key":v,onclick:O},y);function l(){
let y=st("who"),v=st("word"),O=e("select",{id:y,class:"ts-box","data-key":"who",required:!0},e("option",{value:""},"Choo\
se your name"),...t.get("people").map(([H,Y])=>e("option",{value:H,selected:H===n},Y)));O.addEventListener("change",()=>{
n=O.value});let M=e("input",{id:v,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",
maxlength:"80","data-key":"word"});return e("form",{class:"ts-sign-in",onsubmit:H=>{H.preventDefault(),i("sign-in",{name:O.
value,word:M.value})}},e("h2",{},"Who is working?"),e("div",{class:"ts-pair"},e("label",{for:y},"Your name"),O),e("div",
{class:"ts-pair"},e("label",{for:v},"Sign-in word from your slip"),M),e("button",{type:"submit",class:"ts-button ts-firs\
t","data-key":"sign-in"},"Sign in"),e("p",{class:"ts-hint"},t.get("kept")))}function u(y,v){let O=et=>`${et}:${y.name}`,
M=e("div",{class:"ts-doing"});for(let et of y.feedback.slice(0,1))M.append(e("a",{href:Gt("files",et),target:"_blank",class:"\
ts-link","data-key":O("feedback")},"Read feedback"));for(let et of y.notebooks){let W=y.notebooks.length===1?"Open":`Ope\
n ${et.split("/").pop()}`;M.append(me(et,W,O(`open ${et}`)))}y.can_get&&M.append(d(y.notebooks.length?"Get again":"Get",
O("get"),()=>i("get",{name:y.name}),!y.notebooks.length)),y.can_hand_in&&M.append(d(y.receipt?"Hand in again":"Hand in",
O("hand in"),()=>i("hand-in",{name:y.name})));for(let et of M.children)et.setAttribute("aria-label",`${et.textContent}: ${y.
title}`);let H=t.get("asking")===y.name,Y=y.receipt||y.unread>0,V=e("tr",{},e("th",{scope:"row"},y.title),e("td",{},y.due||
"no date",y.overdue?e("span",{class:"ts-small-line"},"date passed"):null),e("td",{},e("span",{class:"ts-shape","aria-hid\
den":"true"},ao[y.state]||""),e("b",{},io[y.state]||y.state),e("span",{class:"ts-small-line"},y.detail),v?e("span",{class:"\
ts-small-line"},`Mark: ${v}`):null),e("td",{},M));if(H)return[V,e("tr",{},e("td",{colspan:4},f(y)))];if(!Y||!y.gaps.length)
return[V];let ht=e("td",{colspan:4},e("b",{},p(y)),ln(y.gaps));return[V,e("tr",{},ht)]}let p=({left:y,unread:v})=>Tt([y?
`${y} ${y===1?"answer is":"answers are"} missing`:null,v?`${v} cannot be read`:null]).join(", ");function f(y){let v=st(
"question"),O=e("div",{class:"ts-doing"});for(let H of y.notebooks)O.append(me(H,"Go on with it",`go on:${y.name}`));let M=p(
y);return O.append(d(M?"It is my own work: hand in as it is":"It is my own work: hand in",`hand in anyway:${y.name}`,()=>i(
"hand-in",{name:y.name,own:!0}),!M)),e("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":v,"data-key":"\
question"},e("p",{id:v},e("b",{},`${y.title}: not handed in yet.${M?` ${M}.`:""}`),M?" An answer that is missing or cann\
ot be read earns nothing.":null),M?ln(y.gaps):null,e("p",{},"By handing in you state: ",e("b",{},t.get("statement"))),O)}
let m=new Set,g={met:"✓",enough:"◐","not yet":"○"};function C(y,v){let O=y.entries.map(V=>v.find(ht=>ht.name===V)).
filter(V=>V!==void 0),M=y.lesson?me(y.lesson,`Lesson ${y.title}`,`lesson:${y.lesson}`):e("span",{class:"ts-small-line"},
"no lesson here"),H=e("details",{open:m.has(y.module)},e("summary",{"data-key":`outcomes:${y.module}`},`Outcomes: ${y.count||
"none"}`),e("ul",{},...y.outcomes.map(([V,ht,et,W])=>e("li",{},e("span",{class:"ts-shape","aria-hidden":"true"},g[V]||""),
e("b",{},`${V}${et&&V==="enough"?`, ${et}`:""}: `),ht,et&&V==="not yet"?`. Still missing: ${et}`:"",W?` (${W})`:""))));H.
addEventListener("toggle",()=>{H.open?m.add(y.module):m.delete(y.module)});let Y=O.flatMap(V=>u(V,y.marks[V.name]));return e(
"tbody",{},e("tr",{class:"ts-module"},e("th",{scope:"rowgroup",colspan:4},y.title,e("span",{class:"ts-assigned"},O.length?
"assigned":"not assigned"))),...Y,e("tr",{},e("td",{colspan:4},M,e("p",{class:"ts-next"},e("b",{},"Next: "),y.next),H)))}
function b(){let y=t.get("me"),v=t.get("entries"),O=e("table",{class:"ts-table"},e("thead",{},e("tr",{},...["Assignment",
"Due","State","What you can do"].map(M=>e("th",{scope:"col"},M)))),...t.get("modules").map(M=>C(M,v)));return e("section",
{},e("div",{class:"ts-me"},e("h2",{},`Working as ${y.name} (${y.id})`),y.ticket?d("Not you? Sign out","sign-out",()=>{i(
"sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),v.length?null:e("p",{},"Nothing is as\
signed yet."),O,d("Look again","look",()=>i("look")))}function I(){let y=!!t.get("me").id,v=t.get("modules").map(H=>H.lesson),
M=t.get("lessons").filter(([H])=>!y||!v.includes(H));return M.length?e("section",{},e("h2",{},y?"To look things up":"Les\
sons"),e("ul",{class:"ts-lessons"},...M.map(([H,Y])=>e("li",{},me(H,Y,`lesson:${H}`))))):null}let P=!1,x=t.get("me").id?
null:o.get(),$=x!==null;function A(){let y=t.get("me");y.id?Vt(t.get("look")):nn(),y.id?o.keep(y):(P||x&&!$)&&o.drop(),P=
!!y.id,co(y.id?t.get("entries"):[])}let w=0,h="",E=()=>J(a,"[data-key]"),S=()=>a.querySelector("input[data-key=word]");function k(){
let v=E().find(L=>L===document.activeElement)?.dataset.key;a.removeAttribute("aria-busy");let O=!!t.get("me").id;c.textContent=
t.get("said"),r.alert.textContent=t.get("trouble");let M=S()?.value,H=$?e("p",{},"One moment."):l();a.replaceChildren(...Tt(
[O?b():H,I()]));let Y=S();Y&&M&&(Y.value=M);let V=h;if(h=t.get("asking"),h&&h!==V&&E().find(L=>L.dataset.key==="question")?.
focus(),!v||h&&h!==V)return;let ht=E().find(L=>L.dataset.key===v),et=v.split(":")[1],W=v.startsWith("hand in anyway")?`h\
and in:${et}`:`:${et}`,X=E().find(L=>et&&L.dataset.key?.endsWith(W));(ht??X??J(a,"a, button, select")[0])?.focus()}let B=()=>{
clearTimeout(w),w=setTimeout(()=>{$=!1,A(),k()},0)};t.on("change",B),A(),k(),x&&t.send({type:"resume",name:x.id,ticket:x.
ticket});let D=()=>{!document.hidden&&t.get("me").id&&i("look",{quietly:!0})},G=new IntersectionObserver(([y])=>{y.isIntersecting&&
D()});return G.observe(s),document.addEventListener("visibilitychange",D),()=>{clearTimeout(w),t.off("change",B),G.disconnect(),
document.removeEventListener("visibilitychange",D),r.close()}}var lo={bench:ls,build:fs,cord:ms,depth:ws,desk:Zs,exploded:ks,face:ys,fault_board:$s,form:rn,gate:Ls,gears:Cs,hazards:As,
lifting:Es,micrometer:Ms,own_checks:Os,press:Ts,question:an,rules:Ns,runout:Is,sealant:_s,seat:Ws,shims:Fs,sketch:Ks,start:dn,
thread:qs,unit_section:Us,whole_build:Vs,wrench:Ys};export{lo as screens};
