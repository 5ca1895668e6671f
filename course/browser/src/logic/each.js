// Answers to the lines of a list, and the texts in which they are stored.

/**
 * What is stored: a text for each line that has an answer.
 *
 * @param {[string, string][]} answers key of each line, and of its answer or empty
 * @returns {string[]}
 */
export function entriesOf(answers) {
  return answers.filter(([, option]) => option).map(([line, option]) => `${line}=${option}`);
}

/**
 * The answer of each line, out of what is stored; what is no answer is left out.
 *
 * @param {unknown} stored
 * @returns {Map<string, string>}
 */
export function answersOf(stored) {
  const texts = Array.isArray(stored) ? stored.filter((one) => typeof one === "string") : [];
  return new Map(
    texts
      .filter((one) => one.includes("="))
      .map(
        (one) =>
          /** @type {[string, string]} */ ([
            one.slice(0, one.indexOf("=")),
            one.slice(one.indexOf("=") + 1),
          ]),
      ),
  );
}
