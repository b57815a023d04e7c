import { useApp } from '../parts/app-context.ts';
import { CureNotices } from './cure-notice.tsx';
import { LetterNotice } from './letter-notice.tsx';
import { PotNotice } from './pot-notice.tsx';

/** What the watch over the shop has to tell: another letter, and cures and mixes that are over. */
export const StandingNews = () => {
  const news = useApp().preferences.letterNews.value;
  return (
    <>
      {news && <LetterNotice news={news} />}
      <CureNotices />
      <PotNotice />
    </>
  );
};
