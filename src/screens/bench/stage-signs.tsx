import { useEffect, useState } from 'preact/hooks';
import { workedHere } from '../../app/worked-here.ts';
import type { StageId } from '../../domain/log/ids.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { machineRest } from '../../domain/wood/machine-rest.ts';
import { keepAwake, type Waking } from '../../ui/screen/wake-lock.ts';
import { cureWords } from '../../words/cure-words.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { cautionRules, woodCareWords } from '../../words/wood-care-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { cureCalls } from '../parts/cure-call.ts';
import { useNow } from '../parts/use-now.ts';

export interface StageSignsProps {
  readonly stage: StageId;
  /** A caution stands on the screen: what rules over it is said here, where it is never cut off. */
  readonly cautioned: boolean;
}

/** Small signs in the dead edge of a stage screen, for what a tap has nothing to do with: a cure is over, a machine is due for its rest, the screen may go dark. */
export const StageSigns = ({ stage, cautioned }: StageSignsProps) => {
  const waking = useWakeLock();
  const codes = [...new Set(cureCalls.value.map(({ code }) => code))];
  const signs = [
    ...(cautioned ? [cautionRules.first] : []),
    ...(codes.length > 0 ? [cureWords.sign(codes)] : []),
    ...useRestsDue(stage),
    ...(waking === 'refused' ? [words.mayGoDark] : []),
  ];
  return (
    <p role="status" data-waking={waking} data-testid="stage-signs">
      {signs.join(' · ')}
    </p>
  );
};

/** Keeps the screen awake for as long as the stage screen stands. */
function useWakeLock(): Waking {
  const [waking, setWaking] = useState<Waking>('asked');
  useEffect(() => keepAwake({ wakeLock: navigator.wakeLock, page: document, tell: setWaking }), []);
  return waking;
}

/** The machines of a stage that have run as long as they may, in words. */
function useRestsDue(stage: StageId): readonly string[] {
  const session = useSession();
  const { registers } = useShop();
  const worked = workedHere(session).value;
  const now = Math.max(useNow(), session.now());
  return factsOf(registers, 'machine').flatMap(({ fact: { name, stages, duty, retired } }) => {
    if (retired || !duty || !stages.includes(stage)) return [];
    const rest = machineRest(worked, { stages, duty, now });
    return rest.kind === 'rest'
      ? [woodCareWords.restDue(name, Math.floor(rest.minutes), Math.ceil(rest.left))]
      : [];
  });
}
