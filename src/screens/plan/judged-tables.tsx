import { useState } from 'preact/hooks';
import { plainText } from '../../domain/set-up/text.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { planWords as words } from '../../words/plan-words.ts';
import { targetProblemWords } from '../../words/target-problem-words.ts';
import { useShop } from '../parts/app-context.ts';
import { changeWords, lineText, type SortedLines } from './targets-file-view.ts';

/** So many lines are drawn at once; all of them can be seen. */
const atOnce = 200;

/** What each line would change, and which are not understood and why. */
export const JudgedTables = ({ changing, refused }: SortedLines) => {
  const { registers } = useShop();
  return (
    <>
      {changing.length > 0 && (
        <InParts rows={changing}>
          {(rows) => (
            <DataTable
              caption={words.changing}
              columns={[
                { key: 'line', head: words.line, numeric: true, cell: ({ of }) => of.line },
                {
                  key: 'batch',
                  head: words.batch,
                  cell: ({ batch }) => nameOf(registers, { register: 'batch', id: batch }),
                },
                {
                  key: 'variant',
                  head: words.variant,
                  cell: ({ variant }) => nameOf(registers, { register: 'variant', id: variant }),
                },
                { key: 'change', head: words.wouldChange, cell: ({ changes }) => changeWords(changes) },
              ]}
              rows={rows}
              rowKey={({ of }) => String(of.line)}
              testId="targets-changing"
            />
          )}
        </InParts>
      )}
      {refused.length > 0 && (
        <InParts rows={refused}>
          {(rows) => (
            <DataTable
              caption={words.refusedLines}
              columns={[
                { key: 'line', head: words.line, numeric: true, cell: ({ of }) => of.line },
                { key: 'says', head: words.says, cell: ({ of }) => plainText(lineText(of)) },
                {
                  key: 'why',
                  head: words.why,
                  cell: ({ problem }) => plainText(targetProblemWords(problem)),
                },
              ]}
              rows={rows}
              rowKey={({ of }) => String(of.line)}
              rowTone={() => 'warn'}
              testId="targets-not-understood"
            />
          )}
        </InParts>
      )}
    </>
  );
};

interface InPartsProps<Row> {
  readonly rows: readonly Row[];
  readonly children: (rows: readonly Row[]) => preact.ComponentChildren;
}

const InParts = <Row,>({ rows, children }: InPartsProps<Row>) => {
  const [shown, setShown] = useState(atOnce);
  return (
    <>
      {children(rows.slice(0, shown))}
      {rows.length > shown && (
        <PressButton
          label={words.moreLines(Math.min(atOnce, rows.length - shown))}
          onAct={() => setShown(shown + atOnce)}
        />
      )}
    </>
  );
};
