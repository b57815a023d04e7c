import { useEffect, useState } from 'preact/hooks';
import { askToKeep, isKept } from '../../app/keeping.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';

/** Whether the browser keeps the records when space is short; where it does not promise to, it can be asked. */
export const RecordsPanel = () => {
  const [kept, setKept] = useState<boolean | null>(null);
  const [refused, setRefused] = useState(false);
  useEffect(() => void isKept().then(setKept), []);
  const ask = async () => {
    const now = await askToKeep();
    setKept(now);
    setRefused(now !== true);
  };
  return (
    <Panel title={words.records}>
      <p data-testid="keep-state">{kept === null ? words.keptUnknown : kept ? words.kept : words.notKept}</p>
      <p role="status">{refused ? words.keepRefused : ''}</p>
      {kept === false && (
        <div>
          <PressButton label={words.askKeep} onAct={() => void ask()} testId="ask-keep" />
        </div>
      )}
    </Panel>
  );
};
