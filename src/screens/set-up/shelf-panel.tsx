import type { CopyDesk } from '../../app/copy-desk.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { filesWords as words } from '../../words/files-words.ts';
import { KeepButton, KeptState } from '../parts/files/copy-state.tsx';

/** Copies that the tablet makes by itself, and one more at a tap. */
export const ShelfPanel = ({ desk }: { desk: CopyDesk }) => (
  <Panel title={words.keptTitle} lead={words.keptLead} testId="shelf-panel">
    <div class="files-block">
      <KeptState hasShelf={desk.hasShelf} />
      {desk.hasShelf && <KeepButton desk={desk} />}
    </div>
  </Panel>
);
