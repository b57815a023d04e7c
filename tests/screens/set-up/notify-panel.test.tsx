// @vitest-environment happy-dom
import { screen } from '@testing-library/preact';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { NotifyPanel } from '../../../src/screens/set-up/notify-panel.tsx';
import { mount, take } from './mount.tsx';

/** A browser that answers so when it is asked, and notes how often it was. */
function browserThat(permission: NotificationPermission, answer: NotificationPermission) {
  const asked = vi.fn(async () => {
    fake.permission = answer;
    return answer;
  });
  const fake = { permission, requestPermission: asked };
  vi.stubGlobal('Notification', fake);
  return asked;
}

afterEach(() => void vi.unstubAllGlobals());

const said = () => screen.getByTestId('notify').querySelector('.field-error')?.textContent;

describe('notices of the system', () => {
  test('are asked for by a tap and never before, and are on once they are allowed', async () => {
    const asked = browserThat('default', 'granted');
    const { app } = await mount(<NotifyPanel />);
    expect(asked).not.toHaveBeenCalled();
    expect(app.preferences.notify.value).toBe(false);
    await take('notify-on');
    expect(asked).toHaveBeenCalledTimes(1);
    expect(app.preferences.notify.value).toBe(true);
    await take('notify-off');
    expect(app.preferences.notify.value).toBe(false);
  });

  test.each([
    ['denied', 'denied', 'was told not to allow them'],
    ['default', 'default', 'until the browser is allowed to'],
  ] as const)('stay off where the browser says %s, and say why', async (_, answer, why) => {
    browserThat('default', answer);
    const { app } = await mount(<NotifyPanel />);
    await take('notify-on');
    expect(app.preferences.notify.value).toBe(false);
    expect(said()).toContain(why);
  });

  test('are none where the browser has none', async () => {
    vi.stubGlobal('Notification', undefined);
    Reflect.deleteProperty(globalThis, 'Notification');
    const { app } = await mount(<NotifyPanel />);
    await take('notify-on');
    expect(app.preferences.notify.value).toBe(false);
    expect(said()).toContain('this browser has no notices');
  });
});
