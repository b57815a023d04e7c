// @vitest-environment happy-dom
import { act, cleanup, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Session } from '../../../../src/app/session.ts';
import { shopSign } from '../../../../src/domain/label/shop-sign.ts';
import { signOf } from '../../../../src/domain/label/sign-of.ts';
import type { TrayId } from '../../../../src/domain/log/ids.ts';
import { trayCode } from '../../../../src/domain/tray/tray-code.ts';
import { labelTaker } from '../../../../src/screens/parts/label-news.ts';
import { ScanPlace } from '../../../../src/screens/trays/scan/scan-place.tsx';
import { loaded, withLeast } from '../../../support/loaded-tray.ts';
import { batch, stage, variant } from '../../../support/workshop.ts';
import { mount, press, settle, take } from '../../set-up/mount.tsx';

afterEach(cleanup);
// This browser has no picture, and says that it has: what is tried here needs none.
beforeEach(() => {
  Object.defineProperty(navigator, 'mediaDevices', { value: undefined, configurable: true });
});

interface Tray {
  readonly id: TrayId;
  readonly label: string;
  readonly code: string;
}

/** Makes up a tray and brings its pieces to the clamps when that is asked for. */
async function aTray(session: Session, { pieces, bored }: { pieces: number; bored: boolean }): Promise<Tray> {
  const { shop } = session.view.value;
  await session.act({
    kind: 'make-trays',
    variant: variant['ash-copper'],
    batch: batch.spring,
    pieces,
    trays: 1,
  });
  const made = [...shop.trays.values()].at(-1);
  if (!made) throw new Error('the tray was made');
  const spot = { tray: made.tray, stage: stage.bore, at: 'waiting', grade: 'first', shown: pieces } as const;
  if (bored) await session.act({ kind: 'pass', spot, pieces });
  return { id: made.tray, code: made.code, label: `${made.code}-${signOf(shop.registers)}` };
}

async function read(text: string): Promise<void> {
  act(() => labelTaker.value?.(text));
  await settle();
}
const textOf = (testId: string) => screen.getByTestId(testId).textContent;
const says = () => screen.getByTestId('scan-says').textContent;
const line = (code: string) => screen.getByTestId(`bulk-line-${code}`).textContent;

describe('opening a tray', () => {
  test('a label goes to the stage where its tray has pieces and the station works, else to the page of the tray', async () => {
    const { session } = await mount(<ScanPlace stage={stage.glue} />);
    const bored = await aTray(session, { pieces: 4, bored: true });
    const raw = await aTray(session, { pieces: 4, bored: false });
    await read(bored.label);
    expect(location.hash).toBe(`#/bench/glue/${bored.id}`);
    await read(raw.label);
    expect(location.hash).toBe(`#/trays/${raw.id}`);
  });

  test('without a stage in the address it is the one of the latest tap', async () => {
    const { session } = await mount(<ScanPlace stage={null} />);
    const raw = await aTray(session, { pieces: 4, bored: false });
    await aTray(session, { pieces: 4, bored: true });
    await read(raw.code);
    expect(location.hash).toBe(`#/bench/bore/${raw.id}`);
  });

  test('what leads to no tray is said, and stands until the next label', async () => {
    const { session } = await mount(<ScanPlace stage={null} />);
    const { code, label } = await aTray(session, { pieces: 4, bored: false });
    location.hash = '#/trays/scan';
    const stranger = shopSign([7, 7, 7, 7]);
    for (const [text, words] of [
      [`${code}-${stranger}`, `${code} is a label of another shop.`],
      ['https://example.test/', 'This is no label of a tray.'],
      [label.replace(/^./, (letter) => (letter === 'A' ? 'C' : 'A')), 'This label is damaged'],
      [trayCode('X', 999), 'its tray is not in the log'],
    ] as const) {
      await read(text);
      expect(says()).toContain(words);
      expect(location.hash).toBe('#/trays/scan');
    }
  });

  test('the pad on the same screen does what a label does, and there is no camera here', async () => {
    const { session } = await mount(<ScanPlace stage={stage.glue} />);
    const { id, code } = await aTray(session, { pieces: 4, bored: true });
    expect(screen.getByTestId('camera-insecure')).toBeTruthy();
    for (const key of [...code, 'Enter'])
      act(() => void dispatchEvent(new KeyboardEvent('keydown', { key, cancelable: true })));
    await settle();
    expect(location.hash).toBe(`#/bench/glue/${id}`);
  });
});

