var Ys="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...Rt(n)),r}function P(t,e={},...n){let r=document.createElementNS(Ys,t);return At(r,e),r.append(...n),
r}function At(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function q(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function $t(t,e){return s("select",{class:"ts-box",...t},...ct(
e))}function St(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function Ot(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Rt(t){return t.filter(e=>e!=null&&e!==!1)}var Ee=0;function et(t){return Ee+=1,`two\
shaft-${t}-${Ee}-${Math.random().toString(36).slice(2,7)}`}function Tt(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function Z(t,e){return[...t.querySelectorAll(e)]}function bt(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function ht(t){return t.ctrlKey||t.metaKey||t.altKey}function Wt(t){let e=Z(t,"button, input, \
select");for(let n of e)n.disabled=!0}function Oe(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function zt(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function J(t,e,n=t){return q(t,e,{"aria-label":n})}
function ct(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function It(t){return t.map(e=>s("li",{},e))}var de=new Map;function ut(t,e){if(de.has(t))throw new Error(`the answer kind ${t} is registered twice`);de.set(t,e)}function Bt(t){
let e=de.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function jt(t){let e=et(
t.kind);return{control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function Ht(t,e,n){let{prompt:r}=Bt(
t),o={class:"ts-prompt"};if(r==="legend")return s("fieldset",{class:"ts-field","aria-describedby":n},s("legend",o,t.prompt));
let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s("div",{class:"ts-field"},a)}function Gt(t,e,n,r){let a=t.options.map(([c,i])=>{let l={"aria-describedby":e.status},d=s("input",{type:n,name:e.control,
value:c,...l});return{key:c,input:d,row:s("label",{class:"ts-option"},d,s("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:l,input:d}of a)d.checked=i.includes(l)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}ut("choice",{prompt:"legend",make:(t,e,n)=>Gt(t,e,"radio",r=>n(r[0]))});ut("choices",{prompt:"legend",make:(t,e,n)=>Gt(t,e,"checkbox",n)});function Yt(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function Xt(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}ut("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([c,i],l)=>{let d=s("span",{class:"ts-each-line",
id:`${e.control}-${l}`},i),u=$t({"aria-labelledby":d.id,"aria-describedby":e.status},[["","choose"],...o]);return{key:c,
box:u,row:s("li",{},d,u)}});for(let{box:c}of a)c.addEventListener("change",()=>{n(Yt(a.map(({key:i,box:l})=>[i,l.value])))});
return{element:s("ol",{class:"ts-each"},...a.map(({row:c})=>c)),show(c){let i=Xt(c.value);for(let{key:l,box:d}of a)d.value=
i.get(l)??""},setDisabled(c){for(let{box:i}of a)i.disabled=c},refused(){}}}});function ue(t){let[e="",...n]=t.split(" "),r=e==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:e,size:r,
side:o,place:a[0],points:null};let c=a.map(i=>{let[l,d]=i.split(",").map(Number);return[l,d]});return{hand:e,size:r,side:o,
place:"",points:c}}function pe(t,{side:e,place:n,points:r}){return r||(e==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[e]??[])}function fe(t,e){let{hand:n,size:r,side:o,place:a}=ue(e),c=[...t.stretches,...t.
holes].find(l=>l.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[o]??""}`}
function he(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function Te(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function Ne(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function Ie(t,[e,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-e,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var Xs=.4;function De(t,e){let n=Xs,r=Vt(t,n);for(;r.
length>e;)n*=1.5,r=Vt(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function Vt(t,e){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=Vs(n,r,t[c]);i>o&&([o,a]=[i,c])}return o<=
e?[n,r]:[...Vt(t.slice(0,a+1),e).slice(0,-1),...Vt(t.slice(a),e)]}function Vs(t,e,n){let[r,o]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var Jt=14,Js=3,Zs=.5,Qs=["middle","inside","outside"],Zt="round ";function tn(t,e){let n=t.outline.map(([H])=>H),r=t.outline.
map(([,H])=>H),[o,a]=[Math.min(...n)-Jt,Math.max(...n)+Jt],[c,i]=[Math.min(...r)-Jt,Math.max(...r)+Jt],l=a-o,d=i-c,u=([H,
F])=>`${(H-o).toFixed(1)} ${(i-F).toFixed(1)}`,p=(H,F)=>`M${H.map(u).join("L")}${F?"Z":""}`,h=et("face"),w=l/100,g=2*w,v=(H,F)=>P(
"pattern",{id:`${h}-${H}`,width:g,height:g,patternUnits:"userSpaceOnUse"},P("path",{d:F,class:"tsp-hatch","stroke-width":w/
4})),x=P("defs",{},v("oil",`M0 ${g}L${g} 0`),v("dirt",`M0 ${g}L${g} 0M0 0L${g} ${g}`)),O=t.cavities.map(([,H])=>p(H,!0)).
join(""),D=t.islands.map(H=>p(H,!0)).join(""),$=p(t.outline,!0)+O,S=P("g"),L=P("g"),b=P("g"),f=P("g"),m=P("path",{class:"\
tsp-live",d:""}),k=P("path",{class:"tsp-chosen",d:""}),y=P("path",{class:"tsp-land",d:$,"fill-rule":"evenodd"}),C=P("pat\
h",{class:"tsp-edge",d:$+D,"stroke-width":w/2.5}),E=([H,F],U,at="middle")=>{let X={x:H-o,y:i-F,"font-size":2.1*w,"text-a\
nchor":at};return P("text",{class:"tsp-text",...X},U)},_=[(o+a)/2,(c+i)/2],M=(H,F)=>{let U=zt(H,_)||1;return[H[0]+F*(_[0]-
H[0])/U,H[1]+F*(_[1]-H[1])/U]};for(let{x:H,y:F,d:U,leads:at,name:X}of t.holes){let nt={cx:H-o,cy:i-F,"stroke-width":w/4},
yt=at==="blind"?"tsp-hole tsp-blind":"tsp-hole";b.append(P("circle",{...nt,r:U/2,class:yt})),at==="to the outside"&&b.append(
P("circle",{...nt,r:U/3,class:"tsp-hole"}));let[xt,Et]=M([H,F],-(U/2+4.4*w));b.append(E([xt,Et-.8*w],X.replace("bolt ","")))}
for(let H of t.guides){let[F,U]=[H.x-o,i-H.y],at=`M${F-w} ${U}h${g}M${F} ${U-w}v${g}`;b.append(P("path",{class:"tsp-guid\
e",d:at,"stroke-width":w/2}));let X={"stroke-width":w/5,"stroke-dasharray":`${w} ${w}`};b.append(P("circle",{cx:F,cy:U,r:H.
reach,class:"tsp-reach",...X}));let nt=M([H.x,H.y],H.reach+g),yt=(nt[0]-H.x)/(H.reach+g);b.append(E(nt,H.name,yt>.5?"sta\
rt":yt<-.5?"end":"middle"))}for(let{word:H,points:F,width:U}of t.spots){let[at]=H.split(" "),[X,nt]=[F[0],F[F.length-1]],
yt=zt(X,nt)||1,[xt,Et]=[-(nt[1]-X[1])/yt*U/2,(nt[0]-X[0])/yt*U/2],B=[[X[0]+xt,X[1]+Et],[nt[0]+xt,nt[1]+Et],[nt[0]-xt,nt[1]-
Et],[X[0]-xt,X[1]-Et]],K=`url(#${h}-${at})`;S.append(P("path",{d:p(B,!0),fill:K,class:"tsp-spot","stroke-width":w/4}));let ot=E(
M([(X[0]+nt[0])/2,(X[1]+nt[1])/2],9*w),at);ot.classList.add("tsp-spot-word"),b.append(ot)}let A=[100,50,20,10].find(H=>H<
l/4)??10,N=`M${w} ${d-w}v${-w}v${w/2}h${A}v${-w/2}v${w}`,T={x:A+g,y:d-w,"font-size":2.1*w};f.append(P("path",{class:"tsp\
-edge",d:N,"stroke-width":w/4}),P("text",{class:"tsp-text",...T},`${A} mm`));let j=`0 0 ${l.toFixed(1)} ${d.toFixed(1)}`,
z=P("svg",{viewBox:j,class:"tsp-face",role:"img","aria-label":e},x,y,S,L,C,b,k,m,f),G=`max-width: ${(25*l/d).toFixed(1)}\
rem`;return{frame:s("div",{class:"ts-pad-face",style:G},z),svg:z,over:f,live:m,chosen:k,land:y,path:p,unit:w,box:{left:o,
right:a,low:c,high:i,width:l,height:d},place({clientX:H,clientY:F}){let U=z.getBoundingClientRect(),at=Math.min(U.width/
l,U.height/d);return[o+(H-U.left-(U.width-at*l)/2)/at,i-(F-U.top-(U.height-at*d)/2)/at]},strokes(H){L.replaceChildren(...H.
map(st))}};function st(H){let F=ue(H),U=pe(t,F),at=he(t,F.hand,Math.max(F.size,w/2)),X=U.length>1?p(U,F.side==="round"):
U.length?`${p(U)}h0.01`:"",nt=P("path",{d:X,class:`tsp-stroke tsp-${F.hand}`,"stroke-width":at});if(F.hand!=="film")return nt;
let yt=Math.min(8,Math.max(.6,40*F.size)),xt={"stroke-width":w/3,"stroke-dasharray":`${yt} ${yt}`};return P("g",{},nt,P(
"path",{d:X,class:"tsp-grain",...xt}))}}function Qt({face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=tn(t,e),c=s("p",
{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"ts-read ts-pad-trouble",role:"status"}),l=(N,T)=>s("span",{class:"\
ts-pair"},s("label",{for:T.id},N),T),d=$t({id:et("hand")},Object.entries(t.hands)),u=s("input",{class:"ts-box ts-size",id:et(
"size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),p=s("label",{for:u.id},"thickness"),h=$t({id:et(
"place")},t.stretches.map(({id:N,name:T})=>[N,T]));h.append(s("optgroup",{label:"Round a hole"},...t.holes.map(({id:N,name:T})=>s(
"option",{value:`${Zt}${N}`},`round ${T}`))));let w=$t({id:et("side")},Qs.map(N=>[N,t.sides[N]])),g=q("Lay it here",()=>f(
[b(h.value)])),v=q("Lay it on every stretch",()=>f(t.stretches.map(({id:N})=>b(N)))),x=q("Take back the last pass",()=>{
$&&r($-1,!0)}),O=q("Clear the face",o),D={film:"",bead:""},$=0,S=!1;function L(){if(d.value==="wipe")return"";let[N,T]=t.
sizes[d.value],j=Te(u.value);if(j>=N&&j<=T)return u.removeAttribute("aria-invalid"),` ${Number(j.toFixed(3))}`;let z=d.value===
"film"?"the thickness of the film":"the diameter of the bead";return i.textContent=u.value.trim()?`Read “${u.value}”: \
give ${z} from ${N} to ${T} mm.`:`First give ${z} in mm.`,u.setAttribute("aria-invalid","true"),u.focus(),null}function b(N){
let T=L();if(T===null)return null;let j=N.startsWith(Zt)?N:`${w.value} ${N}`;return`${d.value}${T} ${j}`}function f(N){let T=N.
filter(j=>j!==null);if(!(S||T.length<N.length)){if($+T.length>t.most){i.textContent=`There is room for ${t.most} passes;\
 take some back first.`;return}i.textContent="",c.textContent=T.length===1?`Laid: ${fe(t,T[0])}`:`Laid on ${T.length} st\
retches`,n(T)}}function m(){let N=d.value==="wipe";p.textContent=d.value==="bead"?"diameter":"thickness",u.disabled=S||N,
u.value=N?"":D[d.value],u.placeholder=N?"":"mm",g.textContent=N?"Wipe here":"Lay it here",v.textContent=N?"Wipe every st\
retch":"Lay it on every stretch",i.textContent="",k()}function k(){let N=h.value.startsWith(Zt);w.disabled=S||N;let T=pe(
t,N?{side:"round",place:h.value.slice(Zt.length)}:{side:w.value,place:h.value});a.chosen.setAttribute("d",T.length?a.path(
T,N):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}d.addEventListener("change",m),u.addEventListener("input",
()=>{D[d.value]=u.value}),h.addEventListener("change",k),w.addEventListener("change",k),u.addEventListener("keydown",N=>{
N.key==="Enter"&&(N.preventDefault(),g.click())});let y=null;a.svg.addEventListener("pointerdown",N=>{if(S||N.button>0)return;
y=[a.place(N)],a.svg.setPointerCapture(N.pointerId);let T=Math.max(1,Number(D.bead.replace(",","."))||1);a.live.setAttribute(
"stroke-width",String(he(t,d.value,T)))}),a.svg.addEventListener("pointermove",N=>{if(!y)return;let T=a.place(N);zt(T,y[y.
length-1])<Zs||(y.push(T),a.live.setAttribute("d",a.path(y)))});let C=N=>{if(!y)return;let T=y;if(y=null,a.live.setAttribute(
"d",""),N.type==="pointercancel")return;if(Ne(T)<Js){h.value=Ie(t,T[0]),k();return}let j=L();if(j===null)return;let z=De(
T,t.points).map(G=>G.join(","));f([`${d.value}${j} at ${z.join(" ")}`])};a.svg.addEventListener("pointerup",C),a.svg.addEventListener(
"pointercancel",C);let E=s("ol",{class:"ts-passes","aria-label":"Passes, in the order they were done"}),_=s("p",{class:"\
ts-hint"},"Nothing is laid yet."),M=s("div",{class:"ts-pad-tools"},s("div",{class:"ts-tools"},l("tool",d),s("span",{class:"\
ts-pair"},p,u)),s("div",{class:"ts-tools"},l("where",h),l("runs",w)),s("div",{class:"ts-tools"},g,v,x,O),i,c),A=()=>Z(E,
"button");return m(),{drawing:a,tools:M,list:E,empty:_,frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,M,s("div",
{class:"ts-pad-list"},_,E)),show(N,T=[]){$=N.length,a.strokes(N),_.hidden=$>0;let j=A().findIndex(z=>z.matches(":focus"));
E.replaceChildren(...N.map((z,G)=>s("li",{},s("span",{},`${fe(t,z)}${T[G]?`, ${T[G]}`:""} `),q("take out",()=>r(G,!1),{class:"\
ts-button ts-remove",disabled:S,"aria-label":`Take out pass ${G+1}`})))),j>=0&&(A()[Math.min(j,$-1)]??g).focus()},setDisabled(N){
S=N;for(let T of[d,h,g,v,x,O,...A()])T.disabled=N;u.disabled=N||d.value==="wipe",k()}}}ut("film",{prompt:"words",make(t,e,n){let r=[],o=c=>{r=c,a.show(r),n(r)},a=Qt({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>o([...r,...c]),onRemove:c=>o(r.filter((i,l)=>l!==c)),onClear:()=>o([])});
return{element:a.element,show(c){r=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function Be(t,e){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${e}`.trim()}function Pe(t,{send:e,typing:n,said:r=o=>String(o??"")}){let o=s("input",{type:"text",class:"ts-box ts-number-box",id:t.
control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.hint} ${t.read} ${t.
status}`}),a="",c=()=>a===null||o.value.trim()!==a.trim(),i=()=>{c()&&(a=o.value,e(o.value))};return o.addEventListener(
"blur",i),o.addEventListener("keydown",l=>{let d=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!=="Enter"&&!d||
(l.preventDefault(),i())}),o.addEventListener("input",()=>n(c(),o.value)),{box:o,flush:i,pending:c,refused(){a=null},show(l){
o.setAttribute("aria-invalid",String(!!l.error)),!(document.activeElement===o&&o.value!==a)&&(a=r(l.value),o.value=a)}}}ut("number",{prompt:"label",make(t,e,n,r){let o=t.units,{box:a,flush:c,pending:i,refused:l,show:d}=Pe(e,{send:n,typing:r}),
u=s("span",{class:"ts-hint",id:e.hint},t.hint),p=$t({"aria-label":"Choose the unit"},[["","unit"],...o.map(h=>[h,h])]);return p.
addEventListener("change",()=>{p.value&&(a.value=Be(a.value,p.value),/\d/.test(a.value)?c():a.focus())}),a.addEventListener(
"input",()=>{p.value=""}),{element:s("div",{class:"ts-line-of"},a,o.length?p:null,u),show:d,setDisabled(h){a.disabled=p.
disabled=h},refused:l,flush:c,pending:i}}});function je(t,e){let r=[...new Set([t??[]].flat())].filter(o=>e.includes(String(o))).map(String);return[...r,...e.filter(
o=>!r.includes(o))]}var _t=(t,e)=>t.join(`
`)===e.join(`
`),Re=t=>`#${t.keys[0]}`,te=class{constructor(e,n){this.labels=new Map(e.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
r,,o]of e)o&&this.stages.set(r,o);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let n of this.order){let r=this.stages.get(n)??null,o=e.at(-1);o&&r!==null&&o.stage===r?o.keys.push(n):e.push({stage:r,
keys:[n]})}return e}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let e=[];for(let n of this.runs()){
let[r]=n.keys;if(n.keys.length<2){e.push({id:r,key:r,level:1});continue}if(e.push({id:Re(n),run:n,level:1}),!this.closed.
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
0?d:d-1],c=a(r);if(c===void 0)return this.insertedAt(r);let i=this.stages.get(c),l=i!==void 0&&(o||this.closed.has(i));do
r+=e;while(l&&a(r)!==void 0&&this.stages.get(a(r))===i);return this.insertedAt(r)}atPosition(e){return this.insertedAt(Math.
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
let r=e.run?e.run.stage:this.stages.get(e.key),o=e.run?e.run.keys[0]:e.key,a=this.runs().find(c=>c.keys.includes(o));return!r||
!a||a.keys.length<2?null:(n?this.closed.add(r):this.closed.delete(r),n&&(this.current=Re(a)),r)}sought(e){let n=this.rows(),
r=n.findIndex(c=>c.id===this.current),o=e.length>1?r:r+1,a=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...n.slice(o),...n.slice(0,o)].find(c=>a(c).startsWith(e))}};var en=12,sn=700,nn=5,He=32,on=8;function ee({label:t,steps:e,order:n,onChange:r}){let o=new te(e,n),{staged:a}=o,c=!1,i={},
l=!1,d=new Map,u=s("div",{"aria-live":"assertive",class:"ts-hidden"}),p=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),h=q("Up",()=>z(-1),{"aria-label":"Move the chosen step up"}),w=q("Down",
()=>z(1),{"aria-label":"Move the chosen step down"}),g=q("Undo",()=>o.undo()&&st("Undone")),v=q("Redo",()=>o.redo()&&st(
"Done again")),x=q("Choose several",()=>X(!c),{"aria-pressed":"false"}),O=q("Gather stages",()=>j(o.gathered(),"Steps of\
 one stage now stand together")),D=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:I=>{I.key==="Enter"&&G()}}),$=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),S=s("span",{class:"ts-chosen"}),L=q("Move",G,{"aria-label":"Move to this position"}),b=q(
"Move",vt,{"aria-label":"Move before this step"}),f=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},h,w,g,v,x,a?O:null),m=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",D,L),s("span",{class:"\
ts-pair"},"or before ",$,b)),k="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),y=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},k),m),C=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),f,S,p,y,u);function E(I){u.
textContent=I}function _(I=""){E(`${o.unitName()}${I}, ${o.where()}`)}function M(I){let R=d.get(I.id);if(R)return R;let Y=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Y.dataset.row=I.id,d.set(I.id,Y),Y}function A(I=!1){let R=o.settle(),
Y=new Set(R.map(V=>V.id));for(let[V,wt]of d)Y.has(V)||(wt.remove(),d.delete(V));let it=o.unit(),kt=new Set(it),rt=p.firstElementChild;
for(let V of R){let wt=M(V);wt===rt?rt=rt.nextElementSibling:p.insertBefore(wt,rt),N(wt,V,kt)}D.value=String(o.order.indexOf(
it[0])+1);let mt=[...o.order.entries()].filter(([,V])=>!kt.has(V));$.replaceChildren(...mt.map(([V,wt])=>s("option",{value:wt},
`${V+1}  ${o.label(wt)}`))),S.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,h.disabled=l||o.isFirst,w.disabled=l||
o.isLast,g.disabled=l||o.past.length===0,v.disabled=l||o.future.length===0;for(let V of[x,O,D,$,L,b])V.disabled=l;if(p.setAttribute(
"aria-disabled",String(l)),p.classList.toggle("ts-long",o.order.length>en),I){let V=d.get(o.current);V?.focus({preventScroll:!0}),
V?.scrollIntoView({block:"nearest"})}}function N(I,R,Y){let it=R.id===o.current,kt=R.run?!1:o.block.has(R.key),rt=o.held!==
null&&(R.run?it:Y.has(R.key)),mt=o.order.indexOf(R.run?R.run.keys[0]:R.key),V=R.run?R.run.keys.map(Ct=>i[Ct]?.length??0):
i[R.key],wt=R.run?o.closed.has(String(R.run.stage)):!1,$e=JSON.stringify([mt,R.level,it,kt,rt,V,R.run&&[R.run.keys.length,
wt]]);if(I.dataset.looks===$e)return;I.dataset.looks=$e,I.tabIndex=it?0:-1,I.setAttribute("aria-selected",String(kt)),I.
classList.toggle("ts-current",it),I.classList.toggle("ts-inblock",kt),I.classList.toggle("ts-held",rt),I.classList.toggle(
"ts-level2",R.level===2),a&&I.setAttribute("aria-level",String(R.level));let Se=rt?" picked up":kt?" in block":"",Le=Se?
s("span",{class:"ts-state"},Se):"",Ce=Ct=>s("span",{class:"ts-number","aria-hidden":"true"},Ct);if(R.run){let{keys:Ct,stage:zs}=R.
run;I.setAttribute("aria-expanded",String(!wt));let Me=wt?Ct.filter(Gs=>i[Gs]?.length).length:0;I.replaceChildren(Ce(`${mt+
1}–${mt+Ct.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},wt?"▸":"▾"),s("span",{class:"ts-what"},s("b",
{},zs),` ${Ct.length} steps`,Me?` – ${Me} with a remark`:"",Le));return}let Ae=(i[R.key]??[]).map(Ct=>s("span",{class:`\
ts-note ts-note-${Ct.kind}`},Ot(Ct.shape??""),s("b",{},Ct.word),` ${Ct.text}`)),Ws=a&&R.level===1;I.classList.toggle("ts\
-troubled",Ae.length>0),I.replaceChildren(Ce(String(mt+1)),s("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),s("spa\
n",{class:"ts-what"},o.label(R.key),Ws?s("span",{class:"ts-stage"},` ${o.stages.get(R.key)??""}`):"",Le,...Ae))}let T=()=>r(
[...o.order]);function j(I,R){if(!o.take(I)){E(`${o.unitName()} stays at ${o.where()}`);return}A(!0),R?E(R):_(),o.held===
null&&T()}function z(I){l||j(o.shifted(I))}function G(){if(l)return;let I=Number.parseInt(D.value,10),R=o.order.length;I>=
1&&I<=R?j(o.atPosition(I)):(E(`Type a position from 1 to ${R}`),S.textContent=`Type a position from 1 to ${R}.`)}function vt(){
!l&&$.value&&j(o.beside($.value,"before"))}function st(I){A(),E(`${I}. ${o.unitName()}, ${o.where()}`),T()}function H(){
o.pickUp(),A(!0),_(" picked up")}function F(){o.putDown()&&T(),A(!0),_(" put down")}function U(){o.putDown()&&T(),A()}function at(){
o.putBack(),A(!0),_(" put back")}function X(I){c=I,x.setAttribute("aria-pressed",String(I)),I||(o.block=new Set),A(),E(I?
"Choose the steps of a block":"Block let go")}function nt(I){o.toggleBlock(I);let R=o.block.has(I)?"in the block":"out o\
f the block";E(`${o.label(I)} ${R}, ${o.block.size} in it`)}function yt(I,R){let Y=o.fold(I,R);Y&&(A(!0),E(`${Y} ${R?"cl\
osed":"open"}`))}p.addEventListener("keydown",I=>{if(ht(I))return;let R=o.rows(),Y=R.findIndex(wt=>wt.id===o.current),it=wt=>{
o.current=R[Math.max(0,Math.min(R.length-1,wt))].id,A(!0)},kt=R[Y],{key:rt}=I,mt=rt==="ArrowUp"?-1:rt==="ArrowDown"?1:null,
V=o.held!==null;if(mt&&(I.shiftKey||V))z(mt);else if(mt)it(Y+mt);else if(V&&rt==="Escape")at();else if(rt===" ")l||(V?F:
H)();else if(V&&rt==="Enter")F();else if(rt==="Enter"&&!kt.run)l||(nt(kt.key),A(!0));else if(rt==="Home"&&!V)it(0);else if(rt===
"End"&&!V)it(R.length-1);else if(a&&rt==="ArrowLeft")yt(kt,!0);else if(a&&rt==="ArrowRight")yt(kt,!1);else if(rt.length===
1&&!V)B(rt);else return;I.preventDefault()});let xt="",Et;function B(I){xt+=I.toLowerCase(),clearTimeout(Et),Et=window.setTimeout(
()=>{xt=""},sn);let R=o.sought(xt);R&&(o.current=R.id,A(!0))}p.addEventListener("focusout",({relatedTarget:I})=>{o.held!==
null&&I instanceof Node&&!p.contains(I)&&U()});let K=null;p.addEventListener("pointerdown",I=>{let R=o.row(bt(I,".ts-ste\
p")?.dataset.row??"");if(!R||I.button!==0)return;if(R.run&&bt(I,".ts-fold")){yt(R,!o.closed.has(String(R.run.stage))),I.
preventDefault();return}let Y=bt(I,".ts-grip, .ts-number"),it=I.ctrlKey||I.metaKey;o.held!==null&&U(),!R.run&&!l&&(I.shiftKey?
o.blockTo(R.key):(it||c)&&!Y&&nt(R.key)),o.current=R.id,A(!0),I.preventDefault(),!(l||I.shiftKey||it)&&(I.pointerType!==
"mouse"&&!Y||(K={x:I.clientX,y:I.clientY,id:I.pointerId,carried:null},p.setPointerCapture(I.pointerId)))}),p.addEventListener(
"pointermove",I=>{if(!K||I.pointerId!==K.id)return;let{clientX:R,clientY:Y}=I;if(!K.carried){if(Math.hypot(R-K.x,Y-K.y)<
nn)return;K.carried=ot()}Object.assign(K.carried,{x:R,y:Y}),lt(K.carried)});function ot(){let I=s("div",{class:"twoshaft\
 ts-ghost","aria-hidden":"true"},o.unit().length>1?o.unitName():o.label(o.unit()[0]));document.body.append(I);let R=s("d\
iv",{class:"ts-line","aria-hidden":"true"});p.append(R),p.classList.add("ts-dragging");for(let Y of o.unit())d.get(Y)?.classList.
add("ts-lifted");return{ghost:I,line:R,timer:requestAnimationFrame(ft),x:0,y:0,drop:null}}function lt(I){I.ghost.style.transform=
`translate(${I.x+12}px, ${I.y+8}px)`;let Y=o.rows().map(mt=>{let V=M(mt).getBoundingClientRect();return{row:mt,box:V,offset:I.
y-(V.top+V.height/2)}}).reduce((mt,V)=>Math.abs(V.offset)<Math.abs(mt.offset)?V:mt),it=Y.offset>0;I.drop=o.dropAt(Y.row,
it);let rt=(it?Y.box.bottom:Y.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;I.line.style.top=`${rt}px`}function ft(){
let I=K?.carried;if(I){for(let R of[p,Oe(p)]){let it=R===document.scrollingElement?{top:0,bottom:innerHeight}:R.getBoundingClientRect(),
kt=I.y<it.top+He?-1:I.y>it.bottom-He?1:0;if(!kt)continue;let rt=R.scrollTop;if(R.scrollTop+=kt*on,R.scrollTop!==rt){lt(I);
break}}I.timer=requestAnimationFrame(ft)}}function gt(I){let R=K?.carried;if(K=null,!R)return;cancelAnimationFrame(R.timer),
R.ghost.remove(),R.line.remove(),p.classList.remove("ts-dragging");for(let it of d.values())it.classList.remove("ts-lift\
ed");let{drop:Y}=R;if(!I||!Y||o.unit().includes(Y.target)){A(!0),E(`${o.unitName()} stays at ${o.where()}`);return}j(o.beside(
Y.target,Y.side))}return p.addEventListener("pointerup",()=>gt(!0)),p.addEventListener("pointercancel",()=>gt(!1)),C.addEventListener(
"keydown",I=>{!K?.carried||I.key!=="Escape"||(gt(!1),I.stopPropagation())}),A(),{element:C,tools:f,order:()=>[...o.order],
change:(I,R)=>{l||j(I,R)},setOrder(I,R=!1){o.held!==null||K?.carried||_t(I,o.order)||(o.set(I,R),A())},setNotes(I){i=I??
{},A()},setDisabled(I){l=I,A()}}}ut("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=ee({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
je(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function _e(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[c,i]of t.entries()){let[l,d]=e[i]??[null,null];l!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[l??r[0],d??(l===null?r[1]:0)];let u=n(...r);o.push(u);let p=a.get(u.join(" "))??{at:u,numbers:[]};
p.numbers.push(c+1),a.set(u.join(" "),p)}return{points:o,stops:[...a.values()]}}function Ke(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function qe(t,e){return t.filter((n,r)=>r!==e)}function Fe(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var me=9,Ue=.7*me,ge=44;function rn(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*me+2*ge,
c=(o-r)*Ue+2*ge,i=(g,v)=>[ge+(g-e)*me,c/2-(v-(r+o)/2)*Ue],l=t.gates.map(g=>`M${i(g,r).join(" ")}L${i(g,o).join(" ")}`),d=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,u=t.gears.map(([g,v,x])=>{let[O,D]=i(v,x),$={x:O,y:D+(x>0?-20:30)};return P("t\
ext",{...$,class:"tsp-gear","text-anchor":"middle"},g)}),p=P("polyline",{class:"tsp-line",points:""}),h=P("g");return{element:P(
"svg",{viewBox:`0 0 ${a} ${c}`,width:a,height:c,class:"ts-gateplan","aria-hidden":"true"},P("path",{d:[...l,d].join(""),
class:"tsp-slot"}),...u,p,h),show(g){let{points:v,stops:x}=_e(g,t.aims,i),[[O,D]]=v;p.setAttribute("points",v.map($=>$.join(
",")).join(" ")),h.replaceChildren(P("circle",{cx:O,cy:D,r:4,class:"tsp-start"}),...x.map(({at:[$,S],numbers:L})=>P("g",
{},P("circle",{cx:$,cy:S,r:3.5,class:"tsp-stop"}),P("text",{x:$+7,y:S-5,class:"tsp-number"},L.join(", ")))))}}}function We({
label:t,moves:e,plan:n,most:r,onChange:o}){let a=new Map(e),c=C=>a.get(C)??C,i=[],l=-1,d=!1,u=n?rn(n):null,p=s("ol",{class:"\
ts-pathlist","aria-label":t}),h=s("p",{class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),
w=s("p",{class:"ts-hidden",role:"status"}),g=e.map(([C,E])=>q(E,()=>S(C))),v=q("Take back the last move",()=>{i.length&&
L(i.length-1)}),x=q("Take back all",()=>{i.length&&$([],"No moves left")}),O=s("span",{class:"ts-hint"}),D=s("div",{class:"\
ts-path"},s("div",{class:"ts-tools ts-moves",role:"group","aria-label":"Add a move"},...g),s("div",{class:"ts-path-both"},
s("div",{class:"ts-path-words"},h,p,s("div",{class:"ts-tools"},v,x,O)),u&&s("div",{class:"ts-path-picture"},u.element)),
u&&s("p",{class:"ts-hint"},"The line shows where each move aims. Whether the lever gets there is what the test finds out\
."),w);function $(C,E){d||(i=C,y(),w.textContent=E,o([...i]))}function S(C){if(i.length>=r){w.textContent=`${r} moves ar\
e the most here`;return}let{moves:E,place:_}=Ke(i,l,C);l=_,$(E,`Move ${_+1}: ${c(C)}`)}function L(C){let E=c(i[C]);l=Math.
min(l,i.length-2),$(qe(i,C),`Taken back: ${E}`)}function b(C,E){let _=Fe(i,C,E);_&&(l=C+E,$(_,`${c(_[l])}, move ${l+1} o\
f ${i.length}`),m(l))}function f(C){return p.children[C]?.querySelector(".ts-path-move")}function m(C){let E=f(C);return E instanceof
HTMLElement&&E.focus(),!!E}function k(C,E){let _=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${E+1}: ${c(
C)}`},c(C)),M=s("button",{type:"button",class:"ts-path-off","aria-label":`Take back move ${E+1}`,onclick:()=>L(E)},"×"),
A=s("li",{},_,M);return A.classList.toggle("ts-current",E===l),_.addEventListener("focus",()=>{l=E;for(let N of p.children)
N.classList.toggle("ts-current",N===A)}),_.addEventListener("keydown",N=>{if(ht(N))return;let T=N.key==="ArrowUp"?-1:N.key===
"ArrowDown"?1:null;if(T&&N.shiftKey)b(E,T);else if(T)m(E+T);else if(N.key==="Delete"||N.key==="Backspace")L(E),m(Math.min(
E,i.length-1))||g[0].focus();else return;N.preventDefault()}),M.disabled=d,A}function y(){p.replaceChildren(...i.map(k)),
h.hidden=i.length>0,O.textContent=`${i.length} of at most ${r} moves`;for(let C of g)C.disabled=d||i.length>=r;v.disabled=
x.disabled=d||i.length===0,u?.show(i)}return y(),{element:D,setMoves(C){_t(C,i)||(i=[...C],l=-1,y())},setDisabled(C){d=C,
y()}}}ut("path",{prompt:"words",make(t,e,n){let r=We({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});function ze(t,e,n){let r=t.indexOf(n);return[...t.slice(r+1),...t.slice(0,r)].find(a=>!e.get(a))??n}function Ge(t,e,n){let r=t.
find(({key:l})=>l===e);if(!r)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let o={ArrowRight:1,
ArrowLeft:-1}[n];if(o!==void 0){let l=[...t].sort((u,p)=>u.x-p.x||u.y-p.y),d=l.findIndex(({key:u})=>u===e)+o;return l[(d+
l.length)%l.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=l=>Math.abs(l.y-r.y)+2*Math.abs(l.x-
r.x),[i]=t.filter(({key:l,y:d})=>l!==e&&(d-r.y)*a>2).sort((l,d)=>c(l)-c(d));return(i??r).key}function Kt(t,e,n,r){let o=t.lines,a=t.options,c=o.map(([p])=>p),i=c[0],l=o.map(([p,h],w)=>{let g=s("span",{class:"ts-ea\
ch-line",id:`${e.control}-${w}`},h),v=$t({"aria-labelledby":g.id,"aria-describedby":e.status},[["","choose"],...a]),x=s(
"input",{type:"radio",name:`${e.control}-active`,"aria-label":`Point in the picture for: ${h}`,checked:w===0}),O=s("li",
{},c.length>1?x:null,g,v);return x.addEventListener("change",()=>{i=p}),v.addEventListener("change",()=>{i=p,u()}),{key:p,
box:v,mark:x,row:O}}),d=()=>new Map(l.map(({key:p,box:h})=>[p,h.value]));function u(){let p=d();r(p),n(Yt([...p]))}return{
element:s("ol",{class:"ts-each ts-pointed"},...l.map(({row:p})=>p)),active:()=>i,answers:d,press(p){let h=l.find(({key:w})=>w===
i);if(!(!h||h.box.disabled)){h.box.value=p,u(),i=ze(c,d(),i);for(let{key:w,mark:g}of l)g.checked=w===i}},put(p,h){let w=l.
find(({key:g})=>g===p);!w||w.box.disabled||(w.box.value=h,u())},show(p){let h=Xt(p.value);for(let{key:w,box:g}of l)g.value=
h.get(w)??"";r(d())},setDisabled(p){for(let{box:h,mark:w}of l)h.disabled=p,w.disabled=p}}}function se(t,e,n){let r=s("di\
v",{class:"ts-scene",role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});r.
innerHTML=t;let o=r.querySelector("svg");o.setAttribute("role","group");let a=new Map(Z(o,"[data-mark]").map(d=>[String(
d.dataset.mark),d])),c=new Map(e);for(let[d,u]of a)u.setAttribute("role","button"),u.setAttribute("tabindex",d===e[0][0]?
"0":"-1"),u.setAttribute("aria-label",`${d}: ${c.get(d)??""}`);let i=d=>bt(d,"[data-mark]")?.dataset.mark??bt(d,"[data-s\
pot]")?.dataset.spot;r.addEventListener("click",d=>{let u=i(d);u&&n(u)});for(let[d,u]of[["pointerover",!0],["focusin",!0],
["pointerout",!1],["focusout",!1]])r.addEventListener(d,p=>{let h=i(p);h&&l(h,u)});function l(d,u){for(let p of Z(o,`[da\
ta-spot="${d}"]`))p.classList.toggle("tss-near",u)}return r.addEventListener("keydown",d=>{let u=bt(d,"[data-mark]")?.dataset.
mark;if(u){if(d.key==="Enter"||d.key===" ")n(u);else{let p=[...a].map(([w,g])=>{let v=g.querySelector(".tss-dot");return{
key:w,x:v.cx.baseVal.value,y:v.cy.baseVal.value}}),h=Ge(p,u,d.key);if(h===void 0)return;a.get(u)?.setAttribute("tabindex",
"-1"),a.get(h)?.setAttribute("tabindex","0"),a.get(h)?.focus()}d.preventDefault()}}),{element:r,drawing:o,choose(d){let u=new Set(
d);for(let[p,h]of a)h.classList.toggle("tss-chosen",u.has(p)),h.setAttribute("aria-pressed",String(u.has(p)));for(let p of Z(
o,"[data-spot]"))p.classList.toggle("tss-on",u.has(String(p.dataset.spot)))}}}ut("picture",{prompt:"legend",make(t,e,n){let r=t.options,o=Kt(t,e,n,i=>{let l=new Set(i.values());for(let{letter:d,card:u}of a)
u.classList.toggle("ts-on",l.has(d))}),a=r.map(([i,l])=>{let d=s("div",{class:"ts-picture-card",onclick:()=>o.press(i)});
return d.innerHTML=t.svgs[i],d.querySelector("svg")?.setAttribute("aria-label",l),d.prepend(s("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:d}}),c=s("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:s("div",{},o.element,
c),show:o.show,setDisabled:o.setDisabled,refused(){}}}});ut("point",{prompt:"legend",make(t,e,n){let r=Kt(t,e,n,i=>c.choose(i.values())),a=t.options.map(([i,l])=>[i,l.slice(i.length+
2)]),c=se(t.svg,a,r.press);return{element:s("div",{},r.element,c.element),show:r.show,setDisabled:r.setDisabled,refused(){}}}});ut("put",{prompt:"legend",make(t,e,n){let r=t.lines,o=new Map(r.map(([u])=>[u,"1"])),a=Kt(t,e,n,u=>{for(let[p,h]of u)h&&
o.set(p,h.split("-")[1]);c.choose([...u.values()].map(p=>p.split("-")[0])),l(u)}),c=se(t.svg,t.places,u=>{a.press(`${u}-${o.
get(a.active())}`)}),i=P("g",{class:"tss-placed"});c.drawing.append(i);function l(u){i.replaceChildren();for(let[p,h]of u){
let[w,g]=h.split("-"),v=t.at[w];if(!v)continue;let x=P("g",{transform:`translate(${v[0]} ${v[1]})`});x.innerHTML=t.pieces[p][Number(
g)-1][1],i.append(x)}for(let{part:p,show:h}of d)h(o.get(p)??"1")}let d=r.map(([u,p])=>{let h=s("div",{class:"ts-tray-par\
t"}),w=s("span",{class:"ts-hint",role:"status"}),g=J("Turn it",()=>{let O=o.get(u)==="1"?"2":"1";o.set(u,O),v(O);let D=a.
answers().get(u);D&&a.put(u,`${D.split("-")[0]}-${O}`)},`Turn it: ${p}`);function v(O){let[D,$]=t.pieces[u][Number(O)-1],
S=Number(/data-half="([\d.]+)"/.exec($)?.[1]??90);h.innerHTML=`<svg viewBox="${-S} ${-S} ${2*S} ${2*S}" width="120" heig\
ht="120" aria-hidden="true">${$}</svg>`,w.textContent=`Way ${O}: ${D}`}let x=s("div",{class:"ts-tray"},h,s("div",{},p,w,
g));return{part:u,row:x,show:v,turn:g}});return{element:s("div",{},s("div",{class:"ts-trays"},...d.map(({row:u})=>u)),a.
element,c.element),show:a.show,setDisabled(u){a.setDisabled(u);for(let{turn:p}of d)p.disabled=u},refused(){}}}});var an="No line to the course just now. Go on with the questions: what you enter is kept in this browser and sent when t\
he line is back. Simulators stand still until then.",ln="The line to the course is back.",cn=1500,dn=5e3,be=new Set,Dt=null,
we;function Ye(t){Dt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),Dt.isConnected||document.body.append(Dt),Dt.textContent=
t}function un(){Dt?.remove(),Dt=null}function Xe(){clearTimeout(we),be.size?we=window.setTimeout(()=>Ye(an),Dt?0:cn):Dt&&
(Ye(ln),we=window.setTimeout(un,dn))}var Ve=t=>({down(){be.add(t),Xe()},up(){be.delete(t),Xe()}});var pn=1e3,fn="input, button, select, textarea, summary, a, [tabindex]";function hn(t){let e=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:l,metaKey:d}=o,u={key:a,code:c,keyCode:i,ctrlKey:l,metaKey:d,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",u))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let o of t.querySelectorAll(fn))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function gn(t,e,n){let r=t.widget_manager?.kernel,o=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(c,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),r?.statusChanged?.
connect(o),r?.connectionStatusChanged?.connect(a),r?.disposed?.connect(e),()=>{t.off("comm_live_update",e),r?.statusChanged?.
disconnect(o),r?.connectionStatusChanged?.disconnect(a),r?.disposed?.disconnect(e)}}var Je=`.twoshaft {
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
gn-items:center;gap:var(--ts-grid)}.twoshaft .ts-line-of+.ts-read{min-height:1.5em}.twoshaft .ts-read.ts-error,.twoshaft\
 .ts-status-unread{color:var(--ts-ink);font-size:var(--ts-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-unrea\
d .ts-shape,.twoshaft .ts-status-bad .ts-shape{color:var(--ts-bad)}.twoshaft .ts-status-saved .ts-shape{color:var(--ts-g\
ood)}.twoshaft .ts-status-bad{color:var(--ts-ink);font-weight:600}.twoshaft .ts-order+.ts-read{display:none}.twoshaft .t\
s-bench{margin-top:var(--ts-grid)}.twoshaft .ts-bench summary{cursor:pointer;min-height:24px;font-size:var(--ts-small);c\
olor:var(--ts-quiet)}.twoshaft .ts-bench[open]{border:1px solid var(--ts-line);padding:var(--ts-grid)}.twoshaft .ts-benc\
h-rows{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,20em),1fr));gap:var(--ts-grid) calc(2 * var(-\
-ts-grid));margin:var(--ts-grid) 0}.twoshaft .ts-bench-row{min-width:0}.twoshaft .ts-bench-row select{max-width:100%;min\
-width:0}.twoshaft .ts-bench-row label{display:block;max-width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-heig\
ht:0}.twoshaft.ts-question{border-left:4px solid var(--ts-accent);padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-ac\
ts{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin-top:var(--ts-grid)}.twoshaft .ts-told:not(:empty){margin-top:va\
r(--ts-grid)}.twoshaft .ts-told-unread{border:2px solid var(--ts-ink);padding:var(--ts-grid)}.twoshaft .ts-teacher{borde\
r-style:dashed;font-size:var(--ts-small)}.twoshaft.ts-question .ts-title{font-weight:600}.twoshaft-start>div{max-width:1\
040px}.twoshaft-start h2{font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-start section,.twos\
haft-start .ts-sign-in{margin:calc(2 * var(--ts-grid)) 0 calc(3 * var(--ts-grid))}.twoshaft-start .ts-sign-in{display:gr\
id;gap:calc(1.5 * var(--ts-grid));justify-items:start}.twoshaft-start .ts-pair{display:grid;gap:calc(var(--ts-grid) / 2)\
}.twoshaft-start .ts-pair label{font-weight:600}.twoshaft-start .ts-pair .ts-box{width:22em;max-width:100%}.twoshaft-sta\
rt .ts-first{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft-start .ts-button{font-size:var(--ts-text)}.\
twoshaft-start .ts-said:not(:empty){border-left:3px solid var(--ts-accent);padding:var(--ts-grid);background:var(--ts-fa\
int)}.twoshaft-start .ts-me{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-gr\
id);margin-bottom:var(--ts-grid)}.twoshaft-start .ts-table{border-collapse:collapse;width:100%;margin:0 0 calc(2 * var(-\
-ts-grid));font-size:var(--ts-text);table-layout:fixed}.twoshaft-start .ts-table :is(th,td){text-align:left;vertical-ali\
gn:top;white-space:normal;padding:var(--ts-grid);border:0;border-bottom:1px solid var(--ts-line);background:none;max-wid\
th:none}.twoshaft-start .ts-table thead th{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-table th:\
nth-child(1){width:26%}.twoshaft-start .ts-table th:nth-child(2){width:16%}.twoshaft-start .ts-table th:nth-child(4){wid\
th:24%}.twoshaft-start .ts-small-line{display:block;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-\
doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-start a.ts-link:is(:link,:visited,:hov\
er,:focus,:active){color:var(--ts-accent);text-decoration:underline;display:inline-flex;align-items:center;min-height:va\
r(--ts-target);cursor:pointer}.twoshaft-start .ts-lessons{padding-left:calc(2 * var(--ts-grid))}.twoshaft-start .ts-less\
ons .ts-link{min-height:24px}.twoshaft-start .ts-module th{padding-top:calc(3 * var(--ts-grid));font-size:var(--ts-text)\
}.twoshaft-start .ts-table .ts-module th{width:auto}.twoshaft-start .ts-assigned{margin-left:var(--ts-grid);font-weight:\
400;color:var(--ts-quiet)}.twoshaft-start .ts-next{margin:0}.twoshaft-start summary{min-height:var(--ts-target);align-co\
ntent:center;cursor:pointer}@media(max-width:560px){.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50\
%)}.twoshaft-start .ts-table :is(tr,th,td):nth-child(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bot\
tom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}\
}.twoshaft-start .ts-gaps{padding-left:calc(2 * var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{\
display:block}.twoshaft-start .ts-question{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft .\
tsj-bench{display:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--ts-grid)}.two\
shaft .tsj-bench svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:pointer}.twoshaft .tsj-bolt:foc\
us{outline:none}.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsj-bolt.tsj-\
started circle{stroke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.twoshaft .tsj-bolt.tsj-tight text\
{fill:var(--ts-paper)}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(--ts-grid)}.twoshaft .tsj-slid\
e input{width:180px;max-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-target)}.twoshaft .tsj-figure{min-w\
idth:8ch;font-variant-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-height:3em;margin-top:var(--ts-gr\
id)}.twoshaft .tsj-check{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft\
 .tsj-check input{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-templat\
e-columns:max-content minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-width) +\
 12ch);margin:var(--ts-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block;max-w\
idth:100%;height:auto}.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:wrap}@\
media(max-width:700px){.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{border-col\
lapse:collapse;font:var(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align:left;\
font-weight:600;padding:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-align:m\
iddle;padding:4px 12px 4px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twoshaft table.tsk-\
board thead th{font-weight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:34ch;white-space:normal}.twos\
haft table.tsk-board .tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft table.t\
sk-board select{max-width:44ch}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight\
:600;border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown\
{min-width:24ch}.twoshaft .tsk-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){.twoshaft table\
.tsk-board,.twoshaft table.tsk-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}\
.twoshaft table.tsk-board thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft ta\
ble.tsk-board tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.two\
shaft table.tsk-board tbody td,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-wid\
th:0;padding:2px 0;text-align:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-b\
oard tbody .tsk-best td{border:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.two\
shaft table.tsk-board tbody th{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) \
": ";color:var(--ts-quiet)}.twoshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-board select{ma\
x-width:100%}}.twoshaft .ts-gate{cursor:default;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab\
;touch-action:none}.twoshaft .ts-pulling,.twoshaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{f\
ill:var(--ts-accent)}.twoshaft .ts-gate svg{user-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-bloc\
k:4px}.twoshaft .ts-happened.ts-stopped,.twoshaft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem\
;overflow-y:auto;padding-left:calc(4 * var(--ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate+.ts-hap\
pened{min-height:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 12ch);font-weight:600}.twoshaft-rig .ts-how{\
width:34em;max-width:100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3px}.twoshaft .tsw-train svg{user-select:none\
}.twoshaft .tsw-counts{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid));margin:var(--ts-grid) 0}.twoshaft .tsw-c\
ount{box-sizing:border-box;display:grid;grid-template-columns:104px 1fr;column-gap:var(--ts-grid);align-items:center;wid\
th:268px;padding:4px;border:1px solid var(--ts-line);border-radius:2px;text-align:left;font-size:var(--ts-small)}.twosha\
ft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:3px}.twoshaft .tsw-count.tsw-held{border-style:dashed}.\
twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-dial{grid-column:1;grid-row:1 / span 3}.twoshaft .tsw-count\
>div{grid-column:2}.twoshaft .tsw-dial{width:104px;height:104px;touch-action:none;cursor:grab;user-select:none}.twoshaft\
 .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:1}.twoshaf\
t .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsw-painted{stroke:var(--ts-accent);strok\
e-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-tick{stroke:var(--ts-ink);stroke-width:1.5}.twoshaft .\
tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:15px var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.two\
shaft .tsw-strokes{min-height:1.5em;font-family:monospace;font-size:var(--ts-text);letter-spacing:1px;overflow-wrap:anyw\
here;max-height:4.5em;overflow-y:auto}.twoshaft .tsw-figure{min-height:1.5em;font-variant-numeric:tabular-nums}.twoshaft\
 .tsw-figure:empty{min-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsh-picture{overflow-x:auto;margin:v\
ar(--ts-grid) 0}.twoshaft .tsh-picture svg{display:block;width:100%;min-width:720px;max-width:1100px;height:auto}.twosha\
ft .tsh-place{cursor:pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaft .tsh-place:hover .tsh-hit{stroke:var(--ts\
-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:hover .tsh-hit{stroke:var(--ts-accent);stroke\
-width:2}.twoshaft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsh-chosen .tsf-t\
{font-weight:600}.twoshaft .tsh-box{border-left:3px solid var(--ts-accent);padding-left:calc(1.5 * var(--ts-grid));min-h\
eight:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twoshaft .tsh-verdict{margin-top:var(--ts-grid)!\
important}.twoshaft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-sliders{display:grid;grid-template-columns:repeat\
(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:960px}.twoshaft .\
tsl-row{display:grid;grid-template-columns:12em minmax(6em,1fr) 4em;align-items:center;gap:var(--ts-grid);min-height:var\
(--ts-target)}.twoshaft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;min-height:24px}.twoshaft .tsl-\
row .ts-box{justify-self:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;text-align:right}.twoshaft .tsl-d\
rawing{overflow-x:auto}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:600px;max-width:820px;height:auto}.\
twoshaft .tsl-sum{font-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@media(max-width:480px){.twoshaft .tsl-slide\
rs{grid-template-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wrap:wrap;min-width:0}.twoshaft .tsl-row inp\
ut{max-width:100%}}.twoshaft .tsp-section{overflow-x:auto}.twoshaft .tsp-gauge{width:220px;height:200px;flex:none}.twosh\
aft .tsp-section svg{display:block;max-width:100%;height:auto;min-width:320px}.twoshaft .ts-pair[hidden]{display:none}.t\
woshaft .ts-cells{position:absolute;pointer-events:none}.twoshaft .tsp-land.tsp-clear{fill:none}.twoshaft .tsp-lump{fill\
:none;stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-way{fill:none;stroke:var(--ts-bad);stroke-linecap:round;\
stroke-linejoin:round}.twoshaft .tsp-out{fill:var(--ts-ink);stroke:var(--ts-paper);stroke-width:.5px}.twoshaft .tsp-clea\
r~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp-shut .tsp-chosen{display:none}.twoshaft .ts-legend{disp\
lay:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-grid));font-size:var(--ts-small);min-height:1.6em}.twoshaft .ts-key{di\
splay:inline-flex;align-items:center;gap:4px}.twoshaft .ts-swatch{width:25px;height:15px;border:1px solid var(--ts-line)\
}.twoshaft .ts-range{accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-clock{min-width:6em;font-weight:600}.tw\
oshaft .ts-unit{overflow:auto;max-height:620px;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:pan-\
x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:block;max-width:none;max-height:none}.twoshaft .ts-unit [data-part]{cu\
rsor:pointer}.twoshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-wi\
dth:3.2px;stroke-dasharray:none}.twoshaft .ts-unit [data-part]:hover path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:v\
ar(--ts-accent)}.twoshaft .ts-unit:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-un\
it-name{min-height:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .ts-unit-words p{max-width:var(--ts-width)}.t\
woshaft .ts-prompt[hidden],.twoshaft .ts-sentences[hidden]{display:none}.twoshaft .ts-told{min-height:2em;max-height:9em\
;overflow-y:auto}.twoshaft .ts-build{display:grid;grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var\
(--ts-grid));align-items:start}.twoshaft .ts-buildlist{display:grid;gap:4px;max-height:22rem;overflow-y:auto;padding:4px\
}.twoshaft .ts-buildstep{text-align:left;padding-block:2px;min-height:28px}.twoshaft .ts-buildstep-done{color:var(--ts-q\
uiet);border-color:var(--ts-line)}.twoshaft .ts-buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-w\
eight:600}.twoshaft .ts-buildstep[aria-current]{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stag\
e-choice{max-width:100%}.twoshaft .ts-hand{border:1px solid var(--ts-line);padding:var(--ts-grid);max-height:24rem;overf\
low-y:auto}.twoshaft .ts-hand .ts-field{border:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight\
:600}.twoshaft .ts-do{text-align:left;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);paddi\
ng-left:var(--ts-grid);font-size:var(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-gri\
d) 0;font:inherit}.twoshaft .ts-record caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-alig\
n:left;vertical-align:top;padding:3px 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-space:norm\
al}.twoshaft .ts-record .ts-blank{min-width:12em;height:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-template-co\
lumns:minmax(0,1fr)}.twoshaft .ts-buildlist,.twoshaft .ts-hand{max-height:none}}`,Ze="twoshaft-styles";function mn(){let t=document.
getElementById(Ze);t?.textContent!==Je&&(t?.remove(),document.head.append(s("style",{id:Ze},Je)))}function W({model:t,el:e},{
kind:n,lost:r=()=>Wt(e),line:o=()=>{}}){mn(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"\
ts-alert",role:"alert"}),c=Ve(e),i=()=>e.classList.contains("ts-lost"),l=[],u=gn(t,()=>{i()||(e.classList.add("ts-lost"),
c.down(),r())},g=>{i()||(g?c.down():c.up(),o(g))}),p=hn(e),h,w=(g,v)=>{t.on(g,v),l.push([g,v])};return w("msg:custom",g=>{
g.type==="trouble"&&!i()&&(a.textContent=g.reason)}),{alert:a,follow:w,isLost:i,send(g){i()||(t.send(g),clearTimeout(h),
h=window.setTimeout(()=>t.send({type:"rest"}),pn))},show:(...g)=>e.replaceChildren(...Rt(g)),close(){c.up(),clearTimeout(
h),p(),u();for(let[g,v]of l)t.off(g,v)}}}function Qe({model:t,el:e}){let n=W({model:t,el:e},{kind:"rig",lost:()=>l.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),o=s("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=et("order"),n.send({type:"order",order:p,turn:c})},
l=ee({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),d=s("button",{type:"\
button",class:"ts-button",onclick:()=>l.change([...a],"The first order stands again")},"Start again");l.tools.append(d),
n.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),n.alert,r,o,l.element);function u(){let p=t.
get("judged");c!==null&&p.turn!==c||(c=null,r.textContent=p.finding,o.textContent=p.cost,l.setOrder(p.order),l.setNotes(
p.notes))}return n.follow("change:judged",u),u(),n.close}var wn=["lit","bench","absent"],ts=[1,1.5,2,3,4.5];function ne({svg:t,parts:e,words:n}){let r=s("div",{class:"ts-unit",tabindex:"\
0",role:"application","aria-label":"The unit in section. Left and right arrows walk from part to part, up and down to th\
e part above or below, plus and minus zoom."});r.innerHTML=t;let o=r.querySelector("svg"),a=o.querySelector(".tsu-marks");
o.setAttribute("aria-hidden","true"),o.removeAttribute("role");let c=new Map(e.map(([m])=>[m,[]]));for(let m of Z(o,"[da\
ta-part]"))c.get(String(m.dataset.part))?.push(m);let i=new Map(e.map(([m],k)=>[m,k])),l=s("p",{class:"ts-hint ts-unit-n\
ame",role:"status"}),d=$t({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],...e.map(([m,k])=>[m,k])]),
u=-1,p=0,h={},w=m=>{let k=h[m];return k==="absent"?" Not there yet.":k==="bench"?" On the bench.":k==="lit"?" In hand.":
""},g=m=>`${e[m][1]}. ${e[m][2]}${w(e[m][0])}`;function v(m){for(let y of Z(o,".tsu-chosen"))y.classList.remove("tsu-cho\
sen");u=m;let k=m<0?"":e[m][0];d.value=k,l.textContent=m<0?L:g(m);for(let y of c.get(k)??[])y.classList.add("tsu-chosen");
m>=0&&O(k)}function x(m){let k=(c.get(m)??[]).map(M=>M.getBBox()),y=Math.min(...k.map(M=>M.x)),C=Math.max(...k.map(M=>M.
x+M.width)),E=Math.min(...k.map(M=>M.y)),_=Math.max(...k.map(M=>M.y+M.height));return{x:(y+C)/2,y:(E+_)/2}}function O(m){
let k=x(m),y=o.getBoundingClientRect().width/o.viewBox.baseVal.width,[C,E]=[k.x*y,k.y*y],{scrollLeft:_,scrollTop:M,clientWidth:A,
clientHeight:N}=r;(C<_+40||C>_+A-40)&&(r.scrollLeft=C-A/2),(E<M+40||E>M+N-40)&&(r.scrollTop=E-N/2)}function D(m){p=Math.
max(0,Math.min(ts.length-1,p+m)),o.style.width=`${100*ts[p]}%`,o.style.height="auto",u>=0&&O(e[u][0])}function $(m){let k=x(
e[u][0]),[y]=e.map(([C],E)=>({k:E,at:x(C)})).filter(({k:C,at:E})=>C!==u&&(E.y-k.y)*m>4).sort((C,E)=>es(C.at,k)-es(E.at,k));
y&&v(y.k)}r.addEventListener("keydown",m=>{if(ht(m))return;let k=e.length-1;if(m.key==="ArrowRight")v(u>=k?0:u+1);else if(m.
key==="ArrowLeft")v(u<=0?k:u-1);else if(m.key==="ArrowUp"||m.key==="ArrowDown")u<0?v(0):$(m.key==="ArrowUp"?-1:1);else if(m.
key==="Home")v(0);else if(m.key==="End")v(k);else if(m.key==="+"||m.key==="=")D(1);else if(m.key==="-")D(-1);else if(m.key===
"Escape")v(-1);else return;m.preventDefault()}),r.addEventListener("click",m=>{let k=bt(m,"[data-part]")?.dataset.part;v(
k===void 0?-1:i.get(k)??-1)}),r.addEventListener("pointerover",m=>{let k=bt(m,"[data-part]")?.dataset.part;if(k===void 0||
m.pointerType!=="mouse")return;let y=bt(m,"[data-solid]")?.querySelector("title")?.textContent,C=e[i.get(k)??0][1];S.textContent=
y&&y!==C?`${y} (${C})`:C}),r.addEventListener("pointerleave",()=>{S.textContent=""}),d.addEventListener("change",()=>v(i.
get(d.value)??-1));let S=s("span",{class:"ts-unit-over","aria-hidden":"true"}),L="Point at a part, tap it, or choose it \
here to read its name.";l.textContent=L;let b=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",d),J("−",()=>D(
-1),"Smaller"),J("+",()=>D(1),"Larger"),S),f=s("details",{class:"ts-unit-words"},s("summary",{},"What is where, in words"),
s("p",{},n));return D(0),{nodes:[b,l,r,f],show(m){h=m.looks;for(let[k,y]of c)for(let C of y)for(let E of wn)C.classList.
toggle(`tsu-${E}`,h[k]===E);a.innerHTML=m.marks,u>=0&&(l.textContent=g(u))}}}function es(t,e){return Math.abs(t.y-e.y)+2*
Math.abs(t.x-e.x)}function ss(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function ns({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=ne(t.get("picture")),
c=s("p",{class:"ts-hint",role:"status"}),i=s("dl",{class:"ts-facts"}),l=s("div",{class:"ts-ready"}),d=s("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),u=s("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:f=>{f.key==="Enter"&&$()}}),p=s("span"),h=f=>L.send({type:"move",by:f}),w=f=>L.
send({type:"go",position:f}),g=J("Back",()=>h(-1),"One step back"),v=J("Next",()=>h(1),"Next step"),x=J("Start",()=>w(0),
"Start with an empty bench"),O=J("End",()=>w(t.get("view").count),"End of the order"),D=J("Try it",()=>L.send({type:"tak\
e",step:d.value}),"Try it: the step chosen here"),$=()=>{let f=Number.parseInt(u.value,10);f>=0&&w(f)},S=s("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},x,g,v,O,s("span",{class:"t\
s-pair"},"place ",u,p,J("Go",$,"Go to this place")));S.addEventListener("keydown",f=>{if(!(f.target===u||ht(f))){if(f.key===
"ArrowLeft")h(-1);else if(f.key==="ArrowRight")h(1);else if(f.key==="Home")w(0);else if(f.key==="End")w(t.get("view").count);else
return;f.preventDefault()}});let L=W({model:t,el:e},{kind:"rig"});L.show(s("p",{class:"ts-who"},"Practice. Nothing here \
is marked or saved."),L.alert,n,S,r,o,c,...a.nodes,i,s("p",{class:"ts-prompt"},"Do another step next"),l,s("div",{class:"\
ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",d,D)));function b(){let f=t.get("view");n.textContent=
f.finding,r.textContent=f.happened,o.textContent=f.next?`Next in this order: ${f.next}`:"This is the end of the order.",
c.textContent=f.build.words,a.show(f.build),i.replaceChildren(...St(f.facts));let m=l.contains(document.activeElement);l.
replaceChildren(...f.ready.map(([C,E])=>J(E,()=>L.send({type:"take",step:C})))),f.ready.length||l.append(s("p",{class:"t\
s-hint"},"No step is ready.")),m&&(l.querySelector("button")??v).focus(),d.replaceChildren(...ct(f.waiting)),d.disabled=
D.disabled=!f.waiting.length,u.value=String(f.position),p.textContent=` of ${f.count} `;let k=f.position===0,y=f.position===
f.count;for(let C of[g,x])ss(C,k);for(let C of[v,O])ss(C,y)}return L.follow("change:view",b),b(),L.close}function qt(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=et("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var Q=(t,e,n,r,o)=>P("line",{x1:t,y1:e,x2:n,y2:r,class:o}),tt=(t,e,n,r="middle")=>P("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function Ft(){let t=P("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(P("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(Q(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(tt(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(P("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(Q(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*Math.
cos(o),"tsg-mark"))}let e=Q(100,134,100,119,"tsg-small"),n=P("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"tsg-po\
inter"});return t.append(e,n,P("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("transform",
`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`Dial indi\
cator, one mark is 0.01 mm. ${o}`)}}}function os({top:t,mark:e,perFigure:n}){let r=P("svg",{viewBox:"0 0 600 92",class:"\
tsg-scale",role:"img"}),o=c=>30+c/t*540;r.append(P("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));for(let c=0;c*
e<=t+1e-9;c+=1){let i=c%n===0;r.append(Q(o(c*e),22,o(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.append(tt(o(c*
e),84,String(Math.round(c*e))))}let a=P("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(a,tt(586,14,
"newtons","end")),{node:r,top:t,set(c,i){a.setAttribute("transform",`translate(${o(Math.min(c,t))} 0)`),r.setAttribute("\
aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function rs({low:t,high:e,reach:n}){let r=P("svg",{viewBox:"0 0 \
720 92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(P("rect",{x:o(t),y:34,width:o(e)-
o(t),height:24,class:"tsg-target"}),tt((o(t)+o(e))/2,84,"target"),Q(20,46,700,46,"tsg-mark"),Q(360,26,360,66,"tsg-mark t\
sg-long"),tt(20,20,"end play","start"),tt(700,20,"preload","end"),tt(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let l of[
i,-i])r.append(Q(o(l),42,o(l),50,"tsg-mark"));r.append(tt(o(-n),70,`${n.toFixed(2)} mm`,"start"),tt(o(n),70,`${n.toFixed(
2)} mm`,"end"));let a=P("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=P("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return r.append(a,c),{node:r,set(i,l,d){a.setAttribute("transform",`translate(${o(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${o(l)} 0)`),r.setAttribute("aria-label",d)}}}function pt(t,{min:e,max:n,step:r,value:o,words:a,onInput:c}){let i=s(
"input",{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),l=s("output",{class:"ts-slid"},a(o));
return i.addEventListener("input",()=>{let d=a(Number(i.value));l.textContent=d,i.setAttribute("aria-valuetext",d),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,l),set(d){i.value=
String(d),l.textContent=a(d)}}}function dt(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},
...e.map(([a,c])=>s("option",{value:a,selected:a===n},c)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function as({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),l=s("u\
l",{class:"ts-sentences"}),d=qt((b,f)=>$.send({type:"set",state:b,turn:f})),u=b=>{r={...r,...b},d.ask(r)},p=P("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),h=Q(0,0,0,0,"tsg-mark tsg-long"),w=tt(0,0,""),g=96,
v=g/(n.readingsOnly?r.radius:n.radii[1]),x=P("svg",{viewBox:`0 0 ${2*g+120} ${2*g+30}`,width:2*g+120,height:2*g+30,class:"\
tsg-drum",role:"img"}),O=g+4;p.setAttribute("transform",`translate(${O} ${O})`),x.append(p,h,Q(4,O,2*g+4,O,"tsg-centre"),
Q(O,4,O,2*g+4,"tsg-centre"),P("circle",{cx:O,cy:O,r:10,class:"tsg-face"}),w);let D=[s("div",{class:"ts-tools"},q("Turn t\
he shaft ten times",()=>u({turns:r.turns+10})))];if(!n.readingsOnly){let b=n.kinds,f=b.map(([m,k])=>s("label",{class:"ts\
-option"},s("input",{type:"checkbox",checked:r.kinds.includes(m),onchange:y=>u({kinds:b.map(([C])=>C).filter(C=>C===m?y.
target.checked:r.kinds.includes(C))})}),`with ${k}`));D[0].append(q("Fit the rings anew",()=>u({turns:0}))),f.length&&D.
push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the bearings"),...f)),D.push(pt("Set\
ting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:m=>u({setting:m}),words:m=>m<0?`${(-m).toFixed(3)} mm of\
 end play`:`${m.toFixed(3)} mm of preload`}).row,pt("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:r.radius,
onInput:m=>u({radius:m}),words:m=>`${m} mm`}).row)}let $=W({model:t,el:e},{kind:"rig"});$.show(s("p",{class:"ts-who"},n.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),$.alert,
s("div",{class:"tsg-beside"},x,s("div",{class:"tsg-side"},a,c)),...D,i,l);function S(){let b=t.get("shown");d.waiting||(r=
b.state);let f=v*b.state.radius;At(p,{r:f}),At(h,{x1:O,y1:O-f,x2:2*g+120,y2:O-f}),At(w,{x:O,y:2*g+22}),w.textContent=`dr\
um, radius ${b.state.radius} mm`,x.setAttribute("aria-label",`A drum of ${b.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),o?.top!==b.scale.top&&(o=os(b.scale),a.replaceChildren(o.node),c.textContent=
`Spring scale to ${b.scale.top} N, one mark ${b.scale.mark} N.`),o?.set(b.pull,b.pullWords),i.textContent=b.finding,l.replaceChildren(
...It(b.words)),d.answered(b.turn)}let L=()=>d.free();return $.follow("change:shown",S),$.follow("msg:custom",L),S(),$.close}function Mt({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=qt((p,h)=>c.send({type:"set",state:p,turn:h})),
c=W({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),l=n(r,p=>{o={...o,...p},a.ask(o)},o),d=r.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";c.show(s("p",{class:"\
ts-who"},d),c.alert,s("div",{class:"tsg-wide"},l.picture),...l.controls,i);function u(){let p=t.get("shown");a.waiting||
(o=p.state),l.set(p,o),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",u),c.follow("msg:custom",
a.free),u(),c.close}var Lt=(...t)=>s("div",{class:"ts-tools"},...t);var bn={x:44,y:84,perMm:34};function vn(t){let e=P("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=bn,a=P("g",{}),c=P("g",{});e.append(P("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),P("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,c,tt(12,14,"main scale, mm","start"),tt(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let l=n+i*t.space*o;c.append(
Q(l,r,l,r+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(tt(l,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let l=Math.
max(0,Math.ceil(i.mm-1));l<=t.top+25;l+=1){let d=n+(l-i.mm)*o;d<4||d>756||(a.append(Q(d,r,d,r-(l%10===0?34:l%5===0?28:20),
"tsi-fine")),l%5===0&&a.append(tt(d,r-40,String(l))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function is(t){
return Mt(t,(e,n,r)=>{let o=vn(e),a=pt("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:l=>n(
{rod:l})}),c=dt("Foot",e.places,r.place,l=>n({place:l,rod:0})),i=dt("Look",e.eyes,r.eye,l=>n({eye:l}));return{picture:o.
node,controls:[Lt(c.row,i.row),Lt(q("Push the rod down until it rests",()=>n({rod:e.top})),q("Lift the rod",()=>n({rod:0}))),
a.row],set(l,d){o.set(l),c.box.value=d.place,i.box.value=d.eye,a.box.value=d.rod}}})}function ls({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=s("div",{class:"tsj-bars"}),i=Z(a,"[data-bolt]"),l=et("torq\
ue"),d=s("input",{id:l,type:"range",min:10,max:100,step:5,oninput:()=>h()});d.value="100";let u=s("output",{class:"tsj-f\
igure",for:l}),p=()=>d.value==="100"?n.torque:Number((Math.round(n.torque*Number(d.value)/100/n.step)*n.step).toFixed(3));
function h(){u.textContent=`${p()} N·m`,d.setAttribute("aria-valuetext",`${p()} newton metres, ${d.value} percent of th\
e torque`)}let w=f=>$.send({type:"pull",bolt:f,torque:p()}),g=q("Take back",()=>$.send({type:"undo"})),v=q("Wait until t\
he film has run out",()=>$.send({type:"wait"})),x=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>$.send({type:"set",film:Number(x.value)})},...n.films.map(f=>s("option",{value:f},f?`${f} µm thick`:"none"))),
O=s("input",{type:"checkbox",onchange:()=>$.send({type:"set",scattered:O.checked})});a.addEventListener("click",f=>{let m=bt(
f,"[data-bolt]");m&&(D(m),w(Number(m.dataset.bolt)))});let D=f=>{for(let m of i)m.setAttribute("tabindex",m===f?"0":"-1");
f.focus({preventScroll:!0})};a.addEventListener("keydown",f=>{let m=bt(f,"[data-bolt]");if(!m||f.ctrlKey||f.metaKey||f.altKey)
return;let k=Number(m.dataset.bolt),y={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[f.key];if(y)D(i[(k+y+i.length)%
i.length]);else if(f.key==="Home")D(i[0]);else if(f.key==="End")D(i[i.length-1]);else if(f.key==="Enter"||f.key===" ")f.
repeat||w(k);else return;f.preventDefault()});let $=W({model:t,el:e},{kind:"rig"}),S=s("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},q("Start all by hand",()=>$.send({type:"start"})),...n.rounds.map(([f,m])=>q(`One round ${m}`,
()=>$.send({type:"round",pattern:f,torque:p()}))),g,q("Start again",()=>$.send({type:"again"}))),L=s("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:l},"Wrench set to"),d,u));n.films.length&&
L.append(s("label",{class:"ts-pair"},"Wet sealant",x),v,s("label",{class:"tsj-check"},O,"friction scatters from bolt to \
bolt")),$.show(s("p",{class:"ts-who"},n.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),$.alert,r,L,S,o,s("div",{class:"tsj-bench"},a,c),s("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function b(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.happened,c.innerHTML=
f.bars;for(let[m,k]of i.entries()){let y=f.tight[m]?`${f.clamps[m]} kN`:f.started[m]?"started by hand":"not started";k.setAttribute(
"aria-label",`Bolt ${m+1} of ${n.count}, ${y}`),k.classList.toggle("tsj-tight",f.tight[m]),k.classList.toggle("tsj-start\
ed",f.started[m])}g.disabled=!f.pulls,v.disabled=!f.standing,x.value=String(f.film),O.checked=f.scattered}return $.follow(
"change:view",b),h(),b(),$.close}var cs="tsk-number";function Nt(t,e,...n){return s("td",{class:e?cs:null,"data-label":t||null,role:"cell"},...n)}function oe(t,e,n){
let r=e.map(([c,i])=>s("th",{scope:"col",role:"columnheader",class:i?cs:null},c)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function ds({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),c=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),l=new Map;for(let[h,
w,g,v]of n.checks){let x=s("select",{class:"ts-box","aria-label":`What it showed: ${w}`,onchange:()=>u.send({type:"obser\
ve",check:h,shown:x.value})},s("option",{value:""},"Not made"),...ct(v)),O=Nt("would tell, bit",!0),D=Nt("bit a minute",
!0),$=s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},w),Nt("min",!0,`${g}`),Nt("it showed",!1,x),O,D);l.set(h,
{box:x,tells:O,rate:D,row:$}),i.append($)}let d=s("button",{class:"ts-button",type:"button",onclick:()=>u.send({type:"cl\
ear"})},"Take all observations back"),u=W({model:t,el:e},{kind:"rig"});u.show(s("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),u.alert,r,a,c,oe("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),o,d);function p(){let h=t.get("view");r.textContent=h.finding,
o.textContent=h.spent,c.textContent=h.more,a.replaceChildren(...It(h.left.map(([v,x])=>`${v} (${x})`)));let w=h.ranked,g=new Map(
w.map(([v,x,O],D)=>[v,{bits:x,rate:O,rank:D}]));for(let[v,{box:x,tells:O,rate:D,row:$}]of l){let S=h.observed[v],L=g.get(
v);x.value=S??"",O.textContent=L?L.bits:S!==void 0?"made":"nothing",D.textContent=L?L.rate+(L.rank===0?" ◀ best next":
""):"–",$.classList.toggle("tsk-best",L?.rank===0)}}return u.follow("change:view",p),p(),u.close}function us({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"\
The lever. Arrow keys left and right slide the selector shaft, up and down turn it."}),a=s("select",{class:"ts-box ts-ho\
w","aria-label":"How it is put together"},...ct(t.get("builds"))),c=J("Start again",()=>v({type:"reset"})),i=s("div",{class:"\
ts-tools ts-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([f,m])=>J(m,()=>v({type:"move",
code:f})))),l=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),d=s("p",{class:"ts-hint"},"Nothin\
g tried yet. Use the moves above; each is written down here."),u=s("p",{class:"ts-proof",role:"status"}),p=J("What does \
a full hand test find?",()=>{p.disabled=!0,u.textContent="testing",v({type:"prove"})}),h=W({model:t,el:e},{kind:"rig"});
h.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),h.alert,s("div",{class:"ts-tools"},s("span",
{class:"ts-pair"},"Put together: ",a),c),n,o,r,s("p",{class:"ts-hint"},"Drag the blue finger, or click the picture and u\
se the arrow keys: left and right slide, up and down turn. Or use the moves in words:"),i,s("p",{class:"ts-prompt"},"Tri\
ed by hand"),d,l,s("div",{class:"ts-tools"},p),u);let w=0,g="";function v(f){w+=1,h.send({...f,turn:w})}function x(){let f=t.
get("view");if(g!==t.get("figure")){g=t.get("figure"),o.innerHTML=g;let m=Tt(o,"svg");m.removeAttribute("role"),m.setAttribute(
"aria-hidden","true")}for(let m of Z(o,"[data-body]")){let[k,y]=f.moved[String(m.dataset.rides??m.dataset.body)]??[0,0];
m.setAttribute("transform",`translate(${k.toFixed(2)} ${y.toFixed(2)})`)}for(let m of Z(o,"[data-gear]"))m.classList.toggle(
"tsg-in",f.gears.includes(m.dataset.gear));o.dataset.turn=String(f.turn),n.textContent=`${f.gears.length>1?"■ ":f.gears.
length?"● ":"○ "}${f.title}.`,r.textContent=f.happened,r.classList.toggle("ts-stopped",/topped by/.test(f.happened)),
(l.childElementCount!==f.log.length||l.lastElementChild?.textContent!==f.log.at(-1))&&(l.replaceChildren(...f.log.map(m=>s(
"li",{class:/topped by/.test(m)?"ts-stopped":""},m))),l.scrollTop=l.scrollHeight),d.hidden=f.log.length>0,a.value=f.build,
u.textContent=f.proof,p.disabled=!1,$=!1,b()}o.addEventListener("keydown",f=>{if(ht(f))return;let m={ArrowLeft:[-1,0],ArrowRight:[
1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[f.key];m&&(f.preventDefault(),v({type:"nudge",travel:m[0],turned:m[1]}))}),a.addEventListener(
"change",()=>v({type:"build",build:a.value}));let O=null,D=null,$=!1;function S(f){let m=Tt(o,"svg"),k=m.getBoundingClientRect(),
y=m.viewBox.baseVal.width/k.width;return[(f.clientX-k.left)*y,(f.clientY-k.top)*y]}o.addEventListener("pointerdown",f=>{
let m=bt(f,".tsg-panel");if(!m||f.button!==0)return;let k=t.get("view").hand,[y,C]=S(f),E=Number(m.dataset.scale);O={x:y-
k[0]*E,y:C+k[1]*E,scale:E},o.setPointerCapture(f.pointerId),o.focus({preventScroll:!0}),o.classList.add("ts-pulling"),f.
preventDefault()}),o.addEventListener("pointermove",f=>{if(!O)return;let[m,k]=S(f);D={travel_mm:(m-O.x)/O.scale,turn_mm:(O.
y-k)/O.scale},b()});let L=()=>{O=null,o.classList.remove("ts-pulling")};o.addEventListener("pointerup",L),o.addEventListener(
"pointercancel",L);function b(){if($||!D)return;$=!0;let f=D;D=null,v({type:"pull",...f})}return h.follow("msg:custom",f=>{
f.type==="trouble"&&($=!1)}),h.follow("change:view",x),x(),h.close}function ps({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding",role:"status"}),a=s("p",{class:"\
ts-happened tsw-happened",role:"status"}),c=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,d=n.gears.map(
([k,y])=>s("button",{type:"button",class:"ts-button","data-gear":k,"aria-pressed":"false",onclick:()=>b({type:"gear",gear:k})},
y)),u=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:k=>b({type:"hold",shaft:k.target.value})},...ct(
n.holds)),p=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:k=>{i=k.target.value,m()}},...ct(r.dials.
map(k=>[k.shaft,k.name]))),h=k=>b({type:"turn",shaft:i,turns:k}),w=`1/${n.marks}`,g=s("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},J("↺ 1 turn",()=>h(-1),"One turn anticlockwise"),J(`↺ ${w}`,()=>h(-n.step),`${w} t\
urn anticlockwise`),J("↺ a touch",()=>h(-n.fine),"A touch anticlockwise"),J("a touch ↻",()=>h(n.fine),"A touch clock\
wise"),J(`${w} ↻`,()=>h(n.step),`${w} turn clockwise`),J("1 turn ↻",()=>h(1),"One turn clockwise"),J("Marks to zero",
()=>b({type:"reset"}))),v=new Map;for(let k of r.dials){let y=P("g",{},P("circle",{class:"tsw-end",r:34}),P("line",{class:"\
tsw-painted",x1:0,x2:0,y1:0,y2:-34}),P("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),C=[];for(let T=0;T<n.marks;T+=1)C.push(
P("line",{class:"tsw-tick",y1:-40,y2:T?-47:-52,transform:`rotate(${T*360/n.marks})`})),T&&C.push(P("text",{class:"tsw-nu\
mber",x:57*Math.sin(T*2*Math.PI/n.marks),y:-57*Math.cos(T*2*Math.PI/n.marks)+4},String(T)));let E=P("svg",{viewBox:"-70 \
-70 140 140",class:"tsw-dial","data-shaft":k.shaft,"aria-hidden":"true"},P("circle",{class:"tsw-plate",r:40}),...C,P("pa\
th",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),y),_=s("div",{class:"tsw-count",tabindex:"0",role:"application","ari\
a-roledescription":"shaft","data-shaft":k.shaft},s("div",{class:"tsw-name"}),E,s("div",{class:"tsw-strokes","aria-hidden":"\
true"}),s("div",{class:"tsw-figure"}));v.set(k.shaft,{box:_,svg:E,shaftEnd:y}),_.addEventListener("focus",()=>{i!==k.shaft&&
(i=k.shaft,m())}),_.addEventListener("keydown",T=>{if(ht(T))return;let j={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1,
PageDown:1,PageUp:-1}[T.key];j&&(T.preventDefault(),i=k.shaft,h(j*(T.key.startsWith("Page")?1:T.shiftKey?n.fine:n.step)))});
let M=null,A=T=>{let j=E.getBoundingClientRect();return Math.atan2(T.clientX-j.left-j.width/2,j.top+j.height/2-T.clientY)/
(2*Math.PI)};E.addEventListener("pointerdown",T=>{T.button===0&&(M=A(T),E.setPointerCapture(T.pointerId),_.focus({preventScroll:!0}),
T.preventDefault())}),E.addEventListener("pointermove",T=>{if(M===null)return;let j=A(T),z=j-M;z-=Math.round(z),M=j,x+=z,
D()});let N=()=>{M=null};E.addEventListener("pointerup",N),E.addEventListener("pointercancel",N)}let x=0,O=!1;function D(){
if(O||Math.abs(x)<.002)return;O=!0;let k=x;x=0,h(k)}let $=W({model:t,el:e},{kind:"rig"});$.show(...n.closed?[]:[s("p",{class:"\
ts-who"},"Practice. Nothing here is marked or saved.")],$.alert,o,...n.closed?[]:[s("div",{class:"ts-tools",role:"group",
"aria-label":"Gears engaged"},s("span",{},"Engage: "),...d),c],s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Ho\
ld still: ",u),s("span",{class:"ts-pair"},"Turn by hand: ",p)),s("div",{class:"tsw-counts"},...[...v.values()].map(k=>k.
box)),g,a,s("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a dial round, or go to it and use the a\
rrow keys (${w} turn), Shift with an arrow key (a touch) or Page Up and Page Down (one turn). Each stroke is a whole tur\
n.`));let S=0,L=null;function b(k){S+=1,$.send({...k,turn:S})}let f=k=>{let y=[];for(let C=k;C>0;C-=5)y.push(C>=5?"||||/":
"|".repeat(C));return y.join(" ")};function m(){let k=t.get("view");L!==t.get("figure")&&(L=String(t.get("figure")),c.innerHTML=
L);for(let y of Z(c,"[data-wheel]")){let[C,E]=k.wheels[String(y.dataset.wheel)]??[0,!0];y.setAttribute("transform",`tran\
slate(0 ${(C*Number(y.dataset.reach)).toFixed(1)})`),y.classList.toggle("tsw-behind",!E)}for(let y of d)y.setAttribute("\
aria-pressed",String(k.engaged.includes(y.dataset.gear)));u.value=k.held,p.value=i;for(let y of k.dials){let{box:C,shaftEnd:E}=v.
get(y.shaft),_=y.way>0?"↻":y.way<0?"↺":"";E.setAttribute("transform",`rotate(${y.angle})`);let[M,,A,N]=C.children;M.
textContent=`${y.name}${y.held?", held":y.shaft===i?", your hand":""}`,A.textContent=y.strokes||_?`${_} ${f(y.strokes)}`:
"no stroke",N.textContent=y.figure,C.classList.toggle("tsw-hand",y.shaft===i),C.classList.toggle("tsw-held",y.held),C.setAttribute(
"aria-label",`${y.name}${y.held?", held":""}. ${y.words}`)}o.textContent=k.finding,a.textContent=k.happened,e.dataset.turn=
String(k.turn),O=!1,D()}return $.follow("change:view",m),m(),$.close}function fs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),c=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,c),l=[],
d=[],u=null,p=t.get("plan").lookingOnly,h=(b,f)=>s("button",{type:"button",class:"ts-button","data-verdict":b,"aria-pres\
sed":"false",onclick:()=>x.send({type:"judge",place:u,verdict:b})},f),w=p?[]:[h("stop","Stop here"),h("well","Fine as it\
 is")],g=s("button",{type:"button",class:"ts-button",onclick:()=>x.send({type:"next"})},"Another day"),v=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...w);t.get("plan").more&&v.append(g);let x=W({model:t,
el:e},{kind:"rig"});x.show(s("p",{class:"ts-who"},p?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),x.alert,n,s("p",{class:"ts-keys"},p?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),r,i),p||i.after(v);function O(b,f){let m=b!==u;u=b;for(let[k,y]of d.
entries()){let C=l[k][0]===b;y.setAttribute("tabindex",C?"0":"-1"),y.setAttribute("aria-pressed",String(C)),y.classList.
toggle("tsh-chosen",C),C&&f&&(y.focus({preventScroll:!0}),D(y))}m&&x.send({type:"choose",place:b})}function D(b){let f=Tt(
b,".tsh-hit").getBoundingClientRect(),m=r.getBoundingClientRect();(f.left<m.left||f.right>m.right)&&(r.scrollLeft+=f.left-
m.left-(m.width-f.width)/2),(f.bottom<0||f.bottom>innerHeight||f.top<0)&&b.scrollIntoView({block:"nearest"})}function $(){
let b=t.get("plan");l=b.places,r.innerHTML=b.drawing,Tt(r,"svg").setAttribute("role","group"),d=l.map(([f])=>Tt(r,`[data\
-place="${f}"]`)),d.forEach((f,m)=>{f.setAttribute("role","button"),f.setAttribute("aria-label",`${m+1} ${l[m][1]}`),f.addEventListener(
"click",()=>O(l[m][0],!0))}),u=String(t.get("view").chosen),O(u,!1)}r.addEventListener("keydown",b=>{if(ht(b))return;let f=l.
findIndex(([y])=>y===u),m=Math.min(6,l.length),k=f;if(b.key==="ArrowRight")k=f+1;else if(b.key==="ArrowLeft")k=f-1;else if(b.
key==="ArrowDown")k=f+m;else if(b.key==="ArrowUp")k=f-m;else if(b.key==="Home")k=0;else if(b.key==="End")k=l.length-1;else if(b.
key!=="Enter"&&b.key!==" ")return;b.preventDefault(),k>=0&&k<l.length&&O(l[k][0],!0)});function S(){let b=t.get("view");
n.textContent=b.finding;let f=l.findIndex(([y])=>y===b.chosen);o.textContent=`${f+1}  ${l[f][1]}`,a.textContent=b.seen;let{
verdict:m,...k}=b.told;if(c.replaceChildren(),m){let y=b.judged[b.chosen],C=y==="stop"==(m==="Stop here."),E=y==="stop"?
"Stop here":"Fine as it is";c.append(s("p",{class:"tsh-verdict"},C?`✓ Yes: ${m}`:`✗ You said “${E}”. The course sa\
ys: ${m}`),s("dl",{class:"ts-facts"},...Object.entries(k).flatMap(([_,M])=>[s("dt",{},_),s("dd",{},M)])))}for(let y of w)
y.setAttribute("aria-pressed",String(b.judged[b.chosen]===y.dataset.verdict));for(let[y,C]of d.entries()){let E=b.judged[l[y][0]];
C.setAttribute("aria-label",`${y+1} ${l[y][1]}${E?`, judged: ${E==="stop"?"stop here":"fine as it is"}`:""}`);let _=C.querySelector(
".tsh-tag");if(!E){_?.remove();continue}_||(_=P("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),C.
append(_)),_.textContent=E==="stop"?"■ stop":"○ well"}e.dataset.turn=b.chosen}let L=()=>{$(),S()};return x.follow("c\
hange:plan",L),x.follow("change:view",S),L(),x.close}function hs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),c=new Map,l=n.sliders.map(([h,w,g,v,x,O])=>{let D=et(h.replace("_","-")),$=s("output",{class:"\
tsl-figure",for:D}),S=s("input",{id:D,type:"range",min:v,max:x,step:O,oninput:()=>{L(),u.send({type:"set",name:h,value:Number(
S.value)})}}),L=()=>{$.textContent=`${S.value} ${g}`,S.setAttribute("aria-valuetext",`${S.value} ${g==="°"?"degrees":g}`)};
return c.set(h,{slider:S,say:L}),s("div",{class:"tsl-row"},s("label",{for:D},w),S,$)}),d=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>u.send({type:"set",name:"grip",value:d.value})},...ct(n.grips)),u=W({model:t,el:e},{kind:"r\
ig"});u.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),u.alert,r,s("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...l,s("div",{class:"tsl-row"},s("span",{},"Grip"),d)),a,o,s("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function p(){let h=t.get("vi\
ew");r.textContent=h.finding,o.textContent=h.sum,a.innerHTML=h.drawing;for(let[w,{slider:g,say:v}]of c)document.activeElement!==
g&&(g.value=h.sizes[w]),v();d.value=h.sizes.grip}return u.follow("change:view",p),p(),u.close}var re={x:90,y:120,perMm:20,radius:82,bevel:30};function yn(t){let e=P("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=re;e.append(P("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),Q(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let h=n+p*t.pitch*o;if(p%2){e.append(Q(h,
r,h,r+18,"tsi-fine"));continue}let w=p/2;e.append(Q(h,r,h,r-(w%5?18:27),w%5?"tsi-fine":"tsi-bold")),w%5===0&&e.append(tt(
h,r-33,String(w)))}let c=P("g",{});e.append(c,tt(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway. T\
himble: 50 lines a turn.","start"));let i=P("path",{d:`M0 ${r-a+14}L${re.bevel} ${r-a}L${re.bevel} ${r+a}L0 ${r+a-14}Z`,
class:"tsi-body"}),l=P("rect",{x:re.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),d=P("rect",{x:0,y:r-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),u=P("g",{});return c.append(d,i,l,u),{node:e,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*o} 0)`),u.replaceChildren();for(let h=0;h<t.lines;h+=1){let w=h-p.line;w-=t.lines*Math.round(w/t.lines);let g=w/
t.lines*2*Math.PI;if(Math.abs(g)>1.15)continue;let v=r-(a-8)*Math.sin(g),x=h%5===0;u.append(Q(0,v,x?26:16,v,x?"tsi-bold":
"tsi-fine")),x&&u.append(tt(36,v+5,String(h),"start"))}e.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function gs(t){
return Mt(t,(e,n,r)=>{let o=yn(e),a=pt("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, \
out to the right",onInput:l=>n({open:l})}),c=dt("Between the faces",e.between,r.between,l=>n({between:l,open:e.top})),i=e.
hands.length?dt("Close it",e.hands,r.hand,l=>n({hand:l})):null;return{picture:o.node,controls:[Lt(c.row,i?.row),Lt(q("Cl\
ose until it rests",()=>n({open:-1})),q("Open",()=>n({open:e.top}))),a.row],set(l,d){o.set(l),a.box.value=String(Math.max(
0,l.mm)),c.box.value=d.between}}})}function ms({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[l,d,u]of n.checks){let p=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${d}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:l})}},"Make"),h=Nt("it shows",!1);h.classList.add("t\
sk-shown"),a.set(l,{button:p,shown:h}),o.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},d),Nt("min",!0,
`${u}`),Nt("",!1,p),h))}let c=W({model:t,el:e},{kind:"rig"});c.show(s("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),c.alert,r,oe("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));
function i(){let l=t.get("view");r.textContent=l.finding;for(let[d,{button:u,shown:p}]of a){let h=l.shown[d];u.setAttribute(
"aria-disabled",h?"true":"false"),u.classList.toggle("ts-off",!!h),u.textContent=h?"Made":"Make",p.textContent=h?`${h[0]?
"✓":"✗"} ${h[1]}`:"",p.classList.toggle("tsk-failed",!!h&&!h[0])}}return c.follow("change:view",i),i(),c.close}function kn(){let t=P("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=P("g"),n=P("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(P("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,P("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=c=>(-135+270*c)*Math.PI/180,o="";function a([c,i,l]){e.replaceChildren();for(let d=0;d*i<=c+
1e-9;d+=1){let u=r(d*i/c),p=d%l===0,h=w=>[110+w*Math.sin(u),104-w*Math.cos(u)];if(e.append(Q(...h(p?72:79),...h(88),p?"t\
sg-mark tsg-long":"tsg-mark")),p&&d%(2*l)===0){let[w,g]=h(58);e.append(tt(w,g+4.5,String(Number((d*i).toFixed(2)))))}}e.
append(tt(110,170,"kN"))}return{node:t,set(c,i,l){String(c)!==o&&(o=String(c),a(c));let d=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*d})`),t.setAttribute("aria-label",l)}}}function ws(t){return Mt(t,(e,n,r)=>{
let o=kn(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),l=pt("Push",{min:0,max:100,step:1,value:r.travel,onInput:h=>n(
{travel:h}),words:h=>h>=100?"at the shoulder":`${h} % of the way`}),d=[l.row],u=null;if(!e.readingsOnly){let h=dt("Part",
e.places,r.place,x=>n({place:x,travel:0}));u=dt("Driver bears on",e.drivers,r.driver,x=>n({driver:x,travel:0}));let w=dt(
"Seat",e.seats,r.seat,x=>n({seat:x})),g=pt("Pair",{min:0,max:100,step:1,value:r.grip,onInput:x=>n({grip:x}),words:x=>x===
0?"loosest of the fit":x===100?"tightest of the fit":`${x} % from loosest to tightest`}),v=pt("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:x=>n({warmth:x}),words:x=>`${x} °C`});d.unshift(Lt(h.row,u.row,w.row),
g.row,v.row)}let p=s("dl",{class:"ts-facts"});return e.readingsOnly||d.push(p),{picture:i,controls:d,set(h,w){h.section!==
c&&(c=h.section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*w.travel/
100} 0)`),o.set(h.gauge,h.force,h.words),Number(l.box.value)!==w.travel&&document.activeElement!==l.box&&l.set(w.travel),
u&&(u.row.hidden=!h.drives),h.facts&&p.replaceChildren(...St(h.facts))}}})}function bs({model:t,el:e}){let n=t.get("steps"),r=t.get("reach"),o=new Map(n.map(([L],b)=>[L,b])),a=s("div",{class:"ts-\
scroll"}),c=s("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=s(
"p",{class:"ts-finding",role:"status"}),l=s("ul",{class:"ts-sentences"}),d=s("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...ct(n.map(([L,b],f)=>[L,`${f+1}  ${b}`]))),u=s("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),p=W({model:t,el:e},{kind:"rig",lost(){d.disabled=!0}});p.show(p.alert,s("p",{class:"ts-f\
inding"},t.get("finding")),s("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",d),
u),a,s("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,c,l),a.innerHTML=t.get("figure");let h=Tt(a,"svg");h.setAttribute("role","group");let w=Z(h,".tsf-step").sort(
(L,b)=>Number(L.dataset.step)-Number(b.dataset.step)),g=Z(h,".tsf-rule").map(L=>({node:L,ends:String(L.dataset.rule).split(
"-").map(Number)}));w.forEach((L,b)=>{L.setAttribute("role","button"),L.setAttribute("aria-label",`${b+1} ${n[b][1]}, ${r[b].
before.length} before it, ${r[b].after.length} after it`),L.addEventListener("click",()=>O(b,!0))});let v=Number(o.get(t.
get("near").step));function x(L){let b=new Set(r[v].before),f=new Set(r[v].after);w.forEach((C,E)=>{C.setAttribute("tabi\
ndex",E===v?"0":"-1"),C.setAttribute("aria-pressed",String(E===v)),C.classList.toggle("ts-chosen-step",E===v),C.classList.
toggle("ts-before-it",b.has(E)),C.classList.toggle("ts-after-it",f.has(E)),C.classList.toggle("ts-either",E!==v&&!b.has(
E)&&!f.has(E))});let m=C=>C===v||b.has(C)||f.has(C);for(let{node:C,ends:E}of g){let _=b.has(E[0])&&(E[1]===v||b.has(E[1]))||
f.has(E[1])&&(E[0]===v||f.has(E[0]));C.classList.toggle("ts-either",!(_&&E.every(m)))}d.value=n[v][0],L&&w[v].focus({preventScroll:!0});
let k=w[v].getBoundingClientRect(),y=a.getBoundingClientRect();(k.left<y.left+16||k.right>y.right-16)&&(a.scrollLeft+=k.
left-y.left-y.width/2)}function O(L,b){v=L,x(b),p.send({type:"choose",step:n[L][0]})}let D=L=>{let f=Tt(w[L],"rect").getBBox();
return{x:f.x,y:f.y}};function $(L){let b=D(v),f=y=>y.sort((C,E)=>Math.abs(D(C).y-b.y)-Math.abs(D(E).y-b.y))[0];if(L==="A\
rrowRight")return f(g.filter(({ends:y})=>y[0]===v).map(({ends:y})=>y[1]));if(L==="ArrowLeft")return f(g.filter(({ends:y})=>y[1]===
v).map(({ends:y})=>y[0]));let m=w.map((y,C)=>C).filter(y=>Math.abs(D(y).x-b.x)<2&&y!==v),k=L==="ArrowUp"?-1:1;return f(m.
filter(y=>(D(y).y-b.y)*k>0))}h.addEventListener("keydown",L=>{if(!ht(L))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes(L.key)){let b=$(L.key);b!==void 0&&O(b,!0),L.preventDefault()}else(L.key==="Enter"||L.key===" ")&&L.preventDefault()}),
d.addEventListener("change",()=>O(Number(o.get(d.value)),!1)),u.addEventListener("click",()=>{let L=a.classList.toggle("\
ts-fit");u.setAttribute("aria-pressed",String(L)),x(!1)});function S(){let L=t.get("near");i.textContent=L.words,c.innerHTML=
L.figure,l.replaceChildren(...It(L.sentences))}return p.follow("change:near",S),S(),requestAnimationFrame(()=>x(!1)),p.close}function xn(){let t=P("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=P("g",{}),n=P("g",{});return e.append(
P("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),Q(150,164,150,98,"tsi-bold"),P("circle",{cx:150,cy:98,r:5,class:"tsg-h\
ub"})),n.append(Q(150,86,150,40,"tsi-plunger"),P("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,Q(50,164,250,
164,"tsg-centre"),Q(150,250,150,80,"tsg-centre"),n,tt(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute("\
transform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function vs(t){
return Mt(t,(e,n,r)=>{let o=Ft(),a=xn(),c=pt("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:d=>`turn\
ed by ${d}°`,onInput:d=>n({angle:d})}),i=dt("Plunger",e.pressed,r.pressed,d=>n({pressed:d})),l=dt("Stand",e.tilts,r.tilt,
d=>n({tilt:d}));return{picture:s("div",{class:"tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[Lt(i.row,l.row),c.row],set(d,u){o.set(d.mm,d.words),a.set(d.state.angle,Number(d.
state.tilt),`Shaft end on, turned by ${d.state.angle}°; the plunger stands ${d.state.tilt}° off square. Not to scale.`),
c.set(u.angle)}}})}var ks=(t,e)=>(t+e)%7<2,xs=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,ie=()=>!1,ae=t=>(e,n)=>n%t===0,$n={"":ie,dots:(t,e)=>t%6<2&&e%
6<2,rising:ks,cross:xs,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":ie,"lines-2":ae(14),"lines-3":ae(8),"lines-4":ae(5),"lines-5":ae(
3)};function Sn(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var ys=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function $s(t,[e,n],r,o,a){let c=n*4,i=new Uint32Array(c*e*4),l=new Map(r.map(([p,,h,w])=>{let g=h?ys(Sn(h),200):
0;return[p,{ground:g,hatch:$n[w]??ie}]})),d={ground:0,hatch:ie},u=ys(o,190);for(let p=0;p<e;p+=1){let h=(e-1-p)*4;for(let w=0;w<
n;w+=1){let g=t[p*n+w];if(!g)continue;let{ground:v,hatch:x}=l.get(g&15)??d,O=a&&(g&16)!==0,D=a&&(g&32)!==0;for(let $=h;$<
h+4;$+=1)for(let S=w*4;S<(w+1)*4;S+=1){let L=x(S,$)||O&&ks(S,$)||D&&xs(S,$);i[$*c+S]=L?u:v}}}return i}var Cn=600;function Ls(t,e,n,r,o,a){let[c,i]=n;t.width=i*4,t.height=c*4;let l=new Uint8ClampedArray($s(e,n,r,o,a).buffer),
d=new ImageData(l,t.width,t.height);t.getContext("2d")?.putImageData(d,0,0)}function An(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return Ls(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function Cs({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),c=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),l=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),d=W({model:t,el:e},{kind:"rig",lost(){h.setDisabled(!0),Wt(e)}}),u=null,p=A=>{u=et("turn"),d.send({...A,turn:u})},
h=Qt({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(A){h.
drawing.strokes(A),p({type:"lay",entries:A})},onRemove:A=>p({type:"remove",at:A}),onClear:()=>p({type:"clear"})}),w=q("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),g=s("input",{type:"range",id:et("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),v=s("output",{for:g.id}),x=$t({id:et("slide"),onchange:()=>p({type:"slide",by:x.value})},
t.get("view").slides),O=null;g.addEventListener("input",()=>{v.textContent=`${g.value} µm`;let A={type:"flat",um:Number(
g.value)};u===null?p(A):O=A});let{box:D,unit:$}=h.drawing;h.drawing.land.classList.add("tsp-clear"),h.drawing.frame.prepend(
l);let S=(...A)=>s("span",{class:"ts-pair"},...A);d.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),d.alert,o,h.drawing.frame,i,s("div",{class:"ts-tools"},w,S(s("label",{for:x.id},"the other face is"),x),S(a,q("1 m\
inute passes",()=>p({type:"time",by:1})),q("5 minutes pass",()=>p({type:"time",by:5}))),S(s("label",{for:g.id},"faces ou\
t of flat by"),g,v)),h.tools,c,s("details",{class:"ts-keys"},s("summary",{},"Passes laid"),h.empty,h.list));function L(){
let A=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return A?A.slice(0,3).map(Number):[0,0,0]}let b="",f="";function m(){
let A=t.get("view"),N=r[A.closed?"closed":"film"],T=t.get("grid"),j=T instanceof DataView?new Uint8Array(T.buffer,T.byteOffset,
T.byteLength):new Uint8Array(T);Ls(l,j,A.shape,N,L(),!A.closed);let[z,G]=A.shape,[vt,st]=[A.corner[0]-A.pitch/2,A.corner[1]-
A.pitch/2],H=(X,nt)=>`${(100*X/nt).toFixed(3)}%`;l.style.left=H(vt-D.left,D.width),l.style.width=H(G*A.pitch,D.width),l.
style.top=H(D.high-st-z*A.pitch,D.height),l.style.height=H(z*A.pitch,D.height);let F=new Set(j.map(X=>A.closed?X:X&15)),
U=N.filter(([X])=>F.has(X)),at=`${U.map(([,X])=>X)} ${L()}`;at!==b&&(b=at,i.replaceChildren(...U.map(X=>An(X,L()))))}let k=P(
"g");h.drawing.over.append(k);let y=([A,N])=>[A-D.left,D.high-N];function C([A,N]){let T=N.map(j=>{let[z,G]=y(j);return`\
M${z.toFixed(1)} ${G.toFixed(1)}h0.01`});return P("path",{d:T.join(""),class:"tsp-lump","stroke-width":2*A})}function E(A){
let[N,T]=y(A[A.length-1]),j=`M${N-1.3*$} ${T-$}h${2.6*$}l${-1.3*$} ${2.2*$}Z`;return[P("path",{d:h.drawing.path(A),class:"\
tsp-way","stroke-width":$}),P("path",{d:j,class:"tsp-out"})]}function _(){let A=t.get("view");if(u!==null&&A.turn!==u)return;
u=null;let N=JSON.stringify([A.entries,A.notes]);if(N!==f&&h.show(A.entries,A.notes),f=N,h.drawing.strokes([]),m(),k.replaceChildren(
...A.lumps.map(C),...A.leaks.flatMap(E)),h.drawing.svg.classList.toggle("tsp-shut",A.closed),h.drawing.svg.classList.toggle(
"tsp-clean",A.closed||A.clean),o.textContent=A.finding,x.value=A.slide,a.textContent=`minute ${A.minute}`,w.textContent=
A.closed?"Lift the face off again":"Close the face",O===null&&(g.value=String(A.flat),v.textContent=`${A.flat} µm`),c.replaceChildren(
...St(A.facts)),O===null)return;let T=O;O=null,p(T)}d.follow("change:view",_),d.follow("msg:custom",A=>{A.type==="troubl\
e"&&(u=null,h.drawing.strokes([]))});let M=new MutationObserver(()=>setTimeout(m,Cn));return M.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),_(),()=>{d.close(),M.disconnect()}}function As(t){return Mt(t,(e,n,r)=>{let o=Ft(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),l=e.places.map(([u,p])=>[u,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:u})},p)]),d=[s("p",{class:"ts-hint"},e.rule),Lt(s("span",{},"Set the gauge down at"),...l.map(([,u])=>u))];
return e.readingsOnly||(d.push(Lt(dt("Lip looks towards",e.sides,r.lip,u=>n({lip:u})).row,dt("Lip is",e.greases,r.grease,
u=>n({grease:u})).row,e.sleeves.length?dt("It went",e.sleeves,r.sleeve,u=>n({sleeve:u})).row:"")),d.push(pt("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:u=>`${u.toFixed(2)} mm${u<0?", proud":""}`,onInput:u=>n({
depth:u})}).row,pt("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:u=>u?`${u.toFixed(2)} mm across`:"square",onInput:u=>n(
{lean:u})}).row)),{picture:i,controls:d,set(u,p){u.section!==c&&(c=u.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.
setAttribute("transform",u.placed),o.set(u.dial,u.words);for(let[h,w]of l)w.setAttribute("aria-pressed",String(h===p.place))}}})}function Ms({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=Ft(),a=n.readingsOnly?null:rs(n),c=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),l=qt((b,f)=>O.send({type:"set",state:b,turn:f})),d=b=>{r={...r,...b},l.ask(r)},
u=(b,f)=>{let m=[...r.shims];m[b]=f,d({shims:m.filter(Boolean),turns:0})},p=(b,f,m)=>q(b,f,{"aria-pressed":m}),h=q("Turn\
 the shaft ten times",()=>d({turns:r.turns+10})),w=p("Pull the shaft away",()=>d({side:"away"}),"true"),g=p("Push it to \
the dial",()=>d({side:"towards"}),"false"),v=dt("Plunger",n.plungers,r.plunger,b=>d({plunger:b})),x=[s("div",{class:"ts-\
tools"},n.rolls?h:null,v.row,w,g)];if(!n.readingsOnly){let b=dt("Shim",n.shelf,r.shims[0],m=>u(0,m)),f=n.second?dt("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",m=>u(1,m)):null;x.unshift(s("div",{class:"ts-tools"},b.row,f?.row)),x.
push(pt("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:m=>d({warmth:m}),words:m=>m?`case ${Math.round(n.caseRise*
m/100)} K warmer`:"cold, as at the bench"}).row)}let O=W({model:t,el:e},{kind:"rig"}),D=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});D.innerHTML=n.section;let $=[s("p",{class:"ts-who"},n.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),O.alert,s("div",{class:"\
tsg-beside"},D,s("div",{class:"tsg-gauge"},o.node,s("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...x,c,
a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];O.show(...$.filter(Boolean));function S(){let b=t.get("show\
n");l.waiting||(r=b.state),o.set(b.dial,b.dialWords),w.setAttribute("aria-pressed",String(b.state.side==="away")),g.setAttribute(
"aria-pressed",String(b.state.side==="towards")),c.textContent=b.finding,a&&(a.set(b.cold,b.warm,b.words.join(" ")),i.replaceChildren(
...b.words.map(f=>s("p",{},f)))),l.answered(b.turn)}let L=()=>l.free();return O.follow("change:shown",S),O.follow("msg:c\
ustom",L),S(),O.close}function Es({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),c=s("dl",{class:"ts-facts"}),i=null,l=null,d=(f,m)=>{l={...l,[f]:m},i===null&&u()};function u(){
i=et("choice"),S.send({type:"choose",chosen:l,turn:i}),l=null}let p=s("div",{class:"tsj-settings"}),h=(f,m,k)=>{let y=et(
"set");return m.id=y,p.append(s("label",{for:y},f),s("span",{class:"tsj-slide"},m,k)),m},w=(f,m,k)=>h(m,s("select",{class:"\
ts-box",onchange:y=>d(f,y.target.value)},...ct(k.map(y=>typeof y=="string"?[y,y]:y)))),g=(f,m,k)=>h(m,s("input",{type:"r\
ange",oninput:y=>d(f,Number(y.target.value))}),k),v={group:w("group","Bolt of the unit",n.groups),thread:w("thread","Thr\
ead",n.threads),strength:w("strength","Strength class",n.classes),state:w("state","State of the thread",n.states),tool:w(
"tool","Tool",n.tools)},x=s("output",{class:"tsj-figure"}),O=g("torque_nm","Torque",x),D=s("output",{class:"tsj-figure"}),
$=g("engagement_mm","Thread that meets",D),S=W({model:t,el:e},{kind:"rig"});S.show(s("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),S.alert,r,o,s("div",{class:"tsj-bench"},p,a),c);let L=(f,m,k,y,C,E)=>{At(f,{min:m,max:k,
step:y}),i===null&&(f.value=String(C)),f.setAttribute("aria-valuetext",E)};function b(){let f=t.get("view");if(i!==null&&
f.turn!==i)return;i=null,l!==null&&u();let{chosen:m}=f;r.textContent=f.finding,o.innerHTML=f.band,a.innerHTML=f.section,
c.replaceChildren(...St(f.facts));for(let[k,y]of Object.entries(v))y.value=m[k];L(O,1,f.topTorque,.5,m.torque_nm,f.torqueText),
x.textContent=f.torqueText,L($,f.lowEngagement,f.topEngagement,.5,m.engagement_mm,f.engagementText),D.textContent=f.engagementText}
return S.follow("change:view",b),b(),S.close}function Os({model:t,el:e}){let n=ne(t.get("picture")),r=W({model:t,el:e},{kind:"rig"});return r.show(r.alert,s("p",{class:"\
ts-finding"},t.get("finding")),...n.nodes),r.close}function Ut(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function ye(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var ve=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function Ts(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let c=Ut(e,
n),i=c.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let d=e.map(([h])=>h),u=t==="ArrowLeft"?-1:1,p=Ut(e,d[(d.
indexOf(n)+u+d.length)%d.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let l=t.toLowerCase();return ve(c,i).find(d=>o[d].toLowerCase().startsWith(l))}function Ns({stages:t,stage:e,step:n,isOpen:r}){
let o=Ut(t,e),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(o.at(-1)));return ve(o,o.indexOf(String(n))).find(r)??ve(a,c).find(
r)}function Is({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>vt()},
...ct(n.stages.map(([B,K])=>[B,K]))),c=J(n.marked?"Next open step":"Next ready step",()=>A("next"));c.classList.add("ts-\
next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this stag\
e",onkeydown:B=>T(B)}),l=s("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the st\
age, Enter takes a step in hand; Enter again does it."),d=s("div",{class:"ts-hand",role:"group","aria-label":"Step in ha\
nd",onkeydown:B=>{B.key!=="Enter"||!B.target.matches("input[type=radio], .ts-number-box")||(B.preventDefault(),t.get("ha\
nd").stands?z():nt())}}),u=s("div",{class:"ts-scroll ts-fit"}),p=s("dl",{class:"ts-facts"}),h=s("ul",{class:"ts-sentence\
s"}),w=s("p",{class:"ts-prompt"},"Wrong so far"),g=s("select",{class:"ts-box ts-before","aria-label":"A step that stands"}),
v=J("Take out again",()=>{g.value&&f({type:"out",step:g.value},"hand")}),x=J("Put the tools down",()=>f({type:"over"},"t\
old"));x.classList.add("ts-over");let O=s("div",{}),D=s("p",{class:"ts-status"}),$=s("details",{ontoggle:()=>{$.open!==!!t.
get("view").record&&f({type:"record",open:$.open})}},s("summary",{},"Build record"),O),S=W({model:t,el:e},{kind:"rig"});
S.show(s("p",{class:"ts-who"},n.who),S.alert,r,D,o,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"\
ts-tools"},a,c),i,l),d),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},g,v),x),u,p,w,h,$);let L=0,b=null;function f(B,K=null){
L+=1,b=K&&{turn:L,focus:K},e.setAttribute("aria-busy","true"),S.send({...B,turn:L})}let m="",k=null,y="next",C=B=>!t.get(
"view").done.includes(B),E=()=>Z(i,"[data-step]"),_=B=>E().find(K=>K.dataset.step===B)?.focus(),M=()=>({stages:n.stages,
stage:a.value,step:k,isOpen:C});function A(B,K){y=B,f(B==="list"?{type:"take",step:K}:{type:"next"},"hand")}function N(B){
a.value=ye(n.stages,B)??a.value,k=B,vt(),_(B)}function T(B){if(ht(B))return;let K=Ts(B.key,{...M(),labels:n.labels});K&&
(B.preventDefault(),N(K))}function j(){let B=Ns(M());B?y==="next"?c.focus():N(B):x.focus()}function z(){let B=t.get("vie\
w").done.length>=Object.keys(n.labels).length;y==="next"&&!B?A("next"):j()}function G(B){let{done:K,ready:ot}=t.get("vie\
w");return K.includes(B)?{sign:"✓",word:"done"}:ot.includes(B)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"op\
en":"waits"}}function vt(){let B=Ut(n.stages,a.value);(k===null||!B.includes(k))&&(k=B.find(C)??B[0]);let K=t.get("hand").
step,ot=JSON.stringify([a.value,B.map(G),K]);if(ot===m){for(let ft of E())ft.tabIndex=ft.dataset.step===k?0:-1;return}m=
ot;let lt=E().find(ft=>ft===document.activeElement)?.dataset.step;i.replaceChildren(...B.map(ft=>st(ft,K))),lt&&_(lt)}function st(B,K){
let{sign:ot,word:lt}=G(B);return s("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${lt}`,"data-step":B,
tabindex:B===k?"0":"-1","aria-current":B===K?"step":!1,"aria-label":`${n.labels[B]}: ${lt}`,onclick:()=>{k=B,A("list",B)}},
Ot(ot),n.labels[B])}let H="",F=new Map;function U(B){let K=jt(B),ot=s("p",{class:"ts-read",id:K.read,role:"status"}),lt=0,
ft=R=>{f({type:"set",name:B.name,value:R}),lt=L},gt=Bt(B).make(B,K,ft,()=>{}),I=Ht(B,K,null);return I.append(gt.element,
ot),I.dataset.field=B.name,{element:I,flush:()=>gt.flush?.(),show(R={},Y){if(Y<lt)return;gt.show(R);let it=R.read?`read \
as ${R.read}`:"";ot.textContent=R.error?`▲ Look again: ${R.error}`:it}}}let at=B=>s("dl",{class:"ts-facts"},...St(B));
function X(){let B=t.get("hand"),K=JSON.stringify(B);if(K===H)return;if(H=K,d.dataset.stands=String(!!B.stands),F=new Map(
(B.fields??[]).map(gt=>[gt.name,U(gt)])),!B.step){d.replaceChildren(s("p",{class:"ts-hint"},"No step in hand. Choose one\
 from the list, or press the button above it."));return}let ot=J(`Do it: ${B.label}`,nt);ot.classList.add("ts-do");let lt=B.
stands?[J("Go on",z),J("Take it out again",()=>f({type:"out",step:B.step},"hand"))]:[ot];d.replaceChildren(s("p",{class:"\
ts-prompt ts-hand-name",tabindex:"-1"},B.label),...B.plain.map(gt=>s("p",{class:"ts-hint"},gt)),...B.cautions.map(gt=>s(
"p",{class:"ts-caution"},s("b",{},"Take care: "),gt)),...B.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),at(
B.read)]:[],...B.card.length?[at(B.card)]:[],...[...F.values()].map(gt=>gt.element),s("div",{class:"ts-tools"},...lt));let ft=ye(
n.stages,B.step);ft&&([a.value,k]=[ft,B.step])}function nt(){for(let B of F.values())B.flush();f({type:"do"},"after")}function yt(){
let B=t.get("view").asked_back,K=Z(d,"[data-field]").find(ft=>ft.dataset.field===B),ot=K&&Z(K,"input:not(:disabled), sel\
ect, button"),lt=Z(d,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return ot?.[0]??
lt[0]}function xt(){let B=t.get("view"),K=B.told;r.textContent=B.finding,D.textContent=B.status,D.hidden=!B.status,o.textContent!==
K.join("")&&o.replaceChildren(...K.map(lt=>s("p",{},lt))),X(),vt();for(let[lt,ft]of F)ft.show(B.states[lt],B.turn);if(u.
dataset.shown!==B.figure&&(u.innerHTML=B.figure,u.dataset.shown=B.figure),p.replaceChildren(...St(B.facts)),h.replaceChildren(
...It(B.faults.map(([,lt])=>lt))),w.hidden=h.hidden=!B.faults.length,Et(B.done),O.innerHTML=B.record,$.open=!!B.record,e.
setAttribute("aria-busy",String(B.turn<L)),!b||B.turn<b.turn)return;let{focus:ot}=b;b=null,ot==="told"?o.focus():ot==="a\
fter"&&!t.get("hand").step?j():(yt()??c).focus()}function Et(B){if(g.disabled=v.disabled=!B.length,g.dataset.done===B.join(
" "))return;g.dataset.done=B.join(" ");let K=[...B].reverse();g.replaceChildren(...ct(K.map(ot=>[ot,n.labels[ot]])))}return S.
follow("change:view",xt),xt(),S.close}function Mn(t){let e=P("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=Q(r,
o,r,o,"tsi-adapter"),c=P("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=Q(r,o+74,r,o+74,"tsi-arm"),l=tt(r,o+94,"");return e.
append(Q(r,o,r+440,o,"tsi-lever"),a,c,P("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),tt(r+440,o-20,"hand, middle of the gri\
p","end"),tt(r+20,o-20,"square drive","start"),Q(r+440,o+10,r+440,o+84,"tsg-centre"),i,l,tt(8,242,"lengths to scale","st\
art")),{node:e,set(d){let u=d.state.angle/180*Math.PI,p=r-d.state.reach*n*Math.cos(u),h=o-d.state.reach*n*Math.sin(u);At(
a,{x2:p,y2:h}),At(c,{cx:p,cy:h}),At(i,{x1:p,x2:r+440}),At(l,{x:(p+r+440)/2}),l.textContent="the lever from bolt to hand,\
 along the wrench",e.setAttribute("aria-label",`${t.name}. ${d.words}`)}}}function Ds(t){return Mt(t,(e,n,r)=>{let o=Mn(
e),a=(i,l,d,u,p,h)=>pt(i,{min:d,max:u,step:p,value:r[l],words:w=>`${w} ${h}`,onInput:w=>n({[l]:w})}),c={setting:a("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{picture:o.node,controls:Object.values(c).map(i=>i.row),
set(i,l){o.set(i);for(let[d,u]of Object.entries(c))u.set(l[d])}}})}function ke(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=c=>String(c).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var En="twoshaft-unsent:";function Bs(t,e){let n=En+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,c,i,l=new Date)=>o({...r(),[a]:{value:c,
base:i,at:l.toISOString()}}),drop(a){let{[a]:c,...i}=r();c&&o(i)}}}function Ps(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var Pt=null,On="input, button, select, textarea, summary, a, [tabindex]",Rs=t=>[...t.querySelectorAll(On)];function js(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?Pt={form:e,at:Rs(t).indexOf(a),from:null}:Pt?.form===e&&t.
isConnected&&(Pt=null))},r=({target:a})=>{Pt?.form===e&&a instanceof HTMLInputElement&&(Pt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(Pt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=Pt,i=Rs(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}function Hs(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),l=q("Use these figures",()=>h("yes")),d=q(
"Go back to the drawn figures",()=>h("no")),u=!1,p=a.map(g=>{let v=et("bench"),x=g.options.length?s("select",{class:"ts-\
box",id:v,"aria-describedby":`${v}-read`},s("option",{value:""},"choose"),...ct(g.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:v,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${v}-hint ${v}-read`}),
O=s("span",{class:"ts-hint",id:`${v}-hint`},g.hint),D=s("p",{class:"ts-read",id:`${v}-read`}),$=g.text,S=()=>{x.value.trim()!==
$.trim()&&($=x.value,e({type:"bench",name:g.name,value:x.value}))};return x.addEventListener(g.options.length?"change":"\
blur",S),x.addEventListener("keydown",L=>{L.key==="Enter"&&(L.preventDefault(),S())}),{name:g.name,flush:S,input:x,element:s(
"div",{class:"ts-bench-row"},s("label",{for:v},g.prompt),s("div",{class:"ts-line-of"},x,O),D),show(L){if(!L)return;(document.
activeElement!==x||x.value===$)&&(x.value=L.text,$=L.text),x.setAttribute("aria-invalid",String(!!L.error)),D.classList.
toggle("ts-error",!!L.error);let b=L.error?[Ot("▲")," "]:[],f=L.read&&!L.options.length&&`read as ${L.read}`,m=L.error||
[f,L.origin].filter(Boolean).join(", ");D.replaceChildren(...b,m)}}}),h=g=>{for(let v of p)v.flush();u=!0,e({type:"bench",
name:"in-use",value:g})};o.append(s("summary",{},c),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),s("div",{class:"ts-bench-rows"},...p.map(g=>g.element)),i,s("div",{class:"ts-tools"},l,d));function w(){
let g=r(),v=new Map(g.rows?.map($=>[$.name,$]));for(let $ of p)$.show(v.get($.name));c.textContent=g.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",d.hidden=!g.wanted,l.hidden=g.used&&!g.stale;let x=g.wanted&&
!g.used?"▲ ":g.used?"● ":"○ ",O=g.used?"in use":g.wanted?`not used; the drawn figures stand. ${g.refused}`:"not us\
ed; the drawn figures stand",D=g.stale?` The tables and choices of this task are still the ones from before. ${g.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${x}${O}${D}`,g.wanted&&
!g.used&&(o.open=!0)}return{element:o,show:w,hear(g){g.type!=="bench-saved"||g.name!=="in-use"||!u||(u=!1,r().stale&&n())},
lost(){for(let g of[l,d,...p.map(v=>v.input)])g.disabled=!0}}}var Tn=5e3,Nn=2e3,In={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},xe="kept in this browser until it can be\
 saved";function Dn(t,e,n,r){let o=Bt(t),a=jt(t),c=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),l=0,d=null,u={},p=()=>{clearTimeout(d??void 0),d=null},h=$=>{n.put(t.name,$,u.revision??0),w($)},w=$=>{l+=
1,x("wait",r()?xe:"saving"),p(),d=window.setTimeout(()=>x("wait",xe),Tn),e({type:"save",name:t.name,value:$,turn:l})},g=o.
make(t,a,h,($,S)=>{$?(n.put(t.name,S,u.revision??0),x("wait","not saved yet: press Enter or leave the box")):d===null&&(n.
drop(t.name),O(u))}),v=Ht(t,a,a.status);o.status==="above"?v.append(i,g.element,c):v.append(g.element,c,i);function x($,S){
i.className=`ts-status ts-status-${$}`,i.dataset.text!==S&&(i.dataset.text=S,i.replaceChildren(Ot(In[$]),` ${S}`))}function O($,S=!1){
if(u=$??{},g.show(u),c.replaceChildren(u.read?`read as ${u.read}`:""),!S)if(u.error){let{error:L,saved:b="",note:f}=u;x(
"unread",`Look again: ${L} Kept as typed, ${ke(b)}${f?`; ${f}`:""}.`)}else u.saved&&!u.blank?x("saved",`saved ${ke(u.saved)}${u.
note?`; ${u.note}`:""}`):x("none",o.blank??"not answered yet")}let D=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:v,show($){d===null&&O($,D())},saved($){$.turn===l&&(g.pending?.()||n.drop(t.name),p(),O($.state))},refused($){
$.turn===l&&(p(),g.refused(),x("bad",`not saved: ${$.reason}`))},off(){clearTimeout(d??void 0),(d!==null||g.pending?.())&&
x("wait",xe)},catchUp(){let $=n.get(t.name);$&&(Ps($,u)?(g.show({...u,value:$.value,error:""}),w($.value)):n.drop(t.name))},
flush:()=>g.flush?.(),summary:()=>({answered:!!u.saved&&!u.blank&&!u.error&&!u.short,unread:!!u.error,trouble:D(),waiting:d!==
null})}}function _s({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=Bs(window.localStorage,r),a=!1,c=()=>a||p.isLost(),
i=n.map(S=>Dn(S,w,o,c)),l=new Map(i.map(S=>[S.name,S])),d=s("p",{class:"ts-who"}),u=s("p",{class:"ts-total"}),p=W({model:t,
el:e},{kind:"form",lost(){for(let S of i)S.off();h.lost(),g()},line(S){a=S;for(let L of i)S?L.off():L.catchUp();g()}}),h=Hs(
t,p.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(s("div",{class:"ts-top"},d,u),p.
alert,h.element,...i.map(S=>S.element));function w(S){p.send(S),g()}function g(){let S=i.map(C=>C.summary()),L=S.filter(
C=>C.answered).length,b=S.filter(C=>C.trouble).length,f=S.some(C=>C.waiting),m=S.filter(C=>C.unread).length,k=b?`${b} no\
t saved`:f?c()?"the rest kept in this browser":"saving":L&&!m?"all saved":"",y=[`${L} of ${i.length} answered`,m?`${m} c\
annot be read`:"",k];u.textContent=y.filter(Boolean).join(", ")}function v(){d.textContent=t.get("header");let S=t.get("\
states");for(let L of i)L.show(S[L.name]);g()}let x=0,O=()=>{if(document.visibilityState==="hidden")for(let S of i)S.flush();
document.visibilityState!=="visible"||Date.now()-x<Nn||(x=Date.now(),p.send({type:"look"}))},D=r?new BroadcastChannel(`t\
woshaft-saved:${r}`):null;D?.addEventListener("message",({data:S})=>{S===t.get("task_id")&&p.send({type:"look"})}),document.
addEventListener("visibilitychange",O),e.addEventListener("focusin",S=>{S.relatedTarget instanceof Node&&e.contains(S.relatedTarget)||
O()}),p.follow("change:states change:header",v),p.follow("msg:custom",S=>{S.type==="saved"&&(l.get(S.name)?.saved(S),D?.
postMessage(t.get("task_id"))),S.type==="refused"&&l.get(S.name)?.refused(S),g()}),p.follow("msg:custom",h.hear),p.follow(
"change:bench",h.show),v();for(let S of i)S.catchUp();g(),h.show(),p.alert.textContent=t.get("notice");let $=js(e,`${r}/${t.
get("task_id")}`);return()=>{$(),D?.close(),p.close(),document.removeEventListener("visibilitychange",O)}}function le(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var Bn={right:"●",other:"◆",unread:"▲"};function Pn(t){let e=jt(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),r=null,o=Bt(t).make(t,e,i=>{r=i,o.show({value:r}),c(void 0)},(i,l)=>{i&&(r=l)}),a=Ht(t,e,e.status);a.append(o.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let l=i?[Ot(Bn[i.how]),s("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...l)}return{name:t.name,element:a,value(){return o.flush?.(),r},show(i,l){i!==void 0&&(r=i,o.show(
{value:r,saved:"given"})),c(l)},still(i){o.setDisabled(i),a.classList.toggle("ts-given",i)}}}function Ks({model:t,el:e}){
let n=W({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let r=s("p",{class:"ts-title",role:"heading","aria-\
level":"3"}),o=s("p",{class:"ts-lead"}),a=s("dl",{class:"ts-facts"}),c=s("div",{}),i=q(t.get("give"),()=>{let v=Object.fromEntries(
u.map(x=>[x.name,x.value()]));n.send({type:"give",values:v})});i.classList.add("ts-first");let l=q("",()=>n.send({type:"\
fresh"})),d=t.get("all")?q(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;n.show(n.alert,r,o,
a,c,s("p",{class:"ts-acts"},i,l,d));let u=[],p=()=>{let v=t.get("values"),x=t.get("told");for(let S of u)S.show(v[S.name],
x[S.name]),S.still(x[S.name]!==void 0&&x[S.name].how!=="unread");let O=u.some(({name:S})=>!x[S]||x[S].how==="unread"),D=document.
activeElement===i;if(i.hidden=!O,l.textContent=t.get("fresh"),l.hidden=O||!t.get("fresh"),n.alert.textContent=t.get("not\
ice"),!D||O)return;let $=Z(e,".ts-told")[0];$.tabIndex=-1,$.focus({preventScroll:!0})},h=()=>{(Z(c,"input, select, [tabi\
ndex]")[0]??(l.hidden?i:l)).focus({preventScroll:!0})},w=()=>{u=t.get("fields").map(Pn),c.replaceChildren(...u.map(({element:v})=>v)),
r.textContent=t.get("title"),r.hidden=!r.textContent,o.textContent=t.get("lead"),o.hidden=!o.textContent,a.replaceChildren(
...St(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let v=e.contains(document.activeElement);
w(),v&&h()}),n.follow("change:told change:values change:notice change:fresh",p),w();let g=t.get("place");if(g){let v=le(
sessionStorage,localStorage,g).get();t.send({type:"who",id:v?.id??"",ticket:v?.ticket??""})}return()=>n.close()}var Rn={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},jn={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"};function Fs(t,e){let n=document.
getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||"/"}catch{}return`${r}${t}/${e.
split("/").map(encodeURIComponent).join("/")}`}var ce=(t,e,n)=>s("a",{href:Fs("lab/tree",t),target:"_blank","data-twosha\
ft-open":t,"data-key":n,class:"ts-link"},e);function qs(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:r,
unread:o})=>s("li",{},`${e}: `,n===r?"nothing answered":n?`${n} of ${r} missing`:"",...o.map(([a,c])=>s("span",{},s("b",
{},"cannot be read: "),`“${a}” ${c}`)))))}function Us({model:t,el:e}){let n="",r=le(sessionStorage,localStorage,t.get(
"place")),o=W({model:t,el:e},{kind:"start",lost:()=>{}}),a=s("div",{}),c=s("p",{class:"ts-said",role:"status"});o.show(o.
alert,c,a);let i=(M,A={})=>{a.getAttribute("aria-busy")==="true"||o.isLost()||(A.quietly||(a.setAttribute("aria-busy","t\
rue"),c.textContent="One moment.",o.alert.textContent=""),t.send({type:M,...A}))},l=(M,A,N,T)=>s("button",{type:"button",
class:T?"ts-button ts-first":"ts-button","data-key":A,onclick:N},M);function d(){let M=et("who"),A=et("word"),N=s("selec\
t",{id:M,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.get("people").map(([
j,z])=>s("option",{value:j,selected:j===n},z)));N.addEventListener("change",()=>{n=N.value});let T=s("input",{id:A,type:"\
text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data-key":"word"});return s(
"form",{class:"ts-sign-in",onsubmit:j=>{j.preventDefault(),i("sign-in",{name:N.value,word:T.value})}},s("h2",{},"Who is \
working?"),s("div",{class:"ts-pair"},s("label",{for:M},"Your name"),N),s("div",{class:"ts-pair"},s("label",{for:A},"Sign\
-in word from your slip"),T),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},"Sign in"),s("p",
{class:"ts-hint"},t.get("kept")))}function u(M,A){let N=st=>`${st}:${M.name}`,T=s("div",{class:"ts-doing"});for(let st of M.
feedback.slice(0,1))T.append(s("a",{href:Fs("files",st),target:"_blank",class:"ts-link","data-key":N("feedback")},"Read \
feedback"));for(let st of M.notebooks){let H=M.notebooks.length===1?"Open":`Open ${st.split("/").pop()}`;T.append(ce(st,
H,N(`open ${st}`)))}M.can_get&&T.append(l(M.notebooks.length?"Get again":"Get",N("get"),()=>i("get",{name:M.name}),!M.notebooks.
length)),M.can_hand_in&&T.append(l(M.receipt?"Hand in again":"Hand in",N("hand in"),()=>i("hand-in",{name:M.name})));for(let st of T.
children)st.setAttribute("aria-label",`${st.textContent}: ${M.title}`);let j=t.get("asking")===M.name,z=M.receipt||M.unread>
0,G=s("tr",{},s("th",{scope:"row"},M.title),s("td",{},M.due||"no date",M.overdue?s("span",{class:"ts-small-line"},"date \
passed"):null),s("td",{},s("span",{class:"ts-shape","aria-hidden":"true"},Rn[M.state]||""),s("b",{},jn[M.state]||M.state),
s("span",{class:"ts-small-line"},M.detail),A?s("span",{class:"ts-small-line"},`Mark: ${A}`):null),s("td",{},T));if(j)return[
G,s("tr",{},s("td",{colspan:4},h(M)))];if(!z||!M.gaps.length)return[G];let vt=s("td",{colspan:4},s("b",{},p(M)),qs(M.gaps));
return[G,s("tr",{},vt)]}let p=({left:M,unread:A})=>Rt([M?`${M} ${M===1?"answer is":"answers are"} missing`:null,A?`${A} \
cannot be read`:null]).join(", ");function h(M){let A=et("question"),N=s("div",{class:"ts-doing"});for(let T of M.notebooks)
N.append(ce(T,"Go on with it",`go on:${M.name}`));return N.append(l("Hand in as it is",`hand in anyway:${M.name}`,()=>i(
"hand-in",{name:M.name,anyway:!0}))),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":A,"data-key":"\
question"},s("p",{id:A},s("b",{},`${M.title}: not handed in yet. ${p(M)}.`)," An answer that is missing or cannot be rea\
d earns nothing."),qs(M.gaps),N)}let w=new Set,g={met:"✓",enough:"◐","not yet":"○"};function v(M,A){let N=M.entries.
map(G=>A.find(vt=>vt.name===G)).filter(G=>G!==void 0),T=M.lesson?ce(M.lesson,`Lesson ${M.title}`,`lesson:${M.lesson}`):s(
"span",{class:"ts-small-line"},"no lesson here"),j=s("details",{open:w.has(M.module)},s("summary",{"data-key":`outcomes:${M.
module}`},`Outcomes: ${M.count||"none"}`),s("ul",{},...M.outcomes.map(([G,vt,st,H])=>s("li",{},s("span",{class:"ts-shape",
"aria-hidden":"true"},g[G]||""),s("b",{},`${G}${st&&G==="enough"?`, ${st}`:""}: `),vt,st&&G==="not yet"?`. Still missing\
: ${st}`:"",H?` (${H})`:""))));j.addEventListener("toggle",()=>{j.open?w.add(M.module):w.delete(M.module)});let z=N.flatMap(
G=>u(G,M.marks[G.name]));return s("tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},M.title,s("s\
pan",{class:"ts-assigned"},N.length?"assigned":"not assigned"))),...z,s("tr",{},s("td",{colspan:4},T,s("p",{class:"ts-ne\
xt"},s("b",{},"Next: "),M.next),j)))}function x(){let M=t.get("me"),A=t.get("entries"),N=s("table",{class:"ts-table"},s(
"thead",{},s("tr",{},...["Assignment","Due","State","What you can do"].map(T=>s("th",{scope:"col"},T)))),...t.get("modul\
es").map(T=>v(T,A)));return s("section",{},s("div",{class:"ts-me"},s("h2",{},`Working as ${M.name} (${M.id})`),M.ticket?
l("Not you? Sign out","sign-out",()=>{i("sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),
A.length?null:s("p",{},"Nothing is assigned yet."),N,l("Look again","look",()=>i("look")))}function O(){let M=!!t.get("m\
e").id,A=t.get("modules").map(j=>j.lesson),T=t.get("lessons").filter(([j])=>!M||!A.includes(j));return T.length?s("secti\
on",{},s("h2",{},M?"To look things up":"Lessons"),s("ul",{class:"ts-lessons"},...T.map(([j,z])=>s("li",{},ce(j,z,`lesson\
:${j}`))))):null}let D=!1,$=t.get("me").id?null:r.get(),S=$!==null;function L(){let M=t.get("me");M.id?r.keep(M):(D||$&&
!S)&&r.drop(),D=!!M.id}let b=0,f="",m=()=>Z(a,"[data-key]"),k=()=>a.querySelector("input[data-key=word]");function y(){let A=m().
find(U=>U===document.activeElement)?.dataset.key;a.removeAttribute("aria-busy");let N=!!t.get("me").id;c.textContent=t.get(
"said"),o.alert.textContent=t.get("trouble");let T=k()?.value,j=S?s("p",{},"One moment."):d();a.replaceChildren(...Rt([N?
x():j,O()]));let z=k();z&&T&&(z.value=T);let G=f;if(f=t.get("asking"),f&&f!==G&&m().find(U=>U.dataset.key==="question")?.
focus(),!A||f&&f!==G)return;let vt=m().find(U=>U.dataset.key===A),st=A.split(":")[1],H=A.startsWith("hand in anyway")?`h\
and in:${st}`:`:${st}`,F=m().find(U=>st&&U.dataset.key?.endsWith(H));(vt??F??Z(a,"a, button, select")[0])?.focus()}let C=()=>{
clearTimeout(b),b=setTimeout(()=>{S=!1,L(),y()},0)};t.on("change",C),L(),y(),$&&t.send({type:"resume",name:$.id,ticket:$.
ticket});let E=()=>{!document.hidden&&t.get("me").id&&i("look",{quietly:!0})},_=new IntersectionObserver(([M])=>{M.isIntersecting&&
E()});return _.observe(e),document.addEventListener("visibilitychange",E),()=>{clearTimeout(b),t.off("change",C),_.disconnect(),
document.removeEventListener("visibilitychange",E),o.close()}}var Hn={bench:Qe,build:ns,cord:as,depth:is,face:ls,fault_board:ds,form:_s,gate:us,gears:ps,hazards:fs,lifting:hs,micrometer:gs,
own_checks:ms,press:ws,question:Ks,rules:bs,runout:vs,sealant:Cs,seat:As,shims:Ms,start:Us,thread:Es,unit_section:Os,whole_build:Is,
wrench:Ds};export{Hn as screens};
