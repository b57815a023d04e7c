import type { PartId } from '../../domain/log/ids.ts';

/** What a sheet that does something with one part is given. */
export interface PartSheetProps {
  readonly part: PartId;
  readonly onClose: () => void;
}
