var _s="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...Pt(n)),r}function I(t,e={},...n){let r=document.createElementNS(_s,t);return St(r,e),r.append(...n),
r}function St(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function F(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function At(t,e){return s("select",{class:"ts-box",...t},...ct(
e))}function Mt(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function Nt(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Pt(t){return t.filter(e=>e!=null&&e!==!1)}var $e=0;function Q(t){return $e+=1,`twos\
haft-${t}-${$e}-${Math.random().toString(36).slice(2,7)}`}function Et(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function lt(t,e){return[...t.querySelectorAll(e)]}function Ot(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function vt(t){return t.ctrlKey||t.metaKey||t.altKey}function Ft(t){let e=lt(t,"button, input,\
 select");for(let n of e)n.disabled=!0}function Se(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function qt(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function et(t,e,n=t){return F(t,e,{"aria-label":n})}
function ct(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function It(t){return t.map(e=>s("li",{},e))}var oe=new Map;function yt(t,e){if(oe.has(t))throw new Error(`the answer kind ${t} is registered twice`);oe.set(t,e)}function Ht(t){
let e=oe.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Wt(t){let e=Q(
t.kind);return{control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function Ut(t,e,n){let{prompt:r}=Ht(
t),o={class:"ts-prompt"};if(r==="legend")return s("fieldset",{class:"ts-field","aria-describedby":n},s("legend",o,t.prompt));
let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s("div",{class:"ts-field"},a)}function Gt(t,e,n,r){let a=t.options.map(([l,i])=>{let c={"aria-describedby":e.status},u=s("input",{type:n,name:e.control,
value:l,...c});return{key:l,input:u,row:s("label",{class:"ts-option"},u,s("span",{},i))}});for(let{input:l}of a)l.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:l})=>l)),show(l){let i=l.value==null?[]:[l.value].flat();for(let{key:c,input:u}of a)u.checked=i.includes(c)},setDisabled(l){
for(let{input:i}of a)i.disabled=l},refused(){}}}yt("choice",{prompt:"legend",make:(t,e,n)=>Gt(t,e,"radio",r=>n(r[0]))});yt("choices",{prompt:"legend",make:(t,e,n)=>Gt(t,e,"checkbox",n)});function Le(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function Ce(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}yt("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([l,i],c)=>{let u=s("span",{class:"ts-each-line",
id:`${e.control}-${c}`},i),p=At({"aria-labelledby":u.id,"aria-describedby":e.status},[["","choose"],...o]);return{key:l,
box:p,row:s("li",{},u,p)}});for(let{box:l}of a)l.addEventListener("change",()=>{n(Le(a.map(({key:i,box:c})=>[i,c.value])))});
return{element:s("ol",{class:"ts-each"},...a.map(({row:l})=>l)),show(l){let i=Ce(l.value);for(let{key:c,box:u}of a)u.value=
i.get(c)??""},setDisabled(l){for(let{box:i}of a)i.disabled=l},refused(){}}}});function re(t){let[e="",...n]=t.split(" "),r=e==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:e,size:r,
side:o,place:a[0],points:null};let l=a.map(i=>{let[c,u]=i.split(",").map(Number);return[c,u]});return{hand:e,size:r,side:o,
place:"",points:l}}function ae(t,{side:e,place:n,points:r}){return r||(e==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[e]??[])}function ie(t,e){let{hand:n,size:r,side:o,place:a}=re(e),l=[...t.stretches,...t.
holes].find(c=>c.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${l?`, ${l.name}`:""}, ${t.sides[o]??""}`}
function le(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function Me(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function Ae(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function Ee(t,[e,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
l,i])=>Math.hypot(l-e,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var Hs=.4;function Oe(t,e){let n=Hs,r=zt(t,n);for(;r.
length>e;)n*=1.5,r=zt(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function zt(t,e){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let l=1;l<t.length-1;l+=1){let i=Ks(n,r,t[l]);i>o&&([o,a]=[i,l])}return o<=
e?[n,r]:[...zt(t.slice(0,a+1),e).slice(0,-1),...zt(t.slice(a),e)]}function Ks(t,e,n){let[r,o]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var Yt=14,Fs=3,qs=.5,Ws=["middle","inside","outside"],Xt="round ";function Us(t,e){let n=t.outline.map(([_])=>_),r=t.outline.
map(([,_])=>_),[o,a]=[Math.min(...n)-Yt,Math.max(...n)+Yt],[l,i]=[Math.min(...r)-Yt,Math.max(...r)+Yt],c=a-o,u=i-l,p=([_,
q])=>`${(_-o).toFixed(1)} ${(i-q).toFixed(1)}`,f=(_,q)=>`M${_.map(p).join("L")}${q?"Z":""}`,h=Q("face"),b=c/100,g=2*b,L=(_,q)=>I(
"pattern",{id:`${h}-${_}`,width:g,height:g,patternUnits:"userSpaceOnUse"},I("path",{d:q,class:"tsp-hatch","stroke-width":b/
4})),x=I("defs",{},L("oil",`M0 ${g}L${g} 0`),L("dirt",`M0 ${g}L${g} 0M0 0L${g} ${g}`)),B=t.cavities.map(([,_])=>f(_,!0)).
join(""),P=t.islands.map(_=>f(_,!0)).join(""),v=f(t.outline,!0)+B,y=I("g"),$=I("g"),m=I("g"),d=I("g"),w=I("path",{class:"\
tsp-live",d:""}),C=I("path",{class:"tsp-chosen",d:""}),k=I("path",{class:"tsp-land",d:v,"fill-rule":"evenodd"}),M=I("pat\
h",{class:"tsp-edge",d:v+P,"stroke-width":b/2.5}),D=([_,q],W,rt="middle")=>{let X={x:_-o,y:i-q,"font-size":2.1*b,"text-a\
nchor":rt};return I("text",{class:"tsp-text",...X},W)},H=[(o+a)/2,(l+i)/2],N=(_,q)=>{let W=qt(_,H)||1;return[_[0]+q*(H[0]-
_[0])/W,_[1]+q*(H[1]-_[1])/W]};for(let{x:_,y:q,d:W,leads:rt,name:X}of t.holes){let st={cx:_-o,cy:i-q,"stroke-width":b/4},
wt=rt==="blind"?"tsp-hole tsp-blind":"tsp-hole";m.append(I("circle",{...st,r:W/2,class:wt})),rt==="to the outside"&&m.append(
I("circle",{...st,r:W/3,class:"tsp-hole"}));let[kt,Ct]=N([_,q],-(W/2+4.4*b));m.append(D([kt,Ct-.8*b],X.replace("bolt ","")))}
for(let _ of t.guides){let[q,W]=[_.x-o,i-_.y],rt=`M${q-b} ${W}h${g}M${q} ${W-b}v${g}`;m.append(I("path",{class:"tsp-guid\
e",d:rt,"stroke-width":b/2}));let X={"stroke-width":b/5,"stroke-dasharray":`${b} ${b}`};m.append(I("circle",{cx:q,cy:W,r:_.
reach,class:"tsp-reach",...X}));let st=N([_.x,_.y],_.reach+g),wt=(st[0]-_.x)/(_.reach+g);m.append(D(st,_.name,wt>.5?"sta\
rt":wt<-.5?"end":"middle"))}for(let{word:_,points:q,width:W}of t.spots){let[rt]=_.split(" "),[X,st]=[q[0],q[q.length-1]],
wt=qt(X,st)||1,[kt,Ct]=[-(st[1]-X[1])/wt*W/2,(st[0]-X[0])/wt*W/2],T=[[X[0]+kt,X[1]+Ct],[st[0]+kt,st[1]+Ct],[st[0]-kt,st[1]-
Ct],[X[0]-kt,X[1]-Ct]],K=`url(#${h}-${rt})`;y.append(I("path",{d:f(T,!0),fill:K,class:"tsp-spot","stroke-width":b/4}));let nt=D(
N([(X[0]+st[0])/2,(X[1]+st[1])/2],9*b),rt);nt.classList.add("tsp-spot-word"),m.append(nt)}let S=[100,50,20,10].find(_=>_<
c/4)??10,O=`M${b} ${u-b}v${-b}v${b/2}h${S}v${-b/2}v${b}`,A={x:S+g,y:u-b,"font-size":2.1*b};d.append(I("path",{class:"tsp\
-edge",d:O,"stroke-width":b/4}),I("text",{class:"tsp-text",...A},`${S} mm`));let R=`0 0 ${c.toFixed(1)} ${u.toFixed(1)}`,
U=I("svg",{viewBox:R,class:"tsp-face",role:"img","aria-label":e},x,k,y,$,M,m,C,w,d),G=`max-width: ${(25*c/u).toFixed(1)}\
rem`;return{frame:s("div",{class:"ts-pad-face",style:G},U),svg:U,over:d,live:w,chosen:C,land:k,path:f,unit:b,box:{left:o,
right:a,low:l,high:i,width:c,height:u},place({clientX:_,clientY:q}){let W=U.getBoundingClientRect(),rt=Math.min(W.width/
c,W.height/u);return[o+(_-W.left-(W.width-rt*c)/2)/rt,i-(q-W.top-(W.height-rt*u)/2)/rt]},strokes(_){$.replaceChildren(..._.
map(tt))}};function tt(_){let q=re(_),W=ae(t,q),rt=le(t,q.hand,Math.max(q.size,b/2)),X=W.length>1?f(W,q.side==="round"):
W.length?`${f(W)}h0.01`:"",st=I("path",{d:X,class:`tsp-stroke tsp-${q.hand}`,"stroke-width":rt});if(q.hand!=="film")return st;
let wt=Math.min(8,Math.max(.6,40*q.size)),kt={"stroke-width":b/3,"stroke-dasharray":`${wt} ${wt}`};return I("g",{},st,I(
"path",{d:X,class:"tsp-grain",...kt}))}}function Jt({face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=Us(t,e),l=s("p",
{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"ts-read ts-pad-trouble",role:"status"}),c=(O,A)=>s("span",{class:"\
ts-pair"},s("label",{for:A.id},O),A),u=At({id:Q("hand")},Object.entries(t.hands)),p=s("input",{class:"ts-box ts-size",id:Q(
"size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),f=s("label",{for:p.id},"thickness"),h=At({id:Q(
"place")},t.stretches.map(({id:O,name:A})=>[O,A]));h.append(s("optgroup",{label:"Round a hole"},...t.holes.map(({id:O,name:A})=>s(
"option",{value:`${Xt}${O}`},`round ${A}`))));let b=At({id:Q("side")},Ws.map(O=>[O,t.sides[O]])),g=F("Lay it here",()=>d(
[m(h.value)])),L=F("Lay it on every stretch",()=>d(t.stretches.map(({id:O})=>m(O)))),x=F("Take back the last pass",()=>{
v&&r(v-1,!0)}),B=F("Clear the face",o),P={film:"",bead:""},v=0,y=!1;function $(){if(u.value==="wipe")return"";let[O,A]=t.
sizes[u.value],R=Me(p.value);if(R>=O&&R<=A)return p.removeAttribute("aria-invalid"),` ${Number(R.toFixed(3))}`;let U=u.value===
"film"?"the thickness of the film":"the diameter of the bead";return i.textContent=p.value.trim()?`Read “${p.value}”: \
give ${U} from ${O} to ${A} mm.`:`First give ${U} in mm.`,p.setAttribute("aria-invalid","true"),p.focus(),null}function m(O){
let A=$();if(A===null)return null;let R=O.startsWith(Xt)?O:`${b.value} ${O}`;return`${u.value}${A} ${R}`}function d(O){let A=O.
filter(R=>R!==null);if(!(y||A.length<O.length)){if(v+A.length>t.most){i.textContent=`There is room for ${t.most} passes;\
 take some back first.`;return}i.textContent="",l.textContent=A.length===1?`Laid: ${ie(t,A[0])}`:`Laid on ${A.length} st\
retches`,n(A)}}function w(){let O=u.value==="wipe";f.textContent=u.value==="bead"?"diameter":"thickness",p.disabled=y||O,
p.value=O?"":P[u.value],p.placeholder=O?"":"mm",g.textContent=O?"Wipe here":"Lay it here",L.textContent=O?"Wipe every st\
retch":"Lay it on every stretch",i.textContent="",C()}function C(){let O=h.value.startsWith(Xt);b.disabled=y||O;let A=ae(
t,O?{side:"round",place:h.value.slice(Xt.length)}:{side:b.value,place:h.value});a.chosen.setAttribute("d",A.length?a.path(
A,O):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}u.addEventListener("change",w),p.addEventListener("input",
()=>{P[u.value]=p.value}),h.addEventListener("change",C),b.addEventListener("change",C),p.addEventListener("keydown",O=>{
O.key==="Enter"&&(O.preventDefault(),g.click())});let k=null;a.svg.addEventListener("pointerdown",O=>{if(y||O.button>0)return;
k=[a.place(O)],a.svg.setPointerCapture(O.pointerId);let A=Math.max(1,Number(P.bead.replace(",","."))||1);a.live.setAttribute(
"stroke-width",String(le(t,u.value,A)))}),a.svg.addEventListener("pointermove",O=>{if(!k)return;let A=a.place(O);qt(A,k[k.
length-1])<qs||(k.push(A),a.live.setAttribute("d",a.path(k)))});let M=O=>{if(!k)return;let A=k;if(k=null,a.live.setAttribute(
"d",""),O.type==="pointercancel")return;if(Ae(A)<Fs){h.value=Ee(t,A[0]),C();return}let R=$();if(R===null)return;let U=Oe(
A,t.points).map(G=>G.join(","));d([`${u.value}${R} at ${U.join(" ")}`])};a.svg.addEventListener("pointerup",M),a.svg.addEventListener(
"pointercancel",M);let D=s("ol",{class:"ts-passes","aria-label":"Passes, in the order they were done"}),H=s("p",{class:"\
ts-hint"},"Nothing is laid yet."),N=s("div",{class:"ts-pad-tools"},s("div",{class:"ts-tools"},c("tool",u),s("span",{class:"\
ts-pair"},f,p)),s("div",{class:"ts-tools"},c("where",h),c("runs",b)),s("div",{class:"ts-tools"},g,L,x,B),i,l),S=()=>lt(D,
"button");return w(),{drawing:a,tools:N,list:D,empty:H,frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,N,s("div",
{class:"ts-pad-list"},H,D)),show(O,A=[]){v=O.length,a.strokes(O),H.hidden=v>0;let R=S().findIndex(U=>U.matches(":focus"));
D.replaceChildren(...O.map((U,G)=>s("li",{},s("span",{},`${ie(t,U)}${A[G]?`, ${A[G]}`:""} `),F("take out",()=>r(G,!1),{class:"\
ts-button ts-remove",disabled:y,"aria-label":`Take out pass ${G+1}`})))),R>=0&&(S()[Math.min(R,v-1)]??g).focus()},setDisabled(O){
y=O;for(let A of[u,h,g,L,x,B,...S()])A.disabled=O;p.disabled=O||u.value==="wipe",C()}}}yt("film",{prompt:"words",make(t,e,n){let r=[],o=l=>{r=l,a.show(r),n(r)},a=Jt({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:l=>o([...r,...l]),onRemove:l=>o(r.filter((i,c)=>c!==l)),onClear:()=>o([])});
return{element:a.element,show(l){r=[l.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function Te(t,e){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${e}`.trim()}function Ne(t,{send:e,typing:n,said:r=o=>String(o??"")}){let o=s("input",{type:"text",class:"ts-box ts-number-box",id:t.
control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.hint} ${t.read} ${t.
status}`}),a="",l=()=>a===null||o.value.trim()!==a.trim(),i=()=>{l()&&(a=o.value,e(o.value))};return o.addEventListener(
"blur",i),o.addEventListener("keydown",c=>{let u=(c.ctrlKey||c.metaKey)&&c.key.toLowerCase()==="s";c.key!=="Enter"&&!u||
(c.preventDefault(),i())}),o.addEventListener("input",()=>n(l(),o.value)),{box:o,flush:i,pending:l,refused(){a=null},show(c){
o.setAttribute("aria-invalid",String(!!c.error)),!(document.activeElement===o&&o.value!==a)&&(a=r(c.value),o.value=a)}}}yt("number",{prompt:"label",make(t,e,n,r){let o=t.units,{box:a,flush:l,pending:i,refused:c,show:u}=Ne(e,{send:n,typing:r}),
p=s("span",{class:"ts-hint",id:e.hint},t.hint),f=At({"aria-label":"Choose the unit"},[["","unit"],...o.map(h=>[h,h])]);return f.
addEventListener("change",()=>{f.value&&(a.value=Te(a.value,f.value),/\d/.test(a.value)?l():a.focus())}),a.addEventListener(
"input",()=>{f.value=""}),{element:s("div",{class:"ts-line-of"},a,o.length?f:null,p),show:u,setDisabled(h){a.disabled=f.
disabled=h},refused:c,flush:l,pending:i}}});function De(t,e){let r=[...new Set([t??[]].flat())].filter(o=>e.includes(String(o))).map(String);return[...r,...e.filter(
o=>!r.includes(o))]}var jt=(t,e)=>t.join(`
`)===e.join(`
`),Ie=t=>`#${t.keys[0]}`,Vt=class{constructor(e,n){this.labels=new Map(e.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
r,,o]of e)o&&this.stages.set(r,o);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let n of this.order){let r=this.stages.get(n)??null,o=e.at(-1);o&&r!==null&&o.stage===r?o.keys.push(n):e.push({stage:r,
keys:[n]})}return e}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let e=[];for(let n of this.runs()){
let[r]=n.keys;if(n.keys.length<2){e.push({id:r,key:r,level:1});continue}if(e.push({id:Ie(n),run:n,level:1}),!this.closed.
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
!a||a.keys.length<2?null:(n?this.closed.add(r):this.closed.delete(r),n&&(this.current=Ie(a)),r)}sought(e){let n=this.rows(),
r=n.findIndex(l=>l.id===this.current),o=e.length>1?r:r+1,a=l=>(l.run?String(l.run.stage):this.label(l.key)).toLowerCase();
return[...n.slice(o),...n.slice(0,o)].find(l=>a(l).startsWith(e))}};var Gs=12,zs=700,Ys=5,Be=32,Xs=8;function Zt({label:t,steps:e,order:n,onChange:r}){let o=new Vt(e,n),{staged:a}=o,l=!1,i={},
c=!1,u=new Map,p=s("div",{"aria-live":"assertive",class:"ts-hidden"}),f=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),h=F("Up",()=>U(-1),{"aria-label":"Move the chosen step up"}),b=F("Down",
()=>U(1),{"aria-label":"Move the chosen step down"}),g=F("Undo",()=>o.undo()&&tt("Undone")),L=F("Redo",()=>o.redo()&&tt(
"Done again")),x=F("Choose several",()=>X(!l),{"aria-pressed":"false"}),B=F("Gather stages",()=>R(o.gathered(),"Steps of\
 one stage now stand together")),P=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:E=>{E.key==="Enter"&&G()}}),v=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),y=s("span",{class:"ts-chosen"}),$=F("Move",G,{"aria-label":"Move to this position"}),m=F(
"Move",mt,{"aria-label":"Move before this step"}),d=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},h,b,g,L,x,a?B:null),w=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",P,$),s("span",{class:"\
ts-pair"},"or before ",v,m)),C="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),k=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},C),w),M=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),d,y,f,k,p);function D(E){p.
textContent=E}function H(E=""){D(`${o.unitName()}${E}, ${o.where()}`)}function N(E){let j=u.get(E.id);if(j)return j;let Y=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Y.dataset.row=E.id,u.set(E.id,Y),Y}function S(E=!1){let j=o.settle(),
Y=new Set(j.map(J=>J.id));for(let[J,gt]of u)Y.has(J)||(gt.remove(),u.delete(J));let at=o.unit(),bt=new Set(at),ot=f.firstElementChild;
for(let J of j){let gt=N(J);gt===ot?ot=ot.nextElementSibling:f.insertBefore(gt,ot),O(gt,J,bt)}P.value=String(o.order.indexOf(
at[0])+1);let ht=[...o.order.entries()].filter(([,J])=>!bt.has(J));v.replaceChildren(...ht.map(([J,gt])=>s("option",{value:gt},
`${J+1}  ${o.label(gt)}`))),y.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,h.disabled=c||o.isFirst,b.disabled=c||
o.isLast,g.disabled=c||o.past.length===0,L.disabled=c||o.future.length===0;for(let J of[x,B,P,v,$,m])J.disabled=c;if(f.setAttribute(
"aria-disabled",String(c)),f.classList.toggle("ts-long",o.order.length>Gs),E){let J=u.get(o.current);J?.focus({preventScroll:!0}),
J?.scrollIntoView({block:"nearest"})}}function O(E,j,Y){let at=j.id===o.current,bt=j.run?!1:o.block.has(j.key),ot=o.held!==
null&&(j.run?at:Y.has(j.key)),ht=o.order.indexOf(j.run?j.run.keys[0]:j.key),J=j.run?j.run.keys.map($t=>i[$t]?.length??0):
i[j.key],gt=j.run?o.closed.has(String(j.run.stage)):!1,we=JSON.stringify([ht,j.level,at,bt,ot,J,j.run&&[j.run.keys.length,
gt]]);if(E.dataset.looks===we)return;E.dataset.looks=we,E.tabIndex=at?0:-1,E.setAttribute("aria-selected",String(bt)),E.
classList.toggle("ts-current",at),E.classList.toggle("ts-inblock",bt),E.classList.toggle("ts-held",ot),E.classList.toggle(
"ts-level2",j.level===2),a&&E.setAttribute("aria-level",String(j.level));let be=ot?" picked up":bt?" in block":"",ve=be?
s("span",{class:"ts-state"},be):"",ke=$t=>s("span",{class:"ts-number","aria-hidden":"true"},$t);if(j.run){let{keys:$t,stage:js}=j.
run;E.setAttribute("aria-expanded",String(!gt));let xe=gt?$t.filter(Rs=>i[Rs]?.length).length:0;E.replaceChildren(ke(`${ht+
1}–${ht+$t.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},gt?"▸":"▾"),s("span",{class:"ts-what"},s("b",
{},js),` ${$t.length} steps`,xe?` – ${xe} with a remark`:"",ve));return}let ye=(i[j.key]??[]).map($t=>s("span",{class:`\
ts-note ts-note-${$t.kind}`},Nt($t.shape??""),s("b",{},$t.word),` ${$t.text}`)),Ps=a&&j.level===1;E.classList.toggle("ts\
-troubled",ye.length>0),E.replaceChildren(ke(String(ht+1)),s("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),s("spa\
n",{class:"ts-what"},o.label(j.key),Ps?s("span",{class:"ts-stage"},` ${o.stages.get(j.key)??""}`):"",ve,...ye))}let A=()=>r(
[...o.order]);function R(E,j){if(!o.take(E)){D(`${o.unitName()} stays at ${o.where()}`);return}S(!0),j?D(j):H(),o.held===
null&&A()}function U(E){c||R(o.shifted(E))}function G(){if(c)return;let E=Number.parseInt(P.value,10),j=o.order.length;E>=
1&&E<=j?R(o.atPosition(E)):(D(`Type a position from 1 to ${j}`),y.textContent=`Type a position from 1 to ${j}.`)}function mt(){
!c&&v.value&&R(o.beside(v.value,"before"))}function tt(E){S(),D(`${E}. ${o.unitName()}, ${o.where()}`),A()}function _(){
o.pickUp(),S(!0),H(" picked up")}function q(){o.putDown()&&A(),S(!0),H(" put down")}function W(){o.putDown()&&A(),S()}function rt(){
o.putBack(),S(!0),H(" put back")}function X(E){l=E,x.setAttribute("aria-pressed",String(E)),E||(o.block=new Set),S(),D(E?
"Choose the steps of a block":"Block let go")}function st(E){o.toggleBlock(E);let j=o.block.has(E)?"in the block":"out o\
f the block";D(`${o.label(E)} ${j}, ${o.block.size} in it`)}function wt(E,j){let Y=o.fold(E,j);Y&&(S(!0),D(`${Y} ${j?"cl\
osed":"open"}`))}f.addEventListener("keydown",E=>{if(vt(E))return;let j=o.rows(),Y=j.findIndex(gt=>gt.id===o.current),at=gt=>{
o.current=j[Math.max(0,Math.min(j.length-1,gt))].id,S(!0)},bt=j[Y],{key:ot}=E,ht=ot==="ArrowUp"?-1:ot==="ArrowDown"?1:null,
J=o.held!==null;if(ht&&(E.shiftKey||J))U(ht);else if(ht)at(Y+ht);else if(J&&ot==="Escape")rt();else if(ot===" ")c||(J?q:
_)();else if(J&&ot==="Enter")q();else if(ot==="Enter"&&!bt.run)c||(st(bt.key),S(!0));else if(ot==="Home"&&!J)at(0);else if(ot===
"End"&&!J)at(j.length-1);else if(a&&ot==="ArrowLeft")wt(bt,!0);else if(a&&ot==="ArrowRight")wt(bt,!1);else if(ot.length===
1&&!J)T(ot);else return;E.preventDefault()});let kt="",Ct;function T(E){kt+=E.toLowerCase(),clearTimeout(Ct),Ct=window.setTimeout(
()=>{kt=""},zs);let j=o.sought(kt);j&&(o.current=j.id,S(!0))}f.addEventListener("focusout",({relatedTarget:E})=>{o.held!==
null&&E instanceof Node&&!f.contains(E)&&W()});let K=null;f.addEventListener("pointerdown",E=>{let j=o.row(Ot(E,".ts-ste\
p")?.dataset.row??"");if(!j||E.button!==0)return;if(j.run&&Ot(E,".ts-fold")){wt(j,!o.closed.has(String(j.run.stage))),E.
preventDefault();return}let Y=Ot(E,".ts-grip, .ts-number"),at=E.ctrlKey||E.metaKey;o.held!==null&&W(),!j.run&&!c&&(E.shiftKey?
o.blockTo(j.key):(at||l)&&!Y&&st(j.key)),o.current=j.id,S(!0),E.preventDefault(),!(c||E.shiftKey||at)&&(E.pointerType!==
"mouse"&&!Y||(K={x:E.clientX,y:E.clientY,id:E.pointerId,carried:null},f.setPointerCapture(E.pointerId)))}),f.addEventListener(
"pointermove",E=>{if(!K||E.pointerId!==K.id)return;let{clientX:j,clientY:Y}=E;if(!K.carried){if(Math.hypot(j-K.x,Y-K.y)<
Ys)return;K.carried=nt()}Object.assign(K.carried,{x:j,y:Y}),it(K.carried)});function nt(){let E=s("div",{class:"twoshaft\
 ts-ghost","aria-hidden":"true"},o.unit().length>1?o.unitName():o.label(o.unit()[0]));document.body.append(E);let j=s("d\
iv",{class:"ts-line","aria-hidden":"true"});f.append(j),f.classList.add("ts-dragging");for(let Y of o.unit())u.get(Y)?.classList.
add("ts-lifted");return{ghost:E,line:j,timer:requestAnimationFrame(pt),x:0,y:0,drop:null}}function it(E){E.ghost.style.transform=
`translate(${E.x+12}px, ${E.y+8}px)`;let Y=o.rows().map(ht=>{let J=N(ht).getBoundingClientRect();return{row:ht,box:J,offset:E.
y-(J.top+J.height/2)}}).reduce((ht,J)=>Math.abs(J.offset)<Math.abs(ht.offset)?J:ht),at=Y.offset>0;E.drop=o.dropAt(Y.row,
at);let ot=(at?Y.box.bottom:Y.box.top)-f.getBoundingClientRect().top+f.scrollTop-1;E.line.style.top=`${ot}px`}function pt(){
let E=K?.carried;if(E){for(let j of[f,Se(f)]){let at=j===document.scrollingElement?{top:0,bottom:innerHeight}:j.getBoundingClientRect(),
bt=E.y<at.top+Be?-1:E.y>at.bottom-Be?1:0;if(!bt)continue;let ot=j.scrollTop;if(j.scrollTop+=bt*Xs,j.scrollTop!==ot){it(E);
break}}E.timer=requestAnimationFrame(pt)}}function ft(E){let j=K?.carried;if(K=null,!j)return;cancelAnimationFrame(j.timer),
j.ghost.remove(),j.line.remove(),f.classList.remove("ts-dragging");for(let at of u.values())at.classList.remove("ts-lift\
ed");let{drop:Y}=j;if(!E||!Y||o.unit().includes(Y.target)){S(!0),D(`${o.unitName()} stays at ${o.where()}`);return}R(o.beside(
Y.target,Y.side))}return f.addEventListener("pointerup",()=>ft(!0)),f.addEventListener("pointercancel",()=>ft(!1)),M.addEventListener(
"keydown",E=>{!K?.carried||E.key!=="Escape"||(ft(!1),E.stopPropagation())}),S(),{element:M,tools:d,order:()=>[...o.order],
change:(E,j)=>{c||R(E,j)},setOrder(E,j=!1){o.held!==null||K?.carried||jt(E,o.order)||(o.set(E,j),S())},setNotes(E){i=E??
{},S()},setDisabled(E){c=E,S()}}}yt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=Zt({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
De(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function Pe(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[l,i]of t.entries()){let[c,u]=e[i]??[null,null];c!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[c??r[0],u??(c===null?r[1]:0)];let p=n(...r);o.push(p);let f=a.get(p.join(" "))??{at:p,numbers:[]};
f.numbers.push(l+1),a.set(p.join(" "),f)}return{points:o,stops:[...a.values()]}}function je(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function Re(t,e){return t.filter((n,r)=>r!==e)}function _e(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var de=9,He=.7*de,ce=44;function Js(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*de+2*ce,
l=(o-r)*He+2*ce,i=(g,L)=>[ce+(g-e)*de,l/2-(L-(r+o)/2)*He],c=t.gates.map(g=>`M${i(g,r).join(" ")}L${i(g,o).join(" ")}`),u=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,p=t.gears.map(([g,L,x])=>{let[B,P]=i(L,x),v={x:B,y:P+(x>0?-20:30)};return I("t\
ext",{...v,class:"tsp-gear","text-anchor":"middle"},g)}),f=I("polyline",{class:"tsp-line",points:""}),h=I("g");return{element:I(
"svg",{viewBox:`0 0 ${a} ${l}`,width:a,height:l,class:"ts-gateplan","aria-hidden":"true"},I("path",{d:[...c,u].join(""),
class:"tsp-slot"}),...p,f,h),show(g){let{points:L,stops:x}=Pe(g,t.aims,i),[[B,P]]=L;f.setAttribute("points",L.map(v=>v.join(
",")).join(" ")),h.replaceChildren(I("circle",{cx:B,cy:P,r:4,class:"tsp-start"}),...x.map(({at:[v,y],numbers:$})=>I("g",
{},I("circle",{cx:v,cy:y,r:3.5,class:"tsp-stop"}),I("text",{x:v+7,y:y-5,class:"tsp-number"},$.join(", ")))))}}}function Ke({
label:t,moves:e,plan:n,most:r,onChange:o}){let a=new Map(e),l=M=>a.get(M)??M,i=[],c=-1,u=!1,p=n?Js(n):null,f=s("ol",{class:"\
ts-pathlist","aria-label":t}),h=s("p",{class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),
b=s("p",{class:"ts-hidden",role:"status"}),g=e.map(([M,D])=>F(D,()=>y(M))),L=F("Take back the last move",()=>{i.length&&
$(i.length-1)}),x=F("Take back all",()=>{i.length&&v([],"No moves left")}),B=s("span",{class:"ts-hint"}),P=s("div",{class:"\
ts-path"},s("div",{class:"ts-tools ts-moves",role:"group","aria-label":"Add a move"},...g),s("div",{class:"ts-path-both"},
s("div",{class:"ts-path-words"},h,f,s("div",{class:"ts-tools"},L,x,B)),p&&s("div",{class:"ts-path-picture"},p.element)),
p&&s("p",{class:"ts-hint"},"The line shows where each move aims. Whether the lever gets there is what the test finds out\
."),b);function v(M,D){u||(i=M,k(),b.textContent=D,o([...i]))}function y(M){if(i.length>=r){b.textContent=`${r} moves ar\
e the most here`;return}let{moves:D,place:H}=je(i,c,M);c=H,v(D,`Move ${H+1}: ${l(M)}`)}function $(M){let D=l(i[M]);c=Math.
min(c,i.length-2),v(Re(i,M),`Taken back: ${D}`)}function m(M,D){let H=_e(i,M,D);H&&(c=M+D,v(H,`${l(H[c])}, move ${c+1} o\
f ${i.length}`),w(c))}function d(M){return f.children[M]?.querySelector(".ts-path-move")}function w(M){let D=d(M);return D instanceof
HTMLElement&&D.focus(),!!D}function C(M,D){let H=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${D+1}: ${l(
M)}`},l(M)),N=s("button",{type:"button",class:"ts-path-off","aria-label":`Take back move ${D+1}`,onclick:()=>$(D)},"×"),
S=s("li",{},H,N);return S.classList.toggle("ts-current",D===c),H.addEventListener("focus",()=>{c=D;for(let O of f.children)
O.classList.toggle("ts-current",O===S)}),H.addEventListener("keydown",O=>{if(vt(O))return;let A=O.key==="ArrowUp"?-1:O.key===
"ArrowDown"?1:null;if(A&&O.shiftKey)m(D,A);else if(A)w(D+A);else if(O.key==="Delete"||O.key==="Backspace")$(D),w(Math.min(
D,i.length-1))||g[0].focus();else return;O.preventDefault()}),N.disabled=u,S}function k(){f.replaceChildren(...i.map(C)),
h.hidden=i.length>0,B.textContent=`${i.length} of at most ${r} moves`;for(let M of g)M.disabled=u||i.length>=r;L.disabled=
x.disabled=u||i.length===0,p?.show(i)}return k(),{element:P,setMoves(M){jt(M,i)||(i=[...M],c=-1,k())},setDisabled(M){u=M,
k()}}}yt("path",{prompt:"words",make(t,e,n){let r=Ke({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});var Vs="No line to the course just now. Go on with the questions: what you enter is kept in this browser and sent when t\
he line is back. Simulators stand still until then.",Zs="The line to the course is back.",Qs=1500,tn=5e3,pe=new Set,Dt=null,
ue;function Fe(t){Dt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),Dt.isConnected||document.body.append(Dt),Dt.textContent=
t}function en(){Dt?.remove(),Dt=null}function qe(){clearTimeout(ue),pe.size?ue=window.setTimeout(()=>Fe(Vs),Dt?0:Qs):Dt&&
(Fe(Zs),ue=window.setTimeout(en,tn))}var We=t=>({down(){pe.add(t),qe()},up(){pe.delete(t),qe()}});var sn=1e3,nn="input, button, select, textarea, summary, a, [tabindex]";function on(t){let e=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:l,
keyCode:i,ctrlKey:c,metaKey:u}=o,p={key:a,code:l,keyCode:i,ctrlKey:c,metaKey:u,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",p))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let o of t.querySelectorAll(nn))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function rn(t,e,n){let r=t.widget_manager?.kernel,o=(l,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(l,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),r?.statusChanged?.
connect(o),r?.connectionStatusChanged?.connect(a),r?.disposed?.connect(e),()=>{t.off("comm_live_update",e),r?.statusChanged?.
disconnect(o),r?.connectionStatusChanged?.disconnect(a),r?.disposed?.disconnect(e)}}var Ue=`.twoshaft {
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
accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-clock{min-width:6em;font-weight:600}.twoshaft .ts-prompt[hid\
den],.twoshaft .ts-sentences[hidden]{display:none}.twoshaft .ts-told{min-height:2em;max-height:9em;overflow-y:auto}.twos\
haft .ts-build{display:grid;grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));align-ite\
ms:start}.twoshaft .ts-buildlist{display:grid;gap:4px;max-height:22rem;overflow-y:auto;padding:4px}.twoshaft .ts-buildst\
ep{text-align:left;padding-block:2px;min-height:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var\
(--ts-line)}.twoshaft .ts-buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .t\
s-buildstep[aria-current]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100\
%}.twoshaft .ts-hand{border:1px solid var(--ts-line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twoshaft .\
ts-hand .ts-field{border:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do{\
text-align:left;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid)\
;font-size:var(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.two\
shaft .ts-record caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align:\
top;padding:3px 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-recor\
d .ts-blank{min-width:12em;height:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,1fr)}.t\
woshaft .ts-buildlist,.twoshaft .ts-hand{max-height:none}}`,Ge="twoshaft-styles";function an(){let t=document.getElementById(
Ge);t?.textContent!==Ue&&(t?.remove(),document.head.append(s("style",{id:Ge},Ue)))}function z({model:t,el:e},{kind:n,lost:r=()=>Ft(
e),line:o=()=>{}}){an(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"ts-alert",role:"\
alert"}),l=We(e),i=()=>e.classList.contains("ts-lost"),c=[],p=rn(t,()=>{i()||(e.classList.add("ts-lost"),l.down(),r())},
g=>{i()||(g?l.down():l.up(),o(g))}),f=on(e),h,b=(g,L)=>{t.on(g,L),c.push([g,L])};return b("msg:custom",g=>{g.type==="tro\
uble"&&!i()&&(a.textContent=g.reason)}),{alert:a,follow:b,isLost:i,send(g){i()||(t.send(g),clearTimeout(h),h=window.setTimeout(
()=>t.send({type:"rest"}),sn))},show:(...g)=>e.replaceChildren(...Pt(g)),close(){l.up(),clearTimeout(h),f(),p();for(let[
g,L]of c)t.off(g,L)}}}function ze({model:t,el:e}){let n=z({model:t,el:e},{kind:"rig",lost:()=>c.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),o=s("p",{class:"ts-cost"}),a=t.get("start"),l=null,i=f=>{l=Q("order"),n.send({type:"order",order:f,turn:l})},
c=Zt({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),u=s("button",{type:"\
button",class:"ts-button",onclick:()=>c.change([...a],"The first order stands again")},"Start again");c.tools.append(u),
n.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),n.alert,r,o,c.element);function p(){let f=t.
get("judged");l!==null&&f.turn!==l||(l=null,r.textContent=f.finding,o.textContent=f.cost,c.setOrder(f.order),c.setNotes(
f.notes))}return n.follow("change:judged",p),p(),n.close}function Ye(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function Xe({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=s("div",{class:"ts-s\
croll ts-fit",tabindex:"0",role:"region","aria-label":"The unit by stages"}),l=s("dl",{class:"ts-facts"}),i=s("div",{class:"\
ts-ready"}),c=s("select",{class:"ts-box ts-before","aria-label":"A step that is not ready"}),u=s("input",{type:"text",inputmode:"\
numeric",size:"3",class:"ts-box","aria-label":"Go to place",onkeydown:d=>{d.key==="Enter"&&P()}}),p=s("span"),f=d=>y.send(
{type:"move",by:d}),h=d=>y.send({type:"go",position:d}),b=et("Back",()=>f(-1),"One step back"),g=et("Next",()=>f(1),"Nex\
t step"),L=et("Start",()=>h(0),"Start with an empty bench"),x=et("End",()=>h(t.get("view").count),"End of the order"),B=et(
"Try it",()=>y.send({type:"take",step:c.value}),"Try it: the step chosen here"),P=()=>{let d=Number.parseInt(u.value,10);
d>=0&&h(d)},v=s("div",{class:"ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step to\
o"},L,b,g,x,s("span",{class:"ts-pair"},"place ",u,p,et("Go",P,"Go to this place")));v.addEventListener("keydown",d=>{if(!(d.
target===u||vt(d))){if(d.key==="ArrowLeft")f(-1);else if(d.key==="ArrowRight")f(1);else if(d.key==="Home")h(0);else if(d.
key==="End")h(t.get("view").count);else return;d.preventDefault()}});let y=z({model:t,el:e},{kind:"rig"});y.show(s("p",{
class:"ts-who"},"Practice. Nothing here is marked or saved."),y.alert,n,v,r,o,a,l,s("p",{class:"ts-prompt"},"Do another \
step next"),i,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",c,B)));let $="";function m(){
let d=t.get("view");n.textContent=d.finding,r.textContent=d.happened,o.textContent=d.next?`Next in this order: ${d.next}`:
"This is the end of the order.",$!==d.figure&&(a.innerHTML=$=d.figure),l.replaceChildren(...Mt(d.facts));let w=i.contains(
document.activeElement);i.replaceChildren(...d.ready.map(([M,D])=>et(D,()=>y.send({type:"take",step:M})))),d.ready.length||
i.append(s("p",{class:"ts-hint"},"No step is ready.")),w&&(i.querySelector("button")??g).focus(),c.replaceChildren(...ct(
d.waiting)),c.disabled=B.disabled=!d.waiting.length,u.value=String(d.position),p.textContent=` of ${d.count} `;let C=d.position===
0,k=d.position===d.count;for(let M of[b,L])Ye(M,C);for(let M of[g,x])Ye(M,k)}return y.follow("change:view",m),m(),y.close}function Rt(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=Q("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var V=(t,e,n,r,o)=>I("line",{x1:t,y1:e,x2:n,y2:r,class:o}),Z=(t,e,n,r="middle")=>I("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function _t(){let t=I("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(I("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(V(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(Z(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(I("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(V(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*Math.
cos(o),"tsg-mark"))}let e=V(100,134,100,119,"tsg-small"),n=I("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"tsg-po\
inter"});return t.append(e,n,I("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("transform",
`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`Dial indi\
cator, one mark is 0.01 mm. ${o}`)}}}function Je({top:t,mark:e,perFigure:n}){let r=I("svg",{viewBox:"0 0 600 92",class:"\
tsg-scale",role:"img"}),o=l=>30+l/t*540;r.append(I("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));for(let l=0;l*
e<=t+1e-9;l+=1){let i=l%n===0;r.append(V(o(l*e),22,o(l*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.append(Z(o(l*e),
84,String(Math.round(l*e))))}let a=I("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(a,Z(586,14,"new\
tons","end")),{node:r,top:t,set(l,i){a.setAttribute("transform",`translate(${o(Math.min(l,t))} 0)`),r.setAttribute("aria\
-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function Ve({low:t,high:e,reach:n}){let r=I("svg",{viewBox:"0 0 720 \
92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(I("rect",{x:o(t),y:34,width:o(e)-o(
t),height:24,class:"tsg-target"}),Z((o(t)+o(e))/2,84,"target"),V(20,46,700,46,"tsg-mark"),V(360,26,360,66,"tsg-mark tsg-\
long"),Z(20,20,"end play","start"),Z(700,20,"preload","end"),Z(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let c of[
i,-i])r.append(V(o(c),42,o(c),50,"tsg-mark"));r.append(Z(o(-n),70,`${n.toFixed(2)} mm`,"start"),Z(o(n),70,`${n.toFixed(2)}\
 mm`,"end"));let a=I("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),l=I("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});return r.
append(a,l),{node:r,set(i,c,u){a.setAttribute("transform",`translate(${o(i)} 0)`),l.setAttribute("transform",`translate(${o(
c)} 0)`),r.setAttribute("aria-label",u)}}}function ut(t,{min:e,max:n,step:r,value:o,words:a,onInput:l}){let i=s("input",
{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),c=s("output",{class:"ts-slid"},a(o));return i.
addEventListener("input",()=>{let u=a(Number(i.value));c.textContent=u,i.setAttribute("aria-valuetext",u),l(Number(i.value))}),
i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,c),set(u){i.value=String(
u),c.textContent=a(u)}}}function dt(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},...e.
map(([a,l])=>s("option",{value:a,selected:a===n},l)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function Ze({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),l=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),c=s("u\
l",{class:"ts-sentences"}),u=Rt((m,d)=>v.send({type:"set",state:m,turn:d})),p=m=>{r={...r,...m},u.ask(r)},f=I("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),h=V(0,0,0,0,"tsg-mark tsg-long"),b=Z(0,0,""),g=96,
L=g/(n.readingsOnly?r.radius:n.radii[1]),x=I("svg",{viewBox:`0 0 ${2*g+120} ${2*g+30}`,width:2*g+120,height:2*g+30,class:"\
tsg-drum",role:"img"}),B=g+4;f.setAttribute("transform",`translate(${B} ${B})`),x.append(f,h,V(4,B,2*g+4,B,"tsg-centre"),
V(B,4,B,2*g+4,"tsg-centre"),I("circle",{cx:B,cy:B,r:10,class:"tsg-face"}),b);let P=[s("div",{class:"ts-tools"},F("Turn t\
he shaft ten times",()=>p({turns:r.turns+10})))];if(!n.readingsOnly){let m=n.kinds,d=m.map(([w,C])=>s("label",{class:"ts\
-option"},s("input",{type:"checkbox",checked:r.kinds.includes(w),onchange:k=>p({kinds:m.map(([M])=>M).filter(M=>M===w?k.
target.checked:r.kinds.includes(M))})}),`with ${C}`));P[0].append(F("Fit the rings anew",()=>p({turns:0}))),d.length&&P.
push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the bearings"),...d)),P.push(ut("Set\
ting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:w=>p({setting:w}),words:w=>w<0?`${(-w).toFixed(3)} mm of\
 end play`:`${w.toFixed(3)} mm of preload`}).row,ut("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:r.radius,
onInput:w=>p({radius:w}),words:w=>`${w} mm`}).row)}let v=z({model:t,el:e},{kind:"rig"});v.show(s("p",{class:"ts-who"},n.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),v.alert,
s("div",{class:"tsg-beside"},x,s("div",{class:"tsg-side"},a,l)),...P,i,c);function y(){let m=t.get("shown");u.waiting||(r=
m.state);let d=L*m.state.radius;St(f,{r:d}),St(h,{x1:B,y1:B-d,x2:2*g+120,y2:B-d}),St(b,{x:B,y:2*g+22}),b.textContent=`dr\
um, radius ${m.state.radius} mm`,x.setAttribute("aria-label",`A drum of ${m.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),o?.top!==m.scale.top&&(o=Je(m.scale),a.replaceChildren(o.node),l.textContent=
`Spring scale to ${m.scale.top} N, one mark ${m.scale.mark} N.`),o?.set(m.pull,m.pullWords),i.textContent=m.finding,c.replaceChildren(
...It(m.words)),u.answered(m.turn)}let $=()=>u.free();return v.follow("change:shown",y),v.follow("msg:custom",$),y(),v.close}function Lt({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=Rt((f,h)=>l.send({type:"set",state:f,turn:h})),
l=z({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),c=n(r,f=>{o={...o,...f},a.ask(o)},o),u=r.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";l.show(s("p",{class:"\
ts-who"},u),l.alert,s("div",{class:"tsg-wide"},c.picture),...c.controls,i);function p(){let f=t.get("shown");a.waiting||
(o=f.state),c.set(f,o),i.textContent=f.finding,a.answered(f.turn)}return l.follow("change:shown",p),l.follow("msg:custom",
a.free),p(),l.close}var xt=(...t)=>s("div",{class:"ts-tools"},...t);var ln={x:44,y:84,perMm:34};function cn(t){let e=I("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=ln,a=I("g",{}),l=I("g",{});e.append(I("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),I("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,l,Z(12,14,"main scale, mm","start"),Z(12,176,`vernier, ${t.
lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let c=n+i*t.space*o;l.append(
V(c,r,c,r+(i%2?20:30),"tsi-fine")),i%2===0&&l.append(Z(c,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let c=Math.
max(0,Math.ceil(i.mm-1));c<=t.top+25;c+=1){let u=n+(c-i.mm)*o;u<4||u>756||(a.append(V(u,r,u,r-(c%10===0?34:c%5===0?28:20),
"tsi-fine")),c%5===0&&a.append(Z(u,r-40,String(c))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function Qe(t){
return Lt(t,(e,n,r)=>{let o=cn(e),a=ut("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:c=>n(
{rod:c})}),l=dt("Foot",e.places,r.place,c=>n({place:c,rod:0})),i=dt("Look",e.eyes,r.eye,c=>n({eye:c}));return{picture:o.
node,controls:[xt(l.row,i.row),xt(F("Push the rod down until it rests",()=>n({rod:e.top})),F("Lift the rod",()=>n({rod:0}))),
a.row],set(c,u){o.set(c),l.box.value=u.place,i.box.value=u.eye,a.box.value=u.rod}}})}function ts({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let l=s("div",{class:"tsj-bars"}),i=lt(a,"[data-bolt]"),c=Q("torq\
ue"),u=s("input",{id:c,type:"range",min:10,max:100,step:5,oninput:()=>h()});u.value="100";let p=s("output",{class:"tsj-f\
igure",for:c}),f=()=>u.value==="100"?n.torque:Number((Math.round(n.torque*Number(u.value)/100/n.step)*n.step).toFixed(3));
function h(){p.textContent=`${f()} N·m`,u.setAttribute("aria-valuetext",`${f()} newton metres, ${u.value} percent of th\
e torque`)}let b=d=>v.send({type:"pull",bolt:d,torque:f()}),g=F("Take back",()=>v.send({type:"undo"})),L=F("Wait until t\
he film has run out",()=>v.send({type:"wait"})),x=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>v.send({type:"set",film:Number(x.value)})},...n.films.map(d=>s("option",{value:d},d?`${d} µm thick`:"none"))),
B=s("input",{type:"checkbox",onchange:()=>v.send({type:"set",scattered:B.checked})});a.addEventListener("click",d=>{let w=Ot(
d,"[data-bolt]");w&&(P(w),b(Number(w.dataset.bolt)))});let P=d=>{for(let w of i)w.setAttribute("tabindex",w===d?"0":"-1");
d.focus({preventScroll:!0})};a.addEventListener("keydown",d=>{let w=Ot(d,"[data-bolt]");if(!w||d.ctrlKey||d.metaKey||d.altKey)
return;let C=Number(w.dataset.bolt),k={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[d.key];if(k)P(i[(C+k+i.length)%
i.length]);else if(d.key==="Home")P(i[0]);else if(d.key==="End")P(i[i.length-1]);else if(d.key==="Enter"||d.key===" ")d.
repeat||b(C);else return;d.preventDefault()});let v=z({model:t,el:e},{kind:"rig"}),y=s("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},F("Start all by hand",()=>v.send({type:"start"})),...n.rounds.map(([d,w])=>F(`One round ${w}`,
()=>v.send({type:"round",pattern:d,torque:f()}))),g,F("Start again",()=>v.send({type:"again"}))),$=s("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:c},"Wrench set to"),u,p));n.films.length&&
$.append(s("label",{class:"ts-pair"},"Wet sealant",x),L,s("label",{class:"tsj-check"},B,"friction scatters from bolt to \
bolt")),v.show(s("p",{class:"ts-who"},n.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),v.alert,r,$,y,o,s("div",{class:"tsj-bench"},a,l),s("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function m(){let d=t.get("view");r.textContent=d.finding,o.textContent=d.happened,l.innerHTML=
d.bars;for(let[w,C]of i.entries()){let k=d.tight[w]?`${d.clamps[w]} kN`:d.started[w]?"started by hand":"not started";C.setAttribute(
"aria-label",`Bolt ${w+1} of ${n.count}, ${k}`),C.classList.toggle("tsj-tight",d.tight[w]),C.classList.toggle("tsj-start\
ed",d.started[w])}g.disabled=!d.pulls,L.disabled=!d.standing,x.value=String(d.film),B.checked=d.scattered}return v.follow(
"change:view",m),h(),m(),v.close}var es="tsk-number";function Tt(t,e,...n){return s("td",{class:e?es:null,"data-label":t||null,role:"cell"},...n)}function Qt(t,e,n){
let r=e.map(([l,i])=>s("th",{scope:"col",role:"columnheader",class:i?es:null},l)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function ss({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),l=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),c=new Map;for(let[h,
b,g,L]of n.checks){let x=s("select",{class:"ts-box","aria-label":`What it showed: ${b}`,onchange:()=>p.send({type:"obser\
ve",check:h,shown:x.value})},s("option",{value:""},"Not made"),...ct(L)),B=Tt("would tell, bit",!0),P=Tt("bit a minute",
!0),v=s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},b),Tt("min",!0,`${g}`),Tt("it showed",!1,x),B,P);c.set(h,
{box:x,tells:B,rate:P,row:v}),i.append(v)}let u=s("button",{class:"ts-button",type:"button",onclick:()=>p.send({type:"cl\
ear"})},"Take all observations back"),p=z({model:t,el:e},{kind:"rig"});p.show(s("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),p.alert,r,a,l,Qt("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),o,u);function f(){let h=t.get("view");r.textContent=h.finding,
o.textContent=h.spent,l.textContent=h.more,a.replaceChildren(...It(h.left.map(([L,x])=>`${L} (${x})`)));let b=h.ranked,g=new Map(
b.map(([L,x,B],P)=>[L,{bits:x,rate:B,rank:P}]));for(let[L,{box:x,tells:B,rate:P,row:v}]of c){let y=h.observed[L],$=g.get(
L);x.value=y??"",B.textContent=$?$.bits:y!==void 0?"made":"nothing",P.textContent=$?$.rate+($.rank===0?" ◀ best next":
""):"–",v.classList.toggle("tsk-best",$?.rank===0)}}return p.follow("change:view",f),f(),p.close}function ns({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"\
The lever. Arrow keys left and right slide the selector shaft, up and down turn it."}),a=s("select",{class:"ts-box ts-ho\
w","aria-label":"How it is put together"},...ct(t.get("builds"))),l=et("Start again",()=>L({type:"reset"})),i=s("div",{class:"\
ts-tools ts-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([d,w])=>et(w,()=>L({type:"move",
code:d})))),c=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),u=s("p",{class:"ts-hint"},"Nothin\
g tried yet. Use the moves above; each is written down here."),p=s("p",{class:"ts-proof",role:"status"}),f=et("What does\
 a full hand test find?",()=>{f.disabled=!0,p.textContent="testing",L({type:"prove"})}),h=z({model:t,el:e},{kind:"rig"});
h.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),h.alert,s("div",{class:"ts-tools"},s("span",
{class:"ts-pair"},"Put together: ",a),l),n,o,r,s("p",{class:"ts-hint"},"Drag the blue finger, or click the picture and u\
se the arrow keys: left and right slide, up and down turn. Or use the moves in words:"),i,s("p",{class:"ts-prompt"},"Tri\
ed by hand"),u,c,s("div",{class:"ts-tools"},f),p);let b=0,g="";function L(d){b+=1,h.send({...d,turn:b})}function x(){let d=t.
get("view");if(g!==t.get("figure")){g=t.get("figure"),o.innerHTML=g;let w=Et(o,"svg");w.removeAttribute("role"),w.setAttribute(
"aria-hidden","true")}for(let w of lt(o,"[data-body]")){let[C,k]=d.moved[String(w.dataset.rides??w.dataset.body)]??[0,0];
w.setAttribute("transform",`translate(${C.toFixed(2)} ${k.toFixed(2)})`)}for(let w of lt(o,"[data-gear]"))w.classList.toggle(
"tsg-in",d.gears.includes(w.dataset.gear));o.dataset.turn=String(d.turn),n.textContent=`${d.gears.length>1?"■ ":d.gears.
length?"● ":"○ "}${d.title}.`,r.textContent=d.happened,r.classList.toggle("ts-stopped",/topped by/.test(d.happened)),
(c.childElementCount!==d.log.length||c.lastElementChild?.textContent!==d.log.at(-1))&&(c.replaceChildren(...d.log.map(w=>s(
"li",{class:/topped by/.test(w)?"ts-stopped":""},w))),c.scrollTop=c.scrollHeight),u.hidden=d.log.length>0,a.value=d.build,
p.textContent=d.proof,f.disabled=!1,v=!1,m()}o.addEventListener("keydown",d=>{if(vt(d))return;let w={ArrowLeft:[-1,0],ArrowRight:[
1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[d.key];w&&(d.preventDefault(),L({type:"nudge",travel:w[0],turned:w[1]}))}),a.addEventListener(
"change",()=>L({type:"build",build:a.value}));let B=null,P=null,v=!1;function y(d){let w=Et(o,"svg"),C=w.getBoundingClientRect(),
k=w.viewBox.baseVal.width/C.width;return[(d.clientX-C.left)*k,(d.clientY-C.top)*k]}o.addEventListener("pointerdown",d=>{
let w=Ot(d,".tsg-panel");if(!w||d.button!==0)return;let C=t.get("view").hand,[k,M]=y(d),D=Number(w.dataset.scale);B={x:k-
C[0]*D,y:M+C[1]*D,scale:D},o.setPointerCapture(d.pointerId),o.focus({preventScroll:!0}),o.classList.add("ts-pulling"),d.
preventDefault()}),o.addEventListener("pointermove",d=>{if(!B)return;let[w,C]=y(d);P={travel_mm:(w-B.x)/B.scale,turn_mm:(B.
y-C)/B.scale},m()});let $=()=>{B=null,o.classList.remove("ts-pulling")};o.addEventListener("pointerup",$),o.addEventListener(
"pointercancel",$);function m(){if(v||!P)return;v=!0;let d=P;P=null,L({type:"pull",...d})}return h.follow("msg:custom",d=>{
d.type==="trouble"&&(v=!1)}),h.follow("change:view",x),x(),h.close}function os({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding",role:"status"}),a=s("p",{class:"\
ts-happened tsw-happened",role:"status"}),l=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,u=n.gears.map(
([C,k])=>s("button",{type:"button",class:"ts-button","data-gear":C,"aria-pressed":"false",onclick:()=>m({type:"gear",gear:C})},
k)),p=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:C=>m({type:"hold",shaft:C.target.value})},...ct(
n.holds)),f=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:C=>{i=C.target.value,w()}},...ct(r.dials.
map(C=>[C.shaft,C.name]))),h=C=>m({type:"turn",shaft:i,turns:C}),b=`1/${n.marks}`,g=s("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},et("↺ 1 turn",()=>h(-1),"One turn anticlockwise"),et(`↺ ${b}`,()=>h(-n.step),`${b}\
 turn anticlockwise`),et("↺ a touch",()=>h(-n.fine),"A touch anticlockwise"),et("a touch ↻",()=>h(n.fine),"A touch c\
lockwise"),et(`${b} ↻`,()=>h(n.step),`${b} turn clockwise`),et("1 turn ↻",()=>h(1),"One turn clockwise"),et("Marks t\
o zero",()=>m({type:"reset"}))),L=new Map;for(let C of r.dials){let k=I("g",{},I("circle",{class:"tsw-end",r:34}),I("lin\
e",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),I("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),M=[];for(let A=0;A<n.marks;A+=
1)M.push(I("line",{class:"tsw-tick",y1:-40,y2:A?-47:-52,transform:`rotate(${A*360/n.marks})`})),A&&M.push(I("text",{class:"\
tsw-number",x:57*Math.sin(A*2*Math.PI/n.marks),y:-57*Math.cos(A*2*Math.PI/n.marks)+4},String(A)));let D=I("svg",{viewBox:"\
-70 -70 140 140",class:"tsw-dial","data-shaft":C.shaft,"aria-hidden":"true"},I("circle",{class:"tsw-plate",r:40}),...M,I(
"path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),k),H=s("div",{class:"tsw-count",tabindex:"0",role:"application","\
aria-roledescription":"shaft","data-shaft":C.shaft},s("div",{class:"tsw-name"}),D,s("div",{class:"tsw-strokes","aria-hid\
den":"true"}),s("div",{class:"tsw-figure"}));L.set(C.shaft,{box:H,svg:D,shaftEnd:k}),H.addEventListener("focus",()=>{i!==
C.shaft&&(i=C.shaft,w())}),H.addEventListener("keydown",A=>{if(vt(A))return;let R={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,
ArrowUp:-1,PageDown:1,PageUp:-1}[A.key];R&&(A.preventDefault(),i=C.shaft,h(R*(A.key.startsWith("Page")?1:A.shiftKey?n.fine:
n.step)))});let N=null,S=A=>{let R=D.getBoundingClientRect();return Math.atan2(A.clientX-R.left-R.width/2,R.top+R.height/
2-A.clientY)/(2*Math.PI)};D.addEventListener("pointerdown",A=>{A.button===0&&(N=S(A),D.setPointerCapture(A.pointerId),H.
focus({preventScroll:!0}),A.preventDefault())}),D.addEventListener("pointermove",A=>{if(N===null)return;let R=S(A),U=R-N;
U-=Math.round(U),N=R,x+=U,P()});let O=()=>{N=null};D.addEventListener("pointerup",O),D.addEventListener("pointercancel",
O)}let x=0,B=!1;function P(){if(B||Math.abs(x)<.002)return;B=!0;let C=x;x=0,h(C)}let v=z({model:t,el:e},{kind:"rig"});v.
show(...n.closed?[]:[s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved.")],v.alert,o,...n.closed?[]:[s("\
div",{class:"ts-tools",role:"group","aria-label":"Gears engaged"},s("span",{},"Engage: "),...u),l],s("div",{class:"ts-to\
ols"},s("span",{class:"ts-pair"},"Hold still: ",p),s("span",{class:"ts-pair"},"Turn by hand: ",f)),s("div",{class:"tsw-c\
ounts"},...[...L.values()].map(C=>C.box)),g,a,s("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a d\
ial round, or go to it and use the arrow keys (${b} turn), Shift with an arrow key (a touch) or Page Up and Page Down (o\
ne turn). Each stroke is a whole turn.`));let y=0,$=null;function m(C){y+=1,v.send({...C,turn:y})}let d=C=>{let k=[];for(let M=C;M>
0;M-=5)k.push(M>=5?"||||/":"|".repeat(M));return k.join(" ")};function w(){let C=t.get("view");$!==t.get("figure")&&($=String(
t.get("figure")),l.innerHTML=$);for(let k of lt(l,"[data-wheel]")){let[M,D]=C.wheels[String(k.dataset.wheel)]??[0,!0];k.
setAttribute("transform",`translate(0 ${(M*Number(k.dataset.reach)).toFixed(1)})`),k.classList.toggle("tsw-behind",!D)}for(let k of u)
k.setAttribute("aria-pressed",String(C.engaged.includes(k.dataset.gear)));p.value=C.held,f.value=i;for(let k of C.dials){
let{box:M,shaftEnd:D}=L.get(k.shaft),H=k.way>0?"↻":k.way<0?"↺":"";D.setAttribute("transform",`rotate(${k.angle})`);let[
N,,S,O]=M.children;N.textContent=`${k.name}${k.held?", held":k.shaft===i?", your hand":""}`,S.textContent=k.strokes||H?`${H}\
 ${d(k.strokes)}`:"no stroke",O.textContent=k.figure,M.classList.toggle("tsw-hand",k.shaft===i),M.classList.toggle("tsw-\
held",k.held),M.setAttribute("aria-label",`${k.name}${k.held?", held":""}. ${k.words}`)}o.textContent=C.finding,a.textContent=
C.happened,e.dataset.turn=String(C.turn),B=!1,P()}return v.follow("change:view",w),w(),v.close}function rs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),l=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,l),c=[],
u=[],p=null,f=t.get("plan").lookingOnly,h=(m,d)=>s("button",{type:"button",class:"ts-button","data-verdict":m,"aria-pres\
sed":"false",onclick:()=>x.send({type:"judge",place:p,verdict:m})},d),b=f?[]:[h("stop","Stop here"),h("well","Fine as it\
 is")],g=s("button",{type:"button",class:"ts-button",onclick:()=>x.send({type:"next"})},"Another day"),L=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...b);t.get("plan").more&&L.append(g);let x=z({model:t,
el:e},{kind:"rig"});x.show(s("p",{class:"ts-who"},f?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),x.alert,n,s("p",{class:"ts-keys"},f?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),r,i),f||i.after(L);function B(m,d){let w=m!==p;p=m;for(let[C,k]of u.
entries()){let M=c[C][0]===m;k.setAttribute("tabindex",M?"0":"-1"),k.setAttribute("aria-pressed",String(M)),k.classList.
toggle("tsh-chosen",M),M&&d&&(k.focus({preventScroll:!0}),P(k))}w&&x.send({type:"choose",place:m})}function P(m){let d=Et(
m,".tsh-hit").getBoundingClientRect(),w=r.getBoundingClientRect();(d.left<w.left||d.right>w.right)&&(r.scrollLeft+=d.left-
w.left-(w.width-d.width)/2),(d.bottom<0||d.bottom>innerHeight||d.top<0)&&m.scrollIntoView({block:"nearest"})}function v(){
let m=t.get("plan");c=m.places,r.innerHTML=m.drawing,Et(r,"svg").setAttribute("role","group"),u=c.map(([d])=>Et(r,`[data\
-place="${d}"]`)),u.forEach((d,w)=>{d.setAttribute("role","button"),d.setAttribute("aria-label",`${w+1} ${c[w][1]}`),d.addEventListener(
"click",()=>B(c[w][0],!0))}),p=String(t.get("view").chosen),B(p,!1)}r.addEventListener("keydown",m=>{if(vt(m))return;let d=c.
findIndex(([k])=>k===p),w=Math.min(6,c.length),C=d;if(m.key==="ArrowRight")C=d+1;else if(m.key==="ArrowLeft")C=d-1;else if(m.
key==="ArrowDown")C=d+w;else if(m.key==="ArrowUp")C=d-w;else if(m.key==="Home")C=0;else if(m.key==="End")C=c.length-1;else if(m.
key!=="Enter"&&m.key!==" ")return;m.preventDefault(),C>=0&&C<c.length&&B(c[C][0],!0)});function y(){let m=t.get("view");
n.textContent=m.finding;let d=c.findIndex(([k])=>k===m.chosen);o.textContent=`${d+1}  ${c[d][1]}`,a.textContent=m.seen;let{
verdict:w,...C}=m.told;if(l.replaceChildren(),w){let k=m.judged[m.chosen],M=k==="stop"==(w==="Stop here."),D=k==="stop"?
"Stop here":"Fine as it is";l.append(s("p",{class:"tsh-verdict"},M?`✓ Yes: ${w}`:`✗ You said “${D}”. The course sa\
ys: ${w}`),s("dl",{class:"ts-facts"},...Object.entries(C).flatMap(([H,N])=>[s("dt",{},H),s("dd",{},N)])))}for(let k of b)
k.setAttribute("aria-pressed",String(m.judged[m.chosen]===k.dataset.verdict));for(let[k,M]of u.entries()){let D=m.judged[c[k][0]];
M.setAttribute("aria-label",`${k+1} ${c[k][1]}${D?`, judged: ${D==="stop"?"stop here":"fine as it is"}`:""}`);let H=M.querySelector(
".tsh-tag");if(!D){H?.remove();continue}H||(H=I("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),M.
append(H)),H.textContent=D==="stop"?"■ stop":"○ well"}e.dataset.turn=m.chosen}let $=()=>{v(),y()};return x.follow("c\
hange:plan",$),x.follow("change:view",y),$(),x.close}function as({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),l=new Map,c=n.sliders.map(([h,b,g,L,x,B])=>{let P=Q(h.replace("_","-")),v=s("output",{class:"\
tsl-figure",for:P}),y=s("input",{id:P,type:"range",min:L,max:x,step:B,oninput:()=>{$(),p.send({type:"set",name:h,value:Number(
y.value)})}}),$=()=>{v.textContent=`${y.value} ${g}`,y.setAttribute("aria-valuetext",`${y.value} ${g==="°"?"degrees":g}`)};
return l.set(h,{slider:y,say:$}),s("div",{class:"tsl-row"},s("label",{for:P},b),y,v)}),u=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>p.send({type:"set",name:"grip",value:u.value})},...ct(n.grips)),p=z({model:t,el:e},{kind:"r\
ig"});p.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),p.alert,r,s("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...c,s("div",{class:"tsl-row"},s("span",{},"Grip"),u)),a,o,s("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function f(){let h=t.get("vi\
ew");r.textContent=h.finding,o.textContent=h.sum,a.innerHTML=h.drawing;for(let[b,{slider:g,say:L}]of l)document.activeElement!==
g&&(g.value=h.sizes[b]),L();u.value=h.sizes.grip}return p.follow("change:view",f),f(),p.close}var te={x:90,y:120,perMm:20,radius:82,bevel:30};function dn(t){let e=I("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=te;e.append(I("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),V(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let f=0;f*t.pitch<=t.top;f+=1){let h=n+f*t.pitch*o;if(f%2){e.append(V(h,
r,h,r+18,"tsi-fine"));continue}let b=f/2;e.append(V(h,r,h,r-(b%5?18:27),b%5?"tsi-fine":"tsi-bold")),b%5===0&&e.append(Z(
h,r-33,String(b)))}let l=I("g",{});e.append(l,Z(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway. Th\
imble: 50 lines a turn.","start"));let i=I("path",{d:`M0 ${r-a+14}L${te.bevel} ${r-a}L${te.bevel} ${r+a}L0 ${r+a-14}Z`,class:"\
tsi-body"}),c=I("rect",{x:te.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),u=I("rect",{x:0,y:r-a,width:760,height:2*
a,fill:"var(--ts-paper)"}),p=I("g",{});return l.append(u,i,c,p),{node:e,set(f){l.setAttribute("transform",`translate(${n+
f.mm*o} 0)`),p.replaceChildren();for(let h=0;h<t.lines;h+=1){let b=h-f.line;b-=t.lines*Math.round(b/t.lines);let g=b/t.lines*
2*Math.PI;if(Math.abs(g)>1.15)continue;let L=r-(a-8)*Math.sin(g),x=h%5===0;p.append(V(0,L,x?26:16,L,x?"tsi-bold":"tsi-fi\
ne")),x&&p.append(Z(36,L+5,String(h),"start"))}e.setAttribute("aria-label",`${t.name}. ${f.words}`)}}}function is(t){return Lt(
t,(e,n,r)=>{let o=dn(e),a=ut("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, out to the\
 right",onInput:c=>n({open:c})}),l=dt("Between the faces",e.between,r.between,c=>n({between:c,open:e.top})),i=e.hands.length?
dt("Close it",e.hands,r.hand,c=>n({hand:c})):null;return{picture:o.node,controls:[xt(l.row,i?.row),xt(F("Close until it \
rests",()=>n({open:-1})),F("Open",()=>n({open:e.top}))),a.row],set(c,u){o.set(c),a.box.value=String(Math.max(0,c.mm)),l.
box.value=u.between}}})}function ls({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[c,u,p]of n.checks){let f=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${u}`,onclick:()=>{
f.getAttribute("aria-disabled")!=="true"&&l.send({type:"make",check:c})}},"Make"),h=Tt("it shows",!1);h.classList.add("t\
sk-shown"),a.set(c,{button:f,shown:h}),o.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},u),Tt("min",!0,
`${p}`),Tt("",!1,f),h))}let l=z({model:t,el:e},{kind:"rig"});l.show(s("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),l.alert,r,Qt("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));
function i(){let c=t.get("view");r.textContent=c.finding;for(let[u,{button:p,shown:f}]of a){let h=c.shown[u];p.setAttribute(
"aria-disabled",h?"true":"false"),p.classList.toggle("ts-off",!!h),p.textContent=h?"Made":"Make",f.textContent=h?`${h[0]?
"✓":"✗"} ${h[1]}`:"",f.classList.toggle("tsk-failed",!!h&&!h[0])}}return l.follow("change:view",i),i(),l.close}function un(){let t=I("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=I("g"),n=I("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(I("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,I("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=l=>(-135+270*l)*Math.PI/180,o="";function a([l,i,c]){e.replaceChildren();for(let u=0;u*i<=l+
1e-9;u+=1){let p=r(u*i/l),f=u%c===0,h=b=>[110+b*Math.sin(p),104-b*Math.cos(p)];if(e.append(V(...h(f?72:79),...h(88),f?"t\
sg-mark tsg-long":"tsg-mark")),f&&u%(2*c)===0){let[b,g]=h(58);e.append(Z(b,g+4.5,String(Number((u*i).toFixed(2)))))}}e.append(
Z(110,170,"kN"))}return{node:t,set(l,i,c){String(l)!==o&&(o=String(l),a(l));let u=Math.min(i/l[0],1.03);n.setAttribute("\
transform",`translate(110 104) rotate(${-135+270*u})`),t.setAttribute("aria-label",c)}}}function cs(t){return Lt(t,(e,n,r)=>{
let o=un(),a=s("div",{class:"tsp-section"}),l="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),c=ut("Push",{min:0,max:100,step:1,value:r.travel,onInput:h=>n(
{travel:h}),words:h=>h>=100?"at the shoulder":`${h} % of the way`}),u=[c.row],p=null;if(!e.readingsOnly){let h=dt("Part",
e.places,r.place,x=>n({place:x,travel:0}));p=dt("Driver bears on",e.drivers,r.driver,x=>n({driver:x,travel:0}));let b=dt(
"Seat",e.seats,r.seat,x=>n({seat:x})),g=ut("Pair",{min:0,max:100,step:1,value:r.grip,onInput:x=>n({grip:x}),words:x=>x===
0?"loosest of the fit":x===100?"tightest of the fit":`${x} % from loosest to tightest`}),L=ut("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:x=>n({warmth:x}),words:x=>`${x} °C`});u.unshift(xt(h.row,p.row,b.row),
g.row,L.row)}let f=s("dl",{class:"ts-facts"});return e.readingsOnly||u.push(f),{picture:i,controls:u,set(h,b){h.section!==
l&&(l=h.section,a.innerHTML=l),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*b.travel/
100} 0)`),o.set(h.gauge,h.force,h.words),Number(c.box.value)!==b.travel&&document.activeElement!==c.box&&c.set(b.travel),
p&&(p.row.hidden=!h.drives),h.facts&&f.replaceChildren(...Mt(h.facts))}}})}function ds({model:t,el:e}){let n=t.get("steps"),r=t.get("reach"),o=new Map(n.map(([$],m)=>[$,m])),a=s("div",{class:"ts-\
scroll"}),l=s("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=s(
"p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts-sentences"}),u=s("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...ct(n.map(([$,m],d)=>[$,`${d+1}  ${m}`]))),p=s("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),f=z({model:t,el:e},{kind:"rig",lost(){u.disabled=!0}});f.show(f.alert,s("p",{class:"ts-f\
inding"},t.get("finding")),s("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",u),
p),a,s("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,l,c),a.innerHTML=t.get("figure");let h=Et(a,"svg");h.setAttribute("role","group");let b=lt(h,".tsf-step").sort(
($,m)=>Number($.dataset.step)-Number(m.dataset.step)),g=lt(h,".tsf-rule").map($=>({node:$,ends:String($.dataset.rule).split(
"-").map(Number)}));b.forEach(($,m)=>{$.setAttribute("role","button"),$.setAttribute("aria-label",`${m+1} ${n[m][1]}, ${r[m].
before.length} before it, ${r[m].after.length} after it`),$.addEventListener("click",()=>B(m,!0))});let L=Number(o.get(t.
get("near").step));function x($){let m=new Set(r[L].before),d=new Set(r[L].after);b.forEach((M,D)=>{M.setAttribute("tabi\
ndex",D===L?"0":"-1"),M.setAttribute("aria-pressed",String(D===L)),M.classList.toggle("ts-chosen-step",D===L),M.classList.
toggle("ts-before-it",m.has(D)),M.classList.toggle("ts-after-it",d.has(D)),M.classList.toggle("ts-either",D!==L&&!m.has(
D)&&!d.has(D))});let w=M=>M===L||m.has(M)||d.has(M);for(let{node:M,ends:D}of g){let H=m.has(D[0])&&(D[1]===L||m.has(D[1]))||
d.has(D[1])&&(D[0]===L||d.has(D[0]));M.classList.toggle("ts-either",!(H&&D.every(w)))}u.value=n[L][0],$&&b[L].focus({preventScroll:!0});
let C=b[L].getBoundingClientRect(),k=a.getBoundingClientRect();(C.left<k.left+16||C.right>k.right-16)&&(a.scrollLeft+=C.
left-k.left-k.width/2)}function B($,m){L=$,x(m),f.send({type:"choose",step:n[$][0]})}let P=$=>{let d=Et(b[$],"rect").getBBox();
return{x:d.x,y:d.y}};function v($){let m=P(L),d=k=>k.sort((M,D)=>Math.abs(P(M).y-m.y)-Math.abs(P(D).y-m.y))[0];if($==="A\
rrowRight")return d(g.filter(({ends:k})=>k[0]===L).map(({ends:k})=>k[1]));if($==="ArrowLeft")return d(g.filter(({ends:k})=>k[1]===
L).map(({ends:k})=>k[0]));let w=b.map((k,M)=>M).filter(k=>Math.abs(P(k).x-m.x)<2&&k!==L),C=$==="ArrowUp"?-1:1;return d(w.
filter(k=>(P(k).y-m.y)*C>0))}h.addEventListener("keydown",$=>{if(!vt($))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes($.key)){let m=v($.key);m!==void 0&&B(m,!0),$.preventDefault()}else($.key==="Enter"||$.key===" ")&&$.preventDefault()}),
u.addEventListener("change",()=>B(Number(o.get(u.value)),!1)),p.addEventListener("click",()=>{let $=a.classList.toggle("\
ts-fit");p.setAttribute("aria-pressed",String($)),x(!1)});function y(){let $=t.get("near");i.textContent=$.words,l.innerHTML=
$.figure,c.replaceChildren(...It($.sentences))}return f.follow("change:near",y),y(),requestAnimationFrame(()=>x(!1)),f.close}function pn(){let t=I("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=I("g",{}),n=I("g",{});return e.append(
I("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),V(150,164,150,98,"tsi-bold"),I("circle",{cx:150,cy:98,r:5,class:"tsg-h\
ub"})),n.append(V(150,86,150,40,"tsi-plunger"),I("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,V(50,164,250,
164,"tsg-centre"),V(150,250,150,80,"tsg-centre"),n,Z(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute("t\
ransform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function us(t){
return Lt(t,(e,n,r)=>{let o=_t(),a=pn(),l=ut("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:u=>`turn\
ed by ${u}°`,onInput:u=>n({angle:u})}),i=dt("Plunger",e.pressed,r.pressed,u=>n({pressed:u})),c=dt("Stand",e.tilts,r.tilt,
u=>n({tilt:u}));return{picture:s("div",{class:"tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[xt(i.row,c.row),l.row],set(u,p){o.set(u.mm,u.words),a.set(u.state.angle,Number(u.
state.tilt),`Shaft end on, turned by ${u.state.angle}°; the plunger stands ${u.state.tilt}° off square. Not to scale.`),
l.set(p.angle)}}})}var fs=(t,e)=>(t+e)%7<2,hs=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,se=()=>!1,ee=t=>(e,n)=>n%t===0,fn={"":se,dots:(t,e)=>t%6<2&&e%
6<2,rising:fs,cross:hs,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":se,"lines-2":ee(14),"lines-3":ee(8),"lines-4":ee(5),"lines-5":ee(
3)};function hn(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var ps=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function gs(t,[e,n],r,o,a){let l=n*4,i=new Uint32Array(l*e*4),c=new Map(r.map(([f,,h,b])=>{let g=h?ps(hn(h),200):
0;return[f,{ground:g,hatch:fn[b]??se}]})),u={ground:0,hatch:se},p=ps(o,190);for(let f=0;f<e;f+=1){let h=(e-1-f)*4;for(let b=0;b<
n;b+=1){let g=t[f*n+b];if(!g)continue;let{ground:L,hatch:x}=c.get(g&15)??u,B=a&&(g&16)!==0,P=a&&(g&32)!==0;for(let v=h;v<
h+4;v+=1)for(let y=b*4;y<(b+1)*4;y+=1){let $=x(y,v)||B&&fs(y,v)||P&&hs(y,v);i[v*l+y]=$?p:L}}}return i}var mn=600;function ws(t,e,n,r,o,a){let[l,i]=n;t.width=i*4,t.height=l*4;let c=new Uint8ClampedArray(gs(e,n,r,o,a).buffer),
u=new ImageData(c,t.width,t.height);t.getContext("2d")?.putImageData(u,0,0)}function wn(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return ws(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function bs({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),l=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),c=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),u=z({model:t,el:e},{kind:"rig",lost(){h.setDisabled(!0),Ft(e)}}),p=null,f=S=>{p=Q("turn"),u.send({...S,turn:p})},
h=Jt({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(S){h.
drawing.strokes(S),f({type:"lay",entries:S})},onRemove:S=>f({type:"remove",at:S}),onClear:()=>f({type:"clear"})}),b=F("C\
lose the face",()=>f({type:"shut",closed:!t.get("view").closed})),g=s("input",{type:"range",id:Q("flat"),min:"20",max:"1\
60",step:"10",class:"ts-range"}),L=s("output",{for:g.id}),x=At({id:Q("slide"),onchange:()=>f({type:"slide",by:x.value})},
t.get("view").slides),B=null;g.addEventListener("input",()=>{L.textContent=`${g.value} µm`;let S={type:"flat",um:Number(
g.value)};p===null?f(S):B=S});let{box:P,unit:v}=h.drawing;h.drawing.land.classList.add("tsp-clear"),h.drawing.frame.prepend(
c);let y=(...S)=>s("span",{class:"ts-pair"},...S);u.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),u.alert,o,h.drawing.frame,i,s("div",{class:"ts-tools"},b,y(s("label",{for:x.id},"the other face is"),x),y(a,F("1 m\
inute passes",()=>f({type:"time",by:1})),F("5 minutes pass",()=>f({type:"time",by:5}))),y(s("label",{for:g.id},"faces ou\
t of flat by"),g,L)),h.tools,l,s("details",{class:"ts-keys"},s("summary",{},"Passes laid"),h.empty,h.list));function $(){
let S=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return S?S.slice(0,3).map(Number):[0,0,0]}let m="",d="";function w(){
let S=t.get("view"),O=r[S.closed?"closed":"film"],A=t.get("grid"),R=A instanceof DataView?new Uint8Array(A.buffer,A.byteOffset,
A.byteLength):new Uint8Array(A);ws(c,R,S.shape,O,$(),!S.closed);let[U,G]=S.shape,[mt,tt]=[S.corner[0]-S.pitch/2,S.corner[1]-
S.pitch/2],_=(X,st)=>`${(100*X/st).toFixed(3)}%`;c.style.left=_(mt-P.left,P.width),c.style.width=_(G*S.pitch,P.width),c.
style.top=_(P.high-tt-U*S.pitch,P.height),c.style.height=_(U*S.pitch,P.height);let q=new Set(R.map(X=>S.closed?X:X&15)),
W=O.filter(([X])=>q.has(X)),rt=`${W.map(([,X])=>X)} ${$()}`;rt!==m&&(m=rt,i.replaceChildren(...W.map(X=>wn(X,$()))))}let C=I(
"g");h.drawing.over.append(C);let k=([S,O])=>[S-P.left,P.high-O];function M([S,O]){let A=O.map(R=>{let[U,G]=k(R);return`\
M${U.toFixed(1)} ${G.toFixed(1)}h0.01`});return I("path",{d:A.join(""),class:"tsp-lump","stroke-width":2*S})}function D(S){
let[O,A]=k(S[S.length-1]),R=`M${O-1.3*v} ${A-v}h${2.6*v}l${-1.3*v} ${2.2*v}Z`;return[I("path",{d:h.drawing.path(S),class:"\
tsp-way","stroke-width":v}),I("path",{d:R,class:"tsp-out"})]}function H(){let S=t.get("view");if(p!==null&&S.turn!==p)return;
p=null;let O=JSON.stringify([S.entries,S.notes]);if(O!==d&&h.show(S.entries,S.notes),d=O,h.drawing.strokes([]),w(),C.replaceChildren(
...S.lumps.map(M),...S.leaks.flatMap(D)),h.drawing.svg.classList.toggle("tsp-shut",S.closed),h.drawing.svg.classList.toggle(
"tsp-clean",S.closed||S.clean),o.textContent=S.finding,x.value=S.slide,a.textContent=`minute ${S.minute}`,b.textContent=
S.closed?"Lift the face off again":"Close the face",B===null&&(g.value=String(S.flat),L.textContent=`${S.flat} µm`),l.replaceChildren(
...Mt(S.facts)),B===null)return;let A=B;B=null,f(A)}u.follow("change:view",H),u.follow("msg:custom",S=>{S.type==="troubl\
e"&&(p=null,h.drawing.strokes([]))});let N=new MutationObserver(()=>setTimeout(w,mn));return N.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),H(),()=>{u.close(),N.disconnect()}}function vs(t){return Lt(t,(e,n,r)=>{let o=_t(),a=s("div",{class:"tsp-section"}),l="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),c=e.places.map(([p,f])=>[p,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:p})},f)]),u=[s("p",{class:"ts-hint"},e.rule),xt(s("span",{},"Set the gauge down at"),...c.map(([,p])=>p))];
return e.readingsOnly||(u.push(xt(dt("Lip looks towards",e.sides,r.lip,p=>n({lip:p})).row,dt("Lip is",e.greases,r.grease,
p=>n({grease:p})).row,e.sleeves.length?dt("It went",e.sleeves,r.sleeve,p=>n({sleeve:p})).row:"")),u.push(ut("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:p=>`${p.toFixed(2)} mm${p<0?", proud":""}`,onInput:p=>n({
depth:p})}).row,ut("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:p=>p?`${p.toFixed(2)} mm across`:"square",onInput:p=>n(
{lean:p})}).row)),{picture:i,controls:u,set(p,f){p.section!==l&&(l=p.section,a.innerHTML=l),a.querySelector(".tsl-moving")?.
setAttribute("transform",p.placed),o.set(p.dial,p.words);for(let[h,b]of c)b.setAttribute("aria-pressed",String(h===f.place))}}})}function ks({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=_t(),a=n.readingsOnly?null:Ve(n),l=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),c=Rt((m,d)=>B.send({type:"set",state:m,turn:d})),u=m=>{r={...r,...m},c.ask(r)},
p=(m,d)=>{let w=[...r.shims];w[m]=d,u({shims:w.filter(Boolean),turns:0})},f=(m,d,w)=>F(m,d,{"aria-pressed":w}),h=F("Turn\
 the shaft ten times",()=>u({turns:r.turns+10})),b=f("Pull the shaft away",()=>u({side:"away"}),"true"),g=f("Push it to \
the dial",()=>u({side:"towards"}),"false"),L=dt("Plunger",n.plungers,r.plunger,m=>u({plunger:m})),x=[s("div",{class:"ts-\
tools"},n.rolls?h:null,L.row,b,g)];if(!n.readingsOnly){let m=dt("Shim",n.shelf,r.shims[0],w=>p(0,w)),d=n.second?dt("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",w=>p(1,w)):null;x.unshift(s("div",{class:"ts-tools"},m.row,d?.row)),x.
push(ut("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:w=>u({warmth:w}),words:w=>w?`case ${Math.round(n.caseRise*
w/100)} K warmer`:"cold, as at the bench"}).row)}let B=z({model:t,el:e},{kind:"rig"}),P=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});P.innerHTML=n.section;let v=[s("p",{class:"ts-who"},n.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),B.alert,s("div",{class:"\
tsg-beside"},P,s("div",{class:"tsg-gauge"},o.node,s("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...x,l,
a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];B.show(...v.filter(Boolean));function y(){let m=t.get("show\
n");c.waiting||(r=m.state),o.set(m.dial,m.dialWords),b.setAttribute("aria-pressed",String(m.state.side==="away")),g.setAttribute(
"aria-pressed",String(m.state.side==="towards")),l.textContent=m.finding,a&&(a.set(m.cold,m.warm,m.words.join(" ")),i.replaceChildren(
...m.words.map(d=>s("p",{},d)))),c.answered(m.turn)}let $=()=>c.free();return B.follow("change:shown",y),B.follow("msg:c\
ustom",$),y(),B.close}function ys({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),l=s("dl",{class:"ts-facts"}),i=null,c=null,u=(d,w)=>{c={...c,[d]:w},i===null&&p()};function p(){
i=Q("choice"),y.send({type:"choose",chosen:c,turn:i}),c=null}let f=s("div",{class:"tsj-settings"}),h=(d,w,C)=>{let k=Q("\
set");return w.id=k,f.append(s("label",{for:k},d),s("span",{class:"tsj-slide"},w,C)),w},b=(d,w,C)=>h(w,s("select",{class:"\
ts-box",onchange:k=>u(d,k.target.value)},...ct(C.map(k=>typeof k=="string"?[k,k]:k)))),g=(d,w,C)=>h(w,s("input",{type:"r\
ange",oninput:k=>u(d,Number(k.target.value))}),C),L={group:b("group","Bolt of the unit",n.groups),thread:b("thread","Thr\
ead",n.threads),strength:b("strength","Strength class",n.classes),state:b("state","State of the thread",n.states),tool:b(
"tool","Tool",n.tools)},x=s("output",{class:"tsj-figure"}),B=g("torque_nm","Torque",x),P=s("output",{class:"tsj-figure"}),
v=g("engagement_mm","Thread that meets",P),y=z({model:t,el:e},{kind:"rig"});y.show(s("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),y.alert,r,o,s("div",{class:"tsj-bench"},f,a),l);let $=(d,w,C,k,M,D)=>{St(d,{min:w,max:C,
step:k}),i===null&&(d.value=String(M)),d.setAttribute("aria-valuetext",D)};function m(){let d=t.get("view");if(i!==null&&
d.turn!==i)return;i=null,c!==null&&p();let{chosen:w}=d;r.textContent=d.finding,o.innerHTML=d.band,a.innerHTML=d.section,
l.replaceChildren(...Mt(d.facts));for(let[C,k]of Object.entries(L))k.value=w[C];$(B,1,d.topTorque,.5,w.torque_nm,d.torqueText),
x.textContent=d.torqueText,$(v,d.lowEngagement,d.topEngagement,.5,w.engagement_mm,d.engagementText),P.textContent=d.engagementText}
return y.follow("change:view",m),m(),y.close}function Kt(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function he(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var fe=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function xs(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let l=Kt(e,
n),i=l.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let u=e.map(([h])=>h),p=t==="ArrowLeft"?-1:1,f=Kt(e,u[(u.
indexOf(n)+p+u.length)%u.length]);return f.find(a)??f[0]}if(t==="ArrowDown")return l[Math.min(i+1,l.length-1)];if(t==="A\
rrowUp")return l[Math.max(i-1,0)];if(t==="Home")return l[0];if(t==="End")return l.at(-1);if(t.length!==1||t===" ")return;
let c=t.toLowerCase();return fe(l,i).find(u=>o[u].toLowerCase().startsWith(c))}function $s({stages:t,stage:e,step:n,isOpen:r}){
let o=Kt(t,e),a=t.flatMap(([,,i])=>i),l=a.indexOf(String(o.at(-1)));return fe(o,o.indexOf(String(n))).find(r)??fe(a,l).find(
r)}function Ss({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>mt()},
...ct(n.stages.map(([T,K])=>[T,K]))),l=et(n.marked?"Next open step":"Next ready step",()=>S("next"));l.classList.add("ts\
-next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this sta\
ge",onkeydown:T=>A(T)}),c=s("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the s\
tage, Enter takes a step in hand; Enter again does it."),u=s("div",{class:"ts-hand",role:"group","aria-label":"Step in h\
and",onkeydown:T=>{T.key!=="Enter"||!T.target.matches("input[type=radio], .ts-number-box")||(T.preventDefault(),t.get("h\
and").stands?U():st())}}),p=s("div",{class:"ts-scroll ts-fit"}),f=s("dl",{class:"ts-facts"}),h=s("ul",{class:"ts-sentenc\
es"}),b=s("p",{class:"ts-prompt"},"Wrong so far"),g=s("select",{class:"ts-box ts-before","aria-label":"A step that stand\
s"}),L=et("Take out again",()=>{g.value&&d({type:"out",step:g.value},"hand")}),x=et("Put the tools down",()=>d({type:"ov\
er"},"told"));x.classList.add("ts-over");let B=s("div",{}),P=s("p",{class:"ts-status"}),v=s("details",{ontoggle:()=>{v.open!==
!!t.get("view").record&&d({type:"record",open:v.open})}},s("summary",{},"Build record"),B),y=z({model:t,el:e},{kind:"rig"});
y.show(s("p",{class:"ts-who"},n.who),y.alert,r,P,o,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"\
ts-tools"},a,l),i,c),u),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},g,L),x),p,f,b,h,v);let $=0,m=null;function d(T,K=null){
$+=1,m=K&&{turn:$,focus:K},e.setAttribute("aria-busy","true"),y.send({...T,turn:$})}let w="",C=null,k="next",M=T=>!t.get(
"view").done.includes(T),D=()=>lt(i,"[data-step]"),H=T=>D().find(K=>K.dataset.step===T)?.focus(),N=()=>({stages:n.stages,
stage:a.value,step:C,isOpen:M});function S(T,K){k=T,d(T==="list"?{type:"take",step:K}:{type:"next"},"hand")}function O(T){
a.value=he(n.stages,T)??a.value,C=T,mt(),H(T)}function A(T){if(vt(T))return;let K=xs(T.key,{...N(),labels:n.labels});K&&
(T.preventDefault(),O(K))}function R(){let T=$s(N());T?k==="next"?l.focus():O(T):x.focus()}function U(){let T=t.get("vie\
w").done.length>=Object.keys(n.labels).length;k==="next"&&!T?S("next"):R()}function G(T){let{done:K,ready:nt}=t.get("vie\
w");return K.includes(T)?{sign:"✓",word:"done"}:nt.includes(T)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"op\
en":"waits"}}function mt(){let T=Kt(n.stages,a.value);(C===null||!T.includes(C))&&(C=T.find(M)??T[0]);let K=t.get("hand").
step,nt=JSON.stringify([a.value,T.map(G),K]);if(nt===w){for(let pt of D())pt.tabIndex=pt.dataset.step===C?0:-1;return}w=
nt;let it=D().find(pt=>pt===document.activeElement)?.dataset.step;i.replaceChildren(...T.map(pt=>tt(pt,K))),it&&H(it)}function tt(T,K){
let{sign:nt,word:it}=G(T);return s("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${it}`,"data-step":T,
tabindex:T===C?"0":"-1","aria-current":T===K?"step":!1,"aria-label":`${n.labels[T]}: ${it}`,onclick:()=>{C=T,S("list",T)}},
Nt(nt),n.labels[T])}let _="",q=new Map;function W(T){let K=Wt(T),nt=s("p",{class:"ts-read",id:K.read,role:"status"}),it=0,
pt=j=>{d({type:"set",name:T.name,value:j}),it=$},ft=Ht(T).make(T,K,pt,()=>{}),E=Ut(T,K,null);return E.append(ft.element,
nt),E.dataset.field=T.name,{element:E,flush:()=>ft.flush?.(),show(j={},Y){if(Y<it)return;ft.show(j);let at=j.read?`read \
as ${j.read}`:"";nt.textContent=j.error?`▲ Look again: ${j.error}`:at}}}let rt=T=>s("dl",{class:"ts-facts"},...Mt(T));
function X(){let T=t.get("hand"),K=JSON.stringify(T);if(K===_)return;if(_=K,u.dataset.stands=String(!!T.stands),q=new Map(
(T.fields??[]).map(ft=>[ft.name,W(ft)])),!T.step){u.replaceChildren(s("p",{class:"ts-hint"},"No step in hand. Choose one\
 from the list, or press the button above it."));return}let nt=et(`Do it: ${T.label}`,st);nt.classList.add("ts-do");let it=T.
stands?[et("Go on",U),et("Take it out again",()=>d({type:"out",step:T.step},"hand"))]:[nt];u.replaceChildren(s("p",{class:"\
ts-prompt ts-hand-name",tabindex:"-1"},T.label),...T.plain.map(ft=>s("p",{class:"ts-hint"},ft)),...T.cautions.map(ft=>s(
"p",{class:"ts-caution"},s("b",{},"Take care: "),ft)),...T.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),rt(
T.read)]:[],...T.card.length?[rt(T.card)]:[],...[...q.values()].map(ft=>ft.element),s("div",{class:"ts-tools"},...it));let pt=he(
n.stages,T.step);pt&&([a.value,C]=[pt,T.step])}function st(){for(let T of q.values())T.flush();d({type:"do"},"after")}function wt(){
let T=t.get("view").asked_back,K=lt(u,"[data-field]").find(pt=>pt.dataset.field===T),nt=K&&lt(K,"input:not(:disabled), s\
elect, button"),it=lt(u,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");
return nt?.[0]??it[0]}function kt(){let T=t.get("view"),K=T.told;r.textContent=T.finding,P.textContent=T.status,P.hidden=
!T.status,o.textContent!==K.join("")&&o.replaceChildren(...K.map(it=>s("p",{},it))),X(),mt();for(let[it,pt]of q)pt.show(
T.states[it],T.turn);if(p.dataset.shown!==T.figure&&(p.innerHTML=T.figure,p.dataset.shown=T.figure),f.replaceChildren(...Mt(
T.facts)),h.replaceChildren(...It(T.faults.map(([,it])=>it))),b.hidden=h.hidden=!T.faults.length,Ct(T.done),B.innerHTML=
T.record,v.open=!!T.record,e.setAttribute("aria-busy",String(T.turn<$)),!m||T.turn<m.turn)return;let{focus:nt}=m;m=null,
nt==="told"?o.focus():nt==="after"&&!t.get("hand").step?R():(wt()??l).focus()}function Ct(T){if(g.disabled=L.disabled=!T.
length,g.dataset.done===T.join(" "))return;g.dataset.done=T.join(" ");let K=[...T].reverse();g.replaceChildren(...ct(K.map(
nt=>[nt,n.labels[nt]])))}return y.follow("change:view",kt),kt(),y.close}function bn(t){let e=I("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=V(r,
o,r,o,"tsi-adapter"),l=I("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=V(r,o+74,r,o+74,"tsi-arm"),c=Z(r,o+94,"");return e.
append(V(r,o,r+440,o,"tsi-lever"),a,l,I("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),Z(r+440,o-20,"hand, middle of the grip",
"end"),Z(r+20,o-20,"square drive","start"),V(r+440,o+10,r+440,o+84,"tsg-centre"),i,c,Z(8,242,"lengths to scale","start")),
{node:e,set(u){let p=u.state.angle/180*Math.PI,f=r-u.state.reach*n*Math.cos(p),h=o-u.state.reach*n*Math.sin(p);St(a,{x2:f,
y2:h}),St(l,{cx:f,cy:h}),St(i,{x1:f,x2:r+440}),St(c,{x:(f+r+440)/2}),c.textContent="the lever from bolt to hand, along t\
he wrench",e.setAttribute("aria-label",`${t.name}. ${u.words}`)}}}function Ls(t){return Lt(t,(e,n,r)=>{let o=bn(e),a=(i,c,u,p,f,h)=>ut(
i,{min:u,max:p,step:f,value:r[c],words:b=>`${b} ${h}`,onInput:b=>n({[c]:b})}),l={setting:a("Setting","setting",e.low,e.high,
e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("Angle of the adapter","angl\
e",0,180,5,"° off straight")};return{picture:o.node,controls:Object.values(l).map(i=>i.row),set(i,c){o.set(i);for(let[u,
p]of Object.entries(l))p.set(c[u])}}})}function ge(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=l=>String(l).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var vn="twoshaft-unsent:";function Cs(t,e){let n=vn+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,l,i,c=new Date)=>o({...r(),[a]:{value:l,
base:i,at:c.toISOString()}}),drop(a){let{[a]:l,...i}=r();l&&o(i)}}}function Ms(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var Bt=null,kn="input, button, select, textarea, summary, a, [tabindex]",As=t=>[...t.querySelectorAll(kn)];function Es(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?Bt={form:e,at:As(t).indexOf(a),from:null}:Bt?.form===e&&t.
isConnected&&(Bt=null))},r=({target:a})=>{Bt?.form===e&&a instanceof HTMLInputElement&&(Bt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(Bt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:l}=Bt,i=As(t)[a];i?.focus({preventScroll:!0}),
l!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(l,l)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}function Os(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let l=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),c=F("Use these figures",()=>h("yes")),u=F(
"Go back to the drawn figures",()=>h("no")),p=!1,f=a.map(g=>{let L=Q("bench"),x=g.options.length?s("select",{class:"ts-b\
ox",id:L,"aria-describedby":`${L}-read`},s("option",{value:""},"choose"),...ct(g.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:L,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${L}-hint ${L}-read`}),
B=s("span",{class:"ts-hint",id:`${L}-hint`},g.hint),P=s("p",{class:"ts-read",id:`${L}-read`}),v=g.text,y=()=>{x.value.trim()!==
v.trim()&&(v=x.value,e({type:"bench",name:g.name,value:x.value}))};return x.addEventListener(g.options.length?"change":"\
blur",y),x.addEventListener("keydown",$=>{$.key==="Enter"&&($.preventDefault(),y())}),{name:g.name,flush:y,input:x,element:s(
"div",{class:"ts-bench-row"},s("label",{for:L},g.prompt),s("div",{class:"ts-line-of"},x,B),P),show($){if(!$)return;(document.
activeElement!==x||x.value===v)&&(x.value=$.text,v=$.text),x.setAttribute("aria-invalid",String(!!$.error)),P.classList.
toggle("ts-error",!!$.error);let m=$.error?[Nt("▲")," "]:[],d=$.read&&!$.options.length&&`read as ${$.read}`,w=$.error||
[d,$.origin].filter(Boolean).join(", ");P.replaceChildren(...m,w)}}}),h=g=>{for(let L of f)L.flush();p=!0,e({type:"bench",
name:"in-use",value:g})};o.append(s("summary",{},l),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),s("div",{class:"ts-bench-rows"},...f.map(g=>g.element)),i,s("div",{class:"ts-tools"},c,u));function b(){
let g=r(),L=new Map(g.rows?.map(v=>[v.name,v]));for(let v of f)v.show(L.get(v.name));l.textContent=g.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",u.hidden=!g.wanted,c.hidden=g.used&&!g.stale;let x=g.wanted&&
!g.used?"▲ ":g.used?"● ":"○ ",B=g.used?"in use":g.wanted?`not used; the drawn figures stand. ${g.refused}`:"not us\
ed; the drawn figures stand",P=g.stale?` The tables and choices of this task are still the ones from before. ${g.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${x}${B}${P}`,g.wanted&&
!g.used&&(o.open=!0)}return{element:o,show:b,hear(g){g.type!=="bench-saved"||g.name!=="in-use"||!p||(p=!1,r().stale&&n())},
lost(){for(let g of[c,u,...f.map(L=>L.input)])g.disabled=!0}}}var yn=5e3,xn=2e3,$n={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},me="kept in this browser until it can be\
 saved";function Sn(t,e,n,r){let o=Ht(t),a=Wt(t),l=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),c=0,u=null,p={},f=()=>{clearTimeout(u??void 0),u=null},h=v=>{n.put(t.name,v,p.revision??0),b(v)},b=v=>{c+=
1,x("wait",r()?me:"saving"),f(),u=window.setTimeout(()=>x("wait",me),yn),e({type:"save",name:t.name,value:v,turn:c})},g=o.
make(t,a,h,(v,y)=>{v?(n.put(t.name,y,p.revision??0),x("wait","not saved yet: press Enter or leave the box")):u===null&&(n.
drop(t.name),B(p))}),L=Ut(t,a,a.status);o.status==="above"?L.append(i,g.element,l):L.append(g.element,l,i);function x(v,y){
i.className=`ts-status ts-status-${v}`,i.dataset.text!==y&&(i.dataset.text=y,i.replaceChildren(Nt($n[v]),` ${y}`))}function B(v,y=!1){
if(p=v??{},g.show(p),l.replaceChildren(p.read?`read as ${p.read}`:""),!y)if(p.error){let{error:$,saved:m="",note:d}=p;x(
"unread",`Look again: ${$} Kept as typed, ${ge(m)}${d?`; ${d}`:""}.`)}else p.saved&&!p.blank?x("saved",`saved ${ge(p.saved)}${p.
note?`; ${p.note}`:""}`):x("none",o.blank??"not answered yet")}let P=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:L,show(v){u===null&&B(v,P())},saved(v){v.turn===c&&(g.pending?.()||n.drop(t.name),f(),B(v.state))},refused(v){
v.turn===c&&(f(),g.refused(),x("bad",`not saved: ${v.reason}`))},off(){clearTimeout(u??void 0),(u!==null||g.pending?.())&&
x("wait",me)},catchUp(){let v=n.get(t.name);v&&(Ms(v,p)?(g.show({...p,value:v.value,error:""}),b(v.value)):n.drop(t.name))},
flush:()=>g.flush?.(),summary:()=>({answered:!!p.saved&&!p.blank&&!p.error&&!p.short,unread:!!p.error,trouble:P(),waiting:u!==
null})}}function Ts({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=Cs(window.localStorage,r),a=!1,l=()=>a||f.isLost(),
i=n.map(y=>Sn(y,b,o,l)),c=new Map(i.map(y=>[y.name,y])),u=s("p",{class:"ts-who"}),p=s("p",{class:"ts-total"}),f=z({model:t,
el:e},{kind:"form",lost(){for(let y of i)y.off();h.lost(),g()},line(y){a=y;for(let $ of i)y?$.off():$.catchUp();g()}}),h=Os(
t,f.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});f.show(s("div",{class:"ts-top"},u,p),f.
alert,h.element,...i.map(y=>y.element));function b(y){f.send(y),g()}function g(){let y=i.map(M=>M.summary()),$=y.filter(
M=>M.answered).length,m=y.filter(M=>M.trouble).length,d=y.some(M=>M.waiting),w=y.filter(M=>M.unread).length,C=m?`${m} no\
t saved`:d?l()?"the rest kept in this browser":"saving":$&&!w?"all saved":"",k=[`${$} of ${i.length} answered`,w?`${w} c\
annot be read`:"",C];p.textContent=k.filter(Boolean).join(", ")}function L(){u.textContent=t.get("header");let y=t.get("\
states");for(let $ of i)$.show(y[$.name]);g()}let x=0,B=()=>{if(document.visibilityState==="hidden")for(let y of i)y.flush();
document.visibilityState!=="visible"||Date.now()-x<xn||(x=Date.now(),f.send({type:"look"}))},P=r?new BroadcastChannel(`t\
woshaft-saved:${r}`):null;P?.addEventListener("message",({data:y})=>{y===t.get("task_id")&&f.send({type:"look"})}),document.
addEventListener("visibilitychange",B),e.addEventListener("focusin",y=>{y.relatedTarget instanceof Node&&e.contains(y.relatedTarget)||
B()}),f.follow("change:states change:header",L),f.follow("msg:custom",y=>{y.type==="saved"&&(c.get(y.name)?.saved(y),P?.
postMessage(t.get("task_id"))),y.type==="refused"&&c.get(y.name)?.refused(y),g()}),f.follow("msg:custom",h.hear),f.follow(
"change:bench",h.show),L();for(let y of i)y.catchUp();g(),h.show(),f.alert.textContent=t.get("notice");let v=Es(e,`${r}/${t.
get("task_id")}`);return()=>{v(),P?.close(),f.close(),document.removeEventListener("visibilitychange",B)}}function Ns(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:l},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:l,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var Ln={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},Cn={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"};function Ds(t,e){let n=document.
getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||"/"}catch{}return`${r}${t}/${e.
split("/").map(encodeURIComponent).join("/")}`}var ne=(t,e,n)=>s("a",{href:Ds("lab/tree",t),target:"_blank","data-twosha\
ft-open":t,"data-key":n,class:"ts-link"},e);function Is(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:r,
unread:o})=>s("li",{},`${e}: `,n===r?"nothing answered":n?`${n} of ${r} missing`:"",...o.map(([a,l])=>s("span",{},s("b",
{},"cannot be read: "),`“${a}” ${l}`)))))}function Bs({model:t,el:e}){let n="",r=Ns(sessionStorage,localStorage,t.get(
"place")),o=z({model:t,el:e},{kind:"start",lost:()=>{}}),a=s("div",{}),l=s("p",{class:"ts-said",role:"status"});o.show(o.
alert,l,a);let i=(N,S={})=>{a.getAttribute("aria-busy")==="true"||o.isLost()||(S.quietly||(a.setAttribute("aria-busy","t\
rue"),l.textContent="One moment.",o.alert.textContent=""),t.send({type:N,...S}))},c=(N,S,O,A)=>s("button",{type:"button",
class:A?"ts-button ts-first":"ts-button","data-key":S,onclick:O},N);function u(){let N=Q("who"),S=Q("word"),O=s("select",
{id:N,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.get("people").map(([R,
U])=>s("option",{value:R,selected:R===n},U)));O.addEventListener("change",()=>{n=O.value});let A=s("input",{id:S,type:"t\
ext",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data-key":"word"});return s(
"form",{class:"ts-sign-in",onsubmit:R=>{R.preventDefault(),i("sign-in",{name:O.value,word:A.value})}},s("h2",{},"Who is \
working?"),s("div",{class:"ts-pair"},s("label",{for:N},"Your name"),O),s("div",{class:"ts-pair"},s("label",{for:S},"Sign\
-in word from your slip"),A),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},"Sign in"),s("p",
{class:"ts-hint"},t.get("kept")))}function p(N,S){let O=tt=>`${tt}:${N.name}`,A=s("div",{class:"ts-doing"});for(let tt of N.
feedback.slice(0,1))A.append(s("a",{href:Ds("files",tt),target:"_blank",class:"ts-link","data-key":O("feedback")},"Read \
feedback"));for(let tt of N.notebooks){let _=N.notebooks.length===1?"Open":`Open ${tt.split("/").pop()}`;A.append(ne(tt,
_,O(`open ${tt}`)))}N.can_get&&A.append(c(N.notebooks.length?"Get again":"Get",O("get"),()=>i("get",{name:N.name}),!N.notebooks.
length)),N.can_hand_in&&A.append(c(N.receipt?"Hand in again":"Hand in",O("hand in"),()=>i("hand-in",{name:N.name})));for(let tt of A.
children)tt.setAttribute("aria-label",`${tt.textContent}: ${N.title}`);let R=t.get("asking")===N.name,U=N.receipt||N.unread>
0,G=s("tr",{},s("th",{scope:"row"},N.title),s("td",{},N.due||"no date",N.overdue?s("span",{class:"ts-small-line"},"date \
passed"):null),s("td",{},s("span",{class:"ts-shape","aria-hidden":"true"},Ln[N.state]||""),s("b",{},Cn[N.state]||N.state),
s("span",{class:"ts-small-line"},N.detail),S?s("span",{class:"ts-small-line"},`Mark: ${S}`):null),s("td",{},A));if(R)return[
G,s("tr",{},s("td",{colspan:4},h(N)))];if(!U||!N.gaps.length)return[G];let mt=s("td",{colspan:4},s("b",{},f(N)),Is(N.gaps));
return[G,s("tr",{},mt)]}let f=({left:N,unread:S})=>Pt([N?`${N} ${N===1?"answer is":"answers are"} missing`:null,S?`${S} \
cannot be read`:null]).join(", ");function h(N){let S=Q("question"),O=s("div",{class:"ts-doing"});for(let A of N.notebooks)
O.append(ne(A,"Go on with it",`go on:${N.name}`));return O.append(c("Hand in as it is",`hand in anyway:${N.name}`,()=>i(
"hand-in",{name:N.name,anyway:!0}))),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":S,"data-key":"\
question"},s("p",{id:S},s("b",{},`${N.title}: not handed in yet. ${f(N)}.`)," An answer that is missing or cannot be rea\
d earns nothing."),Is(N.gaps),O)}let b=new Set,g={met:"✓",enough:"◐","not yet":"○"};function L(N,S){let O=N.entries.
map(G=>S.find(mt=>mt.name===G)).filter(G=>G!==void 0),A=N.lesson?ne(N.lesson,`Lesson ${N.title}`,`lesson:${N.lesson}`):s(
"span",{class:"ts-small-line"},"no lesson here"),R=s("details",{open:b.has(N.module)},s("summary",{"data-key":`outcomes:${N.
module}`},`Outcomes: ${N.count||"none"}`),s("ul",{},...N.outcomes.map(([G,mt,tt,_])=>s("li",{},s("span",{class:"ts-shape",
"aria-hidden":"true"},g[G]||""),s("b",{},`${G}${tt&&G==="enough"?`, ${tt}`:""}: `),mt,tt&&G==="not yet"?`. Still missing\
: ${tt}`:"",_?` (${_})`:""))));R.addEventListener("toggle",()=>{R.open?b.add(N.module):b.delete(N.module)});let U=O.flatMap(
G=>p(G,N.marks[G.name]));return s("tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},N.title,s("s\
pan",{class:"ts-assigned"},O.length?"assigned":"not assigned"))),...U,s("tr",{},s("td",{colspan:4},A,s("p",{class:"ts-ne\
xt"},s("b",{},"Next: "),N.next),R)))}function x(){let N=t.get("me"),S=t.get("entries"),O=s("table",{class:"ts-table"},s(
"thead",{},s("tr",{},...["Assignment","Due","State","What you can do"].map(A=>s("th",{scope:"col"},A)))),...t.get("modul\
es").map(A=>L(A,S)));return s("section",{},s("div",{class:"ts-me"},s("h2",{},`Working as ${N.name} (${N.id})`),c("Not yo\
u? Sign out","sign-out",()=>{i("sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))})),S.length?null:
s("p",{},"Nothing is assigned yet."),O,c("Look again","look",()=>i("look")))}function B(){let N=!!t.get("me").id,S=t.get(
"modules").map(R=>R.lesson),A=t.get("lessons").filter(([R])=>!N||!S.includes(R));return A.length?s("section",{},s("h2",{},
N?"To look things up":"Lessons"),s("ul",{class:"ts-lessons"},...A.map(([R,U])=>s("li",{},ne(R,U,`lesson:${R}`))))):null}
let P=!1,v=t.get("me").id?null:r.get(),y=v!==null;function $(){let N=t.get("me");N.id?r.keep(N):(P||v&&!y)&&r.drop(),P=!!N.
id}let m=0,d="",w=()=>lt(a,"[data-key]"),C=()=>a.querySelector("input[data-key=word]");function k(){let S=w().find(W=>W===
document.activeElement)?.dataset.key;a.removeAttribute("aria-busy");let O=!!t.get("me").id;l.textContent=t.get("said"),o.
alert.textContent=t.get("trouble");let A=C()?.value,R=y?s("p",{},"One moment."):u();a.replaceChildren(...Pt([O?x():R,B()]));
let U=C();U&&A&&(U.value=A);let G=d;if(d=t.get("asking"),d&&d!==G&&w().find(W=>W.dataset.key==="question")?.focus(),!S||
d&&d!==G)return;let mt=w().find(W=>W.dataset.key===S),tt=S.split(":")[1],_=S.startsWith("hand in anyway")?`hand in:${tt}`:
`:${tt}`,q=w().find(W=>tt&&W.dataset.key?.endsWith(_));(mt??q??lt(a,"a, button, select")[0])?.focus()}let M=()=>{clearTimeout(
m),m=setTimeout(()=>{y=!1,$(),k()},0)};t.on("change",M),$(),k(),v&&t.send({type:"resume",name:v.id,ticket:v.ticket});let D=()=>{
!document.hidden&&t.get("me").id&&i("look",{quietly:!0})},H=new IntersectionObserver(([N])=>{N.isIntersecting&&D()});return H.
observe(e),document.addEventListener("visibilitychange",D),()=>{clearTimeout(m),t.off("change",M),H.disconnect(),document.
removeEventListener("visibilitychange",D),o.close()}}var Mn={bench:ze,build:Xe,cord:Ze,depth:Qe,face:ts,fault_board:ss,form:Ts,gate:ns,gears:os,hazards:rs,lifting:as,micrometer:is,
own_checks:ls,press:cs,rules:ds,runout:us,sealant:bs,seat:vs,shims:ks,start:Bs,thread:ys,whole_build:Ss,wrench:Ls};export{Mn as screens};
