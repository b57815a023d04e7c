import { gunzipSync, gzipSync } from 'node:zlib';
import type { Parcel } from '../../src/domain/packed/parcel.ts';
import { type SaidOfPart, writePart } from '../../src/store/backup/packed-part.ts';

/** What a backup says of its packed part; undefined where it has none. */
export function saidOfPart(file: Uint8Array): SaidOfPart | undefined {
  const text = gunzipSync(file).toString('utf8');
  return JSON.parse(text.slice(0, text.indexOf('\n'))).packed;
}

/** The same backup without its packed part, of which its first line still tells. */
export function withoutPart(file: Uint8Array): Uint8Array {
  return file.slice(0, file.length - (saidOfPart(file)?.bytes ?? 0));
}

/** The lines of a backup with another packed part, whose digest fits. */
export function withPart(file: Uint8Array, parcel: Parcel, change: object = {}): Uint8Array {
  const text = gunzipSync(file).toString('utf8');
  const end = text.indexOf('\n') + 1;
  const { said, part } = writePart(parcel);
  const manifest = { ...JSON.parse(text.slice(0, end)), packed: said, ...change };
  return Buffer.concat([gzipSync(`${JSON.stringify(manifest)}\n`), gzipSync(text.slice(end)), part]);
}
