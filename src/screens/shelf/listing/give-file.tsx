import { useState } from 'preact/hooks';
import { PressButton, type PressButtonProps } from '../../../ui/press/press-button.tsx';
import { listingWords as words } from '../../../words/listing-words.ts';
import { type HandedOver, handOver } from '../../parts/hand-over.ts';

export interface GiveFileProps
  extends Pick<PressButtonProps, 'label' | 'detail' | 'tone' | 'disabledReason'> {
  /** The file; undefined when something of it is not here. */
  readonly make: () => Promise<File | undefined>;
  readonly testId: string;
}

/** Makes a file and hands it over. */
export const GiveFile = ({ make, testId, ...look }: GiveFileProps) => {
  const [waiting, setWaiting] = useState<File>();
  const [said, setSaid] = useState('');
  const give = async () => {
    try {
      if (!waiting) setSaid(words.packing);
      // A file that waits for its tap goes out before anything is awaited: a gesture does not last.
      const file = waiting ?? (await make());
      if (!file) return setSaid(words.failed);
      const became = await handOver(file);
      setWaiting(became === 'tap-again' ? file : undefined);
      setSaid(wordsOf(became, file));
    } catch {
      setSaid(words.failed);
    }
  };
  return (
    <div class="table-button">
      <PressButton {...look} icon="export" onAct={() => void give()} testId={testId} />
      <p role="status" data-testid={`${testId}-said`}>
        {said}
      </p>
    </div>
  );
};

function wordsOf(became: HandedOver, { name }: File): string {
  switch (became) {
    case 'saved':
      return words.saved(name);
    case 'shared':
      return words.shared(name);
    case 'tap-again':
      return words.tapAgain;
    case 'called-off':
      return '';
  }
}
