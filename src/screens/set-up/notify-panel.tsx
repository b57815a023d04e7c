import { useState } from 'preact/hooks';
import { askToNotify, mayNotify } from '../../app/system-notices.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { notifyWords as words } from '../../words/notify-words.ts';
import { useApp } from '../parts/app-context.ts';
import { OnOff } from './on-off.tsx';

/** Whether the system is told of what is over. The browser is asked by a tap here, and never at a start. */
export const NotifyPanel = () => {
  const { notify } = useApp().preferences;
  const [may, setMay] = useState(mayNotify);
  const [asked, setAsked] = useState(false);
  const change = async (on: boolean) => {
    notify.value = false;
    if (!on) return;
    const answer = await askToNotify();
    setMay(answer);
    setAsked(true);
    notify.value = answer === 'yes';
  };
  const why = {
    yes: undefined,
    none: words.none,
    no: words.refused,
    later: asked ? words.later : undefined,
  };
  return (
    <Panel title={words.title} lead={words.lead}>
      <OnOff
        label={words.ask}
        hint={words.hint}
        error={why[may]}
        on={notify.value && may === 'yes'}
        onChange={(on) => void change(on)}
        testId="notify"
      />
    </Panel>
  );
};
