import { useEffect } from 'preact/hooks';
import type { Session } from '../../app/session.ts';
import { useApp, useSession } from '../parts/app-context.ts';

/** Shows nothing: sees to what must be done when a window goes and comes back. */
export const OnReturn = () => {
  useReadingOnReturn(useSession());
  useComparing();
  return null;
};

/** Messages of other windows are lost while this one sleeps: on its return it reads for itself, and keeps a snapshot when it goes. */
function useReadingOnReturn(session: Session): void {
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === 'visible') void session.refresh();
      else void session.keepSnapshot();
    };
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, [session]);
}

/** How often (ms) a second copy that could not be written is tried again. */
const betweenTries = 60_000;

/** The two copies are compared when the window comes back into view, and again while the second one is behind. */
function useComparing(): void {
  const { opening } = useApp();
  useEffect(() => {
    const copies = () => (opening.value.kind === 'open' ? opening.value.twoCopies : null);
    const look = () => document.visibilityState === 'visible' && void copies()?.compare();
    const again = setInterval(() => copies()?.state.value.twin === 'failed' && look(), betweenTries);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(again);
      document.removeEventListener('visibilitychange', look);
    };
  }, [opening]);
}
