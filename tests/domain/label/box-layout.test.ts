import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxFrame } from '../../../src/domain/label/box-layout.ts';
import { type LabelText, setTexts, textsFit } from '../../../src/domain/label/label-layout.ts';
import { labelSizes } from '../../../src/domain/label/label-sizes.ts';
import { emptyShop } from '../../../src/domain/shop/shop.ts';

/** Each sign half an em wide. */
const measure = (text: string) => text.length / 2;
const texts = (...all: readonly string[]): LabelText[] =>
  all.map((text) => ({ text, largest: 3.2, least: 2.2, measure }));

describe('the sheet for the box', () => {
  test.each(labelSizes(emptyShop().registers).map(({ fact }) => [fact.name, fact] as const))(
    'on %s has its foot below its texts, both inside the label',
    (_, { width, height }) => {
      const label = { width: width / 100, height: height / 100 };
      const { texts: above, foot } = boxFrame(label);
      expect(above.height).toBeGreaterThan(0);
      expect(above.y + above.height).toBeLessThanOrEqual(foot.y + 1e-9);
      expect(foot.y + foot.height).toBeLessThan(label.height);
      for (const box of [above, foot]) {
        expect(box.x).toBeGreaterThan(0);
        expect(box.x + box.width).toBeLessThan(label.width);
      }
    },
  );

  test('fits exactly where no word of its texts is cut or left out', () => {
    const words = fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { minLength: 1, maxLength: 60, size: 'max' });
    const seen = new Set<boolean>();
    fc.assert(
      fc.property(fc.array(words, { minLength: 1, maxLength: 4 }), (all) => {
        const its = texts(...all.map((each) => each.join(' ')));
        const { texts: box } = boxFrame({ width: 66.68, height: 25.4 });
        const set = setTexts(its, box);
        const whole = its.every(
          ({ text }, of) =>
            set
              .filter((line) => line.of === of)
              .map((line) => line.text)
              .join(' ') === text,
        );
        expect(textsFit(its, box)).toBe(whole);
        seen.add(whole);
      }),
      { numRuns: 400 },
    );
    expect(seen).toEqual(new Set([true, false]));
  });
});
