import { useEffect, useRef } from 'preact/hooks';
import { keysOf } from '../../app/bench-keys.ts';
import type { ReasonId } from '../../domain/log/ids.ts';
import type { BenchAct } from '../../domain/set-up/facts.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { keySign } from '../../words/key-words.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';

/** The same key again within this time (ms) is a bounce of the switch. */
const bounce = 120;
const flawActs = ['flaw-1', 'flaw-2', 'flaw-3', 'flaw-4', 'flaw-5', 'flaw-6'] as const;

/** Lets the key of an act do it; returns the key to show, undefined while keys are switched off. */
export function useKeyOf(act: BenchAct, run: () => unknown): string | undefined {
  const keys = useKeys();
  useKeyDown((key) => {
    if (keys?.[act] === key) run();
    return keys?.[act] === key;
  });
  return keys && keySign(keys[act]);
}

/** The same for the flaw buttons in their order; returns the key of each. */
export function useFlawKeys(
  reasons: readonly ReasonId[],
  run: (reason: ReasonId) => unknown,
): readonly (string | undefined)[] {
  const keys = useKeys();
  useKeyDown((key) => {
    const place = flawActs.findIndex((act) => keys?.[act] === key);
    const reason = reasons[place];
    if (reason !== undefined) run(reason);
    return reason !== undefined;
  });
  return reasons.map((_, place) => {
    const act = flawActs[place];
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

/** Hears keys that nothing else takes: no held key, no key typed into a field, none while a sheet is open. */
function useKeyDown(take: (key: string) => boolean): void {
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => {
    let last = { key: '', at: Number.NEGATIVE_INFINITY };
    const hear = (event: KeyboardEvent) => {
      const bounced = event.key === last.key && event.timeStamp - last.at < bounce;
      if (
        event.repeat ||
        bounced ||
        event.ctrlKey ||
        event.metaKey ||
        event.altKey ||
        isElsewhere(event.target)
      )
        return;
      if (!latest.current(event.key)) return;
      last = { key: event.key, at: event.timeStamp };
      event.preventDefault();
    };
    addEventListener('keydown', hear);
    return () => removeEventListener('keydown', hear);
  }, []);
}

function isElsewhere(target: EventTarget | null): boolean {
  return (
    target instanceof Element &&
    target.closest('input, textarea, select, dialog, [role=alertdialog]') !== null
  );
}
