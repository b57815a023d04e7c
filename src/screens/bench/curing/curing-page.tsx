import './curing.css';
import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import type { ActResult } from '../../../app/session.ts';
import { celsiusOf } from '../../../domain/hold/cure-time.ts';
import type { CureRound } from '../../../domain/rollup/holds.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import { EmptyState } from '../../../ui/notice/empty-state.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { curingWords as words } from '../../../words/curing-words.ts';
import { nameOf } from '../../../words/names.ts';
import { problemWords } from '../../../words/problem-words.ts';
import { goTo } from '../../parts/address.ts';
import { useSession, useShop } from '../../parts/app-context.ts';
import { Unsaved } from '../../parts/unsaved.tsx';
import { useFeedback } from '../../parts/use-feedback.ts';
import { useNow } from '../../parts/use-now.ts';
import { StageSays } from '../stage-says.tsx';
import { CalendarButton } from './calendar-button.tsx';
import { CuringRow } from './curing-row.tsx';
import { type CureGroup, curingView, unloading } from './curing-view.ts';
import { WarmthSheet } from './warmth-sheet.tsx';

/** How often the times on the board are looked at anew, ms. */
const betweenLooks = 5000;

/** All that cures, with its clamps and racks. */
export const CuringPage = () => {
  const session = useSession();
  const shop = useShop();
  const { sound } = useFeedback();
  useNow(betweenLooks);
  const now = session.now();
  const [refusal, setRefusal] = useState('');
  const [warmth, setWarmth] = useState(false);
  const groups = curingView(shop, now);
  const nothing = session.canUndo.value ? undefined : words.nothingToUndo;

  const answer = (result: ActResult, saved: 'saved' | 'undone') => {
    const refused = result.kind === 'refused';
    setRefusal(refused ? problemWords(result.problem, shop.registers) : '');
    sound(refused ? 'refused' : saved);
  };
  const takeOut = async (round: CureRound) => {
    for (const command of unloading(shop, round)) answer(await session.act(command), 'saved');
  };

  return (
    <main class="stages bench-margin curing" data-testid="curing-board">
      <header class="stages-head">
        <div>
          <h1>{words.title}</h1>
          <p>{words.lead}</p>
        </div>
        <PressButton
          size="bench-small"
          icon="back"
          label={words.back}
          onAct={() => goTo('bench')}
          testId="curing-back"
        />
      </header>
      {groups.length === 0 ? (
        <EmptyState title={words.noHolds}>{words.noHoldsDetail}</EmptyState>
      ) : (
        groups.every(({ rows }) => rows.length === 0) && (
          <EmptyState title={words.nothing}>{words.nothingDetail}</EmptyState>
        )
      )}
      {groups.map((group) => (
        <Group key={group.key} group={group} now={now} onTakeOut={(round) => void takeOut(round)} />
      ))}
      <div class="tray-choice-ways">
        {factOf(shop.registers, { register: 'shop', id: 'shop' }) && (
          <PressButton
            size="bench-small"
            label={words.warmth(celsiusOf(shop.registers))}
            detail={words.warmthDetail(celsiusOf(shop.registers))}
            onAct={() => setWarmth(true)}
            testId="curing-warmth"
          />
        )}
        <CalendarButton />
      </div>
      <footer class="curing-foot">
        <div class="curing-says">
          <StageSays refusal={refusal} caution="" />
        </div>
        <PressButton
          size="bench"
          icon={nothing === undefined ? 'undo' : undefined}
          label={words.undo}
          disabledReason={nothing}
          onAct={() => void session.undoLast().then((result) => answer(result, 'undone'))}
          testId="undo"
        />
      </footer>
      {warmth && <WarmthSheet onClose={() => setWarmth(false)} />}
      <Unsaved />
    </main>
  );
};

interface GroupProps {
  readonly group: CureGroup;
  readonly now: number;
  readonly onTakeOut: (round: CureRound) => void;
}

const Group = ({ group: { key, resource, limit, stages, rows }, now, onTakeOut }: GroupProps) => {
  const { registers } = useShop();
  const stageName = (id: string) => nameOf(registers, { register: 'stage', id });
  const name =
    resource === null
      ? stages.map(({ stage }) => stageName(stage)).join(', ')
      : nameOf(registers, { register: 'resource', id: resource });
  const several = stages.length > 1;
  return (
    <section class="curing-group" data-testid={`curing-${key}`}>
      <header class="curing-head">
        <h2>
          <span dir="auto">{name}</span>
          <b data-testid={`places-${key}`}>{words.places(limit)}</b>
        </h2>
        <div class="tray-choice-ways">
          {stages.map(({ stage, waiting, mixes }) => (
            <Fragment key={stage}>
              {waiting > 0 && (
                <PressButton
                  size="bench-small"
                  icon="hold"
                  label={words.load}
                  name={words.loadAt(stageName(stage))}
                  detail={several ? `${stageName(stage)}: ${words.waiting(waiting)}` : words.waiting(waiting)}
                  onAct={() => goTo('bench', stage)}
                  testId={`curing-load-${stage}`}
                />
              )}
              {mixes && (
                <PressButton
                  size="bench-small"
                  label={words.mix}
                  name={words.mixFor(stageName(stage))}
                  detail={several ? stageName(stage) : undefined}
                  onAct={() => goTo('bench', 'mix', stage)}
                  testId={`curing-mix-${stage}`}
                />
              )}
            </Fragment>
          ))}
        </div>
      </header>
      <ol class="curing-rows">
        {rows.map((row) => (
          <CuringRow key={row.key} row={row} now={now} onTakeOut={onTakeOut} />
        ))}
      </ol>
    </section>
  );
};
