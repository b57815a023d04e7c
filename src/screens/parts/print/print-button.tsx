import { PressButton } from '../../../ui/press/press-button.tsx';
import { labelWords as words } from '../../../words/label-words.ts';

/** Opens the printing of the browser; while nothing can be printed it says why. */
export const PrintButton = ({ refusedBecause }: { refusedBecause: string | undefined }) => (
  <PressButton
    tone="go"
    icon="export"
    label={words.print}
    disabledReason={refusedBecause}
    closing
    onAct={() => globalThis.print()}
    testId="print"
  />
);
