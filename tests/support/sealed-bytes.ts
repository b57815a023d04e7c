/** Sealing and opening of files that a test has in memory. */
import { bytesOfBlob } from '../../src/store/backup/gathering.ts';
import * as opening from '../../src/store/backup/open-sealed.ts';
import * as sealing from '../../src/store/backup/seal-backup.ts';
import type { Secret } from '../../src/store/backup/sealing-keys.ts';

export interface SealedBytes {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly words: readonly string[];
}

export async function sealBackup(
  bytes: Uint8Array,
  how: Parameters<typeof sealing.sealBackup>[1],
): Promise<SealedBytes> {
  const { content, words } = await sealing.sealBackup(new Blob([Uint8Array.from(bytes)]), how);
  return { bytes: await bytesOfBlob(content), words };
}

export async function openSealed(bytes: Uint8Array, secret: Secret) {
  const opened = await opening.openSealed(new Blob([Uint8Array.from(bytes)]), secret);
  if (opened.kind === 'refused') return opened;
  const { content, ...rest } = opened;
  return { ...rest, bytes: await bytesOfBlob(content) };
}
