/** Pieces that wait for hands at a stage. */
export interface BenchWork<Stage, Batch> {
  readonly stage: Stage;
  /** Along the route, from 0: a stage of several routes stands as far as it does on the longest. */
  readonly position: number;
  readonly pieces: number;
  /** Of hands for a piece; undefined while it is not known. */
  readonly minutesEach: number | undefined;
  /** The batch of those pieces that has least time to spare, in days: below 0 it will be late. null without a due day. */
  readonly tightest: { readonly batch: Batch; readonly daysToSpare: number } | null;
}

/** Clamps or a rack at a stage. */
export interface HoldWork<Stage> {
  readonly stage: Stage;
  readonly position: number;
  /** Pieces that have cured and are still in place. */
  readonly cured: number;
  /** Pieces wait for places, and those that have cured are in their way. */
  readonly placesWanted: boolean;
  /** Pieces that can be loaded today, and by when (ms UTC) they have to be in; null when there is nothing to load. */
  readonly load: { readonly pieces: number; readonly by: number; readonly more: number } | null;
}

export type WhyNext<Stage, Batch> =
  /** Cured pieces are in the way of others. */
  | { readonly kind: 'places-wanted' }
  | { readonly kind: 'places-free'; readonly by: number; readonly more: number }
  /** The stage that the whole batch waits for must not stand still. */
  | { readonly kind: 'bottleneck' }
  /** That stage soon has nothing to do: this one feeds it. */
  | { readonly kind: 'feeds'; readonly bottleneck: Stage; readonly minutesLeft: number }
  | { readonly kind: 'due-first'; readonly batch: Batch; readonly daysToSpare: number }
  /** What is furthest along is soonest sold. */
  | { readonly kind: 'furthest' };

export interface NextWork<Stage, Batch> {
  readonly stage: Stage;
  readonly what: 'unload' | 'load' | 'work';
  readonly pieces: number;
  readonly why: WhyNext<Stage, Batch>;
}

export interface NextQuestion<Stage, Batch> {
  readonly benches: readonly BenchWork<Stage, Batch>[];
  readonly holds: readonly HoldWork<Stage>[];
  /** The stage with most load for its capacity; null while it is not known. */
  readonly bottleneck: Stage | null;
}

/** A bottleneck with less work before it than this is fed first; a quarter of a day of work. */
const starvedBelowMinutes = 120;
/** A batch with fewer days to spare goes before what is furthest along. */
const tightBelowDays = 3;

/**
 * What to do next, the first first: clear places that are wanted; load those that are free, the most urgent first; keep the
 * bottleneck at work, and feed it before it stands still (E. M. Goldratt, The Goal, 1984: an hour lost there is lost for the
 * whole); then what is due, the least time to spare first; then what is furthest along the route. Each stage stands there
 * once for each thing to do, with its strongest reason.
 */
export function whatNext<Stage, Batch>(
  question: NextQuestion<Stage, Batch>,
): readonly NextWork<Stage, Batch>[] {
  const ranked = [...holdWork(question), ...benchWork(question)];
  return ranked
    .sort((a, b) => a.rank - b.rank || a.within - b.within || b.position - a.position)
    .map(({ work }) => work);
}

interface Ranked<Stage, Batch> {
  readonly work: NextWork<Stage, Batch>;
  readonly rank: number;
  /** Among those of a rank the smallest is first. */
  readonly within: number;
  readonly position: number;
}

/** In the order in which they count. */
const ranks = ['places-wanted', 'places-free', 'bottleneck', 'feeds', 'due-first', 'furthest'] as const;

function ranked<Stage, Batch>(
  work: NextWork<Stage, Batch>,
  { within, position }: { within: number; position: number },
): Ranked<Stage, Batch> {
  return { work, rank: ranks.indexOf(work.why.kind), within, position };
}

function* holdWork<Stage, Batch>({ holds }: NextQuestion<Stage, Batch>): Generator<Ranked<Stage, Batch>> {
  for (const { stage, position, cured, placesWanted, load } of holds) {
    if (cured > 0) {
      const why = placesWanted ? ({ kind: 'places-wanted' } as const) : ({ kind: 'furthest' } as const);
      yield ranked({ stage, what: 'unload', pieces: cured, why }, { within: 0, position });
    }
    if (load) {
      const why = { kind: 'places-free', by: load.by, more: load.more } as const;
      yield ranked({ stage, what: 'load', pieces: load.pieces, why }, { within: load.by, position });
    }
  }
}

function* benchWork<Stage, Batch>(question: NextQuestion<Stage, Batch>): Generator<Ranked<Stage, Batch>> {
  const feeding = feederOf(question);
  for (const bench of question.benches) {
    const { stage, pieces, position } = bench;
    if (pieces <= 0) continue;
    const why = whyOf(bench, { ...question, feeding });
    const within = why.kind === 'due-first' ? why.daysToSpare : 0;
    yield ranked({ stage, what: 'work', pieces, why }, { within, position });
  }
}

interface Feeding<Stage> {
  readonly feeder: Stage;
  readonly minutesLeft: number;
}

/** The nearest stage before a bottleneck with little left to do that has pieces for it. */
function feederOf<Stage, Batch>({
  benches,
  bottleneck,
}: NextQuestion<Stage, Batch>): Feeding<Stage> | undefined {
  const starving = benches.find(({ stage }) => stage === bottleneck);
  if (!starving || starving.minutesEach === undefined) return undefined;
  const minutesLeft = Math.max(0, starving.pieces) * starving.minutesEach;
  if (minutesLeft >= starvedBelowMinutes) return undefined;
  const before = benches.filter(({ pieces, position }) => pieces > 0 && position < starving.position);
  const [nearest] = before.sort((a, b) => b.position - a.position);
  return nearest && { feeder: nearest.stage, minutesLeft };
}

function whyOf<Stage, Batch>(
  { stage, tightest }: BenchWork<Stage, Batch>,
  { bottleneck, feeding }: NextQuestion<Stage, Batch> & { readonly feeding: Feeding<Stage> | undefined },
): WhyNext<Stage, Batch> {
  if (stage === bottleneck) return { kind: 'bottleneck' };
  if (bottleneck !== null && feeding?.feeder === stage) {
    return { kind: 'feeds', bottleneck, minutesLeft: feeding.minutesLeft };
  }
  return tightest && tightest.daysToSpare < tightBelowDays
    ? { kind: 'due-first', ...tightest }
    : { kind: 'furthest' };
}
