import type { ActResult } from '../../app/session.ts';
import type { Command } from '../../domain/command/command.ts';
import type { StageId, TrayId } from '../../domain/log/ids.ts';
import { stagesOfTray } from '../../domain/rollup/waiting.ts';
import { routeOfBatch } from '../../domain/route/route.ts';
import { placesOf } from '../../domain/shop/positions.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import type { ToneName } from '../../ui/sound/tone-plans.ts';
import { type SpokenCount, spokenCount, spokenWords } from '../../words/spoken-words.ts';

/** What a stage has of a tray, both grades together. */
export interface Stock {
  /** Pieces past the stage: at a later one, or finished. */
  readonly past: number;
  readonly waiting: number;
  readonly held: number;
  /** Nothing of the tray is left here, not even a count below zero. */
  readonly isEmpty: boolean;
}

export function stockAt(shop: Shop, { stage, tray }: { stage: StageId; tray: TrayId }): Stock {
  const here = stagesOfTray(shop, tray).find((at) => at.stage === stage);
  const batch = shop.trays.get(tray)?.batch;
  const route = (batch && routeOfBatch(shop.registers, batch)) ?? [];
  const later = new Set(route.includes(stage) ? route.slice(route.indexOf(stage) + 1) : []);
  let past = 0;
  for (const { place, pieces } of placesOf(shop.positions, tray).values()) {
    if (place.at === 'finished' || ('stage' in place && later.has(place.stage))) past += pieces;
  }
  const sum = (of: 'waiting' | 'held') => (here ? here[of].first + here[of].second : 0);
  return { past, waiting: sum('waiting'), held: sum('held'), isEmpty: here === undefined };
}

/** What kind of tap a command of the stage screen is. */
export function tapOf({ kind }: Command): SpokenCount['tap'] {
  return kind === 'flaw' || kind === 'load' ? kind : 'pass';
}

/** What the ear is told of a tap: its sound and the count to speak. `after` is the stock that it has left. */
export function tapAnswer(
  result: ActResult,
  { tap, after }: { tap: SpokenCount['tap']; after: Stock },
): { readonly sound: ToneName; readonly count: string } {
  if (result.kind === 'refused') return { sound: 'refused', count: spokenWords.refusal };
  const { past, waiting, held } = after;
  return { sound: soundOf(tap, after), count: spokenCount({ tap, past, waiting, held }) };
}

function soundOf(tap: SpokenCount['tap'], { isEmpty }: Stock): ToneName {
  switch (tap) {
    case 'flaw':
      return 'flaw';
    case 'undo':
      return 'undone';
    case 'pass':
      return isEmpty ? 'last' : 'saved';
    case 'load':
      return 'saved';
  }
}
