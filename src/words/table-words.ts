import type { DayColumn } from '../domain/export/day-table.ts';
import type { ListingColumn } from '../domain/export/listing-columns.ts';
import type { ShelfColumn } from '../domain/export/shelf-table.ts';
import type { StoresColumn } from '../domain/export/stores-table.ts';
import type { Cell, Table } from '../domain/export/table.ts';
import type { TapsColumn } from '../domain/export/taps-table.ts';
import type { TargetsColumn } from '../domain/export/targets-table.ts';
import type { TraysColumn } from '../domain/export/trays-table.ts';
import type { YieldColumn } from '../domain/export/yield-table.ts';
import type { EventKind } from '../domain/log/event.ts';
import type { Place } from '../domain/log/place.ts';
import { inLanguage } from './language.ts';
import { outcomeWords, recountWords } from './outcome-words.ts';
import { countReasonWords, heapWords } from './parts-words.ts';
import { setUpWords } from './set-up-words.ts';
import { shelfPlaceWords } from './shelf-place-words.ts';

export type ColumnId =
  | TraysColumn
  | TapsColumn
  | YieldColumn
  | DayColumn
  | StoresColumn
  | TargetsColumn
  | ShelfColumn
  | ListingColumn;

/** What stands over a column. */
export const columnWords = inLanguage<Readonly<Record<ColumnId, string>>>('columnWords', {
  code: 'Tray',
  variant: 'Variant',
  species: 'Wood',
  batch: 'Batch',
  stage: 'Stage',
  grade: 'Grade',
  pieces: 'Pieces',
  'made-up': 'Made up',
  where: 'Where',
  since: 'There since (on average)',
  ready: 'Ready',
  'sent-back-by': 'Sent back by',

  station: 'Station',
  tablet: 'Tablet',
  number: 'Number',
  moment: 'Moment (UTC)',
  'local-time': 'Local time',
  'utc-offset': 'Minutes ahead of UTC',
  zone: 'Time zone',
  day: 'Shop day',
  person: 'Person',
  kind: 'What happened',
  into: 'Into tray',
  again: 'Of these, came again',
  reasons: 'Reasons',
  outcome: 'What became of it',
  'back-to': 'Sent back to',
  'saved-parts': 'Parts saved',
  elapsed: 'Milliseconds since the tap before',
  why: 'Why recounted',
  note: 'Note',
  parts: 'Parts of the stores',
  heap: 'Counted where',
  'lost-parts': 'Lost in cleaning',
  moisture: 'Moisture, per cent',
  'taken-back': 'Taken back',
  'takes-back': 'Takes back (station, number)',
  'clock-doubtful': 'Clock doubtful',
  said: 'In words',

  made: 'Made',
  corrected: 'By recounts',
  'in-work': 'In work',
  firsts: 'Firsts finished',
  seconds: 'Seconds finished',
  scrapped: 'Scrapped',
  'rolled-yield': 'Through without a flaw (share)',
  'first-visits': 'First visits',
  'good-visits': 'Good at the first visit',
  'repeat-visits': 'Came again',
  'first-pass-yield': 'First-pass yield (share)',

  passed: 'Passed',
  mended: 'Mended here',
  'sent-back': 'Sent back',
  second: 'Lowered to a second',
  minutes: 'Minutes of work',

  part: 'Part',
  sort: 'What it is',
  told: 'Received or counted before',
  'on-hand': 'On hand',
  allotted: 'Allotted to pieces in work',
  free: 'Free',
  'low-mark': 'Low mark',
  'to-clean': 'To be cleaned',
  received: 'Received in all',
  counted: 'By counts',
  cleaned: 'Cleaned, back to stores',
  used: 'Used by pieces, less what came back',
  'piece-cost': 'Cost of one',
  worth: 'Worth on hand',
  'to-order': 'To order',

  good: 'Good ones wanted',
  due: 'Due',
  chance: 'Chance, per cent',

  finished: 'Finished',
  'on-shelf': shelfPlaceWords.shelf,
  listed: shelfPlaceWords.listed,
  sold: shelfPlaceWords.sold,
  given: shelfPlaceWords.given,
  kept: shelfPlaceWords.kept,
  'usual-price': 'Usual price',
  priced: 'Sold at a known price',
  takings: 'What those brought',
  photos: 'Photos',

  name: 'Name',
  ferrule: 'Ferrule',
  price: 'Price',
  blemishes: 'Blemishes',
  'photo-files': 'Photo files',
});

