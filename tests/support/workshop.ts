import * as v from 'valibot';
import {
  batchId,
  lotId,
  machineId,
  markId,
  partId,
  personId,
  reasonId,
  resourceId,
  routeId,
  speciesId,
  stageId,
  variantId,
} from '../../src/domain/log/ids.ts';
import type { StageFact, VariantFact } from '../../src/domain/set-up/facts.ts';
import type { RegisterSet } from '../../src/domain/set-up/register.ts';

/** The workshop of the tests: awl hafts in three woods, six stages of all four kinds, one bill of parts. */
function ids<Name extends string, Id>(schema: v.GenericSchema<string, Id>, names: readonly Name[]) {
  return Object.fromEntries(names.map((name) => [name, v.parse(schema, name)])) as Record<Name, Id>;
}

export const routeStages = ['bore', 'glue', 'turn', 'sand', 'grade', 'photo'] as const;
export type StageName = (typeof routeStages)[number] | 'wax';
export const stage = ids(stageId, [...routeStages, 'wax']);

export const reason = ids(reasonId, ['blown', 'catch', 'tear-out', 'scratch', 'gap']);
export type ReasonName = keyof typeof reason;

export const species = ids(speciesId, ['ash', 'plum', 'olive']);
export const part = ids(partId, [
  'ash-blank',
  'plum-blank',
  'olive-blank',
  'core',
  'copper-ferrule',
  'nickel-ferrule',
]);
export const variant = ids(variantId, ['ash-copper', 'plum-copper', 'ash-nickel']);
export type VariantName = keyof typeof variant;
export const batch = ids(batchId, ['spring', 'autumn']);
export type BatchName = keyof typeof batch;
export const route = ids(routeId, ['haft', 'short']);
export const mark = ids(markId, ['new-gouge', 'new-belt']);
export const lot = ids(lotId, ['shelf', 'stove']);
export const resource = ids(resourceId, ['cramps', 'rack']);
export const machine = ids(machineId, ['lathe']);
export const person = ids(personId, ['edda', 'odo']);

const common = {
  reasons: [reason.blown, reason['tear-out'], reason.scratch],
  bulk: false,
  caution: '',
  retired: false,
};

/** Eight clamps, and glue that needs a night: 12 h. */
export const clamps = 8;
export const cureMinutes = 12 * 60;

const stageFacts: Record<StageName, StageFact> = {
  bore: { kind: 'bench', name: 'Bore', ...common },
  glue: { kind: 'hold', name: 'Glue', ...common, cureMinutes, capacity: clamps },
  turn: { kind: 'bench', name: 'Turn', ...common },
  sand: { kind: 'bench', name: 'Sand', ...common, bulk: true },
  grade: { kind: 'check', name: 'Grade', ...common },
  photo: { kind: 'record', name: 'Photograph', ...common },
  wax: { kind: 'bench', name: 'Wax', ...common },
};

/** A blank goes in at the boring, a core and its two pins' worth of glue at the glue-up, a ferrule at the sanding. */
function bill(wood: 'ash' | 'plum', ferrule: 'copper-ferrule' | 'nickel-ferrule'): VariantFact['bill'] {
  return [
    { part: part[`${wood}-blank`], each: 1, stage: stage.bore },
    { part: part.core, each: 2, stage: stage.glue },
    { part: part[ferrule], each: 1, stage: stage.sand },
  ];
}

function variantSet(wood: 'ash' | 'plum', metal: 'copper' | 'nickel'): RegisterSet {
  const ferrule = `${metal}-ferrule` as const;
  return {
    register: 'variant',
    id: v.parse(variantId, `${wood}-${metal}`),
    value: {
      name: `${wood} with ${metal}`,
      species: species[wood],
      ferrule: part[ferrule],
      bill: bill(wood, ferrule),
      firstPrice: 3200,
      secondPrice: 1900,
      retired: false,
    },
  };
}

const woodSet = (wood: keyof typeof species): RegisterSet => ({
  register: 'species',
  id: species[wood],
  value: {
    name: wood,
    grain: 'straight',
    light: '#e8d3a8',
    dark: '#7a5a30',
    reference: null,
    caution: '',
    retired: false,
  },
});

const batchSet = (name: BatchName, its: keyof typeof route): RegisterSet => ({
  register: 'batch',
  id: batch[name],
  value: { name, route: route[its], wanted: [], due: null, retired: false },
});

/** What the stores of the workshop know of its parts: cores are cleaned when they are saved, what else is metal is not. */
export const partFacts: readonly RegisterSet[] = (
  [
    ['ash-blank', 'blank'],
    ['plum-blank', 'blank'],
    ['core', 'core'],
    ['copper-ferrule', 'ferrule'],
    ['nickel-ferrule', 'ferrule'],
  ] as const
).map(([name, sort]) => ({
  register: 'part',
  id: part[name],
  value: { name, sort, retired: false, ...(sort === 'ferrule' ? { cleaned: false } : {}) },
}));

/** Set-up facts of the whole workshop, in an order in which each is allowed. */
export const setUpFacts: readonly RegisterSet[] = [
  {
    register: 'shop',
    id: 'shop',
    value: { name: 'The test shop', zone: 'Europe/London', dayStartHour: 4 },
  },
  ...(['ash', 'plum', 'olive'] as const).map(woodSet),
  ...Object.entries(stageFacts).map(
    ([id, value]): RegisterSet => ({ register: 'stage', id: v.parse(stageId, id), value }),
  ),
  variantSet('ash', 'copper'),
  variantSet('plum', 'copper'),
  variantSet('ash', 'nickel'),
  {
    register: 'route',
    id: route.haft,
    value: { name: 'Haft', stages: routeStages.map((name) => stage[name]) },
  },
  { register: 'route', id: route.short, value: { name: 'Short', stages: [stage.turn, stage.sand] } },
  batchSet('spring', 'haft'),
  batchSet('autumn', 'short'),
];
