import { Panel } from '../../ui/panel/panel.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { updateWords } from '../../words/update-words.ts';
import { useApp } from '../parts/app-context.ts';
import { RescueLink } from '../parts/rescue-link.tsx';
import { UpdateOffer } from '../parts/update-offer.tsx';

/** The version in use, the next one when it waits, and the way to the page that works without the app. */
export const VersionPanel = () => {
  const { version, updates } = useApp();
  return (
    <Panel title={words.version}>
      <UpdateOffer lead={updateWords.readyLead} testId="update-waiting" />
      <p>{words.versionIs(version)}</p>
      <p data-testid="offline-state">{updates.offlineReady.value ? words.offlineReady : words.offlineNot}</p>
      <RescueLink />
    </Panel>
  );
};
