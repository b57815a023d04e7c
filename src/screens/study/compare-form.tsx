import type { ComponentChildren } from 'preact';
import { type BatchId, batchId, type PersonId, personId, readId, shopDayText } from '../../domain/log/ids.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { compareWords as words } from '../../words/compare-words.ts';
import { momentWords } from '../../words/date-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { type CompareChoice, compareKinds, type Pair } from './compare-choice.ts';
import { stretches } from './study-question.ts';

interface FormProps {
  choice: CompareChoice;
  onChoose: (choice: CompareChoice) => void;
}

/** Which two lots are held against each other; by what measure stands beside it. */
export const CompareForm = ({ choice, onChoose, children }: FormProps & { children: ComponentChildren }) => (
  <section class="study-filter" aria-label={words.what}>
    <div class="study-wide">
      <SelectField
        label={words.what}
        hint={words.kindHints[choice.kind]}
        options={compareKinds.map((value) => ({ value, label: words.kinds[value] }))}
        value={choice.kind}
        onChoose={(kind) => onChoose({ ...choice, kind })}
        testId="compare-kind"
      />
    </div>
    <OfKind choice={choice} onChoose={onChoose} />
    {children}
  </section>
);

const lengths = stretches.filter((each) => each !== 'all');

const OfKind = ({ choice, onChoose }: FormProps) => {
  switch (choice.kind) {
    case 'periods':
      return (
        <SelectField
          label={words.stretch}
          options={lengths.map((value) => ({ value, label: words.stretches[value] }))}
          value={choice.stretch}
          onChoose={(stretch) => onChoose({ ...choice, stretch })}
          testId="compare-stretch"
        />
      );
    case 'day':
      return (
        <Field
          label={words.day}
          kind="date"
          value={choice.day ?? ''}
          onText={(text) => onChoose({ ...choice, day: readId(shopDayText, text) })}
          testId="compare-day"
        />
      );
    case 'people':
      return <People pair={choice.people} onChoose={(people) => onChoose({ ...choice, people })} />;
    case 'batches':
      return <Batches pair={choice.batches} onChoose={(batches) => onChoose({ ...choice, batches })} />;
    case 'mark':
      return <Marks choice={choice} onChoose={onChoose} />;
  }
};

interface PairProps<Id> {
  pair: Pair<Id>;
  onChoose: (pair: Pair<Id>) => void;
}

const People = ({ pair, onChoose }: PairProps<PersonId>) => {
  const people = factsOf(useShop().registers, 'person');
  if (people.length < 2)
    return (
      <div class="study-empty">
        <p>{words.fewPeople}</p>
        <PressButton
          label={words.toPeople}
          icon="next"
          onAct={() => goTo('set-up', 'people')}
          testId="compare-to-people"
        />
      </div>
    );
  return (
    <TwoSelects
      options={named(people)}
      pair={pair}
      onChoose={({ a, b }) => onChoose({ a: readId(personId, a), b: readId(personId, b) })}
    />
  );
};

const Batches = ({ pair, onChoose }: PairProps<BatchId>) => {
  const batches = factsOf(useShop().registers, 'batch');
  if (batches.length < 2) return <p class="study-note">{words.fewBatches}</p>;
  return (
    <TwoSelects
      options={named(batches)}
      pair={pair}
      onChoose={({ a, b }) => onChoose({ a: readId(batchId, a), b: readId(batchId, b) })}
    />
  );
};

interface Option {
  readonly value: string;
  readonly label: string;
}

const TwoSelects = ({ options, pair, onChoose }: PairProps<string> & { options: readonly Option[] }) => (
  <>
    <SelectField
      label={words.first}
      options={options}
      value={pair.a ?? undefined}
      nothing={words.choose}
      onChoose={(a) => onChoose({ ...pair, a })}
      testId="compare-a"
    />
    <SelectField
      label={words.second}
      options={options}
      value={pair.b ?? undefined}
      nothing={words.choose}
      error={pair.a !== null && pair.a === pair.b ? words.sameTwice : undefined}
      onChoose={(b) => onChoose({ ...pair, b })}
      testId="compare-b"
    />
  </>
);

const Marks = ({ choice, onChoose }: FormProps) => {
  const { registers } = useShop();
  const zone = useSession().zone();
  const marks = factsOf(registers, 'mark')
    .filter(({ fact }) => !fact.retired)
    .toSorted((a, b) => b.fact.at - a.fact.at);
  if (marks.length === 0)
    return (
      <div class="study-empty">
        <p>{words.noMarks}</p>
        <PressButton label={words.toSignals} icon="next" onAct={() => goTo('yield', 'signals')} />
      </div>
    );
  return (
    <div class="study-wide">
      <SelectField
        label={words.mark}
        options={marks.map(({ id, fact: { note, at } }) => ({
          value: id,
          label: `${note} · ${momentWords(at, zone)}`,
        }))}
        value={choice.mark?.id}
        nothing={words.choose}
        onChoose={(chosen) => {
          const mark = marks.find(({ id }) => id === chosen);
          onChoose({ ...choice, mark: mark ? { id: mark.id, ...mark.fact } : null });
        }}
        testId="compare-mark"
      />
    </div>
  );
};

const named = (facts: readonly { readonly id: string; readonly fact: { readonly name: string } }[]) =>
  facts.map(({ id, fact }) => ({ value: id, label: fact.name }));
