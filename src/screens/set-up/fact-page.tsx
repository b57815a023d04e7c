import type { ComponentChildren, ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import type { Session } from '../../app/session.ts';
import type { FactOf, IdOf, RegisterName } from '../../domain/set-up/register.ts';
import { type Entry, factsOf } from '../../domain/shop/registers.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import type { DraftIds } from '../parts/form/kept-drafts.ts';
import { FactList } from './fact-list.tsx';

export interface FactSheetProps<Name extends RegisterName> {
  readonly id: IdOf<Name>;
  /** The fact as the shop has it; none while it is new. */
  readonly now: FactOf<Name> | undefined;
  readonly onClose: () => void;
}

export interface FactPageProps<Name extends RegisterName> {
  readonly register: Name;
  /** What test ids begin with. */
  readonly kind: string;
  readonly lead: string;
  readonly addLabel: string;
  readonly kept: (session: Session) => DraftIds;
  /** Makes an id of this kind from a fresh one. */
  readonly toId: (fresh: string) => IdOf<Name> | null;
  readonly sheet: ComponentType<FactSheetProps<Name>>;
  /** The facts, where some of them stand before the shop has said a word on them. */
  readonly entries?: readonly Entry<Name>[];
  /** A second line of an entry. */
  readonly detail?: (entry: Entry<Name>) => ComponentChildren;
  readonly order?: (entries: readonly Entry<Name>[]) => readonly Entry<Name>[];
}

/** The facts of one kind, each on a sheet of its own when it is tapped. */
export const FactPage = <Name extends RegisterName>(props: FactPageProps<Name>) => {
  const { register, kept, toId, order, sheet: FactSheet } = props;
  const session = useSession();
  const [open, setOpen] = useState<string | null>(null);
  const { registers } = useShop();
  const all = props.entries ?? factsOf(registers, register);
  const isKnown = (known: string) => all.some((entry) => entry.id === known);
  const drafts = kept(session);
  const id = open === null ? null : toId(open);
  const add = () => {
    const begun = drafts.ids().find((each) => !isKnown(each));
    setOpen(begun ?? session.newId());
  };
  return (
    <>
      <FactList
        {...props}
        entries={order ? order(all) : all}
        isDraft={(known) => drafts.has(known)}
        onAdd={add}
        onPick={(entry) => setOpen(entry.id)}
      />
      {id && (
        <FactSheet
          key={id}
          id={id}
          now={all.find((entry) => entry.id === id)?.fact}
          onClose={() => setOpen(null)}
        />
      )}
    </>
  );
};
