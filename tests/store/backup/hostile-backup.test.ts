import { gunzipSync, gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { entryAfter, noLink } from '../../../src/domain/log/chain.ts';
import { deepestVoid, type LogEvent } from '../../../src/domain/log/read-event.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { usualLimits } from '../../../src/store/backup/backup-format.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { unpack } from '../../../src/store/backup/unpack.ts';
import { writeBackup } from '../../../src/store/backup/write-backup.ts';
import { foreignLog } from '../../support/drafts.ts';
import { hostileLines, plausibleForgeries } from '../../support/hostile-lines.ts';
import { longLog } from '../../support/long-logs.ts';
import { about, linesOf, sampleEntries, text } from './sample-log.ts';

const entries = sampleEntries();
const file = writeBackup({ entries, about });
const plain = text.decode(gunzipSync(file));
const [manifestLine = '', ...entryLines] = plain.trimEnd().split('\n');
const encode = (content: string) => new TextEncoder().encode(content);
const refusal = (bytes: Uint8Array) => {
  const reading = readBackup(bytes);
  return reading.kind === 'refused' ? reading.why : reading.kind;
};

describe('a file that is no backup', () => {
  test.each([
    ['a picture', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0)],
    ['a zip', Uint8Array.of(0x50, 0x4b, 3, 4, 20, 0)],
    ['a table', encode('tray,pieces\nA1K,12\n')],
    ['a web page', encode('<!doctype html><title>{"tallywright":"log"</title>')],
    ['other JSON', encode('{"version":1}\n')],
    ['a packed table', gzipSync('tray,pieces\n')],
    ['one byte', Uint8Array.of(0x1f)],
    ['the head of gzip and no more', Uint8Array.of(0x1f, 0x8b, 8)],
    ['a log of another kind', encode('{"tallywright":"other","format":1}\n')],
  ])('%s is refused', (_name, bytes) => {
    expect(refusal(bytes)).toBe('not-a-backup');
  });

  test('an empty one is called empty, packed too', () => {
    expect(refusal(new Uint8Array(0))).toBe('empty');
    expect(refusal(gzipSync(''))).toBe('empty');
  });

  test('is given up early', () => {
    const lines = 30_000;
    const reading = readBackup(encode('x\n'.repeat(lines)), { ...usualLimits, lines: 20_000 });
    expect(reading).toEqual({ kind: 'refused', why: 'not-a-backup' });
  });
});

describe('a file that asks for too much', () => {
  test('is refused by its size', () => {
    expect(refusal(new Uint8Array(usualLimits.file + 1))).toBe('too-big');
  });

  test('is refused while it unpacks, long before it is unpacked', () => {
    const bomb = gzipSync(Buffer.alloc(100_000_000));
    let given = 0;
    const { kind, work } = unpack(bomb, {
      limits: usualLimits,
      give: (chunk) => {
        given += chunk.length;
        return true;
      },
      gap: () => undefined,
    });
    expect(kind).toBe('too-big');
    expect(given).toBeLessThan(bomb.length * usualLimits.ratio + 5_000_000);
    expect(work).toBeLessThanOrEqual(bomb.length);
    expect(refusal(bomb)).toBe('unpacks-too-big');
    expect(refusal(Buffer.concat([file, bomb]))).toBe('unpacks-too-big');
  });

  test('is refused for what it unpacks to even when it keeps to the ratio', () => {
    const limits = { ...usualLimits, unpacked: plain.length - 1 };
    expect(readBackup(file, limits)).toEqual({ kind: 'refused', why: 'unpacks-too-big' });
    expect(readBackup(file, { ...limits, unpacked: plain.length }).kind).toBe('read');
  });

  test('is refused for a crowd of tiny gzip members', () => {
    const tiny = gzipSync('\n');
    const crowd = Buffer.concat([file, ...Array(300).fill(tiny)]);
    expect(readBackup(crowd, { ...usualLimits, members: 200 })).toEqual({
      kind: 'refused',
      why: 'unpacks-too-big',
    });
  });

  test('is refused for the number of its lines', () => {
    const limits = { ...usualLimits, lines: entryLines.length };
    expect(readBackup(file, limits)).toEqual({ kind: 'refused', why: 'unpacks-too-big' });
    expect(readBackup(file, { ...limits, lines: entryLines.length + 1 }).kind).toBe('read');
  });

  test('is no log of two million taps', () => {
    const whole = writeBackup({ entries: longLog(3000), about });
    const times = 2_000_000 / 3000;
    let unpacked = 0;
    const count = (chunk: Uint8Array) => {
      unpacked += chunk.length;
      return true;
    };
    unpack(whole, { limits: usualLimits, give: count, gap: () => undefined });
    expect(whole.length * times).toBeLessThan(usualLimits.file);
    expect(unpacked * times).toBeLessThan(usualLimits.unpacked);
    expect((unpacked * times) / 65_536).toBeLessThan(usualLimits.members);
    expect(2_000_000).toBeLessThan(usualLimits.lines);
  });

  test('cannot make the reader go over it again and again by pretending damage', () => {
    // Every stretch begins like a member of ours and swallows all that follows as an unpacked block, then breaks off.
    const head = Buffer.from('1f8b0800000000000003', 'hex');
    const block = Buffer.from([0, 0xff, 0xff, 0, 0]);
    const trap = Buffer.concat([...Array(3000).fill(Buffer.concat([head, block])), Buffer.from([6])]);
    const { work } = unpack(trap, { limits: usualLimits, give: () => true, gap: () => undefined });
    expect(work).toBeLessThanOrEqual(12 * trap.length);
  });
});

