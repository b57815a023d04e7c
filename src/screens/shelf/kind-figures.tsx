import type { ComponentChildren } from 'preact';
import { shelfPlaces } from '../../domain/log/shelf-facts.ts';
import type { ShelfRow } from '../../domain/rollup/shelf-stock.ts';
import { Icon } from '../../ui/icon/icon.tsx';
import { shelfPlaceWords } from '../../words/shelf-place-words.ts';
import { shelfWords as words } from '../../words/shelf-words.ts';
import { belowZero } from './shelf-view.ts';

export interface PlaceFiguresProps {
  readonly row: Pick<ShelfRow, 'finished' | 'at'>;
  /** What test ids begin with. */
  readonly name: string;
  readonly children?: ComponentChildren;
}

/** Pieces by where they are. */
export const PlaceFigures = ({ row, name, children }: PlaceFiguresProps) => (
  <dl class="shelf-figures">
    {shelfPlaces.map((place) => (
      <div key={place} data-figure={place} data-none={row.at[place] === 0 || undefined}>
        <dt>{shelfPlaceWords[place]}</dt>
        <dd class="figures" data-testid={`${name}-${place}`}>
          {words.count(row.at[place])}
        </dd>
      </div>
    ))}
    {children}
  </dl>
);

/** One grade of a variant: how many were finished, where they are, and whether somebody has to count. */
export const KindFigures = ({ row }: { row: ShelfRow }) => {
  const { variant, grade, finished } = row;
  const name = `shelf-${variant}-${grade}`;
  return (
    <div class="shelf-kind">
      <p class="shelf-grade">
        <b>{words.grades[grade]}</b>
        <span data-testid={`${name}-finished`}>{words.finishedOf(finished)}</span>
      </p>
      <PlaceFigures row={row} name={name} />
      <BelowZero row={row} name={name} />
    </div>
  );
};

const BelowZero = ({ row, name }: { row: ShelfRow; name: string }) => {
  const places = belowZero(row);
  if (places.length === 0) return null;
  return (
    <p class="shelf-below-zero" data-testid={`${name}-below-zero`}>
      <Icon name="recount" size={32} />
      <span>
        <b>
          {words.belowZero} ({places.map((place) => shelfPlaceWords[place].toLowerCase()).join(', ')})
        </b>
        <span class="shelf-detail">{words.belowZeroDetail}</span>
      </span>
    </p>
  );
};
