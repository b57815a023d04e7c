import { useState } from 'preact/hooks';
import type { RegisterSet } from '../../domain/set-up/register.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { EditSheet } from './edit-sheet.tsx';
import { NameField } from './name-field.tsx';
import { useSave } from './use-save.ts';

export interface NamedSheetProps {
  readonly title: string;
  readonly kind: string;
  /** The fact as it is; a new one has an empty name. */
  readonly now: { readonly name: string; readonly retired: boolean };
  readonly isNew: boolean;
  readonly toSet: (value: { name: string; retired: boolean }) => RegisterSet;
  readonly onClose: () => void;
}

/** The sheet of a thing that has nothing but a name: a reason, a person. */
export const NamedSheet = ({ title, kind, now, isNew, toSet, onClose }: NamedSheetProps) => {
  const { save, errorAt } = useSave();
  const [name, setName] = useState(now.name);
  const saveAs = async (retired: boolean) => {
    if (await save(toSet({ name: tidyText(name), retired }))) onClose();
  };
  return (
    <EditSheet
      title={title}
      kind={kind}
      onClose={onClose}
      onSave={() => void saveAs(now.retired)}
      retired={isNew ? undefined : { is: now.retired, onChange: () => void saveAs(!now.retired) }}
    >
      <NameField name={name} onName={setName} error={errorAt('name')} testId={`${kind}-name`} />
    </EditSheet>
  );
};
