import './shelf.css';
import { readId, variantId } from '../../domain/log/ids.ts';
import { address } from '../parts/address.ts';
import { onDemand } from '../parts/on-demand.tsx';
import { StockPage } from './stock-page.tsx';
import { VariantPage } from './variant-page.tsx';

const listingPage = onDemand(async () => (await import('./listing/listing-page.tsx')).ListingPage);

/** The shelf: all finished pieces, those of one variant, or the listing for sale. */
export const ShelfPlace = () => {
  const [what] = address.value.rest;
  if (what === 'listing') return <listingPage.Screen />;
  const variant = readId(variantId, what);
  return variant === null ? <StockPage /> : <VariantPage key={variant} variant={variant} />;
};
