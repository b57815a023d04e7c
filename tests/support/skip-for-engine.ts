/** Before each test of the built app: leaves it out where the engine at hand cannot be put through it, and says why. */
import { beforeEach } from 'vitest';
import { engine } from './engine.mjs';
import { reasonToSkip } from './engine-skips.ts';

beforeEach(({ task, skip }) => {
  const reason = reasonToSkip(engine, { file: task.file.filepath, title: task.name });
  if (reason !== undefined) skip(reason);
});
