// The answer kinds that a form can show. Each stands in a file of its own under kinds/, which
// registers it by the name that the kernel gives; the build puts every file there into the bundle.

/** @import { Field, Ids, Kind } from "./types.js" */

import { freshId, make } from "./page/dom.js";

/** @type {Map<string, Kind>} */
const kinds = new Map();

/**
 * Registers an answer kind.
 *
 * @param {string} name
 * @param {Kind} kind
 */
export function registerKind(name, kind) {
  if (kinds.has(name)) throw new Error(`the answer kind ${name} is registered twice`);
  kinds.set(name, kind);
}

/**
 * The kind of a field.
 *
 * @param {Field} field
 */
export function kindOf(field) {
  const kind = kinds.get(field.kind);
  if (!kind) throw new Error(`the answer kind ${field.kind} has no browser side`);
  return kind;
}

/**
 * Ids of the parts of a field.
 *
 * @param {Field} field
 * @returns {Ids}
 */
export function idsOf(field) {
  const stem = freshId(field.kind);
  return {
    prompt: `${stem}-prompt`,
    control: `${stem}-control`,
    hint: `${stem}-hint`,
    read: `${stem}-read`,
    status: `${stem}-status`,
  };
}

/**
 * The box of a field with its prompt, still without its control.
 *
 * @param {Field} field
 * @param {Ids} ids
 * @param {string | null} describedBy
 * @returns {HTMLElement}
 */
export function promptBox(field, ids, describedBy) {
  const { prompt } = kindOf(field);
  const words = { class: "ts-prompt", id: ids.prompt };
  if (prompt === "legend") {
    return make(
      "fieldset",
      { class: "ts-field", "aria-describedby": describedBy },
      make("legend", words, field.prompt),
    );
  }
  const said =
    prompt === "label"
      ? make("label", { ...words, for: ids.control }, field.prompt)
      : make("p", words, field.prompt);
  return make("div", { class: "ts-field" }, said);
}
