import { fixedNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

const photos = (count: number) => (count === 1 ? '1 photo' : `${wholeNumber(count)} photos`);
const megabytes = (bytes: number) =>
  bytes < 100_000 ? 'less than 0.1 MB' : `${fixedNumber(bytes / 1e6, 1)} MB`;

export const photoWords = inLanguage('photoWords', {
  title: 'Photos',
  camera: 'Camera',
  file: 'From a file',
  making: 'Being kept …',
  kept: 'Kept on this tablet.',
  flaw: 'Photo',
  flawTaken: 'Photo taken',
  none: 'None yet.',
  /** Its bytes are on another tablet, or were let go. */
  notHere: 'Not on this tablet',
  show: (what: string) => `Show large: ${what}`,
  close: 'Close',
  save: 'Save photo',
  takeBack: 'Take back',
  noStore: 'This window keeps nothing on the tablet, so it can keep no photo either.',
  notKept: 'The tablet did not keep the photo: it may have no room left.',
  refused: {
    'not-a-picture': 'This is no photo. JPEG, PNG, WebP, AVIF, HEIC and GIF are.',
    'too-large': 'This picture is too large for a tablet: at most 60 MB and 64 million pixels.',
    'not-as-named': 'This photo is not the one that its name promises.',
    'cannot-be-opened':
      'This picture cannot be opened here: it is broken, or of a kind that this browser does not know.',
  },
  ofFlaw: (reasons: string, stage: string) => `${reasons} at ${stage}`,
  ofPiece: (stage: string) => `At ${stage}`,
  at: (what: string, when: string) => `${what}, ${when}`,
  behind: 'Photos of these flaws',
  onTablet: 'Photos on this tablet',
  onTabletLead:
    'Photos go with a copy that you save, unless you leave them out; copies on this tablet and in the folder are without. Here they are also files of their own that any computer opens: a full one never changes, so only the last has to be saved again. These are not sealed.',
  inNoFile: (count: number) =>
    count === 1
      ? '1 photo is in no file yet: with this tablet it would be gone.'
      : `${wholeNumber(count)} photos are in no file yet: with this tablet they would be gone.`,
  reminder: (count: number) =>
    `${photos(count)} ${count === 1 ? 'is' : 'are'} in no file yet. A copy that you save with photos has ${count === 1 ? 'it' : 'them'}; copies on this tablet and in the folder are without.`,
  held: (count: number, bytes: number) =>
    count === 0 ? 'None is kept here.' : `${photos(count)}, ${megabytes(bytes)}.`,
  saveVolume: (number: number, all: number) => (all === 1 ? 'Save photos' : `Save ${number} of ${all}`),
  volume: (count: number, bytes: number) => `${photos(count)}, ${megabytes(bytes)}`,
  packing: 'Being packed …',
  packed: 'Saved.',
  packFailed: 'The photos could not be read. Try again.',
  takeIn: 'Take photos in',
  takeInDetail: 'From a saved file',
  takingIn: 'Being taken in …',
  takenIn: (added: number, here: number, refused: number) =>
    [
      added === 1 ? '1 photo was taken in.' : `${wholeNumber(added)} photos were taken in.`,
      here > 0 ? `Already here: ${wholeNumber(here)}.` : '',
      refused > 0 ? `Not photos of a tablet: ${wholeNumber(refused)}.` : '',
    ]
      .filter(Boolean)
      .join(' '),
  noPhotoFile: 'This is no file with photos that a tablet saved, or it is broken.',
  letGo: 'Let flaw photos go',
  letGoLead:
    'Makes room. That a flaw was photographed stays in the records; its picture is then only in files that you saved.',
  olderThan: 'Older than',
  months: (count: number) => (count === 12 ? 'a year' : count === 1 ? 'a month' : `${count} months`),
  looking: 'Looking …',
  noneOld: 'There are none that old.',
  letGoNow: (count: number) => (count === 1 ? 'Let 1 go' : `Let ${wholeNumber(count)} go`),
  wentGo: (count: number) => (count === 1 ? '1 photo is gone.' : `${wholeNumber(count)} photos are gone.`),
});
