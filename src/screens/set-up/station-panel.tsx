import { useState } from 'preact/hooks';
import { freeLetter } from '../../app/station-letter.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { factOf, factsOf } from '../../domain/shop/registers.ts';
import { codeLetters } from '../../domain/tray/tray-code.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';
import { NameField } from './name-field.tsx';
import { useSave } from './use-save.ts';

const themes = ['light', 'dark', 'glare'] as const;
const nobody = '';

/** Letter and name of this station, who taps on it, how it looks and sounds. */
export const StationPanel = () => {
  const { preferences } = useApp();
  const session = useSession();
  const { registers } = useShop();
  const fact = factOf(registers, { register: 'station', id: session.station });
  const { save, errorAt } = useSave();
  const [name, setName] = useState(fact?.name ?? '');
  const letter = fact?.letter ?? freeLetter(registers, session.station);
  const saveStation = (change: { name?: string; letter?: string }) =>
    save({
      register: 'station',
      id: session.station,
      value: { name: tidyText(name), letter, keys: fact?.keys ?? [], ...change },
    });
  const people = factsOf(registers, 'person').filter((person) => !person.fact.retired);
  return (
    <Panel title={words.tablet} lead={words.tabletLead}>
      <NameField
        label={words.tabletName}
        name={name}
        onName={setName}
        error={errorAt('name')}
        testId="tablet-name"
      />
      <div>
        <PressButton label={words.save} closing onAct={() => void saveStation({})} testId="tablet-save" />
      </div>
      <ChoiceRow
        label={words.letter}
        choices={[...codeLetters].map((value) => ({ value, label: value }))}
        value={letter}
        onChoose={(value) => void saveStation({ letter: value })}
      />
      <ChoiceRow
        label={words.who}
        choices={[
          ...people.map(({ id, fact: person }) => ({ value: `${id}`, label: person.name })),
          { value: nobody, label: words.nobody },
        ]}
        value={session.person.value ?? nobody}
        onChoose={(value) => {
          const id = people.find((person) => person.id === value)?.id ?? null;
          session.person.value = id;
          preferences.person.value = id;
        }}
      />
      <ChoiceRow
        label={words.theme}
        choices={themes.map((value) => ({ value, label: words.themes[value] }))}
        value={preferences.theme.value}
        onChoose={(value) => {
          preferences.theme.value = value;
        }}
        testId="theme"
      />
      <OnOff
        label={words.sound}
        on={preferences.sound.value}
        onChange={(on) => {
          preferences.sound.value = on;
        }}
        testId="sound"
      />
    </Panel>
  );
};

export interface OnOffProps {
  readonly label: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly testId: string;
}

export const OnOff = ({ label, on, onChange, testId }: OnOffProps) => (
  <ChoiceRow
    label={label}
    choices={[
      { value: 'on', label: words.on },
      { value: 'off', label: words.off },
    ]}
    value={on ? 'on' : 'off'}
    onChoose={(value) => onChange(value === 'on')}
    testId={testId}
  />
);
