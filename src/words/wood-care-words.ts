import type { StageDoing } from '../domain/set-up/facts.ts';
import { dayWords } from './date-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

/** What every caution ends with, wherever it stands. */
export const cautionRules = inLanguage('cautionRules', {
  first: 'Local codes, safety data sheets and licensed advice come first.',
});

/** Words of what woods, finishes and machines do to people, where the maker writes it down. */
export const woodCareWords = inLanguage('woodCareWords', {
  does: 'What it does to you',
  doesNotSaid: 'Nobody has said yet. Minutes of dust and cautions at the bench rest on this.',
  doesHint: 'Minutes of dust and cautions at the bench rest on this.',
  doings: {
    dust: 'Wood dust',
    turns: 'Turns in the lathe',
    fumes: 'Fumes',
    flat: 'Cuts a flat',
  } satisfies Readonly<Record<StageDoing, string>>,
  doingDetails: {
    dust: 'its minutes count as dust',
    turns: 'a piece with a flat is warned of',
    fumes: 'finish, solvent, oily rags',
    flat: 'from here on it is never spun',
  } satisfies Readonly<Record<StageDoing, string>>,
  mm: 'mm',
  fitDiameter: 'Diameter it is fitted on',
  fitDiameterHint: 'Of the wood under it. With moisture readings it tells the gap to be expected.',
  badFit: 'A diameter is a number of mm between 1 and 300, such as 12.5.',

  reactions: 'Your own reactions',
  reactionsLead: 'A reaction marks this wood for good, on every tablet of the shop.',
  noReactions: 'None noted.',
  reaction: 'What it did',
  reactionHint: 'Such as: rash on both wrists after an hour of sanding.',
  addReaction: 'Note it',
  withdraw: 'Withdraw',
  withdrawn: (day: string) => `withdrawn ${dayWords(day)}`,
  reactionsFull: 'No more fit here. Write further ones into the caution.',
  reactionOf: (day: string, note: string) => `${dayWords(day)}: ${note}`,
  emptyReaction: 'Say what it did.',
  seeDoctor: `See a doctor about a reaction: the next one can be worse. ${cautionRules.first}`,

  machines: 'Machines',
  machinesLead: 'What stands in the shop, how long it may run, and how fast.',
  addMachine: 'Add a machine',
  editMachine: 'A machine',
  machineStages: 'Worked on it',
  machineStagesHint: 'Its minutes are counted at these stages, on this tablet.',
  rests: 'Does it need rest?',
  restsNo: 'No',
  restsYes: 'Yes, a duty limit',
  minutesOn: 'Minutes on',
  minutesOff: 'Minutes off',
  badDuty: 'Minutes are a whole number from 1 to 1,440.',
  mostTurns: 'Most turns a minute',
  mostTurnsHint: 'Of the machine or its chuck, whichever is less.',
  badTurns: 'Turns are a whole number from 1 to 99,999.',
  dutyOf: (on: number, off: number) => `${wholeNumber(on)} min on, ${wholeNumber(off)} min off`,
  turnsOf: (turns: number) => `at most ${wholeNumber(turns)} turns a minute`,
  noLimit: 'no limit noted',
  restDue: (machine: string, minutes: number, left: number) =>
    `${machine}: ${wholeNumber(minutes)} min on, rest it ${wholeNumber(left)} min`,
});
