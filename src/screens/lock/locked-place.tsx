import './lock.css';
import { useState } from 'preact/hooks';
import { recoveryLength, tryPin, waitAfter } from '../../app/bench-lock.ts';
import { canHash } from '../../app/pin-hash.ts';
import { CodePad } from '../../ui/entry/code-pad.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { lockWords as words } from '../../words/lock-words.ts';
import { useApp } from '../parts/app-context.ts';
import { RescueLink } from '../parts/rescue-link.tsx';
import { useLockDoor } from '../parts/use-lock-door.ts';
import { useWaitLeft } from '../parts/use-wait-left.ts';

/** As on a counting machine. */
const rows = ['789', '456', '123', '0'];

/** Stands in the place of all that is locked: the pad for the PIN, and the way back to the bench. */
export const LockedPlace = () => (
  <main class="lock" data-testid="locked">
    <h1>{words.title}</h1>
    <p>{words.lead}</p>
    {canHash() ? <PinPad /> : <Notice tone="warn" title={words.cannot} />}
    <p>{words.forgotten}</p>
    <RescueLink />
  </main>
);

const PinPad = () => {
  const { lock } = useApp().preferences;
  const door = useLockDoor();
  const left = useWaitLeft();
  const [typed, setTyped] = useState('');
  const [checking, setChecking] = useState(false);
  const wrong = lock.value?.wrong ?? 0;
  const enter = async () => {
    if (checking || typed === '') return;
    setChecking(true);
    // The right one takes this pad away.
    const tried = await tryPin(door, typed);
    if (tried !== 'waits') setTyped('');
    setChecking(false);
  };
  return (
    <CodePad
      label={checking ? words.checking : words.pinIn(left)}
      typed={typed}
      onTyped={setTyped}
      rows={rows}
      longest={recoveryLength}
      hidden
      error={checking ? undefined : faultWords({ wrong, waits: left > 0 })}
      onEnter={() => void enter()}
      enterLabel={words.open}
      eraseLabel={words.erase}
      testId="pin-pad"
    />
  );
};

function faultWords({ wrong, waits }: { wrong: number; waits: boolean }): string | undefined {
  if (wrong === 0) return undefined;
  return waits ? words.wrongWait(waitAfter(wrong) / 1000) : words.wrong;
}
