import { useState } from 'preact/hooks';
import type { ReasonId } from '../../domain/log/ids.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { nameOf } from '../../words/names.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { useShop } from '../parts/app-context.ts';
import type { BenchView } from './bench-view.ts';
import { CriterionHint } from './criterion-hint.tsx';
import { useFlawKeys } from './use-bench-keys.ts';

export interface FlawButtonsProps {
  readonly view: BenchView;
  readonly disabledReason: string | undefined;
  readonly onFlaw: (reason: ReasonId) => void;
}

/** How many flaws have a button of their own beside pass and undo, with eight acting buttons in all. */
const mostShown = { bench: 6, bulk: 4, hold: 3 } as const;

/** The flaws of the stage, each in its place for good; those that find no room are behind the last button. */
export const FlawButtons = ({ view, disabledReason, onFlaw }: FlawButtonsProps) => {
  const { registers } = useShop();
  const [others, setOthers] = useState(false);
  const { reasons, kind, bulk } = view.stage;
  const most = mostShown[kind === 'hold' ? 'hold' : bulk ? 'bulk' : 'bench'];
  const fits = reasons.length <= most;
  const shown = fits ? reasons : reasons.slice(0, most - 1);
  const keys = useFlawKeys(shown.map((reason) => () => disabledReason === undefined && onFlaw(reason)));
  const name = (id: ReasonId) => nameOf(registers, { register: 'reason', id });
  return (
    <>
      {shown.map((reason, index) => (
        <PressButton
          key={reason}
          size="bench"
          tone="flaw"
          label={name(reason)}
          detail={kind === 'check' && <CriterionHint reason={reason} />}
          disabledReason={disabledReason}
          keyHint={keys[index]}
          onAct={() => onFlaw(reason)}
          testId={`flaw-${reason}`}
        />
      ))}
      {!fits && (
        <PressButton
          size="bench"
          tone="flaw"
          icon="more"
          label={words.otherFlaw}
          onAct={() => setOthers(true)}
        />
      )}
      {others && (
        <Sheet
          title={words.otherFlaw}
          closeLabel={words.cancel}
          onClose={() => setOthers(false)}
          shape="whole"
        >
          <div class="tray-rack">
            {reasons.slice(most - 1).map((reason) => (
              <PressButton
                key={reason}
                size="bench"
                tone="flaw"
                label={name(reason)}
                onAct={() => {
                  setOthers(false);
                  onFlaw(reason);
                }}
              />
            ))}
          </div>
        </Sheet>
      )}
    </>
  );
};
