/** The ways out of the tablet, from the best to the last. */

export interface Ways {
  readonly download: boolean;
  readonly share: boolean;
}

/** An app on an iPad's home screen has links for downloads that do nothing, so sharing stands in for it there. */
export function waysOf(window: Window & typeof globalThis, file: File): Ways {
  const { navigator } = window;
  const onHomeScreen = (navigator as { readonly standalone?: unknown }).standalone === true;
  return {
    download: !onHomeScreen && 'download' in window.HTMLAnchorElement.prototype,
    share: typeof navigator.share === 'function' && navigator.canShare?.({ files: [file] }) === true,
  };
}

export function download(file: File): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
}

/** False when the person, or the browser, did not hand it on. */
export async function share(file: File): Promise<boolean> {
  try {
    await navigator.share({ files: [file] });
    return true;
  } catch {
    return false;
  }
}

/** Puts the text of a field into the clipboard; false where that is refused, and the text is then selected. */
export async function copy(field: HTMLTextAreaElement): Promise<boolean> {
  field.focus();
  field.select();
  try {
    await navigator.clipboard.writeText(field.value);
    return true;
  } catch {
    return false;
  }
}
