import type { VariantId } from '../../domain/log/ids.ts';
import { blemishesOf, usualPrice } from '../../domain/rollup/shelf-stock.ts';
import { countOf } from '../../domain/shop/counter.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { photoWords } from '../../words/photo-words.ts';
import { shelfWords as words } from '../../words/shelf-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { EventHistory } from '../parts/event-history.tsx';
import { priceText } from '../parts/money.ts';
import { namedShots } from '../parts/photos/named-shots.ts';
import { PhotoStrip } from '../parts/photos/photo-strip.tsx';
import { TakePhoto } from '../parts/photos/take-photo.tsx';
import { RaiseButton } from '../parts/raise/raise-button.tsx';
import { secondsOnShelf } from '../parts/raise/raise-view.ts';
import { WoodName } from '../parts/wood-name.tsx';
import { KindFigures } from './kind-figures.tsx';
import { placesWithPieces } from './move-view.ts';
import { ShelfLastAct } from './shelf-last-act.tsx';
import { rowsOf } from './shelf-view.ts';
import { useMoveSheet } from './use-move-sheet.tsx';
import { useShots } from './use-shots.ts';

/** One variant: where its finished pieces are, how it looks, what its seconds show, and all that happened to it here. */
export const VariantPage = ({ variant }: { variant: VariantId }) => {
  const shop = useShop();
  const { open, sheet } = useMoveSheet();
  const fact = factOf(shop.registers, { register: 'variant', id: variant });
  const back = (
    <PressButton icon="back" label={words.toShelf} onAct={() => goTo('shelf')} testId="to-shelf" />
  );
  if (!fact)
    return (
      <main class="shelf">
        <EmptyState icon="shelf" title={words.goneTitle} action={back}>
          {words.goneHelp}
        </EmptyState>
      </main>
    );
  const rows = rowsOf(shop, variant);
  return (
    <main class="shelf">
      <header class="shelf-head">
        <div>
          <h1 dir="auto">{fact.name}</h1>
          <p>
            <WoodName species={fact.species} />
            {fact.retired && ` (${words.putAway})`}
          </p>
        </div>
        {back}
      </header>
      <ShelfLastAct />
      <Panel
        title={words.whereTitle}
        actions={
          <>
            <RaiseButton what={fact.name} seconds={secondsOnShelf(shop, variant)} testId="shelf-raise" />
            <PressButton
              tone="go"
              icon="next"
              label={words.move}
              disabledReason={
                rows.every((row) => placesWithPieces(row).length === 0) ? words.noneOfGrade : undefined
              }
              onAct={() => open(variant)}
              testId="variant-move"
            />
          </>
        }
      >
        <div class="shelf-grades">
          {rows.map((row) => (
            <div key={row.grade}>
              <KindFigures row={row} />
              <p>
                {words.usualPrice}: <b class="figures">{priceText(usualPrice(shop, row)) || words.unknown}</b>
              </p>
            </div>
          ))}
        </div>
      </Panel>
      <Gallery variant={variant} />
      <Blemishes variant={variant} />
      <EventHistory of={`variant/${variant}`} nothing={words.noHistory} />
      {sheet}
    </main>
  );
};

const Gallery = ({ variant }: { variant: VariantId }) => {
  const session = useSession();
  const { registers, pictured } = useShop();
  const found = useShots([variant]);
  const shots = found.kind === 'found' ? (found.of.get(variant) ?? []) : [];
  const beyond = found.kind === 'found' ? countOf(pictured, variant) - shots.length : 0;
  return (
    <Panel title={words.photosTitle} lead={words.photosLead} testId="variant-photos">
      <div class="photo-section">
        {found.kind === 'failed' ? (
          <p role="alert">{photoWords.packFailed}</p>
        ) : (
          found.kind === 'found' && (
            <PhotoStrip photos={namedShots(shots, { registers, session })} testId="variant-photo-strip" />
          )
        )}
        {beyond > 0 && <p>{words.morePhotos(beyond)}</p>}
        <TakePhoto
          onKept={async (photo) => {
            await session.act({ kind: 'photograph', shows: { kind: 'variant', variant }, photo });
          }}
          testId="variant-photo"
        />
      </div>
    </Panel>
  );
};

const Blemishes = ({ variant }: { variant: VariantId }) => {
  const shop = useShop();
  const blemishes = blemishesOf(shop, variant);
  return (
    <Panel title={words.blemishesTitle} testId="variant-blemishes">
      {blemishes.length === 0 ? (
        <p>{words.noBlemishes}</p>
      ) : (
        <DataTable
          caption={words.blemishesTitle}
          captionUnseen
          rows={blemishes}
          rowKey={({ reason }) => reason}
          columns={[
            {
              key: 'reason',
              head: words.blemish,
              cell: ({ reason }) => nameOf(shop.registers, { register: 'reason', id: reason }),
            },
            {
              key: 'pieces',
              head: words.onHowMany,
              numeric: true,
              cell: ({ pieces }) => words.count(pieces),
            },
          ]}
        />
      )}
    </Panel>
  );
};
