/** A disk of a few megabytes in memory, which can be filled and freed. Mounting one takes root and Linux. */
import { execFileSync, spawnSync } from 'node:child_process';
import { closeSync, mkdirSync, openSync, rmSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';

const megabytes = 64;

export interface SmallDisk {
  /** Writes until not one byte more finds room. */
  readonly fill: () => void;
  readonly free: () => void;
  readonly remove: () => void;
}

function mount(folder: string): boolean {
  mkdirSync(folder, { recursive: true });
  const { status } = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder]);
  return status === 0;
}

const unmount = (folder: string) => execFileSync('umount', ['--lazy', folder]);

/** Mounts a small disk as a folder of this run. @throws {Error} where none can be mounted */
export function smallDisk(name: string): SmallDisk {
  const folder = join(inject('chaosFolder'), name);
  if (!mount(folder)) throw new Error('A small disk cannot be mounted here: run as root on Linux.');
  const filler = join(folder, 'filler');
  return {
    fill() {
      const file = openSync(filler, 'w');
      try {
        for (let size = 2 ** 20; size >= 1; size = Math.floor(size / 2)) {
          const block = Buffer.alloc(size);
          while (wrote(file, block));
        }
      } finally {
        closeSync(file);
      }
    },
    free: () => rmSync(filler, { force: true }),
    remove() {
      unmount(folder);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function wrote(file: number, block: Buffer): boolean {
  try {
    return writeSync(file, block) === block.length;
  } catch {
    return false;
  }
}

/** Whether a small disk can be had here. */
export const canMount = ((): boolean => {
  if (process.platform !== 'linux') return false;
  const folder = join(inject('chaosFolder'), 'try-mount');
  const can = mount(folder);
  if (can) unmount(folder);
  return can;
})();
