import type { Link } from '../../domain/log/chain.ts';
import { emptyHolding, type Holding, withLink } from '../../domain/log/holding.ts';
import { actLine, readJournalLine, settledLine } from '../../domain/log/journal-line.ts';
import type { Folder } from './folder.ts';
import { segmentWriter } from './segment-writer.ts';

export interface JournalReport {
  readonly holding: Holding;
  readonly unreadable: number;
  /** The acts that are not settled, as JSON. */
  readonly unsettled: readonly string[];
}

/** An entry as its line. */
export interface LinkedLine {
  readonly link: Link;
  readonly line: string;
}

/** Where a line stands in a segment, in bytes. */
interface Spot {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

const segmentForm = /^journal-[a-z0-9-]+$/;
const decoder = new TextDecoder();
const encoder = new TextEncoder();

/** A journal of lines over the segments of a folder: each window adds to a segment of its own and reads all of them. */
export function openJournal(folder: Folder, newName: () => string) {
  const spots = new Map<Link, Spot>();
  const acts = new Map<string, string>();
  const settled = new Set<string>();
  const readTo = new Map<string, number>();
  const writer = segmentWriter(folder, () => `journal-${newName()}`);
  let holding = emptyHolding;
  let unreadable = 0;

  function take(text: string, spot: Spot): void {
    const line = readJournalLine(text);
    if (line.kind === 'unreadable') unreadable += 1;
    else if (line.kind === 'act') acts.set(line.act, line.json);
    else if (line.kind === 'settled') settled.add(line.act);
    else if (!spots.has(line.link)) {
      spots.set(line.link, spot);
      holding = withLink(holding, line.link);
    }
  }

  /** Reads the whole lines of `bytes`, which begin at `at`; returns where the first line that is not whole begins. */
  function takeLines(bytes: Uint8Array, { name, at }: { name: string; at: number }): number {
    let from = 0;
    for (let to = bytes.indexOf(10); to >= 0; to = bytes.indexOf(10, from)) {
      if (to > from) take(decoder.decode(bytes.subarray(from, to)), { name, from: at + from, to: at + to });
      from = to + 1;
    }
    return at + from;
  }

  function forget(): void {
    for (const known of [spots, acts, settled, readTo]) known.clear();
    holding = emptyHolding;
    unreadable = 0;
  }

  async function readOn(name: string): Promise<void> {
    const at = readTo.get(name) ?? 0;
    readTo.set(name, takeLines(await folder.read(name, at), { name, at }));
  }

  async function write(lines: readonly string[]): Promise<void> {
    const bytes = encoder.encode(lines.map((line) => `${line}\n`).join(''));
    const { name, at } = await writer.add(bytes);
    readTo.set(name, takeLines(bytes, { name, at }));
  }

  return {
    async look(): Promise<JournalReport> {
      const names = (await folder.names()).filter((name) => segmentForm.test(name));
      // Another window has made one segment of several: what is known of their places is no longer true.
      if ([...readTo.keys()].some((name) => !names.includes(name))) forget();
      for (const name of names) await readOn(name);
      const unsettled = [...acts].filter(([act]) => !settled.has(act)).map(([, json]) => json);
      return { holding, unreadable, unsettled };
    },
    async add(entries: readonly LinkedLine[]): Promise<void> {
      const fresh = entries.filter(({ link }) => !spots.has(link)).map(({ line }) => line);
      if (fresh.length > 0) await write(fresh);
    },
    keepAct: (json: string) => write([actLine(json)]),
    settleAct: (act: string) => write([settledLine(act)]),
    links: (): readonly Link[] => [...spots.keys()],
    /** The lines of entries with these links, those of one segment read in one go. */
    async lines(links: readonly Link[]): Promise<readonly LinkedLine[]> {
      const found: LinkedLine[] = [];
      const whole = new Map<string, Uint8Array>();
      for (const link of links) {
        const spot = spots.get(link);
        if (!spot) continue;
        const bytes = whole.get(spot.name) ?? (await folder.read(spot.name, 0));
        whole.set(spot.name, bytes);
        const text = decoder.decode(bytes.subarray(spot.from, spot.to));
        const line = readJournalLine(text);
        // The file may have changed since it was looked at.
        if (line.kind === 'entry' && line.link === link) found.push({ link, line: text });
      }
      return found;
    },
    /** How far (bytes) a segment consists of whole lines. */
    wholeTo: (name: string) => readTo.get(name) ?? 0,
    close: writer.close,
  };
}

export type Journal = ReturnType<typeof openJournal>;
