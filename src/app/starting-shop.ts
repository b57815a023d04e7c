import starting from '../../shared/starting-shop.json';
import { type RegisterSet, readRegisterSets } from '../domain/set-up/register.ts';
import { namesOfData } from '../words/data-words.ts';
import type { Session } from './session.ts';
import { nameStation } from './station-letter.ts';

/** The facts that a new shop begins with: reasons, stages, a route for turned handles and a first batch. */
export function startingFacts(zone: string): readonly RegisterSet[] {
  const said = starting.facts.map(({ value, ...fact }) => ({
    ...fact,
    value: {
      ...value,
      name: namesOfData.starting(value.name),
      ...(value.caution ? { caution: namesOfData.starting(value.caution) } : {}),
    },
  }));
  return readRegisterSets(said).map((set) =>
    set.register === 'shop' ? { ...set, value: { ...set.value, zone } } : set,
  );
}

/** Sets up a new shop, fact by fact. */
export async function startShop(
  session: Session,
  { zone, stationName }: { zone: string; stationName: (letter: string) => string },
): Promise<void> {
  for (const set of startingFacts(zone)) await session.act({ kind: 'set', set });
  await nameStation(session, { name: stationName, before: null });
}
