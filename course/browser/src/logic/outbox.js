// What was answered and not saved yet, kept in the browser: by learner and assignment, so that
// nobody else on the machine is shown it, and nothing is lost while the kernel cannot be reached.

/** @import { Answer } from "../types.js" */
/** @typedef {{ value: any, base: number, at: string }} Unsent */
/** @typedef {Pick<Storage, "getItem" | "setItem" | "removeItem">} Shelf */

const PREFIX = "twoshaft-unsent:";

/**
 * The answers of one job sheet that wait to be saved.
 *
 * @param {Shelf | null} shelf where they are kept; null keeps them nowhere
 * @param {string} sheet whose sheet it is; empty keeps them nowhere
 */
export function outbox(shelf, sheet) {
  const place = PREFIX + sheet;
  /** @returns {Record<string, Unsent>} */
  const all = () => {
    if (!shelf || !sheet) return {};
    try {
      const found = JSON.parse(shelf.getItem(place) ?? "{}");
      return found && typeof found === "object" ? found : {};
    } catch {
      return {};
    }
  };
  /** @param {Record<string, Unsent>} kept */
  const keep = (kept) => {
    if (!shelf || !sheet) return;
    try {
      if (Object.keys(kept).length) shelf.setItem(place, JSON.stringify(kept));
      else shelf.removeItem(place);
    } catch {
      /* full, or forbidden here: the kernel is sent the answer all the same */
    }
  };
  return {
    /**
     * @param {string} name of the field
     * @returns {Unsent | undefined}
     */
    get: (name) => (Object.hasOwn(all(), name) ? all()[name] : undefined),
    /**
     * @param {string} name
     * @param {any} value
     * @param {number} base revision of the answer that this one follows
     * @param {Date} [now]
     */
    put: (name, value, base, now = new Date()) =>
      keep({ ...all(), [name]: { value, base, at: now.toISOString() } }),
    /** @param {string} name */
    drop(name) {
      const { [name]: gone, ...rest } = all();
      if (gone) keep(rest);
    },
  };
}

/**
 * Whether an answer that waited is still to be sent: not when the sheet holds it already, and not
 * when a later one was saved meanwhile from somewhere else.
 *
 * @param {Unsent} unsent
 * @param {Answer} stored what the sheet holds
 */
export function stillToSend(unsent, stored) {
  if (JSON.stringify(unsent.value) === JSON.stringify(stored.value ?? null)) return false;
  if ((stored.revision ?? 0) === unsent.base) return true;
  return !(Date.parse(stored.saved ?? "") > Date.parse(unsent.at));
}
