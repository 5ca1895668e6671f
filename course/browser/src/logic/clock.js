// When something was saved, as a mechanic reads it.

/**
 * The time of day, with its date unless that is today.
 *
 * @param {string} iso a moment, as ISO 8601 writes it
 * @param {Date} [now]
 * @returns {string} empty if the moment cannot be read
 */
export function clock(iso, now = new Date()) {
  const time = new Date(iso);
  if (Number.isNaN(time.getTime())) return "";
  /** @param {number} number */
  const two = (number) => String(number).padStart(2, "0");
  const hours = `${two(time.getHours())}:${two(time.getMinutes())}`;
  const day = `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
  return now.toDateString() === time.toDateString() ? hours : `${day} ${hours}`;
}
