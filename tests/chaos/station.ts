/** One tablet of a chaos run: the built app in a profile of its own, a hand that taps, and books of what it tapped. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import type { Random } from '../../src/domain/chance/seeded-random.ts';
import { browserFlags } from '../support/browser-flags.mjs';
import { installTapper, messages, type TapNews } from '../support/page-tapper.ts';
import {
  allowToKeep,
  browserGone,
  copyProfile,
  killBrowser,
  launchProfile,
} from '../support/persistent-browser.ts';
import { deltaOf, type Held, type Tap, type TapKind } from '../support/tap-ledger.ts';
import { heldOf } from './held-events.ts';
import { actsWaiting } from './kept-acts.ts';
import { piecesOnTray } from './prepared-shop.ts';
import { readStore } from './read-store.ts';

/** A start that takes longer (ms) has failed. */
const longestStart = 20_000;

/**
 * For so long (ms) a look waits for what is to be put back. A tap that came back between a look at the screen and one at
 * the log seemed lost on the screen; one that came back after both seemed doubled in the next run.
 */
const longestHealing = 30_000;

/** What a shop shows once it has made up its mind: its places, the welcome, or why it does not open. */
type Standing = 'open' | 'welcome' | 'shut';

/** What the app holds, by its log and by its screen. */
export interface Look {
  readonly held: readonly Held[];
  /** Pieces by which the count on the screen is off from what the log amounts to: above 0, pieces are lost on it. */
  readonly countOff: number;
  /** Whether the great tray is there to be tapped on. */
  readonly tray: boolean;
}

export interface Station {
  readonly context: BrowserContext;
  readonly standing: Standing;
  /** How long it took from the start of the browser to the first screen, ms. */
  readonly startMs: number;
  /** The messages that the screen has shown since it was opened, with their words. */
  readonly said: ReadonlyMap<string, string>;
  /** What has been tapped since it was opened. */
  readonly taps: readonly Tap[];
  /** A page on the stage screen. */
  readonly window: () => Promise<ChaosWindow>;
  readonly look: () => Promise<Look>;
  readonly close: () => Promise<void>;
  /** Kills the browser in whatever it does. */
  readonly kill: () => Promise<void>;
}

interface ChaosWindow {
  readonly page: Page;
  /** Taps as quick as a hand may; resolves when all is acknowledged or 4 s have passed. Rejects when the page goes. */
  readonly tap: (taps: readonly TapKind[], by?: 'count' | 'mark') => Promise<void>;
  readonly left: () => Promise<number>;
  /** What has been tapped in this tab, as the tab itself has noted it. */
  readonly made: () => Promise<readonly Tap[]>;
}

export function freshProfile(name: string): string {
  const folder = join(inject('chaosFolder'), name);
  copyProfile(inject('preparedProfile'), folder);
  return folder;
}

export const dropProfile = (folder: string): void => rmSync(folder, { recursive: true, force: true });

/** What the prepared shop holds: the beginning of every run on a fresh profile. Files run side by side: each says who looks. */
export async function lookOnce(who: string): Promise<Look> {
  const folder = freshProfile(`look-${who}`);
  const station = await openStation(folder);
  const look = await station.look();
  await station.close();
  dropProfile(folder);
  return look;
}

/**
 * Opens the app in the profile `folder`, from the start of the browser to the first screen. With `servedBy` another host
 * stands at the address that the profile knows: the one on that port.
 */
