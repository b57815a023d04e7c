// @vitest-environment happy-dom
import { signal } from '@preact/signals';
import { act, cleanup, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { DayPlace } from '../../../src/screens/day/day-place.tsx';
import { dayWords as words } from '../../../src/words/day-words.ts';
import { dustWords } from '../../../src/words/dust-words.ts';
import { batch, variant } from '../../support/workshop.ts';
import { mount } from '../set-up/mount.tsx';

afterEach(cleanup);

test('Day draws itself to its end from the top down, the figures of the day first and at once', async () => {
  const isOpen = signal(false);
  const Place = () => (isOpen.value ? <DayPlace /> : null);
  const { session } = await mount(<Place />);
  const made = { variant: variant['ash-copper'], batch: batch.spring, pieces: 7, trays: 2 };
  await session.act({ kind: 'make-trays', ...made });
  const seen: string[] = [];
  const watch = () => {
    const heads = screen.queryAllByRole('heading', { level: 2 }).map(({ textContent }) => textContent);
    if (heads.join(' | ') !== seen.at(-1)) seen.push(heads.join(' | '));
  };
  const observer = new MutationObserver(watch);
  observer.observe(document.body, { subtree: true, childList: true });
  act(() => {
    isOpen.value = true;
  });
  watch();
  expect(screen.getByTestId('day-made').textContent).toBe('14');
  await waitFor(() => expect(screen.getByRole('main').getAttribute('aria-busy')).toBe('false'));
  // Its code is fetched when its turn comes.
  await screen.findByTestId('dust');
  await waitFor(() => expect(seen.at(-1)).toContain(dustWords.title));
  observer.disconnect();
  expect(seen).toEqual([
    words.sum,
    `${words.sum} | ${words.holds}`,
    `${words.sum} | ${words.holds} | ${words.stages}`,
    `${words.sum} | ${words.holds} | ${words.stages} | ${words.flaws}`,
    `${words.sum} | ${words.holds} | ${words.stages} | ${words.flaws} | ${dustWords.title}`,
  ]);
  expect(screen.getByText(words.averageOver(0), { exact: false })).toBeTruthy();
});
