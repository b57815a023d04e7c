import './pad.css';
import { Icon } from '../icon/icon.tsx';

export interface PadDisplayProps {
  label: string;
  typed: string;
  /** Shown while nothing is typed: unknown is not zero. */
  emptySign?: string | undefined;
  unit?: string | undefined;
  error?: string | undefined;
  /** Signs of equal width and a barred zero, in groups of four. */
  code?: boolean | undefined;
  /** Shows that signs were typed, not which. */
  hidden?: boolean | undefined;
}

const veil = '•';

const grouped = (code: string): readonly string[] => code.match(/.{1,4}/gu) ?? [];

/** What was typed on a pad, with room kept for what is wrong with it. */
export const PadDisplay = ({ label, typed, emptySign = '–', unit, error, code, hidden }: PadDisplayProps) => (
  <div class="pad-display" data-wrong={error ? true : undefined}>
    <span class="pad-label">{label}</span>
    <output
      class={code ? 'pad-typed code' : 'pad-typed figures'}
      aria-label={label}
      dir={code ? 'ltr' : undefined}
    >
      {typed === ''
        ? emptySign
        : hidden
          ? veil.repeat(typed.length)
          : code
            ? grouped(typed).join(' ')
            : typed}
      {unit && <span class="pad-unit"> {unit}</span>}
    </output>
    <p class="pad-error" role="status">
      {error && (
        <>
          <Icon name="warn" size={32} />
          <span>{error}</span>
        </>
      )}
    </p>
  </div>
);
