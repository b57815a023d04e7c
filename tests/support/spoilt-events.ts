import fc from 'fast-check';
import { linkOver, noLink } from '../../src/domain/log/chain.ts';

/** What may stand in an event where something else stood: other values, sound or not, and what is no value at all. */
const others = [
  ...[
    '0',
    '1',
    '-1',
    '-0',
    '01',
    '1.0',
    '1.5',
    '1e3',
    '1e400',
    '1000000001',
    '9007199254740993',
    '253402300800000',
  ],
  ...[
    'null',
    'true',
    '""',
    '"ada"',
    '"Ada"',
    '"\\u0061da"',
    '"a\\"b"',
    '"../x"',
    '"2026-02-30"',
    '"2026-03-01"',
  ],
  ...['[]', '[[]]', '{}', '{"wall":1}', '{"__proto__":1}', `${'['.repeat(90)}${']'.repeat(90)}`],
  '{"tray":"x","code":"","variant":"v","species":"s","batch":"b"}',
  '{"tray":"x","code":"A}1","variant":"v","species":"s","batch":"b"}',
  '{"tray":"x","code":"","variant":"v","species":"s","batch":"b","pieces":1e9}',
  '{"tray":"x","code":"","variant":"v","species":"s","batch":"b","tray":"y"}',
  '{"tray":5,"code":"","variant":"v","species":"s","batch":"b"}',
  ...[
    ' 1',
    '1 ',
    '1,"x":2',
    '"ada","day":"2026-03-01"',
    '"ada","constructor":1',
    '\u0003',
    '"\u0006"',
    '',
    ',',
  ],
];

/** The values in a JSON text, those in others among them, and the names of its fields. */
const values = /"(?:[^"\\]|\\.)*"|-?\d[\d.e+-]*|null|true|\{[^{}]*\}|\[[^[\]]*\]/g;

/** A JSON text with one or two of its values in another's place, or something else there. */
export function spoilt(text: string): fc.Arbitrary<string> {
  const places = [...text.matchAll(values)].map(({ index, 0: value }) => ({
    from: index,
    to: index + value.length,
  }));
  const own = places.map(({ from, to }) => text.slice(from, to));
  return fc
    .array(fc.tuple(fc.constantFrom(...places), fc.constantFrom(...others, ...own)), {
      minLength: 1,
      maxLength: 2,
    })
    .map((changes) =>
      changes
        .toSorted(([a], [b]) => b.from - a.from)
        .reduce(
          (spoiling, [{ from, to }, other]) => spoiling.slice(0, from) + other + spoiling.slice(to),
          text,
        ),
    );
}

/** The line of a backup with this event, and the link that its author would have summed up: a forger can do so too. */
export function forgedLine(event: string): string {
  return `{"prev":"${noLink}","link":"${linkOver(noLink, writtenAnew(event))}","event":${event}}`;
}

function writtenAnew(text: string): string {
  try {
    return JSON.stringify(JSON.parse(text));
  } catch {
    return text;
  }
}
