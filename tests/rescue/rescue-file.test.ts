import { expect, test } from 'vitest';
import { rescueFile } from '../../src/rescue/rescue-file.ts';

test('the file is one JSON text a line: first what it is, then the records, place by place', async () => {
  const place = { newest: null, unread: [] };
  const file = rescueFile(
    [
      { ...place, title: 'a', lines: ['{"n":1}', '{"n":2}'] },
      { ...place, title: 'b', lines: ['{"n":3}'], unread: ['torn'] },
    ],
    new Date(Date.UTC(2026, 2, 2, 9, 5)),
  );
  expect(file.name).toBe('tallywright-rescue-2026-03-02T0905.jsonl');
  const lines = (await file.text()).trimEnd().split('\n');
  expect(lines.map((line): unknown => JSON.parse(line))).toEqual([
    { format: 'tallywright-rescue-1', made: '2026-03-02T09:05:00.000Z', records: 3, unread: ['torn'] },
    { n: 1 },
    { n: 2 },
    { n: 3 },
  ]);
});
