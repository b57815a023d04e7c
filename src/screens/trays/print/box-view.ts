import { boxFrame } from '../../../domain/label/box-layout.ts';
import { type LabelText, textsFit } from '../../../domain/label/label-layout.ts';
import type { SizeInMm } from '../../../domain/label/label-size.ts';
import { atStage } from '../../../domain/log/place.ts';
import { boxTextsOf } from '../../../domain/set-up/box-texts.ts';
import { placesOf } from '../../../domain/shop/positions.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import type { Shop } from '../../../domain/shop/shop.ts';
import type { TrayRecord } from '../../../domain/shop/trays.ts';
import { boxWords as words } from '../../../words/box-words.ts';
import { shortCaution } from '../../../words/label-words.ts';
import { nameOf } from '../../../words/names.ts';
import type { LabelThing } from './label-sheet.tsx';
import { piecesOn } from './label-view.ts';
import type { TextMeasures } from './text-measures.ts';

/** What stands on the sheet for the box of a piece. */
export interface BoxSheet extends LabelThing {
  readonly code: string;
  readonly variant: string;
  /** Wood, finish, care and caution, each a sentence with its heading; none is empty. */
  readonly says: readonly string[];
  readonly foot: string;
  /** Whether the maker has written anything for it. */
  readonly written: boolean;
}

/** The sheet for pieces of a tray; null where its variant has none. */
export function boxSheet(shop: Shop, tray: TrayRecord): BoxSheet | null {
  const { registers } = shop;
  const texts = boxTextsOf(
    factOf(registers, { register: 'shop', id: 'shop' }),
    factOf(registers, { register: 'variant', id: tray.variant }),
  );
  if (!texts) return null;
  const { finish, care, caution } = texts;
  const species = factOf(registers, { register: 'species', id: tray.species });
  const wood = nameOf(registers, { register: 'species', id: tray.species });
  const ofWood = shortCaution(wood, species?.caution ?? '');
  const cautions = [caution, ofWood].filter((text) => text !== '').join(' ');
  const said = [
    words.wood(wood),
    finish && words.finish(finish),
    care && words.care(care),
    cautions && words.caution(cautions),
  ];
  return {
    key: tray.tray,
    name: words.ofTray(tray.code),
    code: tray.code,
    variant: nameOf(registers, { register: 'variant', id: tray.variant }),
    says: said.filter((text) => text !== ''),
    foot: words.foot(tray.code, nameOf(registers, { register: 'batch', id: tray.batch })),
    written: [finish, care, caution].some((text) => text !== ''),
  };
}

/** More sheets are not made at once: so many fill hundreds of pages. */
export const mostSheets = 2000;

/** A sheet for each piece on a tray, or one for the tray; `key` tells them apart. */
export function sheetsOf(
  shop: Shop,
  { trays, each }: { readonly trays: readonly TrayRecord[]; readonly each: 'piece' | 'tray' },
): readonly BoxSheet[] {
  return trays.flatMap((tray) => {
    const sheet = boxSheet(shop, tray);
    const count = each === 'tray' ? 1 : Math.max(0, piecesOn(shop, tray.tray));
    return sheet ? Array.from({ length: count }, (_, at) => ({ ...sheet, key: `${sheet.key} ${at}` })) : [];
  });
}

/** Pieces of a tray that have not passed their last stage. */
export function unfinishedOn({ positions }: Shop, { tray }: TrayRecord): number {
  let sum = 0;
  for (const { place, pieces } of placesOf(positions, tray).values()) if (atStage(place)) sum += pieces;
  return sum;
}

/** The smallest type, in mm: with capitals of 1.5 mm it can be read at arm's length (common practice, no source). */
const leastType = 2.2;

/** The texts of a sheet in the order of their rank, with the type that each is set in (mm). */
export function boxLabelTexts(
  { variant, says }: Pick<BoxSheet, 'variant' | 'says'>,
  { plain, heavy }: TextMeasures,
): LabelText[] {
  return [
    { text: variant, largest: 6, least: 2.6, measure: heavy },
    ...says.map((text) => ({ text, largest: 4.4, least: leastType, measure: plain })),
  ];
}

/** Whether a sheet stands on a label whole. */
export function fitsOn(
  sheet: BoxSheet,
  { size, measures }: { size: SizeInMm; measures: TextMeasures },
): boolean {
  return textsFit(boxLabelTexts(sheet, measures), boxFrame(size).texts);
}
