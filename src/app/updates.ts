import { type ReadonlySignal, signal } from '@preact/signals';
import type { Workbox } from 'workbox-window';

/** A new version of the app: offered where nobody taps, applied only when asked. */
export interface Updates {
  readonly waiting: ReadonlySignal<boolean>;
  /** Whether everything is on this tablet, so that the app opens without a network. */
  readonly offlineReady: ReadonlySignal<boolean>;
  readonly apply: () => void;
}

const anHour = 60 * 60 * 1000;

/** Registers the service worker at `address` (none when empty), looks for updates at load, on return to view and hourly. */
export function watchUpdates(address: string): Updates {
  const waiting = signal(false);
  const offlineReady = signal(false);
  const quiet: Updates = { waiting, offlineReady, apply: () => {} };
  if (address === '' || !('serviceWorker' in navigator)) return quiet;
  let workbox: Workbox | undefined;
  let applying = false;
  // Without a network the registration cannot be renewed; the worker that is there goes on serving.
  const look = () => void workbox?.update().catch(() => undefined);

  async function register(): Promise<void> {
    const { Workbox } = await import('workbox-window');
    workbox = new Workbox(address, { updateViaCache: 'none' });
    workbox.addEventListener('waiting', () => {
      waiting.value = true;
    });
    workbox.addEventListener('controlling', () => {
      if (applying) location.reload();
    });
    await workbox.register();
    await navigator.serviceWorker.ready;
    offlineReady.value = true;
    setInterval(look, anHour);
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') look();
    });
  }

  void register().catch(() => undefined);
  return {
    waiting,
    offlineReady,
    apply() {
      applying = true;
      workbox?.messageSkipWaiting();
    },
  };
}
