import { useState } from 'preact/hooks';
import type { StageId } from '../../domain/log/ids.ts';
import type { HeatCell } from '../../domain/study/flaw-heat.ts';
import { HeatTable } from '../../ui/chart/heat-table.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import type { PictureTable } from '../../ui/picture/picture.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { clockTime } from '../../words/date-words.ts';
import { flawsWords as words } from '../../words/flaws-words.ts';
import { nameOf } from '../../words/names.ts';
import { studyWords } from '../../words/study-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { SavePicture } from '../parts/picture/save-picture.tsx';
import { FlawPhotos } from './flaw-photos.tsx';
import { heatGrid } from './flaws-view.ts';

/** Stage × wood: how large a share is flawed, and the trays behind each field. */
export const HeatPanel = ({ cells, route }: { cells: readonly HeatCell[]; route: readonly StageId[] }) => {
  const { registers } = useShop();
  const [picked, setPicked] = useState<HeatCell | null>(null);
  const { stages, woods, cellAt, most } = heatGrid(cells, route);
  const woodName = (id: string) => nameOf(registers, { register: 'species', id });
  const stageName = (id: string) => nameOf(registers, { register: 'stage', id });
  const table: PictureTable = {
    corner: words.corner,
    rows: stages.map((id) => ({ id, label: stageName(id) })),
    cols: woods.map((id) => ({ id, label: woodName(id) })),
    most,
    cell: (stage, species) => {
      const cell = cellAt(stage, species);
      if (!cell) return null;
      const { share, flawed, judged } = cell;
      return {
        share,
        shown: words.cell(share),
        detail: words.cellOf(flawed, judged),
        name: words.cellName({ wood: woodName(species), stage: stageName(stage) }, cell),
      };
    },
  };
  return (
    <Panel
      title={words.heat}
      lead={words.heatLead}
      actions={<Means label={studyWords.means}>{words.heatMeans}</Means>}
      testId="heat"
    >
      <HeatTable
        {...table}
        caption={words.heat}
        captionUnseen
        onPick={(stage, species) => setPicked(cellAt(stage, species) ?? null)}
      />
      <SavePicture
        picture={() => ({ title: words.heat, lead: words.heatPicture, body: { kind: 'table', table } })}
        testId="heat-picture"
      />
      {picked && (
        <Sheet
          title={words.traysOf(woodName(picked.species), stageName(picked.stage))}
          onClose={() => setPicked(null)}
          closeLabel={studyWords.close}
          testId="heat-behind"
        >
          <Trays cell={picked} />
        </Sheet>
      )}
    </Panel>
  );
};

const Trays = ({ cell }: { cell: HeatCell }) => {
  const { trays, furtherTrays } = cell;
  const session = useSession();
  const now = session.now();
  if (trays.length === 0) return <p>{words.noTrays}</p>;
  return (
    <>
      <ul class="study-trays">
        {trays.map(({ tray, code, flawed, judged, last }) => (
          <li key={tray}>
            <PressButton
              label={code}
              detail={words.trayDetail(flawed, judged, clockTime(last, { zone: session.zone(), now }))}
              onAct={() => goTo('trays', tray)}
            />
          </li>
        ))}
      </ul>
      {furtherTrays > 0 && <p>{words.further(furtherTrays)}</p>}
      <FlawPhotos cell={cell} />
    </>
  );
};
