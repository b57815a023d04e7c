import { describe, expect, test } from 'vitest';
import type { VariantId } from '../../../src/domain/log/ids.ts';
import { aPhoto } from '../../support/a-photo.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { reason, stage, variant } from '../../support/workshop.ts';

const ofVariant = (id: VariantId) => ({ kind: 'variant', variant: id }) as const;

describe('a photo of a piece', () => {
  test('says tray, stage and flaw, and moves nothing', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 12);
    const before = structuredClone(shop.shop.positions);
    const [event] = shop.act({
      ...{ kind: 'photograph-piece', tray, stage: stage.turn, reasons: [reason['tear-out']] },
      photo: aPhoto('a'),
    });
    expect(event).toMatchObject({
      kind: 'piece-photographed',
      stage: 'turn',
      reasons: ['tear-out'],
      moves: [],
    });
    expect(event).toHaveProperty('of.tray', tray);
    expect(shop.shop.positions).toEqual(before);
  });

  test('shows its variant unless it shows a flaw; what is taken back shows nothing', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 12);
    const shots = (id: VariantId) => shop.shop.pictured.get(id) ?? 0;
    const photo = { kind: 'photograph-piece', tray, stage: stage.photo } as const;
    shop.act({ ...photo, reasons: [reason.scratch], photo: aPhoto('a') });
    expect(shots(variant['ash-copper'])).toBe(0);
    const taken = shop.act({ ...photo, reasons: [], photo: aPhoto('b') });
    shop.act({ kind: 'photograph', shows: ofVariant(variant['ash-copper']), photo: aPhoto('c') });
    expect(shots(variant['ash-copper'])).toBe(2);
    shop.undo(taken);
    expect(shots(variant['ash-copper'])).toBe(1);
    expect(shots(variant['plum-copper'])).toBe(0);
  });

  test('of a tray that nobody knows is refused', () => {
    const shop = aWorkshop();
    const there = aWorkshop().tray('ash-copper', 1);
    expect(
      shop.refusal({
        kind: 'photograph-piece',
        tray: there,
        stage: stage.turn,
        reasons: [],
        photo: aPhoto('a'),
      }),
    ).toEqual({ kind: 'no-such-tray' });
  });
});

test('a photo of what nobody has set up is refused', () => {
  const shop = aWorkshop();
  const nowhere = 'nowhere' as VariantId;
  expect(shop.refusal({ kind: 'photograph', shows: ofVariant(nowhere), photo: aPhoto('a') })).toEqual({
    kind: 'no-such-variant',
  });
  expect(
    shop.refusal({
      kind: 'photograph',
      shows: { kind: 'criterion', reason: 'nothing' as typeof reason.blown, verdict: 'good' },
      photo: aPhoto('a'),
    }),
  ).toEqual({ kind: 'no-reason' });
});

test('photos are let go in one act, each once', () => {
  const shop = aWorkshop();
  const [a, b] = [aPhoto('a').hash, aPhoto('b').hash];
  const events = shop.act({ kind: 'let-photos-go', photos: [a, b, a] });
  expect(events).toMatchObject([
    { kind: 'photo-let-go', photo: a },
    { kind: 'photo-let-go', photo: b },
  ]);
  expect(shop.refusal({ kind: 'let-photos-go', photos: [] })).toEqual({ kind: 'no-photo' });
});
