import { useEffect, useMemo } from 'preact/hooks';
import { lengthOf, type ToneName, tonePlans } from '../../ui/sound/tone-plans.ts';
import { openTonePlayer, type TonePlayer } from '../../ui/sound/tone-player.ts';
import { vibrate } from '../../ui/sound/vibrate.ts';
import { useApp } from './app-context.ts';

export interface Feedback {
  /** Answers to ear and hand, where sound is on. */
  readonly sound: (name: ToneName) => void;
  /** Says a count after the sound of its answer, where counts are spoken. */
  readonly speak: (count: string, after: ToneName) => void;
}

/** One for the whole window, so that a call gives way to an answer; what is begun ends although its screen has gone. */
let player: TonePlayer | undefined;

/** The whole window's loudspeaker; let go while the window is out of sight. */
export function windowPlayer(): TonePlayer {
  if (player) return player;
  const opened = openTonePlayer();
  player = opened;
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') opened.close();
  });
  return opened;
}

const speaker = () => import('./count-speaker.ts').then(({ countSpeaker }) => countSpeaker);

/** Answers a saved tap to ear and hand; the eye is answered by the screen itself, and nothing depends on this. */
export function useFeedback(): Feedback {
  const { preferences } = useApp();
  const speaks = preferences.speak.value;
  // The voice is fetched with the screen, not with the first tap, and falls silent when the screen goes.
  useEffect(() => {
    if (!speaks) return;
    const loaded = speaker();
    loaded.catch(() => undefined);
    return () => void loaded.then(({ hush }) => hush()).catch(() => undefined);
  }, [speaks]);
  return useMemo(
    () => ({
      sound(name) {
        if (!preferences.sound.peek()) return;
        windowPlayer().play(name, performance.now());
        vibrate(name);
      },
      speak(count, after) {
        if (!preferences.speak.peek()) return;
        const wait = preferences.sound.peek() ? lengthOf(tonePlans[after]) : 0;
        speaker()
          .then(({ say }) => say(count, wait))
          // Without the code of the voice the count is read, not heard.
          .catch(() => undefined);
      },
    }),
    [preferences],
  );
}
