import { inLanguage } from './language.ts';

/** The words of what can be heard. */
export const soundWords = inLanguage('soundWords', {
  title: 'Sound and voice',
  lead: 'Nothing depends on hearing: whatever sounds is shown, too.',
  sound: 'Sound',
  tryThem: 'Try the sounds',
  hear: (tone: string) => `${tone}: hear it`,
  tones: {
    saved: 'Pass',
    last: 'Last of tray',
    flaw: 'Flaw',
    undone: 'Undo',
    refused: 'Not counted',
    'not-saved': 'Not saved',
    cured: 'Cure over',
  },
  speak: 'Spoken count',
  speakHint: 'After each tap a voice of the tablet says: “21, 3 left”. It needs no network.',
  noVoice: 'Stays off: this tablet has no English voice that speaks without a network.',
  hearCount: 'Hear the count',
});
