import type { ShelfPlace } from '../domain/log/shelf-facts.ts';

export const shelfPlaceWords: Readonly<Record<ShelfPlace, string>> = {
  shelf: 'On the shelf',
  listed: 'Listed',
  sold: 'Sold',
  given: 'Given away',
  kept: 'Kept',
};
