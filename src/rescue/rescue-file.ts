import type { Found } from './find.ts';

/** Format of the file: JSON Lines. The first line says what it is; each further one is a record with its place. */
const format = 'tallywright-rescue-1';

export function rescueFile(found: readonly Found[], now: Date): File {
  const records = found.reduce((sum, { lines }) => sum + lines.length, 0);
  const head = { format, made: now.toISOString(), records, unread: found.flatMap(({ unread }) => unread) };
  const lines = [JSON.stringify(head), ...found.flatMap((each) => each.lines)];
  const name = `tallywright-rescue-${now.toISOString().slice(0, 16).replaceAll(':', '')}.jsonl`;
  return new File(
    lines.map((line) => `${line}\n`),
    name,
    { type: 'text/plain' },
  );
}
