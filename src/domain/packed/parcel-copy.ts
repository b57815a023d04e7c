import type { Copy } from './differences.ts';
import type { RunHead } from './packed-run.ts';
import { entriesIn, type Parcel } from './parcel.ts';
import { headOfEntry, headOfRun } from './stretch.ts';

/** A parcel as one of two copies, and what of it is under some of its heads. */
export function copyOfParcel(
  parcel: Parcel,
): Copy & { readonly held: (heads: readonly RunHead[]) => Parcel } {
  const runs = new Map(parcel.runs.map((run) => [headOfRun(run), run]));
  const singles = new Map(parcel.entries.map((entry) => [headOfEntry(entry), entry]));
  const held = (heads: readonly RunHead[]): Parcel => ({
    runs: heads.flatMap((head) => runs.get(head) ?? []),
    entries: heads.flatMap((head) => singles.get(head) ?? []),
  });
  return {
    heads: [...runs.keys(), ...singles.keys()],
    open: async (head) => entriesIn(held([head])),
    held,
  };
}
