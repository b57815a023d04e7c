import type { ComponentChildren } from 'preact';
import { calledBy, type RegisterName } from '../../domain/set-up/register.ts';
import type { Entry } from '../../domain/shop/registers.ts';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { isAway } from './set-up-view.ts';

export interface FactListProps<Name extends RegisterName> {
  readonly lead: string;
  readonly entries: readonly Entry<Name>[];
  /** A second line of an entry. */
  readonly detail?: (entry: Entry<Name>) => ComponentChildren;
  /** Whether something is typed of it that is not saved. */
  readonly isDraft: (id: string) => boolean;
  readonly addLabel: string;
  readonly onAdd: () => void;
  readonly onPick: (entry: Entry<Name>) => void;
  /** What test ids begin with. */
  readonly kind: string;
}

/** The facts of one kind as a rack of buttons; those put away stand behind a line. */
export const FactList = <Name extends RegisterName>(props: FactListProps<Name>) => {
  const { lead, entries, addLabel, onAdd, kind } = props;
  const away = entries.filter(({ fact }) => isAway(fact));
  const live = entries.filter(({ fact }) => !isAway(fact));
  return (
    <Panel
      title={words.inUse}
      lead={lead}
      actions={<PressButton tone="go" icon="plus" label={addLabel} onAct={onAdd} testId={`add-${kind}`} />}
    >
      {live.length === 0 && <p>{words.none}</p>}
      <Rack {...props} entries={live} />
      {away.length > 0 && (
        <Disclosure summary={words.retiredList(away.length)} testId={`${kind}-away`}>
          <Rack {...props} entries={away} />
        </Disclosure>
      )}
    </Panel>
  );
};

const Rack = <Name extends RegisterName>({ entries, detail, isDraft, onPick, kind }: FactListProps<Name>) => (
  <ul class="set-up-rack">
    {entries.map((entry) => (
      <li key={entry.id}>
        <PressButton
          label={calledBy(entry.fact)}
          detail={isDraft(entry.id) ? <b class="set-up-unsaved">{words.unsaved}</b> : detail?.(entry)}
          onAct={() => onPick(entry)}
          testId={`${kind}-${entry.id}`}
        />
      </li>
    ))}
  </ul>
);
