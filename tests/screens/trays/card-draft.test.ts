import { describe, expect, test } from 'vitest';
import {
  type CardDraft,
  emptyStage,
  type FlawDraft,
  flawKey,
  passKey,
  readCard,
} from '../../../src/screens/trays/card/card-draft.ts';
import { part, reason, type StageName, stage } from '../../support/workshop.ts';

const route = [stage.bore, stage.glue, stage.turn];
const heldAt = () => [part.core];
const read = (draft: CardDraft) => readCard(draft, { route, heldAt });
const at = (name: StageName, typed: Partial<typeof emptyStage>): CardDraft =>
  new Map([[stage[name], { ...emptyStage, ...typed }]]);
const flaw = (change: Partial<FlawDraft>): FlawDraft => ({
  key: 1,
  reason: reason.blown,
  outcome: 'scrapped',
  pieces: '2',
  ...change,
});

describe('a card as it is typed', () => {
  test('comes out in the order of the route, flaws before what passed', () => {
    const draft: CardDraft = new Map([
      [stage.turn, { passed: ' 7 ', flaws: [flaw({})] }],
      [stage.bore, { passed: '9', flaws: [] }],
    ]);
    expect(read(draft)).toEqual({
      ok: true,
      lines: [
        { kind: 'pass', stage: stage.bore, pieces: 9 },
        {
          kind: 'flaw',
          stage: stage.turn,
          pieces: 2,
          reasons: [reason.blown],
          outcome: { kind: 'scrapped', saved: [] },
        },
        { kind: 'pass', stage: stage.turn, pieces: 7 },
      ],
      keys: [passKey(stage.bore), flawKey(stage.turn, 1), passKey(stage.turn)],
    });
  });

  test.each([
    ['mended', { kind: 'mended' }],
    ['second', { kind: 'second' }],
    ['scrapped', { kind: 'scrapped', saved: [] }],
    ['scrapped-saved', { kind: 'scrapped', saved: [part.core] }],
    [`back:${stage.bore}`, { kind: 'sent-back', to: stage.bore }],
  ] as const)('understands what became of a flaw: %s', (outcome, kept) => {
    const result = read(at('turn', { flaws: [flaw({ outcome })] }));
    expect(result.ok && result.lines[0]).toMatchObject({ outcome: kept });
  });

  test.each(['', '  ', '0', '00'])('leaves out a stage with “%s”', (passed) => {
    expect(read(at('bore', { passed }))).toEqual({ ok: true, lines: [], keys: [] });
  });

  test.each([
    ['a dozen', 'This is not a number.'],
    ['-3', 'At least 1.'],
    ['2.5', 'Whole pieces only.'],
    ['1e9', 'At most 9999.'],
  ])('says what is wrong with “%s” at its line', (passed, said) => {
    expect(read(at('glue', { passed }))).toEqual({
      ok: false,
      problems: new Map([[passKey(stage.glue), said]]),
    });
  });

  test('says of a flaw that is filled in by half what is missing, and of an empty one nothing', () => {
    const problemOf = (change: Partial<FlawDraft>) => {
      const result = read(at('bore', { flaws: [flaw(change)] }));
      return result.ok ? undefined : result.problems.get(flawKey(stage.bore, 1));
    };
    expect(problemOf({ pieces: '' })).toBe('Enter how many.');
    expect(problemOf({ reason: undefined })).toBe('Choose what is wrong.');
    expect(problemOf({ outcome: undefined })).toBe('Choose what became of it.');
    expect(problemOf({ pieces: '', reason: undefined, outcome: undefined })).toBeUndefined();
  });
});
