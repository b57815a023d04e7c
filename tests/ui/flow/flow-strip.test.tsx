// @vitest-environment happy-dom
import { fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { type FlowPart, FlowStrip } from '../../../src/ui/flow/flow-strip.tsx';
import { grainNames, grains, grainTones } from '../../../src/ui/flow/grain-patterns.ts';
import { stillDrawing } from '../../../src/ui/turn/turns.ts';
import { contrast } from '../theme/contrast.ts';

const part = (id: string, count: number): FlowPart => ({
  id,
  count,
  label: id,
  name: `Sand: ${count} of ${id}`,
  pattern: 'curl',
  tones: grainTones.pale,
});
const shareOf = (name: string): string =>
  screen.getByRole('button', { name }).style.getPropertyValue('--share');

const shown = async (more: object = {}) => {
  render(
    <FlowStrip
      label="Route"
      nothing="none"
      onPick={() => undefined}
      stages={[
        { id: 'sand', name: 'Sand', total: 30, parts: [part('ash', 24), part('yew', 6)] },
        { id: 'seal', name: 'Seal', total: -1, parts: [part('plum', -1)] },
        { id: 'test', name: 'Test', total: 0, parts: [] },
      ]}
      {...more}
    />,
  );
  await waitFor(() => expect(stillDrawing.value).toBe(false));
};

test('a part is as long as its share of the most that stands anywhere', async () => {
  await shown();
  expect(shareOf('Sand: 24 of ash')).toBe('1');
  expect(shareOf('Sand: 6 of yew')).toBe('0.25');
});

test('a count below zero has no length but is shown', async () => {
  await shown();
  expect(shareOf('Sand: -1 of plum')).toBe('0');
  expect(screen.getByRole('button', { name: 'Sand: -1 of plum' }).textContent).toContain('-1');
});

test('a stage where nothing stands says so', async () => {
  await shown();
  expect(screen.getByText('none')).toBeTruthy();
});

test('a part and a stage can be picked', async () => {
  const picked: string[] = [];
  await shown({
    onPick: (stage: string, id: string) => picked.push(`${stage}/${id}`),
    onPickStage: (stage: string) => picked.push(stage),
  });
  fireEvent.click(screen.getByRole('button', { name: 'Sand: 6 of yew' }));
  fireEvent.click(screen.getByRole('button', { name: /^30/ }));
  expect(picked).toEqual(['sand/yew', 'sand']);
});

test('stages that cannot be picked are no buttons', async () => {
  await shown();
  expect(screen.queryByRole('button', { name: /^30/ })).toBeNull();
});

test('no two grains are drawn alike', () => {
  const drawn = grainNames.map((name) => `${grains[name].lines ?? ''}|${grains[name].spots ?? ''}`);
  expect(new Set(drawn).size).toBe(10);
});

test.each(Object.entries(grainTones))(
  'the grain of the %s woods stands out from its ground',
  (_name, tones) => {
    // WCAG 2.2, SC 1.4.11: parts of a graphic at least 3:1.
    expect(contrast(tones.ground, tones.line)).toBeGreaterThanOrEqual(3);
  },
);
