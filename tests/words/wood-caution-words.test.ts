import { describe, expect, test } from 'vitest';
import woods from '../../shared/species.json' with { type: 'json' };
import type { ShopDay } from '../../src/domain/log/ids.ts';
import type { SpeciesFact } from '../../src/domain/set-up/facts.ts';
import { problemOfNote } from '../../src/domain/set-up/text.ts';
import { longestNote } from '../../src/domain/set-up/text-schema.ts';
import {
  cautionLine,
  type NotedHazard,
  usualCaution,
  woodCaution,
} from '../../src/words/wood-caution-words.ts';

const chart = 'Woods toxic to man, chart in American Woodturner, June 1990, as reprinted on three web pages';
const hazard: NotedHazard = {
  effects: ['sensitiser', 'irritant'],
  sites: ['skin', 'respiratory'],
  from: ['dust', 'wood'],
  strength: 3,
  source: chart,
};

test('a caution says in plain words what a wood does, where, how strongly and who says so', () => {
  expect(woodCaution({ hazard, carcinogen: 'A4 not classifiable' })).toBe(
    'It can make you allergic and irritates (skin, breathing, strength 3 of 4; Woods toxic to man, chart in ' +
      'American Woodturner, June 1990). Extraction and mask on. The safety data sheet, your local codes and ' +
      'licensed advice rule over this note.',
  );
});

test('what is noted of leaves or bark alone is not said of the wood', () => {
  const caution = woodCaution({ hazard: { ...hazard, from: ['leaves or bark'] }, carcinogen: 'A4' });
  expect(caution).toContain('Its leaves or bark, not the wood, can make you allergic');
});

test('an effect that has two entries of one meaning is said once, and an unknown strength is left out', () => {
  const twice = {
    ...hazard,
    effects: ['nausea, malaise', 'nausea, malaise (listed under site)'],
    strength: null,
  };
  expect(woodCaution({ hazard: twice, carcinogen: 'A4' })).toContain(
    'It can make you feel sick (skin, breathing; ',
  );
});

test.each([
  ['A1 confirmed human carcinogen', 'confirmed cause of cancer'],
  ['A2 suspected human carcinogen', 'suspected cause of cancer'],
  ['A4; sensitiser notation; TLV 0.5 mg/m3', 'cause of allergy'],
])('the notation “%s” is told as a %s', (carcinogen, told) => {
  expect(woodCaution({ hazard: null, carcinogen })).toContain(told);
});

test('a wood of which nothing is noted has the usual caution', () => {
  expect(woodCaution({ hazard: null, carcinogen: 'A4 not classifiable (all other wood dusts)' })).toBe(
    usualCaution,
  );
});

describe('for every wood of the reference data', () => {
  const cautions = woods.map((wood) => ({
    wood,
    caution: woodCaution({
      hazard: wood.hazard && {
        effects: wood.hazard.effect,
        sites: wood.hazard.sites,
        from: wood.hazard.from_part,
        strength: wood.hazard.potency_plus_signs,
        source: wood.hazard.source,
      },
      carcinogen: wood.carcinogen_notation.value,
    }),
  }));

  test('the caution fits where it is kept and defers to data sheet, codes and licensed advice', () => {
    for (const { wood, caution } of cautions) {
      expect(problemOfNote(caution), wood.id).toBeNull();
      expect(caution.length).toBeLessThanOrEqual(longestNote);
      expect(caution, wood.id).toMatch(/safety data sheet, your local codes and licensed advice rule/);
    }
  });

  test('no term of the data is left untranslated', () => {
    for (const { wood, caution } of cautions)
      expect(caution, wood.id).not.toMatch(
        /sensitiser|alveolitis|nasopharyngeal|malaise|respiratory|cardiac|toxin/,
      );
  });

  // American Woodturner, June 1990, as in shared/species.json; ACGIH as quoted there: beech and oak A1.
  test.each([
    ['beech-european', ['linked with cancer', 'confirmed cause of cancer']],
    ['oak-white', ['confirmed cause of cancer']],
    ['yew', ['is poisonous']],
    ['cocobolo', ['can make you allergic', 'irritates']],
  ])('%s is told as the sources have it', (id, told) => {
    const found = cautions.find(({ wood }) => wood.id === id);
    for (const words of told) expect(found?.caution).toContain(words);
  });
});

describe('the line at the bench', () => {
  const yew: SpeciesFact = {
    ...{ name: 'Yew', grain: 'curl', light: '#e8a868', dark: '#7d3417', reference: 'yew', retired: false },
    caution: woodCaution({ hazard, carcinogen: 'A4' }),
  };
  const nothing = { wood: null, reaction: null, flat: false, fumes: false };
  const rash = { day: '2026-02-01' as ShopDay, note: 'rash on both wrists', withdrawn: null };

  test('is empty where there is nothing to say that the stage does not say', () => {
    expect(cautionLine(nothing, 'Yew')).toBe('');
    expect(cautionLine({ ...nothing, wood: { ...yew, caution: '' } }, 'Yew')).toBe('');
    expect(cautionLine({ ...nothing, wood: { ...yew, caution: usualCaution } }, 'Yew')).toBe('');
  });

  test('names the wood, its source and what rules', () => {
    const line = cautionLine({ ...nothing, wood: yew }, 'Yew');
    expect(line).toMatch(/^Yew: It can make you allergic .*American Woodturner, June 1990/);
    expect(line).toMatch(/safety data sheet, your local codes and licensed advice rule over this note\.$/);
  });

  test('begins with what the wood did to the maker, then with the flat', () => {
    const line = cautionLine({ wood: yew, reaction: rash, flat: true, fumes: true }, 'Yew');
    expect(line).toMatch(/^You reacted to Yew: rash on both wrists\. Never spin a piece with a flat cut/);
    expect(line.indexOf('Fumes')).toBeGreaterThan(line.indexOf('allergic'));
  });

  test('says what rules where no caution of a wood does', () => {
    for (const some of [{ flat: true }, { fumes: true }, { reaction: rash }])
      expect(cautionLine({ ...nothing, ...some }, 'Yew')).toMatch(
        /Local codes, safety data sheets and licensed advice come first\.$/,
      );
  });
});
