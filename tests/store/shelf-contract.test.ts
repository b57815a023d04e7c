import { describe, expect, test } from 'vitest';
import { shelfMakers } from '../support/shelf-makers.ts';

const bytes = (...all: number[]) => Uint8Array.from(all);

describe.each(shelfMakers)('a shelf of files %s', (_, make) => {
  test('is empty at first', async () => {
    const shelf = await make().open();
    expect(await shelf.names()).toEqual([]);
    expect(await shelf.read('daily-1.twb')).toBeUndefined();
  });

  test('gives back what was put on it, also to another window', async () => {
    const place = make();
    const shelf = await place.open();
    await shelf.write('daily-1.twb', bytes(1, 2, 3));
    await shelf.write('daily 2.twb', bytes());
    const other = await place.open();
    expect((await other.names()).toSorted()).toEqual(['daily 2.twb', 'daily-1.twb']);
    expect(await other.read('daily-1.twb')).toEqual(bytes(1, 2, 3));
    expect(await other.read('daily 2.twb')).toEqual(bytes());
  });

  test('keeps one file of a name, the last', async () => {
    const shelf = await make().open();
    await shelf.write('daily-1.twb', bytes(1, 2, 3));
    await shelf.write('daily-1.twb', bytes(9));
    expect(await shelf.names()).toEqual(['daily-1.twb']);
    expect(await shelf.read('daily-1.twb')).toEqual(bytes(9));
  });

  test('keeps its own copy of the bytes', async () => {
    const shelf = await make().open();
    const mine = bytes(1, 2, 3);
    await shelf.write('daily-1.twb', mine);
    mine.fill(0);
    (await shelf.read('daily-1.twb'))?.fill(7);
    expect(await shelf.read('daily-1.twb')).toEqual(bytes(1, 2, 3));
  });

  test('lets a file go once, and finds nothing the second time', async () => {
    const shelf = await make().open();
    await shelf.write('daily-1.twb', bytes(1));
    await shelf.remove('daily-1.twb');
    await shelf.remove('daily-1.twb');
    expect(await shelf.names()).toEqual([]);
    expect(await shelf.read('daily-1.twb')).toBeUndefined();
  });

  test.each(['', '../daily-1.twb', 'a/b', '.hidden', 'daily.part', 'a\u0000b', 'x'.repeat(121)])(
    'takes no file named %j',
    async (name) => {
      const shelf = await make().open();
      await expect(shelf.write(name, bytes(1))).rejects.toThrow();
      expect(await shelf.names()).toEqual([]);
    },
  );
});
