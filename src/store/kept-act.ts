import * as v from 'valibot';
import { readEvent } from '../domain/log/read-event.ts';
import type { Act } from './log-store.ts';

const schema = v.object({
  act: v.string(),
  drafts: v.array(v.looseObject({})),
  now: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
});

/** An act that was kept as JSON outside of the store; none when it is not one that could be appended. Never throws. */
export function readAct(json: string): readonly Act[] {
  try {
    const act = v.parse(schema, JSON.parse(json));
    const asEvent = { station: 'unknown', seq: 1, stamp: { wall: 0, tick: 0 } };
    const isSound = act.drafts.every((draft) => readEvent({ ...draft, ...asEvent }).kind === 'known');
    return isSound ? [act as unknown as Act] : [];
  } catch {
    return [];
  }
}
