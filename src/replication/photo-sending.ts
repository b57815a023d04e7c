import type { PhotoHash } from '../domain/log/photo-facts.ts';
import type { Bytes } from '../store/backup/sealing-keys.ts';
import { type Exchange, LaneMoved, type LaneOf, type Placed } from './exchange.ts';
import { type PhotoDesk, photoLane, pieceOf, piecesOf } from './photo-message.ts';
import type { LaneThere } from './photos-there.ts';
import type { Seat } from './shop-key.ts';

interface Sending {
  readonly exchange: Exchange;
  readonly desk: PhotoDesk;
  readonly seat: Seat;
  /** Asked before each piece. */
  readonly turn: () => Promise<void>;
}

/**
 * Puts the pieces of a photo that are not there yet, each only where the one before it was the last. Resolves with what stands
 * there then; undefined when another window of this tablet is at it, too.
 */
export async function sendPhoto(
  { photo, bytes }: { readonly photo: PhotoHash; readonly bytes: Bytes },
  { exchange, desk, seat, turn }: Sending,
): Promise<LaneThere | undefined> {
  const of = piecesOf(bytes.length);
  const lane = photoLane(photo, of);
  const there = await piecesThere({ seat, lane }, { exchange, desk });
  const begun = there.areSound ? there.count : 0;
  let after = there.last;
  try {
    for (let piece = begun; piece < of; piece += 1) {
      await turn();
      const head = { hash: photo, piece, of, bytes: bytes.length };
      const replaces = piece === 0 && there.count > 0 && { replaces: true as const };
      const how = { lane, body: pieceOf(bytes, head), after, ...replaces };
      const [at = 0] = await exchange.push([await desk.seal({ kind: 'photo1', head }, how)]);
      after = at;
    }
  } catch (error) {
    if (error instanceof LaneMoved) return undefined;
    throw error;
  }
  return { seat, lane, photo, of, count: of };
}

/** Puts one message in the place of all pieces of a photo that was let go. */
export async function clearLane(
  { photo, of }: LaneThere,
  { exchange, desk }: Pick<Sending, 'exchange' | 'desk'>,
): Promise<void> {
  const how = { lane: photoLane(photo, of), body: new Uint8Array(), replaces: true } as const;
  await exchange.push([await desk.seal({ kind: 'gone1', head: { hash: photo } }, how)]);
}

/** How many pieces stand on a lane, whether they are the first ones and in their order, and where the last message stands. */
async function piecesThere(of: LaneOf, { exchange, desk }: Pick<Sending, 'exchange' | 'desk'>) {
  const found: Placed[] = [];
  await exchange.read({ from: 1, bodies: false, of }, async (batch) => void found.push(...batch));
  const heads = await Promise.all(found.map(desk.openHead));
  const areSound = heads.every(
    (head, at) => head.kind === 'opened' && head.what.kind === 'photo1' && head.what.head.piece === at,
  );
  return { count: found.length, areSound, last: found.at(-1)?.at ?? 0 };
}
