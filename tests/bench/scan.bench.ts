/** How many labels the decoder reads of pictures as a workshop gives them, and how long one takes. */
import type { Bench } from './harness/bench.ts';
import type { Measured } from './harness/row.ts';
import { quantile } from './harness/row.ts';

interface WasScanned {
  readonly missed: number;
  readonly wrong: number;
  readonly took: readonly number[];
}

const seed = 20260301;
const frames = 210;
const small = { width: 640, height: 480 };
/** What the app asks the camera for. */
const large = { width: 1280, height: 720 };

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const found = await bench.inPage({ profile: bench.newProfile(), module: 'scan' }, async ({ call }) => {
    const scan = (
      look: 'clean' | 'spoilt' | 'dusty' | 'bare',
      size: typeof small,
      count: number,
      draw = seed,
    ) => call<WasScanned>('scan', { frames: count, seed: draw, look, size });
    // The first picture also fetches and compiles the decoder.
    await scan('clean', small, 1);
    const spoilt: WasScanned[] = [];
    for (let round = 0; round < bench.rounds; round += 1)
      spoilt.push(await scan('spoilt', small, frames, seed + round));
    return {
      spoilt,
      dusty: await scan('dusty', small, frames),
      clean: await scan('clean', small, frames),
      shown: await scan('spoilt', large, 40),
      bare: await scan('bare', large, 40),
    };
  });
  return [
    {
      id: 'scan-missed',
      work: `labels not read of ${frames} turned, at three sizes, blurred, noisy, with up to 10 flecks of dust; clean: the same decoder, flat black on white`,
      unit: 'labels',
      figures: { ours: found.spoilt.map(({ missed }) => missed), clean: [found.clean.missed] },
      bars: [{ kind: 'at-most-more', more: 26, than: 'clean' }],
    },
    {
      id: 'scan-dusty',
      work: `the same under up to 30 flecks, many of them wider than a module: what a thumb would wipe`,
      unit: 'labels',
      figures: { ours: [found.dusty.missed] },
      bars: [],
    },
    {
      id: 'scan-wrong',
      work: 'of the same, pictures in which a text was read that is not on the label',
      unit: 'labels',
      figures: { ours: [...found.spoilt, found.dusty].map(({ wrong }) => wrong) },
      bars: [{ kind: 'at-most', value: 0 }],
    },
    {
      id: 'scan-frame',
      work: 'a picture of 1280 × 720 with a label, from the picture to its text, in the worker',
      unit: 'ms',
      figures: { ours: found.shown.took },
      bars: [],
    },
    {
      id: 'scan-bare',
      work: 'the same without a label, which is looked at to the end; slowest of twenty',
      unit: 'ms',
      figures: { ours: [quantile(found.bare.took, 0.95)] },
      bars: [],
    },
  ];
}
