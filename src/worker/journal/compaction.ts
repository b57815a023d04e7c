import type { Folder, OpenFile } from './folder.ts';
import { openJournal } from './journal.ts';

/** So many segments are read as they are; a start that finds more makes one of them. */
export const mostSegments = 8;

interface Held {
  readonly name: string;
  readonly file: OpenFile;
}

/**
 * Makes one segment of those that no window holds open. The new one is flushed and read back before an old one goes; a
 * segment with something that cannot be read is set aside under another name, never removed.
 */
export async function compact(folder: Folder, newName: () => string): Promise<void> {
  const names = (await folder.names()).filter((name) => name.startsWith('journal-'));
  if (names.length <= mostSegments) return;
  const held: Held[] = [];
  try {
    for (const name of names) {
      const file = await folder.open(name).catch(() => undefined);
      if (file) held.push({ name, file });
    }
    if (held.length > mostSegments && (await copyInto(`journal-${newName()}`, { folder, held }))) {
      for (const one of held) await letGo(folder, one);
    }
  } finally {
    for (const { file } of held) file.close();
  }
}

/** Whether all that the held segments say was written to a new one and read back. */
async function copyInto(
  made: string,
  { folder, held }: { folder: Folder; held: readonly Held[] },
): Promise<boolean> {
  const names = held.map(({ name }) => name);
  const old = openJournal(only(folder, names), noName);
  const { holding, unsettled } = await old.look();
  const next = openJournal({ ...only(folder, [made]), open: () => folder.open(made) }, noName);
  await next.add(await old.lines(old.links()));
  for (const json of unsettled) await next.keepAct(json);
  next.close();
  const found = await openJournal(only(folder, [made]), noName).look();
  return (
    found.holding.sum === holding.sum &&
    found.holding.entries === holding.entries &&
    found.unreadable === 0 &&
    unsettled.every((json) => found.unsettled.includes(json))
  );
}

async function letGo(folder: Folder, { name, file }: Held): Promise<void> {
  const journal = openJournal(only(folder, [name]), noName);
  const { unreadable } = await journal.look();
  const isWhole = unreadable === 0 && journal.wholeTo(name) === file.size();
  file.close();
  if (isWhole) await folder.remove(name);
  else await folder.rename(name, `aside-${name}`);
}

const noName = () => 'none';

/** The same folder, as if it held these files alone. */
function only(folder: Folder, names: readonly string[]): Folder {
  return { ...folder, names: async () => names };
}
