import './listing.css';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { listingWords as words } from '../../../words/listing-words.ts';
import { shelfWords } from '../../../words/shelf-words.ts';
import { goTo } from '../../parts/address.ts';
import { ShelfLastAct } from '../shelf-last-act.tsx';
import { ListingSheet } from './listing-sheet.tsx';
import { ToList } from './to-list.tsx';

/** Lists finished pieces for sale, and says what is to be said of them where they are sold. */
export const ListingPage = () => (
  <main class="shelf">
    <header class="shelf-head">
      <div>
        <h1>{words.title}</h1>
        <p>{words.lead}</p>
      </div>
      <PressButton icon="back" label={shelfWords.toShelf} onAct={() => goTo('shelf')} testId="to-shelf" />
    </header>
    <ShelfLastAct />
    <ToList />
    <ListingSheet />
  </main>
);
