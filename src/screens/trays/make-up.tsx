import { useRef, useState } from 'preact/hooks';
import { mostOnTray, mostTrays } from '../../domain/command/decide-trays.ts';
import { readWholeNumber } from '../../domain/command/whole-number.ts';
import type { BatchId, TrayId, VariantId } from '../../domain/log/ids.ts';
import { type Entry, factsOf } from '../../domain/shop/registers.ts';
import { useEnterSaves } from '../../ui/field/enter.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { numberProblemWords, problemWords } from '../../words/problem-words.ts';
import { traysWords as words } from '../../words/trays-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { CountField } from '../parts/count-field.tsx';
import { useHeldDraft } from '../parts/use-held-draft.ts';
import { WoodName } from '../parts/wood-name.tsx';
import { MadeTrays } from './made-trays.tsx';
import { NoVariant } from './tray-list.tsx';

const perTray = { least: 1, most: mostOnTray };
const howMany = { least: 1, most: mostTrays };
const usualPieces = '10';
const usualTrays = '1';

interface Made {
  readonly codes: readonly string[];
  readonly trays: readonly TrayId[];
  readonly pieces: number;
}

/** Trays of one variant, one or many at once; the codes come out large, to be chalked on. */
export const MakeUp = () => {
  const session = useSession();
  const { registers } = useShop();
  const variants = factsOf(registers, 'variant').filter(({ fact }) => !fact.retired);
  const batches = factsOf(registers, 'batch').filter(({ fact }) => !fact.retired);
  const [variant, setVariant] = useState<VariantId | undefined>(
    variants.length === 1 ? variants[0]?.id : undefined,
  );
  const [batch, setBatch] = useState<BatchId | undefined>(batches[0]?.id);
  const [pieces, setPieces] = useState(usualPieces);
  const [trays, setTrays] = useState(usualTrays);
  const [tried, setTried] = useState(false);
  const [refusal, setRefusal] = useState('');
  const [made, setMade] = useState<Made | null>(null);
  useHeldDraft(!made && (pieces !== usualPieces || trays !== usualTrays));
  const counts = useRef<HTMLDivElement>(null);
  useEnterSaves(counts, () => save());
  if (variants.length === 0) return <NothingToMake />;
  if (made) return <MadeTrays {...made} onMore={() => setMade(null)} />;

  const readPieces = readWholeNumber(pieces, perTray);
  const readTrays = readWholeNumber(trays, howMany);
  const wrong = (read: typeof readPieces) =>
    tried && !read.ok ? numberProblemWords(read.problem) : undefined;
  const make = async (count: number, of: number) => {
    if (!variant || !batch) {
      const kind = variant ? 'no-such-batch' : 'no-such-variant';
      return setRefusal(problemWords({ kind }, registers));
    }
    const result = await session.act({ kind: 'make-trays', variant, batch, pieces: count, trays: of });
    if (result.kind === 'refused') return setRefusal(problemWords(result.problem, registers));
    setRefusal('');
    const made = result.events.flatMap((event) => (event.kind === 'tray-made' ? [event.of] : []));
    setMade({ codes: made.map((of) => of.code), trays: made.map((of) => of.tray), pieces: count });
  };
  const save = () => {
    setTried(true);
    if (readPieces.ok && readTrays.ok) void make(readPieces.value, readTrays.value);
  };
  return (
    <main class="trays">
      <header class="trays-head">
        <h1>{words.newTitle}</h1>
        <PressButton icon="back" label={words.toTrays} onAct={() => goTo('trays')} />
      </header>
      <Panel title={words.whatPieces}>
        <VariantChoice variants={variants} chosen={variant} onChoose={setVariant} />
        {batches.length > 1 && (
          <SelectField
            label={words.whichBatch}
            options={batches.map(({ id, fact }) => ({ value: id, label: fact.name }))}
            value={batch}
            onChoose={(id) => setBatch(batches.find((each) => each.id === id)?.id)}
            testId="make-batch"
          />
        )}
        <div class="trays-counts" ref={counts}>
          <CountField
            label={words.perTray}
            typed={pieces}
            onTyped={setPieces}
            bounds={perTray}
            error={wrong(readPieces)}
            fewer={words.fewer}
            more={words.moreOne}
            testId="make-pieces"
          />
          <CountField
            label={words.howMany}
            typed={trays}
            onTyped={setTrays}
            bounds={howMany}
            error={wrong(readTrays)}
            fewer={words.fewer}
            more={words.moreOne}
            testId="make-count"
          />
        </div>
        {refusal && (
          <p class="trays-refusal" role="alert" data-testid="make-refusal">
            {refusal}
          </p>
        )}
        <div class="trays-acts">
          <PressButton
            size="bench-small"
            tone="go"
            closing
            icon="check"
            label={words.make}
            onAct={save}
            testId="make-save"
          />
          <PressButton
            size="bench-small"
            closing
            label={words.prized}
            detail={words.prizedDetail}
            onAct={() => void make(1, 1)}
            testId="make-prized"
          />
        </div>
      </Panel>
    </main>
  );
};

const NothingToMake = () => (
  <main class="trays">
    <h1>{words.newTitle}</h1>
    <NoVariant />
  </main>
);

interface VariantChoiceProps {
  readonly variants: readonly Entry<'variant'>[];
  readonly chosen: VariantId | undefined;
  readonly onChoose: (id: VariantId) => void;
}

const VariantChoice = ({ variants, chosen, onChoose }: VariantChoiceProps) => (
  <ul class="trays-variants" aria-label={words.variant}>
    {variants.map(({ id, fact }) => (
      <li key={id}>
        <PressButton
          size="bench-small"
          label={fact.name}
          detail={<WoodName species={fact.species} />}
          selected={id === chosen}
          onAct={() => onChoose(id)}
          testId={`make-variant-${id}`}
        />
      </li>
    ))}
  </ul>
);
