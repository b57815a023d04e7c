// @vitest-environment happy-dom
import { act, cleanup, screen } from '@testing-library/preact';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { personId, stationId } from '../../../src/domain/log/ids.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { About } from '../../../src/screens/set-up/about.tsx';
import { DemoPanel } from '../../../src/screens/set-up/demo-panel.tsx';
import { KeysPanel } from '../../../src/screens/set-up/keys-panel.tsx';
import { LooksPanel } from '../../../src/screens/set-up/looks-panel.tsx';
import { RecordsPanel } from '../../../src/screens/set-up/records-panel.tsx';
import { ShopPanel } from '../../../src/screens/set-up/shop-panel.tsx';
import { SoundPanel } from '../../../src/screens/set-up/sound-panel.tsx';
import { StationPanel } from '../../../src/screens/set-up/station-panel.tsx';
import { VersionPanel } from '../../../src/screens/set-up/version-panel.tsx';
import { toneNames } from '../../../src/ui/sound/tone-plans.ts';
import { choose, errorAt, mount, press, settle, take, type, typed } from './mount.tsx';

const stationOf = (session: Session) =>
  factOf(session.view.value.shop.registers, { register: 'station', id: session.station });

let keyTime = 0;
/** A key that the whole page hears, by default a while after the one before. */
async function key(name: string, { after = 5000, to = globalThis as EventTarget } = {}): Promise<void> {
  keyTime += after;
  for (const kind of ['keydown', 'keyup']) {
    const event = new KeyboardEvent(kind, { key: name, bubbles: true, cancelable: true });
    Object.defineProperty(event, 'timeStamp', { value: keyTime });
    act(() => void to.dispatchEvent(event));
  }
  await settle();
}

describe('keys', () => {
  test('are taught by a tap on the act and a press of the key', async () => {
    const { session } = await mount(<KeysPanel />);
    await press('key-pass');
    expect(screen.getByTestId('key-pass').textContent).toContain('Press the key for: Pass');
    await key('PageDown');
    expect(stationOf(session)?.keys).toEqual([{ act: 'pass', key: 'PageDown' }]);
    expect(screen.getByTestId('key-pass').textContent).toContain('PageDown now does: Pass');
    await key('PageUp');
    expect(stationOf(session)?.keys).toEqual([{ act: 'pass', key: 'PageDown' }]);
  });

  test('of a held pedal are heard once, and press no button', async () => {
    const { session } = await mount(<KeysPanel />);
    await press('key-pass');
    const button = screen.getByTestId('key-pass');
    button.focus();
    await key('Enter', { to: button });
    for (let pulse = 0; pulse < 4; pulse += 1) await key('Enter', { after: 400, to: button });
    expect(button.getAttribute('aria-pressed')).toBe('false');
    expect(button.textContent).toContain('now does: Pass');
    expect(stationOf(session)?.keys).toEqual([{ act: 'pass', key: 'Enter' }]);
    await key('Enter', { to: button });
    expect(button.getAttribute('aria-pressed')).toBe('true');
  });

  test('that do something already are refused at the act, which goes on listening', async () => {
    const { session } = await mount(<KeysPanel />);
    await press('key-next');
    await key('1');
    expect(screen.getByTestId('key-next').textContent).toContain('1 does this already: Pass.');
    expect(stationOf(session)?.keys).toEqual([]);
    await key('n');
    expect(stationOf(session)?.keys).toEqual([{ act: 'next', key: 'n' }]);
  });

  test('are left as they are by Escape and by a second tap', async () => {
    const { session } = await mount(<KeysPanel />);
    await press('key-next');
    await key('Escape');
    await key('n');
    await press('key-next');
    await press('key-next');
    await key('n');
    expect(stationOf(session)?.keys).toEqual([]);
  });

  test('are the usual ones again at one tap', async () => {
    const { session } = await mount(<KeysPanel />);
    await press('key-next');
    await key('n');
    await press('keys-usual');
    expect(stationOf(session)?.keys).toEqual([]);
    expect(screen.getByTestId('key-next').textContent).toContain('Key 8');
  });

  test('can be switched off on this tablet', async () => {
    const { app } = await mount(<KeysPanel />);
    await take('keys-on-off');
    expect(app.preferences.keys.value).toBe(false);
  });
});

