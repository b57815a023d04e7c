import type { Link } from '../../src/domain/log/chain.ts';
import { textEntryOf } from '../../src/domain/packed/text-entry.ts';
import type { BackupReading } from '../../src/store/backup/read-backup.ts';
import { type Preview, whatItWouldAdd } from '../../src/store/backup/what-it-would-add.ts';

/** What merging a whole reading would do to a log that holds the entries with these links. */
export function previewOf(
  { entries, unreadable }: Extract<BackupReading, { kind: 'read' }>,
  held: ReadonlySet<Link>,
): Preview {
  const { weigh, preview } = whatItWouldAdd(held);
  for (const entry of entries) weigh(textEntryOf(entry));
  return preview(unreadable.length);
}
