import { useState } from 'preact/hooks';
import { type RouteId, readId, routeId } from '../../domain/log/ids.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { RouteEdit } from './route-edit.tsx';

/** The routes of the shop; most shops have one. */
export const Route = () => {
  const session = useSession();
  const routes = factsOf(useShop().registers, 'route');
  const [chosen, setChosen] = useState<RouteId | null>(null);
  const id = chosen ?? routes[0]?.id ?? null;
  return (
    <>
      {routes.length > 1 && (
        <ChoiceRow
          label={words.routes}
          choices={routes.map(({ id: value, fact }) => ({ value, label: fact.name }))}
          value={id ?? undefined}
          onChoose={setChosen}
          testId="route-choice"
        />
      )}
      {id && <RouteEdit key={id} id={id} now={routes.find((route) => route.id === id)?.fact} />}
      <div>
        <PressButton
          tone="quiet"
          icon="plus"
          label={words.addRoute}
          onAct={() => setChosen(readId(routeId, session.newId()))}
          testId="add-route"
        />
      </div>
    </>
  );
};
