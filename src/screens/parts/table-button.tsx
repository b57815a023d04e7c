import type { PressButtonProps } from '../../ui/press/press-button.tsx';
import type { TableName } from '../../words/table-words.ts';
import { useSession } from './app-context.ts';
import { FileButton } from './file-button.tsx';

export interface TableButtonProps extends Pick<PressButtonProps, 'label' | 'detail' | 'tone'> {
  readonly table: TableName;
}

/** Makes a table of the shop as it is now and hands it over as a file. */
export const TableButton = ({ table, ...look }: TableButtonProps) => {
  const session = useSession();
  const make = async () => (await import('../../app/table-file.ts')).tableFile(table, session);
  return <FileButton {...look} make={make} testId={`table-${table}`} />;
};
