import { Notice } from '../../ui/notice/notice.tsx';
import { nameOf } from '../../words/names.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { looseParts, type RouteDraft } from './route-draft.ts';

/** Warns of variants whose parts are fitted at a stage that leaves the route. */
export const LooseParts = ({ draft }: { draft: RouteDraft }) => {
  const { registers } = useShop();
  const loose = looseParts(registers, draft);
  if (loose.length === 0) return null;
  return (
    <Notice tone="warn" title={words.looseParts} testId="route-loose-parts">
      <p>{words.loosePartsLead}</p>
      <ul class="set-up-list">
        {loose.map(({ variant, stage }) => (
          <li key={`${variant.id} ${stage}`}>
            {variant.fact.name}: {nameOf(registers, { register: 'stage', id: stage })}
          </li>
        ))}
      </ul>
    </Notice>
  );
};
