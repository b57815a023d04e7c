import type { Shop } from './shop.ts';

export type SumName = keyof Shop;

/** The sums in which two shops differ; none when they amount to the same, in whatever order their events came. */
export function differingSums(a: Shop, b: Shop): readonly SumName[] {
  const names = Object.keys(a) as SumName[];
  return names.filter((name) => inOrder(a[name]) !== inOrder(b[name]));
}

/** A value as text that is the same for equal values: keys of maps, sets and objects in the order of their text. */
function inOrder(value: unknown): string {
  if (value instanceof Map)
    return textOf('map', [...value].map(([key, part]) => inOrder([key, part])).sort());
  if (value instanceof Set) return textOf('set', [...value].map(inOrder).sort());
  if (Array.isArray(value)) return textOf('list', value.map(inOrder));
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'none';
  return textOf('object', Object.entries(value).map(inOrder).sort());
}

function textOf(kind: string, parts: readonly string[]): string {
  return `${kind}(${parts.join(',')})`;
}
