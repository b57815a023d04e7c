import './trays.css';
import { readId, stageId, trayId } from '../../domain/log/ids.ts';
import { address } from '../parts/address.ts';
import { onDemand } from '../parts/on-demand.tsx';
import { MakeUp } from './make-up.tsx';
import { TrayList } from './tray-list.tsx';
import { TrayPage } from './tray-page.tsx';

const scan = onDemand(async () => (await import('./scan/scan-place.tsx')).ScanPlace);

/** Trays: find one, scan its label, make some up, or look at one. */
export const TraysPlace = () => {
  const [what, stage] = address.value.rest;
  if (what === 'new') return <MakeUp />;
  if (what === 'scan') return <scan.Screen stage={readId(stageId, stage)} />;
  const tray = readId(trayId, what);
  return tray === null ? <TrayList /> : <TrayPage key={tray} id={tray} />;
};
