import type { LotId } from '../../src/domain/log/ids.ts';

interface Lot {
  readonly id: LotId;
  readonly name: string;
  readonly species: string;
  /** Tenths of a per cent, by the working day on whose morning the meter was held to it. */
  readonly readings: Readonly<Record<number, number>>;
}

const id = (text: string) => text as LotId;

/** One lot that is not ready, one that is, and one of a wood of which the table knows no shrinkage. */
export const lots: readonly Lot[] = [
  {
    id: id('walnut-new'),
    name: 'Walnut, bought in January',
    species: 'walnut',
    readings: { 0: 148, 3: 139, 6: 131, 9: 126 },
  },
  {
    id: id('walnut-stove'),
    name: 'Walnut, by the stove',
    species: 'walnut',
    readings: { 0: 98, 3: 94, 6: 92, 9: 91 },
  },
  { id: id('yew-hedge'), name: 'Yew from the hedge', species: 'yew', readings: { 1: 164, 6: 151 } },
];

/** What the lots and the machines of the demo are, as set-up facts. */
export const blanksAndMachines = [
  ...lots.map(({ id: lot, name, species }) => ({
    register: 'lot',
    id: lot,
    value: { name, species, retired: false },
  })),
  {
    register: 'machine',
    id: 'lathe',
    value: {
      name: 'Lathe',
      stages: ['rough-turn', 'shape', 'sand', 'polish', 'dress-ferrule'],
      ...{ duty: null, mostTurns: 3200, retired: false },
    },
  },
  {
    register: 'machine',
    id: 'belt-sander',
    value: {
      name: 'Belt sander',
      stages: ['cut-flat'],
      ...{ duty: { on: 20, off: 10 }, mostTurns: null, retired: false },
    },
  },
];
