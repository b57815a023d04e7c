import { roundNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { pieces } from './pieces-words.ts';

/** What is said of an entry of the log; `event-words.ts` chooses and joins. */
export const eventSentences = inLanguage('eventSentences', {
  trayMade: (code: string, n: number) => `Tray ${code} made up with ${pieces(n)}`,
  traySplit: (n: number, code: string, into: string) => `${pieces(n)} split from ${code} to ${into}`,
  trayJoined: (code: string, into: string, n: number) => `${code} joined to ${into} (${pieces(n)})`,
  passed: (n: number, stage: string) => `${pieces(n)} passed ${stage}`,
  flawed: (flaw: string, stage: string) => `${flaw} at ${stage}`,
  sentBackTo: (stage: string) => `sent back to ${stage}`,
  saved: (parts: string) => `saved ${parts}`,
  loaded: (n: number, stage: string) => `${pieces(n)} loaded at ${stage}`,
  early: (stretch: string) => `${stretch} early`,
  warmth: (celsius: number) => `reckoned for ${roundNumber(celsius)} °C`,
  recounted: (code: string, stage: string | undefined) =>
    stage === undefined ? `${code} recounted` : `${code} recounted at ${stage}`,
  rerouted: (n: number, from: string, to: string) => `${pieces(n)} moved from ${from} to ${to}`,
  moisture: (lot: string, percent: number) => `${lot} read: ${roundNumber(percent)} %`,
  raised: (n: number, code: string) => `${pieces(n)} of ${code} raised to firsts`,
  gone: (reasons: string) => `gone: ${reasons}`,
  photoAt: (stage: string, reasons: string) =>
    reasons === '' ? `Photo taken at ${stage}` : `Photo taken at ${stage}: ${reasons}`,
  photoOf: (variant: string) => `Photo of ${variant} taken`,
  photoOfVerdict: {
    good: (reason: string) => `Photo of what passes taken: ${reason}`,
    bad: (reason: string) => `Photo of what fails taken: ${reason}`,
  },
  photoLetGo: 'A photo was let go',
  ofVariant: (n: number, variant: string, grade: string) => `${pieces(n)} of ${variant} (${grade})`,
  each: (price: string) => `${price} each`,
  workBegun: (stage: string) => `Work begun at ${stage}`,
  pause: (stage: string) => `Pause at ${stage}`,
  putBack: (what: string) => `Put back: ${what}`,
  takenBack: (what: string) => `Taken back: ${what}`,
  changed: (name: string) => `${name} changed in Set-up`,
  noted: (note: string) => `Noted: ${note}`,
  noteTakenAway: (note: string) => `Note taken away: ${note}`,
});
