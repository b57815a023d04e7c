import { readId, stageId } from '../../domain/log/ids.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { mixWords as words } from '../../words/mix-words.ts';
import { nameOf } from '../../words/names.ts';
import { goTo } from '../parts/address.ts';
import { useApp, useShop } from '../parts/app-context.ts';
import { potOver } from '../parts/cure-call.ts';

/** That the pot life of a mix is over, until it is put away or mixed anew. */
export const PotNotice = () => {
  const { pot } = useApp().preferences;
  const { registers } = useShop();
  const over = potOver.value;
  const id = readId(stageId, over?.stage);
  if (!over || over.ends !== pot.value?.ends || id === null) return null;
  return (
    <Notice
      tone="warn"
      title={words.potOver(nameOf(registers, { register: 'stage', id }))}
      testId="pot-notice"
      actions={
        <>
          <PressButton label={words.toMix} onAct={() => goTo('bench', 'mix', id)} testId="pot-go" />
          <PressButton
            tone="quiet"
            closing
            label={words.putAway}
            onAct={() => {
              pot.value = null;
              potOver.value = null;
            }}
            testId="pot-put-away"
          />
        </>
      }
    />
  );
};
