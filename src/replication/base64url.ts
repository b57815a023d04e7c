import type { Bytes } from '../store/backup/sealing-keys.ts';

/** Base64 with the alphabet for addresses and without padding (RFC 4648, section 5). */
export function toBase64url(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** The bytes again; undefined when the text is none. */
export function fromBase64url(text: string): Bytes | undefined {
  if (!/^[\w-]*$/.test(text)) return undefined;
  try {
    return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (sign) =>
      sign.charCodeAt(0),
    );
  } catch {
    return undefined;
  }
}
