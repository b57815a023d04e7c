import type { Registers } from '../../domain/shop/registers.ts';
import type { SeriesName } from '../../domain/study/signal-series.ts';
import { nameOf } from '../../words/names.ts';
import { signalsWords as words } from '../../words/signals-words.ts';

/** A series in words: "Tear-out in plum at rough turning". */
export function seriesInWords({ stage, species, of }: SeriesName, registers: Registers): string {
  return words.series({
    what: of.kind === 'scrap' ? words.scrap : nameOf(registers, { register: 'reason', id: of.reason }),
    wood: species === null ? null : nameOf(registers, { register: 'species', id: species }),
    stage: nameOf(registers, { register: 'stage', id: stage }),
  });
}
