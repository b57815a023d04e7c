import type { Problem } from '../domain/command/problem.ts';
import type { NumberProblem } from '../domain/command/whole-number.ts';
import type { TextProblem } from '../domain/set-up/text.ts';
import type { Registers } from '../domain/shop/registers.ts';
import { inLanguage } from './language.ts';
import { nameOf } from './names.ts';
import { pieces } from './pieces-words.ts';

/** What to say when a command is refused: what is wrong and what to do, in at most twenty words. */
function englishOfCommand(problem: Problem, registers: Registers): string {
  const stageName = (id: string) => nameOf(registers, { register: 'stage', id });
  switch (problem.kind) {
    case 'only-looking':
      return 'This window is of an older version: it shows the shop and changes nothing. Reload it.';
    case 'code-not-there':
      return 'A part of the app could not be loaded. Nothing was changed: try again.';
    case 'no-such-tray':
      return 'This tray is not in the log any more.';
    case 'no-such-batch':
      return 'This batch has no route yet. Choose one in Set-up.';
    case 'no-such-variant':
      return 'Choose what the pieces will be.';
    case 'no-such-stage':
      return 'This stage holds nothing back: it has no cure time.';
    case 'route-is-empty':
      return 'The route needs at least one stage.';
    case 'stage-off-route':
      return `${stageName(problem.stage)} is not on this route any more. Move the pieces first.`;
    case 'nothing-there':
      return 'Nothing is left here. If you hold a piece, recount the tray.';
    case 'nothing-on-shelf':
      return 'None of these are there any more. If you hold one, look which move took it away.';
    case 'too-many':
      return `Only ${pieces(problem.there)} here.`;
    case 'no-seconds':
      return 'No seconds stand here. What is listed comes off the list first.';
    case 'no-reason':
      return 'Choose what is wrong.';
    case 'not-an-earlier-stage':
      return 'Pieces can only be sent back to an earlier stage.';
    case 'hold-is-full':
      return fullWords(problem, registers);
    case 'count-is-right':
      return 'The log says the same: nothing to correct.';
    case 'trays-differ':
      return `${problem.a.code} and ${problem.b.code} differ in variant or batch and cannot be joined.`;
    case 'same-tray':
      return 'Choose another tray to join with.';
    case 'already-taken-back':
      return 'There is nothing left to take back.';
    case 'cannot-be-taken-back':
      return 'This entry cannot be taken back.';
    case 'no-letter':
      return 'This tablet has no letter yet. Give it one in Set-up.';
    case 'letter-lost':
      return problem.free === null
        ? `The letter ${problem.letter} is another tablet’s, and all others are taken. In Set-up, This tablet, take over that of a tablet that is gone.`
        : `The letter ${problem.letter} is another tablet’s. This one takes ${problem.free}: try again in a moment.`;
    case 'stage-still-holds':
      return `Say where the pieces go: ${problem.stages.map(({ stage, pieces: n }) => `${stageName(stage)} (${n})`).join(', ')}.`;
    case 'same-name':
      return 'This name is taken. Choose another.';
    case 'no-wood':
      return 'Choose the wood.';
    case 'no-stage':
      return 'Choose the stage.';
    case 'no-lot':
      return 'The shop does not know this lot of blanks.';
    case 'no-part':
      return 'Choose the part.';
    case 'none-to-clean':
      return 'None are to be cleaned. If you hold some, count them.';
    case 'no-photo':
      return 'Choose the photos.';
    case 'no-note':
      return 'Write what was done.';
    case 'card-is-empty':
      return 'Enter at least one count.';
    case 'card-line':
      return problemWords(problem.problem, registers);
    case 'labels-off-sheet':
      return problem.way === 'across'
        ? 'The labels go past the side of the sheet.'
        : 'The labels go past the foot of the sheet.';
    case 'labels-overlap':
      return 'The labels lie over one another: the step is less than the label.';
    case 'number':
      return numberProblemWords(problem.problem);
    case 'text':
      return textProblemWords(problem.problem);
  }
}

function fullWords(
  { free, resource }: Extract<Problem, { kind: 'hold-is-full' }>,
  registers: Registers,
): string {
  const taken =
    free === 0
      ? 'All places are taken'
      : free === 1
        ? 'Only 1 place is free'
        : `Only ${free} places are free`;
  return resource === undefined
    ? `${taken}.`
    : `${taken}: ${nameOf(registers, { register: 'resource', id: resource })}.`;
}

function englishOfNumber(problem: NumberProblem): string {
  switch (problem.kind) {
    case 'missing':
      return 'Enter a number.';
    case 'not-a-number':
      return 'This is not a number.';
    case 'grouped':
      return 'Digits only: 1000, not 1,000.';
    case 'not-whole':
      return 'Whole pieces only.';
    case 'too-small':
      return `At least ${problem.least}.`;
    case 'too-large':
      return `At most ${problem.most}.`;
  }
}

function englishOfText(problem: TextProblem): string {
  return problem.kind === 'empty'
    ? 'Enter a name.'
    : `${problem.length} characters: at most ${problem.most} fit.`;
}

export const problemSentences = inLanguage('problemSentences', {
  ofCommand: englishOfCommand,
  ofNumber: englishOfNumber,
  ofText: englishOfText,
});

export const problemWords: typeof englishOfCommand = (...given) => problemSentences.ofCommand(...given);

export const numberProblemWords: typeof englishOfNumber = (...given) => problemSentences.ofNumber(...given);

export const textProblemWords: typeof englishOfText = (...given) => problemSentences.ofText(...given);
