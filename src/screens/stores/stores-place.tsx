import './stores.css';
import { partId, readId } from '../../domain/log/ids.ts';
import { address } from '../parts/address.ts';
import { onDemand } from '../parts/on-demand.tsx';
import { PartPage } from './part-page.tsx';
import { PartsPage } from './parts-page.tsx';

const woodPage = onDemand(async () => (await import('./wood-page.tsx')).WoodPage);

/** Stores: all parts, or one of them. What else lies there has a page of its own, by the first word after the place. */
export const StoresPlace = () => {
  const [what, which] = address.value.rest;
  if (what === 'wood') return <woodPage.Screen />;
  const part = what === 'part' ? readId(partId, which) : null;
  return part === null ? <PartsPage /> : <PartPage key={part} id={part} />;
};
