// @vitest-environment happy-dom
import { screen } from '@testing-library/preact';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { stationId } from '../../../src/domain/log/ids.ts';
import { calledBy, readRegisterSets } from '../../../src/domain/set-up/register.ts';
import { factOf, factsOf } from '../../../src/domain/shop/registers.ts';
import { Batches } from '../../../src/screens/set-up/batches.tsx';
import { Parts } from '../../../src/screens/set-up/parts.tsx';
import { Reasons } from '../../../src/screens/set-up/reasons.tsx';
import { Stages } from '../../../src/screens/set-up/stages.tsx';
import { Variants } from '../../../src/screens/set-up/variants.tsx';
import { Woods } from '../../../src/screens/set-up/woods.tsx';
import type { LogStore } from '../../../src/store/log-store.ts';
import { memoryLog } from '../../../src/store/memory-log.ts';
import { batch, part, route, routeStages, stage, variant } from '../../support/workshop.ts';
import { choose, closeSheet, errorAt, mount, press, settle, take, type, typed } from './mount.tsx';

const registersOf = (session: Session) => session.view.value.shop.registers;
const namesOf = (session: Session, register: Parameters<typeof factsOf>[1]) =>
  factsOf(registersOf(session), register).map(({ fact }) => calledBy(fact));
const sheet = () => screen.queryByRole('dialog');

describe('a sheet', () => {
  test('saves what is typed and closes', async () => {
    const { session } = await mount(<Reasons />);
    await press('add-reason');
    type('reason-name', '  Burn   mark ');
    await press('reason-save');
    expect(sheet()).toBeNull();
    expect(namesOf(session, 'reason')).toEqual(['Burn mark']);
  });

  test('with an empty name says so at the field, takes the focus there, and saves nothing', async () => {
    const { session } = await mount(<Reasons />);
    await press('add-reason');
    expect(errorAt('reason-name')).toBeUndefined();
    await press('reason-save');
    expect(errorAt('reason-name')).toBe('Enter a name.');
    expect(document.activeElement).toBe(screen.getByTestId('reason-name'));
    expect(namesOf(session, 'reason')).toEqual([]);
  });

  test('keeps a name of 500 characters as it was typed, beside what is wrong with it', async () => {
    const { session } = await mount(<Reasons />);
    await press('add-reason');
    type('reason-name', 'x'.repeat(500));
    expect(errorAt('reason-name')).toBe('500 characters: at most 80 fit.');
    await press('reason-save');
    expect(typed('reason-name')).toBe('x'.repeat(500));
    expect(namesOf(session, 'reason')).toEqual([]);
  });

  test.each(['שבר בעץ', '🔥 burn', 'Ébréché'])('takes the name “%s”', async (name) => {
    const { session } = await mount(<Reasons />);
    await press('add-reason');
    type('reason-name', name);
    await press('reason-save');
    expect(namesOf(session, 'reason')).toEqual([name]);
  });

  test('that is closed with something typed opens again as it was left, and is marked until then', async () => {
    const { session } = await mount(<Stages />);
    await press('stage-sand');
    type('stage-name', 'Sand to 400');
    await closeSheet();
    expect(sheet()).toBeNull();
    expect(screen.getByTestId('stage-sand').textContent).toContain('Not saved yet');
    await press('stage-sand');
    expect(typed('stage-name')).toBe('Sand to 400');
    expect(factOf(registersOf(session), { register: 'stage', id: stage.sand })?.name).toBe('Sand');
  });

  test('gives back what the shop has when it is asked to', async () => {
    await mount(<Stages />);
    await press('stage-sand');
    type('stage-name', 'Sand to 400');
    await press('stage-restore');
    expect(typed('stage-name')).toBe('Sand');
    expect(sheet()).not.toBeNull();
  });

  test('of something new that was begun and closed is the one that opens next; it can be dropped', async () => {
    const { session } = await mount(<Reasons />);
    await press('add-reason');
    type('reason-name', 'Burn');
    await closeSheet();
    await press('add-reason');
    expect(typed('reason-name')).toBe('Burn');
    await press('reason-restore');
    expect(sheet()).toBeNull();
    await press('add-reason');
    expect(typed('reason-name')).toBe('');
    expect(namesOf(session, 'reason')).toEqual([]);
  });

  test('puts a thing away and brings it back, and keeps it all the while', async () => {
    const { session } = await mount(<Variants />);
    const id = `variant-${variant['ash-copper']}`;
    await press(id);
    await press('variant-retire');
    const fact = () => factOf(registersOf(session), { register: 'variant', id: variant['ash-copper'] });
    expect(fact()?.retired).toBe(true);
    expect(screen.getByTestId('variant-away').contains(screen.getByTestId(id))).toBe(true);
    await press(id);
    await press('variant-retire');
    expect(fact()?.retired).toBe(false);
  });
});

