/** The log as a table that any library can add up: what an event does, in codes and amounts, worked out beforehand. */
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import { atStage, type Place } from '../../../src/domain/log/place.ts';
import type { PackedRun } from '../../../src/domain/packed/packed-run.ts';
import { eventsOf } from '../../../src/domain/packed/unpack-run.ts';

/** Codes are indexes of their dictionary; under 0 stands the empty text, for none. Amounts are signed: a void takes away. */
const codeNames = ['species', 'origin', 'target', 'stage', 'reason'] as const;
const amountNames = ['pieces', 'first', 'clean', 'flawed'] as const;
type Row = Record<(typeof codeNames)[number], string> & Record<(typeof amountNames)[number], number>;

/**
 * `pieces` go from the stage `origin` to the stage `target`; of the visits that ended at `stage`, `first` were first ones
 * and `clean` of them passes; `flawed` pieces have the flaw `reason`. A row an event, and one more for each further move
 * or reason; none for events that are about no pieces.
 */
export interface TallyRows {
  readonly rows: number;
  readonly codes: Readonly<Record<(typeof codeNames)[number], Uint8Array>>;
  readonly amounts: Readonly<Record<(typeof amountNames)[number], Int32Array>>;
  /** What its codes stand for. */
  readonly names: Readonly<Record<(typeof codeNames)[number], readonly string[]>>;
}

/** The columns of codes as texts: what a table holds that nobody has prepared for one question. */
export function textColumns({ codes, names }: TallyRows) {
  return mapped(codes, (column, name) => Array.from(column, (code) => names[name][code] ?? ''));
}

export function tallyRows(runs: readonly PackedRun[]): TallyRows {
  const stages = dictionary();
  const dictionaries = {
    species: dictionary(),
    ...{ origin: stages, target: stages, stage: stages },
    reason: dictionary(),
  };
  const codes = {
    species: growing(),
    origin: growing(),
    target: growing(),
    stage: growing(),
    reason: growing(),
  };
  const amounts = { pieces: growing(), first: growing(), clean: growing(), flawed: growing() };
  let rows = 0;
  for (const run of runs)
    for (const event of eventsOf(run))
      for (const row of rowsOf(event as ShopEvent)) {
        for (const name of codeNames) codes[name].push(dictionaries[name].codeOf(row[name]));
        for (const name of amountNames) amounts[name].push(row[name]);
        rows += 1;
      }
  return {
    rows,
    codes: mapped(codes, (column) => Uint8Array.from(column.values())),
    amounts: mapped(amounts, (column) => column.values()),
    names: mapped(dictionaries, ({ texts }) => texts()),
  };
}

function rowsOf(outer: ShopEvent): readonly Row[] {
  let event = outer;
  let times = 1;
  while (event.kind === 'voided') {
    event = event.event;
    times = -times;
  }
  if (!('of' in event)) return [];
  const { of, moves } = event;
  const visit = event.kind === 'passed' || event.kind === 'flawed' ? event : undefined;
  const reasons = visit?.kind === 'flawed' ? [...new Set(visit.reasons)] : [];
  const first = visit ? times * (visit.pieces - visit.again) : 0;
  return Array.from({ length: Math.max(1, moves.length, reasons.length) }, (_, at) => ({
    species: of.species,
    origin: stageOf(moves[at]?.from),
    target: stageOf(moves[at]?.to),
    pieces: times * (moves[at]?.pieces ?? 0),
    stage: at === 0 ? (visit?.stage ?? '') : '',
    first: at === 0 ? first : 0,
    clean: at === 0 && visit?.kind === 'passed' ? first : 0,
    reason: reasons[at] ?? '',
    flawed: reasons[at] === undefined ? 0 : times * (visit?.pieces ?? 0),
  }));
}

const stageOf = (place: Place | null | undefined) => (place && atStage(place) ? place.stage : '');

function dictionary() {
  const codes = new Map([['', 0]]);
  return {
    codeOf(text: string): number {
      const code = codes.get(text) ?? codes.size;
      codes.set(text, code);
      return code;
    },
    texts: () => [...codes.keys()],
  };
}

function growing() {
  let column = new Int32Array(1024);
  let length = 0;
  return {
    push(value: number): void {
      if (length === column.length) {
        const longer = new Int32Array(2 * length);
        longer.set(column);
        column = longer;
      }
      column[length] = value;
      length += 1;
    },
    values: () => column.slice(0, length),
  };
}

function mapped<Name extends string, From, To>(
  record: Readonly<Record<Name, From>>,
  change: (value: From, name: Name) => To,
): Record<Name, To> {
  return Object.fromEntries(
    Object.entries<From>(record).map(([name, value]) => [name, change(value, name as Name)]),
  ) as Record<Name, To>;
}
