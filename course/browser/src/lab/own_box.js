// What is given, where it and what is asked are both higher than the window: it is moved by itself,
// by the wheel, by a button at its lower end, and by the keyboard that goes on in it.

import { make } from "../page/dom.js";

const BUTTON_PX = 32;
const KEPT_PX = 80; // of what was in sight stays in sight, so that the place is not lost
const LINE_PX = 16;
const RING_PX = 6; // what has the focus shows it round itself

/**
 * Makes cells that stand one below the other a box; nothing of them is cut off yet.
 *
 * @param {readonly HTMLElement[]} nodes
 * @param {Element} scroller what scrolls the page
 * @param {() => void} changed hears that the cells have to be laid out again
 */
export function ownBox(nodes, scroller, changed) {
  let seen = 0;
  let most = 0;
  let high = 0;
  let scrolled = scroller.scrollTop;
  const ends = new AbortController();
  const last = nodes[nodes.length - 1];
  const more = make("button", {
    type: "button",
    class: "twoshaft twoshaft-more",
    onclick: () => move(seen < most ? seen + high - KEPT_PX : 0),
  });

  /** @param {number} to */
  function move(to) {
    const next = Math.round(Math.min(most, Math.max(0, to)));
    if (next === seen) return false;
    seen = next;
    changed();
    return true;
  }
  /** Where the upper edge of the box is in the window. */
  const edge = () => nodes[0].getBoundingClientRect().top + seen;
  /** @param {Element} node */
  function ringed(node) {
    const { top, bottom } = node.getBoundingClientRect();
    return { top: top - RING_PX, bottom: bottom + RING_PX };
  }
  /** @param {Element} node */
  function reveal(node) {
    const { top, bottom } = ringed(node);
    const from = edge();
    const to = from + high - BUTTON_PX;
    if (bottom > to) move(seen + Math.min(bottom - to, top - from));
    else if (top < from) move(seen - (from - top));
  }

  /** @param {WheelEvent} event */
  function wheel(event) {
    if (event.ctrlKey || event.shiftKey || !event.deltaY) return;
    // While its upper edge is still to come the page goes on.
    if (event.deltaY > 0 && edge() > scroller.getBoundingClientRect().top + 1) return;
    const step = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE_PX : 1;
    if (move(seen + event.deltaY * step)) event.preventDefault();
  }
  /** @param {FocusEvent} event */
  function focus(event) {
    const { target, relatedTarget: from } = event;
    if (!(target instanceof Element) || target === more) return;
    // A press on a cell must not move it away from under the finger.
    if (nodes.some((one) => one === target) && !target.matches(":focus-visible")) return;
    // The browser has scrolled the page for what only this box can bring into sight.
    const within = from instanceof Node && nodes.some((node) => node.contains(from));
    if (within) scroller.scrollTop = scrolled;
    reveal(target);
    // Scrolling the page moves the box where it is laid out anew: looked at again when it was.
    const again = () => {
      if (document.activeElement !== target || !more.isConnected) return;
      reveal(target);
      bringIn(target);
    };
    requestAnimationFrame(() => {
      again();
      requestAnimationFrame(again);
    });
  }
  /**
   * Scrolls the page where the box itself hangs over an edge of the window.
   *
   * @param {Element} node
   */
  function bringIn(node) {
    const { top, bottom } = ringed(node);
    const room = scroller.getBoundingClientRect();
    if (top < room.top) scroller.scrollTop -= room.top - top;
    else if (bottom > room.bottom)
      scroller.scrollTop += Math.min(bottom - room.bottom, top - room.top);
  }
  const { signal } = ends;
  for (const node of nodes) {
    node.addEventListener("wheel", wheel, { passive: false, signal });
    node.addEventListener("focusin", focus, { signal });
  }
  const follow = () => {
    scrolled = scroller.scrollTop;
  };
  scroller.addEventListener("scroll", follow, { passive: true, signal });
  last.append(more);

  return {
    moved: () => seen,
    /**
     * @param {number} whole height of all cells
     * @param {number} room height of the box
     */
    fit(whole, room) {
      high = room;
      most = Math.round(whole - room + BUTTON_PX);
      seen = Math.min(seen, most);
    },
    /**
     * Cuts a cell off at both edges of the box; the button stands at the lower one.
     *
     * @param {HTMLElement} node
     * @param {number} above where the cell begins in the box
     * @param {number} height
     */
    cut(node, above, height) {
      const under = above + height - high;
      if (node !== last) {
        node.style.clipPath = `inset(${Math.max(0, -above)}px 0 ${Math.max(0, under)}px)`;
        return;
      }
      const over = above < 0 ? -above : -most - high; // the button may stand above the cell
      node.style.clipPath = `inset(${over}px 0 ${under}px)`;
      const back = seen >= most;
      more.textContent = back ? "▲ Back to the beginning" : "▼ More of what is given";
      more.style.top = `${high - BUTTON_PX - above}px`;
    },
    remove() {
      ends.abort();
      more.remove();
      for (const { style } of nodes) style.removeProperty("clip-path");
    },
  };
}
