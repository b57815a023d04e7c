import { useState } from 'preact/hooks';
import { type MachineId, readId, stageId } from '../../domain/log/ids.ts';
import { factsOf, type Registers } from '../../domain/shop/registers.ts';
import { latheSpeedRange, turnedBounds } from '../../domain/wood/lathe-speed.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { speedWords as words } from '../../words/speed-words.ts';
import { stageWords } from '../../words/stage-words.ts';
import { woodCareWords } from '../../words/wood-care-words.ts';
import { address, goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { readLength } from '../parts/form/length.ts';

/** A haft, mm. */
const usual = { diameter: '30', length: '120' };
/** 1/100 mm. */
const diameters = { least: turnedBounds.least * 100, most: turnedBounds.most * 100 };
const lengths = { least: 1, most: 5 * turnedBounds.most * 100 };

/** How fast a piece is usually turned, from its diameter, its length and the machine's own limit. */
export const SpeedPage = () => {
  const { registers } = useShop();
  const stage = readId(stageId, address.value.rest[1]);
  const machines = turningMachines(registers);
  const first = machines.find(({ fact }) => stage !== null && fact.stages.includes(stage)) ?? machines[0];
  const [diameter, setDiameter] = useState(usual.diameter);
  const [length, setLength] = useState(usual.length);
  const [machine, setMachine] = useState<MachineId | ''>(first?.id ?? '');
  const limit = machines.find(({ id }) => id === machine)?.fact.mostTurns ?? null;
  const [across, along] = [readLength(diameter, diameters), readLength(length, lengths)];
  return (
    <main class="stages bench-margin">
      <header class="stages-head">
        <div>
          <h1>{words.title}</h1>
          <p>{words.lead}</p>
        </div>
        <PressButton
          size="bench-small"
          icon="back"
          label={stageWords.back}
          onAct={() => (stage === null ? goTo('bench') : goTo('bench', stage))}
          testId="speed-back"
        />
      </header>
      <div class="speed-fields">
        <Field
          label={words.diameter}
          kind="number"
          unit={woodCareWords.mm}
          value={diameter}
          onText={setDiameter}
          error={across === null ? words.badDiameter : undefined}
          testId="speed-diameter"
        />
        <Field
          label={words.length}
          kind="number"
          unit={woodCareWords.mm}
          value={length}
          onText={setLength}
          error={along === null ? words.badLength : undefined}
          testId="speed-length"
        />
      </div>
      {machines.length > 0 && (
        <ChoiceRow<MachineId | ''>
          label={words.machine}
          choices={[
            ...machines.map(({ id, fact }) => ({ value: id, label: fact.name })),
            { value: '', label: words.noMachine },
          ]}
          value={machine}
          onChoose={setMachine}
          size="bench-small"
          testId="speed-machine"
        />
      )}
      {across !== null && along !== null && (
        <Speeds diameter={across / 100} length={along / 100} limit={limit} />
      )}
      <Notice tone="warn" title={words.never}>
        <p>{words.begin}</p>
        <p>{words.rules}</p>
      </Notice>
    </main>
  );
};

function turningMachines(registers: Registers) {
  return factsOf(registers, 'machine').filter(({ fact }) => !fact.retired && fact.mostTurns !== null);
}

const Speeds = (piece: { diameter: number; length: number; limit: number | null }) => {
  const speeds = latheSpeedRange(piece);
  if (speeds.kind !== 'known') return null;
  const { low, high, lowSurface, highSurface } = speeds;
  return (
    <Panel
      title={low === high && speeds.isLimited ? words.atMost(high) : words.range(low, high)}
      lead={words.surface(lowSurface, highSurface)}
      testId="speed-range"
    >
      {speeds.isLimited && <p>{words.limited}</p>}
      <p>{words.slowly}</p>
      {speeds.needsSteady && <p>{words.steady}</p>}
      <p>{words.source}</p>
    </Panel>
  );
};
