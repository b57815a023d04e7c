import { atStage, type Place } from '../log/place.ts';
import { meanArrival, placesOf, type Standing } from '../shop/positions.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import type { TrayRecord } from '../shop/trays.ts';
import { localTextIn } from './moment-text.ts';
import { type Cell, type Naming, type Table, tableOf } from './table.ts';

const columns = [
  'code',
  'variant',
  'species',
  'batch',
  'made-up',
  'where',
  'stage',
  'grade',
  'pieces',
  'since',
  'ready',
  'sent-back-by',
] as const;
export type TraysColumn = (typeof columns)[number];
type TrayRow = Record<TraysColumn, Cell>;

/** Every tray, a row for each place where it has pieces; moments by the clock of the shop's zone. */
export function traysTable(shop: Shop, nameOf: Naming): Table<TraysColumn> {
  const zone = factOf(shop.registers, { register: 'shop', id: 'shop' })?.zone ?? 'UTC';
  const time = (ms: number | null) => (ms === null ? null : localTextIn(ms, zone));

  const commonTo = ({ code, variant, species, batch, made }: TrayRecord) => ({
    code,
    variant: nameOf({ register: 'variant', id: variant }),
    species: nameOf({ register: 'species', id: species }),
    batch: nameOf({ register: 'batch', id: batch }),
    'made-up': made === 0 ? null : time(made),
  });
  const rowOf = (tray: TrayRecord, { place, ...standing }: Standing): TrayRow => ({
    ...commonTo(tray),
    where: place.at,
    stage: atStage(place) ? nameOf({ register: 'stage', id: place.stage }) : null,
    grade: 'grade' in place ? place.grade : null,
    pieces: standing.pieces,
    since: time(meanArrival({ place, ...standing })),
    ready: place.at === 'held' ? time(place.ready) : null,
    'sent-back-by':
      atStage(place) && place.redo !== null ? nameOf({ register: 'stage', id: place.redo }) : null,
  });
  const emptyRow = (tray: TrayRecord): TrayRow => ({
    ...commonTo(tray),
    where: null,
    stage: null,
    grade: null,
    pieces: 0,
    since: null,
    ready: null,
    'sent-back-by': null,
  });

  const rows = [...shop.trays.values()].sort(byCode).flatMap((tray) => {
    const standings = [...placesOf(shop.positions, tray.tray).values()].filter(({ pieces }) => pieces !== 0);
    return standings.length === 0
      ? [emptyRow(tray)]
      : standings.sort((a, b) => order(a.place) - order(b.place)).map((standing) => rowOf(tray, standing));
  });
  return tableOf(columns, rows);
}

function byCode(a: TrayRecord, b: TrayRecord): number {
  return a.code.localeCompare(b.code, 'en', { numeric: true });
}

function order({ at }: Place): number {
  return ['waiting', 'held', 'finished', 'scrapped'].indexOf(at);
}
