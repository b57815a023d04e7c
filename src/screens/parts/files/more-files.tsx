import type { MadeCopy, MadeFile } from '../../../app/copy-desk.ts';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { filesWords as words } from '../../../words/files-words.ts';

export interface MoreFilesProps {
  readonly made: MadeCopy;
  readonly handed: ReadonlySet<number>;
  readonly onHand: (file: MadeFile) => void;
}

/** The files of a copy that did not fit into its first one, each with a button, and what is in no file at all. */
export const MoreFiles = ({ made, handed, onHand }: MoreFilesProps) => {
  const { files, leftOut } = made;
  const left = files.filter(({ number }) => !handed.has(number));
  return (
    <>
      {leftOut > 0 && <p data-testid="photos-left-out">{words.photosLeftOut(leftOut)}</p>}
      {handed.size > 0 && left.length > 0 && (
        <>
          <p data-testid="more-files">{words.moreFiles(left.length)}</p>
          <div class="files-acts">
            {left.map((file) => (
              <PressButton
                key={file.number}
                icon="export"
                label={words.saveNumber(file.number, files.length)}
                detail={words.photosIn(file.photos.length, file.content.size)}
                onAct={() => onHand(file)}
                testId={`save-copy-${file.number}`}
              />
            ))}
          </div>
        </>
      )}
    </>
  );
};
