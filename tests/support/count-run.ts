import type { RunCount } from './closing-line.ts';

/** The part of a test file's report that is counted. */
export interface ReportedFile {
  errors(): readonly unknown[];
  readonly children: {
    allTests(): Iterable<{ result(): { readonly state: string } }>;
    allSuites(): Iterable<{ errors(): readonly unknown[] }>;
  };
}

/** Counts tests, and each file, suite or stray error that went wrong outside any test as one more failure. */
export function countRun(files: readonly ReportedFile[], strayErrors: readonly unknown[]): RunCount {
  let passed = 0;
  let failed = strayErrors.length;
  for (const file of files) {
    for (const test of file.children.allTests()) {
      const { state } = test.result();
      if (state === 'passed') passed += 1;
      if (state === 'failed') failed += 1;
    }
    for (const place of [file, ...file.children.allSuites()]) if (place.errors().length > 0) failed += 1;
  }
  return { passed, failed };
}
