// @vitest-environment happy-dom
import { afterEach, expect, test } from 'vitest';
import { handOver, wayOut } from '../../../src/screens/parts/hand-over.ts';

const download = Object.getOwnPropertyDescriptor(HTMLAnchorElement.prototype, 'download');

function browser({ downloads = true, ...ways }: { downloads?: boolean } & Record<string, unknown>): void {
  if (!downloads) Reflect.deleteProperty(HTMLAnchorElement.prototype, 'download');
  for (const [name, value] of Object.entries(ways))
    Object.defineProperty(navigator, name, { value, configurable: true, writable: true });
}

afterEach(() => {
  if (download) Object.defineProperty(HTMLAnchorElement.prototype, 'download', download);
  for (const name of ['standalone', 'share', 'canShare']) Reflect.deleteProperty(navigator, name);
});

test('a copy leaves as a download, else by sharing, else as text', () => {
  expect(wayOut()).toBe('download');
  browser({ canShare: () => true });
  expect(wayOut()).toBe('download');
  browser({ standalone: true });
  expect(wayOut()).toBe('share');
  browser({ canShare: () => false });
  expect(wayOut()).toBe('text');
});

test('a browser without downloads shares or shows text, on whatever device', async () => {
  const shared: string[] = [];
  const share = async ({ files }: { files: File[] }) => void shared.push(...files.map(({ name }) => name));
  browser({ downloads: false });
  expect(wayOut()).toBe('text');
  browser({ canShare: () => true, share });
  expect(wayOut()).toBe('share');
  expect(await handOver(new File(['a'], 'a.gz'))).toBe('shared');
  expect(shared).toEqual(['a.gz']);
});
