import { computed, type Signal, signal } from '@preact/signals';
import { act, render, screen } from '@testing-library/preact';
import type { ComponentChildren } from 'preact';
import * as v from 'valibot';
import type { App } from '../../../src/app/app.ts';
import type { Opening } from '../../../src/app/opening.ts';
import { openPreferences } from '../../../src/app/preferences.ts';
import type { ReplicaDesk } from '../../../src/app/replica.ts';
import type { Session } from '../../../src/app/session.ts';
import type { Offer } from '../../../src/app/update-offer.ts';
import { stationId } from '../../../src/domain/log/ids.ts';
import { AppContext, SessionContext } from '../../../src/screens/parts/app-context.ts';
import type { FileShelf } from '../../../src/store/file-shelf.ts';
import type { LogStore } from '../../../src/store/log-store.ts';
import { memoryLog } from '../../../src/store/memory-log.ts';
import { openTestSession, setUpWorkshop, type TestSession } from '../../support/open-test-session.ts';
import { copiesOn, noCopies } from '../../support/test-copies.ts';
import { clickAt } from '../../ui/press/press-at.ts';

export interface Mounted {
  readonly session: Session;
  readonly hands: TestSession['hands'];
  readonly app: App;
  readonly asked: string[];
  readonly offer: Signal<Offer>;
}

/**
 * Shows a part of Set-up over a real session whose workshop is set up; what the app is asked for is noted. Copies are
 * kept on `shelf` when one is given; other tablets are met by `replica`.
 */
export async function mount(
  children: ComponentChildren,
  {
    which = 'own',
    log = memoryLog(v.parse(stationId, 'station-a')),
    shelf,
    replica,
  }: { which?: 'own' | 'demo'; log?: LogStore; shelf?: FileShelf | null; replica?: ReplicaDesk } = {},
): Promise<Mounted> {
  const { session, hands } = await openTestSession({ log });
  await setUpWorkshop(session);
  const asked: string[] = [];
  const offer = signal<Offer>({ kind: 'none' });
  const note = (what: string) => async () => void asked.push(what);
  const app: App = {
    opening: signal<Opening>({
      kind: 'open',
      twoCopies: null,
      onlyLooking: false,
      session,
      which,
      store: null,
    }),
    preferences: openPreferences(undefined),
    updates: {
      offer,
      waiting: computed(() => offer.value.kind !== 'none'),
      offlineReady: signal(true),
      arrived: signal(false),
      apply: () => void asked.push('update'),
      atColdStart: async () => false,
    },
    version: '1.2.3',
    forgets: 'nothing',
    copies: shelf === undefined ? noCopies() : await copiesOn({ session, hands }, shelf),
    leisure: replica ? Promise.resolve({ replica: Promise.resolve(replica) }) : null,
    database: () => null,
    openDemo: async (afresh = false) => void asked.push(afresh ? 'demo afresh' : 'demo'),
    leaveDemo: note('leave demo'),
    takeRebuilt: async () => undefined,
    tryAgain: note('try again'),
  };
  render(
    <AppContext.Provider value={app}>
      <SessionContext.Provider value={session}>{children}</SessionContext.Provider>
    </AppContext.Provider>,
  );
  return { session, hands, app, asked, offer };
}

/** The time of the next touch, ms: far enough from the last one to be no bounce and past any deafness. */
let time = 10_000;

/** Presses a button by its test id, and lets what it saves come to disk. */
export const press = (testId: string): Promise<void> => pressOn(screen.getByTestId(testId));

/** The same of a button that has no test id. */
export async function pressOn(button: HTMLElement): Promise<void> {
  time += 1000;
  clickAt(button, time);
  await settle();
}

/** Lets what was begun come to its end: a store in memory answers before the next turn of the loop. */
export async function settle(): Promise<void> {
  await act(() => new Promise<void>((done) => setImmediate(done)));
}

/** Types a text into a field, as a paste or a keyboard would leave it. */
export function type(testId: string, text: string): void {
  const slot = screen.getByTestId(testId) as HTMLInputElement;
  act(() => {
    slot.value = text;
    slot.dispatchEvent(new Event('input', { bubbles: true }));
  });
}

/** Chooses from a list by the words that stand there. */
export function choose(testId: string, words: string): void {
  const list = screen.getByTestId(testId) as HTMLSelectElement;
  const option = [...list.options].find(({ text }) => text === words);
  if (!option)
    throw new Error(`${words} is not offered, but ${[...list.options].map(({ text }) => text).join(', ')}`);
  act(() => {
    list.value = option.value;
    list.dispatchEvent(new Event('change', { bubbles: true }));
  });
}

/** What is typed in a field now. */
export const typed = (testId: string): string => (screen.getByTestId(testId) as HTMLInputElement).value;

/** What is said to be wrong with a field, by the element that describes it to a screen reader. */
export function errorAt(testId: string): string | undefined {
  const slot = screen.getByTestId(testId);
  const ids = slot.getAttribute('aria-describedby')?.split(' ') ?? [];
  const said = ids.map((id) => document.getElementById(id)).find((each) => each?.matches('.field-error'));
  return said?.textContent ?? undefined;
}

/** Takes one of a row of big choices. */
export async function take(testId: string): Promise<void> {
  screen.getByTestId(testId).querySelector('input')?.click();
  await settle();
}

/** Closes the open sheet by Escape or the system's way back. */
export async function closeSheet(): Promise<void> {
  screen.getByRole('dialog').dispatchEvent(new Event('cancel', { cancelable: true }));
  await settle();
}
