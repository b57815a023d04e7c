import { plainLetters } from '../domain/export/plain-letters.ts';

/**
 * The name of a file that leaves the tablet: product, shop, shop day, where it matters the time (HH:MM), and where a copy has
 * several files which of them it is.
 */
export function copyName({
  shop,
  day,
  time,
  sealed = false,
  number = 1,
  of = 1,
}: {
  readonly shop: string | null;
  readonly day: string;
  readonly time?: string;
  readonly sealed?: boolean;
  readonly number?: number;
  readonly of?: number;
}): string {
  const which = of > 1 ? `${number}-of-${of}` : undefined;
  const parts = ['tallywright', plainLetters(shop ?? ''), day, time?.replace(':', ''), which];
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
