import { bannerWords as words } from '../../words/banner-words.ts';

/** From the head of a page straight to the rack of places, which comes after all that is on the page; seen while it has the focus. */
export const PlacesLink = () => (
  <button type="button" class="places-link" onClick={focusPlaces} data-testid="to-places">
    {words.toPlaces}
  </button>
);

/** The place that is open, or the first: on a phone the open one may stand behind “More”. */
function focusPlaces(): void {
  const links = [...document.querySelectorAll<HTMLElement>('nav.places .place')].filter((link) =>
    link.checkVisibility(),
  );
  const current = links.find((link) => link.matches('[aria-current], [data-current]'));
  (current ?? links[0])?.focus();
}
