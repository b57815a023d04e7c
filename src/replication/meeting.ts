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
 * Tells, each time it is asked, whether the broker still holds what a ledger that was just read says, as far as that was read. A
 * broker that lost its tail gives the same places anew, even between two looks: so what has come since is not believed, and the
 * ledger has to be read anew.
 */
export function stillStands({
  exchange,
  ledger,
}: Pick<Trade, 'exchange' | 'ledger'>): () => Promise<boolean> {
  const whole = ledger.last();
  /** How far the ledger was when it was behind at the last look. */
  let behind = -1;
  return async () => {
    const look = await exchange.look();
    const isBehind = look.last > ledger.last();
    // What the broker has since is on its way; if nothing of it has come until the next look, it never will.
    if (isBehind && behind !== ledger.last()) {
      behind = ledger.last();
      return true;
    }
    return ledger.last() === whole && ledger.agreesWith(look) && (await lastStands(exchange, ledger));
  };
}

/** Whether the last message noted is the one that stands there: every loss of a tail takes that one, too. */
async function lastStands(exchange: Exchange, ledger: Ledger): Promise<boolean> {
  const line = ledger.lastLine();
  if (!line) return true;
  let stands = false;
  await exchange.read({ from: line.at, to: line.at, bodies: false }, async (batch) => {
    stands ||= batch.some(({ at, head }) => at === line.at && head === line.head);
  });
  return stands;
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
    const parcel = placed && (await intake.open(placed, { head, ledger }));
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
    await exchange.read(range, (batch) =>
      intake.take(
        batch.filter(({ at }) => wanted.has(at)),
        ledger,
      ),
    );
    from = to + 1;
  }
}

/** What of a parcel some stations wrote, and the rest. */
export function partedByStation(parcel: Parcel, isWanted: (station: string) => boolean) {
  const of = (wanted: boolean): Parcel => ({
    runs: parcel.runs.filter(({ station }) => isWanted(station) === wanted),
    entries: parcel.entries.filter(({ event }) => isWanted(event.station) === wanted),
  });
  return { own: of(true), others: of(false), count: countIn(parcel) };
}
