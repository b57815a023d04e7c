import { describe, expect, test } from 'vitest';
import {
  type FieldWatch,
  hear,
  hearInField,
  lifted,
  longestPause,
  noWedge,
  type Wedge,
  type WedgeStep,
  waited,
} from '../../src/app/wedge.ts';

/** A key that goes down after a pause (ms) and is lifted after its dwell. */
interface Stroke {
  readonly key: string;
  readonly pause: number;
  readonly dwell: number;
}

const strokes = (text: string, { pause, dwell = 1 }: { pause: number; dwell?: number }): Stroke[] =>
  [...text].map((key) => ({ key, pause, dwell }));
const enter = (pause = 5): Stroke => ({ key: 'Enter', pause, dwell: 1 });

/** What the page hears of strokes, one after the other, then nothing for a while; and what was read. */
function typed(all: readonly Stroke[]): { acted: string; read: string[] } {
  let wedge: Wedge = noWedge;
  let acted = '';
  let at = 1000;
  let due = Number.POSITIVE_INFINITY;
  const read: string[] = [];
  const take = (step: WedgeStep, key: string) => {
    acted += step.released.map((each) => each.key).join('') + (step.acts ? key : '');
    if (step.read !== undefined) read.push(step.read);
    wedge = step.wedge;
    due = wedge.held.length > 0 ? wedge.last + longestPause : Number.POSITIVE_INFINITY;
  };
  for (const { key, pause, dwell } of all) {
    at += pause;
    if (due < at) take(waited(wedge, due), '');
    take(hear(wedge, { key, at }), key === 'Enter' ? '↵' : key === 'Tab' ? '⇥' : key);
    const up = lifted(wedge, { key, at: at + dwell });
    if (up.wedge !== wedge) take(up, '');
  }
  take(waited(wedge, at + longestPause), '');
  return { acted, read };
}

describe('where no text is written', () => {
  const bursts: Record<string, readonly [strokes: readonly Stroke[], read: string]> = {
    'a label, a key each 5 ms': [[...strokes('A17R-CKWX', { pause: 5 }), enter()], 'A17R-CKWX'],
    'a label that ends with Tab': [
      [...strokes('A17R-CKWX', { pause: 5 }), { key: 'Tab', pause: 5, dwell: 1 }],
      'A17R-CKWX',
    ],
    'a label on a busy tablet: 13 to 206 ms between keys': [
      [
        ...[...'A17R-CKWX'].map((key, index) => ({
          key,
          pause: [13, 206, 40, 150][index % 4] ?? 13,
          dwell: 9,
        })),
        enter(206),
      ],
      'A17R-CKWX',
    ],
    'a label whose keys are held as long as by a hand': [
      [...strokes('K17R-CKWX', { pause: 60, dwell: 50 }), enter(60)],
      'K17R-CKWX',
    ],
    'a label in small letters, of a tablet with another layout of keys': [
      [...strokes('a17rßckwx', { pause: 5 }), enter()],
      'A17R-CKWX',
    ],
    'a label with shift keys in it': [
      [
        ...[...'A17R-CKWX'].flatMap((key): Stroke[] => [
          ...(/[A-Z]/.test(key) ? [{ key: 'Shift', pause: 2, dwell: 1 }] : []),
          { key, pause: 3, dwell: 1 },
        ]),
        enter(),
      ],
      'A17R-CKWX',
    ],
    'a bare code': [[...strokes('A17R', { pause: 5 }), enter()], 'A17R'],
    'a label right behind a tap on a key': [
      [{ key: '1', pause: 0, dwell: 60 }, ...strokes('A17R-CKWX', { pause: 20 }), enter()],
      'A17R-CKWX',
    ],
  };
  test.each(Object.entries(bursts))('%s is read, and its digits are no taps', (name, [all, read]) => {
    const heard = typed(all);
    expect(heard.read).toEqual([read]);
    // A tap before it, and a first letter that was held like a hand's, are no signs of the burst.
    expect(heard.acted.replaceAll('Shift', '')).toBe(
      name.includes('behind') ? '1' : name.includes('by a hand') ? 'K' : '',
    );
  });

  const hands: Record<string, readonly [strokes: readonly Stroke[], acted: string]> = {
    'taps on usual keys': [strokes('1123', { pause: 180, dwell: 80 }), '1123'],
    'a taught letter and quick digits': [strokes('A11', { pause: 150, dwell: 80 }), 'A11'],
    'a taught letter, again and again': [strokes('AAAA', { pause: 140, dwell: 70 }), 'AAAA'],
    'two keys at once': [[...strokes('1', { pause: 300 }), ...strokes('2', { pause: 10 })], '12'],
    'a code, letter by letter, with a look between them': [
      [...strokes('A17R', { pause: 400, dwell: 90 }), enter(400)],
      'A17R↵',
    ],
    'half a label': [strokes('A17', { pause: 5 }), 'A17'],
    'a code that does not add up, which the pad judges': [
      [...strokes('A17T', { pause: 100, dwell: 60 }), enter(100)],
      'A17T↵',
    ],
    'Enter alone': [[enter()], '↵'],
  };
  test.each(Object.entries(hands))('%s: every key acts, in its order', (_, [all, acted]) => {
    expect(typed(all)).toEqual({ acted, read: [] });
  });

  test('a taught letter acts when the finger lifts, not when a burst could no longer come', () => {
    const down = hear(noWedge, { key: 'A', at: 1000 });
    expect([down.acts, down.released]).toEqual([false, []]);
    expect(lifted(down.wedge, { key: 'A', at: 1070 }).released).toEqual([{ key: 'A', at: 1000 }]);
  });

  test('a code of another kind is read as such, and only its first key can be a tap', () => {
    const web = typed([...strokes('https://example.test/17', { pause: 5 }), enter()]);
    expect(web).toEqual({ acted: '', read: ['https://example.test/17'] });
    const goods = typed([...strokes('4006381333931', { pause: 5 }), enter()]);
    expect(goods).toEqual({ acted: '4', read: ['006381333931'] });
  });
});

describe('in a text field', () => {
  function field(all: readonly Stroke[]): { read: string[]; begun: number[] } {
    let watch: FieldWatch = noWedge;
    let at = 1000;
    const read: string[] = [];
    const begun: number[] = [];
    all.forEach(({ key, pause }, index) => {
      at += pause;
      const step = hearInField(watch, { key, at });
      watch = step.watch;
      if (step.begins) begun.push(index);
      if (step.read !== undefined) read.push(step.read);
    });
    return { read, begun };
  }

  test('a burst is read, and the moment before its first sign is known', () => {
    const all = [...strokes('An ash', { pause: 150 }), ...strokes('A17R-CKWX', { pause: 8 }), enter()];
    expect(field(all)).toEqual({
      read: ['A17R-CKWX'],
      begun: [0, 3, 5, 6],
    });
  });

  test.each([
    ['a label’s text, typed by hand', [...strokes('A17R-CKWX', { pause: 120 }), enter(120)]],
    ['a code, typed as fast as hands can', [...strokes('A17R', { pause: 60 }), enter(60)]],
    ['a word', [...strokes('Ash', { pause: 5 }), enter()]],
    [
      'a burst that is mended in its midst',
      [
        ...strokes('A17', { pause: 5 }),
        { key: 'Backspace', pause: 5, dwell: 1 },
        ...strokes('7T', { pause: 5 }),
        enter(),
      ],
    ],
  ] as const)('%s stays what it is', (_, all) => {
    expect(field(all).read).toEqual([]);
  });
});
