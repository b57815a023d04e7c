// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { factsOf } from '../../../src/domain/shop/registers.ts';
import { address, readAddress } from '../../../src/screens/parts/address.ts';
import { StoresPlace } from '../../../src/screens/stores/stores-place.tsx';
import { batch, part, partFacts, reason, stage, variant } from '../../support/workshop.ts';
import { errorAt, mount, press, pressOn, settle, take, type } from '../set-up/mount.tsx';

const goTo = (hash: string) => {
  address.value = readAddress(hash);
};
beforeEach(() => goTo('#/stores'));
afterEach(cleanup);

const text = (id: string) => screen.getByTestId(id).textContent;
const core = `stores-${part.core}`;
const numbersOf = (id: string) => ['on-hand', 'allotted', 'free'].map((name) => text(`stores-${id}-${name}`));

/** The place over a workshop whose parts are set up. */
async function stores(): Promise<Session> {
  const { session } = await mount(<StoresPlace />);
  for (const set of partFacts) await session.act({ kind: 'set', set });
  await settle();
  return session;
}

/** Types a number on the pad of the open sheet. */
async function typeOnPad(pad: string, digits: string): Promise<void> {
  for (const digit of digits)
    await pressOn(within(screen.getByTestId(pad)).getByRole('button', { name: digit }));
}

async function receive(session: Session, pieces: number, cost: number | null = null): Promise<void> {
  await session.act({ kind: 'receive-parts', parts: [{ part: part.core, pieces, cost }], note: '' });
  await settle();
}

/** A tray of four that was glued up, two of them scrapped with their cores saved. */
async function scrapTwo(session: Session): Promise<TrayId> {
  const its = { variant: variant['ash-copper'], batch: batch.spring };
  await session.act({ kind: 'make-trays', ...its, pieces: 4, trays: 1 });
  const tray = [...session.view.value.shop.trays.keys()].at(-1);
  if (!tray) throw new Error('a tray was made');
  const spot = (at: (typeof stage)['bore'], shown: number) =>
    ({ tray, stage: at, at: 'waiting', grade: 'first', shown }) as const;
  for (const at of [stage.bore, stage.glue])
    await session.act({ kind: 'pass', spot: spot(at, 4), pieces: 4 });
  await session.act({
    kind: 'flaw',
    spot: spot(stage.turn, 4),
    pieces: 2,
    reasons: [reason.blown],
    outcome: { kind: 'scrapped', saved: [part.core] },
  });
  await settle();
  return tray;
}

describe('the stores', () => {
  test('without a part say where parts are added', async () => {
    await mount(<StoresPlace />);
    expect(screen.getByText('No parts yet')).toBeTruthy();
  });

  test('do not take unknown for nothing: a part that nobody has counted has no number, and says so', async () => {
    await stores();
    expect(numbersOf(part.core)).toEqual(['–', '0', '–']);
    expect(text(`${core}-state`)).toContain('Not counted yet');
  });

  test('show what lies there, what is allotted and what is free', async () => {
    const session = await stores();
    await receive(session, 50);
    const its = { variant: variant['ash-copper'], batch: batch.spring };
    await session.act({ kind: 'make-trays', ...its, pieces: 12, trays: 1 });
    await settle();
    expect(numbersOf(part.core)).toEqual(['50', '24', '26']);
    expect(text(`${core}-state`)).toContain('Enough');
  });

  test('say in words when a part is low, too few for what is in work, or below zero', async () => {
    const session = await stores();
    await receive(session, 30);
    const value = { name: 'core', sort: 'core', lowMark: 30, retired: false } as const;
    await session.act({ kind: 'set', set: { register: 'part', id: part.core, value } });
    await settle();
    expect(text(`${core}-state`)).toContain('At the low mark of 30 or under it.');
    const its = { variant: variant['ash-copper'], batch: batch.spring };
    await session.act({ kind: 'make-trays', ...its, pieces: 20, trays: 1 });
    await settle();
    expect(text(`${core}-state`)).toContain('The pieces in work need 10 more.');
    await session.act({ kind: 'undo', events: lastEvents(session, 'parts-received') });
    await scrapTwo(session);
    expect(numbersOf(part.core)[0]).toBe('−8');
    expect(text(`${core}-state`)).toContain('Below zero: count');
  });
});

function lastEvents(session: Session, kind: 'parts-received') {
  return session.acts.value.flatMap(({ events }) => events).filter((event) => event.kind === kind);
}

