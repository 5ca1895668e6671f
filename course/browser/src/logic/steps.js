// Walking through the steps of the simulated bench, stage by stage.

/** @typedef {[id: string, name: string, steps: string[]]} Stage */

/**
 * Steps of a stage; those of the first one if it is not known.
 *
 * @param {readonly Stage[]} stages
 * @param {string} id
 */
export function stepsOf(stages, id) {
  return (stages.find(([one]) => one === id) ?? stages[0])[2];
}

/**
 * The stage of a step.
 *
 * @param {readonly Stage[]} stages
 * @param {string | undefined} step
 * @returns {string | undefined}
 */
export function stageOf(stages, step) {
  return stages.find(([, , steps]) => step !== undefined && steps.includes(step))?.[0];
}

/**
 * The list turned so that it starts behind a place.
 *
 * @template T
 * @param {readonly T[]} list
 * @param {number} at
 * @returns {T[]}
 */
const behind = (list, at) => [...list.slice(at + 1), ...list.slice(0, at + 1)];

/**
 * The step that a key leads to.
 *
 * @param {string} key as the browser names it; a letter leads to the next step that starts with it
 * @param {object} at
 * @param {readonly Stage[]} at.stages
 * @param {string} at.stage the one that is shown
 * @param {string | null} at.step the one that the keyboard is on
 * @param {Record<string, string>} at.labels
 * @param {(step: string) => boolean} at.isOpen
 * @returns {string | undefined} none if the key leads nowhere
 */
export function reached(key, { stages, stage, step, labels, isOpen }) {
  const mine = stepsOf(stages, stage);
  const at = mine.indexOf(String(step));
  if (key === "ArrowLeft" || key === "ArrowRight") {
    const ids = stages.map(([id]) => id);
    const way = key === "ArrowLeft" ? -1 : 1;
    const beside = stepsOf(stages, ids[(ids.indexOf(stage) + way + ids.length) % ids.length]);
    return beside.find(isOpen) ?? beside[0];
  }
  if (key === "ArrowDown") return mine[Math.min(at + 1, mine.length - 1)];
  if (key === "ArrowUp") return mine[Math.max(at - 1, 0)];
  if (key === "Home") return mine[0];
  if (key === "End") return mine.at(-1);
  if (key.length !== 1 || key === " ") return undefined;
  const letter = key.toLowerCase();
  return behind(mine, at).find((one) => labels[one].toLowerCase().startsWith(letter));
}

/**
 * The next open step behind one that is done with: of its own stage first, then of the later ones.
 *
 * @param {object} at
 * @param {readonly Stage[]} at.stages
 * @param {string} at.stage
 * @param {string | null} at.step
 * @param {(step: string) => boolean} at.isOpen
 * @returns {string | undefined} none if every step is done
 */
export function nextOpen({ stages, stage, step, isOpen }) {
  const mine = stepsOf(stages, stage);
  const every = stages.flatMap(([, , steps]) => steps);
  const last = every.indexOf(String(mine.at(-1)));
  return behind(mine, mine.indexOf(String(step))).find(isOpen) ?? behind(every, last).find(isOpen);
}
