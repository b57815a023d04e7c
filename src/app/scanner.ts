import { type ReadonlySignal, signal } from '@preact/signals';
import { type Camera, type CameraTrouble, type OpenedCamera, openCamera } from './camera.ts';
import { openSymbolReader, type SymbolReader } from './symbol-reader.ts';

export type ScannerState =
  | { readonly kind: 'starting' }
  /** `torch` is null where the camera has no lamp. */
  | { readonly kind: 'running'; readonly torch: 'on' | 'off' | null }
  /** The page is hidden: the camera is off until it comes back. */
  | { readonly kind: 'resting' }
  | { readonly kind: 'failed'; readonly why: CameraTrouble };

/** A camera that reads symbols for as long as it is open. */
export interface Scanner {
  readonly state: ReadonlySignal<ScannerState>;
  /** Switches the lamp; one that does not obey is shown as it was. */
  readonly setTorch: (on: boolean) => Promise<void>;
  /** Tries the camera anew after a trouble. */
  readonly again: () => void;
  readonly close: () => void;
}

export interface ScannerParts {
  /** Shows what the camera sees. */
  readonly video: Pick<HTMLVideoElement, 'play'> & { srcObject: MediaProvider | null };
  /** Hears the texts of the symbols in a frame; none for a frame without. */
  readonly onFrame: (texts: readonly string[]) => void;
  readonly platform?: ScannerPlatform | undefined;
}

/** What a scanner needs of the tablet. */
export interface ScannerPlatform {
  readonly openCamera: (onGone: () => void) => Promise<OpenedCamera>;
  readonly openReader: () => Promise<SymbolReader>;
  /** What the video shows now; null while it shows nothing yet. */
  readonly frameOf: (video: ScannerParts['video']) => Promise<ImageBitmap | null>;
  /** Resolves when the next frame is wanted. */
  readonly rest: () => Promise<void>;
  readonly page: Pick<Document, 'addEventListener' | 'removeEventListener' | 'visibilityState'>;
}

/** Between two frames that are read (ms): ten a second find a label as it is held up, and leave the tablet cool. */
const betweenFrames = 100;

const onThisTablet = (): ScannerPlatform => ({
  openCamera: (onGone) =>
    openCamera({ isSecure: globalThis.isSecureContext, devices: navigator.mediaDevices }, onGone),
  openReader: () => openSymbolReader(),
  frameOf: async (video) => {
    const isShown = video instanceof HTMLVideoElement && video.readyState >= video.HAVE_CURRENT_DATA;
    return isShown ? createImageBitmap(video) : null;
  },
  rest: () => new Promise((done) => setTimeout(done, betweenFrames)),
  page: document,
});

export function openScanner({ video, onFrame, platform = onThisTablet() }: ScannerParts): Scanner {
  const state = signal<ScannerState>({ kind: 'starting' });
  let camera: Camera | undefined;
  let reader: Promise<SymbolReader> | undefined;
  /** Counts the starts: what an earlier one brings late is not wanted any more. */
  let run = 0;

  function stop(next: ScannerState): void {
    run += 1;
    camera?.stop();
    camera = undefined;
    video.srcObject = null;
    state.value = next;
  }

  async function start(): Promise<void> {
    stop({ kind: 'starting' });
    const mine = run;
    const opened = await platform.openCamera(() => {
      if (mine === run) stop({ kind: 'failed', why: 'gone' });
    });
    if (mine !== run) {
      if (opened.kind === 'open') opened.camera.stop();
      return;
    }
    if (opened.kind === 'failed') return stop(opened);
    camera = opened.camera;
    video.srcObject = camera.stream;
    state.value = { kind: 'running', torch: camera.hasTorch ? 'off' : null };
    // Refused where the page asks for more silence than a film without sound: the frames come all the same.
    video.play().catch(() => undefined);
    try {
      reader ??= platform.openReader();
      await readFrames(await reader, () => mine === run);
    } catch {
      if (mine !== run) return;
      letGoReader();
      stop({ kind: 'failed', why: 'unreadable' });
    }
  }

  function letGoReader(): void {
    void reader?.then(
      (each) => each.close(),
      () => undefined,
    );
    reader = undefined;
  }

  async function readFrames(by: SymbolReader, isWanted: () => boolean): Promise<void> {
    while (isWanted()) {
      const frame = await platform.frameOf(video).catch(() => null);
      const texts = frame ? await by.read(frame) : [];
      if (isWanted()) onFrame(texts);
      await platform.rest();
    }
  }

  const look = () => {
    if (platform.page.visibilityState === 'hidden') stop({ kind: 'resting' });
    else if (state.peek().kind === 'resting') void start();
  };
  platform.page.addEventListener('visibilitychange', look);
  void start();

  return {
    state,
    async setTorch(on) {
      const lit = camera;
      const obeyed = await lit?.setTorch(on).then(
        () => true,
        () => false,
      );
      if (obeyed && lit === camera) state.value = { kind: 'running', torch: on ? 'on' : 'off' };
    },
    again: () => void start(),
    close() {
      platform.page.removeEventListener('visibilitychange', look);
      stop({ kind: 'resting' });
      letGoReader();
    },
  };
}
