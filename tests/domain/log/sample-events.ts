import * as v from 'valibot';
import { labelSizes } from '../../../src/domain/label/label-sizes.ts';
import type { EventKind, ShopEvent } from '../../../src/domain/log/event.ts';
import { shopDayText } from '../../../src/domain/log/ids.ts';
import type { HoldFact } from '../../../src/domain/set-up/facts.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { aPhoto } from '../../support/a-photo.ts';
import { aWorkshop, backTo, lowered, mended, scrapped, type TestShop } from '../../support/a-shop.ts';
import {
  lot,
  machine,
  mark,
  part,
  person,
  reason,
  resource,
  route,
  routeStages,
  species,
  stage,
  variant,
} from '../../support/workshop.ts';

function setHold(shop: TestShop, change: Partial<HoldFact>): void {
  const fact = factOf(shop.shop.registers, { register: 'stage', id: stage.glue });
  if (fact?.kind !== 'hold') throw new Error('gluing is a hold');
  shop.set({ register: 'stage', id: stage.glue, value: { ...fact, ...change } });
}

function inShopOf(shop: TestShop, celsius: number): void {
  const fact = factOf(shop.shop.registers, { register: 'shop', id: 'shop' });
  if (!fact) throw new Error('the workshop has no shop');
  shop.set({ register: 'shop', id: 'shop', value: { ...fact, celsius } });
}

