import wasm from 'zxing-wasm/reader/zxing_reader.wasm?url';
import type { FromSymbolWorker, ToSymbolWorker } from '../worker/symbol-protocol.ts';

/** Reads QR symbols in frames of a camera, whoever does it. */
export interface SymbolReader {
  /** The texts of the symbols in a frame, which is closed then. One frame at a time. Rejects where nothing can be read. */
  readonly read: (frame: ImageBitmap) => Promise<readonly string[]>;
  readonly close: () => void;
}

/** What is used here of the platform's own detector (W3C, Shape Detection). */
interface PlatformDetector {
  readonly getSupportedFormats: () => Promise<readonly string[]>;
  new (options: {
    readonly formats: readonly string[];
  }): { readonly detect: (frame: ImageBitmap) => Promise<readonly { readonly rawValue: string }[]> };
}

type StartSymbolWorker = () => Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;

export interface SymbolReaderParts {
  readonly platform: PlatformDetector | undefined;
  readonly start: StartSymbolWorker;
  /** The address of the decoder's WebAssembly. */
  readonly wasm: () => string;
}

const onThisTablet: SymbolReaderParts = {
  platform: (globalThis as { readonly BarcodeDetector?: PlatformDetector }).BarcodeDetector,
  start: () => new Worker(new URL('../worker/symbol-worker.ts', import.meta.url), { type: 'module' }),
  wasm: () => new URL(wasm, document.baseURI).href,
};

/** Takes the platform's detector where there is one for QR symbols, and else the app's own. */
export async function openSymbolReader(parts = onThisTablet): Promise<SymbolReader> {
  return (await platformReader(parts)) ?? ownReader(parts);
}

async function platformReader(parts: SymbolReaderParts): Promise<SymbolReader | undefined> {
  const { platform } = parts;
  const formats = await platform?.getSupportedFormats().catch((): readonly string[] => []);
  if (!platform || !formats?.includes('qr_code')) return undefined;
  const detector = new platform({ formats: ['qr_code'] });
  let own: SymbolReader | undefined;
  return {
    async read(frame) {
      if (own) return own.read(frame);
      try {
        const found = await detector.detect(frame);
        frame.close();
        return found.map(({ rawValue }) => rawValue);
      } catch {
        // It may be named and not be there: Android has it from a service that a tablet can lack.
        own = ownReader(parts);
        return own.read(frame);
      }
    },
    close: () => own?.close(),
  };
}

function ownReader({ start, wasm: address }: SymbolReaderParts): SymbolReader {
  const worker = start();
  const say = (message: ToSymbolWorker, handOver: Transferable[] = []) =>
    worker.postMessage(message, handOver);
  let settle: { resolve: (texts: readonly string[]) => void; reject: (problem: Error) => void } | undefined;
  let broken: Error | undefined;
  worker.addEventListener('error', ({ message }) => {
    broken = new Error(`the worker failed: ${message}`);
    settle?.reject(broken);
  });
  worker.addEventListener('message', ({ data }: MessageEvent<FromSymbolWorker>) => {
    if (data.kind === 'read') settle?.resolve(data.texts);
    else settle?.reject(new Error(data.problem));
  });
  say({ kind: 'begin', wasm: address() });
  return {
    read: (frame) =>
      new Promise((resolve, reject) => {
        settle = { resolve, reject };
        if (broken) return reject(broken);
        say({ kind: 'read', frame }, [frame]);
      }),
    close() {
      worker.terminate();
      settle?.reject(new Error('the reader was closed'));
    },
  };
}
