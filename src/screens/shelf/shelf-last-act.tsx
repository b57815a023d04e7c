import type { EventKind } from '../../domain/log/event.ts';
import { movesWords } from '../../words/shelf-move-words.ts';
import { LastActOf } from '../parts/last-act/last-act-of.tsx';

const kinds: ReadonlySet<EventKind> = new Set(['shelf-moved', 'photo-taken', 'raised']);

export const ShelfLastAct = () => <LastActOf kinds={kinds} testId="shelf" inShort={movesWords} />;
