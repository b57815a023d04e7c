import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { trayFacts } from '../shop/trays.ts';
import type { CommandOf } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';

/** Takes down that pieces of a tray were photographed; the bytes are kept by then. */
export function decidePhotographPiece(
  shop: Shop,
  { tray, stage, reasons, photo }: CommandOf<'photograph-piece'>,
  at: Circumstances,
): Decision {
  const record = shop.trays.get(tray);
  if (!record) return refuse({ kind: 'no-such-tray' });
  return happens([
    {
      ...envelopeAt(at),
      ...{
        kind: 'piece-photographed',
        of: trayFacts(record),
        moves: [],
        stage,
        reasons: [...reasons],
        photo,
      },
    },
  ]);
}

export function decidePhotograph(
  { registers }: Shop,
  { shows, photo }: CommandOf<'photograph'>,
  at: Circumstances,
): Decision {
  if (shows.kind === 'variant' && !factOf(registers, { register: 'variant', id: shows.variant })) {
    return refuse({ kind: 'no-such-variant' });
  }
  if (shows.kind === 'criterion' && !factOf(registers, { register: 'reason', id: shows.reason })) {
    return refuse({ kind: 'no-reason' });
  }
  return happens([{ ...envelopeAt(at), kind: 'photo-taken', shows, photo }]);
}

export function decideLetPhotosGo({ photos }: CommandOf<'let-photos-go'>, at: Circumstances): Decision {
  if (photos.length === 0) return refuse({ kind: 'no-photo' });
  return happens([...new Set(photos)].map((photo) => ({ ...envelopeAt(at), kind: 'photo-let-go', photo })));
}
