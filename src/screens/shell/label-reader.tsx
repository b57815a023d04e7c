import './label-reader.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { stageInUse } from '../../app/stage-in-use.ts';
import { findLabelled } from '../../domain/label/find-labelled.ts';
import type { TrayId } from '../../domain/log/ids.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { labelledWords, scanWords as words } from '../../words/scan-words.ts';
import { address } from '../parts/address.ts';
import { useSession } from '../parts/app-context.ts';
import { goToTray } from '../parts/go-to-tray.ts';
import { labelNews, labelTaker } from '../parts/label-news.ts';
import { SameCodeSheet } from '../parts/same-code.tsx';
import { useFeedback } from '../parts/use-feedback.ts';
import { listenToWedge } from './wedge-keys.ts';

/** Hears code readers that type like a keyboard, on every screen: goes to the tray of a label, or says why not. */
export const LabelReader = () => {
  const session = useSession();
  const { sound } = useFeedback();
  const [alike, setAlike] = useState<string | null>(null);
  const open = (tray: TrayId) => {
    setAlike(null);
    goToTray(session.view.value.shop, { tray, stage: stageInUse(session) });
  };
  const take = (text: string) => {
    if (labelTaker.value) return labelTaker.value(text);
    const { shop } = session.view.value;
    const found = findLabelled(shop, text);
    // What is half done in a sheet would be lost with it.
    const isOpen = document.querySelector('dialog[open]') !== null;
    const isKnown = found.kind === 'tray' || found.kind === 'alike';
    if (!isKnown || isOpen) {
      labelNews.value = isKnown ? words.sheetOpen : labelledWords(found);
      return sound('refused');
    }
    labelNews.value = '';
    sound('saved');
    if (found.kind === 'alike') setAlike(found.code);
    else open(found.tray.tray);
  };
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => listenToWedge((text) => latest.current(text)), []);
  useEffect(
    () =>
      address.subscribe(() => {
        labelNews.value = '';
      }),
    [],
  );
  if (alike) return <SameCodeSheet code={alike} onOpen={open} onClose={() => setAlike(null)} />;
  const { place, rest } = address.value;
  // The stage screen has a place of its own for what is said.
  if (labelNews.value === '' || (place === 'bench' && rest.length > 1)) return null;
  return (
    <div class="label-news">
      <Notice
        tone="error"
        title={labelNews.value}
        testId="label-news"
        actions={
          <PressButton
            label={words.close}
            onAct={() => {
              labelNews.value = '';
            }}
          />
        }
      />
    </div>
  );
};
