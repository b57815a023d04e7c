import { expect, test } from 'vitest';
import { chained } from '../../../src/domain/log/chain.ts';
import { chainFaults } from '../../../src/domain/log/chain-faults.ts';
import { foreignEntries } from '../../support/drafts.ts';

const entries = foreignEntries();
const [first] = entries;
if (!first) throw new Error('the log has entries');

test('a whole log has no faults, in whatever order it is looked at', () => {
  const two = [...entries, ...foreignEntries('station-b')].toReversed();
  expect(chainFaults(two)).toEqual({ gaps: [], breaks: [] });
});

test('missing numbers are named with both ends; what was last and is gone leaves no trace in the chain', () => {
  const left = entries.filter(({ event: { seq } }) => ![1, 4, 5, entries.length].includes(seq));
  expect(chainFaults(left)).toEqual({
    gaps: [
      { station: 'station-z', from: 1, to: 1 },
      { station: 'station-z', from: 4, to: 5 },
    ],
    breaks: [],
  });
});

test('an entry of another telling breaks the chain where it stands', () => {
  const shifted = chained(entries.map(({ event }) => ({ ...event, stamp: { wall: 1, tick: event.seq } })));
  const mixed = entries.map((entry, at) => (at === 6 ? (shifted[6] ?? entry) : entry));
  expect(chainFaults(mixed).breaks).toEqual([
    { station: 'station-z', seq: 7 },
    { station: 'station-z', seq: 8 },
  ]);
});

test('a branch follows on from the chain that it left', () => {
  const common = entries.slice(0, 5).map(({ event }) => event);
  const branch = chained([
    ...common,
    ...entries.slice(5).map(({ event }) => ({ ...event, stamp: { wall: 1, tick: event.seq } })),
  ]);
  expect(chainFaults([...entries, ...branch.slice(5)])).toEqual({ gaps: [], breaks: [] });
});
