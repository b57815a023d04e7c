import { useEffect, useState } from 'preact/hooks';
import { goDeaf } from '../../ui/press/deafness.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { benchWords as words } from '../../words/bench-words.ts';

/** Seconds for which a wiped screen is deaf: dirt and droplets tap too. */
const deafSeconds = 15;

/** Makes the screen deaf for a while so that it can be cleaned. */
export const WipeButton = () => {
  const [left, setLeft] = useState(0);
  const wiping = left > 0;
  useEffect(() => (wiping ? goDeaf() : undefined), [wiping]);
  useEffect(() => {
    if (left === 0) return;
    const timer = setTimeout(() => setLeft(left - 1), 1000);
    return () => clearTimeout(timer);
  }, [left]);
  return (
    <>
      <PressButton
        size="bench-small"
        tone="quiet"
        icon="wipe"
        label={words.wipe}
        onAct={() => setLeft(deafSeconds)}
        testId="wipe"
      />
      {wiping && (
        <div class="wipe" role="alertdialog" aria-modal="true" aria-label={words.wipeTitle}>
          <p class="wipe-count figures">{left}</p>
          <p>{words.wipeLeft(left)}</p>
        </div>
      )}
    </>
  );
};
