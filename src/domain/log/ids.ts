import * as v from 'valibot';

/** What an id may look like: short, lower case, safe as a key, in an address and in a file. */
const idText = v.pipe(v.string(), v.regex(/^[a-z0-9][a-z0-9-]{0,39}$/));

export const stationId = v.pipe(idText, v.brand('StationId'));
export const trayId = v.pipe(idText, v.brand('TrayId'));
export const speciesId = v.pipe(idText, v.brand('SpeciesId'));
export const partId = v.pipe(idText, v.brand('PartId'));
export const variantId = v.pipe(idText, v.brand('VariantId'));
export const stageId = v.pipe(idText, v.brand('StageId'));
export const routeId = v.pipe(idText, v.brand('RouteId'));
export const batchId = v.pipe(idText, v.brand('BatchId'));
export const personId = v.pipe(idText, v.brand('PersonId'));
export const reasonId = v.pipe(idText, v.brand('ReasonId'));
export const markId = v.pipe(idText, v.brand('MarkId'));
export const labelSizeId = v.pipe(idText, v.brand('LabelSizeId'));
export const machineId = v.pipe(idText, v.brand('MachineId'));
export const lotId = v.pipe(idText, v.brand('LotId'));
export const resourceId = v.pipe(idText, v.brand('ResourceId'));

export type StationId = v.InferOutput<typeof stationId>;
export type TrayId = v.InferOutput<typeof trayId>;
export type SpeciesId = v.InferOutput<typeof speciesId>;
export type PartId = v.InferOutput<typeof partId>;
export type VariantId = v.InferOutput<typeof variantId>;
export type StageId = v.InferOutput<typeof stageId>;
export type RouteId = v.InferOutput<typeof routeId>;
export type BatchId = v.InferOutput<typeof batchId>;
export type PersonId = v.InferOutput<typeof personId>;
export type ReasonId = v.InferOutput<typeof reasonId>;
export type MarkId = v.InferOutput<typeof markId>;
export type LabelSizeId = v.InferOutput<typeof labelSizeId>;
export type MachineId = v.InferOutput<typeof machineId>;
export type LotId = v.InferOutput<typeof lotId>;
export type ResourceId = v.InferOutput<typeof resourceId>;

/** A shop's day as `YYYY-MM-DD`; it begins at the hour that the maker sets, in the shop's zone. */
export const shopDayText = v.pipe(v.string(), v.regex(/^\d{4}-\d{2}-\d{2}$/), v.brand('ShopDay'));
export type ShopDay = v.InferOutput<typeof shopDayText>;

/** An id that comes from an address or from storage; null when it has not the form of one. */
export function readId<Id>(schema: v.GenericSchema<string, Id>, raw: unknown): Id | null {
  const result = v.safeParse(schema, raw);
  return result.success ? result.output : null;
}
