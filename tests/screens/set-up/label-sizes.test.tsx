// @vitest-environment happy-dom
import { screen } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { factsOf } from '../../../src/domain/shop/registers.ts';
import { LabelSizePage } from '../../../src/screens/set-up/label-size-page.tsx';
import { errorAt, mount, press, take, type, typed } from './mount.tsx';

const sheet = () => screen.queryByRole('dialog');

test('the common sizes stand there from the start, each with what can be read on it', async () => {
  const { session } = await mount(<LabelSizePage />);
  const said = (id: string) => screen.getByTestId(`label-size-${id}`).textContent;
  expect(said('a4-3x8')).toContain('70 × 37 mm. The code can be read at 2 m.');
  expect(said('letter-3x10')).toContain('Too small to read the code at 2 m');
  expect(factsOf(session.view.value.shop.registers, 'label-size')).toEqual([]);
});

test('a common size is changed in its place: it is then the shop’s own word, in hundredths of a millimetre', async () => {
  const { session } = await mount(<LabelSizePage />);
  await press('label-size-a4-3x8');
  expect(typed('label-size-width')).toBe('70');
  type('label-size-width', '69,5');
  type('label-size-left', ' 0.25 mm');
  await press('label-size-save');
  expect(sheet()).toBeNull();
  const [own, ...others] = factsOf(session.view.value.shop.registers, 'label-size');
  expect(others).toEqual([]);
  expect(own).toMatchObject({ id: 'a4-3x8', fact: { width: 6950, sheet: { left: 25, columns: 3 } } });
  await press('label-size-a4-3x8');
  await press('label-size-retire');
  expect(factsOf(session.view.value.shop.registers, 'label-size')[0]?.fact.retired).toBe(true);
});

test.each([
  ['columns', '4', 'The labels go past the side of the sheet.'],
  ['rows', '9', 'The labels go past the foot of the sheet.'],
  ['acrossStep', '60', 'The labels lie over one another: the step is less than the label.'],
  ['downStep', '20', 'The labels lie over one another: the step is less than the label.'],
  ['columns', '0', 'At least 1.'],
  ['rows', 'eight', 'This is not a number.'],
  ['width', '-70', 'A length in mm from 25 to 300, such as 38.1.'],
  ['height', '', 'A length in mm from 15 to 300, such as 38.1.'],
  ['width', '70.123', 'A length in mm from 25 to 300, such as 38.1.'],
])('a size with %s %s is not saved, and says why at the field', async (field, text, said) => {
  const { session } = await mount(<LabelSizePage />);
  await press('label-size-a4-3x8');
  type(`label-size-${field}`, text);
  await press('label-size-save');
  expect(errorAt(`label-size-${field}`)).toBe(said);
  expect(typed(`label-size-${field}`)).toBe(text);
  expect(factsOf(session.view.value.shop.registers, 'label-size')).toEqual([]);
});

test('a roll has no sheet to measure, and says whether its code can be read from afar', async () => {
  const { session } = await mount(<LabelSizePage />);
  await press('add-label-size');
  await take('label-size-on-roll');
  expect(screen.queryByTestId('label-size-columns')).toBeNull();
  type('label-size-name', 'Small roll');
  type('label-size-width', '40');
  type('label-size-height', '20');
  expect(screen.getByTestId('label-size-reading').textContent).toContain('Too small to read the code at 2 m');
  await press('label-size-save');
  expect(factsOf(session.view.value.shop.registers, 'label-size')[0]?.fact).toEqual({
    name: 'Small roll',
    width: 4000,
    height: 2000,
    sheet: null,
    retired: false,
  });
});
