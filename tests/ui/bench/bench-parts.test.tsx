// @vitest-environment happy-dom
import { render, screen } from '@testing-library/preact';
import { beforeEach, describe, expect, test } from 'vitest';
import { BigCode } from '../../../src/ui/bench/big-code.tsx';
import { BigCount } from '../../../src/ui/bench/big-count.tsx';
import { NotSavedBar } from '../../../src/ui/bench/not-saved-bar.tsx';
import { SavedMark, type SavedState } from '../../../src/ui/bench/saved-mark.tsx';
import { pressAt } from '../press/press-at.ts';

const states: readonly SavedState[] = ['idle', 'taken', 'saved', 'undone', 'not-saved'];
const words = { idle: 'Ready', taken: 'Taken', saved: 'Saved', undone: 'Undone', 'not-saved': 'NOT SAVED' };

describe('the mark of saving', () => {
  const look = (state: SavedState) => {
    const shown = render(<SavedMark state={state} words={words} />);
    const pegs = [...shown.container.querySelectorAll('svg')];
    const place = pegs.findIndex((peg) => peg.dataset.peg !== 'idle');
    const shape = place < 0 ? '' : (pegs[place]?.innerHTML ?? '');
    const word = screen.getByRole('status').textContent;
    shown.unmount();
    return { place, shape, word };
  };

  test.each(['place', 'shape', 'word'] as const)('differs in %s from state to state', (trait) => {
    expect(new Set(states.map((state) => look(state)[trait])).size).toBe(states.length);
  });
});

describe('a count', () => {
  test.each([
    [undefined, '–'],
    [0, '0'],
    [-2, '-2'],
    [112, '112'],
  ])('of %s shows "%s"', (count, shown) => {
    render(<BigCount count={count} label="passed" testId="count" />);
    expect(screen.getByTestId('count').textContent).toBe(`${shown}passed`);
  });
});

describe('a code', () => {
  test.each([
    ['A17K', ['A17K']],
    ['A17K22', ['A17K', '22']],
    ['A17KB08RX', ['A17K', 'B08R', 'X']],
  ])('%s stands in groups of at most four', (code, groups) => {
    render(<BigCode code={code} name="Tray" testId="code" />);
    const signs = screen.getByTestId('code').querySelectorAll('.big-code-signs > span');
    expect([...signs].map((group) => group.textContent)).toEqual(groups);
  });

  test('is read aloud by its name, and runs left to right in any script', () => {
    render(<BigCode code="A17K" name="Tray A 1 7 K" testId="code" />);
    expect(screen.getByText('Tray A 1 7 K')).toBeTruthy();
    const signs = screen.getByTestId('code').querySelector('.big-code-signs');
    expect(signs?.getAttribute('aria-hidden')).toBe('true');
    expect(signs?.getAttribute('dir')).toBe('ltr');
  });
});

describe('the bar of what was not saved', () => {
  const acted: string[] = [];
  beforeEach(() => {
    acted.length = 0;
  });

  test('is an alert with the word, the tap, a retry and an export', () => {
    render(
      <NotSavedBar
        word="NOT SAVED"
        detail="1 tap waits."
        retryLabel="Try again"
        onRetry={() => acted.push('retry')}
        exportLabel="Export"
        onExport={() => acted.push('export')}
      />,
    );
    expect(screen.getByRole('alert').textContent).toContain('NOT SAVED1 tap waits.');
    pressAt(screen.getByRole('button', { name: 'Try again' }), 1000);
    pressAt(screen.getByRole('button', { name: 'Export' }), 3000);
    expect(acted).toEqual(['retry', 'export']);
  });
});
