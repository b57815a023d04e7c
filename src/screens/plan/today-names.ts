import type { BatchId, StageId } from '../../domain/log/ids.ts';
import { clockTime } from '../../words/date-words.ts';
import { nameOf } from '../../words/names.ts';
import type { TodayNames } from '../../words/today-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';

export function useTodayNames(now: number): TodayNames<StageId, BatchId> {
  const session = useSession();
  const { registers } = useShop();
  const zone = session.zone();
  return {
    stage: (id) => nameOf(registers, { register: 'stage', id }),
    batch: (id) => nameOf(registers, { register: 'batch', id }),
    time: (at) => clockTime(at, { zone, now }),
  };
}
