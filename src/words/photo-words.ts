export const photoWords = {
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
    'cannot-be-opened':
      'This picture cannot be opened here: it is broken, or of a kind that this browser does not know.',
  },
  ofFlaw: (reasons: string, stage: string) => `${reasons} at ${stage}`,
  ofPiece: (stage: string) => `At ${stage}`,
  at: (what: string, when: string) => `${what}, ${when}`,
  behind: 'Photos of these flaws',
} as const;
