import { dayWords } from './date-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { goodOnes } from './pieces-words.ts';
import { workTime } from './study-words.ts';

const days = (n: number) => (n === 1 ? '1 day' : `${wholeNumber(n)} days`);

/** Words of the plan, and of its targets. */
export const planWords = inLanguage('planWords', {
  pages: {
    targets: {
      title: 'Targets',
      lead: 'What each batch wants, what there is of it, and the hours that are left.',
    },
    today: { title: 'Today', lead: 'What to do next, and when to load clamps and racks.' },
    forecast: { title: 'Forecast', lead: 'When it is done, and what can be promised by a day.' },
    'what-if': {
      title: 'What if',
      lead: 'What would come of more clamps, a helper, a machine, or less work.',
    },
    starts: { title: 'Starts', lead: 'How many pieces to start, so that enough good ones come out.' },
    constraint: {
      title: 'Constraint',
      lead: 'What holds the shop back, and which variants make the most of it.',
    },
    cost: { title: 'Cost', lead: 'What each good piece really cost, and where money was lost.' },
    review: { title: 'Review', lead: 'What a batch came to, and what the next one takes from it.' },
  },
  rack: 'Pages of the plan',
  noBatch: 'No batch is open',
  noBatchHelp: 'A batch says what is wanted and when. Add one in Set-up, or bring one back.',
  toBatches: 'Add a batch',

  dueOn: (day: string, left: number): string =>
    left < 0
      ? `Was due ${dayWords(day)}, ${days(-left)} ago`
      : left === 0
        ? `Due today, ${dayWords(day)}`
        : `Due ${dayWords(day)}, in ${days(left)}`,
  noDue: 'No due day yet',
  sure: (chance: number) => `${wholeNumber(chance)} % sure of enough`,
  variant: 'Variant',
  wanted: 'Wanted',
  firsts: 'Firsts finished',
  seconds: 'Seconds finished',
  flying: 'In work',
  flyingOf: (first: number, second: number) =>
    second === 0
      ? wholeNumber(first)
      : `${wholeNumber(first)} + ${wholeNumber(second)} ${second === 1 ? 'second' : 'seconds'}`,
  scrapped: 'Scrapped',
  missing: 'Firsts missing',
  all: 'All',
  nothingWanted: 'This batch wants nothing yet: say how many good ones of which variant.',
  targetsOf: (batch: string) => `Targets of ${batch}`,
  change: 'Change',
  close: 'Close',
  due: 'Due',
  goods: 'Good ones wanted',
  keepNote:
    'Saved as the newest word on the batch, on every tablet. To take it back, write what stood there.',

  hours: 'Hours',
  hoursLead: 'What the hours of people come to, against the work that is expected.',
  hoursMeans:
    'Hours of people are those of Set-up, breaks and days off taken out. Work is the pieces that are expected at each stage, those still to be started among them, times the minutes that a piece has taken there; what cures takes hands only as far as loading was timed. Doing again what was sent back comes on top. Each batch is reckoned as if it had all hands.',
  week: (minutes: number) => `The next 7 days have ${workTime(minutes)} of work.`,
  weekUnknown: 'How many hours a week has is not known: nobody’s hours are said.',
  unsaid: (names: string) => `Not counted, since their hours are not said: ${names}.`,
  toPeople: 'Hours of people',
  batch: 'Batch',
  until: 'Until it is due',
  needed: 'Needed',
  verdict: 'That is',
  minutes: workTime,
  atLeast: (minutes: number) => `at least ${workTime(minutes)}`,
  notKnown: 'not known',
  noDay: 'no due day',
  verdicts: {
    enough: 'enough',
    short: 'too little',
    unknown: 'not known',
    past: 'due day is past',
    done: 'nothing left to do',
  },
  unmeasured: (stages: string) =>
    `No time per piece is known yet at ${stages}: tap there piece by piece, and it will be.`,

  file: 'By spreadsheet',
  fileLead:
    'Save the targets as a table, change it in a spreadsheet, and read it back. Nothing is written before you have seen what would change.',
  fileHelp:
    'Columns are batch, variant, good ones wanted, due and chance. Due and chance belong to the batch. An empty cell leaves what there is.',
  choose: 'Read targets from a file',
  reading: 'The file is being read …',
  unread: 'The file could not be read. Choose it again, or another.',
  refusals: {
    empty: 'The file is empty.',
    'too-large': 'The file is larger than 4 MB: no table of targets is.',
    'too-many-lines': 'The file has more than 20,000 lines: no table of targets has.',
  },
  noColumn: (column: string) => `There is no column “${column}”. The first line must have the headings.`,
  columnTwice: (column: string) => `The column “${column}” stands there twice.`,
  unusedColumns: (columns: string) => `Not used: ${columns}.`,
  sum: (changing: number, same: number, refused: number) =>
    `${[
      `${changing === 1 ? '1 line changes' : `${wholeNumber(changing)} lines change`} something`,
      `${wholeNumber(same)} ${same === 1 ? 'says' : 'say'} what is so already`,
      `${wholeNumber(refused)} ${refused === 1 ? 'is' : 'are'} not understood`,
    ].join(', ')}.`,
  line: 'Line',
  wouldChange: 'What would change',
  why: 'Why not',
  changing: 'What would change',
  refusedLines: 'Not understood, and left out',
  says: 'It says',
  change1: {
    good: (from: number, to: number) => `${wholeNumber(from)} → ${goodOnes(to)}`,
    due: (from: string | null, to: string) => `due ${from ? dayWords(from) : 'never'} → ${dayWords(to)}`,
    chance: (from: number, to: number) => `${from} % → ${to} % sure`,
  },
  write: (n: number) => (n === 1 ? 'Write 1 line' : `Write ${wholeNumber(n)} lines`),
  nothingToWrite: 'Nothing would change.',
  leaveIt: 'Leave it',
  written: (n: number) => (n === 1 ? '1 line was written.' : `${wholeNumber(n)} lines were written.`),
  moreLines: (n: number) => `Show ${wholeNumber(n)} more`,
});
