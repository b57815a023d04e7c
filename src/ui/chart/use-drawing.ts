import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { ChartProps, DrawChart, DrawnChart } from './chart-props.ts';

/** Fetches the part that draws. */
export type LoadDrawing = () => Promise<{ drawChart: DrawChart }>;

export type Drawing = { kind: 'loading' } | { kind: 'failed' } | { kind: 'drawn'; chart: DrawnChart };

/** A sheet of paper is narrower than a screen, px. */
const paper = { width: 680, height: 340 };

/** Calls back when the colours of the page change; returns how to stop it. */
const watchLooks = (changed: () => void): (() => void) => {
  const forced = matchMedia('(forced-colors: active)');
  forced.addEventListener('change', changed);
  const theme = new MutationObserver(changed);
  theme.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
  let watching = true;
  // What was written before the face had come was written in another.
  if (document.fonts?.status === 'loading') void document.fonts.ready.then(() => watching && changed());
  return () => {
    watching = false;
    forced.removeEventListener('change', changed);
    theme.disconnect();
  };
};

/** The size of an element as it changes; nothing before it is known. */
const useSize = (place: RefObject<HTMLElement | null>): { width: number; height: number } | undefined => {
  const [size, setSize] = useState<{ width: number; height: number }>();
  useEffect(() => {
    const watch = new ResizeObserver(([entry]) => {
      if (!entry) return;
      const width = Math.floor(entry.contentRect.width);
      const height = Math.floor(entry.contentRect.height);
      setSize((old) => (old?.width === width && old.height === height ? old : { width, height }));
    });
    if (place.current) watch.observe(place.current);
    return () => watch.disconnect();
  }, [place]);
  return size;
};

/** Whether the page is being printed: it must be drawn anew before this returns to the browser. */
const usePrinting = (): boolean => {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const begin = () => setPrinting(true);
    const end = () => setPrinting(false);
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', end);
    };
  }, []);
  return printing;
};

/** Keeps a chart drawn in its place: anew whenever what it shows, its size, the theme or the paper under it changes. */
export const useDrawing = (
  place: RefObject<HTMLElement | null>,
  props: ChartProps,
  load: LoadDrawing,
): Drawing => {
  const [drawing, setDrawing] = useState<Drawing>({ kind: 'loading' });
  const [part, setPart] = useState<{ drawChart: DrawChart }>();
  const [looks, setLooks] = useState(0);
  const size = useSize(place);
  const printed = usePrinting();
  const fetch = useRef(load);

  useEffect(() => {
    let wanted = true;
    fetch.current().then(
      (loaded) => wanted && setPart(loaded),
      () => wanted && setDrawing({ kind: 'failed' }),
    );
    const stop = watchLooks(() => setLooks((before) => before + 1));
    return () => {
      wanted = false;
      stop();
    };
  }, []);

  // Before the paint, and before a print begins. `looks` has no value of its own: the colours are read while drawing.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useLayoutEffect(() => {
    if (!part || !place.current || !size || size.width <= 0) return undefined;
    const width = printed ? Math.min(paper.width, size.width) : size.width;
    const height = printed ? Math.min(paper.height, size.height) : size.height;
    try {
      const chart = part.drawChart(place.current, { props, width, height, printed });
      setDrawing({ kind: 'drawn', chart });
      return () => chart.close();
    } catch {
      // A browser without a canvas: the table says the same.
      setDrawing({ kind: 'failed' });
      return undefined;
    }
  }, [part, props, size, looks, printed]);

  return drawing;
};
