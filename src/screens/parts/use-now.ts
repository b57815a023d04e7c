import { useEffect, useState } from 'preact/hooks';
import { useSession } from './app-context.ts';

/** The moment, ms UTC, renewed every `every` ms, so that ages and cures on the screen stay true. */
export function useNow(every = 30_000): number {
  const session = useSession();
  const [now, setNow] = useState(session.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(session.now()), every);
    return () => clearInterval(timer);
  }, [session, every]);
  return now;
}
