import './file-button.css';
import { useState } from 'preact/hooks';
import { PressButton, type PressButtonProps } from '../../ui/press/press-button.tsx';
import { tableWords as words } from '../../words/table-words.ts';
import { type HandedOver, handOver } from './hand-over.ts';

type State =
  | { readonly kind: 'idle' | 'making' | 'failed' }
  | { readonly kind: 'made'; readonly file: File; readonly became: HandedOver };

export interface FileButtonProps extends Pick<PressButtonProps, 'label' | 'detail' | 'tone' | 'size'> {
  readonly make: () => Promise<File>;
  readonly testId: string;
  /** What is to be known of the file once it was handed over. */
  readonly after?: string;
  /** What is said where it could not be made; that the log could not be read when left out. */
  readonly failed?: string;
}

/** Makes a file of the shop as it is now and hands it over. */
export const FileButton = ({ make, testId, after, failed = words.failed, ...look }: FileButtonProps) => {
  const [state, setState] = useState<State>({ kind: 'idle' });
  const give = async () => {
    try {
      const waiting = state.kind === 'made' && state.became === 'tap-again' ? state.file : undefined;
      if (!waiting) setState({ kind: 'making' });
      // A file that waits for its tap goes out before anything is awaited: a gesture does not last.
      const file = waiting ?? (await make());
      setState({ kind: 'made', file, became: await handOver(file) });
    } catch {
      setState({ kind: 'failed' });
    }
  };
  return (
    <div class="table-button">
      <PressButton {...look} icon="export" onAct={() => void give()} testId={testId} />
      <p role="status" data-testid={`${testId}-said`}>
        {saidOf(state, failed)}
      </p>
      {after && state.kind === 'made' && state.became !== 'tap-again' && state.became !== 'called-off' && (
        <p data-testid={`${testId}-after`}>{after}</p>
      )}
    </div>
  );
};

function saidOf(state: State, failed: string): string | undefined {
  switch (state.kind) {
    case 'idle':
      return undefined;
    case 'making':
      return words.making;
    case 'failed':
      return failed;
    case 'made': {
      const { file, became } = state;
      if (became === 'tap-again') return words.tapAgain;
      if (became === 'called-off') return undefined;
      return became === 'shared' ? words.shared(file.name) : words.saved(file.name);
    }
  }
}
