import type { ShopDay } from '../../log/ids.ts';
import { atStage } from '../../log/place.ts';
import { dayAfter } from '../../log/zone.ts';
import { liveStages } from '../../route/live-stages.ts';
import { factOf, factsOf } from '../../shop/registers.ts';
import type { Shop } from '../../shop/shop.ts';
import { shiftOn, workingMinutes } from '../working-hours.ts';
import type { DayOfHours, HistoryAsked } from './forecast-history.ts';

/** So many days back the pace is learnt from. */
const daysBack = 60;
/** Pieces of a tray while nobody has made up any. */
const usualTray = 12;

/** What the log is to be asked about a shop, with the hours as they are said now. */
export function historyAsked(
  shop: Shop,
  { today, zone }: { readonly today: ShopDay; readonly zone: string },
): HistoryAsked {
  const people = factsOf(shop.registers, 'person').flatMap(({ fact }) =>
    fact.retired || fact.week === undefined ? [] : [fact],
  );
  const bench = liveStages(shop.registers).filter(
    (id) => factOf(shop.registers, { register: 'stage', id })?.kind !== 'hold',
  );
  const days = Array.from({ length: daysBack }, (_, at) => dayAfter(today, at - daysBack));
  return {
    days: days.flatMap((day): DayOfHours[] => {
      const shifts = people.map((person) => shiftOn(person, day, zone)).filter((shift) => shift != null);
      if (shifts.length === 0) return [];
      const minutes = people.reduce((sum, person) => sum + (workingMinutes(person, day, zone) ?? 0), 0);
      const from = Math.min(...shifts.map((shift) => shift.from));
      return [{ day, from, to: Math.max(...shifts.map(({ to }) => to)), minutes }];
    }),
    bench,
    ...trayPieces(shop, new Set<string>(bench)),
    people: Math.max(1, people.length),
  };
}

/** Pieces that wait at stages of hands, and those of a usual tray. */
function trayPieces(
  { positions: { working } }: Shop,
  bench: ReadonlySet<string>,
): Pick<HistoryAsked, 'waiting' | 'each'> {
  let waiting = 0;
  let all = 0;
  for (const places of working.values())
    for (const { place, pieces } of places.values()) {
      all += Math.max(0, pieces);
      if (atStage(place) && place.at === 'waiting' && bench.has(place.stage)) waiting += Math.max(0, pieces);
    }
  const each = working.size === 0 ? usualTray : Math.max(1, Math.round(all / working.size));
  return { waiting, each };
}
