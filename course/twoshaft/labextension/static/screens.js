var _n="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...Wt(n)),r}function R(t,e={},...n){let r=document.createElementNS(_n,t);return Ht(r,e),r.append(...n),
r}function Ht(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function q(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function Ot(t,e){return s("select",{class:"ts-box",...t},...At(
e))}function Rt(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function jt(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Wt(t){return t.filter(e=>e!=null&&e!==!1)}var es=0;function ct(t){return es+=1,`two\
shaft-${t}-${es}-${Math.random().toString(36).slice(2,7)}`}function Jt(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function Q(t,e){return[...t.querySelectorAll(e)]}function Et(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function Tt(t){return t.ctrlKey||t.metaKey||t.altKey}function fe(t){let e=Q(t,"button, input, \
select");for(let n of e)n.disabled=!0}function ss(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function he(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function ot(t,e,n=t){return q(t,e,{"aria-label":n})}
function At(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function Ut(t){return t.map(e=>s("li",{},e))}var Bt=(t,e)=>s(
"div",{class:"ts-beside"},s("div",{},...Wt(t)),s("div",{},...Wt(e)));var je=new Map;function Mt(t,e){if(je.has(t))throw new Error(`the answer kind ${t} is registered twice`);je.set(t,e)}function Gt(t){
let e=je.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Zt(t){let e=ct(
t.kind);return{prompt:`${e}-prompt`,control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function Qt(t,e,n){
let{prompt:r}=Gt(t),o={class:"ts-prompt",id:e.prompt};if(r==="legend")return s("fieldset",{class:"ts-field","aria-descri\
bedby":n},s("legend",o,t.prompt));let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s(
"div",{class:"ts-field"},a)}function ge(t,e,n,r){let a=t.options.map(([c,i])=>{let d=s("input",{type:n,name:e.control,value:c});return{key:c,input:d,
row:s("label",{class:"ts-option"},d,s("span",{},i))}});for(let{input:c}of a)c.addEventListener("change",()=>{r(a.filter(
i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({row:c})=>c)),show(c){let i=c.
value==null?[]:[c.value].flat();for(let{key:d,input:l}of a)l.checked=i.includes(d)},setDisabled(c){for(let{input:i}of a)
i.disabled=c},refused(){}}}Mt("choice",{prompt:"legend",make:(t,e,n)=>ge(t,e,"radio",r=>n(r[0]))});Mt("choices",{prompt:"legend",make:(t,e,n)=>ge(t,e,"checkbox",n)});function me(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function we(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}Mt("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([c,i],d)=>{let l=`${e.control}-${d}`,u=s("labe\
l",{class:"ts-each-line",for:l},i),p=Ot({id:l},[["","choose"],...o]);return{key:c,box:p,row:s("li",{},u,p)}});for(let{box:c}of a)
c.addEventListener("change",()=>{n(me(a.map(({key:i,box:d})=>[i,d.value])))});return{element:s("ol",{class:"ts-each"},...a.
map(({row:c})=>c)),show(c){let i=we(c.value);for(let{key:d,box:l}of a)l.value=i.get(d)??""},setDisabled(c){for(let{box:i}of a)
i.disabled=c},refused(){}}}});function He(t){let[e="",...n]=t.split(" "),r=e==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:e,size:r,
side:o,place:a[0],points:null};let c=a.map(i=>{let[d,l]=i.split(",").map(Number);return[d,l]});return{hand:e,size:r,side:o,
place:"",points:c}}function We(t,{side:e,place:n,points:r}){return r||(e==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[e]??[])}function _e(t,e){let{hand:n,size:r,side:o,place:a}=He(e),c=[...t.stretches,...t.
holes].find(d=>d.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[o]??""}`}
function Fe(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function ns(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function os(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function rs(t,[e,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-e,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var Fn=.4;function as(t,e){let n=Fn,r=be(t,n);for(;r.
length>e;)n*=1.5,r=be(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function be(t,e){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=Un(n,r,t[c]);i>o&&([o,a]=[i,c])}return o<=
e?[n,r]:[...be(t.slice(0,a+1),e).slice(0,-1),...be(t.slice(a),e)]}function Un(t,e,n){let[r,o]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var ve=14,qn=3,Kn=.5,zn=12,Gn=["middle","inside","outside"],ke="round ";function Yn(t){let e=[];for(let n of t.split(" ")){
let r=e[e.length-1];r!==void 0&&r.length+n.length<zn?e[e.length-1]=`${r} ${n}`:e.push(n)}return e}function Xn(t,e){let n=t.
outline.map(([F])=>F),r=t.outline.map(([,F])=>F),[o,a]=[Math.min(...n)-ve,Math.max(...n)+ve],[c,i]=[Math.min(...r)-ve,Math.
max(...r)+ve],d=a-o,l=i-c,u=([F,z])=>`${(F-o).toFixed(1)} ${(i-z).toFixed(1)}`,p=(F,z)=>`M${F.map(u).join("L")}${z?"Z":""}`,
f=ct("face"),m=d/100,g=2.5*m,v=`font-size: calc(${g.toFixed(2)}px * var(--ts-grown, 1))`,b=2*m,L=(F,z)=>R("pattern",{id:`${f}\
-${F}`,width:b,height:b,patternUnits:"userSpaceOnUse"},R("path",{d:z,class:"tsp-hatch","stroke-width":m/4})),T=R("defs",
{},L("oil",`M0 ${b}L${b} 0`),L("dirt",`M0 ${b}L${b} 0M0 0L${b} ${b}`)),x=t.cavities.map(([,F])=>p(F,!0)).join(""),N=t.islands.
map(F=>p(F,!0)).join(""),y=p(t.outline,!0)+x,I=R("g"),C=R("g"),h=R("g"),$=R("g"),k=R("path",{class:"tsp-live",d:""}),O=R(
"path",{class:"tsp-chosen",d:""}),B=R("path",{class:"tsp-land",d:y,"fill-rule":"evenodd"}),W=R("path",{class:"tsp-edge",
d:y+N,"stroke-width":m/2.5}),Y=([F,z],X,ut="middle")=>{let ft={x:F-o,y:i-z,style:v,"text-anchor":ut};return R("text",{class:"\
tsp-text",...ft},X)},P=[(o+a)/2,(c+i)/2],S=(F,z)=>{let X=he(F,P)||1;return[F[0]+z*(P[0]-F[0])/X,F[1]+z*(P[1]-F[1])/X]};for(let{
x:F,y:z,d:X,leads:ut,name:ft}of t.holes){let lt={cx:F-o,cy:i-z,"stroke-width":m/4},gt=ut==="blind"?"tsp-hole tsp-blind":
"tsp-hole";h.append(R("circle",{...lt,r:X/2,class:gt})),ut==="to the outside"&&h.append(R("circle",{...lt,r:X/3,class:"t\
sp-hole"}));let[M,H]=S([F,z],-(X/2+4.4*m));h.append(Y([M,H],ft.replace("bolt ","")))}for(let F of t.guides){let[z,X]=[F.
x-o,i-F.y],ut=`M${z-m} ${X}h${b}M${z} ${X-m}v${b}`;h.append(R("path",{class:"tsp-guide",d:ut,"stroke-width":m/2}));let ft={
"stroke-width":m/5,"stroke-dasharray":`${m} ${m}`};h.append(R("circle",{cx:z,cy:X,r:F.reach,class:"tsp-reach",...ft}));let lt=S(
[F.x,F.y],F.reach+b),gt=(lt[0]-F.x)/(F.reach+b),M=gt>.5?"start":gt<-.5?"end":"middle",H=Yn(F.name),tt=Y(lt,"",M),et=(1-H.
length)/2;tt.append(...H.map((vt,it)=>R("tspan",{x:lt[0]-o,dy:`${it?1:et}em`},`${vt} `))),h.append(tt)}for(let{word:F,points:z,
width:X}of t.spots){let[ut]=F.split(" "),[ft,lt]=[z[0],z[z.length-1]],gt=he(ft,lt)||1,[M,H]=[-(lt[1]-ft[1])/gt*X/2,(lt[0]-
ft[0])/gt*X/2],tt=[[ft[0]+M,ft[1]+H],[lt[0]+M,lt[1]+H],[lt[0]-M,lt[1]-H],[ft[0]-M,ft[1]-H]],et=`url(#${f}-${ut})`;I.append(
R("path",{d:p(tt,!0),fill:et,class:"tsp-spot","stroke-width":m/4}));let vt=Y(S([(ft[0]+lt[0])/2,(ft[1]+lt[1])/2],9*m),ut);
vt.classList.add("tsp-spot-word"),h.append(vt)}let w=[100,50,20,10].find(F=>F<d/4)??10,D=`M${m} ${l-m}v${-m}v${m/2}h${w}\
v${-m/2}v${m}`,_={x:w+b,y:l-1.8*m,style:v};$.append(R("path",{class:"tsp-edge",d:D,"stroke-width":m/4}),R("text",{class:"\
tsp-text",..._},`${w} mm`));let U=`0 0 ${d.toFixed(1)} ${l.toFixed(1)}`,rt=R("svg",{viewBox:U,class:"tsp-face",role:"img",
"aria-label":e},T,B,I,C,W,h,O,k,$);rt.dataset.letters=g.toFixed(2),rt.dataset.grow="2.5";let bt=`max-width: ${(25*d/l).toFixed(
1)}rem`;return{frame:s("div",{class:"ts-pad-face",style:bt},rt),svg:rt,over:$,live:k,chosen:O,land:B,path:p,unit:m,box:{
left:o,right:a,low:c,high:i,width:d,height:l},place({clientX:F,clientY:z}){let X=rt.getBoundingClientRect(),ut=Math.min(
X.width/d,X.height/l);return[o+(F-X.left-(X.width-ut*d)/2)/ut,i-(z-X.top-(X.height-ut*l)/2)/ut]},strokes(F){C.replaceChildren(
...F.map($t))}};function $t(F){let z=He(F),X=We(t,z),ut=Fe(t,z.hand,Math.max(z.size,m/2)),ft=X.length>1?p(X,z.side==="ro\
und"):X.length?`${p(X)}h0.01`:"",lt=R("path",{d:ft,class:`tsp-stroke tsp-${z.hand}`,"stroke-width":ut});if(z.hand!=="fil\
m")return lt;let gt=Math.min(8,Math.max(.6,40*z.size)),M={"stroke-width":m/3,"stroke-dasharray":`${gt} ${gt}`};return R(
"g",{},lt,R("path",{d:ft,class:"tsp-grain",...M}))}}function ye({face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=Xn(
t,e),c=s("p",{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"ts-read ts-pad-trouble",role:"status"}),d=(S,w)=>s(
"span",{class:"ts-pair"},s("label",{for:w.id},S),w),l=Ot({id:ct("hand")},Object.entries(t.hands)),u=s("input",{class:"ts\
-box ts-size",id:ct("size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),p=s("label",{for:u.id},"\
thickness"),f=Ot({id:ct("place")},t.stretches.map(({id:S,name:w})=>[S,w]));f.append(s("optgroup",{label:"Round a hole"},
...t.holes.map(({id:S,name:w})=>s("option",{value:`${ke}${S}`},`round ${w}`))));let m=Ot({id:ct("side")},Gn.map(S=>[S,t.
sides[S]])),g=q("Lay it here",()=>C([I(f.value)])),v=q("Lay it on every stretch",()=>C(t.stretches.map(({id:S})=>I(S)))),
b=q("Take back the last pass",()=>{x&&r(x-1,!0)}),L=q("Clear the face",o),T={film:"",bead:""},x=0,N=!1;function y(){if(l.
value==="wipe")return"";let[S,w]=t.sizes[l.value],D=ns(u.value);if(D>=S&&D<=w)return u.removeAttribute("aria-invalid"),`\
 ${Number(D.toFixed(3))}`;let _=l.value==="film"?"the thickness of the film":"the diameter of the bead";return i.textContent=
u.value.trim()?`Read “${u.value}”: give ${_} from ${S} to ${w} mm.`:`First give ${_} in mm.`,u.setAttribute("aria-in\
valid","true"),u.focus(),null}function I(S){let w=y();if(w===null)return null;let D=S.startsWith(ke)?S:`${m.value} ${S}`;
return`${l.value}${w} ${D}`}function C(S){let w=S.filter(D=>D!==null);if(!(N||w.length<S.length)){if(x+w.length>t.most){
i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent="",c.textContent=w.length===
1?`Laid: ${_e(t,w[0])}`:`Laid on ${w.length} stretches`,n(w)}}function h(){let S=l.value==="wipe";p.textContent=l.value===
"bead"?"diameter":"thickness",u.disabled=N||S,u.value=S?"":T[l.value],u.placeholder=S?"":"mm",g.textContent=S?"Wipe here":
"Lay it here",v.textContent=S?"Wipe every stretch":"Lay it on every stretch",i.textContent="",$()}function $(){let S=f.value.
startsWith(ke);m.disabled=N||S;let w=We(t,S?{side:"round",place:f.value.slice(ke.length)}:{side:m.value,place:f.value});
a.chosen.setAttribute("d",w.length?a.path(w,S):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}l.addEventListener(
"change",h),u.addEventListener("input",()=>{T[l.value]=u.value}),f.addEventListener("change",$),m.addEventListener("chan\
ge",$),u.addEventListener("keydown",S=>{S.key==="Enter"&&(S.preventDefault(),g.click())});let k=null;a.svg.addEventListener(
"pointerdown",S=>{if(N||S.button>0)return;k=[a.place(S)],a.svg.setPointerCapture(S.pointerId);let w=Math.max(1,Number(T.
bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(Fe(t,l.value,w)))}),a.svg.addEventListener("pointer\
move",S=>{if(!k)return;let w=a.place(S);he(w,k[k.length-1])<Kn||(k.push(w),a.live.setAttribute("d",a.path(k)))});let O=S=>{
if(!k)return;let w=k;if(k=null,a.live.setAttribute("d",""),S.type==="pointercancel")return;if(os(w)<qn){f.value=rs(t,w[0]),
$();return}let D=y();if(D===null)return;let _=as(w,t.points).map(U=>U.join(","));C([`${l.value}${D} at ${_.join(" ")}`])};
a.svg.addEventListener("pointerup",O),a.svg.addEventListener("pointercancel",O);let B=s("ol",{class:"ts-passes","aria-la\
bel":"Passes, in the order they were done"}),W=s("p",{class:"ts-hint"},"Nothing is laid yet."),Y=s("div",{class:"ts-pad-\
tools"},s("div",{class:"ts-tools"},d("tool",l),s("span",{class:"ts-pair"},p,u)),s("div",{class:"ts-tools"},d("where",f),
d("runs",m)),s("div",{class:"ts-tools"},g,v,b,L),i,c),P=()=>Q(B,"button");return h(),{drawing:a,tools:Y,list:B,empty:W,frame:a.
frame,element:s("div",{class:"ts-pad"},a.frame,Y,s("div",{class:"ts-pad-list"},W,B)),show(S,w=[]){x=S.length,a.strokes(S),
W.hidden=x>0;let D=P().findIndex(_=>_.matches(":focus"));B.replaceChildren(...S.map((_,U)=>s("li",{},s("span",{},`${_e(t,
_)}${w[U]?`, ${w[U]}`:""} `),q("take out",()=>r(U,!1),{class:"ts-button ts-remove",disabled:N,"aria-label":`Take out pas\
s ${U+1}`})))),D>=0&&(P()[Math.min(D,x-1)]??g).focus()},setDisabled(S){N=S;for(let w of[l,f,g,v,b,L,...P()])w.disabled=S;
u.disabled=S||l.value==="wipe",$()}}}Mt("film",{prompt:"words",make(t,e,n){let r=[],o=c=>{r=c,a.show(r),n(r)},a=ye({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>o([...r,...c]),onRemove:c=>o(r.filter((i,d)=>d!==c)),onClear:()=>o([])});
return{element:a.element,show(c){r=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function is(t,{send:e,typing:n,said:r=a=>String(a??""),wrong:o=a=>!!a.error}){let a=s("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||a.value.trim()!==c.trim(),d=()=>{i()&&(c=a.value,e(a.value))};return a.
addEventListener("blur",d),a.addEventListener("keydown",l=>{let u=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!==
"Enter"&&!u||(l.preventDefault(),d())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:d,pending:i,refused(){
c=null},show(l){a.setAttribute("aria-invalid",String(o(l))),!(document.activeElement===a&&a.value!==c)&&(c=r(l.value),a.
value=c)}}}function cs(t,e){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${e}`.trim()}function ls(t,e,n,r){let o=Ot({"aria-label":"Choose the unit","aria-describedby":r},[["","unit"],...e.map(a=>[a,a])]);return o.
addEventListener("change",()=>{o.value&&(t.value=cs(t.value,o.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener(
"input",()=>{o.value=""}),o}Mt("number",{prompt:"label",make(t,e,n,r){let o=t.units,{box:a,flush:c,pending:i,refused:d,show:l}=is(e,{send:n,typing:r}),
u=s("span",{class:"ts-hint",id:e.hint},t.hint),p=o.length?ls(a,o,c,e.prompt):null;return{element:s("div",{class:"ts-line\
-of"},a,p,u),show:l,setDisabled(f){a.disabled=f,p&&(p.disabled=f)},refused:d,flush:c,pending:i}}});function us(t,e){let r=[...new Set([t??[]].flat())].filter(o=>e.includes(String(o))).map(String);return[...r,...e.filter(
o=>!r.includes(o))]}var te=(t,e)=>t.join(`
`)===e.join(`
`),ds=t=>`#${t.keys[0]}`,xe=class{constructor(e,n){this.labels=new Map(e.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
r,,o]of e)o&&this.stages.set(r,o);this.staged=this.stages.size>0,this.order=[...n],this.current=this.order[0],this.block=
new Set,this.held=null,this.past=[],this.future=[],this.closed=new Set}label(e){return this.labels.get(e)??e}runs(){let e=[];
for(let n of this.order){let r=this.stages.get(n)??null,o=e.at(-1);o&&r!==null&&o.stage===r?o.keys.push(n):e.push({stage:r,
keys:[n]})}return e}rows(){if(!this.staged)return this.order.map(n=>({id:n,key:n,level:1}));let e=[];for(let n of this.runs()){
let[r]=n.keys;if(n.keys.length<2){e.push({id:r,key:r,level:1});continue}if(e.push({id:ds(n),run:n,level:1}),!this.closed.
has(String(n.stage)))for(let o of n.keys)e.push({id:o,key:o,level:2})}return e}row(e){return this.rows().find(n=>n.id===
e)}settle(){let e=this.rows();if(!e.some(n=>n.id===this.current)){let n=this.current.replace(/^#/,""),r=e.find(o=>o.run?.
keys.includes(n));this.current=(r??e.find(o=>o.id===n)??e[0]).id}return e}unit(){let e=this.row(this.current);return e?.
run?e.run.keys:this.block.has(this.current)&&this.block.size>1?this.order.filter(n=>this.block.has(n)):[this.current]}unitName(){
let e=this.row(this.current);if(e?.run)return`Stage ${e.run.stage}`;let n=this.unit();return n.length>1?`Block of ${n.length}\
 steps`:this.label(n[0])}where(){let e=this.unit(),n=this.order.indexOf(e[0])+1;return e.length>1?`positions ${n} to ${n+
e.length-1} of ${this.order.length}`:`position ${n} of ${this.order.length}`}rest(){let e=this.unit();return this.order.
filter(n=>!e.includes(n))}get isFirst(){return this.order.indexOf(this.unit()[0])===0}get isLast(){return this.order.indexOf(
String(this.unit().at(-1)))===this.order.length-1}insertedAt(e){let n=this.rest();return[...n.slice(0,e),...this.unit(),
...n.slice(e)]}shifted(e){let n=this.rest(),r=this.order.indexOf(this.unit()[0]),o=!!this.row(this.current)?.run,a=l=>n[e>
0?l:l-1],c=a(r);if(c===void 0)return this.insertedAt(r);let i=this.stages.get(c),d=i!==void 0&&(o||this.closed.has(i));do
r+=e;while(d&&a(r)!==void 0&&this.stages.get(a(r))===i);return this.insertedAt(r)}atPosition(e){return this.insertedAt(Math.
min(e-1,this.order.length-this.unit().length))}beside(e,n){return this.insertedAt(this.rest().indexOf(e)+(n==="after"?1:
0))}gathered(){let e=new Map;for(let n of this.order){let r=this.stages.get(n)??n;e.set(r,[...e.get(r)??[],n])}return[...e.
values()].flat()}dropAt(e,n){let r=e.run?e.run.keys:[e.key],o=e.run&&!this.closed.has(String(e.run.stage));return n&&!o?
{target:String(r.at(-1)),side:"after"}:{target:r[0],side:"before"}}take(e){if(te(e,this.order))return!1;let n=this.row(this.
current)?.run;if(this.held===null&&this.remember(this.order),this.order=e,n){let[r]=n.keys,o=this.rows().find(a=>a.run?.
keys.includes(r));this.current=o?o.id:r}return!0}remember(e){this.past.push(e),this.future=[]}undo(){return this.#t(this.
past,this.future)}redo(){return this.#t(this.future,this.past)}#t(e,n){let r=e.pop();return r?(n.push(this.order),this.order=
r,!0):!1}pickUp(){this.held=this.order}putDown(){let e=this.held;return this.held=null,e===null||te(e,this.order)?!1:(this.
remember(e),!0)}putBack(){this.held&&(this.order=this.held),this.held=null}set(e,n){this.order=[...e],n&&([this.past,this.
future]=[[],[]])}toggleBlock(e){this.block.has(e)?this.block.delete(e):this.block.add(e)}blockTo(e){let n=[this.order.indexOf(
this.current),this.order.indexOf(e)].sort((r,o)=>r-o);n[0]>=0&&(this.block=new Set(this.order.slice(n[0],n[1]+1)))}fold(e,n){
let r=e.run?e.run.stage:this.stages.get(e.key),o=e.run?e.run.keys[0]:e.key,a=this.runs().find(c=>c.keys.includes(o));return!r||
!a||a.keys.length<2?null:(n?this.closed.add(r):this.closed.delete(r),n&&(this.current=ds(a)),r)}sought(e){let n=this.rows(),
r=n.findIndex(c=>c.id===this.current),o=e.length>1?r:r+1,a=c=>(c.run?String(c.run.stage):this.label(c.key)).toLowerCase();
return[...n.slice(o),...n.slice(0,o)].find(c=>a(c).startsWith(e))}};var Vn=12,Jn=700,Zn=5,ps=32,Qn=8;function $e({label:t,steps:e,order:n,onChange:r}){let o=new xe(e,n),{staged:a}=o,c=!1,i={},
d=!1,l=new Map,u=s("div",{"aria-live":"assertive",class:"ts-hidden"}),p=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),f=q("Up",()=>_(-1),{"aria-label":"Move the chosen step up"}),m=q("Down",
()=>_(1),{"aria-label":"Move the chosen step down"}),g=q("Undo",()=>o.undo()&&bt("Undone")),v=q("Redo",()=>o.redo()&&bt(
"Done again")),b=q("Choose several",()=>X(!c),{"aria-pressed":"false"}),L=q("Gather stages",()=>D(o.gathered(),"Steps of\
 one stage now stand together")),T=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Move\
 the chosen step to position",onkeydown:E=>{E.key==="Enter"&&U()}}),x=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),N=s("span",{class:"ts-chosen"}),y=q("Move",U,{"aria-label":"Move to this position"}),I=q(
"Move",rt,{"aria-label":"Move before this step"}),C=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},f,m,g,v,b,a?L:null),h=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",T,y),s("span",{class:"\
ts-pair"},"or before ",x,I)),$="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),k=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},$),h),O=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),C,N,p,k,u);function B(E){u.
textContent=E}function W(E=""){B(`${o.unitName()}${E}, ${o.where()}`)}function Y(E){let j=l.get(E.id);if(j)return j;let G=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return G.dataset.row=E.id,l.set(E.id,G),G}function P(E=!1){let j=o.settle(),
G=new Set(j.map(J=>J.id));for(let[J,kt]of l)G.has(J)||(kt.remove(),l.delete(J));let dt=o.unit(),Lt=new Set(dt),pt=p.firstElementChild;
for(let J of j){let kt=Y(J);kt===pt?pt=pt.nextElementSibling:p.insertBefore(kt,pt),S(kt,J,Lt)}T.value=String(o.order.indexOf(
dt[0])+1);let st=[...o.order.entries()].filter(([,J])=>!Lt.has(J));x.replaceChildren(...st.map(([J,kt])=>s("option",{value:kt},
`${J+1}  ${o.label(kt)}`))),N.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,f.disabled=d||o.isFirst,m.disabled=d||
o.isLast,g.disabled=d||o.past.length===0,v.disabled=d||o.future.length===0;for(let J of[b,L,T,x,y,I])J.disabled=d;if(p.setAttribute(
"aria-disabled",String(d)),p.classList.toggle("ts-long",o.order.length>Vn),E){let J=l.get(o.current);J?.focus({preventScroll:!0}),
J?.scrollIntoView({block:"nearest"})}}function S(E,j,G){let dt=j.id===o.current,Lt=j.run?!1:o.block.has(j.key),pt=o.held!==
null&&(j.run?dt:G.has(j.key)),st=o.order.indexOf(j.run?j.run.keys[0]:j.key),J=j.run?j.run.keys.map(Z=>i[Z]?.length??0):i[j.
key],kt=j.run?o.closed.has(String(j.run.stage)):!1,Pt=JSON.stringify([st,j.level,dt,Lt,pt,J,j.run&&[j.run.keys.length,kt]]);
if(E.dataset.looks===Pt)return;E.dataset.looks=Pt,E.tabIndex=dt?0:-1,E.setAttribute("aria-selected",String(Lt)),E.classList.
toggle("ts-current",dt),E.classList.toggle("ts-inblock",Lt),E.classList.toggle("ts-held",pt),E.classList.toggle("ts-leve\
l2",j.level===2),a&&E.setAttribute("aria-level",String(j.level));let _t=pt?" picked up":Lt?" in block":"",Vt=_t?s("span",
{class:"ts-state"},_t):"",zt=Z=>s("span",{class:"ts-number","aria-hidden":"true"},Z);if(j.run){let{keys:Z,stage:at}=j.run;
E.setAttribute("aria-expanded",String(!kt));let mt=kt?Z.filter(xt=>i[xt]?.length).length:0;E.replaceChildren(zt(`${st+1}\
–${st+Z.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},kt?"▸":"▾"),s("span",{class:"ts-what"},s("b",{},
at),` ${Z.length} steps`,mt?` – ${mt} with a remark`:"",Vt));return}let A=(i[j.key]??[]).map(Z=>s("span",{class:`ts-no\
te ts-note-${Z.kind}`},jt(Z.shape??""),s("b",{},Z.word),` ${Z.text}`)),K=a&&j.level===1;E.classList.toggle("ts-troubled",
A.length>0),E.replaceChildren(zt(String(st+1)),s("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),s("span",{class:"t\
s-what"},o.label(j.key),K?s("span",{class:"ts-stage"},` ${o.stages.get(j.key)??""}`):"",Vt,...A))}let w=()=>r([...o.order]);
function D(E,j){if(!o.take(E)){B(`${o.unitName()} stays at ${o.where()}`);return}P(!0),j?B(j):W(),o.held===null&&w()}function _(E){
d||D(o.shifted(E))}function U(){if(d)return;let E=Number.parseInt(T.value,10),j=o.order.length;E>=1&&E<=j?D(o.atPosition(
E)):(B(`Type a position from 1 to ${j}`),N.textContent=`Type a position from 1 to ${j}.`)}function rt(){!d&&x.value&&D(o.
beside(x.value,"before"))}function bt(E){P(),B(`${E}. ${o.unitName()}, ${o.where()}`),w()}function V(){o.pickUp(),P(!0),
W(" picked up")}function $t(){o.putDown()&&w(),P(!0),W(" put down")}function F(){o.putDown()&&w(),P()}function z(){o.putBack(),
P(!0),W(" put back")}function X(E){c=E,b.setAttribute("aria-pressed",String(E)),E||(o.block=new Set),P(),B(E?"Choose the\
 steps of a block":"Block let go")}function ut(E){o.toggleBlock(E);let j=o.block.has(E)?"in the block":"out of the block";
B(`${o.label(E)} ${j}, ${o.block.size} in it`)}function ft(E,j){let G=o.fold(E,j);G&&(P(!0),B(`${G} ${j?"closed":"open"}`))}
p.addEventListener("keydown",E=>{if(Tt(E))return;let j=o.rows(),G=j.findIndex(kt=>kt.id===o.current),dt=kt=>{o.current=j[Math.
max(0,Math.min(j.length-1,kt))].id,P(!0)},Lt=j[G],{key:pt}=E,st=pt==="ArrowUp"?-1:pt==="ArrowDown"?1:null,J=o.held!==null;
if(st&&(E.shiftKey||J))_(st);else if(st)dt(G+st);else if(J&&pt==="Escape")z();else if(pt===" ")d||(J?$t:V)();else if(J&&
pt==="Enter")$t();else if(pt==="Enter"&&!Lt.run)d||(ut(Lt.key),P(!0));else if(pt==="Home"&&!J)dt(0);else if(pt==="End"&&
!J)dt(j.length-1);else if(a&&pt==="ArrowLeft")ft(Lt,!0);else if(a&&pt==="ArrowRight")ft(Lt,!1);else if(pt.length===1&&!J)
M(pt);else return;E.preventDefault()});let lt="",gt;function M(E){lt+=E.toLowerCase(),clearTimeout(gt),gt=window.setTimeout(
()=>{lt=""},Jn);let j=o.sought(lt);j&&(o.current=j.id,P(!0))}p.addEventListener("focusout",({relatedTarget:E})=>{o.held!==
null&&E instanceof Node&&!p.contains(E)&&F()});let H=null;p.addEventListener("pointerdown",E=>{let j=o.row(Et(E,".ts-ste\
p")?.dataset.row??"");if(!j||E.button!==0)return;if(j.run&&Et(E,".ts-fold")){ft(j,!o.closed.has(String(j.run.stage))),E.
preventDefault();return}let G=Et(E,".ts-grip, .ts-number"),dt=E.ctrlKey||E.metaKey;o.held!==null&&F(),!j.run&&!d&&(E.shiftKey?
o.blockTo(j.key):(dt||c)&&!G&&ut(j.key)),o.current=j.id,P(!0),E.preventDefault(),!(d||E.shiftKey||dt)&&(E.pointerType!==
"mouse"&&!G||(H={x:E.clientX,y:E.clientY,id:E.pointerId,carried:null},p.setPointerCapture(E.pointerId)))}),p.addEventListener(
"pointermove",E=>{if(!H||E.pointerId!==H.id)return;let{clientX:j,clientY:G}=E;if(!H.carried){if(Math.hypot(j-H.x,G-H.y)<
Zn)return;H.carried=tt()}Object.assign(H.carried,{x:j,y:G}),et(H.carried)});function tt(){let E=s("div",{class:"twoshaft\
 ts-ghost","aria-hidden":"true"},o.unit().length>1?o.unitName():o.label(o.unit()[0]));document.body.append(E);let j=s("d\
iv",{class:"ts-line","aria-hidden":"true"});p.append(j),p.classList.add("ts-dragging");for(let G of o.unit())l.get(G)?.classList.
add("ts-lifted");return{ghost:E,line:j,timer:requestAnimationFrame(vt),x:0,y:0,drop:null}}function et(E){E.ghost.style.transform=
`translate(${E.x+12}px, ${E.y+8}px)`;let G=o.rows().map(st=>{let J=Y(st).getBoundingClientRect();return{row:st,box:J,offset:E.
y-(J.top+J.height/2)}}).reduce((st,J)=>Math.abs(J.offset)<Math.abs(st.offset)?J:st),dt=G.offset>0;E.drop=o.dropAt(G.row,
dt);let pt=(dt?G.box.bottom:G.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;E.line.style.top=`${pt}px`}function vt(){
let E=H?.carried;if(E){for(let j of[p,ss(p)]){let dt=j===document.scrollingElement?{top:0,bottom:innerHeight}:j.getBoundingClientRect(),
Lt=E.y<dt.top+ps?-1:E.y>dt.bottom-ps?1:0;if(!Lt)continue;let pt=j.scrollTop;if(j.scrollTop+=Lt*Qn,j.scrollTop!==pt){et(E);
break}}E.timer=requestAnimationFrame(vt)}}function it(E){let j=H?.carried;if(H=null,!j)return;cancelAnimationFrame(j.timer),
j.ghost.remove(),j.line.remove(),p.classList.remove("ts-dragging");for(let dt of l.values())dt.classList.remove("ts-lift\
ed");let{drop:G}=j;if(!E||!G||o.unit().includes(G.target)){P(!0),B(`${o.unitName()} stays at ${o.where()}`);return}D(o.beside(
G.target,G.side))}return p.addEventListener("pointerup",()=>it(!0)),p.addEventListener("pointercancel",()=>it(!1)),O.addEventListener(
"keydown",E=>{!H?.carried||E.key!=="Escape"||(it(!1),E.stopPropagation())}),P(),{element:O,tools:C,order:()=>[...o.order],
change:(E,j)=>{d||D(E,j)},setOrder(E,j=!1){o.held!==null||H?.carried||te(E,o.order)||(o.set(E,j),P())},setNotes(E){i=E??
{},P()},setDisabled(E){d=E,P()}}}Mt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=$e({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
us(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function hs(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[c,i]of t.entries()){let[d,l]=e[i]??[null,null];d!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[d??r[0],l??(d===null?r[1]:0)];let u=n(...r);o.push(u);let p=a.get(u.join(" "))??{at:u,numbers:[]};
p.numbers.push(c+1),a.set(u.join(" "),p)}return{points:o,stops:[...a.values()]}}function gs(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function ms(t,e){return t.filter((n,r)=>r!==e)}function ws(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var fs=.6;function bs(t,[e,n],[r,
o]){let a=Object.entries(t).filter(([d])=>!d.startsWith("firm:")),c=(d,l)=>a.filter(([,u])=>u[0]===d&&u[1]===l).map(([u])=>u).
slice(0,1),i=Math.abs(e-r)>fs;return[...i&&Math.abs(n)>fs?c(null,0):[],...i?c(r,null):[],...o||!i?c(null,o):[]]}var re=9,Se=.7*re,Ue=44;function Le(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*re+2*Ue,
c=(o-r)*Se+2*Ue,i=(f,m)=>[Ue+(f-e)*re,c/2-(m-(r+o)/2)*Se],d=t.gates.map(f=>`M${i(f,r).join(" ")}L${i(f,o).join(" ")}`),l=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,u=t.gears.map(([f,m,g])=>{let[v,b]=i(m,g),L={x:v,y:b+(g>0?-20:30),"data-gear":f};
return R("text",{...L,class:"tsp-gear","text-anchor":"middle"},f)});return{element:R("svg",{viewBox:`0 0 ${a} ${c}`,width:a,
height:c,class:"ts-gateplan","aria-hidden":"true"},R("path",{d:[...d,l].join(""),class:"tsp-slot"}),...u),at:i}}function to(t){let{element:e,at:n}=Le(t),r=R("polyline",{class:"tsp-line",points:""}),o=R("g");return e.append(r,o),{element:e,
show(a){let{points:c,stops:i}=hs(a,t.aims,n),[[d,l]]=c;r.setAttribute("points",c.map(u=>u.join(",")).join(" ")),o.replaceChildren(
R("circle",{cx:d,cy:l,r:4,class:"tsp-start"}),...i.map(({at:[u,p],numbers:f})=>R("g",{},R("circle",{cx:u,cy:p,r:3.5,class:"\
tsp-stop"}),R("text",{x:u+7,y:p-5,class:"tsp-number"},f.join(", ")))))}}}function vs({label:t,moves:e,plan:n,most:r,onChange:o}){
let a=new Map(e),c=O=>a.get(O)??O,i=[],d=-1,l=!1,u=n?to(n):null,p=s("ol",{class:"ts-pathlist","aria-label":t}),f=s("p",{
class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate plane."),m=s("p",{class:"ts-hidden",role:"\
status"}),g=e.map(([O,B])=>q(B,()=>N(O))),v=q("Take back the last move",()=>{i.length&&y(i.length-1)}),b=q("Take back al\
l",()=>{i.length&&x([],"No moves left")}),L=s("span",{class:"ts-hint"}),T=s("div",{class:"ts-path"},s("div",{class:"ts-t\
ools ts-moves",role:"group","aria-label":"Add a move"},...g),s("div",{class:"ts-path-both"},s("div",{class:"ts-path-word\
s"},f,p,s("div",{class:"ts-tools"},v,b,L)),u&&s("div",{class:"ts-path-picture"},u.element)),u&&s("p",{class:"ts-hint"},"\
The line shows where each move should go. The test shows whether the lever gets there."),m);function x(O,B){l||(i=O,k(),
m.textContent=B,o([...i]))}function N(O){if(i.length>=r){m.textContent=`${r} moves are the most here`;return}let{moves:B,
place:W}=gs(i,d,O);d=W,x(B,`Move ${W+1}: ${c(O)}`)}function y(O){let B=c(i[O]);d=Math.min(d,i.length-2),x(ms(i,O),`Taken\
 back: ${B}`)}function I(O,B){let W=ws(i,O,B);W&&(d=O+B,x(W,`${c(W[d])}, move ${d+1} of ${i.length}`),h(d))}function C(O){
return p.children[O]?.querySelector(".ts-path-move")}function h(O){let B=C(O);return B instanceof HTMLElement&&B.focus(),
!!B}function $(O,B){let W=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${B+1}: ${c(O)}`},c(O)),Y=s("bu\
tton",{type:"button",class:"ts-path-off","aria-label":`Take back move ${B+1}`,onclick:()=>y(B)},"×"),P=s("li",{},W,Y);return P.
classList.toggle("ts-current",B===d),W.addEventListener("focus",()=>{d=B;for(let S of p.children)S.classList.toggle("ts-\
current",S===P)}),W.addEventListener("keydown",S=>{if(Tt(S))return;let w=S.key==="ArrowUp"?-1:S.key==="ArrowDown"?1:null;
if(w&&S.shiftKey)I(B,w);else if(w)h(B+w);else if(S.key==="Delete"||S.key==="Backspace")y(B),h(Math.min(B,i.length-1))||g[0].
focus();else return;S.preventDefault()}),Y.disabled=l,P}function k(){p.replaceChildren(...i.map($)),f.hidden=i.length>0,
L.textContent=`${i.length} of at most ${r} moves`;for(let O of g)O.disabled=l||i.length>=r;v.disabled=b.disabled=l||i.length===
0,u?.show(i)}return k(),{element:T,setMoves(O){te(O,i)||(i=[...O],d=-1,k())},setDisabled(O){l=O,k()}}}Mt("path",{prompt:"words",make(t,e,n){let r=vs({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});function ks(t,e,n){let r=t.indexOf(n);return[...t.slice(r+1),...t.slice(0,r)].find(a=>!e.get(a))??n}function ys(t,e,n){let r=t.
find(({key:d})=>d===e);if(!r)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let o={ArrowRight:1,
ArrowLeft:-1}[n];if(o!==void 0){let d=[...t].sort((u,p)=>u.x-p.x||u.y-p.y),l=d.findIndex(({key:u})=>u===e)+o;return d[(l+
d.length)%d.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=d=>Math.abs(d.y-r.y)+2*Math.abs(d.x-
r.x),[i]=t.filter(({key:d,y:l})=>d!==e&&(l-r.y)*a>2).sort((d,l)=>c(d)-c(l));return(i??r).key}function ee(t,e,n,r){let o=t.lines,a=t.options,c=o.map(([p])=>p),i=c[0],d=o.map(([p,f],m)=>{let g=`${e.control}-${m}`,v=s(
"label",{class:"ts-each-line",for:g},f),b=Ot({id:g},[["","choose"],...a]),L=s("input",{type:"radio",name:`${e.control}-a\
ctive`,"aria-label":`Point in the picture for: ${f}`,checked:m===0}),T=s("li",{},c.length>1?L:null,v,b);return L.addEventListener(
"change",()=>{i=p}),b.addEventListener("change",()=>{i=p,u()}),{key:p,box:b,mark:L,row:T}}),l=()=>new Map(d.map(({key:p,
box:f})=>[p,f.value]));function u(){let p=l();r(p),n(me([...p]))}return{element:s("ol",{class:"ts-each ts-pointed"},...d.
map(({row:p})=>p)),active:()=>i,answers:l,press(p){let f=d.find(({key:m})=>m===i);if(!(!f||f.box.disabled)){f.box.value=
p,u(),i=ks(c,l(),i);for(let{key:m,mark:g}of d)g.checked=m===i}},put(p,f){let m=d.find(({key:g})=>g===p);!m||m.box.disabled||
(m.box.value=f,u())},show(p){let f=we(p.value);for(let{key:m,box:g}of d)g.value=f.get(m)??"";r(l())},setDisabled(p){for(let{
box:f,mark:m}of d)f.disabled=p,m.disabled=p}}}function Ce(t,e,n){let r=s("div",{class:"ts-scene",role:"group","aria-labe\
l":"Picture. Arrow keys walk from place to place, Enter points at one."});r.innerHTML=t;let o=r.querySelector("svg");o.setAttribute(
"role","group");let a=new Map(Q(o,"[data-mark]").map(l=>[String(l.dataset.mark),l])),c=new Map(e);for(let[l,u]of a)u.setAttribute(
"role","button"),u.setAttribute("tabindex",l===e[0][0]?"0":"-1"),u.setAttribute("aria-label",`${l}: ${c.get(l)??""}`);let i=l=>Et(
l,"[data-mark]")?.dataset.mark??Et(l,"[data-spot]")?.dataset.spot;r.addEventListener("click",l=>{let u=i(l);u&&n(u)});for(let[
l,u]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])r.addEventListener(l,p=>{let f=i(p);f&&d(f,u)});
function d(l,u){for(let p of Q(o,`[data-spot="${l}"]`))p.classList.toggle("tss-near",u)}return r.addEventListener("keydo\
wn",l=>{let u=Et(l,"[data-mark]")?.dataset.mark;if(u){if(l.key==="Enter"||l.key===" ")n(u);else{let p=[...a].map(([m,g])=>{
let v=g.querySelector(".tss-dot");return{key:m,x:v.cx.baseVal.value,y:v.cy.baseVal.value}}),f=ys(p,u,l.key);if(f===void 0)
return;a.get(u)?.setAttribute("tabindex","-1"),a.get(f)?.setAttribute("tabindex","0"),a.get(f)?.focus()}l.preventDefault()}}),
{element:r,drawing:o,choose(l){let u=new Set(l);for(let[p,f]of a)f.classList.toggle("tss-chosen",u.has(p)),f.setAttribute(
"aria-pressed",String(u.has(p)));for(let p of Q(o,"[data-spot]"))p.classList.toggle("tss-on",u.has(String(p.dataset.spot)))}}}Mt("picture",{prompt:"legend",make(t,e,n){let r=t.options,o=ee(t,e,n,i=>{let d=new Set(i.values());for(let{letter:l,card:u}of a)
u.classList.toggle("ts-on",d.has(l))}),a=r.map(([i,d])=>{let l=s("div",{class:"ts-picture-card",onclick:()=>o.press(i)});
return l.innerHTML=t.svgs[i],l.querySelector("svg")?.setAttribute("aria-label",d),l.prepend(s("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:l}}),c=s("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:s("div",{class:"\
ts-pictured"},o.element,c),show:o.show,setDisabled:o.setDisabled,refused(){}}}});Mt("point",{prompt:"legend",make(t,e,n){let r=ee(t,e,n,i=>c.choose(i.values())),a=t.options.map(([i,d])=>[i,d.slice(i.length+
2)]),c=Ce(t.svg,a,r.press);return{element:s("div",{},r.element,c.element),show:r.show,setDisabled:r.setDisabled,refused(){}}}});Mt("put",{prompt:"legend",make(t,e,n){let r=t.lines,o=new Map(r.map(([u])=>[u,"1"])),a=ee(t,e,n,u=>{for(let[p,f]of u)f&&
o.set(p,f.split("-")[1]);c.choose([...u.values()].map(p=>p.split("-")[0])),d(u)}),c=Ce(t.svg,t.places,u=>{a.press(`${u}-${o.
get(a.active())}`)}),i=R("g",{class:"tss-placed"});c.drawing.append(i);function d(u){i.replaceChildren();for(let[p,f]of u){
let[m,g]=f.split("-"),v=t.at[m];if(!v)continue;let b=R("g",{transform:`translate(${v[0]} ${v[1]})`});b.innerHTML=t.pieces[p][Number(
g)-1][1],i.append(b)}for(let{part:p,show:f}of l)f(o.get(p)??"1")}let l=r.map(([u,p])=>{let f=s("div",{class:"ts-tray-par\
t"}),m=s("span",{class:"ts-hint",role:"status"}),g=ot("Turn it",()=>{let L=o.get(u)==="1"?"2":"1";o.set(u,L),v(L);let T=a.
answers().get(u);T&&a.put(u,`${T.split("-")[0]}-${L}`)},`Turn it: ${p}`);function v(L){let[T,x]=t.pieces[u][Number(L)-1],
N=Number(/data-half="([\d.]+)"/.exec(x)?.[1]??90);f.innerHTML=`<svg viewBox="${-N} ${-N} ${2*N} ${2*N}" width="120" heig\
ht="120" aria-hidden="true">${x}</svg>`,m.textContent=`Way ${L}: ${T}`}let b=s("div",{class:"ts-tray"},f,s("div",{},p,m,
g));return{part:u,row:b,show:v,turn:g}});return{element:s("div",{},s("div",{class:"ts-trays"},...l.map(({row:u})=>u)),a.
element,c.element),show:a.show,setDisabled(u){a.setDisabled(u);for(let{turn:p}of l)p.disabled=u},refused(){}}}});var eo="The connection to the course is lost. Go on answering: your answers stay in this browser and are sent when the c\
onnection is back. Simulators wait until then.",so="The connection to the course is back.",no=1500,oo=5e3,Ke=new Set,qt=null,
qe;function xs(t){qt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),qt.isConnected||document.body.append(qt),qt.textContent=
t}function ro(){qt?.remove(),qt=null}function $s(){clearTimeout(qe),Ke.size?qe=window.setTimeout(()=>xs(eo),qt?0:no):qt&&
(xs(so),qe=window.setTimeout(ro,oo))}var Ss=t=>({down(){Ke.add(t),$s()},up(){Ke.delete(t),$s()}});var ao=1e3,io="input, button, select, textarea, summary, a, [tabindex]";function co(t){let e=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:d,metaKey:l}=o,u={key:a,code:c,keyCode:i,ctrlKey:d,metaKey:l,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",u))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let o of t.querySelectorAll(io))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function lo(t,e,n){let r=t.widget_manager?.kernel,o=(c,i)=>{["restarting","autorestarting","terminating","d\
ead"].includes(i)&&e()},a=(c,i)=>{i==="disconnected"?e():n(i==="connecting")};return t.on("comm_live_update",e),r?.statusChanged?.
connect(o),r?.connectionStatusChanged?.connect(a),r?.disposed?.connect(e),()=>{t.off("comm_live_update",e),r?.statusChanged?.
disconnect(o),r?.connectionStatusChanged?.disconnect(a),r?.disposed?.disconnect(e)}}var Ls=`.twoshaft {
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
.twoshaft{color:var(--ts-ink);font-family:var(--ts-font);font-size:var(--ts-text);line-height:1.5;max-width:100%;box-siz\
ing:border-box;padding-inline:6px;overflow-wrap:anywhere}.twoshaft p,.twoshaft ul,.twoshaft ol,.twoshaft fieldset{margin\
:0;padding:0}.twoshaft p,.twoshaft .ts-prompt,.twoshaft .ts-option{max-width:var(--ts-width)}.twoshaft .ts-hidden{positi\
on:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}.twoshaft .ts-shape{display:inl\
ine-block;min-width:1.25em}.twoshaft .ts-hint,.twoshaft .ts-read,.twoshaft .ts-chosen,.twoshaft .ts-total,.twoshaft .ts-\
stage,.twoshaft .ts-keys,.twoshaft .ts-status{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft .ts-alert:empty{\
display:none}.twoshaft .ts-alert:not(:empty),.twoshaft .ts-trouble:not(:empty){border:2px solid var(--ts-ink);padding:va\
r(--ts-grid);margin-top:var(--ts-grid)}.twoshaft .ts-box{box-sizing:border-box;min-height:var(--ts-target);padding:0 var\
(--ts-grid);border:1px solid var(--ts-line);border-radius:2px;background:var(--ts-paper);color:var(--ts-ink);font:inheri\
t}.twoshaft .ts-number-box{width:12em;max-width:100%}.twoshaft .ts-number-box[aria-invalid=true]{border:2px dashed var(-\
-ts-ink)}.twoshaft .ts-option{display:flex;align-items:flex-start;gap:var(--ts-grid);padding:4px 0;min-height:24px;curso\
r:pointer}.twoshaft .ts-option input{width:18px;height:18px;margin:2px 0 0;flex:none;accent-color:var(--ts-accent)}.twos\
haft .ts-button{box-sizing:border-box;min-height:var(--ts-target);min-width:var(--ts-target);padding:0 calc(1.5 * var(--\
ts-grid));border:1px solid var(--ts-accent);border-radius:2px;background:var(--ts-paper);color:var(--ts-accent);font:inh\
erit;font-size:var(--ts-small);cursor:pointer}.twoshaft .ts-button[aria-pressed=true]{background:var(--ts-accent);color:\
var(--ts-on-accent)}.twoshaft .ts-button:disabled,.twoshaft .ts-box:disabled{color:var(--ts-quiet);border-color:var(--ts\
-line);border-style:dotted;cursor:default}.twoshaft :is(a,input,button,select,summary,[tabindex]):focus-visible{outline:\
3px solid var(--ts-accent);outline-offset:2px}.twoshaft .ts-tools{display:flex;flex-wrap:wrap;align-items:center;gap:var\
(--ts-grid);margin:var(--ts-grid) 0 calc(var(--ts-grid) / 2)}.twoshaft .ts-tools>*,.twoshaft .ts-pair>*{min-width:0}.two\
shaft .ts-tools .ts-box,.twoshaft .ts-pair .ts-box{max-width:100%}.twoshaft .ts-pair{display:inline-flex;flex-wrap:wrap;\
align-items:center;gap:var(--ts-grid);max-width:100%}.twoshaft .ts-before{width:24em;max-width:100%}.jp-OutputArea:has(.\
twoshaft-live)>.jp-OutputArea-child:has(.twoshaft-copy){display:none}.twoshaft.ts-line-bar{position:fixed;z-index:10000;\
inset:auto 0 0;margin:0;padding:var(--ts-grid) calc(2 * var(--ts-grid));border-top:2px solid var(--ts-ink);background:va\
r(--ts-paper)}.twoshaft-rig{padding-block:var(--ts-grid)}.twoshaft-rig>.ts-who{display:flex;flex-wrap:wrap;gap:0 calc(2 \
* var(--ts-grid));align-items:baseline;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-rig .ts-asks{color:var(\
--ts-ink);font-size:var(--ts-text);font-weight:600}.twoshaft-rig .ts-begin{color:var(--ts-accent);font-weight:600}.twosh\
aft-rig:not(.ts-begun,.ts-lost) .ts-first{box-shadow:0 0 0 3px var(--ts-accent)}.twoshaft-rig:not(.ts-begun,.ts-lost) .t\
s-tools.ts-first{width:fit-content}.twoshaft-rig:not(.ts-begun,.ts-lost) button.ts-first{white-space:nowrap}.twoshaft-ri\
g:not(.ts-begun,.ts-lost) button.ts-first:before{content:"\\25b6  " / ""}.twoshaft .ts-beside{display:flex;flex-wrap:wrap\
;gap:var(--ts-grid) calc(3 * var(--ts-grid));align-items:flex-start}.twoshaft .ts-beside>*{box-sizing:border-box;max-wid\
th:100%;min-width:min(100%,280px)}.twoshaft .ts-beside>:first-child{flex:3 1 480px}.twoshaft .ts-beside>:last-child{flex\
:2 1 360px}.twoshaft .ts-beside:has(>:first-child>.tsh-picture)>:first-child{flex:4 1 720px}.twoshaft .ts-beside:has(>:f\
irst-child>.tsh-picture)>:last-child{flex:1 1 280px}.twoshaft .ts-beside:has(>:first-child>.ts-pad-face)>*{flex:1 1 480p\
x}.twoshaft .ts-beside:has(>:first-child>.tsw-train)>:first-child{flex:4 1 640px}.twoshaft .ts-beside>div>.ts-scroll:fir\
st-child{margin-top:0}.twoshaft .ts-finding{font-weight:600;margin:var(--ts-grid) 0 0}.twoshaft .ts-happened{margin-top:\
var(--ts-grid);min-height:1.5em}.twoshaft-rig>.ts-prompt{font-weight:600;margin:calc(2 * var(--ts-grid)) 0 var(--ts-grid\
)}.twoshaft .ts-scroll{overflow-x:auto;margin:var(--ts-grid) 0;padding-bottom:var(--ts-grid)}.twoshaft .ts-scroll svg{di\
splay:block}.twoshaft .ts-scroll.ts-fit svg{max-width:100%;min-width:600px;height:auto}.twoshaft .ts-facts{display:grid;\
grid-template-columns:max-content 1fr;gap:4px calc(2 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:calc(var(--ts-w\
idth) + 12ch)}.twoshaft .ts-facts dt{float:none;clear:none;width:auto;font-weight:600;overflow-wrap:normal}.twoshaft .ts\
-facts dd{margin:0;width:auto}@media(max-width:480px){.twoshaft .ts-facts{grid-template-columns:1fr}}.twoshaft .ts-ready\
{display:flex;flex-wrap:wrap;gap:var(--ts-grid)}.twoshaft-rig .ts-ready{max-height:14rem;overflow-y:auto;padding:4px}.tw\
oshaft .ts-ready .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-button.ts-off{color:var(--ts-quiet);border-c\
olor:var(--ts-line);border-style:dotted;cursor:default}.twoshaft .ts-sentences{padding-left:calc(3 * var(--ts-grid));max\
-width:var(--ts-width)}.twoshaft .ts-note-blocked .ts-shape,.twoshaft .ts-note-harmed .ts-shape{color:var(--ts-bad)}.two\
shaft .tsf-near{margin:0}.twoshaft :has(~.tsf-near).ts-finding{max-width:none}.twoshaft .tsf-step{cursor:pointer}.twosha\
ft .tsf-step:focus{outline:none}.twoshaft .tsf-step:is(:focus-visible,:hover) .tsf-b{stroke:var(--ts-accent);stroke-widt\
h:3}.twoshaft .tsg-text{font:calc(var(--ts-small) * var(--ts-grown, 1)) var(--ts-font);fill:var(--ts-ink)}.twoshaft .tsg\
-face{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsg-mark{stroke:var(--ts-ink);stroke-width:1}.\
twoshaft .tsg-long{stroke-width:2}.twoshaft .tsg-pointer{fill:var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .tsg-hu\
b{fill:var(--ts-ink)}.twoshaft .tsg-small{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsg-target{fill:var(--ts-faint)\
;stroke:var(--ts-ink);stroke-width:1;stroke-dasharray:5 3}.twoshaft .tsg-cold{fill:var(--ts-accent);stroke:var(--ts-pape\
r)}.twoshaft .tsg-warm{fill:var(--ts-paper);stroke:var(--ts-bad);stroke-width:3}.twoshaft .tsg-dial{width:190px;height:1\
90px;flex:none}.twoshaft .tsg-scale{width:100%;max-width:600px;min-width:540px;height:auto;display:block}.twoshaft .tsg-\
axis{width:100%;max-width:720px;min-width:540px;height:auto;display:block}.twoshaft .tsg-beside{display:flex;flex-wrap:w\
rap;align-items:center;gap:calc(2 * var(--ts-grid))}.twoshaft .tsg-beside>*{min-width:0;max-width:100%}.twoshaft .tsg-ga\
uge svg{max-width:100%;height:auto}.twoshaft .tsg-gauge{text-align:center;font-size:var(--ts-small)}.twoshaft .tsg-wide{\
overflow-x:auto;max-width:100%}.twoshaft .tsg-wide>svg.twoshaft-figure{max-width:max(100%,480px);height:auto}.twoshaft .\
ts-slide{display:flex;flex-wrap:wrap;align-items:center;gap:0 var(--ts-grid);margin:calc(var(--ts-grid) / 2) 0}.twoshaft\
 .ts-slide>span{min-width:9em}.twoshaft .ts-slider{flex:0 1 260px;width:120px;min-width:96px;height:24px;accent-color:va\
r(--ts-accent)}.twoshaft .ts-slid{flex:1 1 7em;font-variant-numeric:tabular-nums}.twoshaft .tsg-centre{stroke:var(--ts-i\
nk);stroke-width:1;stroke-dasharray:14 3 3 3}.twoshaft .tsg-drum{max-width:100%;height:auto}.twoshaft .tsg-ticks{border:\
none;display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid))}.twoshaft .tsg-side{flex:1 1 420px;min-width:min(100%,32\
0px)}.twoshaft :is(.tsp-section+.tsg-gauge,.tsg-gauge:has(+.tsg-side)){flex:0 1 200px}.twoshaft .tsg-gauge+.tsg-side{fle\
x-basis:260px;min-width:min(100%,260px)}.twoshaft .tsi-micrometer{width:clamp(730px,100%,760px);height:240px;display:blo\
ck}.twoshaft .tsi-vernier{width:clamp(730px,100%,760px);height:190px;display:block}.twoshaft .tsi-runout{width:282px;hei\
ght:244px;flex:none}.twoshaft .tsi-wrench{width:clamp(540px,100%,720px);height:auto;display:block}.twoshaft .tsi-fine{st\
roke:var(--ts-ink);stroke-width:1.1}.twoshaft .tsi-bold{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-body{fill:var\
(--ts-faint);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-paper{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-w\
idth:1}.twoshaft .tsi-lever{stroke:var(--ts-ink);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-adapter{stroke:var(\
--ts-accent);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-arm{stroke:var(--ts-accent);stroke-width:2;stroke-dasha\
rray:7 4}.twoshaft .tsi-plunger{stroke:var(--ts-accent);stroke-width:5;stroke-linecap:round}.twoshaft .ts-order{position\
:relative;max-width:calc(var(--ts-width) + 8em)}.twoshaft .ts-steps{position:relative;list-style:none;border:1px solid v\
ar(--ts-line);margin-top:calc(var(--ts-grid) / 2);background:var(--ts-paper)}.twoshaft .ts-steps.ts-long{max-height:min(\
30rem,75vh);overflow-y:auto}.twoshaft .ts-step{display:flex;align-items:flex-start;gap:var(--ts-grid);padding:4px var(--\
ts-grid) 4px 0;margin:0;min-height:24px;border-bottom:1px solid var(--ts-faint);border-left:4px solid transparent;cursor\
:default;user-select:none}.twoshaft .ts-step:last-child{border-bottom:0}.twoshaft .ts-step.ts-level2{padding-left:calc(2\
 * var(--ts-grid))}.twoshaft .ts-step:focus-visible{outline-offset:-3px}.twoshaft .ts-current{border-left-color:var(--ts\
-accent);background:var(--ts-faint)}.twoshaft .ts-inblock{border-left-style:double;border-left-color:var(--ts-ink)}.twos\
haft .ts-held{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-held .ts-number,.twoshaft .ts-held .ts\
-grip,.twoshaft .ts-held .ts-stage{color:inherit}.twoshaft .ts-lifted{opacity:.45}.twoshaft .ts-dragging,.twoshaft .ts-d\
ragging .ts-step{cursor:grabbing}.twoshaft .ts-number{flex:none;min-width:2.5em;text-align:right;color:var(--ts-quiet);f\
ont-variant-numeric:tabular-nums;touch-action:none}.twoshaft .ts-grip,.twoshaft .ts-fold{flex:none;width:24px;text-align\
:center;color:var(--ts-quiet);cursor:grab;touch-action:none}.twoshaft .ts-fold{cursor:pointer}.twoshaft .ts-what{flex:1;\
min-width:0}.twoshaft .ts-state{font-weight:600;font-size:var(--ts-small)}.twoshaft .ts-note{display:block;font-size:var\
(--ts-small);max-width:var(--ts-width)}.twoshaft .ts-line{position:absolute;left:0;right:0;height:3px;background:var(--t\
s-accent);pointer-events:none}.twoshaft.ts-ghost{position:fixed;left:0;top:0;z-index:10000;width:max-content;max-width:2\
4em;padding:4px var(--ts-grid);pointer-events:none;background:var(--ts-paper);color:var(--ts-ink);border:2px solid var(-\
-ts-accent)}.twoshaft .ts-order .ts-keys{margin-top:var(--ts-grid)}.twoshaft .ts-order .ts-keys summary{cursor:pointer;m\
in-height:24px;color:var(--ts-accent);width:fit-content}.twoshaft .ts-beside:has(>div>.ts-order){flex-wrap:wrap-reverse;\
align-items:flex-end}.twoshaft-rig .ts-order .ts-steps{max-height:max(20rem,min(30rem,100vh - 340px));overflow-y:auto}.t\
woshaft .ts-path-both{display:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--t\
s-grid)}.twoshaft .ts-path-words{flex:1 1 22em;min-width:0;max-width:34em}.twoshaft .ts-path-picture{flex:none;max-width\
:100%}.twoshaft .ts-pathlist{margin:0;padding-left:calc(4 * var(--ts-grid))}.twoshaft .ts-pathlist li{min-height:28px;pa\
dding-left:4px;border-left:4px solid transparent}.twoshaft .ts-pathlist li.ts-current{border-left-color:var(--ts-accent)\
;background:var(--ts-faint)}.twoshaft .ts-path-off{min-width:28px;min-height:28px;margin-left:var(--ts-grid);border:1px \
solid var(--ts-line);border-radius:2px;background:var(--ts-paper);color:var(--ts-ink);font:inherit;line-height:1;cursor:\
pointer}.twoshaft .ts-gateplan{display:block;max-width:100%;height:auto}.twoshaft .tsp-slot{fill:none;stroke:var(--ts-li\
ne);stroke-width:14;stroke-linecap:round;opacity:.35}.twoshaft .tsp-line{fill:none;stroke:var(--ts-accent);stroke-width:\
2.5;stroke-linejoin:round}.twoshaft .tsp-start{fill:var(--ts-paper);stroke:var(--ts-accent);stroke-width:2}.twoshaft .ts\
p-stop{fill:var(--ts-accent)}.twoshaft .tsp-gear{font:600 calc(var(--ts-small) * var(--ts-grown, 1)) var(--ts-font);fill\
:var(--ts-ink)}.twoshaft .tsp-number{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink);paint-order:stroke;strok\
e:var(--ts-paper);stroke-width:4px}.twoshaft .ts-pad{max-width:62rem}.twoshaft .ts-pad-face{position:relative;width:100%\
;border:1px solid var(--ts-line);background:var(--ts-paper)}.twoshaft .tsp-face{display:block;position:relative;width:10\
0%;height:auto;touch-action:none;cursor:crosshair}.twoshaft .tsp-land{fill:var(--ts-faint);stroke:none}.twoshaft .tsp-ed\
ge{fill:none;stroke:var(--ts-ink);stroke-linejoin:round}.twoshaft .tsp-text{fill:var(--ts-ink);font-family:var(--ts-font\
);dominant-baseline:central;paint-order:stroke;stroke:var(--ts-paper);stroke-width:.3em;stroke-linejoin:round;pointer-ev\
ents:none;user-select:none}.twoshaft .tsp-hole{fill:var(--ts-paper);stroke:var(--ts-ink)}.twoshaft .tsp-blind{fill:var(-\
-ts-ink)}.twoshaft .tsp-guide,.twoshaft .tsp-reach,.twoshaft .tsp-hatch{fill:none;stroke:var(--ts-ink)}.twoshaft .tsp-sp\
ot{stroke:var(--ts-ink)}.twoshaft .tsp-stroke,.twoshaft .tsp-live,.twoshaft .tsp-grain{fill:none;stroke-linejoin:round;s\
troke-linecap:butt}.twoshaft .tsp-film{stroke:var(--ts-film);stroke-opacity:.6}.twoshaft .tsp-bead{stroke:var(--ts-bead)\
;stroke-linecap:round}.twoshaft .tsp-wipe{stroke:var(--ts-paper);stroke-opacity:.85}.twoshaft .tsp-grain{stroke:var(--ts\
-ink)}.twoshaft .tsp-live{stroke:var(--ts-accent);stroke-opacity:.5;stroke-linecap:round}.twoshaft .tsp-chosen{fill:none\
;stroke:var(--ts-accent);stroke-dasharray:3 2;pointer-events:none}.twoshaft .ts-size{width:6em}.twoshaft .ts-size[aria-i\
nvalid=true]{border:2px dashed var(--ts-ink)}.twoshaft .ts-pad-trouble{min-height:1.5em;color:var(--ts-ink)}.twoshaft .t\
s-passes{padding-left:2.5em;font-size:var(--ts-small);max-height:16rem;overflow-y:auto}.twoshaft .ts-passes li{padding:2\
px 0}.twoshaft .ts-remove{min-height:24px;padding:0 var(--ts-grid)}.twoshaft .ts-pad-tools .ts-box{max-width:100%;min-wi\
dth:0}.twoshaft .ts-pad-tools .ts-pair{min-width:0}.twoshaft .ts-each{margin:0;padding-left:calc(3 * var(--ts-grid))}.tw\
oshaft .ts-each li{padding:calc(var(--ts-grid) / 2) 0}.twoshaft .ts-each li+li{border-top:1px solid var(--ts-line)}.twos\
haft .ts-each-line{display:inline-block;width:min(100% - 2 * var(--ts-grid),34em);margin-right:calc(2 * var(--ts-grid));\
vertical-align:top}.twoshaft .ts-each select{max-width:100%;min-width:0;vertical-align:top}.twoshaft .ts-pointed input[t\
ype=radio]{margin-right:var(--ts-grid);vertical-align:top}.twoshaft .ts-pointed input[type=radio]+.ts-each-line{width:mi\
n(100% - 7 * var(--ts-grid),34em)}.twoshaft .ts-scene{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .ts-scene svg{di\
splay:block;max-width:max(100%,480px);max-height:none;height:auto}.twoshaft .ts-scene [data-mark],.twoshaft .ts-scene [d\
ata-spot]{cursor:pointer}.twoshaft .ts-scene [data-mark]:focus-visible{outline:none}.twoshaft .ts-scene [data-mark]:focu\
s-visible .tss-ring{stroke:var(--ts-accent);stroke-width:4px}.twoshaft .ts-scene .tss-near path:not(.tsu-behind,.tsu-pit\
ch,.tsu-line){stroke:var(--ts-accent);stroke-width:2.4px}.twoshaft .ts-scene .tss-chosen .tss-ring{fill:var(--ts-accent)\
;stroke:var(--ts-accent)}.twoshaft .ts-scene .tss-chosen .tss-letter{fill:var(--ts-on-accent)}.twoshaft .ts-scene .tss-o\
n path:not(.tsu-behind,.tsu-pitch,.tsu-line),.twoshaft .ts-scene .tss-placed path:not(.tsu-behind,.tsu-pitch,.tsu-line){\
stroke:var(--ts-accent);stroke-width:3px}.twoshaft .ts-scene .tss-placed{pointer-events:none}.twoshaft .ts-pictured{disp\
lay:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .ts-pictured>:first-child{flex:1\
 1 280px;min-width:min(100%,240px)}.twoshaft-wide .ts-pictured>:first-child{position:sticky;top:0}.twoshaft .ts-pictures\
{display:grid;flex:2 1 500px;min-width:0;grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1fr));gap:var(--ts\
-grid);margin:var(--ts-grid) 0}.twoshaft .ts-picture-card{position:relative;padding:var(--ts-grid);border:1px solid var(\
--ts-line);cursor:pointer}.twoshaft .ts-picture-card.ts-on{outline:3px solid var(--ts-accent)}.twoshaft .ts-picture-card\
 svg{width:100%;height:auto;max-height:300px}.twoshaft .ts-picture-letter{font-weight:600}.twoshaft .ts-trays{display:fl\
ex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-tray{display:flex;gap:var(--ts-grid);align-items:center}.tw\
oshaft .ts-tray>div:last-child{display:grid;gap:calc(var(--ts-grid) / 2);max-width:22em}.twoshaft-form{padding-block:var\
(--ts-grid)}.twoshaft .ts-top{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 calc(3 * var(--ts-grid));b\
order-bottom:1px solid var(--ts-line);padding-bottom:calc(var(--ts-grid) / 2)}.twoshaft .ts-who{font-size:var(--ts-small\
);color:var(--ts-quiet)}.jp-Cell:has(.ts-top,.ts-build)~.jp-Cell .ts-top>.ts-who{display:none}.twoshaft .ts-field{border\
:0;min-width:0;margin:calc(2 * var(--ts-grid)) 0 0}.twoshaft .ts-prompt{display:block;padding:0;font-weight:600;margin-b\
ottom:var(--ts-grid)}.twoshaft .ts-line-of{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft .\
ts-line-of+.ts-read,.twoshaft .ts-line-of+.ts-read+.ts-status{display:inline}.twoshaft .ts-line-of+.ts-read:not(:empty){\
margin-right:calc(2 * var(--ts-grid))}.twoshaft .ts-read.ts-error,.twoshaft .ts-status-unread{color:var(--ts-ink);font-s\
ize:var(--ts-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-unread .ts-shape,.twoshaft .ts-status-bad .ts-shap\
e{color:var(--ts-bad)}.twoshaft .ts-status-saved .ts-shape{color:var(--ts-good)}.twoshaft .ts-status-bad{color:var(--ts-\
ink);font-weight:600}.twoshaft .ts-order+.ts-read{display:none}.twoshaft .ts-bench{margin-top:var(--ts-grid)}.twoshaft .\
ts-bench summary{cursor:pointer;min-height:24px;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft .ts-bench[open\
]{border:1px solid var(--ts-line);padding:var(--ts-grid)}.twoshaft .ts-bench-rows{display:grid;grid-template-columns:rep\
eat(auto-fill,minmax(min(100%,20em),1fr));gap:var(--ts-grid) calc(2 * var(--ts-grid));margin:var(--ts-grid) 0}.twoshaft \
.ts-bench-row{min-width:0}.twoshaft .ts-bench-row select{max-width:100%;min-width:0}.twoshaft .ts-bench-row label{displa\
y:block;max-width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-height:0}.twoshaft.ts-question{border-left:4px so\
lid var(--ts-accent);padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-acts{display:flex;flex-wrap:wrap;gap:var(--ts-g\
rid);margin-top:var(--ts-grid)}.twoshaft .ts-told:not(:empty){margin-top:var(--ts-grid)}.twoshaft .ts-told-unread{border\
:2px solid var(--ts-ink);padding:var(--ts-grid)}.twoshaft .ts-teacher{border-style:dashed;font-size:var(--ts-small)}.two\
shaft.ts-question .ts-title{font-weight:600}.twoshaft.ts-question:has(.ts-asked>:nth-child(2)){max-width:none}.twoshaft \
.ts-asked{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,340px),1fr));gap:0 calc(4 * var(--ts-grid))\
;align-items:start}.twoshaft-start>div{max-width:1040px}.twoshaft-start h2{font-size:var(--ts-head);font-weight:600;marg\
in:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-in{margin:calc(2 * var(--ts-grid)) 0 calc(3 * var(\
--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;grid-template-columns:minmax(0,1fr);gap:calc(1.5 * var(--ts-grid));\
justify-items:start}.twoshaft-start .ts-pair{display:grid;grid-template-columns:minmax(0,1fr);gap:calc(var(--ts-grid) / \
2);max-width:100%}.twoshaft-start .ts-pair label{font-weight:600}.twoshaft-start .ts-pair .ts-box{width:22em;max-width:1\
00%}.twoshaft-start .ts-first{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft-start .ts-button{font-size\
:var(--ts-text)}.twoshaft-start .ts-said:not(:empty){border-left:3px solid var(--ts-accent);padding:var(--ts-grid);backg\
round:var(--ts-faint)}.twoshaft-start .ts-me{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-betwee\
n;gap:var(--ts-grid);margin-bottom:var(--ts-grid)}.twoshaft-start .ts-table{border-collapse:collapse;width:100%;margin:0\
 0 calc(2 * var(--ts-grid));font-size:var(--ts-text);table-layout:fixed}.twoshaft-start .ts-table :is(th,td){text-align:\
left;vertical-align:top;white-space:normal;padding:var(--ts-grid);border:0;border-bottom:1px solid var(--ts-line);backgr\
ound:none;max-width:none}.twoshaft-start .ts-table thead th{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-st\
art .ts-table th:nth-child(1){width:26%}.twoshaft-start .ts-table th:nth-child(2){width:16%}.twoshaft-start .ts-table th\
:nth-child(4){width:24%}.twoshaft-start .ts-small-line{display:block;font-size:var(--ts-small);color:var(--ts-quiet)}.tw\
oshaft-start .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-start a.ts-link:is(:l\
ink,:visited,:hover,:focus,:active){color:var(--ts-accent);text-decoration:underline;display:inline-flex;align-items:cen\
ter;min-height:var(--ts-target);cursor:pointer}.twoshaft-start .ts-lessons{padding-left:calc(2 * var(--ts-grid))}.twosha\
ft-start .ts-lessons .ts-link{min-height:24px}.twoshaft-start .ts-module th{padding-top:calc(3 * var(--ts-grid));font-si\
ze:var(--ts-text)}.twoshaft-start .ts-table .ts-module th{width:auto}.twoshaft-start .ts-assigned{margin-left:var(--ts-g\
rid);font-weight:400;color:var(--ts-quiet)}.twoshaft-start .ts-next{margin:0}.twoshaft-start summary{min-height:var(--ts\
-target);align-content:center;cursor:pointer}.twoshaft-start .ts-due{display:none}@media(max-width:560px){.twoshaft-star\
t .ts-due{display:inline}.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.twoshaft-start .ts-tabl\
e :is(tr,th,td):nth-child(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:1px solid var(--ts-line\
);padding:var(--ts-grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.twoshaft-start .ts-gaps{p\
adding-left:calc(2 * var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{display:block}.twoshaft-sta\
rt .ts-question{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk{max-width:1240px}.twosh\
aft-desk .ts-desk-top{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid)}.t\
woshaft-desk .ts-desk-pages{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin:var(--ts-grid) 0;padding-bottom:var(--\
ts-grid);border-bottom:1px solid var(--ts-line)}.twoshaft-desk .ts-button[aria-current=page]{border-width:3px;font-weigh\
t:700}.twoshaft-desk :is(h2,h3){font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-desk h3,.two\
shaft-desk .ts-button{font-size:var(--ts-text)}.twoshaft-desk .ts-first{background:var(--ts-accent);color:var(--ts-on-ac\
cent)}.twoshaft-desk .ts-said:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border-left:3px solid var(--ts-accent);padd\
ing:var(--ts-grid);background:var(--ts-faint)}.twoshaft-desk :is(.ts-said,.ts-alert,.ts-told,.ts-trouble){white-space:pr\
e-line;max-width:none}.twoshaft-desk .ts-desk-here{width:100%;scroll-margin-block:calc(2 * var(--ts-grid))}.twoshaft-des\
k .ts-busy{display:flex;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-desk-body[aria-busy=true]{cursor:progre\
ss}.twoshaft-desk .ts-desk-body>*{margin-top:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-caption{display:flex;flex-\
wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:calc(var(--ts-grid) / 2)}.tw\
oshaft-desk .ts-desk-scroll{max-height:360px;overflow:auto;border:1px solid var(--ts-line)}.twoshaft-desk .ts-table{bord\
er-collapse:collapse;margin:0;min-width:100%;font-size:var(--ts-text)}.twoshaft-desk .ts-table :is(th,td){text-align:lef\
t;vertical-align:top;white-space:normal;padding:calc(var(--ts-grid) / 2) var(--ts-grid);border:0;border-bottom:1px solid\
 var(--ts-line);background:none;max-width:28em;font-weight:400;overflow-wrap:break-word}.twoshaft-desk .ts-table tbody t\
h{position:sticky;left:0;background:var(--ts-paper)}.twoshaft-desk .ts-table thead th{position:sticky;top:0;z-index:1;ba\
ckground:var(--ts-paper);box-shadow:inset 0 -1px var(--ts-line);white-space:nowrap}.twoshaft-desk .ts-table .ts-figure{t\
ext-align:right;font-variant-numeric:tabular-nums}.twoshaft-desk .ts-table .ts-tick{width:24px}.twoshaft-desk input[type\
=checkbox]{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft-desk :is(.ts-sort,.ts-cell){min-height:24px;mi\
n-width:24px;padding:0;border:0;background:none;color:var(--ts-accent);font:inherit;text-align:inherit;cursor:pointer}.t\
woshaft-desk .ts-sort{font-weight:600}.twoshaft-desk .ts-cell{text-decoration:underline}.twoshaft-desk .ts-desk-form{dis\
play:grid;gap:var(--ts-grid);justify-items:start;padding-top:var(--ts-grid);border-top:1px solid var(--ts-line)}.twoshaf\
t-desk .ts-desk-form>*{min-width:0;max-width:100%}.twoshaft-desk .ts-desk-fields{display:flex;flex-wrap:wrap;align-items\
:flex-start;gap:var(--ts-grid) calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-field{display:grid;grid-template-columns\
:minmax(0,auto);gap:calc(var(--ts-grid) / 2);max-width:100%}.twoshaft-desk .ts-desk-field>label:not(.ts-option){font-wei\
ght:600}.twoshaft-desk .ts-desk-field .ts-box{width:18em;max-width:100%}.twoshaft-desk .ts-desk-field select.ts-box{widt\
h:auto;min-width:min(18em,80vw)}.twoshaft-desk textarea.ts-box{width:30em;padding:var(--ts-grid)}.twoshaft-desk .ts-doin\
g{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-question{border:2px solid var(--t\
s-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk a.ts-link:is(:link,:visited,:hover,:focus,:active){color:var(--\
ts-accent);text-decoration:underline}.twoshaft-desk :is(textarea,a,h2,.ts-desk-scroll):focus-visible{outline:3px solid v\
ar(--ts-accent);outline-offset:2px}@media(forced-colors:active){.twoshaft-desk .ts-button[aria-current=page]{border-colo\
r:Highlight}.twoshaft-desk .ts-first{border-width:2px;font-weight:700}.twoshaft-desk .ts-said:not(:empty,.ts-hidden),.tw\
oshaft-desk .ts-told{border:1px solid CanvasText}}.twoshaft .tsj-bench{display:flex;flex-wrap:wrap;gap:var(--ts-grid) ca\
lc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .tsj-bench>*{flex:1 1 240px;min-width:0;max-width:max-content}.t\
woshaft .tsj-bench svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:pointer}.twoshaft .tsj-bolt:f\
ocus{outline:none}.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsj-bolt.ts\
j-started circle{stroke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.twoshaft .tsj-bolt.tsj-tight te\
xt{fill:var(--ts-paper)}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(--ts-grid)}.twoshaft .tsj-sl\
ide input{width:180px;max-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-target)}.twoshaft .tsj-figure{min\
-width:8ch;font-variant-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-height:1.5em}.twoshaft .tsj-che\
ck{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaft .tsj-check input{widt\
h:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-template-columns:max-content \
minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-width) + 12ch);margin:var(--ts\
-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block;max-width:100%;height:auto}\
.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:wrap}@media(max-width:700px)\
{.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{border-collapse:collapse;font:va\
r(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align:left;font-weight:600;paddin\
g:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-align:middle;padding:1px 12px\
 1px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twoshaft table.tsk-board thead th{font-we\
ight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:54ch;white-space:normal}.twoshaft table.tsk-board .\
tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft table.tsk-board select{max-wi\
dth:36ch}.twoshaft table.tsk-board :is(select,button){min-height:28px}.twoshaft table.tsk-board{font-size:var(--ts-small\
)}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:600;border-bottom:2px solid \
var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{min-width:24ch}.twoshaft .ts\
k-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){.twoshaft table.tsk-board,.twoshaft table.ts\
k-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.twoshaft table.tsk-board the\
ad{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft table.tsk-board tr{border-botto\
m:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twoshaft table.tsk-board tbody t\
d,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-width:0;padding:2px 0;text-align\
:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-board tbody .tsk-best td{borde\
r:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board tbody t\
h{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) ": ";color:var(--ts-quiet)}.t\
woshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-board select{max-width:100%}}.twoshaft .ts-g\
ate{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 calc(2 * var(--ts-grid));align-items:start;cursor:defaul\
t;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none}.twoshaft .ts-pulling,.twos\
haft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accent)}.twoshaft .ts-gate svg{us\
er-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-happened.ts-stopped,.twosh\
aft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;padding-left:calc(4 * var(--t\
s-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate .ts-scroll{margin:0;padding:0}.twoshaft .ts-gate .ts-\
prompt{margin-top:0}.twoshaft .ts-gate-work .ts-prompt{margin-block:0}.twoshaft .ts-gate-hint{max-width:none}.twoshaft .\
ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 12ch);font-weight:600}.twosha\
ft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3px}.twoshaft .ts-lever .tsl-s\
pot{fill:transparent;cursor:pointer}.twoshaft .ts-lever .tsl-spot:hover{fill:var(--ts-faint);stroke:var(--ts-accent)}.tw\
oshaft .ts-lever .tsl-knob{fill:var(--ts-accent);stroke:var(--ts-paper);stroke-width:2;cursor:grab;touch-action:none}.tw\
oshaft .ts-lever .tsl-in{text-decoration:underline;font-weight:800}.twoshaft .ts-gate-work{display:grid;grid-template-co\
lumns:minmax(0,3fr) minmax(0,2fr);gap:0 calc(3 * var(--ts-grid))}.twoshaft .ts-gate-work .ts-log{max-height:9rem}.twosha\
ft .ts-gate-work .ts-moves{display:grid;grid-template-columns:repeat(auto-fill,minmax(200px,1fr))}.twoshaft .ts-gate-wor\
k .ts-moves{gap:4px;margin-top:0}.twoshaft .ts-gate-work .ts-moves .ts-button{font-size:var(--ts-small);line-height:1.25\
}@media(max-width:900px){.twoshaft .ts-gate,.twoshaft .ts-gate-work{grid-template-columns:minmax(0,1fr)}}.twoshaft .tsw-\
train.ts-scroll.ts-fit svg{min-width:540px}.twoshaft .tsw-train svg{user-select:none}.twoshaft .tsw-counts{display:grid;\
grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1fr));gap:4px var(--ts-grid);max-width:900px;margin:var(--t\
s-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-template-columns:68px minmax(0,1fr);column-gap:va\
r(--ts-grid);align-items:center;padding:2px 4px;border:1px solid var(--ts-line);border-radius:2px;text-align:left;font-s\
ize:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:1px 3px}.twoshaft .tsw-count\
.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-dial{grid-column:1;grid-row:\
1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:100%;height:auto;touch-action:none;cursor:gr\
ab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var(--ts-faint);stroke:var(--ts\
-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsw-painted{\
stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-tick{stroke:var(--ts-ink)\
;stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:calc(15px * var(--ts-grown, 1)) v\
ar(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{font-family:monospace;font-size:var(--ts-smal\
l);max-height:4.5em;overflow-y:auto}.twoshaft .tsw-figure{font-variant-numeric:tabular-nums}.twoshaft .tsw-figure:empty{\
min-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsw-say{max-width:none}.twoshaft .tsh-picture{overflow-\
x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{display:block;width:100%;min-width:680px;max-width:1100px;heig\
ht:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaft .tsh-place:hover .tsh-hit{\
stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:hover .tsh-hit{stroke:var(--ts\
-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);stroke-width:4}.twoshaft .ts\
h-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:3px solid var(--ts-accent);padding-left:calc(1.5 * var(--\
ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twoshaft .tsh-verdict{margin-top:\
var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-sliders{display:grid;grid-template\
-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:96\
0px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em minmax(6em,1fr) 4em;align-items:center;gap:var(--ts-grid)\
;min-height:28px}.twoshaft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;min-height:24px}.twoshaft .t\
sl-row .ts-box{justify-self:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;text-align:right}.twoshaft .ts\
l-drawing{overflow-x:auto}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:520px;max-width:820px;height:aut\
o}.twoshaft .tsl-sum{font-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@media(max-width:480px){.twoshaft .tsl-sl\
iders{grid-template-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wrap:wrap;min-width:0}.twoshaft .tsl-row \
input{max-width:100%}}.twoshaft .tsp-section{flex:1 1 320px;overflow-x:auto}.twoshaft .tsp-gauge{width:190px;height:173p\
x;flex:none}.twoshaft .tsp-section svg{display:block;max-width:100%;height:auto;min-width:320px}.twoshaft .ts-pair[hidde\
n]{display:none}.twoshaft .ts-cells{position:absolute;pointer-events:none}.twoshaft .tsp-land.tsp-clear{fill:none}.twosh\
aft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-way{fill:none;stroke:var(--ts-bad);str\
oke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:var(--ts-ink);stroke:var(--ts-paper);stroke-width:.5px}.\
twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp-shut .tsp-chosen{display:none}.twosha\
ft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-grid));font-size:var(--ts-small);min-height:1.6em}.t\
woshaft .ts-key{display:inline-flex;align-items:center;gap:4px}.twoshaft .ts-swatch{width:25px;height:15px;border:1px so\
lid var(--ts-line)}.twoshaft-rig .ts-pad-tools .ts-box{max-width:15em}.twoshaft-rig .ts-beside .ts-facts{max-width:none}\
.twoshaft .ts-range{accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-clock{min-width:6em;font-weight:600}.two\
shaft .ts-unit{overflow:auto;max-height:max(20rem,min(620px,100vh - 370px));border:1px solid var(--ts-line);margin:var(-\
-ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:block;min-width:640px;max-width:none;max-\
height:none;margin-inline:auto}.twoshaft .ts-apart .ts-unit svg{min-width:0;overflow:visible}.twoshaft .ts-unit [data-pa\
rt]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);str\
oke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-unit [data-part]:hover path:not(.tsu-behind,.tsu-pitch,.tsu-line){st\
roke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft \
.ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .ts-unit-words p{max-width:var(--ts-wid\
th)}.twoshaft.ts-together .tsu-number{display:none}.twoshaft .ts-unit :is(.tsu-axis,.tsu-number){pointer-events:none}.tw\
oshaft .ts-apart{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-apart-tools{flex:1 1 280px;max-w\
idth:380px}.twoshaft .ts-apart-tools .ts-slide>span{min-width:0}.twoshaft .ts-apart-tools .ts-slid{min-width:6em}.twosha\
ft .ts-apart-picture{flex:3 1 600px;min-width:0}.twoshaft .ts-nextin{min-height:3em}.twoshaft .ts-apart-list{list-style:\
none;margin:0;padding:0 var(--ts-grid) 0 0;max-height:300px;overflow:auto;font-size:var(--ts-small)}.twoshaft .ts-apart-\
list li{padding:2px var(--ts-grid);border-left:4px solid transparent}.twoshaft .ts-apart-list .ts-current{border-left-co\
lor:var(--ts-accent);font-weight:600}@media(forced-colors:active){.twoshaft .ts-apart-list li:not(.ts-current){border-le\
ft-color:Canvas}}.twoshaft .ts-space{display:block;width:100%;height:clamp(260px,100vh - 290px,460px);box-sizing:border-\
box;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:none}.twoshaft .ts-space:focus-visible{outline:\
3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-photographs{display:flex;flex-wrap:wrap;gap:var(--ts-grid)}\
.twoshaft .ts-photographs figure{flex:0 1 320px;margin:var(--ts-grid) 0}.twoshaft .ts-photographs svg{display:block;widt\
h:100%;height:auto;max-height:220px}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sentences[hidden]{display:none}.twoshaft \
.ts-told{min-height:1.5em;max-height:6em;overflow-y:auto}.twoshaft .ts-build{display:grid;grid-template:"tray unit" auto\
 "hand unit" 1fr "hand end" auto / minmax(20rem,1fr) minmax(0,738px);gap:var(--ts-grid) calc(2 * var(--ts-grid));align-i\
tems:start}.twoshaft .ts-build-left{grid-area:tray}.twoshaft .ts-build-hand{grid-area:hand;min-width:0}.twoshaft .ts-bui\
ld-unit{grid-area:unit;min-width:0}.twoshaft .ts-build-face{grid-template:"tray hand" auto "end hand" 1fr / minmax(20rem\
,1fr) minmax(0,738px)}.twoshaft .ts-build-end{grid-area:end;margin:0}.twoshaft .ts-build-unit .ts-unit{max-height:max(15\
rem,min(560px,100vh - 475px));margin-block:4px}.twoshaft .ts-build-unit :is(.ts-unit-name,.ts-in-picture){margin:0}.twos\
haft .ts-buildlist{display:grid;gap:4px;max-height:9.5rem;overflow-y:auto;padding:4px}.twoshaft .ts-buildstep{display:fl\
ex;align-items:center;gap:var(--ts-grid);text-align:left;padding:1px var(--ts-grid);min-height:34px}.twoshaft .ts-thumb{\
flex:0 0 44px;height:30px;display:grid;place-items:center;color:var(--ts-ink)}.twoshaft .ts-buildstep[aria-current] .ts-\
thumb{background:var(--ts-paper)}.twoshaft .ts-carry{cursor:grab;touch-action:none}.twoshaft .ts-inhand{display:block;ma\
x-width:none;overflow:hidden;pointer-events:none}.twoshaft.ts-ghost{position:fixed;z-index:10000;transform:translate(-50\
%,-50%);opacity:.85;pointer-events:none}.twoshaft .ts-thumb path{vector-effect:non-scaling-stroke;stroke-width:1px}.twos\
haft .ts-hand-row{display:flex;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-hand-row>:last-child{flex:1;min-width:0}.twosh\
aft .ts-hand .ts-facts{grid-template-columns:fit-content(60%) minmax(0,1fr)}.twoshaft .ts-hand-row .ts-facts{display:blo\
ck}.twoshaft .ts-hand-row .ts-facts dt{margin-top:4px}.twoshaft .ts-hand-row .ts-hint{margin:0}.twoshaft .ts-held-box{di\
splay:grid;gap:var(--ts-grid);align-content:start}.twoshaft .ts-held-box[hidden],.twoshaft .ts-held-box [hidden]{display\
:none}.twoshaft .ts-held-box>.ts-hint:empty{display:none}.twoshaft .ts-held-box>.ts-hint{max-width:126px}.twoshaft .ts-h\
eld-frame{display:grid;place-items:center;min-width:124px;min-height:88px;border:1px dashed var(--ts-line)}.twoshaft .ts\
-buildstep-done{color:var(--ts-quiet);border-color:var(--ts-line)}.twoshaft .ts-buildstep-waits{border-style:dotted}.two\
shaft .ts-buildstep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-current]{background:var(--ts-accent);color:var(--\
ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand{border:1px solid var(--ts-line);padding:var(-\
-ts-grid);max-height:max(13rem,min(24rem,100vh - 470px));overflow-y:auto;scroll-padding-top:3em}.twoshaft .ts-hand .ts-f\
ield{border:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600;position:sticky;top:calc(-1 * \
var(--ts-grid));z-index:1;background:var(--ts-paper)}.twoshaft .ts-do{text-align:left;padding-block:4px}.twoshaft .ts-ca\
ution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid);font-size:var(--ts-small)}.twoshaft .ts-record ta\
ble{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.twoshaft .ts-record caption{text-align:left;font-weig\
ht:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align:top;padding:3px 16px 3px 0;border-bottom:1px solid\
 var(--ts-line);background:none;white-space:normal}.twoshaft .ts-record th[scope=row]{font-weight:400}.twoshaft .ts-reco\
rd .ts-blank{min-width:12em;height:2em}@media(min-width:52rem){.twoshaft .ts-build-face .ts-build-unit{display:none}.two\
shaft .ts-build-face .ts-hand{max-height:27rem}}@media(max-width:52rem){.twoshaft .ts-build,.twoshaft .ts-build-face{gri\
d-template:"tray" "hand" "unit" "end" / minmax(0,1fr)}.twoshaft .ts-hand{max-height:none}.twoshaft .ts-hand .ts-facts{gr\
id-template-columns:minmax(0,1fr)}}@media(forced-colors:active){.twoshaft-rig:not(.ts-begun,.ts-lost) .ts-first{outline:\
3px solid Highlight}.twoshaft .ts-button[aria-pressed=true],.twoshaft .ts-buildstep[aria-current],.twoshaft .ts-held{for\
ced-color-adjust:none;background:Highlight;border-color:Highlight;color:HighlightText}.twoshaft :is(.ts-step,.ts-pathlis\
t li):not(.ts-current,.ts-inblock){border-left-color:Canvas}.twoshaft :is(.ts-step,.ts-pathlist li).ts-current{border-le\
ft-color:Highlight}.twoshaft-notebook .jp-MarkdownCell .jp-RenderedMarkdown{border-color:Canvas}.twoshaft-bar .ts-tasks \
a:not([aria-current]){border-bottom-color:Canvas}}`,Cs="twoshaft-styles";function uo(){let t=document.getElementById(Cs);
t?.textContent!==Ls&&(t?.remove(),document.head.append(s("style",{id:Cs},Ls)))}function nt({model:t,el:e},{kind:n,lost:r=()=>fe(
e),line:o=()=>{}}){uo(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"ts-alert",role:"\
alert"}),c=Ss(e),i=()=>e.classList.contains("ts-lost"),d=[],u=lo(t,()=>{i()||(e.classList.add("ts-lost"),c.down(),r())},
g=>{i()||(g?c.down():c.up(),o(g))}),p=co(e),f,m=(g,v)=>{t.on(g,v),d.push([g,v])};return m("msg:custom",g=>{g.type==="tro\
uble"&&!i()&&(a.textContent=g.reason)}),{alert:a,follow:m,isLost:i,send(g){i()||(e.classList.add("ts-begun"),t.send(g),clearTimeout(
f),f=window.setTimeout(()=>t.send({type:"rest"}),ao))},asks(g,{first:v,begin:b,who:L="Practice. Nothing here is marked o\
r saved."}={}){return v?.classList.add("ts-first"),s("div",{class:"ts-who"},s("p",{class:"ts-asks"},g),b?s("p",{class:"t\
s-begin"},`Begin: ${b}.`):"",L?s("p",{},L):"")},show:(...g)=>e.replaceChildren(...Wt(g)),close(){c.up(),clearTimeout(f),
p(),u();for(let[g,v]of d)t.off(g,v)}}}function Es({model:t,el:e}){let n=nt({model:t,el:e},{kind:"rig",lost:()=>d.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),o=s("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=ct("order"),n.send({type:"order",order:p,turn:c})},
d=$e({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),l=s("button",{type:"\
button",class:"ts-button",onclick:()=>d.change([...a],"The first order stands again")},"Start again");d.tools.append(l),
n.show(n.asks("Which steps stand in a wrong place?",{first:d.tools,begin:"choose a step and move it up or down"}),n.alert,
Bt([d.element],[r,o]));function u(){let p=t.get("judged");c!==null&&p.turn!==c||(c=null,r.textContent=p.finding,o.textContent=
p.cost,d.setOrder(p.order),d.setNotes(p.notes))}return n.follow("change:judged",u),u(),n.close}function se(t){let e=t.get("pictured"),n=s("div",{class:"ts-photographs"}),r="",o=a=>{a.type!=="photographs"||`${a.of}:${a.
id}`!==r||n.replaceChildren(...a.shown.map(({svg:c,alt:i})=>{let d=s("figure",{});return d.innerHTML=c,d.append(s("figca\
ption",{},`From your college: ${i}`)),d}))};return t.on("msg:custom",o),{node:n,any:a=>e[a].length>0,show(a,c){let i=c.find(
l=>e[a].includes(l)),d=i===void 0?"":`${a}:${i}`;d!==r&&(r=d,n.replaceChildren(),i!==void 0&&t.send({type:"photographs",
of:a,id:i}))},close:()=>t.off("msg:custom",o)}}var po=["lit","bench","absent","put"],As=[1,1.5,2,3,4.5];function Kt({svg:t,parts:e,words:n},{name:r="The unit in sectio\
n",tallest:o,onChoose:a=()=>{}}={}){let c=s("div",{class:"ts-unit",tabindex:"0",role:"application","aria-label":`${r}. L\
eft and right arrows walk from part to part, up and down to the part above or below, plus and minus zoom.`});c.innerHTML=
t;let i=c.querySelector("svg"),d=i.querySelector(".tsu-marks");i.setAttribute("aria-hidden","true"),i.dataset.grow??="2",
i.removeAttribute("role");let l=new Map(e.map(([S])=>[S,[]]));for(let S of Q(i,"[data-part]"))l.get(String(S.dataset.part))?.
push(S);let u=new Map(e.map(([S],w)=>[S,w])),p=s("p",{class:"ts-hint ts-unit-name",role:"status"}),f=Ot({"aria-label":"P\
art",class:"ts-box ts-before"},[["","no part chosen"],...e.map(([S,w])=>[S,w])]),{width:m,height:g}=i.viewBox.baseVal,v=o?
`min(100%, ${Math.round(o*m/g)}px)`:"100%",b=new WeakMap,L=-1,T=0,x={},N=S=>{let w=x[S];return w==="absent"?" Not there \
yet.":w==="bench"?" On the bench.":w==="lit"?" In hand.":""},y=S=>`${e[S][1]}. ${e[S][2]}${N(e[S][0])}`;function I(S){for(let D of Q(
i,".tsu-chosen"))D.classList.remove("tsu-chosen");L=S;let w=S<0?"":e[S][0];f.value=w,p.textContent=S<0?W:y(S);for(let D of l.
get(w)??[])D.classList.add("tsu-chosen");S>=0&&h(w),a(w)}function C(S){let w=Q(d,`[data-part="${S}"]`),D=[...l.get(S)??[],
...w].map(V=>{let{x:$t,y:F,width:z,height:X}=V.getBBox(),[ut,ft]=b.get(V)??[0,0];return{x:$t+ut,y:F+ft,width:z,height:X}}),
_=Math.min(...D.map(V=>V.x)),U=Math.max(...D.map(V=>V.x+V.width)),rt=Math.min(...D.map(V=>V.y)),bt=Math.max(...D.map(V=>V.
y+V.height));return{x:(_+U)/2,y:(rt+bt)/2}}let h=S=>$(C(S));function $(S){let w=i.getBoundingClientRect().width/i.viewBox.
baseVal.width,[D,_]=[S.x*w,S.y*w],{scrollLeft:U,scrollTop:rt,clientWidth:bt,clientHeight:V}=c;(D<U+40||D>U+bt-40)&&(c.scrollLeft=
D-bt/2),(_<rt+40||_>rt+V-40)&&(c.scrollTop=_-V/2)}function k(S){T=Math.max(0,Math.min(As.length-1,T+S)),i.style.width=`c\
alc(${As[T]} * ${v})`,i.style.height="auto",L>=0&&h(e[L][0])}function O(S){let w=C(e[L][0]),[D]=e.map(([_],U)=>({k:U,at:C(
_)})).filter(({k:_,at:U})=>_!==L&&(U.y-w.y)*S>4).sort((_,U)=>Ms(_.at,w)-Ms(U.at,w));D&&I(D.k)}c.addEventListener("keydow\
n",S=>{if(Tt(S))return;let w=e.length-1;if(S.key==="ArrowRight")I(L>=w?0:L+1);else if(S.key==="ArrowLeft")I(L<=0?w:L-1);else if(S.
key==="ArrowUp"||S.key==="ArrowDown")L<0?I(0):O(S.key==="ArrowUp"?-1:1);else if(S.key==="Home")I(0);else if(S.key==="End")
I(w);else if(S.key==="+"||S.key==="=")k(1);else if(S.key==="-")k(-1);else if(S.key==="Escape")I(-1);else return;S.preventDefault()}),
c.addEventListener("click",S=>{let w=Et(S,"[data-part]")?.dataset.part;I(w===void 0?-1:u.get(w)??-1)}),c.addEventListener(
"pointerover",S=>{let w=Et(S,"[data-part]")?.dataset.part;if(w===void 0||S.pointerType!=="mouse")return;let D=Et(S,"[dat\
a-solid]")?.querySelector("title")?.textContent,_=e[u.get(w)??0][1];B.textContent=D&&!_.endsWith(D)?`${D} (${_})`:_}),c.
addEventListener("pointerleave",()=>{B.textContent=""}),f.addEventListener("change",()=>I(u.get(f.value)??-1));let B=s("\
span",{class:"ts-unit-over","aria-hidden":"true"}),W="Point at a part, tap it, or choose it here to read its name.";p.textContent=
W;let Y=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",f),ot("−",()=>k(-1),"Smaller"),ot("+",()=>k(1),"\
Larger"),B),P=s("details",{class:"ts-unit-words"},s("summary",{},"What is where, in words"),s("p",{},n));return k(0),{nodes:[
Y,p,c,P],choose:f,drawing:i,frame:c,look(S){l.get(S)?.length&&h(S)},moveTo:$,shift(S,[w,D]){b.set(S,[w,D]),S.setAttribute(
"transform",`translate(${w.toFixed(1)} ${D.toFixed(1)})`)},show(S){x=S.looks;for(let[w,D]of l)for(let _ of D)for(let U of po)
_.classList.toggle(`tsu-${U}`,x[w]===U);d.innerHTML=S.marks,L>=0&&(p.textContent=y(L))}}}function Ms(t,e){return Math.abs(
t.y-e.y)+2*Math.abs(t.x-e.x)}function Os(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function Ts({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=se(t),c=Kt(t.get("pi\
cture")),i=s("p",{class:"ts-hint",role:"status"}),d=s("dl",{class:"ts-facts"}),l=s("div",{class:"ts-ready"}),u=s("select",
{class:"ts-box ts-before","aria-label":"A step that is not ready"}),p=s("input",{type:"text",inputmode:"numeric",size:"3",
class:"ts-box","aria-label":"Go to place",onkeydown:h=>{h.key==="Enter"&&N()}}),f=s("span"),m=h=>I.send({type:"move",by:h}),
g=h=>I.send({type:"go",position:h}),v=ot("Back",()=>m(-1),"One step back"),b=ot("Next",()=>m(1),"Next step"),L=ot("Start",
()=>g(0),"Start with an empty bench"),T=ot("End",()=>g(t.get("view").count),"End of the order"),x=ot("Try it",()=>I.send(
{type:"take",step:u.value}),"Try it: the step chosen here"),N=()=>{let h=Number.parseInt(p.value,10);h>=0&&g(h)},y=s("di\
v",{class:"ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},L,v,b,T,s("span",
{class:"ts-pair"},"place ",p,f,ot("Go",N,"Go to this place")));y.addEventListener("keydown",h=>{if(!(h.target===p||Tt(h))){
if(h.key==="ArrowLeft")m(-1);else if(h.key==="ArrowRight")m(1);else if(h.key==="Home")g(0);else if(h.key==="End")g(t.get(
"view").count);else return;h.preventDefault()}});let I=nt({model:t,el:e},{kind:"rig"});I.show(I.asks("What comes next, a\
nd what can no longer be reached?",{first:b,begin:"press Next"}),I.alert,n,y,Bt(c.nodes,[r,i,d,o,a.node,s("p",{class:"ts\
-prompt"},"Do another step next"),l,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",u,
x))]));function C(){let h=t.get("view");n.textContent=h.finding,r.textContent=h.happened,o.textContent=h.next?`Next in t\
his order: ${h.next}`:"This is the end of the order.",i.textContent=h.build.words,a.show("operation",h.in_hand),c.show(h.
build),d.replaceChildren(...Rt(h.facts));let $=l.contains(document.activeElement);l.replaceChildren(...h.ready.map(([B,W])=>ot(
W,()=>I.send({type:"take",step:B})))),h.ready.length||l.append(s("p",{class:"ts-hint"},"No step is ready.")),$&&(l.querySelector(
"button")??b).focus(),u.replaceChildren(...At(h.waiting)),u.disabled=x.disabled=!h.waiting.length,p.value=String(h.position),
f.textContent=` of ${h.count} `;let k=h.position===0,O=h.position===h.count;for(let B of[v,L])Os(B,k);for(let B of[b,T])
Os(B,O)}return I.follow("change:view",C),C(),()=>{a.close(),I.close()}}function ne(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=ct("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var ht=(t,e,n,r,o)=>R("line",{x1:t,y1:e,x2:n,y2:r,class:o}),wt=(t,e,n,r="middle")=>R("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function oe(){let t=R("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(R("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(ht(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(wt(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(R("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(ht(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*
Math.cos(o),"tsg-mark"))}let e=ht(100,134,100,119,"tsg-small"),n=R("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(e,n,R("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("tra\
nsform",`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${o}`)}}}function Is({top:t,mark:e,perFigure:n}){let r=R("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),o=c=>30+c/t*540;r.append(R("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*e<=t+1e-9;c+=1){let i=c%n===0;r.append(ht(o(c*e),22,o(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.
append(wt(o(c*e),84,String(Math.round(c*e))))}let a=R("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(
a,wt(586,14,"newtons","end")),{node:r,top:t,set(c,i){a.setAttribute("transform",`translate(${o(Math.min(c,t))} 0)`),r.setAttribute(
"aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function Ns({low:t,high:e,reach:n}){let r=R("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(R("rect",{x:o(t),y:34,width:o(
e)-o(t),height:24,class:"tsg-target"}),wt((o(t)+o(e))/2,84,"target"),ht(20,46,700,46,"tsg-mark"),ht(360,26,360,66,"tsg-m\
ark tsg-long"),wt(20,20,"end play","start"),wt(700,20,"preload","end"),wt(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let d of[
i,-i])r.append(ht(o(d),42,o(d),50,"tsg-mark"));r.append(wt(o(-n),70,`${n.toFixed(2)} mm`,"start"),wt(o(n),70,`${n.toFixed(
2)} mm`,"end"));let a=R("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=R("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return r.append(a,c),{node:r,set(i,d,l){a.setAttribute("transform",`translate(${o(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${o(d)} 0)`),r.setAttribute("aria-label",l)}}}function Ct(t,{min:e,max:n,step:r,value:o,words:a,onInput:c}){let i=s(
"input",{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),d=s("output",{class:"ts-slid"},a(o));
return i.addEventListener("input",()=>{let l=a(Number(i.value));d.textContent=l,i.setAttribute("aria-valuetext",l),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,d),set(l){i.value=
String(l),d.textContent=a(l)}}}function St(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},
...e.map(([a,c])=>s("option",{value:a,selected:a===n},c)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function Bs({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),d=s("u\
l",{class:"ts-sentences"}),l=ne((h,$)=>y.send({type:"set",state:h,turn:$})),u=h=>{r={...r,...h},l.ask(r)},p=R("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),f=ht(0,0,0,0,"tsg-mark tsg-long"),m=wt(0,0,""),[g,
v]=n.readingsOnly?[72,48]:[96,120],b=g/(n.readingsOnly?r.radius:n.radii[1]),L=R("svg",{viewBox:`0 0 ${2*g+v} ${2*g+30}`,
width:2*g+v,height:2*g+30,class:"tsg-drum",role:"img"}),T=g+4;p.setAttribute("transform",`translate(${T} ${T})`),L.append(
p,f,ht(4,T,2*g+4,T,"tsg-centre"),ht(T,4,T,2*g+4,"tsg-centre"),R("circle",{cx:T,cy:T,r:10,class:"tsg-face"}),m);let x=q("\
Turn the shaft ten times",()=>u({turns:r.turns+10})),N=[s("div",{class:"ts-tools"},x)];if(!n.readingsOnly){let h=n.kinds,
$=h.map(([k,O])=>s("label",{class:"ts-option"},s("input",{type:"checkbox",checked:r.kinds.includes(k),onchange:B=>u({kinds:h.
map(([W])=>W).filter(W=>W===k?B.target.checked:r.kinds.includes(W))})}),`with ${O}`));N[0].append(q("Fit the rings anew",
()=>u({turns:0}))),$.length&&N.push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the b\
earings"),...$)),N.push(Ct("Setting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:k=>u({setting:k}),words:k=>k<
0?`${(-k).toFixed(3)} mm of end play`:`${k.toFixed(3)} mm of preload`}).row,Ct("Radius of the drum",{min:n.radii[0],max:n.
radii[1],step:1,value:r.radius,onInput:k=>u({radius:k}),words:k=>`${k} mm`}).row)}let y=nt({model:t,el:e},{kind:"rig"});
y.show(y.asks("How hard does the shaft turn?",{first:x,begin:"turn the shaft",who:n.readingsOnly?"Take your reading here\
; write it in the form.":void 0}),y.alert,s("div",{class:"tsg-beside"},L,s("div",{class:"tsg-side"},a,c)),...N,i,d);function I(){
let h=t.get("shown");l.waiting||(r=h.state);let $=b*h.state.radius;Ht(p,{r:$}),Ht(f,{x1:T,y1:T-$,x2:2*g+v,y2:T-$}),Ht(m,
{x:T,y:2*g+22}),m.textContent=`drum, radius ${h.state.radius} mm`,L.setAttribute("aria-label",`A drum of ${h.state.radius}\
 mm radius on the shaft; the cord leaves it at its edge towards the scale.`),o?.top!==h.scale.top&&(o=Is(h.scale),a.replaceChildren(
o.node),c.textContent=`Spring scale to ${h.scale.top} N, one mark ${h.scale.mark} N.`),o?.set(h.pull,h.pullWords),i.textContent=
h.finding,d.replaceChildren(...Ut(h.words)),l.answered(h.turn)}let C=()=>l.free();return y.follow("change:shown",I),y.follow(
"msg:custom",C),I(),y.close}function Dt({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=ne((p,f)=>c.send({type:"set",state:p,turn:f})),
c=nt({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),d=n(r,p=>{o={...o,...p},a.ask(o)},o),l=r.readingsOnly?
"Take your readings here; write them in the form.":void 0;c.show(c.asks(d.asks,{first:d.first,begin:d.begin,who:l}),c.alert,
...d.side?[Bt([d.picture],[...d.controls,i])]:[s("div",{class:"tsg-wide"},d.picture),...d.controls,i]);function u(){let p=t.
get("shown");a.waiting||(o=p.state),d.set(p,o),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",
u),c.follow("msg:custom",a.free),u(),c.close}var Nt=(...t)=>s("div",{class:"ts-tools"},...t);var fo={x:44,y:84,perMm:34};function ho(t){let e=R("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=fo,a=R("g",{}),c=R("g",{});e.append(R("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),R("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,c,wt(12,14,"main scale, mm","start"),wt(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let d=n+i*t.space*o;c.append(
ht(d,r,d,r+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(wt(d,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let d=Math.
max(0,Math.ceil(i.mm-1));d<=t.top+25;d+=1){let l=n+(d-i.mm)*o;l<4||l>756||(a.append(ht(l,r,l,r-(d%10===0?34:d%5===0?28:20),
"tsi-fine")),d%5===0&&a.append(wt(l,r-40,String(d))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function Ds(t){
return Dt(t,(e,n,r)=>{let o=ho(e),a=Ct("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:l=>n(
{rod:l})}),c=St("Foot",e.places,r.place,l=>n({place:l,rod:0})),i=q("Push the rod down until it rests",()=>n({rod:e.top})),
d=St("Look",e.eyes,r.eye,l=>n({eye:l}));return{asks:"How deep does it lie?",first:i,begin:"push the rod down",picture:o.
node,controls:[Nt(c.row,d.row),Nt(i,q("Lift the rod",()=>n({rod:0}))),a.row],set(l,u){o.set(l),c.box.value=u.place,d.box.
value=u.eye,a.box.value=u.rod}}})}function ae(t,e){let n=e>1?.65/(e-1):0;return Array.from({length:e},(r,o)=>{let a=e>1?o*n:0,c=e>1?.35:1;return 1-Math.max(
0,Math.min(1,(t-a)/c))})}function Ps(t,e,n,r){let[o,a]=[0,0];for(let c=n;c!==null;c=t[c].parent){let[i,d]=t[c].own[r]??[
0,0];o+=i*e[c],a+=d*e[c]}return[o,a]}function ze(t){let e=t.findIndex(n=>n>0);return{placed:t.filter(n=>n===0).length,next:e<
0?null:e}}function Rs(t,e){return t<=0?0:t>=e||e<2?1:.35+(t-1)*(1-.35)/(e-1)}function js(t,e,n){let r=[0,0,0];for(let o=n;o!==
null;o=t[o].parent){let a=e[o];for(let[c,i]of t[o].own.entries())r[c]+=i*a}return r}function Ge(t,e){globalThis.twoshaftChunks??=new Map;let n=globalThis.twoshaftChunks,r=n.get(e)??go(t,e);return n.set(e,
r),r.catch(()=>n.delete(e)),r}function go(t,e){return new Promise(n=>{let r=(o,a)=>{if(o.type!=="chunk"||o.name!==e)return;
t.off("msg:custom",r);let c=URL.createObjectURL(new Blob([a[0]],{type:"text/javascript"})),i=import(c);i.finally(()=>URL.
revokeObjectURL(c)).catch(()=>{}),n(i)};t.on("msg:custom",r),t.send({type:"chunk",name:e})})}var Ee=.12,Yt=1.15,Hs="This browser draws nothing in three dimensions. The section shows the same parts.",Ae;function _s(){
if(Ae!==void 0)return Ae;let t=document.createElement("canvas").getContext("webgl2");return t?.getExtension("WEBGL_lose_\
context")?.loseContext(),Ae=!!t,Ae}function Fs(t){_s()&&Ge(t,"solids").catch(()=>{})}function Me(t,e){let n=s("span",{style:`\
color: ${e}; forced-color-adjust: none`});t.append(n);let r=s("canvas",{width:1,height:1}).getContext("2d");r.fillStyle=
getComputedStyle(n).color,n.remove(),r.fillRect(0,0,1,1);let[o,a,c]=r.getImageData(0,0,1,1).data;return{text:`rgb(${o}, ${a}\
, ${c})`,light:(o+a+c)/765}}var Ye=window.matchMedia("(forced-colors: active)");function Ws(t){let[e,n,r]=Ye.matches?["C\
anvasText","Canvas","Highlight"]:["var(--ts-ink)","var(--ts-paper)","var(--ts-accent)"],o=Me(t,n),a=o.light>.5?18:40;return{
ink:Me(t,e).text,paper:o.text,accent:Me(t,r).text,metal:Me(t,`color-mix(in srgb, ${e} ${a}%, ${n})`).text}}function Us(t,e,n){
let r=s("p",{class:"ts-hint ts-unit-name",role:"status"});if(!_s())return r.textContent=Hs,{drawn:!1,nodes:[r],move(){},
ready(){},close(){}};let o=s("canvas",{class:"ts-space",tabindex:"0",role:"application","aria-label":"The parts in three\
 dimensions. Arrow keys turn, plus and minus zoom, Home looks as at first, H hides the chosen part, A shows all. The sec\
tion shows the same parts with their names."}),a=Ot({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],
...n.map(([y,I])=>[y,I])]),c=new Set,i,d=()=>[0,0,0],l=()=>{},u="Drag or use the arrow keys to turn. Tap a part, or choo\
se it here, to read its name.";r.textContent="Drawing …";function p(){let y=n.find(([C])=>C===a.value),I=c.has(a.value)?
" Hidden.":"";r.textContent=y?`${y[1]}. ${y[2]}${I}`:u,i?.look(a.value,c)}function f(){a.value&&(c.delete(a.value)||c.add(
a.value),p())}function m(){c.clear(),p()}a.addEventListener("change",p);let g={ArrowLeft:()=>i?.turnBy(-Ee,0),ArrowRight:()=>i?.
turnBy(Ee,0),ArrowUp:()=>i?.turnBy(0,Ee),ArrowDown:()=>i?.turnBy(0,-Ee),"+":()=>i?.zoomBy(Yt),"=":()=>i?.zoomBy(Yt),"-":()=>i?.
zoomBy(1/Yt),Home:()=>i?.home(),h:f,a:m};o.addEventListener("keydown",y=>{let I=g[y.key]??g[y.key.toLowerCase()];!I||Tt(
y)||(I(),y.preventDefault())});let v=null;o.addEventListener("pointerdown",y=>{v={x:y.clientX,y:y.clientY,far:!1},o.setPointerCapture(
y.pointerId)}),o.addEventListener("pointermove",y=>{if(!v)return;let[I,C]=[y.clientX-v.x,y.clientY-v.y];!v.far&&Math.hypot(
I,C)<4||(v={x:y.clientX,y:y.clientY,far:!0},i?.turnBy(-I/150,C/150))}),o.addEventListener("pointerup",y=>{if(v&&!v.far){
let{left:I,top:C,width:h,height:$}=o.getBoundingClientRect(),[k,O]=[(y.clientX-I)/h,(y.clientY-C)/$];a.value=i?.partAt(2*
k-1,1-2*O)??"",p()}v=null}),o.addEventListener("wheel",y=>{document.activeElement===o&&(i?.zoomBy(y.deltaY<0?Yt:1/Yt),y.
preventDefault())},{passive:!1});let b=()=>{i?.recolour(Ws(o.parentElement??document.body)),p()},L=new MutationObserver(
b),T=new ResizeObserver(()=>i?.paint()),x=!1;return Ge(t,"solids").then(({solidsView:y})=>{x||(i=y(o,e,Ws(o.parentElement??
document.body)),i.move(d),i.fit(),l(),i.home(),i.paint(),T.observe(o),L.observe(document.body,{attributes:!0}),Ye.addEventListener(
"change",b),p(),o.dataset.painted="true")},()=>{r.textContent=Hs}),{drawn:!0,nodes:[s("div",{class:"ts-tools"},s("span",
{class:"ts-pair"},"Part ",a),ot("Hide or show",f,"Hide or show the chosen part"),ot("Show all",m,"Show all parts"),ot("−",
()=>i?.zoomBy(1/Yt),"Smaller"),ot("+",()=>i?.zoomBy(Yt),"Larger")),r,o],move(y){d=y,i?.move(y)},ready(y){l=y},close(){x=
!0,T.disconnect(),L.disconnect(),Ye.removeEventListener("change",b),i?.close()}}}var Oe=200,mo=580,wo="2.6";function qs({model:t,el:e}){let n=s("p",{class:"ts-finding"}),r=s("p",{class:"ts-hint ts-next\
in",role:"status"}),o=s("div",{class:"ts-apart-picture"}),a=s("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"Wha\
t goes in"}),c=t.get("stages"),i=St("Show",c,t.get("stage"),h=>C.send({type:"stage",stage:h})),d=Ct("From apart to toget\
her",{min:0,max:Oe,step:1,value:0,words:h=>h<=0?"apart":h>=Oe?"together":"on the way",onInput:h=>x(h/Oe)}),l=t.get("pict\
ure"),u,p=[],f=[],m=0,g=!1,v,b=ot("In three dimensions",()=>{g=!g,b.setAttribute("aria-pressed",String(g)),y()});b.setAttribute(
"aria-pressed","false");function L(h){d.set(Math.round(h*Oe)),x(h)}function T(h){let{placed:$}=ze(ae(m,l.movers.length));
L(Rs($+h,l.movers.length))}function x(h){if(m=h,!u)return;let $=ae(m,l.movers.length);for(let{group:W,mover:Y,view:P}of p)
u.shift(W,Ps(l.movers,$,Y,P));N($);for(let W of f)W.style.opacity=String(1-m);e.classList.toggle("ts-together",m>.5);let{
placed:k,next:O}=ze($),B=`${k} of ${$.length} in place.`;for(let[W,Y]of[...a.children].entries())Y.classList.toggle("ts-\
current",W===O);r.textContent=O===null?"All in place.":`${B} Next in: ${l.movers[O].words}.`}function N(h){let{movers:$}=t.
get("space");v?.move(k=>js($,h,k))}function y(){if(v?.close(),v=void 0,!!u&&(o.replaceChildren(...g?[]:u.nodes),!!g)){if(t.
get("space").stage!==t.get("stage")){Fs(t),C.send({type:"space"});return}v=Us(t,t.get("space"),l.parts),N(ae(0,l.movers.
length)),o.replaceChildren(...v.nodes,...v.drawn?[]:u.nodes),v.ready(()=>N(ae(m,l.movers.length)))}}function I(){if(l=t.
get("picture"),n.textContent=t.get("finding"),i.box.value=t.get("stage"),u=void 0,o.replaceChildren(),!l.svg)return;u=Kt(
l,{name:"Parts apart",tallest:mo}),u.drawing.dataset.grow=wo,p=Q(u.drawing,"[data-move]").map($=>({group:$,mover:Number(
$.dataset.move),view:String($.dataset.view)})),f=Q(u.drawing,".tsu-traces"),a.replaceChildren(...l.movers.map(({words:$})=>s(
"li",{},$))),y(),x(m)}let C=nt({model:t,el:e},{kind:"rig"});return C.show(C.asks("How do these parts go together?",{first:d.
box,begin:"move the slider",who:""}),C.alert,n,s("div",{class:"ts-apart"},s("div",{class:"ts-apart-tools"},i.row,d.row,s(
"div",{class:"ts-tools"},ot("One in",()=>T(1),"One part more in place"),ot("One out",()=>T(-1),"One part less in place")),
b,r,a),o)),C.follow("change:picture",I),C.follow("change:space",y),I(),()=>{v?.close(),C.close()}}function Ks({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=s("div",{class:"tsj-bars"}),i=Q(a,"[data-bolt]"),d=ct("torq\
ue"),l=s("input",{id:d,type:"range",min:10,max:100,step:5,oninput:()=>f()});l.value="100";let u=s("output",{class:"tsj-f\
igure",for:d}),p=()=>l.value==="100"?n.torque:Number((Math.round(n.torque*Number(l.value)/100/n.step)*n.step).toFixed(3));
function f(){u.textContent=`${p()} N·m`,l.setAttribute("aria-valuetext",`${p()} newton metres, ${l.value} percent of th\
e torque`)}let m=h=>x.send({type:"pull",bolt:h,torque:p()}),g=q("Take back",()=>x.send({type:"undo"})),v=q("Wait until t\
he film has run out",()=>x.send({type:"wait"})),b=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>x.send({type:"set",film:Number(b.value)})},...n.films.map(h=>s("option",{value:h},h?`${h} µm thick`:"none"))),
L=s("input",{type:"checkbox",onchange:()=>x.send({type:"set",scattered:L.checked})});a.addEventListener("click",h=>{let $=Et(
h,"[data-bolt]");$&&(T($),m(Number($.dataset.bolt)))});let T=h=>{for(let $ of i)$.setAttribute("tabindex",$===h?"0":"-1");
h.focus({preventScroll:!0})};a.addEventListener("keydown",h=>{let $=Et(h,"[data-bolt]");if(!$||h.ctrlKey||h.metaKey||h.altKey)
return;let k=Number($.dataset.bolt),O={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[h.key];if(O)T(i[(k+O+i.length)%
i.length]);else if(h.key==="Home")T(i[0]);else if(h.key==="End")T(i[i.length-1]);else if(h.key==="Enter"||h.key===" ")h.
repeat||m(k);else return;h.preventDefault()});let x=nt({model:t,el:e},{kind:"rig"}),N=q("Start all by hand",()=>x.send({
type:"start"})),y=s("div",{class:"ts-tools",role:"group","aria-label":"Bolts"},N,...n.rounds.map(([h,$])=>q(`One round ${$}`,
()=>x.send({type:"round",pattern:h,torque:p()}))),g,q("Start again",()=>x.send({type:"again"}))),I=s("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:d},"Wrench set to"),l,u));n.films.length&&
I.append(s("label",{class:"ts-pair"},"Wet sealant",b),v,s("label",{class:"tsj-check"},L,"friction scatters from bolt to \
bolt")),x.show(x.asks("Does every bolt keep its clamp?",{first:N,begin:"start all bolts by hand",who:n.readingsOnly?"Not\
hing is saved here; your answers stand in the form.":void 0}),x.alert,r,I,y,o,s("div",{class:"tsj-bench"},a,c),s("detail\
s",{class:"ts-keys"},s("summary",{},"How, and keys"),"The first choice of a bolt starts it by hand, the next ones pull i\
t. Arrows go from bolt to bolt, Enter pulls."));function C(){let h=t.get("view");r.textContent=h.finding,o.textContent=h.
happened,c.innerHTML=h.bars;for(let[$,k]of i.entries()){let O=h.tight[$]?`${h.clamps[$]} kN`:h.started[$]?"started by ha\
nd":"not started";k.setAttribute("aria-label",`Bolt ${$+1} of ${n.count}, ${O}`),k.classList.toggle("tsj-tight",h.tight[$]),
k.classList.toggle("tsj-started",h.started[$])}g.disabled=!h.pulls,v.disabled=!h.standing,b.value=String(h.film),L.checked=
h.scattered}return x.follow("change:view",C),f(),C(),x.close}var zs="tsk-number";function Ft(t,e,...n){return s("td",{class:e?zs:null,"data-label":t||null,role:"cell"},...n)}function Te(t,e,n){
let r=e.map(([c,i])=>s("th",{scope:"col",role:"columnheader",class:i?zs:null},c)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function Gs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),c=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),d=new Map;for(let[f,
m,g,v]of n.checks){let b=s("select",{class:"ts-box","aria-label":`What it showed: ${m}`,onchange:()=>u.send({type:"obser\
ve",check:f,shown:b.value})},s("option",{value:""},"Not made"),...At(v)),L=Ft("worth, bit",!0),T=Ft("bit a minute",!0),x=s(
"tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},m),Ft("min",!0,`${g}`),Ft("it showed",!1,b),L,T);d.set(f,{box:b,
tells:L,rate:T,row:x}),i.append(x)}let l=s("button",{class:"ts-button",type:"button",onclick:()=>u.send({type:"clear"})},
"Take all observations back"),u=nt({model:t,el:e},{kind:"rig"});u.show(u.asks("Which fault is it, and which check comes \
next?",{first:d.values().next().value?.box,begin:"say what a check showed"}),u.alert,r,a,c,Te("Checks: what each showed,\
 and what it is still worth",[["Check"],["min",!0],["It showed"],["worth, bit",!0],["bit a minute",!0]],i),s("div",{class:"\
ts-tools"},l,o));function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.spent,c.textContent=f.more,a.replaceChildren(
...Ut(f.left.map(([v,b])=>`${v} (${b})`)));let m=f.ranked,g=new Map(m.map(([v,b,L],T)=>[v,{bits:b,rate:L,rank:T}]));for(let[
v,{box:b,tells:L,rate:T,row:x}]of d){let N=f.observed[v],y=g.get(v);b.value=N??"",L.textContent=y?y.bits:N!==void 0?"mad\
e":"nothing",T.textContent=y?y.rate+(y.rank===0?" ◀ best next":""):"–",x.classList.toggle("tsk-best",y?.rank===0)}}return u.
follow("change:view",p),p(),u.close}function Ys(t,{move:e,hand:n}){let{element:r,at:o}=Le(t),a=Object.entries(t.aims).filter(([d])=>d.startsWith("at:")),c=(d,l)=>{
let[u,p]=o(d,l);return R("circle",{cx:u,cy:p,r:16,class:"tsl-spot",...{"data-travel":d,"data-turn":l}})},i=R("g",{class:"\
tsl-knob"},R("circle",{r:12}));return r.append(...a.map(([,[d]])=>c(Number(d),0)),...t.gears.map(([,d,l])=>c(d,l)),i),r.
classList.add("ts-lever"),r.addEventListener("click",d=>{let l=Et(d,".tsl-spot");if(!l)return;let u=[Number(l.dataset.travel),
Number(l.dataset.turn)];for(let p of bs(t.aims,n(),u))e(p)}),{element:r,scale:[re,Se],show([d,l],u){let[p,f]=o(d,l);i.setAttribute(
"transform",`translate(${p.toFixed(1)} ${f.toFixed(1)})`);for(let m of Q(r,"[data-gear]"))m.classList.toggle("tsl-in",u.
includes(String(m.dataset.gear)))}}}function Xs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit"}),a=Ys(t.get("plan"),{move:$=>L({type:"move",code:$}),hand:()=>t.get("view").hand}),
c=s("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=s("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...At(t.get("builds"))),d=ot("Start again",()=>L({type:"reset"})),l=s("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([$,k])=>ot(k,()=>L({type:"move",code:$})))),
u=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),p=s("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),f=s("p",{class:"ts-proof",role:"status"}),m=ot("What does a full hand test find?",()=>{
m.disabled=!0,f.textContent="testing",L({type:"prove"})}),g=nt({model:t,el:e},{kind:"rig"});c.append(s("div",{},s("p",{class:"\
ts-prompt"},"The lever"),a.element),o),g.show(g.asks("Which gears can the lever reach?",{first:a.element,begin:"press a \
place in the gate"}),g.alert,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Put together: ",i),d,m),n,c,r,f,s("p",
{class:"ts-hint ts-gate-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down tu\
rn. Or in words:"),s("div",{class:"ts-gate-work"},l,s("div",{},s("p",{class:"ts-prompt"},"Tried by hand"),p,u)));let v=0,
b="";function L($){v+=1,g.send({...$,turn:v})}function T(){let $=t.get("view");if(b!==t.get("figure")){b=t.get("figure"),
o.innerHTML=b;let k=Jt(o,"svg");k.removeAttribute("role"),k.setAttribute("aria-hidden","true")}for(let k of Q(o,"[data-b\
ody]")){let[O,B]=$.moved[String(k.dataset.rides??k.dataset.body)]??[0,0];k.setAttribute("transform",`translate(${O.toFixed(
2)} ${B.toFixed(2)})`)}for(let k of Q(o,"[data-gear]"))k.classList.toggle("tsg-in",$.gears.includes(k.dataset.gear));for(let k of Q(
o,"[data-lifts]"))k.classList.toggle("tsg-up",$.lifted);a.show($.hand,$.gears),c.dataset.turn=String($.turn),n.textContent=
`${$.gears.length>1?"■ ":$.gears.length?"● ":"○ "}${$.title}.`,r.textContent=$.happened,r.classList.toggle("ts-sto\
pped",/topped by/.test($.happened)),(u.childElementCount!==$.log.length||u.lastElementChild?.textContent!==$.log.at(-1))&&
(u.replaceChildren(...$.log.map(k=>s("li",{class:/topped by/.test(k)?"ts-stopped":""},k))),u.scrollTop=u.scrollHeight),p.
hidden=$.log.length>0,i.value=$.build,f.textContent=$.proof,m.disabled=!1,y=!1,h()}c.addEventListener("keydown",$=>{if(Tt(
$))return;let k={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[$.key];k&&($.preventDefault(),L({type:"\
nudge",travel:k[0],turned:k[1]}))}),i.addEventListener("change",()=>L({type:"build",build:i.value}));let x=null,N=null,y=!1;
function I($,k){let O=k.getBoundingClientRect(),B=k.viewBox.baseVal.width/O.width;return[($.clientX-O.left)*B,($.clientY-
O.top)*B]}c.addEventListener("pointerdown",$=>{let k=Et($,".tsg-panel, .tsl-knob");if(!k||$.button!==0)return;let O=k.ownerSVGElement,
B=t.get("view").hand,[W,Y]=I($,O),P=Number(k.dataset.scale),S=P?[P,P]:a.scale;x={svg:O,x:W-B[0]*S[0],y:Y+B[1]*S[1],scale:S},
c.setPointerCapture($.pointerId),c.focus({preventScroll:!0}),c.classList.add("ts-pulling"),$.preventDefault()}),c.addEventListener(
"pointermove",$=>{if(!x)return;let[k,O]=I($,x.svg),{scale:B}=x;N={travel_mm:(k-x.x)/B[0],turn_mm:(x.y-O)/B[1]},h()});let C=()=>{
x=null,c.classList.remove("ts-pulling")};c.addEventListener("pointerup",C),c.addEventListener("pointercancel",C);function h(){
if(y||!N)return;y=!0;let $=N;N=null,L({type:"pull",...$})}return g.follow("msg:custom",$=>{$.type==="trouble"&&(y=!1)}),
g.follow("change:view",T),T(),g.close}function Vs({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding tsw-say",role:"status"}),a=s(
"p",{class:"ts-happened tsw-happened",role:"status"}),c=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,
l=n.gears.map(([k,O])=>s("button",{type:"button",class:"ts-button","data-gear":k,"aria-pressed":"false",onclick:()=>C({type:"\
gear",gear:k})},O)),u=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:k=>C({type:"hold",shaft:k.target.
value})},...At(n.holds)),p=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:k=>{i=k.target.value,$()}},
...At(r.dials.map(k=>[k.shaft,k.name]))),f=k=>C({type:"turn",shaft:i,turns:k}),m=`1/${n.marks}`,g=s("div",{class:"ts-too\
ls",role:"group","aria-label":"Turn the shaft"},ot("↺ 1 turn",()=>f(-1),"One turn anticlockwise"),ot(`↺ ${m}`,()=>f(
-n.step),`${m} turn anticlockwise`),ot("↺ a touch",()=>f(-n.fine),"A touch anticlockwise"),ot("a touch ↻",()=>f(n.fine),
"A touch clockwise"),ot(`${m} ↻`,()=>f(n.step),`${m} turn clockwise`),ot("1 turn ↻",()=>f(1),"One turn clockwise"),ot(
"Marks to zero",()=>C({type:"reset"}))),v=new Map;for(let k of r.dials){let O=R("g",{},R("circle",{class:"tsw-end",r:34}),
R("line",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),R("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),B=[];for(let D=0;D<
n.marks;D+=1)B.push(R("line",{class:"tsw-tick",y1:-40,y2:D?-47:-52,transform:`rotate(${D*360/n.marks})`})),D&&B.push(R("\
text",{class:"tsw-number",x:57*Math.sin(D*2*Math.PI/n.marks),y:-57*Math.cos(D*2*Math.PI/n.marks)+4},String(D)));let W=R(
"svg",{viewBox:"-70 -70 140 140",class:"tsw-dial","data-shaft":k.shaft,"aria-hidden":"true"},R("circle",{class:"tsw-plat\
e",r:40}),...B,R("path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),O),Y=s("div",{class:"tsw-count",tabindex:"0",role:"\
application","aria-roledescription":"shaft","data-shaft":k.shaft},s("div",{class:"tsw-name"}),W,s("div",{class:"tsw-stro\
kes","aria-hidden":"true"}),s("div",{class:"tsw-figure"}));v.set(k.shaft,{box:Y,svg:W,shaftEnd:O}),Y.addEventListener("f\
ocus",()=>{i!==k.shaft&&(i=k.shaft,$())}),Y.addEventListener("keydown",D=>{if(Tt(D))return;let _={ArrowRight:1,ArrowDown:1,
ArrowLeft:-1,ArrowUp:-1,PageDown:1,PageUp:-1}[D.key];_&&(D.preventDefault(),i=k.shaft,f(_*(D.key.startsWith("Page")?1:D.
shiftKey?n.fine:n.step)))});let P=null,S=D=>{let _=W.getBoundingClientRect();return Math.atan2(D.clientX-_.left-_.width/
2,_.top+_.height/2-D.clientY)/(2*Math.PI)};W.addEventListener("pointerdown",D=>{D.button===0&&(P=S(D),W.setPointerCapture(
D.pointerId),Y.focus({preventScroll:!0}),D.preventDefault())}),W.addEventListener("pointermove",D=>{if(P===null)return;let _=S(
D),U=_-P;U-=Math.round(U),P=_,b+=U,T()});let w=()=>{P=null};W.addEventListener("pointerup",w),W.addEventListener("pointe\
rcancel",w)}let b=0,L=!1;function T(){if(L||Math.abs(b)<.002)return;L=!0;let k=b;b=0,f(k)}let x=nt({model:t,el:e},{kind:"\
rig"}),N=[s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Hold still: ",u),s("span",{class:"ts-pair"},"Turn by ha\
nd: ",p)),s("div",{class:"tsw-counts"},...[...v.values()].map(k=>k.box)),g,a];x.show(x.asks("How many turns does it take\
?",{first:g,begin:n.closed?"turn a shaft":"engage a gear, then turn a shaft",who:n.closed?"Nothing is saved here; your a\
nswers stand in the form.":void 0}),x.alert,o,!n.closed&&s("div",{class:"ts-tools",role:"group","aria-label":"Gears enga\
ged"},s("span",{},"Engage: "),...l),...n.closed?N:[Bt([c],N)],s("p",{class:"ts-hint tsw-say"},`All three are seen from t\
he clutch side. Drag a dial round, or go to it and use the arrow keys (${m} turn), Shift with an arrow key (a touch) or \
Page Up and Page Down (one turn). Each stroke is a whole turn.`));let y=0,I=null;function C(k){y+=1,x.send({...k,turn:y})}
let h=k=>{let O=[];for(let B=k;B>0;B-=5)O.push(B>=5?"||||/":"|".repeat(B));return O.join(" ")};function $(){let k=t.get(
"view");I!==t.get("figure")&&(I=String(t.get("figure")),c.innerHTML=I);for(let O of Q(c,"[data-wheel]")){let[B,W]=k.wheels[String(
O.dataset.wheel)]??[0,!0];O.setAttribute("transform",`translate(0 ${(B*Number(O.dataset.reach)).toFixed(1)})`),O.classList.
toggle("tsw-behind",!W)}for(let O of l)O.setAttribute("aria-pressed",String(k.engaged.includes(O.dataset.gear)));u.value=
k.held,p.value=i;for(let O of k.dials){let{box:B,shaftEnd:W}=v.get(O.shaft),Y=O.way>0?"↻":O.way<0?"↺":"";W.setAttribute(
"transform",`rotate(${O.angle})`);let[P,,S,w]=B.children;P.textContent=`${O.name}${O.held?", held":O.shaft===i?", your h\
and":""}`,S.textContent=O.strokes||Y?`${Y} ${h(O.strokes)}`:"no stroke",w.textContent=O.figure,B.classList.toggle("tsw-h\
and",O.shaft===i),B.classList.toggle("tsw-held",O.held),B.setAttribute("aria-label",`${O.name}${O.held?", held":""}. ${O.
words}`)}o.textContent=k.finding,a.textContent=k.happened,e.dataset.turn=String(k.turn),L=!1,T()}return x.follow("change\
:view",$),$(),x.close}function Js({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),c=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,c),d=[],
l=[],u=null,p=t.get("plan").lookingOnly,f=(C,h)=>s("button",{type:"button",class:"ts-button","data-verdict":C,"aria-pres\
sed":"false",onclick:()=>L.send({type:"judge",place:u,verdict:C})},h),m=p?[]:[f("stop","Stop here"),f("well","Fine as it\
 is")],g=s("button",{type:"button",class:"ts-button",onclick:()=>L.send({type:"next"})},"Another day"),v=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...m);t.get("plan").more&&v.append(g);let b=s("p",{class:"\
ts-keys"},p?"Choose a place to read what can be seen there. Keys: arrows go from place to place.":"Choose a place, read \
what can be seen there, and judge it. Keys: arrows go from place to place; Tab goes on to the buttons."),L=nt({model:t,el:e},
{kind:"rig"});L.show(L.asks(p?"What is to be seen at each place?":"Where can somebody get hurt?",{first:p?r:m[0],begin:p?
"choose a place":"choose a place and judge it",who:p?"Nothing is saved here; your answers stand in the form.":void 0}),L.
alert,p?null:n,p?null:b,Bt([r],[i,!p&&v]),p?b:null);function T(C,h){let $=C!==u;u=C;for(let[k,O]of l.entries()){let B=d[k][0]===
C;O.setAttribute("tabindex",B?"0":"-1"),O.setAttribute("aria-pressed",String(B)),O.classList.toggle("tsh-chosen",B),B&&h&&
(O.focus({preventScroll:!0}),x(O))}$&&L.send({type:"choose",place:C})}function x(C){let h=Jt(C,".tsh-hit").getBoundingClientRect(),
$=r.getBoundingClientRect();(h.left<$.left||h.right>$.right)&&(r.scrollLeft+=h.left-$.left-($.width-h.width)/2),(h.bottom<
0||h.bottom>innerHeight||h.top<0)&&C.scrollIntoView({block:"nearest"})}function N(){let C=t.get("plan");d=C.places,r.innerHTML=
C.drawing,Jt(r,"svg").setAttribute("role","group"),l=d.map(([h])=>Jt(r,`[data-place="${h}"]`)),l.forEach((h,$)=>{h.setAttribute(
"role","button"),h.setAttribute("aria-label",`${$+1} ${d[$][1]}`),h.addEventListener("click",()=>T(d[$][0],!0))}),u=String(
t.get("view").chosen),T(u,!1)}r.addEventListener("keydown",C=>{if(Tt(C))return;let h=d.findIndex(([O])=>O===u),$=Math.min(
6,d.length),k=h;if(C.key==="ArrowRight")k=h+1;else if(C.key==="ArrowLeft")k=h-1;else if(C.key==="ArrowDown")k=h+$;else if(C.
key==="ArrowUp")k=h-$;else if(C.key==="Home")k=0;else if(C.key==="End")k=d.length-1;else if(C.key!=="Enter"&&C.key!==" ")
return;C.preventDefault(),k>=0&&k<d.length&&T(d[k][0],!0)});function y(){let C=t.get("view");n.textContent=C.finding;let h=d.
findIndex(([O])=>O===C.chosen);o.textContent=`${h+1}  ${d[h][1]}`,a.textContent=C.seen;let{verdict:$,...k}=C.told;if(c.replaceChildren(),
$){let O=C.judged[C.chosen],B=O==="stop"==($==="Stop here."),W=O==="stop"?"Stop here":"Fine as it is";c.append(s("p",{class:"\
tsh-verdict"},B?`✓ Yes: ${$}`:`✗ You said “${W}”. The course says: ${$}`),s("dl",{class:"ts-facts"},...Object.entries(
k).flatMap(([Y,P])=>[s("dt",{},Y),s("dd",{},P)])))}for(let O of m)O.setAttribute("aria-pressed",String(C.judged[C.chosen]===
O.dataset.verdict));for(let[O,B]of l.entries()){let W=C.judged[d[O][0]];B.setAttribute("aria-label",`${O+1} ${d[O][1]}${W?
`, judged: ${W==="stop"?"stop here":"fine as it is"}`:""}`);let Y=B.querySelector(".tsh-tag");if(!W){Y?.remove();continue}
Y||(Y=R("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),B.append(Y)),Y.textContent=W==="stop"?"■ \
stop":"○ well"}e.dataset.turn=C.chosen}let I=()=>{N(),y()};return L.follow("change:plan",I),L.follow("change:view",y),
I(),L.close}function Zs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),c=new Map,d=n.sliders.map(([f,m,g,v,b,L])=>{let T=ct(f.replace("_","-")),x=s("output",{class:"\
tsl-figure",for:T}),N=s("input",{id:T,type:"range",min:v,max:b,step:L,oninput:()=>{y(),u.send({type:"set",name:f,value:Number(
N.value)})}}),y=()=>{x.textContent=`${N.value} ${g}`,N.setAttribute("aria-valuetext",`${N.value} ${g==="°"?"degrees":g}`)};
return c.set(f,{slider:N,say:y}),s("div",{class:"tsl-row"},s("label",{for:T},m),N,x)}),l=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>u.send({type:"set",name:"grip",value:l.value})},...At(n.grips)),u=nt({model:t,el:e},{kind:"\
rig"});u.show(u.asks("Is this lift safe by hand?",{first:c.values().next().value?.slider,begin:"set the load"}),u.alert,
r,s("div",{class:"tsl-sliders",role:"group","aria-label":"The lift"},...d,s("div",{class:"tsl-row"},s("span",{},"Grip"),
l)),a,o,s("p",{class:"ts-keys"},"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));
function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.sum,a.innerHTML=f.drawing;for(let[m,{slider:g,say:v}]of c)
document.activeElement!==g&&(g.value=f.sizes[m]),v();l.value=f.sizes.grip}return u.follow("change:view",p),p(),u.close}var Ie={x:90,y:120,perMm:20,radius:82,bevel:30};function bo(t){let e=R("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=Ie;e.append(R("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),ht(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let f=n+p*t.pitch*o;if(p%2){e.append(ht(
f,r,f,r+18,"tsi-fine"));continue}let m=p/2;e.append(ht(f,r,f,r-(m%5?18:27),m%5?"tsi-fine":"tsi-bold")),m%5===0&&e.append(
wt(f,r-33,String(m)))}let c=R("g",{});e.append(c,wt(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=R("path",{d:`M0 ${r-a+14}L${Ie.bevel} ${r-a}L${Ie.bevel} ${r+a}L0 ${r+a-14}\
Z`,class:"tsi-body"}),d=R("rect",{x:Ie.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),l=R("rect",{x:0,y:r-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),u=R("g",{});return c.append(l,i,d,u),{node:e,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*o} 0)`),u.replaceChildren();for(let f=0;f<t.lines;f+=1){let m=f-p.line;m-=t.lines*Math.round(m/t.lines);let g=m/
t.lines*2*Math.PI;if(Math.abs(g)>1.15)continue;let v=r-(a-8)*Math.sin(g),b=f%5===0;u.append(ht(0,v,b?26:16,v,b?"tsi-bold":
"tsi-fine")),b&&u.append(wt(36,v+5,String(f),"start"))}e.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function Qs(t){
return Dt(t,(e,n,r)=>{let o=bo(e),a=Ct("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, \
out to the right",onInput:l=>n({open:l})}),c=St("Between the faces",e.between,r.between,l=>n({between:l,open:e.top})),i=q(
"Close until it rests",()=>n({open:-1})),d=e.hands.length?St("Close it",e.hands,r.hand,l=>n({hand:l})):null;return{asks:"\
How thick is it?",first:i,begin:"close it until it rests",picture:o.node,controls:[Nt(c.row,d?.row),Nt(i,q("Open",()=>n(
{open:e.top}))),a.row],set(l,u){o.set(l),a.box.value=String(Math.max(0,l.mm)),c.box.value=u.between}}})}function tn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[d,l,u]of n.checks){let p=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${l}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:d})}},"Make"),f=Ft("it shows",!1);f.classList.add("t\
sk-shown"),a.set(d,{button:p,shown:f}),o.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},l),Ft("min",!0,
`${u}`),Ft("",!1,p),f))}let c=nt({model:t,el:e},{kind:"rig"});c.show(c.asks("What does each check show on your unit?",{first:a.
values().next().value?.button,begin:"make a check",who:"Checks are not saved; make them again after reopening."}),c.alert,
r,Te("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));function i(){let d=t.get("view");r.textContent=
d.finding;for(let[l,{button:u,shown:p}]of a){let f=d.shown[l];u.setAttribute("aria-disabled",f?"true":"false"),u.classList.
toggle("ts-off",!!f),u.textContent=f?"Made":"Make",p.textContent=f?`${f[0]?"✓":"✗"} ${f[1]}`:"",p.classList.toggle("\
tsk-failed",!!f&&!f[0])}}return c.follow("change:view",i),i(),c.close}function vo(){let t=R("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=R("g"),n=R("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(R("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,R("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=c=>(-135+270*c)*Math.PI/180,o="";function a([c,i,d]){e.replaceChildren();for(let l=0;l*i<=c+
1e-9;l+=1){let u=r(l*i/c),p=l%d===0,f=m=>[110+m*Math.sin(u),104-m*Math.cos(u)];if(e.append(ht(...f(p?72:79),...f(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&l%(2*d)===0){let[m,g]=f(58);e.append(wt(m,g+4.5,String(Number((l*i).toFixed(2)))))}}e.
append(wt(110,170,"kN"))}return{node:t,set(c,i,d){String(c)!==o&&(o=String(c),a(c));let l=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*l})`),t.setAttribute("aria-label",d)}}}function en(t){return Dt(t,(e,n,r)=>{
let o=vo(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),d=Ct("Push",{min:0,max:100,step:1,value:r.travel,onInput:f=>n(
{travel:f}),words:f=>f>=100?"at the shoulder":`${f} % of the way`}),l=[d.row],u=null;if(!e.readingsOnly){let f=St("Part",
e.places,r.place,b=>n({place:b,travel:0}));u=St("Driver presses on",e.drivers,r.driver,b=>n({driver:b,travel:0}));let m=St(
"Seat",e.seats,r.seat,b=>n({seat:b})),g=Ct("Pair",{min:0,max:100,step:1,value:r.grip,onInput:b=>n({grip:b}),words:b=>b===
0?"loosest of the fit":b===100?"tightest of the fit":`${b} % from loosest to tightest`}),v=Ct("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:b=>n({warmth:b}),words:b=>`${b} °C`});l.unshift(Nt(f.row,u.row,m.row),
g.row,v.row)}let p=s("dl",{class:"ts-facts"});return e.readingsOnly||l.push(p),{asks:"What force does it take, and where\
 does it stop?",first:d.box,begin:"push the part",side:!e.readingsOnly,picture:i,controls:l,set(f,m){f.section!==c&&(c=f.
section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*m.travel/100} 0\
)`),o.set(f.gauge,f.force,f.words),Number(d.box.value)!==m.travel&&document.activeElement!==d.box&&d.set(m.travel),u&&(u.
row.hidden=!f.drives),f.facts&&p.replaceChildren(...Rt(f.facts))}}})}function sn({model:t,el:e}){let n=t.get("steps"),r=new Map(n),o=s("div",{class:"ts-scroll tsf-near",tabindex:"0",role:"r\
egion","aria-label":"The rules around the chosen step"}),a=s("p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts\
-sentences"}),i=s("select",{class:"ts-box ts-before","aria-label":"Chosen step",onchange:()=>u(i.value)},...At(n.map(([m,
g],v)=>[m,`${v+1}  ${g}`]))),d=nt({model:t,el:e},{kind:"rig",lost(){i.disabled=!0}});d.show(d.asks("What comes before th\
is step, and what after it?",{first:i,begin:"choose a step, or press one in the picture",who:""}),d.alert,s("p",{class:"\
ts-hint"},t.get("finding")),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",i)),a,o,s("details",{class:"ts\
-keys"},s("summary",{},"In words, with reasons"),c));let l=!1,u=m=>d.send({type:"choose",step:m}),p=m=>{let g=Et(m,"[dat\
a-step]")?.dataset.step;g&&(l=!0,u(g))};o.addEventListener("click",p),o.addEventListener("keydown",m=>{m.key!=="Enter"&&
m.key!==" "||Et(m,"[data-step]")&&(m.preventDefault(),p(m))});function f(){let m=t.get("near");a.textContent=m.words,i.value=
m.step,o.innerHTML=m.figure,o.querySelector("svg")?.setAttribute("role","group");let g=Q(o,"[data-step]");for(let v of g)
v.setAttribute("role","button"),v.setAttribute("tabindex","0"),v.setAttribute("aria-label",r.get(String(v.dataset.step))??
"");c.replaceChildren(...Ut(m.sentences)),l&&(g[0]??i).focus({preventScroll:!0}),l=!1}return d.follow("change:near",f),f(),
d.close}function ko(){let t=R("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=R("g",{}),n=R("g",{});return e.append(
R("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),ht(150,164,150,98,"tsi-bold"),R("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(ht(150,86,150,40,"tsi-plunger"),R("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,ht(50,164,
250,164,"tsg-centre"),ht(150,250,150,80,"tsg-centre"),n,wt(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute(
"transform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function nn(t){
return Dt(t,(e,n,r)=>{let o=oe(),a=ko(),c=Ct("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:l=>`turn\
ed by ${l}°`,onInput:l=>n({angle:l})}),i=St("Plunger",e.pressed,r.pressed,l=>n({pressed:l})),d=St("Stand",e.tilts,r.tilt,
l=>n({tilt:l}));return{asks:"How far does the shaft run out?",first:c.box,begin:"turn the shaft",picture:s("div",{class:"\
tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One mark 0.01 mm, one turn 1 mm"))),controls:[Nt(i.row,
d.row),c.row],set(l,u){o.set(l.mm,l.words),a.set(l.state.angle,Number(l.state.tilt),`Shaft end on, turned by ${l.state.angle}\
°; the plunger stands ${l.state.tilt}° off square. Not to scale.`),c.set(u.angle)}}})}var rn=(t,e)=>(t+e)%7<2,an=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,ie=()=>!1,Ne=t=>(e,n)=>n%t===0,yo={"":ie,dots:(t,e)=>t%6<2&&e%
6<2,rising:rn,cross:an,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":ie,"lines-2":Ne(14),"lines-3":Ne(8),"lines-4":Ne(5),"lines-5":Ne(
3)};function xo(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var on=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function cn(t,[e,n],r,o,a){let c=n*4,i=new Uint32Array(c*e*4),d=new Map(r.map(([p,,f,m])=>{let g=f?on(xo(f),200):
0;return[p,{ground:g,hatch:yo[m]??ie}]})),l={ground:0,hatch:ie},u=on(o,190);for(let p=0;p<e;p+=1){let f=(e-1-p)*4;for(let m=0;m<
n;m+=1){let g=t[p*n+m];if(!g)continue;let{ground:v,hatch:b}=d.get(g&15)??l,L=a&&(g&16)!==0,T=a&&(g&32)!==0;if(b===ie&&!L&&
!T){if(!v)continue;let x=m*4;for(let N=f;N<f+4;N+=1)i.fill(v,N*c+x,N*c+x+4);continue}for(let x=f;x<f+4;x+=1)for(let N=m*
4;N<(m+1)*4;N+=1){let y=b(N,x)||L&&rn(N,x)||T&&an(N,x);i[x*c+N]=y?u:v}}}return i}var So=600;function dn(t,e,n,r,o,a){let[c,i]=n;t.width=i*4,t.height=c*4;let d=new Uint8ClampedArray(cn(e,n,r,o,a).buffer),
l=new ImageData(d,t.width,t.height);t.getContext("2d")?.putImageData(l,0,0)}function Lo(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return dn(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function un({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),c=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),d=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),l=nt({model:t,el:e},{kind:"rig",lost(){f.setDisabled(!0),fe(e)}}),u=null,p=P=>{u=ct("turn"),l.send({...P,turn:u})},
f=ye({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(P){f.
drawing.strokes(P),p({type:"lay",entries:P})},onRemove:P=>p({type:"remove",at:P}),onClear:()=>p({type:"clear"})}),m=q("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),g=s("input",{type:"range",id:ct("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),v=s("output",{for:g.id}),b=Ot({id:ct("slide"),onchange:()=>p({type:"slide",by:b.value})},
t.get("view").slides),L=null;g.addEventListener("input",()=>{v.textContent=`${g.value} µm`;let P={type:"flat",um:Number(
g.value)};u===null?p(P):L=P});let{box:T,unit:x}=f.drawing;f.drawing.land.classList.add("tsp-clear"),f.drawing.frame.prepend(
d);let N=(...P)=>s("span",{class:"ts-pair"},...P);l.show(l.asks("Does this film close the gap?",{first:m,begin:"press Cl\
ose the face"}),l.alert,o,Bt([f.drawing.frame,i],[s("div",{class:"ts-tools"},m,N(s("label",{for:b.id},"the other face is"),
b)),s("div",{class:"ts-tools"},a,q("1 minute passes",()=>p({type:"time",by:1})),q("5 minutes pass",()=>p({type:"time",by:5}))),
s("div",{class:"ts-tools"},N(s("label",{for:g.id},"faces out of flat by"),g,v)),f.tools,c,s("details",{class:"ts-keys"},
s("summary",{},"Passes laid"),f.empty,f.list)]));function y(){let P=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return P?
P.slice(0,3).map(Number):[0,0,0]}let I="",C="";function h(){let P=t.get("view"),S=r[P.closed?"closed":"film"],w=t.get("g\
rid"),D=w instanceof DataView?new Uint8Array(w.buffer,w.byteOffset,w.byteLength):new Uint8Array(w);dn(d,D,P.shape,S,y(),
!P.closed);let[_,U]=P.shape,[rt,bt]=[P.corner[0]-P.pitch/2,P.corner[1]-P.pitch/2],V=(X,ut)=>`${(100*X/ut).toFixed(3)}%`;
d.style.left=V(rt-T.left,T.width),d.style.width=V(U*P.pitch,T.width),d.style.top=V(T.high-bt-_*P.pitch,T.height),d.style.
height=V(_*P.pitch,T.height);let $t=new Set(D);if(!P.closed)for(let X of[...$t])$t.add(X&15);let F=S.filter(([X])=>$t.has(
X)),z=`${F.map(([,X])=>X)} ${y()}`;z!==I&&(I=z,i.replaceChildren(...F.map(X=>Lo(X,y()))))}let $=R("g");f.drawing.over.append(
$);let k=([P,S])=>[P-T.left,T.high-S];function O([P,S]){let w=S.map(D=>{let[_,U]=k(D);return`M${_.toFixed(1)} ${U.toFixed(
1)}h0.01`});return R("path",{d:w.join(""),class:"tsp-lump","stroke-width":2*P})}function B(P){let[S,w]=k(P[P.length-1]),
D=`M${S-1.3*x} ${w-x}h${2.6*x}l${-1.3*x} ${2.2*x}Z`;return[R("path",{d:f.drawing.path(P),class:"tsp-way","stroke-width":x}),
R("path",{d:D,class:"tsp-out"})]}function W(){let P=t.get("view");if(u!==null&&P.turn!==u)return;u=null;let S=JSON.stringify(
[P.entries,P.notes]);if(S!==C&&f.show(P.entries,P.notes),C=S,f.drawing.strokes([]),h(),$.replaceChildren(...P.lumps.map(
O),...P.leaks.flatMap(B)),f.drawing.svg.classList.toggle("tsp-shut",P.closed),f.drawing.svg.classList.toggle("tsp-clean",
P.closed||P.clean),o.textContent=P.finding,b.value=P.slide,a.textContent=`minute ${P.minute}`,m.textContent=P.closed?"Li\
ft the face off again":"Close the face",L===null&&(g.value=String(P.flat),v.textContent=`${P.flat} µm`),c.replaceChildren(
...Rt(P.facts)),L===null)return;let w=L;L=null,p(w)}l.follow("change:view",W),l.follow("msg:custom",P=>{P.type==="troubl\
e"&&(u=null,f.drawing.strokes([]))});let Y=new MutationObserver(()=>setTimeout(h,So));return Y.observe(document.body,{attributes:!0,
attributeFilter:["data-jp-theme-light"]}),W(),()=>{l.close(),Y.disconnect()}}function pn(t){return Dt(t,(e,n,r)=>{let o=oe(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),d=e.places.map(([u,p])=>[u,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:u})},p)]),l=[s("p",{class:"ts-hint"},e.rule),Nt(s("span",{},"Set the gauge down at"),...d.map(([,u])=>u))];
return e.readingsOnly||(l.push(Nt(St("Lip looks towards",e.sides,r.lip,u=>n({lip:u})).row,St("Lip is",e.greases,r.grease,
u=>n({grease:u})).row,e.sleeves.length?St("It went",e.sleeves,r.sleeve,u=>n({sleeve:u})).row:"")),l.push(Ct("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:u=>`${u.toFixed(2)} mm${u<0?", proud":""}`,onInput:u=>n({
depth:u})}).row,Ct("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:u=>u?`${u.toFixed(2)} mm across`:"square",onInput:u=>n(
{lean:u})}).row)),{asks:"Does the seal sit square and deep enough?",first:d[0][1],begin:"set the gauge down",side:!e.readingsOnly,
picture:i,controls:l,set(u,p){u.section!==c&&(c=u.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.setAttribute("t\
ransform",u.placed),o.set(u.dial,u.words);for(let[f,m]of d)m.setAttribute("aria-pressed",String(f===p.place))}}})}function fn({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=oe(),a=n.readingsOnly?null:Ns(n),c=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),d=ne((I,C)=>L.send({type:"set",state:I,turn:C})),l=I=>{r={...r,...I},d.ask(r)},
u=(I,C)=>{let h=[...r.shims];h[I]=C,l({shims:h.filter(Boolean),turns:0})},p=(I,C,h)=>q(I,C,{"aria-pressed":h}),f=q("Turn\
 the shaft ten times",()=>l({turns:r.turns+10})),m=p("Pull the shaft away",()=>l({side:"away"}),"true"),g=p("Push it to \
the dial",()=>l({side:"towards"}),"false"),v=St("Plunger",n.plungers,r.plunger,I=>l({plunger:I})),b=[s("div",{class:"ts-\
tools"},n.rolls?f:null,v.row,m,g)];if(!n.readingsOnly){let I=St("Shim",n.shelf,r.shims[0],h=>u(0,h)),C=n.second?St("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",h=>u(1,h)):null;b.unshift(s("div",{class:"ts-tools"},I.row,C?.row)),b.
push(Ct("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:h=>l({warmth:h}),words:h=>h?`case ${Math.round(n.caseRise*
h/100)} K warmer`:"cold, as at the bench"}).row)}let L=nt({model:t,el:e},{kind:"rig"}),T=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});T.innerHTML=n.section;let x=[n.readingsOnly?L.asks("How far does the shaft\
 move?",{first:n.rolls?f:g,begin:n.rolls?"turn the shaft":"push the shaft",who:"Take your readings here; write them in t\
he form."}):L.asks("Which shim gives the setting that you want?",{first:b[0].querySelector("select"),begin:"choose a shi\
m"}),L.alert,n.readingsOnly&&T,s("div",{class:"tsg-beside"},!n.readingsOnly&&T,s("div",{class:"tsg-gauge"},o.node,s("div",
{},"Dial at the shaft's right end, one mark 0.01 mm")),n.readingsOnly&&s("div",{class:"tsg-side"},...b,c)),...n.readingsOnly?
[]:[...b,c],a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg\
-wide",tabindex:"0",role:"group","aria-label":"Axis of settings"},a.node)),i];L.show(...x.filter(Boolean));function N(){
let I=t.get("shown");d.waiting||(r=I.state),o.set(I.dial,I.dialWords),m.setAttribute("aria-pressed",String(I.state.side===
"away")),g.setAttribute("aria-pressed",String(I.state.side==="towards")),c.textContent=I.finding,a&&(a.set(I.cold,I.warm,
I.words.join(" ")),i.replaceChildren(...I.words.map(C=>s("p",{},C)))),d.answered(I.turn)}let y=()=>d.free();return L.follow(
"change:shown",N),L.follow("msg:custom",y),N(),L.close}function hn(t){return Dt(t,(e,n,r)=>{let o=s("div",{tabindex:"0",role:"group","aria-label":e.name}),a="",c=e.pickers.map(
({key:u,label:p,options:f})=>St(p,f,r[u],m=>n({[u]:m}))),i=e.sliders.map(({key:u,label:p,min:f,max:m,step:g,unit:v,places:b})=>Ct(
p,{min:f,max:m,step:g,value:r[u],words:L=>`${L.toFixed(b)} ${v}`,onInput:L=>n({[u]:L})})),d=c.map(({row:u})=>u),l=d.length>
2?d.map(u=>Nt(u)):d.length?[Nt(...d)]:[];return{asks:e.asks,first:[...c,...i][0].box,begin:c.length?"choose from the fir\
st list":"move the first slider",picture:o,controls:[...l,...i.map(({row:u})=>u)],set(u){u.drawing!==a&&(a=u.drawing,o.innerHTML=
a)}}})}function gn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),c=s("dl",{class:"ts-facts"}),i=null,d=null,l=(C,h)=>{d={...d,[C]:h},i===null&&u()};function u(){
i=ct("choice"),N.send({type:"choose",chosen:d,turn:i}),d=null}let p=s("div",{class:"tsj-settings"}),f=(C,h,$)=>{let k=ct(
"set");return h.id=k,p.append(s("label",{for:k},C),s("span",{class:"tsj-slide"},h,$)),h},m=(C,h,$)=>f(h,s("select",{class:"\
ts-box",onchange:k=>l(C,k.target.value)},...At($.map(k=>typeof k=="string"?[k,k]:k)))),g=(C,h,$)=>f(h,s("input",{type:"r\
ange",oninput:k=>l(C,Number(k.target.value))}),$),v={group:m("group","Bolt of the unit",n.groups),thread:m("thread","Thr\
ead",n.threads),strength:m("strength","Strength class",n.classes),state:m("state","State of the thread",n.states),tool:m(
"tool","Tool",n.tools)},b=s("output",{class:"tsj-figure"}),L=g("torque_nm","Torque",b),T=s("output",{class:"tsj-figure"}),
x=g("engagement_mm","Thread that meets",T),N=nt({model:t,el:e},{kind:"rig"});N.show(N.asks("What gives way first?",{first:L,
begin:"set the torque"}),N.alert,r,o,s("div",{class:"tsj-bench"},p,a),c);let y=(C,h,$,k,O,B)=>{Ht(C,{min:h,max:$,step:k}),
i===null&&(C.value=String(O)),C.setAttribute("aria-valuetext",B)};function I(){let C=t.get("view");if(i!==null&&C.turn!==
i)return;i=null,d!==null&&u();let{chosen:h}=C;r.textContent=C.finding,o.innerHTML=C.band,a.innerHTML=C.section,c.replaceChildren(
...Rt(C.facts));for(let[$,k]of Object.entries(v))k.value=h[$];y(L,1,C.topTorque,.5,h.torque_nm,C.torqueText),b.textContent=
C.torqueText,y(x,C.lowEngagement,C.topEngagement,.5,h.engagement_mm,C.engagementText),T.textContent=C.engagementText}return N.
follow("change:view",I),I(),N.close}function mn({model:t,el:e}){let n=se(t),r=Kt(t.get("picture"),{onChoose:a=>n.show("part",[a])}),o=nt({model:t,el:e},{kind:"\
rig"});return o.show(o.asks("Where does each part lie?",{first:r.choose,begin:"choose a part",who:""}),o.alert,s("p",{class:"\
ts-finding"},t.get("finding")),...n.any("part")?[Bt(r.nodes,[n.node])]:r.nodes),()=>{n.close(),o.close()}}var wn=([t,e],[n,r,o,a],c)=>t>=n-c&&t<=n+o+c&&e>=r-c&&e<=r+a+c;function bn(t,e,n){let r=n.find(c=>(e[c]??[]).some(i=>wn(
t,i,10)));if(r!==void 0)return r;let[o,a]=["",Number.POSITIVE_INFINITY];for(let[c,i]of Object.entries(e))for(let d of i){
let l=d[2]*d[3];l<a&&wn(t,d,0)&&([o,a]=[c,l])}return o}var vn=(t,e)=>t[(e===void 0?0:t.indexOf(e)+1)%t.length];function ce(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function Ve(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var Xe=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function kn(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let c=ce(e,
n),i=c.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let l=e.map(([f])=>f),u=t==="ArrowLeft"?-1:1,p=ce(e,l[(l.
indexOf(n)+u+l.length)%l.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let d=t.toLowerCase();return Xe(c,i).find(l=>o[l].toLowerCase().startsWith(d))}function yn({stages:t,stage:e,step:n,isOpen:r}){
let o=ce(t,e),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(o.at(-1)));return Xe(o,o.indexOf(String(n))).find(r)??Xe(a,c).find(
r)}var Co=6;function Je(t,e,n,r){let o=Math.min(n/e[2],r/e[3],1.2),a=R("svg",{viewBox:e.join(" "),width:String(Math.round(e[2]*
o)),height:String(Math.round(e[3]*o)),class:"ts-inhand","aria-hidden":"true"});return typeof t=="string"?a.innerHTML=t:a.
replaceChildren(...t),a}function xn(t,e){return Q(t,"[data-part]").filter(r=>e.includes(String(r.dataset.part))).filter(
r=>!r.closest(".tsu-marks")).map(r=>{let o=R("g",{});o.append(...r.cloneNode(!0).childNodes);for(let a of Q(o,"text, tit\
le, desc"))a.remove();for(let a of Q(o,"[data-solid]"))a.removeAttribute("data-solid");return o})}function $n(t,{drawing:e,
held:n,begin:r=()=>{},drop:o}){let a=null,c=null,i=!1;t.classList.add("ts-carry");function d(v){let b=v?"addEventListene\
r":"removeEventListener";document[b]("pointermove",m),document[b]("pointerup",g),document[b]("pointercancel",u),document[b](
"keydown",p,!0),document[b]("selectstart",l)}function l(v){v.preventDefault()}function u(){c?.remove(),a=c=null,d(!1)}function p(v){
v.key!=="Escape"||!c||(v.preventDefault(),u())}let f=()=>e.viewBox.baseVal.width/e.getBoundingClientRect().width;function m(v){
if(!(!a||v.pointerId!==a.id)){if(!c){if(Math.hypot(v.clientX-a.x,v.clientY-a.y)<Co)return;let b=n();if(!b)return;let L=b.
cloneNode(!0),{width:T,height:x}=b.viewBox.baseVal;L.setAttribute("width",String(T/f())),L.setAttribute("height",String(
x/f())),c=s("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},L),document.body.append(c),r()}c.style.left=`${v.clientX}\
px`,c.style.top=`${v.clientY}px`}}function g(v){if(!a||v.pointerId!==a.id)return;let b=!!c;if(u(),!b)return;i=!0;let L=e.
parentElement.getBoundingClientRect(),{clientX:T,clientY:x}=v;if(T<L.left||T>L.right||x<L.top||x>L.bottom)return;let{left:N,
top:y}=e.getBoundingClientRect();o([(T-N)*f(),(x-y)*f()])}return t.addEventListener("pointerdown",v=>{i=!1,v.button===0&&
(a={x:v.clientX,y:v.clientY,id:v.pointerId},d(!0))}),t.addEventListener("click",v=>{i&&(i=!1,v.preventDefault(),v.stopPropagation())},
!0),u}var Eo=[-4,-4,104,104];function Sn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"t\
s-happened ts-told",role:"status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choi\
ce","aria-label":"Stage",onchange:()=>$t()},...At(n.stages.map(([A,K])=>[A,K]))),c=se(t),i=Kt(t.get("picture"),{name:"Th\
e bench, in section",onChoose:A=>{A&&c.show("part",[A])}}),d=s("p",{class:"ts-hint ts-in-picture",role:"status"}),l=ot(n.
marked?"Next open step":"Next ready step",()=>D("next"));l.classList.add("ts-next");let u=s("div",{class:"ts-buildlist",
role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this stage",onkeydown:A=>U(A)}),p=s("details",{class:"\
ts-keys"},s("summary",{},"Keys"),"Up and down walk through the steps, left and right change the stage, Enter takes a ste\
p in hand; arrow keys choose its way round, Enter again puts it in its place. With a hand: carry the drawn part to its p\
lace in the section."),f=s("div",{class:"ts-hand",role:"group","aria-label":"Step in hand",onkeydown:A=>{A.key!=="Enter"||
!A.target.matches("input[type=radio], .ts-number-box")||(A.preventDefault(),t.get("hand").stands?bt():st())}}),m=s("dl",
{class:"ts-facts"}),g=s("ul",{class:"ts-sentences"}),v=s("p",{class:"ts-prompt"},"Wrong so far"),b=s("select",{class:"ts\
-box ts-before","aria-label":"A step that stands"}),L=ot("Take out again",()=>{b.value&&k({type:"out",step:b.value},"han\
d")}),T=ot("Put the tools down",()=>k({type:"over"},"told"));T.classList.add("ts-over");let x=s("div",{}),N=s("p",{class:"\
ts-status"}),y=s("details",{ontoggle:()=>{y.open!==!!t.get("view").record&&k({type:"record",open:y.open})}},s("summary",
{},"Build record"),x),I=s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"ts-tools"},a,l),u),s(
"div",{class:"ts-build-hand"},f),s("div",{class:"ts-build-unit"},...i.nodes,d,c.node),s("div",{class:"ts-tools ts-build-\
end"},s("span",{class:"ts-pair"},b,L),T)),C=nt({model:t,el:e},{kind:"rig"});C.show(C.asks("Which step comes next, and wh\
at does it need?",{first:l,begin:"press the lit button",who:n.who}),C.alert,r,N,o,I,m,v,g,y,p);let h=0,$=null;function k(A,K=null){
h+=1,$=K&&{turn:h,focus:K},e.setAttribute("aria-busy","true"),C.send({...A,turn:h})}let O="",B=null,W="next",Y=A=>!t.get(
"view").done.includes(A),P=()=>Q(u,"[data-step]"),S=A=>P().find(K=>K.dataset.step===A)?.focus(),w=()=>({stages:n.stages,
stage:a.value,step:B,isOpen:Y});function D(A,K){W=A,k(A==="list"?{type:"take",step:K}:{type:"next"},"hand")}function _(A){
a.value=Ve(n.stages,A)??a.value,B=A,$t(),S(A)}function U(A){if(Tt(A))return;let K=kn(A.key,{...w(),labels:n.labels});K&&
(A.preventDefault(),_(K))}function rt(){let A=yn(w());A?W==="next"?l.focus():_(A):T.focus()}function bt(){let A=t.get("v\
iew").done.length>=Object.keys(n.labels).length;W==="next"&&!A?D("next"):rt()}function V(A){let{done:K,ready:Z}=t.get("v\
iew");return K.includes(A)?{sign:"✓",word:"done"}:Z.includes(A)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"o\
pen":"waits"}}function $t(){let A=ce(n.stages,a.value);(B===null||!A.includes(B))&&(B=A.find(Y)??A[0]);let K=t.get("hand").
step,Z=JSON.stringify([a.value,A.map(V),K]);if(Z===O){for(let xt of P())xt.tabIndex=xt.dataset.step===B?0:-1;return}O=Z;
let at=P().find(xt=>xt===document.activeElement)?.dataset.step;u.replaceChildren(...A.map(xt=>F(xt,K))),at&&S(at);let mt=P().
find(xt=>xt.dataset.step===(K??B));mt&&(u.scrollTop=mt.offsetTop-u.offsetTop-mt.offsetHeight)}function F(A,K){let{sign:Z,
word:at}=V(A);return s("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${at}`,"data-step":A,tabindex:A===
B?"0":"-1","aria-current":A===K?"step":!1,"aria-label":`${n.labels[A]}: ${at}`,onclick:()=>{B=A,D("list",A)}},ft(A),s("s\
pan",{},jt(Z),n.labels[A]))}function z(A,K,Z){let at=n.tray[A];return at?Je(xn(i.drawing,at.parts),at.box,K,Z):null}let X=[],
ut=new Map;function ft(A){let K=ut.get(A);if(K)return K;let Z=z(A,44,30),at=s("span",{class:"ts-thumb"},Z??"");return Z&&
n.tray[A].moves&&lt(at,()=>A,()=>Z),ut.set(A,at),at}function lt(A,K,Z){let at=$n(A,{drawing:i.drawing,held:Z,begin:()=>{
let mt=K();t.get("hand").step!==mt&&(B=mt,k({type:"take",step:mt}))},drop:mt=>{let xt=K();for(let yt of G.values())yt.flush();
let It=bn(mt,t.get("picture").boxes,n.tray[xt].parts);k({type:"put",step:xt,part:It},"after")}});X.push(at)}function gt(){
let A=Q(f,'[data-field^="way-"] input[type=radio]');return{inputs:A,now:A.find(K=>K.checked)?.value}}function M(){let{inputs:A,
now:K}=gt(),Z=vn(A.map(at=>at.value),K);A.find(at=>at.value===Z)?.click(),E()}let H=s("div",{class:"ts-held-frame"}),tt=ot(
"Turn it",M,"Turn it: the other way round"),et=s("p",{class:"ts-hint"}),vt=s("div",{class:"ts-held-box"},H,et,tt),it="";
lt(H,()=>t.get("hand").step,()=>H.querySelector("svg"));function E(){let{step:A,held:K,stands:Z}=t.get("hand"),{inputs:at,
now:mt}=gt();tt.hidden=!at.length;let[xt,It]=n.tray[A??""]?.tool??[];if(vt.hidden=!A||Z||!(n.tray[A]?.moves||It),et.textContent=
It&&xt||"",!A||vt.hidden)return;let yt=K.field&&mt||"",pe=`${A} ${yt}`;if(pe===it)return;it=pe;let Re=K.looks?.[yt]??(It?
[It,Eo]:null);H.replaceChildren((Re?Je(Re[0],Re[1],120,84):z(A,120,84))??"")}let j="",G=new Map;function dt(A){let K=Zt(
A),Z=s("p",{class:"ts-read",id:K.read,role:"status"}),at=0,mt=yt=>{k({type:"set",name:A.name,value:yt}),at=h},xt=Gt(A).make(
A,K,mt,()=>{}),It=Qt(A,K,null);return It.append(xt.element,Z),It.dataset.field=A.name,{element:It,flush:()=>xt.flush?.(),
show(yt={},pe){if(pe<at)return;xt.show(yt);let ts=yt.read?`read as ${yt.read}`:"";Z.textContent=yt.error?`▲ Look again: ${yt.
error}`:ts}}}let Lt=A=>s("dl",{class:"ts-facts"},...Rt(A));function pt(){let A=t.get("hand"),K=JSON.stringify(A);if(K===
j)return;if(j=K,I.classList.toggle("ts-build-face",(A.fields??[]).some(yt=>yt.kind==="film")),f.dataset.stands=String(!!A.
stands),G=new Map((A.fields??[]).map(yt=>[yt.name,dt(yt)])),!A.step){f.replaceChildren(s("p",{class:"ts-hint"},"No step \
in hand. Choose one from the list, or press the button above it."));return}let Z=ot(`Do it: ${A.label}`,st);Z.classList.
add("ts-do");let at=A.stands?[ot("Go on",bt),ot("Take it out again",()=>k({type:"out",step:A.step},"hand"))]:[Z],mt=[...G.
values()].map(yt=>yt.element),xt=yt=>String(yt.dataset.field).startsWith("way-");f.replaceChildren(s("p",{class:"ts-prom\
pt ts-hand-name",tabindex:"-1"},A.label),s("div",{class:"ts-hand-row"},vt,s("div",{},...A.plain.map(yt=>s("p",{class:"ts\
-hint"},yt)),...A.cautions.map(yt=>s("p",{class:"ts-caution"},s("b",{},"Take care: "),yt)),...mt.filter(xt),...A.card.length&&
!mt.some(xt)?[Lt(A.card)]:[])),...A.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),Lt(A.read)]:[],...A.card.
length&&mt.some(xt)?[Lt(A.card)]:[],...mt.filter(yt=>!xt(yt)),s("div",{class:"ts-tools"},...at));let It=Ve(n.stages,A.step);
It&&([a.value,B]=[It,A.step])}function st(){for(let A of G.values())A.flush();k({type:"do"},"after")}function J(){let A=t.
get("view").asked_back,K=Q(f,"[data-field]").find(mt=>mt.dataset.field===A),Z=K&&Q(K,"input:not(:disabled), select, butt\
on"),at=Q(f,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return Z?.[0]??
at[0]}function kt(){let A=t.get("view"),K=A.told;r.textContent=A.finding,N.textContent=A.status,N.hidden=!A.status,o.textContent!==
K.join("")&&o.replaceChildren(...K.map(at=>s("p",{},at))),pt(),$t();for(let[at,mt]of G)mt.show(A.states[at],A.turn);if(E(),
Vt(A),m.replaceChildren(...Rt(A.facts)),g.replaceChildren(...Ut(A.faults.map(([,at])=>at))),v.hidden=g.hidden=!A.faults.
length,zt(A.done),x.innerHTML=A.record,y.open=!!A.record,e.setAttribute("aria-busy",String(A.turn<h)),!$||A.turn<$.turn)
return;let{focus:Z}=$;$=null,Z==="told"?o.focus():Z==="after"&&!t.get("hand").step?rt():(J()??l).focus()}let Pt="",_t="";
function Vt(A){let K=JSON.stringify(A.build);K!==Pt&&(Pt=K,i.show(A.build),d.textContent=A.build.words);let{step:Z,operations:at}=t.
get("hand"),mt=A.build.tool,xt=`${Z} ${mt??""}`;if(Z===void 0||xt===_t)return;_t=xt,c.show("operation",at);let[It]=n.tray[Z]?.
parts??[];mt?i.moveTo({x:mt[0],y:mt[1]}):It&&i.look(It)}function zt(A){if(b.disabled=L.disabled=!A.length,b.dataset.done===
A.join(" "))return;b.dataset.done=A.join(" ");let K=[...A].reverse();b.replaceChildren(...At(K.map(Z=>[Z,n.labels[Z]])))}
return C.follow("change:view",kt),kt(),()=>{for(let A of X)A();c.close(),C.close()}}function Ao(t){let e=R("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=ht(
r,o,r,o,"tsi-adapter"),c=R("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=ht(r,o+74,r,o+74,"tsi-arm"),d=wt(r,o+94,"");return e.
append(ht(r,o,r+440,o,"tsi-lever"),a,c,R("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),wt(r+440,o-20,"hand, middle of the gr\
ip","end"),wt(r+20,o-20,"square drive","start"),ht(r+440,o+10,r+440,o+84,"tsg-centre"),i,d,wt(8,242,"lengths to scale","\
start")),{node:e,set(l){let u=l.state.angle/180*Math.PI,p=r-l.state.reach*n*Math.cos(u),f=o-l.state.reach*n*Math.sin(u);
Ht(a,{x2:p,y2:f}),Ht(c,{cx:p,cy:f}),Ht(i,{x1:p,x2:r+440}),Ht(d,{x:(p+r+440)/2}),d.textContent="the lever from bolt to ha\
nd, along the wrench",e.setAttribute("aria-label",`${t.name}. ${l.words}`)}}}function Ln(t){return Dt(t,(e,n,r)=>{let o=Ao(
e),a=(i,d,l,u,p,f)=>Ct(i,{min:l,max:u,step:p,value:r[d],words:m=>`${m} ${f}`,onInput:m=>n({[d]:m})}),c={setting:a("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{asks:"What does the bolt get?",first:c.reach.box,begin:"\
lengthen the adapter",picture:o.node,controls:Object.values(c).map(i=>i.row),set(i,d){o.set(i);for(let[l,u]of Object.entries(
c))u.set(d[l])}}})}var Be=t=>typeof t=="string"?t:t.text;function Cn(t,e,n){let r=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
o=a=>Be(a.cells[e]??"").trim();return[...t].sort((a,c)=>{let[i,d]=[o(a),o(c)];if(!i||!d)return+!i-+!d;let[l,u]=[Number.parseFloat(
i),Number.parseFloat(d)],p=Number.isNaN(l)||Number.isNaN(u)||l===u?r.compare(i,d):l-u;return n?-p:p})}function le(t,e){let n=document.getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${r}${t}/${e.split("/").map(encodeURIComponent).join("/")}`}function Mo(t){let e="";for(let n=0;n<t.length;n+=32768)e+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(e)}
async function En(t,e,n){let r=0;do{let o=new Uint8Array(await n.slice(r,r+524288).arrayBuffer()),a=r===0;r+=524288;let c=r>=
n.size;t.send({type:"file",field:e,name:n.name,data:Mo(o),first:a,last:c})}while(r<n.size)}var Oo=400;function An({model:t,el:e}){let n=nt({model:t,el:e},{kind:"desk"}),r=s("p",{class:"ts-said",role:"status"}),o=s(
"div",{class:"ts-desk-body"}),a=s("div",{class:"ts-desk-here","aria-hidden":"true"}),c=s("div",{class:"ts-busy"}),i=s("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),d=t.get("cohort"),l=s("input",{id:ct("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:l.value})});l.value=t.get("by"),n.show(s("div",{class:"\
ts-desk-top"},s("b",{},Wt([d.name,d.college]).join(", ")),s("span",{class:"ts-pair"},s("label",{for:l.id},"At the desk (\
your name, for the trail)"),l)),d.invented?s("p",{class:"ts-hint"},d.invented):null,i,c,n.alert,r,o);let u=new Map,p=new Map,
f=new Map,m=new Map,g=!1,v="",b="",L="",T=!1,x=null,N=()=>o.setAttribute("aria-busy",String(y())),y=()=>g||!!L||Object.keys(
t.get("busy")).length>0,I=(M,H={})=>{y()||n.isLost()||(M!=="look"&&(L=M,r.textContent="",n.alert.textContent="",k(),N()),
t.send({type:M,...H}))},C=()=>Q(e,"[data-key]"),h=M=>C().some(H=>H.dataset.key===M);function $(){let M=C().find(H=>H.dataset.
key===v);return M&&o.contains(M)?M.closest("form, section"):null}function k(){let M=$();M?M.append(c,a):(i.after(c),a.remove());
let[H,tt]=[r.textContent,n.alert.textContent];a.replaceChildren(...Wt([H&&s("p",{class:"ts-told"},H),tt&&s("p",{class:"t\
s-trouble"},tt)]));for(let et of[r,n.alert])et.classList.toggle("ts-hidden",!!M);return M}function O(){let M=k(),H=[n.alert,
r].find(et=>et.textContent);(M?a.childElementCount?a:null:H)?.scrollIntoView({block:"nearest"})}async function B(){for(let[
M,H]of m){let[tt]=H.files??[];try{tt&&await En(t,M,tt)}catch{return H.value="",tt.name}}return""}function W(M){r.textContent=
"",n.alert.textContent=M,O()}async function Y(M,H,tt=""){if(n.isLost())return;if(y()){T||(x=()=>h(H)&&Y(M,H,tt));return}
v=H,b="",T=!0,g=!0;let et=await B();if(g=!1,et||y()||n.isLost()){T=!1,et?W(`${et} has changed or gone since it was chose\
n: choose it again.`):n.isLost()||(x=()=>h(H)&&Y(M,H,tt));return}let vt=[...p].map(([it,E])=>[it,[...E]]);I("do",{page:t.
get("page"),act:M,of:tt,typed:Object.fromEntries(u),ticked:Object.fromEntries(vt)})}function P(M){let{name:H,of:tt}=M,et=ct(
"field"),vt=M.hint?s("span",{class:"ts-hint",id:`${et}-hint`},M.hint):null,it={id:et,"data-key":`field:${H}`,"aria-descr\
ibedby":vt?.id},E=s("label",{for:et},M.label);if(!u.has(H)&&tt!=="file"&&u.set(H,tt==="tick"?M.value==="yes":M.value),tt===
"file"){let dt=m.get(H)??s("input",{type:"file",class:"ts-file"});for(let[Lt,pt]of Object.entries(it))pt&&dt.setAttribute(
Lt,pt);return m.set(H,dt),s("div",{class:"ts-desk-field"},E,dt,vt)}if(tt==="tick"){let G=s("input",{type:"checkbox",...it});
G.checked=u.get(H)===!0,G.addEventListener("change",()=>u.set(H,G.checked));let dt=s("label",{class:"ts-option",for:et},
G,M.label);return s("div",{class:"ts-desk-field"},dt,vt)}let j=tt==="choice"?Ot(it,M.options):tt==="long"?s("textarea",{
class:"ts-box",rows:"3",maxlength:"2000",...it}):s("input",{class:"ts-box",autocomplete:"off",maxlength:"400",...it});return j.
value=String(u.get(H)??""),tt==="choice"&&!M.options.some(([G])=>G===u.get(H))&&(j.value=M.options[0]?.[0]??"",u.set(H,j.
value)),j.addEventListener("input",()=>u.set(H,j.value)),s("div",{class:"ts-desk-field"},E,j,vt)}function S(M){let H=ct(
"form"),tt=s("div",{class:"ts-doing"}),et=()=>{tt.replaceChildren(...M.acts.map(E=>q(E.label,()=>E.sure?vt(E):Y(E.id,`ac\
t:${E.id}`),{class:E.first?"ts-button ts-first":"ts-button","data-key":`act:${E.id}`})))},vt=E=>{b=E.id;let j=ct("sure"),
G=s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":j,"data-key":`sure:${E.id}`},s("p",{id:j},E.sure),
s("div",{class:"ts-doing"},q(`Yes: ${E.label}`,()=>Y(E.id,`act:${E.id}`),{"data-key":`act:${E.id}`}),q("No, leave it",()=>{
b="",et(),Q(tt,`[data-key="act:${E.id}"]`)[0]?.focus()},{"data-key":`no:${E.id}`})));tt.replaceChildren(G),G.focus()},it=M.
acts.find(E=>E.sure&&E.id===b);return it?vt(it):et(),s("form",{class:"ts-desk-form","aria-labelledby":M.title?H:null,onsubmit:E=>E.
preventDefault()},M.title?s("h3",{id:H},M.title):null,M.hint?s("p",{class:"ts-hint"},M.hint):null,M.fields.length?s("div",
{class:"ts-desk-fields"},...M.fields.map(P)):null,M.acts.length?tt:null)}function w(M,H){if(typeof M=="string")return M;
let tt=M.act?q(M.text,()=>Y(M.act,H,M.of),{class:"ts-cell","aria-label":M.label||null,"data-key":H}):M.text;return s("sp\
an",{},M.shape?jt(M.shape):null,tt)}function D(M){let H=ct("table"),tt=s("h3",{id:H},M.title);if(!M.rows.length)return s(
"section",{},tt,s("p",{},M.empty));let et=p.get(M.id)??new Set,vt=new Set(M.rows.map(({key:st})=>st));for(let st of et)vt.
has(st)||et.delete(st);p.set(M.id,et);let it=s("tr",{}),E=s("tbody",{}),j=M.pick?s("input",{type:"checkbox","aria-label":"\
all","data-key":`all:${M.id}`}):null,G=()=>{j&&(j.checked=et.size===M.rows.length,j.indeterminate=et.size>0&&!j.checked)},
dt=()=>{let st=f.get(M.id),J=st?Cn(M.rows,st.column,st.down):M.rows;E.replaceChildren(...J.map(pt)),it.replaceChildren(...j?
[s("th",{class:"ts-tick"},j)]:[],...M.columns.map(Lt)),G()},Lt=(st,J)=>{let kt=f.get(M.id),Pt=kt?.column===J,_t=Pt?kt.down?
"descending":"ascending":null,Vt=()=>{f.set(M.id,{column:J,down:Pt&&!kt.down}),dt(),Q(it,`[data-key="${zt}"]`)[0]?.focus()};
if(!st)return s("td");let zt=`sort:${M.id}:${J}`;return s("th",{scope:"col","aria-sort":_t,class:M.numbers.includes(J)?"\
ts-figure":null},q(st,Vt,{class:"ts-sort","data-key":zt}),Pt?jt(kt.down?"▼":"▲"):null)},pt=st=>{let J=M.pick?s("inpu\
t",{type:"checkbox","aria-label":st.cells.slice(0,3).map(Be).join(" "),"data-key":`row:${M.id}:${st.key}`}):null;return J&&
(J.checked=et.has(st.key),J.addEventListener("change",()=>{J.checked?et.add(st.key):et.delete(st.key),G()})),s("tr",{},J?
s("td",{class:"ts-tick"},J):null,...st.cells.map((kt,Pt)=>{let _t=!Pt&&!!Be(kt);return s(_t?"th":"td",{scope:_t?"row":null,
class:M.numbers.includes(Pt)?"ts-figure":null},w(kt,`cell:${M.id}:${st.key}:${Pt}`))}))};return j?.addEventListener("cha\
nge",()=>{if(et.clear(),j.checked)for(let{key:st}of M.rows)et.add(st);for(let st of Q(E,"td.ts-tick input"))st.checked=j.
checked}),dt(),s("section",{},s("div",{class:"ts-desk-caption"},tt,q("Save as CSV",()=>t.send({type:"export",table:M.id}),
{"aria-label":`Save as CSV: ${M.title}`,"data-key":`export:${M.id}`})),s("div",{class:"ts-desk-scroll",role:"region",tabindex:0,
"aria-labelledby":H},s("table",{class:"ts-table","aria-labelledby":H},s("thead",{},it),E)))}function _(M){if(M.kind==="t\
able")return D(M);if(M.kind==="form")return S(M);if(M.kind==="link"){let H=M.how==="edit"?"lab/tree":M.how,et={class:"ts\
-link",href:H?le(H,M.path):M.path,target:"_blank"};return s("p",{},s("a",{...et,"data-key":`link:${M.path}`},M.text))}return M.
how==="head"?s("h3",{},M.text):s("p",{class:M.how==="hint"?"ts-hint":null},M.text)}function U(M){if(!n.isLost()){if(y()){
x=()=>U(M);return}v="",I("page",{name:M})}}function rt(){let M=t.get("page");i.replaceChildren(...t.get("pages").map(([H,
tt])=>q(tt,()=>U(H),{class:"ts-button","aria-current":H===M?"page":null,"data-key":`page:${H}`})))}let bt=t.get("cleared"),
V=t.get("page");function $t(){let M=C().find(it=>it===document.activeElement)?.dataset.key,H=o.contains(document.activeElement),
tt=Q(o,".ts-desk-scroll").map(it=>it.scrollTop);L="",(t.get("page")!==V||t.get("cleared")!==bt)&&(b="",u=new Map,p=new Map,
m=new Map,{page:V,cleared:bt}={page:t.get("page"),cleared:t.get("cleared")}),r.textContent=t.get("said"),n.alert.textContent=
t.get("trouble"),rt();let et=new Map(t.get("pages")),vt=s("h2",{tabindex:-1},et.get(V));if(o.replaceChildren(vt,...t.get(
"parts").map(_)),Q(o,".ts-desk-scroll").forEach((it,E)=>{it.scrollTop=tt[E]??0}),k(),M||H){let it=C().find(E=>E.dataset.
key===M);(it??vt).focus({preventScroll:!!it})}T&&!Object.keys(t.get("busy")).length&&(T=!1,O()),N(),F()}function F(){if(y()||
!x)return;let M=x;x=null,M()}let z;function X(){let M=t.get("busy");if(N(),clearTimeout(z),!Object.keys(M).length){c.replaceChildren();
return}let{doing:H,done:tt,of:et}=M,vt=et?`${H}: ${tt} of ${et}`:`${H} …`,it=()=>{c.replaceChildren(s("progress",et?{max:et,
value:tt,"aria-label":H}:{"aria-label":H}),s("span",{role:"status"},vt))};c.childElementCount?it():z=window.setTimeout(it,
Oo)}n.follow("change:turn",()=>setTimeout($t,0)),n.follow("change:busy",X),n.follow("change:by",()=>{l.value=t.get("by")}),
n.follow("msg:custom",M=>{if(M.type==="trouble"&&(L="",T=!1,N(),O()),M.type!=="save")return;let H=URL.createObjectURL(new Blob(
[`\uFEFF${M.text}`],{type:"text/csv"}));s("a",{href:H,download:M.name}).click(),setTimeout(()=>URL.revokeObjectURL(H),1e3)}),
$t(),X();let ut=!0,ft=new IntersectionObserver(([M])=>{ut=M.isIntersecting});ft.observe(e);let lt=0,gt=setInterval(()=>{
let M=t.get("every");lt+=1,M&&lt>=M&&ut&&!document.hidden&&(lt=0,I("look"))},1e3);return()=>{clearInterval(gt),clearTimeout(
z),ft.disconnect(),n.close()}}function Ze(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=c=>String(c).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var To="twoshaft-unsent:";function Mn(t,e){let n=To+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,c,i,d=new Date)=>o({...r(),[a]:{value:c,
base:i,at:d.toISOString()}}),drop(a){let{[a]:c,...i}=r();c&&o(i)}}}function On(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var Xt=null,Io="input, button, select, textarea, summary, a, [tabindex]",Tn=t=>[...t.querySelectorAll(Io)];function In(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?Xt={form:e,at:Tn(t).indexOf(a),from:null}:Xt?.form===e&&t.
isConnected&&(Xt=null))},r=({target:a})=>{Xt?.form===e&&a instanceof HTMLInputElement&&(Xt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(Xt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=Xt,i=Tn(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var No=["print","colour"];function de(t){for(let e of No){let n=t?.[e];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${e}`,n):document.documentElement.removeAttribute(`data-ts-${e}`))}}function Nn(){de({print:"",colour:""})}function Bn(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),d=q("Use these figures",()=>f("yes")),l=q(
"Go back to the drawn figures",()=>f("no")),u=!1,p=a.map(g=>{let v=ct("bench"),b=g.options.length?s("select",{class:"ts-\
box",id:v,"aria-describedby":`${v}-read`},s("option",{value:""},"choose"),...At(g.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:v,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${v}-hint ${v}-read`}),
L=s("span",{class:"ts-hint",id:`${v}-hint`},g.hint),T=s("p",{class:"ts-read",id:`${v}-read`}),x=g.text,N=()=>{b.value.trim()!==
x.trim()&&(x=b.value,e({type:"bench",name:g.name,value:b.value}))};return b.addEventListener(g.options.length?"change":"\
blur",N),b.addEventListener("keydown",y=>{y.key==="Enter"&&(y.preventDefault(),N())}),{name:g.name,flush:N,input:b,element:s(
"div",{class:"ts-bench-row"},s("label",{for:v},g.prompt),s("div",{class:"ts-line-of"},b,L),T),show(y){if(!y)return;(document.
activeElement!==b||b.value===x)&&(b.value=y.text,x=y.text),b.setAttribute("aria-invalid",String(!!y.error)),T.classList.
toggle("ts-error",!!y.error);let I=y.error?[jt("▲")," "]:[],C=y.read&&!y.options.length&&`read as ${y.read}`,h=y.error||
[C,y.origin].filter(Boolean).join(", ");T.replaceChildren(...I,h)}}}),f=g=>{for(let v of p)v.flush();u=!0,e({type:"bench",
name:"in-use",value:g})};o.append(s("summary",{},c),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They are used in place of the drawn figures in this task, all of them or none. Your answers are marke\
d on them by the same rules."),s("div",{class:"ts-bench-rows"},...p.map(g=>g.element)),i,s("div",{class:"ts-tools"},d,l));
function m(){let g=r(),v=new Map(g.rows?.map(x=>[x.name,x]));for(let x of p)x.show(v.get(x.name));c.textContent=g.used?"\
✓ This task uses figures from the bench":"Use readings from the bench",l.hidden=!g.wanted,d.hidden=g.used&&!g.stale;let b=g.
wanted&&!g.used?"▲ ":g.used?"● ":"○ ",L=g.used?"in use":g.wanted?`not used; the drawn figures stand. ${g.refused}`:
"not used; the drawn figures stand",T=g.stale?` The tables and choices of this task are still the ones from before. ${g.
used?"Press the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${b}${L}${T}`,
g.wanted&&!g.used&&(o.open=!0)}return{element:o,show:m,hear(g){g.type!=="bench-saved"||g.name!=="in-use"||!u||(u=!1,r().
stale&&n())},lost(){for(let g of[d,l,...p.map(v=>v.input)])g.disabled=!0}}}var Bo=5e3,Do=2e3,Po={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Qe="kept in this browser until it can be\
 saved";function Ro(t,e,n,r){let o=Gt(t),a=Zt(t),c=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),d=0,l=null,u={},p=()=>{clearTimeout(l??void 0),l=null},f=x=>{n.put(t.name,x,u.revision??0),m(x)},m=x=>{d+=
1,b("wait",r()?Qe:"saving"),p(),l=window.setTimeout(()=>b("wait",Qe),Bo),e({type:"save",name:t.name,value:x,turn:d})},g=o.
make(t,a,f,(x,N)=>{x?(n.put(t.name,N,u.revision??0),b("wait","not saved yet: press Enter or leave the box")):l===null&&(n.
drop(t.name),L(u))}),v=Qt(t,a,a.status);o.status==="above"?v.append(i,g.element,c):v.append(g.element,c,i);function b(x,N){
i.className=`ts-status ts-status-${x}`,i.dataset.text!==N&&(i.dataset.text=N,i.replaceChildren(jt(Po[x]),` ${N}`))}function L(x,N=!1){
if(u=x??{},g.show(u),c.replaceChildren(u.read?`read as ${u.read}`:""),!N)if(u.error){let{error:y,saved:I="",note:C}=u;b(
"unread",`Look again: ${y} Kept as typed, ${Ze(I)}${C?`; ${C}`:""}.`)}else u.saved&&!u.blank?b("saved",`saved ${Ze(u.saved)}${u.
note?`; ${u.note}`:""}`):b("none",o.blank??"not answered yet")}let T=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:v,show(x){l===null&&L(x,T())},saved(x){x.turn===d&&(g.pending?.()||n.drop(t.name),p(),L(x.state))},refused(x){
x.turn===d&&(p(),g.refused(),b("bad",`not saved: ${x.reason}`))},off(){clearTimeout(l??void 0),(l!==null||g.pending?.())&&
b("wait",Qe)},catchUp(){let x=n.get(t.name);x&&(On(x,u)?(g.show({...u,value:x.value,error:""}),m(x.value)):n.drop(t.name))},
flush:()=>g.flush?.(),summary:()=>({answered:!!u.saved&&!u.blank&&!u.error&&!u.short,unread:!!u.error,trouble:T(),waiting:l!==
null})}}function Dn({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=Mn(window.localStorage,r),a=!1,c=()=>a||p.isLost(),
i=n.map(y=>Ro(y,m,o,c)),d=new Map(i.map(y=>[y.name,y])),l=s("p",{class:"ts-who"}),u=s("p",{class:"ts-total"});de(t.get("\
look"));let p=nt({model:t,el:e},{kind:"form",lost(){for(let y of i)y.off();f.lost(),g()},line(y){a=y;for(let I of i)y?I.
off():I.catchUp();g()}}),f=Bn(t,p.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(s(
"div",{class:"ts-top"},l,u),p.alert,f.element,...i.map(y=>y.element)),e.dataset.task=t.get("task_id");function m(y){p.send(
y),g()}function g(){let y=i.map(W=>W.summary()),I=y.filter(W=>W.answered).length,C=y.filter(W=>W.trouble).length,h=y.some(
W=>W.waiting),$=y.filter(W=>W.unread).length,k=C?`${C} not saved`:h?c()?"the rest kept in this browser":"saving":I&&!$?"\
all saved":"",O=[`${I} of ${i.length} answered`,$?`${$} cannot be read`:"",k];u.textContent=O.filter(Boolean).join(", ");
let B={task:t.get("task_id"),answered:I,asked:i.length,unread:$};e.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:B}))}function v(){l.textContent=t.get("header");let y=t.get("states");for(let I of i)I.show(y[I.name]);g()}let b=0,
L=0,T=()=>{if(clearTimeout(L),document.visibilityState==="hidden")for(let I of i)I.flush();if(document.visibilityState!==
"visible")return;let y=b+Do-Date.now();if(y>0){L=window.setTimeout(T,y);return}b=Date.now(),p.send({type:"look"})},x=r?new BroadcastChannel(
`twoshaft-saved:${r}`):null;x?.addEventListener("message",({data:y})=>{y===t.get("task_id")&&p.send({type:"look"})}),document.
addEventListener("visibilitychange",T),window.addEventListener("focus",T),e.addEventListener("focusin",y=>{y.relatedTarget instanceof
Node&&e.contains(y.relatedTarget)||T()}),p.follow("change:states change:header",v),p.follow("msg:custom",y=>{y.type==="s\
aved"&&(d.get(y.name)?.saved(y),x?.postMessage(t.get("task_id"))),y.type==="refused"&&d.get(y.name)?.refused(y),g()}),p.
follow("msg:custom",f.hear),p.follow("change:bench",f.show),v();for(let y of i)y.catchUp();g(),f.show(),p.alert.textContent=
t.get("notice");let N=In(e,`${r}/${t.get("task_id")}`);return()=>{clearTimeout(L),N(),x?.close(),p.close(),document.removeEventListener(
"visibilitychange",T),window.removeEventListener("focus",T)}}function De(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var jo={right:"●",other:"◆",unread:"▲"};function Ho(t){let e=Zt(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),r=null,o=Gt(t).make(t,e,i=>{r=i,o.show({value:r}),c(void 0)},(i,d)=>{i&&(r=d)}),a=Qt(t,e,e.status);a.append(o.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let d=i?[jt(jo[i.how]),s("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...d)}return{name:t.name,element:a,value(){return o.flush?.(),r},show(i,d){i!==void 0&&(r=i,o.show(
{value:r,saved:"given"})),c(d)},still(i){o.setDisabled(i),a.classList.toggle("ts-given",i)}}}function Pn({model:t,el:e}){
let n=nt({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let r=s("p",{class:"ts-title",role:"heading","aria\
-level":"3"}),o=s("p",{class:"ts-lead"}),a=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-asked"}),i=q(t.get("give"),()=>{
let v=Object.fromEntries(u.map(b=>[b.name,b.value()]));n.send({type:"give",values:v})});i.classList.add("ts-first");let d=q(
"",()=>n.send({type:"fresh"})),l=t.get("all")?q(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,r,o,a,c,s("p",{class:"ts-acts"},i,d,l));let u=[],p=()=>{let v=t.get("values"),b=t.get("told");for(let N of u)
N.show(v[N.name],b[N.name]),N.still(b[N.name]!==void 0&&b[N.name].how!=="unread");let L=u.some(({name:N})=>!b[N]||b[N].how===
"unread"),T=document.activeElement===i;if(i.hidden=!L,d.textContent=t.get("fresh"),d.hidden=L||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!T||L)return;let x=Q(e,".ts-told")[0];x.tabIndex=-1,x.focus({preventScroll:!0})},f=()=>{(Q(c,"input, sel\
ect, [tabindex]")[0]??(d.hidden?i:d)).focus({preventScroll:!0})},m=()=>{u=t.get("fields").map(Ho),c.replaceChildren(...u.
map(({element:v})=>v)),r.textContent=t.get("title"),r.hidden=!r.textContent,o.textContent=t.get("lead"),o.hidden=!o.textContent,
a.replaceChildren(...Rt(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let v=e.contains(
document.activeElement);m(),v&&f()}),n.follow("change:told change:values change:notice change:fresh",p),m();let g=t.get(
"place");if(g){let v=De(sessionStorage,localStorage,g).get();t.send({type:"who",id:v?.id??"",ticket:v?.ticket??""})}return()=>n.
close()}var Rn="twoshaft-mine";var jn="This is done as soon as the connection is back.",Wo={"to get":"○",open:"◐","handed in":"●","changed since":"\
◑",feedback:"✓"},_o={"to get":"To get",open:"Open","handed in":"Handed in","changed since":"Changed after handing in",
feedback:"Marked"},Pe=(t,e,n)=>s("a",{href:le("lab/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"t\
s-link"},e);function Hn(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:r,unread:o})=>s("li",{},`${e}\
: `,n===r?"nothing answered":n?`${n} of ${r} missing`:"",...o.map(([a,c])=>s("span",{},s("b",{},"cannot be read: "),`“${a}\
” ${c}`)))))}function Fo(t){let e=({name:r})=>Number(r.split("-").at(-1)),n=[...t].sort((r,o)=>e(r)-e(o)).flatMap(({notebooks:r})=>r.
map(o=>[o.split("/").pop()??"",o]));localStorage.setItem(Rn,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(
new Event("storage"))}var ue=null;function Wn({model:t,el:e}){let n="",r=De(sessionStorage,localStorage,t.get("place")),
o=!1,a=(w=!0)=>{o=w,o&&ue&&(d.textContent=jn)},c=nt({model:t,el:e},{kind:"start",lost:a,line:a}),i=s("div",{}),d=s("p",{
class:"ts-said",role:"status"});c.show(c.alert,d,i);let l=(w,D={})=>{i.getAttribute("aria-busy")==="true"||c.isLost()&&D.
quietly||(D.quietly||(ue={type:w,...D},i.setAttribute("aria-busy","true"),d.textContent=o?jn:"One moment.",c.alert.textContent=
""),c.isLost()||t.send({type:w,...D}))},u=()=>{let w=ue;ue=null,w&&(w.type==="sign-in"||t.get("me").id)&&l(w.type,w)},p=(w,D,_,U)=>s(
"button",{type:"button",class:U?"ts-button ts-first":"ts-button","data-key":D,onclick:_},w);function f(){let w=ct("who"),
D=ct("word"),_=s("select",{id:w,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.
get("people").map(([rt,bt])=>s("option",{value:rt,selected:rt===n},bt)));_.addEventListener("change",()=>{n=_.value});let U=s(
"input",{id:D,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data\
-key":"word"});return s("form",{class:"ts-sign-in",onsubmit:rt=>{rt.preventDefault(),l("sign-in",{name:_.value,word:U.value})}},
s("h2",{},"Who is working?"),s("div",{class:"ts-pair"},s("label",{for:w},"Your name"),_),s("div",{class:"ts-pair"},s("la\
bel",{for:D},"Sign-in word from your slip"),U),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},
"Sign in"),s("p",{class:"ts-hint"},t.get("kept")))}function m(w,D){let _=F=>`${F}:${w.name}`,U=s("div",{class:"ts-doing"});
for(let F of w.feedback.slice(0,1))U.append(s("a",{href:le("files",F),target:"_blank",class:"ts-link","data-key":_("feed\
back")},"Read feedback"));for(let F of w.notebooks){let z=w.notebooks.length===1?"Open":`Open ${F.split("/").pop()}`;U.append(
Pe(F,z,_(`open ${F}`)))}w.can_get&&U.append(p(w.notebooks.length?"Get again":"Get",_("get"),()=>l("get",{name:w.name}),!w.
notebooks.length)),w.can_hand_in&&U.append(p(w.receipt?"Hand in again":"Hand in",_("hand in"),()=>l("hand-in",{name:w.name})));
for(let F of U.children)F.setAttribute("aria-label",`${F.textContent}: ${w.title}`);let rt=t.get("asking")===w.name,bt=w.
receipt||w.unread>0,V=s("tr",{},s("th",{scope:"row"},w.title),s("td",{},w.due?s("span",{class:"ts-due","aria-hidden":"tr\
ue"},"Due "):null,w.due||"no date",w.overdue?s("span",{class:"ts-small-line"},"date passed"):null),s("td",w.receipt?{tabindex:-1,
"data-key":_("receipt")}:{},s("span",{class:"ts-shape","aria-hidden":"true"},Wo[w.state]||""),s("b",{},_o[w.state]||w.state),
s("span",{class:"ts-small-line"},w.detail),D?s("span",{class:"ts-small-line"},`Mark: ${D}`):null),s("td",{},U));if(rt)return[
V,s("tr",{},s("td",{colspan:4},v(w)))];if(!bt||!w.gaps.length)return[V];let $t=s("td",{colspan:4},s("b",{},g(w)),Hn(w.gaps));
return[V,s("tr",{},$t)]}let g=({left:w,unread:D})=>Wt([w?`${w} ${w===1?"answer is":"answers are"} missing`:null,D?`${D} \
cannot be read`:null]).join(", ");function v(w){let D=ct("question"),_=s("div",{class:"ts-doing"});for(let rt of w.notebooks)
_.append(Pe(rt,"Go on with it",`go on:${w.name}`));let U=g(w);return _.append(p(U?"It is my own work: hand in as it is":
"It is my own work: hand in",`hand in anyway:${w.name}`,()=>l("hand-in",{name:w.name,own:!0}),!U)),s("div",{class:"ts-qu\
estion",role:"group",tabindex:-1,"aria-labelledby":D,"data-key":"question"},s("p",{id:D},s("b",{},`${w.title}: not hande\
d in yet.${U?` ${U}.`:""}`),U?" An answer that is missing or cannot be read earns nothing.":null),U?Hn(w.gaps):null,s("p",
{},"By handing in you state: ",s("b",{},t.get("statement"))),_)}let b=new Set,L={met:"✓",enough:"◐","not yet":"○"};
function T(w,D){let _=w.entries.map(V=>D.find($t=>$t.name===V)).filter(V=>V!==void 0),U=w.lesson?Pe(w.lesson,`Lesson ${w.
title}`,`lesson:${w.lesson}`):s("span",{class:"ts-small-line"},"no lesson here"),rt=s("details",{open:b.has(w.module)},s(
"summary",{"data-key":`outcomes:${w.module}`},`Outcomes: ${w.count||"none"}`),s("ul",{},...w.outcomes.map(([V,$t,F,z])=>s(
"li",{},s("span",{class:"ts-shape","aria-hidden":"true"},L[V]||""),s("b",{},`${V}${F&&V==="enough"?`, ${F}`:""}: `),$t,F&&
V==="not yet"?`. Still missing: ${F}`:"",z?` (${z})`:""))));rt.addEventListener("toggle",()=>{rt.open?b.add(w.module):b.
delete(w.module)});let bt=_.flatMap(V=>m(V,w.marks[V.name]));return s("tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"\
rowgroup",colspan:4},w.title,s("span",{class:"ts-assigned"},_.length?"assigned":"not assigned"))),...bt,s("tr",{},s("td",
{colspan:4},U,s("p",{class:"ts-next"},s("b",{},"Next: "),w.next),rt)))}function x(){let w=t.get("me"),D=t.get("entries"),
_=s("table",{class:"ts-table"},s("thead",{},s("tr",{},...["Assignment","Due","State","What you can do"].map(U=>s("th",{scope:"\
col"},U)))),...t.get("modules").map(U=>T(U,D)));return s("section",{},s("div",{class:"ts-me"},s("h2",{},`Working as ${w.
name} (${w.id})`),w.ticket?p("Not you? Sign out","sign-out",()=>{r.drop(),l("sign-out"),document.dispatchEvent(new CustomEvent(
"twoshaft-signed-out"))}):null),D.length?null:s("p",{},"Nothing is assigned yet."),_,p("Look again","look",()=>l("look")))}
function N(){let w=!!t.get("me").id,D=t.get("modules").map(rt=>rt.lesson),U=t.get("lessons").filter(([rt])=>!w||!D.includes(
rt));return U.length?s("section",{},s("h2",{},w?"To look things up":"Lessons"),s("ul",{class:"ts-lessons"},...U.map(([rt,
bt])=>s("li",{},Pe(rt,bt,`lesson:${rt}`))))):null}let y=!1,I=t.get("me").id?null:r.get(),C=I!==null;function h(){let w=t.
get("me");w.id?de(t.get("look")):Nn(),w.id?r.keep(w):(y||I&&!C)&&r.drop(),y=!!w.id,Fo(w.id?t.get("entries"):[])}let $=0,
k="",O=()=>Q(i,"[data-key]"),B=()=>i.querySelector("input[data-key=word]");function W(){let D=O().find(gt=>gt===document.
activeElement)?.dataset.key;i.removeAttribute("aria-busy");let _=!!t.get("me").id;d.textContent=t.get("said"),c.alert.textContent=
t.get("trouble");let U=B()?.value,rt=C?s("p",{},"One moment."):f();i.replaceChildren(...Wt([_?x():rt,N()]));let bt=B();bt&&
U&&(bt.value=U);let V=k;if(k=t.get("asking"),k&&k!==V&&O().find(gt=>gt.dataset.key==="question")?.focus(),!D||k&&k!==V)return;
let $t=O().find(gt=>gt.dataset.key===D),F=D.split(":")[1],z=O().filter(gt=>F&&gt.dataset.key?.endsWith(`:${F}`)),X=z.find(
gt=>gt.dataset.key?.startsWith("receipt")),ut=z.find(gt=>gt!==X),ft=D.startsWith("hand in anyway")?X??ut:ut,lt=$t??ft??Q(
i,"a, button, select")[0];lt?.focus({preventScroll:!0}),d.scrollIntoView({block:"nearest"}),lt?.scrollIntoView({block:"n\
earest"})}let Y=()=>{clearTimeout($),$=setTimeout(()=>{let w=C;C=!1,w||(ue=null),h(),W(),w&&u()},0)};t.on("change",Y),h(),
W(),I?t.send({type:"resume",name:I.id,ticket:I.ticket}):u();let P=()=>{!document.hidden&&t.get("me").id&&l("look",{quietly:!0})},
S=new IntersectionObserver(([w])=>{w.isIntersecting&&P()});return S.observe(e),document.addEventListener("visibilitychan\
ge",P),()=>{clearTimeout($),t.off("change",Y),S.disconnect(),document.removeEventListener("visibilitychange",P),c.close()}}var Uo={bench:Es,build:Ts,cord:Bs,depth:Ds,desk:An,exploded:qs,face:Ks,fault_board:Gs,form:Dn,gate:Xs,gears:Vs,hazards:Js,
lifting:Zs,micrometer:Qs,own_checks:tn,press:en,question:Pn,rules:sn,runout:nn,sealant:un,seat:pn,shims:fn,sketch:hn,start:Wn,
thread:gn,unit_section:mn,whole_build:Sn,wrench:Ln};export{Uo as screens};
