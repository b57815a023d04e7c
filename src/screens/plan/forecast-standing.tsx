import type { Forecast } from '../../domain/plan/forecast/forecast.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { forecastWords as words } from '../../words/forecast-words.ts';
import { goTo } from '../parts/address.ts';
import type { UsedForecast } from './use-forecast.ts';

/** How far a forecast has come, with a way to stop it, and to ask again. */
export const ForecastStanding = ({ state, isStopped, again, stop }: Omit<UsedForecast, 'isBusy'>) => {
  if (state.kind === 'failed')
    return (
      <Notice
        tone="error"
        title={words.failed}
        actions={<PressButton icon="retry" label={words.again} onAct={again} testId="forecast-again" />}
        testId="forecast-failed"
      >
        {words.failedHelp}
      </Notice>
    );
  return (
    <div class="forecast-standing" data-testid="forecast-standing" data-state={state.kind}>
      {state.kind === 'working' && (
        <>
          <progress
            value={state.done}
            max={Math.max(1, state.of)}
            aria-label={words.working(state.done, state.of)}
          />
          <p>{words.working(state.done, state.of)}</p>
          <PressButton icon="cross" label={words.stop} onAct={stop} testId="forecast-stop" />
        </>
      )}
      {isStopped && (
        <>
          <p role="status">{state.last ? words.stoppedOld : words.stopped}</p>
          <PressButton tone="go" icon="retry" label={words.reckon} onAct={again} testId="forecast-again" />
        </>
      )}
    </div>
  );
};

type Why = Exclude<Forecast['kind'], 'forecast'> | 'no-history' | 'nothing';

const mending: Readonly<Record<Why, () => void>> = {
  'no-history': () => goTo('bench'),
  nothing: () => goTo('trays', 'new'),
  'no-hands': () => goTo('set-up', 'people'),
  'capacity-zero': () => goTo('set-up', 'resources'),
  'never-done': () => goTo('set-up', 'people'),
};

/** Why there is no forecast, and the way to where that is mended. */
export const CannotForecast = ({ why }: { why: Why }) => {
  const { title, help, act } = words.cannot[why];
  return (
    <Notice
      tone="warn"
      title={title}
      actions={<PressButton label={act} onAct={mending[why]} testId="forecast-mend" />}
      testId={`forecast-cannot-${why}`}
    >
      {help}
    </Notice>
  );
};
