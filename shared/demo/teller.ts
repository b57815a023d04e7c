import type { Command } from '../../src/domain/command/command.ts';
import { decide } from '../../src/domain/command/decide.ts';
import type { Draft, ShopEvent } from '../../src/domain/log/event.ts';
import type { PersonId, StationId } from '../../src/domain/log/ids.ts';
import { nextStamp, type Stamp, stampZero } from '../../src/domain/log/stamp.ts';
import { shopDay, zoneAt } from '../../src/domain/log/zone.ts';
import { addEvent, emptyShop, type Shop } from '../../src/domain/shop/shop.ts';
import { demoDayStart, demoZone } from './demo-facts.ts';

/** Who does something, at which station, when (ms UTC) and how long after the tap before. */
export interface Doer {
  readonly station: StationId;
  readonly letter: string;
  readonly person: PersonId | null;
  readonly at: number;
  readonly elapsed: number | null;
}

/** Tells the demo's story to a growing shop, through the same decisions as the app. */
export interface Teller {
  readonly shop: Shop;
  readonly events: readonly ShopEvent[];
  /** Returns the events, or none when the shop refuses the command. */
  readonly tell: (command: Command, doer: Doer) => readonly ShopEvent[];
}

export function openTeller(): Teller {
  const shop = emptyShop();
  const events: ShopEvent[] = [];
  const heads = new Map<StationId, { seq: number; stamp: Stamp }>();
  let ids = 0;
  const newId = () => {
    ids += 1;
    return `demo-${ids}`;
  };
  const daysOf = quarterly((at) => ({
    zone: zoneAt(at, demoZone),
    day: shopDay(at, { zone: demoZone, startHour: demoDayStart }),
  }));

  function tell(command: Command, { station, letter, person, at, elapsed }: Doer): readonly ShopEvent[] {
    const decision = decide(shop, command, {
      now: at,
      ...daysOf(at),
      clock: 'sound',
      person,
      station,
      letter,
      elapsed,
      newId,
    });
    return decision.kind === 'events' ? keep(station, { drafts: decision.drafts, at }) : [];
  }

  function keep(
    station: StationId,
    { drafts, at }: { drafts: readonly Draft[]; at: number },
  ): readonly ShopEvent[] {
    const head = heads.get(station) ?? { seq: 0, stamp: stampZero };
    const stamp = nextStamp(head.stamp, Math.round(at));
    const told = drafts.map(
      (draft, index): ShopEvent => ({ station, seq: head.seq + 1 + index, stamp, ...draft }),
    );
    heads.set(station, { seq: head.seq + told.length, stamp });
    for (const event of told) addEvent(shop, event);
    events.push(...told);
    return told;
  }

  return { shop, events, tell };
}

/**
 * What depends on a moment (ms UTC) and stays as it is for a quarter of an hour, asked for once in each. Clocks are set and
 * days begin at full quarters, and the platform takes its time to say what a clock shows.
 */
function quarterly<Answer>(ask: (at: number) => Answer): (at: number) => Answer {
  const known = new Map<number, Answer>();
  return (at) => {
    const quarter = Math.floor(at / (15 * 60_000));
    const answer = known.get(quarter) ?? ask(at);
    known.set(quarter, answer);
    return answer;
  };
}
