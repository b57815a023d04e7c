import '../form/form.css';
import { useState } from 'preact/hooks';
import type { Invited, JoinResult, ReplicaDesk } from '../../../app/replica.ts';
import { ChoiceRow } from '../../../ui/field/choice-row.tsx';
import { Field } from '../../../ui/field/field.tsx';
import { Disclosure } from '../../../ui/notice/disclosure.tsx';
import { Notice } from '../../../ui/notice/notice.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { tabletsWords as words } from '../../../words/tablets-words.ts';
import { useShop } from '../app-context.ts';
import { JoinEye } from './join-eye.tsx';

export interface JoinFormProps {
  readonly desk: ReplicaDesk;
  /** What the app was opened with, if that was an invitation. */
  readonly link?: string | undefined;
  readonly onJoined: () => void;
}

const nothingTyped = { address: '', shop: '', words: '' };

/** A sign to scan, a link, or its parts typed: whichever is there joins this tablet to the others. */
export const JoinForm = ({ desk, link: given = '', onJoined }: JoinFormProps) => {
  const hasShop = useShop().registers.size > 0;
  const [link, setLink] = useState(given);
  const [typed, setTyped] = useState(nothingTyped);
  // The tablet that brings the shop is the one that lets the others in.
  const [mayInvite, setMayInvite] = useState(hasShop);
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const invited = invitedBy(link, typed);

  const join = async (by: Invited | undefined) => {
    if (!by) {
      setProblem(words.nothing);
      return;
    }
    setBusy(true);
    const result = await desk.join(by, { mayInvite });
    setBusy(false);
    if (result.kind === 'joined') onJoined();
    else setProblem(problemOf(result, 'link' in by));
  };

  return (
    <div class="form-fields" aria-busy={busy}>
      {hasShop && (
        <Notice tone="warn" title={words.addsUp}>
          {words.addsUpHelp}
        </Notice>
      )}
      <JoinEye
        onLink={(read) => {
          setLink(read);
          setProblem(null);
        }}
      />
      <Field
        label={words.link}
        hint={words.linkHint}
        kind="url"
        value={link}
        onText={(text) => {
          setLink(text);
          setProblem(null);
        }}
        testId="join-link"
      />
      <Disclosure summary={words.typed} testId="join-typed">
        <div class="form-fields">
          <Field
            label={words.address}
            hint={words.addressHint}
            kind="url"
            value={typed.address}
            onText={(address) => setTyped({ ...typed, address })}
            testId="join-address"
          />
          <Field
            label={words.shop}
            hint={words.shopHint}
            code
            value={typed.shop}
            onText={(shop) => setTyped({ ...typed, shop })}
            testId="join-shop"
          />
          <Field
            label={words.key}
            hint={words.keyHint}
            rows={3}
            value={typed.words}
            onText={(key) => setTyped({ ...typed, words: key })}
            testId="join-key"
          />
        </div>
      </Disclosure>
      <ChoiceRow
        label={words.mayInvite}
        hint={words.mayInviteHint}
        choices={[
          { value: 'yes', label: words.yes },
          { value: 'no', label: words.no },
        ]}
        value={mayInvite ? 'yes' : 'no'}
        onChoose={(value) => setMayInvite(value === 'yes')}
        testId="join-may-invite"
      />
      {problem !== null && <Notice tone="error" title={problem} testId="join-problem" />}
      <div>
        <PressButton
          tone="go"
          size="bench-small"
          icon="join"
          label={words.go}
          disabledReason={busy ? words.going : undefined}
          onAct={() => void join(invited)}
          testId="join-go"
        />
      </div>
    </div>
  );
};

function invitedBy(link: string, typed: typeof nothingTyped): Invited | undefined {
  if (link.trim() !== '') return { link: link.trim() };
  return Object.values(typed).every((text) => text.trim() === '') ? undefined : typed;
}

function problemOf(result: Exclude<JoinResult, { kind: 'joined' }>, byLink: boolean): string {
  if (result.kind === 'refused') return words.refused[result.why];
  if (result.kind === 'no-invitation') return byLink ? words.linkBad : words.typedBad;
  return words.problems[result.kind];
}
