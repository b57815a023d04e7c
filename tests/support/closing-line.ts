/** What a run of the tests came to. */
export interface RunCount {
  readonly passed: number;
  /** Tests that failed, and files, suites and stray errors that kept tests from being run at all. */
  readonly failed: number;
}

/** The one line that a machine reads: a run that is not sound never says that nothing failed. */
export function closingLine({ passed, failed }: RunCount, { sound }: { sound: boolean }): string {
  return `${passed} passed, ${sound ? failed : Math.max(failed, 1)} failed`;
}
