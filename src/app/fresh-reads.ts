/** When each text was last seen in a picture, ms. */
export type Seen = ReadonlyMap<string, number>;

/** A label that is out of the picture for so long (ms) and comes back is shown to the camera anew. */
const away = 1500;

/** Tells the texts that come into the picture from those that stay in it: a label that is held up is one read, not ten a second. */
export function freshReads(
  seen: Seen,
  { texts, at }: { texts: readonly string[]; at: number },
): { readonly seen: Seen; readonly fresh: readonly string[] } {
  const still = new Map([...seen].filter(([, last]) => at - last < away));
  const fresh = [...new Set(texts)].filter((text) => !still.has(text));
  for (const text of texts) still.set(text, at);
  return { seen: still, fresh };
}
