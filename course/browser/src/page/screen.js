// A screen's frame: its alert line, its keys, and what to do when the kernel has gone.

/** @import { Message, Model, View } from "../types.js" */

import { make, stopControls, there } from "./dom.js";
import { lineOf } from "./line.js";

const REST_MS = 1000;
const KEYED = "input, button, select, textarea, summary, a, [tabindex]";

/**
 * Keys typed in a form or rig never reach the notebook, where letters delete cells. Only the order
 * to save is passed on, since the browser would offer to save the page instead.
 *
 * @param {HTMLElement} root
 */
function guardKeys(root) {
  /** @param {KeyboardEvent} event */
  const stop = (event) => {
    event.stopPropagation();
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "s") return;
    event.preventDefault();
    if (event.type !== "keydown" || event.repeat) return;
    const { key, code, keyCode, ctrlKey, metaKey } = event;
    const again = { key, code, keyCode, ctrlKey, metaKey, bubbles: true, cancelable: true };
    root.parentElement?.dispatchEvent(new KeyboardEvent("keydown", again));
  };
  root.addEventListener("keydown", stop);
  root.addEventListener("keyup", stop);
  root.addEventListener("keypress", stop);
  const mark = () => {
    for (const node of root.querySelectorAll(KEYED)) {
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

/**
 * Watches the kernel.
 *
 * @param {Model} model
 * @param {() => void} lost called when the kernel has gone
 * @param {(interrupted: boolean) => void} wait called when the line is interrupted, or back
 */
function watchKernel(model, lost, wait) {
  const kernel = model.widget_manager?.kernel;
  /** @type {(sender: unknown, status: string) => void} */
  const onStatus = (_, status) => {
    if (["restarting", "autorestarting", "terminating", "dead"].includes(status)) lost();
  };
  /** @type {(sender: unknown, status: string) => void} */
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

const SHEET = STYLES;
const SHEET_ID = "twoshaft-styles";

/** Puts this version's style sheet into the page, behind the page's own. */
function dress() {
  const worn = document.getElementById(SHEET_ID);
  if (worn?.textContent === SHEET) return;
  worn?.remove();
  document.head.append(make("style", { id: SHEET_ID }, SHEET));
}

/**
 * Opens the frame of a screen.
 *
 * @param {View} view
 * @param {object} options
 * @param {"form" | "rig" | "start" | "desk"} options.kind
 * @param {() => void} [options.lost] what to do when the kernel has gone; else controls are stopped
 * @param {(interrupted: boolean) => void} [options.line] called when the line is interrupted, or back
 */
export function openScreen(
  { model, el },
  { kind, lost = () => stopControls(el), line: onLine = () => {} },
) {
  dress();
  el.classList.add("twoshaft", "twoshaft-live", `twoshaft-${kind}`);
  const alert = make("p", { class: "ts-alert", role: "alert" });
  const line = lineOf(el);
  const isLost = () => el.classList.contains("ts-lost");
  /** @type {[string, (...parts: any[]) => void][]} */
  const followed = [];
  const gone = () => {
    if (isLost()) return;
    el.classList.add("ts-lost");
    line.down();
    lost();
  };
  const unwatch = watchKernel(model, gone, (interrupted) => {
    if (isLost()) return;
    if (interrupted) line.down();
    else line.up();
    onLine(interrupted);
  });
  const release = guardKeys(el);
  /** @type {number | undefined} */
  let rest; // the plain copy is brought up to date when hands are off

  /** @type {(event: string, listener: (...parts: any[]) => void) => void} */
  const follow = (event, listener) => {
    model.on(event, listener);
    followed.push([event, listener]);
  };
  follow("msg:custom", (message) => {
    if (message.type === "trouble" && !isLost()) alert.textContent = message.reason;
  });
  return {
    alert,
    /** Listens to the model until the screen is closed. */
    follow,
    /** Whether the kernel has gone: the next one draws this screen anew. */
    isLost,
    /** @param {Message} message */
    send(message) {
      if (isLost()) return;
      el.classList.add("ts-begun");
      model.send(message);
      clearTimeout(rest);
      rest = window.setTimeout(() => model.send({ type: "rest" }), REST_MS);
    },
    /**
     * The head of a rig: what it asks, where to begin, and whether anything is kept. The control to
     * begin with is lit until something was sent.
     *
     * @param {string} question
     * @param {{ first?: Element | null, begin?: string, who?: string }} [about]
     */
    asks(question, { first, begin, who = "Practice. Nothing here is marked or saved." } = {}) {
      first?.classList.add("ts-first");
      return make(
        "div",
        { class: "ts-who" },
        make("p", { class: "ts-asks" }, question),
        begin ? make("p", { class: "ts-begin" }, `Begin: ${begin}.`) : "",
        who ? make("p", {}, who) : "",
      );
    },
    /** @param {...(Node | null | undefined | false)} nodes */
    show: (...nodes) => el.replaceChildren(...there(nodes)),
    close() {
      line.up();
      clearTimeout(rest);
      release();
      unwatch();
      for (const [event, listener] of followed) model.off(event, listener);
    },
  };
}
