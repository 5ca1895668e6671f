// One of several options.

import { registerKind } from "../kinds.js";
import { optionList } from "../parts/options.js";

registerKind("choice", {
  prompt: "legend",
  make: (field, ids, commit) => optionList(field, ids, "radio", (keys) => commit(keys[0])),
});
