import type { Found } from './find.ts';

/** What the rescue page says. It shares nothing with the app, its words included. */
export const rescueWords = {
  reading: 'Reading what is on this tablet …',
  found: (records: number) =>
    records === 0
      ? 'Nothing of Tallywright was found on this tablet, in this browser, at this address.'
      : `${records === 1 ? '1 record' : `${records.toLocaleString('en-GB')} records`} found. Nothing was changed.`,
  ofPlace: ({ lines }: Found) =>
    lines.length === 1 ? '1 record' : `${lines.length.toLocaleString('en-GB')} records`,
  newest: (moment: number) => `newest of ${new Date(moment).toLocaleString('en-GB')}`,
  saved:
    'The file was handed to the browser: look for it among the downloads, and move a copy to another device.',
  shared: 'The file was handed on.',
  notShared: 'It was not handed on. Try another way.',
  copied: 'Copied. Paste it into a message or a note.',
  notCopied: 'Copy it by hand: hold a finger on the text, then “Select all” and “Copy”.',
} as const;
