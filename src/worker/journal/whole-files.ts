import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { Folder } from './folder.ts';

/** So many bytes are read or written at a time. */
const stretch = 1 << 22;

export interface WholeFiles {
  readonly names: () => Promise<readonly string[]>;
  readonly read: (name: string) => Promise<Uint8Array<ArrayBuffer> | undefined>;
  readonly write: (name: string, bytes: Uint8Array) => Promise<void>;
  readonly remove: (name: string) => Promise<void>;
}

/**
 * Whole files in a folder. A file is first written under another name that carries its check: `x.<check>.part`. A part
 * that is left over from a crash and fits its check is the newest of its name, and takes its place; another is torn.
 */
export function wholeFiles(folder: Folder, alive: () => void): WholeFiles {
  async function sizeOf(name: string): Promise<number | undefined> {
    return (await folder.list()).find((file) => file.name === name)?.size;
  }

  async function read(name: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
    const size = await sizeOf(name);
    if (size === undefined) return undefined;
    const whole = new Uint8Array(size);
    for (let at = 0; at < size; at += stretch) {
      whole.set(await folder.read(name, { from: at, to: Math.min(at + stretch, size) }), at);
      alive();
    }
    return whole;
  }

  async function has(name: string, check: string): Promise<boolean> {
    const bytes = await read(name);
    return bytes !== undefined && checkOf(bytes) === check;
  }

  /** Ends what a crash has broken off. */
  async function finishParts(): Promise<void> {
    for (const { name: part } of await folder.list()) {
      const [, name, check] = partForm.exec(part) ?? [];
      if (name === undefined || check === undefined) continue;
      const held = await folder.hold(part);
      held?.release();
      if (!held) continue;
      if (await has(part, check)) await replace({ part, name, check });
      else await folder.remove(part);
    }
  }

  async function replace({ part, name, check }: { part: string; name: string; check: string }) {
    try {
      await folder.rename(part, name);
    } catch (error) {
      // Another window may have ended the same work at the same moment.
      if (!(await has(name, check)) || (await sizeOf(part)) !== undefined) throw error;
    }
  }

  async function writePart(part: string, bytes: Uint8Array): Promise<void> {
    const file = await folder.create(part);
    try {
      for (let at = 0; at < bytes.length; at += stretch) {
        await file.append(bytes.slice(at, at + stretch));
        alive();
      }
    } finally {
      file.release();
    }
  }

  return {
    async names() {
      await finishParts();
      return (await folder.list()).map(({ name }) => name).filter((name) => !name.endsWith('.part'));
    },
    async read(name) {
      await finishParts();
      return read(name);
    },
    async write(name, bytes) {
      await finishParts();
      const check = checkOf(bytes);
      const part = `${name}.${check}.part`;
      await writePart(part, bytes);
      if (!(await has(part, check))) throw new Error('a file is not what was written');
      await replace({ part, name, check });
    },
    async remove(name) {
      await finishParts();
      if ((await sizeOf(name)) !== undefined) await folder.remove(name);
    },
  };
}

const partForm = /^(.+)[.]([0-9a-f]{16})[.]part$/;

function checkOf(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes).subarray(0, 8));
}
