// When a form is drawn anew under somebody's hands, the hands stay where they were.

/** @type {{ form: string, at: number, from: number | null } | null} */
let held = null;
const KEYED = "input, button, select, textarea, summary, a, [tabindex]";

/** @param {HTMLElement} el */
const stops = (el) => /** @type {HTMLElement[]} */ ([...el.querySelectorAll(KEYED)]);

/**
 * Keeps the place of the focus in a form, and gives it to the form that takes its place.
 *
 * @param {HTMLElement} el
 * @param {string} form which form it is, however often it is drawn
 * @returns {() => void} stops it
 */
export function focusStays(el, form) {
  /** @param {Event} event */
  const note = ({ target }) => {
    if (!(target instanceof HTMLElement)) return;
    if (el.contains(target)) {
      held = { form, at: stops(el).indexOf(target), from: null };
    } else if (held?.form === form && el.isConnected) held = null;
  };
  /** @param {Event} event */
  const typed = ({ target }) => {
    if (held?.form === form && target instanceof HTMLInputElement)
      held.from = target.selectionStart;
  };
  document.addEventListener("focusin", note);
  document.addEventListener("pointerdown", note);
  el.addEventListener("input", typed);
  const back = () => {
    if (held?.form !== form || document.activeElement?.closest(".twoshaft")) return;
    const { at, from } = held;
    const stop = stops(el)[at];
    stop?.focus({ preventScroll: true });
    if (from !== null && stop instanceof HTMLInputElement) stop.setSelectionRange(from, from);
  };
  requestAnimationFrame(back); // drawn into the page by then
  return () => {
    document.removeEventListener("focusin", note);
    document.removeEventListener("pointerdown", note);
  };
}
