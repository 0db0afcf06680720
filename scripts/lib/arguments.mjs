// What a script was asked for. What it cannot read ends it with a sentence and code 2: a proof that ran over nothing
// because of a slip in the call would look like a proof.
import { parseArgs } from 'node:util';

/**
 * Words and switches of the call; each word has a name, and each switch stands in `flags`.
 * @param {{ usage: string, words?: readonly string[], flags?: readonly string[] }} wanted
 * @param {readonly string[]} [given]
 */
export function argumentsOf({ usage, words = [], flags = [] }, given = process.argv.slice(2)) {
  try {
    const { values, positionals } = parseArgs({
      args: [...given],
      allowPositionals: true,
      options: Object.fromEntries(flags.map((name) => [name, { type: /** @type {const} */ ('boolean') }])),
    });
    if (positionals.length > words.length)
      throw new Error(`“${positionals[words.length]}” is one word too many.`);
    return { words: positionals, has: (/** @type {string} */ flag) => values[flag] === true };
  } catch (error) {
    return refuse(`${error instanceof Error ? error.message : String(error)}\nUsage: ${usage}`);
  }
}

/**
 * A whole number from 1 on; `otherwise` where the word was left out.
 * @param {string | undefined} word
 * @param {string} name
 * @param {number} otherwise
 */
export function countOf(word, name, otherwise) {
  if (word === undefined) return otherwise;
  const count = Number(word);
  if (!Number.isInteger(count) || count < 1)
    return refuse(`${name} must be a whole number from 1 on, not “${word}”.`);
  return count;
}

/**
 * Ends the script.
 * @param {string} says
 * @returns {never}
 */
export function refuse(says) {
  console.error(says);
  process.exit(2);
}
