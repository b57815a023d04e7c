// @vitest-environment happy-dom
import { act, cleanup, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { chained } from '../../../src/domain/log/chain.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { CureNotices } from '../../../src/screens/shell/cure-notice.tsx';
import { LetterNotice } from '../../../src/screens/shell/letter-notice.tsx';
import { PotNotice } from '../../../src/screens/shell/pot-notice.tsx';
import { StandingWatch } from '../../../src/screens/shell/standing-watch.tsx';
import { aShop } from '../../support/a-shop.ts';
import { fakeAudio } from '../../support/fake-audio.ts';
import { batch, cureMinutes, stage, variant } from '../../support/workshop.ts';
import { type Mounted, mount, press, settle } from '../set-up/mount.tsx';

/** A loudspeaker that notes how many sounds of the watch were begun: a cure swings between these two tones. */
let begun: number[] = [];
let heard = 0;
let takeAway = (): void => undefined;
beforeEach(() => {
  begun = [];
  // Ten seconds lie between any two sounds: none is left out for coming too soon after that of the test before.
  vi.spyOn(performance, 'now').mockImplementation(() => {
    heard += 10_000;
    return heard;
  });
  takeAway = fakeAudio({ onStart: (hz) => begun.push(hz ?? 0) });
  vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'setTimeout', 'clearTimeout'] });
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.restoreAllMocks();
  takeAway();
});

const cured = [1160, 920, 1160, 920];
const minute = 60_000;

/** The watch over a shop in which a tray of two is in the clamps. */
async function watched(): Promise<Mounted> {
  const mounted = await mount(
    <>
      <StandingWatch />
      <CureNotices />
      <PotNotice />
    </>,
  );
  const { session } = mounted;
  await session.act({
    kind: 'make-trays',
    ...{ variant: variant['ash-copper'], batch: batch.spring, pieces: 2, trays: 1 },
  });
  const [tray] = session.view.value.shop.trays.keys();
  if (!tray) throw new Error('there is a tray');
  const spot = { tray, at: 'waiting', grade: 'first', shown: 2 } as const;
  await session.act({ kind: 'pass', spot: { ...spot, stage: stage.bore }, pieces: 2 });
  await session.act({ kind: 'load', spot: { ...spot, stage: stage.glue }, pieces: 2 });
  await settle();
  return mounted;
}

/** Lets time go by on the tablet, and the watch look. */
async function goBy({ hands }: Mounted, ms: number): Promise<void> {
  hands.pass(ms);
  act(() => void vi.advanceTimersByTime(5000));
  await settle();
}

describe('a pot life that is over', () => {
  test('sounds once, and stands there until it is put away', async () => {
    const mounted = await watched();
    mounted.app.preferences.pot.value = { stage: stage.glue, ends: mounted.session.now() + 30 * minute };
    await goBy(mounted, 30 * minute - 1);
    expect(begun).toEqual([]);
    await goBy(mounted, 1);
    await goBy(mounted, minute);
    expect(begun).toEqual(cured);
    expect(screen.getByTestId('pot-notice').textContent).toContain('Pot life is over: Glue');
    await press('pot-put-away');
    expect(screen.queryByTestId('pot-notice')).toBeNull();
    expect(mounted.app.preferences.pot.value).toBeNull();
  });
});

