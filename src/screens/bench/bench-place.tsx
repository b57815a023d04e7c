import './bench.css';
import { useEffect } from 'preact/hooks';
import { readId, type StageId, stageId, trayId } from '../../domain/log/ids.ts';
import { address } from '../parts/address.ts';
import { useSession } from '../parts/app-context.ts';
import { onDemand } from '../parts/on-demand.tsx';
import { StageChoice } from './stage-choice.tsx';

const trayChoice = onDemand(async () => (await import('./tray-choice.tsx')).TrayChoice);
const benchPage = onDemand(async () => (await import('./bench-page.tsx')).BenchPage);
const stageScreen = onDemand(async () => (await import('./stage-screen.tsx')).StageScreen);

const pages = ['speed', 'curing', 'mix'] as const;

/** The bench: choose a stage, choose a tray, then tap. */
export const BenchPlace = () => {
  const [first, second] = address.value.rest;
  // Pages beside the stages: their names come before ids, which are random or known.
  const page = pages.find((each) => each === first);
  const stage = page ? null : readId(stageId, first);
  const tray = readId(trayId, second);
  // A stage is chosen next, then a tray: their screens must stand the moment they are tapped.
  useEffect(() => {
    trayChoice.ahead();
    stageScreen.ahead();
  }, []);
  useSpellAt(tray === null ? null : stage);
  if (page) return <benchPage.Screen page={page} />;
  if (stage === null) return <StageChoice />;
  if (tray === null) return <trayChoice.Screen stage={stage} />;
  return <stageScreen.Screen key={`${stage}/${tray}`} stage={stage} tray={tray} />;
};

/** A spell goes on from tray to tray and ends when the stage is left. */
function useSpellAt(stage: StageId | null): void {
  const session = useSession();
  useEffect(() => {
    if (stage === null) return;
    session.enterStage(stage);
    return () => void session.pause();
  }, [session, stage]);
}
