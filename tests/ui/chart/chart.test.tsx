// @vitest-environment happy-dom
import { act, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { Chart } from '../../../src/ui/chart/chart.tsx';
import type { ChartProps, DrawChart } from '../../../src/ui/chart/chart-props.ts';
import type { LoadDrawing } from '../../../src/ui/chart/use-drawing.ts';
import { someChart } from './some-chart.ts';

/** Tells the size of whatever is watched, at once and when a test changes it. */
let resize: (width: number, height: number) => void;

class SizeTold {
  private readonly tell: ResizeObserverCallback;
  constructor(tell: ResizeObserverCallback) {
    this.tell = tell;
  }
  observe(): void {
    resize = (width, height) =>
      this.tell(
        [{ contentRect: { width, height } } as ResizeObserverEntry],
        this as unknown as ResizeObserver,
      );
    resize(800, 400);
  }
  disconnect(): void {}
}

beforeEach(() => void vi.stubGlobal('ResizeObserver', SizeTold));
afterEach(() => {
  vi.unstubAllGlobals();
  delete document.documentElement.dataset.theme;
});

type Drawn = Parameters<DrawChart>[1];

/** A part that draws nothing, and writes down what it was asked to draw. */
const drawing = (marksAs: 'labels' | 'numbers' = 'labels') => {
  const asked: Drawn[] = [];
  let standing = 0;
  const drawChart: DrawChart = (_place, chart) => {
    asked.push(chart);
    standing += 1;
    return {
      leftOf: (index) => 100 * (index + 1),
      indexAt: (left) => Math.round(left / 100) - 1,
      field: { left: 50, top: 20, width: 700, height: 300 },
      marksAs,
      close: () => {
        standing -= 1;
      },
    };
  };
  const load: LoadDrawing = () => Promise.resolve({ drawChart });
  return { asked, load, standing: () => standing };
};
const settle = () => act(async () => undefined);
const shown = async (load: LoadDrawing, more: Partial<ChartProps> = {}) => {
  const chart = someChart(more);
  const page = render(<Chart {...chart} load={load} />);
  await settle();
  return page;
};
const plot = () => screen.getByRole('application', { name: 'Good at once' });
const said = () => document.querySelector('.chart-reading')?.textContent;

test('says that it is being drawn until it is', async () => {
  const { load } = drawing();
  render(<Chart {...someChart()} load={load} />);
  expect(screen.getByText('Drawing')).toBeTruthy();
  await settle();
  expect(screen.queryByText('Drawing')).toBeNull();
});

test('is a figure with a name, whose plot can be reached with the keyboard', async () => {
  await shown(drawing().load);
  expect(screen.getByRole('figure', { name: 'Good at once' })).toBeTruthy();
  expect(plot().tabIndex).toBe(0);
});

describe('the cursor', () => {
  test('goes along the points by keys, and what is there is read out', async () => {
    await shown(drawing().load);
    expect(said()).toBe('Use the arrow keys');
    fireEvent.keyDown(plot(), { key: 'ArrowRight' });
    expect(said()).toBe('w10: Good 60 %, Aim 80 %');
    fireEvent.keyDown(plot(), { key: 'End' });
    expect(said()).toBe('w30: Good 90 %, Aim 80 %');
    expect(document.querySelector('.chart-reading')?.getAttribute('aria-live')).toBe('polite');
  });

  test('stands where its point is drawn', async () => {
    await shown(drawing().load);
    fireEvent.keyDown(plot(), { key: 'End' });
    const line = document.querySelector<HTMLElement>('.chart-cursor');
    expect(line?.style.transform).toBe('translateX(300px)');
    expect(line?.style.height).toBe('300px');
  });

  test('goes where the finger is', async () => {
    await shown(drawing().load);
    fireEvent.pointerDown(plot(), { clientX: 210 });
    expect(said()).toBe('w20: Good –, Aim 80 %');
  });

  test('leaves keys alone that are not for it', async () => {
    await shown(drawing().load);
    expect(fireEvent.keyDown(plot(), { key: 'ArrowRight' })).toBe(false);
    expect(fireEvent.keyDown(plot(), { key: 'Tab' })).toBe(true);
    expect(fireEvent.keyDown(plot(), { key: 'ArrowLeft', altKey: true })).toBe(true);
  });

  test('does not draw the chart anew', async () => {
    const { load, asked } = drawing();
    await shown(load);
    fireEvent.keyDown(plot(), { key: 'ArrowRight' });
    await settle();
    expect(asked).toHaveLength(1);
  });
});

describe('is drawn anew', () => {
  test.each([390, 800, 1280])('when its room becomes %i px wide', async (width) => {
    const { load, asked, standing } = drawing();
    await shown(load);
    await act(async () => resize(width, 300));
    expect(asked.at(-1)).toMatchObject({ width, height: 300, printed: false });
    expect(standing()).toBe(1);
  });

  test('not when it keeps its size', async () => {
    const { load, asked } = drawing();
    await shown(load);
    await act(async () => resize(800.3, 400.2));
    expect(asked).toHaveLength(1);
  });

  test('when the theme changes', async () => {
    const { load, asked, standing } = drawing();
    await shown(load);
    document.documentElement.dataset.theme = 'dark';
    await vi.waitFor(() => expect(asked).toHaveLength(2));
    expect(standing()).toBe(1);
  });

  test('for the paper when it is printed, no wider than that, and for the screen after', async () => {
    const { load, asked } = drawing();
    await shown(load);
    await act(async () => void dispatchEvent(new Event('beforeprint')));
    expect(asked.at(-1)).toMatchObject({ printed: true, width: 680 });
    await act(async () => void dispatchEvent(new Event('afterprint')));
    expect(asked.at(-1)).toMatchObject({ printed: false, width: 800 });
  });

  test('and is gone when it is taken away', async () => {
    const { load, standing } = drawing();
    const page = await shown(load);
    page.unmount();
    expect(standing()).toBe(0);
  });
});

test('the same numbers stand in a table, made when it is first opened', async () => {
  await shown(drawing().load, { band: { low: [1, 2, 3], high: [4, 5, 6], label: 'Likely' } });
  expect(screen.queryByRole('table')).toBeNull();
  const details = document.querySelector('details');
  await act(async () => details?.setAttribute('open', ''));
  const table = screen.getByRole('table', { name: 'Good at once' });
  expect(
    within(table)
      .getAllByRole('columnheader')
      .map((head) => head.textContent),
  ).toEqual(['Week of', 'Good', 'Aim', 'Likely']);
  expect(within(table).getAllByRole('row').at(-1)?.textContent).toBe('w3090 %80 %3 % – 6 %');
});

test('each series is shown in the key as it is drawn', async () => {
  await shown(drawing().load, { flagged: [0], texts: { ...someChart().texts, flagged: 'strange' } });
  const entries = [...document.querySelectorAll('.chart-key > li')];
  expect(entries.map((entry) => entry.textContent)).toEqual(['Good', 'Aim', 'strange']);
  expect(entries[1]?.querySelector('.chart-stroke')?.getAttribute('stroke-dasharray')).toBe('12 8');
});

test.each([
  ['labels', 'unseen'],
  ['numbers', 'chart-marks'],
] as const)('where marks carry %s in the chart, their list is %s', async (as, name) => {
  await shown(drawing(as).load, { marks: [{ at: 20, label: 'New gouge' }] });
  const list = screen.getByText('New gouge (w20)').closest('ol');
  expect(list?.className).toBe(name);
});

describe('where it cannot be drawn', () => {
  const isTold = () => {
    expect(screen.getByText('Not drawn')).toBeTruthy();
    expect(screen.queryByRole('application')).toBeNull();
    expect(document.querySelector('details')?.open).toBe(true);
    expect(within(screen.getByRole('table')).getAllByRole('row')).toHaveLength(4);
  };

  test('because its part cannot be had, the table stands open', async () => {
    await shown(() => Promise.reject(new Error('offline')));
    isTold();
  });

  test('because there is no canvas, the table stands open', async () => {
    // The part itself, in a page that has no canvas.
    render(<Chart {...someChart()} />);
    await vi.waitFor(isTold, { timeout: 20_000 });
  });
});
