/** The film that Chromium's camera of tests shows: labels before it, one after another. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { cleanLook, filmOf, type LabelFace, type LabelLook, labelPicture } from './label-frames.ts';

export interface CameraFilm {
  /** Makes a browser take the film for its camera. */
  readonly flags: readonly string[];
  /** Shows these labels to the camera when it is opened next: each for a second, a bare bench between them. */
  readonly show: (labels: readonly LabelFace[], look?: Partial<LabelLook>) => void;
  readonly remove: () => void;
}

/** A film of a bare bench, in a folder of its own. */
export function cameraFilm(): CameraFilm {
  const folder = mkdtempSync(join(tmpdir(), 'tallywright-camera-'));
  const film = join(folder, 'camera.y4m');
  // Dust may hide more than a symbol can make up for: one seed, whose pictures were seen to be readable.
  const random = seededRandom(20260301);
  function show(labels: readonly LabelFace[], look: Partial<LabelLook> = {}): void {
    const whole = { ...cleanLook, ...look };
    const bare = labelPicture(null, whole, random);
    const frames = labels.flatMap((label) => {
      const picture = labelPicture(label, whole, random);
      return [...Array.from({ length: 15 }, () => picture), ...Array.from({ length: 5 }, () => bare)];
    });
    writeFileSync(film, filmOf(frames.length > 0 ? frames : [bare, bare], whole));
  }
  show([]);
  return {
    flags: ['--use-fake-device-for-media-stream', `--use-file-for-fake-video-capture=${film}`],
    show,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
