const letters = 'abcdefghijkmnpqrstuvwxyz23456789';

/** A fresh id of 12 signs from the platform's random source (60 bits). */
export function newId(): string {
  return [...crypto.getRandomValues(new Uint8Array(12))]
    .map((byte) => letters[byte % letters.length])
    .join('');
}
