import { useRef } from 'preact/hooks';
import { PressButton, type PressButtonProps } from '../../../ui/press/press-button.tsx';

export interface PhotoButtonProps extends Omit<PressButtonProps, 'onAct'> {
  readonly from: 'camera' | 'file';
  readonly onFile: (file: File) => void;
}

/** Lets a person take a photo, with the tablet's own camera app, or choose one; where there is no camera both choose. */
export const PhotoButton = ({ from, onFile, ...look }: PhotoButtonProps) => {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <PressButton {...look} onAct={() => input.current?.click()} />
      <input
        ref={input}
        type="file"
        hidden
        accept="image/*"
        {...(from === 'camera' && { capture: 'environment' })}
        data-testid={look.testId && `${look.testId}-input`}
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          // The same file may be chosen again.
          currentTarget.value = '';
          if (file) onFile(file);
        }}
      />
    </>
  );
};
