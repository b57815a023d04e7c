import { lengthOf, type ToneName, tonePlans } from './tone-plans.ts';

export interface TonePlayer {
  /** Plays a plan; `at` is a monotonic time in ms. Quick taps are answered at most three times a second. */
  readonly play: (name: ToneName, at: number) => void;
  readonly close: () => void;
}

const leastBetween = 334;
/** Ramp at each end of a tone, s: without it a speaker clicks. */
const ramp = 0.008;

/** Opens a player on the platform's audio; where there is none it is silent. The first sound follows a tap. */
export function openTonePlayer(): TonePlayer {
  let context: AudioContext | undefined;
  let lastAt = Number.NEGATIVE_INFINITY;
  let lastName: ToneName | undefined;
  return {
    play(name, at) {
      if (typeof AudioContext === 'undefined') return;
      if (name === lastName && at - lastAt < Math.max(leastBetween, lengthOf(tonePlans[name]))) return;
      lastAt = at;
      lastName = name;
      context ??= new AudioContext();
      // A context that a hidden page has stopped wakes with the next tap.
      if (context.state !== 'running') void context.resume();
      sound(context, name);
    },
    close() {
      void context?.close();
      context = undefined;
    },
  };
}

function sound(context: AudioContext, name: ToneName): void {
  let start = context.currentTime;
  for (const { hz, ms, rest } of tonePlans[name]) {
    const end = start + ms / 1000;
    const oscillator = new OscillatorNode(context, { type: 'triangle', frequency: hz });
    const gain = new GainNode(context, { gain: 0 });
    gain.gain.setValueAtTime(0, start);
    gain.gain.linearRampToValueAtTime(1, start + ramp);
    gain.gain.setValueAtTime(1, end - ramp);
    gain.gain.linearRampToValueAtTime(0, end);
    oscillator.connect(gain).connect(context.destination);
    oscillator.start(start);
    oscillator.stop(end);
    start = end + rest / 1000;
  }
}
