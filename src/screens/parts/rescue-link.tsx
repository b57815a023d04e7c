import { shellWords as words } from '../../words/shell-words.ts';

/** The way to the page that saves everything without the app. */
export const RescueLink = () => (
  <p>
    <a class="rescue-link" href="rescue.html" data-testid="rescue-link">
      {words.rescue}
    </a>
  </p>
);
