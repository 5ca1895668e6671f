// The frame of every measuring instrument: picture, controls, finding, and one question at a time.

/** @import { View } from "../types.js" */

import { latestOnly } from "../logic/turns.js";
import { beside, make } from "../page/dom.js";
import { openScreen } from "../page/screen.js";

/**
 * What an instrument draws, and how it takes what the kernel shows.
 *
 * @typedef {{
 *   picture: Element, controls: Element[], set: (shown: any, state: any) => void,
 *   asks: string, first: Element, begin: string, side?: boolean,
 * }} Parts
 */

/**
 * Opens an instrument.
 *
 * @param {View} view
 * @param {(about: any, change: (part: Record<string, any>) => void, start: any) => Parts} build
 *   `about` is what does not change, `change` asks for another state, `start` is the first one
 */
export function openInstrument({ model, el }, build) {
  const about = model.get("about");
  let state = model.get("shown").state;
  const asks = latestOnly((wanted, turn) => screen.send({ type: "set", state: wanted, turn }));
  const screen = openScreen({ model, el }, { kind: "rig" });
  const finding = make("p", { class: "ts-finding", role: "status" });
  const parts = build(
    about,
    (part) => {
      state = { ...state, ...part };
      asks.ask(state);
    },
    state,
  );
  const who = about.readingsOnly ? "Take your readings here; write them in the form." : undefined;
  screen.show(
    screen.asks(parts.asks, { first: parts.first, begin: parts.begin, who }),
    screen.alert,
    ...(parts.side
      ? [beside([parts.picture], [...parts.controls, finding])]
      : [make("div", { class: "tsg-wide" }, parts.picture), ...parts.controls, finding]),
  );
  function show() {
    const shown = model.get("shown");
    if (!asks.waiting) state = shown.state;
    parts.set(shown, state);
    finding.textContent = shown.finding;
    asks.answered(shown.turn);
  }
  screen.follow("change:shown", show);
  screen.follow("msg:custom", asks.free);
  show();
  return screen.close;
}

/**
 * A row of tools.
 *
 * @param {...(Node | string | null | undefined)} nodes
 */
export const toolRow = (...nodes) => make("div", { class: "ts-tools" }, ...nodes);
