import './files.css';
import { Panel } from '../../../ui/panel/panel.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { filesWords as words } from '../../../words/files-words.ts';
import { goTo } from '../address.ts';
import { useApp } from '../app-context.ts';
import { PhotosReminder } from '../photos/photos-reminder.tsx';
import { KeepButton, KeptState, OutsideState } from './copy-state.tsx';
import { HandOutButton } from './hand-out-button.tsx';

/** At the end of the day: what is copied, and a copy at one tap; nothing in the demo. */
export const DayCopies = () => {
  const desk = useApp().copies.desk.value;
  if (!desk) return null;
  return (
    <Panel title={words.dayTitle} testId="day-copies">
      <div class="files-pair">
        <div class="files-block">
          <h3>{words.outsideTitle}</h3>
          <OutsideState />
          <HandOutButton desk={desk} />
        </div>
        <div class="files-block">
          <h3>{words.keptTitle}</h3>
          <KeptState hasShelf={desk.hasShelf} />
          {desk.hasShelf && <KeepButton desk={desk} />}
        </div>
      </div>
      <PhotosReminder />
      <div>
        <PressButton
          tone="quiet"
          icon="next"
          label={words.allCopies}
          onAct={() => goTo('set-up', 'files')}
          testId="all-copies"
        />
      </div>
    </Panel>
  );
};
