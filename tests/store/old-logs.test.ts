import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readEvent } from '../../src/domain/log/read-event.ts';
import { workInProcess } from '../../src/domain/rollup/wip.ts';
import { shopOf } from '../../src/domain/shop/shop.ts';

const folder = new URL('../../shared/old-logs/', import.meta.url);
const sum = (counter: ReadonlyMap<string, number>) =>
  [...counter.values()].reduce((all, each) => all + each, 0);

test.each(readdirSync(folder))('the log %s still tells the same story', (name) => {
  const { events, figures } = JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
  const read = (events as unknown[]).flatMap((raw) => {
    const one = readEvent(raw);
    return one.kind === 'known' ? [one.event] : [];
  });
  expect(read).toHaveLength(events.length);
  const shop = shopOf(read);
  const atStage = (stage: string) =>
    workInProcess(shop)
      .filter((cell) => cell.stage === stage)
      .reduce((all, cell) => all + cell.waiting, 0);
  expect({
    made: sum(shop.ledger.made),
    waitingAtBore: atStage('bore'),
    waitingAtGlue: atStage('glue'),
    scrapped: sum(shop.ledger.scrapped),
    trays: shop.trays.size,
  }).toEqual(figures);
});
