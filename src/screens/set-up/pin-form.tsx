import '../parts/form/form.css';
import { useState } from 'preact/hooks';
import { afterStep, newPinFault, type Tried, tryPin, waitAfter } from '../../app/bench-lock.ts';
import { hashPin, newRecovery } from '../../app/pin-hash.ts';
import { Field } from '../../ui/field/field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { lockWords as words } from '../../words/lock-words.ts';
import { useFirstError } from '../parts/form/use-first-error.ts';
import { useLockDoor } from '../parts/use-lock-door.ts';
import { useWaitLeft } from '../parts/use-wait-left.ts';

export interface PinFormProps {
  /** Asks for the PIN as it is now. */
  readonly asks?: boolean;
  /** Gives a new PIN; without it the lock is taken away. */
  readonly gives?: boolean;
  /** It is done; the recovery number of the new PIN, if one was given. */
  readonly onDone: (recovery: string) => void;
  readonly act: string;
  readonly testId: string;
}

const nothing = { current: '', once: '', again: '' };

/** The fields in which a PIN is set, changed or taken away. */
export const PinForm = ({ asks = false, gives = false, onDone, act, testId }: PinFormProps) => {
  const door = useLockDoor();
  const left = useWaitLeft();
  const [typed, setTyped] = useState(nothing);
  const [failures, setFailures] = useState(0);
  const [busy, setBusy] = useState(false);
  const body = useFirstError(failures);
  const fault = gives && failures > 0 ? newPinFault(typed) : undefined;
  const wrong = asks ? (door.lock.value?.wrong ?? 0) : 0;

  async function tried(): Promise<Tried> {
    return asks ? tryPin(door, typed.current) : 'opened';
  }
  async function give(): Promise<string> {
    const recovery = newRecovery();
    const [pin, hashed] = await Promise.all([hashPin(typed.once), hashPin(recovery)]);
    door.lock.value = afterStep(door.lock.value, { kind: 'set', pin, recovery: hashed, now: door.now() });
    return recovery;
  }
  async function save(): Promise<void> {
    if (busy || (asks && left > 0)) return;
    if (gives && newPinFault(typed)) return setFailures(failures + 1);
    setBusy(true);
    try {
      const result = await tried();
      if (result === 'wrong' || result === 'waits') return setFailures(failures + 1);
      if (gives) onDone(await give());
      else {
        door.lock.value = afterStep(door.lock.value, { kind: 'take-away' });
        onDone('');
      }
      setTyped(nothing);
      setFailures(0);
    } finally {
      setBusy(false);
    }
  }
  const slot = (name: keyof typeof nothing) => ({
    kind: 'pin' as const,
    value: typed[name],
    onText: (text: string) => setTyped({ ...typed, [name]: text }),
    onEnter: () => void save(),
    testId: `${testId}-${name}`,
  });
  return (
    <div class="form-fields" ref={body}>
      {asks && (
        <Field
          {...slot('current')}
          label={words.currentPin}
          hint={words.currentHint}
          error={
            busy || wrong === 0
              ? undefined
              : left > 0
                ? words.wrongWait(waitAfter(wrong) / 1000)
                : words.wrong
          }
        />
      )}
      {gives && (
        <>
          <Field
            {...slot('once')}
            label={words.newPin}
            hint={words.newPinHint}
            error={fault === 'shape' ? words.shape : undefined}
          />
          <Field
            {...slot('again')}
            label={words.again}
            error={fault === 'differs' ? words.differs : undefined}
          />
        </>
      )}
      <div class="set-up-acts">
        <PressButton
          label={act}
          disabledReason={busy ? words.checking : asks && left > 0 ? words.left(left) : undefined}
          onAct={() => void save()}
          testId={`${testId}-save`}
        />
      </div>
    </div>
  );
};
