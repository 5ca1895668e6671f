// The unit in section, with nothing to build: to look at and to learn the names.

/** @import { Render } from "../types.js" */

import { beside, make } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { photographs } from "../parts/photographs.js";
import { unitPicture } from "../parts/unit_picture.js";

/** @type {Render} */
export function renderUnitSection({ model, el }) {
  const own = photographs(model);
  const picture = unitPicture(model.get("picture"), {
    onChoose: (part) => own.show("part", [part]),
  });
  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks("Where does each part lie?", {
      first: picture.choose,
      begin: "choose a part",
      who: "",
    }),
    screen.alert,
    make("p", { class: "ts-finding" }, model.get("finding")),
    ...(own.any("part") ? [beside(picture.nodes, [own.node])] : picture.nodes),
  );
  return () => {
    own.close();
    screen.close();
  };
}
