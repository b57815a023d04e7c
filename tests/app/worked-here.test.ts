import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { type RecentAct, withEvents } from '../../src/app/acts.ts';
import { workedHere } from '../../src/app/worked-here.ts';
import { aWorkshop } from '../support/a-shop.ts';
import { stage } from '../support/workshop.ts';

const minute = 60_000;

test('each tap is a stretch back to the tap before it; a break is none, and a tap taken back stays', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 9);
  const acts = signal<readonly RecentAct[]>(withEvents([], shop.log));
  const worked = workedHere({ acts });
  shop.pace(3 * minute);
  const began = shop.clock();
  shop.pass(tray, 'bore');
  shop.pace(null);
  shop.pass(tray, 'bore');
  shop.pace(16 * minute);
  const slip = shop.pass(tray, 'bore');
  shop.undo(slip);
  acts.value = withEvents([], shop.log);
  const first = { stage: stage.bore, from: began - 3 * minute, to: began };
  expect(worked.value).toEqual([first]);
  shop.pace(minute);
  const then = shop.clock();
  shop.load(tray, 'glue', { pieces: 1 });
  // Only the newest acts are at hand; what was seen stays.
  acts.value = withEvents([], shop.log).slice(-1);
  expect(worked.value).toEqual([first, { stage: stage.glue, from: then - minute, to: then }]);
});

test('one session is watched once', () => {
  const session = { acts: signal<readonly RecentAct[]>([]) };
  expect(workedHere(session)).toBe(workedHere(session));
});
