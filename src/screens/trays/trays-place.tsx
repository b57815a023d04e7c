import './trays.css';
import { readId, stageId, trayId } from '../../domain/log/ids.ts';
import { address } from '../parts/address.ts';
import { onDemand } from '../parts/on-demand.tsx';
import { MakeUp } from './make-up.tsx';
import { TrayList } from './tray-list.tsx';
import { TrayPage } from './tray-page.tsx';

const { Screen: ScanPlace } = onDemand(async () => (await import('./scan/scan-place.tsx')).ScanPlace);
const { Screen: PrintPage } = onDemand(async () => (await import('./print/print-page.tsx')).PrintPage);
const { Screen: EnterCard } = onDemand(async () => (await import('./card/enter-card.tsx')).EnterCard);

/** Trays: find one, scan its label, make some up, print their labels, or look at one. */
export const TraysPlace = () => {
  const [what, which] = address.value.rest;
  if (what === 'new') return <MakeUp />;
  if (what === 'scan') return <ScanPlace stage={readId(stageId, which)} />;
  if (what === 'labels' || what === 'cards' || what === 'boxes') return <PrintPage />;
  const carded = what === 'card' ? readId(trayId, which) : null;
  if (carded !== null) return <EnterCard key={carded} id={carded} />;
  const tray = readId(trayId, what);
  return tray === null ? <TrayList /> : <TrayPage key={tray} id={tray} />;
};
