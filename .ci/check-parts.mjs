/** Checks that no built files import each other in a circle: they would be run in an order that nobody chose. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './tools.mjs';

const folder = join(root, 'dist/assets');
const names = readdirSync(folder).filter((name) => name.endsWith('.js'));
const imports = new Map(
  names.map((name) => {
    const text = readFileSync(join(folder, name), 'utf8');
    const found = text.matchAll(/\b(?:from|import)\s*(["'`])\.\/([^"'`]+\.js)\1/g);
    return [name, [...new Set([...found].map(([, , needed]) => needed ?? ''))]];
  }),
);
if (![...imports.values()].some((needed) => needed.length > 0)) throw new Error('No file imports another.');

/** @type {Set<string>} */
const sound = new Set();

/** The circle that a file is part of, or reaches. @param {string} name @param {readonly string[]} way @returns {readonly string[]} */
function circleFrom(name, way) {
  if (way.includes(name)) return [...way.slice(way.indexOf(name)), name];
  if (sound.has(name)) return [];
  for (const needed of imports.get(name) ?? []) {
    const circle = circleFrom(needed, [...way, name]);
    if (circle.length > 0) return circle;
  }
  sound.add(name);
  return [];
}

const circle = names.map((name) => circleFrom(name, [])).find((found) => found.length > 0);
console.log(
  circle ? `In a circle: ${circle.join(' → ')}` : `${names.length} files, none imports itself round about.`,
);
process.exitCode = circle ? 1 : 0;
