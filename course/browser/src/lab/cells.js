// Cells of a course notebook: which may run on opening, which are shown without code, and what in
// them a learner could lose.

import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

const SETUP_TAG = "setup";
const RUN_TAGS = [SETUP_TAG, "form", "rig"];
// Collapsed cells of these are not shown at all; those that work points out are not run here.
const QUIET_TAGS = [...RUN_TAGS, "mark"];

/**
 * The digest of a cell's text. The browser's own is missing on a plain http address of a hub.
 *
 * @param {string} source
 */
export function digest(source) {
  return bytesToHex(sha256(utf8ToBytes(source.replace(/\r\n?/g, "\n").replace(/\n+$/, ""))));
}

/**
 * Tags of a cell's model.
 *
 * @param {any} model
 * @returns {string[]}
 */
export const tagsOf = (model) => model.getMetadata("tags") || [];

/**
 * Whether the cells after it need what it sets.
 *
 * @param {any} model
 */
export const isSetup = (model) => tagsOf(model).includes(SETUP_TAG);

/**
 * Whether a cell is shown without its code.
 *
 * @param {any} model
 */
export const isQuiet = (model) => tagsOf(model).some((tag) => QUIET_TAGS.includes(tag));

/**
 * Cells of a notebook panel that may be run on opening.
 *
 * @param {any} panel
 * @param {Set<string>} released digests
 * @returns {any[]}
 */
export function openable(panel, released) {
  return panel.content.widgets.filter(
    (/** @type {any} */ { model }) =>
      model.type === "code" &&
      tagsOf(model).some((tag) => RUN_TAGS.includes(tag)) &&
      released.has(digest(model.sharedModel.getSource())),
  );
}

/**
 * Whether a cell ended in an error.
 *
 * @param {any} cell
 */
export function failed({ model: { outputs } }) {
  for (let i = 0; i < outputs.length; i += 1) if (outputs.get(i).type === "error") return true;
  return false;
}

/**
 * What a learner would lose with the notebook: text of cells, and runs of cells of their own. Forms
 * keep their answers elsewhere, so showing them must not make the notebook ask to be saved, nor two
 * windows quarrel about its file.
 *
 * @param {any} panel
 */
export function workIn(panel) {
  return JSON.stringify(
    panel.content.widgets.map((/** @type {any} */ { model }) => [
      model.sharedModel.getSource(),
      isQuiet(model) ? null : (model.executionCount ?? null),
    ]),
  );
}
