// Any number of several options.

import { registerKind } from "../kinds.js";
import { optionList } from "../parts/options.js";

registerKind("choices", {
  prompt: "legend",
  make: (field, ids, commit) => optionList(field, ids, "checkbox", commit),
});
