// What is wider than its place, and scrolls, is reached by the keyboard in every browser.

import { findAll } from "../page/dom.js";

const WIDE = ".twoshaft :is(.given-frame, .tsg-wide)";
const PAUSE_MS = 300; // what is drawn anew all the time is looked at once it rests

/** @param {HTMLElement} node */
function fit(node) {
  const scrolls = node.scrollWidth > node.clientWidth;
  if (scrolls === node.hasAttribute("tabindex")) return;
  if (!scrolls) {
    for (const name of ["tabindex", "role", "aria-label"]) node.removeAttribute(name);
    return;
  }
  node.tabIndex = 0;
  node.setAttribute("role", "group");
  node.setAttribute("aria-label", node.querySelector("caption")?.textContent ?? "Picture");
}

/**
 * Keeps what scrolls in a notebook within reach while its cells and its width change.
 *
 * @param {any} panel
 */
export function keepInReach(panel) {
  const root = panel.content.node;
  let asked = 0;
  const ask = () => {
    clearTimeout(asked);
    asked = setTimeout(() => findAll(root, WIDE).forEach(fit), PAUSE_MS);
  };
  const changes = new MutationObserver(ask);
  changes.observe(root, { childList: true, subtree: true });
  const sizes = new ResizeObserver(ask);
  sizes.observe(root);
  panel.disposed.connect(() => {
    clearTimeout(asked);
    changes.disconnect();
    sizes.disconnect();
  });
}
