import type { Command } from '../domain/command/command.ts';
import { decideAtBench, isBenchCommand } from '../domain/command/decide-at-bench.ts';
import { decideUndo, isOfRoute } from '../domain/command/decide-undo.ts';
import { type Circumstances, type Decision, refuse } from '../domain/command/decision.ts';
import type { Shop } from '../domain/shop/shop.ts';

/** Fetches the decisions that the first screen does not carry. */
export type LoadDecide = () => Promise<Pick<typeof import('../domain/command/decide.ts'), 'decide'>>;

const loadDecide: LoadDecide = () => import('../domain/command/decide.ts');

/**
 * Judges a command. What is tapped at a stage, and its undo, is judged at once; the code for the rest is fetched when it
 * is first wanted. A command whose code cannot be had is refused, and the person has what they typed before them still.
 */
export async function judge(
  shop: Shop,
  { command, at, load = loadDecide }: { command: Command; at: Circumstances; load?: LoadDecide | undefined },
): Promise<Decision> {
  if (isBenchCommand(command)) return decideAtBench(shop, command, at);
  if (command.kind === 'undo' && !isOfRoute(command.events)) return decideUndo(shop, command, at);
  try {
    const { decide } = await load();
    return decide(shop, command, at);
  } catch {
    return refuse({ kind: 'code-not-there' });
  }
}
