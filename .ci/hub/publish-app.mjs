/** Puts a build where tablets fetch it, without taking away what older pages of it still ask for. */
import { cpSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readIfThere, writeWhole } from './data-folder.mjs';

/** A tablet that was switched off for so long fetches the new build first. */
const keptFor = 30 * 86_400_000;

/**
 * Whether `built` is older than what it is built from.
 *
 * @param {string} built folder of a build
 * @param {readonly string[]} sources files and folders
 */
export function isOutOfDate(built, sources) {
  const page = join(built, 'index.html');
  return !existsSync(page) || newest(sources) > statSync(page).mtimeMs;
}

/** @param {readonly string[]} paths @returns {number} ms UTC */
function newest(paths) {
  const times = paths.flatMap((path) => {
    const entry = statSync(path);
    return entry.isDirectory() ? newest(readdirSync(path).map((name) => join(path, name))) : entry.mtimeMs;
  });
  return Math.max(0, ...times);
}

/**
 * Copies `built` into `app`. Files of `assets`, whose names say what is in them, come first and stay for 30 days after the
 * last build that had them (`seen` remembers when that was); then come the others, the page last.
 *
 * @param {{ built: string, app: string, seen: string, now: number }} what folders, a file, and ms UTC
 */
export function publishApp({ built, app, seen, now }) {
  const assets = join(app, 'assets');
  mkdirSync(assets, { recursive: true });
  /** @type {Record<string, number>} */
  const lastSeen = readIfThere(seen) ?? {};
  for (const name of readdirSync(join(built, 'assets'))) {
    lastSeen[name] = now;
    if (!existsSync(join(assets, name))) copyWhole(join(built, 'assets', name), join(assets, name));
  }
  const others = readdirSync(built).filter((name) => name !== 'assets');
  // What the page and the service worker name is there before they name it.
  const last = ['sw.js', 'index.html'];
  for (const name of [...others.filter((other) => !last.includes(other)), ...last]) {
    copyWhole(join(built, name), join(app, name));
  }
  for (const name of readdirSync(app)) {
    if (name !== 'assets' && !others.includes(name)) rmSync(join(app, name), { recursive: true });
  }
  for (const name of readdirSync(assets)) {
    if (now - (lastSeen[name] ?? 0) <= keptFor) continue;
    rmSync(join(assets, name));
    delete lastSeen[name];
  }
  writeWhole(seen, lastSeen);
}

/** A tablet that asks meanwhile gets the old file or the new one. @param {string} from @param {string} to */
function copyWhole(from, to) {
  const beside = `${to}.new`;
  rmSync(beside, { recursive: true, force: true });
  cpSync(from, beside, { recursive: true });
  if (statSync(beside).isDirectory()) rmSync(to, { recursive: true, force: true });
  renameSync(beside, to);
}
