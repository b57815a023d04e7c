import { useRef } from 'preact/hooks';
import { PressButton } from '../press/press-button.tsx';
import { withoutLast, withSign } from './number-entry.ts';
import { PadDisplay } from './pad-display.tsx';
import { usePadKeys } from './use-pad-keys.ts';

export interface NumberPadProps {
  label: string;
  typed: string;
  onTyped: (typed: string) => void;
  eraseLabel: string;
  /** The decimal sign, where parts of a whole are taken. */
  decimal?: '.' | ',' | undefined;
  /** What is wrong; what was typed stays. */
  error?: string | undefined;
  unit?: string | undefined;
  emptySign?: string | undefined;
  /** Enter on a keyboard. */
  onEnter?: (() => void) | undefined;
  /** Takes the keys of a keyboard while shown; yes by default. */
  listen?: boolean | undefined;
  testId?: string | undefined;
}

/** Three rows of four: erasing at the end of the first; without a decimal sign the nought fills the last two ends. */
const keysWith = (decimal: string | undefined): readonly string[] =>
  decimal === undefined
    ? ['7', '8', '9', 'erase', '4', '5', '6', '0', '1', '2', '3']
    : ['7', '8', '9', 'erase', '4', '5', '6', decimal, '1', '2', '3', '0'];

/** A pad for numbers, with 96 px keys, laid out as on a counting machine. */
export const NumberPad = (props: NumberPadProps) => {
  const { typed, onTyped, decimal } = props;
  const place = useRef<HTMLDivElement>(null);
  const erase = (): void => onTyped(withoutLast(typed));
  const takes = (sign: string): boolean => {
    const isDecimal = decimal !== undefined && (sign === '.' || sign === ',');
    if (!isDecimal && !/^\d$/.test(sign)) return false;
    onTyped(withSign(typed, isDecimal ? decimal : sign));
    return true;
  };
  usePadKeys(props.listen ?? true, {
    keys: { onSign: takes, onErase: erase, onEnter: props.onEnter },
    place: () => place.current,
  });
  return (
    <div class="pad pad-numbers" ref={place} data-testid={props.testId}>
      <PadDisplay
        label={props.label}
        typed={typed}
        emptySign={props.emptySign}
        unit={props.unit}
        error={props.error}
      />
      <div class="pad-keys">
        {keysWith(decimal).map((key) =>
          key === 'erase' ? (
            <PressButton key={key} size="bench-small" icon="erase" label={props.eraseLabel} onAct={erase} />
          ) : (
            <PressButton key={key} size="bench-small" label={key} onAct={() => takes(key)} />
          ),
        )}
      </div>
    </div>
  );
};
