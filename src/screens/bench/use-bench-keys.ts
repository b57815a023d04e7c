import { useEffect, useRef } from 'preact/hooks';
import { keysOf } from '../../app/bench-keys.ts';
import type { BenchAct } from '../../domain/set-up/facts.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { type KeyTaker, takeKeys } from '../../ui/press/page-keys.ts';
import { keySign } from '../../words/key-words.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';

const flawActs = ['flaw-1', 'flaw-2', 'flaw-3', 'flaw-4', 'flaw-5', 'flaw-6'] as const;
const answerActs = ['pass', ...flawActs] as const;

/**
 * Lets the key of an act do it; returns the key to show, undefined while keys are switched off. `closing` is as for
 * buttons: deaf for a while after an act.
 */
export function useKeyOf(
  act: BenchAct,
  run: () => unknown,
  { closing = false }: { closing?: boolean } = {},
): string | undefined {
  const keys = useKeys();
  useKeyTaker({ takes: (key) => keys?.[act] === key, act: run, closing });
  return keys && keySign(keys[act]);
}

/** The same for the flaw buttons in their order; returns the key of each. */
export const useFlawKeys = (runs: readonly (() => unknown)[]) => useKeysInOrder(flawActs, runs);

/**
 * The same for the answers to a question that stands in the place of the acts, the usual answer first: it has the key that
 * passes a piece, so that two pedals are enough for a flaw. Answers beyond the seventh have no key.
 */
export const useAnswerKeys = (runs: readonly (() => unknown)[]) => useKeysInOrder(answerActs, runs);

function useKeysInOrder(
  acts: readonly BenchAct[],
  runs: readonly (() => unknown)[],
): readonly (string | undefined)[] {
  const keys = useKeys();
  const runOf = (key: string) => runs[acts.findIndex((act) => keys?.[act] === key)];
  useKeyTaker({ takes: (key) => runOf(key) !== undefined, act: (key) => runOf(key)?.() });
  return runs.map((_, place) => {
    const act = acts[place];
    return keys && act && keySign(keys[act]);
  });
}

function useKeys(): Readonly<Record<BenchAct, string>> | undefined {
  const { station } = useSession();
  const { registers } = useShop();
  return useApp().preferences.keys.value
    ? keysOf(factOf(registers, { register: 'station', id: station }))
    : undefined;
}

/** The key presses that `taker` wants, for as long as its screen stands. */
function useKeyTaker(taker: KeyTaker): void {
  const latest = useRef(taker);
  latest.current = taker;
  const { closing } = taker;
  useEffect(
    () =>
      takeKeys({
        takes: (key) => latest.current.takes(key),
        act: (key) => latest.current.act(key),
        closing,
      }),
    [closing],
  );
}
