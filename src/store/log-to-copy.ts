import type { Entry } from '../domain/log/chain.ts';
import { countIn, type Parcel } from '../domain/packed/parcel.ts';
import { readInStore } from './open-to-read.ts';
import { wholeParcel } from './reads-of-sealed.ts';

/** The log that is to be copied, or that a copy is held against: what lies in the store of a name, or these entries, a line of JSON each. */
export type LogSource =
  | { readonly kind: 'store'; readonly name: string }
  | { readonly kind: 'lines'; readonly lines: readonly string[] };

/** `least` is how many entries it must have: what is on the screen would else be missing from the copy without a word. */
export interface CopyOf {
  readonly log: LogSource;
  readonly least: number;
}

/** The whole log, what is sealed in its runs. Rejects when it cannot be read, or lacks what it ought to have. */
export async function readLogToCopy({ log, least }: CopyOf): Promise<Parcel> {
  const parcel =
    log.kind === 'store'
      ? await readInStore(log.name, wholeParcel)
      : { runs: [], entries: parsed(log.lines) };
  if (countIn(parcel) < least) throw new Error('the log on disk lacks entries that are shown');
  return parcel;
}

/** Lines that this app has just written. */
function parsed(lines: readonly string[]): readonly Entry[] {
  return lines.map((line) => JSON.parse(line) as Entry);
}
