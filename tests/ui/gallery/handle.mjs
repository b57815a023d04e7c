/** What only a browser with fingers can show: presses, sheets, clicks that come late. Each fault is a sentence. */

/** @typedef {import('playwright-core').Page} Page */

/**
 * Touches at times of our own, through the protocol of the browser's own tools.
 * @param {Page} page
 */
const fingersOn = async (page) => {
  const browser = await page.context().newCDPSession(page);
  const send = (
    /** @type {'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel'} */ type,
    /** @type {object[]} */ touchPoints,
  ) => browser.send('Input.dispatchTouchEvent', /** @type {never} */ ({ type, touchPoints }));
  return {
    tap: async (/** @type {{ x: number, y: number }} */ at, radiusX = 10) => {
      await send('touchStart', [{ ...at, radiusX, radiusY: 10 }]);
      await send('touchEnd', []);
    },
    send,
  };
};

/** @param {Page} page @param {string} testId */
const middleOf = async (page, testId) => {
  const box = await page.getByTestId(testId).boundingBox();
  return { x: (box?.x ?? 0) + (box?.width ?? 0) / 2, y: (box?.y ?? 0) + (box?.height ?? 0) / 2 };
};

const countOn = (/** @type {Page} */ page) => page.locator('.big-count-figure').textContent().then(Number);

/** @param {Page} page @param {string} base */
const pressFaults = async (page, base) => {
  await page.goto(`${base}?page=bench`);
  const fingers = await fingersOn(page);
  const pass = await middleOf(page, 'pass');
  /** @type {[string, () => Promise<unknown>, number][]} */
  const cases = [
    ['a tap', () => fingers.tap(pass), 1],
    [
      'two taps 180 ms apart',
      async () => {
        await fingers.tap(pass);
        await page.waitForTimeout(180);
        await fingers.tap(pass);
      },
      2,
    ],
    [
      'two taps at once',
      async () => {
        await fingers.tap(pass);
        await fingers.tap(pass);
      },
      1,
    ],
    ['a contact 160 px wide', () => fingers.tap(pass, 80), 0],
    [
      'three fingers',
      async () => {
        const three = [0, 1, 2].map((id) => ({ x: pass.x + 40 * id, y: pass.y, id }));
        await fingers.send('touchStart', three);
        await fingers.send('touchEnd', []);
      },
      0,
    ],
    [
      'sliding off',
      async () => {
        await fingers.send('touchStart', [pass]);
        await fingers.send('touchMove', [{ x: pass.x, y: 20 }]);
        await fingers.send('touchEnd', []);
      },
      0,
    ],
    [
      'a touch the system takes away',
      async () => {
        await fingers.send('touchStart', [pass]);
        await fingers.send('touchCancel', []);
      },
      0,
    ],
    [
      'a held Enter',
      async () => {
        await page.getByTestId('pass').focus();
        for (let n = 0; n < 5; n += 1) await page.keyboard.down('Enter');
        await page.keyboard.up('Enter');
      },
      1,
    ],
    [
      'a bare click',
      () =>
        page.evaluate(() =>
          /** @type {HTMLElement | null} */ (document.querySelector('[data-testid=pass]'))?.click(),
        ),
      1,
    ],
  ];
  const faults = [];
  for (const [name, run, expected] of cases) {
    await page.waitForTimeout(800);
    const before = await countOn(page);
    await run();
    await page.waitForTimeout(60);
    const counted = (await countOn(page)) - before;
    if (counted !== expected) faults.push(`${name} counted ${counted} times, not ${expected}`);
  }
  return faults;
};

/** How soon a touch is seen, ms from its time stamp to the attribute. @param {Page} page @param {string} base */
const lookFaults = async (page, base) => {
  await page.goto(`${base}?page=bench`);
  const fingers = await fingersOn(page);
  await page.evaluate(() => {
    const button = document.querySelector('[data-testid=pass]');
    let began = 0;
    addEventListener(
      'pointerdown',
      (event) => {
        began = event.timeStamp;
      },
      true,
    );
    new MutationObserver(() => {
      if (button?.hasAttribute('data-held')) document.body.dataset.seen = String(performance.now() - began);
    }).observe(/** @type {Element} */ (button), { attributes: true });
  });
  await fingers.tap(await middleOf(page, 'pass'));
  const seen = Number(await page.evaluate(() => document.body.dataset.seen ?? 'NaN'));
  return seen <= 50 ? [] : [`the pressed look came after ${seen} ms`];
};

/** @param {Page} page @param {string} base */
const sheetFaults = async (page, base) => {
  const faults = [];
  await page.goto(`${base}?page=sheet`);
  await page.keyboard.press('Escape');
  if (await page.getByTestId('sheet').isVisible()) faults.push('Escape does not close the sheet');
  await page.getByTestId('open').focus();
  await page.keyboard.press('Enter');
  await page.getByTestId('sheet').waitFor();
  for (let n = 0; n < 24; n += 1) {
    await page.keyboard.press('Tab');
    const outside = await page.evaluate(() => {
      const focused = document.activeElement;
      return focused !== document.body && !focused?.closest('dialog');
    });
    if (outside) faults.push(`after ${n + 1} tabs the focus is under the sheet`);
  }
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  if (await page.getByTestId('sheet').isVisible()) faults.push('the sheet came back');
  if ((await page.evaluate(() => document.activeElement?.getAttribute('data-testid'))) !== 'open')
    faults.push('the focus is not given back');
  return faults;
};

/** @param {Page} page @param {string} base @returns {Promise<string[]>} */
export const handlingFaults = async (page, base) => [
  ...(await pressFaults(page, base)),
  ...(await lookFaults(page, base)),
  ...(await sheetFaults(page, base)),
];
