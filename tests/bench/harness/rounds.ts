import type { Figures } from './row.ts';

/** Measures once and gives one figure. */
export type Contestant = (round: number) => Promise<number>;

/**
 * Lets all measure in turn, round after round, each round beginning with another one: what slows the machine for a
 * while, or warms it up, is then not the same one's luck.
 */
export async function inRounds(
  rounds: number,
  contestants: Readonly<Record<string, Contestant>> & { readonly ours: Contestant },
): Promise<Figures> {
  const all = Object.entries(contestants);
  const figures: { ours: number[] } & Record<string, number[]> = { ours: [] };
  for (let round = 0; round < rounds; round += 1) {
    for (let turn = 0; turn < all.length; turn += 1) {
      const [name, measure] = all[(turn + round) % all.length] ?? [];
      if (name === undefined || !measure) continue;
      const figure = await measure(round);
      figures[name] = [...(figures[name] ?? []), figure];
    }
  }
  return figures;
}
