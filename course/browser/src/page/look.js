// What is arranged for a learner of how pages look: large print, another ground.

const PARTS = ["print", "colour"];

/**
 * Says it on the page's root, where the style sheet hears it; a look that knows nobody says nothing.
 *
 * @param {Record<string, string> | undefined} look
 */
export function wear(look) {
  for (const part of PARTS) {
    const value = look?.[part];
    if (value === undefined) continue;
    if (value) document.documentElement.setAttribute(`data-ts-${part}`, value);
    else document.documentElement.removeAttribute(`data-ts-${part}`);
  }
}

/** Takes it off again: nobody is signed in. */
export function takeOff() {
  wear({ print: "", colour: "" });
}
