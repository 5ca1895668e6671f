// What is wider than its place, and scrolls, is reached by the keyboard in every browser.

import { findAll } from "../page/dom.js";

const WIDE = ":is(.twoshaft :is(.given-frame, .tsg-wide, .tsl-drawing), .jp-RenderedHTML figure)";

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
  // A table says its own name; here it is said once that it goes on sideways.
  node.setAttribute("aria-label", node.querySelector("caption") ? "Wide table" : "Picture");
}

/** @param {HTMLElement} root */
export const keepInReach = (root) => findAll(root, WIDE).forEach(fit);
