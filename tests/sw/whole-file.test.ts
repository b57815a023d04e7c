import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { wholeFile } from '../../src/sw/whole-file.ts';

const text = 'export const a = 1;\n'.repeat(50);
const integrity = `sha256-${createHash('sha256').update(text).digest('base64')}`;
const asked = (digest: string) => new Request('https://shop.test/assets/a.js', { integrity: digest });
const kept = (body: string, { digest = integrity, status = 200 } = {}) =>
  wholeFile.cacheWillUpdate({ request: asked(digest), response: new Response(body, { status }) });

test('a file that came as it was built is kept, and can still be read', async () => {
  expect(await (await kept(text))?.text()).toBe(text);
});

test('one that was cut on its way, or is another, is not kept', async () => {
  expect(await kept(text.slice(0, text.length / 2))).toBeNull();
  expect(await kept('/* sign in to this network */')).toBeNull();
});

test('nor is an answer that is no file, whatever stands in it', async () => {
  expect(await kept(text, { status: 404 })).toBeNull();
});

test('what has no digest is kept as it came', async () => {
  expect(await (await kept('{"name":"Tallywright"}', { digest: '' }))?.text()).toBe('{"name":"Tallywright"}');
});

test('a file that breaks off while it is read ends the install', async () => {
  const broken = new Response(
    new ReadableStream({
      start: (stream) => stream.error(new TypeError('the connection was lost')),
    }),
  );
  await expect(wholeFile.cacheWillUpdate({ request: asked(integrity), response: broken })).rejects.toThrow();
});
