// One question at a time to the kernel.

import { freshId } from "../page/dom.js";

/**
 * While an answer is awaited only the latest state is kept; it is asked for next.
 *
 * @template State
 * @param {(state: State, turn: string) => void} send
 */
export function latestOnly(send) {
  /** @type {string | null} */
  let awaited = null;
  /** @type {State | null} */
  let next = null;
  /** @param {State} state */
  const ask = (state) => {
    if (awaited !== null) {
      next = state;
      return;
    }
    awaited = freshId("turn");
    send(state, awaited);
  };
  const free = () => {
    awaited = null;
    const state = next;
    next = null;
    if (state !== null) ask(state);
  };
  return {
    ask,
    free,
    /** @param {unknown} turn */
    answered(turn) {
      if (turn === awaited) free();
    },
    get waiting() {
      return awaited !== null;
    },
  };
}
