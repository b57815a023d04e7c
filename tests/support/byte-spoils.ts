import { gzipSync } from 'node:zlib';
import type { Random } from '../../src/domain/chance/seeded-random.ts';

export const whole = (random: Random, below: number) => Math.floor(random() * below);
export const oneOf = <Item>(random: Random, items: readonly Item[]): Item => {
  const item = items[whole(random, items.length)];
  if (item === undefined) throw new Error('nothing to draw from');
  return item;
};

export type Spoil = (bytes: Uint8Array, random: Random) => Uint8Array;

const bitsFlipped: Spoil = (bytes, random) => {
  const copy = bytes.slice();
  for (let flips = 1 + whole(random, 4); flips > 0; flips -= 1) {
    const at = whole(random, copy.length);
    copy[at] = (copy[at] ?? 0) ^ (1 << whole(random, 8));
  }
  return copy;
};
const cut: Spoil = (bytes, random) => bytes.slice(0, whole(random, bytes.length + 1));
const beheaded: Spoil = (bytes, random) => bytes.slice(whole(random, Math.min(bytes.length, 600)));
const stretchLost: Spoil = (bytes, random) => {
  const from = whole(random, bytes.length);
  return Buffer.concat([bytes.slice(0, from), bytes.slice(from + whole(random, 300))]);
};
const stretchDoubled: Spoil = (bytes, random) => {
  const [from, to] = [whole(random, bytes.length), whole(random, bytes.length)];
  return Buffer.concat([bytes.slice(0, to), bytes.slice(from, from + whole(random, 3000)), bytes.slice(to)]);
};
const noise: Spoil = (bytes, random) => {
  const at = whole(random, bytes.length);
  const other = Uint8Array.from({ length: 1 + whole(random, 80) }, () => whole(random, 256));
  return Buffer.concat([bytes.slice(0, at), other, bytes.slice(at + whole(random, 2) * other.length)]);
};
/** Packed files that unpack to far more than they are. */
export const gzipBombs = (): readonly Uint8Array[] => [
  gzipSync(Buffer.alloc(3_000_000)),
  gzipSync('[{"":'.repeat(400_000)),
  gzipSync('x\n'.repeat(9000)),
];

/** Ways to spoil the bytes of a file, some of which put other files or bombs into it. */
export function byteSpoils({
  others,
  bombs,
}: Readonly<Record<'others' | 'bombs', readonly Uint8Array[]>>): readonly Spoil[] {
  const spliced: Spoil = (bytes, random) => {
    const other = oneOf(random, [...others, ...bombs]);
    return Buffer.concat([
      bytes.slice(0, whole(random, bytes.length + 1)),
      other.slice(whole(random, other.length)),
    ]);
  };
  const bombed: Spoil = (bytes, random) => {
    const bomb = oneOf(random, bombs);
    return Buffer.concat(random() < 0.5 ? [bytes, bomb] : [bomb, bytes]);
  };
  return [bitsFlipped, cut, beheaded, stretchLost, stretchDoubled, noise, spliced, bombed];
}
