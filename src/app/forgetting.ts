/**
 * What a window forgets when it is closed: all of it where there is no database, perhaps all of it where the browser
 * refuses to keep even settings, as a private window may.
 */
export type Forgets = 'nothing' | 'perhaps' | 'all';

export function whatIsForgotten(browser: {
  readonly database: IDBFactory | undefined;
  readonly settings: object | undefined;
}): Forgets {
  if (!browser.database) return 'all';
  return browser.settings ? 'nothing' : 'perhaps';
}
