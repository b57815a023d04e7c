import type { StageId } from '../log/ids.ts';
import { shareValue } from '../rollup/first-pass-yield.ts';
import { type SpeciesYield, type StageYield, yieldBySpecies } from '../rollup/species-yield.ts';
import type { Shop } from '../shop/shop.ts';
import { everyStage } from './every-stage.ts';
import { type Cell, type Naming, type Table, tableOf } from './table.ts';

const columns = [
  'species',
  'stage',
  'made',
  'corrected',
  'in-work',
  'firsts',
  'seconds',
  'scrapped',
  'rolled-yield',
  'first-visits',
  'good-visits',
  'repeat-visits',
  'first-pass-yield',
] as const;
export type YieldColumn = (typeof columns)[number];

/**
 * What comes out of each wood: a row for the wood as a whole, without a stage, then one for each stage that has judged
 * it. A figure stands in one of the two kinds of row only, so that the sum down a column counts no piece twice. Shares
 * are numbers from 0 to 1.
 */
export function yieldTable(shop: Shop, nameOf: Naming): Table<YieldColumn> {
  const judged = [...shop.visits.first.keys(), ...shop.visits.repeat.keys()];
  const stages = everyStage(
    shop.registers,
    judged.map((key) => key.split('|')[0] as StageId),
  );
  const woods = yieldBySpecies(shop, stages).map((wood) => ({
    wood,
    name: nameOf({ register: 'species', id: wood.species }),
  }));
  woods.sort((a, b) => a.name.localeCompare(b.name, 'en'));
  return tableOf(
    columns,
    woods.flatMap(({ wood, name }) => [
      wholeRow(wood, name),
      ...wood.stages.map((at) => stageRow(at, name, nameOf({ register: 'stage', id: at.stage }))),
    ]),
  );
}

type YieldRow = Record<YieldColumn, Cell>;

function wholeRow(wood: SpeciesYield, species: string): YieldRow {
  const { made, corrected, inFlight, firsts, seconds, scrapped, rolled } = wood;
  return {
    ...noFigures,
    species,
    made,
    corrected,
    'in-work': inFlight,
    firsts,
    seconds,
    scrapped,
    'rolled-yield': rolled,
  };
}

function stageRow({ share, repeats }: StageYield, species: string, stage: string): YieldRow {
  return {
    ...noFigures,
    species,
    stage,
    'first-visits': share.of,
    'good-visits': share.out,
    'repeat-visits': repeats,
    'first-pass-yield': shareValue(share),
  };
}

const noFigures: YieldRow = {
  species: null,
  stage: null,
  made: null,
  corrected: null,
  'in-work': null,
  firsts: null,
  seconds: null,
  scrapped: null,
  'rolled-yield': null,
  'first-visits': null,
  'good-visits': null,
  'repeat-visits': null,
  'first-pass-yield': null,
};
