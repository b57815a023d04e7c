import { useEffect, useState } from 'preact/hooks';
import { askToKeep, isKept } from '../../app/keeping.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useApp } from '../parts/app-context.ts';

/** Version, what is kept on the tablet, and the demo shop. */
export const VersionPanel = () => {
  const app = useApp();
  const opening = app.opening.value;
  const inDemo = opening.kind === 'open' && opening.which === 'demo';
  return (
    <>
      <Panel title={words.version}>
        <p>{words.versionIs(app.version)}</p>
        <p>{app.updates.offlineReady.value ? words.offlineReady : words.offlineNot}</p>
        {app.updates.waiting.value && (
          <div class="set-up-acts">
            <p>{words.update}</p>
            <PressButton
              tone="go"
              closing
              label={words.updateApply}
              onAct={app.updates.apply}
              testId="update-apply"
            />
          </div>
        )}
        <Keeping />
      </Panel>
      <Panel title={words.demo} lead={words.demoLead}>
        <div class="set-up-acts">
          {inDemo ? (
            <>
              <PressButton closing label={words.leaveDemo} onAct={() => void app.leaveDemo()} />
              <PressButton
                closing
                tone="quiet"
                label={words.demoAfresh}
                onAct={() => void app.openDemo(true)}
                testId="demo-afresh"
              />
            </>
          ) : (
            <PressButton
              closing
              label={words.openDemo}
              onAct={() => void app.openDemo()}
              testId="open-demo"
            />
          )}
        </div>
      </Panel>
    </>
  );
};

const Keeping = () => {
  const [kept, setKept] = useState<boolean | null>(null);
  useEffect(() => void isKept().then(setKept), []);
  if (kept === null) return null;
  return (
    <div class="set-up-acts">
      <p>{kept ? words.kept : words.notKept}</p>
      {!kept && (
        <PressButton label={words.askKeep} onAct={() => void askToKeep().then(setKept)} testId="ask-keep" />
      )}
    </div>
  );
};
