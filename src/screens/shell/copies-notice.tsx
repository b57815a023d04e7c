import type { TwoCopies } from '../../app/two-copies.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { twoCopiesWords as words } from '../../words/two-copies-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';

/** What became of the two copies of the log, as long as somebody should know. */
export const CopiesNotice = ({ copies }: { copies: TwoCopies }) => {
  const { putBack, missing, suspect, twin } = copies.state.value;
  // Where nothing is left at all, the way to a file stands on the same screen.
  const hasPlaces = useShop().registers.size > 0;
  return (
    <>
      {putBack > 0 && (
        <Notice
          tone="saved"
          title={words.putBackTitle(putBack)}
          testId="healed"
          actions={<PressButton label={words.seen} onAct={copies.seen} testId="healed-seen" />}
        >
          {words.putBack}
        </Notice>
      )}
      {missing > 0 && (
        <Notice
          tone="error"
          title={words.missingTitle(missing)}
          testId="loss"
          actions={
            <>
              {hasPlaces && (
                <PressButton label={words.toFiles} tone="go" onAct={() => goTo('set-up', 'files')} />
              )}
              <PressButton
                label={words.goOnWithout}
                closing
                onAct={() => void copies.goOnWithout().catch(() => undefined)}
                testId="loss-go-on"
              />
            </>
          }
        >
          {words.missing}
        </Notice>
      )}
      {suspect && (
        <Notice tone="warn" title={words.suspectTitle} testId="suspect">
          {words.suspect}
        </Notice>
      )}
      {!suspect && twin === 'failed' && (
        <Notice tone="warn" title={words.behindTitle} testId="behind">
          {words.behind}
        </Notice>
      )}
    </>
  );
};
