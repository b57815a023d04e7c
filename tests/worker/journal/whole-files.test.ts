import { describe, expect, test } from 'vitest';
import { wholeFiles } from '../../../src/worker/journal/whole-files.ts';
import { type FakeDisk, type Fault, fakeWindow } from '../../support/fake-folder.ts';
import { endOf } from '../../support/journal-windows.ts';

const faults: readonly Fault[] = ['throws', 'half', 'done', 'hangs', 'spoils'];
const first = Uint8Array.from({ length: 40 }, (_, at) => at);
const second = Uint8Array.from({ length: 50 }, (_, at) => 255 - at);

async function aWindow(disk: FakeDisk, fault?: { at: number; how: Fault }) {
  const window = fakeWindow(disk, fault);
  return { ...wholeFiles(await window.openFolder('copies'), () => {}), ...window };
}

async function aDisk(): Promise<FakeDisk> {
  const disk: FakeDisk = new Map();
  const window = await aWindow(disk);
  await window.write('daily-1.twb', first);
  return disk;
}

describe.each(faults)('when any one call %s', (how) => {
  test('a file is the old one or the new one, never between, and the new one once that was said', async () => {
    const probe = await aWindow(await aDisk());
    await probe.write('daily-1.twb', second);
    for (let at = 1; at <= probe.calls(); at += 1) {
      const disk = await aDisk();
      const window = await aWindow(disk, { at, how });
      const end = await endOf(window.write('daily-1.twb', second));
      window.die();
      const later = await aWindow(disk);
      expect(await later.names(), `call ${at}`).toEqual(['daily-1.twb']);
      const bytes = await later.read('daily-1.twb');
      if (end === 'kept') expect(bytes).toEqual(second);
      else expect([first, second]).toContainEqual(bytes);
      expect([...(disk.get('copies')?.keys() ?? [])]).toEqual(['daily-1.twb']);
    }
  });
});

test('a part that another window is writing is left to it', async () => {
  const disk = await aDisk();
  const writing = await (await aWindow(disk)).openFolder('copies');
  await writing.create('weekly-1.twb.0123456789abcdef.part');
  const window = await aWindow(disk);
  expect(await window.names()).toEqual(['daily-1.twb']);
  expect([...(disk.get('copies')?.keys() ?? [])]).toContain('weekly-1.twb.0123456789abcdef.part');
});
