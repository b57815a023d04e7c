import type { SpeciesId, VariantId } from '../../domain/log/ids.ts';
import type { GroupSurvival, RouteSurvival } from '../../domain/study/survival.ts';
import type { PictureBody } from '../../ui/picture/picture.ts';
import { type Leaning, chancesWords as words } from '../../words/chances-words.ts';

/** Groups with the lowest chance of a first on top. */
export function worstFirst<Group extends SpeciesId | VariantId>(
  groups: readonly GroupSurvival<Group>[],
): readonly GroupSurvival<Group>[] {
  return groups.toSorted((a, b) => a.firsts.pooled - b.firsts.pooled);
}

/** The likely yields of all groups in one picture, each with its interval, the lowest chance of a first on top. */
export const chancesPicture = (
  groups: readonly GroupSurvival<SpeciesId | VariantId>[],
  nameOfGroup: (id: string) => string,
): PictureBody => ({
  kind: 'bars',
  most: 1,
  ofWhole: true,
  bars: worstFirst(groups).flatMap((group) =>
    (['finished', 'firsts'] as const).map((to) => {
      const { pooled, pooledInterval } = group[to];
      return {
        label: `${nameOfGroup(group.group)}: ${words[to]}`,
        value: pooled,
        shown: words.likely(pooled, pooledInterval),
        interval: pooledInterval,
        tone: to === 'firsts' ? 'copper' : 'plain',
      };
    }),
  ),
});

/** Where a pooled estimate stands to the raw one, and why: two that read alike on the screen are alike. */
export function leaningOf({ raw, pooled }: RouteSurvival, all: readonly RouteSurvival[]): Leaning {
  if (raw === undefined) return all.some((each) => each.raw !== undefined) ? 'not-through' : 'a-guess';
  if (all.length < 2) return 'only-one';
  if (Math.round(100 * raw) === Math.round(100 * pooled)) return 'speaks-for-itself';
  return pooled > raw ? 'lifted' : 'lowered';
}
