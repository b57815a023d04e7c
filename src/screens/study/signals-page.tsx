import { useEffect, useState } from 'preact/hooks';
import { type MarkId, markId, readId } from '../../domain/log/ids.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { nameOfSeries, type SeriesName } from '../../domain/study/signal-series.ts';
import type { StudySignals } from '../../domain/study/study-signals.ts';
import { signalsWords as words } from '../../words/signals-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { LookAtPanel } from './look-at-panel.tsx';
import type { MarkStart } from './mark-draft.ts';
import { MarkSheet } from './mark-sheet.tsx';
import { MarksPanel } from './marks-panel.tsx';
import { SeriesSheet } from './series-sheet.tsx';
import { SignalsPanel } from './signals-panel.tsx';
import type { PageProps } from './study-page-props.ts';

/** The sheet of a mark that lies open: a known one, or a new one with what it begins with. */
interface OpenMark {
  readonly id: MarkId;
  readonly begins: MarkStart | null;
}

/** What has changed, what was done about it, and the chart of every rate. */
export const SignalsPage = ({ study, questions, asked, ask }: PageProps) => {
  const session = useSession();
  const { registers } = useShop();
  const [mark, setMark] = useState<OpenMark | null>(null);
  const begin = (begins: MarkStart) => {
    const id = readId(markId, session.newId());
    if (id) setMark({ id, begins });
  };
  const show = (charted: SeriesName) => ask({ charted });
  // Who comes back finds the list, and not a chart over it.
  useEffect(() => () => ask({ charted: null }), [ask]);
  const open = mark && (mark.begins ?? factOf(registers, { register: 'mark', id: mark.id }));
  return (
    <>
      <SignalsPanel found={study.signals} onChart={show} onAnswer={begin} />
      <MarksPanel
        onAdd={() => begin({ stage: undefined, species: null, answers: null })}
        onPick={(id) => setMark({ id, begins: null })}
      />
      <LookAtPanel onShow={show} route={questions.routes.stages} />
      {asked.charted && (
        <SeriesSheet
          name={asked.charted}
          series={questions.charted === asked.charted ? study.charted : undefined}
          changed={changeOf(asked.charted, study.signals)}
          onClose={() => ask({ charted: null })}
        />
      )}
      {mark && open && (
        <MarkSheet
          key={mark.id}
          id={mark.id}
          title={mark.begins === null ? words.editMark : open.answers ? words.answerTitle : words.addMark}
          mark={open}
          onClose={() => setMark(null)}
        />
      )}
    </>
  );
};

/** When a series has changed by a signal of the list, ms UTC. */
function changeOf(name: SeriesName, { signals }: StudySignals): number | undefined {
  const found = signals.find(({ series }) => nameOfSeries(series) === nameOfSeries(name));
  return found?.series.trays[found.since]?.from;
}
