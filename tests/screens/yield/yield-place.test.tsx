// @vitest-environment happy-dom
import { signal } from '@preact/signals';
import { act, cleanup, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { YieldPlace } from '../../../src/screens/yield/yield-place.tsx';
import { yieldWords as words } from '../../../src/words/yield-words.ts';
import { batch, species, stage, variant } from '../../support/workshop.ts';
import { mount } from '../set-up/mount.tsx';

afterEach(cleanup);

/** Yield as it is opened in a shop that has worked; `watch` is called at each step of its drawing. */
async function openYield(watch: () => void): Promise<void> {
  const isOpen = signal(false);
  const Place = () => (isOpen.value ? <YieldPlace /> : null);
  const { session } = await mount(<Place />);
  for (const made of [variant['ash-copper'], variant['plum-copper']])
    await session.act({ kind: 'make-trays', variant: made, batch: batch.spring, pieces: 7, trays: 1 });
  const observer = new MutationObserver(watch);
  observer.observe(document.body, { subtree: true, childList: true });
  act(() => {
    isOpen.value = true;
  });
  watch();
  await waitFor(() => expect(screen.getByRole('main').getAttribute('aria-busy')).toBe('false'));
  observer.disconnect();
}

test('Yield draws itself to its end from the top down, each wood with all of its figures at once', async () => {
  const panels: string[] = [];
  const figuresOfWoods = new Set<number>();
  await openYield(() => {
    const heads = screen.queryAllByRole('heading', { level: 2 }).map(({ textContent }) => textContent);
    const shown = heads.join(' | ');
    if (shown !== panels.at(-1)) panels.push(shown);
    for (const wood of document.querySelectorAll('.yield-wood'))
      figuresOfWoods.add(wood.querySelectorAll('dd').length);
  });
  expect(panels).toEqual([
    words.flow,
    `${words.flow} | ${words.woods}`,
    `${words.flow} | ${words.woods} | ${words.flaws}`,
  ]);
  expect([...figuresOfWoods]).toEqual([6]);
});

test('and what stands behind a line is drawn too, though nobody has opened it', async () => {
  await openYield(() => {});
  expect(screen.getByTestId(`wip-${stage.bore}-${species.plum}`).textContent).toBe('7');
  expect(document.querySelectorAll('.yield-stages')).toHaveLength(2);
});
