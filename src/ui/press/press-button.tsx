import './press-button.css';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { Icon } from '../icon/icon.tsx';
import type { IconName } from '../icon/icon-paths.ts';
import { usePress } from './use-press.ts';

/** What a press means: nothing special, the usual next thing, a flaw, a side matter, something that cannot be undone. */
export type PressTone = 'plain' | 'go' | 'flaw' | 'quiet' | 'danger';

/** At least 132, 96 and 56 px each way. */
type PressSize = 'bench' | 'bench-small' | 'normal';

export interface PressButtonProps {
  /** At most two words: a verb or a thing of the trade. */
  label: string;
  onAct: () => void;
  /** A second, smaller line. */
  detail?: ComponentChildren | undefined;
  icon?: IconName | undefined;
  tone?: PressTone | undefined;
  size?: PressSize | undefined;
  /** Ends something: deaf for 700 ms after an act. */
  closing?: boolean | undefined;
  /** Why it cannot be pressed now; shown in the place of the detail. The button stays in reach and does nothing. */
  disabledReason?: string | undefined;
  /** Can be on or off: on shows a second rim and a tick in the ferrule, and is read out as pressed. */
  selected?: boolean | undefined;
  /** The key that does the same, stamped into the ferrule. The screen listens for it. */
  keyHint?: string | undefined;
  /** The largest on a bench screen: takes two columns and two rows of its grid. */
  main?: boolean | undefined;
  /** For a screen reader, where the label alone does not tell what it acts on. Must contain the label. */
  name?: string | undefined;
  testId?: string | undefined;
}

/** A hint may be a sign drawn on the key instead of the key's name. */
const isKeyName = (hint: string): boolean => /^\w+$/.test(hint);

const iconSize = { bench: 64, 'bench-small': 48, normal: 32 } as const;

/** A button shaped like a haft: the ferrule at the start carries its tone, the whole tile is the target. */
export const PressButton = (props: PressButtonProps) => {
  const { label, detail, icon, tone = 'plain', size = 'normal', selected, keyHint, disabledReason } = props;
  const id = useId();
  const disabled = disabledReason !== undefined;
  const handlers = usePress({ onAct: props.onAct, closing: props.closing, disabled });
  return (
    <button
      {...handlers}
      // A tapped bench button does not take the focus: Enter of a pedal is for the main act, not for the last one.
      onMouseDown={size === 'normal' ? undefined : (event) => event.preventDefault()}
      type="button"
      class="press"
      data-tone={tone}
      data-size={size}
      data-main={props.main}
      data-testid={props.testId}
      aria-label={props.name}
      aria-pressed={selected}
      aria-disabled={disabled || undefined}
      aria-describedby={disabled ? `${id}-reason` : undefined}
      aria-keyshortcuts={keyHint && isKeyName(keyHint) ? keyHint : undefined}
    >
      <span class="press-ferrule" aria-hidden="true">
        {keyHint && (
          <span class="press-key" data-long={keyHint.length > 2 || undefined}>
            {keyHint}
          </span>
        )}
        {selected && <Icon name="check" size={size === 'normal' ? 24 : 32} />}
      </span>
      {icon && <Icon name={icon} size={iconSize[size]} />}
      <span class="press-words">
        <span class="press-label">{label}</span>
        {disabled ? (
          <span class="press-detail" id={`${id}-reason`}>
            {disabledReason}
          </span>
        ) : (
          detail && <span class="press-detail">{detail}</span>
        )}
      </span>
    </button>
  );
};
