// @vitest-environment happy-dom
import { render, screen, waitFor } from '@testing-library/preact';
import { describe, expect, test } from 'vitest';
import { Icon } from '../../../src/ui/icon/icon.tsx';
import { type IconName, iconPaths, turning } from '../../../src/ui/icon/icon-paths.ts';
import { lateIcons } from '../../../src/ui/icon/late-icons.ts';
import { Disclosure } from '../../../src/ui/notice/disclosure.tsx';
import { EmptyState } from '../../../src/ui/notice/empty-state.tsx';
import { Notice, type NoticeTone } from '../../../src/ui/notice/notice.tsx';
import { Panel } from '../../../src/ui/panel/panel.tsx';

test('only an error breaks in on a screen reader', () => {
  for (const tone of ['info', 'warn', 'saved'] satisfies NoticeTone[]) {
    const shown = render(<Notice tone={tone} title="Said" />);
    expect(screen.queryByRole('alert')).toBeNull();
    shown.unmount();
  }
  render(<Notice tone="error" title="Said" />);
  expect(screen.getByRole('alert').textContent).toBe('Said');
});

test('each tone of a notice has a mark of its own: colour is never alone', () => {
  const marks = (['info', 'warn', 'error', 'saved'] satisfies NoticeTone[]).map((tone) =>
    render(<Notice tone={tone} title="Said" />)
      .container.querySelector('path')
      ?.getAttribute('d'),
  );
  expect(new Set(marks).size).toBe(4);
});

test('a panel is a region named by its title, at the level asked for', () => {
  render(
    <Panel title="Stores" level={3}>
      Inside
    </Panel>,
  );
  expect(screen.getByRole('region', { name: 'Stores' }).textContent).toContain('Inside');
  expect(screen.getByRole('heading', { level: 3 }).textContent).toBe('Stores');
});

test('an empty place says what to do next', () => {
  render(
    <EmptyState title="No trays yet" action={<button type="button">Make one</button>}>
      From the stores.
    </EmptyState>,
  );
  expect(screen.getByRole('heading', { name: 'No trays yet' })).toBeTruthy();
  expect(screen.getByRole('button', { name: 'Make one' })).toBeTruthy();
});

test('a disclosure is shut unless it is said to be open', () => {
  const shown = render(<Disclosure summary="Why">Because</Disclosure>);
  expect(shown.container.querySelector('details')?.open).toBe(false);
  shown.rerender(
    <Disclosure summary="Why" open>
      Because
    </Disclosure>,
  );
  expect(shown.container.querySelector('details')?.open).toBe(true);
});

test('a disclosure tells of each opening, not of a closing', () => {
  let opened = 0;
  render(
    <Disclosure
      summary="Why"
      testId="why"
      onOpen={() => {
        opened += 1;
      }}
    >
      Because
    </Disclosure>,
  );
  const why = screen.getByTestId('why') as HTMLDetailsElement;
  for (const open of [true, false, true]) {
    why.open = open;
  }
  expect(opened).toBe(2);
});

describe('marks', () => {
  test.each(Object.keys({ ...iconPaths, ...lateIcons }))(
    '%s is drawn and hidden from screen readers',
    async (name) => {
      const { container } = render(<Icon name={name as IconName} />);
      expect(container.querySelector('svg')?.getAttribute('aria-hidden')).toBe('true');
      await waitFor(() => expect(container.querySelectorAll('path').length).toBeGreaterThan(0));
    },
  );

  test('those that point along the line of reading turn with it, the others do not', () => {
    expect(turning.has('next')).toBe(true);
    expect(turning.has('check')).toBe(false);
    const { container } = render(<Icon name="back" />);
    expect(container.querySelector('svg')?.classList.contains('icon-turning')).toBe(true);
  });
});
