import { describe, expect, test } from 'vitest';
import { closingLine } from './closing-line.ts';
import { countRun, type ReportedFile } from './count-run.ts';

function file({
  tests = [],
  ownErrors = 0,
  suiteErrors = [],
}: {
  tests?: readonly string[];
  ownErrors?: number;
  suiteErrors?: readonly number[];
}): ReportedFile {
  const some = (count: number) => Array.from({ length: count }, () => new Error('broken on purpose'));
  return {
    errors: () => some(ownErrors),
    children: {
      allTests: () => tests.map((state) => ({ result: () => ({ state }) })),
      allSuites: () => suiteErrors.map((count) => ({ errors: () => some(count) })),
    },
  };
}

describe('counting a run', () => {
  test('tests of all files are added up, and skipped ones count as neither', () => {
    const files = [file({ tests: ['passed', 'failed', 'skipped'] }), file({ tests: ['passed', 'passed'] })];
    expect(countRun(files, [])).toEqual({ passed: 3, failed: 1 });
  });

  test('a file that cannot be loaded counts as one failure', () => {
    expect(countRun([file({ tests: ['passed'] }), file({ ownErrors: 2 })], [])).toEqual({
      passed: 1,
      failed: 1,
    });
  });

  test('a suite whose preparation fails counts as one failure', () => {
    expect(countRun([file({ tests: ['skipped', 'skipped'], suiteErrors: [1, 0] })], [])).toEqual({
      passed: 0,
      failed: 1,
    });
  });

  test('an error outside every file counts as one failure each', () => {
    expect(countRun([file({ tests: ['passed'] })], [new Error('one'), new Error('two')])).toEqual({
      passed: 1,
      failed: 2,
    });
  });
});

describe('the closing line', () => {
  test('gives both counts, and nothing else', () => {
    expect(closingLine({ passed: 12, failed: 3 }, { sound: false })).toBe('12 passed, 3 failed');
    expect(closingLine({ passed: 7, failed: 0 }, { sound: true })).toBe('7 passed, 0 failed');
  });

  test('a run that broke off never says that nothing failed', () => {
    expect(closingLine({ passed: 7, failed: 0 }, { sound: false })).toBe('7 passed, 1 failed');
    expect(closingLine({ passed: 0, failed: 0 }, { sound: false })).toBe('0 passed, 1 failed');
  });
});
