function g(e){return new Promise((t,r)=>{let n=e.widget_manager?.kernel,s=o=>{e.off("msg:custom",a),n?.statusChanged?.disconnect(
i),o()},a=(o,c)=>{if(o.type!=="screens")return;let u=URL.createObjectURL(new Blob([c[0]],{type:"text/javascript"})),d=import(u);
d.finally(()=>URL.revokeObjectURL(u)).catch(()=>{}),s(()=>t(d))},i=(o,c)=>{["restarting","autorestarting","terminating",
"dead"].includes(c)&&s(()=>r(new Error("the notebook's engine has stopped")))};e.on("msg:custom",a),n?.statusChanged?.connect(
i),e.send({type:"screens"})})}async function l(e){globalThis.twoshaftScreens??=new Map;let t=globalThis.twoshaftScreens,
r=t.get("d3988b04c7c816f0");if(r){let s=await r.catch(()=>null);if(s)return s}let n=t.get("d3988b04c7c816f0")??g(e);return t.
set("d3988b04c7c816f0",n),n.catch(()=>t.delete("d3988b04c7c816f0")),n}var f={async render(e){let{screens:t}=await l(e.model);
return t[e.model.get("_screen")](e)}};export{f as default};
