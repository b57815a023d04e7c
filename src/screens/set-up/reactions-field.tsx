import { useState } from 'preact/hooks';
import type { ShopDay } from '../../domain/log/ids.ts';
import { mostReactions, type Reaction } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { longestNote } from '../../domain/set-up/text-schema.ts';
import { Field } from '../../ui/field/field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords } from '../../words/set-up-words.ts';
import { woodCareWords as words } from '../../words/wood-care-words.ts';
import { noteProblem } from '../parts/form/reading.ts';

export interface ReactionsFieldProps {
  readonly reactions: readonly Reaction[];
  readonly today: ShopDay;
  readonly onReactions: (reactions: readonly Reaction[]) => void;
}

/** What this wood did to the maker: noted once, kept for good; a mistake is withdrawn and stays readable. */
export const ReactionsField = ({ reactions, today, onReactions }: ReactionsFieldProps) => {
  const [typed, setTyped] = useState('');
  const [error, setError] = useState<string>();
  const isFull = reactions.length >= mostReactions;
  const add = () => {
    const note = tidyText(typed);
    const problem = note === '' ? words.emptyReaction : noteProblem(note);
    setError(problem);
    if (problem !== undefined) return;
    onReactions([...reactions, { day: today, note, withdrawn: null }]);
    setTyped('');
  };
  return (
    <fieldset class="set-up-bill" data-testid="wood-reactions">
      <legend class="field-label">{words.reactions}</legend>
      <p class="field-hint">{isFull ? words.reactionsFull : words.reactionsLead}</p>
      {reactions.length === 0 ? (
        <p>{words.noReactions}</p>
      ) : (
        <ul class="set-up-route">
          {reactions.map(({ day, note, withdrawn }, place) => (
            <li key={place}>
              <span class="set-up-stage">
                <span dir="auto">{words.reactionOf(day, note)}</span>
                {withdrawn !== null && <b>{words.withdrawn(withdrawn)}</b>}
              </span>
              {withdrawn === null && (
                <PressButton
                  tone="quiet"
                  label={words.withdraw}
                  name={`${words.withdraw}: ${note}`}
                  onAct={() =>
                    onReactions(
                      reactions.map((each, at) => (at === place ? { ...each, withdrawn: today } : each)),
                    )
                  }
                  testId={`reaction-withdraw-${place}`}
                />
              )}
            </li>
          ))}
        </ul>
      )}
      {!isFull && (
        <>
          <Field
            label={words.reaction}
            hint={words.reactionHint}
            rows={2}
            value={typed}
            onText={setTyped}
            longest={longestNote}
            tooLong={(length) => setUpWords.tooLong(length, longestNote)}
            error={error}
            testId="reaction-note"
          />
          <PressButton icon="plus" label={words.addReaction} onAct={add} testId="reaction-add" />
        </>
      )}
      <p>{words.seeDoctor}</p>
    </fieldset>
  );
};
