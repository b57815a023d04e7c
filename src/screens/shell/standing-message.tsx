import { Notice } from '../../ui/notice/notice.tsx';
import { shellWords as words } from '../../words/shell-words.ts';
import { RescueLink } from '../parts/rescue-link.tsx';

/** What stands while the shop opens. */
export const StandingMessage = ({ waitsForOtherWindow }: { waitsForOtherWindow: boolean }) => (
  <main class="standing" aria-busy="true">
    {waitsForOtherWindow ? <Notice tone="warn" title={words.otherWindow} /> : <p>{words.opening}</p>}
    <div class="standing-late">
      <p>{words.stillOpening}</p>
      <RescueLink />
    </div>
  </main>
);
