import { describe, expect, test } from 'vitest';
import type { SpeciesId, StageId } from '../../../../src/domain/log/ids.ts';
import { goodByStarts } from '../../../../src/domain/plan/starts/good-by-starts.ts';
import {
  type StageBelief,
  stageBeliefs,
  type WoodTrials,
} from '../../../../src/domain/plan/starts/stage-beliefs.ts';

const route = ['turn', 'sand', 'seal', 'wax'] as StageId[];
const [ash, oak, yew] = ['ash', 'oak', 'yew'] as SpeciesId[] as [SpeciesId, SpeciesId, SpeciesId];

/** A wood's pieces tried and lost at each stage of the route; the same for firsts, of which `lowered` more are lost. */
const wood = (
  group: SpeciesId,
  steps: readonly (readonly [atRisk: number, lost: number])[],
  lowered = 0,
): WoodTrials => ({
  group,
  stages: steps.map(([atRisk, lost], at) => ({
    stage: route[at] as StageId,
    finished: { atRisk, lost },
    firsts: { atRisk, lost: lost + lowered },
    firstPass: { of: atRisk, out: atRisk - lost },
    repeats: 0,
  })),
});

const mean = ({ alpha, beta }: StageBelief) => alpha / (alpha + beta);
const yieldOf = (beliefs: readonly StageBelief[]) =>
  beliefs.reduce((product, each) => product * mean(each), 1);

describe('without a history', () => {
  for (const stages of [1, 4, 12, 60]) {
    test(`the survival of a route of ${stages} is one half, and said to be the prior`, () => {
      const names = Array.from({ length: stages }, (_, at) => `stage-${at}` as StageId);
      const beliefs = stageBeliefs([], { route: names, goal: 'firsts' })(ash);
      expect(yieldOf(beliefs)).toBeCloseTo(0.5, 3);
      expect(beliefs.every(({ from, tried }) => from === 'prior' && tried === 0)).toBe(true);
    });
  }

  test('a route without stages asks for no beliefs', () => {
    expect(stageBeliefs([], { route: [], goal: 'firsts' })(ash)).toEqual([]);
  });
});

describe('with a history', () => {
  const woods = [
    wood(ash, [
      [200, 20],
      [180, 2],
      [150, 0],
      [100, 1],
    ]),
    wood(oak, [
      [220, 18],
      [200, 4],
      [180, 1],
      [150, 0],
    ]),
    wood(yew, [
      [12, 6],
      [5, 0],
    ]),
  ];
  const beliefs = stageBeliefs(woods, { route, goal: 'finished' });

  test('many pieces stand for themselves', () => {
    const [turn] = beliefs(ash);
    expect(turn && mean(turn)).toBeCloseTo(0.9, 1);
    expect(turn).toMatchObject({ stage: 'turn', from: 'own', tried: 200 });
  });

  test('few pieces lean on the other woods', () => {
    const [turn, sand, seal] = beliefs(yew);
    const own = turn ? mean(turn) : Number.NaN;
    expect(own).toBeGreaterThan(0.5);
    expect(own).toBeLessThan(0.85);
    expect(sand && mean(sand)).toBeGreaterThan(0.95);
    expect(seal).toMatchObject({ from: 'other-woods', tried: 0 });
  });

  test('a wood that was never made has the rates of the woods, with more doubt', () => {
    const [fresh] = beliefs('elm' as SpeciesId);
    const [turn] = beliefs(ash);
    expect(fresh && turn && fresh.alpha + fresh.beta < turn.alpha + turn.beta).toBe(true);
    expect(fresh?.from).toBe('other-woods');
  });

  test('a second is lost where only firsts are good', () => {
    const [of] = [stageBeliefs([wood(ash, [[100, 5]], 10)], { route, goal: 'firsts' })(ash)];
    const [both] = [stageBeliefs([wood(ash, [[100, 5]], 10)], { route, goal: 'finished' })(ash)];
    expect(of[0] && mean(of[0])).toBeCloseTo(0.85, 1);
    expect(both[0] && mean(both[0])).toBeCloseTo(0.95, 1);
  });

  test('they fit the starts', () => {
    const stages = beliefs(ash).map((rate) => ({ rate, standing: 0 }));
    const { chance, good } = goodByStarts({ wanted: 50, finished: 0, stages })(60);
    expect(chance).toBeGreaterThan(0.5);
    expect(good).toBeGreaterThan(50);
  });

  test('hundreds of thousands of pieces without a loss still have a belief', () => {
    const [turn] = stageBeliefs([wood(ash, [[500_000, 0]])], { route, goal: 'finished' })(ash);
    expect(turn && Number.isFinite(turn.alpha) && turn.beta > 0 && mean(turn) > 0.99999).toBe(true);
  });

  test('more lost than tried is refused', () => {
    expect(() => stageBeliefs([wood(ash, [[3, 4]])], { route, goal: 'finished' })).toThrow(RangeError);
  });
});
