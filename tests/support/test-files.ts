import { type FilesWorker, filesWorker } from '../../src/store/files-worker.ts';
import { type FakeDisk, fakeWindow } from './fake-folder.ts';
import { fakeWorker } from './fake-worker.ts';

/** A window on the shop of a disk in memory; its clock stands still. */
export function testFiles(disk: FakeDisk): FilesWorker {
  const window = fakeWindow(disk);
  return filesWorker({
    store: 'tallywright',
    start: () => fakeWorker({ openFolder: window.openFolder, ended: window.die }),
    after: () => () => {},
  });
}
