import { useState } from 'preact/hooks';
import type { TrayRecord } from '../../domain/shop/trays.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { problemWords } from '../../words/problem-words.ts';
import { traysWords as words } from '../../words/trays-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { spotWords } from './spot-words.ts';
import { joinTargets, spotsOf, traysInWork } from './trays-view.ts';

/** All pieces of a tray go over to another of the same variant and batch. */
export const JoinSheet = ({ tray, onClose }: { tray: TrayRecord; onClose: () => void }) => {
  const session = useSession();
  const shop = useShop();
  const targets = joinTargets(traysInWork(shop).live, tray);
  const [code, setCode] = useState<string | undefined>(
    targets.length === 1 ? targets[0]?.tray.code : undefined,
  );
  const [refusal, setRefusal] = useState<string | undefined>();
  const save = async () => {
    const into = targets.find((each) => each.tray.code === code)?.tray.tray;
    if (!into) return setRefusal(words.joinChoose);
    const result = await session.act({ kind: 'join', tray: tray.tray, into });
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, shop.registers));
    onClose();
    goTo('trays', into);
  };
  return (
    <Sheet title={words.joinTitle(tray.code)} onClose={onClose} closeLabel={words.close} testId="join-sheet">
      <div class="trays-form">
        <p>{targets.length === 0 ? words.joinNone : words.joinHelp}</p>
        {targets.length > 0 && (
          <>
            <ChoiceRow
              label={words.joinWhich}
              size="bench-small"
              choices={targets.map((row) => ({
                value: row.tray.code,
                label: row.tray.code,
                detail: spotsOf(row)
                  .map((spot) => spotWords(spot, shop.registers))
                  .join(', '),
              }))}
              value={code}
              onChoose={setCode}
              error={refusal}
              testId="join-choice"
            />
            <PressButton
              size="bench-small"
              tone="go"
              closing
              icon="join"
              label={code ? words.joinSave(code) : words.joinSaveNone}
              onAct={() => void save()}
              testId="join-save"
            />
          </>
        )}
      </div>
    </Sheet>
  );
};
