// @vitest-environment happy-dom
import { afterEach, describe, expect, test } from 'vitest';
import { handOver } from '../../../src/screens/parts/hand-over.ts';

const file = new File(['a'], 'tallywright-taps-2026-03-02.csv', { type: 'text/csv' });
let downloads: string[] = [];

/** A browser with the given ways of handing a file over; what it downloads is noted. */
function browser(ways: Readonly<Record<string, unknown>>): void {
  for (const [name, value] of Object.entries(ways))
    Object.defineProperty(navigator, name, { value, configurable: true, writable: true });
  downloads = [];
  HTMLAnchorElement.prototype.click = function click(this: HTMLAnchorElement) {
    downloads.push(this.download);
  };
}

const { click } = HTMLAnchorElement.prototype;
afterEach(() => {
  HTMLAnchorElement.prototype.click = click;
  for (const name of ['standalone', 'share', 'canShare']) Reflect.deleteProperty(navigator, name);
});

const refusing = (name: string) => () => Promise.reject(new DOMException('refused', name));

describe('a file is handed over', () => {
  test('as a download, wherever downloads exist, though the browser could share', async () => {
    browser({ share: refusing('AbortError'), canShare: () => true });
    expect(await handOver(file)).toBe('saved');
    expect(downloads).toEqual([file.name]);
  });

  test('through the share sheet on the home screen of an iPad', async () => {
    const shared: unknown[] = [];
    browser({
      standalone: true,
      canShare: () => true,
      share: async (what: unknown) => void shared.push(what),
    });
    expect(await handOver(file)).toBe('shared');
    expect(shared).toEqual([{ files: [file] }]);
    expect(downloads).toEqual([]);
  });

  test('as a download when that home screen cannot share files', async () => {
    browser({ standalone: true });
    expect(await handOver(file)).toBe('saved');
    expect(downloads).toEqual([file.name]);
  });

  test('not at all when the person calls it off, and at a fresh tap when the first one is too old', async () => {
    browser({ standalone: true, canShare: () => true, share: refusing('AbortError') });
    expect(await handOver(file)).toBe('called-off');
    browser({ share: refusing('NotAllowedError') });
    expect(await handOver(file)).toBe('tap-again');
    expect(downloads).toEqual([]);
  });
});
