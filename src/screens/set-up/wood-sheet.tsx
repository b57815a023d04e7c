import type { GrainPattern } from '../../domain/set-up/facts.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { grainNames, grainTones } from '../../ui/flow/grain-patterns.ts';
import { GrainSwatch } from '../../ui/flow/grain-swatch.tsx';
import { grainWords, toneWords } from '../../words/grain-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useSession } from '../parts/app-context.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { type KeptDrafts, keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { useForm } from '../parts/form/use-form.ts';
import { CautionField } from './caution-field.tsx';
import type { FactSheetProps } from './fact-page.tsx';
import { ReactionsField } from './reactions-field.tsx';
import { readWood, type ToneName, toneNames, toneOf, type WoodDraft } from './wood-draft.ts';

export const keptWoods: KeptDrafts<WoodDraft> = keptDrafts<WoodDraft>();

export interface WoodSheetProps extends FactSheetProps<'species'> {
  /** What a new wood begins as. */
  readonly begin: WoodDraft;
}

/** Name, caution, the maker's own reactions, drawn grain and colours of a wood. */
export const WoodSheet = ({ id, now, begin, onClose }: WoodSheetProps) => {
  const session = useSession();
  const form = useForm({
    id,
    kept: keptWoods,
    start: now ?? begin,
    read: readWood,
    toSet: (wood) => ({ register: 'species', id, value: { ...wood, retired: now?.retired ?? false } }),
  });
  const { draft, change, errorAt } = form;
  return (
    <EditSheet
      title={now ? words.editWood : words.addWood}
      kind="wood"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={
        now && {
          is: now.retired,
          onChange: (retired) => form.put({ register: 'species', id, value: { ...now, retired } }),
        }
      }
    >
      <NameField
        name={draft.name}
        onName={(name) => change({ name })}
        error={errorAt('name')}
        testId="wood-name"
      />
      <CautionField
        caution={draft.caution}
        onCaution={(caution) => change({ caution })}
        error={errorAt('caution')}
        testId="wood-caution"
      />
      <ReactionsField
        reactions={draft.reactions ?? []}
        today={session.today()}
        onReactions={(reactions) => change({ reactions: [...reactions] })}
      />
      <GrainChoice {...draft} onChange={change} />
      <ToneChoice {...draft} onChange={change} />
    </EditSheet>
  );
};

type LookProps = WoodDraft & { readonly onChange: (part: Partial<WoodDraft>) => void };

const GrainChoice = ({ grain, light, dark, onChange }: LookProps) => (
  <ChoiceRow<GrainPattern>
    label={words.grain}
    choices={grainNames.map((value) => ({
      value,
      label: grainWords[value],
      mark: <GrainSwatch pattern={value} tones={{ ground: light, line: dark }} />,
    }))}
    value={grain}
    onChoose={(value) => onChange({ grain: value })}
    testId="wood-grain"
  />
);

/** The ready pairs, and before them the colours that the wood has when they are none of these. */
const ToneChoice = ({ grain, light, dark, onChange }: LookProps) => {
  const ready = toneOf({ light, dark });
  const now = { ground: light, line: dark };
  return (
    <ChoiceRow<ToneName | 'own'>
      label={words.colours}
      choices={[
        ...(ready
          ? []
          : [
              {
                value: 'own' as const,
                label: words.ownColours,
                mark: <GrainSwatch pattern={grain} tones={now} />,
              },
            ]),
        ...toneNames.map((value) => ({
          value,
          label: toneWords[value],
          mark: <GrainSwatch pattern={grain} tones={grainTones[value]} />,
        })),
      ]}
      value={ready ?? 'own'}
      onChoose={(name) => {
        if (name !== 'own') onChange({ light: grainTones[name].ground, dark: grainTones[name].line });
      }}
      testId="wood-colours"
    />
  );
};
