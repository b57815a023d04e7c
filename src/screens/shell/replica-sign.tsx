import { Icon } from '../../ui/icon/icon.tsx';
import { tabletsWords as words } from '../../words/tablets-words.ts';
import { hrefOf } from '../parts/address.ts';
import { standingWords } from '../parts/join/standing-words.ts';
import { useReplica } from '../parts/join/use-replica.ts';

/** How this tablet stands with the others it has joined; nothing where it works alone. */
export const ReplicaSign = (moment: { readonly now: number; readonly zone: string }) => {
  const desk = useReplica();
  if (!desk?.joined.value) return null;
  const status = desk.status.value;
  const isRefused = status.kind === 'refused';
  return (
    <a
      class="copy-age"
      href={hrefOf('set-up', 'tablets')}
      data-tone={isRefused ? 'amber' : 'calm'}
      data-testid="replica-sign"
      data-kind={status.kind}
    >
      {isRefused && <Icon name="warn" size={24} />}
      <span>{words.title}:</span>
      <span>{standingWords(status, moment)}</span>
    </a>
  );
};
