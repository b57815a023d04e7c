import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { clockWords as words } from '../../words/clock-words.ts';
import { useSession } from '../parts/app-context.ts';
import { useNow } from '../parts/use-now.ts';

/** Says that the tablet's clock cannot be believed, until it is put away or the clock is right. */
export const ClockNotice = () => {
  const session = useSession();
  // Looked at anew with the doubt and with each half minute: what is told is what is doubted.
  useNow();
  const { doubt, putAway, trust } = session.clockWatch;
  if (doubt.value === null) return null;
  return (
    <Notice
      tone="warn"
      title={words.title}
      testId="clock-notice"
      actions={
        <>
          {doubt.value !== 'before-build' && (
            <PressButton label={words.isRight} onAct={trust} testId="clock-right" />
          )}
          <PressButton tone="quiet" closing label={words.putAway} onAct={putAway} testId="clock-put-away" />
        </>
      }
    >
      <p>{words.says(doubt.value, { now: session.now(), zone: session.zone() })}</p>
      <p>{words.kept}</p>
    </Notice>
  );
};
