import './tabs-nav.css';
import { useState } from 'preact/hooks';
import { Icon } from '../icon/icon.tsx';
import type { IconName } from '../icon/icon-paths.ts';
import type { Sheet } from '../sheet/sheet.tsx';

/** One place of the app. */
export interface Place {
  id: string;
  label: string;
  icon: IconName;
  href: string;
  /** Something waits there; said to a screen reader, shown as a quiet peg. */
  waiting?: string | undefined;
  /** It does not open just now; said to a screen reader, shown as a closed lock. */
  closed?: string | undefined;
}

export interface TabsNavProps {
  /** What the bar is called, for a screen reader. */
  label: string;
  places: readonly Place[];
  /** The id of the place shown. */
  current: string;
  /** Words of the button that shows the places beyond the fourth on a phone, and of the sheet it opens. */
  moreLabel: string;
  closeLabel: string;
  /** Takes over from the plain link. */
  onGo?: ((id: string) => void) | undefined;
}

/** How many places a phone shows before the button for the others. */
const shownOnPhone = 4;

interface PlaceLinkProps {
  place: Place;
  current: string;
  onGo: TabsNavProps['onGo'];
  /** Puts away the sheet that the link stands in. */
  onLeave?: () => void;
}

const PlaceLink = ({ place, current, onGo, onLeave }: PlaceLinkProps) => (
  <a
    class="place"
    href={place.href}
    aria-current={place.id === current ? 'page' : undefined}
    onClick={(event) => {
      onLeave?.();
      if (!onGo || event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      onGo(place.id);
    }}
  >
    <Icon name={place.icon} />
    <span class="place-label">{place.label}</span>
    {place.closed && (
      <span class="place-closed">
        <Icon name="lock" size={24} />
        <span class="unseen">{place.closed}</span>
      </span>
    )}
    {place.waiting && (
      <span class="place-waiting">
        <span class="unseen">{place.waiting}</span>
      </span>
    )}
  </a>
);

/** The rack of places: a rail at the side of a screen on its side, a bar at the foot of an upright one. */
export const TabsNav = ({ label, places, current, moreLabel, closeLabel, onGo }: TabsNavProps) => {
  // Fetched when it is first asked for: most tablets show all places.
  const [MoreSheet, setMoreSheet] = useState<typeof Sheet>();
  const close = () => setMoreSheet(undefined);
  const showMore = () =>
    void import('../sheet/sheet.tsx').then(
      (loaded) => setMoreSheet(() => loaded.Sheet),
      () => undefined,
    );
  const further = places.slice(shownOnPhone);
  const isFurther = further.some((place) => place.id === current);
  return (
    <nav class="places" aria-label={label}>
      <ul class="places-rack">
        {places.map((place, index) => (
          <li key={place.id} data-further={index >= shownOnPhone || undefined}>
            <PlaceLink place={place} current={current} onGo={onGo} />
          </li>
        ))}
        {further.length > 0 && (
          <li class="places-more">
            <button
              type="button"
              class="place"
              aria-haspopup="dialog"
              aria-expanded={MoreSheet !== undefined}
              data-current={isFurther || undefined}
              onClick={showMore}
            >
              <Icon name="more" />
              <span class="place-label">{moreLabel}</span>
            </button>
          </li>
        )}
      </ul>
      {MoreSheet && (
        <MoreSheet title={moreLabel} closeLabel={closeLabel} onClose={close} shape="whole">
          <ul class="places-list">
            {further.map((place) => (
              <li key={place.id}>
                <PlaceLink place={place} current={current} onGo={onGo} onLeave={close} />
              </li>
            ))}
          </ul>
        </MoreSheet>
      )}
    </nav>
  );
};
