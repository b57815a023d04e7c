import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { chained } from '../../../src/domain/log/chain.ts';
import { usualLimits } from '../../../src/store/backup/backup-format.ts';
import { lineReader } from '../../../src/store/backup/read-line.ts';
import { hostileLines, plausibleForgeries } from '../../support/hostile-lines.ts';
import { forgedLine, spoilt } from '../../support/spoilt-events.ts';
import { linesOf, newerEntry } from './sample-log.ts';

const encode = (line: string) => new TextEncoder().encode(line);
const log = chained(demoShop({ now: Date.UTC(2026, 2, 4, 14) }));
const lines = linesOf([...log, newerEntry, ...plausibleForgeries]);
const events = log.map(({ event }) => JSON.stringify(event));

/** Has met every form of the log often enough to read its lines quickly. */
const experienced = lineReader(usualLimits);
for (let time = 0; time < 3; time += 1) for (const line of lines) experienced(encode(line));

/** Reads a line as the first of its life, at full length. */
const fresh = (bytes: Uint8Array) => lineReader(usualLimits)(bytes);

function expectTheSame(bytes: Uint8Array): void {
  expect(experienced(bytes)).toEqual(fresh(bytes));
}

describe('a reader that has read many lines says what one says that has read none', () => {
  test('of every line of a log, also when its ends are others or a mark stands before it', () => {
    for (const line of lines)
      for (const edited of [line, `${line}\r`, `\ufeff${line}`, `${line} `, `${line}}`, line.slice(0, -1)])
        expectTheSame(encode(edited));
  });

  test.each(hostileLines)('of %s', (_what, line) => {
    expectTheSame(encode(line));
  });

  test('of events that a forger made of those of the log', () => {
    fc.assert(
      fc.property(fc.constantFrom(...events).chain(spoilt), (event) =>
        expectTheSame(encode(forgedLine(event))),
      ),
      { numRuns: 2000 },
    );
  });

  test('of lines of which some bytes were changed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...lines),
        fc.array(fc.tuple(fc.nat(), fc.nat(255)), { maxLength: 3 }),
        (line, changes) => {
          const bytes = encode(line);
          for (const [at, value] of changes) bytes[at % bytes.length] = value;
          expectTheSame(bytes);
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('of a line with the link of another', () => {
    for (const [at, line] of lines.entries()) {
      const other = JSON.parse(lines[at - 1] ?? line);
      expectTheSame(encode(line.replace(/"link":"\w+"/, `"link":"${other.link}"`)));
      expectTheSame(encode(line.replace(/"prev":"\w+"/, `"prev":"${other.prev}"`)));
    }
  });
});
