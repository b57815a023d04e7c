/** The templates of the hub's configuration and pages: `%words%` in files of shared/hub. */
import { readFileSync } from 'node:fs';

/**
 * @param {string} text with `%words%`
 * @param {Readonly<Record<string, string>>} values what each of them becomes, as it is to stand there
 * @throws {Error} when a word has no value, or a value no word
 */
export function fill(text, values) {
  const unused = new Set(Object.keys(values));
  const filled = text.replace(/%([a-z][a-z0-9]*)%/gi, (whole, word) => {
    const value = values[word];
    if (value === undefined) throw new Error(`The template asks for ${whole}, which nobody gave.`);
    unused.delete(word);
    return value;
  });
  if (unused.size > 0) throw new Error(`The template has no place for ${[...unused].join(', ')}.`);
  return filled;
}

/** @param {string} name of a file in shared/hub */
export const template = (name) => readFileSync(new URL(`../../shared/hub/${name}`, import.meta.url), 'utf8');
