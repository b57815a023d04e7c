import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { entriesOf } from '../../src/domain/packed/unpack-run.ts';
import { openPack, packOf } from '../../src/store/pack.ts';
import { longRuns } from '../support/long-log.ts';

const [run] = longRuns({ events: 300, until: Date.UTC(2026, 2, 16, 12) });
if (!run) throw new Error('a long log has runs');
const pack = packOf(run);
/** The entries in a pack; undefined when it is not opened. */
function entriesIn(raw: unknown) {
  const opened = openPack(raw);
  return opened && entriesOf(opened);
}
const entries = entriesOf(run);

describe('a run in its pack', () => {
  test('is opened as it was packed', () => {
    expect(entriesIn(structuredClone(pack))).toEqual(entries);
  });

  test('is not opened when a bit of it was flipped', () => {
    for (const at of [0, pack.texts - 1, pack.texts, pack.bytes.byteLength - 1]) {
      const bytes = pack.bytes.slice(0);
      new Uint8Array(bytes)[at] = (new Uint8Array(bytes)[at] ?? 0) ^ 1;
      expect(openPack({ ...pack, bytes })).toBeUndefined();
    }
  });
});

describe('a run as layout 3 packed it', () => {
  const kept = JSON.parse(
    readFileSync(new URL('../../shared/old-packs/layout-3.json', import.meta.url), 'utf8'),
  );
  const older = { ...kept, bytes: Uint8Array.from(Buffer.from(kept.bytes, 'base64')).buffer };

  test('is opened, link by link', () => {
    expect(entriesIn(older)).toHaveLength(188);
    expect(entriesIn(older)?.at(-1)?.link).toBe(kept.link);
  });

  test('is opened as it was before that: how long its texts are was not said', () => {
    const { unpacked: _, ...before } = older;
    expect(entriesIn(before)).toEqual(entriesIn(older));
  });

  test('is not opened when its texts are longer than is said, or are said to be too long', () => {
    const unpacked = older.unpacked;
    expect(openPack({ ...older, unpacked: unpacked - 1 })).toBeUndefined();
    expect(openPack({ ...older, unpacked: 0 })).toBeUndefined();
    expect(openPack({ ...older, unpacked: 32_000_001 })).toBeUndefined();
    expect(entriesIn({ ...older, unpacked: unpacked + 1 })).toEqual(entriesIn(older));
  });

  test('is not opened when a bit of it was flipped', () => {
    for (const at of [older.texts - 1, older.texts, older.bytes.byteLength - 1]) {
      const bytes = older.bytes.slice(0);
      new DataView(bytes).setUint8(at, new DataView(bytes).getUint8(at) ^ 1);
      expect(openPack({ ...older, bytes })).toBeUndefined();
    }
  });
});
