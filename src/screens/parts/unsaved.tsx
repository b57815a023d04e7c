import { NotSavedBar } from '../../ui/bench/not-saved-bar.tsx';
import { notSavedWords } from '../../words/shell-words.ts';
import { useSession } from './app-context.ts';
import { saveFile } from './save-file.ts';

/** The standing bar of a tap that is not on disk; nothing while all is well. */
export const Unsaved = () => {
  const session = useSession();
  const saving = session.saving.value;
  if (saving.kind !== 'not-saved') return null;
  const rescue = async () => {
    const lines = await session.exportLines();
    saveFile(
      `tallywright-${session.today()}.jsonl`,
      [...lines, JSON.stringify({ setting: 'tap not saved', value: saving.act })].join('\n'),
    );
  };
  return (
    <NotSavedBar
      word={notSavedWords.word}
      detail={notSavedWords[saving.why]}
      retryLabel={notSavedWords.retry}
      onRetry={session.retry}
      exportLabel={notSavedWords.export}
      onExport={() => void rescue()}
      testId="not-saved"
    />
  );
};
