import type { BatchPlan } from '../../domain/set-up/batch-facts.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { keepPlanWords as words } from '../../words/keep-plan-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { planOfForecast, type ToKeep } from './keep-plan-view.ts';

/** What the forecast comes to in all, to be kept as what the batch was planned to be. */
export const KeepPlanPanel = (props: Omit<ToKeep, 'today' | 'zone'>) => {
  const session = useSession();
  const shop = useShop();
  const id = props.batch.batch;
  const fact = factOf(shop.registers, { register: 'batch', id });
  if (!fact) return null;
  const plan = planOfForecast(shop, { ...props, today: session.today(), zone: session.zone() });
  const kept = fact.plan;
  const keep = () =>
    void session.act({ kind: 'set', set: { register: 'batch', id, value: { ...fact, plan } } });
  return (
    <Panel
      title={words.title}
      lead={words.lead}
      actions={<Means label={studyWords.means}>{words.means}</Means>}
      testId="keep-plan"
    >
      <p data-testid="plan-now">{sentence(plan)}</p>
      {kept && (
        <p class="plan-note" data-testid="plan-kept">
          {words.kept(kept.day, sentence(kept))}
        </p>
      )}
      <div class="plan-acts">
        <PressButton
          icon="check"
          label={kept ? words.keepInstead : words.keep}
          onAct={keep}
          testId="plan-keep"
        />
      </div>
    </Panel>
  );
};

const sentence = ({ started, firsts, comesOut, minutes, cost, done }: BatchPlan) =>
  words.sentence({ started, firsts, seconds: comesOut - firsts, minutes, cost, done });
