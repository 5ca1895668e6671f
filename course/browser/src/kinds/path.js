// A movement of the hand: moves one after the other.

import { registerKind } from "../kinds.js";
import { pathList } from "../parts/pathlist.js";

registerKind("path", {
  prompt: "words",
  make(field, _ids, commit) {
    const list = pathList({
      moves: field.moves,
      plan: field.plan,
      most: field.most,
      onChange: commit,
    });
    return {
      element: list.element,
      show: (state) => list.setMoves([state.value ?? []].flat()),
      setDisabled: list.setDisabled,
      refused() {},
    };
  },
});
