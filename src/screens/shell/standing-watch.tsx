import { IdleLock } from '../lock/idle-lock.tsx';
import { useApp } from '../parts/app-context.ts';
import { LabelReader } from './label-reader.tsx';
import { OnReturn } from './on-return.tsx';
import { useCureWatch } from './use-cure-watch.ts';
import { useFocusKept } from './use-focus-kept.ts';
import { useInvitation } from './use-invitation.ts';
import { useOwnLetter } from './use-own-letter.ts';
import { useUnsavedSound } from './use-unsaved-sound.ts';

/** What is watched for in every place, for as long as the shop is open. */
export const StandingWatch = () => {
  useCureWatch();
  useUnsavedSound();
  useOwnLetter();
  useInvitation();
  useFocusKept();
  const lock = useApp().preferences.lock.value;
  return (
    <>
      {lock && lock.minutes !== null && <IdleLock />}
      <OnReturn />
      <LabelReader />
    </>
  );
};
