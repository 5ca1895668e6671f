var Ys="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...It(n)),r}function P(t,e={},...n){let r=document.createElementNS(Ys,t);return At(r,e),r.append(...n),
r}function At(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function q(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function $t(t,e){return s("select",{class:"ts-box",...t},...ct(
e))}function St(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function Ot(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function It(t){return t.filter(e=>e!=null&&e!==!1)}var Ee=0;function et(t){return Ee+=1,`two\
shaft-${t}-${Ee}-${Math.random().toString(36).slice(2,7)}`}function Tt(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function Q(t,e){return[...t.querySelectorAll(e)]}function bt(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function ht(t){return t.ctrlKey||t.metaKey||t.altKey}function Wt(t){let e=Q(t,"button, input, \
select");for(let n of e)n.disabled=!0}function Oe(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function zt(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function J(t,e,n=t){return q(t,e,{"aria-label":n})}
function ct(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function Dt(t){return t.map(e=>s("li",{},e))}var de=new Map;function ut(t,e){if(de.has(t))throw new Error(`the answer kind ${t} is registered twice`);de.set(t,e)}function Pt(t){
let e=de.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function jt(t){let e=et(
t.kind);return{control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function Ht(t,e,n){let{prompt:r}=Pt(
t),o={class:"ts-prompt"};if(r==="legend")return s("fieldset",{class:"ts-field","aria-describedby":n},s("legend",o,t.prompt));
let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s("div",{class:"ts-field"},a)}function Gt(t,e,n,r){let a=t.options.map(([l,i])=>{let c={"aria-describedby":e.status},d=s("input",{type:n,name:e.control,
value:l,...c});return{key:l,input:d,row:s("label",{class:"ts-option"},d,s("span",{},i))}});for(let{input:l}of a)l.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:l})=>l)),show(l){let i=l.value==null?[]:[l.value].flat();for(let{key:c,input:d}of a)d.checked=i.includes(c)},setDisabled(l){
for(let{input:i}of a)i.disabled=l},refused(){}}}ut("choice",{prompt:"legend",make:(t,e,n)=>Gt(t,e,"radio",r=>n(r[0]))});ut("choices",{prompt:"legend",make:(t,e,n)=>Gt(t,e,"checkbox",n)});function Yt(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function Xt(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}ut("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([l,i],c)=>{let d=s("span",{class:"ts-each-line",
id:`${e.control}-${c}`},i),u=$t({"aria-labelledby":d.id,"aria-describedby":e.status},[["","choose"],...o]);return{key:l,
box:u,row:s("li",{},d,u)}});for(let{box:l}of a)l.addEventListener("change",()=>{n(Yt(a.map(({key:i,box:c})=>[i,c.value])))});
return{element:s("ol",{class:"ts-each"},...a.map(({row:l})=>l)),show(l){let i=Xt(l.value);for(let{key:c,box:d}of a)d.value=
i.get(c)??""},setDisabled(l){for(let{box:i}of a)i.disabled=l},refused(){}}}});function ue(t){let[e="",...n]=t.split(" "),r=e==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:e,size:r,
side:o,place:a[0],points:null};let l=a.map(i=>{let[c,d]=i.split(",").map(Number);return[c,d]});return{hand:e,size:r,side:o,
place:"",points:l}}function pe(t,{side:e,place:n,points:r}){return r||(e==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[e]??[])}function fe(t,e){let{hand:n,size:r,side:o,place:a}=ue(e),l=[...t.stretches,...t.
holes].find(c=>c.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${l?`, ${l.name}`:""}, ${t.sides[o]??""}`}
function he(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function Te(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function Ne(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function Ie(t,[e,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
l,i])=>Math.hypot(l-e,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var Xs=.4;function De(t,e){let n=Xs,r=Vt(t,n);for(;r.
length>e;)n*=1.5,r=Vt(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function Vt(t,e){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let l=1;l<t.length-1;l+=1){let i=Vs(n,r,t[l]);i>o&&([o,a]=[i,l])}return o<=
e?[n,r]:[...Vt(t.slice(0,a+1),e).slice(0,-1),...Vt(t.slice(a),e)]}function Vs(t,e,n){let[r,o]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var Jt=14,Js=3,Zs=.5,Qs=["middle","inside","outside"],Zt="round ";function tn(t,e){let n=t.outline.map(([H])=>H),r=t.outline.
map(([,H])=>H),[o,a]=[Math.min(...n)-Jt,Math.max(...n)+Jt],[l,i]=[Math.min(...r)-Jt,Math.max(...r)+Jt],c=a-o,d=i-l,u=([H,
F])=>`${(H-o).toFixed(1)} ${(i-F).toFixed(1)}`,p=(H,F)=>`M${H.map(u).join("L")}${F?"Z":""}`,h=et("face"),w=c/100,g=2*w,k=(H,F)=>P(
"pattern",{id:`${h}-${H}`,width:g,height:g,patternUnits:"userSpaceOnUse"},P("path",{d:F,class:"tsp-hatch","stroke-width":w/
4})),$=P("defs",{},k("oil",`M0 ${g}L${g} 0`),k("dirt",`M0 ${g}L${g} 0M0 0L${g} ${g}`)),N=t.cavities.map(([,H])=>p(H,!0)).
join(""),O=t.islands.map(H=>p(H,!0)).join(""),x=p(t.outline,!0)+N,S=P("g"),L=P("g"),b=P("g"),f=P("g"),m=P("path",{class:"\
tsp-live",d:""}),y=P("path",{class:"tsp-chosen",d:""}),v=P("path",{class:"tsp-land",d:x,"fill-rule":"evenodd"}),C=P("pat\
h",{class:"tsp-edge",d:x+O,"stroke-width":w/2.5}),E=([H,F],U,at="middle")=>{let X={x:H-o,y:i-F,"font-size":2.1*w,"text-a\
nchor":at};return P("text",{class:"tsp-text",...X},U)},_=[(o+a)/2,(l+i)/2],M=(H,F)=>{let U=zt(H,_)||1;return[H[0]+F*(_[0]-
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
c/4)??10,I=`M${w} ${d-w}v${-w}v${w/2}h${A}v${-w/2}v${w}`,T={x:A+g,y:d-w,"font-size":2.1*w};f.append(P("path",{class:"tsp\
-edge",d:I,"stroke-width":w/4}),P("text",{class:"tsp-text",...T},`${A} mm`));let j=`0 0 ${c.toFixed(1)} ${d.toFixed(1)}`,
z=P("svg",{viewBox:j,class:"tsp-face",role:"img","aria-label":e},$,v,S,L,C,b,y,m,f),G=`max-width: ${(25*c/d).toFixed(1)}\
rem`;return{frame:s("div",{class:"ts-pad-face",style:G},z),svg:z,over:f,live:m,chosen:y,land:v,path:p,unit:w,box:{left:o,
right:a,low:l,high:i,width:c,height:d},place({clientX:H,clientY:F}){let U=z.getBoundingClientRect(),at=Math.min(U.width/
c,U.height/d);return[o+(H-U.left-(U.width-at*c)/2)/at,i-(F-U.top-(U.height-at*d)/2)/at]},strokes(H){L.replaceChildren(...H.
map(st))}};function st(H){let F=ue(H),U=pe(t,F),at=he(t,F.hand,Math.max(F.size,w/2)),X=U.length>1?p(U,F.side==="round"):
U.length?`${p(U)}h0.01`:"",nt=P("path",{d:X,class:`tsp-stroke tsp-${F.hand}`,"stroke-width":at});if(F.hand!=="film")return nt;
let yt=Math.min(8,Math.max(.6,40*F.size)),xt={"stroke-width":w/3,"stroke-dasharray":`${yt} ${yt}`};return P("g",{},nt,P(
"path",{d:X,class:"tsp-grain",...xt}))}}function Qt({face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=tn(t,e),l=s("p",
{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"ts-read ts-pad-trouble",role:"status"}),c=(I,T)=>s("span",{class:"\
ts-pair"},s("label",{for:T.id},I),T),d=$t({id:et("hand")},Object.entries(t.hands)),u=s("input",{class:"ts-box ts-size",id:et(
"size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),p=s("label",{for:u.id},"thickness"),h=$t({id:et(
"place")},t.stretches.map(({id:I,name:T})=>[I,T]));h.append(s("optgroup",{label:"Round a hole"},...t.holes.map(({id:I,name:T})=>s(
"option",{value:`${Zt}${I}`},`round ${T}`))));let w=$t({id:et("side")},Qs.map(I=>[I,t.sides[I]])),g=q("Lay it here",()=>f(
[b(h.value)])),k=q("Lay it on every stretch",()=>f(t.stretches.map(({id:I})=>b(I)))),$=q("Take back the last pass",()=>{
x&&r(x-1,!0)}),N=q("Clear the face",o),O={film:"",bead:""},x=0,S=!1;function L(){if(d.value==="wipe")return"";let[I,T]=t.
sizes[d.value],j=Te(u.value);if(j>=I&&j<=T)return u.removeAttribute("aria-invalid"),` ${Number(j.toFixed(3))}`;let z=d.value===
"film"?"the thickness of the film":"the diameter of the bead";return i.textContent=u.value.trim()?`Read “${u.value}”: \
give ${z} from ${I} to ${T} mm.`:`First give ${z} in mm.`,u.setAttribute("aria-invalid","true"),u.focus(),null}function b(I){
let T=L();if(T===null)return null;let j=I.startsWith(Zt)?I:`${w.value} ${I}`;return`${d.value}${T} ${j}`}function f(I){let T=I.
filter(j=>j!==null);if(!(S||T.length<I.length)){if(x+T.length>t.most){i.textContent=`There is room for ${t.most} passes;\
 take some back first.`;return}i.textContent="",l.textContent=T.length===1?`Laid: ${fe(t,T[0])}`:`Laid on ${T.length} st\
retches`,n(T)}}function m(){let I=d.value==="wipe";p.textContent=d.value==="bead"?"diameter":"thickness",u.disabled=S||I,
u.value=I?"":O[d.value],u.placeholder=I?"":"mm",g.textContent=I?"Wipe here":"Lay it here",k.textContent=I?"Wipe every st\
retch":"Lay it on every stretch",i.textContent="",y()}function y(){let I=h.value.startsWith(Zt);w.disabled=S||I;let T=pe(
t,I?{side:"round",place:h.value.slice(Zt.length)}:{side:w.value,place:h.value});a.chosen.setAttribute("d",T.length?a.path(
T,I):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}d.addEventListener("change",m),u.addEventListener("input",
()=>{O[d.value]=u.value}),h.addEventListener("change",y),w.addEventListener("change",y),u.addEventListener("keydown",I=>{
I.key==="Enter"&&(I.preventDefault(),g.click())});let v=null;a.svg.addEventListener("pointerdown",I=>{if(S||I.button>0)return;
v=[a.place(I)],a.svg.setPointerCapture(I.pointerId);let T=Math.max(1,Number(O.bead.replace(",","."))||1);a.live.setAttribute(
"stroke-width",String(he(t,d.value,T)))}),a.svg.addEventListener("pointermove",I=>{if(!v)return;let T=a.place(I);zt(T,v[v.
length-1])<Zs||(v.push(T),a.live.setAttribute("d",a.path(v)))});let C=I=>{if(!v)return;let T=v;if(v=null,a.live.setAttribute(
"d",""),I.type==="pointercancel")return;if(Ne(T)<Js){h.value=Ie(t,T[0]),y();return}let j=L();if(j===null)return;let z=De(
T,t.points).map(G=>G.join(","));f([`${d.value}${j} at ${z.join(" ")}`])};a.svg.addEventListener("pointerup",C),a.svg.addEventListener(
"pointercancel",C);let E=s("ol",{class:"ts-passes","aria-label":"Passes, in the order they were done"}),_=s("p",{class:"\
ts-hint"},"Nothing is laid yet."),M=s("div",{class:"ts-pad-tools"},s("div",{class:"ts-tools"},c("tool",d),s("span",{class:"\
ts-pair"},p,u)),s("div",{class:"ts-tools"},c("where",h),c("runs",w)),s("div",{class:"ts-tools"},g,k,$,N),i,l),A=()=>Q(E,
"button");return m(),{drawing:a,tools:M,list:E,empty:_,frame:a.frame,element:s("div",{class:"ts-pad"},a.frame,M,s("div",
{class:"ts-pad-list"},_,E)),show(I,T=[]){x=I.length,a.strokes(I),_.hidden=x>0;let j=A().findIndex(z=>z.matches(":focus"));
E.replaceChildren(...I.map((z,G)=>s("li",{},s("span",{},`${fe(t,z)}${T[G]?`, ${T[G]}`:""} `),q("take out",()=>r(G,!1),{class:"\
ts-button ts-remove",disabled:S,"aria-label":`Take out pass ${G+1}`})))),j>=0&&(A()[Math.min(j,x-1)]??g).focus()},setDisabled(I){
S=I;for(let T of[d,h,g,k,$,N,...A()])T.disabled=I;u.disabled=I||d.value==="wipe",y()}}}ut("film",{prompt:"words",make(t,e,n){let r=[],o=l=>{r=l,a.show(r),n(r)},a=Qt({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:l=>o([...r,...l]),onRemove:l=>o(r.filter((i,c)=>c!==l)),onClear:()=>o([])});
return{element:a.element,show(l){r=[l.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function Be(t,e){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${e}`.trim()}function Pe(t,{send:e,typing:n,said:r=o=>String(o??"")}){let o=s("input",{type:"text",class:"ts-box ts-number-box",id:t.
control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.hint} ${t.read} ${t.
status}`}),a="",l=()=>a===null||o.value.trim()!==a.trim(),i=()=>{l()&&(a=o.value,e(o.value))};return o.addEventListener(
"blur",i),o.addEventListener("keydown",c=>{let d=(c.ctrlKey||c.metaKey)&&c.key.toLowerCase()==="s";c.key!=="Enter"&&!d||
(c.preventDefault(),i())}),o.addEventListener("input",()=>n(l(),o.value)),{box:o,flush:i,pending:l,refused(){a=null},show(c){
o.setAttribute("aria-invalid",String(!!c.error)),!(document.activeElement===o&&o.value!==a)&&(a=r(c.value),o.value=a)}}}ut("number",{prompt:"label",make(t,e,n,r){let o=t.units,{box:a,flush:l,pending:i,refused:c,show:d}=Pe(e,{send:n,typing:r}),
u=s("span",{class:"ts-hint",id:e.hint},t.hint),p=$t({"aria-label":"Choose the unit"},[["","unit"],...o.map(h=>[h,h])]);return p.
addEventListener("change",()=>{p.value&&(a.value=Be(a.value,p.value),/\d/.test(a.value)?l():a.focus())}),a.addEventListener(
"input",()=>{p.value=""}),{element:s("div",{class:"ts-line-of"},a,o.length?p:null,u),show:d,setDisabled(h){a.disabled=p.
disabled=h},refused:c,flush:l,pending:i}}});function je(t,e){let r=[...new Set([t??[]].flat())].filter(o=>e.includes(String(o))).map(String);return[...r,...e.filter(
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
!a||a.keys.length<2?null:(n?this.closed.add(r):this.closed.delete(r),n&&(this.current=Re(a)),r)}sought(e){let n=this.rows(),
r=n.findIndex(l=>l.id===this.current),o=e.length>1?r:r+1,a=l=>(l.run?String(l.run.stage):this.label(l.key)).toLowerCase();
return[...n.slice(o),...n.slice(0,o)].find(l=>a(l).startsWith(e))}};var en=12,sn=700,nn=5,He=32,on=8;function ee({label:t,steps:e,order:n,onChange:r}){let o=new te(e,n),{staged:a}=o,l=!1,i={},
c=!1,d=new Map,u=s("div",{"aria-live":"assertive",class:"ts-hidden"}),p=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),h=q("Up",()=>z(-1),{"aria-label":"Move the chosen step up"}),w=q("Down",
()=>z(1),{"aria-label":"Move the chosen step down"}),g=q("Undo",()=>o.undo()&&st("Undone")),k=q("Redo",()=>o.redo()&&st(
"Done again")),$=q("Choose several",()=>X(!l),{"aria-pressed":"false"}),N=q("Gather stages",()=>j(o.gathered(),"Steps of\
 one stage now stand together")),O=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:D=>{D.key==="Enter"&&G()}}),x=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),S=s("span",{class:"ts-chosen"}),L=q("Move",G,{"aria-label":"Move to this position"}),b=q(
"Move",vt,{"aria-label":"Move before this step"}),f=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},h,w,g,k,$,a?N:null),m=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",O,L),s("span",{class:"\
ts-pair"},"or before ",x,b)),y="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),v=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},y),m),C=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),f,S,p,v,u);function E(D){u.
textContent=D}function _(D=""){E(`${o.unitName()}${D}, ${o.where()}`)}function M(D){let R=d.get(D.id);if(R)return R;let Y=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Y.dataset.row=D.id,d.set(D.id,Y),Y}function A(D=!1){let R=o.settle(),
Y=new Set(R.map(V=>V.id));for(let[V,wt]of d)Y.has(V)||(wt.remove(),d.delete(V));let it=o.unit(),kt=new Set(it),rt=p.firstElementChild;
for(let V of R){let wt=M(V);wt===rt?rt=rt.nextElementSibling:p.insertBefore(wt,rt),I(wt,V,kt)}O.value=String(o.order.indexOf(
it[0])+1);let mt=[...o.order.entries()].filter(([,V])=>!kt.has(V));x.replaceChildren(...mt.map(([V,wt])=>s("option",{value:wt},
`${V+1}  ${o.label(wt)}`))),S.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,h.disabled=c||o.isFirst,w.disabled=c||
o.isLast,g.disabled=c||o.past.length===0,k.disabled=c||o.future.length===0;for(let V of[$,N,O,x,L,b])V.disabled=c;if(p.setAttribute(
"aria-disabled",String(c)),p.classList.toggle("ts-long",o.order.length>en),D){let V=d.get(o.current);V?.focus({preventScroll:!0}),
V?.scrollIntoView({block:"nearest"})}}function I(D,R,Y){let it=R.id===o.current,kt=R.run?!1:o.block.has(R.key),rt=o.held!==
null&&(R.run?it:Y.has(R.key)),mt=o.order.indexOf(R.run?R.run.keys[0]:R.key),V=R.run?R.run.keys.map(Ct=>i[Ct]?.length??0):
i[R.key],wt=R.run?o.closed.has(String(R.run.stage)):!1,$e=JSON.stringify([mt,R.level,it,kt,rt,V,R.run&&[R.run.keys.length,
wt]]);if(D.dataset.looks===$e)return;D.dataset.looks=$e,D.tabIndex=it?0:-1,D.setAttribute("aria-selected",String(kt)),D.
classList.toggle("ts-current",it),D.classList.toggle("ts-inblock",kt),D.classList.toggle("ts-held",rt),D.classList.toggle(
"ts-level2",R.level===2),a&&D.setAttribute("aria-level",String(R.level));let Se=rt?" picked up":kt?" in block":"",Le=Se?
s("span",{class:"ts-state"},Se):"",Ce=Ct=>s("span",{class:"ts-number","aria-hidden":"true"},Ct);if(R.run){let{keys:Ct,stage:zs}=R.
run;D.setAttribute("aria-expanded",String(!wt));let Me=wt?Ct.filter(Gs=>i[Gs]?.length).length:0;D.replaceChildren(Ce(`${mt+
1}–${mt+Ct.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},wt?"▸":"▾"),s("span",{class:"ts-what"},s("b",
{},zs),` ${Ct.length} steps`,Me?` – ${Me} with a remark`:"",Le));return}let Ae=(i[R.key]??[]).map(Ct=>s("span",{class:`\
ts-note ts-note-${Ct.kind}`},Ot(Ct.shape??""),s("b",{},Ct.word),` ${Ct.text}`)),Ws=a&&R.level===1;D.classList.toggle("ts\
-troubled",Ae.length>0),D.replaceChildren(Ce(String(mt+1)),s("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),s("spa\
n",{class:"ts-what"},o.label(R.key),Ws?s("span",{class:"ts-stage"},` ${o.stages.get(R.key)??""}`):"",Le,...Ae))}let T=()=>r(
[...o.order]);function j(D,R){if(!o.take(D)){E(`${o.unitName()} stays at ${o.where()}`);return}A(!0),R?E(R):_(),o.held===
null&&T()}function z(D){c||j(o.shifted(D))}function G(){if(c)return;let D=Number.parseInt(O.value,10),R=o.order.length;D>=
1&&D<=R?j(o.atPosition(D)):(E(`Type a position from 1 to ${R}`),S.textContent=`Type a position from 1 to ${R}.`)}function vt(){
!c&&x.value&&j(o.beside(x.value,"before"))}function st(D){A(),E(`${D}. ${o.unitName()}, ${o.where()}`),T()}function H(){
o.pickUp(),A(!0),_(" picked up")}function F(){o.putDown()&&T(),A(!0),_(" put down")}function U(){o.putDown()&&T(),A()}function at(){
o.putBack(),A(!0),_(" put back")}function X(D){l=D,$.setAttribute("aria-pressed",String(D)),D||(o.block=new Set),A(),E(D?
"Choose the steps of a block":"Block let go")}function nt(D){o.toggleBlock(D);let R=o.block.has(D)?"in the block":"out o\
f the block";E(`${o.label(D)} ${R}, ${o.block.size} in it`)}function yt(D,R){let Y=o.fold(D,R);Y&&(A(!0),E(`${Y} ${R?"cl\
osed":"open"}`))}p.addEventListener("keydown",D=>{if(ht(D))return;let R=o.rows(),Y=R.findIndex(wt=>wt.id===o.current),it=wt=>{
o.current=R[Math.max(0,Math.min(R.length-1,wt))].id,A(!0)},kt=R[Y],{key:rt}=D,mt=rt==="ArrowUp"?-1:rt==="ArrowDown"?1:null,
V=o.held!==null;if(mt&&(D.shiftKey||V))z(mt);else if(mt)it(Y+mt);else if(V&&rt==="Escape")at();else if(rt===" ")c||(V?F:
H)();else if(V&&rt==="Enter")F();else if(rt==="Enter"&&!kt.run)c||(nt(kt.key),A(!0));else if(rt==="Home"&&!V)it(0);else if(rt===
"End"&&!V)it(R.length-1);else if(a&&rt==="ArrowLeft")yt(kt,!0);else if(a&&rt==="ArrowRight")yt(kt,!1);else if(rt.length===
1&&!V)B(rt);else return;D.preventDefault()});let xt="",Et;function B(D){xt+=D.toLowerCase(),clearTimeout(Et),Et=window.setTimeout(
()=>{xt=""},sn);let R=o.sought(xt);R&&(o.current=R.id,A(!0))}p.addEventListener("focusout",({relatedTarget:D})=>{o.held!==
null&&D instanceof Node&&!p.contains(D)&&U()});let K=null;p.addEventListener("pointerdown",D=>{let R=o.row(bt(D,".ts-ste\
p")?.dataset.row??"");if(!R||D.button!==0)return;if(R.run&&bt(D,".ts-fold")){yt(R,!o.closed.has(String(R.run.stage))),D.
preventDefault();return}let Y=bt(D,".ts-grip, .ts-number"),it=D.ctrlKey||D.metaKey;o.held!==null&&U(),!R.run&&!c&&(D.shiftKey?
o.blockTo(R.key):(it||l)&&!Y&&nt(R.key)),o.current=R.id,A(!0),D.preventDefault(),!(c||D.shiftKey||it)&&(D.pointerType!==
"mouse"&&!Y||(K={x:D.clientX,y:D.clientY,id:D.pointerId,carried:null},p.setPointerCapture(D.pointerId)))}),p.addEventListener(
"pointermove",D=>{if(!K||D.pointerId!==K.id)return;let{clientX:R,clientY:Y}=D;if(!K.carried){if(Math.hypot(R-K.x,Y-K.y)<
nn)return;K.carried=ot()}Object.assign(K.carried,{x:R,y:Y}),lt(K.carried)});function ot(){let D=s("div",{class:"twoshaft\
 ts-ghost","aria-hidden":"true"},o.unit().length>1?o.unitName():o.label(o.unit()[0]));document.body.append(D);let R=s("d\
iv",{class:"ts-line","aria-hidden":"true"});p.append(R),p.classList.add("ts-dragging");for(let Y of o.unit())d.get(Y)?.classList.
add("ts-lifted");return{ghost:D,line:R,timer:requestAnimationFrame(ft),x:0,y:0,drop:null}}function lt(D){D.ghost.style.transform=
`translate(${D.x+12}px, ${D.y+8}px)`;let Y=o.rows().map(mt=>{let V=M(mt).getBoundingClientRect();return{row:mt,box:V,offset:D.
y-(V.top+V.height/2)}}).reduce((mt,V)=>Math.abs(V.offset)<Math.abs(mt.offset)?V:mt),it=Y.offset>0;D.drop=o.dropAt(Y.row,
it);let rt=(it?Y.box.bottom:Y.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;D.line.style.top=`${rt}px`}function ft(){
let D=K?.carried;if(D){for(let R of[p,Oe(p)]){let it=R===document.scrollingElement?{top:0,bottom:innerHeight}:R.getBoundingClientRect(),
kt=D.y<it.top+He?-1:D.y>it.bottom-He?1:0;if(!kt)continue;let rt=R.scrollTop;if(R.scrollTop+=kt*on,R.scrollTop!==rt){lt(D);
break}}D.timer=requestAnimationFrame(ft)}}function gt(D){let R=K?.carried;if(K=null,!R)return;cancelAnimationFrame(R.timer),
R.ghost.remove(),R.line.remove(),p.classList.remove("ts-dragging");for(let it of d.values())it.classList.remove("ts-lift\
ed");let{drop:Y}=R;if(!D||!Y||o.unit().includes(Y.target)){A(!0),E(`${o.unitName()} stays at ${o.where()}`);return}j(o.beside(
Y.target,Y.side))}return p.addEventListener("pointerup",()=>gt(!0)),p.addEventListener("pointercancel",()=>gt(!1)),C.addEventListener(
"keydown",D=>{!K?.carried||D.key!=="Escape"||(gt(!1),D.stopPropagation())}),A(),{element:C,tools:f,order:()=>[...o.order],
change:(D,R)=>{c||j(D,R)},setOrder(D,R=!1){o.held!==null||K?.carried||_t(D,o.order)||(o.set(D,R),A())},setNotes(D){i=D??
{},A()},setDisabled(D){c=D,A()}}}ut("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=ee({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
je(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function _e(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[l,i]of t.entries()){let[c,d]=e[i]??[null,null];c!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[c??r[0],d??(c===null?r[1]:0)];let u=n(...r);o.push(u);let p=a.get(u.join(" "))??{at:u,numbers:[]};
p.numbers.push(l+1),a.set(u.join(" "),p)}return{points:o,stops:[...a.values()]}}function Ke(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function qe(t,e){return t.filter((n,r)=>r!==e)}function Fe(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var me=9,Ue=.7*me,ge=44;function rn(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*me+2*ge,
l=(o-r)*Ue+2*ge,i=(g,k)=>[ge+(g-e)*me,l/2-(k-(r+o)/2)*Ue],c=t.gates.map(g=>`M${i(g,r).join(" ")}L${i(g,o).join(" ")}`),d=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,u=t.gears.map(([g,k,$])=>{let[N,O]=i(k,$),x={x:N,y:O+($>0?-20:30)};return P("t\
ext",{...x,class:"tsp-gear","text-anchor":"middle"},g)}),p=P("polyline",{class:"tsp-line",points:""}),h=P("g");return{element:P(
"svg",{viewBox:`0 0 ${a} ${l}`,width:a,height:l,class:"ts-gateplan","aria-hidden":"true"},P("path",{d:[...c,d].join(""),
class:"tsp-slot"}),...u,p,h),show(g){let{points:k,stops:$}=_e(g,t.aims,i),[[N,O]]=k;p.setAttribute("points",k.map(x=>x.join(
",")).join(" ")),h.replaceChildren(P("circle",{cx:N,cy:O,r:4,class:"tsp-start"}),...$.map(({at:[x,S],numbers:L})=>P("g",
{},P("circle",{cx:x,cy:S,r:3.5,class:"tsp-stop"}),P("text",{x:x+7,y:S-5,class:"tsp-number"},L.join(", ")))))}}}function We({
label:t,moves:e,plan:n,most:r,onChange:o}){let a=new Map(e),l=C=>a.get(C)??C,i=[],c=-1,d=!1,u=n?rn(n):null,p=s("ol",{class:"\
ts-pathlist","aria-label":t}),h=s("p",{class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate."),
w=s("p",{class:"ts-hidden",role:"status"}),g=e.map(([C,E])=>q(E,()=>S(C))),k=q("Take back the last move",()=>{i.length&&
L(i.length-1)}),$=q("Take back all",()=>{i.length&&x([],"No moves left")}),N=s("span",{class:"ts-hint"}),O=s("div",{class:"\
ts-path"},s("div",{class:"ts-tools ts-moves",role:"group","aria-label":"Add a move"},...g),s("div",{class:"ts-path-both"},
s("div",{class:"ts-path-words"},h,p,s("div",{class:"ts-tools"},k,$,N)),u&&s("div",{class:"ts-path-picture"},u.element)),
u&&s("p",{class:"ts-hint"},"The line shows where each move aims. Whether the lever gets there is what the test finds out\
."),w);function x(C,E){d||(i=C,v(),w.textContent=E,o([...i]))}function S(C){if(i.length>=r){w.textContent=`${r} moves ar\
e the most here`;return}let{moves:E,place:_}=Ke(i,c,C);c=_,x(E,`Move ${_+1}: ${l(C)}`)}function L(C){let E=l(i[C]);c=Math.
min(c,i.length-2),x(qe(i,C),`Taken back: ${E}`)}function b(C,E){let _=Fe(i,C,E);_&&(c=C+E,x(_,`${l(_[c])}, move ${c+1} o\
f ${i.length}`),m(c))}function f(C){return p.children[C]?.querySelector(".ts-path-move")}function m(C){let E=f(C);return E instanceof
HTMLElement&&E.focus(),!!E}function y(C,E){let _=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${E+1}: ${l(
C)}`},l(C)),M=s("button",{type:"button",class:"ts-path-off","aria-label":`Take back move ${E+1}`,onclick:()=>L(E)},"×"),
A=s("li",{},_,M);return A.classList.toggle("ts-current",E===c),_.addEventListener("focus",()=>{c=E;for(let I of p.children)
I.classList.toggle("ts-current",I===A)}),_.addEventListener("keydown",I=>{if(ht(I))return;let T=I.key==="ArrowUp"?-1:I.key===
"ArrowDown"?1:null;if(T&&I.shiftKey)b(E,T);else if(T)m(E+T);else if(I.key==="Delete"||I.key==="Backspace")L(E),m(Math.min(
E,i.length-1))||g[0].focus();else return;I.preventDefault()}),M.disabled=d,A}function v(){p.replaceChildren(...i.map(y)),
h.hidden=i.length>0,N.textContent=`${i.length} of at most ${r} moves`;for(let C of g)C.disabled=d||i.length>=r;k.disabled=
$.disabled=d||i.length===0,u?.show(i)}return v(),{element:O,setMoves(C){_t(C,i)||(i=[...C],c=-1,v())},setDisabled(C){d=C,
v()}}}ut("path",{prompt:"words",make(t,e,n){let r=We({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});function ze(t,e,n){let r=t.indexOf(n);return[...t.slice(r+1),...t.slice(0,r)].find(a=>!e.get(a))??n}function Ge(t,e,n){let r=t.
find(({key:c})=>c===e);if(!r)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let o={ArrowRight:1,
ArrowLeft:-1}[n];if(o!==void 0){let c=[...t].sort((u,p)=>u.x-p.x||u.y-p.y),d=c.findIndex(({key:u})=>u===e)+o;return c[(d+
c.length)%c.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let l=c=>Math.abs(c.y-r.y)+2*Math.abs(c.x-
r.x),[i]=t.filter(({key:c,y:d})=>c!==e&&(d-r.y)*a>2).sort((c,d)=>l(c)-l(d));return(i??r).key}function Kt(t,e,n,r){let o=t.lines,a=t.options,l=o.map(([p])=>p),i=l[0],c=o.map(([p,h],w)=>{let g=s("span",{class:"ts-ea\
ch-line",id:`${e.control}-${w}`},h),k=$t({"aria-labelledby":g.id,"aria-describedby":e.status},[["","choose"],...a]),$=s(
"input",{type:"radio",name:`${e.control}-active`,"aria-label":`Point in the picture for: ${h}`,checked:w===0}),N=s("li",
{},l.length>1?$:null,g,k);return $.addEventListener("change",()=>{i=p}),k.addEventListener("change",()=>{i=p,u()}),{key:p,
box:k,mark:$,row:N}}),d=()=>new Map(c.map(({key:p,box:h})=>[p,h.value]));function u(){let p=d();r(p),n(Yt([...p]))}return{
element:s("ol",{class:"ts-each ts-pointed"},...c.map(({row:p})=>p)),active:()=>i,answers:d,press(p){let h=c.find(({key:w})=>w===
i);if(!(!h||h.box.disabled)){h.box.value=p,u(),i=ze(l,d(),i);for(let{key:w,mark:g}of c)g.checked=w===i}},put(p,h){let w=c.
find(({key:g})=>g===p);!w||w.box.disabled||(w.box.value=h,u())},show(p){let h=Xt(p.value);for(let{key:w,box:g}of c)g.value=
h.get(w)??"";r(d())},setDisabled(p){for(let{box:h,mark:w}of c)h.disabled=p,w.disabled=p}}}function se(t,e,n){let r=s("di\
v",{class:"ts-scene",role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});r.
innerHTML=t;let o=r.querySelector("svg");o.setAttribute("role","group");let a=new Map(Q(o,"[data-mark]").map(d=>[String(
d.dataset.mark),d])),l=new Map(e);for(let[d,u]of a)u.setAttribute("role","button"),u.setAttribute("tabindex",d===e[0][0]?
"0":"-1"),u.setAttribute("aria-label",`${d}: ${l.get(d)??""}`);let i=d=>bt(d,"[data-mark]")?.dataset.mark??bt(d,"[data-s\
pot]")?.dataset.spot;r.addEventListener("click",d=>{let u=i(d);u&&n(u)});for(let[d,u]of[["pointerover",!0],["focusin",!0],
["pointerout",!1],["focusout",!1]])r.addEventListener(d,p=>{let h=i(p);h&&c(h,u)});function c(d,u){for(let p of Q(o,`[da\
ta-spot="${d}"]`))p.classList.toggle("tss-near",u)}return r.addEventListener("keydown",d=>{let u=bt(d,"[data-mark]")?.dataset.
mark;if(u){if(d.key==="Enter"||d.key===" ")n(u);else{let p=[...a].map(([w,g])=>{let k=g.querySelector(".tss-dot");return{
key:w,x:k.cx.baseVal.value,y:k.cy.baseVal.value}}),h=Ge(p,u,d.key);if(h===void 0)return;a.get(u)?.setAttribute("tabindex",
"-1"),a.get(h)?.setAttribute("tabindex","0"),a.get(h)?.focus()}d.preventDefault()}}),{element:r,drawing:o,choose(d){let u=new Set(
d);for(let[p,h]of a)h.classList.toggle("tss-chosen",u.has(p)),h.setAttribute("aria-pressed",String(u.has(p)));for(let p of Q(
o,"[data-spot]"))p.classList.toggle("tss-on",u.has(String(p.dataset.spot)))}}}ut("picture",{prompt:"legend",make(t,e,n){let r=t.options,o=Kt(t,e,n,i=>{let c=new Set(i.values());for(let{letter:d,card:u}of a)
u.classList.toggle("ts-on",c.has(d))}),a=r.map(([i,c])=>{let d=s("div",{class:"ts-picture-card",onclick:()=>o.press(i)});
return d.innerHTML=t.svgs[i],d.querySelector("svg")?.setAttribute("aria-label",c),d.prepend(s("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:d}}),l=s("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:s("div",{},o.element,
l),show:o.show,setDisabled:o.setDisabled,refused(){}}}});ut("point",{prompt:"legend",make(t,e,n){let r=Kt(t,e,n,i=>l.choose(i.values())),a=t.options.map(([i,c])=>[i,c.slice(i.length+
2)]),l=se(t.svg,a,r.press);return{element:s("div",{},r.element,l.element),show:r.show,setDisabled:r.setDisabled,refused(){}}}});ut("put",{prompt:"legend",make(t,e,n){let r=t.lines,o=new Map(r.map(([u])=>[u,"1"])),a=Kt(t,e,n,u=>{for(let[p,h]of u)h&&
o.set(p,h.split("-")[1]);l.choose([...u.values()].map(p=>p.split("-")[0])),c(u)}),l=se(t.svg,t.places,u=>{a.press(`${u}-${o.
get(a.active())}`)}),i=P("g",{class:"tss-placed"});l.drawing.append(i);function c(u){i.replaceChildren();for(let[p,h]of u){
let[w,g]=h.split("-"),k=t.at[w];if(!k)continue;let $=P("g",{transform:`translate(${k[0]} ${k[1]})`});$.innerHTML=t.pieces[p][Number(
g)-1][1],i.append($)}for(let{part:p,show:h}of d)h(o.get(p)??"1")}let d=r.map(([u,p])=>{let h=s("div",{class:"ts-tray-par\
t"}),w=s("span",{class:"ts-hint",role:"status"}),g=J("Turn it",()=>{let N=o.get(u)==="1"?"2":"1";o.set(u,N),k(N);let O=a.
answers().get(u);O&&a.put(u,`${O.split("-")[0]}-${N}`)},`Turn it: ${p}`);function k(N){let[O,x]=t.pieces[u][Number(N)-1],
S=Number(/data-half="([\d.]+)"/.exec(x)?.[1]??90);h.innerHTML=`<svg viewBox="${-S} ${-S} ${2*S} ${2*S}" width="120" heig\
ht="120" aria-hidden="true">${x}</svg>`,w.textContent=`Way ${N}: ${O}`}let $=s("div",{class:"ts-tray"},h,s("div",{},p,w,
g));return{part:u,row:$,show:k,turn:g}});return{element:s("div",{},s("div",{class:"ts-trays"},...d.map(({row:u})=>u)),a.
element,l.element),show:a.show,setDisabled(u){a.setDisabled(u);for(let{turn:p}of d)p.disabled=u},refused(){}}}});var an="No line to the course just now. Go on with the questions: what you enter is kept in this browser and sent when t\
he line is back. Simulators stand still until then.",ln="The line to the course is back.",cn=1500,dn=5e3,be=new Set,Bt=null,
we;function Ye(t){Bt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),Bt.isConnected||document.body.append(Bt),Bt.textContent=
t}function un(){Bt?.remove(),Bt=null}function Xe(){clearTimeout(we),be.size?we=window.setTimeout(()=>Ye(an),Bt?0:cn):Bt&&
(Ye(ln),we=window.setTimeout(un,dn))}var Ve=t=>({down(){be.add(t),Xe()},up(){be.delete(t),Xe()}});var pn=1e3,fn="input, button, select, textarea, summary, a, [tabindex]";function hn(t){let e=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:l,
keyCode:i,ctrlKey:c,metaKey:d}=o,u={key:a,code:l,keyCode:i,ctrlKey:c,metaKey:d,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",u))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let o of t.querySelectorAll(fn))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function gn(t,e,n){let r=t.widget_manager?.kernel,o=(l,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(l,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),r?.statusChanged?.
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
r-style:dashed;font-size:var(--ts-small)}.twoshaft-start>div{max-width:1040px}.twoshaft-start h2{font-size:var(--ts-head\
);font-weight:600;margin:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-in{margin:calc(2 * var(--ts-\
grid)) 0 calc(3 * var(--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;gap:calc(1.5 * var(--ts-grid));justify-items:\
start}.twoshaft-start .ts-pair{display:grid;gap:calc(var(--ts-grid) / 2)}.twoshaft-start .ts-pair label{font-weight:600}\
.twoshaft-start .ts-pair .ts-box{width:22em;max-width:100%}.twoshaft-start .ts-first{background:var(--ts-accent);color:v\
ar(--ts-on-accent)}.twoshaft-start .ts-button{font-size:var(--ts-text)}.twoshaft-start .ts-said:not(:empty){border-left:\
3px solid var(--ts-accent);padding:var(--ts-grid);background:var(--ts-faint)}.twoshaft-start .ts-me{display:flex;flex-wr\
ap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:var(--ts-grid)}.twoshaft-start\
 .ts-table{border-collapse:collapse;width:100%;margin:0 0 calc(2 * var(--ts-grid));font-size:var(--ts-text);table-layout\
:fixed}.twoshaft-start .ts-table :is(th,td){text-align:left;vertical-align:top;white-space:normal;padding:var(--ts-grid)\
;border:0;border-bottom:1px solid var(--ts-line);background:none;max-width:none}.twoshaft-start .ts-table thead th{font-\
size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-table th:nth-child(1){width:26%}.twoshaft-start .ts-table\
 th:nth-child(2){width:16%}.twoshaft-start .ts-table th:nth-child(4){width:24%}.twoshaft-start .ts-small-line{display:bl\
ock;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-doing{display:flex;flex-wrap:wrap;align-items:ce\
nter;gap:var(--ts-grid)}.twoshaft-start a.ts-link:is(:link,:visited,:hover,:focus,:active){color:var(--ts-accent);text-d\
ecoration:underline;display:inline-flex;align-items:center;min-height:var(--ts-target);cursor:pointer}.twoshaft-start .t\
s-lessons{padding-left:calc(2 * var(--ts-grid))}.twoshaft-start .ts-lessons .ts-link{min-height:24px}.twoshaft-start .ts\
-module th{padding-top:calc(3 * var(--ts-grid));font-size:var(--ts-text)}.twoshaft-start .ts-table .ts-module th{width:a\
uto}.twoshaft-start .ts-assigned{margin-left:var(--ts-grid);font-weight:400;color:var(--ts-quiet)}.twoshaft-start .ts-ne\
xt{margin:0}.twoshaft-start summary{min-height:var(--ts-target);align-content:center;cursor:pointer}@media(max-width:560\
px){.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.twoshaft-start .ts-table :is(tr,th,td):nth-c\
hild(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-gr\
id) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.twoshaft-start .ts-gaps{padding-left:calc(2 * \
var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{display:block}.twoshaft-start .ts-question{borde\
r:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft .tsj-bench{display:flex;flex-wrap:wrap;gap:calc(3\
 * var(--ts-grid));align-items:flex-start;margin-top:var(--ts-grid)}.twoshaft .tsj-bench svg{display:block;max-width:100\
%;height:auto}.twoshaft .tsj-bolt{cursor:pointer}.twoshaft .tsj-bolt:focus{outline:none}.twoshaft .tsj-bolt:focus-visibl\
e circle{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsj-bolt.tsj-started circle{stroke-width:3}.twoshaft .tsj-bol\
t.tsj-tight circle{fill:var(--ts-ink)}.twoshaft .tsj-bolt.tsj-tight text{fill:var(--ts-paper)}.twoshaft .tsj-slide{displ\
ay:inline-flex;align-items:center;gap:var(--ts-grid)}.twoshaft .tsj-slide input{width:180px;max-width:40vw;accent-color:\
var(--ts-accent);min-height:var(--ts-target)}.twoshaft .tsj-figure{min-width:8ch;font-variant-numeric:tabular-nums;font-\
weight:600}.twoshaft .tsj-happened{min-height:3em;margin-top:var(--ts-grid)}.twoshaft .tsj-check{display:inline-flex;ali\
gn-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsj-check input{width:18px;height:18px;accent-\
color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-template-columns:max-content minmax(0,1fr);gap:4px calc\
(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-width) + 12ch);margin:var(--ts-grid) 0}.twoshaft .tsj-se\
ttings>label{font-weight:600}.twoshaft .tsj-band svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-settings se\
lect{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:wrap}@media(max-width:700px){.twoshaft .tsj-settings{g\
rid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{border-collapse:collapse;font:var(--ts-text) var(--ts-font\
);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align:left;font-weight:600;padding:4px 0}.twoshaft table.ts\
k-board th,.twoshaft table.tsk-board td{text-align:left;vertical-align:middle;padding:4px 12px 4px 0;border-bottom:1px s\
olid var(--ts-line);background:none;font-weight:400}.twoshaft table.tsk-board thead th{font-weight:600}.twoshaft table.t\
sk-board tbody th{min-width:18ch;max-width:34ch;white-space:normal}.twoshaft table.tsk-board .tsk-number{text-align:righ\
t;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft table.tsk-board select{max-width:44ch}.twoshaft table.t\
sk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:600;border-bottom:2px solid var(--ts-accent)}.t\
woshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{min-width:24ch}.twoshaft .tsk-spent,.twoshaft .\
tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){.twoshaft table.tsk-board,.twoshaft table.tsk-board tbody,.twos\
haft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.twoshaft table.tsk-board thead{position:absolut\
e;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft table.tsk-board tr{border-bottom:1px solid var(--t\
s-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twoshaft table.tsk-board tbody td,.twoshaft table.t\
sk-board tbody .tsk-number{display:block;border:0;max-width:none;min-width:0;padding:2px 0;text-align:left;white-space:n\
ormal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-board tbody .tsk-best td{border:0}.twoshaft table\
.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board tbody th{font-weight:600}.\
twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) ": ";color:var(--ts-quiet)}.twoshaft table.tsk-b\
oard td:empty{display:none!important}.twoshaft table.tsk-board select{max-width:100%}}.twoshaft .ts-gate{cursor:default;\
touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none}.twoshaft .ts-pulling,.twosha\
ft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accent)}.twoshaft .ts-gate svg{user\
-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-happened.ts-stopped,.twoshaf\
t .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;padding-left:calc(4 * var(--ts-\
grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{max-w\
idth:calc(var(--ts-width) + 12ch);font-weight:600}.twoshaft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:foc\
us-visible{outline-offset:-3px}.twoshaft .tsw-train svg{user-select:none}.twoshaft .tsw-counts{display:flex;flex-wrap:wr\
ap;gap:calc(2 * var(--ts-grid));margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-tem\
plate-columns:104px 1fr;column-gap:var(--ts-grid);align-items:center;width:268px;padding:4px;border:1px solid var(--ts-l\
ine);border-radius:2px;text-align:left;font-size:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts\
-accent);padding:3px}.twoshaft .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .ts\
w-count>.tsw-dial{grid-column:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:104\
px;height:104px;touch-action:none;cursor:grab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw\
-plate{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-\
ink);stroke-width:2}.twoshaft .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accen\
t)}.twoshaft .tsw-tick{stroke:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-nu\
mber{font:15px var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{min-height:1.5em;font-family:\
monospace;font-size:var(--ts-text);letter-spacing:1px;overflow-wrap:anywhere;max-height:4.5em;overflow-y:auto}.twoshaft \
.tsw-figure{min-height:1.5em;font-variant-numeric:tabular-nums}.twoshaft .tsw-figure:empty{min-height:0}.twoshaft .tsw-h\
appened{min-height:1.5em}.twoshaft .tsh-picture{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{displ\
ay:block;width:100%;min-width:720px;max-width:1100px;height:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-plac\
e:focus{outline:none}.twoshaft .tsh-place:hover .tsh-hit{stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh\
-hit,.twoshaft .tsh-chosen:hover .tsh-hit{stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh\
-hit{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:\
3px solid var(--ts-accent);padding-left:calc(1.5 * var(--ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-v\
erdict{font-weight:600}.twoshaft .tsh-verdict{margin-top:var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-b\
ottom:0}.twoshaft .tsl-sliders{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc\
(3 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:960px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em \
minmax(6em,1fr) 4em;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsl-row input{width:100\
%;accent-color:var(--ts-accent);margin:0;min-height:24px}.twoshaft .tsl-row .ts-box{justify-self:start}.twoshaft .tsl-fi\
gure{font-variant-numeric:tabular-nums;text-align:right}.twoshaft .tsl-drawing{overflow-x:auto}.twoshaft .tsl-drawing sv\
g{display:block;width:100%;min-width:600px;max-width:820px;height:auto}.twoshaft .tsl-sum{font-variant-numeric:tabular-n\
ums;margin:var(--ts-grid) 0}@media(max-width:480px){.twoshaft .tsl-sliders{grid-template-columns:minmax(0,1fr)}.twoshaft\
 .tsl-row{display:flex;flex-wrap:wrap;min-width:0}.twoshaft .tsl-row input{max-width:100%}}.twoshaft .tsp-section{overfl\
ow-x:auto}.twoshaft .tsp-gauge{width:220px;height:200px;flex:none}.twoshaft .tsp-section svg{display:block;max-width:100\
%;height:auto;min-width:320px}.twoshaft .ts-pair[hidden]{display:none}.twoshaft .ts-cells{position:absolute;pointer-even\
ts:none}.twoshaft .tsp-land.tsp-clear{fill:none}.twoshaft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round\
}.twoshaft .tsp-way{fill:none;stroke:var(--ts-bad);stroke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:va\
r(--ts-ink);stroke:var(--ts-paper);stroke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-wor\
d,.twoshaft .tsp-shut .tsp-chosen{display:none}.twoshaft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--t\
s-grid));font-size:var(--ts-small);min-height:1.6em}.twoshaft .ts-key{display:inline-flex;align-items:center;gap:4px}.tw\
oshaft .ts-swatch{width:25px;height:15px;border:1px solid var(--ts-line)}.twoshaft .ts-range{accent-color:var(--ts-accen\
t);min-height:24px}.twoshaft .ts-clock{min-width:6em;font-weight:600}.twoshaft .ts-unit{overflow:auto;max-height:620px;b\
order:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{displa\
y:block;max-width:none;max-height:none}.twoshaft .ts-unit [data-part]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path\
:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-un\
it [data-part]:hover path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible\
{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over\
{font-weight:600}.twoshaft .ts-unit-words p{max-width:var(--ts-width)}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sentenc\
es[hidden]{display:none}.twoshaft .ts-told{min-height:2em;max-height:9em;overflow-y:auto}.twoshaft .ts-build{display:gri\
d;grid-template-columns:minmax(16rem,2fr) minmax(0,3fr);gap:calc(2 * var(--ts-grid));align-items:start}.twoshaft .ts-bui\
ldlist{display:grid;gap:4px;max-height:22rem;overflow-y:auto;padding:4px}.twoshaft .ts-buildstep{text-align:left;padding\
-block:2px;min-height:28px}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var(--ts-line)}.twoshaft .ts-\
buildstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-current]{\
background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand{borde\
r:1px solid var(--ts-line);padding:var(--ts-grid);max-height:24rem;overflow-y:auto}.twoshaft .ts-hand .ts-field{border:0\
;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do{text-align:left;padding-bl\
ock:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid);font-size:var(--ts-small)\
}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.twoshaft .ts-record caption{t\
ext-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align:top;padding:3px 16px 3px 0\
;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-record .ts-blank{min-width:12em\
;height:2em}@media(max-width:52rem){.twoshaft .ts-build{grid-template-columns:minmax(0,1fr)}.twoshaft .ts-buildlist,.two\
shaft .ts-hand{max-height:none}}`,Ze="twoshaft-styles";function mn(){let t=document.getElementById(Ze);t?.textContent!==
Je&&(t?.remove(),document.head.append(s("style",{id:Ze},Je)))}function W({model:t,el:e},{kind:n,lost:r=()=>Wt(e),line:o=()=>{}}){
mn(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"ts-alert",role:"alert"}),l=Ve(e),i=()=>e.
classList.contains("ts-lost"),c=[],u=gn(t,()=>{i()||(e.classList.add("ts-lost"),l.down(),r())},g=>{i()||(g?l.down():l.up(),
o(g))}),p=hn(e),h,w=(g,k)=>{t.on(g,k),c.push([g,k])};return w("msg:custom",g=>{g.type==="trouble"&&!i()&&(a.textContent=
g.reason)}),{alert:a,follow:w,isLost:i,send(g){i()||(t.send(g),clearTimeout(h),h=window.setTimeout(()=>t.send({type:"res\
t"}),pn))},show:(...g)=>e.replaceChildren(...It(g)),close(){l.up(),clearTimeout(h),p(),u();for(let[g,k]of c)t.off(g,k)}}}function Qe({model:t,el:e}){let n=W({model:t,el:e},{kind:"rig",lost:()=>c.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),o=s("p",{class:"ts-cost"}),a=t.get("start"),l=null,i=p=>{l=et("order"),n.send({type:"order",order:p,turn:l})},
c=ee({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),d=s("button",{type:"\
button",class:"ts-button",onclick:()=>c.change([...a],"The first order stands again")},"Start again");c.tools.append(d),
n.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),n.alert,r,o,c.element);function u(){let p=t.
get("judged");l!==null&&p.turn!==l||(l=null,r.textContent=p.finding,o.textContent=p.cost,c.setOrder(p.order),c.setNotes(
p.notes))}return n.follow("change:judged",u),u(),n.close}var wn=["lit","bench","absent"],ts=[1,1.5,2,3,4.5];function ne({svg:t,parts:e,words:n}){let r=s("div",{class:"ts-unit",tabindex:"\
0",role:"application","aria-label":"The unit in section. Left and right arrows walk from part to part, up and down to th\
e part above or below, plus and minus zoom."});r.innerHTML=t;let o=r.querySelector("svg"),a=o.querySelector(".tsu-marks");
o.setAttribute("aria-hidden","true"),o.removeAttribute("role");let l=new Map(e.map(([m])=>[m,[]]));for(let m of Q(o,"[da\
ta-part]"))l.get(String(m.dataset.part))?.push(m);let i=new Map(e.map(([m],y)=>[m,y])),c=s("p",{class:"ts-hint ts-unit-n\
ame",role:"status"}),d=$t({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],...e.map(([m,y])=>[m,y])]),
u=-1,p=0,h={},w=m=>{let y=h[m];return y==="absent"?" Not there yet.":y==="bench"?" On the bench.":y==="lit"?" In hand.":
""},g=m=>`${e[m][1]}. ${e[m][2]}${w(e[m][0])}`;function k(m){for(let v of Q(o,".tsu-chosen"))v.classList.remove("tsu-cho\
sen");u=m;let y=m<0?"":e[m][0];d.value=y,c.textContent=m<0?L:g(m);for(let v of l.get(y)??[])v.classList.add("tsu-chosen");
m>=0&&N(y)}function $(m){let y=(l.get(m)??[]).map(M=>M.getBBox()),v=Math.min(...y.map(M=>M.x)),C=Math.max(...y.map(M=>M.
x+M.width)),E=Math.min(...y.map(M=>M.y)),_=Math.max(...y.map(M=>M.y+M.height));return{x:(v+C)/2,y:(E+_)/2}}function N(m){
let y=$(m),v=o.getBoundingClientRect().width/o.viewBox.baseVal.width,[C,E]=[y.x*v,y.y*v],{scrollLeft:_,scrollTop:M,clientWidth:A,
clientHeight:I}=r;(C<_+40||C>_+A-40)&&(r.scrollLeft=C-A/2),(E<M+40||E>M+I-40)&&(r.scrollTop=E-I/2)}function O(m){p=Math.
max(0,Math.min(ts.length-1,p+m)),o.style.width=`${100*ts[p]}%`,o.style.height="auto",u>=0&&N(e[u][0])}function x(m){let y=$(
e[u][0]),[v]=e.map(([C],E)=>({k:E,at:$(C)})).filter(({k:C,at:E})=>C!==u&&(E.y-y.y)*m>4).sort((C,E)=>es(C.at,y)-es(E.at,y));
v&&k(v.k)}r.addEventListener("keydown",m=>{if(ht(m))return;let y=e.length-1;if(m.key==="ArrowRight")k(u>=y?0:u+1);else if(m.
key==="ArrowLeft")k(u<=0?y:u-1);else if(m.key==="ArrowUp"||m.key==="ArrowDown")u<0?k(0):x(m.key==="ArrowUp"?-1:1);else if(m.
key==="Home")k(0);else if(m.key==="End")k(y);else if(m.key==="+"||m.key==="=")O(1);else if(m.key==="-")O(-1);else if(m.key===
"Escape")k(-1);else return;m.preventDefault()}),r.addEventListener("click",m=>{let y=bt(m,"[data-part]")?.dataset.part;k(
y===void 0?-1:i.get(y)??-1)}),r.addEventListener("pointerover",m=>{let y=bt(m,"[data-part]")?.dataset.part;if(y===void 0||
m.pointerType!=="mouse")return;let v=bt(m,"[data-solid]")?.querySelector("title")?.textContent,C=e[i.get(y)??0][1];S.textContent=
v&&v!==C?`${v} (${C})`:C}),r.addEventListener("pointerleave",()=>{S.textContent=""}),d.addEventListener("change",()=>k(i.
get(d.value)??-1));let S=s("span",{class:"ts-unit-over","aria-hidden":"true"}),L="Point at a part, tap it, or choose it \
here to read its name.";c.textContent=L;let b=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",d),J("−",()=>O(
-1),"Smaller"),J("+",()=>O(1),"Larger"),S),f=s("details",{class:"ts-unit-words"},s("summary",{},"What is where, in words"),
s("p",{},n));return O(0),{nodes:[b,c,r,f],show(m){h=m.looks;for(let[y,v]of l)for(let C of v)for(let E of wn)C.classList.
toggle(`tsu-${E}`,h[y]===E);a.innerHTML=m.marks,u>=0&&(c.textContent=g(u))}}}function es(t,e){return Math.abs(t.y-e.y)+2*
Math.abs(t.x-e.x)}function ss(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function ns({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=ne(t.get("picture")),
l=s("p",{class:"ts-hint",role:"status"}),i=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-ready"}),d=s("select",{class:"\
ts-box ts-before","aria-label":"A step that is not ready"}),u=s("input",{type:"text",inputmode:"numeric",size:"3",class:"\
ts-box","aria-label":"Go to place",onkeydown:f=>{f.key==="Enter"&&x()}}),p=s("span"),h=f=>L.send({type:"move",by:f}),w=f=>L.
send({type:"go",position:f}),g=J("Back",()=>h(-1),"One step back"),k=J("Next",()=>h(1),"Next step"),$=J("Start",()=>w(0),
"Start with an empty bench"),N=J("End",()=>w(t.get("view").count),"End of the order"),O=J("Try it",()=>L.send({type:"tak\
e",step:d.value}),"Try it: the step chosen here"),x=()=>{let f=Number.parseInt(u.value,10);f>=0&&w(f)},S=s("div",{class:"\
ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},$,g,k,N,s("span",{class:"t\
s-pair"},"place ",u,p,J("Go",x,"Go to this place")));S.addEventListener("keydown",f=>{if(!(f.target===u||ht(f))){if(f.key===
"ArrowLeft")h(-1);else if(f.key==="ArrowRight")h(1);else if(f.key==="Home")w(0);else if(f.key==="End")w(t.get("view").count);else
return;f.preventDefault()}});let L=W({model:t,el:e},{kind:"rig"});L.show(s("p",{class:"ts-who"},"Practice. Nothing here \
is marked or saved."),L.alert,n,S,r,o,l,...a.nodes,i,s("p",{class:"ts-prompt"},"Do another step next"),c,s("div",{class:"\
ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",d,O)));function b(){let f=t.get("view");n.textContent=
f.finding,r.textContent=f.happened,o.textContent=f.next?`Next in this order: ${f.next}`:"This is the end of the order.",
l.textContent=f.build.words,a.show(f.build),i.replaceChildren(...St(f.facts));let m=c.contains(document.activeElement);c.
replaceChildren(...f.ready.map(([C,E])=>J(E,()=>L.send({type:"take",step:C})))),f.ready.length||c.append(s("p",{class:"t\
s-hint"},"No step is ready.")),m&&(c.querySelector("button")??k).focus(),d.replaceChildren(...ct(f.waiting)),d.disabled=
O.disabled=!f.waiting.length,u.value=String(f.position),p.textContent=` of ${f.count} `;let y=f.position===0,v=f.position===
f.count;for(let C of[g,$])ss(C,y);for(let C of[k,N])ss(C,v)}return L.follow("change:view",b),b(),L.close}function qt(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=et("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var Z=(t,e,n,r,o)=>P("line",{x1:t,y1:e,x2:n,y2:r,class:o}),tt=(t,e,n,r="middle")=>P("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function Ft(){let t=P("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(P("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(Z(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(tt(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(P("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(Z(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*Math.
cos(o),"tsg-mark"))}let e=Z(100,134,100,119,"tsg-small"),n=P("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"tsg-po\
inter"});return t.append(e,n,P("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("transform",
`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`Dial indi\
cator, one mark is 0.01 mm. ${o}`)}}}function os({top:t,mark:e,perFigure:n}){let r=P("svg",{viewBox:"0 0 600 92",class:"\
tsg-scale",role:"img"}),o=l=>30+l/t*540;r.append(P("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));for(let l=0;l*
e<=t+1e-9;l+=1){let i=l%n===0;r.append(Z(o(l*e),22,o(l*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.append(tt(o(l*
e),84,String(Math.round(l*e))))}let a=P("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(a,tt(586,14,
"newtons","end")),{node:r,top:t,set(l,i){a.setAttribute("transform",`translate(${o(Math.min(l,t))} 0)`),r.setAttribute("\
aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function rs({low:t,high:e,reach:n}){let r=P("svg",{viewBox:"0 0 \
720 92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(P("rect",{x:o(t),y:34,width:o(e)-
o(t),height:24,class:"tsg-target"}),tt((o(t)+o(e))/2,84,"target"),Z(20,46,700,46,"tsg-mark"),Z(360,26,360,66,"tsg-mark t\
sg-long"),tt(20,20,"end play","start"),tt(700,20,"preload","end"),tt(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let c of[
i,-i])r.append(Z(o(c),42,o(c),50,"tsg-mark"));r.append(tt(o(-n),70,`${n.toFixed(2)} mm`,"start"),tt(o(n),70,`${n.toFixed(
2)} mm`,"end"));let a=P("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),l=P("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return r.append(a,l),{node:r,set(i,c,d){a.setAttribute("transform",`translate(${o(i)} 0)`),l.setAttribute("transform",`t\
ranslate(${o(c)} 0)`),r.setAttribute("aria-label",d)}}}function pt(t,{min:e,max:n,step:r,value:o,words:a,onInput:l}){let i=s(
"input",{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),c=s("output",{class:"ts-slid"},a(o));
return i.addEventListener("input",()=>{let d=a(Number(i.value));c.textContent=d,i.setAttribute("aria-valuetext",d),l(Number(
i.value))}),i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,c),set(d){i.value=
String(d),c.textContent=a(d)}}}function dt(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},
...e.map(([a,l])=>s("option",{value:a,selected:a===n},l)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function as({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),l=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),c=s("u\
l",{class:"ts-sentences"}),d=qt((b,f)=>x.send({type:"set",state:b,turn:f})),u=b=>{r={...r,...b},d.ask(r)},p=P("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),h=Z(0,0,0,0,"tsg-mark tsg-long"),w=tt(0,0,""),g=96,
k=g/(n.readingsOnly?r.radius:n.radii[1]),$=P("svg",{viewBox:`0 0 ${2*g+120} ${2*g+30}`,width:2*g+120,height:2*g+30,class:"\
tsg-drum",role:"img"}),N=g+4;p.setAttribute("transform",`translate(${N} ${N})`),$.append(p,h,Z(4,N,2*g+4,N,"tsg-centre"),
Z(N,4,N,2*g+4,"tsg-centre"),P("circle",{cx:N,cy:N,r:10,class:"tsg-face"}),w);let O=[s("div",{class:"ts-tools"},q("Turn t\
he shaft ten times",()=>u({turns:r.turns+10})))];if(!n.readingsOnly){let b=n.kinds,f=b.map(([m,y])=>s("label",{class:"ts\
-option"},s("input",{type:"checkbox",checked:r.kinds.includes(m),onchange:v=>u({kinds:b.map(([C])=>C).filter(C=>C===m?v.
target.checked:r.kinds.includes(C))})}),`with ${y}`));O[0].append(q("Fit the rings anew",()=>u({turns:0}))),f.length&&O.
push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the bearings"),...f)),O.push(pt("Set\
ting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:m=>u({setting:m}),words:m=>m<0?`${(-m).toFixed(3)} mm of\
 end play`:`${m.toFixed(3)} mm of preload`}).row,pt("Radius of the drum",{min:n.radii[0],max:n.radii[1],step:1,value:r.radius,
onInput:m=>u({radius:m}),words:m=>`${m} mm`}).row)}let x=W({model:t,el:e},{kind:"rig"});x.show(s("p",{class:"ts-who"},n.
readingsOnly?"Take your reading here; write it in the form below.":"Practice. Nothing here is marked or saved."),x.alert,
s("div",{class:"tsg-beside"},$,s("div",{class:"tsg-side"},a,l)),...O,i,c);function S(){let b=t.get("shown");d.waiting||(r=
b.state);let f=k*b.state.radius;At(p,{r:f}),At(h,{x1:N,y1:N-f,x2:2*g+120,y2:N-f}),At(w,{x:N,y:2*g+22}),w.textContent=`dr\
um, radius ${b.state.radius} mm`,$.setAttribute("aria-label",`A drum of ${b.state.radius} mm radius on the shaft; the co\
rd leaves it at its edge towards the scale.`),o?.top!==b.scale.top&&(o=os(b.scale),a.replaceChildren(o.node),l.textContent=
`Spring scale to ${b.scale.top} N, one mark ${b.scale.mark} N.`),o?.set(b.pull,b.pullWords),i.textContent=b.finding,c.replaceChildren(
...Dt(b.words)),d.answered(b.turn)}let L=()=>d.free();return x.follow("change:shown",S),x.follow("msg:custom",L),S(),x.close}function Mt({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=qt((p,h)=>l.send({type:"set",state:p,turn:h})),
l=W({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),c=n(r,p=>{o={...o,...p},a.ask(o)},o),d=r.readingsOnly?
"Take your readings here; write them in the form below.":"Practice. Nothing here is marked or saved.";l.show(s("p",{class:"\
ts-who"},d),l.alert,s("div",{class:"tsg-wide"},c.picture),...c.controls,i);function u(){let p=t.get("shown");a.waiting||
(o=p.state),c.set(p,o),i.textContent=p.finding,a.answered(p.turn)}return l.follow("change:shown",u),l.follow("msg:custom",
a.free),u(),l.close}var Lt=(...t)=>s("div",{class:"ts-tools"},...t);var bn={x:44,y:84,perMm:34};function vn(t){let e=P("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=bn,a=P("g",{}),l=P("g",{});e.append(P("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),P("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,l,tt(12,14,"main scale, mm","start"),tt(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let c=n+i*t.space*o;l.append(
Z(c,r,c,r+(i%2?20:30),"tsi-fine")),i%2===0&&l.append(tt(c,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let c=Math.
max(0,Math.ceil(i.mm-1));c<=t.top+25;c+=1){let d=n+(c-i.mm)*o;d<4||d>756||(a.append(Z(d,r,d,r-(c%10===0?34:c%5===0?28:20),
"tsi-fine")),c%5===0&&a.append(tt(d,r-40,String(c))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function is(t){
return Mt(t,(e,n,r)=>{let o=vn(e),a=pt("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:c=>n(
{rod:c})}),l=dt("Foot",e.places,r.place,c=>n({place:c,rod:0})),i=dt("Look",e.eyes,r.eye,c=>n({eye:c}));return{picture:o.
node,controls:[Lt(l.row,i.row),Lt(q("Push the rod down until it rests",()=>n({rod:e.top})),q("Lift the rod",()=>n({rod:0}))),
a.row],set(c,d){o.set(c),l.box.value=d.place,i.box.value=d.eye,a.box.value=d.rod}}})}function ls({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let l=s("div",{class:"tsj-bars"}),i=Q(a,"[data-bolt]"),c=et("torq\
ue"),d=s("input",{id:c,type:"range",min:10,max:100,step:5,oninput:()=>h()});d.value="100";let u=s("output",{class:"tsj-f\
igure",for:c}),p=()=>d.value==="100"?n.torque:Number((Math.round(n.torque*Number(d.value)/100/n.step)*n.step).toFixed(3));
function h(){u.textContent=`${p()} N·m`,d.setAttribute("aria-valuetext",`${p()} newton metres, ${d.value} percent of th\
e torque`)}let w=f=>x.send({type:"pull",bolt:f,torque:p()}),g=q("Take back",()=>x.send({type:"undo"})),k=q("Wait until t\
he film has run out",()=>x.send({type:"wait"})),$=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>x.send({type:"set",film:Number($.value)})},...n.films.map(f=>s("option",{value:f},f?`${f} µm thick`:"none"))),
N=s("input",{type:"checkbox",onchange:()=>x.send({type:"set",scattered:N.checked})});a.addEventListener("click",f=>{let m=bt(
f,"[data-bolt]");m&&(O(m),w(Number(m.dataset.bolt)))});let O=f=>{for(let m of i)m.setAttribute("tabindex",m===f?"0":"-1");
f.focus({preventScroll:!0})};a.addEventListener("keydown",f=>{let m=bt(f,"[data-bolt]");if(!m||f.ctrlKey||f.metaKey||f.altKey)
return;let y=Number(m.dataset.bolt),v={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[f.key];if(v)O(i[(y+v+i.length)%
i.length]);else if(f.key==="Home")O(i[0]);else if(f.key==="End")O(i[i.length-1]);else if(f.key==="Enter"||f.key===" ")f.
repeat||w(y);else return;f.preventDefault()});let x=W({model:t,el:e},{kind:"rig"}),S=s("div",{class:"ts-tools",role:"gro\
up","aria-label":"Bolts"},q("Start all by hand",()=>x.send({type:"start"})),...n.rounds.map(([f,m])=>q(`One round ${m}`,
()=>x.send({type:"round",pattern:f,torque:p()}))),g,q("Start again",()=>x.send({type:"again"}))),L=s("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:c},"Wrench set to"),d,u));n.films.length&&
L.append(s("label",{class:"ts-pair"},"Wet sealant",$),k,s("label",{class:"tsj-check"},N,"friction scatters from bolt to \
bolt")),x.show(s("p",{class:"ts-who"},n.readingsOnly?"A bench to take readings from. What you do here is not saved; your\
 answers below are.":"Practice. Nothing here is marked or saved."),x.alert,r,L,S,o,s("div",{class:"tsj-bench"},a,l),s("p",
{class:"ts-keys"},"Choose a bolt: the first time it is started by hand, then the wrench pulls it. Keys: arrows go from b\
olt to bolt, Enter pulls."));function b(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.happened,l.innerHTML=
f.bars;for(let[m,y]of i.entries()){let v=f.tight[m]?`${f.clamps[m]} kN`:f.started[m]?"started by hand":"not started";y.setAttribute(
"aria-label",`Bolt ${m+1} of ${n.count}, ${v}`),y.classList.toggle("tsj-tight",f.tight[m]),y.classList.toggle("tsj-start\
ed",f.started[m])}g.disabled=!f.pulls,k.disabled=!f.standing,$.value=String(f.film),N.checked=f.scattered}return x.follow(
"change:view",b),h(),b(),x.close}var cs="tsk-number";function Nt(t,e,...n){return s("td",{class:e?cs:null,"data-label":t||null,role:"cell"},...n)}function oe(t,e,n){
let r=e.map(([l,i])=>s("th",{scope:"col",role:"columnheader",class:i?cs:null},l)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function ds({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),l=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),c=new Map;for(let[h,
w,g,k]of n.checks){let $=s("select",{class:"ts-box","aria-label":`What it showed: ${w}`,onchange:()=>u.send({type:"obser\
ve",check:h,shown:$.value})},s("option",{value:""},"Not made"),...ct(k)),N=Nt("would tell, bit",!0),O=Nt("bit a minute",
!0),x=s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},w),Nt("min",!0,`${g}`),Nt("it showed",!1,$),N,O);c.set(h,
{box:$,tells:N,rate:O,row:x}),i.append(x)}let d=s("button",{class:"ts-button",type:"button",onclick:()=>u.send({type:"cl\
ear"})},"Take all observations back"),u=W({model:t,el:e},{kind:"rig"});u.show(s("p",{class:"ts-who"},"Practice. Nothing \
here is marked or saved."),u.alert,r,a,l,oe("Checks: what each showed, and what it can still tell",[["Check"],["min",!0],
["It showed"],["would tell, bit",!0],["bit a minute",!0]],i),o,d);function p(){let h=t.get("view");r.textContent=h.finding,
o.textContent=h.spent,l.textContent=h.more,a.replaceChildren(...Dt(h.left.map(([k,$])=>`${k} (${$})`)));let w=h.ranked,g=new Map(
w.map(([k,$,N],O)=>[k,{bits:$,rate:N,rank:O}]));for(let[k,{box:$,tells:N,rate:O,row:x}]of c){let S=h.observed[k],L=g.get(
k);$.value=S??"",N.textContent=L?L.bits:S!==void 0?"made":"nothing",O.textContent=L?L.rate+(L.rank===0?" ◀ best next":
""):"–",x.classList.toggle("tsk-best",L?.rank===0)}}return u.follow("change:view",p),p(),u.close}function us({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"\
The lever. Arrow keys left and right slide the selector shaft, up and down turn it."}),a=s("select",{class:"ts-box ts-ho\
w","aria-label":"How it is put together"},...ct(t.get("builds"))),l=J("Start again",()=>k({type:"reset"})),i=s("div",{class:"\
ts-tools ts-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([f,m])=>J(m,()=>k({type:"move",
code:f})))),c=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),d=s("p",{class:"ts-hint"},"Nothin\
g tried yet. Use the moves above; each is written down here."),u=s("p",{class:"ts-proof",role:"status"}),p=J("What does \
a full hand test find?",()=>{p.disabled=!0,u.textContent="testing",k({type:"prove"})}),h=W({model:t,el:e},{kind:"rig"});
h.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),h.alert,s("div",{class:"ts-tools"},s("span",
{class:"ts-pair"},"Put together: ",a),l),n,o,r,s("p",{class:"ts-hint"},"Drag the blue finger, or click the picture and u\
se the arrow keys: left and right slide, up and down turn. Or use the moves in words:"),i,s("p",{class:"ts-prompt"},"Tri\
ed by hand"),d,c,s("div",{class:"ts-tools"},p),u);let w=0,g="";function k(f){w+=1,h.send({...f,turn:w})}function $(){let f=t.
get("view");if(g!==t.get("figure")){g=t.get("figure"),o.innerHTML=g;let m=Tt(o,"svg");m.removeAttribute("role"),m.setAttribute(
"aria-hidden","true")}for(let m of Q(o,"[data-body]")){let[y,v]=f.moved[String(m.dataset.rides??m.dataset.body)]??[0,0];
m.setAttribute("transform",`translate(${y.toFixed(2)} ${v.toFixed(2)})`)}for(let m of Q(o,"[data-gear]"))m.classList.toggle(
"tsg-in",f.gears.includes(m.dataset.gear));o.dataset.turn=String(f.turn),n.textContent=`${f.gears.length>1?"■ ":f.gears.
length?"● ":"○ "}${f.title}.`,r.textContent=f.happened,r.classList.toggle("ts-stopped",/topped by/.test(f.happened)),
(c.childElementCount!==f.log.length||c.lastElementChild?.textContent!==f.log.at(-1))&&(c.replaceChildren(...f.log.map(m=>s(
"li",{class:/topped by/.test(m)?"ts-stopped":""},m))),c.scrollTop=c.scrollHeight),d.hidden=f.log.length>0,a.value=f.build,
u.textContent=f.proof,p.disabled=!1,x=!1,b()}o.addEventListener("keydown",f=>{if(ht(f))return;let m={ArrowLeft:[-1,0],ArrowRight:[
1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[f.key];m&&(f.preventDefault(),k({type:"nudge",travel:m[0],turned:m[1]}))}),a.addEventListener(
"change",()=>k({type:"build",build:a.value}));let N=null,O=null,x=!1;function S(f){let m=Tt(o,"svg"),y=m.getBoundingClientRect(),
v=m.viewBox.baseVal.width/y.width;return[(f.clientX-y.left)*v,(f.clientY-y.top)*v]}o.addEventListener("pointerdown",f=>{
let m=bt(f,".tsg-panel");if(!m||f.button!==0)return;let y=t.get("view").hand,[v,C]=S(f),E=Number(m.dataset.scale);N={x:v-
y[0]*E,y:C+y[1]*E,scale:E},o.setPointerCapture(f.pointerId),o.focus({preventScroll:!0}),o.classList.add("ts-pulling"),f.
preventDefault()}),o.addEventListener("pointermove",f=>{if(!N)return;let[m,y]=S(f);O={travel_mm:(m-N.x)/N.scale,turn_mm:(N.
y-y)/N.scale},b()});let L=()=>{N=null,o.classList.remove("ts-pulling")};o.addEventListener("pointerup",L),o.addEventListener(
"pointercancel",L);function b(){if(x||!O)return;x=!0;let f=O;O=null,k({type:"pull",...f})}return h.follow("msg:custom",f=>{
f.type==="trouble"&&(x=!1)}),h.follow("change:view",$),$(),h.close}function ps({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding",role:"status"}),a=s("p",{class:"\
ts-happened tsw-happened",role:"status"}),l=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,d=n.gears.map(
([y,v])=>s("button",{type:"button",class:"ts-button","data-gear":y,"aria-pressed":"false",onclick:()=>b({type:"gear",gear:y})},
v)),u=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:y=>b({type:"hold",shaft:y.target.value})},...ct(
n.holds)),p=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:y=>{i=y.target.value,m()}},...ct(r.dials.
map(y=>[y.shaft,y.name]))),h=y=>b({type:"turn",shaft:i,turns:y}),w=`1/${n.marks}`,g=s("div",{class:"ts-tools",role:"grou\
p","aria-label":"Turn the shaft"},J("↺ 1 turn",()=>h(-1),"One turn anticlockwise"),J(`↺ ${w}`,()=>h(-n.step),`${w} t\
urn anticlockwise`),J("↺ a touch",()=>h(-n.fine),"A touch anticlockwise"),J("a touch ↻",()=>h(n.fine),"A touch clock\
wise"),J(`${w} ↻`,()=>h(n.step),`${w} turn clockwise`),J("1 turn ↻",()=>h(1),"One turn clockwise"),J("Marks to zero",
()=>b({type:"reset"}))),k=new Map;for(let y of r.dials){let v=P("g",{},P("circle",{class:"tsw-end",r:34}),P("line",{class:"\
tsw-painted",x1:0,x2:0,y1:0,y2:-34}),P("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),C=[];for(let T=0;T<n.marks;T+=1)C.push(
P("line",{class:"tsw-tick",y1:-40,y2:T?-47:-52,transform:`rotate(${T*360/n.marks})`})),T&&C.push(P("text",{class:"tsw-nu\
mber",x:57*Math.sin(T*2*Math.PI/n.marks),y:-57*Math.cos(T*2*Math.PI/n.marks)+4},String(T)));let E=P("svg",{viewBox:"-70 \
-70 140 140",class:"tsw-dial","data-shaft":y.shaft,"aria-hidden":"true"},P("circle",{class:"tsw-plate",r:40}),...C,P("pa\
th",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),v),_=s("div",{class:"tsw-count",tabindex:"0",role:"application","ari\
a-roledescription":"shaft","data-shaft":y.shaft},s("div",{class:"tsw-name"}),E,s("div",{class:"tsw-strokes","aria-hidden":"\
true"}),s("div",{class:"tsw-figure"}));k.set(y.shaft,{box:_,svg:E,shaftEnd:v}),_.addEventListener("focus",()=>{i!==y.shaft&&
(i=y.shaft,m())}),_.addEventListener("keydown",T=>{if(ht(T))return;let j={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1,
PageDown:1,PageUp:-1}[T.key];j&&(T.preventDefault(),i=y.shaft,h(j*(T.key.startsWith("Page")?1:T.shiftKey?n.fine:n.step)))});
let M=null,A=T=>{let j=E.getBoundingClientRect();return Math.atan2(T.clientX-j.left-j.width/2,j.top+j.height/2-T.clientY)/
(2*Math.PI)};E.addEventListener("pointerdown",T=>{T.button===0&&(M=A(T),E.setPointerCapture(T.pointerId),_.focus({preventScroll:!0}),
T.preventDefault())}),E.addEventListener("pointermove",T=>{if(M===null)return;let j=A(T),z=j-M;z-=Math.round(z),M=j,$+=z,
O()});let I=()=>{M=null};E.addEventListener("pointerup",I),E.addEventListener("pointercancel",I)}let $=0,N=!1;function O(){
if(N||Math.abs($)<.002)return;N=!0;let y=$;$=0,h(y)}let x=W({model:t,el:e},{kind:"rig"});x.show(...n.closed?[]:[s("p",{class:"\
ts-who"},"Practice. Nothing here is marked or saved.")],x.alert,o,...n.closed?[]:[s("div",{class:"ts-tools",role:"group",
"aria-label":"Gears engaged"},s("span",{},"Engage: "),...d),l],s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Ho\
ld still: ",u),s("span",{class:"ts-pair"},"Turn by hand: ",p)),s("div",{class:"tsw-counts"},...[...k.values()].map(y=>y.
box)),g,a,s("p",{class:"ts-hint"},`All three are seen from the clutch side. Drag a dial round, or go to it and use the a\
rrow keys (${w} turn), Shift with an arrow key (a touch) or Page Up and Page Down (one turn). Each stroke is a whole tur\
n.`));let S=0,L=null;function b(y){S+=1,x.send({...y,turn:S})}let f=y=>{let v=[];for(let C=y;C>0;C-=5)v.push(C>=5?"||||/":
"|".repeat(C));return v.join(" ")};function m(){let y=t.get("view");L!==t.get("figure")&&(L=String(t.get("figure")),l.innerHTML=
L);for(let v of Q(l,"[data-wheel]")){let[C,E]=y.wheels[String(v.dataset.wheel)]??[0,!0];v.setAttribute("transform",`tran\
slate(0 ${(C*Number(v.dataset.reach)).toFixed(1)})`),v.classList.toggle("tsw-behind",!E)}for(let v of d)v.setAttribute("\
aria-pressed",String(y.engaged.includes(v.dataset.gear)));u.value=y.held,p.value=i;for(let v of y.dials){let{box:C,shaftEnd:E}=k.
get(v.shaft),_=v.way>0?"↻":v.way<0?"↺":"";E.setAttribute("transform",`rotate(${v.angle})`);let[M,,A,I]=C.children;M.
textContent=`${v.name}${v.held?", held":v.shaft===i?", your hand":""}`,A.textContent=v.strokes||_?`${_} ${f(v.strokes)}`:
"no stroke",I.textContent=v.figure,C.classList.toggle("tsw-hand",v.shaft===i),C.classList.toggle("tsw-held",v.held),C.setAttribute(
"aria-label",`${v.name}${v.held?", held":""}. ${v.words}`)}o.textContent=y.finding,a.textContent=y.happened,e.dataset.turn=
String(y.turn),N=!1,O()}return x.follow("change:view",m),m(),x.close}function fs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),l=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,l),c=[],
d=[],u=null,p=t.get("plan").lookingOnly,h=(b,f)=>s("button",{type:"button",class:"ts-button","data-verdict":b,"aria-pres\
sed":"false",onclick:()=>$.send({type:"judge",place:u,verdict:b})},f),w=p?[]:[h("stop","Stop here"),h("well","Fine as it\
 is")],g=s("button",{type:"button",class:"ts-button",onclick:()=>$.send({type:"next"})},"Another day"),k=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...w);t.get("plan").more&&k.append(g);let $=W({model:t,
el:e},{kind:"rig"});$.show(s("p",{class:"ts-who"},p?"A picture to look at. Nothing is saved here; your answers are below\
.":"Practice. Nothing here is marked or saved."),$.alert,n,s("p",{class:"ts-keys"},p?"Choose a place to read what can be\
 seen there. Keys: arrows go from place to place.":"Choose a place, read what can be seen there, and judge it. Keys: arr\
ows go from place to place; Tab goes on to the buttons."),r,i),p||i.after(k);function N(b,f){let m=b!==u;u=b;for(let[y,v]of d.
entries()){let C=c[y][0]===b;v.setAttribute("tabindex",C?"0":"-1"),v.setAttribute("aria-pressed",String(C)),v.classList.
toggle("tsh-chosen",C),C&&f&&(v.focus({preventScroll:!0}),O(v))}m&&$.send({type:"choose",place:b})}function O(b){let f=Tt(
b,".tsh-hit").getBoundingClientRect(),m=r.getBoundingClientRect();(f.left<m.left||f.right>m.right)&&(r.scrollLeft+=f.left-
m.left-(m.width-f.width)/2),(f.bottom<0||f.bottom>innerHeight||f.top<0)&&b.scrollIntoView({block:"nearest"})}function x(){
let b=t.get("plan");c=b.places,r.innerHTML=b.drawing,Tt(r,"svg").setAttribute("role","group"),d=c.map(([f])=>Tt(r,`[data\
-place="${f}"]`)),d.forEach((f,m)=>{f.setAttribute("role","button"),f.setAttribute("aria-label",`${m+1} ${c[m][1]}`),f.addEventListener(
"click",()=>N(c[m][0],!0))}),u=String(t.get("view").chosen),N(u,!1)}r.addEventListener("keydown",b=>{if(ht(b))return;let f=c.
findIndex(([v])=>v===u),m=Math.min(6,c.length),y=f;if(b.key==="ArrowRight")y=f+1;else if(b.key==="ArrowLeft")y=f-1;else if(b.
key==="ArrowDown")y=f+m;else if(b.key==="ArrowUp")y=f-m;else if(b.key==="Home")y=0;else if(b.key==="End")y=c.length-1;else if(b.
key!=="Enter"&&b.key!==" ")return;b.preventDefault(),y>=0&&y<c.length&&N(c[y][0],!0)});function S(){let b=t.get("view");
n.textContent=b.finding;let f=c.findIndex(([v])=>v===b.chosen);o.textContent=`${f+1}  ${c[f][1]}`,a.textContent=b.seen;let{
verdict:m,...y}=b.told;if(l.replaceChildren(),m){let v=b.judged[b.chosen],C=v==="stop"==(m==="Stop here."),E=v==="stop"?
"Stop here":"Fine as it is";l.append(s("p",{class:"tsh-verdict"},C?`✓ Yes: ${m}`:`✗ You said “${E}”. The course sa\
ys: ${m}`),s("dl",{class:"ts-facts"},...Object.entries(y).flatMap(([_,M])=>[s("dt",{},_),s("dd",{},M)])))}for(let v of w)
v.setAttribute("aria-pressed",String(b.judged[b.chosen]===v.dataset.verdict));for(let[v,C]of d.entries()){let E=b.judged[c[v][0]];
C.setAttribute("aria-label",`${v+1} ${c[v][1]}${E?`, judged: ${E==="stop"?"stop here":"fine as it is"}`:""}`);let _=C.querySelector(
".tsh-tag");if(!E){_?.remove();continue}_||(_=P("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),C.
append(_)),_.textContent=E==="stop"?"■ stop":"○ well"}e.dataset.turn=b.chosen}let L=()=>{x(),S()};return $.follow("c\
hange:plan",L),$.follow("change:view",S),L(),$.close}function hs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),l=new Map,c=n.sliders.map(([h,w,g,k,$,N])=>{let O=et(h.replace("_","-")),x=s("output",{class:"\
tsl-figure",for:O}),S=s("input",{id:O,type:"range",min:k,max:$,step:N,oninput:()=>{L(),u.send({type:"set",name:h,value:Number(
S.value)})}}),L=()=>{x.textContent=`${S.value} ${g}`,S.setAttribute("aria-valuetext",`${S.value} ${g==="°"?"degrees":g}`)};
return l.set(h,{slider:S,say:L}),s("div",{class:"tsl-row"},s("label",{for:O},w),S,x)}),d=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>u.send({type:"set",name:"grip",value:d.value})},...ct(n.grips)),u=W({model:t,el:e},{kind:"r\
ig"});u.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or saved."),u.alert,r,s("div",{class:"tsl-sliders",
role:"group","aria-label":"The lift"},...c,s("div",{class:"tsl-row"},s("span",{},"Grip"),d)),a,o,s("p",{class:"ts-keys"},
"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));function p(){let h=t.get("vi\
ew");r.textContent=h.finding,o.textContent=h.sum,a.innerHTML=h.drawing;for(let[w,{slider:g,say:k}]of l)document.activeElement!==
g&&(g.value=h.sizes[w]),k();d.value=h.sizes.grip}return u.follow("change:view",p),p(),u.close}var re={x:90,y:120,perMm:20,radius:82,bevel:30};function yn(t){let e=P("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=re;e.append(P("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),Z(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let h=n+p*t.pitch*o;if(p%2){e.append(Z(h,
r,h,r+18,"tsi-fine"));continue}let w=p/2;e.append(Z(h,r,h,r-(w%5?18:27),w%5?"tsi-fine":"tsi-bold")),w%5===0&&e.append(tt(
h,r-33,String(w)))}let l=P("g",{});e.append(l,tt(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway. T\
himble: 50 lines a turn.","start"));let i=P("path",{d:`M0 ${r-a+14}L${re.bevel} ${r-a}L${re.bevel} ${r+a}L0 ${r+a-14}Z`,
class:"tsi-body"}),c=P("rect",{x:re.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),d=P("rect",{x:0,y:r-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),u=P("g",{});return l.append(d,i,c,u),{node:e,set(p){l.setAttribute("transform",`tran\
slate(${n+p.mm*o} 0)`),u.replaceChildren();for(let h=0;h<t.lines;h+=1){let w=h-p.line;w-=t.lines*Math.round(w/t.lines);let g=w/
t.lines*2*Math.PI;if(Math.abs(g)>1.15)continue;let k=r-(a-8)*Math.sin(g),$=h%5===0;u.append(Z(0,k,$?26:16,k,$?"tsi-bold":
"tsi-fine")),$&&u.append(tt(36,k+5,String(h),"start"))}e.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function gs(t){
return Mt(t,(e,n,r)=>{let o=yn(e),a=pt("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, \
out to the right",onInput:c=>n({open:c})}),l=dt("Between the faces",e.between,r.between,c=>n({between:c,open:e.top})),i=e.
hands.length?dt("Close it",e.hands,r.hand,c=>n({hand:c})):null;return{picture:o.node,controls:[Lt(l.row,i?.row),Lt(q("Cl\
ose until it rests",()=>n({open:-1})),q("Open",()=>n({open:e.top}))),a.row],set(c,d){o.set(c),a.box.value=String(Math.max(
0,c.mm)),l.box.value=d.between}}})}function ms({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[c,d,u]of n.checks){let p=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${d}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&l.send({type:"make",check:c})}},"Make"),h=Nt("it shows",!1);h.classList.add("t\
sk-shown"),a.set(c,{button:p,shown:h}),o.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},d),Nt("min",!0,
`${u}`),Nt("",!1,p),h))}let l=W({model:t,el:e},{kind:"rig"});l.show(s("p",{class:"ts-who"},"Your unit. Checks are not sa\
ved; make them again after reopening."),l.alert,r,oe("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));
function i(){let c=t.get("view");r.textContent=c.finding;for(let[d,{button:u,shown:p}]of a){let h=c.shown[d];u.setAttribute(
"aria-disabled",h?"true":"false"),u.classList.toggle("ts-off",!!h),u.textContent=h?"Made":"Make",p.textContent=h?`${h[0]?
"✓":"✗"} ${h[1]}`:"",p.classList.toggle("tsk-failed",!!h&&!h[0])}}return l.follow("change:view",i),i(),l.close}function kn(){let t=P("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=P("g"),n=P("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(P("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,P("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=l=>(-135+270*l)*Math.PI/180,o="";function a([l,i,c]){e.replaceChildren();for(let d=0;d*i<=l+
1e-9;d+=1){let u=r(d*i/l),p=d%c===0,h=w=>[110+w*Math.sin(u),104-w*Math.cos(u)];if(e.append(Z(...h(p?72:79),...h(88),p?"t\
sg-mark tsg-long":"tsg-mark")),p&&d%(2*c)===0){let[w,g]=h(58);e.append(tt(w,g+4.5,String(Number((d*i).toFixed(2)))))}}e.
append(tt(110,170,"kN"))}return{node:t,set(l,i,c){String(l)!==o&&(o=String(l),a(l));let d=Math.min(i/l[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*d})`),t.setAttribute("aria-label",c)}}}function ws(t){return Mt(t,(e,n,r)=>{
let o=kn(),a=s("div",{class:"tsp-section"}),l="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),c=pt("Push",{min:0,max:100,step:1,value:r.travel,onInput:h=>n(
{travel:h}),words:h=>h>=100?"at the shoulder":`${h} % of the way`}),d=[c.row],u=null;if(!e.readingsOnly){let h=dt("Part",
e.places,r.place,$=>n({place:$,travel:0}));u=dt("Driver bears on",e.drivers,r.driver,$=>n({driver:$,travel:0}));let w=dt(
"Seat",e.seats,r.seat,$=>n({seat:$})),g=pt("Pair",{min:0,max:100,step:1,value:r.grip,onInput:$=>n({grip:$}),words:$=>$===
0?"loosest of the fit":$===100?"tightest of the fit":`${$} % from loosest to tightest`}),k=pt("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:$=>n({warmth:$}),words:$=>`${$} °C`});d.unshift(Lt(h.row,u.row,w.row),
g.row,k.row)}let p=s("dl",{class:"ts-facts"});return e.readingsOnly||d.push(p),{picture:i,controls:d,set(h,w){h.section!==
l&&(l=h.section,a.innerHTML=l),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*w.travel/
100} 0)`),o.set(h.gauge,h.force,h.words),Number(c.box.value)!==w.travel&&document.activeElement!==c.box&&c.set(w.travel),
u&&(u.row.hidden=!h.drives),h.facts&&p.replaceChildren(...St(h.facts))}}})}function bs({model:t,el:e}){let n=t.get("steps"),r=t.get("reach"),o=new Map(n.map(([L],b)=>[L,b])),a=s("div",{class:"ts-\
scroll"}),l=s("div",{class:"ts-scroll",tabindex:"0",role:"region","aria-label":"The rules around the chosen step"}),i=s(
"p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts-sentences"}),d=s("select",{class:"ts-box ts-before","aria-la\
bel":"Chosen step"},...ct(n.map(([L,b],f)=>[L,`${f+1}  ${b}`]))),u=s("button",{type:"button",class:"ts-button","aria-pre\
ssed":"false"},"Fit the width"),p=W({model:t,el:e},{kind:"rig",lost(){d.disabled=!0}});p.show(p.alert,s("p",{class:"ts-f\
inding"},t.get("finding")),s("p",{class:"ts-hint"},"Choose a step: click it, or use the arrow keys in the picture. Left \
and right follow the rules, up and down stay beside."),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",d),
u),a,s("p",{class:"ts-hint"},"Thick outline: comes before the chosen step. Double outline: comes after it. Pale: either \
side."),i,l,c),a.innerHTML=t.get("figure");let h=Tt(a,"svg");h.setAttribute("role","group");let w=Q(h,".tsf-step").sort(
(L,b)=>Number(L.dataset.step)-Number(b.dataset.step)),g=Q(h,".tsf-rule").map(L=>({node:L,ends:String(L.dataset.rule).split(
"-").map(Number)}));w.forEach((L,b)=>{L.setAttribute("role","button"),L.setAttribute("aria-label",`${b+1} ${n[b][1]}, ${r[b].
before.length} before it, ${r[b].after.length} after it`),L.addEventListener("click",()=>N(b,!0))});let k=Number(o.get(t.
get("near").step));function $(L){let b=new Set(r[k].before),f=new Set(r[k].after);w.forEach((C,E)=>{C.setAttribute("tabi\
ndex",E===k?"0":"-1"),C.setAttribute("aria-pressed",String(E===k)),C.classList.toggle("ts-chosen-step",E===k),C.classList.
toggle("ts-before-it",b.has(E)),C.classList.toggle("ts-after-it",f.has(E)),C.classList.toggle("ts-either",E!==k&&!b.has(
E)&&!f.has(E))});let m=C=>C===k||b.has(C)||f.has(C);for(let{node:C,ends:E}of g){let _=b.has(E[0])&&(E[1]===k||b.has(E[1]))||
f.has(E[1])&&(E[0]===k||f.has(E[0]));C.classList.toggle("ts-either",!(_&&E.every(m)))}d.value=n[k][0],L&&w[k].focus({preventScroll:!0});
let y=w[k].getBoundingClientRect(),v=a.getBoundingClientRect();(y.left<v.left+16||y.right>v.right-16)&&(a.scrollLeft+=y.
left-v.left-v.width/2)}function N(L,b){k=L,$(b),p.send({type:"choose",step:n[L][0]})}let O=L=>{let f=Tt(w[L],"rect").getBBox();
return{x:f.x,y:f.y}};function x(L){let b=O(k),f=v=>v.sort((C,E)=>Math.abs(O(C).y-b.y)-Math.abs(O(E).y-b.y))[0];if(L==="A\
rrowRight")return f(g.filter(({ends:v})=>v[0]===k).map(({ends:v})=>v[1]));if(L==="ArrowLeft")return f(g.filter(({ends:v})=>v[1]===
k).map(({ends:v})=>v[0]));let m=w.map((v,C)=>C).filter(v=>Math.abs(O(v).x-b.x)<2&&v!==k),y=L==="ArrowUp"?-1:1;return f(m.
filter(v=>(O(v).y-b.y)*y>0))}h.addEventListener("keydown",L=>{if(!ht(L))if(["ArrowUp","ArrowDown","ArrowLeft","ArrowRigh\
t"].includes(L.key)){let b=x(L.key);b!==void 0&&N(b,!0),L.preventDefault()}else(L.key==="Enter"||L.key===" ")&&L.preventDefault()}),
d.addEventListener("change",()=>N(Number(o.get(d.value)),!1)),u.addEventListener("click",()=>{let L=a.classList.toggle("\
ts-fit");u.setAttribute("aria-pressed",String(L)),$(!1)});function S(){let L=t.get("near");i.textContent=L.words,l.innerHTML=
L.figure,c.replaceChildren(...Dt(L.sentences))}return p.follow("change:near",S),S(),requestAnimationFrame(()=>$(!1)),p.close}function xn(){let t=P("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=P("g",{}),n=P("g",{});return e.append(
P("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),Z(150,164,150,98,"tsi-bold"),P("circle",{cx:150,cy:98,r:5,class:"tsg-h\
ub"})),n.append(Z(150,86,150,40,"tsi-plunger"),P("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,Z(50,164,250,
164,"tsg-centre"),Z(150,250,150,80,"tsg-centre"),n,tt(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute("\
transform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function vs(t){
return Mt(t,(e,n,r)=>{let o=Ft(),a=xn(),l=pt("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:d=>`turn\
ed by ${d}°`,onInput:d=>n({angle:d})}),i=dt("Plunger",e.pressed,r.pressed,d=>n({pressed:d})),c=dt("Stand",e.tilts,r.tilt,
d=>n({tilt:d}));return{picture:s("div",{class:"tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One ma\
rk 0.01 mm, one turn 1 mm"))),controls:[Lt(i.row,c.row),l.row],set(d,u){o.set(d.mm,d.words),a.set(d.state.angle,Number(d.
state.tilt),`Shaft end on, turned by ${d.state.angle}°; the plunger stands ${d.state.tilt}° off square. Not to scale.`),
l.set(u.angle)}}})}var ks=(t,e)=>(t+e)%7<2,xs=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,ie=()=>!1,ae=t=>(e,n)=>n%t===0,$n={"":ie,dots:(t,e)=>t%6<2&&e%
6<2,rising:ks,cross:xs,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":ie,"lines-2":ae(14),"lines-3":ae(8),"lines-4":ae(5),"lines-5":ae(
3)};function Sn(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var ys=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function $s(t,[e,n],r,o,a){let l=n*4,i=new Uint32Array(l*e*4),c=new Map(r.map(([p,,h,w])=>{let g=h?ys(Sn(h),200):
0;return[p,{ground:g,hatch:$n[w]??ie}]})),d={ground:0,hatch:ie},u=ys(o,190);for(let p=0;p<e;p+=1){let h=(e-1-p)*4;for(let w=0;w<
n;w+=1){let g=t[p*n+w];if(!g)continue;let{ground:k,hatch:$}=c.get(g&15)??d,N=a&&(g&16)!==0,O=a&&(g&32)!==0;for(let x=h;x<
h+4;x+=1)for(let S=w*4;S<(w+1)*4;S+=1){let L=$(S,x)||N&&ks(S,x)||O&&xs(S,x);i[x*l+S]=L?u:k}}}return i}var Cn=600;function Ls(t,e,n,r,o,a){let[l,i]=n;t.width=i*4,t.height=l*4;let c=new Uint8ClampedArray($s(e,n,r,o,a).buffer),
d=new ImageData(c,t.width,t.height);t.getContext("2d")?.putImageData(d,0,0)}function An(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return Ls(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function Cs({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),l=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),c=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),d=W({model:t,el:e},{kind:"rig",lost(){h.setDisabled(!0),Wt(e)}}),u=null,p=A=>{u=et("turn"),d.send({...A,turn:u})},
h=Qt({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(A){h.
drawing.strokes(A),p({type:"lay",entries:A})},onRemove:A=>p({type:"remove",at:A}),onClear:()=>p({type:"clear"})}),w=q("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),g=s("input",{type:"range",id:et("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),k=s("output",{for:g.id}),$=$t({id:et("slide"),onchange:()=>p({type:"slide",by:$.value})},
t.get("view").slides),N=null;g.addEventListener("input",()=>{k.textContent=`${g.value} µm`;let A={type:"flat",um:Number(
g.value)};u===null?p(A):N=A});let{box:O,unit:x}=h.drawing;h.drawing.land.classList.add("tsp-clear"),h.drawing.frame.prepend(
c);let S=(...A)=>s("span",{class:"ts-pair"},...A);d.show(s("p",{class:"ts-who"},"Practice. Nothing here is marked or sav\
ed."),d.alert,o,h.drawing.frame,i,s("div",{class:"ts-tools"},w,S(s("label",{for:$.id},"the other face is"),$),S(a,q("1 m\
inute passes",()=>p({type:"time",by:1})),q("5 minutes pass",()=>p({type:"time",by:5}))),S(s("label",{for:g.id},"faces ou\
t of flat by"),g,k)),h.tools,l,s("details",{class:"ts-keys"},s("summary",{},"Passes laid"),h.empty,h.list));function L(){
let A=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return A?A.slice(0,3).map(Number):[0,0,0]}let b="",f="";function m(){
let A=t.get("view"),I=r[A.closed?"closed":"film"],T=t.get("grid"),j=T instanceof DataView?new Uint8Array(T.buffer,T.byteOffset,
T.byteLength):new Uint8Array(T);Ls(c,j,A.shape,I,L(),!A.closed);let[z,G]=A.shape,[vt,st]=[A.corner[0]-A.pitch/2,A.corner[1]-
A.pitch/2],H=(X,nt)=>`${(100*X/nt).toFixed(3)}%`;c.style.left=H(vt-O.left,O.width),c.style.width=H(G*A.pitch,O.width),c.
style.top=H(O.high-st-z*A.pitch,O.height),c.style.height=H(z*A.pitch,O.height);let F=new Set(j.map(X=>A.closed?X:X&15)),
U=I.filter(([X])=>F.has(X)),at=`${U.map(([,X])=>X)} ${L()}`;at!==b&&(b=at,i.replaceChildren(...U.map(X=>An(X,L()))))}let y=P(
"g");h.drawing.over.append(y);let v=([A,I])=>[A-O.left,O.high-I];function C([A,I]){let T=I.map(j=>{let[z,G]=v(j);return`\
M${z.toFixed(1)} ${G.toFixed(1)}h0.01`});return P("path",{d:T.join(""),class:"tsp-lump","stroke-width":2*A})}function E(A){
let[I,T]=v(A[A.length-1]),j=`M${I-1.3*x} ${T-x}h${2.6*x}l${-1.3*x} ${2.2*x}Z`;return[P("path",{d:h.drawing.path(A),class:"\
tsp-way","stroke-width":x}),P("path",{d:j,class:"tsp-out"})]}function _(){let A=t.get("view");if(u!==null&&A.turn!==u)return;
u=null;let I=JSON.stringify([A.entries,A.notes]);if(I!==f&&h.show(A.entries,A.notes),f=I,h.drawing.strokes([]),m(),y.replaceChildren(
...A.lumps.map(C),...A.leaks.flatMap(E)),h.drawing.svg.classList.toggle("tsp-shut",A.closed),h.drawing.svg.classList.toggle(
"tsp-clean",A.closed||A.clean),o.textContent=A.finding,$.value=A.slide,a.textContent=`minute ${A.minute}`,w.textContent=
A.closed?"Lift the face off again":"Close the face",N===null&&(g.value=String(A.flat),k.textContent=`${A.flat} µm`),l.replaceChildren(
...St(A.facts)),N===null)return;let T=N;N=null,p(T)}d.follow("change:view",_),d.follow("msg:custom",A=>{A.type==="troubl\
e"&&(u=null,h.drawing.strokes([]))});let M=new MutationObserver(()=>setTimeout(m,Cn));return M.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),_(),()=>{d.close(),M.disconnect()}}function As(t){return Mt(t,(e,n,r)=>{let o=Ft(),a=s("div",{class:"tsp-section"}),l="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),c=e.places.map(([u,p])=>[u,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:u})},p)]),d=[s("p",{class:"ts-hint"},e.rule),Lt(s("span",{},"Set the gauge down at"),...c.map(([,u])=>u))];
return e.readingsOnly||(d.push(Lt(dt("Lip looks towards",e.sides,r.lip,u=>n({lip:u})).row,dt("Lip is",e.greases,r.grease,
u=>n({grease:u})).row,e.sleeves.length?dt("It went",e.sleeves,r.sleeve,u=>n({sleeve:u})).row:"")),d.push(pt("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:u=>`${u.toFixed(2)} mm${u<0?", proud":""}`,onInput:u=>n({
depth:u})}).row,pt("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:u=>u?`${u.toFixed(2)} mm across`:"square",onInput:u=>n(
{lean:u})}).row)),{picture:i,controls:d,set(u,p){u.section!==l&&(l=u.section,a.innerHTML=l),a.querySelector(".tsl-moving")?.
setAttribute("transform",u.placed),o.set(u.dial,u.words);for(let[h,w]of c)w.setAttribute("aria-pressed",String(h===p.place))}}})}function Ms({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=Ft(),a=n.readingsOnly?null:rs(n),l=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),c=qt((b,f)=>N.send({type:"set",state:b,turn:f})),d=b=>{r={...r,...b},c.ask(r)},
u=(b,f)=>{let m=[...r.shims];m[b]=f,d({shims:m.filter(Boolean),turns:0})},p=(b,f,m)=>q(b,f,{"aria-pressed":m}),h=q("Turn\
 the shaft ten times",()=>d({turns:r.turns+10})),w=p("Pull the shaft away",()=>d({side:"away"}),"true"),g=p("Push it to \
the dial",()=>d({side:"towards"}),"false"),k=dt("Plunger",n.plungers,r.plunger,b=>d({plunger:b})),$=[s("div",{class:"ts-\
tools"},n.rolls?h:null,k.row,w,g)];if(!n.readingsOnly){let b=dt("Shim",n.shelf,r.shims[0],m=>u(0,m)),f=n.second?dt("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",m=>u(1,m)):null;$.unshift(s("div",{class:"ts-tools"},b.row,f?.row)),$.
push(pt("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:m=>d({warmth:m}),words:m=>m?`case ${Math.round(n.caseRise*
m/100)} K warmer`:"cold, as at the bench"}).row)}let N=W({model:t,el:e},{kind:"rig"}),O=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});O.innerHTML=n.section;let x=[s("p",{class:"ts-who"},n.readingsOnly?"Take y\
our readings here; write them in the form below.":"Practice. Nothing here is marked or saved."),N.alert,s("div",{class:"\
tsg-beside"},O,s("div",{class:"tsg-gauge"},o.node,s("div",{},"Dial at the shaft's right end, one mark 0.01 mm"))),...$,l,
a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Axis of settings"},a.node)),i];N.show(...x.filter(Boolean));function S(){let b=t.get("show\
n");c.waiting||(r=b.state),o.set(b.dial,b.dialWords),w.setAttribute("aria-pressed",String(b.state.side==="away")),g.setAttribute(
"aria-pressed",String(b.state.side==="towards")),l.textContent=b.finding,a&&(a.set(b.cold,b.warm,b.words.join(" ")),i.replaceChildren(
...b.words.map(f=>s("p",{},f)))),c.answered(b.turn)}let L=()=>c.free();return N.follow("change:shown",S),N.follow("msg:c\
ustom",L),S(),N.close}function Es({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),l=s("dl",{class:"ts-facts"}),i=null,c=null,d=(f,m)=>{c={...c,[f]:m},i===null&&u()};function u(){
i=et("choice"),S.send({type:"choose",chosen:c,turn:i}),c=null}let p=s("div",{class:"tsj-settings"}),h=(f,m,y)=>{let v=et(
"set");return m.id=v,p.append(s("label",{for:v},f),s("span",{class:"tsj-slide"},m,y)),m},w=(f,m,y)=>h(m,s("select",{class:"\
ts-box",onchange:v=>d(f,v.target.value)},...ct(y.map(v=>typeof v=="string"?[v,v]:v)))),g=(f,m,y)=>h(m,s("input",{type:"r\
ange",oninput:v=>d(f,Number(v.target.value))}),y),k={group:w("group","Bolt of the unit",n.groups),thread:w("thread","Thr\
ead",n.threads),strength:w("strength","Strength class",n.classes),state:w("state","State of the thread",n.states),tool:w(
"tool","Tool",n.tools)},$=s("output",{class:"tsj-figure"}),N=g("torque_nm","Torque",$),O=s("output",{class:"tsj-figure"}),
x=g("engagement_mm","Thread that meets",O),S=W({model:t,el:e},{kind:"rig"});S.show(s("p",{class:"ts-who"},"Practice. Not\
hing here is marked or saved."),S.alert,r,o,s("div",{class:"tsj-bench"},p,a),l);let L=(f,m,y,v,C,E)=>{At(f,{min:m,max:y,
step:v}),i===null&&(f.value=String(C)),f.setAttribute("aria-valuetext",E)};function b(){let f=t.get("view");if(i!==null&&
f.turn!==i)return;i=null,c!==null&&u();let{chosen:m}=f;r.textContent=f.finding,o.innerHTML=f.band,a.innerHTML=f.section,
l.replaceChildren(...St(f.facts));for(let[y,v]of Object.entries(k))v.value=m[y];L(N,1,f.topTorque,.5,m.torque_nm,f.torqueText),
$.textContent=f.torqueText,L(x,f.lowEngagement,f.topEngagement,.5,m.engagement_mm,f.engagementText),O.textContent=f.engagementText}
return S.follow("change:view",b),b(),S.close}function Os({model:t,el:e}){let n=ne(t.get("picture")),r=W({model:t,el:e},{kind:"rig"});return r.show(r.alert,s("p",{class:"\
ts-finding"},t.get("finding")),...n.nodes),r.close}function Ut(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function ye(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var ve=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function Ts(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let l=Ut(e,
n),i=l.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let d=e.map(([h])=>h),u=t==="ArrowLeft"?-1:1,p=Ut(e,d[(d.
indexOf(n)+u+d.length)%d.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return l[Math.min(i+1,l.length-1)];if(t==="A\
rrowUp")return l[Math.max(i-1,0)];if(t==="Home")return l[0];if(t==="End")return l.at(-1);if(t.length!==1||t===" ")return;
let c=t.toLowerCase();return ve(l,i).find(d=>o[d].toLowerCase().startsWith(c))}function Ns({stages:t,stage:e,step:n,isOpen:r}){
let o=Ut(t,e),a=t.flatMap(([,,i])=>i),l=a.indexOf(String(o.at(-1)));return ve(o,o.indexOf(String(n))).find(r)??ve(a,l).find(
r)}function Is({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"ts-happened ts-told",role:"\
status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choice","aria-label":"Stage",onchange:()=>vt()},
...ct(n.stages.map(([B,K])=>[B,K]))),l=J(n.marked?"Next open step":"Next ready step",()=>A("next"));l.classList.add("ts-\
next");let i=s("div",{class:"ts-buildlist",role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this stag\
e",onkeydown:B=>T(B)}),c=s("p",{class:"ts-hint"},"Keys: up and down walk through the steps, left and right change the st\
age, Enter takes a step in hand; Enter again does it."),d=s("div",{class:"ts-hand",role:"group","aria-label":"Step in ha\
nd",onkeydown:B=>{B.key!=="Enter"||!B.target.matches("input[type=radio], .ts-number-box")||(B.preventDefault(),t.get("ha\
nd").stands?z():nt())}}),u=s("div",{class:"ts-scroll ts-fit"}),p=s("dl",{class:"ts-facts"}),h=s("ul",{class:"ts-sentence\
s"}),w=s("p",{class:"ts-prompt"},"Wrong so far"),g=s("select",{class:"ts-box ts-before","aria-label":"A step that stands"}),
k=J("Take out again",()=>{g.value&&f({type:"out",step:g.value},"hand")}),$=J("Put the tools down",()=>f({type:"over"},"t\
old"));$.classList.add("ts-over");let N=s("div",{}),O=s("p",{class:"ts-status"}),x=s("details",{ontoggle:()=>{x.open!==!!t.
get("view").record&&f({type:"record",open:x.open})}},s("summary",{},"Build record"),N),S=W({model:t,el:e},{kind:"rig"});
S.show(s("p",{class:"ts-who"},n.who),S.alert,r,O,o,s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"\
ts-tools"},a,l),i,c),d),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},g,k),$),u,p,w,h,x);let L=0,b=null;function f(B,K=null){
L+=1,b=K&&{turn:L,focus:K},e.setAttribute("aria-busy","true"),S.send({...B,turn:L})}let m="",y=null,v="next",C=B=>!t.get(
"view").done.includes(B),E=()=>Q(i,"[data-step]"),_=B=>E().find(K=>K.dataset.step===B)?.focus(),M=()=>({stages:n.stages,
stage:a.value,step:y,isOpen:C});function A(B,K){v=B,f(B==="list"?{type:"take",step:K}:{type:"next"},"hand")}function I(B){
a.value=ye(n.stages,B)??a.value,y=B,vt(),_(B)}function T(B){if(ht(B))return;let K=Ts(B.key,{...M(),labels:n.labels});K&&
(B.preventDefault(),I(K))}function j(){let B=Ns(M());B?v==="next"?l.focus():I(B):$.focus()}function z(){let B=t.get("vie\
w").done.length>=Object.keys(n.labels).length;v==="next"&&!B?A("next"):j()}function G(B){let{done:K,ready:ot}=t.get("vie\
w");return K.includes(B)?{sign:"✓",word:"done"}:ot.includes(B)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"op\
en":"waits"}}function vt(){let B=Ut(n.stages,a.value);(y===null||!B.includes(y))&&(y=B.find(C)??B[0]);let K=t.get("hand").
step,ot=JSON.stringify([a.value,B.map(G),K]);if(ot===m){for(let ft of E())ft.tabIndex=ft.dataset.step===y?0:-1;return}m=
ot;let lt=E().find(ft=>ft===document.activeElement)?.dataset.step;i.replaceChildren(...B.map(ft=>st(ft,K))),lt&&_(lt)}function st(B,K){
let{sign:ot,word:lt}=G(B);return s("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${lt}`,"data-step":B,
tabindex:B===y?"0":"-1","aria-current":B===K?"step":!1,"aria-label":`${n.labels[B]}: ${lt}`,onclick:()=>{y=B,A("list",B)}},
Ot(ot),n.labels[B])}let H="",F=new Map;function U(B){let K=jt(B),ot=s("p",{class:"ts-read",id:K.read,role:"status"}),lt=0,
ft=R=>{f({type:"set",name:B.name,value:R}),lt=L},gt=Pt(B).make(B,K,ft,()=>{}),D=Ht(B,K,null);return D.append(gt.element,
ot),D.dataset.field=B.name,{element:D,flush:()=>gt.flush?.(),show(R={},Y){if(Y<lt)return;gt.show(R);let it=R.read?`read \
as ${R.read}`:"";ot.textContent=R.error?`▲ Look again: ${R.error}`:it}}}let at=B=>s("dl",{class:"ts-facts"},...St(B));
function X(){let B=t.get("hand"),K=JSON.stringify(B);if(K===H)return;if(H=K,d.dataset.stands=String(!!B.stands),F=new Map(
(B.fields??[]).map(gt=>[gt.name,U(gt)])),!B.step){d.replaceChildren(s("p",{class:"ts-hint"},"No step in hand. Choose one\
 from the list, or press the button above it."));return}let ot=J(`Do it: ${B.label}`,nt);ot.classList.add("ts-do");let lt=B.
stands?[J("Go on",z),J("Take it out again",()=>f({type:"out",step:B.step},"hand"))]:[ot];d.replaceChildren(s("p",{class:"\
ts-prompt ts-hand-name",tabindex:"-1"},B.label),...B.plain.map(gt=>s("p",{class:"ts-hint"},gt)),...B.cautions.map(gt=>s(
"p",{class:"ts-caution"},s("b",{},"Take care: "),gt)),...B.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),at(
B.read)]:[],...B.card.length?[at(B.card)]:[],...[...F.values()].map(gt=>gt.element),s("div",{class:"ts-tools"},...lt));let ft=ye(
n.stages,B.step);ft&&([a.value,y]=[ft,B.step])}function nt(){for(let B of F.values())B.flush();f({type:"do"},"after")}function yt(){
let B=t.get("view").asked_back,K=Q(d,"[data-field]").find(ft=>ft.dataset.field===B),ot=K&&Q(K,"input:not(:disabled), sel\
ect, button"),lt=Q(d,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return ot?.[0]??
lt[0]}function xt(){let B=t.get("view"),K=B.told;r.textContent=B.finding,O.textContent=B.status,O.hidden=!B.status,o.textContent!==
K.join("")&&o.replaceChildren(...K.map(lt=>s("p",{},lt))),X(),vt();for(let[lt,ft]of F)ft.show(B.states[lt],B.turn);if(u.
dataset.shown!==B.figure&&(u.innerHTML=B.figure,u.dataset.shown=B.figure),p.replaceChildren(...St(B.facts)),h.replaceChildren(
...Dt(B.faults.map(([,lt])=>lt))),w.hidden=h.hidden=!B.faults.length,Et(B.done),N.innerHTML=B.record,x.open=!!B.record,e.
setAttribute("aria-busy",String(B.turn<L)),!b||B.turn<b.turn)return;let{focus:ot}=b;b=null,ot==="told"?o.focus():ot==="a\
fter"&&!t.get("hand").step?j():(yt()??l).focus()}function Et(B){if(g.disabled=k.disabled=!B.length,g.dataset.done===B.join(
" "))return;g.dataset.done=B.join(" ");let K=[...B].reverse();g.replaceChildren(...ct(K.map(ot=>[ot,n.labels[ot]])))}return S.
follow("change:view",xt),xt(),S.close}function Mn(t){let e=P("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=Z(r,
o,r,o,"tsi-adapter"),l=P("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=Z(r,o+74,r,o+74,"tsi-arm"),c=tt(r,o+94,"");return e.
append(Z(r,o,r+440,o,"tsi-lever"),a,l,P("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),tt(r+440,o-20,"hand, middle of the gri\
p","end"),tt(r+20,o-20,"square drive","start"),Z(r+440,o+10,r+440,o+84,"tsg-centre"),i,c,tt(8,242,"lengths to scale","st\
art")),{node:e,set(d){let u=d.state.angle/180*Math.PI,p=r-d.state.reach*n*Math.cos(u),h=o-d.state.reach*n*Math.sin(u);At(
a,{x2:p,y2:h}),At(l,{cx:p,cy:h}),At(i,{x1:p,x2:r+440}),At(c,{x:(p+r+440)/2}),c.textContent="the lever from bolt to hand,\
 along the wrench",e.setAttribute("aria-label",`${t.name}. ${d.words}`)}}}function Ds(t){return Mt(t,(e,n,r)=>{let o=Mn(
e),a=(i,c,d,u,p,h)=>pt(i,{min:d,max:u,step:p,value:r[c],words:w=>`${w} ${h}`,onInput:w=>n({[c]:w})}),l={setting:a("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{picture:o.node,controls:Object.values(l).map(i=>i.row),
set(i,c){o.set(i);for(let[d,u]of Object.entries(l))u.set(c[d])}}})}function ke(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=l=>String(l).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var En="twoshaft-unsent:";function Bs(t,e){let n=En+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,l,i,c=new Date)=>o({...r(),[a]:{value:l,
base:i,at:c.toISOString()}}),drop(a){let{[a]:l,...i}=r();l&&o(i)}}}function Ps(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var Rt=null,On="input, button, select, textarea, summary, a, [tabindex]",Rs=t=>[...t.querySelectorAll(On)];function js(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?Rt={form:e,at:Rs(t).indexOf(a),from:null}:Rt?.form===e&&t.
isConnected&&(Rt=null))},r=({target:a})=>{Rt?.form===e&&a instanceof HTMLInputElement&&(Rt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(Rt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:l}=Rt,i=Rs(t)[a];i?.focus({preventScroll:!0}),
l!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(l,l)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}function Hs(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let l=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),c=q("Use these figures",()=>h("yes")),d=q(
"Go back to the drawn figures",()=>h("no")),u=!1,p=a.map(g=>{let k=et("bench"),$=g.options.length?s("select",{class:"ts-\
box",id:k,"aria-describedby":`${k}-read`},s("option",{value:""},"choose"),...ct(g.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:k,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${k}-hint ${k}-read`}),
N=s("span",{class:"ts-hint",id:`${k}-hint`},g.hint),O=s("p",{class:"ts-read",id:`${k}-read`}),x=g.text,S=()=>{$.value.trim()!==
x.trim()&&(x=$.value,e({type:"bench",name:g.name,value:$.value}))};return $.addEventListener(g.options.length?"change":"\
blur",S),$.addEventListener("keydown",L=>{L.key==="Enter"&&(L.preventDefault(),S())}),{name:g.name,flush:S,input:$,element:s(
"div",{class:"ts-bench-row"},s("label",{for:k},g.prompt),s("div",{class:"ts-line-of"},$,N),O),show(L){if(!L)return;(document.
activeElement!==$||$.value===x)&&($.value=L.text,x=L.text),$.setAttribute("aria-invalid",String(!!L.error)),O.classList.
toggle("ts-error",!!L.error);let b=L.error?[Ot("▲")," "]:[],f=L.read&&!L.options.length&&`read as ${L.read}`,m=L.error||
[f,L.origin].filter(Boolean).join(", ");O.replaceChildren(...b,m)}}}),h=g=>{for(let k of p)k.flush();u=!0,e({type:"bench",
name:"in-use",value:g})};o.append(s("summary",{},l),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They take the place of the drawn figures in this task, all of them or none. Your answers are marked o\
n them by the same rules."),s("div",{class:"ts-bench-rows"},...p.map(g=>g.element)),i,s("div",{class:"ts-tools"},c,d));function w(){
let g=r(),k=new Map(g.rows?.map(x=>[x.name,x]));for(let x of p)x.show(k.get(x.name));l.textContent=g.used?"✓ This task s\
tands on figures from the bench":"Use readings from the bench",d.hidden=!g.wanted,c.hidden=g.used&&!g.stale;let $=g.wanted&&
!g.used?"▲ ":g.used?"● ":"○ ",N=g.used?"in use":g.wanted?`not used; the drawn figures stand. ${g.refused}`:"not us\
ed; the drawn figures stand",O=g.stale?` The tables and choices of this task are still the ones from before. ${g.used?"P\
ress the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${$}${N}${O}`,g.wanted&&
!g.used&&(o.open=!0)}return{element:o,show:w,hear(g){g.type!=="bench-saved"||g.name!=="in-use"||!u||(u=!1,r().stale&&n())},
lost(){for(let g of[c,d,...p.map(k=>k.input)])g.disabled=!0}}}var Tn=5e3,Nn=2e3,In={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},xe="kept in this browser until it can be\
 saved";function Dn(t,e,n,r){let o=Pt(t),a=jt(t),l=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),c=0,d=null,u={},p=()=>{clearTimeout(d??void 0),d=null},h=x=>{n.put(t.name,x,u.revision??0),w(x)},w=x=>{c+=
1,$("wait",r()?xe:"saving"),p(),d=window.setTimeout(()=>$("wait",xe),Tn),e({type:"save",name:t.name,value:x,turn:c})},g=o.
make(t,a,h,(x,S)=>{x?(n.put(t.name,S,u.revision??0),$("wait","not saved yet: press Enter or leave the box")):d===null&&(n.
drop(t.name),N(u))}),k=Ht(t,a,a.status);o.status==="above"?k.append(i,g.element,l):k.append(g.element,l,i);function $(x,S){
i.className=`ts-status ts-status-${x}`,i.dataset.text!==S&&(i.dataset.text=S,i.replaceChildren(Ot(In[x]),` ${S}`))}function N(x,S=!1){
if(u=x??{},g.show(u),l.replaceChildren(u.read?`read as ${u.read}`:""),!S)if(u.error){let{error:L,saved:b="",note:f}=u;$(
"unread",`Look again: ${L} Kept as typed, ${ke(b)}${f?`; ${f}`:""}.`)}else u.saved&&!u.blank?$("saved",`saved ${ke(u.saved)}${u.
note?`; ${u.note}`:""}`):$("none",o.blank??"not answered yet")}let O=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:k,show(x){d===null&&N(x,O())},saved(x){x.turn===c&&(g.pending?.()||n.drop(t.name),p(),N(x.state))},refused(x){
x.turn===c&&(p(),g.refused(),$("bad",`not saved: ${x.reason}`))},off(){clearTimeout(d??void 0),(d!==null||g.pending?.())&&
$("wait",xe)},catchUp(){let x=n.get(t.name);x&&(Ps(x,u)?(g.show({...u,value:x.value,error:""}),w(x.value)):n.drop(t.name))},
flush:()=>g.flush?.(),summary:()=>({answered:!!u.saved&&!u.blank&&!u.error&&!u.short,unread:!!u.error,trouble:O(),waiting:d!==
null})}}function _s({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=Bs(window.localStorage,r),a=!1,l=()=>a||p.isLost(),
i=n.map(S=>Dn(S,w,o,l)),c=new Map(i.map(S=>[S.name,S])),d=s("p",{class:"ts-who"}),u=s("p",{class:"ts-total"}),p=W({model:t,
el:e},{kind:"form",lost(){for(let S of i)S.off();h.lost(),g()},line(S){a=S;for(let L of i)S?L.off():L.catchUp();g()}}),h=Hs(
t,p.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(s("div",{class:"ts-top"},d,u),p.
alert,h.element,...i.map(S=>S.element));function w(S){p.send(S),g()}function g(){let S=i.map(C=>C.summary()),L=S.filter(
C=>C.answered).length,b=S.filter(C=>C.trouble).length,f=S.some(C=>C.waiting),m=S.filter(C=>C.unread).length,y=b?`${b} no\
t saved`:f?l()?"the rest kept in this browser":"saving":L&&!m?"all saved":"",v=[`${L} of ${i.length} answered`,m?`${m} c\
annot be read`:"",y];u.textContent=v.filter(Boolean).join(", ")}function k(){d.textContent=t.get("header");let S=t.get("\
states");for(let L of i)L.show(S[L.name]);g()}let $=0,N=()=>{if(document.visibilityState==="hidden")for(let S of i)S.flush();
document.visibilityState!=="visible"||Date.now()-$<Nn||($=Date.now(),p.send({type:"look"}))},O=r?new BroadcastChannel(`t\
woshaft-saved:${r}`):null;O?.addEventListener("message",({data:S})=>{S===t.get("task_id")&&p.send({type:"look"})}),document.
addEventListener("visibilitychange",N),e.addEventListener("focusin",S=>{S.relatedTarget instanceof Node&&e.contains(S.relatedTarget)||
N()}),p.follow("change:states change:header",k),p.follow("msg:custom",S=>{S.type==="saved"&&(c.get(S.name)?.saved(S),O?.
postMessage(t.get("task_id"))),S.type==="refused"&&c.get(S.name)?.refused(S),g()}),p.follow("msg:custom",h.hear),p.follow(
"change:bench",h.show),k();for(let S of i)S.catchUp();g(),h.show(),p.alert.textContent=t.get("notice");let x=js(e,`${r}/${t.
get("task_id")}`);return()=>{x(),O?.close(),p.close(),document.removeEventListener("visibilitychange",N)}}function le(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:l},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:l,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var Bn={right:"●",other:"◆",unread:"▲"};function Pn(t){let e=jt(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),r=null,o=Pt(t).make(t,e,l=>{r=l,o.show({value:r})},(l,i)=>{l&&(r=i)}),a=Ht(t,e,e.status);return a.append(o.element,
n),{name:t.name,element:a,value(){return o.flush?.(),r},show(l,i){l!==void 0&&(r=l,o.show({value:r,saved:"given"})),n.className=
i?`ts-told ts-told-${i.how}`:"ts-told",n.replaceChildren(...i?It([Ot(Bn[i.how]),s("b",{},i.said),` ${i.why}`]):[])},still(l){
o.setDisabled(l),a.classList.toggle("ts-given",l)}}}function Ks({model:t,el:e}){let n=W({model:t,el:e},{kind:"form"});e.
classList.add("ts-question");let r=s("p",{class:"ts-lead"}),o=s("dl",{class:"ts-facts"}),a=s("div",{}),l=q(t.get("give"),
()=>{let w=Object.fromEntries(d.map(g=>[g.name,g.value()]));n.send({type:"give",values:w})});l.classList.add("ts-first");
let i=q("",()=>n.send({type:"fresh"})),c=t.get("all")?q(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teach\
er"}):null;n.show(n.alert,r,o,a,s("p",{class:"ts-acts"},l,i,c));let d=[],u=()=>{let w=t.get("values"),g=t.get("told");for(let O of d)
O.show(w[O.name],g[O.name]),O.still(g[O.name]!==void 0&&g[O.name].how!=="unread");let k=d.some(({name:O})=>!g[O]||g[O].how===
"unread"),$=document.activeElement===l;if(l.hidden=!k,i.textContent=t.get("fresh"),i.hidden=k||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!$||k)return;let N=Q(e,".ts-told")[0];N.tabIndex=-1,N.focus({preventScroll:!0})},p=()=>{d=t.get("fields").
map(Pn),a.replaceChildren(...d.map(({element:w})=>w)),r.textContent=t.get("lead"),r.hidden=!r.textContent,o.replaceChildren(
...St(t.get("facts"))),o.hidden=!o.childElementCount,u()};n.follow("change:fields",p),n.follow("change:told change:value\
s change:notice change:fresh",u),p();let h=t.get("place");if(h){let w=le(sessionStorage,localStorage,h).get();t.send({type:"\
who",id:w?.id??"",ticket:w?.ticket??""})}return()=>n.close()}var Rn={"to get":"○",open:"◐","handed in":"●","changed since":"◑",feedback:"✓"},jn={"to get":"To get",open:"Op\
en","handed in":"Handed in","changed since":"Changed after handing in",feedback:"Marked"};function Fs(t,e){let n=document.
getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||"/"}catch{}return`${r}${t}/${e.
split("/").map(encodeURIComponent).join("/")}`}var ce=(t,e,n)=>s("a",{href:Fs("lab/tree",t),target:"_blank","data-twosha\
ft-open":t,"data-key":n,class:"ts-link"},e);function qs(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:r,
unread:o})=>s("li",{},`${e}: `,n===r?"nothing answered":n?`${n} of ${r} missing`:"",...o.map(([a,l])=>s("span",{},s("b",
{},"cannot be read: "),`“${a}” ${l}`)))))}function Us({model:t,el:e}){let n="",r=le(sessionStorage,localStorage,t.get(
"place")),o=W({model:t,el:e},{kind:"start",lost:()=>{}}),a=s("div",{}),l=s("p",{class:"ts-said",role:"status"});o.show(o.
alert,l,a);let i=(M,A={})=>{a.getAttribute("aria-busy")==="true"||o.isLost()||(A.quietly||(a.setAttribute("aria-busy","t\
rue"),l.textContent="One moment.",o.alert.textContent=""),t.send({type:M,...A}))},c=(M,A,I,T)=>s("button",{type:"button",
class:T?"ts-button ts-first":"ts-button","data-key":A,onclick:I},M);function d(){let M=et("who"),A=et("word"),I=s("selec\
t",{id:M,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.get("people").map(([
j,z])=>s("option",{value:j,selected:j===n},z)));I.addEventListener("change",()=>{n=I.value});let T=s("input",{id:A,type:"\
text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data-key":"word"});return s(
"form",{class:"ts-sign-in",onsubmit:j=>{j.preventDefault(),i("sign-in",{name:I.value,word:T.value})}},s("h2",{},"Who is \
working?"),s("div",{class:"ts-pair"},s("label",{for:M},"Your name"),I),s("div",{class:"ts-pair"},s("label",{for:A},"Sign\
-in word from your slip"),T),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},"Sign in"),s("p",
{class:"ts-hint"},t.get("kept")))}function u(M,A){let I=st=>`${st}:${M.name}`,T=s("div",{class:"ts-doing"});for(let st of M.
feedback.slice(0,1))T.append(s("a",{href:Fs("files",st),target:"_blank",class:"ts-link","data-key":I("feedback")},"Read \
feedback"));for(let st of M.notebooks){let H=M.notebooks.length===1?"Open":`Open ${st.split("/").pop()}`;T.append(ce(st,
H,I(`open ${st}`)))}M.can_get&&T.append(c(M.notebooks.length?"Get again":"Get",I("get"),()=>i("get",{name:M.name}),!M.notebooks.
length)),M.can_hand_in&&T.append(c(M.receipt?"Hand in again":"Hand in",I("hand in"),()=>i("hand-in",{name:M.name})));for(let st of T.
children)st.setAttribute("aria-label",`${st.textContent}: ${M.title}`);let j=t.get("asking")===M.name,z=M.receipt||M.unread>
0,G=s("tr",{},s("th",{scope:"row"},M.title),s("td",{},M.due||"no date",M.overdue?s("span",{class:"ts-small-line"},"date \
passed"):null),s("td",{},s("span",{class:"ts-shape","aria-hidden":"true"},Rn[M.state]||""),s("b",{},jn[M.state]||M.state),
s("span",{class:"ts-small-line"},M.detail),A?s("span",{class:"ts-small-line"},`Mark: ${A}`):null),s("td",{},T));if(j)return[
G,s("tr",{},s("td",{colspan:4},h(M)))];if(!z||!M.gaps.length)return[G];let vt=s("td",{colspan:4},s("b",{},p(M)),qs(M.gaps));
return[G,s("tr",{},vt)]}let p=({left:M,unread:A})=>It([M?`${M} ${M===1?"answer is":"answers are"} missing`:null,A?`${A} \
cannot be read`:null]).join(", ");function h(M){let A=et("question"),I=s("div",{class:"ts-doing"});for(let T of M.notebooks)
I.append(ce(T,"Go on with it",`go on:${M.name}`));return I.append(c("Hand in as it is",`hand in anyway:${M.name}`,()=>i(
"hand-in",{name:M.name,anyway:!0}))),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":A,"data-key":"\
question"},s("p",{id:A},s("b",{},`${M.title}: not handed in yet. ${p(M)}.`)," An answer that is missing or cannot be rea\
d earns nothing."),qs(M.gaps),I)}let w=new Set,g={met:"✓",enough:"◐","not yet":"○"};function k(M,A){let I=M.entries.
map(G=>A.find(vt=>vt.name===G)).filter(G=>G!==void 0),T=M.lesson?ce(M.lesson,`Lesson ${M.title}`,`lesson:${M.lesson}`):s(
"span",{class:"ts-small-line"},"no lesson here"),j=s("details",{open:w.has(M.module)},s("summary",{"data-key":`outcomes:${M.
module}`},`Outcomes: ${M.count||"none"}`),s("ul",{},...M.outcomes.map(([G,vt,st,H])=>s("li",{},s("span",{class:"ts-shape",
"aria-hidden":"true"},g[G]||""),s("b",{},`${G}${st&&G==="enough"?`, ${st}`:""}: `),vt,st&&G==="not yet"?`. Still missing\
: ${st}`:"",H?` (${H})`:""))));j.addEventListener("toggle",()=>{j.open?w.add(M.module):w.delete(M.module)});let z=I.flatMap(
G=>u(G,M.marks[G.name]));return s("tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},M.title,s("s\
pan",{class:"ts-assigned"},I.length?"assigned":"not assigned"))),...z,s("tr",{},s("td",{colspan:4},T,s("p",{class:"ts-ne\
xt"},s("b",{},"Next: "),M.next),j)))}function $(){let M=t.get("me"),A=t.get("entries"),I=s("table",{class:"ts-table"},s(
"thead",{},s("tr",{},...["Assignment","Due","State","What you can do"].map(T=>s("th",{scope:"col"},T)))),...t.get("modul\
es").map(T=>k(T,A)));return s("section",{},s("div",{class:"ts-me"},s("h2",{},`Working as ${M.name} (${M.id})`),M.ticket?
c("Not you? Sign out","sign-out",()=>{i("sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),
A.length?null:s("p",{},"Nothing is assigned yet."),I,c("Look again","look",()=>i("look")))}function N(){let M=!!t.get("m\
e").id,A=t.get("modules").map(j=>j.lesson),T=t.get("lessons").filter(([j])=>!M||!A.includes(j));return T.length?s("secti\
on",{},s("h2",{},M?"To look things up":"Lessons"),s("ul",{class:"ts-lessons"},...T.map(([j,z])=>s("li",{},ce(j,z,`lesson\
:${j}`))))):null}let O=!1,x=t.get("me").id?null:r.get(),S=x!==null;function L(){let M=t.get("me");M.id?r.keep(M):(O||x&&
!S)&&r.drop(),O=!!M.id}let b=0,f="",m=()=>Q(a,"[data-key]"),y=()=>a.querySelector("input[data-key=word]");function v(){let A=m().
find(U=>U===document.activeElement)?.dataset.key;a.removeAttribute("aria-busy");let I=!!t.get("me").id;l.textContent=t.get(
"said"),o.alert.textContent=t.get("trouble");let T=y()?.value,j=S?s("p",{},"One moment."):d();a.replaceChildren(...It([I?
$():j,N()]));let z=y();z&&T&&(z.value=T);let G=f;if(f=t.get("asking"),f&&f!==G&&m().find(U=>U.dataset.key==="question")?.
focus(),!A||f&&f!==G)return;let vt=m().find(U=>U.dataset.key===A),st=A.split(":")[1],H=A.startsWith("hand in anyway")?`h\
and in:${st}`:`:${st}`,F=m().find(U=>st&&U.dataset.key?.endsWith(H));(vt??F??Q(a,"a, button, select")[0])?.focus()}let C=()=>{
clearTimeout(b),b=setTimeout(()=>{S=!1,L(),v()},0)};t.on("change",C),L(),v(),x&&t.send({type:"resume",name:x.id,ticket:x.
ticket});let E=()=>{!document.hidden&&t.get("me").id&&i("look",{quietly:!0})},_=new IntersectionObserver(([M])=>{M.isIntersecting&&
E()});return _.observe(e),document.addEventListener("visibilitychange",E),()=>{clearTimeout(b),t.off("change",C),_.disconnect(),
document.removeEventListener("visibilitychange",E),o.close()}}var Hn={bench:Qe,build:ns,cord:as,depth:is,face:ls,fault_board:ds,form:_s,gate:us,gears:ps,hazards:fs,lifting:hs,micrometer:gs,
own_checks:ms,press:ws,question:Ks,rules:bs,runout:vs,sealant:Cs,seat:As,shims:Ms,start:Us,thread:Es,unit_section:Os,whole_build:Is,
wrench:Ds};export{Hn as screens};
