import type { ComponentType } from 'preact';
import type { ReasonId, StageId, TrayId } from '../../domain/log/ids.ts';
import { useApp, useSession } from '../parts/app-context.ts';
import { labelNews } from '../parts/label-news.ts';
import { onDemand } from '../parts/on-demand.tsx';

export interface FlawPhotoProps {
  readonly taken: boolean;
  readonly onFile: (file: File) => void;
}

/** Takes a photo of the flawed piece while it is in the hand; fetched with the first flaw, not with the first screen. */
export const FlawPhoto: ComponentType<FlawPhotoProps> = onDemand(
  async () => (await import('../parts/photos/flaw-photo-button.tsx')).FlawPhotoButton,
  null,
).Screen;

interface Flawed {
  readonly tray: TrayId;
  readonly stage: StageId;
  readonly reasons: readonly ReasonId[];
}

/** Keeps the photo of a flaw and tells the log; what went wrong is said where the last tap is answered. */
export function useFlawPhoto(): (file: File, flawed: Flawed) => Promise<void> {
  const [app, session] = [useApp(), useSession()];
  return async (file, flawed) => {
    const { keepFlawPhoto } = await import('../parts/photos/keep-flaw-photo.ts');
    labelNews.value = await keepFlawPhoto({ database: app.database(), session }, { file, ...flawed });
  };
}
