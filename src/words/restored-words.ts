import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

export const restoredSentences = inLanguage('restoredSentences', {
  photos: ({
    added,
    refused,
    left,
    damaged,
    elsewhere,
  }: Readonly<Record<'added' | 'refused' | 'left' | 'damaged' | 'elsewhere', number>>): string => {
    const none = added + refused + left === 0;
    return [
      left > 0
        ? `Photos are coming in: ${wholeNumber(left)} to go. Keep this window open.`
        : none
          ? 'No photo was added.'
          : added === 1
            ? '1 photo was added.'
            : `${wholeNumber(added)} photos were added.`,
      refused > 0
        ? `Not taken, for want of room or because they cannot be opened: ${wholeNumber(refused)}.`
        : '',
      damaged > 0 ? `Damaged in the copy: ${wholeNumber(damaged)}.` : '',
      elsewhere > 0 ? `In files of the copy that were not chosen: ${wholeNumber(elsewhere)}.` : '',
    ]
      .filter(Boolean)
      .join(' ');
  },
});

/** How far the photos of a restored copy have come, and which of them do not. */
export const restoredPhotos = (
  how: Readonly<Record<'added' | 'refused' | 'left' | 'damaged' | 'elsewhere', number>>,
): string => restoredSentences.photos(how);
