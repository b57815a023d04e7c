import { countsToCheck } from '../../domain/rollup/waiting.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { dayWords as words } from '../../words/day-words.ts';
import { nameOf } from '../../words/names.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';

/** Trays whose counts disagree with what was tapped; nothing is shown while all agree but that they do. */
export const ChecksPanel = () => {
  const shop = useShop();
  const checks = countsToCheck(shop);
  if (checks.length === 0) return <p data-testid="no-checks">{words.noChecks}</p>;
  return (
    <Panel title={words.checks} lead={words.checksLead} tone="warn">
      <ul class="day-checks">
        {checks.map(({ tray, stage, at, grade, pieces }) => (
          <li key={`${tray.tray}|${stage}|${at}|${grade}`}>
            <PressButton
              icon="recount"
              label={`${tray.code}: ${words.recount}`}
              detail={words.checkDetail(pieces, nameOf(shop.registers, { register: 'stage', id: stage }))}
              onAct={() => goTo('trays', tray.tray)}
              testId={`check-${tray.code}`}
            />
          </li>
        ))}
      </ul>
    </Panel>
  );
};
