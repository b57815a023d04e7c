import { useEffect, useState } from 'preact/hooks';
import { goDeaf } from '../../ui/press/deafness.ts';
import { benchWords as words } from '../../words/bench-words.ts';

/** Seconds for which a wiped screen is deaf: dirt and droplets tap too. */
const deafSeconds = 15;

/** The screen while it is wiped: a countdown, and nothing answers to fingers or keys until it is over. */
export const Wiping = ({ onOver }: { onOver: () => void }) => {
  const [left, setLeft] = useState(deafSeconds);
  useEffect(goDeaf, []);
  useEffect(() => {
    const timer = setTimeout(() => (left > 1 ? setLeft(left - 1) : onOver()), 1000);
    return () => clearTimeout(timer);
  }, [left, onOver]);
  return (
    <div class="wipe" role="alertdialog" aria-modal="true" aria-label={words.wipeTitle}>
      <p class="wipe-count figures">{left}</p>
      <p>{words.wipeLeft(left)}</p>
    </div>
  );
};
