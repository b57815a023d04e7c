import { useEffect, useState } from 'preact/hooks';
import { type ForecastDoor, type ForecastState, openForecast } from '../../app/forecast.ts';
import type { ForecastQuestion } from '../../domain/plan/forecast/forecast.ts';

export interface UsedForecast {
  readonly state: ForecastState;
  readonly again: () => void;
  readonly stop: () => void;
}

/** Asks for a forecast, and asks anew when it is handed another question; null asks nothing. */
export function useForecast(
  question: ForecastQuestion | null,
  open: () => ForecastDoor = openForecast,
): UsedForecast {
  const [door] = useState(open);
  useEffect(() => () => door.close(), [door]);
  useEffect(() => {
    if (question) void door.ask(question);
    else door.cancel();
  }, [door, question]);
  return {
    state: door.state.value,
    again: () => question && void door.ask(question),
    stop: door.cancel,
  };
}
