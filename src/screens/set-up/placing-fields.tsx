import { factsOf } from '../../domain/shop/registers.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { nameOf } from '../../words/names.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import type { Placing } from './stage-draft.ts';

export interface PlacingFieldsProps {
  readonly placing: Placing;
  readonly onPlacing: (placing: Placing) => void;
}

/** Where on which route a stage goes, as one list: nowhere, at the start of a route, or after one of its stages. */
export const PlacingFields = ({ placing, onPlacing }: PlacingFieldsProps) => {
  const { registers } = useShop();
  const routes = factsOf(registers, 'route');
  const several = routes.length > 1;
  const offered = [
    { placing: { kind: 'nowhere' } as const, label: words.notOnRoute },
    ...routes.flatMap(({ id: route, fact }) => {
      const label = (words: string) => (several ? `${fact.name}: ${words}` : words);
      return [
        { placing: { kind: 'start', route } as const, label: label(words.atStart) },
        ...fact.stages.map((stage) => ({
          placing: { kind: 'after', route, stage } as const,
          label: label(words.after(nameOf(registers, { register: 'stage', id: stage }))),
        })),
      ];
    }),
  ];
  return (
    <SelectField
      label={words.whereOnRoute}
      options={offered.map((each) => ({ value: keyOf(each.placing), label: each.label }))}
      value={keyOf(placing)}
      onChoose={(key) => {
        const chosen = offered.find((each) => keyOf(each.placing) === key);
        if (chosen) onPlacing(chosen.placing);
      }}
      testId="stage-placing"
    />
  );
};

function keyOf(placing: Placing): string {
  switch (placing.kind) {
    case 'nowhere':
      return 'nowhere';
    case 'start':
      return `${placing.route}/`;
    case 'after':
      return `${placing.route}/${placing.stage}`;
  }
}
