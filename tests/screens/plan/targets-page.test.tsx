// @vitest-environment happy-dom
import { act, screen, waitFor, within } from '@testing-library/preact';
import { describe, expect, test } from 'vitest';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { address } from '../../../src/screens/parts/address.ts';
import { batch, person, variant } from '../../support/workshop.ts';
import { errorAt, type Mounted, press, settle, type } from '../set-up/mount.tsx';
import { answered, planOfShop, spring } from './open-plan.tsx';

const factIn = ({ session }: Mounted) =>
  factOf(session.view.value.shop.registers, { register: 'batch', id: batch.spring });
const panel = () => screen.getByTestId('targets-spring');

describe('the targets of a batch', () => {
  test('stand with what there is of them, the days that are left, and how sure one wants to be', async () => {
    await planOfShop({ turned: 5 });
    expect(within(panel()).getByText(/Due Mon, 30 Mar 2026, in 28 days · 90 % sure of enough/)).toBeDefined();
    const row = within(panel()).getByRole('row', { name: /ash with copper/ });
    expect([...row.children].map(({ textContent }) => textContent)).toEqual([
      'ash with copper',
      ...['12', '0', '0', '5', '0', '12'],
    ]);
  });

  test('are changed where they stand, and what else is said of the batch stays', async () => {
    const mounted = await planOfShop();
    await press('targets-change-spring');
    type('targets-good-ash-copper', '40');
    type('targets-good-plum-copper', '7');
    type('targets-due', '');
    type('targets-chance', '95');
    await press('targets-save');
    expect(factIn(mounted)).toEqual({
      ...spring,
      wanted: [
        { variant: variant['ash-copper'], good: 40 },
        { variant: variant['plum-copper'], good: 7 },
      ],
      due: null,
      chance: 95,
    });
    expect(within(panel()).getByText(/No due day yet · 95 % sure/)).toBeDefined();
    expect(screen.queryByTestId('targets-edit')).toBeNull();
  });

  test.each([
    ['targets-good-ash-copper', '-1'],
    ['targets-good-ash-copper', '1e9'],
    ['targets-chance', '100'],
  ])('%s is refused as “%s” beside the field, and stays typed', async (field, text) => {
    const mounted = await planOfShop();
    await press('targets-change-spring');
    type(field, text);
    await press('targets-save');
    expect(errorAt(field)).toBeTruthy();
    expect(factIn(mounted)).toEqual(spring);
  });

  test('tell of a due day that is past', async () => {
    await planOfShop({ part: { due: '2026-02-27' as never } });
    expect(within(panel()).getByText(/Was due Fri, 27 Feb 2026, 3 days ago/)).toBeDefined();
    expect(screen.getByTestId('verdict-spring').textContent).toBe('due day is past');
  });
});

describe('hours', () => {
  test('are not known while nobody’s are said, and lead to where they are', async () => {
    await planOfShop();
    expect(screen.getByTestId('plan-week').textContent).toMatch(/not known/);
    expect(screen.getByTestId('verdict-spring').textContent).toBe('not known');
    await press('plan-to-people');
    await waitFor(() => expect(address.value).toMatchObject({ place: 'set-up', rest: ['people'] }));
  });

  test('of those whose are said are summed, and the others are named', async () => {
    const { session } = await planOfShop({ turned: 3 });
    const day = { from: 480, to: 960, breakMinutes: 60 };
    const week = [day, day, day, day, day, null, null];
    const add = (id: 'edda' | 'odo', value: object) =>
      session.act({
        kind: 'set',
        set: { register: 'person', id: person[id], value: { name: id, retired: false, ...value } },
      });
    await act(async () => {
      await add('edda', { week });
      await add('odo', {});
    });
    await answered();
    expect(screen.getByTestId('plan-week').textContent).toBe('The next 7 days have 35 h of work.');
    expect(screen.getByText(/their hours are not said: odo/)).toBeDefined();
  });
});

describe('a file of targets', () => {
  const choose = async (text: string) => {
    const input = screen.getByTestId('targets-input') as HTMLInputElement;
    Object.defineProperty(input, 'files', { configurable: true, value: [new File([text], 'targets.csv')] });
    act(() => void input.dispatchEvent(new Event('change', { bubbles: true })));
    await waitFor(() => {
      if (!screen.queryByTestId('targets-judged') && !screen.queryByTestId('targets-refused'))
        throw new Error('not read yet');
    });
    await settle();
  };

  test('shows what would change and what is not understood, and writes nothing before it is told to', async () => {
    const mounted = await planOfShop();
    await choose(
      'batch;variant;good;due;chance\nSpring;ash with copper;20;2026-04-02;\nSpring;teak;5;;\nSpring;plum with copper;-3;;\n',
    );
    expect(screen.getByTestId('targets-sum').textContent).toBe(
      '1 line changes something, 0 say what is so already, 2 are not understood.',
    );
    expect(screen.getByTestId('targets-changing').textContent).toContain(
      '12 → 20 good ones, due Mon, 30 Mar 2026 → Thu, 2 Apr 2026',
    );
    const refused = screen.getByTestId('targets-not-understood').textContent;
    expect(refused).toContain('No variant is called “teak”.');
    expect(refused).toContain('Good ones: At least 0.');
    expect(factIn(mounted)).toEqual(spring);
    await press('targets-write');
    expect(factIn(mounted)).toEqual({
      ...spring,
      wanted: [{ variant: variant['ash-copper'], good: 20 }],
      due: '2026-04-02',
    });
    expect(screen.getByTestId('targets-said').textContent).toBe('1 line was written.');
  });

  test('of ten thousand lines is drawn in parts, and each line can be reached', async () => {
    await planOfShop();
    await choose(
      `batch,variant,good\n${Array.from({ length: 10_000 }, (_, at) => `Spring,w${at},1\n`).join('')}`,
    );
    expect(screen.getByTestId('targets-sum').textContent).toMatch(/10,000 are not understood/);
    const rows = () => within(screen.getByTestId('targets-not-understood')).getAllByRole('row').length;
    expect(rows()).toBe(201);
    act(() => screen.getByText('Show 200 more').closest('button')?.click());
  });

  test('that is none is refused with the reason', async () => {
    await planOfShop();
    await choose('ash,60');
    expect(screen.getByTestId('targets-refused').textContent).toContain('There is no column “Batch”.');
  });

  test('that says what is so already has nothing to be written', async () => {
    await planOfShop();
    await choose('batch,variant,good\nSpring,ash with copper,12\n');
    expect(screen.getByTestId('targets-write').textContent).toContain('Nothing would change.');
    await press('targets-leave');
    expect(screen.queryByTestId('targets-judged')).toBeNull();
  });
});

test('a shop without an open batch is told what to do', async () => {
  const { session } = await planOfShop({ part: { retired: true } });
  const autumn = { ...spring, name: 'Autumn', retired: true };
  await act(async () => {
    await session.act({ kind: 'set', set: { register: 'batch', id: batch.autumn, value: autumn } });
  });
  expect(screen.getByText('No batch is open')).toBeDefined();
  await press('plan-to-batches');
  await waitFor(() => expect(address.value).toMatchObject({ place: 'set-up', rest: ['batches'] }));
});
