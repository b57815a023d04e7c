import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../domain/command/whole-number.ts';
import type { PartId } from '../../domain/log/ids.ts';
import { mostParts } from '../../domain/log/stores-facts.ts';
import { partsOnHand } from '../../domain/rollup/parts-on-hand.ts';
import { longestNote } from '../../domain/set-up/text-schema.ts';
import { NumberPad } from '../../ui/entry/number-pad.tsx';
import { Field } from '../../ui/field/field.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { eventWords } from '../../words/event-words.ts';
import { nameOf } from '../../words/names.ts';
import { numberProblemWords, problemWords } from '../../words/problem-words.ts';
import { samplingWords as words } from '../../words/sampling-words.ts';
import { storesWords } from '../../words/stores-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { Unsaved } from '../parts/unsaved.tsx';
import { useHistory } from '../parts/use-history.ts';
import type { Proposed } from './count-sheet.tsx';
import { HowManyToCheck, useLimit } from './how-many-to-check.tsx';
import type { PartSheetProps } from './part-sheet-props.ts';
import { howMany, lastDelivery, type SampledEvent, whatIsLeft } from './sampling-view.ts';

export interface SampleSheetProps extends PartSheetProps {
  /** The person goes on to count out what is not kept. */
  readonly onCount: (proposed: Proposed) => void;
}

/** What a sample of a delivery came to: how many came, how many to check, how many of them were bad. */
export const SampleSheet = ({ part, onClose, onCount }: SampleSheetProps) => {
  const { registers } = useShop();
  const [refused, setRefused] = useState<SampledEvent | undefined>();
  return refused ? (
    <RefusedSheet event={refused} onClose={onClose} onCount={onCount} />
  ) : (
    <Entry
      part={part}
      title={words.sampleTitle(nameOf(registers, { register: 'part', id: part }))}
      onClose={onClose}
      onRefused={setRefused}
    />
  );
};

interface EntryProps extends PartSheetProps {
  readonly title: string;
  readonly onRefused: (event: SampledEvent) => void;
}

const Entry = ({ part, title, onClose, onRefused }: EntryProps) => {
  const session = useSession();
  const { registers } = useShop();
  const came = useCame(part);
  const [limit, chooseLimit] = useLimit();
  const [bad, setBad] = useState('');
  const [note, setNote] = useState('');
  const [refusal, setRefusal] = useState<string | undefined>();
  const lot = readWholeNumber(came.typed, { least: 1, most: mostParts });
  const save = async () => {
    const found = readWholeNumber(bad, { least: 0, most: mostParts });
    if (!lot.ok) return came.complain(numberProblemWords(lot.problem));
    if (!found.ok) return setRefusal(numberProblemWords(found.problem));
    const counts = { lot: lot.value, limit, bad: found.value };
    const result = await session.act({ kind: 'sample-parts', part, ...counts, note });
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, registers));
    const event = result.events.find((each): each is SampledEvent => each.kind === 'parts-sampled');
    if (event?.verdict === 'refused') onRefused(event);
    else onClose();
  };
  return (
    <Sheet
      title={title}
      onClose={onClose}
      closeLabel={storesWords.close}
      shape="whole"
      testId="sample-sheet"
      foot={
        <PressButton
          tone="go"
          icon="check"
          closing
          label={words.keep}
          onAct={() => void save()}
          testId="sample-save"
        />
      }
    >
      <div class="stores-entry">
        <NumberPad
          label={words.badAmong(lot.ok ? howMany(lot.value, limit) : undefined)}
          typed={bad}
          onTyped={(text) => {
            setBad(text);
            setRefusal(undefined);
          }}
          eraseLabel={storesWords.erase}
          error={refusal}
          onEnter={() => void save()}
          testId="sample-bad"
        />
        <div class="stores-form">
          <Field
            label={storesWords.received}
            kind="number"
            value={came.typed}
            onText={came.type}
            error={came.problem}
            testId="sample-lot"
          />
          <HowManyToCheck came={lot.ok ? lot.value : undefined} limit={limit} onLimit={chooseLimit} />
          <Field
            label={storesWords.note}
            optional={storesWords.optional}
            value={note}
            onText={setNote}
            longest={longestNote}
            tooLong={(length) => storesWords.tooLong(length, longestNote)}
            testId="sample-note"
          />
        </div>
      </div>
      <Unsaved />
    </Sheet>
  );
};

/** How many came: as many as the last delivery brought, until something else is typed. */
function useCame(part: PartId) {
  const history = useHistory(`part/${part}`);
  const { voids } = useShop();
  const [typed, setTyped] = useState<string | undefined>();
  const [problem, complain] = useState<string | undefined>();
  const proposed = lastDelivery(history, { part, voids });
  return {
    typed: typed ?? (proposed === undefined ? '' : `${proposed}`),
    problem,
    complain,
    type(text: string) {
      setTyped(text);
      complain(undefined);
    },
  };
}

interface RefusedSheetProps extends Pick<SampleSheetProps, 'onClose' | 'onCount'> {
  readonly event: SampledEvent;
}

/** A delivery is refused: what to do with it is for the person to say, and nothing was counted out. */
const RefusedSheet = ({ event, onClose, onCount }: RefusedSheetProps) => {
  const shop = useShop();
  const left = whatIsLeft(event, partsOnHand(shop, event.part));
  return (
    <Sheet
      title={words.refusedTitle}
      onClose={onClose}
      closeLabel={storesWords.close}
      shape="whole"
      testId="sample-refused"
    >
      <div class="stores-form">
        <Notice tone="warn" title={eventWords(event, shop.registers)} testId="sample-verdict">
          {event.letter === null ? words.refusedAll : words.refusedLead}
        </Notice>
        <div class="stores-ways">
          <PressButton
            icon="recount"
            label={event.letter === null ? words.countBadOut(event.bad) : words.countOut(event.lot)}
            detail={words.countOutDetail}
            onAct={() => onCount({ counted: left, why: 'spoilt' })}
            testId="sample-count-out"
          />
          <PressButton label={words.leaveCounts} closing onAct={onClose} testId="sample-leave" />
        </div>
      </div>
    </Sheet>
  );
};