describe('a cure that is over', () => {
  test('is called once, with a sound and with words that lead to it', async () => {
    const mounted = await watched();
    await goBy(mounted, cureMinutes * minute - 1000);
    expect(begun).toEqual([]);
    expect(screen.queryByTestId('cure-notice')).toBeNull();
    await goBy(mounted, 1000);
    expect(begun).toEqual(cured);
    expect(screen.getByTestId('cure-notice').textContent).toContain('Cured: 2 pieces of tray A1');
    for (let looks = 0; looks < 3; looks += 1) await goBy(mounted, minute);
    expect(begun).toEqual(cured);
    await press('cure-go');
    expect(location.hash).toMatch(/^#\/bench\/glue\//);
  });

  test('is shown and not sounded where sound is off', async () => {
    const mounted = await watched();
    mounted.app.preferences.sound.value = false;
    await goBy(mounted, cureMinutes * minute);
    expect(begun).toEqual([]);
    expect(screen.getByTestId('cure-notice')).toBeDefined();
  });

  test('is not called again by an app that was opened after it', async () => {
    const mounted = await watched();
    await goBy(mounted, cureMinutes * minute);
    begun = [];
    cleanup();
    await mount(
      <>
        <StandingWatch />
        <CureNotices />
      </>,
    );
    await goBy(mounted, minute);
    expect(begun).toEqual([]);
    expect(screen.queryByTestId('cure-notice')).toBeNull();
  });

  test('needs no more words when it is put away, or taken out', async () => {
    const mounted = await watched();
    await goBy(mounted, cureMinutes * minute);
    await press('cure-put-away');
    expect(screen.queryByTestId('cure-notice')).toBeNull();

    cleanup();
    const again = await watched();
    await goBy(again, cureMinutes * minute);
    const { session } = again;
    const [tray] = session.view.value.shop.trays.keys();
    if (!tray) throw new Error('there is a tray');
    await session.act({
      kind: 'pass',
      ...{ spot: { tray, stage: stage.glue, at: 'held', grade: 'first', shown: 2 }, pieces: 2 },
    });
    await goBy(again, 5000);
    expect(screen.queryByTestId('cure-notice')).toBeNull();
  });
});

describe('a letter that is another tablet’s', () => {
  const letterOf = (session: Session) =>
    factOf(session.view.value.shop.registers, { register: 'station', id: session.station })?.letter;

  /** Lets the shop hear of a tablet that had the letter before this one. */
  async function hearOfEarlier({ session }: Mounted): Promise<void> {
    const earlier = aShop({ station: 'earlier', now: Date.UTC(2026, 2, 1, 9) });
    const value = { letter: 'A', name: 'Old lathe', keys: [] } as const;
    earlier.set({ register: 'station', id: earlier.station, value: { ...value, keys: [] } });
    await session.restore({ runs: [], entries: chained(earlier.log) });
    await settle();
    act(() => void vi.advanceTimersByTime(100));
    await settle();
  }

  test('is changed by itself, and that is told once', async () => {
    const mounted = await mount(<StandingWatch />);
    expect(letterOf(mounted.session)).toBe('A');
    await hearOfEarlier(mounted);
    expect(letterOf(mounted.session)).toBe('C');
    const { letterNews } = mounted.app.preferences;
    expect(letterNews.value).toEqual({ from: 'A', to: 'C', owner: 'Old lathe' });

    cleanup();
    const told = await mount(<LetterNotice news={{ from: 'A', to: 'C', owner: 'Old lathe' }} />);
    expect(screen.getByTestId('letter-notice').textContent).toContain('begin with C');
    told.app.preferences.letterNews.value = { from: 'A', to: 'C', owner: 'Old lathe' };
    await press('letter-put-away');
    expect(told.app.preferences.letterNews.value).toBeNull();
  });

  test('is left alone where the shop is only looked at', async () => {
    const mounted = await mount(<StandingWatch />);
    const { opening } = mounted.app;
    if (opening.value.kind === 'open') Object.assign(opening.value, { onlyLooking: true });
    await hearOfEarlier(mounted);
    expect(letterOf(mounted.session)).toBe('A');
  });
});

describe('behind another app', () => {
  const notices: { readonly title: string; readonly tag: string | undefined }[] = [];
  class FakeNotification {
    static permission: NotificationPermission = 'granted';
    constructor(title: string, { tag }: NotificationOptions) {
      notices.push({ title, tag });
    }
  }
  let seen = 'visible' as DocumentVisibilityState;
  const see = (state: DocumentVisibilityState) => {
    seen = state;
  };
  beforeEach(() => {
    notices.length = 0;
    seen = 'visible';
    vi.spyOn(document, 'visibilityState', 'get').mockImplementation(() => seen);
    FakeNotification.permission = 'granted';
    vi.stubGlobal('Notification', FakeNotification);
  });
  afterEach(() => void vi.unstubAllGlobals());

  test('the system is told once of a cure, and the app calls it when it is seen again', async () => {
    const mounted = await watched();
    mounted.app.preferences.notify.value = true;
    see('hidden');
    await goBy(mounted, cureMinutes * minute);
    await goBy(mounted, minute);
    expect(notices.map(({ title }) => title)).toEqual([expect.stringContaining('Cured: 2 pieces of tray')]);
    expect(begun).toEqual([]);
    see('visible');
    await goBy(mounted, 0);
    expect(begun).toEqual(cured);
    expect(notices).toHaveLength(1);
    expect(screen.queryByTestId('cure-notice')).not.toBeNull();
  });

  test.each([
    ['it is not wanted', false, 'granted'],
    ['it is not allowed', true, 'denied'],
    ['nobody was asked', true, 'default'],
  ] as const)('nothing is told where %s', async (_, wanted, permission) => {
    const mounted = await watched();
    mounted.app.preferences.notify.value = wanted;
    FakeNotification.permission = permission;
    see('hidden');
    await goBy(mounted, cureMinutes * minute);
    expect(notices).toEqual([]);
  });

  test('the end of a pot life is told too', async () => {
    const mounted = await watched();
    mounted.app.preferences.notify.value = true;
    mounted.app.preferences.pot.value = { stage: stage.glue, ends: mounted.session.now() + 30 * minute };
    see('hidden');
    await goBy(mounted, 30 * minute);
    expect(notices).toEqual([
      { title: 'Pot life is over: Glue. Spread no more of this mix.', tag: 'pot life' },
    ]);
  });
});
