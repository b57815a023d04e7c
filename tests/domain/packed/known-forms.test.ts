import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { readEvent } from '../../../src/domain/log/read-event.ts';
import { cutEvent } from '../../../src/domain/packed/cut-event.ts';
import { knownForms } from '../../../src/domain/packed/known-forms.ts';
import { spoilt } from '../../support/spoilt-events.ts';

const log = demoShop({ now: Date.UTC(2026, 2, 4, 14) });
const texts = log.map((event) => JSON.stringify(event));
const most = 2 ** 41;
const greatest = { seq: 1e9, wall: most, tick: 1e9, elapsed: most, time: most };

/** Judges each part of an event on its own: here a number of any name is within bounds besides. */
function judge(event: unknown): string | null {
  const read = readEvent(event);
  if (read.kind === 'damaged') return read.problems.join();
  return JSON.stringify(event).match(/\d{14}/) ? 'too much' : null;
}

function formsOf(events: readonly object[], times = 2) {
  const forms = knownForms({ judge, greatest });
  for (let time = 0; time < times; time += 1) for (const event of events) forms.learn(cutEvent(event));
  return forms;
}

const known = formsOf(log);
const passed = log.find((event) => event.kind === 'passed' && known.tell(JSON.stringify(event)));
if (passed?.kind !== 'passed') throw new Error('the demo has a pass');

function expectAsIs(text: string): void {
  const told = known.tell(text);
  const event = JSON.parse(text);
  expect(told).toEqual({
    station: event.station,
    seq: event.seq,
    wall: event.stamp.wall,
    cut: cutEvent(event),
  });
  expect(JSON.stringify(event)).toBe(text);
  expect(judge(event)).toBe(null);
}

describe('an event of a known form', () => {
  test('is told as it is, but for one with signs that JSON has to escape', () => {
    const told = texts.filter((text) => known.tell(text));
    for (const text of told) expectAsIs(text);
    expect(told.length).toBeGreaterThan(0.95 * texts.length);
  });

  test('is not told when it is cut short, or is about one tray and moves another', () => {
    const text = JSON.stringify(passed);
    for (let length = 0; length < text.length; length += 1)
      expect(known.tell(text.slice(0, length)), `${length}`).toBe(undefined);
    const other = `${passed.of.tray.slice(0, -1)}z`;
    expect(known.tell(text.replaceAll(passed.of.tray, other))).toBeDefined();
    expect(known.tell(text.replace(passed.of.tray, other))).toBe(undefined);
  });

  test.each([
    ['in other words', (facts: string) => facts.replace('"code":"', '"code":"\\u0041')],
    ['with a number in other words', (facts: string) => facts.replace('}', ',"x":1.0}')],
    ['twice', (facts: string) => facts.replace('}', ',"code":"A"}')],
    ['with more in them', (facts: string) => facts.replace('}', ',"x":{}}')],
    ['with a list in them', (facts: string) => facts.replace('}', ',"x":[]}')],
    ['without a name', (facts: string) => facts.replace(passed.of.tray, '')],
  ])('is not told with the facts of its tray %s', (_what, change) => {
    const facts = JSON.stringify(passed.of);
    expect(known.tell(JSON.stringify(passed).replace(facts, change(facts)))).toBe(undefined);
  });

  test('is not told when anything in it may not stand there, or stands there in other words', () => {
    let told = 0;
    fc.assert(
      fc.property(fc.constantFrom(...texts).chain(spoilt), (text) => {
        if (!known.tell(text)) return;
        told += 1;
        expectAsIs(text);
      }),
      { numRuns: 3000 },
    );
    expect(told).toBeGreaterThan(30);
  });
});

test('a form is known when it was met twice, and begins as events of ours do', () => {
  const [event] = log;
  if (!event) throw new Error('the demo has events');
  const text = JSON.stringify(event);
  expect(formsOf([event], 0).tell(text)).toBe(undefined);
  expect(formsOf([event], 1).tell(text)).toBe(undefined);
  expect(formsOf([event], 2).tell(text)).toBeDefined();
  const { station, seq, ...rest } = event;
  const turned = { seq, station, ...rest };
  expect(formsOf([turned]).tell(JSON.stringify(turned))).toBe(undefined);
});

test.each([
  ['too great a value', (value: number) => value > 1000],
  ['too small a value', (value: number) => value < 3],
])('a form in which %s may not stand is never known, though the event was sound', (_what, isWrong) => {
  const odd = { ...passed, x: { wall: 5 } };
  const of = (judgeOdd: typeof judge) => {
    const forms = knownForms({ judge: judgeOdd, greatest });
    for (const event of [odd, odd]) forms.learn(cutEvent(event));
    return forms.tell(JSON.stringify(odd));
  };
  expect(of(judge)).toBeDefined();
  expect(of((event) => (isWrong((event as Partial<typeof odd>).x?.wall ?? 5) ? 'wrong' : judge(event)))).toBe(
    undefined,
  );
});
