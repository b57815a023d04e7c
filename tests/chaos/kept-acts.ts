import type { Page } from 'playwright-core';
import { readJournalLine } from '../../src/domain/log/journal-line.ts';

/**
 * How many acts wait in the second copy to be put back: taps that the store had not taken before their window went. The
 * app puts them back when it compares its copies, which may be after its first screen.
 */
export async function actsWaiting(page: Page): Promise<number> {
  const said = (await page.evaluate(linesOfActs)).map(readJournalLine);
  const settled = new Set(said.map((line) => line.kind === 'settled' && line.act));
  const open = said.flatMap((line) => (line.kind === 'act' && !settled.has(line.act) ? line.act : []));
  return new Set(open).size;
}

/** Runs in the page: the lines of the journal that name an act; none where there is no journal. */
async function linesOfActs(): Promise<string[]> {
  const root = await navigator.storage.getDirectory();
  const folder = await root.getDirectoryHandle('tallywright').catch(() => undefined);
  const lines: string[] = [];
  for await (const handle of folder?.values() ?? []) {
    if (handle.kind !== 'file') continue;
    // One that is folded into another meanwhile is gone: what it said stands there.
    const file = await (handle as FileSystemFileHandle).getFile().catch(() => undefined);
    const text = (await file?.text().catch(() => '')) ?? '';
    lines.push(...text.split('\n').filter((line) => /^\{"(act|settled)"/.test(line)));
  }
  return lines;
}
