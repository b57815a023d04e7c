import { expect, test } from 'vitest';
import type { Entry } from '../../../src/domain/log/chain.ts';
import { runLine } from '../../../src/domain/packed/run-line.ts';
import { readDatabases } from '../../../src/rescue/read-databases.ts';
import { rescueFile } from '../../../src/rescue/rescue-file.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { recordOf } from '../../../src/store/event-record.ts';
import { foreignEntries } from '../../support/drafts.ts';
import { openTestLog, sealAll } from '../../support/log-makers.ts';
import { packedRuns } from '../../support/run-makers.ts';

const entries = foreignEntries();
const bySeq = (a: Entry, b: Entry) => a.event.seq - b.event.seq;

async function readRescue(lines: readonly string[]) {
  const found = [{ title: 'Records', lines, newest: null, unread: [] }];
  return readBackup(new Uint8Array(await rescueFile(found, new Date(0)).arrayBuffer()));
}

const inStore = (entry: Entry, database = 'tallywright') =>
  JSON.stringify({
    ...{ database, store: 'events', key: [entry.event.station, entry.event.seq] },
    value: recordOf(entry, { act: 'a tap' }),
  });
const inJournal = (entry: Entry) =>
  JSON.stringify({ file: 'tallywright/journal-7', line: JSON.stringify(entry) });

test('what the rescue page saved can be restored: the records of the store and the lines of the journal', async () => {
  const reading = await readRescue([
    JSON.stringify({ database: 'tallywright', version: 2 }),
    ...entries.slice(0, 5).map((entry) => inStore(entry)),
    JSON.stringify({ database: 'tallywright', store: 'heads', key: 'head', value: { seq: 5 } }),
    JSON.stringify({ file: 'tallywright/journal-7', changed: 1 }),
    ...entries.slice(5).map(inJournal),
    JSON.stringify({ file: 'tallywright/journal-7', line: '' }),
    JSON.stringify({ file: 'tallywright-copies/copy-1.jsonl.gz', bytes: 'H4sI' }),
    JSON.stringify({ setting: 'tallywright preferences', value: '{}' }),
  ]);
  if (reading.kind !== 'read') throw new Error(`refused: ${reading.why}`);
  expect(reading.entries.toSorted(bySeq)).toEqual(entries);
  expect([reading.unreadable, reading.cut, reading.digestFits]).toEqual([[], false, true]);
});

test('sealed runs of the store, and packed ones of the journal, come back as the entries that they hold', async () => {
  const name = 'tallywright';
  const log = await openTestLog(name);
  await log.merge({ entries, now: 0 });
  await sealAll(name);
  const lines = (await readDatabases(indexedDB)).flatMap((found) => found.lines);
  expect(lines.filter((line) => line.includes('"store":"events"'))).toEqual([]);
  const [run] = packedRuns(entries);
  if (!run) throw new Error('there is a run');
  const journal = JSON.stringify({ file: 'tallywright/journal-7', line: runLine(run) });
  for (const saved of [lines, [journal], [...lines, journal]]) {
    const reading = await readRescue(saved);
    if (reading.kind !== 'read') throw new Error(`refused: ${reading.why}`);
    expect(
      [...new Map(reading.entries.map((entry) => [entry.link, entry])).values()].toSorted(bySeq),
    ).toEqual(entries);
    expect(reading.unreadable).toEqual([]);
  }
  const spoilt = lines.map((line) =>
    line.includes('"store":"packs"') ? line.replace('"check":', '"check":1') : line,
  );
  const reading = await readRescue([...spoilt, journal.replace('bore', 'bare')]);
  if (reading.kind !== 'read') throw new Error(`refused: ${reading.why}`);
  expect([reading.entries, reading.unreadable.length]).toEqual([[], 2]);
  log.close();
});

test('the demo shop in a rescue file is passed over, and a damaged record is named', async () => {
  const [first, second] = entries;
  if (!first || !second) throw new Error('the log has entries');
  const reading = await readRescue([
    inStore(first, 'tallywright-demo'),
    inStore({ ...second, link: first.link }),
    inJournal(second),
  ]);
  if (reading.kind !== 'read') throw new Error(`refused: ${reading.why}`);
  expect(reading.entries).toEqual([second]);
  expect(reading.unreadable.map(({ line }) => line)).toEqual([3]);
});
