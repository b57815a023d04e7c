import type { Session } from '../../../app/session.ts';
import type { Shot } from '../../../domain/rollup/photos.ts';
import type { Registers } from '../../../domain/shop/registers.ts';
import { clockTime } from '../../../words/date-words.ts';
import { nameOf } from '../../../words/names.ts';
import { photoWords as words } from '../../../words/photo-words.ts';
import type { NamedPhoto } from './photo-strip.tsx';

/** Photos as a strip shows them: what is to be seen and when it was taken; each can be taken back. */
export function namedShots(
  shots: readonly Shot[],
  { registers, session }: { readonly registers: Registers; readonly session: Session },
): readonly NamedPhoto[] {
  const now = session.now();
  return shots.map((event) => ({
    key: `${event.station}:${event.seq}`,
    photo: event.photo,
    name: words.at(shownOn(event, registers), clockTime(event.stamp.wall, { zone: event.zone.name, now })),
    onTakeBack: async () => void (await session.act({ kind: 'undo', events: [event] })),
  }));
}

function shownOn(shot: Shot, registers: Registers): string {
  if (shot.kind === 'photo-taken') {
    return shot.shows.kind === 'variant'
      ? nameOf(registers, { register: 'variant', id: shot.shows.variant })
      : nameOf(registers, { register: 'reason', id: shot.shows.reason });
  }
  const stage = nameOf(registers, { register: 'stage', id: shot.stage });
  const reasons = shot.reasons.map((id) => nameOf(registers, { register: 'reason', id })).join(', ');
  return reasons === '' ? words.ofPiece(stage) : words.ofFlaw(reasons, stage);
}
