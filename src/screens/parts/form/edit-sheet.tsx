import './form.css';
import type { ComponentChildren } from 'preact';
import { useEnterSaves } from '../../../ui/field/enter.ts';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { Sheet } from '../../../ui/sheet/sheet.tsx';
import { setUpWords as words } from '../../../words/set-up-words.ts';
import { Unsaved } from '../unsaved.tsx';
import { useFirstError } from './use-first-error.ts';
import type { Form } from './use-form.ts';

/** Puts the thing away or brings it back; none for what is new. */
interface Away {
  readonly is: boolean;
  /** Why it cannot be put away now. */
  readonly refusedBecause?: string | undefined;
  readonly onChange: (away: boolean) => Promise<boolean>;
}

export interface EditSheetProps {
  readonly title: string;
  /** What test ids begin with. */
  readonly kind: string;
  readonly form: Pick<Form<object>, 'changed' | 'restore' | 'refusal' | 'failures'>;
  /** Saves, and says whether it did; the sheet then closes. */
  readonly onSave: () => Promise<boolean>;
  readonly onClose: () => void;
  readonly away: Away | undefined;
  readonly children: ComponentChildren;
}

/** The sheet on which one thing of the shop is written down. Closing it keeps what is typed for the next opening. */
export const EditSheet = ({ title, kind, form, onSave, onClose, away, children }: EditSheetProps) => {
  const body = useFirstError(form.failures);
  const closeAfter = (act: Promise<boolean>) => void act.then((done) => done && onClose());
  useEnterSaves(body, () => closeAfter(onSave()));
  return (
    <Sheet
      title={title}
      onClose={onClose}
      closeLabel={words.close}
      testId={`${kind}-sheet`}
      foot={
        <>
          <PressButton
            tone="go"
            icon="check"
            label={words.save}
            closing
            onAct={() => closeAfter(onSave())}
            testId={`${kind}-save`}
          />
          {form.changed && <Restore kind={kind} isNew={!away} restore={form.restore} onClose={onClose} />}
          {away && !form.changed && (
            <PressButton
              tone="quiet"
              label={away.is ? words.bringBack : words.retire}
              disabledReason={away.is ? undefined : away.refusedBecause}
              closing
              onAct={() => closeAfter(away.onChange(!away.is))}
              testId={`${kind}-retire`}
            />
          )}
        </>
      }
    >
      <div class="form-fields" ref={body}>
        {children}
        {form.refusal && (
          <p role="alert" data-testid={`${kind}-refusal`}>
            {form.refusal}
          </p>
        )}
      </div>
      {/* The sheet lies over the screen and its bar, so a tap that is not on disk must be told here too. */}
      <Unsaved />
    </Sheet>
  );
};

interface RestoreProps {
  readonly kind: string;
  readonly isNew: boolean;
  readonly restore: () => void;
  readonly onClose: () => void;
}

/** Forgets what was typed: a known thing is as it was, a new one is not added. */
const Restore = ({ kind, isNew, restore, onClose }: RestoreProps) => (
  <PressButton
    tone="quiet"
    icon="undo"
    label={isNew ? words.discard : words.asItWas}
    closing
    onAct={() => {
      restore();
      if (isNew) onClose();
    }}
    testId={`${kind}-restore`}
  />
);
