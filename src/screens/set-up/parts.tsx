import { useState } from 'preact/hooks';
import { type PartId, partId, readId } from '../../domain/log/ids.ts';
import type { PartFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { EditSheet } from './edit-sheet.tsx';
import { FactList } from './fact-list.tsx';
import { NameField } from './name-field.tsx';
import { useSave } from './use-save.ts';

/** Cores, ferrules, blanks and consumables. */
export const Parts = () => {
  const session = useSession();
  const [open, setOpen] = useState<PartId | null>(null);
  const entries = factsOf(useShop().registers, 'part');
  const picked = entries.find(({ id }) => id === open)?.fact;
  return (
    <>
      <FactList
        title={words.parts}
        lead={words.partsLead}
        entries={entries}
        detail={({ fact }) => words.sorts[fact.sort]}
        addLabel={words.addPart}
        onAdd={() => setOpen(readId(partId, session.newId()))}
        onPick={({ id }) => setOpen(id)}
        kind="part"
      />
      {open && <PartSheet id={open} now={picked} onClose={() => setOpen(null)} />}
    </>
  );
};

const sorts: readonly PartFact['sort'][] = ['ferrule', 'core', 'blank', 'consumable'];

const PartSheet = ({ id, now, onClose }: { id: PartId; now: PartFact | undefined; onClose: () => void }) => {
  const { save, errorAt } = useSave();
  const [name, setName] = useState(now?.name ?? '');
  const [sort, setSort] = useState<PartFact['sort']>(now?.sort ?? 'ferrule');
  const saveAs = async (retired: boolean) => {
    if (await save({ register: 'part', id, value: { name: tidyText(name), sort, retired } })) onClose();
  };
  const retired = now?.retired ?? false;
  return (
    <EditSheet
      title={now ? words.parts : words.addPart}
      kind="part"
      onClose={onClose}
      onSave={() => void saveAs(retired)}
      retired={now && { is: retired, onChange: () => void saveAs(!retired) }}
    >
      <NameField name={name} onName={setName} error={errorAt('name')} testId="part-name" />
      <ChoiceRow
        label={words.sort}
        choices={sorts.map((value) => ({ value, label: words.sorts[value] }))}
        value={sort}
        onChoose={setSort}
        testId="part-sort"
      />
    </EditSheet>
  );
};
