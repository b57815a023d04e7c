import type { OutcomeKind } from '../log/event.ts';
import type { StageId } from '../log/ids.ts';
import { countOf } from '../shop/counter.ts';
import type { DaySheet } from '../shop/days.ts';
import type { Shop } from '../shop/shop.ts';
import { everyStage } from './every-stage.ts';
import { type Cell, type Naming, type Table, tableOf } from './table.ts';

const outcomes = ['mended', 'sent-back', 'second', 'scrapped'] as const satisfies readonly OutcomeKind[];
const columns = ['day', 'stage', 'passed', ...outcomes, 'minutes'] as const;
export type DayColumn = (typeof columns)[number];

const minute = 60_000;

/** What was done on each shop day at each stage: pieces passed, pieces flawed by what became of them, minutes of work. */
export function dayTable(shop: Shop, nameOf: Naming): Table<DayColumn> {
  const days = [...shop.days].sort(([a], [b]) => (a < b ? -1 : 1));
  const stages = everyStage(shop.registers, new Set(days.flatMap(([, sheet]) => [...stagesOf(sheet)])));
  return tableOf(
    columns,
    days.flatMap(([day, sheet]) => {
      const worked = stagesOf(sheet);
      return stages
        .filter((stage) => worked.has(stage))
        .map((stage): Record<DayColumn, Cell> => {
          const flawed = (kind: OutcomeKind) => countOf(sheet.outcomes, `${stage}|${kind}`);
          return {
            day,
            stage: nameOf({ register: 'stage', id: stage }),
            passed: countOf(sheet.passed, stage),
            mended: flawed('mended'),
            'sent-back': flawed('sent-back'),
            second: flawed('second'),
            scrapped: flawed('scrapped'),
            minutes: Math.round((countOf(sheet.worked, stage) / minute) * 100) / 100,
          };
        });
    }),
  );
}

function stagesOf({ passed, outcomes: flawed, worked }: DaySheet): ReadonlySet<StageId> {
  const flawedAt = [...flawed.keys()].map((key) => key.slice(0, key.indexOf('|')) as StageId);
  return new Set([...passed.keys(), ...flawedAt, ...worked.keys()]);
}
