"use strict";(()=>{var z="start-here.ipynb",Wt="desk.ipynb",X="twoshaft-mine";function T(t){let e=t.split("/"),o=e.pop()??"",n=e.at(-1)??"",
s=new Map([[z,"start"],[Wt,"desk"]]),r=s.get(o)??(n==="lessons"?"lesson":"exercise"),c=s.has(o)?0:["lessons","exercises"].
includes(n)?1:2,i=e.slice(0,Math.max(0,e.length-c)).join("/");return{kind:r,file:o,base:i&&`${i}/`}}var N=t=>/^(\d\d)-/.
exec(t)?.[1]??"";function Y(t,e,o){let{kind:n,file:s,base:r}=T(t);if(n==="start"||n==="desk")return[];let c=[];e.start&&
c.push(["Start page",r+z]);let i=N(s),a=i&&` ${i}`,d=o[s]??(e.practice.includes(s)?`exercises/${s}`:void 0);return n==="\
lesson"?(c.push([i?`Lesson ${i}`:"Glossary",""]),d&&c.push([`Exercise${a}`,r+d])):(e.lessons.includes(s)&&c.push([`Lesso\
n${a}`,`${r}lessons/${s}`]),c.push([`Exercise${a}`,""])),e.lessons.includes("glossary.ipynb")&&s!=="glossary.ipynb"&&c.push(
["Glossary",`${r}lessons/glossary.ipynb`]),c}var Q=t=>t.toLowerCase().replace(/[^\p{L}\p{N}]+/gu,"-").replace(/^-|-$/g,"");
function V(t){let e=[],o=!1;t.forEach(({part:r,begins:c},i)=>{let a=r==="text"||r==="given";(!e.length||c||r==="own"||o&&
a)&&(e.push([]),o=!1),e[e.length-1].push(i),(r==="form"||r==="own")&&(o=!0)});let n=[],s=0;for(let r of e){let c=r.map(d=>t[d].
part),i=c.filter(d=>d==="form").length===1&&c.some(d=>d==="text"||d==="given");i&&(s+=1);let a=s;for(let d of r){let{part:h}=t[d];
i&&h!=="hidden"?n[d]={row:a,side:h==="form"?"right":"left"}:(s+=1,n[d]={row:s,side:"both"})}}return n}function Z(t){let e=t.
filter(r=>r!==void 0);if(!e.length)return["","opening"];let[o,n,s]=["answered","asked","unread"].map(r=>e.reduce((c,i)=>c+
i[r],0));return s?["▲",`${s} cannot be read, ${o} of ${n} answered`]:o===n?["●","done"]:o?["◐",`${o} of ${n} answe\
red`]:["○","not begun"]}function S(t,e={},...o){let n=document.createElement(t);for(let[s,r]of Object.entries(e))typeof r=="function"?n.addEventListener(
s.slice(2),r):r===!0?n.setAttribute(s,""):r!==!1&&r!=null&&n.setAttribute(s,String(r));return n.append(...Ft(o)),n}function tt(t){return S("span",{class:"ts-shape","aria-hidden":"true"},t)}function Ft(t){return t.filter(e=>e!=null&&e!==
!1)}function $(t,e){return[...t.querySelectorAll(e)]}function et(t,e){let{target:o}=t;return o instanceof Element?o.closest(
e):null}var jt=120;async function W(t,e){try{let{content:o}=await t.get(e,{content:!0});return o.map(({name:n})=>n)}catch{return[]}}
var ot=new Map;function Pt(t,e){let o=e.replace(/\/$/,""),n=ot.get(o)??W(t,o).then(async s=>({start:s.includes("start-he\
re.ipynb"),lessons:s.includes("lessons")?await W(t,`${e}lessons`):[],practice:s.includes("exercises")?await W(t,`${e}exe\
rcises`):[]}));return ot.set(o,n),n}function Gt(){try{return JSON.parse(localStorage.getItem(X)??"{}")}catch{return{}}}var qt=(t,e)=>`${e}\
/${t.split("/").map(encodeURIComponent).join("/")}`;function nt(t,e){return S("ul",{class:"ts-ways"},...t.map(([o,n])=>S(
"li",{},n?S("a",{href:qt(n,e),"data-twoshaft-open":n},o):S("b",{"aria-current":"page"},o))))}function Kt(t){let{node:e,widgets:o}=t.
content,n=e.querySelector(".jp-WindowedPanel-outer")??e,s=S("a",{href:"#",class:"ts-next-task"}),r=new Map,c=f=>{let l=f.
node.querySelector("h2");l&&(l.tabIndex=-1,l.focus({preventScroll:!0})),f.node.scrollIntoView({block:"start"})},i=(f,l,x)=>({
cell:f,number:l,title:x,forms:new Set,link:S("a",{href:"#",onclick:w=>{w.preventDefault(),c(f)}})}),a=[];for(let f of o){
let{type:l,sharedModel:x}=f.model,[,w,b]=/^## (\d+)\. (.*)/m.exec(x.getSource())??[];l!=="code"&&w&&a.push(i(f,w,b))}let d=S(
"ol",{class:"ts-tasks","aria-label":"Tasks"},...a.map(({link:f})=>S("li",{},f))),h=S("div",{class:"ts-task-row"},d,s),u=({
forms:f})=>Z([...f].map(l=>r.get(l))),g=()=>a.find(f=>u(f)[1]!=="done");s.addEventListener("click",f=>{f.preventDefault();
let l=g();l&&c(l.cell)});let p=()=>{let f=n.getBoundingClientRect().top+jt,l=a.filter(({cell:y})=>y.node.getBoundingClientRect().
top<f),w=n.scrollTop+n.clientHeight>=n.scrollHeight-1&&l.length?a.at(-1):l.at(-1);for(let y of a){let[v,Nt]=u(y);y===w?y.
link.setAttribute("aria-current","step"):y.link.removeAttribute("aria-current");let I=`Task ${y.number}, ${y.title}: ${Nt}`;
y.link.title!==I&&(y.link.title=I,y.link.setAttribute("aria-label",I),y.link.replaceChildren(y.number,v?tt(v):""))}w&&h.
scrollWidth>h.clientWidth&&(h.scrollLeft=w.link.offsetLeft-h.clientWidth/2);let b=g(),E=b?`Next: task ${b.number}`:"All \
tasks are answered";s.textContent!==E&&(s.textContent=E)};e.addEventListener("twoshaft-progress",({target:f,detail:l})=>{
let x=f,w=a.filter(({cell:b})=>b.node.compareDocumentPosition(x)&Node.DOCUMENT_POSITION_FOLLOWING);r.set(l.task,l),w.at(
-1)?.forms.add(l.task),p()});let m=0;return n.addEventListener("scroll",()=>{cancelAnimationFrame(m),m=requestAnimationFrame(
p)},{passive:!0}),p(),a.length?h:null}async function rt(t,e,{Widget:o,contents:n,tree:s}){let{kind:r,base:c,file:i}=T(e.
path);if(r==="start"||r==="desk")return;let a=r==="exercise"?Kt(t):null,d=S("nav",{class:"twoshaft twoshaft-bar","aria-l\
abel":"Course"}),h=new o({node:d});t.layout.insertWidget(0,h),t.content.node.before(d);let u=S("nav",{class:"twoshaft tw\
oshaft-ways","aria-label":"Ways on"});t.content.node.querySelector(".jp-WindowedPanel-outer")?.append(u);let g=async()=>{
let p=Y(e.path,await Pt(n,c),Gt());d.replaceChildren(nt(p,s),...a?[a]:[]),u.replaceChildren(nt(p,s))};await g(),a&&Jt(t,
d,a),r==="lesson"&&(window.addEventListener("storage",g),t.disposed.connect(()=>window.removeEventListener("storage",g)),
(N(i)||i==="glossary.ipynb")&&zt(t,()=>Xt(t)))}function Jt(t,e,o){let n=new ResizeObserver(()=>{let s=e.firstElementChild,
r=o.offsetTop>=s.offsetTop+s.offsetHeight;r!==e.classList.contains("ts-two-lines")&&(e.classList.toggle("ts-two-lines",r),
requestAnimationFrame(()=>t.fit()))});n.observe(e),n.observe(o),t.disposed.connect(()=>n.disconnect())}function zt(t,e){
let o=t.content.widgets.filter(({model:n})=>n.type!=="code");Promise.all(o.map(n=>n.ready)).then(()=>requestAnimationFrame(
()=>{t.isDisposed||e()}))}var st=decodeURIComponent(location.hash.slice(1));function Xt(t){if(st){for(let e of t.content.
node.querySelectorAll(".jp-RenderedMarkdown :is(h1, h2, h3)"))if(Q(e.textContent??"")===st){e.tabIndex=-1,e.focus({preventScroll:!0}),
e.scrollIntoView({block:"start"});return}}}function ct(){let t=S("a",{href:"#",class:"twoshaft-skip",onclick:e=>{e.preventDefault(),
[...document.querySelectorAll(".twoshaft-bar")].find(s=>s.checkVisibility())?.querySelector("a")?.focus()}},"To the star\
t page, lesson and tasks");document.body.prepend(S("nav",{"aria-label":"First"},t))}var Yt=t=>t/2**32|0,Qt=t=>t>>>0;function it(t,e,o,n){let s=Yt(o),r=Qt(o);t.setUint32(e,n?r:s,n),t.setUint32(e+4,n?s:r,n)}function at(t){return t instanceof Uint8Array||ArrayBuffer.isView(t)&&t.constructor.name==="Uint8Array"&&"BYTES_PER_ELEM\
ENT"in t&&t.BYTES_PER_ELEMENT===1}var F=t=>t?`"${t}" `:"";function Vt(t,e=""){if(typeof t!="number")throw new TypeError(
F(e)+"expected number, got "+typeof t);if(!Number.isSafeInteger(t)||t<0)throw new RangeError(F(e)+"expected integer >= 0\
, got "+t);return t}function _(t,e,o=""){if(at(t)&&(e===void 0||t.length===e))return t;e!==void 0&&Vt(e,"length");let n=at(t),s=e!==void 0?`\
 of length ${e}`:"",r=n?`length=${t.length}`:`type=${typeof t}`,c=F(o)+"expected Uint8Array"+s+", got "+r;throw n?new RangeError(
c):new TypeError(c)}var Zt=(t,e)=>{if(t===null||typeof t!="object"||Array.isArray(t))throw new TypeError((e==="object"?"":`"${e}" `)+"expect\
ed object, got type="+typeof t)},ft=(t,e)=>{Zt(t,e);let o=Object.getPrototypeOf(t);if(o!==Object.prototype&&o!==null)throw new TypeError(
`"${e}" expected plain object`);if(Object.hasOwn(t,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};
function j(t,e=!0){if(t.destroyed)throw new Error("hash was destroyed");if(e&&t.finished)throw new Error("digest() was a\
lready called")}function lt(t,e){_(t,void 0,"output");let o=e.outputLen;if(!(t.length>=o))throw new RangeError('"output"\
 expected length >= '+o)}function M(...t){for(let e=0;e<t.length;e++)t[e].fill(0)}function U(t){return new DataView(t.buffer,t.byteOffset,t.byteLength)}
function k(t,e){return t<<32-e|t>>>e}var te=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",ee=Array.from({length:256},(t,e)=>e.
toString(16).padStart(2,"0"));function dt(t){if(_(t),te)return t.toHex();let e="";for(let o=0;o<t.length;o++)e+=ee[t[o]];
return e}function ut(t){if(typeof t!="string")throw new TypeError("string expected");let e=new TextEncoder().encode(t);try{return new Uint8Array(
e)}finally{M(e)}}function oe(t,e,o="opts"){return ft(t,"defaults"),e!==void 0&&ft(e,o),Object.assign(Object.create(null),t,e)}function ht(t,e={}){
if(typeof t!="function")throw new TypeError('"hashCons" expected function, got type='+typeof t);e=oe({},e,"info");let o=(s,r)=>t(
r).update(s).digest(),n=t(void 0);return o.outputLen=n.outputLen,o.blockLen=n.blockLen,o.canXOF=n.canXOF,o.create=s=>t(s),
Object.assign(o,e),Object.freeze(o)}var xt=t=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,t])});function pt(t,e,o){return t&e^~t&o}function bt(t,e,o){return t&e^t&o^e&o}var D=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,o,n,s){
this.blockLen=e,this.outputLen=o,this.padOffset=n,this.isLE=s,this.buffer=new Uint8Array(e),this.view=U(this.buffer)}update(e){
j(this),_(e);let{view:o,buffer:n,blockLen:s}=this,r=e.length,c=!1;for(let i=0;i<r;){let a=Math.min(s-this.pos,r-i);if(a===
s){let d=U(e);for(;s<=r-i;i+=s)this.process(d,i);c=!0;continue}n.set(i===0&&a===r?e:e.subarray(i,i+a),this.pos),this.pos+=
a,i+=a,this.pos===s&&(this.process(o,0),this.pos=0,c=!0)}return this.length+=e.length,c&&this.roundClean(),this}digestInto(e){
j(this),lt(e,this),this.finished=!0;let{buffer:o,view:n,blockLen:s,isLE:r}=this,{pos:c}=this;o[c++]=128,o.fill(0,c),this.
padOffset>s-c&&(this.process(n,0),o.fill(0)),it(n,s-8,this.length*8,r),this.process(n,0),this.roundClean();let i=e===o?n:
U(e),a=this.outputLen,d=a/4,h=this.get();if(a%4||d>h.length)throw new Error("invalid outputLen");for(let u=0;u<d;u++)i.setUint32(
4*u,h[u],r)}digest(){let{buffer:e,outputLen:o}=this;this.digestInto(e);let n=e.slice(0,o);return this.destroy(),n}_cloneIntoMeta(e){
let{buffer:o,length:n,finished:s,destroyed:r,pos:c}=this;return e.destroyed=r,e.finished=s,e.length=n,e.pos=c,c&&e.buffer.
set(o),e}clone(){return this._cloneInto()}},gt=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,
2600822924,528734635,1541459225]);var ne=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,
310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,
1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,
773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,
3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,
1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),L=new Uint32Array(64),P=class extends D{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,o){
super(64,e,8,!1),this.A=o[0]|0,this.B=o[1]|0,this.C=o[2]|0,this.D=o[3]|0,this.E=o[4]|0,this.F=o[5]|0,this.G=o[6]|0,this.
H=o[7]|0}get(){let{A:e,B:o,C:n,D:s,E:r,F:c,G:i,H:a}=this;return[e,o,n,s,r,c,i,a]}set(e,o,n,s,r,c,i,a){this.A=e|0,this.B=
o|0,this.C=n|0,this.D=s|0,this.E=r|0,this.F=c|0,this.G=i|0,this.H=a|0}_cloneInto(e){return(e||=new this.constructor).set(
...this.get()),this._cloneIntoMeta(e)}process(e,o){for(let u=0;u<16;u++,o+=4)L[u]=e.getUint32(o,!1);for(let u=16;u<64;u++){
let g=L[u-15],p=L[u-2],m=k(g,7)^k(g,18)^g>>>3,f=k(p,17)^k(p,19)^p>>>10;L[u]=f+L[u-7]+m+L[u-16]|0}let{A:n,B:s,C:r,D:c,E:i,
F:a,G:d,H:h}=this;for(let u=0;u<64;u++){let g=k(i,6)^k(i,11)^k(i,25),p=h+g+pt(i,a,d)+ne[u]+L[u]|0,f=(k(n,2)^k(n,13)^k(n,
22))+bt(n,s,r)|0;h=d,d=a,a=i,i=c+p|0,c=r,r=s,s=n,n=p+f|0}n=n+this.A|0,s=s+this.B|0,r=r+this.C|0,c=c+this.D|0,i=i+this.E|
0,a=a+this.F|0,d=d+this.G|0,h=h+this.H|0,this.set(n,s,r,c,i,a,d,h)}roundClean(){M(L)}destroy(){this.destroyed=!0,this.set(
0,0,0,0,0,0,0,0),M(this.buffer)}},G=class extends P{constructor(){super(32,gt)}};var wt=ht(()=>new G,xt(1));var mt="setup",yt=[mt,"form","rig"],se=[...yt,"mark"];function re(t){return dt(wt(ut(t.replace(/\r\n?/g,`
`).replace(/\n+$/,""))))}var C=t=>t.getMetadata("tags")||[],St=t=>C(t).includes(mt),H=t=>C(t).some(e=>se.includes(e));function B(t,e){
return t.content.widgets.filter(({model:o})=>o.type==="code"&&C(o).some(n=>yt.includes(n))&&e.has(re(o.sharedModel.getSource())))}
function q({model:{outputs:t}}){for(let e=0;e<t.length;e+=1)if(t.get(e).type==="error")return!0;return!1}function R(t){return JSON.
stringify(t.content.widgets.map(({model:e})=>[e.sharedModel.getSource(),H(e)?null:e.executionCount??null]))}function K(t){let e=t.session?.kernel;return e?.connectionStatus==="connected"&&!["dead","terminating"].includes(e.status)}
var Et=new WeakSet;function kt(t,e,o){if(Et.has(t)||t.isDisposed)return;Et.add(t);let n=!1,s=async()=>{if(!n){for(n=!0;!t.
isDisposed&&(await new Promise(c=>setTimeout(c,1e3)),!(t.isDisposed||K(e)));)try{await o.refreshRunning();let c=e.session?.
kernel;if(K(e))break;!c||["dead","terminating"].includes(c.status)?await e.startKernel():c.connectionStatus==="disconnec\
ted"&&await c.reconnect()}catch{}n=!1}},r=()=>{!t.isDisposed&&!K(e)&&!e.isRestarting&&s()};e.connectionStatusChanged.connect(
r),e.statusChanged.connect(r),e.sessionChanged.connect(r),e.kernelChanged.connect(r),r()}var ce=1e3,ie=1800,ae=":is(.tsh-picture, .ts-scroll, .ts-unit)";function fe(t){let e=C(t);return t.type!=="code"?e.includes(
"if-missing")?"hidden":"text":e.includes("form")||e.includes("predict")?"form":e.includes("rig")?"given":H(t)?"hidden":"\
own"}var At=(t,e)=>({nodes:t,beside:e,heights:[],whole:0,from:0,room:0,stage:""}),le=t=>t.type!=="code"&&/^#{1,2} /m.test(
t.sharedModel.getSource());function Lt(t){let e=t.content.node,o=e.querySelector(".jp-WindowedPanel-outer")??e,n=[],s=()=>{
let g=o.clientHeight;for(let{left:p,right:m}of n){let f=p.nodes.some(b=>b.querySelector(ae)),[l]=m.nodes,x=l.querySelector(
".ts-pictures")!==null;for(let b of[...p.nodes,l])b.classList.toggle("twoshaft-broad",f),b.classList.toggle("twoshaft-na\
rrow",!f&&x);for(let b of[p,m])b.heights=b.nodes.map(E=>E.getBoundingClientRect().height),b.whole=b.heights.reduce((E,y)=>E+
y,0),b.from=Math.min(0,g-b.whole),b.stage="";p.room=m.whole;let w=m.whole<=g&&!l.querySelector(".ts-question");m.room=w?
p.whole:0}r()},r=()=>{let g=o.getBoundingClientRect().top,p=n.flatMap(({left:f,right:l})=>[f,l]),m=p.map(f=>{let l=Math.
max(0,f.room-f.whole),x=f.from-(f.beside.getBoundingClientRect().top-g);return{stage:x<=0||!l?"before":x<l?"within":`pas\
t ${l}`,spare:l}});p.forEach((f,l)=>{let{stage:x,spare:w}=m[l];if(x===f.stage)return;f.stage=x;let b=0;f.nodes.forEach((E,y)=>{
let v=b+(x.startsWith("past")?w:0);E.style.position=x==="within"?"sticky":"relative",E.style.top=x==="within"?`${f.from+
b}px`:"auto",E.style.marginTop=`${v}px`,E.style.marginBottom=`${f.whole-b-f.heights[y]}px`,b+=f.heights[y]})})},c=()=>{for(let g of n.
flatMap(({left:p,right:m})=>[p,m])){g.stage="";for(let{style:p}of g.nodes)for(let m of["position","top","margin-top","ma\
rgin-bottom"])p.removeProperty(m)}},i=()=>e.classList.contains("twoshaft-wide"),a=()=>{let g=document.documentElement.getAttribute(
"data-ts-print")==="large";e.classList.toggle("twoshaft-wide",e.clientWidth>=(g?ie:ce)),i()?s():c()};o.addEventListener(
"scroll",()=>i()&&r(),{passive:!0});let d=0,h=new ResizeObserver(()=>{cancelAnimationFrame(d),d=requestAnimationFrame(a)}),
u=()=>{let{widgets:g}=t.content,p=V(g.map(({model:f})=>({part:fe(f),begins:le(f)})));c(),h.disconnect(),h.observe(e);let m=new Map;
n=[],g.forEach(({node:f},l)=>{let{row:x,side:w}=p[l];if(f.style.gridRow=String(x),f.dataset.twoshaftSide=w,w==="both")return;
h.observe(f);let b=m.get(x)??[];m.set(x,b),w==="left"?b.push(f):n.push({left:At(b,f),right:At([f],b[0]??f)})}),a()};u(),
t.content.model.cells.changed.connect(()=>setTimeout(()=>!t.isDisposed&&u(),0)),t.disposed.connect(()=>h.disconnect())}var de=".twoshaft svg[viewBox]",ue=1.7;function Ct(t){let e=$(t,de).filter(n=>n.querySelector("text")),o=e.map(n=>{let s=n.
getScreenCTM();return s?Math.hypot(s.a,s.b):1});e.forEach((n,s)=>{let r=Number(n.dataset.grow)||ue,c=Math.min(r,Math.max(
1,1/(o[s]||1))).toFixed(3);n.style.getPropertyValue("--ts-grown")!==c&&n.style.setProperty("--ts-grown",c)})}var O=window.matchMedia("(max-width: 600px), (max-height: 400px)");function Tt(t){let e=()=>{for(let o of["left","right"])
t.isSideTabBarVisible?.(o)===O.matches&&t.toggleSideTabBarVisibility(o)};O.addEventListener("change",e),e()}function Ht(t){
let e=()=>{t.toolbar.setHidden(O.matches),t.fit()};O.addEventListener("change",e),t.disposed.connect(()=>O.removeEventListener(
"change",e)),e()}var he=":is(.twoshaft :is(.given-frame, .tsg-wide, .tsl-drawing), .jp-RenderedHTML figure)";function xe(t){let e=t.scrollWidth>
t.clientWidth;if(e!==t.hasAttribute("tabindex")){if(!e){for(let o of["tabindex","role","aria-label"])t.removeAttribute(o);
return}t.tabIndex=0,t.setAttribute("role","group"),t.setAttribute("aria-label",t.querySelector("caption")?"Wide table":"\
Picture")}}var Bt=t=>$(t,he).forEach(xe);function Ot(t,e){let o=t.content.node,n=0,s=()=>{clearTimeout(n),n=setTimeout(()=>e(o),300)},r=new MutationObserver(s);r.
observe(o,{childList:!0,subtree:!0});let c=new ResizeObserver(s);c.observe(o),t.disposed.connect(()=>{clearTimeout(n),r.
disconnect(),c.disconnect()})}var A="twoshaft-opener",pe="if-missing",vt="twoshaft-opening",be=["form","rig"],ge=3,Ut=300;async function Dt(t){let[{PageConfig:e,
URLExt:o},{NotebookActions:n},{IConnectionLost:s},{Widget:r}]=await Promise.all([t("@jupyterlab/coreutils"),t("@jupyterl\
ab/notebook"),t("@jupyterlab/application"),t("@lumino/widgets")]),c=o.join(e.getBaseUrl(),"lab/tree"),i=we(e,n,{Widget:r,
tree:c});if(e.getOption("twoshaftRole")!=="apprentice")return[i];let a={id:`${A}:line`,description:"Leaves it to the cou\
rse's screens to say that the server cannot be reached.",autoStart:!0,provides:s,activate:()=>async()=>{}};return[i,a]}function we(t,e,o){
let n=`${t.getOption("fullLabextensionsUrl")}/${A}/static`;return{id:`${A}:plugin`,description:"Shows the forms and rigs\
 of a course notebook as soon as it is opened.",autoStart:!0,activate:s=>{me(n);let r=t.getOption("twoshaftRole")==="app\
rentice",c=t.getOption("twoshaftDesk");if(!r&&!c)return;document.head.append(S("style",{},`.twoshaft {
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
 3}.twoshaft-wide .jp-Cell[data-twoshaft-side=right].twoshaft-narrow{grid-column:4 / span 9}.twoshaft-wide .jp-Cell[data\
-twoshaft-side=left] .twoshaft table{font-size:var(--ts-small)}@media(max-width:700px){.twoshaft-notebook .jp-RenderedHT\
ML figure{overflow-x:auto;min-width:0;max-width:100%}.twoshaft-notebook .jp-RenderedHTML figure>:is(svg,img){max-width:n\
one}}.twoshaft-desk-notebook .jp-NotebookPanel-toolbar{display:none}`)),r&&ye(s);let i=JSON.parse(t.getOption("twoshaftR\
eleased")||"[]"),a=r?Se(n,i):Promise.resolve(new Set(i));s.restored.then(()=>{s.shell.collapseLeft?.(),s.shell.collapseRight?.(),
ct(),Tt(s.shell),r&&(s.shell.addButtonEnabled=!1)}),s.docRegistry.addWidgetExtension("Notebook",{createNew:(d,h)=>{!r&&h.
path!==c||(d.toggleClass("twoshaft-desk-notebook",!r),Le(d,h,a,e,s),ke(d,h,{...o,contents:s.serviceManager.contents}))}})}}}
function me(t){globalThis.twoshaftScreens??=new Map;let e=import(`${t}/screens.js?v=2752dfe140a1da1a`);globalThis.twoshaftScreens.
set("2752dfe140a1da1a",e),e.catch(o=>{globalThis.twoshaftScreens?.delete("2752dfe140a1da1a"),console.warn(`${A}: the scr\
eens could not be loaded`,o)})}function ye(t){document.addEventListener("click",e=>{let o=et(e,"a[data-twoshaft-open]");
!o||e.ctrlKey||e.metaKey||e.shiftKey||(e.preventDefault(),t.commands.execute("docmanager:open",{path:o.dataset.twoshaftOpen}))}),
document.addEventListener("twoshaft-signed-out",()=>{for(let e of[...t.shell.widgets("main")])e!==t.shell.currentWidget&&
e.close()})}async function Se(t,e){let o=new Set(e);try{let n=await fetch(`${t}/released-cells.json`);if(n.ok)for(let s of(await n.
json()).cells)o.add(s)}catch(n){console.warn(`${A}: the list of released cells could not be read`,n)}return o}function Rt(t){
return new Promise((e,o)=>{let n=()=>{t.isDisposed?s(()=>o(new Error("closed"))):t.session?.kernel?.status==="idle"&&s(e)},
s=r=>{t.statusChanged.disconnect(n),t.disposed.disconnect(n),r()};t.statusChanged.connect(n),t.disposed.connect(n),n()})}
async function $t(t,e,o){let n=t.sessionContext;for(let s=0;s<ge;s+=1){await Rt(n);let r=B(t,e).filter(({model:i})=>i.executionCount===
null);if(!r.length)return;let c=r.filter(({model:i})=>St(i));for(let i of[c,r.filter(a=>!c.includes(a))])if(i.length&&(await o.
runCells(t.content,i,n),i.some(q)))return;await new Promise(i=>setTimeout(i,Ut))}}var Ee=({model:t})=>t.executionCount===
null&&t.executionState!=="running"&&!t.outputs.length,J=t=>!!t.content.model?.getMetadata("twoshaft")?.open;function _t(t){
if(t.isDisposed||!t.content.model)return;let e=J(t);if(t.toggleClass("twoshaft-notebook",e),!!e)for(let o of t.content.widgets)
o.toggleClass("twoshaft-quiet",H(o.model)),o.toggleClass("twoshaft-if-missing",C(o.model).includes(pe)),o.toggleClass("t\
woshaft-shows",C(o.model).some(n=>be.includes(n)))}async function ke(t,e,o){await e.ready,!(t.isDisposed||!J(t))&&(T(e.path).
kind!=="start"&&Lt(t),Ot(t,n=>{Bt(n),Ct(n)}),Ht(t),await rt(t,e,o))}function Ae(t,e){let o=R(t),n=(c,i)=>{i==="completed"&&
(o=R(t))},s=()=>{t.isDisposed||!e.model.dirty||R(t)!==o||(e.model.dirty=!1)},r=(c,{name:i,newValue:a})=>{i==="dirty"&&a&&
setTimeout(s,0)};e.saveState.connect(n),e.model.stateChanged.connect(r),s()}var Mt=new WeakMap;async function Le(t,e,o,n,s){
if(await e.ready,t.isDisposed||(_t(t),t.content.model.cells.changed.connect(()=>setTimeout(()=>_t(t),0)),!J(t)))return;Ae(
t,e);let r=t.sessionContext,c=Mt.get(e)??new Set;Mt.set(e,c);let i=()=>r.session?.kernel?.id,a=0,d=async()=>{a+=1,t.addClass(
vt);try{await r.ready,await Rt(r);let l=i();if(t.isDisposed||c.has(l))return;c.add(l);let x=await o;for(let{model:w}of B(
t,x))w.executionCount=null;await $t(t,x,n)}finally{a-=1,t.toggleClass(vt,a>0),u()}},h,u=()=>{clearTimeout(h),h=window.setTimeout(
async()=>{if(a||t.isDisposed||r.session?.kernel?.status!=="idle")return;let l=B(t,await o);for(let w of l)w.outputHidden&&
(w.outputHidden=!1),p(w);let{model:x}=t.content;if(!(!c.has(i())||x?.isDisposed)&&!(!l.some(Ee)||l.some(q))){a+=1;try{await $t(
t,await o,n)}finally{a-=1}}},Ut)},g=new WeakSet,p=({model:l})=>{g.has(l)||(g.add(l),l.outputs.changed.connect(u))};t.content.
model.cells.changed.connect(u),s.commands.commandExecuted.connect(u),t.node.addEventListener("twoshaft-redraw",async()=>{
let l=B(t,await o);t.isDisposed||await n.runCells(t.content,l,r)});let m=()=>d().catch(l=>{t.isDisposed||console.warn(`${A}\
: the forms could not be shown`,l)}).finally(()=>kt(t,r,s.serviceManager.sessions)),f=(l,x)=>{x!=="restarting"&&x!=="aut\
orestarting"||(c.delete(i()),m())};r.statusChanged.connect(f),r.kernelChanged.connect((l,{newValue:x})=>{x&&m()}),m()}var It;async function Ce(t){let e=Object.values(It[t]||{});if(!e.length)throw new Error(`${t} is not there`);return(await(e.
find(n=>n.loaded)||e[0]).get())()}window._JUPYTERLAB??={};window._JUPYTERLAB[A]={init:t=>{It=t},get:async t=>{if(t!=="./\
extension")throw new Error(`${A} has no ${t}`);let e=await Dt(Ce);return()=>({__esModule:!0,default:e})}};})();
