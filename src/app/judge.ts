import type { Command } from '../domain/command/command.ts';
import { type Circumstances, type Decision, refuse } from '../domain/command/decision.ts';
import type { Shop } from '../domain/shop/shop.ts';

/** Fetches the decisions that are seldom asked for. */
export type LoadDecide = () => Promise<Pick<typeof import('../domain/command/decide.ts'), 'decide'>>;

const loadDecide: LoadDecide = () => import('../domain/command/decide.ts');

let loading: Promise<typeof import('../domain/command/decide-tap.ts')> | undefined;

function loadTaps() {
  loading ??= import('../domain/command/decide-tap.ts').catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}

/** Fetches ahead what decides taps: it is there before a finger has found a stage and a tray. */
export const judgeAhead = (): void => void loadTaps().catch(() => undefined);

/**
 * Judges a command. What is tapped at a stage, and its undo, is judged by code that is there by then; the code for the rest is
 * fetched when it is first wanted. A command whose code cannot be had is refused, and the person has what they typed before
 * them still.
 */
export async function judge(
  shop: Shop,
  { command, at, load = loadDecide }: { command: Command; at: Circumstances; load?: LoadDecide | undefined },
): Promise<Decision> {
  const taps = await loadTaps().catch(() => undefined);
  const decision = taps?.decideTap(shop, command, at);
  if (decision) return decision;
  const rest = taps && (await load().catch(() => undefined));
  return rest ? rest.decide(shop, command, at) : refuse({ kind: 'code-not-there' });
}
