import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import preact from '@preact/preset-vite';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { contentSecurityPolicy } from './.ci/content-security-policy.mjs';
import { licencesOfParts } from './.ci/licences.mjs';
import { isShared, sharedParts } from './.ci/shared-parts.mjs';

const { version } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8'));
/** Set to try an update out. */
const trialVersion = process.env.APP_VERSION;
// It then shares no script with the real one: the hardest case for a window that runs the other.
const named = ({ name }: { readonly name: string }) =>
  `assets/${isShared(name) ? 'shared' : name}-[hash]${trialVersion === undefined ? '' : `-${trialVersion}`}.js`;
let builtInto = 'dist';

/**
 * A file that a host or a proxy has changed on its way, or put another in the place of, is not kept: the update fails
 * as a whole and the version in use goes on.
 */
const withDigests = <Entry extends { url: string }>(entries: readonly Entry[]) =>
  entries.map((entry) => {
    const digest = createHash('sha256').update(readFileSync(join(builtInto, entry.url)));
    return { ...entry, integrity: `sha256-${digest.digest('base64')}` };
  });

const whereItIsBuilt: Plugin = {
  name: 'where-it-is-built',
  configResolved(config) {
    builtInto = resolve(config.root, config.build.outDir);
  },
};

/** The rescue page is no part of the app: its script has a name of its own and imports nothing. */
const rescueScript: Plugin = {
  name: 'rescue-script',
  configureServer(server) {
    server.middlewares.use((request, _response, next) => {
      if (request.url === '/rescue.js') request.url = '/src/rescue/rescue.ts';
      next();
    });
  },
};

/** The moment of the build, ms UTC; that of the sources where SOURCE_DATE_EPOCH (reproducible-builds.org) names it. */
function builtAt(): number {
  const { SOURCE_DATE_EPOCH } = process.env;
  return SOURCE_DATE_EPOCH ? Number(SOURCE_DATE_EPOCH) * 1000 : Date.now();
}

/** At build only: the development server needs inline styles and scripts. */
const policyInBuiltPage: Plugin = {
  name: 'content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
      injectTo: 'head-prepend',
    },
  ],
};

/**
 * Layers rank by where they are first named, and a page may load a part's sheet before the main one: so every built
 * sheet names them all, in their order.
 */
const layersInEverySheet: Plugin = {
  name: 'layers-in-every-sheet',
  apply: 'build',
  generateBundle(_options, bundle) {
    for (const asset of Object.values(bundle)) {
      if (asset.type !== 'asset' || !asset.fileName.endsWith('.css')) continue;
      asset.source = `@layer tokens, base, kit;${asset.source}`;
    }
  },
};

/**
 * Left to itself the decoder of symbols fetches its WebAssembly from a host on the internet. The app tells it where its
 * own is (src/worker/symbol-worker.ts); the other address is no part of what is built.
 */
const noOtherHost = (): Plugin => ({
  name: 'no-other-host',
  transform(code, id) {
    if (!/barcode-detector.dist.es.zxing-exported[.]js/.test(id)) return null;
    const without = code.replace(/https:\/\/[\w.-]+\/npm\/zxing-wasm@/, './');
    if (without === code) throw new Error('the decoder names its other host in another way');
    return { code: without, map: null };
  },
});

/**
 * The broker's client brings a library of signatures that asks Node for random numbers where a browser has none. A browser
 * always has some; what a bundler puts in the place of that question names its own host.
 */
const noNodeRandom = (): Plugin => ({
  name: 'no-node-random',
  transform(code, id) {
    if (!/tweetnacl.nacl-fast[.]js/.test(id)) return null;
    const without = code.replace("typeof require !== 'undefined'", 'false');
    if (without === code) throw new Error('the library asks Node for random numbers in another way');
    return { code: without, map: null };
  },
});

/**
 * The special functions try by `eval` whether a browser knows generators, which the policy refuses and the console then tells
 * of. They go on as they did after the refusal: by loops.
 */
const noTriedEval = (): Plugin => ({
  name: 'no-tried-eval',
  apply: 'build',
  transform(code, id) {
    if (!/assert-has-generator-support.lib.main[.]js/.test(id)) return null;
    const without = code
      .replace("var evil = require( '@stdlib/utils-eval' );", '')
      .replace(/evil\( .*? \);\s+bool = true;/, 'bool = false;');
    if (/evil|bool = true/.test(without)) throw new Error('the library tries generators in another way');
    return { code: without, map: null };
  },
});

const licencesBeside: Plugin = {
  name: 'licences-beside',
  apply: 'build',
  generateBundle() {
    this.emitFile({ type: 'asset', fileName: 'licences.txt', source: licencesOfParts() });
  },
};

/** Legal comments stand in a file of their own (`licences.txt`): a tablet need not read them at each start. */
const comments = { legal: false };

export default defineConfig({
  // Relative, so that the built folder works under any path of any host.
  base: './',
  define: {
    __APP_VERSION__: JSON.stringify(trialVersion ?? version),
    __BUILT_AT__: JSON.stringify(builtAt()),
  },
  build: {
    target: 'es2022',
    // The policy refuses fonts and scripts with a data: address.
    assetsInlineLimit: 0,
    modulePreload: {
      // A browser without module preload loads a part a moment later; that is not worth code on the first screen.
      polyfill: false,
      // Parts come from the service worker's cache: a list of what each will import would buy nothing there.
      resolveDependencies: (_file, needs, { hostType }) =>
        hostType === 'html' ? needs : needs.filter((need) => need.endsWith('.css')),
    },
    rolldownOptions: {
      input: { index: 'index.html', rescue: 'src/rescue/rescue.ts' },
      output: {
        entryFileNames: (chunk) => (chunk.name === 'rescue' ? 'rescue.js' : named(chunk)),
        chunkFileNames: named,
        // The first screen lists the sheets of all parts: names beside the digests would be a third of a kilobyte.
        assetFileNames: ({ names: [name = ''] }) =>
          name.endsWith('.css') ? 'assets/sheet-[hash][extname]' : 'assets/[name]-[hash][extname]',
        comments,
        codeSplitting: sharedParts(resolve('src/main.tsx')),
      },
    },
  },
  worker: {
    format: 'es',
    plugins: () => [noOtherHost(), noNodeRandom(), noTriedEval()],
    rolldownOptions: { output: { comments } },
  },
  plugins: [
    preact(),
    whereItIsBuilt,
    rescueScript,
    policyInBuiltPage,
    layersInEverySheet,
    licencesBeside,
    noTriedEval(),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'src/sw',
      filename: 'sw.ts',
      // Changing this later strands tablets that run the older kind: see the gotchas in DEVELOPERS.md.
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      manifest: {
        name: 'Tallywright',
        short_name: 'Tallywright',
        description: 'The shop-floor tally of a small maker',
        lang: 'en-GB',
        start_url: './',
        scope: './',
        display: 'standalone',
        theme_color: '#3b2a1e',
        background_color: '#f6efe3',
        categories: ['business', 'productivity'],
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: 'monochrome.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'monochrome' },
        ],
      },
      injectManifest: {
        // The plugin adds the manifest itself.
        globPatterns: ['**/*.{js,css,html,svg,png,webp,woff2,wasm}'],
        maximumFileSizeToCacheInBytes: 3_000_000,
        manifestTransforms: [(entries) => ({ manifest: withDigests(entries), warnings: [] })],
      },
    }),
  ],
});
