import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { cureWords as words } from '../../words/cure-words.ts';
import { nameOf } from '../../words/names.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { type CureCall, cureCalls, keepCalls } from '../parts/cure-call.ts';

/** Each cure that was called, with the way to it, until it is taken out or put away. */
export const CureNotices = () => (
  <>
    {cureCalls.value.map((call) => (
      <CureNotice key={`${call.tray}|${call.stage}|${call.ready}`} call={call} />
    ))}
  </>
);

const CureNotice = ({ call }: { call: CureCall }) => {
  const { registers } = useShop();
  const { tray, stage, code, pieces } = call;
  return (
    <Notice
      tone="info"
      title={words.over({ code, pieces, stage: nameOf(registers, { register: 'stage', id: stage }) })}
      testId="cure-notice"
      actions={
        <>
          <PressButton label={words.goThere} onAct={() => goTo('bench', stage, tray)} testId="cure-go" />
          <PressButton
            tone="quiet"
            closing
            label={words.putAway}
            onAct={() => keepCalls((each) => each !== call)}
            testId="cure-put-away"
          />
        </>
      }
    />
  );
};
