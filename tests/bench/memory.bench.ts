/**
 * What 1,000,000 events take while Yield is on the screen: what the page and its workers hold after garbage was
 * collected, in JavaScript objects and in buffers, all of it counted, the app's own code and screens too.
 */
import type { BrowserContext, CDPSession } from 'playwright-core';
import { allowToKeep } from '../support/persistent-browser.ts';
import type { Bench } from './harness/bench.ts';
import type { Measured } from './harness/row.ts';
import { shopProfile } from './harness/shop-profiles.ts';

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const { profile } = await shopProfile(bench, 1_000_000);
  const empty = await shopProfile(bench, 0);
  const packed = await bench.inPage({ profile: bench.copyOf(profile), module: 'fill-shop' }, ({ call }) =>
    call<number>('packedBytes'),
  );
  const [full, none] = [bench.copyOf(profile), bench.copyOf(empty.profile)];
  const figures = { ours: [] as number[], limit: [] as number[], 'empty log': [] as number[] };
  for (let round = 0; round < bench.rounds; round += 1) {
    figures.ours.push(await bench.inBrowser(full, (context) => heldIn(context, bench.appUrl())));
    figures['empty log'].push(await bench.inBrowser(none, (context) => heldIn(context, bench.appUrl())));
    figures.limit.push(packed);
  }
  return [
    {
      id: 'memory',
      work: 'held by page and workers, Yield on screen, 1,000,000 events; limit: their packed columns',
      unit: 'B',
      figures,
      bars: [{ kind: 'at-most-times', times: 3, of: 'limit' }],
    },
  ];
}

async function heldIn(context: BrowserContext, appUrl: string): Promise<number> {
  await allowToKeep(context);
  const page = await context.newPage();
  await page.goto(`${appUrl}#/yield`);
  await page.locator('[data-testid^=wip-]').first().waitFor();
  // Past what is done beside the first screen: the second copy is compared, the whole shop read.
  await page.waitForTimeout(10_000);
  const devtools = await context.newCDPSession(page);
  const workers = await attachToWorkers(devtools);
  let bytes = 0;
  for (const send of [devtools.send.bind(devtools) as Send, ...workers]) bytes += await heldBy(send);
  return bytes;
}

type Send = (method: string) => Promise<unknown>;

async function heldBy(send: Send): Promise<number> {
  await send('HeapProfiler.enable');
  // Twice: what the first finds to be unused may have held on to more.
  await send('HeapProfiler.collectGarbage');
  await send('HeapProfiler.collectGarbage');
  const held = (await send('Runtime.getHeapUsage')) as Readonly<Record<string, number>>;
  const { usedSize = Number.NaN, embedderHeapUsedSize = 0, backingStorageSize = 0 } = held;
  return usedSize + embedderHeapUsedSize + backingStorageSize;
}

/** How to talk to each worker of a page. */
async function attachToWorkers(devtools: CDPSession): Promise<readonly Send[]> {
  const sessions: string[] = [];
  const waiting = new Map<number, (result: unknown) => void>();
  devtools.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
    if (targetInfo.type === 'worker') sessions.push(sessionId);
  });
  devtools.on('Target.receivedMessageFromTarget', ({ message }) => {
    const { id, result, error } = JSON.parse(message);
    waiting.get(id)?.(result ?? error);
  });
  await devtools.send('Target.setAutoAttach', {
    autoAttach: true,
    waitForDebuggerOnStart: false,
    flatten: false,
  });
  let sent = 0;
  return sessions.map(
    (sessionId): Send =>
      (method) => {
        sent += 1;
        const id = sent;
        const answer = new Promise((resolve) => waiting.set(id, resolve));
        void devtools.send('Target.sendMessageToTarget', {
          sessionId,
          message: JSON.stringify({ id, method, params: {} }),
        });
        return answer;
      },
  );
}
