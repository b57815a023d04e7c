import { useState } from 'preact/hooks';
import type { SpeciesId, VariantId } from '../../domain/log/ids.ts';
import type { GroupSurvival } from '../../domain/study/survival.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { ShareBar } from '../../ui/share/share-bar.tsx';
import { InTurn } from '../../ui/turn/in-turn.tsx';
import { chancesWords as words } from '../../words/chances-words.ts';
import { nameOf } from '../../words/names.ts';
import { studyWords } from '../../words/study-words.ts';
import { useShop } from '../parts/app-context.ts';
import { SavePicture } from '../parts/picture/save-picture.tsx';
import { WoodName } from '../parts/wood-name.tsx';
import { ChanceStages } from './chance-stages.tsx';
import { chancesPicture, leaningOf, worstFirst } from './chances-view.ts';
import type { PageProps } from './study-page-props.ts';

type By = 'species' | 'variants';

/** What comes out of each wood or variant, with how sure that is. */
export const ChancesPage = ({ study }: PageProps) => {
  const { registers } = useShop();
  const [by, setBy] = useState<By>('species');
  const shown = by === 'species' ? study.species : study.variants;
  const register = by === 'species' ? 'species' : 'variant';
  return (
    <>
      <ChoiceRow
        label={words.by}
        choices={[
          { value: 'species', label: words.bySpecies },
          { value: 'variants', label: words.byVariant },
        ]}
        value={by}
        onChoose={setBy}
        testId="chances-by"
      />
      {by === 'species'
        ? worstFirst(study.species).map((group) => (
            <InTurn key={group.group}>
              <Chances
                group={group}
                name={nameOf(registers, { register: 'species', id: group.group })}
                title={<WoodName species={group.group} />}
                groups={study.species}
                by={by}
              />
            </InTurn>
          ))
        : worstFirst(study.variants).map((group) => {
            const name = nameOf(registers, { register: 'variant', id: group.group });
            return (
              <InTurn key={group.group}>
                <Chances group={group} name={name} title={name} groups={study.variants} by={by} />
              </InTurn>
            );
          })}
      <SavePicture
        picture={() => ({
          title: words.pictureTitle,
          lead: words.pictureLead,
          body: chancesPicture(shown, (id) => nameOf(registers, { register, id })),
        })}
        testId="picture-chances"
      />
    </>
  );
};

interface ChancesProps {
  group: GroupSurvival<SpeciesId | VariantId>;
  name: string;
  title: preact.ComponentChildren;
  /** All that were reckoned together. */
  groups: readonly GroupSurvival<SpeciesId | VariantId>[];
  by: By;
}

const Chances = ({ group, name, title, groups, by }: ChancesProps) => (
  <Panel title={title} testId={`chances-${group.group}`}>
    <div class="study-pair">
      {(['finished', 'firsts'] as const).map((to) => (
        <Chance key={to} to={to} {...{ group, name, groups, by }} />
      ))}
    </div>
    <Disclosure
      summary={
        <>
          {words.rolled}: <b class="figures">{words.rolledIs(group.rolled.share)}</b>
        </>
      }
      testId={`chances-${group.group}-stages`}
    >
      <InTurn>
        <ChanceStages group={group} name={name} />
      </InTurn>
    </Disclosure>
  </Panel>
);

const Chance = ({
  to,
  group,
  name,
  groups,
  by,
}: Omit<ChancesProps, 'title'> & { to: 'finished' | 'firsts' }) => {
  const { registers } = useShop();
  const { raw, rawInterval, soFar, pooled, pooledInterval, worth } = group[to];
  const leaning = leaningOf(
    group[to],
    groups.map((each) => each[to]),
  );
  const means = to === 'finished' ? words.finishedMeans : words.firstsMeans;
  const alone =
    raw !== undefined
      ? words.aloneIs(raw, rawInterval)
      : soFar
        ? words.soFar(nameOf(registers, { register: 'stage', id: soFar.stage }), soFar.survival)
        : studyWords.notYet;
  return (
    <div class="study-figure" data-testid={`chance-${group.group}-${to}`}>
      <ShareBar
        label={words[to]}
        part={pooled}
        whole={1}
        shown={words.likely(pooled, pooledInterval)}
        low={pooledInterval[0]}
        high={pooledInterval[1]}
        tone={to === 'firsts' ? 'copper' : 'plain'}
      />
      <div class="study-line">
        <p>
          {words.alone}: <b class="figures">{alone}</b>
        </p>
        <Means label={studyWords.means}>{means(name, pooled)}</Means>
      </div>
      <p class="study-note">{words.why(leaning, { name, worth: worth.n, others: words.others[by] })}</p>
    </div>
  );
};
