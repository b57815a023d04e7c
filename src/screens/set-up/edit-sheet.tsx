import type { ComponentChildren } from 'preact';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';

export interface EditSheetProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly onSave: () => void;
  /** Puts the thing away or brings it back; none for what is new. */
  readonly retired?: { readonly is: boolean; readonly onChange: () => void } | undefined;
  readonly kind: string;
  readonly error?: string | undefined;
  readonly children: ComponentChildren;
}

/** The sheet on which one thing of the shop is written down. */
export const EditSheet = ({ title, onClose, onSave, retired, kind, error, children }: EditSheetProps) => (
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
          onAct={onSave}
          testId={`${kind}-save`}
        />
        {retired && (
          <PressButton
            tone="quiet"
            label={retired.is ? words.bringBack : words.retire}
            closing
            onAct={retired.onChange}
            testId={`${kind}-retire`}
          />
        )}
      </>
    }
  >
    <div class="set-up-form">
      {children}
      {error && <p role="alert">{error}</p>}
    </div>
  </Sheet>
);
