import type { SpeciesId, VariantId } from '../../domain/log/ids.ts';
import type { StageTrials } from '../../domain/study/stage-trials.ts';
import type { GroupSurvival } from '../../domain/study/survival.ts';
import { ShareBar } from '../../ui/share/share-bar.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { chancesWords as words } from '../../words/chances-words.ts';
import { share } from '../../words/fine-number-words.ts';
import { nameOf } from '../../words/names.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { useShop } from '../parts/app-context.ts';

/** The factors of a rolled yield, the worst stage first, and what became of the pieces along the route. */
export const ChanceStages = ({
  group: { group, rolled, stages },
  name,
}: {
  group: GroupSurvival<SpeciesId | VariantId>;
  name: string;
}) => {
  const { registers } = useShop();
  const stageName = (id: string) => nameOf(registers, { register: 'stage', id });
  return (
    <div class="study-stages">
      <p class="study-note">{words.rolledMeans}</p>
      <ul class="study-bars">
        {rolled.factors.map(({ stage, of, out, share: factor }) => (
          <li key={stage}>
            <ShareBar
              label={stageName(stage)}
              part={out}
              whole={of}
              shown={`${share(factor)} · ${words.of(out, of)}`}
              tone={out < of ? 'copper' : 'plain'}
              testId={`factor-${group}-${stage}`}
            />
          </li>
        ))}
      </ul>
      <DataTable
        caption={words.route(name)}
        columns={columnsOf(stageName)}
        rows={stages}
        rowKey={({ stage }) => stage}
      />
      <p class="study-note">{words.stagesMeans}</p>
    </div>
  );
};

function columnsOf(stageName: (id: string) => string): readonly Column<StageTrials>[] {
  return [
    { key: 'stage', head: words.stage, cell: ({ stage }) => stageName(stage) },
    {
      key: 'passed',
      head: words.passed,
      numeric: true,
      cell: ({ firstPass }) => words.of(firstPass.out, firstPass.of),
    },
    {
      key: 'lost',
      head: words.lost,
      numeric: true,
      cell: ({ finished }) => words.of(finished.lost, finished.atRisk),
    },
    {
      key: 'lowered',
      head: words.lowered,
      numeric: true,
      cell: ({ firsts }) => words.of(firsts.lost, firsts.atRisk),
    },
    { key: 'again', head: words.again, numeric: true, cell: ({ repeats }) => wholeNumber(repeats) },
  ];
}
