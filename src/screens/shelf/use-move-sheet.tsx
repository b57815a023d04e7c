import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { VariantId } from '../../domain/log/ids.ts';
import { MoveSheet } from './move-sheet.tsx';

export type OpenMove = (variant: VariantId) => void;

/** The sheet that moves pieces of one variant, while it is open. */
export function useMoveSheet(): { readonly open: OpenMove; readonly sheet: JSX.Element | null } {
  const [variant, setVariant] = useState<VariantId | null>(null);
  const sheet = variant && <MoveSheet variant={variant} onClose={() => setVariant(null)} />;
  return { open: setVariant, sheet: sheet || null };
}
