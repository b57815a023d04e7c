export const storesWords = {
  title: 'Stores',
  lead: 'What lies there, what the pieces in work will still take, and what to order.',
  parts: 'Parts',
  noParts: 'No parts yet',
  noPartsHelp: 'Add cores, ferrules and the like in Set-up, then receive them here.',
  toSetUp: 'Add parts',
} as const;
