import type { PartialInputHTMLAttributes } from 'preact';
import { useId } from 'preact/hooks';
import { isEnter } from './enter.ts';
import { describedBy, FieldFrame, type FieldWords, fieldIds } from './field-frame.tsx';

export interface FieldProps extends FieldWords {
  /** What is typed now. The parent keeps it, right or wrong. */
  value: string;
  onText: (text: string) => void;
  kind?: 'text' | 'number' | 'date' | 'time' | 'search' | 'password' | 'pin' | 'url' | undefined;
  /** Shown after the slot: a unit such as mm or %. */
  unit?: string | undefined;
  /** Rows of a longer text; 1 by default. */
  rows?: number | undefined;
  /** The longest text that fits. Typing goes on past it; `tooLong` is shown instead. */
  longest?: number | undefined;
  /** Said when the text is longer than `longest`. */
  tooLong?: ((length: number) => string) | undefined;
  /** The word for "may stay empty", beside the label. */
  optional?: string | undefined;
  /** Signs of equal width, for codes. */
  code?: boolean | undefined;
  /** For a screen reader, where several fields have the same label. Must contain the label. */
  name?: string | undefined;
  /** The person leaves the slot. */
  onLeave?: (() => void) | undefined;
  /** Enter in the slot. */
  onEnter?: (() => void) | undefined;
  testId?: string | undefined;
}

type SlotKind = NonNullable<FieldProps['kind']>;
type SlotAttributes = Omit<PartialInputHTMLAttributes<HTMLInputElement>, 'role' | 'list' | 'type'>;

/** Numbers are typed as text, so that a comma or a slip is kept and can be spoken of. */
const TypedSlot = ({ kind, ...slot }: { kind: SlotKind } & SlotAttributes) => {
  switch (kind) {
    case 'date':
    case 'time':
      return <input {...slot} type={kind} />;
    case 'password':
      return <input {...slot} type="password" />;
    case 'pin':
      return <input {...slot} type="password" inputMode="numeric" />;
    case 'search':
      return <input {...slot} type="search" />;
    case 'number':
      return <input {...slot} type="text" inputMode="decimal" />;
    case 'url':
      return <input {...slot} type="text" inputMode="url" />;
    case 'text':
      return <input {...slot} type="text" />;
  }
};

/** A length as people count it: one sign, one step, whatever its bytes. */
const signs = (text: string): number => [...text].length;

/** A label, a slot to type in, and what is wrong with it. */
export const Field = (props: FieldProps) => {
  const ids = fieldIds(useId());
  const { value, kind = 'text', rows = 1, longest } = props;
  const length = signs(value);
  const lengthError = longest !== undefined && length > longest ? props.tooLong?.(length) : undefined;
  const words = { label: props.label, hint: props.hint, error: props.error ?? lengthError };
  const shared = {
    id: ids.slot,
    class: props.code ? 'slot code' : 'slot',
    value,
    dir: 'auto' as const,
    autoComplete: 'off' as const,
    'data-testid': props.testId,
    'aria-label': props.name,
    'aria-invalid': words.error ? (true as const) : undefined,
    'aria-describedby': describedBy(ids, words),
    onBlur: props.onLeave,
  };
  return (
    <FieldFrame {...words} ids={ids} optional={props.optional}>
      {rows > 1 ? (
        <textarea {...shared} rows={rows} onInput={(event) => props.onText(event.currentTarget.value)} />
      ) : (
        <span class="slot-row">
          <TypedSlot
            {...shared}
            kind={kind}
            data-kind={kind}
            // A number is mostly typed anew: the first digit takes the place of the old one.
            onFocus={kind === 'number' ? (event) => event.currentTarget.select() : undefined}
            onInput={(event) => props.onText(event.currentTarget.value)}
            onKeyDown={(event) => {
              if (!props.onEnter || !isEnter(event)) return;
              // The form around it has nothing more to do with this Enter.
              event.preventDefault();
              props.onEnter();
            }}
          />
          {props.unit && <span class="slot-unit">{props.unit}</span>}
        </span>
      )}
    </FieldFrame>
  );
};
