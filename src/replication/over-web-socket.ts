import { wsconnect } from '@nats-io/nats-core';
import type { Exchange } from './exchange.ts';
import { type NatsParts, openNatsExchange } from './nats-exchange.ts';

/** A line to the broker as a browser can have it. */
export const openOverWebSocket = (parts: Omit<NatsParts, 'connect'>): Promise<Exchange> =>
  openNatsExchange({ connect: wsconnect, ...parts });
