import { useState } from 'preact/hooks';
import type { OutcomeKind } from '../../domain/log/event.ts';
import type { FlawPareto, ParetoRow } from '../../domain/study/flaw-pareto.ts';
import { ParetoBars } from '../../ui/chart/pareto-bars.tsx';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { flawsWords as words } from '../../words/flaws-words.ts';
import { nameOf } from '../../words/names.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { outcomeWords } from '../../words/outcome-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useShop } from '../parts/app-context.ts';
import { SavePicture } from '../parts/picture/save-picture.tsx';
import { minutesOf, type ParetoBy, paretoBars, paretoPicture } from './flaws-view.ts';

/** Reasons, the one that costs most on top; each leads to what became of its pieces. */
export const ParetoPanel = ({ flaws }: { flaws: FlawPareto }) => {
  const { registers } = useShop();
  const [by, setBy] = useState<ParetoBy>('pieces');
  const [picked, setPicked] = useState<string | null>(null);
  const bars = paretoBars(flaws, by);
  const reasonName = (id: string) => nameOf(registers, { register: 'reason', id });
  const rows = bars.map(({ reason, value, running }, place) => ({
    id: reason,
    label: reasonName(reason),
    value,
    shown: by === 'pieces' ? words.flawed(value) : words.lost(value),
    running,
    runningShown: words.running(running, place === 0),
  }));
  const row = bars.find(({ reason }) => reason === picked)?.row;
  return (
    <Panel
      title={words.pareto}
      lead={words.all(flaws.pieces, minutesOf(flaws.minutes))}
      actions={<Means label={studyWords.means}>{words.paretoMeans[by]}</Means>}
      testId="pareto"
    >
      <ChoiceRow
        label={words.by}
        choices={[
          { value: 'pieces', label: words.byPieces },
          { value: 'minutes', label: words.byMinutes },
        ]}
        value={by}
        onChoose={setBy}
        testId="pareto-by"
      />
      {bars.length === 0 && <p>{by === 'pieces' ? words.noFlaws : words.noMinutes}</p>}
      <ParetoBars label={words.pareto} rows={rows} most={bars[0]?.value ?? 0} onPick={setPicked} />
      {by === 'minutes' && flaws.minutes.partly > 0 && (
        <p class="study-note">{words.partly(flaws.minutes.partly)}</p>
      )}
      {rows.length > 0 && (
        <SavePicture
          picture={() => ({
            title: by === 'pieces' ? words.paretoByPieces : words.paretoByMinutes,
            lead: words.all(flaws.pieces, minutesOf(flaws.minutes)),
            body: paretoPicture(rows),
          })}
          testId="pareto-picture"
        />
      )}
      {row && (
        <Sheet
          title={words.behind(reasonName(row.reason))}
          onClose={() => setPicked(null)}
          closeLabel={studyWords.close}
          testId="pareto-behind"
        >
          <Behind row={row} caption={words.behind(reasonName(row.reason))} />
        </Sheet>
      )}
    </Panel>
  );
};

const outcomes = ['mended', 'sent-back', 'second', 'scrapped'] as const satisfies readonly OutcomeKind[];

const Behind = ({ row, caption }: { row: ParetoRow; caption: string }) => (
  <>
    <DataTable
      caption={caption}
      captionUnseen
      columns={[
        { key: 'outcome', head: words.outcome, cell: (outcome) => outcomeWords[outcome] },
        {
          key: 'pieces',
          head: words.pieces,
          numeric: true,
          cell: (outcome) => wholeNumber(row.byOutcome[outcome]),
        },
      ]}
      rows={outcomes.filter((outcome) => row.byOutcome[outcome] > 0)}
      rowKey={(outcome) => outcome}
    />
    <dl class="study-facts">
      <dt>{words.scrappedMinutes}</dt>
      <dd class="figures">{words.lost(row.minutes.scrapped)}</dd>
      <dt>{words.againMinutes}</dt>
      <dd class="figures">{words.lost(row.minutes.again)}</dd>
    </dl>
  </>
);
