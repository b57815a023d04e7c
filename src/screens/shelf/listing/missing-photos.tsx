import { Notice } from '../../../ui/notice/notice.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { listingWords as words } from '../../../words/listing-words.ts';
import { nameOf } from '../../../words/names.ts';
import { goTo, hrefOf } from '../../parts/address.ts';
import { useShop } from '../../parts/app-context.ts';
import { type ListingPhotos, mostPhotos } from './listing-view.ts';

/** What photos the sheet is without, and why. */
export const MissingPhotos = ({ photos: { missing, without, more } }: { photos: ListingPhotos }) => {
  const { registers } = useShop();
  const name = (id: (typeof without)[number]) => nameOf(registers, { register: 'variant', id });
  const all = missing.reduce((sum, { photos }) => sum + photos, 0);
  return (
    <>
      {all > 0 && (
        <Notice
          tone="warn"
          title={words.missingTitle(all)}
          actions={<PressButton label={words.toFiles} onAct={() => goTo('set-up', 'files')} />}
          testId="listing-missing"
        >
          <p>{words.missing}</p>
          <ul class="listing-names">
            {missing.map(({ variant, photos }) => (
              <li key={variant}>{words.missingOf(name(variant), photos)}</li>
            ))}
          </ul>
        </Notice>
      )}
      {without.length > 0 && (
        <p data-testid="listing-pictureless">
          {words.pictureless}{' '}
          {without.map((variant, place) => (
            <span key={variant}>
              {place > 0 && '; '}
              <a href={hrefOf('shelf', variant)} dir="auto">
                {name(variant)}
              </a>
            </span>
          ))}
        </p>
      )}
      {more && <p>{words.most(mostPhotos)}</p>}
    </>
  );
};
