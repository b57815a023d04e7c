import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useApp } from '../parts/app-context.ts';

/** What this is, the usual cautions, and whose work it stands on. */
export const About = () => (
  <Panel title={words.about}>
    <p>{words.aboutText}</p>
    {words.cautions.map((caution) => (
      <Notice key={caution} tone="warn" title={caution} />
    ))}
    <p>{words.fonts}</p>
    <p>{words.woodData}</p>
    <p>{words.versionIs(useApp().version)}</p>
  </Panel>
);
