/** What is heard of a fake loudspeaker; times in s. */
interface Ears {
  readonly onStart?: (hz: number | undefined, at: number) => void;
  readonly onStop?: (hz: number | undefined, at: number) => void;
  readonly onCut?: () => void;
}

/** Puts a loudspeaker in the place of the platform's, which tells what it is asked to play. Returns how to take it away. */
export function fakeAudio({ onStart, onStop, onCut }: Ears): () => void {
  class Node {
    readonly gain = { setValueAtTime: () => this, linearRampToValueAtTime: () => this };
    readonly #hz: number | undefined;
    constructor(_context: unknown, options: { frequency?: number }) {
      this.#hz = options.frequency;
    }
    connect(next: unknown) {
      return next;
    }
    disconnect() {
      onCut?.();
    }
    start(at: number) {
      onStart?.(this.#hz, at);
    }
    stop(at: number) {
      onStop?.(this.#hz, at);
    }
  }
  class Context {
    readonly currentTime = 0;
    readonly destination = {};
    readonly state = 'running';
    close = async () => undefined;
  }
  const parts = { AudioContext: Context, GainNode: Node, OscillatorNode: Node };
  Object.assign(globalThis, parts);
  return () => {
    for (const name of Object.keys(parts)) Reflect.deleteProperty(globalThis, name);
  };
}
