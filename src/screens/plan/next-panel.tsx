import type { BatchId, StageId } from '../../domain/log/ids.ts';
import type { NextWork } from '../../domain/plan/next/what-next.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { studyWords } from '../../words/study-words.ts';
import { nextWords, whyWords, todayWords as words } from '../../words/today-words.ts';
import { goTo } from '../parts/address.ts';
import { useTodayNames } from './today-names.ts';

export interface NextPanelProps {
  readonly next: readonly NextWork<StageId, BatchId>[];
  /** The usual stage of this tablet. */
  readonly mine: StageId | null;
  readonly now: number;
}

const icons = { unload: 'export', load: 'hold', work: 'bench' } as const;

/** What there is to do, the most urgent first, each with its reason. */
export const NextPanel = ({ next, mine, now }: NextPanelProps) => {
  const names = useTodayNames(now);
  return (
    <Panel
      title={words.next}
      lead={words.nextLead}
      actions={<Means label={studyWords.means}>{words.nextMeans}</Means>}
      testId="next"
    >
      {next.length === 0 && <p>{words.nothing}</p>}
      <ol class="plan-next">
        {next.map((work) => (
          <li key={`${work.what} ${work.stage}`}>
            <PressButton
              icon={icons[work.what]}
              tone={work === next[0] ? 'go' : 'plain'}
              label={nextWords(work, names)}
              detail={[whyWords(work.why, names), work.stage === mine ? words.here : '']
                .filter(Boolean)
                .join(' · ')}
              onAct={() => (work.what === 'unload' ? goTo('bench', 'curing') : goTo('bench', work.stage))}
              testId={`next-${work.what}-${work.stage}`}
            />
          </li>
        ))}
      </ol>
    </Panel>
  );
};
