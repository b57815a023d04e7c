import { curingWords as words } from '../../../words/curing-words.ts';
import { useSession } from '../../parts/app-context.ts';
import { FileButton } from '../../parts/file-button.tsx';

/** The times of what cures as a file for the calendar of a phone. */
export const CalendarButton = () => {
  const session = useSession();
  const make = async () => (await import('../../../app/calendar-file.ts')).calendarFile(session);
  return (
    <FileButton
      size="bench-small"
      label={words.calendar}
      make={make}
      after={words.calendarAfter}
      testId="curing-calendar"
    />
  );
};
