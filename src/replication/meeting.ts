import { type Copy, differences } from '../domain/packed/differences.ts';
import type { RunHead } from '../domain/packed/packed-run.ts';
import { countIn, entriesIn, type Parcel } from '../domain/packed/parcel.ts';
import { copyOfParcel } from '../domain/packed/parcel-copy.ts';
import type { LogStore } from '../store/log-store.ts';
import type { Exchange, Placed } from './exchange.ts';
import type { Intake } from './intake.ts';
import type { KnownEnds } from './known-ends.ts';
import { type Ledger, openLedger } from './ledger.ts';

/** Reads what the broker holds, head by head. */
export async function readLedger(exchange: Exchange, { note }: Pick<Intake, 'note'>): Promise<Ledger> {
  const { created, last } = await exchange.look();
  const ledger = openLedger(created);
  if (last > 0)
    await exchange.read({ from: 1, to: last, bodies: false }, async (batch) => {
      for (const placed of batch) await note(placed, ledger);
    });
  ledger.readTo(last);
  return ledger;
}

/**
 * Reads on where a ledger ends. False when the broker is not the one that it was read from, or has lost something since:
 * then it has to be read anew.
 */
export async function readOn(
  ledger: Ledger,
  { exchange, intake }: { exchange: Exchange; intake: Intake },
): Promise<boolean> {
  const look = await exchange.look();
  const from = ledger.last();
  if (look.last < from) return false;
  const known = ledger.at(from);
  let isOther = false;
  if (look.last > 0)
    // The last one too: after a loss another message may stand in its place.
    await exchange.read({ from: Math.max(1, from), to: look.last, bodies: true }, async (batch) => {
      const again = batch.find(({ at }) => at === from);
      isOther ||= again !== undefined && again.head !== known?.head;
      if (!isOther) await intake.take(batch, ledger);
    });
  ledger.readTo(look.last);
  return !isOther && ledger.agreesWith(look);
}

/** Thrown where a message that was read is there no more: the broker has to be read anew. */
export class LostThere extends Error {
  override readonly name = 'LostThere';
}

/**
 * Whether what was read from a place on still stands there. A broker that lost its tail gives the same places anew: then other
 * messages stand there, that one at the place among them if it was the last when it was looked at before.
 */
export async function standsFrom(exchange: Exchange, ledger: Ledger, place: number): Promise<boolean> {
  const from = Math.max(1, place);
  const known = new Map(ledger.from(from).map(({ at, head }) => [at, head]));
  if (known.size === 0) return true;
  let isOther = false;
  await exchange.read({ from, to: ledger.last(), bodies: false }, async (batch) => {
    for (const { at, head } of batch) {
      isOther ||= known.get(at) !== head;
      known.delete(at);
    }
  });
  return !isOther && known.size === 0;
}

interface Trade {
  readonly exchange: Exchange;
  readonly ledger: Ledger;
  readonly intake: Intake;
  readonly store: Pick<LogStore, 'parcel'>;
  readonly held: KnownEnds;
}

/** Takes in all that the broker holds and the store does not; what only the store has. */
export async function takeWhatIsMissing(trade: Trade): Promise<Parcel> {
  const { intake, store, held } = trade;
  for (;;) {
    const ours = copyOfParcel(await store.parcel());
    held.clear();
    for (const head of ours.heads.toSorted((a, b) => a.first - b.first)) held.add(head);
    const found = await partedFrom(ours, trade);
    // A message that could not be opened has been struck from the ledger: without it the two part elsewhere.
    if (!found) continue;
    const { here, there } = found.only;
    await pull(
      there.heads.flatMap((head) => found.places.get(head) ?? []),
      trade,
    );
    if (there.entries.length > 0) await intake.merge([{ runs: [], entries: there.entries }]);
    return { runs: ours.held(here.heads).runs, entries: [...ours.held(here.heads).entries, ...here.entries] };
  }
}

async function partedFrom(ours: Copy, { exchange, ledger, intake }: Trade) {
  const places = ledger.heads();
  let isStruck = false;
  const open = async (head: RunHead) => {
    const at = places.get(head) ?? 0;
    let placed: Placed | undefined;
    await exchange.read({ from: at, to: at, bodies: true }, async (batch) => {
      placed ??= batch.find((each) => each.at === at);
    });
    if (!placed) throw new LostThere(`nothing stands at ${at}`);
    const parcel = await intake.open(placed, { head, ledger });
    if (parcel) return entriesIn(parcel);
    ledger.strike(at);
    isStruck = true;
    throw new Error('a message cannot be opened');
  };
  try {
    const only = await differences({ here: ours, there: { heads: [...places.keys()], open } });
    return { only, places };
  } catch (error) {
    if (isStruck) return undefined;
    throw error;
  }
}

/** Messages that are not wanted are read along up to this many: to ask anew takes longer. */
const mostBetween = 16;

/** Takes in the messages at these places. */
async function pull(places: readonly number[], { exchange, ledger, intake }: Trade): Promise<void> {
  const wanted = new Set(places);
  const inOrder = [...wanted].sort((a, b) => a - b);
  for (let from = 0; from < inOrder.length; ) {
    let to = from;
    while ((inOrder[to + 1] ?? Number.POSITIVE_INFINITY) - (inOrder[to] ?? 0) <= mostBetween) to += 1;
    const range = { from: inOrder[from] ?? 0, to: inOrder[to] ?? 0, bodies: true };
    await exchange.read(range, (batch) => {
      const ofUse = batch.filter(({ at }) => wanted.delete(at));
      return intake.take(ofUse, ledger);
    });
    from = to + 1;
  }
  if (wanted.size > 0) throw new LostThere(`nothing stands at ${[...wanted].join()}`);
}

/** What of a parcel some stations wrote, and the rest. */
export function partedByStation(parcel: Parcel, isWanted: (station: string) => boolean) {
  const of = (wanted: boolean): Parcel => ({
    runs: parcel.runs.filter(({ station }) => isWanted(station) === wanted),
    entries: parcel.entries.filter(({ event }) => isWanted(event.station) === wanted),
  });
  return { own: of(true), others: of(false), count: countIn(parcel) };
}
