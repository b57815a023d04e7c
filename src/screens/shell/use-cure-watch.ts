import { useEffect } from 'preact/hooks';
import { notifySystem } from '../../app/system-notices.ts';
import { type CureRound, curesOver, holds } from '../../domain/rollup/holds.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { cureWords } from '../../words/cure-words.ts';
import { mixWords } from '../../words/mix-words.ts';
import { nameOf } from '../../words/names.ts';
import { useApp, useSession } from '../parts/app-context.ts';
import { callCures, keepCalls, potOver } from '../parts/cure-call.ts';
import { useFeedback } from '../parts/use-feedback.ts';

/** How often (ms) it is looked whether a cure is over: a tap never waits for this. */
const betweenLooks = 5000;

/**
 * Calls each cure once, as its time is up, and each mix at the end of its pot life; what was over before the app was opened
 * is shown where it stands. While the app is out of sight the system is told instead, where that is wanted and allowed.
 */
export function useCureWatch(): void {
  const session = useSession();
  const { pot, notify } = useApp().preferences;
  const { sound } = useFeedback();
  useEffect(() => {
    let looked = session.now();
    let told = looked;
    const overSince = (after: number, until: number) => {
      const { shop } = session.view.peek();
      const run = pot.peek();
      const mix = run && run.ends > after && run.ends <= until ? run : null;
      return { shop, cures: curesOver(shop, { after, until }), mix };
    };
    const tell = () => {
      const now = session.now();
      const { shop, cures, mix } = overSince(told, now);
      told = now;
      if (!notify.peek()) return;
      for (const round of cures) void notifySystem(wordsOf(shop, round), { tag: `cure ${round.tray.tray}` });
      if (mix) void notifySystem(mixWords.potOver(stageName(shop, mix.stage)), { tag: 'pot life' });
    };
    const look = () => {
      if (document.visibilityState === 'hidden') return tell();
      const now = session.now();
      const { shop, cures, mix } = overSince(looked, now);
      looked = now;
      told = now;
      const held = new Set(holds(shop).map(({ tray, stage }) => `${tray.tray}|${stage}`));
      keepCalls(({ tray, stage }) => held.has(`${tray}|${stage}`));
      if (mix) potOver.value = mix;
      callCures(
        cures.map(({ tray: { tray, code }, stage, pieces, ready }) => ({ tray, code, stage, pieces, ready })),
      );
      if (mix || cures.length > 0) sound('cured');
    };
    const timer = setInterval(look, betweenLooks);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
      keepCalls(() => false);
      potOver.value = null;
    };
  }, [session, sound, pot, notify]);
}

const stageName = ({ registers }: Shop, id: string) => nameOf(registers, { register: 'stage', id });

function wordsOf(shop: Shop, { tray, stage, pieces }: CureRound): string {
  return cureWords.over({ code: tray.code, pieces, stage: stageName(shop, stage) });
}
