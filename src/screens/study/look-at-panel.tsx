import { useState } from 'preact/hooks';
import { readId, reasonId, type StageId, speciesId, stageId } from '../../domain/log/ids.ts';
import { factOf, factsOf } from '../../domain/shop/registers.ts';
import type { SeriesName } from '../../domain/study/signal-series.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { signalsWords as words } from '../../words/signals-words.ts';
import { useShop } from '../parts/app-context.ts';

const allWoods = 'all';
const scrap = 'scrap';

/** Leads to the chart of any rate, whether it has changed or not. */
export const LookAtPanel = ({
  route,
  onShow,
}: {
  route: readonly StageId[];
  onShow: (name: SeriesName) => void;
}) => {
  const { registers } = useShop();
  const [stage, setStage] = useState(route[0]);
  const [wood, setWood] = useState<string>(allWoods);
  const [what, setWhat] = useState<string>(scrap);
  const reasons = (stage && factOf(registers, { register: 'stage', id: stage })?.reasons) || [];
  const counted = reasons.some((each) => each === what) ? what : scrap;
  const show = () => {
    if (!stage) return;
    const reason = counted === scrap ? null : readId(reasonId, counted);
    onShow({
      stage,
      species: wood === allWoods ? null : readId(speciesId, wood),
      of: reason ? { kind: 'reason', reason } : { kind: 'scrap' },
    });
  };
  return (
    <div class="study-unprinted">
      <Panel title={words.lookAt} lead={words.lookAtLead} testId="look-at">
        <div class="study-filter">
          <SelectField
            label={words.stage}
            options={route.map((id) => ({ value: id, label: nameOf(registers, { register: 'stage', id }) }))}
            value={stage}
            onChoose={(id) => setStage(readId(stageId, id) ?? undefined)}
            testId="look-stage"
          />
          <SelectField
            label={words.wood}
            options={[
              { value: allWoods, label: words.allWoods },
              ...factsOf(registers, 'species').map(({ id, fact }) => ({ value: id, label: fact.name })),
            ]}
            value={wood}
            onChoose={setWood}
            testId="look-species"
          />
          <SelectField
            label={words.what}
            options={[
              { value: scrap, label: words.scrap },
              ...reasons.map((id) => ({ value: id, label: nameOf(registers, { register: 'reason', id }) })),
            ]}
            value={counted}
            onChoose={setWhat}
            testId="look-what"
          />
        </div>
        <div class="study-acts">
          <PressButton icon="yield" label={words.show} onAct={show} testId="look-show" />
        </div>
      </Panel>
    </div>
  );
};
