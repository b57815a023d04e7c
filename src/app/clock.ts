/** The only source of time; everything else is handed it. */
export interface Clock {
  /** The wall clock, ms UTC: may jump. */
  readonly now: () => number;
  /** Milliseconds from some start that no setting of the clock moves. */
  readonly monotonic: () => number;
  /** IANA name of the tablet's zone. */
  readonly zone: () => string;
}

export const systemClock: Clock = {
  now: () => Date.now(),
  monotonic: () => performance.now(),
  zone: () => new Intl.DateTimeFormat('en').resolvedOptions().timeZone || 'UTC',
};
