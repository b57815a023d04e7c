import type { Folder } from './folder.ts';

/** A line as it lies in its file: its text, and where it is, in bytes, without its newline. */
export interface LineAt {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** So many bytes are read at a time: enough for speed, little enough that other work gets its turn. */
const stretch = 1 << 20;
const newline = 0x0a;

/**
 * The whole lines of a file in a range that begins at the beginning of a line, many at a time. What stands after the
 * last newline is no line yet: it may be torn, or still in the writing.
 */
export async function* wholeLines(
  folder: Folder,
  { name, from, to }: { name: string; from: number; to: number },
): AsyncGenerator<readonly LineAt[]> {
  let at = from;
  let wanted = stretch;
  while (at < to) {
    const end = Math.min(at + wanted, to);
    const bytes = await folder.read(name, { from: at, to: end });
    const lines = linesIn(bytes, at);
    const last = lines.at(-1);
    if (last) {
      yield lines;
      at = last.to + 1;
      wanted = stretch;
    } else {
      if (end === to || bytes.length < end - at) return;
      wanted *= 2;
    }
  }
}

function linesIn(bytes: Uint8Array, offset: number): readonly LineAt[] {
  const lines: LineAt[] = [];
  let from = 0;
  for (let to = bytes.indexOf(newline); to >= 0; to = bytes.indexOf(newline, from)) {
    lines.push({ text: textOf(bytes.subarray(from, to)), from: offset + from, to: offset + to });
    from = to + 1;
  }
  return lines;
}

const decoder = new TextDecoder('utf-8', { ignoreBOM: true });
const encoder = new TextEncoder();

/** Bytes that are no UTF-8 become signs that fit no check. */
export function textOf(bytes: Uint8Array): string {
  return decoder.decode(bytes);
}

export function bytesOf(lines: readonly string[]): Uint8Array<ArrayBuffer> {
  return encoder.encode(lines.map((line) => `${line}\n`).join(''));
}
