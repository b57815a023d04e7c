import './stores.css';
import { partId, readId } from '../../domain/log/ids.ts';
import { address } from '../parts/address.ts';
import { PartPage } from './part-page.tsx';
import { PartsPage } from './parts-page.tsx';

/** Stores: all parts, or one of them. What else lies there has a page of its own, by the first word after the place. */
export const StoresPlace = () => {
  const [what, which] = address.value.rest;
  const part = what === 'part' ? readId(partId, which) : null;
  return part === null ? <PartsPage /> : <PartPage key={part} id={part} />;
};
