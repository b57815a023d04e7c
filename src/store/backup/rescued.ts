import * as v from 'valibot';
import type { PackedRun } from '../../domain/packed/packed-run.ts';
import { readRunLine } from '../../domain/packed/run-line.ts';
import { openPack } from '../pack.ts';

/** The first line of what the rescue page saves. */
export const rescueMark = '{"format":"tallywright-rescue-1"';

const ofStore = v.object({
  database: v.literal('tallywright'),
  store: v.literal('events'),
  value: v.unknown(),
});
const ofJournal = v.object({
  file: v.pipe(v.string(), v.regex(/^tallywright\/(aside-)?journal-/)),
  line: v.pipe(v.string(), v.startsWith('{"prev":')),
});
const ofPacks = v.object({
  database: v.literal('tallywright'),
  store: v.literal('packs'),
  value: v.looseObject({ bytes: v.object({ $bytes: v.string() }) }),
});
const ofPackedJournal = v.object({
  file: ofJournal.entries.file,
  line: v.pipe(v.string(), v.startsWith('{"run":')),
});
const ofRescue = v.union([
  v.object({ format: v.literal('tallywright-rescue-1') }),
  v.object({ database: v.string() }),
  v.object({ file: v.string() }),
  v.object({ setting: v.string() }),
]);

/**
 * The entry in a record of the rescue page, as it stood in the store or in the journal; undefined for a record that
 * holds something else. What is no such record comes back as it is.
 */
export function entryInRescue(raw: unknown): unknown {
  if (v.is(ofStore, raw)) {
    // The record has its place in the store beside the entry.
    const record = v.safeParse(
      v.object({ prev: v.unknown(), link: v.unknown(), event: v.unknown() }),
      raw.value,
    );
    return record.success ? record.output : undefined;
  }
  if (v.is(ofJournal, raw)) return fromJson(raw.line);
  return v.is(ofRescue, raw) ? undefined : raw;
}

/** The run in a record of the rescue page: as a store packed it, or as a line of the journal; undefined for any other record. */
export function runInRescue(raw: unknown): PackedRun | 'damaged' | undefined {
  if (v.is(ofPackedJournal, raw)) return readRunLine(raw.line) ?? 'damaged';
  if (!v.is(ofPacks, raw)) return undefined;
  try {
    const bytes = Uint8Array.from(atob(raw.value.bytes.$bytes), (sign) => sign.charCodeAt(0)).buffer;
    return openPack({ ...raw.value, bytes }) ?? 'damaged';
  } catch {
    return 'damaged';
  }
}

function fromJson(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return {};
  }
}
