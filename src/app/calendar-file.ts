import { cureCalendar } from '../domain/export/cure-calendar.ts';
import { cureRounds } from '../domain/rollup/holds.ts';
import { calendarWords as words } from '../words/calendar-words.ts';
import { momentWords } from '../words/date-words.ts';
import { nameOf } from '../words/names.ts';
import type { Session } from './session.ts';

/** The times of all that cures now as a file for a calendar. What is ready already is left out. */
export function calendarFile(session: Session): File {
  const { shop } = session.view.value;
  const now = session.now();
  const text = cureCalendar(
    cureRounds(shop).filter(({ ready }) => ready > now),
    {
      now,
      name: words.name,
      say: ({ tray, stage, pieces, least }) => ({
        summary: words.summary({
          code: tray.code,
          stage: nameOf(shop.registers, { register: 'stage', id: stage }),
          n: pieces,
        }),
        description: words.description(momentWords(least, session.zone())),
      }),
    },
  );
  return new File([text], words.fileName(session.today()), { type: 'text/calendar' });
}
