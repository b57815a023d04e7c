import { useState } from 'preact/hooks';
import type { LotId } from '../../domain/log/ids.ts';
import { moistureBounds } from '../../domain/log/moisture-facts.ts';
import type { Reading } from '../../domain/rollup/lot-moisture.ts';
import type { LotFact } from '../../domain/set-up/facts.ts';
import { Field } from '../../ui/field/field.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { moistureWords as words } from '../../words/moisture-words.ts';
import { problemWords } from '../../words/problem-words.ts';
import { ago } from '../../words/time-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { readTenths } from '../parts/form/tenths.ts';
import { useNow } from '../parts/use-now.ts';
import { WoodName } from '../parts/wood-name.tsx';
import type { LotVerdict } from './wood-view.ts';

export interface LotCardProps {
  readonly id: LotId;
  readonly fact: LotFact;
  /** The oldest first. */
  readonly readings: readonly Reading[];
  readonly verdict: LotVerdict;
  /** 1/100 mm. */
  readonly diameter: number;
  /** What is kept with a reading: the air of the room in tenths; null while it is not said. */
  readonly air: { readonly celsius: number; readonly humidity: number } | null;
}

const shownBefore = 5;

/** One lot: its wood, its readings, what they mean, and where the next one is typed. */
export const LotCard = ({ id, fact, readings, verdict, diameter, air }: LotCardProps) => {
  const session = useSession();
  const { registers } = useShop();
  const now = useNow();
  const [typed, setTyped] = useState('');
  const [error, setError] = useState<string>();
  const last = readings.at(-1);
  const before = readings.slice(-1 - shownBefore, -1);
  const { title, text, tone } = verdictWords(verdict, diameter);

  async function read(): Promise<void> {
    const percent = readTenths(typed, moistureBounds);
    if (percent === null) return setError(words.badReading);
    const result = await session.act({ kind: 'read-moisture', lot: id, percent, air });
    if (result.kind === 'refused') return setError(problemWords(result.problem, registers));
    setError(undefined);
    setTyped('');
  }

  return (
    <Panel title={fact.name} level={3} tone={tone} testId={`lot-${id}`}>
      <p class="wood-lot-what">
        <WoodName species={fact.species} />
        <b data-testid={`lot-last-${id}`}>
          {last ? words.last(last.percent, ago(last.at, now)) : words.noReading}
        </b>
        {before.length > 0 && <span>{words.series(before.map(({ percent }) => percent))}</span>}
      </p>
      <p role="status" data-testid={`lot-verdict-${id}`} data-verdict={verdict.kind}>
        {title && <b>{`${title} `}</b>}
        {text}
      </p>
      <div class="wood-lot-read">
        <Field
          label={words.reading}
          kind="number"
          unit="%"
          value={typed}
          onText={setTyped}
          onEnter={() => void read()}
          error={error}
          testId={`lot-reading-${id}`}
        />
        <PressButton
          tone="go"
          icon="check"
          label={words.read}
          name={`${words.read}: ${fact.name}`}
          onAct={() => void read()}
          testId={`lot-read-${id}`}
        />
      </div>
      <div class="wood-lot-aside">
        {last && (
          <PressButton
            tone="quiet"
            icon="undo"
            label={words.takeBack}
            name={`${words.takeBack}: ${fact.name}`}
            onAct={() => void session.act({ kind: 'undo', events: [last.event] })}
            testId={`lot-take-back-${id}`}
          />
        )}
        <PressButton
          tone="quiet"
          label={words.putAway}
          name={`${words.putAway}: ${fact.name}`}
          onAct={() =>
            void session.act({ kind: 'set', set: { register: 'lot', id, value: { ...fact, retired: true } } })
          }
          testId={`lot-put-away-${id}`}
        />
      </div>
    </Panel>
  );
};

interface Said {
  readonly title: string;
  readonly text: string;
  readonly tone: 'plain' | 'saved' | 'warn';
}

function verdictWords(verdict: LotVerdict, diameter: number): Said {
  switch (verdict.kind) {
    case 'ready':
      return { title: words.ready, text: words.readyGap(verdict.gap, diameter), tone: 'saved' };
    case 'too-wet':
      return { title: words.tooWet, text: words.tooWetGap(verdict.gap, diameter), tone: 'warn' };
    case 'too-dry':
      return { title: words.tooDry, text: words.tooDryGrowth(verdict.growth, diameter), tone: 'warn' };
    case 'not-known':
      return { title: words.notKnown, text: words.notKnownBy(verdict.above), tone: 'plain' };
    default:
      return { title: '', text: words.verdicts[verdict.kind], tone: 'plain' };
  }
}
