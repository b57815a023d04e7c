import { fixedNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

const entries = (n: number) => (n === 1 ? '1 entry' : `${wholeNumber(n)} entries`);

export const filesWords = inLanguage('filesWords', {
  close: 'Close',
  back: 'Back',
  entries,

  // Copies that leave the tablet.
  outsideTitle: 'Copy outside this tablet',
  outsideLead: 'A tablet can be lost, broken or wiped. A copy on another device brings the whole shop back.',
  outsideNever: 'No copy has left this tablet yet.',
  outsideLast: (when: string, n: number, way: string) => `Last: ${when}, ${entries(n)}, ${way}.`,
  ways: {
    folder: 'into the folder',
    download: 'saved as a file',
    share: 'shared',
    text: 'copied as text',
  },
  nothingNew: 'Nothing new since.',
  newSince: (n: number) => `${entries(n)} since then.`,
  saveFile: 'Save a copy',
  saveFileDetail: 'All records in one file',
  saveAllDetail: 'All records and photos',
  withPhotos: 'With photos',
  withoutPhotos: 'Without',
  withoutPhotosDetail: 'A small file to send',
  moreFiles: (n: number) =>
    n === 1
      ? 'The photos did not fit into one file: one more belongs to this copy.'
      : `The photos did not fit into one file: ${wholeNumber(n)} more belong to this copy.`,
  saveNumber: (number: number, of: number) => `File ${wholeNumber(number)} of ${wholeNumber(of)}`,
  photosIn: (n: number, bytes: number) =>
    `${n === 1 ? '1 photo' : `${wholeNumber(n)} photos`}, ${fixedNumber(bytes / 1e6, 1)} MB`,
  photosLeftOut: (n: number) =>
    n === 1
      ? '1 photo could not be read, and is not in it.'
      : `${wholeNumber(n)} photos could not be read, and are not in it.`,
  shareFile: 'Share a copy',
  shareDetail: 'To mail, files or another device',
  preparing: 'The file is being made …',
  ready: 'The file is ready. Tap once more to share it.',
  handedOver: (name: string) => `${name} was handed over. Look once that it is where you want it.`,
  sharedNow: (name: string) => `${name} was shared.`,
  notMade: 'The copy could not be made: the log on disk could not be read whole. Nothing was changed.',
  notShared: 'The file could not be shared. Try once more, or take it as text.',
  asText: 'As text',
  asTextSummary: 'Take the copy as text',
  asTextLead: 'Where neither saving nor sharing works: copy all of this into a mail or a note to yourself.',
  textLabel: 'The copy as text',
  copyText: 'Copy all',
  textCopied: 'Copied. Paste it somewhere outside this tablet.',
  textNotCopied: 'The browser did not copy it. Select the text and copy it by hand.',
  seal: 'With a passphrase',
  sealHint: 'Plain is the safer choice for most: a forgotten passphrase cannot be asked for anywhere.',
  plain: 'Plain file',
  sealed: 'Sealed',
  passphrase: 'Passphrase',
  passphraseHint: 'At least 8 signs. It is kept nowhere.',
  passphraseAgain: 'The same once more',
  passphraseShort: 'At least 8 signs.',
  passphraseDiffers: 'The two differ.',
  sealNow: 'Seal it',
  sealing: 'Sealing, and opening it again as a test …',
  recoveryTitle: 'Write these twelve words down',
  recoveryLead:
    'They open this one file when the passphrase is forgotten. They are shown now and never again; every sealed copy has words of its own.',
  wordsWritten: 'I have written them down',
  wordsDetail: 'Then the file is handed over',

  // The folder.
  folder: 'Folder for copies',
  folderLead:
    'Choose a folder that reaches another device, once. Copies go there by themselves from then on.',
  chooseFolder: 'Choose a folder',
  folderIs: (name: string) => `Copies go into “${name}” by themselves.`,
  folderAsks: (name: string) => `The browser wants your word again before it writes into “${name}”.`,
  allowFolder: 'Allow it',
  writeFolder: 'Write now',
  otherFolder: 'Other folder',
  forgetFolder: 'Stop using it',
  folderWritten: 'Written, read back and counted.',
  folderFailed: 'The folder could not be written to. Is it still there?',
  folderPlain: 'Copies in the folder are plain files without photos.',

  // Copies on the tablet.
  keptTitle: 'Copies on this tablet',
  keptLead:
    'Made by themselves at the turn of the day, after 200 entries and after 24 hours. Without photos: those lie on this tablet as it is.',
  keptNever: 'No copy is on this tablet yet.',
  keptLast: (when: string, n: number) => `Last: ${when}, ${entries(n)}.`,
  noShelf: 'This browser has no place for copies on the tablet. A copy outside is all the more needed.',
  guarded:
    'The log lacks entries that an older copy has. The older copies stay as they are: look into them and add what is missing.',
  failed: (when: string) => `The last try (${when}) made no copy. It is tried again by itself.`,
  keepNow: 'Copy now',
  keeping: 'A copy is being made …',
  keepResults: {
    kept: 'Copied, read back and counted.',
    guarded: 'The older copies hold more than the log: they were left as they are.',
    failed: 'No copy could be made. What is on the screen is still there.',
    busy: 'Another window is making a copy. Try again in half a minute.',
    saving: 'A tap is being saved. Try again in a moment.',
    'no-shelf': 'This browser has no place for copies on the tablet.',
  },
  shelfList: 'Copies that are here',
  shelfReading: 'Looking what is here …',
  shelfEmpty: 'None yet.',
  shelfUnread: 'The copies could not be listed.',
  shelfKinds: { usual: '', 'before-restore': 'before a restore' },
  shelfDamaged: 'cannot be read',
  lookInto: 'Look into it',
  inDemo: 'The demo shop keeps no copies, and nothing is added to it. Leave the demo for your own shop.',
  openingDesk: 'Looking for the copies …',
  dayTitle: 'Copies',
  allCopies: 'All copies',

  // Restore.
  restore: 'Restore',
  restoreTitle: 'Restore from a copy',
  restoreLead: 'Adds what a copy has and the shop has not. Nothing that is here is changed or taken away.',
  chooseFile: 'Choose a file',
  chooseFileDetail: 'Or all files of a copy together. Shows first what they would add',
  pasteSummary: 'Paste a copy that was taken as text',
  pasteLabel: 'The text, with its first and last line',
  pasteRead: 'Read it',
  pasteNothing: 'This text holds no copy. It begins with a line of BEGIN TALLYWRIGHT COPY.',
  pastedName: 'Pasted text',
  reading: (file: string) => `Reading ${file} …`,
  readingHere: 'Nothing changes until you say so.',
  fromTablet: 'Or one of this tablet',

  sealedTitle: 'This copy is sealed',
  sealedLead: 'Its passphrase opens it, or the twelve words that were written down.',
  openBy: 'Open with',
  byPassphrase: 'Passphrase',
  byWords: 'Twelve words',
  wordsLabel: 'The twelve words, in their order',
  wordsHint: 'With blanks between them.',
  wordsCount: (n: number) => `${n === 1 ? '1 word' : `${wholeNumber(n)} words`} of 12.`,
  openSealed: 'Open it',
  wrongSecret: 'This does not open it. Nothing was changed. Try again.',

  refusedTitle: 'Nothing was changed.',
  refusals: {
    several: 'These files have more than one shop’s records in them. Choose the files of one copy at a time.',
    'not-a-backup': 'This file is not a copy of a shop.',
    'too-big': 'This file is too big to be a copy of a shop.',
    'unpacks-too-big': 'This file unpacks to far more than a shop can hold, so it was left alone.',
    sealed: 'This copy is sealed.',
    'newer-format': 'This copy was made by a newer version. Update this tablet, then try again.',
    empty: 'There is nothing in this file.',
    'cannot-read': 'The file could not be read. Is it still where it was?',
    'wrong-secret': 'The passphrase or the words do not open it.',
    'not-sealed': 'This copy is not sealed.',
    damaged: 'This sealed copy is damaged and can not be opened.',
  },
  otherFile: 'Choose another',

  offerTitle: 'What is in this copy',
  offerFile: 'File',
  offerShop: 'Shop',
  offerMade: 'Made',
  offerNewest: 'Newest entry',
  offerAdds: 'Would be added',
  offerHere: 'Already here',
  offerUnreadable: 'Cannot be read',
  offerPhotos: 'Photos to add',
  offerPhotosHere: 'Photos already here',
  offerPhotosDamaged: 'Damaged photos',
  missingTitle: ({ missing, volumes }: { readonly missing: readonly number[]; readonly volumes: number }) =>
    missing.length === 1
      ? `File ${missing.join()} of ${wholeNumber(volumes)} of this copy was not chosen`
      : `Files ${missing.join(', ')} of ${wholeNumber(volumes)} of this copy were not chosen`,
  missingLead: (photos: number) =>
    `${photos === 1 ? '1 photo is' : `${wholeNumber(photos)} photos are`} in there. What is here can be added now and the rest later, in any order.`,
  unnamed: 'no name',
  unknown: 'not known',
  offerStations: 'Tablets in it',
  station: 'Tablet',
  stationNew: 'New here',
  problems: 'What could not be read',
  problem: (line: number, problems: string) => `Line ${wholeNumber(line)}: ${problems}`,
  moreProblems: (n: number) => `and ${wholeNumber(n)} more`,
  cutTitle: 'This copy is cut short or has gaps',
  changedTitle: 'This copy was changed after it was made',
  damagedLead:
    'What is sound in it checks itself and can be added. The rest is left out; the file stays as it is.',
  foreignTitle: 'This copy shares nothing with the shop on this tablet',
  foreignLead:
    'If it is of another shop, the trays and figures of both would be mixed, and no undo parts them.',
  add: 'Add them',
  addSound: 'Add what is sound',
  addForeign: 'Add it all the same',
  nothingToAdd: 'All of it is here already.',
  nothingSound: 'Nothing in it is sound.',
  leaveIt: 'Leave it',
  copying: 'First a copy of the shop as it is …',
  adding: 'Adding …',
  noCopyTitle: 'No copy of the shop as it is could be made',
  noCopyLead:
    'Adding takes nothing away, so it can be done without. A copy outside this tablet first is safer.',
  goOn: 'Go on without',
  brokenOffTitle: 'Adding broke off',
  brokenOff: (n: number, all: number) =>
    `${wholeNumber(n)} of ${entries(all)} are in, and stay. Going on adds the rest.`,
  brokenOffUnknown: 'What is in stays. Going on adds the rest, and nothing twice.',
  addRest: 'Add the rest',

  restoredTitle: (added: number, here: number) =>
    added === 0
      ? `Nothing was added: ${here === 1 ? 'the entry was' : `all ${entries(here)} were`} here already.`
      : `Added ${wholeNumber(added)}; ${wholeNumber(here)} ${here === 1 ? 'was' : 'were'} here already.`,
  restoredOnlyPhotos: 'These files had photos and no records.',
  restoredUnreadable: (n: number) => `${entries(n)} of the copy could not be read and were left out.`,
  restoredUnplaced: (n: number) =>
    `${entries(n)} wait for another copy: they follow on entries that this one has not.`,
  understood: 'Good',
});
