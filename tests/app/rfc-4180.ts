/**
 * Reads CSV by the grammar of RFC 4180, section 2, and by nothing else:
 *
 *     file = record *(CRLF record) [CRLF]      record = field *(COMMA field)      field = escaped / non-escaped
 *     escaped = DQUOTE *(TEXTDATA / COMMA / CR / LF / 2DQUOTE) DQUOTE             non-escaped = *TEXTDATA
 *
 * TEXTDATA is taken as any character but quote, comma, CR and LF, for the grammar of 2005 knew ASCII only. Throws for
 * what is no CSV.
 */
export function parsedByRfc4180(text: string): readonly (readonly string[])[] {
  const field = /"((?:[^"]|"")*)"|([^",\r\n]*)/y;
  const records: string[][] = [];
  let at = 0;
  while (at < text.length) {
    const record: string[] = [];
    do {
      if (record.length > 0) at += 1;
      field.lastIndex = at;
      const [whole = '', escaped, plain = ''] = field.exec(text) ?? [];
      record.push(escaped?.replaceAll('""', '"') ?? plain);
      at += whole.length;
    } while (text[at] === ',');
    if (at < text.length && !text.startsWith('\r\n', at)) throw new SyntaxError(`no CSV at ${at}`);
    at += 2;
    records.push(record);
  }
  return records;
}
