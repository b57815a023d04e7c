// @vitest-environment happy-dom
import { screen, within } from '@testing-library/preact';
import { beforeEach, describe, expect, test } from 'vitest';
import { goTo } from '../../../src/screens/parts/address.ts';
import { errorAt, press, settle, take, type } from '../set-up/mount.tsx';
import { answered, planOfShop, spring } from './open-plan.tsx';

const openStarts = async () => {
  goTo('plan', 'starts');
  await screen.findByTestId('plan-starts');
  await answered();
  await settle();
};
const answer = () => screen.getByTestId('start-answer').textContent ?? '';
const started = () => Number(screen.getByTestId('start-ash-copper').dataset.start);

beforeEach(() => goTo('plan'));

describe('how many to start', () => {
  test('has an answer without any history, which is said to be a guess', async () => {
    await planOfShop({ part: { chance: 70 } });
    await openStarts();
    expect(screen.getByTestId('starts-guess').textContent).toContain('toss-up');
    expect(started()).toBeGreaterThan(24);
    expect(answer()).toBe(
      `Start ${started()} pieces: then at least 12 good ones come out with a chance of 70 %.`,
    );
  });

  test('counts what is in work, and leads to the stages and pieces that it rests on', async () => {
    await planOfShop({ turned: 9 });
    await openStarts();
    expect(screen.queryByTestId('starts-guess')).toBeNull();
    expect(answer()).toMatch(/^Start \d+ more now: then, with what is in work, at least 12/);
    expect(screen.getByTestId('start-part-guess').textContent).toContain(
      'Nothing has been judged yet at Sand',
    );
    const beliefs = within(screen.getByTestId('start-beliefs'));
    expect(beliefs.getByRole('row', { name: /Turn/ }).textContent).toMatch(
      /9 of 9.*this wood and the others/,
    );
    expect(beliefs.getByRole('row', { name: /Sand/ }).textContent).toContain('nothing yet');
    expect(within(screen.getByTestId('start-flight')).getByRole('row', { name: /Sand/ }).textContent).toBe(
      'Sand9009',
    );
  });

  test('is said with what counts as a good one', async () => {
    await planOfShop({ turned: 9 });
    await openStarts();
    expect(screen.getByText(/Seconds do not count/)).toBeDefined();
    await take('starts-goal-finished');
    await answered();
    expect(screen.getByText(/Seconds count as good ones here/)).toBeDefined();
  });

  test('of one piece that nobody knows anything of is an answer too', async () => {
    await planOfShop({ part: { wanted: spring.wanted.map((each) => ({ ...each, good: 1 })) } });
    await openStarts();
    expect(started()).toBeGreaterThan(0);
  });

  test('that no number reaches is said, with how far was looked and what to do', async () => {
    await planOfShop({ part: { chance: 99, wanted: spring.wanted.map((each) => ({ ...each, good: 400 })) } });
    await openStarts();
    expect(screen.getByTestId('start-ash-copper').textContent).toBe('out of reach');
    expect(answer()).toMatch(/^Not even 2,100 new pieces make 400 good ones sure enough/);
  });

  test('of more than is ever started at once is not reckoned, and says so at once', async () => {
    await planOfShop({ part: { wanted: spring.wanted.map((each) => ({ ...each, good: 99_999 })) } });
    await openStarts();
    expect(screen.getByTestId('start-ash-copper').textContent).toBe('not reckoned beyond 20,000');
  });

  test('of a batch whose due day is past is told all the same', async () => {
    await planOfShop({ part: { chance: 70, due: '2026-02-27' as never } });
    await openStarts();
    expect(screen.getByTestId('starts-past')).toBeDefined();
    expect(started()).toBeGreaterThan(12);
  });

  test('of a batch that wants nothing is none', async () => {
    await planOfShop({ turned: 2, part: { wanted: [] } });
    await openStarts();
    expect(screen.getByTestId('start-ash-copper').textContent).toBe('none wanted');
    expect(screen.queryByTestId('start-detail')).toBeNull();
  });
});

describe('what is cheapest', () => {
  test('is found once one short and one over are priced, and stays typed for another look', async () => {
    await planOfShop({ turned: 9 });
    await openStarts();
    const said = () => screen.getByTestId('start-cheapest').textContent ?? '';
    expect(said()).toBe('Say what one short and one left over costs.');
    type('cost-start', '8');
    type('cost-short', '30.50');
    type('cost-over', '1');
    await answered();
    expect(said()).toMatch(/^Cheapest: start \d+\. The chance is then .+ come to \d+\.\d\d on average\.$/);
    goTo('plan');
    await screen.findByTestId('plan-targets');
    await openStarts();
    expect((screen.getByTestId('cost-short') as HTMLInputElement).value).toBe('30.50');
    await press('cost-forget');
    expect(said()).toBe('Say what one short and one left over costs.');
  });

  test('a cost that is none is refused at its field', async () => {
    await planOfShop();
    await openStarts();
    type('cost-short', '-4');
    expect(errorAt('cost-short')).toBe('A cost is a number such as 24 or 24.50.');
  });
});
