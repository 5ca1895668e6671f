var _n="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...Wt(n)),r}function R(t,e={},...n){let r=document.createElementNS(_n,t);return Ht(r,e),r.append(...n),
r}function Ht(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function K(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function Ot(t,e){return s("select",{class:"ts-box",...t},...At(
e))}function Rt(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function jt(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Wt(t){return t.filter(e=>e!=null&&e!==!1)}var es=0;function ct(t){return es+=1,`two\
shaft-${t}-${es}-${Math.random().toString(36).slice(2,7)}`}function Jt(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function Z(t,e){return[...t.querySelectorAll(e)]}function Et(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function Tt(t){return t.ctrlKey||t.metaKey||t.altKey}function pe(t){let e=Z(t,"button, input, \
select");for(let n of e)n.disabled=!0}function ss(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function fe(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function nt(t,e,n=t){return K(t,e,{"aria-label":n})}
function At(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function Ut(t){return t.map(e=>s("li",{},e))}var Bt=(t,e)=>s(
"div",{class:"ts-beside"},s("div",{},...Wt(t)),s("div",{},...Wt(e)));var je=new Map;function Mt(t,e){if(je.has(t))throw new Error(`the answer kind ${t} is registered twice`);je.set(t,e)}function Gt(t){
let e=je.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Zt(t){let e=ct(
t.kind);return{prompt:`${e}-prompt`,control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function Qt(t,e,n){
let{prompt:r}=Gt(t),o={class:"ts-prompt",id:e.prompt};if(r==="legend")return s("fieldset",{class:"ts-field","aria-descri\
bedby":n},s("legend",o,t.prompt));let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s(
"div",{class:"ts-field"},a)}function he(t,e,n,r){let a=t.options.map(([c,i])=>{let d={"aria-describedby":e.status},l=s("input",{type:n,name:e.control,
value:c,...d});return{key:c,input:l,row:s("label",{class:"ts-option"},l,s("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:d,input:l}of a)l.checked=i.includes(d)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}Mt("choice",{prompt:"legend",make:(t,e,n)=>he(t,e,"radio",r=>n(r[0]))});Mt("choices",{prompt:"legend",make:(t,e,n)=>he(t,e,"checkbox",n)});function ge(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function me(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}Mt("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([c,i],d)=>{let l=`${e.control}-${d}`,u=s("labe\
l",{class:"ts-each-line",for:l},i),p=Ot({id:l,"aria-describedby":e.status},[["","choose"],...o]);return{key:c,box:p,row:s(
"li",{},u,p)}});for(let{box:c}of a)c.addEventListener("change",()=>{n(ge(a.map(({key:i,box:d})=>[i,d.value])))});return{
element:s("ol",{class:"ts-each"},...a.map(({row:c})=>c)),show(c){let i=me(c.value);for(let{key:d,box:l}of a)l.value=i.get(
d)??""},setDisabled(c){for(let{box:i}of a)i.disabled=c},refused(){}}}});function He(t){let[e="",...n]=t.split(" "),r=e==="wipe"?0:Number(n.shift()),[o="",...a]=n;if(o!=="at")return{hand:e,size:r,
side:o,place:a[0],points:null};let c=a.map(i=>{let[d,l]=i.split(",").map(Number);return[d,l]});return{hand:e,size:r,side:o,
place:"",points:c}}function We(t,{side:e,place:n,points:r}){return r||(e==="round"?t.holes.find(o=>o.id===n)?.ring??[]:t.
stretches.find(o=>o.id===n)?.lines[e]??[])}function _e(t,e){let{hand:n,size:r,side:o,place:a}=He(e),c=[...t.stretches,...t.
holes].find(d=>d.id===a),i=n==="wipe"?"":` ${r} mm`;return`${t.hands[n]??n}${i}${c?`, ${c.name}`:""}, ${t.sides[o]??""}`}
function Fe(t,e,n){return e==="film"?t.width:e==="bead"?n:e==="wipe"?2*t.width:1}function ns(t){let e=t.trim().replace("\
,",".").replace(/\s*mm$/i,""),n=e.match(/^(\d+(?:\.\d+)?)\s*(?:µm|μm|um)$/i);return n?Number(n[1])/1e3:/^\d*\.?\d+$|^\d+\.$/.
test(e)?Number(e):Number.NaN}function os(t){let e=0;for(let n=1;n<t.length;n+=1)e+=Math.hypot(t[n][0]-t[n-1][0],t[n][1]-
t[n-1][1]);return e}function rs(t,[e,n]){return t.stretches.map(({id:o,lines:a})=>({id:o,away:Math.min(...a.middle.map(([
c,i])=>Math.hypot(c-e,i-n)))})).reduce((o,a)=>a.away<o.away?a:o).id}var Fn=.4;function as(t,e){let n=Fn,r=we(t,n);for(;r.
length>e;)n*=1.5,r=we(t,n);return r.map(([o,a])=>[Math.round(o*10)/10,Math.round(a*10)/10])}function we(t,e){if(t.length<
3)return t;let[n,r]=[t[0],t[t.length-1]],o=0,a=0;for(let c=1;c<t.length-1;c+=1){let i=Un(n,r,t[c]);i>o&&([o,a]=[i,c])}return o<=
e?[n,r]:[...we(t.slice(0,a+1),e).slice(0,-1),...we(t.slice(a),e)]}function Un(t,e,n){let[r,o]=[e[0]-t[0],e[1]-t[1]],a=Math.
hypot(r,o)||1;return Math.abs(r*(n[1]-t[1])-o*(n[0]-t[0]))/a}var be=14,qn=3,Kn=.5,zn=["middle","inside","outside"],ve="round ";function Gn(t,e){let n=t.outline.map(([H])=>H),r=t.outline.
map(([,H])=>H),[o,a]=[Math.min(...n)-be,Math.max(...n)+be],[c,i]=[Math.min(...r)-be,Math.max(...r)+be],d=a-o,l=i-c,u=([H,
G])=>`${(H-o).toFixed(1)} ${(i-G).toFixed(1)}`,p=(H,G)=>`M${H.map(u).join("L")}${G?"Z":""}`,f=ct("face"),g=d/100,h=2*g,b=(H,G)=>R(
"pattern",{id:`${f}-${H}`,width:h,height:h,patternUnits:"userSpaceOnUse"},R("path",{d:G,class:"tsp-hatch","stroke-width":g/
4})),v=R("defs",{},b("oil",`M0 ${h}L${h} 0`),b("dirt",`M0 ${h}L${h} 0M0 0L${h} ${h}`)),C=t.cavities.map(([,H])=>p(H,!0)).
join(""),T=t.islands.map(H=>p(H,!0)).join(""),$=p(t.outline,!0)+C,D=R("g"),y=R("g"),I=R("g"),L=R("g"),m=R("path",{class:"\
tsp-live",d:""}),x=R("path",{class:"tsp-chosen",d:""}),k=R("path",{class:"tsp-land",d:$,"fill-rule":"evenodd"}),M=R("pat\
h",{class:"tsp-edge",d:$+T,"stroke-width":g/2.5}),N=([H,G],q,rt="middle")=>{let st={x:H-o,y:i-G,"font-size":2.5*g,"text-\
anchor":rt};return R("text",{class:"tsp-text",...st},q)},W=[(o+a)/2,(c+i)/2],V=(H,G)=>{let q=fe(H,W)||1;return[H[0]+G*(W[0]-
H[0])/q,H[1]+G*(W[1]-H[1])/q]};for(let{x:H,y:G,d:q,leads:rt,name:st}of t.holes){let lt={cx:H-o,cy:i-G,"stroke-width":g/4},
St=rt==="blind"?"tsp-hole tsp-blind":"tsp-hole";I.append(R("circle",{...lt,r:q/2,class:St})),rt==="to the outside"&&I.append(
R("circle",{...lt,r:q/3,class:"tsp-hole"}));let[Ct,kt]=V([H,G],-(q/2+4.4*g));I.append(N([Ct,kt-.8*g],st.replace("bolt ",
"")))}for(let H of t.guides){let[G,q]=[H.x-o,i-H.y],rt=`M${G-g} ${q}h${h}M${G} ${q-g}v${h}`;I.append(R("path",{class:"ts\
p-guide",d:rt,"stroke-width":g/2}));let st={"stroke-width":g/5,"stroke-dasharray":`${g} ${g}`};I.append(R("circle",{cx:G,
cy:q,r:H.reach,class:"tsp-reach",...st}));let lt=V([H.x,H.y],H.reach+h),St=(lt[0]-H.x)/(H.reach+h);I.append(N(lt,H.name,
St>.5?"start":St<-.5?"end":"middle"))}for(let{word:H,points:G,width:q}of t.spots){let[rt]=H.split(" "),[st,lt]=[G[0],G[G.
length-1]],St=fe(st,lt)||1,[Ct,kt]=[-(lt[1]-st[1])/St*q/2,(lt[0]-st[0])/St*q/2],O=[[st[0]+Ct,st[1]+kt],[lt[0]+Ct,lt[1]+kt],
[lt[0]-Ct,lt[1]-kt],[st[0]-Ct,st[1]-kt]],F=`url(#${f}-${rt})`;D.append(R("path",{d:p(O,!0),fill:F,class:"tsp-spot","stro\
ke-width":g/4}));let Q=N(V([(st[0]+lt[0])/2,(st[1]+lt[1])/2],9*g),rt);Q.classList.add("tsp-spot-word"),I.append(Q)}let P=[
100,50,20,10].find(H=>H<d/4)??10,S=`M${g} ${l-g}v${-g}v${g/2}h${P}v${-g/2}v${g}`,w={x:P+h,y:l-g,"font-size":2.5*g};L.append(
R("path",{class:"tsp-edge",d:S,"stroke-width":g/4}),R("text",{class:"tsp-text",...w},`${P} mm`));let B=`0 0 ${d.toFixed(
1)} ${l.toFixed(1)}`,_=R("svg",{viewBox:B,class:"tsp-face",role:"img","aria-label":e},v,k,D,y,M,I,x,m,L),U=`max-width: ${(25*
d/l).toFixed(1)}rem`;return{frame:s("div",{class:"ts-pad-face",style:U},_),svg:_,over:L,live:m,chosen:x,land:k,path:p,unit:g,
box:{left:o,right:a,low:c,high:i,width:d,height:l},place({clientX:H,clientY:G}){let q=_.getBoundingClientRect(),rt=Math.
min(q.width/d,q.height/l);return[o+(H-q.left-(q.width-rt*d)/2)/rt,i-(G-q.top-(q.height-rt*l)/2)/rt]},strokes(H){y.replaceChildren(
...H.map(mt))}};function mt(H){let G=He(H),q=We(t,G),rt=Fe(t,G.hand,Math.max(G.size,g/2)),st=q.length>1?p(q,G.side==="ro\
und"):q.length?`${p(q)}h0.01`:"",lt=R("path",{d:st,class:`tsp-stroke tsp-${G.hand}`,"stroke-width":rt});if(G.hand!=="fil\
m")return lt;let St=Math.min(8,Math.max(.6,40*G.size)),Ct={"stroke-width":g/3,"stroke-dasharray":`${St} ${St}`};return R(
"g",{},lt,R("path",{d:st,class:"tsp-grain",...Ct}))}}function ke({face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=Gn(
t,e),c=s("p",{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"ts-read ts-pad-trouble",role:"status"}),d=(S,w)=>s(
"span",{class:"ts-pair"},s("label",{for:w.id},S),w),l=Ot({id:ct("hand")},Object.entries(t.hands)),u=s("input",{class:"ts\
-box ts-size",id:ct("size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),p=s("label",{for:u.id},"\
thickness"),f=Ot({id:ct("place")},t.stretches.map(({id:S,name:w})=>[S,w]));f.append(s("optgroup",{label:"Round a hole"},
...t.holes.map(({id:S,name:w})=>s("option",{value:`${ve}${S}`},`round ${w}`))));let g=Ot({id:ct("side")},zn.map(S=>[S,t.
sides[S]])),h=K("Lay it here",()=>L([I(f.value)])),b=K("Lay it on every stretch",()=>L(t.stretches.map(({id:S})=>I(S)))),
v=K("Take back the last pass",()=>{$&&r($-1,!0)}),C=K("Clear the face",o),T={film:"",bead:""},$=0,D=!1;function y(){if(l.
value==="wipe")return"";let[S,w]=t.sizes[l.value],B=ns(u.value);if(B>=S&&B<=w)return u.removeAttribute("aria-invalid"),`\
 ${Number(B.toFixed(3))}`;let _=l.value==="film"?"the thickness of the film":"the diameter of the bead";return i.textContent=
u.value.trim()?`Read “${u.value}”: give ${_} from ${S} to ${w} mm.`:`First give ${_} in mm.`,u.setAttribute("aria-in\
valid","true"),u.focus(),null}function I(S){let w=y();if(w===null)return null;let B=S.startsWith(ve)?S:`${g.value} ${S}`;
return`${l.value}${w} ${B}`}function L(S){let w=S.filter(B=>B!==null);if(!(D||w.length<S.length)){if($+w.length>t.most){
i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent="",c.textContent=w.length===
1?`Laid: ${_e(t,w[0])}`:`Laid on ${w.length} stretches`,n(w)}}function m(){let S=l.value==="wipe";p.textContent=l.value===
"bead"?"diameter":"thickness",u.disabled=D||S,u.value=S?"":T[l.value],u.placeholder=S?"":"mm",h.textContent=S?"Wipe here":
"Lay it here",b.textContent=S?"Wipe every stretch":"Lay it on every stretch",i.textContent="",x()}function x(){let S=f.value.
startsWith(ve);g.disabled=D||S;let w=We(t,S?{side:"round",place:f.value.slice(ve.length)}:{side:g.value,place:f.value});
a.chosen.setAttribute("d",w.length?a.path(w,S):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}l.addEventListener(
"change",m),u.addEventListener("input",()=>{T[l.value]=u.value}),f.addEventListener("change",x),g.addEventListener("chan\
ge",x),u.addEventListener("keydown",S=>{S.key==="Enter"&&(S.preventDefault(),h.click())});let k=null;a.svg.addEventListener(
"pointerdown",S=>{if(D||S.button>0)return;k=[a.place(S)],a.svg.setPointerCapture(S.pointerId);let w=Math.max(1,Number(T.
bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(Fe(t,l.value,w)))}),a.svg.addEventListener("pointer\
move",S=>{if(!k)return;let w=a.place(S);fe(w,k[k.length-1])<Kn||(k.push(w),a.live.setAttribute("d",a.path(k)))});let M=S=>{
if(!k)return;let w=k;if(k=null,a.live.setAttribute("d",""),S.type==="pointercancel")return;if(os(w)<qn){f.value=rs(t,w[0]),
x();return}let B=y();if(B===null)return;let _=as(w,t.points).map(U=>U.join(","));L([`${l.value}${B} at ${_.join(" ")}`])};
a.svg.addEventListener("pointerup",M),a.svg.addEventListener("pointercancel",M);let N=s("ol",{class:"ts-passes","aria-la\
bel":"Passes, in the order they were done"}),W=s("p",{class:"ts-hint"},"Nothing is laid yet."),V=s("div",{class:"ts-pad-\
tools"},s("div",{class:"ts-tools"},d("tool",l),s("span",{class:"ts-pair"},p,u)),s("div",{class:"ts-tools"},d("where",f),
d("runs",g)),s("div",{class:"ts-tools"},h,b,v,C),i,c),P=()=>Z(N,"button");return m(),{drawing:a,tools:V,list:N,empty:W,frame:a.
frame,element:s("div",{class:"ts-pad"},a.frame,V,s("div",{class:"ts-pad-list"},W,N)),show(S,w=[]){$=S.length,a.strokes(S),
W.hidden=$>0;let B=P().findIndex(_=>_.matches(":focus"));N.replaceChildren(...S.map((_,U)=>s("li",{},s("span",{},`${_e(t,
_)}${w[U]?`, ${w[U]}`:""} `),K("take out",()=>r(U,!1),{class:"ts-button ts-remove",disabled:D,"aria-label":`Take out pas\
s ${U+1}`})))),B>=0&&(P()[Math.min(B,$-1)]??h).focus()},setDisabled(S){D=S;for(let w of[l,f,h,b,v,C,...P()])w.disabled=S;
u.disabled=S||l.value==="wipe",x()}}}Mt("film",{prompt:"words",make(t,e,n){let r=[],o=c=>{r=c,a.show(r),n(r)},a=ke({face:t.face,label:`${t.prompt}: ${t.face.
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
`),ds=t=>`#${t.keys[0]}`,ye=class{constructor(e,n){this.labels=new Map(e.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
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
return[...n.slice(o),...n.slice(0,o)].find(c=>a(c).startsWith(e))}};var Yn=12,Vn=700,Xn=5,ps=32,Jn=8;function xe({label:t,steps:e,order:n,onChange:r}){let o=new ye(e,n),{staged:a}=o,c=!1,i={},
d=!1,l=new Map,u=s("div",{"aria-live":"assertive",class:"ts-hidden"}),p=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),f=K("Up",()=>_(-1),{"aria-label":"Move the chosen step up"}),g=K("Down",
()=>_(1),{"aria-label":"Move the chosen step down"}),h=K("Undo",()=>o.undo()&&mt("Undone")),b=K("Redo",()=>o.redo()&&mt(
"Done again")),v=K("Choose several",()=>st(!c),{"aria-pressed":"false"}),C=K("Gather stages",()=>B(o.gathered(),"Steps o\
f one stage now stand together")),T=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Mov\
e the chosen step to position",onkeydown:E=>{E.key==="Enter"&&U()}}),$=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),D=s("span",{class:"ts-chosen"}),y=K("Move",U,{"aria-label":"Move to this position"}),I=K(
"Move",it,{"aria-label":"Move before this step"}),L=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},f,g,h,b,v,a?C:null),m=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",T,y),s("span",{class:"\
ts-pair"},"or before ",$,I)),x="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),k=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},x),m),M=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),L,D,p,k,u);function N(E){u.
textContent=E}function W(E=""){N(`${o.unitName()}${E}, ${o.where()}`)}function V(E){let j=l.get(E.id);if(j)return j;let Y=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Y.dataset.row=E.id,l.set(E.id,Y),Y}function P(E=!1){let j=o.settle(),
Y=new Set(j.map(X=>X.id));for(let[X,wt]of l)Y.has(X)||(wt.remove(),l.delete(X));let ut=o.unit(),xt=new Set(ut),pt=p.firstElementChild;
for(let X of j){let wt=V(X);wt===pt?pt=pt.nextElementSibling:p.insertBefore(wt,pt),S(wt,X,xt)}T.value=String(o.order.indexOf(
ut[0])+1);let tt=[...o.order.entries()].filter(([,X])=>!xt.has(X));$.replaceChildren(...tt.map(([X,wt])=>s("option",{value:wt},
`${X+1}  ${o.label(wt)}`))),D.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,f.disabled=d||o.isFirst,g.disabled=d||
o.isLast,h.disabled=d||o.past.length===0,b.disabled=d||o.future.length===0;for(let X of[v,C,T,$,y,I])X.disabled=d;if(p.setAttribute(
"aria-disabled",String(d)),p.classList.toggle("ts-long",o.order.length>Yn),E){let X=l.get(o.current);X?.focus({preventScroll:!0}),
X?.scrollIntoView({block:"nearest"})}}function S(E,j,Y){let ut=j.id===o.current,xt=j.run?!1:o.block.has(j.key),pt=o.held!==
null&&(j.run?ut:Y.has(j.key)),tt=o.order.indexOf(j.run?j.run.keys[0]:j.key),X=j.run?j.run.keys.map(J=>i[J]?.length??0):i[j.
key],wt=j.run?o.closed.has(String(j.run.stage)):!1,Pt=JSON.stringify([tt,j.level,ut,xt,pt,X,j.run&&[j.run.keys.length,wt]]);
if(E.dataset.looks===Pt)return;E.dataset.looks=Pt,E.tabIndex=ut?0:-1,E.setAttribute("aria-selected",String(xt)),E.classList.
toggle("ts-current",ut),E.classList.toggle("ts-inblock",xt),E.classList.toggle("ts-held",pt),E.classList.toggle("ts-leve\
l2",j.level===2),a&&E.setAttribute("aria-level",String(j.level));let _t=pt?" picked up":xt?" in block":"",Xt=_t?s("span",
{class:"ts-state"},_t):"",zt=J=>s("span",{class:"ts-number","aria-hidden":"true"},J);if(j.run){let{keys:J,stage:at}=j.run;
E.setAttribute("aria-expanded",String(!wt));let ht=wt?J.filter(vt=>i[vt]?.length).length:0;E.replaceChildren(zt(`${tt+1}\
–${tt+J.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},wt?"▸":"▾"),s("span",{class:"ts-what"},s("b",{},
at),` ${J.length} steps`,ht?` – ${ht} with a remark`:"",Xt));return}let A=(i[j.key]??[]).map(J=>s("span",{class:`ts-no\
te ts-note-${J.kind}`},jt(J.shape??""),s("b",{},J.word),` ${J.text}`)),z=a&&j.level===1;E.classList.toggle("ts-troubled",
A.length>0),E.replaceChildren(zt(String(tt+1)),s("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),s("span",{class:"t\
s-what"},o.label(j.key),z?s("span",{class:"ts-stage"},` ${o.stages.get(j.key)??""}`):"",Xt,...A))}let w=()=>r([...o.order]);
function B(E,j){if(!o.take(E)){N(`${o.unitName()} stays at ${o.where()}`);return}P(!0),j?N(j):W(),o.held===null&&w()}function _(E){
d||B(o.shifted(E))}function U(){if(d)return;let E=Number.parseInt(T.value,10),j=o.order.length;E>=1&&E<=j?B(o.atPosition(
E)):(N(`Type a position from 1 to ${j}`),D.textContent=`Type a position from 1 to ${j}.`)}function it(){!d&&$.value&&B(o.
beside($.value,"before"))}function mt(E){P(),N(`${E}. ${o.unitName()}, ${o.where()}`),w()}function H(){o.pickUp(),P(!0),
W(" picked up")}function G(){o.putDown()&&w(),P(!0),W(" put down")}function q(){o.putDown()&&w(),P()}function rt(){o.putBack(),
P(!0),W(" put back")}function st(E){c=E,v.setAttribute("aria-pressed",String(E)),E||(o.block=new Set),P(),N(E?"Choose th\
e steps of a block":"Block let go")}function lt(E){o.toggleBlock(E);let j=o.block.has(E)?"in the block":"out of the bloc\
k";N(`${o.label(E)} ${j}, ${o.block.size} in it`)}function St(E,j){let Y=o.fold(E,j);Y&&(P(!0),N(`${Y} ${j?"closed":"ope\
n"}`))}p.addEventListener("keydown",E=>{if(Tt(E))return;let j=o.rows(),Y=j.findIndex(wt=>wt.id===o.current),ut=wt=>{o.current=
j[Math.max(0,Math.min(j.length-1,wt))].id,P(!0)},xt=j[Y],{key:pt}=E,tt=pt==="ArrowUp"?-1:pt==="ArrowDown"?1:null,X=o.held!==
null;if(tt&&(E.shiftKey||X))_(tt);else if(tt)ut(Y+tt);else if(X&&pt==="Escape")rt();else if(pt===" ")d||(X?G:H)();else if(X&&
pt==="Enter")G();else if(pt==="Enter"&&!xt.run)d||(lt(xt.key),P(!0));else if(pt==="Home"&&!X)ut(0);else if(pt==="End"&&!X)
ut(j.length-1);else if(a&&pt==="ArrowLeft")St(xt,!0);else if(a&&pt==="ArrowRight")St(xt,!1);else if(pt.length===1&&!X)O(
pt);else return;E.preventDefault()});let Ct="",kt;function O(E){Ct+=E.toLowerCase(),clearTimeout(kt),kt=window.setTimeout(
()=>{Ct=""},Vn);let j=o.sought(Ct);j&&(o.current=j.id,P(!0))}p.addEventListener("focusout",({relatedTarget:E})=>{o.held!==
null&&E instanceof Node&&!p.contains(E)&&q()});let F=null;p.addEventListener("pointerdown",E=>{let j=o.row(Et(E,".ts-ste\
p")?.dataset.row??"");if(!j||E.button!==0)return;if(j.run&&Et(E,".ts-fold")){St(j,!o.closed.has(String(j.run.stage))),E.
preventDefault();return}let Y=Et(E,".ts-grip, .ts-number"),ut=E.ctrlKey||E.metaKey;o.held!==null&&q(),!j.run&&!d&&(E.shiftKey?
o.blockTo(j.key):(ut||c)&&!Y&&lt(j.key)),o.current=j.id,P(!0),E.preventDefault(),!(d||E.shiftKey||ut)&&(E.pointerType!==
"mouse"&&!Y||(F={x:E.clientX,y:E.clientY,id:E.pointerId,carried:null},p.setPointerCapture(E.pointerId)))}),p.addEventListener(
"pointermove",E=>{if(!F||E.pointerId!==F.id)return;let{clientX:j,clientY:Y}=E;if(!F.carried){if(Math.hypot(j-F.x,Y-F.y)<
Xn)return;F.carried=Q()}Object.assign(F.carried,{x:j,y:Y}),ot(F.carried)});function Q(){let E=s("div",{class:"twoshaft t\
s-ghost","aria-hidden":"true"},o.unit().length>1?o.unitName():o.label(o.unit()[0]));document.body.append(E);let j=s("div",
{class:"ts-line","aria-hidden":"true"});p.append(j),p.classList.add("ts-dragging");for(let Y of o.unit())l.get(Y)?.classList.
add("ts-lifted");return{ghost:E,line:j,timer:requestAnimationFrame(Lt),x:0,y:0,drop:null}}function ot(E){E.ghost.style.transform=
`translate(${E.x+12}px, ${E.y+8}px)`;let Y=o.rows().map(tt=>{let X=V(tt).getBoundingClientRect();return{row:tt,box:X,offset:E.
y-(X.top+X.height/2)}}).reduce((tt,X)=>Math.abs(X.offset)<Math.abs(tt.offset)?X:tt),ut=Y.offset>0;E.drop=o.dropAt(Y.row,
ut);let pt=(ut?Y.box.bottom:Y.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;E.line.style.top=`${pt}px`}function Lt(){
let E=F?.carried;if(E){for(let j of[p,ss(p)]){let ut=j===document.scrollingElement?{top:0,bottom:innerHeight}:j.getBoundingClientRect(),
xt=E.y<ut.top+ps?-1:E.y>ut.bottom-ps?1:0;if(!xt)continue;let pt=j.scrollTop;if(j.scrollTop+=xt*Jn,j.scrollTop!==pt){ot(E);
break}}E.timer=requestAnimationFrame(Lt)}}function dt(E){let j=F?.carried;if(F=null,!j)return;cancelAnimationFrame(j.timer),
j.ghost.remove(),j.line.remove(),p.classList.remove("ts-dragging");for(let ut of l.values())ut.classList.remove("ts-lift\
ed");let{drop:Y}=j;if(!E||!Y||o.unit().includes(Y.target)){P(!0),N(`${o.unitName()} stays at ${o.where()}`);return}B(o.beside(
Y.target,Y.side))}return p.addEventListener("pointerup",()=>dt(!0)),p.addEventListener("pointercancel",()=>dt(!1)),M.addEventListener(
"keydown",E=>{!F?.carried||E.key!=="Escape"||(dt(!1),E.stopPropagation())}),P(),{element:M,tools:L,order:()=>[...o.order],
change:(E,j)=>{d||B(E,j)},setOrder(E,j=!1){o.held!==null||F?.carried||te(E,o.order)||(o.set(E,j),P())},setNotes(E){i=E??
{},P()},setDisabled(E){d=E,P()}}}Mt("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=xe({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
us(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function hs(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[c,i]of t.entries()){let[d,l]=e[i]??[null,null];d!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[d??r[0],l??(d===null?r[1]:0)];let u=n(...r);o.push(u);let p=a.get(u.join(" "))??{at:u,numbers:[]};
p.numbers.push(c+1),a.set(u.join(" "),p)}return{points:o,stops:[...a.values()]}}function gs(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function ms(t,e){return t.filter((n,r)=>r!==e)}function ws(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var fs=.6;function bs(t,[e,n],[r,
o]){let a=Object.entries(t).filter(([d])=>!d.startsWith("firm:")),c=(d,l)=>a.filter(([,u])=>u[0]===d&&u[1]===l).map(([u])=>u).
slice(0,1),i=Math.abs(e-r)>fs;return[...i&&Math.abs(n)>fs?c(null,0):[],...i?c(r,null):[],...o||!i?c(null,o):[]]}var re=9,$e=.7*re,Ue=44;function Se(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*re+2*Ue,
c=(o-r)*$e+2*Ue,i=(f,g)=>[Ue+(f-e)*re,c/2-(g-(r+o)/2)*$e],d=t.gates.map(f=>`M${i(f,r).join(" ")}L${i(f,o).join(" ")}`),l=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,u=t.gears.map(([f,g,h])=>{let[b,v]=i(g,h),C={x:b,y:v+(h>0?-20:30),"data-gear":f};
return R("text",{...C,class:"tsp-gear","text-anchor":"middle"},f)});return{element:R("svg",{viewBox:`0 0 ${a} ${c}`,width:a,
height:c,class:"ts-gateplan","aria-hidden":"true"},R("path",{d:[...d,l].join(""),class:"tsp-slot"}),...u),at:i}}function Zn(t){let{element:e,at:n}=Se(t),r=R("polyline",{class:"tsp-line",points:""}),o=R("g");return e.append(r,o),{element:e,
show(a){let{points:c,stops:i}=hs(a,t.aims,n),[[d,l]]=c;r.setAttribute("points",c.map(u=>u.join(",")).join(" ")),o.replaceChildren(
R("circle",{cx:d,cy:l,r:4,class:"tsp-start"}),...i.map(({at:[u,p],numbers:f})=>R("g",{},R("circle",{cx:u,cy:p,r:3.5,class:"\
tsp-stop"}),R("text",{x:u+7,y:p-5,class:"tsp-number"},f.join(", ")))))}}}function vs({label:t,moves:e,plan:n,most:r,onChange:o}){
let a=new Map(e),c=M=>a.get(M)??M,i=[],d=-1,l=!1,u=n?Zn(n):null,p=s("ol",{class:"ts-pathlist","aria-label":t}),f=s("p",{
class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate plane."),g=s("p",{class:"ts-hidden",role:"\
status"}),h=e.map(([M,N])=>K(N,()=>D(M))),b=K("Take back the last move",()=>{i.length&&y(i.length-1)}),v=K("Take back al\
l",()=>{i.length&&$([],"No moves left")}),C=s("span",{class:"ts-hint"}),T=s("div",{class:"ts-path"},s("div",{class:"ts-t\
ools ts-moves",role:"group","aria-label":"Add a move"},...h),s("div",{class:"ts-path-both"},s("div",{class:"ts-path-word\
s"},f,p,s("div",{class:"ts-tools"},b,v,C)),u&&s("div",{class:"ts-path-picture"},u.element)),u&&s("p",{class:"ts-hint"},"\
The line shows where each move should go. The test shows whether the lever gets there."),g);function $(M,N){l||(i=M,k(),
g.textContent=N,o([...i]))}function D(M){if(i.length>=r){g.textContent=`${r} moves are the most here`;return}let{moves:N,
place:W}=gs(i,d,M);d=W,$(N,`Move ${W+1}: ${c(M)}`)}function y(M){let N=c(i[M]);d=Math.min(d,i.length-2),$(ms(i,M),`Taken\
 back: ${N}`)}function I(M,N){let W=ws(i,M,N);W&&(d=M+N,$(W,`${c(W[d])}, move ${d+1} of ${i.length}`),m(d))}function L(M){
return p.children[M]?.querySelector(".ts-path-move")}function m(M){let N=L(M);return N instanceof HTMLElement&&N.focus(),
!!N}function x(M,N){let W=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${N+1}: ${c(M)}`},c(M)),V=s("bu\
tton",{type:"button",class:"ts-path-off","aria-label":`Take back move ${N+1}`,onclick:()=>y(N)},"×"),P=s("li",{},W,V);return P.
classList.toggle("ts-current",N===d),W.addEventListener("focus",()=>{d=N;for(let S of p.children)S.classList.toggle("ts-\
current",S===P)}),W.addEventListener("keydown",S=>{if(Tt(S))return;let w=S.key==="ArrowUp"?-1:S.key==="ArrowDown"?1:null;
if(w&&S.shiftKey)I(N,w);else if(w)m(N+w);else if(S.key==="Delete"||S.key==="Backspace")y(N),m(Math.min(N,i.length-1))||h[0].
focus();else return;S.preventDefault()}),V.disabled=l,P}function k(){p.replaceChildren(...i.map(x)),f.hidden=i.length>0,
C.textContent=`${i.length} of at most ${r} moves`;for(let M of h)M.disabled=l||i.length>=r;b.disabled=v.disabled=l||i.length===
0,u?.show(i)}return k(),{element:T,setMoves(M){te(M,i)||(i=[...M],d=-1,k())},setDisabled(M){l=M,k()}}}Mt("path",{prompt:"words",make(t,e,n){let r=vs({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});function ks(t,e,n){let r=t.indexOf(n);return[...t.slice(r+1),...t.slice(0,r)].find(a=>!e.get(a))??n}function ys(t,e,n){let r=t.
find(({key:d})=>d===e);if(!r)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let o={ArrowRight:1,
ArrowLeft:-1}[n];if(o!==void 0){let d=[...t].sort((u,p)=>u.x-p.x||u.y-p.y),l=d.findIndex(({key:u})=>u===e)+o;return d[(l+
d.length)%d.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=d=>Math.abs(d.y-r.y)+2*Math.abs(d.x-
r.x),[i]=t.filter(({key:d,y:l})=>d!==e&&(l-r.y)*a>2).sort((d,l)=>c(d)-c(l));return(i??r).key}function ee(t,e,n,r){let o=t.lines,a=t.options,c=o.map(([p])=>p),i=c[0],d=o.map(([p,f],g)=>{let h=`${e.control}-${g}`,b=s(
"label",{class:"ts-each-line",for:h},f),v=Ot({id:h,"aria-describedby":e.status},[["","choose"],...a]),C=s("input",{type:"\
radio",name:`${e.control}-active`,"aria-label":`Point in the picture for: ${f}`,checked:g===0}),T=s("li",{},c.length>1?C:
null,b,v);return C.addEventListener("change",()=>{i=p}),v.addEventListener("change",()=>{i=p,u()}),{key:p,box:v,mark:C,row:T}}),
l=()=>new Map(d.map(({key:p,box:f})=>[p,f.value]));function u(){let p=l();r(p),n(ge([...p]))}return{element:s("ol",{class:"\
ts-each ts-pointed"},...d.map(({row:p})=>p)),active:()=>i,answers:l,press(p){let f=d.find(({key:g})=>g===i);if(!(!f||f.box.
disabled)){f.box.value=p,u(),i=ks(c,l(),i);for(let{key:g,mark:h}of d)h.checked=g===i}},put(p,f){let g=d.find(({key:h})=>h===
p);!g||g.box.disabled||(g.box.value=f,u())},show(p){let f=me(p.value);for(let{key:g,box:h}of d)h.value=f.get(g)??"";r(l())},
setDisabled(p){for(let{box:f,mark:g}of d)f.disabled=p,g.disabled=p}}}function Le(t,e,n){let r=s("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});r.innerHTML=t;let o=r.querySelector(
"svg");o.setAttribute("role","group");let a=new Map(Z(o,"[data-mark]").map(l=>[String(l.dataset.mark),l])),c=new Map(e);
for(let[l,u]of a)u.setAttribute("role","button"),u.setAttribute("tabindex",l===e[0][0]?"0":"-1"),u.setAttribute("aria-la\
bel",`${l}: ${c.get(l)??""}`);let i=l=>Et(l,"[data-mark]")?.dataset.mark??Et(l,"[data-spot]")?.dataset.spot;r.addEventListener(
"click",l=>{let u=i(l);u&&n(u)});for(let[l,u]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])r.addEventListener(
l,p=>{let f=i(p);f&&d(f,u)});function d(l,u){for(let p of Z(o,`[data-spot="${l}"]`))p.classList.toggle("tss-near",u)}return r.
addEventListener("keydown",l=>{let u=Et(l,"[data-mark]")?.dataset.mark;if(u){if(l.key==="Enter"||l.key===" ")n(u);else{let p=[
...a].map(([g,h])=>{let b=h.querySelector(".tss-dot");return{key:g,x:b.cx.baseVal.value,y:b.cy.baseVal.value}}),f=ys(p,u,
l.key);if(f===void 0)return;a.get(u)?.setAttribute("tabindex","-1"),a.get(f)?.setAttribute("tabindex","0"),a.get(f)?.focus()}
l.preventDefault()}}),{element:r,drawing:o,choose(l){let u=new Set(l);for(let[p,f]of a)f.classList.toggle("tss-chosen",u.
has(p)),f.setAttribute("aria-pressed",String(u.has(p)));for(let p of Z(o,"[data-spot]"))p.classList.toggle("tss-on",u.has(
String(p.dataset.spot)))}}}Mt("picture",{prompt:"legend",make(t,e,n){let r=t.options,o=ee(t,e,n,i=>{let d=new Set(i.values());for(let{letter:l,card:u}of a)
u.classList.toggle("ts-on",d.has(l))}),a=r.map(([i,d])=>{let l=s("div",{class:"ts-picture-card",onclick:()=>o.press(i)});
return l.innerHTML=t.svgs[i],l.querySelector("svg")?.setAttribute("aria-label",d),l.prepend(s("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:l}}),c=s("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:s("div",{class:"\
ts-pictured"},o.element,c),show:o.show,setDisabled:o.setDisabled,refused(){}}}});Mt("point",{prompt:"legend",make(t,e,n){let r=ee(t,e,n,i=>c.choose(i.values())),a=t.options.map(([i,d])=>[i,d.slice(i.length+
2)]),c=Le(t.svg,a,r.press);return{element:s("div",{},r.element,c.element),show:r.show,setDisabled:r.setDisabled,refused(){}}}});Mt("put",{prompt:"legend",make(t,e,n){let r=t.lines,o=new Map(r.map(([u])=>[u,"1"])),a=ee(t,e,n,u=>{for(let[p,f]of u)f&&
o.set(p,f.split("-")[1]);c.choose([...u.values()].map(p=>p.split("-")[0])),d(u)}),c=Le(t.svg,t.places,u=>{a.press(`${u}-${o.
get(a.active())}`)}),i=R("g",{class:"tss-placed"});c.drawing.append(i);function d(u){i.replaceChildren();for(let[p,f]of u){
let[g,h]=f.split("-"),b=t.at[g];if(!b)continue;let v=R("g",{transform:`translate(${b[0]} ${b[1]})`});v.innerHTML=t.pieces[p][Number(
h)-1][1],i.append(v)}for(let{part:p,show:f}of l)f(o.get(p)??"1")}let l=r.map(([u,p])=>{let f=s("div",{class:"ts-tray-par\
t"}),g=s("span",{class:"ts-hint",role:"status"}),h=nt("Turn it",()=>{let C=o.get(u)==="1"?"2":"1";o.set(u,C),b(C);let T=a.
answers().get(u);T&&a.put(u,`${T.split("-")[0]}-${C}`)},`Turn it: ${p}`);function b(C){let[T,$]=t.pieces[u][Number(C)-1],
D=Number(/data-half="([\d.]+)"/.exec($)?.[1]??90);f.innerHTML=`<svg viewBox="${-D} ${-D} ${2*D} ${2*D}" width="120" heig\
ht="120" aria-hidden="true">${$}</svg>`,g.textContent=`Way ${C}: ${T}`}let v=s("div",{class:"ts-tray"},f,s("div",{},p,g,
h));return{part:u,row:v,show:b,turn:h}});return{element:s("div",{},s("div",{class:"ts-trays"},...l.map(({row:u})=>u)),a.
element,c.element),show:a.show,setDisabled(u){a.setDisabled(u);for(let{turn:p}of l)p.disabled=u},refused(){}}}});var Qn="The connection to the course is lost. Go on answering: your answers stay in this browser and are sent when the c\
onnection is back. Simulators wait until then.",to="The connection to the course is back.",eo=1500,so=5e3,Ke=new Set,qt=null,
qe;function xs(t){qt??=s("p",{class:"twoshaft ts-line-bar",role:"status"}),qt.isConnected||document.body.append(qt),qt.textContent=
t}function no(){qt?.remove(),qt=null}function $s(){clearTimeout(qe),Ke.size?qe=window.setTimeout(()=>xs(Qn),qt?0:eo):qt&&
(xs(to),qe=window.setTimeout(no,so))}var Ss=t=>({down(){Ke.add(t),$s()},up(){Ke.delete(t),$s()}});var oo=1e3,ro="input, button, select, textarea, summary, a, [tabindex]";function ao(t){let e=o=>{if(o.stopPropagation(),
!(o.ctrlKey||o.metaKey)||o.key.toLowerCase()!=="s"||(o.preventDefault(),o.type!=="keydown"||o.repeat))return;let{key:a,code:c,
keyCode:i,ctrlKey:d,metaKey:l}=o,u={key:a,code:c,keyCode:i,ctrlKey:d,metaKey:l,bubbles:!0,cancelable:!0};t.parentElement?.
dispatchEvent(new KeyboardEvent("keydown",u))};t.addEventListener("keydown",e),t.addEventListener("keyup",e),t.addEventListener(
"keypress",e);let n=()=>{for(let o of t.querySelectorAll(ro))o.hasAttribute("data-lm-suppress-shortcuts")||o.setAttribute(
"data-lm-suppress-shortcuts","true")};n();let r=new MutationObserver(n);return r.observe(t,{childList:!0,subtree:!0}),()=>r.
disconnect()}function io(t,e,n){let r=t.widget_manager?.kernel,o=(c,i)=>{["restarting","autorestarting","terminating","d\
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
:var(--ts-grid)}.twoshaft-rig>.ts-who{display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid));align-items:baseline;fo\
nt-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-rig .ts-asks{color:var(--ts-ink);font-size:var(--ts-text);font-w\
eight:600}.twoshaft-rig .ts-begin{color:var(--ts-accent);font-weight:600}.twoshaft-rig:not(.ts-begun,.ts-lost) .ts-first\
{box-shadow:0 0 0 3px var(--ts-accent)}.twoshaft-rig:not(.ts-begun,.ts-lost) .ts-tools.ts-first{width:fit-content}.twosh\
aft-rig:not(.ts-begun,.ts-lost) button.ts-first{white-space:nowrap}.twoshaft-rig:not(.ts-begun,.ts-lost) button.ts-first\
:before{content:"\\25b6  " / ""}.twoshaft .ts-beside{display:flex;flex-wrap:wrap;gap:var(--ts-grid) calc(3 * var(--ts-gri\
d));align-items:flex-start}.twoshaft .ts-beside>*{box-sizing:border-box;max-width:100%;min-width:min(100%,280px)}.twosha\
ft .ts-beside>:first-child{flex:3 1 480px}.twoshaft .ts-beside>:last-child{flex:2 1 360px}.twoshaft .ts-beside:has(>:fir\
st-child>.tsh-picture)>:first-child{flex:4 1 720px}.twoshaft .ts-beside:has(>:first-child>.tsh-picture)>:last-child{flex\
:1 1 280px}.twoshaft .ts-beside:has(>:first-child>.ts-pad-face)>*{flex:1 1 480px}.twoshaft .ts-beside:has(>:first-child>\
.tsw-train)>:first-child{flex:4 1 640px}.twoshaft .ts-beside>div>.ts-scroll:first-child{margin-top:0}.twoshaft .ts-findi\
ng{font-weight:600;margin:var(--ts-grid) 0 0}.twoshaft .ts-happened{margin-top:var(--ts-grid);min-height:1.5em}.twoshaft\
-rig>.ts-prompt{font-weight:600;margin:calc(2 * var(--ts-grid)) 0 var(--ts-grid)}.twoshaft .ts-scroll{overflow-x:auto;ma\
rgin:var(--ts-grid) 0;padding-bottom:var(--ts-grid)}.twoshaft .ts-scroll svg{display:block}.twoshaft .ts-scroll.ts-fit s\
vg{max-width:100%;min-width:600px;height:auto}.twoshaft .ts-facts{display:grid;grid-template-columns:max-content 1fr;gap\
:4px calc(2 * var(--ts-grid));margin:var(--ts-grid) 0;max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-facts dt{floa\
t:none;clear:none;width:auto;font-weight:600;overflow-wrap:normal}.twoshaft .ts-facts dd{margin:0;width:auto}@media(max-\
width:480px){.twoshaft .ts-facts{grid-template-columns:1fr}}.twoshaft .ts-ready{display:flex;flex-wrap:wrap;gap:var(--ts\
-grid)}.twoshaft-rig .ts-ready{max-height:14rem;overflow-y:auto;padding:4px}.twoshaft .ts-ready .ts-button{text-align:le\
ft;padding-block:4px}.twoshaft .ts-button.ts-off{color:var(--ts-quiet);border-color:var(--ts-line);border-style:dotted;c\
ursor:default}.twoshaft .ts-sentences{padding-left:calc(3 * var(--ts-grid));max-width:var(--ts-width)}.twoshaft .ts-note\
-blocked .ts-shape,.twoshaft .ts-note-harmed .ts-shape{color:var(--ts-bad)}.twoshaft .tsf-near{margin:0}.twoshaft :has(~\
.tsf-near).ts-finding{max-width:none}.twoshaft .tsf-step{cursor:pointer}.twoshaft .tsf-step:focus{outline:none}.twoshaft\
 .tsf-step:is(:focus-visible,:hover) .tsf-b{stroke:var(--ts-accent);stroke-width:3}.twoshaft .tsg-text{font:calc(var(--t\
s-small) * var(--ts-grown, 1)) var(--ts-font);fill:var(--ts-ink)}.twoshaft .tsg-face{fill:var(--ts-paper);stroke:var(--t\
s-ink);stroke-width:2}.twoshaft .tsg-mark{stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsg-long{stroke-width:2}.twosha\
ft .tsg-pointer{fill:var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .tsg-hub{fill:var(--ts-ink)}.twoshaft .tsg-small\
{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsg-target{fill:var(--ts-faint);stroke:var(--ts-ink);stroke-width:1;stro\
ke-dasharray:5 3}.twoshaft .tsg-cold{fill:var(--ts-accent);stroke:var(--ts-paper)}.twoshaft .tsg-warm{fill:var(--ts-pape\
r);stroke:var(--ts-bad);stroke-width:3}.twoshaft .tsg-dial{width:190px;height:190px;flex:none}.twoshaft .tsg-scale{width\
:100%;max-width:600px;min-width:540px;height:auto;display:block}.twoshaft .tsg-axis{width:100%;max-width:720px;min-width\
:540px;height:auto;display:block}.twoshaft .tsg-beside{display:flex;flex-wrap:wrap;align-items:center;gap:calc(2 * var(-\
-ts-grid))}.twoshaft .tsg-beside>*{min-width:0;max-width:100%}.twoshaft .tsg-gauge svg{max-width:100%;height:auto}.twosh\
aft .tsg-gauge{text-align:center;font-size:var(--ts-small)}.twoshaft .tsg-wide{overflow-x:auto;max-width:100%}.twoshaft \
.ts-slide{display:flex;flex-wrap:wrap;align-items:center;gap:0 var(--ts-grid);margin:calc(var(--ts-grid) / 2) 0}.twoshaf\
t .ts-slide>span{min-width:9em}.twoshaft .ts-slider{flex:0 1 260px;width:120px;min-width:96px;height:24px;accent-color:v\
ar(--ts-accent)}.twoshaft .ts-slid{flex:1 1 7em;font-variant-numeric:tabular-nums}.twoshaft .tsg-centre{stroke:var(--ts-\
ink);stroke-width:1;stroke-dasharray:14 3 3 3}.twoshaft .tsg-drum{max-width:100%;height:auto}.twoshaft .tsg-ticks{border\
:none;display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid))}.twoshaft .tsg-side{flex:1 1 420px;min-width:min(100%,3\
20px)}.twoshaft :is(.tsp-section+.tsg-gauge,.tsg-gauge:has(+.tsg-side)){flex:0 1 200px}.twoshaft .tsg-gauge+.tsg-side{fl\
ex-basis:260px;min-width:min(100%,260px)}.twoshaft .tsi-micrometer{width:clamp(730px,100%,760px);height:240px;display:bl\
ock}.twoshaft .tsi-vernier{width:clamp(730px,100%,760px);height:190px;display:block}.twoshaft .tsi-runout{width:282px;he\
ight:244px;flex:none}.twoshaft .tsi-wrench{width:clamp(540px,100%,720px);height:auto;display:block}.twoshaft .tsi-fine{s\
troke:var(--ts-ink);stroke-width:1.1}.twoshaft .tsi-bold{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-body{fill:va\
r(--ts-faint);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-paper{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-\
width:1}.twoshaft .tsi-lever{stroke:var(--ts-ink);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-adapter{stroke:var\
(--ts-accent);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-arm{stroke:var(--ts-accent);stroke-width:2;stroke-dash\
array:7 4}.twoshaft .tsi-plunger{stroke:var(--ts-accent);stroke-width:5;stroke-linecap:round}.twoshaft .ts-order{positio\
n:relative;max-width:calc(var(--ts-width) + 8em)}.twoshaft .ts-steps{position:relative;list-style:none;border:1px solid \
var(--ts-line);margin-top:calc(var(--ts-grid) / 2);background:var(--ts-paper)}.twoshaft .ts-steps.ts-long{max-height:min\
(30rem,75vh);overflow-y:auto}.twoshaft .ts-step{display:flex;align-items:flex-start;gap:var(--ts-grid);padding:4px var(-\
-ts-grid) 4px 0;margin:0;min-height:24px;border-bottom:1px solid var(--ts-faint);border-left:4px solid transparent;curso\
r:default;user-select:none}.twoshaft .ts-step:last-child{border-bottom:0}.twoshaft .ts-step.ts-level2{padding-left:calc(\
2 * var(--ts-grid))}.twoshaft .ts-step:focus-visible{outline-offset:-3px}.twoshaft .ts-current{border-left-color:var(--t\
s-accent);background:var(--ts-faint)}.twoshaft .ts-inblock{border-left-style:double;border-left-color:var(--ts-ink)}.two\
shaft .ts-held{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-held .ts-number,.twoshaft .ts-held .t\
s-grip,.twoshaft .ts-held .ts-stage{color:inherit}.twoshaft .ts-lifted{opacity:.45}.twoshaft .ts-dragging,.twoshaft .ts-\
dragging .ts-step{cursor:grabbing}.twoshaft .ts-number{flex:none;min-width:2.5em;text-align:right;color:var(--ts-quiet);\
font-variant-numeric:tabular-nums;touch-action:none}.twoshaft .ts-grip,.twoshaft .ts-fold{flex:none;width:24px;text-alig\
n:center;color:var(--ts-quiet);cursor:grab;touch-action:none}.twoshaft .ts-fold{cursor:pointer}.twoshaft .ts-what{flex:1\
;min-width:0}.twoshaft .ts-state{font-weight:600;font-size:var(--ts-small)}.twoshaft .ts-note{display:block;font-size:va\
r(--ts-small);max-width:var(--ts-width)}.twoshaft .ts-line{position:absolute;left:0;right:0;height:3px;background:var(--\
ts-accent);pointer-events:none}.twoshaft.ts-ghost{position:fixed;left:0;top:0;z-index:10000;width:max-content;max-width:\
24em;padding:4px var(--ts-grid);pointer-events:none;background:var(--ts-paper);color:var(--ts-ink);border:2px solid var(\
--ts-accent)}.twoshaft .ts-order .ts-keys{margin-top:var(--ts-grid)}.twoshaft .ts-order .ts-keys summary{cursor:pointer;\
min-height:24px;color:var(--ts-accent);width:fit-content}.twoshaft .ts-beside:has(>div>.ts-order){flex-wrap:wrap-reverse\
;align-items:flex-end}.twoshaft-rig .ts-order .ts-steps{max-height:max(20rem,min(30rem,100vh - 340px));overflow-y:auto}.\
twoshaft .ts-path-both{display:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--\
ts-grid)}.twoshaft .ts-path-words{flex:1 1 22em;min-width:0;max-width:34em}.twoshaft .ts-path-picture{flex:none;max-widt\
h:100%}.twoshaft .ts-pathlist{margin:0;padding-left:calc(4 * var(--ts-grid))}.twoshaft .ts-pathlist li{min-height:28px;p\
adding-left:4px;border-left:4px solid transparent}.twoshaft .ts-pathlist li.ts-current{border-left-color:var(--ts-accent\
);background:var(--ts-faint)}.twoshaft .ts-path-off{min-width:28px;min-height:28px;margin-left:var(--ts-grid);border:1px\
 solid var(--ts-line);border-radius:2px;background:var(--ts-paper);color:var(--ts-ink);font:inherit;line-height:1;cursor\
:pointer}.twoshaft .ts-gateplan{display:block;max-width:100%;height:auto}.twoshaft .tsp-slot{fill:none;stroke:var(--ts-l\
ine);stroke-width:14;stroke-linecap:round;opacity:.35}.twoshaft .tsp-line{fill:none;stroke:var(--ts-accent);stroke-width\
:2.5;stroke-linejoin:round}.twoshaft .tsp-start{fill:var(--ts-paper);stroke:var(--ts-accent);stroke-width:2}.twoshaft .t\
sp-stop{fill:var(--ts-accent)}.twoshaft .tsp-gear{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink)}.twoshaft .\
tsp-number{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink);paint-order:stroke;stroke:var(--ts-paper);stroke-w\
idth:4px}.twoshaft .ts-pad{max-width:62rem}.twoshaft .ts-pad-face{position:relative;width:100%;border:1px solid var(--ts\
-line);background:var(--ts-paper)}.twoshaft .tsp-face{display:block;position:relative;width:100%;height:auto;touch-actio\
n:none;cursor:crosshair}.twoshaft .tsp-land{fill:var(--ts-faint);stroke:none}.twoshaft .tsp-edge{fill:none;stroke:var(--\
ts-ink);stroke-linejoin:round}.twoshaft .tsp-text{fill:var(--ts-ink);font-family:var(--ts-font);paint-order:stroke;strok\
e:var(--ts-paper);stroke-width:.5px;pointer-events:none;user-select:none}.twoshaft .tsp-hole{fill:var(--ts-paper);stroke\
:var(--ts-ink)}.twoshaft .tsp-blind{fill:var(--ts-ink)}.twoshaft .tsp-guide,.twoshaft .tsp-reach,.twoshaft .tsp-hatch{fi\
ll:none;stroke:var(--ts-ink)}.twoshaft .tsp-spot{stroke:var(--ts-ink)}.twoshaft .tsp-stroke,.twoshaft .tsp-live,.twoshaf\
t .tsp-grain{fill:none;stroke-linejoin:round;stroke-linecap:butt}.twoshaft .tsp-film{stroke:var(--ts-film);stroke-opacit\
y:.6}.twoshaft .tsp-bead{stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-wipe{stroke:var(--ts-paper);stroke-op\
acity:.85}.twoshaft .tsp-grain{stroke:var(--ts-ink)}.twoshaft .tsp-live{stroke:var(--ts-accent);stroke-opacity:.5;stroke\
-linecap:round}.twoshaft .tsp-chosen{fill:none;stroke:var(--ts-accent);stroke-dasharray:3 2;pointer-events:none}.twoshaf\
t .ts-size{width:6em}.twoshaft .ts-size[aria-invalid=true]{border:2px dashed var(--ts-ink)}.twoshaft .ts-pad-trouble{min\
-height:1.5em;color:var(--ts-ink)}.twoshaft .ts-passes{padding-left:2.5em;font-size:var(--ts-small);max-height:16rem;ove\
rflow-y:auto}.twoshaft .ts-passes li{padding:2px 0}.twoshaft .ts-remove{min-height:24px;padding:0 var(--ts-grid)}.twosha\
ft .ts-pad-tools .ts-box{max-width:100%;min-width:0}.twoshaft .ts-pad-tools .ts-pair{min-width:0}.twoshaft .ts-each{marg\
in:0;padding-left:calc(3 * var(--ts-grid))}.twoshaft .ts-each li{padding:calc(var(--ts-grid) / 2) 0}.twoshaft .ts-each l\
i+li{border-top:1px solid var(--ts-line)}.twoshaft .ts-each-line{display:inline-block;width:min(100% - 2 * var(--ts-grid\
),34em);margin-right:calc(2 * var(--ts-grid));vertical-align:top}.twoshaft .ts-each select{max-width:100%;min-width:0;ve\
rtical-align:top}.twoshaft .ts-pointed input[type=radio]{margin-right:var(--ts-grid);vertical-align:top}.twoshaft .ts-po\
inted input[type=radio]+.ts-each-line{width:min(100% - 7 * var(--ts-grid),34em)}.twoshaft .ts-scene{overflow-x:auto;marg\
in:var(--ts-grid) 0}.twoshaft .ts-scene svg{display:block;max-width:none;max-height:none}.twoshaft .ts-scene [data-mark]\
,.twoshaft .ts-scene [data-spot]{cursor:pointer}.twoshaft .ts-scene [data-mark]:focus-visible{outline:none}.twoshaft .ts\
-scene [data-mark]:focus-visible .tss-ring{stroke:var(--ts-accent);stroke-width:4px}.twoshaft .ts-scene .tss-near path:n\
ot(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:2.4px}.twoshaft .ts-scene .tss-chosen .tss-rin\
g{fill:var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .ts-scene .tss-chosen .tss-letter{fill:var(--ts-on-accent)}.tw\
oshaft .ts-scene .tss-on path:not(.tsu-behind,.tsu-pitch,.tsu-line),.twoshaft .ts-scene .tss-placed path:not(.tsu-behind\
,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:3px}.twoshaft .ts-scene .tss-placed{pointer-events:none}.two\
shaft .ts-pictured{display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .ts-pictu\
red>:first-child{flex:1 1 280px;min-width:min(100%,240px)}.twoshaft-wide .ts-pictured>:first-child{position:sticky;top:0\
}.twoshaft .ts-pictures{display:grid;flex:2 1 500px;min-width:0;grid-template-columns:repeat(auto-fit,minmax(min(100%,24\
0px),1fr));gap:var(--ts-grid);margin:var(--ts-grid) 0}.twoshaft .ts-picture-card{position:relative;padding:var(--ts-grid\
);border:1px solid var(--ts-line);cursor:pointer}.twoshaft .ts-picture-card.ts-on{outline:3px solid var(--ts-accent)}.tw\
oshaft .ts-picture-card svg{width:100%;height:auto;max-height:300px}.twoshaft .ts-picture-letter{font-weight:600}.twosha\
ft .ts-trays{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-tray{display:flex;gap:var(--ts-grid)\
;align-items:center}.twoshaft .ts-tray>div:last-child{display:grid;gap:calc(var(--ts-grid) / 2);max-width:22em}.twoshaft\
-form{padding-block:var(--ts-grid)}.twoshaft .ts-top{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 cal\
c(3 * var(--ts-grid));border-bottom:1px solid var(--ts-line);padding-bottom:calc(var(--ts-grid) / 2)}.twoshaft .ts-who{f\
ont-size:var(--ts-small);color:var(--ts-quiet)}.jp-Cell:has(.ts-top,.ts-build)~.jp-Cell .ts-top>.ts-who{display:none}.tw\
oshaft .ts-field{border:0;min-width:0;margin:calc(2 * var(--ts-grid)) 0 0}.twoshaft .ts-prompt{display:block;padding:0;f\
ont-weight:600;margin-bottom:var(--ts-grid)}.twoshaft .ts-line-of{display:flex;flex-wrap:wrap;align-items:center;gap:var\
(--ts-grid)}.twoshaft .ts-line-of+.ts-read,.twoshaft .ts-line-of+.ts-read+.ts-status{display:inline}.twoshaft .ts-line-o\
f+.ts-read:not(:empty){margin-right:calc(2 * var(--ts-grid))}.twoshaft .ts-read.ts-error,.twoshaft .ts-status-unread{col\
or:var(--ts-ink);font-size:var(--ts-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-unread .ts-shape,.twoshaft \
.ts-status-bad .ts-shape{color:var(--ts-bad)}.twoshaft .ts-status-saved .ts-shape{color:var(--ts-good)}.twoshaft .ts-sta\
tus-bad{color:var(--ts-ink);font-weight:600}.twoshaft .ts-order+.ts-read{display:none}.twoshaft .ts-bench{margin-top:var\
(--ts-grid)}.twoshaft .ts-bench summary{cursor:pointer;min-height:24px;font-size:var(--ts-small);color:var(--ts-quiet)}.\
twoshaft .ts-bench[open]{border:1px solid var(--ts-line);padding:var(--ts-grid)}.twoshaft .ts-bench-rows{display:grid;gr\
id-template-columns:repeat(auto-fill,minmax(min(100%,20em),1fr));gap:var(--ts-grid) calc(2 * var(--ts-grid));margin:var(\
--ts-grid) 0}.twoshaft .ts-bench-row{min-width:0}.twoshaft .ts-bench-row select{max-width:100%;min-width:0}.twoshaft .ts\
-bench-row label{display:block;max-width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-height:0}.twoshaft.ts-ques\
tion{border-left:4px solid var(--ts-accent);padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-acts{display:flex;flex-w\
rap:wrap;gap:var(--ts-grid);margin-top:var(--ts-grid)}.twoshaft .ts-told:not(:empty){margin-top:var(--ts-grid)}.twoshaft\
 .ts-told-unread{border:2px solid var(--ts-ink);padding:var(--ts-grid)}.twoshaft .ts-teacher{border-style:dashed;font-si\
ze:var(--ts-small)}.twoshaft.ts-question .ts-title{font-weight:600}.twoshaft.ts-question:has(.ts-asked>:nth-child(2)){ma\
x-width:none}.twoshaft .ts-asked{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,340px),1fr));gap:0 c\
alc(4 * var(--ts-grid));align-items:start}.twoshaft-start>div{max-width:1040px}.twoshaft-start h2{font-size:var(--ts-hea\
d);font-weight:600;margin:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-in{margin:calc(2 * var(--ts\
-grid)) 0 calc(3 * var(--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;grid-template-columns:minmax(0,1fr);gap:calc\
(1.5 * var(--ts-grid));justify-items:start}.twoshaft-start .ts-pair{display:grid;grid-template-columns:minmax(0,1fr);gap\
:calc(var(--ts-grid) / 2);max-width:100%}.twoshaft-start .ts-pair label{font-weight:600}.twoshaft-start .ts-pair .ts-box\
{width:22em;max-width:100%}.twoshaft-start .ts-first{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft-sta\
rt .ts-button{font-size:var(--ts-text)}.twoshaft-start .ts-said:not(:empty){border-left:3px solid var(--ts-accent);paddi\
ng:var(--ts-grid);background:var(--ts-faint)}.twoshaft-start .ts-me{display:flex;flex-wrap:wrap;align-items:center;justi\
fy-content:space-between;gap:var(--ts-grid);margin-bottom:var(--ts-grid)}.twoshaft-start .ts-table{border-collapse:colla\
pse;width:100%;margin:0 0 calc(2 * var(--ts-grid));font-size:var(--ts-text);table-layout:fixed}.twoshaft-start .ts-table\
 :is(th,td){text-align:left;vertical-align:top;white-space:normal;padding:var(--ts-grid);border:0;border-bottom:1px soli\
d var(--ts-line);background:none;max-width:none}.twoshaft-start .ts-table thead th{font-size:var(--ts-small);color:var(-\
-ts-quiet)}.twoshaft-start .ts-table th:nth-child(1){width:26%}.twoshaft-start .ts-table th:nth-child(2){width:16%}.twos\
haft-start .ts-table th:nth-child(4){width:24%}.twoshaft-start .ts-small-line{display:block;font-size:var(--ts-small);co\
lor:var(--ts-quiet)}.twoshaft-start .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaf\
t-start a.ts-link:is(:link,:visited,:hover,:focus,:active){color:var(--ts-accent);text-decoration:underline;display:inli\
ne-flex;align-items:center;min-height:var(--ts-target);cursor:pointer}.twoshaft-start .ts-lessons{padding-left:calc(2 * \
var(--ts-grid))}.twoshaft-start .ts-lessons .ts-link{min-height:24px}.twoshaft-start .ts-module th{padding-top:calc(3 * \
var(--ts-grid));font-size:var(--ts-text)}.twoshaft-start .ts-table .ts-module th{width:auto}.twoshaft-start .ts-assigned\
{margin-left:var(--ts-grid);font-weight:400;color:var(--ts-quiet)}.twoshaft-start .ts-next{margin:0}.twoshaft-start summ\
ary{min-height:var(--ts-target);align-content:center;cursor:pointer}.twoshaft-start .ts-due{display:none}@media(max-widt\
h:560px){.twoshaft-start .ts-due{display:inline}.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.\
twoshaft-start .ts-table :is(tr,th,td):nth-child(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:\
1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.tw\
oshaft-start .ts-gaps{padding-left:calc(2 * var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{disp\
lay:block}.twoshaft-start .ts-question{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk{\
max-width:1240px}.twoshaft-desk .ts-desk-top{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-betwee\
n;gap:var(--ts-grid)}.twoshaft-desk .ts-desk-pages{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin:var(--ts-grid) \
0;padding-bottom:var(--ts-grid);border-bottom:1px solid var(--ts-line)}.twoshaft-desk .ts-button[aria-current=page]{bord\
er-width:3px;font-weight:700}.twoshaft-desk :is(h2,h3){font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5\
}.twoshaft-desk h3,.twoshaft-desk .ts-button{font-size:var(--ts-text)}.twoshaft-desk .ts-first{background:var(--ts-accen\
t);color:var(--ts-on-accent)}.twoshaft-desk .ts-said:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border-left:3px soli\
d var(--ts-accent);padding:var(--ts-grid);background:var(--ts-faint)}.twoshaft-desk :is(.ts-said,.ts-alert,.ts-told,.ts-\
trouble){white-space:pre-line;max-width:none}.twoshaft-desk .ts-desk-here{width:100%;scroll-margin-block:calc(2 * var(--\
ts-grid))}.twoshaft-desk .ts-busy{display:flex;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-desk-body[aria-b\
usy=true]{cursor:progress}.twoshaft-desk .ts-desk-body>*{margin-top:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-cap\
tion{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:calc(\
var(--ts-grid) / 2)}.twoshaft-desk .ts-desk-scroll{max-height:360px;overflow:auto;border:1px solid var(--ts-line)}.twosh\
aft-desk .ts-table{border-collapse:collapse;margin:0;min-width:100%;font-size:var(--ts-text)}.twoshaft-desk .ts-table :i\
s(th,td){text-align:left;vertical-align:top;white-space:normal;padding:calc(var(--ts-grid) / 2) var(--ts-grid);border:0;\
border-bottom:1px solid var(--ts-line);background:none;max-width:28em;font-weight:400;overflow-wrap:break-word}.twoshaft\
-desk .ts-table tbody th{position:sticky;left:0;background:var(--ts-paper)}.twoshaft-desk .ts-table thead th{position:st\
icky;top:0;z-index:1;background:var(--ts-paper);box-shadow:inset 0 -1px var(--ts-line);white-space:nowrap}.twoshaft-desk\
 .ts-table .ts-figure{text-align:right;font-variant-numeric:tabular-nums}.twoshaft-desk .ts-table .ts-tick{width:24px}.t\
woshaft-desk input[type=checkbox]{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft-desk :is(.ts-sort,.ts-c\
ell){min-height:24px;min-width:24px;padding:0;border:0;background:none;color:var(--ts-accent);font:inherit;text-align:in\
herit;cursor:pointer}.twoshaft-desk .ts-sort{font-weight:600}.twoshaft-desk .ts-cell{text-decoration:underline}.twoshaft\
-desk .ts-desk-form{display:grid;gap:var(--ts-grid);justify-items:start;padding-top:var(--ts-grid);border-top:1px solid \
var(--ts-line)}.twoshaft-desk .ts-desk-form>*{min-width:0;max-width:100%}.twoshaft-desk .ts-desk-fields{display:flex;fle\
x-wrap:wrap;align-items:flex-start;gap:var(--ts-grid) calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-field{display:gri\
d;grid-template-columns:minmax(0,auto);gap:calc(var(--ts-grid) / 2);max-width:100%}.twoshaft-desk .ts-desk-field>label:n\
ot(.ts-option){font-weight:600}.twoshaft-desk .ts-desk-field .ts-box{width:18em;max-width:100%}.twoshaft-desk .ts-desk-f\
ield select.ts-box{width:auto;min-width:min(18em,80vw)}.twoshaft-desk textarea.ts-box{width:30em;padding:var(--ts-grid)}\
.twoshaft-desk .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-question{b\
order:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk a.ts-link:is(:link,:visited,:hover,:focu\
s,:active){color:var(--ts-accent);text-decoration:underline}.twoshaft-desk :is(textarea,a,h2,.ts-desk-scroll):focus-visi\
ble{outline:3px solid var(--ts-accent);outline-offset:2px}@media(forced-colors:active){.twoshaft-desk .ts-button[aria-cu\
rrent=page]{border-color:Highlight}.twoshaft-desk .ts-first{border-width:2px;font-weight:700}.twoshaft-desk .ts-said:not\
(:empty,.ts-hidden),.twoshaft-desk .ts-told{border:1px solid CanvasText}}.twoshaft .tsj-bench{display:flex;flex-wrap:wra\
p;gap:var(--ts-grid) calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .tsj-bench>*{flex:1 1 240px;min-width:0;m\
ax-width:max-content}.twoshaft .tsj-bench svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:pointe\
r}.twoshaft .tsj-bolt:focus{outline:none}.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-width:4\
}.twoshaft .tsj-bolt.tsj-started circle{stroke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.twoshaft\
 .tsj-bolt.tsj-tight text{fill:var(--ts-paper)}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(--ts-\
grid)}.twoshaft .tsj-slide input{width:180px;max-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-target)}.t\
woshaft .tsj-figure{min-width:8ch;font-variant-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-height:1\
.5em}.twoshaft .tsj-check{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.twoshaf\
t .tsj-check input{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-templa\
te-columns:max-content minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-width) \
+ 12ch);margin:var(--ts-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block;max-\
width:100%;height:auto}.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:wrap}\
@media(max-width:700px){.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{border-co\
llapse:collapse;font:var(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align:left\
;font-weight:600;padding:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-align:\
middle;padding:1px 12px 1px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twoshaft table.tsk\
-board thead th{font-weight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:54ch;white-space:normal}.two\
shaft table.tsk-board .tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft table.\
tsk-board select{max-width:36ch}.twoshaft table.tsk-board :is(select,button){min-height:28px}.twoshaft table.tsk-board{f\
ont-size:var(--ts-small)}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:600;b\
order-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{min-w\
idth:24ch}.twoshaft .tsk-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){.twoshaft table.tsk-b\
oard,.twoshaft table.tsk-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.twosh\
aft table.tsk-board thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft table.ts\
k-board tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twoshaft \
table.tsk-board tbody td,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-width:0;p\
adding:2px 0;text-align:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-board t\
body .tsk-best td{border:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twoshaft \
table.tsk-board tbody th{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) ": ";c\
olor:var(--ts-quiet)}.twoshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-board select{max-widt\
h:100%}}.twoshaft .ts-gate{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 calc(2 * var(--ts-grid));align-it\
ems:start;cursor:default;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none}.two\
shaft .ts-pulling,.twoshaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accent)}.t\
woshaft .ts-gate svg{user-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .ts-hap\
pened.ts-stopped,.twoshaft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;paddin\
g-left:calc(4 * var(--ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate .ts-scroll{margin:0;padding:0}\
.twoshaft .ts-gate .ts-prompt{margin-top:0}.twoshaft .ts-gate-work .ts-prompt{margin-block:0}.twoshaft .ts-gate-hint{max\
-width:none}.twoshaft .ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 12ch);\
font-weight:600}.twoshaft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3px}.tw\
oshaft .ts-lever .tsl-spot{fill:transparent;cursor:pointer}.twoshaft .ts-lever .tsl-spot:hover{fill:var(--ts-faint);stro\
ke:var(--ts-accent)}.twoshaft .ts-lever .tsl-knob{fill:var(--ts-accent);stroke:var(--ts-paper);stroke-width:2;cursor:gra\
b;touch-action:none}.twoshaft .ts-lever .tsl-in{text-decoration:underline;font-weight:800}.twoshaft .ts-gate-work{displa\
y:grid;grid-template-columns:minmax(0,3fr) minmax(0,2fr);gap:0 calc(3 * var(--ts-grid))}.twoshaft .ts-gate-work .ts-log{\
max-height:9rem}.twoshaft .ts-gate-work .ts-moves{display:grid;grid-template-columns:repeat(auto-fill,minmax(200px,1fr))\
}.twoshaft .ts-gate-work .ts-moves{gap:4px;margin-top:0}.twoshaft .ts-gate-work .ts-moves .ts-button{font-size:var(--ts-\
small);line-height:1.25}@media(max-width:900px){.twoshaft .ts-gate,.twoshaft .ts-gate-work{grid-template-columns:minmax(\
0,1fr)}}.twoshaft .tsw-train.ts-scroll.ts-fit svg{min-width:540px}.twoshaft .tsw-train svg{user-select:none}.twoshaft .t\
sw-counts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1fr));gap:4px var(--ts-grid);max-wid\
th:900px;margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-template-columns:68px minm\
ax(0,1fr);column-gap:var(--ts-grid);align-items:center;padding:2px 4px;border:1px solid var(--ts-line);border-radius:2px\
;text-align:left;font-size:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:1px 3\
px}.twoshaft .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-dial{\
grid-column:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:100%;height:auto;touc\
h-action:none;cursor:grab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var(--ts\
-faint);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-width:2}\
.twoshaft .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .tsw-ti\
ck{stroke:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:calc(15px \
* var(--ts-grown, 1)) var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{font-family:monospace;\
font-size:var(--ts-small);max-height:4.5em;overflow-y:auto}.twoshaft .tsw-figure{font-variant-numeric:tabular-nums}.twos\
haft .tsw-figure:empty{min-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsw-say{max-width:none}.twoshaft\
 .tsh-picture{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{display:block;width:100%;min-width:680p\
x;max-width:1100px;height:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaft .ts\
h-place:hover .tsh-hit{stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:hover .\
tsh-hit{stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);strok\
e-width:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:3px solid var(--ts-accent);padding\
-left:calc(1.5 * var(--ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twoshaft .\
tsh-verdict{margin-top:var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-sliders{dis\
play:grid;grid-template-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:var(--\
ts-grid) 0;max-width:960px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em minmax(6em,1fr) 4em;align-items:ce\
nter;gap:var(--ts-grid);min-height:28px}.twoshaft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;min-h\
eight:24px}.twoshaft .tsl-row .ts-box{justify-self:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;text-al\
ign:right}.twoshaft .tsl-drawing{overflow-x:auto}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:520px;max\
-width:820px;height:auto}.twoshaft .tsl-sum{font-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@media(max-width:4\
80px){.twoshaft .tsl-sliders{grid-template-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wrap:wrap;min-widt\
h:0}.twoshaft .tsl-row input{max-width:100%}}.twoshaft .tsp-section{flex:1 1 320px;overflow-x:auto}.twoshaft .tsp-gauge{\
width:190px;height:173px;flex:none}.twoshaft .tsp-section svg{display:block;max-width:100%;height:auto;min-width:320px}.\
twoshaft .ts-pair[hidden]{display:none}.twoshaft .ts-cells{position:absolute;pointer-events:none}.twoshaft .tsp-land.tsp\
-clear{fill:none}.twoshaft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-way{fill:none;s\
troke:var(--ts-bad);stroke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:var(--ts-ink);stroke:var(--ts-pap\
er);stroke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp-shut .tsp-chos\
en{display:none}.twoshaft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-grid));font-size:var(--ts-sma\
ll);min-height:1.6em}.twoshaft .ts-key{display:inline-flex;align-items:center;gap:4px}.twoshaft .ts-swatch{width:25px;he\
ight:15px;border:1px solid var(--ts-line)}.twoshaft-rig .ts-pad-tools .ts-box{max-width:15em}.twoshaft-rig .ts-beside .t\
s-facts{max-width:none}.twoshaft .ts-range{accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-clock{min-width:6\
em;font-weight:600}.twoshaft .ts-unit{overflow:auto;max-height:max(20rem,min(620px,100vh - 370px));border:1px solid var(\
--ts-line);margin:var(--ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:block;min-width:72\
0px;max-width:none;max-height:none;margin-inline:auto}.twoshaft .ts-apart .ts-unit svg{min-width:0;overflow:visible}.two\
shaft .ts-unit [data-part]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,.tsu-line){stro\
ke:var(--ts-accent);stroke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-unit [data-part]:hover path:not(.tsu-behind,.\
tsu-pitch,.tsu-line){stroke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible{outline:3px solid var(--ts-accent);outline\
-offset:-3px}.twoshaft .ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .ts-unit-words p\
{max-width:var(--ts-width)}.twoshaft.ts-together .tsu-number{display:none}.twoshaft .ts-unit :is(.tsu-axis,.tsu-number){\
pointer-events:none}.twoshaft .ts-apart{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-apart-too\
ls{flex:1 1 280px;max-width:380px}.twoshaft .ts-apart-tools .ts-slide>span{min-width:0}.twoshaft .ts-apart-tools .ts-sli\
d{min-width:6em}.twoshaft .ts-apart-picture{flex:3 1 600px;min-width:0}.twoshaft .ts-nextin{min-height:3em}.twoshaft .ts\
-apart-list{list-style:none;margin:0;padding:0 var(--ts-grid) 0 0;max-height:300px;overflow:auto;font-size:var(--ts-smal\
l)}.twoshaft .ts-apart-list li{padding:2px var(--ts-grid);border-left:4px solid transparent}.twoshaft .ts-apart-list .ts\
-current{border-left-color:var(--ts-accent);font-weight:600}@media(forced-colors:active){.twoshaft .ts-apart-list li:not\
(.ts-current){border-left-color:Canvas}}.twoshaft .ts-space{display:block;width:100%;height:clamp(260px,100vh - 290px,46\
0px);box-sizing:border-box;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:none}.twoshaft .ts-space\
:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-photographs{display:flex;flex-wrap:w\
rap;gap:var(--ts-grid)}.twoshaft .ts-photographs figure{flex:0 1 320px;margin:var(--ts-grid) 0}.twoshaft .ts-photographs\
 svg{display:block;width:100%;height:auto;max-height:220px}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sentences[hidden]{\
display:none}.twoshaft .ts-told{min-height:1.5em;max-height:6em;overflow-y:auto}.twoshaft .ts-build{display:grid;grid-te\
mplate:"tray unit" auto "hand unit" 1fr "end end" auto / minmax(20rem,1fr) minmax(0,738px);gap:var(--ts-grid) calc(2 * v\
ar(--ts-grid));align-items:start}.twoshaft .ts-build-left{grid-area:tray}.twoshaft .ts-build-hand{grid-area:hand;min-wid\
th:0}.twoshaft .ts-build-unit{grid-area:unit;min-width:0}.twoshaft .ts-build-face{grid-template:"tray hand" auto "end ha\
nd" 1fr / minmax(20rem,1fr) minmax(0,738px)}.twoshaft .ts-build-end{grid-area:end;margin:0}.twoshaft .ts-build-unit .ts-\
unit{max-height:max(15rem,min(560px,100vh - 475px));margin-block:4px}.twoshaft .ts-build-unit :is(.ts-unit-name,.ts-in-p\
icture){margin:0}.twoshaft .ts-buildlist{display:grid;gap:4px;max-height:9.5rem;overflow-y:auto;padding:4px}.twoshaft .t\
s-buildstep{display:flex;align-items:center;gap:var(--ts-grid);text-align:left;padding:1px var(--ts-grid);min-height:34p\
x}.twoshaft .ts-thumb{flex:0 0 44px;height:30px;display:grid;place-items:center;color:var(--ts-ink)}.twoshaft .ts-builds\
tep[aria-current] .ts-thumb{background:var(--ts-paper)}.twoshaft .ts-carry{cursor:grab;touch-action:none}.twoshaft .ts-i\
nhand{display:block;max-width:none;overflow:hidden;pointer-events:none}.twoshaft.ts-ghost{position:fixed;z-index:10000;t\
ransform:translate(-50%,-50%);opacity:.85;pointer-events:none}.twoshaft .ts-thumb path{vector-effect:non-scaling-stroke;\
stroke-width:1px}.twoshaft .ts-hand-row{display:flex;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-hand-row>:last-child{fle\
x:1;min-width:0}.twoshaft .ts-hand .ts-facts{grid-template-columns:fit-content(60%) minmax(0,1fr)}.twoshaft .ts-hand-row\
 .ts-facts{display:block}.twoshaft .ts-hand-row .ts-facts dt{margin-top:4px}.twoshaft .ts-hand-row .ts-hint{margin:0}.tw\
oshaft .ts-held-box{display:grid;gap:var(--ts-grid);align-content:start}.twoshaft .ts-held-box[hidden],.twoshaft .ts-hel\
d-box [hidden]{display:none}.twoshaft .ts-held-box>.ts-hint:empty{display:none}.twoshaft .ts-held-box>.ts-hint{max-width\
:126px}.twoshaft .ts-held-frame{display:grid;place-items:center;min-width:124px;min-height:88px;border:1px dashed var(--\
ts-line)}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var(--ts-line)}.twoshaft .ts-buildstep-waits{bo\
rder-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-current]{background:var(--t\
s-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand{border:1px solid var(--\
ts-line);padding:var(--ts-grid);max-height:max(13rem,min(24rem,100vh - 470px));overflow-y:auto}.twoshaft .ts-hand .ts-fi\
eld{border:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do{text-align:lef\
t;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid);font-size:var\
(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.twoshaft .ts-reco\
rd caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align:top;padding:3p\
x 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-record th[scope=row\
]{font-weight:400}.twoshaft .ts-record .ts-blank{min-width:12em;height:2em}@media(min-width:52rem){.twoshaft .ts-build-f\
ace .ts-build-unit{display:none}.twoshaft .ts-build-face .ts-hand{max-height:27rem}}@media(max-width:52rem){.twoshaft .t\
s-build,.twoshaft .ts-build-face{grid-template:"tray" "hand" "unit" "end" / minmax(0,1fr)}.twoshaft .ts-hand{max-height:\
none}.twoshaft .ts-hand .ts-facts{grid-template-columns:minmax(0,1fr)}}@media(forced-colors:active){.twoshaft-rig:not(.t\
s-begun,.ts-lost) .ts-first{outline:3px solid Highlight}.twoshaft .ts-button[aria-pressed=true],.twoshaft .ts-buildstep[\
aria-current],.twoshaft .ts-held{forced-color-adjust:none;background:Highlight;border-color:Highlight;color:HighlightTex\
t}.twoshaft :is(.ts-step,.ts-pathlist li):not(.ts-current,.ts-inblock){border-left-color:Canvas}.twoshaft :is(.ts-step,.\
ts-pathlist li).ts-current{border-left-color:Highlight}.twoshaft-notebook .jp-MarkdownCell .jp-RenderedMarkdown{border-c\
olor:Canvas}.twoshaft-bar .ts-tasks a:not([aria-current]){border-bottom-color:Canvas}}`,Cs="twoshaft-styles";function co(){
let t=document.getElementById(Cs);t?.textContent!==Ls&&(t?.remove(),document.head.append(s("style",{id:Cs},Ls)))}function et({
model:t,el:e},{kind:n,lost:r=()=>pe(e),line:o=()=>{}}){co(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);
let a=s("p",{class:"ts-alert",role:"alert"}),c=Ss(e),i=()=>e.classList.contains("ts-lost"),d=[],u=io(t,()=>{i()||(e.classList.
add("ts-lost"),c.down(),r())},h=>{i()||(h?c.down():c.up(),o(h))}),p=ao(e),f,g=(h,b)=>{t.on(h,b),d.push([h,b])};return g(
"msg:custom",h=>{h.type==="trouble"&&!i()&&(a.textContent=h.reason)}),{alert:a,follow:g,isLost:i,send(h){i()||(e.classList.
add("ts-begun"),t.send(h),clearTimeout(f),f=window.setTimeout(()=>t.send({type:"rest"}),oo))},asks(h,{first:b,begin:v,who:C="\
Practice. Nothing here is marked or saved."}={}){return b?.classList.add("ts-first"),s("div",{class:"ts-who"},s("p",{class:"\
ts-asks"},h),v?s("p",{class:"ts-begin"},`Begin: ${v}.`):"",C?s("p",{},C):"")},show:(...h)=>e.replaceChildren(...Wt(h)),close(){
c.up(),clearTimeout(f),p(),u();for(let[h,b]of d)t.off(h,b)}}}function Es({model:t,el:e}){let n=et({model:t,el:e},{kind:"rig",lost:()=>d.setDisabled(!0)}),r=s("p",{class:"ts-finding",
role:"status"}),o=s("p",{class:"ts-cost"}),a=t.get("start"),c=null,i=p=>{c=ct("order"),n.send({type:"order",order:p,turn:c})},
d=xe({label:"Order of work, practice",steps:t.get("steps"),order:t.get("judged").order,onChange:i}),l=s("button",{type:"\
button",class:"ts-button",onclick:()=>d.change([...a],"The first order stands again")},"Start again");d.tools.append(l),
n.show(n.asks("Which steps stand in a wrong place?",{first:d.tools,begin:"choose a step and move it up or down"}),n.alert,
Bt([d.element],[r,o]));function u(){let p=t.get("judged");c!==null&&p.turn!==c||(c=null,r.textContent=p.finding,o.textContent=
p.cost,d.setOrder(p.order),d.setNotes(p.notes))}return n.follow("change:judged",u),u(),n.close}function se(t){let e=t.get("pictured"),n=s("div",{class:"ts-photographs"}),r="",o=a=>{a.type!=="photographs"||`${a.of}:${a.
id}`!==r||n.replaceChildren(...a.shown.map(({svg:c,alt:i})=>{let d=s("figure",{});return d.innerHTML=c,d.append(s("figca\
ption",{},`From your college: ${i}`)),d}))};return t.on("msg:custom",o),{node:n,any:a=>e[a].length>0,show(a,c){let i=c.find(
l=>e[a].includes(l)),d=i===void 0?"":`${a}:${i}`;d!==r&&(r=d,n.replaceChildren(),i!==void 0&&t.send({type:"photographs",
of:a,id:i}))},close:()=>t.off("msg:custom",o)}}var lo=["lit","bench","absent","put"],As=[1,1.5,2,3,4.5];function Kt({svg:t,parts:e,words:n},{name:r="The unit in sectio\
n",tallest:o,onChoose:a=()=>{}}={}){let c=s("div",{class:"ts-unit",tabindex:"0",role:"application","aria-label":`${r}. L\
eft and right arrows walk from part to part, up and down to the part above or below, plus and minus zoom.`});c.innerHTML=
t;let i=c.querySelector("svg"),d=i.querySelector(".tsu-marks");i.setAttribute("aria-hidden","true"),i.removeAttribute("r\
ole");let l=new Map(e.map(([S])=>[S,[]]));for(let S of Z(i,"[data-part]"))l.get(String(S.dataset.part))?.push(S);let u=new Map(
e.map(([S],w)=>[S,w])),p=s("p",{class:"ts-hint ts-unit-name",role:"status"}),f=Ot({"aria-label":"Part",class:"ts-box ts-\
before"},[["","no part chosen"],...e.map(([S,w])=>[S,w])]),{width:g,height:h}=i.viewBox.baseVal,b=o?`min(100%, ${Math.round(
o*g/h)}px)`:"100%",v=new WeakMap,C=-1,T=0,$={},D=S=>{let w=$[S];return w==="absent"?" Not there yet.":w==="bench"?" On t\
he bench.":w==="lit"?" In hand.":""},y=S=>`${e[S][1]}. ${e[S][2]}${D(e[S][0])}`;function I(S){for(let B of Z(i,".tsu-cho\
sen"))B.classList.remove("tsu-chosen");C=S;let w=S<0?"":e[S][0];f.value=w,p.textContent=S<0?W:y(S);for(let B of l.get(w)??
[])B.classList.add("tsu-chosen");S>=0&&m(w),a(w)}function L(S){let w=Z(d,`[data-part="${S}"]`),B=[...l.get(S)??[],...w].
map(H=>{let{x:G,y:q,width:rt,height:st}=H.getBBox(),[lt,St]=v.get(H)??[0,0];return{x:G+lt,y:q+St,width:rt,height:st}}),_=Math.
min(...B.map(H=>H.x)),U=Math.max(...B.map(H=>H.x+H.width)),it=Math.min(...B.map(H=>H.y)),mt=Math.max(...B.map(H=>H.y+H.height));
return{x:(_+U)/2,y:(it+mt)/2}}let m=S=>x(L(S));function x(S){let w=i.getBoundingClientRect().width/i.viewBox.baseVal.width,
[B,_]=[S.x*w,S.y*w],{scrollLeft:U,scrollTop:it,clientWidth:mt,clientHeight:H}=c;(B<U+40||B>U+mt-40)&&(c.scrollLeft=B-mt/
2),(_<it+40||_>it+H-40)&&(c.scrollTop=_-H/2)}function k(S){T=Math.max(0,Math.min(As.length-1,T+S)),i.style.width=`calc(${As[T]}\
 * ${b})`,i.style.height="auto",C>=0&&m(e[C][0])}function M(S){let w=L(e[C][0]),[B]=e.map(([_],U)=>({k:U,at:L(_)})).filter(
({k:_,at:U})=>_!==C&&(U.y-w.y)*S>4).sort((_,U)=>Ms(_.at,w)-Ms(U.at,w));B&&I(B.k)}c.addEventListener("keydown",S=>{if(Tt(
S))return;let w=e.length-1;if(S.key==="ArrowRight")I(C>=w?0:C+1);else if(S.key==="ArrowLeft")I(C<=0?w:C-1);else if(S.key===
"ArrowUp"||S.key==="ArrowDown")C<0?I(0):M(S.key==="ArrowUp"?-1:1);else if(S.key==="Home")I(0);else if(S.key==="End")I(w);else if(S.
key==="+"||S.key==="=")k(1);else if(S.key==="-")k(-1);else if(S.key==="Escape")I(-1);else return;S.preventDefault()}),c.
addEventListener("click",S=>{let w=Et(S,"[data-part]")?.dataset.part;I(w===void 0?-1:u.get(w)??-1)}),c.addEventListener(
"pointerover",S=>{let w=Et(S,"[data-part]")?.dataset.part;if(w===void 0||S.pointerType!=="mouse")return;let B=Et(S,"[dat\
a-solid]")?.querySelector("title")?.textContent,_=e[u.get(w)??0][1];N.textContent=B&&!_.endsWith(B)?`${B} (${_})`:_}),c.
addEventListener("pointerleave",()=>{N.textContent=""}),f.addEventListener("change",()=>I(u.get(f.value)??-1));let N=s("\
span",{class:"ts-unit-over","aria-hidden":"true"}),W="Point at a part, tap it, or choose it here to read its name.";p.textContent=
W;let V=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",f),nt("−",()=>k(-1),"Smaller"),nt("+",()=>k(1),"\
Larger"),N),P=s("details",{class:"ts-unit-words"},s("summary",{},"What is where, in words"),s("p",{},n));return k(0),{nodes:[
V,p,c,P],choose:f,drawing:i,frame:c,look(S){l.get(S)?.length&&m(S)},moveTo:x,shift(S,[w,B]){v.set(S,[w,B]),S.setAttribute(
"transform",`translate(${w.toFixed(1)} ${B.toFixed(1)})`)},show(S){$=S.looks;for(let[w,B]of l)for(let _ of B)for(let U of lo)
_.classList.toggle(`tsu-${U}`,$[w]===U);d.innerHTML=S.marks,C>=0&&(p.textContent=y(C))}}}function Ms(t,e){return Math.abs(
t.y-e.y)+2*Math.abs(t.x-e.x)}function Os(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function Ts({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=se(t),c=Kt(t.get("pi\
cture")),i=s("p",{class:"ts-hint",role:"status"}),d=s("dl",{class:"ts-facts"}),l=s("div",{class:"ts-ready"}),u=s("select",
{class:"ts-box ts-before","aria-label":"A step that is not ready"}),p=s("input",{type:"text",inputmode:"numeric",size:"3",
class:"ts-box","aria-label":"Go to place",onkeydown:m=>{m.key==="Enter"&&D()}}),f=s("span"),g=m=>I.send({type:"move",by:m}),
h=m=>I.send({type:"go",position:m}),b=nt("Back",()=>g(-1),"One step back"),v=nt("Next",()=>g(1),"Next step"),C=nt("Start",
()=>h(0),"Start with an empty bench"),T=nt("End",()=>h(t.get("view").count),"End of the order"),$=nt("Try it",()=>I.send(
{type:"take",step:u.value}),"Try it: the step chosen here"),D=()=>{let m=Number.parseInt(p.value,10);m>=0&&h(m)},y=s("di\
v",{class:"ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},C,b,v,T,s("span",
{class:"ts-pair"},"place ",p,f,nt("Go",D,"Go to this place")));y.addEventListener("keydown",m=>{if(!(m.target===p||Tt(m))){
if(m.key==="ArrowLeft")g(-1);else if(m.key==="ArrowRight")g(1);else if(m.key==="Home")h(0);else if(m.key==="End")h(t.get(
"view").count);else return;m.preventDefault()}});let I=et({model:t,el:e},{kind:"rig"});I.show(I.asks("What comes next, a\
nd what can no longer be reached?",{first:v,begin:"press Next"}),I.alert,n,y,Bt(c.nodes,[r,i,d,o,a.node,s("p",{class:"ts\
-prompt"},"Do another step next"),l,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",u,
$))]));function L(){let m=t.get("view");n.textContent=m.finding,r.textContent=m.happened,o.textContent=m.next?`Next in t\
his order: ${m.next}`:"This is the end of the order.",i.textContent=m.build.words,a.show("operation",m.in_hand),c.show(m.
build),d.replaceChildren(...Rt(m.facts));let x=l.contains(document.activeElement);l.replaceChildren(...m.ready.map(([N,W])=>nt(
W,()=>I.send({type:"take",step:N})))),m.ready.length||l.append(s("p",{class:"ts-hint"},"No step is ready.")),x&&(l.querySelector(
"button")??v).focus(),u.replaceChildren(...At(m.waiting)),u.disabled=$.disabled=!m.waiting.length,p.value=String(m.position),
f.textContent=` of ${m.count} `;let k=m.position===0,M=m.position===m.count;for(let N of[b,C])Os(N,k);for(let N of[v,T])
Os(N,M)}return I.follow("change:view",L),L(),()=>{a.close(),I.close()}}function ne(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=ct("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var ft=(t,e,n,r,o)=>R("line",{x1:t,y1:e,x2:n,y2:r,class:o}),gt=(t,e,n,r="middle")=>R("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function oe(){let t=R("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(R("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(ft(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(gt(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(R("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(ft(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*
Math.cos(o),"tsg-mark"))}let e=ft(100,134,100,119,"tsg-small"),n=R("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(e,n,R("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("tra\
nsform",`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${o}`)}}}function Is({top:t,mark:e,perFigure:n}){let r=R("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),o=c=>30+c/t*540;r.append(R("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*e<=t+1e-9;c+=1){let i=c%n===0;r.append(ft(o(c*e),22,o(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.
append(gt(o(c*e),84,String(Math.round(c*e))))}let a=R("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(
a,gt(586,14,"newtons","end")),{node:r,top:t,set(c,i){a.setAttribute("transform",`translate(${o(Math.min(c,t))} 0)`),r.setAttribute(
"aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function Ns({low:t,high:e,reach:n}){let r=R("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(R("rect",{x:o(t),y:34,width:o(
e)-o(t),height:24,class:"tsg-target"}),gt((o(t)+o(e))/2,84,"target"),ft(20,46,700,46,"tsg-mark"),ft(360,26,360,66,"tsg-m\
ark tsg-long"),gt(20,20,"end play","start"),gt(700,20,"preload","end"),gt(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let d of[
i,-i])r.append(ft(o(d),42,o(d),50,"tsg-mark"));r.append(gt(o(-n),70,`${n.toFixed(2)} mm`,"start"),gt(o(n),70,`${n.toFixed(
2)} mm`,"end"));let a=R("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=R("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return r.append(a,c),{node:r,set(i,d,l){a.setAttribute("transform",`translate(${o(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${o(d)} 0)`),r.setAttribute("aria-label",l)}}}function $t(t,{min:e,max:n,step:r,value:o,words:a,onInput:c}){let i=s(
"input",{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),d=s("output",{class:"ts-slid"},a(o));
return i.addEventListener("input",()=>{let l=a(Number(i.value));d.textContent=l,i.setAttribute("aria-valuetext",l),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,d),set(l){i.value=
String(l),d.textContent=a(l)}}}function yt(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},
...e.map(([a,c])=>s("option",{value:a,selected:a===n},c)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function Bs({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),d=s("u\
l",{class:"ts-sentences"}),l=ne((m,x)=>y.send({type:"set",state:m,turn:x})),u=m=>{r={...r,...m},l.ask(r)},p=R("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),f=ft(0,0,0,0,"tsg-mark tsg-long"),g=gt(0,0,""),[h,
b]=n.readingsOnly?[72,48]:[96,120],v=h/(n.readingsOnly?r.radius:n.radii[1]),C=R("svg",{viewBox:`0 0 ${2*h+b} ${2*h+30}`,
width:2*h+b,height:2*h+30,class:"tsg-drum",role:"img"}),T=h+4;p.setAttribute("transform",`translate(${T} ${T})`),C.append(
p,f,ft(4,T,2*h+4,T,"tsg-centre"),ft(T,4,T,2*h+4,"tsg-centre"),R("circle",{cx:T,cy:T,r:10,class:"tsg-face"}),g);let $=K("\
Turn the shaft ten times",()=>u({turns:r.turns+10})),D=[s("div",{class:"ts-tools"},$)];if(!n.readingsOnly){let m=n.kinds,
x=m.map(([k,M])=>s("label",{class:"ts-option"},s("input",{type:"checkbox",checked:r.kinds.includes(k),onchange:N=>u({kinds:m.
map(([W])=>W).filter(W=>W===k?N.target.checked:r.kinds.includes(W))})}),`with ${M}`));D[0].append(K("Fit the rings anew",
()=>u({turns:0}))),x.length&&D.push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the b\
earings"),...x)),D.push($t("Setting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:k=>u({setting:k}),words:k=>k<
0?`${(-k).toFixed(3)} mm of end play`:`${k.toFixed(3)} mm of preload`}).row,$t("Radius of the drum",{min:n.radii[0],max:n.
radii[1],step:1,value:r.radius,onInput:k=>u({radius:k}),words:k=>`${k} mm`}).row)}let y=et({model:t,el:e},{kind:"rig"});
y.show(y.asks("How hard does the shaft turn?",{first:$,begin:"turn the shaft",who:n.readingsOnly?"Take your reading here\
; write it in the form.":void 0}),y.alert,s("div",{class:"tsg-beside"},C,s("div",{class:"tsg-side"},a,c)),...D,i,d);function I(){
let m=t.get("shown");l.waiting||(r=m.state);let x=v*m.state.radius;Ht(p,{r:x}),Ht(f,{x1:T,y1:T-x,x2:2*h+b,y2:T-x}),Ht(g,
{x:T,y:2*h+22}),g.textContent=`drum, radius ${m.state.radius} mm`,C.setAttribute("aria-label",`A drum of ${m.state.radius}\
 mm radius on the shaft; the cord leaves it at its edge towards the scale.`),o?.top!==m.scale.top&&(o=Is(m.scale),a.replaceChildren(
o.node),c.textContent=`Spring scale to ${m.scale.top} N, one mark ${m.scale.mark} N.`),o?.set(m.pull,m.pullWords),i.textContent=
m.finding,d.replaceChildren(...Ut(m.words)),l.answered(m.turn)}let L=()=>l.free();return y.follow("change:shown",I),y.follow(
"msg:custom",L),I(),y.close}function Dt({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=ne((p,f)=>c.send({type:"set",state:p,turn:f})),
c=et({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),d=n(r,p=>{o={...o,...p},a.ask(o)},o),l=r.readingsOnly?
"Take your readings here; write them in the form.":void 0;c.show(c.asks(d.asks,{first:d.first,begin:d.begin,who:l}),c.alert,
...d.side?[Bt([d.picture],[...d.controls,i])]:[s("div",{class:"tsg-wide"},d.picture),...d.controls,i]);function u(){let p=t.
get("shown");a.waiting||(o=p.state),d.set(p,o),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",
u),c.follow("msg:custom",a.free),u(),c.close}var Nt=(...t)=>s("div",{class:"ts-tools"},...t);var uo={x:44,y:84,perMm:34};function po(t){let e=R("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=uo,a=R("g",{}),c=R("g",{});e.append(R("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),R("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,c,gt(12,14,"main scale, mm","start"),gt(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let d=n+i*t.space*o;c.append(
ft(d,r,d,r+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(gt(d,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let d=Math.
max(0,Math.ceil(i.mm-1));d<=t.top+25;d+=1){let l=n+(d-i.mm)*o;l<4||l>756||(a.append(ft(l,r,l,r-(d%10===0?34:d%5===0?28:20),
"tsi-fine")),d%5===0&&a.append(gt(l,r-40,String(d))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function Ds(t){
return Dt(t,(e,n,r)=>{let o=po(e),a=$t("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:l=>n(
{rod:l})}),c=yt("Foot",e.places,r.place,l=>n({place:l,rod:0})),i=K("Push the rod down until it rests",()=>n({rod:e.top})),
d=yt("Look",e.eyes,r.eye,l=>n({eye:l}));return{asks:"How deep does it lie?",first:i,begin:"push the rod down",picture:o.
node,controls:[Nt(c.row,d.row),Nt(i,K("Lift the rod",()=>n({rod:0}))),a.row],set(l,u){o.set(l),c.box.value=u.place,d.box.
value=u.eye,a.box.value=u.rod}}})}function ae(t,e){let n=e>1?.65/(e-1):0;return Array.from({length:e},(r,o)=>{let a=e>1?o*n:0,c=e>1?.35:1;return 1-Math.max(
0,Math.min(1,(t-a)/c))})}function Ps(t,e,n,r){let[o,a]=[0,0];for(let c=n;c!==null;c=t[c].parent){let[i,d]=t[c].own[r]??[
0,0];o+=i*e[c],a+=d*e[c]}return[o,a]}function ze(t){let e=t.findIndex(n=>n>0);return{placed:t.filter(n=>n===0).length,next:e<
0?null:e}}function Rs(t,e){return t<=0?0:t>=e||e<2?1:.35+(t-1)*(1-.35)/(e-1)}function js(t,e,n){let r=[0,0,0];for(let o=n;o!==
null;o=t[o].parent){let a=e[o];for(let[c,i]of t[o].own.entries())r[c]+=i*a}return r}function Ge(t,e){globalThis.twoshaftChunks??=new Map;let n=globalThis.twoshaftChunks,r=n.get(e)??fo(t,e);return n.set(e,
r),r.catch(()=>n.delete(e)),r}function fo(t,e){return new Promise(n=>{let r=(o,a)=>{if(o.type!=="chunk"||o.name!==e)return;
t.off("msg:custom",r);let c=URL.createObjectURL(new Blob([a[0]],{type:"text/javascript"})),i=import(c);i.finally(()=>URL.
revokeObjectURL(c)).catch(()=>{}),n(i)};t.on("msg:custom",r),t.send({type:"chunk",name:e})})}var Ce=.12,Yt=1.15,Hs="This browser draws nothing in three dimensions. The section shows the same parts.",Ee;function _s(){
if(Ee!==void 0)return Ee;let t=document.createElement("canvas").getContext("webgl2");return t?.getExtension("WEBGL_lose_\
context")?.loseContext(),Ee=!!t,Ee}function Fs(t){_s()&&Ge(t,"solids").catch(()=>{})}function Ae(t,e){let n=s("span",{style:`\
color: ${e}; forced-color-adjust: none`});t.append(n);let r=s("canvas",{width:1,height:1}).getContext("2d");r.fillStyle=
getComputedStyle(n).color,n.remove(),r.fillRect(0,0,1,1);let[o,a,c]=r.getImageData(0,0,1,1).data;return{text:`rgb(${o}, ${a}\
, ${c})`,light:(o+a+c)/765}}var Ye=window.matchMedia("(forced-colors: active)");function Ws(t){let[e,n,r]=Ye.matches?["C\
anvasText","Canvas","Highlight"]:["var(--ts-ink)","var(--ts-paper)","var(--ts-accent)"],o=Ae(t,n),a=o.light>.5?18:40;return{
ink:Ae(t,e).text,paper:o.text,accent:Ae(t,r).text,metal:Ae(t,`color-mix(in srgb, ${e} ${a}%, ${n})`).text}}function Us(t,e,n){
let r=s("p",{class:"ts-hint ts-unit-name",role:"status"});if(!_s())return r.textContent=Hs,{drawn:!1,nodes:[r],move(){},
ready(){},close(){}};let o=s("canvas",{class:"ts-space",tabindex:"0",role:"application","aria-label":"The parts in three\
 dimensions. Arrow keys turn, plus and minus zoom, Home looks as at first, H hides the chosen part, A shows all. The sec\
tion shows the same parts with their names."}),a=Ot({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],
...n.map(([y,I])=>[y,I])]),c=new Set,i,d=()=>[0,0,0],l=()=>{},u="Drag or use the arrow keys to turn. Tap a part, or choo\
se it here, to read its name.";r.textContent="Drawing …";function p(){let y=n.find(([L])=>L===a.value),I=c.has(a.value)?
" Hidden.":"";r.textContent=y?`${y[1]}. ${y[2]}${I}`:u,i?.look(a.value,c)}function f(){a.value&&(c.delete(a.value)||c.add(
a.value),p())}function g(){c.clear(),p()}a.addEventListener("change",p);let h={ArrowLeft:()=>i?.turnBy(-Ce,0),ArrowRight:()=>i?.
turnBy(Ce,0),ArrowUp:()=>i?.turnBy(0,Ce),ArrowDown:()=>i?.turnBy(0,-Ce),"+":()=>i?.zoomBy(Yt),"=":()=>i?.zoomBy(Yt),"-":()=>i?.
zoomBy(1/Yt),Home:()=>i?.home(),h:f,a:g};o.addEventListener("keydown",y=>{let I=h[y.key]??h[y.key.toLowerCase()];!I||Tt(
y)||(I(),y.preventDefault())});let b=null;o.addEventListener("pointerdown",y=>{b={x:y.clientX,y:y.clientY,far:!1},o.setPointerCapture(
y.pointerId)}),o.addEventListener("pointermove",y=>{if(!b)return;let[I,L]=[y.clientX-b.x,y.clientY-b.y];!b.far&&Math.hypot(
I,L)<4||(b={x:y.clientX,y:y.clientY,far:!0},i?.turnBy(-I/150,L/150))}),o.addEventListener("pointerup",y=>{if(b&&!b.far){
let{left:I,top:L,width:m,height:x}=o.getBoundingClientRect(),[k,M]=[(y.clientX-I)/m,(y.clientY-L)/x];a.value=i?.partAt(2*
k-1,1-2*M)??"",p()}b=null}),o.addEventListener("wheel",y=>{document.activeElement===o&&(i?.zoomBy(y.deltaY<0?Yt:1/Yt),y.
preventDefault())},{passive:!1});let v=()=>{i?.recolour(Ws(o.parentElement??document.body)),p()},C=new MutationObserver(
v),T=new ResizeObserver(()=>i?.paint()),$=!1;return Ge(t,"solids").then(({solidsView:y})=>{$||(i=y(o,e,Ws(o.parentElement??
document.body)),i.move(d),i.fit(),l(),i.home(),i.paint(),T.observe(o),C.observe(document.body,{attributes:!0}),Ye.addEventListener(
"change",v),p(),o.dataset.painted="true")},()=>{r.textContent=Hs}),{drawn:!0,nodes:[s("div",{class:"ts-tools"},s("span",
{class:"ts-pair"},"Part ",a),nt("Hide or show",f,"Hide or show the chosen part"),nt("Show all",g,"Show all parts"),nt("−",
()=>i?.zoomBy(1/Yt),"Smaller"),nt("+",()=>i?.zoomBy(Yt),"Larger")),r,o],move(y){d=y,i?.move(y)},ready(y){l=y},close(){$=
!0,T.disconnect(),C.disconnect(),Ye.removeEventListener("change",v),i?.close()}}}var Me=200,ho=580,go="2.6";function qs({model:t,el:e}){let n=s("p",{class:"ts-finding"}),r=s("p",{class:"ts-hint ts-next\
in",role:"status"}),o=s("div",{class:"ts-apart-picture"}),a=s("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"Wha\
t goes in"}),c=t.get("stages"),i=yt("Show",c,t.get("stage"),m=>L.send({type:"stage",stage:m})),d=$t("From apart to toget\
her",{min:0,max:Me,step:1,value:0,words:m=>m<=0?"apart":m>=Me?"together":"on the way",onInput:m=>$(m/Me)}),l=t.get("pict\
ure"),u,p=[],f=[],g=0,h=!1,b,v=nt("In three dimensions",()=>{h=!h,v.setAttribute("aria-pressed",String(h)),y()});v.setAttribute(
"aria-pressed","false");function C(m){d.set(Math.round(m*Me)),$(m)}function T(m){let{placed:x}=ze(ae(g,l.movers.length));
C(Rs(x+m,l.movers.length))}function $(m){if(g=m,!u)return;let x=ae(g,l.movers.length);for(let{group:W,mover:V,view:P}of p)
u.shift(W,Ps(l.movers,x,V,P));D(x);for(let W of f)W.style.opacity=String(1-g);e.classList.toggle("ts-together",g>.5);let{
placed:k,next:M}=ze(x),N=`${k} of ${x.length} in place.`;for(let[W,V]of[...a.children].entries())V.classList.toggle("ts-\
current",W===M);r.textContent=M===null?"All in place.":`${N} Next in: ${l.movers[M].words}.`}function D(m){let{movers:x}=t.
get("space");b?.move(k=>js(x,m,k))}function y(){if(b?.close(),b=void 0,!!u&&(o.replaceChildren(...h?[]:u.nodes),!!h)){if(t.
get("space").stage!==t.get("stage")){Fs(t),L.send({type:"space"});return}b=Us(t,t.get("space"),l.parts),D(ae(0,l.movers.
length)),o.replaceChildren(...b.nodes,...b.drawn?[]:u.nodes),b.ready(()=>D(ae(g,l.movers.length)))}}function I(){if(l=t.
get("picture"),n.textContent=t.get("finding"),i.box.value=t.get("stage"),u=void 0,o.replaceChildren(),!l.svg)return;u=Kt(
l,{name:"Parts apart",tallest:ho}),u.drawing.dataset.grow=go,p=Z(u.drawing,"[data-move]").map(x=>({group:x,mover:Number(
x.dataset.move),view:String(x.dataset.view)})),f=Z(u.drawing,".tsu-traces"),a.replaceChildren(...l.movers.map(({words:x})=>s(
"li",{},x))),y(),$(g)}let L=et({model:t,el:e},{kind:"rig"});return L.show(L.asks("How do these parts go together?",{first:d.
box,begin:"move the slider",who:""}),L.alert,n,s("div",{class:"ts-apart"},s("div",{class:"ts-apart-tools"},i.row,d.row,s(
"div",{class:"ts-tools"},nt("One in",()=>T(1),"One part more in place"),nt("One out",()=>T(-1),"One part less in place")),
v,r,a),o)),L.follow("change:picture",I),L.follow("change:space",y),I(),()=>{b?.close(),L.close()}}function Ks({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=s("div",{class:"tsj-bars"}),i=Z(a,"[data-bolt]"),d=ct("torq\
ue"),l=s("input",{id:d,type:"range",min:10,max:100,step:5,oninput:()=>f()});l.value="100";let u=s("output",{class:"tsj-f\
igure",for:d}),p=()=>l.value==="100"?n.torque:Number((Math.round(n.torque*Number(l.value)/100/n.step)*n.step).toFixed(3));
function f(){u.textContent=`${p()} N·m`,l.setAttribute("aria-valuetext",`${p()} newton metres, ${l.value} percent of th\
e torque`)}let g=m=>$.send({type:"pull",bolt:m,torque:p()}),h=K("Take back",()=>$.send({type:"undo"})),b=K("Wait until t\
he film has run out",()=>$.send({type:"wait"})),v=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>$.send({type:"set",film:Number(v.value)})},...n.films.map(m=>s("option",{value:m},m?`${m} µm thick`:"none"))),
C=s("input",{type:"checkbox",onchange:()=>$.send({type:"set",scattered:C.checked})});a.addEventListener("click",m=>{let x=Et(
m,"[data-bolt]");x&&(T(x),g(Number(x.dataset.bolt)))});let T=m=>{for(let x of i)x.setAttribute("tabindex",x===m?"0":"-1");
m.focus({preventScroll:!0})};a.addEventListener("keydown",m=>{let x=Et(m,"[data-bolt]");if(!x||m.ctrlKey||m.metaKey||m.altKey)
return;let k=Number(x.dataset.bolt),M={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[m.key];if(M)T(i[(k+M+i.length)%
i.length]);else if(m.key==="Home")T(i[0]);else if(m.key==="End")T(i[i.length-1]);else if(m.key==="Enter"||m.key===" ")m.
repeat||g(k);else return;m.preventDefault()});let $=et({model:t,el:e},{kind:"rig"}),D=K("Start all by hand",()=>$.send({
type:"start"})),y=s("div",{class:"ts-tools",role:"group","aria-label":"Bolts"},D,...n.rounds.map(([m,x])=>K(`One round ${x}`,
()=>$.send({type:"round",pattern:m,torque:p()}))),h,K("Start again",()=>$.send({type:"again"}))),I=s("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:d},"Wrench set to"),l,u));n.films.length&&
I.append(s("label",{class:"ts-pair"},"Wet sealant",v),b,s("label",{class:"tsj-check"},C,"friction scatters from bolt to \
bolt")),$.show($.asks("Does every bolt keep its clamp?",{first:D,begin:"start all bolts by hand",who:n.readingsOnly?"Not\
hing is saved here; your answers stand in the form.":void 0}),$.alert,r,I,y,o,s("div",{class:"tsj-bench"},a,c),s("detail\
s",{class:"ts-keys"},s("summary",{},"How, and keys"),"The first choice of a bolt starts it by hand, the next ones pull i\
t. Arrows go from bolt to bolt, Enter pulls."));function L(){let m=t.get("view");r.textContent=m.finding,o.textContent=m.
happened,c.innerHTML=m.bars;for(let[x,k]of i.entries()){let M=m.tight[x]?`${m.clamps[x]} kN`:m.started[x]?"started by ha\
nd":"not started";k.setAttribute("aria-label",`Bolt ${x+1} of ${n.count}, ${M}`),k.classList.toggle("tsj-tight",m.tight[x]),
k.classList.toggle("tsj-started",m.started[x])}h.disabled=!m.pulls,b.disabled=!m.standing,v.value=String(m.film),C.checked=
m.scattered}return $.follow("change:view",L),f(),L(),$.close}var zs="tsk-number";function Ft(t,e,...n){return s("td",{class:e?zs:null,"data-label":t||null,role:"cell"},...n)}function Oe(t,e,n){
let r=e.map(([c,i])=>s("th",{scope:"col",role:"columnheader",class:i?zs:null},c)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function Gs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),c=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),d=new Map;for(let[f,
g,h,b]of n.checks){let v=s("select",{class:"ts-box","aria-label":`What it showed: ${g}`,onchange:()=>u.send({type:"obser\
ve",check:f,shown:v.value})},s("option",{value:""},"Not made"),...At(b)),C=Ft("worth, bit",!0),T=Ft("bit a minute",!0),$=s(
"tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},g),Ft("min",!0,`${h}`),Ft("it showed",!1,v),C,T);d.set(f,{box:v,
tells:C,rate:T,row:$}),i.append($)}let l=s("button",{class:"ts-button",type:"button",onclick:()=>u.send({type:"clear"})},
"Take all observations back"),u=et({model:t,el:e},{kind:"rig"});u.show(u.asks("Which fault is it, and which check comes \
next?",{first:d.values().next().value?.box,begin:"say what a check showed"}),u.alert,r,a,c,Oe("Checks: what each showed,\
 and what it is still worth",[["Check"],["min",!0],["It showed"],["worth, bit",!0],["bit a minute",!0]],i),s("div",{class:"\
ts-tools"},l,o));function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.spent,c.textContent=f.more,a.replaceChildren(
...Ut(f.left.map(([b,v])=>`${b} (${v})`)));let g=f.ranked,h=new Map(g.map(([b,v,C],T)=>[b,{bits:v,rate:C,rank:T}]));for(let[
b,{box:v,tells:C,rate:T,row:$}]of d){let D=f.observed[b],y=h.get(b);v.value=D??"",C.textContent=y?y.bits:D!==void 0?"mad\
e":"nothing",T.textContent=y?y.rate+(y.rank===0?" ◀ best next":""):"–",$.classList.toggle("tsk-best",y?.rank===0)}}return u.
follow("change:view",p),p(),u.close}function Ys(t,{move:e,hand:n}){let{element:r,at:o}=Se(t),a=Object.entries(t.aims).filter(([d])=>d.startsWith("at:")),c=(d,l)=>{
let[u,p]=o(d,l);return R("circle",{cx:u,cy:p,r:16,class:"tsl-spot",...{"data-travel":d,"data-turn":l}})},i=R("g",{class:"\
tsl-knob"},R("circle",{r:12}));return r.append(...a.map(([,[d]])=>c(Number(d),0)),...t.gears.map(([,d,l])=>c(d,l)),i),r.
classList.add("ts-lever"),r.addEventListener("click",d=>{let l=Et(d,".tsl-spot");if(!l)return;let u=[Number(l.dataset.travel),
Number(l.dataset.turn)];for(let p of bs(t.aims,n(),u))e(p)}),{element:r,scale:[re,$e],show([d,l],u){let[p,f]=o(d,l);i.setAttribute(
"transform",`translate(${p.toFixed(1)} ${f.toFixed(1)})`);for(let g of Z(r,"[data-gear]"))g.classList.toggle("tsl-in",u.
includes(String(g.dataset.gear)))}}}function Vs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit"}),a=Ys(t.get("plan"),{move:x=>C({type:"move",code:x}),hand:()=>t.get("view").hand}),
c=s("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=s("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...At(t.get("builds"))),d=nt("Start again",()=>C({type:"reset"})),l=s("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([x,k])=>nt(k,()=>C({type:"move",code:x})))),
u=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),p=s("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),f=s("p",{class:"ts-proof",role:"status"}),g=nt("What does a full hand test find?",()=>{
g.disabled=!0,f.textContent="testing",C({type:"prove"})}),h=et({model:t,el:e},{kind:"rig"});c.append(s("div",{},s("p",{class:"\
ts-prompt"},"The lever"),a.element),o),h.show(h.asks("Which gears can the lever reach?",{first:a.element,begin:"press a \
place in the gate"}),h.alert,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Put together: ",i),d,g),n,c,r,f,s("p",
{class:"ts-hint ts-gate-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down tu\
rn. Or in words:"),s("div",{class:"ts-gate-work"},l,s("div",{},s("p",{class:"ts-prompt"},"Tried by hand"),p,u)));let b=0,
v="";function C(x){b+=1,h.send({...x,turn:b})}function T(){let x=t.get("view");if(v!==t.get("figure")){v=t.get("figure"),
o.innerHTML=v;let k=Jt(o,"svg");k.removeAttribute("role"),k.setAttribute("aria-hidden","true")}for(let k of Z(o,"[data-b\
ody]")){let[M,N]=x.moved[String(k.dataset.rides??k.dataset.body)]??[0,0];k.setAttribute("transform",`translate(${M.toFixed(
2)} ${N.toFixed(2)})`)}for(let k of Z(o,"[data-gear]"))k.classList.toggle("tsg-in",x.gears.includes(k.dataset.gear));for(let k of Z(
o,"[data-lifts]"))k.classList.toggle("tsg-up",x.lifted);a.show(x.hand,x.gears),c.dataset.turn=String(x.turn),n.textContent=
`${x.gears.length>1?"■ ":x.gears.length?"● ":"○ "}${x.title}.`,r.textContent=x.happened,r.classList.toggle("ts-sto\
pped",/topped by/.test(x.happened)),(u.childElementCount!==x.log.length||u.lastElementChild?.textContent!==x.log.at(-1))&&
(u.replaceChildren(...x.log.map(k=>s("li",{class:/topped by/.test(k)?"ts-stopped":""},k))),u.scrollTop=u.scrollHeight),p.
hidden=x.log.length>0,i.value=x.build,f.textContent=x.proof,g.disabled=!1,y=!1,m()}c.addEventListener("keydown",x=>{if(Tt(
x))return;let k={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[x.key];k&&(x.preventDefault(),C({type:"\
nudge",travel:k[0],turned:k[1]}))}),i.addEventListener("change",()=>C({type:"build",build:i.value}));let $=null,D=null,y=!1;
function I(x,k){let M=k.getBoundingClientRect(),N=k.viewBox.baseVal.width/M.width;return[(x.clientX-M.left)*N,(x.clientY-
M.top)*N]}c.addEventListener("pointerdown",x=>{let k=Et(x,".tsg-panel, .tsl-knob");if(!k||x.button!==0)return;let M=k.ownerSVGElement,
N=t.get("view").hand,[W,V]=I(x,M),P=Number(k.dataset.scale),S=P?[P,P]:a.scale;$={svg:M,x:W-N[0]*S[0],y:V+N[1]*S[1],scale:S},
c.setPointerCapture(x.pointerId),c.focus({preventScroll:!0}),c.classList.add("ts-pulling"),x.preventDefault()}),c.addEventListener(
"pointermove",x=>{if(!$)return;let[k,M]=I(x,$.svg),{scale:N}=$;D={travel_mm:(k-$.x)/N[0],turn_mm:($.y-M)/N[1]},m()});let L=()=>{
$=null,c.classList.remove("ts-pulling")};c.addEventListener("pointerup",L),c.addEventListener("pointercancel",L);function m(){
if(y||!D)return;y=!0;let x=D;D=null,C({type:"pull",...x})}return h.follow("msg:custom",x=>{x.type==="trouble"&&(y=!1)}),
h.follow("change:view",T),T(),h.close}function Xs({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding tsw-say",role:"status"}),a=s(
"p",{class:"ts-happened tsw-happened",role:"status"}),c=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,
l=n.gears.map(([k,M])=>s("button",{type:"button",class:"ts-button","data-gear":k,"aria-pressed":"false",onclick:()=>L({type:"\
gear",gear:k})},M)),u=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:k=>L({type:"hold",shaft:k.target.
value})},...At(n.holds)),p=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:k=>{i=k.target.value,x()}},
...At(r.dials.map(k=>[k.shaft,k.name]))),f=k=>L({type:"turn",shaft:i,turns:k}),g=`1/${n.marks}`,h=s("div",{class:"ts-too\
ls",role:"group","aria-label":"Turn the shaft"},nt("↺ 1 turn",()=>f(-1),"One turn anticlockwise"),nt(`↺ ${g}`,()=>f(
-n.step),`${g} turn anticlockwise`),nt("↺ a touch",()=>f(-n.fine),"A touch anticlockwise"),nt("a touch ↻",()=>f(n.fine),
"A touch clockwise"),nt(`${g} ↻`,()=>f(n.step),`${g} turn clockwise`),nt("1 turn ↻",()=>f(1),"One turn clockwise"),nt(
"Marks to zero",()=>L({type:"reset"}))),b=new Map;for(let k of r.dials){let M=R("g",{},R("circle",{class:"tsw-end",r:34}),
R("line",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),R("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),N=[];for(let B=0;B<
n.marks;B+=1)N.push(R("line",{class:"tsw-tick",y1:-40,y2:B?-47:-52,transform:`rotate(${B*360/n.marks})`})),B&&N.push(R("\
text",{class:"tsw-number",x:57*Math.sin(B*2*Math.PI/n.marks),y:-57*Math.cos(B*2*Math.PI/n.marks)+4},String(B)));let W=R(
"svg",{viewBox:"-70 -70 140 140",class:"tsw-dial","data-shaft":k.shaft,"aria-hidden":"true"},R("circle",{class:"tsw-plat\
e",r:40}),...N,R("path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),M),V=s("div",{class:"tsw-count",tabindex:"0",role:"\
application","aria-roledescription":"shaft","data-shaft":k.shaft},s("div",{class:"tsw-name"}),W,s("div",{class:"tsw-stro\
kes","aria-hidden":"true"}),s("div",{class:"tsw-figure"}));b.set(k.shaft,{box:V,svg:W,shaftEnd:M}),V.addEventListener("f\
ocus",()=>{i!==k.shaft&&(i=k.shaft,x())}),V.addEventListener("keydown",B=>{if(Tt(B))return;let _={ArrowRight:1,ArrowDown:1,
ArrowLeft:-1,ArrowUp:-1,PageDown:1,PageUp:-1}[B.key];_&&(B.preventDefault(),i=k.shaft,f(_*(B.key.startsWith("Page")?1:B.
shiftKey?n.fine:n.step)))});let P=null,S=B=>{let _=W.getBoundingClientRect();return Math.atan2(B.clientX-_.left-_.width/
2,_.top+_.height/2-B.clientY)/(2*Math.PI)};W.addEventListener("pointerdown",B=>{B.button===0&&(P=S(B),W.setPointerCapture(
B.pointerId),V.focus({preventScroll:!0}),B.preventDefault())}),W.addEventListener("pointermove",B=>{if(P===null)return;let _=S(
B),U=_-P;U-=Math.round(U),P=_,v+=U,T()});let w=()=>{P=null};W.addEventListener("pointerup",w),W.addEventListener("pointe\
rcancel",w)}let v=0,C=!1;function T(){if(C||Math.abs(v)<.002)return;C=!0;let k=v;v=0,f(k)}let $=et({model:t,el:e},{kind:"\
rig"}),D=[s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Hold still: ",u),s("span",{class:"ts-pair"},"Turn by ha\
nd: ",p)),s("div",{class:"tsw-counts"},...[...b.values()].map(k=>k.box)),h,a];$.show($.asks("How many turns does it take\
?",{first:h,begin:n.closed?"turn a shaft":"engage a gear, then turn a shaft",who:n.closed?"Nothing is saved here; your a\
nswers stand in the form.":void 0}),$.alert,o,!n.closed&&s("div",{class:"ts-tools",role:"group","aria-label":"Gears enga\
ged"},s("span",{},"Engage: "),...l),...n.closed?D:[Bt([c],D)],s("p",{class:"ts-hint tsw-say"},`All three are seen from t\
he clutch side. Drag a dial round, or go to it and use the arrow keys (${g} turn), Shift with an arrow key (a touch) or \
Page Up and Page Down (one turn). Each stroke is a whole turn.`));let y=0,I=null;function L(k){y+=1,$.send({...k,turn:y})}
let m=k=>{let M=[];for(let N=k;N>0;N-=5)M.push(N>=5?"||||/":"|".repeat(N));return M.join(" ")};function x(){let k=t.get(
"view");I!==t.get("figure")&&(I=String(t.get("figure")),c.innerHTML=I);for(let M of Z(c,"[data-wheel]")){let[N,W]=k.wheels[String(
M.dataset.wheel)]??[0,!0];M.setAttribute("transform",`translate(0 ${(N*Number(M.dataset.reach)).toFixed(1)})`),M.classList.
toggle("tsw-behind",!W)}for(let M of l)M.setAttribute("aria-pressed",String(k.engaged.includes(M.dataset.gear)));u.value=
k.held,p.value=i;for(let M of k.dials){let{box:N,shaftEnd:W}=b.get(M.shaft),V=M.way>0?"↻":M.way<0?"↺":"";W.setAttribute(
"transform",`rotate(${M.angle})`);let[P,,S,w]=N.children;P.textContent=`${M.name}${M.held?", held":M.shaft===i?", your h\
and":""}`,S.textContent=M.strokes||V?`${V} ${m(M.strokes)}`:"no stroke",w.textContent=M.figure,N.classList.toggle("tsw-h\
and",M.shaft===i),N.classList.toggle("tsw-held",M.held),N.setAttribute("aria-label",`${M.name}${M.held?", held":""}. ${M.
words}`)}o.textContent=k.finding,a.textContent=k.happened,e.dataset.turn=String(k.turn),C=!1,T()}return $.follow("change\
:view",x),x(),$.close}function Js({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),c=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,c),d=[],
l=[],u=null,p=t.get("plan").lookingOnly,f=(L,m)=>s("button",{type:"button",class:"ts-button","data-verdict":L,"aria-pres\
sed":"false",onclick:()=>C.send({type:"judge",place:u,verdict:L})},m),g=p?[]:[f("stop","Stop here"),f("well","Fine as it\
 is")],h=s("button",{type:"button",class:"ts-button",onclick:()=>C.send({type:"next"})},"Another day"),b=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...g);t.get("plan").more&&b.append(h);let v=s("p",{class:"\
ts-keys"},p?"Choose a place to read what can be seen there. Keys: arrows go from place to place.":"Choose a place, read \
what can be seen there, and judge it. Keys: arrows go from place to place; Tab goes on to the buttons."),C=et({model:t,el:e},
{kind:"rig"});C.show(C.asks(p?"What is to be seen at each place?":"Where can somebody get hurt?",{first:p?r:g[0],begin:p?
"choose a place":"choose a place and judge it",who:p?"Nothing is saved here; your answers stand in the form.":void 0}),C.
alert,p?null:n,p?null:v,Bt([r],[i,!p&&b]),p?v:null);function T(L,m){let x=L!==u;u=L;for(let[k,M]of l.entries()){let N=d[k][0]===
L;M.setAttribute("tabindex",N?"0":"-1"),M.setAttribute("aria-pressed",String(N)),M.classList.toggle("tsh-chosen",N),N&&m&&
(M.focus({preventScroll:!0}),$(M))}x&&C.send({type:"choose",place:L})}function $(L){let m=Jt(L,".tsh-hit").getBoundingClientRect(),
x=r.getBoundingClientRect();(m.left<x.left||m.right>x.right)&&(r.scrollLeft+=m.left-x.left-(x.width-m.width)/2),(m.bottom<
0||m.bottom>innerHeight||m.top<0)&&L.scrollIntoView({block:"nearest"})}function D(){let L=t.get("plan");d=L.places,r.innerHTML=
L.drawing,Jt(r,"svg").setAttribute("role","group"),l=d.map(([m])=>Jt(r,`[data-place="${m}"]`)),l.forEach((m,x)=>{m.setAttribute(
"role","button"),m.setAttribute("aria-label",`${x+1} ${d[x][1]}`),m.addEventListener("click",()=>T(d[x][0],!0))}),u=String(
t.get("view").chosen),T(u,!1)}r.addEventListener("keydown",L=>{if(Tt(L))return;let m=d.findIndex(([M])=>M===u),x=Math.min(
6,d.length),k=m;if(L.key==="ArrowRight")k=m+1;else if(L.key==="ArrowLeft")k=m-1;else if(L.key==="ArrowDown")k=m+x;else if(L.
key==="ArrowUp")k=m-x;else if(L.key==="Home")k=0;else if(L.key==="End")k=d.length-1;else if(L.key!=="Enter"&&L.key!==" ")
return;L.preventDefault(),k>=0&&k<d.length&&T(d[k][0],!0)});function y(){let L=t.get("view");n.textContent=L.finding;let m=d.
findIndex(([M])=>M===L.chosen);o.textContent=`${m+1}  ${d[m][1]}`,a.textContent=L.seen;let{verdict:x,...k}=L.told;if(c.replaceChildren(),
x){let M=L.judged[L.chosen],N=M==="stop"==(x==="Stop here."),W=M==="stop"?"Stop here":"Fine as it is";c.append(s("p",{class:"\
tsh-verdict"},N?`✓ Yes: ${x}`:`✗ You said “${W}”. The course says: ${x}`),s("dl",{class:"ts-facts"},...Object.entries(
k).flatMap(([V,P])=>[s("dt",{},V),s("dd",{},P)])))}for(let M of g)M.setAttribute("aria-pressed",String(L.judged[L.chosen]===
M.dataset.verdict));for(let[M,N]of l.entries()){let W=L.judged[d[M][0]];N.setAttribute("aria-label",`${M+1} ${d[M][1]}${W?
`, judged: ${W==="stop"?"stop here":"fine as it is"}`:""}`);let V=N.querySelector(".tsh-tag");if(!W){V?.remove();continue}
V||(V=R("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),N.append(V)),V.textContent=W==="stop"?"■ \
stop":"○ well"}e.dataset.turn=L.chosen}let I=()=>{D(),y()};return C.follow("change:plan",I),C.follow("change:view",y),
I(),C.close}function Zs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),c=new Map,d=n.sliders.map(([f,g,h,b,v,C])=>{let T=ct(f.replace("_","-")),$=s("output",{class:"\
tsl-figure",for:T}),D=s("input",{id:T,type:"range",min:b,max:v,step:C,oninput:()=>{y(),u.send({type:"set",name:f,value:Number(
D.value)})}}),y=()=>{$.textContent=`${D.value} ${h}`,D.setAttribute("aria-valuetext",`${D.value} ${h==="°"?"degrees":h}`)};
return c.set(f,{slider:D,say:y}),s("div",{class:"tsl-row"},s("label",{for:T},g),D,$)}),l=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>u.send({type:"set",name:"grip",value:l.value})},...At(n.grips)),u=et({model:t,el:e},{kind:"\
rig"});u.show(u.asks("Is this lift safe by hand?",{first:c.values().next().value?.slider,begin:"set the load"}),u.alert,
r,s("div",{class:"tsl-sliders",role:"group","aria-label":"The lift"},...d,s("div",{class:"tsl-row"},s("span",{},"Grip"),
l)),a,o,s("p",{class:"ts-keys"},"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));
function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.sum,a.innerHTML=f.drawing;for(let[g,{slider:h,say:b}]of c)
document.activeElement!==h&&(h.value=f.sizes[g]),b();l.value=f.sizes.grip}return u.follow("change:view",p),p(),u.close}var Te={x:90,y:120,perMm:20,radius:82,bevel:30};function mo(t){let e=R("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=Te;e.append(R("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),ft(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let f=n+p*t.pitch*o;if(p%2){e.append(ft(
f,r,f,r+18,"tsi-fine"));continue}let g=p/2;e.append(ft(f,r,f,r-(g%5?18:27),g%5?"tsi-fine":"tsi-bold")),g%5===0&&e.append(
gt(f,r-33,String(g)))}let c=R("g",{});e.append(c,gt(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=R("path",{d:`M0 ${r-a+14}L${Te.bevel} ${r-a}L${Te.bevel} ${r+a}L0 ${r+a-14}\
Z`,class:"tsi-body"}),d=R("rect",{x:Te.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),l=R("rect",{x:0,y:r-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),u=R("g",{});return c.append(l,i,d,u),{node:e,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*o} 0)`),u.replaceChildren();for(let f=0;f<t.lines;f+=1){let g=f-p.line;g-=t.lines*Math.round(g/t.lines);let h=g/
t.lines*2*Math.PI;if(Math.abs(h)>1.15)continue;let b=r-(a-8)*Math.sin(h),v=f%5===0;u.append(ft(0,b,v?26:16,b,v?"tsi-bold":
"tsi-fine")),v&&u.append(gt(36,b+5,String(f),"start"))}e.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function Qs(t){
return Dt(t,(e,n,r)=>{let o=mo(e),a=$t("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, \
out to the right",onInput:l=>n({open:l})}),c=yt("Between the faces",e.between,r.between,l=>n({between:l,open:e.top})),i=K(
"Close until it rests",()=>n({open:-1})),d=e.hands.length?yt("Close it",e.hands,r.hand,l=>n({hand:l})):null;return{asks:"\
How thick is it?",first:i,begin:"close it until it rests",picture:o.node,controls:[Nt(c.row,d?.row),Nt(i,K("Open",()=>n(
{open:e.top}))),a.row],set(l,u){o.set(l),a.box.value=String(Math.max(0,l.mm)),c.box.value=u.between}}})}function tn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("tbody",{role:"rowgroup"}),
a=new Map;for(let[d,l,u]of n.checks){let p=s("button",{class:"ts-button",type:"button","aria-label":`Make: ${l}`,onclick:()=>{
p.getAttribute("aria-disabled")!=="true"&&c.send({type:"make",check:d})}},"Make"),f=Ft("it shows",!1);f.classList.add("t\
sk-shown"),a.set(d,{button:p,shown:f}),o.append(s("tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},l),Ft("min",!0,
`${u}`),Ft("",!1,p),f))}let c=et({model:t,el:e},{kind:"rig"});c.show(c.asks("What does each check show on your unit?",{first:a.
values().next().value?.button,begin:"make a check",who:"Checks are not saved; make them again after reopening."}),c.alert,
r,Oe("Checks of your unit",[["Check"],["min",!0],["Do"],["It shows"]],o));function i(){let d=t.get("view");r.textContent=
d.finding;for(let[l,{button:u,shown:p}]of a){let f=d.shown[l];u.setAttribute("aria-disabled",f?"true":"false"),u.classList.
toggle("ts-off",!!f),u.textContent=f?"Made":"Make",p.textContent=f?`${f[0]?"✓":"✗"} ${f[1]}`:"",p.classList.toggle("\
tsk-failed",!!f&&!f[0])}}return c.follow("change:view",i),i(),c.close}function wo(){let t=R("svg",{viewBox:"0 0 220 200",class:"tsp-gauge",role:"img"}),e=R("g"),n=R("path",{d:"M-2.5 14L0 -78\
L2.5 14Z",class:"tsg-pointer"});t.append(R("circle",{cx:110,cy:104,r:92,class:"tsg-face"}),e,n,R("circle",{cx:110,cy:104,
r:6,class:"tsg-hub"}));let r=c=>(-135+270*c)*Math.PI/180,o="";function a([c,i,d]){e.replaceChildren();for(let l=0;l*i<=c+
1e-9;l+=1){let u=r(l*i/c),p=l%d===0,f=g=>[110+g*Math.sin(u),104-g*Math.cos(u)];if(e.append(ft(...f(p?72:79),...f(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&l%(2*d)===0){let[g,h]=f(58);e.append(gt(g,h+4.5,String(Number((l*i).toFixed(2)))))}}e.
append(gt(110,170,"kN"))}return{node:t,set(c,i,d){String(c)!==o&&(o=String(c),a(c));let l=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*l})`),t.setAttribute("aria-label",d)}}}function en(t){return Dt(t,(e,n,r)=>{
let o=wo(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),d=$t("Push",{min:0,max:100,step:1,value:r.travel,onInput:f=>n(
{travel:f}),words:f=>f>=100?"at the shoulder":`${f} % of the way`}),l=[d.row],u=null;if(!e.readingsOnly){let f=yt("Part",
e.places,r.place,v=>n({place:v,travel:0}));u=yt("Driver presses on",e.drivers,r.driver,v=>n({driver:v,travel:0}));let g=yt(
"Seat",e.seats,r.seat,v=>n({seat:v})),h=$t("Pair",{min:0,max:100,step:1,value:r.grip,onInput:v=>n({grip:v}),words:v=>v===
0?"loosest of the fit":v===100?"tightest of the fit":`${v} % from loosest to tightest`}),b=$t("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:v=>n({warmth:v}),words:v=>`${v} °C`});l.unshift(Nt(f.row,u.row,g.row),
h.row,b.row)}let p=s("dl",{class:"ts-facts"});return e.readingsOnly||l.push(p),{asks:"What force does it take, and where\
 does it stop?",first:d.box,begin:"push the part",side:!e.readingsOnly,picture:i,controls:l,set(f,g){f.section!==c&&(c=f.
section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*g.travel/100} 0\
)`),o.set(f.gauge,f.force,f.words),Number(d.box.value)!==g.travel&&document.activeElement!==d.box&&d.set(g.travel),u&&(u.
row.hidden=!f.drives),f.facts&&p.replaceChildren(...Rt(f.facts))}}})}function sn({model:t,el:e}){let n=t.get("steps"),r=new Map(n),o=s("div",{class:"ts-scroll tsf-near",tabindex:"0",role:"r\
egion","aria-label":"The rules around the chosen step"}),a=s("p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts\
-sentences"}),i=s("select",{class:"ts-box ts-before","aria-label":"Chosen step",onchange:()=>u(i.value)},...At(n.map(([g,
h],b)=>[g,`${b+1}  ${h}`]))),d=et({model:t,el:e},{kind:"rig",lost(){i.disabled=!0}});d.show(d.asks("What comes before th\
is step, and what after it?",{first:i,begin:"choose a step, or press one in the picture",who:""}),d.alert,s("p",{class:"\
ts-hint"},t.get("finding")),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",i)),a,o,s("details",{class:"ts\
-keys"},s("summary",{},"In words, with reasons"),c));let l=!1,u=g=>d.send({type:"choose",step:g}),p=g=>{let h=Et(g,"[dat\
a-step]")?.dataset.step;h&&(l=!0,u(h))};o.addEventListener("click",p),o.addEventListener("keydown",g=>{g.key!=="Enter"&&
g.key!==" "||Et(g,"[data-step]")&&(g.preventDefault(),p(g))});function f(){let g=t.get("near");a.textContent=g.words,i.value=
g.step,o.innerHTML=g.figure,o.querySelector("svg")?.setAttribute("role","group");let h=Z(o,"[data-step]");for(let b of h)
b.setAttribute("role","button"),b.setAttribute("tabindex","0"),b.setAttribute("aria-label",r.get(String(b.dataset.step))??
"");c.replaceChildren(...Ut(g.sentences)),l&&(h[0]??i).focus({preventScroll:!0}),l=!1}return d.follow("change:near",f),f(),
d.close}function bo(){let t=R("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=R("g",{}),n=R("g",{});return e.append(
R("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),ft(150,164,150,98,"tsi-bold"),R("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(ft(150,86,150,40,"tsi-plunger"),R("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,ft(50,164,
250,164,"tsg-centre"),ft(150,250,150,80,"tsg-centre"),n,gt(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute(
"transform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function nn(t){
return Dt(t,(e,n,r)=>{let o=oe(),a=bo(),c=$t("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:l=>`turn\
ed by ${l}°`,onInput:l=>n({angle:l})}),i=yt("Plunger",e.pressed,r.pressed,l=>n({pressed:l})),d=yt("Stand",e.tilts,r.tilt,
l=>n({tilt:l}));return{asks:"How far does the shaft run out?",first:c.box,begin:"turn the shaft",picture:s("div",{class:"\
tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One mark 0.01 mm, one turn 1 mm"))),controls:[Nt(i.row,
d.row),c.row],set(l,u){o.set(l.mm,l.words),a.set(l.state.angle,Number(l.state.tilt),`Shaft end on, turned by ${l.state.angle}\
°; the plunger stands ${l.state.tilt}° off square. Not to scale.`),c.set(u.angle)}}})}var rn=(t,e)=>(t+e)%7<2,an=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,Ne=()=>!1,Ie=t=>(e,n)=>n%t===0,vo={"":Ne,dots:(t,e)=>t%6<2&&e%
6<2,rising:rn,cross:an,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":Ne,"lines-2":Ie(14),"lines-3":Ie(8),"lines-4":Ie(5),"lines-5":Ie(
3)};function ko(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var on=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function cn(t,[e,n],r,o,a){let c=n*4,i=new Uint32Array(c*e*4),d=new Map(r.map(([p,,f,g])=>{let h=f?on(ko(f),200):
0;return[p,{ground:h,hatch:vo[g]??Ne}]})),l={ground:0,hatch:Ne},u=on(o,190);for(let p=0;p<e;p+=1){let f=(e-1-p)*4;for(let g=0;g<
n;g+=1){let h=t[p*n+g];if(!h)continue;let{ground:b,hatch:v}=d.get(h&15)??l,C=a&&(h&16)!==0,T=a&&(h&32)!==0;for(let $=f;$<
f+4;$+=1)for(let D=g*4;D<(g+1)*4;D+=1){let y=v(D,$)||C&&rn(D,$)||T&&an(D,$);i[$*c+D]=y?u:b}}}return i}var xo=600;function dn(t,e,n,r,o,a){let[c,i]=n;t.width=i*4,t.height=c*4;let d=new Uint8ClampedArray(cn(e,n,r,o,a).buffer),
l=new ImageData(d,t.width,t.height);t.getContext("2d")?.putImageData(l,0,0)}function $o(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return dn(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function un({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),c=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),d=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),l=et({model:t,el:e},{kind:"rig",lost(){f.setDisabled(!0),pe(e)}}),u=null,p=P=>{u=ct("turn"),l.send({...P,turn:u})},
f=ke({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(P){f.
drawing.strokes(P),p({type:"lay",entries:P})},onRemove:P=>p({type:"remove",at:P}),onClear:()=>p({type:"clear"})}),g=K("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),h=s("input",{type:"range",id:ct("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),b=s("output",{for:h.id}),v=Ot({id:ct("slide"),onchange:()=>p({type:"slide",by:v.value})},
t.get("view").slides),C=null;h.addEventListener("input",()=>{b.textContent=`${h.value} µm`;let P={type:"flat",um:Number(
h.value)};u===null?p(P):C=P});let{box:T,unit:$}=f.drawing;f.drawing.land.classList.add("tsp-clear"),f.drawing.frame.prepend(
d);let D=(...P)=>s("span",{class:"ts-pair"},...P);l.show(l.asks("Does this film close the gap?",{first:g,begin:"press Cl\
ose the face"}),l.alert,o,Bt([f.drawing.frame,i],[s("div",{class:"ts-tools"},g,D(s("label",{for:v.id},"the other face is"),
v)),s("div",{class:"ts-tools"},a,K("1 minute passes",()=>p({type:"time",by:1})),K("5 minutes pass",()=>p({type:"time",by:5}))),
s("div",{class:"ts-tools"},D(s("label",{for:h.id},"faces out of flat by"),h,b)),f.tools,c,s("details",{class:"ts-keys"},
s("summary",{},"Passes laid"),f.empty,f.list)]));function y(){let P=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return P?
P.slice(0,3).map(Number):[0,0,0]}let I="",L="";function m(){let P=t.get("view"),S=r[P.closed?"closed":"film"],w=t.get("g\
rid"),B=w instanceof DataView?new Uint8Array(w.buffer,w.byteOffset,w.byteLength):new Uint8Array(w);dn(d,B,P.shape,S,y(),
!P.closed);let[_,U]=P.shape,[it,mt]=[P.corner[0]-P.pitch/2,P.corner[1]-P.pitch/2],H=(st,lt)=>`${(100*st/lt).toFixed(3)}%`;
d.style.left=H(it-T.left,T.width),d.style.width=H(U*P.pitch,T.width),d.style.top=H(T.high-mt-_*P.pitch,T.height),d.style.
height=H(_*P.pitch,T.height);let G=new Set(B.map(st=>P.closed?st:st&15)),q=S.filter(([st])=>G.has(st)),rt=`${q.map(([,st])=>st)}\
 ${y()}`;rt!==I&&(I=rt,i.replaceChildren(...q.map(st=>$o(st,y()))))}let x=R("g");f.drawing.over.append(x);let k=([P,S])=>[
P-T.left,T.high-S];function M([P,S]){let w=S.map(B=>{let[_,U]=k(B);return`M${_.toFixed(1)} ${U.toFixed(1)}h0.01`});return R(
"path",{d:w.join(""),class:"tsp-lump","stroke-width":2*P})}function N(P){let[S,w]=k(P[P.length-1]),B=`M${S-1.3*$} ${w-$}\
h${2.6*$}l${-1.3*$} ${2.2*$}Z`;return[R("path",{d:f.drawing.path(P),class:"tsp-way","stroke-width":$}),R("path",{d:B,class:"\
tsp-out"})]}function W(){let P=t.get("view");if(u!==null&&P.turn!==u)return;u=null;let S=JSON.stringify([P.entries,P.notes]);
if(S!==L&&f.show(P.entries,P.notes),L=S,f.drawing.strokes([]),m(),x.replaceChildren(...P.lumps.map(M),...P.leaks.flatMap(
N)),f.drawing.svg.classList.toggle("tsp-shut",P.closed),f.drawing.svg.classList.toggle("tsp-clean",P.closed||P.clean),o.
textContent=P.finding,v.value=P.slide,a.textContent=`minute ${P.minute}`,g.textContent=P.closed?"Lift the face off again":
"Close the face",C===null&&(h.value=String(P.flat),b.textContent=`${P.flat} µm`),c.replaceChildren(...Rt(P.facts)),C===
null)return;let w=C;C=null,p(w)}l.follow("change:view",W),l.follow("msg:custom",P=>{P.type==="trouble"&&(u=null,f.drawing.
strokes([]))});let V=new MutationObserver(()=>setTimeout(m,xo));return V.observe(document.body,{attributes:!0,attributeFilter:[
"data-jp-theme-light"]}),W(),()=>{l.close(),V.disconnect()}}function pn(t){return Dt(t,(e,n,r)=>{let o=oe(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),d=e.places.map(([u,p])=>[u,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:u})},p)]),l=[s("p",{class:"ts-hint"},e.rule),Nt(s("span",{},"Set the gauge down at"),...d.map(([,u])=>u))];
return e.readingsOnly||(l.push(Nt(yt("Lip looks towards",e.sides,r.lip,u=>n({lip:u})).row,yt("Lip is",e.greases,r.grease,
u=>n({grease:u})).row,e.sleeves.length?yt("It went",e.sleeves,r.sleeve,u=>n({sleeve:u})).row:"")),l.push($t("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:u=>`${u.toFixed(2)} mm${u<0?", proud":""}`,onInput:u=>n({
depth:u})}).row,$t("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:u=>u?`${u.toFixed(2)} mm across`:"square",onInput:u=>n(
{lean:u})}).row)),{asks:"Does the seal sit square and deep enough?",first:d[0][1],begin:"set the gauge down",side:!e.readingsOnly,
picture:i,controls:l,set(u,p){u.section!==c&&(c=u.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.setAttribute("t\
ransform",u.placed),o.set(u.dial,u.words);for(let[f,g]of d)g.setAttribute("aria-pressed",String(f===p.place))}}})}function fn({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=oe(),a=n.readingsOnly?null:Ns(n),c=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),d=ne((I,L)=>C.send({type:"set",state:I,turn:L})),l=I=>{r={...r,...I},d.ask(r)},
u=(I,L)=>{let m=[...r.shims];m[I]=L,l({shims:m.filter(Boolean),turns:0})},p=(I,L,m)=>K(I,L,{"aria-pressed":m}),f=K("Turn\
 the shaft ten times",()=>l({turns:r.turns+10})),g=p("Pull the shaft away",()=>l({side:"away"}),"true"),h=p("Push it to \
the dial",()=>l({side:"towards"}),"false"),b=yt("Plunger",n.plungers,r.plunger,I=>l({plunger:I})),v=[s("div",{class:"ts-\
tools"},n.rolls?f:null,b.row,g,h)];if(!n.readingsOnly){let I=yt("Shim",n.shelf,r.shims[0],m=>u(0,m)),L=n.second?yt("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",m=>u(1,m)):null;v.unshift(s("div",{class:"ts-tools"},I.row,L?.row)),v.
push($t("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:m=>l({warmth:m}),words:m=>m?`case ${Math.round(n.caseRise*
m/100)} K warmer`:"cold, as at the bench"}).row)}let C=et({model:t,el:e},{kind:"rig"}),T=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});T.innerHTML=n.section;let $=[n.readingsOnly?C.asks("How far does the shaft\
 move?",{first:n.rolls?f:h,begin:n.rolls?"turn the shaft":"push the shaft",who:"Take your readings here; write them in t\
he form."}):C.asks("Which shim gives the setting that you want?",{first:v[0].querySelector("select"),begin:"choose a shi\
m"}),C.alert,n.readingsOnly&&T,s("div",{class:"tsg-beside"},!n.readingsOnly&&T,s("div",{class:"tsg-gauge"},o.node,s("div",
{},"Dial at the shaft's right end, one mark 0.01 mm")),n.readingsOnly&&s("div",{class:"tsg-side"},...v,c)),...n.readingsOnly?
[]:[...v,c],a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg\
-wide",tabindex:"0",role:"group","aria-label":"Axis of settings"},a.node)),i];C.show(...$.filter(Boolean));function D(){
let I=t.get("shown");d.waiting||(r=I.state),o.set(I.dial,I.dialWords),g.setAttribute("aria-pressed",String(I.state.side===
"away")),h.setAttribute("aria-pressed",String(I.state.side==="towards")),c.textContent=I.finding,a&&(a.set(I.cold,I.warm,
I.words.join(" ")),i.replaceChildren(...I.words.map(L=>s("p",{},L)))),d.answered(I.turn)}let y=()=>d.free();return C.follow(
"change:shown",D),C.follow("msg:custom",y),D(),C.close}function hn(t){return Dt(t,(e,n,r)=>{let o=s("div",{tabindex:"0",role:"group","aria-label":e.name}),a="",c=e.pickers.map(
({key:u,label:p,options:f})=>yt(p,f,r[u],g=>n({[u]:g}))),i=e.sliders.map(({key:u,label:p,min:f,max:g,step:h,unit:b,places:v})=>$t(
p,{min:f,max:g,step:h,value:r[u],words:C=>`${C.toFixed(v)} ${b}`,onInput:C=>n({[u]:C})})),d=c.map(({row:u})=>u),l=d.length>
2?d:d.length?[Nt(...d)]:[];return{asks:e.asks,first:[...c,...i][0].box,begin:c.length?"choose from the first list":"move\
 the first slider",picture:o,controls:[...l,...i.map(({row:u})=>u)],set(u){u.drawing!==a&&(a=u.drawing,o.innerHTML=a)}}})}function gn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),c=s("dl",{class:"ts-facts"}),i=null,d=null,l=(L,m)=>{d={...d,[L]:m},i===null&&u()};function u(){
i=ct("choice"),D.send({type:"choose",chosen:d,turn:i}),d=null}let p=s("div",{class:"tsj-settings"}),f=(L,m,x)=>{let k=ct(
"set");return m.id=k,p.append(s("label",{for:k},L),s("span",{class:"tsj-slide"},m,x)),m},g=(L,m,x)=>f(m,s("select",{class:"\
ts-box",onchange:k=>l(L,k.target.value)},...At(x.map(k=>typeof k=="string"?[k,k]:k)))),h=(L,m,x)=>f(m,s("input",{type:"r\
ange",oninput:k=>l(L,Number(k.target.value))}),x),b={group:g("group","Bolt of the unit",n.groups),thread:g("thread","Thr\
ead",n.threads),strength:g("strength","Strength class",n.classes),state:g("state","State of the thread",n.states),tool:g(
"tool","Tool",n.tools)},v=s("output",{class:"tsj-figure"}),C=h("torque_nm","Torque",v),T=s("output",{class:"tsj-figure"}),
$=h("engagement_mm","Thread that meets",T),D=et({model:t,el:e},{kind:"rig"});D.show(D.asks("What gives way first?",{first:C,
begin:"set the torque"}),D.alert,r,o,s("div",{class:"tsj-bench"},p,a),c);let y=(L,m,x,k,M,N)=>{Ht(L,{min:m,max:x,step:k}),
i===null&&(L.value=String(M)),L.setAttribute("aria-valuetext",N)};function I(){let L=t.get("view");if(i!==null&&L.turn!==
i)return;i=null,d!==null&&u();let{chosen:m}=L;r.textContent=L.finding,o.innerHTML=L.band,a.innerHTML=L.section,c.replaceChildren(
...Rt(L.facts));for(let[x,k]of Object.entries(b))k.value=m[x];y(C,1,L.topTorque,.5,m.torque_nm,L.torqueText),v.textContent=
L.torqueText,y($,L.lowEngagement,L.topEngagement,.5,m.engagement_mm,L.engagementText),T.textContent=L.engagementText}return D.
follow("change:view",I),I(),D.close}function mn({model:t,el:e}){let n=se(t),r=Kt(t.get("picture"),{onChoose:a=>n.show("part",[a])}),o=et({model:t,el:e},{kind:"\
rig"});return o.show(o.asks("Where does each part lie?",{first:r.choose,begin:"choose a part",who:""}),o.alert,s("p",{class:"\
ts-finding"},t.get("finding")),...n.any("part")?[Bt(r.nodes,[n.node])]:r.nodes),()=>{n.close(),o.close()}}var wn=([t,e],[n,r,o,a],c)=>t>=n-c&&t<=n+o+c&&e>=r-c&&e<=r+a+c;function bn(t,e,n){let r=n.find(c=>(e[c]??[]).some(i=>wn(
t,i,10)));if(r!==void 0)return r;let[o,a]=["",Number.POSITIVE_INFINITY];for(let[c,i]of Object.entries(e))for(let d of i){
let l=d[2]*d[3];l<a&&wn(t,d,0)&&([o,a]=[c,l])}return o}var vn=(t,e)=>t[(e===void 0?0:t.indexOf(e)+1)%t.length];function ie(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function Xe(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var Ve=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function kn(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let c=ie(e,
n),i=c.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let l=e.map(([f])=>f),u=t==="ArrowLeft"?-1:1,p=ie(e,l[(l.
indexOf(n)+u+l.length)%l.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let d=t.toLowerCase();return Ve(c,i).find(l=>o[l].toLowerCase().startsWith(d))}function yn({stages:t,stage:e,step:n,isOpen:r}){
let o=ie(t,e),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(o.at(-1)));return Ve(o,o.indexOf(String(n))).find(r)??Ve(a,c).find(
r)}var So=6;function Je(t,e,n,r){let o=Math.min(n/e[2],r/e[3],1.2),a=R("svg",{viewBox:e.join(" "),width:String(Math.round(e[2]*
o)),height:String(Math.round(e[3]*o)),class:"ts-inhand","aria-hidden":"true"});return typeof t=="string"?a.innerHTML=t:a.
replaceChildren(...t),a}function xn(t,e){return Z(t,"[data-part]").filter(r=>e.includes(String(r.dataset.part))).filter(
r=>!r.closest(".tsu-marks")).map(r=>{let o=R("g",{});o.append(...r.cloneNode(!0).childNodes);for(let a of Z(o,"text, tit\
le, desc"))a.remove();for(let a of Z(o,"[data-solid]"))a.removeAttribute("data-solid");return o})}function $n(t,{drawing:e,
held:n,begin:r=()=>{},drop:o}){let a=null,c=null,i=!1;t.classList.add("ts-carry");function d(b){let v=b?"addEventListene\
r":"removeEventListener";document[v]("pointermove",g),document[v]("pointerup",h),document[v]("pointercancel",u),document[v](
"keydown",p,!0),document[v]("selectstart",l)}function l(b){b.preventDefault()}function u(){c?.remove(),a=c=null,d(!1)}function p(b){
b.key!=="Escape"||!c||(b.preventDefault(),u())}let f=()=>e.viewBox.baseVal.width/e.getBoundingClientRect().width;function g(b){
if(!(!a||b.pointerId!==a.id)){if(!c){if(Math.hypot(b.clientX-a.x,b.clientY-a.y)<So)return;let v=n();if(!v)return;let C=v.
cloneNode(!0),{width:T,height:$}=v.viewBox.baseVal;C.setAttribute("width",String(T/f())),C.setAttribute("height",String(
$/f())),c=s("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},C),document.body.append(c),r()}c.style.left=`${b.clientX}\
px`,c.style.top=`${b.clientY}px`}}function h(b){if(!a||b.pointerId!==a.id)return;let v=!!c;if(u(),!v)return;i=!0;let C=e.
parentElement.getBoundingClientRect(),{clientX:T,clientY:$}=b;if(T<C.left||T>C.right||$<C.top||$>C.bottom)return;let{left:D,
top:y}=e.getBoundingClientRect();o([(T-D)*f(),($-y)*f()])}return t.addEventListener("pointerdown",b=>{i=!1,b.button===0&&
(a={x:b.clientX,y:b.clientY,id:b.pointerId},d(!0))}),t.addEventListener("click",b=>{i&&(i=!1,b.preventDefault(),b.stopPropagation())},
!0),u}var Lo=[-4,-4,104,104];function Sn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"t\
s-happened ts-told",role:"status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choi\
ce","aria-label":"Stage",onchange:()=>G()},...At(n.stages.map(([A,z])=>[A,z]))),c=se(t),i=Kt(t.get("picture"),{name:"The\
 bench, in section",onChoose:A=>{A&&c.show("part",[A])}}),d=s("p",{class:"ts-hint ts-in-picture",role:"status"}),l=nt(n.
marked?"Next open step":"Next ready step",()=>B("next"));l.classList.add("ts-next");let u=s("div",{class:"ts-buildlist",
role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this stage",onkeydown:A=>U(A)}),p=s("details",{class:"\
ts-keys"},s("summary",{},"Keys"),"Up and down walk through the steps, left and right change the stage, Enter takes a ste\
p in hand; arrow keys choose its way round, Enter again puts it in its place. With a hand: carry the drawn part to its p\
lace in the section."),f=s("div",{class:"ts-hand",role:"group","aria-label":"Step in hand",onkeydown:A=>{A.key!=="Enter"||
!A.target.matches("input[type=radio], .ts-number-box")||(A.preventDefault(),t.get("hand").stands?mt():tt())}}),g=s("dl",
{class:"ts-facts"}),h=s("ul",{class:"ts-sentences"}),b=s("p",{class:"ts-prompt"},"Wrong so far"),v=s("select",{class:"ts\
-box ts-before","aria-label":"A step that stands"}),C=nt("Take out again",()=>{v.value&&k({type:"out",step:v.value},"han\
d")}),T=nt("Put the tools down",()=>k({type:"over"},"told"));T.classList.add("ts-over");let $=s("div",{}),D=s("p",{class:"\
ts-status"}),y=s("details",{ontoggle:()=>{y.open!==!!t.get("view").record&&k({type:"record",open:y.open})}},s("summary",
{},"Build record"),$),I=s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"ts-tools"},a,l),u),s(
"div",{class:"ts-build-hand"},f),s("div",{class:"ts-build-unit"},...i.nodes,d,c.node),s("div",{class:"ts-tools ts-build-\
end"},s("span",{class:"ts-pair"},v,C),T)),L=et({model:t,el:e},{kind:"rig"});L.show(L.asks("Which step comes next, and wh\
at does it need?",{first:l,begin:"press the lit button",who:n.who}),L.alert,r,D,o,I,g,b,h,y,p);let m=0,x=null;function k(A,z=null){
m+=1,x=z&&{turn:m,focus:z},e.setAttribute("aria-busy","true"),L.send({...A,turn:m})}let M="",N=null,W="next",V=A=>!t.get(
"view").done.includes(A),P=()=>Z(u,"[data-step]"),S=A=>P().find(z=>z.dataset.step===A)?.focus(),w=()=>({stages:n.stages,
stage:a.value,step:N,isOpen:V});function B(A,z){W=A,k(A==="list"?{type:"take",step:z}:{type:"next"},"hand")}function _(A){
a.value=Xe(n.stages,A)??a.value,N=A,G(),S(A)}function U(A){if(Tt(A))return;let z=kn(A.key,{...w(),labels:n.labels});z&&(A.
preventDefault(),_(z))}function it(){let A=yn(w());A?W==="next"?l.focus():_(A):T.focus()}function mt(){let A=t.get("view").
done.length>=Object.keys(n.labels).length;W==="next"&&!A?B("next"):it()}function H(A){let{done:z,ready:J}=t.get("view");
return z.includes(A)?{sign:"✓",word:"done"}:J.includes(A)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"open":"\
waits"}}function G(){let A=ie(n.stages,a.value);(N===null||!A.includes(N))&&(N=A.find(V)??A[0]);let z=t.get("hand").step,
J=JSON.stringify([a.value,A.map(H),z]);if(J===M){for(let vt of P())vt.tabIndex=vt.dataset.step===N?0:-1;return}M=J;let at=P().
find(vt=>vt===document.activeElement)?.dataset.step;u.replaceChildren(...A.map(vt=>q(vt,z))),at&&S(at);let ht=P().find(vt=>vt.
dataset.step===(z??N));ht&&(u.scrollTop=ht.offsetTop-u.offsetTop-ht.offsetHeight)}function q(A,z){let{sign:J,word:at}=H(
A);return s("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${at}`,"data-step":A,tabindex:A===N?"0":"\
-1","aria-current":A===z?"step":!1,"aria-label":`${n.labels[A]}: ${at}`,onclick:()=>{N=A,B("list",A)}},St(A),s("span",{},
jt(J),n.labels[A]))}function rt(A,z,J){let at=n.tray[A];return at?Je(xn(i.drawing,at.parts),at.box,z,J):null}let st=[],lt=new Map;
function St(A){let z=lt.get(A);if(z)return z;let J=rt(A,44,30),at=s("span",{class:"ts-thumb"},J??"");return J&&n.tray[A].
moves&&Ct(at,()=>A,()=>J),lt.set(A,at),at}function Ct(A,z,J){let at=$n(A,{drawing:i.drawing,held:J,begin:()=>{let ht=z();
t.get("hand").step!==ht&&(N=ht,k({type:"take",step:ht}))},drop:ht=>{let vt=z();for(let bt of Y.values())bt.flush();let It=bn(
ht,t.get("picture").boxes,n.tray[vt].parts);k({type:"put",step:vt,part:It},"after")}});st.push(at)}function kt(){let A=Z(
f,'[data-field^="way-"] input[type=radio]');return{inputs:A,now:A.find(z=>z.checked)?.value}}function O(){let{inputs:A,now:z}=kt(),
J=vn(A.map(at=>at.value),z);A.find(at=>at.value===J)?.click(),E()}let F=s("div",{class:"ts-held-frame"}),Q=nt("Turn it",
O,"Turn it: the other way round"),ot=s("p",{class:"ts-hint"}),Lt=s("div",{class:"ts-held-box"},F,ot,Q),dt="";Ct(F,()=>t.
get("hand").step,()=>F.querySelector("svg"));function E(){let{step:A,held:z,stands:J}=t.get("hand"),{inputs:at,now:ht}=kt();
Q.hidden=!at.length;let[vt,It]=n.tray[A??""]?.tool??[];if(Lt.hidden=!A||J||!(n.tray[A]?.moves||It),ot.textContent=It&&vt||
"",!A||Lt.hidden)return;let bt=z.field&&ht||"",ue=`${A} ${bt}`;if(ue===dt)return;dt=ue;let Re=z.looks?.[bt]??(It?[It,Lo]:
null);F.replaceChildren((Re?Je(Re[0],Re[1],120,84):rt(A,120,84))??"")}let j="",Y=new Map;function ut(A){let z=Zt(A),J=s(
"p",{class:"ts-read",id:z.read,role:"status"}),at=0,ht=bt=>{k({type:"set",name:A.name,value:bt}),at=m},vt=Gt(A).make(A,z,
ht,()=>{}),It=Qt(A,z,null);return It.append(vt.element,J),It.dataset.field=A.name,{element:It,flush:()=>vt.flush?.(),show(bt={},ue){
if(ue<at)return;vt.show(bt);let ts=bt.read?`read as ${bt.read}`:"";J.textContent=bt.error?`▲ Look again: ${bt.error}`:
ts}}}let xt=A=>s("dl",{class:"ts-facts"},...Rt(A));function pt(){let A=t.get("hand"),z=JSON.stringify(A);if(z===j)return;
if(j=z,I.classList.toggle("ts-build-face",(A.fields??[]).some(bt=>bt.kind==="film")),f.dataset.stands=String(!!A.stands),
Y=new Map((A.fields??[]).map(bt=>[bt.name,ut(bt)])),!A.step){f.replaceChildren(s("p",{class:"ts-hint"},"No step in hand.\
 Choose one from the list, or press the button above it."));return}let J=nt(`Do it: ${A.label}`,tt);J.classList.add("ts-\
do");let at=A.stands?[nt("Go on",mt),nt("Take it out again",()=>k({type:"out",step:A.step},"hand"))]:[J],ht=[...Y.values()].
map(bt=>bt.element),vt=bt=>String(bt.dataset.field).startsWith("way-");f.replaceChildren(s("p",{class:"ts-prompt ts-hand\
-name",tabindex:"-1"},A.label),s("div",{class:"ts-hand-row"},Lt,s("div",{},...A.plain.map(bt=>s("p",{class:"ts-hint"},bt)),
...A.cautions.map(bt=>s("p",{class:"ts-caution"},s("b",{},"Take care: "),bt)),...ht.filter(vt),...A.card.length&&!ht.some(
vt)?[xt(A.card)]:[])),...A.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),xt(A.read)]:[],...A.card.length&&
ht.some(vt)?[xt(A.card)]:[],...ht.filter(bt=>!vt(bt)),s("div",{class:"ts-tools"},...at));let It=Xe(n.stages,A.step);It&&
([a.value,N]=[It,A.step])}function tt(){for(let A of Y.values())A.flush();k({type:"do"},"after")}function X(){let A=t.get(
"view").asked_back,z=Z(f,"[data-field]").find(ht=>ht.dataset.field===A),J=z&&Z(z,"input:not(:disabled), select, button"),
at=Z(f,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return J?.[0]??at[0]}
function wt(){let A=t.get("view"),z=A.told;r.textContent=A.finding,D.textContent=A.status,D.hidden=!A.status,o.textContent!==
z.join("")&&o.replaceChildren(...z.map(at=>s("p",{},at))),pt(),G();for(let[at,ht]of Y)ht.show(A.states[at],A.turn);if(E(),
Xt(A),g.replaceChildren(...Rt(A.facts)),h.replaceChildren(...Ut(A.faults.map(([,at])=>at))),b.hidden=h.hidden=!A.faults.
length,zt(A.done),$.innerHTML=A.record,y.open=!!A.record,e.setAttribute("aria-busy",String(A.turn<m)),!x||A.turn<x.turn)
return;let{focus:J}=x;x=null,J==="told"?o.focus():J==="after"&&!t.get("hand").step?it():(X()??l).focus()}let Pt="",_t="";
function Xt(A){let z=JSON.stringify(A.build);z!==Pt&&(Pt=z,i.show(A.build),d.textContent=A.build.words);let{step:J,operations:at}=t.
get("hand"),ht=A.build.tool,vt=`${J} ${ht??""}`;if(J===void 0||vt===_t)return;_t=vt,c.show("operation",at);let[It]=n.tray[J]?.
parts??[];ht?i.moveTo({x:ht[0],y:ht[1]}):It&&i.look(It)}function zt(A){if(v.disabled=C.disabled=!A.length,v.dataset.done===
A.join(" "))return;v.dataset.done=A.join(" ");let z=[...A].reverse();v.replaceChildren(...At(z.map(J=>[J,n.labels[J]])))}
return L.follow("change:view",wt),wt(),()=>{for(let A of st)A();c.close(),L.close()}}function Co(t){let e=R("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=ft(
r,o,r,o,"tsi-adapter"),c=R("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=ft(r,o+74,r,o+74,"tsi-arm"),d=gt(r,o+94,"");return e.
append(ft(r,o,r+440,o,"tsi-lever"),a,c,R("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),gt(r+440,o-20,"hand, middle of the gr\
ip","end"),gt(r+20,o-20,"square drive","start"),ft(r+440,o+10,r+440,o+84,"tsg-centre"),i,d,gt(8,242,"lengths to scale","\
start")),{node:e,set(l){let u=l.state.angle/180*Math.PI,p=r-l.state.reach*n*Math.cos(u),f=o-l.state.reach*n*Math.sin(u);
Ht(a,{x2:p,y2:f}),Ht(c,{cx:p,cy:f}),Ht(i,{x1:p,x2:r+440}),Ht(d,{x:(p+r+440)/2}),d.textContent="the lever from bolt to ha\
nd, along the wrench",e.setAttribute("aria-label",`${t.name}. ${l.words}`)}}}function Ln(t){return Dt(t,(e,n,r)=>{let o=Co(
e),a=(i,d,l,u,p,f)=>$t(i,{min:l,max:u,step:p,value:r[d],words:g=>`${g} ${f}`,onInput:g=>n({[d]:g})}),c={setting:a("Setti\
ng","setting",e.low,e.high,e.step,"N·m"),reach:a("Reach of the adapter","reach",0,Math.floor(e.reach),5,"mm"),angle:a("\
Angle of the adapter","angle",0,180,5,"° off straight")};return{asks:"What does the bolt get?",first:c.reach.box,begin:"\
lengthen the adapter",picture:o.node,controls:Object.values(c).map(i=>i.row),set(i,d){o.set(i);for(let[l,u]of Object.entries(
c))u.set(d[l])}}})}var Be=t=>typeof t=="string"?t:t.text;function Cn(t,e,n){let r=new Intl.Collator(void 0,{numeric:!0,sensitivity:"base"}),
o=a=>Be(a.cells[e]??"").trim();return[...t].sort((a,c)=>{let[i,d]=[o(a),o(c)];if(!i||!d)return+!i-+!d;let[l,u]=[Number.parseFloat(
i),Number.parseFloat(d)],p=Number.isNaN(l)||Number.isNaN(u)||l===u?r.compare(i,d):l-u;return n?-p:p})}function ce(t,e){let n=document.getElementById("jupyter-config-data"),r="/";try{r=JSON.parse(n?.textContent??"").baseUrl||
"/"}catch{}return`${r}${t}/${e.split("/").map(encodeURIComponent).join("/")}`}function Eo(t){let e="";for(let n=0;n<t.length;n+=32768)e+=String.fromCharCode(...t.subarray(n,n+32768));return btoa(e)}
async function En(t,e,n){let r=0;do{let o=new Uint8Array(await n.slice(r,r+524288).arrayBuffer()),a=r===0;r+=524288;let c=r>=
n.size;t.send({type:"file",field:e,name:n.name,data:Eo(o),first:a,last:c})}while(r<n.size)}var Ao=400;function An({model:t,el:e}){let n=et({model:t,el:e},{kind:"desk"}),r=s("p",{class:"ts-said",role:"status"}),o=s(
"div",{class:"ts-desk-body"}),a=s("div",{class:"ts-desk-here","aria-hidden":"true"}),c=s("div",{class:"ts-busy"}),i=s("n\
av",{"aria-label":"Pages of the desk",class:"ts-desk-pages"}),d=t.get("cohort"),l=s("input",{id:ct("by"),class:"ts-box",
autocomplete:"off",maxlength:"80",onchange:()=>t.send({type:"by",name:l.value})});l.value=t.get("by"),n.show(s("div",{class:"\
ts-desk-top"},s("b",{},Wt([d.name,d.college]).join(", ")),s("span",{class:"ts-pair"},s("label",{for:l.id},"At the desk (\
your name, for the trail)"),l)),d.invented?s("p",{class:"ts-hint"},d.invented):null,i,c,n.alert,r,o);let u=new Map,p=new Map,
f=new Map,g=new Map,h=!1,b="",v="",C="",T=!1,$=null,D=()=>o.setAttribute("aria-busy",String(y())),y=()=>h||!!C||Object.keys(
t.get("busy")).length>0,I=(O,F={})=>{y()||n.isLost()||(O!=="look"&&(C=O,r.textContent="",n.alert.textContent="",k(),D()),
t.send({type:O,...F}))},L=()=>Z(e,"[data-key]"),m=O=>L().some(F=>F.dataset.key===O);function x(){let O=L().find(F=>F.dataset.
key===b);return O&&o.contains(O)?O.closest("form, section"):null}function k(){let O=x();O?O.append(c,a):(i.after(c),a.remove());
let[F,Q]=[r.textContent,n.alert.textContent];a.replaceChildren(...Wt([F&&s("p",{class:"ts-told"},F),Q&&s("p",{class:"ts-\
trouble"},Q)]));for(let ot of[r,n.alert])ot.classList.toggle("ts-hidden",!!O);return O}function M(){let O=k(),F=[n.alert,
r].find(ot=>ot.textContent);(O?a.childElementCount?a:null:F)?.scrollIntoView({block:"nearest"})}async function N(){for(let[
O,F]of g){let[Q]=F.files??[];try{Q&&await En(t,O,Q)}catch{return F.value="",Q.name}}return""}function W(O){r.textContent=
"",n.alert.textContent=O,M()}async function V(O,F,Q=""){if(n.isLost())return;if(y()){T||($=()=>m(F)&&V(O,F,Q));return}b=
F,v="",T=!0,h=!0;let ot=await N();if(h=!1,ot||y()||n.isLost()){T=!1,ot?W(`${ot} has changed or gone since it was chosen:\
 choose it again.`):n.isLost()||($=()=>m(F)&&V(O,F,Q));return}let Lt=[...p].map(([dt,E])=>[dt,[...E]]);I("do",{page:t.get(
"page"),act:O,of:Q,typed:Object.fromEntries(u),ticked:Object.fromEntries(Lt)})}function P(O){let{name:F,of:Q}=O,ot=ct("f\
ield"),Lt=O.hint?s("span",{class:"ts-hint",id:`${ot}-hint`},O.hint):null,dt={id:ot,"data-key":`field:${F}`,"aria-describ\
edby":Lt?.id},E=s("label",{for:ot},O.label);if(!u.has(F)&&Q!=="file"&&u.set(F,Q==="tick"?O.value==="yes":O.value),Q==="f\
ile"){let ut=g.get(F)??s("input",{type:"file",class:"ts-file"});for(let[xt,pt]of Object.entries(dt))pt&&ut.setAttribute(
xt,pt);return g.set(F,ut),s("div",{class:"ts-desk-field"},E,ut,Lt)}if(Q==="tick"){let Y=s("input",{type:"checkbox",...dt});
Y.checked=u.get(F)===!0,Y.addEventListener("change",()=>u.set(F,Y.checked));let ut=s("label",{class:"ts-option",for:ot},
Y,O.label);return s("div",{class:"ts-desk-field"},ut,Lt)}let j=Q==="choice"?Ot(dt,O.options):Q==="long"?s("textarea",{class:"\
ts-box",rows:"3",maxlength:"2000",...dt}):s("input",{class:"ts-box",autocomplete:"off",maxlength:"400",...dt});return j.
value=String(u.get(F)??""),Q==="choice"&&!O.options.some(([Y])=>Y===u.get(F))&&(j.value=O.options[0]?.[0]??"",u.set(F,j.
value)),j.addEventListener("input",()=>u.set(F,j.value)),s("div",{class:"ts-desk-field"},E,j,Lt)}function S(O){let F=ct(
"form"),Q=s("div",{class:"ts-doing"}),ot=()=>{Q.replaceChildren(...O.acts.map(E=>K(E.label,()=>E.sure?Lt(E):V(E.id,`act:${E.
id}`),{class:E.first?"ts-button ts-first":"ts-button","data-key":`act:${E.id}`})))},Lt=E=>{v=E.id;let j=ct("sure"),Y=s("\
div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":j,"data-key":`sure:${E.id}`},s("p",{id:j},E.sure),s(
"div",{class:"ts-doing"},K(`Yes: ${E.label}`,()=>V(E.id,`act:${E.id}`),{"data-key":`act:${E.id}`}),K("No, leave it",()=>{
v="",ot(),Z(Q,`[data-key="act:${E.id}"]`)[0]?.focus()},{"data-key":`no:${E.id}`})));Q.replaceChildren(Y),Y.focus()},dt=O.
acts.find(E=>E.sure&&E.id===v);return dt?Lt(dt):ot(),s("form",{class:"ts-desk-form","aria-labelledby":O.title?F:null,onsubmit:E=>E.
preventDefault()},O.title?s("h3",{id:F},O.title):null,O.hint?s("p",{class:"ts-hint"},O.hint):null,O.fields.length?s("div",
{class:"ts-desk-fields"},...O.fields.map(P)):null,O.acts.length?Q:null)}function w(O,F){if(typeof O=="string")return O;let Q=O.
act?K(O.text,()=>V(O.act,F,O.of),{class:"ts-cell","aria-label":O.label||null,"data-key":F}):O.text;return s("span",{},O.
shape?jt(O.shape):null,Q)}function B(O){let F=ct("table"),Q=s("h3",{id:F},O.title);if(!O.rows.length)return s("section",
{},Q,s("p",{},O.empty));let ot=p.get(O.id)??new Set,Lt=new Set(O.rows.map(({key:tt})=>tt));for(let tt of ot)Lt.has(tt)||
ot.delete(tt);p.set(O.id,ot);let dt=s("tr",{}),E=s("tbody",{}),j=O.pick?s("input",{type:"checkbox","aria-label":"all","d\
ata-key":`all:${O.id}`}):null,Y=()=>{j&&(j.checked=ot.size===O.rows.length,j.indeterminate=ot.size>0&&!j.checked)},ut=()=>{
let tt=f.get(O.id),X=tt?Cn(O.rows,tt.column,tt.down):O.rows;E.replaceChildren(...X.map(pt)),dt.replaceChildren(...j?[s("\
th",{class:"ts-tick"},j)]:[],...O.columns.map(xt)),Y()},xt=(tt,X)=>{let wt=f.get(O.id),Pt=wt?.column===X,_t=Pt?wt.down?"\
descending":"ascending":null,Xt=()=>{f.set(O.id,{column:X,down:Pt&&!wt.down}),ut(),Z(dt,`[data-key="${zt}"]`)[0]?.focus()};
if(!tt)return s("td");let zt=`sort:${O.id}:${X}`;return s("th",{scope:"col","aria-sort":_t,class:O.numbers.includes(X)?"\
ts-figure":null},K(tt,Xt,{class:"ts-sort","data-key":zt}),Pt?jt(wt.down?"▼":"▲"):null)},pt=tt=>{let X=O.pick?s("inpu\
t",{type:"checkbox","aria-label":tt.cells.slice(0,3).map(Be).join(" "),"data-key":`row:${O.id}:${tt.key}`}):null;return X&&
(X.checked=ot.has(tt.key),X.addEventListener("change",()=>{X.checked?ot.add(tt.key):ot.delete(tt.key),Y()})),s("tr",{},X?
s("td",{class:"ts-tick"},X):null,...tt.cells.map((wt,Pt)=>{let _t=!Pt&&!!Be(wt);return s(_t?"th":"td",{scope:_t?"row":null,
class:O.numbers.includes(Pt)?"ts-figure":null},w(wt,`cell:${O.id}:${tt.key}:${Pt}`))}))};return j?.addEventListener("cha\
nge",()=>{if(ot.clear(),j.checked)for(let{key:tt}of O.rows)ot.add(tt);for(let tt of Z(E,"td.ts-tick input"))tt.checked=j.
checked}),ut(),s("section",{},s("div",{class:"ts-desk-caption"},Q,K("Save as CSV",()=>t.send({type:"export",table:O.id}),
{"aria-label":`Save as CSV: ${O.title}`,"data-key":`export:${O.id}`})),s("div",{class:"ts-desk-scroll",role:"region",tabindex:0,
"aria-labelledby":F},s("table",{class:"ts-table","aria-labelledby":F},s("thead",{},dt),E)))}function _(O){if(O.kind==="t\
able")return B(O);if(O.kind==="form")return S(O);if(O.kind==="link"){let F=O.how==="edit"?"lab/tree":O.how,ot={class:"ts\
-link",href:F?ce(F,O.path):O.path,target:"_blank"};return s("p",{},s("a",{...ot,"data-key":`link:${O.path}`},O.text))}return O.
how==="head"?s("h3",{},O.text):s("p",{class:O.how==="hint"?"ts-hint":null},O.text)}function U(O){if(!n.isLost()){if(y()){
$=()=>U(O);return}b="",I("page",{name:O})}}function it(){let O=t.get("page");i.replaceChildren(...t.get("pages").map(([F,
Q])=>K(Q,()=>U(F),{class:"ts-button","aria-current":F===O?"page":null,"data-key":`page:${F}`})))}let mt=t.get("cleared"),
H=t.get("page");function G(){let O=L().find(dt=>dt===document.activeElement)?.dataset.key,F=o.contains(document.activeElement),
Q=Z(o,".ts-desk-scroll").map(dt=>dt.scrollTop);C="",(t.get("page")!==H||t.get("cleared")!==mt)&&(v="",u=new Map,p=new Map,
g=new Map,{page:H,cleared:mt}={page:t.get("page"),cleared:t.get("cleared")}),r.textContent=t.get("said"),n.alert.textContent=
t.get("trouble"),it();let ot=new Map(t.get("pages")),Lt=s("h2",{tabindex:-1},ot.get(H));if(o.replaceChildren(Lt,...t.get(
"parts").map(_)),Z(o,".ts-desk-scroll").forEach((dt,E)=>{dt.scrollTop=Q[E]??0}),k(),O||F){let dt=L().find(E=>E.dataset.key===
O);(dt??Lt).focus({preventScroll:!!dt})}T&&!Object.keys(t.get("busy")).length&&(T=!1,M()),D(),q()}function q(){if(y()||!$)
return;let O=$;$=null,O()}let rt;function st(){let O=t.get("busy");if(D(),clearTimeout(rt),!Object.keys(O).length){c.replaceChildren();
return}let{doing:F,done:Q,of:ot}=O,Lt=ot?`${F}: ${Q} of ${ot}`:`${F} …`,dt=()=>{c.replaceChildren(s("progress",ot?{max:ot,
value:Q,"aria-label":F}:{"aria-label":F}),s("span",{role:"status"},Lt))};c.childElementCount?dt():rt=window.setTimeout(dt,
Ao)}n.follow("change:turn",()=>setTimeout(G,0)),n.follow("change:busy",st),n.follow("change:by",()=>{l.value=t.get("by")}),
n.follow("msg:custom",O=>{if(O.type==="trouble"&&(C="",T=!1,D(),M()),O.type!=="save")return;let F=URL.createObjectURL(new Blob(
[`\uFEFF${O.text}`],{type:"text/csv"}));s("a",{href:F,download:O.name}).click(),setTimeout(()=>URL.revokeObjectURL(F),1e3)}),
G(),st();let lt=!0,St=new IntersectionObserver(([O])=>{lt=O.isIntersecting});St.observe(e);let Ct=0,kt=setInterval(()=>{
let O=t.get("every");Ct+=1,O&&Ct>=O&&lt&&!document.hidden&&(Ct=0,I("look"))},1e3);return()=>{clearInterval(kt),clearTimeout(
rt),St.disconnect(),n.close()}}function Ze(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=c=>String(c).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var Mo="twoshaft-unsent:";function Mn(t,e){let n=Mo+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,c,i,d=new Date)=>o({...r(),[a]:{value:c,
base:i,at:d.toISOString()}}),drop(a){let{[a]:c,...i}=r();c&&o(i)}}}function On(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var Vt=null,Oo="input, button, select, textarea, summary, a, [tabindex]",Tn=t=>[...t.querySelectorAll(Oo)];function In(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?Vt={form:e,at:Tn(t).indexOf(a),from:null}:Vt?.form===e&&t.
isConnected&&(Vt=null))},r=({target:a})=>{Vt?.form===e&&a instanceof HTMLInputElement&&(Vt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(Vt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=Vt,i=Tn(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var To=["print","colour"];function le(t){for(let e of To){let n=t?.[e];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${e}`,n):document.documentElement.removeAttribute(`data-ts-${e}`))}}function Nn(){le({print:"",colour:""})}function Bn(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),d=K("Use these figures",()=>f("yes")),l=K(
"Go back to the drawn figures",()=>f("no")),u=!1,p=a.map(h=>{let b=ct("bench"),v=h.options.length?s("select",{class:"ts-\
box",id:b,"aria-describedby":`${b}-read`},s("option",{value:""},"choose"),...At(h.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:b,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${b}-hint ${b}-read`}),
C=s("span",{class:"ts-hint",id:`${b}-hint`},h.hint),T=s("p",{class:"ts-read",id:`${b}-read`}),$=h.text,D=()=>{v.value.trim()!==
$.trim()&&($=v.value,e({type:"bench",name:h.name,value:v.value}))};return v.addEventListener(h.options.length?"change":"\
blur",D),v.addEventListener("keydown",y=>{y.key==="Enter"&&(y.preventDefault(),D())}),{name:h.name,flush:D,input:v,element:s(
"div",{class:"ts-bench-row"},s("label",{for:b},h.prompt),s("div",{class:"ts-line-of"},v,C),T),show(y){if(!y)return;(document.
activeElement!==v||v.value===$)&&(v.value=y.text,$=y.text),v.setAttribute("aria-invalid",String(!!y.error)),T.classList.
toggle("ts-error",!!y.error);let I=y.error?[jt("▲")," "]:[],L=y.read&&!y.options.length&&`read as ${y.read}`,m=y.error||
[L,y.origin].filter(Boolean).join(", ");T.replaceChildren(...I,m)}}}),f=h=>{for(let b of p)b.flush();u=!0,e({type:"bench",
name:"in-use",value:h})};o.append(s("summary",{},c),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They are used in place of the drawn figures in this task, all of them or none. Your answers are marke\
d on them by the same rules."),s("div",{class:"ts-bench-rows"},...p.map(h=>h.element)),i,s("div",{class:"ts-tools"},d,l));
function g(){let h=r(),b=new Map(h.rows?.map($=>[$.name,$]));for(let $ of p)$.show(b.get($.name));c.textContent=h.used?"\
✓ This task uses figures from the bench":"Use readings from the bench",l.hidden=!h.wanted,d.hidden=h.used&&!h.stale;let v=h.
wanted&&!h.used?"▲ ":h.used?"● ":"○ ",C=h.used?"in use":h.wanted?`not used; the drawn figures stand. ${h.refused}`:
"not used; the drawn figures stand",T=h.stale?` The tables and choices of this task are still the ones from before. ${h.
used?"Press the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${v}${C}${T}`,
h.wanted&&!h.used&&(o.open=!0)}return{element:o,show:g,hear(h){h.type!=="bench-saved"||h.name!=="in-use"||!u||(u=!1,r().
stale&&n())},lost(){for(let h of[d,l,...p.map(b=>b.input)])h.disabled=!0}}}var Io=5e3,No=2e3,Bo={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Qe="kept in this browser until it can be\
 saved";function Do(t,e,n,r){let o=Gt(t),a=Zt(t),c=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),d=0,l=null,u={},p=()=>{clearTimeout(l??void 0),l=null},f=$=>{n.put(t.name,$,u.revision??0),g($)},g=$=>{d+=
1,v("wait",r()?Qe:"saving"),p(),l=window.setTimeout(()=>v("wait",Qe),Io),e({type:"save",name:t.name,value:$,turn:d})},h=o.
make(t,a,f,($,D)=>{$?(n.put(t.name,D,u.revision??0),v("wait","not saved yet: press Enter or leave the box")):l===null&&(n.
drop(t.name),C(u))}),b=Qt(t,a,a.status);o.status==="above"?b.append(i,h.element,c):b.append(h.element,c,i);function v($,D){
i.className=`ts-status ts-status-${$}`,i.dataset.text!==D&&(i.dataset.text=D,i.replaceChildren(jt(Bo[$]),` ${D}`))}function C($,D=!1){
if(u=$??{},h.show(u),c.replaceChildren(u.read?`read as ${u.read}`:""),!D)if(u.error){let{error:y,saved:I="",note:L}=u;v(
"unread",`Look again: ${y} Kept as typed, ${Ze(I)}${L?`; ${L}`:""}.`)}else u.saved&&!u.blank?v("saved",`saved ${Ze(u.saved)}${u.
note?`; ${u.note}`:""}`):v("none",o.blank??"not answered yet")}let T=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:b,show($){l===null&&C($,T())},saved($){$.turn===d&&(h.pending?.()||n.drop(t.name),p(),C($.state))},refused($){
$.turn===d&&(p(),h.refused(),v("bad",`not saved: ${$.reason}`))},off(){clearTimeout(l??void 0),(l!==null||h.pending?.())&&
v("wait",Qe)},catchUp(){let $=n.get(t.name);$&&(On($,u)?(h.show({...u,value:$.value,error:""}),g($.value)):n.drop(t.name))},
flush:()=>h.flush?.(),summary:()=>({answered:!!u.saved&&!u.blank&&!u.error&&!u.short,unread:!!u.error,trouble:T(),waiting:l!==
null})}}function Dn({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=Mn(window.localStorage,r),a=!1,c=()=>a||p.isLost(),
i=n.map(y=>Do(y,g,o,c)),d=new Map(i.map(y=>[y.name,y])),l=s("p",{class:"ts-who"}),u=s("p",{class:"ts-total"});le(t.get("\
look"));let p=et({model:t,el:e},{kind:"form",lost(){for(let y of i)y.off();f.lost(),h()},line(y){a=y;for(let I of i)y?I.
off():I.catchUp();h()}}),f=Bn(t,p.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(s(
"div",{class:"ts-top"},l,u),p.alert,f.element,...i.map(y=>y.element)),e.dataset.task=t.get("task_id");function g(y){p.send(
y),h()}function h(){let y=i.map(W=>W.summary()),I=y.filter(W=>W.answered).length,L=y.filter(W=>W.trouble).length,m=y.some(
W=>W.waiting),x=y.filter(W=>W.unread).length,k=L?`${L} not saved`:m?c()?"the rest kept in this browser":"saving":I&&!x?"\
all saved":"",M=[`${I} of ${i.length} answered`,x?`${x} cannot be read`:"",k];u.textContent=M.filter(Boolean).join(", ");
let N={task:t.get("task_id"),answered:I,asked:i.length,unread:x};e.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:N}))}function b(){l.textContent=t.get("header");let y=t.get("states");for(let I of i)I.show(y[I.name]);h()}let v=0,
C=0,T=()=>{if(clearTimeout(C),document.visibilityState==="hidden")for(let I of i)I.flush();if(document.visibilityState!==
"visible")return;let y=v+No-Date.now();if(y>0){C=window.setTimeout(T,y);return}v=Date.now(),p.send({type:"look"})},$=r?new BroadcastChannel(
`twoshaft-saved:${r}`):null;$?.addEventListener("message",({data:y})=>{y===t.get("task_id")&&p.send({type:"look"})}),document.
addEventListener("visibilitychange",T),window.addEventListener("focus",T),e.addEventListener("focusin",y=>{y.relatedTarget instanceof
Node&&e.contains(y.relatedTarget)||T()}),p.follow("change:states change:header",b),p.follow("msg:custom",y=>{y.type==="s\
aved"&&(d.get(y.name)?.saved(y),$?.postMessage(t.get("task_id"))),y.type==="refused"&&d.get(y.name)?.refused(y),h()}),p.
follow("msg:custom",f.hear),p.follow("change:bench",f.show),b();for(let y of i)y.catchUp();h(),f.show(),p.alert.textContent=
t.get("notice");let D=In(e,`${r}/${t.get("task_id")}`);return()=>{clearTimeout(C),D(),$?.close(),p.close(),document.removeEventListener(
"visibilitychange",T),window.removeEventListener("focus",T)}}function De(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var Po={right:"●",other:"◆",unread:"▲"};function Ro(t){let e=Zt(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),r=null,o=Gt(t).make(t,e,i=>{r=i,o.show({value:r}),c(void 0)},(i,d)=>{i&&(r=d)}),a=Qt(t,e,e.status);a.append(o.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let d=i?[jt(Po[i.how]),s("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...d)}return{name:t.name,element:a,value(){return o.flush?.(),r},show(i,d){i!==void 0&&(r=i,o.show(
{value:r,saved:"given"})),c(d)},still(i){o.setDisabled(i),a.classList.toggle("ts-given",i)}}}function Pn({model:t,el:e}){
let n=et({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let r=s("p",{class:"ts-title",role:"heading","aria\
-level":"3"}),o=s("p",{class:"ts-lead"}),a=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-asked"}),i=K(t.get("give"),()=>{
let b=Object.fromEntries(u.map(v=>[v.name,v.value()]));n.send({type:"give",values:b})});i.classList.add("ts-first");let d=K(
"",()=>n.send({type:"fresh"})),l=t.get("all")?K(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,r,o,a,c,s("p",{class:"ts-acts"},i,d,l));let u=[],p=()=>{let b=t.get("values"),v=t.get("told");for(let D of u)
D.show(b[D.name],v[D.name]),D.still(v[D.name]!==void 0&&v[D.name].how!=="unread");let C=u.some(({name:D})=>!v[D]||v[D].how===
"unread"),T=document.activeElement===i;if(i.hidden=!C,d.textContent=t.get("fresh"),d.hidden=C||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!T||C)return;let $=Z(e,".ts-told")[0];$.tabIndex=-1,$.focus({preventScroll:!0})},f=()=>{(Z(c,"input, sel\
ect, [tabindex]")[0]??(d.hidden?i:d)).focus({preventScroll:!0})},g=()=>{u=t.get("fields").map(Ro),c.replaceChildren(...u.
map(({element:b})=>b)),r.textContent=t.get("title"),r.hidden=!r.textContent,o.textContent=t.get("lead"),o.hidden=!o.textContent,
a.replaceChildren(...Rt(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let b=e.contains(
document.activeElement);g(),b&&f()}),n.follow("change:told change:values change:notice change:fresh",p),g();let h=t.get(
"place");if(h){let b=De(sessionStorage,localStorage,h).get();t.send({type:"who",id:b?.id??"",ticket:b?.ticket??""})}return()=>n.
close()}var Rn="twoshaft-mine";var jn="This is done as soon as the connection is back.",jo={"to get":"○",open:"◐","handed in":"●","changed since":"\
◑",feedback:"✓"},Ho={"to get":"To get",open:"Open","handed in":"Handed in","changed since":"Changed after handing in",
feedback:"Marked"},Pe=(t,e,n)=>s("a",{href:ce("lab/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"t\
s-link"},e);function Hn(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:r,unread:o})=>s("li",{},`${e}\
: `,n===r?"nothing answered":n?`${n} of ${r} missing`:"",...o.map(([a,c])=>s("span",{},s("b",{},"cannot be read: "),`“${a}\
” ${c}`)))))}function Wo(t){let e=({name:r})=>Number(r.split("-").at(-1)),n=[...t].sort((r,o)=>e(r)-e(o)).flatMap(({notebooks:r})=>r.
map(o=>[o.split("/").pop()??"",o]));localStorage.setItem(Rn,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(
new Event("storage"))}var de=null;function Wn({model:t,el:e}){let n="",r=De(sessionStorage,localStorage,t.get("place")),
o=!1,a=(w=!0)=>{o=w,o&&de&&(d.textContent=jn)},c=et({model:t,el:e},{kind:"start",lost:a,line:a}),i=s("div",{}),d=s("p",{
class:"ts-said",role:"status"});c.show(c.alert,d,i);let l=(w,B={})=>{i.getAttribute("aria-busy")==="true"||c.isLost()&&B.
quietly||(B.quietly||(de={type:w,...B},i.setAttribute("aria-busy","true"),d.textContent=o?jn:"One moment.",c.alert.textContent=
""),c.isLost()||t.send({type:w,...B}))},u=()=>{let w=de;de=null,w&&(w.type==="sign-in"||t.get("me").id)&&l(w.type,w)},p=(w,B,_,U)=>s(
"button",{type:"button",class:U?"ts-button ts-first":"ts-button","data-key":B,onclick:_},w);function f(){let w=ct("who"),
B=ct("word"),_=s("select",{id:w,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.
get("people").map(([it,mt])=>s("option",{value:it,selected:it===n},mt)));_.addEventListener("change",()=>{n=_.value});let U=s(
"input",{id:B,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data\
-key":"word"});return s("form",{class:"ts-sign-in",onsubmit:it=>{it.preventDefault(),l("sign-in",{name:_.value,word:U.value})}},
s("h2",{},"Who is working?"),s("div",{class:"ts-pair"},s("label",{for:w},"Your name"),_),s("div",{class:"ts-pair"},s("la\
bel",{for:B},"Sign-in word from your slip"),U),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},
"Sign in"),s("p",{class:"ts-hint"},t.get("kept")))}function g(w,B){let _=q=>`${q}:${w.name}`,U=s("div",{class:"ts-doing"});
for(let q of w.feedback.slice(0,1))U.append(s("a",{href:ce("files",q),target:"_blank",class:"ts-link","data-key":_("feed\
back")},"Read feedback"));for(let q of w.notebooks){let rt=w.notebooks.length===1?"Open":`Open ${q.split("/").pop()}`;U.
append(Pe(q,rt,_(`open ${q}`)))}w.can_get&&U.append(p(w.notebooks.length?"Get again":"Get",_("get"),()=>l("get",{name:w.
name}),!w.notebooks.length)),w.can_hand_in&&U.append(p(w.receipt?"Hand in again":"Hand in",_("hand in"),()=>l("hand-in",
{name:w.name})));for(let q of U.children)q.setAttribute("aria-label",`${q.textContent}: ${w.title}`);let it=t.get("askin\
g")===w.name,mt=w.receipt||w.unread>0,H=s("tr",{},s("th",{scope:"row"},w.title),s("td",{},w.due?s("span",{class:"ts-due",
"aria-hidden":"true"},"Due "):null,w.due||"no date",w.overdue?s("span",{class:"ts-small-line"},"date passed"):null),s("t\
d",w.receipt?{tabindex:-1,"data-key":_("receipt")}:{},s("span",{class:"ts-shape","aria-hidden":"true"},jo[w.state]||""),
s("b",{},Ho[w.state]||w.state),s("span",{class:"ts-small-line"},w.detail),B?s("span",{class:"ts-small-line"},`Mark: ${B}`):
null),s("td",{},U));if(it)return[H,s("tr",{},s("td",{colspan:4},b(w)))];if(!mt||!w.gaps.length)return[H];let G=s("td",{colspan:4},
s("b",{},h(w)),Hn(w.gaps));return[H,s("tr",{},G)]}let h=({left:w,unread:B})=>Wt([w?`${w} ${w===1?"answer is":"answers ar\
e"} missing`:null,B?`${B} cannot be read`:null]).join(", ");function b(w){let B=ct("question"),_=s("div",{class:"ts-doin\
g"});for(let it of w.notebooks)_.append(Pe(it,"Go on with it",`go on:${w.name}`));let U=h(w);return _.append(p(U?"It is \
my own work: hand in as it is":"It is my own work: hand in",`hand in anyway:${w.name}`,()=>l("hand-in",{name:w.name,own:!0}),
!U)),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":B,"data-key":"question"},s("p",{id:B},s("b",
{},`${w.title}: not handed in yet.${U?` ${U}.`:""}`),U?" An answer that is missing or cannot be read earns nothing.":null),
U?Hn(w.gaps):null,s("p",{},"By handing in you state: ",s("b",{},t.get("statement"))),_)}let v=new Set,C={met:"✓",enough:"\
◐","not yet":"○"};function T(w,B){let _=w.entries.map(H=>B.find(G=>G.name===H)).filter(H=>H!==void 0),U=w.lesson?Pe(
w.lesson,`Lesson ${w.title}`,`lesson:${w.lesson}`):s("span",{class:"ts-small-line"},"no lesson here"),it=s("details",{open:v.
has(w.module)},s("summary",{"data-key":`outcomes:${w.module}`},`Outcomes: ${w.count||"none"}`),s("ul",{},...w.outcomes.map(
([H,G,q,rt])=>s("li",{},s("span",{class:"ts-shape","aria-hidden":"true"},C[H]||""),s("b",{},`${H}${q&&H==="enough"?`, ${q}`:
""}: `),G,q&&H==="not yet"?`. Still missing: ${q}`:"",rt?` (${rt})`:""))));it.addEventListener("toggle",()=>{it.open?v.add(
w.module):v.delete(w.module)});let mt=_.flatMap(H=>g(H,w.marks[H.name]));return s("tbody",{},s("tr",{class:"ts-module"},
s("th",{scope:"rowgroup",colspan:4},w.title,s("span",{class:"ts-assigned"},_.length?"assigned":"not assigned"))),...mt,s(
"tr",{},s("td",{colspan:4},U,s("p",{class:"ts-next"},s("b",{},"Next: "),w.next),it)))}function $(){let w=t.get("me"),B=t.
get("entries"),_=s("table",{class:"ts-table"},s("thead",{},s("tr",{},...["Assignment","Due","State","What you can do"].map(
U=>s("th",{scope:"col"},U)))),...t.get("modules").map(U=>T(U,B)));return s("section",{},s("div",{class:"ts-me"},s("h2",{},
`Working as ${w.name} (${w.id})`),w.ticket?p("Not you? Sign out","sign-out",()=>{r.drop(),l("sign-out"),document.dispatchEvent(
new CustomEvent("twoshaft-signed-out"))}):null),B.length?null:s("p",{},"Nothing is assigned yet."),_,p("Look again","loo\
k",()=>l("look")))}function D(){let w=!!t.get("me").id,B=t.get("modules").map(it=>it.lesson),U=t.get("lessons").filter(([
it])=>!w||!B.includes(it));return U.length?s("section",{},s("h2",{},w?"To look things up":"Lessons"),s("ul",{class:"ts-l\
essons"},...U.map(([it,mt])=>s("li",{},Pe(it,mt,`lesson:${it}`))))):null}let y=!1,I=t.get("me").id?null:r.get(),L=I!==null;
function m(){let w=t.get("me");w.id?le(t.get("look")):Nn(),w.id?r.keep(w):(y||I&&!L)&&r.drop(),y=!!w.id,Wo(w.id?t.get("e\
ntries"):[])}let x=0,k="",M=()=>Z(i,"[data-key]"),N=()=>i.querySelector("input[data-key=word]");function W(){let B=M().find(
kt=>kt===document.activeElement)?.dataset.key;i.removeAttribute("aria-busy");let _=!!t.get("me").id;d.textContent=t.get(
"said"),c.alert.textContent=t.get("trouble");let U=N()?.value,it=L?s("p",{},"One moment."):f();i.replaceChildren(...Wt([
_?$():it,D()]));let mt=N();mt&&U&&(mt.value=U);let H=k;if(k=t.get("asking"),k&&k!==H&&M().find(kt=>kt.dataset.key==="que\
stion")?.focus(),!B||k&&k!==H)return;let G=M().find(kt=>kt.dataset.key===B),q=B.split(":")[1],rt=M().filter(kt=>q&&kt.dataset.
key?.endsWith(`:${q}`)),st=rt.find(kt=>kt.dataset.key?.startsWith("receipt")),lt=rt.find(kt=>kt!==st),St=B.startsWith("h\
and in anyway")?st??lt:lt,Ct=G??St??Z(i,"a, button, select")[0];Ct?.focus({preventScroll:!0}),d.scrollIntoView({block:"n\
earest"}),Ct?.scrollIntoView({block:"nearest"})}let V=()=>{clearTimeout(x),x=setTimeout(()=>{let w=L;L=!1,w||(de=null),m(),
W(),w&&u()},0)};t.on("change",V),m(),W(),I?t.send({type:"resume",name:I.id,ticket:I.ticket}):u();let P=()=>{!document.hidden&&
t.get("me").id&&l("look",{quietly:!0})},S=new IntersectionObserver(([w])=>{w.isIntersecting&&P()});return S.observe(e),document.
addEventListener("visibilitychange",P),()=>{clearTimeout(x),t.off("change",V),S.disconnect(),document.removeEventListener(
"visibilitychange",P),c.close()}}var _o={bench:Es,build:Ts,cord:Bs,depth:Ds,desk:An,exploded:qs,face:Ks,fault_board:Gs,form:Dn,gate:Vs,gears:Xs,hazards:Js,
lifting:Zs,micrometer:Qs,own_checks:tn,press:en,question:Pn,rules:sn,runout:nn,sealant:un,seat:pn,shims:fn,sketch:hn,start:Wn,
thread:gn,unit_section:mn,whole_build:Sn,wrench:Ln};export{_o as screens};
