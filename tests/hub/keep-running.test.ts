import { expect, test } from 'vitest';
import { keepRunning, waitBefore } from '../../.ci/hub/keep-running.mjs';

test('a program that fails again and again is started less and less often', () => {
  expect([1, 2, 3, 4, 5, 6, 60].map(waitBefore)).toEqual([1000, 2000, 4000, 8000, 16_000, 30_000, 30_000]);
});

/** Starts node with `script`, and tells what is said of it. */
function keep(script: string, wait: (failures: number) => number = () => 0) {
  const said: string[] = [];
  const starts: (number | undefined)[] = [];
  let heard: () => void = () => {};
  const kept = keepRunning({
    name: 'Program',
    command: process.execPath,
    args: ['-e', script],
    say: (line: string) => {
      said.push(line);
      heard();
    },
    started: () => starts.push(undefined),
    wait,
  });
  const until = async (isSo: () => boolean) => {
    while (!isSo()) {
      await new Promise<void>((resolve) => {
        heard = resolve;
      });
    }
  };
  return { kept, said, starts, until };
}

test('one that ends is said and started again, each time after a longer wait', async () => {
  const waits: number[] = [];
  const { kept, said, starts, until } = keep("console.log('here'); process.exit(3)", (failures) => {
    waits.push(failures);
    return 0;
  });
  await until(() => waits.length >= 3);
  await kept.stop();
  expect(waits.slice(0, 3)).toEqual([1, 2, 3]);
  expect(starts.length).toBeGreaterThanOrEqual(3);
  expect(said).toContain('Program: here');
  expect(said).toContain('Program ended (code 3). It is started again in 0 s.');
});

test('one that is stopped has ended, and stays so', async () => {
  const { kept, said, starts, until } = keep("console.log('here'); setInterval(() => {}, 1000)");
  await until(() => said.includes('Program: here'));
  const pid = kept.pid();
  await kept.stop();
  expect(() => process.kill(pid ?? 0, 0)).toThrow('ESRCH');
  expect(kept.pid()).toBeUndefined();
  expect(starts).toHaveLength(1);
  expect(said).toEqual(['Program: here']);
});

test('one that cannot be started is said', async () => {
  const said: string[] = [];
  const kept = keepRunning({
    name: 'Program',
    command: '/no/such/program',
    args: [],
    say: (line: string) => said.push(line),
    wait: () => 1_000_000,
  });
  await expect.poll(() => said.join()).toContain('ENOENT');
  await kept.stop();
});
