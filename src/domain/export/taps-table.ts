import { eventKinds, type ShopEvent } from '../log/event.ts';
import type { PartId } from '../log/ids.ts';
import { atStage, type Move } from '../log/place.ts';
import type { LogEvent } from '../log/read-event.ts';
import { compareStamps } from '../log/stamp.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { isVoided } from '../shop/voids.ts';
import { localText, utcText } from './moment-text.ts';
import { type Cell, type Naming, type Table, tableOf } from './table.ts';

const columns = [
  'station',
  'tablet',
  'number',
  'moment',
  'local-time',
  'utc-offset',
  'zone',
  'day',
  'person',
  'kind',
  'code',
  'into',
  'variant',
  'species',
  'batch',
  'stage',
  'pieces',
  'again',
  'grade',
  'reasons',
  'outcome',
  'back-to',
  'saved-parts',
  'elapsed',
  'why',
  'note',
  'parts',
  'heap',
  'lost-parts',
  'moisture',
  'taken-back',
  'takes-back',
  'clock-doubtful',
  'said',
] as const;
export type TapsColumn = (typeof columns)[number];
type TapRow = Record<TapsColumn, Cell>;

export interface TapsAround {
  readonly shop: Shop;
  readonly nameOf: Naming;
  /** An event in one sentence. */
  readonly say: (event: ShopEvent) => string;
}

/**
 * Every event of a log, a row each, in the order of their stamps; those of a newer version, of which little can be
 * told, come last. What takes another event back carries no pieces of its own: the one that it names says in its row
 * that it was taken back, so the pieces of the rows that were not add up to the shop.
 */
export function tapsTable(events: readonly LogEvent[], around: TapsAround): Table<TapsColumn> {
  const known = events.filter(isKnown);
  const newer = events.filter((event) => !isKnown(event));
  known.sort(
    (a, b) => compareStamps(a.stamp, b.stamp) || a.station.localeCompare(b.station, 'en') || a.seq - b.seq,
  );
  return tableOf(columns, [
    ...known.map((event) => ({ ...envelopeOf(event, around), ...detailsOf(event, around.nameOf) })),
    ...newer.map(({ station, seq, kind }) => ({ ...nothing, station, number: seq, kind })),
  ]);
}

const kinds: ReadonlySet<string> = new Set(eventKinds);

function isKnown(event: LogEvent): event is ShopEvent {
  return kinds.has(event.kind) && 'stamp' in event;
}

function envelopeOf(event: ShopEvent, { shop, nameOf, say }: TapsAround): TapRow {
  const { station, seq, stamp, zone, day, person } = event;
  return {
    ...nothing,
    station,
    tablet: factOf(shop.registers, { register: 'station', id: station })?.letter ?? null,
    number: seq,
    moment: utcText(stamp.wall),
    'local-time': localText(stamp.wall, zone),
    'utc-offset': zone.offset,
    zone: zone.name,
    day,
    person: person === null ? null : nameOf({ register: 'person', id: person }),
    kind: event.kind === 'voided' && event.event.kind === 'voided' ? 'put-back' : event.kind,
    'taken-back': isVoided(shop.voids, event) ? 'yes' : 'no',
    'clock-doubtful': event.clock === 'doubtful' ? 'yes' : 'no',
    said: say(event),
  };
}

