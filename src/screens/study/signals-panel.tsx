import { nameOfSeries, type SeriesName } from '../../domain/study/signal-series.ts';
import type { StudySignal, StudySignals } from '../../domain/study/study-signals.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { sinceWords } from '../../words/date-words.ts';
import { signalsWords as words } from '../../words/signals-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import type { MarkStart } from './mark-draft.ts';
import { seriesInWords } from './series-name.ts';

interface SignalsPanelProps {
  found: StudySignals;
  onChart: (name: SeriesName) => void;
  onAnswer: (begins: MarkStart) => void;
}

/** The rates that have changed, the strangest first, and how seldom that is said in vain. */
export const SignalsPanel = ({ found, onChart, onAnswer }: SignalsPanelProps) => (
  <Panel
    title={words.list}
    tone={found.signals.length > 0 ? 'warn' : 'plain'}
    actions={<Means label={studyWords.means}>{words.watchedMeans}</Means>}
    testId="signals"
  >
    {found.signals.length === 0 && (
      <p class="study-verdict" data-testid="no-signals">
        {words.none}
      </p>
    )}
    <ul class="study-bars">
      {found.signals.map((signal, place) => (
        <li key={nameOfSeries(signal.series)}>
          <Signal signal={signal} place={place} onChart={onChart} onAnswer={onAnswer} />
        </li>
      ))}
    </ul>
    <p class="study-note">
      {found.watched === 0 ? words.tooFew : words.watched(found.watched, found.falseAlarm)}
    </p>
  </Panel>
);

const Signal = ({
  signal,
  place,
  onChart,
  onAnswer,
}: Omit<SignalsPanelProps, 'found'> & { signal: StudySignal; place: number }) => {
  const session = useSession();
  const { registers } = useShop();
  const { series, since, before, after, expected, adjustedP, direction } = signal;
  const { stage, species, of, trays } = series;
  const title = seriesInWords(series, registers);
  const at = trays[since]?.from ?? 0;
  const when = sinceWords(at, { zone: session.zone(), now: session.now() });
  return (
    <article class="study-signal" data-tone={direction} data-testid={`signal-${place}`}>
      <h3>
        {title}: <em>{words[direction]}</em>
      </h3>
      <p class="study-verdict figures">{words.counts({ before, after, when })}</p>
      <div class="study-line">
        <p>{words.expected(expected, before.flawed + after.flawed)}</p>
        <Means label={studyWords.means}>{words.means(adjustedP)}</Means>
      </div>
      <div class="study-acts">
        <PressButton
          icon="yield"
          label={words.showChart}
          name={words.chartName(title)}
          onAct={() => onChart({ stage, species, of })}
          testId={`signal-${place}-chart`}
        />
        <PressButton
          tone="go"
          icon="pencil"
          label={words.answer}
          name={words.answerName(title)}
          onAct={() => onAnswer({ stage, species, answers: { of, since: at } })}
          testId={`signal-${place}-answer`}
        />
      </div>
    </article>
  );
};