describe('two things of one kind', () => {
  test('cannot have one name: it is said at the name, what was typed stays, and another name goes', async () => {
    const { session } = await mount(<Stages />);
    await press('add-stage');
    type('stage-name', ' sAnd ');
    type('stage-caution', 'Mask on.');
    await press('stage-save');
    expect(errorAt('stage-name')).toBe('This name is taken. Choose another.');
    expect(typed('stage-caution')).toBe('Mask on.');
    type('stage-name', 'Sand again');
    expect(errorAt('stage-name')).toBeUndefined();
    await press('stage-save');
    expect(namesOf(session, 'stage')).toContain('Sand again');
  });
});

describe('a new stage', () => {
  const orderOf = (session: Session) =>
    factOf(registersOf(session), { register: 'route', id: route.haft })?.stages;
  const addedOf = (session: Session, name: string) =>
    factsOf(registersOf(session), 'stage').find(({ fact }) => fact.name === name)?.id;

  test('stands on the route right after the stage that was chosen', async () => {
    const { session } = await mount(<Stages />);
    await press('add-stage');
    type('stage-name', 'Drill');
    choose('stage-placing', 'Haft: After Bore');
    await press('stage-save');
    expect(orderOf(session)?.slice(0, 3)).toEqual([stage.bore, addedOf(session, 'Drill'), stage.glue]);
  });

  test('stands at the end of the first route when nothing was chosen, and on none when none is wanted', async () => {
    const { session } = await mount(<Stages />);
    await press('add-stage');
    type('stage-name', 'Pack');
    await press('stage-save');
    expect(orderOf(session)).toEqual([...routeStages.map((name) => stage[name]), addedOf(session, 'Pack')]);
    await press('add-stage');
    type('stage-name', 'Engrave');
    choose('stage-placing', 'Not on a route');
    await press('stage-save');
    expect(orderOf(session)).not.toContain(addedOf(session, 'Engrave'));
    expect(addedOf(session, 'Engrave')).toBeDefined();
  });

  test('that cures asks for sensible numbers at their fields, and keeps the wrong ones', async () => {
    const { session } = await mount(<Stages />);
    await press('add-stage');
    type('stage-name', 'Oil dries');
    await take('stage-kind-hold');
    type('stage-hours', '-3');
    type('stage-capacity', '2.5');
    await press('stage-save');
    expect(errorAt('stage-hours')).toBe('Hours are a number such as 12 or 0.5.');
    expect(errorAt('stage-capacity')).toBe('Whole pieces only.');
    expect([typed('stage-hours'), typed('stage-capacity')]).toEqual(['-3', '2.5']);
    expect(document.activeElement).toBe(screen.getByTestId('stage-hours'));
    type('stage-hours', '8');
    type('stage-capacity', '');
    await press('stage-save');
    const id = addedOf(session, 'Oil dries');
    expect(id && factOf(registersOf(session), { register: 'stage', id })).toMatchObject({
      kind: 'hold',
      cureMinutes: 480,
      capacity: null,
    });
  });
});

test('a stage on a route cannot be put away from its sheet; the button says why', async () => {
  const { session } = await mount(<Stages />);
  await press('stage-sand');
  expect(screen.getByTestId('stage-retire').textContent).toContain('take it off there first');
  await press('stage-retire');
  expect(factOf(registersOf(session), { register: 'stage', id: stage.sand })?.retired).toBe(false);
});

