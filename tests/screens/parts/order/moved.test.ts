import fc from 'fast-check';
import { expect, test } from 'vitest';
import { moved, movedTo } from '../../../../src/screens/parts/order/moved.ts';

const list = ['bore', 'glue', 'turn', 'sand'];

test('a stage that is moved up or down changes places with its neighbour', () => {
  expect(moved(list, { thing: 'turn', by: -1 })).toEqual(['bore', 'turn', 'glue', 'sand']);
  expect(moved(list, { thing: 'bore', by: 1 })).toEqual(['glue', 'bore', 'turn', 'sand']);
});

test('at either end a stage goes no further', () => {
  expect(moved(list, { thing: 'bore', by: -1 })).toEqual(list);
  expect(moved(list, { thing: 'sand', by: 1 })).toEqual(list);
});

test('a stage can be sent to any place at once', () => {
  expect(movedTo(list, { thing: 'sand', place: 0 })).toEqual(['sand', 'bore', 'glue', 'turn']);
  expect(movedTo(list, { thing: 'bore', place: 2 })).toEqual(['glue', 'turn', 'bore', 'sand']);
  expect(movedTo(list, { thing: 'bore', place: 99 })).toEqual(['glue', 'turn', 'sand', 'bore']);
});

test('what is not on the list moves nothing', () => {
  expect(moved(list, { thing: 'wax', by: 1 })).toBe(list);
  expect(movedTo(list, { thing: 'wax', place: 0 })).toBe(list);
});

test('whatever is moved where, nothing is lost or doubled, and the others keep their order', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer(), { minLength: 1 }),
      fc.nat(),
      fc.integer(),
      (things, at, place) => {
        const thing = things[at % things.length] ?? 0;
        const others = (all: readonly number[]) => all.filter((each) => each !== thing);
        const result = movedTo(things, { thing, place });
        expect(result).toHaveLength(things.length);
        expect(result).toContain(thing);
        expect(others(result)).toEqual(others(things));
      },
    ),
  );
});
