import './stores.css';
import { address } from '../parts/address.ts';
import { PartsPage } from './parts-page.tsx';

/** Stores: the parts. What else lies there has a page of its own, by the first word after the place. */
export const StoresPlace = () => {
  const [what] = address.value.rest;
  return what === undefined || what === 'parts' ? <PartsPage /> : null;
};
