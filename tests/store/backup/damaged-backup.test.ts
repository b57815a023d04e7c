import { constants, gunzipSync, gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { writeBackup } from '../../../src/store/backup/write-backup.ts';
import { about, linesOf, sampleEntries, text } from './sample-log.ts';

const entries = sampleEntries();
const small = entries.slice(0, 12);
const smallFile = writeBackup({ entries: small, about });
const file = writeBackup({ entries, about });
const own = new Set(linesOf(entries));

/** The lines of a file as zlib unpacks them as far as it goes, the manifest among them. */
function wholeLines(packed: Uint8Array): readonly string[] {
  if (packed.length < 18) return [];
  const unpacked = text.decode(gunzipSync(packed, { finishFlush: constants.Z_SYNC_FLUSH }));
  return unpacked
    .slice(0, unpacked.lastIndexOf('\n') + 1)
    .split('\n')
    .slice(0, -1);
}

const offered = (bytes: Uint8Array) => {
  const reading = readBackup(bytes);
  return reading.kind === 'read' ? linesOf(reading.entries) : [];
};

/** As it should be: what is damaged is named so, and nothing is offered that was not in the log. */
function expectNamed(bytes: Uint8Array, whole: Uint8Array): void {
  const reading = readBackup(bytes);
  if (reading.kind === 'refused') throw new Error(`refused: ${reading.why}`);
  const found = linesOf(reading.entries);
  for (const line of found) expect(own.has(line)).toBe(true);
  expect(new Set(found).size).toBe(found.length);
  const named = reading.cut || !reading.digestFits || reading.unreadable.length > 0;
  // The date, flags of the packer and system in the head of a member say nothing of the log.
  if (!named) expect(reading).toEqual(readBackup(whole));
}

function flipped(bytes: Uint8Array, at: number, bit = at % 8): Uint8Array {
  const copy = bytes.slice();
  copy[at] = (copy[at] ?? 0) ^ (1 << bit);
  return copy;
}

/** Thousands of files are read here; on a busy machine that takes longer than a usual test may. */
const patience = { timeout: 60_000 };

describe('a backup that is cut', patience, () => {
  test('at any byte still gives its whole lines, and says that it is cut', () => {
    for (let length = 0; length < smallFile.length; length += 1) {
      const cut = smallFile.slice(0, length);
      const lines = wholeLines(cut).slice(1);
      const reading = readBackup(cut);
      // A line that lacks no more than its line feed is whole too.
      expect(offered(cut).slice(0, lines.length), `cut at ${length}`).toEqual(lines);
      expect(offered(cut).length - lines.length).toBeLessThanOrEqual(1);
      if (reading.kind === 'read') expect(reading.cut, `cut at ${length}`).toBe(true);
      else expect(lines).toEqual([]);
    }
  });

  test('as plain text does so too', () => {
    const plain = gunzipSync(smallFile);
    for (let length = 1; length < plain.length; length += 7) {
      const cut = plain.subarray(0, length);
      const lines = text.decode(cut).split('\n').slice(1, -1);
      expect(offered(cut).slice(0, lines.length)).toEqual(lines);
      const reading = readBackup(cut);
      if (reading.kind === 'read') expect(reading.cut || length === plain.length - 1).toBe(true);
    }
  });

  test('gives the first entries of each chain without a hole', () => {
    for (let length = 0; length < file.length; length += 13) {
      const reading = readBackup(file.slice(0, length));
      if (reading.kind === 'refused') continue;
      const seen = new Map<string, number>();
      for (const { event } of reading.entries) {
        expect(event.seq).toBe((seen.get(event.station) ?? 0) + 1);
        seen.set(event.station, event.seq);
      }
    }
  });
});

describe('a backup with one bit changed', patience, () => {
  test('at any byte of a small one is named as damaged, and offers nothing that was not in the log', () => {
    for (let at = 0; at < smallFile.length; at += 1) expectNamed(flipped(smallFile, at), smallFile);
  });

  test('still gives every line that is whole before that byte', () => {
    for (let at = 30; at < smallFile.length; at += 1) {
      const before = wholeLines(smallFile.slice(0, at)).slice(1);
      expect(offered(flipped(smallFile, at)).slice(0, before.length), `byte ${at}`).toEqual(before);
    }
  });

  test('at every 97th byte of a longer one too, and the plain text of it', () => {
    for (let at = 0; at < file.length; at += 97) expectNamed(flipped(file, at), file);
    const plain = gunzipSync(file);
    const wholeAgain = Uint8Array.from(plain);
    for (let at = plain.indexOf('\n') + 1; at < plain.length; at += 97) {
      const bytes = flipped(wholeAgain, at);
      expectNamed(bytes, wholeAgain);
      expect(offered(bytes).length).toBeGreaterThanOrEqual(entries.length - 2);
    }
  });

  test('in the head of a gzip member loses no entry', () => {
    const heads = headsOf(smallFile);
    expect(heads).toHaveLength(2);
    for (const start of heads)
      for (let at = start; at < start + 10; at += 1)
        for (let bit = 0; bit < 8; bit += 1) {
          const reading = readBackup(flipped(smallFile, at, bit));
          const told = `byte ${at}, bit ${bit}`;
          expect(reading.kind === 'read' && reading.entries.length, told).toBe(small.length);
          expect(reading.kind === 'read' && reading.manifest, told).not.toBeNull();
        }
  });

  test('loses the entries of one gzip member at most', () => {
    const long = [...Array(8).keys()].flatMap((part) => sampleEntriesOf(`bench-${part}`));
    const packed = writeBackup({ entries: long, about });
    const members = headsOf(packed).length - 1;
    expect(members).toBeGreaterThan(2);
    const inMember = long.length / members;
    for (let at = 700; at < packed.length; at += 397)
      expect(offered(flipped(packed, at)).length, `byte ${at}`).toBeGreaterThan(long.length - 1.6 * inMember);
  });
});

function sampleEntriesOf(station: string) {
  return sampleEntries(station, `${station}-too`);
}

/** Where gzip members begin, by the ten bytes that each begins with. */
function headsOf(packed: Uint8Array): readonly number[] {
  const head = Buffer.from('1f8b0800000000000003', 'hex');
  const heads: number[] = [];
  const bytes = Buffer.from(packed);
  for (let at = bytes.indexOf(head); at !== -1; at = bytes.indexOf(head, at + 1)) heads.push(at);
  return heads;
}

test('a file that was unpacked and packed again by another program is read, and its cut head too', () => {
  const again = gzipSync(gunzipSync(file));
  expect(offered(again)).toHaveLength(entries.length);
  expect(readBackup(again)).toMatchObject({ cut: false, digestFits: true });
  const half = again.subarray(0, again.length / 2);
  expect(offered(half)).toEqual(wholeLines(half).slice(1));
});
