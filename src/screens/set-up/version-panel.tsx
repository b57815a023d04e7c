import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useApp } from '../parts/app-context.ts';

/** The version in use, and the next one when it waits. */
export const VersionPanel = () => {
  const { version, updates } = useApp();
  return (
    <Panel title={words.version}>
      {updates.waiting.value && (
        <Notice
          tone="info"
          title={words.update}
          testId="update-waiting"
          actions={
            <PressButton
              tone="go"
              closing
              label={words.updateApply}
              onAct={updates.apply}
              testId="update-apply"
            />
          }
        >
          {words.updateLead}
        </Notice>
      )}
      <p>{words.versionIs(version)}</p>
      <p data-testid="offline-state">{updates.offlineReady.value ? words.offlineReady : words.offlineNot}</p>
    </Panel>
  );
};