test('a seventh flaw button finds no place until another is taken off', async () => {
  const { session } = await mount(<Stages />);
  for (const id of ['r1', 'r2', 'r3', 'r4', 'r5', 'r6', 'r7']) {
    const [set] = readRegisterSets([{ register: 'reason', id, value: { name: id, retired: false } }]);
    if (set) await session.act({ kind: 'set', set });
  }
  await settle();
  await press('stage-wax');
  for (const id of ['r1', 'r2', 'r3']) await press(`stage-flaw-${id}`);
  expect(screen.queryByTestId('stage-flaw-r4')).toBeNull();
  await press('stage-flaw-remove-blown');
  await press('stage-flaw-r4');
  await press('stage-flaw-up-r4');
  await press('stage-save');
  expect(factOf(registersOf(session), { register: 'stage', id: stage.wax })?.reasons).toEqual([
    ...['tear-out', 'scratch', 'r1', 'r2', 'r4', 'r3'],
  ]);
});

describe('a variant', () => {
  test('without a wood says so at the wood, and keeps the price that was typed', async () => {
    const { session } = await mount(<Variants />);
    await press('add-variant');
    type('variant-first-price', '24.50');
    await press('variant-save');
    expect(errorAt('variant-wood')).toBe('Choose a wood');
    expect(typed('variant-first-price')).toBe('24.50');
    expect(factsOf(registersOf(session), 'variant')).toHaveLength(3);
  });

  test('has the name that wood and ferrule propose, and the ferrule on its bill', async () => {
    const { session } = await mount(<Variants />);
    const value = { name: 'Nickel ferrule', sort: 'ferrule', retired: false } as const;
    await session.act({ kind: 'set', set: { register: 'part', id: part['nickel-ferrule'], value } });
    await settle();
    await press('add-variant');
    choose('variant-wood', 'plum');
    choose('variant-ferrule', 'Nickel ferrule');
    expect(typed('variant-name')).toBe('plum, nickel ferrule');
    await press('variant-save');
    const made = factsOf(registersOf(session), 'variant').find(
      ({ fact }) => fact.name === 'plum, nickel ferrule',
    );
    expect(made?.fact.bill).toEqual([{ part: part['nickel-ferrule'], each: 1, stage: stage.bore }]);
  });

  test('whose price makes no sense says so as it is typed, before any save', async () => {
    await mount(<Variants />);
    await press('add-variant');
    expect(errorAt('variant-first-price')).toBeUndefined();
    type('variant-first-price', '-3');
    expect(errorAt('variant-first-price')).toBe('A price is a number such as 24 or 24.50.');
    expect(errorAt('variant-wood')).toBeUndefined();
  });

  test('whose part is asked for 0 times says so at that number', async () => {
    await mount(<Variants />);
    await press(`variant-${variant['ash-copper']}`);
    type(`bill-each-${part.core}`, '0');
    await press('variant-save');
    expect(errorAt(`bill-each-${part.core}`)).toBe('At least 1.');
    expect(typed(`bill-each-${part.core}`)).toBe('0');
  });
});

test('a save that is not on disk is told on the sheet itself, which stays with what was typed', async () => {
  const memory = memoryLog(v.parse(stationId, 'station-a'));
  let full = false;
  const log: LogStore = {
    ...memory,
    append: (act) =>
      full ? Promise.reject(new DOMException('full', 'QuotaExceededError')) : memory.append(act),
  };
  const { session } = await mount(<Reasons />, { log });
  full = true;
  await press('add-reason');
  type('reason-name', 'Burn');
  await press('reason-save');
  expect(sheet()?.contains(screen.getByTestId('not-saved'))).toBe(true);
  expect(typed('reason-name')).toBe('Burn');
  full = false;
  session.retry();
  await settle();
  expect(sheet()).toBeNull();
  expect(namesOf(session, 'reason')).toEqual(['Burn']);
});

test('a part is a ferrule unless another sort is chosen', async () => {
  const { session } = await mount(<Parts />);
  await press('add-part');
  type('part-name', 'Brass ferrule');
  await press('part-save');
  expect(factsOf(registersOf(session), 'part').map(({ fact }) => fact)).toEqual([
    { name: 'Brass ferrule', sort: 'ferrule', cost: null, lowMark: null, retired: false },
  ]);
});

