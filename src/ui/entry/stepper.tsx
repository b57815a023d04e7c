import './stepper.css';
import { useId, useState } from 'preact/hooks';
import { Icon } from '../icon/icon.tsx';
import { PressButton } from '../press/press-button.tsx';
import { Sheet } from '../sheet/sheet.tsx';
import { type NumberLimits, type Refusal, readNumber, stepped } from './number-entry.ts';
import { NumberPad } from './number-pad.tsx';

/** The words of the pad that opens from the number; without them there is none. */
interface StepperPadWords {
  openLabel: string;
  eraseLabel: string;
  closeLabel: string;
}

export interface StepperProps extends NumberLimits {
  label: string;
  /** The entry as typed, right or wrong; empty is unknown. `readNumber` tells which. */
  typed: string;
  onTyped: (typed: string) => void;
  /** Why the number is refused, in at most twenty words. */
  refusal: (refusal: Refusal) => string;
  minusLabel: string;
  plusLabel: string;
  step?: number | undefined;
  unit?: string | undefined;
  decimal?: '.' | ',' | undefined;
  pad?: StepperPadWords | undefined;
  /** 96 px for bench screens, 56 px elsewhere. */
  size?: 'bench-small' | 'normal' | undefined;
  testId?: string | undefined;
}

/** A number with minus and plus beside it. An impossible one stays as typed and the reason stands beside it. */
export const Stepper = (props: StepperProps) => {
  const { label, typed, onTyped, step = 1, size = 'normal', unit, pad, decimals = 0, least, most } = props;
  const id = useId();
  const [open, setOpen] = useState(false);
  const read = readNumber(typed, { least, most, decimals });
  const error = read.kind === 'refused' ? props.refusal(read) : undefined;
  const shown = typed === '' ? '–' : typed;
  return (
    <fieldset
      class="stepper"
      data-size={size}
      data-wrong={error ? true : undefined}
      data-testid={props.testId}
    >
      <legend class="field-label">{label}</legend>
      <div class="stepper-row">
        <PressButton
          size={size}
          icon="minus"
          label={props.minusLabel}
          onAct={() => onTyped(stepped(typed, -step, decimals))}
        />
        <output class="stepper-number figures" aria-describedby={error ? `${id}-error` : undefined}>
          {shown}
          {unit && <span class="stepper-unit"> {unit}</span>}
        </output>
        <PressButton
          size={size}
          icon="plus"
          label={props.plusLabel}
          onAct={() => onTyped(stepped(typed, step, decimals))}
        />
        {pad && (
          <PressButton
            size={size}
            icon="pencil"
            label={pad.openLabel}
            tone="quiet"
            onAct={() => setOpen(true)}
          />
        )}
      </div>
      <p class="field-error stepper-error" id={`${id}-error`} role="status">
        {error && (
          <>
            <Icon name="warn" size={24} />
            <span>{error}</span>
          </>
        )}
      </p>
      {pad && open && (
        <Sheet title={label} closeLabel={pad.closeLabel} onClose={() => setOpen(false)}>
          <NumberPad
            label={label}
            typed={typed}
            onTyped={onTyped}
            eraseLabel={pad.eraseLabel}
            decimal={decimals > 0 ? (props.decimal ?? '.') : undefined}
            unit={unit}
            error={error}
            onEnter={() => setOpen(false)}
          />
        </Sheet>
      )}
    </fieldset>
  );
};
