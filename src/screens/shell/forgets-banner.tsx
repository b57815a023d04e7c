import { Notice } from '../../ui/notice/notice.tsx';
import { shellWords as words } from '../../words/shell-words.ts';
import { useApp } from '../parts/app-context.ts';

/** Stands as long as the window does: a shop must not be begun here in the belief that it is kept. */
export const ForgetsBanner = () => {
  const { forgets } = useApp();
  if (forgets === 'nothing') return null;
  return (
    <Notice tone="warn" title={words.forgetsTitle} testId="forgets-banner">
      {forgets === 'all' ? words.forgetsAll : words.forgetsPerhaps}
    </Notice>
  );
};
