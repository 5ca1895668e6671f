// Lines of a table in another order.

/** @typedef {{ text: string } | string} CellData */

/** @param {CellData} cell */
export const textOf = (cell) => (typeof cell === "string" ? cell : cell.text);

/**
 * The lines by one column: figures by their size, words as people sort them; blanks stay last.
 *
 * @template {{ cells: CellData[] }} R
 * @param {readonly R[]} rows
 * @param {number} column
 * @param {boolean} down from the largest
 * @returns {R[]}
 */
export function sorted(rows, column, down) {
  const words = new Intl.Collator(undefined, { numeric: true, sensitivity: "base" });
  /** @param {R} row */
  const key = (row) => textOf(row.cells[column] ?? "").trim();
  return [...rows].sort((a, b) => {
    const [left, right] = [key(a), key(b)];
    if (!left || !right) return Number(!left) - Number(!right);
    const [x, y] = [Number.parseFloat(left), Number.parseFloat(right)];
    const order =
      Number.isNaN(x) || Number.isNaN(y) || x === y ? words.compare(left, right) : x - y;
    return down ? -order : order;
  });
}
