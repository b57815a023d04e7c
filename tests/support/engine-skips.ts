/** Tests of the built app that another engine than Chromium cannot be put through, each with what keeps it from that. */
import type { Engine } from './engine.mjs';

export interface Skip {
  /** The file, below tests/browser, without its ending. */
  readonly file: string;
  /** How the title begins; all tests of the file when it is left out. */
  readonly test?: string;
  readonly because: string;
}

const film = 'needs a film in the place of the camera, which only flags of Chromium give';
const devtools = 'needs the developer tools of Chromium, which no other driver has';
const drawnLetters = 'Firefox prints letters as drawings, of which no text can be read back';
const ownFiles = 'is about the files in which Chromium keeps a profile';

const skips: Readonly<Record<Engine, readonly Skip[]>> = {
  chromium: [],
  firefox: [
    { file: 'both-copies', test: 'a database that went while the app was shut', because: devtools },
    { file: 'clocks', test: 'a tablet that is carried to another zone', because: devtools },
    { file: 'forecast', test: 'a forecast is stopped and asked again', because: devtools },
    { file: 'frozen-window', because: devtools },
    { file: 'fsync', because: ownFiles },
    { file: 'journal', test: 'a window that crashes', because: devtools },
    { file: 'labels', test: 'a route card has the stages of its tray', because: drawnLetters },
    { file: 'plan', test: 'a batch is looked back at, and printed', because: drawnLetters },
    { file: 'print-scan-tap', because: film },
    { file: 'rescue', test: 'a store that cannot be opened at all', because: ownFiles },
    { file: 'scan', because: film },
    { file: 'update', test: 'an old one that slept through the update', because: devtools },
    { file: 'wedge', because: devtools },
  ],
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
