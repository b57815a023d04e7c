import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chained, type Entry } from '../../../src/domain/log/chain.ts';
import { actLine, entryLine, readJournalLine, settledLine } from '../../../src/domain/log/journal-line.ts';
import { foreignLog, spellDraft } from '../../support/drafts.ts';

const entries = chained(foreignLog());
const act = JSON.stringify({ act: 'tap-1', drafts: [spellDraft('turn')], now: 1000 });

const saidOf = ({ prev, link, event }: Entry) => ({
  kind: 'entry',
  ...{ prev, link, json: JSON.stringify(event) },
});

describe('a line of a journal', () => {
  test('of an entry is the entry as JSON, and tells its link', () => {
    for (const entry of entries) {
      const line = entryLine(entry);
      expect(line).toBe(JSON.stringify(entry));
      expect(readJournalLine(line)).toEqual(saidOf(entry));
    }
  });

  test('of an entry is written in one order of fields, whatever order they come in', () => {
    const [entry] = entries;
    if (!entry) throw new Error('the log has entries');
    const { event, link, prev } = entry;
    expect(entryLine({ event, link, prev })).toBe(JSON.stringify(entry));
  });

  test('of an entry with signs in it that end a line of text elsewhere is whole', () => {
    const [event] = foreignLog();
    if (!event) throw new Error('the log has events');
    const [entry] = chained([{ ...event, note: 'one\u2028two\u2029three\u0085four\r\nfive' }]);
    if (!entry) throw new Error('one event makes one entry');
    expect(entryLine(entry)).not.toMatch(/[\n\r]/);
    expect(readJournalLine(entryLine(entry))).toEqual(saidOf(entry));
  });

  test('of an act that was not stored gives back its name and its text', () => {
    expect(readJournalLine(actLine(act))).toEqual({ kind: 'act', act: 'tap-1', json: act });
  });

  test('of a settled act gives back its name, whatever signs are in it', () => {
    for (const name of ['tap-1', '', '","check":"', 'ü\u2028\n"{}'])
      expect(readJournalLine(settledLine(name))).toEqual({ kind: 'settled', act: name });
  });

  test('has no newline in it, whatever an act says', () => {
    expect(actLine(JSON.stringify({ act: 'a\nb\r\u2028' }))).not.toMatch(/[\n\r]/);
  });

  test('is checked by what the platform makes of SHA-256 (FIPS 180-4, by OpenSSL)', () => {
    const check = createHash('sha256').update(act, 'utf8').digest('hex').slice(0, 16);
    expect(actLine(act)).toBe(`{"act":${act},"check":"${check}"}`);
  });

  test.each([
    ['an entry', JSON.stringify(entries[3])],
    ['an act', actLine(act)],
    ['a settled act', settledLine('tap-1')],
  ])('of %s with any one bit changed is unreadable', (_, line) => {
    const bytes = Buffer.from(line, 'utf8');
    for (const [at, byte] of bytes.entries()) {
      for (let bit = 0; bit < 8; bit += 1) {
        bytes[at] = byte ^ (1 << bit);
        expect(readJournalLine(bytes.toString('utf8')), `bit ${bit} of byte ${at}`).toEqual({
          kind: 'unreadable',
        });
      }
      bytes[at] = byte;
    }
  });

  test('that is cut anywhere, or runs on into another, is unreadable', () => {
    const line = JSON.stringify(entries[3]);
    for (let length = 0; length < line.length; length += 1)
      expect(readJournalLine(line.slice(0, length)).kind).toBe('unreadable');
    expect(readJournalLine(line + line).kind).toBe('unreadable');
    expect(readJournalLine(line.slice(0, 200) + settledLine('tap-1')).kind).toBe('unreadable');
  });

  test('that is anything at all is read without a throw', () => {
    const forged = (json: string) => actLine(json);
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(readJournalLine(text).kind).toBe('unreadable');
        expect(readJournalLine(forged(text)).kind).toBe('unreadable');
      }),
    );
    expect(readJournalLine(forged('[1]')).kind).toBe('unreadable');
    expect(readJournalLine(forged(`${'['.repeat(100_000)}`)).kind).toBe('unreadable');
  });
});
