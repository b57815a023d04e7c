/** Before each file of the unit tests: one seed for every random test, a database where one is kept, a page left clean. */
import fc from 'fast-check';
import { afterEach, expect } from 'vitest';
import { seedFrom } from './seed.ts';

fc.configureGlobal({ seed: seedFrom(process.env, Date.now() % 2 ** 31) });

if (/[/\\]tests[/\\](store|app|screens)[/\\]/.test(expect.getState().testPath ?? ''))
  await import('fake-indexeddb/auto');

if (typeof document !== 'undefined') {
  // A tablet in Britain, as in the browser tests.
  Object.defineProperty(navigator, 'languages', { value: ['en-GB'], configurable: true });
  const { cleanup } = await import('@testing-library/preact');
  afterEach(cleanup);
}
