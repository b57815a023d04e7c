import { expect, test } from 'vitest';
import { openSymbolReader, type SymbolReaderParts } from '../../src/app/symbol-reader.ts';
import type { FromSymbolWorker, ToSymbolWorker } from '../../src/worker/symbol-protocol.ts';

/** A worker that answers as it is told. */
function fakeWorker(answer: () => FromSymbolWorker) {
  const heard: string[] = [];
  let tell = (_: MessageEvent<FromSymbolWorker>) => {};
  const start: SymbolReaderParts['start'] = () => ({
    postMessage(message: ToSymbolWorker) {
      heard.push(message.kind);
      if (message.kind === 'read')
        queueMicrotask(() => tell({ data: answer() } as MessageEvent<FromSymbolWorker>));
    },
    terminate: () => heard.push('ended'),
    addEventListener(type: string, listener: unknown) {
      if (type === 'message') tell = listener as typeof tell;
    },
  });
  return { heard, start };
}

function platformWith(formats: readonly string[], detect: () => Promise<{ rawValue: string }[]>) {
  return Object.assign(
    class {
      detect = detect;
    },
    { getSupportedFormats: async () => formats },
  );
}

const frame = () => ({ close: () => {} }) as ImageBitmap;
const wasm = () => 'https://shop.test/reader.wasm';
const own = (): FromSymbolWorker => ({ kind: 'read', texts: ['by the app'] });

test('the platform’s detector is taken where it reads QR symbols', async () => {
  const { heard, start } = fakeWorker(own);
  const platform = platformWith(['qr_code'], async () => [{ rawValue: 'by the platform' }]);
  const reader = await openSymbolReader({ platform, start, wasm });
  expect(await reader.read(frame())).toEqual(['by the platform']);
  expect(heard).toEqual([]);
});

test.each([
  ['has no detector', undefined],
  ['has one for other codes', platformWith(['ean_13'], async () => [])],
  ['has one that does not work', platformWith(['qr_code'], () => Promise.reject(new Error('no service')))],
])('the app’s own decoder reads where the platform %s', async (_, platform) => {
  const { heard, start } = fakeWorker(own);
  const reader = await openSymbolReader({ platform, start, wasm });
  expect(await reader.read(frame())).toEqual(['by the app']);
  expect(await reader.read(frame())).toEqual(['by the app']);
  reader.close();
  expect(heard).toEqual(['begin', 'read', 'read', 'ended']);
});

test('a decoder that cannot read says so', async () => {
  const { start } = fakeWorker(() => ({ kind: 'failed', problem: 'no WebAssembly' }));
  const reader = await openSymbolReader({ platform: undefined, start, wasm });
  await expect(reader.read(frame())).rejects.toThrow('no WebAssembly');
});
