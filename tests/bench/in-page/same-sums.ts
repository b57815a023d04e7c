/** Whether the sums of a shop and flat counters come to the same: each by its name, such as `.visits.first/sand/ash`. */
import type { TrayId } from '../../../src/domain/log/ids.ts';
import type { Standing } from '../../../src/domain/shop/positions.ts';
import type { Shop } from '../../../src/domain/shop/shop.ts';
import type { FlatShop } from './flat-shop.ts';
import { countersIn, tablesIn } from './flat-table.ts';

type NamedSum = readonly [name: string, sum: number];

export function mustSayTheSame(shop: Shop, flat: FlatShop): void {
  const ofShop = new Map([...sumsOf(shop)].filter(([, sum]) => sum !== 0));
  const ofCounters = [...countsOf(flat)];
  const isSame = ofCounters.every(([name, sum]) => ofShop.get(name) === sum);
  if (!isSame || ofCounters.length !== ofShop.size) throw new Error('the counters come to other sums');
}

function* countsOf({ sums }: FlatShop): Generator<NamedSum> {
  for (const [fields, table] of tablesIn(sums))
    for (const [words, sum] of countersIn(table)) yield [[fields, ...words].join('/'), sum];
}

function* sumsOf({ seen: _seen, voids: _voids, registers: _registers, positions, allDays, ...others }: Shop) {
  for (const [tray, places] of [...positions.working, ...positions.settled])
    for (const standing of places.values()) yield* standingSums(tray, standing);
  yield* numbersIn(allDays, { fields: '.days', words: '/all' });
  yield* numbersIn(others, { fields: '', words: '' });
}

function* standingSums(tray: TrayId, { place, pieces, arrived }: Standing): Generator<NamedSum> {
  const stage = 'stage' in place ? place.stage : place.at;
  const grade = 'grade' in place ? place.grade : 'first';
  const redo = 'redo' in place ? place.redo : null;
  const row = 'ready' in place ? `${tray}/${place.ready}` : tray;
  const words = [row, stage, grade, redo].join('/');
  yield [`.positions.pieces/${words}`, pieces];
  yield [`.positions.arrived/${words}`, arrived];
}

function* numbersIn(value: unknown, name: { fields: string; words: string }): Generator<NamedSum> {
  if (typeof value === 'number') yield [`${name.fields}${name.words}`, value];
  else if (value instanceof Map)
    for (const [key, part] of value)
      yield* numbersIn(part, { ...name, words: `${name.words}/${String(key).replaceAll('|', '/')}` });
  else if (typeof value === 'object' && value !== null)
    for (const [field, part] of Object.entries(value))
      yield* numbersIn(part, { ...name, fields: `${name.fields}.${field}` });
}
