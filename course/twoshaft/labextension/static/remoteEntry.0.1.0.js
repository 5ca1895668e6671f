"use strict";(()=>{function k(t,e={},...n){let o=document.createElement(t);for(let[r,s]of Object.entries(e))typeof s=="function"?o.addEventListener(
r.slice(2),s):s===!0?o.setAttribute(r,""):s!==!1&&s!=null&&o.setAttribute(r,String(s));return o.append(...V(n)),o}function V(t){return t.filter(e=>e!=null&&e!==!1)}function O(t,e){let{target:n}=t;return n instanceof Element?n.closest(e):null}var tt=t=>t/2**32|0,et=t=>t>>>0;function D(t,e,n,o){let r=tt(n),s=et(n);t.setUint32(e,o?s:r,o),t.setUint32(e+4,o?r:s,o)}function $(t){return t instanceof Uint8Array||ArrayBuffer.isView(t)&&t.constructor.name==="Uint8Array"&&"BYTES_PER_ELEME\
NT"in t&&t.BYTES_PER_ELEMENT===1}var L=t=>t?`"${t}" `:"";function nt(t,e=""){if(typeof t!="number")throw new TypeError(L(
e)+"expected number, got "+typeof t);if(!Number.isSafeInteger(t)||t<0)throw new RangeError(L(e)+"expected integer >= 0, \
got "+t);return t}function w(t,e,n=""){if($(t)&&(e===void 0||t.length===e))return t;e!==void 0&&nt(e,"length");let o=$(t),r=e!==void 0?` o\
f length ${e}`:"",s=o?`length=${t.length}`:`type=${typeof t}`,c=L(n)+"expected Uint8Array"+r+", got "+s;throw o?new RangeError(
c):new TypeError(c)}var ot=(t,e)=>{if(t===null||typeof t!="object"||Array.isArray(t))throw new TypeError((e==="object"?"":`"${e}" `)+"expect\
ed object, got type="+typeof t)},M=(t,e)=>{ot(t,e);let n=Object.getPrototypeOf(t);if(n!==Object.prototype&&n!==null)throw new TypeError(
`"${e}" expected plain object`);if(Object.hasOwn(t,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};
function B(t,e=!0){if(t.destroyed)throw new Error("hash was destroyed");if(e&&t.finished)throw new Error("digest() was a\
lready called")}function j(t,e){w(t,void 0,"output");let n=e.outputLen;if(!(t.length>=n))throw new RangeError('"output" \
expected length >= '+n)}function g(...t){for(let e=0;e<t.length;e++)t[e].fill(0)}function y(t){return new DataView(t.buffer,t.byteOffset,t.byteLength)}
function l(t,e){return t<<32-e|t>>>e}var rt=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",st=Array.from({length:256},(t,e)=>e.
toString(16).padStart(2,"0"));function F(t){if(w(t),rt)return t.toHex();let e="";for(let n=0;n<t.length;n++)e+=st[t[n]];
return e}function N(t){if(typeof t!="string")throw new TypeError("string expected");let e=new TextEncoder().encode(t);try{return new Uint8Array(
e)}finally{g(e)}}function ct(t,e,n="opts"){return M(t,"defaults"),e!==void 0&&M(e,n),Object.assign(Object.create(null),t,e)}function R(t,e={}){
if(typeof t!="function")throw new TypeError('"hashCons" expected function, got type='+typeof t);e=ct({},e,"info");let n=(r,s)=>t(
s).update(r).digest(),o=t(void 0);return n.outputLen=o.outputLen,n.blockLen=o.blockLen,n.canXOF=o.canXOF,n.create=r=>t(r),
Object.assign(n,e),Object.freeze(n)}var G=t=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,t])});function I(t,e,n){return t&e^~t&n}function P(t,e,n){return t&e^t&n^e&n}var m=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,n,o,r){
this.blockLen=e,this.outputLen=n,this.padOffset=o,this.isLE=r,this.buffer=new Uint8Array(e),this.view=y(this.buffer)}update(e){
B(this),w(e);let{view:n,buffer:o,blockLen:r}=this,s=e.length,c=!1;for(let i=0;i<s;){let a=Math.min(r-this.pos,s-i);if(a===
r){let u=y(e);for(;r<=s-i;i+=r)this.process(u,i);c=!0;continue}o.set(i===0&&a===s?e:e.subarray(i,i+a),this.pos),this.pos+=
a,i+=a,this.pos===r&&(this.process(n,0),this.pos=0,c=!0)}return this.length+=e.length,c&&this.roundClean(),this}digestInto(e){
B(this),j(e,this),this.finished=!0;let{buffer:n,view:o,blockLen:r,isLE:s}=this,{pos:c}=this;n[c++]=128,n.fill(0,c),this.
padOffset>r-c&&(this.process(o,0),n.fill(0)),D(o,r-8,this.length*8,s),this.process(o,0),this.roundClean();let i=e===n?o:
y(e),a=this.outputLen,u=a/4,d=this.get();if(a%4||u>d.length)throw new Error("invalid outputLen");for(let f=0;f<u;f++)i.setUint32(
4*f,d[f],s)}digest(){let{buffer:e,outputLen:n}=this;this.digestInto(e);let o=e.slice(0,n);return this.destroy(),o}_cloneIntoMeta(e){
let{buffer:n,length:o,finished:r,destroyed:s,pos:c}=this;return e.destroyed=s,e.finished=r,e.length=o,e.pos=c,c&&e.buffer.
set(n),e}clone(){return this._cloneInto()}},W=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,2600822924,
528734635,1541459225]);var it=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,
310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,
1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,
773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,
3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,
1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),x=new Uint32Array(64),C=class extends m{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,n){
super(64,e,8,!1),this.A=n[0]|0,this.B=n[1]|0,this.C=n[2]|0,this.D=n[3]|0,this.E=n[4]|0,this.F=n[5]|0,this.G=n[6]|0,this.
H=n[7]|0}get(){let{A:e,B:n,C:o,D:r,E:s,F:c,G:i,H:a}=this;return[e,n,o,r,s,c,i,a]}set(e,n,o,r,s,c,i,a){this.A=e|0,this.B=
n|0,this.C=o|0,this.D=r|0,this.E=s|0,this.F=c|0,this.G=i|0,this.H=a|0}_cloneInto(e){return(e||=new this.constructor).set(
...this.get()),this._cloneIntoMeta(e)}process(e,n){for(let f=0;f<16;f++,n+=4)x[f]=e.getUint32(n,!1);for(let f=16;f<64;f++){
let b=x[f-15],p=x[f-2],U=l(b,7)^l(b,18)^b>>>3,H=l(p,17)^l(p,19)^p>>>10;x[f]=H+x[f-7]+U+x[f-16]|0}let{A:o,B:r,C:s,D:c,E:i,
F:a,G:u,H:d}=this;for(let f=0;f<64;f++){let b=l(i,6)^l(i,11)^l(i,25),p=d+b+I(i,a,u)+it[f]+x[f]|0,H=(l(o,2)^l(o,13)^l(o,22))+
P(o,r,s)|0;d=u,u=a,a=i,i=c+p|0,c=s,s=r,r=o,o=p+H|0}o=o+this.A|0,r=r+this.B|0,s=s+this.C|0,c=c+this.D|0,i=i+this.E|0,a=a+
this.F|0,u=u+this.G|0,d=d+this.H|0,this.set(o,r,s,c,i,a,u,d)}roundClean(){g(x)}destroy(){this.destroyed=!0,this.set(0,0,
0,0,0,0,0,0),g(this.buffer)}},_=class extends C{constructor(){super(32,W)}};var K=R(()=>new _,G(1));var v=["setup","form","rig"],ft=[...v,"mark"];function at(t){return F(K(N(t.replace(/\r\n?/g,`
`).replace(/\n+$/,""))))}var E=t=>t.getMetadata("tags")||[],T=t=>E(t).some(e=>ft.includes(e));function A(t,e){return t.content.
widgets.filter(({model:n})=>n.type==="code"&&E(n).some(o=>v.includes(o))&&e.has(at(n.sharedModel.getSource())))}function J({
model:{outputs:t}}){for(let e=0;e<t.length;e+=1)if(t.get(e).type==="error")return!0;return!1}function S(t){return JSON.stringify(
t.content.widgets.map(({model:e})=>[e.sharedModel.getSource(),T(e)?null:e.executionCount??null]))}var h="twoshaft-opener",dt="if-missing",ut=3,lt=300;async function q(t){let[{PageConfig:e},{NotebookActions:n}]=await Promise.
all([t("@jupyterlab/coreutils"),t("@jupyterlab/notebook")]),o=`${e.getOption("fullLabextensionsUrl")}/${h}/static`;return{
id:`${h}:plugin`,description:"Shows the forms and rigs of a course notebook as soon as it is opened.",autoStart:!0,activate:r=>{
if(xt(o),e.getOption("twoshaftRole")!=="apprentice")return;document.head.append(k("style",{},".twoshaft-notebook{--jp-ce\
ll-prompt-width: 52px}.twoshaft-notebook .twoshaft-if-missing,.twoshaft-notebook .twoshaft-quiet .jp-InputCollapser,.two\
shaft-notebook .twoshaft-quiet .jp-OutputCollapser,.twoshaft-notebook .twoshaft-quiet .jp-Cell-inputWrapper:has(.jp-Inpu\
tPlaceholder),.twoshaft-notebook .twoshaft-quiet .jp-OutputPrompt,.twoshaft-notebook .twoshaft-quiet .jp-OutputArea-prom\
ptOverlay,.twoshaft-notebook .jp-MarkdownCell .jp-InputPrompt,.twoshaft-notebook .jp-Notebook-footer{display:none}.twosh\
aft-notebook .twoshaft-quiet:not(:has(.jp-OutputArea-child)):has(.jp-InputPlaceholder){height:0;min-height:0;padding:0;o\
verflow:hidden}.twoshaft-notebook .twoshaft-quiet .jp-Cell-outputArea{padding-left:14px}.twoshaft-notebook .jp-RenderedM\
arkdown>:is(p,ul,ol,blockquote,h1,h2,h3,h4){max-width:70ch}.twoshaft-notebook :is(.jp-MarkdownCell,.twoshaft-quiet).jp-C\
ell.jp-mod-active,.twoshaft-notebook :is(.jp-MarkdownCell,.twoshaft-quiet).jp-Cell.jp-mod-selected{border-color:transpar\
ent;box-shadow:none;background:none}.twoshaft-notebook .jp-MarkdownCell .jp-RenderedMarkdown{border-color:transparent}.t\
woshaft-notebook :is(.jp-MarkdownCell,.twoshaft-quiet) .jp-Collapser{visibility:hidden}@media(max-width:700px){.twoshaft\
-notebook .jp-RenderedImage,.twoshaft-notebook .jp-RenderedHTML figure{overflow-x:auto}.twoshaft-notebook .jp-RenderedHT\
ML figure{min-width:0;max-width:100%}.twoshaft-notebook :is(.jp-RenderedImage img,.jp-RenderedHTML figure>svg){max-width\
:none}}")),ht(r);let s=JSON.parse(e.getOption("twoshaftReleased")||"[]"),c=bt(o,s);r.restored.then(()=>{r.shell.collapseLeft?.(),
r.shell.collapseRight?.()}),r.docRegistry.addWidgetExtension("Notebook",{createNew:(i,a)=>{gt(i,a,c,n)}})}}}function xt(t){
globalThis.twoshaftScreens??=new Map;let e=import(`${t}/screens.js?v=84c9f6bf601758f8`);globalThis.twoshaftScreens.set("\
84c9f6bf601758f8",e),e.catch(n=>{globalThis.twoshaftScreens?.delete("84c9f6bf601758f8"),console.warn(`${h}: the screens \
could not be loaded`,n)})}function ht(t){document.addEventListener("click",e=>{let n=O(e,"a[data-twoshaft-open]");!n||e.
ctrlKey||e.metaKey||e.shiftKey||(e.preventDefault(),t.commands.execute("docmanager:open",{path:n.dataset.twoshaftOpen}))}),
document.addEventListener("twoshaft-signed-out",()=>{for(let e of[...t.shell.widgets("main")])e!==t.shell.currentWidget&&
e.close()})}async function bt(t,e){let n=new Set(e);try{let o=await fetch(`${t}/released-cells.json`);if(o.ok)for(let r of(await o.
json()).cells)n.add(r)}catch(o){console.warn(`${h}: the list of released cells could not be read`,o)}return n}function X(t){
return new Promise((e,n)=>{let o=()=>{t.isDisposed?r(()=>n(new Error("closed"))):t.session?.kernel?.status==="idle"&&r(e)},
r=s=>{t.statusChanged.disconnect(o),t.disposed.disconnect(o),s()};t.statusChanged.connect(o),t.disposed.connect(o),o()})}
async function pt(t,e,n){let o=t.sessionContext;for(let r=0;r<ut;r+=1){await X(o);let s=A(t,e).filter(({model:c})=>c.executionCount===
null);if(!s.length||(await n.runCells(t.content,s,o),s.some(J)))return;await new Promise(c=>setTimeout(c,lt))}}var z=t=>!!t.
content.model?.getMetadata("twoshaft")?.open;function Y(t){if(t.isDisposed||!t.content.model)return;let e=z(t);if(t.toggleClass(
"twoshaft-notebook",e),!!e)for(let n of t.content.widgets)n.toggleClass("twoshaft-quiet",T(n.model)),n.toggleClass("twos\
haft-if-missing",E(n.model).includes(dt))}function wt(t,e){let n=S(t),o=(c,i)=>{i==="completed"&&(n=S(t))},r=()=>{t.isDisposed||
!e.model.dirty||S(t)!==n||(e.model.dirty=!1)},s=(c,{name:i,newValue:a})=>{i==="dirty"&&a&&setTimeout(r,0)};e.saveState.connect(
o),e.model.stateChanged.connect(s),r()}var Q=new WeakMap;async function gt(t,e,n,o){if(await e.ready,t.isDisposed||(Y(t),
t.content.model.cells.changed.connect(()=>setTimeout(()=>Y(t),0)),!z(t)))return;wt(t,e);let r=t.sessionContext,s=Q.get(e)??
new Set;Q.set(e,s);let c=()=>r.session?.kernel?.id,i=async()=>{await r.ready,await X(r);let d=c();if(t.isDisposed||s.has(
d))return;s.add(d);let f=await n;for(let{model:b}of A(t,f))b.executionCount=null;await pt(t,f,o)};t.node.addEventListener(
"twoshaft-redraw",async()=>{let d=A(t,await n);t.isDisposed||await o.runCells(t.content,d,r)});let a=()=>i().catch(d=>{t.
isDisposed||console.warn(`${h}: the forms could not be shown`,d)}),u=(d,f)=>{f!=="restarting"&&f!=="autorestarting"||(s.
delete(c()),a())};r.statusChanged.connect(u),r.kernelChanged.connect((d,{newValue:f})=>{f&&a()}),a()}var Z;async function yt(t){let e=Object.values(Z[t]||{});if(!e.length)throw new Error(`${t} is not there`);return(await(e.
find(o=>o.loaded)||e[0]).get())()}window._JUPYTERLAB??={};window._JUPYTERLAB[h]={init:t=>{Z=t},get:async t=>{if(t!=="./e\
xtension")throw new Error(`${h} has no ${t}`);let e=await q(yt);return()=>({__esModule:!0,default:e})}};})();
