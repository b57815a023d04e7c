import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../domain/command/whole-number.ts';
import { mostParts } from '../../domain/log/stores-facts.ts';
import { partsToClean } from '../../domain/rollup/parts-on-hand.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { nameOf } from '../../words/names.ts';
import { numberProblemWords, problemWords } from '../../words/problem-words.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import { traysWords } from '../../words/trays-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { CountField } from '../parts/count-field.tsx';
import { Unsaved } from '../parts/unsaved.tsx';
import type { PartSheetProps } from './part-sheet-props.ts';

const bounds = { least: 0, most: mostParts };

/** Saved parts that were cleaned, where some were lost over it. */
export const CleanSheet = ({ part, onClose }: PartSheetProps) => {
  const session = useSession();
  const shop = useShop();
  const [shown] = useState(() => partsToClean(shop, part));
  const [typed, setTyped] = useState({ back: '', lost: '' });
  const [refusal, setRefusal] = useState<{ readonly at: 'back' | 'lost'; readonly says: string } | null>(
    null,
  );
  const change = (next: Partial<typeof typed>) => {
    setTyped({ ...typed, ...next });
    setRefusal(null);
  };
  const save = async () => {
    // What is not typed is none: who lost two says so and nothing else.
    const [back, lost] = [typed.back, typed.lost].map((text) => readWholeNumber(text || '0', bounds));
    if (back?.ok === false) return setRefusal({ at: 'back', says: numberProblemWords(back.problem) });
    if (lost?.ok === false) return setRefusal({ at: 'lost', says: numberProblemWords(lost.problem) });
    const counts = { back: back?.value ?? 0, lost: lost?.value ?? 0 };
    const result = await session.act({ kind: 'clean-parts', part, ...counts, shown });
    if (result.kind === 'refused')
      return setRefusal({ at: 'lost', says: problemWords(result.problem, shop.registers) });
    onClose();
  };
  return (
    <Sheet
      title={words.cleanTitle(nameOf(shop.registers, { register: 'part', id: part }))}
      onClose={onClose}
      closeLabel={words.close}
      testId="clean-sheet"
      foot={
        <PressButton
          tone="go"
          icon="check"
          closing
          label={words.save}
          onAct={() => void save()}
          testId="clean-save"
        />
      }
    >
      <div class="stores-form">
        <p>{words.logSays(shown)}</p>
        {(['back', 'lost'] as const).map((at) => (
          <CountField
            key={at}
            label={at === 'back' ? words.cleanBack : words.cleanLost}
            typed={typed[at]}
            onTyped={(text) => change({ [at]: text })}
            bounds={bounds}
            error={refusal?.at === at ? refusal.says : undefined}
            fewer={traysWords.fewer}
            more={traysWords.moreOne}
            testId={`clean-${at}`}
          />
        ))}
      </div>
      <Unsaved />
    </Sheet>
  );
};
