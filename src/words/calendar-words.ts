import { pieces } from './number-words.ts';

/** What a calendar says of cures. */
export const calendarWords = {
  name: 'Cures',
  fileName: (day: string) => `tallywright-cures-${day}.ics`,
  summary: ({ code, stage, n }: { code: string; stage: string; n: number }) =>
    `${code} is cured: ${pieces(n)}, ${stage}`,
  description: (least: string) => `May come out from ${least}. The data sheet rules.`,
} as const;
