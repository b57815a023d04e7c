import type { Folder, HeldFile } from './folder.ts';

interface Segment {
  readonly name: string;
  readonly file: HeldFile;
  /** Its acknowledged bytes. What stands beyond them was never said to be kept. */
  size: number;
}

export interface SegmentWriter {
  /** Adds whole lines; resolves when they are on the disk, with where they lie. */
  readonly append: (bytes: Uint8Array<ArrayBuffer>) => Promise<{ name: string; from: number; to: number }>;
  /** The acknowledged size of each segment that was written here. */
  readonly written: ReadonlyMap<string, number>;
  readonly release: () => void;
}

/** A name that is taken is passed over; a folder that refuses so many is broken. */
const mostNames = 3;

/**
 * Writes a segment of its own, which no other window touches. After a failed write or flush the segment is left as it
 * is, for nobody knows how much of the last write has reached the disk, and the next one begins a new segment.
 */
export function segmentWriter(folder: Folder, newName: () => string): SegmentWriter {
  const written = new Map<string, number>();
  let segment: Segment | undefined;

  async function begin(): Promise<Segment> {
    for (let tries = 1; ; tries += 1) {
      const name = newName();
      try {
        return { name, file: await folder.create(name), size: 0 };
      } catch (error) {
        if (tries === mostNames) throw error;
      }
    }
  }

  async function leave({ name, file, size }: Segment): Promise<void> {
    segment = undefined;
    file.release();
    // On a full disk every try would leave an empty file behind. One that cannot be removed says nothing wrong.
    if (size === 0) await folder.remove(name).catch(() => undefined);
  }

  return {
    written,
    async append(bytes) {
      const own = segment ?? (await begin());
      segment = own;
      const from = own.size;
      written.set(own.name, from);
      try {
        await own.file.append(bytes);
      } catch (error) {
        await leave(own);
        throw error;
      }
      own.size += bytes.length;
      written.set(own.name, own.size);
      return { name: own.name, from, to: own.size };
    },
    release() {
      segment?.file.release();
      segment = undefined;
    },
  };
}
