import { readId, stageId } from '../../domain/log/ids.ts';
import type { StageFact } from '../../domain/set-up/facts.ts';
import type { Registers } from '../../domain/shop/registers.ts';
import { nameOf } from '../../words/names.ts';
import { stageKindWords } from '../../words/outcome-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { duration } from '../../words/time-words.ts';
import { useShop } from '../parts/app-context.ts';
import { FactPage } from './fact-page.tsx';
import { inRouteOrder, piecesAtStages, stagesOnRoutes } from './set-up-view.ts';
import { keptStages, StageSheet } from './stage-sheet.tsx';

const minute = 60_000;

/** The steps of the work, in the order of the routes. */
export const Stages = () => {
  const shop = useShop();
  const onRoutes = stagesOnRoutes(shop.registers);
  const pieces = piecesAtStages(shop);
  return (
    <FactPage
      register="stage"
      kind="stage"
      lead={words.stagesLead}
      addLabel={words.addStage}
      kept={keptStages}
      toId={(fresh) => readId(stageId, fresh)}
      sheet={StageSheet}
      order={(entries) => inRouteOrder(shop.registers, entries)}
      detail={({ id, fact }) =>
        [
          stageKindWords[fact.kind],
          ...cureWords(shop.registers, fact),
          ...(pieces.get(id) ? [words.here(pieces.get(id) ?? 0)] : []),
          ...(onRoutes.includes(id) ? [] : [words.offRoute]),
        ].join(' · ')
      }
    />
  );
};

function cureWords(registers: Registers, fact: StageFact): readonly string[] {
  if (fact.kind !== 'hold') return [];
  const time = duration(fact.cureMinutes * minute);
  if (fact.resource) return [time, nameOf(registers, { register: 'resource', id: fact.resource })];
  return fact.capacity === null ? [time] : [time, words.places(fact.capacity)];
}
