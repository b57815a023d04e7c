/** The list with one thing moved by some places; it goes no further than either end. */
export function moved<Thing>(
  list: readonly Thing[],
  { thing, by }: { thing: Thing; by: number },
): readonly Thing[] {
  const from = list.indexOf(thing);
  return from < 0 ? list : movedTo(list, { thing, place: from + by });
}

/** The list with one thing at a place, counted from nought; beyond an end it stands at the end. */
export function movedTo<Thing>(
  list: readonly Thing[],
  { thing, place }: { thing: Thing; place: number },
): readonly Thing[] {
  const from = list.indexOf(thing);
  if (from < 0) return list;
  const within = Math.min(list.length - 1, Math.max(0, place));
  return list.toSpliced(from, 1).toSpliced(within, 0, thing);
}
