/** Tests of the built app that another engine than Chromium cannot be put through, each with what keeps it from that. */
import type { Engine } from './engine.mjs';

export interface Skip {
  /** The file, below tests/browser, without its ending. */
  readonly file: string;
  /** How the title begins; all tests of the file when it is left out. */
  readonly test?: string;
  readonly because: string;
}

const skips: Readonly<Record<Engine, readonly Skip[]>> = {
  chromium: [],
  firefox: [],
  // Its driver has suites of its own, in tests/engines.
  webkit: [],
};

export const skipsOf = (engine: Engine): readonly Skip[] => skips[engine];

/** Why `engine` is not put through a test; undefined where it is. */
export function reasonToSkip(
  engine: Engine,
  { file, title }: { readonly file: string; readonly title: string },
): string | undefined {
  const found = skips[engine].find(
    (skip) => file.endsWith(`/${skip.file}.test.ts`) && title.startsWith(skip.test ?? ''),
  );
  return found?.because;
}
