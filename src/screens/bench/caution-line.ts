import { signal } from '@preact/signals';
import type { Session } from '../../app/session.ts';
import { trayCautions } from '../../domain/wood/tray-cautions.ts';
import { nameOf } from '../../words/names.ts';
import { cautionLine } from '../../words/wood-caution-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import type { BenchView } from './bench-view.ts';

/** The lines that were on the screen when a tap of a spell was made. */
interface Heeded {
  readonly session: Session;
  /** When the spell began. */
  readonly begin: number;
  readonly lines: ReadonlySet<string>;
}

const heeded = signal<Heeded | null>(null);

/** What was heeded in the spell that runs; none while none does. */
function heededNow(session: Session): ReadonlySet<string> {
  const known = heeded.value;
  const begin = session.spell.value?.marks[0];
  return known?.session === session && known.begin === begin ? known.lines : new Set();
}

/** Has a line shown no more in this spell: a tap was made with it on the screen. */
export function heed(session: Session, line: string): void {
  const begin = session.spell.value?.marks[0];
  if (!line || begin === undefined) return;
  heeded.value = { session, begin, lines: new Set([...heededNow(session), line]) };
}

/** What to beware of with this tray, until its first tap in a spell; the next tray of the same wood says it no more. */
export function useCautionLine(view: BenchView | undefined): string {
  const session = useSession();
  const { registers } = useShop();
  if (!view) return '';
  const { tray, stage } = view;
  const cautions = trayCautions(registers, { stage: stage.id, species: tray.species, batch: tray.batch });
  const line = cautionLine(cautions, nameOf(registers, { register: 'species', id: tray.species }));
  return heededNow(session).has(line) ? '' : line;
}
