/** Deeper than anything the app keeps. */
const deepest = 200;
/** How deep the moment of a record may lie. */
const deepestStamp = 4;

/**
 * A stored value as JSON can carry it. What JSON has no form for becomes an object with one name that begins with
 * `$`: `{"$map": [[key, value], …]}`, `{"$set": […]}`, `{"$date": ISO}`, `{"$bytes": base64}`, `{"$file": base64}`,
 * `{"$number": "NaN"}`, `{"$undefined": true}`, `{"$unreadable": why}`.
 */
export async function asJson(value: unknown, depth = 0): Promise<unknown> {
  if (depth > deepest) return { $unreadable: 'nested too deep' };
  const inside = (each: unknown) => asJson(each, depth + 1);
  switch (typeof value) {
    case 'string':
    case 'boolean':
      return value;
    case 'number':
      return Number.isFinite(value) ? value : { $number: String(value) };
    case 'bigint':
      return { $number: String(value) };
    case 'undefined':
      return { $undefined: true };
    case 'object':
      break;
    default:
      return { $unreadable: typeof value };
  }
  if (value === null) return null;
  if (Array.isArray(value)) return Promise.all(value.map(inside));
  if (value instanceof Map) {
    return {
      $map: await Promise.all([...value].map(async ([key, of]) => [await inside(key), await inside(of)])),
    };
  }
  if (value instanceof Set) return { $set: await Promise.all([...value].map(inside)) };
  if (value instanceof Date) return { $date: Number.isNaN(value.valueOf()) ? null : value.toISOString() };
  if (value instanceof ArrayBuffer) return { $bytes: base64(new Uint8Array(value)) };
  if (ArrayBuffer.isView(value)) {
    return { $bytes: base64(new Uint8Array(value.buffer, value.byteOffset, value.byteLength)) };
  }
  if (value instanceof Blob)
    return { $file: base64(new Uint8Array(await value.arrayBuffer())), type: value.type };
  const parts = await Promise.all(
    Object.entries(value).map(async ([name, part]) => [name, await inside(part)]),
  );
  return parts.length === 0 && Object.getPrototypeOf(value) !== Object.prototype
    ? { $unreadable: Object.prototype.toString.call(value) }
    : Object.fromEntries(parts);
}

export function base64(bytes: Uint8Array): string {
  let text = '';
  // In pieces: a call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += 8192) {
    text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  }
  return btoa(text);
}

/** The moment of a record, ms UTC, from the stamp (`wall`) that the app gives its events; null when it has none. A stamp of zero is that of a log without events. */
export function momentOf(record: unknown, depth = 0): number | null {
  if (typeof record !== 'object' || record === null || depth > deepestStamp) return null;
  const { wall } = record as { readonly wall?: unknown };
  if (typeof wall === 'number' && Number.isFinite(wall) && wall > 0) return wall;
  for (const part of Object.values(record)) {
    const found = momentOf(part, depth + 1);
    if (found !== null) return found;
  }
  return null;
}
