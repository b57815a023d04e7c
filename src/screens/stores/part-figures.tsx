import { Icon } from '../../ui/icon/icon.tsx';
import type { IconName } from '../../ui/icon/icon-paths.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import type { PartRow, PartState } from './stores-view.ts';

const icons: Readonly<Record<PartState, IconName>> = {
  'below-zero': 'recount',
  untold: 'info',
  short: 'warn',
  low: 'down',
  fine: 'check',
};

/** How a part stands, by word and shape. */
export const StateSign = ({ row: { id, state, free, fact } }: { row: PartRow }) => {
  const detail =
    state === 'short'
      ? words.stateDetails.short(-free)
      : state === 'low'
        ? words.stateDetails.low(fact.lowMark ?? 0)
        : words.stateDetails[state];
  return (
    <p class="stores-state" data-state={state} data-testid={`stores-${id}-state`}>
      <Icon name={icons[state]} size={32} />
      <span>
        <b>{words.states[state]}</b>
        {detail && <span class="stores-state-detail">{detail}</span>}
      </span>
    </p>
  );
};

/** The three numbers of a part. */
export const PartFigures = ({ row }: { row: PartRow }) => {
  const { id, told, onHand, allotted, free } = row;
  // Unknown is not zero: without a delivery or a count nobody knows what lies there.
  const known = told || onHand !== 0;
  const shown = (n: number) => (known ? words.count(n) : words.unknown);
  const figures = [
    ['on-hand', words.onHand, shown(onHand)],
    ['allotted', words.allotted, words.count(allotted)],
    ['free', words.free, shown(free)],
  ] as const;
  return (
    <dl class="stores-figures">
      {figures.map(([name, label, value]) => (
        <div key={name} data-figure={name}>
          <dt>{label}</dt>
          <dd class="figures" data-testid={`stores-${id}-${name}`}>
            {value}
          </dd>
        </div>
      ))}
    </dl>
  );
};