/** A log in which every kind of event, of outcome, of place and of set-up fact comes up. */
export function sampleLog(): readonly ShopEvent[] {
  const shop = aWorkshop();
  shop.set({ register: 'person', id: person.edda, value: { name: 'Edda', retired: false } });
  shop.set({
    register: 'person',
    id: person.odo,
    value: {
      name: 'Odo',
      retired: false,
      week: [{ from: 480, to: 1020, breakMinutes: 45 }, null, null, null, null, null, null],
      daysOff: [{ from: v.parse(shopDayText, '2026-12-24'), to: v.parse(shopDayText, '2027-01-01') }],
      hourCost: 3200,
    },
  });
  shop.set({ register: 'reason', id: reason.blown, value: { name: 'Blown blank', retired: false } });
  shop.set({
    register: 'part',
    id: part.core,
    value: {
      name: 'Core',
      sort: 'core',
      retired: false,
      cost: 4500,
      lowMark: 20,
      cleaned: true,
      fitDiameter: 1400,
    },
  });
  shop.set({
    register: 'mark',
    id: mark['new-gouge'],
    value: {
      note: 'Re-ground the gouge',
      stage: stage.turn,
      species: null,
      at: shop.clock(),
      answers: { of: { kind: 'reason', reason: reason['tear-out'] }, since: shop.clock() - 86_400_000 },
      retired: false,
    },
  });
  shop.set({
    register: 'mark',
    id: mark['new-belt'],
    value: {
      note: 'New belt',
      stage: stage.sand,
      species: species.ash,
      at: shop.clock(),
      answers: { of: { kind: 'scrap' }, since: 0 },
      retired: false,
    },
  });
  shop.set({
    register: 'station',
    id: shop.station,
    value: { letter: 'A', name: 'Lathe', keys: [{ act: 'pass', key: 'PageDown' }] },
  });
  for (const { id, fact } of labelSizes(shop.shop.registers))
    shop.set({ register: 'label-size', id, value: fact });
  shop.by('edda');
  shop.act({ kind: 'begin-spell', stage: stage.bore });
  shop.pace(40_000);
  const tray = shop.tray('ash-copper', 12);
  shop.pass(tray, 'bore', { pieces: 8 });
  shop.load(tray, 'glue', { pieces: 6 });
  shop.later(24 * 60);
  shop.pass(tray, 'glue', { pieces: 6, held: true });
  shop.flaw(tray, 'turn', { why: ['catch', 'tear-out'], outcome: mended });
  shop.flaw(tray, 'turn', { why: 'tear-out', outcome: lowered });
  shop.flaw(tray, 'turn', { why: 'gap', outcome: backTo('glue') });
  shop.flaw(tray, 'turn', { why: 'blown', outcome: scrapped(part.core) });
  shop.act({
    kind: 'receive-parts',
    parts: [{ part: part.core, pieces: 100, cost: 4500 }],
    note: 'in two boxes',
  });
  shop.act({ kind: 'count-parts', part: part.core, heap: 'shelf', counted: 87, why: 'lost', note: '' });
  shop.act({ kind: 'clean-parts', part: part.core, back: 1, lost: 1, shown: 2 });
  shop.act({ kind: 'sample-parts', part: part.core, lot: 100, limit: '2.5', bad: 3, note: 'bent' });
  shop.act({ kind: 'sample-parts', part: part.core, lot: 2, limit: '10', bad: 0, note: '' });
  shop.pass(tray, 'sand', { grade: 'second' });
  shop.pass(tray, 'grade', { grade: 'second' });
  shop.pass(tray, 'photo', { grade: 'second' });
  shop.act({ kind: 'end-spell', stage: stage.bore });
  shop.recount(tray, 'bore', { counted: 3, why: 'lost' });
  shop.set({
    register: 'lot',
    id: lot.shelf,
    value: { name: 'Ash, shelf', species: species.ash, retired: false },
  });
  shop.act({ kind: 'read-moisture', lot: lot.shelf, percent: 124, air: { celsius: -5, humidity: 455 } });
  shop.act({ kind: 'read-moisture', lot: lot.shelf, percent: 121, air: null });
  shop.set({
    register: 'machine',
    id: machine.lathe,
    value: {
      ...{ name: 'Lathe', stages: [stage.turn], retired: false },
      ...{ duty: { on: 30, off: 10 }, mostTurns: 3200 },
    },
  });
  shop.set({
    register: 'reason',
    id: reason.scratch,
    value: { name: 'Scratch', retired: false, passes: 'None across the grain' },
  });
  const ofAsh = factOf(shop.shop.registers, { register: 'variant', id: variant['ash-copper'] });
  const ofShop = factOf(shop.shop.registers, { register: 'shop', id: 'shop' });
  if (!ofAsh || !ofShop) throw new Error('the workshop has ash and a name');
  const box = { finish: 'Shellac under wax', care: 'Keep it dry', caution: '' };
  shop.set({ register: 'shop', id: 'shop', value: { ...ofShop, box } });
  shop.set({
    register: 'variant',
    id: variant['ash-copper'],
    value: { ...ofAsh, box: { printed: true, ...box, caution: 'A sharp edge' } },
  });
  const photo = aPhoto('a');
  shop.act({ kind: 'photograph-piece', tray, stage: stage.grade, reasons: [reason.scratch], photo });
  shop.act({ kind: 'photograph-piece', tray, stage: stage.photo, reasons: [], photo: aPhoto('b') });
  shop.act({
    kind: 'photograph',
    shows: { kind: 'variant', variant: variant['ash-copper'] },
    photo: aPhoto('c'),
  });
  shop.act({
    kind: 'photograph',
    shows: { kind: 'criterion', reason: reason.scratch, verdict: 'bad' },
    photo: aPhoto('d'),
  });
  shop.flaw(tray, 'turn', { why: 'scratch', outcome: lowered });
  shop.act({
    kind: 'raise',
    spot: { tray, stage: stage.sand, at: 'waiting', shown: 1 },
    pieces: 1,
    gone: [reason.scratch],
  });
  shop.act({ kind: 'let-photos-go', photos: [photo.hash] });
  shop.set({
    register: 'resource',
    id: resource.cramps,
    value: { name: 'Cramps', capacity: 24, retired: false },
  });
  shop.set({
    register: 'resource',
    id: resource.rack,
    value: { name: 'Rack', capacity: null, retired: false },
  });
  setHold(shop, {
    ...{ resource: resource.cramps, leastMinutes: 240, ratedAt: 200, quickerWarm: true },
    mix: {
      ...{ kind: 'adhesive', gramsEach: 150, resin: 10_000, hardener: 4500, by: 'volume', wastePercent: 15 },
      ...{ densities: { resin: 115, hardener: 98 }, potMinutes: 30, secondsEach: 40 },
    },
  });
  inShopOf(shop, 125);
  shop.load(tray, 'glue');
  shop.pass(tray, 'glue', { held: true });
  setHold(shop, {
    ...{ resource: null, ratedAt: null },
    mix: { kind: 'finish', mlEach: 120, wastePercent: 10, recoatFrom: 120, recoatUntil: null },
  });
  shop.act({
    kind: 'move-on-shelf',
    to: 'sold',
    lines: [
      { variant: variant['ash-copper'], grade: 'second', from: 'shelf', pieces: 1, shown: 1, price: 2450 },
    ],
  });
  const other = shop.split(tray, 'bore', { pieces: 2 });
  shop.join(other, tray);
  const slip = shop.pass(tray, 'bore');
  const undo = shop.undo(slip);
  shop.undo(undo);
  shop.act({
    kind: 'change-route',
    route: route.haft,
    name: 'Haft',
    stages: routeStages.filter((name) => name !== 'bore').map((name) => stage[name]),
    destinations: new Map([[stage.bore, stage.turn]]),
  });
  return shop.log;
}

/** One event of each kind, by kind. */
export function sampleOfKind(kind: EventKind): ShopEvent {
  const found = sampleLog().find((event) => event.kind === kind);
  if (!found) throw new Error(`the sample log has no ${kind}`);
  return found;
}
