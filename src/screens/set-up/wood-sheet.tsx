import { useState } from 'preact/hooks';
import type { SpeciesId } from '../../domain/log/ids.ts';
import type { GrainPattern, SpeciesFact } from '../../domain/set-up/facts.ts';
import { longestNote, problemOfNote, tidyText } from '../../domain/set-up/text.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { grainNames, grainTones } from '../../ui/flow/grain-patterns.ts';
import { GrainSwatch } from '../../ui/flow/grain-swatch.tsx';
import { grainWords, toneWords } from '../../words/grain-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { EditSheet } from './edit-sheet.tsx';
import { NameField } from './name-field.tsx';
import { useSave } from './use-save.ts';

export const blankWood: SpeciesFact = {
  name: '',
  grain: 'straight',
  light: grainTones.honey.ground,
  dark: grainTones.honey.line,
  reference: null,
  caution: words.noHazard,
  retired: false,
};

export interface WoodSheetProps {
  readonly id: SpeciesId;
  readonly wood: SpeciesFact;
  readonly isNew: boolean;
  readonly onClose: () => void;
}

type ToneName = keyof typeof grainTones;
const toneNames = Object.keys(grainTones) as readonly ToneName[];

/** Name, drawn grain, colours and caution of a wood. */
export const WoodSheet = ({ id, wood, isNew, onClose }: WoodSheetProps) => {
  const { save, errorAt } = useSave();
  const [draft, setDraft] = useState(wood);
  const change = (part: Partial<SpeciesFact>) => setDraft({ ...draft, ...part });
  const noteProblem = problemOfNote(draft.caution);
  const saveAs = async (retired: boolean) => {
    if (noteProblem) return;
    const value = { ...draft, name: tidyText(draft.name), caution: tidyText(draft.caution), retired };
    if (await save({ register: 'species', id, value })) onClose();
  };
  const { light, dark } = draft;
  const tone = toneNames.find((name) => grainTones[name].ground === light && grainTones[name].line === dark);
  return (
    <EditSheet
      title={isNew ? words.addWood : words.woods}
      kind="wood"
      onClose={onClose}
      onSave={() => void saveAs(draft.retired)}
      retired={isNew ? undefined : { is: wood.retired, onChange: () => void saveAs(!wood.retired) }}
    >
      <NameField
        name={draft.name}
        onName={(name) => change({ name })}
        error={errorAt('name')}
        testId="wood-name"
      />
      <ChoiceRow<GrainPattern>
        label={words.grain}
        choices={grainNames.map((value) => ({
          value,
          label: grainWords[value],
          mark: <GrainSwatch pattern={value} tones={{ ground: light, line: dark }} />,
        }))}
        value={draft.grain}
        onChoose={(grain) => change({ grain })}
      />
      <ChoiceRow<ToneName>
        label={words.colours}
        choices={toneNames.map((value) => ({
          value,
          label: toneWords[value],
          mark: <GrainSwatch pattern={draft.grain} tones={grainTones[value]} />,
        }))}
        value={tone}
        onChoose={(name) => change({ light: grainTones[name].ground, dark: grainTones[name].line })}
      />
      <Field
        label={words.caution}
        hint={words.cautionHint}
        rows={4}
        value={draft.caution}
        onText={(caution) => change({ caution })}
        longest={longestNote}
        tooLong={(length) => words.tooLong(length, longestNote)}
        testId="wood-caution"
      />
    </EditSheet>
  );
};
