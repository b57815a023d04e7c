/** Counters without a name: words are numbered by a dictionary, and a counter is a cell of an array, found by arithmetic. */

type Word = string | null;

export interface Dictionary {
  /** In the order of their numbers. */
  readonly words: readonly Word[];
  /** So many words it can hold. */
  readonly room: number;
  /** The number of a word, a new one when it was never met. Throws when there is no room. */
  readonly number: (word: Word) => number;
}

export function dictionary(room: number): Dictionary {
  const words: Word[] = [];
  const numbers = new Map<Word, number>();
  function meet(word: Word): number {
    if (words.length === room) throw new Error(`no room for "${word}"`);
    numbers.set(word, words.length);
    return words.push(word) - 1;
  }
  return { words, room, number: (word) => numbers.get(word) ?? meet(word) };
}

/** A counter for each combination of words, those of the last dictionary side by side. */
export interface Table {
  readonly by: readonly Dictionary[];
  readonly cells: Float64Array;
}

export function table(...by: readonly Dictionary[]): Table {
  return { by, cells: new Float64Array(by.reduce((cells, { room }) => cells * room, 1)) };
}

export function addAt({ cells }: Table, { at, by }: { at: number; by: number }): void {
  cells[at] = (cells[at] ?? 0) + by;
}

/** The tables in an object, each with the names of the fields that it stands under: `.visits.first`. */
export function* tablesIn(part: object, fields = ''): Generator<readonly [fields: string, table: Table]> {
  if ('cells' in part) yield [fields, part as Table];
  else for (const [field, inner] of Object.entries(part)) yield* tablesIn(inner, `${fields}.${field}`);
}

/** The counters that are not 0, each with its words. */
export function* countersIn({ by, cells }: Table): Generator<readonly [words: readonly Word[], sum: number]> {
  for (const [at, sum] of cells.entries()) {
    if (sum === 0) continue;
    let rest = at;
    const words: Word[] = [];
    for (const dictionary of by.toReversed()) {
      words.unshift(dictionary.words[rest % dictionary.room] ?? null);
      rest = Math.floor(rest / dictionary.room);
    }
    yield [words, sum];
  }
}
