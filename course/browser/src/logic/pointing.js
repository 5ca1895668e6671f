// Which line of an answer a press in a picture is meant for, and how a walk through it goes.

/**
 * The line that comes next: the first one after `line` that has no answer yet, else `line` itself.
 *
 * @param {string[]} lines
 * @param {Map<string, string>} answers
 * @param {string} line
 */
export function nextLine(lines, answers, line) {
  const at = lines.indexOf(line);
  const around = [...lines.slice(at + 1), ...lines.slice(0, at)];
  return around.find((one) => !answers.get(one)) ?? line;
}

/**
 * The place that a key leads to from another: sideways by what lies next, up and down likewise.
 *
 * @param {{ key: string, x: number, y: number }[]} places
 * @param {string} from
 * @param {string} press the key that was pressed
 * @returns {string | undefined} undefined where the key leads nowhere
 */
export function walk(places, from, press) {
  const own = places.find(({ key }) => key === from);
  if (!own) return undefined;
  if (press === "Home") return places[0].key;
  if (press === "End") return places[places.length - 1].key;
  const sideways = { ArrowRight: 1, ArrowLeft: -1 }[press];
  if (sideways !== undefined) {
    const sorted = [...places].sort((a, b) => a.x - b.x || a.y - b.y);
    const at = sorted.findIndex(({ key }) => key === from) + sideways;
    return sorted[(at + sorted.length) % sorted.length].key;
  }
  const way = { ArrowDown: 1, ArrowUp: -1 }[press];
  if (way === undefined) return undefined;
  const far = (/** @type {{ x: number, y: number }} */ one) =>
    Math.abs(one.y - own.y) + 2 * Math.abs(one.x - own.x);
  const [best] = places
    .filter(({ key, y }) => key !== from && (y - own.y) * way > 2)
    .sort((a, b) => far(a) - far(b));
  return (best ?? own).key;
}
