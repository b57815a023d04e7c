// @vitest-environment happy-dom
import { act, screen, waitFor } from '@testing-library/preact';
import { describe, expect, test } from 'vitest';
import { textOfCopy } from '../../../src/app/text-copy.ts';
import { chained, type Entry } from '../../../src/domain/log/chain.ts';
import type { Parcel } from '../../../src/domain/packed/parcel.ts';
import { CopiesPanels } from '../../../src/screens/set-up/copies-panels.tsx';
import { RestoredNotice } from '../../../src/screens/shell/restored-notice.tsx';
import { writeBackup } from '../../../src/store/backup/write-backup.ts';
import { memoryShelf } from '../../../src/store/memory-shelf.ts';
import { foreignLog } from '../../support/drafts.ts';
import { errorAt, type Mounted, mount, press, type } from '../set-up/mount.tsx';

const foreign = chained(foreignLog());
const backup = (entries: readonly Entry[], shop = 'Awl shop') =>
  writeBackup({ entries, about: { version: '1', wall: Date.UTC(2026, 2, 1, 17), zone: 'UTC', shop } });

const said = (testId: string) => screen.getByTestId(testId).textContent ?? '';

/** Chooses a file, as the browser's own dialog would hand it over. */
async function choose(bytes: Uint8Array, name = 'copy.jsonl.gz'): Promise<void> {
  const input = screen.getByTestId('restore-file') as HTMLInputElement;
  const file = new File([new Uint8Array(bytes)], name);
  Object.defineProperty(input, 'files', { value: [file], configurable: true });
  act(() => void input.dispatchEvent(new Event('change', { bubbles: true })));
  await waitFor(() => expect(screen.queryByTestId('choose-file')).toBeNull());
  await waitFor(() => expect(document.querySelector('.sheet [aria-busy=true]')).toBeNull(), {
    timeout: 5000,
  });
}

async function restoreSheet(shelf = memoryShelf()): Promise<Mounted> {
  const mounted = await mount(
    <>
      <CopiesPanels />
      <RestoredNotice />
    </>,
    { shelf },
  );
  await press('restore');
  return mounted;
}
const held = async ({ session }: Mounted) => (await session.entries()).length;

