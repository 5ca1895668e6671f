"use strict";(()=>{var z="start-here.ipynb",Wt="desk.ipynb",X="twoshaft-mine";function T(t){let e=t.split("/"),n=e.pop()??"",o=e.at(-1)??"",
s=new Map([[z,"start"],[Wt,"desk"]]),r=s.get(n)??(o==="lessons"?"lesson":"exercise"),c=s.has(n)?0:["lessons","exercises"].
includes(o)?1:2,i=e.slice(0,Math.max(0,e.length-c)).join("/");return{kind:r,file:n,base:i&&`${i}/`}}var I=t=>/^(\d\d)-/.
exec(t)?.[1]??"";function Y(t,e,n){let{kind:o,file:s,base:r}=T(t);if(o==="start"||o==="desk")return[];let c=[];e.start&&
c.push(["Start page",r+z]);let i=I(s),a=i&&` ${i}`,l=n[s]??(e.practice.includes(s)?`exercises/${s}`:void 0);return o==="\
lesson"?(c.push([i?`Lesson ${i}`:"Glossary",""]),l&&c.push([`Exercise${a}`,r+l])):(e.lessons.includes(s)&&c.push([`Lesso\
n${a}`,`${r}lessons/${s}`]),c.push([`Exercise${a}`,""])),e.lessons.includes("glossary.ipynb")&&s!=="glossary.ipynb"&&c.push(
["Glossary",`${r}lessons/glossary.ipynb`]),c}var Q=t=>t.toLowerCase().replace(/[^\p{L}\p{N}]+/gu,"-").replace(/^-|-$/g,"");
function V(t){let e=[],n=!1;t.forEach(({part:r,begins:c},i)=>{let a=r==="text"||r==="given";(!e.length||c||r==="own"||n&&
a)&&(e.push([]),n=!1),e[e.length-1].push(i),(r==="form"||r==="own")&&(n=!0)});let o=[],s=0;for(let r of e){let c=r.map(l=>t[l].
part),i=c.filter(l=>l==="form").length===1&&c.some(l=>l==="text"||l==="given");i&&(s+=1);let a=s;for(let l of r){let{part:x}=t[l];
i&&x!=="hidden"?o[l]={row:a,side:x==="form"?"right":"left"}:(s+=1,o[l]={row:s,side:"both"})}}return o}function Z(t){let e=t.
filter(r=>r!==void 0);if(!e.length)return["","opening"];let[n,o,s]=["answered","asked","unread"].map(r=>e.reduce((c,i)=>c+
i[r],0));return s?["▲",`${s} cannot be read, ${n} of ${o} answered`]:n===o?["●","done"]:n?["◐",`${n} of ${o} answe\
red`]:["○","not begun"]}function y(t,e={},...n){let o=document.createElement(t);for(let[s,r]of Object.entries(e))typeof r=="function"?o.addEventListener(
s.slice(2),r):r===!0?o.setAttribute(s,""):r!==!1&&r!=null&&o.setAttribute(s,String(r));return o.append(...Ft(n)),o}function tt(t){return y("span",{class:"ts-shape","aria-hidden":"true"},t)}function Ft(t){return t.filter(e=>e!=null&&e!==
!1)}function v(t,e){return[...t.querySelectorAll(e)]}function et(t,e){let{target:n}=t;return n instanceof Element?n.closest(
e):null}var Nt=120;async function W(t,e){try{let{content:n}=await t.get(e,{content:!0});return n.map(({name:o})=>o)}catch{return[]}}
var nt=new Map;function jt(t,e){let n=e.replace(/\/$/,""),o=nt.get(n)??W(t,n).then(async s=>({start:s.includes("start-he\
re.ipynb"),lessons:s.includes("lessons")?await W(t,`${e}lessons`):[],practice:s.includes("exercises")?await W(t,`${e}exe\
rcises`):[]}));return nt.set(n,o),o}function Pt(){try{return JSON.parse(localStorage.getItem(X)??"{}")}catch{return{}}}var Gt=(t,e)=>`${e}\
/${t.split("/").map(encodeURIComponent).join("/")}`;function ot(t,e){return y("ul",{class:"ts-ways"},...t.map(([n,o])=>y(
"li",{},o?y("a",{href:Gt(o,e),"data-twoshaft-open":o},n):y("b",{"aria-current":"page"},n))))}function qt(t){let{node:e,widgets:n}=t.
content,o=e.querySelector(".jp-WindowedPanel-outer")??e,s=y("a",{href:"#",class:"ts-next-task"}),r=new Map,c=d=>{let f=d.
node.querySelector("h2");f&&(f.tabIndex=-1,f.focus({preventScroll:!0})),d.node.scrollIntoView({block:"start"})},i=(d,f,w)=>({
cell:d,number:f,title:w,forms:new Set,link:y("a",{href:"#",onclick:p=>{p.preventDefault(),c(d)}})}),a=[];for(let d of n){
let{type:f,sharedModel:w}=d.model,[,p,m]=/^## (\d+)\. (.*)/m.exec(w.getSource())??[];f!=="code"&&p&&a.push(i(d,p,m))}let l=y(
"ol",{class:"ts-tasks","aria-label":"Tasks"},...a.map(({link:d})=>y("li",{},d))),x=y("div",{class:"ts-task-row"},l,s),h=({
forms:d})=>Z([...d].map(f=>r.get(f))),b=()=>a.find(d=>h(d)[1]!=="done");s.addEventListener("click",d=>{d.preventDefault();
let f=b();f&&c(f.cell)});let u=()=>{let d=o.getBoundingClientRect().top+Nt,f=a.filter(({cell:S})=>S.node.getBoundingClientRect().
top<d),p=o.scrollTop+o.clientHeight>=o.scrollHeight-1&&f.length?a.at(-1):f.at(-1);for(let S of a){let[J,It]=h(S);S===p?S.
link.setAttribute("aria-current","step"):S.link.removeAttribute("aria-current");let R=`Task ${S.number}, ${S.title}: ${It}`;
S.link.title!==R&&(S.link.title=R,S.link.setAttribute("aria-label",R),S.link.replaceChildren(S.number,J?tt(J):""))}p&&x.
scrollWidth>x.clientWidth&&(x.scrollLeft=p.link.offsetLeft-x.clientWidth/2);let m=b(),C=m?`Next: task ${m.number}`:"All \
tasks are answered";s.textContent!==C&&(s.textContent=C)};e.addEventListener("twoshaft-progress",({target:d,detail:f})=>{
let w=d,p=a.filter(({cell:m})=>m.node.compareDocumentPosition(w)&Node.DOCUMENT_POSITION_FOLLOWING);r.set(f.task,f),p.at(
-1)?.forms.add(f.task),u()});let g=0;return o.addEventListener("scroll",()=>{cancelAnimationFrame(g),g=requestAnimationFrame(
u)},{passive:!0}),u(),a.length?x:null}async function rt(t,e,{Widget:n,contents:o,tree:s}){let{kind:r,base:c,file:i}=T(e.
path);if(r==="start"||r==="desk")return;let a=r==="exercise"?qt(t):null,l=y("nav",{class:"twoshaft twoshaft-bar","aria-l\
abel":"Course"}),x=new n({node:l});t.layout.insertWidget(0,x),t.content.node.before(l);let h=y("nav",{class:"twoshaft tw\
oshaft-ways","aria-label":"Ways on"});t.content.node.querySelector(".jp-WindowedPanel-outer")?.append(h);let b=async()=>{
let u=Y(e.path,await jt(o,c),Pt());l.replaceChildren(ot(u,s),...a?[a]:[]),h.replaceChildren(ot(u,s))};await b(),a&&Kt(t,
l,a),r==="lesson"&&(window.addEventListener("storage",b),t.disposed.connect(()=>window.removeEventListener("storage",b)),
(I(i)||i==="glossary.ipynb")&&Jt(t,()=>zt(t)))}function Kt(t,e,n){let o=new ResizeObserver(()=>{let s=e.firstElementChild,
r=n.offsetTop>=s.offsetTop+s.offsetHeight;r!==e.classList.contains("ts-two-lines")&&(e.classList.toggle("ts-two-lines",r),
requestAnimationFrame(()=>t.fit()))});o.observe(e),o.observe(n),t.disposed.connect(()=>o.disconnect())}function Jt(t,e){
let n=t.content.widgets.filter(({model:o})=>o.type!=="code");Promise.all(n.map(o=>o.ready)).then(()=>requestAnimationFrame(
()=>{t.isDisposed||e()}))}var st=decodeURIComponent(location.hash.slice(1));function zt(t){if(st){for(let e of t.content.
node.querySelectorAll(".jp-RenderedMarkdown :is(h1, h2, h3)"))if(Q(e.textContent??"")===st){e.tabIndex=-1,e.focus({preventScroll:!0}),
e.scrollIntoView({block:"start"});return}}}function ct(){let t=y("a",{href:"#",class:"twoshaft-skip",onclick:e=>{e.preventDefault(),
[...document.querySelectorAll(".twoshaft-bar")].find(s=>s.checkVisibility())?.querySelector("a")?.focus()}},"To the star\
t page, lesson and tasks");document.body.prepend(y("nav",{"aria-label":"First"},t))}var Xt=t=>t/2**32|0,Yt=t=>t>>>0;function it(t,e,n,o){let s=Xt(n),r=Yt(n);t.setUint32(e,o?r:s,o),t.setUint32(e+4,o?s:r,o)}function at(t){return t instanceof Uint8Array||ArrayBuffer.isView(t)&&t.constructor.name==="Uint8Array"&&"BYTES_PER_ELEM\
ENT"in t&&t.BYTES_PER_ELEMENT===1}var F=t=>t?`"${t}" `:"";function Qt(t,e=""){if(typeof t!="number")throw new TypeError(
F(e)+"expected number, got "+typeof t);if(!Number.isSafeInteger(t)||t<0)throw new RangeError(F(e)+"expected integer >= 0\
, got "+t);return t}function $(t,e,n=""){if(at(t)&&(e===void 0||t.length===e))return t;e!==void 0&&Qt(e,"length");let o=at(t),s=e!==void 0?`\
 of length ${e}`:"",r=o?`length=${t.length}`:`type=${typeof t}`,c=F(n)+"expected Uint8Array"+s+", got "+r;throw o?new RangeError(
c):new TypeError(c)}var Vt=(t,e)=>{if(t===null||typeof t!="object"||Array.isArray(t))throw new TypeError((e==="object"?"":`"${e}" `)+"expect\
ed object, got type="+typeof t)},ft=(t,e)=>{Vt(t,e);let n=Object.getPrototypeOf(t);if(n!==Object.prototype&&n!==null)throw new TypeError(
`"${e}" expected plain object`);if(Object.hasOwn(t,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};
function N(t,e=!0){if(t.destroyed)throw new Error("hash was destroyed");if(e&&t.finished)throw new Error("digest() was a\
lready called")}function lt(t,e){$(t,void 0,"output");let n=e.outputLen;if(!(t.length>=n))throw new RangeError('"output"\
 expected length >= '+n)}function _(...t){for(let e=0;e<t.length;e++)t[e].fill(0)}function U(t){return new DataView(t.buffer,t.byteOffset,t.byteLength)}
function E(t,e){return t<<32-e|t>>>e}var Zt=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",te=Array.from({length:256},(t,e)=>e.
toString(16).padStart(2,"0"));function dt(t){if($(t),Zt)return t.toHex();let e="";for(let n=0;n<t.length;n++)e+=te[t[n]];
return e}function ut(t){if(typeof t!="string")throw new TypeError("string expected");let e=new TextEncoder().encode(t);try{return new Uint8Array(
e)}finally{_(e)}}function ee(t,e,n="opts"){return ft(t,"defaults"),e!==void 0&&ft(e,n),Object.assign(Object.create(null),t,e)}function ht(t,e={}){
if(typeof t!="function")throw new TypeError('"hashCons" expected function, got type='+typeof t);e=ee({},e,"info");let n=(s,r)=>t(
r).update(s).digest(),o=t(void 0);return n.outputLen=o.outputLen,n.blockLen=o.blockLen,n.canXOF=o.canXOF,n.create=s=>t(s),
Object.assign(n,e),Object.freeze(n)}var xt=t=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,t])});function pt(t,e,n){return t&e^~t&n}function bt(t,e,n){return t&e^t&n^e&n}var M=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,n,o,s){
this.blockLen=e,this.outputLen=n,this.padOffset=o,this.isLE=s,this.buffer=new Uint8Array(e),this.view=U(this.buffer)}update(e){
N(this),$(e);let{view:n,buffer:o,blockLen:s}=this,r=e.length,c=!1;for(let i=0;i<r;){let a=Math.min(s-this.pos,r-i);if(a===
s){let l=U(e);for(;s<=r-i;i+=s)this.process(l,i);c=!0;continue}o.set(i===0&&a===r?e:e.subarray(i,i+a),this.pos),this.pos+=
a,i+=a,this.pos===s&&(this.process(n,0),this.pos=0,c=!0)}return this.length+=e.length,c&&this.roundClean(),this}digestInto(e){
N(this),lt(e,this),this.finished=!0;let{buffer:n,view:o,blockLen:s,isLE:r}=this,{pos:c}=this;n[c++]=128,n.fill(0,c),this.
padOffset>s-c&&(this.process(o,0),n.fill(0)),it(o,s-8,this.length*8,r),this.process(o,0),this.roundClean();let i=e===n?o:
U(e),a=this.outputLen,l=a/4,x=this.get();if(a%4||l>x.length)throw new Error("invalid outputLen");for(let h=0;h<l;h++)i.setUint32(
4*h,x[h],r)}digest(){let{buffer:e,outputLen:n}=this;this.digestInto(e);let o=e.slice(0,n);return this.destroy(),o}_cloneIntoMeta(e){
let{buffer:n,length:o,finished:s,destroyed:r,pos:c}=this;return e.destroyed=r,e.finished=s,e.length=o,e.pos=c,c&&e.buffer.
set(n),e}clone(){return this._cloneInto()}},gt=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,
2600822924,528734635,1541459225]);var ne=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,
310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,
1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,
773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,
3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,
1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),A=new Uint32Array(64),j=class extends M{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,n){
super(64,e,8,!1),this.A=n[0]|0,this.B=n[1]|0,this.C=n[2]|0,this.D=n[3]|0,this.E=n[4]|0,this.F=n[5]|0,this.G=n[6]|0,this.
H=n[7]|0}get(){let{A:e,B:n,C:o,D:s,E:r,F:c,G:i,H:a}=this;return[e,n,o,s,r,c,i,a]}set(e,n,o,s,r,c,i,a){this.A=e|0,this.B=
n|0,this.C=o|0,this.D=s|0,this.E=r|0,this.F=c|0,this.G=i|0,this.H=a|0}_cloneInto(e){return(e||=new this.constructor).set(
...this.get()),this._cloneIntoMeta(e)}process(e,n){for(let h=0;h<16;h++,n+=4)A[h]=e.getUint32(n,!1);for(let h=16;h<64;h++){
let b=A[h-15],u=A[h-2],g=E(b,7)^E(b,18)^b>>>3,d=E(u,17)^E(u,19)^u>>>10;A[h]=d+A[h-7]+g+A[h-16]|0}let{A:o,B:s,C:r,D:c,E:i,
F:a,G:l,H:x}=this;for(let h=0;h<64;h++){let b=E(i,6)^E(i,11)^E(i,25),u=x+b+pt(i,a,l)+ne[h]+A[h]|0,d=(E(o,2)^E(o,13)^E(o,
22))+bt(o,s,r)|0;x=l,l=a,a=i,i=c+u|0,c=r,r=s,s=o,o=u+d|0}o=o+this.A|0,s=s+this.B|0,r=r+this.C|0,c=c+this.D|0,i=i+this.E|
0,a=a+this.F|0,l=l+this.G|0,x=x+this.H|0,this.set(o,s,r,c,i,a,l,x)}roundClean(){_(A)}destroy(){this.destroyed=!0,this.set(
0,0,0,0,0,0,0,0),_(this.buffer)}},P=class extends j{constructor(){super(32,gt)}};var wt=ht(()=>new P,xt(1));var mt="setup",yt=[mt,"form","rig"],oe=[...yt,"mark"];function se(t){return dt(wt(ut(t.replace(/\r\n?/g,`
`).replace(/\n+$/,""))))}var L=t=>t.getMetadata("tags")||[],St=t=>L(t).includes(mt),H=t=>L(t).some(e=>oe.includes(e));function B(t,e){
return t.content.widgets.filter(({model:n})=>n.type==="code"&&L(n).some(o=>yt.includes(o))&&e.has(se(n.sharedModel.getSource())))}
function G({model:{outputs:t}}){for(let e=0;e<t.length;e+=1)if(t.get(e).type==="error")return!0;return!1}function D(t){return JSON.
stringify(t.content.widgets.map(({model:e})=>[e.sharedModel.getSource(),H(e)?null:e.executionCount??null]))}function q(t){let e=t.session?.kernel;return e?.connectionStatus==="connected"&&!["dead","terminating"].includes(e.status)}
var Et=new WeakSet;function kt(t,e,n){if(Et.has(t)||t.isDisposed)return;Et.add(t);let o=!1,s=async()=>{if(!o){for(o=!0;!t.
isDisposed&&(await new Promise(c=>setTimeout(c,1e3)),!(t.isDisposed||q(e)));)try{await n.refreshRunning();let c=e.session?.
kernel;if(q(e))break;!c||["dead","terminating"].includes(c.status)?await e.startKernel():c.connectionStatus==="disconnec\
ted"&&await c.reconnect()}catch{}o=!1}},r=()=>{!t.isDisposed&&!q(e)&&!e.isRestarting&&s()};e.connectionStatusChanged.connect(
r),e.statusChanged.connect(r),e.sessionChanged.connect(r),e.kernelChanged.connect(r),r()}var re=1e3,ce=1800,ie=":is(.tsh-picture, .ts-scroll, .ts-unit)";function ae(t){let e=L(t);return t.type!=="code"?e.includes(
"if-missing")?"hidden":"text":e.includes("form")||e.includes("predict")?"form":e.includes("rig")?"given":H(t)?"hidden":"\
own"}var fe=t=>t.type!=="code"&&/^#{1,2} /m.test(t.sharedModel.getSource());function At(t){let e=t.content.node,n=e.querySelector(
".jp-WindowedPanel-outer")??e,o=[],s=()=>{let b=n.clientHeight;for(let u of o){let g=u.left.some(m=>m.querySelector(ie)),
d=u.right.querySelector(".ts-pictures")!==null;for(let m of[...u.left,u.right])m.classList.toggle("twoshaft-broad",g),m.
classList.toggle("twoshaft-narrow",!g&&d);u.heights=u.left.map(m=>m.getBoundingClientRect().height),u.whole=u.heights.reduce(
(m,C)=>m+C,0),u.from=Math.min(0,b-u.whole);let f=u.right.getBoundingClientRect().height,p=f<u.whole&&f<=b&&!u.right.querySelector(
".ts-question");u.right.style.position=p?"sticky":"",u.right.style.top=p?"0":""}r()},r=()=>{let b=n.getBoundingClientRect().
top,u=o.map(g=>{let{top:d,height:f}=g.right.getBoundingClientRect(),w=Math.max(0,f-g.whole),p=g.from-(d-b);return{stage:p<=
0||!w?"before":p<w?"within":`past ${w}`,spare:w}});o.forEach((g,d)=>{let{stage:f,spare:w}=u[d];if(f===g.stage)return;g.stage=
f;let p=0;g.left.forEach((m,C)=>{let S=p+(f.startsWith("past")?w:0);m.style.position=f==="within"?"sticky":"relative",m.
style.top=f==="within"?`${g.from+p}px`:"auto",m.style.marginTop=`${S}px`,m.style.marginBottom=`${g.whole-p-g.heights[C]}\
px`,p+=g.heights[C]})})},c=()=>{for(let b of o){b.stage="";for(let{style:u}of[...b.left,b.right])for(let g of["position",
"top","margin-top","margin-bottom"])u.removeProperty(g)}},i=()=>e.classList.contains("twoshaft-wide"),a=()=>{let b=document.
documentElement.getAttribute("data-ts-print")==="large";e.classList.toggle("twoshaft-wide",e.clientWidth>=(b?ce:re)),i()?
s():c()};n.addEventListener("scroll",()=>i()&&r(),{passive:!0});let l=0,x=new ResizeObserver(()=>{cancelAnimationFrame(l),
l=requestAnimationFrame(a)}),h=()=>{let{widgets:b}=t.content,u=V(b.map(({model:d})=>({part:ae(d),begins:fe(d)})));c(),x.
disconnect(),x.observe(e);let g=new Map;o=[],b.forEach(({node:d},f)=>{let{row:w,side:p}=u[f];if(d.style.gridRow=String(w),
d.dataset.twoshaftSide=p,p==="both")return;x.observe(d);let m=g.get(w)??[];g.set(w,m),p==="left"?m.push(d):o.push({left:m,
right:d,heights:[],whole:0,from:0,stage:""})}),a()};h(),t.content.model.cells.changed.connect(()=>setTimeout(()=>!t.isDisposed&&
h(),0)),t.disposed.connect(()=>x.disconnect())}var le=".twoshaft svg[viewBox]",de=1.7;function Lt(t){let e=v(t,le).filter(o=>o.querySelector("text")),n=e.map(o=>{let s=o.
getScreenCTM();return s?Math.hypot(s.a,s.b):1});e.forEach((o,s)=>{let r=Math.min(de,Math.max(1,1/(n[s]||1))).toFixed(3);
o.style.getPropertyValue("--ts-grown")!==r&&o.style.setProperty("--ts-grown",r)})}var O=window.matchMedia("(max-width: 600px), (max-height: 400px)");function Ct(t){let e=()=>{for(let n of["left","right"])
t.isSideTabBarVisible?.(n)===O.matches&&t.toggleSideTabBarVisibility(n)};O.addEventListener("change",e),e()}function Tt(t){
let e=()=>{t.toolbar.setHidden(O.matches),t.fit()};O.addEventListener("change",e),t.disposed.connect(()=>O.removeEventListener(
"change",e)),e()}var ue=":is(.twoshaft :is(.given-frame, .tsg-wide, .tsl-drawing), .jp-RenderedHTML figure)";function he(t){let e=t.scrollWidth>
t.clientWidth;if(e!==t.hasAttribute("tabindex")){if(!e){for(let n of["tabindex","role","aria-label"])t.removeAttribute(n);
return}t.tabIndex=0,t.setAttribute("role","group"),t.setAttribute("aria-label",t.querySelector("caption")?"Wide table":"\
Picture")}}var Ht=t=>v(t,ue).forEach(he);function Bt(t,e){let n=t.content.node,o=0,s=()=>{clearTimeout(o),o=setTimeout(()=>e(n),300)},r=new MutationObserver(s);r.
observe(n,{childList:!0,subtree:!0});let c=new ResizeObserver(s);c.observe(n),t.disposed.connect(()=>{clearTimeout(o),r.
disconnect(),c.disconnect()})}var k="twoshaft-opener",xe="if-missing",Ot="twoshaft-opening",pe=["form","rig"],be=3,Ut=300;async function Mt(t){let[{PageConfig:e,
URLExt:n},{NotebookActions:o},{IConnectionLost:s},{Widget:r}]=await Promise.all([t("@jupyterlab/coreutils"),t("@jupyterl\
ab/notebook"),t("@jupyterlab/application"),t("@lumino/widgets")]),c=n.join(e.getBaseUrl(),"lab/tree"),i=ge(e,o,{Widget:r,
tree:c});if(e.getOption("twoshaftRole")!=="apprentice")return[i];let a={id:`${k}:line`,description:"Leaves it to the cou\
rse's screens to say that the server cannot be reached.",autoStart:!0,provides:s,activate:()=>async()=>{}};return[i,a]}function ge(t,e,n){
let o=`${t.getOption("fullLabextensionsUrl")}/${k}/static`;return{id:`${k}:plugin`,description:"Shows the forms and rigs\
 of a course notebook as soon as it is opened.",autoStart:!0,activate:s=>{we(o);let r=t.getOption("twoshaftRole")==="app\
rentice",c=t.getOption("twoshaftDesk");if(!r&&!c)return;document.head.append(y("style",{},`.twoshaft {
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
one}}.twoshaft-desk-notebook .jp-NotebookPanel-toolbar{display:none}`)),r&&me(s);let i=JSON.parse(t.getOption("twoshaftR\
eleased")||"[]"),a=r?ye(o,i):Promise.resolve(new Set(i));s.restored.then(()=>{s.shell.collapseLeft?.(),s.shell.collapseRight?.(),
ct(),Ct(s.shell),r&&(s.shell.addButtonEnabled=!1)}),s.docRegistry.addWidgetExtension("Notebook",{createNew:(l,x)=>{!r&&x.
path!==c||(l.toggleClass("twoshaft-desk-notebook",!r),Ae(l,x,a,e,s),Ee(l,x,{...n,contents:s.serviceManager.contents}))}})}}}
function we(t){globalThis.twoshaftScreens??=new Map;let e=import(`${t}/screens.js?v=83718884cdddb8f1`);globalThis.twoshaftScreens.
set("83718884cdddb8f1",e),e.catch(n=>{globalThis.twoshaftScreens?.delete("83718884cdddb8f1"),console.warn(`${k}: the scr\
eens could not be loaded`,n)})}function me(t){document.addEventListener("click",e=>{let n=et(e,"a[data-twoshaft-open]");
!n||e.ctrlKey||e.metaKey||e.shiftKey||(e.preventDefault(),t.commands.execute("docmanager:open",{path:n.dataset.twoshaftOpen}))}),
document.addEventListener("twoshaft-signed-out",()=>{for(let e of[...t.shell.widgets("main")])e!==t.shell.currentWidget&&
e.close()})}async function ye(t,e){let n=new Set(e);try{let o=await fetch(`${t}/released-cells.json`);if(o.ok)for(let s of(await o.
json()).cells)n.add(s)}catch(o){console.warn(`${k}: the list of released cells could not be read`,o)}return n}function Dt(t){
return new Promise((e,n)=>{let o=()=>{t.isDisposed?s(()=>n(new Error("closed"))):t.session?.kernel?.status==="idle"&&s(e)},
s=r=>{t.statusChanged.disconnect(o),t.disposed.disconnect(o),r()};t.statusChanged.connect(o),t.disposed.connect(o),o()})}
async function vt(t,e,n){let o=t.sessionContext;for(let s=0;s<be;s+=1){await Dt(o);let r=B(t,e).filter(({model:i})=>i.executionCount===
null);if(!r.length)return;let c=r.filter(({model:i})=>St(i));for(let i of[c,r.filter(a=>!c.includes(a))])if(i.length&&(await n.
runCells(t.content,i,o),i.some(G)))return;await new Promise(i=>setTimeout(i,Ut))}}var Se=({model:t})=>t.executionCount===
null&&t.executionState!=="running"&&!t.outputs.length,K=t=>!!t.content.model?.getMetadata("twoshaft")?.open;function $t(t){
if(t.isDisposed||!t.content.model)return;let e=K(t);if(t.toggleClass("twoshaft-notebook",e),!!e)for(let n of t.content.widgets)
n.toggleClass("twoshaft-quiet",H(n.model)),n.toggleClass("twoshaft-if-missing",L(n.model).includes(xe)),n.toggleClass("t\
woshaft-shows",L(n.model).some(o=>pe.includes(o)))}async function Ee(t,e,n){await e.ready,!(t.isDisposed||!K(t))&&(T(e.path).
kind!=="start"&&At(t),Bt(t,o=>{Ht(o),Lt(o)}),Tt(t),await rt(t,e,n))}function ke(t,e){let n=D(t),o=(c,i)=>{i==="completed"&&
(n=D(t))},s=()=>{t.isDisposed||!e.model.dirty||D(t)!==n||(e.model.dirty=!1)},r=(c,{name:i,newValue:a})=>{i==="dirty"&&a&&
setTimeout(s,0)};e.saveState.connect(o),e.model.stateChanged.connect(r),s()}var _t=new WeakMap;async function Ae(t,e,n,o,s){
if(await e.ready,t.isDisposed||($t(t),t.content.model.cells.changed.connect(()=>setTimeout(()=>$t(t),0)),!K(t)))return;ke(
t,e);let r=t.sessionContext,c=_t.get(e)??new Set;_t.set(e,c);let i=()=>r.session?.kernel?.id,a=0,l=async()=>{a+=1,t.addClass(
Ot);try{await r.ready,await Dt(r);let f=i();if(t.isDisposed||c.has(f))return;c.add(f);let w=await n;for(let{model:p}of B(
t,w))p.executionCount=null;await vt(t,w,o)}finally{a-=1,t.toggleClass(Ot,a>0),h()}},x,h=()=>{clearTimeout(x),x=window.setTimeout(
async()=>{if(a||t.isDisposed||r.session?.kernel?.status!=="idle")return;let f=B(t,await n);for(let p of f)p.outputHidden&&
(p.outputHidden=!1),u(p);let{model:w}=t.content;if(!(!c.has(i())||w?.isDisposed)&&!(!f.some(Se)||f.some(G))){a+=1;try{await vt(
t,await n,o)}finally{a-=1}}},Ut)},b=new WeakSet,u=({model:f})=>{b.has(f)||(b.add(f),f.outputs.changed.connect(h))};t.content.
model.cells.changed.connect(h),s.commands.commandExecuted.connect(h),t.node.addEventListener("twoshaft-redraw",async()=>{
let f=B(t,await n);t.isDisposed||await o.runCells(t.content,f,r)});let g=()=>l().catch(f=>{t.isDisposed||console.warn(`${k}\
: the forms could not be shown`,f)}).finally(()=>kt(t,r,s.serviceManager.sessions)),d=(f,w)=>{w!=="restarting"&&w!=="aut\
orestarting"||(c.delete(i()),g())};r.statusChanged.connect(d),r.kernelChanged.connect((f,{newValue:w})=>{w&&g()}),g()}var Rt;async function Le(t){let e=Object.values(Rt[t]||{});if(!e.length)throw new Error(`${t} is not there`);return(await(e.
find(o=>o.loaded)||e[0]).get())()}window._JUPYTERLAB??={};window._JUPYTERLAB[k]={init:t=>{Rt=t},get:async t=>{if(t!=="./\
extension")throw new Error(`${k} has no ${t}`);let e=await Mt(Le);return()=>({__esModule:!0,default:e})}};})();
