import type { StageId } from '../domain/log/ids.ts';
import type { RecentAct } from './acts.ts';
import type { Session } from './session.ts';

/** The stage that this station works at: of the spell that runs, else of its latest tap; null when it has tapped none. */
export function stageInUse({ spell, acts }: Pick<Session, 'spell' | 'acts'>): StageId | null {
  return spell.value?.stage ?? acts.value.map(stageOf).findLast((stage) => stage !== undefined) ?? null;
}

function stageOf({ events }: RecentAct): StageId | undefined {
  return events.map((event) => ('of' in event && 'stage' in event ? event.stage : undefined)).at(-1);
}
