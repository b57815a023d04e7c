import { useEffect, useMemo } from 'preact/hooks';
import type { ToneName } from '../../ui/sound/tone-plans.ts';
import { openTonePlayer } from '../../ui/sound/tone-player.ts';
import { vibrate } from '../../ui/sound/vibrate.ts';
import { useApp } from './app-context.ts';

/** Answers a saved tap to ear and hand; the eye is answered by the screen itself. */
export function useFeedback(): (name: ToneName) => void {
  const { preferences } = useApp();
  const player = useMemo(openTonePlayer, []);
  useEffect(() => () => player.close(), [player]);
  return (name) => {
    if (!preferences.sound.value) return;
    player.play(name, performance.now());
    vibrate(name);
  };
}
