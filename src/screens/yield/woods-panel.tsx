import { shareValue } from '../../domain/rollup/first-pass-yield.ts';
import type { SpeciesYield, StageYield } from '../../domain/rollup/species-yield.ts';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { ShareBar } from '../../ui/share/share-bar.tsx';
import { InTurn } from '../../ui/turn/in-turn.tsx';
import { share } from '../../words/fine-number-words.ts';
import { nameOf } from '../../words/names.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { yieldWords as words } from '../../words/yield-words.ts';
import { useShop } from '../parts/app-context.ts';
import { WoodName } from '../parts/wood-name.tsx';
import { woodsWorstFirst } from './yield-view.ts';

/** Each wood: where its pieces went, and how it fares stage by stage. */
export const WoodsPanel = () => (
  <Panel title={words.woods} actions={<Means label={studyWords.means}>{words.woodsMeans}</Means>}>
    <div class="yield-woods">
      {woodsWorstFirst(useShop()).map((wood) => (
        <InTurn key={wood.species}>
          <Wood wood={wood} />
        </InTurn>
      ))}
    </div>
  </Panel>
);

const figures = [
  ['made', words.made],
  ['corrected', words.corrected],
  ['inFlight', words.inFlight],
  ['firsts', words.firsts],
  ['seconds', words.seconds],
  ['scrapped', words.scrapped],
] as const;
const testNames = {
  made: 'made',
  corrected: 'corrected',
  inFlight: 'in-flight',
  firsts: 'firsts',
  seconds: 'seconds',
  scrapped: 'scrapped',
};

const Wood = ({ wood }: { wood: SpeciesYield }) => {
  const { registers } = useShop();
  const { species, made, corrected, rolled } = wood;
  const name = nameOf(registers, { register: 'species', id: species });
  return (
    <section class="yield-wood" aria-label={name}>
      <h3>
        <WoodName species={species} />
      </h3>
      <dl class="yield-figures">
        {figures.map(([field, label]) => (
          <div key={field} class="yield-figure" hidden={field === 'corrected' && corrected === 0}>
            <dt>{label}</dt>
            <dd class="figures" data-testid={`yield-${species}-${testNames[field]}`}>
              {signed(field, wood[field])}
            </dd>
          </div>
        ))}
      </dl>
      <p class="yield-note">{words.addsUp(made, corrected)}</p>
      <Disclosure
        summary={
          <span class="yield-rolled">
            {words.rolled}:{' '}
            <b data-testid={`yield-${species}-rolled`} data-value={rolled ?? ''}>
              {share(rolled)}
            </b>
          </span>
        }
        testId={`yield-${species}-stages`}
      >
        <InTurn>
          <WoodStages name={name} wood={wood} />
        </InTurn>
      </Disclosure>
    </section>
  );
};

/** How a wood fares stage by stage, one tap behind its figures. */
const WoodStages = ({ name, wood: { species, stages } }: { name: string; wood: SpeciesYield }) => (
  <>
    <p>{words.rolledMeans}</p>
    {stages.length > 1 && (
      <p class="figures">
        {words.rolledOf(stages.map((stage) => share(shareValue(stage.share))).join(' × '))}
      </p>
    )}
    <h4>{words.stagesOf(name)}</h4>
    {stages.length === 0 && <p>{words.notYet}</p>}
    <ul class="yield-stages">
      {stages.map((stage) => (
        <li key={stage.stage}>
          <StageShare species={species} stage={stage} />
        </li>
      ))}
    </ul>
    <p class="yield-note">{words.firstPassMeans}</p>
  </>
);

function signed(field: keyof typeof testNames, value: number): string {
  if (field !== 'corrected') return wholeNumber(value);
  return value > 0 ? `+${wholeNumber(value)}` : wholeNumber(value).replace('-', '−');
}

const StageShare = ({ species, stage }: { species: string; stage: StageYield }) => {
  const { registers } = useShop();
  const { of, out } = stage.share;
  const again = stage.repeats > 0 ? ` · ${words.repeats(stage.repeats)}` : '';
  return (
    <div
      data-testid={`fpy-${species}-${stage.stage}`}
      data-out={out}
      data-of={of}
      data-repeats={stage.repeats}
    >
      <ShareBar
        label={nameOf(registers, { register: 'stage', id: stage.stage })}
        part={out}
        whole={of}
        shown={`${share(shareValue(stage.share))} · ${words.outOf(out, of)}${again}`}
        tone={out < of ? 'copper' : 'plain'}
      />
    </div>
  );
};
