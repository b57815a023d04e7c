import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutLines, type TextMeasure, wrapText } from '../../../src/domain/label/fit-text.ts';
import {
  capitalsInEm,
  capitalsOf,
  codeSignInEm,
  type LabelText,
  labelFrame,
  leastModule,
  modulesWithMargin,
  setTexts,
} from '../../../src/domain/label/label-layout.ts';
import { labelReading, signsToBear } from '../../../src/domain/label/label-reading.ts';
import { labelSizes } from '../../../src/domain/label/label-sizes.ts';
import { emptyShop } from '../../../src/domain/shop/shop.ts';

const sizes = labelSizes(emptyShop().registers);
/** A face of which every sign is half as wide as its type is high. */
const even: TextMeasure = (text) => [...signs.segment(text)].length / 2;
const signs = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

const anyLabel = fc.record({
  width: fc.integer({ min: 25, max: 300 }),
  height: fc.integer({ min: 15, max: 300 }),
});
const anyCode = fc.integer({ min: 3, max: 7 });

describe('the frame of a label', () => {
  test('keeps code, symbol and texts apart, and all of them on the label', () => {
    fc.assert(
      fc.property(anyLabel, anyCode, (label, signs) => {
        const { code, symbol, texts } = labelFrame(label, signs);
        const capitals = code.size * capitalsInEm;
        const boxes = [
          {
            x: code.x,
            y: code.baseline - capitals,
            width: code.size * codeSignInEm * signs,
            height: capitals,
          },
          { ...symbol, width: symbol.side, height: symbol.side },
          texts,
        ];
        for (const { x, y, width, height } of boxes) {
          expect(Math.min(x, y)).toBeGreaterThanOrEqual(1.5 - 1e-9);
          expect(x + width).toBeLessThanOrEqual(label.width - 1.5 + 1e-9);
          expect(y + height).toBeLessThanOrEqual(label.height - 1.5 + 1e-9);
        }
        for (const [a, b] of [
          [boxes[0], boxes[1]],
          [boxes[0], boxes[2]],
          [boxes[1], boxes[2]],
        ]) {
          if (!a || !b) continue;
          const apart =
            a.x + a.width <= b.x + 1e-9 ||
            b.x + b.width <= a.x + 1e-9 ||
            a.y + a.height <= b.y + 1e-9 ||
            b.y + b.height <= a.y + 1e-9;
          expect(apart).toBe(true);
        }
      }),
    );
  });

  test.each(sizes.map(({ id, fact }) => [id as string, fact] as const))(
    'of the size %s has a symbol that any camera reads',
    (_, { width, height }) => {
      for (const signs of [4, 5, 7]) {
        const { symbol } = labelFrame({ width: width / 100, height: height / 100 }, signs);
        expect(symbol.side / modulesWithMargin).toBeGreaterThanOrEqual(leastModule - 1e-9);
      }
    },
  );

  test('has a code to be read at 2 m on a large label: 11.6 mm capitals (20 minutes of arc)', () => {
    const readable = sizes.filter(({ fact }) => labelReading(fact, 5).fromAfar).map(({ id }) => id as string);
    expect(readable.sort()).toEqual([
      'a4-2x4',
      'a4-2x7',
      'a4-3x7',
      'a4-3x8',
      'letter-2x5',
      'roll-29',
      'roll-62',
    ]);
    for (const { fact } of sizes) {
      const label = { width: fact.width / 100, height: fact.height / 100 };
      const capitals = capitalsOf(labelFrame(label, 5));
      expect(labelReading(fact, 5)).toMatchObject({ capitals, fromAfar: capitals >= 11.6 - 1e-9 });
    }
  });

  test('says of a label that is too small how high its capitals are', () => {
    const small = sizes.find(({ id }) => id === 'letter-3x10');
    if (!small) throw new Error('no such size');
    const reading = labelReading(small.fact, 5);
    expect(reading.fromAfar).toBe(false);
    expect(reading.capitals).toBeGreaterThan(7);
    expect(labelReading({ width: 2500, height: 1500 }, 5)).toMatchObject({
      fromAfar: false,
      scannable: false,
    });
  });

  test('is judged by the longest code that the trays have, at least by one of a tablet’s first 999', () => {
    expect(signsToBear([])).toBe(5);
    expect(signsToBear([{ code: 'A1C' }, { code: 'A12345C' }])).toBe(7);
  });
});

