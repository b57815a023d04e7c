import { rmSync, statSync } from 'node:fs';
import { beforeAll, expect, inject, test } from 'vitest';
import { compareTaps, whatWasSaid } from './compare.ts';
import { corruptions, databaseFolder } from './corruptions.ts';
import { allKept, runKind, timeBox } from './kind-figures.ts';
import { dropProfile, freshProfile, type Look, lookOnce, openStation, randomTaps } from './station.ts';

let before: Look;
beforeAll(async () => {
  before = await lookOnce('corrupt');
}, 60_000);

const faults = Object.entries(corruptions);

test(
  'the files of the database are harmed while the browser is shut: what was acknowledged is there once',
  async () => {
    const verdict = await runKind('corrupt', async ({ run, random }) => {
      const [name, harm] = faults[run % faults.length] ?? ['none', () => undefined];
      const folder = freshProfile('corrupt');
      const first = await openStation(folder);
      await (await first.window()).tap(randomTaps(random, 12));
      await first.close();

      const database = databaseFolder(folder, inject('appUrl'));
      harm(database, random);
      let second = await openStation(folder);
      const opened = [second];
      if (second.standing === 'shut' && statSync(database).isFile()) {
        // The app said that it cannot read; what it kept elsewhere must come back once it has a database again.
        await second.close();
        rmSync(database);
        second = await openStation(folder);
        opened.push(second);
      }
      // A shop that was put right goes on: the next taps are numbered after the last one, and are kept, too.
      if ((await second.look()).tray) await (await second.window()).tap(randomTaps(random, 3));
      const now = await second.look();
      await second.close();
      dropProfile(folder);
      const found = compareTaps({ before, now, taps: [...first.taps, ...second.taps] });
      const said = whatWasSaid(...opened);
      const silent = found.lost > 0 && !said.said ? ['and nothing said so'] : [];
      return {
        ...found,
        ...said,
        notes: [...(found.lost > 0 ? [name] : []), ...silent, ...(said.notes ?? [])],
      };
    });
    expect(verdict).toMatchObject(allKept);
  },
  timeBox('corrupt'),
);
