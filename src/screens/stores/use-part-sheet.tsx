import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { PartId } from '../../domain/log/ids.ts';
import { CleanSheet } from './clean-sheet.tsx';
import { CountSheet } from './count-sheet.tsx';
import { ReceiveSheet } from './receive-sheet.tsx';

/** What can be done with a part on a sheet. */
type PartAct = 'receive' | 'count' | 'clean';
export type OpenPartSheet = (act: PartAct, part: PartId) => void;

/** The sheet of one act on one part, while it is open. */
export function usePartSheet(): { readonly open: OpenPartSheet; readonly sheet: JSX.Element | null } {
  const [now, setNow] = useState<{ readonly act: PartAct; readonly part: PartId } | null>(null);
  const onClose = () => setNow(null);
  const open: OpenPartSheet = (act, part) => setNow({ act, part });
  if (!now) return { open, sheet: null };
  const Sheet = { receive: ReceiveSheet, count: CountSheet, clean: CleanSheet }[now.act];
  return { open, sheet: <Sheet part={now.part} onClose={onClose} /> };
}
