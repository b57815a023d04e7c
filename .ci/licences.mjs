import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const legalComment = /\/\*(?:!|\*)(?:(?!\*\/)[\s\S])*?@license(?:(?!\*\/)[\s\S])*?\*\//g;

/**
 * What a package says of its licence: its licence and notice files, and the legal comments of its sources.
 *
 * @param {string} folder
 */
function wordsOf(folder) {
  const files = readdirSync(folder).filter((name) => /^(licen[cs]e|notice|copying)/i.test(name));
  const texts = files.map((name) => readFileSync(join(folder, name), 'utf8').trim());
  const sources = existsSync(join(folder, 'lib'))
    ? readdirSync(join(folder, 'lib')).filter((name) => name.endsWith('.js'))
    : [];
  for (const name of sources) {
    const text = readFileSync(join(folder, 'lib', name), 'utf8');
    for (const [comment] of text.matchAll(legalComment)) {
      texts.push(comment.replace(/^\/\*[!*]?|\*\/$|^[ \t]*\*[ \t]?/gm, '').trim());
    }
  }
  return texts;
}

/** What a package has compiled in of others, and says so only in its README. */
const compiledIn = new Map([
  [
    'zxing-wasm',
    'Its WebAssembly is compiled from ZXing-C++ (github.com/zxing-cpp/zxing-cpp), Apache-2.0, as is ZXingWasm.cpp of its own.',
  ],
]);

/**
 * The licences of the packages that the app is built from, each text once, under the names of those it covers: the
 * built scripts have no comments any more.
 */
export function licencesOfParts() {
  const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8'));
  const covered = new Map();
  for (const [folder, { dev, devOptional, optional, version, license }] of Object.entries(packages)) {
    if (!folder || dev || devOptional || optional || !existsSync(folder)) continue;
    const bare = folder.slice(folder.lastIndexOf('node_modules/') + 'node_modules/'.length);
    const name = `${bare} ${version}`;
    const compiled = compiledIn.get(bare);
    const texts = [`Licence: ${license ?? 'see below'}`, ...wordsOf(folder), ...(compiled ? [compiled] : [])];
    for (const text of new Set(texts)) {
      covered.set(text, [...(covered.get(text) ?? []), name]);
    }
  }
  const parts = [...covered].map(([text, names]) => `${names.join(', ')}\n\n${text}\n`);
  return ['The parts that this app is built from, and their licences.\n', ...parts].join(
    `\n${'-'.repeat(72)}\n\n`,
  );
}
