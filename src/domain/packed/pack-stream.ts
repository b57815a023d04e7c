import { type Entry, type Link, noLink } from '../log/chain.ts';
import { type GrowingRun, growingRun } from './growing-run.ts';
import { mostInRun } from './pack-run.ts';
import type { PackedRun } from './packed-run.ts';
import type { Parcel } from './parcel.ts';
import type { TextEntry } from './text-entry.ts';
import { entriesOf } from './unpack-run.ts';

/** Packs entries as they come, so that a long log is never held as entries. */
interface PackStream {
  /**
   * Takes an entry that has just been held against its link, none of them twice. A run has entries of one `kind` as far as
   * can be: those that the log has already apart from those that are new to it.
   */
  readonly take: (entry: TextEntry, kind: string) => void;
  /** All that was taken, once. `hasMet` tells whether an entry with this link was among it. */
  readonly parcel: (hasMet: (link: Link) => boolean) => Parcel;
}

/** How many entries a run may have, at least and at most. */
export interface RunLengths {
  readonly shortest: number;
  readonly longest: number;
}

const usualLengths: RunLengths = { shortest: 256, longest: mostInRun };

/** Entries that came one after the other and follow on from each other: a run, or too few for one. */
interface Piece {
  readonly first: number;
  readonly last: number;
  readonly prev: Link;
  readonly link: Link;
  readonly of: PackedRun | readonly Entry[];
}

/**
 * Packs a log for a merge: in runs is only what `placeEntries` finds a place for under its own identity, in whatever store,
 * unless that store says otherwise; what may lie on a branch of a cloned station, or hangs in the air, stays single.
 */
export function packStream({ shortest, longest }: RunLengths = usualLengths): PackStream {
  const stations = new Map<string, Piece[]>();
  let open: GrowingRun | undefined;
  let openKind = '';

  function close(): void {
    if (!open) return;
    const { station, first, last, prev, link } = open.ends();
    const pieces = stations.get(station) ?? [];
    stations.set(station, pieces);
    const of = open.length() < shortest ? open.entries() : open.packed();
    pieces.push({ first, last, prev, link, of });
    open = undefined;
  }

  return {
    take(entry, kind) {
      const length = open?.length() ?? 0;
      const isCut = length === longest || (kind !== openKind && length >= shortest);
      if (isCut || !open?.take(entry)) {
        close();
        open = growingRun(entry);
      }
      openKind = kind;
    },
    parcel(hasMet) {
      close();
      const runs: PackedRun[] = [];
      const entries: Entry[] = [];
      for (const pieces of stations.values()) {
        const main = mainPieces(pieces, hasMet);
        for (const piece of pieces) {
          if (!isRun(piece.of)) for (const entry of piece.of) entries.push(entry);
          else if (main.has(piece)) runs.push(piece.of);
          else for (const entry of entriesOf(piece.of)) entries.push(entry);
        }
      }
      return { runs, entries };
    },
  };
}

const isRun = (of: Piece['of']): of is PackedRun => 'columns' in of;

/** The runs of a station that lie on its main chain, as long as each follows a run that does, or begins where nothing is known. */
function mainPieces(pieces: readonly Piece[], hasMet: (link: Link) => boolean): ReadonlySet<Piece> {
  const main = new Set<Piece>();
  const inOrder = pieces.toSorted((a, b) => a.first - b.first);
  const begins = ({ first, prev }: Piece) => (first === 1 ? prev === noLink : !hasMet(prev));
  const follows = (piece: Piece, before: Piece) => main.has(before) && before.link === piece.prev;
  const isNumberedNext = (piece: Piece, before: Piece | undefined) => before?.last === piece.first - 1;
  const overlap = inOrder.some(({ first }, at) => first <= (inOrder[at - 1]?.last ?? 0));
  if (!overlap) {
    inOrder.forEach((piece, at) => {
      const before = inOrder[at - 1];
      const isMain = before && isNumberedNext(piece, before) ? follows(piece, before) : begins(piece);
      if (isRun(piece.of) && isMain) main.add(piece);
    });
    return main;
  }
  // A cloned station: its main chain is the one that came first. Only then is it surely before all that tells another story.
  if (pieces[0] !== inOrder[0]) return main;
  for (const [at, piece] of pieces.entries()) {
    const before = pieces[at - 1];
    const isMain = before ? isNumberedNext(piece, before) && follows(piece, before) : begins(piece);
    if (!isMain || !isRun(piece.of)) break;
    main.add(piece);
  }
  return main;
}
