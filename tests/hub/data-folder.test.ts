import { existsSync, mkdirSync, mkdtempSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { forgetFormer, keysIn, openFolder, readIfThere, renewKeys } from '../../.ci/hub/data-folder.mjs';
import { aFolder } from '../support/hub-folder.ts';

const folder = aFolder();
const fresh = () => openFolder(join(mkdtempSync(join(folder, 'hub-')), 'data'));

test('keys are made once, and only their owner may read them', () => {
  const files = fresh();
  const keys = keysIn(files);
  expect(keysIn(files)).toEqual(keys);
  expect(statSync(files.folder).mode & 0o777).toBe(0o700);
  expect(statSync(files.keys).mode & 0o777).toBe(0o600);
});

test.each(['', '{"v":1}', '{"v":1,"shop":"k3abc","key":"AAAA","admin":"AA","watch":"AA"}'])(
  'damaged keys are said and never made anew: %s',
  (text) => {
    const files = fresh();
    writeFileSync(files.keys, text);
    expect(() => keysIn(files)).toThrow(files.keys);
    expect(readFileSync(files.keys, 'utf8')).toBe(text);
  },
);

test('new keys have nothing of the old ones, which are kept beside them', () => {
  const files = fresh();
  const before = keysIn(files);
  const { old, keys } = renewKeys(files, { forget: false });
  expect(old).toEqual(before);
  expect(keysIn(files)).toEqual(keys);
  for (const part of ['shop', 'key', 'admin', 'watch'] as const) expect(keys[part]).not.toEqual(old[part]);
  expect(keysIn({ ...files, keys: join(files.former, `${old.shop}.json`) })).toEqual(old);
});

test('what the broker holds of a former shop goes only where that was asked for', () => {
  const files = fresh();
  const [kept, forgotten] = [false, true].map((forget) => {
    const { shop } = keysIn(files);
    const entries = join(files.broker, 'jetstream', `TW_${shop}`);
    mkdirSync(entries, { recursive: true });
    renewKeys(files, { forget });
    return { shop, entries };
  });
  const present = join(files.broker, 'jetstream', `TW_${keysIn(files).shop}`);
  mkdirSync(present);
  forgetFormer(files);
  expect([kept, forgotten].map((former) => existsSync(former?.entries ?? ''))).toEqual([true, false]);
  expect(existsSync(present)).toBe(true);
  expect(readIfThere(join(files.former, `${kept?.shop}.json`))).toMatchObject({ shop: kept?.shop });
  expect(readIfThere(join(files.former, `${forgotten?.shop}.json`))).toBeUndefined();
});
