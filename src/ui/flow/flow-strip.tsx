import './flow-strip.css';
import type { GrainName, GrainTones } from './grain-patterns.ts';
import { GrainSwatch } from './grain-swatch.tsx';

/** What stands at one stage of one kind. */
export interface FlowPart {
  id: string;
  count: number;
  /** Short, beside the count. */
  label: string;
  /** Whole sentence for a screen reader. */
  name: string;
  pattern: GrainName;
  tones: GrainTones;
}

export interface FlowStage {
  id: string;
  name: string;
  total: number;
  note?: string | undefined;
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

/** A piece more makes a part this much longer (rem), up to a limit: the eye compares, the figure counts. */
const perPiece = 0.22;
const least = 3.5;
const longest = 22;

/** Work along a route, stage under stage: one line a stage, one grained block a part, as long as it is many. */
export const FlowStrip = ({
  label,
  stages,
  nothing,
  onPick,
  onPickStage,
  selected,
  testId,
}: FlowStripProps) => (
  <ol class="flow" aria-label={label} data-testid={testId}>
    {stages.map((stage) => (
      <li
        key={stage.id}
        class="flow-stage"
        data-tone={stage.tone}
        data-selected={stage.id === selected || undefined}
      >
        <button type="button" class="flow-name" onClick={() => onPickStage?.(stage.id)}>
          <span class="flow-total figures">{stage.total}</span>
          <span class="flow-words">
            <span>{stage.name}</span>
            {stage.note && <span class="flow-note">{stage.note}</span>}
          </span>
        </button>
        <div class="flow-parts">
          {stage.parts.length === 0 && <span class="flow-nothing">{nothing}</span>}
          {stage.parts.map((part) => (
            <button
              type="button"
              key={part.id}
              class="flow-part"
              aria-label={part.name}
              style={{ flexBasis: `${Math.min(longest, least + perPiece * Math.max(0, part.count))}rem` }}
              onClick={() => onPick(stage.id, part.id)}
              data-testid={`flow-${stage.id}-${part.id}`}
            >
              <span class="flow-grain">
                <GrainSwatch pattern={part.pattern} tones={part.tones} size="fill" />
              </span>
              <span class="flow-count">
                <span class="figures">{part.count}</span> {part.label}
              </span>
            </button>
          ))}
        </div>
      </li>
    ))}
  </ol>
);
