import { Inflate, inflateSync } from 'fflate';
import * as v from 'valibot';
import {
  type ColumnName,
  columnNames,
  openedRun,
  type PackedRun,
  runHeadSchema,
  storedRun,
} from '../domain/packed/packed-run.ts';
import { crc32 } from './backup/crc32.ts';

const size = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const width = v.picklist([0, 1, 2, 4]);
/** What the texts of a run in an older pack may unpack to, in bytes: some thousand shapes of a few hundred letters. */
const longestTexts = 32_000_000;
/** Bytes given to the unpacker at a time: DEFLATE makes at most 1032 of one, which is as much again as the limit. */
const piece = longestTexts / 1000;

const packSchema = v.object({
  ...runHeadSchema.entries,
  base: size,
  widths: v.object(
    Object.fromEntries(columnNames.map((name) => [name, width])) as Record<ColumnName, typeof width>,
  ),
  /** How many extras there are. */
  extras: size,
  /** Columns and extras (`StoredRun`), and after them the dictionaries as JSON. */
  bytes: v.instance(ArrayBuffer),
  /** Where the dictionaries begin in `bytes`. */
  texts: size,
  /**
   * The dictionaries lie there as they are: to unpack them took a third of the time of reading a log, and the browser packs
   * what it stores anyway. Older versions packed them by DEFLATE (RFC 1951), and later said how many bytes they unpack to.
   */
  plain: v.exactOptional(v.literal(true)),
  unpacked: v.exactOptional(v.pipe(size, v.maxValue(longestTexts))),
  /** CRC-32 of the head as JSON and of `bytes`. */
  check: size,
});
/** A run as it lies in a store, with all that is needed to open it. */
export type Pack = Readonly<v.InferOutput<typeof packSchema>>;

export function packOf(run: PackedRun): Pack {
  const { base, widths, extras, bytes: numbers, ...dictionaries } = storedRun(run);
  const texts = new TextEncoder().encode(JSON.stringify(dictionaries));
  const bytes = new Uint8Array(numbers.byteLength + texts.length);
  bytes.set(new Uint8Array(numbers));
  bytes.set(texts, numbers.byteLength);
  const { station, first, entries, prev, link, sum } = run;
  const pack = {
    ...{ station, first, entries, prev, link, sum, base, widths, extras },
    bytes: bytes.buffer,
    texts: numbers.byteLength,
    plain: true,
  } as const;
  return { ...pack, check: checkOf(pack) };
}

/** A schema of each text would take longer than unpacking them. */
const texts = v.custom<readonly string[]>(
  (raw) => Array.isArray(raw) && raw.every((each) => typeof each === 'string'),
);
const dictionariesSchema = v.object({ shapes: texts, days: texts, persons: texts, trays: texts });

/** The run in a pack; undefined when the pack is not as it was written. Never throws. */
export function openPack(raw: unknown): PackedRun | undefined {
  const read = v.safeParse(packSchema, raw);
  return read.success ? runIn(read.output) : undefined;
}

/** A pack that comes from outside, and the run in it; undefined as with `openPack`. */
export function readPack(raw: unknown): { readonly pack: Pack; readonly run: PackedRun } | undefined {
  const read = v.safeParse(packSchema, raw);
  const run = read.success && runIn(read.output);
  return run ? { pack: read.output, run } : undefined;
}

function runIn(whole: Pack): PackedRun | undefined {
  if (checkOf(whole) !== whole.check) return undefined;
  const { bytes, texts, plain, unpacked, ...pack } = whole;
  try {
    const kept = new Uint8Array(bytes, texts);
    const json = plain ? new TextDecoder().decode(kept) : inflatedText(kept, unpacked);
    const dictionaries = v.parse(dictionariesSchema, JSON.parse(json));
    return openedRun(pack, { ...pack, ...dictionaries, bytes });
  } catch {
    return undefined;
  }
}

/** The texts of an older pack. Throws when they are no DEFLATE, or too long. With the length said, nothing is copied while they grow. */
function inflatedText(packed: Uint8Array, unpacked: number | undefined): string {
  const decoder = new TextDecoder();
  if (unpacked !== undefined) return decoder.decode(inflateSync(packed, { out: new Uint8Array(unpacked) }));
  let text = '';
  let length = 0;
  const inflate = new Inflate((chunk, isLast) => {
    length += chunk.length;
    if (length > longestTexts) throw new Error('the texts of a run are too long');
    text += decoder.decode(chunk, { stream: !isLast });
  });
  for (let at = 0; at < packed.length; at += piece)
    inflate.push(packed.subarray(at, at + piece), at + piece >= packed.length);
  return text;
}

/** What the texts unpack to is left out, as an older version leaves it out: it shows itself when they are unpacked. */
function checkOf({
  bytes,
  check: _,
  unpacked: __,
  ...head
}: Omit<Pack, 'check'> & { readonly check?: number }): number {
  const inOrder = JSON.stringify(head, Object.keys(head).concat(columnNames).sort());
  return crc32(crc32(0, new TextEncoder().encode(inOrder)), new Uint8Array(bytes));
}
