import type { Gate } from './strange-counts.ts';
import type { Part } from './tally.ts';

/**
 * The chance that a random order of the pieces is strange at one gate or more, exactly: piece by piece, the number of
 * flawed ones so far is a Markov chain that ends at the total, and what is strange at a gate is counted and taken out.
 * Only such chances are added, so a small answer is as exact as a large one.
 *
 * @param whole flawed pieces, and pieces, of the whole
 * @param gates in order of their pieces
 */
export function chanceToLeave({ flawed, pieces }: Part, gates: readonly Gate[]): number {
  const chances = new Float64Array(flawed + 2);
  chances[0] = 1;
  let least = 0;
  let most = 0;
  let done = 0;
  let strange = 0;
  for (const gate of gates) {
    for (; done < gate.pieces; done += 1) {
      const left = pieces - done;
      most = Math.min(flawed, most + 1);
      // From above, so that each is read before it is changed.
      for (let count = most; count >= least; count -= 1) {
        const stays = (chances[count] ?? 0) * ((left - flawed + count) / left);
        const rises = count > least ? (chances[count - 1] ?? 0) * ((flawed - count + 1) / left) : 0;
        chances[count] = stays + rises;
      }
    }
    for (; least <= Math.min(gate.low, most); least += 1) {
      strange += chances[least] ?? 0;
      chances[least] = 0;
    }
    for (; most >= Math.max(gate.high, least); most -= 1) {
      strange += chances[most] ?? 0;
      chances[most] = 0;
    }
    if (least > most) break;
  }
  return Math.min(1, strange);
}
