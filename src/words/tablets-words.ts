import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

/** Words of what a shop's tablets have to do with each other. */
export const tabletsWords = inLanguage('tabletsWords', {
  title: 'Other tablets',
  lead: 'Several tablets, one shop: each counts by itself, and all show the same as soon as they meet.',
  loading: 'Being looked up …',
  forgets: 'This window keeps nothing, so it can join no other tablet.',
  demo: 'The demo shop meets nobody. Open a shop of your own first.',

  howHelp:
    'A PC in the shop hands on what the tablets tap: one command starts it, and it prints a sign to scan. It can read nothing of it and forge nothing. Without it each tablet works on, and files carry the log from one to another.',

  join: 'Join other tablets',
  joinDetail: 'With the sign of the shop’s PC or of another tablet',
  joinClose: 'Not now',
  close: 'Close',
  scan: 'Scan the sign',
  scanHelp: 'Hold the sign of the PC or of another tablet before the camera.',
  noSign: 'That is a sign of another kind.',
  stopScan: 'Stop scanning',
  link: 'Link',
  linkHint: 'It begins with https:// and has #/join/ in it.',
  linkBad: 'This is no link that invites.',
  typed: 'Type it instead',
  address: 'Address of the PC',
  addressHint: 'wss:// and what stands on its page',
  shop: 'Shop',
  shopHint: 'Small letters and digits',
  key: 'Key',
  keyHint: 'Twelve words, a space between two',
  typedBad:
    'One of the three is not right: an address begins with wss://, a key has twelve words of the list.',
  nothing: 'Scan a sign, or enter a link.',
  addsUp: 'What this tablet has is added to the shop there, for good',
  addsUpHelp:
    'Join only tablets of one shop. Two shops that were joined cannot be parted again; make a copy first if you are not sure.',
  yes: 'Yes',
  no: 'No',
  mayInvite: 'May this tablet let others join?',
  mayInviteHint:
    'Then it keeps the shop’s key. One or two tablets are enough: whoever finds a lost one has the key.',
  go: 'Join',
  going: 'Joining …',
  joined: 'Joined. What the others have comes in now.',
  nothingThere:
    'Joined, and nothing is there yet. Join with the tablet that has the shop, or set the shop up here: close this and begin.',
  arriving: 'The shop comes in …',
  arrived: 'The shop has come in',
  arrivedHelp: (stages: number, trays: number) =>
    `${stages === 1 ? '1 stage' : `${wholeNumber(stages)} stages`}, ${trays === 1 ? '1 tray' : `${wholeNumber(trays)} trays`} in work. What is tapped here shows on the other tablets, and theirs here.`,
  understood: 'Good',
  problems: {
    'no-invitation': 'This invites to nothing.',
    'joined-before': 'This tablet has joined a shop already: leave that first.',
    unreachable:
      'The PC cannot be reached. Is it on, is the tablet in the same network, and does the tablet trust its certificate?',
    'no-seat':
      'All thirteen seats are taken. Whoever looks after the PC can make a new key, which frees them.',
  },
  refused: {
    key: 'The PC does not know this key. Was a new one made since?',
    rights: 'The PC does not let this tablet do that.',
    'no-shop': 'There is no such shop on the PC.',
    full: 'The disk of the PC is full.',
  },

  worksAlone: 'This tablet works on by itself: its taps are saved on it, and go nowhere else.',
  joinWithNewKey:
    'If the shop has a new key, leave below and join with the new sign: all that was tapped here goes along.',
  otherInvitation: 'This invites to a shop under another key',
  otherInvitationHelp:
    'This tablet has joined under a different one. If your shop has a new key, leave the old one and join with this: the records stay, and all that was tapped here goes along.',
  joinAnew: 'Leave the old one and join anew',

  standing: 'How it stands',
  status: {
    off: 'Not running in this window',
    meeting: 'Looking what is missing where',
    'up-to-date': 'Up to date',
    toSend: (entries: number) => `${wholeNumber(entries)} to send`,
    unreachable: (since: string) => `Not reached since ${since}`,
    waiting: (entries: number) => `${wholeNumber(entries)} wait to be sent.`,
    refused: 'Refused by the PC',
  },
  statusMeans:
    'Taps are saved on the tablet first, always. What is sent is a copy: a PC that breaks or is emptied is filled again by any tablet.',
  again: 'Try now',
  at: 'Address',
  seat: 'Seat',

  photos: 'Photos',
  photosToo: 'Send and fetch photos, too?',
  photosHint:
    'They go after everything else, one at a time. On a slow link choose no: what was tapped goes all the same, and the photos of this tablet stay on it.',
  photosWaiting: ({ toSend, toFetch }: { toSend: number; toFetch: number }) =>
    [
      ...(toSend > 0 ? [`${wholeNumber(toSend)} to send`] : []),
      ...(toFetch > 0 ? [`${wholeNumber(toFetch)} to fetch`] : []),
    ].join(', '),
  photosRefused: {
    key: 'The PC takes no photos: it does not know this key.',
    rights: 'The PC takes no photos yet: start the hub there anew, in its newest version.',
    'no-shop': 'The PC takes no photos yet: start the hub there anew, in its newest version.',
    full: 'The PC has no room for more photos. Nothing else is held up by it.',
  },

  aside: 'Set aside',
  asideLead: (n: number) =>
    n === 1 ? 'One message could not be taken in.' : `${wholeNumber(n)} messages could not be taken in.`,
  asideHelp:
    'They change nothing here, and all others go on. Some from a newer version come in once this tablet is updated. Many that are not of this shop: ask who else has rights at the PC.',
  asideReason: 'Why',
  asideSeat: 'From seat',
  asideNumber: 'Number',
  reasons: {
    'not-sealed-here': 'not sealed with the key of this shop',
    newer: 'from a newer version',
    malformed: 'not as it ought to be',
    repeated: 'a repetition',
  },

  invite: 'Let another tablet join',
  inviteLead: 'The other tablet scans this sign under Other tablets, or at its first start.',
  inviteWarn: 'Whoever sees the sign can read and write the shop',
  inviteWarnHelp: 'Show it to your own tablets only, and hide it again.',
  show: 'Show the sign',
  hide: 'Hide it',
  sign: 'Sign that lets a tablet join',
  orType: 'Or typed, on the other tablet:',
  mayNot:
    'This tablet does not have the key of the shop. Use the sign on the PC, or a tablet that may invite.',

  leave: 'Leave',
  leaveHelp:
    'This tablet keeps all it has and counts on by itself. It can join again with the sign. A tablet that is lost is shut out by a new key: on the PC, npm run hub -- new-key.',
  leaveNow: 'Leave now',
  stay: 'Stay',
});
