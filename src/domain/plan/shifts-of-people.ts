import type { ShopDay } from '../log/ids.ts';
import { dayAfter } from '../log/zone.ts';
import type { Shift } from './rounds/shifts.ts';
import { type Hours, shiftOn } from './working-hours.ts';

/**
 * When somebody is in the shop, from a shop day on for so many days: the shifts of all, joined where they meet. Breaks are in
 * them, since nobody says when they are. undefined where nobody's hours are said.
 *
 * @throws {RangeError} see `shiftOn`
 */
export function shiftsOfPeople(
  people: readonly Hours[],
  { from, days, zone }: { readonly from: ShopDay; readonly days: number; readonly zone: string },
): readonly Shift[] | undefined {
  if (people.every(({ week }) => week === undefined)) return undefined;
  const all = Array.from({ length: days }, (_, ahead) => dayAfter(from, ahead)).flatMap((day) =>
    people.map((person) => shiftOn(person, day, zone)).filter((shift) => shift != null),
  );
  const joined: { from: number; to: number }[] = [];
  for (const shift of all.sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last && shift.from <= last.to) last.to = Math.max(last.to, shift.to);
    else joined.push({ from: shift.from, to: shift.to });
  }
  return joined;
}
