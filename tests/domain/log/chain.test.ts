import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chained, entryAfter, isSound, linkAfter, linkOver, noLink } from '../../../src/domain/log/chain.ts';
import { linkOverBytes } from '../../../src/domain/log/link-over-bytes.ts';
import { readEntry } from '../../../src/domain/log/read-entry.ts';
import { foreignLog } from '../../support/drafts.ts';

const log = foreignLog();
const entries = chained(log);

describe('a link', () => {
  test('is the first half of the SHA-256 sum that the platform makes of the same text (FIPS 180-4, by OpenSSL)', () => {
    for (const { prev, link, event } of entries) {
      const sum = createHash('sha256')
        .update(prev + JSON.stringify(event), 'utf8')
        .digest('hex');
      expect(link).toBe(sum.slice(0, 32));
    }
  });

  test('of text beyond ASCII is made of its UTF-8 form', () => {
    const [event] = log;
    if (!event) throw new Error('the log has events');
    const named = { ...event, note: 'Bûche, 槍柄, 🪵, \ud800' };
    const sum = createHash('sha256')
      .update(noLink + JSON.stringify(named), 'utf8')
      .digest('hex');
    expect(linkAfter(noLink, named)).toBe(sum.slice(0, 32));
  });
});

test('a link over bytes is that over their text, time and again', () => {
  const encode = (text: string) => new TextEncoder().encode(text);
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
      expect(linkOverBytes(encode(noLink), encode(text))).toBe(linkOver(noLink, text));
    }),
  );
});

describe('a chain', () => {
  test('leads from nothing to the last event without a gap', () => {
    expect(entries[0]?.prev).toBe(noLink);
    for (const [index, entry] of entries.entries()) {
      if (index > 0) expect(entry.prev).toBe(entries[index - 1]?.link);
    }
  });

  test('of several stations is each its own, whatever the order that their events come in', () => {
    const other = foreignLog('station-b');
    const mixed = chained([...other, ...log].toReversed());
    expect(mixed.filter(({ event }) => event.station === 'station-z')).toEqual(entries);
    expect(mixed.filter(({ event }) => event.station === 'station-b')).toEqual(chained(other));
  });

  test('goes through a store and a file unchanged', () => {
    for (const entry of entries) {
      expect(isSound(structuredClone(entry))).toBe(true);
      expect(isSound(JSON.parse(JSON.stringify(entry)))).toBe(true);
    }
  });
});

describe('an entry from outside', () => {
  test('is read as it was written', () => {
    for (const entry of entries) expect(readEntry(entry)).toEqual({ kind: 'sound', of: 'known', entry });
  });

  test('of which one sign was changed is damaged, wherever that is', () => {
    const text = JSON.stringify(entries[3]);
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.integer({ min: 0, max: 6 }), (at, bit) => {
        const flipped = String.fromCharCode(text.charCodeAt(at) ^ (1 << bit));
        let raw: unknown;
        try {
          raw = JSON.parse(text.slice(0, at) + flipped + text.slice(at + 1));
        } catch {
          return;
        }
        // The same value may be written in two ways; then nothing has changed.
        if (JSON.stringify(raw) !== text) expect(readEntry(raw).kind).toBe('damaged');
      }),
      { numRuns: 2000 },
    );
  });

  test('of a newer version is kept with its fields', () => {
    const event = { ...log[0], kind: 'weighed', grams: 41 };
    const entry = entryAfter(noLink, event as (typeof log)[number]);
    expect(readEntry(entry)).toEqual({ kind: 'sound', of: 'newer', entry });
  });

  test('that nests without end is damaged and does not overflow', () => {
    const deep = JSON.parse(`${'['.repeat(100_000)}${']'.repeat(100_000)}`);
    const raw = { prev: noLink, link: noLink, event: { ...log[0], kind: 'weighed', deep } };
    expect(readEntry(raw).kind).toBe('damaged');
  });

  test('that is anything at all is judged without a throw', () => {
    fc.assert(
      fc.property(fc.anything(), (raw) => {
        expect(readEntry(raw).kind).toBe('damaged');
      }),
    );
  });
});