describe('restoring', () => {
  test('shows what a copy would add, warns of another shop’s, and adds it after a copy of the present state', async () => {
    const shelf = memoryShelf();
    const mounted = await restoreSheet(shelf);
    const before = await held(mounted);
    await choose(backup(foreign));
    expect([said('offer-adds'), said('offer-here'), said('offer-unreadable')]).toEqual([
      `${foreign.length}`,
      '0',
      '0',
    ]);
    expect([said('offer-shop'), said('offer-made')]).toEqual(['Awl shop', '1 Mar 2026, 17:00']);
    expect(said('offer-foreign')).toContain('shares nothing with the shop on this tablet');
    expect(await held(mounted)).toBe(before);
    await press('add-copy');
    await waitFor(() => screen.getByTestId('restored'), { timeout: 5000 });
    expect(said('restored')).toContain(`Added ${foreign.length}; 0 were here already.`);
    expect(screen.queryByTestId('restore-sheet')).toBeNull();
    expect(await held(mounted)).toBe(before + foreign.length);
    expect(await shelf.names()).toEqual(['copy-000001-2026-03-02-before-restore.jsonl.gz']);
    await press('restored-good');
    expect(screen.queryByTestId('restored')).toBeNull();
  });

  test('a second time says that all is here', async () => {
    const mounted = await restoreSheet();
    await choose(backup((await mounted.session.entries()).slice(0, 7)));
    expect(said('nothing-to-add')).toBe('All of it is here already.');
    expect(screen.queryByTestId('add-copy')).toBeNull();
    await press('restore-again');
    expect(screen.getByTestId('choose-file')).toBeDefined();
  });

  test('from a copy of the tablet itself lists day and count, and looks into it like into any other', async () => {
    const shelf = memoryShelf();
    await shelf.write('copy-000004-2026-02-27-usual.jsonl.gz', backup(foreign.slice(0, 9)));
    await shelf.write('copy-000005-2026-02-28-before-restore.jsonl.gz', Uint8Array.of(1, 2, 3));
    await restoreSheet(shelf);
    await waitFor(() => screen.getByTestId('look-4'), { timeout: 5000 });
    const rows = [...document.querySelectorAll('.files-shelf span:first-child')].map(
      (row) => row.textContent,
    );
    expect(rows).toContain('Fri, 27 Feb 2026: 9 entries');
    expect(rows).toContain('Sat, 28 Feb 2026: cannot be read, before a restore');
    await press('look-4');
    await waitFor(() => expect(said('offer-adds')).toBe('9'), { timeout: 5000 });
  });

  test('from a pasted text, and not from any other text', async () => {
    await restoreSheet();
    type('paste-text', 'milk, eggs');
    await press('paste-read');
    expect(errorAt('paste-text')).toContain('This text holds no copy');
    type('paste-text', textOfCopy(backup(foreign)));
    await press('paste-read');
    await waitFor(() => expect(said('offer-adds')).toBe(`${foreign.length}`), { timeout: 5000 });
  });

  test('shows markup in names as the text that it is', async () => {
    await restoreSheet();
    const markup = '<img src=x onerror="document.title=1">';
    await choose(backup(foreign, markup), `${markup}.gz`);
    expect(said('offer-shop')).toBe(markup);
    expect(said('offer-file')).toBe(`${markup}.gz`);
    expect(document.querySelector('.sheet img')).toBeNull();
  });

  test('refuses what is no copy, in plain words, and goes back to the choice', async () => {
    const mounted = await restoreSheet();
    const before = await held(mounted);
    await choose(new TextEncoder().encode('milk, eggs'), 'list.txt');
    expect(said('restore-refused')).toContain('This file is not a copy of a shop.');
    expect(said('restore-refused')).toContain('Nothing was changed.');
    expect(await held(mounted)).toBe(before);
    await press('restore-again');
    expect(screen.getByTestId('choose-file')).toBeDefined();
  });

  test('offers the sound part of a damaged copy as a choice', async () => {
    await restoreSheet();
    const bytes = backup(foreign);
    await choose(bytes.subarray(0, bytes.length - 300));
    expect(said('offer-damaged')).toContain('cut short');
    expect(said('add-copy')).toContain('Add it all the same');
  });

  test('asks whether to go on when no copy of the present state can be made', async () => {
    const shelf = { ...memoryShelf(), write: () => Promise.reject(new Error('full')) };
    const mounted = await restoreSheet(shelf);
    const before = await held(mounted);
    await choose(backup(foreign));
    await press('add-copy');
    await waitFor(() => screen.getByTestId('restore-no-copy'), { timeout: 5000 });
    expect(await held(mounted)).toBe(before);
    await press('go-on');
    await waitFor(() => screen.getByTestId('restored'), { timeout: 5000 });
    expect(await held(mounted)).toBe(before + foreign.length);
  });

  test('that breaks off says so and adds the rest at a tap', async () => {
    const mounted = await restoreSheet();
    const { restore } = mounted.session;
    Object.assign(mounted.session, {
      restore: async ({ entries }: Parcel) => {
        await restore({ runs: [], entries: entries.slice(0, 6) });
        throw new Error('the store is gone');
      },
    });
    await choose(backup(foreign));
    await press('add-copy');
    await waitFor(() => screen.getByTestId('restore-broken-off'), { timeout: 5000 });
    expect(said('restore-broken-off')).toContain(`6 of ${foreign.length} entries are in`);
    Object.assign(mounted.session, { restore });
    await press('add-rest');
    await waitFor(() => screen.getByTestId('restored'), { timeout: 5000 });
    expect(said('restored')).toContain(`Added ${foreign.length - 6}; 6 were here already.`);
  });
});
