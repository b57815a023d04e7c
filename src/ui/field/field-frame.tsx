import './field.css';
import type { ComponentChildren } from 'preact';
import { Icon } from '../icon/icon.tsx';

/** What every field says around its slot. */
export interface FieldWords {
  label: string;
  /** What to enter, before anything went wrong. */
  hint?: string | undefined;
  /** What is wrong, what was kept, what to do. What was typed stays. */
  error?: string | undefined;
}

/** The ids that tie label, hint and error to the slot. */
export interface FieldIds {
  slot: string;
  hint: string;
  error: string;
}

/** The ids of one field, from one root. */
export const fieldIds = (root: string): FieldIds => ({
  slot: `${root}-slot`,
  hint: `${root}-hint`,
  error: `${root}-error`,
});

/** Which of hint and error describe the slot now. */
export const describedBy = (ids: FieldIds, words: FieldWords): string | undefined => {
  const ends = [words.hint && ids.hint, words.error && ids.error].filter(Boolean);
  return ends.length > 0 ? ends.join(' ') : undefined;
};

/** Label above, slot, then hint and error at the field itself. */
export const FieldFrame = (
  props: FieldWords & { ids: FieldIds; optional?: string | undefined; children: ComponentChildren },
) => (
  <div class="field" data-wrong={props.error ? true : undefined}>
    <label class="field-label" for={props.ids.slot}>
      {props.label}
      {props.optional && <span class="field-optional"> {props.optional}</span>}
    </label>
    {props.hint && (
      <p class="field-hint" id={props.ids.hint}>
        {props.hint}
      </p>
    )}
    {props.children}
    <p class="field-error" id={props.ids.error} role="status">
      {props.error && (
        <>
          <Icon name="warn" size={24} />
          <span>{props.error}</span>
        </>
      )}
    </p>
  </div>
);
