import { shotsAmong } from '../../domain/rollup/photos.ts';
import type { TrayRecord } from '../../domain/shop/trays.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { photoWords as words } from '../../words/photo-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { namedShots } from '../parts/photos/named-shots.ts';
import { PhotoStrip } from '../parts/photos/photo-strip.tsx';
import { TakePhoto } from '../parts/photos/take-photo.tsx';
import { useHistory } from '../parts/use-history.ts';
import { stageToShow } from './trays-view.ts';

/** The photos of a tray's pieces, with a way to take one of a piece as it should be. */
export const TrayPhotos = ({ tray }: { tray: TrayRecord }) => {
  const session = useSession();
  const shop = useShop();
  const shots = shotsAmong(useHistory(tray.tray), shop.voids);
  const stage = stageToShow(shop, tray);
  return (
    <Panel title={words.title} testId="tray-photos">
      <PhotoStrip
        photos={namedShots(shots, { registers: shop.registers, session })}
        testId="tray-photo-strip"
      />
      {stage && (
        <TakePhoto
          onKept={async (photo) => {
            await session.act({ kind: 'photograph-piece', tray: tray.tray, stage, reasons: [], photo });
          }}
          testId="tray-photo"
        />
      )}
    </Panel>
  );
};
