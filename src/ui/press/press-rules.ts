/**
 * What counts as a press of one button, beside a running lathe: a pure step from what the button remembers and what
 * it feels now to what it remembers next and whether it acts. Times are milliseconds of one steady clock.
 */

/** The limits, all from the rules for the bench screens. */
export const pressLimits = {
  /** Two touches of one button nearer than this are one touch that bounced. */
  bounceMs: 120,
  /** A button that ends something is deaf this long after it acted. */
  closingDeafMs: 700,
  /** Touches this soon after the app came back to view are a sleeve or a wake-up tap. */
  wakeDeafMs: 300,
  /** A contact wider than this is a palm or a rag. */
  widestContactPx: 150,
  /** This many fingers at once are a hand that leans or wipes. */
  handFingers: 3,
  /** The click that a browser sends after a touch comes within this time; a later one is a click of its own. */
  clickEchoMs: 400,
} as const;

/** What a button feels. */
export type PressSignal =
  | { kind: 'contact'; pointer: number; at: number; widthPx: number; fingers: number }
  | { kind: 'moved'; pointer: number; inside: boolean; widthPx: number }
  | { kind: 'lifted'; pointer: number; at: number; inside: boolean }
  | { kind: 'cancelled'; pointer: number }
  | { kind: 'crowded' }
  | { kind: 'key-down'; key: string; at: number; repeat: boolean }
  | { kind: 'key-up'; key: string; at: number }
  | { kind: 'focus-lost' }
  | { kind: 'click'; at: number };

type Hold = { by: 'pointer'; pointer: number; since: number } | { by: 'key'; key: string; since: number };

/** What a button remembers from one signal to the next. */
export interface PressMemory {
  readonly hold?: Hold;
  /** When the last press that acted began. */
  readonly lastBegan?: number;
  /** When the button last acted. */
  readonly lastActed?: number;
}

/** What holds around the button. */
export interface PressSurroundings {
  /** This button ends something: deaf for a while after each act. */
  readonly closing: boolean;
  /** When the app last came back to view; undefined before it ever left. */
  readonly backInViewAt: number | undefined;
  /** When a pointer was last lifted anywhere on the page: the click that follows is its echo, wherever it lands. */
  readonly liftedAt: number | undefined;
}

export interface PressStep {
  readonly memory: PressMemory;
  readonly acts: boolean;
}

/** A button that was never touched. */
export const untouched: PressMemory = {};

const within = (at: number, since: number | undefined, ms: number): boolean =>
  since !== undefined && at - since < ms;

const isDeaf = (memory: PressMemory, at: number, around: PressSurroundings): boolean =>
  within(at, memory.lastBegan, pressLimits.bounceMs) ||
  (around.closing && within(at, memory.lastActed, pressLimits.closingDeafMs)) ||
  within(at, around.backInViewAt, pressLimits.wakeDeafMs);

const isHand = (widthPx: number, fingers: number): boolean =>
  widthPx > pressLimits.widestContactPx || fingers >= pressLimits.handFingers;

const quiet = (memory: PressMemory): PressStep => ({ memory, acts: false });

const letGo = ({ hold: _released, ...rest }: PressMemory): PressMemory => rest;

const act = (memory: PressMemory, began: number, at: number): PressStep => ({
  memory: { ...letGo(memory), lastBegan: began, lastActed: at },
  acts: true,
});

const isHeldBy = (hold: Hold | undefined, pointer: number): hold is Hold =>
  hold?.by === 'pointer' && hold.pointer === pointer;

/** One signal further. A bounce is measured from touch-down to touch-down, for quick taps lie 140 ms apart that way. */
export const feel = (memory: PressMemory, signal: PressSignal, around: PressSurroundings): PressStep => {
  const { hold } = memory;
  switch (signal.kind) {
    case 'contact': {
      if (hold || isHand(signal.widthPx, signal.fingers) || isDeaf(memory, signal.at, around))
        return quiet(memory);
      return quiet({ ...memory, hold: { by: 'pointer', pointer: signal.pointer, since: signal.at } });
    }
    case 'moved': {
      if (!isHeldBy(hold, signal.pointer)) return quiet(memory);
      return quiet(signal.inside && !isHand(signal.widthPx, 1) ? memory : letGo(memory));
    }
    case 'lifted': {
      if (!isHeldBy(hold, signal.pointer)) return quiet(memory);
      return signal.inside ? act(memory, hold.since, signal.at) : quiet(letGo(memory));
    }
    case 'cancelled':
      return quiet(isHeldBy(hold, signal.pointer) ? letGo(memory) : memory);
    case 'crowded':
      return quiet(hold?.by === 'pointer' ? letGo(memory) : memory);
    case 'key-down': {
      if (signal.repeat || hold || isDeaf(memory, signal.at, around)) return quiet(memory);
      return quiet({ ...memory, hold: { by: 'key', key: signal.key, since: signal.at } });
    }
    case 'key-up':
      return hold?.by === 'key' && hold.key === signal.key
        ? act(memory, hold.since, signal.at)
        : quiet(memory);
    case 'focus-lost':
      return quiet(hold?.by === 'key' ? letGo(memory) : memory);
    case 'click': {
      const isEcho = within(signal.at, around.liftedAt, pressLimits.clickEchoMs);
      if (hold || isEcho || isDeaf(memory, signal.at, around)) return quiet(memory);
      return act(memory, signal.at, signal.at);
    }
  }
};
