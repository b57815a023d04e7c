import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { deflateSync } from 'fflate';
import * as v from 'valibot';
import type { Link } from '../../domain/log/chain.ts';
import type { PackedRun } from '../../domain/packed/packed-run.ts';
import type { Parcel } from '../../domain/packed/parcel.ts';
import { type Pack, packOf, readPack } from '../pack.ts';
import type { Limits } from './backup-format.ts';
import { digestOf } from './digest-of.ts';
import { contentOfExtras, extraMembers } from './extra-members.ts';
import { inflated } from './inflated.ts';

/**
 * What the manifest says of the packed part, which stands at the end of the file: the same entries as the lines once more,
 * in runs. `bytes` is how long it is and `digest` its SHA-256 in hex, `unpacked` the length of what is in it.
 */
const saidSchema = v.object({
  form: v.literal(1),
  bytes: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
  unpacked: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
  digest: v.string(),
});
export type SaidOfPart = Readonly<v.InferOutput<typeof saidSchema>>;

/** What is in a part: a line of JSON, the heads of packs and the entries that are in none, and then the bytes of the packs. */
const indexSchema = v.object({
  packs: v.array(v.looseObject({ bytes: v.pipe(v.number(), v.safeInteger(), v.minValue(0)) })),
  entries: v.array(v.unknown()),
});

/** Numbers of a run can be looked at where they lie when they begin at a multiple of 8. */
const aligned = (bytes: number) => Math.ceil(bytes / 8) * 8;

export function writePart({ runs, entries }: Parcel): {
  readonly said: SaidOfPart;
  readonly part: Uint8Array;
} {
  const packs = runs.map(packOf);
  const heads = packs.map(({ bytes, ...head }) => ({ ...head, bytes: bytes.byteLength }));
  const index = utf8ToBytes(`${JSON.stringify({ packs: heads, entries })}\n`);
  const content = concatBytes(
    ...[index, ...packs.map(({ bytes }) => new Uint8Array(bytes))].flatMap((bytes) => [
      bytes,
      new Uint8Array(aligned(bytes.length) - bytes.length),
    ]),
  );
  const part = extraMembers(deflateSync(content));
  const digest = bytesToHex(sha256(part));
  const said = { form: 1, bytes: part.length, unpacked: content.length, digest } as const;
  return { said, part };
}

/** The runs of a part, also as a store keeps them, and its other entries; none is judged yet. */
interface OpenedPart {
  readonly runs: readonly PackedRun[];
  readonly packs: ReadonlyMap<Link, Pack>;
  readonly entries: readonly unknown[];
}

/** The packed part of a file, given what its manifest says of it; undefined when there is none that is whole. Never rejects. */
export async function openPart(
  file: Uint8Array,
  { said: raw, limits }: { readonly said: unknown; readonly limits: Limits },
): Promise<OpenedPart | undefined> {
  const said = v.safeParse(saidSchema, raw);
  if (!said.success) return undefined;
  const { bytes, unpacked, digest } = said.output;
  if (bytes > file.length || unpacked > limits.unpacked || unpacked > limits.ratio * bytes) return undefined;
  const part = file.slice(file.length - bytes);
  try {
    if ((await digestOf(part)) !== digest) return undefined;
    return opened(await inflated(contentOfExtras(part), unpacked));
  } catch {
    return undefined;
  }
}

/** Throws when it is not as it was written. */
function opened(content: Uint8Array<ArrayBuffer>): OpenedPart | undefined {
  const end = content.indexOf(0x0a);
  const index = v.parse(indexSchema, JSON.parse(new TextDecoder().decode(content.subarray(0, end))));
  const runs: PackedRun[] = [];
  const packs = new Map<Link, Pack>();
  let at = aligned(end + 1);
  for (const { bytes, ...head } of index.packs) {
    const read = readPack({ ...head, bytes: content.buffer.slice(at, at + bytes) });
    if (!read) return undefined;
    runs.push(read.run);
    packs.set(read.run.link, read.pack);
    at += aligned(bytes);
  }
  return { runs, packs, entries: index.entries };
}
