import { describe, expect, test } from 'vitest';
import type { PartFact } from '../../../src/domain/set-up/facts.ts';
import { partDraftOf, readPart } from '../../../src/screens/set-up/part-draft.ts';

const ferrule: PartFact = {
  ...{ name: 'Copper ferrule', sort: 'ferrule', retired: false },
  ...{ cost: null, lowMark: null },
};

test('a part that is read back is the same part, with or without a diameter', () => {
  for (const fact of [ferrule, { ...ferrule, fitDiameter: 1405 }]) {
    const read = readPart(partDraftOf(fact));
    expect(read.ok && { ...read.value, retired: false }).toEqual(fact);
  }
});

describe('the diameter that a part is fitted on', () => {
  test.each([
    ['14', 1400],
    ['14,05 mm', 1405],
    ['.5', undefined],
    ['300', 30_000],
    ['300.01', undefined],
    ['thick', undefined],
    ['-3', undefined],
  ])('“%s” mm is %s', (fitDiameter, hundredths) => {
    const read = readPart({ ...partDraftOf(ferrule), fitDiameter });
    expect(read.ok ? read.value.fitDiameter : undefined).toBe(hundredths);
    expect(read.ok).toBe(hundredths !== undefined);
  });

  test('is left out of what is fitted on no wood', () => {
    const read = readPart({ ...partDraftOf(ferrule), sort: 'consumable', fitDiameter: 'thick' });
    expect(read.ok && 'fitDiameter' in read.value).toBe(false);
    expect(read.ok).toBe(true);
  });
});
