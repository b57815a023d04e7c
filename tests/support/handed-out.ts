/** What a page hands out as a file. */
import { readdirSync, statSync, unlinkSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { downloadsOf } from './engine.mjs';

export interface HandedOut {
  readonly name: string;
  readonly bytes: Buffer;
}

/** The file that a press hands out. */
export async function handedOut(page: Page, press: () => Promise<unknown>): Promise<HandedOut> {
  const browser = page.context().browser();
  const folder = browser ? downloadsOf(browser) : undefined;
  if (folder !== undefined) return fileThatComes(folder, press);
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

/** Where the driver tells of no file that a page has made by itself: the one that comes into the folder. */
async function fileThatComes(folder: string, press: () => Promise<unknown>): Promise<HandedOut> {
  // Each is taken away once it is read, so that the next may have its name.
  for (const old of readdirSync(folder)) unlinkSync(join(folder, old));
  await press();
  const whole = () => {
    const names = readdirSync(folder);
    return names.length === 1 && names.every((name) => statSync(join(folder, name)).size > 0) ? names : [];
  };
  // The browser writes beside the name, under it with an ending more, and leaves the name empty meanwhile.
  await expect.poll(whole, { timeout: 30_000, message: 'a file is handed out' }).toHaveLength(1);
  const [name = ''] = whole();
  return { name, bytes: await readFile(join(folder, name)) };
}
