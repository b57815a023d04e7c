import { useMemo, useState } from 'preact/hooks';
import { inForce } from '../../../app/acts.ts';
import type { Session } from '../../../app/session.ts';
import { listingColumnsOf } from '../../../domain/export/listing-columns.ts';
import {
  type ListingLine,
  linesListedBy,
  linesListedNow,
  listingTable,
} from '../../../domain/export/listing-table.ts';
import type { Shop } from '../../../domain/shop/shop.ts';
import { ChoiceRow } from '../../../ui/field/choice-row.tsx';
import { Panel } from '../../../ui/panel/panel.tsx';
import { momentWords } from '../../../words/date-words.ts';
import { listingFileNames, listingWords as words } from '../../../words/listing-words.ts';
import { nameOf } from '../../../words/names.ts';
import { photoWords } from '../../../words/photo-words.ts';
import { tableInWords } from '../../../words/table-words.ts';
import { useApp, useSession } from '../../parts/app-context.ts';
import { usePhotos } from '../../parts/photos/use-photos.ts';
import { PaperChoice, papers, usePaper } from '../../parts/print/paper-choice.tsx';
import { PrintButton } from '../../parts/print/print-button.tsx';
import { PrintRoot } from '../../parts/print/print-root.tsx';
import { useNow } from '../../parts/use-now.ts';
import { ColumnChoice } from './column-choice.tsx';
import { GiveFile } from './give-file.tsx';
import { ListingPaper, type Paper } from './listing-paper.tsx';
import type { ListingPhotos } from './listing-view.ts';
import { MissingPhotos } from './missing-photos.tsx';
import { useListingPhotos } from './use-listing-photos.ts';

type Which = 'last' | 'now';

/** In mm. */
const margin = 12;

/** The events of the last listing on this tablet that still counts. */
function lastListed({ acts }: Session, shop: Shop) {
  return acts.value
    .map((act) => inForce(act, shop.voids))
    .findLast((events) => events.some((event) => event.kind === 'shelf-moved' && event.to === 'listed'));
}

/** What is to be said of listed pieces: as a table, as a file with its photos, and on paper. */
export const ListingSheet = () => {
  const session = useSession();
  const { shop } = session.view.value;
  const last = linesListedBy(shop, lastListed(session, shop) ?? []);
  const now = linesListedNow(shop);
  const [asked, setAsked] = useState<Which>();
  const which = asked ?? (last.length > 0 ? 'last' : 'now');
  const lines = which === 'last' ? last : now;
  const count = (of: readonly ListingLine[]) => words.count(of.reduce((sum, { pieces }) => sum + pieces, 0));
  return (
    <Panel title={words.sheet} testId="listing-sheet">
      <div class="shelf-form">
        <ChoiceRow
          label={words.which}
          choices={[
            { value: 'last', label: words.last, detail: `${count(last)}, ${words.lastDetail}` },
            { value: 'now', label: words.now, detail: `${count(now)}, ${words.nowDetail}` },
          ]}
          value={which}
          onChoose={setAsked}
          testId="listing-which"
        />
        {lines.length === 0 ? (
          <p data-testid="listing-empty">{which === 'last' ? words.emptyLast : words.emptyNow}</p>
        ) : (
          <Lines lines={lines} />
        )}
      </div>
    </Panel>
  );
};

const Lines = ({ lines }: { lines: readonly ListingLine[] }) => {
  const found = useListingPhotos(lines);
  if (found.kind === 'looking') return <p>{words.looking}</p>;
  const photos = found.kind === 'found' ? found.photos : { files: [], missing: [], without: [], more: false };
  return (
    <>
      {found.kind === 'failed' && <p role="alert">{words.photosFailed}</p>}
      <MissingPhotos photos={photos} />
      <ColumnChoice />
      <Sheet lines={lines} photos={photos} />
    </>
  );
};

const Sheet = ({ lines, photos: { files } }: { lines: readonly ListingLine[]; photos: ListingPhotos }) => {
  const session = useSession();
  const { preferences } = useApp();
  const store = usePhotos();
  const columns = listingColumnsOf(preferences.listing.value);
  const { shop } = session.view.value;
  const now = useNow();
  const table = tableInWords(
    listingTable(shop, {
      ...{ lines, columns, nameOf: (fact) => nameOf(shop.registers, fact) },
      filesOf: (variant) => files.filter((file) => file.variant === variant).map(({ name }) => name),
    }),
  );
  const text = async () => (await import('../../../app/csv.ts')).csvOf(table);
  const day = session.today();
  const csv = async () => new File([await text()], listingFileNames.table(day), { type: 'text/csv' });
  const zip = async () => {
    const packed = await store?.listing({ name: listingFileNames.inside, text: await text() }, files);
    return packed && new File([packed], listingFileNames.zip(day), { type: packed.type });
  };
  // A file that waits for a second tap is of the sheet as it was: another sheet, another button.
  const said = JSON.stringify([table, files.map(({ photo }) => photo)]);
  const paper: Paper = {
    ...{ table, columns, files, store, variants: lines.map(({ variant }) => variant) },
    title: nameOf(shop.registers, { register: 'shop', id: 'shop' }),
    said: words.printed(momentWords(now, session.zone())),
  };
  return (
    <>
      <div class="shelf-ways" key={said}>
        <GiveFile label={words.saveTable} make={csv} testId="listing-csv" />
        <GiveFile
          label={words.saveZip}
          detail={words.zipDetail(files.length)}
          disabledReason={store ? undefined : photoWords.noStore}
          make={zip}
          testId="listing-zip"
        />
      </div>
      <OnPaper paper={paper} said={`${said} ${paper.said}`} />
    </>
  );
};

const OnPaper = ({ paper, said }: { paper: Paper; said: string }) => {
  const [size, setSize] = usePaper();
  // biome-ignore lint/correctness/useExhaustiveDependencies: what it says stands for the paper
  const printed = useMemo(() => <ListingPaper paper={paper} />, [said]);
  return (
    <Panel
      title={words.print}
      lead={words.printLead}
      level={3}
      actions={<PrintButton refusedBecause={undefined} />}
    >
      <PaperChoice paper={size} onChoose={setSize} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable with the keyboard */}
      <figure class="listing-preview" tabIndex={0} aria-label={words.preview}>
        <ListingPaper paper={paper} />
      </figure>
      <PrintRoot page={papers[size]} margin={margin}>
        {printed}
      </PrintRoot>
    </Panel>
  );
};
