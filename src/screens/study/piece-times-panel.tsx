import { useState } from 'preact/hooks';
import type { StageId } from '../../domain/log/ids.ts';
import type { PieceTime } from '../../domain/statistics/minutes-per-piece.ts';
import type { StageTime } from '../../domain/study/piece-times.ts';
import { HeatTable } from '../../ui/chart/heat-table.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import type { PictureTable } from '../../ui/picture/picture.ts';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { nameOf } from '../../words/names.ts';
import { studyWords } from '../../words/study-words.ts';
import { timeStudyWords as words } from '../../words/time-study-words.ts';
import { useShop } from '../parts/app-context.ts';
import { SavePicture } from '../parts/picture/save-picture.tsx';
import { timeGrid } from './time-view.ts';

/** Minutes per piece, stage by stage and wood by wood. */
export const PieceTimesPanel = ({
  times,
  route,
}: {
  times: readonly StageTime[];
  route: readonly StageId[];
}) => {
  const { registers } = useShop();
  const [picked, setPicked] = useState<StageTime | null>(null);
  const { lines, woods, timeAt, most } = timeGrid(times, route);
  const woodName = (id: string) => nameOf(registers, { register: 'species', id });
  const lineName = ({ stage, of }: Pick<StageTime, 'stage' | 'of'>) => {
    const name = nameOf(registers, { register: 'stage', id: stage });
    return of === 'loading' ? words.loading(name) : name;
  };
  const table: PictureTable = {
    tone: 'plain',
    corner: words.corner,
    rows: lines.map((line) => ({ id: line.id, label: lineName(line) })),
    cols: woods.map((id) => ({ id, label: woodName(id) })),
    most,
    cell: (line, species) => {
      const at = timeAt(line, species);
      if (!at) return null;
      const { median, medianInterval } = at.time;
      return {
        share: median,
        shown: words.minutes(median),
        detail: words.likely(medianInterval),
        name: words.cellName(woodName(species), lineName(at), median, medianInterval),
      };
    },
  };
  return (
    <Panel
      title={words.perPiece}
      lead={words.perPieceLead}
      actions={<Means label={studyWords.means}>{words.perPieceMeans}</Means>}
      testId="piece-times"
    >
      {times.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <>
          <HeatTable
            {...table}
            caption={words.perPiece}
            captionUnseen
            onPick={(line, species) => setPicked(timeAt(line, species) ?? null)}
          />
          <SavePicture
            picture={() => ({
              title: words.perPiece,
              lead: words.perPiecePicture,
              body: { kind: 'table', table },
            })}
            testId="piece-times-picture"
          />
        </>
      )}
      {picked && (
        <Sheet
          title={words.timeOf(woodName(picked.species), lineName(picked))}
          onClose={() => setPicked(null)}
          closeLabel={studyWords.close}
          testId="time-behind"
        >
          <Time time={picked.time} />
        </Sheet>
      )}
    </Panel>
  );
};

const Time = ({ time }: { time: PieceTime }) => (
  <dl class="study-facts">
    <dt>{words.median}</dt>
    <dd class="figures">
      {words.minutes(time.median)}, {words.likely(time.medianInterval)}
    </dd>
    <dt>{words.mean}</dt>
    <dd class="figures">
      {words.minutes(time.mean)}, {words.likely(time.meanInterval)}
    </dd>
    <dt>{words.spread}</dt>
    <dd class="figures">{words.spreadIs(time.cv)}</dd>
    <dt>{words.counted}</dt>
    <dd class="figures">{words.countedIs(time.pieces, time.minutes)}</dd>
    <dt>{words.breaks}</dt>
    <dd class="figures">{words.breaksAre(time.breaks.stretches, time.breaks.minutes)}</dd>
  </dl>
);
