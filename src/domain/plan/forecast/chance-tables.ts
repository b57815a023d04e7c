import { betaQuantile, normalCdf } from '../../statistics/special-functions.ts';
import type { Chance } from './plan-model.ts';

/** A table has the chance at each eighth of a standard deviation, from 4 below to 4 above. */
const [FARTHEST, PER_SD] = [4, 8];
export const tableLength = 2 * FARTHEST * PER_SD + 1;

/** Works a belief out once for all replications: quantiles of the chance by a standard normal number. */
export function chanceTables(): (chance: Chance) => Float32Array {
  const known = new Map<string, Float32Array>();
  return (chance) => {
    const name = chance.kind === 'known' ? `${chance.chance}` : `${chance.alpha}|${chance.beta}`;
    const table = known.get(name) ?? tableOf(chance);
    known.set(name, table);
    return table;
  };
}

function tableOf(chance: Chance): Float32Array {
  return Float32Array.from({ length: tableLength }, (_, at) =>
    chance.kind === 'known'
      ? chance.chance
      : betaQuantile(normalCdf(at / PER_SD - FARTHEST), chance.alpha, chance.beta),
  );
}

/** The chance in the table that begins at `from`, for a standard normal number; straight lines between the entries. */
export function chanceAt(tables: Float32Array, from: number, z: number): number {
  const place = Math.min(Math.max((z + FARTHEST) * PER_SD, 0), tableLength - 1.001);
  const at = Math.floor(place);
  const low = tables[from + at] ?? 0;
  return low + ((tables[from + at + 1] ?? 0) - low) * (place - at);
}
