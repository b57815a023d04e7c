import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files of a minute or more on two cores. Vitest goes by the size of a file it has not met, which says little of these. */
const long = [
  ...[
    'browser/update',
    'browser/backup',
    'browser/clocks',
    'browser/security',
    'browser/scan',
    'browser/labels',
  ],
  ...['browser/bench-lock', 'browser/both-copies', 'browser/hands-free', 'browser/first-ten-minutes'],
  ...['browser/rescue', 'browser/demo-walk-tablet', 'browser/demo-walk-phone', 'browser/two-windows'],
  ...['chaos/seal', 'chaos/corrupt', 'chaos/kill', 'chaos/update'],
].map((name) => `tests/${name}.test.ts`);

/** Begins with what takes longest: a long file that began last would be waited for by all. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const usual = await super.sort(files);
    // Each project keeps its place.
    const projects = [...new Set(usual.map(({ project }) => project))];
    return projects.flatMap((project) =>
      usual.filter((file) => file.project === project).toSorted((a, b) => placeOf(a) - placeOf(b)),
    );
  }
}

function placeOf({ moduleId }: TestSpecification): number {
  const place = long.findIndex((name) => moduleId.endsWith(name));
  return place === -1 ? long.length : place;
}
