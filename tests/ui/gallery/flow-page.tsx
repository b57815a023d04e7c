import { type FlowPart, type FlowStage, FlowStrip } from '../../../src/ui/flow/flow-strip.tsx';
import { type GrainName, grainNames, grainTones } from '../../../src/ui/flow/grain-patterns.ts';
import { GrainSwatch } from '../../../src/ui/flow/grain-swatch.tsx';
import { Panel } from '../../../src/ui/panel/panel.tsx';

const woods = [
  { id: 'ash', name: 'Ash', pattern: 'ring-porous', tones: grainTones.pale },
  { id: 'box', name: 'Boxwood', pattern: 'straight', tones: grainTones.honey },
  { id: 'yew', name: 'Yew', pattern: 'cathedral', tones: grainTones.red },
  { id: 'plum', name: 'Plum', pattern: 'curl', tones: grainTones.brown },
  { id: 'oak', name: 'Bog oak', pattern: 'ray-fleck', tones: grainTones.dark },
  { id: 'pear', name: 'Pear', pattern: 'pore-dots', tones: grainTones.olive },
] as const;

const stock: readonly (readonly [string, readonly number[], FlowStage['tone']?, string?])[] = [
  ['Kit parts', [24, 0, 0, 12, 0, 0]],
  ['Cut and bore', [0, 22, 0, 0, 0, 0]],
  ['Glue up', [10, 0, 6, 0, 0, 0]],
  ['Glue cures', [0, 0, 30, 10, 0, 0], 'hold', 'ready 18:40'],
  ['Rough turn', [24, 0, 0, 0, 8, 0]],
  ['Turn to shape', [16, 11, 7, 0, 0, 4], 'warn', 'more fail since Monday'],
  ['Sand', [33, 0, 0, 0, 0, 0]],
  ['Seal', [0, 0, 10, 0, 0, 0]],
  ['Sealer cures', [9, 0, 0, 0, 0, 0], 'hold'],
  ['Polish', [0, 20, 0, 0, 0, 0]],
  ['Dress ferrule', [0, 0, 0, 19, 0, 0]],
  ['Cut the flat', [7, 5, 3, 2, 1, 1]],
  ['Test', []],
  ['Photograph', [48, 0, 12, 0, 0, 0]],
];

const partsOf = (stage: string, counts: readonly number[]): readonly FlowPart[] =>
  woods.flatMap((wood, index) => {
    const count = counts[index] ?? 0;
    if (count === 0) return [];
    const name = `${stage}: ${count} of ${wood.name}`;
    return [{ id: wood.id, count, label: wood.name, name, pattern: wood.pattern, tones: wood.tones }];
  });

const stages: readonly FlowStage[] = stock.map(([name, counts, tone, note]) => ({
  id: name,
  name,
  total: counts.reduce((sum, count) => sum + count, 0),
  parts: partsOf(name, counts),
  tone,
  note,
}));

const toneOf: Record<GrainName, keyof typeof grainTones> = {
  straight: 'honey',
  'ray-fleck': 'pale',
  'ring-porous': 'pale',
  cathedral: 'red',
  burl: 'brown',
  curl: 'honey',
  spalt: 'pale',
  stripe: 'dark',
  interlocked: 'red',
  'pore-dots': 'olive',
};

/** Work along a route of fourteen stages, and the ten grains. */
export const FlowPage = () => (
  <main class="gallery">
    <Panel title="Where the pieces are" lead="14 stages, 353 pieces.">
      <FlowStrip
        label="Work along the route"
        stages={stages}
        nothing="none"
        selected="Polish"
        onPick={() => undefined}
        onPickStage={() => undefined}
      />
    </Panel>
    <Panel title="Grains">
      <div class="gallery-row">
        {grainNames.map((pattern) => (
          <span class="gallery-wood" key={pattern}>
            <GrainSwatch pattern={pattern} tones={grainTones[toneOf[pattern]]} size="big" />
            <GrainSwatch pattern={pattern} tones={grainTones[toneOf[pattern]]} size="small" />
            {pattern}
          </span>
        ))}
      </div>
    </Panel>
  </main>
);
