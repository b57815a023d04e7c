import './mix.css';
import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../../domain/command/whole-number.ts';
import { readId, type StageId, stageId } from '../../../domain/log/ids.ts';
import { mostPieces } from '../../../domain/log/place.ts';
import { Field } from '../../../ui/field/field.tsx';
import { Icon } from '../../../ui/icon/icon.tsx';
import { EmptyState } from '../../../ui/notice/empty-state.tsx';
import { Notice } from '../../../ui/notice/notice.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { mixWords as words } from '../../../words/mix-words.ts';
import { address, goTo } from '../../parts/address.ts';
import { useShop } from '../../parts/app-context.ts';
import { AdhesivePanels } from './adhesive-panels.tsx';
import { FinishPanels } from './finish-panels.tsx';
import { type MixView, mixView } from './mix-view.ts';

/** How much is mixed for a round of a hold, and how long it can be worked. */
export const MixPage = () => {
  const shop = useShop();
  const stage = readId(stageId, address.value.rest[1]);
  const view = stage === null ? undefined : mixView(shop, stage);
  return (
    <main class="stages bench-margin mix" data-testid="mix-page">
      <header class="stages-head">
        <div>
          <h1>{words.title(view?.stage.name ?? '')}</h1>
          {view?.stage.mix && (
            <p class="mix-caution">
              <Icon name="warn" size={32} />
              {words.cautions}
            </p>
          )}
        </div>
        <PressButton
          size="bench-small"
          icon="back"
          label={words.back}
          onAct={() => goTo('bench', 'curing')}
          testId="mix-back"
        />
      </header>
      {view?.stage.mix && stage !== null ? (
        <Round key={stage} stage={stage} view={view} mix={view.stage.mix} />
      ) : (
        <EmptyState
          title={words.nothing}
          action={<PressButton tone="go" label={words.toSetUp} onAct={() => goTo('set-up', 'stages')} />}
        >
          {words.nothingDetail}
        </EmptyState>
      )}
    </main>
  );
};

interface RoundProps {
  readonly stage: StageId;
  readonly view: MixView;
  readonly mix: NonNullable<MixView['stage']['mix']>;
}

const Round = ({ stage, view, mix }: RoundProps) => {
  const [typed, setTyped] = useState(String(Math.max(1, view.pieces)));
  const read = readWholeNumber(typed, { least: 1, most: mostPieces });
  const { waiting, free, rounds } = view;
  return (
    <div class="mix-round">
      <div class="mix-asked">
        <Field
          label={words.pieces}
          hint={[
            ...(Number.isFinite(free) ? [words.free(free)] : []),
            ...(waiting > 0 ? [words.rounds(waiting, rounds.rounds, rounds.last)] : []),
          ].join(' ')}
          kind="number"
          value={typed}
          onText={setTyped}
          error={read.ok ? undefined : words.badPieces}
          testId="mix-pieces"
        />
        <PressButton
          size="bench-small"
          label={words.oneFewer}
          name={words.oneFewerName}
          onAct={() => read.ok && setTyped(String(Math.max(1, read.value - 1)))}
          testId="mix-fewer"
        />
        <PressButton
          size="bench-small"
          label={words.oneMore}
          name={words.oneMoreName}
          onAct={() => read.ok && setTyped(String(Math.min(mostPieces, read.value + 1)))}
          testId="mix-more"
        />
      </div>
      {read.ok &&
        (mix.kind === 'adhesive' ? (
          <AdhesivePanels stage={stage} mix={mix} pieces={read.value} />
        ) : (
          <FinishPanels mix={mix} pieces={read.value} />
        ))}
      <Notice tone="warn" title={words.cautions}>
        <p>{mix.kind === 'adhesive' ? words.glueCaution : words.finishCaution}</p>
        <p>{words.reckoned}</p>
      </Notice>
    </div>
  );
};
