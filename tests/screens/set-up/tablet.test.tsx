// @vitest-environment happy-dom
import { act, screen } from '@testing-library/preact';
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
import { StationPanel } from '../../../src/screens/set-up/station-panel.tsx';
import { VersionPanel } from '../../../src/screens/set-up/version-panel.tsx';
import { choose, errorAt, mount, press, settle, take, type, typed } from './mount.tsx';

const stationOf = (session: Session) =>
  factOf(session.view.value.shop.registers, { register: 'station', id: session.station });

/** A key that the whole page hears. */
async function key(name: string): Promise<void> {
  act(() => void dispatchEvent(new KeyboardEvent('keydown', { key: name, cancelable: true })));
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

test('who taps, the look and the sound are kept on the tablet', async () => {
  const { session, app } = await mount(<LooksPanel />);
  const id = v.parse(personId, 'edda');
  const value = { name: 'ED', retired: false };
  await session.act({ kind: 'set', set: { register: 'person', id, value } });
  await settle();
  await take('who-taps-edda');
  await take('theme-glare');
  await take('sound-off');
  expect(session.person.value).toBe('edda');
  const { person, theme, sound } = app.preferences;
  expect([person.value, theme.value, sound.value]).toEqual(['edda', 'glare', false]);
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
