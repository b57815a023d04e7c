// @vitest-environment happy-dom
import { render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { beforeEach, describe, expect, test } from 'vitest';
import { CodePad } from '../../../src/ui/entry/code-pad.tsx';
import { NumberPad } from '../../../src/ui/entry/number-pad.tsx';
import { keyAt, pressAt } from '../press/press-at.ts';

let now = 0;
beforeEach(() => {
  now += 1_000_000;
});

/** One tap, well apart from the one before. */
const tap = (name: string): void => {
  now += 1000;
  pressAt(screen.getByRole('button', { name }), now);
};
const hit = (key: string, target: EventTarget = document.body): void => {
  now += 5;
  keyAt(target, now, { type: 'keydown', key });
};
const typed = (label: string): string =>
  screen.getByLabelText(label, { selector: 'output' }).textContent ?? '';

describe('the pad for codes', () => {
  const entered: string[] = [];
  const offered: string[] = [];
  beforeEach(() => {
    entered.length = 0;
    offered.length = 0;
  });

  const Pad = ({ start = '', listen = true }: { start?: string; listen?: boolean }) => {
    const [code, setCode] = useState(start);
    return (
      <CodePad
        label="Code"
        typed={code}
        onTyped={setCode}
        rows={['ACK', '0123456789']}
        longest={8}
        onEnter={(text) => entered.push(text)}
        enterLabel="Open"
        eraseLabel="Erase"
        error={code === 'A1' ? 'Too short.' : undefined}
        offers={[{ code: 'A17K', label: 'Ash' }]}
        onOffer={(text) => offered.push(text)}
        offersLabel="Perhaps"
        listen={listen}
      />
    );
  };

  test('writes what is tapped, erases and enters it', () => {
    render(<Pad />);
    for (const name of ['A', '1', '7', 'C', 'Erase', 'K', 'Open']) tap(name);
    expect(typed('Code')).toBe('A17K');
    expect(entered).toEqual(['A17K']);
  });

  test('takes a reader that types and ends with Enter, in small letters too', () => {
    render(<Pad />);
    for (const key of ['a', '1', '7', 'k', 'Enter']) hit(key);
    expect(entered).toEqual(['A17K']);
  });

  test('leaves out signs it has no key for', () => {
    render(<Pad />);
    for (const key of ['A', 'Z', ' ', '-', '1']) hit(key);
    expect(typed('Code')).toBe('A1');
  });

  test('shows longer codes in groups of four, and takes no sign too many', () => {
    render(<Pad start="A17KA17" />);
    hit('K');
    hit('K');
    expect(typed('Code')).toBe('A17K A17K');
  });

  test('says what is wrong in a place that is there before', () => {
    render(<Pad start="A" />);
    const place = screen.getByRole('status', { name: '' });
    expect(place.textContent).toBe('');
    hit('1');
    expect(place.textContent).toBe('Too short.');
    expect(typed('Code')).toBe('A1');
  });

  test('an offer is taken with one tap', () => {
    render(<Pad />);
    tap('A17K Ash');
    expect(offered).toEqual(['A17K']);
  });

  test('keys typed into a real slot, with a modifier or held down stay out of it', () => {
    render(
      <>
        <Pad />
        <input aria-label="Note" />
      </>,
    );
    hit('A', screen.getByLabelText('Note'));
    keyAt(document.body, now + 10, { type: 'keydown', key: 'A', repeat: true });
    document.body.dispatchEvent(new KeyboardEvent('keydown', { key: 'A', ctrlKey: true, bubbles: true }));
    expect(typed('Code')).toBe('–');
  });

  test('Enter on a button belongs to that button', () => {
    render(
      <>
        <Pad start="A17" />
        <button type="button">Elsewhere</button>
      </>,
    );
    hit('Enter', screen.getByRole('button', { name: 'Erase' }));
    hit('Enter', screen.getByRole('button', { name: 'Elsewhere' }));
    expect(entered).toEqual([]);
  });

  test('a sheet over it keeps its keys', () => {
    render(
      <>
        <Pad />
        <dialog open>Over it</dialog>
      </>,
    );
    hit('A');
    expect(typed('Code')).toBe('–');
  });

  test('can be told not to listen', () => {
    render(<Pad listen={false} />);
    hit('A');
    expect(typed('Code')).toBe('–');
  });
});

describe('the pad for numbers', () => {
  const Pad = ({ decimal }: { decimal?: '.' | ',' }) => {
    const [number, setNumber] = useState('');
    return (
      <NumberPad
        label="Counted"
        typed={number}
        onTyped={setNumber}
        eraseLabel="Erase"
        decimal={decimal}
        unit="mm"
      />
    );
  };

  test('shows a dash until something is typed: unknown is not zero', () => {
    render(<Pad />);
    expect(typed('Counted')).toBe('– mm');
    tap('0');
    expect(typed('Counted')).toBe('0 mm');
  });

  test('writes, erases, and takes either decimal sign for its own', () => {
    render(<Pad decimal="," />);
    for (const name of ['6', ',', '1', '5', 'Erase']) tap(name);
    expect(typed('Counted')).toBe('6,1 mm');
    for (const name of ['Erase', 'Erase']) tap(name);
    hit('.');
    expect(typed('Counted')).toBe('6, mm');
  });

  test('for whole numbers has no decimal sign', () => {
    render(<Pad />);
    hit('3');
    hit('.');
    expect(typed('Counted')).toBe('3 mm');
    expect(screen.queryByRole('button', { name: '.' })).toBeNull();
  });

  test.each([undefined, ','] as const)('with the decimal sign "%s" has each digit once', (decimal) => {
    render(decimal ? <Pad decimal={decimal} /> : <Pad />);
    for (const digit of '0123456789') expect(screen.getAllByRole('button', { name: digit })).toHaveLength(1);
  });
});
