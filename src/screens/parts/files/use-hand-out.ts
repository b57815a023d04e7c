import { useState } from 'preact/hooks';
import type { CopyDesk, CopyToMake, MadeCopy, MadeFile } from '../../../app/copy-desk.ts';
import { handOver, wayOut } from '../hand-over.ts';

/** Where the way of a copy out of the tablet stands. */
export type HandOut =
  | { readonly kind: 'idle' | 'making' | 'not-made' }
  /** Made, and waits for a tap of its own: sharing is allowed in a tap alone. */
  | { readonly kind: 'ready' | 'tap-again' | 'not-shared'; readonly made: MadeCopy }
  /** One of its files went out. */
  | { readonly kind: 'saved' | 'shared'; readonly made: MadeCopy; readonly file: MadeFile }
  /** Shown as text to copy. */
  | { readonly kind: 'text'; readonly made: MadeCopy };

export interface HandingOut {
  readonly state: HandOut;
  readonly way: ReturnType<typeof wayOut>;
  /** The numbers of the files of the copy that went out. */
  readonly handed: ReadonlySet<number>;
  /** Makes the copy; what `making` resolves to waits for `hand`. */
  readonly make: (how: CopyToMake) => Promise<MadeCopy | undefined>;
  /** Hands a file over, the first unless another is named; called from within a tap. */
  readonly hand: (made: MadeCopy, file?: MadeFile) => Promise<void>;
  /** Shows a copy as text; its photos, if it has any, are not in it. */
  readonly asText: () => Promise<void>;
  /** The text was copied: that counts as a copy outside. */
  readonly textTaken: (made: MadeCopy) => void;
}

/** Brings copies out of the tablet, by the way that this browser has. */
export function useHandOut(desk: CopyDesk): HandingOut {
  const [state, setState] = useState<HandOut>({ kind: 'idle' });
  const [handed, setHanded] = useState<ReadonlySet<number>>(new Set());
  const [way] = useState(wayOut);

  async function make(how: CopyToMake): Promise<MadeCopy | undefined> {
    setState({ kind: 'making' });
    setHanded(new Set());
    try {
      const made = await desk.makeCopy(how);
      setState({ kind: 'ready', made });
      return made;
    } catch {
      setState({ kind: 'not-made' });
      return undefined;
    }
  }

  async function hand(made: MadeCopy, file: MadeFile = made.files[0]): Promise<void> {
    if (way === 'text') {
      setState({ kind: 'text', made });
      return;
    }
    try {
      const became = await handOver(fileOf(file, made));
      if (became === 'called-off') setState({ kind: 'ready', made });
      else if (became === 'tap-again') setState({ kind: 'tap-again', made });
      else {
        await desk.handedOut(made, file, became === 'saved' ? 'download' : 'share');
        setHanded((before) => new Set([...before, file.number]));
        setState({ kind: became, made, file });
      }
    } catch {
      setState({ kind: 'not-shared', made });
    }
  }

  async function asText(): Promise<void> {
    const made = await make({ photos: false });
    if (made) setState({ kind: 'text', made });
  }

  const textTaken = (made: MadeCopy) => void desk.handedOut(made, { number: 1, photos: [] }, 'text');
  return { state, way, handed, make, hand, asText, textTaken };
}

function fileOf({ name, content }: MadeFile, { words }: MadeCopy): File {
  return new File([content], name, { type: words ? 'application/octet-stream' : 'application/gzip' });
}
