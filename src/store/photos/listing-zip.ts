import { strToU8, type Zippable, zipSync } from 'fflate';
import { zipMoment } from './zip-moment.ts';

export interface ListingFiles {
  readonly table: { readonly name: string; readonly text: string };
  /** JPEGs under names of their own. */
  readonly photos: readonly { readonly name: string; readonly bytes: Uint8Array<ArrayBuffer> }[];
  /** When it was made, ms UTC. */
  readonly made: number;
}

/** A zip file with a table, packed, and photos as they are: nothing is gained by packing a JPEG. */
export function zipOfListing({ table, photos, made }: ListingFiles): Uint8Array<ArrayBuffer> {
  const mtime = zipMoment(made);
  const files: Zippable = { [table.name]: [strToU8(table.text), { mtime }] };
  for (const { name, bytes } of photos) files[name] = [bytes, { level: 0, mtime }];
  return zipSync(files);
}
