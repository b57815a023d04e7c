import type { Command, DeliveryLine } from '../../src/domain/command/command.ts';
import type { PartId } from '../../src/domain/log/ids.ts';
import { partsOnHand, partsToClean } from '../../src/domain/rollup/parts-on-hand.ts';
import { parts } from './demo-facts.ts';
import type { Doer, Teller } from './teller.ts';

const line = (part: PartId, [pieces, cost]: readonly [pieces: number, cost: number]): DeliveryLine => ({
  part,
  pieces,
  cost,
});

/** Deliveries, by the working day on whose morning they came; prices in pence for the whole line. */
const deliveries: Readonly<Record<number, readonly DeliveryLine[]>> = {
  0: [line(parts.core, [250, 20_000]), line(parts.copper, [200, 9_000]), line(parts.nickel, [100, 9_000])],
  4: [line(parts.core, [200, 16_600])],
  5: [line(parts.copper, [200, 9_200])],
};
/** Working day on whose morning the nickel silver ferrules are counted: two of them are nowhere to be found. */
const countedOn = 6;
/** Days on which what was saved by then is cleaned, but for a few that wait for the next time. */
const cleanedOn: readonly number[] = [3, 7];
const leftToClean = 2;

/** What is done in the stores on a morning: deliveries, a count, saved cores cleaned. */
export function tendStores(teller: Teller, { day, doing }: { day: number; doing: Doer }): void {
  for (const command of choresOf(teller, day)) teller.tell(command, doing);
}

function choresOf({ shop }: Teller, day: number): readonly Command[] {
  const came = deliveries[day];
  const receive: readonly Command[] = came ? [{ kind: 'receive-parts', parts: came, note: '' }] : [];
  const counted = Math.max(0, partsOnHand(shop, parts.nickel) - 2);
  const count: readonly Command[] =
    day === countedOn
      ? [{ kind: 'count-parts', part: parts.nickel, heap: 'shelf', counted, why: 'lost', note: '' }]
      : [];
  const shown = partsToClean(shop, parts.core);
  const back = shown - leftToClean;
  const clean: readonly Command[] =
    cleanedOn.includes(day) && back > 0
      ? [{ kind: 'clean-parts', part: parts.core, back, lost: 0, shown }]
      : [];
  return [...receive, ...count, ...clean];
}
