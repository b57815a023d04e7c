import type { Offer, RestoreStep, Restoring } from '../../../app/restore.ts';
import type { StationId } from '../../../domain/log/ids.ts';
import { plainText } from '../../../domain/set-up/text.ts';
import type { Registers } from '../../../domain/shop/registers.ts';
import { Disclosure } from '../../../ui/notice/disclosure.tsx';
import { Notice } from '../../../ui/notice/notice.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { DataTable } from '../../../ui/table/data-table.tsx';
import { dateTime } from '../../../words/date-words.ts';
import { filesWords as words } from '../../../words/files-words.ts';
import { nameOf } from '../../../words/names.ts';
import { wholeNumber } from '../../../words/number-words.ts';
import { useShop } from '../app-context.ts';
import { useShopZone } from './copy-state.tsx';

type Step = Extract<RestoreStep, { readonly offer: Offer }>;

/** What a copy holds and would add, what is wrong with it, and the choice. */
export const OfferStep = ({ restoring, step }: { restoring: Restoring; step: Step }) => (
  <div class="files-block">
    <OfferFacts offer={step.offer} />
    <OfferDoubts offer={step.offer} />
    <Choice restoring={restoring} step={step} />
    {step.offer.preview.perStation.length > 0 && <OfferStations offer={step.offer} />}
  </div>
);

const OfferFacts = ({ offer }: { offer: Offer }) => {
  const zone = useShopZone();
  const when = (at: number | null) => (at === null ? words.unknown : dateTime(at, zone));
  const { preview, photos } = offer;
  const facts: readonly (readonly [id: string, name: string, shown: string, isCount: boolean])[] = [
    ['adds', words.offerAdds, wholeNumber(preview.adds), true],
    ['here', words.offerHere, wholeNumber(preview.here), true],
    ['unreadable', words.offerUnreadable, wholeNumber(preview.unreadable), true],
    ...(photos
      ? ([
          ['photos', words.offerPhotos, wholeNumber(photos.fresh.length), true],
          ['photos-here', words.offerPhotosHere, wholeNumber(photos.here.length), true],
          ['photos-damaged', words.offerPhotosDamaged, wholeNumber(photos.damaged), true],
        ] as const)
      : []),
    ['shop', words.offerShop, offer.shop ?? words.unnamed, false],
    ['made', words.offerMade, when(offer.made), false],
    ['newest', words.offerNewest, when(preview.newest), false],
    ['file', words.offerFile, offer.file, false],
  ];
  return (
    <dl class="files-facts">
      {facts.map(([id, name, shown, isCount]) => (
        <div key={id}>
          <dt>{name}</dt>
          <dd class={isCount ? 'figures' : 'files-name'} data-testid={`offer-${id}`}>
            {shown}
          </dd>
        </div>
      ))}
    </dl>
  );
};

const OfferDoubts = ({ offer }: { offer: Offer }) => {
  const hidden = offer.preview.unreadable - offer.problems.length;
  return (
    <>
      {offer.damage !== 'none' && (
        <Notice
          tone="warn"
          title={offer.damage === 'cut' ? words.cutTitle : words.changedTitle}
          testId="offer-damaged"
        >
          {words.damagedLead}
        </Notice>
      )}
      {offer.photos && offer.photos.missing.length > 0 && (
        <Notice tone="warn" title={words.missingTitle(offer.photos)} testId="offer-missing">
          {words.missingLead(offer.photos.elsewhere)}
        </Notice>
      )}
      {offer.foreign && (
        <Notice tone="warn" title={words.foreignTitle} testId="offer-foreign">
          {words.foreignLead}
        </Notice>
      )}
      {offer.problems.length > 0 && (
        <Disclosure summary={words.problems} testId="offer-problems">
          <ul>
            {offer.problems.map(({ line, problems }) => (
              <li key={line} class="files-name">
                {words.problem(line, problems.join('; '))}
              </li>
            ))}
            {hidden > 0 && <li>{words.moreProblems(hidden)}</li>}
          </ul>
        </Disclosure>
      )}
    </>
  );
};

const Choice = ({ restoring, step }: { restoring: Restoring; step: Step }) => {
  const leave = (label: string) => (
    <PressButton
      size="bench-small"
      icon="back"
      label={label}
      onAct={restoring.startOver}
      testId="restore-again"
    />
  );
  const { offer } = step;
  switch (step.kind) {
    case 'copying':
      return <p role="status">{words.copying}</p>;
    case 'adding':
      return <p role="status">{words.adding}</p>;
    case 'no-copy':
      return (
        <Notice tone="warn" title={words.noCopyTitle} testId="restore-no-copy">
          <p>{words.keepResults[step.why]}</p>
          <p>{words.noCopyLead}</p>
          <div class="files-acts">
            {leave(words.leaveIt)}
            <PressButton
              closing
              label={words.goOn}
              onAct={() => void restoring.addAllTheSame()}
              testId="go-on"
            />
          </div>
        </Notice>
      );
    case 'broken-off':
      return (
        <Notice tone="error" title={words.brokenOffTitle} testId="restore-broken-off">
          <p>
            {step.inLog === null
              ? words.brokenOffUnknown
              : words.brokenOff(step.inLog, offer.preview.adds + offer.preview.here)}
          </p>
          <PressButton
            closing
            tone="go"
            icon="retry"
            label={words.addRest}
            onAct={() => void restoring.addAllTheSame()}
            testId="add-rest"
          />
        </Notice>
      );
    case 'offered':
      return addsNothing(offer) ? (
        <>
          <p data-testid="nothing-to-add">
            {offer.preview.here > 0 || offer.photos?.here.length ? words.nothingToAdd : words.nothingSound}
          </p>
          <div class="files-acts">{leave(words.otherFile)}</div>
        </>
      ) : (
        <div class="files-acts">
          <PressButton
            size="bench-small"
            tone={offer.foreign ? 'plain' : 'go'}
            icon="import"
            closing
            label={addLabel(offer)}
            onAct={() => void restoring.add()}
            testId="add-copy"
          />
          {leave(words.leaveIt)}
        </div>
      );
  }
};

const addsNothing = ({ preview, photos }: Offer) => preview.adds === 0 && !photos?.fresh.length;

function addLabel({ foreign, damage }: Offer): string {
  if (foreign) return words.addForeign;
  return damage === 'none' ? words.add : words.addSound;
}

const OfferStations = ({ offer }: { offer: Offer }) => {
  const zone = useShopZone();
  const { registers } = useShop();
  const rows = offer.preview.perStation;
  return (
    <DataTable
      caption={words.offerStations}
      rows={rows}
      rowKey={({ station }) => station}
      columns={[
        { key: 'station', head: words.station, cell: ({ station }) => nameOfStation(registers, station) },
        { key: 'adds', head: words.offerAdds, numeric: true, cell: ({ adds }) => wholeNumber(adds) },
        { key: 'here', head: words.offerHere, numeric: true, cell: ({ here }) => wholeNumber(here) },
        { key: 'newest', head: words.offerNewest, cell: ({ newest }) => dateTime(newest, zone) },
      ]}
      testId="offer-stations"
    />
  );
};

/** What the tablet is called here; one that came with the copy and is not known yet by its id. */
function nameOfStation(registers: Registers, id: StationId): string {
  return plainText(nameOf(registers, { register: 'station', id }));
}
