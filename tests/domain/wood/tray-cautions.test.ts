import { describe, expect, test } from 'vitest';
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import type { Reaction, StageDoing } from '../../../src/domain/set-up/facts.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { standingReaction } from '../../../src/domain/wood/reactions.ts';
import { dustStages, trayCautions } from '../../../src/domain/wood/tray-cautions.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { batch, type StageName, species, stage } from '../../support/workshop.ts';

const rash: Reaction = { day: '2026-02-01' as ShopDay, note: 'Rash', withdrawn: null };

/** The workshop with what each of these stages does. */
function aShopWhere(doings: Partial<Record<StageName, readonly StageDoing[]>>) {
  const shop = aWorkshop();
  for (const [name, does] of Object.entries(doings)) {
    const id = stage[name as StageName];
    const fact = factOf(shop.shop.registers, { register: 'stage', id });
    if (!fact) throw new Error(`no stage ${name}`);
    shop.set({ register: 'stage', id, value: { ...fact, does: [...does] } });
  }
  return shop;
}

type Workshop = ReturnType<typeof aWorkshop>;
const at = ({ shop }: Workshop, name: StageName) =>
  trayCautions(shop.registers, { stage: stage[name], species: species.ash, batch: batch.spring });

function react(shop: Workshop, reactions: readonly Reaction[]): void {
  const ash = factOf(shop.shop.registers, { register: 'species', id: species.ash });
  if (!ash) throw new Error('no ash');
  shop.set({ register: 'species', id: species.ash, value: { ...ash, reactions: [...reactions] } });
}

describe('what to beware of with a tray', () => {
  test('its wood, where dust is made; and at every bench as long as nobody has said', () => {
    const shop = aShopWhere({ turn: ['dust', 'turns'], sand: ['turns'] });
    expect(at(shop, 'turn').wood?.name).toBe('ash');
    expect(at(shop, 'sand').wood).toBeNull();
    expect(at(shop, 'bore').wood?.name).toBe('ash');
    expect(at(shop, 'glue').wood).toBeNull();
    expect(at(shop, 'photo').wood).toBeNull();
  });

  test('a flat that was cut before, where the piece turns', () => {
    const shop = aShopWhere({ turn: ['flat'], sand: ['turns'], bore: ['turns'], grade: ['fumes'] });
    expect(at(shop, 'sand').flat).toBe(true);
    expect(at(shop, 'bore').flat).toBe(false);
    expect(at(shop, 'grade').flat).toBe(false);
  });

  test('fumes, where there are some', () => {
    const shop = aShopWhere({ sand: ['fumes'], turn: [] });
    expect(at(shop, 'sand')).toMatchObject({ fumes: true, wood: null });
    expect(at(shop, 'turn')).toMatchObject({ fumes: false, wood: null });
  });

  test('what the wood did to the maker, at every bench, until it is withdrawn', () => {
    const shop = aShopWhere({ sand: [] });
    react(shop, [rash, { ...rash, note: 'Cough' }]);
    expect(at(shop, 'sand').reaction?.note).toBe('Cough');
    expect(at(shop, 'photo').reaction).toBeNull();
    react(shop, [rash, { ...rash, note: 'Cough', withdrawn: '2026-02-03' as ShopDay }]);
    expect(at(shop, 'sand').reaction?.note).toBe('Rash');
    react(shop, [{ ...rash, withdrawn: '2026-02-03' as ShopDay }]);
    expect(at(shop, 'sand').reaction).toBeNull();
  });
});

test('a wood without a word on reactions has none', () => {
  expect(standingReaction({})).toBeNull();
});

test('the stages that make dust are those of which it was said; nothing said is not none', () => {
  expect(dustStages(aWorkshop().shop.registers)).toBeNull();
  expect(dustStages(aShopWhere({ turn: ['fumes'] }).shop.registers)).toEqual([]);
  const said = dustStages(aShopWhere({ turn: ['dust'], bore: ['turns', 'dust'], sand: [] }).shop.registers);
  expect(said?.toSorted()).toEqual([stage.bore, stage.turn]);
});
