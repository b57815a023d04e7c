import './scan.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { stageInUse } from '../../../app/stage-in-use.ts';
import { findLabelled } from '../../../domain/label/find-labelled.ts';
import type { StageId, TrayId } from '../../../domain/log/ids.ts';
import { factsOf } from '../../../domain/shop/registers.ts';
import { ChoiceRow } from '../../../ui/field/choice-row.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { labelledWords, scanWords as words } from '../../../words/scan-words.ts';
import { goTo } from '../../parts/address.ts';
import { useSession, useShop } from '../../parts/app-context.ts';
import { CameraEye } from '../../parts/camera/camera-eye.tsx';
import { goToTray } from '../../parts/go-to-tray.ts';
import { labelTaker } from '../../parts/label-news.ts';
import { SameCodeSheet } from '../../parts/same-code.tsx';
import { useFeedback } from '../../parts/use-feedback.ts';
import { FindTray } from '../find-tray.tsx';
import { traysInWork } from '../trays-view.ts';
import { BulkList } from './bulk-list.tsx';
import type { Purpose } from './scan-view.ts';
import { useBulk } from './use-bulk.ts';

/** What was said of the last label. */
interface Said {
  readonly tone: 'plain' | 'flaw';
  readonly words: string;
}

/** Reads labels by the camera, by a code reader or by the pad: to open a tray, or to move several at once. */
export const ScanPlace = ({ stage }: { stage: StageId | null }) => {
  const session = useSession();
  const shop = useShop();
  const { sound } = useFeedback();
  const [purpose, setPurpose] = useState<Purpose>('open');
  const [said, setSaid] = useState<Said | null>(null);
  const [alike, setAlike] = useState<string | null>(null);
  const move = purpose === 'open' ? 'into-clamps' : purpose;
  const bulk = useBulk(move);

  const takeTray = (tray: TrayId, code: string) => {
    if (purpose === 'open') {
      sound('saved');
      goToTray(session.view.value.shop, { tray, stage: stage ?? stageInUse(session) });
    } else if (bulk.add(tray)) {
      sound('saved');
      setSaid({ tone: 'plain', words: words.added(code) });
    } else {
      sound('undone');
      setSaid({ tone: 'flaw', words: words.already(code) });
    }
  };
  const take = (text: string) => {
    const found = findLabelled(session.view.value.shop, text);
    if (found.kind === 'tray') return takeTray(found.tray.tray, found.tray.code);
    if (found.kind === 'alike') return setAlike(found.code);
    sound('refused');
    setSaid({ tone: 'flaw', words: labelledWords(found) });
  };
  const takeAll = (texts: readonly string[]) => {
    if (purpose === 'open' && texts.length > 1) {
      sound('refused');
      setSaid({ tone: 'flaw', words: words.several });
    } else for (const text of texts) take(text);
  };
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => {
    labelTaker.value = (text) => latest.current(text);
    return () => {
      labelTaker.value = null;
    };
  }, []);

  return (
    <main class="trays scan" data-testid="scan-place">
      <header class="trays-head">
        <h1>{words.title}</h1>
        <PressButton
          size="bench-small"
          icon="back"
          label={words.back}
          onAct={() => (stage === null ? goTo('trays') : goTo('bench', stage))}
          testId="scan-back"
        />
      </header>
      <ChoiceRow
        label={words.whatFor}
        size="bench-small"
        choices={purposesOf(factsOf(shop.registers, 'stage').some(({ fact }) => fact.kind === 'hold'))}
        value={purpose}
        onChoose={(chosen) => {
          setPurpose(chosen);
          setSaid(null);
          bulk.renew('open');
        }}
        testId="scan-for"
      />
      <div class="scan-columns">
        <CameraEye onRead={takeAll} />
        <div class="scan-column">
          <p class="scan-says" role="status" data-tone={said?.tone} data-testid="scan-says">
            {said?.words}
          </p>
          {purpose !== 'open' && (
            <BulkList move={move} bulk={bulk} onDone={(all) => sound(all ? 'saved' : 'refused')} />
          )}
        </div>
      </div>
      <FindTray
        rows={traysInWork(shop).live}
        onFound={(tray) => takeTray(tray, shop.trays.get(tray)?.code ?? '')}
      />
      {alike && (
        <SameCodeSheet
          code={alike}
          onOpen={(tray) => {
            setAlike(null);
            takeTray(tray, alike);
          }}
          onClose={() => setAlike(null)}
        />
      )}
    </main>
  );
};

function purposesOf(anyClamps: boolean) {
  const several = (['into-clamps', 'out-of-clamps', 'to-shelf'] as const)
    .filter((move) => anyClamps || move === 'to-shelf')
    .map((move) => ({ value: move, label: words.moves[move], detail: words.many }));
  return [{ value: 'open' as Purpose, label: words.open, detail: words.openDetail }, ...several];
}
