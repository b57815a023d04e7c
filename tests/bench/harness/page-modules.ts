/** Builds the modules of tests/bench/in-page as the app is built: each becomes one that a page can import. */
import { join } from 'node:path';
import preact from '@preact/preset-vite';
import { build } from 'vite';
import { root } from '../../../.ci/tools.mjs';

/** Under their own names: SQLite looks for its WebAssembly beside its script by the name that it was given at home. */
const assetFileNames = 'assets/[name][extname]';

/** Builds `in-page/<name>.ts`, the sources of the app that it imports among it, to `<folder>/<name>/<name>.js`. */
export async function buildPageModule(name: string, folder: string): Promise<void> {
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    mode: 'production',
    base: './',
    publicDir: false,
    define: { __APP_VERSION__: JSON.stringify('0.0.0-bench'), __BUILT_AT__: '0' },
    plugins: [preact()],
    worker: { format: 'es', rolldownOptions: { output: { assetFileNames } } },
    build: {
      target: 'es2022',
      outDir: join(folder, name),
      emptyOutDir: true,
      chunkSizeWarningLimit: Number.POSITIVE_INFINITY,
      modulePreload: { polyfill: false },
      rolldownOptions: {
        input: { [name]: join(root, 'tests/bench/in-page', `${name}.ts`) },
        // The page calls what the module exports.
        preserveEntrySignatures: 'strict',
        output: { entryFileNames: '[name].js', assetFileNames },
      },
    },
  });
}
