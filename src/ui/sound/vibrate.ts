import { type ToneName, vibrations } from './tone-plans.ts';

/** Answers to the hand where the device can; iPads and Firefox cannot, and nothing depends on it. */
export const vibrate = (name: ToneName): void => {
  if (typeof navigator !== 'undefined' && typeof navigator.vibrate === 'function')
    navigator.vibrate([...vibrations[name]]);
};
