// What each form and rig brings along: it looks for the screens that the page has loaded already,
// and asks the kernel for them, once a page, where nothing has (no extension, or another version).

/** @import { Model, Render, View } from "./types.js" */
/** @typedef {{ screens: Record<string, Render> }} Screens */

/**
 * The screens, from the kernel.
 *
 * @param {Model} model
 * @returns {Promise<Screens>}
 */
function fromKernel(model) {
  return new Promise((resolve, reject) => {
    const kernel = model.widget_manager?.kernel;
    /** @param {() => void} how */
    const done = (how) => {
      model.off("msg:custom", hear);
      kernel?.statusChanged?.disconnect(onStatus);
      how();
    };
    /** @type {(message: any, buffers: BlobPart[]) => void} */
    const hear = (message, buffers) => {
      if (message.type !== "screens") return;
      const url = URL.createObjectURL(new Blob([buffers[0]], { type: "text/javascript" }));
      const loading = import(url);
      loading.finally(() => URL.revokeObjectURL(url)).catch(() => {});
      done(() => resolve(loading));
    };
    /** @type {(sender: unknown, status: string) => void} */
    const onStatus = (_, status) => {
      if (!["restarting", "autorestarting", "terminating", "dead"].includes(status)) return;
      done(() => reject(new Error("the notebook's engine has stopped")));
    };
    model.on("msg:custom", hear);
    kernel?.statusChanged?.connect(onStatus);
    model.send({ type: "screens" });
  });
}

/**
 * @param {Model} model
 * @returns {Promise<Screens>}
 */
async function screensOfPage(model) {
  globalThis.twoshaftScreens ??= new Map();
  const known = globalThis.twoshaftScreens;
  const loaded = known.get(SCREENS_ID);
  if (loaded) {
    const found = await loaded.catch(() => null);
    if (found) return found;
  }
  const asked = known.get(SCREENS_ID) ?? fromKernel(model);
  known.set(SCREENS_ID, asked);
  asked.catch(() => known.delete(SCREENS_ID));
  return asked;
}

export default {
  /** @param {View} view */
  async render(view) {
    const { screens } = await screensOfPage(view.model);
    return screens[view.model.get("_screen")](view);
  },
};
