import type { StageId, TrayId } from '../../../domain/log/ids.ts';
import { useShop } from '../app-context.ts';
import { RaiseButton } from './raise-button.tsx';
import { secondsOfTray } from './raise-view.ts';

/** The way from a second in the hand to a first, on the stage screen. */
export const RaiseAtBench = ({ tray, stage }: { readonly tray: TrayId; readonly stage: StageId }) => {
  const shop = useShop();
  const code = shop.trays.get(tray)?.code ?? '';
  return (
    <div class="stage-raise">
      <RaiseButton
        what={code}
        seconds={secondsOfTray(shop, tray, stage)}
        size="bench-small"
        testId="bench-raise"
      />
    </div>
  );
};
