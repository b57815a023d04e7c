import { PressButton } from '../../ui/press/press-button.tsx';
import { studyWords as words } from '../../words/study-words.ts';
import { goTo } from '../parts/address.ts';
import { studyIcons, studyPages } from '../parts/study-pages.ts';

/** The ways to what the whole log tells. */
export const StudyRack = () => (
  <nav aria-label={words.rack}>
    <ul class="yield-rack">
      {studyPages.map((page) => (
        <li key={page}>
          <PressButton
            icon={studyIcons[page]}
            label={words.pages[page].title}
            onAct={() => goTo('yield', page)}
            testId={`study-to-${page}`}
          />
        </li>
      ))}
    </ul>
  </nav>
);
