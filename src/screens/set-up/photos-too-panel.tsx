import type { ReplicaDesk } from '../../app/replica.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { tabletsWords as words } from '../../words/tablets-words.ts';

/** Whether photos go to the other tablets and come from them, and how many are on their way. */
export const PhotosTooPanel = ({ desk }: { desk: ReplicaDesk }) => {
  const { toSend, toFetch, refused } = desk.photosStatus.value;
  const isOn = desk.photos.value;
  return (
    <Panel title={words.photos} testId="photos-too-panel">
      <ChoiceRow
        label={words.photosToo}
        hint={words.photosHint}
        choices={[
          { value: 'yes', label: words.yes },
          { value: 'no', label: words.no },
        ]}
        value={isOn ? 'yes' : 'no'}
        onChoose={(value) => void desk.setPhotos(value === 'yes')}
        testId="photos-too"
      />
      {isOn && refused && <Notice tone="warn" title={words.photosRefused[refused]} testId="photos-refused" />}
      {isOn && toSend + toFetch > 0 && (
        <p data-testid="photos-waiting">{words.photosWaiting({ toSend, toFetch })}</p>
      )}
    </Panel>
  );
};
