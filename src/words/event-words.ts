import type { ShopEvent } from '../domain/log/event.ts';
import { atStage, type Move } from '../domain/log/place.ts';
import type { RegisterSet } from '../domain/set-up/register.ts';
import type { Registers } from '../domain/shop/registers.ts';
import { nameOf } from './names.ts';
import { pieces, roundNumber } from './number-words.ts';
import { gradesWords, outcomeWords, recountWords } from './outcome-words.ts';
import { cleanedWords, countedWords, receivedWords, sampledWords } from './parts-words.ts';
import { shelfPlaceWords } from './shelf-place-words.ts';
import { duration } from './time-words.ts';

/** One entry of the log in plain words, for the last act and for the history of a tray. */
export function eventWords(event: ShopEvent, registers: Registers): string {
  const stage = (id: string) => nameOf(registers, { register: 'stage', id });
  switch (event.kind) {
    case 'tray-made':
      return `Tray ${event.of.code} made up with ${pieces(total(event.moves))}`;
    case 'tray-split':
      return `${pieces(incoming(event.moves))} split from ${event.of.code} to ${event.into.code}`;
    case 'tray-joined':
      return `${event.of.code} joined to ${event.into.code} (${pieces(incoming(event.moves))})`;
    case 'passed':
      return `${pieces(event.pieces)} passed ${stage(event.stage)}${earlyWords(event.early)}`;
    case 'flawed':
      return `${flawWords(event, registers)} at ${stage(event.stage)}${earlyWords(event.early)}`;
    case 'hold-begun':
      return `${pieces(total(event.moves))} loaded at ${stage(event.stage)}${warmthWords(event.celsius)}`;
    case 'recounted':
      return recountSentence(event, registers);
    case 'rerouted':
      return event.moves.map((move) => `${pieces(move.pieces)} moved ${wayOf(move, registers)}`).join('; ');
    case 'parts-received':
      return receivedWords(event, registers);
    case 'parts-counted':
      return countedWords(event, registers);
    case 'parts-cleaned':
      return cleanedWords(event, registers);
    case 'parts-sampled':
      return sampledWords(event, registers);
    case 'moisture-read':
      return `${nameOf(registers, { register: 'lot', id: event.lot })} read: ${roundNumber(event.percent / 10)} %`;
    case 'piece-photographed':
      return event.reasons.length === 0
        ? `Photo taken at ${stage(event.stage)}`
        : `Photo taken at ${stage(event.stage)}: ${reasonNames(event.reasons, registers)}`;
    case 'raised':
      return raisedWords(event, registers);
    case 'photo-taken':
      return event.shows.kind === 'variant'
        ? `Photo of ${nameOf(registers, { register: 'variant', id: event.shows.variant })} taken`
        : `Photo of what ${event.shows.verdict === 'good' ? 'passes' : 'fails'} taken: ${reasonNames([event.shows.reason], registers)}`;
    case 'photo-let-go':
      return 'A photo was let go';
    case 'shelf-moved':
      return shelfMoveWords(event, registers);
    case 'spell-begun':
      return `Work begun at ${stage(event.stage)}`;
    case 'spell-ended':
      return `Pause at ${stage(event.stage)}`;
    case 'voided':
      return `${event.event.kind === 'voided' ? 'Put back' : 'Taken back'}: ${eventWords(innermost(event), registers)}`;
    case 'set-up':
      return setUpWords(event.set);
  }
}

function setUpWords({ register, value }: RegisterSet): string {
  if (register !== 'mark') return `${value.name} changed in Set-up`;
  return value.retired ? `Note taken away: ${value.note}` : `Noted: ${value.note}`;
}

const earlyWords = (early: number | undefined) =>
  early === undefined ? '' : `, ${duration(early * 60_000)} early`;

const warmthWords = (tenths: number | undefined) =>
  tenths === undefined ? '' : `, reckoned for ${roundNumber(tenths / 10)} °C`;

function innermost(event: ShopEvent): ShopEvent {
  return event.kind === 'voided' ? innermost(event.event) : event;
}

type Flawed = Extract<ShopEvent, { kind: 'flawed' }>;

function flawWords({ pieces: n, reasons, outcome }: Flawed, registers: Registers): string {
  const why = reasonNames(reasons, registers);
  const what = outcomeWords[outcome.kind].toLowerCase();
  const whereTo =
    outcome.kind === 'sent-back' ? ` to ${nameOf(registers, { register: 'stage', id: outcome.to })}` : '';
  const saved =
    outcome.kind === 'scrapped' && outcome.saved.length > 0
      ? `, saved ${outcome.saved.map((id) => nameOf(registers, { register: 'part', id })).join(', ')}`
      : '';
  return `${pieces(n)}: ${why}, ${what}${whereTo}${saved}`;
}

function reasonNames(reasons: readonly string[], registers: Registers): string {
  return reasons.map((id) => nameOf(registers, { register: 'reason', id })).join(', ');
}

function recountSentence(event: Extract<ShopEvent, { kind: 'recounted' }>, registers: Registers): string {
  const change = event.moves.reduce((sum, { from, pieces: n }) => sum + (from === null ? n : -n), 0);
  const place = event.moves.map(({ from, to }) => from ?? to).find((each) => each !== null);
  const where =
    place && atStage(place) ? ` at ${nameOf(registers, { register: 'stage', id: place.stage })}` : '';
  const signed = change > 0 ? `+${change}` : `${change}`.replace('-', '−');
  return `${event.of.code} recounted${where}: ${signed} (${recountWords[event.why].toLowerCase()})`;
}

function raisedWords(
  { of, pieces: n, reasons }: Extract<ShopEvent, { kind: 'raised' }>,
  registers: Registers,
): string {
  const gone = reasons.length === 0 ? '' : `, gone: ${reasonNames(reasons, registers)}`;
  return `${pieces(n)} of ${of.code} raised to ${gradesWords.first}${gone}`;
}

function shelfMoveWords(
  { pieces: n, variant, grade, from, to, price }: Extract<ShopEvent, { kind: 'shelf-moved' }>,
  registers: Registers,
): string {
  const name = nameOf(registers, { register: 'variant', id: variant });
  const way = `${shelfPlaceWords[from].toLowerCase()} → ${shelfPlaceWords[to].toLowerCase()}`;
  const each = price === null ? '' : `, ${(price / 100).toFixed(2)} each`;
  return `${pieces(n)} of ${name} (${gradesWords[grade]}): ${way}${each}`;
}

function wayOf({ from, to }: Move, registers: Registers): string {
  const name = (place: Move['from']) =>
    place && atStage(place)
      ? `${nameOf(registers, { register: 'stage', id: place.stage })}${place.grade === 'second' ? ` (${gradesWords.second})` : ''}`
      : '';
  return `from ${name(from)} to ${name(to)}`;
}

function total(moves: readonly Move[]): number {
  return moves.reduce((sum, { pieces: n }) => sum + n, 0);
}

/** Pieces that came over into the other tray. */
function incoming(moves: readonly Move[]): number {
  return total(moves.filter(({ from }) => from === null));
}
