import { useState } from 'preact/hooks';
import type { CopyDesk } from '../../../app/copy-desk.ts';
import { logSize } from '../../../app/log-size.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import { Notice } from '../../../ui/notice/notice.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { sinceWhen } from '../../../words/copy-age-words.ts';
import { filesWords as words } from '../../../words/files-words.ts';
import { useApp, useSession, useShop } from '../app-context.ts';
import { useNow } from '../use-now.ts';

/** The zone that moments are shown in: the shop's. */
export function useShopZone(): string {
  return factOf(useShop().registers, { register: 'shop', id: 'shop' })?.zone ?? 'UTC';
}

/** What is known of the last copy outside of the tablet. */
export const OutsideState = () => {
  const { outside } = useApp().copies.known.value;
  const [now, zone] = [useNow(), useShopZone()];
  const log = logSize(useSession());
  if (!outside) return <p data-testid="outside-state">{words.outsideNever}</p>;
  const when = sinceWhen({ at: outside.at, now, zone });
  return (
    <p data-testid="outside-state">
      {words.outsideLast(when, outside.entries, words.ways[outside.way])} {newSince(log - outside.log)}
    </p>
  );
};

/** What is known of the last copy on the tablet, and of a try that made none. */
export const KeptState = ({ hasShelf }: { hasShelf: boolean }) => {
  const { kept, trouble } = useApp().copies.known.value;
  const [now, zone] = [useNow(), useShopZone()];
  const log = logSize(useSession());
  if (!hasShelf) return <Notice tone="warn" title={words.noShelf} testId="no-shelf" />;
  const when = (at: number) => sinceWhen({ at, now, zone });
  return (
    <>
      {trouble && (
        <Notice
          tone="warn"
          title={trouble.kind === 'guarded' ? words.guarded : words.failed(when(trouble.at))}
          testId={`copy-${trouble.kind}`}
        />
      )}
      <p data-testid="kept-state">
        {kept
          ? `${words.keptLast(when(kept.at), kept.entries)} ${newSince(log - kept.log)}`
          : words.keptNever}
      </p>
    </>
  );
};

const newSince = (n: number) => (n > 0 ? words.newSince(n) : words.nothingNew);

/** Copies the log onto the tablet at a tap. */
export const KeepButton = ({ desk }: { desk: CopyDesk }) => {
  const [said, setSaid] = useState('');
  const keep = async () => {
    setSaid(words.keeping);
    const { kind } = await desk.keep().catch(() => ({ kind: 'failed' as const }));
    setSaid(words.keepResults[kind]);
  };
  return (
    <div class="files-block">
      <div>
        <PressButton icon="trays" label={words.keepNow} onAct={() => void keep()} testId="keep-copy" />
      </div>
      <p role="status" data-testid="keep-copy-said">
        {desk.working.value && said === '' ? words.keeping : said}
      </p>
    </div>
  );
};
