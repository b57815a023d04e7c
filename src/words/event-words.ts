import type { ShopEvent } from '../domain/log/event.ts';
import { atStage, type Move } from '../domain/log/place.ts';
import type { RegisterSet } from '../domain/set-up/register.ts';
import type { Registers } from '../domain/shop/registers.ts';
import { eventSentences as say } from './event-sentences.ts';
import { money, signedNumber } from './fine-number-words.ts';
import { nameOf } from './names.ts';
import { gradesWords, outcomeInSentence, recountInSentence } from './outcome-words.ts';
import { cleanedWords, countedWords, receivedWords, sampledWords } from './parts-words.ts';
import { pieces } from './pieces-words.ts';
import { shelfPlaceInSentence } from './shelf-place-words.ts';
import { duration } from './time-words.ts';

/** One entry of the log in plain words, for the last act and for the history of a tray. */
export function eventWords(event: ShopEvent, registers: Registers): string {
  const stage = (id: string) => nameOf(registers, { register: 'stage', id });
  switch (event.kind) {
    case 'tray-made':
      return say.trayMade(event.of.code, total(event.moves));
    case 'tray-split':
      return say.traySplit(incoming(event.moves), event.of.code, event.into.code);
    case 'tray-joined':
      return say.trayJoined(event.of.code, event.into.code, incoming(event.moves));
    case 'passed':
      return `${say.passed(event.pieces, stage(event.stage))}${earlyWords(event.early)}`;
    case 'flawed':
      return `${say.flawed(flawWords(event, registers), stage(event.stage))}${earlyWords(event.early)}`;
    case 'hold-begun':
      return `${say.loaded(total(event.moves), stage(event.stage))}${warmthWords(event.celsius)}`;
    case 'recounted':
      return recountSentence(event, registers);
    case 'rerouted':
      return event.moves
        .map(({ pieces: n, from, to }) =>
          say.rerouted(n, placeName(from, registers), placeName(to, registers)),
        )
        .join('; ');
    case 'parts-received':
      return receivedWords(event, registers);
    case 'parts-counted':
      return countedWords(event, registers);
    case 'parts-cleaned':
      return cleanedWords(event, registers);
    case 'parts-sampled':
      return sampledWords(event, registers);
    case 'moisture-read':
      return say.moisture(nameOf(registers, { register: 'lot', id: event.lot }), event.percent / 10);
    case 'piece-photographed':
      return say.photoAt(stage(event.stage), reasonNames(event.reasons, registers));
    case 'raised':
      return raisedWords(event, registers);
    case 'photo-taken':
      return event.shows.kind === 'variant'
        ? say.photoOf(nameOf(registers, { register: 'variant', id: event.shows.variant }))
        : say.photoOfVerdict[event.shows.verdict](reasonNames([event.shows.reason], registers));
    case 'photo-let-go':
      return say.photoLetGo;
    case 'shelf-moved':
      return shelfMoveWords(event, registers);
    case 'spell-begun':
      return say.workBegun(stage(event.stage));
    case 'spell-ended':
      return say.pause(stage(event.stage));
    case 'voided':
      return say[event.event.kind === 'voided' ? 'putBack' : 'takenBack'](
        eventWords(innermost(event), registers),
      );
    case 'set-up':
      return setUpWords(event.set);
  }
}

function setUpWords({ register, value }: RegisterSet): string {
  if (register !== 'mark') return say.changed(value.name);
  return value.retired ? say.noteTakenAway(value.note) : say.noted(value.note);
}

const earlyWords = (early: number | undefined) =>
  early === undefined ? '' : `, ${say.early(duration(early * 60_000))}`;

const warmthWords = (tenths: number | undefined) =>
  tenths === undefined ? '' : `, ${say.warmth(tenths / 10)}`;

function innermost(event: ShopEvent): ShopEvent {
  return event.kind === 'voided' ? innermost(event.event) : event;
}

type Flawed = Extract<ShopEvent, { kind: 'flawed' }>;

function flawWords({ pieces: n, reasons, outcome }: Flawed, registers: Registers): string {
  const why = reasonNames(reasons, registers);
  const what =
    outcome.kind === 'sent-back'
      ? say.sentBackTo(nameOf(registers, { register: 'stage', id: outcome.to }))
      : outcomeInSentence[outcome.kind];
  const saved =
    outcome.kind === 'scrapped' && outcome.saved.length > 0
      ? `, ${say.saved(outcome.saved.map((id) => nameOf(registers, { register: 'part', id })).join(', '))}`
      : '';
  return `${pieces(n)}: ${why}, ${what}${saved}`;
}

function reasonNames(reasons: readonly string[], registers: Registers): string {
  return reasons.map((id) => nameOf(registers, { register: 'reason', id })).join(', ');
}

function recountSentence(event: Extract<ShopEvent, { kind: 'recounted' }>, registers: Registers): string {
  const change = event.moves.reduce((sum, { from, pieces: n }) => sum + (from === null ? n : -n), 0);
  const place = event.moves.map(({ from, to }) => from ?? to).find((each) => each !== null);
  const stage =
    place && atStage(place) ? nameOf(registers, { register: 'stage', id: place.stage }) : undefined;
  return `${say.recounted(event.of.code, stage)}: ${signedNumber(change)} (${recountInSentence[event.why]})`;
}

function raisedWords(
  { of, pieces: n, reasons }: Extract<ShopEvent, { kind: 'raised' }>,
  registers: Registers,
): string {
  const gone = reasons.length === 0 ? '' : `, ${say.gone(reasonNames(reasons, registers))}`;
  return `${say.raised(n, of.code)}${gone}`;
}

function shelfMoveWords(
  { pieces: n, variant, grade, from, to, price }: Extract<ShopEvent, { kind: 'shelf-moved' }>,
  registers: Registers,
): string {
  const name = nameOf(registers, { register: 'variant', id: variant });
  const way = `${shelfPlaceInSentence[from]} → ${shelfPlaceInSentence[to]}`;
  const each = price === null ? '' : `, ${say.each(money(price))}`;
  return `${say.ofVariant(n, name, gradesWords[grade])}: ${way}${each}`;
}

function placeName(place: Move['from'], registers: Registers): string {
  if (!place || !atStage(place)) return '';
  const name = nameOf(registers, { register: 'stage', id: place.stage });
  return place.grade === 'second' ? `${name} (${gradesWords.second})` : name;
}

function total(moves: readonly Move[]): number {
  return moves.reduce((sum, { pieces: n }) => sum + n, 0);
}

/** Pieces that came over into the other tray. */
function incoming(moves: readonly Move[]): number {
  return total(moves.filter(({ from }) => from === null));
}
