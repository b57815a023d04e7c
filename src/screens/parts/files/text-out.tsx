import { useEffect, useRef, useState } from 'preact/hooks';
import type { MadeCopy } from '../../../app/copy-desk.ts';
import { textOfCopy } from '../../../app/text-copy.ts';
import { Field } from '../../../ui/field/field.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { filesWords as words } from '../../../words/files-words.ts';

/** The last way out: the whole copy as text, to be copied by hand. */
export const TextOut = ({ made, onTaken }: { made: MadeCopy; onTaken: (made: MadeCopy) => void }) => {
  const [text, setText] = useState('');
  useEffect(() => {
    void made.files[0].content.arrayBuffer().then((bytes) => setText(textOfCopy(new Uint8Array(bytes))));
  }, [made]);
  const [said, setSaid] = useState('');
  const box = useRef<HTMLDivElement>(null);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setSaid(words.textCopied);
    } catch {
      box.current?.querySelector('textarea')?.select();
      setSaid(words.textNotCopied);
    }
    onTaken(made);
  };
  if (text === '') return null;
  return (
    <div class="files-block" ref={box}>
      <p>{words.asTextLead}</p>
      <Field label={words.textLabel} value={text} onText={() => undefined} rows={6} code testId="copy-text" />
      <PressButton icon="export" label={words.copyText} onAct={() => void copy()} testId="copy-text-all" />
      <p role="status">{said}</p>
    </div>
  );
};
