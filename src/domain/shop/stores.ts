import type { PartId } from '../log/ids.ts';
import { addTo, type Counter } from './counter.ts';
import type { Projection } from './projection.ts';

/**
 * What is summed of each part: pieces that came in with deliveries (`received`); of these, pieces whose price is known
 * (`priced`) and what they cost together, in whole minor units (`paid`); what counts have added to the shelf and taken from it
 * (`corrected`), and the same of what is to be cleaned (`saved-corrected`); pieces saved from scrap that have to be cleaned
 * (`saved`); those cleaned, back on the shelf (`cleaned`), and lost over it (`lost`); and how many deliveries and counts say
 * how many there are (`told`): of a part without one nobody knows.
 */
type StoresSum =
  | 'received'
  | 'priced'
  | 'paid'
  | 'corrected'
  | 'saved'
  | 'saved-corrected'
  | 'cleaned'
  | 'lost'
  | 'told';

/**
 * What became of parts: with `partsUsed`, which has what pieces in work took and gave back, all there is to know of the
 * stores.
 */
export type Stores = Counter<`${StoresSum}|${PartId}`>;

export const stores: Projection<Stores> = {
  empty: () => new Map(),
  add(state, { event, times }) {
    const add = (sum: StoresSum, part: PartId, by: number) =>
      addTo(state, { key: `${sum}|${part}`, by: times * by });
    switch (event.kind) {
      case 'parts-received':
        for (const { part, pieces, cost } of event.parts) {
          add('received', part, pieces);
          add('told', part, 1);
          if (cost === null) continue;
          add('priced', part, pieces);
          add('paid', part, cost);
        }
        return;
      case 'parts-counted':
        if (event.heap === 'to-clean') return add('saved-corrected', event.part, event.pieces);
        add('corrected', event.part, event.pieces);
        return add('told', event.part, 1);
      case 'parts-cleaned':
        add('cleaned', event.part, event.back);
        return add('lost', event.part, event.lost);
      case 'flawed':
        for (const { part, pieces } of event.toClean ?? []) add('saved', part, pieces);
    }
  },
};
