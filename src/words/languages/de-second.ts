import type { LanguageTools } from '../language.ts';
import type { Language } from './texts.ts';

/** German, the texts from `peopleWords` to `problemWords` and on to the last; those before stand in `de-first.ts`. */
export const germanSecond = (tools: LanguageTools): Partial<Language> => {
  const { dayWords, fixedNumber, nameOf, roundNumber, wholeNumber, durationIn } = tools;

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
  };
};
