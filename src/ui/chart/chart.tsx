import './chart.css';
import './print.css';
import type { ComponentChildren, TargetedKeyboardEvent, TargetedPointerEvent } from 'preact';
import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Notice } from '../notice/notice.tsx';
import { ChartKey } from './chart-key.tsx';
import { ChartMarks } from './chart-marks.tsx';
import type { ChartProps } from './chart-props.ts';
import { cursorAfter, reading } from './chart-reading.ts';
import { ChartTable } from './chart-table.tsx';
import { type LoadDrawing, useDrawing } from './use-drawing.ts';

const loadDrawing: LoadDrawing = () => import('./chart-drawing.ts');

/**
 * Numbers over time or over some other number, drawn. A cursor goes along the points by arrow keys, a tap or a mouse,
 * and a line under the chart says what is there; the same numbers stand in a table one tap away. It is drawn anew
 * whenever its parent renders it anew. `foot` stands below all of it; `load` is another way to the part that draws, for
 * tests.
 */
export const Chart = (
  props: ChartProps & { foot?: ComponentChildren | undefined; load?: LoadDrawing | undefined },
) => {
  const { title, x, y, texts } = props;
  const id = useId();
  const place = useRef<HTMLDivElement>(null);
  const cursor = useRef<HTMLDivElement>(null);
  const [moved, setMoved] = useState<number>();
  const drawing = useDrawing(place, props, props.load ?? loadDrawing);
  const chart = drawing.kind === 'drawn' ? drawing.chart : undefined;
  const at = moved !== undefined && moved < x.values.length ? moved : undefined;
  const said = at === undefined ? undefined : reading(props, at);

  useLayoutEffect(() => {
    const line = cursor.current;
    if (!line || !chart || at === undefined) return;
    line.style.transform = `translateX(${chart.leftOf(at)}px)`;
    line.style.top = `${chart.field.top}px`;
    line.style.height = `${chart.field.height}px`;
  }, [chart, at]);

  const onKeyDown = (event: TargetedKeyboardEvent<HTMLElement>) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const to = cursorAfter(event.key, at, x.values.length);
    if (to === undefined) return;
    event.preventDefault();
    setMoved(to);
  };
  const onPointer = (event: TargetedPointerEvent<HTMLElement>) => {
    if (chart) setMoved(chart.indexAt(event.clientX - event.currentTarget.getBoundingClientRect().left));
  };

  return (
    <figure class="chart" aria-label={title} data-testid={props.testId}>
      {drawing.kind === 'failed' ? (
        <Notice tone="warn" title={texts.failed} />
      ) : (
        <>
          <ChartKey {...props} />
          <p class="chart-axis">{y.label}</p>
          <div
            class="chart-room"
            role="application"
            aria-label={title}
            aria-describedby={id}
            aria-busy={drawing.kind === 'loading'}
            // biome-ignore lint/a11y/noNoninteractiveTabindex: an application by its role, whose arrow keys move the cursor
            tabIndex={0}
            onKeyDown={onKeyDown}
            onPointerDown={onPointer}
            onPointerMove={onPointer}
          >
            <div ref={place} class="chart-plot" aria-hidden="true" dir="ltr" />
            {at !== undefined && chart && <div ref={cursor} class="chart-cursor" />}
            {drawing.kind === 'loading' && <p class="chart-loading">{texts.loading}</p>}
          </div>
          <p class="chart-axis chart-axis-x">{x.label}</p>
          <p id={id} class="chart-reading figures" aria-live="polite">
            {said ? (
              <>
                <strong>{said.at}</strong>: {said.values}
              </>
            ) : (
              texts.move
            )}
          </p>
        </>
      )}
      <ChartMarks props={props} seen={chart?.marksAs !== 'labels'} />
      <ChartTable props={props} open={drawing.kind === 'failed'} />
      {props.foot}
    </figure>
  );
};
