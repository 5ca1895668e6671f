"use strict";(()=>{function j(t,e={},...n){let o=document.createElement(t);for(let[s,r]of Object.entries(e))typeof r=="function"?o.addEventListener(
s.slice(2),r):r===!0?o.setAttribute(s,""):r!==!1&&r!=null&&o.setAttribute(s,String(r));return o.append(...ft(n)),o}function ft(t){return t.filter(e=>e!=null&&e!==!1)}function R(t,e){let{target:n}=t;return n instanceof Element?n.closest(e):null}var dt=t=>t/2**32|0,ut=t=>t>>>0;function F(t,e,n,o){let s=dt(n),r=ut(n);t.setUint32(e,o?r:s,o),t.setUint32(e+4,o?s:r,o)}function G(t){return t instanceof Uint8Array||ArrayBuffer.isView(t)&&t.constructor.name==="Uint8Array"&&"BYTES_PER_ELEME\
NT"in t&&t.BYTES_PER_ELEMENT===1}var _=t=>t?`"${t}" `:"";function lt(t,e=""){if(typeof t!="number")throw new TypeError(_(
e)+"expected number, got "+typeof t);if(!Number.isSafeInteger(t)||t<0)throw new RangeError(_(e)+"expected integer >= 0, \
got "+t);return t}function H(t,e,n=""){if(G(t)&&(e===void 0||t.length===e))return t;e!==void 0&&lt(e,"length");let o=G(t),s=e!==void 0?` o\
f length ${e}`:"",r=o?`length=${t.length}`:`type=${typeof t}`,i=_(n)+"expected Uint8Array"+s+", got "+r;throw o?new RangeError(
i):new TypeError(i)}var ht=(t,e)=>{if(t===null||typeof t!="object"||Array.isArray(t))throw new TypeError((e==="object"?"":`"${e}" `)+"expect\
ed object, got type="+typeof t)},N=(t,e)=>{ht(t,e);let n=Object.getPrototypeOf(t);if(n!==Object.prototype&&n!==null)throw new TypeError(
`"${e}" expected plain object`);if(Object.hasOwn(t,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};
function T(t,e=!0){if(t.destroyed)throw new Error("hash was destroyed");if(e&&t.finished)throw new Error("digest() was a\
lready called")}function I(t,e){H(t,void 0,"output");let n=e.outputLen;if(!(t.length>=n))throw new RangeError('"output" \
expected length >= '+n)}function L(...t){for(let e=0;e<t.length;e++)t[e].fill(0)}function k(t){return new DataView(t.buffer,t.byteOffset,t.byteLength)}
function h(t,e){return t<<32-e|t>>>e}var xt=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",bt=Array.from({length:256},(t,e)=>e.
toString(16).padStart(2,"0"));function W(t){if(H(t),xt)return t.toHex();let e="";for(let n=0;n<t.length;n++)e+=bt[t[n]];
return e}function K(t){if(typeof t!="string")throw new TypeError("string expected");let e=new TextEncoder().encode(t);try{return new Uint8Array(
e)}finally{L(e)}}function pt(t,e,n="opts"){return N(t,"defaults"),e!==void 0&&N(e,n),Object.assign(Object.create(null),t,e)}function P(t,e={}){
if(typeof t!="function")throw new TypeError('"hashCons" expected function, got type='+typeof t);e=pt({},e,"info");let n=(s,r)=>t(
r).update(s).digest(),o=t(void 0);return n.outputLen=o.outputLen,n.blockLen=o.blockLen,n.canXOF=o.canXOF,n.create=s=>t(s),
Object.assign(n,e),Object.freeze(n)}var v=t=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,t])});function J(t,e,n){return t&e^~t&n}function Y(t,e,n){return t&e^t&n^e&n}var C=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,n,o,s){
this.blockLen=e,this.outputLen=n,this.padOffset=o,this.isLE=s,this.buffer=new Uint8Array(e),this.view=k(this.buffer)}update(e){
T(this),H(e);let{view:n,buffer:o,blockLen:s}=this,r=e.length,i=!1;for(let c=0;c<r;){let a=Math.min(s-this.pos,r-c);if(a===
s){let d=k(e);for(;s<=r-c;c+=s)this.process(d,c);i=!0;continue}o.set(c===0&&a===r?e:e.subarray(c,c+a),this.pos),this.pos+=
a,c+=a,this.pos===s&&(this.process(n,0),this.pos=0,i=!0)}return this.length+=e.length,i&&this.roundClean(),this}digestInto(e){
T(this),I(e,this),this.finished=!0;let{buffer:n,view:o,blockLen:s,isLE:r}=this,{pos:i}=this;n[i++]=128,n.fill(0,i),this.
padOffset>s-i&&(this.process(o,0),n.fill(0)),F(o,s-8,this.length*8,r),this.process(o,0),this.roundClean();let c=e===n?o:
k(e),a=this.outputLen,d=a/4,l=this.get();if(a%4||d>l.length)throw new Error("invalid outputLen");for(let f=0;f<d;f++)c.setUint32(
4*f,l[f],r)}digest(){let{buffer:e,outputLen:n}=this;this.digestInto(e);let o=e.slice(0,n);return this.destroy(),o}_cloneIntoMeta(e){
let{buffer:n,length:o,finished:s,destroyed:r,pos:i}=this;return e.destroyed=r,e.finished=s,e.length=o,e.pos=i,i&&e.buffer.
set(n),e}clone(){return this._cloneInto()}},q=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,2600822924,
528734635,1541459225]);var wt=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,
310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,
1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,
773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,
3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,
1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),g=new Uint32Array(64),U=class extends C{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,n){
super(64,e,8,!1),this.A=n[0]|0,this.B=n[1]|0,this.C=n[2]|0,this.D=n[3]|0,this.E=n[4]|0,this.F=n[5]|0,this.G=n[6]|0,this.
H=n[7]|0}get(){let{A:e,B:n,C:o,D:s,E:r,F:i,G:c,H:a}=this;return[e,n,o,s,r,i,c,a]}set(e,n,o,s,r,i,c,a){this.A=e|0,this.B=
n|0,this.C=o|0,this.D=s|0,this.E=r|0,this.F=i|0,this.G=c|0,this.H=a|0}_cloneInto(e){return(e||=new this.constructor).set(
...this.get()),this._cloneIntoMeta(e)}process(e,n){for(let f=0;f<16;f++,n+=4)g[f]=e.getUint32(n,!1);for(let f=16;f<64;f++){
let p=g[f-15],w=g[f-2],y=h(p,7)^h(p,18)^p>>>3,m=h(w,17)^h(w,19)^w>>>10;g[f]=m+g[f-7]+y+g[f-16]|0}let{A:o,B:s,C:r,D:i,E:c,
F:a,G:d,H:l}=this;for(let f=0;f<64;f++){let p=h(c,6)^h(c,11)^h(c,25),w=l+p+J(c,a,d)+wt[f]+g[f]|0,m=(h(o,2)^h(o,13)^h(o,22))+
Y(o,s,r)|0;l=d,d=a,a=c,c=i+w|0,i=r,r=s,s=o,o=w+m|0}o=o+this.A|0,s=s+this.B|0,r=r+this.C|0,i=i+this.D|0,c=c+this.E|0,a=a+
this.F|0,d=d+this.G|0,l=l+this.H|0,this.set(o,s,r,i,c,a,d,l)}roundClean(){L(g)}destroy(){this.destroyed=!0,this.set(0,0,
0,0,0,0,0,0),L(this.buffer)}},D=class extends U{constructor(){super(32,q)}};var Q=P(()=>new D,v(1));var X="setup",z=[X,"form","rig"],gt=[...z,"mark"];function yt(t){return W(Q(K(t.replace(/\r\n?/g,`
`).replace(/\n+$/,""))))}var E=t=>t.getMetadata("tags")||[],Z=t=>E(t).includes(X),O=t=>E(t).some(e=>gt.includes(e));function A(t,e){
return t.content.widgets.filter(({model:n})=>n.type==="code"&&E(n).some(o=>z.includes(o))&&e.has(yt(n.sharedModel.getSource())))}
function $({model:{outputs:t}}){for(let e=0;e<t.length;e+=1)if(t.get(e).type==="error")return!0;return!1}function B(t){return JSON.
stringify(t.content.widgets.map(({model:e})=>[e.sharedModel.getSource(),O(e)?null:e.executionCount??null]))}function M(t){let e=t.session?.kernel;return e?.connectionStatus==="connected"&&!["dead","terminating"].includes(e.status)}
var V=new WeakSet;function tt(t,e,n){if(V.has(t)||t.isDisposed)return;V.add(t);let o=!1,s=async()=>{if(!o){for(o=!0;!t.isDisposed&&
(await new Promise(i=>setTimeout(i,1e3)),!(t.isDisposed||M(e)));)try{await n.refreshRunning();let i=e.session?.kernel;if(M(
e))break;!i||["dead","terminating"].includes(i.status)?await e.startKernel():i.connectionStatus==="disconnected"&&await i.
reconnect()}catch{}o=!1}},r=()=>{!t.isDisposed&&!M(e)&&!e.isRestarting&&s()};e.connectionStatusChanged.connect(r),e.statusChanged.
connect(r),e.sessionChanged.connect(r),e.kernelChanged.connect(r),r()}var b="twoshaft-opener",mt="if-missing",St=3,rt=300;async function st(t){let[{PageConfig:e},{NotebookActions:n},{IConnectionLost:o}]=await Promise.
all([t("@jupyterlab/coreutils"),t("@jupyterlab/notebook"),t("@jupyterlab/application")]),s=Et(e,n);if(e.getOption("twosh\
aftRole")!=="apprentice")return[s];let r={id:`${b}:line`,description:"Leaves it to the course's screens to say that the \
server cannot be reached.",autoStart:!0,provides:o,activate:()=>async()=>{}};return[s,r]}function Et(t,e){let n=`${t.getOption(
"fullLabextensionsUrl")}/${b}/static`;return{id:`${b}:plugin`,description:"Shows the forms and rigs of a course notebook\
 as soon as it is opened.",autoStart:!0,activate:o=>{At(n);let s=t.getOption("twoshaftRole")==="apprentice",r=t.getOption(
"twoshaftDesk");if(!s&&!r)return;document.head.append(j("style",{},".twoshaft-notebook{--jp-cell-prompt-width: 52px}.two\
shaft-notebook .twoshaft-if-missing,.twoshaft-notebook .twoshaft-quiet .jp-InputCollapser,.twoshaft-notebook .twoshaft-q\
uiet .jp-OutputCollapser,.twoshaft-notebook .twoshaft-quiet .jp-Cell-inputWrapper:has(.jp-InputPlaceholder),.twoshaft-no\
tebook .twoshaft-quiet .jp-OutputPrompt,.twoshaft-notebook .twoshaft-quiet .jp-OutputArea-promptOverlay,.twoshaft-notebo\
ok .jp-MarkdownCell .jp-InputPrompt,.twoshaft-notebook .jp-Notebook-footer{display:none}.twoshaft-notebook .twoshaft-qui\
et:not(:has(.jp-OutputArea-child)):has(.jp-InputPlaceholder){height:0;min-height:0;padding:0;overflow:hidden}.twoshaft-n\
otebook .twoshaft-quiet .jp-Cell-outputArea{padding-left:14px}.twoshaft-notebook .jp-RenderedMarkdown>:is(p,ul,ol,blockq\
uote,h1,h2,h3,h4){max-width:70ch}.twoshaft-notebook :is(.jp-MarkdownCell,.twoshaft-quiet).jp-Cell.jp-mod-active,.twoshaf\
t-notebook :is(.jp-MarkdownCell,.twoshaft-quiet).jp-Cell.jp-mod-selected{border-color:transparent;box-shadow:none;backgr\
ound:none}.twoshaft-notebook .jp-MarkdownCell .jp-RenderedMarkdown{border-color:transparent}.twoshaft-notebook :is(.jp-M\
arkdownCell,.twoshaft-quiet) .jp-Collapser{visibility:hidden}@media(max-width:700px){.twoshaft-notebook .jp-RenderedImag\
e,.twoshaft-notebook .jp-RenderedHTML figure{overflow-x:auto}.twoshaft-notebook .jp-RenderedHTML figure{min-width:0;max-\
width:100%}.twoshaft-notebook :is(.jp-RenderedImage img,.jp-RenderedHTML figure>svg){max-width:none}}.twoshaft-desk-note\
book .jp-NotebookPanel-toolbar{display:none}")),s&&Ht(o);let i=JSON.parse(t.getOption("twoshaftReleased")||"[]"),c=s?Lt(
n,i):Promise.resolve(new Set(i));o.restored.then(()=>{o.shell.collapseLeft?.(),o.shell.collapseRight?.()}),o.docRegistry.
addWidgetExtension("Notebook",{createNew:(a,d)=>{!s&&d.path!==r||(a.toggleClass("twoshaft-desk-notebook",!s),Bt(a,d,c,e,
o))}})}}}function At(t){globalThis.twoshaftScreens??=new Map;let e=import(`${t}/screens.js?v=35ada1bae23f04a2`);globalThis.
twoshaftScreens.set("35ada1bae23f04a2",e),e.catch(n=>{globalThis.twoshaftScreens?.delete("35ada1bae23f04a2"),console.warn(
`${b}: the screens could not be loaded`,n)})}function Ht(t){document.addEventListener("click",e=>{let n=R(e,"a[data-twos\
haft-open]");!n||e.ctrlKey||e.metaKey||e.shiftKey||(e.preventDefault(),t.commands.execute("docmanager:open",{path:n.dataset.
twoshaftOpen}))}),document.addEventListener("twoshaft-signed-out",()=>{for(let e of[...t.shell.widgets("main")])e!==t.shell.
currentWidget&&e.close()})}async function Lt(t,e){let n=new Set(e);try{let o=await fetch(`${t}/released-cells.json`);if(o.
ok)for(let s of(await o.json()).cells)n.add(s)}catch(o){console.warn(`${b}: the list of released cells could not be read`,
o)}return n}function ct(t){return new Promise((e,n)=>{let o=()=>{t.isDisposed?s(()=>n(new Error("closed"))):t.session?.kernel?.
status==="idle"&&s(e)},s=r=>{t.statusChanged.disconnect(o),t.disposed.disconnect(o),r()};t.statusChanged.connect(o),t.disposed.
connect(o),o()})}async function et(t,e,n){let o=t.sessionContext;for(let s=0;s<St;s+=1){await ct(o);let r=A(t,e).filter(
({model:c})=>c.executionCount===null);if(!r.length)return;let i=r.filter(({model:c})=>Z(c));for(let c of[i,r.filter(a=>!i.
includes(a))])if(c.length&&(await n.runCells(t.content,c,o),c.some($)))return;await new Promise(c=>setTimeout(c,rt))}}var kt=({
model:t})=>t.executionCount===null&&t.executionState!=="running"&&!t.outputs.length,it=t=>!!t.content.model?.getMetadata(
"twoshaft")?.open;function nt(t){if(t.isDisposed||!t.content.model)return;let e=it(t);if(t.toggleClass("twoshaft-noteboo\
k",e),!!e)for(let n of t.content.widgets)n.toggleClass("twoshaft-quiet",O(n.model)),n.toggleClass("twoshaft-if-missing",
E(n.model).includes(mt))}function Ct(t,e){let n=B(t),o=(i,c)=>{c==="completed"&&(n=B(t))},s=()=>{t.isDisposed||!e.model.
dirty||B(t)!==n||(e.model.dirty=!1)},r=(i,{name:c,newValue:a})=>{c==="dirty"&&a&&setTimeout(s,0)};e.saveState.connect(o),
e.model.stateChanged.connect(r),s()}var ot=new WeakMap;async function Bt(t,e,n,o,s){if(await e.ready,t.isDisposed||(nt(t),
t.content.model.cells.changed.connect(()=>setTimeout(()=>nt(t),0)),!it(t)))return;Ct(t,e);let r=t.sessionContext,i=ot.get(
e)??new Set;ot.set(e,i);let c=()=>r.session?.kernel?.id,a=0,d=async()=>{a+=1;try{await r.ready,await ct(r);let u=c();if(t.
isDisposed||i.has(u))return;i.add(u);let x=await n;for(let{model:S}of A(t,x))S.executionCount=null;await et(t,x,o)}finally{
a-=1,f()}},l,f=()=>{clearTimeout(l),l=window.setTimeout(async()=>{if(a||t.isDisposed||r.session?.kernel?.status!=="idle")
return;let u=A(t,await n);for(let S of u)S.outputHidden&&(S.outputHidden=!1),w(S);let{model:x}=t.content;if(!(!i.has(c())||
x?.isDisposed)&&!(!u.some(kt)||u.some($))){a+=1;try{await et(t,await n,o)}finally{a-=1}}},rt)},p=new WeakSet,w=({model:u})=>{
p.has(u)||(p.add(u),u.outputs.changed.connect(f))};t.content.model.cells.changed.connect(f),s.commands.commandExecuted.connect(
f),t.node.addEventListener("twoshaft-redraw",async()=>{let u=A(t,await n);t.isDisposed||await o.runCells(t.content,u,r)});
let y=()=>d().catch(u=>{t.isDisposed||console.warn(`${b}: the forms could not be shown`,u)}).finally(()=>tt(t,r,s.serviceManager.
sessions)),m=(u,x)=>{x!=="restarting"&&x!=="autorestarting"||(i.delete(c()),y())};r.statusChanged.connect(m),r.kernelChanged.
connect((u,{newValue:x})=>{x&&y()}),y()}var at;async function _t(t){let e=Object.values(at[t]||{});if(!e.length)throw new Error(`${t} is not there`);return(await(e.
find(o=>o.loaded)||e[0]).get())()}window._JUPYTERLAB??={};window._JUPYTERLAB[b]={init:t=>{at=t},get:async t=>{if(t!=="./\
extension")throw new Error(`${b} has no ${t}`);let e=await st(_t);return()=>({__esModule:!0,default:e})}};})();
