import type { RunHead } from '../domain/packed/packed-run.ts';
import type { Parcel } from '../domain/packed/parcel.ts';
import type { Exchange, Lane, Outgoing } from './exchange.ts';
import type { Ledger } from './ledger.ts';
import type { MessageDesk, Said } from './message.ts';
import { draftsOf } from './outbox.ts';
import type { Seat } from './shop-key.ts';

/** Messages, and bytes of them, that are on their way at a time. */
const [mostMessages, mostBytes] = [128, 2_000_000];

export interface Sending {
  readonly exchange: Exchange;
  readonly ledger: Ledger;
  readonly desk: MessageDesk;
  readonly seat: Seat;
}

/** Puts a parcel on the broker and notes it in the ledger, some messages at a time. What was not acknowledged is not noted. */
export async function send(
  parcel: Parcel,
  { laneOf, ...sending }: Sending & { readonly laneOf?: (run: RunHead) => Lane },
): Promise<void> {
  let batch: { said: Said; message: Outgoing }[] = [];
  let bytes = 0;
  async function flush(): Promise<void> {
    const now = batch;
    [batch, bytes] = [[], 0];
    await put(now, sending);
  }
  for (const { kind, head, body, lane } of draftsOf(parcel, laneOf)) {
    const said: Said = { kind, head };
    batch.push({ said, message: await sending.desk.seal(said, { body, lane }) });
    bytes += body.length;
    if (batch.length === mostMessages || bytes >= mostBytes) await flush();
  }
  if (batch.length > 0) await flush();
}

/** Puts messages and notes where they stand. */
export async function put(
  batch: readonly { readonly said: Said; readonly message: Outgoing }[],
  { exchange, ledger, seat }: Pick<Sending, 'exchange' | 'ledger' | 'seat'>,
): Promise<void> {
  const places = await exchange.push(batch.map(({ message }) => message));
  batch.forEach(({ said, message }, index) => {
    const at = places[index];
    if (at !== undefined) ledger.noteSent({ ...message, seat, at, body: null }, said);
  });
}
