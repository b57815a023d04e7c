import type { StageId } from '../../domain/log/ids.ts';
import { type StageKind, stageKinds } from '../../domain/set-up/facts.ts';
import { factOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { stageKindWords } from '../../words/outcome-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { type KeptDrafts, keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { useForm } from '../parts/form/use-form.ts';
import { CautionField } from './caution-field.tsx';
import type { FactSheetProps } from './fact-page.tsx';
import { FlawButtonsEdit } from './flaw-buttons-edit.tsx';
import { HoldFields } from './hold-fields.tsx';
import { PlacingFields } from './placing-fields.tsx';
import { curingAt, stagesOnRoutes, whyStageStays } from './set-up-view.ts';
import { StageDoingsField } from './stage-doings-field.tsx';
import { readStage, type StageDraft, stageDraftOf, usualPlacing, withStage } from './stage-draft.ts';

export const keptStages: KeptDrafts<StageDraft> = keptDrafts<StageDraft>();

/** Name, kind, cure, place on the route, flaw buttons, what it does to people, and caution of a stage. */
export const StageSheet = ({ id, now, onClose }: FactSheetProps<'stage'>) => {
  const session = useSession();
  const shop = useShop();
  const { registers } = shop;
  const onRoute = stagesOnRoutes(registers).includes(id);
  const form = useForm({
    id,
    kept: keptStages,
    start: stageDraftOf(now, now ? { kind: 'nowhere' } : usualPlacing(registers)),
    read: (draft) => readStage(draft, { curing: curingAt(shop, id) }),
    toSet: (stage) => ({ register: 'stage', id, value: { ...stage, retired: now?.retired ?? false } }),
  });
  const { draft, change, errorAt } = form;

  async function save(): Promise<boolean> {
    const { placing } = draft;
    if (!(await form.save())) return false;
    const fact =
      placing.kind === 'nowhere' ? undefined : factOf(registers, { register: 'route', id: placing.route });
    if (placing.kind === 'nowhere' || !fact || onRoute) return true;
    const stages = withStage(fact.stages, { stage: id, placing });
    // A stage that comes in between asks no piece to move, so there is nowhere to send any.
    const result = await session.act({
      kind: 'change-route',
      route: placing.route,
      name: fact.name,
      stages,
      destinations: new Map(),
    });
    // Refused only while pieces stand off the route: the route's own page asks where they go.
    if (result.kind === 'refused') goTo('set-up', 'route');
    return true;
  }

  return (
    <EditSheet
      title={now ? words.editStage : words.addStage}
      kind="stage"
      form={form}
      onSave={save}
      onClose={onClose}
      away={
        now && {
          is: now.retired,
          refusedBecause: awayWords(shop, id),
          onChange: (retired) => form.put({ register: 'stage', id, value: { ...now, retired } }),
        }
      }
    >
      <NameField
        name={draft.name}
        onName={(name) => change({ name })}
        error={errorAt('name')}
        testId="stage-name"
      />
      <ChoiceRow<StageKind>
        label={words.kind}
        choices={stageKinds.map((value) => ({ value, label: stageKindWords[value] }))}
        value={draft.kind}
        onChoose={(kind) => change({ kind })}
        error={errorAt('kind')}
        testId="stage-kind"
      />
      {draft.kind === 'hold' && <HoldFields form={form} />}
      {!onRoute && <PlacingFields placing={draft.placing} onPlacing={(placing) => change({ placing })} />}
      <ChoiceRow
        label={words.bulk}
        choices={[
          { value: 'no', label: words.bulkNo },
          { value: 'yes', label: words.bulkYes },
        ]}
        value={draft.bulk ? 'yes' : 'no'}
        onChoose={(value) => change({ bulk: value === 'yes' })}
        testId="stage-bulk"
      />
      <FlawButtonsEdit reasons={draft.reasons} onReasons={(reasons) => change({ reasons })} />
      <StageDoingsField does={draft.does} onDoes={(does) => change({ does })} />
      <CautionField
        caution={draft.caution}
        onCaution={(caution) => change({ caution })}
        error={errorAt('caution')}
        testId="stage-caution"
      />
    </EditSheet>
  );
};

function awayWords(shop: Shop, stage: StageId): string | undefined {
  const why = whyStageStays(shop, stage);
  if (!why) return undefined;
  return why.kind === 'on-route' ? words.onRouteAway : words.holdsAway(why.pieces);
}
