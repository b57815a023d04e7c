import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Command } from '../../../src/domain/command/command.ts';
import { readEvent } from '../../../src/domain/log/read-event.ts';
import { aShop, aWorkshop } from '../../support/a-shop.ts';
import { histories, play } from '../../support/histories.ts';
import { partFacts, stage } from '../../support/workshop.ts';

describe('judging a command', () => {
  test('touches nothing, whether it is refused or not, and judges the same again', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        play(steps, (tablet, command) => {
          const before = structuredClone(tablet.shop);
          const first = tablet.judge(command);
          expect(isDeepStrictEqual(tablet.shop, before)).toBe(true);
          if (first.kind === 'refused') expect(tablet.judge(command)).toEqual(first);
        });
      }),
      { numRuns: 100 },
    );
  });

  test('never throws, whatever number of pieces a screen hands over, and writes only what can be read again', () => {
    const numbers = fc.oneof(fc.double(), fc.integer(), fc.maxSafeInteger(), fc.constantFrom(0, -0, 1, 2.5));
    const kinds = fc.constantFrom(
      'pass',
      'load',
      'split',
      'recount',
      'make-trays',
      'flaw',
      'receive',
      'count',
      'clean',
      'sample',
    );
    const shop = aWorkshop();
    for (const set of partFacts) shop.set(set);
    const tray = shop.tray('ash-copper', 9);
    shop.pass(tray, 'bore', { pieces: 5 });
    fc.assert(
      fc.property(kinds, numbers, fc.nat(20_000), (kind, pieces, shown) => {
        const spot = shop.spot(tray, 'glue', { shown });
        const command = {
          pass: { kind: 'pass', spot, pieces },
          load: { kind: 'load', spot, pieces },
          split: { kind: 'split', spot, pieces },
          flaw: { kind: 'flaw', spot, pieces, reasons: ['gap'], outcome: { kind: 'second' } },
          recount: { kind: 'recount', spot, counted: pieces, why: 'found', note: '' },
          receive: { kind: 'receive-parts', parts: [{ part: 'core', pieces, cost: pieces }], note: '' },
          count: {
            kind: 'count-parts',
            part: 'core',
            heap: 'shelf',
            counted: pieces,
            why: 'found',
            note: '',
          },
          clean: { kind: 'clean-parts', part: 'core', back: pieces, lost: pieces, shown },
          sample: { kind: 'sample-parts', part: 'core', lot: shown, limit: '4', bad: pieces, note: '' },
          'make-trays': { kind: 'make-trays', variant: 'ash-copper', batch: 'spring', pieces, trays: pieces },
        }[kind] as unknown as Command;
        const decision = shop.judge(command);
        if (decision.kind === 'refused') return;
        for (const draft of decision.drafts) {
          const event = { ...draft, station: shop.station, seq: 1, stamp: { wall: 1, tick: 0 } };
          expect(readEvent(JSON.parse(JSON.stringify(event)))).toMatchObject({ kind: 'known' });
        }
      }),
      { numRuns: 2000 },
    );
  });
});

describe('a spell', () => {
  test('begins and ends at its stage; only its end has a time', () => {
    const shop = aShop();
    shop.pace(30_000);
    shop.act({ kind: 'begin-spell', stage: stage.turn });
    shop.act({ kind: 'end-spell', stage: stage.turn });
    expect(shop.log).toMatchObject([
      { kind: 'spell-begun', stage: 'turn' },
      { kind: 'spell-ended', stage: 'turn', elapsed: 30_000 },
    ]);
    expect(shop.log[0]).not.toHaveProperty('elapsed');
  });
});
