import { readId, batchId as toBatchId, personId as toPersonId } from '../../domain/log/ids.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { studyWords as words } from '../../words/study-words.ts';
import { useShop } from '../parts/app-context.ts';
import { type Chosen, stretches } from './study-question.ts';

const all = 'all';

/** Which taps are looked at: of what time, by whom, of which batch. */
export const StudyFilter = ({ chosen, onChoose }: { chosen: Chosen; onChoose: (chosen: Chosen) => void }) => {
  const { registers } = useShop();
  const batches = factsOf(registers, 'batch');
  const people = factsOf(registers, 'person');
  return (
    <section class="study-filter" aria-label={words.filter}>
      <SelectField
        label={words.stretch}
        options={stretches.map((value) => ({ value, label: words.stretches[value] }))}
        value={chosen.stretch}
        onChoose={(stretch) => onChoose({ ...chosen, stretch })}
        testId="study-stretch"
      />
      {people.length > 1 && (
        <SelectField
          label={words.person}
          options={[{ value: all, label: words.everybody }, ...people.map(named)]}
          value={chosen.person ?? all}
          onChoose={(id) => onChoose({ ...chosen, person: readId(toPersonId, id) ?? null })}
          testId="study-person"
        />
      )}
      {batches.length > 1 && (
        <SelectField
          label={words.batch}
          options={[{ value: all, label: words.allBatches }, ...batches.map(named)]}
          value={chosen.batch ?? all}
          onChoose={(id) => onChoose({ ...chosen, batch: readId(toBatchId, id) ?? null })}
          testId="study-batch"
        />
      )}
    </section>
  );
};

const named = ({ id, fact }: { readonly id: string; readonly fact: { readonly name: string } }) => ({
  value: id,
  label: fact.name,
});
