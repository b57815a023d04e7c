import { useState } from 'preact/hooks';
import { readId, type SpeciesId, type StageId, speciesId, stageId } from '../../domain/log/ids.ts';
import { factOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { type FlowStage, FlowStrip } from '../../ui/flow/flow-strip.tsx';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { InTurn } from '../../ui/turn/in-turn.tsx';
import { nameOf } from '../../words/names.ts';
import { pieces } from '../../words/pieces-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { yieldWords as words } from '../../words/yield-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { SavePicture } from '../parts/picture/save-picture.tsx';
import { WipTable } from './wip-table.tsx';
import { flowAlongRoute, type StageFlow, traysBehind } from './yield-view.ts';

interface Picked {
  readonly stage: StageId;
  readonly species: SpeciesId;
}

/** Work in process as a flow along the route, and as a table one tap away. */
export const FlowPanel = () => {
  const shop = useShop();
  const [picked, setPicked] = useState<Picked | null>(null);
  const flow = flowAlongRoute(shop);
  const stages = flow.map((stage) => flowStage(shop, stage));
  return (
    <Panel
      title={words.flow}
      lead={words.flowLead}
      actions={<Means label={studyWords.means}>{words.flowMeans}</Means>}
    >
      {flow.some(({ stranded }) => stranded) && (
        <Notice
          tone="warn"
          title={words.strandedTitle}
          actions={<PressButton label={words.toRoute} onAct={() => goTo('set-up', 'route')} />}
        >
          {words.strandedHelp}
        </Notice>
      )}
      <FlowStrip
        label={words.flow}
        nothing={words.nothing}
        stages={stages}
        onPick={(stage, species) => {
          const [at, wood] = [readId(stageId, stage), readId(speciesId, species)];
          if (at && wood) setPicked({ stage: at, species: wood });
        }}
        testId="flow"
      />
      <Disclosure summary={words.asTable} testId="wip-as-table">
        <InTurn>
          <WipTable flow={flow} />
        </InTurn>
      </Disclosure>
      <SavePicture
        picture={() => ({ title: words.flow, body: { kind: 'flow', stages, nothing: words.nothing } })}
        testId="flow-picture"
      />
      {picked && <TraysSheet picked={picked} onClose={() => setPicked(null)} />}
    </Panel>
  );
};

function flowStage(shop: Shop, { stage, total, held, stranded, cells }: StageFlow): FlowStage {
  const name = nameOf(shop.registers, { register: 'stage', id: stage });
  const hold = factOf(shop.registers, { register: 'stage', id: stage })?.kind === 'hold';
  return {
    id: stage,
    name,
    total,
    note: stranded ? words.stranded : held > 0 ? words.curing(held) : undefined,
    tone: stranded ? 'warn' : hold ? 'hold' : undefined,
    parts: cells.map(({ species, waiting, held: curing }) => {
      const wood = factOf(shop.registers, { register: 'species', id: species });
      const label = wood?.name ?? species;
      const count = waiting + curing;
      return {
        id: species,
        count,
        label,
        name: words.partName(count, label, name),
        pattern: wood?.grain ?? 'straight',
        tones: { ground: wood?.light ?? '#ffffff', line: wood?.dark ?? '#000000' },
      };
    }),
  };
}

const TraysSheet = ({ picked, onClose }: { picked: Picked; onClose: () => void }) => {
  const shop = useShop();
  const trays = traysBehind(shop, picked);
  const title = words.traysHere(
    nameOf(shop.registers, { register: 'species', id: picked.species }),
    nameOf(shop.registers, { register: 'stage', id: picked.stage }),
  );
  return (
    <Sheet title={title} onClose={onClose} closeLabel={words.traysClose} testId="trays-behind">
      {trays.length === 0 && <p>{words.noTraysHere}</p>}
      <ul class="yield-trays">
        {trays.map(({ tray, pieces: n }) => (
          <li key={tray.tray}>
            <PressButton label={tray.code} detail={pieces(n)} onAct={() => goTo('trays', tray.tray)} />
          </li>
        ))}
      </ul>
    </Sheet>
  );
};