/** What stands over a column. */
export const headingOf = (column: ColumnId): string => columnWords[column];

/** What a heading of a file may be called: by its words or by its bare name, in whatever case. */
export function isHeadingOf(heading: string, column: ColumnId): boolean {
  const name = heading.trim().toLowerCase();
  return name === column || name === columnWords[column].toLowerCase();
}

export const kindWords = inLanguage<Readonly<Record<EventKind | 'put-back', string>>>('kindWords', {
  'tray-made': 'Tray made up',
  'tray-split': 'Tray split',
  'tray-joined': 'Tray joined',
  passed: 'Passed',
  flawed: 'Flaw',
  'hold-begun': 'Loaded',
  recounted: 'Recounted',
  rerouted: 'Moved by a change of route',
  'parts-received': 'Parts received',
  'parts-counted': 'Parts counted',
  'parts-cleaned': 'Parts cleaned',
  'parts-sampled': 'Delivery sampled',
  'moisture-read': 'Moisture read',
  'piece-photographed': 'Photo of a piece',
  raised: 'Raised to a first',
  'photo-taken': 'Photo taken',
  'photo-let-go': 'Photo let go',
  'shelf-moved': 'Moved on the shelf',
  'spell-begun': 'Work begun',
  'spell-ended': 'Work ended',
  voided: 'Taken back',
  'put-back': 'Put back',
  'set-up': 'Set-up changed',
});

export const whereWords = inLanguage<Readonly<Record<Place['at'], string>>>('whereWords', {
  waiting: 'Waiting',
  held: 'Curing',
  finished: 'Finished',
  scrapped: 'Scrapped',
});

export const gradeWords = inLanguage('gradeWords', { first: 'First', second: 'Second' });
export const yesNo = inLanguage('yesNo', { yes: 'Yes', no: 'No' });

/** Columns whose cells are ids of the domain; the cells of all others are people's own words and numbers. */
const cellWords: Readonly<Partial<Record<ColumnId, Readonly<Record<string, string>>>>> = {
  kind: kindWords,
  where: whereWords,
  grade: gradeWords,
  outcome: outcomeWords,
  why: { ...recountWords, ...countReasonWords },
  heap: heapWords,
  sort: setUpWords.sorts,
  told: yesNo,
  'taken-back': yesNo,
  'clock-doubtful': yesNo,
};

/** The table as people read it: headings and fixed cells in words; an id that has none, of a newer version, stays. */
export function tableInWords({ columns, rows }: Table<ColumnId>): Table {
  const inWords = (cell: Cell, at: number): Cell => {
    const column = columns[at];
    const words = column && cellWords[column];
    return words && typeof cell === 'string' && Object.hasOwn(words, cell) ? (words[cell] ?? cell) : cell;
  };
  return { columns: columns.map((column) => columnWords[column]), rows: rows.map((row) => row.map(inWords)) };
}

export type TableName = 'trays' | 'taps' | 'yield' | 'days' | 'stores' | 'targets' | 'shelf';

/** Name of the file of a table, with the shop day on which it was made. */
export function tableFileName(table: TableName, day: string): string {
  return `tallywright-${table}-${day}.csv`;
}

export const tableWords = inLanguage('tableWords', {
  title: 'Tables for a spreadsheet',
  lead: 'Comma-separated text (CSV, UTF-8) with a point in decimal numbers. A table is for reckoning; to keep the records safe, save a backup.',
  guard: 'An apostrophe at the front keeps a spreadsheet from taking a text for a formula.',
  names: {
    trays: 'Trays',
    taps: 'Taps',
    yield: 'Yield',
    days: 'Days',
    stores: 'Stores',
    targets: 'Targets',
    shelf: 'Shelf',
  },
  details: {
    trays: 'Where the pieces of each tray are',
    taps: 'Every entry of the log',
    yield: 'Each wood, stage by stage',
    days: 'Each shop day, stage by stage',
    stores: 'Each part, and what to order',
    targets: 'What each open batch wants, and when',
    shelf: 'Finished pieces, and where they went',
  },
  save: 'Save table',
  making: 'Being made …',
  saved: (file: string) => `Saved: ${file}`,
  shared: (file: string) => `Handed over: ${file}`,
  tapAgain: 'It is ready: tap once more.',
  failed: 'The log could not be read, so no table was made. Try again.',
});
