export const savingWords = {
  idle: '',
  taken: 'Taken',
  saved: 'Saved',
  'not-saved': 'Not saved',
  undone: 'Taken back',
} as const;
