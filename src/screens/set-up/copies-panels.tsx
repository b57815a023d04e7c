import '../parts/files/files.css';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { filesWords as words } from '../../words/files-words.ts';
import { useApp } from '../parts/app-context.ts';
import { RestoreButton } from '../parts/files/restore-button.tsx';
import { OutsidePanel } from './outside-panel.tsx';
import { ShelfPanel } from './shelf-panel.tsx';

/** All about copies of the shop: out of the tablet, on it, and back. The demo has none. */
export const CopiesPanels = () => {
  const app = useApp();
  const opening = app.opening.value;
  const desk = app.copies.desk.value;
  if (opening.kind === 'open' && opening.which === 'demo') return <Notice tone="info" title={words.inDemo} />;
  if (!desk) return <p aria-busy="true">{words.openingDesk}</p>;
  return (
    <>
      <OutsidePanel desk={desk} />
      <ShelfPanel desk={desk} />
      <Panel title={words.restoreTitle} lead={words.restoreLead} testId="restore-panel">
        <div>
          <RestoreButton desk={desk} size="bench-small" />
        </div>
      </Panel>
    </>
  );
};
