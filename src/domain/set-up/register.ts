import * as v from 'valibot';
import {
  batchId,
  labelSizeId,
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
  stationId,
  variantId,
} from '../log/ids.ts';
import { batchFact } from './batch-facts.ts';
import {
  labelSizeFact,
  lotFact,
  machineFact,
  markFact,
  partFact,
  personFact,
  reasonFact,
  resourceFact,
  routeFact,
  shopFact,
  speciesFact,
  stageFact,
  stationFact,
  variantFact,
} from './facts.ts';

/**
 * One set-up fact: the whole new value of one register. The latest by clock stamp stands. To add a kind of
 * set-up fact, add its schema to facts.ts and its branch here; the shop keeps it without further ado.
 */
export const registerSchema = v.variant('register', [
  v.object({ register: v.literal('species'), id: speciesId, value: speciesFact }),
  v.object({ register: v.literal('part'), id: partId, value: partFact }),
  v.object({ register: v.literal('variant'), id: variantId, value: variantFact }),
  v.object({ register: v.literal('stage'), id: stageId, value: stageFact }),
  v.object({ register: v.literal('route'), id: routeId, value: routeFact }),
  v.object({ register: v.literal('batch'), id: batchId, value: batchFact }),
  v.object({ register: v.literal('person'), id: personId, value: personFact }),
  v.object({ register: v.literal('reason'), id: reasonId, value: reasonFact }),
  v.object({ register: v.literal('mark'), id: markId, value: markFact }),
  v.object({ register: v.literal('label-size'), id: labelSizeId, value: labelSizeFact }),
  v.object({ register: v.literal('machine'), id: machineId, value: machineFact }),
  v.object({ register: v.literal('lot'), id: lotId, value: lotFact }),
  v.object({ register: v.literal('resource'), id: resourceId, value: resourceFact }),
  v.object({ register: v.literal('shop'), id: v.literal('shop'), value: shopFact }),
  v.object({ register: v.literal('station'), id: stationId, value: stationFact }),
]);

export type RegisterSet = Readonly<v.InferOutput<typeof registerSchema>>;
export type RegisterName = RegisterSet['register'];
export type RegisterOf<Name extends RegisterName> = Extract<RegisterSet, { register: Name }>;
export type IdOf<Name extends RegisterName> = RegisterOf<Name>['id'];
export type FactOf<Name extends RegisterName> = RegisterOf<Name>['value'];

/** What a fact is called by: a mark has no name but its note. */
export function calledBy(fact: FactOf<RegisterName>): string {
  return 'name' in fact ? fact.name : fact.note;
}

/** Reads a list of set-up facts that comes as data. Throws a ValiError that names what does not fit. */
export function readRegisterSets(raw: unknown): readonly RegisterSet[] {
  return v.parse(v.array(registerSchema), raw);
}