describe('receiving', () => {
  test('takes the number from the pad and the sum from its field, and can be taken back', async () => {
    const session = await stores();
    await press(`${core}-receive`);
    await typeOnPad('receive-pieces', '120');
    type('receive-cost', '54.00');
    await press('receive-save');
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(numbersOf(part.core)).toEqual(['120', '0', '120']);
    expect(text('stores-last')).toBe('Received: 120 core');
    expect(session.view.value.shop.stores.get(`paid|${part.core}`)).toBe(5400);
    await press('stores-take-back');
    expect(numbersOf(part.core)).toEqual(['–', '0', '–']);
    expect(screen.queryByTestId('stores-last')).toBeNull();
  });

  test('of no number, or for what is no sum, says so and keeps what was typed', async () => {
    await stores();
    await press(`${core}-receive`);
    await press('receive-save');
    expect(text('receive-pieces')).toContain('Enter a number.');
    await typeOnPad('receive-pieces', '7');
    type('receive-cost', 'dear');
    await press('receive-save');
    expect(errorAt('receive-cost')).toBe('A sum such as 12.50.');
    expect(screen.getByRole('dialog')).toBeTruthy();
  });
});

describe('counting', () => {
  test('shows the difference, asks why, and corrects the number', async () => {
    const session = await stores();
    await receive(session, 50);
    await press(`${core}-count`);
    expect(text('count-log')).toBe('The log says 50.');
    await typeOnPad('count-pieces', '47');
    expect(text('count-difference')).toBe('Difference: −3');
    await press('count-save');
    expect(screen.getByRole('dialog').textContent).toContain('Choose why.');
    await take('count-why-lost');
    await press('count-save');
    expect(numbersOf(part.core)[0]).toBe('47');
    expect(text('stores-last')).toBe('core counted: 47, −3 (lost)');
  });

  test('for the first time needs no reason, and may find none', async () => {
    await stores();
    await press(`${core}-count`);
    expect(text('count-log')).toBe('Nobody has said yet how many there are.');
    await typeOnPad('count-pieces', '0');
    await press('count-save');
    expect(numbersOf(part.core)).toEqual(['0', '0', '0']);
  });
});

describe('what scrap has saved', () => {
  test('comes back to stores by its own tap, one by one or all', async () => {
    const session = await stores();
    await receive(session, 20);
    await scrapTwo(session);
    expect(text(`clean-${part.core}-count`)).toBe('4');
    expect(numbersOf(part.core)[0]).toBe('12');
    await press(`clean-${part.core}-one`);
    expect([text(`clean-${part.core}-count`), numbersOf(part.core)[0]]).toEqual(['3', '13']);
    await press(`clean-${part.core}-all`);
    expect(screen.queryByTestId('stores-to-clean')).toBeNull();
    expect(numbersOf(part.core)[0]).toBe('16');
  });

  test('may be lost in cleaning', async () => {
    const session = await stores();
    await receive(session, 20);
    await scrapTwo(session);
    await press(`clean-${part.core}-some`);
    type('clean-back', '2');
    type('clean-lost', '3');
    await press('clean-save');
    expect(errorAt('clean-lost')).toBe('At most 4.');
    type('clean-lost', '1');
    await press('clean-save');
    expect([text(`clean-${part.core}-count`), numbersOf(part.core)[0]]).toEqual(['1', '14']);
    expect(text('stores-last')).toBe('core cleaned: 2 back to stores, 1 lost');
  });
});

test('what can be started names the part that is used up first; what to order is for the plan', async () => {
  const session = await stores();
  await receive(session, 41);
  expect(text(`start-${variant['ash-copper']}`)).toBe('20');
  expect(text(`start-${variant['ash-copper']}-limit`)).toBe(
    'core · not counted yet: ash-blank, copper-ferrule',
  );
  const [spring] = factsOf(session.view.value.shop.registers, 'batch').filter(
    ({ id }) => id === batch.spring,
  );
  if (!spring) throw new Error('the batch is set up');
  const value = { ...spring.fact, wanted: [{ variant: variant['ash-copper'], good: 30 }] };
  await session.act({ kind: 'set', set: { register: 'batch', id: batch.spring, value } });
  await settle();
  expect(text(`order-${part.core}`)).toBe('19');
});

test('the page of a part has its history, each entry of which is taken back, and what it is worth', async () => {
  const session = await stores();
  await receive(session, 100, 250);
  goTo(`#/stores/part/${part.core}`);
  await settle();
  expect([text('part-cost'), text('part-worth'), text('part-received')]).toEqual(['0.025', '2.50', '100']);
  const [event] = session.acts.value.at(-1)?.events ?? [];
  await screen.findByText('Received: 100 core');
  await press(`history-undo-${event?.station}-${event?.seq}`);
  expect(numbersOf(part.core)[0]).toBe('–');
  await screen.findByText('Taken back: Received: 100 core');
});

test('a part that is not in the shop says so', async () => {
  await stores();
  goTo('#/stores/part/unheard-of');
  await settle();
  expect(screen.getByText('This part is not in the shop')).toBeTruthy();
});
