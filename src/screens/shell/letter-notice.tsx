import type { LetterNews } from '../../app/station-letter.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { letterWords as words } from '../../words/letter-words.ts';
import { useApp } from '../parts/app-context.ts';

/** Says once that this tablet's codes begin with another letter from now on, and why. */
export const LetterNotice = ({ news }: { news: LetterNews }) => {
  const { preferences } = useApp();
  return (
    <Notice
      tone="warn"
      title={words.changed(news)}
      testId="letter-notice"
      actions={
        <PressButton
          tone="quiet"
          closing
          label={words.putAway}
          onAct={() => {
            preferences.letterNews.value = null;
          }}
          testId="letter-put-away"
        />
      }
    >
      <p>{words.why(news)}</p>
    </Notice>
  );
};
