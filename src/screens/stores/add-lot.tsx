import { useState } from 'preact/hooks';
import { lotId, readId, type SpeciesId } from '../../domain/log/ids.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { moistureWords as words } from '../../words/moisture-words.ts';
import { problemWords } from '../../words/problem-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { nameProblem } from '../parts/form/reading.ts';
import { woodChoices } from './wood-view.ts';

/** A further lot: its name and its wood. */
export const AddLot = () => {
  const session = useSession();
  const { registers } = useShop();
  const [name, setName] = useState('');
  const [wood, setWood] = useState<SpeciesId>();
  const [tried, setTried] = useState(false);
  const [refusal, setRefusal] = useState<string>();
  const choices = woodChoices(registers);

  async function add(): Promise<void> {
    setTried(true);
    const id = readId(lotId, session.newId());
    if (id === null || wood === undefined || nameProblem(name) !== undefined) return;
    const value = { name: tidyText(name), species: wood, retired: false };
    const result = await session.act({ kind: 'set', set: { register: 'lot', id, value } });
    setRefusal(result.kind === 'refused' ? problemWords(result.problem, registers) : undefined);
    if (result.kind !== 'saved') return;
    setName('');
    setTried(false);
  }

  return (
    <fieldset class="wood-add">
      <legend class="field-label">{words.addLot}</legend>
      <NameField
        name={name}
        onName={setName}
        error={refusal ?? (tried ? nameProblem(name) : undefined)}
        testId="lot-name"
      />
      <SelectField
        label={words.lotWood}
        options={choices.map(({ id, name: label }) => ({ value: id, label }))}
        value={wood}
        onChoose={setWood}
        error={tried && wood === undefined ? words.noWood : undefined}
        testId="lot-wood"
      />
      <PressButton icon="plus" label={words.addLot} onAct={() => void add()} testId="lot-add" />
    </fieldset>
  );
};
