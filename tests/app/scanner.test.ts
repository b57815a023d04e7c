import { describe, expect, test } from 'vitest';
import { type CameraTrouble, openCamera } from '../../src/app/camera.ts';
import { openScanner, type ScannerPlatform } from '../../src/app/scanner.ts';
import type { SymbolReader } from '../../src/app/symbol-reader.ts';

/** A camera track that tells what was done to it. */
function fakeCamera({ torch = false }: { torch?: boolean } = {}) {
  const log: string[] = [];
  let gone = () => {};
  const track = {
    addEventListener: (_: string, heard: () => void) => {
      gone = heard;
    },
    getCapabilities: () => ({ torch }),
    applyConstraints: async ({ advanced }: MediaTrackConstraints) => void log.push(JSON.stringify(advanced)),
    stop: () => log.push('stopped'),
  } as unknown as MediaStreamTrack;
  const stream = { getVideoTracks: () => [track], getTracks: () => [track] } as unknown as MediaStream;
  return { log, stream, unplug: () => gone() };
}

type Fake = ReturnType<typeof fakeCamera>;

/** A tablet whose camera shows the given frames, one after the other. */
function tablet(
  get: () => Promise<MediaStream>,
  { frames = [] as string[][], reader }: { frames?: string[][]; reader?: SymbolReader } = {},
) {
  let visibilityState: DocumentVisibilityState = 'visible';
  let look = () => {};
  const said: string[] = [];
  const shown = [...frames];
  const platform: ScannerPlatform = {
    openCamera: (onGone) => openCamera({ isSecure: true, devices: { getUserMedia: get } }, onGone),
    openReader: async () =>
      reader ?? { read: async () => shown.shift() ?? [], close: () => said.push('reader closed') },
    frameOf: async () => ({}) as ImageBitmap,
    rest: () => new Promise((done) => setImmediate(done)),
    page: {
      get visibilityState() {
        return visibilityState;
      },
      addEventListener: (_: string, heard: unknown) => {
        look = heard as () => void;
      },
      removeEventListener: () => said.push('not listening'),
    },
  };
  const video = { play: async () => {}, srcObject: null as MediaProvider | null };
  const read: string[] = [];
  return {
    said,
    video,
    read,
    scanner: () => openScanner({ video, onFrame: (texts) => read.push(...texts), platform }),
    turn(to: DocumentVisibilityState) {
      visibilityState = to;
      look();
    },
  };
}

const aWhile = async () => {
  for (let turn = 0; turn < 20; turn += 1) await new Promise((done) => setImmediate(done));
};
const refusing = (name: string) => async () => {
  throw new DOMException('no', name);
};

describe('no picture', () => {
  // The names of the errors: W3C, Media Capture and Streams, getUserMedia().
  test.each<[name: string, why: CameraTrouble]>([
    ['NotAllowedError', 'denied'],
    ['SecurityError', 'denied'],
    ['NotFoundError', 'none'],
    ['OverconstrainedError', 'none'],
    ['NotReadableError', 'taken'],
    ['AbortError', 'taken'],
    ['TypeError', 'unknown'],
  ])('%s is told as: %s', async (name, why) => {
    const { scanner } = tablet(refusing(name));
    const { state } = scanner();
    expect(state.value).toEqual({ kind: 'starting' });
    await aWhile();
    expect(state.value).toEqual({ kind: 'failed', why });
  });

  test('a page without HTTPS has no camera to ask for; nor has an old browser', async () => {
    const none = { devices: undefined };
    expect(await openCamera({ isSecure: false, ...none }, () => {})).toEqual({
      kind: 'failed',
      why: 'insecure',
    });
    expect(await openCamera({ isSecure: true, ...none }, () => {})).toEqual({
      kind: 'failed',
      why: 'unsupported',
    });
  });

  test('a camera that is pulled out is said to be gone; tried again, it may be back', async () => {
    const cameras: Fake[] = [];
    const { scanner, video } = tablet(async () => {
      cameras.push(fakeCamera());
      return cameras.at(-1)?.stream as MediaStream;
    });
    const { state, again } = scanner();
    await aWhile();
    expect(state.value).toEqual({ kind: 'running', torch: null });
    cameras[0]?.unplug();
    expect(state.value).toEqual({ kind: 'failed', why: 'gone' });
    expect(video.srcObject).toBeNull();
    again();
    await aWhile();
    expect(state.value.kind).toBe('running');
    // What the first one tells late is no news.
    cameras[0]?.unplug();
    expect(state.value.kind).toBe('running');
  });

  test('a picture that nothing can read is said, and the camera let go', async () => {
    const { log, stream } = fakeCamera();
    const reader = { read: () => Promise.reject(new Error('no decoder')), close: () => {} };
    const { scanner } = tablet(async () => stream, { reader });
    const { state } = scanner();
    await aWhile();
    expect(state.value).toEqual({ kind: 'failed', why: 'unreadable' });
    expect(log).toEqual(['stopped']);
  });
});

describe('a running camera', () => {
  test('tells what each frame shows', async () => {
    const { stream } = fakeCamera();
    const { scanner, read } = tablet(async () => stream, { frames: [[], ['A17T-CKWX'], ['A17T-CKWX', 'x']] });
    scanner();
    await aWhile();
    expect(read).toEqual(['A17T-CKWX', 'A17T-CKWX', 'x']);
  });

  test('stops while the page is hidden and when the screen is left', async () => {
    const { log, stream } = fakeCamera();
    const { scanner, turn, said } = tablet(async () => stream);
    const { state, close } = scanner();
    await aWhile();
    turn('hidden');
    expect(state.value).toEqual({ kind: 'resting' });
    expect(log).toEqual(['stopped']);
    turn('visible');
    await aWhile();
    expect(state.value.kind).toBe('running');
    close();
    await aWhile();
    expect(log).toEqual(['stopped', 'stopped']);
    expect(said).toEqual(['not listening', 'reader closed']);
  });

  test('that comes after the screen was left is let go at once', async () => {
    const { log, stream } = fakeCamera();
    let give = (_: MediaStream) => {};
    const { scanner } = tablet(
      () =>
        new Promise((resolve) => {
          give = resolve;
        }),
    );
    const { close, state } = scanner();
    close();
    give(stream);
    await aWhile();
    expect(log).toEqual(['stopped']);
    expect(state.value).toEqual({ kind: 'resting' });
  });

  test('has a lamp where it says so', async () => {
    const { log, stream } = fakeCamera({ torch: true });
    const { scanner } = tablet(async () => stream);
    const { state, setTorch } = scanner();
    await aWhile();
    expect(state.value).toEqual({ kind: 'running', torch: 'off' });
    await setTorch(true);
    expect(log).toEqual(['[{"torch":true}]']);
    expect(state.value).toEqual({ kind: 'running', torch: 'on' });
  });
});
