// What every form and rig needs of the page: making elements, keys, the state of the kernel.

const SVG_NS = "http://www.w3.org/2000/svg";

function make(tag, attributes = {}, ...children) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else if (value === true) node.setAttribute(name, "");
    else if (value !== false && value != null) node.setAttribute(name, value);
  }
  node.append(...children.filter((child) => child != null));
  return node;
}

let idCount = 0;
function freshId(stem) {
  idCount += 1;
  return `twoshaft-${stem}-${idCount}-${Math.random().toString(36).slice(2, 7)}`;
}

// Keys typed in a form or rig never reach the notebook, where letters delete cells. Only the
// order to save is passed on, since the browser would offer to save the page instead.
function guardKeys(root) {
  const stop = (event) => {
    event.stopPropagation();
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "s") return;
    event.preventDefault();
    if (event.type !== "keydown" || event.repeat) return;
    const { key, code, keyCode, ctrlKey, metaKey } = event;
    const again = { key, code, keyCode, ctrlKey, metaKey, bubbles: true, cancelable: true };
    root.parentElement?.dispatchEvent(new KeyboardEvent("keydown", again));
  };
  for (const kind of ["keydown", "keyup", "keypress"]) root.addEventListener(kind, stop);
  const mark = () => {
    const selector = "input, button, select, textarea, summary, a, [tabindex]";
    for (const node of root.querySelectorAll(selector)) {
      if (!node.hasAttribute("data-lm-suppress-shortcuts")) {
        node.setAttribute("data-lm-suppress-shortcuts", "true");
      }
    }
  };
  mark();
  const watcher = new MutationObserver(mark);
  watcher.observe(root, { childList: true, subtree: true });
  return () => watcher.disconnect();
}

function scrollParent(node) {
  for (let up = node.parentElement; up; up = up.parentElement) {
    const flow = getComputedStyle(up).overflowY;
    if ((flow === "auto" || flow === "scroll") && up.scrollHeight > up.clientHeight) return up;
  }
  return document.scrollingElement;
}

const LOST =
  "The notebook's engine has stopped, so nothing more is saved here. If this does not come back in a moment, reload the page; what was saved comes back.";
const WAITING =
  "The connection to the notebook's engine is interrupted. Wait a moment before you type on.";

// Calls lost() when the kernel has gone, and wait(true or false) while the line is interrupted.
function watchKernel(model, lost, wait) {
  const kernel = model.widget_manager?.kernel;
  const onStatus = (_, status) => {
    if (["restarting", "autorestarting", "terminating", "dead"].includes(status)) lost();
  };
  const onLine = (_, status) => {
    if (status === "disconnected") lost();
    else wait(status === "connecting");
  };
  model.on("comm_live_update", lost);
  kernel?.statusChanged?.connect(onStatus);
  kernel?.connectionStatusChanged?.connect(onLine);
  kernel?.disposed?.connect(lost);
  return () => {
    model.off("comm_live_update", lost);
    kernel?.statusChanged?.disconnect(onStatus);
    kernel?.connectionStatusChanged?.disconnect(onLine);
    kernel?.disposed?.disconnect(lost);
  };
}

const REST_MS = 1000;

// A screen's frame: its alert line, its keys, and what to do when the kernel has gone.
// Returns { alert, show(...nodes), send(message), close() }.
function openScreen({ model, el }, { kind, lost }) {
  el.classList.add("twoshaft", "twoshaft-live", `twoshaft-${kind}`);
  const alert = make("p", { class: "ts-alert", role: "alert" });
  const gone = () => {
    if (el.classList.contains("ts-lost")) return;
    el.classList.add("ts-lost");
    alert.textContent = LOST;
    lost?.();
  };
  const unwatch = watchKernel(model, gone, (interrupted) => {
    if (!el.classList.contains("ts-lost")) alert.textContent = interrupted ? WAITING : "";
  });
  const hear = (message) => {
    if (message.type === "trouble" && !el.classList.contains("ts-lost")) alert.textContent = message.reason;
  };
  model.on("msg:custom", hear);
  const release = guardKeys(el);
  let rest = null; // the plain copy is brought up to date when hands are off
  return {
    alert,
    send(message) {
      model.send(message);
      clearTimeout(rest);
      rest = setTimeout(() => model.send({ type: "rest" }), REST_MS);
    },
    // The page would write a missing node out as the word “null”.
    show: (...nodes) => el.replaceChildren(...nodes.filter((node) => node != null)),
    close() {
      release();
      unwatch();
      model.off("msg:custom", hear);
    },
  };
}
