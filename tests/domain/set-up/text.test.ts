import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import {
  plainText,
  problemOfName,
  problemOfNote,
  sameName,
  tidyText,
} from '../../../src/domain/set-up/text.ts';
import { longestName, longestNote, nameSchema, noteSchema } from '../../../src/domain/set-up/text-schema.ts';

describe('a text as it is kept', () => {
  test.each([
    ['blanks around it', '  ash  ', 'ash'],
    ['blanks, tabs and line ends within', 'black \t\r\n ash', 'black ash'],
    ['a blank that does not break', 'black\u00a0ash', 'black ash'],
    ['an accent typed apart', 'e\u0301rable', '\u00e9rable'],
    ['direction overrides', '\u202eash\u202c', 'ash'],
    ['direction marks within a word', 'a\u200es\u061ch', 'ash'],
    ['direction isolates', '\u2066ash\u2069', 'ash'],
    ['blanks of no width', 'a\u200bs\u2060h\ufeff', 'ash'],
    ['soft hyphens', 'spal\u00adted', 'spalted'],
    ['a control character', 'ash\u0000core', 'ash core'],
    ['the joiner of an emoji', '\u{1F469}\u200d\u{1F33E}', '\u{1F469}\u200d\u{1F33E}'],
    ['the non-joiner of Persian', '\u0645\u06cc\u200c\u062e', '\u0645\u06cc\u200c\u062e'],
  ])('with %s', (_, typed, kept) => {
    expect(tidyText(typed)).toBe(kept);
  });

  test('is tidy for good: tidying it again changes nothing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (typed) => {
        expect(tidyText(tidyText(typed))).toBe(tidyText(typed));
      }),
      { numRuns: 2000 },
    );
  });
});

describe('a name', () => {
  test.each(['', '   ', '\n', '\u202e\u202c', '\u200d', '\u0301', '\ufe0f\u200b'])('%j is empty', (typed) => {
    expect(problemOfName(typed)).toEqual({ kind: 'empty' });
  });

  test.each(['a', '7', '?', '\u{1F333}', '\u05de\u05d9\u05dc\u05d4', '\u6728', '\u0e44\u0e21\u0e49'])(
    '%j is a name',
    (typed) => {
      expect(problemOfName(typed)).toBeNull();
    },
  );

  test('has room for 80 characters as a person counts them', () => {
    expect(problemOfName('\u{1F333}'.repeat(longestName))).toBeNull();
    expect(problemOfName(` ${'x'.repeat(longestName)} `)).toBeNull();
    expect(problemOfName('x'.repeat(500))).toEqual({ kind: 'too-long', length: 500, most: 80 });
    expect(problemOfName('\u{1F333}'.repeat(longestName + 1))).toEqual({
      kind: 'too-long',
      length: 81,
      most: 80,
    });
  });

  test('that is no problem can be written to the log and read again', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 120 }), (typed) => {
        if (problemOfName(typed) === null) expect(v.is(nameSchema, tidyText(typed))).toBe(true);
        if (problemOfNote(typed) === null) expect(v.is(noteSchema, tidyText(typed))).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('a note', () => {
  test('may be empty, and has room for 500 characters', () => {
    expect(problemOfNote('')).toBeNull();
    expect(problemOfNote('x'.repeat(longestNote))).toBeNull();
    expect(problemOfNote('x'.repeat(longestNote + 1))).toEqual({ kind: 'too-long', length: 501, most: 500 });
  });
});

describe('two names', () => {
  test.each([
    ['ash', 'Ash'],
    ['black ash', ' Black  ASH '],
    ['\u00e9rable', 'E\u0301RABLE'],
    ['a\u200bsh', 'ash'],
  ])('%j and %j read alike', (a, b) => {
    expect(sameName(a, b)).toBe(true);
  });

  test.each([
    ['ash', 'ask'],
    ['erable', '\u00e9rable'],
    ['black ash', 'blackash'],
  ])('%j and %j do not', (a, b) => {
    expect(sameName(a, b)).toBe(false);
  });
});

test('a text from elsewhere is shown without marks that turn it round, ring a bell or hide', () => {
  const turns = ['\u202a', '\u202b', '\u202c', '\u202d', '\u202e', '\u2066', '\u2067', '\u2068', '\u2069'];
  const hidden = ['\u200e', '\u200f', '\u0000', '\u0007', '\u001b', '\u007f', '\u0080', '\u009f'];
  for (const mark of [...turns, ...hidden]) expect(plainText(`as${mark}h`)).toBe('ash');
  expect(plainText('two\r\nlines\tof Zoë’s <b>ash</b>')).toBe('two lines of Zoë’s <b>ash</b>');
});
