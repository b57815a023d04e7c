/** Whether the browser keeps the records even when space is short; null where it cannot say. */
export async function isKept(): Promise<boolean | null> {
  return (await navigator.storage?.persisted?.()) ?? null;
}

/** Asks the browser to keep the records. A browser may ask the person, so this is done on a tap and never awaited at the start. */
export async function askToKeep(): Promise<boolean | null> {
  return (await navigator.storage?.persist?.()) ?? null;
}

/**
 * Asks again at a start where the browser need not ask the person: Chromium writes its promise down up to half a minute
 * after it was given, forgets it when the disk fills up before that, and then empties the whole app.
 */
export async function renewKeeping(): Promise<void> {
  const permission = await navigator.permissions?.query({ name: 'persistent-storage' });
  if (permission?.state === 'granted') await askToKeep();
}
