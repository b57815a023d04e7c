import { useRef } from 'preact/hooks';
import { PressButton } from '../press/press-button.tsx';
import { withoutLast } from './number-entry.ts';
import { PadDisplay } from './pad-display.tsx';
import { usePadKeys } from './use-pad-keys.ts';

/** A code that may be meant. */
interface Offer {
  code: string;
  label: string;
}

export interface CodePadProps {
  label: string;
  typed: string;
  onTyped: (typed: string) => void;
  /** The signs of the keys, a string for each group: letters, then digits. */
  rows: readonly string[];
  onEnter: (typed: string) => void;
  enterLabel: string;
  eraseLabel: string;
  /** The longest code; further signs are not taken. */
  longest?: number | undefined;
  /** What is wrong; what was typed stays. */
  error?: string | undefined;
  /** Codes that may be meant, to be taken with one tap. */
  offers?: readonly Offer[] | undefined;
  onOffer?: ((code: string) => void) | undefined;
  /** What the offers are, for a screen reader. */
  offersLabel?: string | undefined;
  emptySign?: string | undefined;
  /** Shows that signs were typed, not which. */
  hidden?: boolean | undefined;
  /** Takes the keys of a keyboard or a code reader while shown; yes by default. */
  listen?: boolean | undefined;
  testId?: string | undefined;
}

/** A pad for short codes, with 96 px keys, so that no system keyboard is needed. */
export const CodePad = (props: CodePadProps) => {
  const { typed, onTyped, rows, longest = Number.POSITIVE_INFINITY, offers = [] } = props;
  const place = useRef<HTMLDivElement>(null);
  const erase = (): void => onTyped(withoutLast(typed));
  const enter = (): void => props.onEnter(typed);
  const takes = (sign: string): boolean => {
    const key = sign.toUpperCase();
    if (!rows.some((row) => row.includes(key))) return false;
    if (typed.length < longest) onTyped(typed + key);
    return true;
  };
  usePadKeys(props.listen ?? true, {
    keys: { onSign: takes, onErase: erase, onEnter: enter },
    place: () => place.current,
  });
  return (
    <div class="pad pad-codes" ref={place} data-testid={props.testId}>
      <PadDisplay
        label={props.label}
        typed={typed}
        emptySign={props.emptySign}
        error={props.error}
        hidden={props.hidden}
        code
      />
      {offers.length > 0 && (
        <ul class="pad-offers" aria-label={props.offersLabel}>
          {offers.map((offer) => (
            <li key={offer.code}>
              <PressButton
                size="bench-small"
                label={offer.code}
                detail={offer.label}
                onAct={() => props.onOffer?.(offer.code)}
              />
            </li>
          ))}
        </ul>
      )}
      <div class="pad-signs">
        {rows.map((row) => (
          <div class="pad-keys" key={row}>
            {[...row].map((sign) => (
              <PressButton key={sign} size="bench-small" label={sign} onAct={() => takes(sign)} />
            ))}
          </div>
        ))}
      </div>
      <div class="pad-acts">
        <PressButton size="bench-small" icon="erase" label={props.eraseLabel} onAct={erase} />
        <PressButton size="bench-small" icon="enter" tone="go" label={props.enterLabel} onAct={enter} />
      </div>
    </div>
  );
};
