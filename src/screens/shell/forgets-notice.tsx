import type { Forgets } from '../../app/forgetting.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { forgetsWords as words } from '../../words/forgets-words.ts';

/** Stands as long as the window does: a shop must not be begun here in the belief that it is kept. */
export const ForgetsNotice = ({ forgets }: { forgets: Exclude<Forgets, 'nothing'> }) => (
  <Notice tone="warn" title={words.title} testId="forgets-banner">
    {words[forgets]}
  </Notice>
);
