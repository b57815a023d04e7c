import { signal } from '@preact/signals';
import type { Copies } from '../../src/app/copies.ts';
import { openCopyDesk } from '../../src/app/copy-desk.ts';
import { rememberCopies } from '../../src/app/known-copies.ts';
import type { RestoredCopy } from '../../src/app/restore.ts';
import type { FileShelf } from '../../src/store/file-shelf.ts';
import type { TestSession } from './open-test-session.ts';

/** The copies of an app of which no test asks for one: nothing is known of any, and none is made. */
export function noCopies(): Copies {
  return {
    ...rememberCopies('test', undefined),
    desk: signal(null),
    restored: signal<RestoredCopy | null>(null),
  };
}

/** The copies of an open test session, on a shelf that the test holds; null is a tablet without one. */
export async function copiesOn(
  { session, hands }: Pick<TestSession, 'session' | 'hands'>,
  shelf: FileShelf | null,
): Promise<Copies> {
  const memory = rememberCopies('test', undefined);
  const desk = await openCopyDesk({
    ...{ session, name: 'test', forgets: 'all', memory, shelf, version: '1.2.3' },
    ...{ clock: hands.clock, timer: hands.timer },
  });
  return { ...memory, desk: signal(desk), restored: signal<RestoredCopy | null>(null) };
}
