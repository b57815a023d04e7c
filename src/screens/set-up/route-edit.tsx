import { useState } from 'preact/hooks';
import { stagesToAskAbout } from '../../domain/command/decide-set-up.ts';
import type { RouteId, StageId } from '../../domain/log/ids.ts';
import type { RouteFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { problemWords } from '../../words/problem-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { NameField } from './name-field.tsx';
import { moved, piecesByStage } from './route-order.ts';
import { WhereTo } from './where-to.tsx';

/** One route: the order of its stages, and where pieces go that a new order would strand. */
export const RouteEdit = ({ id, now }: { id: RouteId; now: RouteFact | undefined }) => {
  const session = useSession();
  const shop = useShop();
  const [name, setName] = useState(now?.name ?? '');
  const [stages, setStages] = useState<readonly StageId[]>(now?.stages ?? []);
  const [destinations, setDestinations] = useState<ReadonlyMap<StageId, StageId>>(new Map());
  const [refusal, setRefusal] = useState<{ readonly at: 'name' | 'route'; readonly words: string } | null>(
    null,
  );
  const asked = stagesToAskAbout(shop, { route: id, stages });
  const changed = name !== (now?.name ?? '') || stages.join() !== (now?.stages ?? []).join();
  const counts = piecesByStage(shop);
  const stageName = (stage: StageId) => nameOf(shop.registers, { register: 'stage', id: stage });
  const others = factsOf(shop.registers, 'stage').filter(
    (entry) => !entry.fact.retired && !stages.includes(entry.id),
  );
  const save = async () => {
    const result = await session.act({
      kind: 'change-route',
      route: id,
      name: tidyText(name),
      stages,
      destinations,
    });
    if (result.kind === 'saved') return setRefusal(null);
    const { problem } = result;
    const at = problem.kind === 'text' || problem.kind === 'same-name' ? 'name' : 'route';
    setRefusal({ at, words: problemWords(problem, shop.registers) });
  };
  return (
    <Panel title={words.route} lead={words.routeLead}>
      <NameField
        label={words.routeName}
        name={name}
        onName={setName}
        error={refusal?.at === 'name' ? refusal.words : undefined}
        testId="route-name"
      />
      <ol class="set-up-route">
        {stages.map((stage, place) => (
          <li key={stage}>
            <span class="set-up-stage">
              <b class="figures">{place + 1}</b> {stageName(stage)}
              <span>{words.here(counts.get(stage) ?? 0)}</span>
            </span>
            <PressButton
              label={words.up}
              name={`${words.up}: ${stageName(stage)}`}
              icon="up"
              onAct={() => setStages(moved(stages, { stage, by: -1 }))}
              testId={`route-up-${stage}`}
            />
            <PressButton
              label={words.down}
              name={`${words.down}: ${stageName(stage)}`}
              icon="down"
              onAct={() => setStages(moved(stages, { stage, by: 1 }))}
              testId={`route-down-${stage}`}
            />
            <PressButton
              label={words.remove}
              name={`${words.remove}: ${stageName(stage)}`}
              tone="quiet"
              onAct={() => setStages(stages.filter((each) => each !== stage))}
              testId={`route-remove-${stage}`}
            />
          </li>
        ))}
      </ol>
      {others.length > 0 && (
        <ul class="set-up-rack">
          {others.map(({ id: stage, fact }) => (
            <li key={stage}>
              <PressButton
                icon="plus"
                label={fact.name}
                detail={words.addToRoute}
                onAct={() => setStages([...stages, stage])}
                testId={`route-add-${stage}`}
              />
            </li>
          ))}
        </ul>
      )}
      {changed && asked.length > 0 && (
        <WhereTo
          asked={asked}
          stages={stages}
          destinations={destinations}
          onChoose={(from, to) => setDestinations(new Map([...destinations, [from, to]]))}
        />
      )}
      {refusal?.at === 'route' && (
        <p role="alert" data-testid="route-refusal">
          {refusal.words}
        </p>
      )}
      <div class="set-up-acts">
        <PressButton
          tone="go"
          icon="check"
          label={words.saveRoute}
          disabledReason={changed ? undefined : words.routeSaved}
          closing
          onAct={() => void save()}
          testId="route-save"
        />
        {changed && (
          <PressButton
            tone="quiet"
            icon="undo"
            label={words.undoChanges}
            onAct={() => {
              setStages(now?.stages ?? []);
              setName(now?.name ?? '');
            }}
          />
        )}
      </div>
    </Panel>
  );
};
