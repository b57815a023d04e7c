import type { TrayId } from '../../domain/log/ids.ts';
import { stagesOfTray } from '../../domain/rollup/waiting.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { labelWords } from '../../words/label-words.ts';
import { traysWords as words } from '../../words/trays-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';

export interface MadeTraysProps {
  readonly codes: readonly string[];
  readonly trays: readonly TrayId[];
  readonly pieces: number;
  readonly onMore: () => void;
}

/** The codes of the trays just made up, to be chalked on, with one tap to take the making back. */
export const MadeTrays = ({ codes, trays, pieces, onMore }: MadeTraysProps) => {
  const session = useSession();
  const shop = useShop();
  const [tray] = trays;
  const first = tray && stagesOfTray(shop, tray)[0]?.stage;
  const toBench = () => first && goTo('bench', first, ...(trays.length === 1 ? trays : []));
  const undo = async () => {
    await session.undoLast();
    onMore();
  };
  return (
    <main class="trays">
      <h1>{words.newTitle}</h1>
      <Panel title={words.madeTitle} lead={words.madeEach(pieces)} tone="saved">
        <ul class="trays-made">
          {codes.map((code) => (
            <li key={code} class="code" data-testid="made-code">
              {code}
            </li>
          ))}
        </ul>
        <div class="trays-acts">
          <PressButton
            size="bench-small"
            tone="go"
            icon="bench"
            label={words.toBench}
            onAct={toBench}
            testId="made-to-bench"
          />
          <PressButton
            size="bench-small"
            icon="undo"
            label={words.undo}
            onAct={() => void undo()}
            testId="made-undo"
          />
          <PressButton
            size="bench-small"
            icon="label"
            label={labelWords.printLabels}
            onAct={() => goTo('trays', 'labels', ...trays)}
            testId="made-labels"
          />
          <PressButton size="bench-small" icon="plus" label={words.more} onAct={onMore} testId="make-more" />
          <PressButton
            size="bench-small"
            icon="trays"
            label={words.toTrays}
            onAct={() => goTo('trays')}
            testId="made-done"
          />
        </div>
      </Panel>
    </main>
  );
};
