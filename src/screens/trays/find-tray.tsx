import { useState } from 'preact/hooks';
import type { TrayId } from '../../domain/log/ids.ts';
import { traysOfCode } from '../../domain/rollup/same-code.ts';
import { codeDigits, codeLetters } from '../../domain/tray/code-alphabet.ts';
import { judgeTypedCode, type Mistyped } from '../../domain/tray/mistyped-code.ts';
import { longestCode, tidyCode } from '../../domain/tray/tray-code.ts';
import { CodePad } from '../../ui/entry/code-pad.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { nameOf } from '../../words/names.ts';
import { mistypedWords, traysWords as words } from '../../words/trays-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { SameCodeSheet } from '../parts/same-code.tsx';
import { liveCodes, type TrayRow } from './trays-view.ts';

export interface FindTrayProps {
  readonly rows: readonly TrayRow[];
  /** What is done with the tray that is found; its page is opened if left out. */
  readonly onFound?: ((tray: TrayId) => void) | undefined;
}

/** The pad that finds a tray by its code; a mistyped one is judged and the nearest trays are offered. */
export const FindTray = ({ rows, onFound = (tray) => goTo('trays', tray) }: FindTrayProps) => {
  const shop = useShop();
  const { registers } = shop;
  const [alike, setAlike] = useState<string | null>(null);
  const [typed, setTyped] = useState('');
  const [wrong, setWrong] = useState<Mistyped | null>(null);
  const found = (tray: TrayId) => {
    setAlike(null);
    setTyped('');
    onFound(tray);
  };
  const open = (code: string) => {
    // A finished tray can be opened by its code too; it is only not offered.
    const [tray, ...others] = traysOfCode(shop, code);
    if (tray && others.length > 0) return setAlike(tray.code);
    if (tray) return found(tray.tray);
    setWrong(judgeTypedCode(code, liveCodes(rows)) ?? null);
  };
  const offers = (wrong?.offers ?? []).map((code) => {
    const tray = rows.find((row) => row.tray.code === code)?.tray;
    return { code, label: tray ? nameOf(registers, { register: 'variant', id: tray.variant }) : '' };
  });
  return (
    <Panel title={words.find}>
      <CodePad
        label={words.findLabel}
        typed={typed}
        onTyped={(text) => {
          setTyped(text);
          setWrong(null);
        }}
        rows={[codeLetters, codeDigits]}
        longest={longestCode}
        onEnter={open}
        enterLabel={words.open}
        eraseLabel={words.erase}
        error={wrong ? mistypedWords(wrong, tidyCode(typed)) : undefined}
        offers={offers}
        offersLabel={words.offers}
        onOffer={open}
        testId="find-pad"
      />
      {alike && <SameCodeSheet code={alike} onOpen={found} onClose={() => setAlike(null)} />}
    </Panel>
  );
};
