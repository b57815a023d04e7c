import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/hybrid-logical-clock.json' with { type: 'json' };
import type { SetUpEvent } from '../../../src/domain/log/event.ts';
import { personId, shopDayText, stationId } from '../../../src/domain/log/ids.ts';
import { calledBy } from '../../../src/domain/set-up/register.ts';
import { factOf, factsOf, type Registers, setRegister } from '../../../src/domain/shop/registers.ts';
import { aWorkshop, meet, tablets } from '../../support/a-shop.ts';
import { person, species } from '../../support/workshop.ts';

type StampAt = readonly [wall: number, tick: number, station: string, seq?: number];

/** A person renamed by a station at a stamp. */
function renamed(name: string, [wall, tick, station, seq = 1]: StampAt): SetUpEvent {
  return {
    kind: 'set-up',
    station: v.parse(stationId, station),
    seq,
    stamp: { wall, tick },
    zone: { name: 'Europe/London', offset: 0 },
    day: v.parse(shopDayText, '2026-03-02'),
    person: null,
    set: { register: 'person', id: person.edda, value: { name, retired: false } },
  };
}

const nameAfter = (events: readonly SetUpEvent[]) => {
  const registers: Registers = new Map();
  for (const event of events) setRegister(registers, event);
  return factOf(registers, { register: 'person', id: person.edda })?.name;
};

describe('the latest word on a set-up fact stands', () => {
  const { inputs, expected } = cases['crdt-order-key'];
  const stampAt = (stamp: (typeof inputs.stamps)[number]): StampAt => [
    Number(stamp[0]),
    Number(stamp[1]),
    String(stamp[2]),
  ];

  test('by the published order of stamps: wall, then tick as a number, then station', () => {
    const words = expected.sorted.map((stamp) => renamed(stamp.join(' '), stampAt(stamp)));
    for (const [index, later] of words.entries()) {
      for (const earlier of words.slice(0, index)) {
        expect(nameAfter([earlier, later])).toBe(calledBy(later.set.value));
        expect(nameAfter([later, earlier])).toBe(calledBy(later.set.value));
      }
    }
    const arrived = inputs.stamps.map((stamp) => renamed(stamp.join(' '), stampAt(stamp)));
    expect(nameAfter(arrived)).toBe(expected.sorted.at(-1)?.join(' '));
  });

  test('of two words of one tap, the one said last', () => {
    const [first, second] = [renamed('Ed', [5, 0, 'a', 9]), renamed('Edda', [5, 0, 'a', 10])] as const;
    expect([nameAfter([first, second]), nameAfter([second, first])]).toEqual(['Edda', 'Edda']);
  });

  test('on both tablets, whichever of them heard the other first', () => {
    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    const rename = (tablet: typeof bench, name: string) =>
      tablet.set({ register: 'person', id: person.edda, value: { name, retired: false } });
    office.later(60);
    rename(office, 'Said later');
    rename(bench, 'Said earlier');
    meet(bench, office);
    for (const { shop } of [bench, office]) {
      expect(factOf(shop.registers, { register: 'person', id: person.edda })?.name).toBe('Said later');
    }
  });
});

describe('a set-up fact', () => {
  test('that nobody has set is not known', () => {
    const { registers } = aWorkshop().shop;
    expect(factOf(registers, { register: 'person', id: v.parse(personId, 'nobody') })).toBeUndefined();
    expect(factsOf(registers, 'person')).toEqual([]);
  });

  test('stands in the list of its kind by its name, numbers as numbers, retired ones among them', () => {
    const shop = aWorkshop();
    const names = ['Grit 1000', 'grit 80', 'Éclat', 'Grit 240', 'Zebrano'];
    for (const [index, name] of names.entries()) {
      const id = v.parse(personId, `p-${index}`);
      shop.set({ register: 'person', id, value: { name, retired: index === 2 } });
    }
    expect(factsOf(shop.shop.registers, 'person').map(({ fact }) => fact.name)).toEqual([
      'Éclat',
      'grit 80',
      'Grit 240',
      'Grit 1000',
      'Zebrano',
    ]);
  });

  test('of one kind is not mistaken for that of another with the same id', () => {
    const shop = aWorkshop();
    const id = v.parse(personId, species.ash);
    shop.set({ register: 'person', id, value: { name: 'Ash', retired: false } });
    expect(factOf(shop.shop.registers, { register: 'species', id: species.ash })).toMatchObject({
      grain: 'straight',
    });
    expect(factOf(shop.shop.registers, { register: 'person', id })).toEqual({ name: 'Ash', retired: false });
  });
});
