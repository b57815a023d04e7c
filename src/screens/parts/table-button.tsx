import './table-button.css';
import { useState } from 'preact/hooks';
import { PressButton, type PressButtonProps } from '../../ui/press/press-button.tsx';
import { type TableName, tableWords as words } from '../../words/table-words.ts';
import { useSession } from './app-context.ts';
import { type HandedOver, handOver } from './hand-over.ts';

type State =
  | { readonly kind: 'idle' | 'making' | 'failed' }
  | { readonly kind: 'made'; readonly file: File; readonly became: HandedOver };

export interface TableButtonProps extends Pick<PressButtonProps, 'label' | 'detail' | 'tone'> {
  readonly table: TableName;
}

/** Makes a table of the shop as it is now and hands it over as a file. */
export const TableButton = ({ table, ...look }: TableButtonProps) => {
  const session = useSession();
  const [state, setState] = useState<State>({ kind: 'idle' });
  const give = async () => {
    try {
      const waiting = state.kind === 'made' && state.became === 'tap-again' ? state.file : undefined;
      // A file that waits for its tap goes out before anything is awaited: a gesture does not last.
      const file = waiting ?? (await make());
      setState({ kind: 'made', file, became: await handOver(file) });
    } catch {
      setState({ kind: 'failed' });
    }
  };
  const make = async () => {
    setState({ kind: 'making' });
    return (await import('../../app/table-file.ts')).tableFile(table, session);
  };
  return (
    <div class="table-button">
      <PressButton {...look} icon="export" onAct={() => void give()} testId={`table-${table}`} />
      <p role="status" data-testid={`table-${table}-said`}>
        {saidOf(state)}
      </p>
    </div>
  );
};

function saidOf(state: State): string | undefined {
  switch (state.kind) {
    case 'idle':
      return undefined;
    case 'making':
      return words.making;
    case 'failed':
      return words.failed;
    case 'made': {
      const { file, became } = state;
      if (became === 'tap-again') return words.tapAgain;
      if (became === 'called-off') return undefined;
      return became === 'shared' ? words.shared(file.name) : words.saved(file.name);
    }
  }
}
