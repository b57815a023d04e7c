/** The same in arrays of `size`, but for the last, which may be shorter. */
export function* inPieces<Each>(all: Iterable<Each>, size: number): Generator<readonly Each[]> {
  let piece: Each[] = [];
  for (const each of all) {
    piece.push(each);
    if (piece.length < size) continue;
    yield piece;
    piece = [];
  }
  if (piece.length > 0) yield piece;
}
