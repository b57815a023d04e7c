import { useEffect, useRef, useState } from 'preact/hooks';
import type { CopyDesk, ShelfCopy } from '../../../app/copy-desk.ts';
import type { CopyFile, Restoring } from '../../../app/restore.ts';
import { copyInText } from '../../../app/text-copy.ts';
import { Field } from '../../../ui/field/field.tsx';
import { Disclosure } from '../../../ui/notice/disclosure.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { dayWords } from '../../../words/date-words.ts';
import { filesWords as words } from '../../../words/files-words.ts';

/** Where a copy comes from: a file, the tablet's own shelf, or a text that was pasted. */
export const ChooseCopy = ({ desk, restoring }: { desk: CopyDesk; restoring: Restoring }) => (
  <div class="files-block">
    <p>{words.restoreLead}</p>
    <ChooseFile restoring={restoring} />
    {desk.hasShelf && <ShelfCopies desk={desk} restoring={restoring} />}
    <Disclosure summary={words.pasteSummary} testId="paste-way">
      <PasteCopy restoring={restoring} />
    </Disclosure>
  </div>
);

const ChooseFile = ({ restoring }: { restoring: Restoring }) => {
  const input = useRef<HTMLInputElement>(null);
  return (
    <div>
      <PressButton
        size="bench-small"
        tone="go"
        icon="import"
        label={words.chooseFile}
        detail={words.chooseFileDetail}
        onAct={() => input.current?.click()}
        testId="choose-file"
      />
      <input
        ref={input}
        type="file"
        hidden
        multiple
        aria-label={words.chooseFile}
        data-testid="restore-file"
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          if (files.length > 0) void restoring.read(files.map(asChosen));
        }}
      />
    </div>
  );
};

const asChosen = (file: File): CopyFile => ({ name: file.name, size: file.size, content: async () => file });

type Listing = readonly ShelfCopy[] | 'reading' | 'failed';

const ShelfCopies = ({ desk, restoring }: { desk: CopyDesk; restoring: Restoring }) => {
  const [listing, setListing] = useState<Listing>('reading');
  useEffect(() => {
    void desk.shelfCopies().then(setListing, () => setListing('failed'));
  }, [desk]);
  return (
    <section class="files-block" aria-label={words.shelfList}>
      <h3>{words.fromTablet}</h3>
      {listing === 'reading' && <p role="status">{words.shelfReading}</p>}
      {listing === 'failed' && <p role="status">{words.shelfUnread}</p>}
      {Array.isArray(listing) && listing.length === 0 && <p>{words.shelfEmpty}</p>}
      {Array.isArray(listing) && (
        <ul class="files-shelf">
          {listing.map((copy: ShelfCopy) => (
            <li key={copy.name}>
              <span>
                {dayWords(copy.day)}:{' '}
                {copy.entries === null ? words.shelfDamaged : words.entries(copy.entries)}
                {words.shelfKinds[copy.kind] && `, ${words.shelfKinds[copy.kind]}`}
              </span>
              <PressButton
                icon="search"
                label={words.lookInto}
                name={`${words.lookInto}: ${dayWords(copy.day)}`}
                onAct={() => void restoring.read([desk.shelfFile(copy.name)])}
                testId={`look-${copy.number}`}
              />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};

const PasteCopy = ({ restoring }: { restoring: Restoring }) => {
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState(false);
  const read = () => {
    const bytes = copyInText(text);
    setWrong(!bytes);
    if (!bytes) return;
    const content = new Blob([Uint8Array.from(bytes)]);
    void restoring.read([{ name: words.pastedName, size: content.size, content: async () => content }]);
  };
  return (
    <div class="files-block">
      <Field
        label={words.pasteLabel}
        rows={6}
        code
        value={text}
        onText={setText}
        error={wrong ? words.pasteNothing : undefined}
        testId="paste-text"
      />
      <PressButton label={words.pasteRead} onAct={read} testId="paste-read" />
    </div>
  );
};
