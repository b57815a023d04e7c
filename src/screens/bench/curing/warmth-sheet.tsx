import { celsiusOf, cureTime } from '../../../domain/hold/cure-time.ts';
import { celsiusBounds } from '../../../domain/log/moisture-facts.ts';
import { liveStages } from '../../../domain/route/live-stages.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import { Field } from '../../../ui/field/field.tsx';
import { Notice } from '../../../ui/notice/notice.tsx';
import { curingWords as words } from '../../../words/curing-words.ts';
import { setUpWords } from '../../../words/set-up-words.ts';
import { duration } from '../../../words/time-words.ts';
import { useShop } from '../../parts/app-context.ts';
import { EditSheet } from '../../parts/form/edit-sheet.tsx';
import { keptDrafts } from '../../parts/form/kept-drafts.ts';
import { readingOf } from '../../parts/form/reading.ts';
import { readTenths } from '../../parts/form/tenths.ts';
import { useForm } from '../../parts/form/use-form.ts';

interface WarmthDraft {
  readonly celsius: string;
}

const kept = keptDrafts<WarmthDraft>();
const minute = 60_000;

/** Empty is not known. */
const read = (typed: string) =>
  typed.trim() === '' ? null : (readTenths(typed, celsiusBounds) ?? undefined);

/** How warm it is where glue and finish cure, and what that makes of the times. */
export const WarmthSheet = ({ onClose }: { onClose: () => void }) => {
  const { registers } = useShop();
  const shop = factOf(registers, { register: 'shop', id: 'shop' });
  const known = celsiusOf(registers);
  const form = useForm<WarmthDraft, number | null>({
    id: 'warmth',
    kept,
    start: { celsius: known === null ? '' : String(known / 10) },
    read({ celsius }) {
      const tenths = read(celsius);
      return readingOf({ celsius: tenths === undefined ? words.badWarmth : undefined }, () => tenths ?? null);
    },
    toSet: (celsius) => ({
      register: 'shop',
      id: 'shop',
      value: { ...(shop ?? { name: '', zone: 'UTC', dayStartHour: 4 }), celsius },
    }),
  });
  const celsius = read(form.draft.celsius) ?? null;
  const holds = liveStages(registers).flatMap((id) => {
    const fact = factOf(registers, { register: 'stage', id });
    return fact?.kind === 'hold' ? [{ id, fact, time: cureTime(fact, celsius) }] : [];
  });
  return (
    <EditSheet
      title={words.warmthTitle}
      kind="warmth"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={undefined}
    >
      <Field
        label={words.warmthField}
        hint={words.warmthHint}
        optional={setUpWords.optional}
        kind="number"
        unit="°C"
        value={form.draft.celsius}
        onText={(typed) => form.change({ celsius: typed })}
        error={form.errorAt('celsius')}
        testId="warmth-celsius"
      />
      <ul class="warmth-times" role="status" data-testid="warmth-times">
        {holds.map(({ id, fact, time }) => (
          <li key={id}>
            {fact.ratedAt == null
              ? words.warmthNotRated(fact.name, duration(time.recommended * minute))
              : words.warmthOf(fact.name, duration(time.recommended * minute), duration(time.least * minute))}
          </li>
        ))}
      </ul>
      <Notice tone="warn" title={words.warmthRule}>
        {words.warmthFor}
      </Notice>
    </EditSheet>
  );
};
