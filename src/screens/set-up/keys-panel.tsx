import { useEffect, useState } from 'preact/hooks';
import { actOfKey, keysOf } from '../../app/bench-keys.ts';
import { type BenchAct, benchActs } from '../../domain/set-up/facts.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { benchActWords } from '../../words/bench-words.ts';
import { keySign } from '../../words/key-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';
import { OnOff } from './station-panel.tsx';

/** Teaches the station which key does what: tap the act, then press the key. */
export const KeysPanel = () => {
  const { preferences } = useApp();
  const session = useSession();
  const { registers } = useShop();
  const station = factOf(registers, { register: 'station', id: session.station });
  const [learning, setLearning] = useState<BenchAct | null>(null);
  const [taken, setTaken] = useState<BenchAct | null>(null);
  const keys = keysOf(station);
  const teach = async (taught: { act: BenchAct; key: string }[]) => {
    if (!station) return;
    await session.act({
      kind: 'set',
      set: { register: 'station', id: session.station, value: { ...station, keys: taught } },
    });
  };
  const learn = (act: BenchAct, key: string) => {
    const other = actOfKey(keys, key);
    setTaken(other && other !== act ? other : null);
    setLearning(null);
    if (other) return;
    void teach([...(station?.keys.filter((each) => each.act !== act) ?? []), { act, key }]);
  };
  useKeyPress(learning, learn);
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
      <p role="status">
        {learning ? words.learn(benchActWords[learning]) : taken ? words.keyTaken(benchActWords[taken]) : ''}
      </p>
      <ul class="set-up-rack">
        {benchActs.map((act) => (
          <li key={act}>
            <PressButton
              label={benchActWords[act]}
              keyHint={keySign(keys[act])}
              selected={learning === act}
              onAct={() => setLearning(act)}
              testId={`key-${act}`}
            />
          </li>
        ))}
      </ul>
      <div>
        <PressButton tone="quiet" label={words.usual} onAct={() => void teach([])} testId="keys-usual" />
      </div>
    </Panel>
  );
};

/** Hears the next key while an act is being taught; Tab and Escape stay what they are. */
function useKeyPress(learning: BenchAct | null, learn: (act: BenchAct, key: string) => void): void {
  useEffect(() => {
    if (!learning) return;
    const hear = (event: KeyboardEvent) => {
      if (event.repeat || event.key === 'Tab' || event.key === 'Escape') return;
      event.preventDefault();
      event.stopPropagation();
      learn(learning, event.key);
    };
    addEventListener('keydown', hear, { capture: true });
    return () => removeEventListener('keydown', hear, { capture: true });
  });
}
