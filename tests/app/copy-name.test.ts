import { expect, test } from 'vitest';
import { copyName } from '../../src/app/copy-name.ts';

test('a copy is named for its shop and its day', () => {
  const day = '2026-03-02';
  expect(copyName({ shop: 'Ærlig Håndværk & Søn', day })).toBe(
    'tallywright-rlig-handv-rk-s-n-2026-03-02.jsonl.gz',
  );
  expect(copyName({ shop: null, day, time: '14:05' })).toBe('tallywright-2026-03-02-1405.jsonl.gz');
  expect(copyName({ shop: 'ひかり', day, sealed: true })).toBe('tallywright-2026-03-02.sealed');
});

test('whatever a shop is called, the name of its file is harmless', () => {
  for (const shop of ['../../etc/passwd', 'con\u202egz.lnosj', '<img src=x>', 'a'.repeat(500), '.', '\u0000'])
    expect(copyName({ shop, day: '2026-03-02' })).toMatch(
      /^tallywright-([a-z0-9-]{1,40}-)?2026-03-02\.jsonl\.gz$/,
    );
});
