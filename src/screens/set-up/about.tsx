import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useApp } from '../parts/app-context.ts';

/** What this is, the usual cautions, and whose work it stands on. */
export const About = () => (
  <>
    <Panel title={words.whatItIs}>
      <p>{words.aboutText}</p>
      <p>{words.versionIs(useApp().version)}</p>
    </Panel>
    <Panel title={words.cautionsTitle} tone="warn" testId="cautions">
      {words.cautions.map(({ title, text }) => (
        <Notice key={title} tone="warn" title={title}>
          {text}
        </Notice>
      ))}
    </Panel>
    <Panel title={words.licences}>
      <ul class="set-up-list">
        {words.licenceList.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </Panel>
  </>
);
