import { nkeys } from '@nats-io/nats-core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nkeySeed } from '../../src/replication/nkey-seed.ts';

test("a seed is written as the broker's own library reads and writes it", () => {
  fc.assert(
    fc.property(fc.uint8Array({ minLength: 32, maxLength: 32 }), (raw) => {
      const seed = nkeySeed(raw);
      const pair = nkeys.fromSeed(seed);
      expect(new TextDecoder().decode(pair.getSeed())).toBe(new TextDecoder().decode(seed));
      expect(pair.getPublicKey()).toMatch(/^U[A-Z2-7]{55}$/);
      const nonce = Uint8Array.of(1, 2, 3);
      expect(pair.verify(nonce, pair.sign(nonce))).toBe(true);
    }),
    { numRuns: 20 },
  );
});
