import type { IDBPTransaction } from 'idb';
import type { Entry } from '../domain/log/chain.ts';
import type { ShopEvent } from '../domain/log/event.ts';
import { actMark } from '../domain/packed/pack-run.ts';
import { entriesOf } from '../domain/packed/unpack-run.ts';
import type { Act } from './log-store.ts';
import { openSealed, type SealedRun } from './sealed-reads.ts';
import type { ShopSchema } from './shop-schema.ts';

/**
 * What the sealed runs of a store have of an act; nothing when it was never stored, or is young. A run keeps no names of
 * taps, only marks: they say where to look, and what stands there says whether it is the act.
 */
export async function sealedAct(
  tx: IDBPTransaction<ShopSchema, ('events' | 'heads' | 'runs' | 'packs')[], 'readwrite'>,
  act: Act,
): Promise<readonly Entry<ShopEvent>[]> {
  let run = await tx.objectStore('runs').openCursor(null, 'prev');
  while (run) {
    const { value: record } = run;
    const pack = await tx.objectStore('packs').get([record.station, record.seq]);
    const found = actIn({ record, pack }, act);
    if (found.length > 0) return found;
    run = await run.continue();
  }
  return [];
}

function actIn(sealed: SealedRun, { act, drafts }: Act): readonly Entry<ShopEvent>[] {
  const mark = actMark(act);
  const run = openSealed(sealed);
  if (!run?.columns.act.includes(mark)) return [];
  const entries = entriesOf(run) as readonly Entry<ShopEvent>[];
  const wanted = drafts.map((draft) => JSON.stringify(draft));
  for (let from = run.columns.act.indexOf(mark); from >= 0; from = run.columns.act.indexOf(mark, from + 1)) {
    const found = entries.slice(from, from + drafts.length);
    if (found.map(({ event }) => asDraft(event)).join() === wanted.join()) return found;
  }
  return [];
}

function asDraft({ station, seq, stamp, ...draft }: ShopEvent): string {
  return JSON.stringify(draft);
}
