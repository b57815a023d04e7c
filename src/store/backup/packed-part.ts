import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { deflateSync, inflateSync } from 'fflate';
import * as v from 'valibot';
import type { PackedRun } from '../../domain/packed/packed-run.ts';
import type { Parcel } from '../../domain/packed/parcel.ts';
import { openPack, packOf } from '../pack.ts';
import type { Limits } from './backup-format.ts';
import { contentOfExtras, extraMembers } from './extra-members.ts';

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
  const said = { form: 1, bytes: part.length, unpacked: content.length, digest: digestOf(part) } as const;
  return { said, part };
}

/** The runs and the other entries of a part, which are not judged yet; undefined when it is not as it was written. */
interface OpenedPart {
  readonly runs: readonly PackedRun[];
  readonly entries: readonly unknown[];
}

/** The packed part of a file, given what its manifest says of it; undefined when there is none that is whole. Never throws. */
export function openPart(
  file: Uint8Array,
  { said: raw, limits }: { readonly said: unknown; readonly limits: Limits },
): OpenedPart | undefined {
  const said = v.safeParse(saidSchema, raw);
  if (!said.success) return undefined;
  const { bytes, unpacked, digest } = said.output;
  if (bytes > file.length || unpacked > limits.unpacked || unpacked > limits.ratio * bytes) return undefined;
  const part = file.subarray(file.length - bytes);
  if (digestOf(part) !== digest) return undefined;
  try {
    return opened(inflateSync(contentOfExtras(part), { out: new Uint8Array(unpacked) }));
  } catch {
    return undefined;
  }
}

/** Throws when it is not as it was written. */
function opened(content: Uint8Array<ArrayBuffer>): OpenedPart | undefined {
  const end = content.indexOf(0x0a);
  const index = v.parse(indexSchema, JSON.parse(new TextDecoder().decode(content.subarray(0, end))));
  const runs: PackedRun[] = [];
  let at = aligned(end + 1);
  for (const { bytes, ...head } of index.packs) {
    const run = openPack({ ...head, bytes: content.buffer.slice(at, at + bytes) });
    if (!run) return undefined;
    runs.push(run);
    at += aligned(bytes);
  }
  return { runs, entries: index.entries };
}

const digestOf = (bytes: Uint8Array) => bytesToHex(sha256(bytes));
