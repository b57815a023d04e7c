import * as v from 'valibot';
import { expect, test } from 'vitest';
import { cellsOf } from '../../src/app/csv.ts';
import { tableFile } from '../../src/app/table-file.ts';
import { stationId } from '../../src/domain/log/ids.ts';
import type { VersionVector } from '../../src/domain/log/version-vector.ts';
import { memoryLog } from '../../src/store/memory-log.ts';
import type { TableName } from '../../src/words/table-words.ts';
import { newerEvent } from '../support/drafts.ts';
import { openTestSession, setUpWorkshop } from '../support/open-test-session.ts';
import { batch, species, variant } from '../support/workshop.ts';

async function workshop() {
  const log = memoryLog(v.parse(stationId, 'station-a'));
  const test = await openTestSession({ log });
  await setUpWorkshop(test.session);
  const pieces = { variant: variant['ash-copper'], batch: batch.spring, pieces: 4, trays: 2 };
  await test.session.act({ kind: 'make-trays', ...pieces });
  return { ...test, log };
}

const names: readonly TableName[] = ['trays', 'taps', 'yield', 'days', 'stores', 'shelf'];

test.each(names)('the table of %s is a file of its own name and day, headed in words', async (name) => {
  const { session } = await workshop();
  const file = await tableFile(name, session);
  expect(file.name).toBe(`tallywright-${name}-2026-03-02.csv`);
  expect(file.type).toBe('text/csv');
  const [headings = [], ...rows] = cellsOf(await file.text());
  for (const heading of headings) expect(heading).toMatch(/^[A-Z][A-Za-z ,()-]+$/);
  for (const row of rows) expect(row).toHaveLength(headings.length);
});

test('what the shop calls things stands in it, made inert where a spreadsheet could take it for a formula', async () => {
  const { session } = await workshop();
  const wood = {
    grain: 'straight',
    light: '#e8d3a8',
    dark: '#7a5a30',
    reference: null,
    caution: '',
  } as const;
  const name = '=HYPERLINK("https://shop.example";"ash")';
  const value = { ...wood, name, retired: false };
  await session.act({ kind: 'set', set: { register: 'species', id: species.ash, value } });
  const csv = await (await tableFile('trays', session)).text();
  expect(csv).toContain(`"'=HYPERLINK(""https://shop.example"";""ash"")"`);
  const [headings = [], first = [], second = []] = cellsOf(csv);
  expect(first[headings.indexOf('Wood')]).toBe(name);
  expect([first, second].map((row) => row[headings.indexOf('Where')])).toEqual(['Waiting', 'Waiting']);
});

test('every event of the log is a row of the taps', async () => {
  const { session, log } = await workshop();
  const { events } = await log.since(new Map());
  const [headings = [], ...rows] = cellsOf(await (await tableFile('taps', session)).text());
  expect(rows).toHaveLength(events.length);
  expect(rows.at(-1)?.[headings.indexOf('What happened')]).toBe('Tray made up');
  expect(rows.at(-1)?.[headings.indexOf('In words')]).toMatch(/^Tray A2. made up with 4 pieces$/);
});

test('an event of a newer version is a row by the name that it has there', async () => {
  const { session, log } = await workshop();
  const { since } = log;
  const newer = { station: log.station(), seq: 900, kind: newerEvent.kind };
  Object.assign(log, {
    since: async (seen: VersionVector) => ({ ...(await since(seen)), newer: [newer] }),
  });
  const [headings = [], ...rows] = cellsOf(await (await tableFile('taps', session)).text());
  expect(rows.at(-1)?.[headings.indexOf('What happened')]).toBe('weighed');
});

test('a log that cannot be read gives no table of taps', async () => {
  const { session, log } = await workshop();
  Object.assign(log, { since: () => Promise.reject(new DOMException('gone', 'UnknownError')) });
  await expect(tableFile('taps', session)).rejects.toThrow('gone');
});
