/**
 * A hand that taps from within the page, as quick as the press rules allow, and an eye on what the screen says. Both
 * run in the page: nothing here may use what stands outside of `installTapper`.
 */
import type { Tap, TapKind } from './tap-ledger.ts';

/** What the hand and the eye tell, the moment that it happens. */
export type TapNews =
  | { readonly kind: 'tapped'; readonly tap: TapKind }
  /** The next so many taps that waited for it were acknowledged. */
  | { readonly kind: 'acknowledged'; readonly taps: number }
  /** A message of the shop that a maker would see: its test id and its words. */
  | { readonly kind: 'said'; readonly what: string; readonly words: string }
  /** The count changed, and no tap that waits explains it. */
  | { readonly kind: 'unexplained'; readonly left: number };

interface Burst {
  readonly taps: readonly TapKind[];
  /**
   * How an acknowledgement is told: by the count of the stage, which changes only once a tap is saved; or, where
   * another window changes the count too, by the mark. By the mark each tap waits for the one before.
   */
  readonly by: 'count' | 'mark';
}

/** Called in the page: `tapper.run(burst)` resolves when all is tapped and, for at most 4 s, acknowledged. */
interface Tapper {
  readonly run: (burst: Burst) => Promise<void>;
  /** All that was tapped in this tab, whatever documents it has had: news that a document tells as it goes may not arrive. */
  readonly made: () => readonly Tap[];
}

declare global {
  /** Put there by the test; resolves once that has heard. */
  var tellTapNews: (news: TapNews) => Promise<void>;
  var tapper: Tapper;
}

/** What the messages of the shop are called that a chaos run listens for. */
export const messages = ['healed', 'loss', 'suspect', 'not-saved', 'cannot-open'] as const;

export function installTapper({
  watched,
  deltas,
}: {
  watched: readonly string[];
  deltas: Readonly<Record<TapKind, number>>;
}): void {
  /** Two touches of one button nearer than 120 ms are one that bounced. */
  const between = 125;
  const longestWait = 4000;
  const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
  const at = (id: string) => document.querySelector<HTMLElement>(`[data-testid="${id}"]`);
  const left = () => {
    const text = at('stage-left')?.querySelector('.figures')?.textContent ?? '';
    return text === '' ? undefined : Number(text);
  };
  const mark = () => at('saved-mark')?.dataset.state;

  const made = (): Tap[] => JSON.parse(sessionStorage.getItem('taps made') ?? '[]');
  const keepMade = (taps: readonly Tap[]) => sessionStorage.setItem('taps made', JSON.stringify(taps));

  let waiting: TapKind[] = [];
  let by: Burst['by'] = 'count';
  let shown: number | undefined;
  let sawTaken = false;
  /** When the finger last came down, by the clock that the buttons go by. */
  let lastDown = 0;
  const said = new Map<string, string>();

  function acknowledge(taps: number): void {
    const all = made();
    const first = all.length - waiting.length;
    keepMade(all.map((tap, at) => (at >= first && at < first + taps ? { ...tap, acknowledged: true } : tap)));
    waiting = waiting.slice(taps);
    void tellTapNews({ kind: 'acknowledged', taps });
  }

  function lookAtCount(): void {
    const now = left();
    // Before the first burst nothing is known of the count; by the mark it tells nothing.
    if (now === undefined || shown === undefined || now === shown) return;
    let sum = shown;
    shown = now;
    if (by === 'mark') return;
    const explained = waiting.findIndex((tap) => {
      sum += deltas[tap];
      return sum === now;
    });
    if (explained >= 0) acknowledge(explained + 1);
    else void tellTapNews({ kind: 'unexplained', left: now });
  }

  function lookAtMark(): void {
    const state = mark();
    if (state === 'taken') sawTaken = true;
    if (by === 'count' || !sawTaken || (state !== 'saved' && state !== 'undone')) return;
    sawTaken = false;
    if (waiting.length > 0) acknowledge(1);
  }

  function listen(): void {
    for (const id of watched) {
      const words = at(id)?.textContent ?? '';
      if (words !== '' && said.get(id) !== words) void tellTapNews({ kind: 'said', what: id, words });
      said.set(id, words);
    }
  }

  async function press(id: string, tap?: TapKind): Promise<void> {
    const button = at(id);
    if (!button) return;
    const { x, y, width, height } = button.getBoundingClientRect();
    const touch = {
      bubbles: true,
      cancelable: true,
      // The only pointer that a script may capture: the browser always has it.
      pointerId: 1,
      clientX: x + width / 2,
      clientY: y + height / 2,
      width: 24,
      height: 24,
    };
    const down = new PointerEvent('pointerdown', touch);
    lastDown = down.timeStamp;
    button.dispatchEvent(down);
    // The button says itself whether it feels the finger; a tap that it does not feel is none.
    const felt = button.hasAttribute('data-held');
    if (felt && tap) {
      waiting.push(tap);
      keepMade([...made(), { kind: tap, acknowledged: false }]);
      // Once the finger is up the tap may be on disk before any news of it is out, and the browser killed then.
      await tellTapNews({ kind: 'tapped', tap });
    }
    button.dispatchEvent(new PointerEvent('pointerup', touch));
  }

  async function until(holds: () => boolean): Promise<boolean> {
    for (const start = performance.now(); performance.now() - start < longestWait; await pause(5)) {
      if (holds()) return true;
    }
    return holds();
  }

  const settled = () => until(() => waiting.length === 0);

  async function tapOnce(tap: TapKind): Promise<void> {
    if (tap === 'pass') return press('pass', tap);
    // What is not a pass changes the screen: nothing may be under way before or behind it.
    if (!(await settled())) return;
    if (tap === 'undo') await press('undo', tap);
    else {
      await press(document.querySelector<HTMLElement>('[data-testid^=flaw-]')?.dataset.testid ?? '');
      await until(() => at(`outcome-${tap}`) !== null);
      await press(`outcome-${tap}`, tap);
    }
    await settled();
  }

  globalThis.tapper = {
    made,
    async run({ taps, by: how }) {
      by = how;
      shown = left();
      sawTaken = false;
      for (const tap of taps) {
        await tapOnce(tap);
        if (by === 'mark') await settled();
        await pause(Math.max(0, lastDown + between - performance.now()));
      }
      await settled();
    },
  };

  new MutationObserver(() => {
    lookAtCount();
    lookAtMark();
    listen();
  }).observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
}
