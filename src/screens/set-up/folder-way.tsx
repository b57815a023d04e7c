import { useState } from 'preact/hooks';
import type { CopyDesk } from '../../app/copy-desk.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { filesWords as words } from '../../words/files-words.ts';

/** The folder that copies go into by themselves; nothing where the browser lets no page choose one. */
export const FolderWay = ({ desk }: { desk: CopyDesk }) => {
  const [said, setSaid] = useState('');
  const { folder } = desk;
  const state = folder.state.value;
  if (state.kind === 'no-way') return null;
  const write = async () => {
    setSaid(words.preparing);
    setSaid(
      await desk.writeToFolder().then(
        () => words.folderWritten,
        () => words.folderFailed,
      ),
    );
  };
  /** A folder that may be written to gets its first copy at once. */
  const afterLeave = async (leave: Promise<boolean>) => {
    const isOpen = await leave.catch(() => false);
    if (isOpen) await write();
  };
  const choose = (label: string) => (
    <PressButton
      icon="export"
      label={label}
      onAct={() => void afterLeave(folder.choose())}
      testId="choose-folder"
    />
  );
  return (
    <section class="files-block" aria-label={words.folder}>
      <h3>{words.folder}</h3>
      <p class="files-name" data-testid="folder-state">
        {state.kind === 'none' && words.folderLead}
        {state.kind === 'open' && `${words.folderIs(state.name)} ${words.folderPlain}`}
        {state.kind === 'asks' && words.folderAsks(state.name)}
      </p>
      <div class="files-acts">
        {state.kind === 'none' && choose(words.chooseFolder)}
        {state.kind === 'open' && (
          <PressButton
            icon="export"
            label={words.writeFolder}
            onAct={() => void write()}
            testId="write-folder"
          />
        )}
        {state.kind === 'asks' && (
          <PressButton
            tone="go"
            icon="check"
            label={words.allowFolder}
            onAct={() => void afterLeave(folder.ask())}
            testId="allow-folder"
          />
        )}
        {state.kind !== 'none' && (
          <>
            {choose(words.otherFolder)}
            <PressButton
              tone="quiet"
              label={words.forgetFolder}
              onAct={() => void folder.forget()}
              testId="forget-folder"
            />
          </>
        )}
      </div>
      <p role="status" data-testid="folder-said">
        {said}
      </p>
    </section>
  );
};
