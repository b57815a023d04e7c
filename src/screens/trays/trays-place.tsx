import './trays.css';
import { readId, trayId } from '../../domain/log/ids.ts';
import { address } from '../parts/address.ts';
import { MakeUp } from './make-up.tsx';
import { TrayList } from './tray-list.tsx';
import { TrayPage } from './tray-page.tsx';

/** Trays: find one, make some up, or look at one. */
export const TraysPlace = () => {
  const [what] = address.value.rest;
  if (what === 'new') return <MakeUp />;
  const tray = readId(trayId, what);
  return tray === null ? <TrayList /> : <TrayPage key={tray} id={tray} />;
};
