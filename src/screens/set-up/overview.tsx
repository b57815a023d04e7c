import { Icon } from '../../ui/icon/icon.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { manualWayWords } from '../../words/manual-way-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { updateWords } from '../../words/update-words.ts';
import { goTo } from '../parts/address.ts';
import { useApp, useShop } from '../parts/app-context.ts';
import { sectionIcons, sectionNames, sectionTitles } from './sections.ts';
import { firstSteps, liveCount, type Step, type StepName } from './set-up-view.ts';

/** All of Set-up at a glance, and for a newcomer the one thing to do next. */
export const Overview = () => {
  const shop = useShop();
  const waiting = useApp().updates.waiting.value;
  const steps = firstSteps(shop);
  return (
    <main class="set-up">
      <header>
        <h1>{words.title}</h1>
        <p>{words.lead}</p>
      </header>
      {steps.length > 0 && <FirstSteps steps={steps} />}
      <ul class="set-up-rack">
        {sectionNames.map((name) => {
          const count = liveCount(shop.registers, name);
          return (
            <li key={name}>
              <PressButton
                size="bench-small"
                icon={sectionIcons[name]}
                label={sectionTitles[name]}
                detail={
                  name === 'tablet' && waiting
                    ? updateWords.ready
                    : count !== undefined && (
                        <span data-testid={`setup-count-${name}`}>{words.live(count)}</span>
                      )
                }
                onAct={() => goTo('set-up', name)}
                testId={`setup-${name}`}
              />
            </li>
          );
        })}
      </ul>
    </main>
  );
};

const goes: Readonly<Record<StepName, () => void>> = {
  wood: () => goTo('set-up', 'woods'),
  ferrule: () => goTo('set-up', 'parts'),
  variant: () => goTo('set-up', 'variants'),
  batch: () => goTo('set-up', 'batches'),
  stages: () => goTo('set-up', 'route'),
  tray: () => goTo('trays', 'new'),
};

/** The way of a newcomer to the first tray: what is done, the one thing to do now, what comes after it. */
const FirstSteps = ({ steps }: { steps: readonly Step[] }) => {
  const next = steps.find(({ done }) => !done);
  return (
    <Panel
      title={words.firstSteps}
      tone="warn"
      actions={
        <PressButton
          icon="book"
          tone="quiet"
          label={manualWayWords.title}
          onAct={() => goTo('set-up', 'manual')}
          testId="first-manual"
        />
      }
      testId="first-steps"
    >
      <ol class="set-up-steps">
        {steps.map((step, place) => (
          <li key={step.name} data-done={step.done || undefined}>
            {step === next ? (
              <PressButton
                size="bench-small"
                tone="go"
                icon="next"
                label={words.steps[step.name]}
                detail={words.stepReasons[step.name]}
                onAct={goes[step.name]}
                testId="setup-next"
              />
            ) : (
              <span class="set-up-step">
                {step.done ? <Icon name="check" size={32} /> : <b class="figures">{place + 1}</b>}
                <span>{words.steps[step.name]}</span>
                {step.done && <b>{words.stepDone}</b>}
              </span>
            )}
          </li>
        ))}
      </ol>
    </Panel>
  );
};
