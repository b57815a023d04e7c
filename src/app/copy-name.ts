import { plainLetters } from '../domain/export/plain-letters.ts';

/** The name of a file that leaves the tablet: product, shop, shop day and, where it matters, the time (HH:MM). */
export function copyName({
  shop,
  day,
  time,
  sealed = false,
}: {
  readonly shop: string | null;
  readonly day: string;
  readonly time?: string;
  readonly sealed?: boolean;
}): string {
  const parts = ['tallywright', plainLetters(shop ?? ''), day, time?.replace(':', '')];
  return `${parts.filter(Boolean).join('-')}.${sealed ? 'sealed' : 'jsonl.gz'}`;
}

/** The name of a file with photos. */
export function photoFileName({
  shop,
  number,
}: {
  readonly shop: string | null;
  readonly number: number;
}): string {
  return `${['tallywright', plainLetters(shop ?? ''), 'photos', number].filter(Boolean).join('-')}.zip`;
}
