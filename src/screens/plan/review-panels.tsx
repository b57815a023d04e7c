import type { PlanStudy } from '../../domain/plan/plan-study.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { reviewWords as words } from '../../words/review-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useSession } from '../parts/app-context.ts';
import { PrintRoot } from '../parts/print/print-root.tsx';
import { FitsPanel } from './fits-panel.tsx';
import { ReviewSheet } from './review-sheet.tsx';
import {
  behindTable,
  compareTable,
  lossesTable,
  nextTable,
  plannedTable,
  type ReviewNames,
} from './review-tables.ts';
import { largestLosses, mostReviewed, nextRows, type Outcome } from './review-view.ts';
import { WordDataTable } from './word-table.tsx';

/** In mm. */
const paper = { width: 210, height: 297 };
const margin = 12;

export interface ReviewPanelsProps {
  readonly outcome: Outcome;
  readonly outcomes: readonly Outcome[];
  readonly study: PlanStudy;
  readonly names: ReviewNames;
}

/** The chosen batch, the one after it, and all of them; the same on paper. */
export const ReviewPanels = ({ outcome, outcomes, study, names }: ReviewPanelsProps) => {
  const session = useSession();
  const { registers } = session.view.value.shop;
  const { target, review, flying, made } = outcome;
  const losses = largestLosses(review);
  const rows = nextRows(target, study);
  const planned = plannedTable(outcome, factOf(registers, { register: 'batch', id: target.batch })?.plan);
  const lost = lossesTable(losses, names);
  const next = nextTable(rows, names);
  const compared = compareTable(outcomes, names);
  const unknown = losses.unknown > 0 ? [words.lossesUnknown(losses.unknown)] : [];
  return (
    <>
      <Panel
        title={words.planned}
        lead={words.plannedLead(flying === 0 && made > 0)}
        actions={<Means label={studyWords.means}>{words.plannedMeans}</Means>}
        testId="review-planned"
      >
        <WordDataTable table={planned} testId="planned" />
      </Panel>
      <Panel title={words.losses} lead={words.lossesLead[losses.by]} testId="review-losses">
        <WordDataTable table={lost} testId="losses" />
        {unknown.map((line) => (
          <p key={line} class="plan-note">
            {line}
          </p>
        ))}
      </Panel>
      <Panel
        title={words.next}
        lead={words.nextLead}
        actions={<Means label={studyWords.means}>{words.nextMeans}</Means>}
        testId="review-next"
      >
        <WordDataTable table={next} testId="next" />
        <Disclosure summary={words.behind} testId="review-behind">
          <WordDataTable table={behindTable(rows, names)} testId="behind" />
        </Disclosure>
      </Panel>
      <FitsPanel key={target.batch} rows={rows} chosen={target} times={study.times} names={names} />
      <Panel title={words.compare} lead={words.compareLead} testId="review-compare">
        <WordDataTable table={compared} testId="compare" />
        {outcomes.length === mostReviewed && <p class="plan-note">{words.mostBatches(mostReviewed)}</p>}
      </Panel>
      <PrintRoot page={paper} margin={margin}>
        <ReviewSheet
          title={words.printed(names.batch(target.batch), session.today())}
          tables={[planned, lost, next, compared]}
          notes={unknown}
        />
      </PrintRoot>
    </>
  );
};
