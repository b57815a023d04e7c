// @vitest-environment happy-dom
import { screen } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { holdLimit } from '../../../src/domain/rollup/hold-limit.ts';
import { factOf, factsOf } from '../../../src/domain/shop/registers.ts';
import { Resources } from '../../../src/screens/set-up/resources.tsx';
import { Stages } from '../../../src/screens/set-up/stages.tsx';
import { stage } from '../../support/workshop.ts';
import { errorAt, mount, press, take, type } from './mount.tsx';

test('clamps that are written down can be shared by holds, whose sheet then asks for no places of its own', async () => {
  const { session } = await mount(
    <>
      <Resources />
      <Stages />
    </>,
  );
  await press('add-resource');
  type('resource-name', 'Cramps');
  type('resource-capacity', '0');
  await press('resource-save');
  expect(errorAt('resource-capacity')).toBe('At least 1.');
  type('resource-capacity', '24');
  await press('resource-save');
  const [cramps] = factsOf(session.view.value.shop.registers, 'resource');
  expect(cramps?.fact).toEqual({ name: 'Cramps', capacity: 24, retired: false });
  if (!cramps) throw new Error('no cramps');

  await press(`stage-${stage.glue}`);
  expect(screen.queryByTestId('stage-capacity')).not.toBeNull();
  await take(`stage-resource-${cramps.id}`);
  expect(screen.queryByTestId('stage-capacity')).toBeNull();
  type('stage-least', '4');
  type('stage-rated-at', '20');
  await take('stage-mix-adhesive');
  await press('stage-save');
  expect(errorAt('mix-gramsEach')).toBe('A number such as 1.5, at most two decimals.');
  type('mix-gramsEach', '1.5');
  type('mix-resin', '2');
  type('mix-hardener', '1');
  type('mix-pot', '30');
  await press('stage-save');
  const { shop } = session.view.value;
  expect(factOf(shop.registers, { register: 'stage', id: stage.glue })).toMatchObject({
    ...{ resource: cramps.id, leastMinutes: 240, ratedAt: 200, mix: { kind: 'adhesive', gramsEach: 150 } },
  });
  expect(holdLimit(shop, stage.glue)).toMatchObject({ resource: cramps.id, limit: 24 });

  await press(`resource-${cramps.id}`);
  expect(screen.getByTestId('resource-retire').textContent).toContain('Glue still uses it');
});
