import type { Locks } from './one-at-a-time.ts';
import type { Timer } from './saver.ts';

export interface OneWindowParts {
  /** What the windows that take turns have in common. */
  readonly name: string;
  /** Where there are none, every window has the turn. */
  readonly locks: Locks | undefined;
  readonly timer: Timer;
  /** This window's turn begins, or another has taken it. */
  readonly onTurn: (isMine: boolean) => void;
  /** Asks whichever window has the turn to say something. */
  readonly ask: () => void;
}

export interface OneWindow {
  /** The window that has the turn was heard. */
  readonly heard: () => void;
  /** Gives the turn back, or waits for it no longer. */
  readonly close: () => void;
}

/**
 * A window that is frozen keeps its lock and says nothing. Whoever waits asks it every so often (ms), and takes the turn after
 * so many questions without an answer. Questions are counted and not time: timers of hidden windows come late, messages do not.
 */
const [betweenQuestions, mostUnanswered] = [15_000, 2];

/**
 * Of the windows of one tablet one has the turn for as long as it is open; the others wait, and the next has it when that one
 * goes, or sleeps. For work that is only wasted, and does no harm, when two are at it for a moment.
 */
export function oneWindow({ name, locks, timer, onTurn, ask }: OneWindowParts): OneWindow {
  if (!locks) {
    onTurn(true);
    return { heard: () => {}, close: () => {} };
  }
  let isOver = false;
  let isMine = false;
  let unanswered = 0;
  let release = () => {};
  let cancelQuestion = () => {};
  let waiting = new AbortController();

  const hold = (): Promise<void> | undefined => {
    if (isOver) return undefined;
    cancelQuestion();
    isMine = true;
    onTurn(true);
    return new Promise<void>((resolve) => {
      release = resolve;
    });
  };

  function request(how: LockOptions): void {
    let isHeld = false;
    locks
      ?.request(name, how, () => {
        isHeld = true;
        return hold();
      })
      .catch((error: unknown) => {
        if (isOver) return;
        const isAbort = error instanceof DOMException && error.name === 'AbortError';
        if (isHeld) {
          isMine = false;
          onTurn(false);
          wait();
        } else if (!isAbort) void hold();
      });
  }

  function wait(): void {
    waiting = new AbortController();
    request({ signal: waiting.signal });
    unanswered = 0;
    question();
  }

  function question(): void {
    if (isMine || isOver) return;
    if (unanswered >= mostUnanswered) {
      waiting.abort();
      request({ steal: true });
      return;
    }
    unanswered += 1;
    ask();
    cancelQuestion = timer.after(betweenQuestions, question);
  }

  wait();
  return {
    heard() {
      unanswered = 0;
    },
    close() {
      isOver = true;
      cancelQuestion();
      waiting.abort();
      release();
    },
  };
}
