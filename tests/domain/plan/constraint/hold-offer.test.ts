import { expect, test } from 'vitest';
import type { ResourceId, StageId } from '../../../../src/domain/log/ids.ts';
import { holdOffer } from '../../../../src/domain/plan/constraint/hold-offer.ts';

const hour = 3_600_000;
const [glue, seal] = ['glue' as StageId, 'seal' as StageId];
const key = `resource/${'rack' as ResourceId}` as const;
const shift = { from: 0, to: 12 * hour };
const working = { now: 0, until: 12 * hour, shifts: [shift] };
const untimed = () => undefined;

test('places are shared by the time that a round of each stage takes on average', () => {
  // By hand: in 12 h ten places have 7200 place minutes; 3 h cures fit four times (40 pieces), 5 h ones twice (20).
  const offer = holdOffer(
    {
      key,
      capacity: 10,
      stages: [
        { stage: glue, cure: 3 * hour },
        { stage: seal, cure: 5 * hour },
      ],
    },
    working,
    untimed,
  );
  expect(offer).toEqual({
    key,
    capacity: 10,
    available: 7200,
    stages: [
      { stage: glue, fits: 40, takes: 180 },
      { stage: seal, fits: 20, takes: 360 },
    ],
  });
});

test('a stage without a round in it needs more than there is, and without any round there is nothing', () => {
  const stages = [
    { stage: glue, cure: 3 * hour },
    { stage: seal, cure: 30 * hour },
  ];
  const offer = holdOffer({ key, capacity: 10, stages }, working, untimed);
  expect(offer.stages[1]).toEqual({ stage: seal, fits: 0, takes: 7200 + 1800 });
  expect(holdOffer({ key, capacity: 10, stages }, { ...working, shifts: [] }, untimed)).toMatchObject({
    available: 0,
    stages: [{ takes: 180 }, { takes: 1800 }],
  });
});

test('loading counts as time of the places too', () => {
  // Ten at six minutes are an hour: 1 + 3 h a round, three in 12 h.
  const offer = holdOffer({ key, capacity: 10, stages: [{ stage: glue, cure: 3 * hour }] }, working, () => 6);
  expect(offer.stages).toEqual([{ stage: glue, fits: 30, takes: 240 }]);
});
