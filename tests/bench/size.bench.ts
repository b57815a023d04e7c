/** What a tablet downloads, in bytes after gzip, and whether all of it is kept on the tablet. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { firstScreen } from '../../.ci/first-screen.mjs';
import type { Bench } from './harness/bench.ts';
import type { Measured } from './harness/row.ts';

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const built = bench.built();
  const { scripts, styles } = firstScreen(built);
  const worker = join(built, 'sw.js');
  const assets = readdirSync(join(built, 'assets'));
  const allScripts = assets.filter((name) => name.endsWith('.js')).map((name) => join(built, 'assets', name));
  const kept = readFileSync(worker, 'utf8');
  const notKept = assets.filter((name) => !kept.includes(`assets/${name}`));
  const row = (id: string, work: string, paths: readonly string[]): Measured => ({
    id,
    work,
    unit: 'B',
    figures: { ours: [gzipped(paths)] },
    bars: [],
  });
  return [
    {
      ...row('size', 'first screen, scripts, gzip', scripts),
      bars: [{ kind: 'at-most', value: 45_000 }],
    },
    row('size-styles', 'first screen, style sheets, gzip', styles),
    row(
      'size-on-demand',
      'scripts that come on demand, gzip',
      allScripts.filter((path) => !scripts.includes(path)),
    ),
    row('size-worker', 'service worker, gzip', [worker]),
    {
      id: 'size-not-kept',
      work: 'files of the build that the service worker does not keep',
      unit: 'files',
      figures: { ours: [notKept.length] },
      bars: [{ kind: 'at-most', value: 0 }],
    },
  ];
}

function gzipped(paths: readonly string[]): number {
  return paths.reduce((sum, path) => sum + gzipSync(readFileSync(path), { level: 9 }).length, 0);
}
