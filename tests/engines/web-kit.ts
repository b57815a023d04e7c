/** A WebKitGTK with nothing remembered, on a screen of its own that nobody sees. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { freePorts } from '../../.ci/hub/free-ports.mjs';
import { findWebKit } from './find-webkit.mjs';
import { until } from './until.ts';
import { callerAt, openSession, type Session } from './web-driver.ts';

export interface WebKit {
  readonly session: Session;
  /** The file that a press hands out. */
  readonly handedOut: (
    press: () => Promise<unknown>,
  ) => Promise<{ readonly path: string; readonly bytes: Buffer }>;
  readonly close: () => Promise<void>;
}

/** The browser's own bar is wider than a phone: without its margins it is not. */
const narrowBar = '* { padding: 0; margin: 0; min-width: 0; border-width: 0; }';

export async function openWebKit(): Promise<WebKit> {
  const { browser, driver, screen } = findWebKit();
  const folder = mkdtempSync(join(tmpdir(), 'tallywright-'));
  const downloads = furnish(folder);
  const started: ChildProcess[] = [];
  // A run that is broken off leaves nothing at work.
  const endAll = () => {
    for (const child of started) child.kill('SIGKILL');
  };
  process.once('exit', endAll);
  const close = async () => {
    process.off('exit', endAll);
    for (const child of started.reverse()) {
      if (child.exitCode !== null || child.signalCode !== null) continue;
      child.kill();
      await once(child, 'exit');
    }
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    const shown = spawn(screen, ['-displayfd', '3', '-screen', '0', '2000x2000x24', '-nolisten', 'tcp'], {
      stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
    });
    started.push(shown);
    const display = String(await once(shown.stdio[3] as Readable, 'data')).trim();
    const [port] = await freePorts(1);
    started.push(
      spawn(driver, [`--port=${port}`, '--host=127.0.0.1'], {
        stdio: 'ignore',
        env: settings(folder, display),
      }),
    );
    const address = `http://127.0.0.1:${port}`;
    await until(() => callerAt(address)('GET', '/status').then(Boolean, () => false), {
      what: 'the driver answers',
    });
    const session = await openSession(address, {
      browserName: 'MiniBrowser',
      'webkitgtk:browserOptions': { binary: browser, args: ['--automation'] },
    });
    return {
      session,
      handedOut: (press) => fileThatComes(downloads, press),
      async close() {
        await session.end().catch(() => undefined);
        await close();
      },
    };
  } catch (error) {
    await close();
    throw error;
  }
}

/** A home for the browser; where its downloads go. */
function furnish(folder: string): string {
  const downloads = join(folder, 'downloads');
  for (const each of [downloads, join(folder, 'config', 'gtk-3.0')]) mkdirSync(each, { recursive: true });
  writeFileSync(join(folder, 'config', 'user-dirs.dirs'), `XDG_DOWNLOAD_DIR="${downloads}"\n`);
  writeFileSync(join(folder, 'config', 'gtk-3.0', 'gtk.css'), narrowBar);
  return downloads;
}

const settings = (folder: string, display: string): NodeJS.ProcessEnv => ({
  ...process.env,
  ...{ DISPLAY: `:${display}`, GDK_BACKEND: 'x11', LIBGL_ALWAYS_SOFTWARE: '1' },
  ...{ XDG_CONFIG_HOME: join(folder, 'config'), XDG_CACHE_HOME: join(folder, 'cache') },
  ...{ XDG_DATA_HOME: join(folder, 'data'), LANG: 'en_GB.UTF-8', TZ: 'Europe/London' },
});

async function fileThatComes(folder: string, press: () => Promise<unknown>) {
  for (const old of readdirSync(folder)) rmSync(join(folder, old));
  await press();
  // The browser writes under another name first.
  const whole = () => readdirSync(folder).filter((name) => !name.endsWith('.wkdownload'));
  await until(() => whole().length === 1, { what: 'a file is handed out' });
  const path = join(folder, whole()[0] ?? '');
  return { path, bytes: readFileSync(path) };
}
