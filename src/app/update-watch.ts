import type { Signal } from '@preact/signals';
import { Workbox } from 'workbox-window';
import { newId } from '../store/new-id.ts';
import { systemTimer } from './saver.ts';
import { leaveUpdateMark } from './update-mark.ts';
import type { Offer, UpdateNeeds } from './update-offer.ts';
import { type UpdateTaking, updateTaking } from './update-taking.ts';
import { otherWindows } from './update-windows.ts';

export interface UpdateWatchParts extends UpdateNeeds {
  readonly offer: Signal<Offer>;
  readonly offlineReady: Signal<boolean>;
}

const anHour = 60 * 60 * 1000;
/** A worker that runs answers within a few ms, one that must be started first within some 100. */
const longestCount = 400;
const timesAsked = 4;

/** Registers the worker, looks for new versions at load, on return to view and hourly, and lets them in when asked. */
export async function openUpdateWatch(
  address: string,
  { offer, offlineReady, busyHere, beforeApply }: UpdateWatchParts,
): Promise<UpdateTaking> {
  const { serviceWorker } = navigator;
  let registration = await serviceWorker.getRegistration();
  const workbox = new Workbox(address, { updateViaCache: 'none' });

  const taking = updateTaking({
    browser: {
      waits: () => registration?.waiting != null,
      letIn: () => registration?.waiting?.postMessage({ type: 'SKIP_WAITING' }),
      countWindows: () => countWindows(registration?.waiting),
      reload(asked) {
        if (!leaveUpdateMark() && asked === 'unasked') return false;
        location.reload();
        return true;
      },
    },
    windows: otherWindows({
      name: 'windows of tallywright',
      timer: systemTimer,
      newId,
      busyHere,
      at: () => location.hash,
    }),
    timer: systemTimer,
    offer,
    busyHere,
    beforeApply,
  });

  // The first worker that a page gets is of its own version: nothing to load anew for.
  let underWorker = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', () => {
    if (underWorker) taking.onTakeOver();
    underWorker = true;
  });
  // A version that was waiting before this page was loaded is told of, too.
  workbox.addEventListener('waiting', taking.onWaiting);
  workbox.addEventListener('redundant', taking.onWaiting);

  // Without a network the registration cannot be renewed; the worker that is there goes on serving.
  // On a busy tablet a version may wait before the news of its coming is heard: each look also sees what waits.
  const look = () => void registration?.update().then(taking.onWaiting, () => undefined);
  async function register(): Promise<void> {
    registration = (await workbox.register()) ?? registration;
    taking.onWaiting();
    look();
    setInterval(look, anHour);
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') look();
    });
    await serviceWorker.ready;
    offlineReady.value = true;
  }
  void register().catch(() => undefined);
  return taking;
}

/** Asked a few times: a question that meets a worker on its way from one state to the next goes unheard. */
async function countWindows(worker: ServiceWorker | null | undefined): Promise<number | undefined> {
  for (let asked = 0; worker && asked < timesAsked; asked += 1) {
    const count = await askForWindows(worker);
    if (count !== undefined) return count;
  }
  return undefined;
}

function askForWindows(worker: ServiceWorker): Promise<number | undefined> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    const stop = systemTimer.after(longestCount, () => {
      port1.close();
      resolve(undefined);
    });
    port1.onmessage = ({ data }) => {
      stop();
      resolve(typeof data === 'number' ? data : undefined);
    };
    worker.postMessage({ type: 'COUNT_WINDOWS' }, [port2]);
  });
}
