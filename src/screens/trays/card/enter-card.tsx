import './card.css';
import { useState } from 'preact/hooks';
import type { ShopEvent } from '../../../domain/log/event.ts';
import type { TrayId } from '../../../domain/log/ids.ts';
import type { TrayRecord } from '../../../domain/shop/trays.ts';
import { EmptyState } from '../../../ui/notice/empty-state.tsx';
import { Notice } from '../../../ui/notice/notice.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { cardWords as words } from '../../../words/card-words.ts';
import { problemWords } from '../../../words/problem-words.ts';
import { traysWords } from '../../../words/trays-words.ts';
import { goTo } from '../../parts/address.ts';
import { useSession, useShop } from '../../parts/app-context.ts';
import { keptDrafts } from '../../parts/form/kept-drafts.ts';
import { type CardDraft, emptyStage, type LineKey, readCard } from './card-draft.ts';
import { cardStages, salvageAt } from './card-lines.ts';
import { CardStageForm } from './card-stage-form.tsx';

/** What is typed of the card of a tray stays until it is entered, also when the page is left. */
const kept = keptDrafts<CardDraft>();

/** A pencilled route card typed in: all of it becomes one act, or none of it. */
export const EnterCard = ({ id }: { id: TrayId }) => {
  const tray = useShop().trays.get(id);
  if (tray) return <CardForm tray={tray} />;
  return (
    <main class="trays">
      <EmptyState
        title={traysWords.goneTitle}
        action={<PressButton icon="back" label={traysWords.toTrays} onAct={() => goTo('trays')} />}
      >
        {traysWords.goneHelp}
      </EmptyState>
    </main>
  );
};

type Said =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'wrong'; readonly at: ReadonlyMap<LineKey, string>; readonly all: string | null }
  | { readonly kind: 'entered'; readonly events: readonly ShopEvent[] }
  | { readonly kind: 'taken-back' }
  | { readonly kind: 'not-taken-back'; readonly why: string };

const CardForm = ({ tray }: { tray: TrayRecord }) => {
  const session = useSession();
  const shop = useShop();
  const drafts = kept(session);
  const [draft, setDraft] = useState<CardDraft>(() => drafts.get(tray.tray) ?? new Map());
  const [said, setSaid] = useState<Said>({ kind: 'nothing' });
  const stages = cardStages(shop, tray);
  const keep = (next: CardDraft) => {
    drafts.keep(tray.tray, next.size === 0 ? undefined : next);
    setDraft(next);
    setSaid({ kind: 'nothing' });
  };
  const enter = async () => {
    const heldAt = (stage: TrayStage) => salvageAt(shop, { tray, stage });
    const read = readCard(draft, { route: stages.map(({ stage }) => stage), heldAt });
    if (!read.ok) return setSaid({ kind: 'wrong', at: read.problems, all: null });
    const result = await session.act({ kind: 'enter-card', tray: tray.tray, lines: read.lines });
    if (result.kind === 'saved') {
      keep(new Map());
      return setSaid({ kind: 'entered', events: result.events });
    }
    const { problem } = result;
    const why = problemWords(problem, shop.registers);
    const key = problem.kind === 'card-line' ? read.keys[problem.line] : undefined;
    setSaid({ kind: 'wrong', at: new Map(key ? [[key, why]] : []), all: key ? null : why });
  };
  // The very entries of the card: another window may have tapped since.
  const takeBack = async (entered: readonly ShopEvent[]) => {
    const result = await session.act({ kind: 'undo', events: entered.filter((event) => 'of' in event) });
    setSaid(
      result.kind === 'saved'
        ? { kind: 'taken-back' }
        : { kind: 'not-taken-back', why: problemWords(result.problem, shop.registers) },
    );
  };
  return (
    <main class="trays">
      <header class="trays-head">
        <div>
          <h1>{words.title(tray.code)}</h1>
          <p>{words.lead}</p>
        </div>
        <PressButton
          icon="back"
          label={words.back}
          onAct={() => goTo('trays', tray.tray)}
          testId="card-back"
        />
      </header>
      {stages.length === 0 && <Notice tone="warn" title={words.noRoute} />}
      <ol class="card-stages">
        {stages.map((each) => (
          <CardStageForm
            key={each.stage}
            at={each}
            draft={draft.get(each.stage) ?? emptyStage}
            onDraft={(next) => keep(new Map(draft).set(each.stage, next))}
            problems={said.kind === 'wrong' ? said.at : new Map()}
          />
        ))}
      </ol>
      <Outcome said={said} onUndo={(entered) => void takeBack(entered)} />
      <div class="trays-acts">
        <PressButton
          size="bench-small"
          tone="go"
          icon="check"
          label={words.save}
          closing
          onAct={() => void enter()}
          testId="card-enter"
        />
      </div>
    </main>
  );
};

type TrayStage = Parameters<typeof salvageAt>[1]['stage'];

/** What came of entering: all of the card is in the log, or none of it. */
const Outcome = ({ said, onUndo }: { said: Said; onUndo: (entered: readonly ShopEvent[]) => void }) => {
  switch (said.kind) {
    case 'nothing':
      return null;
    case 'wrong':
      return (
        <Notice tone="error" title={said.all ?? words.nothingEntered} testId="card-refused">
          {said.all && words.nothingEntered}
        </Notice>
      );
    case 'entered':
      return (
        <Notice
          tone="saved"
          title={words.done}
          testId="card-entered"
          actions={
            <PressButton
              icon="undo"
              label={words.undo}
              onAct={() => onUndo(said.events)}
              testId="card-undo"
            />
          }
        >
          {words.doneDetail(said.events.length)}
        </Notice>
      );
    case 'not-taken-back':
      return <Notice tone="error" title={said.why} testId="card-not-undone" />;
    case 'taken-back':
      return <Notice tone="info" title={words.undone} testId="card-undone" />;
  }
};
