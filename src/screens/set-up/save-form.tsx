import '../parts/form/form.css';
import type { ComponentChildren } from 'preact';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useFirstError } from '../parts/form/use-first-error.ts';
import type { Form } from '../parts/form/use-form.ts';

export interface SaveFormProps {
  readonly form: Pick<Form<object>, 'changed' | 'restore' | 'save' | 'failures' | 'refusal'>;
  readonly kind: string;
  readonly children: ComponentChildren;
}

/** A few fields in a panel with their own save; the button says when there is nothing to save. */
export const SaveForm = ({ form, kind, children }: SaveFormProps) => (
  <div class="form-fields" ref={useFirstError(form.failures)}>
    {children}
    {form.refusal && <p role="alert">{form.refusal}</p>}
    <div class="set-up-acts">
      <PressButton
        tone="go"
        icon="check"
        label={words.save}
        disabledReason={form.changed ? undefined : words.saved}
        closing
        onAct={() => void form.save()}
        testId={`${kind}-save`}
      />
      {form.changed && (
        <PressButton
          tone="quiet"
          icon="undo"
          label={words.asItWas}
          closing
          onAct={form.restore}
          testId={`${kind}-restore`}
        />
      )}
    </div>
  </div>
);
