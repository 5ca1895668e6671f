// The prebuilt JupyterLab extension: what JupyterLab looks for when it loads the file of this name.

import { NAME, plugins } from "./opener.js";

/** @type {any} */
let shared; // JupyterLab's own packages, by name and version

/**
 * One of JupyterLab's packages.
 *
 * @param {string} name
 */
async function need(name) {
  /** @type {any[]} */
  const versions = Object.values(shared[name] || {});
  if (!versions.length) throw new Error(`${name} is not there`);
  const entry = versions.find((version) => version.loaded) || versions[0];
  return (await entry.get())();
}

window._JUPYTERLAB ??= {};
window._JUPYTERLAB[NAME] = {
  /** @param {any} scope */
  init: (scope) => {
    shared = scope;
  },
  /** @param {string} module */
  get: async (module) => {
    if (module !== "./extension") throw new Error(`${NAME} has no ${module}`);
    const made = await plugins(need);
    return () => ({ __esModule: true, default: made });
  },
};
