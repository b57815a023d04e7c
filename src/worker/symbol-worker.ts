/** Reads QR symbols in frames of a camera beside the window: a frame takes tens of milliseconds that no tap may wait for. */
import { BarcodeDetector, prepareZXingModule } from 'barcode-detector/ponyfill';
import type { FromSymbolWorker, ToSymbolWorker } from './symbol-protocol.ts';

const worker = globalThis as unknown as DedicatedWorkerGlobalScope;
const say = (message: FromSymbolWorker) => worker.postMessage(message);

let detector: BarcodeDetector | undefined;

/** Without an address of ours the decoder would ask a host on the internet for its WebAssembly. */
function begin(wasm: string): void {
  prepareZXingModule({ overrides: { locateFile: () => wasm } });
  detector = new BarcodeDetector({ formats: ['qr_code'] });
}

async function read(frame: ImageBitmap): Promise<void> {
  try {
    const found = (await detector?.detect(frame)) ?? [];
    say({ kind: 'read', texts: found.map(({ rawValue }) => rawValue) });
  } catch (error) {
    say({ kind: 'failed', problem: String(error) });
  } finally {
    frame.close();
  }
}

worker.addEventListener('message', ({ data }: MessageEvent<ToSymbolWorker>) => {
  if (data.kind === 'begin') begin(data.wasm);
  else void read(data.frame);
});