describe('a line that is no entry', () => {
  test.each(hostileLines)('%s is counted as unreadable, and the others are read', (_what, line) => {
    const lines = [manifestLine, ...entryLines.slice(0, 5), line, ...entryLines.slice(5)];
    for (const bytes of [encode(`${lines.join('\n')}\n`), gzipSync(`${lines.join('\n')}\n`)]) {
      const reading = readBackup(bytes);
      if (reading.kind === 'refused') throw new Error(`refused: ${reading.why}`);
      expect(linesOf(reading.entries)).toEqual(entryLines);
      expect(reading.unreadable.map((each) => each.line)).toEqual([7]);
      expect(reading.unreadable[0]?.problems.length).toBeGreaterThan(0);
      expect(reading.digestFits).toBe(false);
    }
    expect(Object.prototype).not.toHaveProperty('pieces');
  });

  test('is one longer than a line may be', () => {
    const long = `{"x":"${'y'.repeat(usualLimits.line)}"}`;
    const bytes = encode(`${[manifestLine, long, ...entryLines].join('\n')}\n`);
    const reading = readBackup(bytes);
    expect(reading).toMatchObject({ unreadable: [{ line: 2, problems: ['the line is too long'] }] });
    expect(reading.kind === 'read' && reading.entries).toHaveLength(entries.length);
  });
});

describe('what a backup may hold', () => {
  test('is any entry that keeps to the rules, unchanged whatever its texts are, and the shop adds it up', () => {
    const bytes = writeBackup({ entries: [...entries, ...plausibleForgeries], about });
    const reading = readBackup(bytes);
    if (reading.kind === 'refused') throw new Error(`refused: ${reading.why}`);
    expect(reading).toMatchObject({ unreadable: [], digestFits: true });
    const lines = new Set(linesOf(reading.entries));
    for (const line of linesOf(plausibleForgeries)) expect(lines.has(line)).toBe(true);
    const known = reading.entries.filter(({ event }) => event.kind === 'passed');
    expect(() => shopOf(known.map(({ event }) => event) as never)).not.toThrow();
  });

  test('is the deepest undo of undos that a log can hold', () => {
    const [passed] = foreignLog('bench').filter(({ kind }) => kind === 'passed');
    let event: unknown = passed;
    for (let depth = 0; depth < deepestVoid; depth += 1) {
      const { station, seq, stamp, zone, day, person } = passed as never;
      event = { station, seq, stamp, zone, day, person, kind: 'voided', event };
    }
    const deep = entryAfter(noLink, event as LogEvent);
    const reading = readBackup(writeBackup({ entries: [deep], about }));
    expect(reading).toMatchObject({ unreadable: [], digestFits: true });
    expect(reading.kind === 'read' && linesOf(reading.entries)).toEqual(linesOf([deep]));
  });

  test('is of this format: a newer one is named, and one with a spoilt digit is read', () => {
    const newer = plain.replace('"format":1', '"format":2');
    expect(refusal(encode(newer))).toBe('newer-format');
    const packed = gzipSync(newer);
    expect(refusal(packed)).toBe('newer-format');
    const damaged = Uint8Array.from(packed);
    damaged[packed.length - 8] = (packed[packed.length - 8] ?? 0) ^ 1;
    const reading = readBackup(damaged);
    expect(reading).toMatchObject({ kind: 'read', manifest: null, digestFits: false });
    expect(reading.kind === 'read' && reading.entries).toHaveLength(entries.length);
  });

  test('may have passed through an editor: other line ends, a mark at its start, no line end at its end', () => {
    for (const edited of [
      plain.replaceAll('\n', '\r\n'),
      `\ufeff${plain}`,
      plain.trimEnd(),
      `${plain}\n\n`,
    ]) {
      const reading = readBackup(encode(edited));
      expect(reading).toMatchObject({ kind: 'read', unreadable: [], cut: false });
      expect(reading.kind === 'read' && reading.manifest?.shop).toBe(about.shop);
      expect(reading.kind === 'read' && linesOf(reading.entries)).toEqual(entryLines);
    }
  });
});

describe('a cloned tablet', () => {
  test('has both of its branches in the backup, each in one piece after what they share', () => {
    const shared = entries.filter(({ event }) => event.station === 'bench').slice(0, 6);
    const branch = (person: string) => {
      let prev = shared.at(-1)?.link ?? noLink;
      return [7, 8, 9].map((seq) => {
        const entry = entryAfter(prev, { ...shared[0]?.event, seq, person } as never);
        prev = entry.link;
        return entry;
      });
    };
    const [edda, wim] = [branch('edda'), branch('wim')];
    const mixed = [...edda, ...shared, ...wim].sort((a, b) => b.event.seq - a.event.seq);
    const reading = readBackup(writeBackup({ entries: mixed, about }));
    if (reading.kind === 'refused') throw new Error(`refused: ${reading.why}`);
    const found = linesOf(reading.entries);
    const orders = [
      [...shared, ...edda, ...wim],
      [...shared, ...wim, ...edda],
    ].map(linesOf);
    expect(orders).toContainEqual(found);
    expect(reading.manifest?.stations).toMatchObject([{ station: 'bench', last: 9, entries: 12 }]);
  });
});
