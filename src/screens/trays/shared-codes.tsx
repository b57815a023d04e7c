import { useState } from 'preact/hooks';
import { sharedCodes } from '../../domain/rollup/same-code.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { sameCodeWords as words } from '../../words/same-code-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { SameCodeSheet } from '../parts/same-code.tsx';

/** That trays in work share a code, with a way to tell them apart: all such codes, or `only` one. */
export const SharedCodes = ({ only }: { only?: string }) => {
  const shop = useShop();
  const [alike, setAlike] = useState<string | null>(null);
  const codes = sharedCodes(shop).filter((code) => only === undefined || code === only);
  // The sheet stays when the last shared code has gone: it shows the new one.
  if (codes.length === 0 && !alike) return null;
  return (
    <>
      {codes.length > 0 && (
        <Notice
          tone="warn"
          title={words.shared(codes)}
          testId="shared-codes"
          actions={codes.map((code) => (
            <PressButton
              key={code}
              label={code}
              name={`${code}: ${words.choose}`}
              onAct={() => setAlike(code)}
              testId={`shared-${code}`}
            />
          ))}
        >
          <p>{words.sharedHelp}</p>
        </Notice>
      )}
      {alike && (
        <SameCodeSheet
          code={alike}
          onOpen={(tray) => {
            setAlike(null);
            goTo('trays', tray);
          }}
          onClose={() => setAlike(null)}
        />
      )}
    </>
  );
};
