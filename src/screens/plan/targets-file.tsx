import { useRef, useState } from 'preact/hooks';
import type { TargetsRead } from '../../app/targets-file.ts';
import { judgeTargets } from '../../domain/plan/targets/judge-targets.ts';
import { plainText } from '../../domain/set-up/text.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { planWords as words } from '../../words/plan-words.ts';
import { problemWords } from '../../words/problem-words.ts';
import { headingOf, tableWords } from '../../words/table-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { TableButton } from '../parts/table-button.tsx';
import { JudgedTables } from './judged-tables.tsx';
import { sortLines } from './targets-file-view.ts';

type State =
  | { readonly kind: 'idle' | 'reading' | 'unread' }
  | { readonly kind: 'read'; readonly name: string; readonly read: TargetsRead; readonly refusal?: string }
  | { readonly kind: 'written'; readonly lines: number };

/** Targets out to a spreadsheet, and back: what would change is shown line by line before anything is written. */
export const TargetsFile = () => {
  const input = useRef<HTMLInputElement>(null);
  const [state, setState] = useState<State>({ kind: 'idle' });
  const read = async (file: File) => {
    setState({ kind: 'reading' });
    try {
      const [{ readTargets }, bytes] = await Promise.all([
        import('../../app/targets-file.ts'),
        file.arrayBuffer(),
      ]);
      setState({ kind: 'read', name: file.name, read: readTargets(new Uint8Array(bytes)) });
    } catch {
      setState({ kind: 'unread' });
    }
  };
  return (
    <Panel title={words.file} lead={words.fileLead} testId="targets-file">
      <p class="plan-note">{words.fileHelp}</p>
      <div class="plan-acts">
        <TableButton table="targets" label={tableWords.save} />
        <PressButton
          icon="import"
          label={words.choose}
          onAct={() => input.current?.click()}
          testId="targets-choose"
        />
      </div>
      <input
        ref={input}
        type="file"
        hidden
        accept=".csv,text/csv,.txt,.tsv"
        aria-label={words.choose}
        data-testid="targets-input"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file) void read(file);
          // The same file can be chosen again once it was mended.
          currentTarget.value = '';
        }}
      />
      <p role="status" data-testid="targets-said">
        {state.kind === 'reading' && words.reading}
        {state.kind === 'unread' && words.unread}
        {state.kind === 'written' && words.written(state.lines)}
      </p>
      {state.kind === 'read' && <ReadFile {...state} onState={setState} key={state.name} />}
    </Panel>
  );
};

interface ReadFileProps {
  readonly name: string;
  readonly read: TargetsRead;
  readonly refusal?: string;
  readonly onState: (state: State) => void;
}

const ReadFile = ({ name, read, refusal, onState }: ReadFileProps) => {
  const session = useSession();
  const shop = useShop();
  if (read.kind !== 'lines')
    return (
      <Notice tone="warn" title={plainText(name)} testId="targets-refused">
        {wholeRefusal(read)}
      </Notice>
    );
  const sorted = sortLines(judgeTargets(shop, read.lines));
  const { changing, same, refused, targets } = sorted;
  const write = async () => {
    const result = await session.act({ kind: 'set-targets', targets });
    if (result.kind === 'refused')
      onState({ kind: 'read', name, read, refusal: problemWords(result.problem, shop.registers) });
    else if (result.kind === 'saved') onState({ kind: 'written', lines: changing.length });
  };
  return (
    <div class="plan-block" data-testid="targets-judged">
      <h3 class="plan-name">{plainText(name)}</h3>
      <p data-testid="targets-sum">{words.sum(changing.length, same.length, refused.length)}</p>
      {read.unused.length > 0 && (
        <p class="plan-name">{words.unusedColumns(read.unused.map(plainText).join(', '))}</p>
      )}
      <JudgedTables {...sorted} />
      {refusal && <p role="alert">{refusal}</p>}
      <div class="plan-acts">
        <PressButton
          tone="go"
          icon="check"
          label={words.write(changing.length)}
          disabledReason={changing.length === 0 ? words.nothingToWrite : undefined}
          closing
          onAct={() => void write()}
          testId="targets-write"
        />
        <PressButton
          tone="quiet"
          label={words.leaveIt}
          onAct={() => onState({ kind: 'idle' })}
          testId="targets-leave"
        />
      </div>
    </div>
  );
};

function wholeRefusal(read: Exclude<TargetsRead, { kind: 'lines' }>): string {
  switch (read.kind) {
    case 'no-column':
      return words.noColumn(headingOf(read.column));
    case 'column-twice':
      return words.columnTwice(headingOf(read.column));
    default:
      return words.refusals[read.kind];
  }
}
