import { useEffect, useRef, useState } from 'preact/hooks';
import { keysOf, teachKey } from '../../app/bench-keys.ts';
import { stationFactOf } from '../../app/station-letter.ts';
import { type BenchAct, benchActs, type StationFact } from '../../domain/set-up/facts.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { keySign } from '../../words/key-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { shellWords } from '../../words/shell-words.ts';
import { benchActWords } from '../../words/stage-words.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';
import { OnOff } from './on-off.tsx';

/** What was last said about the keys, and at which act it stands. */
interface Said {
  readonly act: BenchAct;
  readonly words: string;
}

/** Teaches the station which key does what: tap the act, then press the key. */
export const KeysPanel = () => {
  const { preferences } = useApp();
  const session = useSession();
  const { registers } = useShop();
  const station = stationFactOf(registers, { station: session.station, name: shellWords.stationName });
  const keys = keysOf(station);
  const [learning, setLearning] = useState<BenchAct | null>(null);
  const [said, setSaid] = useState<Said | null>(null);

  const keep = (taught: StationFact['keys']) =>
    session.act({
      kind: 'set',
      set: { register: 'station', id: session.station, value: { ...station, keys: taught } },
    });
  const begin = (act: BenchAct) => {
    const next = learning === act ? null : act;
    setLearning(next);
    setSaid(next && { act, words: words.learn(benchActWords[act]) });
  };
  async function learn(act: BenchAct, key: string): Promise<void> {
    const lesson = teachKey(station, { act, key });
    const sign = keySign(key);
    // After a refusal it goes on listening: the next key may be free.
    if (lesson.kind === 'unfit') return setSaid({ act, words: words.keyUnfit(sign) });
    if (lesson.kind === 'needed') return setSaid({ act, words: words.keyNeeded(sign) });
    if (lesson.kind === 'taken')
      return setSaid({ act, words: words.keyTaken(sign, benchActWords[lesson.by]) });
    setLearning(null);
    await keep(lesson.keys);
    setSaid({ act, words: words.keyTaught(sign, benchActWords[act]) });
  }
  useNextKey(learning, {
    onKey: (act, key) => void learn(act, key),
    onLeave: () => {
      setLearning(null);
      setSaid(null);
    },
  });
  return (
    <Panel title={words.keys} lead={words.keysLead}>
      <OnOff
        label={words.keysOn}
        on={preferences.keys.value}
        onChange={(on) => {
          preferences.keys.value = on;
        }}
        testId="keys-on"
      />
      <p role="status" class="unseen">
        {said?.words}
      </p>
      <ul class="set-up-rack">
        {benchActs.map((act) => (
          <li key={act}>
            <PressButton
              label={benchActWords[act]}
              detail={said?.act === act ? said.words : words.keyIs(keySign(keys[act]))}
              selected={learning === act}
              onAct={() => begin(act)}
              testId={`key-${act}`}
            />
          </li>
        ))}
      </ul>
      <div>
        <PressButton
          tone="quiet"
          label={words.usual}
          onAct={() => {
            setSaid(null);
            setLearning(null);
            void keep([]);
          }}
          testId="keys-usual"
        />
      </div>
    </Panel>
  );
};

interface KeyEars {
  readonly onKey: (act: BenchAct, key: string) => void;
  readonly onLeave: () => void;
}

/** A held pedal goes on to send its key, or sends it anew (ms): until it has been silent for so long, it is the same press. */
const samePress = 1200;

/**
 * Hears keys while an act is being taught. Escape leaves it, Tab stays what it is. What a held pedal sends after its key was
 * heard reaches nothing: Enter would press the button that has the focus, and begin anew.
 */
function useNextKey(learning: BenchAct | null, ears: KeyEars): void {
  const latest = useRef({ learning, ears });
  latest.current = { learning, ears };
  useEffect(() => {
    let heard: { readonly key: string; readonly at: number } | undefined;
    const hear = (event: KeyboardEvent) => {
      const { key, timeStamp: at, repeat } = event;
      const isSame = heard?.key === key && at - heard.at < samePress;
      const act = latest.current.learning;
      if (!isSame && (!act || repeat || key === 'Tab')) return;
      event.preventDefault();
      event.stopPropagation();
      if (key !== 'Escape') heard = { key, at };
      if (isSame || !act) return;
      if (key === 'Escape') latest.current.ears.onLeave();
      else latest.current.ears.onKey(act, key);
    };
    addEventListener('keydown', hear, { capture: true });
    return () => removeEventListener('keydown', hear, { capture: true });
  }, []);
}