/** What the kind of an event adds to its row. */
function detailsOf(event: ShopEvent, nameOf: Naming): Partial<TapRow> {
  switch (event.kind) {
    case 'tray-made':
    case 'rerouted':
      return { ...trayOf(event, nameOf), pieces: sum(event.moves) };
    case 'tray-split':
    case 'tray-joined':
      return {
        ...trayOf(event, nameOf),
        into: event.into.code,
        pieces: sum(event.moves.filter(({ from }) => from === null)),
      };
    case 'hold-begun':
      return {
        ...trayOf(event, nameOf),
        stage: nameOf({ register: 'stage', id: event.stage }),
        pieces: sum(event.moves),
        grade: gradeOf(event.moves),
        elapsed: event.elapsed,
      };
    case 'passed':
      return { ...visitOf(event, nameOf), grade: gradeOf(event.moves) };
    case 'flawed':
      return { ...visitOf(event, nameOf), grade: event.grade, ...flawOf(event, nameOf) };
    case 'recounted':
      return {
        ...trayOf(event, nameOf),
        stage: stageOf(event.moves, nameOf),
        grade: gradeOf(event.moves),
        pieces: event.moves.reduce((all, { from, pieces }) => all + (from === null ? pieces : -pieces), 0),
        why: event.why,
        note: event.note,
      };
    case 'parts-received':
      return { parts: event.parts.map((line) => countedPart(line, nameOf)).join('; '), note: event.note };
    case 'parts-counted':
      return {
        parts: countedPart(event, nameOf),
        heap: event.heap,
        why: event.why,
        note: event.note,
      };
    case 'parts-cleaned':
      return {
        parts: countedPart({ part: event.part, pieces: event.back }, nameOf),
        'lost-parts': event.lost,
      };
    case 'parts-sampled':
      return {
        parts: countedPart({ part: event.part, pieces: event.lot }, nameOf),
        outcome: event.verdict,
        note: event.note,
      };
    case 'moisture-read':
      return {
        species: nameOf({ register: 'species', id: event.species }),
        parts: nameOf({ register: 'lot', id: event.lot }),
        moisture: event.percent / 10,
      };
    case 'piece-photographed':
      return {
        ...trayOf(event, nameOf),
        stage: nameOf({ register: 'stage', id: event.stage }),
        reasons: event.reasons.map((id) => nameOf({ register: 'reason', id })).join('; '),
        note: event.photo.hash,
      };
    case 'raised':
      return {
        ...trayOf(event, nameOf),
        stage: stageOf(event.moves, nameOf),
        pieces: event.pieces,
        grade: 'first',
        reasons: event.reasons.map((id) => nameOf({ register: 'reason', id })).join('; '),
      };
    case 'photo-taken':
      return {
        ...(event.shows.kind === 'variant'
          ? { variant: nameOf({ register: 'variant', id: event.shows.variant }) }
          : { reasons: nameOf({ register: 'reason', id: event.shows.reason }) }),
        note: event.photo.hash,
      };
    case 'shelf-moved':
      return {
        variant: nameOf({ register: 'variant', id: event.variant }),
        species: nameOf({ register: 'species', id: event.species }),
        grade: event.grade,
        pieces: event.pieces,
        note: `${event.from} > ${event.to}`,
      };
    case 'photo-let-go':
      return { note: event.photo };
    case 'spell-begun':
      return { stage: nameOf({ register: 'stage', id: event.stage }) };
    case 'spell-ended':
      return { stage: nameOf({ register: 'stage', id: event.stage }), elapsed: event.elapsed };
    case 'voided':
      return { 'takes-back': `${event.event.station} ${event.event.seq}` };
    case 'set-up':
      return {};
  }
}

function trayOf({ of }: Extract<ShopEvent, { of: unknown }>, nameOf: Naming): Partial<TapRow> {
  return {
    code: of.code,
    variant: nameOf({ register: 'variant', id: of.variant }),
    species: nameOf({ register: 'species', id: of.species }),
    batch: nameOf({ register: 'batch', id: of.batch }),
  };
}

function visitOf(event: Extract<ShopEvent, { kind: 'passed' | 'flawed' }>, nameOf: Naming): Partial<TapRow> {
  return {
    ...trayOf(event, nameOf),
    stage: nameOf({ register: 'stage', id: event.stage }),
    pieces: event.pieces,
    again: event.again,
    elapsed: event.elapsed,
  };
}

/** "Awl core 120": what is counted in the stores is no piece of work, so it stands in no column of pieces. */
function countedPart({ part, pieces }: { part: PartId; pieces: number }, nameOf: Naming): string {
  return `${nameOf({ register: 'part', id: part })} ${pieces}`;
}

function flawOf(event: Extract<ShopEvent, { kind: 'flawed' }>, nameOf: Naming): Partial<TapRow> {
  const { outcome, reasons } = event;
  return {
    reasons: reasons.map((id) => nameOf({ register: 'reason', id })).join('; '),
    outcome: outcome.kind,
    'back-to': outcome.kind === 'sent-back' ? nameOf({ register: 'stage', id: outcome.to }) : null,
    'saved-parts':
      outcome.kind === 'scrapped'
        ? outcome.saved.map((id) => nameOf({ register: 'part', id })).join('; ')
        : null,
  };
}

function sum(moves: readonly Move[]): number {
  return moves.reduce((all, { pieces }) => all + pieces, 0);
}

function placeOf(moves: readonly Move[]) {
  return moves.map(({ from, to }) => from ?? to).find((place) => place !== null && atStage(place));
}

function gradeOf(moves: readonly Move[]): Cell {
  const place = placeOf(moves);
  return place && 'grade' in place ? place.grade : null;
}

function stageOf(moves: readonly Move[], nameOf: Naming): Cell {
  const place = placeOf(moves);
  return place && atStage(place) ? nameOf({ register: 'stage', id: place.stage }) : null;
}

const nothing = Object.fromEntries(columns.map((column) => [column, null])) as TapRow;
