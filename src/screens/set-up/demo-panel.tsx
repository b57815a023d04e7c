import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useApp } from '../parts/app-context.ts';

/** The way into the demo shop and out of it. */
export const DemoPanel = () => {
  const app = useApp();
  const opening = app.opening.value;
  const inDemo = opening.kind === 'open' && opening.which === 'demo';
  return (
    <Panel title={words.demo} lead={words.demoLead}>
      <div class="set-up-acts">
        {inDemo ? (
          <>
            <PressButton
              closing
              label={words.leaveDemo}
              onAct={() => void app.leaveDemo()}
              testId="demo-leave"
            />
            <PressButton
              closing
              tone="quiet"
              label={words.demoAfresh}
              onAct={() => void app.openDemo(true)}
              testId="demo-afresh"
            />
          </>
        ) : (
          <PressButton closing label={words.openDemo} onAct={() => void app.openDemo()} testId="open-demo" />
        )}
      </div>
    </Panel>
  );
};
