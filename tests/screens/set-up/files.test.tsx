// @vitest-environment happy-dom
import { screen } from '@testing-library/preact';
import * as v from 'valibot';
import { afterEach, expect, test } from 'vitest';
import { stationId } from '../../../src/domain/log/ids.ts';
import { Files } from '../../../src/screens/set-up/files.tsx';
import { memoryLog } from '../../../src/store/memory-log.ts';
import { mount, press, settle } from './mount.tsx';

const { click } = HTMLAnchorElement.prototype;
afterEach(() => {
  HTMLAnchorElement.prototype.click = click;
  for (const name of ['standalone', 'share', 'canShare']) Reflect.deleteProperty(navigator, name);
});

/** Waits until something is said beside a table's button. */
async function says(button: string, words: string): Promise<void> {
  const testId = `${button}-said`;
  const stop = performance.now() + 5000;
  while (!screen.getByTestId(testId).textContent?.includes(words)) {
    if (performance.now() > stop) throw new Error(`${testId} never said ${words}`);
    await settle();
  }
}

test('a table is saved by one tap, and the button says under which name', async () => {
  const downloads: string[] = [];
  HTMLAnchorElement.prototype.click = function noted(this: HTMLAnchorElement) {
    downloads.push(this.download);
  };
  await mount(<Files />);
  await press('table-days');
  await says('table-days', 'Saved: tallywright-days-2026-03-02.csv');
  expect(downloads).toEqual(['tallywright-days-2026-03-02.csv']);
});

test('a log that cannot be read is said at the button, and a further tap tries again', async () => {
  const log = memoryLog(v.parse(stationId, 'station-a'));
  await mount(<Files />, { log });
  const { since } = log;
  Object.assign(log, { since: () => Promise.reject(new DOMException('gone', 'UnknownError')) });
  await press('table-taps');
  await says('table-taps', 'could not be read');
  Object.assign(log, { since });
  HTMLAnchorElement.prototype.click = () => undefined;
  await press('table-taps');
  await says('table-taps', 'Saved: ');
});

test('a share sheet that wants a fresh tap gets the file that is ready', async () => {
  const shared: File[] = [];
  let refusals = 1;
  const share = async ({ files }: { files: File[] }) => {
    refusals -= 1;
    if (refusals >= 0) throw new DOMException('too late', 'NotAllowedError');
    shared.push(...files);
  };
  const ways = { standalone: true, canShare: () => true, share };
  for (const [name, value] of Object.entries(ways))
    Object.defineProperty(navigator, name, { value, configurable: true });
  await mount(<Files />);
  await press('table-trays');
  await says('table-trays', 'tap once more');
  await press('table-trays');
  await says('table-trays', 'Handed over: tallywright-trays-2026-03-02.csv');
  expect(shared.map(({ name }) => name)).toEqual(['tallywright-trays-2026-03-02.csv']);
});
