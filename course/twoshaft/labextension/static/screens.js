var _n="http://www.w3.org/2000/svg";function s(t,e={},...n){let r=document.createElement(t);for(let[o,a]of Object.entries(
e))typeof a=="function"?r.addEventListener(o.slice(2),a):a===!0?r.setAttribute(o,""):a!==!1&&a!=null&&r.setAttribute(o,String(
a));return r.append(...Wt(n)),r}function R(t,e={},...n){let r=document.createElementNS(_n,t);return Ht(r,e),r.append(...n),
r}function Ht(t,e){for(let[n,r]of Object.entries(e))r!=null&&t.setAttribute(n,String(r))}function K(t,e,n={}){return s("\
button",{type:"button",class:"ts-button",onclick:e,...n},t)}function Mt(t,e){return s("select",{class:"ts-box",...t},...Et(
e))}function Rt(t){return t.flatMap(([e,n])=>[s("dt",{},e),s("dd",{},n)])}function jt(t){return s("span",{class:"ts-shap\
e","aria-hidden":"true"},t)}function Wt(t){return t.filter(e=>e!=null&&e!==!1)}var es=0;function ct(t){return es+=1,`two\
shaft-${t}-${es}-${Math.random().toString(36).slice(2,7)}`}function Jt(t,e){let n=t.querySelector(e);if(!n)throw new Error(
`nothing matches ${e}`);return n}function J(t,e){return[...t.querySelectorAll(e)]}function Ct(t,e){let{target:n}=t;return n instanceof
Element?n.closest(e):null}function Ot(t){return t.ctrlKey||t.metaKey||t.altKey}function pe(t){let e=J(t,"button, input, \
select");for(let n of e)n.disabled=!0}function ss(t){for(let e=t.parentElement;e;e=e.parentElement){let n=getComputedStyle(
e).overflowY;if((n==="auto"||n==="scroll")&&e.scrollHeight>e.clientHeight)return e}return document.scrollingElement??document.
documentElement}function fe(t,e){return Math.hypot(t[0]-e[0],t[1]-e[1])}function nt(t,e,n=t){return K(t,e,{"aria-label":n})}
function Et(t){return[...t].map(([e,n])=>s("option",{value:e},n))}function Ut(t){return t.map(e=>s("li",{},e))}var Bt=(t,e)=>s(
"div",{class:"ts-beside"},s("div",{},...Wt(t)),s("div",{},...Wt(e)));var je=new Map;function At(t,e){if(je.has(t))throw new Error(`the answer kind ${t} is registered twice`);je.set(t,e)}function Gt(t){
let e=je.get(t.kind);if(!e)throw new Error(`the answer kind ${t.kind} has no browser side`);return e}function Zt(t){let e=ct(
t.kind);return{prompt:`${e}-prompt`,control:`${e}-control`,hint:`${e}-hint`,read:`${e}-read`,status:`${e}-status`}}function Qt(t,e,n){
let{prompt:r}=Gt(t),o={class:"ts-prompt",id:e.prompt};if(r==="legend")return s("fieldset",{class:"ts-field","aria-descri\
bedby":n},s("legend",o,t.prompt));let a=r==="label"?s("label",{...o,for:e.control},t.prompt):s("p",o,t.prompt);return s(
"div",{class:"ts-field"},a)}function he(t,e,n,r){let a=t.options.map(([c,i])=>{let d={"aria-describedby":e.status},l=s("input",{type:n,name:e.control,
value:c,...d});return{key:c,input:l,row:s("label",{class:"ts-option"},l,s("span",{},i))}});for(let{input:c}of a)c.addEventListener(
"change",()=>{r(a.filter(i=>i.input.checked).map(({key:i})=>i))});return{element:s("div",{class:"ts-options"},...a.map(({
row:c})=>c)),show(c){let i=c.value==null?[]:[c.value].flat();for(let{key:d,input:l}of a)l.checked=i.includes(d)},setDisabled(c){
for(let{input:i}of a)i.disabled=c},refused(){}}}At("choice",{prompt:"legend",make:(t,e,n)=>he(t,e,"radio",r=>n(r[0]))});At("choices",{prompt:"legend",make:(t,e,n)=>he(t,e,"checkbox",n)});function ge(t){return t.filter(([,e])=>e).map(([e,n])=>`${e}=${n}`)}function me(t){let e=Array.isArray(t)?t.filter(n=>typeof n==
"string"):[];return new Map(e.filter(n=>n.includes("=")).map(n=>[n.slice(0,n.indexOf("=")),n.slice(n.indexOf("=")+1)]))}At("each",{prompt:"legend",make(t,e,n){let r=t.lines,o=t.options,a=r.map(([c,i],d)=>{let l=`${e.control}-${d}`,u=s("labe\
l",{class:"ts-each-line",for:l},i),p=Mt({id:l,"aria-describedby":e.status},[["","choose"],...o]);return{key:c,box:p,row:s(
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
G])=>`${(H-o).toFixed(1)} ${(i-G).toFixed(1)}`,p=(H,G)=>`M${H.map(u).join("L")}${G?"Z":""}`,f=ct("face"),g=d/100,h=2*g,y=(H,G)=>R(
"pattern",{id:`${f}-${H}`,width:h,height:h,patternUnits:"userSpaceOnUse"},R("path",{d:G,class:"tsp-hatch","stroke-width":g/
4})),b=R("defs",{},y("oil",`M0 ${h}L${h} 0`),y("dirt",`M0 ${h}L${h} 0M0 0L${h} ${h}`)),E=t.cavities.map(([,H])=>p(H,!0)).
join(""),B=t.islands.map(H=>p(H,!0)).join(""),k=p(t.outline,!0)+E,$=R("g"),A=R("g"),L=R("g"),M=R("g"),m=R("path",{class:"\
tsp-live",d:""}),S=R("path",{class:"tsp-chosen",d:""}),v=R("path",{class:"tsp-land",d:k,"fill-rule":"evenodd"}),I=R("pat\
h",{class:"tsp-edge",d:k+B,"stroke-width":g/2.5}),N=([H,G],q,rt="middle")=>{let st={x:H-o,y:i-G,"font-size":2.5*g,"text-\
anchor":rt};return R("text",{class:"tsp-text",...st},q)},F=[(o+a)/2,(c+i)/2],Z=(H,G)=>{let q=fe(H,F)||1;return[H[0]+G*(F[0]-
H[0])/q,H[1]+G*(F[1]-H[1])/q]};for(let{x:H,y:G,d:q,leads:rt,name:st}of t.holes){let lt={cx:H-o,cy:i-G,"stroke-width":g/4},
St=rt==="blind"?"tsp-hole tsp-blind":"tsp-hole";L.append(R("circle",{...lt,r:q/2,class:St})),rt==="to the outside"&&L.append(
R("circle",{...lt,r:q/3,class:"tsp-hole"}));let[ft,Nt]=Z([H,G],-(q/2+4.4*g));L.append(N([ft,Nt-.8*g],st.replace("bolt ",
"")))}for(let H of t.guides){let[G,q]=[H.x-o,i-H.y],rt=`M${G-g} ${q}h${h}M${G} ${q-g}v${h}`;L.append(R("path",{class:"ts\
p-guide",d:rt,"stroke-width":g/2}));let st={"stroke-width":g/5,"stroke-dasharray":`${g} ${g}`};L.append(R("circle",{cx:G,
cy:q,r:H.reach,class:"tsp-reach",...st}));let lt=Z([H.x,H.y],H.reach+h),St=(lt[0]-H.x)/(H.reach+h);L.append(N(lt,H.name,
St>.5?"start":St<-.5?"end":"middle"))}for(let{word:H,points:G,width:q}of t.spots){let[rt]=H.split(" "),[st,lt]=[G[0],G[G.
length-1]],St=fe(st,lt)||1,[ft,Nt]=[-(lt[1]-st[1])/St*q/2,(lt[0]-st[0])/St*q/2],T=[[st[0]+ft,st[1]+Nt],[lt[0]+ft,lt[1]+Nt],
[lt[0]-ft,lt[1]-Nt],[st[0]-ft,st[1]-Nt]],_=`url(#${f}-${rt})`;$.append(R("path",{d:p(T,!0),fill:_,class:"tsp-spot","stro\
ke-width":g/4}));let Q=N(Z([(st[0]+lt[0])/2,(st[1]+lt[1])/2],9*g),rt);Q.classList.add("tsp-spot-word"),L.append(Q)}let P=[
100,50,20,10].find(H=>H<d/4)??10,x=`M${g} ${l-g}v${-g}v${g/2}h${P}v${-g/2}v${g}`,w={x:P+h,y:l-g,"font-size":2.5*g};M.append(
R("path",{class:"tsp-edge",d:x,"stroke-width":g/4}),R("text",{class:"tsp-text",...w},`${P} mm`));let D=`0 0 ${d.toFixed(
1)} ${l.toFixed(1)}`,W=R("svg",{viewBox:D,class:"tsp-face",role:"img","aria-label":e},b,v,$,A,I,L,S,m,M),U=`max-width: ${(25*
d/l).toFixed(1)}rem`;return{frame:s("div",{class:"ts-pad-face",style:U},W),svg:W,over:M,live:m,chosen:S,land:v,path:p,unit:g,
box:{left:o,right:a,low:c,high:i,width:d,height:l},place({clientX:H,clientY:G}){let q=W.getBoundingClientRect(),rt=Math.
min(q.width/d,q.height/l);return[o+(H-q.left-(q.width-rt*d)/2)/rt,i-(G-q.top-(q.height-rt*l)/2)/rt]},strokes(H){A.replaceChildren(
...H.map(wt))}};function wt(H){let G=He(H),q=We(t,G),rt=Fe(t,G.hand,Math.max(G.size,g/2)),st=q.length>1?p(q,G.side==="ro\
und"):q.length?`${p(q)}h0.01`:"",lt=R("path",{d:st,class:`tsp-stroke tsp-${G.hand}`,"stroke-width":rt});if(G.hand!=="fil\
m")return lt;let St=Math.min(8,Math.max(.6,40*G.size)),ft={"stroke-width":g/3,"stroke-dasharray":`${St} ${St}`};return R(
"g",{},lt,R("path",{d:st,class:"tsp-grain",...ft}))}}function ye({face:t,label:e,onLay:n,onRemove:r,onClear:o}){let a=Gn(
t,e),c=s("p",{class:"ts-hidden","aria-live":"polite"}),i=s("p",{class:"ts-read ts-pad-trouble",role:"status"}),d=(x,w)=>s(
"span",{class:"ts-pair"},s("label",{for:w.id},x),w),l=Mt({id:ct("hand")},Object.entries(t.hands)),u=s("input",{class:"ts\
-box ts-size",id:ct("size"),type:"text",inputmode:"decimal",autocomplete:"off",maxlength:"12"}),p=s("label",{for:u.id},"\
thickness"),f=Mt({id:ct("place")},t.stretches.map(({id:x,name:w})=>[x,w]));f.append(s("optgroup",{label:"Round a hole"},
...t.holes.map(({id:x,name:w})=>s("option",{value:`${ve}${x}`},`round ${w}`))));let g=Mt({id:ct("side")},zn.map(x=>[x,t.
sides[x]])),h=K("Lay it here",()=>M([L(f.value)])),y=K("Lay it on every stretch",()=>M(t.stretches.map(({id:x})=>L(x)))),
b=K("Take back the last pass",()=>{k&&r(k-1,!0)}),E=K("Clear the face",o),B={film:"",bead:""},k=0,$=!1;function A(){if(l.
value==="wipe")return"";let[x,w]=t.sizes[l.value],D=ns(u.value);if(D>=x&&D<=w)return u.removeAttribute("aria-invalid"),`\
 ${Number(D.toFixed(3))}`;let W=l.value==="film"?"the thickness of the film":"the diameter of the bead";return i.textContent=
u.value.trim()?`Read “${u.value}”: give ${W} from ${x} to ${w} mm.`:`First give ${W} in mm.`,u.setAttribute("aria-in\
valid","true"),u.focus(),null}function L(x){let w=A();if(w===null)return null;let D=x.startsWith(ve)?x:`${g.value} ${x}`;
return`${l.value}${w} ${D}`}function M(x){let w=x.filter(D=>D!==null);if(!($||w.length<x.length)){if(k+w.length>t.most){
i.textContent=`There is room for ${t.most} passes; take some back first.`;return}i.textContent="",c.textContent=w.length===
1?`Laid: ${_e(t,w[0])}`:`Laid on ${w.length} stretches`,n(w)}}function m(){let x=l.value==="wipe";p.textContent=l.value===
"bead"?"diameter":"thickness",u.disabled=$||x,u.value=x?"":B[l.value],u.placeholder=x?"":"mm",h.textContent=x?"Wipe here":
"Lay it here",y.textContent=x?"Wipe every stretch":"Lay it on every stretch",i.textContent="",S()}function S(){let x=f.value.
startsWith(ve);g.disabled=$||x;let w=We(t,x?{side:"round",place:f.value.slice(ve.length)}:{side:g.value,place:f.value});
a.chosen.setAttribute("d",w.length?a.path(w,x):""),a.chosen.setAttribute("stroke-width",String(a.unit/2))}l.addEventListener(
"change",m),u.addEventListener("input",()=>{B[l.value]=u.value}),f.addEventListener("change",S),g.addEventListener("chan\
ge",S),u.addEventListener("keydown",x=>{x.key==="Enter"&&(x.preventDefault(),h.click())});let v=null;a.svg.addEventListener(
"pointerdown",x=>{if($||x.button>0)return;v=[a.place(x)],a.svg.setPointerCapture(x.pointerId);let w=Math.max(1,Number(B.
bead.replace(",","."))||1);a.live.setAttribute("stroke-width",String(Fe(t,l.value,w)))}),a.svg.addEventListener("pointer\
move",x=>{if(!v)return;let w=a.place(x);fe(w,v[v.length-1])<Kn||(v.push(w),a.live.setAttribute("d",a.path(v)))});let I=x=>{
if(!v)return;let w=v;if(v=null,a.live.setAttribute("d",""),x.type==="pointercancel")return;if(os(w)<qn){f.value=rs(t,w[0]),
S();return}let D=A();if(D===null)return;let W=as(w,t.points).map(U=>U.join(","));M([`${l.value}${D} at ${W.join(" ")}`])};
a.svg.addEventListener("pointerup",I),a.svg.addEventListener("pointercancel",I);let N=s("ol",{class:"ts-passes","aria-la\
bel":"Passes, in the order they were done"}),F=s("p",{class:"ts-hint"},"Nothing is laid yet."),Z=s("div",{class:"ts-pad-\
tools"},s("div",{class:"ts-tools"},d("tool",l),s("span",{class:"ts-pair"},p,u)),s("div",{class:"ts-tools"},d("where",f),
d("runs",g)),s("div",{class:"ts-tools"},h,y,b,E),i,c),P=()=>J(N,"button");return m(),{drawing:a,tools:Z,list:N,empty:F,frame:a.
frame,element:s("div",{class:"ts-pad"},a.frame,Z,s("div",{class:"ts-pad-list"},F,N)),show(x,w=[]){k=x.length,a.strokes(x),
F.hidden=k>0;let D=P().findIndex(W=>W.matches(":focus"));N.replaceChildren(...x.map((W,U)=>s("li",{},s("span",{},`${_e(t,
W)}${w[U]?`, ${w[U]}`:""} `),K("take out",()=>r(U,!1),{class:"ts-button ts-remove",disabled:$,"aria-label":`Take out pas\
s ${U+1}`})))),D>=0&&(P()[Math.min(D,k-1)]??h).focus()},setDisabled(x){$=x;for(let w of[l,f,h,y,b,E,...P()])w.disabled=x;
u.disabled=x||l.value==="wipe",S()}}}At("film",{prompt:"words",make(t,e,n){let r=[],o=c=>{r=c,a.show(r),n(r)},a=ye({face:t.face,label:`${t.prompt}: ${t.face.
name}, seen from the side that is coated`,onLay:c=>o([...r,...c]),onRemove:c=>o(r.filter((i,d)=>d!==c)),onClear:()=>o([])});
return{element:a.element,show(c){r=[c.value??[]].flat().filter(i=>typeof i=="string"),a.show(r)},setDisabled:a.setDisabled,
refused(){}}}});function is(t,{send:e,typing:n,said:r=a=>String(a??""),wrong:o=a=>!!a.error}){let a=s("input",{type:"text",class:"ts-box\
 ts-number-box",id:t.control,inputmode:"text",autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${t.
hint} ${t.read} ${t.status}`}),c="",i=()=>c===null||a.value.trim()!==c.trim(),d=()=>{i()&&(c=a.value,e(a.value))};return a.
addEventListener("blur",d),a.addEventListener("keydown",l=>{let u=(l.ctrlKey||l.metaKey)&&l.key.toLowerCase()==="s";l.key!==
"Enter"&&!u||(l.preventDefault(),d())}),a.addEventListener("input",()=>n(i(),a.value)),{box:a,flush:d,pending:i,refused(){
c=null},show(l){a.setAttribute("aria-invalid",String(o(l))),!(document.activeElement===a&&a.value!==c)&&(c=r(l.value),a.
value=c)}}}function cs(t,e){let[n,r,o]=t.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u)??[t,t,""];return`${(/\d/.test(o)?n:r).
trim()} ${e}`.trim()}function ls(t,e,n,r){let o=Mt({"aria-label":"Choose the unit","aria-describedby":r},[["","unit"],...e.map(a=>[a,a])]);return o.
addEventListener("change",()=>{o.value&&(t.value=cs(t.value,o.value),/\d/.test(t.value)?n():t.focus())}),t.addEventListener(
"input",()=>{o.value=""}),o}At("number",{prompt:"label",make(t,e,n,r){let o=t.units,{box:a,flush:c,pending:i,refused:d,show:l}=is(e,{send:n,typing:r}),
u=s("span",{class:"ts-hint",id:e.hint},t.hint),p=o.length?ls(a,o,c,e.prompt):null;return{element:s("div",{class:"ts-line\
-of"},a,p,u),show:l,setDisabled(f){a.disabled=f,p&&(p.disabled=f)},refused:d,flush:c,pending:i}}});function us(t,e){let r=[...new Set([t??[]].flat())].filter(o=>e.includes(String(o))).map(String);return[...r,...e.filter(
o=>!r.includes(o))]}var te=(t,e)=>t.join(`
`)===e.join(`
`),ds=t=>`#${t.keys[0]}`,ke=class{constructor(e,n){this.labels=new Map(e.map(([r,o])=>[r,o])),this.stages=new Map;for(let[
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
return[...n.slice(o),...n.slice(0,o)].find(c=>a(c).startsWith(e))}};var Yn=12,Xn=700,Vn=5,ps=32,Jn=8;function xe({label:t,steps:e,order:n,onChange:r}){let o=new ke(e,n),{staged:a}=o,c=!1,i={},
d=!1,l=new Map,u=s("div",{"aria-live":"assertive",class:"ts-hidden"}),p=s("ul",{role:a?"tree":"listbox","aria-label":t,"\
aria-multiselectable":"true",class:"ts-steps"}),f=K("Up",()=>W(-1),{"aria-label":"Move the chosen step up"}),g=K("Down",
()=>W(1),{"aria-label":"Move the chosen step down"}),h=K("Undo",()=>o.undo()&&wt("Undone")),y=K("Redo",()=>o.redo()&&wt(
"Done again")),b=K("Choose several",()=>st(!c),{"aria-pressed":"false"}),E=K("Gather stages",()=>D(o.gathered(),"Steps o\
f one stage now stand together")),B=s("input",{type:"text",inputmode:"numeric",size:"3",class:"ts-box","aria-label":"Mov\
e the chosen step to position",onkeydown:C=>{C.key==="Enter"&&U()}}),k=s("select",{class:"ts-box ts-before","aria-label":"\
Move the chosen step before"}),$=s("span",{class:"ts-chosen"}),A=K("Move",U,{"aria-label":"Move to this position"}),L=K(
"Move",it,{"aria-label":"Move before this step"}),M=s("div",{class:"ts-tools",role:"group","aria-label":"Move the chosen\
 step"},f,g,h,y,b,a?E:null),m=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"To position ",B,A),s("span",{class:"\
ts-pair"},"or before ",k,L)),S="Arrow keys walk through the list. Shift with an arrow moves the chosen step. Or: Space p\
icks it up, arrows carry it, Space puts it down, Escape puts it back. Enter takes a step into a block or out of it; a bl\
ock moves as one. Letters go to the next step that starts with them."+(a?" Left closes a stage, Right opens it.":""),v=s(
"details",{class:"ts-keys"},s("summary",{},"Keys, and long moves"),s("p",{},S),m),I=s("div",{class:"ts-order"},s("p",{class:"\
ts-hint"},"Drag a step, or choose it and use the buttons, or press Shift with an arrow key."),M,$,p,v,u);function N(C){u.
textContent=C}function F(C=""){N(`${o.unitName()}${C}, ${o.where()}`)}function Z(C){let j=l.get(C.id);if(j)return j;let Y=s(
"li",{role:a?"treeitem":"option",class:"ts-step"});return Y.dataset.row=C.id,l.set(C.id,Y),Y}function P(C=!1){let j=o.settle(),
Y=new Set(j.map(X=>X.id));for(let[X,bt]of l)Y.has(X)||(bt.remove(),l.delete(X));let ut=o.unit(),xt=new Set(ut),pt=p.firstElementChild;
for(let X of j){let bt=Z(X);bt===pt?pt=pt.nextElementSibling:p.insertBefore(bt,pt),x(bt,X,xt)}B.value=String(o.order.indexOf(
ut[0])+1);let tt=[...o.order.entries()].filter(([,X])=>!xt.has(X));k.replaceChildren(...tt.map(([X,bt])=>s("option",{value:bt},
`${X+1}  ${o.label(bt)}`))),$.textContent=`Chosen: ${o.unitName()}, ${o.where()}`,f.disabled=d||o.isFirst,g.disabled=d||
o.isLast,h.disabled=d||o.past.length===0,y.disabled=d||o.future.length===0;for(let X of[b,E,B,k,A,L])X.disabled=d;if(p.setAttribute(
"aria-disabled",String(d)),p.classList.toggle("ts-long",o.order.length>Yn),C){let X=l.get(o.current);X?.focus({preventScroll:!0}),
X?.scrollIntoView({block:"nearest"})}}function x(C,j,Y){let ut=j.id===o.current,xt=j.run?!1:o.block.has(j.key),pt=o.held!==
null&&(j.run?ut:Y.has(j.key)),tt=o.order.indexOf(j.run?j.run.keys[0]:j.key),X=j.run?j.run.keys.map(V=>i[V]?.length??0):i[j.
key],bt=j.run?o.closed.has(String(j.run.stage)):!1,Pt=JSON.stringify([tt,j.level,ut,xt,pt,X,j.run&&[j.run.keys.length,bt]]);
if(C.dataset.looks===Pt)return;C.dataset.looks=Pt,C.tabIndex=ut?0:-1,C.setAttribute("aria-selected",String(xt)),C.classList.
toggle("ts-current",ut),C.classList.toggle("ts-inblock",xt),C.classList.toggle("ts-held",pt),C.classList.toggle("ts-leve\
l2",j.level===2),a&&C.setAttribute("aria-level",String(j.level));let _t=pt?" picked up":xt?" in block":"",Vt=_t?s("span",
{class:"ts-state"},_t):"",zt=V=>s("span",{class:"ts-number","aria-hidden":"true"},V);if(j.run){let{keys:V,stage:at}=j.run;
C.setAttribute("aria-expanded",String(!bt));let gt=bt?V.filter(yt=>i[yt]?.length).length:0;C.replaceChildren(zt(`${tt+1}\
–${tt+V.length}`),s("span",{class:"ts-fold","aria-hidden":"true"},bt?"▸":"▾"),s("span",{class:"ts-what"},s("b",{},
at),` ${V.length} steps`,gt?` – ${gt} with a remark`:"",Vt));return}let O=(i[j.key]??[]).map(V=>s("span",{class:`ts-no\
te ts-note-${V.kind}`},jt(V.shape??""),s("b",{},V.word),` ${V.text}`)),z=a&&j.level===1;C.classList.toggle("ts-troubled",
O.length>0),C.replaceChildren(zt(String(tt+1)),s("span",{class:"ts-grip","aria-hidden":"true"},"⠿"),s("span",{class:"t\
s-what"},o.label(j.key),z?s("span",{class:"ts-stage"},` ${o.stages.get(j.key)??""}`):"",Vt,...O))}let w=()=>r([...o.order]);
function D(C,j){if(!o.take(C)){N(`${o.unitName()} stays at ${o.where()}`);return}P(!0),j?N(j):F(),o.held===null&&w()}function W(C){
d||D(o.shifted(C))}function U(){if(d)return;let C=Number.parseInt(B.value,10),j=o.order.length;C>=1&&C<=j?D(o.atPosition(
C)):(N(`Type a position from 1 to ${j}`),$.textContent=`Type a position from 1 to ${j}.`)}function it(){!d&&k.value&&D(o.
beside(k.value,"before"))}function wt(C){P(),N(`${C}. ${o.unitName()}, ${o.where()}`),w()}function H(){o.pickUp(),P(!0),
F(" picked up")}function G(){o.putDown()&&w(),P(!0),F(" put down")}function q(){o.putDown()&&w(),P()}function rt(){o.putBack(),
P(!0),F(" put back")}function st(C){c=C,b.setAttribute("aria-pressed",String(C)),C||(o.block=new Set),P(),N(C?"Choose th\
e steps of a block":"Block let go")}function lt(C){o.toggleBlock(C);let j=o.block.has(C)?"in the block":"out of the bloc\
k";N(`${o.label(C)} ${j}, ${o.block.size} in it`)}function St(C,j){let Y=o.fold(C,j);Y&&(P(!0),N(`${Y} ${j?"closed":"ope\
n"}`))}p.addEventListener("keydown",C=>{if(Ot(C))return;let j=o.rows(),Y=j.findIndex(bt=>bt.id===o.current),ut=bt=>{o.current=
j[Math.max(0,Math.min(j.length-1,bt))].id,P(!0)},xt=j[Y],{key:pt}=C,tt=pt==="ArrowUp"?-1:pt==="ArrowDown"?1:null,X=o.held!==
null;if(tt&&(C.shiftKey||X))W(tt);else if(tt)ut(Y+tt);else if(X&&pt==="Escape")rt();else if(pt===" ")d||(X?G:H)();else if(X&&
pt==="Enter")G();else if(pt==="Enter"&&!xt.run)d||(lt(xt.key),P(!0));else if(pt==="Home"&&!X)ut(0);else if(pt==="End"&&!X)
ut(j.length-1);else if(a&&pt==="ArrowLeft")St(xt,!0);else if(a&&pt==="ArrowRight")St(xt,!1);else if(pt.length===1&&!X)T(
pt);else return;C.preventDefault()});let ft="",Nt;function T(C){ft+=C.toLowerCase(),clearTimeout(Nt),Nt=window.setTimeout(
()=>{ft=""},Xn);let j=o.sought(ft);j&&(o.current=j.id,P(!0))}p.addEventListener("focusout",({relatedTarget:C})=>{o.held!==
null&&C instanceof Node&&!p.contains(C)&&q()});let _=null;p.addEventListener("pointerdown",C=>{let j=o.row(Ct(C,".ts-ste\
p")?.dataset.row??"");if(!j||C.button!==0)return;if(j.run&&Ct(C,".ts-fold")){St(j,!o.closed.has(String(j.run.stage))),C.
preventDefault();return}let Y=Ct(C,".ts-grip, .ts-number"),ut=C.ctrlKey||C.metaKey;o.held!==null&&q(),!j.run&&!d&&(C.shiftKey?
o.blockTo(j.key):(ut||c)&&!Y&&lt(j.key)),o.current=j.id,P(!0),C.preventDefault(),!(d||C.shiftKey||ut)&&(C.pointerType!==
"mouse"&&!Y||(_={x:C.clientX,y:C.clientY,id:C.pointerId,carried:null},p.setPointerCapture(C.pointerId)))}),p.addEventListener(
"pointermove",C=>{if(!_||C.pointerId!==_.id)return;let{clientX:j,clientY:Y}=C;if(!_.carried){if(Math.hypot(j-_.x,Y-_.y)<
Vn)return;_.carried=Q()}Object.assign(_.carried,{x:j,y:Y}),ot(_.carried)});function Q(){let C=s("div",{class:"twoshaft t\
s-ghost","aria-hidden":"true"},o.unit().length>1?o.unitName():o.label(o.unit()[0]));document.body.append(C);let j=s("div",
{class:"ts-line","aria-hidden":"true"});p.append(j),p.classList.add("ts-dragging");for(let Y of o.unit())l.get(Y)?.classList.
add("ts-lifted");return{ghost:C,line:j,timer:requestAnimationFrame(Lt),x:0,y:0,drop:null}}function ot(C){C.ghost.style.transform=
`translate(${C.x+12}px, ${C.y+8}px)`;let Y=o.rows().map(tt=>{let X=Z(tt).getBoundingClientRect();return{row:tt,box:X,offset:C.
y-(X.top+X.height/2)}}).reduce((tt,X)=>Math.abs(X.offset)<Math.abs(tt.offset)?X:tt),ut=Y.offset>0;C.drop=o.dropAt(Y.row,
ut);let pt=(ut?Y.box.bottom:Y.box.top)-p.getBoundingClientRect().top+p.scrollTop-1;C.line.style.top=`${pt}px`}function Lt(){
let C=_?.carried;if(C){for(let j of[p,ss(p)]){let ut=j===document.scrollingElement?{top:0,bottom:innerHeight}:j.getBoundingClientRect(),
xt=C.y<ut.top+ps?-1:C.y>ut.bottom-ps?1:0;if(!xt)continue;let pt=j.scrollTop;if(j.scrollTop+=xt*Jn,j.scrollTop!==pt){ot(C);
break}}C.timer=requestAnimationFrame(Lt)}}function dt(C){let j=_?.carried;if(_=null,!j)return;cancelAnimationFrame(j.timer),
j.ghost.remove(),j.line.remove(),p.classList.remove("ts-dragging");for(let ut of l.values())ut.classList.remove("ts-lift\
ed");let{drop:Y}=j;if(!C||!Y||o.unit().includes(Y.target)){P(!0),N(`${o.unitName()} stays at ${o.where()}`);return}D(o.beside(
Y.target,Y.side))}return p.addEventListener("pointerup",()=>dt(!0)),p.addEventListener("pointercancel",()=>dt(!1)),I.addEventListener(
"keydown",C=>{!_?.carried||C.key!=="Escape"||(dt(!1),C.stopPropagation())}),P(),{element:I,tools:M,order:()=>[...o.order],
change:(C,j)=>{d||D(C,j)},setOrder(C,j=!1){o.held!==null||_?.carried||te(C,o.order)||(o.set(C,j),P())},setNotes(C){i=C??
{},P()},setDisabled(C){d=C,P()}}}At("order",{prompt:"words",status:"above",blank:"not answered yet; the steps stand as they were given",make(t,e,n){let r=t.
steps.map(([a])=>a),o=xe({label:t.prompt,steps:t.steps,order:r,onChange:n});return{element:o.element,show:a=>o.setOrder(
us(a.value,r)),setDisabled:o.setDisabled,refused(){}}}});function hs(t,e,n){let r=[0,0],o=[n(...r)],a=new Map;for(let[c,i]of t.entries()){let[d,l]=e[i]??[null,null];d!==null&&r[1]!==
0&&o.push(n(r[0],0)),r=[d??r[0],l??(d===null?r[1]:0)];let u=n(...r);o.push(u);let p=a.get(u.join(" "))??{at:u,numbers:[]};
p.numbers.push(c+1),a.set(u.join(" "),p)}return{points:o,stops:[...a.values()]}}function gs(t,e,n){let r=e>=0&&e<t.length-
1?e+1:t.length;return{moves:[...t.slice(0,r),n,...t.slice(r)],place:r}}function ms(t,e){return t.filter((n,r)=>r!==e)}function ws(t,e,n){
let r=e+n;if(r<0||r>=t.length)return null;let o=[...t];return[o[e],o[r]]=[o[r],o[e]],o}var fs=.6;function bs(t,[e,n],[r,
o]){let a=Object.entries(t).filter(([d])=>!d.startsWith("firm:")),c=(d,l)=>a.filter(([,u])=>u[0]===d&&u[1]===l).map(([u])=>u).
slice(0,1),i=Math.abs(e-r)>fs;return[...i&&Math.abs(n)>fs?c(null,0):[],...i?c(r,null):[],...o||!i?c(null,o):[]]}var re=9,$e=.7*re,Ue=44;function Se(t){let e=Math.min(...t.gates),n=Math.max(...t.gates),[r,o]=t.turn_mm,a=(n-e)*re+2*Ue,
c=(o-r)*$e+2*Ue,i=(f,g)=>[Ue+(f-e)*re,c/2-(g-(r+o)/2)*$e],d=t.gates.map(f=>`M${i(f,r).join(" ")}L${i(f,o).join(" ")}`),l=`\
M${i(e,0).join(" ")}L${i(n,0).join(" ")}`,u=t.gears.map(([f,g,h])=>{let[y,b]=i(g,h),E={x:y,y:b+(h>0?-20:30),"data-gear":f};
return R("text",{...E,class:"tsp-gear","text-anchor":"middle"},f)});return{element:R("svg",{viewBox:`0 0 ${a} ${c}`,width:a,
height:c,class:"ts-gateplan","aria-hidden":"true"},R("path",{d:[...d,l].join(""),class:"tsp-slot"}),...u),at:i}}function Zn(t){let{element:e,at:n}=Se(t),r=R("polyline",{class:"tsp-line",points:""}),o=R("g");return e.append(r,o),{element:e,
show(a){let{points:c,stops:i}=hs(a,t.aims,n),[[d,l]]=c;r.setAttribute("points",c.map(u=>u.join(",")).join(" ")),o.replaceChildren(
R("circle",{cx:d,cy:l,r:4,class:"tsp-start"}),...i.map(({at:[u,p],numbers:f})=>R("g",{},R("circle",{cx:u,cy:p,r:3.5,class:"\
tsp-stop"}),R("text",{x:u+7,y:p-5,class:"tsp-number"},f.join(", ")))))}}}function vs({label:t,moves:e,plan:n,most:r,onChange:o}){
let a=new Map(e),c=I=>a.get(I)??I,i=[],d=-1,l=!1,u=n?Zn(n):null,p=s("ol",{class:"ts-pathlist","aria-label":t}),f=s("p",{
class:"ts-hint"},"No moves yet. The lever stands in neutral, in the middle gate plane."),g=s("p",{class:"ts-hidden",role:"\
status"}),h=e.map(([I,N])=>K(N,()=>$(I))),y=K("Take back the last move",()=>{i.length&&A(i.length-1)}),b=K("Take back al\
l",()=>{i.length&&k([],"No moves left")}),E=s("span",{class:"ts-hint"}),B=s("div",{class:"ts-path"},s("div",{class:"ts-t\
ools ts-moves",role:"group","aria-label":"Add a move"},...h),s("div",{class:"ts-path-both"},s("div",{class:"ts-path-word\
s"},f,p,s("div",{class:"ts-tools"},y,b,E)),u&&s("div",{class:"ts-path-picture"},u.element)),u&&s("p",{class:"ts-hint"},"\
The line shows where each move should go. The test shows whether the lever gets there."),g);function k(I,N){l||(i=I,v(),
g.textContent=N,o([...i]))}function $(I){if(i.length>=r){g.textContent=`${r} moves are the most here`;return}let{moves:N,
place:F}=gs(i,d,I);d=F,k(N,`Move ${F+1}: ${c(I)}`)}function A(I){let N=c(i[I]);d=Math.min(d,i.length-2),k(ms(i,I),`Taken\
 back: ${N}`)}function L(I,N){let F=ws(i,I,N);F&&(d=I+N,k(F,`${c(F[d])}, move ${d+1} of ${i.length}`),m(d))}function M(I){
return p.children[I]?.querySelector(".ts-path-move")}function m(I){let N=M(I);return N instanceof HTMLElement&&N.focus(),
!!N}function S(I,N){let F=s("span",{class:"ts-path-move",tabindex:"0","aria-label":`Move ${N+1}: ${c(I)}`},c(I)),Z=s("bu\
tton",{type:"button",class:"ts-path-off","aria-label":`Take back move ${N+1}`,onclick:()=>A(N)},"×"),P=s("li",{},F,Z);return P.
classList.toggle("ts-current",N===d),F.addEventListener("focus",()=>{d=N;for(let x of p.children)x.classList.toggle("ts-\
current",x===P)}),F.addEventListener("keydown",x=>{if(Ot(x))return;let w=x.key==="ArrowUp"?-1:x.key==="ArrowDown"?1:null;
if(w&&x.shiftKey)L(N,w);else if(w)m(N+w);else if(x.key==="Delete"||x.key==="Backspace")A(N),m(Math.min(N,i.length-1))||h[0].
focus();else return;x.preventDefault()}),Z.disabled=l,P}function v(){p.replaceChildren(...i.map(S)),f.hidden=i.length>0,
E.textContent=`${i.length} of at most ${r} moves`;for(let I of h)I.disabled=l||i.length>=r;y.disabled=b.disabled=l||i.length===
0,u?.show(i)}return v(),{element:B,setMoves(I){te(I,i)||(i=[...I],d=-1,v())},setDisabled(I){l=I,v()}}}At("path",{prompt:"words",make(t,e,n){let r=vs({label:t.prompt,moves:t.moves,plan:t.plan,most:t.most,onChange:n});return{
element:r.element,show:o=>r.setMoves([o.value??[]].flat()),setDisabled:r.setDisabled,refused(){}}}});function ys(t,e,n){let r=t.indexOf(n);return[...t.slice(r+1),...t.slice(0,r)].find(a=>!e.get(a))??n}function ks(t,e,n){let r=t.
find(({key:d})=>d===e);if(!r)return;if(n==="Home")return t[0].key;if(n==="End")return t[t.length-1].key;let o={ArrowRight:1,
ArrowLeft:-1}[n];if(o!==void 0){let d=[...t].sort((u,p)=>u.x-p.x||u.y-p.y),l=d.findIndex(({key:u})=>u===e)+o;return d[(l+
d.length)%d.length].key}let a={ArrowDown:1,ArrowUp:-1}[n];if(a===void 0)return;let c=d=>Math.abs(d.y-r.y)+2*Math.abs(d.x-
r.x),[i]=t.filter(({key:d,y:l})=>d!==e&&(l-r.y)*a>2).sort((d,l)=>c(d)-c(l));return(i??r).key}function ee(t,e,n,r){let o=t.lines,a=t.options,c=o.map(([p])=>p),i=c[0],d=o.map(([p,f],g)=>{let h=`${e.control}-${g}`,y=s(
"label",{class:"ts-each-line",for:h},f),b=Mt({id:h,"aria-describedby":e.status},[["","choose"],...a]),E=s("input",{type:"\
radio",name:`${e.control}-active`,"aria-label":`Point in the picture for: ${f}`,checked:g===0}),B=s("li",{},c.length>1?E:
null,y,b);return E.addEventListener("change",()=>{i=p}),b.addEventListener("change",()=>{i=p,u()}),{key:p,box:b,mark:E,row:B}}),
l=()=>new Map(d.map(({key:p,box:f})=>[p,f.value]));function u(){let p=l();r(p),n(ge([...p]))}return{element:s("ol",{class:"\
ts-each ts-pointed"},...d.map(({row:p})=>p)),active:()=>i,answers:l,press(p){let f=d.find(({key:g})=>g===i);if(!(!f||f.box.
disabled)){f.box.value=p,u(),i=ys(c,l(),i);for(let{key:g,mark:h}of d)h.checked=g===i}},put(p,f){let g=d.find(({key:h})=>h===
p);!g||g.box.disabled||(g.box.value=f,u())},show(p){let f=me(p.value);for(let{key:g,box:h}of d)h.value=f.get(g)??"";r(l())},
setDisabled(p){for(let{box:f,mark:g}of d)f.disabled=p,g.disabled=p}}}function Le(t,e,n){let r=s("div",{class:"ts-scene",
role:"group","aria-label":"Picture. Arrow keys walk from place to place, Enter points at one."});r.innerHTML=t;let o=r.querySelector(
"svg");o.setAttribute("role","group");let a=new Map(J(o,"[data-mark]").map(l=>[String(l.dataset.mark),l])),c=new Map(e);
for(let[l,u]of a)u.setAttribute("role","button"),u.setAttribute("tabindex",l===e[0][0]?"0":"-1"),u.setAttribute("aria-la\
bel",`${l}: ${c.get(l)??""}`);let i=l=>Ct(l,"[data-mark]")?.dataset.mark??Ct(l,"[data-spot]")?.dataset.spot;r.addEventListener(
"click",l=>{let u=i(l);u&&n(u)});for(let[l,u]of[["pointerover",!0],["focusin",!0],["pointerout",!1],["focusout",!1]])r.addEventListener(
l,p=>{let f=i(p);f&&d(f,u)});function d(l,u){for(let p of J(o,`[data-spot="${l}"]`))p.classList.toggle("tss-near",u)}return r.
addEventListener("keydown",l=>{let u=Ct(l,"[data-mark]")?.dataset.mark;if(u){if(l.key==="Enter"||l.key===" ")n(u);else{let p=[
...a].map(([g,h])=>{let y=h.querySelector(".tss-dot");return{key:g,x:y.cx.baseVal.value,y:y.cy.baseVal.value}}),f=ks(p,u,
l.key);if(f===void 0)return;a.get(u)?.setAttribute("tabindex","-1"),a.get(f)?.setAttribute("tabindex","0"),a.get(f)?.focus()}
l.preventDefault()}}),{element:r,drawing:o,choose(l){let u=new Set(l);for(let[p,f]of a)f.classList.toggle("tss-chosen",u.
has(p)),f.setAttribute("aria-pressed",String(u.has(p)));for(let p of J(o,"[data-spot]"))p.classList.toggle("tss-on",u.has(
String(p.dataset.spot)))}}}At("picture",{prompt:"legend",make(t,e,n){let r=t.options,o=ee(t,e,n,i=>{let d=new Set(i.values());for(let{letter:l,card:u}of a)
u.classList.toggle("ts-on",d.has(l))}),a=r.map(([i,d])=>{let l=s("div",{class:"ts-picture-card",onclick:()=>o.press(i)});
return l.innerHTML=t.svgs[i],l.querySelector("svg")?.setAttribute("aria-label",d),l.prepend(s("span",{class:"ts-picture-\
letter"},i)),{letter:i,card:l}}),c=s("div",{class:"ts-pictures"},...a.map(({card:i})=>i));return{element:s("div",{class:"\
ts-pictured"},o.element,c),show:o.show,setDisabled:o.setDisabled,refused(){}}}});At("point",{prompt:"legend",make(t,e,n){let r=ee(t,e,n,i=>c.choose(i.values())),a=t.options.map(([i,d])=>[i,d.slice(i.length+
2)]),c=Le(t.svg,a,r.press);return{element:s("div",{},r.element,c.element),show:r.show,setDisabled:r.setDisabled,refused(){}}}});At("put",{prompt:"legend",make(t,e,n){let r=t.lines,o=new Map(r.map(([u])=>[u,"1"])),a=ee(t,e,n,u=>{for(let[p,f]of u)f&&
o.set(p,f.split("-")[1]);c.choose([...u.values()].map(p=>p.split("-")[0])),d(u)}),c=Le(t.svg,t.places,u=>{a.press(`${u}-${o.
get(a.active())}`)}),i=R("g",{class:"tss-placed"});c.drawing.append(i);function d(u){i.replaceChildren();for(let[p,f]of u){
let[g,h]=f.split("-"),y=t.at[g];if(!y)continue;let b=R("g",{transform:`translate(${y[0]} ${y[1]})`});b.innerHTML=t.pieces[p][Number(
h)-1][1],i.append(b)}for(let{part:p,show:f}of l)f(o.get(p)??"1")}let l=r.map(([u,p])=>{let f=s("div",{class:"ts-tray-par\
t"}),g=s("span",{class:"ts-hint",role:"status"}),h=nt("Turn it",()=>{let E=o.get(u)==="1"?"2":"1";o.set(u,E),y(E);let B=a.
answers().get(u);B&&a.put(u,`${B.split("-")[0]}-${E}`)},`Turn it: ${p}`);function y(E){let[B,k]=t.pieces[u][Number(E)-1],
$=Number(/data-half="([\d.]+)"/.exec(k)?.[1]??90);f.innerHTML=`<svg viewBox="${-$} ${-$} ${2*$} ${2*$}" width="120" heig\
ht="120" aria-hidden="true">${k}</svg>`,g.textContent=`Way ${E}: ${B}`}let b=s("div",{class:"ts-tray"},f,s("div",{},p,g,
h));return{part:u,row:b,show:y,turn:h}});return{element:s("div",{},s("div",{class:"ts-trays"},...l.map(({row:u})=>u)),a.
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
ight:244px;flex:none}.twoshaft .tsi-wrench{width:720px;max-width:100%;height:auto;display:block}.twoshaft .tsi-fine{stro\
ke:var(--ts-ink);stroke-width:1.1}.twoshaft .tsi-bold{stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-body{fill:var(-\
-ts-faint);stroke:var(--ts-ink);stroke-width:2}.twoshaft .tsi-paper{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-wid\
th:1}.twoshaft .tsi-lever{stroke:var(--ts-ink);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-adapter{stroke:var(--\
ts-accent);stroke-width:10;stroke-linecap:round}.twoshaft .tsi-arm{stroke:var(--ts-accent);stroke-width:2;stroke-dasharr\
ay:7 4}.twoshaft .tsi-plunger{stroke:var(--ts-accent);stroke-width:5;stroke-linecap:round}.twoshaft .ts-order{position:r\
elative;max-width:calc(var(--ts-width) + 8em)}.twoshaft .ts-steps{position:relative;list-style:none;border:1px solid var\
(--ts-line);margin-top:calc(var(--ts-grid) / 2);background:var(--ts-paper)}.twoshaft .ts-steps.ts-long{max-height:min(30\
rem,75vh);overflow-y:auto}.twoshaft .ts-step{display:flex;align-items:flex-start;gap:var(--ts-grid);padding:4px var(--ts\
-grid) 4px 0;margin:0;min-height:24px;border-bottom:1px solid var(--ts-faint);border-left:4px solid transparent;cursor:d\
efault;user-select:none}.twoshaft .ts-step:last-child{border-bottom:0}.twoshaft .ts-step.ts-level2{padding-left:calc(2 *\
 var(--ts-grid))}.twoshaft .ts-step:focus-visible{outline-offset:-3px}.twoshaft .ts-current{border-left-color:var(--ts-a\
ccent);background:var(--ts-faint)}.twoshaft .ts-inblock{border-left-style:double;border-left-color:var(--ts-ink)}.twosha\
ft .ts-held{background:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-held .ts-number,.twoshaft .ts-held .ts-g\
rip,.twoshaft .ts-held .ts-stage{color:inherit}.twoshaft .ts-lifted{opacity:.45}.twoshaft .ts-dragging,.twoshaft .ts-dra\
gging .ts-step{cursor:grabbing}.twoshaft .ts-number{flex:none;min-width:2.5em;text-align:right;color:var(--ts-quiet);fon\
t-variant-numeric:tabular-nums;touch-action:none}.twoshaft .ts-grip,.twoshaft .ts-fold{flex:none;width:24px;text-align:c\
enter;color:var(--ts-quiet);cursor:grab;touch-action:none}.twoshaft .ts-fold{cursor:pointer}.twoshaft .ts-what{flex:1;mi\
n-width:0}.twoshaft .ts-state{font-weight:600;font-size:var(--ts-small)}.twoshaft .ts-note{display:block;font-size:var(-\
-ts-small);max-width:var(--ts-width)}.twoshaft .ts-line{position:absolute;left:0;right:0;height:3px;background:var(--ts-\
accent);pointer-events:none}.twoshaft.ts-ghost{position:fixed;left:0;top:0;z-index:10000;width:max-content;max-width:24e\
m;padding:4px var(--ts-grid);pointer-events:none;background:var(--ts-paper);color:var(--ts-ink);border:2px solid var(--t\
s-accent)}.twoshaft .ts-order .ts-keys{margin-top:var(--ts-grid)}.twoshaft .ts-order .ts-keys summary{cursor:pointer;min\
-height:24px;color:var(--ts-accent);width:fit-content}.twoshaft .ts-beside:has(>div>.ts-order){flex-wrap:wrap-reverse;al\
ign-items:flex-end}.twoshaft-rig .ts-order .ts-steps{max-height:max(20rem,min(30rem,100vh - 340px));overflow-y:auto}.two\
shaft .ts-path-both{display:flex;flex-wrap:wrap;gap:calc(3 * var(--ts-grid));align-items:flex-start;margin-top:var(--ts-\
grid)}.twoshaft .ts-path-words{flex:1 1 22em;min-width:0;max-width:34em}.twoshaft .ts-path-picture{flex:none;max-width:1\
00%}.twoshaft .ts-pathlist{margin:0;padding-left:calc(4 * var(--ts-grid))}.twoshaft .ts-pathlist li{min-height:28px;padd\
ing-left:4px;border-left:4px solid transparent}.twoshaft .ts-pathlist li.ts-current{border-left-color:var(--ts-accent);b\
ackground:var(--ts-faint)}.twoshaft .ts-path-off{min-width:28px;min-height:28px;margin-left:var(--ts-grid);border:1px so\
lid var(--ts-line);border-radius:2px;background:var(--ts-paper);color:var(--ts-ink);font:inherit;line-height:1;cursor:po\
inter}.twoshaft .ts-gateplan{display:block;max-width:100%;height:auto}.twoshaft .tsp-slot{fill:none;stroke:var(--ts-line\
);stroke-width:14;stroke-linecap:round;opacity:.35}.twoshaft .tsp-line{fill:none;stroke:var(--ts-accent);stroke-width:2.\
5;stroke-linejoin:round}.twoshaft .tsp-start{fill:var(--ts-paper);stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsp-\
stop{fill:var(--ts-accent)}.twoshaft .tsp-gear{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink)}.twoshaft .tsp\
-number{font:600 var(--ts-small) var(--ts-font);fill:var(--ts-ink);paint-order:stroke;stroke:var(--ts-paper);stroke-widt\
h:4px}.twoshaft .ts-pad{max-width:62rem}.twoshaft .ts-pad-face{position:relative;width:100%;border:1px solid var(--ts-li\
ne);background:var(--ts-paper)}.twoshaft .tsp-face{display:block;position:relative;width:100%;height:auto;touch-action:n\
one;cursor:crosshair}.twoshaft .tsp-land{fill:var(--ts-faint);stroke:none}.twoshaft .tsp-edge{fill:none;stroke:var(--ts-\
ink);stroke-linejoin:round}.twoshaft .tsp-text{fill:var(--ts-ink);font-family:var(--ts-font);paint-order:stroke;stroke:v\
ar(--ts-paper);stroke-width:.5px;pointer-events:none;user-select:none}.twoshaft .tsp-hole{fill:var(--ts-paper);stroke:va\
r(--ts-ink)}.twoshaft .tsp-blind{fill:var(--ts-ink)}.twoshaft .tsp-guide,.twoshaft .tsp-reach,.twoshaft .tsp-hatch{fill:\
none;stroke:var(--ts-ink)}.twoshaft .tsp-spot{stroke:var(--ts-ink)}.twoshaft .tsp-stroke,.twoshaft .tsp-live,.twoshaft .\
tsp-grain{fill:none;stroke-linejoin:round;stroke-linecap:butt}.twoshaft .tsp-film{stroke:var(--ts-film);stroke-opacity:.\
6}.twoshaft .tsp-bead{stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-wipe{stroke:var(--ts-paper);stroke-opaci\
ty:.85}.twoshaft .tsp-grain{stroke:var(--ts-ink)}.twoshaft .tsp-live{stroke:var(--ts-accent);stroke-opacity:.5;stroke-li\
necap:round}.twoshaft .tsp-chosen{fill:none;stroke:var(--ts-accent);stroke-dasharray:3 2;pointer-events:none}.twoshaft .\
ts-size{width:6em}.twoshaft .ts-size[aria-invalid=true]{border:2px dashed var(--ts-ink)}.twoshaft .ts-pad-trouble{min-he\
ight:1.5em;color:var(--ts-ink)}.twoshaft .ts-passes{padding-left:2.5em;font-size:var(--ts-small);max-height:16rem;overfl\
ow-y:auto}.twoshaft .ts-passes li{padding:2px 0}.twoshaft .ts-remove{min-height:24px;padding:0 var(--ts-grid)}.twoshaft \
.ts-pad-tools .ts-box{max-width:100%;min-width:0}.twoshaft .ts-pad-tools .ts-pair{min-width:0}.twoshaft .ts-each{margin:\
0;padding-left:calc(3 * var(--ts-grid))}.twoshaft .ts-each li{padding:calc(var(--ts-grid) / 2) 0}.twoshaft .ts-each li+l\
i{border-top:1px solid var(--ts-line)}.twoshaft .ts-each-line{display:inline-block;width:min(100% - 2 * var(--ts-grid),3\
4em);margin-right:calc(2 * var(--ts-grid));vertical-align:middle}.twoshaft .ts-each select{max-width:100%;min-width:0;ve\
rtical-align:middle}.twoshaft .ts-pointed input[type=radio]{margin-right:var(--ts-grid)}.twoshaft .ts-scene{overflow-x:a\
uto;margin:var(--ts-grid) 0}.twoshaft .ts-scene svg{display:block;max-width:none;max-height:none}.twoshaft .ts-scene [da\
ta-mark],.twoshaft .ts-scene [data-spot]{cursor:pointer}.twoshaft .ts-scene [data-mark]:focus-visible{outline:none}.twos\
haft .ts-scene [data-mark]:focus-visible .tss-ring{stroke:var(--ts-accent);stroke-width:4px}.twoshaft .ts-scene .tss-nea\
r path:not(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:2.4px}.twoshaft .ts-scene .tss-chosen \
.tss-ring{fill:var(--ts-accent);stroke:var(--ts-accent)}.twoshaft .ts-scene .tss-chosen .tss-letter{fill:var(--ts-on-acc\
ent)}.twoshaft .ts-scene .tss-on path:not(.tsu-behind,.tsu-pitch,.tsu-line),.twoshaft .ts-scene .tss-placed path:not(.ts\
u-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent);stroke-width:3px}.twoshaft .ts-scene .tss-placed{pointer-events:n\
one}.twoshaft .ts-pictured{display:flex;flex-wrap:wrap;gap:0 calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .\
ts-pictured>:first-child{flex:1 1 280px;min-width:min(100%,240px)}.twoshaft-wide .ts-pictured>:first-child{position:stic\
ky;top:0}.twoshaft .ts-pictures{display:grid;flex:2 1 500px;min-width:0;grid-template-columns:repeat(auto-fit,minmax(min\
(100%,240px),1fr));gap:var(--ts-grid);margin:var(--ts-grid) 0}.twoshaft .ts-picture-card{position:relative;padding:var(-\
-ts-grid);border:1px solid var(--ts-line);cursor:pointer}.twoshaft .ts-picture-card.ts-on{outline:3px solid var(--ts-acc\
ent)}.twoshaft .ts-picture-card svg{width:100%;height:auto;max-height:300px}.twoshaft .ts-picture-letter{font-weight:600\
}.twoshaft .ts-trays{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-tray{display:flex;gap:var(--\
ts-grid);align-items:center}.twoshaft .ts-tray>div:last-child{display:grid;gap:calc(var(--ts-grid) / 2);max-width:22em}.\
twoshaft-form{padding-block:var(--ts-grid)}.twoshaft .ts-top{display:flex;flex-wrap:wrap;justify-content:space-between;g\
ap:0 calc(3 * var(--ts-grid));border-bottom:1px solid var(--ts-line);padding-bottom:calc(var(--ts-grid) / 2)}.twoshaft .\
ts-who{font-size:var(--ts-small);color:var(--ts-quiet)}.jp-Cell:has(.ts-top,.ts-build)~.jp-Cell .ts-top>.ts-who{display:\
none}.twoshaft .ts-field{border:0;min-width:0;margin:calc(2 * var(--ts-grid)) 0 0}.twoshaft .ts-prompt{display:block;pad\
ding:0;font-weight:600;margin-bottom:var(--ts-grid)}.twoshaft .ts-line-of{display:flex;flex-wrap:wrap;align-items:center\
;gap:var(--ts-grid)}.twoshaft .ts-line-of+.ts-read,.twoshaft .ts-line-of+.ts-read+.ts-status{display:inline}.twoshaft .t\
s-line-of+.ts-read:not(:empty){margin-right:calc(2 * var(--ts-grid))}.twoshaft .ts-read.ts-error,.twoshaft .ts-status-un\
read{color:var(--ts-ink);font-size:var(--ts-text)}.twoshaft .ts-error .ts-shape,.twoshaft .ts-status-unread .ts-shape,.t\
woshaft .ts-status-bad .ts-shape{color:var(--ts-bad)}.twoshaft .ts-status-saved .ts-shape{color:var(--ts-good)}.twoshaft\
 .ts-status-bad{color:var(--ts-ink);font-weight:600}.twoshaft .ts-order+.ts-read{display:none}.twoshaft .ts-bench{margin\
-top:var(--ts-grid)}.twoshaft .ts-bench summary{cursor:pointer;min-height:24px;font-size:var(--ts-small);color:var(--ts-\
quiet)}.twoshaft .ts-bench[open]{border:1px solid var(--ts-line);padding:var(--ts-grid)}.twoshaft .ts-bench-rows{display\
:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,20em),1fr));gap:var(--ts-grid) calc(2 * var(--ts-grid));mar\
gin:var(--ts-grid) 0}.twoshaft .ts-bench-row{min-width:0}.twoshaft .ts-bench-row select{max-width:100%;min-width:0}.twos\
haft .ts-bench-row label{display:block;max-width:var(--ts-width)}.twoshaft .ts-bench-row .ts-read{min-height:0}.twoshaft\
.ts-question{border-left:4px solid var(--ts-accent);padding-left:calc(2 * var(--ts-grid))}.twoshaft .ts-acts{display:fle\
x;flex-wrap:wrap;gap:var(--ts-grid);margin-top:var(--ts-grid)}.twoshaft .ts-told:not(:empty){margin-top:var(--ts-grid)}.\
twoshaft .ts-told-unread{border:2px solid var(--ts-ink);padding:var(--ts-grid)}.twoshaft .ts-teacher{border-style:dashed\
;font-size:var(--ts-small)}.twoshaft.ts-question .ts-title{font-weight:600}.twoshaft.ts-question:has(.ts-asked>:nth-chil\
d(2)){max-width:none}.twoshaft .ts-asked{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,340px),1fr))\
;gap:0 calc(4 * var(--ts-grid));align-items:start}.twoshaft-start>div{max-width:1040px}.twoshaft-start h2{font-size:var(\
--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-start section,.twoshaft-start .ts-sign-in{margin:calc(2 * \
var(--ts-grid)) 0 calc(3 * var(--ts-grid))}.twoshaft-start .ts-sign-in{display:grid;gap:calc(1.5 * var(--ts-grid));justi\
fy-items:start}.twoshaft-start .ts-pair{display:grid;gap:calc(var(--ts-grid) / 2)}.twoshaft-start .ts-pair label{font-we\
ight:600}.twoshaft-start .ts-pair .ts-box{width:22em;max-width:100%}.twoshaft-start .ts-first{background:var(--ts-accent\
);color:var(--ts-on-accent)}.twoshaft-start .ts-button{font-size:var(--ts-text)}.twoshaft-start .ts-said:not(:empty){bor\
der-left:3px solid var(--ts-accent);padding:var(--ts-grid);background:var(--ts-faint)}.twoshaft-start .ts-me{display:fle\
x;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:var(--ts-grid)}.twosh\
aft-start .ts-table{border-collapse:collapse;width:100%;margin:0 0 calc(2 * var(--ts-grid));font-size:var(--ts-text);tab\
le-layout:fixed}.twoshaft-start .ts-table :is(th,td){text-align:left;vertical-align:top;white-space:normal;padding:var(-\
-ts-grid);border:0;border-bottom:1px solid var(--ts-line);background:none;max-width:none}.twoshaft-start .ts-table thead\
 th{font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-table th:nth-child(1){width:26%}.twoshaft-start \
.ts-table th:nth-child(2){width:16%}.twoshaft-start .ts-table th:nth-child(4){width:24%}.twoshaft-start .ts-small-line{d\
isplay:block;font-size:var(--ts-small);color:var(--ts-quiet)}.twoshaft-start .ts-doing{display:flex;flex-wrap:wrap;align\
-items:center;gap:var(--ts-grid)}.twoshaft-start a.ts-link:is(:link,:visited,:hover,:focus,:active){color:var(--ts-accen\
t);text-decoration:underline;display:inline-flex;align-items:center;min-height:var(--ts-target);cursor:pointer}.twoshaft\
-start .ts-lessons{padding-left:calc(2 * var(--ts-grid))}.twoshaft-start .ts-lessons .ts-link{min-height:24px}.twoshaft-\
start .ts-module th{padding-top:calc(3 * var(--ts-grid));font-size:var(--ts-text)}.twoshaft-start .ts-table .ts-module t\
h{width:auto}.twoshaft-start .ts-assigned{margin-left:var(--ts-grid);font-weight:400;color:var(--ts-quiet)}.twoshaft-sta\
rt .ts-next{margin:0}.twoshaft-start summary{min-height:var(--ts-target);align-content:center;cursor:pointer}@media(max-\
width:560px){.twoshaft-start .ts-table thead{position:absolute;clip-path:inset(50%)}.twoshaft-start .ts-table :is(tr,th,\
td):nth-child(n){display:block;width:auto}.twoshaft-start .ts-table tr{border-bottom:1px solid var(--ts-line);padding:va\
r(--ts-grid) 0}.twoshaft-start .ts-table tbody :is(th,td){border:0;padding:4px 0}}.twoshaft-start .ts-gaps{padding-left:\
calc(2 * var(--ts-grid));font-size:var(--ts-small)}.twoshaft-start .ts-gaps span{display:block}.twoshaft-start .ts-quest\
ion{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk{max-width:1240px}.twoshaft-desk .ts\
-desk-top{display:flex;flex-wrap:wrap;align-items:center;justify-content:space-between;gap:var(--ts-grid)}.twoshaft-desk\
 .ts-desk-pages{display:flex;flex-wrap:wrap;gap:var(--ts-grid);margin:var(--ts-grid) 0;padding-bottom:var(--ts-grid);bor\
der-bottom:1px solid var(--ts-line)}.twoshaft-desk .ts-button[aria-current=page]{border-width:3px;font-weight:700}.twosh\
aft-desk :is(h2,h3){font-size:var(--ts-head);font-weight:600;margin:0;line-height:1.5}.twoshaft-desk h3,.twoshaft-desk .\
ts-button{font-size:var(--ts-text)}.twoshaft-desk .ts-first{background:var(--ts-accent);color:var(--ts-on-accent)}.twosh\
aft-desk .ts-said:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border-left:3px solid var(--ts-accent);padding:var(--ts\
-grid);background:var(--ts-faint)}.twoshaft-desk :is(.ts-said,.ts-alert,.ts-told,.ts-trouble){white-space:pre-line;max-w\
idth:none}.twoshaft-desk .ts-desk-here{width:100%;scroll-margin-block:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-busy{d\
isplay:flex;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-desk-body[aria-busy=true]{cursor:progress}.twoshaft\
-desk .ts-desk-body>*{margin-top:calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-caption{display:flex;flex-wrap:wrap;al\
ign-items:center;justify-content:space-between;gap:var(--ts-grid);margin-bottom:calc(var(--ts-grid) / 2)}.twoshaft-desk \
.ts-desk-scroll{max-height:360px;overflow:auto;border:1px solid var(--ts-line)}.twoshaft-desk .ts-table{border-collapse:\
collapse;margin:0;min-width:100%;font-size:var(--ts-text)}.twoshaft-desk .ts-table :is(th,td){text-align:left;vertical-a\
lign:top;white-space:normal;padding:calc(var(--ts-grid) / 2) var(--ts-grid);border:0;border-bottom:1px solid var(--ts-li\
ne);background:none;max-width:28em;font-weight:400;overflow-wrap:break-word}.twoshaft-desk .ts-table tbody th{position:s\
ticky;left:0;background:var(--ts-paper)}.twoshaft-desk .ts-table thead th{position:sticky;top:0;z-index:1;background:var\
(--ts-paper);box-shadow:inset 0 -1px var(--ts-line);white-space:nowrap}.twoshaft-desk .ts-table .ts-figure{text-align:ri\
ght;font-variant-numeric:tabular-nums}.twoshaft-desk .ts-table .ts-tick{width:24px}.twoshaft-desk input[type=checkbox]{w\
idth:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft-desk :is(.ts-sort,.ts-cell){min-height:24px;min-width:24px\
;padding:0;border:0;background:none;color:var(--ts-accent);font:inherit;text-align:inherit;cursor:pointer}.twoshaft-desk\
 .ts-sort{font-weight:600}.twoshaft-desk .ts-cell{text-decoration:underline}.twoshaft-desk .ts-desk-form{display:grid;ga\
p:var(--ts-grid);justify-items:start;padding-top:var(--ts-grid);border-top:1px solid var(--ts-line)}.twoshaft-desk .ts-d\
esk-form>*{min-width:0;max-width:100%}.twoshaft-desk .ts-desk-fields{display:flex;flex-wrap:wrap;align-items:flex-start;\
gap:var(--ts-grid) calc(2 * var(--ts-grid))}.twoshaft-desk .ts-desk-field{display:grid;grid-template-columns:minmax(0,au\
to);gap:calc(var(--ts-grid) / 2);max-width:100%}.twoshaft-desk .ts-desk-field>label:not(.ts-option){font-weight:600}.two\
shaft-desk .ts-desk-field .ts-box{width:18em;max-width:100%}.twoshaft-desk textarea.ts-box{width:30em;padding:var(--ts-g\
rid)}.twoshaft-desk .ts-doing{display:flex;flex-wrap:wrap;align-items:center;gap:var(--ts-grid)}.twoshaft-desk .ts-quest\
ion{border:2px solid var(--ts-ink);padding:calc(1.5 * var(--ts-grid))}.twoshaft-desk a.ts-link:is(:link,:visited,:hover,\
:focus,:active){color:var(--ts-accent);text-decoration:underline}.twoshaft-desk :is(textarea,a,h2,.ts-desk-scroll):focus\
-visible{outline:3px solid var(--ts-accent);outline-offset:2px}@media(forced-colors:active){.twoshaft-desk .ts-button[ar\
ia-current=page]{border-color:Highlight}.twoshaft-desk .ts-first{border-width:2px;font-weight:700}.twoshaft-desk .ts-sai\
d:not(:empty,.ts-hidden),.twoshaft-desk .ts-told{border:1px solid CanvasText}}.twoshaft .tsj-bench{display:flex;flex-wra\
p:wrap;gap:var(--ts-grid) calc(2 * var(--ts-grid));align-items:flex-start}.twoshaft .tsj-bench>*{flex:1 1 240px;min-widt\
h:0;max-width:max-content}.twoshaft .tsj-bench svg{display:block;max-width:100%;height:auto}.twoshaft .tsj-bolt{cursor:p\
ointer}.twoshaft .tsj-bolt:focus{outline:none}.twoshaft .tsj-bolt:focus-visible circle{stroke:var(--ts-accent);stroke-wi\
dth:4}.twoshaft .tsj-bolt.tsj-started circle{stroke-width:3}.twoshaft .tsj-bolt.tsj-tight circle{fill:var(--ts-ink)}.two\
shaft .tsj-bolt.tsj-tight text{fill:var(--ts-paper)}.twoshaft .tsj-slide{display:inline-flex;align-items:center;gap:var(\
--ts-grid)}.twoshaft .tsj-slide input{width:180px;max-width:40vw;accent-color:var(--ts-accent);min-height:var(--ts-targe\
t)}.twoshaft .tsj-figure{min-width:8ch;font-variant-numeric:tabular-nums;font-weight:600}.twoshaft .tsj-happened{min-hei\
ght:1.5em}.twoshaft .tsj-check{display:inline-flex;align-items:center;gap:var(--ts-grid);min-height:var(--ts-target)}.tw\
oshaft .tsj-check input{width:18px;height:18px;accent-color:var(--ts-accent)}.twoshaft .tsj-settings{display:grid;grid-t\
emplate-columns:max-content minmax(0,1fr);gap:4px calc(2 * var(--ts-grid));align-items:center;max-width:calc(var(--ts-wi\
dth) + 12ch);margin:var(--ts-grid) 0}.twoshaft .tsj-settings>label{font-weight:600}.twoshaft .tsj-band svg{display:block\
;max-width:100%;height:auto}.twoshaft .tsj-settings select{max-width:100%}.twoshaft .tsj-slide{max-width:100%;flex-wrap:\
wrap}@media(max-width:700px){.twoshaft .tsj-settings{grid-template-columns:minmax(0,1fr)}}.twoshaft table.tsk-board{bord\
er-collapse:collapse;font:var(--ts-text) var(--ts-font);color:var(--ts-ink)}.twoshaft table.tsk-board caption{text-align\
:left;font-weight:600;padding:4px 0}.twoshaft table.tsk-board th,.twoshaft table.tsk-board td{text-align:left;vertical-a\
lign:middle;padding:1px 12px 1px 0;border-bottom:1px solid var(--ts-line);background:none;font-weight:400}.twoshaft tabl\
e.tsk-board thead th{font-weight:600}.twoshaft table.tsk-board tbody th{min-width:18ch;max-width:54ch;white-space:normal\
}.twoshaft table.tsk-board .tsk-number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}.twoshaft t\
able.tsk-board select{max-width:36ch}.twoshaft table.tsk-board :is(select,button){min-height:28px}.twoshaft table.tsk-bo\
ard{font-size:var(--ts-small)}.twoshaft table.tsk-board .tsk-best td,.twoshaft table.tsk-board .tsk-best th{font-weight:\
600;border-bottom:2px solid var(--ts-accent)}.twoshaft table.tsk-board .tsk-failed{font-weight:600}.twoshaft .tsk-shown{\
min-width:24ch}.twoshaft .tsk-spent,.twoshaft .tsk-more{margin:var(--ts-grid) 0}@media(max-width:700px){.twoshaft table.\
tsk-board,.twoshaft table.tsk-board tbody,.twoshaft table.tsk-board tr,.twoshaft table.tsk-board caption{display:block}.\
twoshaft table.tsk-board thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.twoshaft tab\
le.tsk-board tr{border-bottom:1px solid var(--ts-line);padding:var(--ts-grid) 0}.twoshaft table.tsk-board tbody th,.twos\
haft table.tsk-board tbody td,.twoshaft table.tsk-board tbody .tsk-number{display:block;border:0;max-width:none;min-widt\
h:0;padding:2px 0;text-align:left;white-space:normal}.twoshaft table.tsk-board tbody .tsk-best th,.twoshaft table.tsk-bo\
ard tbody .tsk-best td{border:0}.twoshaft table.tsk-board tbody .tsk-best{border-bottom:2px solid var(--ts-accent)}.twos\
haft table.tsk-board tbody th{font-weight:600}.twoshaft table.tsk-board td[data-label]:before{content:attr(data-label) "\
: ";color:var(--ts-quiet)}.twoshaft table.tsk-board td:empty{display:none!important}.twoshaft table.tsk-board select{max\
-width:100%}}.twoshaft .ts-gate{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 calc(2 * var(--ts-grid));ali\
gn-items:start;cursor:default;touch-action:pan-y;padding:4px}.twoshaft .ts-gate .tsg-panel{cursor:grab;touch-action:none\
}.twoshaft .ts-pulling,.twoshaft .ts-pulling .tsg-panel{cursor:grabbing}.twoshaft .ts-gate .tsg-hand{fill:var(--ts-accen\
t)}.twoshaft .ts-gate svg{user-select:none}.twoshaft .ts-moves .ts-button{text-align:left;padding-block:4px}.twoshaft .t\
s-happened.ts-stopped,.twoshaft .ts-log .ts-stopped{font-weight:600}.twoshaft .ts-log{max-height:14rem;overflow-y:auto;p\
adding-left:calc(4 * var(--ts-grid));max-width:calc(var(--ts-width) + 12ch)}.twoshaft .ts-gate .ts-scroll{margin:0;paddi\
ng:0}.twoshaft .ts-gate .ts-prompt{margin-top:0}.twoshaft .ts-gate-work .ts-prompt{margin-block:0}.twoshaft .ts-gate-hin\
t{max-width:none}.twoshaft .ts-gate+.ts-happened{min-height:1.5em}.twoshaft .ts-proof{max-width:calc(var(--ts-width) + 1\
2ch);font-weight:600}.twoshaft-rig .ts-how{width:34em;max-width:100%}.twoshaft .ts-gate:focus-visible{outline-offset:-3p\
x}.twoshaft .ts-lever .tsl-spot{fill:transparent;cursor:pointer}.twoshaft .ts-lever .tsl-spot:hover{fill:var(--ts-faint)\
;stroke:var(--ts-accent)}.twoshaft .ts-lever .tsl-knob{fill:var(--ts-accent);stroke:var(--ts-paper);stroke-width:2;curso\
r:grab;touch-action:none}.twoshaft .ts-lever .tsl-in{text-decoration:underline;font-weight:800}.twoshaft .ts-gate-work{d\
isplay:grid;grid-template-columns:minmax(0,3fr) minmax(0,2fr);gap:0 calc(3 * var(--ts-grid))}.twoshaft .ts-gate-work .ts\
-log{max-height:9rem}.twoshaft .ts-gate-work .ts-moves{display:grid;grid-template-columns:repeat(auto-fill,minmax(200px,\
1fr))}.twoshaft .ts-gate-work .ts-moves{gap:4px;margin-top:0}.twoshaft .ts-gate-work .ts-moves .ts-button{font-size:var(\
--ts-small);line-height:1.25}@media(max-width:900px){.twoshaft .ts-gate,.twoshaft .ts-gate-work{grid-template-columns:mi\
nmax(0,1fr)}}.twoshaft .tsw-train.ts-scroll.ts-fit svg{min-width:540px}.twoshaft .tsw-train svg{user-select:none}.twosha\
ft .tsw-counts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,240px),1fr));gap:4px var(--ts-grid);ma\
x-width:900px;margin:var(--ts-grid) 0}.twoshaft .tsw-count{box-sizing:border-box;display:grid;grid-template-columns:68px\
 minmax(0,1fr);column-gap:var(--ts-grid);align-items:center;padding:2px 4px;border:1px solid var(--ts-line);border-radiu\
s:2px;text-align:left;font-size:var(--ts-small)}.twoshaft .tsw-count.tsw-hand{border:2px solid var(--ts-accent);padding:\
1px 3px}.twoshaft .tsw-count.tsw-held{border-style:dashed}.twoshaft .tsw-name{font-weight:600}.twoshaft .tsw-count>.tsw-\
dial{grid-column:1;grid-row:1 / span 3}.twoshaft .tsw-count>div{grid-column:2}.twoshaft .tsw-dial{width:100%;height:auto\
;touch-action:none;cursor:grab;user-select:none}.twoshaft .tsw-dial:active{cursor:grabbing}.twoshaft .tsw-plate{fill:var\
(--ts-faint);stroke:var(--ts-ink);stroke-width:1}.twoshaft .tsw-end{fill:var(--ts-paper);stroke:var(--ts-ink);stroke-wid\
th:2}.twoshaft .tsw-painted{stroke:var(--ts-accent);stroke-width:4}.twoshaft .tsw-dot{fill:var(--ts-accent)}.twoshaft .t\
sw-tick{stroke:var(--ts-ink);stroke-width:1.5}.twoshaft .tsw-pointer{fill:var(--ts-ink)}.twoshaft .tsw-number{font:calc(\
15px * var(--ts-grown, 1)) var(--ts-font);fill:var(--ts-ink);text-anchor:middle}.twoshaft .tsw-strokes{font-family:monos\
pace;font-size:var(--ts-small);max-height:4.5em;overflow-y:auto}.twoshaft .tsw-figure{font-variant-numeric:tabular-nums}\
.twoshaft .tsw-figure:empty{min-height:0}.twoshaft .tsw-happened{min-height:1.5em}.twoshaft .tsw-say{max-width:none}.two\
shaft .tsh-picture{overflow-x:auto;margin:var(--ts-grid) 0}.twoshaft .tsh-picture svg{display:block;width:100%;min-width\
:680px;max-width:1100px;height:auto}.twoshaft .tsh-place{cursor:pointer}.twoshaft .tsh-place:focus{outline:none}.twoshaf\
t .tsh-place:hover .tsh-hit{stroke:var(--ts-line);stroke-width:1}.twoshaft .tsh-chosen .tsh-hit,.twoshaft .tsh-chosen:ho\
ver .tsh-hit{stroke:var(--ts-accent);stroke-width:2}.twoshaft .tsh-place:focus-visible .tsh-hit{stroke:var(--ts-accent);\
stroke-width:4}.twoshaft .tsh-chosen .tsf-t{font-weight:600}.twoshaft .tsh-box{border-left:3px solid var(--ts-accent);pa\
dding-left:calc(1.5 * var(--ts-grid));min-height:5.5em}.twoshaft .tsh-head,.twoshaft .tsh-verdict{font-weight:600}.twosh\
aft .tsh-verdict{margin-top:var(--ts-grid)!important}.twoshaft .tsh-told .ts-facts{margin-bottom:0}.twoshaft .tsl-slider\
s{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(26em,100%),1fr));gap:0 calc(3 * var(--ts-grid));margin:v\
ar(--ts-grid) 0;max-width:960px}.twoshaft .tsl-row{display:grid;grid-template-columns:12em minmax(6em,1fr) 4em;align-ite\
ms:center;gap:var(--ts-grid);min-height:28px}.twoshaft .tsl-row input{width:100%;accent-color:var(--ts-accent);margin:0;\
min-height:24px}.twoshaft .tsl-row .ts-box{justify-self:start}.twoshaft .tsl-figure{font-variant-numeric:tabular-nums;te\
xt-align:right}.twoshaft .tsl-drawing{overflow-x:auto}.twoshaft .tsl-drawing svg{display:block;width:100%;min-width:min(\
520px,100%);max-width:820px;height:auto}.twoshaft .tsl-sum{font-variant-numeric:tabular-nums;margin:var(--ts-grid) 0}@me\
dia(max-width:480px){.twoshaft .tsl-sliders{grid-template-columns:minmax(0,1fr)}.twoshaft .tsl-row{display:flex;flex-wra\
p:wrap;min-width:0}.twoshaft .tsl-row input{max-width:100%}}.twoshaft .tsp-section{flex:1 1 320px;overflow-x:auto}.twosh\
aft .tsp-gauge{width:190px;height:173px;flex:none}.twoshaft .tsp-section svg{display:block;max-width:100%;height:auto;mi\
n-width:320px}.twoshaft .ts-pair[hidden]{display:none}.twoshaft .ts-cells{position:absolute;pointer-events:none}.twoshaf\
t .tsp-land.tsp-clear{fill:none}.twoshaft .tsp-lump{fill:none;stroke:var(--ts-bead);stroke-linecap:round}.twoshaft .tsp-\
way{fill:none;stroke:var(--ts-bad);stroke-linecap:round;stroke-linejoin:round}.twoshaft .tsp-out{fill:var(--ts-ink);stro\
ke:var(--ts-paper);stroke-width:.5px}.twoshaft .tsp-clear~g>.tsp-spot,.twoshaft .tsp-clean .tsp-spot-word,.twoshaft .tsp\
-shut .tsp-chosen{display:none}.twoshaft .ts-legend{display:flex;flex-wrap:wrap;gap:4px calc(2 * var(--ts-grid));font-si\
ze:var(--ts-small);min-height:1.6em}.twoshaft .ts-key{display:inline-flex;align-items:center;gap:4px}.twoshaft .ts-swatc\
h{width:25px;height:15px;border:1px solid var(--ts-line)}.twoshaft-rig .ts-pad-tools .ts-box{max-width:15em}.twoshaft-ri\
g .ts-beside .ts-facts{max-width:none}.twoshaft .ts-range{accent-color:var(--ts-accent);min-height:24px}.twoshaft .ts-cl\
ock{min-width:6em;font-weight:600}.twoshaft .ts-unit{overflow:auto;max-height:max(20rem,min(620px,100vh - 370px));border\
:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:pan-x pan-y pinch-zoom}.twoshaft .ts-unit svg{display:blo\
ck;min-width:720px;max-width:none;max-height:none;margin-inline:auto}.twoshaft .ts-apart .ts-unit svg{min-width:0;overfl\
ow:visible}.twoshaft .ts-unit [data-part]{cursor:pointer}.twoshaft .ts-unit .tsu-chosen path:not(.tsu-behind,.tsu-pitch,\
.tsu-line){stroke:var(--ts-accent);stroke-width:3.2px;stroke-dasharray:none}.twoshaft .ts-unit [data-part]:hover path:no\
t(.tsu-behind,.tsu-pitch,.tsu-line){stroke:var(--ts-accent)}.twoshaft .ts-unit:focus-visible{outline:3px solid var(--ts-\
accent);outline-offset:-3px}.twoshaft .ts-unit-name{min-height:1.5em}.twoshaft .ts-unit-over{font-weight:600}.twoshaft .\
ts-unit-words p{max-width:var(--ts-width)}.twoshaft.ts-together .tsu-number{display:none}.twoshaft .ts-unit :is(.tsu-axi\
s,.tsu-number){pointer-events:none}.twoshaft .ts-apart{display:flex;flex-wrap:wrap;gap:calc(2 * var(--ts-grid))}.twoshaf\
t .ts-apart-tools{flex:1 1 280px;max-width:380px}.twoshaft .ts-apart-tools .ts-slide>span{min-width:0}.twoshaft .ts-apar\
t-tools .ts-slid{min-width:6em}.twoshaft .ts-apart-picture{flex:3 1 600px;min-width:0}.twoshaft .ts-nextin{min-height:3e\
m}.twoshaft .ts-apart-list{list-style:none;margin:0;padding:0 var(--ts-grid) 0 0;max-height:300px;overflow:auto;font-siz\
e:var(--ts-small)}.twoshaft .ts-apart-list li{padding:2px var(--ts-grid);border-left:4px solid transparent}.twoshaft .ts\
-apart-list .ts-current{border-left-color:var(--ts-accent);font-weight:600}@media(forced-colors:active){.twoshaft .ts-ap\
art-list li:not(.ts-current){border-left-color:Canvas}}.twoshaft .ts-space{display:block;width:100%;height:clamp(260px,1\
00vh - 290px,460px);box-sizing:border-box;border:1px solid var(--ts-line);margin:var(--ts-grid) 0;touch-action:none}.two\
shaft .ts-space:focus-visible{outline:3px solid var(--ts-accent);outline-offset:-3px}.twoshaft .ts-photographs{display:f\
lex;flex-wrap:wrap;gap:var(--ts-grid)}.twoshaft .ts-photographs figure{flex:0 1 320px;margin:var(--ts-grid) 0}.twoshaft \
.ts-photographs svg{display:block;width:100%;height:auto;max-height:220px}.twoshaft .ts-prompt[hidden],.twoshaft .ts-sen\
tences[hidden]{display:none}.twoshaft .ts-told{min-height:1.5em;max-height:6em;overflow-y:auto}.twoshaft .ts-build{displ\
ay:grid;grid-template:"tray unit" auto "hand unit" 1fr "end end" auto / minmax(20rem,1fr) minmax(0,738px);gap:var(--ts-g\
rid) calc(2 * var(--ts-grid));align-items:start}.twoshaft .ts-build-left{grid-area:tray}.twoshaft .ts-build-hand{grid-ar\
ea:hand;min-width:0}.twoshaft .ts-build-unit{grid-area:unit;min-width:0}.twoshaft .ts-build-face{grid-template:"tray han\
d" auto "end hand" 1fr / minmax(20rem,1fr) minmax(0,738px)}.twoshaft .ts-build-end{grid-area:end;margin:0}.twoshaft .ts-\
build-unit .ts-unit{max-height:max(15rem,min(560px,100vh - 475px));margin-block:4px}.twoshaft .ts-build-unit :is(.ts-uni\
t-name,.ts-in-picture){margin:0}.twoshaft .ts-buildlist{display:grid;gap:4px;max-height:9.5rem;overflow-y:auto;padding:4\
px}.twoshaft .ts-buildstep{display:flex;align-items:center;gap:var(--ts-grid);text-align:left;padding:1px var(--ts-grid)\
;min-height:34px}.twoshaft .ts-thumb{flex:0 0 44px;height:30px;display:grid;place-items:center;color:var(--ts-ink)}.twos\
haft .ts-buildstep[aria-current] .ts-thumb{background:var(--ts-paper)}.twoshaft .ts-carry{cursor:grab;touch-action:none}\
.twoshaft .ts-inhand{display:block;max-width:none;overflow:hidden;pointer-events:none}.twoshaft.ts-ghost{position:fixed;\
z-index:10000;transform:translate(-50%,-50%);opacity:.85;pointer-events:none}.twoshaft .ts-thumb path{vector-effect:non-\
scaling-stroke;stroke-width:1px}.twoshaft .ts-hand-row{display:flex;gap:calc(2 * var(--ts-grid))}.twoshaft .ts-hand-row>\
:last-child{flex:1;min-width:0}.twoshaft .ts-hand .ts-facts{grid-template-columns:fit-content(60%) minmax(0,1fr)}.twosha\
ft .ts-hand-row .ts-facts{display:block}.twoshaft .ts-hand-row .ts-facts dt{margin-top:4px}.twoshaft .ts-hand-row .ts-hi\
nt{margin:0}.twoshaft .ts-held-box{display:grid;gap:var(--ts-grid);align-content:start}.twoshaft .ts-held-box[hidden],.t\
woshaft .ts-held-box [hidden]{display:none}.twoshaft .ts-held-box>.ts-hint:empty{display:none}.twoshaft .ts-held-box>.ts\
-hint{max-width:126px}.twoshaft .ts-held-frame{display:grid;place-items:center;min-width:124px;min-height:88px;border:1p\
x dashed var(--ts-line)}.twoshaft .ts-buildstep-done{color:var(--ts-quiet);border-color:var(--ts-line)}.twoshaft .ts-bui\
ldstep-waits{border-style:dotted}.twoshaft .ts-buildstep-ready{font-weight:600}.twoshaft .ts-buildstep[aria-current]{bac\
kground:var(--ts-accent);color:var(--ts-on-accent)}.twoshaft .ts-stage-choice{max-width:100%}.twoshaft .ts-hand{border:1\
px solid var(--ts-line);padding:var(--ts-grid);max-height:max(13rem,min(24rem,100vh - 470px));overflow-y:auto}.twoshaft \
.ts-hand .ts-field{border:0;margin:var(--ts-grid) 0;min-width:0}.twoshaft .ts-hand-name{font-weight:600}.twoshaft .ts-do\
{text-align:left;padding-block:4px}.twoshaft .ts-caution{border-left:4px solid var(--ts-warn);padding-left:var(--ts-grid\
);font-size:var(--ts-small)}.twoshaft .ts-record table{border-collapse:collapse;margin:var(--ts-grid) 0;font:inherit}.tw\
oshaft .ts-record caption{text-align:left;font-weight:600}.twoshaft .ts-record :is(th,td){text-align:left;vertical-align\
:top;padding:3px 16px 3px 0;border-bottom:1px solid var(--ts-line);background:none;white-space:normal}.twoshaft .ts-reco\
rd th[scope=row]{font-weight:400}.twoshaft .ts-record .ts-blank{min-width:12em;height:2em}@media(min-width:52rem){.twosh\
aft .ts-build-face .ts-build-unit{display:none}.twoshaft .ts-build-face .ts-hand{max-height:27rem}}@media(max-width:52re\
m){.twoshaft .ts-build,.twoshaft .ts-build-face{grid-template:"tray" "hand" "unit" "end" / minmax(0,1fr)}.twoshaft .ts-h\
and{max-height:none}.twoshaft .ts-hand .ts-facts{grid-template-columns:minmax(0,1fr)}}@media(forced-colors:active){.twos\
haft-rig:not(.ts-begun,.ts-lost) .ts-first{outline:3px solid Highlight}.twoshaft .ts-button[aria-pressed=true],.twoshaft\
 .ts-buildstep[aria-current],.twoshaft .ts-held{forced-color-adjust:none;background:Highlight;border-color:Highlight;col\
or:HighlightText}.twoshaft :is(.ts-step,.ts-pathlist li):not(.ts-current,.ts-inblock){border-left-color:Canvas}.twoshaft\
 :is(.ts-step,.ts-pathlist li).ts-current{border-left-color:Highlight}.twoshaft-bar .ts-tasks a:not([aria-current]){bord\
er-bottom-color:Canvas}}`,Cs="twoshaft-styles";function co(){let t=document.getElementById(Cs);t?.textContent!==Ls&&(t?.
remove(),document.head.append(s("style",{id:Cs},Ls)))}function et({model:t,el:e},{kind:n,lost:r=()=>pe(e),line:o=()=>{}}){
co(),e.classList.add("twoshaft","twoshaft-live",`twoshaft-${n}`);let a=s("p",{class:"ts-alert",role:"alert"}),c=Ss(e),i=()=>e.
classList.contains("ts-lost"),d=[],u=io(t,()=>{i()||(e.classList.add("ts-lost"),c.down(),r())},h=>{i()||(h?c.down():c.up(),
o(h))}),p=ao(e),f,g=(h,y)=>{t.on(h,y),d.push([h,y])};return g("msg:custom",h=>{h.type==="trouble"&&!i()&&(a.textContent=
h.reason)}),{alert:a,follow:g,isLost:i,send(h){i()||(e.classList.add("ts-begun"),t.send(h),clearTimeout(f),f=window.setTimeout(
()=>t.send({type:"rest"}),oo))},asks(h,{first:y,begin:b,who:E="Practice. Nothing here is marked or saved."}={}){return y?.
classList.add("ts-first"),s("div",{class:"ts-who"},s("p",{class:"ts-asks"},h),b?s("p",{class:"ts-begin"},`Begin: ${b}.`):
"",E?s("p",{},E):"")},show:(...h)=>e.replaceChildren(...Wt(h)),close(){c.up(),clearTimeout(f),p(),u();for(let[h,y]of d)t.
off(h,y)}}}function Es({model:t,el:e}){let n=et({model:t,el:e},{kind:"rig",lost:()=>d.setDisabled(!0)}),r=s("p",{class:"ts-finding",
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
ole");let l=new Map(e.map(([x])=>[x,[]]));for(let x of J(i,"[data-part]"))l.get(String(x.dataset.part))?.push(x);let u=new Map(
e.map(([x],w)=>[x,w])),p=s("p",{class:"ts-hint ts-unit-name",role:"status"}),f=Mt({"aria-label":"Part",class:"ts-box ts-\
before"},[["","no part chosen"],...e.map(([x,w])=>[x,w])]),{width:g,height:h}=i.viewBox.baseVal,y=o?`min(100%, ${Math.round(
o*g/h)}px)`:"100%",b=new WeakMap,E=-1,B=0,k={},$=x=>{let w=k[x];return w==="absent"?" Not there yet.":w==="bench"?" On t\
he bench.":w==="lit"?" In hand.":""},A=x=>`${e[x][1]}. ${e[x][2]}${$(e[x][0])}`;function L(x){for(let D of J(i,".tsu-cho\
sen"))D.classList.remove("tsu-chosen");E=x;let w=x<0?"":e[x][0];f.value=w,p.textContent=x<0?F:A(x);for(let D of l.get(w)??
[])D.classList.add("tsu-chosen");x>=0&&m(w),a(w)}function M(x){let w=J(d,`[data-part="${x}"]`),D=[...l.get(x)??[],...w].
map(H=>{let{x:G,y:q,width:rt,height:st}=H.getBBox(),[lt,St]=b.get(H)??[0,0];return{x:G+lt,y:q+St,width:rt,height:st}}),W=Math.
min(...D.map(H=>H.x)),U=Math.max(...D.map(H=>H.x+H.width)),it=Math.min(...D.map(H=>H.y)),wt=Math.max(...D.map(H=>H.y+H.height));
return{x:(W+U)/2,y:(it+wt)/2}}let m=x=>S(M(x));function S(x){let w=i.getBoundingClientRect().width/i.viewBox.baseVal.width,
[D,W]=[x.x*w,x.y*w],{scrollLeft:U,scrollTop:it,clientWidth:wt,clientHeight:H}=c;(D<U+40||D>U+wt-40)&&(c.scrollLeft=D-wt/
2),(W<it+40||W>it+H-40)&&(c.scrollTop=W-H/2)}function v(x){B=Math.max(0,Math.min(As.length-1,B+x)),i.style.width=`calc(${As[B]}\
 * ${y})`,i.style.height="auto",E>=0&&m(e[E][0])}function I(x){let w=M(e[E][0]),[D]=e.map(([W],U)=>({k:U,at:M(W)})).filter(
({k:W,at:U})=>W!==E&&(U.y-w.y)*x>4).sort((W,U)=>Ms(W.at,w)-Ms(U.at,w));D&&L(D.k)}c.addEventListener("keydown",x=>{if(Ot(
x))return;let w=e.length-1;if(x.key==="ArrowRight")L(E>=w?0:E+1);else if(x.key==="ArrowLeft")L(E<=0?w:E-1);else if(x.key===
"ArrowUp"||x.key==="ArrowDown")E<0?L(0):I(x.key==="ArrowUp"?-1:1);else if(x.key==="Home")L(0);else if(x.key==="End")L(w);else if(x.
key==="+"||x.key==="=")v(1);else if(x.key==="-")v(-1);else if(x.key==="Escape")L(-1);else return;x.preventDefault()}),c.
addEventListener("click",x=>{let w=Ct(x,"[data-part]")?.dataset.part;L(w===void 0?-1:u.get(w)??-1)}),c.addEventListener(
"pointerover",x=>{let w=Ct(x,"[data-part]")?.dataset.part;if(w===void 0||x.pointerType!=="mouse")return;let D=Ct(x,"[dat\
a-solid]")?.querySelector("title")?.textContent,W=e[u.get(w)??0][1];N.textContent=D&&!W.endsWith(D)?`${D} (${W})`:W}),c.
addEventListener("pointerleave",()=>{N.textContent=""}),f.addEventListener("change",()=>L(u.get(f.value)??-1));let N=s("\
span",{class:"ts-unit-over","aria-hidden":"true"}),F="Point at a part, tap it, or choose it here to read its name.";p.textContent=
F;let Z=s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Part ",f),nt("−",()=>v(-1),"Smaller"),nt("+",()=>v(1),"\
Larger"),N),P=s("details",{class:"ts-unit-words"},s("summary",{},"What is where, in words"),s("p",{},n));return v(0),{nodes:[
Z,p,c,P],choose:f,drawing:i,frame:c,look(x){l.get(x)?.length&&m(x)},moveTo:S,shift(x,[w,D]){b.set(x,[w,D]),x.setAttribute(
"transform",`translate(${w.toFixed(1)} ${D.toFixed(1)})`)},show(x){k=x.looks;for(let[w,D]of l)for(let W of D)for(let U of lo)
W.classList.toggle(`tsu-${U}`,k[w]===U);d.innerHTML=x.marks,E>=0&&(p.textContent=A(E))}}}function Ms(t,e){return Math.abs(
t.y-e.y)+2*Math.abs(t.x-e.x)}function Os(t,e){t.setAttribute("aria-disabled",String(e)),t.classList.toggle("ts-off",e)}function Ts({model:t,el:e}){let n=s(
"p",{class:"ts-finding"}),r=s("p",{class:"ts-happened",role:"status"}),o=s("p",{class:"ts-hint"}),a=se(t),c=Kt(t.get("pi\
cture")),i=s("p",{class:"ts-hint",role:"status"}),d=s("dl",{class:"ts-facts"}),l=s("div",{class:"ts-ready"}),u=s("select",
{class:"ts-box ts-before","aria-label":"A step that is not ready"}),p=s("input",{type:"text",inputmode:"numeric",size:"3",
class:"ts-box","aria-label":"Go to place",onkeydown:m=>{m.key==="Enter"&&$()}}),f=s("span"),g=m=>L.send({type:"move",by:m}),
h=m=>L.send({type:"go",position:m}),y=nt("Back",()=>g(-1),"One step back"),b=nt("Next",()=>g(1),"Next step"),E=nt("Start",
()=>h(0),"Start with an empty bench"),B=nt("End",()=>h(t.get("view").count),"End of the order"),k=nt("Try it",()=>L.send(
{type:"take",step:u.value}),"Try it: the step chosen here"),$=()=>{let m=Number.parseInt(p.value,10);m>=0&&h(m)},A=s("di\
v",{class:"ts-tools",role:"group","aria-label":"Step through the order; left and right arrows step too"},E,y,b,B,s("span",
{class:"ts-pair"},"place ",p,f,nt("Go",$,"Go to this place")));A.addEventListener("keydown",m=>{if(!(m.target===p||Ot(m))){
if(m.key==="ArrowLeft")g(-1);else if(m.key==="ArrowRight")g(1);else if(m.key==="Home")h(0);else if(m.key==="End")h(t.get(
"view").count);else return;m.preventDefault()}});let L=et({model:t,el:e},{kind:"rig"});L.show(L.asks("What comes next, a\
nd what can no longer be reached?",{first:b,begin:"press Next"}),L.alert,n,A,Bt(c.nodes,[r,i,d,o,a.node,s("p",{class:"ts\
-prompt"},"Do another step next"),l,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"or one that is not ready: ",u,
k))]));function M(){let m=t.get("view");n.textContent=m.finding,r.textContent=m.happened,o.textContent=m.next?`Next in t\
his order: ${m.next}`:"This is the end of the order.",i.textContent=m.build.words,a.show("operation",m.in_hand),c.show(m.
build),d.replaceChildren(...Rt(m.facts));let S=l.contains(document.activeElement);l.replaceChildren(...m.ready.map(([N,F])=>nt(
F,()=>L.send({type:"take",step:N})))),m.ready.length||l.append(s("p",{class:"ts-hint"},"No step is ready.")),S&&(l.querySelector(
"button")??b).focus(),u.replaceChildren(...Et(m.waiting)),u.disabled=k.disabled=!m.waiting.length,p.value=String(m.position),
f.textContent=` of ${m.count} `;let v=m.position===0,I=m.position===m.count;for(let N of[y,E])Os(N,v);for(let N of[b,B])
Os(N,I)}return L.follow("change:view",M),M(),()=>{a.close(),L.close()}}function ne(t){let e=null,n=null,r=a=>{if(e!==null){n=a;return}e=ct("turn"),t(a,e)},o=()=>{e=null;let a=n;n=null,a!==null&&
r(a)};return{ask:r,free:o,answered(a){a===e&&o()},get waiting(){return e!==null}}}var ht=(t,e,n,r,o)=>R("line",{x1:t,y1:e,x2:n,y2:r,class:o}),mt=(t,e,n,r="middle")=>R("text",{x:t,y:e,"text-anchor":r,class:"\
tsg-text"},n);function oe(){let t=R("svg",{viewBox:"0 0 200 200",class:"tsg-dial",role:"img"});t.append(R("circle",{cx:100,
cy:100,r:96,class:"tsg-face"}));for(let r=0;r<100;r+=1){let o=r/100*2*Math.PI,a=r%10===0?78:r%5===0?82:86;t.append(ht(100+
a*Math.sin(o),100-a*Math.cos(o),100+92*Math.sin(o),100-92*Math.cos(o),r%10===0?"tsg-mark tsg-long":"tsg-mark")),r%10===0&&
t.append(mt(100+66*Math.sin(o),104.5-66*Math.cos(o),String(r)))}t.append(R("circle",{cx:100,cy:134,r:20,class:"tsg-face"}));
for(let r=0;r<10;r+=1){let o=r/10*2*Math.PI;t.append(ht(100+15*Math.sin(o),134-15*Math.cos(o),100+19*Math.sin(o),134-19*
Math.cos(o),"tsg-mark"))}let e=ht(100,134,100,119,"tsg-small"),n=R("path",{d:"M98 112L98.8 16L101.2 16L102 112Z",class:"\
tsg-pointer"});return t.append(e,n,R("circle",{cx:100,cy:100,r:5,class:"tsg-hub"})),{node:t,set(r,o){n.setAttribute("tra\
nsform",`rotate(${r*360} 100 100)`),e.setAttribute("transform",`rotate(${r*36} 100 134)`),t.setAttribute("aria-label",`D\
ial indicator, one mark is 0.01 mm. ${o}`)}}}function Is({top:t,mark:e,perFigure:n}){let r=R("svg",{viewBox:"0 0 600 92",
class:"tsg-scale",role:"img"}),o=c=>30+c/t*540;r.append(R("rect",{x:14,y:22,width:572,height:44,rx:6,class:"tsg-face"}));
for(let c=0;c*e<=t+1e-9;c+=1){let i=c%n===0;r.append(ht(o(c*e),22,o(c*e),i?40:33,i?"tsg-mark tsg-long":"tsg-mark")),i&&r.
append(mt(o(c*e),84,String(Math.round(c*e))))}let a=R("path",{d:"M0 24L-4 64L4 64Z",class:"tsg-pointer"});return r.append(
a,mt(586,14,"newtons","end")),{node:r,top:t,set(c,i){a.setAttribute("transform",`translate(${o(Math.min(c,t))} 0)`),r.setAttribute(
"aria-label",`Spring scale, one mark is ${e} N. ${i}`)}}}function Ns({low:t,high:e,reach:n}){let r=R("svg",{viewBox:"0 0\
 720 92",class:"tsg-axis",role:"img"}),o=i=>360+Math.max(-n,Math.min(n,i))/n*340;r.append(R("rect",{x:o(t),y:34,width:o(
e)-o(t),height:24,class:"tsg-target"}),mt((o(t)+o(e))/2,84,"target"),ht(20,46,700,46,"tsg-mark"),ht(360,26,360,66,"tsg-m\
ark tsg-long"),mt(20,20,"end play","start"),mt(700,20,"preload","end"),mt(360,20,"0"));for(let i=.05;i<=n+1e-9;i+=.05)for(let d of[
i,-i])r.append(ht(o(d),42,o(d),50,"tsg-mark"));r.append(mt(o(-n),70,`${n.toFixed(2)} mm`,"start"),mt(o(n),70,`${n.toFixed(
2)} mm`,"end"));let a=R("path",{d:"M-7 28L7 28L0 45Z",class:"tsg-cold"}),c=R("circle",{cx:0,cy:46,r:6,class:"tsg-warm"});
return r.append(a,c),{node:r,set(i,d,l){a.setAttribute("transform",`translate(${o(i)} 0)`),c.setAttribute("transform",`t\
ranslate(${o(d)} 0)`),r.setAttribute("aria-label",l)}}}function $t(t,{min:e,max:n,step:r,value:o,words:a,onInput:c}){let i=s(
"input",{type:"range",class:"ts-slider",min:e,max:n,step:r,value:o,"aria-label":t}),d=s("output",{class:"ts-slid"},a(o));
return i.addEventListener("input",()=>{let l=a(Number(i.value));d.textContent=l,i.setAttribute("aria-valuetext",l),c(Number(
i.value))}),i.setAttribute("aria-valuetext",a(o)),{box:i,row:s("label",{class:"ts-slide"},s("span",{},t),i,d),set(l){i.value=
String(l),d.textContent=a(l)}}}function kt(t,e,n,r){let o=s("select",{class:"ts-box","aria-label":t,onchange:()=>r(o.value)},
...e.map(([a,c])=>s("option",{value:a,selected:a===n},c)));return{box:o,row:s("span",{class:"ts-pair"},`${t} `,o)}}function Bs({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=null,a=s("div",{class:"tsg-wide",tabindex:"0",
role:"group","aria-label":"Spring scale"}),c=s("p",{class:"ts-hint"}),i=s("p",{class:"ts-finding",role:"status"}),d=s("u\
l",{class:"ts-sentences"}),l=ne((m,S)=>A.send({type:"set",state:m,turn:S})),u=m=>{r={...r,...m},l.ask(r)},p=R("circle",{
cx:0,cy:0,r:1,class:"tsg-face","vector-effect":"non-scaling-stroke"}),f=ht(0,0,0,0,"tsg-mark tsg-long"),g=mt(0,0,""),[h,
y]=n.readingsOnly?[72,48]:[96,120],b=h/(n.readingsOnly?r.radius:n.radii[1]),E=R("svg",{viewBox:`0 0 ${2*h+y} ${2*h+30}`,
width:2*h+y,height:2*h+30,class:"tsg-drum",role:"img"}),B=h+4;p.setAttribute("transform",`translate(${B} ${B})`),E.append(
p,f,ht(4,B,2*h+4,B,"tsg-centre"),ht(B,4,B,2*h+4,"tsg-centre"),R("circle",{cx:B,cy:B,r:10,class:"tsg-face"}),g);let k=K("\
Turn the shaft ten times",()=>u({turns:r.turns+10})),$=[s("div",{class:"ts-tools"},k)];if(!n.readingsOnly){let m=n.kinds,
S=m.map(([v,I])=>s("label",{class:"ts-option"},s("input",{type:"checkbox",checked:r.kinds.includes(v),onchange:N=>u({kinds:m.
map(([F])=>F).filter(F=>F===v?N.target.checked:r.kinds.includes(F))})}),`with ${I}`));$[0].append(K("Fit the rings anew",
()=>u({turns:0}))),S.length&&$.push(s("fieldset",{class:"tsg-ticks"},s("legend",{class:"ts-hint"},"What turns with the b\
earings"),...S)),$.push($t("Setting",{min:-.05,max:n.highest,step:.005,value:r.setting,onInput:v=>u({setting:v}),words:v=>v<
0?`${(-v).toFixed(3)} mm of end play`:`${v.toFixed(3)} mm of preload`}).row,$t("Radius of the drum",{min:n.radii[0],max:n.
radii[1],step:1,value:r.radius,onInput:v=>u({radius:v}),words:v=>`${v} mm`}).row)}let A=et({model:t,el:e},{kind:"rig"});
A.show(A.asks("How hard does the shaft turn?",{first:k,begin:"turn the shaft",who:n.readingsOnly?"Take your reading here\
; write it in the form.":void 0}),A.alert,s("div",{class:"tsg-beside"},E,s("div",{class:"tsg-side"},a,c)),...$,i,d);function L(){
let m=t.get("shown");l.waiting||(r=m.state);let S=b*m.state.radius;Ht(p,{r:S}),Ht(f,{x1:B,y1:B-S,x2:2*h+y,y2:B-S}),Ht(g,
{x:B,y:2*h+22}),g.textContent=`drum, radius ${m.state.radius} mm`,E.setAttribute("aria-label",`A drum of ${m.state.radius}\
 mm radius on the shaft; the cord leaves it at its edge towards the scale.`),o?.top!==m.scale.top&&(o=Is(m.scale),a.replaceChildren(
o.node),c.textContent=`Spring scale to ${m.scale.top} N, one mark ${m.scale.mark} N.`),o?.set(m.pull,m.pullWords),i.textContent=
m.finding,d.replaceChildren(...Ut(m.words)),l.answered(m.turn)}let M=()=>l.free();return A.follow("change:shown",L),A.follow(
"msg:custom",M),L(),A.close}function Dt({model:t,el:e},n){let r=t.get("about"),o=t.get("shown").state,a=ne((p,f)=>c.send({type:"set",state:p,turn:f})),
c=et({model:t,el:e},{kind:"rig"}),i=s("p",{class:"ts-finding",role:"status"}),d=n(r,p=>{o={...o,...p},a.ask(o)},o),l=r.readingsOnly?
"Take your readings here; write them in the form.":void 0;c.show(c.asks(d.asks,{first:d.first,begin:d.begin,who:l}),c.alert,
...d.side?[Bt([d.picture],[...d.controls,i])]:[s("div",{class:"tsg-wide"},d.picture),...d.controls,i]);function u(){let p=t.
get("shown");a.waiting||(o=p.state),d.set(p,o),i.textContent=p.finding,a.answered(p.turn)}return c.follow("change:shown",
u),c.follow("msg:custom",a.free),u(),c.close}var It=(...t)=>s("div",{class:"ts-tools"},...t);var uo={x:44,y:84,perMm:34};function po(t){let e=R("svg",{viewBox:"0 0 760 190",class:"tsi-vernier",role:"img"}),{x:n,y:r,
perMm:o}=uo,a=R("g",{}),c=R("g",{});e.append(R("rect",{x:1,y:22,width:758,height:r-22,class:"tsi-paper"}),R("rect",{x:n-
30,y:r,width:t.lines*t.space*o+60,height:64,class:"tsi-body"}),a,c,mt(12,14,"main scale, mm","start"),mt(12,176,`vernier\
, ${t.lines} spaces in ${Math.round(t.lines*t.space)} mm`,"start"));for(let i=0;i<=t.lines;i+=1){let d=n+i*t.space*o;c.append(
ht(d,r,d,r+(i%2?20:30),"tsi-fine")),i%2===0&&c.append(mt(d,r+48,String(i)))}return{node:e,set(i){a.replaceChildren();for(let d=Math.
max(0,Math.ceil(i.mm-1));d<=t.top+25;d+=1){let l=n+(d-i.mm)*o;l<4||l>756||(a.append(ht(l,r,l,r-(d%10===0?34:d%5===0?28:20),
"tsi-fine")),d%5===0&&a.append(mt(l,r-40,String(d))))}e.setAttribute("aria-label",`${t.name}. ${i.words}`)}}}function Ds(t){
return Dt(t,(e,n,r)=>{let o=po(e),a=$t("Rod",{min:0,max:e.top,step:.05,value:r.rod,words:()=>"push down to the right",onInput:l=>n(
{rod:l})}),c=kt("Foot",e.places,r.place,l=>n({place:l,rod:0})),i=K("Push the rod down until it rests",()=>n({rod:e.top})),
d=kt("Look",e.eyes,r.eye,l=>n({eye:l}));return{asks:"How deep does it lie?",first:i,begin:"push the rod down",picture:o.
node,controls:[It(c.row,d.row),It(i,K("Lift the rod",()=>n({rod:0}))),a.row],set(l,u){o.set(l),c.box.value=u.place,d.box.
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
tion shows the same parts with their names."}),a=Mt({"aria-label":"Part",class:"ts-box ts-before"},[["","no part chosen"],
...n.map(([A,L])=>[A,L])]),c=new Set,i,d=()=>[0,0,0],l=()=>{},u="Drag or use the arrow keys to turn. Tap a part, or choo\
se it here, to read its name.";r.textContent="Drawing …";function p(){let A=n.find(([M])=>M===a.value),L=c.has(a.value)?
" Hidden.":"";r.textContent=A?`${A[1]}. ${A[2]}${L}`:u,i?.look(a.value,c)}function f(){a.value&&(c.delete(a.value)||c.add(
a.value),p())}function g(){c.clear(),p()}a.addEventListener("change",p);let h={ArrowLeft:()=>i?.turnBy(-Ce,0),ArrowRight:()=>i?.
turnBy(Ce,0),ArrowUp:()=>i?.turnBy(0,Ce),ArrowDown:()=>i?.turnBy(0,-Ce),"+":()=>i?.zoomBy(Yt),"=":()=>i?.zoomBy(Yt),"-":()=>i?.
zoomBy(1/Yt),Home:()=>i?.home(),h:f,a:g};o.addEventListener("keydown",A=>{let L=h[A.key]??h[A.key.toLowerCase()];!L||Ot(
A)||(L(),A.preventDefault())});let y=null;o.addEventListener("pointerdown",A=>{y={x:A.clientX,y:A.clientY,far:!1},o.setPointerCapture(
A.pointerId)}),o.addEventListener("pointermove",A=>{if(!y)return;let[L,M]=[A.clientX-y.x,A.clientY-y.y];!y.far&&Math.hypot(
L,M)<4||(y={x:A.clientX,y:A.clientY,far:!0},i?.turnBy(-L/150,M/150))}),o.addEventListener("pointerup",A=>{if(y&&!y.far){
let{left:L,top:M,width:m,height:S}=o.getBoundingClientRect(),[v,I]=[(A.clientX-L)/m,(A.clientY-M)/S];a.value=i?.partAt(2*
v-1,1-2*I)??"",p()}y=null}),o.addEventListener("wheel",A=>{document.activeElement===o&&(i?.zoomBy(A.deltaY<0?Yt:1/Yt),A.
preventDefault())},{passive:!1});let b=()=>{i?.recolour(Ws(o.parentElement??document.body)),p()},E=new MutationObserver(
b),B=new ResizeObserver(()=>i?.paint()),k=!1;return Ge(t,"solids").then(({solidsView:A})=>{k||(i=A(o,e,Ws(o.parentElement??
document.body)),i.move(d),i.fit(),l(),i.home(),i.paint(),B.observe(o),E.observe(document.body,{attributes:!0}),Ye.addEventListener(
"change",b),p(),o.dataset.painted="true")},()=>{r.textContent=Hs}),{drawn:!0,nodes:[s("div",{class:"ts-tools"},s("span",
{class:"ts-pair"},"Part ",a),nt("Hide or show",f,"Hide or show the chosen part"),nt("Show all",g,"Show all parts"),nt("−",
()=>i?.zoomBy(1/Yt),"Smaller"),nt("+",()=>i?.zoomBy(Yt),"Larger")),r,o],move(A){d=A,i?.move(A)},ready(A){l=A},close(){k=
!0,B.disconnect(),E.disconnect(),Ye.removeEventListener("change",b),i?.close()}}}var Me=200,ho=580,go="2.6";function qs({model:t,el:e}){let n=s("p",{class:"ts-finding"}),r=s("p",{class:"ts-hint ts-next\
in",role:"status"}),o=s("div",{class:"ts-apart-picture"}),a=s("ol",{class:"ts-apart-list",tabindex:"0","aria-label":"Wha\
t goes in"}),c=t.get("stages"),i=kt("Show",c,t.get("stage"),m=>M.send({type:"stage",stage:m})),d=$t("From apart to toget\
her",{min:0,max:Me,step:1,value:0,words:m=>m<=0?"apart":m>=Me?"together":"on the way",onInput:m=>k(m/Me)}),l=t.get("pict\
ure"),u,p=[],f=[],g=0,h=!1,y,b=nt("In three dimensions",()=>{h=!h,b.setAttribute("aria-pressed",String(h)),A()});b.setAttribute(
"aria-pressed","false");function E(m){d.set(Math.round(m*Me)),k(m)}function B(m){let{placed:S}=ze(ae(g,l.movers.length));
E(Rs(S+m,l.movers.length))}function k(m){if(g=m,!u)return;let S=ae(g,l.movers.length);for(let{group:F,mover:Z,view:P}of p)
u.shift(F,Ps(l.movers,S,Z,P));$(S);for(let F of f)F.style.opacity=String(1-g);e.classList.toggle("ts-together",g>.5);let{
placed:v,next:I}=ze(S),N=`${v} of ${S.length} in place.`;for(let[F,Z]of[...a.children].entries())Z.classList.toggle("ts-\
current",F===I);r.textContent=I===null?"All in place.":`${N} Next in: ${l.movers[I].words}.`}function $(m){let{movers:S}=t.
get("space");y?.move(v=>js(S,m,v))}function A(){if(y?.close(),y=void 0,!!u&&(o.replaceChildren(...h?[]:u.nodes),!!h)){if(t.
get("space").stage!==t.get("stage")){Fs(t),M.send({type:"space"});return}y=Us(t,t.get("space"),l.parts),$(ae(0,l.movers.
length)),o.replaceChildren(...y.nodes,...y.drawn?[]:u.nodes),y.ready(()=>$(ae(g,l.movers.length)))}}function L(){if(l=t.
get("picture"),n.textContent=t.get("finding"),i.box.value=t.get("stage"),u=void 0,o.replaceChildren(),!l.svg)return;u=Kt(
l,{name:"Parts apart",tallest:ho}),u.drawing.dataset.grow=go,p=J(u.drawing,"[data-move]").map(S=>({group:S,mover:Number(
S.dataset.move),view:String(S.dataset.view)})),f=J(u.drawing,".tsu-traces"),a.replaceChildren(...l.movers.map(({words:S})=>s(
"li",{},S))),A(),k(g)}let M=et({model:t,el:e},{kind:"rig"});return M.show(M.asks("How do these parts go together?",{first:d.
box,begin:"move the slider",who:""}),M.alert,n,s("div",{class:"ts-apart"},s("div",{class:"ts-apart-tools"},i.row,d.row,s(
"div",{class:"ts-tools"},nt("One in",()=>B(1),"One part more in place"),nt("One out",()=>B(-1),"One part less in place")),
b,r,a),o)),M.follow("change:picture",L),M.follow("change:space",A),L(),()=>{y?.close(),M.close()}}function Ks({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("p",{class:"tsj-happened",role:"status"}),
a=s("div",{class:"tsj-drawing"});a.innerHTML=n.drawing;let c=s("div",{class:"tsj-bars"}),i=J(a,"[data-bolt]"),d=ct("torq\
ue"),l=s("input",{id:d,type:"range",min:10,max:100,step:5,oninput:()=>f()});l.value="100";let u=s("output",{class:"tsj-f\
igure",for:d}),p=()=>l.value==="100"?n.torque:Number((Math.round(n.torque*Number(l.value)/100/n.step)*n.step).toFixed(3));
function f(){u.textContent=`${p()} N·m`,l.setAttribute("aria-valuetext",`${p()} newton metres, ${l.value} percent of th\
e torque`)}let g=m=>k.send({type:"pull",bolt:m,torque:p()}),h=K("Take back",()=>k.send({type:"undo"})),y=K("Wait until t\
he film has run out",()=>k.send({type:"wait"})),b=s("select",{class:"ts-box","aria-label":"Wet sealant between the faces",
onchange:()=>k.send({type:"set",film:Number(b.value)})},...n.films.map(m=>s("option",{value:m},m?`${m} µm thick`:"none"))),
E=s("input",{type:"checkbox",onchange:()=>k.send({type:"set",scattered:E.checked})});a.addEventListener("click",m=>{let S=Ct(
m,"[data-bolt]");S&&(B(S),g(Number(S.dataset.bolt)))});let B=m=>{for(let S of i)S.setAttribute("tabindex",S===m?"0":"-1");
m.focus({preventScroll:!0})};a.addEventListener("keydown",m=>{let S=Ct(m,"[data-bolt]");if(!S||m.ctrlKey||m.metaKey||m.altKey)
return;let v=Number(S.dataset.bolt),I={ArrowRight:1,ArrowDown:1,ArrowLeft:-1,ArrowUp:-1}[m.key];if(I)B(i[(v+I+i.length)%
i.length]);else if(m.key==="Home")B(i[0]);else if(m.key==="End")B(i[i.length-1]);else if(m.key==="Enter"||m.key===" ")m.
repeat||g(v);else return;m.preventDefault()});let k=et({model:t,el:e},{kind:"rig"}),$=K("Start all by hand",()=>k.send({
type:"start"})),A=s("div",{class:"ts-tools",role:"group","aria-label":"Bolts"},$,...n.rounds.map(([m,S])=>K(`One round ${S}`,
()=>k.send({type:"round",pattern:m,torque:p()}))),h,K("Start again",()=>k.send({type:"again"}))),L=s("div",{class:"ts-to\
ols",role:"group","aria-label":"Wrench"},s("span",{class:"tsj-slide"},s("label",{for:d},"Wrench set to"),l,u));n.films.length&&
L.append(s("label",{class:"ts-pair"},"Wet sealant",b),y,s("label",{class:"tsj-check"},E,"friction scatters from bolt to \
bolt")),k.show(k.asks("Does every bolt keep its clamp?",{first:$,begin:"start all bolts by hand",who:n.readingsOnly?"Not\
hing is saved here; your answers stand in the form.":void 0}),k.alert,r,L,A,o,s("div",{class:"tsj-bench"},a,c),s("detail\
s",{class:"ts-keys"},s("summary",{},"How, and keys"),"The first choice of a bolt starts it by hand, the next ones pull i\
t. Arrows go from bolt to bolt, Enter pulls."));function M(){let m=t.get("view");r.textContent=m.finding,o.textContent=m.
happened,c.innerHTML=m.bars;for(let[S,v]of i.entries()){let I=m.tight[S]?`${m.clamps[S]} kN`:m.started[S]?"started by ha\
nd":"not started";v.setAttribute("aria-label",`Bolt ${S+1} of ${n.count}, ${I}`),v.classList.toggle("tsj-tight",m.tight[S]),
v.classList.toggle("tsj-started",m.started[S])}h.disabled=!m.pulls,y.disabled=!m.standing,b.value=String(m.film),E.checked=
m.scattered}return k.follow("change:view",M),f(),M(),k.close}var zs="tsk-number";function Ft(t,e,...n){return s("td",{class:e?zs:null,"data-label":t||null,role:"cell"},...n)}function Oe(t,e,n){
let r=e.map(([c,i])=>s("th",{scope:"col",role:"columnheader",class:i?zs:null},c)),o=s("thead",{role:"rowgroup"},s("tr",{
role:"row"},...r)),a=s("table",{class:"tsk-board",role:"table"},s("caption",{},t),o,n);return s("div",{class:"ts-scroll"},
a)}function Gs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsk-spent"}),
a=s("ul",{class:"ts-sentences tsk-left"}),c=s("p",{class:"tsk-more"}),i=s("tbody",{role:"rowgroup"}),d=new Map;for(let[f,
g,h,y]of n.checks){let b=s("select",{class:"ts-box","aria-label":`What it showed: ${g}`,onchange:()=>u.send({type:"obser\
ve",check:f,shown:b.value})},s("option",{value:""},"Not made"),...Et(y)),E=Ft("worth, bit",!0),B=Ft("bit a minute",!0),k=s(
"tr",{role:"row"},s("th",{scope:"row",role:"rowheader"},g),Ft("min",!0,`${h}`),Ft("it showed",!1,b),E,B);d.set(f,{box:b,
tells:E,rate:B,row:k}),i.append(k)}let l=s("button",{class:"ts-button",type:"button",onclick:()=>u.send({type:"clear"})},
"Take all observations back"),u=et({model:t,el:e},{kind:"rig"});u.show(u.asks("Which fault is it, and which check comes \
next?",{first:d.values().next().value?.box,begin:"say what a check showed"}),u.alert,r,a,c,Oe("Checks: what each showed,\
 and what it is still worth",[["Check"],["min",!0],["It showed"],["worth, bit",!0],["bit a minute",!0]],i),s("div",{class:"\
ts-tools"},l,o));function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.spent,c.textContent=f.more,a.replaceChildren(
...Ut(f.left.map(([y,b])=>`${y} (${b})`)));let g=f.ranked,h=new Map(g.map(([y,b,E],B)=>[y,{bits:b,rate:E,rank:B}]));for(let[
y,{box:b,tells:E,rate:B,row:k}]of d){let $=f.observed[y],A=h.get(y);b.value=$??"",E.textContent=A?A.bits:$!==void 0?"mad\
e":"nothing",B.textContent=A?A.rate+(A.rank===0?" ◀ best next":""):"–",k.classList.toggle("tsk-best",A?.rank===0)}}return u.
follow("change:view",p),p(),u.close}function Ys(t,{move:e,hand:n}){let{element:r,at:o}=Se(t),a=Object.entries(t.aims).filter(([d])=>d.startsWith("at:")),c=(d,l)=>{
let[u,p]=o(d,l);return R("circle",{cx:u,cy:p,r:16,class:"tsl-spot",...{"data-travel":d,"data-turn":l}})},i=R("g",{class:"\
tsl-knob"},R("circle",{r:12}));return r.append(...a.map(([,[d]])=>c(Number(d),0)),...t.gears.map(([,d,l])=>c(d,l)),i),r.
classList.add("ts-lever"),r.addEventListener("click",d=>{let l=Ct(d,".tsl-spot");if(!l)return;let u=[Number(l.dataset.travel),
Number(l.dataset.turn)];for(let p of bs(t.aims,n(),u))e(p)}),{element:r,scale:[re,$e],show([d,l],u){let[p,f]=o(d,l);i.setAttribute(
"transform",`translate(${p.toFixed(1)} ${f.toFixed(1)})`);for(let g of J(r,"[data-gear]"))g.classList.toggle("tsl-in",u.
includes(String(g.dataset.gear)))}}}function Xs({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("p",{class:"ts-happened",role:"status"}),
o=s("div",{class:"ts-scroll ts-fit"}),a=Ys(t.get("plan"),{move:S=>E({type:"move",code:S}),hand:()=>t.get("view").hand}),
c=s("div",{class:"ts-gate",tabindex:"0",role:"application","aria-roledescription":"lever","aria-label":"The lever. Arrow\
 keys left and right slide the selector shaft, up and down turn it."}),i=s("select",{class:"ts-box ts-how","aria-label":"\
How it is put together"},...Et(t.get("builds"))),d=nt("Start again",()=>E({type:"reset"})),l=s("div",{class:"ts-tools ts\
-moves",role:"group","aria-label":"Moves of the hand"},...t.get("moves").map(([S,v])=>nt(v,()=>E({type:"move",code:S})))),
u=s("ol",{class:"ts-log","aria-label":"What was tried and what happened"}),p=s("p",{class:"ts-hint"},"Nothing tried yet.\
 Each move is written down here."),f=s("p",{class:"ts-proof",role:"status"}),g=nt("What does a full hand test find?",()=>{
g.disabled=!0,f.textContent="testing",E({type:"prove"})}),h=et({model:t,el:e},{kind:"rig"});c.append(s("div",{},s("p",{class:"\
ts-prompt"},"The lever"),a.element),o),h.show(h.asks("Which gears can the lever reach?",{first:a.element,begin:"press a \
place in the gate"}),h.alert,s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Put together: ",i),d,g),n,c,r,f,s("p",
{class:"ts-hint ts-gate-hint"},"Press a place in the gate, or pull the lever. Keys: left and right slide, up and down tu\
rn. Or in words:"),s("div",{class:"ts-gate-work"},l,s("div",{},s("p",{class:"ts-prompt"},"Tried by hand"),p,u)));let y=0,
b="";function E(S){y+=1,h.send({...S,turn:y})}function B(){let S=t.get("view");if(b!==t.get("figure")){b=t.get("figure"),
o.innerHTML=b;let v=Jt(o,"svg");v.removeAttribute("role"),v.setAttribute("aria-hidden","true")}for(let v of J(o,"[data-b\
ody]")){let[I,N]=S.moved[String(v.dataset.rides??v.dataset.body)]??[0,0];v.setAttribute("transform",`translate(${I.toFixed(
2)} ${N.toFixed(2)})`)}for(let v of J(o,"[data-gear]"))v.classList.toggle("tsg-in",S.gears.includes(v.dataset.gear));for(let v of J(
o,"[data-lifts]"))v.classList.toggle("tsg-up",S.lifted);a.show(S.hand,S.gears),c.dataset.turn=String(S.turn),n.textContent=
`${S.gears.length>1?"■ ":S.gears.length?"● ":"○ "}${S.title}.`,r.textContent=S.happened,r.classList.toggle("ts-sto\
pped",/topped by/.test(S.happened)),(u.childElementCount!==S.log.length||u.lastElementChild?.textContent!==S.log.at(-1))&&
(u.replaceChildren(...S.log.map(v=>s("li",{class:/topped by/.test(v)?"ts-stopped":""},v))),u.scrollTop=u.scrollHeight),p.
hidden=S.log.length>0,i.value=S.build,f.textContent=S.proof,g.disabled=!1,A=!1,m()}c.addEventListener("keydown",S=>{if(Ot(
S))return;let v={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[S.key];v&&(S.preventDefault(),E({type:"\
nudge",travel:v[0],turned:v[1]}))}),i.addEventListener("change",()=>E({type:"build",build:i.value}));let k=null,$=null,A=!1;
function L(S,v){let I=v.getBoundingClientRect(),N=v.viewBox.baseVal.width/I.width;return[(S.clientX-I.left)*N,(S.clientY-
I.top)*N]}c.addEventListener("pointerdown",S=>{let v=Ct(S,".tsg-panel, .tsl-knob");if(!v||S.button!==0)return;let I=v.ownerSVGElement,
N=t.get("view").hand,[F,Z]=L(S,I),P=Number(v.dataset.scale),x=P?[P,P]:a.scale;k={svg:I,x:F-N[0]*x[0],y:Z+N[1]*x[1],scale:x},
c.setPointerCapture(S.pointerId),c.focus({preventScroll:!0}),c.classList.add("ts-pulling"),S.preventDefault()}),c.addEventListener(
"pointermove",S=>{if(!k)return;let[v,I]=L(S,k.svg),{scale:N}=k;$={travel_mm:(v-k.x)/N[0],turn_mm:(k.y-I)/N[1]},m()});let M=()=>{
k=null,c.classList.remove("ts-pulling")};c.addEventListener("pointerup",M),c.addEventListener("pointercancel",M);function m(){
if(A||!$)return;A=!0;let S=$;$=null,E({type:"pull",...S})}return h.follow("msg:custom",S=>{S.type==="trouble"&&(A=!1)}),
h.follow("change:view",B),B(),h.close}function Vs({model:t,el:e}){let n=t.get("plan"),r=t.get("view"),o=s("p",{class:"ts-finding tsw-say",role:"status"}),a=s(
"p",{class:"ts-happened tsw-happened",role:"status"}),c=s("div",{class:"ts-scroll ts-fit tsw-train"}),i=r.dials[0].shaft,
l=n.gears.map(([v,I])=>s("button",{type:"button",class:"ts-button","data-gear":v,"aria-pressed":"false",onclick:()=>M({type:"\
gear",gear:v})},I)),u=s("select",{class:"ts-box","aria-label":"Wheel held still",onchange:v=>M({type:"hold",shaft:v.target.
value})},...Et(n.holds)),p=s("select",{class:"ts-box","aria-label":"Shaft that you turn",onchange:v=>{i=v.target.value,S()}},
...Et(r.dials.map(v=>[v.shaft,v.name]))),f=v=>M({type:"turn",shaft:i,turns:v}),g=`1/${n.marks}`,h=s("div",{class:"ts-too\
ls",role:"group","aria-label":"Turn the shaft"},nt("↺ 1 turn",()=>f(-1),"One turn anticlockwise"),nt(`↺ ${g}`,()=>f(
-n.step),`${g} turn anticlockwise`),nt("↺ a touch",()=>f(-n.fine),"A touch anticlockwise"),nt("a touch ↻",()=>f(n.fine),
"A touch clockwise"),nt(`${g} ↻`,()=>f(n.step),`${g} turn clockwise`),nt("1 turn ↻",()=>f(1),"One turn clockwise"),nt(
"Marks to zero",()=>M({type:"reset"}))),y=new Map;for(let v of r.dials){let I=R("g",{},R("circle",{class:"tsw-end",r:34}),
R("line",{class:"tsw-painted",x1:0,x2:0,y1:0,y2:-34}),R("circle",{class:"tsw-dot",cx:0,cy:-27,r:5})),N=[];for(let D=0;D<
n.marks;D+=1)N.push(R("line",{class:"tsw-tick",y1:-40,y2:D?-47:-52,transform:`rotate(${D*360/n.marks})`})),D&&N.push(R("\
text",{class:"tsw-number",x:57*Math.sin(D*2*Math.PI/n.marks),y:-57*Math.cos(D*2*Math.PI/n.marks)+4},String(D)));let F=R(
"svg",{viewBox:"-70 -70 140 140",class:"tsw-dial","data-shaft":v.shaft,"aria-hidden":"true"},R("circle",{class:"tsw-plat\
e",r:40}),...N,R("path",{class:"tsw-pointer",d:"M0 -42 l-6 -12 h12 z"}),I),Z=s("div",{class:"tsw-count",tabindex:"0",role:"\
application","aria-roledescription":"shaft","data-shaft":v.shaft},s("div",{class:"tsw-name"}),F,s("div",{class:"tsw-stro\
kes","aria-hidden":"true"}),s("div",{class:"tsw-figure"}));y.set(v.shaft,{box:Z,svg:F,shaftEnd:I}),Z.addEventListener("f\
ocus",()=>{i!==v.shaft&&(i=v.shaft,S())}),Z.addEventListener("keydown",D=>{if(Ot(D))return;let W={ArrowRight:1,ArrowDown:1,
ArrowLeft:-1,ArrowUp:-1,PageDown:1,PageUp:-1}[D.key];W&&(D.preventDefault(),i=v.shaft,f(W*(D.key.startsWith("Page")?1:D.
shiftKey?n.fine:n.step)))});let P=null,x=D=>{let W=F.getBoundingClientRect();return Math.atan2(D.clientX-W.left-W.width/
2,W.top+W.height/2-D.clientY)/(2*Math.PI)};F.addEventListener("pointerdown",D=>{D.button===0&&(P=x(D),F.setPointerCapture(
D.pointerId),Z.focus({preventScroll:!0}),D.preventDefault())}),F.addEventListener("pointermove",D=>{if(P===null)return;let W=x(
D),U=W-P;U-=Math.round(U),P=W,b+=U,B()});let w=()=>{P=null};F.addEventListener("pointerup",w),F.addEventListener("pointe\
rcancel",w)}let b=0,E=!1;function B(){if(E||Math.abs(b)<.002)return;E=!0;let v=b;b=0,f(v)}let k=et({model:t,el:e},{kind:"\
rig"}),$=[s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Hold still: ",u),s("span",{class:"ts-pair"},"Turn by ha\
nd: ",p)),s("div",{class:"tsw-counts"},...[...y.values()].map(v=>v.box)),h,a];k.show(k.asks("How many turns does it take\
?",{first:h,begin:n.closed?"turn a shaft":"engage a gear, then turn a shaft",who:n.closed?"Nothing is saved here; your a\
nswers stand in the form.":void 0}),k.alert,o,!n.closed&&s("div",{class:"ts-tools",role:"group","aria-label":"Gears enga\
ged"},s("span",{},"Engage: "),...l),...n.closed?$:[Bt([c],$)],s("p",{class:"ts-hint tsw-say"},`All three are seen from t\
he clutch side. Drag a dial round, or go to it and use the arrow keys (${g} turn), Shift with an arrow key (a touch) or \
Page Up and Page Down (one turn). Each stroke is a whole turn.`));let A=0,L=null;function M(v){A+=1,k.send({...v,turn:A})}
let m=v=>{let I=[];for(let N=v;N>0;N-=5)I.push(N>=5?"||||/":"|".repeat(N));return I.join(" ")};function S(){let v=t.get(
"view");L!==t.get("figure")&&(L=String(t.get("figure")),c.innerHTML=L);for(let I of J(c,"[data-wheel]")){let[N,F]=v.wheels[String(
I.dataset.wheel)]??[0,!0];I.setAttribute("transform",`translate(0 ${(N*Number(I.dataset.reach)).toFixed(1)})`),I.classList.
toggle("tsw-behind",!F)}for(let I of l)I.setAttribute("aria-pressed",String(v.engaged.includes(I.dataset.gear)));u.value=
v.held,p.value=i;for(let I of v.dials){let{box:N,shaftEnd:F}=y.get(I.shaft),Z=I.way>0?"↻":I.way<0?"↺":"";F.setAttribute(
"transform",`rotate(${I.angle})`);let[P,,x,w]=N.children;P.textContent=`${I.name}${I.held?", held":I.shaft===i?", your h\
and":""}`,x.textContent=I.strokes||Z?`${Z} ${m(I.strokes)}`:"no stroke",w.textContent=I.figure,N.classList.toggle("tsw-h\
and",I.shaft===i),N.classList.toggle("tsw-held",I.held),N.setAttribute("aria-label",`${I.name}${I.held?", held":""}. ${I.
words}`)}o.textContent=v.finding,a.textContent=v.happened,e.dataset.turn=String(v.turn),E=!1,B()}return k.follow("change\
:view",S),S(),k.close}function Js({model:t,el:e}){let n=s("p",{class:"ts-finding",role:"status"}),r=s("div",{class:"tsh-picture"}),o=s("p",{class:"\
tsh-head"}),a=s("p",{class:"tsh-seen"}),c=s("div",{class:"tsh-told"}),i=s("div",{class:"tsh-box",role:"status"},o,a,c),d=[],
l=[],u=null,p=t.get("plan").lookingOnly,f=(L,M)=>s("button",{type:"button",class:"ts-button","data-verdict":L,"aria-pres\
sed":"false",onclick:()=>b.send({type:"judge",place:u,verdict:L})},M),g=p?[]:[f("stop","Stop here"),f("well","Fine as it\
 is")],h=s("button",{type:"button",class:"ts-button",onclick:()=>b.send({type:"next"})},"Another day"),y=s("div",{class:"\
ts-tools",role:"group","aria-label":"Your judgement of the place"},...g);t.get("plan").more&&y.append(h);let b=et({model:t,
el:e},{kind:"rig"});b.show(b.asks(p?"What is to be seen at each place?":"Where can somebody get hurt?",{first:p?r:g[0],begin:p?
"choose a place":"choose a place and judge it",who:p?"Nothing is saved here; your answers stand in the form.":void 0}),b.
alert,n,s("p",{class:"ts-keys"},p?"Choose a place to read what can be seen there. Keys: arrows go from place to place.":
"Choose a place, read what can be seen there, and judge it. Keys: arrows go from place to place; Tab goes on to the butt\
ons."),Bt([r],[i,!p&&y]));function E(L,M){let m=L!==u;u=L;for(let[S,v]of l.entries()){let I=d[S][0]===L;v.setAttribute("\
tabindex",I?"0":"-1"),v.setAttribute("aria-pressed",String(I)),v.classList.toggle("tsh-chosen",I),I&&M&&(v.focus({preventScroll:!0}),
B(v))}m&&b.send({type:"choose",place:L})}function B(L){let M=Jt(L,".tsh-hit").getBoundingClientRect(),m=r.getBoundingClientRect();
(M.left<m.left||M.right>m.right)&&(r.scrollLeft+=M.left-m.left-(m.width-M.width)/2),(M.bottom<0||M.bottom>innerHeight||M.
top<0)&&L.scrollIntoView({block:"nearest"})}function k(){let L=t.get("plan");d=L.places,r.innerHTML=L.drawing,Jt(r,"svg").
setAttribute("role","group"),l=d.map(([M])=>Jt(r,`[data-place="${M}"]`)),l.forEach((M,m)=>{M.setAttribute("role","button"),
M.setAttribute("aria-label",`${m+1} ${d[m][1]}`),M.addEventListener("click",()=>E(d[m][0],!0))}),u=String(t.get("view").
chosen),E(u,!1)}r.addEventListener("keydown",L=>{if(Ot(L))return;let M=d.findIndex(([v])=>v===u),m=Math.min(6,d.length),
S=M;if(L.key==="ArrowRight")S=M+1;else if(L.key==="ArrowLeft")S=M-1;else if(L.key==="ArrowDown")S=M+m;else if(L.key==="A\
rrowUp")S=M-m;else if(L.key==="Home")S=0;else if(L.key==="End")S=d.length-1;else if(L.key!=="Enter"&&L.key!==" ")return;
L.preventDefault(),S>=0&&S<d.length&&E(d[S][0],!0)});function $(){let L=t.get("view");n.textContent=L.finding;let M=d.findIndex(
([v])=>v===L.chosen);o.textContent=`${M+1}  ${d[M][1]}`,a.textContent=L.seen;let{verdict:m,...S}=L.told;if(c.replaceChildren(),
m){let v=L.judged[L.chosen],I=v==="stop"==(m==="Stop here."),N=v==="stop"?"Stop here":"Fine as it is";c.append(s("p",{class:"\
tsh-verdict"},I?`✓ Yes: ${m}`:`✗ You said “${N}”. The course says: ${m}`),s("dl",{class:"ts-facts"},...Object.entries(
S).flatMap(([F,Z])=>[s("dt",{},F),s("dd",{},Z)])))}for(let v of g)v.setAttribute("aria-pressed",String(L.judged[L.chosen]===
v.dataset.verdict));for(let[v,I]of l.entries()){let N=L.judged[d[v][0]];I.setAttribute("aria-label",`${v+1} ${d[v][1]}${N?
`, judged: ${N==="stop"?"stop here":"fine as it is"}`:""}`);let F=I.querySelector(".tsh-tag");if(!N){F?.remove();continue}
F||(F=R("text",{class:"tsf-t tsh-tag",...{x:80,y:190,"text-anchor":"middle"}}),I.append(F)),F.textContent=N==="stop"?"■ \
stop":"○ well"}e.dataset.turn=L.chosen}let A=()=>{k(),$()};return b.follow("change:plan",A),b.follow("change:view",$),
A(),b.close}function Zs({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("p",{class:"tsl-sum"}),a=s(
"div",{class:"tsl-drawing"}),c=new Map,d=n.sliders.map(([f,g,h,y,b,E])=>{let B=ct(f.replace("_","-")),k=s("output",{class:"\
tsl-figure",for:B}),$=s("input",{id:B,type:"range",min:y,max:b,step:E,oninput:()=>{A(),u.send({type:"set",name:f,value:Number(
$.value)})}}),A=()=>{k.textContent=`${$.value} ${h}`,$.setAttribute("aria-valuetext",`${$.value} ${h==="°"?"degrees":h}`)};
return c.set(f,{slider:$,say:A}),s("div",{class:"tsl-row"},s("label",{for:B},g),$,k)}),l=s("select",{class:"ts-box","ari\
a-label":"Grip",onchange:()=>u.send({type:"set",name:"grip",value:l.value})},...Et(n.grips)),u=et({model:t,el:e},{kind:"\
rig"});u.show(u.asks("Is this lift safe by hand?",{first:c.values().next().value?.slider,begin:"set the load"}),u.alert,
r,s("div",{class:"tsl-sliders",role:"group","aria-label":"The lift"},...d,s("div",{class:"tsl-row"},s("span",{},"Grip"),
l)),a,o,s("p",{class:"ts-keys"},"Dashed: where the load goes. The figure is drawn for the eye; only the distances count."));
function p(){let f=t.get("view");r.textContent=f.finding,o.textContent=f.sum,a.innerHTML=f.drawing;for(let[g,{slider:h,say:y}]of c)
document.activeElement!==h&&(h.value=f.sizes[g]),y();l.value=f.sizes.grip}return u.follow("change:view",p),p(),u.close}var Te={x:90,y:120,perMm:20,radius:82,bevel:30};function mo(t){let e=R("svg",{viewBox:"0 0 760 240",class:"tsi-micromete\
r",role:"img"}),{x:n,y:r,perMm:o,radius:a}=Te;e.append(R("rect",{x:n-60,y:r-56,width:o*t.top+90,height:112,class:"tsi-pa\
per"}),ht(n-20,r,n+o*t.top+20,r,"tsi-bold"));for(let p=0;p*t.pitch<=t.top;p+=1){let f=n+p*t.pitch*o;if(p%2){e.append(ht(
f,r,f,r+18,"tsi-fine"));continue}let g=p/2;e.append(ht(f,r,f,r-(g%5?18:27),g%5?"tsi-fine":"tsi-bold")),g%5===0&&e.append(
mt(f,r-33,String(g)))}let c=R("g",{});e.append(c,mt(12,234,"Sleeve: lines above the datum 1 mm apart, those below midway\
. Thimble: 50 lines a turn.","start"));let i=R("path",{d:`M0 ${r-a+14}L${Te.bevel} ${r-a}L${Te.bevel} ${r+a}L0 ${r+a-14}\
Z`,class:"tsi-body"}),d=R("rect",{x:Te.bevel,y:r-a,width:760,height:2*a,class:"tsi-body"}),l=R("rect",{x:0,y:r-a,width:760,
height:2*a,fill:"var(--ts-paper)"}),u=R("g",{});return c.append(l,i,d,u),{node:e,set(p){c.setAttribute("transform",`tran\
slate(${n+p.mm*o} 0)`),u.replaceChildren();for(let f=0;f<t.lines;f+=1){let g=f-p.line;g-=t.lines*Math.round(g/t.lines);let h=g/
t.lines*2*Math.PI;if(Math.abs(h)>1.15)continue;let y=r-(a-8)*Math.sin(h),b=f%5===0;u.append(ht(0,y,b?26:16,y,b?"tsi-bold":
"tsi-fine")),b&&u.append(mt(36,y+5,String(f),"start"))}e.setAttribute("aria-label",`${t.name}. ${p.words}`)}}}function Qs(t){
return Dt(t,(e,n,r)=>{let o=mo(e),a=$t("Thimble",{min:0,max:e.top,step:.01,value:r.open,words:()=>"turn in to the left, \
out to the right",onInput:l=>n({open:l})}),c=kt("Between the faces",e.between,r.between,l=>n({between:l,open:e.top})),i=K(
"Close until it rests",()=>n({open:-1})),d=e.hands.length?kt("Close it",e.hands,r.hand,l=>n({hand:l})):null;return{asks:"\
How thick is it?",first:i,begin:"close it until it rests",picture:o.node,controls:[It(c.row,d?.row),It(i,K("Open",()=>n(
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
1e-9;l+=1){let u=r(l*i/c),p=l%d===0,f=g=>[110+g*Math.sin(u),104-g*Math.cos(u)];if(e.append(ht(...f(p?72:79),...f(88),p?"\
tsg-mark tsg-long":"tsg-mark")),p&&l%(2*d)===0){let[g,h]=f(58);e.append(mt(g,h+4.5,String(Number((l*i).toFixed(2)))))}}e.
append(mt(110,170,"kN"))}return{node:t,set(c,i,d){String(c)!==o&&(o=String(c),a(c));let l=Math.min(i/c[0],1.03);n.setAttribute(
"transform",`translate(110 104) rotate(${-135+270*l})`),t.setAttribute("aria-label",d)}}}function en(t){return Dt(t,(e,n,r)=>{
let o=wo(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"0",role:"group","aria-label":"S\
ection and gauge"},a,s("div",{class:"tsg-gauge"},o.node)),d=$t("Push",{min:0,max:100,step:1,value:r.travel,onInput:f=>n(
{travel:f}),words:f=>f>=100?"at the shoulder":`${f} % of the way`}),l=[d.row],u=null;if(!e.readingsOnly){let f=kt("Part",
e.places,r.place,b=>n({place:b,travel:0}));u=kt("Driver presses on",e.drivers,r.driver,b=>n({driver:b,travel:0}));let g=kt(
"Seat",e.seats,r.seat,b=>n({seat:b})),h=$t("Pair",{min:0,max:100,step:1,value:r.grip,onInput:b=>n({grip:b}),words:b=>b===
0?"loosest of the fit":b===100?"tightest of the fit":`${b} % from loosest to tightest`}),y=$t("Warm the outer part",{min:e.
room,max:e.hottest,step:1,value:r.warmth,onInput:b=>n({warmth:b}),words:b=>`${b} °C`});l.unshift(It(f.row,u.row,g.row),
h.row,y.row)}let p=s("dl",{class:"ts-facts"});return e.readingsOnly||l.push(p),{asks:"What force does it take, and where\
 does it stop?",first:d.box,begin:"push the part",side:!e.readingsOnly,picture:i,controls:l,set(f,g){f.section!==c&&(c=f.
section,a.innerHTML=c),a.querySelector(".tsd-moving")?.setAttribute("transform",`translate(${-e.travelPx*g.travel/100} 0\
)`),o.set(f.gauge,f.force,f.words),Number(d.box.value)!==g.travel&&document.activeElement!==d.box&&d.set(g.travel),u&&(u.
row.hidden=!f.drives),f.facts&&p.replaceChildren(...Rt(f.facts))}}})}function sn({model:t,el:e}){let n=t.get("steps"),r=new Map(n),o=s("div",{class:"ts-scroll tsf-near",tabindex:"0",role:"r\
egion","aria-label":"The rules around the chosen step"}),a=s("p",{class:"ts-finding",role:"status"}),c=s("ul",{class:"ts\
-sentences"}),i=s("select",{class:"ts-box ts-before","aria-label":"Chosen step",onchange:()=>u(i.value)},...Et(n.map(([g,
h],y)=>[g,`${y+1}  ${h}`]))),d=et({model:t,el:e},{kind:"rig",lost(){i.disabled=!0}});d.show(d.asks("What comes before th\
is step, and what after it?",{first:i,begin:"choose a step, or press one in the picture",who:""}),d.alert,s("p",{class:"\
ts-hint"},t.get("finding")),s("div",{class:"ts-tools"},s("span",{class:"ts-pair"},"Step ",i)),a,o,s("details",{class:"ts\
-keys"},s("summary",{},"In words, with reasons"),c));let l=!1,u=g=>d.send({type:"choose",step:g}),p=g=>{let h=Ct(g,"[dat\
a-step]")?.dataset.step;h&&(l=!0,u(h))};o.addEventListener("click",p),o.addEventListener("keydown",g=>{g.key!=="Enter"&&
g.key!==" "||Ct(g,"[data-step]")&&(g.preventDefault(),p(g))});function f(){let g=t.get("near");a.textContent=g.words,i.value=
g.step,o.innerHTML=g.figure,o.querySelector("svg")?.setAttribute("role","group");let h=J(o,"[data-step]");for(let y of h)
y.setAttribute("role","button"),y.setAttribute("tabindex","0"),y.setAttribute("aria-label",r.get(String(y.dataset.step))??
"");c.replaceChildren(...Ut(g.sentences)),l&&(h[0]??i).focus({preventScroll:!0}),l=!1}return d.follow("change:near",f),f(),
d.close}function bo(){let t=R("svg",{viewBox:"0 0 300 260",class:"tsi-runout",role:"img"}),e=R("g",{}),n=R("g",{});return e.append(
R("circle",{cx:150,cy:164,r:76,class:"tsi-body"}),ht(150,164,150,98,"tsi-bold"),R("circle",{cx:150,cy:98,r:5,class:"tsg-\
hub"})),n.append(ht(150,86,150,40,"tsi-plunger"),R("circle",{cx:150,cy:26,r:20,class:"tsi-paper"})),t.append(e,ht(50,164,
250,164,"tsg-centre"),ht(150,250,150,80,"tsg-centre"),n,mt(8,252,"not to scale","start")),{node:t,set(r,o,a){e.setAttribute(
"transform",`rotate(${r} 150 164)`),n.setAttribute("transform",`rotate(${o} 150 88)`),t.setAttribute("aria-label",a)}}}function nn(t){
return Dt(t,(e,n,r)=>{let o=oe(),a=bo(),c=$t("Turn the shaft by hand",{min:0,max:360,step:5,value:r.angle,words:l=>`turn\
ed by ${l}°`,onInput:l=>n({angle:l})}),i=kt("Plunger",e.pressed,r.pressed,l=>n({pressed:l})),d=kt("Stand",e.tilts,r.tilt,
l=>n({tilt:l}));return{asks:"How far does the shaft run out?",first:c.box,begin:"turn the shaft",picture:s("div",{class:"\
tsg-beside"},a.node,s("div",{class:"tsg-gauge"},o.node,s("div",{},"One mark 0.01 mm, one turn 1 mm"))),controls:[It(i.row,
d.row),c.row],set(l,u){o.set(l.mm,l.words),a.set(l.state.angle,Number(l.state.tilt),`Shaft end on, turned by ${l.state.angle}\
°; the plunger stands ${l.state.tilt}° off square. Not to scale.`),c.set(u.angle)}}})}var rn=(t,e)=>(t+e)%7<2,an=(t,e)=>(t+e)%8<2||(t-e+8e4)%8<2,Ne=()=>!1,Ie=t=>(e,n)=>n%t===0,vo={"":Ne,dots:(t,e)=>t%6<2&&e%
6<2,rising:rn,cross:an,flat:(t,e)=>e%6<2,rings:(t,e)=>{let n=Math.hypot(t%12-6,e%12-6);return n>2.5&&n<4.5},plus:(t,e)=>t%
10===5&&e%10>2&&e%10<8||e%10===5&&t%10>2&&t%10<8,"lines-1":Ne,"lines-2":Ie(14),"lines-3":Ie(8),"lines-4":Ie(5),"lines-5":Ie(
3)};function yo(t){let e=n=>Number.parseInt(t.slice(n,n+2),16);return[e(1),e(3),e(5)]}var on=([t,e,n],r)=>(r<<24|n<<16|e<<
8|t)>>>0;function cn(t,[e,n],r,o,a){let c=n*4,i=new Uint32Array(c*e*4),d=new Map(r.map(([p,,f,g])=>{let h=f?on(yo(f),200):
0;return[p,{ground:h,hatch:vo[g]??Ne}]})),l={ground:0,hatch:Ne},u=on(o,190);for(let p=0;p<e;p+=1){let f=(e-1-p)*4;for(let g=0;g<
n;g+=1){let h=t[p*n+g];if(!h)continue;let{ground:y,hatch:b}=d.get(h&15)??l,E=a&&(h&16)!==0,B=a&&(h&32)!==0;for(let k=f;k<
f+4;k+=1)for(let $=g*4;$<(g+1)*4;$+=1){let A=b($,k)||E&&rn($,k)||B&&an($,k);i[k*c+$]=A?u:y}}}return i}var xo=600;function dn(t,e,n,r,o,a){let[c,i]=n;t.width=i*4,t.height=c*4;let d=new Uint8ClampedArray(cn(e,n,r,o,a).buffer),
l=new ImageData(d,t.width,t.height);t.getContext("2d")?.putImageData(l,0,0)}function $o(t,e){let n=s("canvas",{class:"ts\
-swatch","aria-hidden":"true"});return dn(n,new Uint8Array(15).fill(t[0]),[3,5],[t],e,!1),s("span",{class:"ts-key"},n,t[1])}
function un({model:t,el:e}){let n=t.get("face"),r=t.get("looks"),o=s("p",{class:"ts-finding",role:"status"}),a=s("span",
{class:"ts-clock"}),c=s("dl",{class:"ts-facts"}),i=s("p",{class:"ts-legend"}),d=s("canvas",{class:"ts-cells","aria-hidde\
n":"true"}),l=et({model:t,el:e},{kind:"rig",lost(){f.setDisabled(!0),pe(e)}}),u=null,p=P=>{u=ct("turn"),l.send({...P,turn:u})},
f=ye({face:n,label:`${n.name}, seen from the side that is coated; the finding and the list say what it shows`,onLay(P){f.
drawing.strokes(P),p({type:"lay",entries:P})},onRemove:P=>p({type:"remove",at:P}),onClear:()=>p({type:"clear"})}),g=K("C\
lose the face",()=>p({type:"shut",closed:!t.get("view").closed})),h=s("input",{type:"range",id:ct("flat"),min:"20",max:"\
160",step:"10",class:"ts-range"}),y=s("output",{for:h.id}),b=Mt({id:ct("slide"),onchange:()=>p({type:"slide",by:b.value})},
t.get("view").slides),E=null;h.addEventListener("input",()=>{y.textContent=`${h.value} µm`;let P={type:"flat",um:Number(
h.value)};u===null?p(P):E=P});let{box:B,unit:k}=f.drawing;f.drawing.land.classList.add("tsp-clear"),f.drawing.frame.prepend(
d);let $=(...P)=>s("span",{class:"ts-pair"},...P);l.show(l.asks("Does this film close the gap?",{first:g,begin:"press Cl\
ose the face"}),l.alert,o,Bt([f.drawing.frame,i],[s("div",{class:"ts-tools"},g,$(s("label",{for:b.id},"the other face is"),
b)),s("div",{class:"ts-tools"},a,K("1 minute passes",()=>p({type:"time",by:1})),K("5 minutes pass",()=>p({type:"time",by:5}))),
s("div",{class:"ts-tools"},$(s("label",{for:h.id},"faces out of flat by"),h,y)),f.tools,c,s("details",{class:"ts-keys"},
s("summary",{},"Passes laid"),f.empty,f.list)]));function A(){let P=getComputedStyle(e).color.match(/\d+(\.\d+)?/g);return P?
P.slice(0,3).map(Number):[0,0,0]}let L="",M="";function m(){let P=t.get("view"),x=r[P.closed?"closed":"film"],w=t.get("g\
rid"),D=w instanceof DataView?new Uint8Array(w.buffer,w.byteOffset,w.byteLength):new Uint8Array(w);dn(d,D,P.shape,x,A(),
!P.closed);let[W,U]=P.shape,[it,wt]=[P.corner[0]-P.pitch/2,P.corner[1]-P.pitch/2],H=(st,lt)=>`${(100*st/lt).toFixed(3)}%`;
d.style.left=H(it-B.left,B.width),d.style.width=H(U*P.pitch,B.width),d.style.top=H(B.high-wt-W*P.pitch,B.height),d.style.
height=H(W*P.pitch,B.height);let G=new Set(D.map(st=>P.closed?st:st&15)),q=x.filter(([st])=>G.has(st)),rt=`${q.map(([,st])=>st)}\
 ${A()}`;rt!==L&&(L=rt,i.replaceChildren(...q.map(st=>$o(st,A()))))}let S=R("g");f.drawing.over.append(S);let v=([P,x])=>[
P-B.left,B.high-x];function I([P,x]){let w=x.map(D=>{let[W,U]=v(D);return`M${W.toFixed(1)} ${U.toFixed(1)}h0.01`});return R(
"path",{d:w.join(""),class:"tsp-lump","stroke-width":2*P})}function N(P){let[x,w]=v(P[P.length-1]),D=`M${x-1.3*k} ${w-k}\
h${2.6*k}l${-1.3*k} ${2.2*k}Z`;return[R("path",{d:f.drawing.path(P),class:"tsp-way","stroke-width":k}),R("path",{d:D,class:"\
tsp-out"})]}function F(){let P=t.get("view");if(u!==null&&P.turn!==u)return;u=null;let x=JSON.stringify([P.entries,P.notes]);
if(x!==M&&f.show(P.entries,P.notes),M=x,f.drawing.strokes([]),m(),S.replaceChildren(...P.lumps.map(I),...P.leaks.flatMap(
N)),f.drawing.svg.classList.toggle("tsp-shut",P.closed),f.drawing.svg.classList.toggle("tsp-clean",P.closed||P.clean),o.
textContent=P.finding,b.value=P.slide,a.textContent=`minute ${P.minute}`,g.textContent=P.closed?"Lift the face off again":
"Close the face",E===null&&(h.value=String(P.flat),y.textContent=`${P.flat} µm`),c.replaceChildren(...Rt(P.facts)),E===
null)return;let w=E;E=null,p(w)}l.follow("change:view",F),l.follow("msg:custom",P=>{P.type==="trouble"&&(u=null,f.drawing.
strokes([]))});let Z=new MutationObserver(()=>setTimeout(m,xo));return Z.observe(document.body,{attributes:!0,attributeFilter:[
"data-jp-theme-light"]}),F(),()=>{l.close(),Z.disconnect()}}function pn(t){return Dt(t,(e,n,r)=>{let o=oe(),a=s("div",{class:"tsp-section"}),c="",i=s("div",{class:"tsg-beside",tabindex:"\
0",role:"group","aria-label":"Section and depth gauge"},a,s("div",{class:"tsg-gauge"},o.node,s("div",{},`Depth gauge on \
a bridge of ${e.bridge} mm, one mark 0.01 mm`))),d=e.places.map(([u,p])=>[u,s("button",{type:"button",class:"ts-button",
onclick:()=>n({place:u})},p)]),l=[s("p",{class:"ts-hint"},e.rule),It(s("span",{},"Set the gauge down at"),...d.map(([,u])=>u))];
return e.readingsOnly||(l.push(It(kt("Lip looks towards",e.sides,r.lip,u=>n({lip:u})).row,kt("Lip is",e.greases,r.grease,
u=>n({grease:u})).row,e.sleeves.length?kt("It went",e.sleeves,r.sleeve,u=>n({sleeve:u})).row:"")),l.push($t("Drive it to\
 a depth",{min:e.least,max:e.most,step:.05,value:r.depth,words:u=>`${u.toFixed(2)} mm${u<0?", proud":""}`,onInput:u=>n({
depth:u})}).row,$t("Lean",{min:0,max:e.mostLean,step:.02,value:r.lean,words:u=>u?`${u.toFixed(2)} mm across`:"square",onInput:u=>n(
{lean:u})}).row)),{asks:"Does the seal sit square and deep enough?",first:d[0][1],begin:"set the gauge down",side:!e.readingsOnly,
picture:i,controls:l,set(u,p){u.section!==c&&(c=u.section,a.innerHTML=c),a.querySelector(".tsl-moving")?.setAttribute("t\
ransform",u.placed),o.set(u.dial,u.words);for(let[f,g]of d)g.setAttribute("aria-pressed",String(f===p.place))}}})}function fn({model:t,el:e}){let n=t.get("about"),r=t.get("shown").state,o=oe(),a=n.readingsOnly?null:Ns(n),c=s("p",{class:"\
ts-finding",role:"status"}),i=s("div",{}),d=ne((L,M)=>E.send({type:"set",state:L,turn:M})),l=L=>{r={...r,...L},d.ask(r)},
u=(L,M)=>{let m=[...r.shims];m[L]=M,l({shims:m.filter(Boolean),turns:0})},p=(L,M,m)=>K(L,M,{"aria-pressed":m}),f=K("Turn\
 the shaft ten times",()=>l({turns:r.turns+10})),g=p("Pull the shaft away",()=>l({side:"away"}),"true"),h=p("Push it to \
the dial",()=>l({side:"towards"}),"false"),y=kt("Plunger",n.plungers,r.plunger,L=>l({plunger:L})),b=[s("div",{class:"ts-\
tools"},n.rolls?f:null,y.row,g,h)];if(!n.readingsOnly){let L=kt("Shim",n.shelf,r.shims[0],m=>u(0,m)),M=n.second?kt("and",
[["","no second shim"],...n.shelf],r.shims[1]??"",m=>u(1,m)):null;b.unshift(s("div",{class:"ts-tools"},L.row,M?.row)),b.
push($t("Warm the unit",{min:0,max:100,step:1,value:r.warmth,onInput:m=>l({warmth:m}),words:m=>m?`case ${Math.round(n.caseRise*
m/100)} K warmer`:"cold, as at the bench"}).row)}let E=et({model:t,el:e},{kind:"rig"}),B=s("div",{class:"tsg-wide",tabindex:"\
0",role:"group","aria-label":"Half section"});B.innerHTML=n.section;let k=[n.readingsOnly?E.asks("How far does the shaft\
 move?",{first:n.rolls?f:h,begin:n.rolls?"turn the shaft":"push the shaft",who:"Take your readings here; write them in t\
he form."}):E.asks("Which shim gives the setting that you want?",{first:b[0].querySelector("select"),begin:"choose a shi\
m"}),E.alert,n.readingsOnly&&B,s("div",{class:"tsg-beside"},!n.readingsOnly&&B,s("div",{class:"tsg-gauge"},o.node,s("div",
{},"Dial at the shaft's right end, one mark 0.01 mm")),n.readingsOnly&&s("div",{class:"tsg-side"},...b,c)),...n.readingsOnly?
[]:[...b,c],a&&s("div",{},s("p",{class:"ts-hint"},"Setting of the pair. Triangle: cold. Ring: now."),s("div",{class:"tsg\
-wide",tabindex:"0",role:"group","aria-label":"Axis of settings"},a.node)),i];E.show(...k.filter(Boolean));function $(){
let L=t.get("shown");d.waiting||(r=L.state),o.set(L.dial,L.dialWords),g.setAttribute("aria-pressed",String(L.state.side===
"away")),h.setAttribute("aria-pressed",String(L.state.side==="towards")),c.textContent=L.finding,a&&(a.set(L.cold,L.warm,
L.words.join(" ")),i.replaceChildren(...L.words.map(M=>s("p",{},M)))),d.answered(L.turn)}let A=()=>d.free();return E.follow(
"change:shown",$),E.follow("msg:custom",A),$(),E.close}function hn(t){return Dt(t,(e,n,r)=>{let o=s("div",{tabindex:"0",role:"group","aria-label":e.name}),a="",c=e.pickers.map(
({key:u,label:p,options:f})=>kt(p,f,r[u],g=>n({[u]:g}))),i=e.sliders.map(({key:u,label:p,min:f,max:g,step:h,unit:y,places:b})=>$t(
p,{min:f,max:g,step:h,value:r[u],words:E=>`${E.toFixed(b)} ${y}`,onInput:E=>n({[u]:E})})),d=c.map(({row:u})=>u),l=d.length>
2?d:d.length?[It(...d)]:[];return{asks:e.asks,first:[...c,...i][0].box,begin:c.length?"choose from the first list":"move\
 the first slider",picture:o,controls:[...l,...i.map(({row:u})=>u)],set(u){u.drawing!==a&&(a=u.drawing,o.innerHTML=a)}}})}function gn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding",role:"status"}),o=s("div",{class:"tsj-band"}),
a=s("div",{class:"tsj-section"}),c=s("dl",{class:"ts-facts"}),i=null,d=null,l=(M,m)=>{d={...d,[M]:m},i===null&&u()};function u(){
i=ct("choice"),$.send({type:"choose",chosen:d,turn:i}),d=null}let p=s("div",{class:"tsj-settings"}),f=(M,m,S)=>{let v=ct(
"set");return m.id=v,p.append(s("label",{for:v},M),s("span",{class:"tsj-slide"},m,S)),m},g=(M,m,S)=>f(m,s("select",{class:"\
ts-box",onchange:v=>l(M,v.target.value)},...Et(S.map(v=>typeof v=="string"?[v,v]:v)))),h=(M,m,S)=>f(m,s("input",{type:"r\
ange",oninput:v=>l(M,Number(v.target.value))}),S),y={group:g("group","Bolt of the unit",n.groups),thread:g("thread","Thr\
ead",n.threads),strength:g("strength","Strength class",n.classes),state:g("state","State of the thread",n.states),tool:g(
"tool","Tool",n.tools)},b=s("output",{class:"tsj-figure"}),E=h("torque_nm","Torque",b),B=s("output",{class:"tsj-figure"}),
k=h("engagement_mm","Thread that meets",B),$=et({model:t,el:e},{kind:"rig"});$.show($.asks("What gives way first?",{first:E,
begin:"set the torque"}),$.alert,r,o,s("div",{class:"tsj-bench"},p,a),c);let A=(M,m,S,v,I,N)=>{Ht(M,{min:m,max:S,step:v}),
i===null&&(M.value=String(I)),M.setAttribute("aria-valuetext",N)};function L(){let M=t.get("view");if(i!==null&&M.turn!==
i)return;i=null,d!==null&&u();let{chosen:m}=M;r.textContent=M.finding,o.innerHTML=M.band,a.innerHTML=M.section,c.replaceChildren(
...Rt(M.facts));for(let[S,v]of Object.entries(y))v.value=m[S];A(E,1,M.topTorque,.5,m.torque_nm,M.torqueText),b.textContent=
M.torqueText,A(k,M.lowEngagement,M.topEngagement,.5,m.engagement_mm,M.engagementText),B.textContent=M.engagementText}return $.
follow("change:view",L),L(),$.close}function mn({model:t,el:e}){let n=se(t),r=Kt(t.get("picture"),{onChoose:a=>n.show("part",[a])}),o=et({model:t,el:e},{kind:"\
rig"});return o.show(o.asks("Where does each part lie?",{first:r.choose,begin:"choose a part",who:""}),o.alert,s("p",{class:"\
ts-finding"},t.get("finding")),...n.any("part")?[Bt(r.nodes,[n.node])]:r.nodes),()=>{n.close(),o.close()}}var wn=([t,e],[n,r,o,a],c)=>t>=n-c&&t<=n+o+c&&e>=r-c&&e<=r+a+c;function bn(t,e,n){let r=n.find(c=>(e[c]??[]).some(i=>wn(
t,i,10)));if(r!==void 0)return r;let[o,a]=["",Number.POSITIVE_INFINITY];for(let[c,i]of Object.entries(e))for(let d of i){
let l=d[2]*d[3];l<a&&wn(t,d,0)&&([o,a]=[c,l])}return o}var vn=(t,e)=>t[(e===void 0?0:t.indexOf(e)+1)%t.length];function ie(t,e){return(t.find(([n])=>n===e)??t[0])[2]}function Ve(t,e){return t.find(([,,n])=>e!==void 0&&n.includes(e))?.[0]}
var Xe=(t,e)=>[...t.slice(e+1),...t.slice(0,e+1)];function yn(t,{stages:e,stage:n,step:r,labels:o,isOpen:a}){let c=ie(e,
n),i=c.indexOf(String(r));if(t==="ArrowLeft"||t==="ArrowRight"){let l=e.map(([f])=>f),u=t==="ArrowLeft"?-1:1,p=ie(e,l[(l.
indexOf(n)+u+l.length)%l.length]);return p.find(a)??p[0]}if(t==="ArrowDown")return c[Math.min(i+1,c.length-1)];if(t==="A\
rrowUp")return c[Math.max(i-1,0)];if(t==="Home")return c[0];if(t==="End")return c.at(-1);if(t.length!==1||t===" ")return;
let d=t.toLowerCase();return Xe(c,i).find(l=>o[l].toLowerCase().startsWith(d))}function kn({stages:t,stage:e,step:n,isOpen:r}){
let o=ie(t,e),a=t.flatMap(([,,i])=>i),c=a.indexOf(String(o.at(-1)));return Xe(o,o.indexOf(String(n))).find(r)??Xe(a,c).find(
r)}var So=6;function Je(t,e,n,r){let o=Math.min(n/e[2],r/e[3],1.2),a=R("svg",{viewBox:e.join(" "),width:String(Math.round(e[2]*
o)),height:String(Math.round(e[3]*o)),class:"ts-inhand","aria-hidden":"true"});return typeof t=="string"?a.innerHTML=t:a.
replaceChildren(...t),a}function xn(t,e){return J(t,"[data-part]").filter(r=>e.includes(String(r.dataset.part))).filter(
r=>!r.closest(".tsu-marks")).map(r=>{let o=R("g",{});o.append(...r.cloneNode(!0).childNodes);for(let a of J(o,"text, tit\
le, desc"))a.remove();for(let a of J(o,"[data-solid]"))a.removeAttribute("data-solid");return o})}function $n(t,{drawing:e,
held:n,begin:r=()=>{},drop:o}){let a=null,c=null,i=!1;t.classList.add("ts-carry");function d(y){let b=y?"addEventListene\
r":"removeEventListener";document[b]("pointermove",g),document[b]("pointerup",h),document[b]("pointercancel",u),document[b](
"keydown",p,!0),document[b]("selectstart",l)}function l(y){y.preventDefault()}function u(){c?.remove(),a=c=null,d(!1)}function p(y){
y.key!=="Escape"||!c||(y.preventDefault(),u())}let f=()=>e.viewBox.baseVal.width/e.getBoundingClientRect().width;function g(y){
if(!(!a||y.pointerId!==a.id)){if(!c){if(Math.hypot(y.clientX-a.x,y.clientY-a.y)<So)return;let b=n();if(!b)return;let E=b.
cloneNode(!0),{width:B,height:k}=b.viewBox.baseVal;E.setAttribute("width",String(B/f())),E.setAttribute("height",String(
k/f())),c=s("div",{class:"twoshaft ts-ghost","aria-hidden":"true"},E),document.body.append(c),r()}c.style.left=`${y.clientX}\
px`,c.style.top=`${y.clientY}px`}}function h(y){if(!a||y.pointerId!==a.id)return;let b=!!c;if(u(),!b)return;i=!0;let E=e.
parentElement.getBoundingClientRect(),{clientX:B,clientY:k}=y;if(B<E.left||B>E.right||k<E.top||k>E.bottom)return;let{left:$,
top:A}=e.getBoundingClientRect();o([(B-$)*f(),(k-A)*f()])}return t.addEventListener("pointerdown",y=>{i=!1,y.button===0&&
(a={x:y.clientX,y:y.clientY,id:y.pointerId},d(!0))}),t.addEventListener("click",y=>{i&&(i=!1,y.preventDefault(),y.stopPropagation())},
!0),u}var Lo=[-4,-4,104,104];function Sn({model:t,el:e}){let n=t.get("plan"),r=s("p",{class:"ts-finding"}),o=s("div",{class:"t\
s-happened ts-told",role:"status",tabindex:"-1","aria-label":"What happened"}),a=s("select",{class:"ts-box ts-stage-choi\
ce","aria-label":"Stage",onchange:()=>G()},...Et(n.stages.map(([O,z])=>[O,z]))),c=se(t),i=Kt(t.get("picture"),{name:"The\
 bench, in section",onChoose:O=>{O&&c.show("part",[O])}}),d=s("p",{class:"ts-hint ts-in-picture",role:"status"}),l=nt(n.
marked?"Next open step":"Next ready step",()=>D("next"));l.classList.add("ts-next");let u=s("div",{class:"ts-buildlist",
role:"toolbar","aria-orientation":"vertical","aria-label":"Steps of this stage",onkeydown:O=>U(O)}),p=s("details",{class:"\
ts-keys"},s("summary",{},"Keys"),"Up and down walk through the steps, left and right change the stage, Enter takes a ste\
p in hand; arrow keys choose its way round, Enter again puts it in its place. With a hand: carry the drawn part to its p\
lace in the section."),f=s("div",{class:"ts-hand",role:"group","aria-label":"Step in hand",onkeydown:O=>{O.key!=="Enter"||
!O.target.matches("input[type=radio], .ts-number-box")||(O.preventDefault(),t.get("hand").stands?wt():tt())}}),g=s("dl",
{class:"ts-facts"}),h=s("ul",{class:"ts-sentences"}),y=s("p",{class:"ts-prompt"},"Wrong so far"),b=s("select",{class:"ts\
-box ts-before","aria-label":"A step that stands"}),E=nt("Take out again",()=>{b.value&&v({type:"out",step:b.value},"han\
d")}),B=nt("Put the tools down",()=>v({type:"over"},"told"));B.classList.add("ts-over");let k=s("div",{}),$=s("p",{class:"\
ts-status"}),A=s("details",{ontoggle:()=>{A.open!==!!t.get("view").record&&v({type:"record",open:A.open})}},s("summary",
{},"Build record"),k),L=s("div",{class:"ts-build"},s("div",{class:"ts-build-left"},s("div",{class:"ts-tools"},a,l),u),s(
"div",{class:"ts-build-hand"},f),s("div",{class:"ts-build-unit"},...i.nodes,d,c.node),s("div",{class:"ts-tools ts-build-\
end"},s("span",{class:"ts-pair"},b,E),B)),M=et({model:t,el:e},{kind:"rig"});M.show(M.asks("Which step comes next, and wh\
at does it need?",{first:l,begin:"press the lit button",who:n.who}),M.alert,r,$,o,L,g,y,h,A,p);let m=0,S=null;function v(O,z=null){
m+=1,S=z&&{turn:m,focus:z},e.setAttribute("aria-busy","true"),M.send({...O,turn:m})}let I="",N=null,F="next",Z=O=>!t.get(
"view").done.includes(O),P=()=>J(u,"[data-step]"),x=O=>P().find(z=>z.dataset.step===O)?.focus(),w=()=>({stages:n.stages,
stage:a.value,step:N,isOpen:Z});function D(O,z){F=O,v(O==="list"?{type:"take",step:z}:{type:"next"},"hand")}function W(O){
a.value=Ve(n.stages,O)??a.value,N=O,G(),x(O)}function U(O){if(Ot(O))return;let z=yn(O.key,{...w(),labels:n.labels});z&&(O.
preventDefault(),W(z))}function it(){let O=kn(w());O?F==="next"?l.focus():W(O):B.focus()}function wt(){let O=t.get("view").
done.length>=Object.keys(n.labels).length;F==="next"&&!O?D("next"):it()}function H(O){let{done:z,ready:V}=t.get("view");
return z.includes(O)?{sign:"✓",word:"done"}:V.includes(O)?{sign:"▸",word:"ready"}:{sign:"○",word:n.marked?"open":"\
waits"}}function G(){let O=ie(n.stages,a.value);(N===null||!O.includes(N))&&(N=O.find(Z)??O[0]);let z=t.get("hand").step,
V=JSON.stringify([a.value,O.map(H),z]);if(V===I){for(let yt of P())yt.tabIndex=yt.dataset.step===N?0:-1;return}I=V;let at=P().
find(yt=>yt===document.activeElement)?.dataset.step;u.replaceChildren(...O.map(yt=>q(yt,z))),at&&x(at);let gt=P().find(yt=>yt.
dataset.step===(z??N));gt&&(u.scrollTop=gt.offsetTop-u.offsetTop-gt.offsetHeight)}function q(O,z){let{sign:V,word:at}=H(
O);return s("button",{type:"button",class:`ts-button ts-buildstep ts-buildstep-${at}`,"data-step":O,tabindex:O===N?"0":"\
-1","aria-current":O===z?"step":!1,"aria-label":`${n.labels[O]}: ${at}`,onclick:()=>{N=O,D("list",O)}},St(O),s("span",{},
jt(V),n.labels[O]))}function rt(O,z,V){let at=n.tray[O];return at?Je(xn(i.drawing,at.parts),at.box,z,V):null}let st=[],lt=new Map;
function St(O){let z=lt.get(O);if(z)return z;let V=rt(O,44,30),at=s("span",{class:"ts-thumb"},V??"");return V&&n.tray[O].
moves&&ft(at,()=>O,()=>V),lt.set(O,at),at}function ft(O,z,V){let at=$n(O,{drawing:i.drawing,held:V,begin:()=>{let gt=z();
t.get("hand").step!==gt&&(N=gt,v({type:"take",step:gt}))},drop:gt=>{let yt=z();for(let vt of Y.values())vt.flush();let Tt=bn(
gt,t.get("picture").boxes,n.tray[yt].parts);v({type:"put",step:yt,part:Tt},"after")}});st.push(at)}function Nt(){let O=J(
f,'[data-field^="way-"] input[type=radio]');return{inputs:O,now:O.find(z=>z.checked)?.value}}function T(){let{inputs:O,now:z}=Nt(),
V=vn(O.map(at=>at.value),z);O.find(at=>at.value===V)?.click(),C()}let _=s("div",{class:"ts-held-frame"}),Q=nt("Turn it",
T,"Turn it: the other way round"),ot=s("p",{class:"ts-hint"}),Lt=s("div",{class:"ts-held-box"},_,ot,Q),dt="";ft(_,()=>t.
get("hand").step,()=>_.querySelector("svg"));function C(){let{step:O,held:z,stands:V}=t.get("hand"),{inputs:at,now:gt}=Nt();
Q.hidden=!at.length;let[yt,Tt]=n.tray[O??""]?.tool??[];if(Lt.hidden=!O||V||!(n.tray[O]?.moves||Tt),ot.textContent=Tt&&yt||
"",!O||Lt.hidden)return;let vt=z.field&&gt||"",ue=`${O} ${vt}`;if(ue===dt)return;dt=ue;let Re=z.looks?.[vt]??(Tt?[Tt,Lo]:
null);_.replaceChildren((Re?Je(Re[0],Re[1],120,84):rt(O,120,84))??"")}let j="",Y=new Map;function ut(O){let z=Zt(O),V=s(
"p",{class:"ts-read",id:z.read,role:"status"}),at=0,gt=vt=>{v({type:"set",name:O.name,value:vt}),at=m},yt=Gt(O).make(O,z,
gt,()=>{}),Tt=Qt(O,z,null);return Tt.append(yt.element,V),Tt.dataset.field=O.name,{element:Tt,flush:()=>yt.flush?.(),show(vt={},ue){
if(ue<at)return;yt.show(vt);let ts=vt.read?`read as ${vt.read}`:"";V.textContent=vt.error?`▲ Look again: ${vt.error}`:
ts}}}let xt=O=>s("dl",{class:"ts-facts"},...Rt(O));function pt(){let O=t.get("hand"),z=JSON.stringify(O);if(z===j)return;
if(j=z,L.classList.toggle("ts-build-face",(O.fields??[]).some(vt=>vt.kind==="film")),f.dataset.stands=String(!!O.stands),
Y=new Map((O.fields??[]).map(vt=>[vt.name,ut(vt)])),!O.step){f.replaceChildren(s("p",{class:"ts-hint"},"No step in hand.\
 Choose one from the list, or press the button above it."));return}let V=nt(`Do it: ${O.label}`,tt);V.classList.add("ts-\
do");let at=O.stands?[nt("Go on",wt),nt("Take it out again",()=>v({type:"out",step:O.step},"hand"))]:[V],gt=[...Y.values()].
map(vt=>vt.element),yt=vt=>String(vt.dataset.field).startsWith("way-");f.replaceChildren(s("p",{class:"ts-prompt ts-hand\
-name",tabindex:"-1"},O.label),s("div",{class:"ts-hand-row"},Lt,s("div",{},...O.plain.map(vt=>s("p",{class:"ts-hint"},vt)),
...O.cautions.map(vt=>s("p",{class:"ts-caution"},s("b",{},"Take care: "),vt)),...gt.filter(yt),...O.card.length&&!gt.some(
yt)?[xt(O.card)]:[])),...O.read.length?[s("p",{class:"ts-prompt"},"Read at the bench"),xt(O.read)]:[],...O.card.length&&
gt.some(yt)?[xt(O.card)]:[],...gt.filter(vt=>!yt(vt)),s("div",{class:"ts-tools"},...at));let Tt=Ve(n.stages,O.step);Tt&&
([a.value,N]=[Tt,O.step])}function tt(){for(let O of Y.values())O.flush();v({type:"do"},"after")}function X(){let O=t.get(
"view").asked_back,z=J(f,"[data-field]").find(gt=>gt.dataset.field===O),V=z&&J(z,"input:not(:disabled), select, button"),
at=J(f,".ts-field input:not(:disabled), .ts-field select, .ts-field button, .ts-do, .ts-tools button");return V?.[0]??at[0]}
function bt(){let O=t.get("view"),z=O.told;r.textContent=O.finding,$.textContent=O.status,$.hidden=!O.status,o.textContent!==
z.join("")&&o.replaceChildren(...z.map(at=>s("p",{},at))),pt(),G();for(let[at,gt]of Y)gt.show(O.states[at],O.turn);if(C(),
Vt(O),g.replaceChildren(...Rt(O.facts)),h.replaceChildren(...Ut(O.faults.map(([,at])=>at))),y.hidden=h.hidden=!O.faults.
length,zt(O.done),k.innerHTML=O.record,A.open=!!O.record,e.setAttribute("aria-busy",String(O.turn<m)),!S||O.turn<S.turn)
return;let{focus:V}=S;S=null,V==="told"?o.focus():V==="after"&&!t.get("hand").step?it():(X()??l).focus()}let Pt="",_t="";
function Vt(O){let z=JSON.stringify(O.build);z!==Pt&&(Pt=z,i.show(O.build),d.textContent=O.build.words);let{step:V,operations:at}=t.
get("hand"),gt=O.build.tool,yt=`${V} ${gt??""}`;if(V===void 0||yt===_t)return;_t=yt,c.show("operation",at);let[Tt]=n.tray[V]?.
parts??[];gt?i.moveTo({x:gt[0],y:gt[1]}):Tt&&i.look(Tt)}function zt(O){if(b.disabled=E.disabled=!O.length,b.dataset.done===
O.join(" "))return;b.dataset.done=O.join(" ");let z=[...O].reverse();b.replaceChildren(...Et(z.map(V=>[V,n.labels[V]])))}
return M.follow("change:view",bt),bt(),()=>{for(let O of st)O();c.close(),M.close()}}function Co(t){let e=R("svg",{viewBox:"0 0 720 250",class:"tsi-wrench",role:"img"}),n=440/t.length,[r,o]=[210,128],a=ht(
r,o,r,o,"tsi-adapter"),c=R("circle",{cx:0,cy:0,r:13,class:"tsi-paper"}),i=ht(r,o+74,r,o+74,"tsi-arm"),d=mt(r,o+94,"");return e.
append(ht(r,o,r+440,o,"tsi-lever"),a,c,R("circle",{cx:r,cy:o,r:7,class:"tsg-hub"}),mt(r+440,o-20,"hand, middle of the gr\
ip","end"),mt(r+20,o-20,"square drive","start"),ht(r+440,o+10,r+440,o+84,"tsg-centre"),i,d,mt(8,242,"lengths to scale","\
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
f=new Map,g=new Map,h=!1,y="",b="",E="",B=!1,k=null,$=()=>o.setAttribute("aria-busy",String(A())),A=()=>h||!!E||Object.keys(
t.get("busy")).length>0,L=(T,_={})=>{A()||n.isLost()||(T!=="look"&&(E=T,r.textContent="",n.alert.textContent="",v(),$()),
t.send({type:T,..._}))},M=()=>J(e,"[data-key]"),m=T=>M().some(_=>_.dataset.key===T);function S(){let T=M().find(_=>_.dataset.
key===y);return T&&o.contains(T)?T.closest("form, section"):null}function v(){let T=S();T?T.append(c,a):(i.after(c),a.remove());
let[_,Q]=[r.textContent,n.alert.textContent];a.replaceChildren(...Wt([_&&s("p",{class:"ts-told"},_),Q&&s("p",{class:"ts-\
trouble"},Q)]));for(let ot of[r,n.alert])ot.classList.toggle("ts-hidden",!!T);return T}function I(){let T=v(),_=[n.alert,
r].find(ot=>ot.textContent);(T?a.childElementCount?a:null:_)?.scrollIntoView({block:"nearest"})}async function N(){for(let[
T,_]of g){let[Q]=_.files??[];try{Q&&await En(t,T,Q)}catch{return _.value="",Q.name}}return""}function F(T){r.textContent=
"",n.alert.textContent=T,I()}async function Z(T,_,Q=""){if(n.isLost())return;if(A()){B||(k=()=>m(_)&&Z(T,_,Q));return}y=
_,b="",B=!0,h=!0;let ot=await N();if(h=!1,ot||A()||n.isLost()){B=!1,ot?F(`${ot} has changed or gone since it was chosen:\
 choose it again.`):n.isLost()||(k=()=>m(_)&&Z(T,_,Q));return}let Lt=[...p].map(([dt,C])=>[dt,[...C]]);L("do",{page:t.get(
"page"),act:T,of:Q,typed:Object.fromEntries(u),ticked:Object.fromEntries(Lt)})}function P(T){let{name:_,of:Q}=T,ot=ct("f\
ield"),Lt=T.hint?s("span",{class:"ts-hint",id:`${ot}-hint`},T.hint):null,dt={id:ot,"data-key":`field:${_}`,"aria-describ\
edby":Lt?.id},C=s("label",{for:ot},T.label);if(!u.has(_)&&Q!=="file"&&u.set(_,Q==="tick"?T.value==="yes":T.value),Q==="f\
ile"){let ut=g.get(_)??s("input",{type:"file",class:"ts-file"});for(let[xt,pt]of Object.entries(dt))pt&&ut.setAttribute(
xt,pt);return g.set(_,ut),s("div",{class:"ts-desk-field"},C,ut,Lt)}if(Q==="tick"){let Y=s("input",{type:"checkbox",...dt});
Y.checked=u.get(_)===!0,Y.addEventListener("change",()=>u.set(_,Y.checked));let ut=s("label",{class:"ts-option",for:ot},
Y,T.label);return s("div",{class:"ts-desk-field"},ut,Lt)}let j=Q==="choice"?Mt(dt,T.options):Q==="long"?s("textarea",{class:"\
ts-box",rows:"3",maxlength:"2000",...dt}):s("input",{class:"ts-box",autocomplete:"off",maxlength:"400",...dt});return j.
value=String(u.get(_)??""),Q==="choice"&&!T.options.some(([Y])=>Y===u.get(_))&&(j.value=T.options[0]?.[0]??"",u.set(_,j.
value)),j.addEventListener("input",()=>u.set(_,j.value)),s("div",{class:"ts-desk-field"},C,j,Lt)}function x(T){let _=ct(
"form"),Q=s("div",{class:"ts-doing"}),ot=()=>{Q.replaceChildren(...T.acts.map(C=>K(C.label,()=>C.sure?Lt(C):Z(C.id,`act:${C.
id}`),{class:C.first?"ts-button ts-first":"ts-button","data-key":`act:${C.id}`})))},Lt=C=>{b=C.id;let j=ct("sure"),Y=s("\
div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":j,"data-key":`sure:${C.id}`},s("p",{id:j},C.sure),s(
"div",{class:"ts-doing"},K(`Yes: ${C.label}`,()=>Z(C.id,`act:${C.id}`),{"data-key":`act:${C.id}`}),K("No, leave it",()=>{
b="",ot(),J(Q,`[data-key="act:${C.id}"]`)[0]?.focus()},{"data-key":`no:${C.id}`})));Q.replaceChildren(Y),Y.focus()},dt=T.
acts.find(C=>C.sure&&C.id===b);return dt?Lt(dt):ot(),s("form",{class:"ts-desk-form","aria-labelledby":T.title?_:null,onsubmit:C=>C.
preventDefault()},T.title?s("h3",{id:_},T.title):null,T.hint?s("p",{class:"ts-hint"},T.hint):null,T.fields.length?s("div",
{class:"ts-desk-fields"},...T.fields.map(P)):null,T.acts.length?Q:null)}function w(T,_){if(typeof T=="string")return T;let Q=T.
act?K(T.text,()=>Z(T.act,_,T.of),{class:"ts-cell","aria-label":T.label||null,"data-key":_}):T.text;return s("span",{},T.
shape?jt(T.shape):null,Q)}function D(T){let _=ct("table"),Q=s("h3",{id:_},T.title);if(!T.rows.length)return s("section",
{},Q,s("p",{},T.empty));let ot=p.get(T.id)??new Set,Lt=new Set(T.rows.map(({key:tt})=>tt));for(let tt of ot)Lt.has(tt)||
ot.delete(tt);p.set(T.id,ot);let dt=s("tr",{}),C=s("tbody",{}),j=T.pick?s("input",{type:"checkbox","aria-label":"all","d\
ata-key":`all:${T.id}`}):null,Y=()=>{j&&(j.checked=ot.size===T.rows.length,j.indeterminate=ot.size>0&&!j.checked)},ut=()=>{
let tt=f.get(T.id),X=tt?Cn(T.rows,tt.column,tt.down):T.rows;C.replaceChildren(...X.map(pt)),dt.replaceChildren(...j?[s("\
th",{class:"ts-tick"},j)]:[],...T.columns.map(xt)),Y()},xt=(tt,X)=>{let bt=f.get(T.id),Pt=bt?.column===X,_t=Pt?bt.down?"\
descending":"ascending":null,Vt=()=>{f.set(T.id,{column:X,down:Pt&&!bt.down}),ut(),J(dt,`[data-key="${zt}"]`)[0]?.focus()};
if(!tt)return s("td");let zt=`sort:${T.id}:${X}`;return s("th",{scope:"col","aria-sort":_t,class:T.numbers.includes(X)?"\
ts-figure":null},K(tt,Vt,{class:"ts-sort","data-key":zt}),Pt?jt(bt.down?"▼":"▲"):null)},pt=tt=>{let X=T.pick?s("inpu\
t",{type:"checkbox","aria-label":tt.cells.slice(0,3).map(Be).join(" "),"data-key":`row:${T.id}:${tt.key}`}):null;return X&&
(X.checked=ot.has(tt.key),X.addEventListener("change",()=>{X.checked?ot.add(tt.key):ot.delete(tt.key),Y()})),s("tr",{},X?
s("td",{class:"ts-tick"},X):null,...tt.cells.map((bt,Pt)=>{let _t=!Pt&&!!Be(bt);return s(_t?"th":"td",{scope:_t?"row":null,
class:T.numbers.includes(Pt)?"ts-figure":null},w(bt,`cell:${T.id}:${tt.key}:${Pt}`))}))};return j?.addEventListener("cha\
nge",()=>{if(ot.clear(),j.checked)for(let{key:tt}of T.rows)ot.add(tt);for(let tt of J(C,"td.ts-tick input"))tt.checked=j.
checked}),ut(),s("section",{},s("div",{class:"ts-desk-caption"},Q,K("Save as CSV",()=>t.send({type:"export",table:T.id}),
{"aria-label":`Save as CSV: ${T.title}`,"data-key":`export:${T.id}`})),s("div",{class:"ts-desk-scroll",role:"region",tabindex:0,
"aria-labelledby":_},s("table",{class:"ts-table","aria-labelledby":_},s("thead",{},dt),C)))}function W(T){if(T.kind==="t\
able")return D(T);if(T.kind==="form")return x(T);if(T.kind==="link"){let _=T.how==="edit"?"lab/tree":T.how,ot={class:"ts\
-link",href:_?ce(_,T.path):T.path,target:"_blank"};return s("p",{},s("a",{...ot,"data-key":`link:${T.path}`},T.text))}return T.
how==="head"?s("h3",{},T.text):s("p",{class:T.how==="hint"?"ts-hint":null},T.text)}function U(T){if(!n.isLost()){if(A()){
k=()=>U(T);return}y="",L("page",{name:T})}}function it(){let T=t.get("page");i.replaceChildren(...t.get("pages").map(([_,
Q])=>K(Q,()=>U(_),{class:"ts-button","aria-current":_===T?"page":null,"data-key":`page:${_}`})))}let wt=t.get("cleared"),
H=t.get("page");function G(){let T=M().find(dt=>dt===document.activeElement)?.dataset.key,_=o.contains(document.activeElement),
Q=J(o,".ts-desk-scroll").map(dt=>dt.scrollTop);E="",(t.get("page")!==H||t.get("cleared")!==wt)&&(b="",u=new Map,p=new Map,
g=new Map,{page:H,cleared:wt}={page:t.get("page"),cleared:t.get("cleared")}),r.textContent=t.get("said"),n.alert.textContent=
t.get("trouble"),it();let ot=new Map(t.get("pages")),Lt=s("h2",{tabindex:-1},ot.get(H));if(o.replaceChildren(Lt,...t.get(
"parts").map(W)),J(o,".ts-desk-scroll").forEach((dt,C)=>{dt.scrollTop=Q[C]??0}),v(),T||_){let dt=M().find(C=>C.dataset.key===
T);(dt??Lt).focus({preventScroll:!!dt})}B&&!Object.keys(t.get("busy")).length&&(B=!1,I()),$(),q()}function q(){if(A()||!k)
return;let T=k;k=null,T()}let rt;function st(){let T=t.get("busy");if($(),clearTimeout(rt),!Object.keys(T).length){c.replaceChildren();
return}let{doing:_,done:Q,of:ot}=T,Lt=ot?`${_}: ${Q} of ${ot}`:`${_} …`,dt=()=>{c.replaceChildren(s("progress",ot?{max:ot,
value:Q,"aria-label":_}:{"aria-label":_}),s("span",{role:"status"},Lt))};c.childElementCount?dt():rt=window.setTimeout(dt,
Ao)}n.follow("change:turn",()=>setTimeout(G,0)),n.follow("change:busy",st),n.follow("change:by",()=>{l.value=t.get("by")}),
n.follow("msg:custom",T=>{if(T.type==="trouble"&&(E="",B=!1,$(),I()),T.type!=="save")return;let _=URL.createObjectURL(new Blob(
[`\uFEFF${T.text}`],{type:"text/csv"}));s("a",{href:_,download:T.name}).click(),setTimeout(()=>URL.revokeObjectURL(_),1e3)}),
G(),st();let lt=!0,St=new IntersectionObserver(([T])=>{lt=T.isIntersecting});St.observe(e);let ft=0,Nt=setInterval(()=>{
let T=t.get("every");ft+=1,T&&ft>=T&&lt&&!document.hidden&&(ft=0,L("look"))},1e3);return()=>{clearInterval(Nt),clearTimeout(
rt),St.disconnect(),n.close()}}function Ze(t,e=new Date){let n=new Date(t);if(Number.isNaN(n.getTime()))return"";let r=c=>String(c).padStart(2,"0"),o=`${r(
n.getHours())}:${r(n.getMinutes())}`,a=`${n.getFullYear()}-${r(n.getMonth()+1)}-${r(n.getDate())}`;return e.toDateString()===
n.toDateString()?o:`${a} ${o}`}var Mo="twoshaft-unsent:";function Mn(t,e){let n=Mo+e,r=()=>{if(!t||!e)return{};try{let a=JSON.parse(t.getItem(n)??"{}");
return a&&typeof a=="object"?a:{}}catch{return{}}},o=a=>{if(!(!t||!e))try{Object.keys(a).length?t.setItem(n,JSON.stringify(
a)):t.removeItem(n)}catch{}};return{get:a=>Object.hasOwn(r(),a)?r()[a]:void 0,put:(a,c,i,d=new Date)=>o({...r(),[a]:{value:c,
base:i,at:d.toISOString()}}),drop(a){let{[a]:c,...i}=r();c&&o(i)}}}function On(t,e){return JSON.stringify(t.value)===JSON.
stringify(e.value??null)?!1:(e.revision??0)===t.base?!0:!(Date.parse(e.saved??"")>Date.parse(t.at))}var Xt=null,Oo="input, button, select, textarea, summary, a, [tabindex]",Tn=t=>[...t.querySelectorAll(Oo)];function In(t,e){
let n=({target:a})=>{a instanceof HTMLElement&&(t.contains(a)?Xt={form:e,at:Tn(t).indexOf(a),from:null}:Xt?.form===e&&t.
isConnected&&(Xt=null))},r=({target:a})=>{Xt?.form===e&&a instanceof HTMLInputElement&&(Xt.from=a.selectionStart)};return document.
addEventListener("focusin",n),document.addEventListener("pointerdown",n),t.addEventListener("input",r),requestAnimationFrame(
()=>{if(Xt?.form!==e||document.activeElement?.closest(".twoshaft"))return;let{at:a,from:c}=Xt,i=Tn(t)[a];i?.focus({preventScroll:!0}),
c!==null&&i instanceof HTMLInputElement&&i.setSelectionRange(c,c)}),()=>{document.removeEventListener("focusin",n),document.
removeEventListener("pointerdown",n)}}var To=["print","colour"];function le(t){for(let e of To){let n=t?.[e];n!==void 0&&(n?document.documentElement.setAttribute(
`data-ts-${e}`,n):document.documentElement.removeAttribute(`data-ts-${e}`))}}function Nn(){le({print:"",colour:""})}function Bn(t,e,n){let r=()=>t.get("bench")??{},o=s("details",{class:"ts-bench"}),a=r().rows;if(!a)return{element:null,show(){},
hear(){},lost(){}};let c=s("span",{}),i=s("p",{class:"ts-status",role:"status"}),d=K("Use these figures",()=>f("yes")),l=K(
"Go back to the drawn figures",()=>f("no")),u=!1,p=a.map(h=>{let y=ct("bench"),b=h.options.length?s("select",{class:"ts-\
box",id:y,"aria-describedby":`${y}-read`},s("option",{value:""},"choose"),...Et(h.options)):s("input",{type:"text",class:"\
ts-box ts-number-box",id:y,autocomplete:"off",spellcheck:"false",maxlength:"80","aria-describedby":`${y}-hint ${y}-read`}),
E=s("span",{class:"ts-hint",id:`${y}-hint`},h.hint),B=s("p",{class:"ts-read",id:`${y}-read`}),k=h.text,$=()=>{b.value.trim()!==
k.trim()&&(k=b.value,e({type:"bench",name:h.name,value:b.value}))};return b.addEventListener(h.options.length?"change":"\
blur",$),b.addEventListener("keydown",A=>{A.key==="Enter"&&(A.preventDefault(),$())}),{name:h.name,flush:$,input:b,element:s(
"div",{class:"ts-bench-row"},s("label",{for:y},h.prompt),s("div",{class:"ts-line-of"},b,E),B),show(A){if(!A)return;(document.
activeElement!==b||b.value===k)&&(b.value=A.text,k=A.text),b.setAttribute("aria-invalid",String(!!A.error)),B.classList.
toggle("ts-error",!!A.error);let L=A.error?[jt("▲")," "]:[],M=A.read&&!A.options.length&&`read as ${A.read}`,m=A.error||
[M,A.origin].filter(Boolean).join(", ");B.replaceChildren(...L,m)}}}),f=h=>{for(let y of p)y.flush();u=!0,e({type:"bench",
name:"in-use",value:h})};o.append(s("summary",{},c),s("p",{},"Give what you read on the real unit, and the limits from t\
he maker's manual. They are used in place of the drawn figures in this task, all of them or none. Your answers are marke\
d on them by the same rules."),s("div",{class:"ts-bench-rows"},...p.map(h=>h.element)),i,s("div",{class:"ts-tools"},d,l));
function g(){let h=r(),y=new Map(h.rows?.map(k=>[k.name,k]));for(let k of p)k.show(y.get(k.name));c.textContent=h.used?"\
✓ This task uses figures from the bench":"Use readings from the bench",l.hidden=!h.wanted,d.hidden=h.used&&!h.stale;let b=h.
wanted&&!h.used?"▲ ":h.used?"● ":"○ ",E=h.used?"in use":h.wanted?`not used; the drawn figures stand. ${h.refused}`:
"not used; the drawn figures stand",B=h.stale?` The tables and choices of this task are still the ones from before. ${h.
used?"Press the button":"Open the notebook again"} to have them drawn anew, then answer.`:"";i.textContent=`${b}${E}${B}`,
h.wanted&&!h.used&&(o.open=!0)}return{element:o,show:g,hear(h){h.type!=="bench-saved"||h.name!=="in-use"||!u||(u=!1,r().
stale&&n())},lost(){for(let h of[d,l,...p.map(y=>y.input)])h.disabled=!0}}}var Io=5e3,No=2e3,Bo={saved:"●",unread:"▲",bad:"▲",wait:"◌",none:"○"},Qe="kept in this browser until it can be\
 saved";function Do(t,e,n,r){let o=Gt(t),a=Zt(t),c=s("p",{class:"ts-read",id:a.read}),i=s("p",{class:"ts-status",id:a.status,
role:"status"}),d=0,l=null,u={},p=()=>{clearTimeout(l??void 0),l=null},f=k=>{n.put(t.name,k,u.revision??0),g(k)},g=k=>{d+=
1,b("wait",r()?Qe:"saving"),p(),l=window.setTimeout(()=>b("wait",Qe),Io),e({type:"save",name:t.name,value:k,turn:d})},h=o.
make(t,a,f,(k,$)=>{k?(n.put(t.name,$,u.revision??0),b("wait","not saved yet: press Enter or leave the box")):l===null&&(n.
drop(t.name),E(u))}),y=Qt(t,a,a.status);o.status==="above"?y.append(i,h.element,c):y.append(h.element,c,i);function b(k,$){
i.className=`ts-status ts-status-${k}`,i.dataset.text!==$&&(i.dataset.text=$,i.replaceChildren(jt(Bo[k]),` ${$}`))}function E(k,$=!1){
if(u=k??{},h.show(u),c.replaceChildren(u.read?`read as ${u.read}`:""),!$)if(u.error){let{error:A,saved:L="",note:M}=u;b(
"unread",`Look again: ${A} Kept as typed, ${Ze(L)}${M?`; ${M}`:""}.`)}else u.saved&&!u.blank?b("saved",`saved ${Ze(u.saved)}${u.
note?`; ${u.note}`:""}`):b("none",o.blank??"not answered yet")}let B=()=>i.classList.contains("ts-status-bad");return{name:t.
name,element:y,show(k){l===null&&E(k,B())},saved(k){k.turn===d&&(h.pending?.()||n.drop(t.name),p(),E(k.state))},refused(k){
k.turn===d&&(p(),h.refused(),b("bad",`not saved: ${k.reason}`))},off(){clearTimeout(l??void 0),(l!==null||h.pending?.())&&
b("wait",Qe)},catchUp(){let k=n.get(t.name);k&&(On(k,u)?(h.show({...u,value:k.value,error:""}),g(k.value)):n.drop(t.name))},
flush:()=>h.flush?.(),summary:()=>({answered:!!u.saved&&!u.blank&&!u.error&&!u.short,unread:!!u.error,trouble:B(),waiting:l!==
null})}}function Dn({model:t,el:e}){let n=t.get("fields"),r=t.get("sheet"),o=Mn(window.localStorage,r),a=!1,c=()=>a||p.isLost(),
i=n.map($=>Do($,g,o,c)),d=new Map(i.map($=>[$.name,$])),l=s("p",{class:"ts-who"}),u=s("p",{class:"ts-total"});le(t.get("\
look"));let p=et({model:t,el:e},{kind:"form",lost(){for(let $ of i)$.off();f.lost(),h()},line($){a=$;for(let A of i)$?A.
off():A.catchUp();h()}}),f=Bn(t,p.send,()=>{e.dispatchEvent(new CustomEvent("twoshaft-redraw",{bubbles:!0}))});p.show(s(
"div",{class:"ts-top"},l,u),p.alert,f.element,...i.map($=>$.element)),e.dataset.task=t.get("task_id");function g($){p.send(
$),h()}function h(){let $=i.map(N=>N.summary()),A=$.filter(N=>N.answered).length,L=$.filter(N=>N.trouble).length,M=$.some(
N=>N.waiting),m=$.filter(N=>N.unread).length,S=L?`${L} not saved`:M?c()?"the rest kept in this browser":"saving":A&&!m?"\
all saved":"",v=[`${A} of ${i.length} answered`,m?`${m} cannot be read`:"",S];u.textContent=v.filter(Boolean).join(", ");
let I={task:t.get("task_id"),answered:A,asked:i.length,unread:m};e.dispatchEvent(new CustomEvent("twoshaft-progress",{bubbles:!0,
detail:I}))}function y(){l.textContent=t.get("header");let $=t.get("states");for(let A of i)A.show($[A.name]);h()}let b=0,
E=()=>{if(document.visibilityState==="hidden")for(let $ of i)$.flush();document.visibilityState!=="visible"||Date.now()-
b<No||(b=Date.now(),p.send({type:"look"}))},B=r?new BroadcastChannel(`twoshaft-saved:${r}`):null;B?.addEventListener("me\
ssage",({data:$})=>{$===t.get("task_id")&&p.send({type:"look"})}),document.addEventListener("visibilitychange",E),window.
addEventListener("focus",E),e.addEventListener("focusin",$=>{$.relatedTarget instanceof Node&&e.contains($.relatedTarget)||
E()}),p.follow("change:states change:header",y),p.follow("msg:custom",$=>{$.type==="saved"&&(d.get($.name)?.saved($),B?.
postMessage(t.get("task_id"))),$.type==="refused"&&d.get($.name)?.refused($),h()}),p.follow("msg:custom",f.hear),p.follow(
"change:bench",f.show),y();for(let $ of i)$.catchUp();h(),f.show(),p.alert.textContent=t.get("notice");let k=In(e,`${r}/${t.
get("task_id")}`);return()=>{k(),B?.close(),p.close(),document.removeEventListener("visibilitychange",E),window.removeEventListener(
"focus",E)}}function De(t,e,n){let r=`twoshaft-signed-in:${n}`,o=`twoshaft-signed-out:${n}`;return{keep({id:a,ticket:c},i=Date.now()){
t.setItem(r,JSON.stringify({id:a,ticket:c,at:i}))},drop(a=Date.now()){t.removeItem(r),e.setItem(o,String(a))},get(){try{
let a=JSON.parse(t.getItem(r)??"null");return!a||!(a.at>Number(e.getItem(o)??0))?null:{id:String(a.id),ticket:String(a.ticket)}}catch{
return null}}}}var Po={right:"●",other:"◆",unread:"▲"};function Ro(t){let e=Zt(t),n=s("p",{class:"ts-told",id:e.status,role:"stat\
us"}),r=null,o=Gt(t).make(t,e,i=>{r=i,o.show({value:r}),c(void 0)},(i,d)=>{i&&(r=d)}),a=Qt(t,e,e.status);a.append(o.element,
n);function c(i){n.className=i?`ts-told ts-told-${i.how}`:"ts-told";let d=i?[jt(Po[i.how]),s("b",{},i.said),` ${i.why}`]:
[];n.replaceChildren(...d)}return{name:t.name,element:a,value(){return o.flush?.(),r},show(i,d){i!==void 0&&(r=i,o.show(
{value:r,saved:"given"})),c(d)},still(i){o.setDisabled(i),a.classList.toggle("ts-given",i)}}}function Pn({model:t,el:e}){
let n=et({model:t,el:e},{kind:"form"});e.classList.add("ts-question");let r=s("p",{class:"ts-title",role:"heading","aria\
-level":"3"}),o=s("p",{class:"ts-lead"}),a=s("dl",{class:"ts-facts"}),c=s("div",{class:"ts-asked"}),i=K(t.get("give"),()=>{
let y=Object.fromEntries(u.map(b=>[b.name,b.value()]));n.send({type:"give",values:y})});i.classList.add("ts-first");let d=K(
"",()=>n.send({type:"fresh"})),l=t.get("all")?K(t.get("all"),()=>n.send({type:"all"}),{class:"ts-button ts-teacher"}):null;
n.show(n.alert,r,o,a,c,s("p",{class:"ts-acts"},i,d,l));let u=[],p=()=>{let y=t.get("values"),b=t.get("told");for(let $ of u)
$.show(y[$.name],b[$.name]),$.still(b[$.name]!==void 0&&b[$.name].how!=="unread");let E=u.some(({name:$})=>!b[$]||b[$].how===
"unread"),B=document.activeElement===i;if(i.hidden=!E,d.textContent=t.get("fresh"),d.hidden=E||!t.get("fresh"),n.alert.textContent=
t.get("notice"),!B||E)return;let k=J(e,".ts-told")[0];k.tabIndex=-1,k.focus({preventScroll:!0})},f=()=>{(J(c,"input, sel\
ect, [tabindex]")[0]??(d.hidden?i:d)).focus({preventScroll:!0})},g=()=>{u=t.get("fields").map(Ro),c.replaceChildren(...u.
map(({element:y})=>y)),r.textContent=t.get("title"),r.hidden=!r.textContent,o.textContent=t.get("lead"),o.hidden=!o.textContent,
a.replaceChildren(...Rt(t.get("facts"))),a.hidden=!a.childElementCount,p()};n.follow("change:turn",()=>{let y=e.contains(
document.activeElement);g(),y&&f()}),n.follow("change:told change:values change:notice change:fresh",p),g();let h=t.get(
"place");if(h){let y=De(sessionStorage,localStorage,h).get();t.send({type:"who",id:y?.id??"",ticket:y?.ticket??""})}return()=>n.
close()}var Rn="twoshaft-mine";var jn="This is done as soon as the connection is back.",jo={"to get":"○",open:"◐","handed in":"●","changed since":"\
◑",feedback:"✓"},Ho={"to get":"To get",open:"Open","handed in":"Handed in","changed since":"Changed after handing in",
feedback:"Marked"},Pe=(t,e,n)=>s("a",{href:ce("lab/tree",t),target:"_blank","data-twoshaft-open":t,"data-key":n,class:"t\
s-link"},e);function Hn(t){return s("ul",{class:"ts-gaps"},...t.map(({task:e,missing:n,asked:r,unread:o})=>s("li",{},`${e}\
: `,n===r?"nothing answered":n?`${n} of ${r} missing`:"",...o.map(([a,c])=>s("span",{},s("b",{},"cannot be read: "),`“${a}\
” ${c}`)))))}function Wo(t){let e=({name:r})=>Number(r.split("-").at(-1)),n=[...t].sort((r,o)=>e(r)-e(o)).flatMap(({notebooks:r})=>r.
map(o=>[o.split("/").pop()??"",o]));localStorage.setItem(Rn,JSON.stringify(Object.fromEntries(n))),window.dispatchEvent(
new Event("storage"))}var de=null;function Wn({model:t,el:e}){let n="",r=De(sessionStorage,localStorage,t.get("place")),
o=!1,a=(w=!0)=>{o=w,o&&de&&(d.textContent=jn)},c=et({model:t,el:e},{kind:"start",lost:a,line:a}),i=s("div",{}),d=s("p",{
class:"ts-said",role:"status"});c.show(c.alert,d,i);let l=(w,D={})=>{i.getAttribute("aria-busy")==="true"||c.isLost()&&D.
quietly||(D.quietly||(de={type:w,...D},i.setAttribute("aria-busy","true"),d.textContent=o?jn:"One moment.",c.alert.textContent=
""),c.isLost()||t.send({type:w,...D}))},u=()=>{let w=de;de=null,w&&(w.type==="sign-in"||t.get("me").id)&&l(w.type,w)},p=(w,D,W,U)=>s(
"button",{type:"button",class:U?"ts-button ts-first":"ts-button","data-key":D,onclick:W},w);function f(){let w=ct("who"),
D=ct("word"),W=s("select",{id:w,class:"ts-box","data-key":"who",required:!0},s("option",{value:""},"Choose your name"),...t.
get("people").map(([it,wt])=>s("option",{value:it,selected:it===n},wt)));W.addEventListener("change",()=>{n=W.value});let U=s(
"input",{id:D,type:"text",class:"ts-box",autocomplete:"off",autocapitalize:"off",spellcheck:"false",maxlength:"80","data\
-key":"word"});return s("form",{class:"ts-sign-in",onsubmit:it=>{it.preventDefault(),l("sign-in",{name:W.value,word:U.value})}},
s("h2",{},"Who is working?"),s("div",{class:"ts-pair"},s("label",{for:w},"Your name"),W),s("div",{class:"ts-pair"},s("la\
bel",{for:D},"Sign-in word from your slip"),U),s("button",{type:"submit",class:"ts-button ts-first","data-key":"sign-in"},
"Sign in"),s("p",{class:"ts-hint"},t.get("kept")))}function g(w,D){let W=q=>`${q}:${w.name}`,U=s("div",{class:"ts-doing"});
for(let q of w.feedback.slice(0,1))U.append(s("a",{href:ce("files",q),target:"_blank",class:"ts-link","data-key":W("feed\
back")},"Read feedback"));for(let q of w.notebooks){let rt=w.notebooks.length===1?"Open":`Open ${q.split("/").pop()}`;U.
append(Pe(q,rt,W(`open ${q}`)))}w.can_get&&U.append(p(w.notebooks.length?"Get again":"Get",W("get"),()=>l("get",{name:w.
name}),!w.notebooks.length)),w.can_hand_in&&U.append(p(w.receipt?"Hand in again":"Hand in",W("hand in"),()=>l("hand-in",
{name:w.name})));for(let q of U.children)q.setAttribute("aria-label",`${q.textContent}: ${w.title}`);let it=t.get("askin\
g")===w.name,wt=w.receipt||w.unread>0,H=s("tr",{},s("th",{scope:"row"},w.title),s("td",{},w.due||"no date",w.overdue?s("\
span",{class:"ts-small-line"},"date passed"):null),s("td",w.receipt?{tabindex:-1,"data-key":W("receipt")}:{},s("span",{class:"\
ts-shape","aria-hidden":"true"},jo[w.state]||""),s("b",{},Ho[w.state]||w.state),s("span",{class:"ts-small-line"},w.detail),
D?s("span",{class:"ts-small-line"},`Mark: ${D}`):null),s("td",{},U));if(it)return[H,s("tr",{},s("td",{colspan:4},y(w)))];
if(!wt||!w.gaps.length)return[H];let G=s("td",{colspan:4},s("b",{},h(w)),Hn(w.gaps));return[H,s("tr",{},G)]}let h=({left:w,
unread:D})=>Wt([w?`${w} ${w===1?"answer is":"answers are"} missing`:null,D?`${D} cannot be read`:null]).join(", ");function y(w){
let D=ct("question"),W=s("div",{class:"ts-doing"});for(let it of w.notebooks)W.append(Pe(it,"Go on with it",`go on:${w.name}`));
let U=h(w);return W.append(p(U?"It is my own work: hand in as it is":"It is my own work: hand in",`hand in anyway:${w.name}`,
()=>l("hand-in",{name:w.name,own:!0}),!U)),s("div",{class:"ts-question",role:"group",tabindex:-1,"aria-labelledby":D,"da\
ta-key":"question"},s("p",{id:D},s("b",{},`${w.title}: not handed in yet.${U?` ${U}.`:""}`),U?" An answer that is missin\
g or cannot be read earns nothing.":null),U?Hn(w.gaps):null,s("p",{},"By handing in you state: ",s("b",{},t.get("stateme\
nt"))),W)}let b=new Set,E={met:"✓",enough:"◐","not yet":"○"};function B(w,D){let W=w.entries.map(H=>D.find(G=>G.name===
H)).filter(H=>H!==void 0),U=w.lesson?Pe(w.lesson,`Lesson ${w.title}`,`lesson:${w.lesson}`):s("span",{class:"ts-small-lin\
e"},"no lesson here"),it=s("details",{open:b.has(w.module)},s("summary",{"data-key":`outcomes:${w.module}`},`Outcomes: ${w.
count||"none"}`),s("ul",{},...w.outcomes.map(([H,G,q,rt])=>s("li",{},s("span",{class:"ts-shape","aria-hidden":"true"},E[H]||
""),s("b",{},`${H}${q&&H==="enough"?`, ${q}`:""}: `),G,q&&H==="not yet"?`. Still missing: ${q}`:"",rt?` (${rt})`:""))));
it.addEventListener("toggle",()=>{it.open?b.add(w.module):b.delete(w.module)});let wt=W.flatMap(H=>g(H,w.marks[H.name]));
return s("tbody",{},s("tr",{class:"ts-module"},s("th",{scope:"rowgroup",colspan:4},w.title,s("span",{class:"ts-assigned"},
W.length?"assigned":"not assigned"))),...wt,s("tr",{},s("td",{colspan:4},U,s("p",{class:"ts-next"},s("b",{},"Next: "),w.
next),it)))}function k(){let w=t.get("me"),D=t.get("entries"),W=s("table",{class:"ts-table"},s("thead",{},s("tr",{},...[
"Assignment","Due","State","What you can do"].map(U=>s("th",{scope:"col"},U)))),...t.get("modules").map(U=>B(U,D)));return s(
"section",{},s("div",{class:"ts-me"},s("h2",{},`Working as ${w.name} (${w.id})`),w.ticket?p("Not you? Sign out","sign-ou\
t",()=>{r.drop(),l("sign-out"),document.dispatchEvent(new CustomEvent("twoshaft-signed-out"))}):null),D.length?null:s("p",
{},"Nothing is assigned yet."),W,p("Look again","look",()=>l("look")))}function $(){let w=!!t.get("me").id,D=t.get("modu\
les").map(it=>it.lesson),U=t.get("lessons").filter(([it])=>!w||!D.includes(it));return U.length?s("section",{},s("h2",{},
w?"To look things up":"Lessons"),s("ul",{class:"ts-lessons"},...U.map(([it,wt])=>s("li",{},Pe(it,wt,`lesson:${it}`))))):
null}let A=!1,L=t.get("me").id?null:r.get(),M=L!==null;function m(){let w=t.get("me");w.id?le(t.get("look")):Nn(),w.id?r.
keep(w):(A||L&&!M)&&r.drop(),A=!!w.id,Wo(w.id?t.get("entries"):[])}let S=0,v="",I=()=>J(i,"[data-key]"),N=()=>i.querySelector(
"input[data-key=word]");function F(){let D=I().find(ft=>ft===document.activeElement)?.dataset.key;i.removeAttribute("ari\
a-busy");let W=!!t.get("me").id;d.textContent=t.get("said"),c.alert.textContent=t.get("trouble");let U=N()?.value,it=M?s(
"p",{},"One moment."):f();i.replaceChildren(...Wt([W?k():it,$()]));let wt=N();wt&&U&&(wt.value=U);let H=v;if(v=t.get("as\
king"),v&&v!==H&&I().find(ft=>ft.dataset.key==="question")?.focus(),!D||v&&v!==H)return;let G=I().find(ft=>ft.dataset.key===
D),q=D.split(":")[1],rt=I().filter(ft=>q&&ft.dataset.key?.endsWith(`:${q}`)),st=rt.find(ft=>ft.dataset.key?.startsWith("\
receipt")),lt=rt.find(ft=>ft!==st),St=D.startsWith("hand in anyway")?st??lt:lt;(G??St??J(i,"a, button, select")[0])?.focus()}
let Z=()=>{clearTimeout(S),S=setTimeout(()=>{let w=M;M=!1,w||(de=null),m(),F(),w&&u()},0)};t.on("change",Z),m(),F(),L?t.
send({type:"resume",name:L.id,ticket:L.ticket}):u();let P=()=>{!document.hidden&&t.get("me").id&&l("look",{quietly:!0})},
x=new IntersectionObserver(([w])=>{w.isIntersecting&&P()});return x.observe(e),document.addEventListener("visibilitychan\
ge",P),()=>{clearTimeout(S),t.off("change",Z),x.disconnect(),document.removeEventListener("visibilitychange",P),c.close()}}var _o={bench:Es,build:Ts,cord:Bs,depth:Ds,desk:An,exploded:qs,face:Ks,fault_board:Gs,form:Dn,gate:Xs,gears:Vs,hazards:Js,
lifting:Zs,micrometer:Qs,own_checks:tn,press:en,question:Pn,rules:sn,runout:nn,sealant:un,seat:pn,shims:fn,sketch:hn,start:Wn,
thread:gn,unit_section:mn,whole_build:Sn,wrench:Ln};export{_o as screens};
