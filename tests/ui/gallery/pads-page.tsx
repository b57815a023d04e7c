import { useState } from 'preact/hooks';
import { SavedMark, type SavedState } from '../../../src/ui/bench/saved-mark.tsx';
import { CodePad } from '../../../src/ui/entry/code-pad.tsx';
import type { Refusal } from '../../../src/ui/entry/number-entry.ts';
import { NumberPad } from '../../../src/ui/entry/number-pad.tsx';
import { Stepper } from '../../../src/ui/entry/stepper.tsx';

const refusal = (why: Refusal): string => {
  switch (why.why) {
    case 'above':
      return `Only ${why.most} in this tray.`;
    case 'below':
      return `Not below ${why.least}.`;
    case 'too-fine':
      return `At most ${why.decimals} decimals.`;
    case 'not-a-number':
      return 'That is no number.';
  }
};

/** The pad for tray codes. */
export const CodePage = () => {
  const [typed, setTyped] = useState('A17');
  return (
    <main class="gallery">
      <CodePad
        label="Tray code"
        typed={typed}
        onTyped={setTyped}
        rows={['ACDEFHJKLMNPRTUVWXY', '0123456789']}
        longest={4}
        onEnter={() => undefined}
        enterLabel="Open"
        eraseLabel="Erase"
        error="A17 is too short: 4 signs."
        offers={[
          { code: 'A17K', label: 'Ash · 24' },
          { code: 'A17R', label: 'Yew · 6' },
        ]}
        offersLabel="Trays that begin so"
      />
    </main>
  );
};

const states: readonly SavedState[] = ['idle', 'taken', 'saved', 'undone', 'not-saved'];
const words = { idle: 'Ready', taken: 'Taken', saved: 'Saved', undone: 'Undone', 'not-saved': 'NOT SAVED' };

/** The pad for numbers, the steppers, the five marks of saving. */
export const NumberPage = () => {
  const [typed, setTyped] = useState('');
  const [bad, setBad] = useState('25');
  const [small, setSmall] = useState('3');
  return (
    <main class="gallery">
      <div class="gallery-row">
        {states.map((state) => (
          <SavedMark key={state} state={state} words={words} />
        ))}
      </div>
      <Stepper
        label="Bad ones"
        size="bench-small"
        typed={bad}
        onTyped={setBad}
        least={0}
        most={24}
        refusal={refusal}
        minusLabel="Fewer"
        plusLabel="More"
        pad={{ openLabel: 'Type', eraseLabel: 'Erase', closeLabel: 'Done' }}
        testId="bench-stepper"
      />
      <Stepper
        label="Clamps"
        typed={small}
        onTyped={setSmall}
        least={1}
        most={40}
        refusal={refusal}
        minusLabel="Fewer"
        plusLabel="More"
      />
      <NumberPad label="Counted" typed={typed} onTyped={setTyped} eraseLabel="Erase" decimal="." unit="mm" />
    </main>
  );
};
