import { factsOf } from '../../domain/shop/registers.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';

const nobody = '';

/** Who taps on this tablet; a person who is put away is offered no more. */
export const WhoTaps = () => {
  const { preferences } = useApp();
  const session = useSession();
  const now = session.person.value;
  const people = factsOf(useShop().registers, 'person').filter(({ id, fact }) => !fact.retired || id === now);
  return (
    <ChoiceRow
      label={words.who}
      choices={[
        ...people.map(({ id, fact }) => ({ value: `${id}`, label: fact.name })),
        { value: nobody, label: words.nobody },
      ]}
      value={now ?? nobody}
      onChoose={(value) => {
        const id = people.find((person) => person.id === value)?.id ?? null;
        session.person.value = id;
        preferences.person.value = id;
      }}
      testId="who-taps"
    />
  );
};

export const WhoTapsPanel = () => (
  <Panel title={words.tablet}>
    <WhoTaps />
  </Panel>
);
