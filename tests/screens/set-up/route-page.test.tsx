// @vitest-environment happy-dom
import { screen } from '@testing-library/preact';
import { describe, expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { Route } from '../../../src/screens/set-up/route.tsx';
import { piecesAtStages } from '../../../src/screens/set-up/set-up-view.ts';
import { batch, route, routeStages, stage, variant } from '../../support/workshop.ts';
import { choose, errorAt, type Mounted, mount, press, settle, type, typed } from './mount.tsx';

const whole = routeStages.map((name) => stage[name]);
const orderOf = (session: Session) =>
  factOf(session.view.value.shop.registers, { register: 'route', id: route.haft })?.stages;
const piecesOf = (session: Session) => piecesAtStages(session.view.value.shop);

/** Ten pieces of the spring batch: six wait at the boring, four for the glue. */
async function running(): Promise<Mounted> {
  const mounted = await mount(<Route />);
  const { session } = mounted;
  const made = { variant: variant['ash-copper'], batch: batch.spring, pieces: 10, trays: 1 };
  await session.act({ kind: 'make-trays', ...made });
  const [tray] = session.view.value.shop.trays.keys();
  if (!tray) throw new Error('no tray was made');
  const spot = { tray, stage: stage.bore, at: 'waiting', grade: 'first', shown: 10 } as const;
  await session.act({ kind: 'pass', spot, pieces: 4 });
  await settle();
  return mounted;
}

test('a stage is moved by its buttons and sent to a place by its number; only a save makes it so', async () => {
  const { session } = await mount(<Route />);
  await press('route-up-photo');
  choose('route-place-bore', '3');
  expect(orderOf(session)).toEqual(whole);
  await press('route-save');
  expect(orderOf(session)).toEqual(['glue', 'turn', 'bore', 'sand', 'photo', 'grade']);
});

test('the way the route was comes back at one tap', async () => {
  const { session } = await mount(<Route />);
  await press('route-remove-photo');
  expect(screen.queryByTestId('route-row-photo')).toBeNull();
  await press('route-restore');
  expect(screen.getByTestId('route-row-photo')).toBeDefined();
  expect(orderOf(session)).toEqual(whole);
});

test('a stage that is on no route is put on at a tap', async () => {
  const { session } = await mount(<Route />);
  await press('route-add-wax');
  await press('route-save');
  expect(orderOf(session)).toEqual([...whole, stage.wax]);
  expect(screen.getByTestId('route-save').textContent).toContain('Saved.');
  expect(screen.queryByTestId('route-restore')).toBeNull();
});

describe('a stage with pieces that is taken off in the middle of a batch', () => {
  test('is not gone before it is said where they go; the question stands at the stage', async () => {
    const { session } = await running();
    await press('route-remove-glue');
    expect(screen.getByTestId('route-pieces-glue').textContent).toBe('4 here');
    expect(screen.getByTestId('route-state').textContent).toBe('Say where the pieces go: Glue.');
    await press('route-save');
    expect(errorAt('route-destination-glue')).toBe('Say where they go.');
    expect(document.activeElement).toBe(screen.getByTestId('route-destination-glue'));
    expect(screen.queryByTestId('route-refusal')).toBeNull();
    expect(orderOf(session)).toEqual(whole);
  });

  test('cannot keep them, and sends every one of them where the maker says', async () => {
    const { session } = await running();
    await press('route-remove-glue');
    expect(() => choose('route-destination-glue', 'Stay at Glue')).toThrow('is not offered');
    choose('route-destination-glue', 'Turn');
    await press('route-save');
    expect(orderOf(session)).toEqual(whole.filter((id) => id !== stage.glue));
    expect(piecesOf(session)).toEqual(
      new Map([
        [stage.bore, 6],
        [stage.turn, 4],
      ]),
    );
  });

  test('can be put back where it stood, and then asks nothing and moves nothing', async () => {
    const { session } = await running();
    await press('route-remove-glue');
    choose('route-destination-glue', 'Turn');
    await press('route-back-glue');
    expect(screen.queryByTestId('route-destination-glue')).toBeNull();
    type('route-name', 'Hafts');
    await press('route-save');
    expect(orderOf(session)).toEqual(whole);
    expect(piecesOf(session).get(stage.glue)).toBe(4);
  });
});

test('stages with pieces that change places ask as well, and there the pieces may stay', async () => {
  const { session } = await running();
  await press('route-down-bore');
  choose('route-destination-bore', 'Stay at Bore');
  choose('route-destination-glue', 'Bore');
  await press('route-save');
  expect(orderOf(session)?.slice(0, 2)).toEqual([stage.glue, stage.bore]);
  expect(piecesOf(session)).toEqual(new Map([[stage.bore, 10]]));
});

test('a stage that fits a part warns of the variants that have it', async () => {
  await mount(<Route />);
  await press('route-remove-sand');
  expect(screen.getByTestId('route-loose-parts').textContent).toContain('ash with copper: Sand');
});

test('a route without a name, of 500 characters, of a taken name, or without stages is refused where it is wrong', async () => {
  const { session } = await mount(<Route />);
  type('route-name', '');
  await press('route-save');
  expect(errorAt('route-name')).toBe('Enter a name.');
  type('route-name', 'x'.repeat(500));
  await press('route-save');
  expect(errorAt('route-name')).toBe('500 characters: at most 80 fit.');
  expect(typed('route-name')).toHaveLength(500);
  type('route-name', 'Short');
  await press('route-save');
  expect(errorAt('route-name')).toBe('This name is taken. Choose another.');
  type('route-name', 'Haft');
  for (const id of routeStages) await press(`route-remove-${id}`);
  await press('route-save');
  expect(screen.getByTestId('route-refusal').textContent).toBe('The route needs at least one stage.');
  expect(orderOf(session)).toEqual(whole);
});

test('a second route is begun empty and has stages of its own', async () => {
  const { session } = await mount(<Route />);
  await press('add-route');
  type('route-name', 'Prized pieces');
  await press('route-add-turn');
  await press('route-add-wax');
  await press('route-save');
  const made = [...session.view.value.shop.registers.values()].find(
    ({ set }) => set.register === 'route' && set.value.name === 'Prized pieces',
  );
  expect(made?.set.register === 'route' && made.set.value.stages).toEqual([stage.turn, stage.wax]);
});
