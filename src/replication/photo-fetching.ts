import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, concatBytes } from '@noble/hashes/utils.js';
import type { PhotoHash } from '../domain/log/photo-facts.ts';
import type { Bytes } from '../store/backup/sealing-keys.ts';
import { type Exchange, laneKey, type Placed } from './exchange.ts';
import type { AsideReason } from './message.ts';
import type { PhotoDesk, PieceHead } from './photo-message.ts';
import type { PhotoShelf } from './photo-shelf.ts';
import type { LaneThere } from './photos-there.ts';
import type { SetAside } from './replica-status.ts';

interface Piece {
  readonly placed: Placed;
  readonly head: PieceHead;
}

interface FetchingParts {
  readonly desk: PhotoDesk;
  readonly shelf: PhotoShelf;
  /** Asked before each piece. */
  readonly turn: () => Promise<void>;
  readonly onAside: (message: SetAside) => void;
}

/** Fetches photos piece by piece. What came of one stays, so that another line goes on from there. */
export function photoFetching({ desk, shelf, turn, onAside }: FetchingParts) {
  /** Pieces of the photo that is under way, by the sealed heads that they came with. */
  const came = new Map<string, Bytes>();
  let underWay: PhotoHash | undefined;
  /** Lanes that brought nothing of use, as they stood there. */
  const useless = new Set<string>();
  let isFull = false;
  const told = new Set<string>();

  const asItStands = (lane: LaneThere) => `${laneKey(lane)}/${lane.count}`;
  const mayHave = (lane: LaneThere) => !useless.has(asItStands(lane));

  function setAside({ at, seat, head }: Placed, reason: AsideReason, problem: string): void {
    const key = `${at}/${head}/${reason}`;
    if (!told.has(key)) onAside({ at, seat, reason, problem });
    told.add(key);
  }

  /** What each message of a lane brings, by the number of the piece. */
  async function piecesOn(lane: LaneThere, exchange: Exchange): Promise<ReadonlyMap<number, Piece>> {
    const found: Placed[] = [];
    await exchange.read({ from: 1, bodies: false, of: lane }, async (batch) => void found.push(...batch));
    const pieces = new Map<number, Piece>();
    for (const placed of found) {
      const read = await desk.openHead(placed);
      if (read.kind === 'aside') setAside(placed, read.reason, read.problem);
      else if (read.what.kind === 'photo1') {
        const { head } = read.what;
        if (pieces.has(head.piece)) setAside(placed, 'repeated', 'the same piece stands before it');
        else pieces.set(head.piece, { placed, head });
      }
    }
    return pieces;
  }

  async function fetchPiece({ placed, head }: Piece, exchange: Exchange): Promise<Bytes | undefined> {
    const before = came.get(placed.head);
    if (before) return before;
    await turn();
    let brought: Placed | undefined;
    await exchange.read({ from: placed.at, to: placed.at, bodies: true }, async (batch) => {
      brought ??= batch.find((each) => each.head === placed.head);
    });
    if (!brought) return undefined;
    const read = await desk.openPiece(brought, head);
    if (read.kind === 'aside') {
      setAside(placed, read.reason, read.problem);
      return undefined;
    }
    came.set(placed.head, read.what);
    return read.what;
  }

  /** The bytes of the photo as they lie on a lane; undefined when that has not all of them, or others. */
  async function fetchFrom(lane: LaneThere, exchange: Exchange): Promise<Bytes | undefined> {
    const pieces = await piecesOn(lane, exchange);
    const whole: Bytes[] = [];
    for (let number = 0; number < lane.of; number += 1) {
      const piece = pieces.get(number);
      const bytes = piece && (await fetchPiece(piece, exchange));
      if (!bytes) return undefined;
      whole.push(bytes);
    }
    const photo = Uint8Array.from(concatBytes(...whole));
    if (bytesToHex(sha256(photo)) === lane.photo) return photo;
    const first = pieces.get(0);
    if (first) setAside(first.placed, 'malformed', 'a photo is not what its hash promises');
    return undefined;
  }

  return {
    mayHave,
    /** Whether the tablet had no room for a photo. */
    isFull: () => isFull,
    /** There may be room again; and on a broker that began anew, lanes are others under the same names. */
    begin(isAnew: boolean): void {
      isFull = false;
      if (isAnew) useless.clear();
    },
    async fetch(photo: PhotoHash, lanes: readonly LaneThere[], exchange: Exchange): Promise<void> {
      if (underWay !== photo) came.clear();
      underWay = photo;
      for (const lane of lanes.filter(mayHave)) {
        const bytes = await fetchFrom(lane, exchange);
        const kept = bytes && (await shelf.keep(photo, bytes).catch(() => 'no-room' as const));
        isFull = kept === 'no-room';
        if (kept) break;
        useless.add(asItStands(lane));
      }
      came.clear();
    },
  };
}
