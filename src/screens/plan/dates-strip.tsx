import { forecastWords as words } from '../../words/forecast-words.ts';
import type { Strip } from './forecast-view.ts';

/** The calendar with the dates on it; the words above say the same. */
export const DatesStrip = ({ strip: { each, cells } }: { strip: Strip }) => (
  <div class="dates-strip" data-each={each} aria-hidden="true" data-testid="forecast-strip">
    {each === 'day' && words.weekdays.map((name) => <span key={name}>{name}</span>)}
    {cells.map(({ from, likeliness, marks }) => (
      <span class="dates-cell" key={from} data-likely={likeliness}>
        <span>{each === 'day' && !from.endsWith('-01') ? Number(from.slice(8)) : words.weekOf(from)}</span>
        {marks.map((mark) => (
          <b key={mark} data-mark={mark}>
            {words.marks[mark]}
          </b>
        ))}
      </span>
    ))}
  </div>
);
