/** Whether the browser keeps the records even when space is short; null where it cannot say. */
export async function isKept(): Promise<boolean | null> {
  return (await navigator.storage?.persisted?.()) ?? null;
}

/** Asks the browser to keep the records. A browser may ask the person, so this is done on a tap and never awaited at the start. */
export async function askToKeep(): Promise<boolean | null> {
  return (await navigator.storage?.persist?.()) ?? null;
}
