import { PressButton } from '../../ui/press/press-button.tsx';
import { stageWords as words } from '../../words/stage-words.ts';

export interface HowManyProps {
  readonly pieces: number;
  readonly most: number;
  readonly onPieces: (pieces: number) => void;
}

/** How many pieces one flaw concerns, where a stage is done by the tray: fewer, the count, more, all. */
export const HowMany = ({ pieces, most, onPieces }: HowManyProps) => (
  <fieldset class="how-many">
    <legend class="unseen">{words.howMany}</legend>
    <PressButton
      size="bench-small"
      icon="minus"
      label={words.fewer}
      onAct={() => onPieces(Math.max(1, pieces - 1))}
      testId="flaw-fewer"
    />
    <output class="how-many-count figures" aria-live="polite">
      {words.flawed(pieces)}
    </output>
    <PressButton
      size="bench-small"
      icon="plus"
      label={words.more}
      onAct={() => onPieces(Math.min(most, pieces + 1))}
      testId="flaw-more"
    />
    <PressButton
      size="bench-small"
      label={words.flawed(most)}
      onAct={() => onPieces(most)}
      testId="flaw-all"
    />
  </fieldset>
);
