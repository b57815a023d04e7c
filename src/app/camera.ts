/** Why there is no picture. */
export type CameraTrouble =
  /** The page did not come by HTTPS, so the browser gives no camera. */
  | 'insecure'
  | 'unsupported'
  | 'denied'
  | 'none'
  /** Another app or window has it. */
  | 'taken'
  /** It was there, and was pulled out or switched off. */
  | 'gone'
  /** The picture is there, and nothing here can read it. */
  | 'unreadable'
  | 'unknown';

/** A running camera. */
export interface Camera {
  readonly stream: MediaStream;
  readonly hasTorch: boolean;
  /** Rejects where the lamp does not obey. */
  readonly setTorch: (on: boolean) => Promise<void>;
  readonly stop: () => void;
}

export interface CameraParts {
  readonly isSecure: boolean;
  readonly devices: Pick<MediaDevices, 'getUserMedia'> | undefined;
}

export type OpenedCamera =
  | { readonly kind: 'open'; readonly camera: Camera }
  | { readonly kind: 'failed'; readonly why: CameraTrouble };

/** A camera at the back where there is one; large enough for a label at arm's length, small enough to read ten a second. */
const wanted: MediaStreamConstraints = {
  audio: false,
  video: { facingMode: { ideal: 'environment' }, width: { ideal: 1280 }, height: { ideal: 720 } },
};

/** Opens the camera; the browser may ask the person. `onGone` is told when it ends by itself. */
export async function openCamera(
  { isSecure, devices }: CameraParts,
  onGone: () => void,
): Promise<OpenedCamera> {
  if (!devices) return { kind: 'failed', why: isSecure ? 'unsupported' : 'insecure' };
  try {
    const stream = await devices.getUserMedia(wanted);
    const [track] = stream.getVideoTracks();
    track?.addEventListener('ended', onGone);
    return { kind: 'open', camera: cameraOf(stream, track) };
  } catch (error) {
    return { kind: 'failed', why: troubleOf(error) };
  }
}

/** The lamp is in the W3C's Image Capture, which the types of the platform do not have. */
type Lit = MediaTrackCapabilities & { readonly torch?: boolean };

function cameraOf(stream: MediaStream, track: MediaStreamTrack | undefined): Camera {
  const can: Lit | undefined = track?.getCapabilities?.();
  return {
    stream,
    hasTorch: can?.torch === true,
    async setTorch(torch) {
      const lamp: MediaTrackConstraintSet & { readonly torch: boolean } = { torch };
      await track?.applyConstraints({ advanced: [lamp] });
    },
    stop() {
      for (const each of stream.getTracks()) each.stop();
    },
  };
}

/** The names are those of the W3C's Media Capture and Streams, 10.2 (getUserMedia). */
function troubleOf(error: unknown): CameraTrouble {
  switch (error instanceof Error ? error.name : '') {
    case 'NotAllowedError':
    case 'SecurityError':
      return 'denied';
    case 'NotFoundError':
    case 'OverconstrainedError':
      return 'none';
    case 'NotReadableError':
    case 'AbortError':
      return 'taken';
    default:
      return 'unknown';
  }
}
