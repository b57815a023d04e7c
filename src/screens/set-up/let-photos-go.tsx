import { useState } from 'preact/hooks';
import type { PhotoNotes, Photos } from '../../app/photos.ts';
import type { PhotoHash } from '../../domain/log/photo-facts.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { photoWords as words } from '../../words/photo-words.ts';
import { problemWords } from '../../words/problem-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { oldPhotosHere } from './photos-view.ts';

export interface LetPhotosGoProps {
  readonly photos: Photos;
  readonly notes: PhotoNotes;
  readonly onChange: () => void;
}

const ages = [6, 12, 24] as const;
type Age = (typeof ages)[number];

/** Takes old photos of flaws off the tablet, once it was seen how many they are. */
export const LetPhotosGo = ({ photos, notes, onChange }: LetPhotosGoProps) => {
  const session = useSession();
  const { registers } = useShop();
  const [age, setAge] = useState<Age | null>(null);
  const [old, setOld] = useState<readonly PhotoHash[]>([]);
  const [said, setSaid] = useState('');
  const look = async (months: Age) => {
    setAge(months);
    setOld([]);
    setSaid(words.looking);
    const found = await oldPhotosHere(session, { months, notes });
    setOld(found);
    setSaid(found.length === 0 ? words.noneOld : '');
  };
  const letGo = async () => {
    const result = await session.act({ kind: 'let-photos-go', photos: old });
    if (result.kind === 'refused') return setSaid(problemWords(result.problem, registers));
    await photos.letGo(old);
    setSaid(words.wentGo(old.length));
    setOld([]);
    setAge(null);
    onChange();
  };
  return (
    <Disclosure summary={words.letGo} testId="photos-let-go">
      <div class="files-block">
        <p>{words.letGoLead}</p>
        <ChoiceRow
          label={words.olderThan}
          choices={ages.map((months) => ({ value: `${months}`, label: words.months(months) }))}
          value={`${age ?? ''}`}
          onChoose={(chosen) => void look(ages.find((months) => `${months}` === chosen) ?? 24)}
          testId="photos-age"
        />
        {old.length > 0 && (
          <PressButton
            tone="danger"
            label={words.letGoNow(old.length)}
            onAct={() => void letGo()}
            closing
            testId="photos-let-go-now"
          />
        )}
        <p role="status" data-testid="photos-let-go-said">
          {said}
        </p>
      </div>
    </Disclosure>
  );
};
