import { download } from './save-file.ts';

/** What became of a file: `tap-again` when the browser wants a fresh tap to share it. */
export type HandedOver = 'saved' | 'shared' | 'called-off' | 'tap-again';

/**
 * Hands a file over from within a tap: as a download, or through the share sheet where downloads do not exist (an app
 * on an iPad's home screen: WebKit bugs 236943 and 275288).
 */
export async function handOver(file: File): Promise<HandedOver> {
  if (wayOut() !== 'share' || !navigator.canShare?.({ files: [file] })) {
    download(file);
    return 'saved';
  }
  try {
    await navigator.share({ files: [file] });
    return 'shared';
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return 'called-off';
    if (error instanceof DOMException && error.name === 'NotAllowedError') return 'tap-again';
    throw error;
  }
}

/** Only WebKit on iPad and iPhone has this property. */
function isHomeScreenOfApple(): boolean {
  return 'standalone' in navigator && navigator.standalone === true;
}

/** How a file can leave the tablet here; as text to copy where the browser has neither downloads nor sharing. */
export function wayOut(): 'download' | 'share' | 'text' {
  if (!isHomeScreenOfApple() && 'download' in HTMLAnchorElement.prototype) return 'download';
  const probe = new File(['a'], 'a.gz', { type: 'application/gzip' });
  return navigator.canShare?.({ files: [probe] }) ? 'share' : 'text';
}
