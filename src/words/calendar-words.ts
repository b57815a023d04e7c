import { inLanguage } from './language.ts';
import { pieces } from './pieces-words.ts';

/** What a calendar says of cures. */
export const calendarWords = inLanguage('calendarWords', {
  name: 'Cures',
  fileName: (day: string) => `tallywright-cures-${day}.ics`,
  summary: ({ code, stage, n }: { code: string; stage: string; n: number }) =>
    `${code} is cured: ${pieces(n)}, ${stage}`,
  description: (least: string) => `May come out from ${least}. The data sheet rules.`,
});
