/** Marks around a copy that is carried as text, in the manner of RFC 7468 (textual encodings of files). */
const begin = '-----BEGIN TALLYWRIGHT COPY-----';
const end = '-----END TALLYWRIGHT COPY-----';
/** Signs in a line: what RFC 7468 asks of one who writes. */
const lineLength = 64;
/** Bytes turned into signs at a time; a multiple of three, so that the pieces join. */
const piece = 0x3000;

/** A file as text that can be copied, mailed and pasted. */
export function textOfCopy(bytes: Uint8Array): string {
  let signs = '';
  for (let at = 0; at < bytes.length; at += piece)
    signs += btoa(String.fromCharCode(...bytes.subarray(at, at + piece)));
  return `${begin}\n${signs.replace(new RegExp(`.{${lineLength}}`, 'g'), '$&\n').trimEnd()}\n${end}\n`;
}

/**
 * The file in a text; undefined when the text holds none. Blanks, broken lines and the marks that mail puts before
 * quoted lines do no harm; what is missing at the end is missing from the file.
 */
export function copyInText(text: string): Uint8Array | undefined {
  const from = text.indexOf(begin);
  if (from < 0) return undefined;
  const [body = ''] = text.slice(from + begin.length).split('-----', 1);
  const signs = body.replace(/[^A-Za-z0-9+/]/g, '');
  return bytesOf(signs.slice(0, signs.length - (signs.length % 4 === 1 ? 1 : 0)));
}

function bytesOf(signs: string): Uint8Array {
  return Uint8Array.from(atob(signs), (sign) => sign.charCodeAt(0));
}

/** Of a text file that holds a copy so much is looked at to see that it does. */
const longestHead = 1000;

/** The file in a text file that holds one; the file itself when it holds none. */
export async function unwrapped(file: Blob): Promise<Blob> {
  const head = await file.slice(0, longestHead).text();
  const bytes = head.includes(begin) ? copyInText(await file.text()) : undefined;
  return bytes ? new Blob([Uint8Array.from(bytes)]) : file;
}
