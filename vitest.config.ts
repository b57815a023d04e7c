import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';
import { isFull } from './tests/chaos/chaos-plan.ts';
import { ClosingLineReporter } from './tests/support/closing-line-reporter.ts';
import { LongestFirst } from './tests/support/longest-first.ts';
import { seedFrom } from './tests/support/seed.ts';

const seed = seedFrom(process.env, Date.now() % 2 ** 31);

/** Tests of what has no clock, no chance and no browser. */
const pure = ['tests/domain/**/*.test.ts', 'tests/words/**/*.test.ts', 'tests/demo/**/*.test.ts'];

const unitTests = {
  // No test is timed: this only ends one that hangs, on a machine with other work too.
  testTimeout: 60_000,
  setupFiles: ['tests/support/setup.ts'],
  sequence: { groupOrder: 0 },
  // The usual one fewer would leave one of two cores to nobody.
  maxWorkers: '100%',
};

export default defineConfig({
  plugins: [preact()],
  define: { __APP_VERSION__: JSON.stringify('0.0.0-test'), __BUILT_AT__: '0' },
  test: {
    env: { SEED: String(seed) },
    sequence: { sequencer: LongestFirst },
    reporters: [
      { onInit: () => console.log(`Random tests use SEED=${seed}`) },
      // Tells of each test that is left out, and why.
      process.env.ENGINE === undefined ? 'default' : 'verbose',
      new ClosingLineReporter(),
    ],
    projects: [
      {
        extends: true,
        test: {
          ...unitTests,
          name: 'domain',
          include: pure,
          // Pure modules remember nothing: each is loaded once in a worker, and not once for each file.
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          ...unitTests,
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**', 'tests/chaos/**', 'tests/engines/**', 'tests/hub/**', ...pure],
        },
      },
      {
        extends: true,
        test: {
          ...unitTests,
          name: 'hub',
          include: ['tests/hub/**/*.test.ts'],
          // Broker and web server, installed where that is wanted.
          globalSetup: ['tests/support/hub-programs.ts'],
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          setupFiles: ['tests/support/skip-for-engine.ts'],
          globalSetup: [
            'tests/support/built-app.ts',
            'tests/support/made-demo.ts',
            'tests/support/hub-programs.ts',
          ],
          // No test is timed here either, and whole days of a shop are told on machines with two slow cores.
          testTimeout: 240_000,
          hookTimeout: 240_000,
          // After the unit tests, three browsers at a time: they mostly wait, for timers and for the disk.
          maxWorkers: 3,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: 'webkit',
          // Another engine than that of `npm test`: run where it is asked for.
          include: process.env.ENGINE === 'webkit' ? ['tests/engines/**/*.test.ts'] : [],
          globalSetup: ['tests/support/built-app.ts'],
          testTimeout: 600_000,
          hookTimeout: 240_000,
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: 'chaos',
          include: ['tests/chaos/**/*.test.ts'],
          globalSetup: ['tests/support/built-app.ts', 'tests/chaos/chaos-setup.ts'],
          hookTimeout: 120_000,
          // Two at a time, each with a profile of its own. The full run has time for one: its faults hit when they are meant to.
          maxWorkers: isFull ? 1 : 2,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
