export const historyWords = {
  title: 'What happened to it',
  takeBack: 'Take back',
  putBack: 'Put back',
  takenBack: 'taken back',
  station: (letter: string) => `tablet ${letter}`,
} as const;
