import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import { waitForTurn } from './turns.ts';

/**
 * Draws its children a moment after what stands above it, and by themselves: a long screen is there at once with its
 * top, and no part of it keeps a hand waiting while the others are drawn. What is drawn is drawn whole.
 */
export const InTurn = ({ children }: { children: ComponentChildren }) => {
  const [isDrawn, setDrawn] = useState(false);
  useLayoutEffect(() => waitForTurn(() => setDrawn(true)), []);
  return isDrawn ? children : null;
};
