import './route-card.css';
import { labelWords as words } from '../../../words/label-words.ts';
import type { CardStage, CardView } from './card-view.ts';
import { QrSymbol } from './label-sheet.tsx';

/** The side of the symbol with its blank margin, in mm. */
const symbolSide = 26;

/** A tray's card for the pencil: its stages with room for strokes, sums and flaws, so that work goes on without a tablet. */
export const RouteCard = ({ card }: { card: CardView }) => {
  const { label, batch, stages, printed } = card;
  return (
    <article class="card">
      <header class="card-head">
        <div>
          <p class="card-code">{label.code}</p>
          <p class="card-what" dir="auto">
            {label.variant}
          </p>
          <p>
            {label.count}, {words.batch}: <span dir="auto">{batch}</span>
          </p>
          {label.caution && <p class="card-caution">{label.caution}</p>}
        </div>
        {label.symbol !== null && (
          <svg
            class="label-page"
            width={`${symbolSide}mm`}
            height={`${symbolSide}mm`}
            viewBox={`0 0 ${symbolSide} ${symbolSide}`}
            role="img"
            aria-label={label.symbol}
          >
            <QrSymbol text={label.symbol} x={0} y={0} side={symbolSide} />
          </svg>
        )}
      </header>
      <table class="card-table">
        <thead>
          <tr>
            <th scope="col" class="card-stage-of">
              {words.stage}
            </th>
            <th scope="col" class="card-number">
              {words.hereNow}
            </th>
            <th scope="col" class="card-strokes">
              {words.passed}
            </th>
            <th scope="col" class="card-number">
              {words.passedCount}
            </th>
            <th scope="col">{words.flawed}</th>
          </tr>
        </thead>
        <tbody>
          {stages.map((stage) => (
            <CardRow key={stage.id} stage={stage} />
          ))}
        </tbody>
      </table>
      <p>{words.cardMeans}</p>
      <p>{words.printedAt(printed)}</p>
    </article>
  );
};

const CardRow = ({ stage: { name, here, reasons } }: { stage: CardStage }) => (
  <tr>
    <th scope="row" dir="auto">
      {name}
    </th>
    <td class="card-number figures">{here === 0 ? '' : String(here).replace('-', '−')}</td>
    <td />
    <td />
    <td>
      <ul class="card-flaws">
        {[...reasons, words.otherFlaw].map((reason, place) => (
          <li key={`${place} ${reason}`}>
            <span dir="auto">{reason}</span>
          </li>
        ))}
      </ul>
    </td>
  </tr>
);
