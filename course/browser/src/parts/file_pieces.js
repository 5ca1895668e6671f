// A chosen file goes to the kernel in pieces: one message may not be as large as a file.

/** @import { Model } from "../types.js" */

const PIECE = 512 * 1024;

/** @param {Uint8Array} bytes */
function base64(bytes) {
  let text = "";
  for (let i = 0; i < bytes.length; i += 0x8000) {
    text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  }
  return btoa(text);
}

/**
 * Sends a file.
 *
 * @param {Model} model
 * @param {string} field
 * @param {File} file
 */
export async function sendFile(model, field, file) {
  let at = 0;
  do {
    const piece = new Uint8Array(await file.slice(at, at + PIECE).arrayBuffer());
    const first = at === 0;
    at += PIECE;
    const last = at >= file.size;
    model.send({ type: "file", field, name: file.name, data: base64(piece), first, last });
  } while (at < file.size);
}
