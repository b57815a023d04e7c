import { useState } from 'preact/hooks';
import { stationFactOf } from '../../app/station-letter.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { factsOf, type Registers } from '../../domain/shop/registers.ts';
import { codeLetters } from '../../domain/tray/code-alphabet.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { shellWords } from '../../words/shell-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { nameProblem, readingOf } from '../parts/form/reading.ts';
import { useForm } from '../parts/form/use-form.ts';
import type { Named } from './named-sheet.tsx';
import { SaveForm } from './save-form.tsx';

const kept = keptDrafts<Named>();

/** Name of this station, and the letter that its tray codes begin with. */
export const StationPanel = () => {
  const session = useSession();
  const { registers } = useShop();
  const id = session.station;
  const station = stationFactOf(registers, { station: id, name: shellWords.stationName });
  const [refused, setRefused] = useState<{ readonly owner: string } | null>(null);
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
    setRefused(owner === undefined ? null : { owner });
    if (owner === undefined) void form.put({ register: 'station', id, value: { ...station, letter } });
  };
  return (
    <Panel title={words.station} lead={words.stationLead}>
      <ChoiceRow
        label={words.letter}
        choices={[...codeLetters].map((value) => ({
          value,
          label: value,
          detail: ownerOf(registers, { letter: value, besides: id }),
        }))}
        value={station.letter}
        onChoose={chooseLetter}
        error={refused ? words.letterTaken(refused.owner) : undefined}
        testId="tablet-letter"
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

/** The name of the other station that has a letter. */
function ownerOf(
  registers: Registers,
  { letter, besides }: { letter: string; besides: string },
): string | undefined {
  return factsOf(registers, 'station').find(({ id, fact }) => id !== besides && fact.letter === letter)?.fact
    .name;
}
