/** The version in package.json, put in at build time. */
declare const __APP_VERSION__: string;
/** When this version was built, ms UTC: no right clock says an earlier time. */
declare const __BUILT_AT__: number;
