import { signal } from '@preact/signals';

/** This tablet had nothing and has just joined others: what comes in then is told where one works, until that was read. */
export const justJoined = signal(false);
