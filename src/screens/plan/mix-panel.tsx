import type { ConstraintStudy, MixAnswer } from '../../domain/plan/constraint/constraint-study.ts';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { constraintWords as words } from '../../words/constraint-words.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { studyWords } from '../../words/study-words.ts';
import type { ConstraintNames } from './constraint-names.ts';
import { type ConstraintChoice, mixTimes, readHours } from './constraint-view.ts';

export interface MixPanelProps {
  readonly study: ConstraintStudy;
  readonly choice: ConstraintChoice;
  readonly onChoose: (choice: ConstraintChoice) => void;
  readonly names: ConstraintNames;
  /** Clamps and racks are among the limits. */
  readonly hasPlaces: boolean;
}

/** How many of each variant to make in a stretch of time. */
export const MixPanel = ({ study, choice, onChoose, names, hasPlaces }: MixPanelProps) => (
  <Panel
    title={words.mix}
    lead={words.mixLead}
    actions={<Means label={studyWords.means}>{words.mixMeans}</Means>}
    testId="constraint-mix"
  >
    <div class="plan-fields">
      <SelectField
        label={words.time}
        options={mixTimes.map((value) => ({ value, label: words.times[value] }))}
        value={choice.time}
        onChoose={(time) => onChoose({ ...choice, time })}
        testId="mix-time"
      />
      {choice.time === 'own' && (
        <Field
          label={words.own}
          hint={words.ownHint}
          kind="number"
          unit="h"
          value={choice.own}
          onText={(own) => onChoose({ ...choice, own })}
          error={readHours(choice.own) === undefined ? words.badOwn : undefined}
          testId="mix-own"
        />
      )}
      <SelectField
        label={words.sells}
        options={(['wanted', 'any'] as const).map((value) => ({ value, label: words.sellsOf[value] }))}
        value={choice.sells}
        onChoose={(sells) => onChoose({ ...choice, sells })}
        testId="mix-sells"
      />
    </div>
    {study.mix === null ? (
      <p data-testid="mix-answer">{words.noMixTime}</p>
    ) : (
      <>
        {!hasPlaces && <p class="plan-note">{words.noPlaces}</p>}
        <MixFound answer={study.mix} study={study} names={names} />
      </>
    )}
  </Panel>
);

interface MixFoundProps {
  readonly answer: MixAnswer;
  readonly study: ConstraintStudy;
  readonly names: ConstraintNames;
}

const MixFound = ({ answer: { mix, leftOut }, study, names }: MixFoundProps) => {
  const left = leftOut.length > 0 && (
    <p class="plan-note">{words.leftOut(leftOut.map(names.variant).join(', '))}</p>
  );
  if (mix.kind !== 'mix')
    return (
      <>
        <p data-testid="mix-answer">{words.mixProblems[mix.kind]}</p>
        {left}
      </>
    );
  const made = [...mix.pieces.values()].reduce((sum, each) => sum + each, 0);
  const rows = [...mix.pieces]
    .map(([key, pieces]) => {
      const firstShare = study.demands.find((each) => each.key === key)?.firstShare ?? 1;
      return { key, pieces, firsts: Math.round(pieces * firstShare) };
    })
    .sort((a, b) => b.pieces - a.pieces);
  return (
    <>
      <p class="plan-answer" role="status" data-testid="mix-answer">
        {made === 0 ? words.brings0 : words.brings(words.money(mix.contribution), made)}
      </p>
      {!mix.isProven && <p class="plan-note">{words.notProven(words.money(mix.atMost))}</p>}
      {left}
      <DataTable
        caption={words.mix}
        captionUnseen
        columns={[
          { key: 'variant', head: words.variant, cell: ({ key }) => names.variant(key) },
          { key: 'pieces', head: words.make, numeric: true, cell: ({ pieces }) => wholeNumber(pieces) },
          { key: 'firsts', head: words.firstsOf, numeric: true, cell: ({ firsts }) => wholeNumber(firsts) },
        ]}
        rows={rows}
        rowKey={({ key }) => key}
        testId="mix-pieces"
      />
      <DataTable
        caption={words.limits}
        columns={[
          { key: 'resource', head: words.resource, cell: ({ resource }) => names.resource(resource) },
          {
            key: 'used',
            head: words.used,
            numeric: true,
            cell: ({ resource, used }) => words.timeOf(resource, used),
          },
          {
            key: 'left',
            head: words.left,
            numeric: true,
            cell: (each) => words.timeOf(each.resource, Math.max(0, each.left)),
          },
          {
            key: 'worth',
            head: words.worth,
            numeric: true,
            cell: ({ worth }) => (worth > 0 ? words.money(60 * worth) : words.dash),
          },
        ]}
        rows={mix.resources}
        rowKey={({ resource }) => resource}
        testId="mix-limits"
      />
    </>
  );
};
