import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import { readEvent } from '../../../src/domain/log/read-event.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { previewOf } from '../../support/preview-of.ts';
import { openSealed } from '../../support/sealed-bytes.ts';

const folder = new URL('../../../shared/old-backups/', import.meta.url);
const bytesOf = (name: string) => Uint8Array.from(readFileSync(new URL(name, folder)));
const sum = (counter: ReadonlyMap<string, number>) =>
  [...counter.values()].reduce((all, each) => all + each, 0);

const told = JSON.parse(readFileSync(new URL('format-1.json', folder), 'utf8'));
const file = bytesOf('format-1.jsonl.gz');
const sealed = bytesOf('format-1.sealed');

test('a backup of format 1 is read for ever, whole and to the same figures', () => {
  const reading = readBackup(file);
  if (reading.kind === 'refused') throw new Error(`refused: ${reading.why}`);
  expect(reading).toMatchObject({ unreadable: [], cut: false, digestFits: true });
  const { perStation, newest, adds } = previewOf(reading, new Set());
  expect(adds).toBe(told.entries);
  expect(Object.fromEntries(perStation.map((each) => [each.station, each.adds]))).toEqual(told.perStation);
  expect(newest).toBe(told.newest);
  const shop = shopOf(
    reading.entries.flatMap(({ event }): ShopEvent[] => {
      const read = readEvent(event);
      return read.kind === 'known' ? [read.event] : [];
    }),
  );
  const figures = {
    made: sum(shop.ledger.made),
    scrapped: sum(shop.ledger.scrapped),
    trays: shop.trays.size,
  };
  expect(figures).toEqual(told.figures);
});

test('a sealed backup of format 1 opens for ever, with its passphrase and with its words', {
  timeout: 60_000,
}, async () => {
  for (const secret of [{ passphrase: told.passphrase }, { words: told.words }])
    expect(await openSealed(sealed, secret)).toEqual({ kind: 'opened', bytes: file, cut: false });
});

test('the old backups are as they were written', () => {
  const sumOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
  expect([sumOf(file), sumOf(sealed)]).toEqual([
    '6a0fdccc409620efe9533563ecf55549a36772426d278402326e90ed9613af22',
    '1ddc2cd6e41685b03bb8fed060a4a7ee3a3d08b150332085cf31c9b0f65d5e22',
  ]);
});
