// @vitest-environment happy-dom
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { hrefOf, readAddress } from '../../src/screens/parts/address.ts';

test.each([
  ['', { place: 'bench', rest: [] }],
  ['#/yield', { place: 'yield', rest: [] }],
  ['#/shelf/plum-copper', { place: 'shelf', rest: ['plum-copper'] }],
  ['#/bench/sand/t1', { place: 'bench', rest: ['sand', 't1'] }],
  ['#/plan/starts', { place: 'plan', rest: ['starts'] }],
  ['#/nowhere/else', { place: 'bench', rest: [] }],
  ['#/trays/%E0%A4%A', { place: 'trays', rest: ['%E0%A4%A'] }],
])('the address %j is read', (hash, expected) => {
  expect(readAddress(hash)).toEqual(expected);
});

test('an address that was made is read back as it was meant', () => {
  expect(readAddress(hrefOf('trays', 'a b/c'))).toEqual({ place: 'trays', rest: ['a b/c'] });
});

describe('a start', () => {
  /** The module as it is when a page is opened at a hash. */
  const openedAt = async (hash: string) => {
    vi.resetModules();
    history.replaceState(null, '', `#${hash}`);
    if (hash === '') history.replaceState(null, '', location.pathname);
    return import('../../src/screens/parts/address.ts');
  };
  beforeEach(() => history.replaceState(null, '', location.pathname));

  test('that names no place goes to the usual stage, and its bare address is no step on the way back', async () => {
    const { address, startAt } = await openedAt('');
    const steps = history.length;
    startAt('rough-turn');
    expect(address.value).toEqual({ place: 'bench', rest: ['rough-turn'] });
    expect([location.hash, history.length]).toEqual(['#/bench/rough-turn', steps]);
  });

  test.each(['/yield', '/bench', '/bench/sand'])('at the address %s stays there', async (hash) => {
    const { address, readAddress: read, startAt } = await openedAt(hash);
    startAt('rough-turn');
    expect(address.value).toEqual(read(`#${hash}`));
  });

  test('sends nobody back who has gone to the choice of stages since', async () => {
    const { address, goTo, startAt } = await openedAt('');
    startAt('rough-turn');
    goTo('bench');
    address.value = { place: 'bench', rest: [] };
    startAt('rough-turn');
    expect([address.value.rest, location.hash]).toEqual([[], '#/bench']);
  });

  test('without a usual stage is the choice, and stays it when a stage is said later', async () => {
    const { address, startAt } = await openedAt('');
    startAt(null);
    startAt('rough-turn');
    expect(address.value).toEqual({ place: 'bench', rest: [] });
  });
});
