import { Field } from '../../ui/field/field.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import type { Form } from '../parts/form/use-form.ts';
import type { StageDraft } from './stage-draft.ts';

/** How long a hold cures, and how many pieces its own clamps or racks take. */
export const CureFields = ({
  form: { draft, change, errorAt },
  ownPlaces,
}: {
  form: Form<StageDraft>;
  ownPlaces: boolean;
}) => (
  <>
    <fieldset class="set-up-bill">
      <legend class="field-label">{words.cure}</legend>
      <div class="set-up-pair">
        <Field
          label={words.hours}
          kind="number"
          value={draft.hours}
          onText={(hours) => change({ hours })}
          error={errorAt('hours')}
          testId="stage-hours"
        />
        <Field
          label={words.minutes}
          kind="number"
          value={draft.minutes}
          onText={(minutes) => change({ minutes })}
          error={errorAt('minutes')}
          testId="stage-minutes"
        />
      </div>
    </fieldset>
    {ownPlaces && (
      <Field
        label={words.capacity}
        hint={words.capacityHint}
        optional={words.optional}
        kind="number"
        value={draft.capacity}
        onText={(capacity) => change({ capacity })}
        error={errorAt('capacity')}
        testId="stage-capacity"
      />
    )}
  </>
);
