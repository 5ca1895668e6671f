"use strict";(()=>{var z="start-here.ipynb",Wt="desk.ipynb",Q="twoshaft-mine";function v(t){let e=t.split("/"),n=e.pop()??"",o=e.at(-1)??"",
s=new Map([[z,"start"],[Wt,"desk"]]),r=s.get(n)??(o==="lessons"?"lesson":"exercise"),i=s.has(n)?0:["lessons","exercises"].
includes(o)?1:2,c=e.slice(0,Math.max(0,e.length-i)).join("/");return{kind:r,file:n,base:c&&`${c}/`}}var F=t=>/^(\d\d)-/.
exec(t)?.[1]??"";function V(t,e,n){let{kind:o,file:s,base:r}=v(t);if(o==="start"||o==="desk")return[];let i=[];e.start&&
i.push(["Start page",r+z]);let c=F(s),a=c&&` ${c}`,h=n[s]??(e.practice.includes(s)?`exercises/${s}`:void 0);return o==="\
lesson"?(i.push([c?`Lesson ${c}`:"Glossary",""]),h&&i.push([`Exercise${a}`,r+h])):(e.lessons.includes(s)&&i.push([`Lesso\
n${a}`,`${r}lessons/${s}`]),i.push([`Exercise${a}`,""])),e.lessons.includes("glossary.ipynb")&&s!=="glossary.ipynb"&&i.push(
["Glossary",`${r}lessons/glossary.ipynb`]),i}var Z=t=>t.toLowerCase().replace(/[^\p{L}\p{N}]+/gu,"-").replace(/^-|-$/g,"");
function tt(t){let e=[],n=!1;t.forEach(({part:r,begins:i},c)=>{let a=r==="text"||r==="given";(!e.length||i||r==="own"||n&&
a)&&(e.push([]),n=!1),e[e.length-1].push(c),(r==="form"||r==="own")&&(n=!0)});let o=[],s=0;for(let r of e){let i=r.map(h=>t[h].
part),c=i.filter(h=>h==="form").length===1&&i.some(h=>h==="text"||h==="given");c&&(s+=1);let a=s;for(let h of r){let{part:w}=t[h];
c&&w!=="hidden"?o[h]={row:a,side:w==="form"?"right":"left"}:(s+=1,o[h]={row:s,side:"both"})}}return o}function et(t){let e=t.
filter(r=>r!==void 0);if(!e.length)return["","opening"];let[n,o,s]=["answered","asked","unread"].map(r=>e.reduce((i,c)=>i+
c[r],0));return s?["▲",`${s} cannot be read, ${n} of ${o} answered`]:n===o?["●","done"]:n?["◐",`${n} of ${o} answe\
red`]:["○","not begun"]}function S(t,e={},...n){let o=document.createElement(t);for(let[s,r]of Object.entries(e))typeof r=="function"?o.addEventListener(
s.slice(2),r):r===!0?o.setAttribute(s,""):r!==!1&&r!=null&&o.setAttribute(s,String(r));return o.append(...jt(n)),o}function ot(t){return S("span",{class:"ts-shape","aria-hidden":"true"},t)}function jt(t){return t.filter(e=>e!=null&&e!==
!1)}function $(t,e){return[...t.querySelectorAll(e)]}function nt(t,e){let{target:n}=t;return n instanceof Element?n.closest(
e):null}var Gt=120;async function P(t,e){try{let{content:n}=await t.get(e,{content:!0});return n.map(({name:o})=>o)}catch{return[]}}
var st=new Map;function qt(t,e){let n=e.replace(/\/$/,""),o=st.get(n)??P(t,n).then(async s=>({start:s.includes("start-he\
re.ipynb"),lessons:s.includes("lessons")?await P(t,`${e}lessons`):[],practice:s.includes("exercises")?await P(t,`${e}exe\
rcises`):[]}));return st.set(n,o),o}function Kt(){try{return JSON.parse(localStorage.getItem(Q)??"{}")}catch{return{}}}var Xt=(t,e)=>`${e}\
/${t.split("/").map(encodeURIComponent).join("/")}`;function rt(t,e){return S("ul",{class:"ts-ways"},...t.map(([n,o])=>S(
"li",{},o?S("a",{href:Xt(o,e),"data-twoshaft-open":o},n):S("b",{"aria-current":"page"},n))))}function Yt(t){let{node:e,widgets:n}=t.
content,o=e.querySelector(".jp-WindowedPanel-outer")??e,s=S("a",{href:"#",class:"ts-next-task"}),r=new Map,i=f=>{let l=f.
node.querySelector("h2");l&&(l.tabIndex=-1,l.focus({preventScroll:!0})),f.node.scrollIntoView({block:"start"})},c=(f,l,m)=>({
cell:f,number:l,title:m,forms:new Set,link:S("a",{href:"#",onclick:d=>{d.preventDefault(),i(f)}})}),a=[];for(let f of n){
let{type:l,sharedModel:m}=f.model,[,d,u]=/^## (\d+)\. (.*)/m.exec(m.getSource())??[];l!=="code"&&d&&a.push(c(f,d,u))}let h=S(
"ol",{class:"ts-tasks","aria-label":"Tasks"},...a.map(({link:f})=>S("li",{},f))),w=S("div",{class:"ts-task-row"},h,s),b=({
forms:f})=>et([...f].map(l=>r.get(l))),g=()=>a.find(f=>b(f)[1]!=="done");s.addEventListener("click",f=>{f.preventDefault();
let l=g();l&&i(l.cell)});let x=()=>{let f=o.getBoundingClientRect().top+Gt,l=a.filter(({cell:p})=>p.node.getBoundingClientRect().
top<f),d=o.scrollTop+o.clientHeight>=o.scrollHeight-1&&l.length?a.at(-1):l.at(-1);for(let p of a){let[k,L]=b(p);p===d?p.
link.setAttribute("aria-current","step"):p.link.removeAttribute("aria-current");let N=`Task ${p.number}, ${p.title}: ${L}`;
p.link.title!==N&&(p.link.title=N,p.link.setAttribute("aria-label",N),p.link.replaceChildren(p.number,k?ot(k):""))}d&&w.
scrollWidth>w.clientWidth&&(w.scrollLeft=d.link.offsetLeft-w.clientWidth/2);let u=g(),E=u?`Next: task ${u.number}`:"All \
tasks are answered";s.textContent!==E&&(s.textContent=E)};e.addEventListener("twoshaft-progress",({target:f,detail:l})=>{
let m=f,d=a.filter(({cell:u})=>u.node.compareDocumentPosition(m)&Node.DOCUMENT_POSITION_FOLLOWING);r.set(l.task,l),d.at(
-1)?.forms.add(l.task),x()});let y=0;return o.addEventListener("scroll",()=>{cancelAnimationFrame(y),y=requestAnimationFrame(
x)},{passive:!0}),x(),a.length?w:null}async function ct(t,e,{Widget:n,contents:o,tree:s}){let{kind:r,base:i,file:c}=v(e.
path);if(r==="start"||r==="desk")return;let a=r==="exercise"?Yt(t):null,h=S("nav",{class:"twoshaft twoshaft-bar","aria-l\
abel":"Course"}),w=new n({node:h});t.layout.insertWidget(0,w),t.content.node.before(h);let b=S("nav",{class:"twoshaft tw\
oshaft-ways","aria-label":"Ways on"});t.content.node.querySelector(".jp-WindowedPanel-outer")?.append(b);let g=async()=>{
let x=V(e.path,await qt(o,i),Kt());h.replaceChildren(rt(x,s),...a?[a]:[]),b.replaceChildren(rt(x,s))};await g(),a&&Jt(t,
h,a),r==="lesson"&&(window.addEventListener("storage",g),t.disposed.connect(()=>window.removeEventListener("storage",g)),
(F(c)||c==="glossary.ipynb")&&zt(t,()=>Qt(t)))}function Jt(t,e,n){let o=new ResizeObserver(()=>{let s=e.firstElementChild,
r=n.offsetTop>=s.offsetTop+s.offsetHeight;r!==e.classList.contains("ts-two-lines")&&(e.classList.toggle("ts-two-lines",r),
requestAnimationFrame(()=>t.fit()))});o.observe(e),o.observe(n),t.disposed.connect(()=>o.disconnect())}function zt(t,e){
let n=t.content.widgets.filter(({model:o})=>o.type!=="code");Promise.all(n.map(o=>o.ready)).then(()=>requestAnimationFrame(
()=>{t.isDisposed||e()}))}var it=decodeURIComponent(location.hash.slice(1));function Qt(t){if(it){for(let e of t.content.
node.querySelectorAll(".jp-RenderedMarkdown :is(h1, h2, h3)"))if(Z(e.textContent??"")===it){e.tabIndex=-1,e.focus({preventScroll:!0}),
e.scrollIntoView({block:"start"});return}}}function at(){let t=S("a",{href:"#",class:"twoshaft-skip",onclick:e=>{e.preventDefault(),
[...document.querySelectorAll(".twoshaft-bar")].find(s=>s.checkVisibility())?.querySelector("a")?.focus()}},"To the star\
t page, lesson and tasks");document.body.prepend(S("nav",{"aria-label":"First"},t))}var Vt=t=>t/2**32|0,Zt=t=>t>>>0;function ft(t,e,n,o){let s=Vt(n),r=Zt(n);t.setUint32(e,o?r:s,o),t.setUint32(e+4,o?s:r,o)}function lt(t){return t instanceof Uint8Array||ArrayBuffer.isView(t)&&t.constructor.name==="Uint8Array"&&"BYTES_PER_ELEM\
ENT"in t&&t.BYTES_PER_ELEMENT===1}var W=t=>t?`"${t}" `:"";function te(t,e=""){if(typeof t!="number")throw new TypeError(
W(e)+"expected number, got "+typeof t);if(!Number.isSafeInteger(t)||t<0)throw new RangeError(W(e)+"expected integer >= 0\
, got "+t);return t}function _(t,e,n=""){if(lt(t)&&(e===void 0||t.length===e))return t;e!==void 0&&te(e,"length");let o=lt(t),s=e!==void 0?`\
 of length ${e}`:"",r=o?`length=${t.length}`:`type=${typeof t}`,i=W(n)+"expected Uint8Array"+s+", got "+r;throw o?new RangeError(
i):new TypeError(i)}var ee=(t,e)=>{if(t===null||typeof t!="object"||Array.isArray(t))throw new TypeError((e==="object"?"":`"${e}" `)+"expect\
ed object, got type="+typeof t)},dt=(t,e)=>{ee(t,e);let n=Object.getPrototypeOf(t);if(n!==Object.prototype&&n!==null)throw new TypeError(
`"${e}" expected plain object`);if(Object.hasOwn(t,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};
function j(t,e=!0){if(t.destroyed)throw new Error("hash was destroyed");if(e&&t.finished)throw new Error("digest() was a\
lready called")}function ut(t,e){_(t,void 0,"output");let n=e.outputLen;if(!(t.length>=n))throw new RangeError('"output"\
 expected length >= '+n)}function D(...t){for(let e=0;e<t.length;e++)t[e].fill(0)}function U(t){return new DataView(t.buffer,t.byteOffset,t.byteLength)}
function A(t,e){return t<<32-e|t>>>e}var oe=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",ne=Array.from({length:256},(t,e)=>e.
toString(16).padStart(2,"0"));function ht(t){if(_(t),oe)return t.toHex();let e="";for(let n=0;n<t.length;n++)e+=ne[t[n]];
return e}function pt(t){if(typeof t!="string")throw new TypeError("string expected");let e=new TextEncoder().encode(t);try{return new Uint8Array(
e)}finally{D(e)}}function se(t,e,n="opts"){return dt(t,"defaults"),e!==void 0&&dt(e,n),Object.assign(Object.create(null),t,e)}function xt(t,e={}){
if(typeof t!="function")throw new TypeError('"hashCons" expected function, got type='+typeof t);e=se({},e,"info");let n=(s,r)=>t(
r).update(s).digest(),o=t(void 0);return n.outputLen=o.outputLen,n.blockLen=o.blockLen,n.canXOF=o.canXOF,n.create=s=>t(s),
Object.assign(n,e),Object.freeze(n)}var bt=t=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,t])});function gt(t,e,n){return t&e^~t&n}function wt(t,e,n){return t&e^t&n^e&n}var R=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,n,o,s){
this.blockLen=e,this.outputLen=n,this.padOffset=o,this.isLE=s,this.buffer=new Uint8Array(e),this.view=U(this.buffer)}update(e){
j(this),_(e);let{view:n,buffer:o,blockLen:s}=this,r=e.length,i=!1;for(let c=0;c<r;){let a=Math.min(s-this.pos,r-c);if(a===
s){let h=U(e);for(;s<=r-c;c+=s)this.process(h,c);i=!0;continue}o.set(c===0&&a===r?e:e.subarray(c,c+a),this.pos),this.pos+=
a,c+=a,this.pos===s&&(this.process(n,0),this.pos=0,i=!0)}return this.length+=e.length,i&&this.roundClean(),this}digestInto(e){
j(this),ut(e,this),this.finished=!0;let{buffer:n,view:o,blockLen:s,isLE:r}=this,{pos:i}=this;n[i++]=128,n.fill(0,i),this.
padOffset>s-i&&(this.process(o,0),n.fill(0)),ft(o,s-8,this.length*8,r),this.process(o,0),this.roundClean();let c=e===n?o:
U(e),a=this.outputLen,h=a/4,w=this.get();if(a%4||h>w.length)throw new Error("invalid outputLen");for(let b=0;b<h;b++)c.setUint32(
4*b,w[b],r)}digest(){let{buffer:e,outputLen:n}=this;this.digestInto(e);let o=e.slice(0,n);return this.destroy(),o}_cloneIntoMeta(e){
let{buffer:n,length:o,finished:s,destroyed:r,pos:i}=this;return e.destroyed=r,e.finished=s,e.length=o,e.pos=i,i&&e.buffer.
set(n),e}clone(){return this._cloneInto()}},mt=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,
2600822924,528734635,1541459225]);var re=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,
310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,
1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,
773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,
3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,
1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),T=new Uint32Array(64),G=class extends R{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,n){
super(64,e,8,!1),this.A=n[0]|0,this.B=n[1]|0,this.C=n[2]|0,this.D=n[3]|0,this.E=n[4]|0,this.F=n[5]|0,this.G=n[6]|0,this.
H=n[7]|0}get(){let{A:e,B:n,C:o,D:s,E:r,F:i,G:c,H:a}=this;return[e,n,o,s,r,i,c,a]}set(e,n,o,s,r,i,c,a){this.A=e|0,this.B=
n|0,this.C=o|0,this.D=s|0,this.E=r|0,this.F=i|0,this.G=c|0,this.H=a|0}_cloneInto(e){return(e||=new this.constructor).set(
...this.get()),this._cloneIntoMeta(e)}process(e,n){for(let b=0;b<16;b++,n+=4)T[b]=e.getUint32(n,!1);for(let b=16;b<64;b++){
let g=T[b-15],x=T[b-2],y=A(g,7)^A(g,18)^g>>>3,f=A(x,17)^A(x,19)^x>>>10;T[b]=f+T[b-7]+y+T[b-16]|0}let{A:o,B:s,C:r,D:i,E:c,
F:a,G:h,H:w}=this;for(let b=0;b<64;b++){let g=A(c,6)^A(c,11)^A(c,25),x=w+g+gt(c,a,h)+re[b]+T[b]|0,f=(A(o,2)^A(o,13)^A(o,
22))+wt(o,s,r)|0;w=h,h=a,a=c,c=i+x|0,i=r,r=s,s=o,o=x+f|0}o=o+this.A|0,s=s+this.B|0,r=r+this.C|0,i=i+this.D|0,c=c+this.E|
0,a=a+this.F|0,h=h+this.G|0,w=w+this.H|0,this.set(o,s,r,i,c,a,h,w)}roundClean(){D(T)}destroy(){this.destroyed=!0,this.set(
0,0,0,0,0,0,0,0),D(this.buffer)}},q=class extends G{constructor(){super(32,mt)}};var yt=xt(()=>new q,bt(1));var Et="setup",St=[Et,"form","rig"],ie=[...St,"mark"];function ce(t){return ht(yt(pt(t.replace(/\r\n?/g,`
`).replace(/\n+$/,""))))}var B=t=>t.getMetadata("tags")||[],kt=t=>B(t).includes(Et),H=t=>B(t).some(e=>ie.includes(e));function O(t,e){
return t.content.widgets.filter(({model:n})=>n.type==="code"&&B(n).some(o=>St.includes(o))&&e.has(ce(n.sharedModel.getSource())))}
function K({model:{outputs:t}}){for(let e=0;e<t.length;e+=1)if(t.get(e).type==="error")return!0;return!1}function I(t){return JSON.
stringify(t.content.widgets.map(({model:e})=>[e.sharedModel.getSource(),H(e)?null:e.executionCount??null]))}function X(t){let e=t.session?.kernel;return e?.connectionStatus==="connected"&&!["dead","terminating"].includes(e.status)}
var At=new WeakSet;function Lt(t,e,n){if(At.has(t)||t.isDisposed)return;At.add(t);let o=!1,s=async()=>{if(!o){for(o=!0;!t.
isDisposed&&(await new Promise(i=>setTimeout(i,1e3)),!(t.isDisposed||X(e)));)try{await n.refreshRunning();let i=e.session?.
kernel;if(X(e))break;!i||["dead","terminating"].includes(i.status)?await e.startKernel():i.connectionStatus==="disconnec\
ted"&&await i.reconnect()}catch{}o=!1}},r=()=>{!t.isDisposed&&!X(e)&&!e.isRestarting&&s()};e.connectionStatusChanged.connect(
r),e.statusChanged.connect(r),e.sessionChanged.connect(r),e.kernelChanged.connect(r),r()}var Y=32,ae=80,fe=16;function Ct(t,e,n){let o=0,s=0,r=0,i=e.scrollTop,c=new AbortController,a=t[t.length-1],h=S("button",
{type:"button",class:"twoshaft twoshaft-more",onclick:()=>w(o<s?o+r-ae:0)});function w(d){let u=Math.round(Math.min(s,Math.
max(0,d)));return u===o?!1:(o=u,n(),!0)}let b=()=>t[0].getBoundingClientRect().top+o;function g(d){let{top:u,bottom:E}=d.
getBoundingClientRect(),p=b(),k=p+r-Y;E>k?w(o+Math.min(E-k,u-p)):u<p&&w(o-(p-u))}function x(d){if(d.ctrlKey||d.shiftKey||
!d.deltaY||d.deltaY>0&&b()>e.getBoundingClientRect().top+1)return;let u=d.deltaMode===WheelEvent.DOM_DELTA_LINE?fe:1;w(o+
d.deltaY*u)&&d.preventDefault()}function y(d){let{target:u,relatedTarget:E}=d;if(!(u instanceof Element)||u===h||t.some(
L=>L===u)&&!u.matches(":focus-visible"))return;E instanceof Node&&t.some(L=>L.contains(E))&&(e.scrollTop=i),g(u);let k=()=>{
document.activeElement!==u||!h.isConnected||(g(u),f(u))};requestAnimationFrame(()=>{k(),requestAnimationFrame(k)})}function f(d){
let{top:u,bottom:E}=d.getBoundingClientRect(),p=e.getBoundingClientRect();u<p.top?e.scrollTop-=p.top-u:E>p.bottom&&(e.scrollTop+=
Math.min(E-p.bottom,u-p.top))}let{signal:l}=c;for(let d of t)d.addEventListener("wheel",x,{passive:!1,signal:l}),d.addEventListener(
"focusin",y,{signal:l});let m=()=>{i=e.scrollTop};return e.addEventListener("scroll",m,{passive:!0,signal:l}),a.append(h),
{moved:()=>o,fit(d,u){r=u,s=Math.round(d-u+Y),o=Math.min(o,s)},cut(d,u,E){let p=u+E-r;if(d!==a){d.style.clipPath=`inset(${Math.
max(0,-u)}px 0 ${Math.max(0,p)}px)`;return}let k=u<0?-u:-s-r;d.style.clipPath=`inset(${k}px 0 ${p}px)`;let L=o>=s;h.textContent=
L?"▲ Back to the beginning":"▼ More of what is given",h.style.top=`${r-Y-u}px`},remove(){c.abort(),h.remove();for(let{
style:d}of t)d.removeProperty("clip-path")}}}var le=1e3,de=1800,ue=":is(.tsh-picture, .ts-scroll, .ts-unit, .tsi-micrometer, .tsi-vernier, .tsg-drum)";function he(t){
let e=B(t);return t.type!=="code"?e.includes("if-missing")?"hidden":"text":e.includes("form")||e.includes("predict")?"fo\
rm":e.includes("rig")?"given":H(t)?"hidden":"own"}var Tt=(t,e)=>({nodes:t,beside:e,heights:[],whole:0,high:0,from:0,room:0,
stage:"",box:null}),pe=t=>t.type!=="code"&&/^#{1,2} /m.test(t.sharedModel.getSource());function Bt(t){let e=t.content.node,
n=e.querySelector(".jp-WindowedPanel-outer")??e,o=[],s=()=>{let g=n.clientHeight;for(let{left:x,right:y}of o){let f=x.nodes.
some(p=>p.querySelector(ue)),[l]=y.nodes,m=l.querySelector(".ts-pictures")!==null;for(let p of[...x.nodes,l])p.classList.
toggle("twoshaft-broad",f),p.classList.toggle("twoshaft-narrow",!f&&m);for(let p of[x,y])p.heights=p.nodes.map(k=>k.getBoundingClientRect().
height),p.whole=p.heights.reduce((k,L)=>k+L,0),p.high=p.whole,p.from=Math.min(0,g-p.whole),p.stage="";let d=l.querySelector(
".ts-question")!==null;x.whole>g&&y.whole>g&&!d?(x.high=g,x.from=0,x.box??=Ct(x.nodes,n,()=>{x.stage="",r()})):(x.box?.remove(),
x.box=null),x.box?.fit(x.whole,g),x.room=y.whole;let E=y.whole<=g&&!d;y.room=E?x.whole:0}r()},r=()=>{let g=n.getBoundingClientRect().
top,x=o.flatMap(({left:f,right:l})=>[f,l]),y=x.map(f=>{let l=Math.max(0,f.room-f.high),m=f.from-(f.beside.getBoundingClientRect().
top-g);return{stage:m<=0||!l?"before":m<l?"within":`past ${l}`,spare:l}});x.forEach((f,l)=>{let{stage:m,spare:d}=y[l];if(m===
f.stage)return;f.stage=m;let u=-(f.box?.moved()??0);f.nodes.forEach((E,p)=>{let k=u+(m.startsWith("past")?d:0);E.style.position=
m==="within"?"sticky":"relative",E.style.top=m==="within"?`${f.from+u}px`:"auto",E.style.marginTop=`${k}px`,E.style.marginBottom=
`${f.high-u-f.heights[p]}px`,f.box?.cut(E,u,f.heights[p]),u+=f.heights[p]})})},i=()=>{for(let g of o.flatMap(({left:x,right:y})=>[
x,y])){g.stage="",g.box?.remove(),g.box=null;for(let{style:x}of g.nodes)for(let y of["position","top","margin-top","marg\
in-bottom"])x.removeProperty(y)}},c=()=>e.classList.contains("twoshaft-wide"),a=()=>{let g=document.documentElement.getAttribute(
"data-ts-print")==="large";e.classList.toggle("twoshaft-wide",e.clientWidth>=(g?de:le)),c()?s():i()};n.addEventListener(
"scroll",()=>c()&&r(),{passive:!0});let h=0,w=new ResizeObserver(()=>{cancelAnimationFrame(h),h=requestAnimationFrame(a)}),
b=()=>{let{widgets:g}=t.content,x=tt(g.map(({model:f})=>({part:he(f),begins:pe(f)})));i(),w.disconnect(),w.observe(e);let y=new Map;
o=[],g.forEach(({node:f},l)=>{let{row:m,side:d}=x[l];if(f.style.gridRow=String(m),f.dataset.twoshaftSide=d,d==="both")return;
w.observe(f);let u=y.get(m)??[];y.set(m,u),d==="left"?u.push(f):o.push({left:Tt(u,f),right:Tt([f],u[0]??f)})}),a()};b(),
t.content.model.cells.changed.connect(()=>setTimeout(()=>!t.isDisposed&&b(),0)),t.disposed.connect(()=>w.disconnect())}var xe=".twoshaft svg[viewBox]",be=1.7;function vt(t){let e=$(t,xe).filter(o=>o.querySelector("text")),n=e.map(o=>{let s=o.
getScreenCTM();return s?Math.hypot(s.a,s.b):1});e.forEach((o,s)=>{let r=Number(o.dataset.grow)||be,i=Math.min(r,Math.max(
1,1/(n[s]||1))).toFixed(3);o.style.getPropertyValue("--ts-grown")!==i&&o.style.setProperty("--ts-grown",i)})}var M=window.matchMedia("(max-width: 600px), (max-height: 400px)");function Ht(t){let e=()=>{for(let n of["left","right"])
t.isSideTabBarVisible?.(n)===M.matches&&t.toggleSideTabBarVisibility(n)};M.addEventListener("change",e),e()}function Ot(t){
let e=()=>{t.toolbar.setHidden(M.matches),t.fit()};M.addEventListener("change",e),t.disposed.connect(()=>M.removeEventListener(
"change",e)),e()}var ge=":is(.twoshaft :is(.given-frame, .tsg-wide, .tsl-drawing), .jp-RenderedHTML figure)";function we(t){let e=t.scrollWidth>
t.clientWidth;if(e!==t.hasAttribute("tabindex")){if(!e){for(let n of["tabindex","role","aria-label"])t.removeAttribute(n);
return}t.tabIndex=0,t.setAttribute("role","group"),t.setAttribute("aria-label",t.querySelector("caption")?"Wide table":"\
Picture")}}var Mt=t=>$(t,ge).forEach(we);function $t(t,e){let n=t.content.node,o=0,s=()=>{clearTimeout(o),o=setTimeout(()=>e(n),300)},r=new MutationObserver(s);r.
observe(n,{childList:!0,subtree:!0});let i=new ResizeObserver(s);i.observe(n),t.disposed.connect(()=>{clearTimeout(o),r.
disconnect(),i.disconnect()})}var C="twoshaft-opener",me="if-missing",_t="twoshaft-opening",ye=["form","rig"],Ee=3,It=300;async function Nt(t){let[{PageConfig:e,
URLExt:n},{NotebookActions:o},{IConnectionLost:s},{Widget:r}]=await Promise.all([t("@jupyterlab/coreutils"),t("@jupyterl\
ab/notebook"),t("@jupyterlab/application"),t("@lumino/widgets")]),i=n.join(e.getBaseUrl(),"lab/tree"),c=Se(e,o,{Widget:r,
tree:i});if(e.getOption("twoshaftRole")!=="apprentice")return[c];let a={id:`${C}:line`,description:"Leaves it to the cou\
rse's screens to say that the server cannot be reached.",autoStart:!0,provides:s,activate:()=>async()=>{}};return[c,a]}function Se(t,e,n){
let o=`${t.getOption("fullLabextensionsUrl")}/${C}/static`;return{id:`${C}:plugin`,description:"Shows the forms and rigs\
 of a course notebook as soon as it is opened.",autoStart:!0,activate:s=>{ke(o);let r=t.getOption("twoshaftRole")==="app\
rentice",i=t.getOption("twoshaftDesk");if(!r&&!i)return;document.head.append(S("style",{},`.twoshaft {
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
.jp-Cell[data-twoshaft-side=left] .twoshaft table{font-size:var(--ts-small)}@media(max-width:700px){.twoshaft-notebook .\
jp-RenderedHTML figure{overflow-x:auto;min-width:0;max-width:100%}.twoshaft-notebook .jp-RenderedHTML figure>:is(svg,img\
){max-width:none}}.twoshaft-desk-notebook .jp-NotebookPanel-toolbar{display:none}`)),r&&Ae(s);let c=JSON.parse(t.getOption(
"twoshaftReleased")||"[]"),a=r?Le(o,c):Promise.resolve(new Set(c));s.restored.then(()=>{s.shell.collapseLeft?.(),s.shell.
collapseRight?.(),at(),Ht(s.shell),r&&(s.shell.addButtonEnabled=!1)}),s.docRegistry.addWidgetExtension("Notebook",{createNew:(h,w)=>{
!r&&w.path!==i||(h.toggleClass("twoshaft-desk-notebook",!r),ve(h,w,a,e,s),Te(h,w,{...n,contents:s.serviceManager.contents}))}})}}}
function ke(t){globalThis.twoshaftScreens??=new Map;let e=import(`${t}/screens.js?v=233ece38ddce9ebd`);globalThis.twoshaftScreens.
set("233ece38ddce9ebd",e),e.catch(n=>{globalThis.twoshaftScreens?.delete("233ece38ddce9ebd"),console.warn(`${C}: the scr\
eens could not be loaded`,n)})}function Ae(t){document.addEventListener("click",e=>{let n=nt(e,"a[data-twoshaft-open]");
!n||e.ctrlKey||e.metaKey||e.shiftKey||(e.preventDefault(),t.commands.execute("docmanager:open",{path:n.dataset.twoshaftOpen}))}),
document.addEventListener("twoshaft-signed-out",()=>{for(let e of[...t.shell.widgets("main")])e!==t.shell.currentWidget&&
e.close()})}async function Le(t,e){let n=new Set(e);try{let o=await fetch(`${t}/released-cells.json`);if(o.ok)for(let s of(await o.
json()).cells)n.add(s)}catch(o){console.warn(`${C}: the list of released cells could not be read`,o)}return n}function Ft(t){
return new Promise((e,n)=>{let o=()=>{t.isDisposed?s(()=>n(new Error("closed"))):t.session?.kernel?.status==="idle"&&s(e)},
s=r=>{t.statusChanged.disconnect(o),t.disposed.disconnect(o),r()};t.statusChanged.connect(o),t.disposed.connect(o),o()})}
async function Dt(t,e,n){let o=t.sessionContext;for(let s=0;s<Ee;s+=1){await Ft(o);let r=O(t,e).filter(({model:c})=>c.executionCount===
null);if(!r.length)return;let i=r.filter(({model:c})=>kt(c));for(let c of[i,r.filter(a=>!i.includes(a))])if(c.length&&(await n.
runCells(t.content,c,o),c.some(K)))return;await new Promise(c=>setTimeout(c,It))}}var Ce=({model:t})=>t.executionCount===
null&&t.executionState!=="running"&&!t.outputs.length,J=t=>!!t.content.model?.getMetadata("twoshaft")?.open;function Ut(t){
if(t.isDisposed||!t.content.model)return;let e=J(t);if(t.toggleClass("twoshaft-notebook",e),!!e)for(let n of t.content.widgets)
n.toggleClass("twoshaft-quiet",H(n.model)),n.toggleClass("twoshaft-if-missing",B(n.model).includes(me)),n.toggleClass("t\
woshaft-shows",B(n.model).some(o=>ye.includes(o)))}async function Te(t,e,n){await e.ready,!(t.isDisposed||!J(t))&&(v(e.path).
kind!=="start"&&Bt(t),$t(t,o=>{Mt(o),vt(o)}),Ot(t),await ct(t,e,n))}function Be(t,e){let n=I(t),o=(i,c)=>{c==="completed"&&
(n=I(t))},s=()=>{t.isDisposed||!e.model.dirty||I(t)!==n||(e.model.dirty=!1)},r=(i,{name:c,newValue:a})=>{c==="dirty"&&a&&
setTimeout(s,0)};e.saveState.connect(o),e.model.stateChanged.connect(r),s()}var Rt=new WeakMap;async function ve(t,e,n,o,s){
if(await e.ready,t.isDisposed||(Ut(t),t.content.model.cells.changed.connect(()=>setTimeout(()=>Ut(t),0)),!J(t)))return;Be(
t,e);let r=t.sessionContext,i=Rt.get(e)??new Set;Rt.set(e,i);let c=()=>r.session?.kernel?.id,a=0,h=async()=>{a+=1,t.addClass(
_t);try{await r.ready,await Ft(r);let l=c();if(t.isDisposed||i.has(l))return;i.add(l);let m=await n;for(let{model:d}of O(
t,m))d.executionCount=null;await Dt(t,m,o)}finally{a-=1,t.toggleClass(_t,a>0),b()}},w,b=()=>{clearTimeout(w),w=window.setTimeout(
async()=>{if(a||t.isDisposed||r.session?.kernel?.status!=="idle")return;let l=O(t,await n);for(let d of l)d.outputHidden&&
(d.outputHidden=!1),x(d);let{model:m}=t.content;if(!(!i.has(c())||m?.isDisposed)&&!(!l.some(Ce)||l.some(K))){a+=1;try{await Dt(
t,await n,o)}finally{a-=1}}},It)},g=new WeakSet,x=({model:l})=>{g.has(l)||(g.add(l),l.outputs.changed.connect(b))};t.content.
model.cells.changed.connect(b),s.commands.commandExecuted.connect(b),t.node.addEventListener("twoshaft-redraw",async()=>{
let l=O(t,await n);t.isDisposed||await o.runCells(t.content,l,r)});let y=()=>h().catch(l=>{t.isDisposed||console.warn(`${C}\
: the forms could not be shown`,l)}).finally(()=>Lt(t,r,s.serviceManager.sessions)),f=(l,m)=>{m!=="restarting"&&m!=="aut\
orestarting"||(i.delete(c()),y())};r.statusChanged.connect(f),r.kernelChanged.connect((l,{newValue:m})=>{m&&y()}),y()}var Pt;async function He(t){let e=Object.values(Pt[t]||{});if(!e.length)throw new Error(`${t} is not there`);return(await(e.
find(o=>o.loaded)||e[0]).get())()}window._JUPYTERLAB??={};window._JUPYTERLAB[C]={init:t=>{Pt=t},get:async t=>{if(t!=="./\
extension")throw new Error(`${C} has no ${t}`);let e=await Nt(He);return()=>({__esModule:!0,default:e})}};})();
