import type { ShelfPlace } from '../domain/log/shelf-facts.ts';
import { inLanguage } from './language.ts';

export const shelfPlaceWords = inLanguage<Readonly<Record<ShelfPlace, string>>>('shelfPlaceWords', {
  shelf: 'On the shelf',
  listed: 'Listed',
  sold: 'Sold',
  given: 'Given away',
  kept: 'Kept',
});

/** The same within a sentence. */
export const shelfPlaceInSentence = inLanguage<Readonly<Record<ShelfPlace, string>>>('shelfPlaceInSentence', {
  shelf: 'on the shelf',
  listed: 'listed',
  sold: 'sold',
  given: 'given away',
  kept: 'kept',
});
