import { useEffect, useState } from 'preact/hooks';
import { keepAwake, type Waking } from '../../ui/screen/wake-lock.ts';
import { cureWords } from '../../words/cure-words.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { cureCalls } from '../parts/cure-call.ts';

/** Small signs in the dead edge of a stage screen, for what a tap has nothing to do with: a cure is over, the screen may go dark. */
export const StageSigns = () => {
  const waking = useWakeLock();
  const codes = [...new Set(cureCalls.value.map(({ code }) => code))];
  const signs = [
    ...(codes.length > 0 ? [cureWords.sign(codes)] : []),
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
