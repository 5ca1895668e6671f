// A number with its unit as people type it.

/**
 * The typed text with its unit replaced by a chosen one. A rest with figures in it is more than a
 * unit: nothing of it is thrown away.
 *
 * @param {string} typed
 * @param {string} unit
 */
export function withUnit(typed, unit) {
  const [whole, number, rest] = typed.match(/^((?:[eE][+-]?\d|[^\p{L}°º"″%])*)(.*)$/u) ?? [
    typed,
    typed,
    "",
  ];
  return `${(/\d/.test(rest) ? whole : number).trim()} ${unit}`.trim();
}
