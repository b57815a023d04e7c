import { type Exchange, LaneMoved, laneKey } from './exchange.ts';
import { intake } from './intake.ts';
import type { Invitation } from './joining-link.ts';
import { knownEnds } from './known-ends.ts';
import { readLedger } from './meeting.ts';
import { type DeskParts, messageDesk } from './message.ts';
import { eventsKeyOf, type Seat, seatLetters } from './shop-key.ts';

interface Claim {
  readonly invitation: Invitation;
  /** The name of the tablet that joins: one that joins again gets its seat back. */
  readonly tablet: string;
  readonly open: (seat: Seat) => Promise<Exchange>;
  readonly random: DeskParts['random'];
}

/**
 * Takes the first seat that nobody has, or the tablet's own; undefined when all are taken. Rejects where the broker cannot be
 * reached, and with `Refused` where it does not let the tablet in.
 */
export async function takeSeat(claim: Claim): Promise<Seat | undefined> {
  const { free, own } = await seatsOf(claim);
  if (own) return own;
  for (const seat of free) if (await tryToTake(seat, claim)) return seat;
  return undefined;
}

async function deskOf({ invitation, random }: Claim, seat: Seat) {
  return messageDesk({ shop: invitation.shop, seat, key: await eventsKeyOf(invitation.key), random });
}

/** Every seat can read: the first one looks for the others. */
async function seatsOf(claim: Claim) {
  const [first] = seatLetters;
  const exchange = await claim.open(first);
  try {
    const ledger = await readLedger(
      exchange,
      intake({
        store: { merge: () => Promise.reject(new Error('nothing is taken in here')) },
        desk: await deskOf(claim, first),
        held: knownEnds(),
        now: () => 0,
        setAside: () => undefined,
        onMerged: () => undefined,
        onWanted: () => undefined,
      }),
    );
    const { counts } = await exchange.look();
    return {
      own: seatLetters.find((seat) => ledger.takenBy(seat) === claim.tablet),
      free: seatLetters.filter((seat) => !counts.has(laneKey({ seat, lane: 'ev' }))),
    };
  } finally {
    exchange.close();
  }
}

/** False when another tablet was quicker. */
async function tryToTake(seat: Seat, claim: Claim): Promise<boolean> {
  const exchange = await claim.open(seat);
  try {
    const desk = await deskOf(claim, seat);
    const said = { kind: 'seat1', tablet: claim.tablet } as const;
    await exchange.push([await desk.seal(said, { lane: 'ev', body: new Uint8Array(), after: 0 })]);
    return true;
  } catch (error) {
    if (error instanceof LaneMoved) return false;
    throw error;
  } finally {
    exchange.close();
  }
}
