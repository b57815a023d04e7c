/** What was found in one place of the tablet's storage: its records as lines of a file, and what could not be read. */
export interface Found {
  /** Where it was found, as a person is told. */
  readonly title: string;
  /** One JSON text each; the place that a record comes from stands in it. */
  readonly lines: readonly string[];
  /** Moment of the newest record, ms UTC; null when none tells. */
  readonly newest: number | null;
  /** What could not be read, and the browser's reason. */
  readonly unread: readonly string[];
}

export const laterOf = (a: number | null, b: number | null): number | null =>
  a === null ? b : b === null ? a : Math.max(a, b);

export const reasonOf = (error: unknown): string =>
  error instanceof Error ? `${error.name}: ${error.message}` : String(error);

/** Rejects when `asked` takes longer than `ms`: a sick store may never answer. */
export function within<Answer>(ms: number, asked: Promise<Answer>): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('no answer')), ms);
    asked.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
