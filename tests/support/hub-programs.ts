/** Before the tests of the hub: broker and web server, installed where that is wanted. Without them the run fails. */
import type { TestProject } from 'vitest/node';
import { findPrograms } from '../../.ci/hub/programs.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    hubPrograms: { readonly broker: string; readonly webServer: string };
  }
}

export function setup({ provide }: TestProject) {
  provide('hubPrograms', findPrograms());
}
