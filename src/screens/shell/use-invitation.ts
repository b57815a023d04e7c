import { useEffect } from 'preact/hooks';
import { followInvitation } from '../parts/join/joining-place.ts';

/** Follows an invitation in the address, whether the app is opened with it or it is entered later. */
export function useInvitation(): void {
  useEffect(() => {
    followInvitation();
    addEventListener('hashchange', followInvitation);
    return () => removeEventListener('hashchange', followInvitation);
  }, []);
}
