/** Resolves when what was promised so far has come about. */
export const settled = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
