import type { ComponentChildren } from 'preact';
import { useErrorBoundary } from 'preact/hooks';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { shellWords as words } from '../../words/shell-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession } from '../parts/app-context.ts';
import { RescueLink } from '../parts/rescue-link.tsx';
import { Unsaved } from '../parts/unsaved.tsx';

/** A place that breaks stands alone with its fault: the shop stays open, and so do the other places. */
export const PlaceBoundary = ({ children }: { children: ComponentChildren }) => {
  const [error, again] = useErrorBoundary();
  const session = useSession();
  if (error === undefined) return <>{children}</>;
  const toBench = () => {
    goTo('bench');
    again();
  };
  return (
    <main class="standing" data-testid="place-broken">
      <Notice
        tone="error"
        title={words.brokenTitle}
        actions={
          <>
            <PressButton label={words.tryAgain} tone="go" onAct={again} testId="broken-again" />
            <PressButton label={words.bench} onAct={toBench} testId="broken-bench" />
            {session.saving.value.kind !== 'not-saved' && (
              <PressButton label={words.reload} onAct={() => location.reload()} testId="broken-reload" />
            )}
          </>
        }
      >
        <p>{words.broken}</p>
        <p>{String(error)}</p>
        <RescueLink />
      </Notice>
      <Unsaved />
    </main>
  );
};
