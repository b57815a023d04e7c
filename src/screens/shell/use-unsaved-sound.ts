import { useSignalEffect } from '@preact/signals';
import { useSession } from '../parts/app-context.ts';
import { useFeedback } from '../parts/use-feedback.ts';

/** Sounds the alarm beside the standing bar of a tap that is not on disk. */
export function useUnsavedSound(): void {
  const session = useSession();
  const { sound } = useFeedback();
  useSignalEffect(() => {
    if (session.saving.value.kind === 'not-saved') sound('not-saved');
  });
}
