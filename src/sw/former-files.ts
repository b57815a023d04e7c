/**
 * The files of the version before this one. A window that still runs it, because its tray is in mid-work or it slept
 * through the update, goes on with all its parts until it is loaded anew.
 */

/** Puts aside what is in the cache `cacheName` and no longer `current`. Without room for it the update goes on all the same. */
export async function keepFormerFiles(cacheName: string, current: ReadonlySet<string>): Promise<void> {
  const cache = await caches.open(cacheName);
  const leaving = (await cache.keys()).filter(({ url }) => !current.has(url));
  if (leaving.length === 0) return;
  try {
    await caches.delete(formerName(cacheName));
    const former = await caches.open(formerName(cacheName));
    for (const request of leaving) {
      const file = await cache.match(request);
      if (file) await former.put(request, file);
    }
  } catch {
    // A full tablet: such a window then fetches a part of its version from the host, or says that it could not.
  }
}

/** A file that is not of this version: of the one before when it is known, else from the host. */
export async function formerFile(cacheName: string, request: Request): Promise<Response> {
  const former = await caches.match(request.url, { cacheName: formerName(cacheName) });
  return former ?? fetch(request);
}

const formerName = (cacheName: string) => `${cacheName} former`;
