import './raise.css';
import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../../domain/command/whole-number.ts';
import type { ReasonId } from '../../../domain/log/ids.ts';
import { ChoiceRow } from '../../../ui/field/choice-row.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { Sheet } from '../../../ui/sheet/sheet.tsx';
import { nameOf } from '../../../words/names.ts';
import { ofGrade } from '../../../words/outcome-words.ts';
import { numberProblemWords, problemWords } from '../../../words/problem-words.ts';
import { raiseWords as words } from '../../../words/raise-words.ts';
import { useSession, useShop } from '../app-context.ts';
import { CountField } from '../count-field.tsx';
import { Unsaved } from '../unsaved.tsx';
import { blemishesToClear, raiseCommand, type Seconds, secondsKey, shownOf } from './raise-view.ts';

export interface RaiseSheetProps {
  /** The code of the tray, or the name of the variant. */
  readonly what: string;
  readonly seconds: readonly Seconds[];
  readonly onClose: () => void;
}

/** Seconds that were reworked become firsts again, with the blemish that is gone. */
export const RaiseSheet = ({ what, seconds, onClose }: RaiseSheetProps) => {
  const [key, setKey] = useState<string | undefined>();
  const chosen = seconds.find((each) => secondsKey(each) === key) ?? seconds[0];
  const title = words.title(what);
  if (chosen) return <Raise {...{ title, seconds, chosen, onClose }} onChoose={setKey} />;
  return (
    <Sheet title={title} onClose={onClose} closeLabel={words.close} testId="raise-sheet">
      <p>{words.none}</p>
    </Sheet>
  );
};

interface RaiseProps extends Pick<RaiseSheetProps, 'seconds' | 'onClose'> {
  readonly title: string;
  readonly chosen: Seconds;
  readonly onChoose: (key: string) => void;
}

const Raise = ({ title, seconds, chosen, onChoose, onClose }: RaiseProps) => {
  const session = useSession();
  const shop = useShop();
  const blemishes = blemishesToClear(shop, chosen);
  const [typed, setTyped] = useState('1');
  // Where there is but one blemish, that is what is gone.
  const [gone, setGone] = useState<ReadonlySet<ReasonId> | 'none' | null>(
    blemishes.length === 1 ? new Set(blemishes) : null,
  );
  const [refusal, setRefusal] = useState('');
  const [tried, setTried] = useState(false);
  const bounds = { least: 1, most: shownOf(chosen) };
  const read = readWholeNumber(typed, bounds);
  const open = blemishes.length > 0 && (gone === null || (gone !== 'none' && gone.size === 0));
  const save = async () => {
    setTried(true);
    if (!read.ok || open) return;
    const reasons = gone === 'none' || gone === null ? [] : [...gone];
    const result = await session.act(raiseCommand(chosen, { pieces: read.value, gone: reasons }));
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, shop.registers));
    onClose();
  };
  return (
    <Sheet
      title={title}
      onClose={onClose}
      closeLabel={words.close}
      testId="raise-sheet"
      foot={
        <PressButton
          size="bench-small"
          tone="go"
          icon="up"
          closing
          label={read.ok ? words.save(read.value) : words.open}
          onAct={() => void save()}
          testId="raise-save"
        />
      }
    >
      <div class="raise-form">
        <p>{words.lead}</p>
        <Which {...{ seconds, chosen, onChoose }} />
        <CountField
          label={words.howMany}
          typed={typed}
          onTyped={(text) => {
            setTyped(text);
            setRefusal('');
          }}
          bounds={bounds}
          error={refusal || (tried && !read.ok ? numberProblemWords(read.problem) : undefined)}
          fewer={words.fewer}
          more={words.more}
          testId="raise-pieces"
        />
        <Gone blemishes={blemishes} gone={gone} onGone={setGone} missing={tried && open} />
        <p>{words.stands}</p>
        <Unsaved />
      </div>
    </Sheet>
  );
};

/** Which seconds are meant; not asked where there is but one place with any. */
const Which = ({ seconds, chosen, onChoose }: Pick<RaiseProps, 'seconds' | 'chosen' | 'onChoose'>) => {
  const { registers } = useShop();
  const says = (each: Seconds) => {
    if (each.kind === 'finished') return words.finished(each.shown);
    const { stage, shown } = each.spot;
    return `${nameOf(registers, { register: 'stage', id: stage })}: ${ofGrade(shown, 'second')}`;
  };
  if (seconds.length < 2) return <p data-testid="raise-where">{says(chosen)}</p>;
  return (
    <ChoiceRow
      label={words.which}
      choices={seconds.map((each) => ({ value: secondsKey(each), label: says(each) }))}
      value={secondsKey(chosen)}
      onChoose={onChoose}
      testId="raise-where"
    />
  );
};

interface GoneProps {
  readonly blemishes: readonly ReasonId[];
  readonly gone: ReadonlySet<ReasonId> | 'none' | null;
  readonly onGone: (gone: ReadonlySet<ReasonId> | 'none') => void;
  readonly missing: boolean;
}

/** The blemishes that were worked out: several at once, or none of those that are noted. */
const Gone = ({ blemishes, gone, onGone, missing }: GoneProps) => {
  const { registers } = useShop();
  const chosen = gone === 'none' || gone === null ? new Set<ReasonId>() : gone;
  if (blemishes.length === 0) return <p>{words.goneNone}</p>;
  return (
    <fieldset class="raise-gone" aria-describedby="raise-gone-missing">
      <legend class="field-label">{words.gone}</legend>
      <div class="raise-choices">
        {blemishes.map((reason) => (
          <PressButton
            key={reason}
            label={nameOf(registers, { register: 'reason', id: reason })}
            selected={chosen.has(reason)}
            onAct={() => onGone(toggled(chosen, reason))}
            testId={`raise-gone-${reason}`}
          />
        ))}
        <PressButton
          label={words.noneOfThese}
          tone="quiet"
          selected={gone === 'none'}
          onAct={() => onGone('none')}
          testId="raise-gone-none"
        />
      </div>
      <p class="field-error" id="raise-gone-missing" role="status">
        {missing && words.goneMissing}
      </p>
    </fieldset>
  );
};

function toggled(chosen: ReadonlySet<ReasonId>, reason: ReasonId): ReadonlySet<ReasonId> {
  const next = new Set(chosen);
  if (!next.delete(reason)) next.add(reason);
  return next;
}
