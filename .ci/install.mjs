/** Installs the packages when the lock file asks for others than are there. Uses nothing that must be installed first. */
import { execSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** @typedef {{ version?: string, integrity?: string, optional?: boolean }} Locked */

/** @param {string} path below the project @returns {Record<string, Locked>} */
function packagesIn(path) {
  try {
    return JSON.parse(readFileSync(new URL(`../${path}`, import.meta.url), 'utf8')).packages;
  } catch {
    return {};
  }
}

export function installWhatIsMissing() {
  const present = packagesIn('node_modules/.package-lock.json');
  const missing = Object.entries(packagesIn('package-lock.json')).filter(
    ([path, wanted]) =>
      path !== '' && present[path]?.integrity !== wanted.integrity && !(wanted.optional && !present[path]),
  );
  if (missing.length === 0) return;
  console.log(`Installing packages (${missing.length} are missing or of another version) …`);
  execSync('npm ci', { stdio: 'inherit', cwd: new URL('..', import.meta.url) });
}
