import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAct } from '../../src/store/kept-act.ts';
import { spellDraft } from '../support/drafts.ts';

const act = { act: 'tap-1', drafts: [spellDraft('turn'), spellDraft('sand')], now: 1000 };

describe('an act that was kept as text', () => {
  test('is the same act again', () => {
    expect(readAct(JSON.stringify(act))).toEqual([act]);
  });

  test.each(['', '{', 'null', '7', '[]', '{}', '"tap-1"'])('is none in %j', (text) => {
    expect(readAct(text)).toEqual([]);
  });

  test.each([
    { act: 7 },
    { now: -1 },
    { now: 1.5 },
    { now: null },
    { drafts: null },
    { drafts: ['turn'] },
    { drafts: [null] },
    { drafts: [{}] },
    { drafts: [{ ...spellDraft('turn'), kind: 'sung' }] },
    { drafts: [spellDraft('turn'), { ...spellDraft('sand'), day: 'Monday' }] },
  ])('is none with %j in it: one draft that fits no event spoils the tap', (spoilt) => {
    expect(readAct(JSON.stringify({ ...act, ...spoilt }))).toEqual([]);
  });

  test('never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(readAct(text)).toEqual([]);
      }),
    );
  });
});
