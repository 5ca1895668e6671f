"use strict";(()=>{var J="start-here.ipynb",It="desk.ipynb",X="twoshaft-mine";function H(t){let e=t.split("/"),n=e.pop()??"",o=e.at(-1)??"",
s=new Map([[J,"start"],[It,"desk"]]),r=s.get(n)??(o==="lessons"?"lesson":"exercise"),i=s.has(n)?0:["lessons","exercises"].
includes(o)?1:2,c=e.slice(0,Math.max(0,e.length-i)).join("/");return{kind:r,file:n,base:c&&`${c}/`}}var R=t=>/^(\d\d)-/.
exec(t)?.[1]??"";function Y(t,e,n){let{kind:o,file:s,base:r}=H(t);if(o==="start"||o==="desk")return[];let i=[];e.start&&
i.push(["Start page",r+J]);let c=R(s),a=c&&` ${c}`,d=n[s]??(e.practice.includes(s)?`exercises/${s}`:void 0);return o==="\
lesson"?(i.push([c?`Lesson ${c}`:"Glossary",""]),d&&i.push([`Exercise${a}`,r+d])):(e.lessons.includes(s)&&i.push([`Lesso\
n${a}`,`${r}lessons/${s}`]),i.push([`Exercise${a}`,""])),e.lessons.includes("glossary.ipynb")&&s!=="glossary.ipynb"&&i.push(
["Glossary",`${r}lessons/glossary.ipynb`]),i}var z=t=>t.toLowerCase().replace(/[^\p{L}\p{N}]+/gu,"-").replace(/^-|-$/g,"");
function Q(t){let e=[],n=!1;t.forEach(({part:r,begins:i},c)=>{let a=r==="text"||r==="given";(!e.length||i||r==="own"||n&&
a)&&(e.push([]),n=!1),e[e.length-1].push(c),(r==="form"||r==="own")&&(n=!0)});let o=[],s=0;for(let r of e){let i=r.map(d=>t[d].
part),c=i.filter(d=>d==="form").length===1&&i.some(d=>d==="text"||d==="given");c&&(s+=1);let a=s;for(let d of r){let{part:x}=t[d];
c&&x!=="hidden"?o[d]={row:a,side:x==="form"?"right":"left"}:(s+=1,o[d]={row:s,side:"both"})}}return o}function V(t){let e=t.
filter(r=>r!==void 0);if(!e.length)return["","opening"];let[n,o,s]=["answered","asked","unread"].map(r=>e.reduce((i,c)=>i+
c[r],0));return s?["▲",`${s} cannot be read, ${n} of ${o} answered`]:n===o?["●","done"]:n?["◐",`${n} of ${o} answe\
red`]:["○","not begun"]}function m(t,e={},...n){let o=document.createElement(t);for(let[s,r]of Object.entries(e))typeof r=="function"?o.addEventListener(
s.slice(2),r):r===!0?o.setAttribute(s,""):r!==!1&&r!=null&&o.setAttribute(s,String(r));return o.append(...Nt(n)),o}function Z(t){return m("span",{class:"ts-shape","aria-hidden":"true"},t)}function Nt(t){return t.filter(e=>e!=null&&e!==
!1)}function tt(t,e){return[...t.querySelectorAll(e)]}function et(t,e){let{target:n}=t;return n instanceof Element?n.closest(
e):null}var Wt=120;async function I(t,e){try{let{content:n}=await t.get(e,{content:!0});return n.map(({name:o})=>o)}catch{return[]}}
var nt=new Map;function Ft(t,e){let n=e.replace(/\/$/,""),o=nt.get(n)??I(t,n).then(async s=>({start:s.includes("start-he\
re.ipynb"),lessons:s.includes("lessons")?await I(t,`${e}lessons`):[],practice:s.includes("exercises")?await I(t,`${e}exe\
rcises`):[]}));return nt.set(n,o),o}function jt(){try{return JSON.parse(localStorage.getItem(X)??"{}")}catch{return{}}}var Gt=(t,e)=>`${e}\
/${t.split("/").map(encodeURIComponent).join("/")}`;function ot(t,e){return m("ul",{class:"ts-ways"},...t.map(([n,o])=>m(
"li",{},o?m("a",{href:Gt(o,e),"data-twoshaft-open":o},n):m("b",{"aria-current":"page"},n))))}function Pt(t){let{node:e,widgets:n}=t.
content,o=e.querySelector(".jp-WindowedPanel-outer")??e,s=m("a",{href:"#",class:"ts-next-task"}),r=new Map,i=l=>{let f=l.
node.querySelector("h2");f&&(f.tabIndex=-1,f.focus({preventScroll:!0})),l.node.scrollIntoView({block:"start"})},c=(l,f,w)=>({
cell:l,number:f,title:w,forms:new Set,link:m("a",{href:"#",onclick:b=>{b.preventDefault(),i(l)}})}),a=[];for(let l of n){
let{type:f,sharedModel:w}=l.model,[,b,y]=/^## (\d+)\. (.*)/m.exec(w.getSource())??[];f!=="code"&&b&&a.push(c(l,b,y))}let d=m(
"ol",{class:"ts-tasks","aria-label":"Tasks"},...a.map(({link:l})=>m("li",{},l))),x=m("div",{class:"ts-task-row"},d,s),u=({
forms:l})=>V([...l].map(f=>r.get(f))),g=()=>a.find(l=>u(l)[1]!=="done");s.addEventListener("click",l=>{l.preventDefault();
let f=g();f&&i(f.cell)});let h=()=>{let l=o.getBoundingClientRect().top+Wt,f=a.filter(({cell:S})=>S.node.getBoundingClientRect().
top<l),b=o.scrollTop+o.clientHeight>=o.scrollHeight-1&&f.length?a.at(-1):f.at(-1);for(let S of a){let[K,Rt]=u(S);S===b?S.
link.setAttribute("aria-current","step"):S.link.removeAttribute("aria-current");let M=`Task ${S.number}, ${S.title}: ${Rt}`;
S.link.title!==M&&(S.link.title=M,S.link.setAttribute("aria-label",M),S.link.replaceChildren(S.number,K?Z(K):""))}b&&x.scrollWidth>
x.clientWidth&&(x.scrollLeft=b.link.offsetLeft-x.clientWidth/2);let y=g(),C=y?`Next: task ${y.number}`:"All tasks are an\
swered";s.textContent!==C&&(s.textContent=C)};e.addEventListener("twoshaft-progress",({target:l,detail:f})=>{let w=l,b=a.
filter(({cell:y})=>y.node.compareDocumentPosition(w)&Node.DOCUMENT_POSITION_FOLLOWING);r.set(f.task,f),b.at(-1)?.forms.add(
f.task),h()});let p=0;return o.addEventListener("scroll",()=>{cancelAnimationFrame(p),p=requestAnimationFrame(h)},{passive:!0}),
h(),a.length?x:null}async function rt(t,e,{Widget:n,contents:o,tree:s}){let{kind:r,base:i,file:c}=H(e.path);if(r==="star\
t"||r==="desk")return;let a=r==="exercise"?Pt(t):null,d=m("nav",{class:"twoshaft twoshaft-bar","aria-label":"Course"});d.
classList.toggle("ts-with-tasks",a!==null);let x=new n({node:d});t.layout.insertWidget(0,x),t.content.node.before(d);let u=m(
"nav",{class:"twoshaft twoshaft-ways","aria-label":"Ways on"});t.content.node.querySelector(".jp-WindowedPanel-outer")?.
append(u);let g=async()=>{let h=Y(e.path,await Ft(o,i),jt());d.replaceChildren(ot(h,s),...a?[a]:[]),u.replaceChildren(ot(
h,s))};await g(),r==="lesson"&&(window.addEventListener("storage",g),t.disposed.connect(()=>window.removeEventListener("\
storage",g)),(R(c)||c==="glossary.ipynb")&&qt(t,()=>Kt(t)))}function qt(t,e){let n=t.content.widgets.filter(({model:o})=>o.
type!=="code");Promise.all(n.map(o=>o.ready)).then(()=>requestAnimationFrame(()=>{t.isDisposed||e()}))}var st=decodeURIComponent(
location.hash.slice(1));function Kt(t){if(st){for(let e of t.content.node.querySelectorAll(".jp-RenderedMarkdown :is(h1,\
 h2, h3)"))if(z(e.textContent??"")===st){e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"});return}}}
function ct(){let t=m("a",{href:"#",class:"twoshaft-skip",onclick:e=>{e.preventDefault(),[...document.querySelectorAll("\
.twoshaft-bar")].find(s=>s.checkVisibility())?.querySelector("a")?.focus()}},"To the start page, lesson and tasks");document.
body.prepend(m("nav",{"aria-label":"First"},t))}var Jt=t=>t/2**32|0,Xt=t=>t>>>0;function it(t,e,n,o){let s=Jt(n),r=Xt(n);t.setUint32(e,o?r:s,o),t.setUint32(e+4,o?s:r,o)}function at(t){return t instanceof Uint8Array||ArrayBuffer.isView(t)&&t.constructor.name==="Uint8Array"&&"BYTES_PER_ELEM\
ENT"in t&&t.BYTES_PER_ELEMENT===1}var N=t=>t?`"${t}" `:"";function Yt(t,e=""){if(typeof t!="number")throw new TypeError(
N(e)+"expected number, got "+typeof t);if(!Number.isSafeInteger(t)||t<0)throw new RangeError(N(e)+"expected integer >= 0\
, got "+t);return t}function $(t,e,n=""){if(at(t)&&(e===void 0||t.length===e))return t;e!==void 0&&Yt(e,"length");let o=at(t),s=e!==void 0?`\
 of length ${e}`:"",r=o?`length=${t.length}`:`type=${typeof t}`,i=N(n)+"expected Uint8Array"+s+", got "+r;throw o?new RangeError(
i):new TypeError(i)}var zt=(t,e)=>{if(t===null||typeof t!="object"||Array.isArray(t))throw new TypeError((e==="object"?"":`"${e}" `)+"expect\
ed object, got type="+typeof t)},ft=(t,e)=>{zt(t,e);let n=Object.getPrototypeOf(t);if(n!==Object.prototype&&n!==null)throw new TypeError(
`"${e}" expected plain object`);if(Object.hasOwn(t,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};
function W(t,e=!0){if(t.destroyed)throw new Error("hash was destroyed");if(e&&t.finished)throw new Error("digest() was a\
lready called")}function lt(t,e){$(t,void 0,"output");let n=e.outputLen;if(!(t.length>=n))throw new RangeError('"output"\
 expected length >= '+n)}function _(...t){for(let e=0;e<t.length;e++)t[e].fill(0)}function U(t){return new DataView(t.buffer,t.byteOffset,t.byteLength)}
function E(t,e){return t<<32-e|t>>>e}var Qt=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",Vt=Array.from({length:256},(t,e)=>e.
toString(16).padStart(2,"0"));function dt(t){if($(t),Qt)return t.toHex();let e="";for(let n=0;n<t.length;n++)e+=Vt[t[n]];
return e}function ut(t){if(typeof t!="string")throw new TypeError("string expected");let e=new TextEncoder().encode(t);try{return new Uint8Array(
e)}finally{_(e)}}function Zt(t,e,n="opts"){return ft(t,"defaults"),e!==void 0&&ft(e,n),Object.assign(Object.create(null),t,e)}function ht(t,e={}){
if(typeof t!="function")throw new TypeError('"hashCons" expected function, got type='+typeof t);e=Zt({},e,"info");let n=(s,r)=>t(
r).update(s).digest(),o=t(void 0);return n.outputLen=o.outputLen,n.blockLen=o.blockLen,n.canXOF=o.canXOF,n.create=s=>t(s),
Object.assign(n,e),Object.freeze(n)}var xt=t=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,t])});function pt(t,e,n){return t&e^~t&n}function bt(t,e,n){return t&e^t&n^e&n}var v=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,n,o,s){
this.blockLen=e,this.outputLen=n,this.padOffset=o,this.isLE=s,this.buffer=new Uint8Array(e),this.view=U(this.buffer)}update(e){
W(this),$(e);let{view:n,buffer:o,blockLen:s}=this,r=e.length,i=!1;for(let c=0;c<r;){let a=Math.min(s-this.pos,r-c);if(a===
s){let d=U(e);for(;s<=r-c;c+=s)this.process(d,c);i=!0;continue}o.set(c===0&&a===r?e:e.subarray(c,c+a),this.pos),this.pos+=
a,c+=a,this.pos===s&&(this.process(n,0),this.pos=0,i=!0)}return this.length+=e.length,i&&this.roundClean(),this}digestInto(e){
W(this),lt(e,this),this.finished=!0;let{buffer:n,view:o,blockLen:s,isLE:r}=this,{pos:i}=this;n[i++]=128,n.fill(0,i),this.
padOffset>s-i&&(this.process(o,0),n.fill(0)),it(o,s-8,this.length*8,r),this.process(o,0),this.roundClean();let c=e===n?o:
U(e),a=this.outputLen,d=a/4,x=this.get();if(a%4||d>x.length)throw new Error("invalid outputLen");for(let u=0;u<d;u++)c.setUint32(
4*u,x[u],r)}digest(){let{buffer:e,outputLen:n}=this;this.digestInto(e);let o=e.slice(0,n);return this.destroy(),o}_cloneIntoMeta(e){
let{buffer:n,length:o,finished:s,destroyed:r,pos:i}=this;return e.destroyed=r,e.finished=s,e.length=o,e.pos=i,i&&e.buffer.
set(n),e}clone(){return this._cloneInto()}},gt=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,
2600822924,528734635,1541459225]);var te=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,
310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,
1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,
773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,
3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,
1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),A=new Uint32Array(64),F=class extends v{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,n){
super(64,e,8,!1),this.A=n[0]|0,this.B=n[1]|0,this.C=n[2]|0,this.D=n[3]|0,this.E=n[4]|0,this.F=n[5]|0,this.G=n[6]|0,this.
H=n[7]|0}get(){let{A:e,B:n,C:o,D:s,E:r,F:i,G:c,H:a}=this;return[e,n,o,s,r,i,c,a]}set(e,n,o,s,r,i,c,a){this.A=e|0,this.B=
n|0,this.C=o|0,this.D=s|0,this.E=r|0,this.F=i|0,this.G=c|0,this.H=a|0}_cloneInto(e){return(e||=new this.constructor).set(
...this.get()),this._cloneIntoMeta(e)}process(e,n){for(let u=0;u<16;u++,n+=4)A[u]=e.getUint32(n,!1);for(let u=16;u<64;u++){
let g=A[u-15],h=A[u-2],p=E(g,7)^E(g,18)^g>>>3,l=E(h,17)^E(h,19)^h>>>10;A[u]=l+A[u-7]+p+A[u-16]|0}let{A:o,B:s,C:r,D:i,E:c,
F:a,G:d,H:x}=this;for(let u=0;u<64;u++){let g=E(c,6)^E(c,11)^E(c,25),h=x+g+pt(c,a,d)+te[u]+A[u]|0,l=(E(o,2)^E(o,13)^E(o,
22))+bt(o,s,r)|0;x=d,d=a,a=c,c=i+h|0,i=r,r=s,s=o,o=h+l|0}o=o+this.A|0,s=s+this.B|0,r=r+this.C|0,i=i+this.D|0,c=c+this.E|
0,a=a+this.F|0,d=d+this.G|0,x=x+this.H|0,this.set(o,s,r,i,c,a,d,x)}roundClean(){_(A)}destroy(){this.destroyed=!0,this.set(
0,0,0,0,0,0,0,0),_(this.buffer)}},j=class extends F{constructor(){super(32,gt)}};var wt=ht(()=>new j,xt(1));var mt="setup",yt=[mt,"form","rig"],ee=[...yt,"mark"];function ne(t){return dt(wt(ut(t.replace(/\r\n?/g,`
`).replace(/\n+$/,""))))}var L=t=>t.getMetadata("tags")||[],St=t=>L(t).includes(mt),T=t=>L(t).some(e=>ee.includes(e));function B(t,e){
return t.content.widgets.filter(({model:n})=>n.type==="code"&&L(n).some(o=>yt.includes(o))&&e.has(ne(n.sharedModel.getSource())))}
function G({model:{outputs:t}}){for(let e=0;e<t.length;e+=1)if(t.get(e).type==="error")return!0;return!1}function D(t){return JSON.
stringify(t.content.widgets.map(({model:e})=>[e.sharedModel.getSource(),T(e)?null:e.executionCount??null]))}function P(t){let e=t.session?.kernel;return e?.connectionStatus==="connected"&&!["dead","terminating"].includes(e.status)}
var Et=new WeakSet;function kt(t,e,n){if(Et.has(t)||t.isDisposed)return;Et.add(t);let o=!1,s=async()=>{if(!o){for(o=!0;!t.
isDisposed&&(await new Promise(i=>setTimeout(i,1e3)),!(t.isDisposed||P(e)));)try{await n.refreshRunning();let i=e.session?.
kernel;if(P(e))break;!i||["dead","terminating"].includes(i.status)?await e.startKernel():i.connectionStatus==="disconnec\
ted"&&await i.reconnect()}catch{}o=!1}},r=()=>{!t.isDisposed&&!P(e)&&!e.isRestarting&&s()};e.connectionStatusChanged.connect(
r),e.statusChanged.connect(r),e.sessionChanged.connect(r),e.kernelChanged.connect(r),r()}var oe=1e3,se=1800,re=":is(.tsh-picture, .ts-scroll)";function ce(t){let e=L(t);return t.type!=="code"?e.includes("if-mi\
ssing")?"hidden":"text":e.includes("form")||e.includes("predict")?"form":e.includes("rig")?"given":T(t)?"hidden":"own"}var ie=t=>t.
type!=="code"&&/^#{1,2} /m.test(t.sharedModel.getSource());function At(t){let e=t.content.node,n=e.querySelector(".jp-Wi\
ndowedPanel-outer")??e,o=[],s=()=>{let g=n.clientHeight;for(let h of o){let p=h.left.some(l=>l.querySelector(re));for(let l of[
...h.left,h.right])l.classList.toggle("twoshaft-broad",p);h.heights=h.left.map(l=>l.getBoundingClientRect().height),h.whole=
h.heights.reduce((l,f)=>l+f,0),h.from=Math.min(0,g-h.whole),h.stage=""}r()},r=()=>{let g=n.getBoundingClientRect().top,h=o.
map(p=>{let{top:l,height:f}=p.right.getBoundingClientRect(),w=Math.max(0,f-p.whole),b=p.from-(l-g);return{stage:b<=0||!w?
"before":b<w?"within":`past ${w}`,spare:w}});o.forEach((p,l)=>{let{stage:f,spare:w}=h[l];if(f===p.stage)return;p.stage=f;
let b=0;p.left.forEach((y,C)=>{let S=b+(f.startsWith("past")?w:0);y.style.position=f==="within"?"sticky":"relative",y.style.
top=f==="within"?`${p.from+b}px`:"auto",y.style.marginTop=`${S}px`,y.style.marginBottom=`${p.whole-b-p.heights[C]}px`,b+=
p.heights[C]})})},i=()=>{for(let g of o){g.stage="";for(let{style:h}of g.left)for(let p of["position","top","margin-top",
"margin-bottom"])h.removeProperty(p)}},c=()=>e.classList.contains("twoshaft-wide"),a=()=>{let g=document.documentElement.
getAttribute("data-ts-print")==="large";e.classList.toggle("twoshaft-wide",e.clientWidth>=(g?se:oe)),c()?s():i()};n.addEventListener(
"scroll",()=>c()&&r(),{passive:!0});let d=0,x=new ResizeObserver(()=>{cancelAnimationFrame(d),d=requestAnimationFrame(a)}),
u=()=>{let{widgets:g}=t.content,h=Q(g.map(({model:l})=>({part:ce(l),begins:ie(l)})));i(),x.disconnect(),x.observe(e);let p=new Map;
o=[],g.forEach(({node:l},f)=>{let{row:w,side:b}=h[f];if(l.style.gridRow=String(w),l.dataset.twoshaftSide=b,b==="both")return;
x.observe(l);let y=p.get(w)??[];p.set(w,y),b==="left"?y.push(l):o.push({left:y,right:l,heights:[],whole:0,from:0,stage:""})}),
a()};u(),t.content.model.cells.changed.connect(()=>setTimeout(()=>!t.isDisposed&&u(),0)),t.disposed.connect(()=>x.disconnect())}var O=window.matchMedia("(max-width: 600px), (max-height: 400px)"),Lt=window.matchMedia("(max-width: 1100px)");function Ct(t){
let e=()=>{for(let n of["left","right"])t.isSideTabBarVisible?.(n)===O.matches&&t.toggleSideTabBarVisibility(n)};O.addEventListener(
"change",e),e()}function Ht(t){let e=()=>{t.toolbar.setHidden(O.matches),t.fit()};for(let n of[O,Lt])n.addEventListener(
"change",e);t.disposed.connect(()=>{for(let n of[O,Lt])n.removeEventListener("change",e)}),e()}var ae=".twoshaft :is(.given-frame, .tsg-wide)",fe=300;function le(t){let e=t.scrollWidth>t.clientWidth;if(e!==t.hasAttribute(
"tabindex")){if(!e){for(let n of["tabindex","role","aria-label"])t.removeAttribute(n);return}t.tabIndex=0,t.setAttribute(
"role","group"),t.setAttribute("aria-label",t.querySelector("caption")?.textContent??"Picture")}}function Tt(t){let e=t.
content.node,n=0,o=()=>{clearTimeout(n),n=setTimeout(()=>tt(e,ae).forEach(le),fe)},s=new MutationObserver(o);s.observe(e,
{childList:!0,subtree:!0});let r=new ResizeObserver(o);r.observe(e),t.disposed.connect(()=>{clearTimeout(n),s.disconnect(),
r.disconnect()})}var k="twoshaft-opener",de="if-missing",Bt="twoshaft-opening",ue=["form","rig"],he=3,Ut=300;async function vt(t){let[{PageConfig:e,
URLExt:n},{NotebookActions:o},{IConnectionLost:s},{Widget:r}]=await Promise.all([t("@jupyterlab/coreutils"),t("@jupyterl\
ab/notebook"),t("@jupyterlab/application"),t("@lumino/widgets")]),i=n.join(e.getBaseUrl(),"lab/tree"),c=xe(e,o,{Widget:r,
tree:i});if(e.getOption("twoshaftRole")!=="apprentice")return[c];let a={id:`${k}:line`,description:"Leaves it to the cou\
rse's screens to say that the server cannot be reached.",autoStart:!0,provides:s,activate:()=>async()=>{}};return[c,a]}function xe(t,e,n){
let o=`${t.getOption("fullLabextensionsUrl")}/${k}/static`;return{id:`${k}:plugin`,description:"Shows the forms and rigs\
 of a course notebook as soon as it is opened.",autoStart:!0,activate:s=>{pe(o);let r=t.getOption("twoshaftRole")==="app\
rentice",i=t.getOption("twoshaftDesk");if(!r&&!i)return;document.head.append(m("style",{},`.twoshaft {
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
html[data-ts-print="large"] .twoshaft { --ts-small: 18px; --ts-text: 21px; --ts-head: 26px; }
html[data-ts-print="large"] { --jp-content-font-size1: 21px; --jp-content-font-size2: 26px; --jp-content-font-size3: 26p\
x; --jp-content-font-size4: 30px; --jp-content-font-size5: 34px; --jp-ui-font-size1: 18px; --jp-code-font-size: 21px; }
html[data-ts-print="large"] :is(.twoshaft, .jp-RenderedHTML, figure) svg:not(svg *) { zoom: 1.4; --ts-small: 13px; --ts-\
text: 15px; --ts-head: 18px; }
html[data-ts-print="large"] figure > svg.twoshaft-figure { max-width: none; max-height: none; }
html[data-ts-print="large"] .jp-RenderedImage img { zoom: 1.4; max-width: none; }
html[data-ts-print="large"] :is(.jp-RenderedImage, figure) { overflow-x: auto; min-width: 0; max-width: 100%; }
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
ex:none;max-width:none;overflow:visible}}@media(max-width:1100px)and (min-height:401px){.twoshaft-notebook>.twoshaft-bar\
.ts-with-tasks{min-height:66px}}.twoshaft-ways{margin:16px 14px 32px;padding:8px 0;border-top:1px solid var(--ts-line)}.\
twoshaft-ways ul{flex-wrap:wrap}.twoshaft-notebook .twoshaft-wide .jp-WindowedPanel-viewport{display:grid;grid-template-\
columns:repeat(12,minmax(0,1fr))}.twoshaft-wide .jp-Cell[data-twoshaft-side=both]{grid-column:1 / -1}.twoshaft-wide .jp-\
Cell[data-twoshaft-side=left]{grid-column:1 / span 6;align-self:start}.twoshaft-wide .jp-Cell[data-twoshaft-side=right]{\
grid-column:7 / span 6;align-self:start}.twoshaft-wide .jp-Cell[data-twoshaft-side=right]:has(.ts-question){align-self:e\
nd}.twoshaft-wide .jp-Cell[data-twoshaft-side=left].twoshaft-broad{grid-column:1 / span 8}.twoshaft-wide .jp-Cell[data-t\
woshaft-side=right].twoshaft-broad{grid-column:9 / span 4}.twoshaft-wide .jp-Cell[data-twoshaft-side=left] .twoshaft tab\
le{font-size:var(--ts-small)}@media(max-width:700px){.twoshaft-notebook .jp-RenderedImage,.twoshaft-notebook .jp-Rendere\
dHTML figure{overflow-x:auto}.twoshaft-notebook .jp-RenderedHTML figure{min-width:0;max-width:100%}.twoshaft-notebook :i\
s(.jp-RenderedImage img,.jp-RenderedHTML figure>svg){max-width:none}}.twoshaft-desk-notebook .jp-NotebookPanel-toolbar{d\
isplay:none}`)),r&&be(s);let c=JSON.parse(t.getOption("twoshaftReleased")||"[]"),a=r?ge(o,c):Promise.resolve(new Set(c));
s.restored.then(()=>{s.shell.collapseLeft?.(),s.shell.collapseRight?.(),ct(),Ct(s.shell)}),s.docRegistry.addWidgetExtension(
"Notebook",{createNew:(d,x)=>{!r&&x.path!==i||(d.toggleClass("twoshaft-desk-notebook",!r),Se(d,x,a,e,s),me(d,x,{...n,contents:s.
serviceManager.contents}))}})}}}function pe(t){globalThis.twoshaftScreens??=new Map;let e=import(`${t}/screens.js?v=68d8\
d56e9f447d17`);globalThis.twoshaftScreens.set("68d8d56e9f447d17",e),e.catch(n=>{globalThis.twoshaftScreens?.delete("68d8\
d56e9f447d17"),console.warn(`${k}: the screens could not be loaded`,n)})}function be(t){document.addEventListener("click",
e=>{let n=et(e,"a[data-twoshaft-open]");!n||e.ctrlKey||e.metaKey||e.shiftKey||(e.preventDefault(),t.commands.execute("do\
cmanager:open",{path:n.dataset.twoshaftOpen}))}),document.addEventListener("twoshaft-signed-out",()=>{for(let e of[...t.
shell.widgets("main")])e!==t.shell.currentWidget&&e.close()})}async function ge(t,e){let n=new Set(e);try{let o=await fetch(
`${t}/released-cells.json`);if(o.ok)for(let s of(await o.json()).cells)n.add(s)}catch(o){console.warn(`${k}: the list of\
 released cells could not be read`,o)}return n}function Dt(t){return new Promise((e,n)=>{let o=()=>{t.isDisposed?s(()=>n(
new Error("closed"))):t.session?.kernel?.status==="idle"&&s(e)},s=r=>{t.statusChanged.disconnect(o),t.disposed.disconnect(
o),r()};t.statusChanged.connect(o),t.disposed.connect(o),o()})}async function Ot(t,e,n){let o=t.sessionContext;for(let s=0;s<
he;s+=1){await Dt(o);let r=B(t,e).filter(({model:c})=>c.executionCount===null);if(!r.length)return;let i=r.filter(({model:c})=>St(
c));for(let c of[i,r.filter(a=>!i.includes(a))])if(c.length&&(await n.runCells(t.content,c,o),c.some(G)))return;await new Promise(
c=>setTimeout(c,Ut))}}var we=({model:t})=>t.executionCount===null&&t.executionState!=="running"&&!t.outputs.length,q=t=>!!t.
content.model?.getMetadata("twoshaft")?.open;function $t(t){if(t.isDisposed||!t.content.model)return;let e=q(t);if(t.toggleClass(
"twoshaft-notebook",e),!!e)for(let n of t.content.widgets)n.toggleClass("twoshaft-quiet",T(n.model)),n.toggleClass("twos\
haft-if-missing",L(n.model).includes(de)),n.toggleClass("twoshaft-shows",L(n.model).some(o=>ue.includes(o)))}async function me(t,e,n){
await e.ready,!(t.isDisposed||!q(t))&&(H(e.path).kind!=="start"&&At(t),Tt(t),Ht(t),await rt(t,e,n))}function ye(t,e){let n=D(
t),o=(i,c)=>{c==="completed"&&(n=D(t))},s=()=>{t.isDisposed||!e.model.dirty||D(t)!==n||(e.model.dirty=!1)},r=(i,{name:c,
newValue:a})=>{c==="dirty"&&a&&setTimeout(s,0)};e.saveState.connect(o),e.model.stateChanged.connect(r),s()}var _t=new WeakMap;
async function Se(t,e,n,o,s){if(await e.ready,t.isDisposed||($t(t),t.content.model.cells.changed.connect(()=>setTimeout(
()=>$t(t),0)),!q(t)))return;ye(t,e);let r=t.sessionContext,i=_t.get(e)??new Set;_t.set(e,i);let c=()=>r.session?.kernel?.
id,a=0,d=async()=>{a+=1,t.addClass(Bt);try{await r.ready,await Dt(r);let f=c();if(t.isDisposed||i.has(f))return;i.add(f);
let w=await n;for(let{model:b}of B(t,w))b.executionCount=null;await Ot(t,w,o)}finally{a-=1,t.toggleClass(Bt,a>0),u()}},x,
u=()=>{clearTimeout(x),x=window.setTimeout(async()=>{if(a||t.isDisposed||r.session?.kernel?.status!=="idle")return;let f=B(
t,await n);for(let b of f)b.outputHidden&&(b.outputHidden=!1),h(b);let{model:w}=t.content;if(!(!i.has(c())||w?.isDisposed)&&
!(!f.some(we)||f.some(G))){a+=1;try{await Ot(t,await n,o)}finally{a-=1}}},Ut)},g=new WeakSet,h=({model:f})=>{g.has(f)||(g.
add(f),f.outputs.changed.connect(u))};t.content.model.cells.changed.connect(u),s.commands.commandExecuted.connect(u),t.node.
addEventListener("twoshaft-redraw",async()=>{let f=B(t,await n);t.isDisposed||await o.runCells(t.content,f,r)});let p=()=>d().
catch(f=>{t.isDisposed||console.warn(`${k}: the forms could not be shown`,f)}).finally(()=>kt(t,r,s.serviceManager.sessions)),
l=(f,w)=>{w!=="restarting"&&w!=="autorestarting"||(i.delete(c()),p())};r.statusChanged.connect(l),r.kernelChanged.connect(
(f,{newValue:w})=>{w&&p()}),p()}var Mt;async function Ee(t){let e=Object.values(Mt[t]||{});if(!e.length)throw new Error(`${t} is not there`);return(await(e.
find(o=>o.loaded)||e[0]).get())()}window._JUPYTERLAB??={};window._JUPYTERLAB[k]={init:t=>{Mt=t},get:async t=>{if(t!=="./\
extension")throw new Error(`${k} has no ${t}`);let e=await vt(Ee);return()=>({__esModule:!0,default:e})}};})();
