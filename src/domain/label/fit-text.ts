/** Width of a text in em: a length of 1 is the size of its type. */
export type TextMeasure = (text: string) => number;

const graphemes = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/** A text in lines that are no wider than `width` em, broken at blanks; a word that is wider itself is broken within. */
export function wrapText(
  text: string,
  { width, measure }: { width: number; measure: TextMeasure },
): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').filter(Boolean)) {
    const last = lines.at(-1);
    const joined = last === undefined ? word : `${last} ${word}`;
    if (measure(joined) <= width) lines.splice(-1, 1, joined);
    else lines.push(...brokenWord(word, { width, measure }));
  }
  return lines;
}

function brokenWord(word: string, { width, measure }: { width: number; measure: TextMeasure }): string[] {
  const parts: string[] = [];
  for (const { segment } of graphemes.segment(word)) {
    const last = parts.at(-1);
    if (last !== undefined && measure(last + segment) <= width) parts.splice(-1, 1, last + segment);
    else parts.push(segment);
  }
  return parts;
}

/** The same lines, at most `most` of them: the last one then ends in an ellipsis, after whole words where it can. */
export function cutLines(
  lines: readonly string[],
  { most, width, measure }: { most: number; width: number; measure: TextMeasure },
): readonly string[] {
  if (lines.length <= most) return lines;
  const kept = lines.slice(0, most);
  const last = kept.at(-1);
  return last === undefined ? [] : kept.with(-1, withEllipsis(last, { width, measure }));
}

function withEllipsis(line: string, { width, measure }: { width: number; measure: TextMeasure }): string {
  const words = line.split(' ');
  while (words.length > 1 && measure(`${words.join(' ')} …`) > width) words.pop();
  const whole = `${words.join(' ')} …`;
  if (measure(whole) <= width) return whole;
  const signs = [...graphemes.segment(line)].map(({ segment }) => segment);
  while (signs.length > 0 && measure(`${signs.join('')}…`) > width) signs.pop();
  return `${signs.join('')}…`;
}
