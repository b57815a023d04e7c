const known = new Map<string, Map<string, string>>();

/**
 * `a|b`, the same text each time: a map finds at once what it was asked for before, while text that was put together anew
 * has to be read first. Texts are kept, so this is for ids of which a shop has few, not for those of trays.
 */
export function keyOf<A extends string, B extends string>(a: A, b: B): `${A}|${B}` {
  return (known.get(a)?.get(b) ?? keep(a, b)) as `${A}|${B}`;
}

function keep(a: string, b: string): string {
  const key = `${a}|${b}`;
  known.set(a, (known.get(a) ?? new Map<string, string>()).set(b, key));
  return key;
}
