import type { Bytes } from '../store/backup/sealing-keys.ts';

/** Where among the messages of a seat one of the log lies: what was written lately and runs that it was folded into. */
type LogLane = 'ev' | 'run.1' | 'run.2' | 'run.3';
/** Where the pieces of one photo lie: its hash, and how many there are of them. */
export type PhotoLane = `ph.${string}.${number}`;
export type Lane = LogLane | PhotoLane;

/** A message as it is handed to the broker, which understands nothing of it but where it belongs. */
export interface Outgoing {
  readonly lane: Lane;
  readonly kind: string;
  /** Sealed, in base64url, so that it can be read without the body. */
  readonly head: string;
  readonly body: Bytes;
  /** What is offered twice under one id within a short time stands there once. */
  readonly id: string;
  /** It takes the place of all that its seat has on the lane. */
  readonly replaces?: true;
  /** It is put only where the last message of its seat on the lane stands here; 0 where there is none. */
  readonly after?: number;
}

/** A message as it stands on the broker. Nothing of it is to be believed before it was opened. */
export interface Placed extends Pick<Outgoing, 'kind' | 'head' | 'replaces'> {
  /** Rises from message to message; there may be gaps. */
  readonly at: number;
  readonly seat: string;
  readonly lane: string;
  /** Null when only heads were asked for. */
  readonly body: Bytes | null;
}

/** The least that a broker says of what it holds. */
export interface Glance {
  /** Another text means that it began anew. */
  readonly created: string;
  /** Where the last message ever put stands; 0 before the first. */
  readonly last: number;
  readonly messages: number;
}

/** What a broker says that it holds. */
export interface Look extends Glance {
  /** How many messages stand there, by seat and lane (`laneKey`). */
  readonly counts: ReadonlyMap<string, number>;
}

/** A lane of a seat, whatever lies there. */
export type LaneOf = Pick<Placed, 'seat' | 'lane'>;

export const laneKey = ({ seat, lane }: LaneOf) => `${seat}/${lane}`;

/** Why a broker does not do what was asked, and will not do it when it is asked again. */
export type Refusal = 'key' | 'rights' | 'no-shop' | 'full';

/** Thrown where the broker answers, and refuses. All other errors mean that it cannot be reached now. */
export class Refused extends Error {
  override readonly name = 'Refused';
  readonly why: Refusal;
  constructor(why: Refusal, message: string) {
    super(message);
    this.why = why;
  }
}

/** Thrown by a push of a message whose lane has gone on meanwhile. */
export class LaneMoved extends Error {
  override readonly name = 'LaneMoved';
}

export type TakeBatch = (batch: readonly Placed[]) => Promise<void>;

/** What is to be read: from a place on, to another or to the end as it is now; of one lane, or of all. */
export interface Range {
  readonly from: number;
  readonly to?: number;
  readonly bodies: boolean;
  readonly of?: LaneOf;
}

/** An open line to the broker's copy of one shop, of its log or of its photos, as one seat. Every promise rejects once the line is lost. */
export interface Exchange {
  /** The same as a look without its counts, which may be long. */
  readonly glance: () => Promise<Glance>;
  readonly look: () => Promise<Look>;
  /** Gives what stands in a range, in order and some at a time. */
  readonly read: (range: Range, take: TakeBatch) => Promise<void>;
  /** Gives everything behind a place, and what comes then, until the line is closed or lost. */
  readonly follow: (after: number, take: TakeBatch) => Promise<void>;
  /** Puts messages in their order; resolves with where each stands, once the broker has them all. */
  readonly push: (messages: readonly Outgoing[]) => Promise<readonly number[]>;
  /** Resolves when the line is closed or lost. */
  readonly closed: Promise<void>;
  readonly close: () => void;
}
