import { type Bounds, readWholeNumber } from '../../domain/command/whole-number.ts';
import { Field } from '../../ui/field/field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import './count-field.css';

export interface CountFieldProps {
  readonly label: string;
  readonly typed: string;
  readonly onTyped: (typed: string) => void;
  readonly bounds: Bounds;
  readonly error: string | undefined;
  readonly fewer: string;
  readonly more: string;
  /** What is counted, where several stand on one page: a screen reader then tells them apart. */
  readonly of?: string | undefined;
  readonly testId: string;
}

/** A count that can be typed or stepped; what was typed stays as it is, right or wrong. */
export const CountField = ({
  label,
  typed,
  onTyped,
  bounds,
  error,
  fewer,
  more,
  of,
  testId,
}: CountFieldProps) => {
  const step = (by: number) => {
    const read = readWholeNumber(typed, { least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY });
    const next = (read.ok ? read.value : 0) + by;
    onTyped(String(Math.min(bounds.most, Math.max(bounds.least, next))));
  };
  const named = (words: string) => of && `${words}: ${of}`;
  return (
    <div class="count-field">
      <Field
        label={label}
        name={named(label)}
        value={typed}
        onText={onTyped}
        kind="number"
        error={error}
        testId={testId}
      />
      <div class="count-steps">
        <PressButton
          icon="minus"
          label={fewer}
          name={named(fewer)}
          onAct={() => step(-1)}
          testId={`${testId}-fewer`}
        />
        <PressButton
          icon="plus"
          label={more}
          name={named(more)}
          onAct={() => step(1)}
          testId={`${testId}-more`}
        />
      </div>
    </div>
  );
};
