import { describe, expect, test } from 'vitest';
import type { MachineFact } from '../../../src/domain/set-up/facts.ts';
import { machineDraftOf, readMachine } from '../../../src/screens/set-up/machine-draft.ts';
import { stage } from '../../support/workshop.ts';

const sander: MachineFact = {
  name: 'Belt sander',
  stages: [stage.sand],
  duty: { on: 20, off: 10 },
  mostTurns: 3200,
  retired: false,
};

test('a machine that is read back is the same machine', () => {
  for (const fact of [sander, { ...sander, duty: null, mostTurns: null, stages: [] }]) {
    const read = readMachine(machineDraftOf(fact));
    expect(read.ok && { ...read.value, retired: false }).toEqual(fact);
  }
});

describe('a machine that is typed', () => {
  const draft = machineDraftOf(sander);

  test.each([
    [{ on: '' }, ['on']],
    [{ on: '0', off: '1441' }, ['on', 'off']],
    [{ off: '2.5' }, ['off']],
    [{ mostTurns: 'fast' }, ['mostTurns']],
    [{ mostTurns: '100000' }, ['mostTurns']],
    [{ name: ' ' }, ['name']],
  ] as const)('%j is refused at its field', (part, fields) => {
    const read = readMachine({ ...draft, ...part });
    if (read.ok) throw new Error('it was let through');
    const wrong = Object.entries(read.problems).flatMap(([field, problem]) => (problem ? [field] : []));
    expect(wrong.toSorted()).toEqual([...fields].toSorted());
  });

  test('needs no minutes while it needs no rest', () => {
    const read = readMachine({ ...draft, rests: 'no', on: 'what', off: '' });
    expect(read).toMatchObject({ ok: true, value: { duty: null } });
  });
});
