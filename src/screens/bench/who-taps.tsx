import { factsOf } from '../../domain/shop/registers.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { trayChoiceWords as words } from '../../words/tray-choice-words.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';

/** Which of the shop's people holds the tool; asked only where there are several. */
export const WhoTaps = () => {
  const { preferences } = useApp();
  const session = useSession();
  const people = factsOf(useShop().registers, 'person').filter(({ fact }) => !fact.retired);
  return (
    <ChoiceRow
      label={words.whoTaps}
      size="bench-small"
      choices={[
        ...people.map(({ id, fact }) => ({ value: id, label: fact.name })),
        { value: '', label: words.nobody },
      ]}
      value={session.person.value ?? ''}
      onChoose={(value) => {
        const id = people.find((person) => person.id === value)?.id ?? null;
        session.person.value = id;
        preferences.person.value = id;
      }}
    />
  );
};
