// @vitest-environment happy-dom
import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { InTurn } from '../../../src/ui/turn/in-turn.tsx';
import { stillDrawing, waitForTurn } from '../../../src/ui/turn/turns.ts';

afterEach(cleanup);

/** What is drawn, each time that it is more. */
function watched(container: Element): string[] {
  const seen = [container.textContent];
  const note = () => {
    if (container.textContent !== seen.at(-1)) seen.push(container.textContent);
  };
  new MutationObserver(note).observe(container, { subtree: true, childList: true });
  return seen;
}

const allDrawn = () => waitFor(() => expect(stillDrawing.value).toBe(false));

describe('parts that are drawn in turn', () => {
  test('come one by one, and what one brings with it before the one below it', async () => {
    const { container } = render(
      <main aria-busy={stillDrawing}>
        top
        <InTurn>
          {' one'}
          <InTurn> inside</InTurn>
          <InTurn> beside</InTurn>
        </InTurn>
        <InTurn> two</InTurn>
      </main>,
    );
    const seen = watched(container);
    expect(screen.getByRole('main').getAttribute('aria-busy')).toBe('true');
    await allDrawn();
    expect(seen).toEqual([
      'top',
      'top one',
      'top one inside',
      'top one inside beside',
      'top one inside beside two',
    ]);
    expect(screen.getByRole('main').getAttribute('aria-busy')).toBe('false');
  });

  test('let in between what waited before them, such as a tap', async () => {
    const order: string[] = [];
    waitForTurn(() => {
      order.push('first');
      setTimeout(() => order.push('tap'), 0);
    });
    waitForTurn(() => order.push('second'));
    waitForTurn(() => order.push('third'));
    await allDrawn();
    expect(order.indexOf('tap')).toBeLessThan(order.indexOf('third'));
  });

  test('give their turn up when they leave the screen', async () => {
    const drawn: string[] = [];
    const Part = ({ name }: { name: string }) => {
      drawn.push(name);
      return <p>{name}</p>;
    };
    const { rerender } = render(
      <>
        <InTurn key="gone">
          <Part name="gone" />
        </InTurn>
        <InTurn key="stays">
          <Part name="stays" />
        </InTurn>
      </>,
    );
    rerender(
      <InTurn key="stays">
        <Part name="stays" />
      </InTurn>,
    );
    await allDrawn();
    expect(drawn).toEqual(['stays']);
  });

  test('change with the screen around them once they are there', async () => {
    const Shown = ({ count }: { count: number }) => (
      <InTurn>
        <b>{count}</b>
      </InTurn>
    );
    const { container, rerender } = render(<Shown count={1} />);
    await allDrawn();
    rerender(<Shown count={2} />);
    expect(container.textContent).toBe('2');
  });
});
