import type { LanguageTools } from '../language.ts';
import type { Language } from './texts.ts';

/** German, the texts from `peopleWords` to `problemWords` and on to the last; those before stand in `de-first.ts`. */
export const germanSecond = (tools: LanguageTools): Partial<Language> => {
  const {
    about,
    dayWords,
    durationIn,
    fixedNumber,
    money,
    nameOf,
    roundNumber,
    share,
    signedNumber,
    wholeNumber,
  } = tools;

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

  const gradesWords = { first: 'erste Wahl', second: 'zweite Wahl' } as const;
  const ofGrade = (n: number, grade: keyof typeof gradesWords) =>
    `${String(n).replace('-', '−')} ${gradesWords[grade]}`;

  const numberProblemWords: Language['numberProblemWords'] = (problem) => {
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

  const textProblemWords: Language['textProblemWords'] = (problem) =>
    problem.kind === 'empty'
      ? 'Gib einen Namen ein.'
      : `${problem.length} Zeichen: höchstens ${problem.most} passen.`;

  const placesTaken = (free: number) => {
    if (free === 0) return 'Alle Plätze sind belegt';
    return free === 1 ? 'Nur 1 Platz ist frei' : `Nur ${free} Plätze sind frei`;
  };

  const problemWords: Language['problemWords'] = (problem, registers) => {
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
        return `${problem.a.code} und ${problem.b.code} unterscheiden sich in Ausführung oder Serie und lassen sich nicht vereinen.`;
      case 'same-tray':
        return 'Wähle zum Vereinen einen anderen Kasten.';
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

  return {
    numberProblemWords,
    problemWords,
    textProblemWords,

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
        'Fotos gehen mit einer Sicherung, die du speicherst, außer du lässt sie weg; die Sicherungen auf diesem Tablet und im Ordner sind ohne Fotos. Hier sind sie auch eigene Dateien, die jeder Computer öffnet: Eine volle ändert sich nie mehr, also ist nur die letzte erneut zu sichern. Diese sind nicht verschlüsselt.',
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
      foot: (shop, day) => (shop ? `${shop}, ${dayWords(day)}` : dayWords(day)),
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
        if (left < 0) return `Termin war ${dayWords(day)}, vor ${dative(days(-left))}`;
        return left === 0
          ? `Termin heute, ${dayWords(day)}`
          : `Termin ${dayWords(day)}, in ${dative(days(left))}`;
      },
      noDue: 'Noch kein Termin',
      sure: (chance) => `zu ${wholeNumber(chance)} % genug`,
      variant: 'Ausführung',
      wanted: 'Gewünscht',
      firsts: 'Erste Wahl fertig',
      seconds: 'Zweite Wahl fertig',
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
      goods: 'Gewünschte gute',
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
        `Noch keine Zeit pro Stück ist bekannt bei ${stages}: Tippe dort Stück für Stück, dann wird sie es.`,

      file: 'Mit einer Tabelle',
      fileLead:
        'Sichere die Ziele als Tabelle, ändere sie in einer Tabellenkalkulation und lies sie wieder ein. Nichts wird geschrieben, bevor du gesehen hast, was sich ändern würde.',
      fileHelp:
        'Spalten sind Serie, Ausführung, gewünschte gute, Termin und Wahrscheinlichkeit. Termin und Wahrscheinlichkeit gehören zur Serie. Eine leere Zelle lässt, was da ist.',
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
        due: (from, to) => `Termin ${from ? dayWords(from) : 'nie'} → ${dayWords(to)}`,
        chance: (from, to) => `Wahrscheinlichkeit ${from} % → ${to} %`,
      },
      write: (n) => (n === 1 ? '1 Zeile schreiben' : `${wholeNumber(n)} Zeilen schreiben`),
      nothingToWrite: 'Nichts würde sich ändern.',
      leaveIt: 'Lassen',
      written: (n) =>
        n === 1 ? '1 Zeile wurde geschrieben.' : `${wholeNumber(n)} Zeilen wurden geschrieben.`,
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
          'NICHT GESICHERT steht auf dem Schirm, und der Tipp wird behalten. Nach so einem Fehler zählt ein Tipp erst, wenn beide Sicherungen ihn haben, bis ein Start den Speicher heil gefunden hat.',
        lost: 'Nichts, was beantwortet war. Sollte der Browser die ganze App leeren, um Platz zu schaffen, kommen die neuesten 300 Einträge aus ihrem kleinen Speicher zurück, die anderen aus einer Datei außerhalb; es wird gesagt, wie viele fehlen. Ein Browser, der zugesagt hat, die Aufzeichnungen zu behalten (gefragt, wenn eine Werkstatt begonnen wird), sollte das nicht tun.',
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

    restoredPhotos: ({ added, refused, left, damaged, elsewhere }) => {
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

    reviewWords: {
      batch: 'Serie',
      putAway: (batch) => `${batch} (weggelegt)`,
      print: 'Auf eine Seite drucken',
      printed: (batch, day) => `Rückblick auf ${batch}, ${dayWords(day)}`,
      atLeast: (text) => `mindestens ${text}`,
      notRecorded: 'kein Plan behalten',
      beyond: 'nicht binnen zwei Jahren',
      none: '–',
      notKnown: 'nicht bekannt',
      money,
      share,
      count: wholeNumber,
      time: workTime,
      day: dayWords,

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
        started: 'Angelegte Stücke',
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
          ? dayWords(last)
          : `${dayWords(last)}, ${days(Math.abs(late))} ${late > 0 ? 'zu spät' : 'zu früh'}`,
      noDue: 'kein Termin',

      losses: 'Die größten Verluste',
      lossesLead: {
        money: 'Die drei Ursachen, die am meisten Geld gekostet haben.',
        pieces:
          'Die drei Ursachen, die am meisten Stücke gekostet haben; wie viel Geld, ist noch nicht bekannt.',
      },
      lossesUnknown: (n) => `Weitere ${pieces(n)} gingen verloren, deren Geldwert nicht bekannt ist.`,
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
      visits: 'Durchgänge für eines',
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
      fitsUnknown: (stages) => `Nicht bekannt: Die Zeit ist noch nicht gemessen bei ${stages}.`,
      fitsNothing: 'Nicht bekannt: Die Serie braucht nichts, oder ihr Ablauf braucht keine Hände.',
      fitsMeans:
        'Stunden geteilt durch die Zeit, die ein Stück braucht, das herauskommt. Der Bereich ist der der mittleren Zeiten, wo genug Tipps bekannt sind; auch die Anteile haben einen Bereich, der nicht darin ist. Aushärten und Plätze können dich eher aufhalten als die Hände: siehe Engpass.',

      compare: 'Serien nebeneinander',
      compareLead:
        'Auch die weggelegten, der späteste Termin zuerst. Stunden für eines stehen da, sobald nichts mehr in Arbeit ist.',
      mostBatches: (n) => `Die ${wholeNumber(n)} letzten werden gezeigt.`,
      perGood: 'Kosten für eines',
      hoursEach: 'Stunden für eines',
      moreRows: (n) => `${wholeNumber(n)} weitere stehen auf dem Schirm.`,
    },

    sameCodeWords: {
      title: (trays, code) => `${trays} Kästen tragen ${code}`,
      which:
        'Zwei Tablets hatten denselben Buchstaben, bevor sie voneinander wussten. Welcher Kasten ist es?',
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
          : `Nimm die Lieferung mit höchstens ${accept === 1 ? '1 schlechten' : `${wholeNumber(accept)} schlechten`} an. Mit ${wholeNumber(accept + 1)} oder mehr gib sie zurück oder prüfe jedes.`,
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
      refusedAll:
        'Keine Zahl hat sich geändert. Die guten lassen sich verwenden; die schlechten zählst du ab.',
      countOut: (lot) => `Alle ${wholeNumber(lot)} abzählen`,
      countBadOut: (bad) => `${bad === 1 ? 'Das schlechte' : `Die ${wholeNumber(bad)} schlechten`} abzählen`,
      countOutDetail: 'Zeigt erst, was übrig wäre',
      leaveCounts: 'Zahlen lassen',
      never:
        'Wo Hände oder Augen von einem Teil abhängen, prüfe jedes: Eine Stichprobe lässt schlechte durch.',
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
        'Wird gezeigt, wo daran gearbeitet wird. Vorschriften, Datenblätter und Rat von Fachleuten mit Zulassung gelten.',
      tooLong: (length, most) => `${wholeNumber(length)} Zeichen: höchstens ${wholeNumber(most)} passen.`,
      optional: 'darf leer bleiben',
      fewer: 'Weniger',
      more: 'Mehr',
      up: 'Hinauf',
      down: 'Hinunter',
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
      salvagedTo: { 'to-clean': 'Erst zum Reinigen', shelf: 'Gleich zurück ins Lager' },

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
      takeOff: 'Herausnehmen',
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
      loosePartsLead:
        'Sie würden nicht als verbraucht gezählt. Wähle in der Ausführung einen anderen Schritt.',

      batches: 'Serien',
      batchesLead: 'Ein Durchgang mit dem, was bis wann gewünscht ist.',
      addBatch: 'Serie anlegen',
      editBatch: 'Eine Serie',
      wanted: 'Gewünschte gute',
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
      theme: 'Aussehen',
      themes: { light: 'Papier', dark: 'Nacht', glare: 'Lampe auf dem Glas' },
      side: 'Taste „Gut“',
      sides: { left: 'Links', right: 'Rechts' },
      sideHint: 'Der Schirm der Schritte spiegelt sich mit, damit die tippende Hand nichts verdeckt.',
      wholeScreen: 'Ganzer Schirm',
      leaveWholeScreen: 'Ganzen Schirm verlassen',
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
        `${key} muss frei bleiben: Eingabe- oder Leertaste muss Tasten auf dem Schirm drücken. Drücke eine andere.`,
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
      records: 'Aufzeichnungen',
      kept: 'Der Browser behält die Aufzeichnungen dieser Werkstatt, auch wenn der Platz knapp wird.',
      notKept: 'Der Browser darf die Aufzeichnungen wegwerfen, wenn der Platz knapp wird.',
      keptUnknown: 'Dieser Browser sagt nicht, ob er die Aufzeichnungen behält, wenn der Platz knapp wird.',
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
          text: 'Die Warnungen hier sind die üblichen (gängige Praxis). Deine örtlichen Vorschriften, die Sicherheitsdatenblätter und Rat von Fachleuten mit Zulassung gelten.',
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
      brokenTitle: 'Dieser Schirm lässt sich nicht zeigen',
      broken: 'Ein Fehler der App, nicht deiner Aufzeichnungen: Jeder Tipp, der gesichert wurde, ist da.',
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
  };
};
