/**
 * The same tap as in tap-screen, on a tray of which a thousand photos are kept beside the log: pictures of 200 kB each in
 * their own database, and an entry of each in the history of the tray. Beside it, the same shop without a photo.
 */
import type { Bench } from './harness/bench.ts';
import { type Measured, median, quantile } from './harness/row.ts';
import { shopProfile } from './harness/shop-profiles.ts';
import { openStage, tapOn } from './harness/tapping.ts';

const photos = 1000;

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const { profile: begun, stage } = await shopProfile(bench, 0);
  const [without, withPhotos] = [bench.copyOf(begun), bench.copyOf(begun)];
  const open = (profile: string) =>
    bench.inBrowser(profile, async (context) => tapOn(await openStage(context, `${bench.appUrl()}${stage}`)));
  // The first tap of the shop tells which tray the photos are of.
  for (const profile of [without, withPhotos]) await open(profile);
  const kept = await bench.inPage({ profile: withPhotos, module: 'fill-photos' }, ({ call }) =>
    call<number>('fillPhotos', { photos, now: Date.now() }),
  );
  if (kept !== photos) throw new Error(`${kept} photos were kept`);
  const figures = { ours: [] as number[], limit: [] as number[], 'no photos': [] as number[] };
  for (let round = 0; round < bench.rounds; round += 1) {
    const ours = async () => {
      const { taps, raw } = await open(withPhotos);
      figures.ours.push(quantile(taps, 0.95));
      figures.limit.push(median(raw));
    };
    const others = async () => {
      const { taps } = await open(without);
      figures['no photos'].push(quantile(taps, 0.95));
    };
    for (const turn of round % 2 ? [ours, others] : [others, ours]) await turn();
  }
  return [
    {
      id: 'tap-photos-1000',
      work: 'pointer up on pass to the saved mark on screen, CPU 4 × slower, 95th percentile; 1,000 photos of 200 kB kept of the tray',
      unit: 'ms',
      figures,
      bars: [{ kind: 'at-most-times', times: 1.1, of: 'no photos' }],
    },
  ];
}
