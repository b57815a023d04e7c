/**
 * Who may import whom, types included: one row per layer under src. What a row does not name is refused.
 * A layer may always import itself, and its own style sheets.
 */
const data = '^shared/[^/]+[.]json$';
const preact = ['^node_modules/preact/', '^node_modules/@preact/signals(-core)?/'];
const signals = ['^node_modules/@preact/signals(-core)?/'];

const mayImport = {
  domain: ['^node_modules/(valibot|uqr|yalps|@noble/hashes|@stdlib/math-base-special-[a-z]+)/', data],
  store: ['^src/domain/', '^node_modules/(idb|valibot|fflate|@noble/hashes|@scure/bip39)/'],
  // The broker's client comes with it, so it is loaded where a tablet has joined, and by a worker only.
  replication: [
    '^src/(domain|store)/',
    '^node_modules/(@nats-io/(nats-core|jetstream)|@scure/bip39|valibot|fflate|@noble/hashes)/',
  ],
  words: ['^src/domain/'],
  worker: [
    '^src/(domain|store|replication)/',
    '^node_modules/(barcode-detector|image-size|valibot|@noble/hashes)/',
  ],
  ui: [...preact, '^node_modules/uplot/'],
  app: [
    '^src/(domain|store|words)/',
    '^src/worker/[^/]*protocol[.]ts$',
    // What a tablet keeps of its joining, and what invites: none of it knows the broker's client.
    '^src/replication/(joined|joining-link|replica-status|shop-words)[.]ts$',
    '^node_modules/(papaparse|valibot|workbox-window)/',
    '^zxing-wasm/reader/zxing_reader[.]wasm[?]url$',
    ...signals,
    data,
  ],
  screens: ['^src/(app|domain|ui|words)/', ...preact],
  // Nothing of the app: it must work when the app does not.
  rescue: [],
  sw: ['^node_modules/workbox-(precaching|routing)/'],
};

/** @type {(row: [string, string[]]) => import('dependency-cruiser').IForbiddenRuleType} */
const ruleOfLayer = ([layer, allowed]) => ({
  name: `${layer}-imports-only-what-it-may`,
  severity: 'error',
  from: { path: `^src/${layer}/` },
  to: { pathNot: [`^src/${layer}/`, ...allowed] },
});

/** @type {import('dependency-cruiser').IConfiguration} */
const rules = {
  forbidden: [
    ...Object.entries(mayImport).map(ruleOfLayer),
    {
      name: 'a-screen-knows-no-other-screen',
      comment: 'The shell shows the screens, and parts holds what several of them share.',
      severity: 'error',
      from: { path: '^src/screens/([^/]+)/', pathNot: '^src/screens/shell/' },
      to: { path: '^src/screens/', pathNot: ['^src/screens/$1/', '^src/screens/parts/'] },
    },
    {
      name: 'the-demo-shop-is-made-of-domain-facts',
      severity: 'error',
      from: { path: '^shared/' },
      to: { pathNot: ['^shared/', '^src/domain/'] },
    },
    {
      name: 'every-folder-under-src-is-a-known-layer',
      severity: 'error',
      from: {},
      to: { path: '^src/[^/]+/', pathNot: `^src/(${Object.keys(mayImport).join('|')})/` },
    },
    {
      name: 'only-main-imports-the-demo-shop',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/main[.]tsx$' },
      to: { path: '^shared/demo/' },
    },
    {
      name: 'nothing-shipped-imports-tests-or-tools',
      severity: 'error',
      from: { path: '^(src|shared)/' },
      to: { path: '^(tests|[.]ci)/' },
    },
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'every-import-is-found',
      comment: 'What is asked for by its address is for the build to find, which fails when it is not there.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '[?]url$' },
    },
    {
      name: 'shipped-code-uses-shipped-packages',
      comment:
        'A package that the app needs stands under dependencies; types of a build tool are no exception.',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'], pathNot: '^node_modules/vite/client' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '[.]css$' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json', '.d.ts'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default', 'browser'],
    },
  },
};

export default rules;
