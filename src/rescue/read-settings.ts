import { type Found, reasonOf } from './find.ts';

const title = 'Settings and small notes';

/** What the app keeps in localStorage. `open` may throw: a browser can refuse even the look at it. */
export function readSettings(open: () => Storage): Found {
  try {
    const storage = open();
    const keys = Array.from({ length: storage.length }, (_, index) => storage.key(index) ?? '');
    const lines = keys
      .filter((key) => key.startsWith('tallywright'))
      .map((key) => JSON.stringify({ setting: key, value: storage.getItem(key) }));
    return { title, lines, newest: null, unread: [] };
  } catch (error) {
    return { title, lines: [], newest: null, unread: [reasonOf(error)] };
  }
}
