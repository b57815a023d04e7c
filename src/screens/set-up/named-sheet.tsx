import type { RegisterSet } from '../../domain/set-up/register.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import type { KeptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { nameProblem, readingOf } from '../parts/form/reading.ts';
import { useForm } from '../parts/form/use-form.ts';

export interface Named {
  readonly name: string;
}

export interface NamedSheetProps {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  /** The fact as it is; none while it is new. */
  readonly now: (Named & { readonly retired: boolean }) | undefined;
  readonly kept: KeptDrafts<Named>;
  readonly toSet: (value: { name: string; retired: boolean }) => RegisterSet;
  readonly onClose: () => void;
}

/** The sheet of a thing that has nothing but a name: a reason, a person. */
export const NamedSheet = ({ id, title, kind, now, kept, toSet, onClose }: NamedSheetProps) => {
  const form = useForm({
    id,
    kept,
    start: { name: now?.name ?? '' },
    read: ({ name }) => readingOf({ name: nameProblem(name) }, () => tidyText(name)),
    toSet: (name) => toSet({ name, retired: now?.retired ?? false }),
  });
  return (
    <EditSheet
      title={title}
      kind={kind}
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={now && { is: now.retired, onChange: (retired) => form.put(toSet({ name: now.name, retired })) }}
    >
      <NameField
        name={form.draft.name}
        onName={(name) => form.change({ name })}
        error={form.errorAt('name')}
        testId={`${kind}-name`}
      />
    </EditSheet>
  );
};
