/** Whether the system may be told of something: `none` where the browser has no such thing, `later` while nobody was asked. */
export type MayNotify = 'yes' | 'no' | 'later' | 'none';

const answers: Readonly<Record<NotificationPermission, MayNotify>> = {
  granted: 'yes',
  denied: 'no',
  default: 'later',
};

export function mayNotify(): MayNotify {
  return 'Notification' in globalThis ? answers[Notification.permission] : 'none';
}

/** Asks the person, which browsers allow from within a tap alone. */
export async function askToNotify(): Promise<MayNotify> {
  return mayNotify() === 'none' ? 'none' : answers[await Notification.requestPermission()];
}

/**
 * Has the system show a notice, where it may; of several with one tag the last stands. It goes through the service worker
 * where there is one: Chrome on Android knows no other way, and throws. Never rejects: it is an extra beside what the app shows.
 */
export async function notifySystem(title: string, { tag }: { readonly tag: string }): Promise<void> {
  if (mayNotify() !== 'yes') return;
  try {
    const registration = await navigator.serviceWorker?.getRegistration();
    if (registration) await registration.showNotification(title, { tag });
    else new Notification(title, { tag });
  } catch {
    // What is over is shown and sounded in the app all the same.
  }
}
