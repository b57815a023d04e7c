import { useState } from 'preact/hooks';
import { type QualityLimit, qualityLimits } from '../../domain/sampling/quality-limits.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { roundNumber } from '../../words/fine-number-words.ts';
import { samplingWords as words } from '../../words/sampling-words.ts';
import { toCheck } from './sampling-view.ts';

/** The limit that was chosen last in this window; at first the one that is chosen most (common practice, no source). */
let lastLimit: QualityLimit = '2.5';

/** The limit that deliveries are held to, and how to choose another. */
export function useLimit(): readonly [limit: QualityLimit, choose: (next: QualityLimit) => void] {
  const [limit, setLimit] = useState(lastLimit);
  const choose = (next: QualityLimit) => {
    lastLimit = next;
    setLimit(next);
  };
  return [limit, choose];
}

export interface HowManyToCheckProps {
  readonly came: number | undefined;
  readonly limit: QualityLimit;
  readonly onLimit: (next: QualityLimit) => void;
}

/** How many of a delivery to check, with how many bad ones it is accepted, and what that lets through. */
export const HowManyToCheck = ({ came, limit, onLimit }: HowManyToCheckProps) => (
  <div class="stores-check">
    <p>{words.lead}</p>
    <SelectField
      label={words.limit}
      options={qualityLimits.map((value) => ({ value, label: words.limitOf(value) }))}
      value={limit}
      onChoose={onLimit}
      testId="check-limit"
    />
    <div role="status" data-testid="check-plan">
      {came === undefined ? <p>{words.enterCount}</p> : <Plan came={came} limit={limit} />}
    </div>
    <p>{words.never}</p>
    <p class="stores-check-source">{words.source}</p>
  </div>
);

const Plan = ({ came, limit }: { came: number; limit: QualityLimit }) => {
  const { plan, lets } = toCheck(came, limit);
  if (plan.kind === 'all')
    return (
      <>
        <p class="stores-check-plan">{words.all(came)}</p>
        <p>{words.allHelp}</p>
      </>
    );
  return (
    <>
      <p class="stores-check-plan">{words.check(plan.sample, came)}</p>
      <p>{words.accept(plan.accept)}</p>
      <h3>{words.chances}</h3>
      <ul class="stores-check-chances">
        {lets.map(({ percent, share }) => (
          <li key={percent}>{words.chanceOf(roundNumber(percent), share)}</li>
        ))}
      </ul>
    </>
  );
};
