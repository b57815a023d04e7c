import type { Entry } from '../../domain/log/chain.ts';
import { entryLine, readJournalLine } from '../../domain/log/journal-line.ts';
import type { PackedRun, RunHead } from '../../domain/packed/packed-run.ts';
import { lastOf } from '../../domain/packed/stretch.ts';
import { type Contents, forgetRun } from './contents.ts';
import type { Folder } from './folder.ts';
import type { Placed } from './placed.ts';
import { soundRun } from './sound-lines.ts';
import { textOf } from './whole-lines.ts';

/** A run with its entries, each link of them summed up anew. */
interface OpenedRun {
  readonly run: PackedRun;
  readonly entries: readonly Entry[];
}

interface OpenerParts {
  /** What is known of the journal now. */
  readonly contents: () => Contents;
  /** Called now and then during long work. */
  readonly alive: () => void;
}

export interface Opener {
  /** The entries of a run; rejects when it is not there, or no longer sound. */
  readonly open: (head: RunHead) => Promise<readonly Entry[]>;
  /** The run of this head; undefined as above. */
  readonly run: (head: RunHead) => Promise<PackedRun | undefined>;
  /** The line of one entry, wherever it lies; undefined when it is nowhere, or no longer sound. */
  readonly text: (head: RunHead) => Promise<string | undefined>;
}

/**
 * Opens what the journal holds. A run that turns out not to be what its head says is forgotten: the journal then reports
 * itself short of it. Rejects where a file cannot be read: another window may have folded it.
 */
export function opener(folder: Folder, { contents, alive }: OpenerParts): Opener {
  let last: { placed: Placed; opened: OpenedRun } | undefined;

  async function openPlaced(placed: Placed): Promise<OpenedRun | undefined> {
    if (last?.placed === placed) return last.opened;
    const known = contents();
    const opened = soundRun(textOf(await folder.read(placed.file, placed)), alive);
    if (opened && isSame(opened.run, placed.head)) {
      last = { placed, opened };
      return opened;
    }
    forgetRun(known, placed);
    return undefined;
  }

  async function openFirst(isWanted: (head: RunHead) => boolean): Promise<OpenedRun | undefined> {
    for (const placed of contents().runs) {
      const opened = isWanted(placed.head) ? await openPlaced(placed) : undefined;
      if (opened) return opened;
    }
    return undefined;
  }

  const withHead = (head: RunHead) => openFirst((other) => isSame(other, head));

  async function insideText({ station, first, link }: RunHead): Promise<string | undefined> {
    for (const placed of contents().runs) {
      const { head } = placed;
      if (head.station !== station || first < head.first || first > lastOf(head)) continue;
      const entry = (await openPlaced(placed))?.entries[first - head.first];
      if (entry?.link === link) return entryLine(entry);
    }
    return undefined;
  }

  return {
    async open(head) {
      const opened = await withHead(head);
      if (!opened) throw new Error('a run of the journal is not there');
      return opened.entries;
    },
    run: async (head) => (await withHead(head))?.run,
    async text(head) {
      const young = contents().young.get(head.link);
      if (!young) return insideText(head);
      const text = textOf(await folder.read(young.file, young));
      const said = readJournalLine(text);
      return said.kind === 'entry' && said.link === head.link ? text : undefined;
    },
  };
}

function isSame(a: RunHead, b: RunHead): boolean {
  return a.link === b.link && a.entries === b.entries && a.prev === b.prev && a.sum === b.sum;
}
