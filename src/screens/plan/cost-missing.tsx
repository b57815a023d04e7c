import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { costWords as words } from '../../words/cost-words.ts';
import { nameOf } from '../../words/names.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import type { MissingFacts } from './cost-view.ts';

/** What has to be said before all is known, and where. */
export const CostMissing = ({ missing }: { missing: MissingFacts }) => {
  const { registers } = useShop();
  const { parts, stages, rate, prices } = missing;
  if (parts.length === 0 && stages.length === 0 && !rate && !prices) return null;
  return (
    <Panel title={words.missing} lead={words.missingLead} tone="warn" testId="cost-missing">
      {parts.length > 0 && (
        <p>{words.missingCosts(parts.map((id) => nameOf(registers, { register: 'part', id })).join(', '))}</p>
      )}
      {stages.length > 0 && (
        <p>
          {words.missingMinutes(stages.map((id) => nameOf(registers, { register: 'stage', id })).join(', '))}
        </p>
      )}
      {rate && <p>{words.missingRate}</p>}
      {prices && <p>{words.missingPrices}</p>}
      <div class="plan-acts">
        {parts.length > 0 && (
          <PressButton label={words.toParts} onAct={() => goTo('set-up', 'parts')} testId="cost-to-parts" />
        )}
        {rate && (
          <PressButton label={words.toRate} onAct={() => goTo('set-up', 'tablet')} testId="cost-to-rate" />
        )}
        {prices && (
          <PressButton
            label={words.toVariants}
            onAct={() => goTo('set-up', 'variants')}
            testId="cost-to-variants"
          />
        )}
      </div>
    </Panel>
  );
};
