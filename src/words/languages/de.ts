import { dayWords as dayName, momentWords, shortDayWords } from '../date-words.ts';
import { durationIn } from '../duration.ts';
import type { Translate } from '../language.ts';
import { nameOf } from '../names.ts';
import { about, fixedNumber, money, roundNumber, share, signedNumber, wholeNumber } from '../number-words.ts';
import type { Language } from './texts.ts';

const units = {
  minutes: (n: number) => `${n} min`,
  hours: (n: number) => `${n} h`,
  days: (n: number) => (n === 1 ? '1 Tag' : `${n} Tage`),
};
const duration = (ms: number) => durationIn(units, ms);
/** After "vor", "in", "seit": "2 Tagen 4 h". */
const dative = (stretch: string) => stretch.replace('Tage', 'Tagen');

const seconds = (n: number) => `${wholeNumber(n)} s`;
const hours = (n: number) => `${wholeNumber(n)} h`;
/** As in the English texts: a day of work is no day of the calendar, so hours stay hours. */
const workTime = (minutes: number) => {
  if (minutes > 0 && minutes < 1) return seconds(Math.ceil(60 * minutes));
  return minutes < 24 * 60 ? duration(60_000 * minutes) : hours(minutes / 60);
};

const days = (n: number) => (n === 1 ? '1 Tag' : `${wholeNumber(n)} Tage`);
const pieces = (n: number) => `${wholeNumber(n)} Stück`;
const goodOnes = (n: number) => (n === 1 ? '1 gutes' : `${wholeNumber(n)} gute`);
const photos = (n: number) => (n === 1 ? '1 Foto' : `${wholeNumber(n)} Fotos`);
/** A count that may have gone below zero. */
const count = (n: number) => wholeNumber(n).replace('-', '−');

const megabytes = (bytes: number) =>
  bytes < 100_000 ? `weniger als ${fixedNumber(0.1, 1)} MB` : `${fixedNumber(bytes / 1e6, 1)} MB`;

const timesIn100 = (chance: number) => {
  const times = Math.round(chance * 100);
  if (times >= 100) return 'fast alle';
  return times <= 0 ? 'fast keine' : `${times} von 100`;
};

/** As every caution ends. */
const whatRules =
  'Örtliche Vorschriften, Sicherheitsdatenblätter und der Rat von Fachleuten mit Zulassung gehen vor.';

/** To the nearest fifty: no dial of a lathe is read closer. */
const turns = (value: number) => wholeNumber(Math.max(50, Math.round(value / 50) * 50));

/** How often a chance of p comes true, in words that read well for small ones, after "bei". */
const oftenWords = (p: number) => {
  if (p < 0.001) return 'weniger als einem von tausend Blicken';
  return p < 0.01
    ? `etwa ${looks(1000 * p)} von tausend Blicken`
    : `etwa ${looks(100 * p)} von hundert Blicken`;
};
const looks = (often: number) => {
  const whole = Math.max(1, Math.round(often));
  return whole === 1 ? 'einem' : wholeNumber(whole);
};

/** A chance: never said to be certain, and never none, where it is neither. */
const chanceWords = (chance: number) => {
  if (chance > 0.995 && chance < 1) return 'über 99 %';
  if (chance < 0.005 && chance > 0) return 'unter 1 %';
  return `${wholeNumber(100 * chance)} %`;
};
const comeOut = (n: number) => (n === 1 ? 'kommt' : 'kommen');
const cheapestIs = ({
  point,
  cost,
}: {
  readonly point: { readonly starts: number; readonly chance: number };
  readonly cost: number;
}) =>
  `${wholeNumber(point.starts)} anfangen. Die Wahrscheinlichkeit ist dann ${chanceWords(point.chance)}, und alle Kosten zusammen betragen im Mittel ${money(cost)}.`;

const pieceMinutes = (minutes: number) =>
  minutes < 1 ? `${wholeNumber(60 * minutes)} s` : `${roundNumber(minutes)} min`;
const likely = ([low, high]: readonly [number, number]) => {
  if (low < 1 && high >= 1) return `wohl ${pieceMinutes(low)} bis ${pieceMinutes(high)}`;
  return `wohl ${high < 1 ? wholeNumber(60 * low) : roundNumber(low)} bis ${pieceMinutes(high)}`;
};

const signedDays = (n: number) => {
  const whole = Math.round(10 * n) / 10;
  if (whole === 0) return 'kein Unterschied';
  const apart = Math.abs(whole);
  return `${roundNumber(apart)} ${apart === 1 ? 'Tag' : 'Tage'} ${whole < 0 ? 'früher' : 'später'}`;
};
const signed = (n: number) => {
  const shown = roundNumber(Math.abs(n));
  return shown === '0' ? '0' : `${n > 0 ? '+' : '−'}${shown}`;
};
const atLatest = (latest: number | null, shown: (n: number) => string) =>
  latest === null ? 'spätestens nie' : `spätestens ${shown(latest)}`;

const targetColumns = {
  batch: { none: 'Keine Serie', the: 'Die Serie', another: 'eine andere Serie' },
  variant: { none: 'Keine Ausführung', the: 'Die Ausführung', another: 'eine andere Ausführung' },
  good: { none: 'Keine Zahl guter', the: 'Die Zahl guter', another: 'eine andere Zahl guter' },
  due: { none: 'Kein Termin', the: 'Der Termin', another: 'einen anderen Termin' },
  chance: {
    none: 'Keine Wahrscheinlichkeit',
    the: 'Die Wahrscheinlichkeit',
    another: 'eine andere Wahrscheinlichkeit',
  },
} as const;

const gradesWords = { first: 'erste Wahl', second: 'zweite Wahl' } as const;
const ofGrade = (n: number, grade: keyof typeof gradesWords) =>
  `${String(n).replace('-', '−')} ${gradesWords[grade]}`;

const numberProblemWords: Language['problemSentences']['ofNumber'] = (problem) => {
  switch (problem.kind) {
    case 'missing':
      return 'Gib eine Zahl ein.';
    case 'not-a-number':
      return 'Das ist keine Zahl.';
    case 'grouped':
      return 'Nur Ziffern: 1000, nicht 1.000.';
    case 'not-whole':
      return 'Nur ganze Stücke.';
    case 'too-small':
      return `Mindestens ${problem.least}.`;
    case 'too-large':
      return `Höchstens ${problem.most}.`;
  }
};

const textProblemWords: Language['problemSentences']['ofText'] = (problem) =>
  problem.kind === 'empty'
    ? 'Gib einen Namen ein.'
    : `${problem.length} Zeichen: höchstens ${problem.most} passen.`;

const placesTaken = (free: number) => {
  if (free === 0) return 'Alle Plätze sind belegt';
  return free === 1 ? 'Nur 1 Platz ist frei' : `Nur ${free} Plätze sind frei`;
};

const problemWords: Language['problemSentences']['ofCommand'] = (problem, registers) => {
  const stageName = (id: string) => nameOf(registers, { register: 'stage', id });
  switch (problem.kind) {
    case 'only-looking':
      return 'Dieses Fenster hat eine ältere Version: Es zeigt die Werkstatt und ändert nichts. Lade es neu.';
    case 'code-not-there':
      return 'Ein Teil der App ließ sich nicht laden. Nichts wurde geändert: Versuche es noch einmal.';
    case 'no-such-tray':
      return 'Dieser Kasten ist nicht mehr im Protokoll.';
    case 'no-such-batch':
      return 'Diese Serie hat noch keinen Ablauf. Wähle einen in Einrichtung.';
    case 'no-such-variant':
      return 'Wähle, was die Stücke werden.';
    case 'no-such-stage':
      return 'Dieser Schritt hält nichts auf: Er hat keine Zeit zum Aushärten.';
    case 'route-is-empty':
      return 'Der Ablauf braucht mindestens einen Schritt.';
    case 'stage-off-route':
      return `${stageName(problem.stage)} ist nicht mehr in diesem Ablauf. Bewege erst die Stücke.`;
    case 'nothing-there':
      return 'Hier ist nichts mehr. Hältst du ein Stück in der Hand, zähle den Kasten nach.';
    case 'nothing-on-shelf':
      return 'Davon ist keines mehr da. Hältst du eines in der Hand, sieh nach, was es weggenommen hat.';
    case 'too-many':
      return `Nur ${pieces(problem.there)} hier.`;
    case 'no-seconds':
      return 'Hier steht keine zweite Wahl. Was angeboten ist, erst aus dem Angebot nehmen.';
    case 'no-reason':
      return 'Wähle, was nicht stimmt.';
    case 'not-an-earlier-stage':
      return 'Stücke gehen nur an einen früheren Schritt zurück.';
    case 'hold-is-full': {
      const { free, resource } = problem;
      return resource === undefined
        ? `${placesTaken(free)}.`
        : `${placesTaken(free)}: ${nameOf(registers, { register: 'resource', id: resource })}.`;
    }
    case 'count-is-right':
      return 'Das Protokoll sagt dasselbe: Nichts ist zu berichtigen.';
    case 'trays-differ':
      return `${problem.a.code} und ${problem.b.code} unterscheiden sich in Ausführung oder Serie und lassen sich nicht zusammenlegen.`;
    case 'same-tray':
      return 'Wähle zum Zusammenlegen einen anderen Kasten.';
    case 'already-taken-back':
      return 'Es ist nichts mehr da, was sich zurücknehmen lässt.';
    case 'cannot-be-taken-back':
      return 'Dieser Eintrag lässt sich nicht zurücknehmen.';
    case 'no-letter':
      return 'Dieses Tablet hat noch keinen Buchstaben. Gib ihm einen in Einrichtung.';
    case 'letter-lost':
      return problem.free === null
        ? `Den Buchstaben ${problem.letter} hat ein anderes Tablet, alle anderen sind vergeben. Übernimm in Einrichtung, Dieses Tablet, den eines Tablets, das es nicht mehr gibt.`
        : `Den Buchstaben ${problem.letter} hat ein anderes Tablet. Dieses nimmt ${problem.free}: Versuche es gleich noch einmal.`;
    case 'stage-still-holds':
      return `Sag, wohin die Stücke gehen: ${problem.stages.map(({ stage, pieces: n }) => `${stageName(stage)} (${n})`).join(', ')}.`;
    case 'same-name':
      return 'Dieser Name ist vergeben. Wähle einen anderen.';
    case 'no-wood':
      return 'Wähle das Holz.';
    case 'no-stage':
      return 'Wähle den Schritt.';
    case 'no-lot':
      return 'Die Werkstatt kennt diese Lieferung Rohlinge nicht.';
    case 'no-part':
      return 'Wähle das Teil.';
    case 'none-to-clean':
      return 'Keine sind zu reinigen. Hast du welche in der Hand, zähle sie.';
    case 'no-photo':
      return 'Wähle die Fotos.';
    case 'no-note':
      return 'Schreib, was gemacht wurde.';
    case 'card-is-empty':
      return 'Gib mindestens eine Zahl ein.';
    case 'card-line':
      return problemWords(problem.problem, registers);
    case 'labels-off-sheet':
      return problem.way === 'across'
        ? 'Die Etiketten ragen seitlich über den Bogen.'
        : 'Die Etiketten ragen unten über den Bogen.';
    case 'labels-overlap':
      return 'Die Etiketten liegen übereinander: Der Abstand von einem zum nächsten ist kleiner als das Etikett.';
    case 'number':
      return numberProblemWords(problem.problem);
    case 'text':
      return textProblemWords(problem.problem);
  }
};

const entries = (n: number) => (n === 1 ? '1 Eintrag' : `${wholeNumber(n)} Einträge`);
const between = ([low, high]: readonly [low: number, high: number]) =>
  `${wholeNumber(100 * low)} bis ${about(high)}`;

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** A difference of shares as more or fewer pieces in a hundred. */
const moreOrFewer = (value: number) => {
  const whole = Math.round(100 * value);
  if (whole === 0) return 'gleich viele';
  return `${wholeNumber(Math.abs(whole))} von 100 ${value > 0 ? 'mehr' : 'weniger'}`;
};

/** The ends of an interval of differences, in pieces of a hundred. */
const likelyShares = ([low, high]: readonly [number, number]) => {
  const [from, to] = [Math.round(100 * low), Math.round(100 * high)];
  const [least, most] = [Math.min(Math.abs(from), Math.abs(to)), Math.max(Math.abs(from), Math.abs(to))];
  if (most === 0) return 'wohl weniger als 1 Unterschied';
  if (from < 0 && to > 0) return `wohl zwischen ${wholeNumber(-from)} weniger und ${wholeNumber(to)} mehr`;
  return `wohl ${wholeNumber(least)} bis ${wholeNumber(most)} ${to > 0 ? 'mehr' : 'weniger'}`;
};

const loadPercent = (ratio: number) =>
  ratio === Number.POSITIVE_INFINITY ? 'mehr als da ist' : `${wholeNumber(100 * ratio)} %`;

/** Of a share that may be a loss. */
const percent = (value: number) => `${wholeNumber(100 * value).replace('-', '−')} %`;

/** After "seit", which asks for the dative. */
const sinceDuration = (ms: number) => duration(ms).replace('Tage', 'Tagen');

const grams = (n: number) => `${fixedNumber(n, 1)} g`;
/** One decimal always: 8.0 is not the same reading as 8. */
const tenth = (value: number) => fixedNumber(value, 1);
const mm = (hundredths: number) => `${roundNumber(hundredths / 100)} mm`;
const hundredthsOf = (value: number) =>
  value < 1 ? 'weniger als 1/100 mm' : `etwa ${Math.round(value)}/100 mm`;

const clockDoubts = {
  'before-build': 'das ist, bevor diese Version gemacht wurde',
  behind: 'das ist vor dem letzten Tipp auf diesem Tablet',
  jumped: 'sie ist gesprungen',
};

/** What a new shop begins with, by its English text. */
const starting: Readonly<Record<string, string>> = {
  'My shop': 'Meine Werkstatt',
  'Tear-out': 'Ausriss',
  Catch: 'Einhaker',
  'Blown blank': 'Rohling geplatzt',
  Crack: 'Riss',
  'Off centre': 'Außermittig',
  Undersize: 'Untermaß',
  Scratch: 'Kratzer',
  'Ferrule gap': 'Spalt an der Zwinge',
  'Glue failed': 'Leim hält nicht',
  'Finish run': 'Läufer',
  'Faulty part': 'Teil fehlerhaft',
  'Fails test': 'Prüfung nicht bestanden',
  'Kit parts': 'Teile richten',
  'Cut and bore': 'Ablängen und bohren',
  'Glue up': 'Leimen',
  'Glue cures': 'Leim härtet aus',
  'Rough turn': 'Schruppen',
  'Turn to shape': 'Form drehen',
  Sand: 'Schleifen',
  Seal: 'Grundieren',
  'Sealer cures': 'Grund härtet aus',
  Polish: 'Polieren',
  'Dress ferrule': 'Zwinge überdrehen',
  'Cut the flat': 'Fläche anschneiden',
  Wax: 'Wachsen',
  'Check and test': 'Prüfen',
  Photograph: 'Fotografieren',
  'Turned handles': 'Gedrechselte Griffe',
  'First batch': 'Erste Serie',
  "Guards on at saw and drill, work clamped, no gloves. Wood dust harms lungs, nose and skin. Extraction on, mask on. Your local codes and the wood's safety data sheet rule.":
    'Schutzhauben an Säge und Bohrmaschine, Werkstück gespannt, keine Handschuhe. Holzstaub schadet Lunge, Nase und Haut. Absaugung an, Maske auf. Es gelten die örtlichen Vorschriften und das Sicherheitsdatenblatt des Holzes.',
  "Glue on skin can make you allergic: gloves on. The adhesive's data sheet rules the cure.":
    'Leim auf der Haut kann allergisch machen: Handschuhe an. Für das Aushärten gilt das Datenblatt des Klebstoffs.',
  "Face shield on, sleeves and hair tied back, no gloves at a running lathe. Stop the lathe before you touch the tablet. Wood dust harms lungs, nose and skin. Extraction on, mask on. Your local codes and the wood's safety data sheet rule.":
    'Gesichtsschutz auf, Ärmel und Haare gebunden, keine Handschuhe an der laufenden Drehbank. Drehbank anhalten, bevor du das Tablet berührst. Holzstaub schadet Lunge, Nase und Haut. Absaugung an, Maske auf. Es gelten die örtlichen Vorschriften und das Sicherheitsdatenblatt des Holzes.',
  "Fumes and skin contact: air the room, gloves on. The product's safety data sheet rules. Oily rags can catch fire by themselves: lay them flat or under water.":
    'Dämpfe und Hautkontakt: lüften, Handschuhe an. Es gilt das Sicherheitsdatenblatt des Mittels. Ölige Lappen können sich selbst entzünden: flach auslegen oder unter Wasser.',
  "Face shield on, sleeves and hair tied back, no gloves at a running lathe. Stop the lathe before you touch the tablet. Dust of finish harms lungs: mask on. The product's safety data sheet rules.":
    'Gesichtsschutz auf, Ärmel und Haare gebunden, keine Handschuhe an der laufenden Drehbank. Drehbank anhalten, bevor du das Tablet berührst. Lackstaub schadet der Lunge: Maske auf. Es gilt das Sicherheitsdatenblatt des Mittels.',
  'Face shield on, sleeves and hair tied back, no gloves at a running lathe. Stop the lathe before you touch the tablet. Metal gets hot, and its dust harms lungs and eyes. Your local codes rule.':
    'Gesichtsschutz auf, Ärmel und Haare gebunden, keine Handschuhe an der laufenden Drehbank. Drehbank anhalten, bevor du das Tablet berührst. Metall wird heiß, sein Staub schadet Lunge und Augen. Es gelten die örtlichen Vorschriften.',
  "Guards on at saw and sander, fingers clear, no gloves. Wood dust harms lungs, nose and skin. Extraction on, mask on. Your local codes and the wood's safety data sheet rule.":
    'Schutzhauben an Säge und Schleifmaschine, Finger weg, keine Handschuhe. Holzstaub schadet Lunge, Nase und Haut. Absaugung an, Maske auf. Es gelten die örtlichen Vorschriften und das Sicherheitsdatenblatt des Holzes.',
};

/** Words within the names of shared/label-sizes.json; a comma for the decimal point. */
const sizes = [
  [/\bof\b/, 'zu'],
  [/^Roll\b/, 'Rolle'],
  ['along the roll', 'längs der Rolle'],
  [/(\d)\.(\d)/g, '$1,$2'],
] as const;

/** Trade names of woods by the ids of shared/species.json; from memory, most as in EN 13556. */
const woods: Readonly<Record<string, string>> = {
  'ash-white': 'Weißesche',
  'ash-black': 'Schwarzesche',
  'ash-green': 'Rotesche',
  'beech-american': 'Amerikanische Buche',
  'birch-yellow': 'Gelbbirke',
  'birch-paper': 'Papierbirke',
  'birch-sweet': 'Zuckerbirke',
  'cherry-black': 'Amerikanische Kirsche',
  'elm-american': 'Amerikanische Ulme',
  'elm-slippery': 'Rotulme',
  'elm-rock': 'Felsenulme',
  'hickory-shagbark': 'Schuppenrinden-Hickory',
  'locust-black': 'Robinie',
  honeylocust: 'Gleditschie',
  'maple-sugar': 'Zuckerahorn',
  'maple-red': 'Rotahorn',
  'maple-silver': 'Silberahorn',
  'oak-northern-red': 'Amerikanische Roteiche',
  'oak-white': 'Amerikanische Weißeiche',
  'walnut-black': 'Amerikanischer Nussbaum',
  butternut: 'Butternuss',
  'yellow-poplar': 'Tulpenbaum',
  sweetgum: 'Amberbaum',
  basswood: 'Amerikanische Linde',
  'redcedar-western': 'Riesenlebensbaum (Western Red Cedar)',
  bubinga: 'Bubinga',
  purpleheart: 'Amarant',
  'rosewood-brazilian': 'Rio-Palisander',
  'rosewood-indian': 'Ostindischer Palisander',
  iroko: 'Iroko (Kambala)',
  lignumvitae: 'Pockholz',
  teak: 'Teak',
  'goncalo-alves': 'Gonçalo alves (Muiracatiara)',
  'mahogany-true': 'Echtes Mahagoni',
  'mahogany-african': 'Khaya-Mahagoni',
  sapele: 'Sapelli',
  'padauk-african': 'Afrikanisches Padouk',
  'blackwood-african': 'Grenadill',
  cocobolo: 'Cocobolo',
  'rosewood-honduran': 'Honduras-Palisander',
  kingwood: 'Königsholz',
  ebony: 'Ebenholz',
  boxwood: 'Buchsbaum',
  wenge: 'Wenge',
  zebrawood: 'Zebrano',
  olive: 'Olivenholz',
  yew: 'Eibe',
  snakewood: 'Schlangenholz',
  'pau-ferro': 'Pau ferro (Santos-Palisander)',
  'maple-spalted': 'Gestockter Ahorn',
  'hornbeam-american': 'Amerikanische Hainbuche',
  'osage-orange': 'Osagedorn',
  'hornbeam-european': 'Hainbuche',
  apple: 'Apfel',
  pear: 'Birne',
  plum: 'Zwetschge',
  'mesquite-honey': 'Mesquite',
  'ash-european': 'Esche',
  'beech-european': 'Buche',
};

