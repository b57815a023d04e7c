import type { Found } from './find.ts';

/** What the script of the rescue page says. */
export interface RescueWords {
  readonly reading: string;
  readonly found: (records: number) => string;
  readonly ofPlace: (found: Found) => string;
  readonly newest: (moment: number) => string;
  readonly saved: string;
  readonly shared: string;
  readonly notShared: string;
  readonly copied: string;
  readonly notCopied: string;
}

/** The rescue page shares nothing with the app, its words included. */
export const english: RescueWords = {
  reading: 'Reading what is on this tablet …',
  found: (records) =>
    records === 0
      ? 'Nothing of Tallywright was found on this tablet, in this browser, at this address.'
      : `${records === 1 ? '1 record' : `${records.toLocaleString('en-GB')} records`} found. Nothing was changed.`,
  ofPlace: ({ lines }) =>
    lines.length === 1 ? '1 record' : `${lines.length.toLocaleString('en-GB')} records`,
  newest: (moment) => `newest of ${new Date(moment).toLocaleString('en-GB')}`,
  saved:
    'The file was handed to the browser: look for it among the downloads, and move a copy to another device.',
  shared: 'The file was handed on.',
  notShared: 'It was not handed on. Try another way.',
  copied: 'Copied. Paste it into a message or a note.',
  notCopied: 'Copy it by hand: hold a finger on the text, then “Select all” and “Copy”.',
};

export const german: RescueWords = {
  reading: 'Es wird gelesen, was auf diesem Tablet ist …',
  found: (records) =>
    records === 0
      ? 'Auf diesem Tablet, in diesem Browser, unter dieser Adresse wurde nichts von Tallywright gefunden.'
      : `${records === 1 ? '1 Eintrag' : `${records.toLocaleString('de-DE')} Einträge`} gefunden. Nichts wurde geändert.`,
  ofPlace: ({ lines }) =>
    lines.length === 1 ? '1 Eintrag' : `${lines.length.toLocaleString('de-DE')} Einträge`,
  newest: (moment) => `neuester vom ${new Date(moment).toLocaleString('de-DE')}`,
  saved:
    'Die Datei ist dem Browser übergeben: Such sie unter den Downloads, und bring eine Kopie auf ein anderes Gerät.',
  shared: 'Die Datei ist weitergegeben.',
  notShared: 'Sie wurde nicht weitergegeben. Versuche einen anderen Weg.',
  copied: 'Kopiert. Füge es in eine Nachricht oder Notiz ein.',
  notCopied: 'Kopiere es von Hand: Finger auf den Text halten, dann „Alles auswählen“ und „Kopieren“.',
};

/** What stands on the page before its script has run, by `data-say`; in English it stands there already. */
export const germanPage: Readonly<Record<string, string>> = {
  title: 'Rettungsseite',
  about:
    'Diese Seite arbeitet ohne die App. Sie liest alles, was Tallywright in diesem Browser aufbewahrt, und legt es in eine Datei. Sie ändert nichts und schickt nichts fort.',
  take: 'Nimm es mit',
  download: 'Alles in eine Datei sichern',
  share: 'Die Datei weitergeben',
  show: 'Als Text zeigen',
  noDownload: 'Dieser Browser kann von hier keine Datei sichern: Lass es als Text zeigen, und kopiere den.',
  asText: 'Alles, als Text',
  copy: 'Kopieren',
  keep: 'Bewahre die Datei auf einem anderen Gerät auf, und ändere sie nicht. Sie enthält Namen, Notizen und Zahlen deiner Werkstatt als lesbaren Text.',
  unread: 'Was sich nicht lesen ließ',
  closeOthers:
    'Schließe alle anderen Fenster von Tallywright, und sieh noch einmal nach. Bleibt es so, starte das Tablet neu und sieh wieder nach. Lösche nicht die Daten dieser Website.',
  again: 'Noch einmal nachsehen',
  back: 'Zurück zu Tallywright',
};
