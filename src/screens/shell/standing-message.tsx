import type { Opening } from '../../app/opening.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { shellWords as words } from '../../words/shell-words.ts';
import { useApp } from '../parts/app-context.ts';
import { RescueLink } from '../parts/rescue-link.tsx';

/** What stands where no shop is open: that it opens, or why it does not and what was kept. */
export const StandingMessage = ({ opening }: { opening: Exclude<Opening, { kind: 'open' }> }) => {
  const app = useApp();
  const reload = <PressButton label={words.reload} tone="go" onAct={() => location.reload()} />;
  switch (opening.kind) {
    case 'opening':
      return (
        <main class="standing" aria-busy="true">
          {opening.waitsForOtherWindow ? (
            <Notice tone="warn" title={words.otherWindow} />
          ) : (
            <p>{words.opening}</p>
          )}
          <div class="standing-late">
            <p>{words.stillOpening}</p>
            <RescueLink />
          </div>
        </main>
      );
    case 'outdated':
      return (
        <main class="standing">
          <Notice tone="info" title={words.outdatedTitle} actions={reload}>
            <p>{words.outdated}</p>
            <RescueLink />
          </Notice>
        </main>
      );
    case 'failed':
      return (
        <main class="standing">
          {opening.why === 'newer-store' ? (
            <Notice tone="error" title={words.newerTitle} actions={reload}>
              <p>{words.newer}</p>
              <RescueLink />
            </Notice>
          ) : (
            <Notice
              tone="error"
              title={words.failedTitle}
              actions={<PressButton label={words.tryAgain} tone="go" onAct={() => void app.tryAgain()} />}
            >
              <p>{words.failed}</p>
              <p>{String(opening.error)}</p>
              <RescueLink />
            </Notice>
          )}
        </main>
      );
  }
};
