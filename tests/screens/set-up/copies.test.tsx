// @vitest-environment happy-dom
import { act, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { CopyDesk } from '../../../src/app/copy-desk.ts';
import { copyInText } from '../../../src/app/text-copy.ts';
import { DayCopies } from '../../../src/screens/parts/files/day-copies.tsx';
import { CopiesPanels } from '../../../src/screens/set-up/copies-panels.tsx';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { memoryShelf } from '../../../src/store/memory-shelf.ts';
import { setUpFacts } from '../../support/workshop.ts';
import { errorAt, type Mounted, mount, press, type } from './mount.tsx';

let downloads: { name: string; bytes: Promise<Uint8Array> }[] = [];
const { click } = HTMLAnchorElement.prototype;
const { createObjectURL } = URL;

beforeEach(() => {
  downloads = [];
  let last = new Blob();
  URL.createObjectURL = (blob) => {
    last = blob as Blob;
    return 'blob:x';
  };
  HTMLAnchorElement.prototype.click = function click() {
    const bytes = last.arrayBuffer().then((buffer) => new Uint8Array(buffer));
    downloads.push({ name: this.download, bytes });
  };
});
afterEach(() => {
  HTMLAnchorElement.prototype.click = click;
  URL.createObjectURL = createObjectURL;
  for (const name of ['standalone', 'share', 'canShare']) Reflect.deleteProperty(navigator, name);
});

const said = (testId: string) => screen.getByTestId(testId).textContent ?? '';
const deskOf = ({ app }: Mounted): CopyDesk => {
  const desk = app.copies.desk.value;
  if (!desk) throw new Error('the test has opened a desk');
  return desk;
};
async function until(testId: string, words: string): Promise<void> {
  await waitFor(() => expect(said(testId)).toContain(words), { timeout: 5000 });
}
/** Set-up facts of the workshop and the fact of the station: one entry each. */
const entries = setUpFacts.length + 1;

/** The browser of an app on an iPad's home screen; what it shares is noted. */
function homeScreen(share: (what: { files: File[] }) => Promise<void>): void {
  const ways = { standalone: true, canShare: () => true, share };
  for (const [name, value] of Object.entries(ways))
    Object.defineProperty(navigator, name, { value, configurable: true, writable: true });
}

/** The file that is to be shared has been made. */
const madeAhead = () =>
  waitFor(() => expect(document.querySelector('[aria-busy=true]')).toBeNull(), { timeout: 5000 });

describe('a copy outside the tablet', () => {
  test('is one tap away, holds the whole log, and its age is known from then on', async () => {
    const mounted = await mount(<CopiesPanels />, { shelf: null });
    expect(said('outside-state')).toContain('No copy has left this tablet yet.');
    await press('save-copy');
    await until('save-copy-said', 'was handed over');
    const [file] = downloads;
    expect(file?.name).toBe('tallywright-the-test-shop-2026-03-02-0900.jsonl.gz');
    expect(readBackup((await file?.bytes) ?? new Uint8Array())).toMatchObject({
      digestFits: true,
      entries: { length: entries },
      manifest: { shop: 'The test shop', version: '1.2.3' },
    });
    expect(said('outside-state')).toContain(`Last: today 09:00, ${entries} entries, saved as a file.`);
    expect(mounted.app.copies.known.value.outside).toMatchObject({ way: 'download', entries });
  });

  test('that cannot be made whole is not made', async () => {
    const { session } = await mount(<CopiesPanels />, { shelf: null });
    Object.assign(session, { entries: async () => [] });
    await press('save-copy');
    await until('save-copy-said', 'could not be read whole');
    expect(downloads).toEqual([]);
  });

  test('is shared in the tap itself where downloads do not exist: the file is there before', async () => {
    const shared: string[] = [];
    homeScreen(async ({ files }) => void shared.push(...files.map(({ name }) => name)));
    const mounted = await mount(<CopiesPanels />, { shelf: null });
    await madeAhead();
    // From here on no file can be made in time.
    Object.assign(deskOf(mounted), { makeCopy: () => new Promise(() => {}) });
    await press('save-copy');
    expect(shared).toEqual(['tallywright-the-test-shop-2026-03-02-0900.jsonl.gz']);
    expect(mounted.app.copies.known.value.outside?.way).toBe('share');
  });

  test('that was not made in time is made in the tap, and asks for one more where that took too long', async () => {
    const shared: string[] = [];
    let fresh = false;
    homeScreen(async ({ files }) => {
      if (!fresh) throw new DOMException('too late', 'NotAllowedError');
      shared.push(...files.map(({ name }) => name));
    });
    const mounted = await mount(<CopiesPanels />, { shelf: null });
    // The tap comes before the file.
    await press('save-copy');
    await until('save-copy-said', 'Tap once more');
    fresh = true;
    await press('save-copy');
    expect(shared).toHaveLength(1);
    expect(mounted.app.copies.known.value.outside?.way).toBe('share');
  });

  test('that the person called off is no copy; one that wants a fresh tap says so', async () => {
    let name = 'AbortError';
    homeScreen(() => Promise.reject(new DOMException('no', name)));
    const { app } = await mount(<CopiesPanels />, { shelf: null });
    await madeAhead();
    await press('save-copy');
    expect(said('save-copy-said')).toBe('');
    name = 'NotAllowedError';
    await press('save-copy');
    expect(said('save-copy-said')).toContain('Tap once more');
    expect(app.copies.known.value.outside).toBeNull();
  });

  test('is a text to copy where nothing else works', async () => {
    homeScreen(() => Promise.reject(new TypeError('cannot share')));
    Reflect.deleteProperty(navigator, 'canShare');
    const { app } = await mount(<CopiesPanels />, { shelf: null });
    await press('save-copy');
    await waitFor(() => screen.getByTestId('copy-text'));
    const { value } = screen.getByTestId('copy-text') as HTMLTextAreaElement;
    expect(readBackup(copyInText(value) ?? new Uint8Array())).toMatchObject({ entries: { length: entries } });
    await press('copy-text-all');
    expect(app.copies.known.value.outside?.way).toBe('text');
  });
});

describe('a sealed copy', () => {
  test('wants its passphrase twice and long enough, and shows its words before it goes out', async () => {
    await mount(<CopiesPanels />, { shelf: null });
    type('passphrase', 'short');
    await press('seal');
    expect(errorAt('passphrase')).toBe('At least 8 signs.');
    type('passphrase', 'beech and brass');
    type('passphrase-again', 'beech and bras');
    await press('seal');
    expect(errorAt('passphrase-again')).toBe('The two differ.');
    expect(said('seal-said')).toBe('');
    type('passphrase-again', 'beech and brass');
    await press('seal');
    await waitFor(() => screen.getByTestId('recovery-words'), { timeout: 10_000 });
    expect(screen.getByTestId('recovery-words').querySelectorAll('li')).toHaveLength(12);
    expect(downloads).toEqual([]);
    await press('words-written');
    expect(downloads.map(({ name }) => name)).toEqual(['tallywright-the-test-shop-2026-03-02-0900.sealed']);
    expect(screen.queryByTestId('recovery-words')).toBeNull();
    const { value } = screen.getByTestId('passphrase') as HTMLInputElement;
    expect(value).toBe('');
  }, 20_000);
});

describe('a copy on the tablet', () => {
  test('is made at a tap on Day and told of there', async () => {
    const shelf = memoryShelf();
    await mount(<DayCopies />, { shelf });
    expect(said('kept-state')).toContain('No copy is on this tablet yet.');
    await press('keep-copy');
    await until('keep-copy-said', 'Copied, read back and counted.');
    expect(said('kept-state')).toBe(`Last: today 09:00, ${entries} entries. Nothing new since.`);
    expect(await shelf.names()).toEqual(['copy-000001-2026-03-02-usual.jsonl.gz']);
  });

  test('that failed or was guarded stands there until one is good', async () => {
    const { app } = await mount(<DayCopies />, { shelf: memoryShelf() });
    const mark = { at: app.copies.known.value.kept?.at ?? Date.UTC(2026, 2, 2, 8, 30), log: 4 };
    const day = '2026-03-02' as never;
    act(() => app.copies.note({ trouble: { ...mark, day, kind: 'guarded' } }));
    expect(said('copy-guarded')).toContain('The older copies stay as they are');
    act(() => app.copies.note({ trouble: { ...mark, day, kind: 'failed' } }));
    expect(said('copy-failed')).toContain('today 08:30');
    await press('keep-copy');
    await until('keep-copy-said', 'Copied');
    expect(screen.queryByTestId('copy-failed')).toBeNull();
  });

  test('cannot be had where the tablet has no place for it, and the person hears so', async () => {
    await mount(<DayCopies />, { shelf: null });
    expect(said('no-shelf')).toContain('no place for copies');
    expect(screen.queryByTestId('keep-copy')).toBeNull();
  });

  test('is not made for the demo', async () => {
    await mount(<CopiesPanels />, { which: 'demo' });
    expect(document.body.textContent).toContain('The demo shop keeps no copies');
    expect(screen.queryByTestId('save-copy')).toBeNull();
  });
});
