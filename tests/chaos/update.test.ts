import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import type { Random } from '../../src/domain/chance/seeded-random.ts';
import { type BreakableHost, openBreakableHost } from './breakable-host.ts';
import { compareTaps, whatWasSaid } from './compare.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';
import {
  dropProfile,
  freshProfile,
  type Look,
  lookOnce,
  openStation,
  randomTaps,
  type Station,
} from './station.ts';

let host: BreakableHost;
const folder = () => freshProfile('update');
const open = (profile: string) => openStation(profile, { servedBy: host.port });
let newest = 0;

/** What the page looks for when a tablet is taken up again. */
const lookForUpdate = (page: Page) =>
  page.evaluate(
    async () => void (await navigator.serviceWorker.getRegistration())?.update().catch(() => undefined),
  );
const waits = (page: Page) =>
  page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting != null);
const updateWaits = (page: Page) => expect.poll(() => waits(page), { timeout: 20_000 }).toBe(true);

/** The later version that the page is of; none is the built one. */
const versionOf = (page: Page) =>
  page.locator('meta[name=later-version]').getAttribute('content', { timeout: 2000 });
const isBuiltVersion = async (page: Page) => (await page.locator('meta[name=later-version]').count()) === 0;

type Stations = readonly [first: Station, ...later: Station[]];

/** An update breaks off in mid-transfer under a tapping hand; the next try gets it whole. */
async function cutInMidTransfer(profile: string, random: Random): Promise<Stations> {
  const station = await open(profile);
  const { page, tap } = await station.window();
  const before = host.spoilt();
  host.scripts('cut');
  host.serve(++newest);
  await Promise.all([tap(randomTaps(random, 12)), lookForUpdate(page)]);
  await expect.poll(host.spoilt, { timeout: 10_000 }).toBeGreaterThan(before);
  host.scripts('whole');
  await page.reload();
  expect(await isBuiltVersion(page)).toBe(true);
  await lookForUpdate(page);
  await updateWaits(page);
  return [station];
}

/** The browser is killed while the new version comes in. */
async function killedInInstall(profile: string, random: Random): Promise<Stations> {
  const station = await open(profile);
  const { page, tap } = await station.window();
  const before = host.spoilt();
  host.scripts('slow');
  host.serve(++newest);
  const burst = tap(randomTaps(random, 16)).catch(() => undefined);
  await lookForUpdate(page);
  await expect.poll(host.spoilt, { timeout: 10_000 }).toBeGreaterThan(before);
  await station.kill();
  await burst;
  host.scripts('whole');
  return [station];
}

/** The new version is taken and worked on, then the host goes back to the one before. */
async function rolledBack(profile: string, random: Random): Promise<Stations> {
  const older = await open(profile);
  const first = await older.window();
  await first.tap(randomTaps(random, 5));
  host.serve(++newest);
  await lookForUpdate(first.page);
  await updateWaits(first.page);
  await older.close();
  // No window is open any more: the browser starts with the version that waited.
  const newer = await open(profile);
  const second = await newer.window();
  expect(await versionOf(second.page)).toBe(String(newest));
  await second.tap(randomTaps(random, 5));
  host.serve(0);
  await lookForUpdate(second.page);
  await updateWaits(second.page);
  await second.tap(randomTaps(random, 5));
  return [older, newer];
}

const faults = [cutInMidTransfer, killedInInstall, rolledBack];

let before: Look;
beforeAll(async () => {
  before = await lookOnce('update');
  host = await openBreakableHost(inject('builtApp'));
}, 60_000);
afterAll(() => host.close());

test(
  'updates that break off, are killed or taken back cost no acknowledged tap and never the app',
  async () => {
    const verdict = await runKind('update', async ({ run, random }) => {
      const profile = folder();
      host.scripts('whole');
      host.serve(0);
      const fault = faults[run % faults.length] ?? cutInMidTransfer;
      const stations = await fault(profile, random);
      await stations.at(-1)?.close();
      const last = await open(profile);
      const now = await last.look();
      expect(now.tray).toBe(true);
      await last.close();
      dropProfile(profile);
      const taps = stations.flatMap((station) => station.taps);
      return { ...compareTaps({ before, now, taps }), ...whatWasSaid(...stations, last) };
    });
    expect(verdict).toMatchObject(allKept);
  },
  timeBox('update'),
);
