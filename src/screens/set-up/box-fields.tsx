import type { BoxTexts } from '../../domain/set-up/box-texts.ts';
import { longestNote } from '../../domain/set-up/text-schema.ts';
import { Field } from '../../ui/field/field.tsx';
import { boxWords as words } from '../../words/box-words.ts';
import { setUpWords } from '../../words/set-up-words.ts';

export interface BoxFieldsProps {
  readonly texts: BoxTexts;
  readonly onTexts: (change: Partial<BoxTexts>) => void;
  readonly errorAt: (text: keyof BoxTexts) => string | undefined;
  /** What stands there when nothing is typed; left out where the shop's own texts are typed. */
  readonly ofShop?: BoxTexts | undefined;
  readonly testId: string;
}

const fields = [
  { of: 'finish', label: words.finishLabel, hint: words.finishHint },
  { of: 'care', label: words.careLabel, hint: words.careHint },
  { of: 'caution', label: words.cautionLabel, hint: words.cautionHint },
] as const;

/** The texts of a sheet for the box; each may stay empty. */
export const BoxFields = ({ texts, onTexts, errorAt, ofShop, testId }: BoxFieldsProps) => (
  <>
    {fields.map(({ of, label, hint }) => (
      <Field
        key={of}
        label={label}
        hint={ofShop ? words.ofShop(ofShop[of]) : hint}
        optional={setUpWords.optional}
        rows={3}
        value={texts[of]}
        onText={(text) => onTexts({ [of]: text })}
        longest={longestNote}
        tooLong={(length) => setUpWords.tooLong(length, longestNote)}
        error={errorAt(of)}
        testId={`${testId}-${of}`}
      />
    ))}
  </>
);
