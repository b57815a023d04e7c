import './bench.css';
import { useEffect } from 'preact/hooks';
import * as v from 'valibot';
import { type StageId, stageId, trayId } from '../../domain/log/ids.ts';
import { address } from '../parts/address.ts';
import { useSession } from '../parts/app-context.ts';
import { StageChoice } from './stage-choice.tsx';
import { StageScreen } from './stage-screen.tsx';
import { TrayChoice } from './tray-choice.tsx';

/** The bench: choose a stage, choose a tray, then tap. */
export const BenchPlace = () => {
  const [stage, tray] = address.value.rest;
  const chosenStage = v.safeParse(stageId, stage);
  const chosenTray = v.safeParse(trayId, tray);
  useSpellAt(chosenStage.success && chosenTray.success ? chosenStage.output : null);
  if (!chosenStage.success) return <StageChoice />;
  if (!chosenTray.success) return <TrayChoice stage={chosenStage.output} />;
  return <StageScreen key={`${stage}/${tray}`} stage={chosenStage.output} tray={chosenTray.output} />;
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
