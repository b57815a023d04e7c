// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import type { ComponentType } from 'preact';
import { useLayoutEffect } from 'preact/hooks';
import { afterEach, describe, expect, test } from 'vitest';
import { late } from '../../../src/screens/parts/late.tsx';
import { onDemand } from '../../../src/screens/parts/on-demand.tsx';

afterEach(cleanup);

const Wanted: ComponentType = () => <p>here it is</p>;

/** Gives its code in one step, so that a test chooses the moment. */
function codeThatComesAtOnce(): PromiseLike<ComponentType> {
  const given: PromiseLike<ComponentType> = {
    // biome-ignore lint/suspicious/noThenProperty: a promise that has kept its word at the moment when it is asked
    then: (kept) => (kept ? Promise.resolve(kept(Wanted)) : Promise.resolve(undefined)) as never,
  };
  return given;
}

describe('a screen whose code is fetched when it is wanted', () => {
  test('stands when its code comes after it was first drawn and before its effects ran', async () => {
    const { Screen, ahead } = onDemand(() => codeThatComesAtOnce() as Promise<ComponentType>);
    // A layout effect runs after the drawing and before the effects.
    const Place = () => {
      useLayoutEffect(ahead, []);
      return <Screen />;
    };
    render(<Place />);
    expect(await screen.findByText('here it is')).toBeTruthy();
  });
});

describe('a part that a place can do without', () => {
  test('stands in both of two places that are drawn together', async () => {
    const Part = late(() => codeThatComesAtOnce() as Promise<ComponentType>);
    render(
      <>
        <Part />
        <Part />
      </>,
    );
    expect(await screen.findAllByText('here it is')).toHaveLength(2);
  });
});
