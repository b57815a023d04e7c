import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { PartId } from '../../domain/log/ids.ts';
import { CleanSheet } from './clean-sheet.tsx';
import { CountSheet, type Proposed } from './count-sheet.tsx';
import { ReceiveSheet } from './receive-sheet.tsx';
import { SampleSheet } from './sample-sheet.tsx';

/** What can be done with a part on a sheet. */
type PartAct = 'receive' | 'count' | 'clean' | 'sample';
export type OpenPartSheet = (act: PartAct, part: PartId) => void;

interface Open {
  readonly act: PartAct;
  readonly part: PartId;
  /** A count that one act has led to. */
  readonly proposed?: Proposed;
}

/** The sheet of one act on one part, while it is open. */
export function usePartSheet(): { readonly open: OpenPartSheet; readonly sheet: JSX.Element | null } {
  const [now, setNow] = useState<Open | null>(null);
  const onClose = () => setNow(null);
  const open: OpenPartSheet = (act, part) => setNow({ act, part });
  if (!now) return { open, sheet: null };
  const { act, part, proposed } = now;
  const its = { part, onClose };
  switch (act) {
    case 'receive':
      return { open, sheet: <ReceiveSheet {...its} /> };
    case 'count':
      return { open, sheet: <CountSheet {...its} proposed={proposed} /> };
    case 'clean':
      return { open, sheet: <CleanSheet {...its} /> };
    case 'sample': {
      const onCount = (next: Proposed) => setNow({ act: 'count', part, proposed: next });
      return { open, sheet: <SampleSheet {...its} onCount={onCount} /> };
    }
  }
}
