/** The version in package.json, put in at build time. */
declare const __APP_VERSION__: string;
