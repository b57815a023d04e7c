import * as v from 'valibot';
import type { GrainPattern } from '../domain/set-up/facts.ts';
import { namesOfData } from '../words/data-words.ts';
import { locale } from '../words/locale.ts';

const woodSchema = v.object({
  id: v.string(),
  common_name: v.string(),
  scientific_name: v.nullable(v.string()),
  hazard: v.nullable(
    v.object({
      effect: v.array(v.string()),
      sites: v.array(v.string()),
      from_part: v.array(v.string()),
      potency_plus_signs: v.nullable(v.number()),
      source: v.string(),
    }),
  ),
  shrinkage_green_to_ovendry_pct: v.object({
    radial: v.nullable(v.number()),
    tangential: v.nullable(v.number()),
    source: v.nullable(v.string()),
  }),
  carcinogen_notation: v.object({ value: v.string() }),
});

/** A wood of the reference data, with its hazard as the sources name it. */
export type CatalogueWood = Readonly<v.InferOutput<typeof woodSchema>>;

/** The woods of shared/species.json by name; loaded only when a wood is added. Throws a ValiError on data of another shape. */
export async function loadWoods(): Promise<readonly CatalogueWood[]> {
  const { default: raw } = await import('../../shared/species.json');
  const woods = v
    .parse(v.array(woodSchema), raw)
    .map((wood) => ({ ...wood, common_name: namesOfData.wood(wood.id, wood.common_name) }));
  return woods.toSorted((a, b) => a.common_name.localeCompare(b.common_name, locale));
}

interface Look {
  readonly grain: GrainPattern;
  readonly light: string;
  readonly dark: string;
}

const look = (grain: GrainPattern, light: string, dark: string): Look => ({ grain, light, dark });

/** How woods are drawn, by a part of their id; the first that fits. The drawings are ours: they tell apart, no more. */
const looks: readonly (readonly [part: string, look: Look])[] = [
  ['spalted', look('spalt', '#e9dcc2', '#3a2d22')],
  ['zebrawood', look('stripe', '#dcb878', '#3d2812')],
  ['snakewood', look('spalt', '#a8572d', '#2d120a')],
  ['ash', look('ring-porous', '#eadcc0', '#7a6242')],
  ['elm', look('ring-porous', '#d3ad7e', '#5e3d20')],
  ['locust', look('ring-porous', '#d9bd6f', '#5f4b18')],
  ['osage', look('ring-porous', '#e3b23c', '#664100')],
  ['oak', look('cathedral', '#d8b98a', '#6b4a22')],
  ['hickory', look('cathedral', '#dfc39a', '#6d4a26')],
  ['beech', look('ray-fleck', '#e6c7a0', '#7c4f2a')],
  ['hornbeam', look('ray-fleck', '#ece3d0', '#75684e')],
  ['sweetgum', look('interlocked', '#c99a74', '#52301c')],
  ['maple', look('curl', '#f0e2c6', '#8a6a3e')],
  ['birch', look('straight', '#f1dfbf', '#8a6940')],
  ['walnut', look('cathedral', '#a98560', '#3d2817')],
  ['butternut', look('cathedral', '#cfa87a', '#5b3d20')],
  ['cherry', look('pore-dots', '#d69a72', '#6b2f1a')],
  ['apple', look('pore-dots', '#d8a98c', '#6a3626')],
  ['pear', look('pore-dots', '#e3b89a', '#75432f')],
  ['plum', look('stripe', '#d9a48c', '#6e2c25')],
  ['olive', look('burl', '#d8c07a', '#4c4018')],
  ['boxwood', look('straight', '#f0dc9c', '#86682a')],
  ['yew', look('curl', '#e8a868', '#7d3417')],
  ['rosewood', look('interlocked', '#8d4b3a', '#f0d3bd')],
  ['blackwood', look('straight', '#4b3a35', '#e5d3c4')],
  ['ebony', look('pore-dots', '#3f3733', '#e8dccf')],
  ['wenge', look('stripe', '#6b4a35', '#f0dcc0')],
  ['cocobolo', look('burl', '#b5572d', '#3b150a')],
  ['padauk', look('interlocked', '#c2502c', '#45120a')],
  ['purpleheart', look('straight', '#8a4c78', '#f3dcec')],
  ['mahogany', look('interlocked', '#b46f4e', '#431d10')],
  ['sapele', look('stripe', '#a9674a', '#401c10')],
  ['teak', look('cathedral', '#b98a4f', '#452c10')],
];

const otherwise = look('interlocked', '#c79c6c', '#4d3116');

/** The pattern and colours by which a wood of the catalogue is drawn at first; the maker changes them. */
export function lookOf({ id }: CatalogueWood): Look {
  return (
    looks.find(([part]) => id.split('-').some((word) => word === part || word.endsWith(part)))?.[1] ??
    otherwise
  );
}
