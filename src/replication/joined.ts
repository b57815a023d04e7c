import * as v from 'valibot';
import { brokerAddress, shopName } from './joining-link.ts';
import { tabletId } from './message.ts';
import { seatLetters } from './shop-key.ts';

const bytes = (length: number) =>
  v.pipe(
    v.instance(Uint8Array<ArrayBuffer>),
    v.check((each) => each.length === length, 'of another length'),
  );

/** What a tablet keeps once it has joined. The key of the shop itself is there only where the tablet may invite others. */
const joinedSchema = v.object({
  address: brokerAddress,
  shop: shopName,
  seat: v.picklist(seatLetters),
  tablet: tabletId,
  seed: bytes(32),
  events: v.instance(CryptoKey),
  key: v.nullable(bytes(16)),
  /** Whether photos go, too; tablets that joined before there was a choice did not say. */
  photos: v.optional(v.boolean(), true),
});
export type Joined = Readonly<v.InferOutput<typeof joinedSchema>>;

/** What was kept, if it can be used; undefined else. */
export function readJoined(raw: unknown): Joined | undefined {
  const read = v.safeParse(joinedSchema, raw);
  return read.success ? read.output : undefined;
}