describe('several trays in a row', () => {
  test('a list grows, a label that comes twice is ignored, and one button moves all; each can be undone', async () => {
    const { session } = await mount(<ScanPlace stage={null} />);
    const first = await aTray(session, { pieces: 4, bored: true });
    const raw = await aTray(session, { pieces: 2, bored: false });
    const second = await aTray(session, { pieces: 3, bored: true });
    const full = await aTray(session, { pieces: 2, bored: true });
    await take('scan-for-into-clamps');
    for (const { label } of [first, raw, second, full, first]) await read(label);
    expect(says()).toBe(`${first.code} is in the list already.`);
    expect(line(first.code)).toContain('4 pieces into Glue');
    expect(line(raw.code)).toContain('No piece of it waits for the clamps.');
    expect(line(second.code)).toContain('3 pieces into Glue');
    expect(line(full.code)).toContain('Only 1 place is free.');
    await press('bulk-do');
    expect(line(first.code)).toContain('Done');
    expect(line(second.code)).toContain('Done');
    expect(line(full.code)).not.toContain('Done');
    const held = () =>
      [...(session.view.value.shop.positions.working.get(first.id)?.values() ?? [])].map(
        ({ place, pieces }) => [place.at, pieces],
      );
    expect(held()).toEqual([['held', 4]]);
    await press(`bulk-undo-${first.code}`);
    expect(held()).toEqual([['waiting', 4]]);
    expect(line(first.code)).toContain('4 pieces into Glue');
    // Without it there is room for the one behind.
    await press(`bulk-leave-${first.code}`);
    expect(line(full.code)).toContain('2 pieces into Glue');
  });

  test('a tray can be left out, and a new list begins with another errand once all is done', async () => {
    const { session } = await mount(<ScanPlace stage={null} />);
    const one = await aTray(session, { pieces: 4, bored: true });
    const other = await aTray(session, { pieces: 3, bored: true });
    await take('scan-for-into-clamps');
    await read(one.label);
    await read(other.label);
    await press(`bulk-leave-${other.code}`);
    await press('bulk-do');
    await take('scan-for-out-of-clamps');
    expect(screen.queryByTestId(`bulk-line-${one.code}`)).toBeNull();
    await read(one.label);
    expect(line(one.code)).toContain('Still cures: ready in 12 h');
  });

  test('what still cures comes out when that is asked for at its line, which says and records by how much', async () => {
    const { session, hands } = await mount(<ScanPlace stage={null} />);
    await withLeast(session, 240);
    const { tray, code } = await loaded(session, 6);
    hands.pass(200 * 60_000);
    await take('scan-for-out-of-clamps');
    await read(code);
    expect(screen.getByTestId('bulk-do').getAttribute('aria-disabled')).toBe('true');
    expect(textOf(`bulk-early-says-${code}`)).toBe('6 pieces must cure 40 min more.');
    await press(`bulk-early-${code}`);
    expect(textOf(`bulk-early-says-${code}`)).toBe('6 pieces up to 40 min too early. The data sheet rules.');
    // Thought better of, and asked for once more.
    await press(`bulk-early-${code}`);
    expect(line(code)).toContain('Still cures');
    await press(`bulk-early-${code}`);
    await press('bulk-do');
    const last = () => session.acts.value.at(-1)?.events.at(-1);
    expect(last()).toMatchObject({ kind: 'passed', pieces: 6, early: 40, of: { tray } });
    expect(screen.queryByTestId(`bulk-early-${code}`)).toBeNull();
    // Taken back, it is asked about again.
    await press(`bulk-undo-${code}`);
    expect(textOf(`bulk-early-says-${code}`)).toBe('6 pieces must cure 40 min more.');
  });

  test('what the shop refuses after all stands at its line', async () => {
    const { session } = await mount(<ScanPlace stage={null} />);
    const one = await aTray(session, { pieces: 8, bored: true });
    const other = await aTray(session, { pieces: 5, bored: true });
    await take('scan-for-into-clamps');
    await read(one.label);
    // Another hand is quicker, between the look and the tap.
    const spot = { tray: other.id, stage: stage.glue, at: 'waiting', grade: 'first', shown: 5 } as const;
    const quick = session.act({ kind: 'load', spot, pieces: 5 });
    const tap = press('bulk-do');
    await Promise.all([quick, tap]);
    expect(line(one.code)).toContain('Only 3 places are free.');
    expect(session.view.value.shop.positions.working.get(one.id)?.size).toBe(1);
  });
});

test('what a code reader types is not taken any more when the screen is left', async () => {
  await mount(<ScanPlace stage={null} />);
  expect(labelTaker.value).not.toBeNull();
  cleanup();
  await waitFor(() => expect(labelTaker.value).toBeNull());
});