describe('the letter of a tablet', () => {
  test('can be changed, and leaves the name alone that is being typed', async () => {
    const { session } = await mount(<StationPanel />);
    type('tablet-name', '');
    await take('tablet-letter-H');
    expect(stationOf(session)).toMatchObject({ letter: 'H', name: 'Lathe' });
    expect(typed('tablet-name')).toBe('');
  });

  test('that another tablet has is refused, and told whose it is', async () => {
    const { session } = await mount(<StationPanel />);
    const id = v.parse(stationId, 'sanding');
    const value = { letter: 'C', name: 'Sanding bench', keys: [] };
    await session.act({ kind: 'set', set: { register: 'station', id, value } });
    await settle();
    await take('tablet-letter-C');
    await take('tablet-letter-C');
    expect(stationOf(session)?.letter).toBe('A');
    expect(screen.getByTestId('tablet-letter').textContent).toContain('Sanding bench has this letter.');
    expect(screen.getByTestId('tablet-letter-A').querySelector('input')?.checked).toBe(true);
  });
});

test('a letter is taken over from a tablet that is gone, which has it no more', async () => {
  const { session } = await mount(<StationPanel />);
  const id = v.parse(stationId, 'sanding');
  const value = { letter: 'C', name: 'Sanding bench', keys: [] } as const;
  await session.act({ kind: 'set', set: { register: 'station', id, value: { ...value, keys: [] } } });
  await settle();
  await take('tablet-letter-C');
  await press('tablet-letter-take');
  expect(stationOf(session)).toMatchObject({ letter: 'C', name: 'Lathe' });
  const { registers } = session.view.value.shop;
  expect(factOf(registers, { register: 'station', id })?.handedTo).toBe(session.station);
  expect(screen.queryByTestId('tablet-letter-take')).toBeNull();
  expect(screen.getByTestId('tablet-letter-C').textContent).toBe('C');
});

test('the usual stage of a tablet is said and taken back, and leaves its letter, name and keys alone', async () => {
  const { session } = await mount(<StationPanel />);
  choose('tablet-stage', 'Turn');
  await settle();
  expect(stationOf(session)).toMatchObject({ stage: 'turn', letter: 'A', name: 'Lathe', keys: [] });
  choose('tablet-stage', 'None: choose each time');
  await settle();
  expect(stationOf(session)?.stage).toBeNull();
});

describe('sound and voice', () => {
  const speech = (voices: readonly object[]) => {
    const asked: string[] = [];
    Object.assign(globalThis, {
      speechSynthesis: {
        getVoices: () => voices,
        speak: ({ text }: { text: string }) => asked.push(text),
        cancel: () => undefined,
        addEventListener: () => undefined,
        removeEventListener: () => undefined,
      },
      SpeechSynthesisUtterance: class {
        readonly text: string;
        constructor(text: string) {
          this.text = text;
        }
      },
    });
    return asked;
  };

  test('counts are spoken only when it is asked for, and by a voice of the tablet', async () => {
    speech([{ name: 'near', lang: 'en-GB', localService: true, default: true }]);
    const { app } = await mount(<SoundPanel />);
    expect(app.preferences.speak.value).toBe(false);
    await take('speak-on');
    expect(app.preferences.speak.value).toBe(true);
    expect(screen.getByTestId('hear-count')).toBeDefined();
  });

  test('where every voice needs a network they stay off, and it says so', async () => {
    speech([{ name: 'far', lang: 'en-GB', localService: false, default: true }]);
    const { app } = await mount(<SoundPanel />);
    await take('speak-on');
    expect(app.preferences.speak.value).toBe(false);
    expect(screen.getByTestId('speak').textContent).toContain('no English voice');
    expect(screen.queryByTestId('hear-count')).toBeNull();
  });

  test('each sound can be tried, also while sound is off', async () => {
    const { app } = await mount(<SoundPanel />);
    await take('sound-off');
    expect(app.preferences.sound.value).toBe(false);
    for (const name of toneNames) expect(screen.getByTestId(`hear-${name}`)).toBeDefined();
  });
});

