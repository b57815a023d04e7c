import { PressButton } from '../../../ui/press/press-button.tsx';
import { labelWords as words } from '../../../words/label-words.ts';

/** Opens the printing of the browser; while there is nothing to print it says why. */
export const PrintButton = ({ refused }: { refused: boolean }) => (
  <PressButton
    tone="go"
    icon="export"
    label={words.print}
    disabledReason={refused ? words.chooseTrays : undefined}
    closing
    onAct={() => globalThis.print()}
    testId="print"
  />
);
