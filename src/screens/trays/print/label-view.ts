import type { LabelText } from '../../../domain/label/label-layout.ts';
import { signOf } from '../../../domain/label/sign-of.ts';
import { symbolText } from '../../../domain/label/symbol-text.ts';
import type { ShopDay, TrayId } from '../../../domain/log/ids.ts';
import { placesOf } from '../../../domain/shop/positions.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import type { Shop } from '../../../domain/shop/shop.ts';
import type { TrayRecord } from '../../../domain/shop/trays.ts';
import { parseTrayCode } from '../../../domain/tray/tray-code.ts';
import { shortCaution, labelWords as words } from '../../../words/label-words.ts';
import { nameOf } from '../../../words/names.ts';
import type { LabelThing } from './label-sheet.tsx';
import type { TextMeasures } from './text-measures.ts';

/** What stands on the label of a tray. */
export interface TrayLabel extends LabelThing {
  readonly tray: TrayId;
  readonly code: string;
  /** Of its symbol; null where the shop has no sign, or the code is not one of ours. */
  readonly symbol: string | null;
  readonly variant: string;
  readonly count: string;
  readonly caution: string;
}

export function trayLabel(shop: Shop, tray: TrayRecord): TrayLabel {
  const { registers } = shop;
  const sign = signOf(registers);
  const code = parseTrayCode(tray.code);
  const caution = factOf(registers, { register: 'species', id: tray.species })?.caution ?? '';
  return {
    key: tray.tray,
    name: words.label(tray.code),
    tray: tray.tray,
    code: tray.code,
    symbol: sign && code ? symbolText({ code, sign }) : null,
    variant: nameOf(registers, { register: 'variant', id: tray.variant }),
    count: words.onLabel(piecesOn(shop, tray.tray)),
    caution: shortCaution(nameOf(registers, { register: 'species', id: tray.species }), caution),
  };
}

/** Pieces that lie on a tray: those in work and the finished ones. */
export function piecesOn(shop: Shop, tray: TrayId): number {
  let sum = 0;
  for (const { place, pieces } of placesOf(shop.positions, tray).values())
    if (place.at !== 'scrapped') sum += pieces;
  return sum;
}

/** The texts of a label in the order of their rank, with the type that each is set in (mm). */
export function labelTexts(
  { variant, count, caution }: TrayLabel,
  { plain, heavy }: TextMeasures,
): LabelText[] {
  return [
    { text: variant, largest: 4.4, least: 2.2, measure: heavy },
    { text: count, largest: 4.4, least: 2.2, measure: heavy },
    { text: caution, largest: 3, least: 1.9, measure: plain },
  ];
}

/** The trays that were made up on a day of the shop. */
export function madeOn(
  trays: Iterable<TrayRecord>,
  { day, dayOf }: { day: ShopDay; dayOf: (at: number) => ShopDay },
): readonly TrayRecord[] {
  return [...trays].filter(({ made }) => made > 0 && dayOf(made) === day);
}