export async function openStation(
  folder: string,
  { servedBy }: { servedBy?: number } = {},
): Promise<Station> {
  const [url, hash] = [inject('appUrl'), inject('preparedHash')];
  const { host } = new URL(url);
  const elsewhere = servedBy === undefined ? [] : [`--host-resolver-rules=MAP ${host} 127.0.0.1:${servedBy}`];
  const began = performance.now();
  const context = await launchProfile({
    browserPath: inject('browserPath'),
    folder,
    flags: [...browserFlags, ...elsewhere],
  });
  await allowToKeep(context);
  const taps: Tap[] = [];
  const said = new Map<string, string>();
  const waiting = new Map<Page, Tap[]>();

  function hear(page: Page, news: TapNews): void {
    const own = waiting.get(page) ?? [];
    waiting.set(page, own);
    if (news.kind === 'tapped') {
      const tap: Tap = { kind: news.tap, acknowledged: false };
      taps.push(tap);
      own.push(tap);
    } else if (news.kind === 'acknowledged') {
      for (const tap of own.splice(0, news.taps)) tap.acknowledged = true;
    } else if (news.kind === 'said') said.set(news.what, news.words);
    else said.set('unexplained', `a count of ${news.left} that no tap explains`);
  }

  await context.exposeBinding('tellTapNews', ({ page }, news: TapNews) => hear(page, news));
  await context.addInitScript(installTapper, { watched: messages, deltas: deltaOf });
  const first = context.pages()[0] ?? (await context.newPage());
  const standing = await first
    .goto(`${url}#/bench`)
    .then(() => standingOf(first))
    .catch(async (error: unknown) => {
      await context.close();
      await browserGone(folder);
      throw error;
    });
  const startMs = Math.round(performance.now() - began);

  async function window(): Promise<ChaosWindow> {
    const free = first.isClosed() || first.url().endsWith(hash) ? await context.newPage() : first;
    await free.goto(`${url}${hash}`);
    await free.locator('[data-testid=stage-left]').waitFor();
    // The screen has just come into view: touches of its first moment do not count.
    await pause(150);
    return windowOn(free);
  }

  /** What the app holds once it has put back what waits for that, and shows it. */
  async function look(): Promise<Look> {
    const page = await context.newPage();
    await page.goto(`${url}${hash}`);
    for (const began = performance.now(); ; await pause(100)) {
      const waiting = await actsWaiting(page);
      const seen = await lookAt(page);
      const isSettled = waiting === 0 && seen.countOff === 0;
      if (isSettled || performance.now() - began > longestHealing) {
        await page.close();
        return seen;
      }
    }
  }

  async function close(): Promise<void> {
    openStations.delete(station);
    await context.close().catch(() => undefined);
    await browserGone(folder);
  }

  const station: Station = {
    context,
    standing,
    startMs,
    said,
    taps,
    window,
    look,
    close,
    async kill() {
      killBrowser(folder);
      await close();
    },
  };
  openStations.add(station);
  return station;
}

const openStations = new Set<Station>();

export const isOpen = (station: Station): boolean => openStations.has(station);

/** Closes what a run that broke off has left open. */
export async function closeStations(): Promise<void> {
  for (const station of openStations) await station.close();
}

function windowOn(page: Page): ChaosWindow {
  return {
    page,
    tap: (taps, by = 'count') => page.evaluate((burst) => tapper.run(burst), { taps, by }),
    left: () => leftOn(page),
    made: () => page.evaluate(() => tapper.made()),
  };
}

async function lookAt(page: Page): Promise<Look> {
  // An emptied shop has no such tray: then the log alone is judged.
  const left = await leftOn(page).catch(() => null);
  const held = heldOf(await readStore(page));
  const onTray = held.reduce((sum, { tap }) => sum + (tap ? deltaOf[tap] : 0), piecesOnTray);
  return { held, countOff: left === null ? 0 : left - onTray, tray: left !== null };
}

async function leftOn(page: Page): Promise<number> {
  return Number(await page.locator('[data-testid=stage-left] .figures').textContent({ timeout: 10_000 }));
}

async function standingOf(page: Page): Promise<Standing> {
  const found = await page
    .waitForFunction(
      () => {
        if (document.querySelector('[data-testid=stage-kit-parts]')) return 'open';
        if (document.querySelector('[data-testid=new-shop]')) return 'welcome';
        return document.querySelector('main.standing:not([aria-busy=true])') ? 'shut' : null;
      },
      undefined,
      { timeout: longestStart },
    )
    .catch(async (error: unknown) => {
      const shown = await page.locator('body').textContent({ timeout: 1000 });
      throw new Error(`no first screen, but: ${shown}`, { cause: error });
    });
  const standing = (await found.jsonValue()) ?? 'shut';
  // What was put back or is missing is said beside the first screen, perhaps a moment later.
  if (standing !== 'welcome') await pause(300);
  return standing;
}

/** Taps in a random order: mostly passes, now and then a flaw or an undo, which takes back what these taps did. */
export function randomTaps(random: Random, count: number): readonly TapKind[] {
  let done = 0;
  return Array.from({ length: count }, (): TapKind => {
    const draw = random();
    const undo = draw < 0.1 && done > 1;
    done += undo ? -1 : 1;
    if (undo) return 'undo';
    if (draw < 0.16) return 'mended';
    return draw < 0.2 ? 'scrapped' : 'pass';
  });
}
