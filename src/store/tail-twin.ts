import * as v from 'valibot';
import { type Entry, linkText } from '../domain/log/chain.ts';
import { emptyHolding, holdingSchema, withLink } from '../domain/log/holding.ts';
import { readEntry } from '../domain/log/read-entry.ts';
import { readAct } from './kept-act.ts';
import type { Twin } from './twin.ts';

type Keeper = Pick<Storage, 'getItem' | 'setItem'>;

const schema = v.object({
  holding: holdingSchema,
  lines: v.array(v.object({ link: linkText, line: v.string() })),
  acts: v.array(v.string()),
});
type Tail = v.InferOutput<typeof schema>;
const nothing: Tail = { holding: emptyHolding, lines: [], acts: [] };

/** What a tail keeps at most: entries, and characters of them. A browser gives a site some 5 million. */
const mostEntries = 300;
const mostCharacters = 256_000;

/** Where there are no files: the newest entries in the small storage of the browser, and how many there were in all. */
export function tailTwin(storage: Keeper, name: string): Twin {
  const place = `${name} tail`;

  /** Read anew each time: other windows of the tablet write the same tail. */
  function read(): Tail {
    const text = storage.getItem(place);
    if (text === null) return nothing;
    try {
      return v.parse(schema, JSON.parse(text));
    } catch {
      return nothing;
    }
  }
  const write = (tail: Tail) => storage.setItem(place, JSON.stringify(tail));

  async function add(entries: readonly Entry[]): Promise<void> {
    const tail = read();
    const held = new Set(tail.lines.map(({ link }) => link));
    const fresh = entries.filter(({ link }) => !held.has(link));
    if (fresh.length === 0) return;
    let { holding } = tail;
    for (const { link } of fresh) holding = withLink(holding, link);
    const lines = [
      ...tail.lines,
      ...fresh.map(({ prev, link, event }) => ({ link, line: JSON.stringify({ prev, link, event }) })),
    ];
    write({ ...tail, holding, lines: newest(lines) });
  }

  return {
    async look() {
      const { holding, acts } = read();
      return { reach: 'tail', holding, unreadable: 0, unsettled: acts.flatMap(readAct) };
    },
    add,
    async keepAct(act) {
      const tail = read();
      const others = tail.acts.filter((json) => readAct(json)[0]?.act !== act.act);
      write({ ...tail, acts: [...others, JSON.stringify(act)] });
    },
    async settleAct(name) {
      const tail = read();
      write({ ...tail, acts: tail.acts.filter((json) => readAct(json)[0]?.act !== name) });
    },
    links: async () => read().lines.map(({ link }) => link),
    async entries(links) {
      const wanted = new Set(links);
      return read().lines.flatMap(({ link, line }) => {
        if (!wanted.has(link)) return [];
        const entry = readEntry(JSON.parse(line));
        return entry.kind === 'sound' ? [entry.entry] : [];
      });
    },
    close: () => undefined,
  };
}

function newest(lines: Tail['lines']): Tail['lines'] {
  const kept: Tail['lines'] = [];
  let characters = 0;
  for (const each of lines.slice(-mostEntries).reverse()) {
    characters += each.line.length;
    if (characters > mostCharacters) break;
    kept.unshift(each);
  }
  return kept;
}
