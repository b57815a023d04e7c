import { liveStages } from '../../domain/route/live-stages.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { tabletsWords as words } from '../../words/tablets-words.ts';
import { useShop } from '../parts/app-context.ts';
import { justJoined } from '../parts/join/just-joined.ts';
import { useReplica } from '../parts/join/use-replica.ts';
import { traysInWork } from '../trays/trays-view.ts';

/** What has come to a tablet that had nothing, from those that it has joined, and whether there is more on its way. */
export const ArrivedNotice = () => {
  const shop = useShop();
  const isAll = useReplica()?.status.value.kind === 'up-to-date';
  const stages = liveStages(shop.registers).length;
  const trays = traysInWork(shop).live.length;
  return (
    <Notice
      tone={isAll ? 'saved' : 'info'}
      title={isAll ? words.arrived : words.arriving}
      testId="arrived"
      actions={
        <PressButton
          tone="quiet"
          closing
          label={words.understood}
          onAct={() => {
            justJoined.value = false;
          }}
          testId="arrived-good"
        />
      }
    >
      <p>{words.arrivedHelp(stages, trays)}</p>
    </Notice>
  );
};
