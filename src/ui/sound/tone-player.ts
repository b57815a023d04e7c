import { lengthOf, mayBegin, type Sounding, type ToneName, tonePlans } from './tone-plans.ts';

export interface TonePlayer {
  /** Plays a plan; `at` is a monotonic time in ms. */
  readonly play: (name: ToneName, at: number) => void;
  readonly close: () => void;
}

/** Ramp at each end of a tone, s: without it a speaker clicks. */
const ramp = 0.008;

/** Opens a player on the platform's audio; where there is none it is silent. The first sound follows a tap. */
export const openTonePlayer = (): TonePlayer => {
  let context: AudioContext | undefined;
  let last: Sounding | undefined;
  let stop = (): void => undefined;
  return {
    play(name, at) {
      if (typeof AudioContext === 'undefined' || !mayBegin(last, name, at)) return;
      last = { name, at };
      context ??= new AudioContext();
      // A context that a hidden page has stopped wakes with the next tap; refused, it stays silent.
      if (context.state !== 'running') context.resume().catch(() => undefined);
      stop();
      stop = sound(context, name);
    },
    close() {
      // What was begun sounds to its end: a label that was read is answered as its screen is left.
      const closing = context;
      context = undefined;
      setTimeout(() => closing?.close().catch(() => undefined), last ? lengthOf(tonePlans[last.name]) : 0);
    },
  };
};

/** Plays all tones of a plan from now on; returns how to cut them off. */
const sound = (context: AudioContext, name: ToneName): (() => void) => {
  const whole = new GainNode(context, { gain: 1 });
  whole.connect(context.destination);
  let start = context.currentTime;
  for (const { parts, ms, rest } of tonePlans[name]) {
    const end = start + ms / 1000;
    // Parts share the full volume: more would only distort.
    const full = 1 / parts.length;
    const gain = new GainNode(context, { gain: 0 });
    gain.gain.setValueAtTime(0, start);
    gain.gain.linearRampToValueAtTime(full, start + ramp);
    gain.gain.setValueAtTime(full, end - ramp);
    gain.gain.linearRampToValueAtTime(0, end);
    gain.connect(whole);
    for (const frequency of parts) {
      const oscillator = new OscillatorNode(context, { type: 'triangle', frequency });
      oscillator.connect(gain);
      oscillator.start(start);
      oscillator.stop(end);
    }
    start = end + rest / 1000;
  }
  return () => whole.disconnect();
};
