import { useEffect, useState } from 'preact/hooks';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';

/** Gives the app the whole screen, and leaves it again; nothing where the browser has no such thing. */
export const WholeScreen = () => {
  const [isWhole, setWhole] = useState(() => Boolean(document.fullscreenElement));
  const [refused, setRefused] = useState(false);
  useEffect(() => {
    const look = () => setWhole(Boolean(document.fullscreenElement));
    document.addEventListener('fullscreenchange', look);
    return () => document.removeEventListener('fullscreenchange', look);
  }, []);
  if (!document.fullscreenEnabled) return null;
  const change = () => {
    setRefused(false);
    const done = isWhole
      ? document.exitFullscreen()
      : document.documentElement.requestFullscreen({ navigationUI: 'hide' });
    done.catch(() => setRefused(true));
  };
  return (
    <div>
      <PressButton
        label={isWhole ? words.leaveWholeScreen : words.wholeScreen}
        detail={refused ? words.wholeScreenRefused : undefined}
        onAct={change}
        testId="whole-screen"
      />
    </div>
  );
};
