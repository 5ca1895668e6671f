// Parts put into a picture, each in its place and its way round.

import { registerKind } from "../kinds.js";
import { draw, make, namedButton } from "../page/dom.js";
import { pointedRows, pressedPicture } from "../parts/pointed.js";

registerKind("put", {
  prompt: "legend",
  make(field, ids, commit) {
    /** @type {[string, string][]} */
    const lines = field.lines;
    /** @type {Map<string, string>} the way round in which each part is held */
    const held = new Map(lines.map(([part]) => [part, "1"]));
    const rows = pointedRows(field, ids, commit, (answers) => {
      for (const [part, answer] of answers) if (answer) held.set(part, answer.split("-")[1]);
      picture.choose([...answers.values()].map((answer) => answer.split("-")[0]));
      layOut(answers);
    });
    const picture = pressedPicture(field.svg, field.places, (letter) => {
      rows.press(`${letter}-${held.get(rows.active())}`);
    });
    const placed = draw("g", { class: "tss-placed" });
    picture.drawing.append(placed);

    /** @param {Map<string, string>} answers */
    function layOut(answers) {
      placed.replaceChildren();
      for (const [part, answer] of answers) {
        const [letter, way] = answer.split("-");
        const at = field.at[letter];
        if (!at) continue;
        const group = draw("g", { transform: `translate(${at[0]} ${at[1]})` });
        group.innerHTML = field.pieces[part][Number(way) - 1][1];
        placed.append(group);
      }
      for (const { part, show } of trays) show(held.get(part) ?? "1");
    }
    const trays = lines.map(([part, text]) => {
      const frame = make("div", { class: "ts-tray-part" });
      const said = make("span", { class: "ts-hint", role: "status" });
      const turn = namedButton(
        "Turn it",
        () => {
          const way = held.get(part) === "1" ? "2" : "1";
          held.set(part, way);
          show(way);
          const answer = rows.answers().get(part);
          if (answer) rows.put(part, `${answer.split("-")[0]}-${way}`);
        },
        `Turn it: ${text}`,
      );
      /** @param {string} way */
      function show(way) {
        const [felt, svg] = field.pieces[part][Number(way) - 1];
        const half = Number(/data-half="([\d.]+)"/.exec(svg)?.[1] ?? 90);
        frame.innerHTML = `<svg viewBox="${-half} ${-half} ${2 * half} ${2 * half}" width="120" height="120" aria-hidden="true">${svg}</svg>`;
        said.textContent = `Way ${way}: ${felt}`;
      }
      const row = make("div", { class: "ts-tray" }, frame, make("div", {}, text, said, turn));
      return { part, row, show, turn };
    });
    return {
      element: make(
        "div",
        {},
        make("div", { class: "ts-trays" }, ...trays.map(({ row }) => row)),
        rows.element,
        picture.element,
      ),
      show: rows.show,
      setDisabled(value) {
        rows.setDisabled(value);
        for (const { turn } of trays) turn.disabled = value;
      },
      refused() {},
    };
  },
});