const texts: Language = {
  bannerWords: {
    toPlaces: 'Zu den Orten',
    demoBanner: 'Probewerkstatt: Nichts hier berührt deine eigene.',
    leaveDemo: 'Probe verlassen',
    uncounted: (n) =>
      `${n === 1 ? '1 Eintrag' : `${n} Einträge`} aus einer neueren Version oder unlesbar: behalten, aber hier nicht gezählt.`,
  },
  batchChanceWords: {
    chance: 'Wie sicher genug gute',
    chanceHint: (usual) => `Daraus folgt, wie viele anzufangen sind. Leer: ${usual} %.`,
    badChance: 'Ganze Prozent von 50 bis 99.',
  },
  benchActWords: {
    pass: 'Gut',
    'flaw-1': 'Erster Fehler',
    'flaw-2': 'Zweiter Fehler',
    'flaw-3': 'Dritter Fehler',
    'flaw-4': 'Vierter Fehler',
    'flaw-5': 'Fünfter Fehler',
    'flaw-6': 'Sechster Fehler',
    next: 'Nächster Kasten',
    undo: 'Zurücknehmen',
    pause: 'Pause',
  },
  benchWords: {
    chooseStage: 'Werkbank',
    chooseStageLead: 'Wähle den Schritt, an dem du arbeitest.',
    noStages: 'Noch kein Ablauf',
    noStagesDetail: 'Eine Serie braucht einen Ablauf aus Schritten, bevor Stücke angetippt werden.',
    toSetUp: 'Zur Einrichtung',
    noTrays: 'Noch keine Kästen',
    noTraysDetail: 'Lege den ersten Kasten an, und seine Stücke warten beim ersten Schritt.',
    toTrays: 'Kästen anlegen',
    waiting: (n) => (n === 1 ? '1 wartet' : `${wholeNumber(n)} warten`),
    curing: (n) => (n === 1 ? '1 härtet' : `${wholeNumber(n)} härten`),
    ready: (n) => `${wholeNumber(n)} bereit`,
    nothing: 'nichts hier',
    curingBoard: 'Aushärten',
    wipe: 'Abwischen',
    wipeTitle: 'Bildschirm abwischen',
    wipeLeft: (seconds) => `Noch ${seconds} s taub`,
  },
  booksWords: {
    title: 'Bücher prüfen',
    lead: 'Zählt das ganze Protokoll neu zusammen und vergleicht es Eintrag für Eintrag mit den Zahlen auf den Seiten.',
    check: 'Jetzt prüfen',
    checking: 'Wird geprüft …',
    cannotRead:
      'Das Protokoll ließ sich nicht lesen, also wurde nichts geprüft und nichts geändert. Versuche es noch einmal.',
    inOrder: (n, stations) =>
      `Alles in Ordnung: ${entries(n)} von ${stations === 1 ? '1 Station' : `${wholeNumber(stations)} Stationen`}, jede Zahl wie im Protokoll.`,
    checked: (n) => `${n === 1 ? '1 Eintrag wurde' : `${wholeNumber(n)} Einträge wurden`} geprüft.`,
    damaged: (n) =>
      n === 1
        ? '1 Eintrag ist nicht, wie er geschrieben wurde: beiseitegelegt, nicht gezählt, nicht gelöscht. Die zweite Sicherung oder eine gesicherte Datei kann ihn berichtigen.'
        : `${wholeNumber(n)} Einträge sind nicht, wie sie geschrieben wurden: beiseitegelegt, nicht gezählt, nicht gelöscht. Die zweite Sicherung oder eine gesicherte Datei kann sie berichtigen.`,
    gap: (station, from, to) =>
      from === to
        ? `Eintrag ${from} von ${station} fehlt.`
        : `Einträge ${from} bis ${to} von ${station} fehlen.`,
    broken: (station, seq) => `Eintrag ${seq} von ${station} schließt nicht an den davor an.`,
    more: (n) => `Und ${wholeNumber(n)} weitere.`,
    newer: (n) =>
      `${n === 1 ? '1 Eintrag ist' : `${wholeNumber(n)} Einträge sind`} aus einer neueren Version: behalten, nicht gezählt.`,
    differing: 'Einige Zahlen auf den Seiten sind nicht das, was das Protokoll ergibt.',
    takeRebuilt: 'Zahlen des Protokolls nehmen',
    twin: {
      all: 'Die zweite Sicherung auf diesem Tablet enthält dasselbe.',
      tail: 'Die zweite Sicherung auf diesem Tablet enthält die neuesten Einträge; dieser Browser bewahrt keine Dateien auf.',
      none: 'Dieser Browser bewahrt keine zweite Sicherung auf. Sichere oft Dateien.',
      failed: 'Die zweite Sicherung ließ sich nicht lesen oder schreiben.',
    },
  },
  boxWords: {
    title: 'Blätter für die Schachtel',
    short: 'Beileger',
    whatBoxes: 'was der Kunde wissen soll',
    ofTray: (code) => `Blatt für Stücke aus Kasten ${code}`,
    wood: (name) => `Holz: ${name}`,
    finish: (text) => `Oberfläche: ${text}`,
    care: (text) => `Pflege: ${text}`,
    caution: (text) => `Warnung: ${text}`,
    foot: (code, batch) => `${code} · ${batch}`,

    howMany: 'Wie viele von jedem',
    eachPiece: 'Eins je Stück',
    eachPieceDetail: 'so viele, wie im Kasten liegen',
    eachTray: 'Eins je Kasten',
    eachTrayDetail: 'für eine Schachtel mit allen Stücken',
    tooSmall: 'Etikett zu klein',
    tooSmallHelp: (codes) =>
      `Die Texte von ${codes} passen nicht ganz darauf, und eine Warnung wird nie gekürzt. Wähle ein größeres Etikett oder kürze die Texte.`,
    notCured: (count, codes) =>
      `${pieces(count)} von ${codes} ${count === 1 ? 'ist' : 'sind'} nicht fertig: Leim oder Anstrich ist vielleicht nicht ausgehärtet. Packe ein, was den letzten Schritt hinter sich hat.`,
    noSheet: (codes) =>
      `Kein Blatt für ${codes}: So steht es bei der Ausführung, in Einrichtung, Ausführungen.`,
    nothing:
      'Diese Blätter nennen nur Holz, Serie und Kasten: Schreibe Oberfläche, Pflege und Warnung in Einrichtung, Etiketten.',
    toTexts: 'Texte schreiben',
    most: (n) => `Höchstens ${wholeNumber(n)} auf einmal`,

    setUpTitle: 'Blatt für die Schachtel',
    setUpLead:
      'Was jedem Stück beiliegt, auf einem eigenen Etikett: die Ausführung, ihr Holz, diese Texte, die Warnung des Holzes, Kasten und Serie. Eine Ausführung kann etwas anderes sagen oder kein Blatt haben.',
    variantLead:
      'Was die Werkstatt auf jedem Blatt sagt, steht in Einrichtung, Etiketten. Ein leerer Text ist der der Werkstatt.',
    printed: 'Blatt für die Schachtel',
    isPrinted: 'Hat eins',
    isNotPrinted: 'Hat keins',
    finishLabel: 'Oberfläche',
    finishHint: 'Etwa: Schellack unter Hartwachs, ausgehärtet.',
    careLabel: 'Pflege',
    careHint: 'Etwa: trocken halten; einmal im Jahr etwas Wachs.',
    cautionLabel: 'Warnung',
    cautionHint:
      'Etwa: beim Nachschleifen Maske tragen. Sage nur, was die Datenblätter deiner Oberfläche und deines Leims hergeben und was deine örtlichen Vorschriften verlangen.',
    empty: 'darf leer bleiben',
    ofShop: (text) => (text === '' ? 'Die Werkstatt sagt nichts.' : `Die Werkstatt sagt: ${text}`),
  },
  calendarWords: {
    name: 'Aushärten',
    fileName: (day) => `tallywright-cures-${day}.ics`,
    summary: ({ code, stage, n }) => `${code} ist ausgehärtet: ${pieces(n)}, ${stage}`,
    description: (least) => `Darf ab ${least} heraus. Das Datenblatt gilt.`,
  },
  cameraTroubleWords: {
    insecure: {
      title: 'Keine Kamera ohne HTTPS',
      help: 'Der Browser gibt die Kamera nur Seiten, die über HTTPS kommen. Tippe den Code unten ein.',
    },
    unsupported: {
      title: 'Dieser Browser hat keine Kamera für Seiten',
      help: 'Tippe den Code unten ein oder nimm ein Lesegerät, das wie eine Tastatur schreibt.',
    },
    denied: {
      title: 'Die Kamera ist nicht erlaubt',
      help: 'Erlaube sie für diese Seite in den Einstellungen des Browsers und versuche es noch einmal. Der Code lässt sich unten eintippen.',
    },
    none: {
      title: 'Keine Kamera gefunden',
      help: 'Schließe eine an und versuche es noch einmal, oder tippe den Code unten ein.',
    },
    taken: {
      title: 'Die Kamera ist belegt',
      help: 'Eine andere App oder ein anderes Fenster hat sie. Schließe das und versuche es noch einmal, oder tippe den Code unten ein.',
    },
    gone: {
      title: 'Die Kamera ist weg',
      help: 'Sie wurde abgezogen oder ausgeschaltet. Schließe sie an und versuche es noch einmal, oder tippe den Code unten ein.',
    },
    unreadable: {
      title: 'Das Bild lässt sich nicht lesen',
      help: 'Der Teil, der Etiketten liest, ließ sich nicht starten. Versuche es noch einmal, oder tippe den Code unten ein.',
    },
    unknown: {
      title: 'Die Kamera startet nicht',
      help: 'Versuche es noch einmal, oder tippe den Code unten ein.',
    },
  },
  cardWords: {
    title: (code) => `Karte von ${code} eintragen`,
    lead: 'Tippe ein, was der Bleistift sagt: die Summen, seit die Karte gedruckt wurde. Alles davon wird ein Eintrag, oder nichts.',
    back: 'Zum Kasten',
    here: (n) => `${pieces(n)} jetzt hier`,
    passed: 'Gut',
    addFlaw: 'Fehler dazu',
    addFlawAt: (stage) => `Fehler dazu bei ${stage}`,
    reason: 'Was falsch ist',
    chooseReason: 'Wählen',
    outcome: 'Was daraus wurde',
    chooseOutcome: 'Wählen',
    count: 'Wie viele',
    outcomes: {
      mended: 'Hier behoben',
      second: 'Zweite Wahl',
      scrapped: 'Ausschuss',
      'scrapped-saved': 'Ausschuss, Teile gerettet',
    },
    backTo: (stage) => `Zurückgegeben an ${stage}`,
    remove: 'Wegnehmen',
    removeAt: (stage) => `Fehler bei ${stage} wegnehmen`,
    save: 'Karte eintragen',
    nothingEntered:
      'Noch nichts eingetragen. Das Getippte bleibt: Verbessere die markierte Zeile und trage noch einmal ein.',
    done: 'Die Karte ist eingetragen',
    doneDetail: (n) => `${entries(n)} im Protokoll, mit der Zeit von jetzt.`,
    undo: 'Zurücknehmen',
    undone: 'Die ganze Karte wurde zurückgenommen.',
    noCount: 'Trage ein, wie viele.',
    noReason: 'Wähle, was falsch ist.',
    noOutcome: 'Wähle, was daraus wurde.',
    noRoute: 'Die Serie dieses Kastens hat keinen Ablauf: Es gibt nichts einzutragen.',
  },
  cautionWords: {
    rule: 'Absaugung an, Maske auf. Das Sicherheitsdatenblatt, deine örtlichen Vorschriften und der Rat von Fachleuten mit Zulassung gehen diesem Hinweis vor.',
    usual: 'Jeder Holzstaub kann Lunge, Nase und Haut schädigen.',
    and: 'und',
    wood: 'Es',
    partOfTree: (parts) => `Nicht das Holz, sondern ${parts}`,
    parts: { bark: 'die Rinde', leaves: 'das Laub' },
    strength: (n) => `Stärke ${n} von 4`,
    carcinogens: {
      A1: 'Sein Staub erzeugt nachweislich Krebs beim Menschen (ACGIH A1).',
      A2: 'Sein Staub steht im Verdacht, beim Menschen Krebs zu erzeugen (ACGIH A2).',
      sensitiser: 'Die ACGIH führt seinen Staub als Ursache von Allergien.',
    },
    reacted: (wood, note) => `Du hast auf ${wood} reagiert: ${note}`,
    flat: 'Nie ein Stück mit abgeflachter Seite laufen lassen: Es verhakt sich und bricht.',
    fumes: 'Dämpfe: Raum lüften. Ölige Lappen können in Brand geraten: flach auslegen oder unter Wasser.',
  },
  chancesWords: {
    by: 'Getrennt nach',
    bySpecies: 'Holz',
    byVariant: 'Ausführung',
    others: { species: 'die anderen Hölzer', variants: 'die anderen Ausführungen' },
    finished: 'Fertig',
    firsts: 'Als erste Wahl',
    likely: (mean, interval) => `${about(mean)}, wohl ${between(interval)}`,
    finishedMeans: (name, mean) =>
      `Von 100 Stück ${name}, die du jetzt anfängst, kommen etwa ${wholeNumber(100 * mean)} ans Ende des Ablaufs, als erste oder zweite Wahl. Die Klammer unter dem Balken zeigt, wo der wahre Wert in neun von zehn Fällen liegt.`,
    firstsMeans: (name, mean) =>
      `Von 100 Stück ${name}, die du jetzt anfängst, werden etwa ${wholeNumber(100 * mean)} erste Wahl. Die Klammer unter dem Balken zeigt, wo der wahre Wert in neun von zehn Fällen liegt.`,
    alone: 'Für sich gezählt',
    aloneIs: (raw, interval) => (interval ? `${about(raw)}, wohl ${between(interval)}` : about(raw)),
    soFar: (stage, survival) => `${about(survival)} bisher, bis ${stage}`,
    why: (leaning, { name, worth, others }) => {
      const asMany = pieces(Math.max(1, Math.round(worth)));
      switch (leaning) {
        case 'only-one':
          return `Es gibt noch nichts anderes, woraus zu lernen wäre: Dies beruht auf ${name} allein.`;
        case 'a-guess':
          return `Noch nicht jeder Schritt hat ein Stück ${name} beurteilt, und es gibt nichts anderes, woraus zu lernen wäre: Dies ist kaum mehr als geraten.`;
        case 'not-through':
          return `Noch nicht jeder Schritt hat ein Stück ${name} beurteilt: Was fehlt, steuern ${others} bei.`;
        case 'speaks-for-itself':
          return `${name} hat genug Stücke, um für sich zu sprechen: ${capital(others)} ändern nichts Nennenswertes.`;
        case 'lifted':
          return `Was von ${name} gesehen wurde, wiegt nicht mehr als ${asMany}: Manche Verluste können Pech sein, und da ${others} besser sind, ist der Wert näher an sie gerückt.`;
        case 'lowered':
          return `Was von ${name} gesehen wurde, wiegt nicht mehr als ${asMany}: Manches kann Glück sein, und da ${others} schlechter sind, ist der Wert näher an sie gerückt.`;
      }
    },
    route: (name) => `${name} den Ablauf entlang`,
    pictureTitle: 'Was herauskommt, und wie sicher das ist',
    pictureLead:
      'Von den Stücken, die jetzt angefangen werden, der Anteil, der ans Ende des Ablaufs kommt, und der als erste Wahl dorthin kommt. Die Klammer unter jedem Balken zeigt, wo der wahre Wert in neun von zehn Fällen liegt.',
    rolled: 'Ganz ohne Fehler durch',
    rolledIs: (value) => share(value ?? null),
    rolledMeans:
      'Die Wahrscheinlichkeit eines Stücks, bei jedem Schritt, der schon eins beurteilt hat, beim ersten Mal gut zu sein: die Anteile unten malgenommen. Der schlechteste Schritt steht zuerst: Bring den zuerst in Ordnung.',
    stage: 'Schritt',
    passed: 'Beim ersten Mal gut',
    lost: 'Ausschuss',
    lowered: 'Herabgestuft oder Ausschuss',
    again: 'Kam wieder',
    of: (k, n) => `${wholeNumber(k)} von ${wholeNumber(n)}`,
    stagesMeans:
      '„Ausschuss“ zählt jedes Stück einmal, wenn der Schritt mit ihm fertig ist; ein Stück, das zurückgegeben wurde und durchkommt, ist nicht verloren. „Herabgestuft oder Ausschuss“ zählt die, die als erste Wahl kamen und als weniger gingen.',
  },
  clockWords: {
    title: 'Die Uhr des Tablets ist zweifelhaft',
    says: (doubt, { now, zone }) =>
      `Sie zeigt ${momentWords(now, zone)}: ${clockDoubts[doubt]}. Stelle Datum und Uhrzeit des Tablets.`,
    kept: 'Jeder Tipp ist gesichert, in seiner Reihenfolge. Tage mit solchen Tipps sind markiert.',
    isRight: 'Die Uhr stimmt',
    putAway: 'Weglegen',
    inDoubt: 'Uhr zweifelhaft',
  },
  columnWords: {
    code: 'Kasten',
    variant: 'Ausführung',
    species: 'Holz',
    batch: 'Serie',
    stage: 'Schritt',
    grade: 'Wahl',
    pieces: 'Stück',
    'made-up': 'Angelegt',
    where: 'Wo',
    since: 'Dort seit (im Mittel)',
    ready: 'Bereit',
    'sent-back-by': 'Zurückgegeben von',

    station: 'Station',
    tablet: 'Tablet',
    number: 'Nummer',
    moment: 'Zeitpunkt (UTC)',
    'local-time': 'Ortszeit',
    'utc-offset': 'Minuten vor UTC',
    zone: 'Zeitzone',
    day: 'Werkstatt-Tag',
    person: 'Person',
    kind: 'Was geschah',
    into: 'In Kasten',
    again: 'Davon wiedergekommen',
    reasons: 'Gründe',
    outcome: 'Was daraus wurde',
    'back-to': 'Zurückgegeben an',
    'saved-parts': 'Gerettete Teile',
    elapsed: 'Millisekunden seit dem Tipp davor',
    why: 'Warum nachgezählt',
    note: 'Notiz',
    parts: 'Teile des Lagers',
    heap: 'Wo gezählt',
    'lost-parts': 'Beim Reinigen verloren',
    moisture: 'Holzfeuchte, Prozent',
    'taken-back': 'Zurückgenommen',
    'takes-back': 'Nimmt zurück (Station, Nummer)',
    'clock-doubtful': 'Uhr zweifelhaft',
    said: 'In Worten',

    made: 'Angefangen',
    corrected: 'Durch Nachzählen',
    'in-work': 'In Arbeit',
    firsts: 'Fertig, erste Wahl',
    seconds: 'Fertig, zweite Wahl',
    scrapped: 'Ausschuss',
    'rolled-yield': 'Ganz ohne Fehler durch (Anteil)',
    'first-visits': 'Erste Besuche',
    'good-visits': 'Beim ersten Besuch gut',
    'repeat-visits': 'Wiedergekommen',
    'first-pass-yield': 'Ausbeute beim ersten Mal (Anteil)',

    passed: 'Gut',
    mended: 'Hier behoben',
    'sent-back': 'Zurückgegeben',
    second: 'Zur zweiten Wahl herabgestuft',
    minutes: 'Minuten Arbeit',

    part: 'Teil',
    sort: 'Was es ist',
    told: 'Schon erhalten oder gezählt',
    'on-hand': 'Vorhanden',
    allotted: 'Für Stücke in Arbeit vergeben',
    free: 'Frei',
    'low-mark': 'Meldebestand',
    'to-clean': 'Zu reinigen',
    received: 'Erhalten im Ganzen',
    counted: 'Durch Zählungen',
    cleaned: 'Gereinigt, zurück im Lager',
    used: 'Für Stücke verbraucht, ohne Zurückgekommenes',
    'piece-cost': 'Kosten von einem',
    worth: 'Wert des Vorhandenen',
    'to-order': 'Zu bestellen',

    good: 'Gute gewünscht',
    due: 'Termin',
    chance: 'Wahrscheinlichkeit, Prozent',

    finished: 'Fertig',
    'on-shelf': 'Im Regal',
    listed: 'Angeboten',
    sold: 'Verkauft',
    given: 'Verschenkt',
    kept: 'Behalten',
    'usual-price': 'Üblicher Preis',
    priced: 'Zu bekanntem Preis verkauft',
    takings: 'Was diese einbrachten',
    photos: 'Fotos',

    name: 'Name',
    ferrule: 'Zwinge',
    price: 'Preis',
    blemishes: 'Makel',
    'photo-files': 'Fotodateien',
  },
  compareWords: {
    what: 'Was verglichen wird',
    kinds: {
      periods: 'Zuletzt und davor',
      day: 'Seit einem Tag',
      people: 'Zwei Leute',
      batches: 'Zwei Serien',
      mark: 'Eine Notiz',
    },
    kindHints: {
      periods: 'Die letzten Tage gegen ebenso viele davor.',
      day: 'Alles seit einem Tag gegen alles davor.',
      people: 'Was zwei Leute angetippt haben.',
      batches: 'Zwei Serien, jede mit allen Stücken.',
      mark: 'Vor und seit einer Änderung: ein Werkzeug, eine Einstellung, eine Arbeitsweise.',
    },
    stretch: 'Die letzten',
    stretches: { week: '7 Tage', month: '28 Tage', quarter: '91 Tage' },
    day: 'Seit',
    first: 'Erste',
    second: 'Zweite',
    mark: 'Notiz',
    noMarks:
      'Es gibt noch keine Notiz. Setze eine auf der Seite Signale, wenn du ein Werkzeug oder eine Arbeitsweise änderst.',
    toSignals: 'Signale',
    choose: 'Wählen',
    sameTwice: 'Wähle zwei verschiedene.',
    lately: (days) => `die letzten ${days}`,
    earlier: (days) => `die ${days} davor`,
    since: (when) => `seit ${when}`,
    before: (when) => `vor ${when}`,
    measure: 'Vergleichen nach',
    measures: { clean: 'fehlerfrei', kept: 'kein Ausschuss', firsts: 'noch erste Wahl' },
    measureMeans: {
      clean:
        'Stücke, die den Schritt bei ihrem ersten Besuch gut verließen, von denen, deren erster Besuch zu Ende ist.',
      kept: 'Stücke, die der Schritt nicht zum Ausschuss gab, von denen, mit denen er fertig ist. Eins, das zurückgegeben wurde und durchkam, zählt als gerettet.',
      firsts:
        'Stücke, die als erste Wahl kamen und als erste Wahl gingen, von denen, mit denen der Schritt fertig ist.',
    },
    overall: 'Über alle Schritte',
    place: (stage, wood) => (wood === null ? stage : `${stage}, ${wood}`),
    byStage: 'Schritt für Schritt',
    bySpecies: 'Holz für Holz',
    byBoth: 'Jedes Holz bei jedem Schritt',
    lot: (name, k, n) =>
      n === 0 ? `${name}: kein Stück` : `${name}: ${about(k / n)}, ${wholeNumber(k)} von ${wholeNumber(n)}`,
    difference: (value, interval) =>
      value === undefined ? 'noch nicht bekannt' : `${moreOrFewer(value)} (${likelyShares(interval)})`,
    verdict: ({ value, interval: [low, high], a, b }) => {
      if (value === undefined) return 'Nur eins von beiden hat Stücke: Es lässt sich noch nicht vergleichen.';
      if (low > 0) return `${capital(a)}: besser als ${b}, und kaum durch Zufall.`;
      if (high < 0) return `${capital(a)}: schlechter als ${b}, und kaum durch Zufall.`;
      return 'Sie unterscheiden sich nicht mehr, als der Zufall es tut.';
    },
    fewer: (lot) => `weniger gute: ${lot}`,
    more: (lot) => `mehr gute: ${lot}`,
    flawless: (names) => `Jedes Stück von beiden war gut: ${names.join(', ')}.`,
    standsOut: 'kaum Zufall',
    means:
      'Der Balken ist der Unterschied, der gesehen wurde: nach rechts hat das Erste von beiden den größeren Anteil guter Stücke. Die Klammer zeigt, wo der wahre Unterschied in neun von zehn Fällen liegt. Eine, die über die Mitte geht, kann bloßer Zufall sein.',
    overallMeans:
      'Alle Schritte zusammen zählen ein Stück einmal bei jedem Schritt. Wer mehr von einem schwierigen Holz oder Schritt hatte, sieht hier schlechter aus: Sieh dir die Hölzer und Schritte unten an, bevor du urteilst.',
    manyMeans: (rows) =>
      `Hier stehen ${wholeNumber(rows)} Zeilen. Etwa eine von zehn verfehlt die Wahrheit durch bloßen Zufall, eine allein beweist also wenig; die schlechtesten stehen oben.`,
    nothing: 'Keins von beiden hat ein Stück, das beurteilt wurde',
    nothingHelp: 'Wähle einen längeren Zeitraum oder zwei andere.',
    fewPeople:
      'Zwei Leute werden nach dem verglichen, was jeder antippt. Trage die zweite Person in der Einrichtung ein und sage an der Werkbank, wessen Tipps es sind.',
    toPeople: 'Leute',
    fewBatches: 'Es gibt erst eine Serie. Zwei lassen sich vergleichen, sobald es eine zweite gibt.',
    stage: 'Schritt',
    wood: 'Holz',
    differenceHead: 'Unterschied',
  },
  constraintWords: {
    money,
    percent: loadPercent,
    minutes: workTime,
    timeOf: (resource, minutes) =>
      resource.startsWith('hands') ? workTime(minutes) : `${wholeNumber(minutes / 60)} Platzstunden`,
    dash: '–',
    notKnown: 'nicht bekannt',
    pieces: (n) => wholeNumber(Math.ceil(n)),
    each: (minutes) => (minutes < 10 && minutes > 0 ? `${fixedNumber(minutes, 1)} min` : workTime(minutes)),
    atLeast: (text) => `mindestens ${text}`,
    horizon: 'Bis zum Termin dieser Serie',
    horizonHint: 'Zählt diese Serie und die, deren Termin davor liegt.',
    dueOn: (batch, day) => `${batch}: ${day === null ? 'kein Termin' : dayName(day)}`,

    hands: 'Alle Hände zusammen',
    handsAt: (stage) => `Hände bei ${stage}`,
    placesOf: (stage) => `Plätze von ${stage}`,
    ofBatch: (variant, batch) => `${variant} (${batch})`,

    loads: 'Last gegen Vermögen',
    loadsLead:
      'Das am stärksten Belastete zuerst. Tippe eins an, um zu sehen, was dahintersteckt und was eine Stunde davon einbringt.',
    loadsMeans:
      'Gebraucht werden die Besuche, die die Stücke in Arbeit und die noch anzufangenden im Mittel machen, Wiederkommende mitgezählt, mal die Minuten, die ein Stück gebraucht hat. Hände haben die Stunden aller Leute bis zum Termin; jeder Schritt wird gegen alle gehalten, da jeder dort arbeiten kann. Spanner und Gestelle haben ihre Runden: Jede wird eingespannt, härtet aus und wird geleert, während jemand da ist. Eine Platzstunde ist eine Stunde eines Platzes, das Warten aufs Leeren und Füllen eingerechnet. Was jetzt aushärtet, zählt als eine Runde mehr; Plätze ohne Grenze halten nichts auf.',
    noDue: 'Diese Serie hat keinen Termin, also gibt es nichts, wogegen die Arbeit zu halten wäre.',
    toTargets: 'Ziele',
    noHours: 'Niemandes Stunden sind angegeben, also gibt es nichts, wogegen die Arbeit zu halten wäre.',
    toPeople: 'Stunden der Leute',
    tooFar: 'Der Termin ist mehr als zehn Jahre entfernt.',
    nothing: 'Dafür ist nichts mehr zu tun.',
    most: (name, load, isTooMuch) =>
      isTooMuch
        ? `Der Engpass: ${name}, belastet mit ${load} von dem, was da ist.`
        : `Am stärksten belastet: ${name}, mit ${load} von dem, was da ist.`,
    mostAt: (stage, part) => `Von den Händen geht das meiste an ${stage} (${part}).`,
    noTimeFirst: (name) => `${name}: Es gibt Arbeit, und keine Zeit mehr dafür.`,
    fits: 'Alles Gewünschte passt hinein.',
    fitsNot: 'Nicht alles Gewünschte passt hinein: mehr Stunden, weniger Stücke oder ein späterer Tag.',
    fitsUnknown: 'Was noch keine Zeit hat, kommt obendrauf: siehe unten.',
    resource: 'Was belastet ist',
    wanted: 'Gebraucht',
    available: 'Da ist',
    load: 'Last',

    behind: (name) => `Dahinter: ${name}`,
    behindLead: 'Was jede Ausführung davon noch braucht.',
    rounds: (n, rounds, places, fits, stage) =>
      `${stage}: ${pieces(n)} sind ${rounds === 1 ? '1 Runde' : `${wholeNumber(rounds)} Runden`} zu ${wholeNumber(places)}; bis dahin könnten dort ${wholeNumber(fits)} aushärten, hätte der Schritt die Plätze für sich.`,
    variant: 'Ausführung',
    stage: 'Schritt',
    visits: 'Stücke voraus',
    one: 'Jedes braucht',
    inAll: 'Im Ganzen',
    all: 'Alle',

    earnings: (name) => `Was eine Stunde einbringt: ${name}`,
    earningsLead: 'Mit den Ausführungen, die vorn stehen, machst du am meisten daraus.',
    earningsMeans:
      'Von einem Stück, das herauskommt: der Preis, von erster und zweiter Wahl, wie sie gekommen sind; abzüglich Teile und Verbrauchsmaterial, auch von Stücken, die unterwegs verloren gehen, als würde nichts von ihnen gerettet. Arbeit wird nicht abgezogen, da ihre Stunden so oder so bezahlt sind. Zeit ist die aller Besuche, die ein Stück, das herauskommt, nötig macht. Die Reihenfolge stimmt für einen einzigen Engpass; die Mischung unten beachtet alle.',
    price: 'Preis',
    parts: 'Teile',
    contribution: 'Bringt ein',
    takes: 'Braucht davon',
    perHour: 'Eine Stunde bringt',
    needsNone: 'braucht nichts davon',

    mix: 'Die beste Mischung',
    mixLead: 'Wie viele von jeder Ausführung in einer Zeitspanne am meisten einbringen, in ganzen Stücken.',
    mixMeans:
      'Gefunden durch lineare Optimierung: Hände, Spanner und Gestelle sind Grenzen, und jedes Stück wird vom Anfang bis zum Ende gemacht. Vom Gewünschten zählen so viele, wie noch als erste Wahl verkauft werden können. Was schon in Arbeit ist, wird nicht abgezogen.',
    time: 'Für',
    times: { week: 'die nächsten 7 Tage', until: 'bis zum Termin', own: 'eigene Stunden' },
    own: 'Stunden',
    ownHint: 'Aller Hände zusammen. Spanner und Gestelle bekommen ihren Anteil einer üblichen Woche.',
    badOwn: 'Ganze Stunden von 1 bis 10000.',
    sells: 'Verkaufen kannst du',
    sellsOf: { wanted: 'was gewünscht ist', any: 'beliebig viele' },
    noMixTime:
      'Nicht bekannt: Stunden der Leute oder ein Termin sind nicht angegeben. Eigene Stunden brauchen keins von beiden.',
    noPlaces: 'Stunden der Leute sind nicht angegeben, also bleiben Spanner und Gestelle außer Acht.',
    brings: (sum, n) => `${pieces(n)}, die ${sum} einbringen.`,
    brings0:
      'Keins: Nichts, was verkauft werden kann, bringt mehr ein, als es braucht, oder nichts ist gewünscht.',
    firstsOf: 'Davon erste Wahl',
    make: 'Machen',
    leftOut: (names) => `Ausgelassen, da etwas davon nicht bekannt ist: ${names}.`,
    notProven: (most) =>
      `Die Suche endete früh: Dies ist das Beste, was sie fand, und keine bringt mehr als ${most} ein.`,
    limits: 'Was die Mischung braucht',
    used: 'Belegt',
    left: 'Übrig',
    worth: 'Eine Stunde mehr bringt',
    mixProblems: {
      'not-possible': 'Keine Mischung passt.',
      'without-limit': 'Nichts begrenzt, wie viele gemacht werden: Sage, was verkauft werden kann.',
      'not-found': 'Keine Mischung aus ganzen Stücken gefunden. Versuche eine kürzere Zeitspanne.',
    },
  },
  copyAgeWords: {
    outside: 'Sicherung außerhalb',
    never: 'nie',
    today: (clock) => `heute ${clock}`,
    yesterday: (clock) => `gestern ${clock}`,
    daysAgo: (days) => `vor ${wholeNumber(days)} Tagen`,
  },
  costWords: {
    batch: 'Serie',
    money,
    perGood: 'Kosten eines guten Stücks',
    perGoodLead:
      'Fertige erste und zweite Wahl tragen alles; was in Arbeit ist und darin steckt, bleibt außer Acht.',
    perGoodMeans:
      'Teile und Verbrauchsmaterial nach der Stückliste, zu dem, was dafür bezahlt wurde oder was die Einrichtung sagt. Arbeit ist ein Besuch bei jedem Schritt zu den Minuten, die ein Stück dort gebraucht hat, und jeder weitere Besuch von Zurückgegebenem, zum Stundensatz der Werkstatt. Ausschuss ist die Arbeit und sind die Teile, die mit Ausschussstücken verloren gingen. Abschlag ist, was zweite Wahl weniger einbringt als erste.',
    variant: 'Ausführung',
    parts: 'Teile',
    labour: 'Arbeit',
    consumables: 'Verbrauchsmaterial',
    scrap: 'Getragener Ausschuss',
    markdown: 'Abschlag zweite Wahl',
    whole: 'Kosten',
    price: 'Preis erster Wahl',
    margin: 'Spanne',
    verdict: 'Das ist',
    notKnown: 'nicht bekannt',
    atLeast: (minor) => `mindestens ${money(minor)} im Ganzen`,
    noneGood: 'noch keins fertig',
    dash: '–',
    marginIs: percent,
    verdicts: {
      'below-cost': 'unter den Kosten',
      'below-margin': 'unter der Spanne',
      enough: 'genug',
    },
    leastPrice: 'Kleinster Preis dafür',
    prices: 'Preise dagegengehalten',
    wantedMargin: 'Gewünschte Spanne',
    wantedMarginHint: 'Vom Preis, nicht von den Kosten.',
    badMargin: 'Ganze Prozent von 0 bis 99.',

    missing: 'Noch nicht bekannt',
    missingLead: 'Dies ist anzugeben, bevor die Kosten bekannt sind, die darauf beruhen.',
    missingCosts: (parts) => `Was eins kostet: ${parts}.`,
    missingMinutes: (stages) =>
      `Was ein Stück bei ${stages} braucht: Tippe dort Stück für Stück, dann wird es bekannt.`,
    missingRate: 'Was eine Stunde Arbeit kostet.',
    missingPrices: 'Ein Preis der ersten oder der zweiten Wahl.',
    toParts: 'Kosten der Teile',
    toRate: 'Stundensatz',
    toVariants: 'Preise der Ausführungen',
    rateNote: 'Der Stundensatz ist der der Werkstatt, wer auch gearbeitet hat.',

    losses: 'Verlorenes Geld',
    lossesLead: (whole) => `${money(whole)} im Ganzen, nach Schritt und Grund, das Teuerste zuerst.`,
    lossesMeans:
      'Ein Ausschussstück verlor seine Arbeit und seine Teile bis dahin, ohne das, was gerettet wurde; ein zurückgegebenes die Arbeit, die noch einmal getan wird; zweite Wahl das, was sie weniger einbringt. Ein Stück mit zwei Gründen steht unter beiden, sein Geld halbiert.',
    noLosses: 'Nichts ging verloren.',
    unknownLosses: (n) => `Dazu ${pieces(n)}, deren Geld nicht bekannt ist.`,
    stage: 'Schritt',
    reason: 'Grund',
    noReason: 'keiner angegeben',
    pieces: 'Stück',
    lost: 'Verloren',

    second: 'Ein Stück mit Makel: fertig machen oder Ausschuss?',
    secondLead:
      'Gegen das, was das Fertigmachen noch kostet und was Ausschuss jetzt retten würde. Was es bisher gekostet hat, ist so oder so ausgegeben.',
    standsAt: 'Es steht bei',
    saves: 'Ausschuss jetzt rettet',
    savesHint: 'Was die Teile wert sind, die davon abgehen, ohne die Arbeit, sie zu retten.',
    badSaves: 'Eine Summe ist eine Zahl wie 24 oder 24,50.',
    answer: (verdict) => {
      switch (verdict.kind) {
        case 'no-chance':
          return 'Es kann nicht mehr durchkommen.';
        case 'not-known':
          return 'Nicht bekannt: Sieh oben, was anzugeben ist.';
        case 'known':
          return `${verdict.gain >= 0 ? 'Fertig machen' : 'Ausschuss'}: Das Fertigmachen kostet noch ${money(Math.round(verdict.toCome))}, es kommt mit einer Wahrscheinlichkeit von ${percent(verdict.chance)} durch und lohnt sich ab einem Preis von ${money(verdict.breakEvenPrice)}.`;
      }
    },
  },
  countReasonWords: {
    'first-count': 'Erste Zählung',
    miscounted: 'Verzählt',
    found: 'Gefunden',
    lost: 'Verloren',
    spoilt: 'Verdorben',
  },
  criterionWords: {
    passes: 'Was gut ist',
    passesHint: 'Für Prüfungen: dein eigener Maßstab, in wenigen Worten. Er steht auf dem Knopf der Prüfung.',
    photos: 'Was gut ist, und was nicht',
    photosHint: 'Wird bei der Prüfung gezeigt, damit alle gleich urteilen.',
    good: 'Gut',
    bad: 'Nicht gut',
  },
  cureWords: {
    over: ({ code, pieces: n, stage }) => `Ausgehärtet: ${pieces(n)} aus Kasten ${code} bei ${stage}.`,
    sign: (codes) => `Ausgehärtet: ${codes.join(', ')}`,
    goThere: 'Dorthin',
    putAway: 'Weglegen',
  },
  curingWords: {
    short: {
      minutes: (n) => `${n} min`,
      hours: (n) => `${n} h`,
      days: (n) => `${n} d`,
    },
    title: 'Was aushärtet',
    lead: 'Was zuerst bereit ist, zuerst.',
    back: 'Werkbank',
    nothing: 'Nichts härtet aus',
    nothingDetail: 'Spanne einen Kasten bei einem Schritt mit Haltezeit ein, und seine Zeit steht hier.',
    noHolds: 'Kein Schritt hat Haltezeit',
    noHoldsDetail:
      'Leim und Anstrich härten bei Schritten der Art „härtet aus“. Sie stehen in Einrichtung, Schritte.',
    ready: 'bereit',
    readySince: (ms) => (ms < 60_000 ? 'gerade eben' : `seit ${sinceDuration(ms)}`),
    mayComeOut: 'darf heraus',
    readyAt: (time) => `bereit ${time}`,
    behind: 'nach dem davor',
    takeOut: (n) => `${wholeNumber(n)} heraus`,
    takeOutOf: (n, code) => `${wholeNumber(n)} aus ${code} heraus`,
    isEarly: (short) => `${duration(short)} zu früh. Das Datenblatt gilt.`,
    places: ({ held, limit, free }) =>
      limit === null
        ? `${wholeNumber(held)} drin · ohne Grenze`
        : `${wholeNumber(held)} von ${wholeNumber(limit)} · ${wholeNumber(free)} frei`,
    waiting: (n) => `${pieces(n)} einzuspannen`,
    load: 'Spannen',
    mix: 'Mischen',
    loadAt: (stage) => `Einspannen: ${stage}`,
    mixFor: (stage) => `Mischen: ${stage}`,
    calendar: 'Kalender',
    calendarAfter:
      'Eine neuere Datei erneuert die Einträge einer älteren. Was seither herauskam, bleibt im Kalender stehen: Lösche es dort.',
    undo: 'Zurücknehmen',
    nothingToUndo: 'noch nichts',

    warmth: (tenths) => (tenths === null ? 'Wärme' : `${roundNumber(tenths / 10)} °C`),
    warmthDetail: (tenths) => (tenths === null ? 'nicht gesagt' : 'hier drin'),
    warmthTitle: 'Wie warm ist es?',
    warmthField: 'Wo Leim und Anstrich härten',
    warmthHint: 'Leer: nicht bekannt. Die Zeiten stehen dann, wie die Schritte sie haben.',
    badWarmth: 'Eine Temperatur wie 18 oder 18,5.',
    warmthRule:
      'Eine Faustregel: die halbe Zeit je 10 °C mehr, die doppelte Zeit je 10 °C weniger. Das Datenblatt des Klebers gilt.',
    warmthFor: 'Gilt für alles, was ab jetzt eingespannt wird. Was schon aushärtet, behält seine Zeit.',
    warmthOf: (stage, time, least) => `${stage}: ${time}, mindestens ${least}`,
    warmthNotRated: (stage, time) => `${stage}: ${time}, bei jeder Wärme`,
  },
  dayWords: {
    title: 'Tag',
    today: 'Heute',
    before: 'Tag davor',
    after: 'Tag danach',
    toToday: 'Heute',
    print: 'Drucken',
    startsAt: (hour) => `Der Tag der Werkstatt beginnt um ${String(hour).padStart(2, '0')}:00.`,
    averageOver: (days) =>
      days === 0
        ? 'Noch kein früherer Arbeitstag zum Vergleichen.'
        : `Mittel ${days === 1 ? 'des einen früheren Arbeitstags' : `der ${wholeNumber(days)} früheren Arbeitstage`}.`,
    sum: 'Der Tag in Zahlen',
    measure: 'Was',
    day: 'Dieser Tag',
    dayBefore: 'Tag davor',
    average: 'Mittel',
    made: 'Angefangene Stücke',
    firsts: 'Fertig, erste Wahl',
    secondsFinished: 'Fertig, zweite Wahl',
    seconds: 'Zur zweiten Wahl herabgestuft',
    scrapped: 'Ausschuss',
    minutes: 'Minuten an der Werkbank',
    stages: 'Bei jedem Schritt getan',
    stage: 'Schritt',
    passed: 'Gut',
    passedBefore: 'Tag davor',
    passedAverage: 'Mittel',
    stageMinutes: 'Minuten',
    minutesBefore: 'Tag davor',
    minutesAverage: 'Mittel',
    nothingDone: 'An diesem Tag wurde nichts angetippt.',
    flaws: 'Was schiefging, und warum',
    noFlaws: 'Kein Fehler an diesem Tag.',
    reason: 'Grund',
    wood: 'Holz',
    outcome: 'Was daraus wurde',
    pieces: 'Stück',
    samples: 'Geprüfte Lieferungen',
    part: 'Teil',
    accepted: 'Angenommen',
    refused: 'Abgelehnt',
    holds: 'Was aushärtet, und bis wann',
    noHolds: 'Nichts ist in Spannern oder im Gestell.',
    tray: 'Kasten',
    ready: 'Bereit',
    checks: 'Zahlen zum Nachzählen',
    checksLead: 'Es wurde mehr abgetippt, als laut Protokoll da war. Zähle die Stücke und trage es ein.',
    noChecks: 'Alle Zahlen stimmen.',
    recount: 'Nachzählen',
    checkDetail: (n, stage) => `${wholeNumber(n).replace('-', '−')} bei ${stage}`,
    clockMark: (taps) =>
      `${taps === 1 ? 'Ein Tipp' : `${wholeNumber(taps)} Tipps`} dieses Tages ${taps === 1 ? 'kam' : 'kamen'}, während die Uhr des Tablets zweifelhaft war: Der Tag kann falsch sein.`,
    markedDays: 'Tipps, die vielleicht zu einem anderen Tag gehören',
    markedDaysLead: 'Sie kamen, während die Uhr des Tablets zweifelhaft war, und zählen an diesen Tagen.',
    number: (value) => wholeNumber(value),
    mean: (value) => (value === null ? '–' : roundNumber(value)),
  },
  dustLimits: {
    NIOSH_REL: {
      name: 'USA, NIOSH: empfohlen, jeder Holzstaub',
      value: 1,
      source: 'OSHA, Seite über Holzstaub',
    },
    ACGIH_TLV_inhalable: {
      name: 'USA, ACGIH: Schwellenwert, einatembar',
      value: 1,
      source: 'ACGIH, angeführt auf der Seite der OSHA über Holzstaub',
    },
    ACGIH_western_red_cedar: {
      name: 'USA, ACGIH: Riesen-Lebensbaum (Western Red Cedar)',
      value: 0.5,
      source: 'ACGIH, angeführt auf der Seite der OSHA über Holzstaub',
    },
    OSHA_PEL_total_dust: {
      name: 'USA, OSHA: gesetzlich, als lästiger Staub, gesamt',
      value: 15,
      source: 'OSHA, Seite über Holzstaub',
    },
    OSHA_PEL_respirable: {
      name: 'USA, OSHA: gesetzlich, als lästiger Staub, alveolengängig',
      value: 5,
      source: 'OSHA, Seite über Holzstaub',
    },
    EU_hardwood_since: {
      name: 'EU: Hartholz, einatembar, seit Januar 2023',
      value: 2,
      source: 'Richtlinie (EU) 2017/2398',
    },
    UK_hardwood: {
      name: 'UK: Hartholz',
      value: 3,
      source: 'HSE EH40/2005, 4. Ausgabe (2020)',
    },
    UK_softwood: {
      name: 'UK: Weichholz',
      value: 5,
      source: 'HSE EH40/2005, 4. Ausgabe (2020)',
    },
  },
  dustWords: {
    title: 'Minuten im Holzstaub',
    leadAll: 'Arbeit bei Schritten, die Staub machen, nach Holz. Tipps von allen.',
    leadOne: (name) => `Arbeit bei Schritten, die Staub machen, nach Holz. Tipps von ${name}.`,
    wood: 'Holz',
    day: 'Dieser Tag',
    usual: 'Sonst bei dir',
    usualOver: 'Tage',
    all: 'Alle Hölzer',
    minutes: (value) => wholeNumber(Math.round(value)),
    noUsual: '–',
    none: 'An diesem Tag wurde kein Staub gemacht.',
    reading: 'Zählt zusammen …',
    failed: 'Das Protokoll ließ sich dafür nicht lesen. Nichts ist verloren; sieh später wieder nach.',
    notSaid: 'Noch kein Schritt sagt, dass er Staub macht. Gib es an in Einrichtung, Schritte.',
    toStages: 'Einrichtung, Schritte',
    means:
      '„Sonst bei dir“ ist der mittlere deiner eigenen früheren Tage, an denen dieses Holz Staub machte: Die Hälfte war länger, die Hälfte kürzer.',
    noDosimeter:
      'Das ist kein Dosimeter. Es zählt Minuten zwischen Tipps; es weiß nichts davon, wie viel Staub da war, nichts von Absaugung oder Masken. Wenige Minuten sind kein Beweis für Sicherheit.',
    limits: 'Veröffentlichte Grenzwerte am Arbeitsplatz, zur Kenntnis',
    limitsLead:
      'Milligramm Staub in einem Kubikmeter Luft, Mittel über eine Schicht von 8 Stunden. Ein Protokoll kann sie nicht messen.',
    limit: 'Wer und was',
    value: 'mg/m³',
    source: 'Quelle',
    rules: `${whatRules} Miss, oder lass messen, bevor du deiner Luft traust.`,
  },
  effectWords: {
    sensitiser: 'kann allergisch machen',
    irritant: 'reizt',
    'pneumonitis/alveolitis (hypersensitivity pneumonia)': 'kann die Lunge entzünden',
    'nasopharyngeal cancer': 'wird mit Krebs von Nase und Rachen in Verbindung gebracht',
    'nausea, malaise': 'kann Übelkeit machen',
    'nausea, malaise (listed under site)': 'kann Übelkeit machen',
    'direct toxin': 'ist giftig',
  },
  eventSentences: {
    trayMade: (code, n) => `Kasten ${code} angelegt mit ${pieces(n)}`,
    traySplit: (n, code, into) => `${pieces(n)} aus ${code} abgeteilt nach ${into}`,
    trayJoined: (code, into, n) => `${code} zu ${into} gelegt (${pieces(n)})`,
    passed: (n, stage) => `${pieces(n)} gut bei ${stage}`,
    flawed: (flaw, stage) => `${flaw} bei ${stage}`,
    sentBackTo: (stage) => `zurückgegeben an ${stage}`,
    saved: (parts) => `gerettet: ${parts}`,
    loaded: (n, stage) => `${pieces(n)} eingespannt bei ${stage}`,
    early: (stretch) => `${stretch} zu früh`,
    warmth: (celsius) => `gerechnet für ${roundNumber(celsius)} °C`,
    recounted: (code, stage) =>
      stage === undefined ? `${code} nachgezählt` : `${code} nachgezählt bei ${stage}`,
    rerouted: (n, from, to) => `${pieces(n)} von ${from} nach ${to} verlegt`,
    moisture: (lot, value) => `${lot} gemessen: ${roundNumber(value)} %`,
    raised: (n, code) => `${pieces(n)} aus ${code} zu erster Wahl aufgewertet`,
    gone: (reasons) => `weg: ${reasons}`,
    photoAt: (stage, reasons) =>
      reasons === '' ? `Foto aufgenommen bei ${stage}` : `Foto aufgenommen bei ${stage}: ${reasons}`,
    photoOf: (variant) => `Foto von ${variant} aufgenommen`,
    photoOfVerdict: {
      good: (reason) => `Foto aufgenommen von dem, was gut ist: ${reason}`,
      bad: (reason) => `Foto aufgenommen von dem, was nicht gut ist: ${reason}`,
    },
    photoLetGo: 'Ein Foto wurde gelöscht',
    ofVariant: (n, variant, grade) => `${pieces(n)} ${variant} (${grade})`,
    each: (price) => `je ${price}`,
    workBegun: (stage) => `Arbeit begonnen bei ${stage}`,
    pause: (stage) => `Pause bei ${stage}`,
    putBack: (what) => `Gilt wieder: ${what}`,
    takenBack: (what) => `Zurückgenommen: ${what}`,
    changed: (name) => `${name} in der Einrichtung geändert`,
    noted: (note) => `Notiert: ${note}`,
    noteTakenAway: (note) => `Notiz weggenommen: ${note}`,
  },
  filesWords: {
    close: 'Schließen',
    back: 'Zurück',
    entries,

    outsideTitle: 'Sicherung außerhalb dieses Tablets',
    outsideLead:
      'Ein Tablet kann verloren gehen, zerbrechen oder gelöscht werden. Eine Sicherung auf einem anderen Gerät bringt die ganze Werkstatt zurück.',
    outsideNever: 'Noch keine Sicherung hat dieses Tablet verlassen.',
    outsideLast: (when, n, way) => `Zuletzt: ${when}, ${entries(n)}, ${way}.`,
    ways: {
      folder: 'in den Ordner',
      download: 'als Datei gesichert',
      share: 'geteilt',
      text: 'als Text kopiert',
    },
    nothingNew: 'Seither nichts Neues.',
    newSince: (n) => `Seither ${entries(n)}.`,
    saveFile: 'Sichern',
    saveFileDetail: 'Alle Daten in einer Datei',
    saveAllDetail: 'Alle Daten und Fotos',
    withPhotos: 'Mit Fotos',
    withoutPhotos: 'Ohne',
    withoutPhotosDetail: 'Eine kleine Datei zum Senden',
    moreFiles: (n) =>
      n === 1
        ? 'Die Fotos passten nicht in eine Datei: Noch eine gehört zu dieser Sicherung.'
        : `Die Fotos passten nicht in eine Datei: Noch ${wholeNumber(n)} gehören zu dieser Sicherung.`,
    saveNumber: (number, of) => `Datei ${wholeNumber(number)} von ${wholeNumber(of)}`,
    photosIn: (n, bytes) => `${photos(n)}, ${fixedNumber(bytes / 1e6, 1)} MB`,
    photosLeftOut: (n) =>
      n === 1
        ? '1 Foto ließ sich nicht lesen und ist nicht dabei.'
        : `${wholeNumber(n)} Fotos ließen sich nicht lesen und sind nicht dabei.`,
    shareFile: 'Sicherung teilen',
    shareDetail: 'An Mail, Dateien oder ein Gerät',
    preparing: 'Die Datei wird gemacht …',
    ready: 'Die Datei ist bereit. Tippe noch einmal, um sie zu teilen.',
    handedOver: (name) => `${name} wurde übergeben. Sieh einmal nach, ob sie da ist, wo du sie haben willst.`,
    sharedNow: (name) => `${name} wurde geteilt.`,
    notMade:
      'Die Sicherung ließ sich nicht machen: Das gespeicherte Protokoll ließ sich nicht ganz lesen. Nichts wurde geändert.',
    notShared: 'Die Datei ließ sich nicht teilen. Versuche es noch einmal, oder nimm sie als Text.',
    asText: 'Als Text',
    asTextSummary: 'Die Sicherung als Text nehmen',
    asTextLead:
      'Wo weder Sichern noch Teilen geht: Kopiere das alles in eine Mail oder eine Notiz an dich selbst.',
    textLabel: 'Die Sicherung als Text',
    copyText: 'Alles kopieren',
    textCopied: 'Kopiert. Füge es irgendwo außerhalb dieses Tablets ein.',
    textNotCopied: 'Der Browser hat es nicht kopiert. Markiere den Text und kopiere ihn von Hand.',
    seal: 'Mit Passwort',
    sealHint: 'Offen ist für die meisten sicherer: Ein vergessenes Passwort lässt sich nirgends erfragen.',
    plain: 'Offene Datei',
    sealed: 'Versiegelt',
    passphrase: 'Passwort',
    passphraseHint: 'Mindestens 8 Zeichen. Es wird nirgends aufbewahrt.',
    passphraseAgain: 'Dasselbe noch einmal',
    passphraseShort: 'Mindestens 8 Zeichen.',
    passphraseDiffers: 'Nicht beide Male dasselbe.',
    sealNow: 'Versiegeln',
    sealing: 'Wird versiegelt und zur Probe wieder geöffnet …',
    recoveryTitle: 'Schreibe diese zwölf Wörter auf',
    recoveryLead:
      'Sie öffnen diese eine Datei, wenn das Passwort vergessen ist. Sie werden jetzt gezeigt und nie wieder; jede versiegelte Sicherung hat ihre eigenen Wörter.',
    wordsWritten: 'Ich habe sie aufgeschrieben',
    wordsDetail: 'Dann wird die Datei übergeben',

    folder: 'Ordner für Sicherungen',
    folderLead:
      'Wähle einmal einen Ordner, der auf ein anderes Gerät reicht. Von da an gehen Sicherungen von selbst dorthin.',
    chooseFolder: 'Ordner wählen',
    folderIs: (name) => `Sicherungen gehen von selbst in „${name}“.`,
    folderAsks: (name) => `Der Browser will noch einmal dein Wort, bevor er in „${name}“ schreibt.`,
    allowFolder: 'Erlauben',
    writeFolder: 'Jetzt sichern',
    otherFolder: 'Anderer Ordner',
    forgetFolder: 'Nicht mehr nutzen',
    folderWritten: 'Geschrieben, zurückgelesen und gezählt.',
    folderFailed: 'In den Ordner ließ sich nicht schreiben. Ist er noch da?',
    folderPlain: 'Sicherungen im Ordner sind offene Dateien ohne Fotos.',

    keptTitle: 'Sicherungen auf diesem Tablet',
    keptLead:
      'Werden von selbst gemacht: beim Tageswechsel, nach 200 Einträgen und nach 24 Stunden. Ohne Fotos: Die liegen ohnehin auf diesem Tablet.',
    keptNever: 'Noch keine Sicherung ist auf diesem Tablet.',
    keptLast: (when, n) => `Zuletzt: ${when}, ${entries(n)}.`,
    noShelf:
      'Dieser Browser hat keinen Platz für Sicherungen auf dem Tablet. Umso nötiger ist eine außerhalb.',
    guarded:
      'Dem Protokoll fehlen Einträge, die eine ältere Sicherung hat. Die älteren Sicherungen bleiben, wie sie sind: Sieh hinein und füge hinzu, was fehlt.',
    failed: (when) => `Der letzte Versuch (${when}) ergab keine Sicherung. Er wird von selbst wiederholt.`,
    keepNow: 'Jetzt sichern',
    keeping: 'Eine Sicherung wird gemacht …',
    keepResults: {
      kept: 'Gesichert, zurückgelesen und gezählt.',
      guarded: 'Die älteren Sicherungen enthalten mehr als das Protokoll: Sie wurden gelassen, wie sie sind.',
      failed: 'Die Sicherung ließ sich nicht machen. Was auf dem Bildschirm steht, ist noch da.',
      busy: 'Ein anderes Fenster macht gerade eine Sicherung. Versuche es in einer halben Minute noch einmal.',
      saving: 'Ein Tipp wird gerade gesichert. Versuche es gleich noch einmal.',
      'no-shelf': 'Dieser Browser hat keinen Platz für Sicherungen auf dem Tablet.',
    },
    shelfList: 'Sicherungen, die hier sind',
    shelfReading: 'Es wird nachgesehen, was hier ist …',
    shelfEmpty: 'Noch keine.',
    shelfUnread: 'Die Sicherungen ließen sich nicht auflisten.',
    shelfKinds: { usual: '', 'before-restore': 'vor einem Zurückholen' },
    shelfDamaged: 'nicht lesbar',
    lookInto: 'Hineinsehen',
    inDemo:
      'Die Probewerkstatt bewahrt keine Sicherungen auf, und ihr wird nichts hinzugefügt. Verlasse die Probe für deine eigene Werkstatt.',
    openingDesk: 'Die Sicherungen werden gesucht …',
    dayTitle: 'Sicherungen',
    allCopies: 'Alle Sicherungen',

    restore: 'Zurückholen',
    restoreTitle: 'Aus einer Sicherung zurückholen',
    restoreLead:
      'Fügt hinzu, was eine Sicherung hat und die Werkstatt nicht. Nichts, was hier ist, wird geändert oder weggenommen.',
    chooseFile: 'Datei wählen',
    chooseFileDetail: 'Oder alle Dateien einer Sicherung zusammen. Zeigt erst, was sie hinzufügen würden',
    pasteSummary: 'Eine Sicherung einfügen, die als Text genommen wurde',
    pasteLabel: 'Der Text, mit erster und letzter Zeile',
    pasteRead: 'Lesen',
    pasteNothing: 'Dieser Text enthält keine Sicherung. Sie beginnt mit einer Zeile BEGIN TALLYWRIGHT COPY.',
    pastedName: 'Eingefügter Text',
    reading: (file) => `${file} wird gelesen …`,
    readingHere: 'Nichts ändert sich, bevor du es sagst.',
    fromTablet: 'Oder eine von diesem Tablet',

    sealedTitle: 'Diese Sicherung ist versiegelt',
    sealedLead: 'Ihr Passwort öffnet sie, oder die zwölf Wörter, die aufgeschrieben wurden.',
    openBy: 'Öffnen mit',
    byPassphrase: 'Passwort',
    byWords: 'Zwölf Wörter',
    wordsLabel: 'Die zwölf Wörter, in ihrer Reihenfolge',
    wordsHint: 'Mit Leerzeichen dazwischen.',
    wordsCount: (n) => `${n === 1 ? '1 Wort' : `${wholeNumber(n)} Wörter`} von 12.`,
    openSealed: 'Öffnen',
    wrongSecret: 'Das öffnet sie nicht. Nichts wurde geändert. Versuche es noch einmal.',

    refusedTitle: 'Nichts wurde geändert.',
    refusals: {
      several:
        'In diesen Dateien sind die Daten mehrerer Werkstätten. Wähle die Dateien einer Sicherung auf einmal.',
      'not-a-backup': 'Diese Datei ist keine Sicherung einer Werkstatt.',
      'too-big': 'Diese Datei ist zu groß für eine Sicherung einer Werkstatt.',
      'unpacks-too-big':
        'Entpackt ist diese Datei viel größer, als eine Werkstatt sein kann, also blieb sie unberührt.',
      sealed: 'Diese Sicherung ist versiegelt.',
      'newer-format':
        'Diese Sicherung stammt aus einer neueren Version. Aktualisiere dieses Tablet und versuche es dann noch einmal.',
      empty: 'In dieser Datei ist nichts.',
      'cannot-read': 'Die Datei ließ sich nicht lesen. Ist sie noch da, wo sie war?',
      'wrong-secret': 'Das Passwort oder die Wörter öffnen sie nicht.',
      'not-sealed': 'Diese Sicherung ist nicht versiegelt.',
      damaged: 'Diese versiegelte Sicherung ist beschädigt und lässt sich nicht öffnen.',
    },
    otherFile: 'Andere wählen',

    offerTitle: 'Was in dieser Sicherung ist',
    offerFile: 'Datei',
    offerShop: 'Werkstatt',
    offerMade: 'Gemacht',
    offerNewest: 'Neuester Eintrag',
    offerAdds: 'Käme hinzu',
    offerHere: 'Schon hier',
    offerUnreadable: 'Nicht lesbar',
    offerPhotos: 'Fotos, die hinzukämen',
    offerPhotosHere: 'Fotos, die schon hier sind',
    offerPhotosDamaged: 'Beschädigte Fotos',
    missingTitle: ({ missing, volumes }) =>
      missing.length === 1
        ? `Datei ${missing.join()} von ${wholeNumber(volumes)} dieser Sicherung wurde nicht gewählt`
        : `Dateien ${missing.join(', ')} von ${wholeNumber(volumes)} dieser Sicherung wurden nicht gewählt`,
    missingLead: (n) =>
      `Darin ${n === 1 ? 'ist 1 Foto' : `sind ${wholeNumber(n)} Fotos`}. Was hier ist, kann jetzt hinzukommen und der Rest später, in beliebiger Reihenfolge.`,
    unnamed: 'ohne Namen',
    unknown: 'nicht bekannt',
    offerStations: 'Tablets darin',
    station: 'Tablet',
    stationNew: 'Neu hier',
    problems: 'Was sich nicht lesen ließ',
    problem: (line, problems) => `Zeile ${wholeNumber(line)}: ${problems}`,
    moreProblems: (n) => `und ${wholeNumber(n)} weitere`,
    cutTitle: 'Diese Sicherung ist abgeschnitten oder hat Lücken',
    changedTitle: 'Diese Sicherung wurde geändert, nachdem sie gemacht war',
    damagedLead:
      'Was darin heil ist, weist sich selbst aus und kann hinzukommen. Der Rest bleibt draußen; die Datei bleibt, wie sie ist.',
    foreignTitle: 'Diese Sicherung hat nichts mit der Werkstatt auf diesem Tablet gemein',
    foreignLead:
      'Ist sie von einer anderen Werkstatt, würden Kästen und Zahlen beider vermischt, und kein Zurücknehmen trennt sie wieder.',
    add: 'Hinzufügen',
    addSound: 'Heiles hinzufügen',
    addForeign: 'Trotzdem hinzufügen',
    nothingToAdd: 'Alles davon ist schon hier.',
    nothingSound: 'Nichts darin ist heil.',
    leaveIt: 'Lassen',
    copying: 'Erst eine Sicherung der Werkstatt, wie sie ist …',
    adding: 'Kommt hinzu …',
    noCopyTitle: 'Die Werkstatt, wie sie ist, ließ sich nicht sichern',
    noCopyLead:
      'Das Hinzufügen nimmt nichts weg, es geht also auch ohne. Erst eine Sicherung außerhalb dieses Tablets ist sicherer.',
    goOn: 'Ohne weitermachen',
    brokenOffTitle: 'Das Hinzufügen brach ab',
    brokenOff: (n, all) =>
      `${wholeNumber(n)} von ${all === 1 ? '1 Eintrag' : `${wholeNumber(all)} Einträgen`} sind drin und bleiben. Weitermachen fügt den Rest hinzu.`,
    brokenOffUnknown: 'Was drin ist, bleibt. Weitermachen fügt den Rest hinzu, und nichts doppelt.',
    addRest: 'Rest hinzufügen',

    restoredTitle: (added, here) =>
      added === 0
        ? `Nichts kam hinzu: ${here === 1 ? 'Der Eintrag war' : `Alle ${entries(here)} waren`} schon hier.`
        : `${wholeNumber(added)} hinzugefügt; ${wholeNumber(here)} ${here === 1 ? 'war' : 'waren'} schon hier.`,
    restoredOnlyPhotos: 'In diesen Dateien waren Fotos und keine Einträge.',
    restoredUnreadable: (n) =>
      n === 1
        ? '1 Eintrag der Sicherung ließ sich nicht lesen und blieb draußen.'
        : `${entries(n)} der Sicherung ließen sich nicht lesen und blieben draußen.`,
    restoredUnplaced: (n) =>
      n === 1
        ? '1 Eintrag wartet auf eine andere Sicherung: Er folgt auf Einträge, die diese nicht hat.'
        : `${entries(n)} warten auf eine andere Sicherung: Sie folgen auf Einträge, die diese nicht hat.`,
    understood: 'Gut',
  },
  flawsWords: {
    pareto: 'Was am meisten schiefgeht',
    paretoByPieces: 'Was am meisten schiefgeht, nach Stücken',
    paretoByMinutes: 'Was am meisten schiefgeht, nach verlorenen Minuten',
    by: 'Gezählt nach',
    byPieces: 'Stücken',
    byMinutes: 'Minuten',
    paretoMeans: {
      pieces:
        'Der längste Balken ist der Grund, den die meisten fehlerhaften Stücke haben. Der laufende Anteil sagt, wie viel aller Fehler die Gründe bis zu diesem ausmachen: Die ersten zwei oder drei sind meist das meiste. Ein Stück mit zwei Gründen zählt unter beiden.',
      minutes:
        'Minuten, die in Stücken steckten, die Ausschuss wurden, und die, die zurückgegebene Stücke noch einmal kosten, nach der üblichen Zeit eines Stücks. Zweite Wahl und behobene Stücke verlieren Geld, keine Minuten.',
    },
    noFlaws: 'In dem, was du ansiehst, wurde kein Fehler angetippt.',
    noMinutes: 'In dem, was du ansiehst, sind keine verlorenen Minuten bekannt.',
    running: (upTo, isFirst) => `${about(upTo)} ${isFirst ? 'von allem' : 'mit denen darüber'}`,
    flawed: pieces,
    lost: workTime,
    partly: (n) =>
      `Die Zeit mancher Schritte ist noch nicht bekannt: ${pieces(n)} ${n === 1 ? 'kostet' : 'kosten'} mehr, als hier steht.`,
    all: (n, minutes) => `${pieces(n)} fehlerhaft im Ganzen, ${workTime(minutes)} verloren.`,
    behind: (reason) => `${reason}: was daraus wurde`,
    outcome: 'Was daraus wurde',
    pieces: 'Stück',
    scrappedMinutes: 'Minuten im Ausschuss',
    againMinutes: 'Minuten, die noch einmal anfallen',
    heat: 'Wo es schiefgeht',
    heatLead:
      'Fehlerhafte Stücke von denen, die jeder Schritt beurteilt hat. Tippe ein Feld an, um seine Kästen zu sehen.',
    heatPicture: 'Fehlerhafte Stücke von denen, die jeder Schritt beurteilt hat, Holz für Holz.',
    heatMeans:
      'Je voller der Balken und je dunkler das Feld, desto größer der Anteil fehlerhafter Stücke; ein Stück, das wiederkommt, wird wieder beurteilt. Kleine Zahlen schwanken: Ein Fehler bei zwei Stücken sieht schlimmer aus, als er ist.',
    corner: 'Schritt',
    cellOf: (flawed, judged) => `${wholeNumber(flawed)} von ${wholeNumber(judged)}`,
    cell: (part) => share(part),
    cellName: ({ wood, stage }, { flawed, judged }) =>
      `${wood} bei ${stage}: ${share(flawed / judged)}, ${wholeNumber(flawed)} von ${wholeNumber(judged)} fehlerhaft`,
    traysOf: (wood, stage) => `${wood} bei ${stage}: Kästen mit Fehlern`,
    trayDetail: (flawed, judged, when) => `${wholeNumber(flawed)} von ${wholeNumber(judged)} · ${when}`,
    further: (n) =>
      n === 1 ? 'Noch ein Kasten hat dort Fehler.' : `Noch ${wholeNumber(n)} Kästen haben dort Fehler.`,
    noTrays: 'Kein Stück dieses Holzes war bei diesem Schritt fehlerhaft.',
  },
  flowWords: {
    cumulative: 'Fluss über die Tage',
    cumulativeLead: 'Was am Ende jedes Tages bei jedem Schritt stand, über dem, was fertig war.',
    cumulativeMeans:
      'Ein Band ist so hoch wie das, was dort stand. Bänder gleicher Höhe: Was hereinkommt, geht hinaus. Ein Band, das nach rechts wächst: Stücke stauen sich vor diesem Schritt. Der Weg nach rechts von da, wo die oberste Linie eine Zahl erreicht, bis dahin, wo die fertigen sie erreichen, ist etwa die Zeit, die ein Stück braucht. Stücke zählen vom Ende ihres ersten Schritts an; Abläufe gelten, wie sie jetzt sind.',
    cumulativePicture:
      'Ein Band ist so hoch wie das, was am Ende des Tages bei diesem Schritt stand. Stücke zählen vom Ende ihres ersten Schritts an.',
    burnUp: 'Fertig gegen gewünscht',
    burnUpLead: 'Stücke, die ans Ende ihres Ablaufs gekommen sind, Tag für Tag.',
    burnUpMeans:
      'Die Stufen steigen bis zum Gewünschten oder nicht: Eine Lücke, die sich langsamer schließt, als die Tage bis zum Termin ablaufen, ist zu groß. Wie wahrscheinlich sie sich schließt, steht unter Plan, Vorhersage.',
    day: 'Tag',
    pieces: 'Stück',
    finished: 'Fertig',
    firsts: 'Als erste Wahl',
    scrapped: 'Ausschuss',
    wanted: 'Gewünscht',
    due: 'Termin',
    count: wholeNumber,
    ofAllBatches: 'Wähle oben eine Serie, um zu sehen, wie viele gewünscht sind und wann.',
    ofEverybody: 'Hier zählen die Stücke aller Hände, wer auch oben gewählt ist.',
    none: 'An diesen Tagen wurde nichts beurteilt.',
  },
  forecastWords: {
    batch: 'Serie',
    together: (names) =>
      `Zusammen gerechnet mit dem, was davor fällig ist: ${names}. Was später fällig ist, wartet.`,
    goal: 'Was als gut zählt',
    goals: { firsts: 'nur erste Wahl', finished: 'erste und zweite Wahl' },
    counting: 'Rechnen mit',
    countings: { starts: 'empfohlenem Anfangen', 'in-work': 'nur dem in Arbeit' },
    startsAdded: (n) =>
      `${pieces(n)} sind noch anzufangen, wie „Anfangen“ empfiehlt; hier fangen sie jetzt an.`,
    noStarts: 'Mehr ist nicht anzufangen.',

    working: (done, of) =>
      `Der Plan wird ${wholeNumber(of)} Mal abgearbeitet, jedes Mal mit anderem Glück: ${wholeNumber(done)} fertig.`,
    stop: 'Anhalten',
    reckon: 'Rechnen',
    stopped: 'Die Vorhersage wurde angehalten.',
    stoppedOld: 'Die Vorhersage wurde angehalten: Was hier steht, ist von vorher.',
    failed: 'Die Vorhersage ließ sich nicht ausrechnen',
    failedHelp:
      'Nichts ist verloren: Sie rechnet nur. Versuche es noch einmal; die anderen Seiten gehen wie immer.',
    again: 'Noch einmal',

    done: 'Wann alles fertig ist',
    doneLead: 'Dann ist nichts mehr in Arbeit: Jedes Stück ist fertig oder Ausschuss.',
    doneMeans:
      'Der Plan wird viele Male abgearbeitet. Die Hälfte der Male ist er bis zum ersten Tag fertig, 85 von 100 Malen bis zum zweiten, 95 von 100 Malen bis zum dritten. Wahrscheinlichkeiten, Zeiten und Tempo werden jedes Mal neu aus dem gezogen, was die Tipps sagen, so breit, wie sie unsicher sind.',
    dates: { at50: 'halbwegs sicher bis', at85: 'ziemlich sicher bis', at95: 'fast sicher bis' },
    percent: { at50: '50 %', at85: '85 %', at95: '95 %' },
    date: (day) => dayName(day),
    beyond: 'nicht in zwei Jahren',
    enough: (day) => `Alles Gewünschte ist mit halber Wahrscheinlichkeit da bis ${dayName(day)}.`,
    enoughShare: (part, isBeyond) =>
      `In ${about(part)} der Fälle bekommt jede Ausführung daraus ihre guten${isBeyond ? ' innerhalb von zwei Jahren' : ''}.`,
    late: (days) =>
      `Ziemlich sicher ist ${days === 1 ? '1 Tag' : `${wholeNumber(days)} Tage`} nach dem Termin.`,
    spare: (days) =>
      days === 0
        ? 'Ziemlich sicher ist der Termin selbst.'
        : `Ziemlich sicher ist ${days === 1 ? '1 Tag' : `${wholeNumber(days)} Tage`} vor dem Termin.`,
    strip: 'Kalender der Tage',
    weekdays: ['Mo', 'Di', 'Mi', 'Do', 'Fr', 'Sa', 'So'],
    weekOf: (day) => shortDayWords(day).replace(/^\p{L}+\.?,? /u, ''),
    marks: { today: 'heute', due: 'Termin', at50: '50 %', at85: '85 %', at95: '95 %' },

    fan: 'Gute, die kommen',
    fanLead: 'Alle Ausführungen zusammen. Je breiter der Fächer, desto weniger ist bekannt.',
    fanMeans:
      'An jedem Tag liegen neun von zehn Verläufen im Fächer; über der mittleren Linie liegt die Hälfte. Die gestrichelten Linien lassen 15 von 100 darunter und darüber.',
    likely: 'neun von zehn Verläufen',
    middle: 'die Hälfte hat mehr',
    lower: '85 von 100 haben mehr',
    higher: '15 von 100 haben mehr',
    wanted: 'gewünscht',
    goodAxis: 'Gute',
    dayAxis: 'Tag',

    promise: 'Sichere Zusage',
    promiseLead: (chance) =>
      `So viele gute gibt es bis dahin mit einer Wahrscheinlichkeit von mindestens ${chance} %.`,
    promiseMeans:
      'Was schon fertig ist, zählt mit. Jede Zusage gilt für sich: Dass alle zugleich halten, ist weniger wahrscheinlich, sage die Summe also eher nach der letzten Zeile zu. Stücke kommen kastenweise, die Wahrscheinlichkeit einer Zahl kann also ein gutes Stück höher sein als die gewünschte.',
    until: 'Bis zum Ende von',
    badDay: 'Wähle heute oder einen Tag der nächsten 12 Monate.',
    asking: 'Dieser Tag wird gerechnet …',
    variant: 'Ausführung',
    wantedHead: 'Gewünscht',
    ready: 'Fertig',
    safe: 'Sichere Zusage',
    chance: 'Wahrscheinlichkeit',
    range: 'Neun von zehn Mal',
    half: 'Halbwegs sicher',
    all: 'Alle zusammen',
    between: (low, high) => `${wholeNumber(low)} bis ${wholeNumber(high)}`,
    share: about,

    behind: 'Worauf das beruht',
    behindLead: 'Stunden, Plätze, Zeiten, Wahrscheinlichkeiten und Tempo, wie die Werkstatt sie jetzt hat.',
    hoursLine: (people, minutes) =>
      `${people === 1 ? '1 Person arbeitet' : `${wholeNumber(people)} Leute arbeiten`} ${workTime(minutes)} in den nächsten 7 Tagen, ohne Pausen und freie Tage.`,
    unsaid: (names) => `Nicht gezählt, da ihre Stunden nicht angegeben sind: ${names}.`,
    pace: (factor, isPrior) =>
      isPrior
        ? `Eine Minute gezählter Arbeit braucht ${fixedNumber(factor, 2)} Minuten der Stunden. Das ist geraten: Zu wenige Tage sind vorbei.`
        : `Eine Minute gezählter Arbeit braucht ${fixedNumber(factor, 2)} Minuten der Stunden, wie an den vergangenen Tagen.`,
    times: (of) => `${wholeNumber(of)} Mal abgearbeitet.`,
    places: 'Plätze',
    resource: 'Spanner oder Gestell',
    capacity: 'Stücke auf einmal',
    noLimit: 'ohne Grenze',
    cures: 'Härtet aus',
    stages: 'Zeiten und Wahrscheinlichkeiten',
    stage: 'Schritt',
    minutesEach: 'Minuten je Stück',
    lost: 'Verloren',
    back: 'Zurückgegeben',
    timed: 'Stücke mit Zeit',
    tried: 'Stücke beurteilt',
    guess: 'geraten',
    minutes: roundNumber,
    chanceShown: share,
    cureTime: (minutes) => duration(60_000 * minutes),
    toTimes: 'Zeiten',
    toChances: 'Wahrscheinlichkeiten',
    rule: 'Was zuerst fällig ist, geht zuerst; davon, was seinem Ende am nächsten ist; ein Kasten bleibt in einem Paar Hände. Freie Tage über die der Einrichtung hinaus, Maschinen, die ausfallen, und fehlende Teile sind nicht darin.',
    allGuess:
      'Ohne Vorgeschichte eines Schritts sind seine Wahrscheinlichkeit und Zeit geraten: Sie lehnen sich an die anderen Schritte an und machen die Tage unsicher.',

    cannot: {
      'no-history': {
        title: 'Noch ist keine Zeit je Stück bekannt',
        help: 'Nichts sagt, wie lange ein Stück dauert. Tippe bei einem beliebigen Schritt eine Weile Stück für Stück: Eine Handvoll Stücke genügt für den Anfang.',
        act: 'Zur Werkbank',
      },
      nothing: {
        title: 'Nichts ist in Arbeit',
        help: 'Es gibt kein Stück zum Vorhersagen: Lege Kästen an oder rechne mit dem empfohlenen Anfangen.',
        act: 'Kästen anlegen',
      },
      'no-hands': {
        title: 'Niemandes Stunden sind angegeben',
        help: 'Ein Tag braucht Stunden. Gib in der Einrichtung an, wann die Leute arbeiten.',
        act: 'Stunden der Leute',
      },
      'capacity-zero': {
        title: 'Spanner oder ein Gestell haben keinen Platz',
        help: 'Stücke brauchen einen Platz, den es nicht gibt. Gib in der Einrichtung an, wie viele hineinpassen.',
        act: 'Spanner und Gestelle',
      },
      'never-done': {
        title: 'Das kommt nie zu einem Ende',
        help: 'In den nächsten zwei Jahren brachte kein einziger Versuch alle Stücke durch. Die Stunden sind zu wenige für das, was in Arbeit ist, oder Stücke werden ewig zurückgegeben.',
        act: 'Stunden der Leute',
      },
    },
    past: 'Der Termin ist vorbei',
    pastHelp: 'Die Tage unten sind das, was es trotzdem braucht; gib unter Ziele einen anderen Termin an.',
    toTargets: 'Ziele',
    unplanned: (names) => `Ausgelassen, da ihr Holz oder Ablauf nicht bekannt ist: ${names}.`,
    tooMany: (names, most) =>
      `Mehr als ${wholeNumber(most)} sind gewünscht, also wird nicht gerechnet, was anzufangen ist: ${names}. Nur was in Arbeit ist, zählt.`,
    note: (note, { stage, variant }) => {
      switch (note.kind) {
        case 'stage-without-time':
          return `${stage}: Noch niemand hat hier die Zeit eines Stücks genommen, sie ist also geraten.`;
        case 'pieces-below-zero':
          return `${stage}, ${variant}: Die Zahl ist unter null und bleibt außer Acht. Hier ist nachzuzählen.`;
        case 'not-on-route':
          return `${stage}, ${variant}: ${pieces(note.pieces)} ${note.pieces === 1 ? 'bleibt' : 'bleiben'} außer Acht, da der Ablauf diesen Schritt nicht mehr hat.`;
      }
    },
  },
  forgetsWords: {
    title: 'Dieses Fenster vergisst',
    all: 'Der Browser bewahrt hier keine Daten auf: Alles ist weg, wenn dieses Fenster geschlossen wird. Öffne Tallywright in einem gewöhnlichen Fenster, oder sichere eine Datei, bevor du es schließt.',
    perhaps:
      'Der Browser bewahrt nicht einmal Einstellungen auf, wie es ein privates Fenster tut: Was du antippst, kann weg sein, wenn es geschlossen wird. Nimm für eine eigene Werkstatt ein gewöhnliches Fenster.',
  },
  gradeWords: { first: 'Erste Wahl', second: 'Zweite Wahl' },
  gradesWords: { first: 'erste Wahl', second: 'zweite Wahl' },
  grainWords: {
    straight: 'Gerade',
    'ray-fleck': 'Spiegel',
    'ring-porous': 'Ringporig',
    cathedral: 'Fladern',
    burl: 'Maser',
    curl: 'Riegel',
    spalt: 'Pilzlinien',
    stripe: 'Streifen',
    interlocked: 'Wechseldrehwuchs',
    'pore-dots': 'Zerstreute Poren',
  },
  heapWords: { shelf: 'Im Regal', 'to-clean': 'Zu reinigen' },
  historyWords: {
    title: 'Was damit geschah',
    takeBack: 'Zurücknehmen',
    putBack: 'Wieder gelten lassen',
    takenBack: 'zurückgenommen',
    station: (letter) => `Tablet ${letter}`,
  },
  holdSetUpWords: {
    resources: 'Spanner und Gestelle',
    resourcesLead:
      'Was Stücke hält, während Leim oder Anstrich aushärtet. Mehrere Schritte können sich eins teilen.',
    addResource: 'Spanner oder Gestell anlegen',
    editResource: 'Spanner oder ein Gestell',
    places: 'Plätze',
    placesOf: (n) => (n === 1 ? '1 Platz' : `${wholeNumber(n)} Plätze`),
    noLimit: 'ohne Grenze',
    usedBy: (stages) => `Gebraucht von ${stages}.`,
    inUse: (stages) => `${stages} braucht es noch: Wähle dort erst etwas anderes.`,

    held: 'Gehalten von',
    ownPlaces: 'Eigene Plätze',
    least: 'Darf heraus nach',
    leastHint:
      'Stunden. Bei früherem Herausnehmen wirst du einmal gefragt. Leer: nach der ganzen Zeit zum Aushärten.',
    badLeast: 'Höchstens die Zeit zum Aushärten, in Stunden wie 4 oder 0,5.',
    ratedAt: 'Zeiten angegeben für',
    ratedAtHint:
      'Die Temperatur auf dem Datenblatt. Ist es kälter, werden sie länger gezeigt: eine Faustregel.',
    badRatedAt: 'Eine Temperatur wie 20 oder 22,5.',
    celsius: '°C',
    quicker: 'In wärmerer Werkstatt',
    quickerHint: 'Etwa die halbe Zeit je 10 °C mehr. Nur wenn das Datenblatt es sagt.',
    quickerNo: 'Nie kürzer',
    quickerYes: 'Kürzer: Datenblatt geprüft',

    mix: 'Zu mischen',
    mixes: { none: 'Nichts', adhesive: 'Kleber', finish: 'Anstrich' },
    gramsEach: 'Kleber für ein Stück',
    grams: 'g',
    ratio: 'Harz : Härter, wie auf dem Datenblatt',
    resin: 'Harz',
    hardener: 'Härter',
    by: 'Das Verhältnis gilt nach',
    byWhat: { weight: 'Gewicht', volume: 'Volumen' },
    densities: 'Dichte, damit es gewogen werden kann',
    density: 'g/ml',
    badDensities: 'Beide Dichten oder keine, wie 1,15.',
    waste: 'Bleibt im Becher',
    wasteHint: 'Vom Gemischten: Becher, Stab und Pinsel.',
    percent: '%',
    pot: 'Topfzeit',
    min: 'min',
    secondsEach: 'Auftragen je Stück',
    secondsEachHint: 'Leer: was aus deinen Tipps gelernt wurde.',
    seconds: 's',
    mlEach: 'Ein Anstrich je Stück',
    ml: 'ml',
    recoatFrom: 'Nächster Anstrich ab',
    recoatUntil: 'Nächster Anstrich bis',
    h: 'h',
    badRecoat: 'Stunden wie 4 oder 24; die zweite mehr als die erste.',
    badAmount: 'Eine Zahl wie 1,5, mit höchstens zwei Stellen nach dem Komma.',
    badWaste: 'Ganze Prozent, höchstens 90.',
    badPot: 'Ganze Minuten, höchstens 1440.',
    badSeconds: 'Ganze Sekunden.',
  },
  keepPlanWords: {
    title: 'Der Plan dieser Serie',
    lead: 'Behalte, was jetzt zu erwarten ist, und der Rückblick hält es gegen das, was daraus wurde.',
    means:
      'Alle Stücke der Serie sind darin, mit dem, was schon fertig oder Ausschuss ist. Erste Wahl, zweite Wahl, Stunden und Geld sind die im Mittel, der Tag ist der ziemlich sichere (85 %). Stunden sind die der Arbeit an den Stücken, ohne das, was in keins geht. Behalte ihn, wenn die Serie beginnt; neu behalten, tritt der neue Plan an die Stelle des alten.',
    sentence: ({ started, firsts, seconds, minutes, cost, done }) =>
      [
        `${pieces(started)} angefangen, ${wholeNumber(firsts)} erste Wahl und ${wholeNumber(seconds)} zweite Wahl`,
        `${workTime(minutes)} Arbeit`,
        cost === null ? 'Kosten nicht bekannt' : `${money(cost)} Kosten`,
        done === null ? 'kein Tag in zwei Jahren' : `fertig bis ${dayName(done)}`,
      ].join(' · '),
    kept: (day, sentence) => `Behalten am ${dayName(day)}: ${sentence}.`,
    keep: 'Als Plan behalten',
    keepInstead: 'Stattdessen behalten',
  },
  keyWords: { space: 'Leer' },
  kindWords: {
    'tray-made': 'Kasten angelegt',
    'tray-split': 'Kasten geteilt',
    'tray-joined': 'Kasten zusammengelegt',
    passed: 'Gut',
    flawed: 'Fehler',
    'hold-begun': 'Eingespannt',
    recounted: 'Nachgezählt',
    rerouted: 'Durch geänderten Ablauf verlegt',
    'parts-received': 'Teile erhalten',
    'parts-counted': 'Teile gezählt',
    'parts-cleaned': 'Teile gereinigt',
    'parts-sampled': 'Lieferung geprüft',
    'moisture-read': 'Holzfeuchte gemessen',
    'piece-photographed': 'Foto eines Stücks',
    raised: 'Zu erster Wahl aufgewertet',
    'photo-taken': 'Foto aufgenommen',
    'photo-let-go': 'Foto gelöscht',
    'shelf-moved': 'Im Regal bewegt',
    'spell-begun': 'Arbeit begonnen',
    'spell-ended': 'Arbeit beendet',
    voided: 'Zurückgenommen',
    'put-back': 'Gilt wieder',
    'set-up': 'Einrichtung geändert',
  },
  labelWords: {
    sizes: 'Etiketten',
    sizesLead:
      'Größen von Etiketten und wie sie auf einem Bogen liegen. Miss deine nach: Im Handel sehen sich viele ähnlich.',
    addSize: 'Größe anlegen',
    editSize: 'Eine Etikettengröße',
    on: 'Worauf sie kommen',
    onSheet: 'Ein Bogen',
    onSheetDetail: 'viele auf einer Seite',
    onRoll: 'Eine Rolle',
    onRollDetail: 'eins nach dem anderen',
    width: 'Breite eines Etiketts',
    height: 'Höhe eines Etiketts',
    sheetWidth: 'Breite des Bogens',
    sheetHeight: 'Höhe des Bogens',
    columns: 'Etiketten je Reihe',
    rows: 'Etiketten je Spalte',
    left: 'Vom linken Rand bis zum ersten Etikett',
    top: 'Vom oberen Rand bis zum ersten Etikett',
    acrossStep: 'Von einem Etikett zum nächsten, quer',
    acrossStepHint: 'Von linker Kante zu linker Kante: Der Abstand gehört dazu.',
    downStep: 'Von einem Etikett zum nächsten, nach unten',
    mm: 'mm',
    badLength: (least, most) =>
      `Eine Länge in mm von ${roundNumber(least)} bis ${roundNumber(most)}, wie 38,1.`,

    title: 'Etiketten, Karten und Blätter',
    back: 'Zurück',
    labels: 'Etiketten',
    cards: 'Laufkarten',
    what: 'Was drucken',
    whatLabels: 'an die Kästen',
    whatCards: 'zum Abstreichen mit Bleistift',
    which: 'Welche Kästen',
    chosen: (n) => `${wholeNumber(n)} gewählt`,
    all: 'Alle in Arbeit',
    newest: 'Heute neu',
    none: 'Keine',
    noTrays: 'Noch keine Kästen',
    noTraysHelp: 'Lege erst einen Kasten an: Sein Etikett trägt seinen Code.',
    done: (n) => `Fertige und leere Kästen (${wholeNumber(n)})`,
    size: 'Etikettengröße',
    measures: (width, height) => `${width} × ${height} mm`.replaceAll('.', ','),
    paper: 'Papier',
    a4: 'A4',
    letter: 'US Letter',
    firstFree: 'Erstes freies Etikett auf dem Bogen',
    firstFreeHint: (n) =>
      `1 ist oben links, gezählt entlang der Reihen; ein voller Bogen hat ${wholeNumber(n)}. Lege einen angefangenen Bogen zuerst ein.`,
    print: 'Drucken',
    chooseTrays: 'Kasten wählen',
    whichFree: 'Freies angeben',
    pages: (n) => (n === 1 ? '1 Seite' : `${wholeNumber(n)} Seiten`),
    page: (page, of) => `Seite ${wholeNumber(page)} von ${wholeNumber(of)}`,
    preview: 'So wird gedruckt',
    before: 'Seite davor',
    after: 'Seite danach',
    atFullSize: 'Drucke mit 100 %, ohne Anpassen an die Seite. Miss das erste Etikett am Bogen nach.',
    noSign: 'Diese Werkstatt hat noch keine Kennung',
    noSignHelp:
      'Das Zeichen auf einem Etikett sagt, von welcher Werkstatt es ist. Sichere die Werkstatt einmal in der Einrichtung: Das gibt ihr eine Kennung.',
    toShop: 'Zur Einrichtung',
    setUpSizes: 'Größen ändern',
    label: (code) => `Etikett von Kasten ${code}`,
    fewer: 'Weniger',
    more: 'Mehr',

    onLabel: (n) => (n < 0 ? 'nachzählen' : n === 0 ? 'keine Stücke' : pieces(n)),
    hereNow: 'Hier',
    stage: 'Schritt',
    passed: 'Gut: ein Strich für jedes',
    passedCount: 'Summe',
    flawed: 'Fehler: Anzahl und was daraus wurde',
    otherFlaw: 'anderer:',
    cardMeans:
      'B hier behoben, Z zurückgegeben (und wohin), W zweite Wahl, A Ausschuss (AT: Teile gerettet).',
    printedAt: (moment) => `Die Zahlen unter „Hier“ sind von ${moment}.`,
    caution: 'Warnung',
    batch: 'Serie',
    route: 'Laufkarte',

    printLabel: 'Etikett',
    printCard: 'Laufkarte',
    enterCard: 'Karte eintragen',
    printLabels: 'Etiketten drucken',

    readable: 'Der Code ist aus 2 m lesbar.',
    tooSmall: (capitals) =>
      `Zu klein, um den Code aus 2 m zu lesen: Großbuchstaben von ${roundNumber(capitals)} mm, ${roundNumber(11.6)} wären nötig.`,
    tooFaint: (module) =>
      `Das Zeichen hat Quadrate von ${fixedNumber(module, 2)} mm: Manche Kameras lesen das nicht.`,
    sheetRules: 'Das Sicherheitsdatenblatt gilt.',
  },
  labelledSentences: {
    of: (labelled) => {
      switch (labelled.kind) {
        case 'not-here':
          return `${labelled.code} ist ein Etikett dieser Werkstatt, aber sein Kasten ist nicht im Protokoll.`;
        case 'other-shop':
          return `${labelled.code} ist ein Etikett einer anderen Werkstatt.`;
        case 'damaged':
          return 'Dieses Etikett ist beschädigt: Sein Code geht nicht auf. Tippe den Code ein, oder drucke das Etikett neu.';
        case 'foreign':
          return 'Das ist kein Etikett eines Kastens.';
      }
    },
  },
  letterWords: {
    changed: ({ to }) => `Die Codes neuer Kästen beginnen hier ab jetzt mit ${to}.`,
    why: ({ from, owner }) =>
      `Zwei Tablets der Werkstatt hatten den Buchstaben ${from}; ${owner} hatte ihn zuerst. Kästen, die ihre Codes haben, behalten sie.`,
    putAway: 'Weglegen',
  },
  listingFileNames: {
    table: (day) => `tallywright-listing-${day}.csv`,
    zip: (day) => `tallywright-listing-${day}.zip`,
    inside: 'listing.csv',
  },
  listingWords: {
    title: 'Zum Verkauf anbieten',
    lead: 'Wähle, was angeboten werden soll, und nimm dann das Angebotsblatt mit den Fotos dahin, wo du verkaufst.',
    toList: 'Was anbieten',
    toListLead: 'Was im Regal steht und noch nicht angeboten ist.',
    nothingToList: 'Nichts im Regal wartet darauf, angeboten zu werden.',
    all: 'Alle',
    none: 'Keine',
    choose: (line) => `${line} anbieten`,
    kind: (variant, grade) => `${variant}, ${grade}`,
    onShelf: (n) => `${wholeNumber(n)} im Regal`,
    howMany: 'Stück',
    fewer: 'Weniger',
    more: 'Mehr',
    list: (n) => `${pieces(n)} anbieten`,
    chooseSome: 'Stücke wählen',

    sheet: 'Angebotsblatt',
    which: 'Welche Stücke?',
    last: 'Zuletzt angeboten',
    lastDetail: 'auf einmal, auf diesem Tablet',
    now: 'Alles Angebotene',
    nowDetail: 'und noch nicht verkauft',
    count: pieces,
    emptyLast: 'Auf diesem Tablet wurde in letzter Zeit nichts angeboten.',
    emptyNow: 'Zurzeit ist nichts angeboten.',
    columns: 'Was es von ihnen sagt',
    columnsLead: 'In dieser Reihenfolge, von links. Bleibt auf diesem Tablet.',
    addColumn: (column) => `${column} dazu`,
    lastColumn: 'Eine muss bleiben.',
    saveTable: 'Tabelle sichern',
    saveZip: 'Mit Fotos sichern',
    zipDetail: (n) => (n === 0 ? 'kein Foto ist hier' : photos(n)),
    looking: 'Die Fotos werden gesucht …',
    packing: 'Wird gepackt …',
    saved: (file) => `Gesichert: ${file}`,
    shared: (file) => `Übergeben: ${file}`,
    tapAgain: 'Bereit: noch einmal tippen.',
    failed: 'Die Fotos ließen sich nicht lesen. Versuche es noch einmal.',
    photosFailed: 'Die Einträge der Fotos ließen sich nicht lesen, also hat das Blatt keine.',
    missingTitle: (n) =>
      n === 1 ? '1 Foto ist nicht auf diesem Tablet' : `${wholeNumber(n)} Fotos sind nicht auf diesem Tablet`,
    missing:
      'Sie sind auf einem anderen Tablet oder wurden gelöscht. Das Blatt und seine Dateien sind ohne sie:',
    missingOf: (variant, n) => `${variant}: ${photos(n)}`,
    pictureless: 'Ohne Foto:',
    toFiles: 'Fotos aufnehmen',
    most: (n) =>
      `Mit dem Blatt gehen höchstens ${wholeNumber(n)} Fotos jeder Ausführung, ihre eigenen zuerst.`,

    print: 'Drucken',
    printLead: 'Das Drucken des Browsers sichert es auch als PDF, das sich weitergeben lässt.',
    printed: (moment) => `Stand ${moment}.`,
    nothingToPrint: 'Nichts angeboten',
    preview: 'So wird gedruckt',
  },
  lockWords: {
    title: 'Gesperrt',
    lead: 'Die Werkbank ist für alle offen. Der Rest der Werkstatt öffnet sich mit der PIN.',
    pinIn: (seconds) => (seconds > 0 ? `PIN, in ${seconds} s` : 'PIN'),
    open: 'Öffnen',
    erase: 'Löschen',
    checking: 'Wird geprüft …',
    wrong: 'Falsche PIN.',
    wrongWait: (seconds) => `Falsche PIN. Warte ${seconds} s.`,
    left: (seconds) => `${seconds} s`,
    forgotten: 'PIN vergessen? Tippe die Rettungsnummer mit 12 Ziffern ein. Sie nimmt auch die Sperre weg.',
    cannot: 'Die PIN lässt sich hier nicht prüfen. Öffne Tallywright über https oder auf dem Tablet selbst.',

    panel: 'Sperre der Werkbank',
    panelLead: 'Lässt Besucher nur tippen: Solange gesperrt ist, öffnet sich ohne PIN nur die Werkbank.',
    isNot:
      'Sie schützt nicht vor jemandem, der Browser kennt: Die Daten liegen offen auf dem Tablet, die Rettungsseite sichert sie weiterhin in eine Datei, und wer die Daten des Browsers löscht, löscht die Sperre. Zurücknehmen an der Werkbank reicht auch zu Tipps vor der Sperre. Gegen Diebstahl nimm die Sperre des Tablets selbst.',
    kept: 'Die PIN bleibt allein auf diesem Tablet, als Hashwert, und ist in keiner Sicherung.',
    forgets:
      'Dieser Browser bewahrt keine Einstellungen auf: Die Sperre ist weg, wenn das Fenster geschlossen oder neu geladen wird.',
    newPin: 'Neue PIN',
    newPinHint: '4 bis 8 Ziffern.',
    again: 'Dieselbe noch einmal',
    shape: 'Eine PIN hat 4 bis 8 Ziffern.',
    differs: 'Nicht beide Male dasselbe.',
    set: 'PIN setzen',
    recoveryTitle: 'Schreibe diese Nummer auf',
    recoveryLead:
      'Sie öffnet die Sperre, wenn die PIN vergessen ist, und nimmt sie weg. Sie wird jetzt gezeigt und nie wieder.',
    recovery: (digits) => digits.replace(/(.{4})(?=.)/g, '$1 '),
    written: 'Ich habe sie aufgeschrieben',
    lockNow: 'Jetzt sperren',
    lockNowDetail: 'Öffnet sich mit der PIN',
    byItself: 'Von selbst sperren ohne Berührung nach',
    never: 'Aus',
    minutes: (n) => `${n} min`,
    change: 'PIN ändern',
    changeNow: 'Ändern',
    takeAway: 'Sperre wegnehmen',
    takeAwayNow: 'Wegnehmen',
    currentPin: 'Jetzige PIN',
    currentHint: 'Oder die Rettungsnummer.',
  },
  mixWords: {
    title: (stage) => `Mischen für ${stage}`,
    back: 'Zurück',
    nothing: 'Hier ist nichts zu mischen',
    nothingDetail:
      'Gib beim Schritt in der Einrichtung an, was gemischt wird und wie viel ein Stück braucht.',
    toSetUp: 'Zur Einrichtung',
    pieces: 'Stücke dieser Runde',
    oneFewer: '−1',
    oneFewerName: 'Ein Stück weniger',
    oneMore: '+1',
    oneMoreName: 'Ein Stück mehr',
    badPieces: 'Ganze Stücke, 1 bis 9999.',
    free: (n) => (n === 1 ? '1 Platz ist frei.' : `${wholeNumber(n)} Plätze sind frei.`),
    secondsEach: 'Sekunden zum Auftragen je Stück',
    badSeconds: 'Ganze Sekunden, 1 bis 86400.',
    learnt: 'Meine Tipps fragen',
    learning: 'Wird nachgesehen …',
    notLearnt: 'Weder vom Einspannen hier noch vom Schritt davor ist schon etwas gelernt.',
    rounds: (waiting, rounds, last) => {
      const wait = `${pieces(waiting)} ${waiting === 1 ? 'wartet' : 'warten'}`;
      return rounds === 1
        ? `${wait}: eine Runde.`
        : `${wait}: ${rounds} Runden, die letzte mit ${wholeNumber(last)}.`;
    },
    oneMix: (n) => `Eine Mischung für ${pieces(n)}`,
    mixes: ({ first, mixes, pieces: n }) =>
      mixes === 1
        ? `Mischung ${first}: ${pieces(n)}`
        : `Mischungen ${first} bis ${first + mixes - 1}: je ${pieces(n)}`,
    mixed: (n) => `${grams(n)} im Ganzen`,
    resin: 'Harz',
    hardener: 'Härter',
    grams,
    ml: (n) => `${fixedNumber(n, 1)} ml`,
    notWeighed:
      'Das Verhältnis gilt nach Volumen, und keine Dichten sind bekannt: Es lässt sich nicht wiegen. Miss es ab, oder trage die Dichten in der Einrichtung ein.',
    parts: (resin, hardener) => `${roundNumber(resin)} : ${roundNumber(hardener)} Teile nach Volumen`,
    tooLittle: 'Zu wenig für eine Waage, die Zehntelgramm zeigt',
    tooLittleDetail:
      'Eine Stufe von ihr ist mehr als 5 % des kleineren Teils. Nimm eine feinere Waage, oder mische mehr.',
    tooSlow:
      'Ein Stück braucht länger als die Topfzeit. Nimm einen langsameren Kleber, oder trage schneller auf.',
    sayTime: 'Gib an, wie lange ein Stück braucht, und die Zahl der Mischungen steht hier.',
    pot: 'Topfzeit',
    potOf: (minutes) => `${duration(minutes * 60_000)} ab dem Mischen`,
    begin: 'Jetzt gemischt',
    again: 'Neu gemischt',
    clear: 'Fertig damit',
    left: 'übrig',
    over: 'vorbei',
    potOver: (stage) => `Die Topfzeit ist vorbei: ${stage}. Trage von dieser Mischung nichts mehr auf.`,
    putAway: 'Weglegen',
    toMix: 'Dorthin',
    coat: (n) => `Ein Anstrich für ${pieces(n)}`,
    coatIs: 'mit dem, was in Becher und Pinsel bleibt',
    recoat: 'Nächster Anstrich',
    recoatFrom: (time) => `ab ${time}`,
    recoatUntil: (time) => `bis ${time}`,
    recoatAny: 'Das Datenblatt sagt, wann: Trage es in der Einrichtung ein.',
    recoatNow: 'wenn dieser jetzt aufgetragen wird',
    cautions: 'Handschuhe an, Raum lüften',
    glueCaution:
      'Harz und Härter auf der Haut können allergisch machen. Ein voller Becher erhitzt sich von selbst. Das Datenblatt geht diesen Zahlen vor.',
    finishCaution:
      'Dämpfe und Hautkontakt: Das Sicherheitsdatenblatt gilt. Lappen mit öligen Anstrichen können von selbst in Brand geraten: flach auslegen oder unter Wasser.',
    reckoned:
      'Wiege, traue nicht dem Auge. Verhältnis, Topfzeit und Zeiten sind die der Einrichtung: Prüfe sie an der Dose.',
  },
  moistureWords: {
    title: 'Holz und Luft',
    lead: 'Lieferungen von Rohlingen, wie feucht sie sind, und ob eine Zwinge auf ihnen fest bleibt.',
    toParts: 'Teile',
    air: 'Die Luft im Raum',
    airLead: 'Wo die Stücke gedreht werden, und wo sie gebraucht werden.',
    celsius: 'Temperatur',
    humidity: 'Relative Luftfeuchte',
    badCelsius:
      'Eine Temperatur ist eine Zahl von °C zwischen −1 und 93, mit höchstens einer Stelle nach dem Komma.',
    badHumidity: 'Luftfeuchte ist eine Zahl zwischen 5 und 95, mit höchstens einer Stelle nach dem Komma.',
    comesTo: (value) => `In dieser Luft kommt Holz auf etwa ${tenth(value)} %.`,
    airNotSaid: 'Tippe beides ein, um zu wissen, worauf Holz hier kommt.',
    fit: 'Durchmesser des Sitzes',
    fitLabel: mm,
    noFits: 'Noch keine Zwinge und kein Metallkern sagt, auf welchem Durchmesser sie sitzen.',
    toFits: 'Einrichtung, Teile',
    lots: 'Lieferungen von Rohlingen',
    noLots: 'Noch keine Lieferung. Trage die Rohlinge ein, die zusammen liegen und trocknen.',
    reading: 'Messgerät zeigt',
    read: 'Notieren',
    badReading:
      'Holzfeuchte ist eine Zahl von Prozent zwischen 0 und 200, mit höchstens einer Stelle nach dem Komma.',
    last: (value, when) => `${tenth(value)} %, ${when}`,
    noReading: 'Noch nicht gemessen',
    series: (values) => `Davor: ${values.map(tenth).join('; ')} %`,
    takeBack: 'Zurücknehmen',
    addLot: 'Lieferung anlegen',
    lotName: 'Name der Lieferung',
    lotWood: 'Holz',
    noWood: 'Wähle das Holz.',
    putAway: 'Weglegen',
    verdicts: {
      'no-reading': 'Miss sie mit einem Feuchtemessgerät.',
      'no-air': 'Gib die Luft im Raum an, um zu wissen, ob sie so weit ist.',
      'no-diameter':
        'Gib in der Einrichtung an, auf welchem Durchmesser eine Zwinge sitzt, um den Spalt zu kennen.',
      'out-of-range': 'Mit diesem Messwert lässt sich nicht rechnen.',
    },
    ready: 'Bereit zum Aufsetzen.',
    readyGap: (gap, diameter) =>
      gap < 1
        ? 'So trocken wie dieser Raum: Kein Spalt ist zu erwarten.'
        : `Ein Spalt von ${hundredthsOf(gap)} auf ${mm(diameter)} ist zu erwarten, den ein Sitz verzeiht.`,
    tooWet: 'Nicht bereit.',
    tooWetGap: (gap, diameter) =>
      `Jetzt aufgesetzt, ist ein Spalt von ${hundredthsOf(gap)} auf ${mm(diameter)} zu erwarten.`,
    tooDry: 'Trockener als dieser Raum.',
    tooDryGrowth: (growth, diameter) =>
      `Jetzt aufgesetzt, wird das Holz um ${hundredthsOf(growth)} auf ${mm(diameter)} wachsen: erst fest, dann unter Spannung.`,
    notKnown: 'Bewegung nicht bekannt.',
    notKnownBy: (above) =>
      `Die Tabelle hat kein Schwindmaß dieses Holzes. Es ist ${tenth(Math.abs(above))} % ${above >= 0 ? 'feuchter' : 'trockener'}, als dieser Raum verlangt.`,
    means:
      'Ausgerechnet nach dem Wood Handbook des USDA Forest Products Laboratory (FPL-GTR-190): Holzfeuchte aus der Luft nach Gleichung 4-5, Bewegung aus dem Schwindmaß entlang der Jahrringe, Tabelle 4-3. Echte Hölzer und Messgeräte liegen um etwa ein Prozent daneben, nach beiden Seiten. Unter 5/100 mm zählt als bereit (üblich im Handwerk, ohne Quelle).',
  },
  notSavedWords: {
    word: 'NICHT GESICHERT',
    slow: 'Das Tablet antwortet nicht. Der Tipp bleibt auf diesem Bildschirm: Schließe ihn nicht.',
    failed:
      'Das Tablet konnte den Tipp nicht speichern. Er bleibt auf diesem Bildschirm: Schließe ihn nicht.',
    retry: 'Noch einmal',
    export: 'Datei sichern',
  },
  notifyWords: {
    title: 'Mitteilungen des Systems',
    lead: 'Wenn eine Aushärtung oder eine Topfzeit vorbei ist, während die App hinter einer anderen liegt, kann das Tablet es sagen.',
    ask: 'Mitteilungen',
    hint: 'Nur solange die App irgendwo offen ist. Für die Nacht nimm die Kalenderdatei auf der Tafel „Was aushärtet“.',
    none: 'Bleibt aus: Dieser Browser hat keine Mitteilungen.',
    refused:
      'Bleibt aus: Dem Browser wurde gesagt, sie nicht zu erlauben. Seine Einstellungen für diese Seite können das ändern.',
    later: 'Bleibt aus, bis der Browser es darf.',
  },
  oneOfGrade: {
    first: (shown) => `${shown} erste Wahl`,
    second: (shown) => `${shown} zweite Wahl`,
  },
  outcomeInSentence: {
    mended: 'hier behoben',
    'sent-back': 'zurückgegeben',
    second: 'zweite Wahl',
    scrapped: 'Ausschuss',
  },
  outcomeWords: {
    mended: 'Hier behoben',
    'sent-back': 'Zurückgegeben',
    second: 'Zweite Wahl',
    scrapped: 'Ausschuss',
  },
  partsSentences: {
    received: (what) => `Erhalten: ${what}`,
    counted: (part, heap, counted) =>
      `${part} gezählt${heap === 'to-clean' ? ', zu reinigen' : ''}: ${wholeNumber(counted)}`,
    why: {
      'first-count': 'erste Zählung',
      miscounted: 'verzählt',
      found: 'gefunden',
      lost: 'verloren',
      spoilt: 'verdorben',
    },
    cleaned: (part, back) => `${part} gereinigt: ${wholeNumber(back)} zurück im Lager`,
    lost: (n) => `${wholeNumber(n)} verloren`,
    allChecked: (delivery, bad) => `Alle geprüft von ${delivery}: ${wholeNumber(bad)} schlecht`,
    sampled: (sample, delivery, bad) =>
      `Stichprobe von ${wholeNumber(sample)} aus ${delivery}: ${wholeNumber(bad)} schlecht`,
    verdicts: { accepted: 'angenommen', refused: 'abgelehnt' },
    plan: (letter, accept) => `Plan ${letter}, höchstens ${wholeNumber(accept)}`,
  },
  problemSentences: { ofCommand: problemWords, ofNumber: numberProblemWords, ofText: textProblemWords },

  peopleWords: {
    weekdays: ['Montag', 'Dienstag', 'Mittwoch', 'Donnerstag', 'Freitag', 'Samstag', 'Sonntag'],
    hours: 'Arbeitszeit',
    hoursHint: 'Pläne stützen sich darauf: was eine Woche hat und wann eine Serie fertig ist.',
    unsaid: 'Nicht gesagt',
    unsaidDetail: 'Pläne rechnen ohne diese Person',
    said: 'Eine Woche wie diese',
    from: 'Von',
    to: 'Bis',
    breaks: 'Pausen',
    minutes: 'min',
    dayHint: 'Lass einen freien Tag leer. Ein Ende vor dem Anfang liegt nach Mitternacht.',
    sameAsMonday: 'Dienstag bis Freitag wie Montag',
    badTime: 'Sag, von wann bis wann.',
    badBreak: 'Minuten sind eine ganze Zahl, weniger als der Tag hat.',
    noHours: 'Sag mindestens einen Tag.',
    fromOf: (weekday) => `${weekday}, von`,
    toOf: (weekday) => `${weekday}, bis`,
    breakOf: (weekday) => `${weekday}, Minuten Pause`,

    daysOff: 'Freie Tage',
    daysOffLead: 'Feiertage, Urlaub und Tage anderswo.',
    noDaysOff: 'Keine.',
    firstDay: 'Erster Tag',
    lastDay: 'Letzter Tag',
    lastDayHint: 'Leer für einen einzigen Tag.',
    addDaysOff: 'Freie Tage dazu',
    takeAway: 'Wegnehmen',
    daysOffFull: 'Mehr passen hier nicht hin. Nimm erst alte weg.',
    badDay: 'Das ist kein Tag des Kalenders. Schreib ihn so: 2027-04-30.',
    badRange: 'Der letzte Tag liegt vor dem ersten.',
    stretchOf: (from, to) => (from === to ? from : `${from} bis ${to}`),

    hourCost: 'Was eine Stunde kostet',
    hourCostHint:
      'Lohn mit allem, was dazukommt, oder was dir deine eigene Stunde wert ist. Leer: der Satz der Werkstatt.',
    shopHourCost: 'Was eine Arbeitsstunde kostet',
    shopHourCostHint: 'Für alle ohne eigenen Satz. Die Kosten eines Stücks stützen sich darauf.',
    badHourCost: 'Ein Satz ist eine Zahl wie 24 oder 24,50.',

    hoursAWeek: (minutes) => `${roundNumber(minutes / 60)} h pro Woche`,
  },

  photoWords: {
    title: 'Fotos',
    camera: 'Kamera',
    file: 'Aus einer Datei',
    making: 'Wird gesichert …',
    kept: 'Auf diesem Tablet gesichert.',
    flaw: 'Foto',
    flawTaken: 'Foto gemacht',
    none: 'Noch keine.',
    notHere: 'Nicht auf diesem Tablet',
    show: (what) => `Groß zeigen: ${what}`,
    close: 'Schließen',
    save: 'Foto sichern',
    takeBack: 'Zurücknehmen',
    noStore: 'Dieses Fenster behält nichts auf dem Tablet, also auch kein Foto.',
    notKept: 'Das Tablet hat das Foto nicht behalten: Vielleicht ist kein Platz mehr.',
    refused: {
      'not-a-picture': 'Das ist kein Foto. JPEG, PNG, WebP, AVIF, HEIC und GIF sind welche.',
      'too-large': 'Dieses Bild ist zu groß für ein Tablet: höchstens 60 MB und 64 Millionen Bildpunkte.',
      'not-as-named': 'Dieses Foto ist nicht das, das sein Name verspricht.',
      'cannot-be-opened':
        'Dieses Bild lässt sich hier nicht öffnen: Es ist beschädigt oder von einer Art, die dieser Browser nicht kennt.',
    },
    ofFlaw: (reasons, stage) => `${reasons} bei ${stage}`,
    ofPiece: (stage) => `Bei ${stage}`,
    at: (what, when) => `${what}, ${when}`,
    behind: 'Fotos dieser Fehler',
    onTablet: 'Fotos auf diesem Tablet',
    onTabletLead:
      'Fotos gehen mit einer Sicherung, die du speicherst, außer du lässt sie weg; die Sicherungen auf diesem Tablet und im Ordner sind ohne Fotos. Hier sind sie auch eigene Dateien, die jeder Computer öffnet: Eine volle ändert sich nie mehr, also ist nur die letzte erneut zu sichern. Diese sind nicht versiegelt.',
    inNoFile: (n) =>
      n === 1
        ? '1 Foto ist noch in keiner Datei: Mit diesem Tablet wäre es verloren.'
        : `${wholeNumber(n)} Fotos sind noch in keiner Datei: Mit diesem Tablet wären sie verloren.`,
    reminder: (n) =>
      `${photos(n)} ${n === 1 ? 'ist' : 'sind'} noch in keiner Datei. Eine Sicherung mit Fotos, die du speicherst, enthält ${n === 1 ? 'es' : 'sie'}; die Sicherungen auf diesem Tablet und im Ordner sind ohne.`,
    held: (n, bytes) => (n === 0 ? 'Hier ist keines.' : `${photos(n)}, ${megabytes(bytes)}.`),
    saveVolume: (number, all) => (all === 1 ? 'Fotos sichern' : `${number} von ${all} sichern`),
    volume: (n, bytes) => `${photos(n)}, ${megabytes(bytes)}`,
    packing: 'Wird gepackt …',
    packed: 'Gesichert.',
    packFailed: 'Die Fotos ließen sich nicht lesen. Versuche es noch einmal.',
    takeIn: 'Fotos einlesen',
    takeInDetail: 'Aus einer Datei',
    takingIn: 'Wird eingelesen …',
    takenIn: (added, here, refused) =>
      [
        added === 1 ? '1 Foto wurde eingelesen.' : `${wholeNumber(added)} Fotos wurden eingelesen.`,
        here > 0 ? `Schon hier: ${wholeNumber(here)}.` : '',
        refused > 0 ? `Keine Fotos eines Tablets: ${wholeNumber(refused)}.` : '',
      ]
        .filter(Boolean)
        .join(' '),
    noPhotoFile: 'Das ist keine Datei mit Fotos, die ein Tablet gesichert hat, oder sie ist beschädigt.',
    letGo: 'Fehlerfotos löschen',
    letGoLead:
      'Schafft Platz. Dass ein Fehler fotografiert wurde, bleibt im Protokoll; sein Bild ist dann nur noch in Dateien, die du gesichert hast.',
    olderThan: 'Älter als',
    months: (n) => (n === 12 ? 'ein Jahr' : n === 1 ? '1 Monat' : `${n} Monate`),
    looking: 'Wird gesucht …',
    noneOld: 'So alte gibt es nicht.',
    letGoNow: (n) => `${wholeNumber(n)} löschen`,
    wentGo: (n) => (n === 1 ? '1 Foto ist gelöscht.' : `${wholeNumber(n)} Fotos sind gelöscht.`),
  },

  pictureWords: {
    save: 'Bild sichern',
    kinds: {
      svg: { label: 'SVG', detail: 'In jeder Größe scharf: zum Drucken' },
      png: { label: 'PNG', detail: 'Für eine Nachricht oder Seite' },
    },
    foot: (shop, day) => (shop ? `${shop}, ${dayName(day)}` : dayName(day)),
    failed: 'Dieser Browser konnte das Bild nicht zeichnen. Die Tabelle hat dieselben Zahlen.',
  },

  pieceCountWords: { pieces, goodOnes },

  planWords: {
    pages: {
      targets: {
        title: 'Ziele',
        lead: 'Was jede Serie braucht, was davon da ist und wie viele Stunden bleiben.',
      },
      today: {
        title: 'Heute',
        lead: 'Was als Nächstes zu tun ist und wann Spanner und Gestelle zu füllen sind.',
      },
      forecast: {
        title: 'Vorhersage',
        lead: 'Wann es fertig ist und was sich bis zu einem Tag zusagen lässt.',
      },
      'what-if': {
        title: 'Was wäre wenn',
        lead: 'Was mehr Spanner, eine Hilfe, eine Maschine oder weniger Arbeit brächten.',
      },
      starts: {
        title: 'Anfangen',
        lead: 'Wie viele Stücke anzufangen sind, damit genug gute herauskommen.',
      },
      constraint: {
        title: 'Engpass',
        lead: 'Was die Werkstatt aufhält und welche Ausführungen das Beste daraus machen.',
      },
      cost: {
        title: 'Kosten',
        lead: 'Was jedes gute Stück wirklich gekostet hat und wo Geld verloren ging.',
      },
      review: {
        title: 'Rückblick',
        lead: 'Was aus einer Serie wurde und was die nächste daraus mitnimmt.',
      },
    },
    rack: 'Seiten des Plans',
    noBatch: 'Keine Serie ist offen',
    noBatchHelp:
      'Eine Serie sagt, was bis wann gewünscht ist. Lege in Einrichtung eine an oder hole eine zurück.',
    toBatches: 'Serie anlegen',

    dueOn: (day, left) => {
      if (left < 0) return `Termin war ${dayName(day)}, vor ${dative(days(-left))}`;
      return left === 0
        ? `Termin heute, ${dayName(day)}`
        : `Termin ${dayName(day)}, in ${dative(days(left))}`;
    },
    noDue: 'Noch kein Termin',
    sure: (chance) => `zu ${wholeNumber(chance)} % genug`,
    variant: 'Ausführung',
    wanted: 'Gewünscht',
    firsts: 'Fertig, erste Wahl',
    seconds: 'Fertig, zweite Wahl',
    flying: 'In Arbeit',
    flyingOf: (first, second) =>
      second === 0 ? wholeNumber(first) : `${wholeNumber(first)} + ${wholeNumber(second)} zweite Wahl`,
    scrapped: 'Ausschuss',
    missing: 'Erste Wahl fehlt',
    all: 'Alle',
    nothingWanted: 'Diese Serie braucht noch nichts: Sag, wie viele gute von welcher Ausführung.',
    targetsOf: (batch) => `Ziele von ${batch}`,
    change: 'Ändern',
    close: 'Schließen',
    due: 'Termin',
    goods: 'Gute gewünscht',
    keepNote:
      'Gilt gesichert als neuestes Wort zur Serie, auf jedem Tablet. Um es zurückzunehmen, schreib hin, was dort stand.',

    hours: 'Stunden',
    hoursLead: 'Was an Stunden da ist, gegen die Arbeit, die zu erwarten ist.',
    hoursMeans:
      'Stunden der Leute sind die aus Einrichtung, ohne Pausen und freie Tage. Arbeit sind die Stücke, die an jedem Schritt zu erwarten sind, auch die noch anzufangenden, mal den Minuten, die ein Stück dort gebraucht hat; was aushärtet, braucht Hände nur, soweit die Zeit des Einspannens bekannt ist. Nacharbeit an Zurückgegebenem kommt dazu. Jede Serie ist so gerechnet, als hätte sie alle Hände.',
    week: (minutes) => `Die nächsten 7 Tage haben ${workTime(minutes)} Arbeit.`,
    weekUnknown: 'Wie viele Stunden eine Woche hat, ist nicht bekannt: Niemandes Arbeitszeit ist gesagt.',
    unsaid: (names) => `Nicht gezählt, weil ihre Arbeitszeit nicht gesagt ist: ${names}.`,
    toPeople: 'Arbeitszeiten',
    batch: 'Serie',
    until: 'Bis zum Termin',
    needed: 'Nötig',
    verdict: 'Das ist',
    minutes: workTime,
    atLeast: (minutes) => `mindestens ${workTime(minutes)}`,
    notKnown: 'nicht bekannt',
    noDay: 'kein Termin',
    verdicts: {
      enough: 'genug',
      short: 'zu wenig',
      unknown: 'nicht bekannt',
      past: 'Termin ist vorbei',
      done: 'nichts mehr zu tun',
    },
    unmeasured: (stages) =>
      `Bei ${stages} ist noch keine Zeit pro Stück bekannt: Tippe dort Stück für Stück, dann kommt sie.`,

    file: 'Mit einer Tabelle',
    fileLead:
      'Sichere die Ziele als Tabelle, ändere sie in einer Tabellenkalkulation und lies sie wieder ein. Nichts wird geschrieben, bevor du gesehen hast, was sich ändern würde.',
    fileHelp:
      'Spalten sind Serie, Ausführung, Gute gewünscht, Termin und Wahrscheinlichkeit. Termin und Wahrscheinlichkeit gehören zur Serie. Eine leere Zelle lässt, was da ist.',
    choose: 'Ziele aus einer Datei lesen',
    reading: 'Die Datei wird gelesen …',
    unread: 'Die Datei ließ sich nicht lesen. Wähle sie noch einmal oder eine andere.',
    refusals: {
      empty: 'Die Datei ist leer.',
      'too-large': 'Die Datei ist größer als 4 MB: Das ist keine Tabelle von Zielen.',
      'too-many-lines': 'Die Datei hat mehr als 20.000 Zeilen: Das hat keine Tabelle von Zielen.',
    },
    noColumn: (column) => `Es gibt keine Spalte „${column}“. Die erste Zeile muss die Überschriften haben.`,
    columnTwice: (column) => `Die Spalte „${column}“ steht zweimal da.`,
    unusedColumns: (columns) => `Nicht benutzt: ${columns}.`,
    sum: (changing, same, refused) =>
      `${[
        `${changing === 1 ? '1 Zeile ändert' : `${wholeNumber(changing)} Zeilen ändern`} etwas`,
        `${wholeNumber(same)} ${same === 1 ? 'sagt' : 'sagen'}, was schon so ist`,
        `${wholeNumber(refused)} ${refused === 1 ? 'ist' : 'sind'} nicht verstanden`,
      ].join(', ')}.`,
    line: 'Zeile',
    wouldChange: 'Was sich ändern würde',
    why: 'Warum nicht',
    changing: 'Was sich ändern würde',
    refusedLines: 'Nicht verstanden und ausgelassen',
    says: 'Dort steht',
    change1: {
      good: (from, to) => `${wholeNumber(from)} → ${goodOnes(to)}`,
      due: (from, to) => `Termin ${from ? dayName(from) : 'nie'} → ${dayName(to)}`,
      chance: (from, to) => `Wahrscheinlichkeit ${from} % → ${to} %`,
    },
    write: (n) => (n === 1 ? '1 Zeile schreiben' : `${wholeNumber(n)} Zeilen schreiben`),
    nothingToWrite: 'Nichts würde sich ändern.',
    leaveIt: 'Lassen',
    written: (n) => (n === 1 ? '1 Zeile wurde geschrieben.' : `${wholeNumber(n)} Zeilen wurden geschrieben.`),
    moreLines: (n) => `${wholeNumber(n)} weitere zeigen`,
  },

  promiseRows: [
    {
      fault: 'Ein Tab oder Fenster wird geschlossen, oder die Seite stürzt ab',
      happens: 'Jeder Tipp war auf der Platte, bevor er beantwortet wurde; der nächste Start zeigt ihn.',
      lost: 'Nichts, was beantwortet war. Ein noch unbeantworteter Tipp kann da sein oder nicht, nie zweimal.',
    },
    {
      fault: 'Der Browser wird mitten im Schreiben beendet',
      happens:
        'Der Speicher behält nur ganze Tipps; die zweite Sicherung wird beim nächsten Start verglichen.',
      lost: 'Nichts, was beantwortet war.',
    },
    {
      fault: 'Der Strom fällt aus',
      happens: 'Ein Tipp ist beantwortet, wenn der Browser die Platte gebeten hat, ihn zu behalten.',
      lost: 'Höchstens noch nicht beantwortete Tipps, soweit die Platte Wort hält.',
    },
    {
      fault: 'Die Platte ist voll und hat später wieder Platz',
      happens:
        'NICHT GESICHERT steht auf dem Bildschirm, und der Tipp wird behalten. Nach so einem Fehler zählt ein Tipp erst, wenn beide Sicherungen ihn haben, bis ein Start den Speicher heil gefunden hat.',
      lost: 'Nichts, was beantwortet war. Sollte der Browser die ganze App leeren, um Platz zu schaffen, kommen die neuesten 300 Einträge aus ihrem kleinen Speicher zurück, die anderen aus einer Datei außerhalb; es wird gesagt, wie viele fehlen. Ein Browser, der zugesagt hat, die Daten zu behalten (gefragt, wenn eine Werkstatt begonnen wird), sollte das nicht tun.',
    },
    {
      fault: 'Die Datenbank des Browsers wird gelöscht oder beschädigt',
      happens:
        'Der nächste Start holt aus der zweiten Sicherung zurück, was fehlt, und sagt, wie viel es war.',
      lost: 'Höchstens die letzte Sekunde, wenn der Browser in eben dieser Sekunde beendet wurde. Sind beide Sicherungen weg, alles, was keine Datei außerhalb hat: Es wird gesagt, und die App beginnt nie von selbst leer.',
    },
    {
      fault: 'Die Uhr des Tablets springt oder geht falsch',
      happens:
        'Reihenfolge und Identität hängen nicht von ihr ab. Es wird einmal gesagt, und die Tage sind gekennzeichnet.',
      lost: 'Nichts; ein Tipp kann an einem anderen Tag gezählt sein.',
    },
    {
      fault: 'Eine Aktualisierung bricht halb ab oder wird zurückgenommen',
      happens:
        'Die Version, die da war, läuft weiter, ganz und ohne Netz. Mitten in der Arbeit wird nichts aktualisiert.',
      lost: 'Nichts.',
    },
    {
      fault: 'Zwei Tabs oder Fenster sind offen',
      happens: 'Beide tippen in dasselbe Protokoll und zeigen gleich darauf dieselben Zahlen.',
      lost: 'Nichts, und nichts zählt doppelt.',
    },
    {
      fault: 'Ein Fenster wird vom System eingefroren',
      happens: 'Es hält niemanden auf und liest weiter, wenn es auftaut.',
      lost: 'Nichts.',
    },
    {
      fault: 'Eine fremde Datei, abgeschnitten, beschädigt oder bösartig',
      happens: 'Sie wird teilweise gelesen oder mit Grund abgewiesen; was hier ist, bleibt, wie es ist.',
      lost: 'Nichts.',
    },
    {
      fault: 'Eine Sicherung wird zurückgeholt, oder ein Tablet wurde geklont',
      happens:
        'Einträge kommen nach ihrer Identität dazu, jeder einmal. Zwei Tablets unter einem Namen werden gefunden, wenn sich ihre Dateien treffen, auseinandergehalten, und die Tipps beider bleiben.',
      lost: 'Nichts.',
    },
    {
      fault: 'Der Speicher wurde von einer neueren Version geöffnet',
      happens: 'Die ältere Version zeigt ihn und ändert nichts.',
      lost: 'Nichts.',
    },
  ],

  promiseWords: {
    title: 'Was zugesagt ist',
    lead: 'Was geschieht, wenn etwas schiefgeht, und was verloren sein kann.',
    fault: 'Wenn',
    happens: 'Was geschieht',
    lost: 'Was verloren ist',
    not: 'Nicht zugesagt: ein verlorenes oder gelöschtes Tablet ohne Datei außerhalb, private Fenster, eine Platte, die voll bleibt, falsch eingetippte Einträge, jemand mit dem entsperrten Tablet, Fotos, die nicht als Dateien gesichert wurden. Echte Stromausfälle, iPads und Safari wurden nicht erprobt.',
  },

  raiseWords: {
    open: 'Aufwerten',
    openDetail: 'zu erster',
    openName: 'Zweite Wahl zu erster aufwerten',
    title: (what) => `Zweite Wahl von ${what} aufwerten`,
    lead: 'Für zweite Wahl, deren Makel herausgearbeitet wurde. Die Stücke bleiben, wo sie sind, und gehen als erste Wahl weiter; das Angebot nennt den Makel nicht mehr.',
    stands: 'In der Ausbeute bleiben sie herabgestuft: Nacharbeit macht den ersten Versuch nicht gut.',
    which: 'Welche Stücke?',
    finished: (n) => `Fertig: ${ofGrade(n, 'second')} im Regal`,
    none: 'Hier steht keine zweite Wahl. Was angeboten ist, erst aus dem Angebot nehmen.',
    howMany: 'Wie viele sind wieder erste?',
    gone: 'Was sieht man nicht mehr?',
    goneNone: 'Für diese zweite Wahl ist kein Grund notiert.',
    goneMissing: 'Wähle, was weg ist, oder dass es keines davon ist.',
    noneOfThese: 'Keines davon',
    save: (n) => `${pieces(n)} aufwerten`,
    fewer: 'Weniger',
    more: 'Mehr',
    close: 'Schließen',
  },

  recountInSentence: {
    miscounted: 'verzählt',
    found: 'gefunden',
    lost: 'verloren',
    'two-tablets': 'zwei tippten dasselbe',
  },

  recountWords: {
    miscounted: 'Verzählt',
    found: 'Gefunden',
    lost: 'Verloren',
    'two-tablets': 'Zwei tippten dasselbe',
  },

  restoredSentences: {
    photos: ({ added, refused, left, damaged, elsewhere }) => {
      const none = added + refused + left === 0;
      const addedWords = added === 1 ? '1 Foto kam dazu.' : `${wholeNumber(added)} Fotos kamen dazu.`;
      return [
        left > 0
          ? `Fotos kommen herein: noch ${wholeNumber(left)}. Lass dieses Fenster offen.`
          : none
            ? 'Kein Foto kam dazu.'
            : addedWords,
        refused > 0
          ? `Nicht übernommen, weil Platz fehlt oder sie sich nicht öffnen lassen: ${wholeNumber(refused)}.`
          : '',
        damaged > 0 ? `In der Sicherung beschädigt: ${wholeNumber(damaged)}.` : '',
        elsewhere > 0 ? `In Dateien der Sicherung, die nicht gewählt wurden: ${wholeNumber(elsewhere)}.` : '',
      ]
        .filter(Boolean)
        .join(' ');
    },
  },

  reviewWords: {
    batch: 'Serie',
    putAway: (batch) => `${batch} (weggelegt)`,
    print: 'Auf eine Seite drucken',
    printed: (batch, day) => `Rückblick auf ${batch}, ${dayName(day)}`,
    atLeast: (text) => `mindestens ${text}`,
    notRecorded: 'kein Plan behalten',
    beyond: 'nicht binnen zwei Jahren',
    none: '–',
    notKnown: 'nicht bekannt',
    money,
    share,
    count: wholeNumber,
    time: workTime,
    day: dayName,

    planned: 'Geplant und tatsächlich',
    plannedLead: (isDone) =>
      isDone
        ? 'Nichts davon ist mehr in Arbeit.'
        : 'Noch sind Stücke in Arbeit: Was folgt, ist der Stand bisher.',
    plannedMeans:
      'Erste Wahl und Termin werden an den Zielen gemessen, alles andere an der Vorhersage, die als Plan der Serie behalten wurde; wo keine behalten wurde, lässt sie sich nachher nicht wissen, weil die Serie selbst geformt hat, was angenommen wird. Ausbeute ist, was herauskam, gleich welcher Wahl, von allem, was herauskam oder Ausschuss wurde. Stunden sind die zwischen Tipps an ihren Stücken, ohne Strecken von mehr als einer Viertelstunde und ohne den Rest nach einem letzten Tipp. Die Kosten sind die dessen, was herauskam, mit dem, was Ausschuss wurde und was zweite Wahl weniger einbringt.',
    what: 'Was',
    plan: 'Geplant',
    actual: 'Tatsächlich',
    rows: {
      started: 'Angefangene Stücke',
      firsts: 'Erste Wahl gewünscht',
      expected: 'Fertig laut Vorhersage (85 %)',
      expectedFirsts: 'Erste Wahl laut Vorhersage',
      seconds: 'Zweite Wahl',
      scrapped: 'Ausschuss',
      flying: 'In Arbeit',
      yield: 'Ausbeute',
      hours: 'Arbeitsstunden',
      cost: 'Kosten',
      begun: 'Erste Arbeit daran',
      done: 'Fertig',
    },
    firstsOut: 'Erste Wahl',
    stillIn: 'noch in Arbeit',
    notBegun: 'nicht begonnen',
    doneOn: (last, late) =>
      late === null || late === 0
        ? dayName(last)
        : `${dayName(last)}, ${days(Math.abs(late))} ${late > 0 ? 'zu spät' : 'zu früh'}`,
    noDue: 'kein Termin',

    losses: 'Die größten Verluste',
    lossesLead: {
      money: 'Die drei Ursachen, die am meisten Geld gekostet haben.',
      pieces:
        'Die drei Ursachen, die am meisten Stücke gekostet haben; wie viel Geld, ist noch nicht bekannt.',
    },
    lossesUnknown: (n) =>
      `Weitere ${pieces(n)} ${n === 1 ? 'ging' : 'gingen'} verloren, deren Geldwert nicht bekannt ist.`,
    noLosses: 'Nichts ging verloren.',
    stage: 'Schritt',
    reason: 'Grund',
    noReason: 'keiner genannt',
    pieces: 'Stück',
    lost: 'Verloren',

    next: 'Was der nächste Plan übernimmt',
    nextLead: 'Anteile und Zeiten, wie sie jetzt angenommen werden, mit allen Serien darin.',
    nextMeans:
      'Was über jeden Schritt angenommen wird, ist über die Hölzer zusammengefasst und beruht auf allem, was je getippt wurde. Anfangen nennt, was für die gewünschte erste Wahl genügen würde, mit nichts in Arbeit und der Wahrscheinlichkeit, die die Serie verlangt. Zeit ist die der Hände für ein Stück, das herauskommt, mit der Arbeit an verlorenen und an wiederkehrenden Stücken.',
    variant: 'Ausführung',
    comesOut: 'Kommt heraus',
    firstsOf: 'Davon erste Wahl',
    timeEach: 'Zeit für eines',
    wanted: 'Erste Wahl gewünscht',
    starts: 'Anfangen genügt',
    startsOutOfReach: (n) => `mehr als ${wholeNumber(n)}`,
    never: 'nie sicher',
    nothingWanted: 'Diese Serie braucht nichts, also ist nichts anzufangen.',
    behind: 'Was dahintersteht',
    visits: 'Besuche für eines',
    through: 'Kommt durch',
    minutesEach: 'Jedes braucht',
    each: (minutes) => (minutes < 10 ? `${fixedNumber(minutes, 1)} min` : workTime(minutes)),

    fits: 'Wie groß die nächste Serie sein darf',
    fitsLead: 'Für die Stunden, die hineingehen sollen, mit denselben Ausführungen in denselben Anteilen.',
    hoursAWeek: 'Stunden pro Woche',
    weeks: 'Wochen',
    badNumber: 'Eine ganze Zahl von 1 bis 1.000.',
    fitsAnswer: ({ low, likely: middle, high }) =>
      low === high
        ? `Etwa ${pieces(middle)}, die herauskommen.`
        : `Etwa ${pieces(middle)}, die herauskommen: ${wholeNumber(low)} bis ${wholeNumber(high)}.`,
    fitsUnknown: (stages) => `Nicht bekannt: Bei ${stages} hat noch niemand die Zeit gemessen.`,
    fitsNothing: 'Nicht bekannt: Die Serie braucht nichts, oder ihr Ablauf braucht keine Hände.',
    fitsMeans:
      'Stunden geteilt durch die Zeit, die ein Stück braucht, das herauskommt. Der Bereich ist der der mittleren Zeiten, wo genug Tipps bekannt sind; auch die Anteile haben einen Bereich, der nicht darin ist. Aushärten und Plätze können dich eher aufhalten als die Hände: siehe Engpass.',

    compare: 'Serien nebeneinander',
    compareLead:
      'Auch die weggelegten, der späteste Termin zuerst. Stunden für eines stehen da, sobald nichts mehr in Arbeit ist.',
    mostBatches: (n) => `Die ${wholeNumber(n)} letzten werden gezeigt.`,
    perGood: 'Kosten für eines',
    hoursEach: 'Stunden für eines',
    moreRows: (n) => `${wholeNumber(n)} weitere stehen auf dem Bildschirm.`,
  },

  sameCodeWords: {
    title: (trays, code) => `${trays} Kästen tragen ${code}`,
    which: 'Zwei Tablets hatten denselben Buchstaben, bevor sie voneinander wussten. Welcher Kasten ist es?',
    pieces: (n, where) => (where ? `${pieces(n)} bei ${where}` : 'nichts in Arbeit'),
    made: (age) => `angelegt ${age}`,
    recode: 'Neuer Code',
    recodeDetail: (variant) => `für den jüngeren: ${variant}`,
    recoded: (code) =>
      `Was im jüngeren ${code} in Arbeit war, hat jetzt einen eigenen Code. Schreib ihn mit Kreide darauf:`,
    newCode: (code) => `Code ${code}`,
    close: 'Schließen',
    shared: (codes) =>
      codes.length === 1
        ? `Zwei Kästen tragen ${codes[0]}.`
        : `Codes, die zwei Kästen tragen: ${codes.join(', ')}.`,
    sharedHelp:
      'Öffne einen mit seinem Code, um sie zu unterscheiden oder dem jüngeren einen neuen zu geben.',
    choose: 'Unterscheiden',
  },

  samplingWords: {
    title: 'Wie viele zu prüfen sind',
    lead: 'Für kleine Teile, die zu viele sind, um jedes anzusehen. Nimm sie aus der ganzen Lieferung, nicht von oben.',
    limit: 'Wie viele schlechte sind erträglich, im Mittel vieler Lieferungen?',
    limitOf: (percent) => `${percent} von 100`,
    enterCount: 'Gib ein, wie viele kamen.',
    check: (sample, of) => `Prüfe ${wholeNumber(sample)} von diesen ${wholeNumber(of)}`,
    accept: (accept) =>
      accept === 0
        ? 'Nimm die Lieferung an, wenn keines davon schlecht ist. Mit einem einzigen schlechten gib sie zurück oder prüfe jedes.'
        : `Nimm die Lieferung mit höchstens ${accept === 1 ? 'einem schlechten' : `${wholeNumber(accept)} schlechten`} an. Mit ${wholeNumber(accept + 1)} oder mehr gib sie zurück oder prüfe jedes.`,
    all: (of) => `Prüfe alle ${wholeNumber(of)}`,
    allHelp: 'Es kamen so wenige, dass eine Stichprobe nicht kleiner wäre.',
    chances: 'Was die Stichprobe durchlässt',
    chanceOf: (badIn100, times) =>
      `Von Lieferungen mit ${badIn100} schlechten von 100 werden ${timesIn100(times)} angenommen.`,
    keepLater:
      'Was die Stichprobe ergab, wird unter „Lieferung prüfen“ festgehalten, auf der Seite des Teils.',
    checkIt: 'Lieferung prüfen',
    sampleTitle: (part) => `Lieferung prüfen: ${part}`,
    badAmong: (checked) =>
      checked === undefined ? 'Wie viele schlechte?' : `Wie viele schlechte unter ${wholeNumber(checked)}?`,
    keep: 'Festhalten',
    refusedTitle: 'Diese Lieferung ist abgelehnt',
    refusedLead:
      'Keine Zahl hat sich geändert. Gib sie zurück oder prüfe jedes Stück; was nicht hierbleibt, zählst du ab.',
    refusedAll: 'Keine Zahl hat sich geändert. Die guten lassen sich verwenden; die schlechten zählst du ab.',
    countOut: (lot) => `Alle ${wholeNumber(lot)} abzählen`,
    countBadOut: (bad) => `${bad === 1 ? 'Das schlechte' : `Die ${wholeNumber(bad)} schlechten`} abzählen`,
    countOutDetail: 'Zeigt erst, was übrig wäre',
    leaveCounts: 'Zahlen lassen',
    never: 'Wo Hände oder Augen von einem Teil abhängen, prüfe jedes: Eine Stichprobe lässt schlechte durch.',
    source:
      'Einfache Stichprobe, normale Prüfung, Niveau II von MIL-STD-105E (1989, öffentlich), auf die ISO 2859-1 zurückgeht. Wahrscheinlichkeiten gelten für eine lange Reihe von Lieferungen.',
  },

  savingWords: {
    idle: '',
    taken: 'Erfasst',
    saved: 'Gesichert',
    'not-saved': 'Nicht gesichert',
    undone: 'Zurückgenommen',
  },

  scanWords: {
    title: 'Etikett lesen',
    back: 'Zurück',
    whatFor: 'Wofür wird gelesen?',
    open: 'Kasten öffnen',
    openDetail: 'ein Etikett',
    many: 'mehrere hintereinander',
    moves: {
      'into-clamps': 'In die Spanner',
      'out-of-clamps': 'Aus den Spannern',
      'to-shelf': 'Ins Regal',
    },
    picture: 'Was die Kamera sieht',
    starting: 'Die Kamera startet.',
    holdUp: 'Halte ein Etikett vor die Kamera.',
    resting: 'Die Kamera ist aus, solange die App nicht zu sehen ist.',
    light: 'Licht',
    tryAgain: 'Noch einmal versuchen',
    close: 'Schließen',
    several: 'Mehr als ein Etikett ist im Bild. Zeige eines.',
    already: (code) => `${code} ist schon in der Liste.`,
    added: (code) => `${code} ist in der Liste.`,

    list: 'Kästen in der Liste',
    listEmpty: 'Noch kein Etikett gelesen.',
    listEmptyHelp: 'Lies eines nach dem anderen. Nichts geschieht, bevor du auf die Taste tippst.',
    doAll: (n) => (n < 2 ? 'Ausführen' : `Alle ${n} ausführen`),
    leaveOut: 'Auslassen',
    leaveOutOf: (code) => `${code} auslassen`,
    undo: 'Zurücknehmen',
    undoOf: (code) => `${code} zurücknehmen`,
    newList: 'Neue Liste',
    nothingToDo: 'nichts zu tun',
    load: (n, stage) => `${pieces(n)} einspannen: ${stage}`,
    unload: (n, stage, next) => `${pieces(n)} aus ${stage} nach ${next}`,
    pass: (n, stage, next) => `${pieces(n)} von ${stage} nach ${next}`,
    finished: 'Regal',
    done: 'Fertig',
    takenBack: 'Zurückgenommen',
    stillCures: (ready) => `Härtet noch aus: ${ready}.`,
    staysIn: (n, short) => `${pieces(n)} ${n === 1 ? 'muss' : 'müssen'} noch ${duration(short)} aushärten.`,
    isEarly: (n, short) => `${pieces(n)} bis zu ${duration(short)} zu früh. Das Datenblatt gilt.`,
    takeEarlyOf: (code) => `Zu früh herausnehmen: ${code}`,
    letCureOf: (code) => `Aushärten lassen: ${code}`,
    nothingFor: {
      'into-clamps': 'Kein Stück davon wartet auf die Spanner.',
      'out-of-clamps': 'Kein Stück davon ist in den Spannern.',
      'to-shelf': 'Kein Stück davon wartet am letzten Schritt.',
    },

    sheetOpen: 'Ein Etikett wurde gelesen. Schließe, was offen ist, und lies es noch einmal.',
  },

  setUpWords: {
    title: 'Einrichtung',
    lead: 'Womit die Werkstatt arbeitet. Alles lässt sich ändern, während eine Serie läuft.',
    all: 'Ganze Einrichtung',
    firstSteps: 'Erste Schritte',
    steps: {
      wood: 'Holz anlegen',
      ferrule: 'Zwinge anlegen',
      variant: 'Ausführung anlegen',
      tray: 'Kästen anlegen',
      batch: 'Serie anlegen',
      stages: 'Schritte in den Ablauf',
    },
    stepReasons: {
      wood: 'Woraus die Griffe gedrechselt werden.',
      ferrule: 'Ein Teil, das in den Griff kommt. Metallkerne und Rohlinge können später kommen.',
      variant: 'Was ein Kunde kauft: ein Holz und eine Zwinge zusammen.',
      tray: 'Die Stücke bekommen einen Kasten mit Code und warten am ersten Schritt.',
      batch: 'Alle Serien sind weggelegt: Kästen brauchen eine, zu der sie gehören.',
      stages: 'Der Ablauf der Serie ist leer: Stücke wüssten nicht, wohin.',
    },
    stepDone: 'fertig',
    live: (n) => wholeNumber(n),
    retire: 'Weglegen',
    bringBack: 'Zurückholen',
    retiredList: (n) => `Weggelegt (${wholeNumber(n)})`,
    inUse: 'In Gebrauch',
    none: 'Noch keine.',
    save: 'Sichern',
    saved: 'Gesichert.',
    close: 'Schließen',
    asItWas: 'Wie es war',
    discard: 'Nicht anlegen',
    unsaved: 'Noch nicht gesichert',
    name: 'Name',
    caution: 'Warnung',
    cautionHint:
      'Wird gezeigt, wo daran gearbeitet wird. Vorschriften, Datenblätter und der Rat von Fachleuten mit Zulassung gehen vor.',
    tooLong: (length, most) => `${wholeNumber(length)} Zeichen: höchstens ${wholeNumber(most)} passen.`,
    optional: 'darf leer bleiben',
    fewer: 'Weniger',
    more: 'Mehr',
    up: 'Höher',
    down: 'Tiefer',
    placeOf: (name) => `Platz von ${name}`,

    woods: 'Hölzer',
    woodsLead: 'Unterschieden nach Name und gezeichneter Maserung.',
    addWood: 'Holz anlegen',
    editWood: 'Ein Holz',
    fromList: 'Name oder botanischer Name. Die Liste bringt Maserung und Warnungen mit.',
    searchWoods: 'Liste durchsuchen',
    noWoodFound: 'Kein Holz der Liste heißt so. Lege es als eigenes an.',
    woodIsThere: 'schon in der Werkstatt',
    ownWood: 'Ein eigenes Holz',
    grain: 'Maserung',
    colours: 'Farben',
    ownColours: 'Wie sie ist',

    parts: 'Zwingen und Teile',
    partsLead: 'Was außer dem Holz in ein Stück kommt.',
    addPart: 'Teil anlegen',
    editPart: 'Ein Teil',
    sort: 'Was es ist',
    sorts: {
      core: 'Metallkern',
      ferrule: 'Zwinge',
      blank: 'Rohling',
      consumable: 'Verbrauchsmaterial',
    },
    pieceCost: 'Kosten für eines',
    pieceCostHint:
      'Wo keine Lieferung einen Preis nennt. Bis zu vier Nachkommastellen, für Schrauben und Ähnliches.',
    badPieceCost: 'Ein Betrag wie 0,85: Ziffern, höchstens vier Nachkommastellen.',
    lowMark: 'Meldebestand',
    lowMarkHint: 'Sind nur noch so viele frei oder weniger, ist es Zeit zu bestellen.',
    salvaged: 'Aus Ausschuss gerettet kommt es',
    salvagedTo: { 'to-clean': 'Erst reinigen', shelf: 'Gleich zurück ins Lager' },

    variants: 'Ausführungen',
    variantsLead: 'Was ein Kunde kauft: ein Muster in einem Holz mit einer Zwinge.',
    addVariant: 'Ausführung anlegen',
    editVariant: 'Eine Ausführung',
    wood: 'Holz',
    chooseWood: 'Holz wählen',
    noWoods: 'Die Werkstatt hat noch kein Holz.',
    ferrule: 'Zwinge',
    noFerrule: 'Keine',
    noFerrules: 'Die Werkstatt hat noch keine Zwinge. Was du hier getippt hast, bleibt.',
    bill: 'Teile für ein Stück',
    billLead: 'Ein Teil gilt als verbraucht, wenn das Stück den Schritt verlässt, der es einbaut.',
    addLine: 'Teil dazu',
    part: 'Teil',
    each: 'Wie viele',
    fittedAt: 'Eingebaut bei',
    removeLine: 'Wegnehmen',
    badEach: 'Die Zahl eines Teils ergibt noch keinen Sinn.',
    firstPrice: 'Preis der ersten Wahl',
    secondPrice: 'Preis der zweiten Wahl',
    badPrice: 'Ein Preis ist eine Zahl wie 24 oder 24,50.',
    proposedName: (wood, ferrule) => (ferrule ? `${wood}, ${ferrule}` : wood),

    reasons: 'Fehlergründe',
    reasonsLead: 'Was an einem Stück nicht stimmen kann.',
    addReason: 'Grund anlegen',
    editReason: 'Ein Fehlergrund',
    people: 'Leute',
    peopleLead: 'Anfangsbuchstaben genügen. Ein Tipp sagt, von wem er ist, wenn du sagst, wer tippt.',
    addPerson: 'Person anlegen',
    editPerson: 'Eine Person',

    stages: 'Schritte',
    stagesLead: 'Die Schritte der Arbeit, in der Reihenfolge des Ablaufs.',
    addStage: 'Schritt anlegen',
    editStage: 'Ein Schritt',
    kind: 'Art',
    stillCure: (n) =>
      `${pieces(n)} ${n === 1 ? 'härtet' : 'härten'} hier aus. Nimm sie heraus, bevor die Art sich ändert.`,
    cure: 'Zeit zum Aushärten',
    hours: 'Stunden',
    minutes: 'Minuten',
    badHours: 'Stunden sind eine Zahl wie 12 oder 0,5.',
    badMinutes: 'Minuten sind eine ganze Zahl wie 30.',
    badCure: 'Aushärten dauert zwischen einer Minute und 90 Tagen (2.160 Stunden).',
    capacity: 'Plätze (Spanner, Gestell)',
    capacityHint: 'Leer heißt ohne Grenze.',
    places: (n) => (n === 1 ? '1 Platz' : `${wholeNumber(n)} Plätze`),
    bulk: 'Gezählt',
    bulkYes: 'Mehrere auf einmal',
    bulkNo: 'Stück für Stück',
    flawButtons: 'Fehlertasten',
    flawButtonsHint: 'Höchstens sechs. Die erste davon steht an der Werkbank zuerst.',
    flawsFull: 'Sechs Fehlertasten passen. Nimm eine weg, um eine andere hinzusetzen.',
    noFlawButtons: 'Keine: Ein Fehler wird mit „Anderer Fehler“ gemeldet.',
    offRoute: 'in keinem Ablauf',
    whereOnRoute: 'Platz im Ablauf',
    notOnRoute: 'In keinem Ablauf',
    atStart: 'Am Anfang',
    after: (stage) => `Nach ${stage}`,
    onRouteAway: 'Er ist in einem Ablauf: Nimm ihn dort erst heraus.',
    holdsAway: (n) => `Hier ${n === 1 ? 'ist' : 'sind'} noch ${pieces(n)}: Bewege sie erst in Ablauf.`,

    route: 'Ablauf',
    routes: 'Abläufe',
    routeLead:
      'Die Reihenfolge der Schritte. Stücke behalten ihren Platz; wo das nicht geht, sagst du, wohin sie gehen.',
    routeName: 'Name des Ablaufs',
    addRoute: 'Ablauf anlegen',
    routeOf: (batches) => `Benutzt von ${batches}.`,
    routeOfNone: 'Noch keine Serie benutzt ihn.',
    takeOff: 'Weg',
    putBack: 'Wieder hinein',
    off: 'draußen',
    addToRoute: 'Schritte außerhalb des Ablaufs',
    addToRouteLead: 'Ein Tipp setzt ihn ans Ende. Schieb ihn von dort hinauf.',
    here: (n) => `${wholeNumber(n)} hier`,
    whereTo: (n) => `Wohin gehen diese ${wholeNumber(n)}?`,
    whereToOne: 'Wohin geht dieses eine?',
    stay: (stage) => `Bleiben bei ${stage}`,
    chooseStage: 'Schritt wählen',
    sayWhere: 'Sag, wohin sie gehen.',
    sayWhereAt: (stages) => `Sag, wohin die Stücke gehen: ${stages}.`,
    leaves: (stage) => `${stage} kommt aus dem Ablauf.`,
    movedPast: (stage) => `${stage} steht jetzt vor oder nach einem anderen Schritt als bisher.`,
    looseParts: 'Teile, die kein Schritt dieses Ablaufs mehr einbaut',
    loosePartsLead: 'Sie würden nicht als verbraucht gezählt. Wähle in der Ausführung einen anderen Schritt.',

    batches: 'Serien',
    batchesLead: 'Ein Durchgang mit dem, was bis wann gewünscht ist.',
    addBatch: 'Serie anlegen',
    editBatch: 'Eine Serie',
    wanted: 'Gute gewünscht',
    wantedCount: (n) => `${wholeNumber(n)} gewünscht`,
    inWork: (n) => `${wholeNumber(n)} in Arbeit`,
    due: 'Termin',
    badDue: 'Das ist kein Tag des Kalenders. Schreib ihn so: 2027-04-30.',
    chooseRoute: 'Ablauf wählen',
    batchOffRoute: (stages) =>
      `Stücke dieser Serie stehen bei ${stages}, was jener Ablauf nicht hat. Setze diese Schritte erst hinein.`,
    batchAway: (n) => `${pieces(n)} noch in Arbeit.`,

    files: 'Dateien',
    tablet: 'Dieses Tablet',
    looks: 'Person, Aussehen und Hand',
    looksLead: 'Bleibt nur auf diesem Tablet.',
    station: 'Name, Buchstabe und Schritt',
    stationLead: 'Mit dem Buchstaben beginnt der Code jedes Kastens, der hier angelegt wird.',
    letter: 'Buchstabe seiner Kastencodes',
    letterTaken: (name) =>
      `${name} hat diesen Buchstaben. Zwei Tablets mit einem Buchstaben gäben einen Code zweimal.`,
    takeLetter: (letter) => `${letter} übernehmen`,
    takeLetterDetail: (name) => `${name} gibt es nicht mehr`,
    noLetterFree:
      'Alle Buchstaben sind vergeben. Übernimm den eines Tablets, das es nicht mehr gibt: Wähle ihn hier.',
    usualStage: 'Üblicher Schritt',
    usualStageHint: 'Auf diesem Tablet öffnet die App bei seinen Kästen.',
    noUsualStage: 'Keiner: jedes Mal wählen',
    tabletName: 'Name des Tablets',
    who: 'Wer hier tippt',
    nobody: 'Nicht gesagt',
    on: 'An',
    offSwitch: 'Aus',
    language: 'Sprache',
    languageHint: 'Dieses Tablets. Was jemand geschrieben hat, bleibt, wie er es schrieb.',
    theme: 'Aussehen',
    themes: { light: 'Papier', dark: 'Nacht', glare: 'Lampe auf dem Glas' },
    side: 'Taste „Gut“',
    sides: { left: 'Links', right: 'Rechts' },
    sideHint: 'Der Bildschirm der Schritte spiegelt sich mit, damit die tippende Hand nichts verdeckt.',
    wholeScreen: 'Vollbild',
    leaveWholeScreen: 'Vollbild verlassen',
    wholeScreenRefused: 'Der Browser war nicht einverstanden.',
    keys: 'Tasten',
    keysLead:
      'Ein Fußschalter oder Ziffernblock ist eine Tastatur. Tippe eine Handlung an, dann drücke ihre Taste.',
    keysOn: 'Tasten an der Werkbank',
    keyIs: (key) => `Taste ${key}`,
    learn: (act) => `Drücke die Taste für: ${act}`,
    keyTaken: (key, act) => `${key} tut schon dies: ${act}. Gib jenem erst eine andere Taste.`,
    keyUnfit: (key) => `${key} gehört dem Browser. Drücke eine andere Taste.`,
    keyNeeded: (key) =>
      `${key} muss frei bleiben: Eingabe- oder Leertaste muss Tasten auf dem Bildschirm drücken. Drücke eine andere.`,
    keyTaught: (key, act) => `${key} tut jetzt: ${act}`,
    usual: 'Übliche Tasten',
    shop: 'Die Werkstatt',
    shopLead: 'Auf jedem Tablet der Werkstatt gleich.',
    shopName: 'Name der Werkstatt',
    zone: 'Zeitzone',
    zoneHint: 'Tage und Zeiten werden hier gezählt.',
    dayStart: 'Stunde, in der der Tag beginnt',
    dayStartHint:
      'Arbeit nach Mitternacht zählt noch zu ihrem Abend. Eine Änderung gilt für kommende Tipps; vergangene Tage bleiben.',
    version: 'Version',
    versionIs: (version) => `Version ${version}`,
    offlineReady: 'Alles davon ist auf diesem Tablet: Es öffnet ohne Netz.',
    offlineNot: 'Noch nicht für den Gebrauch ohne Netz gesichert.',
    records: 'Daten',
    kept: 'Der Browser behält die Daten dieser Werkstatt, auch wenn der Platz knapp wird.',
    notKept: 'Der Browser darf die Daten wegwerfen, wenn der Platz knapp wird.',
    keptUnknown: 'Dieser Browser sagt nicht, ob er die Daten behält, wenn der Platz knapp wird.',
    keepRefused:
      'Der Browser war noch nicht einverstanden. Oft ist er es, sobald die App auf dem Startbildschirm ist.',
    askKeep: 'Darum bitten',
    demo: 'Probewerkstatt',
    demoLead: 'Ein Speicher für sich: Nichts darin berührt deine Werkstatt.',
    openDemo: 'Probewerkstatt öffnen',
    leaveDemo: 'Probewerkstatt verlassen',
    demoAfresh: 'Neu anlegen',

    about: 'Über die App, Warnungen',
    whatItIs: 'Was es ist',
    aboutText:
      'Tallywright zählt die Stücke einer kleinen Werkstatt. Es läuft allein auf diesem Tablet, sendet nichts fort und verlangt kein Konto.',
    cautionsTitle: 'Warnungen',
    cautions: [
      {
        title: 'Drechselbank',
        text: 'Gesichtsschutz auf, Ärmel und Haare zurückgebunden, keine Handschuhe und keine Ringe an einer laufenden Drechselbank. Halte sie an, bevor du das Tablet berührst.',
      },
      {
        title: 'Staub',
        text: 'Jeder Holzstaub kann Lunge, Nase und Haut schaden; der mancher Hölzer mehr. Absaugung, Maske und Staubsauger oder feuchtes Wischen statt Besen.',
      },
      {
        title: 'Dämpfe und Haut',
        text: 'Leime und Anstriche können allergisch machen, und manche brennen oder verätzen. Frische Luft und Handschuhe; ölige Lappen können sich von selbst entzünden: flach ausbreiten oder unter Wasser legen.',
      },
      {
        title: 'Was gilt',
        text: 'Die Warnungen hier sind die üblichen (gängige Praxis). Deine örtlichen Vorschriften, die Sicherheitsdatenblätter und der Rat von Fachleuten mit Zulassung gehen vor.',
      },
    ],
    licences: 'Auf wessen Arbeit es ruht',
    licenceList: [
      'Schriften: Atkinson Hyperlegible Next und Mono, SIL Open Font License 1.1.',
      'Code: Preact, Signals, Valibot, uqr und Workbox (MIT), idb (ISC).',
      'Dichte und Schwindung der Hölzer: Wood Handbook, USDA Forest Products Laboratory. Jedes Holz nennt seine Quellen.',
      'Was Hölzer Menschen antun: die Tafel „Woods toxic to man“ (American Woodturner, Juni 1990) und die Kennzeichnungen der ACGIH.',
    ],
  },

  shelfMoveWords: {
    several: (n, kinds, place) => `${pieces(n)} aus ${kinds} Arten: jetzt ${place}`,
  },

  shelfPlaceInSentence: {
    shelf: 'im Regal',
    listed: 'angeboten',
    sold: 'verkauft',
    given: 'verschenkt',
    kept: 'behalten',
  },

  shelfPlaceWords: {
    shelf: 'Im Regal',
    listed: 'Angeboten',
    sold: 'Verkauft',
    given: 'Verschenkt',
    kept: 'Behalten',
  },

  shelfWords: {
    title: 'Regal',
    lead: 'Fertige Stücke: was im Regal steht, was angeboten ist und wohin die anderen gingen.',
    toShelf: 'Regal',
    toListing: 'Anbieten',
    count,
    close: 'Schließen',
    grades: { first: 'Erste Wahl', second: 'Zweite Wahl' },
    none: 'Noch ist nichts fertig',
    noneHelp: 'Stücke stehen hier, wenn sie den letzten Schritt ihres Ablaufs hinter sich haben.',
    toBench: 'Zur Werkbank',

    allTitle: 'Alle fertigen Stücke',
    allMeans:
      'Ein Stück ist fertig, wenn es den letzten Schritt seines Ablaufs hinter sich hat. Es steht im Regal, bis jemand es als angeboten, verkauft, verschenkt oder behalten herausnimmt.',
    finished: 'Fertig',
    finishedOf: (n) => `${count(n)} fertig`,
    brought: 'Verkaufte brachten',
    soldNone: '–',
    pricedOf: (priced, sold) =>
      priced === sold
        ? 'von jedem ist der Preis bekannt'
        : `der Preis ist von ${count(priced)} der ${count(sold)} bekannt`,

    variants: 'Nach Ausführung',
    belowZero: 'Unter null: zählen',
    belowZeroDetail:
      'Von hier ging mehr weg, als kam. Zähle, was da ist, dann nimm zurück, was einmal zu viel bewegt wurde.',
    ofOne: (variant) => `${variant} öffnen`,

    unpicturedTitle: 'Ohne Foto',
    unpicturedLead:
      'Ausführungen, die kein Foto zeigt, wie sie sind. Die mit fertigen Stücken stehen zuerst.',
    unpicturedOf: (n) => (n > 0 ? count(n) : '–'),
    allPictured: 'Jede Ausführung in Gebrauch hat ein Foto.',
    variant: 'Ausführung',
    wood: 'Holz',

    goneTitle: 'Diese Ausführung ist nicht in der Werkstatt',
    goneHelp: 'Sie kommt vielleicht mit der Einrichtung eines anderen Tablets.',
    putAway: 'weggelegt',
    whereTitle: 'Wo ihre Stücke sind',
    move: 'Stücke bewegen',
    usualPrice: 'Üblicher Preis',
    unknown: '–',
    noneFinished: 'Noch ist kein Stück davon fertig.',
    noneOfGrade: 'Noch keine.',

    moveTitle: (variant) => `${variant} bewegen`,
    grade: 'Welche Wahl?',
    from: 'Von wo?',
    to: 'Wohin?',
    thereNow: (n) => `${count(n)} dort`,
    howMany: 'Wie viele?',
    fewer: 'Weniger',
    more: 'Mehr',
    priceEach: 'Was jedes brachte',
    priceBack: 'Was jedes gebracht hatte',
    priceHint: 'Der Preis für eines, etwa 48,50. Leer ist er nicht bekannt.',
    badPrice: 'Ein Preis wie 48,50.',
    optional: 'darf leer bleiben',
    moveNow: (n) => `${pieces(n)} bewegen`,

    photosTitle: 'Fotos',
    photosLead: 'Erst die eigenen, dann die ihrer Stücke, die keinen Fehler zeigen.',
    morePhotos: (n) =>
      `${n === 1 ? '1 weiteres Foto' : `${wholeNumber(n)} weitere Fotos`} ihrer Stücke: sieh bei ihren älteren Kästen nach.`,
    blemishesTitle: 'Was an ihrer zweiten Wahl zu sehen ist',
    blemish: 'Makel',
    onHowMany: 'Dafür herabgestuft',
    noBlemishes: 'Kein Stück davon wurde zu zweiter Wahl herabgestuft.',
    noHistory: 'Kein Stück davon wurde bewegt, und kein Foto wurde gemacht.',
  },

  shellWords: {
    stationName: (letter) => `Tablet ${letter}`,
    places: 'Orte',
    bench: 'Werkbank',
    trays: 'Kästen',
    stores: 'Lager',
    yield: 'Ausbeute',
    plan: 'Plan',
    day: 'Tag',
    shelf: 'Regal',
    setUp: 'Einrichtung',
    locked: 'Gesperrt',
    more: 'Mehr',
    close: 'Schließen',
    opening: 'Die Werkstatt wird geöffnet …',
    otherWindow:
      'In einem anderen Fenster läuft noch die ältere Version. Schließe es, dann öffnet sich dieses.',
    outdatedTitle: 'In einem anderen Fenster aktualisiert',
    outdated: 'Eine neuere Version ist in einem anderen Fenster offen. Nichts ist verloren.',
    reload: 'Neu laden',
    brokenTitle: 'Diese Seite lässt sich nicht zeigen',
    broken: 'Ein Fehler der App, nicht deiner Daten: Jeder Tipp, der gesichert wurde, ist da.',
    rescue: 'Rettungsseite: alles in eine Datei sichern',
    stillOpening: 'Es dauert länger, als es sollte.',
    newerTitle: 'Diese Werkstatt wurde von einer neueren Version geöffnet',
    newer:
      'In diesem Fenster läuft eine ältere Version, also lässt es die Werkstatt unberührt. Lade neu, um die neuere zu bekommen.',
    failedTitle: 'Die Werkstatt ließ sich nicht lesen',
    failed:
      'Das ist keine leere Werkstatt: Das Protokoll ließ sich nicht öffnen, und nichts wurde geschrieben. Versuche es noch einmal oder starte den Browser neu.',
    tryAgain: 'Noch einmal versuchen',
    updateWaiting: 'Eine neue Version ist bereit.',
  },

  signalsWords: {
    list: 'Was sich geändert hat',
    scrap: 'Ausschuss',
    series: ({ what, wood, stage }) =>
      wood === null ? `${what} bei ${stage}, alle Hölzer` : `${what} in ${wood} bei ${stage}`,
    counts: ({ before, after, when }) =>
      `${wholeNumber(before.flawed)} von ${wholeNumber(before.pieces)} vor ${when}, ${wholeNumber(after.flawed)} von ${wholeNumber(after.pieces)} seither`,
    worse: 'schlechter',
    better: 'besser',
    expected: (expected, all) =>
      `Ohne Änderung wären seither etwa ${wholeNumber(Math.round(expected))} von ${wholeNumber(all)} zu erwarten.`,
    none: 'Nichts hat sich um mehr geändert, als der Zufall es tut',
    tooFew:
      'Noch sind es zu wenige Stücke, um eine Änderung vom Zufall zu unterscheiden. Anteile werden von selbst beobachtet, sobald es mehr sind.',
    watched: (watched, falseAlarm) =>
      `${watched === 1 ? 'Ein Anteil wird' : `${wholeNumber(watched)} Anteile werden`} beobachtet. Solange sich nichts ändert, ist diese Liste bei mindestens ${wholeNumber(100 - Math.round(100 * falseAlarm))} von 100 Blicken leer.`,
    watchedMeans:
      'Ein Anteil steht hier, wenn sich seine Stücke vorher und seither um mehr unterscheiden, als der Zufall die Stücke irgendeines Anteils der ganzen Liste unterscheidet. Seine Fehlalarme sind über die ganze Liste begrenzt (Holms Verfahren, schrittweise abwärts, mit Tarones Schranke). Das gilt für einen Blick: Wer jeden Tag hinsieht, sieht dann und wann einen Fehlalarm. Kleine Änderungen in kleinen Zahlen bleiben ungesehen, also sagt eine leere Liste nicht, dass alles gut ist.',
    means: (p) =>
      `Eine Werkstatt, in der sich nichts ändert, zeigt so Auffälliges irgendwo in ihrer Liste bei ${oftenWords(p)}.`,
    showChart: 'Diagramm',
    answer: 'Antworten',
    answerName: (series) => `Antworten: ${series}`,
    chartName: (series) => `Diagramm: ${series}`,
    answerTitle: 'Was hast du dagegen getan?',
    answerHint: 'Das Signal verlässt dann die Liste, und deine Notiz steht in den Diagrammen.',
    note: 'Notiz',
    noteHint: 'Etwa „Röhre nachgeschliffen“ oder „neuer Leim“.',
    marks: 'Notizen',
    marksLead:
      'Was geändert wurde, und wann. Eine Notiz steht in den Diagrammen ihres Schritts; vorher und seither lassen sich vergleichen.',
    noMarks: 'Noch keine Notiz. Mach eine, wenn du ein Werkzeug, einen Leim oder eine Arbeitsweise änderst.',
    earlierMarks: (n) => (n === 1 ? 'Eine frühere Notiz' : `${wholeNumber(n)} frühere Notizen`),
    addMark: 'Neue Notiz',
    editMark: 'Notiz',
    stage: 'Schritt',
    wood: 'Holz',
    allWoods: 'alle Hölzer',
    when: 'Tag',
    hour: 'Uhrzeit',
    whenWrong: 'Ein Tag und eine Uhrzeit, die es gibt.',
    whenLater: 'Das kommt erst noch.',
    putAway: 'weggelegt',
    lookAt: 'Einen Anteil ansehen',
    lookAtLead: 'Das Diagramm eines Grundes oder des Ausschusses bei einem Schritt.',
    what: 'Was',
    show: 'Zeigen',
    noSeries: 'Dort wurde noch kein Stück davon beurteilt.',
    chart: {
      x: 'Kasten',
      y: 'Mit Fehler',
      shares: 'Mit Fehler in jedem Kasten',
      centre: 'Im Mittel',
      limits: 'Wo der Zufall allein fast alle Kästen hält',
      share: (value) => share(value),
      flagged: 'außerhalb des Zufalls',
      change: 'wahrscheinliche Änderung',
      means:
        'Jeder Punkt ist ein Kasten, in der Reihenfolge der Arbeit: der Anteil seiner Stücke, die beim ersten Besuch einen Fehler hatten. Das Band zeigt, wohin ein Kasten seiner Größe durch Zufall allein fast immer fällt, wenn alle Kästen gleich sind; eine Raute liegt außerhalb. Ein Kasten außerhalb kann noch Zufall sein; eine Reihe von Punkten auf einer Seite sagt mehr.',
      sum: (flawed, all) => `${wholeNumber(flawed)} mit Fehler von ${pieces(all)}`,
    },
  },

  siteWords: {
    skin: 'Haut',
    eyes: 'Augen',
    respiratory: 'Atemwege',
    cardiac: 'Herz',
    nausea: 'Magen',
  },

  soundWords: {
    title: 'Töne und Stimme',
    lead: 'Nichts hängt vom Hören ab: Was klingt, wird auch gezeigt.',
    sound: 'Töne',
    tryThem: 'Töne ausprobieren',
    hear: (tone) => `${tone}: anhören`,
    tones: {
      saved: 'Gut',
      last: 'Letztes im Kasten',
      flaw: 'Fehler',
      undone: 'Zurückgenommen',
      refused: 'Nicht gezählt',
      'not-saved': 'Nicht gesichert',
      cured: 'Ausgehärtet',
    },
    speak: 'Gesprochene Zahl',
    speakHint: 'Nach jedem Tipp sagt eine Stimme des Tablets: „21, noch 3“. Sie braucht kein Netz.',
    noVoice: 'Bleibt aus: Dieses Tablet hat keine deutsche Stimme, die ohne Netz spricht.',
    hearCount: 'Zahl anhören',
  },

  speedWords: {
    title: 'Drehzahl',
    lead: 'Für ein gesundes, rundes, mittig eingespanntes Stück Holz.',
    open: 'Drehzahl',
    diameter: 'Durchmesser',
    length: 'Länge',
    machine: 'Maschine',
    noMachine: 'Nicht gesagt',
    badDiameter: 'Ein Durchmesser ist eine Zahl in mm zwischen 3 und 1.000.',
    badLength: 'Eine Länge ist eine Zahl in mm bis 5.000.',
    range: (low, high) =>
      turns(low) === turns(high)
        ? `${turns(low)} Umdrehungen pro Minute`
        : `${turns(low)} bis ${turns(high)} Umdrehungen pro Minute`,
    surface: (low, high) => {
      const [from, to] = [roundNumber(low), roundNumber(high)];
      return `${from === to ? from : `${from} bis ${to}`} Meter pro Sekunde am Umfang.`;
    },
    atMost: (value) => `Höchstens ${turns(value)} Umdrehungen pro Minute`,
    limited:
      'Das ist die Grenze, die du für die Maschine notiert hast; nach seinem Durchmesser vertrüge das Stück mehr.',
    slowly: 'Beginne darunter und geh nur so weit hinauf, wie das Stück ruhig läuft.',
    steady: 'Mehr als zehnmal so lang wie dick: Stütze es mit einer Lünette und bleib langsam.',
    begin:
      'Beginne mit der langsamsten Drehzahl der Maschine bei allem, was roh, gerissen, verleimt oder unwuchtig ist.',
    never:
      'Lass nie ein Stück mit einer Abflachung, einer losen Zwinge oder einem Riss drehen. Steh beim Einschalten seitlich.',
    source:
      'Gängige Praxis der Drechsler, keine Norm: Zoll Durchmesser mal Umdrehungen pro Minute liegen zwischen 6.000 und 9.000.',
    rules: `Die Grenzen von Maschine, Futter und Werkzeug gehen vor. ${whatRules}`,
  },

  spokenWords: {
    taps: { flaw: 'Fehler', undo: 'zurückgenommen', load: 'eingespannt' },
    cure: (n) => (n === 1 ? '1 härtet' : `${n} härten`),
    left: (n) => `noch ${n}`,
    noneLeft: 'keine mehr',
    refusal: 'nicht gezählt',
  },

  stageKindWords: {
    bench: 'Werkbankarbeit',
    hold: 'Haltezeit: Aushärten',
    check: 'Prüfung und Wahl',
    record: 'Fotografieren, anbieten',
  },

  stageWords: {
    left: 'übrig',
    leftHeld: 'härten',
    leftToLoad: 'einspannen',
    seconds: 'zweite Wahl',
    tray: (code) => `Kasten ${code}`,
    pass: 'Gut',
    passFive: '5 gut',
    passRest: (n) => `${n} gut`,
    passRestDetail: 'Rest',
    load: 'Hinein',
    loadAll: (n) => (n > 0 ? `${n} hinein` : 'Hinein'),
    takeOut: 'Heraus',
    takeOutAll: (n) => (n > 0 ? `${n} heraus` : 'Heraus'),
    takeOutEarlyTitle: 'Noch nicht ausgehärtet',
    takeOutEarly: 'Zu früh herausnehmen',
    keepCuring: 'Aushärten lassen',
    mayComeOut: 'darf heraus',
    undo: 'Zurück',
    putBack: 'Gilt wieder',
    next: 'Nächster',
    nextStage: 'Weiter',
    nextStageIs: (name) => `Weiter: ${name}`,
    pause: 'Pause',
    back: 'Kästen',
    chooseTray: 'Kästen bei diesem Schritt',
    nothingLeft: 'Nichts übrig',
    noNext: 'keiner',
    lastAct: 'Zuletzt',
    noActYet: 'Noch nichts getippt',
    nothingToUndo: 'noch nichts',
    otherFlaw: 'Anderer Fehler',
    whatBecomes: (reason) => `${reason}: Was wird daraus?`,
    whereTo: 'Zurück an welchen Schritt?',
    whatIsSaved: 'Was wird gerettet?',
    alsoWrong: 'Noch ein Fehler?',
    alsoWrongDone: 'Fertig',
    howMany: 'Wie viele?',
    fewer: 'Weniger',
    more: 'Mehr',
    flawed: (n) => pieces(n),
    outcomes: {
      mended: 'Behoben',
      'sent-back': 'Zurück',
      second: '2. Wahl',
      scrapped: 'Ausschuss',
    },
    outcomeDetails: {
      mended: 'geht weiter',
      'sent-back': 'an früheren Schritt',
      second: 'geht als zweite Wahl weiter',
      scrapped: 'aus der Serie',
    },
    saveAll: 'Alles retten',
    saveOne: (part) => `${part} retten`,
    saveNone: 'Nichts retten',
    cancel: 'Abbrechen',
    grade: 'Welche Wahl?',
    gradeCount: (name, n) => `${name} ${n}`,
    offRoute: 'Dieser Schritt ist nicht mehr im Ablauf. Bewege die Stücke in Einrichtung, Ablauf.',
    mayGoDark: 'Bildschirm darf ausgehen',
    unknownTray: 'Diesen Kasten oder Schritt gibt es in der Werkstatt nicht.',
  },

  startsWords: {
    batch: 'Serie',
    goal: 'Was als gutes gilt',
    goals: { firsts: 'nur erste Wahl', finished: 'erste und zweite Wahl' },
    goalSaid: {
      firsts: 'Zweite Wahl gilt hier nicht als gut.',
      finished: 'Zweite Wahl gilt hier als gut.',
    },
    chance: chanceWords,

    table: (batch) => `Was für ${batch} anzufangen ist`,
    tableLead: (chance) =>
      `Damit die Wahrscheinlichkeit für genug gute ${wholeNumber(chance)} % ist. Ein Tipp auf eine Ausführung sagt mehr.`,
    means:
      'Die Wahrscheinlichkeit bei jedem Schritt wird aus diesem Holz und aus den anderen gelernt, mit dem, wie sicher das ist. Daraus folgt, wie viele der Stücke in Arbeit und der neuen gut herauskommen, und die kleinste Zahl neuer, bei der es im gewünschten Anteil der Fälle genug werden.',
    variant: 'Ausführung',
    wanted: 'Gewünscht',
    good: 'Bisher gut',
    flying: 'In Arbeit',
    start: 'Jetzt anfangen',
    without: 'Wahrscheinlichkeit ohne',
    counting: 'wird gerechnet …',
    startNow: (n) => wholeNumber(n),
    done: 'fertig',
    enough: 'keine',
    outOfReach: 'außer Reichweite',
    noWood: 'sein Holz ist nicht bekannt',
    noRoute: 'die Serie hat keinen Ablauf',
    noneWanted: 'keine gewünscht',
    tooMany: (most) => `über ${wholeNumber(most)} nicht gerechnet`,

    first: (n, { wanted, chance }) =>
      `Fange ${pieces(n)} an: Dann ${comeOut(wanted)} mit einer Wahrscheinlichkeit von ${chance} mindestens ${goodOnes(wanted)} heraus.`,
    more: (n, { wanted, chance }) =>
      `Fange jetzt ${wholeNumber(n)} mehr an: Dann ${comeOut(wanted)} mit dem, was in Arbeit ist, mit einer Wahrscheinlichkeit von ${chance} mindestens ${goodOnes(wanted)} heraus.`,
    none: ({ wanted, chance }) =>
      `Fange keine an: Was in Arbeit ist, ergibt mit einer Wahrscheinlichkeit von ${chance} mindestens ${goodOnes(wanted)}.`,
    isDone: (wanted) =>
      `${wanted === 1 ? 'Das eine gute ist' : `Alle ${wholeNumber(wanted)} guten sind`} fertig: Nichts ist anzufangen.`,
    beyond: (most, chance, wanted) =>
      `Nicht einmal ${wholeNumber(most)} neue Stücke machen ${goodOnes(wanted)} sicher genug: Die Wahrscheinlichkeit ist dann ${chance}. Über die Wahrscheinlichkeit durchzukommen ist zu wenig bekannt, oder sie ist zu klein. Fange einige an und frage wieder, wenn sie beurteilt sind.`,
    never: 'Keine Zahl von Stücken macht es ganz sicher.',
    average: ({ good, over, short }) =>
      `Im Mittel kommen ${roundNumber(good)} gute heraus: ${roundNumber(over)} zu viel, ${roundNumber(short)} zu wenig.`,
    inFlight: (chance) => `Wird nichts mehr angefangen, ist die Wahrscheinlichkeit ${chance}.`,
    guess: 'Eine Vermutung: Noch ist kein Stück beurteilt',
    guessHelp:
      'Ohne Vorgeschichte gilt der ganze Ablauf als Münzwurf: Die Hälfte der Stücke kommt heraus, und fast jeder andere Anteil wäre möglich. Darum ist die Zahl groß. Sie fällt, sobald Stücke abgetippt werden; bis dahin fange einige an, um daraus zu lernen.',
    partGuess: (stages) =>
      `Bei ${stages} ist noch nichts beurteilt: Dieser Teil ist eine Vermutung, was die Zahl größer macht.`,
    past: 'Der Termin ist vorbei',
    pastHelp: 'Die Zahlen unten gelten trotzdem; sag unter Ziele einen anderen Termin.',

    chanceChart: (wanted) => `Wahrscheinlichkeit für mindestens ${goodOnes(wanted)}`,
    overChart: 'Gute zu viel und zu wenig, im Mittel',
    starts: 'Jetzt angefangen',
    chanceAxis: 'Wahrscheinlichkeit',
    over: 'zu viel',
    short: 'zu wenig',
    piecesAxis: 'Stück',
    share: (value) => share(Math.round(1000 * value) / 1000),
    pieces: roundNumber,
    startsShown: (n) => wholeNumber(n),
    markWanted: (chance) => `${wholeNumber(chance)} %`,
    markCheapest: 'am billigsten',

    costs: 'Was am billigsten ist',
    costsLead:
      'Wo man weiß, was ein Stück zu wenig und ein Stück zu viel kostet, nennt die Rechnung die Zahl.',
    perStart: 'Eines anzufangen kostet',
    perStartHint: 'Sein Holz, seine Teile und die Arbeit. Leer gilt als nichts.',
    perShort: 'Eines zu wenig kostet',
    perShortHint: 'Der verlorene Verkauf, ein enttäuschter Kunde.',
    perOver: 'Eines zu viel kostet',
    perOverHint: 'Außer dem, was das Anfangen kostet: es zu lagern, es billig abzugeben.',
    badCost: 'Kosten sind eine Zahl wie 24 oder 24,50.',
    forget: 'Kosten leeren',
    noCosts: 'Sag, was eines zu wenig und eines zu viel kostet.',
    cheapest: (answer) => {
      switch (answer.kind) {
        case 'the-more-the-better':
          return 'Weder eines anzufangen noch eines zu viel zu haben kostet etwas: je mehr, desto besser.';
        case 'best-so-far':
          return `Am billigsten, so weit gesucht wurde: ${cheapestIs(answer)}`;
        case 'starts':
          return `Am billigsten: ${cheapestIs(answer)}`;
      }
    },

    behind: 'Worauf das beruht',
    flightTable: 'In Arbeit, nach dem Schritt, der es als Nächstes beurteilt',
    nothingFlies: 'Nichts davon ist in Arbeit.',
    stage: 'Schritt',
    firsts: 'Erste Wahl',
    seconds: 'Zweite Wahl',
    back: 'Davon zurückgegeben',
    count: 'Gezählt',
    flightMeans:
      'Was zurückgegeben wurde, steht bei dem Schritt, der es zurückgab: Der ist noch nicht damit fertig.',
    beliefTable: 'Wahrscheinlichkeit, durch jeden Schritt als gutes zu kommen',
    judged: 'Gezählt',
    pooled: 'Angenommen',
    from: 'Gelernt aus',
    of: (k, n) => (n === 0 ? '–' : `${wholeNumber(k)} von ${wholeNumber(n)}`),
    sources: {
      own: 'diesem Holz und den anderen',
      'other-woods': 'anderen Hölzern allein',
      prior: 'noch nichts',
    },
    beliefMeans:
      'Gezählt ist, was an diesem Holz gesehen wurde. Angenommen stützt sich auf die anderen Hölzer, wo das wenig ist. Jedes Stück zählt bei einem Schritt einmal, was immer behoben oder zurückgegeben wurde.',
  },

  storesWords: {
    title: 'Lager',
    lead: 'Was da liegt, was die Stücke in Arbeit noch brauchen und was zu bestellen ist.',
    parts: 'Teile',
    partsMeans:
      'Vorhanden ist, was im Lager liegt. Vergeben ist, was die Stücke in Arbeit auf ihrem Ablauf noch brauchen. Frei ist der Rest.',
    noParts: 'Noch keine Teile',
    noPartsHelp: 'Lege Metallkerne, Zwingen und dergleichen in Einrichtung an, dann buche sie hier ein.',
    toSetUp: 'Teile anlegen',
    count,
    unknown: '–',
    onHand: 'Vorhanden',
    allotted: 'Vergeben',
    free: 'Frei',
    states: {
      'below-zero': 'Unter null: zählen',
      untold: 'Noch nicht gezählt',
      short: 'Zu wenig',
      low: 'Wenig',
      fine: 'Genug',
    },
    stateDetails: {
      'below-zero': 'Es wurde mehr abgetippt, als je hereinkam. Zähle, was da liegt.',
      untold: 'Niemand hat gesagt, wie viele es sind. Buche welche ein oder zähle sie.',
      short: (n) => `Die Stücke in Arbeit brauchen ${count(n)} mehr.`,
      low: (mark) => `Beim Meldebestand von ${count(mark)} oder darunter.`,
      fine: '',
    },
    receive: 'Einbuchen',
    countIt: 'Zählen',
    actOn: (act, part) => `${act}: ${part}`,
    close: 'Schließen',
    erase: 'Löschen',
    save: 'Sichern',

    receiveTitle: (part) => `${part} einbuchen`,
    received: 'Wie viele kamen?',
    cost: 'Was sie zusammen kosten',
    costHint: 'Der Betrag für alle, etwa 12,50.',
    badCost: 'Ein Betrag wie 12,50.',
    note: 'Notiz',
    optional: 'darf leer bleiben',
    tooLong: (length, most) => `${length} Zeichen: höchstens ${most} passen.`,

    countTitle: (part) => `${part} zählen`,
    whichHeap: 'Wo hast du gezählt?',
    logSays: (n) => `Das Protokoll sagt ${count(n)}.`,
    logKnowsNot: 'Niemand hat bisher gesagt, wie viele es sind.',
    counted: 'Wie viele sind es?',
    difference: (n) => (n === 0 ? 'Kein Unterschied.' : `Unterschied: ${signedNumber(n)}`),
    why: 'Warum?',
    whyMissing: 'Wähle, warum.',

    toCleanTitle: 'Zu reinigen',
    toCleanLead: 'Aus Ausschuss gerettet. Sie zählen als vorhanden, sobald sie gereinigt sind.',
    cleanOne: 'Eines gereinigt',
    cleanAll: 'Alle gereinigt',
    backToStores: (n) => `${count(n)} zurück ins Lager`,
    cleanSome: 'Einige verloren',
    cleanSomeDetail: 'sag, wie viele',
    cleanTitle: (part) => `Gereinigt: ${part}`,
    cleanBack: 'Zurück ins Lager',
    cleanLost: 'Beim Reinigen verloren',
    belowZero: 'Unter null: Zähle, was zu reinigen ist.',

    startTitle: 'Was sich jetzt anfangen lässt',
    startLead: 'Jede für sich, wenn sonst nichts angefangen wird.',
    startMeans:
      'Freie Teile, aufgeteilt nach der Stückliste der Ausführung; das Teil, das zuerst ausgeht, bestimmt die Zahl.',
    noVariants: 'Noch hat keine Ausführung eine Stückliste.',
    variant: 'Ausführung',
    canStart: 'Möglich',
    limit: 'Geht zuerst aus',
    untoldParts: (names) => `noch nicht gezählt: ${names}`,

    orderTitle: 'Was zu bestellen ist',
    orderLead: 'Damit sich der Rest des Plans anfangen lässt und der Meldebestand noch daliegt.',
    orderMeans:
      'Teile für das, was die Serien brauchen und nicht begonnen ist, nur erste Wahl, + Meldebestand − Freie. Ausschuss, der noch kommt, ist nicht darin.',
    nothingToOrder: 'Nichts: Was frei ist, genügt für den Plan und den Meldebestand.',
    part: 'Teil',
    order: 'Bestellen',
    forPlan: 'Für den Plan',
    lowMark: 'Meldebestand',
    fewerOnceCleaned: (n) => `${count(n)} weniger, sobald Gerettetes gereinigt ist`,

    toStores: 'Lager',
    goneTitle: 'Dieses Teil ist nicht in der Werkstatt',
    goneHelp: 'Es kommt vielleicht mit der Einrichtung eines anderen Tablets.',
    howMany: 'Wie viele es sind',
    receivedInAll: 'Erhalten im Ganzen',
    costEach: 'Kosten von einem',
    worth: 'Wert des Vorhandenen',
    lostInCleaning: 'Beim Reinigen verloren, im Ganzen',
    putAway: 'weggelegt',
    editPart: 'Kosten und Meldebestand',
    noHistory: 'Noch wurde nichts eingebucht oder gezählt.',
  },

  studyWords: {
    between: (low, high) => `${low} bis ${high}`,
    seconds,
    hours,
    back: 'Ausbeute',
    rack: 'Was die Tipps sagen',
    pages: {
      chances: {
        title: 'Wahrscheinlichkeiten',
        lead: 'Wie viele der angefangenen Stücke herauskommen, Holz für Holz.',
      },
      flow: { title: 'Fluss', lead: 'Wie Stücke Tag für Tag vorankamen und wie viele durchkamen.' },
      flaws: { title: 'Fehler', lead: 'Was schiefgeht, wo, und was es an Minuten kostet.' },
      signals: {
        title: 'Signale',
        lead: 'Was sich geändert hat, zum Schlechteren oder Besseren, und was du dagegen getan hast.',
      },
      time: { title: 'Zeiten', lead: 'Wie lange ein Stück dauert und wohin die Stunden gehen.' },
      compare: { title: 'Vergleich', lead: 'Zwei Zeiträume, Leute, Serien oder Arbeitsweisen.' },
    },
    filter: 'Was zu sehen ist',
    stretch: 'Zurück bis',
    stretches: { all: 'alle Tage', week: '7 Tage', month: '28 Tage', quarter: '91 Tage' },
    person: 'Getippt von',
    everybody: 'allen',
    nobody: 'niemand Bestimmtem',
    batch: 'Serie',
    allBatches: 'alle',
    working: 'Alle Tipps werden gelesen …',
    workingAgain: 'Was hier steht, wird neu gerechnet …',
    failed: 'Die Tipps ließen sich für diese Seite nicht lesen',
    failedHelp:
      'Nichts ist verloren: Jeder Tipp ist, wo er war. Versuche es noch einmal; die anderen Orte gehen wie immer.',
    again: 'Noch einmal versuchen',
    nothing: 'Noch nichts zu beurteilen',
    nothingHelp:
      'In dem, was du ansiehst, hat kein Stück einen Schritt verlassen. Diese Seite füllt sich von selbst, wenn Stücke abgetippt werden.',
    doubtful: (n) =>
      n === 1
        ? 'Ein Stück wurde getippt, während die Uhr zweifelhaft war: Sein Tag kann ein anderer sein.'
        : `${wholeNumber(n)} Stücke wurden getippt, während die Uhr zweifelhaft war: Ihre Tage können andere sein.`,
    notYet: 'noch nicht bekannt',
    means: 'Was das bedeutet',
    close: 'Schließen',
    asTable: 'Dasselbe als Tabelle',
    chart: {
      move: 'Pfeiltasten oder ein Tipp gehen von Punkt zu Punkt.',
      loading: 'Das Diagramm kommt …',
      failed: 'Das Diagramm ließ sich nicht zeichnen. Seine Zahlen stehen darunter.',
    },
  },

  tableWords: {
    title: 'Tabellen für die Tabellenkalkulation',
    lead: 'Durch Kommas getrennter Text (CSV, UTF-8) mit einem Punkt in Dezimalzahlen. Eine Tabelle ist zum Rechnen; um die Daten zu schützen, speichere eine Sicherung.',
    guard:
      'Ein Apostroph am Anfang hält eine Tabellenkalkulation davon ab, einen Text für eine Formel zu nehmen.',
    names: {
      trays: 'Kästen',
      taps: 'Tipps',
      yield: 'Ausbeute',
      days: 'Tage',
      stores: 'Lager',
      targets: 'Ziele',
      shelf: 'Regal',
    },
    details: {
      trays: 'Wo die Stücke jedes Kastens sind',
      taps: 'Jeder Eintrag des Protokolls',
      yield: 'Jedes Holz, Schritt für Schritt',
      days: 'Jeder Tag der Werkstatt, Schritt für Schritt',
      stores: 'Jedes Teil, und was zu bestellen ist',
      targets: 'Was jede offene Serie braucht, und bis wann',
      shelf: 'Fertige Stücke, und wohin sie gingen',
    },
    save: 'Tabelle sichern',
    making: 'Wird gemacht …',
    saved: (file) => `Gesichert: ${file}`,
    shared: (file) => `Übergeben: ${file}`,
    tapAgain: 'Sie ist bereit: Tippe noch einmal.',
    failed: 'Das Protokoll ließ sich nicht lesen, also wurde keine Tabelle gemacht. Versuche es noch einmal.',
  },

  tabletsWords: {
    title: 'Andere Tablets',
    lead: 'Mehrere Tablets, eine Werkstatt: Jedes zählt für sich, und alle zeigen dasselbe, sobald sie sich treffen.',
    loading: 'Wird nachgesehen …',
    forgets: 'Dieses Fenster behält nichts, also kann es sich mit keinem anderen Tablet verbinden.',
    demo: 'Die Probewerkstatt trifft niemanden. Öffne erst eine eigene Werkstatt.',

    howHelp:
      'Ein PC in der Werkstatt reicht weiter, was die Tablets tippen: Ein Befehl startet ihn, und er zeigt ein Zeichen zum Lesen. Er kann nichts davon lesen und nichts fälschen. Ohne ihn arbeitet jedes Tablet weiter, und Dateien tragen das Protokoll vom einen zum anderen.',

    join: 'Mit anderen Tablets verbinden',
    joinDetail: 'Mit dem Zeichen des PCs der Werkstatt oder eines anderen Tablets',
    joinClose: 'Jetzt nicht',
    close: 'Schließen',
    scan: 'Zeichen lesen',
    scanHelp: 'Halte das Zeichen des PCs oder eines anderen Tablets vor die Kamera.',
    noSign: 'Das ist ein Zeichen anderer Art.',
    stopScan: 'Nicht mehr lesen',
    link: 'Link',
    linkHint: 'Er beginnt mit https:// und enthält #/join/.',
    linkBad: 'Das ist kein Link, der einlädt.',
    typed: 'Stattdessen tippen',
    address: 'Adresse des PCs',
    addressHint: 'wss:// und was auf seiner Seite steht',
    shop: 'Werkstatt',
    shopHint: 'Kleine Buchstaben und Ziffern',
    key: 'Schlüssel',
    keyHint: 'Zwölf Wörter, dazwischen je ein Leerzeichen',
    typedBad:
      'Eines der drei stimmt nicht: Eine Adresse beginnt mit wss://, ein Schlüssel hat zwölf Wörter der Liste.',
    nothing: 'Lies ein Zeichen oder gib einen Link ein.',
    addsUp: 'Was dieses Tablet hat, kommt für immer zur Werkstatt dort dazu',
    addsUpHelp:
      'Verbinde nur Tablets einer Werkstatt. Zwei Werkstätten, die verbunden wurden, lassen sich nicht wieder trennen; mach erst eine Sicherung, wenn du nicht sicher bist.',
    yes: 'Ja',
    no: 'Nein',
    mayInvite: 'Darf dieses Tablet andere hereinlassen?',
    mayInviteHint:
      'Dann behält es den Schlüssel der Werkstatt. Ein oder zwei Tablets genügen: Wer ein verlorenes findet, hat den Schlüssel.',
    go: 'Verbinden',
    going: 'Wird verbunden …',
    joined: 'Verbunden. Was die anderen haben, kommt jetzt herein.',
    nothingThere:
      'Verbunden, und noch ist nichts da. Verbinde das Tablet, das die Werkstatt hat, oder richte die Werkstatt hier ein: Schließe dies und beginne.',
    arriving: 'Die Werkstatt kommt herein …',
    arrived: 'Die Werkstatt ist da',
    arrivedHelp: (stages, trays) =>
      `${stages === 1 ? '1 Schritt' : `${wholeNumber(stages)} Schritte`}, ${trays === 1 ? '1 Kasten' : `${wholeNumber(trays)} Kästen`} in Arbeit. Was hier getippt wird, zeigen die anderen Tablets, und dieses zeigt, was dort getippt wird.`,
    understood: 'Gut',
    problems: {
      'no-invitation': 'Das lädt zu nichts ein.',
      'joined-before': 'Dieses Tablet ist schon mit einer Werkstatt verbunden: Verlasse erst jene.',
      unreachable:
        'Der PC ist nicht zu erreichen. Ist er an, ist das Tablet im selben Netz, und vertraut das Tablet seinem Zertifikat?',
      'no-seat':
        'Alle dreizehn Sitze sind belegt. Wer sich um den PC kümmert, kann einen neuen Schlüssel machen, der sie frei macht.',
    },
    refused: {
      key: 'Der PC kennt diesen Schlüssel nicht. Wurde seither ein neuer gemacht?',
      rights: 'Der PC lässt dieses Tablet das nicht tun.',
      'no-shop': 'Diese Werkstatt gibt es auf dem PC nicht.',
      full: 'Die Platte des PCs ist voll.',
    },

    worksAlone:
      'Dieses Tablet arbeitet für sich weiter: Seine Tipps sind auf ihm gesichert und gehen nirgends sonst hin.',
    joinWithNewKey:
      'Hat die Werkstatt einen neuen Schlüssel, verlasse sie unten und verbinde dich mit dem neuen Zeichen: Alles, was hier getippt wurde, kommt mit.',
    otherInvitation: 'Das lädt zu einer Werkstatt mit einem anderen Schlüssel ein',
    otherInvitationHelp:
      'Dieses Tablet ist mit einem anderen verbunden. Hat deine Werkstatt einen neuen Schlüssel, verlasse den alten und verbinde dich mit diesem: Die Daten bleiben, und alles, was hier getippt wurde, kommt mit.',
    joinAnew: 'Alten verlassen und neu verbinden',

    standing: 'Wie es steht',
    status: {
      off: 'Läuft in diesem Fenster nicht',
      meeting: 'Sieht nach, was wo fehlt',
      'up-to-date': 'Auf dem neuesten Stand',
      toSend: (entries) => `${wholeNumber(entries)} zu senden`,
      unreachable: (since) => `Nicht erreicht seit ${since}`,
      waiting: (entries) =>
        entries === 1
          ? '1 wartet darauf, gesendet zu werden.'
          : `${wholeNumber(entries)} warten darauf, gesendet zu werden.`,
      refused: 'Vom PC abgewiesen',
    },
    statusMeans:
      'Tipps werden immer zuerst auf dem Tablet gesichert. Gesendet wird eine Kopie: Einen PC, der kaputtgeht oder geleert wird, füllt jedes Tablet wieder.',
    again: 'Jetzt versuchen',
    at: 'Adresse',
    seat: 'Sitz',

    photos: 'Fotos',
    photosToo: 'Auch Fotos senden und holen?',
    photosHint:
      'Sie gehen nach allem anderen, eines nach dem anderen. Bei langsamer Verbindung wähle Nein: Was getippt wurde, geht trotzdem, und die Fotos dieses Tablets bleiben darauf.',
    photosWaiting: ({ toSend, toFetch }) =>
      [
        ...(toSend > 0 ? [`${wholeNumber(toSend)} zu senden`] : []),
        ...(toFetch > 0 ? [`${wholeNumber(toFetch)} zu holen`] : []),
      ].join(', '),
    photosRefused: {
      key: 'Der PC nimmt keine Fotos: Er kennt diesen Schlüssel nicht.',
      rights:
        'Der PC nimmt noch keine Fotos: Starte das Programm dort (hub) neu, in seiner neuesten Version.',
      'no-shop':
        'Der PC nimmt noch keine Fotos: Starte das Programm dort (hub) neu, in seiner neuesten Version.',
      full: 'Der PC hat keinen Platz für weitere Fotos. Nichts anderes wird dadurch aufgehalten.',
    },

    aside: 'Beiseitegelegt',
    asideLead: (n) =>
      n === 1
        ? 'Eine Nachricht ließ sich nicht aufnehmen.'
        : `${wholeNumber(n)} Nachrichten ließen sich nicht aufnehmen.`,
    asideHelp:
      'Sie ändern hier nichts, und alle anderen gehen weiter. Manche aus einer neueren Version kommen herein, sobald dieses Tablet aktualisiert ist. Sind es viele, die nicht von dieser Werkstatt sind: Frage, wer sonst Rechte am PC hat.',
    asideReason: 'Warum',
    asideSeat: 'Von Sitz',
    asideNumber: 'Nummer',
    reasons: {
      'not-sealed-here': 'nicht mit dem Schlüssel dieser Werkstatt versiegelt',
      newer: 'aus einer neueren Version',
      malformed: 'nicht, wie es sein soll',
      repeated: 'eine Wiederholung',
    },

    invite: 'Ein anderes Tablet hereinlassen',
    inviteLead: 'Das andere Tablet liest dieses Zeichen unter Andere Tablets oder bei seinem ersten Start.',
    inviteWarn: 'Wer das Zeichen sieht, kann die Werkstatt lesen und schreiben',
    inviteWarnHelp: 'Zeige es nur deinen eigenen Tablets und verbirg es wieder.',
    show: 'Zeichen zeigen',
    hide: 'Verbergen',
    sign: 'Zeichen, das ein Tablet hereinlässt',
    orType: 'Oder getippt, auf dem anderen Tablet:',
    mayNot:
      'Dieses Tablet hat den Schlüssel der Werkstatt nicht. Nimm das Zeichen auf dem PC oder ein Tablet, das einladen darf.',

    leave: 'Verlassen',
    leaveHelp:
      'Dieses Tablet behält alles, was es hat, und zählt für sich weiter. Mit dem Zeichen kann es sich wieder verbinden. Ein verlorenes Tablet wird durch einen neuen Schlüssel ausgesperrt: auf dem PC, npm run hub -- new-key.',
    leaveNow: 'Jetzt verlassen',
    stay: 'Bleiben',
  },

  targetProblemSentences: {
    of: (problem) => {
      switch (problem.kind) {
        case 'broken':
          return problem.how === 'quote'
            ? 'Ein Anführungszeichen wird geöffnet und nicht geschlossen.'
            : 'Sie hat mehr Zellen als Überschriften: Setze einen Text mit Komma in Anführungszeichen.';
        case 'no-name':
          return `${targetColumns[problem.column].none} ist genannt.`;
        case 'unknown':
          return `${targetColumns[problem.column].none} heißt „${problem.name}“.`;
        case 'put-away':
          return `${targetColumns[problem.column].the} „${problem.name}“ ist weggelegt.`;
        case 'two-of-name':
          return `Zwei heißen „${problem.name}“: Gib erst einem einen anderen Namen.`;
        case 'said-before':
          return problem.column === 'good'
            ? `Zeile ${problem.line} sagt es schon von derselben Ausführung.`
            : `Zeile ${problem.line} sagt ${targetColumns[problem.column].another} für diese Serie.`;
        case 'number':
          return `${problem.column === 'good' ? 'Gute' : 'Wahrscheinlichkeit'}: ${numberProblemWords(problem.problem)}`;
        case 'separated':
          return `„${problem.text}“ lässt sich auf zwei Arten lesen. Schreib eine ganze Zahl ohne Punkte, Kommas oder Leerzeichen.`;
        case 'no-day':
          return `„${problem.text}“ ist kein Tag des Kalenders. Schreib ihn so: 2027-04-30.`;
        case 'which-day':
          return `„${problem.text}“ kann zwei Tage heißen. Schreib ihn so: 2027-04-30.`;
      }
    },
  },

  timeStudyWords: {
    perPiece: 'Minuten pro Stück',
    perPieceLead: 'Die Hälfte der Stücke braucht nicht länger. Tippe ein Feld an für mehr.',
    perPiecePicture:
      'Die Hälfte der Stücke braucht nicht länger. Darunter steht, was in neun von zehn Fällen wahrscheinlich ist.',
    perPieceMeans:
      'Gelernt aus der Zeit zwischen zwei Tipps in einem Arbeitsabschnitt. Tipps für mehrere Stücke zählen für alle; Pausen und vergessene Pausen werden an ihrer Länge erkannt und weggelassen.',
    corner: 'Schritt',
    loading: (stage) => `${stage}: Einspannen`,
    none: 'Noch ist keine Zeit bekannt: Sie wird aus Stücken gelernt, die eines nach dem anderen abgetippt werden.',
    minutes: pieceMinutes,
    likely: (interval) => (interval ? likely(interval) : 'wenige Stücke'),
    cellName: (wood, stage, minutes, interval) =>
      `${wood} bei ${stage}: ${pieceMinutes(minutes)}, ${interval ? likely(interval) : 'wenige Stücke'}`,
    timeOf: (wood, stage) => `${wood} bei ${stage}: Zeit`,
    median: 'Die Hälfte der Stücke braucht höchstens',
    mean: 'Ein Stück braucht im Mittel',
    counted: 'Gelernt aus',
    countedIs: (n, minutes) => `${pieces(n)} in ${workTime(minutes)}`,
    breaks: 'Als Pausen weggelassen',
    breaksAre: (stretches, minutes) =>
      stretches === 0 ? 'keine' : `${wholeNumber(stretches)}, zusammen ${workTime(minutes)}`,
    spread: 'Stücke weichen ab um',
    spreadIs: (cv) => `etwa ${about(cv)} nach jeder Seite`,
    learning: 'Schneller werden',
    learningLead:
      'Ob dieselbe Arbeit mit Übung schneller geht. Über alle Tage und Serien, was immer oben gewählt ist.',
    noLearning:
      'Von zu wenigen Stücken ist die Zeit bekannt. Tippe Stücke eines nach dem anderen ab, dann kommt eine Kurve von selbst.',
    curve: 'Wessen Arbeit',
    curveName: (stage, person) => `${stage} · ${person}`,
    rate: (rate, interval) => {
      const ends = interval ? `, wohl ${wholeNumber(100 * interval[0])} bis ${about(interval[1])}` : '';
      return `Jedes Mal, wenn sich die gemachte Zahl verdoppelt, braucht ein Stück ${about(rate)} von dem, was es brauchte${ends}.`;
    },
    quicker: 'Es geht mit jedem Stück schneller, und kaum durch Zufall.',
    slower: 'Es geht langsamer: Etwas steht im Weg, oder die Stücke sind schwieriger geworden.',
    steady: 'Keine klare Änderung: geübte Hände, oder zu wenige Stücke, um es zu sagen.',
    learningMeans:
      'Die Kurve ist die übliche der Übung: Die Zeit fällt um denselben Anteil, sooft sich die Zahl der Stücke verdoppelt. Punkte sind mittlere Zeiten von Strecken von Stücken (die Hälfte braucht nicht länger); die Linie ist die Kurve, die am besten zu ihnen passt.',
    made: 'Gemachte Stücke',
    dots: 'Die Hälfte davon braucht höchstens',
    fitted: 'Übungskurve',
    piecesUpTo: (n) => `Stück ${wholeNumber(Math.round(n))}`,
    hours: 'Wohin die Stunden gehen',
    hoursLead: (most, by) =>
      `Arbeit in Arbeitsabschnitten, Schritt für Schritt: die letzten ${wholeNumber(most)} ${by} mit Arbeit.`,
    hoursByStage: 'Wohin die Stunden gehen, Schritt für Schritt',
    hoursBy: 'Zeitraum',
    byDay: 'Tage',
    byWeek: 'Wochen',
    hoursMeans:
      'Vom ersten Tipp eines Arbeitsabschnitts bis zu seinem Ende. Mehr als eine Viertelstunde ohne Tipp gilt als Pause. Arbeit, die niemand tippt, ist nicht darin.',
    noHours: 'In dem, was du ansiehst, ist keine Arbeitszeit bekannt.',
    worked: 'Gearbeitet',
    day: 'Tag',
    week: 'Woche ab',
    hoursOf: (minutes) => `${roundNumber(minutes / 60)} h`,
    hoursAxis: (n) => `${roundNumber(n)} h`,
    hourCell: (stage, day, minutes) => `${stage}, ${day}: ${workTime(minutes)}`,
    all: 'Alle Schritte',
    lost: 'Zeit in Ausschuss',
    lostIs: about,
    lostOf: (scrapped, all) =>
      `Stücke, die Ausschuss wurden, hatten ${workTime(scrapped)} gebraucht; alles Beurteilte brauchte ${workTime(all)}.`,
    lostMeans:
      'Gerechnet mit den üblichen Minuten eines Stücks bei jedem Schritt seines Ablaufs bis dorthin, wo es Ausschuss wurde. Je später ein Stück verloren geht, desto mehr geht mit.',
  },

  timeWords: {
    units,
    justNow: 'gerade eben',
    ago: (stretch) => `vor ${dative(stretch)}`,
    ready: 'bereit',
    readyIn: (stretch) => `bereit in ${dative(stretch)}`,
  },

  todaySentences: {
    nothingWaits: 'Nichts wartet auf einen Platz.',
    noTime: 'Keine Runde passt in die Arbeitszeiten, die gesagt sind.',
    notToday: (n, stage, time) => `Heute keine mehr. Nächste: ${pieces(n)} für ${stage}, ${time}.`,
    load: (n, stage, by) => `${pieces(n)} für ${stage} einspannen bis ${by}`,
    moreRounds: (n) =>
      n === 1
        ? 'dann passt eine zweite Runde, bevor du gehst'
        : `dann passen ${n} weitere Runden, bevor du gehst`,
    itCures: 'sie härtet aus, während niemand da ist',
    lastCures: 'die letzte härtet aus, während niemand da ist',
    unload: (n, stage) => `${pieces(n)} herausnehmen: ${stage}`,
    loadAt: (n, stage) => `${pieces(n)} einspannen: ${stage}`,
    placesWanted: 'ausgehärtet, und andere warten auf die Plätze',
    placesFree: (by) => `Plätze sind frei; hinein bis ${by}`,
    bottleneck: 'hier liegt die meiste Arbeit: nicht abreißen lassen',
    starved: (stage) => `${stage} hat nichts mehr zu tun`,
    feeds: (stage, stretch) => `${stage} hat nur noch ${stretch} zu tun`,
    late: (batch) => `${batch} wird zu spät`,
    toSpare: (batch, n) => {
      if (n === 0) return `${batch} hat keinen Tag Luft`;
      return `${batch} hat ${n === 1 ? '1 Tag' : `${n} Tage`} Luft`;
    },
    furthest: 'am weitesten',
  },

  todayWords: {
    next: 'Was als Nächstes',
    nextLead: 'Das erste ist das dringendste. Tippe eines an, um hinzugehen.',
    nextMeans:
      'Erst Plätze, die Ausgehärtetes anderen wegnimmt, dann freie Plätze, dann der Schritt, vor dem die meiste Arbeit liegt, und was ihn versorgt, wenn er weniger als zwei Stunden zu tun hat, dann Serien mit weniger als drei Tagen Luft, dann, was am weitesten ist. Tage Luft sind die, die die übrigen Stunden füllen würden; wo Stunden oder Zeiten nicht bekannt sind, die Tage bis zum Termin.',
    nothing: 'Nirgends wartet etwas.',
    here: 'der Schritt dieses Tablets',
    rounds: 'Runden',
    roundsLead: 'Wann was einzuspannen ist, damit alles, was jetzt wartet, am ehesten ausgehärtet ist.',
    roundsMeans:
      'Gerechnet aus dem, was jetzt wartet, den Plätzen, der Zeit zum Aushärten bei der Wärme, die gesagt wurde, den Arbeitszeiten und den Minuten, die das Einspannen gebraucht hat. Das langsamste Holz zählt. Was später dazukommt, ist nicht darin, auch nicht, was die Hände sonst zu tun haben; Pausen sind nicht bekannt, also lass etwas Zeit. Was lange aushärtet, geht über Nacht, wo das hilft.',
    noHours: 'Niemandes Arbeitszeit ist gesagt, also hat keine Runde eine Zeit.',
    toPeople: 'Arbeitszeiten',
    noHolds: 'Kein Schritt des Ablaufs hat eine Haltezeit.',
    untimed: (stages) => `Einspannen ist ohne Zeit gerechnet, weil sie noch nicht gemessen ist: ${stages}.`,
    left: (n) => `${pieces(n)} ${n === 1 ? 'hat' : 'haben'} in den nächsten zwei Wochen keine Runde.`,
    timetable: (name) => `Runden von ${name}`,
    showTimetable: 'Zeitplan',
    columns: { stage: 'Für', pieces: 'Stück', from: 'Ab', loaded: 'Alle drin', ready: 'Ausgehärtet' },
  },

  toneWords: {
    pale: 'Blass',
    honey: 'Honig',
    red: 'Rot',
    brown: 'Braun',
    dark: 'Dunkel',
    olive: 'Oliv',
  },

  trayChoiceWords: {
    nothingWaits: 'Hier wartet nichts',
    nothingWaitsDetail: 'Kästen kommen her, wenn ihre Stücke beim Schritt davor gut sind.',
    otherStages: 'Andere Schritte',
    scan: 'Lesen',
    caution: 'Warnung',
    traysWaiting: (stage) => `Kästen bei ${stage}`,
    oldestFirst: 'Der am längsten wartet, kommt zuerst.',
    since: (time) => `seit ${dative(time)} hier`,
    toCheck: (n) => `${n} im Protokoll: nachzählen`.replace('-', '−'),
    whoTaps: 'Wer tippt?',
    nobody: 'Nicht gesagt',
  },

  traysWords: {
    title: 'Kästen',
    find: 'Kasten mit seinem Code finden',
    findLabel: 'Code',
    open: 'Öffnen',
    erase: 'Löschen',
    offers: 'Vielleicht einer davon',
    scan: 'Lesen',
    makeUp: 'Kästen anlegen',
    live: (n) => `Kästen in Arbeit (${wholeNumber(n)})`,
    done: (n) => `Fertige und leere Kästen (${wholeNumber(n)})`,
    none: 'Noch keine Kästen',
    noneHelp:
      'Lege den ersten Kasten an. Er bekommt einen Code, den du mit Kreide darauf schreibst, und seine Stücke warten beim ersten Schritt.',
    noVariant: 'Noch nichts zu machen',
    noVariantHelp:
      'Ein Kasten hält Stücke einer Ausführung. Lege erst in Einrichtung ein Holz und eine Ausführung an.',
    toSetUp: 'Einrichtung öffnen',
    code: 'Code',
    variant: 'Ausführung',
    wood: 'Holz',
    where: 'Wo seine Stücke sind',
    age: 'Angelegt',
    filterWood: 'Holz',
    filterStage: 'Schritt',
    all: 'Alle',
    noMatch: 'Kein Kasten in Arbeit passt dazu.',

    newTitle: 'Kästen anlegen',
    whatPieces: 'Was werden die Stücke?',
    whichBatch: 'Serie',
    perTray: 'Stück in jedem Kasten',
    howMany: 'Wie viele Kästen',
    prized: 'Ein besonderes Stück',
    prizedDetail: 'ein Kasten mit einem',
    make: 'Anlegen',
    madeTitle: 'Schreib diese Codes mit Kreide auf die Kästen',
    madeEach: (n) => `je ${pieces(n)}`,
    more: 'Weitere anlegen',
    undo: 'Zurücknehmen',
    toTrays: 'Alle Kästen',
    toBench: 'Zur Werkbank',
    fewer: 'Weniger',
    moreOne: 'Mehr',

    tray: (code) => `Kasten ${code}`,
    batch: 'Serie',
    goneTitle: 'Dieser Kasten ist nicht im Protokoll',
    goneHelp: 'Sein Anlegen wurde zurückgenommen, oder er kam aus einer anderen Werkstatt.',
    counts: 'Wo seine Stücke sind',
    finished: (n, grade) => `${ofGrade(n, grade)} fertig`,
    scrapped: (n) => `${wholeNumber(n)} Ausschuss`,
    nowhere: 'Kein Stück dieses Kastens ist in Arbeit.',
    waiting: (n, grade) => `${ofGrade(n, grade)} ${Math.abs(n) === 1 ? 'wartet' : 'warten'}`,
    held: (n, grade) => `${ofGrade(n, grade)} ${Math.abs(n) === 1 ? 'härtet' : 'härten'} aus`,
    workHere: 'Hier arbeiten',
    toCheck: 'Nachzählen',
    split: 'Teilen',
    join: 'Zusammenlegen',
    recount: 'Nachzählen',
    caution: 'Warnung',
    close: 'Schließen',
    cancel: 'Abbrechen',

    whichSpot: 'Welche Stücke?',
    splitTitle: (code) => `${code} teilen`,
    splitHelp: 'Die Stücke bekommen einen eigenen Kasten und Code.',
    splitPieces: 'Stück für den neuen Kasten',
    splitSave: 'Abteilen',
    splitDone: 'Schreib diesen Code mit Kreide auf den neuen Kasten',
    joinTitle: (code) => `${code} zu einem anderen Kasten legen`,
    joinHelp: 'Alle Stücke gehen hinüber, und dieser Code endet.',
    joinNone: 'Kein anderer Kasten dieser Ausführung und Serie ist in Arbeit.',
    joinWhich: 'Zu welchem Kasten?',
    joinSave: (code) => `Zu ${code} legen`,
    joinSaveNone: 'Zusammenlegen',
    joinChoose: 'Wähle einen Kasten.',
    recountTitle: (code) => `${code} nachzählen`,
    recountHelp: (n) => `Das Protokoll sagt ${count(n)}.`,
    recountCounted: 'Wie viele sind es?',
    recountWhy: 'Warum?',
    recountWhyMissing: 'Wähle, warum.',
    recountDifference: (n) =>
      n === 0 ? 'Kein Unterschied.' : `Unterschied: ${n > 0 ? '+' : '−'}${wholeNumber(Math.abs(n))}`,
    recountSave: 'Zahl berichtigen',
    mistyped: {
      empty: 'Gib den Code ein, der auf dem Kasten steht.',
      strange: (character) => `Kein Code hat ein ${character}.`,
      checkFails: 'Dieser Code geht nicht auf: Ein Zeichen ist falsch, oder zwei sind vertauscht.',
      suspect: (character, place) =>
        `Dieser Code geht nicht auf. Sieh dir das ${character} noch einmal an (Stelle ${place}).`,
      noSuchTray: 'Der Code ist richtig gebildet, aber kein Kasten in Arbeit hat ihn.',
    },
  },

  twoCopiesWords: {
    putBackTitle: (taps) => (taps === 1 ? '1 Tipp zurückgeholt' : `${wholeNumber(taps)} Tipps zurückgeholt`),
    putBack: 'Der Browser hatte sie verloren; die zweite Sicherung auf diesem Tablet hatte sie.',
    seen: 'Gut',
    missingTitle: (entries) =>
      entries === 1 ? '1 Eintrag fehlt' : `${wholeNumber(entries)} Einträge fehlen`,
    missing:
      'Dieses Tablet hatte schon mehr als jetzt, und keine der beiden Sicherungen darauf hat den Rest. Hole eine Datei zurück, die du gesichert hast; was hier ist, bleibt, wie es ist.',
    toFiles: 'Datei zurückholen',
    goOnWithout: 'Ohne weiter',
    suspectTitle: 'Dieses Tablet konnte einen Tipp nicht speichern',
    suspect:
      'Bis es neu gestartet ist, gilt ein Tipp erst als gesichert, wenn auch die zweite Sicherung ihn hat. Schaffe Platz auf dem Tablet, sichere eine Datei, dann schließe den Browser und öffne ihn wieder.',
    behindTitle: 'Die zweite Sicherung lässt sich nicht schreiben',
    behind:
      'Tipps werden gesichert, aber nur an einem Ort. Es wird von selbst wieder versucht; sichere eine Datei, um sicherzugehen.',
    onlyLookingTitle: 'Nur zum Ansehen: Eine neuere Version war hier',
    onlyLooking:
      'Dieses Fenster hat eine ältere Version. Es zeigt, was es versteht, und ändert nichts. Lade es neu, um die neuere zu bekommen.',
    reload: 'Neu laden',
  },

  updateWords: {
    ready: 'Eine neue Version ist bereit',
    readyLead: 'Nichts geht verloren: Die Seite öffnet sich wieder mit allem, was gesichert ist.',
    dayLead: 'Der Tag ist die Zeit dafür. Nichts geht verloren; die App öffnet sich von selbst wieder.',
    apply: 'Jetzt verwenden',
    tryAgain: 'Noch einmal versuchen',
    asking: 'Einen Moment …',
    applying: 'Die neue Version kommt herein …',
    held: 'Noch nicht: Arbeit ist im Weg',
    heldHere: {
      tapping: 'In diesem Fenster ist ein Kasten mitten in der Arbeit. Verlasse erst seinen Schritt.',
      'not-saved': 'Ein Tipp in diesem Fenster ist noch nicht auf der Platte.',
      typing: 'In diesem Fenster ist etwas eingegeben und noch nicht gesichert: Sichere oder verwirf es.',
    },
    heldThere: {
      tapping: (where) => `Ein anderes Fenster ist mitten in der Arbeit: ${where}.`,
      'not-saved': (where) =>
        `Ein anderes Fenster hat einen Tipp, der noch nicht auf der Platte ist: ${where}.`,
      typing: (where) => `In einem anderen Fenster ist etwas eingegeben und nicht gesichert: ${where}.`,
    },
    askedAgain: 'Es wird alle paar Sekunden wieder gefragt.',
    noCopy: 'Von den Daten ließ sich keine Sicherung machen',
    noCopyLead:
      'Vor jeder neuen Version wird eine Sicherung gemacht. Ohne sie läuft diese Version weiter, und nichts wurde geändert.',
    didNotTake: 'Die neue Version kam nicht herein',
    didNotTakeLead:
      'Diese läuft weiter, und nichts ist verloren. Versuche es noch einmal oder starte den Browser neu.',
    arrived: (version) => `Jetzt Version ${version}.`,
    well: 'In Ordnung',
  },

  welcomeWords: {
    title: 'Tallywright',
    lead: 'Jedes Stück gezählt, vom Rohling bis ins Regal, mit Tipps an der Drechselbank. Es geht ohne Netz, und alles bleibt auf diesem Tablet.',
    newShop: 'Neue Werkstatt',
    newShopDetail: 'Beginnt mit einem Ablauf für gedrechselte Griffe, den du ändern kannst',
    restore: 'Zurückholen',
    restoreDetail: 'Holt eine Werkstatt aus einer Sicherung zurück',
    restoreHereDetail: 'Holt eine Werkstatt zurück: Dieses Tablet hat Sicherungen',
    demo: 'Probewerkstatt',
    demoDetail: 'Eine Serie Ahlenhefte auf halbem Weg, um alles daran auszuprobieren',
    caution:
      'Drechseln, Staub, Leime und Anstriche können Menschen schaden. Gezeigt werden die üblichen Warnungen: Deine örtlichen Vorschriften, Sicherheitsdatenblätter und der Rat von Fachleuten mit Zulassung gehen vor.',
  },

  whatIfWords: {
    change: 'Was anders wäre',
    changeLead:
      'Fülle eines oder mehrere aus. Der Plan der Werkstatt bleibt, wie er ist: Nichts wird geschrieben.',
    nothing: 'nichts',
    resource: 'Spanner oder Gestell',
    places: 'Plätze dann',
    hold: 'Aushärten bei',
    cureHours: 'Stunden Aushärten dann',
    cureHint: 'Das Datenblatt gilt: Kürzer aushärten, als es erlaubt, ist kein Plan.',
    stage: 'Ein Schritt ist schneller',
    percent: 'Schneller um',
    saturday: 'Eine Hilfe an Samstagen',
    saturdayHint: 'Stunden, ab 9 Uhr',
    variant: 'Weniger einer Ausführung',
    fewer: 'Stück weniger',
    price: 'Preis des Gekauften',
    priceHint: 'Eine Maschine, Spanner. Er wird an den Stunden gemessen, die es spart.',
    monthly: 'Gute Stücke im Monat',
    monthlyHint: 'Wie viele du damit machen wirst.',
    ask: 'Ausrechnen',
    forget: 'Felder leeren',
    bad: {
      places: 'Eine ganze Zahl von 1 bis 9999.',
      cure: 'Stunden von 0 bis 2160.',
      percent: 'Eine Zahl von 1 bis 95.',
      hours: 'Stunden von 0,5 bis 14.',
      fewer: 'Eine ganze Zahl ab 1.',
      price: 'Ein Preis mit höchstens zwei Nachkommastellen.',
      monthly: 'Eine ganze Zahl ab 0.',
    },
    noRate: 'Kein Stundensatz ist gesagt, also lässt sich kein Geld nennen.',
    toRate: 'Stundensatz',

    result: 'Was dabei herauskäme',
    resultLead: 'Beide Pläne treffen auf dasselbe Glück, also kommt der Unterschied allein von der Änderung.',
    means:
      'Neun von zehn Malen liegt der Unterschied im Bereich. Ein Unterschied, dessen Bereich beide Vorzeichen hat, ist nicht sicher einer. Mit mehr von etwas kann eine volle Werkstatt dann und wann etwas später fertig werden: Was zuerst zur Hand ist, wird zuerst genommen.',
    none: 'Fülle oben eine Änderung aus.',
    reckoned: 'Der geänderte Plan wird gerechnet …',
    date: 'Alles ist fertig',
    now: 'Jetzt',
    afterwards: 'Dann',
    fair: 'ziemlich sicher bis',
    hours: 'Stunden der Hände',
    cost: 'Kosten dieser Stunden',
    sooner: (low, middle, high) =>
      `${signedDays(middle)}; neun von zehn Malen ${signedDays(low)} bis ${signedDays(high)}`,
    hoursDiffer: (low, middle, high) =>
      `${signed(middle)} h; neun von zehn Malen ${signed(low)} bis ${signed(high)} h`,
    moneyDiffer: (low, middle, high) =>
      `${money(middle)}; neun von zehn Malen ${money(low)} bis ${money(high)}`,
    noDate: 'Einer der beiden kommt in zwei Jahren an kein Ende, zumindest dann und wann.',
    cannot: 'Mit dieser Änderung gibt es kein Ende: Ein Platz oder die Stunden fehlen.',

    payback: 'Macht sich bezahlt',
    paybackMeans:
      'Preis geteilt durch das Geld, das an jedem guten Stück gespart wird: kein Zins, kein Verschleiß, kein Restwert.',
    never: 'Nie: Selbst im besten Fall spart es keine Stunden.',
    after: (soonest, middle, latest) =>
      `Nach ${middle === null ? 'keiner wahrscheinlichen Zahl' : pieces(middle)}; frühestens ${wholeNumber(soonest)}, ${atLatest(latest, wholeNumber)}.`,
    months: (soonest, middle, latest) =>
      `In Monaten: ${middle === null ? 'wahrscheinlich nie' : roundNumber(middle)}; frühestens ${roundNumber(soonest)}, ${atLatest(latest, roundNumber)}.`,

    fits: 'Wie große Serie in die Stunden passt',
    fitsLead: 'Eine neue Serie vom ersten Schritt an, aus denselben Ausführungen im selben Verhältnis.',
    fitsMeans:
      'Minuten der Arbeitszeit für ein gutes Stück, nach dem, was von Zeiten, Wahrscheinlichkeiten und Tempo bekannt ist: Die Arbeit an verlorenen und an zurückgegebenen Stücken ist darin. Warten aufs Aushärten ist es nicht.',
    weekHours: 'Stunden pro Woche',
    weeks: 'Wochen',
    badNumber: 'Eine Zahl über 0.',
    eachTakes: (low, middle, high) =>
      `Ein gutes Stück braucht ${roundNumber(middle)} Minuten deiner Stunden; neun von zehn Malen ${roundNumber(low)} bis ${roundNumber(high)}.`,
    fit: (low, middle, high) =>
      `${pieces(middle)} ${middle === 1 ? 'passt' : 'passen'}; neun von zehn Malen ${wholeNumber(low)} bis ${wholeNumber(high)}.`,
  },

  cautionRules: { first: whatRules },

  whereWords: {
    waiting: 'Wartet',
    held: 'Härtet aus',
    finished: 'Fertig',
    scrapped: 'Ausschuss',
  },

  woodCareWords: {
    does: 'Was es dir antut',
    doesNotSaid:
      'Das hat noch niemand gesagt. Minuten Staub und Warnungen an der Werkbank stützen sich darauf.',
    doesHint: 'Minuten Staub und Warnungen an der Werkbank stützen sich darauf.',
    doings: {
      dust: 'Holzstaub',
      turns: 'Dreht auf der Drechselbank',
      fumes: 'Dämpfe',
      flat: 'Macht eine Abflachung',
    },
    doingDetails: {
      dust: 'seine Minuten zählen als Staub',
      turns: 'vor einem Stück mit Abflachung wird gewarnt',
      fumes: 'Anstrich, Lösemittel, ölige Lappen',
      flat: 'ab hier wird es nie mehr gedreht',
    },
    mm: 'mm',
    fitDiameter: 'Durchmesser, auf den es kommt',
    fitDiameterHint:
      'Des Holzes darunter. Mit Messungen der Holzfeuchte ergibt er den Spalt, der zu erwarten ist.',
    badFit: 'Ein Durchmesser ist eine Zahl in mm zwischen 1 und 300, etwa 12,5.',

    reactions: 'Deine eigenen Reaktionen',
    reactionsLead: 'Eine Reaktion kennzeichnet dieses Holz für immer, auf jedem Tablet der Werkstatt.',
    noReactions: 'Keine notiert.',
    reaction: 'Was es tat',
    reactionHint: 'Etwa: Ausschlag an beiden Handgelenken nach einer Stunde Schleifen.',
    addReaction: 'Notieren',
    withdraw: 'Zurückziehen',
    withdrawn: (day) => `zurückgezogen ${dayName(day)}`,
    reactionsFull: 'Mehr passen hier nicht hin. Schreib weitere in die Warnung.',
    reactionOf: (day, note) => `${dayName(day)}: ${note}`,
    emptyReaction: 'Sag, was es tat.',
    seeDoctor: `Geh wegen einer Reaktion zum Arzt: Die nächste kann schlimmer sein. ${whatRules}`,

    machines: 'Maschinen',
    machinesLead: 'Was in der Werkstatt steht, wie lange es laufen darf und wie schnell.',
    addMachine: 'Maschine anlegen',
    editMachine: 'Eine Maschine',
    machineStages: 'Daran gearbeitet',
    machineStagesHint: 'Ihre Minuten werden bei diesen Schritten gezählt, auf diesem Tablet.',
    rests: 'Braucht sie Ruhe?',
    restsNo: 'Nein',
    restsYes: 'Ja, eine Einschaltdauer',
    minutesOn: 'Minuten an',
    minutesOff: 'Minuten aus',
    badDuty: 'Minuten sind eine ganze Zahl von 1 bis 1.440.',
    mostTurns: 'Höchste Drehzahl pro Minute',
    mostTurnsHint: 'Der Maschine oder ihres Futters, was kleiner ist.',
    badTurns: 'Umdrehungen sind eine ganze Zahl von 1 bis 99.999.',
    dutyOf: (on, off) => `${wholeNumber(on)} min an, ${wholeNumber(off)} min aus`,
    turnsOf: (value) => `höchstens ${wholeNumber(value)} Umdrehungen pro Minute`,
    noLimit: 'keine Grenze notiert',
    restDue: (machine, minutes, left) =>
      `${machine}: ${wholeNumber(minutes)} min an, lass sie ${wholeNumber(left)} min ruhen`,
  },

  woodMarkWords: { reacted: 'du hast reagiert' },

  yesNo: { yes: 'Ja', no: 'Nein' },

  yieldWords: {
    title: 'Ausbeute',
    lead: 'Wo jedes Stück ist und was aus jedem Holz herauskommt.',
    flow: 'Wo alles ist',
    flowLead: 'Den Ablauf entlang, Schritt für Schritt. Tippe ein Holz an, um seine Kästen zu sehen.',
    flowMeans:
      'Jede Zahl sind die Stücke, die jetzt bei diesem Schritt warten oder aushärten; sie stauen sich vor dem, was am langsamsten ist.',
    asTable: 'Dasselbe als Tabelle',
    nothing: 'nichts hier',
    curing: (n) => (n === 1 ? '1 härtet' : `${wholeNumber(n)} härten`),
    stranded: 'in keinem Ablauf mehr',
    strandedTitle: 'Einige Stücke stehen bei einem Schritt, den kein Ablauf hat',
    strandedHelp: 'Setze den Schritt wieder in den Ablauf oder bewege die Stücke.',
    toRoute: 'Ablauf öffnen',
    partName: (n, wood, stage) => `${n} aus ${wood} bei ${stage}`,
    traysHere: (wood, stage) => `${wood} bei ${stage}`,
    traysClose: 'Schließen',
    noTraysHere: 'Kein Kasten dieses Holzes ist jetzt hier.',
    empty: 'Noch nichts gemacht',
    emptyHelp: 'Die Ausbeute füllt sich von selbst, wenn Stücke abgetippt werden.',
    toTrays: 'Kästen anlegen',
    stage: 'Schritt',
    wood: 'Holz',
    total: 'Alle',
    woods: 'Was aus jedem Holz herauskommt',
    woodsMeans:
      'Was bisher aus allen Stücken eines Holzes geworden ist: Was noch in Arbeit ist, kann noch verloren gehen, und Wahrscheinlichkeiten sagt, wie viele davon wohl herauskommen.',
    made: 'Angefangen',
    corrected: 'Nachgezählt',
    inFlight: 'In Arbeit',
    firsts: 'Erste Wahl',
    seconds: 'Zweite Wahl',
    scrapped: 'Ausschuss',
    rolled: 'Ganz ohne Fehler durch',
    addsUp: (made, corrected) =>
      corrected === 0
        ? `${wholeNumber(made)} angefangen = in Arbeit + erste Wahl + zweite Wahl + Ausschuss`
        : `${wholeNumber(made)} angefangen ${corrected > 0 ? '+' : '−'} ${wholeNumber(Math.abs(corrected))} durch Nachzählen = in Arbeit + erste Wahl + zweite Wahl + Ausschuss`,
    rolledMeans:
      'Die Wahrscheinlichkeit, dass ein Stück ohne Fehler durch alle bisher beurteilten Schritte geht: deren Ausbeuten beim ersten Mal, miteinander malgenommen.',
    rolledOf: (factors) => `= ${factors}`,
    stagesOf: (wood) => `${wood}: beim ersten Besuch gut, schlechtester Schritt zuerst`,
    firstPass: 'Ausbeute beim ersten Mal',
    firstPassMeans:
      'Von den Stücken, deren erster Besuch bei dem Schritt zu Ende ist, die, die ihn gut verließen. Ein Stück, das wiederkommt, zählt nur einmal.',
    outOf: (out, of) => `${wholeNumber(out)} von ${wholeNumber(of)}`,
    repeats: (n) => (n === 1 ? '1 kam wieder' : `${wholeNumber(n)} kamen wieder`),
    notYet: 'noch nicht bekannt',
    flaws: 'Fehler nach Grund',
    flawsLead: 'Stücke mit jedem Grund. Ein Stück mit zwei Gründen steht unter beiden.',
    flawsMeans:
      'Das sind Zahlen und keine Anteile: Ein Holz, aus dem viel gemacht wird, hat von allem mehr. Die Seite Fehler hat die Anteile.',
    noFlaws: 'Kein Fehler wurde getippt.',
    reason: 'Grund',
    flawsBehind: (reason) => `${reason}: wo, und was daraus wurde`,
    outcome: 'Was daraus wurde',
    pieces: 'Stück',
  },
  namesOfData: {
    starting: (english) => starting[english] ?? english,
    labelSize: (english) => sizes.reduce((name, [from, to]) => name.replace(from, to), english),
    wood: (id, english) => woods[id] ?? english,
  },
};

/** German. */
export const inGerman: Translate = (name, english) => texts[name as keyof Language] ?? english;
