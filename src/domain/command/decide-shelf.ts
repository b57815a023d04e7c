import { mostPieces } from '../log/place.ts';
import { shelfRow } from '../rollup/shelf-stock.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import type { CommandOf, ShelfLine } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';
import type { Problem } from './problem.ts';
import { judgeWholeNumber } from './whole-number.ts';

/**
 * Moves finished pieces, all lines in one act or none. As at the bench the measure is what the screen showed, so that a piece
 * in the hand is never refused because another tablet was quicker.
 */
export function decideMoveOnShelf(
  shop: Shop,
  { lines, to }: CommandOf<'move-on-shelf'>,
  at: Circumstances,
): Decision {
  if (lines.length === 0) return refuse({ kind: 'nothing-on-shelf' });
  const problem = lines.map((line) => problemOf(shop, line)).find((each) => each !== undefined);
  if (problem) return refuse(problem);
  return happens(
    lines.flatMap(({ variant, grade, from, pieces, price }) => {
      const fact = factOf(shop.registers, { register: 'variant', id: variant });
      if (!fact || from === to) return [];
      return [
        {
          ...envelopeAt(at),
          ...{ kind: 'shelf-moved', variant, species: fact.species, grade, pieces, from, to, price },
        },
      ];
    }),
  );
}

function problemOf(
  shop: Shop,
  { variant, grade, from, pieces, shown, price }: ShelfLine,
): Problem | undefined {
  if (!factOf(shop.registers, { register: 'variant', id: variant })) return { kind: 'no-such-variant' };
  const count = judgeWholeNumber(pieces, { least: 1, most: mostPieces });
  if (!count.ok) return { kind: 'number', problem: count.problem };
  const money = judgeWholeNumber(price ?? 0, { least: 0, most: Number.MAX_SAFE_INTEGER });
  if (!money.ok) return { kind: 'number', problem: money.problem };
  const there = Math.max(shown, shelfRow(shop, { variant, grade }).at[from]);
  if (there <= 0) return { kind: 'nothing-on-shelf' };
  return pieces > there ? { kind: 'too-many', there } : undefined;
}
