import { readId, type ShopDay, shopDayText } from '../log/ids.ts';

/** A day of the calendar as it is typed; null for none, undefined for what is neither. */
export function readDay(typed: string): ShopDay | null | undefined {
  const text = typed.trim();
  if (text === '') return null;
  const day = readId(shopDayText, text);
  if (day === null) return undefined;
  const time = Date.parse(`${day}T00:00:00Z`);
  // A day such as 30 February is read as one in March; it is then not the day that was typed.
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(day) ? day : undefined;
}
