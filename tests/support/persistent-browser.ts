/** A browser whose profile stays on the disk, so that it can be killed, harmed and opened again. */
import { execFileSync } from 'node:child_process';
import { cpSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { basename } from 'node:path';
import { type BrowserContext, chromium } from 'playwright-core';
import { browserFlags } from './browser-flags.mjs';

export interface Profile {
  readonly browserPath: string;
  /** The folder of the profile. */
  readonly folder: string;
  /** Those of the tests if left out. */
  readonly flags?: readonly string[];
}

/** A shop in Britain on a tablet; Chromium on a bare machine may have a locale that Intl refuses. */
const place = {
  locale: 'en-GB',
  timezoneId: 'Europe/London',
  viewport: { width: 1280, height: 800 },
  hasTouch: true,
} as const;

export function launchProfile({
  browserPath,
  folder,
  flags = browserFlags,
}: Profile): Promise<BrowserContext> {
  return chromium.launchPersistentContext(folder, {
    executablePath: browserPath,
    args: [...flags],
    ...place,
  });
}

/**
 * Lets pages keep what they store even when the disk is short, once they ask for it: as a browser lets an app that is
 * on the home screen. What is not kept so is evicted from a full disk whole, every copy in it.
 */
export async function allowToKeep(context: BrowserContext): Promise<void> {
  const devtools = await context.newCDPSession(context.pages()[0] ?? (await context.newPage()));
  // The permission lasts as long as this session, which is therefore left open.
  await devtools.send('Browser.grantPermissions', { permissions: ['durableStorage'] });
}

/** Copies a profile whose browser is shut: without the marks of a browser that has it open. */
export function copyProfile(from: string, to: string): void {
  rmSync(to, { recursive: true, force: true });
  cpSync(from, to, { recursive: true, filter: (path) => !basename(path).startsWith('Singleton') });
}

interface Process {
  readonly id: number;
  readonly parent: number;
  readonly command: string;
}

function processes(): readonly Process[] {
  if (process.platform === 'linux') {
    return readdirSync('/proc')
      .filter((name) => /^\d+$/.test(name))
      .flatMap(linuxProcess);
  }
  if (process.platform === 'win32') throw new Error('Processes cannot be listed on this platform.');
  return execFileSync('ps', ['-axo', 'pid=,ppid=,command='], { encoding: 'utf8' })
    .split('\n')
    .flatMap((line) => {
      const [, id, parent, command = ''] = /^\s*(\d+)\s+(\d+)\s+(.*)$/.exec(line) ?? [];
      return id ? [{ id: Number(id), parent: Number(parent), command }] : [];
    });
}

function linuxProcess(id: string): readonly Process[] {
  try {
    const command = readFileSync(`/proc/${id}/cmdline`, 'utf8').replaceAll('\0', ' ');
    // After the name, which stands in brackets and may hold anything: state, parent.
    const parent = /.*\)\s+\S+\s+(\d+)/s.exec(readFileSync(`/proc/${id}/stat`, 'utf8'))?.[1];
    return [{ id: Number(id), parent: Number(parent), command }];
  } catch {
    // It ended while we looked.
    return [];
  }
}

/** The browser of a profile: the processes that name the folder, the oldest first, and all that they started. */
export function processesOf(folder: string): readonly number[] {
  const all = processes();
  const ours = new Set(
    all
      .filter(({ command }) => command.split(/\s/).includes(`--user-data-dir=${folder}`))
      .map(({ id }) => id),
  );
  let size = 0;
  while (size < ours.size) {
    size = ours.size;
    for (const { id, parent } of all) if (ours.has(parent)) ours.add(id);
  }
  return [...ours];
}

/** Ends every process of the profile at once, as a power switch would: nobody can write anything any more. */
export function killBrowser(folder: string): void {
  for (const id of processesOf(folder)) {
    try {
      process.kill(id, 'SIGKILL');
    } catch {
      // It ended with the one before.
    }
  }
}

/** Resolves when no process of the profile is left. */
export async function browserGone(folder: string): Promise<void> {
  for (let tries = 0; processesOf(folder).length > 0; tries += 1) {
    if (tries > 200) throw new Error('The browser did not end within 10 s.');
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
