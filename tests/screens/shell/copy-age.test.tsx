// @vitest-environment happy-dom
import { act, screen } from '@testing-library/preact';
import * as v from 'valibot';
import { expect, test } from 'vitest';
import type { OutsideCopy } from '../../../src/app/known-copies.ts';
import { logSize } from '../../../src/app/log-size.ts';
import { shopDayText } from '../../../src/domain/log/ids.ts';
import { CopyAge } from '../../../src/screens/shell/copy-age.tsx';
import { type Mounted, mount } from '../set-up/mount.tsx';

const hour = 3_600_000;

async function shown(): Promise<Mounted & { made: (hoursAgo: number, fresh: number) => void }> {
  const mounted = await mount(<CopyAge />);
  const { app, session, hands } = mounted;
  return {
    ...mounted,
    made(hoursAgo, fresh) {
      const at = hands.clock.now() - hoursAgo * hour;
      const log = logSize(session) - fresh;
      const outside: OutsideCopy = {
        at,
        log,
        day: v.parse(shopDayText, '2026-03-01'),
        entries: log,
        way: 'share',
      };
      act(() => app.copies.note({ outside }));
    },
  };
}

const line = () => {
  const { textContent, dataset } = screen.getByTestId('copy-age');
  return [textContent, dataset.tone];
};

test('the line by the places tells the age of the last outside copy, and speaks up when one is wanted', async () => {
  const { made } = await shown();
  expect(line()).toEqual(['Outside copy:never', 'calm']);
  made(1, 5);
  expect(line()).toEqual(['Outside copy:today 08:00', 'calm']);
  made(3 * 24, 5);
  expect(line()).toEqual(['Outside copy:3 days ago', 'amber']);
  made(8 * 24, 5);
  expect(line()).toEqual(['Outside copy:8 days ago', 'red']);
  made(8 * 24, 0);
  expect(line()).toEqual(['Outside copy:8 days ago', 'calm']);
  expect(screen.getByTestId('copy-age').getAttribute('href')).toBe('#/set-up/files');
});
