import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { shopSign } from '../../src/domain/label/shop-sign.ts';
import { accessibilityFaults, launchBrowser, openDemo } from '../support/browser.ts';
import { cameraFilm } from '../support/camera-film.ts';
import { type LabelLook, symbolFace } from '../support/label-frames.ts';
import { maker } from '../support/maker.ts';
import { demoLabel, demoTrays } from '../support/scanned-shop.ts';

const camera = cameraFilm();
const aBusyMachine = { timeout: 60_000 };

const show = (labels: readonly string[], look: Partial<LabelLook> = {}) =>
  camera.show(labels.map(symbolFace), look);

const hash = (page: Page) => page.evaluate(() => location.hash);

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser({ flags: [...camera.flags, '--use-fake-ui-for-media-stream'] });
});
afterAll(async () => {
  await browser.close();
  camera.remove();
});

/** The demo at the choice of trays of a stage, where two trays of ten wait. */
async function demo(options: Parameters<typeof openDemo>[1] = {}) {
  const { page, troubles } = await openDemo(browser, options);
  const hands = maker(page);
  const [first, second] = await demoTrays(hands);
  await hands.goTo('#/bench/kit-parts');
  return { page, troubles, hands, first, second };
}

describe('a label before the camera', () => {
  const looks: Record<string, Partial<LabelLook>> = {
    'flat and near': {},
    'turned by 27 degrees, small': { module: 4, turn: 27 },
    'upside down, blurred and noisy': { module: 6, turn: 184, blur: 1.4, noise: 30 },
    'in bad light, under dust': { module: 8, turn: 45, contrast: 0.5, noise: 20, specks: 6 },
  };
  test.each(Object.entries(looks))(
    '%s: goes to its tray at the stage that it was scanned for',
    async (_, look) => {
      const { page, troubles, hands, second } = await demo();
      show([demoLabel(second)], look);
      await hands.tap('scan-at-bench');
      await hands.at('stage-screen').waitFor(aBusyMachine);
      expect(await hash(page)).toMatch(/^#\/bench\/kit-parts\//);
      expect((await hands.at('stage-code').textContent())?.replaceAll(/\s/g, '')).toContain(second);
      expect(troubles).toEqual([]);
      await page.context().close();
    },
  );

  test('of another shop, or none at all: is said, and the camera goes on', async () => {
    const { page, hands, first, second } = await demo();
    show([`${first}-${shopSign([7, 7, 7, 7])}`]);
    await hands.tap('scan-at-bench');
    const says = hands.at('scan-says');
    await says.filter({ hasText: `${first} is a label of another shop.` }).waitFor(aBusyMachine);
    show(['https://example.test/17']);
    await page.reload();
    await says.filter({ hasText: 'This is no label of a tray.' }).waitFor(aBusyMachine);
    expect(await hash(page)).toBe('#/trays/scan/kit-parts');
    show([demoLabel(second)]);
    await page.reload();
    await hands.at('stage-screen').waitFor(aBusyMachine);
    await page.context().close();
  });
});

test('the camera runs only while its screen is shown', async () => {
  const { page, hands } = await demo();
  show([]);
  await page.evaluate(() => {
    const devices = navigator.mediaDevices;
    const get = devices.getUserMedia.bind(devices);
    devices.getUserMedia = async (wish) => {
      const stream = await get(wish);
      Object.assign(globalThis, { streams: [...(Reflect.get(globalThis, 'streams') ?? []), stream] });
      return stream;
    };
  });
  const states = () =>
    page.evaluate(() =>
      ((Reflect.get(globalThis, 'streams') ?? []) as MediaStream[]).map(
        (each) => each.getTracks()[0]?.readyState,
      ),
    );
  expect(await states()).toEqual([]);
  await hands.tap('scan-at-bench');
  await page.locator('[data-testid=scan-eye][data-state=running]').waitFor(aBusyMachine);
  expect(await states()).toEqual(['live']);
  await hands.tap('scan-back');
  await hands.at('scan-at-bench').waitFor();
  expect(await states()).toEqual(['ended']);
  await page.context().close();
});

test('a camera that is pulled out or taken is told, with the pad below and a way to try again', async () => {
  const { page, hands } = await demo();
  show([]);
  await hands.goTo('#/trays/scan');
  await page.locator('[data-testid=scan-eye][data-state=running]').waitFor(aBusyMachine);
  await page.locator('video').evaluate((video: HTMLVideoElement) => {
    const stream = video.srcObject as MediaStream;
    stream.getVideoTracks()[0]?.dispatchEvent(new Event('ended'));
  });
  await hands.at('camera-gone').waitFor();
  await page.evaluate(() => {
    navigator.mediaDevices.getUserMedia = async () => {
      throw new DOMException('in use', 'NotReadableError');
    };
  });
  await hands.tap('scan-again');
  await hands.at('camera-taken').waitFor();
  await hands.at('find-pad').waitFor();
  await page.context().close();
});

test('several in a row: two trays go into the clamps by one button, and one comes out again by undo', async () => {
  const { page, troubles } = await openDemo(browser);
  const hands = maker(page);
  const trays = await demoTrays(hands, 1);
  for (const stage of ['kit-parts', 'cut-and-bore', 'glue-up'])
    for (const code of trays) {
      await hands.workOn(stage, code);
      await hands.tap('pass');
      await hands.at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
    }
  show(trays.map(demoLabel));
  await hands.goTo('#/trays/scan');
  await hands.at('scan-for').locator('input[value=into-clamps]').check({ force: true });
  const line = (code: string) => hands.at(`bulk-line-${code}`);
  for (const code of trays) await line(code).filter({ hasText: '1 piece into' }).waitFor(aBusyMachine);
  await hands.close('bulk-do');
  for (const code of trays) await line(code).filter({ hasText: 'Done' }).waitFor();
  await hands.tap(`bulk-undo-${trays[0]}`);
  await hands.at(`bulk-leave-${trays[0]}`).waitFor();
  expect(await line(trays[1]).textContent()).toContain('Done');
  expect(troubles).toEqual([]);
  await page.context().close();
});

describe('without a picture the code pad finds the tray', () => {
  test.each([
    ['a camera that nobody allowed', camera.flags, 'camera-denied'],
    ['no camera', [], 'camera-none'],
  ])('%s', async (_, flags, said) => {
    const other = await launchBrowser({ flags });
    const { page } = await openDemo(other);
    const hands = maker(page);
    const [first] = await demoTrays(hands);
    await hands.goTo('#/bench/kit-parts');
    await hands.tap('scan-at-bench');
    await hands.at(said).waitFor();
    const pad = hands.at('find-pad');
    for (const sign of first) {
      await pad.getByRole('button', { name: sign, exact: true }).click();
      await page.waitForTimeout(140);
    }
    await pad.getByRole('button', { name: 'Open', exact: true }).click();
    await hands.at('stage-screen').waitFor();
    await other.close();
  });
});

test.each(['tablet', 'phone'] as const)('the scan screen can be used by everybody (%s)', async (size) => {
  const { page } = await openDemo(browser, { size });
  const hands = maker(page);
  show([]);
  await hands.goTo('#/trays/scan');
  await page.locator('[data-testid=scan-eye][data-state=running]').waitFor(aBusyMachine);
  expect(await accessibilityFaults(page)).toEqual([]);
  await hands.at('scan-for').locator('input[value=into-clamps]').check({ force: true });
  await hands.at('bulk-list').waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  await page.context().close();
});
