import { useSignalEffect } from '@preact/signals';
import { useState } from 'preact/hooks';
import { flawShotsAt, type PieceShot } from '../../domain/rollup/photos.ts';
import type { HeatCell } from '../../domain/study/flaw-heat.ts';
import { photoWords as words } from '../../words/photo-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { namedShots } from '../parts/photos/named-shots.ts';
import { PhotoStrip } from '../parts/photos/photo-strip.tsx';

/** The photos of what went wrong in a wood at a stage, the newest first. */
export const FlawPhotos = ({ cell: { stage, trays } }: { cell: HeatCell }) => {
  const session = useSession();
  const { registers } = useShop();
  const [shots, setShots] = useState<readonly PieceShot[]>();
  useSignalEffect(() => {
    let current = true;
    const { voids } = session.view.value.shop;
    const reading = trays.map(async ({ tray }) =>
      flawShotsAt(await session.historyOf(tray), { stage, voids }),
    );
    Promise.all(reading).then(
      (all) => current && setShots(all.flat().sort((a, b) => b.stamp.wall - a.stamp.wall)),
      () => undefined,
    );
    return () => {
      current = false;
    };
  });
  if (!shots || shots.length === 0) return null;
  return (
    <section class="photo-section" aria-label={words.behind}>
      <h3>{words.behind}</h3>
      <PhotoStrip photos={namedShots(shots, { registers, session })} testId="flaw-photos" />
    </section>
  );
};
