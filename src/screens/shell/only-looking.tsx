import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { twoCopiesWords as words } from '../../words/two-copies-words.ts';

/** Stands while the store is of a newer version of the app. */
export const OnlyLooking = () => (
  <Notice
    tone="warn"
    title={words.onlyLookingTitle}
    testId="only-looking"
    actions={<PressButton label={words.reload} tone="go" onAct={() => location.reload()} />}
  >
    {words.onlyLooking}
  </Notice>
);
