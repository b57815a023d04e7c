import { useState } from 'preact/hooks';
import { ChoiceRow } from '../../../ui/field/choice-row.tsx';
import { labelWords as words } from '../../../words/label-words.ts';

/** In mm. */
export const papers = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;
type Paper = keyof typeof papers;

let lastPaper: Paper = 'a4';

/** The paper that is printed on: the one that was chosen last in this window. */
export function usePaper(): [Paper, (paper: Paper) => void] {
  const [paper, setPaper] = useState(lastPaper);
  return [
    paper,
    (next) => {
      lastPaper = next;
      setPaper(next);
    },
  ];
}

export const PaperChoice = ({ paper, onChoose }: { paper: Paper; onChoose: (paper: Paper) => void }) => (
  <ChoiceRow
    label={words.paper}
    choices={[
      { value: 'a4', label: words.a4 },
      { value: 'letter', label: words.letter },
    ]}
    value={paper}
    onChoose={onChoose}
    testId="print-paper"
  />
);
