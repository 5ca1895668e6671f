// What only some screens need comes in files of their own, asked of the kernel once a page.

/** @import { Model } from "../types.js" */

/**
 * A part of the browser side that is not in the screens.
 *
 * @param {Model} model
 * @param {string} name
 * @returns {Promise<any>}
 */
export function chunk(model, name) {
  globalThis.twoshaftChunks ??= new Map();
  const known = globalThis.twoshaftChunks;
  const asked = known.get(name) ?? fromKernel(model, name);
  known.set(name, asked);
  asked.catch(() => known.delete(name));
  return asked;
}

/**
 * @param {Model} model
 * @param {string} name
 * @returns {Promise<any>}
 */
function fromKernel(model, name) {
  return new Promise((resolve) => {
    /** @type {(message: any, buffers: BlobPart[]) => void} */
    const hear = (message, buffers) => {
      if (message.type !== "chunk" || message.name !== name) return;
      model.off("msg:custom", hear);
      const url = URL.createObjectURL(new Blob([buffers[0]], { type: "text/javascript" }));
      const loading = import(url);
      loading.finally(() => URL.revokeObjectURL(url)).catch(() => {});
      resolve(loading);
    };
    model.on("msg:custom", hear);
    model.send({ type: "chunk", name });
  });
}
