import { useState } from 'preact/hooks';
import { stationFactOf, takeLetterOver } from '../../app/station-letter.ts';
import { readId, type StationId, stageId } from '../../domain/log/ids.ts';
import { liveStages, usualStage } from '../../domain/route/live-stages.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { factsOf, type Registers } from '../../domain/shop/registers.ts';
import { letterOf } from '../../domain/shop/station-letters.ts';
import { codeLetters } from '../../domain/tray/code-alphabet.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { shellWords } from '../../words/shell-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { nameProblem, readingOf } from '../parts/form/reading.ts';
import { useForm } from '../parts/form/use-form.ts';

import { SaveForm } from './save-form.tsx';

const kept = keptDrafts<{ readonly name: string }>();

/** Name of this station, the letter that its tray codes begin with, and the stage that it stands at. */
export const StationPanel = () => {
  const session = useSession();
  const { registers } = useShop();
  const id = session.station;
  const station = stationFactOf(registers, { station: id, name: shellWords.stationName });
  const [refused, setRefused] = useState<Owner | null>(null);
  const state = letterOf(registers, id);
  const form = useForm({
    id,
    kept,
    start: { name: station.name },
    read: ({ name }) => readingOf({ name: nameProblem(name) }, () => tidyText(name)),
    toSet: (name) => ({ register: 'station', id, value: { ...station, name } }),
  });
  const chooseLetter = (letter: string) => {
    const owner = ownerOf(registers, { letter, besides: id });
    // An object each time: a second refusal, too, has to give the mark back to the letter in use.
    setRefused(owner ? { ...owner } : null);
    const { handedTo: _gone, ...own } = station;
    if (owner === undefined) void form.put({ register: 'station', id, value: { ...own, letter } });
  };
  return (
    <Panel title={words.station} lead={words.stationLead}>
      <ChoiceRow
        label={words.letter}
        choices={[...codeLetters].map((value) => ({
          value,
          label: value,
          detail: ownerOf(registers, { letter: value, besides: id })?.name,
        }))}
        value={state.kind === 'lost' ? undefined : station.letter}
        onChoose={chooseLetter}
        error={
          refused
            ? words.letterTaken(refused.name)
            : state.kind === 'lost' && state.free === null
              ? words.noLetterFree
              : undefined
        }
        testId="tablet-letter"
      />
      {refused && (
        <div>
          <PressButton
            label={words.takeLetter(refused.letter)}
            detail={words.takeLetterDetail(refused.name)}
            closing
            onAct={() => {
              setRefused(null);
              void takeLetterOver(session, refused.id, shellWords.stationName);
            }}
            testId="tablet-letter-take"
          />
        </div>
      )}
      <SelectField
        label={words.usualStage}
        hint={words.usualStageHint}
        options={[
          { value: anyStage, label: words.noUsualStage },
          ...liveStages(registers).map((stage) => ({
            value: `${stage}`,
            label: nameOf(registers, { register: 'stage', id: stage }),
          })),
        ]}
        value={usualStage(registers, id) ?? anyStage}
        onChoose={(value) =>
          void form.put({ register: 'station', id, value: { ...station, stage: readId(stageId, value) } })
        }
        testId="tablet-stage"
      />
      <SaveForm form={form} kind="tablet">
        <NameField
          label={words.tabletName}
          name={form.draft.name}
          onName={(name) => form.change({ name })}
          error={form.errorAt('name')}
          testId="tablet-name"
        />
      </SaveForm>
    </Panel>
  );
};

const anyStage = '';

interface Owner {
  readonly id: StationId;
  readonly name: string;
  readonly letter: string;
}

/** The other station that has a letter; one that has handed it over has it no more. */
function ownerOf(
  registers: Registers,
  { letter, besides }: { letter: string; besides: StationId },
): Owner | undefined {
  const owner = factsOf(registers, 'station').find(
    ({ id, fact }) => id !== besides && fact.letter === letter && letterOf(registers, id).kind === 'own',
  );
  return owner && { id: owner.id, name: owner.fact.name, letter };
}
