import '../parts/form/form.css';
import { useState } from 'preact/hooks';
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
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { nameProblem } from '../parts/form/reading.ts';
import { useFirstError } from '../parts/form/use-first-error.ts';
import { LooseParts } from './loose-parts.tsx';
import {
  answersOf,
  type RouteDraft,
  rebased,
  routeDraftOf,
  routeRows,
  stagesToAdd,
  unanswered,
} from './route-draft.ts';
import { RouteRows } from './route-rows.tsx';

const kept = keptDrafts<RouteDraft>();

interface Refusal {
  readonly at: 'name' | 'route';
  readonly words: string;
}

/** The order of the stages of one route. Nothing moves until it is saved, and then no piece is without a place. */
export const RouteEdit = ({ id, now }: { id: RouteId; now: RouteFact | undefined }) => {
  const session = useSession();
  const shop = useShop();
  const { registers } = shop;
  const drafts = kept(session);
  const [typed, setTyped] = useState(drafts.get(id));
  const [failures, setFailures] = useState(0);
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const body = useFirstError(failures);
  const draft = typed ? rebased(typed, now) : routeDraftOf(now);
  const rows = routeRows(shop, { route: id, draft });
  const open = unanswered(rows);
  const stageName = (stage: StageId) => nameOf(registers, { register: 'stage', id: stage });
  const unsaved = typed !== undefined || open.length > 0;

  function keep(next: RouteDraft | undefined): void {
    drafts.keep(id, next);
    setTyped(next);
    setRefusal(null);
  }
  const change = (part: Partial<RouteDraft>) => keep({ ...draft, ...part });

  function fail(problem: Refusal | null): void {
    setRefusal(problem);
    setFailures((count) => count + 1);
  }

  async function save(): Promise<void> {
    const wrongName = nameProblem(draft.name);
    if (wrongName) return fail({ at: 'name', words: wrongName });
    if (open.length > 0) return fail(null);
    const { stages } = draft;
    const name = tidyText(draft.name);
    const destinations = answersOf(rows);
    const result = await session.act({ kind: 'change-route', route: id, name, stages, destinations });
    if (result.kind === 'saved') return keep(undefined);
    const at = result.problem.kind === 'same-name' ? 'name' : 'route';
    fail({ at, words: problemWords(result.problem, registers) });
  }

  return (
    <Panel title={now?.name ?? words.addRoute} lead={words.routeLead}>
      <div class="form-fields" ref={body}>
        <div class="set-up-bar">
          <div class="set-up-acts">
            <PressButton
              tone="go"
              icon="check"
              label={words.save}
              disabledReason={unsaved || !now ? undefined : words.saved}
              closing
              onAct={() => void save()}
              testId="route-save"
            />
            {typed && (
              <PressButton
                tone="quiet"
                icon="undo"
                label={words.asItWas}
                closing
                onAct={() => keep(undefined)}
                testId="route-restore"
              />
            )}
          </div>
          <p role="status" data-testid="route-state">
            {open.length > 0
              ? words.sayWhereAt(open.map(stageName).join(', '))
              : unsaved
                ? words.unsaved
                : ''}
          </p>
          {refusal?.at === 'route' && (
            <p role="alert" data-testid="route-refusal">
              {refusal.words}
            </p>
          )}
        </div>
        <NameField
          label={words.routeName}
          hint={usedBy(factsOf(registers, 'batch').filter(({ fact }) => fact.route === id && !fact.retired))}
          name={draft.name}
          onName={(name) => change({ name })}
          error={refusal?.at === 'name' ? refusal.words : undefined}
          testId="route-name"
        />
        <RouteRows rows={rows} draft={draft} onChange={change} askNow={failures > 0} />
        <ToAdd
          stages={stagesToAdd(registers, rows)}
          onAdd={(stage) => change({ stages: [...draft.stages, stage] })}
        />
        <LooseParts draft={draft} />
      </div>
    </Panel>
  );
};

function usedBy(batches: readonly { readonly fact: { readonly name: string } }[]): string {
  return batches.length === 0
    ? words.routeOfNone
    : words.routeOf(batches.map(({ fact }) => fact.name).join(', '));
}

interface ToAddProps {
  readonly stages: ReturnType<typeof stagesToAdd>;
  readonly onAdd: (stage: StageId) => void;
}

const ToAdd = ({ stages, onAdd }: ToAddProps) =>
  stages.length === 0 ? null : (
    <section class="set-up-bill">
      <h3>{words.addToRoute}</h3>
      <p>{words.addToRouteLead}</p>
      <ul class="set-up-rack">
        {stages.map(({ id, fact }) => (
          <li key={id}>
            <PressButton icon="plus" label={fact.name} onAct={() => onAdd(id)} testId={`route-add-${id}`} />
          </li>
        ))}
      </ul>
    </section>
  );
