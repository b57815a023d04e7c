import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { traysWords as words } from '../../words/trays-words.ts';
import { useShop } from '../parts/app-context.ts';
import { spotWords } from './spot-words.ts';
import { spotKey, type TraySpot } from './trays-view.ts';

export interface SpotChoiceProps {
  readonly spots: readonly TraySpot[];
  readonly chosen: TraySpot | undefined;
  readonly onChoose: (spot: TraySpot) => void;
  readonly testId: string;
}

/** Which of a tray's counts is meant; not asked where there is but one. */
export const SpotChoice = ({ spots, chosen, onChoose, testId }: SpotChoiceProps) => {
  const { registers } = useShop();
  if (spots.length < 2) return <p>{spots.map((spot) => spotWords(spot, registers))}</p>;
  return (
    <ChoiceRow
      label={words.whichSpot}
      choices={spots.map((spot) => ({ value: spotKey(spot), label: spotWords(spot, registers) }))}
      value={chosen && spotKey(chosen)}
      onChoose={(key) => {
        const spot = spots.find((each) => spotKey(each) === key);
        if (spot) onChoose(spot);
      }}
      testId={testId}
    />
  );
};
