import type { ScrappedTime } from '../../domain/study/worked-time.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { studyWords } from '../../words/study-words.ts';
import { timeStudyWords as words } from '../../words/time-study-words.ts';

/** How much of the work went into pieces that were scrapped. */
export const LostTimePanel = ({ lost: { scrapped, all, share } }: { lost: ScrappedTime }) => (
  <Panel
    title={words.lost}
    actions={<Means label={studyWords.means}>{words.lostMeans}</Means>}
    testId="lost-time"
  >
    <p class="study-big figures">{share === undefined ? studyWords.notYet : words.lostIs(share)}</p>
    {share !== undefined && <p class="study-note">{words.lostOf(scrapped, all)}</p>}
  </Panel>
);
