import { useCallback, useEffect, useState } from 'preact/hooks';
import { PressButton } from '../../ui/press/press-button.tsx';
import { benchWords as words } from '../../words/bench-words.ts';
import { onDemand } from '../parts/on-demand.tsx';

const wiping = onDemand(async () => (await import('./wiping.tsx')).Wiping, null);

/** Makes the screen deaf for a while so that it can be cleaned. */
export const WipeButton = () => {
  const [isWiped, setWiped] = useState(false);
  useEffect(wiping.ahead, []);
  const over = useCallback(() => setWiped(false), []);
  return (
    <>
      <PressButton
        size="bench-small"
        tone="quiet"
        icon="wipe"
        label={words.wipe}
        onAct={() => setWiped(true)}
        testId="wipe"
      />
      {isWiped && <wiping.Screen onOver={over} />}
    </>
  );
};
