import { useSignalEffect } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { settleLetter } from '../../app/station-letter.ts';
import { letterOf } from '../../domain/shop/station-letters.ts';
import { shellWords } from '../../words/shell-words.ts';
import { useApp, useSession } from '../parts/app-context.ts';

/** A tap has its answer on the screen before this is looked into (ms). */
const afterTap = 50;

/** Gives the station another letter as soon as it sees that its own is another's: a restore or a sync may have brought that. */
export function useOwnLetter(): void {
  const session = useSession();
  const { preferences, opening } = useApp();
  const settling = useRef(false);
  useSignalEffect(() => {
    const { shop } = session.view.value;
    const isOpen = opening.value.kind === 'open' && !opening.value.onlyLooking;
    const timer = setTimeout(() => {
      if (!isOpen || settling.current || letterOf(shop.registers, session.station).kind !== 'lost') return;
      settling.current = true;
      void settleLetter(session, shellWords.stationName).then((news) => {
        settling.current = false;
        if (news) preferences.letterNews.value = news;
      });
    }, afterTap);
    return () => clearTimeout(timer);
  });
}
