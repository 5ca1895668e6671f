// The unit in section, with nothing to build: to look at and to learn the names.

/** @import { Render } from "../types.js" */

import { make } from "../page/dom.js";
import { openScreen } from "../page/screen.js";
import { unitPicture } from "../parts/unit_picture.js";

/** @type {Render} */
export function renderUnitSection({ model, el }) {
  const picture = unitPicture(model.get("picture"));
  const screen = openScreen({ model, el }, { kind: "rig" });
  screen.show(
    screen.asks("Where does each part lie?", {
      first: picture.choose,
      begin: "choose a part",
      who: "",
    }),
    screen.alert,
    make("p", { class: "ts-finding" }, model.get("finding")),
    ...picture.nodes,
  );
  return screen.close;
}
