import { type Hole, piecesOf } from './shape.ts';

/** Where forms part. What goes on from here: texts, by their first sign, and holes. */
interface Fork<Leaf> {
  readonly texts: Map<number, { readonly text: string; readonly to: Fork<Leaf> }>;
  readonly holes: { readonly hole: Hole; readonly to: Fork<Leaf> }[];
  /** Of the form that ends here. */
  leaf?: Leaf;
}

const newFork = <Leaf>(): Fork<Leaf> => ({ texts: new Map(), holes: [] });

/** Reads the value in a hole, from `at` on. Where it ends; -1 when nothing stands there that may. */
type ReadHole = (hole: Hole, at: number) => number;

/**
 * Forms of events, laid out as a tree: those that begin alike have a stem in common. A text is read along it from end to
 * end, each sign once, however many forms there are.
 */
export function formTree<Leaf>() {
  const root = newFork<Leaf>();
  return {
    add(form: string, leaf: Leaf): void {
      const { texts, holes } = piecesOf(form);
      let fork = root;
      for (const [at, text] of texts.entries()) {
        fork = growText(fork, text);
        const hole = holes[at];
        if (hole) fork = growHole(fork, hole);
      }
      fork.leaf = leaf;
    },
    /** The leaf of the form that a text has; undefined when it has none of them, or a hole holds what it may not. */
    find(text: string, readHole: ReadHole): Leaf | undefined {
      let fork = root;
      let at = 0;
      while (at < text.length) {
        let end = -1;
        for (const { hole, to } of fork.holes) {
          end = readHole(hole, at);
          if (end === -1) continue;
          fork = to;
          break;
        }
        if (end === -1) {
          const next = fork.texts.get(text.charCodeAt(at));
          if (!next || !text.startsWith(next.text, at)) return undefined;
          fork = next.to;
          end = at + next.text.length;
        }
        at = end;
      }
      return fork.leaf;
    },
  };
}

/** The fork behind a text, which is made where there is none yet: a text that goes on together with it for a while is parted. */
function growText<Leaf>(from: Fork<Leaf>, text: string): Fork<Leaf> {
  if (text === '') return from;
  const first = text.charCodeAt(0);
  const there = from.texts.get(first);
  if (!there) {
    const to = newFork<Leaf>();
    from.texts.set(first, { text, to });
    return to;
  }
  const length = inCommon(there.text, text);
  if (length === there.text.length) return growText(there.to, text.slice(length));
  const fork = newFork<Leaf>();
  fork.texts.set(there.text.charCodeAt(length), { text: there.text.slice(length), to: there.to });
  from.texts.set(first, { text: text.slice(0, length), to: fork });
  return growText(fork, text.slice(length));
}

function inCommon(a: string, b: string): number {
  let length = 0;
  while (length < a.length && a.charCodeAt(length) === b.charCodeAt(length)) length += 1;
  return length;
}

function growHole<Leaf>(from: Fork<Leaf>, hole: Hole): Fork<Leaf> {
  const there = from.holes.find((each) => isSame(each.hole, hole));
  if (there) return there.to;
  const to = newFork<Leaf>();
  from.holes.push({ hole, to });
  return to;
}

function isSame(a: Hole, b: Hole): boolean {
  return 'kind' in a && 'kind' in b ? a.kind === b.kind : a.from === b.from;
}
