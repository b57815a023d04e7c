import { celsiusBounds, humidityBounds, moistureBounds } from '../log/moisture-facts.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import type { CommandOf } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';
import { judgeWholeNumber } from './whole-number.ts';

/** Takes down what a meter showed of a lot of blanks. */
export function decideMoisture(
  { registers }: Shop,
  { lot, percent, air }: CommandOf<'read-moisture'>,
  at: Circumstances,
): Decision {
  const fact = factOf(registers, { register: 'lot', id: lot });
  if (!fact) return refuse({ kind: 'no-lot' });
  const numbers = [
    judgeWholeNumber(percent, moistureBounds),
    ...(air
      ? [judgeWholeNumber(air.celsius, celsiusBounds), judgeWholeNumber(air.humidity, humidityBounds)]
      : []),
  ];
  for (const number of numbers) if (!number.ok) return refuse({ kind: 'number', problem: number.problem });
  return happens([
    {
      ...envelopeAt(at),
      ...{ kind: 'moisture-read', lot, species: fact.species, percent },
      ...(air && { air: { celsius: air.celsius, humidity: air.humidity } }),
    },
  ]);
}
