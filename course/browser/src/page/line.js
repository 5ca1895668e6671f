// The line to the course: one message for the whole page while any of its kernels is out of reach.

import { make } from "./dom.js";

const DOWN =
  "The connection to the course is lost. Go on answering: your answers stay in this browser and are sent when the connection is back. Simulators wait until then.";
const BACK = "The connection to the course is back.";
const PATIENCE_MS = 1500; // a kernel that starts anew is soon back
const BACK_MS = 5000;

/** @type {Set<object>} */
const off = new Set();
/** @type {HTMLElement | null} */
let bar = null;
/** @type {number | undefined} */
let timer;

/** @param {string} text */
function tell(text) {
  bar ??= make("p", { class: "twoshaft ts-line-bar", role: "status" });
  if (!bar.isConnected) document.body.append(bar);
  bar.textContent = text;
}

function hide() {
  bar?.remove();
  bar = null;
}

function look() {
  clearTimeout(timer);
  if (off.size) timer = window.setTimeout(() => tell(DOWN), bar ? 0 : PATIENCE_MS);
  else if (bar) {
    tell(BACK);
    timer = window.setTimeout(hide, BACK_MS);
  }
}

/**
 * A screen's part in it.
 *
 * @param {object} screen
 */
export const lineOf = (screen) => ({
  down() {
    off.add(screen);
    look();
  },
  up() {
    off.delete(screen);
    look();
  },
});
