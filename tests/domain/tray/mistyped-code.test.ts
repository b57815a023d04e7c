import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codeAlphabet, codeLetters } from '../../../src/domain/tray/code-alphabet.ts';
import { judgeTypedCode, nearestCodes } from '../../../src/domain/tray/mistyped-code.ts';
import { type TrayCode, trayCode } from '../../../src/domain/tray/tray-code.ts';

const codes = (letter: string, ...numbers: readonly number[]) => numbers.map((n) => trayCode(letter, n));
const upTo = (most: number) => Array.from({ length: most }, (_, index) => index + 1);
const live = [...codes('A', 17, 18), ...codes('C', 4)];

describe('of a typed code it is said what is wrong and which live trays are near', () => {
  test('the live trays of this table are A17R, A18M and C4E', () => {
    expect(live).toEqual(['A17R', 'A18M', 'C4E']);
  });

  test.each([
    { typed: '', fault: 'empty', suspect: null, offers: [], rule: 'nothing was typed' },
    {
      typed: ' - ',
      fault: 'empty',
      suspect: null,
      offers: [],
      rule: 'only what stands between groups was typed',
    },
    { typed: 'B17R', fault: 'strange-character', suspect: 0, offers: ['A17R'], rule: 'no code has a B' },
    {
      typed: 'A1?R',
      fault: 'strange-character',
      suspect: 2,
      offers: ['A17R', 'A18M'],
      rule: 'no code has a question mark',
    },
    {
      typed: 'A16R',
      fault: 'check-fails',
      suspect: 2,
      offers: ['A17R', 'A18M'],
      rule: 'one digit is wrong, and only one live tray is that near',
    },
    {
      typed: 'A18R',
      fault: 'check-fails',
      suspect: null,
      offers: ['A17R', 'A18M'],
      rule: 'two live trays are one wrong character away, each at another place',
    },
    {
      typed: 'A71R',
      fault: 'check-fails',
      suspect: null,
      offers: ['A17R'],
      rule: 'two digits are swapped: no one place is wrong',
    },
    { typed: 'A117R', fault: 'check-fails', suspect: null, offers: ['A17R'], rule: 'a digit is doubled' },
    { typed: 'A7R', fault: 'check-fails', suspect: null, offers: ['A17R'], rule: 'a digit is missing' },
    {
      typed: 'A17',
      fault: 'check-fails',
      suspect: null,
      offers: ['A17R', 'A18M'],
      rule: 'the check letter is missing',
    },
    { typed: 'C9999X', fault: 'check-fails', suspect: null, offers: [], rule: 'no live tray is near' },
  ])('$rule: $typed', ({ typed, rule: _, ...said }) => {
    expect(judgeTypedCode(typed, live)).toEqual(said);
  });

  test('a code that is right in itself but carried by no live tray is no such tray, and no place is suspect', () => {
    const gone = trayCode('A', 99);
    expect(judgeTypedCode(gone, live)).toMatchObject({ fault: 'no-such-tray', suspect: null });
  });

  test.each(['A17R', 'a17r', ' A 17-R'])('a live tray is found however it was typed: %j', (typed) => {
    expect(judgeTypedCode(typed, live)).toBeUndefined();
  });

  test('in a shop without trays every code is no such tray, and nothing is offered', () => {
    expect(judgeTypedCode('A17R', [])).toEqual({ fault: 'no-such-tray', suspect: null, offers: [] });
  });
});

describe('offers', () => {
  test('come nearest first and are at most four when no single character is wrong', () => {
    const many = codes('A', ...upTo(99));
    const offers = nearestCodes('AR', many);
    expect(offers).toHaveLength(4);
  });

  test('are more than four when each of more live trays is one wrong character away', () => {
    const five = ['A100K', 'A108F', 'A140F', 'A300F', 'C100F'];
    const near = [...codes('A', 100, 108, 140, 300), ...codes('C', 100)];
    expect(near).toEqual(five);
    expect(nearestCodes('A100F', near)).toEqual(five);
  });

  test('never name a tray that is further than two slips', () => {
    expect(nearestCodes('X999A', live)).toEqual([]);
  });

  test('are the same whatever the order of the trays', () => {
    const many = codes('A', ...upTo(60));
    const typed = fc.array(fc.constantFrom(...codeAlphabet), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(typed, fc.shuffledSubarray(many, { minLength: many.length }), (signs, shuffled) => {
        expect(nearestCodes(signs.join(''), shuffled)).toEqual(nearestCodes(signs.join(''), many));
      }),
    );
  });
});

/** Trays numbered as they are made up: each station from 1 on, the finished ones gone. */
const liveTrays = fc
  .tuple(fc.subarray(codes('A', ...upTo(150)), { minLength: 1 }), fc.subarray(codes('C', ...upTo(40))))
  .map(([lathe, bench]): readonly TrayCode[] => [...lathe, ...bench]);

const slip = fc.record({
  which: fc.nat(),
  place: fc.nat(),
  sign: fc.constantFrom(...codeAlphabet),
});

test('one wrong character in a live code offers that code', () => {
  fc.assert(
    fc.property(liveTrays, slip, (trays, { which, place, sign }) => {
      const meant = trays[which % trays.length] ?? '';
      const at = place % meant.length;
      fc.pre(meant[at] !== sign);
      const said = judgeTypedCode(meant.slice(0, at) + sign + meant.slice(at + 1), trays);
      expect(said?.fault).toBe('check-fails');
      expect(said?.offers).toContain(meant);
      if (said?.suspect !== null) expect(said?.suspect).toBe(at);
    }),
    { numRuns: 1500 },
  );
});

test('beside 60 trays of another station each of 40 is offered, whichever character is wrong', () => {
  const second = codes('C', ...upTo(40));
  const trays = [...codes('A', ...upTo(60)), ...second];
  const lost: string[] = [];
  for (const meant of second) {
    for (let at = 0; at < meant.length; at += 1) {
      for (const sign of codeLetters) {
        const typed = meant.slice(0, at) + sign + meant.slice(at + 1);
        if (sign !== meant[at] && !nearestCodes(typed, trays).includes(meant))
          lost.push(`${typed} for ${meant}`);
      }
    }
  }
  expect(lost).toEqual([]);
});

test('two neighbours swapped in a live code offer that code when trays are few', () => {
  const few = codes('A', 17, 26, 48, 103);
  for (const code of few) {
    for (let at = 0; at + 1 < code.length; at += 1) {
      const typed = code.slice(0, at) + code.charAt(at + 1) + code.charAt(at) + code.slice(at + 2);
      if (typed !== code) expect(nearestCodes(typed, few), typed).toContain(code);
    }
  }
});
