import { useEffect } from 'preact/hooks';
import { curesOver, holds } from '../../domain/rollup/holds.ts';
import { useSession } from '../parts/app-context.ts';
import { callCures, keepCalls } from '../parts/cure-call.ts';
import { useFeedback } from '../parts/use-feedback.ts';

/** How often (ms) it is looked whether a cure is over: a tap never waits for this. */
const betweenLooks = 5000;

/** Calls each cure once, as its time is up; what was over before the app was opened is shown where it stands. */
export function useCureWatch(): void {
  const session = useSession();
  const { sound } = useFeedback();
  useEffect(() => {
    let looked = session.now();
    const look = () => {
      if (document.visibilityState === 'hidden') return;
      const { shop } = session.view.peek();
      const now = session.now();
      const over = curesOver(shop, { after: looked, until: now });
      looked = now;
      const held = new Set(holds(shop).map(({ tray, stage }) => `${tray.tray}|${stage}`));
      keepCalls(({ tray, stage }) => held.has(`${tray}|${stage}`));
      if (over.length === 0) return;
      callCures(
        over.map(({ tray: { tray, code }, stage, pieces, ready }) => ({ tray, code, stage, pieces, ready })),
      );
      sound('cured');
    };
    const timer = setInterval(look, betweenLooks);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
      keepCalls(() => false);
    };
  }, [session, sound]);
}
