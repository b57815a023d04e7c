import * as v from 'valibot';
import { type PhotoFacts, photoHash } from '../../src/domain/log/photo-facts.ts';

/** What is known of a photo that was never taken; the hex digit makes it another one. */
export const aPhoto = (digit: string): PhotoFacts => ({
  hash: v.parse(photoHash, digit.repeat(64)),
  ...{ width: 1600, height: 1200, bytes: 240_000 },
});
