import type { ComponentChildren } from 'preact';
import type { RegisterName } from '../../domain/set-up/register.ts';
import type { Entry } from '../../domain/shop/registers.ts';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';

export interface FactListProps<Name extends RegisterName> {
  readonly title: string;
  readonly lead: string;
  readonly entries: readonly Entry<Name>[];
  /** A second line of an entry. */
  readonly detail?: (entry: Entry<Name>) => ComponentChildren;
  readonly addLabel: string;
  readonly onAdd: () => void;
  readonly onPick: (entry: Entry<Name>) => void;
  /** What test ids begin with. */
  readonly kind: string;
}

/** The facts of one kind as a rack of buttons; those put away stand behind a line. */
export const FactList = <Name extends RegisterName>(props: FactListProps<Name>) => {
  const { title, lead, entries, addLabel, onAdd, kind } = props;
  const away = entries.filter(isAway);
  const live = entries.filter((entry) => !isAway(entry));
  return (
    <Panel
      title={title}
      lead={lead}
      actions={<PressButton tone="go" icon="plus" label={addLabel} onAct={onAdd} testId={`add-${kind}`} />}
    >
      {live.length === 0 && <p>{words.none}</p>}
      <Rack {...props} entries={live} />
      {away.length > 0 && (
        <Disclosure summary={words.retiredList(away.length)}>
          <Rack {...props} entries={away} />
        </Disclosure>
      )}
    </Panel>
  );
};

const Rack = <Name extends RegisterName>({ entries, detail, onPick, kind }: FactListProps<Name>) => (
  <ul class="set-up-rack">
    {entries.map((entry) => (
      <li key={entry.id}>
        <PressButton
          label={entry.fact.name}
          detail={detail?.(entry)}
          onAct={() => onPick(entry)}
          testId={`${kind}-${entry.id}`}
        />
      </li>
    ))}
  </ul>
);

function isAway({ fact }: { fact: object }): boolean {
  return 'retired' in fact && fact.retired === true;
}
