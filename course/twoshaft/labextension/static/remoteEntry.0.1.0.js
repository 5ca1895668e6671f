"use strict";(()=>{var z="start-here.ipynb",Gt="desk.ipynb",Q="twoshaft-mine";function M(t){let e=t.split("/"),n=e.pop()??"",o=e.at(-1)??"",
s=new Map([[z,"start"],[Gt,"desk"]]),r=s.get(n)??(o==="lessons"?"lesson":"exercise"),i=s.has(n)?0:["lessons","exercises"].
includes(o)?1:2,c=e.slice(0,Math.max(0,e.length-i)).join("/");return{kind:r,file:n,base:c&&`${c}/`}}var P=t=>/^(\d\d)-/.
exec(t)?.[1]??"";function V(t,e,n){let{kind:o,file:s,base:r}=M(t);if(o==="start"||o==="desk")return[];let i=[];e.start&&
i.push(["Start page",r+z]);let c=P(s),a=c&&` ${c}`,u=n[s]??(e.practice.includes(s)?`exercises/${s}`:void 0);return o==="\
lesson"?(i.push([c?`Lesson ${c}`:"Glossary",""]),u&&i.push([`Exercise${a}`,r+u])):(e.lessons.includes(s)&&i.push([`Lesso\
n${a}`,`${r}lessons/${s}`]),i.push([`Exercise${a}`,""])),e.lessons.includes("glossary.ipynb")&&s!=="glossary.ipynb"&&i.push(
["Glossary",`${r}lessons/glossary.ipynb`]),i}var Z=t=>t.toLowerCase().replace(/[^\p{L}\p{N}]+/gu,"-").replace(/^-|-$/g,"");
function tt(t){let e=[],n=!1;t.forEach(({part:r,begins:i},c)=>{let a=r==="text"||r==="given";(!e.length||i||r==="own"||n&&
a)&&(e.push([]),n=!1),e[e.length-1].push(c),(r==="form"||r==="own")&&(n=!0)});let o=[],s=0;for(let r of e){let i=r.map(u=>t[u].
part),c=i.filter(u=>u==="form").length===1&&i.some(u=>u==="text"||u==="given");c&&(s+=1);let a=s;for(let u of r){let{part:b}=t[u];
c&&b!=="hidden"?o[u]={row:a,side:b==="form"?"right":"left"}:(s+=1,o[u]={row:s,side:"both"})}}return o}function et(t){let e=t.
filter(r=>r!==void 0);if(!e.length)return["","opening"];let[n,o,s]=["answered","asked","unread"].map(r=>e.reduce((i,c)=>i+
c[r],0));return s?["▲",`${s} cannot be read, ${n} of ${o} answered`]:n===o?["●","done"]:n?["◐",`${n} of ${o} answe\
red`]:["○","not begun"]}function k(t,e={},...n){let o=document.createElement(t);for(let[s,r]of Object.entries(e))typeof r=="function"?o.addEventListener(
s.slice(2),r):r===!0?o.setAttribute(s,""):r!==!1&&r!=null&&o.setAttribute(s,String(r));return o.append(...qt(n)),o}function ot(t){return k("span",{class:"ts-shape","aria-hidden":"true"},t)}function qt(t){return t.filter(e=>e!=null&&e!==
!1)}function H(t,e){return[...t.querySelectorAll(e)]}function nt(t,e){let{target:n}=t;return n instanceof Element?n.closest(
e):null}var Kt=120;async function W(t,e){try{let{content:n}=await t.get(e,{content:!0});return n.map(({name:o})=>o)}catch{return[]}}
var st=new Map;function Xt(t,e){let n=e.replace(/\/$/,""),o=st.get(n)??W(t,n).then(async s=>({start:s.includes("start-he\
re.ipynb"),lessons:s.includes("lessons")?await W(t,`${e}lessons`):[],practice:s.includes("exercises")?await W(t,`${e}exe\
rcises`):[]}));return st.set(n,o),o}function Yt(){try{return JSON.parse(localStorage.getItem(Q)??"{}")}catch{return{}}}var Jt=(t,e)=>`${e}\
/${t.split("/").map(encodeURIComponent).join("/")}`;function rt(t,e){return k("ul",{class:"ts-ways"},...t.map(([n,o])=>k(
"li",{},o?k("a",{href:Jt(o,e),"data-twoshaft-open":o},n):k("b",{"aria-current":"page"},n))))}function zt(t){let{node:e,widgets:n}=t.
content,o=e.querySelector(".jp-WindowedPanel-outer")??e,s=k("a",{href:"#",class:"ts-next-task"}),r=new Map,i=f=>{let d=f.
node.querySelector("h2");d&&(d.tabIndex=-1,d.focus({preventScroll:!0})),f.node.scrollIntoView({block:"start"})},c=(f,d,m)=>({
cell:f,number:d,title:m,forms:new Set,link:k("a",{href:"#",onclick:S=>{S.preventDefault(),i(f)}})}),a=[];for(let f of n){
let{type:d,sharedModel:m}=f.model,[,S,h]=/^## (\d+)\. (.*)/m.exec(m.getSource())??[];d!=="code"&&S&&a.push(c(f,S,h))}let u=k(
"ol",{class:"ts-tasks","aria-label":"Tasks"},...a.map(({link:f})=>k("li",{},f))),b=k("div",{class:"ts-task-row"},u,s),p=({
forms:f})=>et([...f].map(d=>r.get(d))),g=()=>a.find(f=>p(f)[1]!=="done");s.addEventListener("click",f=>{f.preventDefault();
let d=g();d&&i(d.cell)});let l=()=>{let f=o.getBoundingClientRect().top+Kt,d=a.filter(({cell:y})=>y.node.getBoundingClientRect().
top<f),S=o.scrollTop+o.clientHeight>=o.scrollHeight-1&&d.length?a.at(-1):d.at(-1);for(let y of a){let[w,A]=p(y);y===S?y.
link.setAttribute("aria-current","step"):y.link.removeAttribute("aria-current");let L=`Task ${y.number}, ${y.title}: ${A}`;
y.link.title!==L&&(y.link.title=L,y.link.setAttribute("aria-label",L),y.link.replaceChildren(y.number,w?ot(w):""))}S&&b.
scrollWidth>b.clientWidth&&(b.scrollLeft=S.link.offsetLeft-b.clientWidth/2);let h=g(),x=h?`Next: task ${h.number}`:"All \
tasks are answered";s.textContent!==x&&(s.textContent=x)};e.addEventListener("twoshaft-progress",({target:f,detail:d})=>{
let m=f,S=a.filter(({cell:h})=>h.node.compareDocumentPosition(m)&Node.DOCUMENT_POSITION_FOLLOWING);r.set(d.task,d),S.at(
-1)?.forms.add(d.task),l()});let E=0;return o.addEventListener("scroll",()=>{cancelAnimationFrame(E),E=requestAnimationFrame(
l)},{passive:!0}),l(),a.length?b:null}async function ct(t,e,{Widget:n,contents:o,tree:s}){let{kind:r,base:i,file:c}=M(e.
path);if(r==="start"||r==="desk")return;let a=r==="exercise"?zt(t):null,u=k("nav",{class:"twoshaft twoshaft-bar","aria-l\
abel":"Course"}),b=new n({node:u});t.layout.insertWidget(0,b),t.content.node.before(u);let p=k("nav",{class:"twoshaft tw\
oshaft-ways","aria-label":"Ways on"});t.content.node.querySelector(".jp-WindowedPanel-outer")?.append(p);let g=async()=>{
let l=V(e.path,await Xt(o,i),Yt());u.replaceChildren(rt(l,s),...a?[a]:[]),p.replaceChildren(rt(l,s))};await g(),a&&Qt(t,
u,a),r==="lesson"&&(window.addEventListener("storage",g),t.disposed.connect(()=>window.removeEventListener("storage",g)),
(P(c)||c==="glossary.ipynb")&&Vt(t,()=>Zt(t)))}function Qt(t,e,n){let o=new ResizeObserver(()=>{let s=e.firstElementChild,
r=n.offsetTop>=s.offsetTop+s.offsetHeight;r!==e.classList.contains("ts-two-lines")&&(e.classList.toggle("ts-two-lines",r),
requestAnimationFrame(()=>t.fit()))});o.observe(e),o.observe(n),t.disposed.connect(()=>o.disconnect())}function Vt(t,e){
let n=t.content.widgets.filter(({model:o})=>o.type!=="code");Promise.all(n.map(o=>o.ready)).then(()=>requestAnimationFrame(
()=>{t.isDisposed||e()}))}var it=decodeURIComponent(location.hash.slice(1));function Zt(t){if(it){for(let e of t.content.
node.querySelectorAll(".jp-RenderedMarkdown :is(h1, h2, h3)"))if(Z(e.textContent??"")===it){e.tabIndex=-1,e.focus({preventScroll:!0}),
e.scrollIntoView({block:"start"});return}}}function at(){let t=k("a",{href:"#",class:"twoshaft-skip",onclick:e=>{e.preventDefault(),
[...document.querySelectorAll(".twoshaft-bar")].find(s=>s.checkVisibility())?.querySelector("a")?.focus()}},"To the star\
t page, lesson and tasks");document.body.prepend(k("nav",{"aria-label":"First"},t))}var te=t=>t/2**32|0,ee=t=>t>>>0;function ft(t,e,n,o){let s=te(n),r=ee(n);t.setUint32(e,o?r:s,o),t.setUint32(e+4,o?s:r,o)}function lt(t){return t instanceof Uint8Array||ArrayBuffer.isView(t)&&t.constructor.name==="Uint8Array"&&"BYTES_PER_ELEM\
ENT"in t&&t.BYTES_PER_ELEMENT===1}var F=t=>t?`"${t}" `:"";function oe(t,e=""){if(typeof t!="number")throw new TypeError(
F(e)+"expected number, got "+typeof t);if(!Number.isSafeInteger(t)||t<0)throw new RangeError(F(e)+"expected integer >= 0\
, got "+t);return t}function D(t,e,n=""){if(lt(t)&&(e===void 0||t.length===e))return t;e!==void 0&&oe(e,"length");let o=lt(t),s=e!==void 0?`\
 of length ${e}`:"",r=o?`length=${t.length}`:`type=${typeof t}`,i=F(n)+"expected Uint8Array"+s+", got "+r;throw o?new RangeError(
i):new TypeError(i)}var ne=(t,e)=>{if(t===null||typeof t!="object"||Array.isArray(t))throw new TypeError((e==="object"?"":`"${e}" `)+"expect\
ed object, got type="+typeof t)},dt=(t,e)=>{ne(t,e);let n=Object.getPrototypeOf(t);if(n!==Object.prototype&&n!==null)throw new TypeError(
`"${e}" expected plain object`);if(Object.hasOwn(t,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};
function j(t,e=!0){if(t.destroyed)throw new Error("hash was destroyed");if(e&&t.finished)throw new Error("digest() was a\
lready called")}function ut(t,e){D(t,void 0,"output");let n=e.outputLen;if(!(t.length>=n))throw new RangeError('"output"\
 expected length >= '+n)}function R(...t){for(let e=0;e<t.length;e++)t[e].fill(0)}function U(t){return new DataView(t.buffer,t.byteOffset,t.byteLength)}
function C(t,e){return t<<32-e|t>>>e}var se=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",re=Array.from({length:256},(t,e)=>e.
toString(16).padStart(2,"0"));function ht(t){if(D(t),se)return t.toHex();let e="";for(let n=0;n<t.length;n++)e+=re[t[n]];
return e}function pt(t){if(typeof t!="string")throw new TypeError("string expected");let e=new TextEncoder().encode(t);try{return new Uint8Array(
e)}finally{R(e)}}function ie(t,e,n="opts"){return dt(t,"defaults"),e!==void 0&&dt(e,n),Object.assign(Object.create(null),t,e)}function xt(t,e={}){
if(typeof t!="function")throw new TypeError('"hashCons" expected function, got type='+typeof t);e=ie({},e,"info");let n=(s,r)=>t(
r).update(s).digest(),o=t(void 0);return n.outputLen=o.outputLen,n.blockLen=o.blockLen,n.canXOF=o.canXOF,n.create=s=>t(s),
Object.assign(n,e),Object.freeze(n)}var bt=t=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,t])});function gt(t,e,n){return t&e^~t&n}function wt(t,e,n){return t&e^t&n^e&n}var I=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,n,o,s){
this.blockLen=e,this.outputLen=n,this.padOffset=o,this.isLE=s,this.buffer=new Uint8Array(e),this.view=U(this.buffer)}update(e){
j(this),D(e);let{view:n,buffer:o,blockLen:s}=this,r=e.length,i=!1;for(let c=0;c<r;){let a=Math.min(s-this.pos,r-c);if(a===
s){let u=U(e);for(;s<=r-c;c+=s)this.process(u,c);i=!0;continue}o.set(c===0&&a===r?e:e.subarray(c,c+a),this.pos),this.pos+=
a,c+=a,this.pos===s&&(this.process(n,0),this.pos=0,i=!0)}return this.length+=e.length,i&&this.roundClean(),this}digestInto(e){
j(this),ut(e,this),this.finished=!0;let{buffer:n,view:o,blockLen:s,isLE:r}=this,{pos:i}=this;n[i++]=128,n.fill(0,i),this.
padOffset>s-i&&(this.process(o,0),n.fill(0)),ft(o,s-8,this.length*8,r),this.process(o,0),this.roundClean();let c=e===n?o:
U(e),a=this.outputLen,u=a/4,b=this.get();if(a%4||u>b.length)throw new Error("invalid outputLen");for(let p=0;p<u;p++)c.setUint32(
4*p,b[p],r)}digest(){let{buffer:e,outputLen:n}=this;this.digestInto(e);let o=e.slice(0,n);return this.destroy(),o}_cloneIntoMeta(e){
let{buffer:n,length:o,finished:s,destroyed:r,pos:i}=this;return e.destroyed=r,e.finished=s,e.length=o,e.pos=i,i&&e.buffer.
set(n),e}clone(){return this._cloneInto()}},mt=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,
2600822924,528734635,1541459225]);var ce=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,
310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,
1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,
773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,
3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,
1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),B=new Uint32Array(64),G=class extends I{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,n){
super(64,e,8,!1),this.A=n[0]|0,this.B=n[1]|0,this.C=n[2]|0,this.D=n[3]|0,this.E=n[4]|0,this.F=n[5]|0,this.G=n[6]|0,this.
H=n[7]|0}get(){let{A:e,B:n,C:o,D:s,E:r,F:i,G:c,H:a}=this;return[e,n,o,s,r,i,c,a]}set(e,n,o,s,r,i,c,a){this.A=e|0,this.B=
n|0,this.C=o|0,this.D=s|0,this.E=r|0,this.F=i|0,this.G=c|0,this.H=a|0}_cloneInto(e){return(e||=new this.constructor).set(
...this.get()),this._cloneIntoMeta(e)}process(e,n){for(let p=0;p<16;p++,n+=4)B[p]=e.getUint32(n,!1);for(let p=16;p<64;p++){
let g=B[p-15],l=B[p-2],E=C(g,7)^C(g,18)^g>>>3,f=C(l,17)^C(l,19)^l>>>10;B[p]=f+B[p-7]+E+B[p-16]|0}let{A:o,B:s,C:r,D:i,E:c,
F:a,G:u,H:b}=this;for(let p=0;p<64;p++){let g=C(c,6)^C(c,11)^C(c,25),l=b+g+gt(c,a,u)+ce[p]+B[p]|0,f=(C(o,2)^C(o,13)^C(o,
22))+wt(o,s,r)|0;b=u,u=a,a=c,c=i+l|0,i=r,r=s,s=o,o=l+f|0}o=o+this.A|0,s=s+this.B|0,r=r+this.C|0,i=i+this.D|0,c=c+this.E|
0,a=a+this.F|0,u=u+this.G|0,b=b+this.H|0,this.set(o,s,r,i,c,a,u,b)}roundClean(){R(B)}destroy(){this.destroyed=!0,this.set(
0,0,0,0,0,0,0,0),R(this.buffer)}},q=class extends G{constructor(){super(32,mt)}};var yt=xt(()=>new q,bt(1));var Et="setup",St=[Et,"form","rig"],ae=[...St,"mark"];function fe(t){return ht(yt(pt(t.replace(/\r\n?/g,`
`).replace(/\n+$/,""))))}var v=t=>t.getMetadata("tags")||[],kt=t=>v(t).includes(Et),O=t=>v(t).some(e=>ae.includes(e));function $(t,e){
return t.content.widgets.filter(({model:n})=>n.type==="code"&&v(n).some(o=>St.includes(o))&&e.has(fe(n.sharedModel.getSource())))}
function K({model:{outputs:t}}){for(let e=0;e<t.length;e+=1)if(t.get(e).type==="error")return!0;return!1}function N(t){return JSON.
stringify(t.content.widgets.map(({model:e})=>[e.sharedModel.getSource(),O(e)?null:e.executionCount??null]))}function X(t){let e=t.session?.kernel;return e?.connectionStatus==="connected"&&!["dead","terminating"].includes(e.status)}
var At=new WeakSet;function Lt(t,e,n){if(At.has(t)||t.isDisposed)return;At.add(t);let o=!1,s=async()=>{if(!o){for(o=!0;!t.
isDisposed&&(await new Promise(i=>setTimeout(i,1e3)),!(t.isDisposed||X(e)));)try{await n.refreshRunning();let i=e.session?.
kernel;if(X(e))break;!i||["dead","terminating"].includes(i.status)?await e.startKernel():i.connectionStatus==="disconnec\
ted"&&await i.reconnect()}catch{}o=!1}},r=()=>{!t.isDisposed&&!X(e)&&!e.isRestarting&&s()};e.connectionStatusChanged.connect(
r),e.statusChanged.connect(r),e.sessionChanged.connect(r),e.kernelChanged.connect(r),r()}var Y=32,le=80,de=16,Ct=6;function Tt(t,e,n){let o=0,s=0,r=0,i=e.scrollTop,c=new AbortController,a=t[t.length-1],u=k("bu\
tton",{type:"button",class:"twoshaft twoshaft-more",onclick:()=>b(o<s?o+r-le:0)});function b(h){let x=Math.round(Math.min(
s,Math.max(0,h)));return x===o?!1:(o=x,n(),!0)}let p=()=>t[0].getBoundingClientRect().top+o;function g(h){let{top:x,bottom:y}=h.
getBoundingClientRect();return{top:x-Ct,bottom:y+Ct}}function l(h){let{top:x,bottom:y}=g(h),w=p(),A=w+r-Y;y>A?b(o+Math.min(
y-A,x-w)):x<w&&b(o-(w-x))}function E(h){if(h.ctrlKey||h.shiftKey||!h.deltaY||h.deltaY>0&&p()>e.getBoundingClientRect().top+
1)return;let x=h.deltaMode===WheelEvent.DOM_DELTA_LINE?de:1;b(o+h.deltaY*x)&&h.preventDefault()}function f(h){let{target:x,
relatedTarget:y}=h;if(!(x instanceof Element)||x===u||t.some(L=>L===x)&&!x.matches(":focus-visible"))return;y instanceof
Node&&t.some(L=>L.contains(y))&&(e.scrollTop=i),l(x);let A=()=>{document.activeElement!==x||!u.isConnected||(l(x),d(x))};
requestAnimationFrame(()=>{A(),requestAnimationFrame(A)})}function d(h){let{top:x,bottom:y}=g(h),w=e.getBoundingClientRect();
x<w.top?e.scrollTop-=w.top-x:y>w.bottom&&(e.scrollTop+=Math.min(y-w.bottom,x-w.top))}let{signal:m}=c;for(let h of t)h.addEventListener(
"wheel",E,{passive:!1,signal:m}),h.addEventListener("focusin",f,{signal:m});let S=()=>{i=e.scrollTop};return e.addEventListener(
"scroll",S,{passive:!0,signal:m}),a.append(u),{moved:()=>o,fit(h,x){r=x,s=Math.round(h-x+Y),o=Math.min(o,s)},cut(h,x,y){
let w=x+y-r;if(h!==a){h.style.clipPath=`inset(${Math.max(0,-x)}px 0 ${Math.max(0,w)}px)`;return}let A=x<0?-x:-s-r;h.style.
clipPath=`inset(${A}px 0 ${w}px)`;let L=o>=s;u.textContent=L?"▲ Back to the beginning":"▼ More of what is given",u.style.
top=`${r-Y-x}px`},remove(){c.abort(),u.remove();for(let{style:h}of t)h.removeProperty("clip-path")}}}var ue=1e3,he=1800,pe=":is(.tsh-picture, .ts-scroll, .ts-unit, .tsi-micrometer, .tsi-vernier, .tsg-drum)";function xe(t){
let e=v(t);return t.type!=="code"?e.includes("if-missing")?"hidden":"text":e.includes("form")||e.includes("predict")?"fo\
rm":e.includes("rig")?"given":O(t)?"hidden":"own"}var Bt=(t,e)=>({nodes:t,beside:e,heights:[],whole:0,high:0,from:0,room:0,
stage:"",box:null}),be=t=>t.type!=="code"&&/^#{1,2} /m.test(t.sharedModel.getSource());function vt(t){let e=t.content.node,
n=e.querySelector(".jp-WindowedPanel-outer")??e,o=[],s=()=>{let g=n.clientHeight;for(let{left:l,right:E}of o){let f=l.nodes.
some(w=>w.querySelector(pe)),[d]=E.nodes,S=!l.nodes.some(w=>w.querySelector(".twoshaft-rig"))&&d.querySelector(".ts-pict\
ures")!==null;for(let w of[...l.nodes,d])w.classList.toggle("twoshaft-broad",f),w.classList.toggle("twoshaft-narrow",!f&&
S);for(let w of[l,E])w.heights=w.nodes.map(A=>A.getBoundingClientRect().height),w.whole=w.heights.reduce((A,L)=>A+L,0),w.
high=w.whole,w.from=Math.min(0,g-w.whole),w.stage="";let h=d.querySelector(".ts-question")!==null;l.whole>g&&E.whole>g&&
!h?(l.high=g,l.from=0,l.box??=Tt(l.nodes,n,()=>{l.stage="",r()})):(l.box?.remove(),l.box=null),l.box?.fit(l.whole,g),l.room=
E.whole;let y=E.whole<=g&&!h;E.room=y?l.whole:0}r()},r=()=>{let g=n.getBoundingClientRect().top,l=o.flatMap(({left:f,right:d})=>[
f,d]),E=l.map(f=>{let d=Math.max(0,f.room-f.high),m=f.from-(f.beside.getBoundingClientRect().top-g);return{stage:m<=0||!d?
"before":m<d?"within":`past ${d}`,spare:d}});l.forEach((f,d)=>{let{stage:m,spare:S}=E[d];if(m===f.stage)return;f.stage=m;
let h=-(f.box?.moved()??0);f.nodes.forEach((x,y)=>{let w=h+(m.startsWith("past")?S:0);x.style.position=m==="within"?"sti\
cky":"relative",x.style.top=m==="within"?`${f.from+h}px`:"auto",x.style.marginTop=`${w}px`,x.style.marginBottom=`${f.high-
h-f.heights[y]}px`,f.box?.cut(x,h,f.heights[y]),h+=f.heights[y]})})},i=()=>{for(let g of o.flatMap(({left:l,right:E})=>[
l,E])){g.stage="",g.box?.remove(),g.box=null;for(let{style:l}of g.nodes)for(let E of["position","top","margin-top","marg\
in-bottom"])l.removeProperty(E)}},c=()=>e.classList.contains("twoshaft-wide"),a=()=>{let g=document.documentElement.getAttribute(
"data-ts-print")==="large";e.classList.toggle("twoshaft-wide",e.clientWidth>=(g?he:ue)),c()?s():i()};n.addEventListener(
"scroll",()=>c()&&r(),{passive:!0});let u=0,b=new ResizeObserver(()=>{cancelAnimationFrame(u),u=requestAnimationFrame(a)}),
p=()=>{let{widgets:g}=t.content,l=tt(g.map(({model:f})=>({part:xe(f),begins:be(f)})));i(),b.disconnect(),b.observe(e);let E=new Map;
o=[],g.forEach(({node:f},d)=>{let{row:m,side:S}=l[d];if(f.style.gridRow=String(m),f.dataset.twoshaftSide=S,S==="both")return;
b.observe(f);let h=E.get(m)??[];E.set(m,h),S==="left"?h.push(f):o.push({left:Bt(h,f),right:Bt([f],h[0]??f)})}),a()};p(),
t.content.model.cells.changed.connect(()=>setTimeout(()=>!t.isDisposed&&p(),0)),t.disposed.connect(()=>b.disconnect())}var ge=".twoshaft svg[viewBox]",we=1.7,me=12.2,Mt=new WeakMap;function Ht(t){let e=H(t,ge).filter(o=>o.querySelector("te\
xt")),n=e.map(o=>{let s=o.getScreenCTM();return s?Math.hypot(s.a,s.b):1});e.forEach((o,s)=>{let r=Number(o.dataset.grow)||
we,{letters:i}=o.dataset,c=i?Number(i)/me:1,a=Math.min(r,Math.max(1,1/(c*(n[s]||1)))).toFixed(3);o.style.getPropertyValue(
"--ts-grown")!==a&&o.style.setProperty("--ts-grown",a)}),e.forEach((o,s)=>{let r=n[s]||1,i=Number(o.style.getPropertyValue(
"--ts-grown")),c=H(o,"text").map(p=>({word:p,way:Mt.get(p)??0}));if(i===1&&c.every(({way:p})=>!p))return;let{left:a,right:u}=o.
getBoundingClientRect(),b=c.map(({word:p,way:g})=>{let l=p.getBoundingClientRect(),E=l.left-g*r,f=Math.max(0,E+l.width-u),
d=Math.max(0,a-E);if(!l.width||i===1)return 0;let S=l.width>u-a?(a+u-l.width)/2-E:d||-f;return Math.round(S/r)});c.forEach(
({word:p,way:g},l)=>{Math.abs(b[l]-g)<1||(Mt.set(p,b[l]),p.style.translate=b[l]?`${b[l]}px`:"")})})}var _=window.matchMedia("(max-width: 600px), (max-height: 400px)");function Ot(t){let e=()=>{for(let n of["left","right"])
t.isSideTabBarVisible?.(n)===_.matches&&t.toggleSideTabBarVisibility(n)};_.addEventListener("change",e),e()}function $t(t){
let e=()=>{t.toolbar.setHidden(_.matches),t.fit()};_.addEventListener("change",e),t.disposed.connect(()=>_.removeEventListener(
"change",e)),e()}var ye=":is(.twoshaft :is(.given-frame, .tsg-wide, .tsl-drawing), .jp-RenderedHTML figure)";function Ee(t){let e=t.scrollWidth>
t.clientWidth;if(e!==t.hasAttribute("tabindex")){if(!e){for(let n of["tabindex","role","aria-label"])t.removeAttribute(n);
return}t.tabIndex=0,t.setAttribute("role","group"),t.setAttribute("aria-label",t.querySelector("caption")?"Wide table":"\
Picture")}}var _t=t=>H(t,ye).forEach(Ee);function Dt(t,e){let n=t.content.node,o=0,s=()=>{clearTimeout(o),o=setTimeout(()=>e(n),300)},r=new MutationObserver(s);r.
observe(n,{childList:!0,subtree:!0});let i=new ResizeObserver(s);i.observe(n),t.disposed.connect(()=>{clearTimeout(o),r.
disconnect(),i.disconnect()})}var T="twoshaft-opener",Se="if-missing",Rt="twoshaft-opening",ke=["form","rig"],Ae=3,Pt=300;async function Wt(t){let[{PageConfig:e,
URLExt:n},{NotebookActions:o},{IConnectionLost:s},{Widget:r}]=await Promise.all([t("@jupyterlab/coreutils"),t("@jupyterl\
ab/notebook"),t("@jupyterlab/application"),t("@lumino/widgets")]),i=n.join(e.getBaseUrl(),"lab/tree"),c=Le(e,o,{Widget:r,
tree:i});if(e.getOption("twoshaftRole")!=="apprentice")return[c];let a={id:`${T}:line`,description:"Leaves it to the cou\
rse's screens to say that the server cannot be reached.",autoStart:!0,provides:s,activate:()=>async()=>{}};return[c,a]}function Le(t,e,n){
let o=`${t.getOption("fullLabextensionsUrl")}/${T}/static`;return{id:`${T}:plugin`,description:"Shows the forms and rigs\
 of a course notebook as soon as it is opened.",autoStart:!0,activate:s=>{Ce(o);let r=t.getOption("twoshaftRole")==="app\
rentice",i=t.getOption("twoshaftDesk");if(!r&&!i)return;document.head.append(k("style",{},`.twoshaft {
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
.twoshaft-notebook{--jp-cell-prompt-width: 52px}.twoshaft-notebook .twoshaft-if-missing,.twoshaft-notebook .twoshaft-qui\
et .jp-InputCollapser,.twoshaft-notebook .twoshaft-quiet .jp-OutputCollapser,.twoshaft-notebook .twoshaft-quiet .jp-Cell\
-inputWrapper:has(.jp-InputPlaceholder),.twoshaft-notebook .twoshaft-quiet .jp-OutputPrompt,.twoshaft-notebook .twoshaft\
-quiet .jp-OutputArea-promptOverlay,.twoshaft-notebook .jp-MarkdownCell .jp-InputPrompt,.twoshaft-notebook .jp-Notebook-\
footer{display:none}.twoshaft-notebook .twoshaft-quiet:not(:has(.jp-OutputArea-child)):has(.jp-InputPlaceholder){height:\
0;min-height:0;padding:0;overflow:hidden}.twoshaft-opening .twoshaft-shows.twoshaft-quiet:not(:has(.jp-OutputArea-child)\
){height:auto;min-height:48px}.twoshaft-opening .twoshaft-shows:not(:has(.jp-OutputArea-child)):before{content:"Opening:\
 this takes a few seconds.";padding-left:14px;color:var(--ts-ink);font:var(--ts-small) / 24px var(--ts-font)}.twoshaft-n\
otebook .twoshaft-quiet .jp-Cell-outputArea{padding-left:14px}.twoshaft-notebook .jp-RenderedMarkdown>:is(p,ul,ol,blockq\
uote,h1,h2,h3,h4){max-width:70ch}.twoshaft-notebook :is(.jp-MarkdownCell,.twoshaft-quiet).jp-Cell.jp-mod-active,.twoshaf\
t-notebook :is(.jp-MarkdownCell,.twoshaft-quiet).jp-Cell.jp-mod-selected{border-color:transparent;box-shadow:none;backgr\
ound:none}.twoshaft-notebook .jp-MarkdownCell .jp-RenderedMarkdown{border-color:transparent}.twoshaft-notebook :is(.jp-M\
arkdownCell,.twoshaft-quiet) .jp-Collapser{visibility:hidden}.twoshaft-skip{position:fixed;top:-64px;left:8px;z-index:10\
000;padding:8px 16px;border:3px solid var(--ts-accent);background:var(--ts-paper);color:var(--ts-accent);font:16px / 24p\
x var(--ts-font)}.twoshaft-skip:focus{top:8px}.twoshaft-notebook>.twoshaft-bar{display:flex;flex-wrap:wrap;align-items:c\
enter;gap:0 24px;min-height:34px;max-width:none;padding:0 14px;overflow:hidden;border-bottom:1px solid var(--ts-line);ba\
ckground:var(--ts-paper)}:is(.twoshaft-bar,.twoshaft-ways) :is(ul,ol){display:flex;gap:0 16px;margin:0;padding:0;list-st\
yle:none}:is(.twoshaft-bar,.twoshaft-ways) :is(a,b){display:inline-block;min-width:24px;padding:2px;font-family:var(--ts\
-font);font-size:var(--ts-small);line-height:24px;white-space:nowrap}:is(.twoshaft-bar,.twoshaft-ways) a{color:var(--ts-\
accent);text-decoration:underline}:is(.twoshaft-bar,.twoshaft-ways) a:focus-visible{outline:3px solid var(--ts-accent);o\
utline-offset:-3px}.twoshaft-bar :is(.ts-ways,.ts-task-row){max-width:100%;overflow-x:auto;scrollbar-width:none}.twoshaf\
t-bar .ts-task-row{position:relative;display:flex;align-items:center;gap:0 16px}.twoshaft-bar .ts-tasks{gap:0 4px}.twosh\
aft-bar .ts-tasks a{padding-inline:6px;color:var(--ts-ink);text-decoration:none;border-bottom:3px solid transparent}.two\
shaft-bar .ts-tasks .ts-shape{min-width:1em;padding-left:3px}.twoshaft-bar .ts-tasks a[aria-current]{border-bottom-color\
:currentcolor;font-weight:700}.twoshaft-bar .ts-task-row>*{flex:none}.twoshaft-bar .ts-next-task{order:-1}@media(max-hei\
ght:400px){.twoshaft-notebook>.twoshaft-bar{flex-wrap:nowrap;overflow-x:auto}.twoshaft-bar :is(.ts-ways,.ts-task-row){fl\
ex:none;max-width:none;overflow:visible}}@media(min-height:401px){.twoshaft-notebook>.twoshaft-bar.ts-two-lines{min-heig\
ht:66px}}.twoshaft-ways{margin:16px 14px 32px;padding:8px 0;border-top:1px solid var(--ts-line)}.twoshaft-ways ul{flex-w\
rap:wrap}.twoshaft-notebook .twoshaft-wide .jp-WindowedPanel-viewport{display:grid;grid-template-columns:repeat(12,minma\
x(0,1fr))}.twoshaft-wide .jp-Cell[data-twoshaft-side=both]{grid-column:1 / -1}.twoshaft-wide .jp-Cell[data-twoshaft-side\
=left]{grid-column:1 / span 6;align-self:start}.twoshaft-wide .jp-Cell[data-twoshaft-side=right]{grid-column:7 / span 6;\
align-self:start}.twoshaft-wide .jp-Cell[data-twoshaft-side=right]:has(.ts-question){align-self:end}.twoshaft-wide .jp-C\
ell[data-twoshaft-side=left].twoshaft-broad{grid-column:1 / span 8}.twoshaft-wide .jp-Cell[data-twoshaft-side=right].two\
shaft-broad{grid-column:9 / span 4}.twoshaft-wide .jp-Cell[data-twoshaft-side=left].twoshaft-narrow{grid-column:1 / span\
 3}.twoshaft-wide .jp-Cell[data-twoshaft-side=right].twoshaft-narrow{grid-column:4 / span 9}.twoshaft-wide .twoshaft.two\
shaft-more{position:absolute;left:0;z-index:2;box-sizing:border-box;width:100%;height:32px;margin:0;border:0 solid var(-\
-ts-line);border-top-width:1px;background:var(--ts-paper);color:var(--ts-accent);font:var(--ts-small) / 24px var(--ts-fo\
nt);text-decoration:underline;cursor:pointer}.twoshaft-wide .twoshaft-more:focus-visible{outline:3px solid var(--ts-acce\
nt);outline-offset:-3px}.twoshaft-wide .jp-Cell[data-twoshaft-side=left]{padding-block:2px}.twoshaft-wide .jp-Cell[data-\
twoshaft-side=left] .jp-RenderedHTMLCommon>:is(p,ul,ol){margin-block:0 8px}.twoshaft-wide .jp-Cell[data-twoshaft-side=le\
ft] .jp-RenderedHTMLCommon>h2{margin-block:8px}.twoshaft-wide .jp-Cell[data-twoshaft-side=left] table.given{margin-block\
:0 4px}.twoshaft-wide .jp-Cell[data-twoshaft-side=left] table.given :is(caption,th,td){padding-block:2px}.twoshaft-wide \
.jp-Cell[data-twoshaft-side=left] .twoshaft table{font-size:var(--ts-small)}@media(max-width:1000px){.twoshaft-notebook \
.jp-RenderedHTML figure{overflow-x:auto;min-width:0;max-width:100%}.twoshaft-notebook .jp-RenderedHTML figure>img{max-wi\
dth:none}}@media(max-width:700px){.twoshaft-notebook .jp-RenderedHTML figure>svg{max-width:none}}.twoshaft-desk-notebook\
 .jp-NotebookPanel-toolbar{display:none}`)),r&&Te(s);let c=JSON.parse(t.getOption("twoshaftReleased")||"[]"),a=r?Be(o,c):
Promise.resolve(new Set(c));s.restored.then(()=>{s.shell.collapseLeft?.(),s.shell.collapseRight?.(),at(),Ot(s.shell),r&&
(s.shell.addButtonEnabled=!1)}),s.docRegistry.addWidgetExtension("Notebook",{createNew:(u,b)=>{!r&&b.path!==i||(u.toggleClass(
"twoshaft-desk-notebook",!r),Oe(u,b,a,e,s),Me(u,b,{...n,contents:s.serviceManager.contents}))}})}}}function Ce(t){globalThis.
twoshaftScreens??=new Map;let e=import(`${t}/screens.js?v=d3988b04c7c816f0`);globalThis.twoshaftScreens.set("d3988b04c7c\
816f0",e),e.catch(n=>{globalThis.twoshaftScreens?.delete("d3988b04c7c816f0"),console.warn(`${T}: the screens could not b\
e loaded`,n)})}function Te(t){document.addEventListener("click",e=>{let n=nt(e,"a[data-twoshaft-open]");!n||e.ctrlKey||e.
metaKey||e.shiftKey||(e.preventDefault(),t.commands.execute("docmanager:open",{path:n.dataset.twoshaftOpen}))}),document.
addEventListener("twoshaft-signed-out",()=>{for(let e of[...t.shell.widgets("main")])e!==t.shell.currentWidget&&e.close()})}
async function Be(t,e){let n=new Set(e);try{let o=await fetch(`${t}/released-cells.json`);if(o.ok)for(let s of(await o.json()).
cells)n.add(s)}catch(o){console.warn(`${T}: the list of released cells could not be read`,o)}return n}function Ft(t){return new Promise(
(e,n)=>{let o=()=>{t.isDisposed?s(()=>n(new Error("closed"))):t.session?.kernel?.status==="idle"&&s(e)},s=r=>{t.statusChanged.
disconnect(o),t.disposed.disconnect(o),r()};t.statusChanged.connect(o),t.disposed.connect(o),o()})}async function Ut(t,e,n){
let o=t.sessionContext;for(let s=0;s<Ae;s+=1){await Ft(o);let r=$(t,e).filter(({model:c})=>c.executionCount===null);if(!r.
length)return;let i=r.filter(({model:c})=>kt(c));for(let c of[i,r.filter(a=>!i.includes(a))])if(c.length&&(await n.runCells(
t.content,c,o),c.some(K)))return;await new Promise(c=>setTimeout(c,Pt))}}var ve=({model:t})=>t.executionCount===null&&t.
executionState!=="running"&&!t.outputs.length,J=t=>!!t.content.model?.getMetadata("twoshaft")?.open;function It(t){if(t.
isDisposed||!t.content.model)return;let e=J(t);if(t.toggleClass("twoshaft-notebook",e),!!e)for(let n of t.content.widgets)
n.toggleClass("twoshaft-quiet",O(n.model)),n.toggleClass("twoshaft-if-missing",v(n.model).includes(Se)),n.toggleClass("t\
woshaft-shows",v(n.model).some(o=>ke.includes(o)))}async function Me(t,e,n){await e.ready,!(t.isDisposed||!J(t))&&(M(e.path).
kind!=="start"&&vt(t),Dt(t,o=>{_t(o),Ht(o)}),$t(t),await ct(t,e,n))}function He(t,e){let n=N(t),o=(i,c)=>{c==="completed"&&
(n=N(t))},s=()=>{t.isDisposed||!e.model.dirty||N(t)!==n||(e.model.dirty=!1)},r=(i,{name:c,newValue:a})=>{c==="dirty"&&a&&
setTimeout(s,0)};e.saveState.connect(o),e.model.stateChanged.connect(r),s()}var Nt=new WeakMap;async function Oe(t,e,n,o,s){
if(await e.ready,t.isDisposed||(It(t),t.content.model.cells.changed.connect(()=>setTimeout(()=>It(t),0)),!J(t)))return;He(
t,e);let r=t.sessionContext,i=Nt.get(e)??new Set;Nt.set(e,i);let c=()=>r.session?.kernel?.id,a=0,u=async()=>{a+=1,t.addClass(
Rt);try{await r.ready,await Ft(r);let d=c();if(t.isDisposed||i.has(d))return;i.add(d);let m=await n;for(let{model:S}of $(
t,m))S.executionCount=null;await Ut(t,m,o)}finally{a-=1,t.toggleClass(Rt,a>0),p()}},b,p=()=>{clearTimeout(b),b=window.setTimeout(
async()=>{if(a||t.isDisposed||r.session?.kernel?.status!=="idle")return;let d=$(t,await n);for(let S of d)S.outputHidden&&
(S.outputHidden=!1),l(S);let{model:m}=t.content;if(!(!i.has(c())||m?.isDisposed)&&!(!d.some(ve)||d.some(K))){a+=1;try{await Ut(
t,await n,o)}finally{a-=1}}},Pt)},g=new WeakSet,l=({model:d})=>{g.has(d)||(g.add(d),d.outputs.changed.connect(p))};t.content.
model.cells.changed.connect(p),s.commands.commandExecuted.connect(p),t.node.addEventListener("twoshaft-redraw",async()=>{
let d=$(t,await n);t.isDisposed||await o.runCells(t.content,d,r)});let E=()=>u().catch(d=>{t.isDisposed||console.warn(`${T}\
: the forms could not be shown`,d)}).finally(()=>Lt(t,r,s.serviceManager.sessions)),f=(d,m)=>{m!=="restarting"&&m!=="aut\
orestarting"||(i.delete(c()),E())};r.statusChanged.connect(f),r.kernelChanged.connect((d,{newValue:m})=>{m&&E()}),E()}var jt;async function $e(t){let e=Object.values(jt[t]||{});if(!e.length)throw new Error(`${t} is not there`);return(await(e.
find(o=>o.loaded)||e[0]).get())()}window._JUPYTERLAB??={};window._JUPYTERLAB[T]={init:t=>{jt=t},get:async t=>{if(t!=="./\
extension")throw new Error(`${T} has no ${t}`);let e=await Wt($e);return()=>({__esModule:!0,default:e})}};})();
