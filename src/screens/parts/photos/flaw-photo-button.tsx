import { photoWords as words } from '../../../words/photo-words.ts';
import { PhotoButton } from './photo-button.tsx';

export interface FlawPhotoButtonProps {
  readonly taken: boolean;
  readonly onFile: (file: File) => void;
}

export const FlawPhotoButton = ({ taken, onFile }: FlawPhotoButtonProps) => (
  <PhotoButton
    from="camera"
    size="bench-small"
    tone="quiet"
    icon="camera"
    label={taken ? words.flawTaken : words.flaw}
    selected={taken}
    onFile={onFile}
    testId="flaw-photo"
  />
);
