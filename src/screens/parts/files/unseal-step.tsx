import { useState } from 'preact/hooks';
import type { Restoring } from '../../../app/restore.ts';
import { ChoiceRow } from '../../../ui/field/choice-row.tsx';
import { Field } from '../../../ui/field/field.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { filesWords as words } from '../../../words/files-words.ts';

type By = 'passphrase' | 'words';
const wordsWanted = 12;

/** Asks for what opens a sealed copy; nothing that was typed is kept. */
export const UnsealStep = ({ restoring, wrong }: { restoring: Restoring; wrong: boolean }) => {
  const [by, setBy] = useState<By>('passphrase');
  const [typed, setTyped] = useState('');
  const found = typed
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter(Boolean);
  const isShort = by === 'words' && found.length !== wordsWanted;
  const open = () => {
    if (typed === '' || isShort) return;
    void restoring.unseal(by === 'words' ? { words: found } : { passphrase: typed });
  };
  return (
    <div class="files-block">
      <h3>{words.sealedTitle}</h3>
      <p>{words.sealedLead}</p>
      <ChoiceRow
        label={words.openBy}
        choices={[
          { value: 'passphrase', label: words.byPassphrase },
          { value: 'words', label: words.byWords },
        ]}
        value={by}
        onChoose={(next) => {
          setBy(next);
          setTyped('');
        }}
        testId="open-by"
      />
      <Field
        key={by}
        kind={by === 'words' ? 'text' : 'password'}
        label={by === 'words' ? words.wordsLabel : words.byPassphrase}
        hint={by === 'words' ? `${words.wordsHint} ${words.wordsCount(found.length)}` : undefined}
        value={typed}
        onText={setTyped}
        error={wrong && typed === '' ? words.wrongSecret : undefined}
        onEnter={open}
        testId="secret"
      />
      <div class="files-acts">
        <PressButton tone="go" label={words.openSealed} onAct={open} testId="unseal" />
        <PressButton icon="back" label={words.otherFile} onAct={restoring.startOver} testId="restore-again" />
      </div>
    </div>
  );
};
