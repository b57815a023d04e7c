import { factsOf } from '../../domain/shop/registers.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { holdSetUpWords as words } from '../../words/hold-set-up-words.ts';
import { setUpWords } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import type { Form } from '../parts/form/use-form.ts';
import { CureFields } from './cure-fields.tsx';
import { MixFields } from './mix-fields.tsx';
import type { StageDraft } from './stage-draft.ts';

/** Of a hold: its times, what holds the pieces, what warmth does, and what is mixed. */
export const HoldFields = ({ form }: { form: Form<StageDraft> }) => {
  const { draft, change, errorAt } = form;
  const { registers } = useShop();
  const resources = factsOf(registers, 'resource').filter(
    ({ id, fact }) => !fact.retired || id === draft.resource,
  );
  return (
    <>
      {resources.length > 0 && (
        <ChoiceRow<string>
          label={words.held}
          choices={[
            { value: '', label: words.ownPlaces },
            ...resources.map(({ id, fact }) => ({ value: id, label: fact.name })),
          ]}
          value={draft.resource}
          onChoose={(resource) => change({ resource })}
          testId="stage-resource"
        />
      )}
      <CureFields form={form} ownPlaces={draft.resource === ''} />
      <Field
        label={words.least}
        hint={words.leastHint}
        optional={setUpWords.optional}
        kind="number"
        unit={words.h}
        value={draft.least}
        onText={(least) => change({ least })}
        error={errorAt('least')}
        testId="stage-least"
      />
      <Field
        label={words.ratedAt}
        hint={words.ratedAtHint}
        optional={setUpWords.optional}
        kind="number"
        unit={words.celsius}
        value={draft.ratedAt}
        onText={(ratedAt) => change({ ratedAt })}
        error={errorAt('ratedAt')}
        testId="stage-rated-at"
      />
      {draft.ratedAt.trim() !== '' && (
        <ChoiceRow
          label={words.quicker}
          hint={words.quickerHint}
          choices={[
            { value: 'no', label: words.quickerNo },
            { value: 'yes', label: words.quickerYes },
          ]}
          value={draft.quickerWarm}
          onChoose={(quickerWarm) => change({ quickerWarm })}
          testId="stage-quicker"
        />
      )}
      <MixFields form={form} />
    </>
  );
};
