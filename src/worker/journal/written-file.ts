import { emptyHolding, type Holding, isSameHolding, joined, withLink } from '../../domain/log/holding.ts';
import { actLine, settledLine } from '../../domain/log/journal-line.ts';
import type { Parcel } from '../../domain/packed/parcel.ts';
import type { Folder } from './folder.ts';
import { packedBytes, readIndex } from './packed-file.ts';
import { soundLines } from './sound-lines.ts';

interface NewFile {
  readonly name: string;
  /** None of its entries is in it twice. */
  readonly parcel: Parcel;
  /** Lines about acts. */
  readonly notes?: readonly string[];
  readonly alive: () => void;
}

/**
 * Writes a file whole, flushes it and reads it back, every link in it summed up anew. When it does not say what it
 * should, the promise rejects and the file is taken away, if the folder lets it go.
 */
export async function writeFile(folder: Folder, { name, parcel, notes = [], alive }: NewFile): Promise<void> {
  const file = await folder.create(name);
  try {
    try {
      const bytes = packedBytes(parcel, notes);
      alive();
      await file.append(bytes);
    } finally {
      file.release();
    }
    alive();
    await mustSayTheSame(folder, { name, parcel, notes, alive });
  } catch (error) {
    await folder.remove(name).catch(() => undefined);
    throw error;
  }
}

async function mustSayTheSame(
  folder: Folder,
  { name, parcel, notes, alive }: Required<NewFile>,
): Promise<void> {
  const size = (await folder.list()).find((file) => file.name === name)?.size ?? 0;
  let holding = emptyHolding;
  const found: string[] = [];
  for await (const said of soundLines(folder, { name, size, alive })) {
    if (said.kind === 'entries') for (const { link } of said.entries) holding = withLink(holding, link);
    else if (said.kind === 'act') found.push(actLine(said.json));
    else if (said.kind === 'settled') found.push(settledLine(said.act));
    else if (said.kind === 'unreadable') throw new Error('a new file has a line that says nothing');
  }
  const index = parcel.runs.length > 0 ? await readIndex(folder, { name, to: size }) : undefined;
  const same =
    isSameHolding(holding, holdingOfParcel(parcel)) &&
    (index?.runs.length ?? 0) === parcel.runs.length &&
    found.join() === notes.join();
  if (!same) throw new Error('a new file does not say what was written');
}

function holdingOfParcel({ runs, entries }: Parcel): Holding {
  const packed = runs.reduce(joined, emptyHolding);
  return entries.reduce((holding, { link }) => withLink(holding, link), packed);
}
