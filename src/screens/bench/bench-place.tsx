import './bench.css';
import { useEffect } from 'preact/hooks';
import { readId, type StageId, stageId, trayId } from '../../domain/log/ids.ts';
import { address } from '../parts/address.ts';
import { useSession } from '../parts/app-context.ts';
import { StageChoice } from './stage-choice.tsx';
import { StageScreen } from './stage-screen.tsx';
import { TrayChoice } from './tray-choice.tsx';

/** The bench: choose a stage, choose a tray, then tap. */
export const BenchPlace = () => {
  const [first, second] = address.value.rest;
  const stage = readId(stageId, first);
  const tray = readId(trayId, second);
  useSpellAt(tray === null ? null : stage);
  if (stage === null) return <StageChoice />;
  if (tray === null) return <TrayChoice stage={stage} />;
  return <StageScreen key={`${stage}/${tray}`} stage={stage} tray={tray} />;
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
