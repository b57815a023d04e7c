import { noBoxTexts } from '../../domain/set-up/box-texts.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { boxWords as words } from '../../words/box-words.ts';
import { useShop } from '../parts/app-context.ts';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { useForm } from '../parts/form/use-form.ts';
import { type BoxDraft, readBox } from './box-draft.ts';
import { BoxFields } from './box-fields.tsx';
import { SaveForm } from './save-form.tsx';

const kept = keptDrafts<BoxDraft>();

/** What the sheet for the box says of every variant that says nothing else. */
export const BoxPanel = () => {
  const shop = factOf(useShop().registers, { register: 'shop', id: 'shop' });
  const form = useForm({
    id: 'box',
    kept,
    start: shop?.box ?? noBoxTexts,
    read: readBox,
    toSet: (box) => ({
      register: 'shop',
      id: 'shop',
      value: { ...(shop ?? { name: '', zone: 'UTC', dayStartHour: 4 }), box },
    }),
  });
  return (
    <Panel title={words.setUpTitle} lead={words.setUpLead}>
      <SaveForm form={form} kind="box">
        <BoxFields texts={form.draft} onTexts={form.change} errorAt={form.errorAt} testId="box" />
      </SaveForm>
    </Panel>
  );
};
