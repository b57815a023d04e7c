import { concatBytes } from '@noble/hashes/utils.js';

const lineFeed = 0x0a;

/**
 * A line of a file, without its end; its bytes may be a part of the piece that came in. `broken`: a gap or the end of the
 * file came before its line feed did.
 */
export type Line =
  | { readonly kind: 'line'; readonly bytes: Uint8Array; readonly broken: boolean }
  | { readonly kind: 'too-long' };

/**
 * Cuts bytes that come in pieces into lines, and keeps none longer than `longest` (bytes) says for the line of that
 * number. `take` answers whether to go on.
 */
export function splitLines({
  longest,
  take,
}: {
  readonly longest: (number: number) => number;
  readonly take: (line: Line, number: number) => boolean;
}) {
  let parts: Uint8Array[] = [];
  let length = 0;
  let number = 1;

  function end(broken: boolean): boolean {
    const line: Line =
      length > longest(number) ? { kind: 'too-long' } : { kind: 'line', bytes: inOne(parts), broken };
    parts = [];
    length = 0;
    number += 1;
    return take(line, number - 1);
  }

  function keep(part: Uint8Array): void {
    length += part.length;
    if (length > longest(number)) parts = [];
    else parts.push(part);
  }

  return {
    push(chunk: Uint8Array): boolean {
      let from = 0;
      for (let at = chunk.indexOf(lineFeed); at !== -1; at = chunk.indexOf(lineFeed, from)) {
        keep(chunk.subarray(from, at));
        from = at + 1;
        if (!end(false)) return false;
      }
      if (from < chunk.length) keep(chunk.subarray(from));
      return true;
    },
    /** Ends a line that came without a line feed, if there is one. */
    breakOff(): boolean {
      return length === 0 || end(true);
    },
  };
}

function inOne(parts: readonly Uint8Array[]): Uint8Array {
  const [only] = parts;
  return only && parts.length === 1 ? only : concatBytes(...parts);
}
