import { useEffect, useState } from 'preact/hooks';
import { type ForecastDoor, type ForecastState, openForecast } from '../../app/forecast.ts';
import type { ForecastQuestion } from '../../domain/plan/forecast/forecast.ts';

export interface UsedForecast {
  readonly state: ForecastState;
  /** The question is on its way to an answer. */
  readonly isBusy: boolean;
  /** The question was given up; what stands there is of another one, if anything does. */
  readonly isStopped: boolean;
  readonly again: () => void;
  readonly stop: () => void;
}

/** Asks for a forecast, and asks anew when it is handed another question; null asks nothing. */
export function useForecast(
  question: ForecastQuestion | null,
  open: () => ForecastDoor = openForecast,
): UsedForecast {
  const [door] = useState(open);
  const [stopped, setStopped] = useState<ForecastQuestion | null>(null);
  useEffect(() => () => door.close(), [door]);
  useEffect(() => {
    if (question) void door.ask(question);
    else door.cancel();
  }, [door, question]);
  const state = door.state.value;
  const isAsked = question !== null && state.last?.question !== question;
  const isStopped = isAsked && stopped === question;
  return {
    state,
    // Also in the moment before it is asked.
    isBusy: isAsked && !isStopped && state.kind !== 'failed',
    isStopped,
    again() {
      setStopped(null);
      if (question) void door.ask(question);
    },
    stop() {
      setStopped(question);
      door.cancel();
    },
  };
}
