import type { Opening } from '../../app/app.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { shellWords } from '../../words/shell-words.ts';
import { standingWords as words } from '../../words/standing-words.ts';
import { useApp } from '../parts/app-context.ts';
import { RescueLink } from '../parts/rescue-link.tsx';

/** Why the shop does not open, and what was kept. */
export const StandingTrouble = ({
  opening,
}: {
  opening: Extract<Opening, { kind: 'outdated' | 'failed' }>;
}) => {
  const app = useApp();
  const reload = <PressButton label={shellWords.reload} tone="go" onAct={() => location.reload()} />;
  const again = <PressButton label={shellWords.tryAgain} tone="go" onAct={() => void app.tryAgain()} />;
  const said = words[opening.kind === 'outdated' ? 'outdated' : opening.why];
  const isOld = opening.kind === 'outdated' || opening.why === 'newer-store';
  return (
    <main class="standing">
      <Notice
        tone={opening.kind === 'outdated' ? 'info' : 'error'}
        title={said.title}
        actions={isOld ? reload : again}
      >
        <p>{said.help}</p>
        {!isOld && <p>{String(opening.error)}</p>}
        <RescueLink />
      </Notice>
    </main>
  );
};
