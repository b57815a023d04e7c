/** What of the browser's Trusted Types is used here; a browser that has none goes without. */
interface PolicyMaker {
  readonly createPolicy: (
    name: 'default',
    rules: { readonly createScriptURL: (address: string) => string | null },
  ) => unknown;
}

/**
 * Lets a page, or a worker of it, start workers of its own and nothing else: under the policy of the built page a text becomes a script's
 * address only here, and never markup or code.
 */
export function allowOwnScripts(): void {
  const maker = (globalThis as { readonly trustedTypes?: PolicyMaker }).trustedTypes;
  maker?.createPolicy('default', {
    createScriptURL: (address) =>
      new URL(address, location.href).origin === location.origin ? address : null,
  });
}
