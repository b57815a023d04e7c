import type { Entry, Link } from '../../src/domain/log/chain.ts';
import { entryLine } from '../../src/domain/log/journal-line.ts';
import { entriesIn, type Parcel } from '../../src/domain/packed/parcel.ts';
import type { Twin } from '../../src/store/twin.ts';
import type { Journal } from '../../src/worker/journal/journal.ts';

export const loose = (entries: readonly Entry[]): Parcel => ({ runs: [], entries });

/** All that a copy has, one by one. */
export async function entriesOfTwin({
  heads,
  parcel,
}: Pick<Twin, 'heads' | 'parcel'>): Promise<readonly Entry[]> {
  return entriesIn(await parcel(await heads()));
}

export async function linksOfTwin(twin: Pick<Twin, 'heads' | 'parcel'>): Promise<readonly Link[]> {
  return (await entriesOfTwin(twin)).map(({ link }) => link);
}

/** Those of these links that it has, in their order. */
export async function entriesWith(twin: Pick<Twin, 'heads' | 'parcel'>, links: readonly Link[]) {
  const there = new Map((await entriesOfTwin(twin)).map((entry) => [entry.link, entry]));
  return links.flatMap((link) => there.get(link) ?? []);
}

/** The lines of all entries of a journal, one by one. */
export async function textsOfJournal({ heads, parcel }: Journal): Promise<readonly string[]> {
  const { runs, texts } = await parcel(await heads());
  return [...texts, ...entriesIn({ runs, entries: [] }).map(entryLine)];
}

export async function textsWith(journal: Journal, links: readonly Link[]): Promise<readonly string[]> {
  const there = new Map((await textsOfJournal(journal)).map((text) => [JSON.parse(text).link, text]));
  return links.flatMap((link) => there.get(link) ?? []);
}

export function linksOfTexts(texts: readonly string[]): readonly Link[] {
  return texts.map((text) => JSON.parse(text).link);
}
