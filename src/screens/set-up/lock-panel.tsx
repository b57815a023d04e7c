import '../parts/form/form.css';
import { useState } from 'preact/hooks';
import { afterStep, idleMinutes } from '../../app/bench-lock.ts';
import { systemClock } from '../../app/clock.ts';
import type { BenchLock } from '../../app/kept-lock.ts';
import { canHash } from '../../app/pin-hash.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { lockWords as words } from '../../words/lock-words.ts';
import { goTo } from '../parts/address.ts';
import { useApp } from '../parts/app-context.ts';
import { PinForm } from './pin-form.tsx';

/** The lock that keeps visitors to the bench: set, changed, taken away and closed here. */
export const LockPanel = () => {
  const { preferences, forgets } = useApp();
  const lock = preferences.lock.value;
  const [recovery, setRecovery] = useState<string | null>(null);
  return (
    <Panel title={words.panel} lead={words.panelLead} testId="lock-panel">
      <div class="form-fields">
        {!canHash() && <Notice tone="warn" title={words.cannot} />}
        {forgets !== 'nothing' && <Notice tone="warn" title={words.forgets} />}
        {recovery !== null && <Recovery digits={recovery} onWritten={() => setRecovery(null)} />}
        {lock && <Locking lock={lock} />}
        {canHash() && !lock && <PinForm gives onDone={setRecovery} act={words.set} testId="pin" />}
        {canHash() && lock && (
          <>
            <Disclosure summary={words.change} testId="lock-change">
              <PinForm asks gives onDone={setRecovery} act={words.changeNow} testId="change" />
            </Disclosure>
            <Disclosure summary={words.takeAway} testId="lock-take-away">
              <PinForm asks onDone={() => setRecovery(null)} act={words.takeAwayNow} testId="away" />
            </Disclosure>
          </>
        )}
        <p>{words.kept}</p>
        <p>{words.isNot}</p>
      </div>
    </Panel>
  );
};

const off = 'off';

const Locking = ({ lock }: { lock: BenchLock }) => {
  const { preferences } = useApp();
  const lockNow = () => {
    preferences.lock.value = afterStep(preferences.lock.value, { kind: 'lock' });
    goTo('bench');
  };
  return (
    <>
      <div class="set-up-acts">
        <PressButton
          icon="lock"
          tone="go"
          closing
          label={words.lockNow}
          detail={words.lockNowDetail}
          onAct={lockNow}
          testId="lock-now"
        />
      </div>
      <ChoiceRow
        label={words.byItself}
        choices={[
          { value: off, label: words.never },
          ...idleMinutes.map((n) => ({ value: `${n}`, label: words.minutes(n) })),
        ]}
        value={lock.minutes === null ? off : `${lock.minutes}`}
        onChoose={(value) => {
          const minutes = idleMinutes.find((n) => `${n}` === value) ?? null;
          const step = { kind: 'minutes', minutes, now: systemClock.now() } as const;
          preferences.lock.value = afterStep(preferences.lock.value, step);
        }}
        testId="lock-minutes"
      />
    </>
  );
};

const Recovery = ({ digits, onWritten }: { digits: string; onWritten: () => void }) => (
  <Notice
    tone="warn"
    title={words.recoveryTitle}
    actions={
      <PressButton tone="go" icon="check" label={words.written} onAct={onWritten} testId="recovery-written" />
    }
    testId="lock-recovery"
  >
    <p class="set-up-recovery code" data-testid="recovery-number">
      {words.recovery(digits)}
    </p>
    <p>{words.recoveryLead}</p>
  </Notice>
);
