import type { Offer } from '../../app/update-offer.ts';
import { readId, stageId } from '../../domain/log/ids.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { shellWords } from '../../words/shell-words.ts';
import { updateWords as words } from '../../words/update-words.ts';
import { readAddress } from './address.ts';
import { useApp, useShop } from './app-context.ts';

/** A version that waits: offered, or why it does not come in. Nothing while none waits. */
export const UpdateOffer = ({ lead, testId }: { lead: string; testId: string }) => {
  const { updates } = useApp();
  const offer = updates.offer.value;
  const act = (label: string) => (
    <PressButton tone="go" closing label={label} onAct={updates.apply} testId="update-apply" />
  );
  switch (offer.kind) {
    case 'none':
      return null;
    case 'waiting':
      return (
        <Notice tone="info" title={words.ready} actions={act(words.apply)} testId={testId}>
          {lead}
        </Notice>
      );
    case 'asking':
    case 'applying':
      return <Notice tone="info" title={words[offer.kind]} testId={testId} />;
    case 'held':
      return (
        <Notice tone="warn" title={words.held} actions={act(words.tryAgain)} testId={testId}>
          <HeldBy offer={offer} />
        </Notice>
      );
    case 'no-copy':
      return (
        <Notice tone="error" title={words.noCopy} actions={act(words.tryAgain)} testId={testId}>
          {words.noCopyLead}
        </Notice>
      );
    case 'did-not-take':
      return (
        <Notice tone="warn" title={words.didNotTake} actions={act(words.tryAgain)} testId={testId}>
          {words.didNotTakeLead}
        </Notice>
      );
  }
};

const HeldBy = ({ offer: { by, at } }: { offer: Extract<Offer, { kind: 'held' }> }) => {
  const { registers } = useShop();
  if (at === undefined) return <p>{words.heldHere[by]}</p>;
  const { place, rest } = readAddress(at);
  const stage = place === 'bench' ? readId(stageId, rest[0]) : null;
  const name = shellWords[place === 'set-up' ? 'setUp' : place];
  const where = stage === null ? name : `${name}, ${nameOf(registers, { register: 'stage', id: stage })}`;
  return (
    <p>
      {words.heldThere[by](where)} {words.askedAgain}
    </p>
  );
};
