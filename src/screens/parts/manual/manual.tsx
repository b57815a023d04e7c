import './manual.css';
import { useEffect } from 'preact/hooks';
import { Notice } from '../../../ui/notice/notice.tsx';
import { manualWords as words } from '../../../words/manual-words.ts';
import { address } from '../address.ts';
import { useShop } from '../app-context.ts';
import { type ChapterName, chapterIn, chapters, manualHref, pictureSize } from './chapters.ts';

const headingOf = (name: ChapterName | 'contents') => `manual-${name}`;

/** Brings a heading to the top of the screen, and the reader of the screen with it. */
function goToHeading(name: ChapterName | 'contents'): void {
  const heading = document.getElementById(headingOf(name));
  heading?.scrollIntoView();
  heading?.focus({ preventScroll: true });
}

/** The short manual: its contents, and a chapter for each part of the job. */
export const Manual = () => {
  const chapter = chapterIn(address.value.rest);
  useEffect(() => {
    if (chapter) goToHeading(chapter);
  }, [chapter]);
  // Before there is a shop its places cannot be gone to; the rescue page always can.
  const hasShop = useShop().registers.size > 0;
  return (
    <div class="manual" data-testid="manual">
      <p>{words.lead}</p>
      <Notice tone="warn" title={words.cautionTitle}>
        {words.caution}
      </Notice>
      <nav aria-labelledby={headingOf('contents')}>
        <h2 id={headingOf('contents')} tabIndex={-1}>
          {words.contents}
        </h2>
        <ol class="manual-contents">
          {chapters.map(({ name }) => (
            <li key={name}>
              {/* Also when the address names that chapter already. */}
              <a class="manual-link" href={manualHref(name)} onClick={() => goToHeading(name)}>
                {words.chapters[name].title}
              </a>
            </li>
          ))}
        </ol>
      </nav>
      {chapters.map(({ name, picture, href }) => (
        <Chapter
          key={name}
          name={name}
          picture={picture}
          href={hasShop || !href.startsWith('#') ? href : null}
        />
      ))}
    </div>
  );
};

interface ChapterProps {
  readonly name: ChapterName;
  readonly picture: string;
  readonly href: string | null;
}

const Chapter = ({ name, picture, href }: ChapterProps) => {
  const chapter = words.chapters[name];
  return (
    <section class="manual-chapter" aria-labelledby={headingOf(name)} data-testid={`manual-${name}`}>
      <h2 id={headingOf(name)} tabIndex={-1}>
        {chapter.title}
      </h2>
      <div class="manual-text">
        {chapter.text.map((paragraph) => (
          <p key={paragraph}>{paragraph}</p>
        ))}
        {'caution' in chapter && (
          <Notice tone="warn" title={words.cautionTitle}>
            {chapter.caution}
          </Notice>
        )}
        <p class="manual-ways">
          {href && (
            <a class="manual-link" href={href} data-testid={`manual-to-${name}`}>
              {chapter.go}
            </a>
          )}
          <a class="manual-link" href={manualHref()} onClick={() => goToHeading('contents')}>
            {words.toContents}
          </a>
        </p>
      </div>
      <img
        class="manual-picture"
        src={picture}
        alt={chapter.picture}
        {...pictureSize}
        loading="lazy"
        decoding="async"
      />
    </section>
  );
};
