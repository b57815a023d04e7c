/** The sums of a shop in counters without a name, added to from the same events as the app's own. */
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import type { Place } from '../../../src/domain/log/place.ts';
import { longestStretch } from '../../../src/domain/shop/days.ts';
import type { SummedEvent } from '../../../src/domain/shop/projection.ts';
import { trayBegunBy } from '../../../src/domain/shop/trays.ts';
import { addAt, dictionary, type Table, table } from './flat-table.ts';

export type FlatShop = ReturnType<typeof flatShop>;

type Visit = Extract<SummedEvent, { kind: 'passed' | 'flawed' }>;

/** With room for 100,000 events of the long log. */
export function flatShop() {
  const [stages, species, variants, parts] = [dictionary(20), dictionary(8), dictionary(12), dictionary(4)];
  const storesSums = dictionary(9);
  const [redos, grades, stays, outcomes] = [dictionary(8), dictionary(2), dictionary(2), dictionary(4)];
  const [reasons, people, dates] = [dictionary(12), dictionary(4), dictionary(400)];
  // What a tray has in a cure is counted apart, under the tray and when the cure ends.
  const trayIds = dictionary(5_000);
  const cures: Map<number, number>[] = [];

  const positions = {
    pieces: table(trayIds, stages, grades, redos),
    arrived: table(trayIds, stages, grades, redos),
  };
  const trays = { events: table(trayIds), made: table(trayIds) };
  const ledger = {
    made: table(species, variants),
    corrected: table(species, variants),
    wip: table(stages, species, grades, stays),
    finished: table(species, variants, grades),
    scrapped: table(species, variants),
  };
  const visits = {
    first: table(stages, species),
    clean: table(stages, species),
    repeat: table(stages, species),
  };
  const flaws = {
    byReason: table(stages, species, reasons, outcomes),
    byOutcome: table(stages, species, outcomes),
    byTray: table(trayIds, reasons),
    byPerson: table(people, stages, species, reasons),
  };
  const days = {
    passed: table(dates, stages),
    flawed: table(dates, stages, species, reasons, outcomes),
    outcomes: table(dates, stages, outcomes),
    finished: table(dates, grades),
    made: table(dates, species),
    worked: table(dates, stages),
    doubtful: table(dates),
  };
  const partsUsed = table(parts);
  const stores = table(storesSums, parts);
  const shelf = { blemishes: table(variants, reasons) };
  const allDays = dates.number('all');

  /** Adds to what was done on a day, and to what was done on all days. */
  function addOn(day: number, { sheet, at, by }: { sheet: Table; at: number; by: number }): void {
    const perDay = sheet.cells.length / dates.room;
    addAt(sheet, { at: day * perDay + at, by });
    addAt(sheet, { at: allDays * perDay + at, by });
  }

  function add(event: ShopEvent, times = 1): void {
    if (event.kind === 'voided') add(event.event, -times);
    else if (event.kind !== 'set-up') addSummed(event, times);
  }

  function addSummed(event: SummedEvent, times: number): void {
    const day = dates.number(event.day);
    if ('elapsed' in event && event.elapsed !== null && event.elapsed <= longestStretch)
      addOn(day, { sheet: days.worked, at: stages.number(event.stage), by: times * event.elapsed });
    addToStores(event, times);
    if (!('of' in event)) return;
    if (event.clock === 'doubtful') addOn(day, { sheet: days.doubtful, at: 0, by: times });
    addTray(event, { tray: event.of.tray, times });
    if ('into' in event) addTray(event, { tray: event.into.tray, times });
    const ofSpecies = species.number(event.of.species);
    const kind = ofSpecies * variants.room + variants.number(event.of.variant);
    const outside = event.kind === 'recounted' ? ledger.corrected : ledger.made;
    for (const move of event.moves) {
      const { from, to, since } = move;
      const tray = trayIds.number(move.tray);
      const by = times * move.pieces;
      const now = event.stamp.wall;
      if (from) stand(from, { tray, ofSpecies, kind, by: -by, came: since ?? now });
      else addAt(outside, { at: kind, by });
      if (to) stand(to, { tray, ofSpecies, kind, by, came: from ? now : (since ?? now) });
      else addAt(outside, { at: kind, by: -by });
      if (event.kind === 'tray-made') addOn(day, { sheet: days.made, at: ofSpecies, by });
      if ('parts' in event && to?.at === 'finished')
        addOn(day, { sheet: days.finished, at: grades.number(to.grade), by });
    }
    if ('parts' in event) judge(event, { day, ofSpecies, times });
  }

  function addPart(sum: string, part: string, by: number): void {
    addAt(stores, { at: storesSums.number(sum) * parts.room + parts.number(part), by });
  }

  function addToStores(event: SummedEvent, times: number): void {
    if (event.kind === 'parts-received') {
      for (const { part, pieces, cost } of event.parts) {
        addPart('received', part, times * pieces);
        addPart('told', part, times);
        if (cost === null) continue;
        addPart('priced', part, times * pieces);
        addPart('paid', part, times * cost);
      }
    } else if (event.kind === 'parts-counted' && event.heap === 'to-clean') {
      addPart('saved-corrected', event.part, times * event.pieces);
    } else if (event.kind === 'parts-counted') {
      addPart('corrected', event.part, times * event.pieces);
      addPart('told', event.part, times);
    } else if (event.kind === 'parts-cleaned') {
      addPart('cleaned', event.part, times * event.back);
      addPart('lost', event.part, times * event.lost);
    }
  }

  function addTray(event: SummedEvent, { tray, times }: { tray: TrayId; times: number }): void {
    const at = trayIds.number(tray);
    addAt(trays.events, { at, by: times });
    if (trayBegunBy(event) === tray) addAt(trays.made, { at, by: times * event.stamp.wall });
  }

  interface Standing {
    readonly tray: number;
    readonly ofSpecies: number;
    readonly kind: number;
    readonly by: number;
    readonly came: number;
  }

  function stand(place: Place, { tray, ofSpecies, kind, by, came }: Standing): void {
    const isAtStage = 'stage' in place;
    const stage = stages.number(isAtStage ? place.stage : place.at);
    const grade = 'grade' in place ? grades.number(place.grade) : 0;
    const row = 'ready' in place ? rowOf(tray, place.ready) : tray;
    const redo = isAtStage ? redos.number(place.redo) : 0;
    const at = ((row * stages.room + stage) * grades.room + grade) * redos.room + redo;
    addAt(positions.pieces, { at, by });
    addAt(positions.arrived, { at, by: by * Math.floor(came / 1000) });
    if (isAtStage) {
      const wip = (stage * species.room + ofSpecies) * grades.room + grade;
      addAt(ledger.wip, { at: wip * stays.room + stays.number(place.at), by });
    } else if (place.at === 'finished') addAt(ledger.finished, { at: kind * grades.room + grade, by });
    else addAt(ledger.scrapped, { at: kind, by });
  }

  function rowOf(tray: number, ready: number): number {
    const known = cures[tray] ?? new Map<number, number>();
    cures[tray] = known;
    const row = known.get(ready) ?? trayIds.number(`${trayIds.words[tray]}/${ready}`);
    known.set(ready, row);
    return row;
  }

  function judge(
    event: Visit,
    { day, ofSpecies, times }: { day: number; ofSpecies: number; times: number },
  ): void {
    const stage = stages.number(event.stage);
    const at = stage * species.room + ofSpecies;
    const by = times * event.pieces;
    const first = times * (event.pieces - event.again);
    addAt(visits.first, { at, by: first });
    addAt(visits.repeat, { at, by: times * event.again });
    for (const { part, pieces } of event.parts)
      addAt(partsUsed, { at: parts.number(part), by: times * pieces });
    if (event.kind === 'passed') {
      addAt(visits.clean, { at, by: first });
      addOn(day, { sheet: days.passed, at: stage, by });
      return;
    }
    const outcome = outcomes.number(event.outcome.kind);
    const tray = trayIds.number(event.of.tray);
    const person = people.number(event.person);
    const blemished = event.outcome.kind === 'second' ? by : 0;
    const ofVariant = variants.number(event.of.variant);
    for (const { part, pieces } of event.toClean ?? []) addPart('saved', part, times * pieces);
    addAt(flaws.byOutcome, { at: at * outcomes.room + outcome, by });
    addOn(day, { sheet: days.outcomes, at: stage * outcomes.room + outcome, by });
    for (const id of new Set(event.reasons)) {
      const reason = reasons.number(id);
      const flaw = (at * reasons.room + reason) * outcomes.room + outcome;
      addAt(flaws.byReason, { at: flaw, by });
      addAt(flaws.byTray, { at: tray * reasons.room + reason, by });
      addAt(flaws.byPerson, { at: (person * stages.room * species.room + at) * reasons.room + reason, by });
      addOn(day, { sheet: days.flawed, at: flaw, by });
      addAt(shelf.blemishes, { at: ofVariant * reasons.room + reason, by: blemished });
    }
  }

  const sums = { positions, trays, ledger, visits, flaws, days, partsUsed, stores, shelf };
  return { add, sums };
}