test('the whole screen is offered where the browser has such a thing, and is left again', async () => {
  const { app } = await mount(<LooksPanel />);
  expect(screen.queryByTestId('whole-screen')).toBeNull();
  cleanup();
  const asked: string[] = [];
  let whole: Element | null = null;
  const change = (what: string, to: Element | null) => async () => {
    asked.push(what);
    whole = to;
    document.dispatchEvent(new Event('fullscreenchange'));
  };
  Object.defineProperty(document, 'fullscreenEnabled', { configurable: true, value: true });
  Object.defineProperty(document, 'fullscreenElement', { configurable: true, get: () => whole });
  document.documentElement.requestFullscreen = change('whole', document.body);
  document.exitFullscreen = change('leave', null);
  await mount(<LooksPanel />);
  await press('whole-screen');
  expect(screen.getByTestId('whole-screen').textContent).toContain('Leave whole screen');
  await press('whole-screen');
  expect(asked).toEqual(['whole', 'leave']);
  expect(app.preferences.side.value).toBe('left');
});

test('a tablet and a shop need names; a wrong one is kept beside what is wrong with it', async () => {
  const { session } = await mount(
    <>
      <StationPanel />
      <ShopPanel />
    </>,
  );
  type('tablet-name', ' ');
  await press('tablet-save');
  expect(errorAt('tablet-name')).toBe('Enter a name.');
  type('tablet-name', 'Sanding bench');
  await press('tablet-save');
  expect(stationOf(session)?.name).toBe('Sanding bench');
  type('shop-name', 'x'.repeat(500));
  await press('shop-save');
  expect(errorAt('shop-name')).toBe('500 characters: at most 80 fit.');
  expect(typed('shop-name')).toHaveLength(500);
});

test('zone and beginning of the day are the shop’s, and count from the next tap', async () => {
  const { session } = await mount(<ShopPanel />);
  // It is nine in London, which is noon of the same day in Nairobi and still the eve in Honolulu.
  expect(session.today()).toBe('2026-03-02');
  choose('shop-zone', 'Pacific/Honolulu');
  choose('shop-day-start', '00:00');
  await press('shop-save');
  expect(session.today()).toBe('2026-03-01');
  expect(screen.getByTestId('shop-save').textContent).toContain('Saved.');
});

test('who taps, the look, the sound and the side of the pass button are kept on the tablet', async () => {
  const { session, app } = await mount(
    <>
      <LooksPanel />
      <SoundPanel />
    </>,
  );
  const id = v.parse(personId, 'edda');
  const value = { name: 'ED', retired: false };
  await session.act({ kind: 'set', set: { register: 'person', id, value } });
  await settle();
  await take('who-taps-edda');
  await take('theme-glare');
  await take('sound-off');
  expect(session.person.value).toBe('edda');
  await take('side-right');
  const { person, theme, sound, side } = app.preferences;
  expect([person.value, theme.value, sound.value, side.value]).toEqual(['edda', 'glare', false, 'right']);
  await take('who-taps-');
  expect([session.person.value, person.value]).toEqual([null, null]);
});

test('a new version that waits is offered, and comes in only at a tap', async () => {
  const { asked, offer } = await mount(<VersionPanel />);
  expect(screen.queryByTestId('update-apply')).toBeNull();
  act(() => {
    offer.value = { kind: 'waiting' };
  });
  expect(asked).toEqual([]);
  await press('update-apply');
  expect(asked).toEqual(['update']);
  expect(screen.getByText('Version 1.2.3')).toBeDefined();
});

test('the demo is opened from the shop', async () => {
  const own = await mount(<DemoPanel />);
  await press('open-demo');
  expect(own.asked).toEqual(['demo']);
});

test('the demo is left or made anew from the demo', async () => {
  const { asked } = await mount(<DemoPanel />, { which: 'demo' });
  await press('demo-afresh');
  await press('demo-leave');
  expect(asked).toEqual(['demo afresh', 'leave demo']);
});

test('a browser that cannot say whether it keeps the records is not spoken for', async () => {
  await mount(<RecordsPanel />);
  await settle();
  expect(screen.getByTestId('keep-state').textContent).toContain('does not say');
  expect(screen.queryByTestId('ask-keep')).toBeNull();
});

test('the cautions speak of lathe, dust and fumes, and say what rules over them', async () => {
  await mount(<About />);
  const said = screen.getByTestId('cautions').textContent ?? '';
  for (const word of ['lathe', 'dust', 'allergic', 'local codes', 'safety data sheets', 'licensed advice'])
    expect(said).toContain(word);
});
