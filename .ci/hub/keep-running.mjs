/** Starts a program and starts it again when it ends by itself. */
import { spawn } from 'node:child_process';

const longestWait = 30_000;
/** A program that ran so long was well: the next failure is the first of its kind. */
const well = 60_000;

/** How long to wait before the n-th start in a row, in ms: 1, 2, 4 … 30 s. @param {number} failures from 1 on */
export const waitBefore = (failures) => Math.min(longestWait, 1000 * 2 ** (failures - 1));

/**
 * @typedef {object} Kept
 * @property {() => number | undefined} pid of the running program
 * @property {() => Promise<void>} stop ends it, and keeps it ended
 */
/**
 * @param {object} what
 * @param {string} what.name for people
 * @param {string} what.command
 * @param {readonly string[]} what.args
 * @param {NodeJS.ProcessEnv} [what.env]
 * @param {(line: string) => void} what.say what it writes, and that it ended
 * @param {() => void} [what.started] told after each start
 * @param {(failures: number) => number} [what.wait] ms before the next start
 * @returns {Kept}
 */
export function keepRunning({
  name,
  command,
  args,
  env = process.env,
  say,
  started: told,
  wait = waitBefore,
}) {
  /** @type {import('node:child_process').ChildProcess | undefined} */
  let child;
  /** @type {NodeJS.Timeout | undefined} */
  let timer;
  let isOver = false;
  let failures = 0;

  const start = () => {
    const began = performance.now();
    // In a group of its own: Ctrl+C is for the hub, which ends what it has started in its own order.
    const started = spawn(command, args, { env, detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
    child = started;
    for (const stream of [started.stdout, started.stderr]) {
      stream.setEncoding('utf8').on('data', (text) => {
        for (const line of String(text).split('\n')) if (line.trim()) say(`${name}: ${line}`);
      });
    }
    /** @param {string} how */
    const ended = (how) => {
      if (child !== started) return;
      child = undefined;
      if (isOver) return;
      failures = performance.now() - began > well ? 1 : failures + 1;
      const pause = wait(failures);
      say(`${name} ended (${how}). It is started again in ${Math.ceil(pause / 1000)} s.`);
      timer = setTimeout(start, pause);
    };
    started.once('error', (error) => ended(error.message));
    started.once('exit', (code, signal) => ended(signal ?? `code ${code}`));
    told?.();
  };

  start();
  return {
    pid: () => child?.pid,
    async stop() {
      isOver = true;
      clearTimeout(timer);
      if (child) await endOf(child);
    },
  };
}

/** @param {import('node:child_process').ChildProcess} child */
async function endOf(child) {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGTERM');
  // One that does not heed that within ten seconds has nothing left to save.
  const timer = setTimeout(() => child.kill('SIGKILL'), 10_000);
  await gone;
  clearTimeout(timer);
}
