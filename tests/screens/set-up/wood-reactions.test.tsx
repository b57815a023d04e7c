// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { Machines } from '../../../src/screens/set-up/machines.tsx';
import { Stages } from '../../../src/screens/set-up/stages.tsx';
import { Woods } from '../../../src/screens/set-up/woods.tsx';
import { woodCareWords as words } from '../../../src/words/wood-care-words.ts';
import { species, stage } from '../../support/workshop.ts';
import { errorAt, mount, press, take, type } from './mount.tsx';

afterEach(cleanup);

test('a reaction marks its wood for good; one that is withdrawn stays readable', async () => {
  const { session } = await mount(<Woods />);
  const ash = () => factOf(session.view.value.shop.registers, { register: 'species', id: species.ash });
  await press(`wood-${species.ash}`);
  await press('reaction-add');
  expect(errorAt('reaction-note')).toBe(words.emptyReaction);
  type('reaction-note', '  Rash on   both wrists ');
  await press('reaction-add');
  await press('wood-save');
  const rash = { day: session.today(), note: 'Rash on both wrists', withdrawn: null };
  expect(ash()?.reactions).toEqual([rash]);
  await press(`wood-${species.ash}`);
  await press('reaction-withdraw-0');
  expect(screen.getByText(words.withdrawn(session.today()))).toBeTruthy();
  await press('wood-save');
  expect(ash()?.reactions).toEqual([{ ...rash, withdrawn: session.today() }]);
});

test('what a stage does is kept, each thing on and off by itself', async () => {
  const { session } = await mount(<Stages />);
  const turn = () => factOf(session.view.value.shop.registers, { register: 'stage', id: stage.turn });
  await press(`stage-${stage.turn}`);
  await press('stage-does-turns');
  await press('stage-does-dust');
  await press('stage-does-fumes');
  await press('stage-does-fumes');
  await press('stage-save');
  expect(turn()?.does).toEqual(['dust', 'turns']);
});

test('a machine has its stages, its duty limit and its most turns', async () => {
  const { session } = await mount(<Machines />);
  await press('add-machine');
  type('machine-name', 'Belt sander');
  await press(`machine-stage-${stage.sand}`);
  await take('machine-rests-yes');
  type('machine-on', '20');
  type('machine-off', '10');
  type('machine-turns', '3200');
  await press('machine-save');
  const [entry] = [...session.view.value.shop.registers.values()].filter(
    ({ set }) => set.register === 'machine',
  );
  expect(entry?.set.value).toEqual({
    ...{ name: 'Belt sander', stages: [stage.sand], duty: { on: 20, off: 10 } },
    ...{ mostTurns: 3200, retired: false },
  });
  expect(screen.getByText('20 min on, 10 min off · at most 3,200 turns a minute')).toBeTruthy();
});
