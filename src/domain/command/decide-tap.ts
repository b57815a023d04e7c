import type { Shop } from '../shop/shop.ts';
import type { Command } from './command.ts';
import { decideAtBench, isBenchCommand } from './decide-at-bench.ts';
import { decideUndo, isOfRoute } from './decide-undo.ts';
import type { Circumstances, Decision } from './decision.ts';

/** Decides what is tapped at a stage, and its undo; undefined for anything else that a person can ask for. */
export function decideTap(shop: Shop, command: Command, at: Circumstances): Decision | undefined {
  if (isBenchCommand(command)) return decideAtBench(shop, command, at);
  if (command.kind === 'undo' && !isOfRoute(command.events)) return decideUndo(shop, command, at);
  return undefined;
}
