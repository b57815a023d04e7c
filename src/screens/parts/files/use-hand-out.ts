import { useState } from 'preact/hooks';
import type { CopyDesk, MadeFile } from '../../../app/copy-desk.ts';
import { handOver, wayOut } from '../hand-over.ts';

/** Where the way of a copy out of the tablet stands. */
export type HandOut =
  | { readonly kind: 'idle' | 'making' | 'not-made' }
  /** Made, and waits for a tap of its own: sharing is allowed in a tap alone. */
  | { readonly kind: 'ready' | 'tap-again' | 'not-shared'; readonly made: MadeFile }
  | { readonly kind: 'saved' | 'shared'; readonly made: MadeFile }
  /** Shown as text to copy. */
  | { readonly kind: 'text'; readonly made: MadeFile };

export interface HandingOut {
  readonly state: HandOut;
  readonly way: ReturnType<typeof wayOut>;
  /** Makes the file; what `making` resolves to waits for `hand`. */
  readonly make: (passphrase?: string) => Promise<MadeFile | undefined>;
  /** Hands a file over; called from within a tap. */
  readonly hand: (made: MadeFile, way?: ReturnType<typeof wayOut>) => Promise<void>;
  /** The text was copied: that counts as a copy outside. */
  readonly textTaken: (made: MadeFile) => void;
}

/** Brings copies out of the tablet, by the way that this browser has. */
export function useHandOut(desk: CopyDesk): HandingOut {
  const [state, setState] = useState<HandOut>({ kind: 'idle' });
  const [here] = useState(wayOut);

  async function make(passphrase?: string): Promise<MadeFile | undefined> {
    setState({ kind: 'making' });
    try {
      const made = await desk.makeFile(passphrase);
      setState({ kind: 'ready', made });
      return made;
    } catch {
      setState({ kind: 'not-made' });
      return undefined;
    }
  }

  async function hand(made: MadeFile, way = here): Promise<void> {
    if (way === 'text') {
      setState({ kind: 'text', made });
      return;
    }
    try {
      const became = await handOver(fileOf(made));
      if (became === 'called-off') setState({ kind: 'ready', made });
      else if (became === 'tap-again') setState({ kind: 'tap-again', made });
      else {
        desk.handedOut(made, became === 'saved' ? 'download' : 'share');
        setState({ kind: became, made });
      }
    } catch {
      setState({ kind: 'not-shared', made });
    }
  }

  return { state, way: here, make, hand, textTaken: (made) => desk.handedOut(made, 'text') };
}

function fileOf({ name, bytes, words }: MadeFile): File {
  const type = words ? 'application/octet-stream' : 'application/gzip';
  return new File([bytes as Uint8Array<ArrayBuffer>], name, { type });
}
