import { useState } from 'preact/hooks';
import type { CopyDesk, MadeCopy } from '../../app/copy-desk.ts';
import { Field } from '../../ui/field/field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { filesWords as words } from '../../words/files-words.ts';
import { saidOf } from '../parts/files/hand-out-button.tsx';
import { MoreFiles } from '../parts/files/more-files.tsx';
import { PhotosChoice, usePhotosChoice } from '../parts/files/photos-choice.tsx';
import { TextOut } from '../parts/files/text-out.tsx';
import { useHandOut } from '../parts/files/use-hand-out.ts';

/** The shortest passphrase that is taken, in signs: NIST SP 800-63B, 5.1.1.1. */
const shortest = 8;

/** A copy under a passphrase that is typed twice and kept nowhere; its recovery words are written down before it goes out. */
export const SealedWay = ({ desk }: { desk: CopyDesk }) => {
  const { state, way, handed, make, hand, textTaken } = useHandOut(desk);
  const chosen = usePhotosChoice(desk);
  const [typed, setTyped] = useState({ once: '', again: '' });
  const [tried, setTried] = useState(false);
  const isShort = [...typed.once].length < shortest;
  const differs = typed.once !== typed.again;
  const seal = async () => {
    setTried(true);
    if (isShort || differs) return;
    await make({ photos: way !== 'text' && chosen.taken, passphrase: typed.once });
    setTyped({ once: '', again: '' });
    setTried(false);
  };
  const wordsToWrite = 'made' in state && handed.size === 0 && state.made;
  return (
    <div class="files-block">
      <p>{words.sealHint}</p>
      {wordsToWrite ? (
        <RecoveryWords made={wordsToWrite} onWritten={() => void hand(wordsToWrite)} />
      ) : (
        <>
          {way !== 'text' && <PhotosChoice chosen={chosen} />}
          <Field
            kind="password"
            label={words.passphrase}
            hint={words.passphraseHint}
            value={typed.once}
            onText={(once) => setTyped({ ...typed, once })}
            error={tried && isShort ? words.passphraseShort : undefined}
            testId="passphrase"
          />
          <Field
            kind="password"
            label={words.passphraseAgain}
            value={typed.again}
            onText={(again) => setTyped({ ...typed, again })}
            error={tried && !isShort && differs ? words.passphraseDiffers : undefined}
            onEnter={() => void seal()}
            testId="passphrase-again"
          />
          <PressButton
            icon="label"
            label={words.sealNow}
            disabledReason={state.kind === 'making' ? words.sealing : undefined}
            onAct={() => void seal()}
            testId="seal"
          />
        </>
      )}
      <p role="status" data-testid="seal-said">
        {state.kind === 'making' ? words.sealing : saidOf(state, false)}
      </p>
      {'made' in state && (
        <MoreFiles made={state.made} handed={handed} onHand={(file) => void hand(state.made, file)} />
      )}
      {state.kind === 'text' && <TextOut made={state.made} onTaken={textTaken} />}
    </div>
  );
};

const RecoveryWords = ({ made, onWritten }: { made: MadeCopy; onWritten: () => void }) => (
  <section class="files-block" aria-label={words.recoveryTitle}>
    <h3>{words.recoveryTitle}</h3>
    <p>{words.recoveryLead}</p>
    <ol class="files-words" data-testid="recovery-words">
      {made.words?.map((word, place) => (
        <li key={`${place}-${word}`}>{word}</li>
      ))}
    </ol>
    <PressButton
      tone="go"
      icon="check"
      label={words.wordsWritten}
      detail={words.wordsDetail}
      onAct={onWritten}
      testId="words-written"
    />
  </section>
);
