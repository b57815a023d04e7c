import { type CatalogueWood, lookOf } from '../../app/wood-catalogue.ts';
import type { SpeciesFact } from '../../domain/set-up/facts.ts';
import { sameName, tidyText } from '../../domain/set-up/text.ts';
import { grainTones } from '../../ui/flow/grain-patterns.ts';
import { usualCaution, woodCaution } from '../../words/wood-caution-words.ts';
import { nameProblem, noteProblem, type Reading, readingOf } from '../parts/form/reading.ts';

/** A wood as it is typed and drawn. */
export type WoodDraft = Omit<SpeciesFact, 'retired'>;

/** A wood of the maker's own. */
export const ownWood: WoodDraft = {
  name: '',
  grain: 'straight',
  light: grainTones.honey.ground,
  dark: grainTones.honey.line,
  reference: null,
  caution: usualCaution,
};

export function readWood(draft: WoodDraft): Reading<WoodDraft, WoodDraft> {
  return readingOf({ name: nameProblem(draft.name), caution: noteProblem(draft.caution) }, () => ({
    ...draft,
    name: tidyText(draft.name),
    caution: tidyText(draft.caution),
  }));
}

export type ToneName = keyof typeof grainTones;
export const toneNames = Object.keys(grainTones) as readonly ToneName[];

/** The ready pair that a wood is drawn in, if it is one of them. */
export function toneOf({ light, dark }: Pick<WoodDraft, 'light' | 'dark'>): ToneName | undefined {
  return toneNames.find((name) => grainTones[name].ground === light && grainTones[name].line === dark);
}

/** What a wood of the reference data begins as: its caution names the source and what rules. */
export function woodOfCatalogue(wood: CatalogueWood): WoodDraft {
  const { hazard } = wood;
  const noted = hazard && {
    effects: hazard.effect,
    sites: hazard.sites,
    from: hazard.from_part,
    strength: hazard.potency_plus_signs,
    source: hazard.source,
  };
  return {
    name: capital(wood.common_name),
    ...lookOf(wood),
    reference: wood.id,
    caution: woodCaution({ hazard: noted, carcinogen: wood.carcinogen_notation.value }),
  };
}

/** The woods of which every typed word is a part of the common or the botanical name. */
export function findWoods(woods: readonly CatalogueWood[], typed: string): readonly CatalogueWood[] {
  const wanted = plain(typed).split(' ').filter(Boolean);
  return woods.filter(({ common_name, scientific_name }) => {
    const names = plain(`${common_name} ${scientific_name ?? ''}`);
    return wanted.every((word) => names.includes(word));
  });
}

/** Whether the shop has a wood of this name or of this entry already. */
export function isInShop(
  wood: CatalogueWood,
  own: readonly Pick<SpeciesFact, 'name' | 'reference'>[],
): boolean {
  return own.some(({ name, reference }) => reference === wood.id || sameName(name, wood.common_name));
}

function plain(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase();
}

function capital(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}
