import type { CopyDesk } from '../../app/copy-desk.ts';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { filesWords as words } from '../../words/files-words.ts';
import { OutsideState } from '../parts/files/copy-state.tsx';
import { HandOutButton } from '../parts/files/hand-out-button.tsx';
import { TextOut } from '../parts/files/text-out.tsx';
import { useHandOut } from '../parts/files/use-hand-out.ts';
import { FolderWay } from './folder-way.tsx';
import { SealedWay } from './sealed-way.tsx';

/** Copies that leave the tablet: a plain file at one tap, a folder of the maker's, a sealed file, text as the last way. */
export const OutsidePanel = ({ desk }: { desk: CopyDesk }) => (
  <Panel title={words.outsideTitle} lead={words.outsideLead} testId="outside-panel">
    <div class="files-block">
      <OutsideState />
      <HandOutButton desk={desk} size="bench-small" />
      <FolderWay desk={desk} />
      <Disclosure summary={words.seal} testId="seal-way">
        <SealedWay desk={desk} />
      </Disclosure>
      <Disclosure summary={words.asTextSummary} testId="text-way">
        <TextWay desk={desk} />
      </Disclosure>
    </div>
  </Panel>
);

const TextWay = ({ desk }: { desk: CopyDesk }) => {
  const { state, asText, textTaken } = useHandOut(desk);
  return state.kind === 'text' ? (
    <TextOut made={state.made} onTaken={textTaken} />
  ) : (
    <div class="files-block">
      <PressButton label={words.asText} onAct={() => void asText()} testId="make-text" />
      <p role="status">{state.kind === 'making' ? words.preparing : ''}</p>
      <p role="status">{state.kind === 'not-made' ? words.notMade : ''}</p>
    </div>
  );
};
