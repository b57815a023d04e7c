import './flow-strip.css';
import { Icon } from '../icon/icon.tsx';
import { InTurn } from '../turn/in-turn.tsx';
import type { GrainName, GrainTones } from './grain-patterns.ts';
import { GrainSwatch } from './grain-swatch.tsx';

/** What stands at one stage of one kind. */
export interface FlowPart {
  id: string;
  count: number;
  /** Short, beside the count. */
  label: string;
  /** The whole of it for a screen reader: what, how many, where. */
  name: string;
  pattern: GrainName;
  tones: GrainTones;
}

/** One stage of the route, with all that stands there. */
export interface FlowStage {
  id: string;
  name: string;
  total: number;
  /** A few words under the name. */
  note?: string | undefined;
  /** Something wants a look here, or things rest here by themselves. */
  tone?: 'warn' | 'hold' | undefined;
  parts: readonly FlowPart[];
}

export interface FlowStripProps {
  label: string;
  stages: readonly FlowStage[];
  /** What to show at a stage where nothing stands. */
  nothing: string;
  onPick: (stage: string, part: string) => void;
  onPickStage?: ((stage: string) => void) | undefined;
  /** The stage whose parts are shown elsewhere now. */
  selected?: string | undefined;
  testId?: string | undefined;
}

/** A part is as long as its share of the most that stands anywhere; a negative count has no length but shows. */
const shareOf = (count: number, most: number): number => (most > 0 ? Math.max(0, count) / most : 0);

const StageHead = ({ stage, onPickStage }: { stage: FlowStage } & Pick<FlowStripProps, 'onPickStage'>) => {
  const words = (
    <>
      <span class="flow-total figures">
        {stage.total}
        {stage.tone && <Icon name={stage.tone} size={24} />}
      </span>
      <span class="flow-name">{stage.name}</span>
      {stage.note && <span class="flow-note">{stage.note}</span>}
    </>
  );
  if (!onPickStage) return <div class="flow-head">{words}</div>;
  return (
    <button type="button" class="flow-head" onClick={() => onPickStage(stage.id)}>
      {words}
    </button>
  );
};

const StageParts = ({
  stage,
  most,
  nothing,
  onPick,
}: { stage: FlowStage; most: number } & Pick<FlowStripProps, 'nothing' | 'onPick'>) => (
  <>
    {stage.parts.length === 0 && <span class="flow-nothing">{nothing}</span>}
    {stage.parts.map((part) => (
      <button
        type="button"
        key={part.id}
        class="flow-part"
        aria-label={part.name}
        style={{ '--share': shareOf(part.count, most) }}
        onClick={() => onPick(stage.id, part.id)}
        data-testid={`flow-${stage.id}-${part.id}`}
      >
        <span class="flow-grain">
          <GrainSwatch pattern={part.pattern} tones={part.tones} size="fill" />
        </span>
        <span class="flow-plate">
          <span class="flow-count figures">{part.count}</span>
          <span>{part.label}</span>
        </span>
      </button>
    ))}
  </>
);

/**
 * Work along a route, drawn as a rack: the stages in their order, and under each its parts as grained blocks, as long
 * as they are many. Columns where there is room, one line a stage where there is not.
 */
export const FlowStrip = (props: FlowStripProps) => {
  const { stages, selected, onPick, onPickStage } = props;
  const most = Math.max(0, ...stages.flatMap((stage) => stage.parts.map((part) => part.count)));
  return (
    <div class="flow-room">
      <ol class="flow" aria-label={props.label} data-testid={props.testId}>
        {stages.map((stage) => (
          <li
            key={stage.id}
            class="flow-stage"
            data-tone={stage.tone}
            data-selected={stage.id === selected || undefined}
          >
            <StageHead stage={stage} onPickStage={onPickStage} />
            <div class="flow-parts">
              <InTurn>
                <StageParts stage={stage} most={most} nothing={props.nothing} onPick={onPick} />
              </InTurn>
            </div>
          </li>
        ))}
      </ol>
    </div>
  );
};
