import './same-code.css';
import { useState } from 'preact/hooks';
import type { TrayId } from '../../domain/log/ids.ts';
import { traysOfCode, youngerFirst } from '../../domain/rollup/same-code.ts';
import { stagesOfTray } from '../../domain/rollup/waiting.ts';
import type { TrayRecord } from '../../domain/shop/trays.ts';
import { BigCode } from '../../ui/bench/big-code.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { nameOf } from '../../words/names.ts';
import { problemWords } from '../../words/problem-words.ts';
import { sameCodeWords as words } from '../../words/same-code-words.ts';
import { ago } from '../../words/time-words.ts';
import { useSession, useShop } from './app-context.ts';
import { useNow } from './use-now.ts';
import { WoodName } from './wood-name.tsx';

export interface SameCodeSheetProps {
  /** A code that several trays carry. */
  readonly code: string;
  readonly onOpen: (tray: TrayId) => void;
  readonly onClose: () => void;
}

/** Which of the trays that carry one code is meant; and a new code for the youngest that has work left. */
export const SameCodeSheet = ({ code, onOpen, onClose }: SameCodeSheetProps) => {
  const session = useSession();
  const shop = useShop();
  const [refusal, setRefusal] = useState('');
  const [made, setMade] = useState<string | null>(null);
  const trays = traysOfCode(shop, code);
  const live = trays.filter(({ tray }) => stagesOfTray(shop, tray).length > 0);
  const youngest = live.length > 1 ? live.toSorted(youngerFirst)[0] : undefined;
  const recode = async ({ tray }: TrayRecord) => {
    const result = await session.act({ kind: 'recode', tray });
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, shop.registers));
    const split = result.events.find((event) => event.kind === 'tray-split');
    setRefusal('');
    setMade(split?.into.code ?? null);
  };
  return (
    <Sheet
      title={words.title(trays.length, code)}
      onClose={onClose}
      closeLabel={words.close}
      testId="same-code"
    >
      <div class="same-code">
        {made !== null ? (
          <>
            <p>{words.recoded(code)}</p>
            <BigCode code={made} name={words.newCode(made)} testId="new-code" />
          </>
        ) : (
          <>
            <p>{words.which}</p>
            <ul class="same-code-trays">
              {trays.map((tray) => (
                <li key={tray.tray}>
                  <TrayButton tray={tray} onOpen={onOpen} />
                </li>
              ))}
            </ul>
            {youngest && (
              <PressButton
                label={words.recode}
                detail={words.recodeDetail(
                  nameOf(shop.registers, { register: 'variant', id: youngest.variant }),
                )}
                closing
                onAct={() => void recode(youngest)}
                testId="recode"
              />
            )}
          </>
        )}
        {refusal && (
          <p role="alert" data-testid="recode-refusal">
            {refusal}
          </p>
        )}
      </div>
    </Sheet>
  );
};

const TrayButton = ({ tray, onOpen }: { tray: TrayRecord; onOpen: (tray: TrayId) => void }) => {
  const shop = useShop();
  const now = useNow();
  const stages = stagesOfTray(shop, tray.tray);
  const pieces = stages.reduce(
    (sum, { waiting, held }) => sum + waiting.first + waiting.second + held.first + held.second,
    0,
  );
  const where = stages
    .map(({ stage }) => nameOf(shop.registers, { register: 'stage', id: stage }))
    .join(', ');
  return (
    <PressButton
      size="bench-small"
      label={nameOf(shop.registers, { register: 'variant', id: tray.variant })}
      detail={
        <span class="same-code-detail">
          <WoodName species={tray.species} />
          <span>{words.pieces(pieces, where)}</span>
          <span>{words.made(ago(tray.made, now))}</span>
        </span>
      }
      onAct={() => onOpen(tray.tray)}
      testId={`same-code-${tray.tray}`}
    />
  );
};