const textOf = (text: string): LabelText => ({ text, largest: 4, least: 2, measure: even });
const box = { x: 3, y: 20, width: 40, height: 14 };

describe('texts on a label', () => {
  test('stand at their full size where they fit', () => {
    expect(setTexts([textOf('ash, copper'), textOf('12 pieces')], box)).toEqual([
      { text: 'ash, copper', baseline: 20 + 4 * (capitalsInEm + 0.1), size: 4, of: 0 },
      { text: '12 pieces', baseline: 24.8 + 4 * (capitalsInEm + 0.1), size: 4, of: 1 },
    ]);
  });

  test('are set smaller before they are cut', () => {
    const lines = setTexts(
      [textOf('a name of some forty signs, or a few more'), textOf('12 pieces'), textOf('dust')],
      box,
    );
    expect(lines[0]?.size).toBeLessThan(4);
    expect(lines.map(({ text }) => text).join(' ')).toBe(
      'a name of some forty signs, or a few more 12 pieces dust',
    );
  });

  test('never leave their box, however long they are', () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: 'grapheme', maxLength: 200 }), { minLength: 1, maxLength: 3 }),
        fc.double({ min: 4, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (texts, width, height) => {
          const lines = setTexts(texts.map(textOf), { x: 0, y: 0, width, height });
          for (const { text, baseline, size } of lines) {
            expect(even(text) * size).toBeLessThanOrEqual(Math.max(width, size) + 1e-9);
            expect(baseline + 0.2 * size).toBeLessThanOrEqual(height + 0.2 * size);
          }
        },
      ),
    );
  });

  test('say that they were cut, after a whole word', () => {
    const lines = setTexts([textOf('one two three four five six seven eight nine ten'.repeat(5))], {
      ...box,
      height: 5,
    });
    expect(lines.length).toBe(2);
    expect(lines.at(-1)?.text).toMatch(/ …$/);
  });

  test('each get a line before one gets many, the first of them first', () => {
    const long = 'word '.repeat(60);
    const lines = setTexts([textOf(long), textOf('12 pieces'), textOf(long)], { ...box, height: 7.3 });
    expect(lines.map(({ of }) => of)).toEqual([0, 1, 2]);
  });
});

describe('a text in lines', () => {
  test('is broken at blanks, and within a word that is wider than the line', () => {
    expect(wrapText('one two three', { width: 4, measure: even })).toEqual(['one two', 'three']);
    expect(wrapText('abcdefghij k', { width: 2, measure: even })).toEqual(['abcd', 'efgh', 'ij k']);
    expect(wrapText('', { width: 2, measure: even })).toEqual([]);
  });

  test('keeps signs of several parts whole', () => {
    const family = '👨‍👩‍👧';
    const byParts: TextMeasure = (text) => [...text].length / 2;
    expect(wrapText(`${family}${family}`, { width: 2.5, measure: byParts })).toEqual([family, family]);
  });

  test('is cut within a word only where the line has no other', () => {
    const options = { most: 1, width: 4, measure: even };
    expect(cutLines(['one two', 'three'], options)).toEqual(['one …']);
    expect(cutLines(['abcdefgh', 'ij'], options)).toEqual(['abcdefg…']);
    expect(cutLines(['one'], options)).toEqual(['one']);
    expect(cutLines(['one', 'two'], { ...options, most: 0 })).toEqual([]);
  });
});