describe('a part', () => {
  const added = async () => {
    const { session } = await mount(<Parts />);
    await press('add-part');
    type('part-name', 'Screw');
    return { read: () => factsOf(registersOf(session), 'part').map(({ fact }) => fact) };
  };

  test('has a cost finer than a cent, a low mark, and goes straight back when it is saved', async () => {
    const { read } = await added();
    await take('part-sort-consumable');
    type('part-cost', '0.0084');
    type('part-low-mark', '200');
    await press('part-save');
    expect(read()).toEqual([{ name: 'Screw', sort: 'consumable', cost: 84, lowMark: 200, retired: false }]);
  });

  test('that is metal is cleaned when it is saved, unless the maker says otherwise', async () => {
    const { read } = await added();
    const toClean = () => screen.getByTestId('part-saved-to-clean').querySelector('input')?.checked;
    expect(toClean()).toBe(true);
    await take('part-sort-blank');
    expect(toClean()).toBe(false);
    await take('part-saved-to-clean');
    await press('part-save');
    expect(read()).toMatchObject([{ sort: 'blank', cleaned: true }]);
  });

  test.each([
    ['part-cost', '0.00841', 'A sum such as 0.85: digits, at most four decimals.'],
    ['part-cost', 'dear', 'A sum such as 0.85: digits, at most four decimals.'],
    ['part-low-mark', '-3', 'At least 0.'],
    ['part-low-mark', '2.5', 'Whole pieces only.'],
    ['part-low-mark', '1000000', 'At most 999999.'],
  ])('with “%s” of %s says what is wrong at the field', async (field, text, words) => {
    const { read } = await added();
    type(field, text);
    await press('part-save');
    expect(errorAt(field)).toBe(words);
    expect(typed(field)).toBe(text);
    expect(read()).toEqual([]);
  });
});

test('a batch with pieces in work cannot be put away; the button says how many', async () => {
  const { session } = await mount(<Batches />);
  await session.act({
    kind: 'make-trays',
    variant: variant['ash-copper'],
    batch: batch.spring,
    pieces: 8,
    trays: 1,
  });
  await settle();
  await press(`batch-${batch.spring}`);
  expect(screen.getByTestId('batch-retire').textContent).toContain('8 pieces still in work.');
  await press('batch-retire');
  expect(factOf(registersOf(session), { register: 'batch', id: batch.spring })?.retired).toBe(false);
});

describe('a wood', () => {
  test('of the list comes with its grain and caution, and is not offered twice', async () => {
    const { session } = await mount(<Woods />);
    await press('add-wood');
    await screen.findByTestId('catalogue-plum');
    type('wood-search', 'fagus sylv');
    await press('catalogue-beech-european');
    await press('wood-save');
    const beech = factsOf(registersOf(session), 'species').find(
      ({ fact }) => fact.reference === 'beech-european',
    );
    expect(beech?.fact).toMatchObject({ name: 'European beech', grain: 'ray-fleck' });
    expect(beech?.fact.caution).toContain('cause of cancer');
    await press('add-wood');
    await screen.findByTestId('catalogue-plum');
    await press('catalogue-beech-european');
    expect(screen.getByTestId('catalogue-beech-european').textContent).toContain('in the shop already');
  });

  test('that the list does not have begins with the name that was searched for', async () => {
    await mount(<Woods />);
    await press('add-wood');
    await screen.findByTestId('catalogue-plum');
    type('wood-search', 'Laburnum');
    expect(screen.getByText('No wood of the list is called so. Add it as one of your own.')).toBeDefined();
    await press('wood-own');
    expect(typed('wood-name')).toBe('Laburnum');
  });
});

test('a batch that is set up anew keeps the plan that was kept of it', async () => {
  const { session } = await mount(<Batches />);
  const id = batch.spring;
  const fact = factOf(registersOf(session), { register: 'batch', id });
  if (!fact) throw new Error('no batch');
  const plan = {
    ...{ day: '2026-03-02' as never, started: 16, firsts: 13, comesOut: 15, minutes: 50, cost: null },
    done: null,
  };
  await session.act({ kind: 'set', set: { register: 'batch', id, value: { ...fact, plan } } });
  await press(`batch-${id}`);
  type('batch-name', 'Spring, anew');
  await press('batch-save');
  expect(factOf(registersOf(session), { register: 'batch', id })).toEqual({
    ...fact,
    ...{ name: 'Spring, anew', plan },
  });
});
