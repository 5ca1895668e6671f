// The college's own photographs of the part or step that is looked at, asked of the kernel when
// there are some.

/** @import { Model } from "../types.js" */

import { make } from "../page/dom.js";

/**
 * @typedef {{ svg: string, alt: string }} Shown
 * @typedef {"part" | "operation"} Kind
 */

/**
 * A place for photographs; empty, and without any size, where there is nothing to show.
 *
 * @param {Model} model
 */
export function photographs(model) {
  /** @type {Record<Kind, string[]>} */
  const known = model.get("pictured");
  const node = make("div", { class: "ts-photographs" });
  let wanted = "";
  /** @param {{ type: string, of: string, id: string, shown: Shown[] }} message */
  const hear = (message) => {
    if (message.type !== "photographs" || `${message.of}:${message.id}` !== wanted) return;
    node.replaceChildren(
      ...message.shown.map(({ svg, alt }) => {
        const figure = make("figure", {});
        figure.innerHTML = svg;
        figure.append(make("figcaption", {}, `From your college: ${alt}`));
        return figure;
      }),
    );
  };
  model.on("msg:custom", hear);
  return {
    node,
    /**
     * Whether there are some of this kind at all.
     *
     * @param {Kind} of
     */
    any: (of) => known[of].length > 0,
    /**
     * @param {Kind} of
     * @param {string[]} ids of which the first that has some is shown
     */
    show(of, ids) {
      const id = ids.find((one) => known[of].includes(one));
      const now = id === undefined ? "" : `${of}:${id}`;
      if (now === wanted) return;
      wanted = now;
      node.replaceChildren();
      if (id !== undefined) model.send({ type: "photographs", of, id });
    },
    close: () => model.off("msg:custom", hear),
  };
}
