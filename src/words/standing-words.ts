/** Words of a shop that does not open, by why. */
export const standingWords = {
  outdated: {
    title: 'Updated in another window',
    help: 'A newer version is open in another window. Nothing is lost.',
  },
  'newer-store': {
    title: 'This shop was opened by a newer version',
    help: 'This window runs an older version, so it leaves the shop untouched. Reload to get the newer one.',
  },
  'cannot-read': {
    title: 'The shop could not be read',
    help: 'This is not an empty shop: the log could not be opened, and nothing was written. Try again, or restart the browser.',
  },
} as const;
