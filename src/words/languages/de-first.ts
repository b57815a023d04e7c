import type { LanguageTools } from '../language.ts';
import type { Language } from './texts.ts';

type First =
  | 'bannerWords'
  | 'batchChanceWords'
  | 'benchActWords'
  | 'benchWords'
  | 'booksWords'
  | 'boxWords'
  | 'calendarWords'
  | 'cameraTroubleWords'
  | 'cardWords'
  | 'cautionWords'
  | 'chancesWords'
  | 'clockWords'
  | 'columnWords'
  | 'compareWords'
  | 'constraintWords'
  | 'copyAgeWords'
  | 'costWords'
  | 'countReasonWords'
  | 'criterionWords'
  | 'cureWords'
  | 'curingWords'
  | 'dayWords'
  | 'dustLimits'
  | 'dustWords'
  | 'effectWords'
  | 'eventSentences'
  | 'filesWords'
  | 'flawsWords'
  | 'flowWords'
  | 'forecastWords'
  | 'forgetsWords'
  | 'gradeWords'
  | 'gradesWords'
  | 'grainWords'
  | 'heapWords'
  | 'historyWords'
  | 'holdSetUpWords'
  | 'keepPlanWords'
  | 'keyWords'
  | 'kindWords'
  | 'labelWords'
  | 'labelledWords'
  | 'letterWords'
  | 'listingFileNames'
  | 'listingWords'
  | 'lockWords'
  | 'mixWords'
  | 'moistureWords'
  | 'notSavedWords'
  | 'notifyWords'
  | 'numberProblemWords'
  | 'oneOfGrade'
  | 'outcomeInSentence'
  | 'outcomeWords'
  | 'partsSentences';

/** The German texts of the names from bannerWords to partsSentences. */
export const germanFirst = (tools: LanguageTools): Pick<Language, First> => {
  const {
    about,
    dayWords,
    durationIn,
    fixedNumber,
    momentWords,
    money,
    roundNumber,
    share,
    shortDayWords,
    wholeNumber,
  } = tools;

  const pieces = (n: number) => `${wholeNumber(n)} Stück`;
  const entries = (n: number) => (n === 1 ? '1 Eintrag' : `${wholeNumber(n)} Einträge`);
  const photos = (n: number) => (n === 1 ? '1 Foto' : `${wholeNumber(n)} Fotos`);
  const between = ([low, high]: readonly [low: number, high: number]) =>
    `${wholeNumber(100 * low)} bis ${about(high)}`;

  const duration = (ms: number) =>
    durationIn(
      {
        minutes: (n) => `${n} min`,
        hours: (n) => `${n} h`,
        days: (n) => (n === 1 ? '1 Tag' : `${n} Tage`),
      },
      ms,
    );

  /** Time at work: a day of it is no day of the calendar, so hours stay hours; a little is more than none. */
  const workTime = (minutes: number) => {
    if (minutes > 0 && minutes < 1) return `${wholeNumber(Math.ceil(60 * minutes))} s`;
    return minutes < 24 * 60 ? duration(60_000 * minutes) : `${wholeNumber(minutes / 60)} h`;
  };

  const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

  /** A difference of shares as more or fewer pieces in a hundred. */
  const moreOrFewer = (value: number) => {
    const whole = Math.round(100 * value);
    if (whole === 0) return 'gleich viele';
    return `${wholeNumber(Math.abs(whole))} von 100 ${value > 0 ? 'mehr' : 'weniger'}`;
  };

  /** The ends of an interval of differences, in pieces of a hundred. */
  const likely = ([low, high]: readonly [number, number]) => {
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

  /** As whatRules has it. */
  const whatRules =
    'Örtliche Vorschriften, Sicherheitsdatenblätter und der Rat von Fachleuten mit Zulassung gehen vor.';

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

  return {
    bannerWords: {
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
        value === undefined ? 'noch nicht bekannt' : `${moreOrFewer(value)} (${likely(interval)})`,
      verdict: ({ value, interval: [low, high], a, b }) => {
        if (value === undefined)
          return 'Nur eins von beiden hat Stücke: Es lässt sich noch nicht vergleichen.';
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
      dueOn: (batch, day) => `${batch}: ${day === null ? 'kein Termin' : dayWords(day)}`,

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
      passesHint:
        'Für Prüfungen: dein eigener Maßstab, in wenigen Worten. Er steht auf dem Knopf der Prüfung.',
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
      handedOver: (name) =>
        `${name} wurde übergeben. Sieh einmal nach, ob sie da ist, wo du sie haben willst.`,
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
        guarded:
          'Die älteren Sicherungen enthalten mehr als das Protokoll: Sie wurden gelassen, wie sie sind.',
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
      pasteNothing:
        'Dieser Text enthält keine Sicherung. Sie beginnt mit einer Zeile BEGIN TALLYWRIGHT COPY.',
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
      date: (day) => dayWords(day),
      beyond: 'nicht in zwei Jahren',
      enough: (day) => `Alles Gewünschte ist mit halber Wahrscheinlichkeit da bis ${dayWords(day)}.`,
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
          done === null ? 'kein Tag in zwei Jahren' : `fertig bis ${dayWords(done)}`,
        ].join(' · '),
      kept: (day, sentence) => `Behalten am ${dayWords(day)}: ${sentence}.`,
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
    labelledWords: (labelled) => {
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
        n === 1
          ? '1 Foto ist nicht auf diesem Tablet'
          : `${wholeNumber(n)} Fotos sind nicht auf diesem Tablet`,
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
      cannot:
        'Die PIN lässt sich hier nicht prüfen. Öffne Tallywright über https oder auf dem Tablet selbst.',

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
    numberProblemWords: (problem) => {
      switch (problem.kind) {
        case 'missing':
          return 'Trage eine Zahl ein.';
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
  };
};
