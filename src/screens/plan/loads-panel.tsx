import type { ConstraintStudy, LoadName } from '../../domain/plan/constraint/constraint-study.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { constraintWords as words } from '../../words/constraint-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import type { ConstraintNames } from './constraint-names.ts';
import { constraintOf, type Load, mostOfHands } from './constraint-view.ts';
import { minutesOfWeek, shopHours } from './targets-view.ts';

export interface LoadsPanelProps {
  readonly study: ConstraintStudy;
  /** Of the batch that is chosen. */
  readonly due: string | null;
  readonly names: ConstraintNames;
  readonly onPick: (name: LoadName) => void;
}

/** Hands, clamps and racks by how loaded they are, and the first of them in words. */
export const LoadsPanel = ({ study, due, names, onPick }: LoadsPanelProps) => {
  const first = constraintOf(study);
  return (
    <Panel
      title={words.loads}
      lead={words.loadsLead}
      tone={first && first.ratio > 1 ? 'warn' : 'plain'}
      actions={<Means label={studyWords.means}>{words.loadsMeans}</Means>}
      testId="constraint-loads"
    >
      {study.loads === null ? (
        <NothingToHold due={due} />
      ) : (
        <>
          <p class="plan-answer" data-testid="constraint-said">
            {saidOf(study, names)}
          </p>
          <DataTable
            caption={words.loads}
            captionUnseen
            columns={columnsOf(names)}
            rows={study.loads.filter(({ wanted, unknown }) => wanted > 0 || unknown.length > 0)}
            rowKey={({ resource }) => resource}
            onPick={({ resource }) => onPick(resource)}
            rowTone={({ ratio }) => (ratio > 1 ? 'warn' : undefined)}
            empty={words.nothing}
          />
        </>
      )}
    </Panel>
  );
};

const NothingToHold = ({ due }: { due: string | null }) => {
  const today = useSession().today();
  const hasHours = minutesOfWeek(shopHours(useShop().registers), today) !== undefined;
  return (
    <div class="plan-acts">
      <p data-testid="constraint-nothing">
        {due === null ? words.noDue : hasHours ? words.tooFar : words.noHours}
      </p>
      {due === null ? (
        <PressButton label={words.toTargets} onAct={() => goTo('plan')} testId="constraint-to-targets" />
      ) : (
        !hasHours && (
          <PressButton
            icon="person"
            label={words.toPeople}
            onAct={() => goTo('set-up', 'people')}
            testId="constraint-to-people"
          />
        )
      )}
    </div>
  );
};

function saidOf(study: ConstraintStudy, names: ConstraintNames): string {
  const first = constraintOf(study);
  if (!first)
    return study.loads?.some(({ unknown }) => unknown.length > 0) ? words.fitsUnknown : words.nothing;
  const name = names.resource(first.resource);
  if (first.ratio === Number.POSITIVE_INFINITY) return words.noTimeFirst(name);
  const load = words.percent(first.ratio);
  const most = first.resource === 'hands' ? mostOfHands(study) : undefined;
  const said = [
    words.most(name, load, first.ratio > 1),
    ...(most
      ? [words.mostAt(names.stage(most.resource.replace('hands/', '')), words.percent(most.ratio))]
      : []),
  ].join(' ');
  const isPartly = study.loads?.some(({ unknown }) => unknown.length > 0) ?? false;
  return `${said} ${first.ratio > 1 ? words.fitsNot : isPartly ? words.fitsUnknown : words.fits}`;
}

function columnsOf(names: ConstraintNames): readonly Column<Load>[] {
  const orMore = ({ unknown }: Load, text: string) => (unknown.length > 0 ? words.atLeast(text) : text);
  return [
    { key: 'resource', head: words.resource, cell: ({ resource }) => names.resource(resource) },
    {
      key: 'wanted',
      head: words.wanted,
      numeric: true,
      cell: (load) =>
        load.wanted === 0 ? words.notKnown : orMore(load, words.timeOf(load.resource, load.wanted)),
    },
    {
      key: 'available',
      head: words.available,
      numeric: true,
      cell: (load) => words.timeOf(load.resource, load.available),
    },
    {
      key: 'load',
      head: words.load,
      numeric: true,
      cell: (load) => (
        <b data-testid={`load-${load.resource}`}>
          {load.wanted === 0 ? words.notKnown : orMore(load, words.percent(load.ratio))}
        </b>
      ),
    },
  ];
}
