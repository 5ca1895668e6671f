"use strict";(()=>{function k(t,e={},...n){let o=document.createElement(t);for(let[r,s]of Object.entries(e))typeof s=="function"?o.addEventListener(
r.slice(2),s):s===!0?o.setAttribute(r,""):s!==!1&&s!=null&&o.setAttribute(r,String(s));return o.append(...et(n)),o}function et(t){return t.filter(e=>e!=null&&e!==!1)}function O(t,e){let{target:n}=t;return n instanceof Element?n.closest(e):null}var nt=t=>t/2**32|0,ot=t=>t>>>0;function D(t,e,n,o){let r=nt(n),s=ot(n);t.setUint32(e,o?s:r,o),t.setUint32(e+4,o?r:s,o)}function $(t){return t instanceof Uint8Array||ArrayBuffer.isView(t)&&t.constructor.name==="Uint8Array"&&"BYTES_PER_ELEME\
NT"in t&&t.BYTES_PER_ELEMENT===1}var L=t=>t?`"${t}" `:"";function rt(t,e=""){if(typeof t!="number")throw new TypeError(L(
e)+"expected number, got "+typeof t);if(!Number.isSafeInteger(t)||t<0)throw new RangeError(L(e)+"expected integer >= 0, \
got "+t);return t}function g(t,e,n=""){if($(t)&&(e===void 0||t.length===e))return t;e!==void 0&&rt(e,"length");let o=$(t),r=e!==void 0?` o\
f length ${e}`:"",s=o?`length=${t.length}`:`type=${typeof t}`,i=L(n)+"expected Uint8Array"+r+", got "+s;throw o?new RangeError(
i):new TypeError(i)}var st=(t,e)=>{if(t===null||typeof t!="object"||Array.isArray(t))throw new TypeError((e==="object"?"":`"${e}" `)+"expect\
ed object, got type="+typeof t)},M=(t,e)=>{st(t,e);let n=Object.getPrototypeOf(t);if(n!==Object.prototype&&n!==null)throw new TypeError(
`"${e}" expected plain object`);if(Object.hasOwn(t,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};
function B(t,e=!0){if(t.destroyed)throw new Error("hash was destroyed");if(e&&t.finished)throw new Error("digest() was a\
lready called")}function j(t,e){g(t,void 0,"output");let n=e.outputLen;if(!(t.length>=n))throw new RangeError('"output" \
expected length >= '+n)}function y(...t){for(let e=0;e<t.length;e++)t[e].fill(0)}function m(t){return new DataView(t.buffer,t.byteOffset,t.byteLength)}
function l(t,e){return t<<32-e|t>>>e}var ct=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",it=Array.from({length:256},(t,e)=>e.
toString(16).padStart(2,"0"));function F(t){if(g(t),ct)return t.toHex();let e="";for(let n=0;n<t.length;n++)e+=it[t[n]];
return e}function G(t){if(typeof t!="string")throw new TypeError("string expected");let e=new TextEncoder().encode(t);try{return new Uint8Array(
e)}finally{y(e)}}function ft(t,e,n="opts"){return M(t,"defaults"),e!==void 0&&M(e,n),Object.assign(Object.create(null),t,e)}function N(t,e={}){
if(typeof t!="function")throw new TypeError('"hashCons" expected function, got type='+typeof t);e=ft({},e,"info");let n=(r,s)=>t(
s).update(r).digest(),o=t(void 0);return n.outputLen=o.outputLen,n.blockLen=o.blockLen,n.canXOF=o.canXOF,n.create=r=>t(r),
Object.assign(n,e),Object.freeze(n)}var R=t=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,t])});function I(t,e,n){return t&e^~t&n}function P(t,e,n){return t&e^t&n^e&n}var E=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,n,o,r){
this.blockLen=e,this.outputLen=n,this.padOffset=o,this.isLE=r,this.buffer=new Uint8Array(e),this.view=m(this.buffer)}update(e){
B(this),g(e);let{view:n,buffer:o,blockLen:r}=this,s=e.length,i=!1;for(let c=0;c<s;){let f=Math.min(r-this.pos,s-c);if(f===
r){let u=m(e);for(;r<=s-c;c+=r)this.process(u,c);i=!0;continue}o.set(c===0&&f===s?e:e.subarray(c,c+f),this.pos),this.pos+=
f,c+=f,this.pos===r&&(this.process(n,0),this.pos=0,i=!0)}return this.length+=e.length,i&&this.roundClean(),this}digestInto(e){
B(this),j(e,this),this.finished=!0;let{buffer:n,view:o,blockLen:r,isLE:s}=this,{pos:i}=this;n[i++]=128,n.fill(0,i),this.
padOffset>r-i&&(this.process(o,0),n.fill(0)),D(o,r-8,this.length*8,s),this.process(o,0),this.roundClean();let c=e===n?o:
m(e),f=this.outputLen,u=f/4,d=this.get();if(f%4||u>d.length)throw new Error("invalid outputLen");for(let a=0;a<u;a++)c.setUint32(
4*a,d[a],s)}digest(){let{buffer:e,outputLen:n}=this;this.digestInto(e);let o=e.slice(0,n);return this.destroy(),o}_cloneIntoMeta(e){
let{buffer:n,length:o,finished:r,destroyed:s,pos:i}=this;return e.destroyed=s,e.finished=r,e.length=o,e.pos=i,i&&e.buffer.
set(n),e}clone(){return this._cloneInto()}},W=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,2600822924,
528734635,1541459225]);var at=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,
310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,
1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,
773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,
3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,
1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),x=new Uint32Array(64),_=class extends E{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,n){
super(64,e,8,!1),this.A=n[0]|0,this.B=n[1]|0,this.C=n[2]|0,this.D=n[3]|0,this.E=n[4]|0,this.F=n[5]|0,this.G=n[6]|0,this.
H=n[7]|0}get(){let{A:e,B:n,C:o,D:r,E:s,F:i,G:c,H:f}=this;return[e,n,o,r,s,i,c,f]}set(e,n,o,r,s,i,c,f){this.A=e|0,this.B=
n|0,this.C=o|0,this.D=r|0,this.E=s|0,this.F=i|0,this.G=c|0,this.H=f|0}_cloneInto(e){return(e||=new this.constructor).set(
...this.get()),this._cloneIntoMeta(e)}process(e,n){for(let a=0;a<16;a++,n+=4)x[a]=e.getUint32(n,!1);for(let a=16;a<64;a++){
let b=x[a-15],p=x[a-2],U=l(b,7)^l(b,18)^b>>>3,H=l(p,17)^l(p,19)^p>>>10;x[a]=H+x[a-7]+U+x[a-16]|0}let{A:o,B:r,C:s,D:i,E:c,
F:f,G:u,H:d}=this;for(let a=0;a<64;a++){let b=l(c,6)^l(c,11)^l(c,25),p=d+b+I(c,f,u)+at[a]+x[a]|0,H=(l(o,2)^l(o,13)^l(o,22))+
P(o,r,s)|0;d=u,u=f,f=c,c=i+p|0,i=s,s=r,r=o,o=p+H|0}o=o+this.A|0,r=r+this.B|0,s=s+this.C|0,i=i+this.D|0,c=c+this.E|0,f=f+
this.F|0,u=u+this.G|0,d=d+this.H|0,this.set(o,r,s,i,c,f,u,d)}roundClean(){y(x)}destroy(){this.destroyed=!0,this.set(0,0,
0,0,0,0,0,0),y(this.buffer)}},C=class extends _{constructor(){super(32,W)}};var K=N(()=>new C,R(1));var v="setup",J=[v,"form","rig"],dt=[...J,"mark"];function ut(t){return F(K(G(t.replace(/\r\n?/g,`
`).replace(/\n+$/,""))))}var w=t=>t.getMetadata("tags")||[],Y=t=>w(t).includes(v),T=t=>w(t).some(e=>dt.includes(e));function S(t,e){
return t.content.widgets.filter(({model:n})=>n.type==="code"&&w(n).some(o=>J.includes(o))&&e.has(ut(n.sharedModel.getSource())))}
function Q({model:{outputs:t}}){for(let e=0;e<t.length;e+=1)if(t.get(e).type==="error")return!0;return!1}function A(t){return JSON.
stringify(t.content.widgets.map(({model:e})=>[e.sharedModel.getSource(),T(e)?null:e.executionCount??null]))}var h="twoshaft-opener",lt="if-missing",xt=3,ht=300;async function z(t){let[{PageConfig:e},{NotebookActions:n}]=await Promise.
all([t("@jupyterlab/coreutils"),t("@jupyterlab/notebook")]),o=`${e.getOption("fullLabextensionsUrl")}/${h}/static`;return{
id:`${h}:plugin`,description:"Shows the forms and rigs of a course notebook as soon as it is opened.",autoStart:!0,activate:r=>{
if(bt(o),e.getOption("twoshaftRole")!=="apprentice")return;document.head.append(k("style",{},".twoshaft-notebook{--jp-ce\
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
:none}}")),pt(r);let s=JSON.parse(e.getOption("twoshaftReleased")||"[]"),i=wt(o,s);r.restored.then(()=>{r.shell.collapseLeft?.(),
r.shell.collapseRight?.()}),r.docRegistry.addWidgetExtension("Notebook",{createNew:(c,f)=>{mt(c,f,i,n)}})}}}function bt(t){
globalThis.twoshaftScreens??=new Map;let e=import(`${t}/screens.js?v=1d1d0d1d04a8d908`);globalThis.twoshaftScreens.set("\
1d1d0d1d04a8d908",e),e.catch(n=>{globalThis.twoshaftScreens?.delete("1d1d0d1d04a8d908"),console.warn(`${h}: the screens \
could not be loaded`,n)})}function pt(t){document.addEventListener("click",e=>{let n=O(e,"a[data-twoshaft-open]");!n||e.
ctrlKey||e.metaKey||e.shiftKey||(e.preventDefault(),t.commands.execute("docmanager:open",{path:n.dataset.twoshaftOpen}))}),
document.addEventListener("twoshaft-signed-out",()=>{for(let e of[...t.shell.widgets("main")])e!==t.shell.currentWidget&&
e.close()})}async function wt(t,e){let n=new Set(e);try{let o=await fetch(`${t}/released-cells.json`);if(o.ok)for(let r of(await o.
json()).cells)n.add(r)}catch(o){console.warn(`${h}: the list of released cells could not be read`,o)}return n}function Z(t){
return new Promise((e,n)=>{let o=()=>{t.isDisposed?r(()=>n(new Error("closed"))):t.session?.kernel?.status==="idle"&&r(e)},
r=s=>{t.statusChanged.disconnect(o),t.disposed.disconnect(o),s()};t.statusChanged.connect(o),t.disposed.connect(o),o()})}
async function gt(t,e,n){let o=t.sessionContext;for(let r=0;r<xt;r+=1){await Z(o);let s=S(t,e).filter(({model:c})=>c.executionCount===
null);if(!s.length)return;let i=s.filter(({model:c})=>Y(c));for(let c of[i,s.filter(f=>!i.includes(f))])if(c.length&&(await n.
runCells(t.content,c,o),c.some(Q)))return;await new Promise(c=>setTimeout(c,ht))}}var V=t=>!!t.content.model?.getMetadata(
"twoshaft")?.open;function q(t){if(t.isDisposed||!t.content.model)return;let e=V(t);if(t.toggleClass("twoshaft-notebook",
e),!!e)for(let n of t.content.widgets)n.toggleClass("twoshaft-quiet",T(n.model)),n.toggleClass("twoshaft-if-missing",w(n.
model).includes(lt))}function yt(t,e){let n=A(t),o=(i,c)=>{c==="completed"&&(n=A(t))},r=()=>{t.isDisposed||!e.model.dirty||
A(t)!==n||(e.model.dirty=!1)},s=(i,{name:c,newValue:f})=>{c==="dirty"&&f&&setTimeout(r,0)};e.saveState.connect(o),e.model.
stateChanged.connect(s),r()}var X=new WeakMap;async function mt(t,e,n,o){if(await e.ready,t.isDisposed||(q(t),t.content.
model.cells.changed.connect(()=>setTimeout(()=>q(t),0)),!V(t)))return;yt(t,e);let r=t.sessionContext,s=X.get(e)??new Set;
X.set(e,s);let i=()=>r.session?.kernel?.id,c=async()=>{await r.ready,await Z(r);let d=i();if(t.isDisposed||s.has(d))return;
s.add(d);let a=await n;for(let{model:b}of S(t,a))b.executionCount=null;await gt(t,a,o)};t.node.addEventListener("twoshaf\
t-redraw",async()=>{let d=S(t,await n);t.isDisposed||await o.runCells(t.content,d,r)});let f=()=>c().catch(d=>{t.isDisposed||
console.warn(`${h}: the forms could not be shown`,d)}),u=(d,a)=>{a!=="restarting"&&a!=="autorestarting"||(s.delete(i()),
f())};r.statusChanged.connect(u),r.kernelChanged.connect((d,{newValue:a})=>{a&&f()}),f()}var tt;async function Et(t){let e=Object.values(tt[t]||{});if(!e.length)throw new Error(`${t} is not there`);return(await(e.
find(o=>o.loaded)||e[0]).get())()}window._JUPYTERLAB??={};window._JUPYTERLAB[h]={init:t=>{tt=t},get:async t=>{if(t!=="./\
extension")throw new Error(`${h} has no ${t}`);let e=await z(Et);return()=>({__esModule:!0,default:e})}};})();
