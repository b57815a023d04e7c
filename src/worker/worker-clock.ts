/** The tablet's clock, ms UTC, for what a worker writes down by itself; all else is handed its time. */
export const workerNow = (): number => Date.now();
